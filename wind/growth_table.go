package wind

import (
	"math"
	"sync"
)

// The universal growth table: the fast path of the hindcast.
//
// Without dimensions, a law is three surfaces over the fetch x and the depth d: the
// height h, the period t and the time τ in which a group travels the fetch. All three
// are smooth in ln x and ln d, rise with x, and are asked for both ways: which fetch
// has this height, which fetch is reached after this time. So their logarithms are
// kept on a grid of equal steps in ln x and ln d, with one more row for deep water, and
// a step of the hindcast is: mix four rows once for the depth, find a cell by bisection,
// and solve a cubic in it. The cubic of a cell is the same whichever way it is asked, so
// that going from a height to a fetch and back returns the height to rounding, and
// splitting a steady step changes nothing.
//
// The laws' exact forms, through [Grow], are the oracle; the tests hold the table to
// 2e-4 of them (3 % at the kink in depth of the CEM).

const (
	tableStepX = 0.125
	tableStepD = 0.2
	tableNX    = 176 // e^22: from a hundred-millionth of the fetch of full development to forty times it
	tableND    = 70  // e^14
	tablePad   = 30  // columns above the fetch of full development
)

type quantity int

const (
	heightOf quantity = iota // ln h
	periodOf                 // ln t
	timeOf                   // ln τ
	quantities
)

type growthTable struct {
	x0, d0 float64 // ln of the first fetch and of the first depth
	// rows[q][k*tableNX+i]: quantity q at depth row k and fetch column i; the last row
	// is deep water.
	rows [quantities][]float64
}

// newGrowthTable tabulates a law. It costs some milliseconds.
func newGrowthTable(law Law) *growthTable {
	// The scale of the table comes from the law itself, in a middling wind: only a few
	// laws state full development in other units, and those by a factor near one.
	inf := math.Inf(1)
	lim := law.Limits(10)
	full := developedFetch(law, 10, inf)
	if !(full < 1e12) {
		full = 1e12
	}
	// Laws that only approach full development have no fetch of it; 99.9 % is near.
	near := reach(func(x float64) float64 { h, _ := law.Growth(x, inf); return h }, 0.999*lim.Height)
	full = math.Min(full, near)
	g := &growthTable{
		x0: math.Log(full) + (tablePad-tableNX)*tableStepX,
		d0: math.Log(600*lim.Period*lim.Period/(4*math.Pi*math.Pi)) - (tableND-1)*tableStepD,
	}
	for q := range g.rows {
		g.rows[q] = make([]float64, (tableND+1)*tableNX)
	}
	for k := range tableND + 1 {
		depth := inf
		if k < tableND {
			depth = math.Exp(g.d0 + float64(k)*tableStepD)
		}
		g.fill(law, k, depth)
	}
	return g
}

func (g *growthTable) fill(law Law, k int, depth float64) {
	at := func(u float64) (h, t, rate float64) {
		x := math.Exp(u)
		h, t = law.Growth(x, depth)
		return h, t, x / groupSpeed(t, depth)
	}
	rate := func(x float64) float64 { _, _, r := at(math.Log(x)); return r }
	elapsed := timeOver(law, math.Exp(g.x0), depth)
	if !(elapsed > 0) {
		elapsed = firstTime(rate, g.x0)
	}
	const z = 0.7745966692414834 // three Gauss points a cell
	for i := range tableNX {
		u := g.x0 + float64(i)*tableStepX
		if i > 0 {
			_, _, a := at(u - tableStepX*(1+z)/2)
			_, _, b := at(u - tableStepX/2)
			_, _, c := at(u - tableStepX*(1-z)/2)
			elapsed += tableStepX * (5*a + 8*b + 5*c) / 18
		}
		h, t, _ := at(u)
		j := k*tableNX + i
		g.rows[heightOf][j] = math.Log(h)
		g.rows[periodOf][j] = math.Log(t)
		g.rows[timeOf][j] = math.Log(elapsed)
	}
}

// top returns ln x of the last column.
func (g *growthTable) top() float64 { return g.x0 + (tableNX-3)*tableStepX }

// A curve is the table at one depth: up to four rows and their weights.
type curve struct {
	g     *growthTable
	first int // of the rows
	n     int // 4, or 1 in deep water
	w     [4]float64
}

// at returns the curve of the dimensionless depth.
func (g *growthTable) at(depth float64) curve {
	k := (math.Log(depth) - g.d0) / tableStepD
	switch {
	case math.IsInf(depth, 1):
		return curve{g: g, first: tableND, n: 1, w: [4]float64{1}}
	case !(k < tableND-1):
		// As good as deep, but not the row of deep water: some printed sets have a law of
		// their own there that the deep limit of their other law does not meet.
		return curve{g: g, first: tableND - 1, n: 1, w: [4]float64{1}}
	}
	if k < 0 {
		k = 0 // a film of water; the caller remarks on breaking
	}
	i := min(max(int(k)-1, 0), tableND-4)
	s := k - float64(i) // in [0, 3]
	// Lagrange's cubic through four rows.
	a, b, c, d := s, s-1, s-2, s-3
	return curve{g: g, first: i, n: 4, w: [4]float64{-b * c * d / 6, a * c * d / 2, -a * b * d / 2, a * b * c / 6}}
}

// node returns quantity q in column i.
func (c *curve) node(q quantity, i int) float64 {
	r := c.g.rows[q]
	j := c.first*tableNX + i
	if c.n == 1 {
		return r[j]
	}
	return c.w[0]*r[j] + c.w[1]*r[j+tableNX] + c.w[2]*r[j+2*tableNX] + c.w[3]*r[j+3*tableNX]
}

// cubic returns the coefficients of the cell from column i to i+1 in s = 0 to 1,
// v = a0 + s(a1 + s(a2 + s·a3)), through the four nodes around it.
func (c *curve) cubic(q quantity, i int) (a0, a1, a2, a3 float64) {
	p0, p1, p2, p3 := c.node(q, i-1), c.node(q, i), c.node(q, i+1), c.node(q, i+2)
	return p1, -p0/3 - p1/2 + p2 - p3/6, (p0 + p2 - 2*p1) / 2, (p3 - p0 + 3*(p1-p2)) / 6
}

// value returns quantity q (a logarithm) at u = ln x.
func (c *curve) value(q quantity, u float64) float64 {
	k := (u - c.g.x0) / tableStepX
	switch {
	case k >= tableNX-3: // beyond the table a sea has long stopped growing: straight on
		a, b := c.node(q, tableNX-4), c.node(q, tableNX-3)
		if math.IsInf(k, 1) {
			return b
		}
		return b + (b-a)*(k-(tableNX-3))
	case k >= 1:
		i := int(k)
		s := k - float64(i)
		a0, a1, a2, a3 := c.cubic(q, i)
		return a0 + s*(a1+s*(a2+s*a3))
	default: // before it, the power law; NaN comes here too
		a, b := c.node(q, 1), c.node(q, 2)
		return a + (b-a)*(k-1)
	}
}

// inverse returns u = ln x at which quantity q is v: -Inf for v = -Inf, and beyond what
// the curve reaches in the table, on along its last slope. near is a guess of the answer
// that saves looking for the cell; any number will do, NaN too.
func (c *curve) inverse(q quantity, v, near float64) float64 {
	const first, last = 1, tableNX - 3
	lo := (first + last) / 2
	if k := (near - c.g.x0) / tableStepX; k < first {
		lo = first
	} else if k >= last {
		lo = last - 1
	} else if k == k {
		lo = int(k)
	}
	// Widen the bracket from there, twice as far each time.
	hi := lo
	if c.node(q, lo) <= v {
		for step := 1; hi < last; step *= 2 {
			lo, hi = hi, min(hi+step, last)
			if !(c.node(q, hi) <= v) {
				break
			}
		}
		if end := c.node(q, last); hi == last && !(v < end) { // NaN cannot come here
			slope := end - c.node(q, last-1)
			if slope <= 0 {
				return math.Inf(1)
			}
			return c.g.x0 + tableStepX*(last+(v-end)/slope)
		}
	} else {
		for step := 1; lo > first; step *= 2 {
			hi, lo = lo, max(lo-step, first)
			if c.node(q, lo) <= v {
				break
			}
		}
		if start := c.node(q, first); lo == first && !(start <= v) { // NaN comes here
			return c.g.x0 + tableStepX*(first+(v-start)/(c.node(q, first+1)-start))
		}
	}
	for hi-lo > 1 {
		mid := (lo + hi) / 2
		if c.node(q, mid) <= v {
			lo = mid
		} else {
			hi = mid
		}
	}
	a0, a1, a2, a3 := c.cubic(q, lo)
	a0 -= v
	s := -a0 / (a1 + a2 + a3) // the chord: the cell's cubic is nearly straight
	for range 8 {
		f := a0 + s*(a1+s*(a2+s*a3))
		d := a1 + s*(2*a2+3*a3*s)
		if !(d > 0) {
			break
		}
		step := f / d
		s -= step
		if math.Abs(step) < 1e-15 {
			break
		}
	}
	s = math.Max(0, math.Min(1, s))
	return c.g.x0 + tableStepX*(float64(lo)+s)
}

// tables keeps one table for each built-in law; they are made when first asked for and
// never change.
var tables = func() map[Law]func() *growthTable {
	m := map[Law]func() *growthTable{}
	for _, law := range Laws() {
		m[law] = sync.OnceValue(func() *growthTable { return newGrowthTable(law) })
	}
	return m
}()

func tableFor(law Law) *growthTable {
	if s, ok := law.(smith); ok {
		s.along = 1 // the angle is in the scale, not in the shape
		law = s
	}
	if builtIn(law) {
		if f := tables[law]; f != nil {
			return f()
		}
	}
	return newGrowthTable(law)
}

// builtIn reports whether the law is one of ours, and so a valid key of a map: an app's
// own law may hold a slice.
func builtIn(law Law) bool {
	switch law.(type) {
	case bretschneider, breugem, young, powerLaw, hwangWang, jonswap, wilson, spm, kamphuis, cem, smith, groen:
		return true
	}
	return false
}
