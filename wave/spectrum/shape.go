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
	return 0.25 * math.Pow(1.25, -alpha) * gammaBetween(alpha, 1.25/(b*b*b*b), 1.25/(a*a*a*a))
}

// gammaBetween returns the integral of t^(alpha-1) e^-t from lo to hi, +Inf where it has no end at lo = 0.
func gammaBetween(alpha, lo, hi float64) float64 {
	if lo == 0 {
		if !(alpha > 0) {
			return math.Inf(1)
		}
		g := math.Gamma(alpha)
		if !math.IsInf(hi, 1) {
			g *= mathext.GammaIncReg(alpha, hi)
		}
		return g
	}
	// Between finite limits by quadrature in v = ln t: the difference of two incomplete gamma functions would lose all
	// digits of a narrow band. Above t = 745 nothing is left.
	v1, v0 := math.Log(math.Min(hi, 745)), math.Log(lo)
	if !(v0 < v1) {
		return 0
	}
	f := func(v float64) float64 { return math.Exp(alpha*v - math.Exp(v)) }
	steps := math.Ceil((v1 - v0) / 0.75) // at most 1900, from the smallest number to 745
	sum := 0.0
	for i := range int(steps) {
		sum += gauss(f, v0+(v1-v0)*float64(i)/steps, v0+(v1-v0)*float64(i+1)/steps)
	}
	return sum
}
