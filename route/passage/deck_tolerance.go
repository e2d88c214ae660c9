package passage

import (
	"math"
	"sync"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// A Tolerance is how much a limit of one departure stands before it is no
// longer met, one thing changing at a time.
type Tolerance struct {
	Finding  Finding // as planned
	Stronger Edge    // m/s of wind above the forecast
	Lighter  Edge    // m/s below it
	Veered   Edge    // degrees clockwise of it
	Backed   Edge    // degrees the other way
	Later    Edge    // s after the planned start
}

// An Edge is where a limit gives way, between two changes that were tried. Both
// are positive amounts; the nearest change that breaks the limit lies above
// Holds and at or below Breaks.
type Edge struct {
	Holds  float64 // the greatest tried up to which it is met without a break
	Breaks float64 // the next one tried; +Inf when no change tried breaks it
}

// The changes that are tried: round numbers, fine where a forecast is usually
// wrong and coarse beyond.
var (
	triedWind  = []float64{1, 2, 3, 4, 6, 8, 10}   // kn
	triedTurn  = []float64{5, 10, 20, 30, 45, 60}  // degrees
	triedLater = []float64{10, 20, 30, 45, 60, 90} // min
)

// Tolerances returns for each limit of a departure the smallest of the changes
// tried that breaks it: wind stronger or lighter by 1 to 10 knots, veered or
// backed by 5 to 60 degrees, from the start on and throughout, and a start 10 to
// 90 minutes later. A limit that is not met as planned has edges of zero. A later
// start than was prepared breaks a limit, as nothing is known of it, and so does
// a passage more than three times as long as the slow case of the plan. The
// changes are those of [Water.Launch] and a proposal, no published source.
//
// Errors wrap [ErrInput] for a departure outside the prepared time.
func (w *Water) Tolerances(depart time.Time) ([]Tolerance, error) {
	plan, err := w.Appraise(depart)
	if err != nil {
		return nil, err
	}
	out := make([]Tolerance, len(plan.Findings))
	for i, f := range plan.Findings {
		out[i].Finding = f
	}
	until := math.Inf(1)
	if !plan.Late.IsZero() { // a passage three times as long is given up
		until = w.seconds(depart) + 3*clock.Seconds(depart, plan.Late) + w.after + 3600
	}
	wind := func(sign float64) func(float64) (Appraisal, error) {
		return func(x float64) (Appraisal, error) {
			return w.under(forecastError{from: depart, more: sign * x, sea: 1}, until)
		}
	}
	turn := func(sign float64) func(float64) (Appraisal, error) {
		return func(x float64) (Appraisal, error) {
			return w.under(forecastError{from: depart, turn: sign * x, sea: 1}, until)
		}
	}
	later := func(x float64) (Appraisal, error) {
		at, err := clock.After(depart, x)
		if err != nil {
			return Appraisal{}, err
		}
		return w.Appraise(at)
	}
	families := []struct {
		of    func(*Tolerance) *Edge
		tried []float64
		unit  float64
		try   func(float64) (Appraisal, error)
	}{
		{func(t *Tolerance) *Edge { return &t.Stronger }, triedWind, route.Knot, wind(1)},
		{func(t *Tolerance) *Edge { return &t.Lighter }, triedWind, route.Knot, wind(-1)},
		{func(t *Tolerance) *Edge { return &t.Veered }, triedTurn, 1, turn(1)},
		{func(t *Tolerance) *Edge { return &t.Backed }, triedTurn, 1, turn(-1)},
		{func(t *Tolerance) *Edge { return &t.Later }, triedLater, 60, later},
	}
	var all sync.WaitGroup
	for _, e := range families { // each writes its own edges
		all.Go(func() {
			for i := range out {
				if edge := e.of(&out[i]); out[i].Finding.State == Met {
					edge.Breaks = math.Inf(1)
				}
			}
			for _, x := range e.tried {
				a, err := e.try(x * e.unit)
				for i := range out {
					edge := e.of(&out[i])
					switch {
					case !math.IsInf(edge.Breaks, 1):
					case err == nil && a.Findings[i].State == Met:
						edge.Holds = x * e.unit
					default: // broken, unknown, or a day that cannot be worked out
						edge.Breaks = x * e.unit
					}
				}
			}
		})
	}
	all.Wait()
	return out, nil
}
