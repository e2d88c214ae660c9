package wind

import "math"

// Averaging time. Two different things share the name:
//
// The strongest x-minute wind in an hour against the mean of that hour. That
// is what the curves here give, and all they give: they convert EXTREMES.
//
// A routine ten-minute mean against the hourly mean. On average they are
// equal: nothing to convert. Multiplying the mean of a station or a model by a
// factor from these curves is the commonest mistake made with them, which is
// why the functions say Extreme in their names.
//
// Growth of waves wants the mean over the growth time, an hour or more, and
// never a gust.

// ExtremeRatio returns r(t), the strongest wind averaged over t seconds within
// an hour over that hour's mean, for t from 1 s to 10 h:
//
//	r = 1.277 + 0.296 tanh(0.9 log₁₀(45/t))   1 ≤ t < 3600
//	r = 1                                      t = 3600
//	r = 1.5334 − 0.15 log₁₀ t                  3600 < t ≤ 36000
//
// Land and lake winds, near-neutral, after Durst. The branches meet to 0.05 %.
//
// Special cases are:
//
//	NaN outside 1 to 36000 s, or NaN
//
// Source: [CEM-II-2] Figure II-2-1.
func ExtremeRatio(seconds float64) float64 {
	switch t := seconds; {
	case !(t >= 1 && t <= 36000):
		return math.NaN()
	case t < 3600:
		return 1.277 + 0.296*math.Tanh(0.9*math.Log10(45/t))
	case t == 3600:
		return 1
	default:
		return 1.5334 - 0.15*math.Log10(t)
	}
}

// ExtremeToExtreme turns the strongest wind of one averaging time into that of
// another, both in seconds: speed · r(to)/r(from) with [ExtremeRatio]. Only for
// a "maximum x-minute wind", design winds, a fastest mile. Never for a routine
// mean.
//
// Special cases are:
//
//	NaN for a negative speed, NaN, or a time outside 1 to 36000 s
//
// Source: [CEM-II-2] Example Problem II-2-2.
func ExtremeToExtreme(speed, from, to float64) float64 {
	if !validSpeed(speed) {
		return math.NaN()
	}
	return speed * (ExtremeRatio(to) / ExtremeRatio(from))
}

// ExtremeRatioDurst returns the ratio of [ExtremeRatio] by the curve fitted to
// Durst's 1960 data for building codes:
//
//	r = 0.977 + 0.64 / (1 + (t/38.14)^0.685)
//
// Special cases are:
//
//	NaN outside 1 to 3600 s, or NaN
//
// Source: [ScientiMate] gust factor, Durst (1960) as in ASCE 7.
func ExtremeRatioDurst(seconds float64) float64 {
	if !(seconds >= 1 && seconds <= 3600) {
		return math.NaN()
	}
	return 0.977 + 0.64/(1+math.Pow(seconds/38.14, 0.685))
}

// ExtremeRatioHurricane returns the ratio of [ExtremeRatio] in tropical
// cyclones, which gust harder, by the fit to Krayer and Marshall (1992):
//
//	r = 0.96 + 0.839 / (1 + (t/36.27)^0.655)
//
// Special cases are:
//
//	NaN outside 1 to 3600 s, or NaN
//
// Source: [ScientiMate] gust factor, Krayer and Marshall (1992).
func ExtremeRatioHurricane(seconds float64) float64 {
	if !(seconds >= 1 && seconds <= 3600) {
		return math.NaN()
	}
	return 0.96 + 0.839/(1+math.Pow(seconds/36.27, 0.655))
}

// FastestMileTime returns the averaging time in seconds of a "fastest mile"
// wind in m/s: the time in which a statute mile of air goes by, 1609.344/U.
//
// Special cases are:
//
//	NaN for a speed of zero or less, an infinity or NaN
//
// Source: [CEM-II-2] section on averaging times.
func FastestMileTime(speed float64) float64 {
	if !(speed > 0 && finite(speed)) {
		return math.NaN()
	}
	return StatuteMile / speed
}

// GustFactor returns gust over mean. Over open water it is mostly 1.2 to 1.4;
// above about 1.6 look for land upwind or for showers. It depends on both
// averaging times: a 3-second gust over a 10-minute mean at most stations, a 5-
// or 8-second peak over 8 minutes on the buoys of the United States.
//
// Special cases are:
//
//	NaN for a mean of zero or less, a gust below the mean, an infinity or NaN
//
// Source: [WMO-8] definition of the gust factor; [Harris2018].
func GustFactor(gust, mean float64) float64 {
	if !(mean > 0 && gust >= mean && finite(gust)) {
		return math.NaN()
	}
	return gust / mean
}
