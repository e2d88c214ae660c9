package wind

import "math"

// BreugemHolthuijsen is the growth law of Breugem and Holthuijsen for deep
// and finite depth,
//
//	g·Hs/U² = 0.24 [A tanh(4.41e-4 x^0.79 / A)]^0.572,  A = tanh(0.343 D^1.14)
//	g·Tp/U  = 7.69 [B tanh(2.77e-7 x^1.45 / B)]^0.187,  B = tanh(0.10 D^2.01)
//
// Its deep limit follows [KahmaCalkoen] at short fetch and full development
// at long fetch. Transcriptions disagree on the first coefficient; the other
// reading, 3.7 % lower in height at short fetch, is [BreugemHolthuijsen414].
//
// Source: [BreugemHolthuijsen2007], quoted in [InVEST] wave-fetch equation.
var BreugemHolthuijsen Law = breugem{name: "Breugem & Holthuijsen", k1: 4.41e-4}

// BreugemHolthuijsen414 is [BreugemHolthuijsen] with the coefficient 4.14e-4
// that other transcriptions carry.
//
// Source: [BreugemHolthuijsen2007], quoted in [Grasmeijer2016].
var BreugemHolthuijsen414 Law = breugem{name: "Breugem & Holthuijsen (4.14e-4)", k1: 4.14e-4}

type breugem struct {
	name string
	k1   float64
}

func (l breugem) String() string        { return l.name }
func (breugem) Scale(u float64) float64 { return u }

func (l breugem) Growth(x, d float64) (h, t float64) {
	a, b := 1.0, 1.0
	if !math.IsInf(d, 1) {
		a, b = math.Tanh(0.343*math.Pow(d, 1.14)), math.Tanh(0.10*math.Pow(d, 2.01))
	}
	h = developedHeight * math.Pow(tanhOver(a, l.k1*math.Pow(x, 0.79)), 0.572)
	t = 7.69 * math.Pow(tanhOver(b, 2.77e-7*math.Pow(x, 1.45)), 0.187)
	return h, t
}

func (breugem) Limits(float64) Limits {
	return Limits{Height: developedHeight, Period: 7.69, Shortest: 30, Longest: 1e5}
}
