package passage

import (
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wave"
	"followingsea.example/wave/ride"
	"followingsea.example/wind"
)

// A Moment is the water, the air and the board at one place of the run at one
// instant, worked out from the sources themselves.
type Moment struct {
	Along  float64     // m from the start of the run
	At     route.Point // the place
	Time   time.Time
	Course float64 // of the run there, degrees true

	Wind     wind.Wind // over the ground, at 10 m, as the leg has it
	WindLow  wind.Wind // the same at the low end of the leg's exposure
	WindHigh wind.Wind // and at the high end
	OffStern float64   // angle of the wind off the stern, degrees, 0 to 180; NaN in a calm
	Offshore float64   // component of the wind that blows away from the nearest shore, m/s

	Stream     route.Velocity
	TideHeight float64     // above chart datum, m
	TideSpread float64     // metres either way; NaN where the source of the tide does not say
	TideRemark tide.Remark // on the shape of the tide; Ordinary where the source does not say
	Charted    float64     // charted depth, m
	Depth      float64     // of water, m
	LowDepth   float64     // what limits on depth use: Depth, at the low end of the spread where the rise or fall lasts unusually long or short

	Sea       wind.Sea // the wind sea, as it comes in
	SeaLow    float64  // its height by the lowest of the growth laws that cannot be told apart, m; only from Water.Moment
	SeaHigh   float64  // and by the highest
	Old       wind.Sea // what earlier winds left
	Swell     []wind.Swell
	SwellHs   float64 // all swell and old sea together, as they come in, m
	TotalHs   float64 // wind sea and swell together on the stream and the depth, with what a steep shore throws back, m
	SurfHs    float64 // the same if nothing broke: what is compared with the depth, m
	BreakHs   float64 // significant height at which such a sea begins to break over this depth, m; NaN in flat water
	Reflected float64 // height of the waves that a steep shore throws back, m; 0 where none is near
	Bump      wave.Wave
	Steepness float64 // of the wind sea on the stream: height over length, at most that of breaking
	Blocked   bool    // the stream stops the waves of the wind sea

	Ride     ride.Ride // what the sea brings the paddler; zero when unknown
	Speed    float64   // through the water on the course, m/s
	Slow     float64   // slower, in the slow case
	Fast     float64   // faster, in the fast case
	Slip     float64   // leeway of the board across the course, m/s, positive to the right
	Heading  float64   // to hold the course, degrees true; NaN when it cannot be held
	OverGrd  float64   // speed over the ground, m/s; NaN when the course cannot be held
	ShoreAt  float64   // distance to the nearest shore, m; NaN without a coastline
	SeaWords []string  // remarks on the sea and the tide in words; only from Water.Moment

	WaterTemp float64 // °C; NaN when not known
	AirTemp   float64 // °C; NaN when not known

	rideable float64 // least share of waves that one of the party can catch
}

// An hour is what the whole run shares at one instant.
type hour struct {
	at     time.Time
	tide   level
	swells []wind.Swell
	swell  bool // known
}

func (w *Water) hour(at time.Time) hour {
	h := hour{at: at, tide: levelOf(w.day.Tide, at)}
	x := w.swellAt(at)
	h.swells, h.swell = x.systems, x.known
	return h
}

// streamAt returns the stream at a cell.
func (w *Water) streamAt(i int, at time.Time) route.Velocity {
	if n := w.reaches[w.of[i]].stream; n >= 0 {
		return route.Velocity(w.day.Streams[n].Stream.Velocity(at))
	}
	return route.Velocity{East: math.NaN(), North: math.NaN()}
}

// moment works out everything at cell i at one instant. state is the sea there
// from the hindcast.
func (w *Water) moment(i int, h hour, state wind.State, stream route.Velocity) Moment {
	c := &w.cells[i]
	nan := math.NaN()
	m := Moment{
		Along: c.along + c.length/2, At: w.centres[i], Time: h.at, Course: w.courses[i],
		TideHeight: h.tide.height, TideSpread: h.tide.spread, TideRemark: h.tide.remark,
		Charted: c.charted, Depth: c.charted + h.tide.height, LowDepth: c.charted + h.tide.low,
		Stream: stream, Offshore: nan, OffStern: nan, SeaLow: nan, SeaHigh: nan, WaterTemp: nan, AirTemp: nan,
		SwellHs: nan, TotalHs: nan, SurfHs: nan, BreakHs: nan, Reflected: nan, Steepness: nan, Heading: nan, OverGrd: nan, ShoreAt: nan,
		Sea: state.Sea, Old: state.Old, Swell: h.swells,
	}
	m.Wind = wind.Wind{Speed: nan, Gust: nan, From: nan}
	if n := w.reaches[w.of[i]].wind; n >= 0 {
		if s, err := w.day.Wind[n].Series.At(h.at); err == nil {
			m.Wind = s.Wind
			if !(m.Wind.Gust >= m.Wind.Speed) { // the zero of a literal is no gust
				m.Wind.Gust = nan
			}
		}
	}
	m.WindLow, m.WindHigh = m.Wind, m.Wind
	exposure := w.run.Factor(c.leg)
	if exposure.Given() {
		x := wind.Exposure(exposure).On(m.Wind)
		m.WindLow, m.Wind, m.WindHigh = x.Low, x.Mid, x.High
	}
	air := route.Velocity(m.Wind.Velocity())
	if m.Wind.Speed > 0 {
		m.OffStern = math.Abs(angle.Diff(m.Wind.From+180, m.Course))
	}
	if s := w.shores[i]; s.known {
		m.ShoreAt = s.distance
		along, _ := air.Resolve(s.bearing + 180)
		m.Offshore = along
	}
	w.onWater(&m, state, h.swell, w.reaches[w.of[i]].wall)
	w.paddle(&m, air)
	if exposure.Given() {
		w.band(&m)
	}
	return m
}

// waveDepth is the depth that waves feel: unknown depth is taken as deep, where
// waves are fastest and hardest to catch.
func (m *Moment) waveDepth() float64 {
	if !(m.Depth == m.Depth) {
		return math.Inf(1)
	}
	return math.Max(m.Depth, leastWaveDepth)
}

// breakingSteepness is the height over length at which a deep-water wave breaks.
const breakingSteepness = 0.142

const leastWaveDepth = 0.3 // m, the least depth the ride is worked out for

// paddle finds the speed through the water of the slowest, the share of waves
// of who catches fewest, and what to steer.
func (w *Water) paddle(m *Moment, air route.Velocity) {
	relative := air.Sub(m.Stream)
	m.Speed, m.Slow, m.Fast, m.Slip, m.rideable = math.Inf(1), math.Inf(1), math.Inf(1), math.NaN(), math.Inf(1)
	sea, ok := m.rideSea(relative)
	for i := range w.people {
		p := &w.people[i]
		var r ride.Ride
		known := ok && p.ride != nil
		if known {
			var err error
			if r, err = p.ride.Sea(sea); err != nil {
				known = false
			}
		}
		if !known { // of the slowest nothing can be said
			nan := math.NaN()
			m.Speed, m.Slow, m.Fast, m.rideable, m.Ride = nan, nan, nan, nan, ride.Ride{}
			m.Slip = p.slip(m.Course, relative)
			break
		}
		if !(r.Speed >= m.Speed) {
			m.Ride, m.Slip = r, p.slip(m.Course, relative)
		}
		m.Speed = math.Min(m.Speed, r.Speed) // a NaN stays one
		m.Slow = math.Min(m.Slow, r.Speed-caseSpreads*r.Spread)
		m.Fast = math.Min(m.Fast, r.Speed+caseSpreads*r.Spread)
		m.rideable = math.Min(m.rideable, r.WaveShare)
	}
	if m.Speed == m.Speed {
		water := m.Stream.Add(route.Toward(1, m.Course+90).Scale(m.Slip))
		if s, err := route.HoldTrack(m.Course, m.Speed, water); err == nil {
			m.Heading, m.OverGrd = s.Heading, s.SpeedMade
		}
	}
}

// band widens the slow and the fast case by the band of the wind on the leg:
// the slow case is as slow as either end of it makes the board, the fast case
// as fast. The sea is that of the forecast wind, which blows over all of the
// fetch.
func (w *Water) band(m *Moment) {
	for _, end := range []wind.Wind{m.WindLow, m.WindHigh} {
		one := *m
		w.paddle(&one, route.Velocity(end.Velocity()))
		m.Slow, m.Fast = math.Min(m.Slow, one.Slow), math.Max(m.Fast, one.Fast) // a NaN stays one
	}
}

// slip is the leeway of a paddler across the course, positive to the right;
// NaN when the cruise speed is not known.
func (p *person) slip(course float64, relative route.Velocity) float64 {
	if !(p.posture.Speed > 0) {
		return math.NaN()
	}
	_, right := p.posture.Way(course, relative).Resolve(course)
	return right
}

// rideSea is the sea as a board on the course meets it; false when it is not
// known.
func (m *Moment) rideSea(relative route.Velocity) (ride.Sea, bool) {
	if !m.Sea.Known() || !m.Old.Known() {
		return ride.Sea{}, false
	}
	along, _ := relative.Resolve(m.Course)
	sea := ride.Sea{Wind: along, Depth: m.waveDepth()}
	if cur, _ := m.Stream.Resolve(m.Course); cur == cur {
		sea.Current = cur
	}
	if m.Sea.Hs > 0 && !(m.Sea.Tp < ripple) {
		sea.WindSea = ride.System{Hs: m.Sea.Hs, Tp: m.Sea.Tp, Off: angle.Diff(m.Sea.From+180, m.Course)}
	}
	if s, ok := m.swellSystem(); ok {
		sea.Swell = ride.System{Hs: s.Hs, Tp: s.Tp, Gamma: swellGamma, Off: angle.Diff(s.From+180, m.Course)}
	}
	return sea, true
}

// caseSpreads is how many spreads slower and faster than expected the slow and
// the fast case are: one run in twenty is slower than the slow case, as far as
// the ride's own spread can be trusted.
const caseSpreads = 1.64

// ripple is the period in seconds below which waves are too short to do anything
// to a board: those of a breath of wind, millimetres high. The ride is worked out
// without them.
const ripple = 0.5

// swellGamma is the peak enhancement of a swell, whose spectrum is narrower than
// that of a wind sea.
const swellGamma = 6

// swellSystem joins the swells and the old sea into the one system that the ride
// takes: all their energy, at the period and direction of the highest. Swell
// that nobody gave is left out: it is too long to be caught in deep water, so the
// speed is worked out without it while the limits on it stay unknown.
func (m *Moment) swellSystem() (wind.Swell, bool) {
	best := wind.Swell{Hs: m.Old.Hs, Tp: m.Old.Tp, From: m.Old.From}
	sum := m.Old.Hs * m.Old.Hs
	for _, s := range m.Swell {
		sum += s.Hs * s.Hs
		if s.Hs > best.Hs {
			best = s
		}
	}
	best.Hs = math.Sqrt(sum)
	return best, best.Hs > 0 && !(best.Tp < ripple)
}

// SwellSpeed returns the speed in m/s over the ground of the crests of a swell
// at a moment: over its depth, carried by the stream. NaN when it is not known
// or the stream blocks it.
func (w *Water) SwellSpeed(m Moment, s wind.Swell) float64 {
	along, _ := m.Stream.Resolve(s.From + 180)
	return wave.OnCurrent(s.Tp, m.waveDepth(), along).PhaseSpeed
}
