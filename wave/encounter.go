package wave

import (
	"math"

	"followingsea.example/internal/angle"
)

// A Meeting is how a moving board meets a train of regular waves.
type Meeting struct {
	Frequency float64 // Hz, signed: positive when the waves pass the board from where they come from, negative when it passes them
	Period    float64 // s from crest to crest, as felt on board; +Inf when the board runs with the waves
	Closing   float64 // m/s at which the crests gain on the board along their own direction; negative when it gains on them
}

// Encounter returns how a board moving at the speed in m/s through the water meets the wave, where courseFromWave is the angle
// in degrees between the board's course and the direction the wave travels: 0 in a following sea, 180 in a head sea.
//
//	fe = (1 - V cos μ/c)/T
//
// In a following sea the frequency falls with speed, is zero where the board runs as fast as the crests, and is negative beyond.
// If a current runs under both, take the wave's period in the water, CurrentWave.IntrinsicPeriod.
//
// Special cases are:
//
//	Encounter has Period +Inf where the board keeps its place on the wave
//	Encounter is NaN throughout if the speed is negative, infinite or NaN, the angle is infinite or NaN, or the wave is none
//
// Source: [LewisPNA1989] vol. III: the frequency of encounter ω - ω²V cos μ/g in deep water.
func (v Wave) Encounter(speed, courseFromWave float64) Meeting {
	if !(speed >= 0 && finite(speed)) || !finite(courseFromWave) {
		nan := math.NaN()
		return Meeting{nan, nan, nan}
	}
	closing := v.PhaseSpeed - speed*math.Cos(angle.Radians(courseFromWave))
	f := closing / v.Length
	return Meeting{f, 1 / math.Abs(f), closing}
}

// SameSpeedCourse returns the angle in degrees between a board's course and the direction of the wave at which the board, at the
// speed in m/s, keeps its place on the wave: arccos(c/V). A slower board cannot; a faster one runs across the face.
//
// Special cases are:
//
//	SameSpeedCourse is NaN if the speed is less than that of the crests, infinite or NaN
//
// Source: geometry.
func (v Wave) SameSpeedCourse(speed float64) float64 {
	if !(speed >= v.PhaseSpeed && finite(speed)) {
		return math.NaN()
	}
	return angle.Degrees(math.Acos(v.PhaseSpeed / speed))
}
