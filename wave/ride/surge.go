package ride

import "math"

// The surge equation, in the water frame. A board of mass m moves at v along
// its heading; a wave of wavenumber k and speed c, both taken along the
// heading, pushes it with F sin ψ, where ψ is the phase from the crest to the
// trough ahead of it:
//
//	M dv/dt = G(v) + F sin ψ        dψ/dt = k (v − c)
//	G(v)    = T(v) + W(v) − R(v)    M = m (1 + added mass)
//
// ψ is 0 on a crest, 180° in the trough ahead; the wave pushes forward in
// between. A board slower than the wave sees ψ fall: the face comes from
// astern, trough first.

// surge is a paddler compiled for speed: all of G but the wind.
type surge struct {
	mass, inertia  float64 // m, M
	halfLength     float64
	halfDraught    float64
	drag, bend2    float64 // K, 1/v_t²
	air            float64 // ½ ρ CdA
	share          float64
	constantForce  bool
	cruise, sprint effort
}

func newSurge(p Paddler) (*surge, error) {
	p, err := p.Resolved()
	if err != nil {
		return nil, err
	}
	return compile(p), nil
}

// compile takes a resolved paddler.
func compile(p Paddler) *surge {
	s := &surge{
		mass: p.Mass, inertia: p.Mass * (1 + p.AddedMass),
		halfLength: p.Length / 2, halfDraught: p.Draught / 2,
		drag: p.Drag, bend2: 1 / (p.Bend * p.Bend),
		air: 0.5 * AirDensity * p.WindArea, share: p.WindShare,
		constantForce: p.Thrust == ConstantForce,
	}
	s.cruise, s.sprint = s.effort(p.Cruise), s.effort(p.Sprint)
	return s
}

func (s *surge) resistance(v float64) float64 {
	return s.drag * v * math.Abs(v) / math.Sqrt(1+v*v*s.bend2)
}

// effort is a level of paddling: power over speed, but no more than at least.
type effort struct {
	power, least float64
	force        float64 // set for constant force
}

func (s *surge) effort(nominal float64) effort {
	r := s.resistance(nominal)
	if s.constantForce {
		return effort{force: r, least: 1}
	}
	return effort{power: r * nominal, least: nominal / 2}
}

func (e effort) pull(v float64) float64 {
	if e.power == 0 { // constant force, or no effort: 0/0 must not arise
		return e.force
	}
	if v < e.least {
		v = e.least
	}
	return e.power / v
}

// windPush takes the wind at the body.
func (s *surge) windPush(v, u float64) float64 {
	switch {
	case u > v:
		return s.air * (u - v) * (u - v)
	case u < 0 && v > 0: // u² − 2uv, the excess over still air
		return -s.air * u * (u - 2*v)
	case u < 0: // driven astern, slower than the wind
		return -s.air * (v - u) * (v - u)
	case u >= 0 && u <= v:
		return 0
	}
	return math.NaN()
}

// balance is G.
func (s *surge) balance(v float64, e effort, u float64) float64 {
	return e.pull(v) + s.windPush(v, u) - s.resistance(v)
}

// slope is dG/dv, never positive.
func (s *surge) slope(v float64, e effort, u float64) float64 {
	w := 1 + v*v*s.bend2
	d := -s.drag * math.Abs(v) * (1 + w) / (w * math.Sqrt(w))
	if v > e.least {
		d -= e.power / (v * v)
	}
	switch {
	case u > v:
		d -= 2 * s.air * (u - v)
	case u < 0 && v > 0:
		d += 2 * s.air * u
	case u < 0:
		d -= 2 * s.air * (v - u)
	}
	return d
}

// flat is the root of G.
func (s *surge) flat(e effort, u float64) float64 {
	v, _ := s.flatIn(e, u)
	return v
}

// flatIn is flat with the number of looks at G it took. G falls with v and bends
// little, so that Newton's steps always end.
func (s *surge) flatIn(e effort, u float64) (v float64, looks int) {
	v = math.Max(e.least*2, 1)
	for looks < 80 {
		looks++
		g := s.balance(v, e, u)
		if g == 0 {
			break
		}
		step := -g / s.slope(v, e, u)
		v += step
		if math.Abs(step) <= 1e-12 {
			break
		}
	}
	return v, looks
}
