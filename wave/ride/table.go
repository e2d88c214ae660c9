package ride

import (
	"errors"
	"fmt"
	"math"
	"runtime"
	"sync"
	"sync/atomic"
)

// ErrTable marks a table that cannot be made, or not as exactly as asked.
var ErrTable = errors.New("ride: no table")

// Quick is what a [Table] keeps of a [Ride].
type Quick struct {
	Speed          float64 // m/s, mean through the water
	Spread         float64 // m/s, of Speed
	FlatSpeed      float64 // m/s, without waves
	CatchesPerHour float64
}

// Table is the answer of [Prepared.Sea] for wind seas of any height, period and
// angle in any wind, read by interpolation in about the time of a dozen
// exponentials. Depth, current, swell and peak enhancement are those it was
// made for. It never changes and is safe for concurrent use.
type Table struct {
	axes     [4]axis // logarithm of the period, steepness, wind, angle
	nodes    []quickNode
	flat     []float64
	flatStep float64
	gravity  float64
	err      float64
}

type quickNode struct{ gain, spread, catches float32 }

// axis is a row of nodes, close where the answer bends.
type axis struct {
	nodes []float64
	first [64]uint8 // the interval that each 64th of the range begins in
	scale float64
}

func (a *axis) index() {
	lo, hi := a.nodes[0], a.nodes[len(a.nodes)-1]
	a.scale = float64(len(a.first)) / (hi - lo)
	i := 0
	for j := range a.first {
		for i < len(a.nodes)-2 && a.nodes[i+1] <= lo+float64(j)/a.scale {
			i++
		}
		a.first[j] = uint8(i)
	}
}

// place returns the interval of x and the part of the way through it.
func (a *axis) place(x float64) (int, float64) {
	j := min(max(int((x-a.nodes[0])*a.scale), 0), len(a.first)-1)
	i := int(a.first[j])
	for i < len(a.nodes)-2 && x >= a.nodes[i+1] {
		i++
	}
	return i, (x - a.nodes[i]) / (a.nodes[i+1] - a.nodes[i])
}

func (a *axis) middle(i int) float64 { return (a.nodes[i] + a.nodes[i+1]) / 2 }

// The range of a table. The logarithm of the period and the steepness
// Hs/(g Tp²/2π) are what the gain is smooth in.
const (
	tableTpLow, tableTpHigh     = 1.2, 14.0
	tableSteepHigh              = 0.065
	tableWindLow, tableWindHigh = -8.0, 20.0
	tableOffHigh                = 90.0
)

// Table makes the table for seas like like: its Depth, Current, Gravity, Swell
// and WindSea.Gamma are kept, the rest is what At asks for. At every node it
// solves the sea; in the middle of every edge between nodes it is compared with
// the sea, and made finer until the sum of the greatest differences in speed
// along the four edges of a cell is at most within m/s. 0 asks for 0.2; typical
// differences are a thirtieth of that. The work is shared by all processors. Proposal, no published source.
//
// Errors: [ErrSea] for a field of like outside its range; [ErrTable] if within
// is not 0.01 or more, or a million nodes do not suffice.
func (p *Prepared) Table(like Sea, within float64) (*Table, error) {
	if within == 0 {
		within = 0.2
	}
	if !(within >= 0.01) {
		return nil, fmt.Errorf("%w: within %v m/s is not at least 0.01", ErrTable, within)
	}
	like.WindSea = System{Hs: 1, Tp: 4, Gamma: like.WindSea.Gamma}
	like.Wind = 0
	if err := like.check(); err != nil {
		return nil, err
	}
	t := &Table{gravity: like.gravity()}
	t.fillFlat(p)
	// Four axes share the error, and rarely are all at their worst together.
	for share := 0.27; ; share *= 0.8 {
		n := 1
		for i := range t.axes {
			t.lay(p, like, i, share*within)
			n *= len(t.axes[i].nodes)
		}
		if n > 1_000_000 {
			return nil, fmt.Errorf("%w: %d nodes leave a difference of %.3g m/s, above %v", ErrTable, n, t.err, within)
		}
		t.fill(p, like)
		if t.check(p, like); t.err <= within {
			return t, nil
		}
	}
}

// lay places the nodes of one axis: intervals are halved until, on lines along
// it through a sample of the others, the middle is within tol of the mean of
// the ends.
func (t *Table) lay(p *Prepared, like Sea, i int, tol float64) {
	start := [4][]float64{
		{math.Log(tableTpLow), math.Log(2.2), math.Log(4), math.Log(tableTpHigh)},
		{0, tableSteepHigh / 2, tableSteepHigh},
		{tableWindLow, 0, 10, tableWindHigh},
		{0, tableOffHigh / 2, tableOffHigh},
	}
	sample := [4][]float64{
		{math.Log(1.5), math.Log(2), math.Log(2.4), math.Log(3), math.Log(4), math.Log(6), math.Log(11)},
		{0.01, 0.02, 0.03, 0.045, tableSteepHigh},
		{-6, 0, 5, 9, 13, 17, tableWindHigh},
		{0, 25, 50},
	}
	var lines [][4]float64
	for _, a := range sample[(i+1)%4] {
		for _, b := range sample[(i+2)%4] {
			for _, c := range sample[(i+3)%4] {
				var q [4]float64
				q[(i+1)%4], q[(i+2)%4], q[(i+3)%4] = a, b, c
				lines = append(lines, q)
			}
		}
	}
	column := func(x float64) []float64 {
		out := make([]float64, len(lines))
		for j, q := range lines {
			q[i] = x
			sea := t.sea(like, q)
			out[j] = p.meanSpeed(sea) - t.flatSpeed(sea.Wind)
		}
		return out
	}
	nodes := start[i][:1:1]
	left := column(nodes[0])
	var split func(a, b float64, fa, fb []float64, depth int)
	split = func(a, b float64, fa, fb []float64, depth int) {
		m := (a + b) / 2
		fm := column(m)
		worst := 0.0
		for j := range fm {
			worst = math.Max(worst, math.Abs(fm[j]-(fa[j]+fb[j])/2))
		}
		if worst > tol && depth < 8 {
			split(a, m, fa, fm, depth+1)
			split(m, b, fm, fb, depth+1)
			return
		}
		nodes = append(nodes, b)
	}
	for j := 1; j < len(start[i]); j++ {
		right := column(start[i][j])
		split(start[i][j-1], start[i][j], left, right, 0)
		left = right
	}
	t.axes[i] = axis{nodes: nodes}
	t.axes[i].index()
}

// Worst returns the bound in m/s on the difference between Speed of the table
// and of the sea, from the differences in the middles of all edges.
func (t *Table) Worst() float64 { return t.err }

// At returns the ride in a wind sea of height hs m and peak period tp s, that
// travels off degrees from the course, in a wind along the course of wind m/s.
// It reports false outside the table (and for NaN): hs negative or above 0.065
// of the deep-water length of tp, tp outside 1.2 to 14 s, wind outside -8 to 20
// m/s. Waves from abeam or ahead neither give nor cost anything, as in
// [Prepared.Sea].
func (t *Table) At(hs, tp, wind, off float64) (Quick, bool) {
	steep := hs * 2 * math.Pi / (t.gravity * tp * tp)
	off = math.Abs(turn(off))
	if !(hs >= 0 && tp >= tableTpLow && tp <= tableTpHigh && steep <= tableSteepHigh &&
		wind >= tableWindLow && wind <= tableWindHigh && off <= 180) {
		return Quick{}, false
	}
	flat := t.flatSpeed(wind)
	off = math.Min(off, tableOffHigh)
	a, wa := t.axes[0].place(math.Log(tp))
	b, wb := t.axes[1].place(steep)
	c, wc := t.axes[2].place(wind)
	d, wd := t.axes[3].place(off)
	var gain, spread, catches float64
	for i := range 2 {
		pa := 1 - wa
		if i == 1 {
			pa = wa
		}
		for j := range 2 {
			pb := pa * (1 - wb)
			if j == 1 {
				pb = pa * wb
			}
			for k := range 2 {
				pc := pb * (1 - wc)
				if k == 1 {
					pc = pb * wc
				}
				n := t.nodes[t.index(a+i, b+j, c+k, d):]
				p0, p1 := pc*(1-wd), pc*wd
				gain += p0*float64(n[0].gain) + p1*float64(n[1].gain)
				spread += p0*float64(n[0].spread) + p1*float64(n[1].spread)
				catches += p0*float64(n[0].catches) + p1*float64(n[1].catches)
			}
		}
	}
	return Quick{Speed: flat + gain, Spread: spread, FlatSpeed: flat, CatchesPerHour: catches}, true
}

func (t *Table) index(a, b, c, d int) int {
	return ((a*len(t.axes[1].nodes)+b)*len(t.axes[2].nodes)+c)*len(t.axes[3].nodes) + d
}

// flatSpeed interpolates the speed without waves, quadratically.
func (t *Table) flatSpeed(wind float64) float64 {
	f := (wind - tableWindLow) / t.flatStep
	i := min(max(int(f), 1), len(t.flat)-2)
	x := f - float64(i)
	l, m, r := t.flat[i-1], t.flat[i], t.flat[i+1]
	return m + x*((r-l)/2+x*((r+l)/2-m))
}

func (t *Table) fillFlat(p *Prepared) {
	const n = 225
	t.flatStep = (tableWindHigh - tableWindLow) / (n - 1)
	t.flat = make([]float64, n)
	for i := range t.flat {
		t.flat[i] = p.surge.flat(p.surge.cruise, p.surge.share*(tableWindLow+float64(i)*t.flatStep))
	}
}

// sea is the sea at a place of the table.
func (t *Table) sea(like Sea, q [4]float64) Sea {
	tp := math.Exp(q[0])
	like.WindSea.Tp = tp
	like.WindSea.Hs = q[1] * t.gravity * tp * tp / (2 * math.Pi)
	like.Wind = q[2]
	like.WindSea.Off = q[3]
	return like
}

func (t *Table) fill(p *Prepared, like Sea) {
	x := &t.axes
	t.nodes = make([]quickNode, len(x[0].nodes)*len(x[1].nodes)*len(x[2].nodes)*len(x[3].nodes))
	each(len(x[0].nodes), func(a int) {
		var bs bins
		for b, steep := range x[1].nodes {
			for d, off := range x[3].nodes {
				for c, wind := range x[2].nodes {
					sea := t.sea(like, [4]float64{x[0].nodes[a], steep, wind, off})
					if c == 0 { // the wind changes nothing in the waves
						p.load(&bs, &sea)
					}
					m := p.mean(&bs, &sea)
					var r Ride
					r.rise(m, p.surge.flat(p.surge.sprint, p.surge.share*wind))
					t.nodes[t.index(a, b, c, d)] = quickNode{
						gain:   float32(m.speed - t.flatSpeed(wind)),
						spread: float32(p.spread(&bs, &sea, m)), catches: float32(r.CatchesPerHour),
					}
				}
			}
		}
	})
}

// check bounds the error. Along every edge of every cell the table is compared
// with the sea in the middle, where an error from bending is greatest. Inside a
// cell the bendings of the four axes add up, so the error is at most the sum of
// the greatest along each axis, of those of one sign.
func (t *Table) check(p *Prepared, like Sea) {
	x := &t.axes
	n := [4]int{len(x[0].nodes), len(x[1].nodes), len(x[2].nodes), len(x[3].nodes)}
	// bend[i][node] is the error in the middle of the edge from node along i.
	var bend [4][]float32
	for i := range bend {
		bend[i] = make([]float32, len(t.nodes))
	}
	each(n[0], func(a int) {
		var bs bins
		for i := range bend {
			for b := range n[1] {
				for d := range n[3] {
					at := [4]int{a, b, 0, d}
					if i != 2 && at[i] == n[i]-1 {
						continue
					}
					fresh := true
					for c := range n[2] {
						at[2] = c
						if at[i] == n[i]-1 {
							continue
						}
						q := [4]float64{x[0].nodes[a], x[1].nodes[b], x[2].nodes[c], x[3].nodes[d]}
						q[i] = x[i].middle(at[i])
						sea := t.sea(like, q)
						if fresh { // the wind changes nothing in the waves
							p.load(&bs, &sea)
							fresh = false
						}
						up := at
						up[i]++
						j, k := t.index(a, b, c, d), t.index(up[0], up[1], up[2], up[3])
						speed := t.flatSpeed(sea.Wind) + float64(t.nodes[j].gain+t.nodes[k].gain)/2
						bend[i][j] = float32(speed - p.mean(&bs, &sea).speed)
					}
				}
			}
		}
	})
	t.err = 0
	for a := range n[0] - 1 {
		for b := range n[1] - 1 {
			for c := range n[2] - 1 {
				for d := range n[3] - 1 {
					above, below := 0.0, 0.0
					for i := range bend {
						most, least := 0.0, 0.0
						for corner := range 16 {
							if corner>>i&1 == 1 {
								continue
							}
							e := float64(bend[i][t.index(a+corner&1, b+corner>>1&1, c+corner>>2&1, d+corner>>3&1)])
							most, least = math.Max(most, e), math.Min(least, e)
						}
						above += most
						below -= least
					}
					t.err = math.Max(t.err, math.Max(above, below))
				}
			}
		}
	}
}

// each calls do for 0 to n-1 on all processors.
func each(n int, do func(int)) {
	var next atomic.Int64
	var wait sync.WaitGroup
	for range min(n, runtime.GOMAXPROCS(0)) {
		wait.Add(1)
		go func() {
			defer wait.Done()
			for i := int(next.Add(1)) - 1; i < n; i = int(next.Add(1)) - 1 {
				do(i)
			}
		}()
	}
	wait.Wait()
}
