package route

import (
	"math"

	"followingsea.example/internal/angle"
)

// Velocity is a motion over a horizontal plane, in metres a second east and
// north. It is the only form in which a wind or a stream enters this package,
// because a vector has no convention to mistake: make one with [From] for what
// is named by where it comes from (wind, waves) and with [Toward] for what is
// named by where it goes (streams, headings, tracks).
type Velocity struct {
	East, North float64
}

// From returns the velocity of a wind, or of waves, that comes from the
// direction deg at the given speed: From(10, 0) is a north wind and moves
// south.
//
// Special cases are:
//
//	From(0, deg) = a calm, whatever deg, NaN included: a calm has no direction
//	From(speed, deg) = NaN, NaN for a negative, NaN or infinite speed
//	From(speed, deg) = NaN, NaN for a NaN or infinite deg and any other speed
func From(speed, deg float64) Velocity {
	v := Toward(speed, deg)
	return Velocity{0 - v.East, 0 - v.North}
}

// Toward returns the velocity of what moves toward the direction deg at the
// given speed: a stream by its set and drift, a board by its heading, a track.
// Toward(2, 90) moves east.
//
// Special cases are those of [From].
func Toward(speed, deg float64) Velocity {
	if speed == 0 {
		return Velocity{}
	}
	if !(speed > 0 && finite(speed)) {
		return Velocity{math.NaN(), math.NaN()}
	}
	s, c := sincosd(deg)
	return Velocity{speed * s, speed * c}
}

// Speed returns the magnitude of the velocity in metres a second.
func (v Velocity) Speed() float64 {
	if math.IsNaN(v.East) || math.IsNaN(v.North) {
		return math.NaN() // math.Hypot(Inf, NaN) is Inf
	}
	return math.Hypot(v.East, v.North)
}

// Toward returns the direction the velocity goes to, in degrees [0, 360). It
// is NaN for no motion, which has no direction.
func (v Velocity) Toward() float64 {
	if v.East == 0 && v.North == 0 {
		return math.NaN()
	}
	return angle.Wrap(angle.Degrees(math.Atan2(v.East, v.North)))
}

// From returns the direction the velocity comes from, in degrees [0, 360). It
// is NaN for no motion.
func (v Velocity) From() float64 {
	return angle.Wrap(v.Toward() + 180)
}

// Add returns v + w: a stream and a way through it, or a stream and a leeway.
func (v Velocity) Add(w Velocity) Velocity {
	return Velocity{v.East + w.East, v.North + w.North}
}

// Sub returns v - w. A wind over ground less the stream is the wind that a
// drifting board feels.
func (v Velocity) Sub(w Velocity) Velocity {
	return Velocity{v.East - w.East, v.North - w.North}
}

// Scale returns the velocity times k, which may be negative.
func (v Velocity) Scale(k float64) Velocity {
	return Velocity{k * v.East, k * v.North}
}

// Resolve returns the components of v along a direction toward which
// something moves and across it, positive to the right of that direction.
func (v Velocity) Resolve(toward float64) (along, right float64) {
	s, c := sincosd(toward)
	return v.East*s + v.North*c, v.East*c - v.North*s
}
