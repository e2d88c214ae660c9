package wind

import "math"

// GroenDorrestein is the closed form of the growth curves of Groen and
// Dorrestein that the marine handbooks reprint, in deep water and at constant
// depth,
//
//	g·H/U² = 0.24 A tanh(0.015  x^0.45 / A),   A = tanh(0.710 D^0.763)
//	g·T/U  = 2π   B tanh(0.0345 x^0.37 / B),   B = tanh(0.855 D^0.365)
//
// with H at most 0.55 d. H and T there are the characteristic height and
// period that observers report; this law takes them as Hs and T1/3, with
// Tp = T1/3 / 0.95.
//
// Source: [GroenDorrestein1976], quoted in [Holleman2022].
var GroenDorrestein Law = groen{}

type groen struct{}

func (groen) String() string          { return "Groen & Dorrestein" }
func (groen) Scale(u float64) float64 { return u }

func (groen) Growth(x, d float64) (h, t float64) {
	a, b := 1.0, 1.0
	if !math.IsInf(d, 1) {
		a, b = math.Tanh(0.710*math.Pow(d, 0.763)), math.Tanh(0.855*math.Pow(d, 0.365))
	}
	h = math.Min(0.24*tanhOver(a, 0.015*math.Pow(x, 0.45)), 0.55*d)
	t = 2 * math.Pi * tanhOver(b, 0.0345*math.Pow(x, 0.37))
	return h, t * peakOverSignificant
}

func (groen) Limits(float64) Limits {
	return Limits{Height: 0.24, Period: 2 * math.Pi * peakOverSignificant, Shortest: 100, Longest: 1e5}
}
