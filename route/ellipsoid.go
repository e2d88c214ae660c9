package route

import "math"

// Ellipsoid is a figure of the Earth: an ellipse turned about the polar axis.
// The zero value is WGS 84, and the functions of the package of the same
// names are its methods; another figure serves old survey data and the worked
// examples of books.
//
// A method returns NaN if the axis is not positive and finite, or the
// flattening is not in (-0.02, 0.02). Figures of the Earth are six times rounder;
// at the ends of that range the series of order six lose a tenth of a micrometre.
type Ellipsoid struct {
	Axis       float64 // equatorial radius, metres
	Flattening float64 // (a - b) / a
}

// WGS84 and GRS80 are the figures in use; GRS80 differs from WGS84 by 0.1 mm
// at the pole.
var (
	WGS84 = Ellipsoid{6378137, 1 / 298.257223563}
	GRS80 = Ellipsoid{6378137, 1 / 298.257222101}
)

// figure holds what the formulas derive from an ellipsoid, so that a call on
// WGS 84 derives nothing.
type figure struct {
	a, b, f, f1 float64 // axes, flattening, 1 - f
	e2, ep2, n  float64 // eccentricities squared, third flattening
	polar       float64 // a²/b, the radius of curvature at the pole
	tol         float64 // when the antipodal start is needed
	a3          [6]float64
	c3          [15]float64
	usable      bool
}

var wgs84 = makeFigure(WGS84)

func (e Ellipsoid) figure() *figure {
	if e == (Ellipsoid{}) || e == WGS84 {
		return &wgs84
	}
	g := makeFigure(e)
	return &g
}

func makeFigure(e Ellipsoid) figure {
	a, f := e.Axis, e.Flattening
	if !(a > 0 && finite(a) && math.Abs(f) < 0.02) {
		return figure{a: math.NaN()}
	}
	g := figure{a: a, f: f, f1: 1 - f, usable: true}
	g.b = a * g.f1
	g.e2 = f * (2 - f)
	g.ep2 = g.e2 / (g.f1 * g.f1)
	g.n = f / (2 - f)
	g.polar = a / g.f1
	g.tol = 0.1 * tol2 / math.Sqrt(math.Max(0.001, math.Abs(f))*math.Min(1, 1-f/2)/2)
	g.series()
	return g
}

// Radii returns the radii of curvature of the ellipsoid at a latitude, in
// metres: along the meridian, and across it (the prime vertical).
//
//	M = a (1 - e²) / (1 - e² sin² lat)^1.5
//	N = a / (1 - e² sin² lat)^0.5
//
// A degree of latitude is M pi/180 and a degree of longitude is
// N cos(lat) pi/180.
//
// Special cases are:
//
//	NaN, NaN for a latitude outside -90 to 90 or NaN
//
// Source: [Meeus1998] chapter 11, example 11.b (where N cos(lat) is called Rp).
func (e Ellipsoid) Radii(lat float64) (meridian, prime float64) {
	g := e.figure()
	if !(lat >= -90 && lat <= 90) || !g.usable {
		return math.NaN(), math.NaN()
	}
	return g.radii(lat)
}

// Radii returns the radii of curvature of WGS 84; see [Ellipsoid.Radii].
func Radii(lat float64) (meridian, prime float64) { return Ellipsoid{}.Radii(lat) }

// Inverse returns the geodesic, the shortest line on WGS 84, between two
// positions. It is right to 15 nm for any pair, nearly antipodal ones
// included, and is the one to use for what is printed; [ShortInverse] is ten
// times as fast on the legs of a day.
//
// Special cases are:
//
//	equal positions: distance 0, course 0
//	a start on a pole: the course is reckoned from the meridian of its longitude
//	exact antipodes: one of the shortest lines, over the pole that is nearer to the start, from the equator the north pole
//	a position that fails [Point.Check]: all fields NaN
//
// Source: [Karney2013] sections 2 to 5, series of order six.
func Inverse(from, to Point) Leg { return wgs84.inverse(from, to) }

// Inverse returns the geodesic between two positions on the ellipsoid; see
// the function [Inverse].
func (e Ellipsoid) Inverse(from, to Point) Leg { return e.figure().inverse(from, to) }

// Direct returns the geodesic on WGS 84 that leaves a position on a course,
// in degrees true, and goes a distance in metres: where it ends, and on which
// course. A negative distance goes back along the same line.
//
// Special cases are:
//
//	a position that fails [Point.Check], NaN or infinite course or distance: all fields NaN
//
// Source: [Karney2013] sections 2 and 3.
func Direct(from Point, course, distance float64) Leg {
	return wgs84.direct(from, course, distance)
}

// Direct returns the geodesic on the ellipsoid that leaves a position on a
// course and goes a distance; see the function [Direct].
func (e Ellipsoid) Direct(from Point, course, distance float64) Leg {
	return e.figure().direct(from, course, distance)
}
