package wind

import "math"

// A Law is a wind-sea growth law in its dimensionless form. Every law in
// use says the same thing in its own numbers: divide by gravity and by one
// speed S, and the height and the peak period depend only on the fetch and
// the depth,
//
//	g·Hs/S², g·Tp/S = f(g·F/S², g·d/S²)
//
// so that one small interface holds them all, the scaling with gravity is
// exact, and an app can add its own law beside those of this package. S is
// the wind at 10 m for most laws, a friction velocity or an adjusted wind
// for some; the law does that conversion, the caller always gives U10.
//
// The laws of this package are values: [Bretschneider] (the default),
// [BreugemHolthuijsen], [YoungVerhagen], [KahmaCalkoen], [JONSWAP],
// [Wilson], [SPM84], [ACES], [CEM], [Smith], [GroenDorrestein], [HwangWang]
// and their variants. [Grow] applies one.
type Law interface {
	// String returns the law's short name.
	String() string

	// Scale returns the speed S (m/s) for a wind of u m/s at 10 m.
	Scale(u float64) float64

	// Growth returns g·Hs/S² and g·Tp/S at the dimensionless fetch x = g·F/S²
	// and depth d = g·depth/S² (+Inf in deep water), after a wind of
	// unlimited duration and before any cap at full development. Both grow
	// with x and never fall with d.
	Growth(x, d float64) (h, t float64)

	// Limits returns full development in a wind of u m/s, in the same units,
	// and the range of x over which the law is meant to hold.
	Limits(u float64) Limits
}

// Limits are the bounds of a growth law, in its own dimensionless units.
type Limits struct {
	Height   float64 // g·Hs/S² of the fully developed sea
	Period   float64 // g·Tp/S of the fully developed sea
	Shortest float64 // least g·F/S² the law is meant for
	Longest  float64 // greatest g·F/S² before full development
}

// Timed is a [Law] that also prints its own relations for a wind that has
// not blown long enough. [Grow] does not use them: it integrates the group
// speed of the peak, which keeps height, period and duration consistent
// where the printed relations jump (ACES at its own minimum duration) or
// contradict each other (CEM II-2-35 and II-2-38). [AsPublished] does.
type Timed interface {
	Law

	// MinimumDuration returns the seconds a wind of u m/s at 10 m must blow
	// over fetch metres for the sea to be limited by the fetch, as printed.
	MinimumDuration(u, fetch, gravity float64) float64

	// After returns the height (m) and peak period (s) after the given
	// seconds of a wind of u m/s on an unlimited fetch, as printed.
	After(u, seconds, gravity float64) (hs, tp float64)
}

// peakOverSignificant is Tp / T1/3 for laws printed with the significant
// period. Texts use 0.90 to 0.95 for the inverse; 0.95 is what the buoy
// records behind this package support.
const peakOverSignificant = 1 / 0.95

// Caps of a sea that no longer grows, used for laws that print none:
// g·Hs/U² = 0.24 and g·Tp/U = 7.69 (peak frequency 0.13 g/U), after Pierson
// and Moskowitz 1964.
const (
	developedHeight = 0.24
	developedPeriod = 1 / 0.13
)

// tanhOver returns a·tanh(v/a), the form by which the depth enters most laws;
// it is v for deep water and small v, and never above a.
func tanhOver(a, v float64) float64 {
	if a == 0 {
		return 0 * v
	}
	return a * math.Tanh(v/a)
}

// Laws returns every law of this package.
func Laws() []Law {
	return []Law{
		Bretschneider, BreugemHolthuijsen, BreugemHolthuijsen414, YoungVerhagen,
		KahmaCalkoen, KahmaCalkoenStable, KahmaCalkoenUnstable, JONSWAP, JONSWAPStart,
		Wilson, SPM84, SPMAdjusted, ACES, ACESAdjusted, Kamphuis, CEM, Smith,
		GroenDorrestein, HwangWang,
	}
}

// timed is 0 where the printed duration relations mean something, NaN where not: a
// negative wind must not come back as a negative time.
func timed(u, v, gravity float64) float64 {
	if u > 0 && v >= 0 && gravity > 0 && finite(u) && finite(gravity) {
		return 0
	}
	return math.NaN()
}
