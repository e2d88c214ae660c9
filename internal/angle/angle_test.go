package angle

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestWrap(t *testing.T) {
	for deg, want := range map[float64]float64{0: 0, 359.5: 359.5, 360: 0, -1: 359, 720.5: 0.5, -360: 0, -1e-20: 0, 1e17: math.Mod(1e17, 360), -90: 270} {
		if got := Wrap(deg); got != want || math.Signbit(got) {
			t.Errorf("Wrap(%v) = %v, want %v", deg, got, want)
		}
	}
	if got := Wrap(math.Copysign(0, -1)); got != 0 || math.Signbit(got) {
		t.Errorf("Wrap(-0) = %v", got)
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if got := Wrap(x); !math.IsNaN(got) {
			t.Errorf("Wrap(%v) = %v, want NaN", x, got)
		}
	}
}

func TestDiff(t *testing.T) {
	for _, c := range [][3]float64{{0, 0, 0}, {350, 10, 20}, {10, 350, -20}, {0, 180, 180}, {180, 0, 180}, {90, 270, 180}, {270, 90, 180}, {0, 181, -179},
		{0, 179, 179}, {360, 0, 0}, {-170, 170, -20}, {720, 1, 1}, {0, -180, 180}, {0, 540, 180}} {
		if got := Diff(c[0], c[1]); got != c[2] || got == 0 && math.Signbit(got) {
			t.Errorf("Diff(%v, %v) = %v, want %v", c[0], c[1], got, c[2])
		}
	}
	for _, c := range [][2]float64{{math.NaN(), 1}, {1, math.NaN()}, {math.Inf(1), 1}, {1, math.Inf(-1)}, {math.Inf(1), math.Inf(1)}} {
		if got := Diff(c[0], c[1]); !math.IsNaN(got) {
			t.Errorf("Diff(%v, %v) = %v, want NaN", c[0], c[1], got)
		}
	}
}

func TestRadiansAndDegrees(t *testing.T) {
	if Radians(180) != math.Pi || Degrees(math.Pi) != 180 || Radians(-90) != -math.Pi/2 || Degrees(1) != 180/math.Pi {
		t.Error("half a turn is not pi")
	}
	if !math.IsNaN(Radians(math.NaN())) || !math.IsNaN(Degrees(math.NaN())) {
		t.Error("NaN becomes a number")
	}
}

// TestPropertyTurns: a wrapped bearing is on the card and the same bearing; a
// turn leads from one to the other and is the shorter way round.
func TestPropertyTurns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-1000, 1000).Draw(t, "a")
		b := rapid.Float64Range(-1000, 1000).Draw(t, "b")
		w := Wrap(a)
		if !(w >= 0 && w < 360) {
			t.Errorf("Wrap(%v) = %v", a, w)
		}
		if whole := (w - a) / 360; !(math.Abs(whole-math.Round(whole)) <= 1e-12) {
			t.Errorf("Wrap(%v) = %v, not the same bearing", a, w)
		}
		if Wrap(w) != w {
			t.Errorf("Wrap(%v) wraps again", w)
		}
		d := Diff(a, b)
		if !(d > -180 && d <= 180) {
			t.Errorf("Diff(%v, %v) = %v", a, b, d)
		}
		if round := math.Mod(math.Abs(Wrap(a+d)-Wrap(b)), 360); !(math.Min(round, 360-round) <= 1e-9) {
			t.Errorf("from %v the turn %v does not lead to %v", a, d, b)
		}
		if back := Diff(b, a); d != 180 && back != -d {
			t.Errorf("Diff(%v, %v) = %v and back %v", a, b, d, back)
		}
	})
}
