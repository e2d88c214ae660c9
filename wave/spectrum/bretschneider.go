package spectrum

import "math"

// A Bretschneider is the two-parameter spectrum of a fully risen wind sea, scaled to a height and a peak period: the
// shape of Pierson and Moskowitz, also called the modified or generalised Pierson-Moskowitz or the ITTC spectrum.
//
//	S(f) = 5/16 Hs² fp⁴ f⁻⁵ exp(-5/4 (fp/f)⁴),  fp = 1/Tp
//
// It is the JONSWAP shape with no peak enhancement. Hs is Hm0, 4√m₀.
//
// Source: [WAFO] Bretschneider; [Goda2010Book] Eq. 2.10.
type Bretschneider struct {
	Hs float64 // Hm0, m
	Tp float64 // period of the peak, s
}

func (b Bretschneider) valid() bool { return nonNegative(b.Hs) && positive(b.Tp) }

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN if the frequency is negative or NaN, Hs is negative, infinite or NaN, or Tp is not positive and finite
//
// Source: [WAFO] Bretschneider.
func (b Bretschneider) Density(frequency float64) float64 {
	if !(frequency >= 0) || !b.valid() {
		return math.NaN()
	}
	return b.scale() * base0(frequency*b.Tp)
}

// scale returns 5/16 Hs² Tp, the density over b(x).
func (b Bretschneider) scale() float64 { return 5.0 / 16 * b.Hs * b.Hs * b.Tp }

// base0 is base with its limits at 0 and infinity.
func base0(x float64) float64 {
	if x == 0 || math.IsInf(x, 1) {
		return 0
	}
	return base(x)
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ, in closed form for hi = +Inf.
//
//	mₙ = Hs²/16 fpⁿ (5/4)^(n/4) Γ(1 - n/4)
//
// Special cases are:
//
//	MomentWithin(n ≥ 4, lo, +Inf) = +Inf
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi, n is finite and the spectrum valid
//
// Source: [Goda2010Book] sec. 2.4; [Gran1992] sec. 3.1.
func (b Bretschneider) MomentWithin(n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) || !b.valid() {
		return math.NaN()
	}
	return 5.0 / 16 * b.Hs * b.Hs * math.Pow(b.Tp, -n) * baseMoment(n, lo*b.Tp, hi*b.Tp)
}

// PeakFrequency returns 1/Tp, in Hz, NaN if the spectrum is not valid.
func (b Bretschneider) PeakFrequency() float64 {
	if !b.valid() {
		return math.NaN()
	}
	return 1 / b.Tp
}

// Alpha returns the parameter α of Phillips that the spectrum has, the level of its tail α g² (2π)⁻⁴ f⁻⁵: 0.0081 where
// Pierson and Moskowitz found a sea fully risen, more in a younger one. It takes the gravity in m/s² (0 for 9.80665).
//
//	α = 5 π⁴ Hs²/(g² Tp⁴)
//
// Special cases are:
//
//	Alpha = NaN if the gravity is negative, infinite or NaN, or the spectrum not valid
//
// Source: [Gran1992] sec. 3.1.
func (b Bretschneider) Alpha(gravityOrZero float64) float64 {
	if !b.valid() {
		return math.NaN()
	}
	t := math.Pi / b.Tp
	r := t * t * b.Hs / gravity(gravityOrZero)
	return 5 * r * r
}
