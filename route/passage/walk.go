package passage

import "math"

// An extreme is the worst value of a quantity on the way, and where.
type extreme struct {
	value   float64 // the worst so far
	cell    int     // where it was met
	time    float64 // s after the epoch
	unknown bool    // some of the way the quantity was not known
	any     bool
}

// most keeps the greatest value; NaN marks the quantity unknown.
func (e *extreme) most(v float64, cell int, t float64) {
	if v != v {
		e.miss(cell, t)
	} else if !e.any || v > e.value {
		e.value, e.cell, e.time, e.any = v, cell, t, true
	}
}

// least keeps the smallest value.
func (e *extreme) least(v float64, cell int, t float64) {
	if v != v {
		e.miss(cell, t)
	} else if !e.any || v < e.value {
		e.value, e.cell, e.time, e.any = v, cell, t, true
	}
}

func (e *extreme) miss(cell int, t float64) {
	if !e.unknown && !e.any {
		e.cell, e.time = cell, t
	}
	e.unknown = true
}

// An ending says how a walk along the run ended.
type ending uint8

const (
	arrived    ending = iota
	noProgress        // the track cannot be held, or the board makes no way along it
	noData            // the forecast, tide or stream ends, or the speed is not known
)

// A lane is which of the three speeds a walk uses.
type lane channel

const (
	laneExpected = lane(chSpeed)
	laneSlow     = lane(chSlow)
	laneFast     = lane(chFast)
)

// A walk is one passage along the run: the result of stepping it, and the
// scratch it needs, so that stepping allocates nothing.
type walk struct {
	end     ending
	start   float64 // s after the epoch
	arrival float64 // s after the epoch; NaN unless arrived
	cell    int     // where it ended, when not arrived
	stop    float64 // s after the epoch, when not arrived
	silent  float64 // s without signal
	catch   float64 // mean over time of the share of waves that can be caught
	avoid   extreme // 1 where an area to keep out of is entered
	traffic extreme
	ex      [ruleCount]extreme
}

// times is what a walk reports at each cell when asked for a timeline.
type times func(cell int, enter, leave, made float64, a, b []float64, f float64)

// run steps a board along the grid from the start, in one lane. Each cell is
// crossed at the speed made good in the middle of its crossing, found with one
// look ahead (the midpoint rule). visit may be nil.
func (g *grid) run(w *walk, start float64, by lane, visit times) {
	*w = walk{start: start, arrival: math.NaN()}
	t := start
	var caught float64
	for i := range g.cells {
		c := &g.cells[i]
		a, b, f, ok := g.between(i, t)
		if !ok {
			w.fail(noData, i, t)
			return
		}
		made := c.over(a, b, f, by)
		if !(made > slowest) {
			w.fail(stopped(a, b, by), i, t)
			return
		}
		mid := t + 0.5*c.length/made
		if a, b, f, ok = g.between(i, mid); !ok {
			w.fail(noData, i, t)
			return
		}
		made = c.over(a, b, f, by)
		if !(made > slowest) {
			w.fail(stopped(a, b, by), i, t)
			return
		}
		dt := c.length / made
		w.observe(c, i, mid, dt, a, b, f)
		caught += dt * (a[chCatch] + f*(b[chCatch]-a[chCatch]))
		if visit != nil {
			visit(i, t, t+dt, made, a, b, f)
		}
		t += dt
	}
	if len(g.cells) == 0 || !(t <= start+longestPassage) {
		w.fail(noData, 0, start)
		return
	}
	w.arrival, w.stop = t, t
	w.catch = caught / (t - start)
}

// over returns the speed made good over a cell from its channels.
func (c *cell) over(a, b []float64, f float64, by lane) float64 {
	slip := a[chSlip] + f*(b[chSlip]-a[chSlip])
	return c.made(a[by]+f*(b[by]-a[by]),
		a[chStreamE]+f*(b[chStreamE]-a[chStreamE])+slip*c.north,
		a[chStreamN]+f*(b[chStreamN]-a[chStreamN])-slip*c.east)
}

const (
	slowest        = 0.05      // m/s, below which a board makes no way
	longestPassage = 16 * 3600 // s
)

// stopped tells unknown speed from no progress.
func stopped(a, b []float64, by lane) ending {
	if v := a[by] + b[by] + a[chSlip] + b[chSlip] + a[chStreamE] + b[chStreamE] + a[chStreamN] + b[chStreamN]; v != v {
		return noData
	}
	return noProgress
}

func (w *walk) fail(why ending, cell int, t float64) {
	w.end, w.cell, w.stop = why, cell, t
}

// observe takes note of everything a rule asks about in one cell.
func (w *walk) observe(c *cell, i int, t, dt float64, a, b []float64, f float64) {
	at := func(ch channel) float64 { return a[ch] + f*(b[ch]-a[ch]) }
	wind := at(chWind)
	w.ex[LeastWind].least(wind, i, t)
	w.ex[GreatestWind].most(wind, i, t)
	w.ex[GreatestGust].most(at(chGust), i, t)
	along, across := at(chAlong), at(chAcross)
	// The angle off the stern is kept as its cosine, negated so that the
	// greatest angle is the greatest value; a calm has no angle and gives NaN.
	w.ex[GreatestOffStern].most(-along/math.Sqrt(along*along+across*across), i, t)
	w.ex[GreatestOffshore].most(at(chOffshore), i, t)
	sea, total := at(chSea), at(chTotal)
	w.ex[LeastSea].least(sea, i, t)
	w.ex[GreatestSea].most(total, i, t)
	w.ex[GreatestSwell].most(at(chSwell), i, t)
	w.ex[GreatestSteepness].most(at(chSteep), i, t)
	se, sn := at(chStreamE), at(chStreamN)
	w.ex[GreatestStream].most(math.Sqrt(se*se+sn*sn), i, t)
	// The stream's component towards where the wind comes from.
	ux, uy := along*c.east+across*c.north, along*c.north-across*c.east
	w.ex[GreatestAgainst].most(-(se*ux+sn*uy)/math.Sqrt(ux*ux+uy*uy), i, t)
	depth := c.charted + at(chHeight)
	w.ex[LeastDepth].least(depth, i, t)
	w.ex[GreatestBreaking].most(total/depthOr(depth), i, t)
	w.ex[GreatestTimeToExit].most(lerp(a[chExit], b[chExit], f), i, t)
	if c.silent {
		w.silent += dt
	}
	if c.avoid {
		w.avoid.most(1, i, t)
	}
	if c.traffic {
		w.traffic.most(1, i, t)
	}
}

// depthOr keeps a dry place from dividing by nothing: no water under a wave
// is the worst ratio there is.
func depthOr(depth float64) float64 {
	if depth <= 0 {
		return 0
	}
	return depth
}
