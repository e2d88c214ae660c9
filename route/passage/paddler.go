package passage

import (
	"errors"
	"fmt"
	"math"
	"time"
)

// ErrInput is wrapped by every error about a value handed to this package.
var ErrInput = errors.New("passage: input")

// inputError names the field, the value and the allowed range.
func inputError(field string, value any, want string) error {
	return fmt.Errorf("%w: %s is %v: want %s", ErrInput, field, value, want)
}

// A Paddler is one person on one board, with the limits they set themselves.
// Every number may be unknown; what cannot be worked out without it is then
// reported as unknown.
type Paddler struct {
	Name        string
	Cruise      Value // speed on flat water without wind, kept up for hours, m/s
	Sprint      Value // the same, kept up for some ten seconds, m/s
	Prone       Value // the same, lying down and paddling with the hands, m/s
	Mass        Value // of the person, the board and what they carry, kg
	BoardLength Value // on the waterline, m
	Drag        Value // resistance of the board in the terms of package ride, N s²/m²; unknown: the prior for the mass. Water.Calibrated finds it
	Endurance   Value // time at cruise power, s
	ProneHours  Value // time at prone paddling, s
	Foil        bool  // the board flies on a foil, which the ride model refuses
	Leader      bool  // leads others of the party
	Variation   Variation
	Limits      Limits
}

// A Variation is the magnetic variation, without which headings are printed
// true only.
type Variation struct {
	East Value     // degrees, east positive
	Date time.Time // of the chart or model it was taken from
}

// field is one number of a paddler, with the range that is believed.
type field struct {
	name   string
	value  Value
	lo, hi float64
	unit   string
}

// Validate returns an error that names the first field whose value cannot be
// right, wrapping ErrInput. Unknown values are valid.
func (p Paddler) Validate() error {
	for _, f := range []field{
		{"cruise speed", p.Cruise, 0.3, 5, "m/s"},
		{"sprint speed", p.Sprint, 0.3, 7, "m/s"},
		{"prone speed", p.Prone, 0.1, 3, "m/s"},
		{"mass", p.Mass, 20, 300, "kg"},
		{"board length", p.BoardLength, 2, 7, "m"},
		{"drag", p.Drag, 0.3, 60, "N s²/m²"},
		{"endurance", p.Endurance, 60, 48 * 3600, "s"},
		{"prone endurance", p.ProneHours, 60, 48 * 3600, "s"},
		{"magnetic variation", p.Variation.East, -180, 180, "degrees"},
	} {
		if x, ok := f.value.Get(); ok && !(x >= f.lo && x <= f.hi) {
			return inputError(f.name, x, fmt.Sprintf("%g to %g %s", f.lo, f.hi, f.unit))
		}
	}
	if c, ok := p.Cruise.Get(); ok {
		if s, ok := p.Sprint.Get(); ok && s < c {
			return inputError("sprint speed", s, fmt.Sprintf("no less than the cruise speed, %g m/s", c))
		}
	}
	if _, ok := p.Variation.East.Get(); ok && p.Variation.Date.IsZero() {
		return inputError("magnetic variation", p.Variation.East, "its date beside it")
	}
	for r, l := range p.Limits {
		x, asked := l.Get()
		if !asked {
			continue
		}
		rule := Rule(r)
		lo, hi := rule.plausible()
		if !(x >= lo && x <= hi) {
			return inputError("limit "+rule.String(), x, fmt.Sprintf("%g to %g %s", lo, hi, rule.Unit()))
		}
	}
	return nil
}

// plausible is the range in which a limit on the rule makes sense.
func (r Rule) plausible() (lo, hi float64) {
	switch r.Unit() {
	case "m/s":
		return 0, 70
	case "deg":
		return 0, 180
	case "m":
		return 0, 25
	case "s":
		return 0, 7 * 86400
	case "C":
		return -60, 60
	case "bool":
		return 0, 0
	}
	return 0, math.Inf(1)
}
