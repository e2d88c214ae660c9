package wave

import "math"

// Swell from a distant storm arrives sorted: the energy of each period travels over deep water at its own group speed,
// gT/4π, so that the long periods come first. At the distance R from a storm that blew t ago the frequency is
//
//	f = g t/(4πR)
//
// and the arrivals draw a straight ridge of frequency against time, whose slope gives the distance and whose foot the time
// of the storm. Crests run twice as fast as the energy: computing with their speed halves the time.

// SwellTime returns the time in seconds that swell of the period in seconds takes over the distance in metres in deep water:
// 4πR/gT. In nautical miles and hours it is 0.6592 R/T.
//
// Special cases are:
//
//	SwellTime is NaN if the distance is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [Munk1963]; [WMO-702] on swell.
func (w Water) SwellTime(distance, period float64) float64 {
	if !(distance >= 0 && finite(distance) && positive(period)) {
		return math.NaN()
	}
	return 4 * math.Pi * distance / (w.g() * period)
}

// SwellPeriod returns the period in seconds of the swell that arrives over the distance in metres at the time in seconds after
// it left the storm: 4πR/gt. All longer periods have passed.
//
// Special cases are:
//
//	SwellPeriod is NaN if the distance or time is zero, negative, infinite or NaN
//
// Source: [Munk1963].
func (w Water) SwellPeriod(distance, age float64) float64 {
	if !(positive(distance) && positive(age)) {
		return math.NaN()
	}
	return 4 * math.Pi * distance / (w.g() * age)
}

// An Origin is where and when a swell was made.
type Origin struct {
	Distance float64 // m, over which it has travelled
	Age      float64 // s from the storm to the first of the arrivals
}

// OriginOfArrivals returns the distance of a storm and the time since it blew, from the periods in seconds of its swell at one
// place at two times, the second of them later by the delay in seconds. The second period is the shorter.
//
//	t1 = dt T2/(T1 - T2),  R = g T1 t1/4π
//
// Special cases are:
//
//	OriginOfArrivals is NaN throughout if the second period is not shorter than the first, a period is zero, negative, infinite
//	or NaN, or the delay is zero, negative, infinite or NaN
//
// Source: [Munk1963]; [ExtraProblems13] Exercise 13.45.
func (w Water) OriginOfArrivals(first, second, delay float64) Origin {
	if !(positive(first) && positive(second) && second < first && positive(delay)) {
		return Origin{math.NaN(), math.NaN()}
	}
	age := delay * second / (first - second)
	return Origin{w.g() * first * age / (4 * math.Pi), age}
}

// OriginOfRidge returns the distance of a storm and the time since it blew, from the frequency in Hz of its swell now and the
// rate in Hz/s (positive) at which the frequency rises at one place:
//
//	R = g/(4π df/dt),  t = f/(df/dt)
//
// Special cases are:
//
//	OriginOfRidge is NaN throughout if the frequency or the rate is zero, negative, infinite or NaN
//
// Source: [Munk1963] as in [Stewart2008] ch. 16.
func (w Water) OriginOfRidge(frequency, rate float64) Origin {
	if !(positive(frequency) && positive(rate)) {
		return Origin{math.NaN(), math.NaN()}
	}
	return Origin{w.g() / (4 * math.Pi * rate), frequency / rate}
}

// RidgeSlope returns the rate in Hz/s at which the frequency of the swell from a storm at the distance in metres rises at one
// place: g/4πR.
//
// Special cases are:
//
//	RidgeSlope is NaN if the distance is zero, negative, infinite or NaN
//
// Source: [Munk1963] as in [Stewart2008] ch. 16.
func (w Water) RidgeSlope(distance float64) float64 {
	if !positive(distance) {
		return math.NaN()
	}
	return w.g() / (4 * math.Pi * distance)
}

// SwellWindow returns the times in seconds, after a storm began, between which swell of the period in seconds arrives at the
// distance in metres from the near edge of a storm of the given length (along the way) and lifetime: from the near edge at the
// beginning to the far edge at the end.
//
// Special cases are:
//
//	SwellWindow is NaN if the distance, length or lifetime is negative, infinite or NaN, or the period is zero, negative,
//	infinite or NaN
//
// Source: [PiersonNeumannJames1955] (H.O. Pub. 603), the filter of dispersion.
func (w Water) SwellWindow(distance, length, lifetime, period float64) (from, to float64) {
	from = w.SwellTime(distance, period)
	to = w.SwellTime(distance+length, period) + lifetime
	if !(length >= 0 && lifetime >= 0 && finite(lifetime)) || math.IsNaN(from+to) {
		return math.NaN(), math.NaN()
	}
	return from, to
}

// SwellTime returns the travel time in seconds of a swell; see Water.SwellTime, whose defaults it uses.
func SwellTime(distance, period float64) float64 { return Water{}.SwellTime(distance, period) }

// SwellPeriod returns the period in seconds that arrives; see Water.SwellPeriod, whose defaults it uses.
func SwellPeriod(distance, age float64) float64 { return Water{}.SwellPeriod(distance, age) }

// OriginOfArrivals returns where and when a swell was made; see Water.OriginOfArrivals, whose defaults it uses.
func OriginOfArrivals(first, second, delay float64) Origin {
	return Water{}.OriginOfArrivals(first, second, delay)
}

// OriginOfRidge returns where and when a swell was made; see Water.OriginOfRidge, whose defaults it uses.
func OriginOfRidge(frequency, rate float64) Origin { return Water{}.OriginOfRidge(frequency, rate) }

// RidgeSlope returns the rate in Hz/s at which the frequency rises; see Water.RidgeSlope, whose defaults it uses.
func RidgeSlope(distance float64) float64 { return Water{}.RidgeSlope(distance) }

// SwellWindow returns the times in seconds between which a swell arrives; see Water.SwellWindow, whose defaults it uses.
func SwellWindow(distance, length, lifetime, period float64) (from, to float64) {
	return Water{}.SwellWindow(distance, length, lifetime, period)
}
