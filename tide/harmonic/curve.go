package harmonic

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/tide"
)

// A search that asks for the tide a million times need not sum 37 cosines
// each time. A curve holds value and rate every six minutes and joins them by
// the cubic that has both (Hermite's): off by at most h⁴/384 times the fourth
// derivative, which for M2 of 2.6 m is 5e-8 m and for any station known less
// than a thousandth of a millimetre.

// curveStep is the step of a curve, and longestCurve what it may span: ten
// years are 14 MB.
const (
	curveStep    = 6 * time.Minute
	longestCurve = 10 * 366 * 24 * time.Hour
)

// samples are values and rates per step at even times.
type samples struct {
	from, to time.Time
	v, r     []float64
}

// sampled fills the samples of a sum over a span.
func (s *sum) sampled(from, to time.Time) (samples, error) {
	if !from.Before(to) || to.Sub(from) > longestCurve {
		return samples{}, fmt.Errorf("%w: %v to %v: want a positive span of at most ten years", ErrSpan, from.Format(time.RFC3339), to.Format(time.RFC3339))
	}
	n := int(to.Sub(from)/curveStep) + 2
	c := samples{from: from, to: to, v: make([]float64, n), r: make([]float64, n)}
	s.series(c.v, from, curveStep, 0)
	s.series(c.r, from, curveStep, 1)
	for i := range c.r {
		c.r[i] *= curveStep.Hours()
	}
	return c, nil
}

// at returns the value at the instant and its rate per second.
func (c *samples) at(t time.Time) (value, rate float64) {
	if t.Before(c.from) || t.After(c.to) {
		return math.NaN(), math.NaN()
	}
	x := clock.Seconds(c.from, t) / curveStep.Seconds()
	i := int(x)
	if i > len(c.v)-2 {
		i = len(c.v) - 2
	}
	u := x - float64(i)
	a, b, ra, rb := c.v[i], c.v[i+1], c.r[i], c.r[i+1]
	// a + u(ra + u(c2 + u c3)) with both ends' values and rates.
	d := b - a
	c2, c3 := 3*d-2*ra-rb, ra+rb-2*d
	return a + u*(ra+u*(c2+u*c3)), (ra + u*(2*c2+u*3*c3)) / curveStep.Seconds()
}

// A Curve is a Tide over a span made ready to be asked often: heights within
// 1e-6 m of it at a hundredth of the cost. It is made by Tide.Curve, does not
// change and may be used from many goroutines.
type Curve struct {
	samples
	datum tide.Datum
}

// Curve returns the heights of [from, to] made ready. ErrSpan for a span that
// is not positive or beyond ten years. In ByYear the jump at New Year is
// spread over six minutes.
func (t *Tide) Curve(from, to time.Time) (*Curve, error) {
	s, err := t.sum.sampled(from, to)
	if err != nil {
		return nil, err
	}
	return &Curve{s, t.datum}, nil
}

// Datum returns what the heights are measured from.
func (c *Curve) Datum() tide.Datum { return c.datum }

// Height returns the height of the tide above the datum in metres.
//
// Special cases are:
//
//	Height = NaN outside the span
func (c *Curve) Height(at time.Time) float64 { h, _ := c.at(at); return h }

// Rate returns how fast the tide rises in m/s.
//
// Special cases are:
//
//	Rate = NaN outside the span
func (c *Curve) Rate(at time.Time) float64 { _, r := c.at(at); return r }

// A StreamCurve is a Stream over a span made ready to be asked often. It is
// made by Stream.Curve, does not change and may be used from many goroutines.
type StreamCurve struct {
	samples
	stream *Stream
}

// Curve returns the stream of [from, to] made ready, with the errors of
// Tide.Curve.
func (s *Stream) Curve(from, to time.Time) (*StreamCurve, error) {
	v, err := s.sum.sampled(from, to)
	if err != nil {
		return nil, err
	}
	return &StreamCurve{v, s}, nil
}

// Rate returns the rate along the axis in m/s, flood positive.
//
// Special cases are:
//
//	Rate = NaN outside the span
func (c *StreamCurve) Rate(at time.Time) float64 { v, _ := c.at(at); return v }

// Velocity returns the stream as a vector, toward the flood's set or the ebb's.
//
// Special cases are:
//
//	Velocity = {NaN, NaN} outside the span
func (c *StreamCurve) Velocity(at time.Time) tide.Velocity {
	return c.stream.toward(c.Rate(at)).Velocity()
}
