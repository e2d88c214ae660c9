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
				p := problem(g, lats[0], lats[1], 68)
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

// TestSlopeAtTheVertex: where the line leaves and arrives due east or west, on equal or opposite latitudes, the derivative is the
// one-sided one, since the side on which the line turns away from the equator first takes another.
func TestSlopeAtTheVertex(t *testing.T) {
	for _, e := range bent {
		for _, c := range []struct{ lat1, lat2, side float64 }{{-40, 40, -1}, {-10, 10, -1}, {-70, 70, -1}, {-40, -40, 1}, {-65, -65, 1}} {
			p := problem(e.figure(), c.lat1, c.lat2, 100)
			miss := func(d float64) float64 {
				p.calp1, p.salp1 = math.Sincos(-c.side * d)
				return p.miss(true)
			}
			const h = 1e-3
			want := c.side * (-11*miss(0) + 18*miss(h) - 9*miss(2*h) + 2*miss(3*h)) / (6 * h)
			miss(0)
			within(t, fmt.Sprint(e, c), p.slope, want, 1e-6*(1+math.Abs(want)))
		}
	}
}

// TestDegreesAreExactOnTheAxes: a quarter turn has no stray component and no negative zero, a direction next to an axis keeps its
// digits, a part of a degree too small for its square to be a number is none, and a difference of longitude keeps its rest.
func TestDegreesAreExactOnTheAxes(t *testing.T) {
	for i := -8; i <= 8; i++ {
		s, c := sincosd(90 * float64(i))
		want := [4][2]float64{{0, 1}, {1, 0}, {0, -1}, {-1, 0}}[i&3]
		if s != want[0] || c != want[1] || s == 0 && math.Signbit(s) || c == 0 && math.Signbit(c) {
			t.Errorf("%d quarters: %v and %v", i, s, c)
		}
	}
	const deg = 180 / math.Pi
	for _, x := range []float64{1e-20, -1e-20, 1e-9, 0.3} {
		within(t, "next to north", atan2d(x, 1), math.Atan(x)*deg, 1e-15*math.Abs(x)*deg)
	}
	for _, c := range [][2]float64{{1e-160, 0}, {-1e-160, 0}, {1e-19, 0}, {0.0625, 0.0625}, {-33, -33}} {
		if got := settle(c[0]); got != c[1] {
			t.Errorf("%v settles to %v", c[0], got)
		}
	}
	const rest = 5e-15
	s, c := sincosSum(0, rest)
	within(t, "sine of a rest", s, rest/deg, 1e-30)
	within(t, "its cosine", c, 1, 1e-15)
	s, c = sincosSum(90, rest)
	within(t, "sine of a quarter and a rest", s, 1, 1e-15)
	within(t, "its cosine", c, -rest/deg, 1e-30)
	s, c = sincosSum(180, -rest)
	within(t, "sine of half a turn less a rest", s, rest/deg, 1e-30)
	within(t, "its cosine", c, -1, 1e-15)
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
