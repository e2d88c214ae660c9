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
	least := func(enough func(e effort) bool) float64 {
		_, hi := halve(0, w.c, 1e-9, func(vs float64) bool { return enough(s.effort(vs)) })
		return hi
	}
	holds := func(e effort) bool { return -s.balance(w.c, e, u) <= f }
	return Strength{
		Standing: Standing,
		Hold:     least(holds),
		Catch: least(func(e effort) bool {
			return holds(e) && s.needed(w, f, e, u) <= s.flat(e, u)
		}),
		Inevitable: least(func(e effort) bool {
			return -s.balance(w.c, e, u) <= f*PendulumThreshold(math.Max(0, s.damping(w, f, e, u)))
		}),
		Exact:    least(func(e effort) bool { return holds(e) && s.captured(w, f, e, u) }),
		Melnikov: least(func(e effort) bool { return s.overSeparatrix(w, q, e, u, 400) >= 0 }),
	}, nil
}

// captured reports whether a board left behind by one crest is taken by the
// next: whether the path into the unstable equilibrium, followed backwards over
// a whole wave, stays slower than the wave. A quarter wave further, while the
// board is pushed, it falls behind ever more. See catch.go for the equation.
func (s *surge) captured(w train, f float64, e effort, u float64) bool {
	return s.behind(w, f, e, u, 2.5*math.Pi, 1500) > 0
}
