package route

import (
	"fmt"
	"math"
	"testing"
)

// TestGeodesicSlope: the derivative that the inverse problem steps with, made of the reduced length, is that of the longitude in
// which a geodesic arrives, here by differences of five of them.
func TestGeodesicSlope(t *testing.T) {
	for _, e := range []Ellipsoid{WGS84, {6.4e6, 0.0199}, {6.4e6, -0.0199}} {
		g := e.figure()
		for _, lats := range [][2]float64{{-40, 30}, {-20, -10}, {-70, 65}, {-35, 1}} {
			for _, course := range []float64{20, 70, 100, 150} {
				p := arc{g: g, lam12: 1.2}
				p.slam, p.clam = math.Sincos(p.lam12)
				p.sbet1, p.cbet1 = g.reduced(lats[0])
				p.sbet2, p.cbet2 = g.reduced(lats[1])
				p.dn1, p.dn2 = math.Sqrt(1+g.ep2*p.sbet1*p.sbet1), math.Sqrt(1+g.ep2*p.sbet2*p.sbet2)
				miss := func(d float64) float64 {
					p.salp1, p.calp1 = math.Sincos(course*math.Pi/180 + d)
					return p.miss(true)
				}
				const h = 1e-3
				want := (8*(miss(h)-miss(-h)) - (miss(2*h) - miss(-2*h))) / (12 * h)
				if v := miss(0); !(math.Abs(v) < 3) || math.IsNaN(want) {
					continue // it does not get so far, or arrives on the other side of 180
				}
				within(t, fmt.Sprint(e, lats, course), p.slope, want, 2e-10*(1+math.Abs(want)))
			}
		}
	}
}

// TestTwoSum: a sum and what its rounding lost, whichever of the two is the larger; so a difference of longitudes loses nothing.
func TestTwoSum(t *testing.T) {
	const small = 1.0 / (1 << 60)
	for _, c := range [][4]float64{{1, small, 1, small}, {small, 1, 1, small}, {-1, -small, -1, -small}, {-small, 1, 1, -small}, {3, 4, 7, 0}} {
		if s, r := twoSum(c[0], c[1]); s != c[2] || r != c[3] {
			t.Errorf("%v + %v = %v and %v", c[0], c[1], s, r)
		}
	}
	for _, c := range [][4]float64{{-small, 100, 100, small}, {170, -170, 20, 0}, {-170, 170, -20, 0}, {-180, 180, 0, 0}, {350, 10, 20, 0}} {
		if d, r := diffLon(c[0], c[1]); d != c[2] || r != c[3] {
			t.Errorf("from %v to %v: %v and %v", c[0], c[1], d, r)
		}
	}
}
