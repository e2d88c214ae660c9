package spectrum_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
	"github.com/google/go-cmp/cmp"
)

var (
	largest   = math.MaxFloat64
	belowZero = -math.SmallestNonzeroFloat64
)

func above(v float64) float64 { return math.Nextafter(v, inf) }
func below(v float64) float64 { return math.Nextafter(v, -inf) }

// Where the stated range of a function is closed, its border has a value.
func TestValuesOnTheBorders(t *testing.T) {
	calm := spectrum.Bretschneider{Hs: 0, Tp: 8}
	s := spectrum.Bretschneider{Hs: 2, Tp: 8}
	b := spectrum.Bins{F: []float64{0.25, 0.5}, S: []float64{1, 3}, W: []float64{0.25, 0.25}}
	from0 := spectrum.Points{F: []float64{0, 1}, S: []float64{0, 2}}
	even := spectrum.Points{F: []float64{0, 1}, S: []float64{2, 2}}
	r := spectrum.BuoyRecord{Bins: b, MeanFrom: []float64{10, 50}, R1: []float64{0.5, 0.5}}
	first, _ := r.MeanDirectionFrom(0.25, 0.25)
	second, _ := r.MeanDirectionFrom(0.5, 0.5)
	shorter := spectrum.BuoyRecord{Bins: b, MeanFrom: []float64{10}, R1: []float64{0.5, 0.5}}
	noMean, _ := shorter.MeanDirectionFrom(0, 1)
	shorter = spectrum.BuoyRecord{Bins: b, MeanFrom: []float64{10, 50}, R1: []float64{0.5}}
	noR1, _ := shorter.MeanDirectionFrom(0, 1)
	j := spectrum.Joint{Nu: 0.4}
	run, _, _ := spectrum.CountRuns([]spectrum.Crossing{{Crest: 3}, {Crest: 2}}, 2)
	_, one, _ := spectrum.CountRuns([]spectrum.Crossing{{Crest: 3}, {Crest: 1}, {Crest: 3}}, 2)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"band, lowest frequency", spectrum.Band{Spectrum: s, Low: 0.2, High: 1}.Density(0.2), s.Density(0.2)},
		{"band, highest frequency", spectrum.Band{Spectrum: s, Low: 0.1, High: 0.2}.Density(0.2), 0},
		{"band of no width, density", spectrum.Band{Spectrum: s, Low: 0.2, High: 0.2}.Density(0.2), 0},
		{"band of no width, moment", spectrum.Band{Spectrum: s, Low: 0.2, High: 0.2}.MomentWithin(0, 0, 1), 0},
		{"band at 0 Hz", spectrum.Band{Spectrum: even, Low: 0, High: 1}.Density(0), 2},
		{"band above the peak", spectrum.Band{Spectrum: s, Low: 0.2, High: 1}.PeakFrequency(), 0.2},
		{"band from the peak", spectrum.Band{Spectrum: s, Low: 0.125, High: 1}.PeakFrequency(), 0.125},
		{"band far above the peak", spectrum.Band{Spectrum: s, Low: 2000, High: inf}.PeakFrequency(), 2000},
		{"bins from one of them", spectrum.Band{Spectrum: b, Low: 0.5, High: 1}.PeakFrequency(), 0.5},
		{"bins up to one of them", spectrum.Band{Spectrum: b, Low: 0, High: 0.5}.PeakFrequency(), 0.25},
		{"points from one of them", spectrum.Band{Spectrum: even, Low: 1, High: 2}.PeakFrequency(), 1},
		{"bins, density where they meet", b.Density(0.375), 3},
		{"bins, density at their foot", b.Density(0.125), 1},
		{"bins, density at their head", b.Density(0.625), 3},
		{"bins up to where they meet", b.MomentWithin(0, 0, 0.375), 0.25},
		{"bins from where they meet", b.MomentWithin(0, 0.375, inf), 0.75},
		{"below an unknown bin", spectrum.Bins{F: b.F, S: []float64{1, math.NaN()}, W: b.W}.MomentWithin(0, 0, 0.375), 0.25},
		{"above an unknown bin", spectrum.Bins{F: b.F, S: []float64{math.NaN(), 3}, W: b.W}.MomentWithin(0, 0.375, 1), 0.75},
		{"covariance below an unknown bin", spectrum.Autocovariance(spectrum.Band{Spectrum: spectrum.Bins{F: b.F, S: []float64{1, math.NaN()}, W: b.W}, Low: 0, High: 0.375}, 0), 0.25},
		{"the lowest of equal bins", spectrum.Bins{F: b.F, S: []float64{2, 2}, W: b.W}.PeakFrequency(), 0.25},
		{"the lowest of equal points", even.PeakFrequency(), 0},
		{"points at their foot", even.Density(0), 2},
		{"points at their head", even.Density(1), 2},
		{"points beyond their head", even.Density(above(1)), 0},
		{"no points", spectrum.Points{}.Density(0.1), 0},
		{"nothing at 0 Hz, m-1", from0.MomentWithin(-1, 0, inf), 1},
		{"nothing at 0 Hz, m0", from0.MomentWithin(0, 0, inf), 1},
		{"a density at 0 Hz, m0", even.MomentWithin(0, 0, inf), 2},
		{"a density at 0 Hz, m1", even.MomentWithin(1, 0, inf), 1},
		{"a part that does not reach 0 Hz, m-1", even.MomentWithin(-1, 0.5, 1), (4.0 + 2) / 2 * 0.5},
		{"mean direction of the first band", first, 10},
		{"mean direction of the second band", second, 50},
		{"a mean direction fewer", noMean, 10},
		{"an r1 fewer", noR1, 10},
		{"a wave as high as the level is not above it", run, 1},
		{"from a run to the next", one, 2},
		{"nothing is above Tm01 at 0", j.PeriodBelow(0), 0},
		{"all are below +Inf", j.PeriodBelow(inf), 1},
		{"no height", j.Density(0, 1), 0},
		{"no period", j.Density(1, 0), 0},
		{"no period, alone", j.PeriodDensity(0), 0},
		{"no height, alone", j.HeightDensity(0), 0},
		{"from one period to the same", j.Share(1, 0.8, 0.8), 0},
		{"the largest period", spectrum.MeanPeriod(largest, 1), largest},
		{"no drift up to 0 Hz", spectrum.StokesDrift(s, wave.Water{}, 8, -1, 0), 0},
		{"no drift up to 0 Hz, deep", spectrum.StokesDrift(s, wave.Water{}, inf, 0, 0), 0},
		{"no transport up to 0 Hz", spectrum.StokesTransport(s, 0), 0},
		{"no drift of a calm", spectrum.StokesDrift(calm, wave.Water{}, 8, -8, inf), 0},
		{"no flux of a calm", spectrum.EnergyFlux(calm, wave.Water{}, 8), 0},
		{"height of no variance", spectrum.Height(0), 0},
		{"steepness of no height", spectrum.SpectralSteepness(0, 5, 0), 0},
		{"steepness of no variance", spectrum.SteepnessSpectrum(spectrum.Bins{F: b.F, S: []float64{0, 0}, W: b.W}, 0, inf, 0), 0},
		{"steepness at the highest frequency", spectrum.SteepnessSpectrum(s, 0.2, 0.2, 0), 0},
		{"one frequency, narrowness", spectrum.Narrowness(3, 6, 12), 0},
		{"one frequency but for rounding, narrowness", spectrum.Narrowness(1, 1, 1-1e-13), 0},
		{"one frequency, broadness", spectrum.Broadness(3, 12, 48), 0},
		{"one frequency but for rounding, broadness", spectrum.Broadness(1, 1, 1-1e-13), 0},
		{"one frequency, irregularity", spectrum.Irregularity(3, 12, 48), 1},
		{"ripples, crest period", spectrum.CrestPeriod(2, inf), 0},
		{"ripples, broadness", spectrum.Broadness(3, 2, inf), 1},
		{"ripples, irregularity", spectrum.Irregularity(3, 2, inf), 0},
		{"fit at gamma 1", spectrum.TzOverTpFit(1), 0.6673 + 0.05037 - 0.006230 + 0.0003341},
		{"fit at gamma 7", spectrum.TzOverTpFit(7), 0.6673 + 7*0.05037 - 49*0.006230 + 343*0.0003341},
		{"gamma of a steep sea", spectrum.GammaFromSteepness(1, 3.6), 5},
		{"gamma of a sea less steep", spectrum.GammaFromSteepness(1, above(3.6)), math.Exp(5.75 - 1.15*3.6)},
		{"gamma of a low sea", spectrum.GammaFromSteepness(1, 5), 1},
		{"gamma of a low sea, North Sea", spectrum.GammaNorthSea(1, 5.14285), 1},
		{"gamma of a lower sea, North Sea", spectrum.GammaNorthSea(1, below(5.14285)), math.Exp(3.484 * (1 - 0.1975*(0.036-0.0056*5.14285)*math.Pow(5.14285, 4)))},
		{"factor at gamma 1", spectrum.JONSWAPFactor(1), 1},
		{"fitted factor at gamma 1", spectrum.JONSWAPFactorFit(1), 1},
		{"fitted factor at gamma 20", spectrum.JONSWAPFactorFit(20), 1 - 0.287*math.Log(20)},
		{"peak of T⅓ at gamma 20", spectrum.PeakFromT13(1, 20), 1 / (1 - 0.132*math.Pow(20.2, -0.559))},
		{"widest peak below", spectrum.JONSWAPAlpha{Alpha: 0.01, Fp: 0.1, Gamma: 1, Below: 0.11}.PeakFrequency(), 0.1},
		{"widest peak above", spectrum.JONSWAPAlpha{Alpha: 0.01, Fp: 0.1, Gamma: 1, Above: 1}.PeakFrequency(), 0.1},
		{"no tail", spectrum.JONSWAPAlpha{Alpha: 0, Fp: 0.1, Gamma: 20}.PeakFrequency(), 0.1},
		{"steepest tail and rise", spectrum.Gamma{Hs: 1, Tp: 4, N: 100, M: 100}.PeakFrequency(), 0.25},
		{"highest peak of Goda's", spectrum.GodaJONSWAP{H13: 0, Tp: 4, Gamma: 20}.PeakFrequency(), 0.25},
		{"norm all round", spectrum.Cos2sNorm(0), 1 / (2 * math.Pi)},
		{"within 0°", spectrum.Cos2sWithin(3, 0), 0},
		{"within 180°", spectrum.Cos2sWithin(3, 180), 1},
		{"all round within 90°", spectrum.Cos2sWithin(0, 90), 0.5},
		{"width all round", spectrum.Cos2sWidth(0), math.Sqrt2 * 180 / math.Pi},
		{"s all round", spectrum.Cos2sFromWidth(math.Sqrt2 * 180 / math.Pi), 0},
		{"all in one direction", spectrum.CircularWidth(1), 0},
		{"in all directions", spectrum.CircularWidth(0), math.Sqrt2 * 180 / math.Pi},
		{"half of the circle, its edge", spectrum.CosN{N: 0}.Spread(0.1, 90), 1 / math.Pi},
		{"half of the circle, its other edge", spectrum.CosN{N: 0}.Spread(0.1, -90), 1 / math.Pi},
		{"beyond it", spectrum.CosN{N: 0}.Spread(0.1, above(90)), 0},
		{"s at 0 Hz", spectrum.GodaSpread{SMax: 10, Fp: 0.1}.S(0), 0},
		{"s at +Inf", spectrum.GodaSpread{SMax: 10, Fp: 0.1}.S(inf), 0},
		{"s of nothing", spectrum.GodaSpread{SMax: 0, Fp: 0.1}.S(0.1), 0},
		{"the greatest density", spectrum.RisenRatio(largest, 0.1), largest / (0.0081 * math.Pow(wave.StandardGravity, 2) * math.Pow(2*math.Pi, -4) * 1e5 * math.Exp(-1.25))},
		{"nothing at the peak", spectrum.RisenRatio(0, 0.1), 0},
		{"no lag", spectrum.EnvelopeCorrelation(s, 0), 1},
		{"no lag, variance", spectrum.Autocovariance(s, 0), 0.25},
		{"deep water", spectrum.DepthFactor(wave.Water{}, 0.1, inf), 1},
		{"moment from a frequency to itself", spectrum.MomentWithin(s, 0, 0.2, 0.2), 0},
		{"moment at the largest frequency", spectrum.MomentWithin(s, 0, largest, largest), 0},
		{"the same by quadrature", spectrum.MomentWithin(plain{s}, 0, 0.2, 0.2), 0},
		{"no systems", spectrum.Sum{}.Density(0), 0},
		{"a sum that is greatest at 0 Hz", spectrum.Sum{even, spectrum.Points{F: even.F, S: []float64{1, 0}}}.PeakFrequency(), 0},
		{"points to the largest frequency", spectrum.Points{F: []float64{1, largest}, S: []float64{2, 2}}.MomentWithin(0, 1, 3), 4},
		{"the greatest density, from a frequency to itself", spectrum.MomentWithin(spectrum.Points{F: []float64{1, 2}, S: []float64{largest, largest}}, 0, 1, 1), 0},
		{"band from a peak of hours", spectrum.Band{Spectrum: spectrum.Bretschneider{Hs: 1, Tp: 16384}, Low: 1.0 / 16384, High: 1}.PeakFrequency(), 1.0 / 16384},
		{"from no period, with a sign", j.Share(0.5, math.Copysign(0, -1), 0.9), j.Share(0.5, 0, 0.9)},
		{"no lag, a calm of no known peak", spectrum.Autocovariance(plain{calm}, 0), 0},
		{"a lag, a calm of no known peak", spectrum.Autocovariance(plain{calm}, 3), 0},
		{"a lag, a sea and a calm of no known peak", spectrum.Autocovariance(spectrum.Sum{s, plain{calm}}, 3), spectrum.Autocovariance(s, 3)},
	} {
		near(t, c.name, c.got, c.want, 1e-12*math.Max(1, c.want))
	}
	// The highest frequency of a band is left out: the peak is just below it.
	if p := (spectrum.Band{Spectrum: s, Low: 0.1, High: 0.125}).PeakFrequency(); !(p < 0.125 && p > 0.1249) {
		t.Errorf("the peak of a band that ends at it is %v", p)
	}
}

// Just beyond a border, on an open one and where there is nothing to tell of there is no value.
func TestNoValueBeyondTheBorders(t *testing.T) {
	calm := spectrum.Bretschneider{Hs: 0, Tp: 8}
	s := spectrum.Bretschneider{Hs: 2, Tp: 8}
	b := spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{1, 3}, W: []float64{0.1, 0.1}}
	none := spectrum.Bins{F: []float64{0.1}, S: []float64{0}, W: []float64{0.1}}
	even := spectrum.Points{F: []float64{0, 1}, S: []float64{2, 2}}
	// Of each of the four a record may have one fewer than it has bands.
	record := func(mean, principal, r1, r2 int) float64 {
		v := []float64{0.5, 0.5}
		return spectrum.BuoyRecord{Bins: b, MeanFrom: v[:mean], PrincipalFrom: v[:principal], R1: v[:r1], R2: v[:r2]}.Directional(1, 0)
	}
	if v := record(2, 2, 2, 2); math.IsNaN(v) {
		t.Error("a whole record has no density")
	}
	still, width := spectrum.BuoyRecord{Bins: none, MeanFrom: []float64{1}, R1: []float64{1}}.MeanDirectionFrom(0, 1)
	allRound, _ := spectrum.BuoyRecord{Bins: b, MeanFrom: []float64{1, 1}, R1: []float64{0, 0}}.MeanDirectionFrom(0, 1)
	negative, _ := spectrum.BuoyRecord{Bins: b, MeanFrom: []float64{1, 1}, R1: []float64{1, 1}}.MeanDirectionFrom(belowZero, 1)
	j := spectrum.Joint{Nu: 0.4}
	_, one, _ := spectrum.CountRuns([]spectrum.Crossing{{Crest: 3}}, 2)
	high, _, _ := spectrum.CountRuns([]spectrum.Crossing{{Crest: 3}}, 3)
	te, tm01, tz := spectrum.PeriodRatios(below(1))
	for name, got := range map[string]float64{
		"band of no width, peak":         spectrum.Band{Spectrum: s, Low: 0.2, High: 0.2}.PeakFrequency(),
		"band of no width at the peak":   spectrum.Band{Spectrum: s, Low: 0.125, High: 0.125}.PeakFrequency(),
		"band of a calm":                 spectrum.Band{Spectrum: calm, Low: 0, High: 1}.PeakFrequency(),
		"band of a calm, part":           spectrum.Band{Spectrum: calm, Low: 0.2, High: 1}.PeakFrequency(),
		"band upside down":               spectrum.Band{Spectrum: s, Low: above(0.2), High: 0.2}.Density(0.1),
		"band upside down, moment":       spectrum.Band{Spectrum: s, Low: above(0.2), High: 0.2}.MomentWithin(0, 0, 1),
		"band upside down, peak":         spectrum.Band{Spectrum: s, Low: above(0.2), High: 0.2}.PeakFrequency(),
		"band below 0 Hz":                spectrum.Band{Spectrum: s, Low: belowZero, High: 0.2}.Density(0.1),
		"calm bins":                      none.PeakFrequency(),
		"calm points":                    spectrum.Points{F: even.F, S: []float64{0, 0}}.PeakFrequency(),
		"a density at 0 Hz, m-1":         even.MomentWithin(-1, 0, inf),
		"a density at 0 Hz, m-½":         even.MomentWithin(-0.5, 0, 0.5),
		"points of one frequency":        spectrum.Points{F: []float64{0.1, 0.1}, S: []float64{1, 1}}.MomentWithin(0, 0, 1),
		"points below 0 Hz":              spectrum.Points{F: []float64{belowZero, 0.1}, S: []float64{1, 1}}.MomentWithin(0, 0, 1),
		"points to +Inf":                 spectrum.Points{F: []float64{0.1, inf}, S: []float64{1, 1}}.MomentWithin(0, 0, 1),
		"a mean direction fewer":         record(1, 2, 2, 2),
		"a principal direction fewer":    record(2, 1, 2, 2),
		"an r1 fewer":                    record(2, 2, 1, 2),
		"an r2 fewer":                    record(2, 2, 2, 1),
		"no band of that number":         spectrum.BuoyRecord{Bins: none, MeanFrom: []float64{1, 1}, PrincipalFrom: []float64{1, 1}, R1: []float64{1, 1}, R2: []float64{1, 1}}.Directional(1, 0),
		"mean direction of a calm":       still,
		"its width":                      width,
		"mean direction of all round":    allRound,
		"mean direction from below 0 Hz": negative,
		"from the only run":              one,
		"no wave above its own height":   high,
		"two waves":                      spectrum.Summarise([]spectrum.Crossing{{Crest: 1}, {Crest: 2}}).Pearson,
		"all of one height":              spectrum.Summarise([]spectrum.Crossing{{Crest: 0.1}, {Crest: 0.1}, {Crest: 0.1}, {Crest: 0.1}}).Pearson,
		"all of one height but the last": spectrum.Summarise([]spectrum.Crossing{{Crest: 0.1}, {Crest: 0.1}, {Crest: 0.1}, {Crest: 0.3}}).Pearson,
		"all of no height":               spectrum.Summarise(make([]spectrum.Crossing, 4)).Pearson,
		"depth of nothing":               spectrum.StokesDrift(s, wave.Water{}, 0, 0, 0),
		"depth of nothing, flux":         spectrum.EnergyFlux(none, wave.Water{}, 0),
		"depth of nothing, factor":       spectrum.DepthFactor(wave.Water{}, 0.1, 0),
		"below the bottom":               spectrum.StokesDrift(s, wave.Water{}, 8, below(-8), inf),
		"above the surface":              spectrum.StokesDrift(s, wave.Water{}, 8, math.SmallestNonzeroFloat64, inf),
		"highest negative":               spectrum.StokesDrift(s, wave.Water{}, 8, -1, belowZero),
		"no spectrum, no range":          spectrum.StokesDrift(spectrum.JONSWAP{}, wave.Water{}, 8, -1, 0),
		"no spectrum, no range, deep":    spectrum.StokesDrift(spectrum.JONSWAP{}, wave.Water{}, inf, 0, 0),
		"no variance":                    spectrum.Height(belowZero),
		"an infinite moment":             spectrum.MeanPeriod(inf, 1),
		"an infinite second moment":      spectrum.ZeroCrossingPeriod(1, inf),
		"no crests":                      spectrum.CrestPeriod(0, inf),
		"narrower than narrow":           spectrum.Narrowness(1, 1, 1-2e-12),
		"m1 of nothing":                  spectrum.Narrowness(1, 0, 1),
		"m2 of nothing":                  spectrum.Narrowness(1, 1, 0),
		"m0 of nothing":                  spectrum.Narrowness(0, 1, 1),
		"more crests than ripples":       spectrum.Broadness(1, 1, 1-4e-12),
		"m4 of nothing":                  spectrum.Irregularity(1, 1, 0),
		"m0 infinite":                    spectrum.Irregularity(inf, 1, 1),
		"m2 infinite":                    spectrum.Irregularity(1, inf, 1),
		"height negative":                spectrum.SpectralSteepness(belowZero, 5, 0),
		"frequency above the highest":    spectrum.SteepnessSpectrum(s, above(0.2), 0.2, 0),
		"no gravity in a calm":           spectrum.SteepnessSpectrum(none, 0, inf, -1),
		"fit below gamma 1":              spectrum.TzOverTpFit(below(1)),
		"fit above gamma 7":              spectrum.TzOverTpFit(above(7)),
		"factor below gamma 1":           spectrum.JONSWAPFactor(below(1)),
		"factor above gamma 20":          spectrum.JONSWAPFactorFit(above(20)),
		"Te below gamma 1":               te,
		"Tm01 below gamma 1":             tm01,
		"Tz below gamma 1":               tz,
		"gamma of no height":             spectrum.GammaFromSteepness(0, 5),
		"gamma of no period":             spectrum.GammaFromSteepness(1, 0),
		"gamma of no height, North Sea":  spectrum.GammaNorthSea(0, 5),
		"peak too wide below":            spectrum.JONSWAPAlpha{Alpha: 0.01, Fp: 0.1, Gamma: 1, Below: above(0.11)}.PeakFrequency(),
		"peak too wide above":            spectrum.JONSWAPAlpha{Alpha: 0.01, Fp: 0.1, Gamma: 1, Above: above(1)}.PeakFrequency(),
		"width negative below":           spectrum.JONSWAPAlpha{Alpha: 0.01, Fp: 0.1, Gamma: 1, Below: belowZero}.PeakFrequency(),
		"width negative above":           spectrum.JONSWAPAlpha{Alpha: 0.01, Fp: 0.1, Gamma: 1, Above: belowZero}.PeakFrequency(),
		"tail too steep":                 spectrum.Gamma{Hs: 1, Tp: 4, N: above(100), M: 4}.PeakFrequency(),
		"no fall of the tail":            spectrum.Gamma{Hs: 1, Tp: 4, N: 1, M: 4}.PeakFrequency(),
		"rise too steep":                 spectrum.Gamma{Hs: 1, Tp: 4, N: 5, M: above(100)}.PeakFrequency(),
		"no rise":                        spectrum.Gamma{Hs: 1, Tp: 4, N: 5, M: 0}.PeakFrequency(),
		"no depth":                       spectrum.TMA{Hs: 1, Tp: 4, Gamma: 1}.Density(0),
		"no depth, at +Inf":              spectrum.TMA{Hs: 1, Tp: 4, Gamma: 1, Depth: belowZero}.Density(inf),
		"no frequency, factor":           spectrum.DepthFactor(wave.Water{}, 0, inf),
		"scaled to less than nothing":    spectrum.TMA{Hs: 1, Tp: 4, Gamma: 1, Depth: 5}.ScaledTo(belowZero).Hs,
		"s negative":                     spectrum.Cos2sNorm(belowZero),
		"share within less than 0°":      spectrum.Cos2sWithin(3, belowZero),
		"wider than all round":           spectrum.Cos2sFromWidth(math.Sqrt2 * (1 + 1e-14) * 180 / math.Pi),
		"no width":                       spectrum.Cos2sFromWidth(0),
		"r1 above 1":                     spectrum.CircularWidth(above(1)),
		"r1 below 0":                     spectrum.CircularWidth(belowZero),
		"exponent negative":              spectrum.CosNWidth(belowZero),
		"SMax negative":                  spectrum.GodaSpread{SMax: belowZero, Fp: 0.1}.S(0.1),
		"s at no frequency":              spectrum.GodaSpread{SMax: 1, Fp: 0.1}.S(belowZero),
		"no wave":                        spectrum.SMaxFromWind(8, 0),
		"wind negative":                  spectrum.SeparationByWaveAge(belowZero, 0, 1),
		"no age":                         spectrum.SeparationByWaveAge(8, 0, 0),
		"density negative":               spectrum.RisenRatio(belowZero, 0.1),
		"density at 0 Hz":                spectrum.RisenRatio(1, 0),
		"lag infinite":                   spectrum.Autocovariance(s, inf),
		"lag infinite, envelope":         spectrum.EnvelopeCorrelation(s, inf),
		"a lag of no spectrum":           spectrum.Autocovariance(plain{spectrum.JONSWAP{}}, 3),
		"envelope of a calm":             spectrum.EnvelopeCorrelation(calm, 1),
		"the peak of no systems":         spectrum.Sum{}.PeakFrequency(),
		"Qp of no range":                 spectrum.Peakedness(s, 0.2, 0.2),
		"no narrowness":                  spectrum.Joint{}.Share(1, 0, inf),
		"period negative":                j.PeriodBelow(belowZero),
		"periods the wrong way":          j.Share(1, above(0.8), 0.8),
		"height of a wave negative":      j.Share(belowZero, 0, 1),
	} {
		if !math.IsNaN(got) {
			t.Errorf("%s: %v, want NaN", name, got)
		}
	}
}

// Bands are refused that do not rise, at the very border, and a density of nothing or of one band is none to refuse.
func TestBinsOnTheBorders(t *testing.T) {
	for name, c := range map[string]struct {
		f, s, w []float64
		want    error
	}{
		"one band":           {[]float64{0.1}, []float64{0}, nil, nil},
		"a frequency twice":  {[]float64{0.1, 0.1}, []float64{1, 1}, nil, spectrum.ErrInput},
		"the next frequency": {[]float64{0.1, above(0.1)}, []float64{1, 1}, []float64{1, 1}, nil},
		"density negative":   {[]float64{0.1}, []float64{belowZero}, nil, spectrum.ErrInput},
		"no width":           {[]float64{0.1}, []float64{1}, []float64{0}, spectrum.ErrInput},
	} {
		if _, err := spectrum.NewBins(c.f, c.s, c.w); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", name, err, c.want)
		}
	}
	if v := spectrum.BandWidths([]float64{0.1, 0.1})[0]; !math.IsNaN(v) {
		t.Errorf("a frequency twice has a width of %v", v)
	}
}

// The buoys' bands have their own widths from the first to the last of each row, and only if all of them are theirs and join
// up; the edges of any others are half way, and none is below 0 Hz.
func TestBandWidthsOfTheBuoys(t *testing.T) {
	for _, c := range []struct {
		name    string
		f, want []float64
	}{
		{"one band", []float64{0.1}, []float64{0.1}},
		{"a lowest edge at 0", []float64{0.1, 0.5}, []float64{0.2, 0.4}},
		{"half way", []float64{0.1, 0.15, 0.26}, []float64{0.05, 0.08, 0.11}},
		{"first row to second", []float64{0.0875, 0.0925, 0.1, 0.11}, []float64{0.005, 0.005, 0.01, 0.01}},
		{"second row to third", []float64{0.34, 0.35, 0.365, 0.385}, []float64{0.01, 0.01, 0.02, 0.02}},
		{"printed to three decimals", []float64{0.033, 0.038, 0.043}, []float64{0.005, 0.005, 0.005}},
		{"theirs with one left out", []float64{0.34, 0.35, 0.385}, []float64{0.01, (0.385 - 0.34) / 2, 0.035}},
		{"theirs with one between", []float64{0.1, 0.105, 0.11, 0.12}, []float64{0.005, 0.005, 0.0075, 0.01}},
	} {
		for i, w := range spectrum.BandWidths(c.f) {
			near(t, c.name, w, c.want[i], 1e-12)
		}
	}
	// The noise band stands before any of them.
	for f, want := range map[float64]float64{
		0.0325: 0.005, 0.0925: 0.005, 0.1: 0.01, 0.35: 0.01, 0.365: 0.02, 0.485: 0.02, // first and last
		0.0275: 0, 0.0975: 0, 0.09: 0, 0.36: 0, 0.345: 0, 0.505: 0, 0.095: 0, // one step beyond them: not theirs
	} {
		if want == 0 {
			want = f - 0.02
		}
		near(t, "after the noise band", spectrum.BandWidths([]float64{0.02, f})[1], want, 1e-12)
	}
}

// The times of the crossings are on the straight lines between samples, crest and trough on the parabola through the highest
// and the lowest samples: of 2, 4, 4 it is highest half way between the fours, at 4 + 1/4.
func TestCrossingsByHand(t *testing.T) {
	var record, mirror []float64
	for range 3 {
		record = append(record, 2, 4, 4, -3, -4, -3)
	}
	for _, v := range record {
		mirror = append(mirror, -v)
	}
	// Up from -3 after the 5th second sample to 2: 3/5 of the way; down from 4 to -3: 4/7 of it.
	up := []spectrum.Crossing{{Start: 2 * 5.6, Period: 12, Crest: 4.25, Trough: -4}}
	down := []spectrum.Crossing{{Start: 2 * (2 + 4.0/7), Period: 12, Crest: 4.25, Trough: -4}, {Start: 2 * (8 + 4.0/7), Period: 12, Crest: 4.25, Trough: -4}}
	swap := func(w []spectrum.Crossing) (out []spectrum.Crossing) {
		for _, c := range w {
			out = append(out, spectrum.Crossing{Start: c.Start, Period: c.Period, Crest: -c.Trough, Trough: -c.Crest})
		}
		return out
	}
	// The lowest sample may be the last before the crossing: through -2, -6, 2 goes 6x² + 2x - 6, lowest at -6 - 2²/24.
	var steep []float64
	for range 3 {
		steep = append(steep, 2, 4, 2, -2, -6)
	}
	// 315 is a multiple of 1 to 7 and 9, so that the mean is 0 to the last bit and every other sample lies on it: a crossing
	// that is counted once, where the surface comes to the mean.
	// Two highest samples of one height and the one before them lower in its last digit: a crest that is flat to rounding.
	var flat []float64
	for range 3 {
		flat = append(flat, below(4), 4, 4, -below(4), -4, -4)
	}
	on := []float64{0, 315, 0, -315, 0, 315, 0, -315, 0}
	for _, c := range []struct {
		name   string
		record []float64
		dt     float64
		cut    spectrum.Cut
		want   []spectrum.Crossing
	}{
		{"up", record, 2, spectrum.UpCrossings, up},
		{"down", record, 2, spectrum.DownCrossings, down},
		{"mirror, down", mirror, 2, spectrum.DownCrossings, swap(up)},
		{"mirror, up", mirror, 2, spectrum.UpCrossings, swap(down)},
		{"steep, up", steep, 1, spectrum.UpCrossings, []spectrum.Crossing{{Start: 4.75, Period: 5, Crest: 4, Trough: -6 - 1.0/6}}},
		{"flat, up", flat, 1, spectrum.UpCrossings, []spectrum.Crossing{{Start: 5.5, Period: 6, Crest: 4, Trough: -4}}},
		{"flat, down", flat, 1, spectrum.DownCrossings, []spectrum.Crossing{{Start: 2.5, Period: 6, Crest: 4, Trough: -4}, {Start: 8.5, Period: 6, Crest: 4, Trough: -4}}},
		{"on the mean, up", on, 1, spectrum.UpCrossings, []spectrum.Crossing{{Start: 4, Period: 4, Crest: 315, Trough: -315}}},
		{"on the mean, down", on, 1, spectrum.DownCrossings, []spectrum.Crossing{{Start: 2, Period: 4, Crest: 315, Trough: -315}}},
		{"three samples", []float64{1, -1, 0}, 1, spectrum.UpCrossings, nil},
	} {
		got, err := spectrum.Crossings(c.record, c.dt, c.cut)
		if err != nil || len(got) != len(c.want) {
			t.Errorf("%s: %v, %v", c.name, got, err)
			continue
		}
		for i, w := range c.want {
			near(t, c.name+" start", got[i].Start, w.Start, 1e-12)
			near(t, c.name+" period", got[i].Period, w.Period, 1e-12)
			near(t, c.name+" crest", got[i].Crest, w.Crest, 1e-12)
			near(t, c.name+" trough", got[i].Trough, w.Trough, 1e-12)
		}
	}
}

// Three waves have one correlation, of two pairs: heights 1, 2, 4 rise together.
func TestFewestNeighbours(t *testing.T) {
	near(t, "rising", spectrum.Summarise([]spectrum.Crossing{{Crest: 1}, {Crest: 2}, {Crest: 4}}).Pearson, 1, 1e-12)
	near(t, "to and fro", spectrum.Summarise([]spectrum.Crossing{{Crest: 1}, {Crest: 2}, {Crest: 1}}).Pearson, -1, 1e-12)
	// Five heights by hand: (1,2), (2,4), (4,3), (3,5): Σxy - ΣxΣy/4 = 37 - 35, Σx² - 25 = 5, Σy² - 49 = 5.
	for _, scale := range []float64{1e-6, 1, 1e6} { // it has no unit
		var w []spectrum.Crossing
		for _, h := range []float64{1, 2, 4, 3, 5} {
			w = append(w, spectrum.Crossing{Crest: h * scale})
		}
		near(t, "five", spectrum.Summarise(w).Pearson, 2.0/5, 1e-12)
	}
}

// A spectrum of which nothing is known but its density is taken to fall like f⁻⁵ beyond 1000 Hz, to the limit that is asked
// for: its moments there are those of the shape, and only one of order 4 or more up to +Inf has no end.
func TestMomentsBeyondTheRipples(t *testing.T) {
	s := spectrum.Bretschneider{Hs: 2, Tp: 8}
	for _, n := range []float64{-1, 0, 2, 3.5, 4, 4.5, 6} {
		for _, c := range [][2]float64{{0.1, 1000}, {0.1, above(1000)}, {0.1, 2000}, {500, 1500}, {1000, 3000}, {1500, 4000}} {
			rel(t, "moment", spectrum.MomentWithin(plain{s}, n, c[0], c[1]), spectrum.MomentWithin(s, n, c[0], c[1]), 1e-9)
		}
		for _, lo := range []float64{0.1, 1000, 2000} {
			got, want := spectrum.MomentWithin(plain{s}, n, lo, inf), spectrum.MomentWithin(s, n, lo, inf)
			if n >= 4 {
				if got != inf || want != inf {
					t.Errorf("order %v from %v Hz: %v and %v", n, lo, got, want)
				}
				continue
			}
			rel(t, "tail", got, want, 1e-9)
		}
	}
	if m := spectrum.MomentWithin(plain{spectrum.JONSWAP{}}, 4, 0.1, inf); !math.IsNaN(m) {
		t.Errorf("m4 of no spectrum is %v", m)
	}
}

// decaying is a spectrum that is gone long before 1000 Hz, e^-f.
type decaying struct{}

func (decaying) Density(f float64) float64 { return math.Exp(-f) }

// A spectrum without a tail of f⁻⁵ has moments of every order: those of e^-f are n!.
func TestMomentsWithoutATail(t *testing.T) {
	for n, want := range map[float64]float64{1: 1, 2: 2, 3: 6, 4: 24, 5: 120, 6: 720} {
		rel(t, "moment", spectrum.Moment(decaying{}, n), want, 1e-7) // below 1e-4 Hz lies 5e-9 of m1
	}
}

// A sea of one component is the least; a band without width is none.
func TestSeasOnTheBorders(t *testing.T) {
	s := sea
	s.Components, s.Low, s.High = 1, 0.2, 0.6
	near(t, "one component", realise(t, s).Variance(), spectrum.MomentWithin(s.Spectrum, 0, 0.2, 0.6), 1e-12)
	s.High = 0.2
	if _, err := s.Realise(); !errors.Is(err, spectrum.ErrInput) {
		t.Errorf("a band without width: %v", err)
	}
	// Where the band has no variance there is a wave of no height, which is no error.
	s.Spectrum, s.Low, s.High, s.Components = spectrum.Band{Spectrum: sea.Spectrum, Low: 0.3, High: 1}, 0.1, 0.2, 3
	near(t, "nothing there", realise(t, s).Variance(), 0, 0)
	// A record of a spread sea is taken off the line of the mean direction too.
	s = sea
	s.Spread, s.Components = spectrum.Cos2s{S: 3}, 50
	r := realise(t, s)
	for i, v := range r.Record(200, 0.25, 13, -40) {
		near(t, "spread sample", v, r.Elevation(float64(i)*0.25, 13, -40), 1e-11)
	}
}

// Where one end of the band is left open it lies where the first 0.05 % or the last 0.2 % of the variance begin, and the end
// that is given stays.
func TestSeasOfABandOpenAtOneEnd(t *testing.T) {
	m := func(lo, hi float64) float64 { return spectrum.MomentWithin(sea.Spectrum, 0, lo, hi) }
	for _, c := range []struct{ low, high, want float64 }{
		{0, 0.6, m(0, 0.6) - 0.0005*m(0, inf)},
		{0.2, 0, 0.998*m(0, inf) - m(0, 0.2)},
	} {
		s := sea
		s.Low, s.High, s.Components = c.low, c.high, 30
		r := realise(t, s)
		rel(t, "variance", r.Variance(), c.want, 1e-8)
		for _, w := range r.Components() {
			if !(w.Frequency >= c.low && (c.high == 0 || w.Frequency <= c.high)) {
				t.Errorf("a wave of %v Hz from %v to %v Hz", w.Frequency, c.low, c.high)
			}
		}
	}
}

// A sea may have up to 1e6 components; the error names the field that is refused.
func TestMostComponents(t *testing.T) {
	for n, field := range map[int]string{1: "Low", 1e6: "Low", 1e6 + 1: "Components", -1: "Components"} {
		s := sea
		s.Components, s.Low = n, -1
		if _, err := s.Realise(); !errors.Is(err, spectrum.ErrInput) || !strings.Contains(err.Error(), field+" is") {
			t.Errorf("%d components: %v, want an error about %s", n, err, field)
		}
	}
}

// oneWay is a spreading with all its waves from 90° to 90.5° to the right, of a density that need not integrate to 1.
type oneWay struct{ density float64 }

func (o oneWay) Spread(_, offset float64) float64 {
	if offset > 90 && offset < 90.5 {
		return o.density
	}
	return 0
}

// The directions of the waves are drawn where the spreading has them and nowhere else, however small its numbers are.
func TestOffsetsLieInTheSpreading(t *testing.T) {
	for _, d := range []float64{1, math.SmallestNonzeroFloat64} {
		s := sea
		s.Spread, s.Components = oneWay{d}, 50
		for _, c := range realise(t, s).Components() {
			if !(c.Offset >= 90-1e-9 && c.Offset <= 90.5+1e-9) {
				t.Errorf("a wave at %v°", c.Offset)
			}
		}
	}
}

// A record stays with the elevation to 1e-12 of the height as long as it may be.
func TestLongRecordIsTheElevation(t *testing.T) {
	s := sea
	s.Components = 2
	r := realise(t, s)
	const n, dt = 200_000, 0.01
	record := r.Record(n, dt, 3, 0)
	for i := n - 1000; i < n; i++ {
		near(t, "sample", record[i], r.Elevation(float64(i)*dt, 3, 0), 1e-12)
	}
}

// The copy that a spectrum keeps of its bands is its own.
func TestBinsAreCopied(t *testing.T) {
	f, s, w := []float64{0.1, 0.2}, []float64{1, 2}, []float64{0.1, 0.1}
	b, err := spectrum.NewBins(f, s, w)
	if err != nil {
		t.Fatal(err)
	}
	f[0], s[0], w[0] = 9, 9, 9
	if d := cmp.Diff(spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{1, 2}, W: []float64{0.1, 0.1}}, b); d != "" {
		t.Error(d)
	}
}
