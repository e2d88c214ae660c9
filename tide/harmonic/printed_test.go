package harmonic_test

import (
	"math"
	"testing"
	"time"

	"followingsea.example/tide/harmonic"
)

const rad = math.Pi / 180

// TestArguments: V of each simple constituent is that of its Doodson number (from
// memory of the usual tables; digits of τ = T - s + h, s, h, p, N, p1, five taken away from
// each but the first) and of the constant of [Schureman1958] table 2.
func TestArguments(t *testing.T) {
	l := harmonic.Longitudes{T: 11.3, S: 47.9, H: 101.7, P: 211.1, N: 33, P1: 282.6}
	for _, c := range []struct {
		name, doodson string
		plus          float64
	}{
		{"M2", "255.555", 0}, {"S2", "273.555", 0}, {"N2", "245.655", 0}, {"K1", "165.555", -90}, {"O1", "145.555", 90}, {"NU2", "247.455", 0},
		{"MU2", "237.555", 0}, {"2N2", "235.755", 0}, {"OO1", "185.555", -90}, {"LAM2", "263.655", 180}, {"S1", "164.555", 0}, {"M1", "155.555", -90},
		{"J1", "175.455", -90}, {"MM", "065.455", 0}, {"SSA", "057.555", 0}, {"SA", "056.555", 0}, {"MF", "075.555", 0}, {"RHO", "137.455", 90},
		{"Q1", "135.655", 90}, {"T2", "272.556", 0}, {"R2", "274.554", 180}, {"2Q1", "125.755", 90}, {"P1", "163.555", 90}, {"M3", "355.555", 0},
		{"L2", "265.455", 180}, {"K2", "275.555", 0}, {"SIG1", "127.555", 90}, {"CHI1", "157.455", -90}, {"PI1", "162.556", 90}, {"PSI1", "166.554", -90},
		{"PHI1", "167.555", -90}, {"THE1", "173.655", -90}, {"EPS2", "227.655", 0}, {"MTM", "085.455", 0}, {"MSQM", "093.555", 0},
	} {
		d := func(i int) float64 { return float64(c.doodson[i]) - '5' }
		v := (d(0)+5)*(l.T-l.S+l.H) + d(1)*l.S + d(2)*l.H + d(4)*l.P - d(5)*l.N + d(6)*l.P1 + c.plus
		near(t, c.name, math.Remainder(l.Argument(c.name)-v, 360), 0, 1e-9)
	}
}

// TestCompounds: the argument and the node angle of a compound are the sums of its parts',
// with their signs, and its node factor the product of theirs.
func TestCompounds(t *testing.T) {
	l := harmonic.LongitudesAt(utc("2026-05-01 07:00"), harmonic.Modern)
	for name, parts := range map[string]map[string]float64{
		"M4": {"M2": 2}, "M12": {"M2": 6}, "MK3": {"M2": 1, "K1": 1}, "2MK3": {"M2": 2, "K1": -1}, "MN4": {"M2": 1, "N2": 1}, "2SM2": {"S2": 2, "M2": -1},
		"MSF": {"S2": 1, "M2": -1}, "3MN4": {"M2": 3, "N2": -1}, "MKS2": {"M2": 1, "K2": 1, "S2": -1}, "2MK2": {"M2": 2, "K2": -1}, "SKM2": {"S2": 1, "K2": 1, "M2": -1},
		"SO1": {"S2": 1, "O1": -1}, "MP1": {"M2": 1, "P1": -1}, "MO3": {"M2": 1, "O1": 1}, "2MP3": {"M2": 2, "P1": -1}, "2MNK8": {"M2": 2, "N2": 1, "K2": 1},
		"3MNS6": {"M2": 3, "N2": 1, "S2": -1}, "3M2S10": {"M2": 3, "S2": 2},
	} {
		var v, u, speed float64
		f := 1.0
		for n, times := range parts {
			pf, pu := l.Node(n)
			v += times * l.Argument(n)
			u += times * pu
			f *= math.Pow(pf, math.Abs(times))
			speed += times * harmonic.Speed(n)
		}
		gf, gu := l.Node(name)
		near(t, name+" V", math.Remainder(l.Argument(name)-v, 360), 0, 1e-9)
		near(t, name+" u", math.Remainder(gu-u, 360), 0, 1e-9)
		near(t, name+" f", gf, f, 1e-12)
		near(t, name+" speed", harmonic.Speed(name), speed, 6e-7)
	}
	// M1's speed has the motion of p, 360° in 8.85 years, from its Q.
	a, b := harmonic.LongitudesAt(utc("2026-01-01 00:00"), harmonic.Modern), harmonic.LongitudesAt(utc("2026-01-01 01:00"), harmonic.Modern)
	near(t, "M1 speed", harmonic.Speed("M1"), math.Remainder(b.Argument("M1")+b.P-a.Argument("M1")-a.P, 360), 1e-7)
}

// TestOrbitTriangle: equator, ecliptic and the moon's orbit make a spherical triangle with the
// angles ω, i and 180° - I opposite to the sides N - ξ, ν and N: cosines and sines of it hold. On the
// equinox, N = 0, the orbit adds to the obliquity, and opposite to it takes away.
func TestOrbitTriangle(t *testing.T) {
	const i, w = 5.145 * rad, 23.452 * rad
	for n := -400.0; n <= 400; n += 7 {
		o := harmonic.Longitudes{N: n, P: 77}.Orbit()
		I, nu := o.I*rad, o.Nu*rad
		near(t, "cos I", math.Cos(I), math.Cos(i)*math.Cos(w)-math.Sin(i)*math.Sin(w)*math.Cos(n*rad), 1e-14)
		near(t, "sine of nu", math.Sin(nu)*math.Sin(I), math.Sin(i)*math.Sin(n*rad), 1e-14)
		near(t, "sine of N - xi", math.Sin((n-o.Xi)*rad)*math.Sin(I), math.Sin(w)*math.Sin(n*rad), 1e-14)
		// The side N - ξ from the sides N and ν and the angle between them, ω.
		near(t, "cosine of N - xi", math.Cos((n-o.Xi)*rad), math.Cos(n*rad)*math.Cos(nu)+math.Sin(n*rad)*math.Sin(nu)*math.Cos(w), 1e-14)
		if !(math.Abs(o.Nu) < 14 && math.Abs(o.Xi) < 13) {
			t.Errorf("N = %v: nu %v, xi %v", n, o.Nu, o.Xi)
		}
		s2, s := math.Sin(2*I), math.Sin(I)*math.Sin(I)
		near(t, "nu', formula 224", math.Tan(o.NuPrime*rad), s2*math.Sin(nu)/(s2*math.Cos(nu)+0.3347), 1e-13)
		near(t, "2nu'', formula 232", math.Tan(o.NuSecond*rad), s*math.Sin(2*nu)/(s*math.Cos(2*nu)+0.0727), 1e-13)
		near(t, "P = p - xi", math.Remainder(o.P-77+o.Xi, 360), 0, 1e-11)
	}
	for n, want := range map[float64]float64{0: 23.452 + 5.145, 180: 23.452 - 5.145} {
		o := harmonic.Longitudes{N: n, P: 77}.Orbit()
		near(t, "I", o.I, want, 1e-12)
		for _, a := range []float64{o.Xi, o.Nu, o.NuPrime, o.NuSecond, o.P - 77} {
			near(t, "angle on the line of the equinoxes", a, 0, 1e-12)
		}
	}
}

// TestNodeFormulas: f and u are those printed, over a whole turn of the node and of the perigee.
func TestNodeFormulas(t *testing.T) {
	for n := 0.0; n <= 360; n += 15 {
		for p := 4.0; p < 360; p += 29 {
			l := harmonic.Longitudes{N: n, P: p}
			o := l.Orbit()
			I := o.I * rad
			sin, half := math.Sin(I), math.Cos(I/2)
			s2 := math.Sin(2 * I)
			cosNu, cos2Nu, P := math.Cos(o.Nu*rad), math.Cos(2*o.Nu*rad), o.P*rad
			m2, o1 := math.Pow(half, 4)/0.9154, sin*half*half/0.3800
			tan := math.Tan(I / 2)
			r := math.Atan(math.Sin(2*P)/(1/(6*tan*tan)-math.Cos(2*P))) / rad
			q := math.Atan(0.483*math.Tan(P)) / rad
			if math.Cos(P) < 0 { // Q in the quadrant of P
				q += 180
			}
			for _, c := range []struct {
				name string
				f, u float64
			}{
				{"M2", m2, 2*o.Xi - 2*o.Nu},
				{"O1", o1, 2*o.Xi - o.Nu},
				{"K1", math.Sqrt(0.8965*s2*s2 + 0.6001*s2*cosNu + 0.1006), -o.NuPrime},
				{"K2", math.Sqrt(19.0444*math.Pow(sin, 4) + 2.7702*sin*sin*cos2Nu + 0.0981), -o.NuSecond},
				{"J1", s2 / 0.7214, -o.Nu},
				{"OO1", sin * math.Pow(math.Sin(I/2), 2) / 0.0164, -2*o.Xi - o.Nu},
				{"MF", sin * sin / 0.1578, -2 * o.Xi},
				{"MM", (2.0/3 - sin*sin) / 0.5021, 0},
				{"M3", math.Pow(half, 6) / 0.8758, 3*o.Xi - 3*o.Nu},
				{"L2", m2 * math.Sqrt(1-12*tan*tan*math.Cos(2*P)+36*math.Pow(tan, 4)), 2*o.Xi - 2*o.Nu - r},
				{"M1", o1 * math.Sqrt(2.310+1.435*math.Cos(2*P)), o.Xi - o.Nu + q},
				{"S2", 1, 0},
			} {
				f, u := l.Node(c.name)
				near(t, c.name+" f", f, c.f, 1e-12)
				near(t, c.name+" u", math.Remainder(u-c.u, 360), 0, 1e-9)
			}
		}
	}
}

// TestElementsByHand: the elements are the polynomials in centuries that are printed:
// those of 1900 in [Schureman1958] table 1, in degrees, minutes and seconds, two centuries on, where
// all whole turns fall away; the modern ones at J2000.0 and a century on.
func TestElementsByHand(t *testing.T) {
	dms := func(d, m, s float64) float64 { return d*3600 + m*60 + s }
	at := time.Date(1899, 12, 31, 12, 0, 0, 0, time.UTC)
	const century = 36525 * 24 * time.Hour
	for _, c := range []float64{0, 2, -1} {
		l := harmonic.LongitudesAt(at.Add(time.Duration(c*36525)*24*time.Hour), harmonic.Schureman1900)
		for _, e := range []struct {
			name      string
			got, want float64
		}{
			{"s", l.S, dms(270, 26, 14.72) + 1108411.20*c + 9.09*c*c + 0.0068*c*c*c},
			{"h", l.H, dms(279, 41, 48.04) + 129602768.13*c + 1.089*c*c},
			{"p", l.P, dms(334, 19, 40.87) + 392515.94*c - 37.24*c*c - 0.045*c*c*c},
			{"N", l.N, dms(259, 10, 57.12) - 482912.63*c + 7.58*c*c + 0.008*c*c*c},
			{"p1", l.P1, dms(281, 13, 15.00) + 6189.03*c + 1.63*c*c + 0.012*c*c*c},
		} {
			near(t, e.name, math.Remainder(e.got-e.want/3600, 360), 0, 1e-7)
		}
	}
	// A quarter of a century on: 334 turns of the moon, 2 3/4 of its perigee, -1 1/4 of its node.
	l := harmonic.LongitudesAt(at.Add(century/4), harmonic.Schureman1900)
	near(t, "s", math.Remainder(l.S-(dms(270, 26, 14.72)+1108411.20/4+9.09/16+0.0068/64)/3600, 360), 0, 1e-7)
	near(t, "p", math.Remainder(l.P+90-(dms(334, 19, 40.87)+392515.94/4-37.24/16-0.045/64)/3600, 360), 0, 1e-7)
	near(t, "N", math.Remainder(l.N+90-(dms(259, 10, 57.12)-482912.63/4+7.58/16+0.008/64)/3600, 360), 0, 1e-7)
	// [Meeus1998] ch. 47 and 25.
	at = time.Date(2000, 1, 1, 12, 0, 0, 0, time.UTC)
	for _, c := range []float64{0, 1, -1} {
		l := harmonic.LongitudesAt(at.Add(time.Duration(c)*century), harmonic.Modern)
		near(t, "s", math.Remainder(l.S-218.3164477-481267.88123421*c, 360), 0, 1e-7)
		near(t, "h", math.Remainder(l.H-280.46646-36000.76983*c, 360), 0, 1e-7)
		near(t, "p", math.Remainder(l.P-83.3532465-4069.0137287*c, 360), 0, 1e-7)
		near(t, "N", math.Remainder(l.N-125.0445479+1934.1362891*c, 360), 0, 1e-7)
		near(t, "p1", math.Remainder(l.P1-282.93734-1.71946*c, 360), 0, 1e-7)
	}
}

// TestLongitudesOfANanosecond: the parts of a second count, and hours, minutes and seconds
// each: the mean sun stands at 180° at midnight and goes 15° an hour.
func TestLongitudesOfANanosecond(t *testing.T) {
	at := time.Date(2026, 3, 4, 5, 6, 7, 0, time.UTC)
	for _, by := range []harmonic.Elements{harmonic.Modern, harmonic.Schureman1900} {
		a, b := harmonic.LongitudesAt(at, by), harmonic.LongitudesAt(at.Add(800*time.Millisecond), by)
		near(t, "T", a.T, 180+15*(5+6.0/60+7.0/3600), 1e-9)
		near(t, "T of 0.8 s", b.T-a.T, 15*0.8/3600, 1e-9)
		near(t, "s of 0.8 s", b.S-a.S, 13.1763965/86400*0.8, 1e-8)
		near(t, "h of 0.8 s", b.H-a.H, 0.9856474/86400*0.8, 1e-8)
	}
}
