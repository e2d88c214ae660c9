package wave_test

import (
	"fmt"
	"math"
	"testing"

	"followingsea.example/wave"
	"pgregory.net/rapid"
)

// near fails unless got is within tol of want, which NaN never is.
func near(t interface {
	Helper()
	Errorf(string, ...any)
}, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) && got != want {
		t.Errorf("%s: %v, want %v within %v", what, got, want, tol)
	}
}

// rel is near with a relative tolerance.
func rel(t interface {
	Helper()
	Errorf(string, ...any)
}, what string, got, want, tol float64) {
	t.Helper()
	near(t, what, got, want, tol*math.Abs(want))
}

func nan(t *testing.T, what string, got float64) {
	t.Helper()
	if !math.IsNaN(got) {
		t.Errorf("%s: %v, want NaN", what, got)
	}
}

var (
	inf     = math.Inf(1)
	nothing = math.NaN()
	hostile = []float64{0, -1, math.Inf(-1), nothing}
)

func drawPeriod(t *rapid.T) float64 { return rapid.Float64Range(0.5, 25).Draw(t, "period") }
func drawDepth(t *rapid.T) float64 {
	return math.Exp(rapid.Float64Range(math.Log(0.1), math.Log(5000)).Draw(t, "ln depth"))
}

func ExampleSolve() {
	// A wave of 8 s over 20 ft of water, in the units of a manual of 1992.
	w := wave.Water{Gravity: 32.17 * wave.Foot}.Solve(8, 20*wave.Foot)
	fmt.Printf("crests %.2f ft/s, energy %.2f ft/s, %v water\n",
		w.PhaseSpeed/wave.Foot, w.GroupSpeed/wave.Foot, w.Regime())
	// Output: crests 23.74 ft/s, energy 20.87 ft/s, intermediate water
}

func ExampleLength() {
	fmt.Printf("%.1f m in deep water, %.1f m over 5 m\n", wave.Length(6, math.Inf(1)), wave.Length(6, 5))
	// Output: 56.2 m in deep water, 38.1 m over 5 m
}

func ExampleWater_Length() {
	// Three lengths of a wave of 7.5 s, in feet.
	aces := wave.Water{Gravity: 32.17 * wave.Foot}
	for _, feet := range []float64{25, 20} {
		fmt.Printf("%.2f\n", aces.Length(7.5, feet*wave.Foot)/wave.Foot)
	}
	fmt.Printf("%.2f\n", aces.Length(7.5, math.Inf(1))/wave.Foot)
	// Output:
	// 193.27
	// 176.34
	// 288.00
}

func ExamplePeriodOfSpeed() {
	// Which wave do 12 knots match in deep water, and how long is it?
	t := wave.PeriodOfSpeed(12*wave.Knot, math.Inf(1))
	fmt.Printf("%.2f s, %.1f m\n", t, wave.Length(t, math.Inf(1)))
	// Output: 3.96 s, 24.4 m
}

func TestPropertyDispersionRelation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		g := rapid.Float64Range(9.7, 9.9).Draw(t, "g")
		w := wave.Water{Gravity: g}
		k := w.Wavenumber(period, depth)
		omega := 2 * math.Pi / period
		rel(t, "gk tanh kh", g*k*math.Tanh(k*depth), omega*omega, 2e-15)
		rel(t, "length", w.Length(period, depth), 2*math.Pi/k, 1e-15)
		rel(t, "phase speed", w.PhaseSpeed(period, depth), w.Length(period, depth)/period, 1e-15)
		rel(t, "group speed", w.GroupSpeed(period, depth), w.PhaseSpeed(period, depth)*(0.5+k*depth/math.Sinh(math.Min(2*k*depth, 700))), 1e-14)
		s := w.Solve(period, depth)
		for name, v := range map[string][2]float64{
			"wavenumber": {s.Wavenumber, k}, "length": {s.Length, w.Length(period, depth)},
			"phase speed": {s.PhaseSpeed, w.PhaseSpeed(period, depth)}, "group speed": {s.GroupSpeed, w.GroupSpeed(period, depth)},
			"ratio": {s.SpeedRatio, s.GroupSpeed / s.PhaseSpeed}, "frequency": {s.AngularFrequency, omega},
		} {
			rel(t, name, v[0], v[1], 1e-15)
		}
		if !(s.SpeedRatio >= 0.5 && s.SpeedRatio <= 1) {
			t.Errorf("cg/c = %v", s.SpeedRatio)
		}
	})
}

// The group speed is dω/dk.
func TestPropertyGroupSpeedIsTheSlope(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		w := wave.Solve(period, depth)
		omega := func(k float64) float64 { return 2 * math.Pi / wave.PeriodOfLength(2*math.Pi/k, depth) }
		d := 1e-4 * w.Wavenumber
		slope := (omega(w.Wavenumber+d) - omega(w.Wavenumber-d)) / (2 * d)
		rel(t, "dω/dk", slope, w.GroupSpeed, 1e-7)
	})
}

func TestDeepAndShallowLimits(t *testing.T) {
	const g = wave.StandardGravity
	for _, period := range []float64{0.3, 1, 5, 9, 20} {
		rel(t, "deep length", wave.Length(period, inf), g*period*period/(2*math.Pi), 4e-16)
		rel(t, "deep speed", wave.PhaseSpeed(period, inf), g*period/(2*math.Pi), 4e-16)
		rel(t, "deep group speed", wave.GroupSpeed(period, inf), g*period/(4*math.Pi), 4e-16)
		rel(t, "very deep", wave.Length(period, 1e5), wave.Length(period, inf), 1e-15)
		rel(t, "shallow speed", wave.PhaseSpeed(period, 1e-9), math.Sqrt(g*1e-9), 1e-7)
		rel(t, "shallow group speed", wave.GroupSpeed(period, 1e-9), math.Sqrt(g*1e-9), 1e-7)
	}
	rel(t, "endless period", wave.PhaseSpeed(inf, 5), math.Sqrt(g*5), 1e-15)
	rel(t, "endless period, group", wave.GroupSpeed(inf, 5), math.Sqrt(g*5), 1e-15)
	rel(t, "a period of ages", wave.PhaseSpeed(1e200, 5), math.Sqrt(g*5), 1e-15)
	rel(t, "a film of water", wave.PhaseSpeed(1, 1e-300), math.Sqrt(g*1e-300), 1e-15)
	near(t, "no wavenumber", wave.Wavenumber(inf, 5), 0, 0)
	if l := wave.Length(inf, 5); !math.IsInf(l, 1) {
		t.Errorf("endless period: length %v", l)
	}
}

// Nothing jumps where one branch hands over to the next.
func TestContinuityAcrossBranches(t *testing.T) {
	const g = wave.StandardGravity
	for _, y := range []float64{1e-17, 1.0 / 64, 19.5, 22} {
		period := 2 * math.Pi / math.Sqrt(y*g/10)
		a, b := wave.Solve(period*(1-1e-13), 10), wave.Solve(period*(1+1e-13), 10)
		rel(t, "wavenumber", a.Wavenumber, b.Wavenumber, 1e-12)
		rel(t, "group speed", a.GroupSpeed, b.GroupSpeed, 1e-12)
	}
}

func TestPropertyScaling(t *testing.T) {
	// Froude: with lengths scaled by s and periods by √s, speeds scale by √s.
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		s := rapid.Float64Range(0.01, 100).Draw(t, "scale")
		a, b := wave.Solve(period, depth), wave.Solve(period*math.Sqrt(s), depth*s)
		rel(t, "length", b.Length, a.Length*s, 1e-14)
		rel(t, "group speed", b.GroupSpeed, a.GroupSpeed*math.Sqrt(s), 1e-14)
	})
}

func TestPropertyMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		if !(wave.Length(period, depth*1.01) >= wave.Length(period, depth)*(1-1e-15)) {
			t.Error("deeper is not longer")
		}
		if !(wave.PhaseSpeed(period*1.01, depth) >= wave.PhaseSpeed(period, depth)*(1-1e-15)) {
			t.Error("a longer period is not faster")
		}
	})
}

func TestPropertyRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		if rapid.Bool().Draw(t, "deep") {
			depth = inf
		}
		w := wave.Solve(period, depth)
		rel(t, "period of the length", wave.PeriodOfLength(w.Length, depth), period, 1e-14)
		kh := w.Wavenumber * depth
		// c says little about the period where c is all but √(gh): the error grows as 1/(kh)².
		if kh > 1e-3 {
			rel(t, "period of the speed", wave.PeriodOfSpeed(w.PhaseSpeed, depth), period, 4e-15*(1+3/(kh*kh)))
		}
		if kh < 5 {
			rel(t, "depth of the length", wave.DepthOfLength(period, w.Length), depth, 1e-15*math.Exp(2*kh)+1e-14)
		}
	})
}

func TestInverseHasNoAnswer(t *testing.T) {
	nan(t, "faster than any wave", wave.PeriodOfSpeed(10, 5))
	nan(t, "as fast as √(gh)", wave.Water{Gravity: 10}.PeriodOfSpeed(10, 10))
	nan(t, "longer than in deep water", wave.DepthOfLength(5, 50))
	nan(t, "length and depth both endless", wave.PeriodOfLength(inf, inf))
	if p := wave.PeriodOfLength(inf, 5); !math.IsInf(p, 1) {
		t.Errorf("endless length: period %v", p)
	}
	rel(t, "an endless length over a film", wave.PeriodOfLength(1e200, 1e-200), 1e200/math.Sqrt(wave.StandardGravity*1e-200), 1e-15)
	rel(t, "slow, hence deep", wave.PeriodOfSpeed(0.5, 10), 2*math.Pi*0.5/wave.StandardGravity, 1e-15)
}

func TestHostileInput(t *testing.T) {
	for _, bad := range hostile {
		for name, f := range map[string]func(a, b float64) float64{
			"Wavenumber": wave.Wavenumber, "Length": wave.Length, "PhaseSpeed": wave.PhaseSpeed, "GroupSpeed": wave.GroupSpeed,
			"PeriodOfLength": wave.PeriodOfLength, "PeriodOfSpeed": wave.PeriodOfSpeed, "DepthOfLength": wave.DepthOfLength,
		} {
			nan(t, name, f(bad, 10))
			nan(t, name, f(10, bad))
			nan(t, name, f(bad, inf))
			nan(t, name, f(inf, bad))
		}
		w := wave.Solve(bad, 10)
		for _, v := range []float64{w.Wavenumber, w.Length, w.PhaseSpeed, w.GroupSpeed, w.SpeedRatio, w.AngularFrequency} {
			nan(t, "Solve", v)
		}
		if bad != 0 {
			nan(t, "gravity", wave.Water{Gravity: bad}.Length(10, 10))
			nan(t, "gravity, deep", wave.Water{Gravity: bad}.Length(10, inf))
			nan(t, "gravity, shallow", wave.Water{Gravity: bad}.PhaseSpeed(inf, 10))
		}
	}
	nan(t, "both endless", wave.Length(inf, inf))
	nan(t, "both endless", wave.PhaseSpeed(inf, inf))
	nan(t, "endless gravity", wave.Water{Gravity: inf}.Length(10, 10))
	nan(t, "endless period", wave.Solve(inf, 10).Length)
}

func TestRegime(t *testing.T) {
	for _, c := range []struct {
		depth float64
		want  wave.Regime
	}{{5, wave.Shallow}, {5.01, wave.Intermediate}, {49.9, wave.Intermediate}, {50, wave.Deep}, {inf, wave.Deep}, {0, wave.NoRegime}, {nothing, wave.NoRegime}} {
		if got := wave.UsualLimits.Regime(c.depth, 100); got != c.want {
			t.Errorf("depth %v of 100: %v, want %v", c.depth, got, c.want)
		}
	}
	if got := wave.OldLimits.Regime(4.5, 100); got != wave.Intermediate {
		t.Errorf("old limits: %v", got)
	}
	if got := wave.WideLimits.Regime(25, 100); got != wave.Deep {
		t.Errorf("wide limits: %v", got)
	}
	if got := (wave.RegimeLimits{nothing, nothing}).Regime(25, 100); got != wave.NoRegime {
		t.Errorf("no limits: %v", got)
	}
	if got := wave.Solve(10, nothing).Regime(); got != wave.NoRegime {
		t.Errorf("no wave: %v", got)
	}
	if s := fmt.Sprint(wave.Deep, wave.Intermediate, wave.Shallow, wave.NoRegime); s != "deep intermediate shallow none" {
		t.Error(s)
	}
	near(t, "relative depth", wave.Solve(8, 10).RelativeDepth(), 10/wave.Length(8, 10), 0)
}

// What the conventional limits let pass, as their documentation says.
func TestRegimeLimitsLetPass(t *testing.T) {
	speedErrors := func(h float64) (deep, shallow float64) { // for a wave of length 1 over h
		c := 1 / wave.PeriodOfLength(1, h)
		return math.Sqrt(wave.StandardGravity/(2*math.Pi))/c - 1, math.Sqrt(wave.StandardGravity*h)/c - 1
	}
	d, _ := speedErrors(1.0 / 2)
	near(t, "deep at 1/2", d, 0.0019, 5e-5)
	_, s := speedErrors(1.0 / 20)
	near(t, "shallow at 1/20", s, 0.016, 5e-4)
	_, s = speedErrors(1.0 / 25)
	near(t, "shallow at 1/25", s, 0.010, 5e-4)
	d, _ = speedErrors(1.0 / 4)
	near(t, "deep at 1/4", d, 0.044, 1e-3)
	_, s = speedErrors(1.0 / 11)
	near(t, "shallow at 1/11", s, 0.052, 1e-3)
}

func TestPackageFunctionsAreTheDefaultWater(t *testing.T) {
	w := wave.Water{Gravity: 9.80665, Density: 1025}
	for _, c := range []struct {
		name     string
		f        func(a, b float64) float64
		m        func(a, b float64) float64
		one, two float64
	}{
		{"Wavenumber", wave.Wavenumber, w.Wavenumber, 7, 9},
		{"Length", wave.Length, w.Length, 7, 9},
		{"PhaseSpeed", wave.PhaseSpeed, w.PhaseSpeed, 7, 9},
		{"GroupSpeed", wave.GroupSpeed, w.GroupSpeed, 7, 9},
		{"Solve", func(a, b float64) float64 { return wave.Solve(a, b).GroupSpeed }, func(a, b float64) float64 { return w.Solve(a, b).GroupSpeed }, 7, 9},
		{"PeriodOfLength", wave.PeriodOfLength, w.PeriodOfLength, 40, 9},
		{"PeriodOfSpeed", wave.PeriodOfSpeed, w.PeriodOfSpeed, 7, 9},
		{"DepthOfLength", wave.DepthOfLength, w.DepthOfLength, 7, 40},
	} {
		near(t, c.name, c.f(c.one, c.two), c.m(c.one, c.two), 0)
		if math.IsNaN(c.f(c.one, c.two)) {
			t.Errorf("%s is NaN", c.name)
		}
	}
}

// The same for the functions of other shapes: each against its method, at one place.
func TestPackageFunctionsOfOtherShapes(t *testing.T) {
	w := wave.Water{Gravity: 9.80665, Density: 1025}
	w1, w2 := wave.SwellWindow(1e6, 1e5, 1e4, 9)
	v1, v2 := w.SwellWindow(1e6, 1e5, 1e4, 9)
	for name, c := range map[string][2]float64{
		"StoppingCurrent":  {wave.StoppingCurrent(7, 9), w.StoppingCurrent(7, 9)},
		"OnCurrent":        {wave.OnCurrent(7, 9, -1).HeightRatio, w.OnCurrent(7, 9, -1).HeightRatio},
		"CrossStream":      {wave.CrossStream(7, 9, 1, 20).Length, w.CrossStream(7, 9, 1, 20).Length},
		"SteepSpeed":       {wave.SteepSpeed(7, 9, 1), w.SteepSpeed(7, 9, 1)},
		"Energy":           {wave.Energy(2), w.Energy(2)},
		"EnergyOfSea":      {wave.EnergyOfSea(2), w.EnergyOfSea(2)},
		"DeepFluxOfSea":    {wave.DeepFluxOfSea(2, 8), w.DeepFluxOfSea(2, 8)},
		"Shoal":            {wave.Shoal(1, 7, 20, 5), w.Shoal(1, 7, 20, 5)},
		"Refract":          {wave.Refract(20, 7, 20, 5), w.Refract(20, 7, 20, 5)},
		"Transform":        {wave.Transform(1, 20, 7, 20, 5).Height, w.Transform(1, 20, 7, 20, 5).Height},
		"WeggelIndex":      {wave.WeggelIndex(2, 9, 0.02), w.WeggelIndex(2, 9, 0.02)},
		"WeggelHeight":     {wave.WeggelHeight(2, 9, 0.02), w.WeggelHeight(2, 9, 0.02)},
		"KomarGaughan":     {wave.KomarGaughan(2, 9), w.KomarGaughan(2, 9)},
		"Break":            {wave.Break(2, 9, 0.02).Depth, w.Break(2, 9, 0.02).Depth},
		"SurfSimilarity":   {wave.SurfSimilarity(0.02, 2, 9), w.SurfSimilarity(0.02, 2, 9)},
		"Sets":             {wave.Sets(1, 10, 1, 9, 20).Speed, w.Sets(1, 10, 1, 9, 20).Speed},
		"SwellTime":        {wave.SwellTime(1e6, 9), w.SwellTime(1e6, 9)},
		"SwellPeriod":      {wave.SwellPeriod(1e6, 1e5), w.SwellPeriod(1e6, 1e5)},
		"OriginOfArrivals": {wave.OriginOfArrivals(12, 9, 1e5).Distance, w.OriginOfArrivals(12, 9, 1e5).Distance},
		"OriginOfRidge":    {wave.OriginOfRidge(0.1, 1e-7).Distance, w.OriginOfRidge(0.1, 1e-7).Distance},
		"RidgeSlope":       {wave.RidgeSlope(1e6), w.RidgeSlope(1e6)},
		"SwellWindow":      {w1 + w2, v1 + v2},
	} {
		near(t, name, c[0], c[1], 0)
		if math.IsNaN(c[0]) {
			t.Errorf("%s is NaN", name)
		}
	}
}
