package ride

import "math"

// Strength is how strong a paddler must be for one bump, as the speed in m/s
// that the same effort gives on flat water in still air.
type Strength struct {
	Standing   string  // Standing, the constant: a proposal
	Hold       float64 // to stay on it
	Catch      float64 // to catch it from the trough, at full effort already
	Inevitable float64 // to be taken along whatever the timing, by the closed form
	Exact      float64 // the same by shooting: the path from one unstable equilibrium to the next
	Melnikov   float64 // the same by the low-damping theory of the ship rules: wrong for paddled boards, may lie below Hold
}

// Strength returns the flat-water speeds that the thresholds of one bump ask
// for. Mass, Length, resistance, wind area and Thrust are those of the paddler;
// Cruise and Sprint are what is asked. All are NaN for a wave that does not
// exist or does not push, and each at most the wave speed, since a paddler that
// fast needs no push.
// Proposal, no published source.
//
// Errors: those of [Paddler.Appraise].
func (p Paddler) Strength(b Bump) (Strength, error) {
	s, err := newSurge(p)
	if err != nil {
		return Strength{}, err
	}
	if err := b.check(); err != nil {
		return Strength{}, err
	}
	nan := math.NaN()
	w, ok := s.train(b.Period, b.Depth, b.Current, math.Cos(b.Off*(math.Pi/180)), b.gravity())
	f := w.perM * b.Height
	if !ok || !(f > 0) {
		return Strength{Standing, nan, nan, nan, nan, nan}, nil
	}
	u := s.share * b.Wind
	q := 2 * math.Sqrt(f/(w.k*s.inertia))

	// Each threshold is the least effort for which something holds.
	least := func(enough func(e effort, vs float64) bool) float64 {
		lo, hi := 0.0, w.c
		for hi-lo > 1e-9*w.c {
			mid := (lo + hi) / 2
			if enough(s.effort(mid), mid) {
				hi = mid
			} else {
				lo = mid
			}
		}
		return hi
	}
	holds := func(e effort) bool { return -s.balance(w.c, e, u) <= f }
	return Strength{
		Standing: Standing,
		Hold:     least(func(e effort, _ float64) bool { return holds(e) }),
		Catch: least(func(e effort, _ float64) bool {
			return holds(e) && s.needed(w, f, e, u) <= s.flat(e, u)
		}),
		Inevitable: least(func(e effort, _ float64) bool {
			return -s.balance(w.c, e, u) <= f*PendulumThreshold(math.Max(0, s.damping(w, f, e, u)))
		}),
		Exact: least(func(e effort, _ float64) bool { return holds(e) && s.captured(w, f, e, u) }),
		Melnikov: least(func(e effort, _ float64) bool {
			const n = 400
			sum := 0.0
			for i := range n {
				sum += s.balance(w.c-q*math.Sin((float64(i)+0.5)*(math.Pi/(2*n))), e, u)
			}
			return sum >= 0
		}),
	}, nil
}

// captured reports whether a board left behind by one crest is taken by the
// next: whether the path into the unstable equilibrium, followed backwards over
// a whole wave, stays slower than the wave. See catch.go for the equation.
func (s *surge) captured(w train, f float64, e effort, u float64) bool {
	load := -s.balance(w.c, e, u) / f
	psiU := math.Asin(math.Max(-1, math.Min(1, load)))
	cosU := math.Sqrt(math.Max(0, 1-load*load))
	kM := w.k * s.inertia
	g1 := s.slope(w.c, e, u)
	sigma := (-g1 + math.Sqrt(g1*g1+4*kM*f*cosU)) / (2 * kM)
	const n, start = 1500, 1e-3
	h := (2*math.Pi - 2*start) / n
	psi, def := psiU+start, sigma*start
	rate := func(psi, def float64) float64 { return (s.balance(w.c-def, e, u) + f*math.Sin(psi)) / (kM * def) }
	for i := range n {
		// The first steps are finer: the deficit starts from zero.
		m := 1
		if i < 8 {
			m = 64
		}
		d := h / float64(m)
		for range m {
			k1 := rate(psi, def)
			k2 := rate(psi+d/2, def+d/2*k1)
			k3 := rate(psi+d/2, def+d/2*k2)
			k4 := rate(psi+d, def+d*k3)
			if !(def+d/2*k1 > 0 && def+d/2*k2 > 0 && def+d*k3 > 0) {
				return false
			}
			def += d / 6 * (k1 + 2*k2 + 2*k3 + k4)
			psi += d
			if !(def > 0) {
				return false
			}
		}
	}
	return true
}
