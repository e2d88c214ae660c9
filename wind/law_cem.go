package wind

import "math"

// CEMFrictionVelocity returns the friction velocity (m/s) of the Coastal
// Engineering Manual, u*² = 0.001 (1.1 + 0.035 U) U², for a wind of u m/s at 10 m.
//
// Special cases are:
//
//	CEMFrictionVelocity(u) = NaN if u is negative, infinite or NaN
//
// Source: [CEM-II-2] eq. II-2-36.
func CEMFrictionVelocity(u float64) float64 {
	if !validSpeed(u) {
		return math.NaN()
	}
	return u * math.Sqrt(0.001*(1.1+0.035*u))
}

// CEM is the law of the Coastal Engineering Manual on the friction velocity of
// [CEMFrictionVelocity], x = gF/u*²,
//
//	g·Hs/u*² = 0.0413 x^1/2,  g·Tp/u* = 0.651 x^1/3
//
// fully developed at 211.5 and 239.8. In shallow water growth goes on as in deep
// water until Tp = 9.78 √(d/g) and stops there, height and period together, and
// Hs is at most 0.6 d. Its periods are the shortest of the whole set, 14 to 39 %
// below [BreugemHolthuijsen] over 1 to 50 km.
//
// [Timed] with a minimum duration (II-2-35) and an equivalent fetch for a
// duration (II-2-38) that disagree by 25 % in time; the latter gives half the
// height of every other law in the first four hours, so it is not for a
// paddler's wind.
//
// Source: [CEM-II-2] eqs II-2-35 to II-2-39.
var CEM Timed = cem{}

type cem struct{}

func (cem) String() string          { return "CEM" }
func (cem) Scale(u float64) float64 { return CEMFrictionVelocity(u) }

func (cem) Growth(x, d float64) (h, t float64) {
	if !(d > 0) {
		return math.NaN(), math.NaN()
	}
	t = 0.651 * math.Cbrt(x)
	if limit := 9.78 * math.Sqrt(d); t > limit {
		t = limit
		x = math.Pow(limit/0.651, 3)
	}
	return math.Min(0.0413*math.Sqrt(x), 0.6*d), t
}

func (cem) Limits(float64) Limits {
	return Limits{Height: 211.5, Period: 239.8, Shortest: 1e4, Longest: 2.6e7}
}

func (cem) MinimumDuration(u, fetch, gravity float64) float64 {
	fetch += timed(u, fetch, gravity)
	return 77.23 * math.Pow(fetch, 0.67) / (math.Pow(u, 0.34) * math.Pow(gravity, 0.33))
}

func (l cem) After(u, seconds, gravity float64) (hs, tp float64) {
	seconds += timed(u, seconds, gravity)
	s := l.Scale(u)
	return dimensional(l, u, 5.23e-3*math.Pow(gravity*seconds/s, 1.5)*s*s/gravity, gravity)
}
