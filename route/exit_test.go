package route

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

var noon = time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)

// openExit has every condition given and none that a calm day breaks.
func openExit(name string, p Point) Exit {
	return Exit{Name: name, Point: p, LeastDepth: LimitOf(0.5), GreatestBreaker: LimitOf(0.6),
		Seaward: NoLimit(), Hours: DaylightOnly, GreatestStream: LimitOf(1)}
}

func calmShore(Exit, time.Time) At {
	return At{Depth: Known(1), Breaker: Known(0.2), Stream: Known(0.3), Light: LightDay}
}

func plainWay(speed float64) Way {
	return func(h float64, _ Velocity) Velocity { return Toward(speed, h) }
}

func ocean() *Coast {
	c, err := NewCoast(nil, nil)
	if err != nil {
		panic(err)
	}
	return c
}

// calmEscape asks from 50 N 7 E at noon, with everything known.
func calmEscape() Escape {
	return Escape{From: Point{50, 7}, Time: noon, Posture: Standing(1.8), Way: plainWay(1.8),
		Wind: Steady(Velocity{}), Stream: Steady(Velocity{}), At: calmShore, Coast: ocean()}
}

// TestExitByHand: days worked by hand, one thing changed at a time.
func TestExitByHand(t *testing.T) {
	from := Point{50, 7}
	north := func(km float64) Exit { return openExit("X", Direct(from, 0, km*1000).To) }
	for name, x := range map[string]struct {
		km      float64
		change  func(*Escape, *Exit)
		state   State
		seconds float64 // NaN: not reached
		heading float64
		why     string
	}{
		"calm":                           {3.6, func(*Escape, *Exit) {}, Landable, 2000, 0, ""},
		"stream against, half the speed": {3.6, func(q *Escape, _ *Exit) { q.Stream = Steady(Toward(0.9, 180)) }, Landable, 4000, 0, ""},
		// 1.8 across 1.08: asin 0.6 = 36.87 upstream, 1.44 m/s made.
		"stream across, 3-4-5":   {3.6, func(q *Escape, _ *Exit) { q.Stream = Steady(Toward(1.08, 90)) }, Landable, 2500, 323.1301, ""},
		"stream against, faster": {3.6, func(q *Escape, _ *Exit) { q.Stream = Steady(Toward(1.9, 180)) }, OutOfReach, math.NaN(), math.NaN(), "carried backward"},
		"stream across, faster":  {3.6, func(q *Escape, _ *Exit) { q.Stream = Steady(Toward(1.9, 90)) }, OutOfReach, math.NaN(), math.NaN(), "across the track"},
		// 1800 s at 0.9 leave 1980 m for 2.7 m/s: 733.33 s more.
		"stream turns after half an hour": {3.6, func(q *Escape, _ *Exit) {
			q.Stream = func(at time.Time, _ Point) Velocity {
				if at.Before(noon.Add(30 * time.Minute)) {
					return Toward(0.9, 180)
				}
				return Toward(0.9, 0)
			}
		}, Landable, 2533.3333, 0, ""},
		"standing against 20 kn":    {3.6, func(q *Escape, _ *Exit) { q.Way, q.Wind = nil, Steady(From(20*Knot, 0)) }, Landable, 3600 / 0.8135, 0, ""},
		"standing against 25 kn":    {3.6, func(q *Escape, _ *Exit) { q.Way, q.Wind = nil, Steady(From(25*Knot, 0)) }, OutOfReach, math.NaN(), math.NaN(), "carried backward"},
		"default is standing":       {3.6, func(q *Escape, _ *Exit) { q.Way, q.Posture, q.Wind = nil, Posture{}, Steady(From(20*Knot, 0)) }, Landable, 3600 / 0.8135, 0, ""},
		"prone against 25 kn, near": {0.9, func(q *Escape, _ *Exit) { q.Way, q.Posture, q.Wind = nil, Prone(1.8), Steady(From(25*Knot, 0)) }, Landable, 900 / 0.5539, 0, ""},
		"prone against 25 kn, far":  {3.6, func(q *Escape, _ *Exit) { q.Way, q.Posture, q.Wind = nil, Prone(1.8), Steady(From(25*Knot, 0)) }, OutOfReach, math.NaN(), 0, "prone can be kept up for 45 min"},
		"the latest hour":           {3.6, func(q *Escape, _ *Exit) { q.Latest = noon.Add(30 * time.Minute) }, OutOfReach, math.NaN(), 0, "0.4 km short: the latest hour is 12:30"},
		"the latest hour is past":   {3.6, func(q *Escape, _ *Exit) { q.Latest = noon.Add(-time.Minute) }, OutOfReach, math.NaN(), 0, "the latest hour is 11:59"},
		"at hand":                   {0.1, func(*Escape, *Exit) {}, Landable, 0, math.NaN(), ""},
		"at hand, too late":         {0.1, func(q *Escape, _ *Exit) { q.Latest = noon.Add(-time.Minute) }, OutOfReach, math.NaN(), math.NaN(), "latest"},
		"breakers":                  {3.6, func(_ *Escape, e *Exit) { e.GreatestBreaker = LimitOf(0.1) }, Broken, 2000, 0, "breakers 0.2 m, greatest 0.1"},
		"too shallow":               {3.6, func(_ *Escape, e *Exit) { e.LeastDepth = LimitOf(1.5) }, Broken, 2000, 0, "depth 1 m, least 1.5"},
		"stream past the landing":   {3.6, func(_ *Escape, e *Exit) { e.GreatestStream = LimitOf(0.2) }, Broken, 2000, 0, "stream 0.3 m/s, greatest 0.2"},
		"dark": {3.6, func(q *Escape, _ *Exit) {
			q.At = func(Exit, time.Time) At { a := calmShore(Exit{}, noon); a.Light = LightDark; return a }
		}, Broken, 2000, 0, "dark, daylight only"},
		"dark, any hour": {3.6, func(q *Escape, e *Exit) {
			e.Hours = AnyHour
			q.At = func(Exit, time.Time) At { a := calmShore(Exit{}, noon); a.Light = LightDark; return a }
		}, Landable, 2000, 0, ""},
		"from behind the beach":        {3.6, func(_ *Escape, e *Exit) { e.Seaward = LimitOf(0) }, Broken, 2000, 0, "from behind the shore"},
		"from the sea":                 {3.6, func(_ *Escape, e *Exit) { e.Seaward = LimitOf(100) }, Landable, 2000, 0, ""},
		"nobody asked about breakers":  {3.6, func(_ *Escape, e *Exit) { e.GreatestBreaker = Limit{} }, Unknown, 2000, 0, "breakers: no condition given"},
		"nobody asked about the hours": {3.6, func(_ *Escape, e *Exit) { e.Hours = 0 }, Unknown, 2000, 0, "hours: no condition given"},
		"seaward not given":            {3.6, func(_ *Escape, e *Exit) { e.Seaward = Limit{} }, Unknown, 2000, 0, "seaward bearing: not given"},
		"no tide": {3.6, func(q *Escape, _ *Exit) {
			q.At = func(Exit, time.Time) At { a := calmShore(Exit{}, noon); a.Depth = Value{}; return a }
		}, Unknown, 2000, 0, "depth: not known, limit 0.5 m"},
		"nothing known of the shore": {3.6, func(q *Escape, _ *Exit) { q.At = nil }, Unknown, 2000, 0, "light: not known"},
		"broken outweighs unknown":   {3.6, func(_ *Escape, e *Exit) { e.GreatestBreaker, e.LeastDepth = LimitOf(0.1), Limit{} }, Broken, 2000, 0, "no condition given"},
		"no limit, nothing known": {3.6, func(q *Escape, e *Exit) {
			*e = Exit{Name: "Y", Point: e.Point, LeastDepth: NoLimit(), GreatestBreaker: NoLimit(), Seaward: NoLimit(), GreatestStream: NoLimit(), Hours: AnyHour}
			q.At = nil
		}, Landable, 2000, 0, ""},
		"no coast":          {3.6, func(q *Escape, _ *Exit) { q.Coast = nil }, Unknown, 2000, 0, "land may lie in the way"},
		"no wind":           {3.6, func(q *Escape, _ *Exit) { q.Wind = nil }, Unknown, math.NaN(), math.NaN(), "wind: not known"},
		"no stream":         {3.6, func(q *Escape, _ *Exit) { q.Stream = nil }, Unknown, math.NaN(), math.NaN(), "stream: not known"},
		"wind NaN":          {3.6, func(q *Escape, _ *Exit) { q.Wind = Steady(Velocity{math.NaN(), 0}) }, Unknown, math.NaN(), math.NaN(), "wind"},
		"island in the way": {3.6, func(q *Escape, _ *Exit) { q.Coast = mustCoast(t, nil, []Polygon{box(50.01, 6.9, 50.02, 7.1)}) }, OutOfReach, math.NaN(), math.NaN(), "land in the way at 50.01"},
		"shore at the exit": {3.6, func(q *Escape, _ *Exit) {
			p := Direct(from, 0, 3520).To
			q.Coast = mustCoast(t, nil, []Polygon{box(p.Lat, 6.9, 51, 7.1)})
		}, Landable, 2000, 0, ""},
		"shore at the start": {3.6, func(q *Escape, _ *Exit) {
			p := Direct(from, 0, 50).To
			q.Coast = mustCoast(t, nil, []Polygon{box(49, 6.9, p.Lat, 7.1)})
		}, Landable, 2000, 0, ""},
		// Adrift at 2.018 % of 10 m/s. 15 degrees either side are 104 m at 400 m,
		// all of it at hand, and 233 m at 900 m, which is not.
		"adrift onto it": {0.4, func(q *Escape, _ *Exit) {
			q.Way, q.Posture, q.Wind = nil, Drifting(), Steady(From(10, 180))
		}, Landable, 400 / 0.20184, math.NaN(), ""},
		"adrift onto it, far": {0.9, func(q *Escape, _ *Exit) {
			q.Way, q.Posture, q.Wind = nil, Drifting(), Steady(From(10, 180))
		}, Unknown, 900 / 0.20184, math.NaN(), "passes 0.0 km off after 74 min, give or take 0.2 km"},
		"adrift beside it": {0.9, func(q *Escape, _ *Exit) {
			q.Way, q.Posture, q.Wind = nil, Drifting(), Steady(From(10, 195))
		}, Unknown, 900 * 0.9659 / 0.20184, math.NaN(), "passes 0.2 km off"},
		"adrift past it": {0.9, func(q *Escape, _ *Exit) { q.Way, q.Posture, q.Wind = nil, Drifting(), Steady(From(10, 225)) }, OutOfReach, math.NaN(), math.NaN(), "adrift, passes 0.6 km off"},
		"adrift, calm":   {0.9, func(q *Escape, _ *Exit) { q.Way, q.Posture = nil, Drifting() }, OutOfReach, math.NaN(), math.NaN(), "adrift"},
		"adrift on a stream": {0.9, func(q *Escape, _ *Exit) {
			q.Way, q.Posture, q.Stream, q.Wind = nil, Drifting(), Steady(Toward(0.5, 0)), Steady(Toward(0.5, 0))
		}, Landable, 1800, math.NaN(), ""},
		"adrift ashore": {3.6, func(q *Escape, _ *Exit) {
			q.Way, q.Posture, q.Wind, q.Coast = nil, Drifting(), Steady(From(10, 180)), mustCoast(t, nil, []Polygon{box(50.01, 6.9, 50.02, 7.1)})
		}, OutOfReach, math.NaN(), math.NaN(), "adrift, ashore at 50.01"},
		"adrift, wind NaN": {3.6, func(q *Escape, _ *Exit) { q.Way, q.Posture, q.Wind = nil, Drifting(), Steady(Velocity{0, math.NaN()}) }, Unknown, math.NaN(), math.NaN(), "wind"},
	} {
		q, e := calmEscape(), north(x.km)
		x.change(&q, &e)
		o, err := q.Reach(e)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if o.State != x.state {
			t.Errorf("%s: %v %v, want %v", name, o.State, o.Why, x.state)
		}
		if (o.State == Landable) != (len(o.Why) == 0) || !strings.Contains(strings.Join(o.Why, "; "), x.why) {
			t.Errorf("%s: why %q, want %q", name, o.Why, x.why)
		}
		if math.IsNaN(x.seconds) != math.IsNaN(o.Seconds) || math.IsNaN(o.Seconds) != o.Arrival.IsZero() {
			t.Errorf("%s: %v s, arrival %v, want %v s", name, o.Seconds, o.Arrival, x.seconds)
		} else if !math.IsNaN(x.seconds) {
			within(t, name+" seconds", o.Seconds, x.seconds, 1+x.seconds*1e-3)
		}
		if !math.IsNaN(x.heading) || !math.IsNaN(o.Heading) {
			within(t, name+" heading", wrapLon(o.Heading-x.heading), 0, 0.01)
		}
	}
}

// TestExitStreamAgainst: exits reachable never grow when the stream against
// them grows, nor when the wind against them does.
func TestExitStreamAgainst(t *testing.T) {
	rank := func(s State) bool { return s == Landable }
	rapid.Check(t, func(t *rapid.T) {
		q := calmEscape()
		q.Way = nil
		q.Posture = rapid.SampledFrom(Postures(rapid.Float64Range(1, 2.5).Draw(t, "speed"))[:3]).Draw(t, "posture")
		toward := rapid.Float64Range(0, 360).Draw(t, "bearing")
		e := openExit("X", Direct(q.From, toward, rapid.Float64Range(500, 9000).Draw(t, "distance")).To)
		a := rapid.Float64Range(0, 2).Draw(t, "stream")
		b := a + rapid.Float64Range(0.01, 1).Draw(t, "more")
		wind := From(rapid.Float64Range(0, 14).Draw(t, "wind"), rapid.Float64Range(0, 360).Draw(t, "from"))
		q.Wind = Steady(wind)
		one := q
		one.Stream, q.Stream = Steady(From(a, toward)), Steady(From(b, toward))
		if rapid.Bool().Draw(t, "on the water") {
			// A stream against eases a wind against that is held over ground;
			// hold the wind on the water instead, to ask about the stream alone.
			one.Wind = Steady(wind.Add(From(a, toward)))
			q.Wind = Steady(wind.Add(From(b, toward)))
		}
		x, err := one.Reach(e)
		if err != nil {
			t.Fatal(err)
		}
		y, err := q.Reach(e)
		if err != nil {
			t.Fatal(err)
		}
		if rank(y.State) && !rank(x.State) {
			t.Fatalf("more stream against it opens the exit: %v, then %v", x, y)
		}
		if rank(y.State) && !(y.Seconds >= x.Seconds-1) {
			t.Fatalf("more stream against it is sooner: %v, then %v", x.Seconds, y.Seconds)
		}
	})
}

// TestExitUnknownNeverOpens: taking any piece of knowledge away never makes
// an exit landable that was not.
func TestExitUnknownNeverOpens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := calmEscape()
		e := openExit("X", Direct(q.From, 40, 2000).To)
		at := calmShore(e, noon)
		at.Breaker = Known(rapid.Float64Range(0, 1.2).Draw(t, "breaker"))
		at.Depth = Known(rapid.Float64Range(0, 1).Draw(t, "depth"))
		q.At = func(Exit, time.Time) At { return at }
		before, err := q.Reach(e)
		if err != nil {
			t.Fatal(err)
		}
		switch rapid.IntRange(0, 9).Draw(t, "gone") {
		case 0:
			q.Wind = nil
		case 1:
			q.Stream = nil
		case 2:
			q.Coast = nil
		case 3:
			q.At = nil
		case 4:
			at.Breaker = Known(math.NaN())
		case 5:
			at.Depth = Value{}
		case 6:
			at.Light = LightUnknown
		case 7:
			e.GreatestBreaker = LimitOf(math.Inf(1))
		case 8:
			e.LeastDepth = Limit{}
		case 9:
			at.Stream = Value{}
		}
		after, err := q.Reach(e)
		if err != nil {
			t.Fatal(err)
		}
		if after.State == Landable {
			t.Fatalf("%v before, landable with less known", before.State)
		}
	})
}

// TestGaps: a run of 10 km along a shore with exits at 0 and 10 km, for a
// posture that can be kept up for 45 minutes: at 1.8 m/s, 4.86 km.
func TestGaps(t *testing.T) {
	from := Point{50, 7}
	to := Direct(from, 90, 12000).To
	exits := []Exit{openExit("A", from), openExit("B", to)}
	q := calmEscape()
	q.Posture.Endurance = 45 * Minute
	pace := func(d float64) float64 { return d / 2 }
	gaps, err := Gaps([]Point{from, to}, exits, q, pace, 100)
	if err != nil {
		t.Fatal(err)
	}
	if len(gaps) != 1 {
		t.Fatal(gaps)
	}
	g := gaps[0]
	within(t, "from", g.From, 4800, 0)
	within(t, "to", g.To, 7200, 0)
	within(t, "start", g.Start.Sub(noon).Seconds(), 2400, 1e-6)
	within(t, "end", g.End.Sub(noon).Seconds(), 3600, 1e-6)
	if g.Unknown {
		t.Error("nothing is unknown")
	}
	q.Posture.Endurance = Hour
	if gaps, err := Gaps([]Point{from, Direct(from, 90, 5000).To, to}, exits, q, pace, 100); err != nil || len(gaps) != 0 {
		t.Error(gaps, err)
	}
	exits[1].GreatestBreaker = Limit{}
	gaps, err = Gaps([]Point{from, to}, exits, q, pace, 100)
	if err != nil || len(gaps) != 1 || !gaps[0].Unknown {
		t.Fatal(gaps, err)
	}
	within(t, "to the end", gaps[0].To, 12000, 0.1)
	if gaps, err = Gaps([]Point{from, to}, nil, q, pace, 1000); err != nil || len(gaps) != 1 || gaps[0].From != 0 || gaps[0].Unknown {
		t.Error(gaps, err)
	}
	for name, err := range map[string]error{
		"one":   second(Gaps([]Point{from}, exits, q, pace, 100)),
		"NaN":   second(Gaps([]Point{from, {math.NaN(), 0}}, exits, q, pace, 100)),
		"step":  second(Gaps([]Point{from, to}, exits, q, pace, math.NaN())),
		"steps": second(Gaps([]Point{from, to}, exits, q, pace, 0.01)),
		"pace":  second(Gaps([]Point{from, to}, exits, q, func(float64) float64 { return math.NaN() }, 100)),
		"exit":  second(Gaps([]Point{from, to}, []Exit{{}}, q, pace, 100)),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

func TestExitBadInput(t *testing.T) {
	e := openExit("X", Point{50, 7.01})
	for name, change := range map[string]func(*Escape, *Exit){
		"from":      func(q *Escape, _ *Exit) { q.From.Lat = math.NaN() },
		"time":      func(q *Escape, _ *Exit) { q.Time = time.Time{} },
		"posture":   func(q *Escape, _ *Exit) { q.Posture.Speed = math.NaN() },
		"name":      func(_ *Escape, e *Exit) { e.Name = "" },
		"exit":      func(_ *Escape, e *Exit) { e.Point.Lat = 91 },
		"condition": func(_ *Escape, e *Exit) { e.LeastDepth = LimitOf(-1) },
	} {
		q, x := calmEscape(), e
		change(&q, &x)
		if _, err := q.Exits([]Exit{e, x}); !errors.Is(err, ErrInput) && !errors.Is(err, ErrPosition) {
			t.Errorf("%s: %v", name, err)
		}
	}
	q := calmEscape()
	if outs, err := q.Exits([]Exit{e, e}); err != nil || len(outs) != 2 {
		t.Error(outs, err)
	}
}

func TestValueAndLimit(t *testing.T) {
	var zero Value
	if _, ok := zero.Get(); ok || zero.String() != "unknown" || Known(math.NaN()) != zero || Known(math.Inf(1)) != zero || Known(0) == zero || Known(1.5).String() != "1.5" {
		t.Error("Value")
	}
	if x, _ := zero.Get(); !math.IsNaN(x) {
		t.Error("the number of an unknown is NaN")
	}
	var none Limit
	if none.Given() || !NoLimit().Given() || !LimitOf(0).Given() || LimitOf(math.NaN()).Given() {
		t.Error("Given")
	}
	for l, want := range map[Limit]string{none: "not given", NoLimit(): "none", LimitOf(2): "2"} {
		if l.String() != want {
			t.Error(l)
		}
		if x, ok := l.Get(); ok != (want == "2") || !ok && !math.IsNaN(x) {
			t.Error(l, x)
		}
	}
	for s, want := range map[State]string{Unknown: "unknown", OutOfReach: "out of reach", Broken: "reachable, a landing condition broken", Landable: "reachable and landable"} {
		if s.String() != want {
			t.Error(s)
		}
	}
	for h, want := range map[Hours]string{HoursNotGiven: "not given", AnyHour: "any hour", DaylightOnly: "daylight only"} {
		if h.String() != want {
			t.Error(h)
		}
	}
	e := openExit("X", Point{})
	if on, _ := e.Onshore(Velocity{1, 1}); !math.IsNaN(on) {
		t.Error("onshore of a landing that faces nowhere")
	}
	e.Seaward = LimitOf(270) // faces west: a west wind is onshore, a south wind comes along from the right
	on, along := e.Onshore(From(5, 270))
	within(t, "onshore", on, 5, 1e-12)
	within(t, "along", along, 0, 1e-12)
	_, along = e.Onshore(From(5, 0))
	within(t, "from the north, to the right of a look at the land", along, 5, 1e-12)
}

// adrift asks for an exit at so many metres north and east of 50 N 7 E, in a stream and with a way through the water.
func adrift(t *testing.T, north, east float64, stream Field, way Velocity, change func(*Escape)) Out {
	t.Helper()
	q := calmEscape()
	q.Posture, q.Stream, q.Wind = Drifting(), stream, Steady(Velocity{})
	q.Way = func(float64, Velocity) Velocity { return way }
	if change != nil {
		change(&q)
	}
	o, err := q.Reach(openExit("X", Direct(Direct(q.From, 0, north).To, 90, east).To))
	if err != nil {
		t.Fatal(err)
	}
	return o
}

// TestConeOfADrift: the cone is as wide as the sine of 15 degrees times the way through the water to where the exit is abeam, and
// all of it, some of it or none of it is within 150 m of the exit. At 1 m/s through the water and 3 m/s of stream, 1000 m are 250 m
// of way and 64.7 m of cone, 2000 m are 500 m, 200 of them in the second step, and 129.4 m.
func TestConeOfADrift(t *testing.T) {
	for _, c := range []struct {
		north, east float64
		want        State
	}{
		{1000, 80, Landable}, {1000, 90, Unknown}, {1000, 210, Unknown}, {1000, 220, OutOfReach},
		{2000, 15, Landable}, {2000, 25, Unknown}, {2000, 275, Unknown}, {2000, 285, OutOfReach},
	} {
		for _, side := range []float64{-1, 1} {
			o := adrift(t, c.north, side*c.east, Steady(Toward(3, 0)), Toward(1, 0), nil)
			if o.State != c.want {
				t.Errorf("%v m along and %v m off: %v, %v", c.north, c.east, o.State, o.Why)
			}
			if c.want != OutOfReach {
				within(t, "seconds", o.Seconds, c.north/4, 0.1)
			}
		}
	}
}

// TestDriftEndsWithItsTime: the last step of a drift is as long as what is left of the time. In 450 s at 1 m/s an exit 700 m away
// is not come within 150 m of; one 590 m away is, 440 m from the start.
func TestDriftEndsWithItsTime(t *testing.T) {
	latest := func(q *Escape) { q.Latest = noon.Add(450 * time.Second) }
	for metres, want := range map[float64]State{590: Landable, 700: OutOfReach} {
		if o := adrift(t, metres, 0, Steady(Toward(1, 0)), Velocity{}, latest); o.State != want {
			t.Errorf("%v m: %v, %v", metres, o.State, o.Why)
		}
	}
}

// TestDriftThatComesBack: a drift that passes an exit 300 m off and is brought back to it by the turn of the stream reaches it.
func TestDriftThatComesBack(t *testing.T) {
	turns := func(at time.Time, _ Point) Velocity {
		if at.Before(noon.Add(1500 * time.Second)) {
			return Toward(1, 0)
		}
		return Toward(1, 180+math.Atan2(300, 500)*180/math.Pi) // from 1500 m north to the exit
	}
	o := adrift(t, 1000, -300, turns, Velocity{}, nil)
	if o.State != Landable {
		t.Errorf("%v, %v", o.State, o.Why)
	}
	within(t, "seconds", o.Seconds, 1500+math.Hypot(300, 500), 0.5)
}

// TestReachedAsEnduranceEnds: an exit that is reached at the very end of endurance is reached, and not a moment sooner.
func TestReachedAsEnduranceEnds(t *testing.T) {
	q := calmEscape()
	e := openExit("X", Direct(q.From, 30, 400).To)
	o, err := q.Reach(e)
	if err != nil || o.State != Landable {
		t.Fatal(o, err)
	}
	for _, x := range []struct {
		endurance float64
		want      State
	}{{o.Seconds, Landable}, {math.Nextafter(o.Seconds, 0), OutOfReach}} {
		q.Posture.Endurance = x.endurance
		if o, err := q.Reach(e); err != nil || o.State != x.want {
			t.Errorf("%v s of endurance: %+v, %v", x.endurance, o, err)
		}
	}
}

// TestLargestNumbersAreKnown: the largest number is a number, of either sign.
func TestLargestNumbersAreKnown(t *testing.T) {
	for _, x := range []float64{math.MaxFloat64, -math.MaxFloat64} {
		v, known := Known(x).Get()
		l, ok := LimitOf(x).Get()
		if !known || !ok || v != x || l != x {
			t.Errorf("%v: %v, %v and %v, %v", x, v, known, l, ok)
		}
	}
}

// TestStepsOfGaps: a run of 100000 steps is walked and one of 100001 is not. The pace fails at the start, so that none is taken.
func TestStepsOfGaps(t *testing.T) {
	points := []Point{{50, 7}, {51, 7}}
	length := Inverse(points[0], points[1]).Distance
	for steps, says := range map[float64]string{99999.5: "pace at 0 m", 100000.5: "100001 steps of"} {
		_, err := Gaps(points, nil, calmEscape(), func(float64) float64 { return math.NaN() }, length/steps)
		if err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%v steps: %v", steps, err)
		}
	}
}

func BenchmarkReach(b *testing.B) {
	q := calmEscape()
	q.Way = nil
	q.Wind, q.Stream = Steady(From(8, 250)), Steady(Toward(0.4, 100))
	e := openExit("X", Direct(q.From, 20, 4000).To)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := q.Reach(e); err != nil {
			b.Fatal(err)
		}
	}
}
