package passage

import "followingsea.example/route"

// A Value is a number that may be unknown. Its zero value is unknown, so that
// a field which nobody filled in can never pass for the number zero. It is the
// Value of package route, by the name that this package's inputs use.
type Value = route.Value

// Known returns the known value x. NaN and the infinities are no knowledge:
// for them Known returns the unknown value.
func Known(x float64) Value { return route.Known(x) }

// A Limit is a limit that paddlers set themselves. Its zero value is a limit
// that was not asked for, which differs from one whose value is unknown: a
// limit that was asked for and cannot be compared is an unknown finding.
type Limit struct {
	x     float64
	asked bool
}

// Ask returns the limit x. A limit of NaN is asked for and can never be met.
func Ask(x float64) Limit { return Limit{x, true} }

// Get returns the limit and whether it was asked for.
func (l Limit) Get() (x float64, asked bool) { return l.x, l.asked }
