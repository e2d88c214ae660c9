package harmonic

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/angle"
)

// The sum of a station's constituents,
//
//	h(t) = Z0 + Σ f A cos(V + u − g)
//
// is the real part of Σ A Z e^{i(V − g)} with the slow factor Z = f e^{iu} of
// node.go and the fast angle V, which runs at a constant speed.

// Nodes says how the slow factors of the moon's node are taken.
type Nodes uint8

// The ways to take the node factors.
const (
	// AtInstant evaluates f and u at each instant: smooth, and the default.
	AtInstant Nodes = iota
	// ByYear does as the United States national service does: f and u of the
	// middle of the calendar year (UT), V at its beginning, run on at the speeds
	// of seven decimals. It reproduces the official predictions to their last
	// digit, and jumps at New Year (up to 10 cm where the range is great).
	ByYear
	// Without leaves the node out (f = 1, u = 0): to see what it does.
	Without
)

// String returns the name of the way.
func (n Nodes) String() string {
	switch n {
	case AtInstant:
		return "at the instant"
	case ByYear:
		return "by year"
	case Without:
		return "without"
	}
	return "unknown"
}

// A term is one constituent of a sum.
type term struct {
	d   *definition
	amp float64
	lag float64 // degrees
}

// A sum is the constant and the terms, ready to be evaluated.
type sum struct {
	z0    float64
	terms []term
	nodes Nodes
}

// newSum checks the constituents. A constituent given twice is an error.
func newSum(z0 float64, cs []Constituent, n Nodes) (sum, error) {
	s := sum{z0: z0, nodes: n}
	if n > Without {
		return sum{}, fmt.Errorf("%w: nodes %d: want AtInstant, ByYear or Without", ErrStation, n)
	}
	if !(math.Abs(z0) <= 100) {
		return sum{}, fmt.Errorf("%w: mean level %v: want -100 to 100", ErrStation, z0)
	}
	if len(cs) == 0 {
		return sum{}, fmt.Errorf("%w: no constituents", ErrStation)
	}
	seen := map[*definition]int{}
	for i, c := range cs {
		d, err := c.check(i)
		if err != nil {
			return sum{}, err
		}
		if j, twice := seen[d]; twice {
			return sum{}, fmt.Errorf("%w: constituent %d, %s: the same as constituent %d", ErrConstituent, i+1, c.Name, j+1)
		}
		seen[d] = i
		if c.Amplitude != 0 {
			s.terms = append(s.terms, term{d, c.Amplitude, c.Lag})
		}
	}
	return s, nil
}

// An epoch is an instant from which V runs on: its longitudes, the node
// factors that hold there, and the hours since.
type epoch struct {
	l     Longitudes
	z     [bases]complex128
	hours float64
}

// epochAt returns the epoch for an instant. In ByYear it is the beginning of
// the year given.
func (s *sum) epochAt(at time.Time, year int) epoch {
	if s.nodes == ByYear {
		start, middle := yearOf(year)
		m := LongitudesAt(middle, Modern)
		return epoch{LongitudesAt(start, Modern), factors(m.N, m.P), hoursBetween(start, at)}
	}
	l := LongitudesAt(at, Modern)
	return epoch{l, s.slow(l), 0}
}

// slow returns the node factors for the longitudes.
func (s *sum) slow(l Longitudes) [bases]complex128 {
	if s.nodes == Without {
		var z [bases]complex128
		for i := range z {
			z[i] = 1
		}
		return z
	}
	return factors(l.N, l.P)
}

// hoursBetween returns the hours from a to b.
func hoursBetween(a, b time.Time) float64 {
	return float64(b.Unix()-a.Unix())/3600 + float64(b.Nanosecond()-a.Nanosecond())/3600e9
}

// angle returns V − g of a term at the epoch in radians, reduced.
func (e *epoch) angle(t *term) float64 {
	v := t.d.v(&e.l) - t.lag
	if e.hours != 0 {
		v += t.d.speed * e.hours
	}
	v -= 360 * math.Floor(v/360)
	return angle.Radians(v)
}

// speed is the speed of a term in radians per hour: the printed one in
// ByYear, that of the longitudes otherwise.
func (s *sum) speed(d *definition) float64 {
	if s.nodes == ByYear {
		return angle.Radians(d.speed)
	}
	return angle.Radians(d.rate())
}

// value returns the sum at the instant.
func (s *sum) value(at time.Time) float64 {
	e := s.epochAt(at, at.UTC().Year())
	return s.level(&e)
}

// level returns the sum at the instant and with the nodes of an epoch.
func (s *sum) level(e *epoch) float64 {
	h := s.z0
	for i := range s.terms {
		t := &s.terms[i]
		z := t.d.node(&e.z)
		sin, cos := math.Sincos(e.angle(t))
		h += t.amp * (real(z)*cos - imag(z)*sin)
	}
	return h
}

// rate returns the rate of change of the sum at the instant, per hour.
func (s *sum) rate(at time.Time) float64 {
	e := s.epochAt(at, at.UTC().Year())
	var slower, later [bases]complex128
	if s.nodes == AtInstant {
		slower = s.slow(LongitudesAt(at.Add(-reach), Modern))
		later = s.slow(LongitudesAt(at.Add(reach), Modern))
	}
	r := 0.0
	for i := range s.terms {
		t := &s.terms[i]
		z := t.d.node(&e.z)
		var dz complex128
		if s.nodes == AtInstant {
			dz = (t.d.node(&later) - t.d.node(&slower)) / complex(2*reach.Hours(), 0)
		}
		dz += complex(0, s.speed(t.d)) * z
		sin, cos := math.Sincos(e.angle(t))
		r += t.amp * (real(dz)*cos - imag(dz)*sin)
	}
	return r
}

// reach is how far from the middle of a block the slow factors are taken as
// quadratic in time: their third derivative makes less than 1e-10 m of that.
const reach = 12 * time.Hour

// A wave is one term near an instant c: A Z(τ) e^{i(φ + στ)} with τ hours from
// c and A Z e^{iφ} = p0 + p1 τ + p2 τ².
type wave struct {
	p0, p1, p2 complex128
	speed      float64 // radians per hour
}

// near returns the waves of the sum around an instant, in buf if it is large
// enough. In ByYear they are those of the year given.
func (s *sum) near(at time.Time, year int, buf []wave) []wave {
	e := s.epochAt(at, year)
	return s.nearEpoch(&e, at, buf)
}

// nearEpoch is near with the epoch at hand.
func (s *sum) nearEpoch(e *epoch, at time.Time, buf []wave) []wave {
	var slower, later [bases]complex128
	if s.nodes == AtInstant {
		slower = s.slow(LongitudesAt(at.Add(-reach), Modern))
		later = s.slow(LongitudesAt(at.Add(reach), Modern))
	}
	h := reach.Hours()
	buf = buf[:0]
	for i := range s.terms {
		t := &s.terms[i]
		sin, cos := math.Sincos(e.angle(t))
		a := complex(t.amp*cos, t.amp*sin)
		z := t.d.node(&e.z)
		w := wave{p0: a * z, speed: s.speed(t.d)}
		if s.nodes == AtInstant && len(t.d.parts) > 0 {
			before, after := t.d.node(&slower), t.d.node(&later)
			w.p1 = a * (after - before) * complex(1/(2*h), 0)
			w.p2 = a * (after + before - 2*z) * complex(1/(2*h*h), 0)
		}
		buf = append(buf, w)
	}
	return buf
}

// derivative returns the derivative of the given order (0, 1, 2) of the sum
// of the waves at τ hours, without the constant.
func derivative(ws []wave, order int, tau float64) float64 {
	var r float64
	for i := range ws {
		w := &ws[i]
		sin, cos := math.Sincos(w.speed * tau)
		p := w.p0 + complex(tau, 0)*(w.p1+complex(tau, 0)*w.p2)
		is := complex(0, w.speed)
		switch order {
		case 1:
			p = is*p + w.p1 + complex(2*tau, 0)*w.p2
		case 2:
			d := w.p1 + complex(2*tau, 0)*w.p2
			p = 2*w.p2 + 2*is*d - complex(w.speed*w.speed, 0)*p
		}
		r += real(p)*cos - imag(p)*sin
	}
	return r
}
