package route

import "math"

// The rhumb line. On the ellipsoid with the meridian distance m(lat) and the
// isometric latitude psi(lat), a line of constant course alpha satisfies
//
//	tan alpha = dlon / dpsi,   distance = dm / cos alpha = hypot(dlon, dpsi) dm/dpsi
//	psi = atanh(sin lat) - e atanh(e sin lat)
//
// and dm/dpsi is N cos lat where the latitudes are equal. For a small
// difference of latitude both differences are integrated over it (three-point
// Gauss-Legendre), because subtracting them would lose an east-west line.

// Rhumb returns the line of constant course on WGS 84 between two positions:
// what a board that holds one heading in still water sails. It goes the short
// way round in longitude.
//
// Special cases are:
//
//	equal positions: distance 0, course 0
//	a pole: the course is 0 or 180, the line is the meridian
//	exactly 180 degrees of longitude apart: the westward line
//	a position that fails [Point.Check]: all fields NaN
//
// Source: [Bowditch2002] chapter 24, Mercator sailing; [Williams2013] rhumb line navigation.
func Rhumb(from, to Point) Leg { return wgs84.rhumb(from, to) }

// Rhumb returns the line of constant course between two positions on the
// ellipsoid; see the function [Rhumb].
func (e Ellipsoid) Rhumb(from, to Point) Leg { return e.figure().rhumb(from, to) }

// RhumbDirect returns the line on WGS 84 that leaves a position, holds a
// course and goes a distance in metres.
//
// Special cases are:
//
//	a line that would pass a pole: all fields NaN, since it has no longitude beyond
//	a position that fails [Point.Check], NaN or infinite course or distance: all fields NaN
//
// Source: [Bowditch2002] chapter 24, Mercator sailing.
func RhumbDirect(from Point, course, distance float64) Leg {
	return wgs84.rhumbDirect(from, course, distance)
}

// RhumbDirect returns the line of constant course that leaves a position on
// the ellipsoid; see the function [RhumbDirect].
func (e Ellipsoid) RhumbDirect(from Point, course, distance float64) Leg {
	return e.figure().rhumbDirect(from, course, distance)
}

// MeridionalParts returns the length on a Mercator chart from the equator to
// a latitude, in minutes of longitude at the equator: the scale of the
// Mercator sailing, dlon = (difference of meridional parts) tan(course).
//
// Special cases are:
//
//	MeridionalParts(±90) = ±Inf
//	NaN for a latitude outside -90 to 90 or NaN
//
// Source: [Bowditch2002] table 6, explanation.
func MeridionalParts(lat float64) float64 { return Ellipsoid{}.MeridionalParts(lat) }

// MeridionalParts returns the meridional parts of a latitude on the ellipsoid;
// see the function [MeridionalParts].
func (e Ellipsoid) MeridionalParts(lat float64) float64 {
	g := e.figure()
	if !(lat >= -90 && lat <= 90) || !g.usable {
		return math.NaN()
	}
	return g.isometric(lat) * (180 * 60 / math.Pi)
}

// isometric returns psi in radians.
func (g *figure) isometric(lat float64) float64 {
	s, c := sincosd(lat)
	psi := math.Asinh(s / c)
	if g.e2 > 0 {
		e := math.Sqrt(g.e2)
		psi -= e * math.Atanh(e*s)
	} else if g.e2 < 0 {
		e := math.Sqrt(-g.e2)
		psi += e * math.Atan(e*s)
	}
	return psi
}

// meridian returns the distance along the meridian from the equator.
func (g *figure) meridian(lat float64) float64 {
	var c [order + 1]float64
	a := 1 + distA1(g.n, &c)
	s, co := sincosd(lat)
	s, co = unit(s*g.f1, co)
	return g.b * a * (math.Atan2(s, co) + sineSeries(s, co, &c))
}

// meridianLat returns the latitude at a distance along the meridian.
func (g *figure) meridianLat(m float64) float64 {
	var c, cp [order + 1]float64
	a := 1 + distA1(g.n, &c)
	distC1p(g.n, &cp)
	tau := m / (g.b * a)
	st, ct := math.Sincos(tau)
	s, co := math.Sincos(tau + sineSeries(st, ct, &cp))
	return atan2d(s, g.f1*co)
}

// spans returns dm and dpsi between two latitudes in degrees.
func (g *figure) spans(lat1, lat2 float64) (dm, dpsi float64) {
	const small = 0.5
	if math.Abs(lat2-lat1) > small || math.Max(math.Abs(lat1), math.Abs(lat2)) > 89 {
		return g.meridian(lat2) - g.meridian(lat1), g.isometric(lat2) - g.isometric(lat1)
	}
	h := (lat2 - lat1) / 2
	mid := (lat1 + lat2) / 2
	for i, x := range [3]float64{-0.7745966692414834, 0, 0.7745966692414834} {
		w := 5.0 / 9
		if i == 1 {
			w = 8.0 / 9
		}
		s, c := sincosd(mid + x*h)
		w2 := 1 - g.e2*s*s
		m := g.a * (1 - g.e2) / (w2 * math.Sqrt(w2))
		dm += w * m
		dpsi += w * (1 - g.e2) / (w2 * c)
	}
	h *= math.Pi / 180
	return dm * h, dpsi * h
}

// parallel returns N cos lat.
func (g *figure) parallel(lat float64) float64 {
	s, c := sincosd(lat)
	return g.a / math.Sqrt(1-g.e2*s*s) * c
}

func (g *figure) rhumb(from, to Point) Leg {
	if !from.valid() || !to.valid() || !g.usable {
		return noLeg
	}
	if math.Abs(from.Lat) == 90 || math.Abs(to.Lat) == 90 {
		m := g.meridian(to.Lat) - g.meridian(from.Lat)
		c := 0.0
		if m < 0 {
			c = 180
		}
		return Leg{from, to, math.Abs(m), c, c}
	}
	d, rest := diffLon(from.Lon, to.Lon)
	dlon := (d + rest) * (math.Pi / 180)
	if d == 180 {
		dlon = -math.Pi
	}
	dm, dpsi := g.spans(from.Lat, to.Lat)
	c := wrapDeg(atan2d(dlon, dpsi))
	if dm == 0 {
		return Leg{from, to, math.Abs(dlon) * g.parallel(from.Lat), c, c}
	}
	return Leg{from, to, math.Hypot(dlon, dpsi) * dm / dpsi, c, c}
}

func (g *figure) rhumbDirect(from Point, course, distance float64) Leg {
	if !from.valid() || !g.usable || !finite(course) || !finite(distance) {
		return noLeg
	}
	sa, ca := sincosd(course)
	dm := distance * ca
	m2 := g.meridian(from.Lat) + dm
	if !(math.Abs(m2) <= g.meridian(90)) {
		return noLeg
	}
	var lat2, dlon float64
	if math.Abs(dm) < 50e3 && math.Abs(from.Lat) < 88 {
		// Newton from the radius at the start keeps the digits of a short line.
		rm, _ := g.radii(from.Lat)
		dlat := dm / rm * (180 / math.Pi)
		for range 3 {
			got, _ := g.spans(from.Lat, from.Lat+dlat)
			dlat += (dm - got) / rm * (180 / math.Pi)
		}
		lat2 = from.Lat + dlat
		got, dpsi := g.spans(from.Lat, lat2)
		switch {
		case got == 0:
			dlon = distance * sa / g.parallel(from.Lat)
		default:
			dlon = distance * sa * dpsi / got
		}
	} else {
		lat2 = min(90, max(-90, g.meridianLat(m2)))
		if sa != 0 && (math.Abs(from.Lat) == 90 || math.Abs(lat2) == 90) {
			return noLeg
		}
		if sa != 0 {
			got, dpsi := g.spans(from.Lat, lat2)
			dlon = distance * sa / g.parallel(from.Lat)
			if got != 0 {
				dlon = distance * sa * dpsi / got
			}
		}
	}
	to := Point{lat2, wrapLon(wrapLon(from.Lon) + wrapLon(dlon*(180/math.Pi)))}
	c := wrapDeg(course)
	return Leg{from, to, distance, c, c}
}

func (g *figure) radii(lat float64) (meridian, prime float64) {
	s, _ := sincosd(lat)
	w2 := 1 - g.e2*s*s
	prime = g.a / math.Sqrt(w2)
	return prime * (1 - g.e2) / w2, prime
}

// Mid-latitude sailing, the arithmetic of a pencil and a table of cosines: the
// minute of latitude is a nautical mile, and the departure (the miles made
// good east or west) turns into longitude at the mean latitude.
//
//	dlat = distance cos(course),  departure = distance sin(course),  dlon = departure / cos(mean latitude)

// MidLatitude returns the line between two positions by mid-latitude sailing,
// an approximation: a minute of latitude is taken for 1852 m, which is wrong by
// up to 0.6 %, and the mean latitude for the middle one. Positions on both
// sides of the equator, or further apart than a few hundred miles, are not for
// it.
//
// Special cases are:
//
//	a position that fails [Point.Check]: all fields NaN
//
// Source: [Bowditch2002] chapter 24, mid-latitude sailing.
func MidLatitude(from, to Point) Leg {
	if !from.valid() || !to.valid() {
		return noLeg
	}
	_, c := sincosd((from.Lat + to.Lat) / 2)
	d, rest := diffLon(from.Lon, to.Lon)
	north := (to.Lat - from.Lat) * 60 * NauticalMile
	east := (d + rest) * 60 * NauticalMile * c
	course := wrapDeg(atan2d(east, north))
	return Leg{from, to, math.Hypot(east, north), course, course}
}

// MidLatitudeDirect returns the line that leaves a position on a course and
// goes a distance, by mid-latitude sailing; see [MidLatitude].
//
// Special cases are:
//
//	an end beyond a pole, a position that fails [Point.Check], NaN or infinite
//	course or distance: all fields NaN
//
// Source: [Bowditch2002] chapter 24, mid-latitude sailing.
func MidLatitudeDirect(from Point, course, distance float64) Leg {
	if !from.valid() || !finite(course) || !finite(distance) {
		return noLeg
	}
	s, c := sincosd(course)
	lat2 := from.Lat + distance*c/(60*NauticalMile)
	_, cm := sincosd((from.Lat + lat2) / 2)
	if !(math.Abs(lat2) < 90) || !(cm > 0) {
		return noLeg
	}
	to := Point{lat2, wrapLon(from.Lon + distance*s/cm/(60*NauticalMile))}
	crs := wrapDeg(course)
	return Leg{from, to, distance, crs, crs}
}
