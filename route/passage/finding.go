package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/route"
)

// A Finding is what came of one limit: the value that decided it, where and
// when it was met with, and how far it lies inside or outside the limit.
type Finding struct {
	Rule   Rule
	State  State
	Value  float64     // the value that decided, in the rule's unit; NaN when unknown
	Limit  float64     // as set by the paddler
	Margin float64     // how far inside the limit, negative outside; NaN when unknown
	Along  float64     // m from the start of the run; NaN when it belongs to no place
	At     route.Point // the place; only when Along is a number
	Time   time.Time   // when; zero when it belongs to no instant
	Why    string      // why it is unknown, or what the value is made of
}

// steps returns a margin in comfortable steps of the quantity, by which
// unlike limits are compared. A rule that only asks whether has no distance to
// its limit: kept, it is never the closest.
func (r Rule) steps(margin float64, s State) float64 {
	if r.Unit() == "bool" && s == Met {
		return math.Inf(1)
	}
	return margin / ruleFacts[r].scale
}

// String says the finding in one line, in SI units.
func (f Finding) String() string {
	s := fmt.Sprintf("%s %.4g %s: %s", f.Rule.Words(), f.Limit, f.Rule.Unit(), f.State)
	if f.State != Unknown {
		s += fmt.Sprintf(" (%.4g)", f.Value)
	}
	if f.Why != "" {
		s += ", " + f.Why
	}
	return s
}
