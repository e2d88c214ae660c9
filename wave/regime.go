package wave

import "math"

// A Regime says how much of the bottom a wave feels.
type Regime int

// The regimes, by relative depth h/L.
const (
	NoRegime     Regime = iota // not a wave: something was NaN
	Shallow                    // the bottom rules: c = √(gh) whatever the period
	Intermediate               // the bottom is felt: the whole relation is needed
	Deep                       // the bottom is not felt: c = gT/2π whatever the depth
)

// String returns the word for the regime.
func (r Regime) String() string {
	switch r {
	case Shallow:
		return "shallow"
	case Intermediate:
		return "intermediate"
	case Deep:
		return "deep"
	}
	return "none"
}

// RegimeLimits is a pair of relative depths h/L that bound the intermediate regime. They are conventions: how large an
// error of the simple formulas is let pass.
type RegimeLimits struct {
	Shallow float64 // at or below it: shallow
	Deep    float64 // at or above it: deep
}

// The limits in use. At the usual ones the error of the simple formula for the speed is 0.2 % on the deep side and 1.6 % on
// the shallow side; at the older shallow limit it is 1.0 %; at the wide ones it is 4 to 5 % on both.
var (
	UsualLimits = RegimeLimits{1.0 / 20, 1.0 / 2} // [CEM-II-1] Table II-1-1; [DeanDalrymple1991] ch. 3
	OldLimits   = RegimeLimits{1.0 / 25, 1.0 / 2} // [SPM1984] Table 2-1
	WideLimits  = RegimeLimits{1.0 / 11, 1.0 / 4} // [Stewart2008] ch. 16
)

// Regime returns whether the wave is in deep, intermediate or shallow water, by the usual limits of relative depth h/L: 1/2
// and 1/20.
//
// Special cases are:
//
//	Regime = NoRegime if the length or depth is NaN
//
// Source: [CEM-II-1] Table II-1-1.
func (v Wave) Regime() Regime { return RegimeLimits{1.0 / 20, 1.0 / 2}.Regime(v.Depth, v.Length) }

// Regime returns the regime of a wave of the length over the depth, both in metres, by these limits.
//
// Special cases are:
//
//	Regime(depth, length) = NoRegime if either is zero, negative or NaN, both are infinite, or a limit is not finite
//
// Source: [CEM-II-1] Table II-1-1, for the usual limits.
func (l RegimeLimits) Regime(depth, length float64) Regime {
	r := depth / length
	switch {
	case !(depth > 0 && length > 0) || math.IsNaN(r) || !finite(l.Shallow) || !finite(l.Deep):
		return NoRegime
	case r >= l.Deep:
		return Deep
	case r <= l.Shallow:
		return Shallow
	}
	return Intermediate
}
