package tide_test

import (
	"bytes"
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"followingsea.example/tide"
)

func TestLimbs(t *testing.T) {
	l := tide.Limb{From: tide.Turn{Time: utc("2026-06-01 06:00"), Height: 5, High: true}, To: tide.Turn{Time: utc("2026-06-01 12:00"), Height: 1}}
	near(t, "duration", l.Duration(), 6*3600, 0)
	near(t, "range", l.Range(), 4, 0)
	near(t, "tide-hour", l.TideHour(), 3600, 0)
	near(t, "half tide", l.Height(utc("2026-06-01 09:00"), tide.ByCosine), 3, 1e-12)
	near(t, "fastest fall, ranges an hour", l.Rate(utc("2026-06-01 09:00"), tide.ByCosine)*3600/4, -math.Pi/2/6, 1e-12)
	at, err := l.When(3, tide.ByTwelfths)
	if err != nil || !at.Equal(utc("2026-06-01 09:00")) {
		t.Errorf("half tide at %v, %v", at, err)
	}
	if _, err := l.When(6, tide.ByCosine); !errors.Is(err, tide.ErrNever) {
		t.Error(err)
	}
	if _, err := l.When(math.NaN(), tide.ByCosine); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
	for _, bad := range []tide.Limb{{From: l.To, To: l.From}, {From: l.From, To: l.From}} {
		if !math.IsNaN(bad.Duration()) || !math.IsNaN(bad.TideHour()) || !math.IsNaN(bad.Height(l.To.Time, tide.ByCosine)) || !math.IsNaN(bad.Rate(l.To.Time, tide.ByCosine)) {
			t.Errorf("%v", bad)
		}
	}
	l.To.Height = math.Inf(1)
	if h := l.Height(utc("2026-06-01 09:00"), tide.ByCosine); !math.IsNaN(h) {
		t.Errorf("height between 5 and +Inf: %v", h)
	}
	// Symmetry: a rise is the fall upside down.
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64Range(-5, 15).Draw(t, "a"), rapid.Float64Range(-5, 15).Draw(t, "b")
		by := tide.Rule(rapid.IntRange(0, 2).Draw(t, "rule"))
		d := time.Duration(rapid.IntRange(60, 30000).Draw(t, "seconds")) * time.Second
		up := tide.Limb{From: tide.Turn{Time: utc("2026-06-01 06:00"), Height: a}, To: tide.Turn{Time: utc("2026-06-01 06:00").Add(d), Height: b, High: true}}
		down := tide.Limb{From: tide.Turn{Time: up.From.Time, Height: b, High: true}, To: tide.Turn{Time: up.To.Time, Height: a}}
		at := up.From.Time.Add(d * time.Duration(rapid.IntRange(0, 97).Draw(t, "share")) / 97)
		near(t, "mirror", up.Height(at, by)+down.Height(at, by), a+b, 1e-12)
		near(t, "rates", up.Rate(at, by), -down.Rate(at, by), 1e-12)
		if apart := math.Abs(a-b) >= 1e-3; apart {
			h := up.Height(at, by)
			e := up.Elapsed(h, by)
			near(t, "back to the height", up.Height(up.From.Time.Add(time.Duration(e*1e9)), by), h, 1e-6)
		}
	})
}

func TestTableIsItsLimbs(t *testing.T) {
	for by := tide.ByCosine; by <= tide.ByTenths; by++ {
		tb := day(t, tide.Options{Rule: by})
		first, last := tb.Span()
		for at := first; at.Before(last); at = at.Add(7 * time.Minute) {
			l, err := tb.Limb(at)
			if err != nil {
				t.Fatal(err)
			}
			e := tb.Estimate(at)
			near(t, "height", tb.Height(at), l.Height(at, by), 1e-12)
			near(t, "rate", tb.Rate(at), l.Rate(at, by), 1e-15)
			near(t, "estimate", e.Height, tb.Height(at), 0)
			if e.Remark != tide.Ordinary || !(e.Spread > 0 && e.Spread < l.Range()) {
				t.Errorf("%v: %+v", at, e)
			}
		}
		if _, err := tb.Limb(last.Add(1)); !errors.Is(err, tide.ErrOutside) {
			t.Error(err)
		}
	}
}

// TestWindowsOfADayByHand works one day out: low water 0.4 m at 06:00, high
// 4.4 m at 12:00, low 0.4 m at 18:00. A slip that dries 1.4 m and wants 1.0 m
// of water needs a height of 2.4 m, half tide: 09:00 to 15:00. With half a
// metre more it needs F = 2.5/4: acos(-0.25)/π of six hours is 3 h 28.96 min.
func TestWindowsOfADayByHand(t *testing.T) {
	tb, err := tide.NewTable([]tide.Turn{
		{Time: utc("2026-06-01 06:00"), Height: 0.4},
		{Time: utc("2026-06-01 12:00"), Height: 4.4, High: true},
		{Time: utc("2026-06-01 18:00"), Height: 0.4},
	}, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	slip := tide.Bar{Charted: tide.Drying(1.4), Need: 1}
	near(t, "level", slip.Level(), 2.4, 1e-15)
	near(t, "depth there", tide.Depth(tb.Height(utc("2026-06-01 09:00")), slip.Charted), 1, 1e-12)
	w, err := tb.Windows(slip, utc("2026-06-01 06:00"), utc("2026-06-01 18:00"))
	if err != nil || len(w) != 1 {
		t.Fatal(w, err)
	}
	near(t, "opens", w[0].From.Sub(utc("2026-06-01 09:00")).Seconds(), 0, 1e-6)
	near(t, "closes", w[0].To.Sub(utc("2026-06-01 15:00")).Seconds(), 0, 1e-6)
	if w[0].CutFrom || w[0].CutTo {
		t.Error("edges are crossings")
	}
	slip.Need = 1.5
	w, err = tb.Windows(slip, utc("2026-06-01 06:00"), utc("2026-06-01 13:00"))
	if err != nil || len(w) != 1 {
		t.Fatal(w, err)
	}
	near(t, "opens, minutes after 09:00", w[0].From.Sub(utc("2026-06-01 09:00")).Minutes(), 28.955, 0.005)
	if w[0].CutFrom || !w[0].CutTo || !w[0].To.Equal(utc("2026-06-01 13:00")) {
		t.Errorf("%+v", w[0])
	}
	dry, err := tb.Below(2.4, utc("2026-06-01 06:00"), utc("2026-06-01 18:00"))
	if err != nil || len(dry) != 2 || !dry[0].CutFrom || dry[0].CutTo || !dry[1].CutTo {
		t.Errorf("%+v %v", dry, err)
	}
	if math.IsNaN(tide.Depth(math.NaN(), 1)) != true || !math.IsNaN((tide.Bar{Charted: math.NaN()}).Level()) {
		t.Error("NaN depth")
	}
}

func TestAccessors(t *testing.T) {
	tb := day(t, tide.Options{Datum: tide.LAT})
	if tb.Len() != 5 || tb.Turn(1).High || tb.Datum() != tide.LAT {
		t.Error(tb.Len(), tb.Turn(1), tb.Datum())
	}
	turns := tb.Turns()
	turns[0].Height = 99
	near(t, "turns are a copy", tb.Turn(0).Height, 6.26, 0)
	r := tb.Ranges(utc("2026-08-15 05:03"), utc("2026-08-15 17:30"))
	if len(r) != 2 {
		t.Fatal(r)
	}
	near(t, "range", r[0], 6.669, 1e-12)
	for _, s := range []string{tb.Turn(0).String(), tide.ByCosine.String(), tide.Rule(9).String(), tide.Gap.String(), tide.Remark(99).String(), tide.Setting(1.5, 45).String(), (tide.Stream{}).String(), tide.Event(99).String(), tide.Phase(9).String(), tide.UnknownDatum.String(), tide.Kind(0).String(), tide.Season(0).String()} {
		if s == "" {
			t.Error("an empty name")
		}
	}
	if got := tb.Turn(0).String(); got != "HW 2026-08-15T05:03Z 6.26 m" {
		t.Error(got)
	}
	if got := tide.Setting(1.5, 45).String(); got != "1.50 m/s setting 045°" {
		t.Error(got)
	}
}

func TestDatumsDoNotMix(t *testing.T) {
	tb := day(t, tide.Options{Datum: tide.MLLW})
	if err := tb.Datum().Match(tide.LAT); !errors.Is(err, tide.ErrDatum) {
		t.Error(err)
	}
	if err := tide.UnknownDatum.Match(tide.UnknownDatum); !errors.Is(err, tide.ErrDatum) {
		t.Error("two unknown datums match")
	}
	if err := tide.LAT.Match(tide.LAT); err != nil {
		t.Error(err)
	}
	up, err := tb.Shift(tide.LAT, 0.3)
	if err != nil || up.Datum() != tide.LAT {
		t.Fatal(err)
	}
	at := utc("2026-08-15 08:00")
	near(t, "shifted", up.Height(at), tb.Height(at)+0.3, 1e-12)
	if _, err := tb.Shift(tide.LAT, math.NaN()); !errors.Is(err, tide.ErrTurns) {
		t.Error(err)
	}
}

func TestFormNumber(t *testing.T) {
	near(t, "Eastport", tide.FormNumber(0.155, 0.118, 2.648, 0.415), 0.09, 0.005)
	near(t, "Pensacola", tide.FormNumber(0.125, 0.122, 0.017, 0.005), 11.23, 0.005)
	for _, v := range [][4]float64{{math.NaN(), 1, 1, 1}, {1, 1, 0, 0}, {-1, 1, 1, 1}, {1, math.Inf(1), 1, 1}, {1, 1, math.Inf(1), 1}} {
		if f := tide.FormNumber(v[0], v[1], v[2], v[3]); !math.IsNaN(f) {
			t.Errorf("%v: %v", v, f)
		}
	}
	for f, k := range map[float64]tide.Kind{0: tide.Semidiurnal, 0.25: tide.MixedSemidiurnal, 1.5: tide.MixedDiurnal, 3: tide.Diurnal, -1: tide.UnknownKind} {
		if got := tide.KindOf(f); got != k {
			t.Errorf("%v: %v", f, got)
		}
	}
	if tide.KindOf(math.NaN()) != tide.UnknownKind {
		t.Error("NaN has a kind")
	}
}

func TestSeasons(t *testing.T) {
	s, n := tide.Mark{At: 6, Value: 2.1}, tide.Mark{At: 3.2, Value: 1}
	near(t, "springs", tide.RateAtRange(6, s, n), 2.1, 1e-15)
	near(t, "neaps", tide.RateAtRange(3.2, s, n), 1, 1e-15)
	near(t, "beyond springs", tide.RateAtRange(7, s, n), 2.1+1.1/2.8, 1e-12)
	near(t, "never below zero", tide.RateAtRange(0, s, n), 0, 0)
	near(t, "factor", tide.RateByFactor(3, s), 1.05, 1e-12)
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(0, 12).Draw(t, "range")
		x := tide.Springness(r, 6, 3.2)
		near(t, "straight", tide.RateAtRange(r, s, n), math.Max(0, 1+1.1*x), 1e-12)
		want := tide.Between
		if x < 1.0/3 {
			want = tide.Neaps
		} else if x > 2.0/3 {
			want = tide.Springs
		}
		if got := tide.SeasonOf(x); got != want {
			t.Errorf("%v: %v", x, got)
		}
	})
	for _, v := range [][3]float64{{-1, 6, 3}, {4, 3, 6}, {4, 3, 3}, {math.NaN(), 6, 3}, {4, math.NaN(), 3}, {4, 6, math.NaN()}, {math.Inf(1), 6, 3}} {
		if x := tide.Springness(v[0], v[1], v[2]); !math.IsNaN(x) {
			t.Errorf("%v: %v", v, x)
		}
	}
	if tide.SeasonOf(math.NaN()) != tide.UnknownSeason || !math.IsNaN(tide.RateByFactor(-1, s)) || !math.IsNaN(tide.RateAtRange(4, tide.Mark{At: 6, Value: -1}, n)) {
		t.Error("bad input")
	}
}

func TestThumbRulesMeetTheirErrors(t *testing.T) {
	near(t, "second third", tide.FiftyNinety(2./3)/tide.Sine(2./3), 1.039, 0.0005)
	worst, drift := 0.0, 0.0
	for i := 0; i <= 3000; i++ {
		x := float64(i) / 3000
		worst = math.Max(worst, math.Abs(tide.FiftyNinety(x)-tide.Sine(x)))
	}
	near(t, "largest error of 50/90", worst, 0.9-math.Sqrt(3)/2, 1e-6)
	near(t, "drift of thirds against the sine", tide.ThirdsDrift(1)/tide.SineDrift(1), 1.047, 0.0005)
	for i := 0; i < 6; i++ {
		a, b := float64(i)/6, float64(i+1)/6
		near(t, "mean rate of a sixth", (tide.ThirdsDrift(b)-tide.ThirdsDrift(a))*6, tide.Thirds((a+b)/2), 1e-12)
		mean := (tide.SineDrift(b) - tide.SineDrift(a)) * 6
		if i < 3 {
			near(t, "mean of the sine", mean, []float64{0.256, 0.699, 0.955}[i], 0.0005)
		}
	}
	// The integral of the sine over a stream, slack to slack.
	n := 20000
	for i := 0; i < n; i++ {
		x := (float64(i) + 0.5) / float64(n)
		if x <= 0.5 {
			drift += tide.Sine(2*x) / float64(n)
		} else {
			drift += tide.Sine(2-2*x) / float64(n)
		}
	}
	near(t, "integral", drift, tide.SineDrift(1), 1e-7)
	rapid.Check(t, func(t *rapid.T) {
		limit := rapid.Float64Range(0, 1).Draw(t, "limit")
		w := tide.WeakStream(limit, 1, 2)
		near(t, "rate at the end of the weak stream", tide.Sine(w/2), limit, 1e-9)
	})
	for _, x := range []float64{math.NaN(), -0.1, 1.1, math.Inf(1)} {
		for i, f := range []func(float64) float64{tide.Sine, tide.FiftyNinety, tide.Thirds, tide.ThirdsDrift, tide.SineDrift} {
			if y := f(x); !math.IsNaN(y) {
				t.Errorf("rule %d at %v: %v", i, x, y)
			}
		}
	}
}

// TestEllipse compares the axes with a turn of the ellipse step by step.
func TestEllipse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := tide.Ellipse{
			East: rapid.Float64Range(0.05, 2).Draw(t, "U"), EastLag: rapid.Float64Range(0, 360).Draw(t, "g1"),
			North: rapid.Float64Range(0.05, 2).Draw(t, "V"), NorthLag: rapid.Float64Range(0, 360).Draw(t, "g2"),
		}
		major, minor, direction, clockwise := e.Axes()
		lo, hi, area := math.Inf(1), 0.0, 0.0
		last := e.Velocity(0)
		for i := 1; i <= 720; i++ {
			v := e.Velocity(float64(i) / 2)
			r := v.Stream().Rate
			lo, hi = math.Min(lo, r), math.Max(hi, r)
			area += last.East*v.North - last.North*v.East
			last = v
		}
		near(t, "major", hi, major, 2e-5*hi)
		near(t, "minor", lo, minor, 5e-3*hi)
		if minor > 1e-6 && clockwise != (area < 0) {
			t.Errorf("clockwise %v, area %v", clockwise, area)
		}
		if major-minor > 0.01 {
			best := 0.0
			for i := 0; i < 720; i++ {
				best = math.Max(best, math.Abs(e.Velocity(float64(i)/2).Along(direction)))
			}
			near(t, "greatest along its direction", best, major, 2e-5*hi)
		}
	})
	if v := (tide.Ellipse{East: math.NaN(), North: 1}).Velocity(0); !math.IsNaN(v.North) {
		t.Error(v)
	}
	if a, _, _, _ := (tide.Ellipse{East: math.Inf(1)}).Axes(); !math.IsNaN(a) {
		t.Error(a)
	}
}

func TestEventStreams(t *testing.T) {
	ev := []tide.StreamEvent{
		{Time: utc("2026-06-01 00:00"), Kind: tide.SlackBeforeFlood},
		{Time: utc("2026-06-01 03:00"), Rate: 2, Kind: tide.MaxFlood},
		{Time: utc("2026-06-01 07:00"), Kind: tide.SlackBeforeEbb},
		{Time: utc("2026-06-01 09:00"), Rate: -1, Kind: tide.MaxEbb},
		{Time: utc("2026-06-01 12:00"), Rate: -0.4, Kind: tide.MinEbb},
		{Time: utc("2026-06-01 15:00"), Rate: -1.5, Kind: tide.MaxEbb},
		{Time: utc("2026-06-01 18:00"), Kind: tide.SlackBeforeFlood},
	}
	s, err := tide.NewEventStreams(ev, 30, 200)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "sine, first quarter", s.Rate(utc("2026-06-01 01:00")), 2*math.Sin(math.Pi/6), 1e-12)
	near(t, "sine, longer quarter", s.Rate(utc("2026-06-01 05:00")), 2*math.Cos(math.Pi/4), 1e-12)
	near(t, "between two ebbs", s.Rate(utc("2026-06-01 10:30")), -0.7, 1e-12)
	for _, e := range ev {
		near(t, e.Kind.String(), s.Rate(e.Time), e.Rate, 0)
	}
	near(t, "flood sets", s.Velocity(utc("2026-06-01 02:00")).Stream().Set, 30, 1e-9)
	near(t, "ebb sets", s.Velocity(utc("2026-06-01 14:00")).Stream().Set, 200, 1e-9)
	if v := s.Velocity(utc("2026-06-01 18:01")); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
		t.Error(v)
	}
	if !tide.SlackBeforeEbb.Slack() || tide.MinEbb.Slack() {
		t.Error("slack")
	}
	for _, c := range []struct {
		rate     float64
		greatest bool
		want     tide.Event
	}{{1, true, tide.MaxFlood}, {1, false, tide.MinFlood}, {-1, false, tide.MaxEbb}, {-1, true, tide.MinEbb}} {
		if got := tide.Extreme(c.rate, c.greatest); got != c.want {
			t.Errorf("%+v: %v", c, got)
		}
	}
}

func TestStreamTablesRefuse(t *testing.T) {
	at := utc("2026-06-01 00:00")
	for name, rows := range map[string][]tide.StreamSample{
		"none": nil, "NaN": {{Time: at, Stream: tide.Stream{Rate: math.NaN()}}}, "negative": {{Time: at, Stream: tide.Stream{Rate: -1}}},
		"too fast": {{Time: at, Stream: tide.Setting(40, 0)}}, "order": {{Time: at}, {Time: at}}, "no set": {{Time: at, Stream: tide.Stream{Rate: 1, Set: math.NaN()}}},
	} {
		if _, err := tide.NewClockStreams(rows, 0); !errors.Is(err, tide.ErrValue) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := tide.NewClockStreams([]tide.StreamSample{{Time: at}}, -1); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
	good := []tide.HourStream{{Hour: -1, Set: 10, Springs: 1, Neaps: 0.5}, {Hour: 0, Set: 10, Springs: 1, Neaps: 0.5}}
	for name, f := range map[string]func(r []tide.HourStream) []tide.HourStream{
		"one row": func(r []tide.HourStream) []tide.HourStream { return r[:1] },
		"order":   func(r []tide.HourStream) []tide.HourStream { r[1].Hour = -2; return r },
		"hole":    func(r []tide.HourStream) []tide.HourStream { r[1].Hour = 5; return r },
		"hour":    func(r []tide.HourStream) []tide.HourStream { r[1].Hour = math.NaN(); return r },
		"rate":    func(r []tide.HourStream) []tide.HourStream { r[1].Neaps = -1; return r },
		"set":     func(r []tide.HourStream) []tide.HourStream { r[1].Set = 400; return r },
	} {
		if _, err := tide.NewHourTable(f(append([]tide.HourStream(nil), good...)), 5, 2); !errors.Is(err, tide.ErrValue) {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, r := range [][2]float64{{2, 5}, {math.NaN(), 1}, {5, math.NaN()}, {5, -1}, {99, 1}} {
		if _, err := tide.NewHourTable(good, r[0], r[1]); !errors.Is(err, tide.ErrValue) {
			t.Errorf("ranges %v: %v", r, err)
		}
	}
	h, err := tide.NewHourTable(good, 5, 2)
	if err != nil {
		t.Fatal(err)
	}
	for _, v := range []tide.Velocity{h.At(1, 3), h.At(math.NaN(), 3), h.At(0, -1), h.At(0, math.NaN())} {
		if !math.IsNaN(v.East) || !math.IsNaN(v.North) {
			t.Error(v)
		}
	}
	two := []tide.StreamEvent{{Time: at, Kind: tide.SlackBeforeFlood}, {Time: at.Add(time.Hour), Rate: 1, Kind: tide.MaxFlood}}
	for name, f := range map[string]func(e []tide.StreamEvent) []tide.StreamEvent{
		"one":        func(e []tide.StreamEvent) []tide.StreamEvent { return e[:1] },
		"order":      func(e []tide.StreamEvent) []tide.StreamEvent { e[1].Time = at; return e },
		"slack rate": func(e []tide.StreamEvent) []tide.StreamEvent { e[0].Rate = 1; return e },
		"sign":       func(e []tide.StreamEvent) []tide.StreamEvent { e[1].Rate = -1; return e },
		"wrong ebb":  func(e []tide.StreamEvent) []tide.StreamEvent { e[1].Kind, e[1].Rate = tide.MaxEbb, -1; return e },
		"two slacks": func(e []tide.StreamEvent) []tide.StreamEvent { e[1].Kind, e[1].Rate = tide.SlackBeforeEbb, 0; return e },
		"NaN":        func(e []tide.StreamEvent) []tide.StreamEvent { e[1].Rate = math.NaN(); return e },
		"kind":       func(e []tide.StreamEvent) []tide.StreamEvent { e[1].Kind = 99; return e },
	} {
		if _, err := tide.NewEventStreams(f(append([]tide.StreamEvent(nil), two...)), 0, 180); !errors.Is(err, tide.ErrValue) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := tide.NewEventStreams(two, math.NaN(), 180); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
}

func TestTimeDifferenceGoesRound(t *testing.T) {
	m := []tide.ClockMark{{Clock: 0, Difference: 35}, {Clock: 6 * 3600, Difference: 23}, {Clock: 12 * 3600, Difference: 35}, {Clock: 18 * 3600, Difference: 23}}
	near(t, "after the last mark", tide.TimeDifference(21*3600, m...), 29, 1e-12)
	near(t, "midnight", tide.TimeDifference(86400, m...), 35, 1e-12)
	near(t, "one mark", tide.TimeDifference(5, m[:1]...), 35, 0)
	for i := range m {
		near(t, "at a mark", tide.TimeDifference(m[i].Clock, m...), m[i].Difference, 0)
	}
	// Continuous all round the day.
	last := tide.TimeDifference(0, m...)
	for s := 60.0; s <= 86400; s += 60 {
		d := tide.TimeDifference(s, m...)
		near(t, "step", d, last, 0.04)
		last = d
	}
	for _, bad := range [][]tide.ClockMark{nil, {{Clock: 5}, {Clock: 5}}, {{Clock: -1}}, {{Clock: math.NaN()}}, {{Difference: math.NaN()}}, {{Difference: math.Inf(1)}}} {
		if d := tide.TimeDifference(3, bad...); !math.IsNaN(d) {
			t.Errorf("%v: %v", bad, d)
		}
	}
	if d := tide.TimeDifference(math.NaN(), m...); !math.IsNaN(d) {
		t.Error(d)
	}
}

func TestHeightDifference(t *testing.T) {
	a, b := tide.Mark{At: 4.2, Value: 1.1}, tide.Mark{At: 3.4, Value: 0.8}
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(0, 8).Draw(t, "height")
		near(t, "order of marks", tide.HeightDifference(h, a, b), tide.HeightDifference(h, b, a), 1e-12)
		near(t, "straight", tide.HeightDifference(h, a, b), 0.8+(h-3.4)*0.375, 1e-12)
	})
	near(t, "same marks", tide.HeightDifference(9, a, a), 1.1, 0)
	for _, x := range []float64{tide.HeightDifference(math.NaN(), a, b), tide.HeightDifference(math.NaN(), a, a), tide.HeightDifference(1, a, tide.Mark{At: 4.2, Value: 3}), tide.HeightDifference(1, a, tide.Mark{At: math.Inf(1)})} {
		if !math.IsNaN(x) {
			t.Error(x)
		}
	}
}

// TestDifferencesApply works one day at Littleport out by hand. High water at
// the standard port 03:00 and 3.8 m: +29 min, +0.95 m; low water 09:15 and
// 0.75 m: time difference half way from 05:00 (+47) to 11:00 (+4) and a bit.
func TestDifferencesApply(t *testing.T) {
	zone := time.FixedZone("port", 3600)
	d := tide.Differences{
		HighTimes:   []tide.ClockMark{{Clock: 0, Difference: 35 * 60}, {Clock: 6 * 3600, Difference: 23 * 60}, {Clock: 12 * 3600, Difference: 35 * 60}, {Clock: 18 * 3600, Difference: 23 * 60}},
		LowTimes:    []tide.ClockMark{{Clock: 5 * 3600, Difference: 47 * 60}, {Clock: 11 * 3600, Difference: 4 * 60}, {Clock: 17 * 3600, Difference: 47 * 60}, {Clock: 23 * 3600, Difference: 4 * 60}},
		HighHeights: [2]tide.Mark{{At: 4.2, Value: 1.1}, {At: 3.4, Value: 0.8}},
		LowHeights:  [2]tide.Mark{{At: 1.1, Value: 0.2}, {At: 0.4, Value: 0.1}},
		Zone:        zone,
	}
	standard := []tide.Turn{
		{Time: time.Date(2026, 6, 1, 3, 0, 0, 0, zone), Height: 3.8, High: true},
		{Time: time.Date(2026, 6, 1, 8, 0, 0, 0, zone).UTC(), Height: 0.75},
	}
	got, err := d.Apply(standard)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "high water, minutes after", got[0].Time.Sub(standard[0].Time).Minutes(), 29, 1e-9)
	near(t, "high water", got[0].Height, 4.75, 1e-12)
	near(t, "low water, minutes after", got[1].Time.Sub(standard[1].Time).Minutes(), 25.5, 1e-9)
	near(t, "low water", got[1].Height, 0.9, 1e-12)
	// Seasonal changes come off before and go on after.
	d.SeasonalStandard, d.SeasonalSecondary = 0.2, 0.1
	s, err := d.Apply(standard)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "with season", s[0].Height, 3.6+(0.8+0.2*0.375)+0.1, 1e-12)
	if _, err := (tide.Differences{}).Apply(standard); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
	one := tide.Differences{HighTimes: []tide.ClockMark{{}}, LowTimes: []tide.ClockMark{{}}}
	if same, err := one.Apply(standard); err != nil || same[0].Height != 3.8 {
		t.Error("no difference changes nothing:", same, err)
	}
	late := one
	late.HighTimes = []tide.ClockMark{{Difference: 8 * 3600}}
	if _, err := late.Apply(standard); !errors.Is(err, tide.ErrTurns) {
		t.Error(err)
	}
}

func TestCorrections(t *testing.T) {
	near(t, "none", (tide.Correction{}).Of(1.234), 1.234, 0)
	near(t, "ratio", tide.ByRatio(1.11).Of(-0.049), -0.05439, 1e-12)
	near(t, "addition", tide.ByAddition(0.03).Of(0.8), 0.83, 1e-12)
	near(t, "both", tide.ByRatioAndConstant(0.5, 0.2).Of(3), 1.7, 1e-12)
	for _, x := range []float64{tide.ByRatio(math.NaN()).Of(1), tide.ByRatio(1).Of(math.NaN()), tide.ByAddition(math.Inf(1)).Of(1)} {
		if !math.IsNaN(x) {
			t.Error(x)
		}
	}
}

func TestOffsetsApply(t *testing.T) {
	ref := day(t, tide.Options{}).Turns()
	o := tide.Offsets{HighTime: 10 * time.Minute, LowTime: -20 * time.Minute, High: tide.ByRatio(0.9), Low: tide.ByAddition(0.1)}
	got, err := o.Apply(ref)
	if err != nil {
		t.Fatal(err)
	}
	for i, u := range got {
		if ref[i].High {
			near(t, "high", u.Height, 0.9*ref[i].Height, 1e-12)
			near(t, "high time", u.Time.Sub(ref[i].Time).Minutes(), 10, 0)
		} else {
			near(t, "low", u.Height, ref[i].Height+0.1, 1e-12)
			near(t, "low time", u.Time.Sub(ref[i].Time).Minutes(), -20, 0)
		}
	}
	if _, err := tide.NewTable(got, tide.Options{}); err != nil {
		t.Error(err)
	}
	if _, err := (tide.Offsets{High: tide.ByRatio(math.NaN())}).Apply(ref); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
	if _, err := (tide.Offsets{HighTime: 9 * time.Hour}).Apply(ref); !errors.Is(err, tide.ErrTurns) {
		t.Error(err)
	}
}

func TestStreamOffsetsApply(t *testing.T) {
	ref := []tide.StreamEvent{
		{Time: utc("2026-06-01 10:12"), Kind: tide.SlackBeforeFlood},
		{Time: utc("2026-06-01 12:46"), Rate: 0.6 * tide.Knot, Kind: tide.MaxFlood},
		{Time: utc("2026-06-01 16:00"), Kind: tide.SlackBeforeEbb},
		{Time: utc("2026-06-01 19:00"), Rate: -0.8 * tide.Knot, Kind: tide.MaxEbb},
	}
	o := tide.StreamOffsets{SlackBeforeFlood: -41 * time.Minute, Flood: -47 * time.Minute, SlackBeforeEbb: 5 * time.Minute, Ebb: 6 * time.Minute, FloodRatio: 1.1, EbbRatio: 0.5}
	got, err := o.Apply(ref)
	if err != nil {
		t.Fatal(err)
	}
	if !got[0].Time.Equal(utc("2026-06-01 09:31")) || !got[1].Time.Equal(utc("2026-06-01 11:59")) || !got[2].Time.Equal(utc("2026-06-01 16:05")) || !got[3].Time.Equal(utc("2026-06-01 19:06")) {
		t.Error(got)
	}
	near(t, "flood", got[1].Rate/tide.Knot, 0.66, 1e-12)
	near(t, "ebb", got[3].Rate/tide.Knot, -0.4, 1e-12)
	for _, bad := range []tide.StreamOffsets{{FloodRatio: math.NaN()}, {EbbRatio: -1}, {FloodRatio: math.Inf(1)}, {Flood: -9 * time.Hour, FloodRatio: 1, EbbRatio: 1}} {
		if _, err := bad.Apply(ref); !errors.Is(err, tide.ErrValue) {
			t.Errorf("%+v: %v", bad, err)
		}
	}
}

func TestMoon(t *testing.T) {
	// The date of the book's first example, dynamical time.
	jd := tide.TruePhase(-283)
	near(t, "seconds of the day", math.Mod(jd-0.5, 1)*86400, 3*3600+37*60+42, 1)
	events, err := tide.MoonPhases(utc("2026-01-01 00:00"), utc("2031-01-01 00:00"))
	if err != nil {
		t.Fatal(err)
	}
	if n := len(events); n < 245 || n > 250 {
		t.Errorf("%d phases in five years", n)
	}
	for i, e := range events {
		if i == 0 {
			continue
		}
		if e.Phase != (events[i-1].Phase+1)%4 {
			t.Errorf("%v after %v", e.Phase, events[i-1].Phase)
		}
		near(t, "days between phases", e.Time.Sub(events[i-1].Time).Hours()/24, 7.38, 1.1)
	}
	// Any part of the span gives the same phases.
	part, err := tide.MoonPhases(events[7].Time.Add(-time.Second), events[9].Time.Add(time.Second))
	if err != nil || len(part) != 3 {
		t.Error(part, err)
	}
	rapid.Check(t, func(t *rapid.T) {
		k := float64(rapid.IntRange(-4000, 4000).Draw(t, "quarter")) / 4
		near(t, "true less mean phase, days", tide.TruePhase(k), tide.MeanPhase(k), 0.9)
	})
	for _, k := range []float64{math.NaN(), 0.1, 1e9, math.Inf(1)} {
		if !math.IsNaN(tide.TruePhase(k)) || !math.IsNaN(tide.MeanPhase(k)) {
			t.Error(k)
		}
	}
	if _, err := tide.MoonPhases(utc("2026-01-02 00:00"), utc("2026-01-01 00:00")); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
	if _, err := tide.MoonPhases(utc("1850-01-02 00:00"), utc("1851-01-01 00:00")); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
	near(t, "delta T 2000", tide.DeltaT(2000), 63.8, 0.1)
	if !math.IsNaN(tide.DeltaT(1800)) || !math.IsNaN(tide.DeltaT(math.NaN())) {
		t.Error("delta T")
	}
	near(t, "spring to spring, days", tide.SpringsToSprings/86400, 14.765294, 1e-6)
	near(t, "lunar day", tide.LunarDay, 24*3600+50*60+28, 1)
	near(t, "Boston's age in hours", tide.Age(109.2, 146.2)/3600, 36, 0.5)
	near(t, "across the circle", tide.Age(350, 10), tide.Age(0, 20), 1e-6)
	rapid.Check(t, func(t *rapid.T) {
		m2, s2 := rapid.Float64Range(0, 3).Draw(t, "M2"), rapid.Float64Range(0, 1).Draw(t, "S2")
		d := rapid.Float64Range(-100, 100).Draw(t, "days") * 86400
		r := tide.RangeByPhase(m2, s2, d)
		if !(r <= 2*(m2+s2)+1e-9 && r >= 2*math.Abs(m2-s2)-1e-9) {
			t.Errorf("range %v of %v and %v", r, m2, s2)
		}
		near(t, "a fortnight on", tide.RangeByPhase(m2, s2, d+tide.SpringsToSprings), r, 1e-6)
	})
	for _, x := range []float64{tide.RangeByPhase(-1, 0, 0), tide.RangeByPhase(1, math.NaN(), 0), tide.RangeByPhase(1, 1, math.Inf(1)), tide.Age(math.NaN(), 0)} {
		if !math.IsNaN(x) {
			t.Error(x)
		}
	}
}

func TestWeather(t *testing.T) {
	near(t, "centimetres a hectopascal", tide.InverseBarometer(101225, 101325)*100, 0.995, 0.0005)
	near(t, "high pressure lowers the sea", tide.InverseBarometer(102325, tide.StandardPressure), -0.0995, 1e-4)
	w := tide.Stretch{Wind: 15, Fetch: 20000, Depth: 5}
	a := tide.WindSetup(w)
	half := w
	half.Depth = 10
	near(t, "twice the depth, half the setup", tide.WindSetup(half).Height, a.Height/2, 1e-15)
	near(t, "equal to its parts", a.Height, w.Stress()*w.Fetch/(1025*9.80665*w.Depth), 1e-15)
	near(t, "spread", a.Spread, a.Height/2, 0)
	near(t, "drag", w.Stress(), 1.225*tide.DragCoefficient(15)*225, 1e-15)
	if a.Beyond || !tide.WindSetup(tide.Stretch{Wind: 50, Fetch: 300000, Depth: 20}).Beyond {
		t.Error("beyond")
	}
	for _, bad := range []tide.Stretch{{Wind: math.NaN(), Depth: 1}, {Wind: -1, Depth: 1}, {Fetch: math.NaN(), Depth: 1}, {Depth: 0}, {Depth: math.NaN()}, {Depth: 1, Air: -1}, {Depth: 1, Drag: math.NaN()}} {
		if s := tide.WindSetup(bad); !math.IsNaN(s.Height) || !math.IsNaN(s.Spread) || !s.Beyond {
			t.Errorf("%+v: %+v", bad, s)
		}
	}
	for _, x := range []float64{tide.InverseBarometer(0, 1), tide.InverseBarometer(math.NaN(), 1), tide.InverseBarometer(1, math.Inf(1)), (tide.Water{Density: -1}).InverseBarometer(1, 2), tide.DragCoefficient(-1)} {
		if !math.IsNaN(x) {
			t.Error(x)
		}
	}
}

func TestTableRoundTrip(t *testing.T) {
	for _, o := range []tide.Options{{}, {Datum: tide.LAT}, {Datum: "Port Datum, 1965"}} {
		want := day(t, o)
		var b bytes.Buffer
		if err := tide.WriteTable(&b, want); err != nil {
			t.Fatal(err)
		}
		got, err := tide.ReadTable(&b, tide.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(want.Turns(), got.Turns()); d != "" || got.Datum() != o.Datum {
			t.Error(d, got.Datum())
		}
	}
	feet, err := tide.ReadTable(strings.NewReader("\ufeff# from the harbour office\n# Datum: MLLW\ntime,height_ft,note\n2026-08-15T05:03:00+02:00,10,\n2026-08-15 11:28Z,-1,springs\n"), tide.Options{Datum: tide.MLLW})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "feet", feet.Turn(0).Height, 3.048, 1e-12)
	if !feet.Turn(0).High || feet.Turn(1).High || !feet.Turn(0).Time.Equal(utc("2026-08-15 03:03")) {
		t.Error(feet.Turns())
	}
	column, err := tide.ReadTable(strings.NewReader("time,height_cm,kind,datum\n2026-08-15T05:03Z,500,HW,LAT\n2026-08-15T11:28Z,40,LW,LAT\n"), tide.Options{})
	if err != nil || column.Datum() != tide.LAT {
		t.Error(err)
	}
	if err := tide.WriteTable(&bytes.Buffer{}, day(t, tide.Options{Datum: "two\nlines"})); !errors.Is(err, tide.ErrValue) {
		t.Error(err)
	}
}

func TestReadTableSaysWhatIsWrong(t *testing.T) {
	for text, want := range map[string]string{
		"":                                      "empty",
		"time,height\n":                         "height",
		"time,height_m\n2026-08-15T05:03,6\n":   "line 2: column time",
		"time,height_m\n2026-08-15T05:03Z,\n":   "line 2: column height_m",
		"time,height_m\n2026-08-15T05:03Z,99\n": "line 2: column height_m",
		"time,height_m,kind\n2026-08-15T05:03Z,6,up\n":                                            "line 2: column kind",
		"time,height_m\n2026-08-15T05:03Z,6\n2026-08-15T05:03Z,1\n":                               "line 3: column time",
		"time,height_m\n2026-08-15T05:03Z,6\n2026-08-15T11:03Z,6\n":                               "give a column kind",
		"time,height_m\n2026-08-15T05:03Z,6\n":                                                    "at least 2",
		"time,height_m,datum\n2026-08-15T05:03Z,6,LAT\n2026-08-15T11:03Z,1,MLLW\n":                "different datums",
		"# datum: LAT\ntime,height_m,datum\n2026-08-15T05:03Z,6,MLLW\n2026-08-15T11:03Z,1,MLLW\n": "different datums",
		"time,height_m,kind\n2026-08-15T05:03Z,6,high\n2026-08-15T08:03Z,1,high\n":                "no turn of the other kind",
	} {
		tb, err := tide.ReadTable(strings.NewReader(text), tide.Options{})
		if tb != nil || !errors.Is(err, tide.ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
	}
	if _, err := tide.ReadTable(strings.NewReader("# datum: LAT\ntime,height_m\n2026-08-15T05:03Z,6\n2026-08-15T11:03Z,1\n"), tide.Options{Datum: tide.MSL}); !errors.Is(err, tide.ErrDatum) {
		t.Error(err)
	}
}

func TestClockStreamsRoundTrip(t *testing.T) {
	want, err := tide.NewClockStreams([]tide.StreamSample{
		{Time: utc("2026-06-01 00:00"), Stream: tide.Setting(1.25, 30)}, {Time: utc("2026-06-01 01:00")}, {Time: utc("2026-06-01 02:00"), Stream: tide.Setting(0.3, 215.5)},
	}, 0)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := tide.WriteClockStreams(&b, want); err != nil {
		t.Fatal(err)
	}
	got, err := tide.ReadClockStreams(&b, 0)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want.Samples(), got.Samples()); d != "" {
		t.Error(d)
	}
	for text, want := range map[string]string{
		"time,rate_kn,set_deg\n2026-06-01T00:00Z,1,\n":                         "line 2: column set_deg",
		"time,rate_kn,set_deg\n2026-06-01T00:00Z,-1,20\n":                      "line 2: column rate_kn",
		"time,rate_kn,set_deg\n2026-06-01T00:00Z,1,400\n":                      "line 2: column set_deg",
		"time,rate_kn,set_from_deg\n":                                          "set_from_deg",
		"time,rate_kn,set_deg\n2026-06-01T00:00Z,1,4\n2026-06-01T00:00Z,1,4\n": "line 3: column time",
		"time,rate_kn,set_deg\n":                                               "0 rows",
	} {
		if c, err := tide.ReadClockStreams(strings.NewReader(text), 0); c != nil || !errors.Is(err, tide.ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
	}
}

func TestHourTableRoundTrip(t *testing.T) {
	rows := []tide.HourStream{{Hour: -6, Set: 245, Springs: 0.9, Neaps: 0.5}, {Hour: -5}, {Hour: -4, Set: 65.5, Springs: 1.1, Neaps: 0.6}}
	want, err := tide.NewHourTable(rows, 5.5, 2.4)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := tide.WriteHourTable(&b, want); err != nil {
		t.Fatal(err)
	}
	got, err := tide.ReadHourTable(&b, 0, 0)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(rows, got.Rows()); d != "" {
		t.Error(d)
	}
	if s, n := got.Ranges(); s != 5.5 || n != 2.4 {
		t.Error(s, n)
	}
	for text, want := range map[string]string{
		"hour,set_deg,springs_kn,neaps_kn\n-6,,1,1\n":          "line 2: column set_deg",
		"hour,set_deg,springs_kn,neaps_kn\n-60,1,1,1\n":        "line 2: column hour",
		"hour,set_deg,springs_kn,neaps_kn\n-6,1,,1\n":          "line 2: column springs_kn",
		"hour,set_deg,springs_kn,neaps_kn\n-6,1,1,\n":          "line 2: column neaps_kn",
		"hour,set_deg,springs_kn,neaps_kn\n1,1,1,1\n1,1,1,1\n": "line 3: column hour",
		"hour,set_deg,springs_kn,neaps_kn\n1,1,1,1\n9,1,1,1\n": "at most 3 apart",
	} {
		if h, err := tide.ReadHourTable(strings.NewReader(text), 5, 2); h != nil || !errors.Is(err, tide.ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
	}
}

func TestReadStreams(t *testing.T) {
	const byHour = "# spring_range_ft: 20\n# neap_range_m: 2.4\nhour,set_deg,springs_kn,neaps_kn\n-6,245,1.8,0.9\n-3,250,1.1,0.5\n0,70,1,0.5\n3,65,2,1\n6,60,1,0.5\n"
	port := day(t, tide.Options{})
	c, err := tide.ReadStreams(strings.NewReader(byHour), port, 0)
	if err != nil {
		t.Fatal(err)
	}
	h, err := tide.ReadHourTable(strings.NewReader(byHour), 0, 0)
	if err != nil {
		t.Fatal(err)
	}
	if s, n := h.Ranges(); !(math.Abs(s-6.096) <= 1e-12) || n != 2.4 {
		t.Error(s, n)
	}
	near(t, "at high water", c.Velocity(utc("2026-08-15 17:30")).East, h.At(0, (6.063+0.409+6.063+0.204)/2).East, 1e-12)
	if _, err := tide.ReadStreams(strings.NewReader(byHour), nil, 0); !errors.Is(err, tide.ErrTurns) {
		t.Error(err)
	}
	if _, err := tide.ReadStreams(strings.NewReader("hour,set_deg,springs_kn,neaps_kn\n-6,245,1.8,0.9\n"), port, 0); !errors.Is(err, tide.ErrFile) || !strings.Contains(err.Error(), "spring_range_m") {
		t.Error(err)
	}
	k, err := tide.ReadStreams(strings.NewReader("\ufeff# slack at the point\ntime,rate_kn,set_deg\n2026-06-01T00:00Z,1,20\n2026-06-01T01:00Z,2,20\n"), nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "by clock", k.Velocity(utc("2026-06-01 00:30")).Stream().Rate/tide.Knot, 1.5, 1e-12)
	if _, err := tide.ReadStreams(strings.NewReader(""), nil, 0); !errors.Is(err, tide.ErrFile) {
		t.Error(err)
	}
}

func TestEventsRoundTrip(t *testing.T) {
	want := []tide.StreamEvent{
		{Time: utc("2026-06-01 03:05"), Kind: tide.SlackBeforeEbb},
		{Time: utc("2026-06-01 06:03"), Rate: -0.63, Kind: tide.MaxEbb},
		{Time: utc("2026-06-01 11:11"), Rate: -0.15, Kind: tide.MinEbb},
	}
	var b bytes.Buffer
	if err := tide.WriteEvents(&b, want); err != nil {
		t.Fatal(err)
	}
	got, err := tide.ReadEvents(&b)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
	s, err := tide.NewEventStreams(got, 31.2, 211.2)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want, s.Events()); d != "" {
		t.Error(d)
	}
	for text, want := range map[string]string{
		"time,kind,rate_kn\n2026-06-01T03:05Z,slack,0\n":                                          "line 2: column kind",
		"time,kind,rate_kn\n2026-06-01T03:05Z,maximum ebb,\n":                                     "line 2: column rate_kn",
		"time,kind,rate_kn\nx,maximum ebb,-1\n":                                                   "line 2: column time",
		"time,kind,rate_kn\n2026-06-01T03:05Z,maximum ebb,-1\n2026-06-01T03:05Z,maximum ebb,-1\n": "line 3: column time",
	} {
		if e, err := tide.ReadEvents(strings.NewReader(text)); e != nil || !errors.Is(err, tide.ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
	}
}

// rows is an endless file of one head and one row over and over.
type rows struct {
	head, row string
	n         int
	rest      string
}

func (r *rows) Read(p []byte) (int, error) {
	if r.rest == "" {
		r.rest = r.row
		if r.n == 0 {
			r.rest = r.head
		}
	}
	n := copy(p, r.rest)
	r.rest = r.rest[n:]
	r.n += n
	return n, nil
}

func TestReadersAreBounded(t *testing.T) {
	long := strings.Repeat("9", 1<<16)
	for name, read := range map[string]func(*rows) error{
		"table":  func(r *rows) error { _, err := tide.ReadTable(r, tide.Options{}); return err },
		"clock":  func(r *rows) error { _, err := tide.ReadClockStreams(r, 0); return err },
		"hours":  func(r *rows) error { _, err := tide.ReadHourTable(r, 5, 2); return err },
		"either": func(r *rows) error { _, err := tide.ReadStreams(r, nil, 0); return err },
		"events": func(r *rows) error { _, err := tide.ReadEvents(r); return err },
	} {
		for _, r := range []*rows{{head: long, row: long}, {head: "# datum: ", row: long}, {head: "\n", row: "\n\n\n\n\n\n\n\n"}, {head: "time,height_m,kind,rate_kn\n", row: "2026-01-01T00:00Z,1,high,1\n"}} {
			if err := read(r); err == nil {
				t.Errorf("%s: no error", name)
			}
			if r.n > 40<<20 {
				t.Errorf("%s: took %d bytes", name, r.n)
			}
		}
	}
}

func FuzzReadTable(f *testing.F) {
	f.Add("# datum: LAT\ntime,height_m,kind\n2026-08-15T05:03Z,6,high\n2026-08-15T11:03Z,1,low\n")
	f.Add("time,height_ft\n2026-08-15T05:03Z,6\n2026-08-15T11:03Z,1\n")
	f.Fuzz(func(t *testing.T, text string) {
		tb, err := tide.ReadTable(strings.NewReader(text), tide.Options{})
		if err != nil {
			return
		}
		var b bytes.Buffer
		if err := tide.WriteTable(&b, tb); err != nil {
			return // a datum that is more than a line
		}
		again, err := tide.ReadTable(&b, tide.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if !cmp.Equal(tb.Turns(), again.Turns()) || tb.Datum() != again.Datum() {
			t.Error(cmp.Diff(tb.Turns(), again.Turns()))
		}
	})
}

func FuzzReadClockStreams(f *testing.F) {
	f.Add("time,rate_kn,set_deg\n2026-06-01T00:00Z,1.2,20\n2026-06-01T01:00Z,0,\n")
	f.Fuzz(func(t *testing.T, text string) {
		c, err := tide.ReadClockStreams(strings.NewReader(text), 0)
		if err != nil {
			return
		}
		var b bytes.Buffer
		if err := tide.WriteClockStreams(&b, c); err != nil {
			t.Fatal(err)
		}
		again, err := tide.ReadClockStreams(&b, 0)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(c.Samples(), again.Samples()); d != "" {
			t.Error(d)
		}
	})
}

func FuzzReadStreams(f *testing.F) {
	f.Add("# spring_range_m: 5\n# neap_range_m: 2\nhour,set_deg,springs_kn,neaps_kn\n-1,20,2,1\n0,,0,0\n")
	f.Add("time,rate_kn,set_deg\n2026-06-01T00:00Z,1.2,20\n2026-06-01T01:00Z,0,\n")
	port := day(f, tide.Options{})
	f.Fuzz(func(t *testing.T, text string) {
		c, err := tide.ReadStreams(strings.NewReader(text), port, 0)
		if err != nil {
			return
		}
		for _, s := range c.Samples() {
			if v := c.Velocity(s.Time); math.IsNaN(v.East) || math.IsNaN(v.North) {
				t.Errorf("NaN at a row: %v", s)
			}
		}
	})
}

func FuzzReadHourTable(f *testing.F) {
	f.Add("hour,set_deg,springs_kn,neaps_kn\n-1,20,2,1\n0,,0,0\n")
	f.Fuzz(func(t *testing.T, text string) {
		h, err := tide.ReadHourTable(strings.NewReader(text), 5, 2)
		if err != nil {
			return
		}
		var b bytes.Buffer
		if err := tide.WriteHourTable(&b, h); err != nil {
			t.Fatal(err)
		}
		again, err := tide.ReadHourTable(&b, 5, 2)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(h.Rows(), again.Rows()); d != "" {
			t.Error(d)
		}
	})
}

func FuzzReadEvents(f *testing.F) {
	f.Add("time,kind,rate_kn\n2026-06-01T03:05Z,slack before ebb,\n2026-06-01T06:03Z,maximum ebb,-1.23\n")
	f.Fuzz(func(t *testing.T, text string) {
		e, err := tide.ReadEvents(strings.NewReader(text))
		if err != nil {
			return
		}
		var b bytes.Buffer
		if err := tide.WriteEvents(&b, e); err != nil {
			t.Fatal(err)
		}
		again, err := tide.ReadEvents(&b)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(e, again); d != "" {
			t.Error(d)
		}
	})
}
