package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/wind"
)

// A Leg is one leg of the timeline of a passage: when it is entered and left,
// and everything about its middle.
type Leg struct {
	Number int // from 1
	From   route.Point
	To     route.Point
	Length float64 // m
	Course float64 // in its middle, degrees true
	Enter  time.Time
	Leave  time.Time
	Made   float64 // mean speed over the ground, m/s
	Middle Moment
}

// Timeline returns the passage of a departure leg by leg, on the expected
// speeds, made again from the sources. A passage that ends early has a
// timeline as far as it goes.
//
// The errors are those of Appraise.
func (w *Water) Timeline(depart time.Time) ([]Leg, error) {
	start, err := w.departure(depart)
	if err != nil {
		return nil, err
	}
	legs := w.legs
	var out []Leg
	type passing struct{ along, enter, leave float64 }
	var cells []passing
	var k walk
	w.grid.run(&k, start, laneExpected, func(i int, enter, leave float64) {
		c := w.grid.cells[i]
		if c.leg == len(out) {
			out = append(out, Leg{Number: c.leg + 1, From: legs[c.leg].From, To: legs[c.leg].To, Enter: w.instant(enter)})
		}
		l := &out[c.leg]
		l.Length += c.length
		l.Leave = w.instant(leave)
		cells = append(cells, passing{c.along, enter, leave})
	})
	for n := range out {
		l := &out[n]
		l.Made = l.Length / clock.Seconds(l.Enter, l.Leave)
		middle := w.grid.cells[w.firstCell(n)].along + l.Length/2
		for i, p := range cells {
			c := w.grid.cells[i]
			if middle < p.along || middle > p.along+c.length {
				continue
			}
			t := p.enter + (p.leave-p.enter)*(middle-p.along)/c.length
			m, err := w.Moment(middle, w.instant(t))
			if err != nil {
				return nil, err
			}
			l.Middle, l.Course = m, m.Course
			break
		}
	}
	return out, nil
}

// firstCell returns the first cell of a leg.
func (w *Water) firstCell(leg int) int {
	for i, c := range w.grid.cells {
		if c.leg == leg {
			return i
		}
	}
	return 0
}

// departure returns the seconds of a departure, or an error for one outside
// the prepared time.
func (w *Water) departure(depart time.Time) (float64, error) {
	start := clock.Seconds(w.epoch, depart)
	if !(start >= 0 && start <= w.to) {
		return 0, inputError("departure", depart.Format(time.RFC3339),
			fmt.Sprintf("%s to %s", w.instant(0).Format(time.RFC3339), w.instant(w.to).Format(time.RFC3339)))
	}
	return start, nil
}

// Moment returns everything at a distance along the run at an instant. What is
// not known is NaN in it.
//
// The error wraps ErrInput for a place off the run or an instant outside the
// prepared time.
func (w *Water) Moment(along float64, at time.Time) (Moment, error) {
	if !(along >= 0 && along <= w.length) {
		return Moment{}, inputError("distance along the run", along, fmt.Sprintf("0 to %.0f m", w.length))
	}
	t := w.seconds(at)
	if !(t >= 0 && t <= w.grid.step*float64(w.grid.steps-1)) {
		return Moment{}, inputError("instant", at.Format(time.RFC3339),
			fmt.Sprintf("%s to %s", w.epoch.Format(time.RFC3339), w.instant(w.grid.step*float64(w.grid.steps-1)).Format(time.RFC3339)))
	}
	i := len(w.grid.cells) - 1
	for i > 0 && w.grid.cells[i].along > along {
		i--
	}
	state := w.stateBetween(i, t)
	m := w.moment(i, w.hour(at), state, w.streamAt(i, at))
	m.Along, m.At = along, w.place(along)
	w.reckon(&m, i, state)
	return m, nil
}

// stateBetween interpolates the sea at a cell between the prepared instants:
// heights and periods as numbers, directions the short way round.
func (w *Water) stateBetween(i int, t float64) wind.State {
	states := w.states[w.reaches[w.of[i]].station]
	x := t / w.grid.step
	j := int(x)
	if !(x >= 0) || j >= len(states) {
		return unknownState(w.instant(0))
	}
	f := x - float64(j)
	if f == 0 || j == len(states)-1 {
		return states[j]
	}
	s := states[j]
	s.Sea, s.Old = seaBetween(states[j].Sea, states[j+1].Sea, f), seaBetween(states[j].Old, states[j+1].Old, f)
	return s
}

func seaBetween(a, b wind.Sea, f float64) wind.Sea {
	s := a
	if f >= 0.5 {
		s = b
	}
	s.Hs = a.Hs + f*(b.Hs-a.Hs)
	switch { // a sea of no height has no period and no direction
	case a.Hs == 0:
		s.Tp, s.From = b.Tp, b.From
	case b.Hs == 0:
		s.Tp, s.From = a.Tp, a.From
	default:
		s.Tp = a.Tp + f*(b.Tp-a.Tp)
		s.From = angle.Wrap(a.From + f*angle.Diff(a.From, b.From))
	}
	s.Remarks = a.Remarks | b.Remarks
	return s
}

// WaysOut returns what can be said about each exit from a distance along the
// run at an instant, in a posture.
//
// Errors are those of Moment and of route.Escape.
func (w *Water) WaysOut(along float64, at time.Time, posture route.Posture) ([]route.Out, error) {
	if !(along >= 0 && along <= w.length) {
		return nil, inputError("distance along the run", along, fmt.Sprintf("0 to %.0f m", w.length))
	}
	return w.escape(w.place(along), at, posture).Exits(w.run.Exits)
}

// Postures returns how this paddler gets about when not on a bump: standing,
// kneeling, and lying down with the hands for paddles; none when the cruise
// speed is unknown.
func (w *Water) Postures() []route.Posture {
	cruise, ok := w.paddler.Cruise.Get()
	if !ok {
		return nil
	}
	prone := route.Prone(cruise)
	if p, ok := w.paddler.Prone.Get(); ok {
		prone.Speed = p
	}
	if e, ok := w.paddler.ProneHours.Get(); ok {
		prone.Endurance = e
	}
	return []route.Posture{route.Standing(cruise), route.Kneeling(cruise), prone}
}

// Length returns the length of the run in metres.
func (w *Water) Length() float64 { return w.length }

// Run returns the run.
func (w *Water) Run() route.Run { return w.run }

// Light returns the start and the end of civil twilight at the finish on the
// day of an instant; zero times where there is none that day.
func (w *Water) Light(at time.Time) (dawn, dusk time.Time) {
	d := w.lit(w.seconds(at))
	if math.IsNaN(d.dusk) || d.why != "" {
		return time.Time{}, time.Time{}
	}
	return w.instant(d.dawn), w.instant(d.dusk)
}
