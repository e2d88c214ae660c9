package ride

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"followingsea.example/wave/spectrum"
)

// TestHalve: the ends close in on where something begins to hold, until they are no further apart than asked, and no closer.
func TestHalve(t *testing.T) {
	looks := 0
	lo, hi := halve(0, 1, 0.25, func(x float64) bool { looks++; return x >= 0.3 })
	if lo != 0.25 || hi != 0.5 || looks != 2 {
		t.Errorf("%v to %v after %d looks", lo, hi, looks)
	}
	for _, place := range []float64{-3, 0.01, 1, 99.9} {
		lo, hi := halve(-4, 100, 1e-9, func(x float64) bool { return x >= place })
		if !(lo < place && place <= hi && hi-lo <= 1e-9) {
			t.Errorf("%v is not from %v to %v", place, lo, hi)
		}
	}
}

// TestIntrinsicWaveIsSolved: the wave on a current keeps both its equations, (ω - kU)² = g k tanh kh and ω - kU = σ, to the last
// digits, since the error of a step of Newton's is of the order of the square of the step.
func TestIntrinsicWaveIsSolved(t *testing.T) {
	const g = 9.81
	runs, blocked := 0, 0
	for _, depth := range []float64{0.3, 1, 3, 10, 80, math.Inf(1)} {
		for period := 0.5; period < 25; period *= 1.17 {
			for current := -4.0; current <= 5; current += 0.37 {
				k, intrinsic, ok := intrinsicWave(period, depth, current, g)
				if !ok {
					blocked++
					continue
				}
				runs++
				w, sigma := 2*math.Pi/period, 2*math.Pi/intrinsic
				if !(math.Abs((sigma+k*current)/w-1) <= 4e-14*(1+math.Abs(k*current)/w) && math.Abs(sigma*sigma/(g*k*math.Tanh(k*depth))-1) <= 4e-14) {
					t.Errorf("%v s, %v m, %v m/s: %v, %v are left", period, depth, current, (sigma+k*current)/w-1, sigma*sigma/(g*k*math.Tanh(k*depth))-1)
				}
			}
		}
	}
	if runs < 2000 || blocked < 200 {
		t.Errorf("%d waves run, %d are blocked", runs, blocked)
	}
	for _, depth := range []float64{3, math.Inf(1)} {
		if k, _, ok := intrinsicWave(math.Inf(1), depth, 0, g); ok {
			t.Errorf("a wave without end: %v", k)
		}
	}
}

// TestBordersOfTheBump: a wave as long as the board gives it no push, a longer one does; waves 60 degrees off, of which the cosine
// is a half, are still with the board.
func TestBordersOfTheBump(t *testing.T) {
	s := surge{mass: 95, halfLength: 2}
	if f := s.push(math.Pi/2, math.Pi/2, 9.81); f != 0 {
		t.Errorf("a wave as long as the board pushes with %v N/m", f)
	}
	if f := s.push(1.57, 1.57, 9.81); !(f > 0 && f < 1) {
		t.Errorf("a wave hardly longer pushes with %v N/m", f)
	}
	if !withBoard(0.5) || withBoard(math.Nextafter(0.5, 0)) {
		t.Error("not up to a cosine of a half")
	}
}

// TestPathLeavesTheEquilibrium: at first the path into the unstable equilibrium is a straight line of the deficit over the phase,
// w = σδ, of which the slope is that of the equation: k M σ² = -G'(c) σ + F cos ψ. Its steps are fine enough for four digits.
func TestPathLeavesTheEquilibrium(t *testing.T) {
	for _, who := range []Paddler{{}, {Craft: Ski}, {Thrust: ConstantForce}} {
		s, err := newSurge(who)
		if err != nil {
			t.Fatal(err)
		}
		for _, period := range []float64{2.6, 3, 4} {
			for _, u := range []float64{-2, 0, 6} {
				w, _ := s.train(period, math.Inf(1), 0, 1, 9.81)
				lack := -s.balance(w.c, s.sprint, u)
				if lack <= 0 {
					continue
				}
				if s.behind(w, lack, s.sprint, u, math.Pi/2+0.1, separatrixSteps) == 0 {
					t.Errorf("%v s, %v m/s: no path for a push that just holds", period, u)
				}
				for _, f := range []float64{1.1 * lack, 3 * lack} {
					psi := math.Asin(lack / f)
					const d = 1e-4
					slope := (s.balance(w.c+d, s.sprint, u) - s.balance(w.c-d, s.sprint, u)) / (2 * d)
					sigma := s.behind(w, f, s.sprint, u, psi+0.0041, 4) / 0.0041
					if want := -slope*sigma + f*math.Cos(psi); !(math.Abs(w.k*s.inertia*sigma*sigma/want-1) <= 0.01) {
						t.Errorf("%v s, %v N: leaves with %v, of %v N s/m", period, f, sigma, slope)
					}
					coarse, fine := s.behind(w, f, s.sprint, u, math.Pi, separatrixSteps), s.behind(w, f, s.sprint, u, math.Pi, 20*separatrixSteps)
					if !(math.Abs(coarse-fine) <= 2e-4*fine) {
						t.Errorf("%v s, %v N: %v behind, with fine steps %v", period, f, coarse, fine)
					}
				}
			}
		}
	}
}

// even is a source of random numbers that are all the same.
type even uint64

func (e even) Uint64() uint64 { return uint64(e) }

// TestWavesDrawnAreThoseOfTheSpectrum: in a simulated sea there is one wave in each of even bands, from half the peak frequency to
// eight times it, to waves as short as the board or to the end of a swell; its amplitude is √(2 S Δf) times the root of an
// exponential variable, its push twice the push per metre of height.
func TestWavesDrawnAreThoseOfTheSpectrum(t *testing.T) {
	const n, g = 16, 9.8
	source := even(1<<51 + 5<<32 + 1<<30)
	at, chance := rand.New(source).Float64(), rand.New(source).ExpFloat64()
	if !(at > 0.2 && at < 0.3 && chance > 0.01 && chance < 3) {
		t.Fatalf("drawn at %v, by %v", at, chance)
	}
	for name, c := range map[string]struct {
		length, current float64
		y               System
		swell           bool
		top             float64 // Hz
	}{
		"to eight peaks":       {1.6, 0, System{Hs: 2, Tp: 12, Gamma: 2}, false, 8.0 / 12},
		"to the board":         {4.2, 0, System{Hs: 0.7, Tp: 3.5}, false, math.Sqrt(g / (2 * math.Pi * 4.2))},
		"oblique, on a stream": {4.2, 0.8, System{Hs: 0.7, Tp: 3.5, Off: -50}, false, math.Sqrt(g/(2*math.Pi*4.2*math.Cos(50*math.Pi/180))) + 0.8/4.2},
		"against a stream":     {4.2, -0.3, System{Hs: 0.7, Tp: 3.5}, false, math.Sqrt(g / (2 * math.Pi * 4.2))},
		"swell":                {3, 0, System{Hs: 1.2, Tp: 6, Gamma: 5}, true, 1.8 / 6},
	} {
		s, err := newSurge(Paddler{Length: c.length})
		if err != nil {
			t.Fatal(err)
		}
		cos := math.Cos(c.y.Off * math.Pi / 180)
		sea := Sea{Current: c.current, Depth: math.Inf(1)}
		waves := s.draw(nil, c.y, c.swell, &sea, n, g, rand.New(source))
		shape := spectrum.JONSWAP{Hs: c.y.Hs, Tp: c.y.Tp, Gamma: c.y.Gamma}
		if shape.Gamma == 0 {
			shape.Gamma = 3.3
		}
		scale := 1.0
		if c.swell {
			scale = c.y.Hs * c.y.Hs / 16 / shape.MomentWithin(0, 0, 1.8/c.y.Tp)
		}
		df := (c.top - 0.5/c.y.Tp) / n
		found := 0
		for i := range n {
			f := 0.5/c.y.Tp + (float64(i)+at)*df
			k, intrinsic, ok := intrinsicWave(1/f, sea.Depth, c.current*cos, g)
			a := math.Sqrt(2 * scale * shape.Density(f) * df * chance)
			force := 2 * s.push(k*cos, k, g) * a
			if !ok || force <= 1e-4 {
				continue
			}
			if found == len(waves) {
				t.Fatalf("%s: %d waves only", name, found)
			}
			w := waves[found]
			found++
			same := func(x, y float64) bool { return math.Abs(x-y) <= 1e-9*math.Abs(y) }
			if !same(w.k, k*cos) || !same(w.omega, 2*math.Pi/intrinsic) || !same(w.force, force) || !same(math.Mod(w.phase, 2*math.Pi), 2*math.Pi*at) {
				t.Errorf("%s: wave %d is %+v, want k %v, ω %v, %v N at %v", name, i, w, k*cos, 2*math.Pi/intrinsic, force, 2*math.Pi*at)
			}
		}
		if found != len(waves) || found < 5 {
			t.Errorf("%s: %d waves, want %d", name, len(waves), found)
		}
	}
}

// TestSpreadIsThatOfItsParts: the spread is made of the speeds of paddlers of which one parameter is larger (the length: smaller)
// by its spread, to a thousandth of a m/s or so, of 3 % in deep water, and of an hour of speeds that remember 7 s.
func TestSpreadIsThatOfItsParts(t *testing.T) {
	p, err := Paddler{Mass: 30, Length: 2}.Prepare() // whose mass counts
	if err != nil {
		t.Fatal(err)
	}
	for _, sea := range []Sea{
		{WindSea: System{Hs: 0.5, Tp: 2.9}, Wind: 9, Depth: math.Inf(1)},
		{WindSea: System{Hs: 2.9, Tp: 6}, Wind: 0, Depth: math.Inf(1)},
	} {
		r, err := p.Sea(sea)
		if err != nil {
			t.Fatal(err)
		}
		want := math.Pow(0.03*r.Speed, 2) + r.SpeedWander*r.SpeedWander*2*7/3600
		for _, prior := range Priors(Board) {
			q := p.paddler
			field, part := map[string]*float64{"Drag": &q.Drag, "WindArea": &q.WindArea, "Bend": &q.Bend, "Mass": &q.Mass, "Length": &q.Length}[prior.Field], prior.Spread
			if field == nil {
				continue
			}
			if prior.Field == "Length" {
				part = -part
			}
			*field *= 1 + part
			var bs bins
			p.load(&bs, &sea) // the bands of the paddler as it is
			other := compile(q)
			bs.weigh(other)
			u := other.share * sea.Wind
			d := other.settle(&bs, u, defaultGravity, other.flat(other.cruise, u), 0.3, 1e-7).speed - r.Speed
			want += d * d
		}
		if got := r.Spread * r.Spread; !(math.Abs(got/want-1) <= 4e-3) {
			t.Errorf("%+v: variance of the speed %v, want %v", sea, got, want)
		}
	}
}

// TestSayHowFarResistanceMayBeMoved: what cannot be calibrated is told with the range of the resistance: of 95 kg on a board the
// prior is 5.5 N s²/m², so 1.65 to 16.5. A mean speed is told with its range too.
func TestSayHowFarResistanceMayBeMoved(t *testing.T) {
	if _, err := (Paddler{Mass: 95}).WithSprintPower(1e4); err == nil || !strings.Contains(err.Error(), "outside 1.65 to 16.5") {
		t.Error(err)
	}
}

// TestLiftIsWithoutLoss: without thrust, wind and resistance a board in the trough is just caught by the push that lifts it.
func TestLiftIsWithoutLoss(t *testing.T) {
	s := surge{mass: 90, inertia: 97, halfLength: 2}
	for _, w := range []train{{k: 0.5, c: 4.4}, {k: 0.2, c: 7}} {
		for _, start := range []float64{0.5, 2, 4} {
			if got := s.needed(w, s.lift(w, start), effort{}, 0); !(math.Abs(got-start) <= 1e-3*(w.c-start)) {
				t.Errorf("%+v: caught from %v m/s, want %v", w, got, start)
			}
		}
	}
}

// TestPushIsThatOfTheWavesDrawn: in waves so low that the board keeps its speed it feels, half a step before each moment, the sum
// of the waves F sin(kx - ωt + phase) where it is. The clock of the waves starts 30 s before that of the run.
func TestPushIsThatOfTheWavesDrawn(t *testing.T) {
	p := mustResolve(t, Paddler{})
	run := Run{Seed: 5, Seconds: 20, Step: 0.1, Components: 20, Keep: 1}
	sea := Sea{WindSea: System{Hs: 1e-4, Tp: 3}, Swell: System{Hs: 1e-3, Tp: 5}, Depth: 6}
	r, err := p.Simulate(sea, run)
	if err != nil {
		t.Fatal(err)
	}
	apart, all := 0.0, 0.0
	waves := compile(p).realise(&sea, run)
	for _, m := range r.Moments {
		at, x := 30+m.Time-run.Step/2, 30*p.Cruise+m.Distance-p.Cruise*run.Step/2
		want := 0.0
		for _, w := range waves {
			want += w.force * math.Sin(w.k*x-w.omega*at+w.phase)
		}
		apart += (m.Push - want) * (m.Push - want)
		all += want * want
	}
	if len(waves) < 20 || !(apart <= 1e-4*all) {
		t.Errorf("%d waves: %v of %v N² is not of them", len(waves), apart, all)
	}
}
