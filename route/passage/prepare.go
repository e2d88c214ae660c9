package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/wave/ride"
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
	return o, nil
}

// Water is a run in one forecast for one paddler, prepared: everything that
// does not depend on the departure. It is made by Prepare, does not change, and
// may be used from many goroutines.
type Water struct {
	run     route.Run
	day     Day
	paddler Paddler
	options Options
	limits  Limits

	grid   *grid
	epoch  time.Time
	to     float64 // last departure, s after the epoch, which is the first
	length float64 // of the run, m

	centres  []route.Point // of each cell
	courses  []float64
	windAt   []int // index of the wind record of each cell, -1 for none
	streamAt []int
	shores   []shore
	exposure []wind.Exposure // of each leg
	stations []station
	stationE []int // station of each cell
	fetchWhy string

	ride     *ride.Prepared
	rideWhy  string // why there is no ride
	posture  route.Posture
	kneeling *wayTable

	air           air
	before, after float64
	endurance     float64
	leaders       float64
	light         []daylight
	exits         exitTimes
}

type shore struct {
	known             bool
	distance, bearing float64
}

// A station is a place where the sea is worked out for the cells around it.
type station struct {
	at     route.Point
	fetch  []float64 // rose of fetches, m, every roseStep degrees; nil when unknown
	depth  float64   // mean depth along the fetch, m
	states []wind.State
}

// roseSize is the number of directions in which the fetch is measured.
const roseSize = 72

// Prepare makes a run ready for the appraisal of departures: it cuts the run
// into cells, raises the sea at stations along it from the wind record, and
// works out at every cell and instant what wind, sea, tide and stream do to
// the paddler.
//
// What is missing from the day makes what depends on it unknown; it is not an
// error. Errors wrap ErrInput, or are those of the run.
func Prepare(run route.Run, day Day, paddler Paddler, o Options) (*Water, error) {
	if err := run.Check(); err != nil {
		return nil, err
	}
	if err := paddler.Validate(); err != nil {
		return nil, err
	}
	if paddler.Foil {
		return nil, inputError("paddler", "on a foil", "a board that stays on the water: the ride model does not hold for foils")
	}
	var first, last time.Time
	for i, a := range day.Wind {
		if a.Series.Len() == 0 {
			return nil, inputError(fmt.Sprintf("wind record %d", i+1), "empty", "at least one sample")
		}
		if s := a.Series.Start(); i == 0 || s.Before(first) {
			first = s
		}
		if e := a.Series.End(); i == 0 || e.After(last) {
			last = e
		}
	}
	if len(day.Wind) == 0 {
		if o.From.IsZero() || o.To.IsZero() {
			return nil, inputError("day", "without wind", "a wind record, or the first and the last departure")
		}
		first, last = o.From, o.To.Add(24*time.Hour)
	}
	o, err := o.withDefaults(first, last)
	if err != nil {
		return nil, err
	}
	if o.To.Sub(o.From) > 15*24*time.Hour {
		return nil, inputError("departures", "over "+o.To.Sub(o.From).String(), "fifteen days at most")
	}
	w := &Water{run: run, day: day, paddler: paddler, options: o, limits: paddler.Limits, before: o.Before, after: o.After}
	w.epoch = o.From
	w.to = clock.Seconds(o.From, o.To)
	end := math.Min(w.to+longestPassage, math.Max(clock.Seconds(o.From, last), w.to))
	cells, err := w.cut()
	if err != nil {
		return nil, err
	}
	w.grid = newGrid(cells, o.Step, int(math.Ceil(end/o.Step))+2)
	w.people()
	if err := w.lights(end); err != nil {
		return nil, err
	}
	w.breathe(end)
	if err := w.raise(); err != nil {
		return nil, err
	}
	w.exits = w.findExits(end)
	w.fill()
	return w, nil
}

// instant returns the instant t seconds after the epoch. It is only called
// with times that a walk has reached.
func (w *Water) instant(t float64) time.Time {
	at, err := clock.After(w.epoch, t)
	if err != nil {
		return time.Time{}
	}
	return at
}

// cut divides the run into cells.
func (w *Water) cut() ([]cell, error) {
	var cells []cell
	outlines := make([]*route.Coast, len(w.run.Areas))
	for i, a := range w.run.Areas {
		o, err := a.Outline()
		if err != nil {
			return nil, err
		}
		outlines[i] = o
	}
	for l, leg := range w.run.Legs() {
		n := max(1, int(math.Ceil(leg.Distance/w.options.Cell)))
		if len(cells)+n > mostCells {
			return nil, inputError("run", fmt.Sprintf("longer than %d steps of %g m", mostCells, w.options.Cell), "a shorter run or longer cells")
		}
		step := leg.Distance / float64(n)
		for k := range n {
			a, b := leg.At(float64(k)*step), leg.At(float64(k+1)*step)
			piece := route.ShortInverse(a, b)
			course := piece.Mean()
			v := route.Toward(1, course)
			c := cell{east: v.East, north: v.North, length: step, along: w.length, charted: math.NaN(), leg: l}
			if d, ok := w.run.Depth(l).Get(); ok {
				c.charted = d
			}
			for i, o := range outlines {
				x, err := o.Crosses(a, b)
				if err != nil {
					return nil, err
				}
				in, err := o.Land(a)
				if err != nil {
					return nil, err
				}
				if !in && !x.Land {
					continue
				}
				switch w.run.Areas[i].Kind {
				case route.Avoid:
					c.avoid = true
				case route.Traffic:
					c.traffic = true
				case route.NoSignal:
					c.silent = true
				}
			}
			cells = append(cells, c)
			w.centres = append(w.centres, piece.At(step/2))
			w.courses = append(w.courses, course)
			w.length += step
		}
	}
	for i, p := range w.centres {
		w.windAt = append(w.windAt, nearest(p, len(w.day.Wind), func(k int) route.Point { return w.day.Wind[k].At }))
		w.streamAt = append(w.streamAt, nearest(p, len(w.day.Streams), func(k int) route.Point { return w.day.Streams[k].At }))
		var s shore
		if w.run.Coast != nil {
			near, err := w.run.Coast.NearestShore(p)
			if err == nil {
				s = shore{true, near.Distance, near.Bearing}
			}
		}
		w.shores = append(w.shores, s)
		cells[i].along = cells[i].along + 0
	}
	w.exposure = make([]wind.Exposure, len(w.run.Points)-1)
	return cells, nil
}

const mostCells = 20000

// nearest returns the index of the place nearest to p, -1 when there is none.
func nearest(p route.Point, n int, at func(int) route.Point) int {
	if n <= 1 {
		return n - 1
	}
	best, least := -1, math.Inf(1)
	for k := range n {
		if d := route.ShortInverse(p, at(k)).Distance; d < least {
			best, least = k, d
		}
	}
	return max(best, 0)
}

// people takes what is needed from the paddler.
func (w *Water) people() {
	p := w.paddler
	w.endurance = p.Endurance.Number()
	w.leaders = math.NaN()
	cruise, ok := p.Cruise.Get()
	if !ok {
		w.rideWhy = "the cruise speed is not given"
		return
	}
	w.posture = route.Standing(cruise)
	r := ride.Paddler{Cruise: cruise, Sprint: p.Sprint.Or(0), Mass: p.Mass.Or(0), Length: p.BoardLength.Or(0)}
	prepared, err := r.Prepare()
	if err != nil {
		w.rideWhy = err.Error()
		return
	}
	w.ride = prepared
}

// breathe samples the wind at the start of the run for the spans before and
// after.
func (w *Water) breathe(end float64) {
	const step = 600.0
	w.air = air{first: -w.before - step, step: step}
	n := int((end+w.after+w.before)/step) + 4
	speed := make([]float64, n)
	for i := range n {
		e, nn, s, ta, tw := math.NaN(), math.NaN(), math.NaN(), w.day.Air.Number(), w.day.Water.Number()
		if k := w.windAt[0]; k >= 0 {
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
		w.air.east, w.air.north, speed[i] = append(w.air.east, e), append(w.air.north, nn), s
		w.air.airTemp, w.air.waterTemp = append(w.air.airTemp, ta), append(w.air.waterTemp, tw)
	}
	w.air.sum(speed)
}

// raise works out the sea at stations along the run.
func (w *Water) raise() error {
	w.stationE = make([]int, len(w.centres))
	if w.run.Coast == nil {
		w.fetchWhy = "no coastline is given, so the fetch is not known"
	}
	every := max(1, int(w.options.Station/w.grid.cells[0].length+0.5))
	times := make([]time.Time, w.grid.steps)
	for j := range times {
		times[j] = w.instant(float64(j) * w.grid.step)
	}
	for i := 0; i < len(w.centres); i += every {
		at := w.centres[min(i+every/2, len(w.centres)-1)]
		s := station{at: at, depth: w.run.FetchDepth.Or(math.Inf(1))}
		if w.run.Coast != nil {
			s.fetch = w.run.Coast.FetchRose(at, roseSize, w.options.LongFetch)
		}
		if err := w.hindcast(&s, times, w.windAt[i]); err != nil {
			return err
		}
		for k := i; k < min(i+every, len(w.centres)); k++ {
			w.stationE[k] = len(w.stations)
		}
		w.stations = append(w.stations, s)
	}
	return nil
}

// hindcast fills the states of a station; times outside the record stay
// unknown.
func (w *Water) hindcast(s *station, times []time.Time, record int) error {
	s.states = make([]wind.State, len(times))
	for j := range s.states {
		s.states[j] = unknownState(times[j])
	}
	if s.fetch == nil || record < 0 {
		return nil
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
		return nil
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
		return fmt.Errorf("the sea along the run: %w", err)
	}
	copy(s.states[lo:hi], states)
	return nil
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

// fill works out every channel at every cell and instant.
func (w *Water) fill() {
	g := w.grid
	for j := range g.steps {
		h := w.hour(w.instant(float64(j) * g.step))
		for i := range g.cells {
			m := w.moment(i, h, w.stations[w.stationE[i]].states[j])
			v := g.at(i, j)
			v[chSpeed], v[chSlow], v[chFast] = m.Speed, m.Slow, m.Fast
			v[chStreamE], v[chStreamN], v[chSlip] = m.Stream.East, m.Stream.North, m.Slip
			v[chWind], v[chGust] = m.Wind.Speed, m.Wind.Gust
			v[chAlong], v[chAcross] = route.Velocity(m.Wind.Velocity()).Resolve(m.Course)
			v[chOffshore] = m.Offshore
			v[chSea], v[chSwell], v[chTotal], v[chSteep] = m.Sea.Hs, m.SwellHs, m.TotalHs, m.Steepness
			v[chHeight] = m.TideHeight
			v[chCatch] = math.NaN()
			if m.Speed == m.Speed {
				v[chCatch] = m.Ride.WaveShare
			}
			v[chExit] = w.exits.at(i, float64(j)*g.step)
		}
	}
}
