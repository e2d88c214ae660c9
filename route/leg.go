package route

import "math"

// Leg is a line between two positions: its length and the direction in which
// it is sailed. Courses are in degrees true toward, [0, 360).
//
// A geodesic turns as it goes, because the meridians draw together: its
// course at the end is not its course at the start. Steering the mean of the
// two holds within d² tan(lat) / 8R of the geodesic, 9 m on 20 km at 50
// degrees.
type Leg struct {
	From, To Point
	Distance float64 // metres
	Course   float64 // at From, toward To
	End      float64 // at To, going on
}

// Mean returns the mean of the two end courses: the direction of the leg on a
// chart, and the one to use with a [Velocity] that is constant over the leg.
func (l Leg) Mean() float64 {
	return wrapDeg(l.Course + wrapLon(l.End-l.Course)/2)
}

// At returns the position at a distance in metres along the geodesic from the
// start of the leg. Distances beyond the leg, and negative ones, go on along
// the same geodesic.
func (l Leg) At(distance float64) Point {
	return Direct(l.From, l.Course, distance).To
}

// Reverse returns the leg sailed home.
func (l Leg) Reverse() Leg {
	return Leg{l.To, l.From, l.Distance, wrapDeg(l.End + 180), wrapDeg(l.Course + 180)}
}

var noLeg = Leg{nowhere, nowhere, math.NaN(), math.NaN(), math.NaN()}
