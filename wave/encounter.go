package wave

import (
	"math"

	"followingsea.example/internal/angle"
)

// A Meeting is how a moving board meets a train of regular waves.
type Meeting struct {
	Frequency float64 // Hz, signed: positive when the waves pass the board from where they come from, negative when it passes them
	Period    float64 // s from crest to crest, 1/Frequency: +Inf when the board runs with the waves, negative when it passes them
	Closing   float64 // m/s at which the crests gain on the board along their own direction; negative when it gains on them
}

// Encounter returns how a board moving at the speed in m/s through the water meets the wave, where courseFromWave is the angle
// in degrees between the board's course and the direction the wave travels: 0 in a following sea, 180 in a head sea.
//
//	fe = (1 - V cos μ/c)/T
//
// In a following sea the frequency falls with speed, is zero where the board runs as fast as the crests, and is negative beyond.
// Compute with the frequency: the period jumps from +Inf to -Inf there. One frequency below MostEncounters belongs to two
// waves of deep water, and with the other sign to a third: what is met does not tell the wave.
//
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
	return Meeting{f, 1 / f, closing}
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

// MostEncounters returns the greatest frequency in Hz at which waves of deep water from astern can meet a board that runs with
// them at the speed in m/s, g/8πV: that of the waves twice as fast as the board. It is the maximum of (ω - ω²V/g)/2π.
//
// Special cases are:
//
//	MostEncounters(0) = +Inf
//	MostEncounters(speed) = NaN if it is negative, infinite or NaN
//
// Source: [LewisPNA1989] vol. III, from the frequency of encounter.
func (w Water) MostEncounters(speed float64) float64 {
	if !(speed >= 0 && finite(speed)) {
		return math.NaN()
	}
	return w.g() / (8 * math.Pi * speed)
}

// MostEncounters returns the greatest frequency in Hz of following waves met; see Water.MostEncounters, whose defaults it uses.
func MostEncounters(speed float64) float64 { return Water{}.MostEncounters(speed) }

// MasterEncounterPeriod returns the period of encounter in seconds by the formula of the guidance to ship masters, for a wave
// period in seconds, a speed in m/s and the angle in degrees from dead into the waves: 180 runs before them.
//
//	TE = 3 T²/(3 T + V cos a)    V in knots
//
// Kept for comparison: it rounds g/2π to 3 knots a second, 1.2 % rough, and is useless where the board runs nearly as fast as
// the wave. Encounter has the exact one.
//
// Special cases are:
//
//	MasterEncounterPeriod = +Inf where the formula divides by zero
//	MasterEncounterPeriod = NaN if the period is zero, the speed negative, or anything negative (the period), infinite or NaN
//
// Source: [MSC-1228] 1 (memory).
func MasterEncounterPeriod(period, speed, fromAhead float64) float64 {
	if !(positive(period) && speed >= 0 && finite(speed) && finite(fromAhead)) {
		return math.NaN()
	}
	d := 3*period + speed/Knot*math.Cos(angle.Radians(fromAhead))
	if d == 0 {
		return math.Inf(1)
	}
	return 3 * period * period / d
}
