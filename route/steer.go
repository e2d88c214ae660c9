package route

import (
	"errors"
	"fmt"
	"math"
)

// Errors of headings found by iteration and of plans over several hours.
var (
	// ErrNotConverged: no heading was found that agrees with the speed on it.
	ErrNotConverged = errors.New("route: heading and speed on it do not settle")
	// ErrNotReached: the goal is not reached while the stream is known.
	ErrNotReached = errors.New("route: goal not reached while the stream is known")
)

// HoldTrackVarying is [HoldTrack] for a board whose speed through the water
// depends on its heading, as any board's does in wind and waves. The heading is
// iterated, h -> speed(h) -> h, and where that does not settle in 50 passes,
// all headings are searched for those that hold the track, 2 degrees at a time
// and halving, and the one with the largest speed made good is taken.
//
// speed must return metres a second for a heading in degrees; zero, negative or
// NaN mean that nothing can be paddled there. A nil speed panics.
//
// Errors are those of [HoldTrack], with ErrNoProgress also for a board that has
// no speed on any heading, and ErrNotConverged where the speed jumps in such a
// way that no heading agrees with itself.
//
// Source: [Williams2013] wind triangles (2), iterated.
func HoldTrackVarying(track float64, speed func(heading float64) float64, water Velocity) (Steer, error) {
	if speed == nil {
		panic("route: HoldTrackVarying: nil speed")
	}
	if err := checkTriangle(track, 0, water); err != nil {
		return Steer{}, err
	}
	along, right := water.Resolve(track)
	h := wrapDeg(track)
	for range 50 {
		v := speed(h)
		next, made := HeadingFor(track, v, water)
		if math.IsNaN(next) {
			break
		}
		if math.Abs(wrapLon(next-h)) < 1e-9 {
			return Steer{Heading: next, Correction: wrapLon(next - track), Track: wrapDeg(track), SpeedMade: made, Water: v}, nil
		}
		h = next
	}
	// miss is the speed across the track on a heading that is off it by d.
	miss := func(d float64) float64 {
		v := speed(wrapDeg(track + d))
		if !(v > 0) {
			return math.NaN()
		}
		s, _ := sincosd(d)
		return v*s + right
	}
	best, jump := Steer{SpeedMade: math.Inf(-1)}, false
	consider := func(d float64) {
		v := speed(wrapDeg(track + d))
		_, c := sincosd(d)
		if made := v*c + along; made > best.SpeedMade {
			best = Steer{Heading: wrapDeg(track + d), Correction: wrapLon(d), Track: wrapDeg(track), SpeedMade: made, Water: v}
		}
	}
	const stride = 2.0
	lo, still := miss(-180), true
	for d := -180.0; d < 180; d += stride {
		hi := miss(d + stride)
		still = still && math.IsNaN(hi)
		switch {
		case lo == 0:
			consider(d)
		case lo < 0 && hi > 0 || lo > 0 && hi < 0:
			a, b, fa := d, d+stride, lo
			for range 60 {
				m := (a + b) / 2
				f := miss(m)
				if !(f*fa <= 0) {
					a, fa = m, f
				} else {
					b = m
				}
			}
			if m := (a + b) / 2; math.Abs(miss(m)) < 1e-9 {
				consider(m)
			} else {
				jump = true
			}
		}
		lo = hi
	}
	switch {
	case best.SpeedMade > 0:
		return best, nil
	case still:
		return Steer{}, fmt.Errorf("%w: the board has no speed on any heading", ErrNoProgress)
	case jump:
		return Steer{}, fmt.Errorf("%w: the speed jumps at a heading that would hold the track %.3g", ErrNotConverged, wrapDeg(track))
	case !math.IsInf(best.SpeedMade, -1):
		return Steer{}, fmt.Errorf("%w: %.3g m/s along the track %.3g at best", ErrNoProgress, best.SpeedMade, wrapDeg(track))
	default:
		return Steer{}, fmt.Errorf("%w: %.3g m/s across the track %.3g, and no heading with the speed against it", ErrCrossSet, math.Abs(right), wrapDeg(track))
	}
}

// IntoWind returns the heading that makes a wanted water track, where the wind
// sets the board off its heading by an angle of leeway: the track turned into
// the wind by that angle. The vector form, a leeway added to the stream, is
// the better one for a board; this is the one of the chart table.
//
// Special cases are:
//
//	no wind: the water track
//	a wind from dead ahead or astern: the water track, it sets to no side
//	NaN elsewhere: NaN
//
// Source: [RYA2010] worked example of true to compass.
func IntoWind(waterTrack, leeway float64, wind Velocity) float64 {
	_, right := wind.Resolve(waterTrack)
	switch {
	case math.IsNaN(right) || math.IsNaN(leeway):
		return math.NaN()
	case math.Abs(right) <= 1e-12*wind.Speed():
		return wrapDeg(waterTrack)
	case right > 0: // wind on the left pushes right: turn left
		return wrapDeg(waterTrack - leeway)
	}
	return wrapDeg(waterTrack + leeway)
}

// Stretch is a span of time in which the water moves with one velocity: an
// hour of a stream table.
type Stretch struct {
	Water   Velocity
	Seconds float64
}

// PlanKind names the two ways to cross a stream that changes.
type PlanKind string

// The two plans. They are never mixed: they pass different hazards at
// different times.
const (
	// OneHeading holds one heading throughout and lets the stream carry the
	// board off the line and back. Where the stream depends on time only it is
	// the fastest way over.
	OneHeading PlanKind = "one heading, off the line"
	// OneTrack holds the straight line over the ground and changes its heading
	// with every stretch. It is slower, and passes where the chart says.
	OneTrack PlanKind = "one track, changing heading"
)

// Crossing is a plan over several stretches of stream.
type Crossing struct {
	Kind     PlanKind
	Seconds  float64   // from start to goal
	Headings []float64 // one for each stretch used, degrees true
	Made     []float64 // speed made good in each stretch, m/s
	Track    []float64 // track over the ground in each stretch
	Farthest float64   // how far from the straight line at the ends of the stretches, metres; positive to the right
}

func checkCrossing(leg Leg, speed float64, stream []Stretch) error {
	switch {
	case !(leg.Distance > 0 && finite(leg.Distance)) || math.IsNaN(leg.Mean()):
		return fmt.Errorf("%w: leg of %v m, want a length above 0", ErrInput, leg.Distance)
	case !(speed > 0 && finite(speed)):
		return fmt.Errorf("%w: speed %v m/s, want above 0", ErrInput, speed)
	case len(stream) == 0:
		return fmt.Errorf("%w: no stretch of stream", ErrInput)
	}
	for i, s := range stream {
		if !(s.Seconds > 0 && finite(s.Seconds)) || !finite(s.Water.Speed()) {
			return fmt.Errorf("%w: stretch %d: %v m/s for %v s, want a velocity and a time above 0", ErrInput, i+1, s.Water, s.Seconds)
		}
	}
	return nil
}

// CrossOnOneHeading plans a leg on one heading through a stream that changes
// with time. With S(t) what the stream has carried by t and P the goal, it
// takes the first t with
//
//	|P - S(t)| = speed t,   heading = direction of P - S(t)
//
// cutting a stretch at t. The leg is taken for straight on a plane, with its
// mean course.
//
// Errors are ErrInput, and ErrNotReached if the goal is not reached before the
// last stretch ends.
//
// Source: [Everitt] diagram A (one heading and the curved track).
func CrossOnOneHeading(leg Leg, speed float64, stream []Stretch) (Crossing, error) {
	if err := checkCrossing(leg, speed, stream); err != nil {
		return Crossing{}, err
	}
	goal := Toward(leg.Distance, leg.Mean()) // metres, not a speed
	left, start := goal, 0.0
	for i, s := range stream {
		// |left - w t|² = speed² (start + t)², the smallest t in the stretch.
		w := s.Water
		a := w.East*w.East + w.North*w.North - speed*speed
		b := left.East*w.East + left.North*w.North + speed*speed*start
		c := left.East*left.East + left.North*left.North - speed*speed*start*start
		if t, ok := firstRoot(a, b, c); ok && t <= s.Seconds {
			left = left.Sub(w.Scale(t))
			return oneHeading(leg, goal, left, speed, start+t, stream[:i+1]), nil
		}
		left = left.Sub(w.Scale(s.Seconds))
		start += s.Seconds
	}
	return Crossing{}, fmt.Errorf("%w: %.0f s are not enough for %.0f m at %.3g m/s", ErrNotReached, start, leg.Distance, speed)
}

// firstRoot returns the smallest t >= 0 with a t² - 2 b t + c = 0, for c >= 0.
func firstRoot(a, b, c float64) (float64, bool) {
	disc := b*b - a*c
	if !(disc >= 0) {
		return 0, false
	}
	// c/(b + sqrt) is the smaller positive root for b > 0, whatever the sign
	// of a, and loses nothing where a is small; for b <= 0 it is the only one,
	// and there is one if the sum is above 0.
	q := b + math.Sqrt(disc)
	if q > 0 {
		return c / q, true
	}
	return 0, c == 0
}

func oneHeading(leg Leg, goal, through Velocity, speed, seconds float64, stream []Stretch) Crossing {
	h := through.Toward()
	if math.IsNaN(h) { // the stream alone does it
		h = leg.Mean()
	}
	x := Crossing{Kind: OneHeading, Seconds: seconds}
	var at Velocity
	rest := seconds
	own := Toward(speed, h)
	for _, s := range stream {
		d := math.Min(s.Seconds, rest)
		rest -= d
		g := own.Add(s.Water)
		at = at.Add(g.Scale(d))
		if _, right := at.Resolve(goal.Toward()); math.Abs(right) > math.Abs(x.Farthest) && rest > 0 {
			x.Farthest = right
		}
		x.Headings = append(x.Headings, h)
		x.Made = append(x.Made, g.Speed())
		x.Track = append(x.Track, g.Toward())
	}
	return x
}

// CrossOnOneTrack plans a leg that holds the straight line through a stream
// that changes with time, with a new heading for every stretch.
//
// Errors are ErrInput, ErrNotReached as for [CrossOnOneHeading], and ErrCrossSet
// or ErrNoProgress with the number of the stretch in which the line cannot be
// held.
//
// Source: [Williams2013] wind triangles (2), stretch by stretch.
func CrossOnOneTrack(leg Leg, speed float64, stream []Stretch) (Crossing, error) {
	if err := checkCrossing(leg, speed, stream); err != nil {
		return Crossing{}, err
	}
	x := Crossing{Kind: OneTrack}
	left := leg.Distance
	for i, s := range stream {
		st, err := HoldTrack(leg.Mean(), speed, s.Water)
		if err != nil {
			return Crossing{}, fmt.Errorf("stretch %d: %w", i+1, err)
		}
		x.Headings = append(x.Headings, st.Heading)
		x.Made = append(x.Made, st.SpeedMade)
		x.Track = append(x.Track, st.Track)
		if t := left / st.SpeedMade; t <= s.Seconds {
			x.Seconds += t
			return x, nil
		}
		x.Seconds += s.Seconds
		left -= st.SpeedMade * s.Seconds
	}
	return Crossing{}, fmt.Errorf("%w: %.0f m of %.0f m left after %.0f s", ErrNotReached, left, leg.Distance, x.Seconds)
}
