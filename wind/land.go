package wind

import "math"

// LandToSea returns the wind over open water, in m/s, from that measured on
// land near the coast: U(sea) = 3 U(land)^(2/3), both in m/s. It says 8.8 for
// 5, 13.9 for 10 and crosses U(land) at 27 m/s. A mean over the coasts of the
// world: the spread at one place is ±20 % and more, and a sheltered station is
// worth nothing. For winds of 2 to 15 m/s. Off the land itself the air has not yet
// its speed over the sea: ACES takes a tenth off below 16 km of fetch, see
// [ACESShortFetchFactor].
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [Hsu1980] abstract, simplified equation.
func LandToSea(land float64) float64 {
	if !validSpeed(land) {
		return math.NaN()
	}
	c := math.Cbrt(land)
	return 3 * c * c
}

// ShipToTenMetres returns the wind at 10 m, in m/s, from the wind that ships
// reported by eye on the old Beaufort equivalents: U = 1.864 W^(7/9), the form
// 2.16 W^(7/9) of knots. It lifts light winds and lowers strong ones; it crosses at 16.5 m/s.
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [ACES1992] wind adjustment, observation type 1, after Cardone (1969).
func ShipToTenMetres(reported float64) float64 {
	if !validSpeed(reported) {
		return math.NaN()
	}
	return 1.864 * math.Pow(reported, 7.0/9)
}
