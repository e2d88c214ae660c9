package wind

import "math"

// powerLaw is a deep-water law E = e·x^p, ω = w·x^-q on the wind at 10 m, with
// E = g²m0/U⁴ and ω = 2π·fp·U/g. Depth does not enter: the remark NoDepth says
// so when one is given.
type powerLaw struct {
	name string
	e, p float64
	w, q float64
	max  Limits
}

func (l powerLaw) String() string        { return l.name }
func (powerLaw) Scale(u float64) float64 { return u }
func (l powerLaw) Limits(float64) Limits { return l.max }
func (powerLaw) deepOnly()               {}
func (l powerLaw) Growth(x, d float64) (h, t float64) {
	if !(d > 0) { // NaN too: an impossible depth is not deep water
		return math.NaN(), math.NaN()
	}
	return 4 * math.Sqrt(l.e) * math.Pow(x, l.p/2), 2 * math.Pi / l.w * math.Pow(x, l.q)
}

// KahmaCalkoen is the composite law of Kahma and Calkoen, fitted to data sets
// of all stabilities together,
//
//	E = 5.2e-7 x^0.9,  2π·fp·U/g = 13.7 x^-0.27
//
// which in height and period is g·Hs/U² = 0.00288 x^0.45 and g·Tp/U = 0.46
// x^0.27, capped at 0.21 and 1/0.13 as in the usual wave-model benchmark.
// Deep water only.
//
// Source: [KahmaCalkoen1992] p. 1404; the caps as quoted in [SWAN-growth].
var KahmaCalkoen Law = powerLaw{name: "Kahma & Calkoen", e: 5.2e-7, p: 0.9, w: 13.7, q: 0.27, max: kahmaLimits}

// KahmaCalkoenStable is the law for air warmer than the water, E = 9.3e-7
// x^0.76, ω = 12 x^-0.24. The constants were recalled, not read.
//
// Source: [KahmaCalkoen1992] table of fits.
var KahmaCalkoenStable Law = powerLaw{name: "Kahma & Calkoen, stable", e: 9.3e-7, p: 0.76, w: 12, q: 0.24, max: kahmaLimits}

// KahmaCalkoenUnstable is the law for air colder than the water, E = 5.4e-7
// x^0.94, ω = 14.2 x^-0.28. The constants were recalled, not read.
//
// Source: [KahmaCalkoen1992] table of fits.
var KahmaCalkoenUnstable Law = powerLaw{name: "Kahma & Calkoen, unstable", e: 5.4e-7, p: 0.94, w: 14.2, q: 0.28, max: kahmaLimits}

var kahmaLimits = Limits{Height: 0.21, Period: developedPeriod, Shortest: 30, Longest: 1.5e4}

// HwangWang is the first-order fetch law of Hwang and Wang, E = 6.191e-7
// x^0.8106, ω = 11.86 x^-0.2368. Deep water only. [Timed] through their
// duration law, E = 1.27e-8 t*^1.06 and ω = 36.92 t*^-0.31, whose constants
// were recalled, not read.
//
// Source: [HwangWang2004], fetch law quoted in [ScientiMate].
var HwangWang Timed = hwangWang{powerLaw{
	name: "Hwang & Wang", e: 6.191e-7, p: 0.8106, w: 11.86, q: 0.2368,
	max: Limits{Height: developedHeight, Period: developedPeriod, Shortest: 30, Longest: 2.5e4},
}}

type hwangWang struct{ powerLaw }

func (hwangWang) After(u, seconds, gravity float64) (hs, tp float64) {
	seconds += timed(u, seconds, gravity)
	t := gravity * seconds / u
	return 4 * math.Sqrt(1.27e-8*math.Pow(t, 1.06)) * u * u / gravity, 2 * math.Pi / 36.92 * math.Pow(t, 0.31) * u / gravity
}

// MinimumDuration is where the two energy laws meet.
func (l hwangWang) MinimumDuration(u, fetch, gravity float64) float64 {
	fetch += timed(u, fetch, gravity)
	x := gravity * fetch / (u * u)
	return math.Pow(l.e*math.Pow(x, l.p)/1.27e-8, 1/1.06) * u / gravity
}

// JONSWAP is the law of the Joint North Sea Wave Project,
//
//	E = 1.6e-7 x,  fp·U/g = 3.5 x^-0.33
//
// that is g·Hs/U² = 0.0016 √x, capped at the Pierson and Moskowitz sea
// (E = 3.64e-3, fp·U/g = 0.13). Deep water only. [Timed] through the minimum
// duration t = 65.6 F^0.67 / (U^0.33 g^0.33), whose rounded powers are not
// dimensionally exact: SI units and Earth's gravity only.
//
// Source: [Hasselmann1973]; minimum duration quoted in [ScientiMate] mindurationdeep.
var JONSWAP Timed = jonswap{powerLaw{
	name: "JONSWAP", e: 1.6e-7, p: 1, w: 2 * math.Pi * 3.5, q: 0.33,
	max: Limits{Height: 4 * 0.06033241251599343, Period: developedPeriod, Shortest: 30, Longest: 2.3e4}, // 4 √3.64e-3
}}

type jonswap struct{ powerLaw }

func (jonswap) MinimumDuration(u, fetch, gravity float64) float64 {
	fetch += timed(u, fetch, gravity)
	return 65.6 * math.Pow(fetch, 0.67) / (math.Pow(u, 0.33) * math.Pow(gravity, 0.33))
}

func (l jonswap) After(u, seconds, gravity float64) (hs, tp float64) {
	seconds += timed(u, seconds, gravity)
	fetch := math.Pow(seconds*math.Pow(u, 0.33)*math.Pow(gravity, 0.33)/65.6, 1/0.67)
	return dimensional(l, u, fetch, gravity)
}

// JONSWAPStart is the peak law that spectral models start from, fp·U/g = 2.84
// x^-0.3 and never below 0.13, with the energy of [JONSWAP].
//
// Source: [Hasselmann1976], quoted in [ECMWF-ecWAM] routine PEAK.
var JONSWAPStart Law = powerLaw{
	name: "JONSWAP, model start", e: 1.6e-7, p: 1, w: 2 * math.Pi * 2.84, q: 0.3,
	max: Limits{Height: 4 * 0.06033241251599343, Period: developedPeriod, Shortest: 30, Longest: 2.3e4},
}

// dimensional evaluates a law in deep water at a fetch in metres.
func dimensional(l Law, u, fetch, gravity float64) (hs, tp float64) {
	s := l.Scale(u)
	h, t := l.Growth(gravity*fetch/(s*s), math.Inf(1))
	return h * s * s / gravity, t * s / gravity
}

// Wilson is Wilson's law as revised in 1965,
//
//	g·Hs/U²  = 0.30 {1 - (1 + 0.004 x^1/2)^-2}
//	g·T1/3/U = 8.61 {1 - (1 + 0.008 x^1/3)^-5}
//
// with Tp = T1/3 / 0.95. Its asymptotes, which are its full development, are
// the highest of the set: 0.30 U²/g. Deep water only. [Timed] through the
// minimum duration t = 43 F^0.73 / (U^0.46 g^0.27).
//
// Source: [Wilson1965], quoted in [Goda2003]; minimum duration quoted in
// [ScientiMate] mindurationdeep.
var Wilson Timed = wilson{}

type wilson struct{}

func (wilson) String() string          { return "Wilson" }
func (wilson) Scale(u float64) float64 { return u }
func (wilson) deepOnly()               {}

func (wilson) Growth(x, d float64) (h, t float64) {
	if !(d > 0) {
		return math.NaN(), math.NaN()
	}
	// 1-(1+y)^-n by Expm1 and Log1p keeps its digits at short fetch.
	h = -0.30 * math.Expm1(-2*math.Log1p(0.004*math.Sqrt(x)))
	t = -8.61 * math.Expm1(-5*math.Log1p(0.008*math.Cbrt(x)))
	return h, t * peakOverSignificant
}

func (wilson) Limits(float64) Limits {
	return Limits{Height: 0.30, Period: 8.61 * peakOverSignificant, Shortest: 30, Longest: 1e5}
}

func (wilson) MinimumDuration(u, fetch, gravity float64) float64 {
	fetch += timed(u, fetch, gravity)
	return 43 * math.Pow(fetch, 0.73) / (math.Pow(u, 0.46) * math.Pow(gravity, 0.27))
}

func (l wilson) After(u, seconds, gravity float64) (hs, tp float64) {
	seconds += timed(u, seconds, gravity)
	fetch := math.Pow(seconds*math.Pow(u, 0.46)*math.Pow(gravity, 0.27)/43, 1/0.73)
	return dimensional(l, u, fetch, gravity)
}
