package published

import (
	"fmt"
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
)

var (
	specM0    = reference.Number("m0", "1", reference.Positive, 0.25)
	specM1    = reference.Number("m1", "1", reference.Positive, 0.04)
	specM2    = reference.Number("m2", "1", reference.Positive, 0.0075)
	specM4    = reference.Number("m4", "1", reference.PositiveInf, 0.0008)
	specBinsF = reference.List("f", "Hz", reference.Positive, 0.1, 0.2, 0.3)
	specBinsS = reference.List("s", "m2/Hz", reference.NonNegative, 1, 3, 0.5)
	specBinsW = reference.List("w", "Hz", reference.Positive, 0.1, 0.1, 0.1)
	specNu    = reference.Number("nu", "1", reference.Positive, 0.39)
	specRelH  = reference.Number("height", "1", reference.NonNegative, 0.6)
	specRelT  = reference.Number("period", "1", reference.NonNegative, 0.9)
	specS     = reference.Number("s", "1", reference.NonNegative, 12)
)

// specBins makes measured bins of the inputs, with what NewBins refuses as an error.
func specBins(in reference.In) (spectrum.Bins, error) {
	w := in.L("w")
	if len(w) == 0 {
		w = nil // the bands' own
	}
	return spectrum.NewBins(in.L("f"), in.L("s"), w)
}

func specBinsOut(of func(b spectrum.Bins, in reference.In) reference.Out) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		b, err := specBins(in)
		if err != nil {
			return nil, err
		}
		return of(b, in), nil
	}
}

// specSampled is WAFO's JONSWAP of the height and period over equal steps of angular frequency from 0 to the last.
func specSampled(in reference.In) spectrum.Points {
	j := spectrum.JONSWAP{Hs: in.F("hs"), Tp: in.F("tp"), Gamma: spectrum.GammaNorthSea(in.F("hs"), in.F("tp"))}
	var p spectrum.Points
	const n = 257
	for i := range n {
		f := in.F("hi") * float64(i) / (n - 1)
		p.F, p.S = append(p.F, f), append(p.S, j.Density(f))
	}
	return p
}

func specParameters(p spectrum.Parameters) reference.Out {
	return reference.Out{"hm0": p.Hm0, "tp": p.Tp, "te": p.Te, "tm01": p.Tm01, "tz": p.Tz, "tm24": p.Tm24,
		"narrowness": p.Narrowness, "broadness": p.Broadness, "irregularity": p.Irregularity, "peakedness": p.Peakedness}
}

// specOfMoments evaluates a function of moments on those of WAFO's spectrum.
func specOfMoments(of func(m func(float64) float64) float64) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		p := specSampled(in)
		return reference.Out{"": of(func(n float64) float64 { return spectrum.Moment(p, n) })}, nil
	}
}

var specParameterResults = []reference.Result{{Name: "hm0", Unit: "m"}, {Name: "tp", Unit: "s"}, {Name: "te", Unit: "s"}, {Name: "tm01", Unit: "s"}, {Name: "tz", Unit: "s"}, {Name: "tm24", Unit: "s"},
	{Name: "narrowness", Unit: "1"}, {Name: "broadness", Unit: "1"}, {Name: "irregularity", Unit: "1"}, {Name: "peakedness", Unit: "1"}}

func specWater(in reference.In) wave.Water {
	return wave.Water{Gravity: in.F("gravity"), Density: in.F("density")}
}

var spectrumStatsSubjects = []reference.Subject{
	{Name: "spectrum.Height", Func: spectrum.Height, Class: reference.Formula, Args: args(reference.Number("m0", "m2", reference.NonNegativeInf, 0.25)), Results: result("m")},
	{Name: "spectrum.MeanPeriod", Func: spectrum.MeanPeriod, Class: reference.Formula, Args: args(specM0, specM1), Results: result("s")},
	{Name: "spectrum.ZeroCrossingPeriod", Func: spectrum.ZeroCrossingPeriod, Class: reference.Formula, Args: args(specM0, specM2), Results: result("s")},
	{Name: "spectrum.EnergyPeriod", Func: spectrum.EnergyPeriod, Class: reference.Formula, Args: args(reference.Number("m-1", "1", reference.Positive, 2), specM0), Results: result("s")},
	{Name: "spectrum.CrestPeriod", Func: spectrum.CrestPeriod, Class: reference.Formula, Args: args(specM2, specM4), Results: result("s"),
		Regimes: []reference.Regime{
			{Name: "finite m4", In: func(in reference.In) bool { return in.F("m4") <= math.MaxFloat64 }},
			{Name: "infinite m4", In: func(in reference.In) bool { return math.IsInf(in.F("m4"), 1) }},
		}},
	{Name: "spectrum.Narrowness", Func: spectrum.Narrowness, Class: reference.Formula, Args: args(specHs2(), specTp, specHi2()), Results: []reference.Result{{Unit: "1"}},
		Eval: specOfMoments(func(m func(float64) float64) float64 { return spectrum.Narrowness(m(0), m(1), m(2)) })},
	{Name: "spectrum.Broadness", Func: spectrum.Broadness, Class: reference.Formula, Args: args(specHs2(), specTp, specHi2()), Results: []reference.Result{{Unit: "1"}},
		Eval: specOfMoments(func(m func(float64) float64) float64 { return spectrum.Broadness(m(0), m(2), m(4)) })},
	{Name: "spectrum.Irregularity", Func: spectrum.Irregularity, Class: reference.Formula, Args: args(specHs2(), specTp, specHi2()), Results: []reference.Result{{Unit: "1"}},
		Eval: specOfMoments(func(m func(float64) float64) float64 { return spectrum.Irregularity(m(0), m(2), m(4)) })},
	{Name: "spectrum.EnergyNarrowness", Func: spectrum.EnergyNarrowness, Class: reference.Formula,
		Args: args(specBinsF, specBinsS, specBinsW), Results: result("1"),
		Eval: specBinsOut(func(b spectrum.Bins, _ reference.In) reference.Out {
			return reference.Out{"": spectrum.EnergyNarrowness(spectrum.Moment(b, -2), spectrum.Moment(b, -1), spectrum.Moment(b, 0))}
		})},
	{Name: "spectrum.Peakedness", Func: spectrum.Peakedness, Class: reference.Formula, Args: args(specHs2(), specTp, specGamma, specLo, specHi), Results: []reference.Result{{Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Peakedness(specJONSWAP(in), in.F("lo"), in.F("hi"))}, nil
		}},
	{Name: "spectrum.SpectralSteepness", Func: spectrum.SpectralSteepness, Class: reference.Formula,
		Args: args(reference.Number("height", "m", reference.NonNegative, 2), reference.Number("period", "s", reference.Positive, 6), specGravity), Results: result("1")},
	{Name: "spectrum.Describe", Func: spectrum.Describe, Class: reference.Composed, Args: args(specBinsF, specBinsS, specBinsW), Results: specParameterResults,
		Eval:  specBinsOut(func(b spectrum.Bins, _ reference.In) reference.Out { return specParameters(spectrum.Describe(b)) }),
		Tests: []string{"TestDescribeIsItsParts"}},
	{Name: "spectrum.DescribeWithin", Func: spectrum.DescribeWithin, Class: reference.Composed, Args: args(specHs2(), specTp, specHi2()), Results: specParameterResults,
		Eval: func(in reference.In) (reference.Out, error) {
			return specParameters(spectrum.DescribeWithin(specSampled(in), 0, math.Inf(1))), nil
		}, Tests: []string{"TestDescribeIsItsParts"}},
	{Name: "spectrum.PeriodRatios", Func: spectrum.PeriodRatios, Class: reference.Formula, Args: args(specGamma),
		Results: []reference.Result{{Name: "te", Unit: "1"}, {Name: "tm01", Unit: "1"}, {Name: "tz", Unit: "1"}, {Name: "tp/tz", Unit: "1"}, {Name: "tm01/tz", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			te, tm01, tz := spectrum.PeriodRatios(in.F("gamma"))
			return reference.Out{"te": te, "tm01": tm01, "tz": tz, "tp/tz": 1 / tz, "tm01/tz": tm01 / tz}, nil
		}},
	{Name: "spectrum.TzOverTpFit", Func: spectrum.TzOverTpFit, Class: reference.Formula, Args: args(reference.Number("gamma", "1", reference.Between(1, 7), 3.3)), Results: result("1"),
		NoneFound: map[string]string{"all": "the standard's text could not be opened; its coefficients and 1.2859, 1.4049 are from memory"}, Tests: []string{"TestPeriodRatiosMatchFits"}},
	{Name: "spectrum.Tm01OverTpFit", Func: spectrum.Tm01OverTpFit, Class: reference.Formula, Args: args(reference.Number("gamma", "1", reference.Between(1, 7), 3.3)), Results: result("1"),
		NoneFound: map[string]string{"all": "the standard's text could not be opened; its coefficients and 1.0734, 1.0867 are from memory"}, Tests: []string{"TestPeriodRatiosMatchFits"}},
	{Name: "spectrum.TeOverTpFit", Func: spectrum.TeOverTpFit, Class: reference.Formula, Args: args(reference.Number("gamma", "1", reference.Between(1, 7), 3.3)), Results: result("1")},
	{Name: "spectrum.GammaFromSteepness", Func: spectrum.GammaFromSteepness, Class: reference.Formula, Args: args(specHs2(), specTp), Results: result("1"),
		Regimes: []reference.Regime{
			{Name: "steep", In: func(in reference.In) bool { return in.F("tp")/math.Sqrt(in.F("hs")) <= 3.6 }},
			{Name: "between", In: func(in reference.In) bool { q := in.F("tp") / math.Sqrt(in.F("hs")); return q > 3.6 && q < 5 }},
			{Name: "flat", In: func(in reference.In) bool { return in.F("tp")/math.Sqrt(in.F("hs")) >= 5 }},
		}},
	{Name: "spectrum.GammaNorthSea", Func: spectrum.GammaNorthSea, Class: reference.Formula, Args: args(specHs2(), specTp), Results: result("1"),
		Regimes: []reference.Regime{
			{Name: "relation", In: func(in reference.In) bool { return in.F("tp")/math.Sqrt(in.F("hs")) < 5.14285 }},
			{Name: "flat", In: func(in reference.In) bool { return in.F("tp")/math.Sqrt(in.F("hs")) >= 5.14285 }},
		}},

	// Measured bands.
	{Name: "spectrum.NewBins", Func: spectrum.NewBins, Class: reference.Constructor, Tests: []string{"TestNewBinsRefuses"}},
	{Name: "spectrum.BandWidths", Func: spectrum.BandWidths, Class: reference.Formula, Args: args(reference.List("f", "Hz", reference.Positive, 0.1, 0.11, 0.12)), Results: result("Hz"),
		Regimes: []reference.Regime{
			{Name: "buoy bands", In: func(in reference.In) bool {
				return len(in.L("f")) > 1 && (in.L("f")[0] == 0.0325 || in.L("f")[0] == 0.445)
			}},
			{Name: "half way", In: func(in reference.In) bool {
				return len(in.L("f")) > 1 && in.L("f")[0] != 0.0325 && in.L("f")[0] != 0.445
			}},
			{Name: "one", In: func(in reference.In) bool { return len(in.L("f")) == 1 }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			w := spectrum.BandWidths(in.L("f"))
			return reference.Out{"": w[len(w)-1]}, nil
		}, Tests: []string{"TestBandWidths"}},
	{Name: "spectrum.Bins.Density", Func: spectrum.Bins.Density, Class: reference.Accessor, Args: args(specFreq, specBinsF, specBinsS, specBinsW), Results: []reference.Result{{Unit: "m2/Hz", Without: []string{"f", "s", "w"}}},
		Eval: specBinsOut(func(b spectrum.Bins, in reference.In) reference.Out {
			return reference.Out{"": b.Density(in.F("frequency"))}
		}), Tests: []string{"TestBinsAreSteps"}},
	{Name: "spectrum.Bins.MomentWithin", Func: spectrum.Bins.MomentWithin, Class: reference.Formula, Args: args(specOrder, specBinsF, specBinsS, specBinsW), Results: result("1"),
		Eval: specBinsOut(func(b spectrum.Bins, in reference.In) reference.Out {
			return reference.Out{"": b.MomentWithin(in.F("n"), 0, math.Inf(1))}
		})},
	{Name: "spectrum.Bins.PeakFrequency", Func: spectrum.Bins.PeakFrequency, Class: reference.Formula, Args: args(specBinsF, specBinsS, specBinsW), Results: []reference.Result{{Name: "f", Unit: "Hz"}, {Name: "tp", Unit: "s"}},
		Eval: specBinsOut(func(b spectrum.Bins, _ reference.In) reference.Out {
			return reference.Out{"f": b.PeakFrequency(), "tp": 1 / b.PeakFrequency()}
		})},
	{Name: "spectrum.Points.Density", Func: spectrum.Points.Density, Class: reference.Accessor, Args: args(specFreq), Results: result("m2/Hz"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Points{F: []float64{0.1, 0.3}, S: []float64{1, 2}}.Density(in.F("frequency"))}, nil
		}, Tests: []string{"TestPointsAreStraight"}},
	{Name: "spectrum.Points.MomentWithin", Func: spectrum.Points.MomentWithin, Class: reference.Formula, Args: args(specOrder, specHs2(), specTp, specHi2()), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": specSampled(in).MomentWithin(in.F("n"), 0, math.Inf(1))}, nil
		}},
	{Name: "spectrum.Points.PeakFrequency", Func: spectrum.Points.PeakFrequency, Class: reference.Accessor, Tests: []string{"TestPointsAreStraight"}},

	// Spreading.
	{Name: "spectrum.Cos2s.Spread", Func: spectrum.Cos2s.Spread, Class: reference.Formula, Args: args(specS, specAngle), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Cos2s{S: in.F("s")}.Spread(0.1, in.F("offset"))}, nil
		}},
	{Name: "spectrum.Cos2sNorm", Func: spectrum.Cos2sNorm, Class: reference.Formula, Args: args(specS), Results: result("1")},
	{Name: "spectrum.Cos2sWithin", Func: spectrum.Cos2sWithin, Class: reference.Formula, Args: args(specS, reference.Number("half", "deg", reference.NonNegativeInf, 30)), Results: []reference.Result{{Unit: "1"}}, Tests: []string{"TestSpreadingIntegratesToOne"}},
	{Name: "spectrum.Cos2sWidth", Func: spectrum.Cos2sWidth, Class: reference.Formula, Args: args(specS), Results: result("deg"), Tests: []string{"TestWidthRoundTrip"}},
	{Name: "spectrum.Cos2sFromWidth", Func: spectrum.Cos2sFromWidth, Class: reference.Formula, Args: args(reference.Number("width", "deg", reference.Domain{Lo: 0, Hi: 81.1, LoOpen: true}, 30)), Results: result("1"), Tests: []string{"TestWidthRoundTrip"}},
	{Name: "spectrum.Cos2sFourier", Func: spectrum.Cos2sFourier, Class: reference.Formula, Args: args(specS), Results: []reference.Result{{Name: "r1", Unit: "1"}, {Name: "r2", Unit: "1"}}, Tests: []string{"TestFourierCoefficients"}},
	{Name: "spectrum.CircularWidth", Func: spectrum.CircularWidth, Class: reference.Formula, Args: args(reference.Number("r1", "1", reference.Fraction, 0.9)), Results: result("deg"), Tests: []string{"TestWidthRoundTrip"}},
	{Name: "spectrum.CosN.Spread", Func: spectrum.CosN.Spread, Class: reference.Formula, Args: args(reference.Number("power", "1", reference.NonNegative, 2), specAngle), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.CosN{N: in.F("power")}.Spread(0.1, in.F("offset"))}, nil
		},
		Regimes: []reference.Regime{
			{Name: "forward", In: func(in reference.In) bool { return math.Abs(in.F("offset")) <= 90 }},
			{Name: "backward", In: func(in reference.In) bool { return math.Abs(in.F("offset")) > 90 }},
		}, Tests: []string{"TestSpreadingIntegratesToOne"}},
	{Name: "spectrum.CosNWidth", Func: spectrum.CosNWidth, Class: reference.Formula, Args: args(reference.Number("power", "1", reference.NonNegative, 2)), Results: result("deg"), Tests: []string{"TestCosNWidth"}},
	{Name: "spectrum.GodaSpread.S", Func: spectrum.GodaSpread.S, Class: reference.Formula, Args: args(reference.Number("frequency", "Hz", reference.NonNegativeInf, 0.2), reference.Number("smax", "1", reference.NonNegative, 10), specFp), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.GodaSpread{SMax: in.F("smax"), Fp: in.F("fp")}.S(in.F("frequency"))}, nil
		},
		Regimes: []reference.Regime{
			{Name: "up to the peak", In: func(in reference.In) bool { return in.F("frequency") <= in.F("fp") }},
			{Name: "above the peak", In: func(in reference.In) bool { return in.F("frequency") > in.F("fp") }},
		}},
	{Name: "spectrum.GodaSpread.Spread", Func: spectrum.GodaSpread.Spread, Class: reference.Composed, Args: args(reference.Number("frequency", "Hz", reference.NonNegativeInf, 0.2), specAngle, reference.Number("smax", "1", reference.NonNegative, 10), specFp), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.GodaSpread{SMax: in.F("smax"), Fp: in.F("fp")}.Spread(in.F("frequency"), in.F("offset"))}, nil
		}, Tests: []string{"TestSpreadingIntegratesToOne"}},
	{Name: "spectrum.SMaxFromWind", Func: spectrum.SMaxFromWind, Class: reference.Formula, Args: args(reference.Number("speed", "m/s", reference.Positive, 10), specFp), Results: result("1"), Tests: []string{"TestNarrowerWhenYounger"}},

	// Runs and joint heights and periods.
	{Name: "spectrum.EnvelopeCorrelation", Func: spectrum.EnvelopeCorrelation, Class: reference.Formula, Args: args(reference.Number("band", "Hz", reference.Positive, 0.05), reference.Number("lag", "s", reference.Real, 8)), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			b, err := spectrum.NewBins([]float64{1e6}, []float64{1}, []float64{in.F("band")})
			if err != nil {
				return nil, err
			}
			return reference.Out{"": spectrum.EnvelopeCorrelation(b, in.F("lag"))}, nil
		}, Tests: []string{"TestEnvelopeCorrelation"}},
	{Name: "spectrum.ChainCorrelation", Func: spectrum.ChainCorrelation, Class: reference.Composed, Args: args(specHs2(), specTp, specGamma), Results: []reference.Result{{Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.ChainCorrelation(specJONSWAP(in))}, nil
		}, Tests: []string{"TestEnvelopeCorrelation"}},
	{Name: "spectrum.Autocovariance", Func: spectrum.Autocovariance, Class: reference.Formula, Args: args(specHs2(), specTp, reference.Number("lag", "s", reference.Real, 3)), Results: result("m2"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Autocovariance(spectrum.JONSWAP{Hs: in.F("hs"), Tp: in.F("tp"), Gamma: spectrum.GammaNorthSea(in.F("hs"), in.F("tp"))}, in.F("lag"))}, nil
		}},
	{Name: "spectrum.Joint.Density", Func: spectrum.Joint.Density, Class: reference.Formula, Args: args(specRelH, specRelT, specNu), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Joint{Nu: in.F("nu")}.Density(in.F("height"), in.F("period"))}, nil
		}, Tests: []string{"TestJointIntegratesToOne"}},
	{Name: "spectrum.Joint.PeriodDensity", Func: spectrum.Joint.PeriodDensity, Class: reference.Formula, Args: args(specRelT, specNu), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Joint{Nu: in.F("nu")}.PeriodDensity(in.F("period"))}, nil
		}, Tests: []string{"TestJointIntegratesToOne"}},
	{Name: "spectrum.Joint.PeriodBelow", Func: spectrum.Joint.PeriodBelow, Class: reference.Formula, Args: args(reference.Number("period", "1", reference.NonNegativeInf, 0.9), specNu), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Joint{Nu: in.F("nu")}.PeriodBelow(in.F("period"))}, nil
		}, Tests: []string{"TestJointIntegratesToOne"}},
	{Name: "spectrum.Joint.HeightDensity", Func: spectrum.Joint.HeightDensity, Class: reference.Formula, Args: args(specRelH, specNu), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Joint{Nu: in.F("nu")}.HeightDensity(in.F("height"))}, nil
		}, Tests: []string{"TestJointIntegratesToOne"}},
	{Name: "spectrum.Joint.Mode", Func: spectrum.Joint.Mode, Class: reference.Formula, Args: args(specNu), Results: []reference.Result{{Name: "height", Unit: "1"}, {Name: "period", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			h, t := spectrum.Joint{Nu: in.F("nu")}.Mode()
			return reference.Out{"height": h, "period": t}, nil
		}, Tests: []string{"TestJointMode"}},
	{Name: "spectrum.Joint.Share", Func: spectrum.Joint.Share, Class: reference.Composed, Args: args(specRelH, reference.Number("shortest", "1", reference.NonNegative, 0.5), reference.Number("longest", "1", reference.NonNegativeInf, 1.5), specNu), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Joint{Nu: in.F("nu")}.Share(in.F("height"), in.F("shortest"), in.F("longest"))}, nil
		}, Tests: []string{"TestJointIntegratesToOne"}},

	// Partition.
	{Name: "spectrum.Band.Density", Func: spectrum.Band.Density, Class: reference.Accessor, Args: args(specFreq, specHs, specTp, specGamma), Results: []reference.Result{{Unit: "m2/Hz"}}, Eval: specDensity(specBand), Tests: []string{"TestBandsAddToTheWhole"}},
	{Name: "spectrum.Band.MomentWithin", Func: spectrum.Band.MomentWithin, Class: reference.Composed, Args: args(specOrder, specLo, specHi, specHs, specTp, specGamma), Results: result("1"), Eval: specMoment(specBand), Tests: []string{"TestBandsAddToTheWhole"}},
	{Name: "spectrum.Band.PeakFrequency", Func: spectrum.Band.PeakFrequency, Class: reference.Search, Args: args(specHs2(), specTp, specGamma), Results: []reference.Result{{Unit: "Hz"}}, Eval: specPeak(specBand), Tests: []string{"TestBandsAddToTheWhole"}},
	{Name: "spectrum.Separate", Func: spectrum.Separate, Class: reference.Formula, Args: args(specBinsF, specBinsS, specBinsW, reference.Number("frequency", "Hz", reference.NonNegativeInf, 0.2)),
		Results: []reference.Result{{Name: "swell", Unit: "m"}, {Name: "swell tp", Unit: "s"}, {Name: "sea", Unit: "m"}},
		Eval: specBinsOut(func(b spectrum.Bins, in reference.In) reference.Out {
			for _, d := range b.S {
				if math.IsNaN(d) { // an unknown band is only in one of the two
					return reference.Out{"swell": d, "swell tp": d, "sea": d}
				}
			}
			swell, sea := spectrum.Separate(b, in.F("frequency"))
			return reference.Out{"swell": spectrum.Height(spectrum.Moment(swell, 0)), "swell tp": 1 / spectrum.PeakFrequency(swell), "sea": spectrum.Height(spectrum.Moment(sea, 0))}
		}), Tests: []string{"TestBandsAddToTheWhole"}},
	{Name: "spectrum.SteepnessSpectrum", Func: spectrum.SteepnessSpectrum, Class: reference.Formula, Args: args(specHs2(), specTp, reference.Number("frequency", "Hz", reference.NonNegative, 0), reference.Number("highest", "Hz", reference.Positive, 0.6), specGravity), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.SteepnessSpectrum(specSampledTo(in), in.F("frequency"), in.F("highest"), in.F("gravity"))}, nil
		}, Tests: []string{"TestSteepestFrequency"}},
	{Name: "spectrum.SeparationFrequency", Func: spectrum.SeparationFrequency, Class: reference.Formula, Args: args(specBinsF, specBinsS, specBinsW, reference.Number("wind", "m/s", reference.NonNegative, 5)), Results: result("Hz"),
		Eval: specBinsOut(func(b spectrum.Bins, in reference.In) reference.Out {
			return reference.Out{"": spectrum.SeparationFrequency(b, in.F("wind"))}
		}),
		Regimes: []reference.Regime{
			{Name: "calm", In: func(in reference.In) bool { return in.F("wind") == 0 }},
			{Name: "least by the wind", In: func(in reference.In) bool { return in.F("wind") > 0 && in.F("wind") < 7.5 }},
			{Name: "by steepness", In: func(in reference.In) bool { return in.F("wind") > 7.5 }},
		},
		Tests: []string{"TestSteepestFrequency"}},
	{Name: "spectrum.SeparationBySteepness", Func: spectrum.SeparationBySteepness, Class: reference.Formula, Args: args(specBinsF, specBinsS, specBinsW), Results: result("Hz"),
		Eval: specBinsOut(func(b spectrum.Bins, _ reference.In) reference.Out {
			return reference.Out{"": spectrum.SeparationBySteepness(b)}
		}), Tests: []string{"TestSteepestFrequency"}},
	{Name: "spectrum.SeparationByWaveAge", Func: spectrum.SeparationByWaveAge, Class: reference.Formula, Args: args(reference.Number("wind", "m/s", reference.NonNegative, 10), specAngle, reference.Number("age", "1", reference.Positive, 1.2)), Results: result("Hz"),
		Regimes: []reference.Regime{
			{Name: "along", In: func(in reference.In) bool { return math.Abs(in.F("offset")) < 89 && in.F("wind") > 0 }},
			{Name: "across or none", In: func(in reference.In) bool { return math.Abs(in.F("offset")) >= 89 || in.F("wind") == 0 }},
		}},
	{Name: "spectrum.RisenRatio", Func: spectrum.RisenRatio, Class: reference.Formula, Args: args(reference.Number("density", "m2/Hz", reference.NonNegative, 5), reference.Number("peak", "Hz", reference.Positive, 0.12)), Results: result("1"), Tests: []string{"TestRisenRatio"}},

	// Drift and flux.
	{Name: "spectrum.StokesDrift", Func: spectrum.StokesDrift, Class: reference.Formula, Args: args(reference.Number("hm0", "m", reference.NonNegative, 1), reference.Number("period", "s", reference.Positive, 5), specDepth, reference.Number("z", "m", reference.Domain{Lo: math.Inf(-1), Hi: 0, LoOpen: true}, 0), specGravity), Results: result("m/s"),
		Regimes: []reference.Regime{
			{Name: "deep, surface", In: func(in reference.In) bool { return math.IsInf(in.F("depth"), 1) && in.F("z") == 0 }},
			{Name: "deep, below", In: func(in reference.In) bool { return math.IsInf(in.F("depth"), 1) && in.F("z") < 0 }},
			{Name: "finite depth", In: func(in reference.In) bool { return in.F("depth") <= math.MaxFloat64 }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			b, err := specOneWave(in.F("hm0"), in.F("period"))
			if err != nil {
				return nil, err
			}
			return reference.Out{"": spectrum.StokesDrift(b, wave.Water{Gravity: in.F("gravity")}, in.F("depth"), in.F("z"), math.Inf(1))}, nil
		}, Tests: []string{"TestDriftAddsUpToItsTransport"}},
	{Name: "spectrum.StokesTransport", Func: spectrum.StokesTransport, Class: reference.Formula, Args: args(specHs, specTp), Results: result("m2/s"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.StokesTransport(spectrum.Bretschneider{Hs: in.F("hs"), Tp: in.F("tp")}, math.Inf(1))}, nil
		}, Tests: []string{"TestDriftAddsUpToItsTransport"}},
	{Name: "spectrum.EnergyFlux", Func: spectrum.EnergyFlux, Class: reference.Formula, Args: args(specBinsF, specBinsS, specBinsW, specDepth, specGravity, reference.Number("density", "kg/m3", reference.NonNegative, 1000)), Results: result("W/m"),
		Regimes: []reference.Regime{
			{Name: "finite depth", In: func(in reference.In) bool { return in.F("depth") <= math.MaxFloat64 }},
			{Name: "deep", In: func(in reference.In) bool { return math.IsInf(in.F("depth"), 1) }},
		},
		Eval: specBinsOut(func(b spectrum.Bins, in reference.In) reference.Out {
			return reference.Out{"": spectrum.EnergyFlux(b, specWater(in), in.F("depth"))}
		}), Tests: []string{"TestEnergyFluxIsTheMomentsInDeepWater"}},

	// Realisations and records.
	{Name: "spectrum.Sea.Realise", Func: spectrum.Sea.Realise, Class: reference.Constructor, Tests: []string{"TestRealisationHasTheVariance", "TestSameSeedSameSea", "TestRealiseRefuses"}},
	{Name: "spectrum.Realisation.Components", Func: (*spectrum.Realisation).Components, Class: reference.Accessor, Tests: []string{"TestRealisationHasTheVariance"}},
	{Name: "spectrum.Realisation.Variance", Func: (*spectrum.Realisation).Variance, Class: reference.Accessor, Tests: []string{"TestRealisationHasTheVariance"}},
	{Name: "spectrum.Realisation.At", Func: (*spectrum.Realisation).At, Class: reference.Composed, Tests: []string{"TestSurfaceIsTheSumOfItsWaves", "TestSlopeIsTheDerivative"}},
	{Name: "spectrum.Realisation.Elevation", Func: (*spectrum.Realisation).Elevation, Class: reference.Composed, Tests: []string{"TestSurfaceIsTheSumOfItsWaves"}},
	{Name: "spectrum.Realisation.Slope", Func: (*spectrum.Realisation).Slope, Class: reference.Composed, Tests: []string{"TestSurfaceIsTheSumOfItsWaves", "TestSlopeIsTheDerivative"}},
	{Name: "spectrum.Realisation.Record", Func: (*spectrum.Realisation).Record, Class: reference.Composed, Tests: []string{"TestRecordIsTheElevation"}},
	{Name: "spectrum.Crossing.Height", Func: spectrum.Crossing.Height, Class: reference.Accessor, Tests: []string{"TestCrossingsOfASine"}},
	{Name: "spectrum.Crossings", Func: spectrum.Crossings, Class: reference.Search, Tests: []string{"TestCrossingsOfASine", "TestCrossingsMirror", "TestCrossingsRefuse"}},
	{Name: "spectrum.Summarise", Func: spectrum.Summarise, Class: reference.Composed, Args: args(reference.List("heights", "m", reference.Any, 1, 2, 3, 4, 5, 6)), Results: []reference.Result{{Name: "third", Unit: "m"}, {Name: "tenth", Unit: "m"}, {Name: "mean", Unit: "m"}, {Name: "rms", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			var w []spectrum.Crossing
			for _, h := range in.L("heights") {
				w = append(w, spectrum.Crossing{Period: 5, Crest: h})
			}
			s := spectrum.Summarise(w)
			return reference.Out{"third": s.Third, "tenth": s.Tenth, "mean": s.Mean, "rms": s.RMS}, nil
		}, Tests: []string{"TestSummaryOfKnownHeights"}},
	{Name: "spectrum.CountRuns", Func: spectrum.CountRuns, Class: reference.Composed, Args: args(reference.Number("height", "m", reference.Any, 2)), Results: []reference.Result{{Name: "run", Unit: "1"}, {Name: "total", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			var w []spectrum.Crossing
			for _, h := range []float64{1, 3, 3, 1, 3, 1, 1, 3} {
				w = append(w, spectrum.Crossing{Crest: h})
			}
			run, total, _ := spectrum.CountRuns(w, in.F("height"))
			return reference.Out{"run": run, "total": total}, nil
		}, Tests: []string{"TestCountRuns"}},

	// Buoy files.
	{Name: "spectrum.ReadBuoy", Func: spectrum.ReadBuoy, Class: reference.Reader, Tests: []string{"TestBuoyRoundTrip", "TestBuoyRealtime", "TestBuoyRefuses", "TestBuoyBoundedMemory", "FuzzReadBuoy"}},
	{Name: "spectrum.WriteBuoy", Func: spectrum.WriteBuoy, Class: reference.Writer, Tests: []string{"TestBuoyRoundTrip", "TestWriteBuoyRefuses", "FuzzReadBuoy"}},
	{Name: "spectrum.ReadBuoySummary", Func: spectrum.ReadBuoySummary, Class: reference.Reader, Tests: []string{"TestBuoySummary", "TestBuoyBoundedMemory", "FuzzReadBuoySummary"}},
	{Name: "spectrum.BuoyRow.Bins", Func: spectrum.BuoyRow.Bins, Class: reference.Constructor, Tests: []string{"TestBuoyRealtime"}},
	{Name: "spectrum.JoinBuoy", Func: spectrum.JoinBuoy, Class: reference.Constructor, Tests: []string{"TestBuoyRealtime"}},
	{Name: "spectrum.BuoyRecord.Directional", Func: spectrum.BuoyRecord.Directional, Class: reference.Formula, Args: args(specR1, specR2, specFrom), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": specRecord(in).Directional(0, in.F("from"))}, nil
		}, Tests: []string{"TestDirectionalIntegrates"}},
	{Name: "spectrum.BuoyRecord.DirectionalPositive", Func: spectrum.BuoyRecord.DirectionalPositive, Class: reference.Formula, Args: args(specR1, specR2, specFrom), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": specRecord(in).DirectionalPositive(0, in.F("from"))}, nil
		}, Tests: []string{"TestDirectionalIntegrates"}},
	{Name: "spectrum.BuoyRecord.MeanDirectionFrom", Func: spectrum.BuoyRecord.MeanDirectionFrom, Class: reference.Composed, Tests: []string{"TestMeanDirection"}},
}

var (
	specR1   = reference.Number("r1", "1", reference.Any, 0.8)
	specR2   = reference.Number("r2", "1", reference.Any, 0.5)
	specFrom = reference.Number("from", "deg", reference.Angle, 200)
)

func specHs2() reference.Arg { return reference.Number("hs", "m", reference.Positive, 2) }
func specHi2() reference.Arg { return reference.Number("hi", "Hz", reference.Positive, 0.5) }

func specBand(in reference.In) spectrum.Spectrum {
	return spectrum.Band{Spectrum: specJONSWAP(in), Low: 0, High: 0.3}
}

// specSampledTo is specSampled up to the argument highest.
func specSampledTo(in reference.In) spectrum.Points {
	in["hi"] = in["highest"]
	return specSampled(in)
}

// specOneWave is one wave with the energy of a regular wave of the height Hm0/√2, as one band.
func specOneWave(hm0, period float64) (spectrum.Bins, error) {
	f := 1 / period
	if !(f > 0 && f <= math.MaxFloat64 && hm0 >= 0) {
		return spectrum.Bins{}, fmt.Errorf("height %v, period %v", hm0, period)
	}
	return spectrum.NewBins([]float64{f}, []float64{hm0 * hm0 / 16 / (f / 8)}, []float64{f / 8})
}

func specRecord(in reference.In) spectrum.BuoyRecord {
	return spectrum.BuoyRecord{Bins: spectrum.Bins{F: []float64{0.1}, S: []float64{1}, W: []float64{0.01}},
		MeanFrom: []float64{180}, PrincipalFrom: []float64{180}, R1: []float64{in.F("r1")}, R2: []float64{in.F("r2")}}
}
