package passage

import "math"

// A channel is one quantity of the prepared water: what it is at a cell of
// the run at an instant.
type channel uint8

const (
	chSpeed   channel = iota // speed through the water on the cell's course, m/s
	chSlow                   // the same in the slow case
	chFast                   // the same in the fast case
	chStreamE                // stream, m/s
	chStreamN
	chSlip   // leeway across the course, m/s, positive to the right
	chWind   // mean wind speed, m/s
	chGust   // gust, m/s; the mean where the record has none and none is asked for
	chAlong  // component of the wind along the cell's course, m/s, positive from astern
	chAcross // component of the wind across it, m/s, positive from the left
	chOffshore
	chSea    // height of the wind sea, m
	chSwell  // height of all swell together, m
	chTotal  // both, m
	chSteep  // steepness of the wind sea on the stream
	chCatch  // share of waves that can be caught
	chHeight // height of the tide above chart datum, m
	chExit   // time to the nearest exit that is reachable and landable, s; +Inf for none
	channels
)

// A cell is a short piece of the run: one step of the passage.
type cell struct {
	east, north float64 // unit vector of its course
	length      float64 // m
	along       float64 // m, distance of its start from the start of the run
	charted     float64 // m, charted depth; NaN when not given
	leg         int
	avoid       bool
	traffic     bool
	silent      bool
}

// A grid is the water of one run in one forecast, prepared: every channel at
// every cell and at instants a fixed step apart. Between instants the channels
// are interpolated linearly; a cell's own value stands for all of the cell.
// Unknown is NaN, and NaN stays NaN through the interpolation.
type grid struct {
	cells []cell
	step  float64 // s between instants
	steps int     // number of instants
	node  []float64
}

func newGrid(cells []cell, step float64, steps int) *grid {
	g := &grid{cells: cells, step: step, steps: steps, node: make([]float64, len(cells)*steps*int(channels))}
	for i := range g.node {
		g.node[i] = math.NaN()
	}
	return g
}

// at returns the channels of cell i at instant j.
func (g *grid) at(i, j int) []float64 {
	k := (i*g.steps + j) * int(channels)
	return g.node[k : k+int(channels) : k+int(channels)]
}

// between returns the channels of cell i at the instants around t seconds
// after the grid's epoch, and the fraction between them; ok is false outside
// the prepared time.
func (g *grid) between(i int, t float64) (a, b []float64, f float64, ok bool) {
	x := t / g.step
	if !(x >= 0 && x <= float64(g.steps-1)) {
		return nil, nil, 0, false
	}
	j := int(x)
	if j == g.steps-1 {
		j--
	}
	if j < 0 {
		return nil, nil, 0, false
	}
	k := (i*g.steps + j) * int(channels)
	n := int(channels)
	return g.node[k : k+n : k+n], g.node[k+n : k+2*n : k+2*n], x - float64(j), true
}

// lerp interpolates; an unknown end makes an unknown value, but an infinite
// one (no exit) must not turn into NaN at the other end.
func lerp(a, b, f float64) float64 {
	if f == 0 {
		return a
	}
	if math.IsInf(a, 1) || math.IsInf(b, 1) {
		return a + b
	}
	return a + f*(b-a)
}

// made returns the speed made good along the course of a cell by a board that
// makes speed v through a stream, holding the track: the stream across the
// track must be within v, and there must be progress along it.
func (c *cell) made(v, se, sn float64) float64 {
	across := se*c.north - sn*c.east // stream to the right of the track
	along := se*c.east + sn*c.north
	left := v*v - across*across
	if !(left >= 0 && v >= 0) {
		return math.NaN()
	}
	return math.Sqrt(left) + along
}
