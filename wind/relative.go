package wind

import (
	"math"

	"followingsea.example/internal/angle"
)

// Relative returns the wind that something moving with the given velocity
// feels: the air's motion less its own. Given the motion of the WATER it is the wind that raises the
// sea and pushes a board adrift: a stream with the wind takes from it, a stream
// against it adds. Given the motion of a CRAFT over the ground it is the
// apparent wind, directions still true.
//
// The gust, blowing from where the mean does, is treated the same way, and
// dropped where it would come out below the mean.
//
// Special cases are:
//
//	something that moves with the air feels a calm
//	all NaN if the wind is not known or a component is NaN or infinite
//
// Source: [NGA-Pub1310] apparent and true wind.
func (w Wind) Relative(moving Velocity) Wind {
	if !w.known() || math.IsNaN(moving.Speed()) {
		return Wind{nan, nan, nan}
	}
	if moving == (Velocity{}) {
		return w.tidy()
	}
	out := w.Velocity().Minus(moving).Wind()
	if w.GustKnown() && w.Speed > 0 {
		g := Wind{Speed: w.Gust, From: w.From}.Velocity().Minus(moving).Speed()
		if g >= out.Speed {
			out.Gust = g
		}
	}
	return out
}

// TrueWind returns the wind over the ground from the apparent wind on
// something moving with the given velocity: the inverse of [Wind.Relative].
// The apparent wind's From is a true bearing: heading plus the angle off the
// bow. The gust is not carried over.
//
// Special cases are:
//
//	all NaN if the wind is not known or a component is NaN or infinite
//
// Source: [NGA-Pub1310] apparent and true wind.
func TrueWind(apparent Wind, moving Velocity) Wind {
	if !apparent.known() || math.IsNaN(moving.Speed()) {
		return Wind{nan, nan, nan}
	}
	return apparent.Velocity().Add(moving).Wind()
}

// Components is a wind seen from a course.
type Components struct {
	// Tail is the part that blows along the course, m/s: positive from astern,
	// negative a head wind.
	Tail float64
	// FromRight is the part across, m/s: positive from the right-hand side.
	FromRight float64
	// OffStern is the angle in degrees between where the wind comes from and
	// dead astern, in (−180, 180], positive from the right: 0 dead astern, 90 abeam
	// from the right, 180 in the face. NaN in a calm.
	OffStern float64
}

// On returns the components of the wind's mean on a course, in degrees true,
// that a craft makes good:
//
//	Tail      = −Speed cos(From − course)
//	FromRight =  Speed sin(From − course)
//
// Special cases are:
//
//	a calm has no components and no angle
//	all NaN if the wind is not known or the course is NaN or infinite
//
// Source: [CR3-Lecture] head wind W cos(w − c), cross wind W sin(w − c) from the right.
func (w Wind) On(course float64) Components {
	if !w.known() || math.IsNaN(angle.Wrap(course)) {
		return Components{nan, nan, nan}
	}
	if w.Speed == 0 {
		return Components{0, 0, nan}
	}
	s, c := sincos(angle.Wrap(w.From - course))
	return Components{
		Tail:      -w.Speed*c + 0, // not -0
		FromRight: w.Speed * s,
		OffStern:  angle.Diff(w.From, course+180),
	}
}
