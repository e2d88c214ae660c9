package route

import (
	"math"

	"followingsea.example/internal/angle"
)

// The index is a tree of boxes over the segments of a coastline, in the
// geocentric axes of the ellipsoid (x to Greenwich, y to 90 east, z north).
// Three dimensions cost nothing here and remove every special case of a chart:
// there is no antimeridian, no pole, no scale that changes with latitude, and
// a look along a bearing is the plane that stands upright on the eye.
//
// A segment is put in the tree with its two ends only; every answer is made by
// the same functions on the same numbers as a scan of all segments makes it,
// so the tree can only be faster, never different. Its boxes are widened by
// boxMargin, a thousand times the rounding of geocentric metres.

// WGS 84.
const (
	coastA  = 6378137.0             // equatorial radius, metres
	coastF  = 1 / 298.257223563     // flattening
	coastE2 = coastF * (2 - coastF) // first eccentricity squared
)

const (
	leafSize  = 4
	boxMargin = 1e-3 // metres
	// latMargin is the margin, in metres of z, where an edge straight in
	// longitude and latitude is boxed by its chord. Cut to partLength and
	// partLon, no edge leaves its chord by half of it.
	latMargin = 10
)

type vec [3]float64

// The products of dot and along are rounded before they are added, on every
// machine, so that an answer does not depend on where a compiler put a fused
// multiply and add: the index and the scan give the same bits everywhere.

func (a vec) dot(b vec) float64 {
	return float64(a[0]*b[0]) + float64(a[1]*b[1]) + float64(a[2]*b[2])
}
func (a vec) sub(b vec) vec  { return vec{a[0] - b[0], a[1] - b[1], a[2] - b[2]} }
func (a vec) norm2() float64 { return a.dot(a) }

// along returns a + t (b - a).
func along(a, b vec, t float64) vec {
	return vec{a[0] + float64(t*(b[0]-a[0])), a[1] + float64(t*(b[1]-a[1])), a[2] + float64(t*(b[2]-a[2]))}
}

// geocentric returns the geocentric position of a point of the ellipsoid.
func geocentric(p Point) vec {
	sp, cp := sincosd(p.Lat)
	sl, cl := sincosd(p.Lon)
	n := coastA / math.Sqrt(1-coastE2*sp*sp)
	return vec{n * cp * cl, n * cp * sl, n * (1 - coastE2) * sp}
}

// segment is one straight piece of shore. turn is 1 for the edge of a ring
// and 0 for a line, which has no inside.
type segment struct {
	a, b vec
	p, q Point
	turn int32
}

// at returns the position a fraction t along the segment, straight in
// longitude and latitude as the formats have it.
func (s *segment) at(t float64) Point {
	return Point{
		Lat: s.p.Lat + t*(s.q.Lat-s.p.Lat),
		Lon: wrapLon(s.p.Lon + t*angle.Diff(s.p.Lon, s.q.Lon)),
	}
}

// node is a box of the tree. A branch has its first child right after it and
// its second at next; a leaf has count segments from next.
type node struct {
	lo, hi vec
	next   int32
	count  int32
}

type tree struct {
	nodes []node
	segs  []segment
}

func newTree(segs []segment) tree {
	t := tree{segs: segs}
	if len(segs) == 0 {
		return t
	}
	order := make([]int32, len(segs))
	mid := make([]vec, len(segs))
	for i := range segs {
		order[i] = int32(i)
		mid[i] = along(segs[i].a, segs[i].b, 0.5)
	}
	// A leaf holds two segments or more unless it is alone, so there are no
	// more nodes than segments.
	b := builder{segs: segs, mid: mid, order: order, nodes: make([]node, 0, len(segs))}
	b.build(0, len(order))
	// The segments are put in the order of the leaves along the cycles of
	// the permutation, in place: a large coast is never held twice.
	for i := range order {
		if order[i] < 0 {
			continue
		}
		first, at := segs[i], i
		for {
			from := int(order[at])
			order[at] = -1
			if from == i {
				segs[at] = first
				break
			}
			segs[at] = segs[from]
			at = from
		}
	}
	t.nodes = b.nodes
	return t
}

type builder struct {
	segs  []segment
	mid   []vec
	order []int32
	nodes []node
}

// build makes the node over order[from:to] by halving it at the median along
// the axis on which its segments spread most. Halving keeps the depth below
// 32 whatever the coast, so the walks need no more stack than that.
func (b *builder) build(from, to int) int32 {
	lo := vec{math.Inf(1), math.Inf(1), math.Inf(1)}
	hi := vec{math.Inf(-1), math.Inf(-1), math.Inf(-1)}
	mlo, mhi := lo, hi
	for _, k := range b.order[from:to] {
		s := &b.segs[k]
		for i := range 3 {
			lo[i] = min(lo[i], s.a[i], s.b[i])
			hi[i] = max(hi[i], s.a[i], s.b[i])
			mlo[i] = min(mlo[i], b.mid[k][i])
			mhi[i] = max(mhi[i], b.mid[k][i])
		}
	}
	for i := range 3 {
		lo[i] -= boxMargin
		hi[i] += boxMargin
	}
	at := int32(len(b.nodes))
	b.nodes = append(b.nodes, node{lo: lo, hi: hi})
	if to-from <= leafSize {
		b.nodes[at].next, b.nodes[at].count = int32(from), int32(to-from)
		return at
	}
	axis := 0
	for i := 1; i < 3; i++ {
		if mhi[i]-mlo[i] > mhi[axis]-mlo[axis] {
			axis = i
		}
	}
	half := (from + to) / 2
	b.part(from, to, half, axis)
	b.build(from, half)
	b.nodes[at].next = b.build(half, to)
	return at
}

// part reorders order[from:to] so that the element at k is where a sort along
// the axis would put it, nothing before it is larger and nothing after it
// smaller (Hoare's selection).
func (b *builder) part(from, to, k, axis int) {
	o, m := b.order, b.mid
	for {
		// The median of three keeps coasts that come sorted from being slow.
		x, y, z := m[o[from]][axis], m[o[(from+to)/2]][axis], m[o[to-1]][axis]
		pivot := max(min(x, y), min(max(x, y), z))
		i, j := from, to-1
		for i <= j {
			for m[o[i]][axis] < pivot {
				i++
			}
			for m[o[j]][axis] > pivot {
				j--
			}
			if i <= j {
				o[i], o[j] = o[j], o[i]
				i++
				j--
			}
		}
		switch {
		case k <= j:
			to = j + 1
		case k >= i:
			from = i
		default:
			return
		}
	}
}

// away returns the square of the distance from p to the box.
func (n *node) away(p *vec) float64 {
	var d2 float64
	for i := range 3 {
		if d := n.lo[i] - p[i]; d > 0 {
			d2 += d * d
		} else if d := p[i] - n.hi[i]; d > 0 {
			d2 += d * d
		}
	}
	return d2
}

// meets reports whether the box reaches into the half plane through p that
// has normal side and looks toward ahead.
func (n *node) meets(p, side, ahead *vec) bool {
	var s, sx, f, fx float64
	for i := range 3 {
		c, h := (n.lo[i]+n.hi[i])/2-p[i], (n.hi[i]-n.lo[i])/2
		s += side[i] * c
		sx += math.Abs(side[i]) * h
		f += ahead[i] * c
		fx += math.Abs(ahead[i]) * h
	}
	return math.Abs(s) <= sx && f+fx >= 0
}

// sight is a look from an eye on the ellipsoid along a bearing.
type sight struct {
	eye, side, ahead vec
}

// axes returns the east, north and up axes of a position.
func axes(p Point) (east, north, up vec) {
	sp, cp := sincosd(p.Lat)
	sl, cl := sincosd(p.Lon)
	return vec{-sl, cl, 0}, vec{-sp * cl, -sp * sl, cp}, vec{cp * cl, cp * sl, sp}
}

func newSight(eye, east, north vec, bearing float64) sight {
	s, c := sincosd(bearing)
	var v sight
	v.eye = eye
	for i := range 3 {
		v.ahead[i] = s*east[i] + c*north[i]
		v.side[i] = c*east[i] - s*north[i]
	}
	return v
}

// hit returns the square of the chord from the eye to where the segment
// crosses the line of sight, +Inf if it does not, and how far along the segment
// that is. An end that lies on the line belongs to one side, the same for both
// segments that share it, so a line of sight never slips between two segments
// and never counts a corner for one and a half.
func (v *sight) hit(s *segment) (d2, t float64) {
	a, b := s.a.sub(v.eye), s.b.sub(v.eye)
	sa, sb := v.side.dot(a), v.side.dot(b)
	if (sa < 0) == (sb < 0) {
		return math.Inf(1), 0
	}
	t = sa / (sa - sb)
	h := along(a, b, t)
	if v.ahead.dot(h) < 0 {
		return math.Inf(1), 0
	}
	return h.norm2(), t
}

// look returns the segment nearest across the line of sight and where along
// it, nil if none is nearer than the chord whose square is limit2.
func (t *tree) look(v *sight, limit2 float64) (s *segment, at float64) {
	if len(t.nodes) == 0 {
		return nil, 0
	}
	best := limit2
	type visit struct {
		at int32
		d2 float64
	}
	var stack [64]visit
	n := 0
	if t.nodes[0].meets(&v.eye, &v.side, &v.ahead) {
		stack[0] = visit{0, t.nodes[0].away(&v.eye)}
		n = 1
	}
	for n > 0 {
		n--
		if stack[n].d2 > best {
			continue
		}
		k := stack[n].at
		b := &t.nodes[k]
		if b.count > 0 {
			for i := b.next; i < b.next+b.count; i++ {
				if d2, f := v.hit(&t.segs[i]); d2 < best {
					best, s, at = d2, &t.segs[i], f
				}
			}
			continue
		}
		one, two := k+1, b.next
		n1, n2 := &t.nodes[one], &t.nodes[two]
		d1, d2 := math.Inf(1), math.Inf(1)
		if n1.meets(&v.eye, &v.side, &v.ahead) {
			d1 = n1.away(&v.eye)
		}
		if n2.meets(&v.eye, &v.side, &v.ahead) {
			d2 = n2.away(&v.eye)
		}
		if d1 < d2 { // the nearer child is looked at first
			one, two, d1, d2 = two, one, d2, d1
		}
		if d1 <= best {
			stack[n] = visit{one, d1}
			n++
		}
		if d2 <= best {
			stack[n] = visit{two, d2}
			n++
		}
	}
	return s, at
}

// winding returns how many rings lie around p, holes counted against: the
// crossings of the meridian of p to the north of it, westward ones positive,
// because a ring is kept with its land on the left.
func (t *tree) winding(p Point) int {
	if len(t.nodes) == 0 {
		return 0
	}
	east, _, _ := axes(Point{Lat: 0, Lon: p.Lon})
	_, _, ahead := axes(Point{Lat: 0, Lon: p.Lon})
	z := geocentric(p)[2] - latMargin
	var origin vec
	var stack [64]int32
	n, w := 1, 0
	for n > 0 {
		n--
		at := stack[n]
		b := &t.nodes[at]
		if b.hi[2] < z || !b.meets(&origin, &east, &ahead) {
			continue
		}
		if b.count > 0 {
			for i := b.next; i < b.next+b.count; i++ {
				w += t.segs[i].over(p)
			}
			continue
		}
		stack[n], stack[n+1] = at+1, b.next
		n += 2
	}
	return w
}

// over returns 1 if the segment is the edge of a ring and crosses the
// meridian of p westward to the north of p, -1 if it crosses eastward, else
// 0. The side of each end is worked out from that end alone, so two edges
// that share it always agree.
func (s *segment) over(p Point) int {
	if s.turn == 0 {
		return 0
	}
	a, b := angle.Diff(p.Lon, s.p.Lon), angle.Diff(p.Lon, s.q.Lon)
	if (a < 0) == (b < 0) || math.Abs(a-b) >= 180 {
		return 0
	}
	if !(s.p.Lat+float64((s.q.Lat-s.p.Lat)*(a/(a-b))) > p.Lat) {
		return 0
	}
	if a < 0 {
		return -1
	}
	return 1
}

// near returns the square of the distance from p to the segment and where
// along it the nearest place is.
func (s *segment) near(p *vec) (d2, t float64) {
	ab, ap := s.b.sub(s.a), p.sub(s.a)
	if l2 := ab.norm2(); l2 > 0 {
		t = min(max(ap.dot(ab)/l2, 0), 1)
	}
	return along(s.a, s.b, t).sub(*p).norm2(), t
}

// nearest returns the segment nearest to p, nil if there is none.
func (t *tree) nearest(p *vec) (s *segment, at float64) {
	if len(t.nodes) == 0 {
		return nil, 0
	}
	best := math.Inf(1)
	type visit struct {
		at int32
		d2 float64
	}
	var stack [64]visit
	stack[0] = visit{0, t.nodes[0].away(p)}
	n := 1
	for n > 0 {
		n--
		if stack[n].d2 > best {
			continue
		}
		k := stack[n].at
		b := &t.nodes[k]
		if b.count > 0 {
			for i := b.next; i < b.next+b.count; i++ {
				if d2, f := t.segs[i].near(p); d2 < best {
					best, s, at = d2, &t.segs[i], f
				}
			}
			continue
		}
		one, two := k+1, b.next
		d1, d2 := t.nodes[one].away(p), t.nodes[two].away(p)
		if d1 < d2 {
			one, two, d1, d2 = two, one, d2, d1
		}
		stack[n] = visit{one, d1}
		stack[n+1] = visit{two, d2}
		n += 2
	}
	return s, at
}
