package ride

import "math"

// EncounterPeriod returns the seconds between crests met by a board moving at
// speed m/s along the travel of waves of length m and celerity m/s.
//
//	T_E = λ / (c − v)
//
// Negative where the board overtakes the crests, which is why formulas use
// [EncounterFrequency]: the period jumps from +∞ to −∞ at v = c, the frequency
// goes through zero.
//
// Special cases are:
//
//	EncounterPeriod(λ, c, c) = +Inf
//	EncounterPeriod = NaN for length ≤ 0, celerity ≤ 0, any infinite or NaN
//
// Exact; follows from the definition.
func EncounterPeriod(length, celerity, speed float64) float64 {
	if !(length > 0 && celerity > 0) || math.IsInf(length+celerity, 1) || !(math.Abs(speed) <= math.MaxFloat64) {
		return math.NaN()
	}
	if speed == celerity {
		return math.Inf(1)
	}
	return length / (celerity - speed)
}

// EncounterFrequency returns the signed frequency in Hz at which crests of
// waves of length m and celerity m/s pass a board moving at speed m/s, off
// degrees from the direction they travel: positive when they come from astern
// and pass ahead or are met, negative when the board overtakes them.
//
//	f_E = (c − v cos off) / λ
//
// In deep water one f_E below that of [MaxEncounterFrequency] belongs to two
// wave periods, and with the opposite sign to a third: the frequency met does
// not tell the wave.
//
// Special cases are:
//
//	EncounterFrequency = NaN for length ≤ 0, celerity ≤ 0, any infinite or NaN
//
// Exact; follows from the definition.
func EncounterFrequency(length, celerity, speed, off float64) float64 {
	if !(length > 0 && celerity > 0) || math.IsInf(length+celerity, 1) ||
		!(math.Abs(speed) <= math.MaxFloat64) || !(math.Abs(off) <= math.MaxFloat64) {
		return math.NaN()
	}
	return (celerity - speed*math.Cos(off*(math.Pi/180))) / length
}

// MaxEncounterFrequency returns the greatest angular frequency in rad/s at
// which deep-water waves from astern can meet a board moving with them at speed
// m/s: that of the waves twice as fast as the board.
//
//	g / 4v
//
// gravity in m/s². Special cases are:
//
//	MaxEncounterFrequency = NaN for speed ≤ 0, gravity ≤ 0, infinite or NaN
//
// Exact; the maximum of ω − ω² v/g.
func MaxEncounterFrequency(speed, gravity float64) float64 {
	if !(speed > 0 && gravity > 0) || math.IsInf(speed+gravity, 1) {
		return math.NaN()
	}
	return gravity / (4 * speed)
}

// MasterEncounterPeriod returns the encounter period in seconds by the formula
// of the guidance to ship masters, for a wave period in seconds, a speed in
// m/s and a heading off degrees from dead into the waves: 180 runs before them.
//
//	T_E = 3 T² / (3 T + V cos off)    V in knots
//
// Kept for comparison: it rounds g/2π to 3 knots per second, 1.2 % rough, and
// is useless where the board runs nearly as fast as the wave.
//
// Special cases are:
//
//	MasterEncounterPeriod = +Inf where the formula divides by zero
//	MasterEncounterPeriod = NaN for period ≤ 0, speed < 0, any infinite or NaN
//
// Source: [MSC-1228] 1 (memory).
func MasterEncounterPeriod(period, speed, off float64) float64 {
	if !(period > 0 && speed >= 0) || math.IsInf(period+speed, 1) || !(math.Abs(off) <= math.MaxFloat64) {
		return math.NaN()
	}
	d := 3*period + speed/Knot*math.Cos(off*(math.Pi/180))
	if d == 0 {
		return math.Inf(1)
	}
	return 3 * period * period / d
}
