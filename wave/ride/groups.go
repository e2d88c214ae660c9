package ride

import "math"

// HeightPeriodDensity returns the joint density of scaled height R and scaled
// period t of the waves of a narrow sea of bandwidth nu.
//
//	p(R, t) = 2L/(√π ν) (R/t)² exp{ −R² [1 + (1 − 1/t)²/ν²] }
//	1/L     = ½ [1 + (1 + ν²)^(−½)]
//
// R is the height over Hm0, times √2; t the period over Tm01. The constant
// normalises the density over t > 0; the one printed in the tutorial where the
// form was read is half of it.
//
// Special cases are:
//
//	HeightPeriodDensity = 0 for R = 0, t = 0 or either +Inf
//	HeightPeriodDensity = NaN for R < 0, t < 0, ν not positive and finite, or any NaN
//
// Source: [LonguetHiggins1983] as restated in the [WAFO] tutorial, model by
// Longuet-Higgins.
func HeightPeriodDensity(r, t, nu float64) float64 {
	if !(r >= 0 && t >= 0 && nu > 0) || math.IsInf(nu, 1) {
		return math.NaN()
	}
	if r == 0 || t == 0 || math.IsInf(r, 1) || math.IsInf(t, 1) {
		return 0
	}
	x := 1 - 1/t
	q := r / t * math.Exp(-r*r*(1+x*x/(nu*nu))/2)
	return 2 * heightPeriodL(nu) / (math.Sqrt(math.Pi) * nu) * q * q
}

func heightPeriodL(nu float64) float64 { return 2 / (1 + 1/math.Sqrt(1+nu*nu)) }

// RunLength returns the mean number of successive waves above a threshold
// height, for waves whose neighbours' heights are correlated by kappa.
//
//	j = 1 / (1 − p₂₂)
//
// where p₂₂, the chance that a high wave is followed by a high one, is the mean
// of the bivariate Rayleigh distribution of parameter κ over heights above the
// threshold. threshold is the height over Hm0, kappa that of
// [GroupCorrelation]. Good to 1e-6 for κ up to 0.95.
//
// Special cases are:
//
//	RunLength(x, 0) = 1/(1 − exp(−2x²)), waves without memory
//	RunLength(0, κ) = +Inf
//	RunLength = NaN for threshold < 0 or above 3, κ outside [0, 0.99], or NaN
//
// Source: [Kimura1980] (memory).
func RunLength(threshold, kappa float64) float64 {
	p22 := stay(threshold, kappa)
	return 1 / (1 - p22)
}

// TotalRunLength returns the mean number of waves from the start of one high
// run to the start of the next: the high run and the low one after it.
//
// Arguments, validity and special cases are those of [RunLength]; with
// threshold 0 there is no low run and the answer is +Inf.
//
// Source: [Kimura1980] (memory).
func TotalRunLength(threshold, kappa float64) float64 {
	p22 := stay(threshold, kappa)
	high := math.Exp(-2 * threshold * threshold) // share of high waves
	// Runs of high and of low waves alternate: the flow from high to low
	// equals the flow back.
	return 1 / (high * (1 - p22))
}

// stay is p₂₂. With a = h²/h_rms² = 2x² exponentially distributed, the next
// wave given this one is a non-central chi-square of two degrees; its tail, the
// Marcum function, is a sum of Poisson weights, and the mean over a is done on
// the same sum:
//
//	P(both above A) = Σ wᵢ Qᵢ(A)²   for a mixture, wᵢ = (1 − κ²) κ²ⁱ
//
// with Qᵢ the tail of a gamma variable of order i+1 at A/(1 − κ²).
func stay(threshold, kappa float64) float64 {
	if !(threshold >= 0 && threshold <= 3 && kappa >= 0 && kappa <= 0.99) {
		return math.NaN()
	}
	k2 := kappa * kappa
	a := 2 * threshold * threshold / (1 - k2)
	term := math.Exp(-a) // Poisson term of order i
	tail := term         // its sum: tail of the gamma variable
	w := 1 - k2
	both := 0.0
	for i := 0; i < 4000 && w > 1e-18; i++ {
		both += w * tail * tail
		w *= k2
		term *= a / float64(i+1)
		tail = math.Min(1, tail+term)
	}
	return both / math.Exp(-2*threshold*threshold)
}

// HeightCorrelation returns the correlation of the heights of successive waves
// for the parameter kappa of their joint Rayleigh distribution.
//
//	ρ = [E(κ) − ½(1 − κ²)K(κ) − π/4] / (1 − π/4)
//
// E and K are the complete elliptic integrals of modulus κ.
//
// Special cases are:
//
//	HeightCorrelation(0) = 0
//	HeightCorrelation(1) = 1
//	HeightCorrelation = NaN for κ outside [0, 1] or NaN
//
// Source: [Kimura1980] (memory).
func HeightCorrelation(kappa float64) float64 {
	if !(kappa >= 0 && kappa <= 1) {
		return math.NaN()
	}
	if kappa == 1 {
		return 1
	}
	// Arithmetic-geometric mean for K, with the running sum that gives E.
	a, b, c := 1.0, math.Sqrt(1-kappa*kappa), kappa
	sum, pow := c*c/2, 0.5
	for range 40 {
		if !(math.Abs(c) > 1e-17) {
			break
		}
		a, b, c = (a+b)/2, math.Sqrt(a*b), (a-b)/2
		pow *= 2
		sum += pow * c * c
	}
	k := math.Pi / (2 * a)
	e := k * (1 - sum)
	return (e - (1-kappa*kappa)*k/2 - math.Pi/4) / (1 - math.Pi/4)
}
