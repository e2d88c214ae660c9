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
	k = dispersion.Solve(w*w*depth/g) / depth
	if current == 0 {
		return k, period, k > 0
	}
	// σ(k) + kU − ω is concave, so that Newton from the left never oversteps
	// the root; against the current the start, the wave without it, is on the
	// left, and a slope that is used up means that there is no root.
	for range 60 {
		t := math.Tanh(k * depth)
		sigma := math.Sqrt(g * k * t)
		slope := sigma/(2*k)*(1+k*depth*(1-t*t)/t) + current
		if !(slope > 0) {
			return 0, 0, false
		}
		dk := (w - k*current - sigma) / slope
		if k+dk <= 0 {
			dk = -k / 2
		}
		k += dk
		// A step squares the error, but for a wave that is nearly stopped.
		if d := math.Abs(dk); d <= 1e-13*k || d <= 1e-8*k && slope > sigma/(8*k) {
			return k, 2 * math.Pi / (w - k*current), true
		}
	}
	return 0, 0, false
}
