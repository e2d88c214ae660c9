package spectrum

import (
	"cmp"
	"fmt"
	"math"
	"slices"
)

// A Crossing is one wave of a record between two crossings of the mean level the same way.
type Crossing struct {
	Start  float64 // time of the crossing that begins it, s from the first sample
	Period float64 // to the next such crossing, s
	Crest  float64 // highest above the mean level, m
	Trough float64 // lowest below it, m, negative
}

// Height returns crest less trough, in metres.
//
// Source: [IAHR1989] H.
func (c Crossing) Height() float64 { return c.Crest - c.Trough }

// A Cut says which crossings of the mean level part the waves of a record.
type Cut int

// The cuts. In a Gaussian sea the two give the same statistics; a trough that leads its crest is what a swimmer sees as one
// wave.
const (
	UpCrossings   Cut = iota // from one upward crossing to the next: crest first
	DownCrossings            // from one downward crossing to the next: trough first, the rule of the list of sea state parameters
)

// Crossings returns the waves of a record of the surface with a sample every dt seconds. The mean is taken off first; the
// times of the crossings are interpolated between samples, and so are crests and troughs by the parabola through the three
// highest (lowest) samples, without which a coarse record loses height. What lies before the first crossing and after
// the last is no wave.
//
// The error wraps ErrInput: a dt that is not positive and finite, fewer than 3 samples, or one that is infinite or NaN.
// A record without a wave is no error.
//
// Source: [Goda2010Book] sec. 11.1.2; [IAHR1989].
func Crossings(record []float64, dt float64, cut Cut) ([]Crossing, error) {
	if !positive(dt) {
		return nil, inputError("dt", dt, "above 0 s")
	}
	if len(record) < 3 {
		return nil, inputError("record", fmt.Sprintf("%d samples", len(record)), "3 or more")
	}
	if cut != UpCrossings && cut != DownCrossings {
		return nil, inputError("cut", int(cut), "UpCrossings or DownCrossings")
	}
	mean := 0.0
	for i, v := range record {
		if !finite(v) {
			return nil, inputError(fmt.Sprintf("record[%d]", i), v, "finite")
		}
		mean += (v - mean) / float64(i+1)
	}
	sign := 1.0
	if cut == DownCrossings {
		sign = -1
	}
	at := func(i int) float64 { return sign * (record[i] - mean) }
	var waves []Crossing
	begin, first := math.NaN(), 0
	for i := 1; i < len(record); i++ {
		a, b := at(i-1), at(i)
		if !(a < 0 && b >= 0) {
			continue
		}
		t := (float64(i-1) + a/(a-b)) * dt
		if begin >= 0 {
			hi, lo := extreme(at, first, i-1, 1), -extreme(at, first, i-1, -1)
			w := Crossing{Start: begin, Period: t - begin, Crest: hi, Trough: lo}
			if cut == DownCrossings {
				w.Crest, w.Trough = -lo, -hi
			}
			waves = append(waves, w)
		}
		begin, first = t, i
	}
	return waves, nil
}

// extreme returns the greatest of sign times the samples from..to, with the parabola through its neighbours.
func extreme(at func(int) float64, from, to int, sign float64) float64 {
	k := from
	for i := from; i <= to; i++ {
		if sign*at(i) > sign*at(k) {
			k = i
		}
	}
	y := sign * at(k)
	// k has neighbours: before it is the sample that was still below, after it the one of the next crossing.
	l, r := sign*at(k-1), sign*at(k+1)
	if c := l - 2*y + r; c < 0 && y >= l && y >= r {
		y -= (r - l) * (r - l) / (8 * c)
	}
	return y
}

// A Summary is the statistics of the waves of a record.
type Summary struct {
	Waves int // how many

	Max     float64 // the highest, m
	Tenth   float64 // mean of the highest tenth, H1/10, m
	Third   float64 // mean of the highest third, H1/3, the significant height of the record, m
	Mean    float64 // mean height, m
	RMS     float64 // root mean square of the heights, m
	TMax    float64 // period of the highest, s
	TTenth  float64 // mean period of the highest tenth, s
	TThird  float64 // mean period of the highest third, T1/3, s
	TMean   float64 // mean period, s
	Pearson float64 // correlation of each height with the next, which HeightCorrelation gives for a spectrum
}

// Summarise returns the statistics of the waves. The highest tenth and third are of the whole number nearest to a tenth and
// a third of the waves, at least one.
//
// Special cases are:
//
//	Summarise has NaN in every field for no waves, or if a height or period is NaN
//	Summarise has a Pearson of NaN for fewer than 3 waves or all of one height
//
// Source: [Goda2010Book] sec. 2.1; [IAHR1989].
func Summarise(waves []Crossing) Summary {
	n := len(waves)
	nan := math.NaN()
	s := Summary{n, nan, nan, nan, nan, nan, nan, nan, nan, nan, nan}
	if n == 0 {
		return s
	}
	order := make([]Crossing, n)
	copy(order, waves)
	slices.SortStableFunc(order, func(a, b Crossing) int { return cmp.Compare(b.Height(), a.Height()) })
	var h, h2, t float64
	mean := func(k int) (float64, float64) {
		k = max(k, 1)
		h, t := 0.0, 0.0
		for _, w := range order[:k] {
			h, t = h+w.Height(), t+w.Period
		}
		return h / float64(k), t / float64(k)
	}
	for _, w := range order {
		h, h2, t = h+w.Height(), h2+w.Height()*w.Height(), t+w.Period
	}
	if math.IsNaN(h) || math.IsNaN(t) {
		return s
	}
	s.Max, s.TMax = order[0].Height(), order[0].Period
	s.Tenth, s.TTenth = mean(int(math.Round(float64(n) / 10)))
	s.Third, s.TThird = mean(int(math.Round(float64(n) / 3)))
	s.Mean, s.RMS, s.TMean = h/float64(n), math.Sqrt(h2/float64(n)), t/float64(n)
	if n >= 3 {
		s.Pearson = neighbours(waves)
	}
	return s
}

// neighbours returns the correlation of each height with the next.
func neighbours(waves []Crossing) float64 {
	var a, b, aa, bb, ab float64
	n := float64(len(waves) - 1)
	for i := 1; i < len(waves); i++ {
		x, y := waves[i-1].Height(), waves[i].Height()
		a, b, aa, bb, ab = a+x, b+y, aa+x*x, bb+y*y, ab+x*y
	}
	v, w := aa-a*a/n, bb-b*b/n
	if !(v > 1e-12*aa && w > 1e-12*bb) {
		return math.NaN()
	}
	return (ab - a*b/n) / math.Sqrt(v*w)
}

// CountRuns returns the mean number of waves in a run above the height in metres, the mean from the start of one run to the
// start of the next, and how many runs there are: what RunLengths foretells. A run cut short by an end of the record counts.
//
// Special cases are:
//
//	CountRuns has NaN in both means if there is no run, and in the second if there is only one
//	CountRuns has NaN in both means and 0 runs if the height is NaN
//
// Source: [Goda2010Book] sec. 10.1.
func CountRuns(waves []Crossing, height float64) (run, total float64, runs int) {
	high, first, last := 0, 0, 0
	inside := false
	for i, w := range waves {
		if w.Height() > height {
			high++
			if !inside {
				if runs == 0 {
					first = i
				}
				last = i
				runs++
			}
			inside = true
		} else {
			inside = false
		}
	}
	run, total = math.NaN(), math.NaN()
	if runs > 0 {
		run = float64(high) / float64(runs)
	}
	if runs > 1 {
		total = float64(last-first) / float64(runs-1)
	}
	return run, total, runs
}
