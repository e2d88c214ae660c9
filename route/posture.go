package route

import (
	"fmt"
	"math"
)

// How fast a board goes against a wind.
//
// In the water's own frame four forces act on a board that is headed h and
// moves forward at u and sideways, to the right, at s:
//
//	thrust       T(u) = P / max(u, V/2),  P = R(V) V     forward only
//	resistance   R(u) = K u |u| / sqrt(1 + (u/Vt)²)
//	side force   Y(s) = Q s |s|
//	air          A    = ½ rho CdA |a| a,  a = e w - (u, s)
//
// V is the flat-water speed, which alone sets the power P a paddler puts in:
// constant power above half of V, constant pull below it. (The air of their
// own going is not in P: in a dead calm a standing paddler of 1.8 m/s makes
// 1.76.) w is the wind
// relative to the water at 10 m, and e the part of it at the height of the
// body. The board settles where
//
//	T(u) + A_u - R(u) = 0,   A_s - Y(s) = 0
//
// Both air components use the one speed |a|, so a wind on the bow quarter
// costs more than its head component alone and pushes the board sideways as
// well. R and T are those of the surge equation of wave/ride, so that a board
// has one flat-water speed in the whole library.
//
// The numbers K, Vt, Q, CdA and e are priors: reasoned from measured friction,
// sprint speeds and published leeway, never measured on a board in a wind.

// AirDensity is the density of air used for the push of the wind, kg/m³: sea
// level air at 15 degrees, slightly damp.
const AirDensity = 1.22

// Way is a velocity through the water, as a function of the heading in degrees
// toward and of the wind relative to the water: the wind over ground less the
// stream. It is how everything in this package takes the speed of a board;
// [Posture.Way] makes one, and a function of your own may replace it.
//
// A Way returns NaN for what it does not know, and is called from several
// goroutines if the plan it is given to is.
type Way func(heading float64, wind Velocity) Velocity

// Posture is how a paddler is on the board, with what that does to the
// forces. Make one with [Standing], [Kneeling], [Prone] or [Drifting] and
// change the fields that are known better.
type Posture struct {
	Name  string
	Speed float64 // flat-water speed V, m/s; 0 is adrift

	// Endurance is how long the posture can be kept up, in seconds; +Inf is
	// as long as the plan. It does not lower the speed on the way.
	Endurance float64

	Area     float64 // drag area CdA of body and board in the air, m²
	Exposure float64 // wind at the height of the body over the wind at 10 m
	Drag     float64 // K, N s²/m²
	Bend     float64 // Vt, m/s, where the resistance bends from square to linear; +Inf never
	Side     float64 // Q, N s²/m²
}

// Priors. The spread is what a plan should try.
const (
	hullDrag = 5.5   // for 95 kg all up; scales with mass^(2/3); 4.5 to 6.5
	hullBend = 5.0   // 4 to 7
	hullSide = 173.0 // ½ 1025 x 1.2 x 0.28 m² of hull, fin and legs beam on; 120 to 230
)

// Standing returns a paddler on their feet with a paddle, whose flat-water
// cruising speed is given in m/s (1.4 to 2.6 is usual): drag area 0.6 m²
// (0.4 to 0.8) in 0.8 of the wind at 10 m, no end to endurance.
//
// A standing paddler of 1.8 m/s makes 0.8 m/s dead into a wind of 20 kn, and
// is blown back in 25. At the ends of the priors ([Posture.Spread]) the 0.8 is
// anything from -0.5 to 1.2, and the wind that stops it, 23 kn, anything from
// 18 to 31.
func Standing(speed float64) Posture {
	return Posture{"standing", speed, math.Inf(1), 0.6, 0.80, hullDrag, hullBend, hullSide}
}

// Kneeling returns the same paddler on their knees with the paddle: 0.85 of
// the speed, drag area 0.40 m² (0.3 to 0.5) in 0.75 of the wind, for two
// hours (1 to 3).
func Kneeling(speed float64) Posture {
	return Posture{"kneeling", 0.85 * speed, 2 * Hour, 0.40, 0.75, hullDrag, hullBend, hullSide}
}

// Prone returns the same paddler lying down and paddling with the hands: 0.6
// of the speed, drag area 0.20 m² (0.15 to 0.3) in 0.68 of the wind, for 45
// minutes (30 to 90) before the arms are spent.
func Prone(speed float64) Posture {
	return Posture{"prone", 0.6 * speed, 45 * Minute, 0.20, 0.68, hullDrag, hullBend, hullSide}
}

// Drifting returns a person lying or sitting on a board without paddling. The
// board lies across the wind and goes down it at 2.0 % of the wind at 10 m,
// the published leeway of a person with a surf board, whatever the heading.
// The published scatter, and the families to the left and right of downwind,
// are in the leeway table ([Craft]); this posture is its middle.
//
// Source: [USCG-Addendum] manual leeway table, surf board with person: 0.020
// of the wind.
func Drifting() Posture {
	return Posture{"drifting", 0, math.Inf(1), 0.25, 0.70, hullSide, math.Inf(1), hullSide}
}

// Postures returns the four postures of a paddler whose flat-water speed
// standing is given, in the order in which a wind takes them away: standing,
// kneeling, prone, drifting.
func Postures(speed float64) []Posture {
	return []Posture{Standing(speed), Kneeling(speed), Prone(speed), Drifting()}
}

// Spread returns the same posture at the two ends of its priors: the one that
// a wind moves most, of 4/3 the drag area and 0.82 of the drag (less power for
// the same flat-water speed), and the one that it moves least, of 2/3 and 1.18.
// A plan that turns on a single number should be asked with both.
func (p Posture) Spread() (most, least Posture) {
	most, least = p, p
	most.Area, most.Drag = p.Area*4/3, p.Drag*0.82
	least.Area, least.Drag = p.Area*2/3, p.Drag*1.18
	return most, least
}

// Check returns nil for a posture with numbers to work with, and otherwise an
// error that wraps [ErrInput] and names the field, its value and its range.
func (p Posture) Check() error {
	for _, f := range []struct {
		name       string
		v, lo, hi  float64
		loIn, hiIn bool
	}{
		{"Speed", p.Speed, 0, 10, true, true},
		{"Endurance", p.Endurance, 0, math.Inf(1), false, true},
		{"Area", p.Area, 0, 10, false, true},
		{"Exposure", p.Exposure, 0, 1.5, false, true},
		{"Drag", p.Drag, 0, 10000, false, true},
		{"Bend", p.Bend, 0, math.Inf(1), false, true},
		{"Side", p.Side, 0, 10000, false, true},
	} {
		if !((f.v > f.lo || f.loIn && f.v == f.lo) && f.v <= f.hi) {
			return fmt.Errorf("%w: %s: %s: %v is not between %v and %v", ErrInput, p.Name, f.name, f.v, f.lo, f.hi)
		}
	}
	return nil
}

// Resistance returns the resistance of the water in newtons at a speed
// forward through it, negative going backward.
//
//	R(u) = K u |u| / sqrt(1 + (u/Vt)²)
//
// The shape is a proposal, no published source: square at low speed, bending
// to linear above Vt where a board lifts out of its own wave.
//
// Special cases are:
//
//	Resistance(NaN or ±Inf) = NaN
func (p Posture) Resistance(u float64) float64 {
	if p.Check() != nil || !finite(u) {
		return math.NaN()
	}
	return p.resistance(u)
}

func (p *Posture) resistance(u float64) float64 {
	r := u / p.Bend
	return p.Drag * u * math.Abs(u) / math.Sqrt(1+r*r)
}

// Thrust returns the forward pull of the paddle in newtons at a speed
// through the water: the power of the flat-water speed over the speed, and no
// more than its value at half of the flat-water speed.
//
//	T(u) = R(V) V / max(u, V/2)
//
// The shape is a proposal, no published source.
//
// Special cases are:
//
//	Thrust(NaN or ±Inf) = NaN
func (p Posture) Thrust(u float64) float64 {
	if p.Check() != nil || !finite(u) {
		return math.NaN()
	}
	return p.thrust(p.resistance(p.Speed)*p.Speed, u)
}

func (p *Posture) thrust(power, u float64) float64 {
	if power == 0 {
		return 0
	}
	return power / max(u, p.Speed/2)
}

// Push returns the force of the air, in newtons east and north, on a board
// that moves through the water at v in a wind relative to the water:
//
//	A = ½ rho CdA |a| a,   a = Exposure wind - v
//
// Special cases are:
//
//	Push = NaN, NaN where a component is NaN or infinite
func (p Posture) Push(v, wind Velocity) Velocity {
	a := wind.Scale(p.Exposure).Sub(v)
	speed := a.Speed()
	if p.Check() != nil || !finite(speed) {
		return Velocity{math.NaN(), math.NaN()}
	}
	return a.Scale(0.5 * AirDensity * p.Area * speed)
}

// strongest is the strongest wind a way is worked out for, m/s.
const strongest = 100.0

// Way returns the velocity through the water of a board headed so, in a wind
// relative to the water: the root of the four forces above, forward and
// sideways together, to 1e-9 m/s. A posture without speed drifts straight down
// the wind whatever the heading. It is a [Way] as a method value: p.Way.
//
// The result can point backward: the wind is then stronger than the paddler.
//
// Special cases are:
//
//	Way = NaN, NaN for a posture that fails Check, a NaN or infinite heading,
//	a wind that is NaN or over 100 m/s
//
// A proposal, no published source; the oracle is the same board accelerating
// in time until it is steady.
func (p Posture) Way(heading float64, wind Velocity) Velocity {
	w := wind.Speed()
	if p.Check() != nil || !finite(heading) || !(w <= strongest) {
		return Velocity{math.NaN(), math.NaN()}
	}
	air := 0.5 * AirDensity * p.Area
	if p.Speed == 0 {
		// Air and water both square: the speeds share the wind as the
		// square roots of their coefficients.
		return wind.Scale(p.Exposure / (1 + math.Sqrt(p.Side/air)))
	}
	sh, ch := sincosd(heading)
	wu := p.Exposure * (wind.East*sh + wind.North*ch)
	ws := p.Exposure * (wind.East*ch - wind.North*sh)
	b := balance{p: &p, air: air, wu: wu, ws: ws, power: p.resistance(p.Speed) * p.Speed}
	u, s := b.solve()
	return Velocity{u*sh + s*ch, u*ch - s*sh}
}

// balance is one board in one wind, resolved along its heading.
type balance struct {
	p      *Posture
	air    float64
	wu, ws float64
	power  float64
}

// mostPasses bounds Newton's method: over all that [Posture.Check] lets through
// 18 is the most that was seen of half a million draws.
const mostPasses = 25

// solve returns the forward and sideways speed.
func (b *balance) solve() (u, s float64) {
	if u, s, passes := b.newton(); passes <= mostPasses {
		return u, s
	}
	return b.halve()
}

// newton returns the root by Newton's method and the passes it took, more than
// mostPasses where it did not settle. The two excess forces are the slope of
// one concave potential, so there is one root, found in some six passes.
func (b *balance) newton() (u, s float64, passes int) {
	lo, hi := b.ahead()
	slo, shi := b.abeam()
	u = min(max(b.p.Speed+b.wu/8, lo), hi)
	s = b.ws / (1 + math.Sqrt(b.p.Side/b.air))
	for passes = 1; passes <= mostPasses; passes++ {
		fu, fs, uu, ss, us := b.excess(u, s)
		det := uu*ss - us*us
		nu := min(max(u-(fu*ss-fs*us)/det, lo), hi)
		ns := min(max(s-(fs*uu-fu*us)/det, slo), shi)
		step := math.Abs(nu-u) + math.Abs(ns-s)
		u, s = nu, ns
		if step <= 1e-12 {
			break
		}
	}
	return u, s, passes
}

// halve returns the same by brackets that cannot fail: the excess force forward
// falls as u rises (thrust and air push fall, resistance rises, and the side
// slip follows), the one sideways as s does.
func (b *balance) halve() (u, s float64) {
	slip := func(u float64) float64 {
		lo, hi := b.abeam()
		return falling(lo, hi, func(s float64) float64 { _, fs, _, _, _ := b.excess(u, s); return fs })
	}
	lo, hi := b.ahead()
	u = falling(lo, hi, func(u float64) float64 { fu, _, _, _, _ := b.excess(u, slip(u)); return fu })
	return u, slip(u)
}

// ahead brackets the forward speed: at the lower end the air no longer pushes
// back, at the upper it cannot push on, whatever the slip.
func (b *balance) ahead() (lo, hi float64) { return min(b.wu, 0), max(b.wu, 0) + b.p.Speed }

// abeam brackets the sideways speed: of one sign with the wind and no larger.
func (b *balance) abeam() (lo, hi float64) { return min(b.ws, 0), max(b.ws, 0) }

// falling returns the root between lo and hi of a function that falls.
func falling(lo, hi float64, f func(float64) float64) float64 {
	for range 60 { // of 100 m/s less than one unit in the last place is left
		if mid := (lo + hi) / 2; f(mid) > 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return hi
}

// excess returns what the forces leave over forward and sideways, in newtons,
// and how that changes with the speeds u forward and s sideways: uu of the first
// with u, ss of the second with s, us of either with the other.
func (b *balance) excess(u, s float64) (fu, fs, uu, ss, us float64) {
	p := b.p
	au, as := b.wu-u, b.ws-s
	a := math.Sqrt(au*au + as*as)
	t, dt := b.power/u, -b.power/(u*u)
	if u <= p.Speed/2 {
		t, dt = 2*b.power/p.Speed, 0
	}
	r := u / p.Bend
	q2 := 1 + r*r
	k := p.Drag * math.Abs(u) / math.Sqrt(q2)
	side := p.Side * math.Abs(s)
	fu = t + b.air*a*au - k*u
	fs = b.air*a*as - side*s
	uu = dt - k*(2+r*r)/q2
	ss = -2 * side
	if a > 0 {
		uu -= b.air * (a + au*au/a)
		ss -= b.air * (a + as*as/a)
		us = -b.air * au * as / a
	}
	return fu, fs, uu, ss, us
}

// steady bounds the search for a heading.
const (
	headingStep = 5.0  // degrees between looks
	headingTol  = 1e-7 // degrees
)

// Course is a heading that holds a track, and the velocity over ground it
// gives.
type Course struct {
	Heading float64  // degrees toward
	Made    float64  // m/s over ground along the track
	Ground  Velocity // over ground
}

// HoldCourse returns the heading on which a board with a way of its own
// moves over ground along the track, toward track in degrees, in a wind over
// ground and a stream: of all such headings the one that goes fastest. Speed
// and leeway may both depend on the heading, and then there may be none, one
// or several, so the whole circle is looked at in steps of 5 degrees and each
// change of side is refined to 1e-7 degrees.
//
// The error wraps [ErrCrossSet] if every heading is set off the track, and
// [ErrNoProgress] if the one that holds it goes backward along it; a track,
// wind, stream or way that is not a number wraps [ErrInput].
func HoldCourse(way Way, track float64, wind, stream Velocity) (Course, error) {
	c, err := holdCourse(way, track, wind, stream, math.NaN())
	if err != nil {
		return Course{}, err
	}
	return c, nil
}

func holdCourse(way Way, track float64, wind, stream Velocity, guess float64) (Course, error) {
	if way == nil {
		panic("route: HoldCourse: nil way")
	}
	if !finite(track) {
		return Course{}, fmt.Errorf("%w: track %v is not a direction", ErrInput, track)
	}
	rel := wind.Sub(stream)
	if s := rel.Speed(); !finite(s) {
		return Course{}, fmt.Errorf("%w: wind %v, stream %v", ErrInput, wind, stream)
	}
	st, ct := sincosd(track)
	at := func(h float64) (made, cross float64) {
		g := way(h, rel).Add(stream)
		return g.East*st + g.North*ct, g.East*ct - g.North*st
	}
	best := Course{Made: math.Inf(-1), Heading: math.NaN()}
	try := func(a, ca, b, cb float64) {
		h := crossing(func(h float64) float64 { _, cross := at(h); return cross }, a, ca, b, cb)
		made, cross := at(h)
		// A jump across zero is not a root.
		if made > best.Made && math.Abs(cross) <= 1e-4 {
			best = Course{Heading: wrapDeg(h), Made: made, Ground: Toward(1, track).Scale(made)}
		}
	}
	// Near a guess first: along a passage the heading changes little. Only
	// the whole circle can say that there is none.
	if !math.IsNaN(guess) {
		_, ca := at(guess - headingStep)
		_, cb := at(guess + headingStep)
		if (ca < 0) != (cb < 0) {
			try(guess-headingStep, ca, guess+headingStep, cb)
			if best.Made > 0 {
				return best, nil
			}
		}
	}
	// The circle opens astern, where a heading lost between its ends would be no way to go.
	astern := track + 180
	_, last := at(astern)
	unknown := math.IsNaN(last)
	for i := range int(360 / headingStep) {
		h := astern + headingStep*float64(i)
		_, c := at(h + headingStep)
		unknown = unknown || math.IsNaN(c)
		if (c < 0) != (last < 0) {
			try(h, last, h+headingStep, c)
		}
		last = c
	}
	switch {
	case unknown:
		return Course{}, fmt.Errorf("%w: the way through the water", ErrInput)
	case math.IsNaN(best.Heading):
		return Course{}, fmt.Errorf("%w: track %.0f", ErrCrossSet, wrapDeg(track))
	case !(best.Made > 0):
		return Course{}, fmt.Errorf("%w: %.2f m/s backward along %.0f", ErrNoProgress, -best.Made, wrapDeg(track))
	}
	return best, nil
}

// crossing returns where f changes sign between a and b, whose values are fa
// and fb: false position, with the value at an end that stays halved (Illinois).
func crossing(f func(float64) float64, a, fa, b, fb float64) float64 {
	for range 80 {
		x := b - fb*(b-a)/(fb-fa)
		fx := f(x)
		if (fx < 0) != (fb < 0) {
			a, fa = b, fb
		} else {
			fa /= 2
		}
		b, fb = x, fx
		if math.Abs(fx) <= 1e-10 || math.Abs(b-a) <= headingTol {
			break
		}
	}
	return b
}
