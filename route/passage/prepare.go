package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/wind"
)

// Options are how the water is prepared. The zero value prepares the run for
// departures through all of the wind record.
type Options struct {
	From, To time.Time // departures are asked about between these; zero: the ends of the wind record

	Law        wind.Law // growth law of the wind sea; nil: wind.Bretschneider
	Cell       float64  // length of a step along the run, m; 0: 250
	Station    float64  // distance between places where the sea is worked out, m; 0: 2000
	Step       float64  // time between instants, s; 0: 900
	LongFetch  float64  // fetch beyond which the sea is open, m; 0: 500 km
	Before     float64  // span before the start over which the wind is to have been steady, s; 0: 3 h
	After      float64  // span after the arrival over which it is to stay steady, s; 0: 2 h
	ExitStep   float64  // time between instants at which the ways out are worked out, s; 0: 1800
	ExitLength float64  // distance between the places at which they are, m; 0: 500
}

func (o Options) withDefaults(first, last time.Time) (Options, error) {
	def := func(x *float64, d float64) {
		if *x == 0 {
			*x = d
		}
	}
	def(&o.Cell, 250)
	def(&o.Station, 2000)
	def(&o.Step, 900)
	def(&o.LongFetch, 500e3)
	def(&o.Before, 3*3600)
	def(&o.After, 2*3600)
	def(&o.ExitStep, 1800)
	def(&o.ExitLength, 500)
	if o.From.IsZero() {
		o.From = first
	}
	if o.To.IsZero() {
		o.To = last
	}
	if o.Law == nil {
		o.Law = wind.Bretschneider
	}
	for _, f := range []struct {
		name      string
		x, lo, hi float64
	}{
		{"cell length", o.Cell, 10, 5000}, {"station distance", o.Station, 100, 1e5}, {"time step", o.Step, 60, 3600},
		{"long fetch", o.LongFetch, 1000, 5e6}, {"span before", o.Before, 0, 48 * 3600}, {"span after", o.After, 0, 48 * 3600},
		{"exit step", o.ExitStep, 60, 6 * 3600}, {"exit distance", o.ExitLength, 10, 1e5},
	} {
		if !(f.x >= f.lo && f.x <= f.hi) {
			return o, inputError("option "+f.name, f.x, fmt.Sprintf("%g to %g", f.lo, f.hi))
		}
	}
	if o.To.Before(o.From) {
		return o, inputError("last departure", o.To.Format(time.RFC3339), "not before the first, "+o.From.Format(time.RFC3339))
	}
	if o.To.Sub(o.From) > 15*24*time.Hour {
		return o, inputError("departures", "over "+o.To.Sub(o.From).String(), "fifteen days at most")
	}
	return o, nil
}

// Water is a run in one forecast for one paddler or party, prepared:
// everything that does not depend on the departure. It is made by Prepare or
// PrepareParty, does not change, and may be used from many goroutines.
type Water struct {
	*survey
	*layout
	*crew
	day  Day
	grid *grid

	levels []level            // of the tide, at each instant
	flows  [][]route.Velocity // of each stream, at each instant
	swells []swells           // at each instant
	states [][]wind.State     // of each station, at each instant

	air           air
	before, after float64
	exits         exitTimes
	alone         []*grid // for each of a party of several, as if alone
}

type swells struct {
	systems []wind.Swell
	known   bool
}

// Prepare makes a run ready for the appraisal of departures: it cuts the run
// into cells, raises the sea at stations along it from the wind record, and
// works out at every reach and instant what wind, sea, tide and stream do to
// the paddler.
//
// What is missing from the day makes what depends on it unknown; it is not an
// error. Errors wrap ErrInput, or are those of the run.
func Prepare(run route.Run, day Day, paddler Paddler, o Options) (*Water, error) {
	c, err := newCrew(Party{Paddlers: []Paddler{paddler}}, never)
	if err != nil {
		return nil, err
	}
	return assemble(run, day, c, o)
}

// never stops nothing.
func never() error { return nil }

// assemble prepares all of it at once.
func assemble(run route.Run, day Day, c *crew, o Options) (*Water, error) {
	if err := run.Check(); err != nil {
		return nil, err
	}
	if err := c.fits(run); err != nil {
		return nil, err
	}
	first, last, err := day.spans()
	if err != nil {
		return nil, err
	}
	if len(day.Wind) == 0 {
		if o.From.IsZero() || o.To.IsZero() {
			return nil, inputError("day", "without wind", "a wind record, or the first and the last departure")
		}
		first, last = o.From, o.To.Add(24*time.Hour)
	}
	if o, err = o.withDefaults(first, last); err != nil {
		return nil, err
	}
	s, err := surveyed(run, o, never)
	if err != nil {
		return nil, err
	}
	w := &Water{survey: s, crew: c, day: day, layout: s.layout(windPlaces(&day), streamPlaces(&day))}
	end := w.end()
	w.levels, w.flows = s.levels(day.Tide, o.instants(end)), s.flows(day.Streams, o.instants(end))
	if err := w.raise(end, never); err != nil {
		return nil, err
	}
	w.findExits(end)
	w.fill()
	return w, nil
}

// spans returns the first and the last instant of the wind records.
func (d *Day) spans() (first, last time.Time, err error) {
	for i, a := range d.Wind {
		if a.Series.Len() == 0 {
			return first, last, inputError(fmt.Sprintf("wind record %d", i+1), "empty", "at least one sample")
		}
		if s := a.Series.Start(); i == 0 || s.Before(first) {
			first = s
		}
		if e := a.Series.End(); i == 0 || e.After(last) {
			last = e
		}
	}
	return first, last, nil
}

// end is the last second after the epoch that can matter: a passage after the
// last departure, or the end of the forecast.
func (w *Water) end() float64 {
	last := w.to
	if _, e, err := w.day.spans(); err == nil && len(w.day.Wind) > 0 {
		last = math.Max(clock.Seconds(w.epoch, e), w.to)
	} else {
		last += 24 * 3600
	}
	return math.Min(w.to+longestPassage, last)
}

// raise makes ready all that the nodes of the grid are worked out from: the
// wind at the start, the swell, and the sea at the stations. stop is asked
// between stations.
func (w *Water) raise(end float64, stop func() error) error {
	o := w.options
	w.before, w.after = o.Before, o.After
	if w.grid == nil {
		w.grid = new(grid)
	}
	w.grid.lay(w.cells, w.reaches, o.Step, o.instants(end))
	w.grid.asked, w.grid.exits = w.mask(), &w.exits
	w.breathe(end)
	w.swells = make([]swells, w.grid.steps)
	times := make([]time.Time, w.grid.steps)
	for j := range times {
		times[j] = w.instant(float64(j) * w.grid.step)
		w.swells[j] = w.swellAt(times[j])
	}
	w.states = make([][]wind.State, len(w.stations))
	for k := range w.stations {
		if err := stop(); err != nil {
			return err
		}
		states, err := w.hindcast(&w.stations[k], times, w.reaches[w.of[k*w.every]].wind)
		if err != nil {
			return err
		}
		w.states[k] = states
	}
	return nil
}

func (w *Water) swellAt(at time.Time) swells {
	if w.day.Swell == nil {
		return swells{}
	}
	x, err := w.day.Swell.At(at)
	return swells{x, err == nil}
}

// breathe samples the wind at the start of the run for the spans before and
// after.
func (w *Water) breathe(end float64) {
	const step = 600.0
	n := int((end+w.after+w.before)/step) + 4
	w.air = air{first: -w.before - step, step: step,
		east: make([]float64, n), north: make([]float64, n), airTemp: make([]float64, n), waterTemp: make([]float64, n)}
	speed := make([]float64, n)
	for i := range n {
		e, nn, s, ta, tw := math.NaN(), math.NaN(), math.NaN(), w.day.Air.Number(), w.day.Water.Number()
		if k := w.reaches[0].wind; k >= 0 {
			if x, err := w.day.Wind[k].Series.At(w.instant(w.air.first + float64(i)*step)); err == nil {
				v := x.Velocity()
				e, nn, s = v.East, v.North, x.Speed
				if x.Air.Known() {
					ta = x.Air.Celsius()
				}
				if x.Water.Known() {
					tw = x.Water.Celsius()
				}
			}
		}
		w.air.east[i], w.air.north[i], speed[i] = e, nn, s
		w.air.airTemp[i], w.air.waterTemp[i] = ta, tw
	}
	w.air.sum(speed)
}

// hindcast returns the states of a station; at times outside the record they
// are unknown.
func (w *Water) hindcast(s *station, times []time.Time, record int) ([]wind.State, error) {
	all := make([]wind.State, len(times))
	for j := range all {
		all[j] = unknownState(times[j])
	}
	if s.fetch == nil || record < 0 {
		return all, nil
	}
	series := w.day.Wind[record].Series
	lo := 0
	for lo < len(times) && times[lo].Before(series.Start()) {
		lo++
	}
	hi := len(times)
	for hi > lo && times[hi-1].After(series.End()) {
		hi--
	}
	if lo == hi {
		return all, nil
	}
	h := wind.Hindcast{Law: w.options.Law, Fetch: rose(s.fetch, w.options.LongFetch)}
	if !math.IsInf(s.depth, 1) {
		h.MeanDepth = func(at time.Time, _ float64) float64 {
			if w.day.Tide == nil {
				return s.depth
			}
			if tide := w.day.Tide.Height(at); tide == tide {
				return math.Max(s.depth+tide, leastWaveDepth)
			}
			return s.depth
		}
	}
	states, err := h.Run(series, times[lo:hi]...)
	if err != nil {
		return nil, fmt.Errorf("the sea along the run: %w", err)
	}
	copy(all[lo:hi], states)
	return all, nil
}

func unknownState(at time.Time) wind.State {
	nan := math.NaN()
	none := wind.Sea{Hs: nan, Tp: nan, From: nan, Fetch: nan}
	return wind.State{Time: at, Wind: wind.Wind{Speed: nan, Gust: nan, From: nan}, Sea: none, Old: none}
}

// rose returns the fetch by direction from a rose of even steps; at the cap
// the sea is open.
func rose(f []float64, most float64) func(from float64) float64 {
	n := float64(len(f))
	return func(from float64) float64 {
		x := from / 360 * n
		if !(x >= 0 && x <= n) {
			return math.NaN()
		}
		i := int(x) % len(f)
		a, b := f[i], f[(i+1)%len(f)]
		v := a + (x-math.Floor(x))*(b-a)
		if v >= most {
			return math.Inf(1)
		}
		return v
	}
}

// fill works out every node of the grid, and of the grids of the party's
// paddlers as if each were alone.
func (w *Water) fill() {
	for j := range w.grid.steps {
		for r := range w.reaches {
			w.node(r, j)
		}
	}
	if len(w.people) < 2 {
		return
	}
	for p := range w.people {
		g := new(grid)
		g.lay(w.cells, w.reaches, w.grid.step, w.grid.steps)
		copy(g.nodes, w.grid.nodes)
		g.asked, g.exits = w.grid.asked, w.grid.exits
		one := *w
		one.crew, one.grid = &crew{people: w.people[p : p+1]}, g
		for j := range g.steps {
			for r := range w.reaches {
				one.node(r, j)
			}
		}
		w.alone = append(w.alone, g)
	}
}

// node works out one node of the grid.
func (w *Water) node(r, j int) {
	at := &w.reaches[r]
	h := hour{at: w.instant(float64(j) * w.grid.step), tide: w.levels[j], swells: w.swells[j].systems, swell: w.swells[j].known}
	stream := route.Velocity{East: math.NaN(), North: math.NaN()}
	if at.stream >= 0 {
		stream = w.flows[at.stream][j]
	}
	m := w.moment(at.middle, h, w.states[at.station][j], stream)
	v := w.grid.at(r, j)
	v[chSpeed], v[chSlow], v[chFast] = m.Speed, m.Slow, m.Fast
	v[chStreamE], v[chStreamN], v[chSlip] = m.Stream.East, m.Stream.North, m.Slip
	v[chWind], v[chGust] = m.Wind.Speed, m.Wind.Gust
	air := m.Wind.Velocity()
	v[chWindE], v[chWindN] = air.East, air.North
	v[chSea], v[chSwell], v[chTotal], v[chSteep] = m.Sea.Hs, m.SwellHs, m.TotalHs, m.Steepness
	v[chHeight], v[chSurf] = h.tide.low, m.SurfHs
	v[chCatch] = m.rideable
}
