package wind

import (
	"fmt"

	"followingsea.example/internal/angle"
)

// TurnKind says which way a wind turned.
type TurnKind int

// The ways a wind turns. A change of exactly half a circle is neither a veer
// nor a back; a calm at either end has no direction to turn from.
const (
	Undefined TurnKind = iota
	NoTurn
	Veer // clockwise: south-west to west
	Back // anticlockwise: west to south-west
	Reversal
)

// String returns the word for the kind.
func (k TurnKind) String() string {
	switch k {
	case NoTurn:
		return "steady"
	case Veer:
		return "veer"
	case Back:
		return "back"
	case Reversal:
		return "reversal"
	}
	return "undefined"
}

// Turn is a change of the direction a wind blows from.
type Turn struct {
	Kind TurnKind
	// Degrees is positive clockwise, in (−180, 180]; NaN if undefined.
	Degrees float64
}

// TurnOf returns the turn from wind a to wind b, the short way round:
// ((b − a + 540) mod 360) − 180. It is Undefined if either is calm or not
// known.
//
// Source: [MetOffice-MarineGlossary] veering and backing.
func TurnOf(a, b Wind) Turn {
	if a.Speed == 0 || b.Speed == 0 || !a.known() || !b.known() {
		return Turn{Undefined, nan}
	}
	d := angle.Diff(a.From, b.From)
	switch {
	case d == 180:
		return Turn{Reversal, d}
	case d > 0:
		return Turn{Veer, d}
	case d < 0:
		return Turn{Back, d}
	case d == 0:
		return Turn{NoTurn, 0}
	}
	return Turn{Undefined, nan}
}

// String prints "veer of 45°".
func (t Turn) String() string {
	switch t.Kind {
	case Veer:
		return fmt.Sprintf("veer of %.0f°", t.Degrees)
	case Back:
		return fmt.Sprintf("back of %.0f°", -t.Degrees)
	}
	return t.Kind.String()
}
