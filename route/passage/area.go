package passage

import (
	"math"
	"sort"
	"time"

	"followingsea.example/route"
)

// A Visit is one stretch of a passage inside an area: where it is entered and
// left, and when.
type Visit struct {
	Kind       route.AreaKind
	Name, Note string
	Enter      float64 // m from the start of the run
	Leave      float64
	EnterAt    route.Point
	LeaveAt    route.Point
	In, Out    time.Time // expected; zero beyond where the passage ends
	Earliest   time.Time // entry of the fast case; zero when it does not get there
	Latest     time.Time // exit of the slow case
}

// Visits returns every stretch of a departure's passage inside an area of the
// run, in the order along it, with the times of entry and exit: expected, and
// from the fast case's entry to the slow case's exit, which is as long as the
// board may be looked for there. An area that the line only touches is left
// out; the rules about areas count it all the same.
//
// Errors wrap [ErrInput] for a departure outside the prepared time, or are
// those of the area's outline.
func (w *Water) Visits(depart time.Time) ([]Visit, error) {
	start, err := w.departure(depart)
	if err != nil {
		return nil, err
	}
	lanes := [3]route.Pace{w.paceIn(start, laneExpected), w.paceIn(start, laneFast), w.paceIn(start, laneSlow)}
	when := func(by int, along float64) time.Time {
		s := lanes[by](along)
		if s != s {
			return time.Time{}
		}
		return w.instant(start + s)
	}
	var out []Visit
	for _, a := range w.run.Areas {
		spans, err := insides(a, w.run.Legs())
		if err != nil {
			return nil, err
		}
		for _, s := range spans {
			enter, leave := math.Min(s[0], w.length), math.Min(s[1], w.length)
			out = append(out, Visit{
				Kind: a.Kind, Name: a.Name, Note: a.Note, Enter: enter, Leave: leave, EnterAt: w.place(enter), LeaveAt: w.place(leave),
				In: when(0, enter), Out: when(0, leave), Earliest: when(1, enter), Latest: when(2, leave),
			})
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Enter < out[j].Enter })
	return out, nil
}

// insides returns the stretches of a line inside an area as distances along
// it. The edges of the area are taken as lines without an inside, so that every
// crossing of one is found from either side; between two crossings the middle
// decides.
func insides(a route.Area, legs []route.Leg) ([][2]float64, error) {
	inside, err := a.Outline()
	if err != nil {
		return nil, err
	}
	var rings [][]route.Point
	for _, p := range a.Polygons {
		for _, r := range p {
			if n := len(r); n > 0 && r[0] != r[n-1] {
				r = append(append([]route.Point(nil), r...), r[0])
			}
			rings = append(rings, r)
		}
	}
	edges, err := route.NewCoast(rings, nil)
	if err != nil {
		return nil, err
	}
	const step = 0.5 // m, past a crossing before the next is looked for
	var out [][2]float64
	gone := 0.0
	for _, l := range legs {
		marks := []float64{0}
		for x := 0.0; x < l.Distance && len(marks) < mostCrossings; {
			c, err := edges.Crosses(l.At(x), l.To)
			if err != nil {
				return nil, err
			}
			if !c.Land {
				break
			}
			x += c.Distance
			marks = append(marks, math.Min(x, l.Distance))
			x += step
		}
		marks = append(marks, l.Distance)
		for i := 1; i < len(marks); i++ {
			from, to := marks[i-1], marks[i]
			if !(to > from) {
				continue
			}
			in, err := inside.Land(l.At((from + to) / 2))
			if err != nil {
				return nil, err
			}
			if !in {
				continue
			}
			from, to = gone+from, gone+to
			if n := len(out); n > 0 && from-out[n-1][1] <= 1 { // on from the leg before
				out[n-1][1] = to
			} else {
				out = append(out, [2]float64{from, to})
			}
		}
		gone += l.Distance
	}
	return out, nil
}

// mostCrossings bounds the crossings of one area on one leg.
const mostCrossings = 10000
