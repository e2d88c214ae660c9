package wave

import (
	"math"

	"followingsea.example/internal/angle"
)

// Under a wave of the surface η = a cos θ, θ = kx - ωt, the water moves in ellipses that flatten and shrink with depth:
//
//	u =  aω C cos θ    w = aω S sin θ      C = cosh k(h+z)/sinh kh
//	ξ = -a  C sin θ    ζ = a  S cos θ      S = sinh k(h+z)/sinh kh
//
// z is the height above still water, zero or negative. Both factors are e^kz in deep water, circles, and 4 % of the surface's
// at half a wavelength. They are computed from exponentials of negative numbers, which neither overflow in deep water nor
// lose digits over the bottom.

// profile returns C and S at z, NaN above the surface or below the bottom.
func (v Wave) profile(z float64) (c, s float64) {
	if !(z <= 0 && z >= -v.Depth) {
		return math.NaN(), math.NaN()
	}
	if math.IsInf(v.Depth, 1) {
		e := math.Exp(v.Wavenumber * z)
		return e, e
	}
	e := math.Exp(v.Wavenumber * z)
	under := -2 * v.Wavenumber * (v.Depth + z)
	whole := -math.Expm1(-2 * v.kh())
	return e * (1 + math.Exp(under)) / whole, e * -math.Expm1(under) / whole
}

// An Orbit is the motion of the water at a point under a wave at an instant.
type Orbit struct {
	Along, Up           float64 // m/s, velocity: positive with the wave, and upwards
	AlongRate, UpRate   float64 // m/s², acceleration
	AlongShift, UpShift float64 // m, displacement from the particle's mean place
}

// Orbit returns the motion of the water under a wave of the height in metres at z metres above still water (zero or
// negative, not below the bottom), where the phase in degrees is 0 under the crest and 180 under the trough. At a fixed place
// the phase falls as time passes; at a fixed time it grows along the wave.
//
// Special cases are:
//
//	Orbit is NaN throughout if the height is negative, infinite or NaN, z is above 0 or below the bottom, or the phase is
//	infinite or NaN
//
// Source: [CEM-II-1] "Local fluid velocities and accelerations" and "Water particle displacements".
func (v Wave) Orbit(height, z, phase float64) Orbit {
	a := amplitude(height)
	c, s := v.profile(z)
	sin, cos := math.Sincos(angle.Radians(phase))
	o := v.AngularFrequency
	return Orbit{
		Along: a * o * c * cos, Up: a * o * s * sin,
		AlongRate: a * o * o * c * sin, UpRate: -a * o * o * s * cos,
		AlongShift: -a * c * sin, UpShift: a * s * cos,
	}
}

// Excursion returns the half axes in metres of the ellipse that the water moves in at z metres above still water (zero or
// negative) under a wave of the height in metres: along the wave and upwards.
//
// Special cases are:
//
//	Excursion is NaN if the height is negative, infinite or NaN, or z is above 0 or below the bottom
//
// Source: [CEM-II-1] Eq. II-1-34 and II-1-35.
func (v Wave) Excursion(height, z float64) (along, up float64) {
	a := amplitude(height)
	c, s := v.profile(z)
	return a * c, a * s
}

// OrbitalSpeed returns the greatest speeds in m/s of the water at z metres above still water (zero or negative) under a wave
// of the height in metres: along the wave (under crest and trough) and upwards. At the surface of deep water both are πH/T.
//
// Special cases are:
//
//	OrbitalSpeed is NaN if the height is negative, infinite or NaN, or z is above 0 or below the bottom
//
// Source: [CEM-II-1] "Local fluid velocities and accelerations".
func (v Wave) OrbitalSpeed(height, z float64) (along, up float64) {
	a := amplitude(height) * v.AngularFrequency
	c, s := v.profile(z)
	return a * c, a * s
}

// Elevation returns the height of the surface above still water in metres at the phase in degrees: H/2 at the crest, phase 0.
//
// Special cases are:
//
//	Elevation is NaN if the height is negative, infinite or NaN, the phase is infinite or NaN, or the wave is no wave
//
// Source: [CEM-II-1] "The sinusoidal wave profile".
func (v Wave) Elevation(height, phase float64) float64 {
	if math.IsNaN(v.Wavenumber) {
		return math.NaN()
	}
	return amplitude(height) * math.Cos(angle.Radians(phase))
}

// PressureResponse returns the factor by which the pressure of the wave at z metres above still water (zero or negative) is
// less than ρg times the surface's elevation: Kp = cosh k(h+z)/cosh kh.
//
// Special cases are:
//
//	PressureResponse(z) = NaN if z is above 0 or below the bottom, or NaN
//
// Source: [CEM-II-1] "Subsurface pressure".
func (v Wave) PressureResponse(z float64) float64 {
	c, _ := v.profile(z)
	return c * v.tanhKh()
}

// Pressure returns the pressure in Pa above that of the air at z metres above still water (zero or negative) under a wave of
// the height in metres, at the phase in degrees (0 under the crest): p = ρg(ηKp - z).
//
// Special cases are:
//
//	Pressure is NaN if the height is negative, infinite or NaN, z is above 0 or below the bottom, or the phase is infinite or
//	NaN
//
// Source: [CEM-II-1] "Subsurface pressure".
func (v Wave) Pressure(height, z, phase float64) float64 {
	w := v.Water
	return w.rho() * w.g() * (v.Elevation(height, phase)*v.PressureResponse(z) - z)
}

// StokesDrift returns the mean speed in m/s at which a wave of the height in metres carries the water, and what floats in it,
// along with it, at z metres above still water (zero or negative):
//
//	us = a² ω k cosh 2k(h+z)/(2 sinh² kh)
//
// a²ωk e^2kz in deep water. It is second order in the height: a wave of 1 m and 5 s gives 0.05 m/s at the surface. It is of
// one regular wave; that of a sea is in package spectrum. Many published leeway coefficients contain it already.
//
// Special cases are:
//
//	StokesDrift is NaN if the height is negative, infinite or NaN, or z is above 0 or below the bottom
//
// Source: [Stokes1847]; [DeanDalrymple1991] ch. 10.
func (v Wave) StokesDrift(height, z float64) float64 {
	a := amplitude(height)
	if !(z <= 0 && z >= -v.Depth) {
		return math.NaN()
	}
	k := v.Wavenumber
	deep := a * a * v.AngularFrequency * k * math.Exp(2*k*z)
	if math.IsInf(v.Depth, 1) {
		return deep
	}
	whole := math.Expm1(-2 * v.kh())
	return deep * (1 + math.Exp(-4*k*(v.Depth+z))) / (whole * whole)
}

// StokesTransport returns the volume in m²/s (m³/s for each metre of crest) that a wave of the height in metres carries along
// with it, the Stokes drift summed over the depth: gH²/8c.
//
// Special cases are:
//
//	StokesTransport(height) = NaN if the height is negative, infinite or NaN
//
// Source: [DeanDalrymple1991] ch. 10: the mass flux is E/c.
func (v Wave) StokesTransport(height float64) float64 {
	a := amplitude(height)
	return v.Water.g() * a * a / (2 * v.PhaseSpeed)
}
