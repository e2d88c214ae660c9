package wind_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"followingsea.example/wind"
)

func TestSeriesIterates(t *testing.T) {
	s := series(t, 0, [3]float64{0, 4, 180}, [3]float64{1, 5, 190}, [3]float64{2, 6, 200})
	var sum float64
	for i, x := range s.All() {
		if i == 2 {
			break
		}
		sum += x.Speed
	}
	if sum != 9 {
		t.Error(sum)
	}
	if s.Gap() != 3*time.Hour {
		t.Error(s.Gap())
	}
	samples := s.Samples()
	samples[0].Speed = 99
	if s.Sample(0).Speed != 4 {
		t.Error("a series can be changed through its copy")
	}
	defer func() {
		if recover() == nil {
			t.Error("Sample(3) of three did not panic")
		}
	}()
	s.Sample(3)
}

func drawSeries(t *rapid.T) wind.Series {
	var in []wind.Sample
	at := day
	for range rapid.IntRange(2, 15).Draw(t, "n") {
		w := drawWind(t, "wind")
		if rapid.IntRange(0, 5).Draw(t, "calm") == 0 {
			w = wind.Calm()
		}
		in = append(in, wind.Sample{Time: at, Wind: w})
		at = at.Add(time.Duration(rapid.IntRange(1, 300).Draw(t, "minutes")) * time.Minute)
	}
	s, err := wind.NewSeries(in, 200*time.Minute)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Asking at an instant is interpolating between its neighbours, and a stretch
// of a series answers like the whole.
func TestSeriesAtIsItsInterpolation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSeries(t)
		i := rapid.IntRange(0, s.Len()-2).Draw(t, "i")
		a, b := s.Sample(i), s.Sample(i+1)
		f := rapid.Float64Range(0, 1).Draw(t, "f")
		step := b.Time.Sub(a.Time)
		at := a.Time.Add(time.Duration(f * float64(step)))
		got, err := s.At(at)
		if step > s.Gap() && at.After(a.Time) && at.Before(b.Time) {
			if !errors.Is(err, wind.ErrGap) {
				t.Fatalf("a gap of %v answers %v, %v", step, got, err)
			}
			return
		}
		want := wind.Interpolate(a.Wind, b.Wind, float64(at.Sub(a.Time))/float64(step))
		if err != nil || !near(got.Speed, want.Speed, 1e-9) {
			t.Fatalf("%v, want %v: %v", got, want, err)
		}
		if step > s.Gap() {
			return
		}
		part, err := s.Between(a.Time, at)
		if err != nil {
			t.Fatal(err)
		}
		if end := part.Sample(part.Len() - 1); !end.Time.Equal(at) || !near(end.Speed, got.Speed, 1e-9) {
			t.Fatalf("%v, want %v", end, got)
		}
	})
}

func TestSeriesMeanByHand(t *testing.T) {
	// 4 at 0 h, 6 at 1 h, 6 at 4 h: trapezoids of 5 and 18 over 4 hours.
	s := series(t, 0, [3]float64{0, 4, 0}, [3]float64{1, 6, 0}, [3]float64{4, 6, 90})
	m, err := s.Mean(at(0), at(4))
	if err != nil || !near(m.Speed, 23.0/4, 1e-12) || m.N != 3 || m.Covered != 1 {
		t.Fatalf("%+v %v", m, err)
	}
	// The sample at 4 h stands for an hour and a half from the east.
	if !near(m.Vector.East, -6*1.5/4, 1e-12) || !near(m.Vector.North, -(4*0.5+6*2)/4.0, 1e-12) {
		t.Errorf("%+v", m.Vector)
	}
	if m, err := s.Mean(at(0.5), at(0.5)); err != nil || m.Speed != 5 {
		t.Errorf("%+v %v", m, err)
	}
	gap := series(t, time.Hour, [3]float64{0, 4, 0}, [3]float64{1, 6, 0}, [3]float64{4, 6, 0}, [3]float64{5, 8, 0})
	if m, err := gap.Mean(at(0), at(5)); err != nil || !near(m.Speed, 6, 1e-12) || !near(m.Covered, 0.4, 1e-12) {
		t.Errorf("%+v %v", m, err)
	}
	for _, c := range []struct {
		a, b float64
		want error
	}{{-1, 2, wind.ErrOutside}, {0, 6, wind.ErrOutside}, {0, 3, wind.ErrGap}, {3, 2, wind.ErrSpan}, {1, 4, wind.ErrGap}} {
		if m, err := gap.Mean(at(c.a), at(c.b)); !errors.Is(err, c.want) || m.N != 0 {
			t.Errorf("%v to %v: %+v %v", c.a, c.b, m, err)
		}
	}
}

// The mean of a span is the mean of its parts, by their length.
func TestSeriesMeanSplits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 12).Draw(t, "n")
		var in []wind.Sample
		for i := range n {
			in = append(in, wind.Sample{Time: at(float64(i)), Wind: drawWind(t, "wind")})
		}
		s, err := wind.NewSeries(in, 0)
		if err != nil {
			t.Fatal(err)
		}
		cut := rapid.IntRange(1, n-2).Draw(t, "cut")
		whole, _ := s.Mean(at(0), at(float64(n-1)))
		a, _ := s.Mean(at(0), at(float64(cut)))
		b, _ := s.Mean(at(float64(cut)), at(float64(n-1)))
		f := float64(cut) / float64(n-1)
		if !near(f*a.Speed+(1-f)*b.Speed, whole.Speed, 1e-9) || !near(f*a.Vector.East+(1-f)*b.Vector.East, whole.Vector.East, 1e-9) {
			t.Fatalf("%v and %v, whole %v", a.Speed, b.Speed, whole.Speed)
		}
		around, err := s.Around(at(float64(cut)), at(float64(n-1)), time.Duration(cut)*time.Hour)
		if err != nil || !near(around.Before.Speed, a.Speed, 1e-9) || !near(around.During.Speed, b.Speed, 1e-9) || !near(around.Before.Covered, 1, 1e-9) {
			t.Fatalf("%+v %v", around, err)
		}
	})
}

func TestAroundByHand(t *testing.T) {
	s := series(t, 0, [3]float64{0, 6, 200}, [3]float64{2, 6, 200}, [3]float64{4, 6, 220}, [3]float64{6, 6, 220}, [3]float64{8, 6, 180})
	a, err := s.Around(at(4), at(6), 2*time.Hour)
	if err != nil {
		t.Fatal(err)
	}
	if !near(a.Before.From, 210, 1e-9) || !near(a.During.From, 220, 1e-9) || !near(a.After.From, 200, 1e-9) ||
		a.Settling.Kind != wind.Veer || a.Lasting.Kind != wind.Back || !near(a.Lasting.Degrees, -20, 1e-9) {
		t.Errorf("%+v", a)
	}
	if !near(a.During.Steadiness, 1, 1e-12) || !near(a.After.Steadiness, math.Cos(20*math.Pi/180), 1e-9) {
		t.Errorf("steadiness %v, then %v", a.During.Steadiness, a.After.Steadiness)
	}
	// Half of the margin lies before the record, all of the other after it.
	a, err = s.Around(at(2), at(8), 4*time.Hour)
	if err != nil || !near(a.Before.Covered, 0.5, 1e-12) || a.Before.N != 2 || a.After.N != 0 || a.After.Covered != 0 || a.After.Speed == a.After.Speed || a.Lasting.Kind != wind.Undefined {
		t.Errorf("%+v %v", a, err)
	}
	if _, err := s.Around(at(2), at(9), time.Hour); !errors.Is(err, wind.ErrOutside) {
		t.Error(err)
	}
	if _, err := s.Around(at(2), at(4), -time.Hour); !errors.Is(err, wind.ErrSpan) {
		t.Error(err)
	}
	// A margin that ends in a gap uses what lies on this side of it.
	g := series(t, time.Hour, [3]float64{0, 6, 200}, [3]float64{4, 7, 200}, [3]float64{5, 7, 200}, [3]float64{6, 7, 200})
	a, err = g.Around(at(5), at(6), 3*time.Hour)
	if err != nil || a.Before.Speed != 7 || !near(a.Before.Covered, 1.0/3, 1e-12) {
		t.Errorf("%+v %v", a, err)
	}
}

func TestSteadyBeforeByHand(t *testing.T) {
	s := series(t, 0, [3]float64{0, 3, 200}, [3]float64{1, 9, 200}, [3]float64{2, 9, 205}, [3]float64{3, 10, 210}, [3]float64{4, 10, 240})
	st, err := s.SteadyBefore(at(3.5))
	if err != nil || !st.Since.Equal(at(1)) || st.For != 150*time.Minute || st.Mean.N != 3 || st.ToStart {
		t.Errorf("%+v %v", st, err)
	}
	// It veered by 30 degrees at the end.
	if st, err := s.SteadyBefore(at(4)); err != nil || !st.Since.Equal(at(4)) || st.Mean.N != 1 {
		t.Errorf("%+v %v", st, err)
	}
	if st, err := s.SteadyBefore(at(0)); err != nil || !st.ToStart {
		t.Errorf("%+v %v", st, err)
	}
	if _, err := s.SteadyBefore(at(9)); !errors.Is(err, wind.ErrOutside) {
		t.Error(err)
	}
	calm := series(t, 0, [3]float64{0, 0, 0}, [3]float64{1, 0, 0})
	if _, err := calm.SteadyBefore(at(1)); !errors.Is(err, wind.ErrOutside) {
		t.Error(err)
	}
	gap := series(t, time.Hour, [3]float64{0, 9, 200}, [3]float64{3, 9, 200}, [3]float64{4, 9, 200})
	if st, err := gap.SteadyBefore(at(4)); err != nil || !st.Since.Equal(at(3)) || !st.ToStart {
		t.Errorf("%+v %v", st, err)
	}
}

func TestSteadyWindIsSteady(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		speed := rapid.Float64Range(3, 20).Draw(t, "speed")
		from := rapid.Float64Range(0, 360).Draw(t, "from")
		n := rapid.IntRange(2, 20).Draw(t, "n")
		var in []wind.Sample
		for i := range n {
			w := wind.Wind{Speed: speed + rapid.Float64Range(-1, 1).Draw(t, "u"), From: math.Mod(from+rapid.Float64Range(-7, 7).Draw(t, "d")+360, 360)}
			in = append(in, wind.Sample{Time: at(float64(i)), Wind: w})
		}
		s, err := wind.NewSeries(in, 0)
		if err != nil {
			t.Fatal(err)
		}
		st, err := s.SteadyBefore(at(float64(n - 1)))
		if err != nil || !st.ToStart || st.For != time.Duration(n-1)*time.Hour {
			t.Fatalf("%+v %v", st, err)
		}
	})
}

func TestSpellsByHand(t *testing.T) {
	s := series(t, 0, [3]float64{0, 8, 200}, [3]float64{1, 4, 200}, [3]float64{2, 8, 200}, [3]float64{3, 10, 200}, [3]float64{4, 2, 200}, [3]float64{5, 6, 200})
	spells, err := s.Spells(6)
	if err != nil || len(spells) != 3 {
		t.Fatal(spells, err)
	}
	for i, want := range []wind.Spell{
		{Span: wind.Span{Start: at(0), End: at(0.5)}, Ends: true, Extreme: 8},
		{Span: wind.Span{Start: at(1.5), End: at(3.5)}, Begins: true, Ends: true, Extreme: 10},
		{Span: wind.Span{Start: at(5), End: at(5)}, Begins: true, Extreme: 6},
	} {
		if got := spells[i]; !got.Start.Equal(want.Start) || !got.End.Equal(want.End) || got.Begins != want.Begins || got.Ends != want.Ends || got.Extreme != want.Extreme {
			t.Errorf("spell %d: %+v", i, got)
		}
	}
	if spells[1].For() != 2*time.Hour {
		t.Error(spells[1].For())
	}
	lulls, err := s.Lulls(6, 90*time.Minute)
	if err != nil || len(lulls) != 1 || !lulls[0].Start.Equal(at(3.5)) || !lulls[0].End.Equal(at(5)) || lulls[0].Extreme != 2 {
		t.Errorf("%+v %v", lulls, err)
	}
	gap := series(t, time.Hour, [3]float64{0, 8, 200}, [3]float64{1, 9, 200}, [3]float64{5, 8, 200}, [3]float64{6, 9, 200})
	cut, err := gap.Spells(6)
	if err != nil || len(cut) != 2 || cut[0].Ends || cut[1].Begins || !cut[0].End.Equal(at(1)) || !cut[1].Start.Equal(at(5)) {
		t.Errorf("%+v %v", cut, err)
	}
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if sp, err := s.Spells(bad); !errors.Is(err, wind.ErrSpeed) || sp != nil {
			t.Errorf("%v: %v %v", bad, sp, err)
		}
		if sp, err := s.Lulls(bad, 0); !errors.Is(err, wind.ErrSpeed) || sp != nil {
			t.Errorf("%v: %v %v", bad, sp, err)
		}
	}
	if _, err := s.Lulls(5, -1); !errors.Is(err, wind.ErrSpan) {
		t.Error(err)
	}
}

// At every instant the record covers, the wind is in a spell or in a lull; and
// an onset is the beginning of a spell.
func TestSpellsAndLullsShareTheRecord(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSeries(t)
		level := rapid.Float64Range(0.5, 30).Draw(t, "level")
		spells, err := s.Spells(level)
		if err != nil {
			t.Fatal(err)
		}
		lulls, err := s.Lulls(level, 0)
		if err != nil {
			t.Fatal(err)
		}
		var got, want time.Duration
		for _, x := range append(spells, lulls...) {
			got += x.For()
		}
		for i := 1; i < s.Len(); i++ {
			if step := s.Sample(i).Time.Sub(s.Sample(i - 1).Time); step <= s.Gap() {
				want += step
			}
		}
		if !near(float64(got), float64(want), 1e3) {
			t.Fatalf("%v of %v", got, want)
		}
		for _, sp := range spells {
			if !(sp.Extreme >= level) {
				t.Fatalf("%+v", sp)
			}
			mid := sp.Start.Add(sp.For() / 2)
			if sp.For() < time.Second {
				continue
			}
			o, err := s.Onset(mid, level)
			if err != nil || !o.At.Equal(sp.Start) || o.Earlier == sp.Begins || o.Blown != sp.For()/2 {
				t.Fatalf("%+v: %+v %v", sp, o, err)
			}
		}
	})
}

func TestOnsetByHand(t *testing.T) {
	// A sea breeze that rises through 5 m/s at half past eleven.
	s := series(t, 0, [3]float64{9, 1, 90}, [3]float64{10, 2, 100}, [3]float64{11, 4, 200}, [3]float64{12, 6, 210}, [3]float64{13, 8, 210}, [3]float64{14, 8, 215})
	o, err := s.Onset(at(14), 5)
	if err != nil || !o.At.Equal(at(11.5)) || o.Blown != 150*time.Minute || o.Earlier {
		t.Errorf("%+v %v", o, err)
	}
	if o, err := s.Onset(at(14), 1); err != nil || !o.Earlier || o.Blown != 5*time.Hour {
		t.Errorf("%+v %v", o, err)
	}
	if _, err := s.Onset(at(11), 5); !errors.Is(err, wind.ErrBelow) {
		t.Error(err)
	}
	if _, err := s.Onset(at(20), 5); !errors.Is(err, wind.ErrOutside) {
		t.Error(err)
	}
	if _, err := s.Onset(at(12), math.NaN()); !errors.Is(err, wind.ErrSpeed) {
		t.Error(err)
	}
}

// minutes makes a series from minute, speed in knots and direction.
func minutes(t testing.TB, rows ...[3]float64) wind.Series {
	t.Helper()
	for i := range rows {
		rows[i][0] /= 60
		rows[i][1] *= wind.Knot
	}
	return series(t, time.Hour, rows...)
}

func TestShiftsByHand(t *testing.T) {
	s := minutes(t, [3]float64{0, 12, 200}, [3]float64{5, 12, 210}, [3]float64{10, 11, 250}, [3]float64{15, 12, 255}, [3]float64{60, 12, 255})
	got, err := s.Shifts(wind.ShiftRule{})
	if err != nil || len(got) != 1 {
		t.Fatal(got, err)
	}
	if !got[0].Start.Equal(at(0)) || !got[0].End.Equal(at(10.0/60)) || got[0].Turn.Kind != wind.Veer || got[0].Turn.Degrees != 50 || got[0].After.From != 250 {
		t.Errorf("%+v", got[0])
	}
	for name, c := range map[string]struct {
		rows [][3]float64
		want int
	}{
		"44 degrees":             {[][3]float64{{0, 12, 200}, {5, 12, 244}}, 0},
		"45 degrees, 10 kn":      {[][3]float64{{0, 10, 200}, {5, 10, 245}}, 1},
		"9.9 kn between":         {[][3]float64{{0, 12, 200}, {5, 9.9, 220}, {10, 12, 250}}, 0},
		"in 15 minutes":          {[][3]float64{{0, 12, 200}, {5, 12, 210}, {10, 12, 230}, {15, 12, 245}}, 0},
		"in 14 minutes":          {[][3]float64{{0, 12, 200}, {5, 12, 210}, {10, 12, 230}, {14, 12, 245}}, 1},
		"back through north":     {[][3]float64{{0, 12, 20}, {5, 12, 330}}, 1},
		"two, one after another": {[][3]float64{{0, 12, 0}, {5, 12, 50}, {10, 12, 100}, {15, 12, 150}, {20, 12, 150}}, 2},
		"calm":                   {[][3]float64{{0, 0, 0}, {5, 12, 330}}, 0},
	} {
		if got, err := minutes(t, c.rows...).Shifts(wind.ShiftRule{}); err != nil || len(got) != c.want {
			t.Errorf("%s: %+v %v", name, got, err)
		}
	}
	hourly := series(t, 0, [3]float64{0, 8, 200}, [3]float64{1, 8, 250}, [3]float64{2, 8, 250})
	if got, err := hourly.Shifts(wind.ShiftRule{}); !errors.Is(err, wind.ErrCoarse) || got != nil {
		t.Errorf("an hourly record cannot show a shift: %v %v", got, err)
	}
	if got, err := hourly.Shifts(wind.ShiftRule{Within: 90 * time.Minute}); err != nil || len(got) != 1 {
		t.Errorf("%v %v", got, err)
	}
	if _, err := hourly.Shifts(wind.ShiftRule{Degrees: math.NaN()}); !errors.Is(err, wind.ErrDirection) {
		t.Error(err)
	}
	if _, err := hourly.Shifts(wind.ShiftRule{Speed: math.NaN()}); !errors.Is(err, wind.ErrSpeed) {
		t.Error(err)
	}
}

func TestSquallsByHand(t *testing.T) {
	row := func(minute, ms float64) [3]float64 { return [3]float64{minute / 60, ms, 200} }
	for name, c := range map[string]struct {
		rows [][3]float64
		rule wind.SquallRule
		want int
	}{
		"8 to 11":        {[][3]float64{row(0, 3), row(5, 11), row(10, 4)}, wind.SquallRule{}, 1},
		"rise of 7.9":    {[][3]float64{row(0, 3.1), row(5, 11), row(10, 4)}, wind.SquallRule{}, 0},
		"to 10.9":        {[][3]float64{row(0, 2), row(5, 10.9), row(10, 4)}, wind.SquallRule{}, 0},
		"slow rise":      {[][3]float64{row(0, 3), row(10, 7), row(20, 11), row(30, 12)}, wind.SquallRule{}, 0},
		"one of two":     {[][3]float64{row(0, 3), row(5, 3), row(10, 12), row(15, 14), row(20, 4)}, wind.SquallRule{}, 1},
		"lasts ten":      {[][3]float64{row(0, 3), row(5, 12), row(10, 12), row(15, 4)}, wind.SquallRule{Last: 6 * time.Minute}, 1},
		"does not last":  {[][3]float64{row(0, 3), row(5, 12), row(10, 4)}, wind.SquallRule{Last: 6 * time.Minute}, 0},
		"and another":    {[][3]float64{row(0, 3), row(5, 12), row(10, 3), row(15, 13), row(20, 2)}, wind.SquallRule{}, 2},
		"a fresh breeze": {[][3]float64{row(0, 10), row(5, 12), row(10, 13)}, wind.SquallRule{}, 0},
	} {
		got, err := series(t, time.Hour, c.rows...).Squalls(c.rule)
		if err != nil || len(got) != c.want {
			t.Errorf("%s: %+v %v", name, got, err)
		}
	}
	s := series(t, time.Hour, row(0, 3), row(5, 3.5), row(10, 12), row(15, 14), row(20, 4))
	got, err := s.Squalls(wind.SquallRule{})
	if err != nil || len(got) != 1 || !near(got[0].Peak.Speed, 14, 1e-12) || !got[0].End.Equal(at(15.0/60)) {
		t.Errorf("%+v %v", got, err)
	}
	if _, err := series(t, 0, row(0, 3), row(60, 12)).Squalls(wind.SquallRule{}); !errors.Is(err, wind.ErrCoarse) {
		t.Error(err)
	}
	if _, err := s.Squalls(wind.SquallRule{Rise: math.NaN()}); !errors.Is(err, wind.ErrSpeed) {
		t.Error(err)
	}
	if _, err := s.Squalls(wind.SquallRule{To: -1}); !errors.Is(err, wind.ErrSpeed) {
		t.Error(err)
	}
}

// Turning the compass under a record leaves its shifts and squalls.
func TestShiftsTurnWithTheCompass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		by := float64(rapid.IntRange(0, 359).Draw(t, "by"))
		var a, b []wind.Sample
		for i := range rapid.IntRange(2, 20).Draw(t, "n") {
			x := wind.Sample{Time: day.Add(time.Duration(i) * 5 * time.Minute), Wind: wind.Wind{Speed: float64(rapid.IntRange(1, 20).Draw(t, "speed")), From: float64(rapid.IntRange(0, 359).Draw(t, "from"))}}
			a = append(a, x)
			x.From = math.Mod(x.From+by, 360)
			b = append(b, x)
		}
		sa, _ := wind.NewSeries(a, 0)
		sb, _ := wind.NewSeries(b, 0)
		x, err := sa.Shifts(wind.ShiftRule{})
		y, err2 := sb.Shifts(wind.ShiftRule{})
		if err != nil || err2 != nil || len(x) != len(y) {
			t.Fatal(x, y, err, err2)
		}
		for i := range x {
			if x[i].Span != y[i].Span || x[i].Turn != y[i].Turn {
				t.Fatalf("%+v turned %+v", x[i], y[i])
			}
			if i > 0 && x[i].Start.Before(x[i-1].End) {
				t.Fatal("shifts overlap")
			}
		}
		p, err := sa.Squalls(wind.SquallRule{})
		q, err2 := sb.Squalls(wind.SquallRule{})
		if err != nil || err2 != nil || len(p) != len(q) {
			t.Fatal(p, q, err, err2)
		}
	})
}

func TestSwellRefuses(t *testing.T) {
	nan := math.NaN()
	for _, c := range [][3]float64{{-1, 10, 200}, {nan, 10, 200}, {31, 10, 200}, {1, 0.5, 200}, {1, nan, 200}, {1, 41, 200}, {1, 10, -1}, {1, 10, 361}, {1, 10, nan}} {
		if s, err := wind.NewSwell(c[0], c[1], c[2]); !errors.Is(err, wind.ErrSwell) || s != (wind.Swell{}) {
			t.Errorf("%v: %v %v", c, s, err)
		}
	}
	if s, err := wind.NewSwell(0, nan, nan); err != nil || s.Hs != 0 {
		t.Errorf("no swell needs no period: %v %v", s, err)
	}
	ok := []wind.SwellSample{{Time: at(0), Swell: wind.Swell{Hs: 1, Tp: 12, From: 360}}}
	a, err := wind.NewSwellSystem("west", ok, 0)
	if err != nil || a.Samples()[0].From != 0 {
		t.Fatal(a, err)
	}
	for _, c := range []struct {
		in   []wind.SwellSample
		gap  time.Duration
		want error
	}{
		{nil, 0, wind.ErrEmpty}, {ok, -1, wind.ErrSpan}, {[]wind.SwellSample{{}}, 0, wind.ErrTime}, {append(ok, ok...), 0, wind.ErrDuplicate},
		{[]wind.SwellSample{{Time: at(0), Swell: wind.Swell{Hs: nan}}}, 0, wind.ErrSwell},
	} {
		if _, err := wind.NewSwellSystem("x", c.in, c.gap); !errors.Is(err, c.want) {
			t.Errorf("%v, want %v", err, c.want)
		}
	}
	if _, err := wind.NewSwells(a, a); !errors.Is(err, wind.ErrDuplicate) {
		t.Error(err)
	}
	if _, err := wind.NewSwells(wind.SwellSystem{}); !errors.Is(err, wind.ErrEmpty) {
		t.Error(err)
	}
	if _, err := (wind.SwellSystem{}).At(at(0)); !errors.Is(err, wind.ErrEmpty) {
		t.Error(err)
	}
	none, err := wind.NewSwells()
	if err != nil {
		t.Fatal(err)
	}
	if got, err := none.At(at(0)); err != nil || len(got) != 0 {
		t.Error(got, err)
	}
	far, _ := wind.NewSwellSystem("far", append(ok, wind.SwellSample{Time: at(13), Swell: wind.Swell{Hs: 1, Tp: 12, From: 10}}), 0)
	if _, err := far.At(at(5)); !errors.Is(err, wind.ErrGap) {
		t.Error(err)
	}
}

func TestSwellInterpolationStaysBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) wind.Swell {
			return wind.Swell{Hs: rapid.Float64Range(0.1, 8).Draw(t, name+" hs"), Tp: rapid.Float64Range(4, 22).Draw(t, name+" tp"), From: rapid.Float64Range(0, 359).Draw(t, name+" from")}
		}
		a, b := draw("a"), draw("b")
		sys, err := wind.NewSwellSystem("s", []wind.SwellSample{{Time: at(0), Swell: a}, {Time: at(6), Swell: b}}, 0)
		if err != nil {
			t.Fatal(err)
		}
		s, err := sys.At(at(rapid.Float64Range(0, 6).Draw(t, "h")))
		if err != nil {
			t.Fatal(err)
		}
		in := func(x, p, q float64) bool { return x >= math.Min(p, q)-1e-9 && x <= math.Max(p, q)+1e-9 }
		if !in(s.Hs, a.Hs, b.Hs) || !in(s.Tp, a.Tp, b.Tp) || !(apart(s.From, a.From) <= apart(a.From, b.From)+1e-6) {
			t.Fatalf("%+v between %+v and %+v", s, a, b)
		}
	})
}
