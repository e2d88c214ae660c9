package wave

import (
	"math"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/dispersion"
)

// A wave on a current keeps the period that somebody on the shore counts, 2π/ω. The water itself feels σ = ω - kU, where U
// is the current along the wave, and in the water the dispersion relation holds:
//
//	(ω - kU)² = g k tanh kh
//
// On a following current (U > 0) there is one root, longer than in still water. Against the wave (U < 0) it is shorter, and
// a second, much shorter root belongs to waves whose energy is swept back. The two meet where the energy stands still,
// cg = -U: beyond that current no wave of the period gets through. It is blocked.
//
// The unknown is s = σ/ω. The still-water relation gives the wavenumber of a wave of the frequency sω, from the table and
// without an exponential, and what is left is
//
//	F(s) = s - 1 + kU/ω = 0,  dF/ds = 1 + U/cg
//
// F rises and bends one way (k is convex in σ), so that Newton's method from s = 1 climbs, or falls, to the wanted root without
// overshooting; away from blocking it starts at a guess, to save a step or two. In deep water the speed through the water is c/c0 = (1 + √(1 + 4U/c0))/2, the length goes with its square, and
// blocking is at U = -c0/4, 0.390 T m/s or 0.758 T kn, where the length is a quarter of what it was.
//
// Energy is not conserved, the current does work on the wave; wave action is: H²(cg + U)/σ stays the same along the way
// for a current that changes in its own direction and whose stream is fed from below, so that its width does not change.

// A CurrentState says what a current does to a wave.
type CurrentState int

// The states.
const (
	NoCurrentState CurrentState = iota // not known: an argument was not a number
	Runs                               // the wave gets through
	Blocked                            // the current is as fast as the energy or faster: the wave does not get through
)

// String returns the word for the state.
func (s CurrentState) String() string {
	switch s {
	case Runs:
		return "runs"
	case Blocked:
		return "blocked"
	}
	return "unknown"
}

// A CurrentWave is a regular wave on a current. Where it is blocked, or not known, all that describes the wave is NaN.
type CurrentWave struct {
	State               CurrentState
	Water               Water
	Period              float64 // s, over the ground: what a fixed buoy counts
	Depth               float64 // m
	Along               float64 // m/s, the current along the wave: positive with it
	IntrinsicPeriod     float64 // s, in the water: what a drifting board counts
	Wavenumber          float64 // rad/m
	Length              float64 // m
	PhaseSpeed          float64 // m/s, over the ground
	GroupSpeed          float64 // m/s, over the ground
	IntrinsicPhaseSpeed float64 // m/s, through the water
	IntrinsicGroupSpeed float64 // m/s, through the water
	HeightRatio         float64 // height over that in still water of the same depth, by wave action
	SteepnessRatio      float64 // steepness H/L over that in still water of the same depth
}

// OnCurrent returns the wave of the period in seconds, as counted from the shore, over the depth in metres, where a current
// of along m/s runs with it (negative: against it). Use the component of the current in the direction the wave travels,
// AlongWave, averaged over the depth that the wave feels: about L/4π, the surface current for short waves.
//
// The heights are those of wave action, without breaking; CurrentWave.Height applies the limit. Compared with still water
// of the same depth; shoaling comes on top.
//
// Special cases are:
//
//	OnCurrent has State Blocked, and NaN for the wave, if along is StoppingCurrent or less
//	OnCurrent has State NoCurrentState and NaN throughout if the period or depth is zero, negative or NaN, the period is
//	infinite, or along is infinite or NaN
//
// Source: [PeregrineJonsson1983]; [LonguetHigginsStewart1961] for the heights; [TR-02-22] Eq. 23 and 24 for blocking.
func (w Water) OnCurrent(period, depth, along float64) CurrentWave {
	nan := math.NaN()
	r := CurrentWave{Water: w, Period: period, Depth: depth, Along: along, IntrinsicPeriod: nan, Wavenumber: nan, Length: nan,
		PhaseSpeed: nan, GroupSpeed: nan, IntrinsicPhaseSpeed: nan, IntrinsicGroupSpeed: nan, HeightRatio: nan, SteepnessRatio: nan}
	still := w.Solve(period, depth)
	if math.IsNaN(still.Wavenumber) || !finite(along) {
		return r
	}
	// Whatever the depth, waves are stopped by no less than 0.416 of the group speed in still water: a weaker current needs no
	// closer look.
	if along < -0.4*still.GroupSpeed && along <= w.StoppingCurrent(period, depth) {
		r.State = Blocked
		return r
	}
	omega := still.AngularFrequency
	k, n := w.dopplerRoot(still, along)
	sigma := omega - k*along
	r.State = Runs
	r.IntrinsicPeriod = 2 * math.Pi / sigma
	r.Wavenumber = k
	r.Length = 2 * math.Pi / k
	r.IntrinsicPhaseSpeed = sigma / k
	r.IntrinsicGroupSpeed = n * sigma / k
	r.PhaseSpeed = omega / k
	r.GroupSpeed = r.IntrinsicGroupSpeed + along
	r.HeightRatio = math.Sqrt(still.GroupSpeed / r.GroupSpeed * (sigma / omega))
	r.SteepnessRatio = r.HeightRatio * still.Length / r.Length
	if !(r.GroupSpeed > 0) { // within rounding of blocking
		return CurrentWave{State: Blocked, Water: w, Period: period, Depth: depth, Along: along, IntrinsicPeriod: nan, Wavenumber: nan, Length: nan,
			PhaseSpeed: nan, GroupSpeed: nan, IntrinsicPhaseSpeed: nan, IntrinsicGroupSpeed: nan, HeightRatio: nan, SteepnessRatio: nan}
	}
	return r
}

// dopplerRoot returns the first root of σ(k) + kU = ω, and n there.
func (w Water) dopplerRoot(still Wave, along float64) (k, n float64) {
	g, h, omega := w.g(), still.Depth, still.AngularFrequency
	y := omega * omega / g * h
	if !(y < 22) { // deep: the closed form, unless a following current makes the wave long enough to feel the bottom
		c := still.PhaseSpeed * (1 + math.Sqrt(1+4*along/still.PhaseSpeed)) / 2
		if k = g / (c * c); !(k*h < 22) {
			return k, 0.5
		}
	}
	if y < 1e-17 { // shallow: no dispersion
		return omega / (still.PhaseSpeed + along), 1
	}
	u := along / (omega * h) // kU/ω = ux
	s, x := 1.0, 0.0
	if v := along / still.PhaseSpeed; along > -0.28*still.GroupSpeed { // the deep and the shallow root, by how deep it is
		w := 2 * (1 - still.SpeedRatio)
		s = w*2/(1+math.Sqrt(math.Max(0, 1+4*v))) + (1-w)/(1+v)
	}
	last := math.Inf(1)
	for range 100 {
		x, n = dispersion.SolveRatio(s * s * y)
		slope := 1 + u*x/(n*s) // d ln x/d ln s = 1/n
		step := (1 - s - u*x) / slope
		if !(math.Abs(step) > 2e-16*s) || !(math.Abs(step) < last) || !(slope > 0) {
			break // within rounding, or no longer falling: rounding
		}
		last = math.Abs(step)
		s += step
	}
	return x / h, n
}

// StoppingCurrent returns the current along the wave in m/s, a negative number, that blocks waves of the period in seconds,
// as counted from the shore, over the depth in metres: where the group speed through the water equals the current against
// it. In deep water it is a quarter of the phase speed in still water, gT/8π = 0.390 T m/s; less in shallower water. Good to
// 1e-13, and 1e-9 for waves of minutes and more.
//
// Special cases are:
//
//	StoppingCurrent(period, depth) = NaN if either is zero, negative or NaN, or the period is infinite
//
// Source: [TR-02-22] Eq. 23 and 24, p. 19, for deep water.
func (w Water) StoppingCurrent(period, depth float64) float64 {
	if !(positive(period) && depth > 0) {
		return math.NaN()
	}
	g := w.g()
	omega := 2 * math.Pi / period
	y := omega * omega / g * depth
	if !(y < 6) { // deep to the last bit, or not a number: the blocked wave has kh = 4y
		return -g / omega / 4
	}
	// At blocking ω = σ + kU = σ(1 - n). With s = σ/ω again, s(1 - n) = 1, where s is 2 in deep water and more elsewhere. It
	// grows as s³ at first and as s/2 in the end, which makes two lower bounds of the root; Newton's method starts at the larger,
	// the first of them improved by a fit in the cube root of y.
	// The derivative is algebraic in x and y, since tanh x = y/x: with m = n - 1/2 = x/sinh 2x,
	//
	//	dn/d ln x = m (1 - 2x coth 2x) = m (1 - (x² + y²)/y)
	s := math.Cbrt(3 / y)
	fit := 1.44225 / s
	s = math.Max(2, s*(1+fit*(0.094+fit*(0.06+fit*fit*0.13))))
	last := math.Inf(1)
	var x, n float64
	for range 100 {
		z := s * s * y
		x, n = dispersion.SolveRatio(z)
		slope := 1 - n + (n-0.5)*((x*x+z*z)/z-1)/n
		step := (1 - s*(1-n)) / slope
		if !(math.Abs(step) > 1e-15*s) || !(math.Abs(step) < last) {
			break
		}
		last = math.Abs(step)
		s += step
	}
	return -n * s * omega * depth / x
}

// OnCurrent returns the wave on a current; see Water.OnCurrent, whose defaults it uses.
func OnCurrent(period, depth, along float64) CurrentWave {
	return Water{}.OnCurrent(period, depth, along)
}

// StoppingCurrent returns the current in m/s that blocks a wave; see Water.StoppingCurrent, whose defaults it uses.
func StoppingCurrent(period, depth float64) float64 { return Water{}.StoppingCurrent(period, depth) }

// Stopping returns the current along the wave in m/s, a negative number, that blocks waves of this period over this depth: see
// Water.StoppingCurrent.
//
// Special cases are those of Water.StoppingCurrent.
//
// Source: [TR-02-22] Eq. 23 and 24, p. 19, for deep water.
func (v CurrentWave) Stopping() float64 { return v.Water.StoppingCurrent(v.Period, v.Depth) }

// AlongWave returns the component of a current in the direction a wave travels, in m/s: positive with the wave. The rate is
// in m/s and setFromWave is the angle in degrees between the directions in which the two go, of either sign.
//
// Special cases are:
//
//	AlongWave(rate, setFromWave) = NaN if the rate is negative, infinite or NaN, or the angle is infinite or NaN
//
// Source: a definition.
func AlongWave(rate, setFromWave float64) float64 {
	if !(rate >= 0 && finite(rate)) || !finite(setFromWave) {
		return math.NaN()
	}
	return rate * math.Cos(angle.Radians(setFromWave))
}

// Height returns the height in metres on the current of a wave whose height in still water of the same depth is given, and
// whether breaking limits it: the wave-action height, but at most what the steepness lets stand, BreakingHeight. Waves
// break before they are blocked; a blocked wave has no height.
//
// Special cases are:
//
//	Height(stillHeight) = NaN, false if the wave is blocked or unknown, or the height is negative, infinite or NaN
//
// Source: [LonguetHigginsStewart1961]; [Miche1944] for the limit.
func (v CurrentWave) Height(stillHeight float64) (height float64, breaks bool) {
	h := stillHeight * v.HeightRatio
	if !(stillHeight >= 0 && finite(stillHeight)) || math.IsNaN(h) {
		return math.NaN(), false
	}
	if limit := v.BreakingHeight(); h > limit {
		return limit, true
	}
	return h, false
}

// BreakingHeight returns the height in metres at which the wave breaks on the current by its steepness, 0.142 L tanh kh,
// with the length it has on the current.
//
// Special cases are:
//
//	BreakingHeight = NaN for a wave that is blocked or unknown
//
// Source: [Miche1944]; [TR-02-22] uses it on currents.
func (v CurrentWave) BreakingHeight() float64 {
	return MicheHeight(v.Length, v.Depth)
}

// A Crossing is a regular wave that has come obliquely from still water into a stream with straight edges.
type Crossing struct {
	Angle           float64 // degrees from the normal to the stream: the sign of the angle it came with
	Length          float64 // m
	IntrinsicPeriod float64 // s, in the water of the stream
	HeightRatio     float64 // height over that before the stream
}

// CrossStream returns what becomes of a wave of the period in seconds over the depth in metres that meets a stream of
// straight edges, at the angle in degrees between its direction of travel and the normal to the stream; the angle is
// positive where the wave leans downstream. The rate is in m/s and the depth is the same on both sides. The number of crests
// along the edge is the same on both sides:
//
//	k sin a = k0 sin a0,  σ = ω - U k sin a,  H² cg cos a/σ constant
//
// A wave leaning downstream grows longer and is turned along the stream; beyond a limit it is thrown back. A wave leaning
// upstream grows shorter, higher and is turned towards the normal.
//
// Special cases are:
//
//	CrossStream is NaN throughout if the stream throws the wave back (sin a would reach 1)
//	CrossStream is NaN throughout if the period or depth is zero, negative or NaN, the period is infinite, the angle is not
//	between -90 and 90, or the rate is negative, infinite or NaN
//
// Source: [LonguetHigginsStewart1961], in deep water; [PeregrineJonsson1983].
func (w Water) CrossStream(period, depth, rate, angleIn float64) Crossing {
	nan := math.NaN()
	none := Crossing{nan, nan, nan, nan}
	v := w.Solve(period, depth)
	if math.IsNaN(v.Wavenumber) || !(math.Abs(angleIn) < 90) || !(rate >= 0 && finite(rate)) {
		return none
	}
	in := angle.Radians(angleIn)
	along := v.Wavenumber * math.Sin(in)
	sigma := v.AngularFrequency - rate*along
	if !(sigma > 0) {
		return none
	}
	s := w.Solve(2*math.Pi/sigma, depth)
	sin := along / s.Wavenumber
	if !(math.Abs(sin) < 1) {
		return none
	}
	out := math.Asin(sin)
	return Crossing{
		Angle:           angle.Degrees(out),
		Length:          s.Length,
		IntrinsicPeriod: s.Period,
		HeightRatio:     math.Sqrt(v.GroupSpeed * math.Cos(in) * sigma / (s.GroupSpeed * math.Cos(out) * v.AngularFrequency)),
	}
}

// CrossStream returns what becomes of a wave in a stream; see Water.CrossStream, whose defaults it uses.
func CrossStream(period, depth, rate, angleIn float64) Crossing {
	return Water{}.CrossStream(period, depth, rate, angleIn)
}
