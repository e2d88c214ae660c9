package wind

import "math"

// Two relations that hold for a growing wind sea without a fetch: second opinions on a
// result of [Grow], from a spectral wave model rather than from a fetch law.

// OnePointHeight returns the significant height (m) that a steady wind of u m/s at 10 m
// raises in the given seconds on deep water without shores,
//
//	Hs = 0.22 U²/g (1 + 1.93e4 U/(g t))^(-3/4)
//
// the curve by which the wave model of the European centre judges its own growth at one
// point. Between 2 and 12 hours [Bretschneider] is within an eighth of it.
//
// Special cases are:
//
//	OnePointHeight(u, 0) = 0 for u ≥ 0
//	OnePointHeight(0, t) = 0 for t ≥ 0
//	OnePointHeight(u, t) = NaN if u or t is negative or NaN, or u infinite
//
// Source: [ECMWF-ecWAM] routine OUT_ONEGRDPT.
func OnePointHeight(u, seconds float64) float64 {
	if !(validSpeed(u) && seconds >= 0) {
		return math.NaN()
	}
	if u == 0 || seconds == 0 {
		return 0
	}
	return 0.22 * u * u / Gravity * math.Pow(1+1.93e4*u/(Gravity*seconds), -0.75)
}

// TobaHeight returns the significant height (m) of a growing wind sea of peak period tp (s)
// under a friction velocity in m/s, by Toba's law,
//
//	g·Hs/u*² = 0.060 (g·Tp/u*)^(3/2)
//
// A sea much lower than this for its period is old sea, one much higher is not wind sea
// alone. The median of 380 points at a deep lake buoy was 0.056, half of them between 0.051
// and 0.062.
//
// Special cases are:
//
//	TobaHeight(u, t) = NaN if either is negative, infinite or NaN
//
// Source: [ECMWF-ecWAM] routine OUT_ONEGRDPT, E* = 2.25e-4 ν*^-3.
func TobaHeight(frictionSpeed, tp float64) float64 {
	if !(frictionSpeed >= 0 && finite(frictionSpeed) && tp >= 0 && finite(tp)) {
		return math.NaN()
	}
	return 4 * 0.015 * math.Sqrt(Gravity*frictionSpeed) * tp * math.Sqrt(tp) // 4 √2.25e-4 is 0.060
}
