package wind

import (
	"math"

	"followingsea.example/internal/angle"
)

// Statistics of direction. A direction lives on a circle: the mean of 350 and
// 10 is north, not 180. Everything here is computed from sums of sines and
// cosines. The length of the mean unit vector,
//
//	R = hypot(mean sin, mean cos)
//
// is 1 for one direction and 0 for a uniform circle; every measure of spread
// is a function of R alone.

// unit returns the mean sine and cosine of the directions, NaN if there is
// none or one of them is NaN or infinite.
func unit(from []float64) (s, c float64) {
	if len(from) == 0 {
		return math.NaN(), math.NaN()
	}
	for _, d := range from {
		ds, dc := sincos(d)
		s += ds
		c += dc
	}
	n := float64(len(from))
	return s / n, c / n
}

// MeanDirection returns the unit-vector mean of directions in degrees, in
// [0, 360): atan2(mean sin, mean cos). Each direction counts the same whatever
// the speed. Leave calms out: they have none.
//
// Special cases are:
//
//	NaN for no directions, for a NaN or infinite one
//	NaN where they cancel (R below 1e-9): there is no mean direction. Below an
//	R of about 0.05, or 1/√n, there is one in name only.
//
// Source: [EPA-454-R-99-005] section 6.2.2, unit-vector mean.
func MeanDirection(from []float64) float64 {
	s, c := unit(from)
	return towardOf(s, c)
}

func towardOf(s, c float64) float64 {
	if !(math.Hypot(s, c) >= 1e-9) {
		return math.NaN()
	}
	return angle.Wrap(angle.Degrees(math.Atan2(s, c)))
}

// ResultantLength returns R, the length of the mean unit vector of directions
// in degrees, 0 to 1.
//
// Special cases are:
//
//	NaN for no directions, or a NaN or infinite one
//
// Source: [Mardia2000] chapter 2.
func ResultantLength(from []float64) float64 {
	s, c := unit(from)
	return math.Min(1, math.Hypot(s, c))
}

// CircularDeviation returns the circular standard deviation √(−2 ln R), in
// degrees; it grows without limit as R goes to 0.
//
// Special cases are:
//
//	+Inf where the directions cancel exactly
//	NaN for no directions, or a NaN or infinite one
//
// Source: [Mardia2000] chapter 2.
func CircularDeviation(from []float64) float64 {
	return angle.Degrees(math.Sqrt(-2*math.Log(ResultantLength(from)))) + 0
}

// AngularDeviation returns the mean angular deviation √(2(1 − R)), in degrees:
// at most 81.03.
//
// Special cases are:
//
//	NaN for no directions, or a NaN or infinite one
//
// Source: [Batschelet1981] mean angular deviation.
func AngularDeviation(from []float64) float64 {
	return angle.Degrees(math.Sqrt(2 * (1 - ResultantLength(from))))
}

// Yamartino returns the standard deviation of direction in degrees by
// Yamartino's single-pass method, the one most data loggers have:
//
//	σ = asin(ε) (1 + b ε³),  ε = √(1 − R²),  b = 2/√3 − 1 = 0.1547
//
// Within 2 % of the two-pass value; the uniform circle gives 103.92°.
//
// Special cases are:
//
//	NaN for no directions, or a NaN or infinite one
//
// Source: [Yamartino1984] the preferred algorithm.
func Yamartino(from []float64) float64 { return yamartino(ResultantLength(from)) }

func yamartino(r float64) float64 {
	e := math.Sqrt(math.Max(0, 1-r*r))
	return angle.Degrees(math.Asin(math.Min(1, e))) * (1 + (2/math.Sqrt(3)-1)*e*e*e)
}

// ScalarDirection returns Mitsuta's scalar mean of a sequence of directions in
// degrees, in [0, 360), and its standard deviation: each direction is unwrapped
// to within 180 of the one before and the plain mean and deviation are taken.
// It follows a wind right round the compass, but only holds while no step of
// the sequence exceeds 180 degrees: for samples of seconds, never for hourly
// means.
//
// Special cases are:
//
//	both NaN for no directions, or a NaN or infinite one
//
// Source: [EPA-454-R-99-005] section 6.2.1, scalar mean wind direction.
func ScalarDirection(from []float64) (mean, deviation float64) {
	if len(from) == 0 {
		return math.NaN(), math.NaN()
	}
	// Deviations from the first direction keep the sums small.
	var d, sum, sq float64
	for i := 1; i < len(from); i++ {
		d += angle.Diff(from[i-1], from[i])
		sum += d
		sq += d * d
	}
	n := float64(len(from))
	m := sum / n
	return angle.Wrap(from[0] + m), math.Sqrt(math.Max(0, sq/n-m*m)) + 0*m
}

// CombineDeviations returns the standard deviation of direction over an hour
// from those of its parts, as their root mean square. The parts must be of
// equal length; the meander between them is left out, as the regulation wants.
//
// Special cases are:
//
//	NaN for no parts, a negative or infinite one, or NaN
//
// Source: [EPA-454-R-99-005] section 6, hourly sigma-theta from 15-minute values.
func CombineDeviations(deg []float64) float64 {
	if len(deg) == 0 {
		return math.NaN()
	}
	var sq float64
	for _, d := range deg {
		if !(d >= 0 && finite(d)) {
			return math.NaN()
		}
		sq += d * d
	}
	return math.Sqrt(sq / float64(len(deg)))
}

// Mean is the average of winds, both ways. Report Speed with From; feed a
// growth law Vector, whose direction the strong winds decide; the speed of
// Vector alone is always lower than what blew.
type Mean struct {
	N     int     // winds averaged
	Calms int     // of them without direction
	Speed float64 // scalar mean, m/s: calms count
	// Vector is the mean motion of the air, the resultant.
	Vector Velocity
	// From is the unit-vector mean direction of the winds that blew; NaN if
	// none did or they cancel.
	From float64
	// R is the length of the mean unit vector of those that blew, 0 to 1.
	R float64
	// Yamartino is the standard deviation of direction in degrees.
	Yamartino float64
	// Steadiness is |Vector| / Speed, 0 to 1: 1 for a wind from one quarter,
	// 0 for one that boxed the compass. NaN if it never blew. Climatologies print it in percent, as
	// constancy. Above 0.97 the direction was steady enough to score a growth law.
	Steadiness float64
	// Gust is the highest gust among them, NaN if none has one.
	Gust float64
	// Lowest and Highest are the extremes of the mean speeds.
	Lowest, Highest float64
	// Covered is the part of the span that the record covers, 0 to 1; 1 for
	// a plain list.
	Covered float64
}

// Average returns the mean of the winds, each counting the same.
//
// Special cases are:
//
//	all NaN for no winds, or if one of them is not known
//
// Source: [EPA-454-R-99-005] sections 6.2.1 and 6.2.2.
func Average(winds []Wind) Mean {
	var a averager
	for _, w := range winds {
		a.add(w, 1)
	}
	return a.mean()
}

// averager sums winds with weights.
type averager struct {
	n, calms      int
	weight, blew  float64 // of all, and of those with a direction
	speed         float64
	vector        Velocity
	s, c          float64 // of the bearings FROM
	gust          float64
	lowest, most  float64
	hasGust, fail bool
}

func (a *averager) add(w Wind, weight float64) {
	if !w.known() {
		a.fail = true
		return
	}
	if a.n == 0 {
		a.lowest, a.most = w.Speed, w.Speed
	}
	a.n++
	a.weight += weight
	a.speed += weight * w.Speed
	a.lowest, a.most = math.Min(a.lowest, w.Speed), math.Max(a.most, w.Speed)
	if w.GustKnown() && !(a.hasGust && w.Gust <= a.gust) {
		a.gust, a.hasGust = w.Gust, true
	}
	if w.Speed == 0 {
		a.calms++
		return
	}
	a.vector = a.vector.Add(w.Velocity().Times(weight))
	s, c := sincos(w.From)
	a.s += weight * s
	a.c += weight * c
	a.blew += weight
}

func (a *averager) mean() Mean {
	if a.fail || a.n == 0 {
		n := math.NaN()
		return Mean{Speed: n, Vector: Velocity{n, n}, From: n, R: n, Yamartino: n, Steadiness: n, Gust: n, Lowest: n, Highest: n}
	}
	m := Mean{
		N: a.n, Calms: a.calms,
		Speed:  a.speed / a.weight,
		Vector: a.vector.Times(1 / a.weight),
		Lowest: a.lowest, Highest: a.most,
		Gust: math.NaN(), From: math.NaN(), R: math.NaN(), Yamartino: math.NaN(), Steadiness: math.NaN(),
		Covered: 1,
	}
	if a.hasGust {
		m.Gust = a.gust
	}
	if a.blew > 0 {
		s, c := a.s/a.blew, a.c/a.blew
		m.From = towardOf(s, c)
		m.R = math.Min(1, math.Hypot(s, c))
		m.Yamartino = yamartino(m.R)
	}
	if m.Speed > 0 {
		m.Steadiness = math.Min(1, m.Vector.Speed()/m.Speed)
	}
	return m
}
