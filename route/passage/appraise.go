package passage

import (
	"fmt"
	"math"
	"strings"
	"time"
)

// An Appraisal is what is to be said of one departure. It never says that a
// departure is good: it says which of the paddler's own limits are met, which
// are broken, by how much, where and when, and which could not be compared.
type Appraisal struct {
	Depart   time.Time
	State    State     // Met only when every limit that was asked for is met
	Findings []Finding // one for each limit asked for, in the order of Rules

	Arrives bool      // the board gets there on what is known
	Arrival time.Time // expected
	Early   time.Time // fast case; zero when it does not arrive
	Late    time.Time // slow case, which light, endurance and the alarm use; zero when it does not arrive
	Ends    string    // why it does not arrive; empty when it does
	EndsAt  float64   // m from the start where it ends; the length of the run when it arrives

	Rideable float64 // mean over time of the share of waves that can be caught; NaN when unknown
	Margin   float64 // least margin over the limits in comfortable steps; NaN when any is unknown
	Closest  Rule    // the limit with the least margin
}

// Broken returns the findings of limits that are broken.
func (a Appraisal) Broken() []Finding { return a.in(Broken) }

// Unknown returns the findings of limits that could not be compared.
func (a Appraisal) Unknown() []Finding { return a.in(Unknown) }

func (a Appraisal) in(s State) []Finding {
	var fs []Finding
	for _, f := range a.Findings {
		if f.State == s {
			fs = append(fs, f)
		}
	}
	return fs
}

// Appraise says what is to be said of a departure.
//
// The error wraps ErrInput for a departure outside the prepared time.
func (w *Water) Appraise(depart time.Time) (Appraisal, error) {
	var a Appraisal
	if err := w.AppraiseInto(&a, depart); err != nil {
		return Appraisal{}, err
	}
	for i := range a.Findings {
		w.explain(&a.Findings[i])
	}
	return a, nil
}

// AppraiseInto is Appraise into an appraisal whose Findings it takes for its
// own: once they are long enough a departure that arrives allocates nothing.
// It leaves out of Why what a value that is known is made of.
// An error leaves the appraisal as it was.
//
// The error is that of Appraise.
func (w *Water) AppraiseInto(into *Appraisal, depart time.Time) error {
	start, err := w.departure(depart)
	if err != nil {
		return err
	}
	var mid, slow, fast walk
	w.grid.run3(&mid, &slow, &fast, start)

	a := Appraisal{Depart: depart, Rideable: math.NaN(), EndsAt: w.length, Findings: into.Findings[:0]}
	if mid.end == arrived {
		a.Arrives, a.Arrival, a.Rideable = true, w.instant(mid.arrival), mid.catch
	} else {
		a.EndsAt = w.grid.cells[mid.cell].along
		a.Ends = w.reason(&mid)
	}
	if slow.end == arrived {
		a.Late = w.instant(slow.arrival)
	}
	if fast.end == arrived {
		a.Early = w.instant(fast.arrival)
	}

	sum := newTally()
	for r := range ruleCount {
		limit, asked := w.limits[r].Get()
		if !asked {
			continue
		}
		f := w.find(r, limit, start, &mid, &slow)
		a.Findings = append(a.Findings, f)
		sum.add(r, f.State, f.Margin)
	}
	a.State, a.Margin, a.Closest = sum.total(a.Arrives)
	*into = a
	return nil
}

// A tally sums the findings of one departure up.
type tally struct {
	state   State
	margin  float64
	closest Rule
}

func newTally() tally { return tally{state: Met, margin: math.Inf(1)} }

func (y *tally) add(r Rule, s State, margin float64) {
	switch {
	case s == Broken:
		y.state = Broken
	case s == Unknown && y.state == Met:
		y.state = Unknown
	}
	if m := r.steps(margin, s); y.margin == y.margin && !(m >= y.margin) { // a NaN comes in and stays
		y.margin, y.closest = m, r
	}
}

func (y *tally) total(arrives bool) (s State, margin float64, closest Rule) {
	s, margin, closest = y.state, y.margin, y.closest
	if !arrives && s == Met {
		s = Unknown // a passage that is not known to end is within no limits
	}
	if math.IsInf(margin, 1) {
		margin = math.NaN()
	}
	return s, margin, closest
}

// mask is the rules that are asked for, as bits.
func (w *Water) mask() uint32 {
	var m uint32
	for r := range ruleCount {
		if _, asked := w.limits[r].Get(); asked {
			m |= 1 << r
		}
	}
	return m
}

// forAll ends the words for what is known in parts.
const forAll = "not known for all of it"

// reason says in words why a walk did not arrive.
func (w *Water) reason(k *walk) string {
	where := fmt.Sprintf("%.1f km from the start", w.grid.cells[k.cell].along/1000)
	if k.end == noProgress {
		return "no way is made along the track " + where
	}
	if k.stop >= w.grid.step*float64(w.grid.steps-1)-w.grid.step {
		return "the forecast ends before the arrival, " + where
	}
	return w.blank(k.cell, k.stop) + " is not known " + where
}

// blank names what is not known at a cell at an instant, so that no board can
// be stepped on from there.
func (w *Water) blank(cell int, t float64) string {
	at := w.instant(t)
	m := w.moment(cell, w.hour(at), w.stateBetween(cell, t), w.streamAt(cell, at))
	switch {
	case m.Wind.Speed != m.Wind.Speed:
		return "the wind"
	case m.Stream.East != m.Stream.East:
		return "the stream"
	case !m.Sea.Known() || !m.Old.Known():
		return "the sea"
	case m.Speed != m.Speed:
		return "the speed of the board"
	}
	return "wind, tide or stream"
}

// measure is the value that decides a rule, with where and when.
type measure struct {
	value, along, time float64
	why                string
	slow               bool // the value is that of the slow case
}

var nowhere = math.NaN()

// judge compares the value of a rule with its limit: the state and the margin,
// without words.
func (w *Water) judge(r Rule, limit, start float64, mid, slow *walk) (m measure, s State, margin float64) {
	m = w.measure(r, start, mid, slow)
	s, margin = r.judge(m.value, limit), r.margin(m.value, limit)
	if s == Met && mid.end != arrived && r.onTheWay() {
		// What was seen of the way keeps the limit; the rest was not seen.
		s, margin = Unknown, math.NaN()
	}
	return m, s, margin
}

// find compares the value of a rule with its limit.
func (w *Water) find(r Rule, limit, start float64, mid, slow *walk) Finding {
	m, s, margin := w.judge(r, limit, start, mid, slow)
	f := Finding{Rule: r, State: s, Limit: limit, Value: m.value, Margin: margin, Along: m.along, Why: m.why}
	if m.along == m.along {
		f.At = w.place(m.along)
	}
	if m.time == m.time {
		f.Time = w.instant(m.time)
	}
	if m.slow && m.why == "" && slow.end != arrived {
		f.Why = w.reason(slow)
	}
	if s == Unknown && r.judge(m.value, limit) == Met {
		f.Why = w.reason(mid)
	}
	if f.State == Unknown && f.Why == "" {
		f.Why = w.missing(r)
		if mid.end != arrived && r.onTheWay() && strings.HasSuffix(f.Why, forAll) {
			f.Why = w.reason(mid) // which is what was missing, whatever the limit is about
		}
	}
	return f
}

// onTheWay reports whether the rule is about the whole of the way.
func (r Rule) onTheWay() bool {
	switch r {
	case LeastSteadyBefore, LeastWaterTemperature, NoWarning, LeastLeaders:
		return false
	}
	return true
}

// measure finds the value that decides a rule. A limit that is broken
// somewhere is broken, whatever is unknown elsewhere; one that is nowhere
// broken but somewhere unknown is unknown.
func (w *Water) measure(r Rule, start float64, mid, slow *walk) measure {
	switch r {
	case LeastSteadyBefore:
		return measure{value: w.air.steady(start-w.before, start), along: nowhere, time: start}
	case LeastSteadyAfter:
		end := slow.arrival + w.after
		return measure{value: w.air.steady(start, end), along: nowhere, time: end}
	case GreatestShift:
		v, at := w.air.turn(start, slow.arrival+w.after)
		return measure{value: v, along: nowhere, time: at}
	case GreatestDuration:
		return measure{value: slow.arrival - start, along: nowhere, time: slow.arrival, slow: true}
	case LeastReserve:
		return measure{value: w.endurance - (slow.arrival - start), along: nowhere, time: slow.arrival, slow: true}
	case LeastDaylight:
		return w.daylight(start, slow)
	case LeastRideable:
		return measure{value: mid.catch + 0*mid.arrival, along: nowhere, time: nowhere}
	case LeastWaterTemperature:
		return w.warmth(start)
	case LeastWindChill:
		return w.chill(mid)
	case NoWarning:
		return w.warned()
	case NoTraffic:
		return w.area(&mid.traffic)
	case NoAvoid:
		return w.area(&mid.avoid)
	case GreatestNoSignal:
		return measure{value: mid.silent + 0*mid.arrival, along: nowhere, time: nowhere}
	case LeastLeaders:
		return measure{value: w.leaders, along: nowhere, time: nowhere}
	}
	e := &mid.ex[r]
	limit, _ := w.limits[r].Get()
	value := e.value
	if r == GreatestOffStern {
		value = math.Acos(math.Max(-1, math.Min(1, -e.value))) * (180 / math.Pi)
	}
	m := measure{value: value, along: w.grid.cells[e.cell].along, time: e.time}
	if !e.any || e.unknown && r.judge(value, limit) != Broken {
		m.value = math.NaN()
	}
	return m
}

// area makes a measure of an area that the run crosses or not.
func (w *Water) area(e *extreme) measure {
	if e.any {
		return measure{value: 1, along: w.grid.cells[e.cell].along, time: e.time}
	}
	return measure{value: 0, along: nowhere, time: nowhere}
}
