package tide

import (
	"fmt"
	"math"

	"followingsea.example/internal/angle"
)

// Units for constants: 2.5 * tide.Knot is in m/s. From exact definitions.
const (
	NauticalMile = 1852.0
	Knot         = 1852.0 / 3600
	Foot         = 0.3048
)

// A Stream is a tidal stream: its rate in m/s and its set, the direction it
// runs toward, in degrees true. Make it with Setting, so that a forgotten
// direction is not north; slack water is the zero value and has no direction.
type Stream struct {
	Rate float64
	Set  float64
}

// Setting returns the stream of the rate in m/s that sets toward the direction
// in degrees true, which is wrapped to [0, 360). A negative rate is NaN, not a
// stream the other way; a rate of zero is Slack whatever its direction.
func Setting(rate, set float64) Stream {
	if rate == 0 {
		return Stream{}
	}
	if !(rate > 0) {
		return Stream{math.NaN(), math.NaN()}
	}
	return Stream{rate, angle.Wrap(set)}
}

// Velocity returns the stream as a vector.
//
// Special cases are:
//
//	Velocity of a stream with rate 0 = {0, 0}
//	Velocity = {NaN, NaN} if the rate is negative or either field is NaN or infinite
func (s Stream) Velocity() Velocity {
	if s.Rate == 0 {
		return Velocity{}
	}
	if !(s.Rate > 0) || math.IsInf(s.Rate, 0) {
		return Velocity{math.NaN(), math.NaN()}
	}
	sin, cos := math.Sincos(angle.Radians(s.Set))
	return Velocity{East: s.Rate * sin, North: s.Rate * cos}
}

// String returns the stream as "1.50 m/s setting 045°".
func (s Stream) String() string {
	if s.Rate == 0 {
		return "slack"
	}
	return fmt.Sprintf("%.2f m/s setting %03.0f°", s.Rate, s.Set)
}

// A Velocity is the motion of the water over the ground in m/s.
type Velocity struct {
	East, North float64
}

// Stream returns the rate and set of the velocity; a velocity of zero is slack.
//
// Special cases are:
//
//	Stream = {NaN, NaN} if either part is NaN or infinite
func (v Velocity) Stream() Stream {
	r := math.Hypot(v.East, v.North)
	if r == 0 {
		return Stream{}
	}
	if math.IsNaN(v.East+v.North) || math.IsInf(r, 0) {
		return Stream{math.NaN(), math.NaN()}
	}
	return Stream{r, angle.Wrap(angle.Degrees(math.Atan2(v.East, v.North)))}
}

// Along returns the part of the velocity along a direction in degrees true,
// negative when it runs the other way.
//
// Special cases are:
//
//	Along(d) = NaN if d or either part is NaN or infinite
func (v Velocity) Along(direction float64) float64 {
	if math.IsInf(v.East, 0) || math.IsInf(v.North, 0) {
		return math.NaN()
	}
	sin, cos := math.Sincos(angle.Radians(direction))
	return v.East*sin + v.North*cos
}

// mix is a + (b − a) f, part by part.
func mix(a, b Velocity, f float64) Velocity {
	return Velocity{a.East + (b.East-a.East)*f, a.North + (b.North-a.North)*f}
}
