package wave_test

import (
	"fmt"
	"math"
	"testing"

	"followingsea.example/wave"
	"pgregory.net/rapid"
)

func ExampleWater_Break() {
	// The manual's example: 2 m and 10 s in deep water, on a beach of 1:100.
	b := wave.Water{Gravity: 9.81}.Break(2, 10, 1.0/100)
	fmt.Printf("%.1f m in %.1f m of water, %v\n", b.Height, b.Depth, b.Type)
	// Output: 2.7 m in 3.2 m of water, spilling
}

func ExampleReflectionLaw_Coefficient() {
	// The manual's example: a rubble breakwater of 1:1.75, waves of 1.70 m and 6 s.
	w := wave.Water{Gravity: 9.81}
	xi := w.SurfSimilarity(1/1.75, 1.70, 6)
	k := wave.RubbleSlope.Coefficient(xi)
	fmt.Printf("ξ %.2f, K %.2f, reflected %.2f m\n", xi, k, k*1.70)
	// Output: ξ 3.29, K 0.37, reflected 0.63 m
}

func ExampleWave_ReflectedHeight() {
	// Half a metre of 5 s swell off a cliff in 10 m.
	w := wave.Solve(5, 10)
	for _, x := range []float64{0, w.Length / 4, w.Length / 2} {
		fmt.Printf("%4.1f m off: %.2f m\n", x, w.ReflectedHeight(0.5, 0.9, x, 0))
	}
	// Output:
	//  0.0 m off: 0.95 m
	//  9.1 m off: 0.05 m
	// 18.3 m off: 0.95 m
}

func TestBreakingLimits(t *testing.T) {
	near(t, "McCowan", wave.McCowanHeight(2), 1.56, 1e-15)
	near(t, "Weggel on a flat bottom", wave.WeggelIndex(2, 10, 0), 0.78, 1e-15)
	near(t, "Weggel on a flat bottom", wave.WeggelHeight(2, 10, 0), 1.56, 1e-14)
	rel(t, "Miche, deep", wave.MicheHeight(50, inf), 7.1, 1e-15)
	rel(t, "Miche, shallow", wave.MicheHeight(1e6, 1), 0.142*2*math.Pi, 1e-9)
	rel(t, "sea, half of Miche's", wave.Solve(8, inf).LimitOfSea(), 0.07*wave.Length(8, inf), 1e-15)
	rel(t, "Goda in shallow water", wave.Goda2010.Height(0.01, 20, 0), 0.17*1.5*math.Pi*0.01, 1e-3)
	rel(t, "Goda in deep water", wave.Goda2010.Height(1e6, 8, 0.02), 0.17*wave.Length(8, inf), 1e-12)
	near(t, "Goda, significant", wave.GodaSignificant.Height(3, 10, 0.02)/wave.Goda2010.Height(3, 10, 0.02), 0.12/0.17, 1e-14)
	if !(wave.Goda2010.Height(3, 10, 0.05) < wave.Goda1970.Height(3, 10, 0.05)) {
		t.Error("the revision does not reduce the effect of the slope")
	}
	rel(t, "Goda with gravity", wave.Goda2010.HeightIn(wave.Water{Gravity: 9.80665}, 3, 10, 0.05), wave.Goda2010.Height(3, 10, 0.05), 1e-15)
	w := wave.Water{}
	rel(t, "Komar and Gaughan, two roundings", w.KomarGaughan(2, 10)/w.KomarGaughanCEM(2, 10), 0.39*math.Pow(2*math.Pi, 0.2)/0.56, 1e-12)
	rel(t, "Munk", w.MunkHeight(2, 10), 2/(3.3*math.Cbrt(2/wave.Length(10, inf))), 1e-14)
	rel(t, "Singamsetti and Wind", w.SingamsettiWind(2, 10, 0.01), 0.575*math.Pow(0.01, 0.031)*math.Pow(2/wave.Length(10, inf), -0.254)*2, 1e-14)
	rel(t, "Kamphuis, deep", w.KamphuisHeight(1e4, 8, 0), 0.095*wave.Length(8, inf), 1e-12)
	near(t, "Kamphuis, flat", wave.KamphuisIndex(0), 0.56, 1e-15)
	near(t, "nothing breaks at no height", w.KomarGaughan(0, 10)+w.MunkHeight(0, 10)+w.KomarGaughanCEM(0, 10)+w.SingamsettiWind(0, 10, 0.1), 0, 0)
	near(t, "similarity of a wall", wave.SurfSimilarity(1, 1, math.Sqrt(2*math.Pi/wave.StandardGravity)), 1, 1e-14)
	near(t, "as a wave has it", wave.Solve(8, 5).BreakingHeight(), wave.MicheHeight(wave.Length(8, 5), 5), 0)
	near(t, "on a current", wave.OnCurrent(8, 5, 0).BreakingHeight(), wave.MicheHeight(wave.Length(8, 5), 5), 1e-12)
}

// Weggel's law for the height and for the index are the same law.
func TestPropertyWeggel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		depth := rapid.Float64Range(0.1, 10).Draw(t, "depth")
		period := rapid.Float64Range(3, 20).Draw(t, "period")
		slope := rapid.Float64Range(0, 0.1).Draw(t, "slope")
		h := wave.WeggelHeight(depth, period, slope)
		if i := wave.WeggelIndex(h, period, slope); !math.IsNaN(i) {
			rel(t, "height over depth", h/depth, i, 1e-12)
		}
		near(t, "the manual's law", wave.WeggelCEM.Height(wave.Water{}, depth, period, slope), h, 0)
		rel(t, "other constants", wave.WeggelSPM.Height(wave.Water{}, depth, period, slope), h, 0.003)
		rel(t, "other constants", wave.WeggelACES.Height(wave.Water{}, depth, period, slope), h, 0.003)
	})
}

func TestPropertyBreakComposed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := rapid.Float64Range(0.1, 4).Draw(t, "height")
		period := rapid.Float64Range(4, 20).Draw(t, "period")
		slope := rapid.Float64Range(0.001, 0.1).Draw(t, "slope")
		w := wave.Water{}
		b := wave.Break(h, period, slope)
		near(t, "height", b.Height, w.KomarGaughanCEM(h, period), 0)
		near(t, "index", b.Index, wave.WeggelIndex(b.Height, period, slope), 0)
		near(t, "depth", b.Depth*b.Index, b.Height, 1e-12)
		if b.Type != wave.DeepBreakerType(wave.SurfSimilarity(slope, h, period)) || b.Type != w.BreakerType(slope, h, period) {
			t.Errorf("type %v", b.Type)
		}
	})
}

func TestBreakerTypes(t *testing.T) {
	for _, c := range []struct {
		xi          float64
		deep, shore wave.BreakerType
	}{
		{0, wave.Spilling, wave.Spilling}, {0.39, wave.Spilling, wave.Spilling}, {0.45, wave.Spilling, wave.Plunging},
		{0.5, wave.Plunging, wave.Plunging}, {2.5, wave.Plunging, wave.Surging}, {3.3, wave.Plunging, wave.Surging},
		{3.4, wave.Surging, wave.Surging}, {inf, wave.Surging, wave.Surging}, {-1, wave.NoBreaker, wave.NoBreaker}, {nothing, wave.NoBreaker, wave.NoBreaker},
	} {
		if d, s := wave.DeepBreakerType(c.xi), wave.ShoreBreakerType(c.xi); d != c.deep || s != c.shore {
			t.Errorf("ξ = %v: %v and %v, want %v and %v", c.xi, d, s, c.deep, c.shore)
		}
	}
	if s := fmt.Sprint(wave.Spilling, wave.Plunging, wave.Surging, wave.NoBreaker); s != "spilling plunging surging none" {
		t.Error(s)
	}
}

func TestBreakingBadInput(t *testing.T) {
	w := wave.Water{}
	for _, bad := range []float64{-1, inf, nothing} {
		nan(t, "depth", wave.McCowanHeight(bad))
		nan(t, "slope", wave.WeggelIndex(1, 8, bad))
		nan(t, "height", wave.WeggelIndex(bad, 8, 0.1))
		nan(t, "slope", wave.WeggelHeight(1, 8, bad))
		nan(t, "depth", wave.WeggelHeight(bad, 8, 0.1))
		nan(t, "slope", wave.Goda2010.Height(1, 8, bad))
		nan(t, "depth", wave.Goda2010.Height(bad, 8, 0.1))
		nan(t, "height", w.KomarGaughan(bad, 8))
		nan(t, "height", w.KomarGaughanCEM(bad, 8))
		nan(t, "height", w.MunkHeight(bad, 8))
		nan(t, "height", w.SingamsettiWind(bad, 8, 0.1))
		nan(t, "slope", wave.KamphuisIndex(bad))
		nan(t, "slope", w.KamphuisHeight(2, 8, bad))
		nan(t, "slope", wave.SurfSimilarity(bad, 1, 8))
		nan(t, "slope", wave.Break(1, 8, bad).Height)
	}
	for _, bad := range append(hostile, inf) {
		nan(t, "period", wave.WeggelIndex(1, bad, 0.1))
		nan(t, "period", wave.WeggelHeight(1, bad, 0.1))
		nan(t, "period", wave.Goda2010.Height(1, bad, 0.1))
		nan(t, "period", w.KomarGaughan(1, bad))
		nan(t, "period", w.KomarGaughanCEM(1, bad))
		nan(t, "period", w.MunkHeight(1, bad))
		nan(t, "period", w.SingamsettiWind(1, bad, 0.1))
		nan(t, "slope", w.SingamsettiWind(1, 8, bad))
		nan(t, "period", w.KamphuisHeight(2, bad, 0.1))
		nan(t, "depth", w.KamphuisHeight(bad, 8, 0.1))
		nan(t, "height", wave.SurfSimilarity(0.1, bad, 8))
		nan(t, "period", wave.SurfSimilarity(0.1, 1, bad))
		nan(t, "length", wave.MicheHeight(bad, 5))
		if b := wave.Break(bad, 8, 0.1); b.Type != wave.NoBreaker || !math.IsNaN(b.Depth) {
			t.Errorf("%+v", b)
		}
	}
	nan(t, "depth", wave.MicheHeight(50, 0))
	nan(t, "law", wave.WeggelLaw{nothing, 1.56}.Index(w, 1, 8, 0.1))
	nan(t, "law", wave.WeggelLaw{43.8, inf}.Height(w, 1, 8, 0.1))
	nan(t, "law", wave.GodaLaw{nothing, 11}.Height(3, 8, 0.1))
	nan(t, "Weggel far outside its slopes", wave.WeggelIndex(20, 2, 0.5))
}

func TestReflectionLaws(t *testing.T) {
	for name, f := range map[string]func(float64) float64{
		"smooth": wave.SmoothSlope.Coefficient, "irregular": wave.SmoothSlopeIrregular.Coefficient, "rubble": wave.RubbleSlope.Coefficient,
		"dolos": wave.DolosSlope.Coefficient, "tetrapod": wave.TetrapodSlope.Coefficient, "beach": wave.SandBeach.Coefficient,
		"Battjes": wave.BattjesReflection, "smooth tanh": wave.SmoothTanh.Coefficient,
		"rock": wave.PermeableRockTanh.Coefficient, "impermeable": wave.ImpermeableRockTanh.Coefficient,
	} {
		near(t, name, f(0), 0, 0)
		last := 0.0
		for xi := 0.0; xi < 50; xi += 0.1 {
			k := f(xi)
			if !(k >= last && k <= 1) {
				t.Fatalf("%s: K(%v) = %v after %v", name, xi, k, last)
			}
			last = k
		}
		if k := f(inf); !(k >= last && k <= 1) {
			t.Errorf("%s: K(+Inf) = %v", name, k)
		}
		nan(t, name, f(-1))
		nan(t, name, f(nothing))
	}
	near(t, "a wall", wave.SmoothSlope.Coefficient(inf), 1, 0)
	near(t, "rubble far up", wave.RubbleSlope.Coefficient(1e90), 0.6, 1e-12)
	near(t, "two laws of smooth slopes agree", wave.SmoothSlope.Coefficient(1.5), wave.BattjesReflection(1.5), 0.08)
	nan(t, "law", wave.ReflectionLaw{-1, 5}.Coefficient(1))
	nan(t, "law", wave.ReflectionLaw{1, inf}.Coefficient(1))
	nan(t, "law", wave.TanhReflection{0, 1}.Coefficient(1))
	s := wave.Shores()
	for _, c := range s {
		if !(c.Low >= 0 && c.Low < c.Up && c.Up <= 1) || c.Name == "" {
			t.Errorf("%+v", c)
		}
	}
	s[0].Low = 99
	if wave.Shores()[0].Low == 99 {
		t.Error("the table can be written to")
	}
}

// The pattern is the sum of two trains: taken from the wave itself, phase by phase.
func TestPropertyReflectedHeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := wave.Solve(drawPeriod(t), drawDepth(t))
		k := rapid.Float64Range(0, 1).Draw(t, "K")
		a := rapid.Float64Range(-80, 80).Draw(t, "angle")
		x := rapid.Float64Range(0, 3).Draw(t, "lengths off") * w.Length
		got := w.ReflectedHeight(1, k, x, a)
		kx := w.Wavenumber * x * math.Cos(a*math.Pi/180)
		top := 0.0
		for i := range 720 {
			wt := float64(i) / 720 * 2 * math.Pi
			top = math.Max(top, math.Cos(kx-wt)/2+k*math.Cos(-kx-wt)/2)
		}
		near(t, "height of the sum", got, 2*top, 1e-4)
		most, least := wave.ReflectedEnvelope(1, k)
		if !(got <= most+1e-12 && got >= least-1e-12) {
			t.Errorf("%v outside %v to %v", got, least, most)
		}
		near(t, "at the wall", w.ReflectedHeight(1, k, 0, a), most, 1e-12)
		near(t, "quarter of a length off", w.ReflectedHeight(1, k, w.Length/4, 0), least, 1e-9)
		near(t, "measured", wave.ReflectionOfEnvelope(most, least), k, 1e-12)
		if sea := wave.ReflectedSea(1, k); !(sea >= 1 && sea <= most) {
			t.Errorf("sea %v", sea)
		}
	})
}

func TestReflectionBadInput(t *testing.T) {
	w := wave.Solve(6, 10)
	for _, bad := range []float64{-0.1, 1.1, inf, nothing} {
		nan(t, "K", w.ReflectedHeight(1, bad, 0, 0))
		nan(t, "K", wave.ReflectedSea(1, bad))
		m, l := wave.ReflectedEnvelope(1, bad)
		nan(t, "K", m+l)
	}
	for _, bad := range []float64{-1, inf, nothing} {
		nan(t, "height", w.ReflectedHeight(bad, 0.5, 0, 0))
		nan(t, "distance", w.ReflectedHeight(1, 0.5, bad, 0))
		nan(t, "height", wave.ReflectedSea(bad, 0.5))
		m, _ := wave.ReflectedEnvelope(bad, 0.5)
		nan(t, "height", m)
		nan(t, "least", wave.ReflectionOfEnvelope(2, bad))
		nan(t, "most", wave.ReflectionOfEnvelope(bad, 0))
	}
	nan(t, "angle", w.ReflectedHeight(1, 0.5, 0, 90))
	nan(t, "no waves", wave.ReflectionOfEnvelope(0, 0))
	nan(t, "least above the greatest", wave.ReflectionOfEnvelope(1, 2))
}
