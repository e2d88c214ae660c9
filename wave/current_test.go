package wave_test

import (
	"fmt"
	"math"
	"testing"

	"followingsea.example/wave"
	"pgregory.net/rapid"
)

func ExampleOnCurrent() {
	// Waves of 6 s meet a tide of 2 knots, with them and against them, over 20 m.
	for _, knots := range []float64{2, 0, -2, -5} {
		w := wave.OnCurrent(6, 20, knots*wave.Knot)
		fmt.Printf("%+.0f kn: %v, length %.0f m, height x %.2f, steepness x %.2f\n",
			knots, w.State, w.Length, w.HeightRatio, w.SteepnessRatio)
	}
	fmt.Printf("stopped by %.1f kn\n", -wave.StoppingCurrent(6, 20)/wave.Knot)
	// Output:
	// +2 kn: runs, length 66 m, height x 0.82, steepness x 0.69
	// +0 kn: runs, length 55 m, height x 1.00, steepness x 1.00
	// -2 kn: runs, length 43 m, height x 1.35, steepness x 1.74
	// -5 kn: blocked, length NaN m, height x NaN, steepness x NaN
	// stopped by 4.6 kn
}

// plainDoppler is the plain twin of the solver: bisection for the first root of σ(k) + kU = ω, scanning from k = 0 so that the
// first is the one found.
func plainDoppler(g, period, depth, along float64) (k float64, ok bool) {
	omega := 2 * math.Pi / period
	f := func(k float64) float64 { return math.Sqrt(g*k*math.Tanh(k*depth)) + k*along - omega }
	top := 40 * omega * omega / g * (1 + 1/math.Tanh(math.Min(1, omega*omega/g*depth)))
	const steps = 200000
	for i := 1; i <= steps; i++ {
		hi := top * float64(i) / steps
		if f(hi) >= 0 {
			lo := top * float64(i-1) / steps
			for range 80 {
				mid := (lo + hi) / 2
				if f(mid) < 0 {
					lo = mid
				} else {
					hi = mid
				}
			}
			return hi, true
		}
	}
	return 0, false
}

func TestCurrentAgainstPlainTwin(t *testing.T) {
	for _, period := range []float64{2, 6, 12} {
		for _, depth := range []float64{1, 5, 30} {
			for _, along := range []float64{-4, -2, -1, -0.3, 0, 0.3, 1, 2, 4} {
				w := wave.OnCurrent(period, depth, along)
				k, ok := plainDoppler(wave.StandardGravity, period, depth, along)
				if ok != (w.State == wave.Runs) {
					t.Errorf("T=%v h=%v U=%v: %v, the twin finds a root: %v", period, depth, along, w.State, ok)
				}
				if ok {
					rel(t, fmt.Sprintf("k at T=%v h=%v U=%v", period, depth, along), w.Wavenumber, k, 1e-9)
				}
			}
		}
	}
}

func TestPropertyDoppler(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		if rapid.Bool().Draw(t, "deep") {
			depth = inf
		}
		stop := wave.StoppingCurrent(period, depth)
		along := rapid.Float64Range(0.98*stop, -3*stop).Draw(t, "along")
		w := wave.OnCurrent(period, depth, along)
		if w.State != wave.Runs {
			t.Fatalf("%v with %v, stopped at %v", w.State, along, stop)
		}
		const g = wave.StandardGravity
		sigma := 2*math.Pi/period - w.Wavenumber*along
		rel(t, "dispersion in the water", sigma*sigma, g*w.Wavenumber*math.Tanh(w.Wavenumber*depth), 1e-11)
		rel(t, "intrinsic period", w.IntrinsicPeriod, 2*math.Pi/sigma, 1e-12)
		still := wave.Solve(period, depth)
		// Doppler: a board that drifts with the water counts the intrinsic period of a wave in still water.
		drift := wave.Solve(w.IntrinsicPeriod, depth)
		rel(t, "same length for the drifting board", drift.Length, w.Length, 1e-11)
		rel(t, "group speed", w.GroupSpeed, drift.GroupSpeed+along, 1e-9)
		rel(t, "phase speed", w.PhaseSpeed, drift.PhaseSpeed+along, 1e-9)
		// Wave action is conserved.
		rel(t, "action", w.HeightRatio*w.HeightRatio*w.GroupSpeed/sigma, still.GroupSpeed/still.AngularFrequency, 1e-10)
		rel(t, "steepness", w.SteepnessRatio, w.HeightRatio*still.Length/w.Length, 1e-12)
		if along < 0 && !(w.HeightRatio >= 1-1e-12 && w.Length <= still.Length*(1+1e-12)) {
			t.Errorf("against the current: height x %v, length %v of %v", w.HeightRatio, w.Length, still.Length)
		}
	})
}

// Blocking is exactly where cg = -U.
func TestPropertyBlocking(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		stop := wave.StoppingCurrent(period, depth)
		if !(stop < 0 && -stop <= wave.Solve(period, depth).GroupSpeed) {
			t.Fatalf("stopped by %v", stop)
		}
		w := wave.OnCurrent(period, depth, stop*(1-1e-9))
		if w.State != wave.Runs {
			t.Fatalf("just before blocking: %v", w.State)
		}
		near(t, "cg + U", w.GroupSpeed, 0, 1e-3*-stop)
		if s := wave.OnCurrent(period, depth, stop).State; s != wave.Blocked {
			t.Errorf("at the stopping current: %v", s)
		}
		b := wave.OnCurrent(period, depth, stop*1.0001)
		if b.State != wave.Blocked || !math.IsNaN(b.Length) || !math.IsNaN(b.HeightRatio) {
			t.Errorf("beyond: %v, length %v", b.State, b.Length)
		}
		near(t, "stopping current of the result", b.Stopping(), stop, 0)
		if cg := wave.GroupSpeed(period, depth); !(-stop >= 0.416*cg) {
			t.Errorf("stopped by %v, energy travels at %v: OnCurrent takes that for impossible", stop, cg)
		}
	})
}

// In deep water all of it has a closed form, and a great finite depth must meet it.
func TestDeepCurrentClosedForm(t *testing.T) {
	const g = wave.StandardGravity
	for _, u := range []float64{-2, -1, -0.1, 0, 0.1, 1, 5} {
		c0 := g * 6 / (2 * math.Pi)
		ratio := (1 + math.Sqrt(1+4*u/c0)) / 2
		for _, depth := range []float64{inf, 1e6, 2000, 300} {
			w := wave.OnCurrent(6, depth, u)
			rel(t, "c/c0", w.IntrinsicPhaseSpeed/c0, ratio, 1e-13)
			rel(t, "L/L0", w.Length/wave.Length(6, inf), ratio*ratio, 1e-13)
			rel(t, "H/H0", w.HeightRatio, c0/math.Sqrt(ratio*c0*(ratio*c0+2*u)), 1e-13)
		}
	}
	rel(t, "stopping in deep water", wave.StoppingCurrent(6, inf), -g*6/(8*math.Pi), 1e-15)
	rel(t, "stopping in very deep water", wave.StoppingCurrent(6, 1e9), -g*6/(8*math.Pi), 1e-15)
	rel(t, "stopping in deep enough water", wave.StoppingCurrent(6, 100), -g*6/(8*math.Pi), 1e-13)
	tide := wave.OnCurrent(1e11, 10, 1)
	rel(t, "a tide on a current", tide.PhaseSpeed, math.Sqrt(g*10)+1, 1e-12)
	rel(t, "a tide's energy on a current", tide.GroupSpeed, math.Sqrt(g*10)+1, 1e-12)
	rel(t, "long waves are stopped by √(gh)", wave.StoppingCurrent(1e7, 1), -math.Sqrt(g), 1e-3)
}

func TestCurrentHeight(t *testing.T) {
	w := wave.OnCurrent(6, inf, -2)
	h, breaks := w.Height(0.5)
	near(t, "wave action", h, 0.5*w.HeightRatio, 1e-15)
	if breaks {
		t.Error("half a metre breaks")
	}
	h, breaks = w.Height(3)
	near(t, "capped", h, 0.142*w.Length, 1e-12)
	if !breaks {
		t.Error("3 m on 27 m does not break")
	}
	for _, bad := range []float64{-1, inf, nothing} {
		if h, breaks := w.Height(bad); !math.IsNaN(h) || breaks {
			t.Errorf("height %v gives %v, %v", bad, h, breaks)
		}
	}
	h, breaks = wave.OnCurrent(6, inf, -3).Height(1)
	if !math.IsNaN(h) || breaks {
		t.Errorf("a blocked wave has the height %v, %v", h, breaks)
	}
}

func TestCurrentBadInput(t *testing.T) {
	for _, bad := range append(hostile, inf) {
		for _, w := range []wave.CurrentWave{wave.OnCurrent(bad, 10, 0), wave.OnCurrent(8, 10, nothing), wave.OnCurrent(8, 10, inf), wave.OnCurrent(8, nothing, 1)} {
			if w.State != wave.NoCurrentState || !math.IsNaN(w.Length) || !math.IsNaN(w.HeightRatio) {
				t.Errorf("%+v", w)
			}
		}
		nan(t, "stopping", wave.StoppingCurrent(bad, 10))
		if bad != inf {
			nan(t, "stopping", wave.StoppingCurrent(8, bad))
		}
	}
	nan(t, "gravity", wave.Water{Gravity: -1}.StoppingCurrent(8, 10))
	if s := fmt.Sprint(wave.Runs, wave.Blocked, wave.NoCurrentState); s != "runs blocked unknown" {
		t.Error(s)
	}
}

func TestAlongWave(t *testing.T) {
	near(t, "with", wave.AlongWave(2, 0), 2, 0)
	near(t, "against", wave.AlongWave(2, 180), -2, 1e-15)
	near(t, "across", wave.AlongWave(2, 90), 0, 1e-15)
	near(t, "either side", wave.AlongWave(2, 60), wave.AlongWave(2, -60), 1e-15)
	near(t, "once round", wave.AlongWave(2, 60), wave.AlongWave(2, 420), 1e-14)
	nan(t, "rate", wave.AlongWave(-1, 0))
	nan(t, "rate", wave.AlongWave(inf, 0))
	nan(t, "angle", wave.AlongWave(1, nothing))
	nan(t, "angle", wave.AlongWave(1, inf))
}

// Johnson's closed form for a stream in deep water: c = c0/(1 - U sin a0/c0), sin a = sin a0/(1 - U sin a0/c0)².
func TestCrossStreamClosedForm(t *testing.T) {
	c0 := wave.PhaseSpeed(8, inf)
	for _, a0 := range []float64{-60, -20, 0, 20, 40} {
		const u = 1.5
		sin := math.Sin(a0 * math.Pi / 180)
		m := 1 - u*sin/c0
		c := wave.CrossStream(8, inf, u, a0)
		near(t, "angle", c.Angle, math.Asin(sin/(m*m))*180/math.Pi, 1e-10)
		rel(t, "length", c.Length, wave.Length(8, inf)/(m*m), 1e-12)
		want := math.Sqrt(math.Sin(2*a0*math.Pi/180) / math.Sin(2*c.Angle*math.Pi/180)) // Longuet-Higgins and Stewart 1961
		if a0 == 0 {
			want = 1
		}
		rel(t, "height", c.HeightRatio, want, 1e-11)
	}
	nan(t, "thrown back", wave.CrossStream(8, inf, 5, 60).Angle)
	nan(t, "overtaken by the stream", wave.CrossStream(2, inf, 9, 80).Length)
	nan(t, "angle", wave.CrossStream(8, 10, 1, 90).Length)
	nan(t, "rate", wave.CrossStream(8, 10, -1, 10).HeightRatio)
	nan(t, "period", wave.CrossStream(nothing, 10, 1, 10).IntrinsicPeriod)
}

// Energy action flux across the edge is the same on both sides, and a still stream changes nothing.
func TestPropertyCrossStream(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		period, depth := drawPeriod(t), drawDepth(t)
		a := rapid.Float64Range(-85, 85).Draw(t, "angle")
		same := wave.CrossStream(period, depth, 0, a)
		near(t, "angle", same.Angle, a, 1e-6)
		rel(t, "height", same.HeightRatio, 1, 1e-6)
		u := rapid.Float64Range(0, 2).Draw(t, "rate")
		c := wave.CrossStream(period, depth, u, a)
		if math.IsNaN(c.Angle) {
			return
		}
		in, out := wave.Solve(period, depth), wave.Solve(c.IntrinsicPeriod, depth)
		rel(t, "crests along the edge", out.Wavenumber*math.Sin(c.Angle*math.Pi/180), in.Wavenumber*math.Sin(a*math.Pi/180), 1e-10)
		m := wave.CrossStream(period, depth, u, -a) // leaning upstream instead
		if a > 0 && !(m.Length <= c.Length) {
			t.Errorf("upstream %v, downstream %v", m.Length, c.Length)
		}
	})
}

// TestDopplerOverItsRange: from the deepest water to a tide over a shoal, and from all but blocked to a current five times as
// fast as the energy, the wave obeys (ω - kU)² = gk tanh kh and its energy gets through.
func TestDopplerOverItsRange(t *testing.T) {
	const g, h = wave.StandardGravity, 10.0
	for y := 1e-8; y < 40; y *= 1.2 { // ω²h/g
		omega := math.Sqrt(y * g / h)
		period := 2 * math.Pi / omega
		stop := wave.StoppingCurrent(period, h)
		along := []float64{stop * (1 - 1e-12), stop * 0.9999}
		for part := -0.99; part < 5; part += 0.07 {
			along = append(along, -stop*part)
		}
		for _, u := range along {
			w := wave.OnCurrent(period, h, u)
			if w.State != wave.Runs || !(w.GroupSpeed > 0) {
				t.Errorf("ω²h/g = %v, %v of the stopping current: %v, group speed %v", y, u/stop, w.State, w.GroupSpeed)
			}
			k := w.Wavenumber
			near(t, fmt.Sprintf("frequency at ω²h/g = %v, %v of the stopping current", y, u/stop), (math.Sqrt(g*k*math.Tanh(k*h))+k*u)/omega, 1, 5e-13)
		}
	}
}

// leastCurrent is the plain twin of StoppingCurrent: the current on which the wavenumber k keeps the frequency is
// (ω - √(gk tanh kh))/k, and below the least of these no wave does. It is looked for by golden section in ln k.
func leastCurrent(period, depth float64) float64 {
	omega := 2 * math.Pi / period
	current := func(lnk float64) float64 {
		k := math.Exp(lnk)
		return (omega - math.Sqrt(wave.StandardGravity*k*math.Tanh(k*depth))) / k
	}
	lo := math.Log(omega * omega / wave.StandardGravity) // longer than any wave against a current
	hi := lo + 20
	const part = 0.6180339887498949 // (√5 - 1)/2
	for hi-lo > 1e-8 {
		if a, b := hi-part*(hi-lo), lo+part*(hi-lo); current(a) < current(b) {
			hi = b
		} else {
			lo = a
		}
	}
	return current((lo + hi) / 2)
}

// TestStoppingAgainstPlainTwin: good to 1e-13, and to 1e-9 for waves of minutes and more.
func TestStoppingAgainstPlainTwin(t *testing.T) {
	for period, tol := range map[float64]float64{0.5: 1e-13, 2: 1e-13, 6: 1e-13, 12: 1e-13, 25: 1e-13, 59: 1e-13, 600: 1e-9, 3600: 1e-9} {
		for depth := 0.1; depth < 5000; depth *= 1.3 {
			rel(t, fmt.Sprintf("T=%v h=%v", period, depth), wave.StoppingCurrent(period, depth), leastCurrent(period, depth), tol)
		}
	}
}

// TestNoEnergyStandsStill: one last place after another weaker than the stopping current, a wave is blocked and has no numbers,
// or its energy moves with it.
func TestNoEnergyStandsStill(t *testing.T) {
	for period := 1.0; period < 30; period += 0.05 {
		for _, depth := range []float64{5, inf} {
			u := wave.StoppingCurrent(period, depth)
			for range 8 {
				w := wave.OnCurrent(period, depth, u)
				if w.State == wave.Runs && !(w.GroupSpeed > 0 && w.HeightRatio < inf) || w.State == wave.Blocked && !math.IsNaN(w.GroupSpeed) {
					t.Fatalf("%v s over %v m on %v m/s: %+v", period, depth, u, w)
				}
				u = math.Nextafter(u, 0)
			}
		}
	}
}

// TestNoWaveRunsAlongTheStream: where sin a would reach 1 the stream throws the wave back, to the last place of the rate.
func TestNoWaveRunsAlongTheStream(t *testing.T) {
	for _, depth := range []float64{3, inf} {
		for angle := 10.0; angle < 90; angle += 5 {
			lo, hi := 0.0, 100.0
			for range 70 {
				if mid := (lo + hi) / 2; math.IsNaN(wave.CrossStream(8, depth, mid, angle).Angle) {
					hi = mid
				} else {
					lo = mid
				}
			}
			u := lo
			for range 4 {
				u = math.Nextafter(u, 0)
			}
			for range 9 {
				if a := wave.CrossStream(8, depth, u, angle).Angle; a >= 90 {
					t.Fatalf("%v° in over %v m, %v m/s: %v°", angle, depth, u, a)
				}
				u = math.Nextafter(u, inf)
			}
			nan(t, "a faster stream", wave.CrossStream(8, depth, hi*1.000001, angle).Angle)
		}
	}
}
