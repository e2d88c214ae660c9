package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/wind"
)

// A made is a plan worked out, ready to be printed.
type made struct {
	in         *inputs
	options    options
	water      *passage.Water
	paddler    passage.Paddler
	path       *route.Path
	appraisals []passage.Appraisal
	best       int // index of the departure shown in full
	legs       []passage.Leg
	escapes    escapes
	together   together
	ashore     passage.Ashore
	deck       passage.Deck
	stands     []passage.Tolerance
	launch     *passage.Launch  // nil when nothing was seen
	debrief    *passage.Debrief // nil when no track was given
}

// mostDepartures bounds a plan, longestSpan the time between its first and its
// last departure.
const (
	mostDepartures = 2000
	longestSpan    = 15 * 24 * time.Hour
)

func work(in *inputs, o options) (*made, error) {
	p := &made{in: in, options: o, paddler: in.party[0]}
	for _, who := range in.party[1:] { // whoever knows the variation
		if _, ok := p.paddler.Variation.East.Get(); !ok {
			p.paddler.Variation = who.Variation
		}
	}
	var err error
	if p.path, err = route.NewPath(in.run.Points...); err != nil {
		return nil, fmt.Errorf("%s: %w", in.runFile, err)
	}
	from, to, err := departures(in, o)
	if err != nil {
		return nil, err
	}
	if n := int(to.Sub(from)/o.step) + 1; n > mostDepartures {
		return nil, fmt.Errorf("%w -step: %v makes %d departures: want at most %d", errUse, o.step, n, mostDepartures)
	}
	p.water, err = in.prepare(in.run, in.day, o, from, to)
	if err != nil {
		return nil, err
	}
	for t := from; !t.After(to); t = t.Add(o.step) {
		a, err := p.water.Appraise(t)
		if err != nil {
			return nil, err
		}
		p.appraisals = append(p.appraisals, a)
	}
	for i, a := range p.appraisals {
		if better(a, p.appraisals[p.best]) {
			p.best = i
		}
	}
	if p.legs, err = p.water.Timeline(p.appraisals[p.best].Depart); err != nil {
		return nil, err
	}
	if p.escapes, err = p.escape(); err != nil {
		return nil, err
	}
	if p.together, err = p.meet(); err != nil {
		return nil, err
	}
	if err := p.leave(); err != nil {
		return nil, err
	}
	if err := p.onDeck(); err != nil {
		return nil, err
	}
	return p, p.look()
}

// better reports whether a departure is to be shown in full before another:
// within all limits first, then fewer limits broken, then fewer unknown, then
// the wider margin.
func better(a, b passage.Appraisal) bool {
	if x, y := len(a.Broken()), len(b.Broken()); x != y {
		return x < y
	}
	if x, y := len(a.Unknown()), len(b.Unknown()); x != y {
		return x < y
	}
	if a.Arrives != b.Arrives {
		return a.Arrives
	}
	return a.Margin > b.Margin
}

// departures finds the first and the last departure: what the options ask
// for, or the daylight of the day of the forecast.
func departures(in *inputs, o options) (from, to time.Time, err error) {
	day, dawn, dusk, err := in.pickDay(o)
	if err != nil {
		return from, to, err
	}
	from, to = upTo(dawn, o.step), dusk
	if o.from != "" {
		whole := false
		if from, whole, err = moment("-from", o.from, day, o.zone); err != nil {
			return from, to, err
		}
		day = from
		if dawn, dusk, err = in.lightOf(from, o); err != nil {
			return from, to, err
		}
		if whole {
			from = upTo(dawn, o.step)
		}
		if to = dusk; !from.Before(dusk) {
			to = from
		}
	}
	if o.to != "" {
		whole := false
		if to, whole, err = moment("-to", o.to, day, o.zone); err != nil {
			return from, to, err
		}
		if whole {
			if _, to, err = in.lightOf(to, o); err != nil {
				return from, to, err
			}
		}
	}
	if to.Before(from) {
		return from, to, fmt.Errorf("%w -to: %s is before the first departure, %s", errUse, longClock(to, o), longClock(from, o))
	}
	if to.Sub(from) > longestSpan {
		return from, to, fmt.Errorf("%w -to: %s is more than 15 days after the first departure, %s", errUse, longClock(to, o), longClock(from, o))
	}
	return from, to, nil
}

func longClock(t time.Time, o options) string { return t.In(o.zone).Format("2006-01-02 15:04 MST") }

// pickDay chooses the day that is planned, where nothing is asked for: today,
// if the wind is known for all of its daylight, or else the last day of which
// that is true; without wind, today.
func (in *inputs) pickDay(o options) (day, dawn, dusk time.Time, err error) {
	today := o.now
	if o.data == "" {
		today = demoDay
	}
	day = today
	for i := 0; ; i++ {
		if dawn, dusk, err = in.lightOf(day, o); err != nil || !in.hasWind {
			return day, dawn, dusk, err
		}
		if i > 3 || !in.wind.Start().After(dawn) && !in.wind.End().Before(dusk) {
			return day, dawn, dusk, nil
		}
		if i == 0 {
			day = in.wind.End()
		} else {
			day = day.AddDate(0, 0, -1)
		}
	}
}

// lightOf returns the start and the end of civil twilight at the launch on the
// day, in the zone of the plan, of an instant; where there is none, midnight and
// midnight.
func (in *inputs) lightOf(at time.Time, o options) (dawn, dusk time.Time, err error) {
	at = at.In(o.zone)
	light, err := route.Daylight(in.run.Points[0], at)
	if err != nil {
		return dawn, dusk, fmt.Errorf("the light at the start: %w", err)
	}
	dawn, dusk = light.CivilDawn.Time, light.CivilDusk.Time
	if light.CivilDawn.State != route.Happens || light.CivilDusk.State != route.Happens {
		dawn = time.Date(at.Year(), at.Month(), at.Day(), 0, 0, 0, 0, o.zone)
		dusk = dawn.AddDate(0, 0, 1)
	}
	return dawn, dusk, nil
}

// upTo rounds a time up to a whole step after midnight UTC.
func upTo(t time.Time, step time.Duration) time.Time {
	if r := t.Truncate(step); r.Before(t) {
		return r.Add(step)
	}
	return t.Truncate(step)
}

// moment reads a time of the command line: 08:00 on the day, 2026-06-21T08:00 in
// the zone, RFC 3339, or a day as a whole, 2026-06-21, of which it returns noon.
func moment(option, s string, day time.Time, zone *time.Location) (t time.Time, whole bool, err error) {
	if t, err := time.Parse(time.RFC3339, s); err == nil {
		return t, false, nil
	}
	if t, err := time.ParseInLocation("2006-01-02T15:04", s, zone); err == nil {
		return t, false, nil
	}
	if t, err := time.ParseInLocation("2006-01-02", s, zone); err == nil {
		return t.Add(12 * time.Hour), true, nil
	}
	if t, err := time.Parse("15:04", s); err == nil {
		day = day.In(zone)
		return time.Date(day.Year(), day.Month(), day.Day(), t.Hour(), t.Minute(), 0, 0, zone), false, nil
	}
	return time.Time{}, false, fmt.Errorf("%w %s: %q: want 08:00, 2026-06-21, 2026-06-21T08:00, or 2026-06-21T08:00:00Z", errUse, option, s)
}

// An exitPlace is an exit with its place along the run and its distance off it.
type exitPlace struct {
	exit  route.Exit
	along float64
	off   float64
}

// exitPlaces lists the exits in the order of the run.
func (p *made) exitPlaces() ([]exitPlace, error) {
	var out []exitPlace
	for _, e := range p.in.run.Exits {
		c, err := p.path.Closest(e.Point)
		if err != nil {
			return nil, err
		}
		out = append(out, exitPlace{e, c.Along, c.Distance})
	}
	slices.SortStableFunc(out, func(a, b exitPlace) int { return cmp.Compare(a.along, b.along) })
	return out, nil
}

// longestGap returns the longest stretch without an exit abeam.
func longestGap(exits []exitPlace, length float64) (from, to float64) {
	last := 0.0
	for _, e := range append(exits, exitPlace{along: length}) {
		if e.along-last > to-from {
			from, to = last, e.along
		}
		last = e.along
	}
	return from, to
}

// bestWind is the direction from which the wind blows along the run as a
// whole.
func (p *made) bestWind() float64 {
	pts := p.in.run.Points
	course := route.Inverse(pts[0], pts[len(pts)-1]).Mean()
	return math.Mod(course+180, 360)
}

// forecast puts wind, swell, tide and stream around the departure shown in full
// into words.
func (p *made) forecast() []string {
	out := p.windInWords()
	out = append(out, p.swellWords()...)
	out = append(out, p.tideWords()...)
	return append(out, p.warmth()...)
}

func (p *made) windInWords() []string {
	if !p.in.hasWind {
		return nil
	}
	s := p.in.wind
	a := p.appraisals[p.best]
	start, end := a.Depart, a.Late
	if end.IsZero() {
		end = start.Add(2 * time.Hour)
	}
	var out []string
	if around, err := s.Around(start, end, 3*time.Hour); err == nil {
		out = append(out,
			fmt.Sprintf("Wind in the three hours before: %s; on the way: %s; in the three hours after: %s.",
				meanWords(around.Before), meanWords(around.During), meanWords(around.After)),
			fmt.Sprintf("From before to during it %s; from during to after it %s.", turnWords(around.Settling), turnWords(around.Lasting)))
	}
	level := 10 * wind.Knot
	for _, f := range a.Findings {
		if f.Rule == passage.LeastWind && f.Limit > 0 {
			level = f.Limit
		}
	}
	if on, err := s.Onset(start, level); err == nil {
		when := "rose past"
		if on.Earlier {
			when = "was already above"
		}
		out = append(out, fmt.Sprintf("It %s %.0f kn at %s: %.1f h before the start.", when, level/wind.Knot, p.clock(on.At), on.Blown.Hours()))
	} else {
		out = append(out, fmt.Sprintf("At the start it is below %.0f kn, or not known.", level/wind.Knot))
	}
	out = append(out, p.turns(start)...)
	return out
}

// turns lists the turns of 30 degrees or more within three hours on the day.
func (p *made) turns(start time.Time) []string {
	s := p.in.wind
	var out []string
	for t := start.Add(-6 * time.Hour); t.Before(start.Add(14 * time.Hour)); t = t.Add(time.Hour) {
		a, err := s.At(t)
		if err != nil {
			continue
		}
		b, err := s.At(t.Add(time.Hour))
		if err != nil {
			continue
		}
		if turn := wind.TurnOf(a.Wind, b.Wind); math.Abs(turn.Degrees) >= 30 {
			out = append(out, fmt.Sprintf("Between %s and %s it %s: %s to %s.", p.clock(t), p.clock(t.Add(time.Hour)),
				turnWords(turn), windWords(a.Wind), windWords(b.Wind)))
		}
	}
	if len(out) == 0 {
		out = append(out, "No turn of 30 degrees or more within an hour on the day of the forecast.")
	}
	return out
}

func meanWords(m wind.Mean) string {
	if m.N == 0 || m.Speed != m.Speed {
		return "not known"
	}
	return fmt.Sprintf("%.0f kn from %03.0f, steadiness %.2f", m.Speed/wind.Knot, whole(m.From), m.Steadiness)
}

func turnWords(t wind.Turn) string {
	if t.Degrees != t.Degrees {
		return "turns in a way that is not known"
	}
	if math.Abs(t.Degrees) < 1 {
		return "holds its direction"
	}
	word := map[bool]string{true: "veers", false: "backs"}[t.Degrees > 0]
	if strings.Contains(t.Kind.String(), "revers") {
		word = "reverses"
	}
	return fmt.Sprintf("%s %s", word, count(int(math.Round(math.Abs(t.Degrees))), "degree"))
}

func windWords(w wind.Wind) string {
	if w.IsCalm() {
		return "calm"
	}
	return fmt.Sprintf("%.0f kn from %03.0f", w.Speed/wind.Knot, whole(w.From))
}

// whole rounds a bearing to whole degrees, 360 to 0.
func whole(deg float64) float64 { return math.Mod(math.Round(deg), 360) }
