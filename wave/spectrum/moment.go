package spectrum

import (
	"math"

	"gonum.org/v1/gonum/integrate/quad"
)

// The moment of order n of a spectrum is
//
//	mₙ = ∫ fⁿ S(f) df
//
// m₀ is the variance of the surface, m₂ (times 4π²) that of its vertical speed. All shapes here fall like f⁻⁵ in the tail,
// so that mₙ beyond a frequency F is S(F) F^(n+1)/(4-n): of m₀ little is left there, of m₂ it falls only like F⁻², and from
// n = 4 on the integral has no end. What depends on m₄ depends on where the measurement stopped, so the moments take limits.

// Moment returns the moment of order n (any real number) of the whole spectrum, from 0 to infinity, in m² Hzⁿ. Shapes use
// their exact tail and measured bins their sum. Any other spectrum is integrated by quadrature, to about 1e-10, from
// 1e-4 to 1e3 Hz and taken to fall like f⁻⁵ beyond.
//
// Special cases are:
//
//	Moment(s, n) = +Inf for n ≥ 4 and a shape with a tail of f⁻⁵, NaN if its height is 0
//	Moment(s, n) = NaN if n or any density met is NaN
//
// Source: [Goda2010Book] Eq. 2.32; [CEM-II-1] sec. II-1-3.
func Moment(s Spectrum, n float64) float64 { return MomentWithin(s, n, 0, math.Inf(1)) }

// MomentWithin returns the moment of order n (any real number) of the part of the spectrum from lo to hi Hz, in m² Hzⁿ:
// what an instrument that covers that band measures. An hi of +Inf is the whole tail.
//
// Special cases are:
//
//	MomentWithin = 0 for lo = hi
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi and n is finite
//
// Source: [Goda2010Book] Eq. 2.32.
func MomentWithin(s Spectrum, n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) {
		return math.NaN()
	}
	if m, ok := s.(MomentSpectrum); ok {
		return m.MomentWithin(n, lo, hi)
	}
	return integrate(s, n, lo, hi)
}

func orderly(n, lo, hi float64) bool { return finite(n) && lo >= 0 && lo <= hi && finite(lo) }

// The range over which a spectrum of unknown shape is integrated, in Hz: from an hour to a ripple.
const (
	slowest = 1e-4
	fastest = 1e3
)

// integrate is the quadrature for a spectrum of unknown shape, in ln f, where a spectrum is of a more even width.
func integrate(s Spectrum, n, lo, hi float64) float64 {
	if lo == hi {
		return 0 * s.Density(lo)
	}
	top := math.Min(hi, fastest)
	sum := 0.0
	if a := math.Max(lo, slowest); a < top {
		f := func(u float64) float64 {
			f := math.Exp(u)
			return math.Exp((n+1)*u) * s.Density(f)
		}
		// The peak is where a shape may have a kink, so it ends a panel.
		edges := []float64{math.Log(a), math.Log(top)}
		if p := PeakFrequency(s); p > a && p < top {
			edges = []float64{math.Log(a), math.Log(p), math.Log(top)}
		}
		var x, whole []float64
		scale := 0.0
		for i := 1; i < len(edges); i++ {
			l, h := edges[i-1], edges[i]
			steps := math.Ceil((h - l) / 0.25)
			for j := range int(steps) {
				x0, x1 := l+(h-l)*float64(j)/steps, l+(h-l)*float64(j+1)/steps
				w := gauss(f, x0, x1)
				x, whole, scale = append(x, x0, x1), append(whole, w), scale+math.Abs(w)
			}
		}
		for i, w := range whole {
			sum += adaptive(f, x[2*i], x[2*i+1], w, 1e-13*scale, 12)
		}
	}
	if hi > fastest {
		start := math.Max(lo, fastest)
		tail := s.Density(start) * math.Pow(start, n+1)
		switch {
		case tail == 0: // a spectrum that ends before has none, however great n is
		case n >= 4 && !finite(hi):
			tail *= math.Inf(1)
		case n == 4:
			tail *= math.Log(hi / start)
		case finite(hi):
			tail *= (1 - math.Pow(hi/start, n-4)) / (4 - n)
		default:
			tail /= 4 - n
		}
		sum += tail
	}
	return sum
}

// adaptive halves the panel until the halves agree with the whole to tol, at most depth times.
func adaptive(f func(float64) float64, a, b, whole, tol float64, depth int) float64 {
	m := (a + b) / 2
	left, right := gauss(f, a, m), gauss(f, m, b)
	sum := left + right
	if depth == 0 || !(math.Abs(sum-whole) > tol) {
		return sum
	}
	return adaptive(f, a, m, left, tol, depth-1) + adaptive(f, m, b, right, tol, depth-1)
}

// The nodes and weights of the Gauss-Legendre rule of 16 points on [-1, 1], exact for polynomials of degree 31.
var nodes, weights = legendre(16)

func legendre(n int) (x, w []float64) {
	x, w = make([]float64, n), make([]float64, n)
	quad.Legendre{}.FixedLocations(x, w, -1, 1)
	return x, w
}

// gauss integrates f from a to b with one panel of the rule.
func gauss(f func(float64) float64, a, b float64) float64 {
	c, h := (a+b)/2, (b-a)/2
	sum := 0.0
	for i, x := range nodes {
		sum += weights[i] * f(c+h*x)
	}
	return sum * h
}
