package passage

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/route"
)

// TestDeckByHand: in a steady wind the only thing that a later passing changes
// is the duration, so the latest time to pass a gate is the start, the limit on
// the duration, less the rest of the way at the slow speed.
func TestDeckByHand(t *testing.T) {
	p := Paddler{Cruise: Known(1.8), Sprint: Known(3), Mass: Known(95), BoardLength: Known(4.2)}
	p.Limits[GreatestDuration] = Ask(3 * 3600)
	p.Limits[GreatestOffStern] = Ask(40)
	p.Limits[GreatestWind] = Ask(22 * route.Knot)
	p.Limits[LeastWind] = Ask(12 * route.Knot)
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), p)
	d, err := w.Deck(at(0), []float64{2500, 5000, 7500})
	if err != nil {
		t.Fatal(err)
	}
	m, err := w.Moment(5000, at(1))
	if err != nil {
		t.Fatal(err)
	}
	if len(d.Gates) != 3 {
		t.Fatalf("%d gates", len(d.Gates))
	}
	before, since := 0.0, 0.0
	for _, g := range d.Gates {
		rest := (10000 - g.Along) / m.Slow
		want := 3*3600 - rest
		got := g.Latest.Sub(at(0)).Seconds()
		if !(got <= want+30 && got >= want-90) || g.Decides.Rule != GreatestDuration || !g.Limited {
			t.Errorf("km %.1f: latest %.0f s after the start, by hand %.0f; %v %s", g.Along/1000, got, want, g.Decides, g.Why)
		}
		if !near(g.Expected.Sub(at(0)).Seconds(), g.Along/m.Speed, 0.01*3600) || !near(g.Slack, g.Latest.Sub(g.Expected).Seconds(), 1e-6) {
			t.Errorf("km %.1f: expected %v", g.Along/1000, g.Expected)
		}
		if !near(g.LeastMade, (g.Along-before)/(got-since), 1e-6) {
			t.Errorf("least speed %v", g.LeastMade)
		}
		before, since = g.Along, g.Expected.Sub(at(0)).Seconds()
		if !near(g.WindLeft, 230, 0.2) || !near(g.WindRight, 310, 0.2) {
			t.Errorf("wind from %v to %v", g.WindLeft, g.WindRight)
		}
		// 9 m/s is 17 knots, force 5; past 22 it is 6, below 12 it is 4.
		if g.Crests != "whitecaps everywhere, first spray" || g.TooMuch != "broad white crests, spray in the air" || g.TooLittle != "whitecaps in every direction" {
			t.Errorf("%q %q %q", g.Crests, g.TooMuch, g.TooLittle)
		}
		if !g.HasExit || g.Exit.State != route.Landable {
			t.Errorf("km %.1f: no exit: %+v", g.Along/1000, g.Exit)
		}
	}
	if d.Gates[0].Exit.Exit.Name != "west" || d.Gates[2].Exit.Exit.Name != "east" {
		t.Errorf("exits %s and %s", d.Gates[0].Exit.Exit.Name, d.Gates[2].Exit.Exit.Name)
	}
}

// TestDeckFailSafe: an input taken away never moves a latest time later, and a
// gate with a limit that is not met ahead has none.
func TestDeckFailSafe(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	before, err := w.Deck(at(0.5), nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(before.Gates) != 4 {
		t.Fatalf("%+v", before)
	}
	for _, g := range before.Gates {
		if g.Latest.IsZero() {
			t.Errorf("km %.1f of a fair day has no latest time: %s", g.Along/1000, g.Why)
		}
	}
	for name, change := range worsen(t) {
		run, d, p := eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach()
		change(&run, &d, &p)
		after, err := prepare(t, run, d, p).Deck(at(0.5), nil)
		if err != nil {
			if !errors.Is(err, ErrInput) {
				t.Errorf("%s: %v", name, err)
			}
			continue
		}
		for i, g := range after.Gates {
			if g.Latest.After(before.Gates[i].Latest) {
				t.Errorf("%s, km %.1f: latest %v was %v", name, g.Along/1000, g.Latest, before.Gates[i].Latest)
			}
			if g.Latest.IsZero() && (g.Why == "" && !g.Limited || g.LeastMade == g.LeastMade) {
				t.Errorf("%s, km %.1f: no latest time and no reason: %+v", name, g.Along/1000, g)
			}
			if g.HasExit && !before.Gates[i].HasExit {
				t.Errorf("%s, km %.1f: an exit that was not there", name, g.Along/1000)
			}
		}
	}
	for _, places := range [][]float64{{1, 2}, {1, 2, 3, 4, 5, 6, 7}, {3000, 2000, 4000}, {0, 2000, 4000}, {1000, 2000, 10000}, {1000, math.NaN(), 3000}} {
		if _, err := w.Deck(at(0), places); !errors.Is(err, ErrInput) {
			t.Errorf("%v: %v", places, err)
		}
	}
	if _, err := w.Deck(at(-1), nil); !errors.Is(err, ErrInput) {
		t.Errorf("departure: %v", err)
	}
}

// TestDeckForecastEnds: no latest time lies so late that the forecast ends
// before the slow arrival.
func TestDeckForecastEnds(t *testing.T) {
	p := Paddler{Cruise: Known(1.8), Sprint: Known(3), Mass: Known(95), BoardLength: Known(4.2)}
	p.Limits[GreatestWind] = Ask(14)
	day := fairDay(t, steadyWind(t, 9, 270))
	short, err := day.Wind[0].Series.Between(at(-48), at(5))
	if err != nil {
		t.Fatal(err)
	}
	day.Wind[0].Series = short
	w := prepare(t, eastward(t), day, p)
	d, err := w.Deck(at(0), nil)
	if err != nil {
		t.Fatal(err)
	}
	m, _ := w.Moment(5000, at(1))
	for _, g := range d.Gates {
		if g.Latest.IsZero() || g.Latest.Add(time.Duration((10000-g.Along)/m.Slow*0.95*1e9)).After(at(5)) || g.Limited || !strings.Contains(g.Why, "not known") {
			t.Errorf("km %.1f: latest %v, %s", g.Along/1000, g.Latest, g.Why)
		}
	}
}

// TestLaunch: what is observed changes the findings it should, and nothing
// observed changes none to the last digit.
func TestLaunch(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	same, err := w.Launch(at(0.5), Observed{})
	if err != nil {
		t.Fatal(err)
	}
	for i, f := range same.Before.Findings {
		if g := same.After.Findings[i]; f.State != g.State || !near(f.Value, g.Value, 1e-9) {
			t.Errorf("nothing observed: %v, was %v", g, f)
		}
	}
	shifts := func(o Observed) map[Rule]State {
		t.Helper()
		l, err := w.Launch(at(0.5), o)
		if err != nil {
			t.Fatal(err)
		}
		out := map[Rule]State{}
		for _, s := range l.Shifts {
			out[s.Rule] = s.After.State
		}
		return out
	}
	if s := shifts(Observed{Wind: Known(15)}); s[GreatestWind] != Broken || s[GreatestGust] != Broken {
		t.Errorf("wind of 15 m/s: %v", s)
	}
	if s := shifts(Observed{From: Known(340)}); s[GreatestOffStern] != Broken || s[GreatestShift] != Unknown {
		// a turn at the start is not a turn on the way
		if _, ok := s[GreatestShift]; ok || s[GreatestOffStern] != Broken {
			t.Errorf("wind from 340: %v", s)
		}
	}
	if s := shifts(Observed{Wind: Known(3)}); s[LeastWind] != Broken {
		t.Errorf("wind of 3 m/s: %v", s)
	}
	m, _ := w.Moment(0, at(0.5))
	if s := shifts(Observed{Sea: Known(2.5 * m.TotalHs)}); s[GreatestSea] != Broken {
		t.Errorf("sea 2.5 times as high: %v", s)
	}
	late, err := w.Launch(at(0.5), Observed{Late: Known(1200)})
	if err != nil || late.After.Depart != at(0.5).Add(20*time.Minute) {
		t.Errorf("%v %v", late.After.Depart, err)
	}
	nan := math.NaN()
	for _, o := range []Observed{{Wind: Known(-1)}, {Wind: Known(71)}, {From: Known(361)}, {Sea: Known(-1)}, {Sea: Known(26)}, {Late: Known(-1)}, {Late: Known(5 * 3600)}} {
		if _, err := w.Launch(at(0.5), o); !errors.Is(err, ErrInput) {
			t.Errorf("%+v: %v", o, err)
		}
	}
	if _, err := w.Launch(at(-5), Observed{}); !errors.Is(err, ErrInput) {
		t.Error(err)
	}
	if s := shifts(Observed{Wind: Known(nan)}); len(s) != 0 { // Known of NaN is nobody looked
		t.Errorf("%v", s)
	}
	day := fairDay(t, steadyWind(t, 9, 270))
	day.Swell = nil
	blind := prepare(t, eastward(t), day, coach())
	if _, err := blind.Launch(at(0.5), Observed{Sea: Known(1)}); !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), "compare") {
		t.Errorf("a sea without a forecast: %v", err)
	}
}

// TestLaunchNeverImproves: an observation on the worse side of a limit does not
// turn it into a met one.
func TestLaunchNeverImproves(t *testing.T) {
	p := coach()
	p.Limits[GreatestWind], p.Limits[GreatestSea], p.Limits[GreatestOffStern] = Ask(8), Ask(0.5), Ask(5)
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 280)), p)
	for _, o := range []Observed{{Wind: Known(10)}, {Wind: Known(14)}, {From: Known(300)}, {From: Known(10)}, {Sea: Known(6)}, {Late: Known(1200)}} {
		l, err := w.Launch(at(0.5), o)
		if err != nil {
			t.Fatal(err)
		}
		for _, s := range l.Shifts {
			switch s.Rule {
			case GreatestWind, GreatestSea, GreatestOffStern:
				if s.After.State == Met {
					t.Errorf("%+v: %v was %v", o, s.After, s.Before)
				}
			}
		}
	}
}

// TestTolerancesByHand: in a steady wind of 9 m/s from astern, a limit of 14 m/s
// gives way between 8 and 10 knots more (9.72 by hand), one of 4 m/s between 8
// and 10 less, and 60 degrees off the stern between 45 and 60 of turn, or at 60.
func TestTolerancesByHand(t *testing.T) {
	p := coach()
	for r := range p.Limits {
		switch Rule(r) {
		case GreatestWind, LeastWind, GreatestOffStern, GreatestDuration:
		default:
			p.Limits[r] = Limit{}
		}
	}
	p.Limits[GreatestOffStern] = Ask(50)
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), p)
	list, err := w.Tolerances(at(0))
	if err != nil {
		t.Fatal(err)
	}
	inf := math.Inf(1)
	edge := func(e Edge, holds, breaks, unit float64) bool {
		return near(e.Holds, holds*unit, 1e-9) && (e.Breaks == breaks*unit || near(e.Breaks, breaks*unit, 1e-9))
	}
	for _, x := range list {
		kn := route.Knot
		switch x.Finding.Rule {
		case GreatestWind:
			if !edge(x.Stronger, 8, 10, kn) || !edge(x.Lighter, 10, inf, kn) {
				t.Errorf("%+v", x)
			}
		case LeastWind:
			if !edge(x.Lighter, 8, 10, kn) || !edge(x.Stronger, 10, inf, kn) {
				t.Errorf("%+v", x)
			}
		case GreatestOffStern:
			if !edge(x.Veered, 45, 60, 1) || !edge(x.Backed, 45, 60, 1) {
				t.Errorf("%+v", x)
			}
		}
		if !edge(x.Later, 60, 90, 60) { // nothing later than an hour was prepared
			t.Errorf("%v: later %+v", x.Finding.Rule, x.Later)
		}
	}
	p.Limits[GreatestWind] = Ask(8)
	list, err = prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), p).Tolerances(at(0))
	if err != nil {
		t.Fatal(err)
	}
	for _, x := range list {
		if x.Finding.Rule == GreatestWind && (x.Stronger != Edge{} || x.Lighter != Edge{} || x.Later != Edge{}) {
			t.Errorf("a broken limit has edges: %+v", x)
		}
	}
	if _, err := w.Tolerances(at(-1)); !errors.Is(err, ErrInput) {
		t.Error(err)
	}
}

// TestVisitsByHand: two areas across the run, one of them left and entered
// again, with the times of a steady board.
func TestVisitsByHand(t *testing.T) {
	run := eastward(t)
	east := func(along float64) float64 { return route.Direct(run.Points[0], 90, along).To.Lon }
	box := func(from, to float64) route.Polygon {
		a, b := east(from), east(to)
		return route.Polygon{{{Lat: 49.99, Lon: a}, {Lat: 49.99, Lon: b}, {Lat: 50.01, Lon: b}, {Lat: 50.01, Lon: a}}}
	}
	run.Areas = []route.Area{
		{Kind: route.NoSignal, Name: "cliffs", Note: "no bars", Polygons: []route.Polygon{box(6000, 7000), box(8000, 12000)}},
		{Kind: route.Traffic, Name: "ferry", Polygons: []route.Polygon{box(-2000, 1500)}},
		{Kind: route.Avoid, Name: "elsewhere", Polygons: []route.Polygon{{{{Lat: 51, Lon: -20}, {Lat: 51, Lon: -19}, {Lat: 51.1, Lon: -19}}}}},
	}
	w := prepare(t, run, fairDay(t, steadyWind(t, 9, 270)), coach())
	list, err := w.Visits(at(0.5))
	if err != nil {
		t.Fatal(err)
	}
	want := []struct {
		name        string
		enter, away float64
	}{{"ferry", 0, 1500}, {"cliffs", 6000, 7000}, {"cliffs", 8000, 10000}}
	if len(list) != len(want) {
		t.Fatalf("%+v", list)
	}
	m, _ := w.Moment(5000, at(1))
	for i, v := range list {
		x := want[i]
		if v.Name != x.name || !near(v.Enter, x.enter, 5) || !near(v.Leave, x.away, 5) {
			t.Errorf("%d: %+v, want %+v", i, v, x)
		}
		after := func(tm time.Time) float64 { return tm.Sub(at(0.5)).Seconds() }
		if !near(after(v.In), x.enter/m.Speed, 30) || !near(after(v.Out), x.away/m.Speed, 40) ||
			!near(after(v.Earliest), x.enter/m.Fast, 30) || !near(after(v.Latest), x.away/m.Slow, 60) {
			t.Errorf("%d: in %v out %v, from %v to %v", i, v.In, v.Out, v.Earliest, v.Latest)
		}
		if d := route.Inverse(run.Points[0], v.EnterAt).Distance; !near(d, x.enter, 6) {
			t.Errorf("%d: entered %v m from the start", i, d)
		}
	}
	a := appraise(t, w, 0.5)
	for _, f := range a.Findings {
		if f.Rule == NoTraffic && f.State != Broken || f.Rule == NoAvoid && f.State != Met {
			t.Errorf("%v", f)
		}
	}
	day := fairDay(t, steadyWind(t, 9, 270))
	day.Streams = nil
	list, err = prepare(t, run, day, coach()).Visits(at(0.5))
	if err != nil || len(list) != 3 || !list[1].In.IsZero() || !list[2].Latest.IsZero() {
		t.Errorf("without a stream the times are not known: %+v %v", list, err)
	}
	if _, err := w.Visits(at(-5)); !errors.Is(err, ErrInput) {
		t.Error(err)
	}
}
