package harmonic

import (
	"math"

	"followingsea.example/internal/angle"
)

// The moon's orbit is inclined to the ecliptic and its nodes go round in 18.6
// years. Schureman takes that slow change out of each lunar constituent as a
// factor f on its amplitude and an angle u on its argument, both functions of
//
//	I   inclination of the moon's orbit to the equator
//	ν   right ascension of the intersection of orbit and equator
//	ξ   its longitude in the orbit, counted from the referred equinox
//	ν'  2ν''   the same for the lunisolar K1 and K2
//
// all of which follow from the longitude N of the node, the inclination
// i = 5.145° of the orbit to the ecliptic and the obliquity ω = 23.452°:
//
//	cos I = cos i cos ω − sin i sin ω cos N
//	tan(e1 + N/2) = cos((ω−i)/2)/cos((ω+i)/2) tan(N/2)
//	tan(e2 + N/2) = sin((ω−i)/2)/sin((ω+i)/2) tan(N/2)
//	ξ = −(e1 + e2),  ν = e1 − e2
//
// For L2 and M1 they depend on the longitude P = p − ξ of the perigee counted
// from the intersection as well.

// An Orbit holds Schureman's quantities of the moon's orbit in degrees.
type Orbit struct {
	I        float64 // inclination to the equator, 18.3 to 28.6
	Xi, Nu   float64 // longitude in the orbit and right ascension of the intersection
	NuPrime  float64 // ν', for K1
	NuSecond float64 // 2ν'', for K2
	P        float64 // longitude of the perigee from the intersection, [0, 360)
}

// Schureman's angles.
const (
	inclination = 5.145 * math.Pi / 180
	obliquity   = 23.452 * math.Pi / 180
)

var (
	cosWI = math.Cos((obliquity-inclination)/2) / math.Cos((obliquity+inclination)/2)
	sinWI = math.Sin((obliquity-inclination)/2) / math.Sin((obliquity+inclination)/2)
)

// orbit is Orbit in radians, from N and p in degrees.
type orbit struct{ i, xi, nu, nu1, nu2, p float64 }

func orbitOf(n, p float64) orbit {
	// With N within ±180° the half angle is within ±90° and e1 and e2 lie on the
	// branch near zero.
	rn := angle.Radians(math.Remainder(n, 360))
	sinN2, cosN2 := math.Sincos(rn / 2)
	e1 := math.Atan2(cosWI*sinN2, cosN2) - rn/2
	e2 := math.Atan2(sinWI*sinN2, cosN2) - rn/2
	var o orbit
	o.i = math.Acos(math.Cos(inclination)*math.Cos(obliquity) - math.Sin(inclination)*math.Sin(obliquity)*math.Cos(rn))
	o.xi, o.nu = -(e1 + e2), e1-e2
	sin2I, sinI := math.Sin(2*o.i), math.Sin(o.i)
	sinNu, cosNu := math.Sincos(o.nu)
	sin2Nu, cos2Nu := math.Sincos(2 * o.nu)
	o.nu1 = math.Atan2(sin2I*sinNu, sin2I*cosNu+0.3347)
	o.nu2 = math.Atan2(sinI*sinI*sin2Nu, sinI*sinI*cos2Nu+0.0727)
	o.p = angle.Radians(p) - o.xi
	return o
}

// Orbit returns Schureman's quantities for the longitudes N and P.
//
// Special cases are:
//
//	Orbit = NaN throughout if N or P is NaN or infinite
//
// Source: [Schureman1958] paragraphs 22 to 24, formulas 191, 197, 224, 232
// and table 6.
func (l Longitudes) Orbit() Orbit {
	o := orbitOf(l.N, l.P)
	d := angle.Degrees
	r := Orbit{d(o.i), d(o.xi), d(o.nu), d(o.nu1), d(o.nu2), angle.Wrap(d(o.p))}
	if math.IsNaN(r.P) {
		return Orbit{r.P, r.P, r.P, r.P, r.P, r.P}
	}
	return r
}

// A base is a constituent whose f and u others are made of.
type base uint8

const (
	one base = iota // f = 1, u = 0: solar
	bM2
	bO1
	bK1
	bK2
	bJ1
	bOO1
	bMF
	bMM
	bM3
	bL2
	bM1
	bases
)

// factors returns f e^{iu} of every base for the longitudes N and p in
// degrees. A product of these is the product of the factors and the sum of
// the angles; the conjugate takes an angle away.
func factors(n, p float64) (z [bases]complex128) {
	o := orbitOf(n, p)
	sinI, cosI := math.Sincos(o.i)
	sinH, cosH := math.Sincos(o.i / 2) // of I/2
	sin2I := 2 * sinI * cosI
	c2, s2 := cosH*cosH, sinH*sinH
	polar := func(f, u float64) complex128 {
		s, c := math.Sincos(u)
		return complex(f*c, f*s)
	}
	z[one] = 1
	z[bM2] = polar(c2*c2/0.9154, 2*o.xi-2*o.nu)
	fO1 := sinI * c2 / 0.3800
	z[bO1] = polar(fO1, 2*o.xi-o.nu)
	z[bK1] = polar(math.Sqrt(0.8965*sin2I*sin2I+0.6001*sin2I*math.Cos(o.nu)+0.1006), -o.nu1)
	z[bK2] = polar(math.Sqrt(19.0444*sinI*sinI*sinI*sinI+2.7702*sinI*sinI*math.Cos(2*o.nu)+0.0981), -o.nu2)
	z[bJ1] = polar(sin2I/0.7214, -o.nu)
	z[bOO1] = polar(sinI*s2/0.0164, -2*o.xi-o.nu)
	z[bMF] = polar(sinI*sinI/0.1578, -2*o.xi)
	z[bMM] = complex((2.0/3-sinI*sinI)/0.5021, 0)
	z[bM3] = polar(c2*c2*c2/0.8758, 3*o.xi-3*o.nu)
	// L2: f/f(M2) = |1 − 6t² e^{2iP}| with t = tan(I/2), and its angle is −R.
	sin2P, cos2P := math.Sincos(2 * o.p)
	t6 := 6 * s2 / c2
	z[bL2] = z[bM2] * complex(1-t6*cos2P, -t6*sin2P)
	// M1: Q has the tangent 0.483 tan P and lies in the quadrant of P.
	sinP, cosP := math.Sincos(o.p)
	z[bM1] = polar(fO1*math.Sqrt(2.310+1.435*cos2P), o.xi-o.nu+math.Atan2(0.483*sinP, cosP))
	return z
}
