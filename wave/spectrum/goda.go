package spectrum

import "math"

// A PiersonMoskowitz is the spectrum of a fully risen sea under a wind of the speed at 19.5 m above the water, as the two
// authors measured it:
//
//	S(f) = α g² (2π)⁻⁴ f⁻⁵ exp(-β (f₀/f)⁴),  f₀ = g/2πU,  α = 0.0081,  β = 0.74
//
// Its peak is where 2π fp U/g = (4β/5)^¼ = 0.877 and its variance α U⁴/(4β g²) = 2.74e-3 U⁴/g². A paddler's sea is seldom
// fully risen; this is the upper end.
//
// Source: [PiersonMoskowitz1964]; [Stewart2008] Eq. 16.29 to 16.33.
type PiersonMoskowitz struct {
	Wind19  float64 // wind speed at 19.5 m, m/s; 1.026 times that at 10 m
	Gravity float64 // m/s²; zero: 9.80665
}

const (
	pmAlpha = 0.0081
	pmBeta  = 0.74
)

// Bretschneider returns the same spectrum by its height and peak period.
//
// Special cases are:
//
//	Bretschneider has NaN in both fields if the wind is not positive and finite, or the gravity negative, infinite or NaN
//
// Source: [Stewart2008] Eq. 16.30 to 16.33.
func (p PiersonMoskowitz) Bretschneider() Bretschneider {
	g := gravity(p.Gravity)
	if !positive(p.Wind19) || math.IsNaN(g) {
		return Bretschneider{math.NaN(), math.NaN()}
	}
	u := p.Wind19
	return Bretschneider{
		Hs: 4 * math.Sqrt(pmAlpha/(4*pmBeta)) * u * u / g,
		Tp: 2 * math.Pi * u / g / math.Pow(4*pmBeta/5, 0.25),
	}
}

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, the wind is not positive and finite, or the gravity is none
//
// Source: [PiersonMoskowitz1964]; [Stewart2008] Eq. 16.29.
func (p PiersonMoskowitz) Density(frequency float64) float64 {
	return p.Bretschneider().Density(frequency)
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ, in closed form for hi = +Inf.
//
// Special cases are:
//
//	MomentWithin = +Inf or NaN as Bretschneider.MomentWithin
//
// Source: [Stewart2008] Eq. 16.32.
func (p PiersonMoskowitz) MomentWithin(n, lo, hi float64) float64 {
	return p.Bretschneider().MomentWithin(n, lo, hi)
}

// PeakFrequency returns the frequency of the peak in Hz, 0.877 g/2πU, NaN if the wind is not positive and finite.
//
// Source: [Stewart2008] Eq. 16.30.
func (p PiersonMoskowitz) PeakFrequency() float64 { return p.Bretschneider().PeakFrequency() }

// A BretschneiderMitsuyasu is the spectrum of a fully risen sea by the height and period of the highest third of its
// waves, as Goda recommends it for design:
//
//	S(f) = 0.257 H⅓² T⅓⁻⁴ f⁻⁵ exp(-1.03 (T⅓ f)⁻⁴)
//
// so that Tp = 1.05 T⅓ and H⅓ = 4.004 √m₀. GodaModified has other numbers.
//
// Source: [Mitsuyasu1970]; [Goda2010Book] Eq. 2.10.
type BretschneiderMitsuyasu struct {
	H13 float64 // mean height of the highest third, m
	T13 float64 // mean period of the highest third, s
}

// A GodaModified is the BretschneiderMitsuyasu spectrum with the numbers Goda later found to give the height and period of
// the highest third better:
//
//	S(f) = 0.205 H⅓² T⅓⁻⁴ f⁻⁵ exp(-0.75 (T⅓ f)⁻⁴)
//
// so that Tp = 1.136 T⅓ and H⅓ = 3.826 √m₀: in a real sea the highest third is 5 % lower than Hm0.
//
// Source: [Goda1988]; [Goda2010Book] Eq. 2.11.
type GodaModified struct {
	H13 float64 // mean height of the highest third, m
	T13 float64 // mean period of the highest third, s
}

// third returns a h² t⁻⁴ f⁻⁵ exp(-b (tf)⁻⁴) as a Bretschneider: m₀ = a h²/4b, fp = (4b/5)^¼/t.
func third(a, b, h, t float64) Bretschneider {
	if !nonNegative(h) || !positive(t) {
		return Bretschneider{math.NaN(), math.NaN()}
	}
	return Bretschneider{Hs: 4 * math.Sqrt(a/(4*b)) * h, Tp: t / math.Pow(4*b/5, 0.25)}
}

// Bretschneider returns the same spectrum by its Hm0 and peak period.
//
// Special cases are:
//
//	Bretschneider has NaN in both fields if H13 is negative, infinite or NaN or T13 not positive and finite
//
// Source: [Goda2010Book] Eq. 2.10.
func (b BretschneiderMitsuyasu) Bretschneider() Bretschneider {
	return third(0.257, 1.03, b.H13, b.T13)
}

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, H13 negative, infinite or NaN, or T13 not positive and finite
//
// Source: [Goda2010Book] Eq. 2.10.
func (b BretschneiderMitsuyasu) Density(frequency float64) float64 {
	return b.Bretschneider().Density(frequency)
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin = +Inf or NaN as Bretschneider.MomentWithin
//
// Source: [Goda2010Book] Eq. 2.10, integrated.
func (b BretschneiderMitsuyasu) MomentWithin(n, lo, hi float64) float64 {
	return b.Bretschneider().MomentWithin(n, lo, hi)
}

// PeakFrequency returns the frequency of the peak in Hz, 1/1.05 T13, NaN if the spectrum is not valid.
//
// Source: [Goda2010Book] sec. 2.3.1.
func (b BretschneiderMitsuyasu) PeakFrequency() float64 { return b.Bretschneider().PeakFrequency() }

// Bretschneider returns the same spectrum by its Hm0 and peak period.
//
// Special cases are:
//
//	Bretschneider has NaN in both fields if H13 is negative, infinite or NaN or T13 not positive and finite
//
// Source: [Goda2010Book] Eq. 2.11.
func (b GodaModified) Bretschneider() Bretschneider { return third(0.205, 0.75, b.H13, b.T13) }

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, H13 negative, infinite or NaN, or T13 not positive and finite
//
// Source: [Goda2010Book] Eq. 2.11.
func (b GodaModified) Density(frequency float64) float64 { return b.Bretschneider().Density(frequency) }

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin = +Inf or NaN as Bretschneider.MomentWithin
//
// Source: [Goda2010Book] Eq. 2.11, integrated.
func (b GodaModified) MomentWithin(n, lo, hi float64) float64 {
	return b.Bretschneider().MomentWithin(n, lo, hi)
}

// PeakFrequency returns the frequency of the peak in Hz, 1/1.136 T13, NaN if the spectrum is not valid.
//
// Source: [Goda2010Book] Eq. 2.11.
func (b GodaModified) PeakFrequency() float64 { return b.Bretschneider().PeakFrequency() }

// A GodaJONSWAP is the JONSWAP spectrum by the height of the highest third of the waves, with Goda's fitted normaliser:
//
//	S(f) = βJ H⅓² Tp⁻⁴ f⁻⁵ exp(-5/4 (Tp f)⁻⁴) γ^r
//	βJ = 0.0624 (1.094 - 0.01915 ln γ) / (0.230 + 0.0336 γ - 0.185/(1.9 + γ))
//
// PeakFromT13 gives Tp from the period of the highest third.
//
// Source: [Goda1988]; [Goda2010Book] Eq. 2.12 to 2.15.
type GodaJONSWAP struct {
	H13   float64 // mean height of the highest third, m
	Tp    float64 // period of the peak, s
	Gamma float64 // peak enhancement γ, 1 to 20
}

// JONSWAP returns the same spectrum by its own height Hm0, which is 0.3 to 5 % above H13 as the fit has it.
//
// Special cases are:
//
//	JONSWAP has an Hs of NaN if a field is not valid
//
// Source: [Goda2010Book] Eq. 2.12 and 2.13.
func (j GodaJONSWAP) JONSWAP() JONSWAP {
	if !nonNegative(j.H13) || !positive(j.Tp) || !validGamma(j.Gamma) {
		return JONSWAP{math.NaN(), j.Tp, j.Gamma}
	}
	beta := 0.0624 / (0.230 + 0.0336*j.Gamma - 0.185/(1.9+j.Gamma)) * (1.094 - 0.01915*math.Log(j.Gamma))
	// βJ H⅓² = A(γ) 5/16 Hs²
	return JONSWAP{math.Sqrt(beta*16/5/JONSWAPFactor(j.Gamma)) * j.H13, j.Tp, j.Gamma}
}

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density = 0 or NaN as JONSWAP.Density
//
// Source: [Goda2010Book] Eq. 2.12.
func (j GodaJONSWAP) Density(frequency float64) float64 { return j.JONSWAP().Density(frequency) }

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin = +Inf or NaN as JONSWAP.MomentWithin
//
// Source: [Goda2010Book] Eq. 2.12, integrated.
func (j GodaJONSWAP) MomentWithin(n, lo, hi float64) float64 {
	return j.JONSWAP().MomentWithin(n, lo, hi)
}

// PeakFrequency returns 1/Tp, in Hz, NaN if the spectrum is not valid.
func (j GodaJONSWAP) PeakFrequency() float64 { return j.JONSWAP().PeakFrequency() }

// PeakFromT13 returns the peak period in seconds of a JONSWAP sea from the mean period of its highest third in seconds.
//
//	Tp = T⅓ / (1 - 0.132 (γ + 0.2)^-0.559)
//
// Special cases are:
//
//	PeakFromT13 = NaN if the period is not positive and finite or gamma is outside 1 to 20
//
// Source: [Goda2010Book] Eq. 2.14.
func PeakFromT13(t13, gamma float64) float64 {
	if !positive(t13) || !validGamma(gamma) {
		return math.NaN()
	}
	return t13 / (1 - 0.132*math.Pow(gamma+0.2, -0.559))
}

// A Gamma is the generalised gamma spectrum: a free fall of the tail and a free width, scaled to a height and peak period.
//
//	S(x) ∝ x^-N exp(-N/M x^-M),  x = f/fp
//
// With N = 5 and M = 4 it is the Bretschneider spectrum; tails of f⁻⁴ have N = 4.
//
// Source: [WAFO] Bretschneider with N and M.
type Gamma struct {
	Hs float64 // Hm0, m
	Tp float64 // period of the peak, s
	N  float64 // power of the tail, above 1
	M  float64 // exponent of the width, above 0
}

// norm returns ln of the factor that makes the integral over x = 1, NaN if the spectrum is not valid.
func (g Gamma) norm() float64 {
	if !nonNegative(g.Hs) || !positive(g.Tp) || !(g.N > 1 && g.N <= 100) || !(g.M > 0 && g.M <= 100) {
		return math.NaN()
	}
	c := (g.N - 1) / g.M
	lg, _ := math.Lgamma(c)
	return c*math.Log(g.N/g.M) + math.Log(g.M) - lg
}

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, Hs is negative, infinite or NaN, Tp is not positive and finite, N is
//	not above 1 or M not above 0, or either above 100
//
// Source: [WAFO] gengamspec.
func (g Gamma) Density(frequency float64) float64 {
	norm := g.norm()
	if !(frequency >= 0) || math.IsNaN(norm) {
		return math.NaN()
	}
	if frequency == 0 || math.IsInf(frequency, 1) {
		return 0
	}
	l := math.Log(frequency * g.Tp)
	return g.Hs * g.Hs / 16 * g.Tp * math.Exp(norm-g.N*l-g.N/g.M*math.Exp(-g.M*l))
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ: closed for the whole, quadrature for a part.
//
// Special cases are:
//
//	MomentWithin(n ≥ N-1, lo, +Inf) = +Inf
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi, n is finite and the spectrum valid
//
// Source: [WAFO] gengamspec, integrated.
func (g Gamma) MomentWithin(n, lo, hi float64) float64 {
	norm := g.norm()
	if !orderly(n, lo, hi) || math.IsNaN(norm) {
		return math.NaN()
	}
	// With t = N/M x^-M the integral of x^n x^-N exp(-t) dx is (N/M)^-a/M ∫ t^(a-1) e^-t dt, a = (N-1-n)/M.
	a, b := (g.N-1-n)/g.M, g.N/g.M
	scale := g.Hs * g.Hs / 16 * math.Pow(g.Tp, -n) * math.Exp(norm-a*math.Log(b)) / g.M
	ta, tb := b*math.Pow(lo*g.Tp, -g.M), b*math.Pow(hi*g.Tp, -g.M)
	return scale * gammaBetween(a, tb, ta)
}

// PeakFrequency returns 1/Tp, in Hz, NaN if the spectrum is not valid.
func (g Gamma) PeakFrequency() float64 {
	if math.IsNaN(g.norm()) {
		return math.NaN()
	}
	return 1 / g.Tp
}
