package route_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"followingsea.example/route"
)

// TestShortIsRight holds the mid-latitude formulas to the accuracy they claim,
// over all courses.
func TestShortIsRight(t *testing.T) {
	cases := []struct {
		lat, length, tol float64
	}{
		{75, 40e3, 1e-4},
		{60, 100e3, 1e-3},
	}
	r := rand.New(rand.NewPCG(1, 2))
	n := 4000
	if testing.Short() {
		n = 500
	}
	for _, c := range cases {
		var worst, worstDeg, worstEnd float64
		for range n {
			from := route.Point{Lat: (2*r.Float64() - 1) * c.lat, Lon: r.Float64()*360 - 180}
			d := route.Direct(from, r.Float64()*360, c.length*r.Float64())
			if !(math.Abs(d.To.Lat) <= c.lat) {
				continue
			}
			s, full := route.ShortInverse(from, d.To), route.Inverse(from, d.To)
			worst = math.Max(worst, math.Abs(s.Distance-full.Distance))
			near(t, "without courses", route.ShortDistance(from, d.To), s.Distance, 1e-9)
			if full.Distance > 100 {
				worstDeg = math.Max(worstDeg, math.Abs(math.Remainder(s.Course-full.Course, 360)))
				worstDeg = math.Max(worstDeg, math.Abs(math.Remainder(s.End-full.End, 360)))
			}
			worstEnd = math.Max(worstEnd, route.Inverse(route.ShortDirect(from, d.Course, d.Distance).To, d.To).Distance)
		}
		t.Logf("to %v m at latitude %v: %.2g m, %.2g deg; direct %.2g m", c.length, c.lat, worst, worstDeg, worstEnd)
		if !(worst <= c.tol && worstDeg <= 1e-6 && worstEnd <= 2*c.tol) {
			t.Errorf("to %v m at latitude %v: %.3g m, %.3g deg, direct %.3g m", c.length, c.lat, worst, worstDeg, worstEnd)
		}
	}
}
