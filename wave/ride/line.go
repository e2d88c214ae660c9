package ride

import "math"

// Line is how to take a bump that does not run where one wants to go.
type Line struct {
	Standing string  // Standing, the constant: a proposal
	Catch    float64 // degrees off the wave to catch it: straight before it, 0
	Ride     float64 // degrees off the wave to ride it, towards the course; NaN if it cannot be held
	Speed    float64 // m/s through the water on that heading; NaN likewise
	Progress float64 // m/s of it along the course; NaN likewise
	Straight float64 // m/s along the course when riding straight before the wave; NaN likewise
	Steepest float64 // degrees off the wave, the most at which this wave can be held
}

// Line returns the best line on a bump for a course b.Off degrees off the
// direction it travels.
//
// Catching needs least height straight before the wave: turned by θ its slope
// along the board falls with cos θ and the speed to be kept rises with
// 1/cos θ. Once on the wave the turn is free speed until the push no longer
// holds, and along the course
//
//	progress = c/cos θ · cos(θ − Off)
//
// grows with θ up to the course. So: catch straight, then turn as far towards
// the course as the wave carries. Wind is taken the same on all headings.
// Proposal, no published source.
//
// Errors: those of [Paddler.Appraise].
func (p Paddler) Line(b Bump) (Line, error) {
	s, err := newSurge(p)
	if err != nil {
		return Line{}, err
	}
	if err := b.check(); err != nil {
		return Line{}, err
	}
	g := b.gravity()
	nan := math.NaN()
	l := Line{Standing: Standing, Ride: nan, Speed: nan, Progress: nan, Straight: nan, Steepest: nan}
	u := s.share * b.Wind
	course := math.Abs(b.Off)
	holds := func(theta float64) bool {
		w, ok := s.train(b.Period, b.Depth, b.Current, math.Cos(theta*(math.Pi/180)), g)
		return ok && -s.balance(w.c, s.sprint, u) <= w.perM*b.Height
	}
	w, ok := s.train(b.Period, b.Depth, b.Current, 1, g)
	if !ok || s.flat(s.sprint, u) >= w.c || !holds(0) {
		return l, nil
	}
	// What pushes too little, not at all included, does not hold: the board is
	// slower than the wave on every heading.
	lo, hi := 0.0, maximumOff
	if holds(hi) {
		lo = hi
	}
	l.Steepest, _ = halve(lo, hi, 1e-9, func(theta float64) bool { return !holds(theta) })
	l.Ride = math.Min(l.Steepest, course)
	l.Speed = w.c / math.Cos(l.Ride*(math.Pi/180))
	l.Progress = l.Speed * math.Cos((course-l.Ride)*(math.Pi/180))
	l.Straight = w.c * math.Cos(course*(math.Pi/180))
	return l, nil
}
