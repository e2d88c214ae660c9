package ride_test

import (
	"math"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/wave"
	"followingsea.example/wave/ride"
)

func drawPaddler(t *rapid.T) ride.Paddler {
	cruise := rapid.Float64Range(1.2, 2.6).Draw(t, "cruise")
	return ride.Paddler{
		Mass: rapid.Float64Range(55, 125).Draw(t, "mass"), Length: rapid.Float64Range(3.2, 5).Draw(t, "length"),
		Cruise: cruise, Sprint: cruise * rapid.Float64Range(1.1, 1.8).Draw(t, "sprint over cruise"),
	}
}

func drawBump(t *rapid.T) ride.Bump {
	return ride.Bump{
		Height: rapid.Float64Range(0.05, 2).Draw(t, "height"), Period: rapid.Float64Range(1.8, 8).Draw(t, "period"),
		Depth: rapid.Float64Range(2, 60).Draw(t, "depth"), Wind: rapid.Float64Range(-4, 16).Draw(t, "wind"),
	}
}

func appraise(t *rapid.T, p ride.Paddler, b ride.Bump) ride.Appraisal {
	a, err := p.Appraise(b)
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// What takes a board along whatever the timing can be caught by timing, and
// what is caught can be held; gliding asks more than holding with a paddle.
func TestPropertyThresholdsAreOrdered(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := appraise(t, drawPaddler(t), drawBump(t))
		const tol = 1 + 1e-6
		for _, c := range []struct {
			what      string
			low, high float64
			slack     float64
		}{
			{"catch, from cruise", a.Catch, a.CatchFromCruise, 0},
			{"from cruise, cruising", a.CatchFromCruise, a.CatchCruising, 1e-3},
			{"hold, glide", a.Hold, a.Glide, 1e-9},
			{"hold, catch", a.Hold, a.Catch, 1e-9},
			{"inevitable, at cruise", a.Inevitable, a.InevitableCruise, 1e-3},
			{"hold, inevitable", a.Hold, a.Inevitable, 1e-9},
		} {
			if !(c.low <= c.high*tol+c.slack) {
				t.Fatalf("%s: %v, %v", c.what, c.low, c.high)
			}
		}
	})
}

// Mirror symmetry; more height never makes the verdict worse; a stronger
// paddler needs no more height; a heading off the wave needs more.
func TestPropertyMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, b := drawPaddler(t), drawBump(t)
		b.Off = rapid.Float64Range(0, 45).Draw(t, "off")
		a := appraise(t, p, b)
		m := b
		m.Off = -b.Off
		if appraise(t, p, m).Catch != a.Catch {
			t.Fatal("the two sides differ")
		}
		strong := p
		strong.Sprint *= 1.1
		if s := appraise(t, strong, b); !(s.Hold <= a.Hold+1e-9 && s.Catch <= a.Catch+1e-3) {
			t.Fatalf("stronger needs more: %v, %v", s.Catch, a.Catch)
		}
		turned := b
		turned.Off += 10
		// A board turned on a wave hardly longer than itself bridges less of it.
		if o := appraise(t, p, turned); a.Length > 2.2*p.Length && !(o.Hold >= a.Hold-1e-9) {
			t.Fatalf("turned needs less: %v, %v", o.Hold, a.Hold)
		}
		high := b
		high.Height *= 1.3
		if h := appraise(t, p, high); a.Carried && !h.Carried {
			t.Fatal("a higher wave does not carry")
		}
	})
}

// Straight before the wave the least height is needed, and the best line never
// makes less ground along the course than riding straight.
func TestLineIsBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, b := drawPaddler(t), drawBump(t)
		b.Off = rapid.Float64Range(-75, 75).Draw(t, "off")
		l, err := p.Line(b)
		if err != nil {
			t.Fatal(err)
		}
		if math.IsNaN(l.Ride) {
			straight := b
			straight.Off = 0
			if a := appraise(t, p, straight); a.PushPerM > 0 && b.Height >= a.Hold*1.000001 && a.SprintSpeed < a.Celerity {
				t.Fatal("held straight, but no line")
			}
			return
		}
		if !(l.Progress >= l.Straight-1e-9 && l.Ride <= math.Abs(b.Off) && l.Ride <= l.Steepest && l.Catch == 0) {
			t.Fatalf("%+v for %+v", l, b)
		}
		// No heading up to the steepest and the course makes more ground.
		for _, part := range []float64{0.25, 0.5, 0.75} {
			theta := l.Ride * part
			if c := l.Straight / math.Cos(b.Off*math.Pi/180); c/math.Cos(theta*math.Pi/180)*math.Cos((math.Abs(b.Off)-theta)*math.Pi/180) > l.Progress+1e-9 {
				t.Fatalf("%v degrees makes more ground than %+v", theta, l)
			}
		}
	})
}

// The wave of an appraisal is that of package wave, also on a current.
func TestWaveIsThatOfPackageWave(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p, b := drawPaddler(t), drawBump(t)
		if rapid.Bool().Draw(t, "deep") {
			b.Depth = deep
		}
		a := appraise(t, p, b)
		w := wave.Solve(b.Period, b.Depth)
		if !(math.Abs(a.Celerity-w.PhaseSpeed) <= 1e-12*w.PhaseSpeed && math.Abs(a.Length-w.Length) <= 1e-12*w.Length) {
			t.Fatalf("%v m/s, %v m; want %v, %v", a.Celerity, a.Length, w.PhaseSpeed, w.Length)
		}
		b.Current = rapid.Float64Range(-2, 2).Draw(t, "current")
		a = appraise(t, p, b)
		if a.Verdict == ride.Blocked {
			if b.Current >= 0 {
				t.Fatal("blocked by a current that runs with it")
			}
			return
		}
		// The definition: the fixed observer's period is what is left of
		// intrinsic frequency and shift; and the intrinsic wave is a wave.
		k := 2 * math.Pi / a.Length
		w = wave.Solve(a.Period, b.Depth)
		if got := 2*math.Pi/a.Period + k*b.Current; !(math.Abs(got-2*math.Pi/b.Period) <= 1e-9*got && math.Abs(k-w.Wavenumber) <= 1e-9*k) {
			t.Fatalf("%+v is no wave of %+v", a, b)
		}
	})
}

// A sea: no waves give the flat speed; waves from ahead give nothing; mirror
// symmetry; a little more sea changes the speed a little.
func TestPropertySea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ready := rapid.SampledFrom(someReady()).Draw(t, "paddler")
		tp := rapid.Float64Range(1.5, 9).Draw(t, "tp")
		s := ride.Sea{
			WindSea: ride.System{Hs: rapid.Float64Range(0, 0.06).Draw(t, "steepness") * 1.56 * tp * tp, Tp: tp, Off: rapid.Float64Range(-60, 60).Draw(t, "off")},
			Wind:    rapid.Float64Range(-5, 18).Draw(t, "wind"), Depth: deep,
		}
		sea := func(s ride.Sea) ride.Ride {
			r, err := ready.Sea(s)
			if err != nil {
				t.Fatal(err)
			}
			return r
		}
		r := sea(s)
		if !(r.Spread > 0 && r.RidingShare >= 0 && r.RidingShare <= 1 && r.EnergyShare >= 0 && r.EnergyShare <= 1 && r.WaveShare >= 0 && r.WaveShare <= 1 && r.Speed < 12) {
			t.Fatalf("%+v", r)
		}
		flat := s
		flat.WindSea = ride.System{}
		if f := sea(flat); !(math.Abs(f.Speed-f.FlatSpeed) <= 1e-9 && f.CatchesPerHour == 0) {
			t.Fatalf("flat water: %+v", f)
		}
		ahead := s
		ahead.WindSea.Off += 180
		if a := sea(ahead); a.Speed != a.FlatSpeed || s.WindSea.Hs > 0 && a.Remarks&ride.FromAhead == 0 {
			t.Fatalf("from ahead: %+v", a)
		}
		mirror := s
		mirror.WindSea.Off *= -1
		if m := sea(mirror); m != r {
			t.Fatalf("mirror: %+v, %+v", m, r)
		}
		more := s
		more.WindSea.Hs *= 1.01
		if m := sea(more); !(math.Abs(m.Speed-r.Speed) <= 0.08) {
			t.Fatalf("1 %% more sea: %v, %v", m.Speed, r.Speed)
		}
	})
}

// someReady are paddlers made ready once: sixty and more would be slow.
var someReady = sync.OnceValue(func() (all []*ride.Prepared) {
	for _, p := range []ride.Paddler{
		reference,
		{Mass: 62, Length: 3.7, Cruise: 1.4, Sprint: 2.1},
		{Craft: ride.Ski, Cruise: 3.0, Sprint: 4.4},
	} {
		ready, err := p.Prepare()
		if err != nil {
			panic(err)
		}
		all = append(all, ready)
	}
	return all
})

// One Prepared serves many goroutines, and all get the same.
func TestPreparedIsConcurrent(t *testing.T) {
	ready, err := reference.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	want, err := ready.Sea(benchSea)
	if err != nil {
		t.Fatal(err)
	}
	var wait sync.WaitGroup
	for range 4 {
		wait.Add(1)
		go func() {
			defer wait.Done()
			for range 20 {
				if got, err := ready.Sea(benchSea); err != nil || got != want {
					t.Errorf("%+v, %v", got, err)
				}
			}
		}()
	}
	wait.Wait()
}

func TestNoAllocations(t *testing.T) {
	ready, err := reference.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	table, err := ready.Table(ride.Sea{Depth: deep}, 0.6)
	if err != nil {
		t.Fatal(err)
	}
	for name, f := range map[string]func(){
		"Sea":  func() { _, _ = ready.Sea(benchSea) },
		"Bump": func() { _, _ = ready.Bump(ride.Bump{Height: 0.6, Period: 3, Depth: deep}) },
		"At":   func() { _, _ = table.At(0.7, 3.6, 10, 20) },
	} {
		if n := testing.AllocsPerRun(20, f); n != 0 {
			t.Errorf("%s allocates %v times", name, n)
		}
	}
}

// The table against the sea at random places: within what it says of itself,
// and nearly always far within.
func TestTableAgainstSea(t *testing.T) {
	within := 0.0 // the default, 0.2
	if testing.Short() || underRace {
		within = 0.6
	}
	ready, err := reference.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	table, err := ready.Table(ride.Sea{Depth: deep}, within)
	if err != nil {
		t.Fatal(err)
	}
	if within == 0 {
		within = 0.2
	}
	if !(table.Worst() <= within) {
		t.Errorf("Worst = %v", table.Worst())
	}
	sum, n := 0.0, 0
	rapid.Check(t, func(t *rapid.T) {
		tp := rapid.Float64Range(1.2, 14).Draw(t, "tp")
		hs := rapid.Float64Range(0, 0.0649).Draw(t, "steepness") * 9.80665 / 2 / math.Pi * tp * tp
		wind := rapid.Float64Range(-8, 20).Draw(t, "wind")
		off := rapid.Float64Range(-180, 180).Draw(t, "off")
		q, ok := table.At(hs, tp, wind, off)
		if !ok {
			t.Fatal("outside")
		}
		r, err := ready.Sea(ride.Sea{WindSea: ride.System{Hs: hs, Tp: tp, Off: off}, Wind: wind, Depth: deep})
		if err != nil {
			t.Fatal(err)
		}
		e := math.Abs(q.Speed - r.Speed)
		sum += e
		n++
		if !(e <= table.Worst() && math.Abs(q.FlatSpeed-r.FlatSpeed) <= 2e-3 && math.Abs(q.Spread-r.Spread) <= 0.2) {
			t.Fatalf("%+v, the sea has %+v", q, r)
		}
	})
	if !(sum/float64(n) <= within/6) {
		t.Errorf("mean difference %v m/s", sum/float64(n))
	}
}

// Calibration gives back the resistance that made the observation.
func TestCalibrationRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPaddler(t)
		p.Drag = rapid.Float64Range(4, 8).Draw(t, "drag")
		q, err := p.WithSprintPower(p.Resistance(p.Sprint) * p.Sprint)
		if err != nil || !(math.Abs(q.Drag-p.Drag) <= 1e-9) {
			t.Fatalf("power: %v, %v", q.Drag, err)
		}
	})
	for _, ready := range someReady() {
		p := ready.Paddler()
		run, err := ready.Sea(benchSea)
		if err != nil {
			t.Fatal(err)
		}
		p.Drag = 0
		q, err := p.WithDownwindMean(benchSea, run.Speed)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "Drag", q.Drag, ready.Paddler().Drag, 1e-4)
	}
	for _, v := range []float64{nan, 0.5, 9, math.Inf(1)} {
		if _, err := reference.WithDownwindMean(benchSea, v); err == nil {
			t.Errorf("a mean of %v is accepted", v)
		}
	}
	for _, w := range []float64{nan, -5, 1, 1e6} {
		if _, err := reference.WithSprintPower(w); err == nil {
			t.Errorf("%v W is accepted", w)
		}
	}
}
