package tide

import (
	"fmt"
	"math"
	"sort"
	"time"

	"followingsea.example/internal/clock"
)

// A StreamSample is the stream at an instant.
type StreamSample struct {
	Time   time.Time
	Stream Stream
}

// A ClockStreams is a table of streams by clock time. Between its rows the
// stream is interpolated as a vector, never the bearing alone: between 1 kn to
// the north and 1 kn to the south there is slack water, not 1 kn to the east.
// It is made by NewClockStreams or ReadClockStreams, does not change, and may
// be used from many goroutines.
type ClockStreams struct {
	samples []StreamSample
	at      []float64 // seconds from the first
	v       []Velocity
	gap     float64 // seconds
}

// NewClockStreams returns the table of the samples, which must be in order of
// time; rows further apart than gap (zero: 2 hours) have nothing known between
// them. ErrValue names the row that is out of order or whose rate or set is
// not usable.
func NewClockStreams(samples []StreamSample, gap time.Duration) (*ClockStreams, error) {
	if gap == 0 {
		gap = 2 * time.Hour
	}
	if gap < 0 || len(samples) == 0 {
		return nil, fmt.Errorf("%w: %d rows, gap %v: want at least one row and a positive gap", ErrValue, len(samples), gap)
	}
	c := &ClockStreams{
		samples: append([]StreamSample(nil), samples...),
		at:      make([]float64, len(samples)),
		v:       make([]Velocity, len(samples)),
		gap:     gap.Seconds(),
	}
	for i, s := range samples {
		c.at[i] = clock.Seconds(samples[0].Time, s.Time)
		c.v[i] = s.Stream.Velocity()
		if math.IsNaN(c.v[i].East+c.v[i].North) || s.Stream.Rate > fastest {
			return nil, fmt.Errorf("%w: row %d: rate %v m/s, set %v°: want a rate of 0 to %v m/s and a finite set", ErrValue, i+1, s.Stream.Rate, s.Stream.Set, fastest)
		}
		if i > 0 && !(c.at[i] > c.at[i-1]) {
			return nil, fmt.Errorf("%w: row %d: time %v is not after %v", ErrValue, i+1, s.Time.Format(time.RFC3339), samples[i-1].Time.Format(time.RFC3339))
		}
	}
	return c, nil
}

// fastest is beyond any tidal stream on record (about 22 kn in the narrows of
// Nakwakto and Saltstraumen), m/s.
const fastest = 15.0

// Samples returns a copy of the rows.
func (c *ClockStreams) Samples() []StreamSample { return append([]StreamSample(nil), c.samples...) }

// Span returns the first and the last row's time.
func (c *ClockStreams) Span() (from, to time.Time) {
	return c.samples[0].Time, c.samples[len(c.samples)-1].Time
}

// Velocity returns the stream at the instant as a vector. It allocates nothing.
//
// Special cases are:
//
//	Velocity = {NaN, NaN} outside the table and between rows further apart than its gap
func (c *ClockStreams) Velocity(at time.Time) Velocity {
	s := clock.Seconds(c.samples[0].Time, at)
	n := len(c.at)
	if !(s >= 0 && s <= c.at[n-1]) {
		return Velocity{math.NaN(), math.NaN()}
	}
	i := sort.SearchFloat64s(c.at, s)
	if c.at[i] == s {
		return c.v[i]
	}
	d := c.at[i] - c.at[i-1]
	if d > c.gap {
		return Velocity{math.NaN(), math.NaN()}
	}
	return mix(c.v[i-1], c.v[i], (s-c.at[i-1])/d)
}

// An HourStream is one row of a stream table by hour from high water: the
// set and the rates at mean springs and mean neaps, in m/s.
type HourStream struct {
	Hour           float64 // hours from high water at the reference port, negative before
	Set            float64 // degrees true, toward
	Springs, Neaps float64 // m/s
}

// An HourTable is the stream at a place by hour from high water at a
// reference port (the diamonds of a chart, a stream atlas). It is made by
// NewHourTable or ReadHourTable, does not change, and may be used from many
// goroutines.
type HourTable struct {
	rows           []HourStream
	springs, neaps float64 // mean ranges at the reference port, metres
}

// NewHourTable returns the table of the rows, in order of hour, with the mean
// spring and neap ranges at the reference port in metres. There must be at
// least two rows, within 13 hours of high water, not more than 3 hours apart; ErrValue
// names the row and field otherwise.
func NewHourTable(rows []HourStream, springRange, neapRange float64) (*HourTable, error) {
	if !(springRange > neapRange && neapRange >= 0) || !(springRange <= 25) {
		return nil, fmt.Errorf("%w: mean ranges %v m springs, %v m neaps: want 25 ≥ springs > neaps ≥ 0", ErrValue, springRange, neapRange)
	}
	if len(rows) < 2 {
		return nil, fmt.Errorf("%w: %d rows: want at least 2", ErrValue, len(rows))
	}
	for i, r := range rows {
		if !(r.Hour >= -13 && r.Hour <= 13) {
			return nil, fmt.Errorf("%w: row %d: hour %v: want -13 to 13", ErrValue, i+1, r.Hour)
		}
		if i > 0 && !(r.Hour > rows[i-1].Hour && r.Hour <= rows[i-1].Hour+3) {
			return nil, fmt.Errorf("%w: row %d: hour %v after %v: want the hours in order, at most 3 apart", ErrValue, i+1, r.Hour, rows[i-1].Hour)
		}
		if !(r.Springs >= 0 && r.Springs <= fastest && r.Neaps >= 0 && r.Neaps <= fastest) {
			return nil, fmt.Errorf("%w: row %d: rates %v m/s springs, %v m/s neaps: want 0 to %v", ErrValue, i+1, r.Springs, r.Neaps, fastest)
		}
		if r.Springs+r.Neaps > 0 && !(r.Set >= 0 && r.Set <= 360) {
			return nil, fmt.Errorf("%w: row %d: set %v°: want 0 to 360", ErrValue, i+1, r.Set)
		}
	}
	return &HourTable{append([]HourStream(nil), rows...), springRange, neapRange}, nil
}

// Rows returns a copy of the rows.
func (h *HourTable) Rows() []HourStream { return append([]HourStream(nil), h.rows...) }

// Ranges returns the mean spring and neap ranges of the reference port, metres.
func (h *HourTable) Ranges() (springs, neaps float64) { return h.springs, h.neaps }

// row returns the velocity of row i on a tide of range r.
func (h *HourTable) row(i int, r float64) Velocity {
	w := h.rows[i]
	rate := RateAtRange(r, Mark{h.springs, w.Springs}, Mark{h.neaps, w.Neaps})
	return Stream{rate, w.Set}.Velocity()
}

// At returns the stream at an hour from high water on a tide of range r in
// metres: in each row the rate by RateAtRange, between rows as a vector.
//
// Special cases are:
//
//	At = {NaN, NaN} for an hour beyond the rows or NaN, and for a range negative, NaN or infinite
func (h *HourTable) At(hour, r float64) Velocity {
	n := len(h.rows)
	if !(hour >= h.rows[0].Hour && hour <= h.rows[n-1].Hour) || !(r >= 0) || math.IsInf(r, 0) {
		return Velocity{math.NaN(), math.NaN()}
	}
	i := 1
	for i < n-1 && hour > h.rows[i].Hour {
		i++
	}
	a, b := h.rows[i-1].Hour, h.rows[i].Hour
	return mix(h.row(i-1, r), h.row(i, r), (hour-a)/(b-a))
}

// On returns the streams of the table on the tides of the reference port: a table
// of streams by clock time. The rows are hung on each high water, each with the
// mean of the ranges of the rise before it and the fall after it. Of rows that
// overlap between two high waters, those nearer to their own count; between the
// last row of one and the first of the next the stream is interpolated as a vector,
// over at most 3 hours. ErrTurns when the table has no high water with a known rise
// or fall.
func (h *HourTable) On(port *Table) (*ClockStreams, error) {
	type high struct{ at, r float64 } // seconds from the first turn; range
	var highs []high
	for i, u := range port.turns {
		if !u.High {
			continue
		}
		var sum, n float64
		for _, j := range [2]int{i - 1, i} {
			if j >= 0 && j < len(port.limbs) && port.limbs[j] != missing {
				sum += Limb{port.turns[j], port.turns[j+1]}.Range()
				n++
			}
		}
		if n > 0 {
			highs = append(highs, high{port.at[i], sum / n})
		}
	}
	if len(highs) == 0 {
		return nil, fmt.Errorf("%w: no high water with a known rise or fall", ErrTurns)
	}
	start := port.turns[0].Time
	var out []StreamSample
	for k, w := range highs {
		from, to := math.Inf(-1), math.Inf(1)
		if k > 0 {
			from = (highs[k-1].at + w.at) / 2
		}
		if k < len(highs)-1 {
			to = (w.at + highs[k+1].at) / 2
		}
		for i, r := range h.rows {
			s := w.at + r.Hour*3600
			if s < from || s >= to {
				continue
			}
			at, err := clock.After(start, s)
			if err != nil {
				return nil, err
			}
			out = append(out, StreamSample{at, h.row(i, w.r).Stream()})
		}
	}
	return NewClockStreams(out, 3*time.Hour)
}

// HourOn returns the hours from the high water nearest to the instant,
// negative before it.
//
// Special cases are:
//
//	HourOn = NaN if the instant is outside the table, or the table has no high water
func (t *Table) HourOn(at time.Time) float64 {
	i, s := t.find(at)
	if i < 0 {
		return math.NaN()
	}
	best := math.NaN()
	nearer := func(k int) {
		if h := (s - t.at[k]) / 3600; !(math.Abs(h) > math.Abs(best)) {
			best = h
		}
	}
	for k := i; k >= 0; k-- {
		if t.turns[k].High {
			nearer(k)
			break
		}
	}
	for k := i + 1; k < len(t.turns); k++ {
		if t.turns[k].High {
			nearer(k)
			break
		}
	}
	return best
}
