package wind

import (
	"errors"
	"fmt"
	"time"

	"followingsea.example/internal/clock"
)

// ErrBelow is a wind that is below the level asked about.
var ErrBelow = errors.New("wind: below the level")

// ErrCoarse is a record whose step is too long to show what was asked for.
var ErrCoarse = errors.New("wind: the record is too coarse")

// Spell is a stretch of time on one side of a level of wind speed. Its ends
// are interpolated between samples.
type Spell struct {
	Span
	// Begins is false where the stretch was under way when the record, or the
	// record after a gap, began: it may be longer.
	Begins bool
	// Ends is false where the record, or a gap, cut it off.
	Ends bool
	// Extreme is the highest speed of a spell at or above the level, the lowest
	// of a lull, in m/s.
	Extreme float64
}

// For returns the length of the spell, a lower bound unless it Begins and Ends.
func (s Spell) For() time.Duration { return s.End.Sub(s.Start) }

// Spells returns the stretches during which the wind was at the level or above
// it, in m/s, in order of time. The speed is linear between samples; touching
// the level from below counts as a spell of no length.
//
// The error is ErrSpeed for a level that is not above zero and finite.
func (s Series) Spells(level float64) ([]Spell, error) {
	return s.stretches(level, false)
}

// Lulls returns the stretches of at least the given length during which the
// wind was below the level, in m/s.
//
// The error is ErrSpeed for a level that is not above zero and finite, ErrSpan
// for a negative length.
func (s Series) Lulls(level float64, atLeast time.Duration) ([]Spell, error) {
	if atLeast < 0 {
		return nil, fmt.Errorf("%w: lulls of at least %v", ErrSpan, atLeast)
	}
	all, err := s.stretches(level, true)
	if err != nil {
		return nil, err
	}
	out := all[:0]
	for _, l := range all {
		if l.For() >= atLeast {
			out = append(out, l)
		}
	}
	return out, nil
}

func (s Series) stretches(level float64, below bool) ([]Spell, error) {
	if !(level > 0 && validSpeed(level)) {
		return nil, fmt.Errorf("%w: level %v m/s is not above zero", ErrSpeed, level)
	}
	in := func(i int) bool { return (s.samples[i].Speed < level) == below }
	cross := func(i int) time.Time { return crossing(s.samples[i-1], s.samples[i], level) }
	var out []Spell
	open := -1
	for i, x := range s.samples {
		gap := i == 0 || s.isGap(i)
		if gap && open >= 0 { // cut off by the gap
			out[open].End = s.samples[i-1].Time
			open = -1
		}
		switch {
		case in(i) && open < 0:
			sp := Spell{Span: Span{Start: x.Time, End: x.Time}, Extreme: x.Speed}
			if !gap {
				sp.Start, sp.Begins = cross(i), true
			}
			out = append(out, sp)
			open = len(out) - 1
		case in(i):
			if below && x.Speed < out[open].Extreme || !below && x.Speed > out[open].Extreme {
				out[open].Extreme = x.Speed
			}
		case open >= 0:
			out[open].End, out[open].Ends = cross(i), true
			open = -1
		}
	}
	if open >= 0 {
		out[open].End = s.End()
	}
	return out, nil
}

// Onset is when a wind set in.
type Onset struct {
	// At is when the speed last rose through the level from below.
	At time.Time
	// Blown is how long it has been at the level or above since.
	Blown time.Duration
	// Earlier is true where it was already at the level when the record, or the
	// record after a gap, began: it set in At or earlier and has blown for at
	// least Blown.
	Earlier bool
}

// Onset returns when the wind that blows at t set in: when its speed last rose
// past the level, in m/s, from below, and how long it has blown since.
//
// The error is that of [Series.At], ErrSpeed for a level that is not above zero,
// or ErrBelow if the wind at t is below the level.
func (s Series) Onset(t time.Time, level float64) (Onset, error) {
	now, err := s.At(t)
	if err != nil {
		return Onset{}, err
	}
	if !(level > 0 && validSpeed(level)) {
		return Onset{}, fmt.Errorf("%w: level %v m/s is not above zero", ErrSpeed, level)
	}
	if !(now.Speed >= level) {
		return Onset{}, fmt.Errorf("%w: %v m/s at %s, level %v m/s", ErrBelow, now.Speed, stamp(t), level)
	}
	// Back from t to the first sample that is below the level, or to where the
	// record begins.
	i := s.after(t) - 1
	for ; i >= 0 && s.samples[i].Speed >= level; i-- {
		if i == 0 || s.isGap(i) {
			at := s.samples[i].Time
			return Onset{At: at, Blown: t.Sub(at), Earlier: true}, nil
		}
	}
	next := now // the sample after, or t itself where it comes first
	if s.samples[i+1].Time.Before(t) {
		next = s.samples[i+1]
	}
	at := crossing(s.samples[i], next, level)
	return Onset{At: at, Blown: t.Sub(at)}, nil
}

// crossing is when the speed, linear from a to b, passes the level.
func crossing(a, b Sample, level float64) time.Time {
	f := (level - a.Speed) / (b.Speed - a.Speed)
	t, err := clock.After(a.Time, f*clock.Seconds(a.Time, b.Time))
	if err != nil {
		return b.Time
	}
	return t
}
