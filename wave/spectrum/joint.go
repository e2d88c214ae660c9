package spectrum

import "math"

// Longuet-Higgins' joint density of the heights and periods of single waves, from the envelope of a narrow spectrum:
//
//	p(R, τ) = 2L/(√π ν) (R/τ)² exp(-R² (1 + (1 - 1/τ)²/ν²))
//	1/L = (1 + 1/√(1+ν²))/2
//
// with R = H/√(8m₀), so that H/Hm0 = R/√2, and τ = T/Tm01. High waves have periods near the mean, low ones any. L is the
// share of the theory's periods that are positive, so the density integrates to 1.

// A Joint is the joint density of wave height and period for a spectrum of narrowness ν (see Narrowness): what part of the
// waves has the height and the period that a board can ride.
//
// It is a theory of a narrow spectrum: good to about ν = 0.6, and then better for the higher waves.
//
// Source: [LonguetHiggins1983] sec. 2.
type Joint struct {
	Nu float64 // narrowness ν, above 0
}

func (j Joint) valid() bool { return positive(j.Nu) }

// scale returns L.
func (j Joint) scale() float64 { return 2 / (1 + 1/math.Sqrt(1+j.Nu*j.Nu)) }

// Density returns the joint density of the height as a part of Hm0 and the period as a part of Tm01, per unit of both.
//
// Special cases are:
//
//	Density = 0 for a height or period of 0
//	Density = NaN if the height or the period is negative, infinite or NaN, or Nu is not positive and finite
//
// Source: [LonguetHiggins1983] sec. 2; the constant quoted in the tutorial of [WAFO] is half of it and does not
// integrate to 1.
func (j Joint) Density(height, period float64) float64 {
	if !nonNegative(height) || !nonNegative(period) || !j.valid() {
		return math.NaN()
	}
	if height == 0 || period == 0 {
		return 0
	}
	r := math.Sqrt2 * height
	d := (1 - 1/period) / j.Nu
	q := r / period
	return math.Sqrt2 * 2 * j.scale() / (math.Sqrt(math.Pi) * j.Nu) * q * q * math.Exp(-r*r*(1+d*d))
}

// PeriodDensity returns the density of the periods of all waves, per unit of T/Tm01.
//
//	p(τ) = L/(2ν τ²) (1 + (1 - 1/τ)²/ν²)^(-3/2)
//
// Special cases are:
//
//	PeriodDensity(0) = 0
//	PeriodDensity = NaN if the period is negative, infinite or NaN, or Nu is not positive and finite
//
// Source: [LonguetHiggins1983] sec. 3.
func (j Joint) PeriodDensity(period float64) float64 {
	if !nonNegative(period) || !j.valid() {
		return math.NaN()
	}
	if period == 0 {
		return 0
	}
	d := (1 - 1/period) / j.Nu
	return j.scale() / (2 * j.Nu * period * period) * math.Pow(1+d*d, -1.5)
}

// PeriodBelow returns the share of all waves with a period below T/Tm01.
//
//	P(τ) = L/2 (1 + x/√(1+x²)),  x = (1 - 1/τ)/ν
//
// Special cases are:
//
//	PeriodBelow(+Inf) = 1
//	PeriodBelow = NaN if the period is negative or NaN, or Nu is not positive and finite
//
// Source: [LonguetHiggins1983] sec. 3, integrated.
func (j Joint) PeriodBelow(period float64) float64 {
	if !(period >= 0) || !j.valid() {
		return math.NaN()
	}
	if period == 0 {
		return 0
	}
	// With x = (1 - 1/τ)/ν the density is L/2 (1+x²)^(-3/2) dx, whose integral is L/2 x/√(1+x²).
	x := (1 - 1/period) / j.Nu
	return j.scale() / 2 * (x/math.Sqrt(1+x*x) + 1)
}

// HeightDensity returns the density of the heights of all waves, per unit of H/Hm0: Rayleigh's but for a few of the
// lowest.
//
//	p(R) = 2R exp(-R²) L Φ(R√2/ν)
//
// Φ is the normal distribution.
//
// Special cases are:
//
//	HeightDensity = NaN if the height is negative, infinite or NaN, or Nu is not positive and finite
//
// Source: [LonguetHiggins1983] sec. 3.
func (j Joint) HeightDensity(height float64) float64 {
	if !nonNegative(height) || !j.valid() {
		return math.NaN()
	}
	r := math.Sqrt2 * height
	return math.Sqrt2 * 2 * r * math.Exp(-r*r) * j.scale() * 0.5 * math.Erfc(-r/j.Nu)
}

// Mode returns the height as a part of Hm0 and the period as a part of Tm01 at which the density is greatest.
//
//	R = 1/√(1+ν²),  τ = 1/(1+ν²)
//
// Special cases are:
//
//	Mode = NaN, NaN if Nu is not positive and finite
//
// Source: [LonguetHiggins1983] sec. 2.
func (j Joint) Mode() (height, period float64) {
	if !j.valid() {
		return math.NaN(), math.NaN()
	}
	n := 1 + j.Nu*j.Nu
	return 1 / math.Sqrt(2*n), 1 / n
}

// Share returns the share of all waves with a height of at least H/Hm0 and a period between two parts of Tm01.
//
// Special cases are:
//
//	Share = 0 for shortest = longest
//	Share = NaN unless 0 ≤ shortest ≤ longest, the height is 0 or above and finite, and Nu positive and finite
//
// Source: [LonguetHiggins1983] sec. 2, integrated.
func (j Joint) Share(height, shortest, longest float64) float64 {
	if !nonNegative(height) || !(shortest >= 0 && shortest <= longest) || !j.valid() {
		return math.NaN()
	}
	if height == 0 {
		return j.PeriodBelow(longest) - j.PeriodBelow(shortest)
	}
	// Over the period the density is Gaussian in x = (1 - 1/τ)/ν, whose integral is an error function; over the height
	// 2R e^-R² remains, so that with s = R² the rest is smooth and ends at about s = 40 more.
	r0 := math.Sqrt2 * height
	lo, hi := math.Inf(-1), 1/j.Nu
	if shortest > 0 {
		lo = (1 - 1/shortest) / j.Nu
	}
	if longest == 0 {
		return 0
	}
	if !math.IsInf(longest, 1) {
		hi = (1 - 1/longest) / j.Nu
	}
	f := func(r float64) float64 {
		// R/√π ∫ exp(-R²x²) dx = (erf(R hi) - erf(R lo))/2, by the smaller tail.
		var e float64
		if lo > 0 {
			e = math.Erfc(r*lo) - math.Erfc(r*hi)
		} else {
			e = math.Erf(r*hi) - math.Erf(r*lo)
		}
		return 2 * r * math.Exp(-r*r) * j.scale() * e / 2
	}
	top := math.Sqrt(r0*r0 + 40)
	steps := math.Ceil((top - r0) / 0.25)
	sum := 0.0
	for i := range int(steps) {
		sum += gauss(f, r0+(top-r0)*float64(i)/steps, r0+(top-r0)*float64(i+1)/steps)
	}
	return sum
}
