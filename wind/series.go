package wind

import (
	"errors"
	"fmt"
	"iter"
	"math"
	"slices"
	"sort"
	"time"

	"followingsea.example/internal/clock"
)

// Errors of a series.
var (
	// ErrEmpty is a series without a sample, or a span that holds none.
	ErrEmpty = errors.New("wind: no samples")
	// ErrDuplicate is a second sample for the same instant.
	ErrDuplicate = errors.New("wind: two samples for one instant")
	// ErrOutside is an instant before the first sample or after the last.
	ErrOutside = errors.New("wind: outside the record")
	// ErrGap is an instant inside a gap: nobody knows the wind then.
	ErrGap = errors.New("wind: in a gap of the record")
	// ErrSpan is a span that ends before it begins.
	ErrSpan = errors.New("wind: span ends before it begins")
	// ErrTime is a sample without an instant.
	ErrTime = errors.New("wind: sample without a time")
)

// Series is the wind through time at one place: a record or a forecast.
// Its samples are valid, in order of time, at distinct instants. Where two
// neighbours lie further apart than the gap of the series, the wind between
// them is not known and every question about it is answered with ErrGap.
//
// A Series is immutable and safe for concurrent use. The zero value is empty.
type Series struct {
	samples []Sample
	gap     time.Duration
}

// NewSeries returns the series of the samples, which may come in any order;
// they are copied.
//
// The gap is the longest step between neighbours that is interpolated across.
// Zero means 3 hours, or one and a half times the usual (median) step if that
// is more: enough for an hourly record with a few rows missing, for three- and
// six-hourly forecasts, and for a forecast that turns from hourly to
// three-hourly.
//
// The error is ErrEmpty, ErrTime, ErrDuplicate, ErrSpan for a negative gap,
// or that of a wind out of range; it names the sample's time.
func NewSeries(samples []Sample, gap time.Duration) (Series, error) {
	if len(samples) == 0 {
		return Series{}, ErrEmpty
	}
	if gap < 0 {
		return Series{}, fmt.Errorf("%w: gap %v is negative", ErrSpan, gap)
	}
	in := slices.Clone(samples)
	for i := range in {
		if in[i].Time.IsZero() {
			return Series{}, fmt.Errorf("%w: sample %d", ErrTime, i)
		}
		if err := in[i].Wind.check(); err != nil {
			return Series{}, fmt.Errorf("sample of %s: %w", stamp(in[i].Time), err)
		}
		in[i].Wind = in[i].Wind.tidy()
		if in[i].From == 360 {
			in[i].From = 0
		}
	}
	slices.SortStableFunc(in, func(a, b Sample) int { return a.Time.Compare(b.Time) })
	for i := 1; i < len(in); i++ {
		if in[i].Time.Equal(in[i-1].Time) {
			return Series{}, fmt.Errorf("%w: %s", ErrDuplicate, stamp(in[i].Time))
		}
	}
	if gap == 0 {
		gap = usualGap(in)
	}
	return Series{samples: in, gap: gap}, nil
}

func usualGap(s []Sample) time.Duration {
	gap := 3 * time.Hour
	if len(s) < 2 {
		return gap
	}
	steps := make([]time.Duration, len(s)-1)
	for i := range steps {
		steps[i] = s[i+1].Time.Sub(s[i].Time)
	}
	slices.Sort(steps)
	return max(gap, steps[len(steps)/2]/2*3)
}

func stamp(t time.Time) string { return t.UTC().Format(time.RFC3339) }

// Len returns the number of samples.
func (s Series) Len() int { return len(s.samples) }

// Sample returns the i-th sample in order of time. It panics if there is none.
func (s Series) Sample(i int) Sample {
	if i < 0 || i >= len(s.samples) {
		panic(fmt.Sprintf("wind: Sample(%d) of a series of %d", i, len(s.samples)))
	}
	return s.samples[i]
}

// All yields the samples in order of time.
func (s Series) All() iter.Seq2[int, Sample] {
	return func(yield func(int, Sample) bool) {
		for i, x := range s.samples {
			if !yield(i, x) {
				return
			}
		}
	}
}

// Samples returns a copy of the samples in order of time.
func (s Series) Samples() []Sample { return slices.Clone(s.samples) }

// Gap returns the longest step that is interpolated across.
func (s Series) Gap() time.Duration { return s.gap }

// Start returns the instant of the first sample, the zero Time if empty.
func (s Series) Start() time.Time {
	if len(s.samples) == 0 {
		return time.Time{}
	}
	return s.samples[0].Time
}

// End returns the instant of the last sample, the zero Time if empty.
func (s Series) End() time.Time {
	if len(s.samples) == 0 {
		return time.Time{}
	}
	return s.samples[len(s.samples)-1].Time
}

// Span is a stretch of time.
type Span struct {
	Start time.Time
	End   time.Time
}

// Gaps returns the stretches inside the record over which the wind is unknown.
func (s Series) Gaps() []Span {
	var out []Span
	for i := 1; i < len(s.samples); i++ {
		if s.isGap(i) {
			out = append(out, Span{s.samples[i-1].Time, s.samples[i].Time})
		}
	}
	return out
}

// isGap reports whether the wind is unknown between sample i-1 and sample i.
func (s Series) isGap(i int) bool {
	return s.samples[i].Time.Sub(s.samples[i-1].Time) > s.gap
}

// after returns the index of the first sample later than t.
func (s Series) after(t time.Time) int {
	return sort.Search(len(s.samples), func(i int) bool { return s.samples[i].Time.After(t) })
}

// At returns the wind at t, interpolated between the samples on either side as
// [Interpolate] does, and the temperatures where both sides have them.
//
// The error is ErrOutside before the first sample and after the last: a wind
// is not extrapolated; or ErrGap.
func (s Series) At(t time.Time) (Sample, error) {
	i := s.after(t)
	if i == 0 {
		return Sample{}, s.outside(t)
	}
	a := s.samples[i-1]
	if a.Time.Equal(t) {
		return a, nil
	}
	if i == len(s.samples) {
		return Sample{}, s.outside(t)
	}
	b := s.samples[i]
	if s.isGap(i) {
		return Sample{}, fmt.Errorf("%w: %s is between %s and %s", ErrGap, stamp(t), stamp(a.Time), stamp(b.Time))
	}
	f := clock.Seconds(a.Time, t) / clock.Seconds(a.Time, b.Time)
	return Sample{
		Time:  t,
		Wind:  Interpolate(a.Wind, b.Wind, f),
		Air:   between(a.Air, b.Air, f),
		Water: between(a.Water, b.Water, f),
	}, nil
}

func (s Series) outside(t time.Time) error {
	if len(s.samples) == 0 {
		return fmt.Errorf("%w: %s", ErrEmpty, stamp(t))
	}
	return fmt.Errorf("%w: %s is outside %s to %s", ErrOutside, stamp(t), stamp(s.Start()), stamp(s.End()))
}

func between(a, b Temperature, f float64) Temperature {
	if !a.known || !b.known {
		return Temperature{}
	}
	return Celsius((1-f)*a.celsius + f*b.celsius)
}

// Between returns the part of the series from start to end, both included,
// with samples interpolated at the two ends where the record has none there.
//
// The error is ErrSpan for an end before the start, or that of [Series.At] at
// either end. A gap wholly inside stays one.
func (s Series) Between(start, end time.Time) (Series, error) {
	if end.Before(start) {
		return Series{}, fmt.Errorf("%w: %s to %s", ErrSpan, stamp(start), stamp(end))
	}
	a, err := s.At(start)
	if err != nil {
		return Series{}, err
	}
	b, err := s.At(end)
	if err != nil {
		return Series{}, err
	}
	i, j := s.after(start), s.after(end)
	out := make([]Sample, 0, j-i+2)
	out = append(out, a)
	out = append(out, s.samples[i:j]...)
	if last := out[len(out)-1]; !last.Time.Equal(end) {
		out = append(out, b)
	}
	return Series{samples: out, gap: s.gap}, nil
}

var nan = math.NaN()
