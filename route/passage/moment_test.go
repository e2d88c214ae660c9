package passage

import (
	"math"
	"strings"
	"testing"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wave"
	"followingsea.example/wind"
)

func momentOf(t testing.TB, w *Water, along, hours float64) Moment {
	t.Helper()
	m, err := w.Moment(along, at(hours))
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func findingOf(t testing.TB, a Appraisal, r Rule) Finding {
	t.Helper()
	for _, f := range a.Findings {
		if f.Rule == r {
			return f
		}
	}
	t.Fatalf("no finding of %v", r)
	return Finding{}
}

// cliffed is the eastward run with a cliff all along, so far to its south.
func cliffed(t testing.TB, off float64, shore route.SteepShore) route.Run {
	run := eastward(t)
	for _, along := range []float64{-1000, 2000, 5000, 8000, 11000} {
		shore.Line = append(shore.Line, route.Direct(route.Direct(run.Points[0], 90, along).To, 180, off).To)
	}
	run.Steep = []route.SteepShore{shore}
	return run
}

// TestWavesThrownBack: a swell that runs against a cliff is counted twice as
// energy, within a length of the cliff as heights; one that runs away from it
// and a cliff out of reach add nothing.
func TestWavesThrownBack(t *testing.T) {
	calm := windOf(t, func(float64) (float64, float64) { return 0.5, 0 })
	for _, c := range []struct {
		name  string
		off   float64
		shore route.SteepShore
		from  float64
		want  func(hs float64) float64
	}{
		{"300 m off a cliff", 300, route.SteepShore{Kind: "cliff"}, 0, func(h float64) float64 { return wave.ReflectedSea(h, 1) }},
		{"300 m off boulders", 300, route.SteepShore{Kind: "boulders"}, 0, func(h float64) float64 { return wave.ReflectedSea(h, 0.6) }},
		{"30 m off a wall", 30, route.SteepShore{Reflects: Known(0.8)}, 0, func(h float64) float64 { m, _ := wave.ReflectedEnvelope(h, 0.8); return m }},
		{"600 m off", 600, route.SteepShore{Kind: "cliff"}, 0, func(h float64) float64 { return h }},
		{"away from it", 300, route.SteepShore{Kind: "cliff"}, 180, func(h float64) float64 { return h }},
	} {
		d := fairDay(t, calm)
		d.Swell = constantSwell{{Hs: 1, Tp: 7, From: c.from}}
		p := coach()
		p.Limits[GreatestSea] = Ask(1.2)
		w := prepare(t, cliffed(t, c.off, c.shore), d, p)
		m := momentOf(t, w, 5000, 0.5)
		// The little wind sea runs the same way as the swell or from the north.
		if want := c.want(1); !near(m.TotalHs, want, 0.01) {
			t.Errorf("%s: %v m, want %v", c.name, m.TotalHs, want)
		}
		a := appraise(t, w, 0)
		if f := findingOf(t, a, GreatestSea); (f.State == Broken) != (c.want(1) > 1.2) {
			t.Errorf("%s: %v", c.name, f)
		} else if said := strings.Contains(f.Why, "thrown back"); said != (c.want(1) > 1.01) {
			t.Errorf("%s: why %q", c.name, f.Why)
		}
	}
}

// TestSwellOverABar composes shoaling and breaking over two metres of water by
// hand.
func TestSwellOverABar(t *testing.T) {
	d := fairDay(t, windOf(t, func(float64) (float64, float64) { return 0, 0 }))
	d.Swell = constantSwell{{Hs: 0.9, Tp: 11, From: 270}}
	run := eastward(t)
	run.Depths = []route.Value{Known(1)} // and 1 m of tide
	w := prepare(t, run, d, coach())
	m := momentOf(t, w, 5000, 0.5)
	shoaled, breaks := wave.Shoal(0.9, 11, math.Inf(1), 2), wave.GodaSignificant.Height(2, 11, 0)
	if !near(m.SurfHs, shoaled, 1e-9) || !near(m.BreakHs, breaks, 1e-9) || !near(m.TotalHs, math.Max(0.9, math.Min(shoaled, breaks)), 1e-9) {
		t.Errorf("surf %v, breaks at %v, total %v; by hand %v and %v", m.SurfHs, m.BreakHs, m.TotalHs, shoaled, breaks)
	}
	if !(m.SurfHs > m.TotalHs && m.TotalHs > m.SwellHs) {
		t.Errorf("swell %v, total %v, surf %v", m.SwellHs, m.TotalHs, m.SurfHs)
	}
	if !strings.Contains(strings.Join(m.SeaWords, "; "), "begins to break") {
		t.Errorf("words: %q", m.SeaWords)
	}
}

// TestSeaAgainstTheStream: a sea that runs against a stream is higher and
// steeper, by wave action; on an unknown stream neither is known.
func TestSeaAgainstTheStream(t *testing.T) {
	d := fairDay(t, steadyWind(t, 9, 270))
	slack := momentOf(t, prepare(t, eastward(t), d, coach()), 5000, 0.5)
	d.Streams = []StreamGauge{{Stream: constantStream{East: -0.5}}}
	m := momentOf(t, prepare(t, eastward(t), d, coach()), 5000, 0.5)
	on := wave.OnCurrent(slack.Sea.Tp, slack.Depth, -0.5)
	if !near(m.Steepness, slack.Steepness*on.SteepnessRatio, 1e-4) || !near(m.TotalHs, slack.TotalHs*on.HeightRatio, 1e-3) {
		t.Errorf("steepness %v and height %v, slack %v and %v, ratios %v and %v", m.Steepness, m.TotalHs, slack.Steepness, slack.TotalHs, on.SteepnessRatio, on.HeightRatio)
	}
	d.Streams = []StreamGauge{{Stream: constantStream{East: -3}}}
	if m = momentOf(t, prepare(t, eastward(t), d, coach()), 5000, 0.5); !m.Blocked || !near(m.Steepness, 0.142, 0) || !(m.TotalHs >= slack.TotalHs) {
		t.Errorf("against 3 m/s: blocked %v, steepness %v, height %v", m.Blocked, m.Steepness, m.TotalHs)
	}
	d.Streams = nil
	a := appraise(t, prepare(t, eastward(t), d, coach()), 0)
	for _, r := range []Rule{GreatestSea, GreatestSteepness, GreatestBreaking} {
		if f := findingOf(t, a, r); f.State != Unknown || !strings.Contains(f.Why, "stream") {
			t.Errorf("%v", f)
		}
	}
}

func tideOf(t testing.TB, hours ...float64) *tide.Table {
	t.Helper()
	var turns []tide.Turn
	for i, h := range hours {
		turns = append(turns, tide.Turn{Time: at(h), Height: 1 + 2*float64(1-i%2), High: i%2 == 0})
	}
	x, err := tide.NewTable(turns, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// TestTideOfUnusualDuration: in a fall of 6 h limits on depth use the height of
// the curve, in one of 9 h the low end of its spread, after the last turn
// nothing is known.
func TestTideOfUnusualDuration(t *testing.T) {
	for _, c := range []struct {
		name  string
		table *tide.Table
		low   bool
	}{
		{"6 h", tideOf(t, -8, -2, 4, 10, 16, 22), false}, {"9 h", tideOf(t, -8, 1, 10, 19, 28), true},
	} {
		d := fairDay(t, steadyWind(t, 9, 270))
		d.Tide = c.table
		w := prepare(t, eastward(t), d, coach())
		e, m := c.table.Estimate(at(0.5)), momentOf(t, w, 5000, 0.5)
		want := 20 + e.Height
		if c.low {
			want -= e.Spread
		}
		if !near(m.Depth, 20+e.Height, 1e-9) || !near(m.LowDepth, want, 1e-9) || m.TideSpread != e.Spread || (e.Remark == tide.Ordinary) == c.low {
			t.Errorf("%s: depth %v and %v, by hand %v; %v", c.name, m.Depth, m.LowDepth, want, e.Remark)
		}
		f := findingOf(t, appraise(t, w, 0), LeastDepth)
		low, _ := w.Moment(f.Along, f.Time)
		if !near(f.Value, low.LowDepth, 0.02) || strings.Contains(f.Why, "low end") != c.low {
			t.Errorf("%s: %v, moment %v", c.name, f, low.LowDepth)
		}
	}
	d := fairDay(t, steadyWind(t, 9, 270))
	d.Tide = tideOf(t, -13, -7, -1, 0.2)
	for _, r := range []Rule{LeastDepth, GreatestBreaking, GreatestSea} {
		if f := findingOf(t, appraise(t, prepare(t, eastward(t), d, coach()), 0), r); f.State == Met {
			t.Errorf("after the last turn: %v", f)
		}
	}
}

// TestExposureWidensTheCases: a leg with less wind is judged on its own wind;
// the slow case is that of the low end and the fast case that of the high end.
func TestExposureWidensTheCases(t *testing.T) {
	d := fairDay(t, steadyWind(t, 9, 270))
	open := momentOf(t, prepare(t, eastward(t), d, coach()), 5000, 0.5)
	of := func(f route.WindFactor) Moment {
		run := eastward(t)
		run.Exposure = []route.WindFactor{f}
		return momentOf(t, prepare(t, run, d, coach()), 5000, 0.5)
	}
	m, low, high := of(route.WindFactor{Low: 0.5, Mid: 0.8, High: 1.1}), of(route.WindFactor{Low: 0.5, Mid: 0.5, High: 0.5}), of(route.WindFactor{Low: 1.1, Mid: 1.1, High: 1.1})
	if !near(m.Wind.Speed, 7.2, 1e-9) || !near(m.WindLow.Speed, 4.5, 1e-9) || !near(m.WindHigh.Speed, 9.9, 1e-9) {
		t.Errorf("wind %v, %v, %v", m.WindLow, m.Wind, m.WindHigh)
	}
	if m.Slow != low.Slow || m.Fast != high.Fast || m.Sea.Hs != open.Sea.Hs {
		t.Errorf("slow %v, fast %v; at the ends %v and %v", m.Slow, m.Fast, low.Slow, high.Fast)
	}
	if one := of(route.WindFactor{Low: 1, Mid: 1, High: 1}); one.Speed != open.Speed || one.Slow != open.Slow || one.Fast != open.Fast {
		t.Errorf("a factor of one: %v %v %v, open %v %v %v", one.Slow, one.Speed, one.Fast, open.Slow, open.Speed, open.Fast)
	}
}

// TestBandOfTheSea: the band holds the sea, and is that of wind.Band for the
// fetch of the sea; a limit on the sea says it.
func TestBandOfTheSea(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 180)), coach()) // off a shore 6 km away
	m := momentOf(t, w, 5000, 0.5)
	c := wind.Conditions{Speed: 9, Fetch: m.Sea.Fetch, Duration: math.Inf(1), MeanDepth: math.Inf(1)}
	b, own := wind.Band(c), wind.Grow(wind.Bretschneider, c).Hs
	if !near(m.SeaLow, m.Sea.Hs*b.LowHs/own, 1e-9) || !near(m.SeaHigh, m.Sea.Hs*b.HighHs/own, 1e-9) || !(m.SeaLow <= m.Sea.Hs && m.Sea.Hs <= m.SeaHigh) {
		t.Errorf("%v in %v to %v, by hand %v to %v", m.Sea.Hs, m.SeaLow, m.SeaHigh, b.LowHs, b.HighHs)
	}
	if f := findingOf(t, appraise(t, w, 0), GreatestSea); !strings.Contains(f.Why, "between growth laws") {
		t.Errorf("%v", f)
	}
	if m.WaterTemp != 14 || m.AirTemp != 12 {
		t.Errorf("water %v, air %v", m.WaterTemp, m.AirTemp)
	}
}

// TestWordsOfAWarning: what was read is said in the finding.
func TestWordsOfAWarning(t *testing.T) {
	d := fairDay(t, steadyWind(t, 9, 270))
	if f := findingOf(t, appraise(t, prepare(t, eastward(t), d, coach()), 0), NoWarning); f.State != Met || !strings.Contains(f.Why, "official forecast") {
		t.Errorf("%v", f)
	}
	d.Warning = WarningInForce("gale warning, sea area Skarn")
	if f := findingOf(t, appraise(t, prepare(t, eastward(t), d, coach()), 0), NoWarning); f.State != Broken || f.Why != "in force: gale warning, sea area Skarn" {
		t.Errorf("%v", f)
	}
}

var _ Estimator = (*tide.Table)(nil)
