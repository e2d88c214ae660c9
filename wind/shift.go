package wind

import (
	"fmt"
	"math"
	"slices"
	"time"
)

// ShiftRule says which turn of the wind is a shift. The zero value is the
// published definition: 45 degrees or more in less than 15 minutes, with 10
// knots or more throughout. A forecast in steps of hours needs a rule of hours.
type ShiftRule struct {
	Degrees float64       // least turn
	Within  time.Duration // it takes less than this
	Speed   float64       // m/s, all the while; zero means 10 kn, negative none
}

// Shift is a turn of the wind that meets a rule.
type Shift struct {
	Span
	Turn          Turn
	Before, After Wind
}

// Shifts returns the wind shifts of the record, in order of time and without
// overlap. The zero rule is the one of the United States' observing manuals.
//
// The error is ErrCoarse where the usual step of the record is not shorter than
// Within: such a record cannot show one, which does not mean that there was
// none; ErrDirection for a rule of degrees outside 0 (not included) to 180.
//
// Source: [AFMAN-15-111] paragraph 7.4.5; the same in FMH-1.
func (s Series) Shifts(rule ShiftRule) ([]Shift, error) {
	if rule.Degrees == 0 {
		rule.Degrees = 45
	}
	if rule.Within == 0 {
		rule.Within = 15 * time.Minute
	}
	if rule.Speed == 0 {
		rule.Speed = 10 * Knot
	}
	if !(rule.Degrees > 0 && rule.Degrees <= 180) {
		return nil, fmt.Errorf("%w: a shift of %v degrees is outside 0 to 180", ErrDirection, rule.Degrees)
	}
	if math.IsNaN(rule.Speed) {
		return nil, fmt.Errorf("%w: a shift at %v m/s", ErrSpeed, rule.Speed)
	}
	if err := s.fine(rule.Within); err != nil {
		return nil, err
	}
	var out []Shift
	const slack = 1e-9 // 10 knots read from a table in knots are 10 knots
	for i := 0; i < len(s.samples); i++ {
		best := -1
		for j := i + 1; j < len(s.samples) && s.samples[j].Time.Sub(s.samples[i].Time) < rule.Within; j++ {
			if s.isGap(j) || s.samples[j].Speed < rule.Speed-slack || s.samples[i].Speed < rule.Speed-slack {
				break
			}
			turn := math.Abs(TurnOf(s.samples[i].Wind, s.samples[j].Wind).Degrees)
			if turn >= rule.Degrees-slack && (best < 0 || turn > math.Abs(TurnOf(s.samples[i].Wind, s.samples[best].Wind).Degrees)) {
				best = j
			}
		}
		if best < 0 {
			continue
		}
		a, b := s.samples[i], s.samples[best]
		out = append(out, Shift{Span{a.Time, b.Time}, TurnOf(a.Wind, b.Wind), a.Wind, b.Wind})
		i = best - 1 // the next may begin where this one ended
	}
	return out, nil
}

// fine reports whether the usual step is short enough to show what happens
// within d.
func (s Series) fine(d time.Duration) error {
	if len(s.samples) < 2 {
		return fmt.Errorf("%w: %d samples", ErrCoarse, len(s.samples))
	}
	steps := make([]time.Duration, len(s.samples)-1)
	for i := range steps {
		steps[i] = s.samples[i+1].Time.Sub(s.samples[i].Time)
	}
	slices.Sort(steps)
	if step := steps[len(steps)/2]; step >= d {
		return fmt.Errorf("%w: usual step %v, want below %v", ErrCoarse, step, d)
	}
	return nil
}

// SquallRule says which rise of the wind is a squall. The zero value is the
// published definition, a sudden rise by 8 m/s (16 knots) or more to 11 m/s
// (22 knots) or more that lasts a minute, with "sudden" taken as less than 15
// minutes, which no definition puts a figure to.
type SquallRule struct {
	Rise   float64       // m/s
	To     float64       // m/s
	Last   time.Duration // at To or above, and risen by Rise
	Within time.Duration // the rise takes less than this
}

// Squall is a rise of the wind that meets a rule.
type Squall struct {
	Span   // from the last sample before the rise to the last at its height
	Before Wind
	Peak   Wind // the strongest mean
}

// Squalls returns the squalls of the record, in order of time. A sample counts
// as a mean of a minute or more, so that one alone lasts long enough; a longer
// Last asks for that much time between the first and the last sample that are
// high.
//
// The error is ErrCoarse where the usual step of the record is not shorter than
// Within, ErrSpeed for a negative Rise or To.
//
// Source: [AFMAN-15-111] squall; [WMO-8] squall.
func (s Series) Squalls(rule SquallRule) ([]Squall, error) {
	if rule.Rise == 0 {
		rule.Rise = 8
	}
	if rule.To == 0 {
		rule.To = 11
	}
	if rule.Last == 0 {
		rule.Last = time.Minute
	}
	if rule.Within == 0 {
		rule.Within = 15 * time.Minute
	}
	if !(rule.Rise > 0) || !(rule.To > 0) {
		return nil, fmt.Errorf("%w: squall rise %v, to %v m/s", ErrSpeed, rule.Rise, rule.To)
	}
	if err := s.fine(rule.Within); err != nil {
		return nil, err
	}
	const slack = 1e-9
	var out []Squall
	for i := 0; i < len(s.samples); i++ {
		base := s.samples[i]
		high := func(x Sample) bool { return x.Speed >= rule.To-slack && x.Speed-base.Speed >= rule.Rise-slack }
		first := -1
		for j := i + 1; j < len(s.samples) && s.samples[j].Time.Sub(base.Time) < rule.Within; j++ {
			if s.isGap(j) {
				break
			}
			if high(s.samples[j]) {
				first = j
				break
			}
		}
		if first < 0 {
			continue
		}
		// The rise starts at the lowest sample before it: a later one as low
		// is the better base.
		if s.samples[i+1].Speed <= base.Speed {
			continue
		}
		last, peak := first, first
		for j := first + 1; j < len(s.samples) && !s.isGap(j) && high(s.samples[j]); j++ {
			last = j
			if s.samples[j].Speed > s.samples[peak].Speed {
				peak = j
			}
		}
		if lasted := s.samples[last].Time.Sub(s.samples[first].Time); lasted+time.Minute < rule.Last {
			continue
		}
		out = append(out, Squall{Span{base.Time, s.samples[last].Time}, base.Wind, s.samples[peak].Wind})
		i = last
	}
	return out, nil
}

// ReportableGust reports whether the wind is gusty by the observing manuals:
// 10 knots or more between peaks and lulls of the last ten minutes, both in
// m/s. NaN counts as gusty.
//
// Source: [AFMAN-15-111] paragraph 7.4.2.
func ReportableGust(peak, lull float64) bool { return !(peak-lull < 10*Knot-1e-9) }
