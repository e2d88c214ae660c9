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
	k, c   float64 // along the course
	kTrue  float64
	energy float64 // m²
	inv    float64 // M²k², of the surge it is used with
	force  float64 // N², variance of its push
}

type bins struct {
	n int
	b [2 * binsPerSystem]bin
}

// field is the answer of the balance.
type field struct {
	speed, sigma float64
	sprinting    float64 // P
	rate         float64 // 1/s, variance rate: σ of the acceleration over σ of the speed
}

// prepare fills in what depends on the surge.
func (s *surge) load(bs *bins, g float64) (sigmaF float64) {
	sum := 0.0
	for i := range bs.n {
		b := &bs.b[i]
		f := 2 * s.push(b.k, b.kTrue, g)
		b.force = f * f * b.energy
		mk := s.inertia * b.k
		b.inv = mk * mk
		sum += b.force
	}
	return math.Sqrt(sum)
}

// settle solves the balance. start and wide are the first guesses of V
// and σ, tol the last step of either in m/s.
func (s *surge) settle(bs *bins, sigmaF, u, g, start, wide, tol float64) field {
	p := 0.0
	if sigmaF > 0 {
		p = 0.5 * math.Erfc(sprintAbove*s.mass*g/sigmaF/math.Sqrt2)
	}
	v, sigma := start, wide
	for range 200 {
		b := math.Max(2, -(1-p)*s.slope(v, s.cruise, u)-p*s.slope(v, s.sprint, u))
		b2, w2 := b*b, widening*widening*sigma*sigma
		push, wander := 0.0, 0.0
		for j := range bs.n {
			w := &bs.b[j]
			d := w.c - v
			q := d*d + w2
			r := w.force / (q * (w.inv*q + b2)) // one division for both sums
			push += r * d
			wander += r * q
		}
		push *= meanPushGain * b
		if wander == 0 {
			return field{speed: s.flat(s.cruise, u), sprinting: p}
		}
		mean := (1-p)*s.balance(v, s.cruise, u) + p*s.balance(v, s.sprint, u) + push
		dv, ds := mean/b, math.Sqrt(wander)-sigma
		v += 0.5 * math.Max(-1, math.Min(1, dv))
		sigma += 0.5 * ds
		if math.Abs(dv) < tol && math.Abs(ds) < tol {
			break
		}
	}
	b := math.Max(2, -(1-p)*s.slope(v, s.cruise, u)-p*s.slope(v, s.sprint, u))
	w2 := widening * widening * sigma * sigma
	acc := 0.0
	for j := range bs.n {
		w := &bs.b[j]
		q := (w.c-v)*(w.c-v) + w2
		acc += w.force / (w.inv*q + b*b) * w.k * w.k * q
	}
	return field{speed: v, sigma: sigma, sprinting: p, rate: math.Sqrt(acc) / sigma}
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
		} else if e > 0 {
			b := &bs.b[bs.n]
			bs.n++
			*b = bin{k: k * cos, kTrue: k, c: 2 * math.Pi / intrinsic / (k * cos), energy: e}
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
