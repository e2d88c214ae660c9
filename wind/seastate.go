package wind

import (
	"fmt"
	"math"
)

// SeaState is a figure of the World Meteorological Organization's code for the
// state of the sea, 0 to 9. It names a height, whatever raised it; it says
// nothing of the period, which decides whether the sea is friendly.
type SeaState int

var seaStates = [10]struct {
	words string
	top   float64
}{
	{"calm (glassy)", 0},
	{"calm (rippled)", 0.1},
	{"smooth (wavelets)", 0.5},
	{"slight", 1.25},
	{"moderate", 2.5},
	{"rough", 4},
	{"very rough", 6},
	{"high", 9},
	{"very high", 14},
	{"phenomenal", math.Inf(1)},
}

// SeaStateOf returns the state of a sea of significant height hs in m. The
// exact bounding height belongs to the lower figure: 4 m is rough, not very
// rough.
//
// The error is ErrHeight for a height that is negative, infinite or NaN.
//
// Source: [WMO-3700] Code table 3700.
func SeaStateOf(hs float64) (SeaState, error) {
	if !(hs >= 0 && finite(hs)) {
		return 0, fmt.Errorf("%w: hs %v m is not zero or more", ErrHeight, hs)
	}
	s := 0
	for hs > seaStates[s].top {
		s++
	}
	return SeaState(s), nil
}

// Words returns the descriptive term: "moderate". It panics, as Range does,
// outside 0 to 9.
//
// Source: [WMO-3700] Code table 3700.
func (s SeaState) Words() string { s.must(); return seaStates[s].words }

// Range returns the significant heights in m of the state, above lo up to and
// including hi, which is +Inf for 9.
//
// Source: [WMO-3700] Code table 3700.
func (s SeaState) Range() (lo, hi float64) {
	s.must()
	if s > 0 {
		lo = seaStates[s-1].top
	}
	return lo, seaStates[s].top
}

func (s SeaState) must() {
	if s < 0 || s > 9 {
		panic(fmt.Sprintf("wind: SeaState(%d) is outside 0 to 9", int(s)))
	}
}

// String prints "sea state 4, moderate".
func (s SeaState) String() string {
	if s < 0 || s > 9 {
		return fmt.Sprintf("SeaState(%d)", int(s))
	}
	return fmt.Sprintf("sea state %d, %s", int(s), seaStates[s].words)
}
