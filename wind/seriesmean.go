package wind

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
)

// Mean returns the average of the wind over the span from start to end. Each
// sample counts for the time it stands for (half the step on either side); gaps
// are left out, and Covered tells how much of the span was left. A span of no length is
// the wind at that instant.
//
// The error is ErrSpan for an end before the start, that of [Series.At] at
// either end, or ErrGap if nothing of the span is covered.
func (s Series) Mean(start, end time.Time) (Mean, error) {
	part, err := s.Between(start, end)
	if err != nil {
		return Mean{}, err
	}
	return part.average(clock.Seconds(start, end))
}

// average averages the whole series over a span of so many seconds.
func (s Series) average(seconds float64) (Mean, error) {
	if len(s.samples) == 1 {
		return Average([]Wind{s.samples[0].Wind}), nil
	}
	var a averager
	var covered float64
	for i, x := range s.samples {
		var weight float64
		if i > 0 && !s.isGap(i) {
			dt := clock.Seconds(s.samples[i-1].Time, x.Time)
			covered += dt
			weight += dt / 2
		}
		if i+1 < len(s.samples) && !s.isGap(i+1) {
			weight += clock.Seconds(x.Time, s.samples[i+1].Time) / 2
		}
		if weight > 0 {
			a.add(x.Wind, weight)
		}
	}
	if covered == 0 {
		return Mean{}, fmt.Errorf("%w: nothing is known from %s to %s", ErrGap, stamp(s.Start()), stamp(s.End()))
	}
	m := a.mean()
	m.Covered = math.Min(1, covered/seconds)
	return m, nil
}

// Around is the wind of a window and of the hours on either side of it.
type Around struct {
	Before, During, After Mean
	// Settling is the turn from Before to During, Lasting that from During to After.
	Settling, Lasting Turn
}

// Around returns the average over the window from start to end and over the
// margin before and after it, so that one sees whether the wind was steady when the
// sea was raised and will hold when the boats are out. Where the record ends
// within a margin, the mean is over what there is and its Covered says how
// much; where it has nothing at all the mean has N 0, Covered 0 and is
// otherwise NaN.
//
// The error is ErrSpan for a negative margin, or that of [Series.Mean] for the
// window itself.
func (s Series) Around(start, end time.Time, margin time.Duration) (Around, error) {
	if margin < 0 {
		return Around{}, fmt.Errorf("%w: margin %v is negative", ErrSpan, margin)
	}
	during, err := s.Mean(start, end)
	if err != nil {
		return Around{}, err
	}
	side := func(a, b time.Time) Mean {
		m, err := s.partly(a, b)
		if err != nil {
			return new(averager).mean() // nothing is known
		}
		return m
	}
	out := Around{
		Before: side(start.Add(-margin), start),
		During: during,
		After:  side(end, end.Add(margin)),
	}
	out.Settling = TurnOf(out.Before.wind(), out.During.wind())
	out.Lasting = TurnOf(out.During.wind(), out.After.wind())
	return out, nil
}

// partly is Mean for a span whose ends may lie in gaps or outside the record:
// of what lies between the first and the last sample inside it. The start is not after
// the record, nor the end before it.
func (s Series) partly(start, end time.Time) (Mean, error) {
	want := clock.Seconds(start, end)
	if _, err := s.At(start); err != nil {
		start = s.samples[s.after(start)].Time
	}
	if _, err := s.At(end); err != nil {
		end = s.samples[s.after(end)-1].Time
	}
	if !start.Before(end) {
		return Mean{}, ErrGap
	}
	m, err := s.Mean(start, end)
	m.Covered *= clock.Seconds(start, end) / want
	return m, err
}

// wind is the mean as a wind: scalar speed, unit-vector direction.
func (m Mean) wind() Wind {
	return Wind{m.Speed, m.Gust, m.From}
}

// Steady is a stretch of constant wind counted backward from an instant.
type Steady struct {
	Since time.Time
	For   time.Duration
	// Mean is over the samples of the stretch, each counting the same.
	Mean Mean
	// ToStart is true where the stretch reaches back to the beginning of the
	// record or to a gap: it may have begun earlier.
	ToStart bool
}

// Limits of the constant wind of the coastal engineering manuals.
const (
	SteadySpeed     = 2.5 // m/s
	SteadyDirection = 15  // degrees
)

// SteadyBefore returns how long the wind had been constant at t, by the test of
// the coastal engineering manuals: counting backward from the last sample at or
// before t, a sample belongs as long as its speed is within [SteadySpeed] of the
// mean speed of those that belong already and its direction within
// [SteadyDirection] of their mean direction.
//
// The error is that of [Series.At], or ErrOutside where the wind at t is calm
// and so has no direction to be constant in.
//
// Source: [CEM-II-2] section II-2-2, constant wind for the duration of a sea.
func (s Series) SteadyBefore(t time.Time) (Steady, error) {
	if _, err := s.At(t); err != nil {
		return Steady{}, err
	}
	i := s.after(t) - 1
	if s.samples[i].Speed == 0 {
		return Steady{}, fmt.Errorf("%w: calm at %s", ErrOutside, stamp(s.samples[i].Time))
	}
	var a averager
	first := i
	out := Steady{}
	for j := i; ; j-- {
		x := s.samples[j]
		if j < i {
			m := a.mean()
			turn := TurnOf(Wind{1, nan, m.From}, x.Wind)
			if !(math.Abs(x.Speed-m.Speed) < SteadySpeed && math.Abs(turn.Degrees) < SteadyDirection) {
				break
			}
		}
		a.add(x.Wind, 1)
		first = j
		if j == 0 || s.isGap(j) {
			out.ToStart = true
			break
		}
	}
	out.Since = s.samples[first].Time
	out.For = t.Sub(out.Since)
	out.Mean = a.mean()
	return out, nil
}
