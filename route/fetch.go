package route

import (
	"fmt"
	"math"
)

// farthest is the longest line of sight: a quarter of the globe is where a
// plane upright on the eye stops being the line a wind blows along.
const farthest = 5_000_000.0

// Fetch returns the straight distance in metres over open water from p along
// a bearing to the first shore, but no more than limit. For a wind, the
// bearing is the direction it comes from, which is where its fetch lies. An
// island in the way ends the fetch: what the sea behind it brings round the
// island is not in this number.
//
// The line is the one in the upright plane through p, which is within 1 m of
// the geodesic at 300 km; the distance is that of the geodesic to where it
// meets the shore.
//
// Special cases are:
//
//	Fetch = 0 for p on land
//	Fetch = limit where there is no shore within it
//	Fetch = NaN for p off the globe, a NaN or infinite bearing
//	Fetch = NaN for a limit that is NaN, zero, negative or over 5000 km
//	Fetch = NaN on a nil coast, which nobody knows
//
// Source: the straight-line fetch of [CEM-II-2].
func (c *Coast) Fetch(p Point, bearing, limit float64) float64 {
	if c == nil || !p.valid() || !finite(bearing) || !(limit > 0 && limit <= farthest) {
		return math.NaN()
	}
	if c.land(p) {
		return 0
	}
	east, north, _ := axes(p)
	return c.sighted(p, geocentric(p), east, north, bearing, limit)
}

// sighted is Fetch of a place afloat. The chord, which is never the longer,
// finds the shore; the geodesic measures how far it is.
func (c *Coast) sighted(p Point, eye, east, north vec, bearing, limit float64) float64 {
	v := newSight(eye, east, north, bearing)
	s, t := c.tree.look(&v, limit*limit)
	if s == nil {
		return limit
	}
	return min(Inverse(p, s.at(t)).Distance, limit)
}

// FetchRose returns the fetch from p in n directions, the first to the north
// and the others clockwise at 360/n degrees. It is [Coast.Fetch] n times, at
// less than n times its price. The special cases are those of Fetch, in every
// direction.
//
// FetchRose panics unless n is positive.
func (c *Coast) FetchRose(p Point, n int, limit float64) []float64 {
	if n <= 0 {
		panic("route: FetchRose: n is not positive")
	}
	rose := make([]float64, n)
	fill := math.NaN()
	if c != nil && p.valid() && limit > 0 && limit <= farthest {
		if !c.land(p) {
			eye := geocentric(p)
			east, north, _ := axes(p)
			for i := range rose {
				rose[i] = c.sighted(p, eye, east, north, float64(i)*360/float64(n), limit)
			}
			return rose
		}
		fill = 0
	}
	for i := range rose {
		rose[i] = fill
	}
	return rose
}

// LandCrossing is what a straight line meets.
type LandCrossing struct {
	Land     bool    // it meets land, or a shore
	Point    Point   // where first; the start if that is on land
	Distance float64 // metres from the start to there
}

// Crosses reports whether the straight line from a to b meets a shore or
// starts on land, and where first. A line that only touches a shore counts as
// meeting it.
//
// The error wraps [ErrPosition] for a position off the globe and [ErrCoast]
// for a nil coast or a line longer than 5000 km.
func (c *Coast) Crosses(a, b Point) (LandCrossing, error) {
	if err := c.check(a, b); err != nil {
		return LandCrossing{}, err
	}
	if c.land(a) {
		return LandCrossing{Land: true, Point: a}, nil
	}
	d := Inverse(a, b).Distance
	if !(d <= farthest) {
		return LandCrossing{}, fmt.Errorf("%w: line of %.0f km, of at most %.0f", ErrCoast, d/1000, farthest/1000)
	}
	if d == 0 {
		return LandCrossing{}, nil
	}
	east, north, _ := axes(a)
	eye := geocentric(a)
	to := geocentric(b).sub(eye)
	v := newSight(eye, east, north, atan2d(to.dot(east), to.dot(north)))
	end := math.Sqrt(to.norm2())
	// The line is looked along to a hand's breadth past its end, so that one
	// that ends exactly at a shore meets it.
	s, t := c.tree.look(&v, (end+0.1)*(end+0.1))
	if s == nil {
		return LandCrossing{}, nil
	}
	at := s.at(t)
	return LandCrossing{Land: true, Point: at, Distance: min(Inverse(a, at).Distance, d)}, nil
}

// Landfall is where a track first meets the shore.
type Landfall struct {
	Found    bool
	Leg      int     // the leg from track[Leg] to track[Leg+1]
	Fraction float64 // how far along that leg, 0 to 1
	Point    Point
	Distance float64 // metres along the track to there
}

// Landfall follows a track, such as that of a drifting board, to where it
// first meets the shore. The time of landfall is that of the two ends of the
// leg, Fraction of the way from one to the other.
//
// The errors are those of [Coast.Crosses], with the leg; a track of fewer
// than two positions wraps [ErrPosition].
func (c *Coast) Landfall(track []Point) (Landfall, error) {
	if len(track) < 2 {
		return Landfall{}, fmt.Errorf("%w: a track of %d positions, of at least 2", ErrPosition, len(track))
	}
	gone := 0.0
	for i := 1; i < len(track); i++ {
		x, err := c.Crosses(track[i-1], track[i])
		if err != nil {
			return Landfall{}, fmt.Errorf("leg %d: %w", i-1, err)
		}
		d := Inverse(track[i-1], track[i]).Distance
		if x.Land {
			f := 0.0
			if d > 0 {
				f = x.Distance / d
			}
			return Landfall{Found: true, Leg: i - 1, Fraction: f, Point: x.Point, Distance: gone + x.Distance}, nil
		}
		gone += d
	}
	return Landfall{}, nil
}
