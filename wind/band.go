package wind

import "math"

// Spread is one set of conditions seen through several growth laws.
type Spread struct {
	LowHs, HighHs float64
	LowTp, HighTp float64
	Seas          [4]Sea // by Bretschneider, Breugem & Holthuijsen, Wilson, Young & Verhagen
}

// BandLaws returns the laws of [Band] in the order of [Spread].Seas.
func BandLaws() [4]Law { return [4]Law{Bretschneider, BreugemHolthuijsen, Wilson, YoungVerhagen} }

// Band returns the conditions' sea by [Bretschneider], [BreugemHolthuijsen],
// [Wilson] and [YoungVerhagen], the four that the measured points at hand cannot
// tell apart within the uncertainty of the wind, and the range they span. The range
// is between laws; it does not hold the error of the wind, which 5 % either way
// turns into 7 % of height. Wilson knows deep water only and is left out of the
// range where its waves feel the bottom.
//
// Special cases are:
//
//	the range is NaN if any sea in it is not known
func Band(c Conditions) Spread {
	s := Spread{LowHs: math.Inf(1), HighHs: math.Inf(-1), LowTp: math.Inf(1), HighTp: math.Inf(-1)}
	for i, law := range BandLaws() {
		sea := Grow(law, c)
		s.Seas[i] = sea
		if sea.Remarks.Has(RemarkNoDepth) {
			continue
		}
		s.LowHs, s.HighHs = math.Min(s.LowHs, sea.Hs), math.Max(s.HighHs, sea.Hs)
		s.LowTp, s.HighTp = math.Min(s.LowTp, sea.Tp), math.Max(s.HighTp, sea.Tp)
	}
	return s
}
