package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/clock"
	"followingsea.example/wind"
)

// An Observed is what is seen at the launch, against the forecast. What nobody
// looked at is unknown and leaves the forecast as it is.
type Observed struct {
	Wind Value // mean speed at 10 m, m/s
	From Value // where it comes from, degrees true
	Sea  Value // significant height of all waves off the launch, m
	Late Value // how much later than planned the start is, s; unknown: not late
}

// A Shifted is a finding that what was observed changes.
type Shifted struct {
	Rule   Rule
	Before Finding // as planned
	After  Finding // as observed
}

// A Launch is the plan as it stands at the launch.
type Launch struct {
	Before Appraisal // as planned
	After  Appraisal // as observed
	Turn   float64   // degrees that the wind is clockwise of the forecast; 0 when nobody looked
	More   float64   // m/s that it is above it
	Sea    float64   // of the height of the forecast sea
	Shifts []Shifted // findings whose state differs
}

// Launch appraises a departure again by what is seen at the launch, and says
// which findings that changes. The difference from the forecast at that instant
// is taken to last: from then on every wind of the forecast is as much stronger
// and as much turned (gusts in proportion), and every height of the sea is as
// many times higher, with its period as it was. Proposal, no published source:
// nobody knows how long the error of a forecast lasts, and that it goes away
// would be a guess to the pleasant side as often as not.
//
// Errors wrap [ErrInput]: a departure, planned or late, outside the prepared
// time; an observation out of range; one of something that the forecast does
// not know at the launch, so that there is nothing to compare it with.
func (w *Water) Launch(depart time.Time, o Observed) (Launch, error) {
	var l Launch
	var err error
	if l.Before, err = w.Appraise(depart); err != nil {
		return Launch{}, err
	}
	for _, f := range []field{{"wind observed", o.Wind, 0, 70, "m/s"}, {"wind observed from", o.From, 0, 360, "degrees"},
		{"sea observed", o.Sea, 0, 25, "m"}, {"time late", o.Late, 0, 12 * 3600, "s"}} {
		if x, ok := f.value.Get(); ok && !(x >= f.lo && x <= f.hi) {
			return Launch{}, inputError(f.name, x, fmt.Sprintf("%g to %g %s", f.lo, f.hi, f.unit))
		}
	}
	start, err := clock.After(depart, o.Late.Or(0))
	if err != nil {
		return Launch{}, err
	}
	if _, err := w.departure(start); err != nil {
		return Launch{}, fmt.Errorf("the late start: %w", err)
	}
	c := forecastError{sea: 1, from: start}
	m, err := w.Moment(0, start)
	if err != nil {
		return Launch{}, err
	}
	if x, ok := o.Wind.Get(); ok {
		if c.more = x - m.Wind.Speed; c.more != c.more {
			return Launch{}, inputError("wind observed", x, "a forecast of the wind at the launch to compare it with")
		}
	}
	if x, ok := o.From.Get(); ok {
		if c.turn = angle.Diff(m.Wind.From, angle.Wrap(x)); c.turn != c.turn {
			return Launch{}, inputError("wind observed from", x, "a forecast of the wind's direction at the launch to compare it with")
		}
	}
	if x, ok := o.Sea.Get(); ok {
		if c.sea = x / m.TotalHs; !(c.sea >= 0 && c.sea <= 20) {
			return Launch{}, inputError("sea observed", x, fmt.Sprintf("a forecast of the sea at the launch that it can be compared with, not %.2g m", m.TotalHs))
		}
	}
	l.Turn, l.More, l.Sea = c.turn, c.more, c.sea
	if l.After, err = w.under(c, math.Inf(1)); err != nil {
		return Launch{}, err
	}
	for i, f := range l.Before.Findings {
		if g := l.After.Findings[i]; g.State != f.State {
			l.Shifts = append(l.Shifts, Shifted{f.Rule, f, g})
		}
	}
	return l, nil
}

// A forecastError is by how much the water is not as forecast, from an instant
// on.
type forecastError struct {
	from time.Time
	more float64 // m/s of wind
	turn float64 // degrees, clockwise
	sea  float64 // factor on every height
}

// under appraises a departure at the instant of a forecast's error, under it;
// nothing later than some seconds after the epoch is worked out.
func (w *Water) under(c forecastError, until float64) (Appraisal, error) {
	day := w.day
	day.Wind = append([]Anemometer(nil), day.Wind...)
	for i := range day.Wind {
		s, err := c.on(day.Wind[i].Series)
		if err != nil {
			return Appraisal{}, err
		}
		day.Wind[i].Series = s
	}
	if c.sea != 1 && day.Swell != nil {
		day.Swell = scaledSwell{day.Swell, c.sea}
	}
	again, err := w.again(day, c.sea, until)
	if err != nil {
		return Appraisal{}, err
	}
	return again.Appraise(c.from)
}

// on returns a wind record as it is under the error: a sample at its instant
// and every one after it changed. A record that does not know the wind at that
// instant keeps what it has, changed from the next sample on. A wind that would
// be negative is calm, one above what a record may hold is that, and what is
// added to a calm comes from where the last wind did; a calm without a wind
// before it is an error.
func (c forecastError) on(s wind.Series) (wind.Series, error) {
	if c.more == 0 && c.turn == 0 {
		return s, nil
	}
	var out []wind.Sample
	last := math.NaN() // where the wind came from before it fell calm
	change := func(x wind.Sample) (wind.Sample, error) {
		if !x.IsCalm() {
			last = x.From
		} else if !(c.more > 0) {
			return x, nil
		}
		speed := math.Min(math.Max(x.Speed+c.more, 0), wind.StrongestMean)
		from := angle.Wrap(last + c.turn)
		var err error
		gust := x.Gust / x.Speed * speed
		if gust >= speed && gust <= wind.Strongest {
			x.Wind, err = wind.Gusting(speed, gust, from)
		} else {
			x.Wind, err = wind.New(speed, from)
		}
		return x, err
	}
	if at, err := s.At(c.from); err == nil {
		before := c.from.Add(-time.Second)
		if was, err := s.At(before); err == nil {
			out = append(out, was)
			out[0].Time = before
		}
		at.Time = c.from
		if at, err = change(at); err != nil {
			return s, err
		}
		out = append(out, at)
	}
	var all []wind.Sample
	for _, x := range s.Samples() {
		switch {
		case x.Time.Before(c.from.Add(-time.Second)):
			all = append(all, x)
		case x.Time.After(c.from):
			x, err := change(x)
			if err != nil {
				return s, err
			}
			out = append(out, x)
		}
	}
	return wind.NewSeries(append(all, out...), s.Gap())
}

// scaledSwell is swell of other heights.
type scaledSwell struct {
	SwellSource
	factor float64
}

// At returns the systems with their heights multiplied.
func (s scaledSwell) At(at time.Time) ([]wind.Swell, error) {
	systems, err := s.SwellSource.At(at)
	out := append([]wind.Swell(nil), systems...)
	for i := range out {
		out[i].Hs *= s.factor
	}
	return out, err
}
