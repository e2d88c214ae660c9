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
type times func(cell int, enter, leave float64)

// run steps a board along the grid from the start, in one lane. Only the
// expected lane takes note of what the rules ask about. visit may be nil.
func (g *grid) run(w *walk, start float64, by lane, visit times) {
	w.begin(start, by)
	t, caught := start, 0.0
	for r := range g.reaches {
		reach := &g.reaches[r]
		for i := reach.first; i < reach.after; i++ {
			c := &g.cells[i]
			dt, mid, a, b, f, end := g.cross(r, c, t, by)
			if end != arrived {
				w.fail(end, i, t)
				return
			}
			if by == laneExpected {
				w.observe(g, c, i, mid, dt, a, b, f)
				caught += dt * chCatch.between(a, b, f)
			}
			if visit != nil {
				visit(i, t, t+dt)
			}
			t += dt
		}
	}
	w.arrive(g, start, t, caught)
}

// run3 is run in all three lanes. They go side by side, so that the processor
// works on one while it waits for another.
func (g *grid) run3(mid, slow, fast *walk, start float64) {
	mid.begin(start, laneExpected)
	slow.begin(start, laneSlow)
	fast.begin(start, laneFast)
	t, ts, tf, caught := start, start, start, 0.0
	on, onSlow, onFast := true, true, true
	for r := range g.reaches {
		reach := &g.reaches[r]
		for i := reach.first; i < reach.after; i++ {
			c := &g.cells[i]
			if onSlow {
				if dt, _, _, _, _, end := g.cross(r, c, ts, laneSlow); end == arrived {
					ts += dt
				} else {
					slow.fail(end, i, ts)
					onSlow = false
				}
			}
			if onFast {
				if dt, _, _, _, _, end := g.cross(r, c, tf, laneFast); end == arrived {
					tf += dt
				} else {
					fast.fail(end, i, tf)
					onFast = false
				}
			}
			if on {
				if dt, at, a, b, f, end := g.cross(r, c, t, laneExpected); end == arrived {
					mid.observe(g, c, i, at, dt, a, b, f)
					caught += dt * chCatch.between(a, b, f)
					t += dt
				} else {
					mid.fail(end, i, t)
					on = false
				}
			}
		}
	}
	if on {
		mid.arrive(g, start, t, caught)
	}
	if onSlow {
		slow.arrive(g, start, ts, math.NaN())
	}
	if onFast {
		fast.arrive(g, start, tf, math.NaN())
	}
}

// begin forgets the last walk. What a lane without notes leaves of it is never
// read.
func (w *walk) begin(start float64, by lane) {
	if by == laneExpected {
		*w = walk{}
	}
	w.end, w.start, w.arrival, w.cell, w.stop, w.catch = arrived, start, math.NaN(), 0, 0, math.NaN()
}

func (w *walk) arrive(g *grid, start, t, caught float64) {
	if len(g.cells) == 0 || !(t <= start+longestPassage) {
		w.fail(noData, 0, start)
		return
	}
	w.arrival, w.stop = t, t
	w.catch = caught / (t - start)
}

// cross takes a board over a cell that it enters at t: at the speed made good in
// the middle of its crossing, found with one look ahead (the midpoint rule). It
// returns the time it takes, when it is in the middle, and the water there.
func (g *grid) cross(r int, c *cell, t float64, by lane) (dt, mid float64, a, b *node, f float64, end ending) {
	a, b, f = g.between(r, t)
	if a == nil {
		return 0, t, nil, nil, 0, noData
	}
	made := c.over(a, b, f, by)
	if !(made > slowest) {
		return 0, t, a, b, f, stopped(a, b, by)
	}
	half := 0.5 * c.length / made
	mid = t + half
	if next := f + half*g.inv; next <= 1 {
		f = next // still between the same instants
	} else if a, b, f = g.between(r, mid); a == nil {
		return 0, t, nil, nil, 0, noData
	}
	made = c.over(a, b, f, by)
	if !(made > slowest) {
		return 0, t, a, b, f, stopped(a, b, by)
	}
	return c.length / made, mid, a, b, f, arrived
}

// over returns the speed made good over a cell from its channels.
func (c *cell) over(a, b *node, f float64, by lane) float64 {
	slip := chSlip.between(a, b, f)
	return c.made(channel(by).between(a, b, f),
		chStreamE.between(a, b, f)+slip*c.north, chStreamN.between(a, b, f)-slip*c.east)
}

const (
	slowest        = 0.05      // m/s, below which a board makes no way
	longestPassage = 16 * 3600 // s
)

// stopped tells unknown speed from no progress.
func stopped(a, b *node, by lane) ending {
	if v := a[by] + b[by] + a[chSlip] + b[chSlip] + a[chStreamE] + b[chStreamE] + a[chStreamN] + b[chStreamN]; v != v {
		return noData
	}
	return noProgress
}

func (w *walk) fail(why ending, cell int, t float64) {
	w.end, w.cell, w.stop = why, cell, t
}

// Groups of rules that are taken note of together, as bits.
const (
	askWind  = 1<<LeastWind | 1<<GreatestWind | 1<<LeastWindChill
	askAngle = 1<<GreatestOffStern | 1<<GreatestOffshore | 1<<GreatestAgainst
	askSea   = 1<<LeastSea | 1<<GreatestSea | 1<<GreatestSwell | 1<<GreatestSteepness
	askDepth = 1<<LeastDepth | 1<<GreatestBreaking
)

// observe takes note of what the rules that are asked for ask about in one
// cell.
func (w *walk) observe(g *grid, c *cell, i int, t, dt float64, a, b *node, f float64) {
	asked := g.asked
	if asked&askWind != 0 {
		wind := chWind.between(a, b, f)
		w.ex[LeastWind].least(wind, i, t)
		w.ex[GreatestWind].most(wind, i, t)
	}
	if asked&(1<<GreatestGust) != 0 {
		w.ex[GreatestGust].most(chGust.between(a, b, f), i, t)
	}
	if asked&(askAngle|1<<GreatestStream) != 0 {
		w.directions(asked, c, i, t, a, b, f)
	}
	if asked&askSea != 0 {
		w.ex[LeastSea].least(chSea.between(a, b, f), i, t)
		w.ex[GreatestSea].most(chTotal.between(a, b, f), i, t)
		w.ex[GreatestSwell].most(chSwell.between(a, b, f), i, t)
		w.ex[GreatestSteepness].most(chSteep.between(a, b, f), i, t)
	}
	if asked&askDepth != 0 {
		depth := c.charted + chHeight.between(a, b, f)
		w.ex[LeastDepth].least(depth, i, t)
		w.ex[GreatestBreaking].most(chSurf.between(a, b, f)/depthOr(depth), i, t)
	}
	if asked&(1<<GreatestTimeToExit) != 0 {
		w.ex[GreatestTimeToExit].most(g.exits.at(i, t), i, t)
	}
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

// directions takes note of what wind and stream do to each other and to the
// course.
func (w *walk) directions(asked uint32, c *cell, i int, t float64, a, b *node, f float64) {
	se, sn := chStreamE.between(a, b, f), chStreamN.between(a, b, f)
	w.ex[GreatestStream].most(math.Sqrt(se*se+sn*sn), i, t)
	if asked&askAngle == 0 {
		return
	}
	we, wn := chWindE.between(a, b, f), chWindN.between(a, b, f)
	speed := math.Sqrt(we*we + wn*wn)
	// The angle off the stern is kept as its cosine, negated so that the
	// greatest angle is the greatest value; a calm has no angle and gives NaN.
	w.ex[GreatestOffStern].most(-(we*c.east+wn*c.north)/speed, i, t)
	w.ex[GreatestOffshore].most(we*c.awayE+wn*c.awayN, i, t)
	// The stream's component towards where the wind comes from.
	w.ex[GreatestAgainst].most(-(se*we+sn*wn)/speed, i, t)
}

// depthOr keeps a dry place from dividing by nothing: no water under a wave
// is the worst ratio there is.
func depthOr(depth float64) float64 {
	if depth <= 0 {
		return 0
	}
	return depth
}
