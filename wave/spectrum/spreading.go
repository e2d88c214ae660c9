package spectrum

import (
	"math"

	"followingsea.example/internal/angle"
	"gonum.org/v1/gonum/mathext"
)

// Waves of one frequency do not all run one way. A spreading function D(δ) says how their variance lies about the mean
// direction, δ being the angle from it; it integrates to 1 over the circle in radians. Everything here is a property of δ
// alone, so that it does not matter whether the mean direction is told as from or toward.
//
// With the first two Fourier coefficients of D about its mean,
//
//	r₁ = ∫ D cos δ dδ,  r₂ = ∫ D cos 2δ dδ
//
// the circular width is σ = √(2(1 - r₁)) radians, which a directional buoy measures.

// A Spreading is how waves of one frequency are spread about their mean direction.
type Spreading interface {
	// Spread returns the density per radian at the frequency in Hz and the angle in degrees from the mean direction.
	Spread(frequency, offset float64) float64
}

// A Cos2s spreads the waves of every frequency as cos²ˢ of half the angle:
//
//	D(δ) = G₀ cos²ˢ(δ/2),  G₀ = 2^(2s-1)/π · Γ²(s+1)/Γ(2s+1)
//
// with log-gamma, so that no s is too large. It is not CosN, which has the whole angle. S is about 10 for a wind sea, 25
// for swell near where it came from and 75 for swell from afar.
//
// Source: [Mitsuyasu1975]; [Goda2010Book] Eq. 2.22 to 2.24; [WAFO] cos2s.
type Cos2s struct {
	S float64 // spreading parameter, 0 (all round) and up
}

// Spread returns the density per radian at the angle in degrees from the mean direction; it is the same at every frequency.
//
// Special cases are:
//
//	Spread = NaN if S is negative, infinite or NaN, the angle is infinite or NaN, or the frequency is NaN
//
// Source: [Goda2010Book] Eq. 2.22; [WAFO] cos2s.
func (c Cos2s) Spread(frequency, offset float64) float64 {
	if !nonNegative(c.S) || math.IsNaN(frequency) {
		return math.NaN()
	}
	return cos2s(c.S, offset)
}

func cos2s(s, offset float64) float64 {
	h := math.Abs(math.Cos(angle.Radians(angle.Diff(0, offset)) / 2))
	if s == 0 {
		return h/h/(2*math.Pi) + 0*offset
	}
	return Cos2sNorm(s) * math.Pow(h, 2*s)
}

// Cos2sNorm returns G₀, the density per radian of cos²ˢ(δ/2) spreading in the mean direction itself.
//
// Special cases are:
//
//	Cos2sNorm(0) = 1/2π
//	Cos2sNorm(s) = NaN if s is negative, infinite or NaN
//
// Source: [Goda2010Book] Eq. 2.24.
func Cos2sNorm(s float64) float64 {
	if !nonNegative(s) {
		return math.NaN()
	}
	// Γ²(s+1)/Γ(2s+1) 2^2s/2π, by the duplication formula, is Γ(s+1)/Γ(s+1/2) / 2√π: no large numbers cancel.
	if s > 1e4 { // asymptotic series of the ratio, exact to 1e-16 here
		return math.Sqrt(s) * (1 + 1/(8*s) + 1/(128*s*s)) / (2 * math.Sqrt(math.Pi))
	}
	a, _ := math.Lgamma(s + 1)
	b, _ := math.Lgamma(s + 0.5)
	return math.Exp(a-b) / (2 * math.Sqrt(math.Pi))
}

// Cos2sWithin returns the share of the variance within the half angle, in degrees, of the mean direction.
//
// Special cases are:
//
//	Cos2sWithin(s, half) = 1 for half ≥ 180
//	Cos2sWithin(s, half) = NaN if s is negative, infinite or NaN, or half is negative or NaN
//
// Source: [Goda2010Book] sec. 2.3.2, the cumulative curve of directional spreading.
func Cos2sWithin(s, half float64) float64 {
	if !nonNegative(s) || !(half >= 0) {
		return math.NaN()
	}
	if half >= 180 {
		return 1
	}
	// With u = sin²(δ/2) the integral is the incomplete beta function of 1/2 and s + 1/2.
	x := math.Sin(angle.Radians(half) / 2)
	return mathext.RegIncBeta(0.5, s+0.5, x*x)
}

// Cos2sWidth returns the circular width σ in degrees of cos²ˢ(δ/2) spreading, √(2(1 - r₁)) with r₁ = s/(s+1).
//
//	σ = √(2/(s+1))
//
// Special cases are:
//
//	Cos2sWidth(s) = NaN if s is negative, infinite or NaN
//
// Source: [Kuik1988] sec. 3; [Goda2010Book] sec. 2.3.2.
func Cos2sWidth(s float64) float64 {
	if !nonNegative(s) {
		return math.NaN()
	}
	return angle.Degrees(math.Sqrt(2 / (s + 1)))
}

// Cos2sFromWidth returns the s of the cos²ˢ(δ/2) spreading with the circular width in degrees, the inverse of Cos2sWidth:
// what to set from a forecast that gives a directional spread.
//
// Special cases are:
//
//	Cos2sFromWidth(width) = NaN unless 0 < width ≤ 81.03 (√2 radians, all round)
//
// Source: [Kuik1988] sec. 3, inverted.
func Cos2sFromWidth(width float64) float64 {
	w := angle.Radians(width)
	if !(w > 0 && w <= math.Sqrt2*(1+1e-15)) {
		return math.NaN()
	}
	return math.Max(2/(w*w)-1, 0)
}

// Cos2sFourier returns r₁ = s/(s+1) and r₂ = s(s-1)/((s+1)(s+2)), the first two Fourier coefficients of cos²ˢ(δ/2)
// spreading about its mean: what a directional buoy would report.
//
// Special cases are:
//
//	Cos2sFourier(s) = NaN, NaN if s is negative, infinite or NaN
//
// Source: [Mitsuyasu1975]; [Kuik1988] sec. 3.
func Cos2sFourier(s float64) (r1, r2 float64) {
	if !nonNegative(s) {
		return math.NaN(), math.NaN()
	}
	r1 = s / (s + 1)
	return r1, r1 * ((s - 1) / (s + 2))
}

// CircularWidth returns the circular width σ = √(2(1 - r₁)) in degrees from the first Fourier coefficient of a measured
// directional distribution.
//
// Special cases are:
//
//	CircularWidth(r1) = NaN for r1 outside 0 to 1
//
// Source: [Kuik1988] sec. 3.
func CircularWidth(r1 float64) float64 {
	if !(r1 >= 0 && r1 <= 1) {
		return math.NaN()
	}
	return angle.Degrees(math.Sqrt(2 * (1 - r1)))
}

// A CosN spreads the waves of every frequency as cosⁿ of the whole angle, with none beyond 90 degrees:
//
//	D(δ) = Γ(n/2 + 1)/(√π Γ(n/2 + 1/2)) cosⁿ δ
//
// N is 2 to 4 for a wind sea (with 2 the norm is 2/π), 6 or more for swell.
//
// Source: [DNV-C205] sec. 3.5.8; [SPM1984] ch. 3.
type CosN struct {
	N float64 // exponent, 0 and up
}

// Spread returns the density per radian at the angle in degrees from the mean direction.
//
// Special cases are:
//
//	Spread = 0 beyond 90 degrees
//	Spread = NaN if N is negative, infinite or NaN, the angle is infinite or NaN, or the frequency is NaN
//
// Source: [DNV-C205] sec. 3.5.8.
func (c CosN) Spread(frequency, offset float64) float64 {
	d := angle.Diff(0, offset)
	if !nonNegative(c.N) || math.IsNaN(d) || math.IsNaN(frequency) {
		return math.NaN()
	}
	if math.Abs(d) > 90 {
		return 0
	}
	a, _ := math.Lgamma(c.N/2 + 1)
	b, _ := math.Lgamma(c.N/2 + 0.5)
	return math.Exp(a-b) / math.Sqrt(math.Pi) * math.Pow(math.Max(math.Cos(angle.Radians(d)), 0), c.N)
}

// CosNWidth returns the circular width σ in degrees of cosⁿ spreading, √(2(1 - r₁)): what a wave model means by its power m.
//
//	r₁ = Γ²(n/2 + 1)/(Γ(n/2 + 1/2) Γ(n/2 + 3/2))
//
// Special cases are:
//
//	CosNWidth(n) = NaN if n is negative, infinite or NaN
//
// Source: [Kuik1988] sec. 3; [SWAN] directional spreading.
func CosNWidth(n float64) float64 {
	if !nonNegative(n) {
		return math.NaN()
	}
	if x := n / 2; x > 50 {
		// With q = Γ(x+1)/Γ(x+1/2), r₁ = q(x)/q(x+1/2), and ln q = ln x/2 + 1/8x - 1/192x³ + 1/640x⁵: no large numbers cancel.
		y := x + 0.5
		lnR1 := -0.5*math.Log1p(0.5/x) + 1/(16*x*y) - (math.Pow(x, -3)-math.Pow(y, -3))/192 + (math.Pow(x, -5)-math.Pow(y, -5))/640
		return angle.Degrees(math.Sqrt(-2 * math.Expm1(lnR1)))
	}
	a, _ := math.Lgamma(n/2 + 1)
	b, _ := math.Lgamma(n/2 + 0.5)
	c, _ := math.Lgamma(n/2 + 1.5)
	return CircularWidth(math.Exp(2*a - b - c))
}

// A GodaSpread is cos²ˢ(δ/2) spreading that is narrowest at the peak:
//
//	s(f) = SMax (f/Fp)⁵ up to the peak, SMax (f/Fp)^-2.5 above
//
// Source: [Mitsuyasu1975]; [Goda2010Book] Eq. 2.25; [ACES1992] Irregular Wave Transformation, p. 3-2-3.
type GodaSpread struct {
	SMax float64 // s at the peak: WindSea, SteepSwell, FlatSwell or SMaxFromWind
	Fp   float64 // frequency of the peak, Hz
}

// The spreading at the peak to use where nothing was measured, by the kind of sea.
//
// Source: [Goda2010Book] sec. 2.3.2; [ACES1992] Irregular Wave Transformation, p. 3-2-3.
const (
	WindSea    = 10.0 // wind waves
	SteepSwell = 25.0 // swell with a short decay distance, of large steepness
	FlatSwell  = 75.0 // swell with a long decay distance, of small steepness
)

// S returns the spreading parameter s at the frequency in Hz.
//
// Special cases are:
//
//	S(0) = S(+Inf) = 0: all round
//	S = NaN if SMax is negative, infinite or NaN, Fp is not positive and finite, or the frequency is negative or NaN
//
// Source: [Goda2010Book] Eq. 2.25.
func (g GodaSpread) S(frequency float64) float64 {
	if !nonNegative(g.SMax) || !positive(g.Fp) || !(frequency >= 0) {
		return math.NaN()
	}
	x := frequency / g.Fp
	if x <= 1 {
		return g.SMax * math.Pow(x, 5)
	}
	return g.SMax * math.Pow(x, -2.5)
}

// Spread returns the density per radian at the frequency in Hz and the angle in degrees from the mean direction.
//
// Special cases are:
//
//	Spread = NaN where S is NaN, or the angle is infinite or NaN
//
// Source: [Goda2010Book] Eq. 2.22 and 2.25.
func (g GodaSpread) Spread(frequency, offset float64) float64 {
	s := g.S(frequency)
	if math.IsNaN(s) {
		return s
	}
	return cos2s(s, offset)
}

// SMaxFromWind returns the spreading parameter at the peak of a wind sea from the wind speed in m/s and the frequency of
// the peak in Hz, by the measurements of Mitsuyasu: the younger the sea the narrower.
//
//	smax = 11.5 (2π fp U/g)^-2.5
//
// Special cases are:
//
//	SMaxFromWind = NaN if the speed or frequency is not positive and finite
//
// Source: [Mitsuyasu1975]; [Goda2010Book] Eq. 2.26.
func SMaxFromWind(speed, fp float64) float64 {
	if !positive(speed) || !positive(fp) {
		return math.NaN()
	}
	return 11.5 * math.Pow(2*math.Pi*fp*speed/gravity(0), -2.5)
}
