package passage

import (
	"fmt"
	"math"
	"strings"
	"time"

	"followingsea.example/route"
	"followingsea.example/wave/ride"
)

// A Party is who goes out together. It keeps together: on every stretch it goes
// as fast as whoever is slowest there, and of every limit the one of whoever
// asks for most counts.
type Party struct {
	Paddlers []Paddler
	Regroup  []float64 // distances along the run at which those ahead wait, m, in order; the finish is always one
}

// A person is a paddler made ready.
type person struct {
	Paddler
	ride    *ride.Prepared
	why     string // why there is no ride
	posture route.Posture
}

// A crew is a party made ready. A single paddler is a crew of one.
type crew struct {
	people    []person
	paddler   Paddler // what the weakest of them has
	limits    Limits
	regroup   []float64
	posture   route.Posture // of the slowest on flat water
	rideWhy   string        // why there is no ride of the whole party
	endurance float64
	leaders   float64 // leaders to led
	kneeling  *wayTable
}

// newCrew makes a party ready. Errors wrap ErrInput, or are those of stop, which
// is asked between paddlers.
func newCrew(p Party, stop func() error) (*crew, error) {
	if len(p.Paddlers) == 0 || len(p.Paddlers) > mostPaddlers {
		return nil, inputError("party", fmt.Sprintf("of %d paddlers", len(p.Paddlers)), fmt.Sprintf("1 to %d", mostPaddlers))
	}
	c := &crew{regroup: p.Regroup}
	last := 0.0
	for _, x := range p.Regroup {
		if !(x > last && !math.IsInf(x, 1)) {
			return nil, inputError("regroup point", x, fmt.Sprintf("beyond %g m, in order along the run", last))
		}
		last = x
	}
	for i, one := range p.Paddlers {
		who := "paddler"
		if len(p.Paddlers) > 1 {
			who = fmt.Sprintf("paddler %d", i+1)
		}
		if err := one.Validate(); err != nil {
			if len(p.Paddlers) > 1 {
				err = fmt.Errorf("%s: %w", who, err)
			}
			return nil, err
		}
		if one.Foil {
			return nil, inputError(who, "on a foil", "a board that stays on the water: the ride model does not hold for foils")
		}
		if err := stop(); err != nil {
			return nil, err
		}
		c.people = append(c.people, ready(one))
	}
	c.join()
	return c, nil
}

const mostPaddlers = 50

// ready makes one paddler ready.
func ready(p Paddler) person {
	who := person{Paddler: p}
	cruise, ok := p.Cruise.Get()
	if !ok {
		who.why = "the cruise speed is not given"
		return who
	}
	who.posture = route.Standing(cruise)
	prepared, err := p.rider().Prepare()
	if err != nil {
		who.why = err.Error()
		return who
	}
	who.ride = prepared
	return who
}

// join finds what the party has together: of every number the least, unknown
// where it is unknown of anybody, and of every limit the tightest.
func (c *crew) join() {
	c.paddler = c.people[0].Paddler
	leading := 0
	var names []string
	for i := range c.people {
		p := &c.people[i]
		c.paddler.Cruise = lesser(c.paddler.Cruise, p.Cruise)
		c.paddler.Sprint = lesser(c.paddler.Sprint, p.Sprint)
		c.paddler.Prone = lesser(c.paddler.Prone, p.Prone)
		c.paddler.Endurance = lesser(c.paddler.Endurance, p.Endurance)
		c.paddler.ProneHours = lesser(c.paddler.ProneHours, p.ProneHours)
		for r := range ruleCount {
			c.paddler.Limits[r] = r.tighter(c.paddler.Limits[r], p.Limits[r])
		}
		if p.Leader {
			leading++
		}
		names = append(names, p.Name)
		if c.rideWhy == "" {
			c.rideWhy = p.why
		}
	}
	c.paddler.Name = strings.Join(names, ", ")
	c.limits, c.endurance = c.paddler.Limits, c.paddler.Endurance.Number()
	if cruise, ok := c.paddler.Cruise.Get(); ok {
		c.posture = route.Standing(cruise)
	}
	if _, asked := c.limits[GreatestTimeToExit].Get(); asked {
		c.kneeling = newWayTable(route.Kneeling(c.posture.Speed))
	}
	// Where nobody is led, the leaders are counted as if one were.
	c.leaders = float64(leading) / math.Max(1, float64(len(c.people)-leading))
	if len(c.people) == 1 { // nobody said who else there is
		c.leaders = math.NaN()
	}
}

// lesser returns the lesser of two values, unknown when either is.
func lesser(a, b Value) Value { return Known(math.Min(a.Number(), b.Number())) }

// tighter returns the limit that is harder to keep; one that is not asked for
// is the easiest.
func (r Rule) tighter(a, b Limit) Limit {
	x, asked := a.Get()
	y, also := b.Get()
	switch {
	case !asked:
		return b
	case !also || x != x:
		return a
	case y != y || r.AtLeast() == (y > x):
		return b
	}
	return a
}

// fits checks the regroup points against the run.
func (c *crew) fits(run route.Run) error {
	if n := len(c.regroup); n > 0 && !(c.regroup[n-1] < run.Length()) {
		return inputError("regroup point", c.regroup[n-1], fmt.Sprintf("before the end of the run, %.0f m", run.Length()))
	}
	return nil
}

// PrepareParty is Prepare for a party that keeps together. The Water it returns
// answers for the party as a whole: its speed at every place is that of
// whoever is slowest there, in each of the three cases; endurance is the least,
// the share of waves is that of who catches fewest, limits are the tightest. The
// finding about leaders compares the number of leaders with that of the led.
//
// Errors are those of Prepare, and ErrInput for a party that is empty or regroup
// points that are not in order along the run.
func PrepareParty(run route.Run, day Day, party Party, o Options) (*Water, error) {
	c, err := newCrew(party, never)
	if err != nil {
		return nil, err
	}
	return assemble(run, day, c, o)
}

// A Meeting is a place where the party regroups: when each arrives there who
// left the meeting before it with all the others and went at their own
// expected speed.
type Meeting struct {
	Along   float64     // m from the start of the run
	At      route.Point // the place
	Leave   time.Time   // all together, from the meeting before, or from the launch
	Arrive  []time.Time // of each paddler, in the order of the party; zero for who does not arrive on what is known
	Last    time.Time   // when all are there; zero when somebody is not
	Wait    float64     // s from the first to the last; NaN when somebody does not arrive
	Spread  float64     // m between the first and the last when the first arrives; NaN when that of somebody is not known
	Slowest int         // index of the last to arrive, or of the first who is not known to
}

// Meetings returns the meetings of a departure, up to the first that somebody
// does not reach, and the finish as the last; none for a single paddler.
//
// Errors are those of Appraise.
func (w *Water) Meetings(depart time.Time) ([]Meeting, error) {
	start, err := w.departure(depart)
	if err != nil || w.alone == nil {
		return nil, err
	}
	var out []Meeting
	from, t := 0.0, start
	for _, along := range append(w.regroup[:len(w.regroup):len(w.regroup)], w.length) {
		m := Meeting{Along: along, At: w.place(along), Leave: w.instant(t), Wait: math.NaN(), Spread: math.NaN()}
		tracks := w.tracks(from, t)
		first, last := math.Inf(1), math.Inf(-1)
		for i, k := range tracks {
			x := k.when(along)
			if x != x {
				m.Arrive = append(m.Arrive, time.Time{})
				if last == last {
					m.Slowest = i
				}
			} else {
				m.Arrive = append(m.Arrive, w.instant(x))
				if x > last {
					m.Slowest = i
				}
			}
			first, last = math.Min(first, x), math.Max(last, x)
		}
		if last != last {
			return append(out, m), nil
		}
		m.Last, m.Wait, m.Spread = w.instant(last), last-first, spread(tracks, first)
		out = append(out, m)
		from, t = along, last
	}
	return out, nil
}

// SpreadAfter returns how far apart in metres the first and the last of the
// party are some seconds after a departure if nobody waits; NaN when it is not
// known of somebody, or nobody is out there that long, 0 for a single paddler.
//
// The error is that of Appraise, or wraps ErrInput for seconds that are not
// positive and finite.
func (w *Water) SpreadAfter(depart time.Time, seconds float64) (float64, error) {
	start, err := w.departure(depart)
	if err != nil {
		return 0, err
	}
	if !(seconds > 0 && seconds <= longestPassage) {
		return 0, inputError("seconds after the departure", seconds, fmt.Sprintf("above 0, %g at most", float64(longestPassage)))
	}
	if w.alone == nil {
		return 0, nil
	}
	return spread(w.tracks(0, start), start+seconds), nil
}

// A track is where one paddler is when.
type track struct{ along, time []float64 }

// tracks walks every paddler of the party alone from a place and a time.
func (w *Water) tracks(from, start float64) []track {
	ts := make([]track, len(w.alone))
	for i, g := range w.alone {
		ts[i] = g.track(from, start)
	}
	return ts
}

// track walks from a place inside the run: only the rest of its cell is left of
// the cell it lies in.
func (g *grid) track(from, start float64) track {
	rest := *g
	rest.asked = 0
	rest.cells = append([]cell(nil), g.cells...)
	rest.reaches = nil
	for _, reach := range g.reaches {
		// Reaches that lie behind keep their place in the grid without cells.
		for reach.first < reach.after && rest.cells[reach.first].along+rest.cells[reach.first].length <= from {
			reach.first++
		}
		rest.reaches = append(rest.reaches, reach)
		if reach.first < reach.after {
			if c := &rest.cells[reach.first]; c.along < from {
				c.length -= from - c.along
				c.along = from
			}
		}
	}
	t := track{along: []float64{from}, time: []float64{start}}
	var k walk
	rest.run(&k, start, laneExpected, func(i int, _, leave float64) {
		c := &rest.cells[i]
		t.along, t.time = append(t.along, c.along+c.length), append(t.time, leave)
	})
	return t
}

// when returns the time at a place; NaN beyond where the track ends.
func (k track) when(along float64) float64 { return between(k.along, k.time, along) }

// where returns the place at a time; the end of the track after it, which is
// NaN for a track that ends before the finish.
func (k track) where(t, finish float64) float64 {
	n := len(k.time) - 1
	if t >= k.time[n] {
		if k.along[n] >= finish-1e-6 {
			return finish
		}
		return math.NaN()
	}
	return between(k.time, k.along, t)
}

// between interpolates y at x in rising xs.
func between(xs, ys []float64, x float64) float64 {
	for i := 1; i < len(xs); i++ {
		if x <= xs[i]+1e-6 {
			f := math.Min((x-xs[i-1])/(xs[i]-xs[i-1]), 1)
			return ys[i-1] + f*(ys[i]-ys[i-1])
		}
	}
	return math.NaN()
}

// spread is the distance between the first and the last track at t.
func spread(ts []track, t float64) float64 {
	finish := math.Inf(-1)
	for _, k := range ts {
		finish = math.Max(finish, k.along[len(k.along)-1])
	}
	first, last := math.Inf(-1), math.Inf(1)
	for _, k := range ts {
		x := k.where(t, finish)
		first, last = math.Max(first, x), math.Min(last, x)
	}
	return first - last
}
