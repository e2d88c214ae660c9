package route

import (
	"fmt"
	"math"
)

// TurnBack returns the radius of action: when to turn, and how far out that
// is, so that the start is reached again when the usable time is up. With E
// the endurance in seconds, O the speed made good out and H home,
//
//	t = E H / (O + H),   distance = O t
//
// O and H come each from their own triangle. For a pure wind or stream w along
// the line O = V + w, H = V - w and the distance is E (V² - w²) / 2V: any w
// shortens it.
//
// Special cases are:
//
//	home <= 0: 0, 0; there is no way back, so there is no way out
//	out <= 0, endurance < 0, NaN or an infinity: NaN, NaN
//
// Source: [FlightNotes2009] point of no return.
func TurnBack(endurance, out, home float64) (seconds, distance float64) {
	if !(endurance >= 0 && finite(endurance) && out > 0 && finite(out) && finite(home)) {
		return math.NaN(), math.NaN()
	}
	if home <= 0 {
		return 0, 0
	}
	seconds = endurance / (1 + out/home)
	return seconds, out * seconds
}

// EqualTime returns how far from the start of a line of the given length going
// on takes as long as going home, with on the speed made good onward and home
// the speed made good back:
//
//	x = distance home / (on + home)
//
// Past it going on is sooner. It lies to windward of the middle.
//
// Special cases are:
//
//	home <= 0: 0, going home is never sooner
//	on <= 0, distance < 0, NaN or an infinity: NaN
//
// Source: [ATPL2020] equal time point.
func EqualTime(distance, on, home float64) float64 {
	if !(distance >= 0 && finite(distance) && on > 0 && finite(on) && finite(home)) {
		return math.NaN()
	}
	if home <= 0 {
		return 0
	}
	return distance / (1 + on/home)
}

// Reach is a part of a run with one speed each way.
type Reach struct {
	Length float64 // metres
	Out    float64 // speed made good along it, m/s, above 0
	Home   float64 // speed made good back along it, m/s; 0 or less: no way back
}

// CommitPoint returns how far along a run return to the start within the
// endurance, in seconds, is still possible, and when that point is passed. The
// run may have any number of reaches, each with its own speeds; with one it is
// [TurnBack]. A run that can be undone from its very end has its length and the
// time to reach it.
//
// Errors are ErrInput with the number of the reach.
//
// Source: [FlightNotes2009] point of no return, summed over reaches.
func CommitPoint(endurance float64, run []Reach) (along, seconds float64, err error) {
	if !(endurance >= 0 && finite(endurance)) {
		return 0, 0, fmt.Errorf("%w: endurance %v s, want 0 or more", ErrInput, endurance)
	}
	if err := checkRun(run); err != nil {
		return 0, 0, err
	}
	left := endurance
	for _, r := range run {
		if !(r.Home > 0) {
			return along, seconds, nil
		}
		both := r.Length/r.Out + r.Length/r.Home
		if both > left {
			t, d := TurnBack(left, r.Out, r.Home)
			return along + d, seconds + t, nil
		}
		left -= both
		along += r.Length
		seconds += r.Length / r.Out
	}
	return along, seconds, nil
}

// EqualTimeAlong returns how far along a run of several reaches going on to
// its end takes as long as going back to its start. Before it turning back is
// sooner, past it going on is. A reach without a way back puts the point at or
// before its start.
//
// Errors are ErrInput with the number of the reach.
//
// Source: [ATPL2020] equal time point, summed over reaches.
func EqualTimeAlong(run []Reach) (float64, error) {
	if err := checkRun(run); err != nil {
		return 0, err
	}
	on := 0.0
	for _, r := range run {
		on += r.Length / r.Out
	}
	along, home := 0.0, 0.0
	for _, r := range run {
		if !(r.Home > 0) {
			return along, nil
		}
		// home + x/Home = on - x/Out
		x := (on - home) / (1/r.Out + 1/r.Home)
		if x <= r.Length {
			return along + math.Max(0, x), nil
		}
		along += r.Length
		home += r.Length / r.Home
		on -= r.Length / r.Out
	}
	return along, nil
}

func checkRun(run []Reach) error {
	if len(run) == 0 {
		return fmt.Errorf("%w: a run of no reaches", ErrInput)
	}
	for i, r := range run {
		if !(r.Length > 0 && finite(r.Length) && r.Out > 0 && finite(r.Out) && finite(r.Home)) {
			return fmt.Errorf("%w: reach %d: %v m, %v m/s out, %v m/s home, want a length and a speed out above 0", ErrInput, i+1, r.Length, r.Out, r.Home)
		}
	}
	return nil
}
