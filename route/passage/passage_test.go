package passage

import (
	"math"
	"testing"
	"time"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wave"
	"followingsea.example/wind"
)

// TestFairDayMeetsEveryLimit: with everything known and mild, every limit that
// is asked for is compared and met, and the arrival is the length over the
// speed.
func TestFairDayMeetsEveryLimit(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	a := appraise(t, w, 0.5)
	for _, f := range a.Findings {
		if f.State != Met {
			t.Errorf("%v", f)
		}
	}
	if a.State != Met || !a.Arrives {
		t.Fatalf("state %v, arrives %v: %s", a.State, a.Arrives, a.Ends)
	}
	if len(a.Findings) != int(ruleCount)-1 { // all but LeastLeaders, which a single paddler has none of
		t.Errorf("%d findings", len(a.Findings))
	}
	m, err := w.Moment(5000, at(1))
	if err != nil {
		t.Fatal(err)
	}
	if want := 10000 / m.Speed; !near(a.Arrival.Sub(a.Depart).Seconds(), want, 0.01*want) {
		t.Errorf("arrives after %v, length over speed is %.0f s", a.Arrival.Sub(a.Depart), want)
	}
	if !(a.Early.Before(a.Arrival) && a.Arrival.Before(a.Late)) {
		t.Errorf("early %v, expected %v, late %v", a.Early, a.Arrival, a.Late)
	}
}

// TestStreamCarriesTheBoard: a stream along the run adds to the speed over the
// ground, one across it is held against, and one that is stronger than the
// board ends the passage.
func TestStreamCarriesTheBoard(t *testing.T) {
	day := fairDay(t, steadyWind(t, 9, 270))
	with := func(v route.Velocity) (*Water, Appraisal) {
		d := day
		d.Streams = []StreamGauge{{Stream: constantStream(v)}}
		w := prepare(t, eastward(t), d, coach())
		return w, appraise(t, w, 0)
	}
	w, a := with(route.Velocity{East: 0.5})
	m, err := w.Moment(5000, at(0.5))
	if err != nil {
		t.Fatal(err)
	}
	if want := 10000 / (m.Speed + 0.5); !near(a.Arrival.Sub(a.Depart).Seconds(), want, 0.01*want) {
		t.Errorf("along: %v, want %.0f s", a.Arrival.Sub(a.Depart), want)
	}
	w, a = with(route.Velocity{North: 0.8})
	if m, err = w.Moment(5000, at(0.5)); err != nil {
		t.Fatal(err)
	}
	if want := 10000 / math.Sqrt(m.Speed*m.Speed-0.64); !near(a.Arrival.Sub(a.Depart).Seconds(), want, 0.01*want) {
		t.Errorf("across: %v, want %.0f s", a.Arrival.Sub(a.Depart), want)
	}
	if !(m.Heading > 90 && m.Heading < 150) {
		t.Errorf("heading %v against a stream setting north", m.Heading)
	}
	if _, a = with(route.Velocity{North: 4.5}); a.Arrives || a.State == Met || a.Ends == "" {
		t.Errorf("a stream of 4.5 m/s across: %v %v %q", a.Arrives, a.State, a.Ends)
	}
}

// worsen are the ways in which a fair day loses something; none may turn a
// limit that is broken or unknown into one that is met.
func worsen(t testing.TB) map[string]func(*route.Run, *Day, *Paddler) {
	nan := math.NaN()
	gap := func() wind.Series {
		full := steadyWind(t, 9, 270)
		var kept []wind.Sample
		for _, s := range full.Samples() {
			if h := s.Time.Sub(morning).Hours(); h < -5 || h > 2 {
				kept = append(kept, s)
			}
		}
		s, err := wind.NewSeries(kept, time.Hour)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}()
	short := func() wind.Series {
		s, err := steadyWind(t, 9, 270).Between(at(-48), at(1))
		if err != nil {
			t.Fatal(err)
		}
		return s
	}()
	return map[string]func(*route.Run, *Day, *Paddler){
		"no wind":         func(_ *route.Run, d *Day, _ *Paddler) { d.Wind = nil },
		"gap in the wind": func(_ *route.Run, d *Day, _ *Paddler) { d.Wind[0].Series = gap },
		"forecast ends":   func(_ *route.Run, d *Day, _ *Paddler) { d.Wind[0].Series = short },
		"no swell":        func(_ *route.Run, d *Day, _ *Paddler) { d.Swell = nil },
		"no tide":         func(_ *route.Run, d *Day, _ *Paddler) { d.Tide = nil },
		"tide NaN":        func(_ *route.Run, d *Day, _ *Paddler) { d.Tide = constantHeight(nan) },
		"tide infinite":   func(_ *route.Run, d *Day, _ *Paddler) { d.Tide = constantHeight(math.Inf(1)) },
		"no stream":       func(_ *route.Run, d *Day, _ *Paddler) { d.Streams = nil },
		"stream NaN":      func(_ *route.Run, d *Day, _ *Paddler) { d.Streams = []StreamGauge{{Stream: constantStream{East: nan}}} },
		"stream infinite": func(_ *route.Run, d *Day, _ *Paddler) {
			d.Streams = []StreamGauge{{Stream: constantStream{North: math.Inf(-1)}}}
		},
		"warning not said": func(_ *route.Run, d *Day, _ *Paddler) { d.Warning = Warning{} },
		"no coast":         func(r *route.Run, _ *Day, _ *Paddler) { r.Coast = nil },
		"no depth":         func(r *route.Run, _ *Day, _ *Paddler) { r.Depths = nil },
		"no exits":         func(r *route.Run, _ *Day, _ *Paddler) { r.Exits = nil },
		"no conditions": func(r *route.Run, _ *Day, _ *Paddler) {
			for i := range r.Exits {
				r.Exits[i].LeastDepth = route.Limit{}
			}
		},
		"no cruise speed": func(_ *route.Run, _ *Day, p *Paddler) { p.Cruise = Value{} },
		"no endurance":    func(_ *route.Run, _ *Day, p *Paddler) { p.Endurance = Value{} },
	}
}

// TestFailSafe: on days on which every limit is met, some broken, taking any
// input away or making it nonsense never makes a limit met that was not, and
// always leaves some limit that is not met.
func TestFailSafe(t *testing.T) {
	days := map[string]func() (route.Run, Day, Paddler){
		"fair": func() (route.Run, Day, Paddler) { return eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach() },
		"hard": func() (route.Run, Day, Paddler) {
			p := coach()
			for r := range ruleCount {
				switch x, asked := p.Limits[r].Get(); {
				case !asked || r.Unit() == "bool":
				case r.AtLeast():
					p.Limits[r] = Ask(math.Min(x+1e4, 25)) // out of reach of most
				default:
					p.Limits[r] = Ask(x * 0.01)
				}
			}
			d := fairDay(t, steadyWind(t, 9, 250))
			d.Warning = WarningInForce("gale")
			return eastward(t), d, p
		},
	}
	for day, make := range days {
		run, d, p := make()
		before := appraise(t, prepare(t, run, d, p), 0.5)
		for name, change := range worsen(t) {
			run, d, p := make()
			d.Wind = append([]Anemometer(nil), d.Wind...)
			run.Exits = append([]route.Exit(nil), run.Exits...)
			change(&run, &d, &p)
			after := appraise(t, prepare(t, run, d, p), 0.5)
			worse := false
			for i, f := range after.Findings {
				if f.State == Met && before.Findings[i].State != Met {
					t.Errorf("%s day, %s: %v was %v", day, name, f, before.Findings[i].State)
				}
				worse = worse || f.State != Met
				if f.State == Unknown && f.Why == "" {
					t.Errorf("%s day, %s: %v is unknown and does not say why", day, name, f.Rule)
				}
			}
			if !worse || after.State == Met {
				t.Errorf("%s day, %s: every limit is still met", day, name)
			}
		}
	}
}

// TestEachRuleBreaks: each rule on its own is broken by a day made to break
// it, with a value on the wrong side of the limit.
func TestEachRuleBreaks(t *testing.T) {
	strait := constantStream{East: -1.2}
	cases := map[Rule]func(*route.Run, *Day, *Paddler){
		LeastWind:          func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[LeastWind] = Ask(10) },
		GreatestWind:       func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[GreatestWind] = Ask(8) },
		GreatestGust:       func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[GreatestGust] = Ask(10) },
		GreatestOffStern:   func(_ *route.Run, d *Day, _ *Paddler) { d.Wind[0].Series = steadyWind(t, 9, 350) },
		LeastSea:           func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[LeastSea] = Ask(5) },
		GreatestSea:        func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[GreatestSea] = Ask(0.3) },
		GreatestStream:     func(_ *route.Run, d *Day, _ *Paddler) { d.Streams = []StreamGauge{{Stream: strait}} },
		GreatestAgainst:    func(_ *route.Run, d *Day, _ *Paddler) { d.Streams = []StreamGauge{{Stream: strait}} },
		LeastDepth:         func(_ *route.Run, d *Day, _ *Paddler) { d.Tide = constantHeight(-19) },
		GreatestDuration:   func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[GreatestDuration] = Ask(600) },
		LeastReserve:       func(_ *route.Run, _ *Day, p *Paddler) { p.Endurance = Known(3600) },
		LeastDaylight:      func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[LeastDaylight] = Ask(20 * 3600) },
		NoWarning:          func(_ *route.Run, d *Day, _ *Paddler) { d.Warning = WarningInForce("") },
		GreatestTimeToExit: func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[GreatestTimeToExit] = Ask(60) },
		GreatestShift: func(_ *route.Run, d *Day, _ *Paddler) {
			d.Wind[0].Series = windOf(t, func(h float64) (float64, float64) {
				if h < 2 {
					return 9, 270
				}
				return 9, 340
			})
		},
		GreatestSwell: func(_ *route.Run, d *Day, p *Paddler) {
			d.Swell = constantSwell{{Hs: 2.5, Tp: 11, From: 260}}
		},
		LeastWaterTemperature: func(_ *route.Run, _ *Day, p *Paddler) { p.Limits[LeastWaterTemperature] = Ask(15) },
		GreatestOffshore:      func(_ *route.Run, d *Day, p *Paddler) { p.Limits[GreatestOffshore] = Ask(-8) },
		NoAvoid: func(r *route.Run, _ *Day, _ *Paddler) {
			r.Areas = []route.Area{{Kind: route.Avoid, Name: "range", Polygons: []route.Polygon{{{{Lat: 49.99, Lon: -19.95}, {Lat: 49.99, Lon: -19.93}, {Lat: 50.01, Lon: -19.93}, {Lat: 50.01, Lon: -19.95}}}}}}
		},
	}
	delete(cases, GreatestOffshore) // its limit cannot be negative; the next test has it
	for r, change := range cases {
		run, d, p := eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach()
		change(&run, &d, &p)
		a := appraise(t, prepare(t, run, d, p), 0)
		for _, f := range a.Findings {
			if f.Rule != r {
				continue
			}
			if f.State != Broken || a.State != Broken || !(f.Margin < 0) {
				t.Errorf("%v", f)
			}
		}
	}
}

type constantSwell []wind.Swell

func (c constantSwell) At(time.Time) ([]wind.Swell, error) { return c, nil }

// TestOffshoreWind: the shore lies south, so a southerly blows offshore.
func TestOffshoreWind(t *testing.T) {
	for from, want := range map[float64]float64{180: 9, 0: -9, 270: 0} {
		w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, from)), coach())
		m, err := w.Moment(5000, at(0.5))
		if err != nil {
			t.Fatal(err)
		}
		if !near(m.Offshore, want, 0.05) {
			t.Errorf("wind from %v: offshore %v, want %v", from, m.Offshore, want)
		}
		if want := math.Abs(from - 270); !near(m.OffStern, math.Min(want, 90), 0.1) {
			t.Errorf("wind from %v: %v off the stern", from, m.OffStern)
		}
	}
}

// TestDeparturesOutsideThePreparedTime are errors, as are places off the run.
func TestDeparturesOutsideThePreparedTime(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	for _, h := range []float64{-0.1, 1.1, 1e4} {
		if _, err := w.Appraise(at(h)); err == nil {
			t.Errorf("departure at %v h is appraised", h)
		}
		if _, err := w.Timeline(at(h)); err == nil {
			t.Errorf("departure at %v h has a timeline", h)
		}
	}
	for _, x := range []float64{-1, 1e5, math.NaN(), math.Inf(1)} {
		if _, err := w.Moment(x, at(0)); err == nil {
			t.Errorf("there is a moment at %v m", x)
		}
		if _, err := w.WaysOut(x, at(0), route.Standing(1.8)); err == nil {
			t.Errorf("there are ways out at %v m", x)
		}
	}
}

// TestTimelineIsTheWalk: the legs of the timeline join, and end at the
// arrival of the appraisal.
func TestTimelineIsTheWalk(t *testing.T) {
	run := eastward(t)
	run.Points = []route.Point{run.Points[0], route.Direct(run.Points[0], 90, 4000).To, run.Points[1]}
	run.Depths = []route.Value{Known(20), Known(8)}
	w := prepare(t, run, fairDay(t, steadyWind(t, 9, 270)), coach())
	a := appraise(t, w, 0.25)
	legs, err := w.Timeline(a.Depart)
	if err != nil || len(legs) != 2 {
		t.Fatalf("%d legs, %v", len(legs), err)
	}
	if !legs[0].Enter.Equal(a.Depart) || !legs[0].Leave.Equal(legs[1].Enter) || !legs[1].Leave.Equal(a.Arrival) {
		t.Errorf("legs %v..%v, %v..%v; appraisal %v..%v", legs[0].Enter, legs[0].Leave, legs[1].Enter, legs[1].Leave, a.Depart, a.Arrival)
	}
	if !near(legs[0].Middle.Depth, 21, 1e-9) || !near(legs[1].Middle.Depth, 9, 1e-9) {
		t.Errorf("depths %v and %v", legs[0].Middle.Depth, legs[1].Middle.Depth)
	}
}

// TestWaysOutInASteadyWind: from the middle both exits are open; the one
// upwind takes longer.
func TestWaysOutInASteadyWind(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 5, 270)), coach())
	outs, err := w.WaysOut(5000, at(1), w.Postures()[0])
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range outs {
		if o.State != route.Landable {
			t.Errorf("%s: %v %v", o.Exit.Name, o.State, o.Why)
		}
	}
	if !(outs[0].Seconds > outs[1].Seconds) {
		t.Errorf("upwind %v s, downwind %v s", outs[0].Seconds, outs[1].Seconds)
	}
}

// TestPrepareRefuses: runs, paddlers and options that cannot be used are
// errors that say so.
func TestPrepareRefuses(t *testing.T) {
	day := fairDay(t, steadyWind(t, 9, 270))
	cases := map[string]func(*route.Run, *Day, *Paddler, *Options){
		"one point":       func(r *route.Run, _ *Day, _ *Paddler, _ *Options) { r.Points = r.Points[:1] },
		"foil":            func(_ *route.Run, _ *Day, p *Paddler, _ *Options) { p.Foil = true },
		"cruise":          func(_ *route.Run, _ *Day, p *Paddler, _ *Options) { p.Cruise = Known(50) },
		"limit NaN":       func(_ *route.Run, _ *Day, p *Paddler, _ *Options) { p.Limits[LeastWind] = Ask(math.NaN()) },
		"limit negative":  func(_ *route.Run, _ *Day, p *Paddler, _ *Options) { p.Limits[GreatestSea] = Ask(-1) },
		"step":            func(_ *route.Run, _ *Day, _ *Paddler, o *Options) { o.Step = math.NaN() },
		"to before from":  func(_ *route.Run, _ *Day, _ *Paddler, o *Options) { o.To = at(-1) },
		"a month of days": func(_ *route.Run, _ *Day, _ *Paddler, o *Options) { o.To = at(31 * 24) },
		"empty wind":      func(_ *route.Run, d *Day, _ *Paddler, _ *Options) { d.Wind = []Anemometer{{}} },
	}
	for name, change := range cases {
		run, d, p, o := eastward(t), day, coach(), Options{From: at(0), To: at(1)}
		change(&run, &d, &p, &o)
		if w, err := Prepare(run, d, p, o); err == nil || w != nil {
			t.Errorf("%s: prepared, error %v", name, err)
		}
	}
}

var _ HeightSource = (*tide.Table)(nil)
var _ StreamSource = (*tide.ClockStreams)(nil)
var _ SwellSource = wind.Swells{}

// TestBrokenAndUnknown: the two lists are the findings of those states.
func TestBrokenAndUnknown(t *testing.T) {
	p, d := coach(), fairDay(t, steadyWind(t, 9, 270))
	p.Limits[GreatestWind], d.Warning = Ask(5), Warning{}
	a := appraise(t, prepare(t, eastward(t), d, p), 0)
	if b := a.Broken(); len(b) != 1 || b[0].Rule != GreatestWind {
		t.Errorf("broken: %v", b)
	}
	if u := a.Unknown(); len(u) != 1 || u[0].Rule != NoWarning {
		t.Errorf("unknown: %v", u)
	}
	if a.State != Broken || a.Margin == a.Margin {
		t.Errorf("state %v, margin %v", a.State, a.Margin)
	}
}

// TestSwellSpeed composes the phase speed on the current by hand.
func TestSwellSpeed(t *testing.T) {
	d := fairDay(t, steadyWind(t, 9, 270))
	d.Streams = []StreamGauge{{Stream: constantStream{East: 0.5}}}
	w := prepare(t, eastward(t), d, coach())
	m, err := w.Moment(5000, at(0.5))
	if err != nil {
		t.Fatal(err)
	}
	got, want := w.SwellSpeed(m, wind.Swell{Hs: 1, Tp: 9, From: 270}), wave.OnCurrent(9, 21, 0.5).PhaseSpeed
	if !near(got, want, 1e-3) { // the run is a geodesic: due east to a hundredth of a degree
		t.Errorf("%v, by hand %v", got, want)
	}
}

// TestLightAndLength: the light is that of the finish, the length that of the
// legs.
func TestLightAndLength(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	run := w.Run()
	dawn, dusk := w.Light(at(0))
	day, err := route.Daylight(run.Points[1], morning)
	if err != nil {
		t.Fatal(err)
	}
	for _, d := range []time.Duration{dawn.Sub(day.CivilDawn.Time), dusk.Sub(day.CivilDusk.Time)} {
		if !near(d.Seconds(), 0, 1) {
			t.Errorf("light from %v to %v, almanac %v to %v", dawn, dusk, day.CivilDawn.Time, day.CivilDusk.Time)
		}
	}
	if !near(w.Length(), run.Length(), 1e-6) || !near(w.Length(), 10000, 1e-3) {
		t.Errorf("length %v", w.Length())
	}
	a := appraise(t, w, 0)
	for _, f := range a.Findings {
		if f.Rule == LeastDaylight && !near(f.Value, day.CivilDusk.Time.Sub(a.Late).Seconds(), 1) {
			t.Errorf("light left %v", f.Value)
		}
	}
}
