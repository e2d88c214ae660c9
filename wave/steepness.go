package wave

import (
	"math"
	"strings"

	"followingsea.example/internal/dispersion"
)

// Steepness returns H/L of a wave of the height in metres. A swell has 0.01 or less, a young wind sea 0.05 and more; at
// 0.142 in deep water a wave breaks.
//
// Special cases are:
//
//	Steepness(height) = NaN if the height is negative, infinite or NaN
//
// Source: a definition.
func (v Wave) Steepness(height float64) float64 {
	return amplitude(height) * 2 / v.Length
}

// Ursell returns the Ursell number H L²/h³ of a wave of the height in metres: how much the depth bends the crests out of
// shape. Above some 26 linear theory gives way to cnoidal waves.
//
// Special cases are:
//
//	Ursell(height) = 0 in infinitely deep water
//	Ursell(height) = NaN if the height is negative, infinite or NaN
//
// Source: [ACES1992] pp. 2-1-4 to 2-1-5; [CEM-II-1] for the limit of 26.
func (v Wave) Ursell(height float64) float64 {
	r := v.Length / v.Depth
	return amplitude(height) * 2 / v.Depth * r * r
}

// amplitude returns half the height, NaN unless the height is finite and not negative.
func amplitude(height float64) float64 {
	if !(height >= 0 && finite(height)) {
		return math.NaN()
	}
	return height / 2
}

// Remarks is a set of the limits of linear theory that a wave has passed.
type Remarks uint8

// The remarks. Several may hold at once.
const (
	Steep        Remarks = 1 << iota // ka above 0.1: speeds and lengths some per cent too low
	LongForDepth                     // Ursell number above 26: cnoidal theory describes it better
	HighForDepth                     // higher than a fifth of the depth
	PastBreaking                     // higher than the limit of steepness, 0.142 L tanh kh: no such wave stands
	NotAWave                         // something was not a number
)

// String lists the remarks in words, separated by commas; "none" when there are none.
func (r Remarks) String() string {
	var words []string
	for i, w := range []string{"steep", "long for the depth", "high for the depth", "past breaking", "not a wave"} {
		if r&(1<<i) != 0 {
			words = append(words, w)
		}
	}
	if words == nil {
		return "none"
	}
	return strings.Join(words, ", ")
}

// Remarks returns the limits of linear theory that the wave passes at the height in metres: none of them at small heights.
// The limits are conventions: ka = 0.1, an Ursell number of 26, a fifth of the depth, and the limit of breaking.
//
// Special cases are:
//
//	Remarks(height) = NotAWave if the height is negative, infinite or NaN, or the wave is
//
// Source: [CEM-II-1]; [DeanDalrymple1991] ch. 4; [Miche1944].
func (v Wave) Remarks(height float64) Remarks {
	a := amplitude(height)
	if math.IsNaN(a) || math.IsNaN(v.Length) || math.IsNaN(v.Depth) {
		return NotAWave
	}
	var r Remarks
	if !(v.Wavenumber*a <= 0.1) {
		r |= Steep
	}
	if !(v.Ursell(height) <= 26) {
		r |= LongForDepth
	}
	if !(height <= v.Depth/5) {
		r |= HighForDepth
	}
	if !(height <= v.BreakingHeight()) {
		r |= PastBreaking
	}
	return r
}

// SpeedCorrection returns the factor by which the crests of a wave of the height in metres are faster than linear theory has
// them, at the same length: the third order of Stokes,
//
//	c²/c0² = 1 + (ka)² (8 + cosh 4kh - 2 tanh² kh)/(8 sinh⁴ kh)
//
// where h is the depth of the water at rest: under the waves the mean level lies lower by ka²/(2 sinh 2kh). It
// is 1 + (ka)² in deep water: 4 % at ka = 0.3. It is good to about a per cent up to that steepness in deep water, and
// fails where the Ursell number is above 26.
//
// Special cases are:
//
//	SpeedCorrection(height) = NaN if the height is negative, infinite or NaN
//
// Source: [Stewart2008] ch. 16, in deep water; [Whitham1974] sec. 13.13.
func (v Wave) SpeedCorrection(height float64) float64 {
	ka := v.Wavenumber * amplitude(height)
	return math.Sqrt(1 + ka*ka*stokesFactor(v.kh()))
}

// stokesFactor returns (8 + cosh 4x - 2 tanh² x)/(8 sinh⁴ x).
func stokesFactor(x float64) float64 {
	if x > 20 {
		return 1
	}
	s, t := math.Sinh(x), math.Tanh(x)
	s2 := s * s
	return (8 + math.Cosh(4*x) - 2*t*t) / (8 * s2 * s2)
}

// SteepSpeed returns the speed in m/s of the crests of a wave of the period in seconds and the height in metres over the
// depth in metres, with the third-order correction of SpeedCorrection. At a given period the wave is also longer
// than linear theory has it, and gains about twice as much speed as at a given length: c = c0(1 + (ka)²) in deep water, with k
// the wavenumber it then has.
//
// Special cases are:
//
//	SteepSpeed(period, depth, height) = NaN if the period or depth is zero, negative, infinite (the period) or NaN
//	SteepSpeed(period, depth, height) = NaN if the height is negative, infinite or NaN
//
// Source: [Stewart2008] ch. 16, in deep water; [Whitham1974] sec. 13.13.
func (w Water) SteepSpeed(period, depth, height float64) float64 {
	a := amplitude(height)
	v := w.Solve(period, depth)
	k := v.Wavenumber
	if math.IsNaN(a) || math.IsNaN(k) {
		return math.NaN()
	}
	// ω² = gk tanh kh (1 + (ka)² S(kh)): the right side grows with k, so its only root lies below the linear one, and bisection
	// in k finds it. Newton's method would do with fewer steps and more care; this is not called in a loop.
	g := w.g()
	omega2 := v.AngularFrequency * v.AngularFrequency
	rhs := func(k float64) float64 {
		x := k * depth
		y := k
		if !math.IsInf(depth, 1) {
			y, _ = dispersion.Forward(x)
			y /= depth
		}
		return g * y * (1 + k*a*k*a*stokesFactor(x))
	}
	lo, hi := 0.0, k
	for range 200 {
		mid := (lo + hi) / 2
		if mid == lo || mid == hi {
			break
		}
		if rhs(mid) < omega2 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return v.AngularFrequency / hi
}

// SteepSpeed returns the speed in m/s of the crests of a steep wave; see Water.SteepSpeed, whose defaults it uses.
func SteepSpeed(period, depth, height float64) float64 {
	return Water{}.SteepSpeed(period, depth, height)
}
