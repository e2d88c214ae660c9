package wind

import "math"

// Bretschneider is the default growth law: the tanh forms of the
// Sverdrup-Munk-Bretschneider curves in deep water and in water of a
// constant depth, driven by the wind at 10 m itself,
//
//	g·Hs/U²   = 0.283 A tanh(0.0125 x^0.42 / A),   A = tanh(0.530 D^0.75)
//	g·T1/3/U  = 2.4π  B tanh(0.077  x^0.25 / B),   B = tanh(0.833 D^0.375)
//
// with x = gF/U², D = gd/U² and Tp = T1/3 / 0.95. Its own asymptote, 0.283
// U²/g, is above every measured fully developed sea, so [Grow] stops it at
// Hs = 0.24 U²/g or Tp = U/(0.13 g), whichever comes first.
//
// It is meant for x from about 100 to 20,000. Below x = 300 its periods are
// 15 to 25 % above those of [KahmaCalkoen] and [BreugemHolthuijsen]. On the
// measured points of Lake Superior it came out at +5 % and a scatter of 18 %
// in height near neutral stability; other laws do as well within the
// uncertainty of the wind (see [Band]).
//
// Source: [SPM1977] shallow-water forecasting equations, transcribed in [Grasmeijer2016].
// Source of a printed reading of the nomogram: [TAFB-nomogram] slide 10.
var Bretschneider Law = bretschneider{}

type bretschneider struct{}

func (bretschneider) String() string          { return "Bretschneider" }
func (bretschneider) Scale(u float64) float64 { return u }

func (bretschneider) Growth(x, d float64) (h, t float64) {
	a, b := 1.0, 1.0
	if !math.IsInf(d, 1) {
		// D^0.75 and D^0.375 from one logarithm.
		p := math.Pow(d, 0.375)
		a, b = math.Tanh(0.530*p*p), math.Tanh(0.833*p)
	}
	h = 0.283 * tanhOver(a, 0.0125*math.Pow(x, 0.42))
	t = 2.4 * math.Pi * tanhOver(b, 0.077*math.Sqrt(math.Sqrt(x)))
	return h, t * peakOverSignificant
}

func (bretschneider) Limits(float64) Limits {
	return Limits{Height: developedHeight, Period: developedPeriod, Shortest: 100, Longest: 2e4}
}
