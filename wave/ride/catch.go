package ride

import "math"

// Catching. The board waits in the trough, ψ = π, at v₀ < c. With the deficit
// w = c − v as the unknown and the phase as the clock, the surge equation is
//
//	dw/dψ = (G(c − w) + F sin ψ) / (k M w)
//
// Two ends are possible as the face sweeps past, ψ falling: w reaches zero on
// the face, and the board is on the wave; or ψ reaches the crest first. The
// border between them is the path that arrives exactly at the unstable
// equilibrium near the crest, sin ψ_u = −G(c)/F. Followed backwards, from that
// point to the trough, it needs no search: one integration tells how slow a
// board may be in the trough for a wave of this push. The path backwards draws
// neighbours in, so a few dozen steps give five digits.

const separatrixSteps = 32

// needed returns the speed in the trough from which a wave of push f is just
// caught. f must be at least the push that holds.
func (s *surge) needed(w train, f float64, e effort, u float64) float64 {
	return w.c - s.behind(w, f, e, u, math.Pi, separatrixSteps)
}

// behind returns how much slower than the wave a board on that path is where it
// comes from, at the phase to; 0 where it would have been faster on the way.
func (s *surge) behind(w train, f float64, e effort, u, to float64, steps int) float64 {
	load := -s.balance(w.c, e, u) / f
	if !(load <= 1) {
		return 0
	}
	psiU := math.Asin(math.Max(load, -1))
	kM := w.k * s.inertia

	// Leaving the equilibrium: w = σ δ for a short way, from the equation itself.
	const leave = 0.004
	g1 := s.slope(w.c, e, u)
	sigma := (-g1 + math.Sqrt(g1*g1+4*kM*f*math.Cos(psiU))) / (2 * kM)

	// Steps even in y, δ = span·y², crowd where the path leaves the equilibrium.
	span := to - psiU
	y := math.Sqrt(leave / span)
	h := (1 - y) / float64(steps)
	scale := 2 * span / kM
	rate := func(y, def float64) float64 {
		if !(def > 0) { // from a board faster than the wave
			return math.NaN()
		}
		g := s.balance(w.c-def, e, u) + f*math.Sin(psiU+span*y*y)
		return scale * y * g / def
	}
	def := sigma * leave
	for range steps {
		k1 := rate(y, def)
		k2 := rate(y+h/2, def+h/2*k1)
		k3 := rate(y+h/2, def+h/2*k2)
		k4 := rate(y+h, def+h*k3)
		def += h / 6 * (k1 + 2*k2 + 2*k3 + k4)
		y += h
		if !(def > 0) {
			return 0
		}
	}
	return def
}

// catchForce returns the least push that brings a board at start in the
// trough onto the wave within patience seconds: hold where the board is as
// fast as the wave.
func (s *surge) catchForce(w train, e effort, u, start float64) float64 {
	f := s.separatrixForce(w, e, u, start)
	inTime := func(f float64) bool { return s.catchTime(w, f, e, u, start) <= patience }
	// Only a wave hardly faster than the board takes so long.
	if start >= w.c || w.k*(w.c-start) > math.Pi/4 || inTime(f*1.001) {
		return f
	}
	for range 60 {
		if inTime(2 * f) {
			break
		}
		f *= 2
	}
	_, f = halve(f, 2*f, 1e-4, inTime)
	return f
}

// patience is the longest run-up, in seconds, that counts as a catch.
const patience = 60

// separatrixForce is catchForce without the limit of time.
func (s *surge) separatrixForce(w train, e effort, u, start float64) float64 {
	hold := math.Max(0, -s.balance(w.c, e, u))
	if start >= w.c {
		return hold
	}
	// The gap needed − start falls with the push; near the hold threshold it
	// may be negative already: then holding is catching.
	lo := math.Max(hold, 1e-6)
	glo := s.needed(w, lo, e, u) - start
	if glo <= 0 {
		return hold
	}
	// With losses it takes more than without.
	hi := lo + s.lift(w, start)
	ghi := s.needed(w, hi, e, u) - start
	for range 60 {
		if ghi <= 0 {
			break
		}
		lo, glo = hi, ghi
		hi *= 1.5
		ghi = s.needed(w, hi, e, u) - start
	}
	return illinois(func(f float64) float64 { return s.needed(w, f, e, u) - start }, lo, glo, hi, ghi, 1e-7*hi)
}

// halve closes in on the place between lo and hi where enough begins to hold,
// until they are within tol.
func halve(lo, hi, tol float64, enough func(x float64) bool) (float64, float64) {
	for hi-lo > tol {
		mid := (lo + hi) / 2
		if enough(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return lo, hi
}

// lift is the push that would bring a board from start to wave speed if
// nothing were lost: k M (c − start)²/4.
func (s *surge) lift(w train, start float64) float64 {
	return w.k * s.inertia * (w.c - start) * (w.c - start) / 4
}

// illinois is false position that cannot stall: the value at an end that stays
// is halved. The root between a and b is bracketed throughout.
func illinois(g func(float64) float64, a, ga, b, gb, tol float64) float64 {
	for range 100 {
		x := b - gb*(b-a)/(gb-ga)
		step := math.Abs(x - b)
		gx := g(x)
		if (gx > 0) != (gb > 0) {
			a, ga = b, gb
		} else {
			ga /= 2
		}
		b, gb = x, gx
		if step <= tol || gx == 0 {
			break
		}
	}
	return b
}

// damping returns β: the secant damping b over the separatrix, scaled.
//
//	b = (mean of G(c − q sin y) over 0 < y < π − G(c)) / (2q/π)
func (s *surge) damping(w train, f float64, e effort, u float64) float64 {
	q := 2 * math.Sqrt(f/(w.k*s.inertia))
	b := (s.overSeparatrix(w, q, e, u, 48) - s.balance(w.c, e, u)) / (2 * q / math.Pi)
	return b / math.Sqrt(f*w.k*s.inertia)
}

// overSeparatrix is the mean of G(c − q sin y) over a quarter turn, by n points.
func (s *surge) overSeparatrix(w train, q float64, e effort, u float64, n int) float64 {
	step := math.Pi / 2 / float64(n)
	sum := 0.0
	for i := range n {
		sum += s.balance(w.c-q*math.Sin((float64(i)+0.5)*step), e, u)
	}
	return sum / float64(n)
}

// inevitableForce returns the push above which no board at this effort is left
// behind, never less than the push that holds.
func (s *surge) inevitableForce(w train, e effort, u float64) float64 {
	short := -s.balance(w.c, e, u)
	if short <= 0 {
		return 0
	}
	// The pendulum is loaded too much while short/f > I_h(β(f)).
	excess := func(f float64) float64 { return short/f - PendulumThreshold(math.Max(0, s.damping(w, f, e, u))) }
	lo, hi := short, short
	glo := excess(lo)
	if glo <= 0 {
		return short
	}
	for range 80 {
		hi *= 1.3
		ghi := excess(hi)
		if ghi <= 0 {
			return illinois(excess, lo, glo, hi, ghi, 1e-7)
		}
		lo, glo = hi, ghi
	}
	return math.Inf(1)
}

// catchTime returns the seconds from the trough until the board has wave
// speed, NaN if the crest passes first or patience does not suffice.
func (s *surge) catchTime(w train, f float64, e effort, u, start float64) float64 {
	const dt = 0.05
	psi, v := math.Pi, start
	acc := func(psi, v float64) float64 { return (s.balance(v, e, u) + f*math.Sin(psi)) / s.inertia }
	for t := 0.0; t <= patience; t += dt {
		a1, p1 := acc(psi, v), w.k*(v-w.c)
		a2, p2 := acc(psi+dt/2*p1, v+dt/2*a1), w.k*(v+dt/2*a1-w.c)
		a3, p3 := acc(psi+dt/2*p2, v+dt/2*a2), w.k*(v+dt/2*a2-w.c)
		a4, p4 := acc(psi+dt*p3, v+dt*a3), w.k*(v+dt*a3-w.c)
		nv := v + dt/6*(a1+2*a2+2*a3+a4)
		if nv >= w.c {
			return t + dt*(w.c-v)/(nv-v)
		}
		psi += dt / 6 * (p1 + 2*p2 + 2*p3 + p4)
		v = nv
		if psi < 0 {
			break
		}
	}
	return math.NaN()
}
