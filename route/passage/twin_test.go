package passage

import (
	"math"
	"testing"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/wind"
)

// The plain twin of a search: every departure is stepped on its own, straight
// from the sources. Nothing is kept from one departure to the next but the
// geometry of the run; the sea is raised for each from the beginning of the
// record, the water is worked out where the board is, and what the rules ask
// about is written down cell by cell and judged afterwards. Time is cut into
// the same instants, between which everything is taken as linear, so that the
// verdicts can be the same.
type twin struct {
	*Water
	nodes  map[[2]int]*node // of one lane: only the two around it
	states map[int][]wind.State
	from   int // instant of the first state
}

// A note is what one cell was like.
type note struct {
	v     [channels]float64
	c     *cell
	index int
	t, dt float64
}

func newTwin(t testing.TB, run route.Run, day Day, c *crew, o Options) *twin {
	t.Helper()
	s, err := surveyed(run, o, never)
	if err != nil {
		t.Fatal(err)
	}
	w := &Water{survey: s, crew: c, day: day, layout: s.layout(windPlaces(&day), streamPlaces(&day)), grid: new(grid)}
	w.grid.lay(w.cells, w.reaches, o.Step, o.instants(w.end()))
	return &twin{Water: w}
}

// departs starts a departure: the sea of no other is used.
func (w *twin) departs() { w.states, w.nodes = map[int][]wind.State{}, map[[2]int]*node{} }

// sea raises the sea at a station for the hours of one passage.
func (w *twin) sea(k int, start float64) []wind.State {
	if s, ok := w.states[k]; ok {
		return s
	}
	w.from = int(start / w.options.Step)
	var times []time.Time
	for j := w.from; j < w.grid.steps && float64(j)*w.options.Step <= start+6*3600; j++ {
		times = append(times, w.instant(float64(j)*w.options.Step))
	}
	s, err := w.Water.hindcast(&w.stations[k], times, w.reaches[w.of[k*w.every]].wind)
	if err != nil {
		panic(err)
	}
	w.states[k] = s
	return s
}

// at is the water of a reach at an instant.
func (w *twin) at(r, j int, start float64) *node {
	if v, ok := w.nodes[[2]int{r, j}]; ok {
		return v
	}
	reach := w.reaches[r]
	at := w.instant(float64(j) * w.options.Step)
	states := w.sea(reach.station, start)
	if j-w.from >= len(states) {
		return nil
	}
	h := w.hour(at)
	m := w.moment(reach.middle, h, states[j-w.from], w.Water.streamAt(reach.middle, at))
	air := m.Wind.Velocity()
	if len(w.nodes) > 4 {
		clear(w.nodes)
	}
	w.nodes[[2]int{r, j}] = &node{m.Speed, m.Slow, m.Fast, m.Stream.East, m.Stream.North, m.Slip, air.East, air.North,
		m.rideable, m.Wind.Speed, m.Wind.Gust, m.Sea.Hs, m.SwellHs, m.TotalHs, m.Steepness, h.tide.low, m.SurfHs}
	return w.nodes[[2]int{r, j}]
}

// look is every channel where the board is.
func (w *twin) look(r int, t, start float64) (v [channels]float64, ok bool) {
	x := t / w.options.Step
	j := int(math.Floor(x))
	if x < 0 || x > float64(w.grid.steps-1) {
		return v, false
	}
	j = min(j, w.grid.steps-2)
	a, b := w.at(r, j, start), w.at(r, j+1, start)
	if a == nil || b == nil {
		return v, false
	}
	for i := range v {
		v[i] = a[i] + (x-float64(j))*(b[i]-a[i])
	}
	return v, true
}

// walk steps one lane; arrival is NaN when the board does not arrive.
func (w *twin) walk(start float64, lane channel) (notes []note, arrival float64) {
	clear(w.nodes)
	t := start
	for i := range w.cells {
		c := &w.cells[i]
		made := func(t float64) ([channels]float64, float64) {
			v, ok := w.look(w.of[i], t, start)
			if !ok {
				return v, math.NaN()
			}
			water := route.Velocity{East: v[chStreamE] + v[chSlip]*c.north, North: v[chStreamN] - v[chSlip]*c.east}
			along := water.East*c.east + water.North*c.north
			across := water.East*c.north - water.North*c.east
			return v, along + math.Sqrt(v[lane]*v[lane]-across*across)
		}
		_, v := made(t)
		if !(v > slowest) {
			return notes, math.NaN()
		}
		mid := t + c.length/v/2
		values, v := made(mid)
		if !(v > slowest) {
			return notes, math.NaN()
		}
		notes = append(notes, note{values, c, i, mid, c.length / v})
		t += c.length / v
	}
	return notes, t
}

// verdicts judges one departure: a state for every rule that is asked.
func (w *twin) verdicts(start float64) [ruleCount]State {
	w.departs()
	notes, arrival := w.walk(start, chSpeed)
	_, late := w.walk(start, chSlow)
	_, _ = w.walk(start, chFast)
	var out [ruleCount]State
	for r := range ruleCount {
		limit, asked := w.limits[r].Get()
		if !asked {
			continue
		}
		if f := perCell(r); f != nil {
			out[r] = Met
			for _, n := range notes {
				switch r.judge(f(w, n), limit) {
				case Broken:
					out[r] = Broken
				case Unknown:
					if out[r] == Met {
						out[r] = Unknown
					}
				}
			}
			if len(notes) == 0 {
				out[r] = Unknown
			}
		} else {
			out[r] = r.judge(w.whole(r, start, arrival, late, notes), limit)
		}
		if out[r] == Met && arrival != arrival && r.onTheWay() {
			out[r] = Unknown
		}
	}
	return out
}

// perCell is the value of a rule in a cell, nil for a rule about the whole.
func perCell(r Rule) func(w *twin, n note) float64 {
	channel := func(ch channel) func(*twin, note) float64 { return func(_ *twin, n note) float64 { return n.v[ch] } }
	switch r {
	case LeastWind, GreatestWind:
		return channel(chWind)
	case GreatestGust:
		return channel(chGust)
	case LeastSea:
		return channel(chSea)
	case GreatestSea:
		return channel(chTotal)
	case GreatestSwell:
		return channel(chSwell)
	case GreatestSteepness:
		return channel(chSteep)
	case GreatestOffStern:
		return func(_ *twin, n note) float64 {
			along := n.v[chWindE]*n.c.east + n.v[chWindN]*n.c.north
			return math.Acos(along/math.Hypot(n.v[chWindE], n.v[chWindN])) * (180 / math.Pi)
		}
	case GreatestOffshore:
		return func(_ *twin, n note) float64 { return n.v[chWindE]*n.c.awayE + n.v[chWindN]*n.c.awayN }
	case GreatestStream:
		return func(_ *twin, n note) float64 { return math.Hypot(n.v[chStreamE], n.v[chStreamN]) }
	case GreatestAgainst:
		return func(_ *twin, n note) float64 {
			return -(n.v[chStreamE]*n.v[chWindE] + n.v[chStreamN]*n.v[chWindN]) / math.Hypot(n.v[chWindE], n.v[chWindN])
		}
	case LeastDepth:
		return func(_ *twin, n note) float64 { return n.c.charted + n.v[chHeight] }
	case GreatestBreaking:
		return func(_ *twin, n note) float64 {
			if d := n.c.charted + n.v[chHeight]; !(d <= 0) {
				return n.v[chSurf] / d
			}
			return n.v[chSurf] / 0.0
		}
	case NoAvoid:
		return func(_ *twin, n note) float64 { return bit(n.c.avoid) }
	case NoTraffic:
		return func(_ *twin, n note) float64 { return bit(n.c.traffic) }
	}
	return nil
}

func bit(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

// whole is the value of a rule about the whole passage.
func (w *twin) whole(r Rule, start, arrival, late float64, notes []note) float64 {
	switch r {
	case LeastSteadyBefore:
		return w.steady(start-w.options.Before, start)
	case LeastSteadyAfter:
		return w.steady(start, late+w.options.After)
	case GreatestShift:
		worst, first := 0.0, math.NaN()
		w.each(start, late+w.options.After, func(v wind.Velocity) {
			from := math.Atan2(-v.East, -v.North)
			if first != first {
				first = from
			}
			worst = math.Max(worst, math.Abs(math.Remainder(from-first, 2*math.Pi)))
		})
		if late != late || first != first {
			return math.NaN()
		}
		return worst * (180 / math.Pi)
	case GreatestDuration:
		return late - start
	case LeastReserve:
		return w.endurance - (late - start)
	case LeastDaylight:
		finish := w.run.Points[len(w.run.Points)-1]
		day, err := route.Daylight(finish, w.instant(start))
		if err != nil || day.CivilDusk.State != route.Happens || day.CivilDawn.State != route.Happens {
			return math.NaN()
		}
		dawn, dusk := clock.Seconds(w.epoch, day.CivilDawn.Time), clock.Seconds(w.epoch, day.CivilDusk.Time)
		if start < dawn {
			return start - dawn
		}
		if start > dusk { // the light that comes next is tomorrow's
			return math.Inf(-1)
		}
		return dusk - late
	case LeastRideable:
		sum := 0.0
		for _, n := range notes {
			sum += n.dt * n.v[chCatch]
		}
		return sum / (arrival - start)
	case NoWarning:
		if text, given := w.day.Warning.Get(); given {
			return bit(text != "")
		}
	case GreatestNoSignal:
		sum := 0 * arrival
		for _, n := range notes {
			sum += n.dt * bit(n.c.silent)
		}
		return sum
	}
	return math.NaN()
}

// each calls f with the wind at the start of the run every ten minutes of a
// span, on the minutes that the kernel uses.
func (w *twin) each(from, to float64, f func(wind.Velocity)) {
	first := -w.options.Before - 600
	for k := math.Ceil((from - first) / 600); first+k*600 <= to; k++ {
		v := wind.Velocity{East: math.NaN(), North: math.NaN()}
		if s, err := w.day.Wind[w.reaches[0].wind].Series.At(w.instant(first + k*600)); err == nil {
			v = s.Velocity()
		}
		f(v)
	}
}

func (w *twin) steady(from, to float64) float64 {
	var e, n, s float64
	w.each(from, to, func(v wind.Velocity) {
		e, n, s = e+v.East, n+v.North, s+math.Hypot(v.East, v.North)
	})
	if to != to {
		return to
	}
	return math.Hypot(e, n) / s
}

// compare counts the verdicts in which a search and the twin differ.
func compare(t testing.TB, r *Ranking, run, member int, w *twin) (same, different int) {
	t.Helper()
	for d, start := range r.search.starts {
		want := w.verdicts(start)
		for _, x := range r.asked {
			if got := r.kept(run, member, d).of(x); got != want[x] {
				different++
				t.Errorf("run %d member %d departure %v: %v is %v, the twin says %v", run, member, r.departs[d], x, got, want[x])
			} else {
				same++
			}
		}
	}
	return same, different
}

// TestSearchAgainstTwin: the verdicts of the search are those of the plain twin.
func TestSearchAgainstTwin(t *testing.T) {
	c := someChoices(t)
	c.Party.Paddlers[0].Limits = benchLimits()
	r := search1(t, c)
	states := map[State]int{}
	for run := range c.Runs {
		for m := range c.Days {
			compare(t, r, run, m, newTwin(t, c.Runs[run].Run, c.Runs[run].day(c.Days[m]), r.search.crew, r.search.options))
			for d := range r.departs {
				for _, x := range r.asked {
					states[r.kept(run, m, d).of(x)]++
				}
			}
		}
	}
	if len(states) != 3 {
		t.Errorf("not every state came up: %v", states)
	}
}
