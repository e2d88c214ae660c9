package passage

import "math"

// An air is the wind at the start of the run through the hours before, during
// and after the departures, on an even step, summed up so that the mean over
// any span costs two look-ups.
type air struct {
	first       float64   // s after the grid's epoch
	step        float64   // s
	east, north []float64 // motion of the air, m/s; NaN where unknown
	sumE, sumN  []float64 // sums of the samples before
	sumSpeed    []float64
	sumMissing  []int
	airTemp     []float64 // °C, NaN where unknown
	waterTemp   []float64
}

// sum prepares the running sums.
func (a *air) sum(speed []float64) {
	n := len(a.east)
	a.sumE, a.sumN = make([]float64, n+1), make([]float64, n+1)
	a.sumSpeed, a.sumMissing = make([]float64, n+1), make([]int, n+1)
	for i := range n {
		e, nn, s, miss := a.east[i], a.north[i], speed[i], 0
		if v := e + nn + s; v != v {
			e, nn, s, miss = 0, 0, 0, 1
		}
		a.sumE[i+1], a.sumN[i+1] = a.sumE[i]+e, a.sumN[i]+nn
		a.sumSpeed[i+1], a.sumMissing[i+1] = a.sumSpeed[i]+s, a.sumMissing[i]+miss
	}
}

// indices returns the first sample at or after from and the one past the last
// at or before to; ok is false when the span is not inside the samples.
func (a *air) indices(from, to float64) (i, j int, ok bool) {
	if !(from >= a.first && to >= from && to <= a.first+a.step*float64(len(a.east)-1)) {
		return 0, 0, false
	}
	i = int(math.Ceil((from - a.first) / a.step))
	j = int(math.Floor((to-a.first)/a.step)) + 1
	return i, j, j > i
}

// steady returns the steadiness of the wind over a span: the speed of the mean
// vector over the mean speed, 1 for a wind that never turns. NaN if the span
// is not known, or calm throughout.
func (a *air) steady(from, to float64) float64 {
	i, j, ok := a.indices(from, to)
	if !ok || a.sumMissing[j] != a.sumMissing[i] {
		return math.NaN()
	}
	s := math.Hypot(a.sumE[j]-a.sumE[i], a.sumN[j]-a.sumN[i]) / (a.sumSpeed[j] - a.sumSpeed[i])
	if s > 1 { // the last digit of the sums; a NaN stays one
		return 1
	}
	return s
}

// turn returns the greatest turn of the wind over a span from its direction
// at the start, in degrees, and when; NaN if some of it is unknown or calm.
func (a *air) turn(from, to float64) (degrees, at float64) {
	i, j, ok := a.indices(from, to)
	if !ok || a.sumMissing[j] != a.sumMissing[i] {
		return math.NaN(), from
	}
	e0, n0 := a.east[i], a.north[i]
	least, k := 1.0, i
	for m := i; m < j; m++ {
		e, n := a.east[m], a.north[m]
		c := (e*e0 + n*n0) / math.Sqrt((e*e+n*n)*(e0*e0+n0*n0))
		if !(c >= least) { // also for NaN
			least, k = c, m
			if c != c {
				break
			}
		}
	}
	return math.Acos(math.Max(least, -1)) * (180 / math.Pi), a.first + a.step*float64(k)
}

// between returns the value of a series of the air at t, linear between
// samples.
func (a *air) between(x []float64, t float64) float64 {
	i, _, ok := a.indices(t, t+a.step)
	if !ok || len(x) == 0 {
		return math.NaN()
	}
	return x[i]
}
