package ride

import (
	"errors"
	"fmt"
	"math"
	"strings"
)

// Errors of this package. Each is wrapped with the field, its value and the
// range allowed.
var (
	// ErrPaddler marks a paddler or board no appraisal can be made for.
	ErrPaddler = errors.New("ride: bad paddler")
	// ErrFoil marks a board on a hydrofoil, which this model refuses.
	ErrFoil = errors.New("ride: a foil flies, and the surge model of a floating board does not hold for it")
	// ErrBump marks a wave that cannot be appraised as given.
	ErrBump = errors.New("ride: bad bump")
	// ErrSea marks a sea that cannot be appraised as given.
	ErrSea = errors.New("ride: bad sea")
	// ErrRun marks a simulation that cannot be made as asked for.
	ErrRun = errors.New("ride: bad run")
)

// AirDensity is the density in kg/m³ used for the push of the wind.
const AirDensity = 1.22

// Craft names what is paddled. It chooses the priors of the resistance.
type Craft string

// The craft with priors. Every name with "foil" in it is refused.
const (
	Board Craft = "board"   // stand-up paddle board; also the meaning of an empty name
	Ski   Craft = "surfski" // long sit-on-top kayak
)

// Thrust is how the pull of the paddle falls off with speed.
type Thrust int

const (
	// ConstantPower keeps the effective power: the thrust at nominal flat
	// speed vs is R(vs)·vs/max(v, vs/2). A paddler on a bump pulls on water
	// that leaves faster.
	ConstantPower Thrust = iota
	// ConstantForce keeps R(vs) at every speed: the propeller-like case of the
	// ship formulas, kept for comparison.
	ConstantForce
)

// Paddler is a paddler on a board: what decides whether a bump can be held.
//
// A zero field takes its prior (see [Priors]). Cruise and Sprint are speeds on
// flat water in still air; the resistance is anchored on them, so that still
// air is part of it.
type Paddler struct {
	Craft     Craft   // Board if empty
	Mass      float64 // kg, everything that moves: paddler, board, gear
	Length    float64 // m, waterline
	Draught   float64 // m
	AddedMass float64 // water moved along, as a fraction of Mass
	Cruise    float64 // m/s, flat-water speed held for hours
	Sprint    float64 // m/s, flat-water speed held for some ten seconds
	Drag      float64 // N s²/m², K of Resistance
	Bend      float64 // m/s, v_t of Resistance; +Inf for a pure square law
	WindArea  float64 // m², drag area CdA of paddler and board in the wind
	WindShare float64 // wind at the body as a share of the wind at 10 m
	Thrust    Thrust
}

// Prior is one parameter of the model with its default, the range accepted and
// the standard spread used for the uncertainty of an appraisal.
type Prior struct {
	Field      string
	Unit       string
	Value      float64 // the default; for Drag at a mass of 95 kg
	Low, High  float64 // accepted, both ends included
	Spread     float64 // one standard deviation, as a fraction of Value
	Provenance string
}

// Standing is what every result of this package carries: no published method
// stands behind it.
const Standing = "proposal, no published source"

const noSource = Standing

// Priors returns the parameters of craft, in the order of the fields of
// [Paddler]; nil for a craft without priors, foils among them.
//
// Proposal, no published source: no towing tests of paddle boards in newtons
// were found. The resistance is anchored on friction lines, on race sprints of
// 2.75 to 4.3 m/s and the 300 to 450 W they take, and on peaks of 5.2 to
// 7.3 m/s seen in a race.
//
// Source: [Schram2017] abstract (peaks); [ICF2019] (sprint).
func Priors(craft Craft) []Prior {
	ski := craft == Ski
	if !ski && craft != Board && craft != "" {
		return nil
	}
	pick := func(board, surfski float64) float64 {
		if ski {
			return surfski
		}
		return board
	}
	return []Prior{
		{"Mass", "kg", 95, 20, 400, 0.08, "a paddler of 80 kg with board and gear"},
		{"Length", "m", pick(4.2, 6.2), 1.5, 14, 0.10, "14 foot board, surfski of 6.4 m"},
		{"Draught", "m", 0.05, 0.005, 0.6, 0.4, noSource},
		{"AddedMass", "1", 0.05, 0.001, 0.5, 0.5, noSource},
		{"Cruise", "m/s", pick(1.8, 2.8), 0.3, 6, 0.05, "trained amateur; " + noSource},
		{"Sprint", "m/s", pick(3.0, 4.2), 0.3, 8, 0.07, "club racer; 2.75 to 4.06 m/s over 180 m in a championship"},
		{"Drag", "N s2/m2", pick(5.5, 3.2), 0.3, 60, 0.18, noSource},
		{"Bend", "m/s", pick(5, 8), 1, math.Inf(1), 0.3, noSource},
		{"WindArea", "m2", pick(0.6, 0.4), 0.02, 3, 0.33, noSource},
		{"WindShare", "1", 0.8, 0.1, 1.2, 0.1, noSource},
	}
}

// Resolved returns p with every zero field replaced by its prior; it is what
// all appraisals are made for. The prior of Drag grows with the wetted surface,
// as Mass to the power 2/3. Where one of Cruise and Sprint is given and lies
// beyond the prior of the other, Sprint is 1.5 Cruise, at most its range, or
// Cruise is 0.6 Sprint.
//
// Errors: [ErrFoil] for any craft with "foil" in its name; [ErrPaddler] for an
// unknown craft, a field that is NaN or outside its range in [Priors], a Sprint
// below Cruise, or an unknown Thrust.
func (p Paddler) Resolved() (Paddler, error) {
	if strings.Contains(strings.ToLower(string(p.Craft)), "foil") {
		return Paddler{}, fmt.Errorf("%w: Craft %q", ErrFoil, p.Craft)
	}
	priors := Priors(p.Craft)
	if priors == nil {
		return Paddler{}, fmt.Errorf("%w: Craft %q is none of %q, %q", ErrPaddler, p.Craft, Board, Ski)
	}
	if p.Craft == "" {
		p.Craft = Board
	}
	fields := [...]*float64{
		&p.Mass, &p.Length, &p.Draught, &p.AddedMass, &p.Cruise, &p.Sprint,
		&p.Drag, &p.Bend, &p.WindArea, &p.WindShare,
	}
	for i, f := range fields {
		prior := priors[i]
		if *f == 0 {
			*f = prior.Value
			switch {
			case f == &p.Drag:
				*f *= math.Pow(p.Mass/95, 2.0/3)
			case f == &p.Sprint && p.Cruise > prior.Value: // only Cruise was given
				*f = math.Min(p.Cruise*1.5, prior.High)
			case f == &p.Cruise && p.Sprint != 0 && p.Sprint < prior.Value: // only Sprint was given
				*f = p.Sprint * 0.6
			}
		}
		if !(*f >= prior.Low && *f <= prior.High) {
			return Paddler{}, fmt.Errorf("%w: %s %v %s is outside %v to %v", ErrPaddler, prior.Field, *f, prior.Unit, prior.Low, prior.High)
		}
	}
	if !(p.Sprint >= p.Cruise) {
		return Paddler{}, fmt.Errorf("%w: Sprint %v m/s is below Cruise %v m/s", ErrPaddler, p.Sprint, p.Cruise)
	}
	if p.Thrust != ConstantPower && p.Thrust != ConstantForce {
		return Paddler{}, fmt.Errorf("%w: Thrust %d is none of 0 (constant power), 1 (constant force)", ErrPaddler, p.Thrust)
	}
	return p, nil
}

// Resistance returns the resistance in newtons of the board at speed m/s
// through the water, against the motion.
//
//	R = K v² / √(1 + (v/v_t)²)
//
// The square law bends towards a straight line above v_t, as the board starts
// to plane: a pure square law cannot reach the speeds seen on bumps.
// Proposal, no published source.
//
// Special cases are:
//
//	Resistance(-v) = -Resistance(v)
//	Resistance(v) = NaN for v NaN or infinite, or a paddler that Resolved refuses
func (p Paddler) Resistance(speed float64) float64 {
	s, err := newSurge(p)
	if err != nil || math.IsInf(speed, 0) {
		return math.NaN()
	}
	return s.resistance(speed)
}

// Pull returns the thrust of the paddle in newtons at speed m/s, for an effort
// that gives nominal m/s on flat water.
//
//	T = R(vs) vs / max(v, vs/2)   ConstantPower
//	T = R(vs)                     ConstantForce
//
// Proposal, no published source.
//
// Special cases are:
//
//	Pull = NaN for a speed that is NaN or infinite, a nominal that is not ≥ 0 and finite, a paddler that Resolved refuses
func (p Paddler) Pull(speed, nominal float64) float64 {
	s, err := newSurge(p)
	if err != nil || math.IsNaN(speed) || math.IsInf(speed, 0) || !(nominal >= 0) || math.IsInf(nominal, 1) {
		return math.NaN()
	}
	e := s.effort(nominal)
	return e.pull(speed)
}

// WindPush returns the push of the wind in newtons along the heading on a
// paddler moving at speed m/s, for a wind of wind m/s at 10 m height, its part
// along the heading, positive from astern.
//
//	W = ½ ρ CdA (U − v)²                 U > v, with U = WindShare · wind
//	W = 0                                0 ≤ U ≤ v
//	W = −½ ρ CdA ((v − U)² − v²)         U < 0, a head wind, v ≥ 0
//
// Still air is part of the resistance, which is anchored on speeds made in it.
// A tail wind slower than the board is counted as still air.
// Proposal, no published source.
//
// Special cases are:
//
//	WindPush = NaN for a speed or wind that is NaN or infinite, or a paddler that Resolved refuses
func (p Paddler) WindPush(speed, wind float64) float64 {
	s, err := newSurge(p)
	if err != nil || math.IsInf(speed, 0) || math.IsInf(wind, 0) {
		return math.NaN()
	}
	return s.windPush(speed, s.share*wind)
}

// FlatSpeed returns the speed in m/s made without waves by an effort worth
// nominal m/s in still air, in a wind of wind m/s (10 m height, its part along
// the heading, positive from astern): the root of pull + wind − resistance.
// It is negative where a head wind drives the board back.
// Proposal, no published source.
//
// Special cases are:
//
//	FlatSpeed(nominal, 0) = nominal
//	FlatSpeed = NaN for a nominal that is not ≥ 0, for either NaN or infinite, |wind| > 100, nominal > 20, or a paddler that Resolved refuses
func (p Paddler) FlatSpeed(nominal, wind float64) float64 {
	s, err := newSurge(p)
	if err != nil || !(nominal >= 0 && nominal <= 20) || !(math.Abs(wind) <= 100) {
		return math.NaN()
	}
	return s.flat(s.effort(nominal), s.share*wind)
}
