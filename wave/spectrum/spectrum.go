package spectrum

import (
	"fmt"
	"math"
)

// A Spectrum is a frequency spectrum of the surface elevation: the variance of the surface per hertz.
//
// Every shape of this package is one, and so is anything else with the method; all functions here take the interface.
type Spectrum interface {
	// Density returns the variance density in m²/Hz at the frequency in Hz.
	Density(frequency float64) float64
}

// A MomentSpectrum is a Spectrum that knows its own moments better than quadrature would. Moment and MomentWithin ask it.
type MomentSpectrum interface {
	Spectrum
	// MomentWithin returns the integral of fⁿ S(f) from lo to hi, in m² Hzⁿ.
	MomentWithin(n, lo, hi float64) float64
}

// A PeakSpectrum is a Spectrum that knows the frequency of its peak in Hz. PeakFrequency asks it.
type PeakSpectrum interface {
	Spectrum
	// PeakFrequency returns the frequency of the greatest density, in Hz.
	PeakFrequency() float64
}

// A Sum is several wave systems at once, such as a wind sea and two swells: their variances add, so that their heights
// add as squares.
//
// Source: [Goda2010Book] sec. 2.4.
type Sum []Spectrum

// Density returns the sum of the densities in m²/Hz at the frequency in Hz; of no systems at all it is 0.
//
// Special cases are:
//
//	Density = NaN if the frequency is negative or NaN, or any part is NaN
func (s Sum) Density(frequency float64) float64 {
	if !(frequency >= 0) {
		return math.NaN()
	}
	sum := 0.0
	for _, p := range s {
		sum += p.Density(frequency)
	}
	return sum
}

// MomentWithin returns the sum of the parts' moments of order n from lo to hi Hz, in m² Hzⁿ.
//
// Special cases are:
//
//	MomentWithin = NaN as for the function MomentWithin
func (s Sum) MomentWithin(n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) {
		return math.NaN()
	}
	sum := 0.0
	for _, p := range s {
		sum += MomentWithin(p, n, lo, hi)
	}
	return sum
}

// PeakFrequency returns the frequency in Hz of the greatest density of the sum. It is looked for around the peaks of the
// parts, where a maximum of the sum has to be.
//
// Special cases are:
//
//	PeakFrequency = NaN for no systems, or if a part has none
func (s Sum) PeakFrequency() float64 {
	best, at := math.Inf(-1), math.NaN()
	for _, p := range s {
		f, ok := climb(s, PeakFrequency(p))
		if !ok {
			return math.NaN()
		}
		if d := s.Density(f); d > best {
			best, at = d, f
		}
	}
	return at
}

// Densities sets dst[i] to the density in m²/Hz at frequencies[i] in Hz, for a whole grid at once. Of a JONSWAP or a Sum of
// them the scale is computed once. It panics if the slices are of different lengths.
//
// Special cases are:
//
//	Densities sets NaN where Density is NaN
//
// Source: as of the Spectrum.
func Densities(s Spectrum, dst, frequencies []float64) {
	if len(dst) != len(frequencies) {
		panic(fmt.Sprintf("spectrum: Densities of %d frequencies into %d", len(frequencies), len(dst)))
	}
	for i := range dst {
		dst[i] = 0
	}
	addDensities(s, dst, frequencies)
}

func addDensities(s Spectrum, dst, frequencies []float64) {
	switch v := s.(type) {
	case Sum:
		for i, f := range frequencies {
			if !(f >= 0) { // also of no systems at all
				dst[i] = math.NaN()
			}
		}
		for _, p := range v {
			addDensities(p, dst, frequencies)
		}
		return
	case JONSWAP:
		if !v.valid() {
			break
		}
		scale, l := v.scale(), math.Log(v.Gamma)
		for i, f := range frequencies {
			d := math.NaN()
			if f >= 0 {
				x := f * v.Tp
				d = scale * base0(x)
				if x > 1-8.6*sigmaA && x < 1+8.6*sigmaB { // beyond, γ^r is 1
					d *= math.Exp(l * peakedness(x, sigmaA, sigmaB))
				}
			}
			dst[i] += d
		}
		return
	}
	for i, f := range frequencies {
		dst[i] += s.Density(f)
	}
}

// PeakFrequency returns the frequency in Hz at which the density is greatest. A spectrum that does not know its own peak
// is searched from 0.01 to 10 Hz in steps of 1 %, then closely.
//
// Special cases are:
//
//	PeakFrequency = NaN if the density is NaN or nowhere above zero
//
// Source: [IAHR1989] list of sea state parameters, fp.
func PeakFrequency(s Spectrum) float64 {
	if p, ok := s.(PeakSpectrum); ok {
		return p.PeakFrequency()
	}
	best, at := 0.0, math.NaN()
	for i := range 695 {
		f := 0.01 * math.Pow(1.01, float64(i))
		d := s.Density(f)
		if math.IsNaN(d) {
			return math.NaN()
		}
		if d > best {
			best, at = d, f
		}
	}
	f, ok := climb(s, at)
	if !ok {
		return math.NaN()
	}
	return f
}

// climb finds the maximum within 3 % of f by golden section.
func climb(s Spectrum, f float64) (float64, bool) {
	if !nonNegative(f) {
		return math.NaN(), false
	}
	const golden = 0.6180339887498949
	a, b := f*0.97, f*1.03
	x, y := b-golden*(b-a), a+golden*(b-a)
	dx, dy := s.Density(x), s.Density(y)
	for range 40 {
		if dx > dy {
			b, y, dy = y, x, dx
			x = b - golden*(b-a)
			dx = s.Density(x)
		} else {
			a, x, dx = x, y, dy
			y = a + golden*(b-a)
			dy = s.Density(y)
		}
	}
	m := (a + b) / 2
	if s.Density(f) >= s.Density(m) {
		m = f
	}
	return m, !math.IsNaN(s.Density(m))
}

// finite reports whether v is neither infinite nor NaN.
func finite(v float64) bool { return math.Abs(v) <= math.MaxFloat64 }

// positive reports whether v is above zero and finite, which NaN is not.
func positive(v float64) bool { return v > 0 && v <= math.MaxFloat64 }

// nonNegative reports whether v is zero or above and finite.
func nonNegative(v float64) bool { return v >= 0 && v <= math.MaxFloat64 }
