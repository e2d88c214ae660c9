package route

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"
)

// fourier returns the mean over half a turn of an even function of period pi, and the coefficients c of its integral
// mean (sigma + sum of c[l] sin 2 l sigma).
func fourier(f func(sigma float64) float64) (mean float64, c [order + 1]float64) {
	const n = 128
	for i := range n {
		sigma := math.Pi * float64(i) / n
		y := f(sigma) / n
		mean += y
		for l := 1; l <= order; l++ {
			c[l] += y * math.Cos(2*float64(l)*sigma) / float64(l)
		}
	}
	for l := range c {
		c[l] /= mean
	}
	return mean, c
}

// TestSeriesByQuadrature: the series are those of the integrals that they stand for [Karney2013], to their order,
//
//	A1, C1: ∫ √(1 + k² sin² σ)   A2, C2: ∫ 1/√(1 + k² sin² σ)   A3, C3: ∫ (2 - f)/(1 + (1-f) √(1 + k² sin² σ))
//
// with k² = 4 ε/(1-ε)², within a part of the first order that they leave out. A3 and C3 have terms in ε and in n, to the fifth
// order together.
func TestSeriesByQuadrature(t *testing.T) {
	for _, eps := range []float64{0.05, -0.05} {
		root := func(s float64) float64 { return math.Sqrt(1 + 4*eps/((1-eps)*(1-eps))*math.Sin(s)*math.Sin(s)) }
		tol := 2e-3 * math.Pow(eps, 6) // a wrong sign in the last terms is twice that
		var c1, c2 [order + 1]float64
		a1, a2 := 1+distA1(eps, &c1), 1+redA2(eps, &c2)
		for _, c := range []struct {
			name string
			mean float64
			c    [order + 1]float64
			f    func(float64) float64
		}{{"distance", a1, c1, root}, {"reduced length", a2, c2, func(s float64) float64 { return 1 / root(s) }}} {
			mean, want := fourier(c.f)
			within(t, fmt.Sprint("mean of the ", c.name, " at ", eps), c.mean, mean, tol)
			for l := 1; l <= order; l++ {
				within(t, fmt.Sprint("term ", l, " of the ", c.name, " at ", eps), c.c[l], want[l], tol)
			}
		}
	}
	for _, c := range [][2]float64{{0.009, 0.009}, {0.009, -0.009}, {-0.009, 0.009}, {-0.009, -0.009}, {0.009, 0.0045}, {0.009, 0}} {
		eps, n := c[0], c[1]
		f := 2 * n / (1 + n)
		g := figure{f: f, n: n}
		g.series()
		var c3 [order + 1]float64
		g.longC3(eps, &c3)
		mean, want := fourier(func(s float64) float64 {
			return (2 - f) / (1 + (1-f)*math.Sqrt(1+4*eps/((1-eps)*(1-eps))*math.Sin(s)*math.Sin(s)))
		})
		sixth := math.Pow(0.009, 6)
		within(t, fmt.Sprint("mean of the longitude at ", c), g.longA3(eps), mean, sixth)
		for l := 1; l <= order; l++ {
			within(t, fmt.Sprint("term ", l, " of the longitude at ", c), c3[l], want[l], 0.1*sixth)
		}
	}
}

// problem returns the inverse problem between two latitudes whose difference of longitude is lon12 degrees.
func problem(g *figure, lat1, lat2, lon12 float64) *arc {
	p := &arc{g: g}
	p.set(lat1, lat2, lon12, 0)
	return p
}

var bent = []Ellipsoid{WGS84, {6.4e6, 1e-4}, {6.4e6, 0.0199}, {6.4e6, -1e-4}, {6.4e6, -0.0199}}

// TestStartIsTheSphericalAzimuth: away from the antipode the search starts from the azimuth between the reduced latitudes on a
// sphere. On a line of some hundreds of miles the difference of longitude there is that of the parallels drawn out by the figure,
// whose radius is that of the mean latitude; a longer one takes it as it is.
func TestStartIsTheSphericalAzimuth(t *testing.T) {
	for _, e := range bent {
		g := e.figure()
		for _, c := range []struct {
			lat1, lat2, lon float64
			near            bool
		}{
			{-40, -30, 10, true}, {-40, -20, 0.5, true}, {-10, 3, 20, true}, {-89, -88.5, 120, true}, {-85, -80, 95, true}, {-70, -65, 20, true}, {-3, 3, 25, true},
			{-89, 85, 1, false}, {-50, 20, 1, false}, {-60, -10, 1, false}, {-20, 15, 80, false}, {-30, -30, 100, false}, {-45, 10, 120, false}, {-75, 60, 40, false}, {-75, -20, 170, false},
			{-60, 30, 150, false}, {-10, -5, 150, false}, {-60, -20, 130, false}, {-75, -65, 160, false}, {-10, 5, 60, false},
		} {
			p := problem(g, c.lat1, c.lat2, c.lon)
			omega := p.lam12
			if c.near {
				mid := math.Atan2(p.sbet1+p.sbet2, p.cbet1+p.cbet2)
				omega /= (1 - e.Flattening) * math.Sqrt(1+g.ep2*math.Sin(mid)*math.Sin(mid))
			}
			x, y := p.cbet2*math.Sin(omega), p.cbet1*p.sbet2-p.sbet1*p.cbet2*math.Cos(omega)
			p.start()
			within(t, fmt.Sprint(e, c), math.Atan2(p.salp1, p.calp1), math.Atan2(x, y), 1e-13)
		}
	}
}

// TestStartNearTheAntipode: where the lines that leave a place wrap round an astroid, as wide as f π a cos² β, the search starts
// from an azimuth that is wrong by no more than the flattening, on a figure however round.
func TestStartNearTheAntipode(t *testing.T) {
	for _, e := range bent {
		g := e.figure()
		most := 5 // a start wrong by f = 1/300 is squared in each pass: 1e-5, 1e-10, nothing, and one for rounding
		if math.Abs(e.Flattening) > 0.01 {
			most = 7
		}
		for _, lat1 := range []float64{-1, -25, -50, -75} {
			_, cbet1 := g.reduced(lat1)
			unit := math.Abs(e.Flattening) * 180 * cbet1 * cbet1 // degrees
			for _, x := range []float64{0, -0.003, -0.1, -0.5, -0.8, -1.1, -1.7, -2.5} {
				for _, y := range []float64{0, -0.003, -0.1, -0.5, -0.8, -1.1, -1.7, -2.5} {
					meridian := x == 0 && (y == 0 || y < -1 || e.Flattening > 0)
					if meridian || x*x+y*y > 8 {
						continue // no search, or no longer near
					}
					// Latitudes are reduced ones to first order.
					p := problem(g, lat1, -lat1+y*unit, 180+x*unit/cbet1)
					p.start()
					s, c := p.salp1, p.calp1
					if d := p.solve(); math.IsNaN(d) {
						t.Errorf("%v from %v to %v, %v: no solution", e, lat1, x, y)
						continue
					}
					turn := math.Atan2(s*p.calp1-c*p.salp1, c*p.calp1+s*p.salp1)
					within(t, fmt.Sprint(e, " from ", lat1, " to ", x, ", ", y), turn, 0, math.Abs(e.Flattening))
					if p.passes > most {
						t.Errorf("%v from %v to %v, %v: %d passes", e, lat1, x, y, p.passes)
					}
				}
			}
		}
	}
}

// TestSearchIsNewtons: with the derivative of the reduced length the error of an azimuth is squared in every pass, so that few are
// enough: from a start that is wrong by as much as a sixth 0.03, 1e-3, 1e-6, 1e-12, nothing, and one
// more for rounding.
func TestSearchIsNewtons(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	for _, e := range bent {
		g := e.figure()
		for range 300 {
			lat1 := -89 * r.Float64()
			p := problem(g, lat1, lat1*(1-1.7*r.Float64()), 150*r.Float64())
			if sig12, _ := p.start(); sig12 >= 0 {
				continue
			}
			p.solve()
			if p.passes > 7 {
				t.Errorf("%v from %v: %d passes", e, lat1, p.passes)
			}
		}
	}
}

// TestAnyStartWillDo: the search is kept in a bracket that is halved where a step leaves it, and finds the same line from any
// azimuth, and in the twenty passes after which it would do nothing else but halve.
func TestAnyStartWillDo(t *testing.T) {
	for _, e := range bent {
		g := e.figure()
		for _, c := range [][3]float64{{-40, 30, 70}, {-30, 29, 170}, {-70, -60, 100}, {-1, 0.5, 178}, {-80, 10, 20}, {-10, -10, 40}, {-45, 45, 90}, {-89, 88, 175}, {-30, 29.9, 179.5}, {-30, 29.9, 178.7}} {
			p := problem(g, c[0], c[1], c[2])
			p.start()
			want := p.solve()
			s, k := p.salp1, p.calp1
			for _, deg := range []float64{1e-9, 1e-3, 1, 20, 45, 80, 90, 100, 135, 160, 179, 179.999, 180 - 1e-9} {
				p := problem(g, c[0], c[1], c[2])
				p.salp1, p.calp1 = sincosd(deg)
				got := p.solve()
				what := fmt.Sprint(e, c, " from ", deg)
				within(t, what, got, want, 4e-15)
				within(t, what, p.salp1, s, 1e-12)
				within(t, what, p.calp1, k, 1e-12)
				if p.passes > newton {
					t.Errorf("%s: %d passes", what, p.passes)
				}
			}
		}
	}
}
