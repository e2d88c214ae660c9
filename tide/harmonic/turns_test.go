package harmonic

import (
	"math"
	"math/cmplx"
	"slices"
	"testing"
	"time"

	"followingsea.example/tide"
)

// TestPrune: a rise or fall smaller than the prominence is left out with both its turns, one as great as
// it stands, and the last turn that is left stands for the water beyond.
func TestPrune(t *testing.T) {
	for _, c := range []struct {
		name    string
		p       float64
		heights []float64
		want    []float64
	}{
		{"everything", 0, []float64{1, 0.5, 2}, []float64{1, 0.5, 2}},
		{"nothing", 1, nil, nil},
		{"as great as the prominence", 0.5, []float64{2, 1.5, 2}, []float64{2, 1.5, 2}},
		{"smaller", 0.75, []float64{2, 1.5, 2}, nil},
		{"a dip in a fall", 0.5, []float64{3, 1, 1.25, 0, 3}, []float64{3, 0, 3}},
		{"a dip in a rise", 0.5, []float64{0, 2, 1.75, 3, 0}, []float64{0, 3, 0}},
		{"a double high, the first greater", 0.5, []float64{0, 3, 2.75, 2.875, 0}, []float64{0, 3, 0}},
		{"a double high, the second greater", 0.5, []float64{0, 2.875, 2.75, 3, 0}, []float64{0, 3, 0}},
		{"a double low, the first lower", 0.5, []float64{3, 0, 0.25, 0.125, 3}, []float64{3, 0, 3}},
		{"equal highs", 0.5, []float64{0, 3, 2.75, 3, 0}, []float64{0, 3, 0}},
		{"a creep of small steps", 1, []float64{2, 1.5, 1.75, 1.25, 1.5, 1, 3}, []float64{2, 1, 3}},
		{"a small end", 0.5, []float64{0, 3, 0, 0.25}, []float64{0, 3, 0}},
		{"begins with a low", 0.5, []float64{1, 1.5, 0, 2}, []float64{1, 1.5, 0, 2}},
		{"begins small", 1, []float64{1, 1.5, 0, 2}, []float64{1.5, 0, 2}},
		{"begins small the other way", 1, []float64{1.5, 1, 2, 0}, []float64{1, 2, 0}},
	} {
		var turns []tide.Turn
		for i, h := range c.heights {
			turns = append(turns, tide.Turn{Time: midnight.Add(time.Duration(i) * time.Hour), Height: h})
		}
		var got []float64
		last := midnight.Add(-1)
		for _, u := range prune(turns, c.p) {
			got = append(got, u.Height)
			if i := slices.IndexFunc(turns, func(v tide.Turn) bool { return v == u }); i < 0 || !u.Time.After(last) {
				t.Errorf("%s: %v", c.name, u)
			}
			last = u.Time
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// TestTurnIsJudgedByItsNeighbours: the only high water in an hour stands, because the water goes down beyond it;
// and the ends of the question belong to it.
func TestTurnIsJudgedByItsNeighbours(t *testing.T) {
	td := tideOf(t, 0, Without, Constituent{"S2", 1, 4})
	for _, p := range []float64{0, 0.01, 1, 1.99} {
		u, err := td.Turns(hoursOf(11.5), hoursOf(12.5), p)
		if err != nil || len(u) != 1 || !u[0].High {
			t.Errorf("prominence %v: %v %v", p, u, err)
		}
	}
	if u, err := td.Turns(hoursOf(11.5), hoursOf(12.5), 2.01); err != nil || len(u) != 0 {
		t.Errorf("greater than the range: %v %v", u, err)
	}
}

// TestTableHasOneTurnMore: a table has the last turn at or before the beginning and the first one at or
// after the end, and a slow tide has no gap.
func TestTableHasOneTurnMore(t *testing.T) {
	td := tideOf(t, 0, Without, Constituent{"S2", 1, 0})
	for _, c := range []struct {
		from, to, first, last float64
	}{{3, 9, 0, 12}, {5.999, 6.001, 0, 12}, {6.001, 11.999, 6, 12}, {5.999, 12.001, 0, 18}, {1, 2, 0, 6}, {-20, 40, -24, 42}} {
		tb, err := td.Table(hoursOf(c.from), hoursOf(c.to), 0.01, tide.Options{})
		if err != nil {
			t.Fatal(err)
		}
		first, last := tb.Span()
		sameTime(t, "first", first, hoursOf(c.first))
		sameTime(t, "last", last, hoursOf(c.last))
		if want := int((c.last-c.first)/6) + 1; tb.Len() != want {
			t.Errorf("%v to %v: %d turns, want %d", c.from, c.to, tb.Len(), want)
		}
	}
	// MM turns every 13.78 days: two turns, and ten days between them.
	mm := tideOf(t, 0, Without, Constituent{"MM", 1, 0})
	turns, err := mm.Turns(hoursOf(0), hoursOf(60*24), 0)
	if err != nil || len(turns) < 3 {
		t.Fatal(turns, err)
	}
	from := turns[0].Time.Add(45 * time.Hour)
	tb, err := mm.Table(from, from.Add(10*24*time.Hour), 0, tide.Options{})
	if err != nil || tb.Len() != 2 {
		t.Fatal(err)
	}
	if h := tb.Height(from.Add(5 * 24 * time.Hour)); math.IsNaN(h) {
		t.Error("a gap between two turns of a slow tide")
	}
	// A day behind one turn, or before one, has no table.
	for _, from := range []time.Duration{10 * time.Hour, -34 * time.Hour, 200 * time.Hour} {
		at := turns[0].Time.Add(from)
		if tb, err := mm.Table(at, at.Add(24*time.Hour), 0, tide.Options{}); err == nil {
			t.Errorf("a table of %d turns", tb.Len())
		}
	}
}

// TestTurnAtNewYear: where the nodes of the old year have high water just before midnight and those of the
// new one again just after, one of both stands, the higher; of two low waters the lower. M2's f and u say which.
func TestTurnAtNewYear(t *testing.T) {
	seen := map[bool]bool{}
	for year := 1950; year < 2050; year++ {
		newYear, _ := yearOf(year)
		start, _ := yearOf(year - 1)
		before, f0 := YearArgument("M2", year-1, Modern)
		before += Speed("M2") * newYear.Sub(start).Hours()
		after, f1 := YearArgument("M2", year, Modern)
		back := math.Remainder(before-after, 360)
		if back < 0.1 || back > 3 || math.Abs(f1-f0) < 1e-4 {
			continue
		}
		seen[f1 > f0] = true
		for _, high := range []bool{true, false} {
			lag := math.Mod(after+back/2, 360)
			if !high {
				lag = math.Mod(lag+180, 360)
			}
			turns, err := tideOf(t, 0, ByYear, Constituent{"M2", 5, lag}).Turns(newYear.Add(-7*time.Hour), newYear.Add(7*time.Hour), 0)
			if err != nil || len(turns) != 3 || turns[1].High != high {
				t.Fatalf("%d: %v %v", year, turns, err)
			}
			off := time.Duration(back / 2 / Speed("M2") * 3600e9)
			height := 5 * max(f0, f1)
			if f0 > f1 {
				off = -off
			}
			if !high {
				height = -height
			}
			if d := turns[1].Time.Sub(newYear.Add(off)); d.Abs() > time.Millisecond || !(math.Abs(turns[1].Height-height) <= 1e-9) {
				t.Errorf("%d: %v, want %v and %v", year, turns[1], newYear.Add(off), height)
			}
		}
	}
	if !seen[true] || !seen[false] {
		t.Error("every year's jump is of one kind")
	}
}

// TestWindowsAtNewYear: where the water of the nodes of the year jumps over the bar, the window begins or ends
// at New Year; where it has water on both sides it is one window, and where on neither, none.
func TestWindowsAtNewYear(t *testing.T) {
	td := tideOf(t, 10, ByYear, Constituent{"M2", 5, 100}, Constituent{"O1", 1, 50})
	kinds := map[bool]bool{}
	for year := 2000; year < 2019; year++ {
		at, _ := yearOf(year)
		old, fresh := td.sum.valueIn(at, year-1), td.sum.valueIn(at, year)
		if math.Abs(old-fresh) < 1e-3 {
			continue
		}
		kinds[old < fresh] = true
		level := (old + fresh) / 2
		from, to := at.Add(-2*time.Second), at.Add(2*time.Second)
		open, err := td.Windows(tide.Bar{Need: level}, from, to)
		shut, err2 := td.Below(level, from, to)
		if err != nil || err2 != nil || len(open) != 1 || len(shut) != 1 {
			t.Fatalf("%d: %v %v", year, open, shut)
		}
		a, b := open[0], shut[0] // in the order of time
		if old < fresh {
			a, b = b, a
		}
		if !a.From.Equal(from) || !a.To.Equal(at) || !b.From.Equal(at) || !b.To.Equal(to) || !a.CutFrom || a.CutTo || b.CutFrom || !b.CutTo {
			t.Errorf("%d: %+v %+v", year, a, b)
		}
		for _, span := range []time.Duration{time.Second, 700 * 24 * time.Hour} {
			from, to := at.Add(-span), at.Add(span)
			if w, err := td.Windows(tide.Bar{}, from, to); err != nil || len(w) != 1 || !w[0].From.Equal(from) || !w[0].To.Equal(to) || !w[0].CutFrom || !w[0].CutTo {
				t.Errorf("%d: %v %v", year, w, err)
			}
			if w, err := td.Below(0, from, to); err != nil || len(w) != 0 {
				t.Errorf("%d: %v %v", year, w, err)
			}
			if year%5 != 0 {
				break // once in a while is enough for the long one
			}
		}
	}
	if !kinds[true] || !kinds[false] {
		t.Error("every year's jump is of one kind")
	}
}

// TestTouchedLevel: a level that the water only touches, from below, is no window, and the water stands
// at or below it all the time; cut, as the question ends and not the water.
func TestTouchedLevel(t *testing.T) {
	for lag := 0.0; lag < 3; lag += 0.25 {
		td := tideOf(t, 0, Without, Constituent{"S2", 1, lag})
		for _, level := range []float64{1, 1 + 1e-9} {
			w, err := td.Windows(tide.Bar{Need: level}, hoursOf(-3), hoursOf(30))
			var open time.Duration
			for _, v := range w {
				open += v.Duration()
			}
			// Rounding of a height, 1e-16, moves the edges by √(2·1e-16) rad, 2 ms.
			if err != nil || open > 20*time.Millisecond {
				t.Errorf("lag %v, level %v: %v %v", lag, level, w, err)
			}
			b, err := td.Below(level, hoursOf(-3), hoursOf(30))
			var shut time.Duration
			for _, v := range b {
				shut += v.Duration()
			}
			if err != nil || len(b) == 0 || shut < 33*time.Hour-20*time.Millisecond || !b[0].CutFrom || !b[len(b)-1].CutTo {
				t.Errorf("lag %v, level %v: %v %v", lag, level, b, err)
			}
		}
	}
}

// TestWindowThatBeginsOnTheLevel: where the water just passes the level at the end of the question, nothing is cut.
func TestWindowThatBeginsOnTheLevel(t *testing.T) {
	td := tideOf(t, -1, Without, Constituent{"S2", 1, 0})
	// High water, exactly 0 m, at midnight: at or below all day, and from then on not cut.
	w, err := td.Below(0, midnight, hoursOf(6))
	if err != nil || len(w) != 1 || w[0].CutFrom || !w[0].CutTo || w[0].Duration() < 6*time.Hour-20*time.Millisecond {
		t.Errorf("%+v %v", w, err)
	}
	w, err = td.Below(0, hoursOf(-6), midnight)
	if err != nil || len(w) != 1 || !w[0].CutFrom || w[0].CutTo {
		t.Errorf("%+v %v", w, err)
	}
}

// TestDerivatives: each derivative of a sum of waves is the slope of the one before, where their slow
// parts are large too.
func TestDerivatives(t *testing.T) {
	ws := []wave{{2 + 3i, 0.7 - 0.4i, -0.3 + 0.9i, 0.5}, {-1 + 0.5i, 0.2 + 1.1i, 0.6 + 0.1i, 1.3}}
	for tau := -2.0; tau <= 2; tau += 0.125 {
		want := 0.0
		for _, w := range ws {
			want += real((w.p0 + w.p1*complex(tau, 0) + w.p2*complex(tau*tau, 0)) * cmplx.Exp(complex(0, w.speed*tau)))
		}
		if got := derivative(ws, 0, tau); !(math.Abs(got-want) <= 1e-13) {
			t.Errorf("τ = %v: %v, want %v", tau, got, want)
		}
		for order := 1; order <= 2; order++ {
			const d = 1e-4
			want := (derivative(ws, order-1, tau+d) - derivative(ws, order-1, tau-d)) / (2 * d)
			if got := derivative(ws, order, tau); !(math.Abs(got-want) <= 1e-6) {
				t.Errorf("order %d, τ = %v: %v, want %v", order, tau, got, want)
			}
		}
	}
}

// TestWavesAroundAnInstant: within their reach the waves are the sum itself, and their slopes its rate.
func TestWavesAroundAnInstant(t *testing.T) {
	for n := AtInstant; n <= Without; n++ {
		td := tideOf(t, 0, n, Constituent{"M2", 3, 40}, Constituent{"O1", 2, 80}, Constituent{"MF", 1, 20}, Constituent{"S2", 1, 20}, Constituent{"OO1", 1, 20})
		mid := hoursOf(7).Add(700 * time.Millisecond)
		ws := td.sum.near(mid, mid.Year(), nil)
		for tau := -12.0; tau <= 12; tau += 0.5 {
			at := mid.Add(time.Duration(tau * 3600e9))
			if got, want := derivative(ws, 0, tau), td.Height(at); !(math.Abs(got-want) <= 1e-9) {
				t.Errorf("%v %v: %v, want %v", n, tau, got, want)
			}
			if got, want := derivative(ws, 1, tau)/3600, td.Rate(at); !(math.Abs(got-want) <= 1e-12) {
				t.Errorf("%v %v: rate %v, want %v", n, tau, got, want)
			}
		}
	}
}
