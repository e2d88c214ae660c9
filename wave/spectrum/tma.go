package spectrum

import (
	"math"

	"followingsea.example/wave"
)

// A TMA is the spectrum of a wind sea in water of limited depth: a JONSWAP spectrum of deep water times the factor
//
//	φ(f, h) = tanh² kh / 2n,  n = cg/c
//
// that keeps the form of the wavenumber spectrum (named for the Texel, Marsen and Arsloe measurements). The factor is at
// most 1, so that the sea is lower than Hs, which is the height of the deep-water spectrum that it starts from; Moment
// tells how high it is. ScaledTo makes one of a given height.
//
// Source: [Bouws1985] Eq. 3 and 4; [WAFO] Tmaspec.
type TMA struct {
	Hs    float64 // Hm0 of the JONSWAP spectrum before the depth factor, m
	Tp    float64 // period of its peak, s
	Gamma float64 // peak enhancement γ, 1 to 20
	Depth float64 // m; +Inf for deep water, where the spectrum is the JONSWAP spectrum

	Water wave.Water // zero: standard gravity
}

// Density returns the variance density in m²/Hz at the frequency in Hz.
//
// Special cases are:
//
//	Density(0) = Density(+Inf) = 0
//	Density = NaN as JONSWAP.Density, or if Depth is zero, negative or NaN
//
// Source: [Bouws1985] Eq. 3; [WAFO] Tmaspec.
func (t TMA) Density(frequency float64) float64 {
	d := JONSWAP{t.Hs, t.Tp, t.Gamma}.Density(frequency)
	if frequency == 0 || math.IsInf(frequency, 1) {
		return d * (1 + 0*DepthFactor(t.Water, 1, t.Depth))
	}
	return d * DepthFactor(t.Water, frequency, t.Depth)
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ, by quadrature to about 1e-12 and with the exact
// tail where the depth is no longer felt.
//
// Special cases are:
//
//	MomentWithin(n ≥ 4, lo, +Inf) = +Inf
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi, n is finite and the spectrum valid
//
// Source: [Bouws1985] Eq. 3, integrated.
func (t TMA) MomentWithin(n, lo, hi float64) float64 {
	j := JONSWAP{t.Hs, t.Tp, t.Gamma}
	if !orderly(n, lo, hi) || !j.valid() || math.IsNaN(DepthFactor(t.Water, 1, t.Depth)) {
		return math.NaN()
	}
	// Above ω²h/g = 22 the factor is 1 to the last bit; below x = 0.2 there is nothing.
	deep := math.Sqrt(22*gravity(t.Water.Gravity)/t.Depth) / (2 * math.Pi)
	sum := 0.0
	if hi > deep {
		sum = j.MomentWithin(n, math.Max(lo, deep), hi)
	}
	if math.IsInf(sum, 1) {
		return sum
	}
	a, b := math.Max(lo*t.Tp, 0.2), math.Min(hi, deep)*t.Tp
	f := func(x float64) float64 { return math.Pow(x/t.Tp, n) * t.Density(x/t.Tp) / t.Tp }
	for x := a; x < b; {
		// The panels are those of the enhanced peak near it, of ratio 1.15 away from it, and end at the kink.
		next := 1.15 * x
		for i, p := range panels {
			s := sigmaA
			if i > 7 {
				s = sigmaB
			}
			if e := 1 + s*p; e > x*(1+1e-12) && e < next {
				next = e
			}
		}
		next = math.Min(next, b)
		sum += gauss(f, x, next)
		x = next
	}
	return sum
}

// ScaledTo returns the spectrum with Hs changed so that its own height, 4√m₀ with the depth factor in it, is hs metres.
//
// Special cases are:
//
//	ScaledTo has an Hs of NaN if hs is negative, infinite or NaN or the spectrum is not valid
//
// Source: [Bouws1985] Eq. 3, scaled.
func (t TMA) ScaledTo(hs float64) TMA {
	t.Hs = 1
	m := Moment(t, 0)
	t.Hs = hs / (4 * math.Sqrt(m))
	if !nonNegative(hs) {
		t.Hs = math.NaN()
	}
	return t
}

// DepthFactor returns the factor φ of Kitaigorodskii for a frequency in Hz over a depth in metres: what is left of the
// density of deep water. It is 1 in deep water and tends to half of ω²h/g in shallow.
//
//	φ = tanh² kh / 2n,  n = cg/c
//
// Special cases are:
//
//	DepthFactor(water, frequency, +Inf) = 1
//	DepthFactor = NaN if the frequency or the depth is zero, negative or NaN, the frequency infinite or the gravity none
//
// Source: [Bouws1985] Eq. 4; [WAFO] phi1.
func DepthFactor(water wave.Water, frequency, depth float64) float64 {
	if !positive(frequency) || !(depth > 0) {
		return math.NaN()
	}
	omega := 2 * math.Pi * frequency
	if omega*omega*depth/gravity(water.Gravity) > 22 { // deep to the last bit, and ω² may overflow
		return 1
	}
	w := water.Solve(1/frequency, depth)
	t := omega * omega / (gravity(water.Gravity) * w.Wavenumber) // tanh kh, without the exponential
	return t * t / (2 * w.SpeedRatio)
}
