package ride

import (
	"fmt"
	"math"
)

// Bump is one wave, taken as regular, with all that acts on a board on it.
type Bump struct {
	Height  float64 // m, crest to trough
	Period  float64 // s, as a fixed observer times it
	Depth   float64 // m; math.Inf(1) for deep water
	Current float64 // m/s along the direction the wave travels
	Off     float64 // degrees, heading of the board off that direction, either way
	Wind    float64 // m/s at 10 m height along the heading, positive from astern
	Gravity float64 // m/s²; 0 for 9.80665
}

// Verdict says what a paddler can do with a bump, from impossible to easy.
type Verdict string

// The verdicts, in the order they are tried.
const (
	Blocked        Verdict = "blocked"         // no such wave against this current
	TooShort       Verdict = "too short"       // the board bridges it: no push
	BoardFaster    Verdict = "board faster"    // a sprint outruns it: it cannot be ridden, only overtaken
	Breaking       Verdict = "breaking"        // higher than a wave of this length can be
	Inevitable     Verdict = "inevitable"      // takes the board along at cruise, whatever the timing
	CatchCruising  Verdict = "catch cruising"  // caught without a sprint
	CatchSprinting Verdict = "catch sprinting" // caught by a sprint made before it arrives
	HoldOnly       Verdict = "hold, not catch" // would carry a board already at its speed
	TooLow         Verdict = "too low"         // passes; a higher wave of this period would carry
	TooFast        Verdict = "too fast"        // passes; no unbroken wave of this period would carry
)

const (
	breakingSteep  = 0.142   // limiting steepness H/λ in deep water, times tanh kh elsewhere
	tooFastSteep   = 0.10    // steepness no bump is expected to reach
	maximumOff     = 75.0    // degrees
	defaultGravity = 9.80665 // m/s²
)

// Appraisal is what one paddler can do with one bump.
//
// Heights are those a wave of the same period needs. Proposal, no published
// source: thresholds from the surge equation, uncertain by about a quarter
// through the resistance.
type Appraisal struct {
	Verdict  Verdict
	Standing string // Standing, the constant: a proposal

	Celerity   float64 // m/s, wave speed through the water along the heading, c/cos(off)
	Length     float64 // m, wave length along the heading
	Period     float64 // s, intrinsic: in the water frame
	OverGround float64 // m/s, wave speed over the ground along the direction it travels
	Push       float64 // N, greatest push of this wave
	PushPerM   float64 // N/m, the same for a metre of height

	Glide            float64 // m, height that carries without paddling
	Hold             float64 // m, height that can be held sprinting
	Catch            float64 // m, height caught from the trough by a sprint under way, within a minute
	CatchFromCruise  float64 // m, caught by a sprint begun at cruising speed in the trough
	CatchCruising    float64 // m, caught without a sprint
	Inevitable       float64 // m, height that takes the board along, sprinting
	InevitableCruise float64 // m, the same at cruise
	Carried          bool    // Height reaches Glide: no paddling needed once on it
	Margin           float64 // Height / Catch; +Inf where any height does
	Position         float64 // degrees ahead of the crest where the board settles, sprinting; NaN if it cannot hold
	TippingPoint     float64 // degrees ahead of the crest where it would fall off the back; NaN likewise
	CatchTime        float64 // s from the trough to wave speed, sprint under way; NaN if not caught or only just, 0 if faster
	Damping, Load    float64 // β and I of the pendulum, sprinting; NaN without a push
	FreeFall         float64 // m/s, speed gain without drag: about √(2 g H)
	SprintSpeed      float64 // m/s, sprint with this wind, no waves
	CruiseSpeed      float64 // m/s, cruise with this wind, no waves
	EncounterPeriod  float64 // s between crests at CruiseSpeed, negative if the board overtakes them
}

// train is a wave as the surge equation sees it.
type train struct {
	k, c float64 // rad/m, m/s along the heading
	perM float64 // N per metre of height
}

// push returns the force amplitude of a metre of wave height: the slope k/2 of
// the surface times the weight, reduced by the length of the board (the mean
// slope over it) and by the decay of pressure over its draught.
//
//	F/H = m g (k/2) · sin(kL/2)/(kL/2) · e^(−kd/2)
//
// A wave no longer than the board is given no push at all: beyond that the
// formula would change sign.
func (s *surge) push(along, k, gravity float64) float64 {
	x := along * s.halfLength
	if x >= math.Pi {
		return 0
	}
	return s.mass * gravity * along / 2 * math.Sin(x) / x * math.Exp(-k*s.halfDraught)
}

func (b Bump) check() error {
	bad := func(field string, v float64, want string) error {
		return fmt.Errorf("%w: %s %v is outside %s", ErrBump, field, v, want)
	}
	switch {
	case !(b.Height >= 0 && b.Height <= 50):
		return bad("Height", b.Height, "0 to 50 m")
	case !(b.Period >= 0.3 && b.Period <= 40):
		return bad("Period", b.Period, "0.3 to 40 s")
	case !(b.Depth >= 0.05):
		return bad("Depth", b.Depth, "0.05 m to infinity")
	case !(math.Abs(b.Current) <= 10):
		return bad("Current", b.Current, "-10 to 10 m/s")
	case !(math.Abs(b.Off) <= maximumOff):
		return bad("Off", b.Off, "-75 to 75 degrees")
	case !(math.Abs(b.Wind) <= 60):
		return bad("Wind", b.Wind, "-60 to 60 m/s")
	case b.Gravity != 0 && !(b.Gravity >= 9 && b.Gravity <= 10):
		return bad("Gravity", b.Gravity, "9 to 10 m/s2")
	}
	return nil
}

func (b Bump) gravity() float64 {
	if b.Gravity == 0 {
		return defaultGravity
	}
	return b.Gravity
}

// Appraise says what the paddler can do with the bump: heights by the surge
// equation, verdict by the first that fits of those listed at [Verdict].
// Proposal, no published source.
//
// Errors: those of [Paddler.Resolved]; [ErrBump] for a field outside its range.
func (p Paddler) Appraise(b Bump) (Appraisal, error) {
	s, err := newSurge(p)
	if err != nil {
		return Appraisal{}, err
	}
	return s.appraise(b)
}

func (s *surge) appraise(b Bump) (Appraisal, error) {
	if err := b.check(); err != nil {
		return Appraisal{}, err
	}
	g := b.gravity()
	nan := math.NaN()
	u := s.share * b.Wind
	a := Appraisal{
		Standing: Standing,
		Position: nan, TippingPoint: nan, CatchTime: nan, Damping: nan, Load: nan,
		SprintSpeed: s.flat(s.sprint, u), CruiseSpeed: s.flat(s.cruise, u),
	}
	k, intrinsic, ok := intrinsicWave(b.Period, b.Depth, b.Current, g)
	if !ok {
		a.Verdict = Blocked
		a.Celerity, a.Length, a.Period, a.OverGround = nan, nan, nan, nan
		a.Glide, a.Hold, a.Catch, a.CatchFromCruise, a.CatchCruising = nan, nan, nan, nan, nan
		a.Inevitable, a.InevitableCruise, a.Margin = nan, nan, nan
		a.Push, a.PushPerM, a.FreeFall, a.EncounterPeriod = nan, nan, nan, nan
		return a, nil
	}
	cos := math.Cos(b.Off * (math.Pi / 180))
	c := 2 * math.Pi / intrinsic / k
	w := train{k: k * cos, c: c / cos}
	w.perM = s.push(w.k, k, g)
	a.Celerity, a.Length, a.Period = w.c, 2*math.Pi/w.k, intrinsic
	a.OverGround = c + b.Current
	a.PushPerM, a.Push = w.perM, w.perM*b.Height
	a.EncounterPeriod = a.Length / (w.c - a.CruiseSpeed)

	if !(w.perM > 0) {
		inf := math.Inf(1)
		a.Verdict = TooShort
		a.Glide, a.Hold, a.Catch, a.CatchFromCruise, a.CatchCruising = inf, inf, inf, inf, inf
		a.Inevitable, a.InevitableCruise = inf, inf
		return a, nil
	}
	a.Glide = math.Max(0, -s.balance(w.c, effort{}, u)) / w.perM
	a.Hold = math.Max(0, -s.balance(w.c, s.sprint, u)) / w.perM
	a.Catch = s.catchForce(w, s.sprint, u, a.SprintSpeed) / w.perM
	a.CatchFromCruise = s.catchForce(w, s.sprint, u, a.CruiseSpeed) / w.perM
	// A wave hardly faster than a sprint takes minutes to pass, longer than the
	// run-up may be: there the slower start is the better one.
	a.Catch = math.Min(a.Catch, a.CatchFromCruise)
	a.CatchCruising = s.catchForce(w, s.cruise, u, a.CruiseSpeed) / w.perM
	a.Inevitable = s.inevitableForce(w, s.sprint, u) / w.perM
	a.InevitableCruise = s.inevitableForce(w, s.cruise, u) / w.perM
	a.Carried = b.Height >= a.Glide
	a.Margin = b.Height / a.Catch
	if a.Catch == 0 {
		a.Margin = math.Inf(1)
	}
	if f := a.Push; f > 0 {
		a.FreeFall = 2 * math.Sqrt(f/(w.k*s.inertia))
		a.Load = -s.balance(w.c, s.sprint, u) / f
		a.Damping = s.damping(w, f, s.sprint, u)
		if math.Abs(a.Load) <= 1 {
			a.TippingPoint = math.Asin(a.Load) * (180 / math.Pi)
			a.Position = 180 - a.TippingPoint
		}
	}
	tanh := w.c * w.c * k * cos * cos / g // tanh kh, from the wave itself
	switch {
	case a.SprintSpeed >= w.c:
		a.Verdict, a.CatchTime = BoardFaster, 0
	case b.Height > breakingSteep*2*math.Pi/k*tanh:
		a.Verdict = Breaking
	case b.Height >= a.InevitableCruise:
		a.Verdict = Inevitable
	case b.Height >= a.CatchCruising:
		a.Verdict = CatchCruising
	case b.Height >= a.Catch:
		a.Verdict = CatchSprinting
	case b.Height >= a.Hold:
		a.Verdict = HoldOnly
	case a.Hold > tooFastSteep*2*math.Pi/k*tanh:
		a.Verdict = TooFast
	default:
		a.Verdict = TooLow
	}
	if b.Height >= a.Catch && a.Verdict != BoardFaster {
		a.CatchTime = s.catchTime(w, a.Push, s.sprint, u, a.SprintSpeed)
	}
	return a, nil
}
