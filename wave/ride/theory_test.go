package ride_test

import (
	"cmp"
	"math"
	"testing"

	"followingsea.example/wave/ride"
	"followingsea.example/wave/spectrum"
)

// running reports whether the pendulum x″ + βx′ + sin x = I keeps running when
// it starts at the top of its unstable equilibrium: if it arrives over the next
// one with speed left.
func running(damping, load float64) bool {
	top := math.Pi - math.Asin(load)
	lambda := (-damping + math.Sqrt(damping*damping+4*math.Sqrt(1-load*load))) / 2
	x, v := top+1e-4, lambda*1e-4
	const dt = 0.01
	acc := func(x, v float64) float64 { return load - math.Sin(x) - damping*v }
	for range 200_000 {
		a1, v1 := acc(x, v), v
		a2, v2 := acc(x+dt/2*v1, v+dt/2*a1), v+dt/2*a1
		a3, v3 := acc(x+dt/2*v2, v+dt/2*a2), v+dt/2*a2
		a4, v4 := acc(x+dt*v3, v+dt*a3), v+dt*a3
		x += dt / 6 * (v1 + 2*v2 + 2*v3 + v4)
		v += dt / 6 * (a1 + 2*a2 + 2*a3 + a4)
		if v <= 0 {
			return false
		}
		if x > top+2*math.Pi {
			return true
		}
	}
	return false
}

func TestPendulumByShooting(t *testing.T) {
	for _, b := range []float64{0.1, 0.3, 0.6, 0.9, 1.1} {
		lo, hi := 0.0, 1.0
		for hi-lo > 1e-6 {
			if mid := (lo + hi) / 2; running(b, mid) {
				hi = mid
			} else {
				lo = mid
			}
		}
		near(t, "PendulumThreshold", ride.PendulumThreshold(b), hi, 1e-4)
		// The ship form is its tangent at zero, and lies above it.
		if m := ride.MelnikovThreshold(b); !(m > ride.PendulumThreshold(b) && m-hi < 0.5*b*b*b) {
			t.Errorf("Melnikov %v, shooting %v", m, hi)
		}
	}
	near(t, "continuity at the critical damping", ride.PendulumThreshold(1.193-1e-9), 1, 2e-4)
	for b := 0.0; b < 1.3; b += 0.01 {
		if !(ride.PendulumThreshold(b+0.01) >= ride.PendulumThreshold(b)-1e-4) {
			t.Errorf("not rising at %v", b)
		}
	}
}

func TestSeparatrixMoments(t *testing.T) {
	for n := range 12 {
		sum := 0.0
		const m = 2000
		for i := range m {
			sum += math.Pow(math.Sin((float64(i)+0.5)*math.Pi/m), float64(n))
		}
		near(t, "moment", ride.SeparatrixMoment(n), sum/m, 1e-6)
	}
	for n, want := range map[int]float64{0: 2 * math.Pi, 1: 8, 2: 4 * math.Pi, 3: 64.0 / 3, 4: 12 * math.Pi, 5: 1024.0 / 15} {
		near(t, "coefficient of the level 2 criterion", 2*math.Pi*math.Pow(2, float64(n))*ride.SeparatrixMoment(n), want, 1e-12*want)
	}
}

func TestShipSpeedLimit(t *testing.T) {
	// Scaling with the root of the length, mirror symmetry, and the Froude
	// number of about 0.3 of the level 1 criterion.
	for _, l := range []float64{1, 4.2, 12, 100} {
		near(t, "root", ride.ShipSpeedLimit(4*l, 10), 2*ride.ShipSpeedLimit(l, 10), 1e-12*l)
		near(t, "mirror", ride.ShipSpeedLimit(l, -25), ride.ShipSpeedLimit(l, 25), 1e-12)
		near(t, "Froude number", ride.ShipSpeedLimit(l, 0)/math.Sqrt(9.81*l), 0.2957, 1e-4)
	}
}

func TestPriors(t *testing.T) {
	for _, craft := range []ride.Craft{"", ride.Board, ride.Ski} {
		p, err := ride.Paddler{Craft: craft}.Resolved()
		if err != nil {
			t.Fatal(err)
		}
		got := []float64{p.Mass, p.Length, p.Draught, p.AddedMass, p.Cruise, p.Sprint, p.Drag, p.Bend, p.WindArea, p.WindShare}
		priors := ride.Priors(craft)
		if len(priors) != len(got) {
			t.Fatalf("%d priors", len(priors))
		}
		for i, x := range priors {
			if got[i] != x.Value || !(x.Value > x.Low && x.Value < x.High && x.Spread > 0) || x.Field == "" || x.Unit == "" || x.Provenance == "" {
				t.Errorf("%s: %+v, resolved %v", craft, x, got[i])
			}
		}
		if p.Craft != cmp.Or(craft, ride.Board) {
			t.Errorf("%q is resolved as %q", craft, p.Craft)
		}
		again, err := p.Resolved()
		if err != nil || again != p {
			t.Errorf("resolving twice: %+v, %v", again, err)
		}
	}
	// One speed given, the other follows; the drag grows with the mass.
	p, err := ride.Paddler{Cruise: 3.2, Mass: 95 * 8}.Resolved()
	if err == nil {
		t.Errorf("%+v", p)
	}
	p, err = ride.Paddler{Cruise: 3.2, Mass: 190}.Resolved()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "Sprint", p.Sprint, 4.8, 1e-12)
	near(t, "Drag", p.Drag, 5.5*math.Cbrt(4), 1e-9)
	p, err = ride.Paddler{Sprint: 2.0}.Resolved()
	if err != nil || !(p.Cruise < p.Sprint && p.Cruise > 1) {
		t.Errorf("%+v, %v", p, err)
	}
}

func TestForces(t *testing.T) {
	p := reference
	for _, v := range []float64{0.5, 1.8, 3, 7} {
		near(t, "odd", p.Resistance(-v), -p.Resistance(v), 1e-12)
		near(t, "balance on flat water", p.Pull(v, v), p.Resistance(v), 1e-12)
		near(t, "constant power", p.Pull(1.5*v, v)*1.5*v, p.Resistance(v)*v, 1e-9)
		near(t, "no more than at half speed", p.Pull(0, v), 2*p.Resistance(v), 1e-9)
		near(t, "calm", p.FlatSpeed(v, 0), v, 1e-9)
		near(t, "no wind, no push", p.WindPush(v, 0), 0, 0)
		near(t, "continuous at the speed of the wind", p.WindPush(v, v/0.8-1e-9), 0, 1e-9)
		near(t, "continuous at calm", p.WindPush(v, -1e-9), 0, 1e-6)
		q := shipLike(ride.ConstantForce)
		near(t, "constant force", q.Pull(3*v, v), q.Resistance(v), 1e-12)
		near(t, "square law", q.Resistance(2*v), 4*q.Resistance(v), 1e-9)
	}
	last := math.Inf(-1)
	for wind := -20.0; wind <= 30; wind += 0.25 {
		v := p.FlatSpeed(1.8, wind)
		if !(v >= last) {
			t.Errorf("more tail wind, %v m/s, is slower: %v after %v", wind, v, last)
		}
		last = v
		near(t, "balance", p.Pull(v, 1.8)+p.WindPush(v, wind)-p.Resistance(v), 0, 1e-6)
	}
	if v := p.FlatSpeed(1.8, -25); !(v < 0) {
		t.Errorf("a head wind of 25 m/s leaves %v m/s", v)
	}
}

// catchInTime is the oracle of Catch: bisection on the height of a wave whose
// surge equation is integrated in time from the trough, with the forces of the
// exported formulas.
func catchInTime(p ride.Paddler, period, wind, effort, start float64) float64 {
	const g, inertia = 9.81, 95 * 1.05
	k := 4 * math.Pi * math.Pi / (g * period * period)
	c := g * period / (2 * math.Pi)
	x := k * 2.1
	perM := 95 * g * k / 2 * math.Sin(x) / x * math.Exp(-k*0.025)
	caught := func(h float64) bool {
		psi, v := math.Pi, start
		const dt = 0.02
		acc := func(psi, v float64) float64 {
			return (p.Pull(v, effort) + p.WindPush(v, wind) - p.Resistance(v) + perM*h*math.Sin(psi)) / inertia
		}
		for t := 0.0; t < 60; t += dt {
			a := acc(psi, v)
			hv := v + dt/2*a
			hp := psi + dt/2*k*(v-c)
			psi += dt * k * (hv - c)
			v += dt * acc(hp, hv)
			if v >= c {
				return true
			}
			if psi < 0 {
				return false
			}
		}
		return false
	}
	lo, hi := 0.0, 6.0
	for hi-lo > 1e-3 {
		if mid := (lo + hi) / 2; caught(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return (lo + hi) / 2
}

func TestCatchAgainstTime(t *testing.T) {
	if testing.Short() || underRace {
		t.Skip("long")
	}
	for _, c := range []struct{ period, wind float64 }{{2.5, 0}, {3, 6}, {4, 12}} {
		a, err := reference.Appraise(ride.Bump{Height: 1, Period: c.period, Depth: deep, Wind: c.wind, Gravity: 9.81})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "Catch", a.Catch, catchInTime(reference, c.period, c.wind, 3, a.SprintSpeed), 2e-3+0.005*a.Catch)
		near(t, "CatchFromCruise", a.CatchFromCruise, catchInTime(reference, c.period, c.wind, 3, a.CruiseSpeed), 2e-3+0.005*a.CatchFromCruise)
		near(t, "CatchCruising", a.CatchCruising, catchInTime(reference, c.period, c.wind, 1.8, a.CruiseSpeed), 2e-3+0.005*a.CatchCruising)
	}
}

func TestPreparedBumpIsAppraise(t *testing.T) {
	for _, ready := range someReady() {
		for _, b := range []ride.Bump{{Height: 0.7, Period: 3, Depth: 8, Wind: 9, Off: 20, Current: -0.4}, {Height: 0.2, Period: 1.2, Depth: deep}, {Height: 1, Period: 3, Depth: deep, Current: -3}} {
			a, err := ready.Bump(b)
			if err != nil {
				t.Fatal(err)
			}
			want, err := ready.Paddler().Appraise(b)
			if err != nil {
				t.Fatal(err)
			}
			if !same(a, want) {
				t.Errorf("%+v, want %+v", a, want)
			}
		}
	}
}

// same compares with NaN equal to itself.
func same(a, b ride.Appraisal) bool {
	fix := func(x *float64) {
		if math.IsNaN(*x) {
			*x = -99
		}
	}
	for _, v := range []*ride.Appraisal{&a, &b} {
		for _, f := range []*float64{
			&v.Celerity, &v.Length, &v.Period, &v.OverGround, &v.Push, &v.PushPerM, &v.Glide, &v.Hold, &v.Catch, &v.CatchFromCruise, &v.CatchCruising,
			&v.Inevitable, &v.InevitableCruise, &v.Margin, &v.Position, &v.TippingPoint, &v.CatchTime, &v.Damping, &v.Load, &v.FreeFall, &v.EncounterPeriod,
		} {
			fix(f)
		}
	}
	return a == b
}

// Every verdict can be had, and each for the reason its name gives.
func TestVerdicts(t *testing.T) {
	for want, b := range map[ride.Verdict]ride.Bump{
		ride.Blocked:        {Height: 0.5, Period: 3, Depth: deep, Current: -3},
		ride.TooShort:       {Height: 0.1, Period: 1.2, Depth: deep},
		ride.BoardFaster:    {Height: 0.2, Period: 1.9, Depth: deep, Wind: 10},
		ride.Breaking:       {Height: 2.5, Period: 3, Depth: deep},
		ride.Inevitable:     {Height: 0.9, Period: 2.5, Depth: deep},
		ride.CatchCruising:  {Height: 0.6, Period: 2.5, Depth: deep},
		ride.CatchSprinting: {Height: 0.6, Period: 3, Depth: deep},
		ride.HoldOnly:       {Height: 0.38, Period: 3, Depth: deep},
		ride.TooLow:         {Height: 0.3, Period: 3, Depth: deep},
		ride.TooFast:        {Height: 3, Period: 10, Depth: deep},
	} {
		a, err := reference.Appraise(b)
		if err != nil {
			t.Fatal(err)
		}
		if a.Verdict != want {
			t.Errorf("%+v: %q, want %q", b, a.Verdict, want)
		}
	}
	// Shoaling brings the swell within reach: in 2.5 m it runs at 5 m/s.
	a, err := reference.Appraise(ride.Bump{Height: 1, Period: 12, Depth: 2.5})
	if err != nil {
		t.Fatal(err)
	}
	if a.Verdict == ride.TooFast || !(a.Celerity < 5) {
		t.Errorf("12 s swell in 2.5 m: %q at %v m/s", a.Verdict, a.Celerity)
	}
}

// plainSea is the plain twin of the balance of Prepared.Sea: a dense sum over
// spectrum.JONSWAP, forces and their slopes from the exported formulas.
func plainSea(p ride.Paddler, s ride.Sea) float64 {
	const g = 9.81
	r, err := p.Resolved()
	if err != nil {
		return math.NaN()
	}
	shape := spectrum.JONSWAP{Hs: s.WindSea.Hs, Tp: s.WindSea.Tp, Gamma: s.WindSea.Gamma}
	type band struct{ k, c, force float64 }
	var bands []band
	total := 0.0
	const n = 1500
	lo, hi := 0.5/s.WindSea.Tp, math.Min(8/s.WindSea.Tp, math.Sqrt(g/(2*math.Pi*r.Length)))
	df := (hi - lo) / n
	for i := range n {
		f := lo + (float64(i)+0.5)*df
		k := 4 * math.Pi * math.Pi * f * f / g
		x := k * r.Length / 2
		if x >= math.Pi {
			continue
		}
		push := r.Mass * g * k * math.Sin(x) / x * math.Exp(-k*r.Draught/2)
		b := band{k, g / (2 * math.Pi * f), push * push * shape.Density(f) * df}
		total += b.force
		bands = append(bands, b)
	}
	part := 0.5 * math.Erfc(0.05*r.Mass*g/math.Sqrt(total)/math.Sqrt2)
	net := func(v float64) float64 {
		return (1-part)*r.Pull(v, r.Cruise) + part*r.Pull(v, r.Sprint) + r.WindPush(v, s.Wind) - r.Resistance(v)
	}
	inertia := r.Mass * (1 + r.AddedMass)
	v, sigma := r.FlatSpeed(r.Cruise, s.Wind), 0.3
	for range 300 {
		b := math.Max(2, -(net(v+1e-5)-net(v-1e-5))/2e-5)
		push, wander := 0.0, 0.0
		for _, w := range bands {
			d := w.c - v
			q := d*d + 0.36*sigma*sigma
			x := w.force / (inertia*inertia*w.k*w.k*q + b*b)
			push += 1.28 * b * x * d / q
			wander += x
		}
		v += 0.3 * (net(v) + push) / b
		sigma += 0.3 * (math.Sqrt(wander) - sigma)
	}
	return v
}

func TestSeaAgainstPlain(t *testing.T) {
	for i, tr := range sevenSeas {
		if (testing.Short() || underRace) && i > 1 {
			break
		}
		ready, err := tr.paddler.Prepare()
		if err != nil {
			t.Fatal(err)
		}
		r, err := ready.Sea(tr.sea)
		if err != nil {
			t.Fatal(err)
		}
		near(t, tr.name, r.Speed, plainSea(tr.paddler, tr.sea), 5e-3)
	}
}

// Finer steps and more waves give the same run on average; the same seed the
// same run; a record of what was asked.
func TestSimulationConverges(t *testing.T) {
	a, err := reference.Simulate(benchSea, ride.Run{Seed: 7, Seconds: 120, Keep: 10})
	if err != nil {
		t.Fatal(err)
	}
	b, err := reference.Simulate(benchSea, ride.Run{Seed: 7, Seconds: 120, Keep: 10})
	if err != nil {
		t.Fatal(err)
	}
	if a.Speed != b.Speed || len(a.Moments) != 240 || a.Moments[100] != b.Moments[100] {
		t.Error("one seed, two runs")
	}
	near(t, "distance of the record", a.Moments[239].Distance/a.Moments[239].Time, a.Speed, 0.05)
	fine, err := reference.Simulate(benchSea, ride.Run{Seed: 7, Seconds: 120, Step: 0.01})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "step", a.Speed, fine.Speed, 0.06)
	flat, err := reference.Simulate(ride.Sea{Wind: 10, Depth: deep}, ride.Run{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "flat water", flat.Speed, reference.FlatSpeed(1.8, 10), 1e-9)
	steady, err := reference.Simulate(benchSea, ride.Run{Seed: 7, Seconds: 120, Steady: true})
	if err != nil {
		t.Fatal(err)
	}
	if !(steady.Speed < a.Speed && steady.Sprinting == 0) {
		t.Errorf("steady %v, sprinting %v m/s", steady.Speed, a.Speed)
	}
}

func TestHazards(t *testing.T) {
	ready := someReady()[0]
	l := ride.StartingLimits()
	raised := func(s ride.Sea, l ride.Limits) map[ride.HazardName]ride.Hazard {
		t.Helper()
		hs, err := ready.Hazards(s, l)
		if err != nil {
			t.Fatal(err)
		}
		m := map[ride.HazardName]ride.Hazard{}
		for _, h := range hs {
			if h.Raised != (h.Measure > h.Threshold) || !(h.Measure >= 0) {
				t.Errorf("%+v", h)
			}
			m[h.Name] = h
		}
		if len(m) != 6 {
			t.Fatalf("%v", m)
		}
		return m
	}
	calm := raised(ride.Sea{Depth: deep}, l)
	for _, h := range calm {
		if h.Measure != 0 {
			t.Errorf("flat water: %+v", h)
		}
	}
	steep := raised(ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 2.6}, Wind: 12, Depth: deep}, l)
	if !steep[ride.Pearling].Raised || !steep[ride.BreakingSea].Raised || steep[ride.Broach].Raised || steep[ride.CrossingSea].Raised {
		t.Errorf("short and steep: %v", steep)
	}
	near(t, "breaking sea", steep[ride.BreakingSea].Measure, 0.6/(9.80665*2.6*2.6/2/math.Pi), 1e-9)
	quarter := raised(ride.Sea{WindSea: ride.System{Hs: 0.9, Tp: 3.2, Off: -30}, Wind: 12, Depth: deep}, l)
	if !quarter[ride.Broach].Raised {
		t.Errorf("from the quarter: %v", quarter)
	}
	crossing := ride.Sea{WindSea: ride.System{Hs: 0.8, Tp: 3.2}, Swell: ride.System{Hs: 0.8, Tp: 4, Off: 70}, Wind: 10, Depth: deep}
	c := raised(crossing, l)
	if !c[ride.CrossingSea].Raised {
		t.Errorf("crossing: %v", c)
	}
	near(t, "crossing share", c[ride.CrossingSea].Measure, 0.5, 1e-12)
	crossing.Swell.Off = 20 // following
	if c := raised(crossing, l); c[ride.CrossingSea].Measure != 0 {
		t.Errorf("following: %v", c)
	}
	// Every threshold is a parameter.
	l.SeaSteepness = 0.2
	l.PearlingSteepness = 0.2
	l.BumpSteepness = 0.2
	l.Overrun = 9
	for _, h := range raised(ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 2.6}, Wind: 12, Depth: deep}, l) {
		if h.Raised {
			t.Errorf("with wide limits: %+v", h)
		}
	}
	if got := (ride.FromAhead | ride.SteepSea).String(); got != "waves from ahead not counted, steep sea" {
		t.Errorf("remarks read %q", got)
	}
	if got := ride.Remark(0).String(); got != "none" {
		t.Errorf("no remark reads %q", got)
	}
}
