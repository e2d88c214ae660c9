package wind_test

import (
	"errors"
	"math"
	"testing"

	"followingsea.example/wind"
	"pgregory.net/rapid"
)

func TestRadials(t *testing.T) {
	f, err := wind.Radials(0, 90, 1e3, 2e3, 3e3, 4e3)
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range [][2]float64{{0, 1e3}, {45, 1.5e3}, {90, 2e3}, {315, 2.5e3}, {360, 1e3}, {-45, 2.5e3}, {405, 1.5e3}} {
		if got := f(row[0]); got != row[1] {
			t.Errorf("%v: %v, want %v", row[0], got, row[1])
		}
	}
	if !math.IsNaN(f(math.NaN())) || !math.IsNaN(f(math.Inf(1))) {
		t.Error("a direction that is none has a fetch")
	}
	// A sector leaves the rest without fetch.
	f, err = wind.Radials(350, 10, 1e3, 2e3, 1e3)
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range [][2]float64{{350, 1e3}, {355, 1.5e3}, {0, 2e3}, {10, 1e3}, {11, 0}, {180, 0}, {349, 0}} {
		if got := f(row[0]); got != row[1] {
			t.Errorf("%v: %v, want %v", row[0], got, row[1])
		}
	}
	// Open sea opens the sectors beside it, and is not NaN on the radial next door.
	f, err = wind.Radials(0, 120, 1e3, math.Inf(1), 2e3)
	if err != nil {
		t.Fatal(err)
	}
	if f(0) != 1e3 || !math.IsInf(f(1), 1) || !math.IsInf(f(120), 1) || f(240) != 2e3 || f(300) != 1.5e3 {
		t.Error(f(0), f(1), f(120), f(240), f(300))
	}
}

func TestRadialsBadInput(t *testing.T) {
	for _, row := range []struct {
		first, step float64
		lengths     []float64
	}{
		{0, 10, nil}, {0, 10, []float64{1}}, {0, 0, []float64{1, 2}}, {0, -5, []float64{1, 2}}, {0, math.NaN(), []float64{1, 2}},
		{math.NaN(), 10, []float64{1, 2}}, {720, 10, []float64{1, 2}}, {0, 200, []float64{1, 2, 3}}, {0, 10, []float64{1, -2}}, {0, 10, []float64{math.NaN(), 2}}, {0, math.Inf(1), []float64{1, 2}},
	} {
		if _, err := wind.Radials(row.first, row.step, row.lengths...); !errors.Is(err, wind.ErrRadials) {
			t.Errorf("%+v: %v", row, err)
		}
	}
}

// On a round lake every fetch is the radius, but for Saville's, which knows its cosines: the
// mean of cos² over the mean of cos.
func TestFetchesOfAnEvenShore(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		r, from := rapid.Float64Range(100, 1e6).Draw(t, "radius"), rapid.Float64Range(-720, 720).Draw(t, "from")
		round := func(float64) float64 { return r }
		if got := wind.ArcFetch(round, from, 15); !alike(got, r, 1e-12) {
			t.Fatal(got)
		}
		if got := wind.CosineFetch(round, from); !alike(got, r, 1e-12) {
			t.Fatal(got)
		}
		cos, cos2 := 1.0, 1.0
		for a := 6; a <= 42; a += 6 {
			c := math.Cos(float64(a) * math.Pi / 180)
			cos, cos2 = cos+2*c, cos2+2*c*c
		}
		if !near(cos, 13.511, 0.0005) {
			t.Fatal(cos)
		}
		if got := wind.SavilleFetch(round, from); !alike(got, r*cos2/cos, 1e-12) {
			t.Fatal(got)
		}
		length, waves := wind.RestrictedFetch(round, from)
		if !alike(length, r, 1e-12) || !near(math.Remainder(waves-from, 360), 0, 1e-9) {
			t.Fatal(length, waves)
		}
	})
	nowhere := func(float64) float64 { return 0 }
	if l, d := wind.RestrictedFetch(nowhere, 30); l != 0 || d != 30 {
		t.Error(l, d)
	}
	sea := func(from float64) float64 {
		if from > 60 && from < 120 {
			return math.Inf(1)
		}
		return 5e3
	}
	if l, d := wind.RestrictedFetch(sea, 30); !math.IsInf(l, 1) || d != 54 {
		t.Error(l, d) // 54: the first arc of 15 degrees that reaches into the opening
	}
	// An opening of one degree counts in the arcs of 15 degrees round it, of which the last lies 89 degrees off the wind, on either side.
	for _, c := range []struct{ opening, length, from float64 }{{96, 100, 89}, {-96, 100, 271}, {97, 0, 0}, {-97, 0, 0}} {
		inlet := func(from float64) float64 {
			if apart(from, c.opening) < 0.5 {
				return 1500
			}
			return 0
		}
		if l, d := wind.RestrictedFetch(inlet, 0); !near(l, c.length, 1e-9) || !near(d, c.from, 1e-9) {
			t.Errorf("opening at %v: %v m from %v", c.opening, l, d)
		}
	}
	if got := wind.SavilleFetch(sea, 70); !math.IsInf(got, 1) {
		t.Error(got)
	}
	bad := func(float64) float64 { return math.NaN() }
	l, d := wind.RestrictedFetch(bad, 30)
	if !math.IsNaN(l) || !math.IsNaN(d) || !math.IsNaN(wind.ArcFetch(bad, 0, 5)) || !math.IsNaN(wind.SavilleFetch(bad, 0)) {
		t.Error("an unknown fetch became known")
	}
	if !math.IsNaN(wind.ArcFetch(nowhere, 0, -1)) || !math.IsNaN(wind.ArcFetch(nowhere, 0, math.NaN())) {
		t.Error("half")
	}
}

// Turning the whole map turns the answer.
func TestPropertyRestrictedFetchTurnsWithTheMap(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.SliceOfN(rapid.Float64Range(500, 9e4), 36, 36).Draw(t, "radials")
		turn, from := float64(rapid.IntRange(0, 359).Draw(t, "turn")), float64(rapid.IntRange(0, 359).Draw(t, "from"))
		a, err := wind.Radials(0, 10, r...)
		if err != nil {
			t.Fatal(err)
		}
		b, err := wind.Radials(turn, 10, r...)
		if err != nil {
			t.Fatal(err)
		}
		la, da := wind.RestrictedFetch(a, from)
		lb, db := wind.RestrictedFetch(b, from+turn)
		if !alike(lb, la, 1e-9) || !near(math.Remainder(db-da-turn, 360), 0, 1e-6) {
			t.Fatalf("%v from %v, %v from %v", la, da, lb, db)
		}
	})
}
