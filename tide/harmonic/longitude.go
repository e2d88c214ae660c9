package harmonic

import (
	"math"
	"time"

	"followingsea.example/internal/angle"
)

// Elements says whose mean motions of moon and sun are used.
type Elements uint8

// The elements. Modern is right for prediction. Schureman1900 are those of
// the printed American tables, referred to 1900; by now their moon is 0.02
// degrees ahead, four to six seconds of time in M2.
const (
	Modern Elements = iota
	Schureman1900
)

// Longitudes are the angles from which every constituent's argument is made,
// in degrees in [0, 360), T in UT.
type Longitudes struct {
	T  float64 // hour angle of the mean sun from upper transit: 15° an hour of UT, plus 180°
	S  float64 // mean longitude of the moon
	H  float64 // mean longitude of the sun
	P  float64 // mean longitude of the moon's perigee
	N  float64 // mean longitude of the moon's ascending node
	P1 float64 // mean longitude of the sun's perigee
}

// The motions of s, h, p, N and p1 in degrees per Julian century and their
// values at J2000.0 (2000 January 1, 12 h), the argument taken in UT.
var modern = [5][2]float64{
	{218.3164477, 481267.88123421},
	{280.46646, 36000.76983},
	{83.3532465, 4069.0137287},
	{125.0445479, -1934.1362891},
	{282.93734, 1.71946},
}

// The same of Schureman, from 1899 December 31, 12 h, in arc seconds:
// constant, t, t², t³ with t in centuries; whole turns of t apart.
var schureman = [5]struct {
	c     [4]float64
	turns float64
}{
	{[4]float64{973574.72, 1108411.20, 9.09, 0.0068}, 1336},
	{[4]float64{1006908.04, 129602768.13, 1.089, 0}, 0},
	{[4]float64{1203580.87, 392515.94, -37.24, -0.045}, 11},
	{[4]float64{933057.12, -482912.63, 7.58, 0.008}, -5},
	{[4]float64{1012395.00, 6189.03, 1.63, 0.012}, 0},
}

const (
	century   = 36525 * 86400.0 // seconds
	j2000     = 946728000       // 2000-01-01T12:00Z as Unix time
	epoch1900 = -2209032000     // 1899-12-31T12:00Z
)

// LongitudesAt returns the longitudes at the instant, by the elements.
//
// Modern elements are the mean elements of Meeus without their terms in t²
// and t³, which stay below 0.001° from 1950 to 2100.
//
// Special cases are:
//
//	LongitudesAt = NaN throughout for elements that are not known
//
// Source: [Meeus1998] ch. 22, 25, 47 (mean elements); [Schureman1958] table 1
// (elements of 1900).
func LongitudesAt(at time.Time, by Elements) Longitudes {
	u := at.UTC()
	day := float64(u.Hour())*3600 + float64(u.Minute())*60 + float64(u.Second()) + float64(u.Nanosecond())*1e-9
	l := Longitudes{T: angle.Wrap(day/240 + 180)}
	var v [5]float64
	switch by {
	case Modern:
		t := (float64(at.Unix()-j2000) + float64(at.Nanosecond())*1e-9) / century
		for i, m := range modern {
			v[i] = angle.Wrap(m[0] + m[1]*t)
		}
	case Schureman1900:
		t := (float64(at.Unix()-epoch1900) + float64(at.Nanosecond())*1e-9) / century
		for i, m := range schureman {
			whole := math.Mod(m.turns*t, 1) * 360
			v[i] = angle.Wrap(whole + (m.c[0]+t*(m.c[1]+t*(m.c[2]+t*m.c[3])))/3600)
		}
	default:
		nan := math.NaN()
		return Longitudes{nan, nan, nan, nan, nan, nan}
	}
	l.S, l.H, l.P, l.N, l.P1 = v[0], v[1], v[2], v[3], v[4]
	return l
}

// rates are the motions of T, s, h, p, p1 in degrees per hour of UT, modern.
var rates = [5]float64{15, 481267.88123421 / (36525 * 24), 36000.76983 / (36525 * 24), 4069.0137287 / (36525 * 24), 1.71946 / (36525 * 24)}
