package wave

import (
	"math"

	"followingsea.example/internal/dispersion"
)

// PeriodOfLength returns the period in seconds of a wave of the length in metres over the depth in metres: the dispersion
// relation the other way about, T = 2π/√(gk tanh kh) with k = 2π/L.
//
// Special cases are:
//
//	PeriodOfLength(+Inf, depth) = +Inf
//	PeriodOfLength(length, depth) = NaN if either is zero, negative or NaN, or both are infinite
//
// Source: [CEM-II-1] Eq. II-1-8.
func (w Water) PeriodOfLength(length, depth float64) float64 {
	if !(length > 0 && depth > 0) || math.IsInf(length, 1) && math.IsInf(depth, 1) {
		return math.NaN()
	}
	g := w.g()
	k := 2 * math.Pi / length
	if x := k * depth; x < 20 {
		y, _ := dispersion.Forward(x)
		if y < 1e-300 { // y/h would lose digits: tanh x is x
			return length / math.Sqrt(g*depth)
		}
		return 2 * math.Pi / math.Sqrt(g*(y/depth))
	}
	return 2 * math.Pi / math.Sqrt(g*k)
}

// PeriodOfSpeed returns the period in seconds of the wave whose crests move at the speed in m/s over the depth in metres:
// c = (g/ω) tanh kh solved for ω. In deep water it is 2πc/g. No wave is as fast as √(gh); slower ones have one period each.
//
// Special cases are:
//
//	PeriodOfSpeed(speed, depth) = NaN if the speed is √(g depth) or more
//	PeriodOfSpeed(speed, depth) = NaN if either is zero, negative or NaN, or the speed is infinite
//
// Source: [CEM-II-1] Eq. II-1-7.
func (w Water) PeriodOfSpeed(speed, depth float64) float64 {
	if !(positive(speed) && depth > 0) {
		return math.NaN()
	}
	g := w.g()
	if math.IsInf(depth, 1) {
		return 2 * math.Pi * speed / g
	}
	// With x = kh: c²/gh = tanh x/x, which falls from 1 to 0 as x grows.
	r := speed * speed / (g * depth)
	if !(r < 1) {
		return math.NaN()
	}
	x := rootOfTanhRatio(r)
	return 2 * math.Pi * depth / (x * speed)
}

// rootOfTanhRatio returns x > 0 with tanh x/x = r, 0 < r < 1.
func rootOfTanhRatio(r float64) float64 {
	if r < 0.05 { // tanh x is 1 for x above 20, all but to rounding
		return 1 / r
	}
	// Newton's method on f = tanh x - r x, concave where x > 0: from the right of the root it falls towards it and stops when
	// rounding stops it. Two bounds from there: 1/r, since tanh x < 1, and near r = 1 the series of the inverse.
	x := 1 / r
	if s := 1 - r; s < 0.4 {
		x = math.Min(x, math.Sqrt(3*s*(1+s*(1.2+3*s))))
	}
	for range 60 {
		t := math.Tanh(x)
		next := x - (t-r*x)/(1-t*t-r)
		if !(next < x) {
			break
		}
		x = next
	}
	return x
}

// DepthOfLength returns the depth in metres over which a wave of the period in seconds has the length in metres: what a
// chart lacks can be read off a photograph of the crests. It is h = artanh(ω²/gk)/k.
//
// The answer is sensitive where the water is deep: at half a wavelength of depth, 1 % of the period is a quarter of the
// depth and more.
//
// Special cases are:
//
//	DepthOfLength(period, length) = NaN if the length is gT²/2π or more: no depth gives it
//	DepthOfLength(period, length) = NaN if either is zero, negative, infinite or NaN
//
// Source: [CEM-II-1] Eq. II-1-8.
func (w Water) DepthOfLength(period, length float64) float64 {
	if !(positive(period) && positive(length)) {
		return math.NaN()
	}
	k := 2 * math.Pi / length
	omega := 2 * math.Pi / period
	t := omega * omega / (w.g() * k)
	if !(t < 1) {
		return math.NaN()
	}
	return math.Atanh(t) / k
}

// PeriodOfLength returns the period in seconds; see Water.PeriodOfLength, whose defaults it uses.
func PeriodOfLength(length, depth float64) float64 { return Water{}.PeriodOfLength(length, depth) }

// PeriodOfSpeed returns the period in seconds; see Water.PeriodOfSpeed, whose defaults it uses.
func PeriodOfSpeed(speed, depth float64) float64 { return Water{}.PeriodOfSpeed(speed, depth) }

// DepthOfLength returns the depth in metres; see Water.DepthOfLength, whose defaults it uses.
func DepthOfLength(period, length float64) float64 { return Water{}.DepthOfLength(period, length) }
