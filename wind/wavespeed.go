package wind

import "math"

// A SpeedBand is a range of speeds in m/s.
type SpeedBand struct{ Low, High float64 }

// dominant are the rows of the table: significant height in m and, in knots, the
// slowest and fastest of coastal and of ocean waters.
var dominant = [...][5]float64{
	{2, 17, 23, 21, 31},
	{3, 19, 27, 25, 35},
	{4, 20, 30, 29, 39},
	{5, 21, 33, 32, 42},
	{6, 23, 35, 36, 46},
}

// DominantSpeed returns the typical speeds (m/s) at which the dominant waves run in seas
// of the significant height hs (m), in coastal waters and on the ocean, as the guidance
// for craft in following seas tabulates them from 2 to 6 m; between the rows it is
// straight. It is a band over all ages of sea, for a first idea where nothing but a
// height is known: [Grow] knows the wind, and the young sea of a few hours' wind and a
// short fetch, lower than the table begins, is slower than all of this.
//
// Special cases are:
//
//	DominantSpeed(hs) = NaN throughout for hs below 2, above 6, or NaN
//
// Source: [IMO-Following] section 4.1.3, table 1.
func DominantSpeed(hs float64) (coastal, ocean SpeedBand) {
	if !(hs >= dominant[0][0] && hs <= dominant[len(dominant)-1][0]) {
		b := SpeedBand{math.NaN(), math.NaN()}
		return b, b
	}
	i := 0
	for i < len(dominant)-2 && hs >= dominant[i+1][0] {
		i++
	}
	a, b := &dominant[i], &dominant[i+1]
	f := (hs - a[0]) / (b[0] - a[0])
	at := func(k int) float64 { return (a[k] + (b[k]-a[k])*f) * Knot }
	return SpeedBand{at(1), at(2)}, SpeedBand{at(3), at(4)}
}
