package wave

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// Two waves of nearly the same period beat: η = a1 cos θ1 + a2 cos θ2 swells up to a1 + a2 and sinks to |a1 - a2| with the
// difference of the frequencies. Real swell has a narrow band of periods, and its sets come and go at random; how long the
// runs of high waves are depends on how alike one wave is to the next.

// A Beat is what two regular waves make together.
type Beat struct {
	Period  float64 // s between one set and the next, 1/|f1 - f2|
	Waves   float64 // waves from one set to the next
	Highest float64 // m, the height in the middle of a set
	Lowest  float64 // m, the height in the middle of a lull
	Length  float64 // m between sets, 2π/|k1 - k2|
	Speed   float64 // m/s at which the sets travel, Δω/Δk: near the group speed
}

// Sets returns what two regular waves make together that travel the same way over the depth in metres, from their heights in
// metres and periods in seconds. The number of waves in a set goes with the mean of the two frequencies.
//
// Special cases are:
//
//	Sets has an infinite Period, Length and number of Waves if the periods are equal
//	Sets is NaN throughout if a height is negative, infinite or NaN, a period is zero, negative, infinite or NaN, or the depth
//	is zero, negative or NaN
//
// Source: [CEM-II-1] "Group velocity"; [DeanDalrymple1991] ch. 4.
func (w Water) Sets(height1, period1, height2, period2, depth float64) Beat {
	a, b := w.Solve(period1, depth), w.Solve(period2, depth)
	h1, h2 := significant(height1), significant(height2)
	df := math.Abs(1/period1 - 1/period2)
	dk := math.Abs(a.Wavenumber - b.Wavenumber)
	speed := 2 * math.Pi * df / dk
	if df == 0 {
		speed = a.GroupSpeed
	}
	if math.IsNaN(h1 + h2 + dk) {
		nan := math.NaN()
		return Beat{nan, nan, nan, nan, nan, nan}
	}
	return Beat{
		Period:  1 / df,
		Waves:   (1/period1 + 1/period2) / 2 / df,
		Highest: h1 + h2,
		Lowest:  math.Abs(h1 - h2),
		Length:  2 * math.Pi / dk,
		Speed:   speed,
	}
}

// Sets returns what two regular waves make together; see Water.Sets, whose defaults it uses.
func Sets(height1, period1, height2, period2, depth float64) Beat {
	return Water{}.Sets(height1, period1, height2, period2, depth)
}

// RunLengths returns the mean number of waves in a run of waves higher than the height, and from the beginning of one run to the
// beginning of the next, in a sea of the significant height, both heights in metres. The heights are Rayleigh, and follow each
// other as a chain in which neighbours are alike by the parameter kappa (0: independent; some 0.4 in a wind sea, 0.6 to 0.8 in
// swell): with kappa = 0 they are 1/(1 - p) and 1/p(1 - p), p the part of the waves that are higher. The waves above Hs come
// 1.16 in a row if independent.
//
// Special cases are:
//
//	RunLengths is NaN if a height is negative, infinite or NaN, the significant height is zero, or kappa is not at least 0 and below 1
//	RunLengths(0, hs, kappa) = +Inf, +Inf: every wave is higher
//
// Source: [Goda1970] for independent heights; [Kimura1980] for the chain.
func RunLengths(height, hs, kappa float64) (run, total float64) {
	h, s := significant(height), significant(hs)
	if !(s > 0 && kappa >= 0 && kappa < 1) || math.IsNaN(h) {
		return math.NaN(), math.NaN()
	}
	// In units of the mean square, (H/Hrms)² = t. The joint probability that two neighbours exceed t is, as a mixture,
	//
	//	(1 - κ²) Σ κ^2j Q(j + 1, t/(1 - κ²))²
	//
	// with Q the upper incomplete gamma function, regularised; and of both staying below, with P = 1 - Q.
	t := 2 * (h / s) * (h / s)
	p := math.Exp(-t)
	if p == 0 {
		return 1, math.Inf(1)
	}
	if t == 0 {
		return math.Inf(1), math.Inf(1)
	}
	both := p * p
	if kappa > 0 {
		k2 := kappa * kappa
		x := t / (1 - k2)
		sum, weight := 0.0, 1-k2
		term := math.Exp(-x) // x^j e^-x/j!
		q := term            // Q(j + 1, x) = sum of the terms up to j
		for j := 0; j < 20000; j++ {
			sum += weight * q * q
			weight *= k2
			if weight < 1e-17*sum && float64(j) > x {
				break
			}
			term *= x / float64(j+1)
			q = math.Min(1, q+term)
		}
		both = sum
	}
	stay := both / p                      // after a high wave a high one
	stayLow := (1 - 2*p + both) / (1 - p) // after a low wave a low one
	run = 1 / (1 - stay)
	return run, run + 1/(1-stayLow)
}

// HeightCorrelation returns the correlation coefficient of the heights of neighbouring waves that the parameter kappa of RunLengths
// stands for:
//
//	(E(κ) - (1 - κ²)K(κ)/2 - π/4)/(1 - π/4)
//
// with the complete elliptic integrals of the modulus κ. It is near κ² and a little below.
//
// Special cases are:
//
//	HeightCorrelation(kappa) = NaN if kappa is not at least 0 and below 1
//
// Source: [Kimura1980]; [BattjesVanVledder1984].
func HeightCorrelation(kappa float64) float64 {
	if !(kappa >= 0 && kappa < 1) {
		return math.NaN()
	}
	m := kappa * kappa
	if m < 0.01 { // the three parts cancel: the series
		return math.Pi / 16 / (1 - math.Pi/4) * m * (1 + m*(1.0/16+m*(1.0/64+m*(25.0/4096))))
	}
	return (mathext.CompleteE(m) - (1-m)*mathext.CompleteK(m)/2 - math.Pi/4) / (1 - math.Pi/4)
}

// KappaOfCorrelation returns the parameter kappa of RunLengths for a correlation coefficient of the heights of neighbouring waves:
// HeightCorrelation the other way about.
//
// Special cases are:
//
//	KappaOfCorrelation(r) = NaN if r is not at least 0 and below 1
//
// Source: [Kimura1980].
func KappaOfCorrelation(r float64) float64 {
	if !(r >= 0 && r < 1) {
		return math.NaN()
	}
	lo, hi := 0.0, 1.0
	for range 60 {
		mid := (lo + hi) / 2
		if HeightCorrelation(mid) < r {
			lo = mid
		} else {
			hi = mid
		}
	}
	return lo
}
