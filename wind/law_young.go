package wind

import "math"

// YoungVerhagen is the law of Young and Verhagen from Lake George, a lake of
// 2 m depth, for the energy E = g²m0/U⁴ and the peak frequency ν = fp·U/g,
//
//	E = 3.64e-3 [A tanh(0.00313 x^0.57 / A)]^1.74,     A = tanh(0.493 D^0.75)
//	ν = 0.133   [B tanh(5.215e-4 x^0.73 / B)]^-0.37,   B = tanh(0.331 D^1.01)
//
// with Hs = 4 √m0. In deep water it is the energy of JONSWAP with the
// frequency of [KahmaCalkoen]; over very long fetches in shallow water it
// reaches its depth-limited asymptotes, [DepthLimitedHeight] and
// [DepthLimitedPeriod] giving their usual rounded form.
//
// Source: [YoungVerhagen1996] eqs 21 to 26.
var YoungVerhagen Law = young{}

type young struct{}

func (young) String() string          { return "Young & Verhagen" }
func (young) Scale(u float64) float64 { return u }

func (young) Growth(x, d float64) (h, t float64) {
	a, b := 1.0, 1.0
	if !math.IsInf(d, 1) {
		a, b = math.Tanh(0.493*math.Pow(d, 0.75)), math.Tanh(0.331*math.Pow(d, 1.01))
	}
	h = 4 * math.Sqrt(3.64e-3) * math.Pow(tanhOver(a, 0.00313*math.Pow(x, 0.57)), 1.74/2)
	t = math.Pow(tanhOver(b, 5.215e-4*math.Pow(x, 0.73)), 0.37) / 0.133
	return h, t
}

func (young) Limits(float64) Limits {
	return Limits{Height: 4 * math.Sqrt(3.64e-3), Period: 1 / 0.133, Shortest: 100, Longest: 1e5}
}

// DepthLimitedHeight returns the greatest significant height (m) that a wind
// of u m/s at 10 m can raise in water of the given mean depth (m), however
// long the fetch: g²m0/U⁴ = 1e-3 (gd/U²)^1.2.
//
// Special cases are:
//
//	DepthLimitedHeight(u, d) = NaN unless u and d are positive and finite
//
// Source: [YoungBabanin2006] quoted in [ScientiMate] asymptlimit.
func DepthLimitedHeight(u, meanDepth float64) float64 {
	return depthLimitedHeight(Gravity, u, meanDepth)
}

func depthLimitedHeight(g, u, d float64) float64 {
	if !(u > 0 && d > 0 && u < math.Inf(1) && d < math.Inf(1)) {
		return math.NaN()
	}
	return 4 * math.Sqrt(1e-3*math.Pow(g*d/(u*u), 1.2)) * u * u / g
}

// DepthLimitedPeriod returns the longest peak period (s) that a wind of u m/s
// at 10 m can raise in water of the given mean depth (m): fp·U/g = 0.20
// (gd/U²)^-0.375.
//
// Special cases are:
//
//	DepthLimitedPeriod(u, d) = NaN unless u and d are positive and finite
//
// Source: [YoungVerhagen1996] quoted in [ScientiMate] asymptlimit.
func DepthLimitedPeriod(u, meanDepth float64) float64 {
	return depthLimitedPeriod(Gravity, u, meanDepth)
}

func depthLimitedPeriod(g, u, d float64) float64 {
	if !(u > 0 && d > 0 && u < math.Inf(1) && d < math.Inf(1)) {
		return math.NaN()
	}
	return u / (g * 0.2 * math.Pow(g*d/(u*u), -0.375))
}
