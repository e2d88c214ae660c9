package route

import (
	"errors"
	"fmt"
	"math"

	"followingsea.example/internal/angle"
)

// ErrCoast is returned for shapes no coastline can be made of.
var ErrCoast = errors.New("route: not a coastline")

// Polygon is land (or an area of water with a name): an outer ring of
// positions and any number of rings cut out of it. A ring may or may not
// repeat its first position at the end, and may run either way round. Edges
// are straight in longitude and latitude and take the short way across the
// antimeridian.
type Polygon [][]Point

// Coast is a coastline with an index over it. Polygons have land inside;
// lines are shore without an inside: they stop a line of sight and a track
// but no place is on them. A Coast does not change after it is made and is
// safe for concurrent use.
//
// A nil *Coast is a coast nobody knows: its answers are NaN and errors. A
// coast of no shapes is an ocean.
type Coast struct {
	tree     tree
	pole     int // rings around the north pole
	lines    [][]Point
	polygons []Polygon
}

const (
	// partLength and partLon cut long edges, so that the chord the index
	// keeps is within 0.1 m of the edge drawn straight in longitude and
	// latitude (L² tan(lat) / 8R), and within latMargin even beside a pole.
	partLength = 2000.0 // metres
	partLon    = 1.0    // degrees

	// mostSegments bounds memory: some 300 MB of index.
	mostSegments = 2_000_000
)

// NewCoast makes a coastline of lines and of polygons of land, either of
// which may be nil. Positions at the same place in a row are dropped; edges
// longer than 2 km are cut into shorter ones on the same line.
//
// The errors wrap [ErrCoast] and name the shape: a position off the globe, a
// line of fewer than two places, a ring of fewer than three, more than two
// million segments.
func NewCoast(lines [][]Point, polygons []Polygon) (*Coast, error) {
	c := &Coast{lines: lines, polygons: polygons}
	count := 0
	for i, l := range lines {
		n, err := parts(l, false)
		if err != nil {
			return nil, fmt.Errorf("%w: line %d: %w", ErrCoast, i, err)
		}
		count += n
	}
	for i, p := range polygons {
		if len(p) == 0 {
			return nil, fmt.Errorf("%w: polygon %d has no ring", ErrCoast, i)
		}
		for j, ring := range p {
			n, err := parts(ring, true)
			if err != nil {
				return nil, fmt.Errorf("%w: polygon %d ring %d: %w", ErrCoast, i, j, err)
			}
			count += n
		}
	}
	if count > mostSegments {
		return nil, fmt.Errorf("%w: %d segments of at most 2 km, of %d allowed", ErrCoast, count, mostSegments)
	}
	segs := make([]segment, 0, count)
	for _, l := range lines {
		segs = cut(segs, l, false, false)
	}
	for _, p := range polygons {
		for j, ring := range p {
			left, north := handed(ring)
			hole := j > 0
			if north {
				if hole {
					c.pole--
				} else {
					c.pole++
				}
			}
			segs = cut(segs, ring, true, left == hole)
		}
	}
	c.tree = newTree(segs)
	return c, nil
}

// Segments returns the number of segments in the index.
func (c *Coast) Segments() int {
	if c == nil {
		return 0
	}
	return len(c.tree.segs)
}

// Lines returns the lines the coast was made of. They must not be changed.
func (c *Coast) Lines() [][]Point {
	if c == nil {
		return nil
	}
	return c.lines
}

// Polygons returns the polygons the coast was made of. They must not be
// changed.
func (c *Coast) Polygons() []Polygon {
	if c == nil {
		return nil
	}
	return c.polygons
}

// pieces returns into how many parts the edge from p to q is cut.
func pieces(p, q Point) int {
	if p.Lat == q.Lat && angle.Diff(p.Lon, q.Lon) == 0 {
		return 0
	}
	dlon := math.Abs(angle.Diff(p.Lon, q.Lon))
	_, c := sincosd((p.Lat + q.Lat) / 2)
	const radius = 6371008.8
	length := math.Hypot(q.Lat-p.Lat, dlon*c) * (math.Pi / 180 * radius)
	return int(math.Ceil(max(length/partLength, dlon/partLon, 1)))
}

// parts checks a line or a ring and counts its segments.
func parts(ps []Point, ring bool) (int, error) {
	for i, p := range ps {
		if err := p.Check(); err != nil {
			return 0, fmt.Errorf("position %d: %w", i, err)
		}
	}
	n, places := 0, 0
	each(ps, ring, func(p, q Point) {
		k := pieces(p, q)
		n += k
		if k > 0 {
			places++
		}
	})
	if ring && places < 3 {
		return 0, fmt.Errorf("%d different positions in a row, of at least 3", places)
	}
	if places < 1 {
		return 0, fmt.Errorf("it is not 2 different positions long")
	}
	return n, nil
}

// each calls f for each edge, with the closing one of a ring.
func each(ps []Point, ring bool, f func(p, q Point)) {
	for i := 1; i < len(ps); i++ {
		f(ps[i-1], ps[i])
	}
	if ring && len(ps) > 0 && ps[len(ps)-1] != ps[0] {
		f(ps[len(ps)-1], ps[0])
	}
}

// cut appends the segments of a line or a ring.
func cut(segs []segment, ps []Point, ring, reverse bool) []segment {
	turn := int32(0)
	if ring {
		turn = 1
	}
	each(ps, ring, func(p, q Point) {
		n := pieces(p, q)
		if reverse {
			p, q = q, p
		}
		whole := segment{p: p, q: q}
		from, a := p, geocentric(p)
		for i := 1; i <= n; i++ {
			to := q
			if i < n {
				to = whole.at(float64(i) / float64(n))
			}
			b := geocentric(to)
			segs = append(segs, segment{a: a, b: b, p: from, q: to, turn: turn})
			from, a = to, b
		}
	})
	return segs
}

// handed reports whether a ring runs with its inside on the left, and whether
// that inside holds the north pole: a ring that goes once round the globe
// holds the pole it is nearer to.
func handed(ring []Point) (left, north bool) {
	var x, area, lat float64
	each(ring, true, func(p, q Point) {
		d := angle.Diff(p.Lon, q.Lon)
		area += x*(q.Lat-p.Lat) - d*(p.Lat-ring[0].Lat)
		x += d
		lat += p.Lat
	})
	if math.Abs(x) > 180 { // once round
		if lat > 0 {
			return x > 0, true
		}
		return x < 0, false
	}
	return area > 0, false
}

// Land reports whether p is on land: inside a polygon and not inside one of
// its holes. A place exactly on a shore is on one side of it, always the
// same. Lines have no inside.
//
// The error wraps [ErrPosition] for a position off the globe and [ErrCoast]
// for a nil coast.
func (c *Coast) Land(p Point) (bool, error) {
	if err := c.check(p); err != nil {
		return false, err
	}
	return c.land(p), nil
}

func (c *Coast) check(ps ...Point) error {
	if c == nil {
		return fmt.Errorf("%w: no coast is known", ErrCoast)
	}
	for _, p := range ps {
		if err := p.Check(); err != nil {
			return err
		}
	}
	return nil
}

func (c *Coast) land(p Point) bool { return c.pole+c.tree.winding(p) != 0 }

// Shore is the place on a coast that is nearest to another place.
type Shore struct {
	Point    Point
	Distance float64 // metres
	Bearing  float64 // degrees toward the shore; NaN at the shore itself
	OnLand   bool    // asked from a place on land, so that Bearing looks seaward
}

// NearestShore returns the place on the coast nearest to p, whether p is
// afloat or on land. The distance is right
// to 0.1 m.
//
// The error wraps [ErrPosition], or [ErrCoast] for a nil coast and for one
// without any shore.
func (c *Coast) NearestShore(p Point) (Shore, error) {
	if err := c.check(p); err != nil {
		return Shore{}, err
	}
	eye := geocentric(p)
	s, t := c.tree.nearest(&eye)
	if s == nil {
		return Shore{}, fmt.Errorf("%w: it has no shore", ErrCoast)
	}
	return shoreAt(p, s.at(t), c.land(p)), nil
}

func shoreAt(p, at Point, onLand bool) Shore {
	leg := Inverse(p, at)
	if leg.Distance == 0 {
		leg.Course = math.NaN()
	}
	return Shore{Point: at, Distance: leg.Distance, Bearing: leg.Course, OnLand: onLand}
}

// ShoreWind is a wind, or any other motion, seen from the nearest shore.
type ShoreWind struct {
	Shore   Shore
	Onshore float64 // m/s toward the land; negative is offshore
	Along   float64 // m/s along the shore, positive to the right of a look at the land
}

// Kind returns "onshore", "offshore" or "alongshore", by which of the four
// quarters around the bearing of the shore the motion goes to, or "calm", or
// "unknown" for one that is not a number.
func (w ShoreWind) Kind() string {
	switch {
	case w.Onshore == 0 && w.Along == 0:
		return "calm"
	case w.Onshore >= math.Abs(w.Along):
		return "onshore"
	case -w.Onshore >= math.Abs(w.Along):
		return "offshore"
	case math.Abs(w.Along) > math.Abs(w.Onshore):
		return "alongshore"
	}
	return "unknown"
}

// ShoreWind resolves a wind at p on the line to the nearest shore: onshore,
// the wind that carries a drifting board to land there, or offshore, the one
// that carries it out. On a bay or an island the nearest shore is one of
// many; where the drift really ends is what [Coast.Landfall] answers.
//
// Errors are those of [Coast.NearestShore]; a place exactly on the shore has
// no bearing to it and is an error too.
func (c *Coast) ShoreWind(p Point, wind Velocity) (ShoreWind, error) {
	s, err := c.NearestShore(p)
	if err != nil {
		return ShoreWind{}, err
	}
	if math.IsNaN(s.Bearing) {
		return ShoreWind{}, fmt.Errorf("%w: the place is on the shore, which has no bearing from there", ErrCoast)
	}
	if math.IsNaN(wind.Speed()) || math.IsInf(wind.Speed(), 0) {
		return ShoreWind{}, fmt.Errorf("route: wind: %v is not a velocity", wind)
	}
	land := s.Bearing
	if s.OnLand {
		land = angle.Wrap(land + 180)
	}
	on, right := wind.Resolve(land)
	return ShoreWind{Shore: s, Onshore: on, Along: right}, nil
}
