package passage

import (
	"math"
	"time"

	"followingsea.example/route"
	"followingsea.example/wave"
	"followingsea.example/wind"
)

// exitTimes holds the time to the nearest exit that is reachable and landable
// at places along the run and at instants, by a paddler on the knees: in a
// wind that makes one want an exit, standing is no plan.
type exitTimes struct {
	every  int // cells between places
	places int
	step   float64 // s between instants
	steps  int
	time   []float64 // s; +Inf where none can be reached, NaN where that is not known

	// As in a grid: times that are worked out when they are asked for.
	fill func(place, instant int) float64
	has  []bool
}

// at returns the time to an exit from cell i at t: of the place before, at the
// later and worse of the two instants around t.
func (x *exitTimes) at(i int, t float64) float64 {
	if len(x.time) == 0 {
		return math.NaN()
	}
	p := min(i/x.every, x.places-1)
	j := t / x.step
	if !(j >= 0 && j < float64(x.steps-1)) {
		return math.NaN()
	}
	k := p*x.steps + int(j)
	if x.fill != nil {
		x.need(p, int(j))
		x.need(p, int(j)+1)
	}
	a, b := x.time[k], x.time[k+1]
	if a != a || b != b { // math.Max makes +Inf of NaN and +Inf
		return math.NaN()
	}
	return math.Max(a, b)
}

// need works one time out, if it is not yet.
func (x *exitTimes) need(place, instant int) {
	if k := place*x.steps + instant; !x.has[k] {
		x.time[k], x.has[k] = x.fill(place, instant), true
	}
}

// field is the wind or the stream over the run as route asks for it: the
// record nearest to the place.
func (w *Water) windField() route.Field {
	if len(w.day.Wind) == 0 {
		return nil
	}
	return func(t time.Time, p route.Point) route.Velocity {
		n := nearest(p, w.winds)
		s, err := w.day.Wind[n].Series.At(t)
		if err != nil {
			return route.Velocity{East: math.NaN(), North: math.NaN()}
		}
		return route.Velocity(s.Velocity())
	}
}

func (w *Water) streamField() route.Field {
	if len(w.day.Streams) == 0 {
		return nil
	}
	return func(t time.Time, p route.Point) route.Velocity {
		n := nearest(p, w.streams)
		return route.Velocity(w.day.Streams[n].Stream.Velocity(t))
	}
}

// stateAt is what is known of an exit at an instant: the depth over it, the
// breakers of the sea that reaches it, the stream and the light.
func (w *Water) stateAt(e route.Exit, t time.Time) route.At {
	h := w.hour(t)
	at := route.At{Light: w.isLight(w.seconds(t))}
	if charted, ok := e.Charted.Get(); ok {
		at.Depth = route.Known(charted + h.tide.low)
	}
	if v := w.streamField(); v != nil {
		at.Stream = route.Known(v(t, e.Point).Speed())
	}
	at.Breaker = route.Known(w.breaker(e, h))
	return at
}

// breaker returns the height at which the sea breaks on the shore of an exit:
// of each system the part that runs towards the landing, taken in deep water
// and grown to its breaker height by Komar and Gaughan, the systems together
// as squares. NaN when any part is not known.
func (w *Water) breaker(e route.Exit, h hour) float64 {
	i := w.cellNear(e.Point)
	state := w.stateOf(i, w.seconds(h.at))
	if !state.Known() || !h.swell {
		return math.NaN()
	}
	systems := append([]wind.Swell{{Hs: state.Sea.Hs, Tp: state.Sea.Tp, From: state.Sea.From}, {Hs: state.Old.Hs, Tp: state.Old.Tp, From: state.Old.From}}, h.swells...)
	seaward, open := e.Seaward.Get()
	var sum float64
	for _, s := range systems {
		if s.Hs == 0 {
			continue
		}
		hs := s.Hs
		if open {
			// Waves bend towards a beach; what comes from behind it does not.
			hs *= math.Sqrt(math.Max(0, math.Cos((s.From-seaward)*(math.Pi/180))))
		}
		if hs != 0 {
			b := wave.KomarGaughan(hs, s.Tp)
			sum += b * b
		}
	}
	return math.Sqrt(sum)
}

// cellNear returns the cell nearest to a place.
func (w *Water) cellNear(p route.Point) int {
	return max(nearest(p, w.centres), 0)
}

// stateOf returns the sea at a cell at the prepared instant nearest to t.
func (w *Water) stateOf(i int, t float64) wind.State {
	states := w.states[w.reaches[w.of[i]].station]
	j := math.Round(t / w.grid.step)
	if !(j >= 0 && j < float64(len(states))) {
		return unknownState(w.instant(0))
	}
	return states[int(j)]
}

// findExits works out the times to an exit, if the paddler asks for them.
func (w *Water) findExits(end float64) {
	if !w.layExits(end) {
		return
	}
	x := &w.exits
	for p := range x.places {
		for j := range x.steps {
			x.time[p*x.steps+j] = w.exitTime(p, j)
		}
	}
}

// layExits lays out the places and instants of the times to an exit; false
// when nobody asks for them.
func (w *Water) layExits(end float64) bool {
	if _, asked := w.limits[GreatestTimeToExit].Get(); !asked {
		return false
	}
	x := &w.exits
	*x = exitTimes{every: max(1, int(w.options.ExitLength/w.cells[0].length+0.5)), step: w.options.ExitStep}
	x.places = (len(w.cells)-1)/x.every + 1
	x.steps = int(math.Min(end, w.to+longestOut)/x.step) + 2
	x.time = make([]float64, x.places*x.steps)
	return true
}

func (w *Water) exitTime(place, instant int) float64 {
	return w.timeToExit(min(place*w.exits.every, len(w.centres)-1), float64(instant)*w.exits.step)
}

// longestOut is how long after the last departure the ways out are worked out.
const longestOut = 10 * 3600

// escape asks for the ways out from a place at an instant.
func (w *Water) escape(from route.Point, t time.Time, posture route.Posture) route.Escape {
	return route.Escape{From: from, Time: t, Posture: posture, Wind: w.windField(), Stream: w.streamField(),
		At: w.stateAt, Coast: w.run.Coast}
}

// timeToExit is the least time to an exit that is reachable and landable from
// cell i at t. An exit about which something is not known does not count; when
// it is the only hope, the time is not known.
func (w *Water) timeToExit(i int, t float64) float64 {
	if w.posture.Speed == 0 || len(w.run.Exits) == 0 {
		return math.NaN()
	}
	q := w.escape(w.centres[i], w.instant(t), route.Kneeling(w.posture.Speed))
	q.Way = w.kneeling.way
	least, doubt := math.Inf(1), false
	for _, e := range w.run.Exits {
		o, err := q.Reach(e)
		switch {
		case err != nil || o.State == route.Unknown:
			doubt = true
		case o.State == route.Landable:
			least = math.Min(least, o.Seconds)
		}
	}
	if math.IsInf(least, 1) && doubt {
		return math.NaN()
	}
	return least
}
