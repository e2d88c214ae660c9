package spectrum

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// The shape shared by Pierson-Moskowitz, Bretschneider and, under its peak, JONSWAP, without dimensions: with x = f/fp
//
//	b(x) = x⁻⁵ exp(-5/4 x⁻⁴),  ∫ b dx = 1/5
//
// Its moments are closed. With t = 5/4 x⁻⁴ and α = 1 - n/4
//
//	∫ xⁿ b dx = ¼ (5/4)^-α ∫ t^(α-1) e^-t dt

// base returns b(x).
func base(x float64) float64 {
	x2 := x * x
	x4 := x2 * x2
	e := 1.25 / x4
	if e > 745 { // exp underflows; x⁻⁵ may overflow
		return 0
	}
	return math.Exp(-e) / (x4 * x)
}

// baseMoment returns the integral of xⁿ b(x) from a to b, +Inf where it has no end.
func baseMoment(n, a, b float64) float64 {
	alpha := 1 - n/4
	ta := 1.25 / (a * a * a * a) // +Inf at 0
	tb := 1.25 / (b * b * b * b) // 0 at +Inf
	scale := 0.25 * math.Pow(1.25, -alpha)
	if tb == 0 {
		if !(alpha > 0) {
			return math.Inf(1)
		}
		g := math.Gamma(alpha)
		if !math.IsInf(ta, 1) {
			g *= mathext.GammaIncReg(alpha, ta)
		}
		return scale * g
	}
	// Between finite limits by quadrature in v = ln t: the difference of two incomplete gamma functions would lose all
	// digits of a narrow band. Above t = 745 nothing is left.
	va, vb := math.Log(math.Min(ta, 745)), math.Log(tb)
	if !(vb < va) {
		return 0
	}
	f := func(v float64) float64 { return math.Exp(alpha*v - math.Exp(v)) }
	steps := math.Ceil((va - vb) / 0.75)
	if !(steps < 4096) { // from t = 1e-300: the power law below is exact there
		steps = 4096
	}
	sum := 0.0
	for i := range int(steps) {
		sum += gauss(f, vb+(va-vb)*float64(i)/steps, vb+(va-vb)*float64(i+1)/steps)
	}
	return scale * sum
}
