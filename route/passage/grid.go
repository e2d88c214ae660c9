package passage

import (
	"math"
	"slices"
)

// A channel is one quantity of the prepared water: what it is on a reach of
// the run at an instant.
type channel uint8

const (
	chSpeed   channel = iota // speed through the water on the course, m/s
	chSlow                   // the same in the slow case
	chFast                   // the same in the fast case
	chStreamE                // stream, m/s
	chStreamN
	chSlip  // leeway across the course, m/s, positive to the right
	chWindE // motion of the air, m/s
	chWindN
	chCatch  // share of waves that can be caught
	chWind   // mean wind speed, m/s
	chGust   // gust, m/s; NaN where the record has none
	chSea    // height of the wind sea, m
	chSwell  // height of all swell together, m
	chTotal  // both on the stream and the depth, m
	chSteep  // steepness of the wind sea on the stream
	chHeight // height of the tide above chart datum that limits on depth use, m
	chSurf   // height of wind sea and swell if nothing broke, m
	channels
)

// A node is every channel at one instant.
type node [channels]float64

// A cell is a short piece of the run: one step of the passage.
type cell struct {
	east, north  float64 // unit vector of its course
	length       float64 // m
	along        float64 // m, distance of its start from the start of the run
	charted      float64 // m, charted depth; NaN when not given
	awayE, awayN float64 // unit vector away from the nearest shore; NaN when not known
	leg          int
	avoid        bool
	traffic      bool
	silent       bool
}

// A grid is the water of one run in one forecast, prepared: every channel on
// every reach and at instants a fixed step apart. Between instants the channels
// are interpolated linearly; the middle of a reach stands for all of it.
// Unknown is NaN, and NaN stays NaN through the interpolation.
type grid struct {
	cells   []cell
	reaches []reach
	step    float64 // s between instants
	inv     float64 // 1/step
	last    float64 // the last instant, in steps
	steps   int     // number of instants
	nodes   []node  // by reach, then by instant
	asked   uint32  // the rules that a walk takes note for, as bits
	exits   *exitTimes

	// A grid that is filled as it is walked has fill, which works out one node,
	// and has, the nodes there are. It belongs to one goroutine.
	fill func(reach, instant int)
	has  []bool
}

// lay makes the grid one of these cells and instants, in the memory it has if
// that suffices. The nodes hold nothing yet.
func (g *grid) lay(cells []cell, reaches []reach, step float64, steps int) {
	n := len(reaches) * steps
	*g = grid{cells: cells, reaches: reaches, step: step, inv: 1 / step, last: float64(steps - 1), steps: steps,
		nodes: slices.Grow(g.nodes[:0], n)[:n], has: g.has}
}

// lazily makes the grid one that is filled as it is walked.
func (g *grid) lazily(fill func(reach, instant int)) {
	g.fill, g.has = fill, slices.Grow(g.has[:0], len(g.nodes))[:len(g.nodes)]
	clear(g.has)
}

// at returns the node of a reach at instant j.
func (g *grid) at(reach, j int) *node { return &g.nodes[reach*g.steps+j] }

// between returns the nodes of a reach at the instants around t seconds
// after the grid's epoch, and the fraction between them; nil outside the
// prepared time.
func (g *grid) between(reach int, t float64) (a, b *node, f float64) {
	x := t * g.inv
	if !(x >= 0 && x <= g.last) {
		return nil, nil, 0
	}
	j := int(x)
	if j == g.steps-1 {
		j--
	}
	k := reach*g.steps + j
	if g.fill != nil {
		g.need(k, reach, j)
	}
	pair := g.nodes[k : k+2 : k+2]
	return &pair[0], &pair[1], x - float64(j)
}

// need fills the two nodes from k on, if they are not yet.
func (g *grid) need(k, reach, j int) {
	if !g.has[k] {
		g.fill(reach, j)
		g.has[k] = true
	}
	if !g.has[k+1] {
		g.fill(reach, j+1)
		g.has[k+1] = true
	}
}

// between interpolates one channel.
func (ch channel) between(a, b *node, f float64) float64 { return a[ch] + f*(b[ch]-a[ch]) }

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
