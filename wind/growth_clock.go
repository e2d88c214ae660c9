package wind

import (
	"math"

	"followingsea.example/internal/dispersion"
)

// Time on a growth curve, all of it without dimensions: a wave group at the peak
// travels at cg* = cg/S, so that reaching the fetch x takes
//
//	t* = g·t/S = ∫ dx' / cg*(x')  over 0 to x.
//
// The integral runs over ln x, where the integrand x/cg* is a power of x bent
// slowly by full development and depth, in panels of one e-fold with six Gauss
// points each; below the first panel the power law is integrated exactly.

// groupSpeed returns cg/S for the dimensionless period t = g·Tp/S and depth.
func groupSpeed(t, depth float64) float64 {
	if math.IsInf(depth, 1) {
		return t / (4 * math.Pi)
	}
	y := 4 * math.Pi * math.Pi * depth / (t * t)
	if math.IsInf(y, 1) {
		return t / (4 * math.Pi)
	}
	x, n := dispersion.SolveRatio(y)
	return n * t / (2 * math.Pi) * (y / x)
}

var (
	gaussNode   = [6]float64{-0.9324695142031521, -0.6612093864662645, -0.2386191860831969, 0.2386191860831969, 0.6612093864662645, 0.9324695142031521}
	gaussWeight = [6]float64{0.1713244923791704, 0.3607615730481386, 0.4679139345726910, 0.4679139345726910, 0.3607615730481386, 0.1713244923791704}
)

// timePanels e-folds are integrated below x; what is left is e^-20 of the fetch.
const timePanels = 20

// timeOver returns the dimensionless time t* in which a sea grows over the fetch x.
func timeOver(law Law, x, depth float64) float64 {
	if x == 0 || math.IsInf(x, 1) {
		return x
	}
	rate := func(x float64) float64 {
		_, t := law.Growth(x, depth)
		return x / groupSpeed(t, depth)
	}
	u := math.Log(x) - timePanels
	sum := firstTime(rate, u)
	for range timePanels {
		panel := 0.0
		for i, z := range gaussNode {
			panel += gaussWeight[i] * rate(math.Exp(u+(1+z)/2))
		}
		sum += panel / 2
		u++
	}
	return sum
}

// firstTime integrates the power law that starts every growth curve from 0 to e^u.
func firstTime(rate func(float64) float64, u float64) float64 {
	a, b := rate(math.Exp(u)), rate(math.Exp(u+0.5))
	return a / (2 * math.Log(b/a)) // ∫ of C e^{pv} dv = C e^{pu} / p
}

// fetchInTime returns the fetch x that takes the time t*: Newton's method on the
// logarithms, where the curve is nearly straight.
func fetchInTime(law Law, time, depth float64) float64 {
	u := math.Log(1e3)
	for range 50 {
		x := math.Exp(u)
		t := timeOver(law, x, depth)
		_, period := law.Growth(x, depth)
		step := math.Log(time/t) * t * groupSpeed(period, depth) / x
		step = math.Max(-6, math.Min(6, step))
		u += step
		if math.Abs(step) < 1e-12 {
			break
		}
	}
	return math.Exp(u)
}

// reach returns the least x at which the rising function f is at least v, +Inf if
// it never is, by bisection of ln x.
func reach(f func(float64) float64, v float64) float64 {
	lo, hi := math.Log(1e-12), math.Log(1e16)
	if !(f(math.Exp(hi)) >= v) {
		if math.IsNaN(v) {
			return v
		}
		return math.Inf(1)
	}
	if f(math.Exp(lo)) >= v {
		return math.Exp(lo)
	}
	for range 64 {
		mid := (lo + hi) / 2
		if f(math.Exp(mid)) >= v {
			hi = mid
		} else {
			lo = mid
		}
	}
	return math.Exp(hi)
}

// developedFetch returns the x at which the first of height and period reaches full
// development; +Inf for a law whose asymptotes they are, or that stays below in this depth.
func developedFetch(law Law, u, depth float64) float64 {
	lim := law.Limits(u)
	height := func(x float64) float64 { h, _ := law.Growth(x, depth); return h }
	period := func(x float64) float64 { _, t := law.Growth(x, depth); return t }
	x := math.Inf(1)
	if height(x) > lim.Height {
		x = reach(height, lim.Height)
	}
	if period(math.Inf(1)) > lim.Period {
		x = math.Min(x, reach(period, lim.Period))
	}
	return x
}
