package tide

import (
	"math"
	"time"
)

// A Mark ties a value to a range or a height of the tide: the rate of a
// stream, or a height difference, at mean springs or mean neaps.
type Mark struct {
	At    float64 // range or height of the tide, metres
	Value float64 // rate in m/s, difference in metres: what belongs to it
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
	return math.Max(0, neaps.Value+(springs.Value-neaps.Value)*Springness(r, springs.At, neaps.At))
}

// RateByFactor returns the rate of a stream in m/s on a tide of range r in
// metres when only its rate at mean springs is known: in proportion to range.
//
//	v = vs R/Rs
//
// Special cases are:
//
//	RateByFactor = NaN unless springs.At > 0, springs.Value ≥ 0, r ≥ 0, all finite
//
// Source: [SeaKayakNav] section 2.10, St. Mary's Sound.
func RateByFactor(r float64, springs Mark) float64 {
	if !(r >= 0 && springs.At > 0 && springs.Value >= 0) || math.IsInf(r+springs.At+springs.Value, 0) {
		return math.NaN()
	}
	return springs.Value * (r / springs.At)
}

// A Kind is the character of the tide at a place.
type Kind uint8

// The kinds of tide, by form number.
const (
	UnknownKind      Kind = iota
	Semidiurnal           // below 0.25: two nearly equal tides a lunar day
	MixedSemidiurnal      // 0.25 to 1.5: two unequal tides most days
	MixedDiurnal          // 1.5 to 3: often one tide a day
	Diurnal               // above 3: one tide a lunar day
)

// String returns the name of the kind.
func (k Kind) String() string {
	switch k {
	case Semidiurnal:
		return "semidiurnal"
	case MixedSemidiurnal:
		return "mixed, mainly semidiurnal"
	case MixedDiurnal:
		return "mixed, mainly diurnal"
	case Diurnal:
		return "diurnal"
	}
	return "unknown"
}

// FormNumber returns the form number of the tide from the amplitudes of four
// constituents, all in one unit:
//
//	F = (K1 + O1) / (M2 + S2)
//
// The curve between turns is for semidiurnal tides; KindOf names the rest.
//
// Special cases are:
//
//	FormNumber = NaN if any is negative, NaN or infinite, or M2 + S2 is zero
//
// Source: [Defant1961] vol. 2 (form number of Courtier).
func FormNumber(k1, o1, m2, s2 float64) float64 {
	if !(k1 >= 0 && o1 >= 0 && m2 >= 0 && s2 >= 0 && m2+s2 > 0) || math.IsInf(k1+o1, 0) || math.IsInf(m2+s2, 0) {
		return math.NaN()
	}
	return (k1 + o1) / (m2 + s2)
}

// KindOf returns the kind of tide of a form number: semidiurnal to 0.25, mixed
// to 1.5 and to 3, diurnal above.
//
// Special cases are:
//
//	KindOf(F) = UnknownKind for F negative or NaN
//
// Source: [Defant1961] vol. 2 (form number of Courtier).
func KindOf(formNumber float64) Kind {
	switch {
	case !(formNumber >= 0):
		return UnknownKind
	case formNumber < 0.25:
		return Semidiurnal
	case formNumber < 1.5:
		return MixedSemidiurnal
	case formNumber < 3:
		return MixedDiurnal
	}
	return Diurnal
}

// Ranges returns the ranges in metres of each whole rise and fall of the table that
// begins in [from, to), in order.
func (t *Table) Ranges(from, to time.Time) []float64 {
	var r []float64
	for i := range t.limbs {
		if u := t.turns[i]; t.limbs[i] != missing && !u.Time.Before(from) && u.Time.Before(to) {
			r = append(r, Limb{u, t.turns[i+1]}.Range())
		}
	}
	return r
}

// A Season is where a tide stands between neaps and springs.
type Season uint8

// The seasons of the fortnight.
const (
	UnknownSeason Season = iota
	Neaps                // nearer to mean neaps than a third of the way
	Between
	Springs // nearer to mean springs than a third of the way
)

// String returns the name of the season.
func (s Season) String() string {
	switch s {
	case Neaps:
		return "neaps"
	case Between:
		return "between neaps and springs"
	case Springs:
		return "springs"
	}
	return "unknown"
}

// SeasonOf names a springness (0 at mean neaps, 1 at mean springs): neaps below one third,
// springs above two thirds. The thirds are a rule of the trade.
//
// Special cases are:
//
//	SeasonOf(NaN) = UnknownSeason
func SeasonOf(springness float64) Season {
	switch {
	case math.IsNaN(springness):
		return UnknownSeason
	case springness < 1.0/3:
		return Neaps
	case springness > 2.0/3:
		return Springs
	}
	return Between
}
