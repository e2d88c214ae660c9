package passage

import (
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
	"followingsea.example/wind"
)

// A sea day is an invented day in a few numbers, each of which can grow worse.
type seaDay struct {
	speed, from   float64 // of the wind
	swell, period float64
	against       float64 // rate of a stream against the run, m/s
	tide          float64
	air, water    float64 // °C
	endurance     float64 // s
	warned        bool
}

func (s seaDay) appraise(t testing.TB, run route.Run, limits Limits) Appraisal {
	var samples []wind.Sample
	for h := -6; h <= 6; h++ {
		w, err := wind.Gusting(s.speed, 1.3*s.speed, s.from)
		if err != nil {
			t.Fatal(err)
		}
		samples = append(samples, wind.Sample{Time: at(float64(h)), Wind: w, Air: wind.Celsius(s.air), Water: wind.Celsius(s.water)})
	}
	series, err := wind.NewSeries(samples, 0)
	if err != nil {
		t.Fatal(err)
	}
	d := fairDay(t, series)
	d.Swell, d.Tide = constantSwell{{Hs: s.swell, Tp: s.period, From: 250}}, constantHeight(s.tide)
	d.Streams = []StreamGauge{{Stream: constantStream{East: -s.against}}}
	if s.warned {
		d.Warning = WarningInForce("gale")
	}
	p := coach()
	p.Endurance, p.Limits = Known(s.endurance), limits
	w, err := Prepare(run, d, p, Options{From: at(0), To: at(0), Cell: 1000, Step: 3600, Station: 10000, LongFetch: 20000, Before: 3600, After: 600, ExitStep: 6 * 3600})
	if err != nil {
		t.Fatal(err)
	}
	return appraise(t, w, 0)
}

// TestWorseNeverImproves: whatever the day and the limit, an input that grows
// worse in the sense of the rule never makes a limit met that was not, and
// never widens the margin to it. A least limit runs the other way.
func TestWorseNeverImproves(outer *testing.T) {
	run := eastward(outer)
	run.Points[1] = route.Direct(run.Points[0], 90, 4000).To
	run.Depths = []route.Value{Known(4)}
	run.Exits = nil
	worse := []struct {
		rule Rule
		grow func(*seaDay, float64) // by a share from 0 to 1
	}{
		{GreatestWind, func(s *seaDay, x float64) { s.speed *= 1 + x }},
		{LeastWind, func(s *seaDay, x float64) { s.speed *= 1 - x/2 }},
		{GreatestGust, func(s *seaDay, x float64) { s.speed *= 1 + x }},
		{GreatestOffStern, func(s *seaDay, x float64) { s.from -= 90 * x }},
		{GreatestSea, func(s *seaDay, x float64) { s.swell *= 1 + x }},
		{LeastSea, func(s *seaDay, x float64) { s.speed *= 1 - x/2 }},
		{GreatestSwell, func(s *seaDay, x float64) { s.swell *= 1 + x }},
		{GreatestSteepness, func(s *seaDay, x float64) { s.against += x }},
		{GreatestStream, func(s *seaDay, x float64) { s.against += x }},
		{GreatestAgainst, func(s *seaDay, x float64) { s.against += x }},
		{LeastDepth, func(s *seaDay, x float64) { s.tide -= 4 * x }},
		{GreatestBreaking, func(s *seaDay, x float64) { s.tide -= 4 * x }},
		{GreatestBreaking, func(s *seaDay, x float64) { s.swell *= 1 + x }},
		{GreatestDuration, func(s *seaDay, x float64) { s.against += x }},
		{LeastReserve, func(s *seaDay, x float64) { s.endurance *= 1 - x }},
		{LeastReserve, func(s *seaDay, x float64) { s.against += x }},
		{LeastDaylight, func(s *seaDay, x float64) { s.against += x }},
		{LeastWaterTemperature, func(s *seaDay, x float64) { s.water -= 10 * x }},
		{LeastWindChill, func(s *seaDay, x float64) { s.air -= 20 * x }},
		{NoWarning, func(s *seaDay, x float64) { s.warned = s.warned || x > 0.5 }},
	}
	rapid.Check(outer, func(t *rapid.T) {
		f := func(name string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
		one := worse[rapid.IntRange(0, len(worse)-1).Draw(t, "which")]
		s := seaDay{speed: f("speed", 3, 14), from: f("from", 240, 270), swell: f("swell", 0.1, 2), period: f("period", 5, 13),
			against: f("against", 0, 0.6), tide: f("tide", -1, 3), air: f("air", -5, 9), water: f("water", 4, 20), endurance: f("endurance", 3600, 5*3600),
			warned: rapid.Bool().Draw(t, "warned")}
		// The limit lies where the value of the day may be on either side of it.
		limits := Limits{}
		limits[one.rule] = Ask(s.limitNear(one.rule, f("limit", 0.7, 1.3)))
		after := s
		one.grow(&after, f("worse", 0, 1))
		a, b := s.appraise(outer, run, limits).Findings[0], after.appraise(outer, run, limits).Findings[0]
		if b.State == Met && a.State != Met {
			t.Fatalf("%v was %v", b, a)
		}
		if !(b.Margin <= a.Margin+1e-9) && a.Margin == a.Margin && b.Margin == b.Margin {
			t.Fatalf("%v: margin %v was %v", b, b.Margin, a.Margin)
		}
	})
}

// limitNear is a limit near the value that a middling day has.
func (s seaDay) limitNear(r Rule, x float64) float64 {
	switch r {
	case GreatestWind, LeastWind:
		return s.speed * x
	case GreatestGust:
		return 1.3 * s.speed * x
	case GreatestOffStern:
		return 40 * x
	case GreatestSea, GreatestSwell:
		return s.swell * x
	case LeastSea:
		return 0.5 * x
	case GreatestSteepness:
		return 0.06 * x
	case GreatestStream, GreatestAgainst:
		return (s.against + 0.1) * x
	case LeastDepth:
		return (4 + s.tide) * x
	case GreatestBreaking:
		return s.swell / (4 + s.tide) * x
	case GreatestDuration:
		return 2200 * x
	case LeastReserve:
		return 3600 * x
	case LeastDaylight:
		return 10 * 3600 * x
	case LeastWaterTemperature, LeastWindChill:
		return 8 * x
	}
	return 0
}
