package wind

import (
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/clock"
)

// Defaults of a [Hindcast].
const (
	// DefaultRelaxation is the time in which a sea turns after its wind. There is no
	// published number for the short seas meant here; a judgement.
	DefaultRelaxation = 2 * time.Hour
	// DefaultDecay is the time in which the height of an old sea falls to 1/e. The
	// median of 114 events at a deep buoy after the wind fell by half was a height of
	// 0.82, 0.65, 0.52 and 0.40 after 1.5, 3.5, 5.5 and 8.5 h.
	DefaultDecay = 8*time.Hour + 30*time.Minute
)

// stillSeaAge is the age c/(U cos Δ) up to which waves are counted as wind sea by
// the partitioning of wave models; see rejoin.
const stillSeaAge = 1.2

// longestStep is the longest sub-step of a hindcast in seconds.
const longestStep = 300.0

// A Hindcast steps a sea through a wind history at one place. The zero value needs a
// Fetch; everything else has a default. It holds no state and is safe for concurrent use.
//
// The step is a proposal, no published source: the growth law is published and carrying
// a sea into a new wind by its height is common practice, but no published worked example
// of the turning, the parting and the dying was found. In each
// sub-step of at most five minutes:
//
//  1. Turning. Δ is the angle from the SEA's direction to that of the new wind's waves.
//     The sea follows, dΔ/dt = −sin Δ / τ, exactly tan(Δ/2) = tan(Δ₀/2) e^(−t/τ) with τ
//     the Relaxation, or the time a group needs down the fetch if that is shorter; meanwhile the part of the energy that does not follow is left
//     behind as old sea, so that p = 1 − sin⁴Δ of the energy would have followed a turn
//     of Δ in the end: nearly all below 30°, 44 % at 60°, nothing at 90° and beyond. Both
//     depend on the time and the angle from the sea, not on how often the wind was
//     looked at, so that a veer of 60 degrees taken in one step or in ten gives the same
//     sea.
//  2. Growth. The sea's height gives its equivalent fetch in the new wind; a group
//     travels on from there at the group speed of the peak, to the geographic fetch or
//     full development at most. Its period is that of the equivalent fetch, or the one
//     it came with, relaxing, if that is longer.
//  3. Dying. What is above the height that wind and fetch can hold is old sea from then on.
//     The two together are as high as before.
//  4. The old sea is one partition that keeps its period. Its height falls by 1/e in the
//     Decay time, or in the time the last of it needs to run past, fetch / group speed,
//     if that is shorter. Where a wind within 45 degrees freshens behind it while it is
//     slower than 1.2 times that wind, it rejoins the wind sea within the hour.
//
// On a short fetch nothing of this shows once the fetch limits the sea. On an open coast
// the sea is longer and faster with a longer fetch, and swell arrives that no local wind
// record knows: RemarkOpenSea.
type Hindcast struct {
	// Law is the growth law; nil means [Bretschneider].
	Law Law

	// Fetch returns the fetch (m) up a wind from the given direction, +Inf for open sea.
	// Which fetch the law wants is told at [ArcFetch].
	Fetch func(from float64) float64

	// MeanDepth returns the mean depth (m) along the fetch at that time's tide; nil is
	// deep water. A constant depth is a function that returns it.
	MeanDepth func(at time.Time, from float64) float64

	// Restricted looks for the waves along the best fetch within 90 degrees of the wind,
	// as [GrowRestricted] does, to the whole degree of the wind. It belongs to [Smith].
	Restricted bool

	Relaxation time.Duration // zero means DefaultRelaxation
	Decay      time.Duration // zero means DefaultDecay
	Gravity    float64       // zero means [Gravity]
}

// A State is the sea at one instant of a hindcast. The zero value is flat water at the
// zero time.
type State struct {
	Time time.Time
	Wind Wind // the wind at that time
	Sea  Sea  // the wind sea
	Old  Sea  // what is left of earlier winds; Limit is LimitDecay, or LimitCalm for none

	// what the last step knew about Sea
	speed, depth, reached float64 // the wind and depth for which ln x = reached
	since                 float64 // seconds of known wind before Time
	started               bool
}

// Hs returns the significant height (m) of wind sea and old sea together, √(Hs² + Hs²).
func (s State) Hs() float64 { return math.Hypot(s.Sea.Hs, s.Old.Hs) }

// Tp returns the peak period (s) of the higher of wind sea and old sea.
func (s State) Tp() float64 {
	if s.Old.Hs > s.Sea.Hs {
		return s.Old.Tp
	}
	return s.Sea.Tp + 0*s.Old.Hs
}

// Known reports whether the sea is known at that instant.
func (s State) Known() bool { return s.Sea.Known() && s.Old.Known() }

// Run returns the sea at the given times (a proposal, no published source: see
// Hindcast), in their order, from flat water at the start
// of the series; with no times given, at the time of each sample. Between samples the
// wind is that of [Series.At]. Through a gap of the series nobody knows the sea: a time
// inside it gets a State that is not Known, and after it the sea starts again from flat
// water under RemarkSpinUp, which lasts until the wind has blown, in all since the start,
// as long as its sea needs.
//
// The error is ErrEmpty, or ErrOutside for a time outside the series. It panics if Fetch
// is nil.
func (h Hindcast) Run(series Series, times ...time.Time) ([]State, error) {
	return h.Resume(State{}, series, times...)
}

// Resume is [Hindcast.Run] (a proposal, no published source) from a known sea at
// the start of the series, such as the last State of an earlier run. Its Time does not matter.
func (h Hindcast) Resume(from State, series Series, times ...time.Time) ([]State, error) {
	st := h.Stepper()
	if series.Len() == 0 {
		return nil, ErrEmpty
	}
	if len(times) == 0 {
		times = make([]time.Time, series.Len())
		for i := range times {
			times[i] = series.samples[i].Time
		}
	}
	order := make([]int, len(times))
	for i, t := range times {
		if t.Before(series.Start()) || t.After(series.End()) {
			return nil, series.outside(t)
		}
		order[i] = i
	}
	sortByTime(order, times)

	out := make([]State, len(times))
	st.state = from
	if !from.started && from.Hs() > 0 {
		st.state.since = math.Inf(1) // a sea that somebody knows has no spin-up
	}
	st.state.Time, st.state.Wind = series.samples[0].Time, series.samples[0].Wind
	next := 1 // the sample the walk is heading for
	// The walk itself stays on the samples, so that asking for a time between them changes
	// nothing at them; a second one goes on from time to time inside an interval.
	var part Stepper
	inside := 0
	for _, i := range order {
		for next < series.Len() && !series.samples[next].Time.After(times[i]) {
			st.toSample(series, next)
			next++
		}
		switch {
		case st.state.Time.Equal(times[i]):
			out[i] = st.state
		case series.isGap(next):
			out[i] = State{Time: times[i], Wind: Wind{nan, nan, nan}, Sea: unknownSea(), Old: unknownSea()}
		default:
			if inside != next || part.state.Time.After(times[i]) {
				part, inside = *st, next // from the sample on
			}
			part.between(series.samples[next-1].Wind, series.samples[next].Wind,
				series.samples[next-1].Time, series.samples[next].Time, times[i])
			out[i] = part.state
			out[i].Sea.Remarks |= stability(series.samples[next].AirMinusWater())
		}
	}
	return out, nil
}

func sortByTime(order []int, times []time.Time) {
	for i := 1; i < len(order); i++ { // nearly always in order already
		for j := i; j > 0 && times[order[j]].Before(times[order[j-1]]); j-- {
			order[j], order[j-1] = order[j-1], order[j]
		}
	}
}

// A Stepper carries a sea from wind to wind: the inside of [Hindcast.Run], for those who
// have their own loop. It is not safe for concurrent use; make one each.
type Stepper struct {
	h      Hindcast
	law    Law
	table  *growthTable
	g      float64
	relax  float64
	decay  float64
	state  State
	around sectors // of a restricted wind, from each whole degree
}

// Stepper returns a Stepper with flat water at the zero time, for the steps of the proposal
// with no published source that [Hindcast] describes. It panics if Fetch is nil.
func (h Hindcast) Stepper() *Stepper {
	if h.Fetch == nil {
		panic("wind: Hindcast without a Fetch")
	}
	if h.Law == nil {
		h.Law = Bretschneider
	}
	s := &Stepper{h: h, law: h.Law, table: tableFor(h.Law), g: h.Gravity, relax: h.Relaxation.Seconds(), decay: h.Decay.Seconds()}
	if s.g == 0 {
		s.g = Gravity
	}
	if h.Relaxation <= 0 {
		s.relax = DefaultRelaxation.Seconds()
	}
	if h.Decay <= 0 {
		s.decay = DefaultDecay.Seconds()
	}
	if h.Restricted {
		s.around = newSectors(h.Fetch, 0, 360)
	}
	return s
}

// State returns the sea as it stands.
func (s *Stepper) State() State { return s.state }

// Set makes the sea what state says.
func (s *Stepper) Set(state State) { s.state = state }

// Steady carries the sea through the given seconds of one wind, in equal sub-steps of at
// most five minutes. The sea is not Known after a wind, a fetch, a depth or seconds that
// are not.
func (s *Stepper) Steady(w Wind, seconds float64) {
	if !(seconds >= 0 && seconds <= math.MaxInt32) {
		s.lose()
		return
	}
	n := int(math.Ceil(seconds / longestStep))
	start := s.state.Time
	for i := range n {
		at := s.state.Time
		if t, err := clock.After(start, seconds*float64(i+1)/float64(n)); err == nil {
			at = t
		}
		s.step(w, seconds/float64(n), at)
	}
}

func (s *Stepper) lose() {
	s.state.Sea, s.state.Old = unknownSea(), unknownSea()
	s.state.started = true
}

// toSample walks from sample i-1 to sample i.
func (s *Stepper) toSample(series Series, i int) {
	a, b := series.samples[i-1], series.samples[i]
	if series.isGap(i) {
		s.state = State{Time: b.Time, Wind: b.Wind, started: true}
		return
	}
	s.between(a.Wind, b.Wind, a.Time, b.Time, b.Time)
	s.state.Wind = b.Wind
	r := stability(b.AirMinusWater())
	s.state.Sea.Remarks |= r
}

// between walks from the State's time to the time to, in a wind that goes from a at ta
// to b at tb.
func (s *Stepper) between(a, b Wind, ta, tb, to time.Time) {
	span := clock.Seconds(ta, tb)
	from, seconds := clock.Seconds(ta, s.state.Time), clock.Seconds(s.state.Time, to)
	n := int(math.Ceil(seconds / longestStep))
	steady := a.Speed == b.Speed && (a.From == b.From || a.Speed == 0)
	dt := seconds / float64(n)
	for i := range n {
		w := a
		if !steady {
			w = Interpolate(a, b, math.Min(1, (from+dt*(float64(i)+0.5))/span))
		}
		at := to
		if i < n-1 {
			at = s.state.Time.Add(time.Duration(math.Round(dt * 1e9)))
		}
		s.step(w, dt, at)
	}
	if n > 0 && !steady {
		s.state.Wind = Interpolate(a, b, math.Min(1, (from+seconds)/span))
	}
}

// place returns what the sea of a wind from the given direction and of the given speed grows on: where its waves
// come from, the fetch, the depth and the part of the wind along the waves.
func (s *Stepper) place(from, speed float64, at time.Time) (waves, fetch, depth, along float64) {
	waves, along = from, 1
	if s.h.Restricted {
		i := math.Round(from)
		if !(math.Abs(i) <= math.MaxInt32) {
			return nan, nan, nan, nan
		}
		d := ((int(i) % 360) + 360) % 360
		at, off := s.around.best(d, fullFetch(speed, s.g))
		fetch, waves = s.around.length[at], angle.Wrap(float64(d)+off)
		along = math.Cos(angle.Radians(angle.Diff(from, waves)))
	} else {
		fetch = s.h.Fetch(from)
	}
	depth = math.Inf(1)
	if s.h.MeanDepth != nil {
		depth = s.h.MeanDepth(at, waves)
	}
	return waves, fetch, depth, along
}

// follows is the part of the energy of a sea that follows a turn of the wind of delta
// degrees in the end: 1 − sin⁴Δ, nothing from 90° on.
func follows(cosine float64) float64 {
	if cosine <= 0 {
		return 0
	}
	s2 := 1 - cosine*cosine
	return 1 - s2*s2
}

// step carries the sea through dt seconds of one wind.
func (s *Stepper) step(w Wind, dt float64, at time.Time) {
	p := &s.state
	p.Time, p.Wind, p.started = at, w, true
	p.since += dt
	if !w.known() || !p.Known() || !(s.g > 0 && finite(s.g)) {
		s.lose()
		return
	}
	s.fade(dt)
	if w.Speed == 0 { // all of it is old sea now
		s.leave(p.Sea.Hs * p.Sea.Hs)
		p.Sea = Sea{From: p.Sea.From, Limit: LimitCalm}
		p.speed = 0
		return
	}
	waves, fetch, depth, along := s.place(w.From, w.Speed, at)
	scale := s.law.Scale(w.Speed) * along
	if !(fetch >= 0) || !(depth > 0) || !(scale > 0) {
		s.lose()
		return
	}
	s.turn(waves, fetch, dt)
	s.grow(w, scale, fetch, depth, dt)
}

// turn brings the wind sea toward the direction of the new waves and leaves the rest as
// old sea.
func (s *Stepper) turn(waves, fetch, dt float64) {
	sea := &s.state.Sea
	if sea.Hs == 0 {
		sea.From = waves
		return
	}
	delta := angle.Diff(sea.From, waves)
	if delta == 0 {
		return
	}
	before := follows(math.Cos(angle.Radians(delta)))
	if before == 0 { // the wind has gone round: all of it is old sea
		s.leave(sea.Hs * sea.Hs)
		*sea = Sea{From: waves}
		s.state.speed = 0
		return
	}
	// A new sea is there when it has run down the fetch, and the old one gone.
	relax := math.Min(s.relax, fetch/(s.g*sea.Tp/(4*math.Pi)))
	ease := math.Exp(-dt / relax)
	left := angle.Degrees(2 * math.Atan(math.Tan(angle.Radians(delta)/2)*ease))
	after := follows(math.Cos(angle.Radians(left)))
	to := angle.Wrap(waves - left)
	if kept := before / after; kept < 1 {
		sea.From = angle.Wrap(waves - (delta+left)/2) // it is left all along the way
		s.leave(sea.Hs * sea.Hs * (1 - kept))
		sea.Hs *= math.Sqrt(kept)
		s.state.speed = 0
	}
	sea.From = to
}

// leave moves energy (as Hs²) of the wind sea's kind to the old sea, which keeps one
// period and one direction: the means by energy.
func (s *Stepper) leave(energy float64) {
	s.state.Old = together(s.state.Old, s.state.Sea, energy)
}

// together adds energy of b's period and direction to a.
func together(a, b Sea, energy float64) Sea {
	if !(energy > 0) {
		if math.IsNaN(energy) {
			a.Hs = energy
		}
		return a
	}
	e := a.Hs * a.Hs
	if e == 0 {
		return Sea{Hs: math.Sqrt(energy), Tp: b.Tp, From: b.From, Limit: LimitDecay}
	}
	f := energy / (e + energy)
	a.Tp += (b.Tp - a.Tp) * f
	sa, ca := sincos(a.From)
	sb, cb := sincos(b.From)
	x, y := ca*(1-f)+cb*f, sa*(1-f)+sb*f
	if x != 0 || y != 0 { // exactly opposite halves keep a's direction
		a.From = angle.Wrap(angle.Degrees(math.Atan2(y, x)))
	}
	a.Hs = math.Sqrt(e + energy)
	return a
}

// fade takes dt seconds off the old sea.
func (s *Stepper) fade(dt float64) {
	old := &s.state.Old
	if old.Hs == 0 {
		old.Limit = LimitCalm
		return
	}
	life := s.decay
	if run := s.h.Fetch(old.From) / (s.g * old.Tp / (4 * math.Pi)); !(run >= 0) { // no fetch, no answer
		life = math.NaN()
	} else if run < life {
		life = run
	}
	old.Hs *= math.Exp(-dt / life)
	if old.Hs < 1e-3 { // a millimetre: gone
		*old = Sea{Limit: LimitCalm}
	}
}

// grow lets the wind feed the sea, or lets it die down to what the wind holds.
func (s *Stepper) grow(w Wind, scale, fetch, depth, dt float64) {
	p := &s.state
	sea := &p.Sea
	unit, second := scale*scale/s.g, scale/s.g
	lim := s.law.Limits(w.Speed)
	c := s.table.at(depth / unit)

	// The most that this wind holds.
	most, developed := math.Min(math.Log(fetch/unit), s.table.top()), false
	lnH, lnT := math.Log(lim.Height), math.Log(lim.Period)
	if c.value(heightOf, most) > lnH || c.value(periodOf, most) > lnT {
		full := math.Min(c.inverse(heightOf, lnH, most), c.inverse(periodOf, lnT, most))
		if full < most {
			most, developed = full, true
		}
	}
	held := math.Exp(c.value(heightOf, most)) * unit
	heldPeriod := math.Exp(c.value(periodOf, most)) * second
	if fetch == 0 {
		held, heldPeriod = 0, 0
	}

	x := most
	if sea.Hs <= held {
		if sea.Hs < held {
			s.rejoin(w, held, dt)
		}
		// The equivalent fetch of the sea: kept from the last step while wind and depth
		// stay the same, so that a saturated height need not give it back.
		x = p.reached
		if p.speed != scale || p.depth != depth {
			x = math.Inf(-1)
			if sea.Hs > 0 {
				x = c.inverse(heightOf, math.Log(sea.Hs/unit), p.reached)
			}
		}
		elapsed := dt / second
		if !math.IsInf(x, -1) {
			elapsed += math.Exp(c.value(timeOf, x))
		}
		x = math.Min(most, c.inverse(timeOf, math.Log(elapsed), x))
	} else if sea.Hs > held {
		s.leave(sea.Hs*sea.Hs - held*held)
		sea.Tp = heldPeriod
	}
	came := sea.Tp
	h := c.value(heightOf, x)
	sea.Hs, sea.Tp = math.Exp(h)*unit, math.Exp(c.value(periodOf, x))*second
	if held == 0 {
		*sea = Sea{From: sea.From, Limit: LimitCalm}
		p.speed = 0
		return
	}
	if came > sea.Tp { // it came with a longer period: that relaxes
		sea.Tp += (came - sea.Tp) * math.Exp(-dt/s.relax)
	}
	sea.Limit, sea.Fetch = LimitDuration, math.Exp(x)*unit
	if x >= most {
		sea.Limit = s.settle(lnH, h, x, depth, developed)
		if sea.Limit != LimitDeveloped {
			sea.Fetch = fetch
		}
	}
	p.speed, p.depth, p.reached = scale, depth, x
	s.remark(&c, most, unit, fetch, depth, lim, heldPeriod)
}

// settle returns what limits a sea that time does not; lnH is the height of full
// development, h that of the sea, both as logarithms.
func (s *Stepper) settle(lnH, h, x, depth float64, developed bool) Limit {
	if developed || h > lnH+math.Log(0.99) {
		return LimitDeveloped
	}
	if !math.IsInf(depth, 1) {
		deep := s.table.at(1e9 * depth)
		if math.Min(deep.value(heightOf, x), lnH)+math.Log(0.9) > h {
			return LimitDepth
		}
	}
	return LimitFetch
}

func (s *Stepper) remark(c *curve, most, unit, fetch, depth float64, lim Limits, heldPeriod float64) {
	sea := &s.state.Sea
	var r Remark
	x := sea.Fetch / unit
	if x < lim.Shortest {
		r |= RemarkShortFetch
	}
	if x > lim.Longest && sea.Hs < 0.99*lim.Height*unit {
		r |= RemarkLongFetch
	}
	if _, deep := s.law.(interface{ deepOnly() }); deep && 4*math.Pi*depth < s.g*sea.Tp*sea.Tp { // under half the deep-water length
		r |= RemarkNoDepth
	}
	if sea.Hs > 0.6*depth {
		r |= RemarkBreaking
	}
	if math.IsInf(fetch, 1) {
		r |= RemarkOpenSea
	}
	// Wind from before the record may still show in the sea: in its growth, and in an old
	// sea that has not yet run past.
	growing := math.Exp(c.value(timeOf, most)) * math.Sqrt(unit/s.g)
	passing := math.Min(s.decay, fetch/(s.g*heldPeriod/(4*math.Pi)))
	if s.state.since < math.Max(growing, passing) {
		r |= RemarkSpinUp
	}
	sea.Remarks = r
}

// rejoin lets old sea that the freshening wind catches up with become wind sea again, as
// wave models count it: while its crests are slower than 1.2 times the wind along them,
// and within 45 degrees of the wind, so that a veered sea stays the old sea it is. Ramps
// (to 1/1.2 of that wind, and to 30 degrees) keep it smooth.
func (s *Stepper) rejoin(w Wind, held, dt float64) {
	p := &s.state
	old := &p.Old
	if old.Hs == 0 {
		return
	}
	off := math.Abs(angle.Diff(old.From, w.From))
	along := math.Cos(angle.Radians(off))
	speed := s.g * old.Tp / (2 * math.Pi)
	ramp := clip((stillSeaAge*w.Speed*along/speed-1)/0.2) * clip((45-off)/15)
	if ramp == 0 {
		return
	}
	part := 1 - math.Exp(-ramp*dt/1800) // in half an hour or so
	e := math.Min(part*old.Hs*old.Hs, held*held-p.Sea.Hs*p.Sea.Hs)
	p.Sea = together(p.Sea, *old, e)
	old.Hs = math.Sqrt(math.Max(0, old.Hs*old.Hs-e))
	p.speed = 0
}

// clip holds v between 0 and 1; NaN stays NaN.
func clip(v float64) float64 { return math.Max(0, math.Min(1, v)) }
