package tide

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
)

// A Bar is a place that needs water: a bar, a reef passage, a slip, a beach.
type Bar struct {
	// Charted is the depth on the chart, metres below the datum. Where the
	// chart gives a drying height (underlined), it is negative: Drying makes it so.
	Charted float64
	// Need is the least depth of water wanted there, metres.
	Need float64
}

// Drying returns the charted depth of a drying height: its negative.
func Drying(height float64) float64 { return -height }

// Depth returns the depth of water in metres over a charted depth when the
// tide stands at height:
//
//	depth = charted depth + height of tide
//
// A drying height is a negative charted depth, and a negative result is ground
// that stands so far above the water.
//
// Special cases are:
//
//	Depth(h, c) = NaN if either is NaN
//
// Source: [ExeterTides] slide on charted depth; [Bowditch2002] ch. 9.
func Depth(height, charted float64) float64 { return charted + height }

// Level returns the height of tide at which the bar has the depth it needs:
// Need − Charted.
//
// Special cases are:
//
//	Level = NaN if either field is NaN
func (b Bar) Level() float64 { return b.Need - b.Charted }

// A Window is an interval of time. Cut says which of its edges is the edge of
// the question rather than an opening or a closing of the water.
type Window struct {
	From, To       time.Time
	CutFrom, CutTo bool
}

// Duration returns the length of the window.
func (w Window) Duration() time.Duration { return w.To.Sub(w.From) }

// Contains reports whether the instant is in the window, edges included.
func (w Window) Contains(at time.Time) bool { return !at.Before(w.From) && !at.After(w.To) }

// Windows returns the intervals of [from, to] in which the bar has at least
// the depth it needs, in order, by the table's rule:
//
//	open from t_lw + D acos(1 − 2F)/π to t_hw + D' (1 − acos(1 − 2F)/π),  F = (level − h_lw)/(h_hw − h_lw)
//
// each limb with its own duration D. Water that is deep enough throughout is
// one window with both edges cut; windows that meet are one; an instant at
// which the level is only touched is none.
//
// What is not known is an error, not a closed or an open window: ErrOutside
// when the table does not span the question, ErrGap when turns are missing in
// it, ErrShape when a rise or fall in it is outside the durations the curve is
// trusted for (Options), ErrValue for numbers that are not finite or a span
// that is not positive.
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters.
func (t *Table) Windows(b Bar, from, to time.Time) ([]Window, error) {
	level := b.Level()
	if math.IsNaN(level) || math.IsInf(level, 0) {
		return nil, fmt.Errorf("%w: bar: charted %v m, need %v m: want finite depths", ErrValue, b.Charted, b.Need)
	}
	return t.windows(level, true, from, to)
}

// Below returns the intervals of [from, to] in which the water stands at or
// below the height: for a beach or a causeway that the tide covers. Errors are
// those of Windows.
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters.
func (t *Table) Below(height float64, from, to time.Time) ([]Window, error) {
	if math.IsNaN(height) || math.IsInf(height, 0) {
		return nil, fmt.Errorf("%w: height %v m: want a finite height", ErrValue, height)
	}
	return t.windows(height, false, from, to)
}

func (t *Table) windows(level float64, above bool, from, to time.Time) ([]Window, error) {
	if !from.Before(to) {
		return nil, fmt.Errorf("%w: window from %v to %v: want a positive span", ErrValue, from.Format(time.RFC3339), to.Format(time.RFC3339))
	}
	first, last := t.Span()
	if from.Before(first) || to.After(last) {
		return nil, fmt.Errorf("%w: %v to %v is not in %v to %v", ErrOutside, from.Format(time.RFC3339), to.Format(time.RFC3339), first.Format(time.RFC3339), last.Format(time.RFC3339))
	}
	var open []Window
	i, _ := t.find(from)
	for ; i < len(t.limbs) && t.turns[i].Time.Before(to); i++ {
		l := Limb{t.turns[i], t.turns[i+1]}
		if !l.To.Time.After(from) {
			continue
		}
		switch t.limbs[i] {
		case missing:
			return nil, fmt.Errorf("%w: between %v and %v", ErrGap, l.From, l.To)
		case short, long:
			return nil, fmt.Errorf("%w: %v from %v to %v: trusted from %v to %v", ErrShape, l.To.Time.Sub(l.From.Time), l.From, l.To, t.opt.Shortest, t.opt.Longest)
		}
		w, ok := l.window(level, above, t.opt.Rule)
		if !ok {
			continue
		}
		if w.From.Before(from) {
			w.From = from
		}
		if w.To.After(to) {
			w.To = to
		}
		if n := len(open); n > 0 && !w.From.After(open[n-1].To) {
			open[n-1].To = w.To
		} else if w.From.Before(w.To) {
			open = append(open, w)
		}
	}
	for i := range open {
		open[i].CutFrom = open[i].From.Equal(from) && t.holds(level, above, from)
		open[i].CutTo = open[i].To.Equal(to) && t.holds(level, above, to)
	}
	return open, nil
}

// holds reports whether the water is beyond the level at the instant, so that
// an edge there is a cut and not a crossing.
func (t *Table) holds(level float64, above bool, at time.Time) bool {
	h := t.Height(at)
	if above {
		return h > level
	}
	return h < level
}

// window returns the part of the limb above (or below) the level.
func (l Limb) window(level float64, above bool, by Rule) (Window, bool) {
	w := Window{From: l.From.Time, To: l.To.Time}
	inFrom, inTo := l.From.Height >= level, l.To.Height >= level
	if !above {
		inFrom, inTo = l.From.Height <= level, l.To.Height <= level
	}
	if inFrom && inTo {
		return w, true
	}
	if !inFrom && !inTo {
		return w, false
	}
	edge, err := clock.After(l.From.Time, l.Elapsed(level, by))
	if err != nil {
		return w, false
	}
	if inFrom {
		w.To = edge
	} else {
		w.From = edge
	}
	return w, true
}
