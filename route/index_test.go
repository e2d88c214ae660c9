package route

import (
	"math"
	"math/rand/v2"
	"testing"
)

// TestGeocentricOnTheEllipsoid: a position lies on x²/a² + y²/a² + z²/b² = 1, and the normal there, (x/a², y/a², z/b²), points up:
// that is what geographic latitude means.
func TestGeocentricOnTheEllipsoid(t *testing.T) {
	const b = coastA * (1 - coastF)
	for _, p := range []Point{{0, 0}, {90, 0}, {-90, 30}, {45, 45}, {-33, 151}, {71, -156}} {
		v := geocentric(p)
		within(t, "on the ellipsoid", v[0]*v[0]/coastA/coastA+v[1]*v[1]/coastA/coastA+v[2]*v[2]/b/b, 1, 1e-14)
		n := vec{v[0] / coastA / coastA, v[1] / coastA / coastA, v[2] / b / b}
		_, _, up := axes(p)
		for i := range 3 {
			within(t, "normal", n[i]/math.Sqrt(n.norm2()), up[i], 1e-14)
		}
	}
}

// short makes a segment between two places, as a line has it.
func short(p, q Point) segment { return segment{a: geocentric(p), b: geocentric(q), p: p, q: q} }

// TestTreeIsHalved: a leaf holds up to four segments; a branch is halved along the axis on which its segments lie farthest apart,
// so that nothing of its first half lies beyond anything of its second. The coasts run along y and z through the point where x is
// largest, and along x through that where y is, with a tenth of their length across, in no order.
func TestTreeIsHalved(t *testing.T) {
	for n, nodes := range map[int]int{0: 0, 1: 1, 4: 1, 5: 3, 8: 3, 9: 5} {
		segs := make([]segment, n)
		for i := range segs {
			segs[i] = short(Point{Lon: float64(i)}, Point{Lon: float64(i) + 0.01})
		}
		if got := newTree(segs); len(got.nodes) != nodes || len(got.segs) != n {
			t.Errorf("%d segments: %d nodes, want %d", n, len(got.nodes), nodes)
		}
	}
	for axis, at := range []func(along, across float64) Point{
		func(along, across float64) Point { return Point{across, 90 + along} },
		func(along, across float64) Point { return Point{across, along} },
		func(along, across float64) Point { return Point{along, across} },
	} {
		r := rand.New(rand.NewPCG(uint64(axis), 5))
		var segs []segment
		for range 200 {
			p := at(10*r.Float64()-5, r.Float64()-0.5)
			segs = append(segs, short(p, p))
		}
		tree := newTree(segs)
		root := tree.nodes[0]
		one, two := tree.nodes[1], tree.nodes[root.next]
		if !(one.hi[axis] <= two.lo[axis]+2*boxMargin) {
			t.Errorf("axis %d: the first half to %v, the second from %v", axis, one.hi[axis], two.lo[axis])
		}
		for i := range tree.nodes {
			n := &tree.nodes[i]
			for k := n.next; k < n.next+n.count; k++ {
				if n.away(&tree.segs[k].a) != 0 {
					t.Errorf("axis %d: segment %d is outside its leaf", axis, k)
				}
			}
			if n.count > leafSize {
				t.Errorf("axis %d: a leaf of %d", axis, n.count)
			}
		}
	}
}

// TestPartIsASelection: of any order, with equal ones among them, the element at k is the one of a sort, nothing before it is
// larger and nothing after it smaller; what lies outside the part stays.
func TestPartIsASelection(t *testing.T) {
	for seed := range uint64(50) {
		r := rand.New(rand.NewPCG(seed, 3))
		n := 2 + r.IntN(40)
		b := builder{mid: make([]vec, n+4), order: make([]int32, n+4)}
		for i := range b.mid {
			b.mid[i][1] = float64(r.IntN(n + 3))
			b.order[i] = int32(i)
		}
		k := 2 + r.IntN(n)
		b.part(2, 2+n, k, 1)
		seen := make([]bool, n+4)
		for i, o := range b.order {
			seen[o] = true
			x, m := b.mid[o][1], b.mid[b.order[k]][1]
			if in := i >= 2 && i < 2+n; !in && int(o) != i || in && (i < k && x > m || i > k && x < m) {
				t.Errorf("seed %d, part at %d: %v at %d, %v at %d", seed, k, m, k, x, i)
			}
		}
		for o, ok := range seen {
			if !ok {
				t.Errorf("seed %d: element %d is lost", seed, o)
			}
		}
	}
}

// TestBoxFromAPoint: the square of the distance to a box from each side of it, a corner and from inside, and whether it reaches
// into a half plane, which a box that touches does.
func TestBoxFromAPoint(t *testing.T) {
	for _, c := range []struct {
		lo, hi vec
		d2     float64
	}{
		{vec{-1, -1, -1}, vec{1, 1, 1}, 0}, {vec{3, -1, -1}, vec{5, 1, 1}, 9}, {vec{-1, -6, -1}, vec{1, -4, 1}, 16},
		{vec{3, -6, -1}, vec{5, -4, 1}, 25}, {vec{2, 3, 6}, vec{9, 9, 9}, 49}, {vec{-9, -9, -9}, vec{-2, -3, -6}, 49}, {vec{0, 0, 0}, vec{1, 1, 1}, 0},
	} {
		within(t, "away", (&node{lo: c.lo, hi: c.hi}).away(&vec{}), c.d2, 0)
		at := vec{10, 20, 30}
		lo, hi := c.lo.sub(vec{-10, -20, -30}), c.hi.sub(vec{-10, -20, -30})
		within(t, "away from another point", (&node{lo: lo, hi: hi}).away(&at), c.d2, 0)
	}
	side, ahead := vec{1, 0, 0}, vec{0, 1, 0}
	for _, c := range []struct {
		lo, hi vec
		want   bool
	}{
		{vec{-1, 5, 0}, vec{1, 7, 1}, true}, {vec{0, 5, 0}, vec{2, 7, 1}, true}, {vec{-2, 5, 0}, vec{0, 7, 1}, true},
		{vec{1, 5, 0}, vec{3, 7, 1}, false}, {vec{-3, 5, 0}, vec{-1, 7, 1}, false},
		{vec{-1, -2, 0}, vec{1, 0, 1}, true}, {vec{-1, -3, 0}, vec{1, -1, 1}, false}, {vec{-1, -9, 0}, vec{1, 1, 1}, true},
	} {
		if got := (&node{lo: c.lo, hi: c.hi}).meets(&vec{}, &side, &ahead); got != c.want {
			t.Errorf("box %v to %v: meets %v", c.lo, c.hi, got)
		}
	}
}

// TestTheNearerBoxFirst: of two boxes the nearer is looked into first, and the farther not at all where a shore is nearer than it.
// The farther box holds what it says it does not, a shore beside the eye, which must not be seen.
func TestTheNearerBoxFirst(t *testing.T) {
	// Two segments across the look from the origin.
	wall := func(x float64) segment { return segment{a: vec{x, -1, 0}, b: vec{x, 1, 0}, q: Point{Lat: x}} }
	v := sight{ahead: vec{1, 0, 0}, side: vec{0, -1, 0}}
	over := node{lo: vec{5, -2, -1}, hi: vec{60, 2, 1}, next: 2}
	near, far := node{lo: vec{5, -2, -1}, hi: vec{20, 2, 1}, count: 1}, node{lo: vec{50, -2, -1}, hi: vec{60, 2, 1}, count: 1}
	for name, nearFirst := range map[string]bool{"near, far": true, "far, near": false} {
		one, two := near, far
		segs := []segment{wall(10), wall(1)}
		if !nearFirst {
			one, two = far, near
			segs = []segment{wall(1), wall(10)}
		}
		one.next, two.next = 0, 1
		tree := tree{nodes: []node{over, one, two}, segs: segs}
		if s, at := tree.look(&v, 1e6); s == nil || s.a[0] != 10 || at != 0.5 {
			t.Errorf("%s: look %+v at %v", name, s, at)
		}
		if s, at := tree.nearest(&vec{}); s == nil || s.a[0] != 10 || at != 0.5 {
			t.Errorf("%s: nearest %+v at %v", name, s, at)
		}
	}
}

// TestEyeOnTheShore: from a place on a line of shore the line is at no distance, in whatever direction, and a line that begins
// there meets it.
func TestEyeOnTheShore(t *testing.T) {
	for _, eye := range []Point{{0, 0}, {48.3, -4.7}} {
		c := mustCoast(t, [][]Point{{{eye.Lat - 0.001, eye.Lon - 0.001}, eye, {eye.Lat + 0.001, eye.Lon + 0.001}}}, nil)
		for b := 80.0; b < 400; b += 180 {
			for _, d := range []float64{0, 20, 50} {
				within(t, "fetch", c.Fetch(eye, b+d, 1e5), 0, 1e-9)
				if x, err := c.Crosses(eye, Direct(eye, b+d, 5000).To); err != nil || !x.Land || !(x.Distance <= 1e-9) {
					t.Errorf("from %v toward %v: %+v, %v", eye, b+d, x, err)
				}
			}
		}
	}
}

// TestShoreOfNoLength: a line of two positions that are the same place is a shore at that place: the pole, on any meridian.
func TestShoreOfNoLength(t *testing.T) {
	c := mustCoast(t, [][]Point{{{90, 0}, {90, 90}}}, nil)
	s, err := c.NearestShore(Point{89.9, 45})
	if err != nil {
		t.Fatal(err)
	}
	within(t, "distance", s.Distance, Inverse(Point{89.9, 45}, Point{Lat: 90}).Distance, 1e-6)
}

// TestPartsOfAnEdgeJoin: the parts of a long edge begin and end where it does, to the last digit, and each begins where the one
// before it ended. Half way from 10 to 0.1 and back there are latitudes that a sum does not give back: 10 + (0.1 - 10) is not 0.1.
func TestPartsOfAnEdgeJoin(t *testing.T) {
	line := []Point{{10, 3}, {0.1, 4.3}, {10, 539}, {-7.3, 185.7}}
	segs := cut(nil, line, false, false)
	if segs[0].p != line[0] || segs[len(segs)-1].q != line[3] {
		t.Errorf("from %v to %v", segs[0].p, segs[len(segs)-1].q)
	}
	met := 1
	for i := 1; i < len(segs); i++ {
		if segs[i].p != segs[i-1].q || segs[i].a != segs[i-1].b {
			t.Errorf("part %d begins at %v, the one before it ended at %v", i, segs[i].p, segs[i-1].q)
		}
		if segs[i].p == line[met] {
			met++
		}
	}
	if met != 3 {
		t.Errorf("%d of 2 corners are corners of parts", met-1)
	}
}

// TestLakeInAPolarLand: a hole is water in land around either pole, whichever way round both rings run.
func TestLakeInAPolarLand(t *testing.T) {
	turned := func(ring []Point) []Point {
		var r []Point
		for i := range ring {
			r = append(r, ring[len(ring)-1-i])
		}
		return r
	}
	for _, pole := range []float64{-1, 1} {
		var shore []Point
		for i := range 36 {
			shore = append(shore, Point{pole * 70, float64(i) * 10})
		}
		lake := []Point{{pole * 81, 10}, {pole * 79, 10}, {pole * 79, 20}, {pole * 81, 20}}
		for _, p := range []Polygon{{shore, lake}, {turned(shore), lake}, {shore, turned(lake)}, {turned(shore), turned(lake)}} {
			c := mustCoast(t, nil, []Polygon{p})
			for _, x := range []struct {
				p    Point
				land bool
			}{{Point{pole * 80, 15}, false}, {Point{pole * 75, 15}, true}, {Point{pole * 85, 15}, true}, {Point{pole * 80, 25}, true}, {Point{pole * 65, 15}, false}, {Point{pole * -80, 15}, false}} {
				if got, err := c.Land(x.p); err != nil || got != x.land {
					t.Errorf("%v: land %v, %v", x.p, got, err)
				}
			}
		}
	}
}
