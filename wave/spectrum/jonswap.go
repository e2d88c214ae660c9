package spectrum

import "math"

// A JONSWAP is the spectrum of a growing wind sea: Bretschneider's with a peak enhanced by gamma, scaled so that its
// height is exactly Hs.
//
//	S(f) = A(γ) 5/16 Hs² fp⁴ f⁻⁵ exp(-5/4 (fp/f)⁴) γ^r
//	r = exp(-(f/fp - 1)² / 2σ²),  σ = 0.07 up to the peak, 0.09 above
//
// A(γ) is JONSWAPFactor, the exact normaliser; JONSWAPFit has the common fit for it instead. Gamma is 1 for a fully risen
// sea, 3.3 on the mean of the North Sea measurements, up to 7 for young seas and about 9 for swell from afar. It is valid
// from 1 to 20.
//
// Source: [Hasselmann1973] Eq. 2.4.1; [WAFO] Jonswap.
type JONSWAP struct {
	Hs    float64 // Hm0, m
	Tp    float64 // period of the peak, s
	Gamma float64 // peak enhancement γ, 1 to 20
}

// The widths of the enhanced peak, below and above it.
const (
	sigmaA = 0.07
	sigmaB = 0.09
)

func (j JONSWAP) valid() bool { return nonNegative(j.Hs) && positive(j.Tp) && validGamma(j.Gamma) }

func validGamma(g float64) bool { return g >= 1 && g <= 20 }

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, Hs is negative, infinite or NaN, Tp is not positive and finite,
//	or Gamma is outside 1 to 20
//
// Source: [Hasselmann1973] Eq. 2.4.1; [WAFO] Jonswap.
func (j JONSWAP) Density(frequency float64) float64 {
	if !(frequency >= 0) || !j.valid() {
		return math.NaN()
	}
	l := math.Log(j.Gamma)
	x := frequency * j.Tp
	return j.scale() * base0(x) * math.Exp(l*peakedness(x, sigmaA, sigmaB))
}

// scale returns A(γ) 5/16 Hs² Tp, the density over b(x) γ^r.
func (j JONSWAP) scale() float64 {
	return 5.0 / 16 * j.Hs * j.Hs * j.Tp / enhancement(math.Log(j.Gamma))
}

// peakedness returns r, the exponent of gamma at x = f/fp.
func peakedness(x, below, above float64) float64 {
	s := above
	if x <= 1 {
		s = below
	}
	d := (x - 1) / s
	return math.Exp(-d * d / 2)
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ: closed for the part without the enhancement,
// quadrature for the enhancement, to about 1e-13.
//
// Special cases are:
//
//	MomentWithin(n ≥ 4, lo, +Inf) = +Inf
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi, n is finite and the spectrum valid
//
// Source: [Hasselmann1973] Eq. 2.4.1; [Goda2010Book] Eq. 2.32.
func (j JONSWAP) MomentWithin(n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) || !j.valid() {
		return math.NaN()
	}
	l := math.Log(j.Gamma)
	m := peakMoment(n, lo*j.Tp, hi*j.Tp, l, sigmaA, sigmaB)
	return 5.0 / 16 * j.Hs * j.Hs * math.Pow(j.Tp, -n) / enhancement(l) * m
}

// PeakFrequency returns 1/Tp, in Hz, NaN if the spectrum is not valid.
func (j JONSWAP) PeakFrequency() float64 {
	if !j.valid() {
		return math.NaN()
	}
	return 1 / j.Tp
}

// panels are the panels of the enhanced peak in standard widths from it: beyond the last, γ^r - 1 is below 1e-15.
var panels = [...]float64{-8.6, -6, -4.5, -3.5, -2.5, -1.75, -1, 0, 1, 1.75, 2.5, 3.5, 4.5, 6, 8.6}

// peakMoment returns the integral from a to b of xⁿ b(x) γ^r with l = ln γ.
func peakMoment(n, a, b, l, below, above float64) float64 {
	sum := baseMoment(n, a, b)
	if l == 0 || math.IsInf(sum, 1) {
		return sum
	}
	return sum + overPeak(a, b, l, below, above, func(x float64) float64 { return math.Pow(x, n) * base(x) })
}

// overPeak returns the integral from a to b of of(x) (γ^r - 1) with l = ln γ, over the panels of the peak.
func overPeak(a, b, l, below, above float64, of func(x float64) float64) float64 {
	if l == 0 {
		return 0
	}
	f := func(x float64) float64 { return of(x) * math.Expm1(l*peakedness(x, below, above)) }
	sum := 0.0
	for i := 1; i < len(panels); i++ {
		s := above
		if panels[i] <= 0 {
			s = below
		}
		x0, x1 := math.Max(1+s*panels[i-1], a), math.Min(1+s*panels[i], b)
		if x0 < x1 { // x0 is above 0: the widest peak has its foot at 1 - 8.6·0.11
			sum += gauss(f, x0, x1)
		}
	}
	return sum
}

// JONSWAPFactor returns A(γ), by which the enhanced shape has to be multiplied for its height to be Hs again: the exact
// one, 1 over 5 ∫ x⁻⁵ exp(-5/4 x⁻⁴) γ^r dx, to 1e-15 from 1 to 20.
//
// Special cases are:
//
//	JONSWAPFactor(1) = 1
//	JONSWAPFactor(gamma) = NaN for gamma outside 1 to 20
//
// Source: [Hasselmann1973] Eq. 2.4.1, integrated.
func JONSWAPFactor(gamma float64) float64 {
	if !validGamma(gamma) {
		return math.NaN()
	}
	if gamma == 1 {
		return 1
	}
	return 1 / enhancement(math.Log(gamma))
}

// JONSWAPFactorFit returns 1 - 0.287 ln γ, the common fit for the normaliser. The height of a spectrum made with it is
// right to 0.15 % for γ from 1 to 5 and 0.9 % low at 7.
//
// Special cases are:
//
//	JONSWAPFactorFit(gamma) = NaN for gamma outside 1 to 20
//
// Source: [DNV-C205] sec. 3.5.5; [WaveResponse] JONSWAP.
func JONSWAPFactorFit(gamma float64) float64 {
	if !validGamma(gamma) {
		return math.NaN()
	}
	return 1 - 0.287*math.Log(gamma)
}

// enhancement returns 5 ∫ b(x) γ^r dx at l = ln γ, from 0 to ln 20. It is an entire function of l, so that its Chebyshev
// series converges faster than any power: the coefficients are from 40-digit quadrature, the first left out is 2e-17.
func enhancement(l float64) float64 {
	const top = 2.99573227355399099 // ln 20
	t := 2 * (2*l/top - 1)
	b1, b2 := 0.0, 0.0
	for i := len(chebyshev) - 1; i > 0; i-- {
		b1, b2 = chebyshev[i]+t*b1-b2, b1
	}
	return chebyshev[0] + t/2*b1 - b2
}

var chebyshev = [...]float64{
	2.1976408592701491797, 1.5711344051651412984, 0.45570039192061851828, 0.096158230677023870971,
	0.01587823543218649482, 0.0021512542120639314724, 0.00024700033766806215633, 0.000024601353928179208114,
	2.1633430989378811511e-6, 1.7028149260897815825e-7, 1.2130338257878391199e-8, 7.8916060871441945867e-10,
	4.724092587443633731e-11, 2.6188112586078298277e-12, 1.3517631912686786272e-13, 6.527839990830102618e-15,
	2.9615271290137926454e-16,
}

// A JONSWAPFit is the JONSWAP spectrum with the fitted normaliser 1 - 0.287 ln γ, as many standards and programs print
// it: the same shape, with a height that is not quite Hs (see JONSWAPFactorFit).
//
// Source: [DNV-C205] sec. 3.5.5; [WaveResponse] JONSWAP.
type JONSWAPFit struct {
	Hs    float64 // nominal Hm0, m
	Tp    float64 // period of the peak, s
	Gamma float64 // peak enhancement γ, 1 to 20
}

func (j JONSWAPFit) scale() float64 { return JONSWAPFactorFit(j.Gamma) / JONSWAPFactor(j.Gamma) }

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density = 0 or NaN as JONSWAP.Density
//
// Source: [DNV-C205] sec. 3.5.5; [WaveResponse] JONSWAP.
func (j JONSWAPFit) Density(frequency float64) float64 {
	return j.scale() * JONSWAP(j).Density(frequency)
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin = +Inf or NaN as JONSWAP.MomentWithin
//
// Source: [DNV-C205] sec. 3.5.5, integrated.
func (j JONSWAPFit) MomentWithin(n, lo, hi float64) float64 {
	return j.scale() * JONSWAP(j).MomentWithin(n, lo, hi)
}

// PeakFrequency returns 1/Tp, in Hz, NaN if the spectrum is not valid.
func (j JONSWAPFit) PeakFrequency() float64 { return JONSWAP(j).PeakFrequency() }

// A JONSWAPAlpha is the JONSWAP spectrum as first written, scaled by Phillips' alpha and with the widths of the peak free:
//
//	S(f) = α g² (2π)⁻⁴ f⁻⁵ exp(-5/4 (fp/f)⁴) γ^r
//
// The mean JONSWAP spectrum has α = 0.0081 at full development, γ = 3.3, σ = 0.07 and 0.09.
//
// Source: [Hasselmann1973] Eq. 2.4.1.
type JONSWAPAlpha struct {
	Alpha   float64 // Phillips' α
	Fp      float64 // frequency of the peak, Hz
	Gamma   float64 // peak enhancement γ, 1 to 20
	Below   float64 // σ up to the peak; zero: 0.07
	Above   float64 // σ above the peak; zero: 0.09
	Gravity float64 // m/s²; zero: 9.80665
}

func (j JONSWAPAlpha) widths() (below, above float64) {
	below, above = j.Below, j.Above
	if below == 0 {
		below = sigmaA
	}
	if above == 0 {
		above = sigmaB
	}
	return below, above
}

// scale returns α g² (2π)⁻⁴ fp⁻⁵ , NaN if the spectrum is not valid.
func (j JONSWAPAlpha) scale() float64 {
	below, above := j.widths()
	// A width beyond 0.11 would reach the origin; none so wide has been measured.
	if !(nonNegative(j.Alpha) && positive(j.Fp) && validGamma(j.Gamma) && below > 0 && below <= 0.11 && above > 0 && above <= 1) {
		return math.NaN()
	}
	g := gravity(j.Gravity)
	return j.Alpha * g * g / math.Pow(2*math.Pi*j.Fp, 4) / j.Fp
}

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, Alpha is negative, infinite or NaN, Fp or Gravity is not positive and
//	finite, Gamma is outside 1 to 20, Below outside 0 to 0.11 or Above outside 0 to 1
//
// Source: [Hasselmann1973] Eq. 2.4.1.
func (j JONSWAPAlpha) Density(frequency float64) float64 {
	if !(frequency >= 0) {
		return math.NaN()
	}
	below, above := j.widths()
	x := frequency / j.Fp
	return j.scale() * base0(x) * math.Exp(math.Log(j.Gamma)*peakedness(x, below, above))
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin(n ≥ 4, lo, +Inf) = +Inf
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi, n is finite and the spectrum valid
//
// Source: [Hasselmann1973] Eq. 2.4.1, integrated.
func (j JONSWAPAlpha) MomentWithin(n, lo, hi float64) float64 {
	s := j.scale()
	if !orderly(n, lo, hi) || math.IsNaN(s) {
		return math.NaN()
	}
	below, above := j.widths()
	return s * math.Pow(j.Fp, n+1) * peakMoment(n, lo/j.Fp, hi/j.Fp, math.Log(j.Gamma), below, above)
}

// PeakFrequency returns Fp, in Hz, NaN if the spectrum is not valid.
func (j JONSWAPAlpha) PeakFrequency() float64 {
	if math.IsNaN(j.scale()) {
		return math.NaN()
	}
	return j.Fp
}

// gravity returns the gravity in force, NaN if it is none.
func gravity(g float64) float64 {
	if g == 0 {
		return 9.80665
	}
	if !positive(g) {
		return math.NaN()
	}
	return g
}
