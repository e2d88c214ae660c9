package wave

import "math"

// Combine returns the significant height in metres of several wave systems together, from their significant heights in
// metres: energies add, so the heights add as squares.
//
// Special cases are:
//
//	Combine() = 0
//	Combine = NaN if any height is negative, infinite or NaN
//
// Source: [WMO-702]; the practice of the weather services.
func Combine(heights ...float64) float64 {
	r := 0.0
	for _, h := range heights {
		r = math.Hypot(r, significant(h))
	}
	return r
}

// A System is one wave system of a sea: the wind sea or one swell.
type System struct {
	Hs     float64 // significant height, m
	Period float64 // s, which one is said by the function it is given to
}

// CombineEnergyPeriods returns the significant height in metres and the energy period Te = m-1/m0 in seconds of several wave
// systems together, from theirs: the moments add, so the period is the mean weighted with the squares of the heights.
//
// Special cases are:
//
//	CombineEnergyPeriods() = 0, NaN
//	CombineEnergyPeriods = NaN, NaN if any height is negative, infinite or NaN, or any period is zero, negative, infinite or NaN
//
// Source: the definition of the moments.
func CombineEnergyPeriods(systems ...System) (hs, te float64) {
	return combine(systems, func(t float64) float64 { return t }, func(m float64) float64 { return m })
}

// CombineMeanPeriods returns the significant height in metres and the mean zero-crossing period Tz = √(m0/m2) in seconds of
// several wave systems together, from theirs: 1/Tz² is the mean weighted with the squares of the heights.
//
// Special cases are those of CombineEnergyPeriods.
//
// Source: the definition of the moments.
func CombineMeanPeriods(systems ...System) (hs, tz float64) {
	return combine(systems, func(t float64) float64 { return 1 / (t * t) }, func(m float64) float64 { return 1 / math.Sqrt(m) })
}

func combine(systems []System, moment, period func(float64) float64) (hs, t float64) {
	var m0, m float64
	for _, s := range systems {
		h := significant(s.Hs)
		if math.IsNaN(h) || !positive(s.Period) {
			return math.NaN(), math.NaN()
		}
		hs = math.Hypot(hs, h)
		m0 += h * h
		m += h * h * moment(s.Period)
	}
	return hs, period(m / m0)
}
