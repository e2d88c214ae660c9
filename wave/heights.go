package wave

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// The heights of the single waves of a sea. A narrow-banded sea of linear waves has Rayleigh heights,
//
//	P(height > H) = exp(-2 (H/Hs)²),  Hs = 4 √m0
//
// Measured seas are broader, and their waves lower: the law puts the heights, largest included, some 9.5 % too high on
// average in deep water [CasasPratHolthuijsen2010], while crests are 3 % higher than it has them. Forristall's fit to storms
// takes the first into account. Both are of the form exp(-(H/bHs)^a).

// A HeightLaw is the distribution of the heights of single waves in a sea: P(height > H) = exp(-(H/(Scale Hs))^Shape).
type HeightLaw struct {
	Scale float64
	Shape float64
}

// The laws in use.
var (
	Rayleigh   = HeightLaw{1 / math.Sqrt2, 2}                  // narrow band; some 9.5 % too high in measured seas
	Forristall = HeightLaw{math.Pow(8.42, 1/2.126) / 4, 2.126} // storms in the Gulf of Mexico
)

func (l HeightLaw) ok() bool { return positive(l.Scale) && positive(l.Shape) }

// significant returns the height, NaN unless it is finite and not negative.
func significant(hs float64) float64 { return 2 * amplitude(hs) }

// Exceedance returns the probability that a wave of a sea of the significant height is higher than the height, both in metres.
//
// Special cases are:
//
//	Exceedance(height, 0) = 0 for a height above 0, and 1 for a height of 0
//	Exceedance(+Inf, hs) = 0
//	Exceedance(height, hs) = NaN if either is negative or NaN, or hs is infinite
//
// Source: [LonguetHiggins1952] for Rayleigh; [Forristall1978].
func (l HeightLaw) Exceedance(height, hs float64) float64 {
	if !(height >= 0 && hs >= 0 && finite(hs) && l.ok()) {
		return math.NaN()
	}
	if height == 0 {
		return 1
	}
	r := height / (l.Scale * hs)
	if l.Shape == 2 {
		return math.Exp(-r * r)
	}
	return math.Exp(-math.Pow(r, l.Shape))
}

// ExceededByOneIn returns the height in metres that one wave in n exceeds, in a sea of the significant height in metres:
// Hs √(ln n/2) for Rayleigh. It is lower than the mean of those waves, MeanOfHighest: 1.07 Hs against 1.27 Hs for one in ten.
//
// Special cases are:
//
//	ExceededByOneIn(n, hs) = NaN if n is less than 1, infinite or NaN, or hs is negative, infinite or NaN
//
// Source: [NWS-Boston] for one in 10, 100 and 1000.
func (l HeightLaw) ExceededByOneIn(n, hs float64) float64 {
	if !(n >= 1 && finite(n) && l.ok()) {
		return math.NaN()
	}
	return significant(hs) * l.Scale * l.root(math.Log(n))
}

// root returns t^(1/Shape), the height in units of Scale Hs where the exponent is t.
func (l HeightLaw) root(t float64) float64 {
	if l.Shape == 2 {
		return math.Sqrt(t)
	}
	return math.Pow(t, 1/l.Shape)
}

// MeanOfHighest returns the mean height in metres of the highest one in n of the waves, in a sea of the significant height in
// metres: n = 3 gives H1/3, 10 H1/10, 1 the mean of all. With a = ln n it is, for Rayleigh,
//
//	(√a + n (√π/2) erfc √a) Hs/√2
//
// H1/3 comes to 1.0011 Hs, H1/10 to 1.2727 Hs, H1/100 to 1.6682 Hs and the mean to 0.6267 Hs.
//
// Special cases are:
//
//	MeanOfHighest(n, hs) = NaN if n is less than 1, infinite or NaN, or hs is negative, infinite or NaN
//
// Source: [LonguetHiggins1952]; [ACES1992] for the ratios to H1/3.
func (l HeightLaw) MeanOfHighest(n, hs float64) float64 {
	if !(n >= 1 && finite(n) && l.ok()) {
		return math.NaN()
	}
	a := math.Log(n)
	if l.Shape == 2 {
		s := math.Sqrt(a)
		return significant(hs) * l.Scale * (s + n*(math.Sqrt(math.Pi)/2)*math.Erfc(s))
	}
	p := 1 + 1/l.Shape // n Γ(1 + 1/Shape, ln n)
	return significant(hs) * l.Scale * n * math.Gamma(p) * mathext.GammaIncRegComp(p, a)
}

// RootMeanSquare returns the root-mean-square height in metres of the waves of a sea of the significant height in metres:
// Hs/√2 for Rayleigh.
//
// Special cases are:
//
//	RootMeanSquare(hs) = NaN if hs is negative, infinite or NaN
//
// Source: [LonguetHiggins1952].
func (l HeightLaw) RootMeanSquare(hs float64) float64 {
	if !l.ok() {
		return math.NaN()
	}
	return significant(hs) * l.Scale * math.Sqrt(math.Gamma(1+2/l.Shape))
}

// LargestMode returns the most probable height in metres of the largest of n waves, in a sea of the significant height in
// metres, as it is usually computed: the height that one wave in n exceeds, Hs √(ln n/2) for Rayleigh. Two times in three
// (1 - 1/e) the largest is higher.
//
// Special cases are:
//
//	LargestMode(n, hs) = NaN if n is less than 1, infinite or NaN, or hs is negative, infinite or NaN
//
// Source: [LonguetHiggins1952].
func (l HeightLaw) LargestMode(n, hs float64) float64 { return l.ExceededByOneIn(n, hs) }

// LargestQuantile returns the height in metres that the largest of n waves stays below with the probability p, in a sea of the
// significant height in metres: with p = 1/2 the median of the largest. The waves are taken to be independent.
//
// Special cases are:
//
//	LargestQuantile(p, n, hs) = NaN if p is not between 0 and 1, both excluded, n is less than 1, infinite or NaN, or hs is
//	negative, infinite or NaN
//
// Source: [LonguetHiggins1952]; order statistics.
func (l HeightLaw) LargestQuantile(p, n, hs float64) float64 {
	if !(p > 0 && p < 1 && n >= 1 && finite(n) && l.ok()) {
		return math.NaN()
	}
	// (1 - e^-t)^n = p, and so t = -ln(1 - p^(1/n)).
	return significant(hs) * l.Scale * l.root(-math.Log(-math.Expm1(math.Log(p)/n)))
}

// LargestMean returns the expected height in metres of the largest of n waves, in a sea of the significant height in metres:
// 1.60 Hs for 100 waves, 1.93 Hs for 1000 by Rayleigh. It is computed as an integral, and is good to 1e-9; the asymptotic
// form (√(ln n) + 0.2886/√(ln n)) Hs/√2 is 0.8 % more for 100 waves. The waves are taken to be independent. Measured seas
// have lower waves than Rayleigh's, by 9.5 % on average.
//
// Special cases are:
//
//	LargestMean(n, hs) = NaN if n is less than 1, infinite or NaN, or hs is negative, infinite or NaN
//
// Source: [LonguetHiggins1952]; [CasasPratHolthuijsen2010] for the bias.
func (l HeightLaw) LargestMean(n, hs float64) float64 {
	h := significant(hs)
	if !(n >= 1 && finite(n) && l.ok()) || math.IsNaN(h) {
		return math.NaN()
	}
	// E = ∫ (1 - (1 - exp(-r^Shape))^n) dr. The integrand is 1 up to near the mode and falls like a Gaussian beyond; the
	// trapezoidal rule on a variable that reaches both ends at double-exponential speed has it to rounding.
	top := l.root(math.Log(n) + 45)
	f := func(r float64) float64 {
		return -math.Expm1(n * math.Log1p(-math.Exp(-math.Pow(r, l.Shape))))
	}
	const steps = 256
	const reach = 3.2
	sum := 0.0
	for i := -steps; i <= steps; i++ {
		u := reach * float64(i) / steps
		s := math.Pi / 2 * math.Sinh(u)
		c := math.Cosh(s)
		r := top / 2 * (1 + math.Tanh(s))
		if r <= 0 || r >= top {
			continue
		}
		sum += f(r) * math.Cosh(u) / (c * c)
	}
	return h * l.Scale * sum * (reach / steps) * (math.Pi / 2) * top / 2
}

// WavesIn returns the number of waves that pass in the time in seconds, of the mean period (Tz) in seconds: what n is in the
// functions above.
//
// Special cases are:
//
//	WavesIn(seconds, tz) = NaN if the time is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: a definition.
func WavesIn(seconds, tz float64) float64 {
	if !(seconds >= 0 && finite(seconds) && positive(tz)) {
		return math.NaN()
	}
	return seconds / tz
}

// TimeToOneIn returns the mean time in seconds between waves higher than the height that one in n exceeds, of the mean period
// (Tz) in seconds: n Tz.
//
// Special cases are:
//
//	TimeToOneIn(n, tz) = NaN if n is less than 1, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [NWS-glossary].
func TimeToOneIn(n, tz float64) float64 {
	if !(n >= 1 && finite(n) && positive(tz)) {
		return math.NaN()
	}
	return n * tz
}

// SignificantOfRMS returns the significant height in metres, 4 √m0, of a sea of Rayleigh heights with the root-mean-square
// height in metres: √2 times it.
//
// Special cases are:
//
//	SignificantOfRMS(rms) = NaN if it is negative, infinite or NaN
//
// Source: [LonguetHiggins1952].
func SignificantOfRMS(rms float64) float64 { return significant(rms) * math.Sqrt2 }

// SignificantOfThird returns the significant height in metres, 4 √m0, of a sea of Rayleigh heights with the mean height in
// metres of the highest third: H1/3/1.0011. Measured seas have H1/3 of about 0.95 times 4 √m0.
//
// Special cases are:
//
//	SignificantOfThird(third) = NaN if it is negative, infinite or NaN
//
// Source: [LonguetHiggins1952].
func SignificantOfThird(third float64) float64 {
	return significant(third) / (HeightLaw{1 / math.Sqrt2, 2}).MeanOfHighest(3, 1)
}

// ShallowOneInHundred returns the height in metres that one wave in a hundred exceeds, in water shallow enough to limit it:
// 1.517 H1/3/(1 + H1/3/h)^1/3, with the mean of the highest third and the depth in metres.
//
// Special cases are:
//
//	ShallowOneInHundred(third, +Inf) = 1.517 third
//	ShallowOneInHundred is NaN if the height is negative, infinite or NaN, or the depth is zero, negative or NaN
//
// Source: [CEM-II-8] p. II-8-27, after CIRIA/CUR 1991.
func ShallowOneInHundred(third, depth float64) float64 {
	return shallow(1.517, 1.0/3, third, depth)
}

// ShallowOneInThousand returns the height in metres that one wave in a thousand exceeds, in water shallow enough to limit it:
// 1.859 H1/3/(1 + H1/3/h)^1/2, with the mean of the highest third and the depth in metres.
//
// Special cases are:
//
//	ShallowOneInThousand(third, +Inf) = 1.859 third
//	ShallowOneInThousand is NaN if the height is negative, infinite or NaN, or the depth is zero, negative or NaN
//
// Source: [CEM-II-8] p. II-8-27, after CIRIA/CUR 1991.
func ShallowOneInThousand(third, depth float64) float64 {
	return shallow(1.859, 1.0/2, third, depth)
}

func shallow(factor, power, third, depth float64) float64 {
	h := significant(third)
	if !(depth > 0) {
		return math.NaN()
	}
	return factor * h / math.Pow(1+h/depth, power)
}
