package passage

import (
	"math"

	"followingsea.example/internal/angle"
	"followingsea.example/route"
	"followingsea.example/wave"
	"followingsea.example/wind"
)

// ReflectionReach is how far from a steep shore, in metres, the waves it throws
// back are counted: by then a short sea has spread and broken up. Proposal, no
// published source.
const ReflectionReach = 500.0

// A wall is the steep shore beside a reach of the run; a part of zero is none.
type wall struct {
	part              float64 // of the height that is thrown back
	distance, bearing float64 // of the shore, from the run
	kind              string
}

// onWater takes the wind sea, what is left of the old sea and each swell onto
// the water of the place, one by one, and adds them up:
//
//	on the stream   grown by wave action where it runs against them, at most to
//	                the steepness at which they break; a stream that runs with
//	                them, and lowers them, is left out
//	on the depth    grown by shoaling where they get higher by it, from the depth
//	                along the fetch for the sea and from deep water for a swell
//	off a wall      with a wall of the part K ahead of them, (1 + K) within a
//	                length of it, where crests meet in step, and √(1 + K²)
//	                further out, where energies add
//
// Shoaling alone would grow a sea past the height at which it breaks: SurfHs is
// that sum, which is compared with the depth; TotalHs is cut at the height of
// breaking, but never below what comes in. Nothing here makes a sea lower.
//
// Stream and depth are part of it: where one is not known, nor is the sum.
func (w *Water) onWater(m *Moment, state wind.State, swellKnown bool, by wall) {
	depth, stream := m.waveDepth(), m.Stream.East == m.Stream.East && m.Stream.North == m.Stream.North
	if state.Sea.Known() && stream && m.Depth == m.Depth {
		m.Steepness = 0
		if state.Sea.Hs > 0 {
			m.onStream(depth)
		}
	} else if state.Sea.Hs > 0 {
		m.Bump = wave.Solve(state.Sea.Tp, depth)
	}
	if !swellKnown || !state.Known() {
		return
	}
	fetch := math.Inf(1)
	if charted, ok := w.run.FetchDepth.Get(); ok {
		fetch = charted + m.TideHeight
	}
	s := sums{m: m, depth: math.Max(m.LowDepth, leastWaveDepth), by: by}
	s.add(state.Sea.Hs, state.Sea.Tp, state.Sea.From, fetch)
	s.add(state.Old.Hs, state.Old.Tp, state.Old.From, fetch)
	m.SwellHs = state.Old.Hs * state.Old.Hs
	for _, x := range m.Swell {
		m.SwellHs += x.Hs * x.Hs
		s.add(x.Hs, x.Tp, x.From, math.Inf(1))
	}
	m.SwellHs = math.Sqrt(m.SwellHs)
	s.known = stream && m.LowDepth == m.LowDepth
	s.end()
}

// onStream takes the steepness of the wind sea onto the stream.
func (m *Moment) onStream(depth float64) {
	m.Bump = wave.Solve(m.Sea.Tp, depth)
	m.Steepness = m.Sea.Hs / m.Bump.Length
	along, _ := m.Stream.Resolve(m.Sea.From + 180)
	on := wave.OnCurrent(m.Sea.Tp, depth, along)
	if m.Blocked = on.State == wave.Blocked; m.Blocked { // it breaks there
		m.Steepness = breakingSteepness
	} else { // and before that
		m.Steepness = math.Min(m.Steepness*on.SteepnessRatio, breakingSteepness)
	}
}

// sums adds up the systems of a moment.
type sums struct {
	m     *Moment
	depth float64
	by    wall
	known bool

	surf, cut float64 // squares of heights: shoaled, and not
	back      float64 // square of the height of what is thrown back
	highest   float64 // the height of the highest system
	period    float64 // and its period
}

// add takes one system onto the water.
func (s *sums) add(hs, tp, from, fetch float64) {
	if hs == 0 {
		return
	}
	h := hs
	if along, _ := s.m.Stream.Resolve(from + 180); along < 0 {
		on := wave.OnCurrent(tp, s.depth, along)
		if h *= math.Max(1, on.HeightRatio); on.State == wave.Blocked {
			h = hs
		} else { // a sea breaks at half the steepness of a single wave
			h = math.Max(hs, math.Min(h, on.BreakingHeight()/2))
		}
	}
	grown := h
	// In water deeper than a sixth of its deep length no wave has begun to grow.
	if deep := wave.Length(tp, math.Inf(1)); s.depth < fetch && s.depth < deep/6 {
		grown *= math.Max(1, wave.Shoal(1, tp, fetch, s.depth))
	}
	factor := 1.0
	if s.by.part > 0 && math.Abs(angle.Diff(from+180, s.by.bearing)) < 90 {
		k := s.by.part
		s.back += k * k * h * h
		if s.by.distance <= wave.Length(tp, s.depth) {
			factor = (1 + k) * (1 + k)
		} else {
			factor = 1 + k*k
		}
	}
	s.surf, s.cut = s.surf+grown*grown*factor, s.cut+h*h*factor
	if h > s.highest {
		s.highest, s.period = h, tp
	}
}

// end closes the sums.
func (s *sums) end() {
	m := s.m
	if !s.known {
		return
	}
	m.Reflected, m.SurfHs, m.TotalHs = math.Sqrt(s.back), math.Sqrt(s.surf), math.Sqrt(s.cut)
	if s.highest == 0 {
		return
	}
	m.BreakHs = breakHeight(s.depth, s.period)
	m.TotalHs = math.Max(m.TotalHs, math.Min(m.SurfHs, m.BreakHs))
}

// breakHeight is the significant height in metres at which a sea of a peak
// period begins to break over a level bottom: Goda's law for significant
// heights, in deep water its limit.
func breakHeight(depth, tp float64) float64 {
	if math.IsInf(depth, 1) {
		return wave.GodaSignificant.A * wave.Length(tp, math.Inf(1))
	}
	return wave.GodaSignificant.Height(depth, tp, 0)
}

// findWalls finds the steep shore nearest to every cell, within
// ReflectionReach.
func (s *survey) findWalls() error {
	s.walls = make([]wall, len(s.cells))
	for _, shore := range s.run.Steep {
		line, err := route.NewCoast([][]route.Point{shore.Line}, nil)
		if err != nil {
			return err
		}
		part := throwsBack(shore)
		for i, p := range s.centres {
			near, err := line.NearestShore(p)
			if err != nil {
				return err
			}
			old := s.walls[i]
			if near.Distance <= ReflectionReach && (old.part == 0 || near.Distance < old.distance) {
				s.walls[i] = wall{part: part, distance: near.Distance, bearing: near.Bearing, kind: shore.Kind}
			}
		}
	}
	return nil
}

// throwsBack is the part of a wave's height that a shore reflects: the number
// given, or the upper end of what is usual for its kind.
func throwsBack(s route.SteepShore) float64 {
	if x, ok := s.Reflects.Get(); ok {
		return x
	}
	kinds := wave.Shores()
	if s.Kind == "boulders" {
		return kinds[2].Up // a slope of rubble stones
	}
	return kinds[0].Up // a vertical wall
}

// same reports whether two neighbouring cells lie beside the same wall, or
// both beside none.
func (a wall) same(b wall) bool { return a.part == b.part && a.kind == b.kind }

// nearestWall is the one that stands for a row of cells.
func nearestWall(ws []wall) wall {
	best := ws[0]
	for _, x := range ws[1:] {
		if x.part > 0 && x.distance < best.distance {
			best = x
		}
	}
	return best
}
