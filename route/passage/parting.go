package passage

import "math"

// A Parting is how far a swimmer and a board that got away have parted, as a
// band, and whether the swimmer can make up for it.
type Parting struct {
	After       float64 // s since the board got away
	Near, Far   float64 // m between them, least and most
	ByASwimmer  State   // Met: even a slow swimmer gains on the fast board; Broken: not even a fast one on the slow board
	GainAtBest  float64 // m/s, the fast swimmer on the slow board; negative when the board gets away
	GainAtWorst float64 // m/s, the slow swimmer on the fast board
}

// What an empty board does is not published. The band of its leeway is that of
// flat light things between a swamped skiff and an unballasted raft without a
// person, as shares of the wind at 10 m; a person in the water moves at a
// hundredth of it or less; somebody who swims in a wetsuit in waves makes half a
// metre a second to a metre a second, for a few minutes.
const (
	emptyBoardLeast, emptyBoardMost = 0.03, 0.07
	personLeast, personMost         = 0.005, 0.015
	swimLeast, swimMost             = 0.5, 1.0 // m/s
)

// BoardLost returns how far a swimmer and an empty board have parted after
// one, five and ten minutes in a wind of so many metres a second at 10 m, and
// whether swimming makes up for it:
//
//	parted = (board's share - person's share) wind time
//
// Proposal, no published source: no leeway was ever published for an empty
// board of this kind. The band is wide on purpose, and the answer it gives is
// the one to teach: the leash decides.
//
// Special cases are:
//
//	BoardLost(wind) has NaN, and ByASwimmer Unknown, for a wind that is negative, NaN or infinite
func BoardLost(wind float64) []Parting {
	if !(wind >= 0 && wind <= math.MaxFloat64) {
		wind = math.NaN()
	}
	var out []Parting
	for _, after := range []float64{60, 300, 600} {
		slow, fast := (emptyBoardLeast-personMost)*wind, (emptyBoardMost-personLeast)*wind
		p := Parting{After: after, Near: slow * after, Far: fast * after, GainAtBest: swimMost - slow, GainAtWorst: swimLeast - fast}
		switch {
		case wind != wind:
		case p.GainAtWorst > 0:
			p.ByASwimmer = Met
		case !(p.GainAtBest > 0):
			p.ByASwimmer = Broken
		}
		out = append(out, p)
	}
	return out
}
