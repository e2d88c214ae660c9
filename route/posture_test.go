package route

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// accelerate is the oracle of Posture.Way: a board of 100 kg in the two
// forces ahead and abeam, stepped in time from rest until it is steady.
func accelerate(p Posture, heading float64, wind Velocity) Velocity {
	var u, s float64
	wu, ws := wind.Scale(p.Exposure).Resolve(heading)
	const mass, dt = 100, 0.01
	for range 200000 {
		au, as := wu-u, ws-s
		a := math.Sqrt(au*au + as*as)
		k := 0.5 * AirDensity * p.Area * a
		fu := p.Thrust(u) + k*au - p.Resistance(u)
		fs := k*as - p.Side*s*math.Abs(s)
		u, s = u+fu/mass*dt, s+fs/mass*dt
		if math.Abs(fu)+math.Abs(fs) < 1e-9 {
			break
		}
	}
	sh, ch := sincosd(heading)
	return Velocity{u*sh + s*ch, u*ch - s*sh}
}

// TestPostureHeadWind is the table of the note: speed dead into the wind, m/s,
// of a paddler of 1.8 m/s on flat water.
func TestPostureHeadWind(t *testing.T) {
	want := map[string][5]float64{ // wind 0, 10, 15, 20, 25 kn
		"standing": {1.76, 1.40, 1.14, 0.81, -0.51},
		"kneeling": {1.51, 1.26, 1.07, 0.86, 0.30},
		"prone":    {1.07, 0.94, 0.83, 0.69, 0.55},
		"drifting": {0, -0.10, -0.16, -0.21, -0.26},
	}
	for _, p := range Postures(1.8) {
		for i, kn := range []float64{0, 10, 15, 20, 25} {
			v := p.Way(40, From(kn*Knot, 40))
			along, across := v.Resolve(40)
			within(t, p.Name, along, want[p.Name][i], 0.005)
			within(t, p.Name+" across", across, 0, 1e-12)
		}
	}
}

// TestPostureWayIsSteady: the root is where the board in time ends up.
func TestPostureWayIsSteady(t *testing.T) {
	headings := []float64{0, 30, 75, 90, 130, 180}
	if testing.Short() {
		headings = headings[2:4]
	}
	for _, p := range Postures(1.8) {
		for _, h := range headings {
			for _, kn := range []float64{3, 12, 22, 30} {
				wind := From(kn*Knot, 0)
				got, want := p.Way(h, wind), accelerate(p, h, wind)
				if p.Speed == 0 && h != 0 && h != 180 && h != 90 {
					continue // adrift it lies across the wind, whatever the heading
				}
				within(t, p.Name+" east", got.East, want.East, 1e-6)
				within(t, p.Name+" north", got.North, want.North, 1e-6)
			}
		}
	}
}

// TestPostureForcesBalance: thrust, air and water add to nothing, in any
// wind on any heading, and the sides mirror.
func TestPostureForcesBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.SampledFrom(Postures(rapid.Float64Range(0.3, 4).Draw(t, "speed"))[:3]).Draw(t, "posture")
		h := rapid.Float64Range(-400, 400).Draw(t, "heading")
		off := rapid.Float64Range(-180, 180).Draw(t, "off")
		w := rapid.Float64Range(0, 40).Draw(t, "wind")
		v := p.Way(h, From(w, h+off))
		u, s := v.Resolve(h)
		air := p.Push(v, From(w, h+off))
		au, as := air.Resolve(h)
		if f := p.Thrust(u) + au - p.Resistance(u); !(math.Abs(f) <= 1e-6) {
			t.Fatalf("%v N left forward at u %v", f, u)
		}
		if f := as - p.Side*s*math.Abs(s); !(math.Abs(f) <= 1e-6) {
			t.Fatalf("%v N left sideways at s %v", f, s)
		}
		m := p.Way(h, From(w, h-off))
		mu, ms := m.Resolve(h)
		if !(math.Abs(mu-u) <= 1e-8 && math.Abs(ms+s) <= 1e-8) {
			t.Fatalf("mirror: %v %v against %v %v", mu, ms, u, s)
		}
		turned := p.Way(h+720, From(w, h+off-360))
		if !(turned.Sub(v).Speed() <= 1e-8) {
			t.Fatalf("a turn on: %v, %v", turned, v)
		}
		// More head wind is never faster.
		stronger, _ := p.Way(h, From(w+1, h)).Resolve(h)
		weaker, _ := p.Way(h, From(w, h)).Resolve(h)
		if !(stronger < weaker) {
			t.Fatalf("against %v m/s %v, against one more %v", w, weaker, stronger)
		}
	})
}

// TestPostureTwoSolvers: Newton's method and the brackets agree.
func TestPostureTwoSolvers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.SampledFrom(Postures(rapid.Float64Range(0.3, 4).Draw(t, "speed"))[:3]).Draw(t, "posture")
		b := balance{
			p: &p, air: 0.5 * AirDensity * p.Area, power: p.resistance(p.Speed) * p.Speed,
			wu: rapid.Float64Range(-30, 30).Draw(t, "ahead"), ws: rapid.Float64Range(-30, 30).Draw(t, "abeam"),
		}
		u, s := b.solve()
		v, r := b.halve()
		if !(math.Abs(u-v) <= 1e-8 && math.Abs(s-r) <= 1e-8) {
			t.Fatalf("%v %v against %v %v", u, s, v, r)
		}
	})
}

// balances returns boards in winds up to 30 m/s from all sides.
func balances() (all []balance) {
	for _, p := range append(Postures(1.8), Postures(0.9)...) {
		if p.Speed == 0 {
			continue
		}
		for wind := 2.0; wind <= 30; wind += 4 {
			for from := 0.0; from < 360; from += 20 {
				s, c := sincosd(from)
				all = append(all, balance{p: &p, air: 0.5 * AirDensity * p.Area, power: p.resistance(p.Speed) * p.Speed, wu: p.Exposure * wind * c, ws: p.Exposure * wind * s})
			}
		}
	}
	return all
}

// TestPostureExcess: the excess forces are the three public ones added up, and
// their derivatives those that differences give, on both sides of the bend of
// the thrust.
func TestPostureExcess(t *testing.T) {
	const h = 1e-5
	for _, b := range balances() {
		for _, u := range []float64{-1.2, -0.3, 0.4 * b.p.Speed, 0.6 * b.p.Speed, 1.1 * b.p.Speed, 4} {
			for _, s := range []float64{-1.5, -0.2, 0.3, 2} {
				fu, fs, uu, ss, us := b.excess(u, s)
				air := b.p.Push(Velocity{East: s, North: u}, Velocity{East: b.ws / b.p.Exposure, North: b.wu / b.p.Exposure})
				within(t, "forward", fu, b.p.Thrust(u)+air.North-b.p.Resistance(u), 1e-9)
				within(t, "sideways", fs, air.East-b.p.Side*s*math.Abs(s), 1e-9)
				ahead, ahead2, _, _, _ := b.excess(u+h, s)
				behind, behind2, _, _, _ := b.excess(u-h, s)
				_, right, _, _, _ := b.excess(u, s+h)
				_, left, _, _, _ := b.excess(u, s-h)
				within(t, "forward with u", uu, (ahead-behind)/(2*h), 1e-4*(1+math.Abs(uu)))
				within(t, "sideways with u", us, (ahead2-behind2)/(2*h), 1e-4*(1+math.Abs(us)))
				within(t, "sideways with s", ss, (right-left)/(2*h), 1e-4*(1+math.Abs(ss)))
			}
		}
	}
}

// TestPostureSettles: Newton's method takes some six passes, and the brackets
// are not needed.
func TestPostureSettles(t *testing.T) {
	total, most := 0, 0
	all := balances()
	for _, b := range all {
		_, _, passes := b.newton()
		total, most = total+passes, max(most, passes)
	}
	if mean := float64(total) / float64(len(all)); !(mean >= 4 && mean <= 6) || most > 9 {
		t.Errorf("%v passes in the mean, %d at most", mean, most)
	}
	// In a wind no board is made for, and in none at all.
	odd := Standing(0.01)
	odd.Drag, odd.Side, odd.Area = 0.01, 5000, 10
	for _, b := range []balance{
		{p: &odd, air: 0.5 * AirDensity * odd.Area, power: odd.resistance(odd.Speed) * odd.Speed, wu: -100, ws: 1e-3},
		{p: &odd, air: 0.5 * AirDensity * odd.Area, power: odd.resistance(odd.Speed) * odd.Speed},
	} {
		u, s := b.solve()
		if fu, fs, _, _, _ := b.excess(u, s); !(math.Abs(fu) <= 1e-6 && math.Abs(fs) <= 1e-6) {
			t.Errorf("%v, %v leave %v and %v N", u, s, fu, fs)
		}
	}
}

// TestFalling: a root between, and the end nearest to one beyond.
func TestFalling(t *testing.T) {
	for _, c := range []struct{ lo, hi, root, want float64 }{{-3, 100, 7.25, 7.25}, {2, 5, 1, 2}, {2, 5, 9, 5}} {
		within(t, "root", falling(c.lo, c.hi, func(x float64) float64 { return c.root - x }), c.want, 1e-13)
	}
}

// TestCrossing: false position with the Illinois halving meets a root of a
// smooth function in a few looks, from whichever side it bends, and closes in on a jump.
func TestCrossing(t *testing.T) {
	for name, f := range map[string]func(float64) float64{
		"straight":     func(x float64) float64 { return 2*x - 3 },
		"bends up":     func(x float64) float64 { return math.Exp(x) - math.Exp(1.5) },
		"bends down":   func(x float64) float64 { return math.Exp(-1.5) - math.Exp(-x) },
		"falls":        func(x float64) float64 { return math.Exp(1.5) - math.Exp(x) },
		"falls faster": func(x float64) float64 { return math.Exp(-x) - math.Exp(-1.5) },
	} {
		looks := 0
		x := crossing(func(x float64) float64 { looks++; return f(x) }, -1, f(-1), 4, f(4))
		within(t, name, x, 1.5, 1e-8)
		if looks > 14 {
			t.Errorf("%s: %d looks", name, looks)
		}
	}
	jump := func(x float64) float64 { return math.Copysign(1, x-1.5) }
	looks := 0
	within(t, "jump", crossing(func(x float64) float64 { looks++; return jump(x) }, -1, -1, 4, 1), 1.5, 2*headingTol)
	if looks > 40 {
		t.Errorf("jump: %d looks", looks)
	}
}

// TestHoldCourseNearGuess: near the heading of the step before it takes a few
// looks, beyond that and without one those round the whole circle; the course is the same.
func TestHoldCourseNearGuess(t *testing.T) {
	stand := Standing(1.8)
	looks := 0
	way := func(h float64, w Velocity) Velocity { looks++; return stand.Way(h, w) }
	for track := 0.0; track < 360; track += 30 {
		wind, stream := From(7, 250), Toward(0.6, 140)
		looks = 0
		plain, err := holdCourse(way, track, wind, stream, math.NaN())
		if err != nil {
			t.Fatal(err)
		}
		if looks < 73 {
			t.Errorf("track %v: the circle in %d looks", track, looks)
		}
		for off, most := range map[float64]int{-4: 12, 0: 12, 4.5: 12, 30: 100} {
			looks = 0
			near, err := holdCourse(way, track, wind, stream, plain.Heading+off)
			if err != nil || !(math.Abs(wrapLon(near.Heading-plain.Heading)) <= 1e-6 && math.Abs(near.Made-plain.Made) <= 1e-8) {
				t.Errorf("track %v, %v off: %+v, %+v by the circle (%v)", track, off, near, plain, err)
			}
			if looks > most || off == 30 && looks < 73 {
				t.Errorf("track %v, %v off: %d looks", track, off, looks)
			}
		}
	}
}

// TestHoldCourseErrors: what stands against a course is said in figures.
func TestHoldCourseErrors(t *testing.T) {
	_, err := HoldCourse(Standing(1.8).Way, 40, From(25*Knot, 40), Velocity{})
	if want := ": 0.51 m/s backward along 40"; err == nil || !strings.Contains(err.Error(), want) { // the table of the note above
		t.Errorf("%v, not %q", err, want)
	}
	// A way that goes forward on one side and backward on the other: no heading
	// near the jump holds the track.
	jumps := func(h float64, _ Velocity) Velocity {
		if wrapLon(h) > 0 {
			return Velocity{1, 0}
		}
		return Velocity{-1, 0}
	}
	if c, err := HoldCourse(jumps, 0, Velocity{}, Velocity{}); !errors.Is(err, ErrCrossSet) {
		t.Errorf("%+v, %v", c, err)
	}
}

// TestPostureSpread: the two ends of the priors lie on either side in every
// head wind, and the 20 kn of the note are 0.8 within a stated band.
func TestPostureSpread(t *testing.T) {
	for _, p := range Postures(1.8) {
		most, least := p.Spread()
		if most.Check() != nil || least.Check() != nil {
			t.Errorf("%s: %v, %v", p.Name, most.Check(), least.Check())
		}
		for kn := 5.0; kn <= 35; kn += 5 {
			wind := From(kn*Knot, 0)
			a, b, c := most.Way(0, wind).North, p.Way(0, wind).North, least.Way(0, wind).North
			if !(a < b && b < c) {
				t.Errorf("%s in %v kn: %v, %v, %v", p.Name, kn, a, b, c)
			}
		}
	}
	most, least := Standing(1.8).Spread()
	within(t, "20 kn, moved most", most.Way(0, From(20*Knot, 0)).North, -0.545, 0.005)
	within(t, "20 kn, moved least", least.Way(0, From(20*Knot, 0)).North, 1.175, 0.005)
}

func TestPostureResistance(t *testing.T) {
	p := Standing(1.8)
	for u, want := range map[float64]float64{1.6: 13.4101, 1.8: 16.7666, 2: 20.4265, 3: 42.4459, 5: 97.2272, 7: 156.6437} {
		within(t, "resistance", p.Resistance(u), want, 5e-5)
		within(t, "backward", p.Resistance(-u), -want, 5e-5)
	}
	within(t, "thrust at V", p.Thrust(1.8), p.Resistance(1.8), 1e-12)
	within(t, "thrust at rest", p.Thrust(0), 2*p.Resistance(1.8), 1e-12)
	for u10, want := range map[float64]float64{5: 1.681, 8: 1.9052, 10: 2.1206, 13: 2.5216, 15: 2.8307} {
		within(t, "tail wind", Standing(1.6).Way(90, Toward(u10, 90)).Speed(), want, 1e-4)
	}
}

// TestHoldCourse compares with the triangle where speed does not depend on the
// heading, and takes the fastest of two headings where it does.
func TestHoldCourse(t *testing.T) {
	plain := func(speed float64) Way {
		return func(h float64, _ Velocity) Velocity { return Toward(speed, h) }
	}
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(0.5, 3).Draw(t, "speed")
		track := rapid.Float64Range(0, 360).Draw(t, "track")
		stream := Toward(rapid.Float64Range(0, 4).Draw(t, "rate"), rapid.Float64Range(0, 360).Draw(t, "set"))
		want, werr := HoldTrack(track, v, stream)
		along, right := stream.Resolve(track)
		if math.Abs(right) > v*0.995 {
			return // grazing: steps of five degrees may miss two roots in one
		}
		if made := math.Sqrt(v*v-right*right) + along; math.Abs(made) <= 1e-3 {
			return // standing still but for the last digit, which may fall either way
		}
		got, err := HoldCourse(plain(v), track, Velocity{}, stream)
		if (err == nil) != (werr == nil) {
			t.Fatalf("%v, the triangle says %v", err, werr)
		}
		if err == nil && !(math.Abs(wrapLon(got.Heading-want.Heading)) <= 1e-4 && math.Abs(got.Made-want.SpeedMade) <= 1e-5) {
			t.Fatalf("%+v, the triangle says %+v", got, want)
		}
	})
	stand := Standing(1.8)
	c, err := HoldCourse(stand.Way, 0, From(8, 270), Velocity{})
	if err != nil {
		t.Fatal(err)
	}
	if !(c.Heading > 300) {
		t.Errorf("steer into the wind, not %v", c.Heading)
	}
	within(t, "nothing across", stand.Way(c.Heading, From(8, 270)).East, 0, 1e-6)
	if _, err := HoldCourse(stand.Way, 0, From(25*Knot, 0), Velocity{}); !errors.Is(err, ErrNoProgress) {
		t.Error(err)
	}
	if _, err := HoldCourse(plain(1), 0, Velocity{}, Toward(2, 90)); !errors.Is(err, ErrCrossSet) {
		t.Error(err)
	}
	for name, err := range map[string]error{
		"track":  second(HoldCourse(stand.Way, math.NaN(), Velocity{}, Velocity{})),
		"wind":   second(HoldCourse(stand.Way, 0, Velocity{math.NaN(), 0}, Velocity{})),
		"stream": second(HoldCourse(stand.Way, 0, Velocity{}, Velocity{0, math.Inf(1)})),
		"way":    second(HoldCourse(func(float64, Velocity) Velocity { return Velocity{math.NaN(), 0} }, 0, Velocity{}, Velocity{})),
	} {
		if !errors.Is(err, ErrInput) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestPostureBadInput(t *testing.T) {
	nan := math.NaN()
	for name, change := range map[string]func(*Posture){
		"speed": func(p *Posture) { p.Speed = nan }, "negative": func(p *Posture) { p.Speed = -1 },
		"area": func(p *Posture) { p.Area = 0 }, "side": func(p *Posture) { p.Side = nan },
		"drag": func(p *Posture) { p.Drag = nan }, "bend": func(p *Posture) { p.Bend = 0 },
		"exposure": func(p *Posture) { p.Exposure = nan }, "endurance": func(p *Posture) { p.Endurance = nan },
	} {
		p := Standing(1.8)
		change(&p)
		if err := p.Check(); !errors.Is(err, ErrInput) {
			t.Errorf("%s: %v", name, err)
		}
		if v := p.Way(0, Velocity{}); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
			t.Errorf("%s: %v", name, v)
		}
		if !math.IsNaN(p.Thrust(1)) || !math.IsNaN(p.Resistance(1)) || !math.IsNaN(p.Push(Velocity{}, Velocity{}).East) {
			t.Errorf("%s: a force", name)
		}
	}
	p := Standing(1.8)
	for _, v := range []Velocity{p.Way(nan, Velocity{}), p.Way(math.Inf(1), Velocity{}), p.Way(0, Velocity{nan, 0}), p.Way(0, Velocity{0, 101}), Drifting().Way(0, Velocity{nan, 0})} {
		if !math.IsNaN(v.East) || !math.IsNaN(v.North) {
			t.Error(v)
		}
	}
	if !math.IsNaN(p.Thrust(nan)) || !math.IsNaN(p.Resistance(math.Inf(1))) || !math.IsNaN(p.Push(Velocity{nan, 0}, Velocity{}).East) {
		t.Error("a force from NaN")
	}
}

func BenchmarkPostureWay(b *testing.B) {
	p := Standing(1.8)
	b.ReportAllocs()
	var v Velocity
	for i := range b.N {
		v = p.Way(float64(i%360), Velocity{-6, -8})
	}
	sinkFloats = []float64{v.East}
}
