package spectrum

import "math"

// The numbers by which a sea is known, from the moments of its spectrum. Which height and which period is in the name;
// see Moment for what a moment is, and why m₄ depends on where the spectrum stops.

// Height returns Hm0 = 4√m₀ in metres, the significant height, from the variance m₀ in m².
//
// Special cases are:
//
//	Height(m0) = NaN if m0 is negative or NaN
//
// Source: [IAHR1989] Hm0; [CEM-II-1] sec. II-1-3.
func Height(m0 float64) float64 { return 4 * math.Sqrt(m0) }

// MeanPeriod returns Tm01 = m₀/m₁ in seconds, the period of the mean frequency.
//
// Special cases are:
//
//	MeanPeriod = NaN if a moment is not positive and finite
//
// Source: [IAHR1989] Tm01.
func MeanPeriod(m0, m1 float64) float64 { return ratio(m0, m1) }

// ZeroCrossingPeriod returns Tm02 = √(m₀/m₂) in seconds, which is Tz, the mean time between upward crossings of the mean
// level, exactly so for a Gaussian sea.
//
// Special cases are:
//
//	ZeroCrossingPeriod = NaN if a moment is not positive and finite
//
// Source: [IAHR1989] Tm02; [CEM-II-1] sec. II-1-3.
func ZeroCrossingPeriod(m0, m2 float64) float64 { return math.Sqrt(ratio(m0, m2)) }

// EnergyPeriod returns Te = m₋₁/m₀ in seconds, the period of the one wave of the same height that carries the same energy
// flux in deep water.
//
// Special cases are:
//
//	EnergyPeriod = NaN if a moment is not positive and finite
//
// Source: [IAHR1989] Tm-1,0; [MHKiT] energy_period.
func EnergyPeriod(mMinus1, m0 float64) float64 { return ratio(mMinus1, m0) }

// CrestPeriod returns Tm24 = √(m₂/m₄) in seconds, the mean time between crests of any height.
//
// Special cases are:
//
//	CrestPeriod = 0 for an infinite m4: ripples without end
//	CrestPeriod = NaN if m2 is not positive and finite, or m4 is not positive
//
// Source: [IAHR1989] Tm24; [WAFO] Tm24.
func CrestPeriod(m2, m4 float64) float64 {
	if math.IsInf(m4, 1) && positive(m2) {
		return 0
	}
	return math.Sqrt(ratio(m2, m4))
}

func ratio(a, b float64) float64 {
	if !positive(a) || !positive(b) {
		return math.NaN()
	}
	return a / b
}

// Narrowness returns Longuet-Higgins' ν = √(m₀m₂/m₁² - 1), 0 for a single frequency and 0.425 for a fully risen sea: the
// bandwidth that needs no m₄.
//
// Special cases are:
//
//	Narrowness = NaN if a moment is not positive and finite, or m0 m2 < m1², which no spectrum has
//
// Source: [LonguetHiggins1975] sec. 1; [WAFO] eps2.
func Narrowness(m0, m1, m2 float64) float64 {
	if !positive(m0) || !positive(m1) || !positive(m2) {
		return math.NaN()
	}
	return rootAbove(m0/m1*(m2/m1), 1)
}

// rootAbove returns √(v - 1), taking a v below 1 by rounding only as 1.
func rootAbove(v, one float64) float64 {
	if d := v - one; d < 0 && d > -1e-12 {
		return 0
	}
	return math.Sqrt(v - one)
}

// Broadness returns the spectral width ε = √(1 - m₂²/(m₀m₄)) of Cartwright and Longuet-Higgins: 0 where each crossing
// has one crest, 1 where ripples without number ride on the waves, as on any f⁻⁵ tail that goes on.
//
// Special cases are:
//
//	Broadness = 1 for an infinite m4
//	Broadness = NaN if a moment is not positive, m0 or m2 is infinite, or m2² > m0 m4, which no spectrum has
//
// Source: [CartwrightLonguetHiggins1956]; [WAFO] eps4.
func Broadness(m0, m2, m4 float64) float64 {
	a := Irregularity(m0, m2, m4)
	return rootAbove(2-a*a, 1)
}

// Irregularity returns α = m₂/√(m₀m₄), the number of upward crossings for each crest, 1 for a single frequency.
//
// Special cases are:
//
//	Irregularity = 0 for an infinite m4
//	Irregularity = NaN if a moment is not positive, or m0 or m2 is infinite
//
// Source: [CartwrightLonguetHiggins1956]; [WAFO] alpha.
func Irregularity(m0, m2, m4 float64) float64 {
	if !positive(m0) || !positive(m2) || !(m4 > 0) {
		return math.NaN()
	}
	return math.Sqrt(m2/m0) * math.Sqrt(m2/m4)
}

// EnergyNarrowness returns ε₀ = √(m₀m₋₂/m₋₁² - 1), the relative width of the energy period, used where energy flux is.
//
// Special cases are:
//
//	EnergyNarrowness = NaN if a moment is not positive and finite, or m0 m-2 < m-1², which no spectrum has
//
// Source: [MHKiT] spectral width.
func EnergyNarrowness(mMinus2, mMinus1, m0 float64) float64 { return Narrowness(mMinus2, mMinus1, m0) }

// Peakedness returns Goda's Qp = 2/m₀² ∫ f S² df of the part of the spectrum from lo to hi Hz: 2 for a fully risen sea,
// 3.1 for JONSWAP's mean, 4 to 8 for swell. The larger it is the longer the sets.
//
// Special cases are:
//
//	Peakedness = NaN unless 0 ≤ lo < hi, or if there is no variance in the band or a density is NaN
//
// Source: [Goda1970]; [Goda2010Book] ch. 10; [WAFO] Qp.
func Peakedness(s Spectrum, lo, hi float64) float64 {
	m0 := MomentWithin(s, 0, lo, hi)
	if !positive(m0) || !(lo < hi) {
		return math.NaN()
	}
	return 2 / (m0 * m0) * squares(s, lo, hi)
}

// squares returns ∫ f S² df from lo to hi.
func squares(s Spectrum, lo, hi float64) float64 {
	of := func(f, d float64) float64 { return f * d * d }
	switch v := s.(type) {
	case Bins:
		return v.sum(lo, hi, of)
	case Points:
		return v.integral(lo, hi, of)
	case Bretschneider:
		return v.scale() * v.scale() / (v.Tp * v.Tp) * peakSquares(lo*v.Tp, hi*v.Tp, 0)
	case JONSWAP:
		return v.scale() * v.scale() / (v.Tp * v.Tp) * peakSquares(lo*v.Tp, hi*v.Tp, math.Log(v.Gamma))
	case Band:
		lo, hi = math.Max(lo, v.Low), math.Min(hi, v.High)
		if lo >= hi {
			return 0
		}
		return squares(v.Spectrum, lo, hi)
	}
	// It is a moment of order 1 of S², whose tail falls like f⁻¹⁰ and is gone at 1000 Hz.
	hi = math.Min(hi, fastest)
	if lo >= hi {
		return 0
	}
	return integrate(squared{s}, 1, lo, hi)
}

// peakSquares returns the integral from a to b of x b(x)² γ^2r with l = ln γ: without the enhancement it is closed, with
// t = 5/2 x⁻⁴ instead of 5/4.
func peakSquares(a, b, l float64) float64 {
	sum := 0.25 / (2.5 * 2.5) * gammaBetween(2, 2.5/(b*b*b*b), 2.5/(a*a*a*a))
	return sum + overPeak(a, b, 2*l, sigmaA, sigmaB, func(x float64) float64 { v := base(x); return x * v * v })
}

// squared is S², which has its peak where S has.
type squared struct{ s Spectrum }

func (q squared) Density(f float64) float64 { d := q.s.Density(f); return d * d }

func (q squared) PeakFrequency() float64 { return PeakFrequency(q.s) }

// SpectralSteepness returns 2π Hm0/(g T²), the height over the deep-water length of the period given: with Tz the
// significant steepness of the trade (about 1/15 at most), with Tp about 1/25 in a wind sea and 1/100 in swell.
//
// Special cases are:
//
//	SpectralSteepness = NaN if the height is negative, infinite or NaN, the period not positive and finite or the
//	gravity negative, infinite or NaN; a gravity of 0 is 9.80665
//
// Source: [DNV-C205] sec. 3.5.4; [WAFO] Ss.
func SpectralSteepness(height, period, gravityOrZero float64) float64 {
	if !nonNegative(height) || !positive(period) {
		return math.NaN()
	}
	return 2 * math.Pi * height / (gravity(gravityOrZero) * period * period)
}

// Parameters is what Describe tells of a sea.
type Parameters struct {
	Hm0  float64 // significant height 4√m₀, m
	Tp   float64 // period of the greatest density, s
	Te   float64 // energy period m₋₁/m₀, s
	Tm01 float64 // mean period m₀/m₁, s
	Tz   float64 // zero-crossing period √(m₀/m₂), s
	Tm24 float64 // crest period √(m₂/m₄), s; 0 without a high limit

	Narrowness   float64 // ν
	Broadness    float64 // ε; 1 without a high limit
	Irregularity float64 // α; 0 without a high limit
	Peakedness   float64 // Qp
}

// Describe returns the parameters of the whole spectrum, its tail to infinity.
//
// Special cases are:
//
//	Describe has NaN in every field that has no value, such as the periods of no sea at all
//
// Source: [IAHR1989]; composed of the functions of this package.
func Describe(s Spectrum) Parameters { return DescribeWithin(s, 0, math.Inf(1)) }

// DescribeWithin returns the parameters of the part of the spectrum from lo to hi Hz, as an instrument that measures that
// band would report them. A truncated tail lengthens Tz by a few per cent and decides Tm24.
//
// Special cases are:
//
//	DescribeWithin has NaN in every field unless 0 ≤ lo < hi
//
// Source: [IAHR1989]; composed of the functions of this package.
func DescribeWithin(s Spectrum, lo, hi float64) Parameters {
	m := func(n float64) float64 { return MomentWithin(s, n, lo, hi) }
	mm1, m0, m1, m2, m4 := m(-1), m(0), m(1), m(2), m(4)
	p := Parameters{
		Hm0: Height(m0), Tp: math.NaN(), Te: EnergyPeriod(mm1, m0), Tm01: MeanPeriod(m0, m1),
		Tz: ZeroCrossingPeriod(m0, m2), Tm24: CrestPeriod(m2, m4),
		Narrowness: Narrowness(m0, m1, m2), Broadness: Broadness(m0, m2, m4), Irregularity: Irregularity(m0, m2, m4),
		Peakedness: Peakedness(s, lo, hi),
	}
	// The peak of a part is the peak of the whole where that lies in it, else at the end nearer to it.
	if f := PeakFrequency(s); positive(m0) && lo < hi {
		p.Tp = 1 / math.Min(math.Max(f, lo), hi)
	}
	return p
}

// Tp/Tz and the like depend on γ alone. The exact values are those of the JONSWAP shape with its whole tail; the fits
// are what standards print.

// PeriodRatios returns the periods of a JONSWAP spectrum with its whole tail as parts of the peak period: Te/Tp, Tm01/Tp
// and Tz/Tp for a gamma from 1 to 20.
//
// Special cases are:
//
//	PeriodRatios(1) = 0.857223, 0.771771, 0.710371
//	PeriodRatios(gamma) = NaN, NaN, NaN for gamma outside 1 to 20
//
// Source: [Hasselmann1973] Eq. 2.4.1, integrated.
func PeriodRatios(gamma float64) (te, tm01, tz float64) {
	j := JONSWAP{1, 1, gamma}
	m0, m1 := j.MomentWithin(0, 0, math.Inf(1)), j.MomentWithin(1, 0, math.Inf(1))
	return j.MomentWithin(-1, 0, math.Inf(1)) / m0, m0 / m1, math.Sqrt(m0 / j.MomentWithin(2, 0, math.Inf(1)))
}

// TzOverTpFit returns the cubic fit of a standard for Tz/Tp, within 0.25 % of PeriodRatios for γ from 1 to 7.
//
//	0.6673 + 0.05037 γ - 0.006230 γ² + 0.0003341 γ³
//
// Special cases are:
//
//	TzOverTpFit(gamma) = NaN for gamma outside 1 to 7
//
// Source: [DNV-C205] sec. 3.5.5.
func TzOverTpFit(gamma float64) float64 {
	return cubic(gamma, 0.6673, 0.05037, -0.006230, 0.0003341)
}

// Tm01OverTpFit returns the cubic fit of a standard for Tm01/Tp, within 0.25 % of PeriodRatios for γ from 1 to 7.
//
//	0.7303 + 0.04936 γ - 0.006556 γ² + 0.0003610 γ³
//
// Special cases are:
//
//	Tm01OverTpFit(gamma) = NaN for gamma outside 1 to 7
//
// Source: [DNV-C205] sec. 3.5.5.
func Tm01OverTpFit(gamma float64) float64 {
	return cubic(gamma, 0.7303, 0.04936, -0.006556, 0.0003610)
}

// TeOverTpFit returns the cubic fit for Te/Tp, within 0.2 % of PeriodRatios for γ from 1 to 7.
//
//	0.8255 + 0.03852 γ - 0.005537 γ² + 0.0003154 γ³
//
// Special cases are:
//
//	TeOverTpFit(gamma) = NaN for gamma outside 1 to 7
//
// Source: [MHKiT] energy_period_to_peak_period.
func TeOverTpFit(gamma float64) float64 {
	return cubic(gamma, 0.8255, 0.03852, -0.005537, 0.0003154)
}

func cubic(g, c0, c1, c2, c3 float64) float64 {
	if !(g >= 1 && g <= 7) {
		return math.NaN()
	}
	return c0 + g*(c1+g*(c2+g*c3))
}

// GammaFromSteepness returns the peak enhancement to use for a wind sea of which only the height in metres and the peak
// period in seconds are known, by the rule of a standard:
//
//	γ = 5                          for Tp/√Hs ≤ 3.6
//	γ = exp(5.75 - 1.15 Tp/√Hs)    between
//	γ = 1                          for Tp/√Hs ≥ 5
//
// Special cases are:
//
//	GammaFromSteepness = NaN if a value is not positive and finite
//
// Source: [DNV-C205] sec. 3.5.5.
func GammaFromSteepness(hs, tp float64) float64 {
	if !positive(hs) || !positive(tp) {
		return math.NaN()
	}
	switch q := tp / math.Sqrt(hs); {
	case q <= 3.6:
		return 5
	case q < 5:
		return math.Exp(5.75 - 1.15*q)
	}
	return 1
}

// GammaNorthSea returns the peak enhancement from the height in metres and the peak period in seconds by Torsethaugen's
// relation for the North Sea, between 1 and 7:
//
//	D = 0.036 - 0.0056 Tp/√Hs,  γ = exp(3.484 (1 - 0.1975 D Tp⁴/Hs²))
//
// Special cases are:
//
//	GammaNorthSea = 1 for Tp/√Hs ≥ 5.14285
//	GammaNorthSea = NaN if a value is not positive and finite
//
// Source: [Torsethaugen1984]; [WAFO] jonswap_peakedness.
func GammaNorthSea(hs, tp float64) float64 {
	if !positive(hs) || !positive(tp) {
		return math.NaN()
	}
	q := tp / math.Sqrt(hs)
	if q >= 5.14285 {
		return 1
	}
	d := 0.036 - 0.0056*q
	return math.Min(math.Max(math.Exp(3.484*(1-0.1975*d*q*q*q*q)), 1), 7)
}
