package route

import (
	"math"
	"time"
)

// The Sun by the low-accuracy method of Meeus, chapter 25: a Kepler ellipse
// with slowly changing elements, the equation of the centre to three terms,
// aberration, and the largest term of the nutation. It is right to 0.01
// degrees, which is 2.4 seconds of time.

// Sun is where the Sun stands in the sky of the geocentre, in degrees.
type Sun struct {
	TrueLongitude float64 // of date, mean equinox, 0 to 360
	Anomaly       float64 // mean anomaly, 0 to 360
	Eccentricity  float64 // of the Earth's orbit
	Distance      float64 // astronomical units
	Apparent      float64 // longitude with nutation and aberration
	Ascension     float64 // apparent right ascension, 0 to 360
	Declination   float64 // apparent
	Equation      float64 // equation of time in seconds: apparent less mean solar time
}

// julian2000 is the Julian day of the epoch J2000.
const julian2000 = 2451545.0

// SunAtJulian returns the position of the Sun at a Julian ephemeris day.
//
//	T  = (JDE - 2451545) / 36525
//	L0 = 280.46646 + 36000.76983 T + 0.0003032 T²
//	M  = 357.52911 + 35999.05029 T - 0.0001537 T²
//	e  = 0.016708634 - 0.000042037 T - 0.0000001267 T²
//	C  = (1.914602 - 0.004817 T - 0.000014 T²) sin M + (0.019993 - 0.000101 T) sin 2M + 0.000289 sin 3M
//	longitude = L0 + C,   R = 1.000001018 (1 - e²) / (1 + e cos(M + C))
//	apparent  = longitude - 0.00569 - 0.00478 sin(125.04 - 1934.136 T)
//
// The equation of time is Smart's: with y = tan²(obliquity / 2),
//
//	E = y sin 2L0 - 2e sin M + 4ey sin M cos 2L0 - y²/2 sin 4L0 - 5/4 e² sin 2M
//
// Good to 0.01 degrees for some centuries about 2000.
//
// Special cases are:
//
//	a NaN or infinite day, or one more than 40 centuries from 2000: all fields NaN
//
// Source: [Meeus1998] chapter 25, low accuracy; equation 28.3.
func SunAtJulian(jde float64) Sun {
	t := (jde - julian2000) / 36525
	if !(math.Abs(t) <= 40) {
		nan := math.NaN()
		return Sun{nan, nan, nan, nan, nan, nan, nan, nan}
	}
	l0 := wrapDeg(280.46646 + t*(36000.76983+t*0.0003032))
	m := wrapDeg(357.52911 + t*(35999.05029-t*0.0001537))
	e := 0.016708634 - t*(0.000042037+t*0.0000001267)
	sm, cm := sincosd(m)
	s2m, c2m := 2*sm*cm, 1-2*sm*sm
	s3m := s2m*cm + c2m*sm
	c := (1.914602-t*(0.004817+t*0.000014))*sm + (0.019993-t*0.000101)*s2m + 0.000289*s3m
	_, cv := sincosd(m + c)
	so, co := sincosd(125.04 - 1934.136*t)
	apparent := l0 + c - 0.00569 - 0.00478*so
	mean := 23 + 26.0/60 + 21.448/3600 - t*(46.8150+t*(0.00059-t*0.001813))/3600
	obliquity := mean + 0.00256*co
	sl, cl := sincosd(apparent)
	se, ce := sincosd(obliquity)

	y := math.Tan(mean * (math.Pi / 360))
	y *= y
	sq, cq := sincosd(2 * l0)
	eq := y*sq - 2*e*sm + 4*e*y*sm*cq - y*y*sq*cq - 1.25*e*e*s2m
	return Sun{
		TrueLongitude: wrapDeg(l0 + c),
		Anomaly:       m,
		Eccentricity:  e,
		Distance:      1.000001018 * (1 - e*e) / (1 + e*cv),
		Apparent:      wrapDeg(apparent),
		Ascension:     wrapDeg(atan2d(ce*sl, cl)),
		Declination:   math.Asin(se*sl) * (180 / math.Pi),
		Equation:      eq * (86400 / (2 * math.Pi)),
	}
}

// SunAt returns the position of the Sun at an instant. Universal time is taken
// for ephemeris time: the minute or so between them moves the Sun by less than
// 0.001 degrees.
//
// Special cases are:
//
//	an instant more than 40 centuries from 2000, and so the zero time: as for [SunAtJulian]
//
// Source: [Meeus1998] chapter 25.
func SunAt(t time.Time) Sun { return SunAtJulian(julianDay(t)) }

// julianDay returns the Julian day of an instant.
func julianDay(t time.Time) float64 {
	return 2440587.5 + (float64(t.Unix())+float64(t.Nanosecond())*1e-9)/86400
}

// SunAltitude returns how high the centre of the Sun stands above the true
// horizon of a position, without refraction, and in which direction, in degrees.
//
//	sin h = sin lat sin dec + cos lat cos dec cos H
//	H = (UTC - 12 h + equation of time) 15 + lon
//
// Special cases are:
//
//	a position that fails [Point.Check]: NaN, NaN
//
// Source: [Meeus1998] equations 13.5 and 13.6.
func SunAltitude(p Point, t time.Time) (altitude, bearing float64) {
	if !p.valid() {
		return math.NaN(), math.NaN()
	}
	s := SunAt(t)
	_, day := math.Modf(julianDay(t) + 0.5)
	return altitudeAt(p, s.Declination, (day-0.5)*360+s.Equation/240+p.Lon)
}

func altitudeAt(p Point, dec, hour float64) (altitude, bearing float64) {
	sb, cb := sincosd(p.Lat)
	sd, cd := sincosd(dec)
	sh, ch := sincosd(hour)
	x, y, z := cb*sd-sb*cd*ch, -cd*sh, sb*sd+cb*cd*ch // north, east, up
	return atan2d(z, math.Hypot(x, y)), wrapDeg(atan2d(y, x))
}

// SemiDiurnalArc returns half the arc, in degrees of hour angle, that a body
// of the given declination spends above an altitude at a latitude: 15 degrees
// are an hour.
//
//	cos H = (sin altitude - sin lat sin dec) / (cos lat cos dec)
//
// Special cases are:
//
//	a body that never sinks to the altitude: 180
//	a body that never rises to it: 0
//	a latitude or declination outside -90 to 90, an altitude outside -90 to 90, NaN: NaN
//
// Source: [Meeus1998] equation 15.1.
func SemiDiurnalArc(lat, declination, altitude float64) float64 {
	if !(math.Abs(lat) <= 90 && math.Abs(declination) <= 90 && math.Abs(altitude) <= 90) {
		return math.NaN()
	}
	sb, cb := sincosd(lat)
	sd, cd := sincosd(declination)
	sa, _ := sincosd(altitude)
	up, half := sa-sb*sd, cb*cd
	switch {
	case up <= -half:
		return 180
	case up >= half:
		return 0
	}
	return math.Acos(up/half) * (180 / math.Pi)
}
