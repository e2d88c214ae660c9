package route

import (
	"fmt"
	"math"
	"sort"
)

// Offset returns where a position lies against the leg, taken as a geodesic
// that goes on beyond both ends: how far along it is abeam of the position
// (negative before the start), and how far the position is to the right
// (negative: to the left), both in metres.
//
// The foot of the perpendicular is found by solving a spherical right
// triangle at the last foot and moving there until it stays, at most twenty
// times; right to a micrometre up to some thousands of kilometres.
//
// Special cases are:
//
//	a position that fails [Point.Check], or a leg with a NaN: NaN, NaN
//
// Source: [Williams2013] cross track error, for the triangle of one step.
func (l Leg) Offset(p Point) (along, right float64) {
	if !l.From.valid() || !p.valid() || math.IsNaN(l.Course) {
		return math.NaN(), math.NaN()
	}
	foot, course := l.From, l.Course
	for range 20 {
		to := Inverse(foot, p)
		_, ca := sincosd(to.Course - course)
		sd, cd := math.Sincos(to.Distance / MeanRadius)
		step := MeanRadius * math.Atan2(sd*ca, cd)
		along += step
		if math.Abs(step) < 1e-7 {
			break
		}
		d := Direct(l.From, l.Course, along)
		foot, course = d.To, d.End
	}
	to := Inverse(foot, p)
	sa, _ := sincosd(to.Course - course)
	return along, to.Distance * sa // 0 on the line, where the course means nothing
}

// Path is a route over the water: geodesics from one position to the next.
type Path struct {
	legs  []Leg
	start []float64 // metres from the first position to the start of each leg
	total float64
}

// NewPath returns the path through the positions in their order. Fewer than
// two positions are ErrInput, a position that is none is ErrPosition with its
// number.
func NewPath(points ...Point) (*Path, error) {
	if len(points) < 2 {
		return nil, fmt.Errorf("%w: a path of %d positions, want 2 or more", ErrInput, len(points))
	}
	for i, p := range points {
		if err := p.Check(); err != nil {
			return nil, fmt.Errorf("position %d: %w", i+1, err)
		}
	}
	r := &Path{legs: make([]Leg, len(points)-1), start: make([]float64, len(points)-1)}
	for i := range r.legs {
		r.legs[i] = Inverse(points[i], points[i+1])
		r.start[i] = r.total
		r.total += r.legs[i].Distance
	}
	return r, nil
}

// Length returns the length of the path in metres.
func (r *Path) Length() float64 { return r.total }

// Legs returns a copy of the legs.
func (r *Path) Legs() []Leg { return append([]Leg(nil), r.legs...) }

// At returns the position at a distance in metres along the path, and the
// course there. A turn belongs to the leg after it, the end to the last leg.
//
// Special cases are:
//
//	a distance below 0, beyond the length, or NaN: NaN positions and NaN course
func (r *Path) At(along float64) (Point, float64) {
	if !(along >= 0 && along <= r.total) {
		return nowhere, math.NaN()
	}
	i := sort.SearchFloat64s(r.start, along)
	if i == len(r.start) || r.start[i] > along {
		i--
	}
	l := r.legs[i]
	d := Direct(l.From, l.Course, along-r.start[i])
	return d.To, d.End
}

// Closest is the point of a path that is nearest to a position.
type Closest struct {
	Point    Point   // on the path
	Leg      int     // its leg, from 0
	Along    float64 // metres from the start of the path
	Distance float64 // metres from the position, never negative
	Right    float64 // the same with the side: positive if the position is to the right of the path
}

// Closest returns the point of the path that is nearest to a position; the
// first of them if there are several. A position that is none is ErrPosition.
func (r *Path) Closest(p Point) (Closest, error) {
	if err := p.Check(); err != nil {
		return Closest{}, err
	}
	best := Closest{Distance: math.Inf(1)}
	for i, l := range r.legs {
		along, right := l.Offset(p)
		at, c := l.At(along), Closest{Leg: i, Along: r.start[i] + along, Distance: math.Abs(right), Right: right}
		if !(along > 0) || !(along < l.Distance) {
			end, course := l.From, l.Course
			c.Along = r.start[i]
			if along > 0 {
				end, course, c.Along = l.To, l.End, r.start[i]+l.Distance
			}
			to := Inverse(end, p)
			at, c.Distance, c.Right = end, to.Distance, to.Distance
			if s, _ := sincosd(to.Course - course); s < 0 {
				c.Right = -to.Distance
			}
		}
		c.Point = at
		if c.Distance < best.Distance {
			best = c
		}
	}
	if math.IsInf(best.Distance, 1) {
		return Closest{}, fmt.Errorf("%w: no closest point on the path", ErrInput)
	}
	return best, nil
}
