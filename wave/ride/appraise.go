package ride

import "math"

// Sea says what the sea brings the paddler. It allocates nothing. Proposal, no
// published source: see [Ride].
//
// Errors: [ErrSea] for a field outside its range.
func (p *Prepared) Sea(sea Sea) (Ride, error) {
	if err := sea.check(); err != nil {
		return Ride{}, err
	}
	g := sea.gravity()
	s := &p.surge
	u := s.share * sea.Wind
	r := Ride{Standing: Standing, FlatSpeed: s.flat(s.cruise, u), SprintSpeed: s.flat(s.sprint, u)}

	var bs bins
	r.Remarks = sea.remarks(p.load(&bs, &sea))
	f := p.mean(&bs, &sea)
	r.Speed = f.speed
	r.Gain = r.Speed - r.FlatSpeed
	r.OverGround = r.Speed + sea.Current
	r.SpeedWander, r.Sprinting = f.sigma, f.sprinting

	r.rise(f, r.SprintSpeed)
	p.longest(&r, &sea, u, g)
	p.dominant(&r, &sea, u, g)
	r.Spread = p.spread(&bs, &sea, f)
	if r.RidingSpeed > 7 {
		r.Remarks |= FastBumps
	}
	return r, nil
}

// load fills the bins with all systems, weighed for the paddler; it returns the greatest part of one
// that the current blocks.
func (p *Prepared) load(bs *bins, sea *Sea) (blocked float64) {
	bs.n = 0
	blocked = p.fill(bs, sea.WindSea, false, sea, sea.gravity())
	blocked = math.Max(blocked, p.fill(bs, sea.Swell, true, sea, sea.gravity()))
	bs.weigh(&p.surge)
	return blocked
}

// mean is the balance in the sea of the bins.
func (p *Prepared) mean(bs *bins, sea *Sea) field {
	s := &p.surge
	u, g := s.share*sea.Wind, sea.gravity()
	return s.settle(bs, u, g, s.flat(s.cruise, u), 0.3, 1e-6)
}

// meanSpeed is the mean speed alone.
func (p *Prepared) meanSpeed(sea Sea) float64 {
	var bs bins
	p.load(&bs, &sea)
	return p.mean(&bs, &sea).speed
}

// rise fills in the time above sprint speed, for a speed that wanders normally
// about its mean, and how often it rises through it (Rice).
func (r *Ride) rise(f field, sprint float64) {
	if !(f.sigma > 0.01) {
		return
	}
	z := (sprint - f.speed) / f.sigma
	r.RidingShare = 0.5 * math.Erfc(z/math.Sqrt2)
	up := riseRate * f.rate / (2 * math.Pi) * math.Exp(-z*z/2)
	r.CatchesPerHour = 3600 * up
	if r.RidingShare > 1e-6 {
		r.Life = r.RidingShare / up
		r.RidingSpeed = f.speed + f.sigma*math.Exp(-z*z/2)/math.Sqrt(2*math.Pi)/r.RidingShare
	}
}

// dominant fills in what the waves of the peak need, and how many have it: the
// heights of waves are Rayleigh distributed.
func (p *Prepared) dominant(r *Ride, sea *Sea, u, g float64) {
	y := sea.leading()
	cos := math.Cos(y.Off * (math.Pi / 180))
	if !(y.Hs > 0 && withBoard(cos)) {
		return
	}
	w, ok := p.surge.train(y.Tp, sea.Depth, sea.Current*cos, cos, g)
	if !ok || !(w.perM > 0) || w.c <= r.SprintSpeed {
		return
	}
	r.DominantCatch = p.catching(&p.surge, w, find(tableWind[:], sea.Wind), u, r.SprintSpeed, g) / w.perM
	x := r.DominantCatch / y.Hs
	r.DominantShare = math.Exp(-2 * x * x)
}

// longestLooked is the longest period, in seconds, that is asked whether it can
// be held.
const longestLooked = 30.0

// longest fills in the rideable band and the shares of it.
func (p *Prepared) longest(r *Ride, sea *Sea, u, g float64) {
	s := &p.surge
	cos := math.Cos(sea.leading().Off * (math.Pi / 180))
	if !withBoard(cos) {
		return
	}
	// The longest period held: the last at which the push of a wave of slope
	// 0.15 covers what a sprint lacks. The push falls and the lack grows with
	// the period.
	held := func(t float64) bool {
		w, ok := s.train(t, sea.Depth, sea.Current*cos, cos, g)
		return ok && w.perM > 0 && -s.balance(w.c, s.sprint, u) <= w.perM*2*heldSlope*cos/w.k
	}
	lo, hi := 0.0, longestLooked
	for t := 1.0; t < hi; t += 0.5 {
		if held(t) {
			lo = t
		} else if lo > 0 {
			hi = t
		}
	}
	if lo == 0 {
		return
	}
	lo, _ = halve(lo, hi, 1e-6, func(t float64) bool { return !held(t) })
	w, ok := s.train(lo, sea.Depth, sea.Current*cos, cos, g)
	if !ok {
		return
	}
	r.LongestPeriod, r.LongestCelerity = lo, w.c

	var m [3]float64
	p.above(&m, &sea.WindSea, false, 1/lo)
	p.above(&m, &sea.Swell, true, 1/lo)
	total := (sea.WindSea.Hs*sea.WindSea.Hs + sea.Swell.Hs*sea.Swell.Hs) / 16
	if !(m[0] > 0) {
		return
	}
	r.RideableHs = 4 * math.Sqrt(m[0])
	r.RideablePeriod = m[0] / m[1]
	r.EnergyShare = math.Min(1, m[0]/total)
	nu2 := m[0]*m[2]/(m[1]*m[1]) - 1
	if !(nu2 > 1e-6) {
		return
	}
	r.WaveShare = p.waveShare(r, sea, math.Sqrt(nu2), cos, u, g)
}

// riseRate lowers the count of a Gaussian speed to that of the simulated one,
// which lingers on the bumps. Fitted to the same 60 seas as the mean speed.
const riseRate = 0.74

const (
	heldSlope  = 0.15 // ak of the steepest wave that counts for the longest period held
	shareSteps = 38
)

// waveShare is the part of the waves of the rideable band that a sprint
// catches: the joint density of heights and periods over periods of 0.3 to 2.2
// times the mean, from the height that catches to the height that breaks. The
// integral over heights is done in closed form. Each period counts as often as
// the board meets it, by |1 − v/c|: a moving board meets fewer of the slow
// waves, which are those it can catch, than a buoy counts.
func (p *Prepared) waveShare(r *Ride, sea *Sea, nu, cos, u, g float64) float64 {
	s := &p.surge
	wind := find(tableWind[:], sea.Wind)
	const dt = 1.9 / shareSteps
	share, all := 0.0, 0.0
	for i := range shareSteps {
		t := 0.3 + (float64(i)+0.5)*dt
		x := (1 - 1/t) / nu
		a := 1 + x*x
		w, ok := s.train(t*r.RideablePeriod, sea.Depth, sea.Current*cos, cos, g)
		if !ok {
			continue
		}
		weight := math.Abs(1-r.FlatSpeed/w.c) / (t * t * a * math.Sqrt(a))
		all += weight
		if w.c <= r.SprintSpeed {
			continue
		}
		high := breakingSteep * 2 * math.Pi * cos / w.k
		low := math.Min(high, p.catching(s, w, wind, u, r.SprintSpeed, g)/w.perM) // no push, no height
		scale := math.Sqrt2 / r.RideableHs * math.Sqrt(a)
		share += weight * (below(high*scale) - below(low*scale))
	}
	if !(all > 0) {
		return 0
	}
	return share / all
}

// below is the part of a Maxwellian variable below z: erf z − 2z/√π e^(−z²).
func below(z float64) float64 {
	return math.Erf(z) - 2/math.Sqrt(math.Pi)*z*math.Exp(-z*z)
}

// train makes the wave of a period as the board meets it, with the push per
// metre.
func (s *surge) train(period, depth, along, cos, g float64) (train, bool) {
	k, intrinsic, ok := intrinsicWave(period, depth, along, g)
	if !ok {
		return train{}, false
	}
	w := train{k: k * cos, c: 2 * math.Pi / intrinsic / (k * cos)}
	w.perM = s.push(w.k, k, g)
	return w, true
}

// leading is the system that carries the bumps: the shorter one, the wind sea of
// two as short, unless it does not run with the board.
func (s *Sea) leading() *System {
	a, b := &s.WindSea, &s.Swell
	with := func(y *System) bool { return y.Hs > 0 && withBoard(math.Cos(y.Off*(math.Pi/180))) }
	switch {
	case with(a) && with(b):
		if b.Tp < a.Tp {
			return b
		}
		return a
	case with(b):
		return b
	}
	return a
}

// above adds the moments of a system above a frequency, in m² Hzⁿ, if it runs
// with the board.
func (p *Prepared) above(m *[3]float64, y *System, swell bool, low float64) {
	if y.Hs == 0 || !withBoard(math.Cos(y.Off*(math.Pi/180))) {
		return
	}
	gamma := y.Gamma
	if gamma == 0 {
		gamma = 3.3
	}
	lo := math.Max(0.5, low*y.Tp)
	hi := 20.0
	scale := p.factor.at(gamma) * 5.0 / 16 * y.Hs * y.Hs
	if swell {
		hi = swellCut
		scale /= p.kept.at(gamma)
	}
	logGamma := math.Log(gamma)
	for i := 1; i < len(momentPanels); i++ {
		from, to := math.Max(momentPanels[i-1], lo), math.Min(momentPanels[i], hi)
		if from >= to {
			continue
		}
		middle, half := math.Sqrt(from*to), math.Log(to/from)/2
		for _, node := range gauss6 {
			ratio := math.Exp(half * node.at)
			for _, x := range [...]float64{middle * ratio, middle / ratio} {
				e := scale * jonswapShape(x, logGamma) * x * node.weight * half
				f := x / y.Tp
				m[0] += e
				m[1] += e * f
				m[2] += e * f * f
			}
		}
	}
}

// momentPanels are the panels that the moments are integrated over, in peak
// frequencies: narrow about the peak, and with an end at it, where the width of
// the enhancement changes. In the logarithm six nodes a panel have the moments to
// 1e-6.
var momentPanels = [...]float64{0.5, 0.75, 0.88, 1, 1.15, 1.4, 2, 4.5, 20}

// gauss6 is the rule of Gauss and Legendre of six points, the positive half.
var gauss6 = [...]struct{ at, weight float64 }{
	{0.2386191860831969, 0.4679139345726910},
	{0.6612093864662645, 0.3607615730481386},
	{0.9324695142031521, 0.1713244923791704},
}

// spread is one standard deviation of the mean speed over an hour: the
// parameters moved one at a time, the closed form against simulation, and the
// chance of one hour. It leaves the bins as it found them.
func (p *Prepared) spread(bs *bins, sea *Sea, f field) float64 {
	g := sea.gravity()
	sum := 0.0
	other := *bs
	for i := range p.variants {
		v, waves := &p.variants[i], bs
		switch { // only mass and length change the push of the waves
		case i == heavier:
			other.rescale(&p.surge, v)
			waves = &other
		case i == shorter:
			other.weigh(v)
			waves = &other
		}
		d := v.settle(waves, v.share*sea.Wind, g, f.speed, math.Max(f.sigma, 0.1), 1e-3).speed - f.speed
		sum += d * d
	}
	// The closed form against simulation: 3 %, and up to 20 % where the water
	// is so shallow that waves of all periods run alike and stay in step.
	model := 0.03
	if y := sea.leading(); y.Hs > 0 {
		if k, _, ok := intrinsicWave(y.Tp, sea.Depth, 0, g); ok {
			model += 0.17 * math.Max(0, math.Min(1, (2-k*sea.Depth)/1.4))
		}
	}
	const memory, hour = 7.0, 3600.0
	sum += model * model * f.speed * f.speed
	sum += f.sigma * f.sigma * 2 * memory / hour
	return math.Sqrt(sum)
}

func (s *Sea) remarks(blocked float64) Remark {
	var r Remark
	for _, y := range [...]*System{&s.WindSea, &s.Swell} {
		if y.Hs == 0 {
			continue
		}
		switch cos := math.Cos(y.Off * (math.Pi / 180)); {
		case cos < pushCos:
			r |= FromAhead
		case cos < math.Sqrt2/2-1e-9:
			r |= FromAbeam
		}
		k, _, ok := intrinsicWave(y.Tp, s.Depth, 0, s.gravity())
		if ok {
			length := 2 * math.Pi / k
			if y.Hs/length > 0.05 {
				r |= SteepSea
			}
			if k*s.Depth < 1 || y.Hs > s.Depth/3 {
				r |= ShallowWater
			}
		}
	}
	if blocked > 1e-3 {
		r |= AgainstCurrent
	}
	if s.Wind < 0 {
		r |= HeadWind
	}
	return r
}
