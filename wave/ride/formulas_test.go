package ride_test

import (
	"math"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/ride"
)

// plainBumps are bumps of every kind: deep and shallow, straight and oblique, with and against current and wind.
var plainBumps = []struct {
	paddler ride.Paddler
	bump    ride.Bump
}{
	{reference, ride.Bump{Height: 0.6, Period: 3, Depth: deep, Wind: 10}},
	{reference, ride.Bump{Height: 0.7, Period: 3, Depth: 8, Wind: 9, Off: 20, Current: -0.4}},
	{ride.Paddler{Mass: 62, Length: 3.7, Cruise: 1.4, Sprint: 2.1}, ride.Bump{Height: 0.5, Period: 2.4, Depth: 3, Wind: -3, Off: -35, Current: 0.5, Gravity: 9.2}},
	{ride.Paddler{Craft: ride.Ski, Cruise: 3, Sprint: 4.4}, ride.Bump{Height: 1.2, Period: 3.6, Depth: deep, Wind: 12, Off: 10}},
	{shipLike(ride.ConstantForce), ride.Bump{Height: 0.6, Period: 3, Depth: deep, Gravity: 9.81}},
	{reference, ride.Bump{Height: 0.5, Period: 2.2, Depth: 2, Wind: 4, Current: 0.3}},
}

// damping is β, the secant damping over the separatrix: (mean of G(c - q sin y) - G(c))/(2q/π)/√(F k M).
func (p plain) damping(w plainWave, f, vs, wind float64) float64 {
	q := 2 * math.Sqrt(f/(w.k*p.inertia()))
	return (p.overSeparatrix(w, f, vs, wind) - p.net(w.c, vs, wind)) / (2 * q / math.Pi) / math.Sqrt(f*w.k*p.inertia())
}

// overSeparatrix is the mean of G(c - q sin y).
func (p plain) overSeparatrix(w plainWave, f, vs, wind float64) (mean float64) {
	q := 2 * math.Sqrt(f/(w.k*p.inertia()))
	const n = 500
	for i := range n {
		mean += p.net(w.c-q*math.Sin((float64(i)+0.5)*math.Pi/n), vs, wind) / n
	}
	return mean
}

// TestAppraisalIsThatOfItsFormulas: every field of an appraisal is that of its definition: forces as printed, the catch by
// the surge equation followed backwards and forwards in time, the inevitable by the threshold of the pendulum.
func TestAppraisalIsThatOfItsFormulas(t *testing.T) {
	for i, c := range plainBumps {
		p, b := plainly(t, c.paddler), c.bump
		a, err := c.paddler.Appraise(b)
		if err != nil {
			t.Fatal(err)
		}
		g := b.Gravity
		if g == 0 {
			g = wave.StandardGravity
		}
		cos := math.Cos(b.Off * math.Pi / 180)
		v := wave.Water{Gravity: g}.OnCurrent(b.Period, b.Depth, b.Current)
		w, _ := p.wave(b.Period, b.Depth, b.Current/cos, b.Off, g) // here the current is along the wave
		sprint, cruise := p.FlatSpeed(p.Sprint, b.Wind), p.FlatSpeed(p.Cruise, b.Wind)
		lack := func(vs float64) float64 { return -p.net(w.c, vs, b.Wind) }
		push := w.perM * b.Height
		type field struct {
			name      string
			got, want float64
		}
		fields := []field{
			{"Celerity", a.Celerity, v.IntrinsicPhaseSpeed / cos},
			{"Length", a.Length, v.Length / cos},
			{"Period", a.Period, v.IntrinsicPeriod},
			{"OverGround", a.OverGround, v.IntrinsicPhaseSpeed + b.Current},
			{"PushPerM", a.PushPerM, w.perM},
			{"Push", a.Push, push},
			{"Glide", a.Glide, math.Max(0, lack(0)/w.perM)},
			{"Hold", a.Hold, math.Max(0, lack(p.Sprint)/w.perM)},
			{"Margin", a.Margin, b.Height / a.Catch},
			{"FreeFall", a.FreeFall, 2 * math.Sqrt(push/(w.k*p.inertia()))},
			{"SprintSpeed", a.SprintSpeed, sprint},
			{"CruiseSpeed", a.CruiseSpeed, cruise},
			{"EncounterPeriod", a.EncounterPeriod, v.Length / cos / (w.c - cruise)},
			{"Load", a.Load, lack(p.Sprint) / push},
		}
		if a.Load < 1 {
			tip := math.Asin(a.Load) * 180 / math.Pi
			fields = append(fields, field{"TippingPoint", a.TippingPoint, tip}, field{"Position", a.Position, 180 - tip})
		}
		for _, f := range fields {
			if !(math.Abs(f.got-f.want) <= 1e-8*(1+math.Abs(f.want))) {
				t.Errorf("bump %d: %s = %v, want %v", i, f.name, f.got, f.want)
			}
		}
		if a.Carried != (b.Height >= a.Glide) {
			t.Errorf("bump %d: carried %v at %v m, glides from %v m", i, a.Carried, b.Height, a.Glide)
		}
		rel(t, "Damping", a.Damping, p.damping(w, push, p.Sprint, b.Wind), 3e-4)

		for _, x := range []struct {
			name              string
			height, vs, start float64
		}{
			{"Catch", a.Catch, p.Sprint, sprint}, {"CatchFromCruise", a.CatchFromCruise, p.Sprint, cruise}, {"CatchCruising", a.CatchCruising, p.Cruise, cruise},
		} {
			f := x.height * w.perM
			if from := p.arrives(w, f, x.vs, b.Wind); f > lack(x.vs)*(1+1e-9) || from > x.start { // else what holds it catches
				near(t, x.name+", the speed in the trough", from, x.start, 2e-5)
			}
		}
		for _, x := range []struct {
			name       string
			height, vs float64
		}{{"Inevitable", a.Inevitable, p.Sprint}, {"InevitableCruise", a.InevitableCruise, p.Cruise}} {
			f := x.height * w.perM
			if d := p.damping(w, f, x.vs, b.Wind); d < 1.19 { // else it is Hold
				rel(t, x.name+", load", lack(x.vs)/f, ride.PendulumThreshold(d), 1e-4)
			} else {
				rel(t, x.name, f, lack(x.vs), 1e-9)
			}
		}
		if want, ok := p.runUp(w, push, p.Sprint, b.Wind, sprint); ok != (b.Height >= a.Catch) || ok && !(math.Abs(a.CatchTime-want) <= 1e-3) {
			t.Errorf("bump %d: catch in %v s, want %v s, %v", i, a.CatchTime, want, ok)
		}
	}
}

// TestRunUpHasItsTime: a wave hardly faster than a sprint takes minutes to pass. The height that catches it does so within a
// minute, from a sprint under way or, if that is the lower, from cruising speed; a lower wave does not.
func TestRunUpHasItsTime(t *testing.T) {
	for _, period := range []float64{1.95, 1.97, 2.0, 2.1} {
		b := ride.Bump{Height: 0.3, Period: period, Depth: deep}
		p := plainly(t, ride.Paddler{Mass: 95, Length: 2.5, Cruise: 1.8, Sprint: 3})
		a, err := p.Appraise(b)
		if err != nil {
			t.Fatal(err)
		}
		w, _ := p.wave(period, deep, 0, 0, wave.StandardGravity)
		inTime := func(height, start float64) bool {
			s, ok := p.runUp(w, height*w.perM, p.Sprint, 0, start)
			return ok && s <= 60
		}
		if !inTime(a.Catch*1.002, 3) && !inTime(a.Catch*1.002, 1.8) {
			t.Errorf("%v s: %v m does not catch within a minute", period, a.Catch)
		}
		if a.Catch > a.Hold*1.0001 && (inTime(a.Catch*0.998, 3) || inTime(a.Catch*0.998, 1.8)) {
			t.Errorf("%v s: less than %v m catches within a minute", period, a.Catch)
		}
		if !inTime(a.CatchFromCruise*1.002, 1.8) || inTime(a.CatchFromCruise*0.998, 1.8) {
			t.Errorf("%v s: %v m is not what catches from cruise", period, a.CatchFromCruise)
		}
	}
}

// TestVerdictsAtTheirHeights: a verdict holds from its height on, and just below it the next one in the order does.
func TestVerdictsAtTheirHeights(t *testing.T) {
	b := ride.Bump{Height: 0.5, Period: 2.6, Depth: 7, Off: 15, Gravity: 9.81}
	p := plainly(t, reference)
	a, err := p.Appraise(b)
	if err != nil {
		t.Fatal(err)
	}
	w, _ := p.wave(b.Period, b.Depth, 0, b.Off, b.Gravity)
	breaking := 0.142 * 2 * math.Pi / w.own * math.Tanh(w.own*b.Depth)
	below := func(h float64) float64 { return math.Nextafter(h, 0) }
	for _, c := range []struct {
		height float64
		want   ride.Verdict
	}{
		{breaking * (1 + 1e-9), ride.Breaking}, {breaking * (1 - 1e-9), ride.Inevitable},
		{a.InevitableCruise, ride.Inevitable}, {below(a.InevitableCruise), ride.CatchCruising},
		{a.CatchCruising, ride.CatchCruising}, {below(a.CatchCruising), ride.CatchSprinting},
		{a.Catch, ride.CatchSprinting}, {below(a.Catch), ride.HoldOnly},
		{a.Hold, ride.HoldOnly}, {below(a.Hold), ride.TooLow}, {0, ride.TooLow},
	} {
		b.Height = c.height
		v, err := p.Appraise(b)
		if err != nil {
			t.Fatal(err)
		}
		if v.Verdict != c.want || c.height != a.Catch && math.IsNaN(v.CatchTime) != (c.height < a.Catch) || v.Carried != (c.height >= a.Glide) {
			t.Errorf("%v m: %q, carried %v, caught in %v s; want %q, from %v and %v m", c.height, v.Verdict, v.Carried, v.CatchTime, c.want, a.Glide, a.Catch)
		}
		if x := c.height / a.Hold; !(math.Abs(x-1) < 1e-9) && math.IsNaN(v.Position) != (x < 1) {
			t.Errorf("%v m, %v m hold: settles at %v", c.height, a.Hold, v.Position)
		}
	}
	b.Height = a.Glide
	if v, err := p.Appraise(b); err != nil || !v.Carried {
		t.Errorf("%v m glide, but do not carry", b.Height)
	}
	b.Height = below(a.Glide)
	if v, err := p.Appraise(b); err != nil || v.Carried {
		t.Errorf("less than %v m carry", a.Glide)
	}

	// Too fast is a wave that is held only from a tenth of its length, times tanh kh, on.
	for _, b := range []ride.Bump{{Period: 5, Depth: deep, Gravity: 9.5}, {Height: 0.1, Period: 5, Depth: 6, Off: 30, Gravity: 9.81}} {
		excess := func(period float64) float64 {
			w, _ := p.wave(period, b.Depth, 0, b.Off, b.Gravity)
			return -p.net(w.c, p.Sprint, 0)/w.perM - 0.1*2*math.Pi/w.own*math.Tanh(w.own*b.Depth)
		}
		lo, hi := 2.0, 15.0
		for hi-lo > 1e-9 {
			if mid := (lo + hi) / 2; excess(mid) > 0 {
				hi = mid
			} else {
				lo = mid
			}
		}
		for period, want := range map[float64]ride.Verdict{lo - 1e-6: ride.TooLow, hi + 1e-6: ride.TooFast} {
			b.Period = period
			if v, err := p.Appraise(b); err != nil || v.Verdict != want {
				t.Errorf("%v s: %q, want %q, %v", period, v.Verdict, want, err)
			}
		}
	}

	// A board as fast without any wave: every height does.
	v, err := p.Appraise(ride.Bump{Height: 0.2, Period: 1.9, Depth: deep, Wind: 10})
	if err != nil || v.Verdict != ride.BoardFaster || v.Catch != 0 || v.Hold != 0 || v.Inevitable != 0 || v.CatchTime != 0 || !math.IsInf(v.Margin, 1) {
		t.Errorf("%+v, %v", v, err)
	}
	// Cruising faster than the wave, the board overtakes its crests.
	if v, err = p.Appraise(ride.Bump{Height: 0.2, Period: 1.6, Depth: deep, Wind: 20}); err != nil || !(v.EncounterPeriod < 0 && v.CruiseSpeed > v.Celerity) {
		t.Errorf("%+v, %v", v, err)
	}
}

// TestLineIsThatOfItsFormulas: the steepest heading is that on which the wave is just high enough to hold, the ride goes
// there or to the course, and the progress is c/cos θ · cos(θ - Off).
func TestLineIsThatOfItsFormulas(t *testing.T) {
	for _, b := range []ride.Bump{
		{Height: 0.45, Period: 3, Depth: deep, Off: 35},
		{Height: 0.6, Period: 3, Depth: 4, Off: -15, Current: -0.3, Wind: 4},
		{Height: 0.5, Period: 3, Depth: deep, Off: 75, Wind: 6, Gravity: 9.81},
	} {
		p := plainly(t, reference)
		l, err := p.Line(b)
		if err != nil {
			t.Fatal(err)
		}
		at := b
		at.Off = l.Steepest
		a, err := p.Appraise(at)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "height that holds on the steepest heading", a.Hold, b.Height, 1e-7)
		off := math.Abs(b.Off)
		near(t, "Ride", l.Ride, math.Min(off, l.Steepest), 0)
		at.Off = 0
		if a, err = p.Appraise(at); err != nil {
			t.Fatal(err)
		}
		rad := math.Pi / 180
		near(t, "Speed", l.Speed, a.Celerity/math.Cos(l.Ride*rad), 1e-9)
		near(t, "Progress", l.Progress, a.Celerity/math.Cos(l.Ride*rad)*math.Cos((l.Ride-off)*rad), 1e-9)
		near(t, "Straight", l.Straight, a.Celerity*math.Cos(off*rad), 1e-9)
	}
	// A wave that holds on every heading up to the steepest allowed.
	l, err := reference.Line(ride.Bump{Height: 10, Period: 2.2, Depth: deep, Wind: 12, Off: 20})
	if err != nil || l.Steepest != 75 || l.Ride != 20 {
		t.Errorf("%+v, %v", l, err)
	}
}

// TestForcesAreThosePrinted: resistance, pull, wind push and flat speed are those of the printed formulas, astern too.
func TestForcesAreThosePrinted(t *testing.T) {
	for _, q := range []ride.Paddler{reference, {Craft: ride.Ski, Mass: 80, WindArea: 0.5}, shipLike(ride.ConstantForce)} {
		p := plainly(t, q)
		for _, v := range []float64{-3, -0.5, 0, 0.4, 1, 1.9, 3.5, 6, 12} {
			rel(t, "Resistance", q.Resistance(v), p.resistance(v), 1e-12)
			for _, vs := range []float64{0, 0.5, 2, 3.8} {
				rel(t, "Pull", q.Pull(v, vs), p.pull(v, vs), 1e-12)
			}
			for _, wind := range []float64{-12, -1, 0, 2, 6, 15} {
				near(t, "WindPush", q.WindPush(v, wind), p.windPush(v, wind), 1e-9)
			}
		}
		for _, wind := range []float64{-30, -12, -1, 0, 2, 6, 15, 100, -100} {
			for _, vs := range []float64{0, 0.5, 2, 3.8, 20} {
				v := q.FlatSpeed(vs, wind)
				if !(p.net(v-1e-6, vs, wind) >= 0 && p.net(v+1e-6, vs, wind) <= 0) {
					t.Errorf("FlatSpeed(%v, %v) = %v, where %v N are left", vs, wind, v, p.net(v, vs, wind))
				}
			}
		}
	}
}

// TestStrengthIsThatOfItsFormulas: each strength is that at which its condition is just met: the load is one, the path into
// the unstable equilibrium starts at the flat speed, the load is the threshold of the pendulum, the path stays behind the
// wave from one crest to the next, the mean of G over the separatrix is zero.
func TestStrengthIsThatOfItsFormulas(t *testing.T) {
	for i, c := range plainBumps {
		p, b := plainly(t, c.paddler), c.bump
		b.Gravity = math.Max(b.Gravity, 9.5)
		s, err := c.paddler.Strength(b)
		if err != nil {
			t.Fatal(err)
		}
		w, _ := p.wave(b.Period, b.Depth, b.Current/math.Cos(b.Off*math.Pi/180), b.Off, b.Gravity)
		f := w.perM * b.Height
		load := func(vs float64) float64 { return -p.net(w.c, vs, b.Wind) / f }
		// just is met: at vs and not below.
		just := func(name string, vs, tol float64, met func(vs float64) bool) {
			t.Helper()
			if !met(vs*(1+tol)+1e-9) || vs > 1e-6 && met(vs*(1-tol)) {
				t.Errorf("bump %d: %s at %v m/s: %v, %v", i, name, vs, met(vs*(1-tol)), met(vs*(1+tol)))
			}
		}
		just("Hold", s.Hold, 1e-8, func(vs float64) bool { return load(vs) <= 1 })
		just("Catch", s.Catch, 3e-5, func(vs float64) bool {
			return load(vs) <= 1 && p.arrives(w, f, vs, b.Wind) <= p.FlatSpeed(vs, b.Wind)
		})
		just("Inevitable", s.Inevitable, 5e-4, func(vs float64) bool { return load(vs) <= ride.PendulumThreshold(p.damping(w, f, vs, b.Wind)) })
		just("Melnikov", s.Melnikov, 1e-4, func(vs float64) bool { return p.overSeparatrix(w, f, vs, b.Wind) >= 0 })
		exact := func(vs float64) bool {
			return load(vs) <= 1 && p.back(w, f, vs, b.Wind, math.Asin(math.Max(-1, load(vs)))+2*math.Pi-2e-3) > 0
		}
		if !exact(s.Exact*1.0001+1e-9) || s.Exact > 1e-6 && exact(s.Exact*0.9999) {
			t.Errorf("bump %d: Exact at %v m/s", i, s.Exact)
		}
	}
	// Of a wave that does not exist, does not push or is no wave there is nothing to ask.
	for _, b := range []ride.Bump{{Height: 1, Period: 3, Depth: deep, Current: -3}, {Height: 1, Period: 1.2, Depth: deep}, {Period: 3, Depth: deep}} {
		if s, err := reference.Strength(b); err != nil || s.Hold == s.Hold || s.Exact == s.Exact || s.Standing != ride.Standing {
			t.Errorf("%+v: %+v, %v", b, s, err)
		}
	}
}
