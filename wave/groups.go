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

// HeightCorrelation returns the coefficient of correlation between the heights of neighbouring waves, which a record
// gives, from the parameter κ of the chain.
//
//	ρ = (E(κ) - (1-κ²)/2 K(κ) - π/4) / (1 - π/4)
//
// K and E are the complete elliptic integrals. It is near κ², and a little less.
//
// Special cases are:
//
//	HeightCorrelation(0) = 0
//	HeightCorrelation(1) = 1
//	HeightCorrelation(kappa) = NaN for kappa outside 0 to 1
//
// Source: [Kimura1980]; [Goda2010Book] ch. 10.
func HeightCorrelation(kappa float64) float64 {
	if !(kappa >= 0 && kappa <= 1) {
		return math.NaN()
	}
	m := kappa * kappa
	switch {
	case m == 1:
		return 1
	case m < 1e-3:
		// E - (1-m)K/2 = π/4 (1 + m/4 + m²/64 + m³/256 + ...): the difference from π/4 loses no digits this way.
		return math.Pi / 4 * m * (1.0/4 + m*(1.0/64+m*(1.0/256+m*25.0/16384))) / (1 - math.Pi/4)
	}
	return (mathext.CompleteE(m) - (1-m)/2*mathext.CompleteK(m) - math.Pi/4) / (1 - math.Pi/4)
}

// Grouping is how high waves follow each other.
type Grouping struct {
	High  float64 // mean number of waves in a run above the level
	Total float64 // mean number of waves from the start of one such run to the start of the next: the length of a set
	Next  float64 // chance that the wave after a high one is high too
}

// RunLengths returns the mean lengths of the runs of waves above a level, given as a part of Hm0 (1 for the waves above
// the significant height, 0.589 for those above the median), with the parameter κ of the chain
// (spectrum.ChainCorrelation gives it; KappaOfCorrelation from a record). With κ = 0 the waves are independent: 1.16 waves in a run above Hm0 and 8.5 from one to the next.
//
//	J₁ = 1/(1 - p₂₂),  J₂ = 1/(1 - p₁₁) + 1/(1 - p₂₂)
//
// p₂₂ is the chance of a high wave after a high one and p₁₁ of a low after a low one, from the joint density of
// neighbouring Rayleigh heights.
//
// Special cases are:
//
//	RunLengths = +Inf, +Inf, 1 for a level of 0 or a kappa of 1
//	RunLengths = 1, +Inf, 0 for a level above 18, which no wave reaches
//	RunLengths has NaN in every field if the level is negative, infinite or NaN, kappa outside 0 to 1, or between 0.9999 and
//	1 where the series takes more than a million terms
//
// Source: [Kimura1980]; [Goda2010Book] ch. 10.
func RunLengths(level, kappa float64) Grouping {
	if !(level >= 0 && finite(level)) || !(kappa >= 0 && kappa <= 1) {
		return Grouping{math.NaN(), math.NaN(), math.NaN()}
	}
	if level == 0 || kappa == 1 {
		return Grouping{math.Inf(1), math.Inf(1), 1}
	}
	// The squares of the heights over their mean square are exponential, and by the Hille-Hardy formula their joint density
	// is exp(-u-v) Σ κ²ⁿ Ln(u) Ln(v), with Laguerre polynomials. The integral of exp(-u) Ln(u) above a is
	// exp(-a) (Ln(a) - Ln-1(a)), so that the chance of both being above a is a single series.
	a := 2 * level * level
	if level > 18 { // no wave is so high
		return Grouping{1, math.Inf(1), 0}
	}
	m := kappa * kappa
	converged := false
	sum, power := 1.0, 1.0
	prev, cur := 1.0, 1-a // L0, L1
	for n := 1; n < 1_000_000; n++ {
		power *= m
		d := cur - prev
		sum += power * d * d
		// |Ln(a)| ≤ exp(a/2): what is left of the series is below this.
		if power/(1-m)*4*math.Exp(a) <= 1e-16*sum {
			converged = true
			break
		}
		prev, cur = cur, ((float64(2*n+1)-a)*cur-float64(n)*prev)/float64(n+1)
	}
	if !converged {
		return Grouping{math.NaN(), math.NaN(), math.NaN()}
	}
	high := math.Exp(-a)
	p22 := math.Min(high*sum, 1)
	// Runs of high and of low waves are as many: up-steps and down-steps alternate.
	up := high * (1 - p22) / -math.Expm1(-a)
	return Grouping{High: 1 / (1 - p22), Total: 1/(1-p22) + 1/up, Next: p22}
}

// KappaOfCorrelation returns the parameter kappa of RunLengths for a correlation coefficient of the heights of neighbouring waves:
// HeightCorrelation the other way about.
//
// Special cases are:
//
//	KappaOfCorrelation(r) = NaN if r is not at least 0 and at most 1
//
// Source: [Kimura1980].
func KappaOfCorrelation(r float64) float64 {
	if !(r >= 0 && r <= 1) {
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
