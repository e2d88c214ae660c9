package wind

import (
	"errors"
	"fmt"
	"math"

	"followingsea.example/internal/angle"
)

// Errors of this package, wrapped with the name of the field, its value and
// the range allowed. Test for them with errors.Is.
var (
	// ErrSpeed is a speed that is negative or not a number.
	ErrSpeed = errors.New("wind: speed out of range")
	// ErrDirection is a direction outside 0 to 360, or none for a wind that blows.
	ErrDirection = errors.New("wind: direction out of range")
	// ErrGust is a gust below the mean wind it belongs to.
	ErrGust = errors.New("wind: gust below the mean")
)

// ErrHeight is a wave height that is negative or not a number.
var ErrHeight = errors.New("wind: wave height out of range")

// Strongest is the highest gust, in m/s, that is accepted from outside data:
// just above the strongest ever measured at the surface (113.2 m/s, Barrow
// Island, 10 April 1996). More is a slip of units.
const Strongest = 115

// StrongestMean is the highest mean speed, in m/s, that is accepted from outside
// data: above any ten-minute mean measured over water. A file that has more has
// its units wrong.
const StrongestMean = 70

// Wind is a mean wind at one place and instant.
//
// Speed and Gust are in m/s, at 10 m above the water unless the text beside
// the value says otherwise. From is the direction the wind blows FROM, in
// degrees true clockwise from north. A calm is a Speed of zero and has no
// direction: From is NaN. Gust is NaN where it is not known; a Gust below
// Speed (the zero of a literal, for one) counts as not known too.
//
// Make one with [New], [Gusting] or [Calm]; a literal works, but a From
// forgotten in it is a wind from north.
type Wind struct {
	Speed float64
	Gust  float64
	From  float64
}

// New returns the mean wind of the given speed in m/s, blowing from the given
// direction in degrees true. The gust is unknown. At zero speed the direction
// is dropped, whatever it was.
//
// The error is ErrSpeed for a speed outside 0 to [StrongestMean] or
// ErrDirection for a direction outside 0 to 360.
func New(speed, from float64) (Wind, error) {
	if !(speed >= 0 && speed <= StrongestMean) {
		return Wind{}, fmt.Errorf("%w: Speed %v m/s is outside 0 to %v", ErrSpeed, speed, StrongestMean)
	}
	if speed == 0 {
		return Calm(), nil
	}
	if !(from >= 0 && from <= 360) {
		return Wind{}, fmt.Errorf("%w: From %v is outside 0 to 360", ErrDirection, from)
	}
	return Wind{Speed: speed, Gust: math.NaN(), From: angle.Wrap(from)}, nil
}

// Gusting returns the wind of [New] with a known gust in m/s.
//
// The error is that of New, or ErrGust for a gust below the mean, above
// [Strongest] or not a number. A calm may have a gust.
func Gusting(speed, gust, from float64) (Wind, error) {
	w, err := New(speed, from)
	if err != nil {
		return Wind{}, err
	}
	if !(gust >= speed && gust <= Strongest) {
		return Wind{}, fmt.Errorf("%w: Gust %v m/s is outside %v (the mean) to %v", ErrGust, gust, speed, Strongest)
	}
	w.Gust = gust
	return w, nil
}

// Calm returns the wind that does not blow: no speed, no direction.
func Calm() Wind { return Wind{Speed: 0, Gust: math.NaN(), From: math.NaN()} }

// IsCalm reports whether the wind has no speed and so no direction.
func (w Wind) IsCalm() bool { return w.Speed == 0 }

// GustKnown reports whether the wind carries a gust.
func (w Wind) GustKnown() bool { return w.Gust >= w.Speed && w.Gust > 0 }

// check reports what is wrong with a wind, wherever it was made.
func (w Wind) check() error {
	if !(w.Speed >= 0 && w.Speed <= StrongestMean) {
		return fmt.Errorf("%w: Speed %v m/s is outside 0 to %v", ErrSpeed, w.Speed, StrongestMean)
	}
	if w.Speed > 0 && !(w.From >= 0 && w.From <= 360) {
		return fmt.Errorf("%w: From %v is outside 0 to 360", ErrDirection, w.From)
	}
	if w.Gust > Strongest {
		return fmt.Errorf("%w: Gust %v m/s is above %v", ErrGust, w.Gust, Strongest)
	}
	return nil
}

// String prints the wind in words a forecast would use, as "12.0 kn from 225°,
// gusts 18.0 kn", "calm", or "unknown" where a number is missing.
func (w Wind) String() string {
	var s string
	switch {
	case w.Speed == 0:
		s = "calm"
	case !(w.Speed > 0) || !finite(w.From):
		return "unknown"
	default:
		s = fmt.Sprintf("%.1f kn from %03.0f°", w.Speed/Knot, math.Mod(math.Round(angle.Wrap(w.From)), 360))
	}
	if w.GustKnown() {
		s += fmt.Sprintf(", gusts %.1f kn", w.Gust/Knot)
	}
	return s
}

// Velocity is the motion of the air (or of the water, or a craft) in m/s
// toward the east and toward the north. A vector has no from and no toward:
// it is where the two meet. The type has the shape of the velocities of the
// packages tide and route and converts to them.
type Velocity struct {
	East  float64
	North float64
}

// Velocity returns the motion of the air: Speed away from From.
//
//	East  = −Speed sin From
//	North = −Speed cos From
//
// Exact in the four cardinal directions. The gust is not part of it.
//
// Special cases are:
//
//	a calm has the zero Velocity, whatever From is
//	NaN if Speed is NaN, infinite or negative, or From is NaN or infinite (unless calm)
//
// Source: [EPA-454-R-99-005] section 6.2.2, resultant components Ve and Vn.
func (w Wind) Velocity() Velocity {
	if w.Speed == 0 {
		return Velocity{}
	}
	if !(w.Speed > 0 && finite(w.Speed)) {
		return Velocity{math.NaN(), math.NaN()}
	}
	s, c := sincos(w.From)
	return Velocity{-w.Speed * s, -w.Speed * c}
}

// Wind returns the wind of that motion of the air, with no gust.
//
//	Speed = √(East² + North²)
//	From  = atan2(−East, −North), in [0, 360)
//
// Special cases are:
//
//	the zero Velocity is a calm: no direction
//	Speed and From are NaN if either component is NaN or infinite
//
// Source: [EPA-454-R-99-005] section 6.2.2.
func (v Velocity) Wind() Wind {
	speed := v.Speed()
	if speed == 0 {
		return Calm()
	}
	if !finite(speed) {
		return Wind{Speed: math.NaN(), Gust: math.NaN(), From: math.NaN()}
	}
	return Wind{
		Speed: speed,
		Gust:  math.NaN(),
		From:  angle.Wrap(angle.Degrees(math.Atan2(-v.East, -v.North))),
	}
}

// Speed returns the length of the vector in m/s, √(East² + North²).
//
// Special cases are:
//
//	NaN if either component is NaN or infinite
func (v Velocity) Speed() float64 {
	h := math.Hypot(v.East, v.North)
	if math.IsInf(h, 0) || math.IsNaN(v.East+v.North) {
		return math.NaN()
	}
	return h
}

// Add returns v + u.
func (v Velocity) Add(u Velocity) Velocity { return Velocity{v.East + u.East, v.North + u.North} }

// Minus returns v − u.
func (v Velocity) Minus(u Velocity) Velocity { return Velocity{v.East - u.East, v.North - u.North} }

// Times returns the vector stretched by k.
func (v Velocity) Times(k float64) Velocity { return Velocity{v.East * k, v.North * k} }

// sincos returns the sine and cosine of a bearing in degrees, exact at the
// multiples of 90, NaN for NaN and infinities.
func sincos(deg float64) (s, c float64) {
	d := angle.Wrap(deg)
	switch d {
	case 0:
		return 0, 1
	case 90:
		return 1, 0
	case 180:
		return 0, -1
	case 270:
		return -1, 0
	}
	return math.Sincos(angle.Radians(d))
}

func finite(x float64) bool { return math.Abs(x) <= math.MaxFloat64 }
