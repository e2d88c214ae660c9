package passage

import "math"

// kept is what a search keeps of one appraisal.
type kept struct {
	states   uint64  // two bits a rule: its State where it was asked for
	margin   float32 // as Appraisal.Margin
	rideable float32 // as Appraisal.Rideable
	early    float32 // s from the departure to the arrival of the fast case; NaN for none
	arrival  float32 // of the expected
	late     float32 // of the slow
	closest  Rule    // as Appraisal.Closest
	state    State
}

// of returns the state of a rule.
func (k *kept) of(r Rule) State { return State(k.states >> (2 * r) & 3) }

// keep appraises a departure without words: its numbers and states are those of
// Appraise.
func (w *Water) keep(start float64, mid, slow, fast *walk) kept {
	w.grid.run3(mid, slow, fast, start)
	k := kept{rideable: float32(math.NaN()), early: span(fast), arrival: span(mid), late: span(slow)}
	if mid.end == arrived {
		k.rideable = float32(mid.catch)
	}
	sum := newTally()
	for r := range ruleCount {
		limit, asked := w.limits[r].Get()
		if !asked {
			continue
		}
		_, s, margin := w.judge(r, limit, start, mid, slow)
		k.states |= uint64(s) << (2 * r)
		sum.add(r, s, margin)
	}
	var margin float64
	k.state, margin, k.closest = sum.total(mid.end == arrived)
	k.margin = float32(margin)
	return k
}

// span is the time a walk takes; NaN when it does not arrive.
func span(k *walk) float32 {
	if k.end != arrived {
		return float32(math.NaN())
	}
	return float32(k.arrival - k.start)
}
