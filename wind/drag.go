package wind

import "math"

// Neutral drag coefficients of the sea surface. The stress of the wind on the
// water is ρ·CD·U10², the friction speed u* = √CD·U10. Each law is a fit to
// its authors' data and is used outside its range by everybody; none differs
// from another by more than the scatter of the measurements (about 20 %).
//
// A growth law must be fed the friction speed its authors used.

// DragLaw gives a neutral drag coefficient, referred to 10 m, from the wind
// speed at 10 m in m/s. The laws of this package are [LargePond1981],
// [LargePondToolbox], [Smith1980], [Garratt1977], [GarrattPower], [Wu1982],
// [WuCapped], [Vera1983], [DragCEM], and the Drag method of a
// [Charnock] value; any function of that shape will do.
//
// They all return NaN for a negative, infinite or NaN speed.
type DragLaw func(u10 float64) float64

func validSpeed(u float64) bool { return u >= 0 && finite(u) }

// LargePond1981 returns the drag coefficient of Large and Pond.
//
//	10³ CD = 1.14             to 10 m/s (fitted from 4)
//	10³ CD = 0.49 + 0.065 U   above     (fitted to 26)
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Emeis2013] eq. 5.5, p. 107, quoting Large and Pond (1981).
func LargePond1981(u10 float64) float64 {
	switch {
	case !validSpeed(u10):
		return math.NaN()
	case u10 <= 10:
		return 1.14e-3
	}
	return 0.49e-3 + 0.065e-3*u10
}

// LargePondToolbox returns the drag coefficient of Large and Pond as the
// AIR_SEA toolbox has it: 1.15e-3 up to where the line 0.49 + 0.065 U reaches
// it, at 10.154 m/s, and so without the small step of [LargePond1981].
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Beardsley1999] routine cdnlp.
func LargePondToolbox(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return math.Max(1.15e-3, 0.49e-3+0.065e-3*u10)
}

// Smith1980 returns the drag coefficient of Smith: 10³ CD = 0.61 + 0.063 U,
// fitted from 6 to 22 m/s.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Emeis2013] eq. 5.4, p. 107, quoting Smith (1980).
func Smith1980(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return 0.61e-3 + 0.063e-3*u10
}

// Garratt1977 returns the drag coefficient of Garratt's line, 10³ CD =
// 0.75 + 0.067 U, fitted from 4 to 21 m/s.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Garratt1977] linear form.
func Garratt1977(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return 0.75e-3 + 0.067e-3*u10
}

// GarrattPower returns the drag coefficient of Garratt's power form, 10³ CD =
// 0.51 U^0.46, fitted from 4 to 21 m/s.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Garratt1977] power form.
func GarrattPower(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return 0.51e-3 * math.Pow(u10, 0.46)
}

// Wu1982 returns the drag coefficient of Wu: 10³ CD = 0.8 + 0.065 U, from
// light winds to hurricanes.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [ScientiMate] drag method Wu, citing Wu (1982).
func Wu1982(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return 0.8e-3 + 0.065e-3*u10
}

// WuCapped returns [Wu1982] with the floor that wave models give it,
// 1.2875e-3 below 7.5 m/s.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [ScientiMate] drag method Wu, as used in third-generation wave models.
func WuCapped(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return math.Max(1.2875e-3, 0.8e-3+0.065e-3*u10)
}

// Vera1983 returns the drag coefficient of Vera, with a rise in light winds:
//
//	10³ CD = 2.717/U + 0.142 + 0.0764 U
//
// Special cases are:
//
//	Vera1983(0) = +Inf: the stress CD·U² still goes to zero
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Beardsley1999] routine cdnve, after Vera (1983), published in Large, Morzel and Crawford (1995).
func Vera1983(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return 1e-3 * (2.717/u10 + 0.142 + 0.0764*u10)
}

// DragCEM returns the drag coefficient that goes with the wave growth law of
// the Coastal Engineering Manual: 10³ CD = 1.1 + 0.035 U.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [CEM-II-2] eq. II-2-36.
func DragCEM(u10 float64) float64 {
	if !validSpeed(u10) {
		return math.NaN()
	}
	return 1.1e-3 + 0.035e-3*u10
}

// Stress returns the wind's stress on the water in N/m², ρ·CD·U10², from the
// speed at 10 m in m/s. An airDensity of zero means [AirDensity].
//
// Special cases are:
//
//	NaN for a negative or NaN density, or a speed that the law refuses
//
// It panics if law is nil.
//
// Source: [Beardsley1999] routine stresslp.
func Stress(u10, airDensity float64, law DragLaw) float64 {
	if law == nil {
		panic("wind: Stress without a drag law")
	}
	if airDensity == 0 {
		airDensity = AirDensity
	}
	if !(airDensity > 0 && finite(airDensity)) {
		return math.NaN()
	}
	if u10 == 0 {
		return 0
	}
	return airDensity * law(u10) * u10 * u10
}

// FrictionSpeed returns u* = √CD·U10 in m/s.
//
// Special cases are:
//
//	FrictionSpeed(0, law) = 0
//	NaN for a speed that the law refuses
//
// It panics if law is nil.
//
// Source: [CEM-II-2] eq. II-2-36.
func FrictionSpeed(u10 float64, law DragLaw) float64 {
	if law == nil {
		panic("wind: FrictionSpeed without a drag law")
	}
	if u10 == 0 {
		return 0
	}
	return math.Sqrt(law(u10)) * u10
}
