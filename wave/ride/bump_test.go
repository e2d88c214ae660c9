package ride_test

import (
	"math"
	"testing"

	"followingsea.example/wave/ride"
)

// near is the positive comparison: NaN never passes.
func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if math.Abs(got-want) <= tol {
		return
	}
	t.Errorf("%s = %v, want %v within %v", what, got, want, tol)
}

var deep = math.Inf(1)

// reference is the paddler of the reference values, on a board of 4.2 m.
var reference = ride.Paddler{Mass: 95, Cruise: 1.8, Sprint: 3}

func TestHeightsNeeded(t *testing.T) {
	for _, c := range []struct{ period, wind, glide, hold, catch, fromCruise, cruising, inevitable float64 }{
		{2, 0, 0.2454, 0.0254, 0.0314, 0.0609, 0.3523, 0.0254},
		{2.5, 0, 0.3099, 0.1568, 0.1693, 0.2729, 0.4954, 0.1924},
		{3, 0, 0.4973, 0.3438, 0.4059, 0.5562, 0.7968, 0.4917},
		{3.5, 0, 0.7915, 0.6252, 0.7650, 0.9573, 1.2327, 0.9264},
		{4, 0, 1.2065, 1.0230, 1.2643, 1.4953, 1.8115, 1.5704},
		{5, 0, 2.4665, 2.2440, 2.7442, 3.0423, 3.4461, 3.7663},
	} {
		a, err := reference.Appraise(ride.Bump{Height: 0.5, Period: c.period, Depth: deep, Wind: c.wind, Gravity: 9.81})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "Glide", a.Glide, c.glide, 5e-4)
		near(t, "Hold", a.Hold, c.hold, 5e-4)
		near(t, "Catch", a.Catch, c.catch, 5e-4)
		near(t, "CatchFromCruise", a.CatchFromCruise, c.fromCruise, 5e-4)
		near(t, "CatchCruising", a.CatchCruising, c.cruising, 5e-4)
		near(t, "Inevitable", a.Inevitable, c.inevitable, 3e-3)
	}
}
