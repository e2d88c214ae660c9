package passage

import (
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/route"
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

	Wind     wind.Wind // over the ground, at 10 m
	OffStern float64   // angle of the wind off the stern, degrees, 0 to 180; NaN in a calm
	Offshore float64   // component of the wind that blows away from the nearest shore, m/s

	Stream     route.Velocity
	TideHeight float64 // above chart datum, m
	Charted    float64 // charted depth, m
	Depth      float64 // of water, m

	Sea       wind.Sea // the wind sea
	Old       wind.Sea // what earlier winds left
	Swell     []wind.Swell
	SwellHs   float64 // all swell and old sea together, m
	TotalHs   float64 // wind sea and swell together, m
	Bump      wave.Wave
	Steepness float64 // of the wind sea on the stream: height over length

	Ride     ride.Ride // what the sea brings the paddler; zero when unknown
	Speed    float64   // through the water on the course, m/s
	Slow     float64   // slower, in the slow case
	Fast     float64   // faster, in the fast case
	Slip     float64   // leeway of the board across the course, m/s, positive to the right
	Heading  float64   // to hold the course, degrees true; NaN when it cannot be held
	OverGrd  float64   // speed over the ground, m/s; NaN when the course cannot be held
	ShoreAt  float64   // distance to the nearest shore, m; NaN without a coastline
	SeaWords []string  // remarks on the sea in words

	rideable float64 // least share of waves that one of the party can catch
}

// An hour is what the whole run shares at one instant.
type hour struct {
	at     time.Time
	height float64
	swells []wind.Swell
	swell  bool // known
}

func (w *Water) hour(at time.Time) hour {
	h := hour{at: at, height: math.NaN()}
	if w.day.Tide != nil {
		h.height = w.day.Tide.Height(at)
	}
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
		TideHeight: h.height, Charted: c.charted, Depth: c.charted + h.height,
		Stream: stream, Offshore: nan, OffStern: nan,
		SwellHs: nan, TotalHs: nan, Steepness: nan, Heading: nan, OverGrd: nan, ShoreAt: nan,
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
	air := route.Velocity(m.Wind.Velocity())
	if m.Wind.Speed > 0 {
		m.OffStern = math.Abs(angle.Diff(m.Wind.From+180, m.Course))
	}
	if s := w.shores[i]; s.known {
		m.ShoreAt = s.distance
		along, _ := air.Resolve(s.bearing + 180)
		m.Offshore = along
	}
	w.onStream(&m, state, h.swell)
	w.paddle(&m, air)
	return m
}

// onStream adds the swell and takes the wind sea onto the stream.
func (w *Water) onStream(m *Moment, state wind.State, swellKnown bool) {
	if swellKnown && state.Known() {
		sum := state.Old.Hs * state.Old.Hs
		for _, s := range m.Swell {
			sum += s.Hs * s.Hs
		}
		m.SwellHs = math.Sqrt(sum)
		m.TotalHs = math.Sqrt(sum + state.Sea.Hs*state.Sea.Hs)
	}
	if !state.Sea.Known() || state.Sea.Hs == 0 {
		if state.Sea.Known() {
			m.Steepness = 0
		}
		return
	}
	depth := m.waveDepth()
	m.Bump = wave.Solve(state.Sea.Tp, depth)
	m.Steepness = state.Sea.Hs / m.Bump.Length
	if along, _ := m.Stream.Resolve(state.Sea.From + 180); along == along {
		on := wave.OnCurrent(state.Sea.Tp, depth, along)
		if on.State == wave.Blocked { // it breaks there
			m.Steepness = breakingSteepness
		} else {
			m.Steepness *= on.SteepnessRatio
		}
	}
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
	if m.Sea.Hs > 0 {
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
	return best, best.Hs > 0
}

// SwellSpeed returns the speed in m/s over the ground of the crests of a swell
// at a moment: over its depth, carried by the stream. NaN when it is not known
// or the stream blocks it.
func (w *Water) SwellSpeed(m Moment, s wind.Swell) float64 {
	along, _ := m.Stream.Resolve(s.From + 180)
	return wave.OnCurrent(s.Tp, m.waveDepth(), along).PhaseSpeed
}
