package wave

import (
	"math"
	"testing"
)

// TestEdgesOfEncounter: at rest the waves are met at their own period; a board
// as fast as the waves keeps pace straight before them.
func TestEdgesOfEncounter(t *testing.T) {
	for _, c := range []struct{ period, speed, ahead, want float64 }{{10, 0, 0, 10}, {10, 8 * Knot, 0, 300.0 / 38}, {10, 8 * Knot, 180, 300.0 / 22}} {
		if got := MasterEncounterPeriod(c.period, c.speed, c.ahead); !(math.Abs(got-c.want) <= 1e-12*c.want) {
			t.Errorf("MasterEncounterPeriod(%v, %v, %v) = %v, want %v", c.period, c.speed, c.ahead, got, c.want)
		}
	}
	v := Solve(5, 10)
	if got := v.SameSpeedCourse(v.PhaseSpeed); got != 0 {
		t.Errorf("SameSpeedCourse at the waves' own speed = %v, want 0", got)
	}
}

// TestPressureOfStillWater: without a wave the pressure is the weight of the
// water above.
func TestPressureOfStillWater(t *testing.T) {
	v := Solve(5, 10)
	if got, want := v.Pressure(0, -4, 0), 1025*9.80665*4.0; !(math.Abs(got-want) <= 1e-12*want) {
		t.Errorf("Pressure at 4 m = %v, want %v", got, want)
	}
}
