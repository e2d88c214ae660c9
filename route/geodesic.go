package route

import "math"

// The geodesic of an ellipsoid (Karney 2013, after Bessel 1825).
//
// Latitudes become reduced latitudes, tan beta = (1-f) tan lat, on an
// auxiliary sphere where the geodesic is a great circle. Along it, with sigma
// the arc from the northward equator crossing, alpha0 the azimuth there and
// omega the longitude on that sphere,
//
//	s      = b ∫ sqrt(1 + k² sin² sigma) dsigma
//	lambda = omega - f sin alpha0 ∫ (2-f)/(1 + (1-f) sqrt(1 + k² sin² sigma)) dsigma
//	k²     = e'² cos² alpha0
//
// Both integrals are Fourier series in sigma whose coefficients are
// polynomials of order six in eps = (sqrt(1+k²)-1)/(sqrt(1+k²)+1): A1, C1 for
// the distance, C1' for its reversion, A3, C3 for the longitude; A2, C2 serve
// the reduced length m12, whose zero marks where a line stops being the
// shortest and whose size is the derivative Newton's method needs.
//
// The direct problem evaluates them. The inverse problem solves
// lambda12(alpha1) = the wanted difference of longitude by Newton's method,
// kept inside a bracket that is halved when a step leaves it, started from
// the spherical azimuth, or near the antipode from the astroid equation.

const (
	order  = 6
	tiny   = 1.4916681462400413e-154 // sqrt of the smallest normal
	ulp    = 1.0 / (1 << 52)
	tol1   = 200 * ulp
	tol2   = 1.4901161193847656e-08 // sqrt(ulp)
	newton = 20                     // Newton steps before plain halving
	halves = newton + 53 + 10       // bound on all steps
)

// series fills the polynomials in n of A3 and C3 (equations 24 and 25).
func (g *figure) series() {
	n := g.n
	n2 := n * n
	g.a3 = [6]float64{
		1,
		-(1 - n) / 2,
		-(2 + n - 3*n2) / 8,
		-(1 + 3*n + n2) / 16,
		-(3 + 2*n) / 64,
		-3.0 / 128,
	}
	g.c3 = [15]float64{
		(1 - n) / 4, (1 - n2) / 8, (3 + 3*n - n2) / 64, (5 + 2*n) / 128, 3.0 / 128,
		(2 - 3*n + n2) / 32, (3 - 2*n - 3*n2) / 64, (3 + n) / 128, 5.0 / 256,
		(5 - 9*n + 5*n2) / 192, (9 - 10*n) / 384, 7.0 / 512,
		(7 - 14*n) / 512, 7.0 / 512,
		21.0 / 2560,
	}
}

// longA3 and longC3 are the longitude series at eps.
func (g *figure) longA3(eps float64) float64 {
	a := &g.a3
	return a[0] + eps*(a[1]+eps*(a[2]+eps*(a[3]+eps*(a[4]+eps*a[5]))))
}

func (g *figure) longC3(eps float64, c *[order + 1]float64) {
	k := &g.c3
	e2 := eps * eps
	c[0] = 0
	c[1] = eps * (k[0] + eps*(k[1]+eps*(k[2]+eps*(k[3]+eps*k[4]))))
	c[2] = e2 * (k[5] + eps*(k[6]+eps*(k[7]+eps*k[8])))
	c[3] = e2 * eps * (k[9] + eps*(k[10]+eps*k[11]))
	c[4] = e2 * e2 * (k[12] + eps*k[13])
	c[5] = e2 * e2 * eps * k[14]
	c[6] = 0
}

// distA1 returns A1 - 1 and fills C1 (equations 17 and 18).
func distA1(eps float64, c *[order + 1]float64) float64 {
	e2 := eps * eps
	c[0] = 0
	d := eps
	c[1] = d * (-1.0/2 + e2*(3.0/16-e2/32))
	d *= eps
	c[2] = d * (-1.0/16 + e2*(1.0/32-e2*9/2048))
	d *= eps
	c[3] = d * (-1.0/48 + e2*3/256)
	d *= eps
	c[4] = d * (-5.0/512 + e2*3/512)
	d *= eps
	c[5] = d * (-7.0 / 1280)
	d *= eps
	c[6] = d * (-7.0 / 2048)
	return (e2*(1.0/4+e2*(1.0/64+e2/256)) + eps) / (1 - eps)
}

// distC1p fills the reversion of the distance series (equation 21).
func distC1p(eps float64, c *[order + 1]float64) {
	e2 := eps * eps
	c[0] = 0
	d := eps
	c[1] = d * (1.0/2 + e2*(-9.0/32+e2*205/1536))
	d *= eps
	c[2] = d * (5.0/16 + e2*(-37.0/96+e2*1335/4096))
	d *= eps
	c[3] = d * (29.0/96 - e2*75/128)
	d *= eps
	c[4] = d * (539.0/1536 - e2*2391/2560)
	d *= eps
	c[5] = d * (3467.0 / 7680)
	d *= eps
	c[6] = d * (38081.0 / 61440)
}

// redA2 returns A2 - 1 and fills C2 (equations 42 and 43).
func redA2(eps float64, c *[order + 1]float64) float64 {
	e2 := eps * eps
	c[0] = 0
	d := eps
	c[1] = d * (1.0/2 + e2*(1.0/16+e2/32))
	d *= eps
	c[2] = d * (3.0/16 + e2*(1.0/32+e2*35/2048))
	d *= eps
	c[3] = d * (5.0/48 + e2*5/256)
	d *= eps
	c[4] = d * (35.0/512 + e2*7/512)
	d *= eps
	c[5] = d * (63.0 / 1280)
	d *= eps
	c[6] = d * (77.0 / 2048)
	return (-e2*(3.0/4+e2*(7.0/64+e2*11/256)) - eps) / (1 + eps)
}

// sineSeries returns the sum of c[k] sin(2 k sigma), by Clenshaw's recurrence.
func sineSeries(sin, cos float64, c *[order + 1]float64) float64 {
	ar := 2 * (cos - sin) * (cos + sin) // 2 cos 2 sigma
	y0, y1 := 0.0, 0.0
	for k := order; k >= 1; k-- {
		y0, y1 = ar*y0-y1+c[k], y0
	}
	return 2 * sin * cos * y0
}

func epsOf(k2 float64) float64 {
	return k2 / (2*(1+math.Sqrt(1+k2)) + k2)
}

// unit returns a vector scaled to length one; a zero vector becomes NaN.
func unit(x, y float64) (float64, float64) {
	h := math.Hypot(x, y)
	return x / h, y / h
}

// reduced returns the sine and cosine of the reduced latitude, the cosine
// kept above zero so that a pole still has a meridian.
func (g *figure) reduced(lat float64) (sin, cos float64) {
	sin, cos = sincosd(lat)
	sin, cos = unit(sin*g.f1, cos)
	return sin, math.Max(tiny, cos)
}

// lengths returns s12/b, m12/b and the coefficient m0 of the secular part of
// m12/b for an arc (equations 7, 38 to 40).
func lengths(eps, sig12, ssig1, csig1, dn1, ssig2, csig2, dn2 float64) (s, m, m0 float64) {
	var c1, c2 [order + 1]float64
	a1 := distA1(eps, &c1)
	a2 := redA2(eps, &c2)
	m0 = a1 - a2
	a1, a2 = 1+a1, 1+a2
	b1 := sineSeries(ssig2, csig2, &c1) - sineSeries(ssig1, csig1, &c1)
	b2 := sineSeries(ssig2, csig2, &c2) - sineSeries(ssig1, csig1, &c2)
	s = a1 * (sig12 + b1)
	j12 := m0*sig12 + (a1*b1 - a2*b2)
	m = dn2*(csig1*ssig2) - dn1*(ssig1*csig2) - csig1*csig2*j12
	return s, m, m0
}

// astroid returns the positive root k of
// k⁴ + 2k³ - (x²+y²-1)k² - 2y²k - y² = 0 (equation 55).
func astroid(x, y float64) float64 {
	p, q := x*x, y*y
	r := (p + q - 1) / 6
	if q == 0 && r <= 0 {
		return 0
	}
	s := p * q / 4
	r2 := r * r
	r3 := r * r2
	disc := s * (s + 2*r3)
	u := r
	if disc >= 0 {
		t3 := s + r3
		t3 += math.Copysign(math.Sqrt(disc), t3) // no cancellation
		t := math.Cbrt(t3)
		u += t
		if t != 0 {
			u += r2 / t
		}
	} else {
		ang := math.Atan2(math.Sqrt(-disc), -(s + r3))
		u += 2 * r * math.Cos(ang/3)
	}
	v := math.Sqrt(u*u + q)
	uv := u + v
	if u < 0 {
		uv = q / (v - u)
	}
	w := (uv - q) / (2 * v)
	return uv / (math.Sqrt(uv+w*w) + w)
}

// arc is one inverse problem in canonical form: -90 <= lat1 <= 0,
// lat1 <= lat2 <= -lat1, 0 <= lon12 <= 180.
type arc struct {
	g                  *figure
	sbet1, cbet1, dn1  float64
	sbet2, cbet2, dn2  float64
	lam12, slam, clam  float64
	salp1, calp1       float64
	salp2, calp2       float64
	sig12              float64
	ssig1, csig1       float64
	ssig2, csig2       float64
	eps, domg12, slope float64
	passes             int // of the search for salp1, calp1
}

// set puts the problem, in degrees.
func (p *arc) set(lat1, lat2, lon12, rest float64) {
	g := p.g
	p.lam12 = (lon12 + rest) * (math.Pi / 180)
	p.slam, p.clam = sincosSum(lon12, rest)
	p.sbet1, p.cbet1 = g.reduced(lat1)
	p.sbet2, p.cbet2 = g.reduced(lat2)
	// Equal and opposite latitudes must stay so after rounding.
	if p.cbet1 < -p.sbet1 {
		if p.cbet2 == p.cbet1 {
			p.sbet2 = math.Copysign(p.sbet1, p.sbet2)
		}
	} else if math.Abs(p.sbet2) == -p.sbet1 {
		p.cbet2 = p.cbet1
	}
	p.dn1 = math.Sqrt(1 + g.ep2*p.sbet1*p.sbet1)
	p.dn2 = math.Sqrt(1 + g.ep2*p.sbet2*p.sbet2)
}

// start sets a first azimuth at point 1. For a line short enough that
// the sphere of mean radius is exact to rounding it returns sig12 >= 0 and
// dnm, and the line is solved.
func (p *arc) start() (sig12, dnm float64) {
	g := p.g
	sig12 = -1
	// Rounded before they are subtracted, so that equal latitudes differ by nothing where
	// multiplications are fused.
	sbet12 := float64(p.sbet2*p.cbet1) - float64(p.cbet2*p.sbet1)
	cbet12 := p.cbet2*p.cbet1 + p.sbet2*p.sbet1
	sbet12a := p.sbet2*p.cbet1 + p.cbet2*p.sbet1
	short := cbet12 >= 0 && sbet12 < 0.5 && p.cbet2*p.lam12 < 0.5
	somg, comg := p.slam, p.clam
	if short {
		sm2 := (p.sbet1 + p.sbet2) * (p.sbet1 + p.sbet2)
		sm2 /= sm2 + (p.cbet1+p.cbet2)*(p.cbet1+p.cbet2)
		dnm = math.Sqrt(1 + g.ep2*sm2)
		somg, comg = math.Sincos(p.lam12 / (g.f1 * dnm))
	}
	p.salp1 = p.cbet2 * somg
	if comg >= 0 {
		p.calp1 = sbet12 + p.cbet2*p.sbet1*somg*somg/(1+comg)
	} else {
		p.calp1 = sbet12a - p.cbet2*p.sbet1*somg*somg/(1-comg)
	}
	ssig12 := math.Hypot(p.salp1, p.calp1)
	csig12 := p.sbet1*p.sbet2 + p.cbet1*p.cbet2*comg
	switch {
	case short && ssig12 < g.tol:
		versine := 1 - comg
		if comg >= 0 {
			versine = somg * somg / (1 + comg)
		}
		p.salp2 = p.cbet1 * somg
		p.calp2 = sbet12 - p.cbet1*p.sbet2*versine
		p.salp2, p.calp2 = unit(p.salp2, p.calp2)
		sig12 = math.Atan2(ssig12, csig12)
	case math.Abs(g.n) > 0.1 || csig12 >= 0 || ssig12 >= 6*math.Abs(g.n)*math.Pi*p.cbet1*p.cbet1:
		// The spherical azimuth is near enough.
	default:
		p.antipodal(sbet12a)
	}
	if !(p.salp1 <= 0) {
		p.salp1, p.calp1 = unit(p.salp1, p.calp1)
	} else {
		p.salp1, p.calp1 = 1, 0
	}
	return sig12, dnm
}

// antipodal sets the first azimuth near the antipode of point 1, where the
// lines that leave it wrap round an astroid (section 5).
func (p *arc) antipodal(sbet12a float64) {
	g := p.g
	lam12x := math.Atan2(-p.slam, -p.clam) // lam12 - pi
	var x, y, lamscale, betscale float64
	if g.f >= 0 {
		k2 := p.sbet1 * p.sbet1 * g.ep2
		lamscale = g.f * p.cbet1 * g.longA3(epsOf(k2)) * math.Pi
		betscale = lamscale * p.cbet1
		x = lam12x / lamscale
		y = sbet12a / betscale
	} else {
		cbet12a := p.cbet2*p.cbet1 - p.sbet2*p.sbet1
		bet12a := math.Atan2(sbet12a, cbet12a)
		_, m, m0 := lengths(g.n, math.Pi+bet12a, p.sbet1, -p.cbet1, p.dn1, p.sbet2, p.cbet2, p.dn2)
		x = -1 + m/(p.cbet1*p.cbet2*m0*math.Pi)
		if x < -0.01 {
			betscale = sbet12a / x
		} else {
			betscale = -g.f * p.cbet1 * p.cbet1 * math.Pi
		}
		lamscale = betscale / p.cbet1
		y = lam12x / lamscale
	}
	if y > -tol1 && x > -1-1000*tol2 {
		if g.f >= 0 {
			p.salp1 = math.Min(1, -x)
			p.calp1 = -math.Sqrt(1 - p.salp1*p.salp1)
		} else {
			p.calp1 = math.Max(-1, x)
			if x > -tol1 {
				p.calp1 = math.Max(0, x)
			}
			p.salp1 = math.Sqrt(1 - p.calp1*p.calp1)
		}
		return
	}
	k := astroid(x, y)
	var omg12a float64
	if g.f >= 0 {
		omg12a = lamscale * (-x * k / (1 + k))
	} else {
		omg12a = lamscale * (-y * (1 + k) / k)
	}
	somg, c := math.Sincos(omg12a)
	comg := -c
	p.salp1 = p.cbet2 * somg
	p.calp1 = sbet12a - p.cbet2*p.sbet1*somg*somg/(1-comg)
}

// miss returns by how much the geodesic leaving point 1 on the current
// azimuth misses the longitude of point 2, and sets the state of the arc; with
// slope it sets the derivative too.
func (p *arc) miss(slope bool) float64 {
	g := p.g
	if p.sbet1 == 0 && p.calp1 == 0 {
		p.calp1 = -tiny // break the degeneracy of the equatorial line
	}
	salp0 := p.salp1 * p.cbet1
	calp0 := math.Hypot(p.calp1, p.salp1*p.sbet1)
	p.ssig1, p.csig1 = p.sbet1, p.calp1*p.cbet1
	somg1, comg1 := salp0*p.sbet1, p.csig1
	p.ssig1, p.csig1 = unit(p.ssig1, p.csig1)

	p.salp2 = p.salp1
	if p.cbet2 != p.cbet1 {
		p.salp2 = salp0 / p.cbet2
	}
	if p.cbet2 != p.cbet1 || math.Abs(p.sbet2) != -p.sbet1 {
		d := (p.sbet1 - p.sbet2) * (p.sbet1 + p.sbet2)
		if p.cbet1 < -p.sbet1 {
			d = (p.cbet2 - p.cbet1) * (p.cbet1 + p.cbet2)
		}
		t := p.calp1 * p.cbet1
		p.calp2 = math.Sqrt(t*t+d) / p.cbet2
	} else {
		p.calp2 = math.Abs(p.calp1)
	}
	p.ssig2, p.csig2 = p.sbet2, p.calp2*p.cbet2
	somg2, comg2 := salp0*p.sbet2, p.csig2
	p.ssig2, p.csig2 = unit(p.ssig2, p.csig2)

	p.sig12 = math.Atan2(math.Max(0, p.csig1*p.ssig2-p.ssig1*p.csig2),
		p.csig1*p.csig2+p.ssig1*p.ssig2)
	somg12 := math.Max(0, comg1*somg2-somg1*comg2)
	comg12 := comg1*comg2 + somg1*somg2
	eta := math.Atan2(somg12*p.clam-comg12*p.slam, comg12*p.clam+somg12*p.slam)
	p.eps = epsOf(calp0 * calp0 * g.ep2)
	var c3 [order + 1]float64
	g.longC3(p.eps, &c3)
	b := sineSeries(p.ssig2, p.csig2, &c3) - sineSeries(p.ssig1, p.csig1, &c3)
	p.domg12 = -g.f * g.longA3(p.eps) * salp0 * (p.sig12 + b)
	if slope {
		if p.calp2 == 0 {
			p.slope = -2 * g.f1 * p.dn1 / p.sbet1
		} else {
			_, m, _ := lengths(p.eps, p.sig12, p.ssig1, p.csig1, p.dn1, p.ssig2, p.csig2, p.dn2)
			p.slope = m * g.f1 / (p.calp2 * p.cbet2)
		}
	}
	return eta + p.domg12
}

// solve finds the azimuth at point 1 and returns s12/b. It returns NaN if it
// has not met its tolerance after a bounded number of steps, which no pair of
// positions tried has caused.
func (p *arc) solve() float64 {
	// The bracket: azimuth from just above 0 to just below 180.
	salpA, calpA := tiny, 1.0
	salpB, calpB := tiny, -1.0
	final, bisected := false, false
	for i := 0; i < halves; i++ {
		p.passes = i + 1
		v := p.miss(i < newton)
		loose := 1.0
		if final {
			loose = 8
		}
		if bisected || !(math.Abs(v) >= loose*ulp) || i == halves-1 {
			if math.IsNaN(v) || i == halves-1 {
				return math.NaN()
			}
			s, _, _ := lengths(p.eps, p.sig12, p.ssig1, p.csig1, p.dn1, p.ssig2, p.csig2, p.dn2)
			return s
		}
		if v > 0 && (i > newton || p.calp1/p.salp1 > calpB/salpB) {
			salpB, calpB = p.salp1, p.calp1
		} else if v < 0 && (i > newton || p.calp1/p.salp1 < calpA/salpA) {
			salpA, calpA = p.salp1, p.calp1
		}
		if i < newton && p.slope > 0 {
			d := -v / p.slope
			if math.Abs(d) < math.Pi {
				sd, cd := math.Sincos(d)
				salp := p.salp1*cd + p.calp1*sd
				if salp > 0 {
					p.calp1 = p.calp1*cd - p.salp1*sd
					p.salp1 = salp
					p.salp1, p.calp1 = unit(p.salp1, p.calp1)
					final = math.Abs(v) <= 16*ulp
					continue
				}
			}
		}
		p.salp1, p.calp1 = unit((salpA+salpB)/2, (calpA+calpB)/2)
		final = false
		bisected = math.Abs(salpA-p.salp1)+(calpA-p.calp1) < ulp ||
			math.Abs(p.salp1-salpB)+(p.calp1-calpB) < ulp
	}
	return math.NaN()
}

// inverse solves the inverse problem for any pair of positions.
func (g *figure) inverse(from, to Point) Leg {
	if !from.valid() || !to.valid() || !g.usable {
		return noLeg
	}
	// Canonical form: swap and mirror until -90 <= lat1 <= 0, |lat2| <= -lat1
	// and point 2 lies east of point 1.
	lon12, rest := diffLon(from.Lon, to.Lon)
	if settle(lon12) == 0 {
		lon12, rest = math.Copysign(0, lon12), 0
	}
	lonsign := 1.0
	if math.Signbit(lon12) {
		lonsign = -1
	}
	lon12, rest = lonsign*lon12, lonsign*rest
	lat1, lat2 := settle(from.Lat), settle(to.Lat)
	swap := 1.0
	if math.Abs(lat1) < math.Abs(lat2) {
		swap = -1
		lonsign = -lonsign
		lat1, lat2 = lat2, lat1
	}
	latsign := -1.0
	if math.Signbit(lat1) {
		latsign = 1
	}
	lat1, lat2 = latsign*lat1, latsign*lat2

	p := arc{g: g}
	p.set(lat1, lat2, lon12, rest)
	s12 := math.NaN()
	solved := false
	if lat1 == -90 || p.slam == 0 {
		s12, solved = p.meridional()
	}
	switch {
	case solved:
	case p.sbet1 == 0 && (g.f <= 0 || 180-lon12 >= g.f*180):
		p.salp1, p.calp1, p.salp2, p.calp2 = 1, 0, 1, 0
		s12 = g.a * p.lam12
	default:
		sig12, dnm := p.start()
		if sig12 >= 0 {
			s12 = sig12 * g.b * dnm
		} else {
			s12 = p.solve() * g.b
		}
	}
	if swap < 0 {
		p.salp1, p.salp2 = p.salp2, p.salp1
		p.calp1, p.calp2 = p.calp2, p.calp1
	}
	sign := swap * lonsign
	course := atan2d(p.salp1*sign, p.calp1*swap*latsign)
	end := atan2d(p.salp2*sign, p.calp2*swap*latsign)
	if s12 == 0 {
		course, end = 0, 0 // the same position: no direction to prefer
	}
	return Leg{from, to, s12, wrapDeg(course), wrapDeg(end)}
}

// meridional tries the line along a meridian, over the pole if need be. It is
// not the shortest past the cut point, which m12 < 0 shows.
func (p *arc) meridional() (s12 float64, solved bool) {
	p.calp1, p.salp1 = p.clam, p.slam
	p.calp2, p.salp2 = 1, 0
	ssig1, csig1 := p.sbet1, p.calp1*p.cbet1
	ssig2, csig2 := p.sbet2, p.calp2*p.cbet2
	sig12 := math.Atan2(math.Max(0, csig1*ssig2-ssig1*csig2), csig1*csig2+ssig1*ssig2)
	s, m, _ := lengths(p.g.n, sig12, ssig1, csig1, p.dn1, ssig2, csig2, p.dn2)
	if !(sig12 < tol2 || m >= 0) {
		return 0, false
	}
	if sig12 < 3*tiny || (sig12 < 10*ulp && (s < 0 || m < 0)) {
		return 0, true
	}
	return s * p.g.b, true
}

// sincosSum returns the sine and cosine of d + rest degrees, d in [0, 180].
func sincosSum(d, rest float64) (sin, cos float64) {
	q := math.RoundToEven(d / 90)
	sin, cos = math.Sincos(((d - 90*q) + rest) * (math.Pi / 180))
	switch q {
	case 1:
		return cos, -sin
	case 2:
		return 0 - sin, -cos
	}
	return sin, cos
}

// direct solves the direct problem.
func (g *figure) direct(from Point, course, distance float64) Leg {
	if !from.valid() || !g.usable || !finite(course) || !finite(distance) {
		return noLeg
	}
	salp1, calp1 := sincosd(settle(course))
	sbet1, cbet1 := g.reduced(settle(from.Lat))
	salp0 := salp1 * cbet1
	calp0 := math.Hypot(calp1, salp1*sbet1)
	ssig1, csig1 := sbet1, 1.0
	if sbet1 != 0 || calp1 != 0 {
		csig1 = cbet1 * calp1
	}
	somg1, comg1 := salp0*sbet1, csig1
	ssig1, csig1 = unit(ssig1, csig1)
	eps := epsOf(calp0 * calp0 * g.ep2)

	var c1, c1p, c3 [order + 1]float64
	a1 := 1 + distA1(eps, &c1)
	distC1p(eps, &c1p)
	b11 := sineSeries(ssig1, csig1, &c1)
	sb, cb := math.Sincos(b11)
	stau1, ctau1 := ssig1*cb+csig1*sb, csig1*cb-ssig1*sb // tau1 = sigma1 + B11

	tau12 := distance / (g.b * a1)
	st, ct := math.Sincos(tau12)
	b12 := -sineSeries(stau1*ct+ctau1*st, ctau1*ct-stau1*st, &c1p)
	sig12 := tau12 - (b12 - b11)
	ssig12, csig12 := math.Sincos(sig12)

	ssig2 := ssig1*csig12 + csig1*ssig12
	csig2 := csig1*csig12 - ssig1*ssig12
	sbet2 := calp0 * ssig2
	cbet2 := math.Hypot(salp0, calp0*csig2)
	if cbet2 == 0 {
		cbet2, csig2 = tiny, tiny
	}
	salp2, calp2 := salp0, calp0*csig2

	somg2, comg2 := salp0*ssig2, csig2
	omg12 := math.Atan2(somg2*comg1-comg2*somg1, comg2*comg1+somg2*somg1)
	g.longC3(eps, &c3)
	lam12 := omg12 - g.f*salp0*g.longA3(eps)*
		(sig12+sineSeries(ssig2, csig2, &c3)-sineSeries(ssig1, csig1, &c3))
	lon := wrapLon(from.Lon)
	to := Point{
		Lat: atan2d(sbet2, g.f1*cbet2),
		Lon: wrapLon(lon + wrapLon(lam12*(180/math.Pi))),
	}
	return Leg{from, to, distance, wrapDeg(course), wrapDeg(atan2d(salp2, calp2))}
}
