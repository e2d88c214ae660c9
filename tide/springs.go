package tide

import "math"

// A Mark ties a value to a range of the tide: the rate of a stream, or a
// height difference, at mean springs or mean neaps.
type Mark struct {
	Range float64 // range of the tide, metres
	Value float64 // rate in m/s, or whatever belongs to that range
}

// Springness returns how far the tide is from neaps to springs,
//
//	(R − Rn) / (Rs − Rn)
//
// 0 at mean neaps, 1 at mean springs, outside at smaller and greater tides.
//
// Special cases are:
//
//	Springness = NaN if any is NaN or infinite, if r is negative, or unless springs > neaps ≥ 0
//
// Source: [SeaKayakNav] section 2.10.
func Springness(r, springs, neaps float64) float64 {
	if !(r >= 0) || math.IsInf(r, 0) || !(springs > neaps && neaps >= 0) || math.IsInf(springs, 0) {
		return math.NaN()
	}
	return (r - neaps) / (springs - neaps)
}

// RateAtRange returns the rate of a stream in m/s on a tide of range r in
// metres, straight between its rates at mean springs and mean neaps and
// extrapolated beyond them, but never below zero:
//
//	v = vn + (vs − vn) (R − Rn)/(Rs − Rn)
//
// Special cases are:
//
//	RateAtRange = NaN where Springness is, and if a rate is negative, NaN or infinite
//
// Source: [SeaKayakNav] section 2.10.
func RateAtRange(r float64, springs, neaps Mark) float64 {
	if !(springs.Value >= 0 && neaps.Value >= 0) || math.IsInf(springs.Value, 0) || math.IsInf(neaps.Value, 0) {
		return math.NaN()
	}
	return math.Max(0, neaps.Value+(springs.Value-neaps.Value)*Springness(r, springs.Range, neaps.Range))
}

// RateByFactor returns the rate of a stream in m/s on a tide of range r in
// metres when only its rate at mean springs is known: in proportion to range.
//
//	v = vs R/Rs
//
// Special cases are:
//
//	RateByFactor = NaN unless springs.Range > 0, springs.Value ≥ 0, r ≥ 0, all finite
//
// Source: [SeaKayakNav] section 2.10, St. Mary's Sound.
func RateByFactor(r float64, springs Mark) float64 {
	if !(r >= 0 && springs.Range > 0 && springs.Value >= 0) || math.IsInf(r+springs.Range+springs.Value, 0) {
		return math.NaN()
	}
	return springs.Value * (r / springs.Range)
}
