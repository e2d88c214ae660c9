package ride

import (
	"math"

	"followingsea.example/internal/dispersion"
)

// intrinsicWave returns wavenumber and intrinsic period of a wave that a fixed
// observer times at period, on a current along it, and whether it exists:
//
//	ω − k U = √(g k tanh kh)
//
// Against the current the left side meets the right one twice or never; the
// longer wave is the one that came in. It is [wave.Water.OnCurrent] without
// what a board has no use for, since a sea asks for some hundred of them.
func intrinsicWave(period, depth, current, g float64) (k, intrinsic float64, ok bool) {
	w := 2 * math.Pi / period
	if q := 1 + 4*w*current/g; q > 0 {
		// Deep water has a closed form; tanh kh is one from kh = 19.1 on.
		sigma := 2 * w / (1 + math.Sqrt(q))
		if k := sigma * sigma / g; k*depth > 20 {
			return k, 2 * math.Pi / sigma, true
		}
	} else if math.IsInf(depth, 1) {
		return 0, 0, false
	}
	y := w * w * depth / g
	if current == 0 {
		k = dispersion.Solve(y) / depth
		return k, period, k > 0
	}
	// With s = σ/ω and x = kh the dispersion relation gives x of s²y, and what
	// is left is s − 1 + x U/ωh = 0. It rises and bends one way, so that Newton
	// from s = 1, the wave without a current, never oversteps the root; a slope
	// that is used up means that there is none.
	u, s := current/(w*depth), 1.0
	for range 60 {
		x, n := dispersion.SolveRatio(s * s * y)
		slope := 1 + u*x/(n*s) // d ln x/d ln s = 1/n
		if !(slope > 0) {
			return 0, 0, false
		}
		step := (1 - s - u*x) / slope
		x *= 1 + step/(n*s)
		s += step
		if math.Abs(step) <= 1e-10 { // the next would be of the order of its square
			return x / depth, period / s, true
		}
	}
	return 0, 0, false
}
