package spectrum

import (
	"fmt"
	"math"
	"sort"
)

// Bins is a measured spectrum: bands of frequency, each with its density and its width. The density is the mean over the
// band, so that moments are sums over the bands, which is how buoys report heights; a trapezoid between the middles gives
// other numbers (see Points). A density that is unknown is NaN, and so is then every moment that needs it.
//
// The slices are of one length, the frequencies rising. NewBins makes one from outside data and checks it.
//
// Source: [NDBC1996] sec. 3; [MHKiT] frequency_moment.
type Bins struct {
	F []float64 // middle of the band, Hz
	S []float64 // density, m²/Hz
	W []float64 // width of the band, Hz
}

// NewBins returns the spectrum with the densities s in m²/Hz at the band middles f in Hz and the widths w. A nil w stands
// for bands whose edges lie half way between the middles, but for the bands of the national data buoys in use since the
// nineties (47 bands from 0.02 or 0.0325 to 0.485 Hz) for their own widths; see BandWidths.
//
// The error wraps ErrInput: slices of different lengths or none at all, frequencies that do not rise from above zero,
// densities that are negative or infinite, widths that are not positive. A density of NaN is unknown and is kept.
func NewBins(f, s, w []float64) (Bins, error) {
	if len(f) == 0 {
		return Bins{}, inputError("F", "empty", "one band or more")
	}
	if len(s) != len(f) || w != nil && len(w) != len(f) {
		return Bins{}, inputError("S, W", fmt.Sprintf("of length %d, %d", len(s), len(w)), fmt.Sprintf("the length of F, %d", len(f)))
	}
	for i := range f {
		if !positive(f[i]) || i > 0 && !(f[i] > f[i-1]) {
			return Bins{}, inputError(fmt.Sprintf("F[%d]", i), f[i], "rising from above 0 Hz")
		}
		if s[i] < 0 || math.IsInf(s[i], 0) {
			return Bins{}, inputError(fmt.Sprintf("S[%d]", i), s[i], "0 m²/Hz or above")
		}
		if w != nil && !positive(w[i]) {
			return Bins{}, inputError(fmt.Sprintf("W[%d]", i), w[i], "above 0 Hz")
		}
	}
	if w == nil {
		w = BandWidths(f)
	}
	return Bins{append([]float64(nil), f...), append([]float64(nil), s...), append([]float64(nil), w...)}, nil
}

// BandWidths returns the widths in Hz of the bands with the middles f in Hz. A middle that is one of the national data
// buoys' (0.0325 to 0.0925 by 0.005, 0.1 to 0.35 by 0.01, 0.365 to 0.485 by 0.02 Hz, also when printed to three decimals)
// has that step as its width if all have and the bands join up; 0.02 Hz, the noise band below, has 0.01. Otherwise the edges
// are half way.
//
// Special cases are:
//
//	BandWidths of one band is its frequency: nothing is known of it
//	BandWidths has NaN for every band if a frequency is NaN or they do not rise
//
// Source: [NDBC1996] table of bandwidths; half way is the rule of the trade.
func BandWidths(f []float64) []float64 {
	w := make([]float64, len(f))
	known := len(f) > 1
	for i := range f {
		if !(f[i] > 0 && (i == 0 || f[i] > f[i-1])) || math.IsInf(f[i], 1) {
			for k := range w {
				w[k] = math.NaN()
			}
			return w
		}
		if known {
			_, w[i], known = buoyBand(f[i])
			// They join up, but for the gap above the noise band; any others on the same numbers do not.
			if i > 0 && f[i-1] != 0.02 {
				known = known && math.Abs(f[i]-w[i]/2-f[i-1]-w[i-1]/2) < 0.0011
			}
		}
	}
	if known {
		return w
	}
	if len(f) == 1 {
		w[0] = f[0]
		return w
	}
	last := len(f) - 1
	for i := range f {
		switch i {
		case 0:
			w[i] = math.Min(f[1]-f[0], 2*f[0])
		case last:
			w[i] = f[i] - f[i-1]
		default:
			w[i] = (f[i+1] - f[i-1]) / 2
		}
	}
	return w
}

// buoyBand returns the middle and the width of a band of the national data buoys.
func buoyBand(f float64) (middle, width float64, ok bool) {
	// Rounding to three decimals moves a middle by up to 0.0005 Hz.
	for _, r := range [...]struct{ from, to, step float64 }{{325, 925, 50}, {1000, 3500, 100}, {3650, 4850, 200}} { // 1e-4 Hz
		n := math.Round((f*1e4 - r.from) / r.step)
		if n >= 0 && n <= (r.to-r.from)/r.step && math.Abs(r.from+n*r.step-f*1e4) < 5.1 {
			return (r.from + n*r.step) / 1e4, r.step / 1e4, true
		}
	}
	return 0.02, 0.01, math.Abs(f-0.02) < 1e-9
}

// Density returns the density in m²/Hz of the band in which the frequency lies, 0 outside all bands.
//
// Special cases are:
//
//	Density = NaN if the frequency is negative or NaN, or the band's density is unknown
//
// Source: [NDBC1996] sec. 3.
func (b Bins) Density(frequency float64) float64 {
	if !(frequency >= 0) {
		return math.NaN()
	}
	i := sort.SearchFloat64s(b.F, frequency)
	for _, k := range [...]int{i, i - 1} { // bands may overlap by rounding: the higher first
		if k >= 0 && k < len(b.F) && math.Abs(frequency-b.F[k]) <= b.W[k]/2 {
			return b.S[k]
		}
	}
	return 0
}

// MomentWithin returns the moment of order n in m² Hzⁿ as the sum over the bands, Σ fⁿ S W, each with the part of its width
// that lies from lo to hi Hz.
//
// Special cases are:
//
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi and n is finite, or if a density in the range is unknown
//
// Source: [NDBC1996] sec. 3; [MHKiT] frequency_moment.
func (b Bins) MomentWithin(n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) {
		return math.NaN()
	}
	return b.sum(lo, hi, func(f, d float64) float64 { return math.Pow(f, n) * d })
}

func (b Bins) sum(lo, hi float64, of func(f, d float64) float64) float64 {
	sum := 0.0
	for i, f := range b.F {
		half := b.W[i] / 2
		w := b.W[i]
		if f-half < lo || f+half > hi {
			w = math.Min(f+half, hi) - math.Max(f-half, lo)
			if !(w > 0) {
				continue
			}
		}
		sum += of(f, b.S[i]) * w
	}
	return sum
}

// PeakFrequency returns the middle of the band with the greatest density, in Hz, the lowest of equals: what a buoy's
// dominant period is from.
//
// Special cases are:
//
//	PeakFrequency = NaN if no density is above zero or one is unknown
//
// Source: [NDBC1996] sec. 3.
func (b Bins) PeakFrequency() float64 { return peakOf(b.F, b.S) }

func peakOf(f, s []float64) float64 {
	best, at := 0.0, math.NaN()
	for i, d := range s {
		if math.IsNaN(d) {
			return d
		}
		if d > best {
			best, at = d, f[i]
		}
	}
	return at
}

// Points is a spectrum given at points, straight between them and nothing outside: what a table or a graph is. Its moments
// are by the trapezoidal rule on fⁿ S at the points, as many programs take them.
//
// The slices are of one length, the frequencies rising.
//
// Source: [WAFO] SpecData1D.
type Points struct {
	F []float64 // Hz, rising
	S []float64 // m²/Hz
}

// Density returns the density in m²/Hz, linear between the points and 0 outside them.
//
// Special cases are:
//
//	Density = NaN if the frequency is negative or NaN, or a density next to it is
func (p Points) Density(frequency float64) float64 {
	if !(frequency >= 0) {
		return math.NaN()
	}
	n := len(p.F)
	if n == 0 || frequency < p.F[0] || frequency > p.F[n-1] {
		return 0
	}
	i := sort.SearchFloat64s(p.F, frequency)
	if p.F[i] == frequency {
		return p.S[i]
	}
	t := (frequency - p.F[i-1]) / (p.F[i] - p.F[i-1])
	return p.S[i-1] + t*(p.S[i]-p.S[i-1])
}

// MomentWithin returns the moment of order n from lo to hi Hz, in m² Hzⁿ, by the trapezoidal rule.
//
// Special cases are:
//
//	MomentWithin = NaN unless 0 ≤ lo ≤ hi and n is finite, if a density is NaN, the frequencies do not rise, or for n < 0
//	and a density at 0 Hz
func (p Points) MomentWithin(n, lo, hi float64) float64 {
	if !orderly(n, lo, hi) {
		return math.NaN()
	}
	return p.integral(lo, hi, func(f, d float64) float64 {
		if f == 0 && d == 0 {
			return 0
		}
		if f == 0 && n < 0 {
			return math.NaN()
		}
		return math.Pow(f, n) * d
	})
}

func (p Points) integral(lo, hi float64, of func(f, d float64) float64) float64 {
	sum := 0.0
	for i := 1; i < len(p.F); i++ {
		f0, f1, s0, s1 := p.F[i-1], p.F[i], p.S[i-1], p.S[i]
		if !(f0 >= 0 && f1 > f0 && f1 <= math.MaxFloat64) {
			return math.NaN()
		}
		a, b := math.Max(f0, lo), math.Min(f1, hi)
		if !(a < b) {
			continue
		}
		if a > f0 {
			s0 = p.Density(a)
		}
		if b < f1 {
			s1 = p.Density(b)
		}
		sum += (of(a, s0) + of(b, s1)) / 2 * (b - a)
	}
	return sum
}

// PeakFrequency returns the frequency in Hz of the point with the greatest density, the lowest of equals.
//
// Special cases are:
//
//	PeakFrequency = NaN if no density is above zero or one is NaN
func (p Points) PeakFrequency() float64 { return peakOf(p.F, p.S) }
