package harmonic

import (
	"math"
	"time"

	"followingsea.example/internal/clock"
)

// Turns are the roots of dh/dt, slacks the roots of v. The series is sampled
// every few minutes; a change of sign brackets a root. Two roots between two
// samples of one sign leave a trace too: the sampled size has a minimum there.
// At each such minimum the extremum itself is found, as the root of the next
// derivative, and if it lies beyond zero it splits the interval in two
// brackets. The fastest constituent known turns by 17 degrees in a step, so
// that nothing narrower is left but ripples of micrometres: three roots within
// two steps.

const (
	rootStep  = 6 * time.Minute
	rootChunk = 1200 // samples at a time, five days
)

// A root is where the sum (less the constant) or its rate vanishes.
type root struct {
	at   time.Time
	year int
	up   bool // the function passes from below to above zero
}

// roots returns the zeros of the derivative of the given order in [from, to].
// In order 0 the constant counts.
func (s *sum) roots(order int, from, to time.Time) []root {
	var all []root
	if s.nodes != ByYear {
		return s.rootsIn(all, order, from, to, 0)
	}
	for from.Before(to) {
		year := from.UTC().Year()
		end := time.Date(year+1, 1, 1, 0, 0, 0, 0, time.UTC)
		if end.After(to) {
			end = to
		}
		all = s.rootsIn(all, order, from, end, year)
		from = end
	}
	return all
}

func (s *sum) rootsIn(all []root, order int, from, to time.Time, year int) []root {
	buf := make([]float64, rootChunk+2)
	ws := make([]wave, 0, len(s.terms))
	step := rootStep
	// One step more on either side, so that the first and the last interval have neighbours too.
	base := from.Add(-step)
	total := int(to.Sub(base)/step) + 3
	f := func(order int, tau float64) float64 {
		v := derivative(ws, order, tau)
		if order == 0 {
			v += s.z0
		}
		return v
	}
	rate := func(tau float64) float64 { return f(order+1, tau) }
	add := func(mid time.Time, lo, hi float64, up bool) {
		tau := bisect(func(x float64) float64 { return f(order, x) }, lo, hi)
		at, err := clock.After(mid, tau*3600)
		if err != nil || at.Before(from) || at.After(to) {
			return
		}
		if n := len(all); n > 0 && !at.After(all[n-1].at) {
			return
		}
		all = append(all, root{at, year, up})
	}
	// Chunks overlap by two samples so that every inner sample has both neighbours.
	for lo := 0; lo < total-1; lo += rootChunk {
		n := min(rootChunk+2, total-lo)
		v := buf[:n]
		start := base.Add(time.Duration(lo) * step)
		a, b := buf[rootChunk], buf[rootChunk+1]
		s.fill(v, start, step, order, year)
		if lo > 0 {
			// Samples in two chunks are the same number, or a zero that lies on one
			// could have two signs.
			v[0], v[1] = a, b
		}
		for i := 0; i < min(rootChunk, n-1); i++ {
			a, b := v[i], v[i+1]
			h := step.Hours()
			if (a >= 0) != (b >= 0) {
				mid := start.Add(time.Duration(i)*step + step/2)
				ws = s.near(mid, year, ws)
				lo, hi := -h/2, h/2
				if first := rate(lo) >= 0; first != (rate(hi) >= 0) {
					// An extremum inside: where a sample lies on a zero, by rounding on this or that
					// side of it, another may lie beyond. The one wanted passes zero as the samples do.
					if x := bisect(rate, lo, hi); first == (b >= 0) {
						hi = x
					} else {
						lo = x
					}
				}
				add(mid, lo, hi, b >= 0)
				continue
			}
			// A minimum of |v| at sample i+1, or inside the first interval.
			if i+2 < n && (v[i+2] >= 0) == (b >= 0) && math.Abs(b) <= math.Abs(a) && math.Abs(b) <= math.Abs(v[i+2]) {
				mid := start.Add(time.Duration(i+1) * step)
				ws = s.near(mid, year, ws)
				if (rate(-h) >= 0) == (rate(h) >= 0) {
					continue
				}
				x := bisect(rate, -h, h)
				if y := f(order, x); y != 0 && (y >= 0) != (b >= 0) {
					add(mid, -h, x, y >= 0)
					add(mid, x, h, b >= 0)
				}
			}
		}
	}
	return all
}

// bisect returns a root of f between a and b, where f has different signs, by
// the method of Ridders: the bracket halves at least at every step, and the
// root converges quadratically. It is settled to a microsecond.
func bisect(f func(float64) float64, a, b float64) float64 {
	fa, fb := f(a), f(b)
	if (fa >= 0) == (fb >= 0) { // a zero on an end, which rounding has put outside
		if math.Abs(fa) < math.Abs(fb) {
			return a
		}
		return b
	}
	last := math.Inf(1)
	for i := 0; i < 60; i++ {
		m := (a + b) / 2
		fm := f(m)
		x := m
		if d := math.Sqrt(fm*fm - fa*fb); d > 0 {
			x += (m - a) * math.Copysign(1, fa-fb) * fm / d
		}
		fx := f(x)
		if fx == 0 || math.Abs(x-last) < 1e-10 || b-a < 1e-10 {
			return x
		}
		last = x
		// Keep the narrowest bracket that the four values give.
		p, fp, q, fq := m, fm, x, fx
		if p > q {
			p, fp, q, fq = q, fq, p, fp
		}
		switch {
		case (fp >= 0) != (fa >= 0):
			b, fb = p, fp
		case (fq >= 0) != (fp >= 0):
			a, fa, b, fb = p, fp, q, fq
		default:
			a, fa = q, fq
		}
	}
	return (a + b) / 2
}
