package route

import (
	"errors"
	"fmt"
	"math"
)

// The current triangle. A board moves through the water with the velocity b
// (its speed on its heading), the water moves over the ground with s (stream,
// and the leeway of the board if there is any), and the board moves over the
// ground with g = b + s. Each of the three follows from the other two; the
// four questions a navigator asks differ in which parts of which are known.

// Reasons why a track cannot be held, and what was wrong with a question.
var (
	// ErrCrossSet: the stream sets across the track faster than the board
	// can paddle, so that no heading holds it.
	ErrCrossSet = errors.New("route: the stream across the track exceeds the speed of the board")
	// ErrNoProgress: a heading holds the track, but the board is carried
	// backward along it, or stands.
	ErrNoProgress = errors.New("route: on the track, but carried backward along it")
	// ErrInput: a value is outside its range.
	ErrInput = errors.New("route: value out of range")
)

// Steer is what to steer and what comes of it.
type Steer struct {
	Heading    float64 // degrees true toward, through the water
	Correction float64 // heading less track, degrees: positive is to the right
	Track      float64 // over the ground, degrees true toward; NaN if the board stands
	SpeedMade  float64 // over the ground, m/s
	Water      float64 // speed through the water, m/s
}

// MadeGood returns the velocity over the ground of a board that heads in a
// direction at a speed through the water, in water that moves with the given
// velocity; the track and the speed made good are its Toward and Speed. Add
// the leeway to the stream: MadeGood(h, v, stream.Add(leeway)).
//
// Special cases are:
//
//	a negative or NaN speed: NaN, NaN
//	speed 0: the velocity of the water, whatever the heading
//
// Source: [Bowditch2002] chapter 7, current sailing.
func MadeGood(heading, speed float64, water Velocity) Velocity {
	return Toward(speed, heading).Add(water)
}

// HeadingFor returns the heading that holds a track through moving water, and
// the speed made good along it.
//
//	sin(correction) = -(stream across the track) / speed
//	made good       = speed cos(correction) + stream along the track
//
// Both tests of feasibility are applied: the stream across the track must not
// exceed the speed, and the speed made good must be positive. The second is
// the one that is forgotten: with a stream faster than the board and against it
// the arc sine exists, and the board goes backward. If two headings hold the
// track it returns the one with the larger speed made good.
//
// Special cases are:
//
//	the track cannot be held: NaN, NaN ([HoldTrack] says why)
//	a negative, NaN or infinite speed, NaN elsewhere: NaN, NaN
//
// Source: [Williams2013] wind triangles (2).
func HeadingFor(track, speed float64, water Velocity) (heading, made float64) {
	along, right := water.Resolve(track)
	x := right / speed
	if !(speed > 0 && finite(speed) && math.Abs(x) <= 1) {
		return math.NaN(), math.NaN()
	}
	made = speed*math.Sqrt((1-x)*(1+x)) + along
	if !(made > 0) {
		return math.NaN(), math.NaN()
	}
	return wrapDeg(track - math.Asin(x)*(180/math.Pi)), made
}

// HoldTrack returns what to steer to hold a track through moving water, as
// [HeadingFor] does, and why not where it cannot be held: ErrCrossSet or
// ErrNoProgress; see [BestHeading] for what to do then. A value out of range is
// ErrInput.
//
// Source: [Williams2013] wind triangles (2).
func HoldTrack(track, speed float64, water Velocity) (Steer, error) {
	if err := checkTriangle(track, speed, water); err != nil {
		return Steer{}, err
	}
	h, made := HeadingFor(track, speed, water)
	if math.IsNaN(h) {
		along, right := water.Resolve(track)
		if !(math.Abs(right) <= speed) {
			return Steer{}, fmt.Errorf("%w: %.3g m/s across the track %.3g, speed %.3g m/s", ErrCrossSet, math.Abs(right), wrapDeg(track), speed)
		}
		return Steer{}, fmt.Errorf("%w: %.3g m/s along the track %.3g, speed %.3g m/s", ErrNoProgress, along, wrapDeg(track), speed)
	}
	return Steer{Heading: h, Correction: wrapLon(h - track), Track: wrapDeg(track), SpeedMade: made, Water: speed}, nil
}

func checkTriangle(track, speed float64, water Velocity) error {
	switch {
	case !finite(track):
		return fmt.Errorf("%w: track %v is not a direction in degrees", ErrInput, track)
	case !(speed >= 0 && finite(speed)):
		return fmt.Errorf("%w: speed %v m/s is not 0 or more", ErrInput, speed)
	case !finite(water.Speed()):
		return fmt.Errorf("%w: stream %v is not a velocity", ErrInput, water)
	}
	return nil
}

// SpeedNeeded returns the heading and the speed through the water that make
// good a wanted speed along a track: b = g - s.
//
// Special cases are:
//
//	the stream alone makes it: heading NaN, speed 0
//	a negative or NaN speed made good, NaN elsewhere: NaN, NaN
//
// Source: [Bowditch2002] chapter 7, current sailing.
func SpeedNeeded(track, made float64, water Velocity) (heading, speed float64) {
	b := Toward(made, track).Sub(water)
	return b.Toward(), b.Speed()
}

// SetAndDrift returns the velocity of the water from where dead reckoning put
// the board and where a fix found it, after so many seconds:
//
//	s = (fix - reckoned) / elapsed
//
// Every error of steering, speed and leeway is in the answer too.
//
// Special cases are:
//
//	elapsed not positive, or a position that fails [Point.Check]: NaN, NaN
//
// Source: [Bowditch2002] chapter 7, current sailing.
func SetAndDrift(reckoned, fix Point, elapsed float64) Velocity {
	if !(elapsed > 0 && finite(elapsed)) {
		return Velocity{math.NaN(), math.NaN()}
	}
	l := Inverse(reckoned, fix)
	return Toward(l.Distance/elapsed, l.Mean())
}

// CurrentFrom returns the velocity of the water from the motion through it and
// the motion over the ground: s = g - b.
//
// Special cases are:
//
//	a negative or NaN speed: NaN, NaN
//
// Source: [Bowditch2002] chapter 7, current sailing.
func CurrentFrom(heading, speed, track, made float64) Velocity {
	return Toward(made, track).Sub(Toward(speed, heading))
}

// BestHeading returns the heading that holds a track if one does, and
// otherwise the heading that loses least: of all the headings it makes the ground
// track least far to the side the stream sets toward. With the stream faster
// than the board that heading is the tangent to the circle of the board's
// speed about the stream's end, asin(speed/drift) short of square to the
// stream; the track it makes is in the result.
//
// held says whether the track is held.
//
// Errors are ErrInput for a value out of range, and ErrNoProgress where even
// that heading is carried back along the wanted track, or the board would
// stand.
//
// Source: [Williams2013] for the criterion; the tangent is elementary.
func BestHeading(track, speed float64, water Velocity) (s Steer, held bool, err error) {
	s, err = HoldTrack(track, speed, water)
	if err == nil {
		return s, true, nil
	}
	if errors.Is(err, ErrInput) {
		return Steer{}, false, err
	}
	// The ground velocities that can be had fill the circle of radius speed
	// about the end of the stream. If the stream is the faster the circle
	// does not hold the origin and the tracks are within asin(speed/drift) of the
	// set; the nearest to the wanted one is on that edge.
	drift := water.Speed()
	if !(drift > speed) {
		// As fast as the stream: any track within 90 degrees of the set can be
		// held, and others only by standing.
		return Steer{}, false, err
	}
	set := water.Toward()
	edge := math.Asin(speed/drift) * (180 / math.Pi)
	side := 1.0
	if wrapLon(track-set) < 0 {
		side = -1
	}
	t := wrapDeg(set + side*edge)
	made := math.Sqrt((drift - speed) * (drift + speed))
	off := math.Abs(wrapLon(t - track))
	if !(off < 90) {
		return Steer{}, false, fmt.Errorf("%w: the nearest track that can be made is %.0f, %.0f degrees off", ErrNoProgress, t, off)
	}
	h := wrapDeg(t + side*90)
	return Steer{Heading: h, Correction: wrapLon(h - track), Track: t, SpeedMade: made, Water: speed}, false, nil
}
