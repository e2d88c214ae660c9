package passage

import (
	"fmt"
	"math"
	"sort"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/wave/ride"
)

// A Debrief is a track that was recorded, beside what would have been planned
// for the instant at which it began.
type Debrief struct {
	Plan      Appraisal
	Finish    time.Time // when the track is at the end of the run; zero when it does not get there
	Gone      float64   // m along the run, as far as the track gets
	Over      float64   // m over the ground, all turns counted
	Legs      []LegBack
	Riding    float64 // share of the time ridden; NaN when it cannot be told
	RidingWhy string  // why not
}

// A LegBack is one leg of a debrief, as far as it was paddled.
type LegBack struct {
	Number    int // from 1
	Enter     time.Time
	Leave     time.Time
	Length    float64 // m of it that were gone
	PlanEnter time.Time
	PlanLeave time.Time // zero beyond where the plan ends

	Made        float64        // m/s along the leg
	PlanMade    float64        // m/s
	Through     float64        // m/s through the water along the leg: made good less the stream of the tables; NaN when that is not known
	PlanThrough float64        // m/s, of the ride in the middle of the leg at the time it was passed
	Farthest    float64        // m off the line, the greatest; positive to the right
	Set         route.Velocity // from where the planned heading and speed lead to where the board was
	Stream      route.Velocity // of the tables in the middle of the leg, to compare

	Riding     float64 // share of the time faster through the water than a sprint on flat water in that wind; NaN when it cannot be told
	PlanRiding float64 // the same of the ride

	sea   ride.Sea
	known bool
}

// Limits of what a debrief reads from a track.
const (
	farFromRun  = 3000.0 // m, beyond which a track is of another run
	rideLeast   = 2.0    // s between the positions of which a speed is made: less, and the error of a position is the speed
	rideMost    = 10.0   // s: more, and the rides are between the positions
	rideCovered = 0.8    // share of the time that must lie between positions that close
)

// Debrief compares a recorded track with the plan for the instant of its first
// fix. A track that dawdles at the launch is cut by whoever recorded it.
//
// Set is the velocity from where the planned heading and the planned speed
// through the water, kept up over the leg, lead from its first position, to
// its last position: stream, leeway and every error of steering and speed
// together, as dead reckoning has it; it says most where the heading was held.
// Time is ridden while the speed through the water (over the ground less the
// stream of the tables) is above that of a sprint on flat water in that wind.
// Fixes more than ten seconds apart do not show rides.
//
// Errors wrap [ErrInput] for a track that is planned, is not in order, has fewer
// than two fixes, begins outside the prepared time or is nowhere within 3 km of
// the run; or are those of the path.
func (w *Water) Debrief(t route.Track) (Debrief, error) {
	if err := t.Check(); err != nil {
		return Debrief{}, err
	}
	if t.Planned || len(t.Fixes) < 2 {
		return Debrief{}, inputError("track", fmt.Sprintf("planned %v, of %d fixes", t.Planned, len(t.Fixes)), "one that was recorded, of two fixes or more")
	}
	path, err := route.NewPath(w.run.Points...)
	if err != nil {
		return Debrief{}, err
	}
	var d Debrief
	if d.Plan, err = w.Appraise(t.Fixes[0].Time); err != nil {
		return Debrief{}, fmt.Errorf("the start of the track: %w", err)
	}
	b := back{w: w, fixes: t.Fixes, start: w.seconds(t.Fixes[0].Time)}
	nearest := math.Inf(1)
	for i, f := range t.Fixes {
		c, err := path.Closest(f.Point)
		if err != nil {
			return Debrief{}, err
		}
		nearest = math.Min(nearest, c.Distance)
		right := c.Right
		if c.Along <= 0 || c.Along >= path.Length() { // beside an end, which is no distance off the line
			right = 0
		}
		b.right = append(b.right, right)
		// The farthest yet: a board that is blown back has not gone its leg again.
		along := c.Along
		if i > 0 {
			along = math.Max(along, b.along[i-1])
			d.Over += route.ShortDistance(t.Fixes[i-1].Point, f.Point)
		}
		b.along = append(b.along, along)
	}
	if !(nearest <= farFromRun) {
		return Debrief{}, inputError("track", fmt.Sprintf("%.0f m from the run at its nearest", nearest), "a track of this run")
	}
	d.Gone = b.along[len(b.along)-1]
	plan := w.pace(b.start)
	from := 0.0
	var ridden, looked, lasted float64
	for n, l := range w.run.Legs() {
		// The first fix may lie some way along it already.
		first, to := math.Max(from, b.along[0]), math.Min(from+l.Distance, d.Gone)
		from += l.Distance
		if to-first < 1 {
			continue
		}
		leg, r, err := b.leg(n, first, to, plan)
		if err != nil {
			return Debrief{}, err
		}
		d.Legs = append(d.Legs, leg)
		ridden, looked, lasted = ridden+r.ridden, looked+r.looked, lasted+r.lasted
	}
	const close = 1.0 // m short of the end that count as the end
	if d.Gone >= w.length-close {
		d.Finish = w.instant(b.when(d.Gone))
	}
	d.Riding, d.RidingWhy = riding{ridden, looked, lasted}.share()
	return d, nil
}

// A back is a track on its way through the legs.
type back struct {
	w     *Water
	fixes []route.Fix
	along []float64 // of each fix, never less than before
	right []float64
	start float64 // s after the epoch
}

// when returns the seconds after the epoch at which the track first is at a
// distance along the run.
func (b *back) when(along float64) float64 {
	i := sort.SearchFloat64s(b.along, along)
	switch {
	case i == 0:
		return b.start
	case i == len(b.along):
		return b.w.seconds(b.fixes[i-1].Time)
	}
	f := (along - b.along[i-1]) / (b.along[i] - b.along[i-1])
	t := b.w.seconds(b.fixes[i-1].Time)
	return t + f*(b.w.seconds(b.fixes[i].Time)-t)
}

// at returns where the track is at t seconds after the epoch.
func (b *back) at(t float64) route.Point {
	i := sort.Search(len(b.fixes), func(i int) bool { return b.w.seconds(b.fixes[i].Time) >= t })
	if i == 0 {
		return b.fixes[0].Point
	}
	if i == len(b.fixes) {
		return b.fixes[i-1].Point
	}
	from, to := b.w.seconds(b.fixes[i-1].Time), b.w.seconds(b.fixes[i].Time)
	l := route.ShortInverse(b.fixes[i-1].Point, b.fixes[i].Point)
	if !(to > from) || l.Distance == 0 {
		return b.fixes[i].Point
	}
	return l.At(l.Distance * (t - from) / (to - from))
}

// leg debriefs one leg from one distance along the run to another.
func (b *back) leg(n int, from, to float64, plan route.Pace) (LegBack, riding, error) {
	w := b.w
	enter, leave := b.when(from), b.when(to)
	l := LegBack{Number: n + 1, Enter: w.instant(enter), Leave: w.instant(leave), Length: to - from, Made: math.NaN(),
		PlanMade: math.NaN(), Through: math.NaN(), Set: route.Velocity{East: math.NaN(), North: math.NaN()}}
	if leave > enter {
		l.Made = (to - from) / (leave - enter)
	}
	in, out := plan(from), plan(to)
	if in == in {
		l.PlanEnter = w.instant(b.start + in)
	}
	if out == out {
		l.PlanLeave, l.PlanMade = w.instant(b.start+out), (to-from)/(out-in)
	}
	m, err := w.Moment((from+to)/2, w.instant((enter+leave)/2))
	if err != nil {
		return l, riding{}, err
	}
	l.Stream, l.PlanThrough, l.PlanRiding = m.Stream, m.Speed, math.NaN()
	if m.Speed == m.Speed {
		l.PlanRiding = m.Ride.RidingShare
	}
	elapsed := leave - enter
	if along, _ := m.Stream.Resolve(m.Course); along == along {
		l.Through = l.Made - along
	}
	if m.Heading == m.Heading && elapsed > 0 {
		reckoned := route.Direct(b.at(enter), m.Heading, m.Speed*elapsed).To
		l.Set = route.SetAndDrift(reckoned, b.at(leave), elapsed)
	}
	air := route.Velocity(m.Wind.Velocity())
	l.sea, l.known = m.rideSea(air.Sub(m.Stream))
	var r riding
	for i, f := range b.fixes {
		if t := w.seconds(f.Time); t < enter || t > leave {
			continue
		}
		if math.Abs(b.right[i]) > math.Abs(l.Farthest) {
			l.Farthest = b.right[i]
		}
	}
	r = b.rides(enter, leave, m)
	l.Riding, _ = r.share()
	return l, r, nil
}

// A riding is time looked at for rides.
type riding struct {
	ridden, looked, lasted float64 // s
}

// share is the share of the time ridden, or why it cannot be told.
func (r riding) share() (float64, string) {
	switch {
	case !(r.lasted > 0):
		return math.NaN(), "the track has no length in time"
	case r.looked != r.looked:
		return math.NaN(), "the stream, or the speed of a sprint in that wind, is not known"
	case !(r.looked >= rideCovered*r.lasted):
		return math.NaN(), fmt.Sprintf("the fixes are more than %.0f s apart", rideMost)
	}
	return r.ridden / r.looked, ""
}

// rides looks for rides between two instants.
func (b *back) rides(enter, leave float64, m Moment) riding {
	r := riding{lasted: leave - enter}
	sprint := m.Ride.SprintSpeed
	if !(sprint > 0) || m.Speed != m.Speed || m.Stream.East+m.Stream.North != m.Stream.East+m.Stream.North {
		r.looked = math.NaN()
		return r
	}
	last := -1
	for i, f := range b.fixes {
		t := b.w.seconds(f.Time)
		if t < enter || t > leave {
			continue
		}
		if last < 0 {
			last = i
			continue
		}
		dt := clock.Seconds(b.fixes[last].Time, f.Time)
		if dt < rideLeast {
			continue
		}
		if dt <= rideMost {
			leg := route.ShortInverse(b.fixes[last].Point, f.Point)
			v := route.Velocity{}
			if leg.Distance > 0 {
				v = route.Toward(leg.Distance/dt, leg.Mean())
			}
			r.looked += dt
			if v.Sub(m.Stream).Speed() > sprint {
				r.ridden += dt
			}
		}
		last = i
	}
	return r
}

// Calibrated returns the paddler with the resistance of the board that makes
// the rides of the plan as fast as the track was: for each leg on which the
// speed through the water and the sea are known, the resistance that gives that
// speed in that sea by [ride.Paddler.WithDownwindMean], and of those the mean
// by time. Whatever else was wrong, the forecast and the paddler's mood
// included, ends up in it. Take several days before one is believed. Proposal,
// no published source.
//
// Errors wrap [ErrInput] for a party, which has no one resistance, a paddler
// without a cruise speed, or a track of which no leg can be used.
func (w *Water) Calibrated(d Debrief) (Paddler, error) {
	if len(w.people) != 1 {
		return Paddler{}, inputError("party", fmt.Sprintf("of %d", len(w.people)), "one paddler: each has a resistance of their own")
	}
	p := w.people[0].Paddler
	if _, ok := p.Cruise.Get(); !ok {
		return Paddler{}, inputError("cruise speed", "unknown", "a speed")
	}
	var sum, weight float64
	why := "no leg has both"
	for _, l := range d.Legs {
		if !l.known || l.Through != l.Through {
			continue
		}
		r, err := p.rider().WithDownwindMean(l.sea, l.Through)
		if err != nil {
			why = err.Error()
			continue
		}
		dt := clock.Seconds(l.Enter, l.Leave)
		sum, weight = sum+dt*r.Drag, weight+dt
	}
	if !(weight > 0) {
		return Paddler{}, inputError("track", "without a leg that can be used", "a known sea and a speed through the water that the ride can have; "+why)
	}
	p.Drag = Known(sum / weight)
	return p, nil
}

// rider is the paddler as package ride has them.
func (p Paddler) rider() ride.Paddler {
	return ride.Paddler{Cruise: p.Cruise.Or(0), Sprint: p.Sprint.Or(0), Mass: p.Mass.Or(0), Length: p.BoardLength.Or(0), Drag: p.Drag.Or(0)}
}
