package passage

import (
	"fmt"
	"math"
	"sort"
	"time"
)

// A Handling is how a run felt to whoever paddled it, in their own word.
type Handling uint8

// The handlings. What nobody said is not counted as in hand.
const (
	Unsaid  Handling = iota
	InHand           // with something left over
	Hard             // at the edge
	Trouble          // a rescue, a separation, an injury, or luck
)

// String returns "unsaid", "in hand", "hard" or "trouble".
func (h Handling) String() string {
	switch h {
	case InHand:
		return "in hand"
	case Hard:
		return "hard"
	case Trouble:
		return "trouble"
	}
	return "unsaid"
}

// An Outing is one logged run: of each rule the value that was met with, and
// how it was handled.
type Outing struct {
	Time     time.Time
	Values   [ruleCount]Value
	Handling Handling
}

// Outing makes an entry of the log of an appraisal: the values of its findings,
// unknown where they are, and how it was handled. Appraise the run as it was,
// on the record of the day and not on the forecast.
func (a Appraisal) Outing(h Handling) Outing {
	o := Outing{Time: a.Depart, Handling: h}
	for _, f := range a.Findings {
		if f.State != Unknown {
			o.Values[f.Rule] = Known(f.Value)
		}
	}
	return o
}

// A Step is a change to one limit.
type Step struct {
	Rule     Rule
	From, To float64 // in the rule's unit
	Back     bool    // it makes the limit tighter
	Runs     int     // outings that speak for it
	Why      string
}

// The rule of the progression: how many runs, how near the limit, how recent.
const (
	stepRuns   = 3   // outings in hand near the limit
	stepLast   = 3   // the latest outings, none of which was trouble
	stepWithin = 120 // days
)

// progressive are the limits that grow with skill. The others are margins:
// light, depth, exits, reserve, warnings and cold are not learnt away.
var progressive = []Rule{GreatestWind, GreatestGust, GreatestOffStern, GreatestSea, GreatestSwell, GreatestSteepness, GreatestStream, GreatestAgainst, GreatestDuration}

// stepOf is one step of a rule: half of what counts as a comfortable step of
// its quantity (2 knots of wind, 15 cm of sea, a quarter of an hour).
func (r Rule) stepOf() float64 { return ruleFacts[r].scale / 2 }

// NextStep returns the next modest step that a log speaks for, and whether
// there is one. It is one limit at a time, by this rule:
//
//   - only outings of the last 120 days count;
//   - if any of the latest three was trouble, the step is back: of the limits
//     that grow with skill, the one that the latest such outing was nearest to
//     becomes half a comfortable step tighter than what was met with;
//   - else a limit may grow by half a comfortable step when at least three
//     outings in hand met with a value within a comfortable step of it and not
//     beyond it, and the latest outing that near was in hand;
//   - of the limits that may, the one with most such outings; of equals the
//     first in the order of [Rules].
//
// The limits that grow are those of wind, gust, angle, sea, swell, steepness,
// stream and duration. Proposal, no published source: it is a coach's habit
// written down, and no coach.
func NextStep(limits Limits, log []Outing, now time.Time) (Step, bool) {
	var recent []Outing
	for _, o := range log {
		if days := now.Sub(o.Time).Hours() / 24; days >= 0 && days <= stepWithin {
			recent = append(recent, o)
		}
	}
	sort.SliceStable(recent, func(i, j int) bool { return recent[i].Time.Before(recent[j].Time) })
	for i := len(recent) - 1; i >= max(0, len(recent)-stepLast); i-- {
		if recent[i].Handling == Trouble {
			return stepBack(limits, recent[i])
		}
	}
	var best Step
	for _, r := range progressive {
		limit, asked := limits[r].Get()
		if _, hi := r.plausible(); !asked || !(limit+r.stepOf() <= hi) {
			continue
		}
		runs, last := 0, Unsaid
		for _, o := range recent {
			x, ok := o.Values[r].Get()
			if !ok || !(x >= limit-ruleFacts[r].scale) {
				continue
			}
			last = o.Handling
			if x <= limit && o.Handling == InHand {
				runs++
			}
		}
		if runs >= stepRuns && last == InHand && runs > best.Runs {
			best = Step{Rule: r, From: limit, To: limit + r.stepOf(), Runs: runs,
				Why: fmt.Sprintf("%d runs in hand within %s of the limit in %d days", runs, r.said(ruleFacts[r].scale), stepWithin)}
		}
	}
	return best, best.Runs > 0
}

// stepBack tightens the limit that an outing that was trouble was nearest to.
func stepBack(limits Limits, o Outing) (Step, bool) {
	var best Step
	least := math.Inf(1)
	for _, r := range progressive {
		limit, asked := limits[r].Get()
		x, known := o.Values[r].Get()
		if !asked || !known {
			continue
		}
		if margin := (limit - x) / ruleFacts[r].scale; margin < least {
			to := math.Max(math.Min(x, limit)-r.stepOf(), 0)
			if !(to < limit) {
				continue
			}
			least = margin
			best = Step{Rule: r, From: limit, To: to, Back: true, Runs: 1,
				Why: "trouble on " + o.Time.Format("2 January 2006") + " at " + r.said(x)}
		}
	}
	return best, best.Back
}
