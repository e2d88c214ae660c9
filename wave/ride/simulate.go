package ride

import (
	"fmt"
	"math"
	"math/rand/v2"

	"followingsea.example/wave/spectrum"
)

// Run is one simulated run: how long, how fine, which sea of the many alike.
type Run struct {
	Seed       uint64
	Seconds    float64 // 0 for 600
	Step       float64 // s; 0 for 0.05
	Components int     // waves per system; 0 for 200
	Steady     bool    // cruise throughout, no sprint on faces
	// Keep asks for the record of the run, every so many steps; 0 for none.
	Keep int
}

// Moment is the board at one time of a simulated run.
type Moment struct {
	Time      float64 // s
	Distance  float64 // m through the water
	Speed     float64 // m/s through the water
	Push      float64 // N, of the waves
	Sprinting bool
}

// Trace is a simulated run.
type Trace struct {
	Standing    string  // Standing, the constant: a proposal
	Speed       float64 // m/s, mean through the water
	RidingShare float64 // part of the time faster than a sprint on flat water in this wind
	RidingSpeed float64 // m/s, mean speed meanwhile; 0 if never
	Catches     int     // times the board rose through that speed
	Wander      float64 // m/s, standard deviation of the speed
	Sprinting   float64 // part of the time sprinting
	Peak        float64 // m/s, greatest speed
	Moments     []Moment
}

// Simulate paddles a run through one irregular sea, step by step: the surge
// equation under the push of some hundreds of waves of random phase, with a
// sprint whenever the push exceeds 5 % of the weight. It is the oracle of the
// closed form of [Prepared.Sea], and shows what the numbers mean.
//
// The amplitudes are drawn too, so that groups are as in a Gaussian sea. The
// same seed gives the same run. The sea is long-crested; systems at an angle
// keep it. The first 30 s are not counted.
//
// Proposal, no published source.
//
// Errors: those of [Paddler.Resolved]; [ErrSea]; [ErrRun] for a field outside
// its range.
func (p Paddler) Simulate(sea Sea, run Run) (Trace, error) {
	s, err := newSurge(p)
	if err != nil {
		return Trace{}, err
	}
	if err := sea.check(); err != nil {
		return Trace{}, err
	}
	def := func(v *float64, d float64) {
		if *v == 0 {
			*v = d
		}
	}
	def(&run.Seconds, 600)
	def(&run.Step, 0.05)
	if run.Components == 0 {
		run.Components = 200
	}
	switch {
	case !(run.Seconds >= 1 && run.Seconds <= 86400):
		return Trace{}, fmt.Errorf("%w: Seconds %v is outside 1 to 86400", ErrRun, run.Seconds)
	case !(run.Step >= 0.005 && run.Step <= 0.25):
		return Trace{}, fmt.Errorf("%w: Step %v is outside 0.005 to 0.25 s", ErrRun, run.Step)
	case run.Components < 8 || run.Components > 5000:
		return Trace{}, fmt.Errorf("%w: Components %d is outside 8 to 5000", ErrRun, run.Components)
	case run.Keep < 0:
		return Trace{}, fmt.Errorf("%w: Keep %d is below 0", ErrRun, run.Keep)
	}

	g := sea.gravity()
	u := s.share * sea.Wind
	waves := s.realise(&sea, run)
	push := func(t, x float64) float64 {
		sum := 0.0
		for i := range waves {
			w := &waves[i]
			sum += w.force * math.Sin(w.k*x-w.omega*t+w.phase)
		}
		return sum
	}
	face := sprintAbove * s.mass * g
	sprints := func(f float64) bool { return f > face && !run.Steady }
	gain := func(f, v float64) float64 {
		e := s.cruise
		if sprints(f) {
			e = s.sprint
		}
		return (s.balance(v, e, u) + f) / s.inertia
	}

	tr := Trace{Standing: Standing}
	const warm = 30.0
	dt := run.Step
	v, x := s.flat(s.cruise, u), 0.0
	sprint := s.flat(s.sprint, u)
	n, lead := int(math.Round(run.Seconds/dt)), int(math.Round(warm/dt))
	from, sum, sum2, riding, rode, sprinting := 0.0, 0.0, 0.0, 0, 0.0, 0
	for i := range n + lead {
		if i == lead {
			from = x
		}
		t := float64(i) * dt
		half := v + dt/2*gain(push(t, x), v)
		f := push(t+dt/2, x+dt/2*v)
		was := v
		v += dt * gain(f, half)
		x += dt * half
		if i < lead {
			continue
		}
		sum += v
		sum2 += v * v
		if v > sprint {
			riding++
			rode += v
			if was <= sprint {
				tr.Catches++
			}
		}
		if sprints(f) {
			sprinting++
		}
		tr.Peak = math.Max(tr.Peak, v)
		if run.Keep > 0 && (i-lead)%run.Keep == 0 {
			tr.Moments = append(tr.Moments, Moment{t + dt - warm, x - from, v, f, sprints(f)})
		}
	}
	count := float64(n)
	tr.Speed = (x - from) / (count * dt)
	tr.RidingShare = float64(riding) / count
	if riding > 0 {
		tr.RidingSpeed = rode / float64(riding)
	}
	mean := sum / count
	tr.Wander = math.Sqrt(math.Max(0, sum2/count-mean*mean))
	tr.Sprinting = float64(sprinting) / count
	return tr, nil
}

// realise draws the waves of a run.
func (s *surge) realise(sea *Sea, run Run) []component {
	rng := rand.New(rand.NewPCG(run.Seed, 0x9e3779b97f4a7c15))
	waves := s.draw(nil, sea.WindSea, false, sea, run.Components, sea.gravity(), rng)
	return s.draw(waves, sea.Swell, true, sea, run.Components, sea.gravity(), rng)
}

// component is one wave of a realisation as the board meets it.
type component struct{ k, omega, phase, force float64 }

// draw appends the waves of a system that push the board: one in each of n
// equal bands of frequency, at a random place in it so that the record does
// not repeat.
func (s *surge) draw(to []component, y System, swell bool, sea *Sea, n int, g float64, rng *rand.Rand) []component {
	cos := math.Cos(y.Off * (math.Pi / 180))
	if y.Hs == 0 || cos < pushCos {
		return to
	}
	shape := spectrum.JONSWAP{Hs: y.Hs, Tp: y.Tp, Gamma: y.Gamma}
	if shape.Gamma == 0 {
		shape.Gamma = 3.3
	}
	length := 2 * s.halfLength
	lo := 0.5 / y.Tp
	hi := math.Min(8/y.Tp, math.Sqrt(g/(2*math.Pi*length*cos))+math.Max(0, sea.Current)/length)
	scale := 1.0
	if swell {
		hi = math.Min(hi, swellCut/y.Tp)
		scale = 1 / swellKept(shape.Gamma)
	}
	df := (hi - lo) / float64(n)
	if !(df > 0) {
		return to
	}
	for i := range n {
		f := lo + (float64(i)+rng.Float64())*df
		a := math.Sqrt(2 * scale * shape.Density(f) * df * rng.ExpFloat64())
		phase := 2 * math.Pi * rng.Float64()
		k, intrinsic, ok := intrinsicWave(1/f, sea.Depth, sea.Current*cos, g)
		if !ok {
			continue
		}
		// In the water frame, where the board is, the wave has its intrinsic
		// frequency.
		c := component{k: k * cos, omega: 2 * math.Pi / intrinsic, phase: phase, force: 2 * s.push(k*cos, k, g) * a}
		if c.force > 1e-4 {
			to = append(to, c)
		}
	}
	return to
}
