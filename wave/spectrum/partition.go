package spectrum

import (
	"math"
)

// A measured sea is often a wind sea on top of a swell. The frequency that parts them can be had from the spectrum alone, by
// where the waves are steepest, or from the wind, by which waves it can still feed.

// A Band is the part of a spectrum from Low to High Hz, nothing outside: a wind sea or a swell cut out of a whole.
type Band struct {
	Spectrum  Spectrum
	Low, High float64 // Hz; +Inf for the whole tail
}

// Density returns the density in m²/Hz inside the band, the High frequency left out, and 0 outside.
//
// Special cases are:
//
//	Density = NaN if the frequency is negative or NaN, or unless 0 ≤ Low ≤ High
//
// Source: definition.
func (b Band) Density(frequency float64) float64 {
	if !(frequency >= 0) || !(b.Low >= 0 && b.Low <= b.High) {
		return math.NaN()
	}
	if frequency < b.Low || frequency >= b.High {
		return 0
	}
	return b.Spectrum.Density(frequency)
}

// MomentWithin returns the moment of order n of the part of the band from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin = NaN as for the function MomentWithin, or unless 0 ≤ Low ≤ High
//
// Source: definition.
func (b Band) MomentWithin(n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) || !(b.Low >= 0 && b.Low <= b.High) {
		return math.NaN()
	}
	lo, hi = math.Max(lo, b.Low), math.Min(hi, b.High)
	if !(lo < hi) {
		return 0
	}
	return MomentWithin(b.Spectrum, n, lo, hi)
}

// PeakFrequency returns the frequency of the greatest density inside the band, in Hz.
//
// Special cases are:
//
//	PeakFrequency = NaN if there is no density above zero in the band
//
// Source: definition.
func (b Band) PeakFrequency() float64 {
	if !(b.Low >= 0 && b.Low <= b.High) {
		return math.NaN()
	}
	switch v := b.Spectrum.(type) {
	case Bins:
		return peakOf(inside(b, v.F, v.S))
	case Points:
		return peakOf(inside(b, v.F, v.S))
	}
	if f := PeakFrequency(b.Spectrum); f >= b.Low && f < b.High && b.Spectrum.Density(f) > 0 {
		return f
	}
	best, at := 0.0, math.NaN()
	lo, hi := math.Max(b.Low, slowest), math.Min(b.High, fastest)
	for i := range 1000 {
		f := lo * math.Pow(hi/lo, float64(i)/1000)
		if d := b.Density(f); d > best {
			best, at = d, f
		}
	}
	return at
}

func inside(b Band, f, s []float64) ([]float64, []float64) {
	var g, d []float64
	for i := range f {
		if f[i] >= b.Low && f[i] < b.High {
			g, d = append(g, f[i]), append(d, s[i])
		}
	}
	return g, d
}

// Separate parts a spectrum at a frequency in Hz into the swell below and the wind sea above. Their variances add to the
// whole, so that the squares of their heights do.
//
// Special cases are:
//
//	Separate has a Low or High of NaN, and so no moments, if the frequency is negative or NaN
//
// Source: [GilhousenHervey2001].
func Separate(s Spectrum, frequency float64) (swell, windSea Band) {
	if !(frequency >= 0) {
		frequency = math.NaN()
	}
	return Band{s, 0, frequency}, Band{s, frequency, math.Inf(1)}
}

// SteepnessSpectrum returns ξ, the steepness of the waves of the frequency in Hz and above, up to the highest measured: the
// height over the length of their Tz.
//
//	ξ(f) = 2π Hs/(g Tz²) = 8π m₂/(g √m₀), moments from f to fu
//
// Special cases are:
//
//	SteepnessSpectrum = 0 if there is no variance in the range
//	SteepnessSpectrum = NaN unless 0 ≤ frequency ≤ highest, or if the gravity is negative, infinite or NaN; 0 is 9.80665
//
// Source: [GilhousenHervey2001]; [NDBC-FAQ] wave steepness algorithm.
func SteepnessSpectrum(s Spectrum, frequency, highest, gravityOrZero float64) float64 {
	m0, m2 := MomentWithin(s, 0, frequency, highest), MomentWithin(s, 2, frequency, highest)
	if m0 == 0 && m2 == 0 {
		return 0 / gravity(gravityOrZero)
	}
	return 8 * math.Pi * m2 / (gravity(gravityOrZero) * math.Sqrt(m0))
}

// SeparationBySteepness returns the frequency in Hz that parts swell from wind sea in a measured spectrum if nothing is
// known of the wind: 0.75 of the frequency from which up the waves are steepest. Under a light wind on a swell it takes too
// much for wind sea; SeparationFrequency mends that.
//
// Special cases are:
//
//	SeparationBySteepness = NaN if the spectrum has no variance or an unknown density
//
// Source: [GilhousenHervey2001]; [NDBC-FAQ] wave steepness algorithm.
func SeparationBySteepness(b Bins) float64 {
	if !positive(Moment(b, 0)) {
		return math.NaN()
	}
	best, at := -1.0, math.NaN()
	for i, f := range b.F {
		// From the lower edge of the band, so that it is in whole.
		x := SteepnessSpectrum(b, math.Max(f-b.W[i]/2, 0), math.Inf(1), 0)
		if x > best {
			best, at = x, f
		}
	}
	return 0.75 * at
}

// SeparationFrequency returns the frequency in Hz that parts swell from wind sea in a measured spectrum under the wind at
// 10 m in m/s, as the national data buoys have it: that of SeparationBySteepness, but at least 0.9 of the peak frequency of
// a risen sea, 1.25/U, since the wind cannot feed longer waves.
//
// Special cases are:
//
//	SeparationFrequency(b, 0) = +Inf: in a calm all is swell
//	SeparationFrequency = NaN if the wind is negative, infinite or NaN, or the spectrum has no variance or an unknown density
//
// Source: [GilhousenHervey2001]; [NDBC-FAQ] wave steepness algorithm.
func SeparationFrequency(b Bins, wind10 float64) float64 {
	fs := SeparationBySteepness(b)
	if !nonNegative(wind10) || math.IsNaN(fs) { // math.Max of NaN and +Inf is +Inf
		return math.NaN()
	}
	return math.Max(fs, 0.9*1.25/wind10)
}

// SeparationByWaveAge returns the frequency in Hz below which the waves outrun the wind and so are swell: those with a
// phase speed in deep water above age times the component of the wind in m/s along them. The usual age is 1.2.
//
//	fs = g/(2π · age · U cos δ)
//
// Special cases are:
//
//	SeparationByWaveAge = +Inf for a wind across or against the waves, or none: all is swell
//	SeparationByWaveAge = NaN if the wind is negative, infinite or NaN, the angle is infinite or NaN, or age not positive
//
// Source: [Komen1994] sec. III.3; [Portilla2009] sec. 4.
func SeparationByWaveAge(wind, offset, age float64) float64 {
	along := wind * math.Cos(offset*math.Pi/180)
	if !nonNegative(wind) || math.IsNaN(along) || !positive(age) {
		return math.NaN()
	}
	if !(along > 1e-12*wind) {
		return math.Inf(1)
	}
	return gravity(0) / (2 * math.Pi * age * along)
}

// RisenRatio returns γ*, the density at the peak over that of a fully risen sea (Pierson-Moskowitz) with the same peak
// frequency in Hz. Above 1 the system is a wind sea, since swell has spread out on its way; at or below 1 it is swell or an
// old sea. It needs no wind.
//
//	γ* = S(fp) / (α g² (2π)⁻⁴ fp⁻⁵ e^-5/4),  α = 0.0081
//
// Special cases are:
//
//	RisenRatio = NaN if the density is negative, infinite or NaN, or the frequency not positive and finite
//
// Source: [Portilla2009] sec. 4.
func RisenRatio(density, peak float64) float64 {
	if !nonNegative(density) || !positive(peak) {
		return math.NaN()
	}
	g := gravity(0)
	return density / (pmAlpha * g * g / math.Pow(2*math.Pi, 4) / math.Pow(peak, 5) * math.Exp(-1.25))
}
