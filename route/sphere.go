package route

import "math"

// MeanRadius is the mean radius of the Earth, (2a + b)/3 of GRS 80, in metres.
const MeanRadius = 6371008.8

// Sphere is the Earth taken for a ball, an approximation: its distances are
// wrong by up to 0.56 % (a north-south leg on the equator), its courses by up
// to 0.2 degrees. It serves for display, for the worked examples of books, and
// where another program's numbers must be met. The zero value has [MeanRadius];
// for one minute of arc to the nautical mile use Radius: 180 * 60 * 1852 / pi.
type Sphere struct {
	Radius float64 // metres; 0 stands for MeanRadius
}

func (s Sphere) radius() float64 {
	if s.Radius == 0 {
		return MeanRadius
	}
	if !(s.Radius > 0 && finite(s.Radius)) {
		return math.NaN()
	}
	return s.Radius
}

// Haversine returns the great-circle distance in metres between two positions
// on a sphere of [MeanRadius]. It is an approximation; see [Sphere] for its error
// and [ShortInverse] for the right answer at the same cost.
//
// Special cases are:
//
//	NaN for a position that fails [Point.Check]
//
// Source: [Williams2013] distance between points.
func Haversine(from, to Point) float64 { return Sphere{}.Inverse(from, to).Distance }

// Inverse returns the great circle between two positions on the sphere:
//
//	hav d = sin²(dlat/2) + cos lat1 cos lat2 sin²(dlon/2)
//	distance = R d
//
// It is computed from the sine of d and the cosine of d together, which is the
// haversine for a short line and keeps its digits near the antipode, where the
// haversine loses them as the arc cosine does on short lines.
//
// Special cases are:
//
//	a position that fails [Point.Check] or a radius that is not positive: all fields NaN
//
// Source: [Williams2013] distance between points, course between points.
func (s Sphere) Inverse(from, to Point) Leg {
	r := s.radius()
	if !from.valid() || !to.valid() || math.IsNaN(r) {
		return noLeg
	}
	s1, c1 := sincosd(from.Lat)
	s2, c2 := sincosd(to.Lat)
	dl, rest := diffLon(from.Lon, to.Lon)
	sl, cl := sincosd(dl + rest)
	hl, _ := sincosd((dl + rest) / 2)
	// cos lat1 sin lat2 - sin lat1 cos lat2 cos dl, without its cancellation.
	sb, _ := sincosd(to.Lat - from.Lat)
	x, y := sl*c2, sb+2*s1*c2*hl*hl
	d := math.Atan2(math.Hypot(x, y), s1*s2+c1*c2*cl)
	return Leg{
		From: from, To: to, Distance: r * d,
		Course: wrapDeg(atan2d(x, y)),
		End:    wrapDeg(atan2d(sl*c1, s2*c1*cl-c2*s1)),
	}
}

// Direct returns the great circle that leaves a position on a course and goes
// a distance on the sphere.
//
// Special cases are:
//
//	a position that fails [Point.Check], NaN or infinite course or distance: all fields NaN
//
// Source: [Williams2013] lat/lon given radial and distance.
func (s Sphere) Direct(from Point, course, distance float64) Leg {
	r := s.radius()
	if !from.valid() || math.IsNaN(r) || !finite(course) || !finite(distance) {
		return noLeg
	}
	s1, c1 := sincosd(from.Lat)
	sa, ca := sincosd(course)
	sd, cd := math.Sincos(distance / r)
	s2 := s1*cd + c1*sd*ca
	x, y := c1*cd-s1*sd*ca, sd*sa // cos lat2 cos dlon, cos lat2 sin dlon
	to := Point{
		Lat: atan2d(s2, math.Hypot(x, y)),
		Lon: wrapLon(wrapLon(from.Lon) + atan2d(y, x)),
	}
	return Leg{from, to, distance, wrapDeg(course), wrapDeg(atan2d(sa*c1, cd*ca*c1-sd*s1))}
}

// Intermediate returns the position at a fraction of the way along the great
// circle from one position to another.
//
// Special cases are:
//
//	a position that fails [Point.Check], a NaN or infinite fraction: NaN, NaN
//
// Source: [Williams2013] intermediate points on a great circle.
func (s Sphere) Intermediate(from, to Point, fraction float64) Point {
	l := s.Inverse(from, to)
	return s.Direct(from, l.Course, fraction*l.Distance).To
}

// Offset returns where a position lies against the great circle from one
// position through another: how far along it, and how far to the right of it
// (negative: to the left), in metres.
//
//	right = R asin(sin d13 sin(c13 - c12))
//	along = R atan2(sin d13 cos(c13 - c12), cos d13)
//
// Special cases are:
//
//	a position that fails [Point.Check]: NaN, NaN
//
// Source: [Williams2013] cross track error.
func (s Sphere) Offset(p, from, to Point) (along, right float64) {
	r := s.radius()
	to12, to13 := s.Inverse(from, to), s.Inverse(from, p)
	sd, cd := math.Sincos(to13.Distance / r)
	sa, ca := sincosd(to13.Course - to12.Course)
	return r * math.Atan2(sd*ca, cd), r * math.Asin(sd*sa)
}

// Rhumb returns the line of constant course between two positions on the
// sphere; see [Rhumb] for the ellipsoid.
//
// Source: [Williams2013] rhumb line navigation.
func (s Sphere) Rhumb(from, to Point) Leg {
	g := figure{a: s.radius(), b: s.radius(), f1: 1, polar: s.radius(), usable: !math.IsNaN(s.radius())}
	return g.rhumb(from, to)
}

// RhumbDirect returns the line of constant course that leaves a position and
// goes a distance on the sphere; see [RhumbDirect] for the ellipsoid.
//
// Source: [Williams2013] rhumb line navigation.
func (s Sphere) RhumbDirect(from Point, course, distance float64) Leg {
	g := figure{a: s.radius(), b: s.radius(), f1: 1, polar: s.radius(), usable: !math.IsNaN(s.radius())}
	return g.rhumbDirect(from, course, distance)
}
