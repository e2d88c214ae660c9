package passage

import (
	"errors"
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// A Change is something that the wind may do against the forecast.
type Change struct {
	Name   string
	Turn   float64 // degrees, positive clockwise
	Factor float64 // of its speed
}

// Changes returns the changes that are tried by default: the wind backs or
// veers by 45 degrees, rises by a third, dies to a fifth. They are round
// numbers of the trade, without a source; give your own where you know better.
func Changes() []Change {
	return []Change{{"the wind backs 45 degrees", -45, 1}, {"the wind veers 45 degrees", 45, 1},
		{"the wind rises by a third", 0, 4.0 / 3}, {"the wind dies to a fifth", 0, 0.2}}
}

// check returns an error for a change that means nothing.
func (c Change) check() error {
	if !(math.Abs(c.Turn) <= 180) {
		return inputError("turn of the wind", c.Turn, "-180 to 180 degrees")
	}
	if !(c.Factor >= 0 && c.Factor <= 3) {
		return inputError("factor of the wind", c.Factor, "0 to 3")
	}
	return nil
}

// on returns the wind as changed.
func (c Change) on(f route.Field) route.Field {
	if f == nil || c.Turn == 0 && c.Factor == 1 {
		return f
	}
	sin, cos := math.Sincos(c.Turn * (math.Pi / 180))
	return func(t time.Time, p route.Point) route.Velocity {
		v := f(t, p)
		return route.Velocity{East: c.Factor * (v.East*cos + v.North*sin), North: c.Factor * (v.North*cos - v.East*sin)}
	}
}

// A Contingency is one thing that goes wrong at one place of a passage: which
// exits are still open, and where the board is later if nobody paddles.
type Contingency struct {
	Name    string
	Along   float64 // m from the start of the run
	At      route.Point
	Time    time.Time
	Posture string
	Ways    []route.Out // for each exit of the run
	Open    int         // of them reachable and landable
	Unknown int         // of them unknown, which is not open
	Adrift  []Adrift    // after one hour and after three; nil when wind or stream are unknown
	Why     string      // why Adrift is nil
}

// An Adrift is where somebody on a board that nobody paddles may be after a
// while: never a point, always a spread.
type Adrift struct {
	After  float64     // s
	Mean   route.Point // of an ensemble with the published scatter
	Ninety float64     // m, radius about the mean that holds nine tenths of it
	Right  route.Point // the two branches without scatter: to the right of downwind
	Left   route.Point // and to the left
	Ashore bool        // both branches have met land by then
}

// The drift of a contingency: the published leeway of a surfboard with a
// person, which is the nearest row there is to a stand-up board.
const (
	adriftCraft   = "surfboard"
	adriftMembers = 100
	adriftSeed    = 1
)

// Contingencies returns what is to be said if something goes wrong at places
// along a departure's passage, on the expected times: the paddle breaks and
// the paddler lies down to the hands; a swimmer holds the board, carried by
// wind and stream; the wind does what each change says, and the paddler kneels.
// Nil places stand for five, evenly spread from the start; nil changes for
// Changes().
//
// The drift is that of the published row "surfboard with a person", left and
// right of downwind and with its scatter; no row was measured for a stand-up
// board or for a swimmer who holds one.
//
// Errors wrap ErrInput for a departure or a place outside what was prepared, a
// change that means nothing, or a paddler whose cruise speed is unknown. A
// place that the passage does not reach is left out.
//
// Source of the leeway: [USCG-Addendum].
func (w *Water) Contingencies(depart time.Time, places []float64, changes []Change) ([]Contingency, error) {
	start, err := w.departure(depart)
	if err != nil {
		return nil, err
	}
	postures := w.Postures()
	if postures == nil {
		return nil, inputError("cruise speed", "unknown", "a speed, for the ways out")
	}
	if changes == nil {
		changes = Changes()
	}
	if places == nil {
		for i := range 5 {
			places = append(places, w.length*float64(i)/5)
		}
	}
	pace := w.pace(start)
	var out []Contingency
	for _, along := range places {
		if !(along >= 0 && along <= w.length) {
			return nil, inputError("place of a contingency", along, fmt.Sprintf("0 to %.0f m", w.length))
		}
		t := pace(along)
		if t != t {
			continue
		}
		still := Change{Factor: 1}
		list := []struct {
			name    string
			posture route.Posture
			change  Change
		}{{"the paddle breaks", postures[2], still}, {"a swimmer holds the board", route.Drifting(), still}}
		for _, c := range changes {
			if err := c.check(); err != nil {
				return nil, err
			}
			list = append(list, struct {
				name    string
				posture route.Posture
				change  Change
			}{c.Name, postures[1], c})
		}
		for _, l := range list {
			c, err := w.contingency(l.name, along, w.instant(start+t), l.posture, l.change)
			if err != nil {
				return nil, err
			}
			out = append(out, c)
		}
	}
	return out, nil
}

func (w *Water) contingency(name string, along float64, at time.Time, posture route.Posture, change Change) (Contingency, error) {
	c := Contingency{Name: name, Along: along, At: w.place(along), Time: at, Posture: posture.Name}
	q := w.escape(c.At, at, posture)
	q.Wind = change.on(q.Wind)
	var err error
	if c.Ways, err = q.Exits(w.run.Exits); err != nil {
		return Contingency{}, err
	}
	for _, o := range c.Ways {
		switch o.State {
		case route.Landable:
			c.Open++
		case route.Unknown:
			c.Unknown++
		}
	}
	c.Adrift, c.Why, err = w.adrift(c.At, at, q.Wind, q.Stream)
	return c, err
}

// adrift carries a board from a place for one and for three hours.
func (w *Water) adrift(from route.Point, at time.Time, wind, stream route.Field) ([]Adrift, string, error) {
	if wind == nil || stream == nil {
		return nil, "the wind or the stream is not known", nil
	}
	craft, err := route.FindCraft(adriftCraft)
	if err != nil {
		return nil, "", err
	}
	along := func(f route.Field) func(route.Point, float64) route.Velocity {
		return func(p route.Point, s float64) route.Velocity {
			t, err := clock.After(at, s)
			if err != nil {
				return route.Velocity{East: math.NaN(), North: math.NaN()}
			}
			return f(t, p)
		}
	}
	d := route.Drifter{Craft: craft, Start: from, Wind: along(wind), Stream: along(stream)}
	var out []Adrift
	for _, hours := range []float64{1, 3} {
		d.Seconds = hours * 3600
		right, left, err := d.Pair()
		if err != nil {
			if errors.Is(err, route.ErrInput) {
				return nil, "the wind or the stream is not known for the three hours after", nil
			}
			return nil, "", err
		}
		cloud, err := d.Cloud(adriftMembers, adriftSeed)
		if err != nil {
			return nil, "", err
		}
		spread, err := cloud.Spread(len(cloud.Seconds) - 1)
		if err != nil {
			return nil, "", err
		}
		a := Adrift{After: d.Seconds, Mean: spread.Mean, Ninety: spread.Ninety, Right: right.End(), Left: left.End()}
		if w.run.Coast != nil {
			r, err := w.run.Coast.Landfall(right.Points)
			if err != nil {
				return nil, "", err
			}
			l, err := w.run.Coast.Landfall(left.Points)
			if err != nil {
				return nil, "", err
			}
			a.Ashore = r.Found && l.Found
		}
		out = append(out, a)
	}
	return out, "", nil
}

// pace returns the seconds after the start at which the expected walk is at a
// distance along the run; NaN beyond where it ends.
func (w *Water) pace(start float64) route.Pace { return w.paceIn(start, laneExpected) }

// paceIn is the pace of a lane.
func (w *Water) paceIn(start float64, by lane) route.Pace {
	var along, after []float64
	var k walk
	w.grid.run(&k, start, by, func(i int, enter, leave float64) {
		if i == 0 {
			along, after = append(along, 0), append(after, 0)
		}
		c := w.grid.cells[i]
		along, after = append(along, c.along+c.length), append(after, leave-start)
	})
	return func(x float64) float64 {
		for i := 1; i < len(along); i++ {
			if x <= along[i]+1e-6 {
				f := (x - along[i-1]) / (along[i] - along[i-1])
				return after[i-1] + math.Min(f, 1)*(after[i]-after[i-1])
			}
		}
		return math.NaN()
	}
}

// NoWayOut returns the stretches of a departure's passage on which no exit is
// reachable and landable in a posture, on the expected times, found in steps of
// 250 m. A passage that does not arrive is looked at as far as it goes.
//
// Errors are those of Contingencies.
func (w *Water) NoWayOut(depart time.Time, posture route.Posture) ([]route.Gap, error) {
	start, err := w.departure(depart)
	if err != nil {
		return nil, err
	}
	pace := w.pace(start)
	points := w.run.Points
	if end := pace(w.length); end != end {
		var k walk
		w.grid.run(&k, start, laneExpected, nil)
		points = w.until(w.grid.cells[k.cell].along)
		if len(points) < 2 {
			return []route.Gap{{From: 0, To: 0, Start: depart, End: depart, Unknown: true}}, nil
		}
	}
	q := w.escape(points[0], depart, posture)
	if posture.Speed > 0 {
		q.Way = newWayTable(posture).way
	}
	return route.Gaps(points, w.run.Exits, q, pace, 250)
}

// until returns the points of the run up to a distance along it.
func (w *Water) until(along float64) []route.Point {
	if !(along > 1) {
		return nil
	}
	points := []route.Point{w.run.Points[0]}
	gone := 0.0
	for _, l := range w.run.Legs() {
		if gone+l.Distance >= along {
			return append(points, l.At(along-gone))
		}
		gone += l.Distance
		points = append(points, l.To)
	}
	return points
}
