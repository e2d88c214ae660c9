package tide

import (
	"fmt"
	"math"
	"sort"
	"time"

	"followingsea.example/internal/clock"
)

// An Event is what a current table prints: a slack or an extreme of rate.
type Event uint8

// The events, by the sign of the velocity along the axis. Flood and ebb need
// not alternate: two maxima of the ebb with a weakest ebb and no slack between
// are common where a permanent flow runs.
const (
	SlackBeforeFlood Event = iota
	MaxFlood
	MinFlood // the weakest flood between two maxima
	SlackBeforeEbb
	MaxEbb
	MinEbb // the weakest ebb between two maxima
)

// String returns the name of the event.
func (e Event) String() string {
	switch e {
	case SlackBeforeFlood:
		return "slack before flood"
	case MaxFlood:
		return "maximum flood"
	case MinFlood:
		return "minimum flood"
	case SlackBeforeEbb:
		return "slack before ebb"
	case MaxEbb:
		return "maximum ebb"
	case MinEbb:
		return "minimum ebb"
	}
	return "unknown event"
}

// Slack reports whether the event is a slack.
func (e Event) Slack() bool { return e == SlackBeforeFlood || e == SlackBeforeEbb }

// Extreme names an extreme of a rate that is positive on the flood: a greatest
// value of it is a maximum flood, or the weakest ebb when it is negative.
func Extreme(rate float64, greatest bool) Event {
	switch {
	case rate < 0 && greatest:
		return MinEbb
	case rate < 0:
		return MaxEbb
	case greatest:
		return MaxFlood
	}
	return MinFlood
}

// A StreamEvent is one line of a current table. The rate is in m/s, positive on the
// flood and negative on the ebb, zero at a slack.
type StreamEvent struct {
	Time time.Time
	Rate float64
	Kind Event
}

// An EventStreams is the stream along an axis between the events of a current
// table: from slack to an extreme and back by the sine of the quarter, each quarter
// with its own duration; between two extremes without a slack by the cosine. It is
// made by NewEventStreams, does not change, and may be used from many goroutines.
type EventStreams struct {
	events     []StreamEvent
	at         []float64
	flood, ebb float64
}

// NewEventStreams returns the streams between the events, which must be in order of
// time, with the sets of flood and ebb in degrees true. ErrValue names the event
// whose rate has the wrong sign for its kind or which cannot follow the one before
// it: two slacks with no maximum between, or an ebb after a slack before flood.
func NewEventStreams(events []StreamEvent, flood, ebb float64) (*EventStreams, error) {
	if !(math.Abs(flood) <= 360 && math.Abs(ebb) <= 360) {
		return nil, fmt.Errorf("%w: flood %v°, ebb %v°: want directions within 360°", ErrValue, flood, ebb)
	}
	if len(events) < 2 {
		return nil, fmt.Errorf("%w: %d events: want at least 2", ErrValue, len(events))
	}
	s := &EventStreams{append([]StreamEvent(nil), events...), make([]float64, len(events)), flood, ebb}
	for i, e := range events {
		bad := func(want string) error {
			return fmt.Errorf("%w: event %d, %v at %v, rate %v m/s: %s", ErrValue, i+1, e.Kind, e.Time.Format(time.RFC3339), e.Rate, want)
		}
		switch {
		case e.Kind > MinEbb:
			return nil, bad("kind is not known")
		case !(math.Abs(e.Rate) <= fastest):
			return nil, bad(fmt.Sprintf("want a rate within %v m/s", fastest))
		case e.Kind.Slack() && e.Rate != 0:
			return nil, bad("a slack has rate 0")
		case (e.Kind == MaxFlood || e.Kind == MinFlood) && !(e.Rate >= 0):
			return nil, bad("a flood has a positive rate")
		case (e.Kind == MaxEbb || e.Kind == MinEbb) && !(e.Rate <= 0):
			return nil, bad("an ebb has a negative rate")
		}
		s.at[i] = clock.Seconds(events[0].Time, e.Time)
		if i == 0 {
			continue
		}
		p := events[i-1]
		switch {
		case !(s.at[i] > s.at[i-1]):
			return nil, bad("not after the event before it")
		case p.Kind.Slack() && e.Kind.Slack():
			return nil, bad("follows a slack with no maximum between")
		case p.Kind == SlackBeforeFlood && e.Rate < 0, p.Kind == SlackBeforeEbb && e.Rate > 0,
			e.Kind == SlackBeforeFlood && p.Rate > 0, e.Kind == SlackBeforeEbb && p.Rate < 0, p.Rate*e.Rate < 0:
			return nil, bad(fmt.Sprintf("cannot follow %v of rate %v m/s", p.Kind, p.Rate))
		}
	}
	return s, nil
}

// Events returns a copy of the events.
func (s *EventStreams) Events() []StreamEvent { return append([]StreamEvent(nil), s.events...) }

// Rate returns the rate along the axis at the instant in m/s, positive on the flood:
//
//	v = vmax sin(90° t/T)     t from slack, T from slack to maximum
//
// Special cases are:
//
//	Rate = NaN outside the events
//
// Source: [NAVEDTRA14220] ch. 7, velocity of current at any time.
func (s *EventStreams) Rate(at time.Time) float64 {
	x := clock.Seconds(s.events[0].Time, at)
	n := len(s.at)
	if !(x >= 0 && x <= s.at[n-1]) {
		return math.NaN()
	}
	i := sort.SearchFloat64s(s.at, x)
	if s.at[i] == x {
		return s.events[i].Rate
	}
	a, b := s.events[i-1], s.events[i]
	f := (x - s.at[i-1]) / (s.at[i] - s.at[i-1])
	switch {
	case a.Kind.Slack():
		return b.Rate * Sine(f)
	case b.Kind.Slack():
		return a.Rate * Sine(1-f)
	}
	return between(a.Rate, b.Rate, Cosine(f))
}

// Velocity returns the stream at the instant as a vector: toward the flood's
// set or the ebb's.
//
// Special cases are:
//
//	Velocity = {NaN, NaN} outside the events
func (s *EventStreams) Velocity(at time.Time) Velocity {
	r := s.Rate(at)
	if r < 0 {
		return Setting(-r, s.ebb).Velocity()
	}
	return Setting(r, s.flood).Velocity()
}
