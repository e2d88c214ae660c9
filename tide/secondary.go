package tide

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
)

// A secondary port has no predictions of its own: its high and low waters are
// those of a standard port, moved in time and height. Three national styles:
//
//	Admiralty   differences tabulated for two clock times of the standard port's
//	            turn and for two of its heights, straight between (Differences)
//	American    fixed time offsets; heights by a ratio or by addition (Offsets)
//	Queensland  height = ratio × standard + constant (Offsets, ByRatioAndConstant)
//
// Only the turns are defined so: between them interpolate as in any Table.

// A ClockMark is a tabulated time difference: the clock time of the standard
// port's turn and the difference there, both in seconds.
type ClockMark struct {
	Clock      float64 // seconds since midnight, in the standard port's zone
	Difference float64 // seconds to add
}

// TimeDifference returns the time difference in seconds for a turn of the
// standard port at a clock time, straight between the two marks around it. The
// marks are in order of clock time and go round the 24 hours: after the last
// comes the first of the next day. Give every clock time that the table
// prints (such as 0000, 0600, 1200 and 1800).
//
// Special cases are:
//
//	TimeDifference(c, one mark) = its difference
//	TimeDifference(c) = NaN without marks, for c or a mark's clock outside 0 to 86400, marks out of order, or any of them NaN or infinite
//
// Source: [NauticAliveSecondary] whole page.
func TimeDifference(clockTime float64, marks ...ClockMark) float64 {
	const day = 86400.0
	n := len(marks)
	if n == 0 || !(clockTime >= 0 && clockTime <= day) {
		return math.NaN()
	}
	for i, m := range marks {
		if !(m.Clock >= 0 && m.Clock <= day) || math.IsNaN(m.Difference) || math.IsInf(m.Difference, 0) || i > 0 && !(m.Clock > marks[i-1].Clock) {
			return math.NaN()
		}
	}
	if n == 1 {
		return marks[0].Difference
	}
	a, b := marks[n-1], marks[0] // around midnight
	for i := 1; i < n; i++ {
		if clockTime >= marks[i-1].Clock && clockTime <= marks[i].Clock {
			a, b = marks[i-1], marks[i]
		}
	}
	length, since := b.Clock-a.Clock, clockTime-a.Clock
	if length <= 0 {
		length += day
	}
	if since < 0 {
		since += day
	}
	if length == 0 {
		return a.Difference
	}
	return a.Difference + (b.Difference-a.Difference)*since/length
}

// HeightDifference returns the height difference in metres for a turn of the
// standard port of the given height, straight through the two tabulated marks
// (mean springs and mean neaps) and beyond them:
//
//	d = d1 + (d2 − d1) (h − h1)/(h2 − h1)
//
// Special cases are:
//
//	HeightDifference = the difference of both when both marks are the same
//	HeightDifference = NaN if any is NaN or infinite, or two differences stand at one height
//
// Source: [NauticAliveSecondary] (the straight line; its height form).
func HeightDifference(height float64, a, b Mark) float64 {
	for _, x := range [...]float64{height, a.At, a.Value, b.At, b.Value} {
		if !finite(x) {
			return math.NaN()
		}
	}
	if a == b {
		return a.Value
	}
	if a.At == b.At {
		return math.NaN()
	}
	return a.Value + (b.Value-a.Value)*((height-a.At)/(b.At-a.At))
}

// Differences are those of a secondary port in the Admiralty style.
type Differences struct {
	HighTimes, LowTimes []ClockMark // of high and of low waters
	// Height differences at the standard port's heights: mean high water springs
	// and neaps, mean low water neaps and springs. The zero value adds nothing.
	HighHeights, LowHeights [2]Mark
	// Zone is the zone of the clock times, the standard port's own: never
	// daylight time. Nil is UTC.
	Zone *time.Location
	// Seasonal changes of mean level in metres: that of the standard port is
	// taken off before the differences, that of the secondary port put on after.
	SeasonalStandard, SeasonalSecondary float64
}

// Apply returns the turns of the secondary port from those of the standard
// port. ErrValue names the turn whose difference cannot be found, ErrTurns one that falls
// behind the turn before it.
func (d Differences) Apply(standard []Turn) ([]Turn, error) {
	zone := d.Zone
	if zone == nil {
		zone = time.UTC
	}
	out := make([]Turn, len(standard))
	for i, u := range standard {
		marks, heights := d.LowTimes, d.LowHeights
		if u.High {
			marks, heights = d.HighTimes, d.HighHeights
		}
		local := u.Time.In(zone)
		c := float64(local.Hour()*3600+local.Minute()*60+local.Second()) + float64(local.Nanosecond())*1e-9
		dt := TimeDifference(c, marks...)
		h := u.Height - d.SeasonalStandard
		h += HeightDifference(h, heights[0], heights[1]) + d.SeasonalSecondary
		at, err := clock.After(u.Time, dt)
		if err != nil || math.IsNaN(h) || math.IsInf(h, 0) {
			return nil, fmt.Errorf("%w: turn %d, %v: no difference from time marks %v, height marks %v", ErrValue, i+1, u, marks, heights)
		}
		out[i] = Turn{at, h, u.High}
	}
	return out, inOrder(out)
}

// inOrder returns ErrTurns when shifted turns overtake each other.
func inOrder(turns []Turn) error {
	for i := 1; i < len(turns); i++ {
		if !turns[i].Time.After(turns[i-1].Time) {
			return fmt.Errorf("%w: turn %d, %v: not after %v", ErrTurns, i+1, turns[i], turns[i-1])
		}
	}
	return nil
}

// A Correction turns a height at the standard port into one at the secondary
// port. It is made by ByRatio, ByAddition or ByRatioAndConstant; the zero
// value leaves heights as they are.
type Correction struct {
	less float64 // ratio − 1, so that the zero value is no correction
	plus float64
}

// ByRatio multiplies the height above the datum, also when it is negative.
func ByRatio(ratio float64) Correction { return Correction{less: ratio - 1} }

// ByAddition adds metres to the height.
func ByAddition(metres float64) Correction { return Correction{plus: metres} }

// ByRatioAndConstant multiplies the height and adds metres: the style of the
// Queensland tables.
func ByRatioAndConstant(ratio, metres float64) Correction { return Correction{ratio - 1, metres} }

// Of returns the corrected height: ratio × height + constant.
//
// Special cases are:
//
//	Of = NaN if the height or the correction is NaN or infinite
//
// Source: [NOAA-Hilo] subordinate stations; [AllShips] secondary places.
func (c Correction) Of(height float64) float64 {
	h := height + c.less*height + c.plus
	if math.IsInf(h, 0) {
		return math.NaN()
	}
	return h
}

// Offsets are those of a secondary port in the American style: times and
// heights of high and low waters each by one rule.
type Offsets struct {
	HighTime, LowTime time.Duration
	High, Low         Correction
}

// Apply returns the turns of the secondary port from those of the reference
// station. Dates carry themselves. ErrValue names the turn whose height is not
// finite, ErrTurns one that falls behind the turn before it.
func (o Offsets) Apply(reference []Turn) ([]Turn, error) {
	out := make([]Turn, len(reference))
	for i, u := range reference {
		dt, c := o.LowTime, o.Low
		if u.High {
			dt, c = o.HighTime, o.High
		}
		h := c.Of(u.Height)
		if math.IsNaN(h) {
			return nil, fmt.Errorf("%w: turn %d, %v: height with correction %+v", ErrValue, i+1, u, c)
		}
		out[i] = Turn{u.Time.Add(dt), h, u.High}
	}
	return out, inOrder(out)
}

// StreamOffsets are those of a subordinate current station: a time offset for
// each kind of event and a ratio of speed for flood and ebb. The reference of
// a published offset is a station and a depth, and its events those of its
// own table.
type StreamOffsets struct {
	SlackBeforeFlood, Flood, SlackBeforeEbb, Ebb time.Duration
	FloodRatio, EbbRatio                         float64
}

// Apply returns the events of the subordinate station from those of its
// reference station. ErrValue names a ratio that is negative or not finite, or
// an event that falls behind the one before it.
func (o StreamOffsets) Apply(reference []StreamEvent) ([]StreamEvent, error) {
	if !(o.FloodRatio >= 0 && o.EbbRatio >= 0) || math.IsInf(o.FloodRatio+o.EbbRatio, 0) {
		return nil, fmt.Errorf("%w: ratios %v flood, %v ebb: want 0 or more", ErrValue, o.FloodRatio, o.EbbRatio)
	}
	out := make([]StreamEvent, len(reference))
	for i, e := range reference {
		switch e.Kind {
		case SlackBeforeFlood:
			e.Time = e.Time.Add(o.SlackBeforeFlood)
		case SlackBeforeEbb:
			e.Time = e.Time.Add(o.SlackBeforeEbb)
		case MaxFlood, MinFlood:
			e.Time, e.Rate = e.Time.Add(o.Flood), e.Rate*o.FloodRatio
		case MaxEbb, MinEbb:
			e.Time, e.Rate = e.Time.Add(o.Ebb), e.Rate*o.EbbRatio
		}
		if i > 0 && !e.Time.After(out[i-1].Time) {
			return nil, fmt.Errorf("%w: event %d, %v at %v: not after the event before it", ErrValue, i+1, e.Kind, e.Time.Format(time.RFC3339))
		}
		out[i] = e
	}
	return out, nil
}
