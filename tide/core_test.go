package tide_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"followingsea.example/tide"
	"pgregory.net/rapid"
)

// near fails unless got is within tol of want; a NaN never passes.
func near(t interface {
	Helper()
	Errorf(string, ...any)
}, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %v, want %v within %v", what, got, want, tol)
	}
}

func utc(s string) time.Time {
	u, err := time.Parse("2006-01-02 15:04", s)
	if err != nil {
		panic(err)
	}
	return u
}

func day(t testing.TB, o tide.Options) *tide.Table {
	t.Helper()
	tb, err := tide.NewTable([]tide.Turn{
		{Time: utc("2026-08-15 05:03"), Height: 6.26, High: true},
		{Time: utc("2026-08-15 11:28"), Height: -0.409},
		{Time: utc("2026-08-15 17:30"), Height: 6.063, High: true},
		{Time: utc("2026-08-15 23:50"), Height: -0.204},
		{Time: utc("2026-08-16 05:51"), Height: 6.075, High: true},
	}, o)
	if err != nil {
		t.Fatal(err)
	}
	return tb
}

func TestRulesMeetTheirBounds(t *testing.T) {
	near(t, "1/12 - cos", tide.Twelfths(1./6)-tide.Cosine(1./6), 1./12-(1-math.Cos(math.Pi/6))/2, 1e-15)
	var worst, at, span float64
	for i := 0; i <= 60000; i++ {
		x := float64(i) / 60000
		if d := tide.Twelfths(x) - tide.Cosine(x); d > worst {
			worst, at = d, x
		}
		span = math.Max(span, math.Abs(tide.TwelfthsInverse(x)-tide.CosineInverse(x)))
	}
	near(t, "largest difference", worst, 0.025551, 1e-6)
	near(t, "its place", at, 0.10312, 2e-5)
	near(t, "largest difference of time", span, 0.0511, 1e-4)
	near(t, "tenths at a sixth", tide.Tenths(1./6)-tide.Cosine(1./6), 0.0330, 5e-5)
}

func TestRuleInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		by := tide.Rule(rapid.IntRange(0, 2).Draw(t, "rule"))
		x := rapid.Float64Range(0, 1).Draw(t, "x")
		f := by.Fraction(x)
		near(t, "back and forth", by.Fraction(by.Elapsed(f)), f, 1e-14)
		near(t, "rise and fall are mirror images", by.Fraction(1-x), 1-f, 1e-14)
	})
}

func TestRuleSlopeIsTheDerivative(t *testing.T) {
	for by := tide.ByCosine; by <= tide.ByTenths; by++ {
		for i := 0; i < 100; i++ {
			x := (float64(i) + 0.5) / 100
			near(t, by.String(), by.Slope(x), (by.Fraction(x+1e-6)-by.Fraction(x-1e-6))/2e-6, 1e-8)
		}
	}
}

func TestRuleBadInput(t *testing.T) {
	for by := tide.ByCosine; by <= tide.ByTenths+1; by++ {
		for _, x := range []float64{math.NaN(), -1e-300, 1 + 1e-15, math.Inf(1), math.Inf(-1)} {
			for _, y := range []float64{by.Fraction(x), by.Elapsed(x), by.Slope(x)} {
				if !math.IsNaN(y) {
					t.Errorf("%v at %v = %v, want NaN", by, x, y)
				}
			}
		}
	}
}

func TestHeightAtATurnIsTheTurn(t *testing.T) {
	for by := tide.ByCosine; by <= tide.ByTenths; by++ {
		tb := day(t, tide.Options{Rule: by})
		for _, u := range tb.Turns() {
			near(t, "height at "+u.String(), tb.Height(u.Time), u.Height, 0)
		}
	}
}

func TestWindowsAgreeWithHeights(t *testing.T) {
	tb := day(t, tide.Options{})
	first, last := tb.Span()
	rapid.Check(t, func(t *rapid.T) {
		b := tide.Bar{Charted: rapid.Float64Range(-7, 3).Draw(t, "charted"), Need: rapid.Float64Range(0, 3).Draw(t, "need")}
		lo := rapid.IntRange(0, 1000).Draw(t, "from")
		from := first.Add(time.Duration(lo) * time.Minute)
		to := from.Add(time.Duration(rapid.IntRange(1, int(last.Sub(from)/time.Minute)).Draw(t, "span")) * time.Minute)
		open, err := tb.Windows(b, from, to)
		if err != nil {
			t.Fatal(err)
		}
		closed, err := tb.Below(b.Level(), from, to)
		if err != nil {
			t.Fatal(err)
		}
		var sum time.Duration
		for i, w := range open {
			sum += w.Duration()
			if w.From.Before(from) || w.To.After(to) || !w.From.Before(w.To) || i > 0 && !w.From.After(open[i-1].To) {
				t.Fatalf("window %v out of order or place", w)
			}
			if !w.CutFrom && !w.From.Equal(from) {
				near(t, "height at the opening", tb.Height(w.From), b.Level(), 1e-9)
			}
			if !w.CutTo && !w.To.Equal(to) {
				near(t, "height at the closing", tb.Height(w.To), b.Level(), 1e-9)
			}
		}
		for _, w := range closed {
			sum += w.Duration()
		}
		near(t, "open and closed make the whole", sum.Seconds(), to.Sub(from).Seconds(), 1e-6)
		for at := from; !at.After(to); at = at.Add(7 * time.Minute) {
			in := false
			for _, w := range open {
				in = in || w.Contains(at)
			}
			if h := tb.Height(at); in != (h >= b.Level()) && math.Abs(h-b.Level()) > 1e-9 {
				t.Fatalf("%v: height %v, level %v, in a window %v", at, h, b.Level(), in)
			}
		}
	})
}

func TestWindowsEdges(t *testing.T) {
	tb := day(t, tide.Options{})
	from, to := tb.Span()
	all, err := tb.Windows(tide.Bar{Charted: 3}, from, to)
	if err != nil || len(all) != 1 || !all[0].CutFrom || !all[0].CutTo || all[0].From != from || all[0].To != to {
		t.Errorf("always deep enough: %v, %v", all, err)
	}
	none, err := tb.Windows(tide.Bar{Charted: tide.Drying(6.5)}, from, to)
	if err != nil || len(none) != 0 {
		t.Errorf("never deep enough: %v, %v", none, err)
	}
	// The level of a low water: two windows that meet there are one.
	met, err := tb.Windows(tide.Bar{Charted: 0.409}, from, to)
	if err != nil || len(met) != 1 {
		t.Errorf("level of low water: %v, %v", met, err)
	}
	// The level of the lower high water: touched at 17:30, for no time.
	touch, err := tb.Windows(tide.Bar{Charted: -6.063}, utc("2026-08-15 12:00"), utc("2026-08-15 23:00"))
	if err != nil || len(touch) != 0 {
		t.Errorf("touched level: %v, %v", touch, err)
	}
	if _, err := tb.Windows(tide.Bar{}, from.Add(-1), to); !errors.Is(err, tide.ErrOutside) {
		t.Errorf("before the table: %v", err)
	}
	if _, err := tb.Windows(tide.Bar{}, to, from); !errors.Is(err, tide.ErrValue) {
		t.Errorf("backwards: %v", err)
	}
	if _, err := tb.Windows(tide.Bar{Need: math.NaN()}, from, to); !errors.Is(err, tide.ErrValue) {
		t.Errorf("NaN: %v", err)
	}
	if _, err := tb.Below(math.Inf(1), from, to); !errors.Is(err, tide.ErrValue) {
		t.Errorf("Inf: %v", err)
	}
}

func TestTableKnowsItsGaps(t *testing.T) {
	turns := []tide.Turn{
		{Time: utc("2026-01-01 00:00"), Height: 5, High: true},
		{Time: utc("2026-01-01 06:10"), Height: 1},
		{Time: utc("2026-01-01 18:30"), Height: 1.2}, // the high water between is missing
		{Time: utc("2026-01-02 00:40"), Height: 5, High: true},
		{Time: utc("2026-01-03 07:30"), Height: 1}, // a day is missing
	}
	tb, err := tide.NewTable(turns, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, u := range turns {
		near(t, "turn on the edge of a gap", tb.Height(u.Time), u.Height, 0)
	}
	for _, at := range []string{"2026-01-01 12:00", "2026-01-02 12:00"} {
		e := tb.Estimate(utc(at))
		if e.Remark != tide.Gap || !math.IsNaN(e.Height+e.Rate) || !math.IsNaN(e.Spread) {
			t.Errorf("%s: %+v, want a gap", at, e)
		}
		if _, err := tb.Limb(utc(at)); !errors.Is(err, tide.ErrGap) {
			t.Errorf("%s: %v", at, err)
		}
	}
	if _, err := tb.Windows(tide.Bar{}, utc("2026-01-01 01:00"), utc("2026-01-01 20:00")); !errors.Is(err, tide.ErrGap) {
		t.Errorf("window over a gap: %v", err)
	}
	if w, err := tb.Windows(tide.Bar{Need: 3}, utc("2026-01-01 01:00"), utc("2026-01-01 06:10")); err != nil || len(w) != 1 {
		t.Errorf("window up to a gap: %v %v", w, err)
	}
	if e := tb.Estimate(utc("2025-12-31 23:59")); e.Remark != tide.Outside || !math.IsNaN(e.Height) {
		t.Errorf("before: %+v", e)
	}
}

func TestOddShapesAreRemarkedAndRefused(t *testing.T) {
	turns := []tide.Turn{
		{Time: utc("2026-01-01 00:00"), Height: 1},
		{Time: utc("2026-01-01 08:42"), Height: 4.6, High: true},
		{Time: utc("2026-01-01 12:24"), Height: 1},
	}
	tb, err := tide.NewTable(turns, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if e := tb.Estimate(utc("2026-01-01 04:00")); e.Remark != tide.Long || !(e.Spread > 1) {
		t.Errorf("a rise of 8 h 42: %+v", e)
	}
	if e := tb.Estimate(utc("2026-01-01 10:00")); e.Remark != tide.Short {
		t.Errorf("a fall of 3 h 42: %+v", e)
	}
	from, to := tb.Span()
	if _, err := tb.Windows(tide.Bar{Need: 2}, from, to); !errors.Is(err, tide.ErrShape) {
		t.Errorf("windows: %v", err)
	}
	wide, err := tide.NewTable(turns, tide.Options{Shortest: 3 * time.Hour, Longest: 9 * time.Hour})
	if err != nil {
		t.Fatal(err)
	}
	if w, err := wide.Windows(tide.Bar{Need: 2}, from, to); err != nil || len(w) != 1 {
		t.Errorf("accepted knowingly: %v %v", w, err)
	}
}

func TestTableRefusesWhatIsNoTide(t *testing.T) {
	h := func(at string, z float64) tide.Turn { return tide.Turn{Time: utc(at), Height: z, High: true} }
	l := func(at string, z float64) tide.Turn { return tide.Turn{Time: utc(at), Height: z} }
	for name, turns := range map[string][]tide.Turn{
		"none":           nil,
		"one":            {h("2026-01-01 00:00", 5)},
		"backwards":      {h("2026-01-01 06:00", 5), l("2026-01-01 00:00", 1)},
		"same instant":   {h("2026-01-01 06:00", 5), l("2026-01-01 06:00", 1)},
		"high below low": {h("2026-01-01 00:00", 1), l("2026-01-01 06:00", 5)},
		"two highs":      {h("2026-01-01 00:00", 5), h("2026-01-01 02:00", 5.2)},
		"NaN":            {h("2026-01-01 00:00", math.NaN()), l("2026-01-01 06:00", 1)},
		"no such tide":   {h("2026-01-01 00:00", 500), l("2026-01-01 06:00", 1)},
	} {
		if tb, err := tide.NewTable(turns, tide.Options{}); !errors.Is(err, tide.ErrTurns) || tb != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	ok := []tide.Turn{h("2026-01-01 00:00", 5), l("2026-01-01 06:00", 1)}
	for name, o := range map[string]tide.Options{
		"rule": {Rule: 7}, "negative": {Shortest: -1}, "crossed": {Shortest: 8 * time.Hour}, "gap": {Gap: time.Hour},
	} {
		if _, err := tide.NewTable(ok, o); !errors.Is(err, tide.ErrValue) {
			t.Errorf("options %s: %v", name, err)
		}
	}
}

func TestStreamVectorRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := tide.Setting(rapid.Float64Range(1e-3, 10).Draw(t, "rate"), rapid.Float64Range(-720, 720).Draw(t, "set"))
		b := s.Velocity().Stream()
		near(t, "rate", b.Rate, s.Rate, 1e-13)
		near(t, "set", math.Abs(math.Remainder(b.Set-s.Set, 360)), 0, 1e-11)
		near(t, "along its set", s.Velocity().Along(s.Set), s.Rate, 1e-13)
	})
	if s := (tide.Velocity{}).Stream(); s != (tide.Stream{}) {
		t.Errorf("slack: %v", s)
	}
	for _, s := range []tide.Stream{{Rate: -1, Set: 0}, {Rate: math.NaN(), Set: 0}, {Rate: 1, Set: math.NaN()}, {Rate: math.Inf(1), Set: 0}, {Rate: 1, Set: math.Inf(1)}} {
		if v := s.Velocity(); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
			t.Errorf("%v: %v", s, v)
		}
	}
}

func TestStreamsMixAsVectors(t *testing.T) {
	c, err := tide.NewClockStreams([]tide.StreamSample{
		{Time: utc("2026-01-01 00:00"), Stream: tide.Setting(1, 350)},
		{Time: utc("2026-01-01 01:00"), Stream: tide.Setting(1, 10)},
		{Time: utc("2026-01-01 02:00"), Stream: tide.Setting(1, 190)},
		{Time: utc("2026-01-01 05:00"), Stream: tide.Setting(1, 190)},
	}, 0)
	if err != nil {
		t.Fatal(err)
	}
	s := c.Velocity(utc("2026-01-01 00:30")).Stream()
	near(t, "rate across north", s.Rate, math.Cos(10*math.Pi/180), 1e-12)
	near(t, "no east", c.Velocity(utc("2026-01-01 00:30")).East, 0, 1e-15)
	near(t, "slack between opposites", c.Velocity(utc("2026-01-01 01:30")).Stream().Rate, 0, 1e-15)
	for _, at := range []string{"2025-12-31 23:59", "2026-01-01 03:00", "2026-01-01 05:01"} {
		if v := c.Velocity(utc(at)); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
			t.Errorf("%s: %v, want NaN", at, v)
		}
	}
}

func TestHourTableOnTides(t *testing.T) {
	var rows []tide.HourStream
	for h := -6; h <= 6; h++ {
		rows = append(rows, tide.HourStream{Hour: float64(h), Set: 90, Springs: math.Abs(float64(h)) / 2, Neaps: math.Abs(float64(h)) / 4})
	}
	ht, err := tide.NewHourTable(rows, 6, 3)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "springs", ht.At(2, 6).East, 1, 1e-12)
	near(t, "neaps", ht.At(2, 3).East, 0.5, 1e-12)
	near(t, "half way", ht.At(2.5, 4.5).East, (0.75+0.9375)/2+0.09375, 0.1)
	tb := day(t, tide.Options{})
	c, err := ht.On(tb)
	if err != nil {
		t.Fatal(err)
	}
	// Two hours after high water 05:03, with the range of the fall after it.
	near(t, "two hours after", c.Velocity(utc("2026-08-15 07:03")).East, ht.At(2, 6.26+0.409).East, 1e-12)
	// Two hours before high water 17:30, with the mean of rise and fall.
	near(t, "two hours before", c.Velocity(utc("2026-08-15 15:30")).East, ht.At(-2, (6.063+0.409+6.063+0.204)/2).East, 1e-12)
	near(t, "hour", tb.HourOn(utc("2026-08-15 15:30")), -2, 1e-12)
	from, to := c.Span()
	for at := from; at.Before(to); at = at.Add(10 * time.Minute) {
		if v := c.Velocity(at); math.IsNaN(v.East) || v.East < -1e-12 {
			t.Errorf("%v: %v", at, v)
		}
	}
}
