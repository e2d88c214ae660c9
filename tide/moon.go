package tide

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/clock"
)

// Periods of the moon's tide.
const (
	// SynodicMonth is the mean month from new moon to new moon in seconds,
	// 29.530588861 days.
	SynodicMonth = 29.530588861 * 86400
	// SpringsToSprings is half of it in seconds: 14.765 days.
	SpringsToSprings = SynodicMonth / 2
	// LunarDay is two periods of M2 in seconds, 24 h 50 min 28 s; from high water
	// to high water takes half of it.
	LunarDay = 2 * 360 / 28.9841042 * 3600
)

// A Phase is one of the moon's four.
type Phase uint8

// The phases.
const (
	NewMoon Phase = iota
	FirstQuarter
	FullMoon
	LastQuarter
)

// String returns the name of the phase.
func (p Phase) String() string {
	switch p {
	case NewMoon:
		return "new moon"
	case FirstQuarter:
		return "first quarter"
	case FullMoon:
		return "full moon"
	case LastQuarter:
		return "last quarter"
	}
	return "unknown phase"
}

// A MoonEvent is a phase of the moon and its instant.
type MoonEvent struct {
	Time  time.Time
	Phase Phase
}

// MeanPhase returns the Julian ephemeris day of the mean phase of lunation k
// (k whole for new moon, + 0.25, 0.5, 0.75 for the others, 0 in January 2000):
// up to twenty hours from the true one.
//
// Special cases are:
//
//	MeanPhase(k) = NaN for k NaN, infinite, beyond ±50000 or not a quarter
//
// Source: [Meeus1998] formula 49.1.
func MeanPhase(k float64) float64 {
	if _, ok := quarter(k); !ok {
		return math.NaN()
	}
	t := k / 1236.85
	return 2451550.09766 + 29.530588861*k + t*t*(0.00015437+t*(-0.000000150+t*0.00000000073))
}

// quarter returns the phase of k.
func quarter(k float64) (Phase, bool) {
	q := 4 * k
	if !(math.Abs(k) <= 50000) || q != math.Floor(q) {
		return 0, false
	}
	return Phase(math.Mod(math.Mod(q, 4)+4, 4)), true
}

// A phaseTerm is one line of the series: the coefficients of new and full moon, the
// power of E, and the multiples of M, M', F (and of Ω, in the last).
type phaseTerm struct {
	c                 [2]float64
	e                 int
	m, moon, f, omega float64
}

var syzygies = []phaseTerm{
	{[2]float64{-0.40720, -0.40614}, 0, 0, 1, 0, 0},
	{[2]float64{0.17241, 0.17302}, 1, 1, 0, 0, 0},
	{[2]float64{0.01608, 0.01614}, 0, 0, 2, 0, 0},
	{[2]float64{0.01039, 0.01043}, 0, 0, 0, 2, 0},
	{[2]float64{0.00739, 0.00734}, 1, -1, 1, 0, 0},
	{[2]float64{-0.00514, -0.00515}, 1, 1, 1, 0, 0},
	{[2]float64{0.00208, 0.00209}, 2, 2, 0, 0, 0},
	{[2]float64{-0.00111, -0.00111}, 0, 0, 1, -2, 0},
	{[2]float64{-0.00057, -0.00057}, 0, 0, 1, 2, 0},
	{[2]float64{0.00056, 0.00056}, 1, 1, 2, 0, 0},
	{[2]float64{-0.00042, -0.00042}, 0, 0, 3, 0, 0},
	{[2]float64{0.00042, 0.00042}, 1, 1, 0, 2, 0},
	{[2]float64{0.00038, 0.00038}, 1, 1, 0, -2, 0},
	{[2]float64{-0.00024, -0.00024}, 1, -1, 2, 0, 0},
	{[2]float64{-0.00017, -0.00017}, 0, 0, 0, 0, 1},
	{[2]float64{-0.00007, -0.00007}, 0, 2, 1, 0, 0},
	{[2]float64{0.00004, 0.00004}, 0, 0, 2, -2, 0},
	{[2]float64{0.00004, 0.00004}, 0, 3, 0, 0, 0},
	{[2]float64{0.00003, 0.00003}, 0, 1, 1, -2, 0},
	{[2]float64{0.00003, 0.00003}, 0, 0, 2, 2, 0},
	{[2]float64{-0.00003, -0.00003}, 0, 1, 1, 2, 0},
	{[2]float64{0.00003, 0.00003}, 0, -1, 1, 2, 0},
	{[2]float64{-0.00002, -0.00002}, 0, -1, 1, -2, 0},
	{[2]float64{-0.00002, -0.00002}, 0, 1, 3, 0, 0},
	{[2]float64{0.00002, 0.00002}, 0, 0, 4, 0, 0},
}

var quarters = []phaseTerm{
	{[2]float64{-0.62801}, 0, 0, 1, 0, 0},
	{[2]float64{0.17172}, 1, 1, 0, 0, 0},
	{[2]float64{-0.01183}, 1, 1, 1, 0, 0},
	{[2]float64{0.00862}, 0, 0, 2, 0, 0},
	{[2]float64{0.00804}, 0, 0, 0, 2, 0},
	{[2]float64{0.00454}, 1, -1, 1, 0, 0},
	{[2]float64{0.00204}, 2, 2, 0, 0, 0},
	{[2]float64{-0.00180}, 0, 0, 1, -2, 0},
	{[2]float64{-0.00070}, 0, 0, 1, 2, 0},
	{[2]float64{-0.00040}, 0, 0, 3, 0, 0},
	{[2]float64{-0.00034}, 1, -1, 2, 0, 0},
	{[2]float64{0.00032}, 1, 1, 0, 2, 0},
	{[2]float64{0.00032}, 1, 1, 0, -2, 0},
	{[2]float64{-0.00028}, 2, 2, 1, 0, 0},
	{[2]float64{0.00027}, 1, 1, 2, 0, 0},
	{[2]float64{-0.00017}, 0, 0, 0, 0, 1},
	{[2]float64{-0.00005}, 0, -1, 1, -2, 0},
	{[2]float64{0.00004}, 0, 0, 2, 2, 0},
	{[2]float64{-0.00004}, 0, 1, 1, 2, 0},
	{[2]float64{0.00004}, 0, -2, 1, 0, 0},
	{[2]float64{0.00003}, 0, 1, 1, -2, 0},
	{[2]float64{0.00003}, 0, 3, 0, 0, 0},
	{[2]float64{0.00002}, 0, 0, 2, -2, 0},
	{[2]float64{0.00002}, 0, -1, 1, 2, 0},
	{[2]float64{-0.00002}, 0, 1, 3, 0, 0},
}

// The additional corrections: angle at k = 0, motion per k, size in days.
var planets = [14][3]float64{
	{299.77, 0.107408, 0.000325}, {251.88, 0.016321, 0.000165}, {251.83, 26.651886, 0.000164}, {349.42, 36.412478, 0.000126},
	{84.66, 18.206239, 0.000110}, {141.74, 53.303771, 0.000062}, {207.14, 2.453732, 0.000060}, {154.84, 7.306860, 0.000056},
	{34.52, 27.261239, 0.000047}, {207.19, 0.121824, 0.000042}, {291.34, 1.844379, 0.000040}, {161.72, 24.198154, 0.000037},
	{239.56, 25.513099, 0.000035}, {331.55, 3.592518, 0.000023},
}

// TruePhase returns the Julian ephemeris day of the phase of lunation k (see
// MeanPhase), in dynamical time: good to some 20 s in this century. Subtract
// DeltaT for universal time, as MoonPhases does.
//
// Special cases are those of MeanPhase.
//
// Source: [Meeus1998] ch. 49.
func TruePhase(k float64) float64 {
	q, ok := quarter(k)
	if !ok {
		return math.NaN()
	}
	t := k / 1236.85
	r := angle.Radians
	e := 1 - t*(0.002516+t*0.0000074)
	m := r(2.5534 + 29.10535670*k - t*t*(0.0000014+t*0.00000011))
	moon := r(201.5643 + 385.81693528*k + t*t*(0.0107582+t*(0.00001238-t*0.000000058)))
	f := r(160.7108 + 390.67050284*k - t*t*(0.0016118+t*(0.00000227-t*0.000000011)))
	omega := r(124.7746 - 1.56375588*k + t*t*(0.0020672+t*0.00000215))
	series, column := quarters, 0
	if q == NewMoon || q == FullMoon {
		series, column = syzygies, int(q)/2
	}
	sum := 0.0
	for _, s := range series {
		c := s.c[column]
		for i := 0; i < s.e; i++ {
			c *= e
		}
		sum += c * math.Sin(s.m*m+s.moon*moon+s.f*f+s.omega*omega)
	}
	if q == FirstQuarter || q == LastQuarter {
		w := 0.00306 - 0.00038*e*math.Cos(m) + 0.00026*math.Cos(moon) - 0.00002*math.Cos(moon-m) + 0.00002*math.Cos(moon+m) + 0.00002*math.Cos(2*f)
		if q == LastQuarter {
			w = -w
		}
		sum += w
	}
	for i, p := range planets {
		a := p[0] + p[1]*k
		if i == 0 {
			a -= 0.009173 * t * t
		}
		sum += p[2] * math.Sin(r(a))
	}
	return MeanPhase(k) + sum
}

// Dynamical less universal time in seconds, as observed, and a guess to come.
var deltaT = [][2]float64{
	{1900, -2.8}, {1910, 10.4}, {1920, 21.2}, {1930, 24.0}, {1940, 24.3}, {1950, 29.1}, {1960, 33.1}, {1970, 40.2}, {1980, 50.5},
	{1990, 56.9}, {2000, 63.8}, {2005, 64.7}, {2010, 66.1}, {2015, 67.6}, {2020, 69.4}, {2026, 69.2}, {2040, 71}, {2060, 77}, {2100, 93},
}

// DeltaT returns dynamical time less universal time in seconds in a year
// (2026.5 is the middle of 2026): observed to 2026, a guess of some seconds
// after it.
//
// Special cases are:
//
//	DeltaT(y) = NaN before 1900, after 2100 and for NaN
//
// Source: [Meeus1998] ch. 10, table 10.A, to 1998; published observations since.
func DeltaT(year float64) float64 {
	if !(year >= 1900 && year <= 2100) {
		return math.NaN()
	}
	i := 1
	for year > deltaT[i][0] {
		i++
	}
	a, b := deltaT[i-1], deltaT[i]
	return a[1] + (b[1]-a[1])*(year-a[0])/(b[0]-a[0])
}

// MoonPhases returns the phases of the moon in [from, to] in universal time,
// good to about half a minute. Springs follow new and full moon, neaps the
// quarters, by the age of the tide. ErrValue for a span that is not positive
// or leaves 1900 to 2100.
//
// Source: [Meeus1998] ch. 49.
func MoonPhases(from, to time.Time) ([]MoonEvent, error) {
	if !from.Before(to) || from.UTC().Year() < 1900 || to.UTC().Year() >= 2100 {
		return nil, fmt.Errorf("%w: phases from %v to %v: want a positive span in 1900 to 2099", ErrValue, from.Format(time.RFC3339), to.Format(time.RFC3339))
	}
	const j2000 = 2451545.0
	epoch := time.Date(2000, 1, 1, 12, 0, 0, 0, time.UTC)
	var out []MoonEvent
	k := math.Floor((clock.Seconds(epoch, from)/86400-5.1)/29.530588861*4-2) / 4
	for ; ; k += 0.25 {
		days := TruePhase(k) - j2000
		year := 2000 + days/365.25
		if year < 1900 { // before any span, and before DeltaT begins
			continue
		}
		if year > 2100 {
			return out, nil
		}
		at, err := clock.After(epoch, days*86400-DeltaT(year))
		if err != nil {
			return nil, err
		}
		if at.After(to) {
			return out, nil
		}
		if q, ok := quarter(k); ok && !at.Before(from) {
			out = append(out, MoonEvent{at, q})
		}
	}
}

// Age returns the age of the tide in seconds from the phase lags of M2 and S2
// in degrees: by how much springs follow new and full moon, negative when they
// come first.
//
//	age = (g_S2 − g_M2) / (30 − 28.9841042)   hours, the difference within ±180°
//
// Special cases are:
//
//	Age = NaN if either is NaN or infinite
//
// Source: [Schureman1958] paragraph on the phase age.
func Age(m2Lag, s2Lag float64) float64 {
	return angle.Diff(m2Lag, s2Lag) / (30 - 28.9841042) * 3600
}

// RangeByPhase returns the range in metres of a tide of M2 and S2 alone, from
// their amplitudes and the seconds since springs (new or full moon, plus the
// age of the tide):
//
//	R = 2 √(M2² + S2² + 2 M2 S2 cos(2π t/14.7653 d))
//
// from 2 (M2 + S2) at springs to 2 |M2 − S2| at neaps. The perigee (N2) moves
// springs by as much again on many coasts, and diurnal tides follow the moon's
// declination: where there are constituents, use package harmonic.
//
// Special cases are:
//
//	RangeByPhase = NaN for an amplitude negative, NaN or infinite, or t NaN or infinite
//
// Source: the beat of M2 and S2; [Meeus1998] formula 49.1 for its period.
func RangeByPhase(m2, s2, sinceSprings float64) float64 {
	if !(m2 >= 0 && s2 >= 0) || math.IsInf(m2+s2, 0) {
		return math.NaN()
	}
	c := math.Cos(2 * math.Pi * math.Mod(sinceSprings, SpringsToSprings) / SpringsToSprings)
	return 2 * math.Sqrt(math.Max(0, m2*m2+s2*s2+2*m2*s2*c))
}
