package wave_test

import (
	"fmt"
	"math"
	"testing"

	"followingsea.example/wave"
	"pgregory.net/rapid"
)

func ExampleWave_Orbit() {
	// The manual's example: 5.5 m, 8 s over 15 m, at 5 m below the surface and a phase of 60 degrees.
	w := wave.Water{Gravity: 9.81}.Solve(8, 15)
	o := w.Orbit(5.5, -5, 60)
	fmt.Printf("%.2f %.2f m/s, %.2f %.2f m/s²\n", o.Along, o.Up, o.AlongRate, o.UpRate)
	// Output: 0.99 1.11 m/s, 1.35 -0.50 m/s²
}

func ExampleWave_StokesDrift() {
	w := wave.Solve(5, math.Inf(1))
	fmt.Printf("%.3f m/s at the surface, %.3f m/s at a quarter of the length below\n",
		w.StokesDrift(1, 0), w.StokesDrift(1, -w.Length/4))
	// Output: 0.051 m/s at the surface, 0.002 m/s at a quarter of the length below
}

func ExampleTransform() {
	// 10 ft and 10 degrees at 25 ft: what it is at 20 ft, and what it was in deep water.
	w := wave.Water{Gravity: 32.17 * wave.Foot}
	for _, feet := range []float64{20, math.Inf(1)} {
		s := w.Transform(10*wave.Foot, 10, 7.5, 25*wave.Foot, feet*wave.Foot)
		fmt.Printf("%.2f ft, %.2f degrees\n", s.Height/wave.Foot, s.Angle)
	}
	// Output:
	// 10.27 ft, 9.12 degrees
	// 10.68 ft, 15.00 degrees
}

func drawZ(t *rapid.T, depth float64) float64 {
	return -depth * rapid.Float64Range(0, 1).Draw(t, "part of the depth")
}

func TestPropertyOrbit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), math.Exp(rapid.Float64Range(-1, 6).Draw(t, "ln depth"))
		height, phase := rapid.Float64Range(0.01, 1).Draw(t, "height"), rapid.Float64Range(-720, 720).Draw(t, "phase")
		w := wave.Solve(period, depth)
		z := drawZ(t, depth)
		o := w.Orbit(height, z, phase)
		// The plain twin: hyperbolic functions as the textbook has them.
		k := w.Wavenumber
		if k*depth < 300 {
			c, s := math.Cosh(k*(depth+z))/math.Sinh(k*depth), math.Sinh(k*(depth+z))/math.Sinh(k*depth)
			a, om, th := height/2, w.AngularFrequency, phase*math.Pi/180
			tol := 1e-12 * a
			near(t, "u", o.Along, a*om*c*math.Cos(th), tol*om*(1+c))
			near(t, "w", o.Up, a*om*s*math.Sin(th), tol*om)
			near(t, "du/dt", o.AlongRate, a*om*om*c*math.Sin(th), tol*om*om*(1+c))
			near(t, "dw/dt", o.UpRate, -a*om*om*s*math.Cos(th), tol*om*om)
			near(t, "x", o.AlongShift, -a*c*math.Sin(th), tol*(1+c))
			near(t, "z", o.UpShift, a*s*math.Cos(th), tol)
			rel(t, "pressure response", w.PressureResponse(z), math.Cosh(k*(depth+z))/math.Cosh(k*depth), 1e-12)
			rel(t, "Stokes drift", w.StokesDrift(height, z), a*a*om*k*math.Cosh(2*k*(depth+z))/(2*math.Pow(math.Sinh(k*depth), 2)), 1e-10)
		}
		// At the surface the water moves with it; at the bottom not through it.
		top := w.Orbit(height, 0, phase)
		near(t, "surface", top.UpShift, w.Elevation(height, phase), 1e-15)
		near(t, "bottom", w.Orbit(height, -depth, phase).Up, 0, 1e-15)
		ax, az := w.Excursion(height, z)
		ux, uz := w.OrbitalSpeed(height, z)
		near(t, "speed of the ellipse", ux, ax*w.AngularFrequency, 1e-14*ux+1e-300)
		near(t, "speed of the ellipse", uz, az*w.AngularFrequency, 1e-14*ux+1e-300)
		// Mirror symmetry about the crest.
		m := w.Orbit(height, z, -phase)
		near(t, "mirror", m.Along, o.Along, 1e-12)
		near(t, "mirror", m.Up, -o.Up, 1e-12)
	})
}

// The drift summed over the depth is the transport.
func TestPropertyStokesTransport(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period := drawPeriod(t)
		depth := rapid.Float64Range(0.02, 1).Draw(t, "h/L0") * wave.Length(period, inf)
		w := wave.Solve(period, depth)
		const n = 400
		sum := 0.0
		for i := range n {
			sum += w.StokesDrift(1, -depth*(float64(i)+0.5)/n) * depth / n
		}
		rel(t, "transport", sum, w.StokesTransport(1), 1e-3)
	})
}

func TestDeepOrbit(t *testing.T) {
	deep, very := wave.Solve(6, inf), wave.Solve(6, 1e4)
	for _, z := range []float64{0, -1, -10, -30} {
		a, b := deep.Orbit(1, z, 30), very.Orbit(1, z, 30)
		rel(t, "deep", a.Along, b.Along, 1e-12)
		rel(t, "deep", a.Up, b.Up, 1e-12)
		rel(t, "deep drift", deep.StokesDrift(1, z), very.StokesDrift(1, z), 1e-12)
		rel(t, "deep pressure", deep.PressureResponse(z), math.Exp(deep.Wavenumber*z), 1e-14)
	}
	near(t, "far below", deep.Orbit(1, -1e6, 0).Along, 0, 0)
}

func TestOrbitBadInput(t *testing.T) {
	w := wave.Solve(6, 10)
	for _, bad := range []float64{-1, inf, nothing} {
		nan(t, "height", w.Orbit(bad, -1, 0).Along)
		nan(t, "height", w.StokesDrift(bad, -1))
		nan(t, "height", w.StokesTransport(bad))
		nan(t, "height", w.Pressure(bad, -1, 0))
		nan(t, "height", w.Elevation(bad, 0))
		nan(t, "height", w.Flux(bad))
		nan(t, "height", wave.Energy(bad))
		nan(t, "height", wave.EnergyOfSea(bad))
		nan(t, "height", wave.DeepFluxOfSea(bad, 8))
		nan(t, "height", w.Steepness(bad))
		nan(t, "height", w.Ursell(bad))
		nan(t, "height", w.SpeedCorrection(bad))
		nan(t, "height", wave.SteepSpeed(8, 10, bad))
		if r := w.Remarks(bad); r != wave.NotAWave {
			t.Errorf("remarks at height %v: %v", bad, r)
		}
	}
	for _, bad := range []float64{0.1, -10.1, inf, math.Inf(-1), nothing} {
		nan(t, "z", w.Orbit(1, bad, 0).Along)
		nan(t, "z", w.PressureResponse(bad))
		nan(t, "z", w.StokesDrift(1, bad))
		x, y := w.Excursion(1, bad)
		nan(t, "z", x+y)
		x, y = w.OrbitalSpeed(1, bad)
		nan(t, "z", x+y)
	}
	nan(t, "phase", w.Orbit(1, -1, nothing).Along)
	nan(t, "phase", w.Pressure(1, -1, inf))
	nan(t, "period", wave.DeepFluxOfSea(1, 0))
	nan(t, "density", wave.Water{Density: -1}.Energy(1))
	nan(t, "no wave", wave.Solve(nothing, 10).Elevation(1, 0))
	if r := wave.Solve(nothing, 10).Remarks(1); r != wave.NotAWave {
		t.Errorf("no wave: %v", r)
	}
}

// Energy flux is the mean of pressure times velocity over the depth and a period.
func TestFluxIsPressureTimesVelocity(t *testing.T) {
	const depth, height = 12.0, 0.8
	w := wave.Solve(7, depth)
	const nz, nt = 2000, 60
	sum := 0.0
	for i := range nz {
		z := -depth * (float64(i) + 0.5) / nz
		for j := range nt {
			phase := 360 * float64(j) / nt
			p := w.Pressure(height, z, phase) - w.Pressure(0, z, phase)
			sum += p * w.Orbit(height, z, phase).Along * depth / nz / nt
		}
	}
	rel(t, "flux", w.Flux(height), sum, 1e-6)
	rel(t, "of a sea, deep", wave.DeepFluxOfSea(2, 8), wave.EnergyOfSea(2)*wave.GroupSpeed(8, inf), 1e-14)
	rel(t, "sea and wave", wave.EnergyOfSea(2)*2, wave.Energy(2), 1e-15)
}

// Energy is conserved through shoaling and refraction.
func TestPropertyEnergyConserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period := drawPeriod(t)
		from, to := drawDepth(t), drawDepth(t)
		a := rapid.Float64Range(-80, 80).Draw(t, "angle")
		s := wave.Transform(1.5, a, period, from, to)
		if math.IsNaN(s.Height) {
			if !math.IsNaN(wave.Refract(a, period, from, to)) {
				t.Fatalf("no transform, but it refracts")
			}
			return
		}
		p := func(h, a, d float64) float64 {
			return wave.Solve(period, d).Flux(h) * math.Cos(a*math.Pi/180)
		}
		rel(t, "flux towards the shore", p(s.Height, s.Angle, to), p(1.5, a, from), 1e-9)
		rel(t, "Ks Kr", s.Height, 1.5*s.Shoaling*s.Refraction, 1e-14)
		rel(t, "Snell", math.Sin(s.Angle*math.Pi/180)/wave.PhaseSpeed(period, to), math.Sin(a*math.Pi/180)/wave.PhaseSpeed(period, from), 1e-10)
		m := wave.Transform(1.5, -a, period, from, to)
		near(t, "mirror", m.Angle, -s.Angle, 1e-12)
		near(t, "mirror", m.Height, s.Height, 1e-12)
		// In two steps as in one.
		mid := math.Sqrt(from * to)
		h := wave.Transform(1.5, a, period, from, mid)
		two := wave.Transform(h.Height, h.Angle, period, mid, to)
		rel(t, "in two steps", two.Height, s.Height, 1e-7)
		rel(t, "straight in", wave.Shoal(1.5, period, from, to), wave.Transform(1.5, 0, period, from, to).Height, 1e-14)
		rel(t, "from deep water", wave.Shoal(1, period, inf, to), wave.Solve(period, to).Shoaling(), 1e-13)
	})
}

func TestShoalingTurningPoints(t *testing.T) {
	w := wave.Water{Gravity: 1}
	at := func(y float64) float64 { return w.Solve(2*math.Pi, y).Shoaling() } // ω = 1: depth is y
	near(t, "lowest", at(1), 0.91299, 5e-6)
	if !(at(0.99) > at(1) && at(1.01) > at(1)) {
		t.Error("the least shoaling coefficient is not where ω²h/g = 1")
	}
	near(t, "back at 1", at(0.0574*2*math.Pi), 1, 1e-3)
	near(t, "deep", at(inf), 1, 0)
}

func TestShoalBadInput(t *testing.T) {
	nan(t, "cannot come from there", wave.Refract(60, 10, 3, inf))
	for _, bad := range []float64{90, -90, nothing, inf} {
		nan(t, "angle", wave.Refract(bad, 8, 10, 5))
		nan(t, "angle", wave.Transform(1, bad, 8, 10, 5).Height)
	}
	for _, bad := range hostile {
		nan(t, "period", wave.Shoal(1, bad, 10, 5))
		nan(t, "from", wave.Shoal(1, 8, bad, 5))
		nan(t, "to", wave.Shoal(1, 8, 10, bad))
		nan(t, "to", wave.Transform(1, 10, 8, 10, bad).Refraction)
		if bad != 0 {
			nan(t, "height", wave.Transform(bad, 10, 8, 10, 5).Angle)
		}
	}
}

func TestRemarks(t *testing.T) {
	deep := wave.Solve(6, inf)
	for _, c := range []struct {
		w      wave.Wave
		height float64
		want   string
	}{
		{deep, 0.5, "none"},
		{deep, 2.5, "steep"},
		{deep, 9, "steep, past breaking"},
		{wave.Solve(12, 3), 1, "long for the depth, high for the depth"},
		{wave.Solve(12, 3), 0.1, "none"},
		{wave.Solve(12, 3), 4, "steep, long for the depth, high for the depth, past breaking"},
	} {
		if got := c.w.Remarks(c.height).String(); got != c.want {
			t.Errorf("%v m on %v m: %s, want %s", c.height, c.w.Length, got, c.want)
		}
	}
	if s := wave.NotAWave.String(); s != "not a wave" {
		t.Error(s)
	}
}

func TestSteepWaves(t *testing.T) {
	deep := wave.Solve(6, inf)
	h := 2 * 0.3 / deep.Wavenumber
	near(t, "4.4 % at ka = 0.3", deep.SpeedCorrection(h), 1.044, 5e-4)
	rel(t, "deep and very deep", wave.Solve(6, 400).SpeedCorrection(h), deep.SpeedCorrection(h), 1e-6)
	near(t, "no height", deep.SpeedCorrection(0), 1, 0)
	rapid.Check(t, func(t *rapid.T) {
		period := drawPeriod(t)
		depth := inf
		if rapid.Bool().Draw(t, "finite") {
			depth = rapid.Float64Range(0.1, 1).Draw(t, "h/L0") * wave.Length(period, inf)
		}
		w := wave.Solve(period, depth)
		height := rapid.Float64Range(0, 0.08).Draw(t, "steepness") * w.Length
		c := wave.SteepSpeed(period, depth, height)
		// A wave of the length it then has, corrected, has that speed.
		l := c * period
		same := wave.Solve(wave.PeriodOfLength(l, depth), depth)
		rel(t, "speed at its length", same.PhaseSpeed*same.SpeedCorrection(height), c, 1e-10)
		if !(c >= w.PhaseSpeed*(1-1e-14)) {
			t.Errorf("steep waves are slower: %v, linear %v", c, w.PhaseSpeed)
		}
	})
	for _, bad := range append(hostile, inf) {
		nan(t, "period", wave.SteepSpeed(bad, 10, 1))
		if bad != inf {
			nan(t, "depth", wave.SteepSpeed(8, bad, 1))
		}
	}
}
