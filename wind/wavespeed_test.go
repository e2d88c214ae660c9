package wind_test

import (
	"math"
	"testing"

	"followingsea.example/wind"
)

// TestDominantSpeedRises: higher seas are faster, the ocean's faster than the
// coast's, and nothing is said outside the table.
func TestDominantSpeedRises(t *testing.T) {
	var before [2]wind.SpeedBand
	for i := 0; i <= 400; i++ {
		hs := 2 + float64(i)/100
		c, o := wind.DominantSpeed(hs)
		ordered := c.Low < c.High && o.Low < o.High && c.Low < o.Low && c.High < o.High
		rises := c.Low >= before[0].Low && c.High >= before[0].High && o.Low >= before[1].Low && o.High >= before[1].High
		if !ordered || !rises {
			t.Fatalf("at %v m: coast %v, ocean %v after %v", hs, c, o, before)
		}
		before = [2]wind.SpeedBand{c, o}
	}
	for _, hs := range []float64{-1, 0, 1.99, 6.01, math.Inf(1), math.NaN()} {
		c, o := wind.DominantSpeed(hs)
		if !math.IsNaN(c.Low) || !math.IsNaN(c.High) || !math.IsNaN(o.Low) || !math.IsNaN(o.High) {
			t.Errorf("DominantSpeed(%v) = %v, %v", hs, c, o)
		}
	}
}
