package route

import "math"

// Gauss's mid-latitude formulas, with their eta-squared terms.
//
// With B the mean latitude, b and l the differences of latitude and longitude
// in radians, s = sin B, c = cos B, eta² = e'² c², V² = 1 + eta², N and
// M = N/V² the radii of curvature at B, the line of length S whose end
// azimuths have the mean A and the difference dA satisfies to third order
//
//	S sin A = N c l [1 - l² s²/24 + b² (1 + eta² - 9 e'² s²) / 24V⁴]
//	S cos A = M b   [1 - l² (2 + s² + 2 eta² c²)/24
//	                   + b² (eta² (1 + eta²) - e'² s² (1 - 4 eta²)) / 8V⁴]
//	dA      = l s   [1 + l² c² (1 + eta²)/12 + b² (3 + 5 eta²) / 24V²]
//
// On the sphere (eta = 0) these are the third-order terms of Delambre's
// analogies. One sine and cosine, two square roots and one arc tangent: no
// dearer than the haversine with a bearing, and right.

// ShortInverse returns the geodesic on WGS 84 between two positions that are
// not far apart, by Gauss's mid-latitude formulas.
//
// Against [Inverse] the distance is within 0.1 mm to 40 km at latitudes to 75
// degrees and within 1 mm to 100 km at latitudes to 60; the courses are within
// 1e-6 degrees there. The error grows as the fourth power of the length and
// fastest toward the poles.
//
// Special cases are:
//
//	equal positions: distance 0, course 0
//	mean latitude beyond 85, or positions more than 5 degrees of latitude or
//	10 of longitude apart: all fields NaN, use [Inverse]
//	a position that fails [Point.Check]: all fields NaN
//
// Source: [Torge2012] section 6.3; the terms were derived anew from the geodesic
// equations.
func ShortInverse(from, to Point) Leg { return wgs84.short(from, to) }

// ShortInverse returns the geodesic between two near positions on the
// ellipsoid; see the function [ShortInverse].
func (e Ellipsoid) ShortInverse(from, to Point) Leg {
	g := e.figure()
	if !g.usable {
		return noLeg
	}
	return g.short(from, to)
}

// ShortDistance returns the length of the geodesic on WGS 84 between two
// positions that are not far apart: the distance of [ShortInverse] without its
// courses, which are most of the work. It is cheaper than a haversine.
//
// Special cases are those of [ShortInverse], with NaN for its NaN.
//
// Source: [Torge2012] section 6.3.
func ShortDistance(from, to Point) float64 {
	mid := (from.Lat + to.Lat) / 2
	db, dl := to.Lat-from.Lat, wrapLon(to.Lon-from.Lon)
	if !(math.Abs(mid) <= shortPole && math.Abs(db) <= shortLat && math.Abs(dl) <= shortLon) ||
		!from.valid() || !to.valid() {
		return math.NaN()
	}
	const rad = math.Pi / 180
	s, c := math.Sincos(mid * rad)
	north, east, _ := wgs84.gauss(s, c, db*rad, dl*rad)
	return math.Sqrt(east*east + north*north)
}

// The reach of the mid-latitude formulas, degrees.
const (
	shortLat  = 5.0
	shortLon  = 10.0
	shortPole = 85.0
)

func (g *figure) short(from, to Point) Leg {
	mid := (from.Lat + to.Lat) / 2
	db, dl := to.Lat-from.Lat, wrapLon(to.Lon-from.Lon)
	if !(math.Abs(mid) <= shortPole && math.Abs(db) <= shortLat && math.Abs(dl) <= shortLon) ||
		!from.valid() || !to.valid() {
		return noLeg
	}
	const rad = math.Pi / 180
	s, c := math.Sincos(mid * rad)
	b, l := db*rad, dl*rad
	north, east, half := g.gauss(s, c, b, l)
	mean := math.Atan2(east, north) * (180 / math.Pi)
	half *= 180 / math.Pi
	return Leg{
		From: from, To: to,
		Distance: math.Sqrt(east*east + north*north),
		Course:   wrapDeg(mean - half),
		End:      wrapDeg(mean + half),
	}
}

// gauss returns S cos A, S sin A and half of dA.
func (g *figure) gauss(s, c, b, l float64) (north, east, half float64) {
	s2, c2, b2, l2 := s*s, c*c, b*b, l*l
	eta := g.ep2 * c2
	v2 := 1 + eta
	v4 := v2 * v2
	es := g.ep2 * s2
	n := g.polar / math.Sqrt(v2)
	east = n * c * l * (1 - l2*s2/24 + b2*(v2-9*es)/(24*v4))
	north = n / v2 * b * (1 - l2*(2+s2+2*eta*c2)/24 + b2*(eta*v2-es*(1-4*eta))/(8*v4))
	half = l * s / 2 * (1 + l2*c2*v2/12 + b2*(3+5*eta)/(24*v2))
	return north, east, half
}

// ShortDirect returns the line on WGS 84 that leaves a position on a course and
// goes a short distance: [ShortInverse] turned round by iteration, so that the
// two agree to rounding and with the accuracy stated there.
//
// Special cases are:
//
//	an end beyond the reach of [ShortInverse]: all fields NaN
//	a position that fails [Point.Check], NaN or infinite course or distance: all fields NaN
//	a negative distance goes back along the same line
//
// Source: [Torge2012] section 6.3.
func ShortDirect(from Point, course, distance float64) Leg {
	return wgs84.shortDirect(from, course, distance)
}

// ShortDirect returns the line on the ellipsoid that leaves a position on a
// course and goes a short distance; see the function [ShortDirect].
func (e Ellipsoid) ShortDirect(from Point, course, distance float64) Leg {
	g := e.figure()
	if !g.usable {
		return noLeg
	}
	return g.shortDirect(from, course, distance)
}

func (g *figure) shortDirect(from Point, course, distance float64) Leg {
	if !from.valid() || !finite(course) {
		return noLeg
	}
	const rad = math.Pi / 180
	start := math.Remainder(course, 360) * rad
	var b, l, half float64
	for range 12 {
		mid := from.Lat*rad + b/2
		// A step may go past an end that is within reach.
		if !(math.Abs(mid) <= (shortPole+1)*rad && math.Abs(b) <= 2*shortLat*rad && math.Abs(l) <= 2*shortLon*rad) {
			return noLeg
		}
		s, c := math.Sincos(mid)
		north, east, h := g.gauss(s, c, b, l)
		half = h
		sa, ca := math.Sincos(start + half)
		// What is left of the line, turned into degrees by the radii there.
		v2 := 1 + g.ep2*c*c
		n := g.polar / math.Sqrt(v2)
		db := (distance*ca - north) * v2 / n
		dl := (distance*sa - east) / (n * c)
		b += db
		l += dl
		if math.Abs(db)+math.Abs(dl) < 1e-16 {
			break
		}
	}
	to := Point{from.Lat + b/rad, wrapLon(from.Lon + l/rad)}
	if !(math.Abs(from.Lat+b/2/rad) <= shortPole && math.Abs(b) <= shortLat*rad && math.Abs(l) <= shortLon*rad) || !to.valid() {
		return noLeg
	}
	return Leg{from, to, distance, wrapDeg(course), wrapDeg(course + 2*half/rad)}
}
