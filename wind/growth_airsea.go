package wind

import "math"

// ObservedOverPredicted returns the median ratio of the measured significant height
// to that of [Bretschneider] at one difference of air less water temperature (K):
//
//	under −2   1.04
//	−2 to 2    0.93
//	2 to 4     0.70
//	4 to 8     0.63
//
// Warm air over cold water is stable, mixes little wind down and raises a sea a
// third lower for the same wind at the mast. The choice of law matters less than
// this. The numbers are a statistic of 216 fetch-limited events at one deep buoy,
// 71 to 164 km of fetch (nine of them above 4 K), and are not applied anywhere in
// this package: they are for judging a result.
//
// Special cases are:
//
//	ObservedOverPredicted(d) = NaN for d above 8 or NaN, where nothing was measured
//
// Source: [NDBC45004] records 2002 to 2023, own statistic.
func ObservedOverPredicted(airMinusWater float64) float64 {
	switch d := airMinusWater; {
	case d < -2 && d >= -30:
		return 1.04
	case d >= -2 && d <= 2:
		return 0.93
	case d > 2 && d <= 4:
		return 0.70
	case d > 4 && d <= 8:
		return 0.63
	default:
		return math.NaN()
	}
}

func stability(airMinusWater float64) Remark {
	switch {
	case airMinusWater > 2:
		return RemarkStable
	case airMinusWater < -2:
		return RemarkUnstable
	default:
		return 0
	}
}
