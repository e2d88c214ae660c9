// Package angle wraps and compares bearings in degrees.
package angle

import "math"

// Wrap returns deg reduced to [0, 360).
//
// Special cases are:
//
//	Wrap(±Inf) = NaN
//	Wrap(NaN) = NaN
func Wrap(deg float64) float64 {
	if deg >= 0 && deg < 360 {
		return deg + 0 // +0 turns -0 into 0
	}
	w := math.Mod(deg, 360)
	if w < 0 {
		w += 360
	}
	if w >= 360 { // a tiny negative angle rounds up to the full circle
		w = 0
	}
	return w + 0
}

// Diff returns the signed turn in degrees from a to b, in (-180, 180]:
// positive clockwise. A half turn is +180, whichever way it is asked.
//
// Special cases are:
//
//	Diff(a, b) = NaN if either is NaN or infinite
func Diff(a, b float64) float64 {
	d := math.Mod(b-a, 360)
	if d > 180 {
		d -= 360
	} else if d <= -180 {
		d += 360
	}
	return d + 0
}

// Radians converts degrees to radians.
func Radians(deg float64) float64 { return deg * (math.Pi / 180) }

// Degrees converts radians to degrees.
func Degrees(rad float64) float64 { return rad * (180 / math.Pi) }
