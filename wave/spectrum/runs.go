package spectrum

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// High waves come in runs, because the height of a wave is correlated with that of the next. Kimura takes the heights for a
// Markov chain with Rayleigh heights of correlation parameter κ between neighbours, which Battjes and van Vledder take from
// the spectrum: κ is the correlation of the envelope with itself one mean wave later.
//
//	κ = |∫ S(f) exp(2πi f τ) df| / m₀,  τ = Tm02

// EnvelopeCorrelation returns κ, from 0 (each wave by itself) to 1 (all alike), of the envelope of the surface with itself
// a lag in seconds later. With the lag Tm02 or Tm01 it is the parameter of Kimura's runs; ChainCorrelation takes Tm02.
//
// Special cases are:
//
//	EnvelopeCorrelation = 1 for a lag of 0
//	EnvelopeCorrelation = NaN if the lag is infinite or NaN, or the spectrum has no variance
//
// Source: [BattjesVanVledder1984]; [Goda2010Book] ch. 10.
func EnvelopeCorrelation(s Spectrum, lag float64) float64 {
	m0 := Moment(s, 0)
	if !positive(m0) || !finite(lag) {
		return math.NaN()
	}
	c, n := fourier(s, math.Abs(lag), 0, math.Inf(1))
	return math.Min(math.Hypot(c, n)/m0, 1)
}

// ChainCorrelation returns κ between neighbouring waves, EnvelopeCorrelation at Tm02: 0.43 for a fully risen sea, 0.57 for
// JONSWAP's mean.
//
// Special cases are:
//
//	ChainCorrelation = NaN if the spectrum has no Tm02
//
// Source: [BattjesVanVledder1984].
func ChainCorrelation(s Spectrum) float64 {
	return EnvelopeCorrelation(s, ZeroCrossingPeriod(Moment(s, 0), Moment(s, 2)))
}

// Autocovariance returns the covariance in m² of the surface with itself a lag in seconds later, ∫ S cos 2πfτ df: the
// variance at lag 0, then down through 0 and up again at about each period, the less the broader the spectrum.
//
// Special cases are:
//
//	Autocovariance(s, 0) = m₀
//	Autocovariance = NaN if the lag is infinite or NaN
//
// Source: [Goda2010Book] Eq. 2.5 (Wiener-Khintchine); [WAFO] tocovdata.
func Autocovariance(s Spectrum, lag float64) float64 {
	if !finite(lag) {
		return math.NaN()
	}
	c, _ := fourier(s, math.Abs(lag), 0, math.Inf(1))
	return c
}

// fourier returns the integrals of S cos 2πfτ and S sin 2πfτ from lo to hi.
func fourier(s Spectrum, tau, lo, hi float64) (c, n float64) {
	switch v := s.(type) {
	case Bins:
		for i, f := range v.F {
			a, b := math.Max(f-v.W[i]/2, lo), math.Min(f+v.W[i]/2, hi)
			if b <= a {
				continue
			}
			// The mean of the cosine over a band is that at its middle times sin(x)/x.
			w := v.S[i] * (b - a) * sinc(math.Pi*(b-a)*tau)
			sn, cs := math.Sincos(2 * math.Pi * f * tau)
			c, n = c+w*cs, n+w*sn
		}
		return c, n
	case Points:
		c = v.integral(lo, hi, func(f, d float64) float64 { return d * math.Cos(2*math.Pi*f*tau) })
		n = v.integral(lo, hi, func(f, d float64) float64 { return d * math.Sin(2*math.Pi*f*tau) })
		return c, n
	case Band:
		lo, hi = math.Max(lo, v.Low), math.Min(hi, v.High)
		if lo >= hi {
			return 0, 0
		}
		return fourier(v.Spectrum, tau, lo, hi)
	case Sum:
		for _, p := range v {
			pc, pn := fourier(p, tau, lo, hi)
			c, n = c+pc, n+pn
		}
		return c, n
	}
	if tau == 0 {
		return MomentWithin(s, 0, lo, hi), 0
	}
	// Panels of at most a tenth of f and half a turn, ending at the peak, up to where 1e-12 of the variance is left; a lag of
	// very many periods would take very many panels, and there the rest is nearer to 0 than that anyway.
	fp := PeakFrequency(s)
	if !positive(fp) {
		return math.NaN(), math.NaN()
	}
	top := math.Min(1000*fp, hi)
	for f, k := math.Max(fp/10, lo), 0; f < top && k < 100000; k++ {
		next := math.Min(math.Min(f*1.1, f+0.5/tau), top)
		if f < fp && next > fp {
			next = fp
		}
		h, m := (next-f)/2, (f+next)/2
		for i, x := range nodes {
			g := m + h*x
			sn, cs := math.Sincos(2 * math.Pi * g * tau)
			d := s.Density(g) * weights[i] * h
			c, n = c+d*cs, n+d*sn
		}
		f = next
	}
	return c, n
}

func sinc(x float64) float64 {
	if x == 0 {
		return 1
	}
	return math.Sin(x) / x
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

// Runs is how high waves follow each other.
type Runs struct {
	High  float64 // mean number of waves in a run above the level
	Total float64 // mean number of waves from the start of one such run to the start of the next: the length of a set
	Next  float64 // chance that the wave after a high one is high too
}

// RunLengths returns the mean lengths of the runs of waves above a level, given as a part of Hm0 (1 for the waves above
// the significant height, 0.589 for those above the median), with the parameter κ of the chain (ChainCorrelation). With
// κ = 0 the waves are independent: 1.16 waves in a run above Hm0 and 8.5 from one to the next.
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
func RunLengths(level, kappa float64) Runs {
	if !nonNegative(level) || !(kappa >= 0 && kappa <= 1) {
		return Runs{math.NaN(), math.NaN(), math.NaN()}
	}
	if level == 0 || kappa == 1 {
		return Runs{math.Inf(1), math.Inf(1), 1}
	}
	// The squares of the heights over their mean square are exponential, and by the Hille-Hardy formula their joint density
	// is exp(-u-v) Σ κ²ⁿ Ln(u) Ln(v), with Laguerre polynomials. The integral of exp(-u) Ln(u) above a is
	// exp(-a) (Ln(a) - Ln-1(a)), so that the chance of both being above a is a single series.
	a := 2 * level * level
	if a > 700 { // no wave is so high
		return Runs{1, math.Inf(1), 0}
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
		return Runs{math.NaN(), math.NaN(), math.NaN()}
	}
	high := math.Exp(-a)
	p22 := math.Min(high*sum, 1)
	// Runs of high and of low waves are as many: up-steps and down-steps alternate.
	up := high * (1 - p22) / -math.Expm1(-a)
	return Runs{High: 1 / (1 - p22), Total: 1/(1-p22) + 1/up, Next: p22}
}
