package tide

import "math"

// Between two turns the water follows one curve, stretched to the real
// duration and the real range:
//
//	x = (t − t1) / (t2 − t1)        share of the duration, 0 to 1
//	h = h1 + (h2 − h1) F(x)         F: share of the range, 0 to 1
//
// Cosine:    F = (1 − cos πx) / 2, the method of the official tables.
// Twelfths:  F runs straight through 0 1 3 6 9 11 12 twelfths at each sixth.
// Tenths:    F runs straight through 0 10 25 50 75 90 100 per cent.
//
// Twelfths against cosine: equal at x = 0, 2/6, 3/6, 4/6 and 1; at 1/6
// twelfths − cosine = 1/12 − (1 − cos 30°)/2 = +1.635 % of the range, at 5/6
// the same below; the largest difference, where the slope of the cosine is
// that of a straight piece (sin πx = 1/π), is 2.555 % at x = 0.103 and 0.897.

// A Rule says how the water runs between two turns. The zero value is the
// cosine.
type Rule uint8

// The rules. ByCosine is the right one between official high and low waters;
// ByTwelfths is the rule of thumb for the head and the blackboard; ByTenths
// is a poorer variant found in print (3.3 % of the range off the cosine at
// the first and fifth sixth).
const (
	ByCosine Rule = iota
	ByTwelfths
	ByTenths
)

// String returns the name of the rule.
func (r Rule) String() string {
	switch r {
	case ByCosine:
		return "cosine"
	case ByTwelfths:
		return "twelfths"
	case ByTenths:
		return "tenths"
	}
	return "unknown rule"
}

// Fraction returns the share of the range made good after the share x of the
// duration, by the rule: Cosine, Twelfths or Tenths.
//
// Special cases are:
//
//	Fraction(x) = NaN for x outside [0, 1] or NaN
//	Rule(unknown).Fraction(x) = NaN
func (r Rule) Fraction(x float64) float64 {
	switch r {
	case ByCosine:
		return Cosine(x)
	case ByTwelfths:
		return Twelfths(x)
	case ByTenths:
		return Tenths(x)
	}
	return math.NaN()
}

// Elapsed returns the share of the duration after which the share f of the
// range is made good: the inverse of Fraction.
//
// Special cases are:
//
//	Elapsed(f) = NaN for f outside [0, 1] or NaN
//	Rule(unknown).Elapsed(f) = NaN
func (r Rule) Elapsed(f float64) float64 {
	switch r {
	case ByCosine:
		return CosineInverse(f)
	case ByTwelfths:
		return TwelfthsInverse(f)
	case ByTenths:
		return TenthsInverse(f)
	}
	return math.NaN()
}

// Slope returns dF/dx, the speed of the rise in ranges per duration: at
// half tide π/2 by the cosine, 3/2 by twelfths. At a corner of the straight
// pieces it is the slope of the piece that begins there (at x = 1, of the
// last).
//
// Special cases are:
//
//	Slope(x) = NaN for x outside [0, 1] or NaN
//	Rule(unknown).Slope(x) = NaN
func (r Rule) Slope(x float64) float64 {
	if !(x >= 0 && x <= 1) {
		return math.NaN()
	}
	switch r {
	case ByCosine:
		return math.Pi / 2 * math.Sin(math.Pi*x)
	case ByTwelfths:
		return slope(&twelfths, x) / 12
	case ByTenths:
		return slope(&tenths, x) / 100
	}
	return math.NaN()
}

// Cosine returns the share of the range made good after the share x of the
// duration of a rise or fall,
//
//	F = (1 − cos πx) / 2
//
// with x and F from 0 to 1. Good for rises and falls of 5 to 7 hours between
// official high and low waters; how far real tides depart from it is told in
// the package documentation.
//
// Special cases are:
//
//	Cosine(x) = NaN for x outside [0, 1] or NaN
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters; [Bowditch2002] ch. 9.
func Cosine(x float64) float64 {
	if !(x >= 0 && x <= 1) {
		return math.NaN()
	}
	s := math.Sin(math.Pi / 2 * x) // (1 − cos πx)/2 = sin²(πx/2), without the loss of digits near 0
	return s * s
}

// CosineInverse returns the share of the duration after which the share f of
// the range is made good,
//
//	x = acos(1 − 2f) / π
//
// Special cases are:
//
//	CosineInverse(f) = NaN for f outside [0, 1] or NaN
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters.
func CosineInverse(f float64) float64 {
	if !(f >= 0 && f <= 1) {
		return math.NaN()
	}
	return 2 / math.Pi * math.Asin(math.Sqrt(f))
}

// The marks of the two step rules at each sixth of the duration.
var (
	twelfths = [7]float64{0, 1, 3, 6, 9, 11, 12}
	tenths   = [7]float64{0, 10, 25, 50, 75, 90, 100}
)

// Twelfths returns the share of the range made good after the share x of the
// duration by the rule of twelfths: 1, 2, 3, 3, 2, 1 twelfths in the six
// equal parts of the rise or fall, straight in between. The six parts are
// sixths of the real duration ("tide-hours"), not hours of the clock.
// Twelfths differs from Cosine by at most 2.56 % of the range, and by 5.1 %
// of the duration.
//
// Special cases are:
//
//	Twelfths(x) = NaN for x outside [0, 1] or NaN
//
// Source: [ExeterTides] slide "Rule of Twelfths".
func Twelfths(x float64) float64 { return steps(&twelfths, x) / 12 }

// TwelfthsInverse returns the share of the duration after which the share f
// of the range is made good by the rule of twelfths.
//
// Special cases are:
//
//	TwelfthsInverse(f) = NaN for f outside [0, 1] or NaN
//
// Source: [ExeterTides] slide "Rule of Twelfths".
func TwelfthsInverse(f float64) float64 {
	if !(f >= 0 && f <= 1) {
		return math.NaN()
	}
	return unstep(&twelfths, f*12)
}

// Tenths returns the share of the range made good after the share x of the
// duration by the rule of tenths: 10, 15, 25, 25, 15, 10 per cent in the six
// equal parts. It is 3.3 % of the range off the cosine at the first and the
// fifth sixth, twice as far as twelfths; it is here to be compared.
//
// Special cases are:
//
//	Tenths(x) = NaN for x outside [0, 1] or NaN
//
// Source: [DIYWoodBoat] list of the rule of tenths.
func Tenths(x float64) float64 { return steps(&tenths, x) / 100 }

// TenthsInverse returns the share of the duration after which the share f of
// the range is made good by the rule of tenths.
//
// Special cases are:
//
//	TenthsInverse(f) = NaN for f outside [0, 1] or NaN
//
// Source: [DIYWoodBoat] list of the rule of tenths.
func TenthsInverse(f float64) float64 {
	if !(f >= 0 && f <= 1) {
		return math.NaN()
	}
	return unstep(&tenths, f*100)
}

// steps runs straight through the marks at each sixth of x.
func steps(marks *[7]float64, x float64) float64 {
	if !(x >= 0 && x <= 1) {
		return math.NaN()
	}
	y := 6 * x
	k := sixth(y)
	return marks[k] + (marks[k+1]-marks[k])*(y-float64(k))
}

// slope is the slope of steps in marks per unit of x.
func slope(marks *[7]float64, x float64) float64 {
	k := sixth(6 * x)
	return 6 * (marks[k+1] - marks[k])
}

// sixth is the number of the piece that holds y, 0 to 5, for y in [0, 6].
func sixth(y float64) int {
	k := int(y)
	if k > 5 {
		k = 5
	}
	return k
}

// unstep is the inverse of steps.
func unstep(marks *[7]float64, m float64) float64 {
	k := 0
	for k < 5 && m >= marks[k+1] {
		k++
	}
	return (float64(k) + (m-marks[k])/(marks[k+1]-marks[k])) / 6
}
