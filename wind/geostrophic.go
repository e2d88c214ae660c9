package wind

import "math"

// From a weather map to a wind: balance of the pressure's push and the turning
// of the earth, above the friction of the surface.

// EarthRate is the rotation of the earth in rad/s.
const EarthRate = 7.292115e-5

// Over the sea the surface wind is some 0.6 to 0.8 of the geostrophic wind and
// blows 10 to 25 degrees across the isobars toward low pressure: a rule of the
// trade.
const (
	SurfaceOverGeostrophicLow  = 0.6
	SurfaceOverGeostrophicHigh = 0.8
)

// Coriolis returns the Coriolis parameter f = 2Ω sin(lat) in 1/s, negative in
// the southern hemisphere. The latitude is in DEGREES: a negative f in the
// north has been fed to a sine in radians, a slip found in print.
//
// Special cases are:
//
//	NaN outside −90 to 90, or NaN
//
// Source: [Stull2017] section 10.3.4.
func Coriolis(lat float64) float64 {
	if !(lat >= -90 && lat <= 90) {
		return math.NaN()
	}
	s, _ := sincos(math.Abs(lat)) // so that the two hemispheres agree to the last bit
	return math.Copysign(2*EarthRate*s, lat)
}

// Geostrophic returns the speed in m/s of the geostrophic wind, from the
// pressure gradient across the isobars in Pa/m, the latitude in degrees and the
// density of the air in kg/m³ (zero: [AirDensity]):
//
//	V = (dp/dn) / (ρ |f|)
//
// Special cases are:
//
//	NaN on the equator, for a negative gradient or density, for NaN
//
// Source: [Stull2017] section 10.5.1.
func Geostrophic(gradient, lat, airDensity float64) float64 {
	if airDensity == 0 {
		airDensity = AirDensity
	}
	f := math.Abs(Coriolis(lat))
	if !(gradient >= 0 && finite(gradient)) || !(airDensity > 0 && finite(airDensity)) || !(f > 0) {
		return math.NaN()
	}
	return gradient / (airDensity * f)
}

// GeostrophicContours returns the geostrophic speed in m/s from the slope of a
// pressure surface in m/m: V = (g/|f|) dz/dn. Gravity zero means [Gravity].
//
// Special cases are:
//
//	NaN on the equator, for a negative slope or gravity, for NaN
//
// Source: [Stull2017] section 10.5.1.
func GeostrophicContours(slope, lat, gravity float64) float64 {
	if gravity == 0 {
		gravity = Gravity
	}
	f := math.Abs(Coriolis(lat))
	if !(slope >= 0 && finite(slope)) || !(gravity > 0 && finite(gravity)) || !(f > 0) {
		return math.NaN()
	}
	return gravity * slope / f
}

// GeostrophicWind returns the geostrophic wind from the pressure gradient
// toward the east and toward the north in Pa/m: low pressure on the left of the
// flow in the northern hemisphere, on the right in the southern.
//
//	East = −(∂p/∂y) / (ρ f),  North = (∂p/∂x) / (ρ f)
//
// Special cases are:
//
//	both components NaN on the equator, for a negative density, an infinity or NaN
//
// Source: [Stull2017] section 10.5.1.
func GeostrophicWind(eastward, northward, lat, airDensity float64) Velocity {
	if airDensity == 0 {
		airDensity = AirDensity
	}
	f := Coriolis(lat)
	if !finite(math.Hypot(eastward, northward)) || !(airDensity > 0 && finite(airDensity)) || !(math.Abs(f) > 0) {
		return Velocity{math.NaN(), math.NaN()}
	}
	return Velocity{-northward / (airDensity * f), eastward / (airDensity * f)}
}

// GradientWind returns the speed in m/s along curved isobars, from the
// geostrophic speed and the radius of the path in m: positive round a low
// (slower than geostrophic), negative round a high (faster). The radius of
// straight isobars is infinite.
//
//	V = −fR/2 + √(f²R²/4 + f R Vg),  |f|
//
// Special cases are:
//
//	GradientWind(v, ±Inf, lat) = v
//	NaN round a high whose gradient no wind can balance, 4 Vg > |f R|
//	NaN on the equator, for a negative speed, a zero radius or NaN
//
// Source: [Stull2017] section 10.5.2.
func GradientWind(geostrophic, radius, lat float64) float64 {
	f := math.Abs(Coriolis(lat))
	if !validSpeed(geostrophic) || !(f > 0) || radius == 0 || math.IsNaN(radius) {
		return math.NaN()
	}
	if math.IsInf(radius, 0) {
		return geostrophic
	}
	// V²/R + fV − fVg = 0, the root that tends to Vg for a large R, in the
	// form that does not cancel.
	x := 4 * geostrophic / (f * radius)
	return 2 * geostrophic / (1 + math.Sqrt(1+x))
}
