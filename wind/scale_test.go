package wind_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/wind"
)

// The two columns of code table 1100 disagree at three whole knots and no
// others: a forecast worded in knots decides, so Beaufort is the knots column.
func TestBeaufortTablesAgreeButForThreeKnots(t *testing.T) {
	apart := map[int]bool{16: true, 21: true, 27: true}
	last := wind.Force(0)
	for kn := range 121 {
		speed := float64(kn) * wind.Knot
		a, err := wind.Beaufort(speed)
		if err != nil {
			t.Fatal(err)
		}
		b, err := wind.BeaufortMetric(speed)
		if err != nil {
			t.Fatal(err)
		}
		if (a != b) != apart[kn] || apart[kn] && b != a+1 {
			t.Errorf("%d kn: %v and %v", kn, a, b)
		}
		if a < last {
			t.Errorf("%d kn: the force falls", kn)
		}
		last = a
		lo, hi := a.Range()
		if !(speed >= lo && speed < hi) {
			t.Errorf("%d kn is outside the range %v to %v of %v", kn, lo, hi, a)
		}
	}
	// 10.4 knots are worded 10, 10.5 are worded 11.
	for kn, want := range map[float64]wind.Force{0.49: 0, 0.5: 1, 10.4: 3, 10.5: 4, 16.4: 4, 16.5: 5, 33.4: 7, 33.5: 8, 63.5: 12, 150: 12} {
		if got, _ := wind.Beaufort(kn * wind.Knot); got != want {
			t.Errorf("%v kn: %v, want %v", kn, got, want)
		}
	}
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		if f, err := wind.Beaufort(bad); !errors.Is(err, wind.ErrSpeed) || f != 0 {
			t.Errorf("%v: %v %v", bad, f, err)
		}
		if f, err := wind.BeaufortMetric(bad); !errors.Is(err, wind.ErrSpeed) || f != 0 {
			t.Errorf("%v: %v %v", bad, f, err)
		}
	}
}

func TestBeaufortSpeedAndNumberUndoEachOther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := rapid.Float64Range(0, 17).Draw(t, "b")
		if got := wind.BeaufortNumber(wind.BeaufortSpeed(b)); !near(got, b, 1e-12) {
			t.Fatalf("%v became %v", b, got)
		}
	})
	for _, bad := range []float64{-1, 17.1, math.NaN(), math.Inf(1)} {
		if got := wind.BeaufortSpeed(bad); got == got {
			t.Errorf("%v gives %v", bad, got)
		}
	}
}

func TestForceData(t *testing.T) {
	for f := wind.Force(0); f <= 12; f++ {
		lo, hi := f.Range()
		kn, top, bounded := f.Knots()
		if f < 12 {
			next, _ := (f + 1).Range()
			if next != hi || !bounded {
				t.Errorf("%v: the next begins at %v, not %v", f, next, hi)
			}
			if got, _ := wind.Beaufort(float64(top) * wind.Knot); got != f {
				t.Errorf("%v: its upper limit is %v", f, got)
			}
		} else if bounded || !math.IsInf(hi, 1) {
			t.Error("force 12 has no upper limit")
		}
		if got, _ := wind.Beaufort(float64(kn) * wind.Knot); got != f {
			t.Errorf("%v: its lower limit is %v", f, got)
		}
		if got, _ := wind.Beaufort(lo); got != f {
			t.Errorf("%v does not hold its own lower end", f)
		}
		k, _, _ := f.KilometresAnHour()
		if !near(float64(k)/3.6, lo, 0.5) {
			t.Errorf("%v: %v km/h against %v m/s", f, k, lo)
		}
		if p, m := f.OpenSeaHeight(); m < p {
			t.Errorf("%v: probable %v, maximum %v", f, p, m)
		}
		if f.Name() == "" || f.String() == "" {
			t.Errorf("%d has no name", int(f))
		}
	}
	for _, f := range []wind.Force{-1, 13} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("Force(%d) did not panic", int(f))
				}
			}()
			f.Range()
		}()
		if f.String() == "" {
			t.Error("a wrong force prints")
		}
	}
}

func TestSeaStateBounds(t *testing.T) {
	var last wind.SeaState
	for h := 0.0; h < 20; h += 0.01 {
		s, err := wind.SeaStateOf(h)
		if err != nil || s < last || s > last+1 {
			t.Fatalf("%v m: %v after %v, %v", h, s, last, err)
		}
		lo, hi := s.Range()
		if !(h > lo || h == 0 && lo == 0) || !(h <= hi) {
			t.Fatalf("%v m is outside %v to %v", h, lo, hi)
		}
		last = s
	}
	if last != 9 || last.Words() != "phenomenal" || last.String() != "sea state 9, phenomenal" {
		t.Error(last)
	}
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		if s, err := wind.SeaStateOf(bad); !errors.Is(err, wind.ErrHeight) || s != 0 {
			t.Errorf("%v: %v %v", bad, s, err)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("SeaState(10) did not panic")
		}
	}()
	wind.SeaState(10).Words()
}

func TestWarningLevels(t *testing.T) {
	levels := wind.WarningLevels()
	byName := map[string]wind.WarningLevel{}
	for _, l := range levels {
		if !(l.Mean > 0) || l.Source == "" || l.Name == "" || l.Service == "" || l.Upper < l.Mean || l.Gust < l.Mean {
			t.Errorf("%+v", l)
		}
		if _, seen := byName[l.Name]; !seen {
			byName[l.Name] = l
		}
	}
	levels[0].Mean = 0
	if wind.WarningLevels()[0].Mean == 0 {
		t.Error("the levels on file can be changed by a caller")
	}
	gale, usGale := byName["gale"], byName["gale warning"]
	for _, c := range []struct {
		level          wind.WarningLevel
		mean, gust     float64
		reached, known bool
	}{
		{gale, 34, 40, true, true}, {gale, 33.5, 40, true, true}, {gale, 33.4, 40, false, true}, {gale, 30, 43, true, true},
		{gale, 30, math.NaN(), false, false}, // nobody said how hard it gusts
		{gale, math.NaN(), 30, false, false}, {usGale, 30, math.NaN(), false, true}, {usGale, 34, math.NaN(), true, true},
		{usGale, math.NaN(), 60, false, false}, {usGale, 0, math.NaN(), false, true}, // a calm is known
	} {
		reached, known := c.level.Reached(wind.Wind{Speed: c.mean * wind.Knot, Gust: c.gust * wind.Knot, From: 200})
		if reached != c.reached || known != c.known {
			t.Errorf("%s at %v gusts %v kn: %v %v", c.level.Name, c.mean, c.gust, reached, known)
		}
	}
}

func TestReportableGust(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		peak, lull float64
		want       bool
	}{{20, 10, true}, {19.9, 10, false}, {nan, 10, true}, {20, nan, true}} {
		if got := wind.ReportableGust(c.peak*wind.Knot, c.lull*wind.Knot); got != c.want {
			t.Errorf("%v over %v: %v", c.peak, c.lull, got)
		}
	}
}
