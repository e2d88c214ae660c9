package ride

import "math"

// The mean speed in an irregular sea.
//
// Seen from the board a sea is a random push: a sum of many waves, each with
// its own speed along the course. A board that is pushed forward on a face
// stays longer on it, one that is held back on a back is left by it sooner; so
// the push felt has a mean, although that of the sea has none. For one wave of
// push amplitude F, to second order in F and for a board that is slowed with
// damping b, the mean push is
//
//	⟨F⟩ = b F²/2 · 1/((c − V)(M²k²(c − V)² + b²))
//
// and the variance of the speed F²/2 · 1/(M²k²(c − V)² + b²). A wave as fast as
// the board would push without end. In a sea it does not, since the speed of
// the board wanders by σ and takes it out of step: (c − V) is widened to
// (c − V)² + (B σ)². With the variance of the push of the waves of the spectrum
// in place of F²/2, the mean speed V and σ follow from the balance
//
//	(1 − P) G(V; cruise) + P G(V; sprint) + A ⟨F⟩ = 0
//
// where P is the part of the time the push is above the level at which the
// paddler sprints. This is the quasi-linear theory of a particle among random
// waves. A and B were fitted to 60 simulated seas and tried on others: see the
// documentation of the package.

const (
	meanPushGain = 1.28 // A
	widening     = 0.60 // B

	// sprintAbove is the push, as a part of the weight, above which the paddler
	// sprints: a face.
	sprintAbove = 0.05

	binsPerSystem = 64
)

// bin is a narrow band of the sea as the board meets it.
type bin struct {
	k, c  float64 // along the course
	inv   float64 // M²k²
	force float64 // N², variance of its push
	raw   float64 // of the push on a board of no length and 1 kg
}

type bins struct {
	n      int
	b      [2 * binsPerSystem]bin
	sigmaF float64 // N, standard deviation of the push
}

// field is the answer of the balance.
type field struct {
	speed, sigma float64
	sprinting    float64 // P
	rate         float64 // 1/s, variance rate: σ of the acceleration over σ of the speed
	passes       int     // over the bands, to get there
}

// weigh fills in what depends on the board: its length and its mass.
func (bs *bins) weigh(s *surge) {
	sum := 0.0
	for i := range bs.n {
		b := &bs.b[i]
		mk := s.inertia * b.k
		b.inv = mk * mk
		b.force = 0
		if x := b.k * s.halfLength; x < math.Pi {
			r := s.mass * math.Sin(x) / x
			b.force = r * r * b.raw
		}
		sum += b.force
	}
	bs.sigmaF = math.Sqrt(sum)
}

// rescale is weigh for a board of the same length and another mass than that
// of the surge it was weighed for.
func (bs *bins) rescale(from, to *surge) {
	force, inv := to.mass/from.mass, to.inertia/from.inertia
	for i := range bs.n {
		b := &bs.b[i]
		b.force *= force * force
		b.inv *= inv * inv
	}
	bs.sigmaF *= force
}

// settle solves the balance. start and wide are the first guesses of V
// and σ, tol the last step of either in m/s.
//
// Half steps of the fixed point come first: they find the answer that a board
// would settle to, from the slow side, where there are several. Near it the
// steps are Newton's, as long as they are short; their derivatives cost a few
// multiplications in the sums that are made anyway.
func (s *surge) settle(bs *bins, u, g, start, wide, tol float64) field {
	const near = 0.1 // m/s

	// The part of the time sprinting is 0 without waves.
	p := 0.5 * math.Erfc(sprintAbove*s.mass*g/bs.sigmaF/math.Sqrt2)
	net := func(v float64) float64 { return (1-p)*s.balance(v, s.cruise, u) + p*s.balance(v, s.sprint, u) }
	slope := func(v float64) float64 { return (1-p)*s.slope(v, s.cruise, u) + p*s.slope(v, s.sprint, u) }
	v, sigma := start, wide
	passes := 0
	for passes < 200 {
		passes++
		bend := slope(v)
		b := math.Max(leastDamping, -bend)
		m := bs.sums(v, widening*widening*sigma*sigma, b*b)
		if m.wander == 0 {
			return field{speed: s.flat(s.cruise, u), sprinting: p, passes: passes}
		}
		root := math.Sqrt(m.wander)
		mean := net(v) + meanPushGain*b*m.push
		dv, ds := mean/b, root-sigma
		if math.Max(math.Abs(dv), math.Abs(ds)) < near {
			// mean + a δv + h δσ = 0, ds + e δv + f δσ = 0.
			byWidth := 2 * widening * widening * sigma
			a, h := meanPushGain*b*m.pushV+bend, meanPushGain*b*m.pushQ*byWidth
			e, f := m.wanderV/(2*root), m.wanderQ*byWidth/(2*root)-1
			det := a*f - h*e
			nv, ns := (h*ds-f*mean)/det, (e*mean-a*ds)/det
			if longer := math.Max(math.Abs(nv), math.Abs(ns)); det > 0 && longer < sigma {
				v += nv
				sigma += ns
				if longer < tol {
					break
				}
				continue
			}
		}
		v += 0.5 * math.Max(-1, math.Min(1, dv))
		sigma += 0.5 * ds
	}
	b := math.Max(leastDamping, -slope(v))
	acc := 0.0
	for j := range bs.b[:bs.n] {
		w := &bs.b[j]
		q := (w.c-v)*(w.c-v) + widening*widening*sigma*sigma
		acc += w.force / (w.inv*q + b*b) * w.k * w.k * q
	}
	return field{speed: v, sigma: sigma, sprinting: p, rate: math.Sqrt(acc) / sigma, passes: passes}
}

// leastDamping is the least b, in N s/m.
const leastDamping = 2

// sums are those over the bands that the balance is made of, and how they change
// with V and with the width (B σ)².
type sums struct {
	push, wander     float64 // ⟨F⟩/b, σ²
	pushV, pushQ     float64
	wanderV, wanderQ float64
}

// sums takes the width and b².
func (bs *bins) sums(v, width, b2 float64) sums {
	var push, wander, pushV, pushQ, wanderV, wanderQ float64
	for j := range bs.b[:bs.n] {
		w := &bs.b[j]
		d := w.c - v
		q := d*d + width
		iq := w.inv * q
		e := 1 / (q * (iq + b2)) // one division for all sums
		r := w.force * e
		rd, rq := r*d, r*q
		push += rd
		wander += rq
		dr := rd * e * (iq + iq + b2) // -∂(rd)/∂q
		pushV += 2*dr*d - r
		pushQ -= dr
		dw := rq * e * iq // -∂(rq)/∂q
		wanderV += dw * d
		wanderQ -= dw
	}
	return sums{push, wander, pushV, pushQ, 2 * wanderV, wanderQ}
}

// fill adds the bins of a system; it returns the energy that the current
// blocks, as a part of that of the system.
func (p *Prepared) fill(bs *bins, y System, swell bool, sea *Sea, g float64) (blocked float64) {
	if y.Hs == 0 {
		return 0
	}
	cos := math.Cos(y.Off * (math.Pi / 180))
	if cos < pushCos {
		return 0
	}
	gamma := y.Gamma
	if gamma == 0 {
		gamma = 3.3
	}
	// From half the peak frequency to waves as short as the board, evenly in
	// the logarithm: the density is smooth in it and the peak narrow.
	lo := 0.55 / y.Tp
	length := 2 * p.surge.halfLength
	hi := math.Min(8/y.Tp, 1.06*math.Sqrt(g/(2*math.Pi*length*cos))+math.Max(0, sea.Current)/length)
	scale := p.factor.at(gamma) * 5.0 / 16 * y.Hs * y.Hs
	if swell {
		hi = math.Min(hi, swellCut/y.Tp)
		scale /= p.kept.at(gamma)
	}
	if hi <= lo {
		return 0
	}
	step := math.Pow(hi/lo, 1.0/binsPerSystem)
	root := math.Sqrt(step)
	f := lo * root
	logGamma := math.Log(gamma)
	for range binsPerSystem {
		x := f * y.Tp
		e := scale * jonswapShape(x, logGamma) * x * (root - 1/root)
		k, intrinsic, ok := intrinsicWave(1/f, sea.Depth, sea.Current*cos, g)
		if !ok {
			blocked += e * 16 / (y.Hs * y.Hs)
		} else {
			b := &bs.b[bs.n]
			bs.n++
			f := g * k * cos * math.Exp(-k*p.surge.halfDraught)
			*b = bin{k: k * cos, c: 2 * math.Pi / intrinsic / (k * cos), raw: f * f * e}
		}
		f *= step
	}
	return blocked
}

// Cosines of the angle between course and wave travel. Up to rideCos, 60
// degrees, waves count as bumps to ride; from pushCos, nearly abeam, their push
// along the course, which falls with the cosine, is left out.
const (
	rideCos = 0.5
	pushCos = 0.01
)

// withBoard reports whether waves count as bumps to ride, by the cosine of their
// angle with the course.
func withBoard(cos float64) bool { return cos >= rideCos }

// swellCut is the frequency, in peaks, above which a swell has nothing: what was
// short in it died out on the way. The rest is scaled up to its height.
const swellCut = 1.8

// jonswapShape is x⁻⁵ exp(−5/4 x⁻⁴) γ^r, the shape that JONSWAPFactor scales.
// It takes log γ.
func jonswapShape(x, logGamma float64) float64 {
	x2 := x * x
	x4 := x2 * x2
	e := -1.25 / x4
	if logGamma > 0 {
		width := 0.07
		if x > 1 {
			width = 0.09
		}
		d := (x - 1) / width
		if q := d * d / 2; q < 40 {
			e += logGamma * math.Exp(-q)
		}
	}
	return math.Exp(e) / (x4 * x)
}
