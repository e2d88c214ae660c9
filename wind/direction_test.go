package wind_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/wind"
)

// apart is the distance of two bearings, 0 to 180.
func apart(a, b float64) float64 { return math.Abs(math.Mod(b-a+900, 360) - 180) }

func drawDirections(t *rapid.T) []float64 {
	return rapid.SliceOfN(rapid.Float64Range(0, 360), 1, 20).Draw(t, "from")
}

// Turning the compass turns the mean and leaves every spread; a mirror mirrors.
func TestDirectionStatisticsTurnWithTheCompass(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := drawDirections(t)
		by := rapid.Float64Range(-720, 720).Draw(t, "by")
		r := wind.ResultantLength(from)
		if r < 1e-3 {
			t.Skip("no direction to speak of")
		}
		var turned, mirrored []float64
		for _, d := range from {
			turned = append(turned, d+by)
			mirrored = append(mirrored, -d)
		}
		m := wind.MeanDirection(from)
		if !near(apart(wind.MeanDirection(turned), math.Mod(m+by+720, 360)), 0, 1e-6) || !near(apart(wind.MeanDirection(mirrored), 360-m), 0, 1e-6) {
			t.Fatalf("mean %v turned %v mirrored %v", m, wind.MeanDirection(turned), wind.MeanDirection(mirrored))
		}
		for name, f := range map[string]func([]float64) float64{"R": wind.ResultantLength, "circular": wind.CircularDeviation, "angular": wind.AngularDeviation, "Yamartino": wind.Yamartino} {
			if a, b := f(from), f(turned); !near(a, b, 1e-5*(1+a)) {
				t.Fatalf("%s: %v turned %v", name, a, b)
			}
		}
		sm, sd := wind.ScalarDirection(from)
		tm, td := wind.ScalarDirection(turned)
		if !near(sd, td, 1e-6*(1+sd)) || !near(apart(tm, math.Mod(sm+by+720, 360)), 0, 1e-6) {
			t.Fatalf("Mitsuta: %v %v turned %v %v", sm, sd, tm, td)
		}
	})
	for name, f := range map[string]func([]float64) float64{"mean": wind.MeanDirection, "R": wind.ResultantLength, "circular": wind.CircularDeviation, "angular": wind.AngularDeviation, "Yamartino": wind.Yamartino} {
		for _, bad := range [][]float64{nil, {math.NaN()}, {10, math.Inf(1)}} {
			if v := f(bad); v == v {
				t.Errorf("%s(%v) = %v", name, bad, v)
			}
		}
	}
	if v := wind.MeanDirection([]float64{0, 180}); v == v {
		t.Errorf("opposite directions have the mean %v", v)
	}
}

// For a narrow spread every measure is the ordinary standard deviation.
func TestDeviationsMeetForANarrowSpread(t *testing.T) {
	from := []float64{358, 359, 0, 1, 2, 359.5, 0.5}
	var sq float64
	for _, d := range from {
		x := math.Mod(d+180, 360) - 180
		sq += x * x
	}
	sd := math.Sqrt(sq / float64(len(from)))
	_, scalar := wind.ScalarDirection(from)
	for name, got := range map[string]float64{"circular": wind.CircularDeviation(from), "angular": wind.AngularDeviation(from), "Yamartino": wind.Yamartino(from), "scalar": scalar} {
		if !near(got, sd, 2e-3*sd) {
			t.Errorf("%s: %v, want %v", name, got, sd)
		}
	}
	one := []float64{77, 77, 77}
	if !near(wind.Yamartino(one), 0, 1e-5) || !near(wind.CircularDeviation(one), 0, 1e-5) || !near(wind.AngularDeviation(one), 0, 1e-5) || !near(wind.ResultantLength(one), 1, 1e-15) {
		t.Error("one direction has a spread")
	}
}

func TestScalarDirectionFollowsTheWindRound(t *testing.T) {
	var from []float64
	for d := 0.0; d <= 720; d += 30 {
		from = append(from, math.Mod(d, 360))
	}
	mean, sd := wind.ScalarDirection(from)
	// A uniform ramp of two circles: mean 360, deviation 720/√12 (discrete).
	if !near(apart(mean, 0), 0, 1e-9) || !near(sd, 30*math.Sqrt((25*25-1)/12.0), 1e-9) {
		t.Errorf("%v %v", mean, sd)
	}
	if m, d := wind.ScalarDirection([]float64{10, math.NaN()}); m == m || d == d {
		t.Error(m, d)
	}
}

func TestCombineDeviations(t *testing.T) {
	if got := wind.CombineDeviations([]float64{10, 10, 10, 10}); got != 10 {
		t.Error(got)
	}
	for _, bad := range [][]float64{nil, {-1}, {math.NaN()}, {math.Inf(1)}} {
		if v := wind.CombineDeviations(bad); v == v {
			t.Errorf("%v gives %v", bad, v)
		}
	}
}

func TestAverageOfWinds(t *testing.T) {
	// By hand: 3 from north, 4 from east, and a calm.
	m := wind.Average([]wind.Wind{{Speed: 3, From: 0}, {Speed: 4, Gust: 7, From: 90}, wind.Calm()})
	if m.N != 3 || m.Calms != 1 || !near(m.Speed, 7.0/3, 1e-15) || !near(m.Vector.East, -4.0/3, 1e-15) || !near(m.Vector.North, -1, 1e-15) ||
		!near(m.From, 45, 1e-9) || !near(m.R, math.Sqrt2/2, 1e-12) || !near(m.Steadiness, 5.0/7, 1e-12) || m.Gust != 7 || m.Lowest != 0 || m.Highest != 4 || m.Covered != 1 {
		t.Errorf("%+v", m)
	}
	calm := wind.Average([]wind.Wind{wind.Calm(), wind.Calm()})
	if calm.Speed != 0 || calm.From == calm.From || calm.Steadiness == calm.Steadiness {
		t.Errorf("a calm has a direction: %+v", calm)
	}
	for _, bad := range [][]wind.Wind{nil, {{Speed: math.NaN()}}, {{Speed: 5, From: math.NaN()}}, {{Speed: -1}}} {
		if m := wind.Average(bad); m.Speed == m.Speed || m.From == m.From || m.Vector.East == m.Vector.East {
			t.Errorf("%v: %+v", bad, m)
		}
	}
}

func TestVectorMeanIsNeverFasterThanTheScalar(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var ws []wind.Wind
		for range rapid.IntRange(1, 20).Draw(t, "n") {
			ws = append(ws, wind.Wind{Speed: rapid.Float64Range(0.01, 40).Draw(t, "speed"), From: rapid.Float64Range(0, 360).Draw(t, "from")})
		}
		m := wind.Average(ws)
		if !(m.Vector.Speed() <= m.Speed*(1+1e-12) && m.Steadiness >= 0 && m.Steadiness <= 1 && m.Lowest <= m.Speed*(1+1e-12) && m.Speed <= m.Highest*(1+1e-12)) {
			t.Fatalf("%+v", m)
		}
		// Twice as strong: twice the means, the same directions.
		for i := range ws {
			ws[i].Speed *= 2
		}
		d := wind.Average(ws)
		if !near(d.Speed, 2*m.Speed, 1e-9) || !near(d.Steadiness, m.Steadiness, 1e-9) || m.R > 1e-6 && !near(apart(d.From, m.From), 0, 1e-6) {
			t.Fatalf("%+v doubled %+v", m, d)
		}
	})
}

func TestTurns(t *testing.T) {
	for _, c := range []struct {
		a, b float64
		kind wind.TurnKind
		deg  float64
		word string
	}{
		{225, 270, wind.Veer, 45, "veer of 45°"}, {270, 225, wind.Back, -45, "back of 45°"}, {350, 10, wind.Veer, 20, "veer of 20°"},
		{10, 350, wind.Back, -20, "back of 20°"}, {90, 270, wind.Reversal, 180, "reversal"}, {270, 90, wind.Reversal, 180, "reversal"},
		{0, 360, wind.NoTurn, 0, "steady"},
	} {
		got := wind.TurnOf(wind.Wind{Speed: 5, From: c.a}, wind.Wind{Speed: 6, From: c.b})
		if got.Kind != c.kind || got.Degrees != c.deg || got.String() != c.word {
			t.Errorf("%v to %v: %v (%v)", c.a, c.b, got, got.Degrees)
		}
	}
	for _, w := range []wind.Wind{wind.Calm(), {Speed: math.NaN()}, {Speed: 5, From: math.NaN()}} {
		if got := wind.TurnOf(w, wind.Wind{Speed: 5, From: 10}); got.Kind != wind.Undefined || got.Degrees == got.Degrees {
			t.Errorf("%v turns by %v", w, got)
		}
	}
}

func drawWind(t *rapid.T, name string) wind.Wind {
	return wind.Wind{
		Speed: rapid.Float64Range(0.05, 40).Draw(t, name+" speed"),
		Gust:  math.NaN(),
		From:  rapid.Float64Range(0, 359.99).Draw(t, name+" from"),
	}
}

func TestRelativeAndTrueWindUndoEachOther(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := drawWind(t, "wind")
		v := wind.Velocity{East: rapid.Float64Range(-10, 10).Draw(t, "east"), North: rapid.Float64Range(-10, 10).Draw(t, "north")}
		back := wind.TrueWind(w.Relative(v), v)
		d := back.Velocity().Minus(w.Velocity())
		if !near(d.Speed(), 0, 1e-9) {
			t.Fatalf("%v came back as %v", w, back)
		}
	})
	// With the wind, at the wind's speed: a calm.
	w := wind.Wind{Speed: 5, Gust: 8, From: 270}
	if got := w.Relative(wind.Velocity{East: 5}); !got.IsCalm() || !near(got.Gust, 3, 1e-12) {
		t.Errorf("%v", got)
	}
	// A stream against the wind adds to it, and to the gust.
	if got := w.Relative(wind.Velocity{East: -1}); !near(got.Speed, 6, 1e-12) || !near(got.Gust, 9, 1e-12) {
		t.Errorf("%v", got)
	}
	// Outrunning the wind: what felt like a gust is now a lull.
	if got := w.Relative(wind.Velocity{East: 7}); !near(got.Speed, 2, 1e-12) || got.From != 90 || got.GustKnown() {
		t.Errorf("%v", got)
	}
	if got := w.Relative(wind.Velocity{}); got != w {
		t.Errorf("%v", got)
	}
	nan := math.NaN()
	for _, got := range []wind.Wind{w.Relative(wind.Velocity{East: nan}), wind.TrueWind(w, wind.Velocity{North: math.Inf(1)}), wind.Wind{Speed: nan}.Relative(wind.Velocity{}), wind.TrueWind(wind.Wind{Speed: 5, From: nan}, wind.Velocity{})} {
		if got.Speed == got.Speed {
			t.Errorf("%v", got)
		}
	}
}

func TestComponentsAreAProjection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := drawWind(t, "wind")
		course := rapid.Float64Range(-360, 720).Draw(t, "course")
		c := w.On(course)
		if !near(math.Hypot(c.Tail, c.FromRight), w.Speed, 1e-9*w.Speed) {
			t.Fatalf("%+v of %v", c, w)
		}
		s, k := math.Sincos(c.OffStern * math.Pi / 180)
		if !near(w.Speed*k, c.Tail, 1e-9*w.Speed) || !near(w.Speed*s, c.FromRight, 1e-9*w.Speed) {
			t.Fatalf("%+v: off stern %v", c, c.OffStern)
		}
		r := w.On(course + 180)
		if !near(r.Tail, -c.Tail, 1e-9*w.Speed) || !near(r.FromRight, -c.FromRight, 1e-9*w.Speed) {
			t.Fatalf("turned about: %+v against %+v", r, c)
		}
	})
	for _, c := range []struct{ from, course, tail, right, off float64 }{
		{0, 180, 1, 0, 0}, {0, 0, -1, 0, 180}, {90, 0, 0, 1, 90}, {270, 0, 0, -1, -90},
	} {
		got := wind.Wind{Speed: 1, From: c.from}.On(c.course)
		if got != (wind.Components{Tail: c.tail, FromRight: c.right, OffStern: c.off}) {
			t.Errorf("from %v on %v: %+v", c.from, c.course, got)
		}
	}
	if got := wind.Calm().On(20); got.Tail != 0 || got.FromRight != 0 || got.OffStern == got.OffStern {
		t.Errorf("%+v", got)
	}
	if got := (wind.Wind{Speed: 5, From: 10}).On(math.NaN()); got.Tail == got.Tail {
		t.Errorf("%+v", got)
	}
}

func TestVelocityArithmetic(t *testing.T) {
	a, b := wind.Velocity{East: 3, North: 4}, wind.Velocity{East: 1, North: -2}
	if a.Speed() != 5 || a.Add(b) != (wind.Velocity{East: 4, North: 2}) || a.Minus(b) != (wind.Velocity{East: 2, North: 6}) || a.Times(2) != (wind.Velocity{East: 6, North: 8}) {
		t.Error("arithmetic of vectors")
	}
	for _, v := range []wind.Velocity{{East: math.NaN()}, {North: math.Inf(1)}, {East: math.Inf(-1), North: math.NaN()}} {
		if v.Speed() == v.Speed() || v.Wind().Speed == v.Wind().Speed {
			t.Errorf("%v", v)
		}
	}
}

func TestGustOfALiteralIsUnknown(t *testing.T) {
	for _, c := range []struct {
		w    wind.Wind
		want bool
	}{
		{wind.Wind{Speed: 5, From: 10}, false}, {wind.Wind{Speed: 5, Gust: math.NaN(), From: 10}, false}, {wind.Wind{Speed: 5, Gust: 5, From: 10}, true},
		{wind.Wind{}, false}, {wind.Wind{Gust: 3}, true}, {wind.Wind{Speed: math.NaN(), Gust: 5}, false},
	} {
		if c.w.GustKnown() != c.want {
			t.Errorf("%+v", c.w)
		}
	}
	for w, want := range map[wind.Wind]string{
		{Speed: 12 * wind.Knot, Gust: 18 * wind.Knot, From: 225}: "12.0 kn from 225°, gusts 18.0 kn",
		{Speed: 5 * wind.Knot, From: 359.7}:                      "5.0 kn from 000°",
		{}:                                                       "calm", {Speed: -1}: "unknown",
	} {
		if w.String() != want {
			t.Errorf("%q, want %q", w.String(), want)
		}
	}
	if s := (wind.Wind{Speed: 5, From: math.NaN()}).String(); s != "unknown" {
		t.Error(s)
	}
}

func TestSurfaceDriftRunsDownwind(t *testing.T) {
	d := wind.SurfaceDrift(wind.Wind{Speed: 10, From: 270})
	if !near(d.Low.East, 0.2, 1e-12) || !near(d.Mid.East, 0.25, 1e-12) || !near(d.High.East, 0.3, 1e-12) || d.Mid.North != 0 {
		t.Errorf("%+v", d)
	}
	if d := wind.SurfaceDrift(wind.Calm()); d != (wind.Drift{}) {
		t.Errorf("%+v", d)
	}
	if d := wind.SurfaceDrift(wind.Wind{Speed: 5, From: math.NaN()}); d.Mid.East == d.Mid.East {
		t.Errorf("%+v", d)
	}
}

func TestExposure(t *testing.T) {
	w := wind.Wind{Speed: 10, Gust: 14, From: 200}
	lee, err := wind.NewExposure(0.4, 0.6, 0.8)
	if err != nil {
		t.Fatal(err)
	}
	e := lee.On(w)
	if !near(e.Low.Speed, 4, 1e-12) || !near(e.Mid.Speed, 6, 1e-12) || !near(e.High.Speed, 8, 1e-12) || e.Mid.Gust != 14 || e.Mid.From != 200 {
		t.Errorf("a lee leaves the gusts: %+v", e)
	}
	cape, _ := wind.NewExposure(1, 1.2, 1.5)
	if e := cape.On(w); !near(e.High.Speed, 15, 1e-12) || !near(e.High.Gust, 21, 1e-12) {
		t.Errorf("%+v", e)
	}
	if e := (wind.Exposure{}).On(w); e.Low != w || e.Mid != w || e.High != w {
		t.Errorf("the open is 1: %+v", e)
	}
	nan := math.NaN()
	for _, c := range [][3]float64{{0, 1, 1}, {1, 0.9, 1}, {1, 1, 0.9}, {1, 1, 4}, {nan, 1, 1}, {1, nan, 1}, {1, 1, nan}} {
		if e, err := wind.NewExposure(c[0], c[1], c[2]); err == nil || e != (wind.Exposure{}) {
			t.Errorf("%v: %v", c, e)
		}
		if e := (wind.Exposure{Low: c[0], Mid: c[1], High: c[2]}).On(w); e.Mid.Speed == e.Mid.Speed {
			t.Errorf("%v: %+v", c, e)
		}
	}
	if e := lee.On(wind.Wind{Speed: nan}); e.Mid.Speed == e.Mid.Speed {
		t.Errorf("%+v", e)
	}
}

func TestTemperatures(t *testing.T) {
	var none wind.Temperature
	if none.Known() || none.Celsius() == none.Celsius() || none.String() != "unknown" || !none.Equal(wind.Temperature{}) {
		t.Error("the zero temperature is not freezing point")
	}
	zero := wind.Celsius(0)
	if !zero.Known() || zero.Celsius() != 0 || zero.String() != "0.0 °C" || zero.Equal(none) {
		t.Error(zero)
	}
	for _, bad := range []float64{math.NaN(), 61, -91, math.Inf(1)} {
		if wind.Celsius(bad).Known() {
			t.Errorf("%v", bad)
		}
	}
	if d := (wind.Sample{Air: wind.Celsius(12), Water: wind.Celsius(15)}).AirMinusWater(); d != -3 {
		t.Error(d)
	}
	if d := (wind.Sample{Air: wind.Celsius(12)}).AirMinusWater(); d == d {
		t.Error(d)
	}
}
