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
// In x = kh, f(x) = σ(x) + xU/h - ω is concave, and its first root is the one wanted, so that Newton's method from its left
// climbs to it without overshooting. In deep water the speed through the water is c/c0 = (1 + √(1 + 4U/c0))/2, the length goes
// with its square, and blocking is at U = -c0/4,
// 0.390 T m/s or 0.758 T kn, where the length is a quarter of what it was.
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
	Stopping            float64 // m/s, the current (negative) that blocks this period over this depth
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
//	OnCurrent has State Blocked, and NaN for the wave, if along is Stopping or less
//	OnCurrent has State NoCurrentState and NaN throughout if the period or depth is zero, negative or NaN, the period is
//	infinite, or along is infinite or NaN
//
// Source: [PeregrineJonsson1983] sec. 2; [LonguetHigginsStewart1961] for the heights; [TR-02-22] Eq. 23 and 24 for blocking.
func (w Water) OnCurrent(period, depth, along float64) CurrentWave {
	nan := math.NaN()
	r := CurrentWave{Water: w, Period: period, Depth: depth, Along: along, IntrinsicPeriod: nan, Wavenumber: nan, Length: nan,
		PhaseSpeed: nan, GroupSpeed: nan, IntrinsicPhaseSpeed: nan, IntrinsicGroupSpeed: nan, HeightRatio: nan, SteepnessRatio: nan, Stopping: nan}
	still := w.Solve(period, depth)
	if math.IsNaN(still.Wavenumber) || !finite(along) {
		return r
	}
	r.Stopping = w.StoppingCurrent(period, depth)
	if along <= r.Stopping {
		r.State = Blocked
		return r
	}
	omega := still.AngularFrequency
	var k, n float64
	if still.SpeedRatio == 0.5 && (math.IsInf(depth, 1) || still.kh() > 100 && along < 0) {
		c := still.PhaseSpeed * (1 + math.Sqrt(1+4*along/still.PhaseSpeed)) / 2
		k, n = w.g()/(c*c), 0.5
	} else {
		k, n = w.dopplerRoot(still, along)
	}
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
			PhaseSpeed: nan, GroupSpeed: nan, IntrinsicPhaseSpeed: nan, IntrinsicGroupSpeed: nan, HeightRatio: nan, SteepnessRatio: nan, Stopping: r.Stopping}
	}
	return r
}

// dopplerRoot returns the first root of σ(k) + kU = ω over a finite depth, and n there.
func (w Water) dopplerRoot(still Wave, along float64) (k, n float64) {
	h, omega := still.Depth, still.AngularFrequency
	unit := math.Sqrt(w.g() / h) // σ = unit √(x tanh x)
	x := still.kh()
	if along > 0 { // from the still root, right of the wanted one, a first step lands left of it
		x *= still.GroupSpeed / (still.GroupSpeed + along)
	}
	last := math.Inf(1)
	for range 100 {
		y, ratio := dispersion.Forward(x)
		sigma := unit * math.Sqrt(y)
		n = ratio
		slope := n*sigma/x + along/h // dσ/dx = nσ/x
		step := (omega - sigma - x*along/h) / slope
		if !(math.Abs(step) > 4e-16*x) || !(math.Abs(step) < last) || !(slope > 0) {
			break // within rounding, or no longer falling: rounding
		}
		last = math.Abs(step)
		x += step
	}
	_, n = dispersion.Forward(x)
	return x / h, n
}

// StoppingCurrent returns the current along the wave in m/s, a negative number, that blocks waves of the period in seconds,
// as counted from the shore, over the depth in metres: where the group speed through the water equals the current against
// it. In deep water it is a quarter of the phase speed in still water, gT/8π = 0.390 T m/s; less in shallower water.
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
	if !(y < 1e6) { // deep, or not a number
		return -g / omega / 4
	}
	// At blocking ω = σ + kU = σ(1 - n). With x = kh, F(x) = √(x tanh x) (1 - n) = √y. ln F is concave in ln x, its slope falling
	// from 3 (F = x³/3) to 1/2 (F = √x/2), both of which bound F from above: the larger of their roots is left of the wanted
	// one, and Newton's method climbs from there.
	x := math.Max(4*y, math.Cbrt(3*math.Sqrt(y)))
	target := math.Log(y) / 2
	last := math.Inf(1)
	var t, n float64
	for range 100 {
		t = math.Tanh(x)
		var rest, slope float64 // 1 - n, and the slope of its logarithm
		n, rest, slope = groupDefect(x)
		step := (target - math.Log(x*t)/2 - math.Log(rest)) / (n + slope)
		if !(math.Abs(step) > 1e-15) || !(math.Abs(step) < last) {
			break
		}
		last = math.Abs(step)
		x *= math.Exp(step)
	}
	return -n * math.Sqrt(g*depth*(t/x))
}

// groupDefect returns n = 1/2 + x/sinh 2x, 1 - n without loss of digits, and d ln(1 - n)/d ln x.
func groupDefect(x float64) (n, rest, slope float64) {
	z := 2 * x
	if z < 0.5 { // z/sinh z = 1 - z²/6 + 7z⁴/360 - ...
		q := z * z
		rest = q / 2 * (1.0/6 - q*(7.0/360-q*(31.0/15120-q*(127.0/604800-q*(73.0/3421440-q*(1414477.0/653837184000))))))
		return 1 - rest, rest, 2 - q*(7.0/30)
	}
	if z > 40 {
		return 0.5, 0.5, 0
	}
	s := math.Sinh(z)
	rest = (1 - z/s) / 2
	return 1 - rest, rest, z / s * (z/math.Tanh(z) - 1) / (2 * rest)
}

// OnCurrent returns the wave on a current; see Water.OnCurrent, whose defaults it uses.
func OnCurrent(period, depth, along float64) CurrentWave {
	return Water{}.OnCurrent(period, depth, along)
}

// StoppingCurrent returns the current in m/s that blocks a wave; see Water.StoppingCurrent, whose defaults it uses.
func StoppingCurrent(period, depth float64) float64 { return Water{}.StoppingCurrent(period, depth) }

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
// Source: [LonguetHigginsStewart1961] sec. 5, in deep water; [PeregrineJonsson1983].
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
