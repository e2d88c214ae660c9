package ride_test

import (
	"math"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/ride"
	"followingsea.example/wave/spectrum"
)

// plain is a paddler for the plain twins: the forces written straight from the printed formulas.
type plain struct{ ride.Paddler }

// plainly is the paddler as it resolves.
func plainly(t *testing.T, p ride.Paddler) plain {
	t.Helper()
	r, err := p.Resolved()
	if err != nil {
		t.Fatal(err)
	}
	return plain{r}
}

func (p plain) inertia() float64 { return p.Mass * (1 + p.AddedMass) }

// resistance is K v²/√(1 + (v/v_t)²), against the motion.
func (p plain) resistance(v float64) float64 {
	return p.Drag * v * math.Abs(v) / math.Sqrt(1+v*v/(p.Bend*p.Bend))
}

// pull is R(vs) vs/max(v, vs/2), or R(vs).
func (p plain) pull(v, vs float64) float64 {
	switch {
	case vs == 0:
		return 0
	case p.Thrust == ride.ConstantForce:
		return p.resistance(vs)
	}
	return p.resistance(vs) * vs / max(v, vs/2)
}

// windPush is that of a tail wind, or the excess of a head wind over still air; astern it is all the wind that meets the paddler.
func (p plain) windPush(v, wind float64) float64 {
	u := p.WindShare * wind
	half := ride.AirDensity * p.WindArea / 2
	switch d := u - v; {
	case d > 0:
		return half * d * d
	case u < 0 && v > 0:
		return -half * (d*d - v*v)
	case u < 0:
		return -half * d * d
	}
	return 0
}

func (p plain) net(v, vs, wind float64) float64 {
	return p.pull(v, vs) + p.windPush(v, wind) - p.resistance(v)
}

// slope is the derivative of net by differences.
func (p plain) slope(v, vs, wind float64) float64 {
	const d = 1e-5
	return (p.net(v+d, vs, wind) - p.net(v-d, vs, wind)) / (2 * d)
}

// plainWave is a wave as the board meets it: along the heading, but for its own wavenumber.
type plainWave struct{ own, k, c, perM float64 }

// wave is m g (k/2) sin(kL/2)/(kL/2) e^(-kd/2) a metre of height, with the wave of package wave.
func (p plain) wave(period, depth, current, off, g float64) (plainWave, bool) {
	cos := math.Cos(off * math.Pi / 180)
	w := wave.Water{Gravity: g}.OnCurrent(period, depth, current*cos)
	if w.State != wave.Runs {
		return plainWave{}, false
	}
	k := w.Wavenumber * cos
	v := plainWave{own: w.Wavenumber, k: k, c: w.IntrinsicPhaseSpeed / cos}
	if x := k * p.Length / 2; x < math.Pi {
		v.perM = p.Mass * g * k / 2 * math.Sin(x) / x * math.Exp(-w.Wavenumber*p.Draught/2)
	}
	return v, true
}

// systems are those of a sea as spectra, with the range of frequencies they have and what they are scaled by:
// a swell has nothing above 1.8 of the peak and all of its height.
type plainSystem struct {
	ride.System
	spectrum.JONSWAP
	lo, hi, scale float64
}

func systems(s ride.Sea, top float64) (all []plainSystem) {
	for i, y := range []ride.System{s.WindSea, s.Swell} {
		if y.Hs == 0 {
			continue
		}
		x := plainSystem{y, spectrum.JONSWAP{Hs: y.Hs, Tp: y.Tp, Gamma: y.Gamma}, 0.5 / y.Tp, top / y.Tp, 1}
		if y.Gamma == 0 {
			x.JONSWAP.Gamma = 3.3
		}
		if i == 1 {
			x.hi = 1.8 / y.Tp
			x.scale = y.Hs * y.Hs / 16 / x.MomentWithin(0, 0, x.hi)
		}
		all = append(all, x)
	}
	return all
}

// plainBand is a narrow band of a sea: 2 perM² times its energy is the variance of its push.
type plainBand struct{ k, c, force float64 }

func (p plain) bands(s ride.Sea) (bands []plainBand) {
	const n = 600
	for _, y := range systems(s, 8) {
		if math.Cos(y.Off*math.Pi/180) < 0.01 {
			continue
		}
		df := (y.hi - y.lo) / n
		for i := range n {
			f := y.lo + (float64(i)+0.5)*df
			if w, ok := p.wave(1/f, s.Depth, s.Current, y.Off, s.Gravity); ok && w.perM > 0 {
				bands = append(bands, plainBand{w.k, w.c, 4 * w.perM * w.perM * y.scale * y.Density(f) * df})
			}
		}
	}
	return bands
}

// plainMean is the answer of the balance of a sea: mean and standard deviation of the speed, part of the time sprinting,
// and the standard deviation of the acceleration over that of the speed.
type plainMean struct{ v, sigma, sprinting, rate float64 }

// mean is the balance (1-P) G(V; cruise) + P G(V; sprint) + A⟨F⟩ = 0, with b no less than 2 N s/m, by plain iteration.
func (p plain) mean(s ride.Sea, bands []plainBand) plainMean {
	g := s.Gravity
	if g == 0 {
		g = wave.StandardGravity
	}
	total := 0.0
	for _, w := range bands {
		total += w.force
	}
	part := 0.5 * math.Erfc(0.05*p.Mass*g/math.Sqrt(2*total))
	m := plainMean{v: p.FlatSpeed(p.Cruise, s.Wind), sigma: 0.3, sprinting: part}
	for range 60 {
		b := math.Max(2, -(1-part)*p.slope(m.v, p.Cruise, s.Wind)-part*p.slope(m.v, p.Sprint, s.Wind))
		push, wander, shake := 0.0, 0.0, 0.0
		for _, w := range bands {
			d := w.c - m.v
			q := d*d + 0.36*m.sigma*m.sigma
			mk := p.inertia() * w.k
			x := w.force / (mk*mk*q + b*b)
			push += b * x * d / q
			wander += x
			shake += x * w.k * w.k * q
		}
		net := (1-part)*p.net(m.v, p.Cruise, s.Wind) + part*p.net(m.v, p.Sprint, s.Wind)
		m.v += 0.5 * (net + 1.28*push) / b
		m.rate = math.Sqrt(shake / wander)
		m.sigma += 0.5 * (math.Sqrt(wander) - m.sigma)
	}
	return m
}

// arrives is the speed in the trough from which a board comes onto the wave just so, under a push of amplitude f: the surge
// equation backwards in time, from the unstable equilibrium near the crest to the trough. It is the wave speed at least
// where such a board would be faster than the wave.
func (p plain) arrives(w plainWave, f, vs, wind float64) float64 {
	return w.c - p.back(w, f, vs, wind, math.Pi)
}

// back is what that board is slower than the wave at the phase to; 0 where it would be faster before.
func (p plain) back(w plainWave, f, vs, wind, to float64) float64 {
	load := -p.net(w.c, vs, wind) / f
	if !(load <= 1) {
		return 0
	}
	top := math.Asin(math.Max(-1, load))
	m := p.inertia()
	rest := p.slope(w.c, vs, wind)
	sigma := (-rest + math.Sqrt(rest*rest+4*w.k*m*f*math.Cos(top))) / (2 * w.k * m)
	x, d := top+1e-3, sigma*1e-3
	rate := func(x, d float64) float64 { return (p.net(w.c-d, vs, wind) + f*math.Sin(x)) / (w.k * m * d) }
	for x < to {
		h := math.Min(math.Min(0.02, (x-top)/25), to-x)
		a := rate(x, d)
		b := rate(x+h/2, d+h/2*a)
		c := rate(x+h/2, d+h/2*b)
		e := rate(x+h, d+h*c)
		if !(d+h/2*a > 0 && d+h/2*b > 0 && d+h*c > 0) {
			return 0
		}
		d += h / 6 * (a + 2*b + 2*c + e)
		x += h
		if !(d > 0) {
			return 0
		}
		if to-x < 1e-12 {
			break
		}
	}
	return d
}

// runUp is the time from the trough to wave speed, and whether the crest does not pass first.
func (p plain) runUp(w plainWave, f, vs, wind, start float64) (float64, bool) {
	const dt = 0.01
	m := p.inertia()
	psi, v := math.Pi, start
	acc := func(psi, v float64) float64 { return (p.net(v, vs, wind) + f*math.Sin(psi)) / m }
	for t := 0.0; t < 200; t += dt {
		a1, p1 := acc(psi, v), w.k*(v-w.c)
		a2, p2 := acc(psi+dt/2*p1, v+dt/2*a1), w.k*(v+dt/2*a1-w.c)
		a3, p3 := acc(psi+dt/2*p2, v+dt/2*a2), w.k*(v+dt/2*a2-w.c)
		a4, p4 := acc(psi+dt*p3, v+dt*a3), w.k*(v+dt*a3-w.c)
		next := v + dt/6*(a1+2*a2+2*a3+a4)
		if next >= w.c {
			return t + dt*(w.c-v)/(next-v), true
		}
		psi += dt / 6 * (p1 + 2*p2 + 2*p3 + p4)
		if v = next; psi < 0 {
			return t, false
		}
	}
	return math.Inf(1), false
}

func rel(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	near(t, what, got, want, tol*math.Abs(want))
}

// plainCatches are the pushes that catch at the nodes between which Prepared.Sea interpolates: what catching needs above
// holding, over that of a board which loses nothing, k M (c - vs)²/4.
type plainCatches struct {
	plain
	seen map[[3]float64]float64
}

func (p plainCatches) node(wind, kappa, ahead float64) float64 {
	if ahead == 0 {
		ahead = 0.2
	}
	key := [3]float64{wind, kappa, ahead}
	if y, ok := p.seen[key]; ok {
		return y
	}
	vs := p.FlatSpeed(p.Sprint, wind)
	w := plainWave{c: vs + ahead}
	w.k = kappa * wave.StandardGravity / (w.c * w.c)
	hold := math.Max(1e-6, -p.net(w.c, p.Sprint, wind))
	lift := w.k * p.inertia() * ahead * ahead / 4
	late := func(y float64) float64 { return p.arrives(w, hold+y*lift, p.Sprint, wind) - vs }
	lo, hi := 0.0, 2.0
	a, b := late(lo), late(hi)
	if a <= 0 { // what holds it catches
		hi = 0
	}
	for range 40 { // false position, halving what is kept
		if hi-lo < 1e-7 {
			break
		}
		y := math.Max(lo+1e-8, math.Min(hi-1e-8, lo+(hi-lo)*a/(a-b)))
		if g := late(y); g > 0 {
			lo, a, b = y, g, b/2
		} else {
			hi, b, a = y, g, a/2
		}
	}
	p.seen[key] = hi
	return hi
}

// height is the height that catches, by interpolation between eight nodes.
func (p plainCatches) height(w plainWave, wind, g float64) float64 {
	seat := func(nodes []float64, x float64) (lo, hi, part float64) {
		i := 1
		for i < len(nodes)-1 && nodes[i] <= x {
			i++
		}
		lo, hi = nodes[i-1], nodes[i]
		return lo, hi, math.Max(0, math.Min(1, (x-lo)/(hi-lo)))
	}
	vs := p.FlatSpeed(p.Sprint, wind)
	w0, w1, wp := seat([]float64{-20, -8, 0, 4, 8, 12, 16, 22, 35}, wind)
	k0, k1, kp := seat([]float64{0.2, 0.4, 0.7, 1, 1.5, 2.5}, w.k*w.c*w.c/g)
	a0, a1, ap := seat([]float64{0, 0.2, 0.4, 0.7, 1, 1.4, 1.9, 2.5, 3.3, 4.3, 6, 9}, w.c-vs)
	y := 0.0
	for _, n := range [][4]float64{
		{w0, k0, a0, (1 - wp) * (1 - kp) * (1 - ap)}, {w0, k0, a1, (1 - wp) * (1 - kp) * ap},
		{w0, k1, a0, (1 - wp) * kp * (1 - ap)}, {w0, k1, a1, (1 - wp) * kp * ap},
		{w1, k0, a0, wp * (1 - kp) * (1 - ap)}, {w1, k0, a1, wp * (1 - kp) * ap},
		{w1, k1, a0, wp * kp * (1 - ap)}, {w1, k1, a1, wp * kp * ap},
	} {
		if n[3] > 1e-9 {
			y += n[3] * p.node(n[0], n[1], n[2])
		}
	}
	hold := math.Max(0, -p.net(w.c, p.Sprint, wind))
	return (hold + y*w.k*p.inertia()*(w.c-vs)*(w.c-vs)/4) / w.perM
}

// plainSeas are seas in which every term counts: two systems either of which leads, oblique, on currents, shallow, with
// and against the wind.
var plainSeas = []struct {
	name    string
	paddler int // of someReady
	lead    int // 0 the wind sea, 1 the swell
	sea     ride.Sea
}{
	{"wind sea", 0, 0, ride.Sea{WindSea: ride.System{Hs: 0.8, Tp: 3.4}, Wind: 8, Depth: deep}},
	{"between the winds of the nodes", 1, 0, ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 2.8, Gamma: 2}, Wind: 9.5, Depth: deep}},
	{"oblique, against a stream", 0, 0, ride.Sea{WindSea: ride.System{Hs: 1.1, Tp: 4.2, Gamma: 1, Off: -44}, Wind: 12, Current: -0.4, Depth: deep, Gravity: 9.81}},
	{"two systems with a stream", 2, 0, ride.Sea{WindSea: ride.System{Hs: 0.9, Tp: 4}, Swell: ride.System{Hs: 0.7, Tp: 6, Gamma: 5, Off: 30}, Wind: 10, Current: 0.6, Depth: deep}},
	{"the swell is the shorter", 0, 1, ride.Sea{WindSea: ride.System{Hs: 1.5, Tp: 6, Off: 15}, Swell: ride.System{Hs: 0.5, Tp: 3.5, Off: -10}, Wind: 5, Depth: 30}},
	{"the wind sea crosses", 1, 1, ride.Sea{WindSea: ride.System{Hs: 0.5, Tp: 2.5, Off: 75}, Swell: ride.System{Hs: 0.7, Tp: 3.8, Off: 20}, Wind: 2, Depth: deep}},
	{"shallow", 0, 0, ride.Sea{WindSea: ride.System{Hs: 0.5, Tp: 3.5}, Wind: 9, Depth: 1.6}},
	{"head wind", 1, 0, ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 2.9}, Wind: -3, Current: -0.2, Depth: 5}},
}

// answered returns the ride of a paddler of someReady in a sea, the plain twin of the paddler, and the sea with its gravity.
func answered(t *testing.T, paddler int, s ride.Sea) (ride.Ride, plain, ride.Sea) {
	t.Helper()
	ready := someReady()[paddler]
	r, err := ready.Sea(s)
	if err != nil {
		t.Fatal(err)
	}
	if s.Gravity == 0 {
		s.Gravity = wave.StandardGravity
	}
	return r, plainly(t, ready.Paddler()), s
}

// TestSpeedOfARideIsThatOfItsFormulas: the speed, what follows from it and its spread are those of their definitions,
// recomputed from the spectra and the printed forces.
func TestSpeedOfARideIsThatOfItsFormulas(t *testing.T) {
	for _, c := range plainSeas {
		r, p, s := answered(t, c.paddler, c.sea)
		is := func(field string, got, want, tol float64) {
			t.Helper()
			near(t, c.name+", "+field, got, want, tol)
		}

		flat, sprint := p.FlatSpeed(p.Cruise, s.Wind), p.FlatSpeed(p.Sprint, s.Wind)
		is("FlatSpeed", r.FlatSpeed, flat, 1e-9)
		is("SprintSpeed", r.SprintSpeed, sprint, 1e-9)
		is("Gain", r.Gain, r.Speed-flat, 1e-9)
		is("OverGround", r.OverGround, r.Speed+s.Current, 1e-12)

		m := p.mean(s, p.bands(s))
		is("Speed", r.Speed, m.v, 4e-3)
		is("SpeedWander", r.SpeedWander, m.sigma, 4e-3)
		is("Sprinting", r.Sprinting, m.sprinting, 2e-3)

		// The speed is normal about its mean: z is that of the sprint.
		z := (sprint - r.Speed) / r.SpeedWander
		bell := math.Exp(-z * z / 2)
		is("RidingShare", r.RidingShare, 0.5*math.Erfc(z/math.Sqrt2), 1e-9)
		rel(t, c.name+", CatchesPerHour", r.CatchesPerHour, 3600*0.74*m.rate/(2*math.Pi)*bell, 0.01)
		is("Life", r.Life, r.RidingShare*3600/r.CatchesPerHour, 1e-9)
		is("RidingSpeed", r.RidingSpeed, r.Speed+r.SpeedWander*bell/math.Sqrt(2*math.Pi)/r.RidingShare, 1e-9)

		// Parameters moved one at a time by their spreads; the closed form, 3 % and in shallow water up to 20; an hour of
		// speeds that remember 7 s.
		lead := []ride.System{s.WindSea, s.Swell}[c.lead]
		kh := wave.Water{Gravity: s.Gravity}.Solve(lead.Tp, s.Depth).Wavenumber * s.Depth
		model := (0.03 + 0.17*math.Max(0, math.Min(1, (2-kh)/1.4))) * m.v
		sum := model*model + m.sigma*m.sigma*2*7/3600
		part := map[string]float64{}
		for _, prior := range ride.Priors(p.Craft) {
			part[prior.Field] = prior.Spread
		}
		for _, move := range []func(q *plain){
			func(q *plain) { q.Drag *= 1 + part["Drag"] },
			func(q *plain) { q.WindArea *= 1 + part["WindArea"] },
			func(q *plain) { q.Bend *= 1 + part["Bend"] },
			func(q *plain) { q.Mass *= 1 + part["Mass"] },
			func(q *plain) { q.Length *= 1 - part["Length"] },
		} {
			q := p
			move(&q)
			d := q.mean(s, q.bands(s)).v - m.v
			sum += d * d
		}
		rel(t, c.name+", Spread", r.Spread, math.Sqrt(sum), 0.02)
	}
}

// TestWavesOfARideAreThoseOfItsFormulas: the longest wave that holds, the part of the sea that is no longer, and the shares
// of waves that catch are those of their definitions, recomputed from the spectra and the printed forces.
func TestWavesOfARideAreThoseOfItsFormulas(t *testing.T) {
	for _, c := range plainSeas {
		r, p, s := answered(t, c.paddler, c.sea)
		is := func(field string, got, want, tol float64) {
			t.Helper()
			near(t, c.name+", "+field, got, want, tol)
		}

		flat, sprint := p.FlatSpeed(p.Cruise, s.Wind), p.FlatSpeed(p.Sprint, s.Wind)
		lead := []ride.System{s.WindSea, s.Swell}[c.lead]

		// The longest period held: its wave of ak = 0.15 is just as high as holding needs, a longer one is too low.
		w, _ := p.wave(r.LongestPeriod, s.Depth, s.Current, lead.Off, s.Gravity)
		if hold := -p.net(w.c, p.Sprint, s.Wind) / (w.perM * 2 * 0.15 / w.own); r.LongestPeriod < 29.99 || hold > 1 {
			is("hold at LongestPeriod", hold, 1, 1e-4)
		}
		is("LongestCelerity", r.LongestCelerity, w.c, 1e-6)

		var m0, m1, m2 float64
		total := 0.0
		for _, y := range systems(s, 20) {
			total += y.System.Hs * y.System.Hs / 16
			if math.Cos(y.Off*math.Pi/180) < 0.5 {
				continue
			}
			lo := math.Max(y.lo, 1/r.LongestPeriod)
			m0 += y.scale * y.MomentWithin(0, lo, math.Max(lo, y.hi))
			m1 += y.scale * y.MomentWithin(1, lo, math.Max(lo, y.hi))
			m2 += y.scale * y.MomentWithin(2, lo, math.Max(lo, y.hi))
		}
		rel(t, c.name+", RideableHs", r.RideableHs, 4*math.Sqrt(m0), 1e-5)
		rel(t, c.name+", RideablePeriod", r.RideablePeriod, m0/m1, 1e-5)
		rel(t, c.name+", EnergyShare", r.EnergyShare, m0/total, 1e-5)

		catches := plainCatches{p, map[[3]float64]float64{}}
		w, _ = p.wave(lead.Tp, s.Depth, s.Current, lead.Off, s.Gravity)
		x := catches.height(w, s.Wind, s.Gravity)
		rel(t, c.name+", DominantCatch", r.DominantCatch, x, 1e-4)
		is("DominantShare", r.DominantShare, math.Exp(-2*x*x/lead.Hs/lead.Hs), 1e-4)

		// The joint density of heights and periods, R² exp(-R²(1 + (1 - 1/τ)²/ν²))/τ², with R = H/√8m0.
		nu := math.Sqrt(m0*m2/(m1*m1) - 1)
		caught, all := 0.0, 0.0
		const n, rows = 38, 400
		for i := range n {
			tau := 0.3 + (float64(i)+0.5)*1.9/n
			w, ok := p.wave(tau*m0/m1, s.Depth, s.Current, lead.Off, s.Gravity)
			if !ok {
				continue
			}
			a := 1 + math.Pow((1-1/tau)/nu, 2)
			met := math.Abs(1-flat/w.c) / (tau * tau)
			all += met * math.Sqrt(math.Pi) / 4 * math.Pow(a, -1.5) // ∫R² e^(-aR²) dR
			if w.perM == 0 || w.c <= sprint {
				continue
			}
			low, high := catches.height(w, s.Wind, s.Gravity)/math.Sqrt(8*m0), 0.142*2*math.Pi/w.own/math.Sqrt(8*m0)
			high = math.Min(high, 6)
			for j := range rows {
				if d := (high - low) / rows; d > 0 {
					r := low + (float64(j)+0.5)*d
					caught += met * r * r * math.Exp(-a*r*r) * d
				}
			}
		}
		is("WaveShare", r.WaveShare, caught/all, 2e-4)
	}
}

// TestSpeedInAGale: the balance holds too where a head wind drives the board back.
func TestSpeedInAGale(t *testing.T) {
	ready := someReady()[1]
	p := plainly(t, ready.Paddler())
	s := ride.Sea{WindSea: ride.System{Hs: 0.8, Tp: 2.8}, Wind: -20, Depth: deep, Gravity: 9.81}
	r, err := ready.Sea(s)
	if err != nil {
		t.Fatal(err)
	}
	m := p.mean(s, p.bands(s))
	near(t, "Speed", r.Speed, m.v, 1e-3)
	near(t, "SpeedWander", r.SpeedWander, m.sigma, 1e-3)
	if !(r.Speed < 0) {
		t.Errorf("%v m/s is not back", r.Speed)
	}
}
