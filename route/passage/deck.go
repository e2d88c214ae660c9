package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/wind"
)

// A Deck is the one page that goes along on the board: at a few points of the
// run, what time it has to be, what to look at, and where to go instead.
type Deck struct {
	Depart time.Time
	Gates  []Gate
}

// A Gate is one point of the run at which it is decided again.
type Gate struct {
	Along    float64 // m from the start
	At       route.Point
	Course   float64 // of the run from there, degrees true
	Expected time.Time

	Latest  time.Time // last minute to pass it and go on; zero when there is none
	Slack   float64   // s from Expected to Latest; NaN when there is none
	Limited bool      // a limit is what makes a later passing too late
	Decides Finding   // that limit, as the rest of the way would break it
	Why     string    // what else makes it too late, or that nothing does

	LeastMade    float64 // m/s made good since the gate before (the start for the first), below which it is reached too late; NaN without a latest time
	WindLeft     float64 // the wind must come from between this direction,
	WindRight    float64 // and this one, clockwise; NaN when no limit on the angle is set
	WindExpected wind.Wind
	Crests       string // what the sea looks like in the wind that is expected
	TooMuch      string // what it looks like when the greatest wind that the paddler set is passed; empty when none is set
	TooLittle    string // what it looks like below the least wind; empty when none is set

	Exit    route.Out // the way out to take there, on the knees, at the latest time to pass
	HasExit bool      // false: no exit is known to be reachable and landable from there
}

// Limits of a page for the deck.
const (
	fewestGates = 3
	mostGates   = 6
	gateStep    = 300      // s between the passings that are tried
	gateLongest = 8 * 3600 // s after the expected passing, up to which they are
)

// Deck returns the page for a departure, with gates at three to six distances
// along the run in rising order (nil: at a fifth, two, three and four fifths).
//
// The latest time to pass a gate is found by passing it later and later, in
// steps of five minutes and then of one: the rest of the way is stepped again
// from there, expected and slow, and the last minute counts before the first at
// which any limit on the way ahead, on the whole duration, the endurance or the
// light is no longer met. Where one of them is not met even at the expected
// passing there is no latest time, and the gate says which limit that is. A
// limit whose value becomes unknown, as after the end of the forecast, is not
// met.
//
// The exit is the one that is reached soonest from there, on the knees, at the
// latest time to pass.
//
// Errors wrap [ErrInput]: a departure outside the prepared time, gates that are
// too few, too many, out of order or off the run, or a paddler whose cruise
// speed is unknown. A gate that the passage does not reach is left out.
func (w *Water) Deck(depart time.Time, places []float64) (Deck, error) {
	start, err := w.departure(depart)
	if err != nil {
		return Deck{}, err
	}
	postures := w.Postures()
	if len(postures) < 2 {
		return Deck{}, inputError("cruise speed", "unknown", "a speed, for the ways out")
	}
	if places == nil {
		for i := 1; i <= 4; i++ {
			places = append(places, w.length*float64(i)/5)
		}
	}
	if len(places) < fewestGates || len(places) > mostGates {
		return Deck{}, inputError("gates", len(places), fmt.Sprintf("%d to %d", fewestGates, mostGates))
	}
	last := 0.0
	for _, x := range places {
		if !(x > last && x < w.length) {
			return Deck{}, inputError("gate at", x, fmt.Sprintf("rising distances inside 0 to %.0f m", w.length))
		}
		last = x
	}
	d := Deck{Depart: depart}
	pace := w.pace(start)
	from, since := 0.0, 0.0 // the gate before: distance, and seconds after the start
	for _, along := range places {
		s := pace(along)
		if s != s {
			break
		}
		g, err := w.gate(start, along, s, postures[1])
		if err != nil {
			return Deck{}, err
		}
		g.LeastMade = math.NaN()
		if !g.Latest.IsZero() {
			g.LeastMade = (along - from) / (clock.Seconds(depart, g.Latest) - since)
		}
		d.Gates = append(d.Gates, g)
		from, since = along, s
	}
	return d, nil
}

// gate works out one gate that is passed s seconds after the start.
func (w *Water) gate(start, along, s float64, knees route.Posture) (Gate, error) {
	m, err := w.Moment(along, w.instant(start+s))
	if err != nil {
		return Gate{}, err
	}
	g := Gate{Along: along, At: m.At, Course: m.Course, Expected: m.Time, Slack: math.NaN(),
		WindLeft: math.NaN(), WindRight: math.NaN(), WindExpected: m.Wind, Crests: crests(m.Wind.Speed)}
	if off, asked := w.limits[GreatestOffStern].Get(); asked && off < 180 {
		g.WindLeft, g.WindRight = angle.Wrap(m.Course+180-off), angle.Wrap(m.Course+180+off)
	}
	if most, asked := w.limits[GreatestWind].Get(); asked {
		g.TooMuch = crests(math.Nextafter(most, math.Inf(1)))
	}
	if least, asked := w.limits[LeastWind].Get(); asked && least > 0 {
		g.TooLittle = crests(math.Nextafter(least, 0))
	}
	w.latest(&g, start, along, s)
	at := g.Expected
	if !g.Latest.IsZero() {
		at = g.Latest
	}
	ways, err := w.WaysOut(along, at, knees)
	if err != nil {
		return Gate{}, err
	}
	for _, o := range ways {
		if o.State == route.Landable && (!g.HasExit || o.Seconds < g.Exit.Seconds) {
			g.Exit, g.HasExit = o, true
		}
	}
	return g, nil
}

// latest finds the latest time to pass.
func (w *Water) latest(g *Gate, start, along, s float64) {
	cell := len(w.grid.cells) - 1
	for cell > 0 && w.grid.cells[cell].along > along {
		cell--
	}
	// The rest of the way begins with the cell that the gate is in; what was
	// gone of it already is gone again, a few minutes too long.
	silent := w.silentBefore(start, cell)
	holds := func(late float64) (Finding, bool) { return w.ahead(start, cell, start+s+late, silent) }
	if f, ok := holds(0); !ok {
		g.decide(f)
		return
	}
	late := 0.0
	for late < gateLongest {
		f, ok := holds(late + gateStep)
		if ok {
			late += gateStep
			continue
		}
		for range gateStep / 60 {
			minute, ok := holds(late + 60)
			if !ok {
				f = minute
				break
			}
			late += 60
		}
		g.decide(f)
		break
	}
	if late >= gateLongest {
		g.Why = fmt.Sprintf("no limit is broken by passing it up to %.0f h late", gateLongest/3600.0)
	}
	// To the whole minute, and never later than what was tried.
	g.Latest = w.instant(start + s + late).Truncate(time.Minute)
	if g.Latest.Before(g.Expected) {
		g.Latest = g.Expected
	}
	g.Slack = clock.Seconds(g.Expected, g.Latest)
}

// decide takes down what makes a passing too late.
func (g *Gate) decide(f Finding) {
	if f.Limit != f.Limit { // no limit of the paddler's
		g.Why = f.Why
		return
	}
	g.Limited, g.Decides = true, f
}

// silentBefore is the time without signal up to a cell.
func (w *Water) silentBefore(start float64, cell int) float64 {
	whole, rest := walk{}, walk{}
	w.grid.run(&whole, start, laneExpected, nil)
	at := w.pace(start)(w.grid.cells[cell].along)
	if at != at {
		return math.NaN()
	}
	rest = w.rest(cell, start+at, laneExpected)
	return whole.silent - rest.silent
}

// ahead compares the limits that passing a cell at t can still change; it
// returns the first that is not met.
func (w *Water) ahead(start float64, cell int, t, silent float64) (Finding, bool) {
	mid, slow := w.rest(cell, t, laneExpected), w.rest(cell, t, laneSlow)
	mid.silent += silent
	for r := range ruleCount {
		limit, asked := w.limits[r].Get()
		if !asked || !r.onTheWay() {
			continue
		}
		if f := w.find(r, limit, start, &mid, &slow); f.State != Met {
			return f, false
		}
	}
	if mid.end != arrived || slow.end != arrived {
		k := &mid
		if mid.end == arrived {
			k = &slow
		}
		return Finding{Rule: GreatestDuration, State: Unknown, Value: math.NaN(), Limit: math.NaN(), Margin: math.NaN(), Along: nowhere, Why: w.reason(k)}, false
	}
	return Finding{}, true
}

// crests says what open water looks like in a wind, in our words for the
// specifications of the Beaufort scale; empty for a wind that is not known. In
// a short fetch or over a stream it looks otherwise.
func crests(speed float64) string {
	f, err := wind.Beaufort(speed)
	if err != nil {
		return ""
	}
	return [...]string{
		"like glass",
		"ripples",
		"wavelets, no crest breaks",
		"a whitecap here and there",
		"whitecaps in every direction",
		"whitecaps everywhere, first spray",
		"broad white crests, spray in the air",
		"foam drawn out in streaks along the wind",
		"long streaks, spindrift off the crests",
		"dense streaks, crests topple and roll",
		"the surface white, rolling heavy",
		"foam in patches over everything",
		"air full of foam",
	}[min(int(f), 12)]
}
