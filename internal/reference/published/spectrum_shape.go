package published

import (
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
)

// The arguments that the shapes share.
var (
	specFreq    = reference.Number("frequency", "Hz", reference.NonNegativeInf, 0.15)
	specHs      = reference.Number("hs", "m", reference.NonNegative, 2)
	specTp      = reference.Number("tp", "s", reference.Positive, 8)
	specGamma   = reference.Number("gamma", "1", reference.Between(1, 20), 3.3)
	specDepth   = reference.Number("depth", "m", reference.PositiveInf, 10)
	specGravity = reference.Number("gravity", "m/s2", reference.NonNegative, 9.81)
	specOrder   = reference.Number("n", "1", reference.Real, 1)
	specLo      = reference.Number("lo", "Hz", reference.NonNegative, 0.05)
	specHi      = reference.Number("hi", "Hz", reference.NonNegativeInf, 0.4)
	specAngle   = reference.Number("offset", "deg", reference.Angle, 20)
	specH13     = reference.Number("h13", "m", reference.NonNegative, 2)
	specT13     = reference.Number("t13", "s", reference.Positive, 8)
)

func args(a ...reference.Arg) []reference.Arg { return a }

func result(unit string) []reference.Result { return []reference.Result{{Unit: unit}} }

// specDensity, specMoment and specPeak evaluate the three methods of a shape made from the inputs.
func specDensity(of func(reference.In) spectrum.Spectrum) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return reference.Out{"": of(in).Density(in.F("frequency"))}, nil
	}
}

func specMoment(of func(reference.In) spectrum.Spectrum) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return reference.Out{"": of(in).(spectrum.MomentSpectrum).MomentWithin(in.F("n"), in.F("lo"), in.F("hi"))}, nil
	}
}

func specPeak(of func(reference.In) spectrum.Spectrum) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return reference.Out{"": of(in).(spectrum.PeakSpectrum).PeakFrequency()}, nil
	}
}

func specBretschneider(in reference.In) spectrum.Spectrum {
	return spectrum.Bretschneider{Hs: in.F("hs"), Tp: in.F("tp")}
}

func specJONSWAP(in reference.In) spectrum.Spectrum {
	return spectrum.JONSWAP{Hs: in.F("hs"), Tp: in.F("tp"), Gamma: in.F("gamma")}
}

func specJONSWAPFit(in reference.In) spectrum.Spectrum {
	return spectrum.JONSWAPFit{Hs: in.F("hs"), Tp: in.F("tp"), Gamma: in.F("gamma")}
}

func specAlpha(in reference.In) spectrum.Spectrum {
	return spectrum.JONSWAPAlpha{Alpha: in.F("alpha"), Fp: in.F("fp"), Gamma: in.F("gamma"), Gravity: in.F("gravity")}
}

func specPM(in reference.In) spectrum.Spectrum {
	return spectrum.PiersonMoskowitz{Wind19: in.F("wind"), Gravity: in.F("gravity")}
}

func specMitsuyasu(in reference.In) spectrum.Spectrum {
	return spectrum.BretschneiderMitsuyasu{H13: in.F("h13"), T13: in.F("t13")}
}

func specModified(in reference.In) spectrum.Spectrum {
	return spectrum.GodaModified{H13: in.F("h13"), T13: in.F("t13")}
}

func specGodaJONSWAP(in reference.In) spectrum.Spectrum {
	return spectrum.GodaJONSWAP{H13: in.F("h13"), Tp: in.F("tp"), Gamma: in.F("gamma")}
}

func specGammaShape(in reference.In) spectrum.Spectrum {
	return spectrum.Gamma{Hs: in.F("hs"), Tp: in.F("tp"), N: in.F("power"), M: in.F("width")}
}

func specTMA(in reference.In) spectrum.Spectrum {
	return spectrum.TMA{Hs: in.F("hs"), Tp: in.F("tp"), Gamma: in.F("gamma"), Depth: in.F("depth"), Water: wave.Water{Gravity: in.F("gravity")}}
}

// specOther is a spectrum that hides its shape, so that the general quadrature has to find it.
type specOther struct{ s spectrum.Spectrum }

func (o specOther) Density(f float64) float64 { return o.s.Density(f) }

func specHidden(in reference.In) spectrum.Spectrum { return specOther{specJONSWAP(in)} }

// The branches of a moment.
var momentRegimes = []reference.Regime{
	{Name: "whole tail", In: func(in reference.In) bool { return math.IsInf(in.F("hi"), 1) && in.F("n") < 4 }},
	{Name: "part", In: func(in reference.In) bool { return in.F("hi") < math.MaxFloat64 }},
	{Name: "no end", In: func(in reference.In) bool { return math.IsInf(in.F("hi"), 1) && in.F("n") >= 4 }},
}

// Below and above the peak the enhancement has another width.
var peakRegimes = []reference.Regime{
	{Name: "up to the peak", In: func(in reference.In) bool { return in.F("frequency")*in.F("tp") <= 1 }},
	{Name: "above the peak", In: func(in reference.In) bool { return in.F("frequency")*in.F("tp") > 1 }},
}

var (
	specWind   = reference.Number("wind", "m/s", reference.Positive, 10)
	specAlphaA = reference.Number("alpha", "1", reference.NonNegative, 0.0081)
	specFp     = reference.Number("fp", "Hz", reference.Positive, 0.125)
	specPower  = reference.Number("power", "1", reference.Domain{Lo: 1, Hi: 100, LoOpen: true}, 5)
	specWidth  = reference.Number("width", "1", reference.Domain{Lo: 0, Hi: 100, LoOpen: true}, 4)
)

const shapeTest = "TestShapesIntegrateToTheirHeight"

var spectrumShapeSubjects = []reference.Subject{
	{Name: "spectrum.Bretschneider.Density", Func: spectrum.Bretschneider.Density, Class: reference.Formula,
		Args: args(specFreq, specHs, specTp), Results: result("m2/Hz"), Eval: specDensity(specBretschneider)},
	{Name: "spectrum.Bretschneider.MomentWithin", Func: spectrum.Bretschneider.MomentWithin, Class: reference.Formula,
		Args: args(specOrder, specLo, specHi, specHs, specTp), Results: result("1"), Eval: specMoment(specBretschneider), Regimes: momentRegimes, Tests: []string{shapeTest}},
	{Name: "spectrum.Bretschneider.Alpha", Func: spectrum.Bretschneider.Alpha, Class: reference.Formula,
		Args: args(specHs, specTp, specGravity), Results: result("1"), Tests: []string{"TestAlphaIsTheTail"},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Bretschneider{Hs: in.F("hs"), Tp: in.F("tp")}.Alpha(in.F("gravity"))}, nil
		}},
	{Name: "spectrum.Bretschneider.PeakFrequency", Func: spectrum.Bretschneider.PeakFrequency, Class: reference.Accessor,
		Args: args(specHs, specTp), Results: result("Hz"), Eval: specPeak(specBretschneider), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.JONSWAP.Density", Func: spectrum.JONSWAP.Density, Class: reference.Formula, Regimes: peakRegimes,
		Args: args(specFreq, specHs, specTp, specGamma), Results: result("m2/Hz"), Eval: specDensity(specJONSWAP)},
	{Name: "spectrum.JONSWAP.MomentWithin", Func: spectrum.JONSWAP.MomentWithin, Class: reference.Formula, Regimes: momentRegimes,
		Args: args(specOrder, specLo, specHi, specHs, specTp, specGamma), Results: result("1"), Eval: specMoment(specJONSWAP), Tests: []string{shapeTest}},
	{Name: "spectrum.JONSWAP.PeakFrequency", Func: spectrum.JONSWAP.PeakFrequency, Class: reference.Accessor,
		Args: args(specHs, specTp, specGamma), Results: result("Hz"), Eval: specPeak(specJONSWAP), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.JONSWAPFactor", Func: spectrum.JONSWAPFactor, Class: reference.Formula, Args: args(specGamma), Results: result("1"),
		Regimes: []reference.Regime{
			{Name: "1", In: func(in reference.In) bool { return in.F("gamma") == 1 }},
			{Name: "above 1", In: func(in reference.In) bool { return in.F("gamma") > 1 }},
		},
		NoneFound: map[string]string{"above 1": "standards, manuals and toolboxes print fits (1 - 0.287 ln gamma and others) or integrate without printing the factor"},
		Tests:     []string{shapeTest}},
	{Name: "spectrum.JONSWAPFactorFit", Func: spectrum.JONSWAPFactorFit, Class: reference.Formula, Args: args(specGamma), Results: result("1")},
	{Name: "spectrum.JONSWAPFit.Density", Func: spectrum.JONSWAPFit.Density, Class: reference.Formula, Regimes: peakRegimes,
		Args: args(specFreq, specHs, specTp, specGamma), Results: result("m2/Hz"), Eval: specDensity(specJONSWAPFit)},
	{Name: "spectrum.JONSWAPFit.MomentWithin", Func: spectrum.JONSWAPFit.MomentWithin, Class: reference.Formula, Regimes: momentRegimes,
		Args: args(specOrder, specLo, specHi, specHs, specTp, specGamma), Results: result("1"), Eval: specMoment(specJONSWAPFit), Tests: []string{shapeTest}},
	{Name: "spectrum.JONSWAPFit.PeakFrequency", Func: spectrum.JONSWAPFit.PeakFrequency, Class: reference.Accessor,
		Args: args(specHs, specTp, specGamma), Results: result("Hz"), Eval: specPeak(specJONSWAPFit), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.JONSWAPAlpha.Density", Func: spectrum.JONSWAPAlpha.Density, Class: reference.Formula,
		Args: args(specFreq, specAlphaA, specFp, specGamma, specGravity), Results: result("m2/Hz"), Eval: specDensity(specAlpha)},
	{Name: "spectrum.JONSWAPAlpha.MomentWithin", Func: spectrum.JONSWAPAlpha.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specAlphaA, specFp, specGamma, specGravity), Results: result("1"), Eval: specMoment(specAlpha), Tests: []string{"TestShapesAgreeWithTheirFormulas", shapeTest}},
	{Name: "spectrum.JONSWAPAlpha.PeakFrequency", Func: spectrum.JONSWAPAlpha.PeakFrequency, Class: reference.Accessor,
		Args: args(specAlphaA, specFp, specGamma, specGravity), Results: result("Hz"), Eval: specPeak(specAlpha), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.PiersonMoskowitz.Bretschneider", Func: spectrum.PiersonMoskowitz.Bretschneider, Class: reference.Formula,
		Args: args(specWind, specGravity), Results: []reference.Result{{Name: "hs", Unit: "m"}, {Name: "tp", Unit: "s"}, {Name: "peak", Unit: "1"}, {Name: "variance", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			b := spectrum.PiersonMoskowitz{Wind19: in.F("wind"), Gravity: in.F("gravity")}.Bretschneider()
			g := in.F("gravity")
			if g == 0 {
				g = wave.StandardGravity
			}
			x := in.F("wind") * in.F("wind") / g
			return reference.Out{"hs": b.Hs, "tp": b.Tp, "peak": 2 * math.Pi / b.Tp * in.F("wind") / g, "variance": b.Hs * b.Hs / 16 / (x * x)}, nil
		}},
	{Name: "spectrum.PiersonMoskowitz.Density", Func: spectrum.PiersonMoskowitz.Density, Class: reference.Formula,
		Args: args(specFreq, specWind, specGravity), Results: result("m2/Hz"), Eval: specDensity(specPM)},
	{Name: "spectrum.PiersonMoskowitz.MomentWithin", Func: spectrum.PiersonMoskowitz.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specWind, specGravity), Results: result("1"), Eval: specMoment(specPM), Tests: []string{"TestShapesAgreeWithTheirFormulas", shapeTest}},
	{Name: "spectrum.PiersonMoskowitz.PeakFrequency", Func: spectrum.PiersonMoskowitz.PeakFrequency, Class: reference.Accessor,
		Args: args(specWind, specGravity), Results: result("Hz"), Eval: specPeak(specPM), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.BretschneiderMitsuyasu.Bretschneider", Func: spectrum.BretschneiderMitsuyasu.Bretschneider, Class: reference.Formula,
		Args: args(specH13, specT13), Results: []reference.Result{{Name: "hs", Unit: "m", Without: []string{"t13"}}, {Name: "tp", Unit: "s", Without: []string{"h13"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			b := spectrum.BretschneiderMitsuyasu{H13: in.F("h13"), T13: in.F("t13")}.Bretschneider()
			return reference.Out{"hs": b.Hs, "tp": b.Tp}, nil
		}},
	{Name: "spectrum.BretschneiderMitsuyasu.Density", Func: spectrum.BretschneiderMitsuyasu.Density, Class: reference.Formula,
		Args: args(specFreq, specH13, specT13), Results: result("m2/Hz"), Eval: specDensity(specMitsuyasu), Tests: []string{"TestShapesAgreeWithTheirFormulas"}},
	{Name: "spectrum.BretschneiderMitsuyasu.MomentWithin", Func: spectrum.BretschneiderMitsuyasu.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specH13, specT13), Results: result("1"), Eval: specMoment(specMitsuyasu), Tests: []string{"TestShapesAgreeWithTheirFormulas", shapeTest}},
	{Name: "spectrum.BretschneiderMitsuyasu.PeakFrequency", Func: spectrum.BretschneiderMitsuyasu.PeakFrequency, Class: reference.Accessor,
		Args: args(specH13, specT13), Results: result("Hz"), Eval: specPeak(specMitsuyasu), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.GodaModified.Bretschneider", Func: spectrum.GodaModified.Bretschneider, Class: reference.Formula,
		Args: args(specH13, specT13), Results: []reference.Result{{Name: "hs", Unit: "m", Without: []string{"t13"}}, {Name: "tp", Unit: "s", Without: []string{"h13"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			b := spectrum.GodaModified{H13: in.F("h13"), T13: in.F("t13")}.Bretschneider()
			return reference.Out{"hs": b.Hs, "tp": b.Tp}, nil
		}},
	{Name: "spectrum.GodaModified.Density", Func: spectrum.GodaModified.Density, Class: reference.Formula,
		Args: args(specFreq, specH13, specT13), Results: result("m2/Hz"), Eval: specDensity(specModified), Tests: []string{"TestShapesAgreeWithTheirFormulas"}},
	{Name: "spectrum.GodaModified.MomentWithin", Func: spectrum.GodaModified.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specH13, specT13), Results: result("1"), Eval: specMoment(specModified), Tests: []string{"TestShapesAgreeWithTheirFormulas", shapeTest}},
	{Name: "spectrum.GodaModified.PeakFrequency", Func: spectrum.GodaModified.PeakFrequency, Class: reference.Accessor,
		Args: args(specH13, specT13), Results: result("Hz"), Eval: specPeak(specModified), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.GodaJONSWAP.JONSWAP", Func: spectrum.GodaJONSWAP.JONSWAP, Class: reference.Composed,
		Args: args(specH13, specTp, specGamma), Results: result("m"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": specGodaJONSWAP(in).(spectrum.GodaJONSWAP).JONSWAP().Hs}, nil
		}, Tests: []string{"TestShapesAgreeWithTheirFormulas"}},
	{Name: "spectrum.GodaJONSWAP.Density", Func: spectrum.GodaJONSWAP.Density, Class: reference.Formula,
		Args: args(specFreq, specH13, specTp, specGamma), Results: result("m2/Hz"), Eval: specDensity(specGodaJONSWAP),
		NoneFound: map[string]string{"all": "Goda prints the formula; four programs that use it print no density"}, Tests: []string{"TestShapesAgreeWithTheirFormulas"}},
	{Name: "spectrum.GodaJONSWAP.MomentWithin", Func: spectrum.GodaJONSWAP.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specH13, specTp, specGamma), Results: result("1"), Eval: specMoment(specGodaJONSWAP), Tests: []string{"TestShapesAgreeWithTheirFormulas", shapeTest}},
	{Name: "spectrum.GodaJONSWAP.PeakFrequency", Func: spectrum.GodaJONSWAP.PeakFrequency, Class: reference.Accessor,
		Args: args(specH13, specTp, specGamma), Results: result("Hz"), Eval: specPeak(specGodaJONSWAP), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.PeakFromT13", Func: spectrum.PeakFromT13, Class: reference.Formula, Args: args(specT13, specGamma), Results: result("s"),
		NoneFound: map[string]string{"all": "the formula is printed without an example"}, Tests: []string{"TestGodaPeakPeriod"}},
	{Name: "spectrum.Gamma.Density", Func: spectrum.Gamma.Density, Class: reference.Formula,
		Args: args(specFreq, specHs, specTp, specPower, specWidth), Results: result("m2/Hz"), Eval: specDensity(specGammaShape)},
	{Name: "spectrum.Gamma.MomentWithin", Func: spectrum.Gamma.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specHs, specTp, specPower, specWidth), Results: result("1"), Eval: specMoment(specGammaShape), Tests: []string{"TestGammaIsBretschneider", shapeTest}},
	{Name: "spectrum.Gamma.PeakFrequency", Func: spectrum.Gamma.PeakFrequency, Class: reference.Accessor,
		Args: args(specHs, specTp, specPower, specWidth), Results: result("Hz"), Eval: specPeak(specGammaShape), Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.TMA.Density", Func: spectrum.TMA.Density, Class: reference.Formula,
		Args: args(specFreq, specHs, specTp, specGamma, specDepth, specGravity), Results: result("m2/Hz"), Eval: specDensity(specTMA)},
	{Name: "spectrum.TMA.MomentWithin", Func: spectrum.TMA.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specHs, specTp, specGamma, specDepth, specGravity), Results: result("1"), Eval: specMoment(specTMA), Tests: []string{"TestShapesAgreeWithTheirFormulas", shapeTest}},
	{Name: "spectrum.TMA.ScaledTo", Func: spectrum.TMA.ScaledTo, Class: reference.Constructor,
		Args: args(reference.Number("height", "m", reference.NonNegative, 1.5), specTp, specGamma, specDepth, specGravity), Results: result("m"),
		Eval: func(in reference.In) (reference.Out, error) {
			t := spectrum.TMA{Hs: 1, Tp: in.F("tp"), Gamma: in.F("gamma"), Depth: in.F("depth"), Water: wave.Water{Gravity: in.F("gravity")}}
			return reference.Out{"": t.ScaledTo(in.F("height")).Hs}, nil
		}, Tests: []string{"TestDepthLowersTheSea"}},
	{Name: "spectrum.DepthFactor", Func: spectrum.DepthFactor, Class: reference.Formula,
		Args: args(reference.Number("frequency", "Hz", reference.Positive, 0.15), specDepth, specGravity), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.DepthFactor(wave.Water{Gravity: in.F("gravity")}, in.F("frequency"), in.F("depth"))}, nil
		}},
	{Name: "spectrum.Sum.Density", Func: spectrum.Sum.Density, Class: reference.Composed,
		Args: args(specFreq, specHs, specTp, specGamma), Results: result("m2/Hz"), Eval: specDensity(specSum), Tests: []string{"TestSumAddsVariances"}},
	{Name: "spectrum.Sum.MomentWithin", Func: spectrum.Sum.MomentWithin, Class: reference.Composed,
		Args: args(specOrder, specLo, specHi, specHs, specTp, specGamma), Results: result("1"), Eval: specMoment(specSum), Tests: []string{"TestSumAddsVariances"}},
	{Name: "spectrum.Sum.PeakFrequency", Func: spectrum.Sum.PeakFrequency, Class: reference.Composed,
		Args: args(specHs, specTp, specGamma), Results: result("Hz"), Eval: specPeak(specSum), Tests: []string{"TestSumAddsVariances"}},
	{Name: "spectrum.Densities", Func: spectrum.Densities, Class: reference.Composed,
		Args: args(specFreq, specHs, specTp, specGamma), Results: result("m2/Hz"),
		Eval: func(in reference.In) (reference.Out, error) {
			var d [1]float64
			spectrum.Densities(specJONSWAP(in), d[:], []float64{in.F("frequency")})
			return reference.Out{"": d[0]}, nil
		}, Tests: []string{"TestDensitiesAreTheDensities"}},
	{Name: "spectrum.PeakFrequency", Func: spectrum.PeakFrequency, Class: reference.Search,
		Args: args(specHs, specTp, specGamma), Results: result("Hz"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.PeakFrequency(specHidden(in))}, nil
		}, Tests: []string{"TestPeaksAreWhereTheySay"}},
	{Name: "spectrum.Moment", Func: spectrum.Moment, Class: reference.Formula,
		Args: args(specOrder, specHs, specTp, specGamma), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.Moment(specJONSWAP(in), in.F("n"))}, nil
		}},
	{Name: "spectrum.MomentWithin", Func: spectrum.MomentWithin, Class: reference.Formula, Regimes: momentRegimes,
		Args: args(specOrder, specLo, specHi, specHs, specTp, specGamma), Results: result("1"),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": spectrum.MomentWithin(specHidden(in), in.F("n"), in.F("lo"), in.F("hi"))}, nil
		}, Tests: []string{shapeTest}},
}

func specSum(in reference.In) spectrum.Spectrum {
	return spectrum.Sum{specJONSWAP(in), spectrum.Bretschneider{Hs: 1, Tp: 14}}
}

const (
	wafoBret  = "test_models, test_bretschneider"
	wafoTMA   = "test_models, test_tmaspec"
	xdynJ     = "JonswapSpectrumTest, example"
	xdynB     = "BretschneiderSpectrumTest, example"
	xdynPM    = "PiersonMoskowitzSpectrumTest, example"
	wafoPhi   = "models, phi1, example"
	wafoLoose = "the source normalises its JONSWAP spectrum over 0 to 6 fp only, which leaves out up to 0.1 % of the variance"
)

var spectrumShapeChecks = []reference.Check{
	// Bretschneider and the fully risen sea.
	{ID: "bretschneider-wafo-1", Subject: "spectrum.Bretschneider.Density", In: "frequency=1 rad/s, hs=6.5 m, tp=10 s", Printed: "1.69350993", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoBret},
	{ID: "bretschneider-wafo-2", Subject: "spectrum.Bretschneider.Density", In: "frequency=2 rad/s, hs=6.5 m, tp=10 s", Printed: "0.06352698", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoBret},
	{ID: "bretschneider-wafo-3", Subject: "spectrum.Bretschneider.Density", In: "frequency=3 rad/s, hs=6.5 m, tp=10 s", Printed: "0.00844783", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoBret},
	{ID: "bretschneider-xdyn-1m", Subject: "spectrum.Bretschneider.Density", In: "frequency=1 rad/s, hs=1 m, tp=5 s", Printed: "0.034510725921325", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynB},
	{ID: "bretschneider-xdyn-2m", Subject: "spectrum.Bretschneider.Density", In: "frequency=1 rad/s, hs=2 m, tp=5 s", Printed: "0.138042903685298", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynB},
	{ID: "bretschneider-xdyn-tail", Subject: "spectrum.Bretschneider.Density", In: "frequency=10 rad/s, hs=2 m, tp=5 s", Printed: "0.000031161194389", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynB},
	{ID: "bretschneider-xdyn-10s", Subject: "spectrum.Bretschneider.Density", In: "frequency=0.5 rad/s, hs=2 m, tp=10 s", Printed: "0.276085807370596", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynB},
	{ID: "bretschneider-xdyn-pm-1", Subject: "spectrum.Bretschneider.Density", In: "frequency=2.166666666666667 rad/s, hs=10 m, tp=1.963495408493621 s", Printed: "0.179258995153943", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynPM, Tol: 1e-10, Why: "the source's own tolerance; its tp is 5 pi/8"},
	{ID: "bretschneider-xdyn-pm-2", Subject: "spectrum.Bretschneider.Density", In: "frequency=2.444444444444445 rad/s, hs=10 m, tp=1.963495408493621 s", Printed: "0.955512136348661", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynPM, Tol: 1e-10, Why: "the source's own tolerance; its tp is 5 pi/8"},
	{ID: "bretschneider-xdyn-pm-3", Subject: "spectrum.Bretschneider.Density", In: "frequency=2.722222222222222 rad/s, hs=10 m, tp=1.963495408493621 s", Printed: "2.014925308286375", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynPM, Tol: 1e-10, Why: "the source's own tolerance; its tp is 5 pi/8"},
	{ID: "bretschneider-xdyn-pm-4", Subject: "spectrum.Bretschneider.Density", In: "frequency=3 rad/s, hs=10 m, tp=1.963495408493621 s", Printed: "2.673499618095267", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynPM, Tol: 1e-10, Why: "the source's tolerance for its other values; its tp is 5 pi/8"},
	{ID: "pm-density-gran", Subject: "spectrum.Bretschneider.Density", In: "frequency=0.5 rad/s, hs=12 m, tp=14.077157557 s", Printed: "25.84", Unit: "m2s/rad", Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, sec. 3.1", Note: "the source gives Tz = 10 s; Tp is Tz (5 pi/4)^(1/4)"},
	{ID: "pm-density-hz-gran", Subject: "spectrum.Bretschneider.Density", In: "frequency=0.5 rad/s, hs=12 m, tp=14.077157557 s", Printed: "162.36", Unit: "m2/Hz", Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, sec. 3.1", Note: "the source gives Tz = 10 s; Tp is Tz (5 pi/4)^(1/4)"},
	{ID: "pm-variance-gran", Subject: "spectrum.Bretschneider.MomentWithin", In: "n=0, lo=0, hi=+Inf, hs=12 m, tp=14.077157557 s", Printed: "9", Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, sec. 3.1", Tol: 1e-9, Why: "printed as a whole number and exact"},
	{ID: "alpha-gran", Subject: "spectrum.Bretschneider.Alpha", In: "hs=12 m, tp=14.077157557 s, gravity=9.81 m/s2", Printed: "0.018558", Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, sec. 3.1", Note: "the source gives Tz = 10 s; Tp is Tz (5 pi/4)^(1/4)"},
	{ID: "bretschneider-m4-has-no-end", Subject: "spectrum.Bretschneider.MomentWithin", In: "n=4, lo=0, hi=+Inf, hs=1 m, tp=5 s", Printed: "+Inf", Basis: reference.Exact, Note: "the tail falls like f^-5"},
	{ID: "bretschneider-half-to-the-quantile", Subject: "spectrum.Bretschneider.MomentWithin", In: "n=0, lo=0, hi=1.1588337576, hs=4 m, tp=1 s", Printed: "1/2", Basis: reference.Exact, Tol: 1e-8, Why: "hi is (1.25/ln 2)^(1/4) to ten digits", Note: "the variance below f is exp(-1.25 (fp/f)^4) of the whole"},
	{ID: "pm-peak-stewart", Subject: "spectrum.PiersonMoskowitz.Bretschneider", In: "wind=10 m/s, gravity=9.81 m/s2", Result: "peak", Printed: "0.877", Basis: reference.Printed, Source: "Stewart2008", Locator: "Eq. 16.30"},
	{ID: "pm-variance-stewart", Subject: "spectrum.PiersonMoskowitz.Bretschneider", In: "wind=10 m/s, gravity=9.81 m/s2", Result: "variance", Printed: "2.74e-3", Basis: reference.Printed, Source: "Stewart2008", Locator: "Eq. 16.32"},
	{ID: "pm-density-alpha", Subject: "spectrum.PiersonMoskowitz.Density", In: "frequency=1 rad/s, wind=9.81 m/s, gravity=9.81 m/s2", Printed: "0.371916218", Unit: "m2s/rad", Basis: reference.Exact, Tol: 1e-9, Why: "given to nine digits", Note: "alpha g^2 exp(-0.74) at omega = g/U = 1"},
	{ID: "mitsuyasu-height", Subject: "spectrum.BretschneiderMitsuyasu.Bretschneider", In: "h13=1 m, t13=1 s", Result: "hs", Printed: "0.9990286544", Basis: reference.Exact, Tol: 1e-10, Why: "given to ten digits", Note: "sqrt(4 0.257/1.03): the highest third is 4.004 sqrt(m0)"},
	{ID: "mitsuyasu-peak", Subject: "spectrum.BretschneiderMitsuyasu.Bretschneider", In: "h13=1 m, t13=1 s", Result: "tp", Printed: "1.05", Basis: reference.Printed, Source: "Goda2010Book", Locator: "sec. 2.3.1"},
	{ID: "mitsuyasu-density", Subject: "spectrum.BretschneiderMitsuyasu.Density", In: "frequency=1 Hz, h13=1 m, t13=1 s", Printed: "0.0917507889", Basis: reference.Exact, Tol: 1e-10, Why: "given to ten digits", Note: "0.257 exp(-1.03)"},
	{ID: "goda-modified-height", Subject: "spectrum.GodaModified.Bretschneider", In: "h13=1 m, t13=1 s", Result: "hs", Printed: "1.0456258094", Basis: reference.Exact, Tol: 1e-10, Why: "given to ten digits", Note: "sqrt(4 0.205/0.75)"},
	{ID: "goda-modified-density", Subject: "spectrum.GodaModified.Density", In: "frequency=1 Hz, h13=1 m, t13=1 s", Printed: "0.0968351433", Basis: reference.Exact, Tol: 1e-10, Why: "given to ten digits", Note: "0.205 exp(-0.75)"},
	{ID: "goda-jonswap-density", Subject: "spectrum.GodaJONSWAP.Density", In: "frequency=1 Hz, h13=1 m, tp=1 s, gamma=1", Printed: "0.0978866205", Basis: reference.Exact, Tol: 1e-10, Why: "given to ten digits", Note: "0.0624 1.094/(0.2636 - 0.185/2.9) exp(-1.25)"},
	{ID: "gamma-shape-wafo-1", Subject: "spectrum.Gamma.Density", In: "frequency=1 Hz, hs=4 m, tp=1 s, power=6, width=2", Printed: "1.16765216", Basis: reference.Printed, Source: "WAFO", Locator: "models, gengamspec, example"},
	{ID: "gamma-shape-wafo-2", Subject: "spectrum.Gamma.Density", In: "frequency=2 Hz, hs=4 m, tp=1 s, power=6, width=2", Printed: "0.17309961", Basis: reference.Printed, Source: "WAFO", Locator: "models, gengamspec, example"},
	{ID: "gamma-shape-wafo-3", Subject: "spectrum.Gamma.Density", In: "frequency=3 Hz, hs=4 m, tp=1 s, power=6, width=2", Printed: "0.02305179", Basis: reference.Printed, Source: "WAFO", Locator: "models, gengamspec, example"},
	{ID: "gamma-shape-wafo-4", Subject: "spectrum.Gamma.Density", In: "frequency=4 Hz, hs=4 m, tp=1 s, power=6, width=2", Printed: "0.00474686", Basis: reference.Printed, Source: "WAFO", Locator: "models, gengamspec, example"},

	// JONSWAP.
	{ID: "jonswap-gamma1-wafo-1", Subject: "spectrum.JONSWAP.Density", In: "frequency=1 rad/s, hs=7 m, tp=11 s, gamma=1", Printed: "1.42694133", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_if_jonswap_with_gamma_one_equals_bretschneider"},
	{ID: "jonswap-gamma1-wafo-2", Subject: "spectrum.JONSWAP.Density", In: "frequency=2 rad/s, hs=7 m, tp=11 s, gamma=1", Printed: "0.05051648", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_if_jonswap_with_gamma_one_equals_bretschneider"},
	{ID: "jonswap-gamma1-wafo-3", Subject: "spectrum.JONSWAP.Density", In: "frequency=3 rad/s, hs=7 m, tp=11 s, gamma=1", Printed: "0.00669692", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_if_jonswap_with_gamma_one_equals_bretschneider"},
	{ID: "jonswap-exact-below-peak", Subject: "spectrum.JONSWAP.Density", In: "frequency=0.5 rad/s, hs=1 m, tp=10 s, gamma=3.3", Printed: "0.046145520023689", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynJ, Tol: 1.2e-4, Why: "the source has the fitted normaliser, 0.24 % above the exact one at gamma 3.3"},
	{ID: "jonswap-fit-xdyn-1", Subject: "spectrum.JONSWAPFit.Density", In: "frequency=0.4 rad/s, hs=1 m, tp=10 s, gamma=3.3", Printed: "0.001548977510098", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynJ},
	{ID: "jonswap-fit-xdyn-2", Subject: "spectrum.JONSWAPFit.Density", In: "frequency=0.5 rad/s, hs=1 m, tp=10 s, gamma=3.3", Printed: "0.046145520023689", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynJ},
	{ID: "jonswap-fit-xdyn-3", Subject: "spectrum.JONSWAPFit.Density", In: "frequency=0.6 rad/s, hs=1 m, tp=10 s, gamma=3.3", Printed: "0.241661465488933", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynJ},
	{ID: "jonswap-fit-xdyn-4", Subject: "spectrum.JONSWAPFit.Density", In: "frequency=0.7 rad/s, hs=1 m, tp=10 s, gamma=3.3", Printed: "0.144435240716521", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynJ},
	{ID: "jonswap-fit-xdyn-5", Subject: "spectrum.JONSWAPFit.Density", In: "frequency=0.8 rad/s, hs=1 m, tp=10 s, gamma=3.3", Printed: "0.061449169843241", Unit: "m2s/rad", Basis: reference.Printed, Source: "xdyn", Locator: xdynJ},
	{ID: "jonswap-variance", Subject: "spectrum.JONSWAP.MomentWithin", In: "n=0, lo=0, hi=+Inf, hs=4 m, tp=8 s, gamma=3.3", Printed: "1", Basis: reference.Exact, Note: "Hs^2/16: the normaliser is exact"},
	{ID: "jonswap-variance-wafo", Subject: "spectrum.JONSWAP.MomentWithin", In: "n=0, lo=0, hi=3 rad/s, hs=5 m, tp=11 s, gamma=1.0813562", Printed: "1.5614600345", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_moment", Tol: 1.6e-3, Why: wafoLoose},
	{ID: "jonswap-m4-has-no-end", Subject: "spectrum.JONSWAP.MomentWithin", In: "n=4, lo=0, hi=+Inf, hs=4 m, tp=8 s, gamma=3.3", Printed: "+Inf", Basis: reference.Exact, Note: "the tail falls like f^-5"},
	{ID: "jonswap-fit-m0-gamma1", Subject: "spectrum.JONSWAPFit.MomentWithin", In: "n=0, lo=0, hi=+Inf, hs=4 m, tp=8 s, gamma=1", Printed: "1", Basis: reference.Exact, Note: "the fit is exact at gamma 1"},
	{ID: "jonswap-fit-m0-crate", Subject: "spectrum.JONSWAPFit.MomentWithin", In: "n=0, lo=0, hi=2, hs=2.5 m, tp=7 s, gamma=1.932", Printed: "0.3897", Basis: reference.Printed, Source: "jonswap-crate", Locator: "README, example", Note: "the source does not print its highest frequency; 2 Hz gives all three of its moments"},
	{ID: "jonswap-fit-m2-crate", Subject: "spectrum.JONSWAPFit.MomentWithin", In: "n=2, lo=0, hi=2, hs=2.5 m, tp=7 s, gamma=1.932", Printed: "0.014274", Basis: reference.Printed, Source: "jonswap-crate", Locator: "README, example", Tol: 1e-5, Why: "the source adds up 200 harmonics", Note: "printed 0.5635 (rad/s)^2 m^2, divided by 4 pi^2; the highest frequency is not printed and 2 Hz is what gives all three moments"},
	{ID: "jonswap-fit-m4-has-no-end", Subject: "spectrum.JONSWAPFit.MomentWithin", In: "n=4, lo=0, hi=+Inf, hs=4 m, tp=8 s, gamma=3.3", Printed: "+Inf", Basis: reference.Exact},
	{ID: "jonswap-factor-gamma1", Subject: "spectrum.JONSWAPFactor", In: "gamma=1", Printed: "1", Basis: reference.Exact},
	{ID: "jonswap-factor-gamma3", Subject: "spectrum.JONSWAPFactor", In: "gamma=3.3", Printed: "0.65575980308973", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated to 40 digits"},
	{ID: "jonswap-factor-gamma7", Subject: "spectrum.JONSWAPFactor", In: "gamma=7", Printed: "0.44940402013342", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated to 40 digits"},
	{ID: "jonswap-factor-fit-gamma1", Subject: "spectrum.JONSWAPFactorFit", In: "gamma=1", Printed: "1", Basis: reference.Exact},
	{ID: "jonswap-factor-fit-coefficient", Subject: "spectrum.JONSWAPFactorFit", In: "gamma=2.718281828459045", Printed: "0.713", Basis: reference.Printed, Source: "WaveResponse", Locator: "standardized wave spectra, JONSWAP", Note: "1 - 0.287 ln gamma at gamma e"},
	{ID: "jonswap-alpha-gamma1", Subject: "spectrum.JONSWAPAlpha.Density", In: "frequency=0.125 Hz, alpha=0.0081, fp=0.125 Hz, gamma=1, gravity=9.81 m/s2", Printed: "4.6955383594", Basis: reference.Exact, Tol: 1e-10, Why: "given to eleven digits", Note: "alpha g^2 (2 pi)^-4 fp^-5 exp(-1.25)"},
	{ID: "moment-jonswap-m0", Subject: "spectrum.Moment", In: "n=0, hs=4 m, tp=8 s, gamma=3.3", Printed: "1", Basis: reference.Exact},
	{ID: "moment-hidden-m0", Subject: "spectrum.MomentWithin", In: "n=0, lo=0, hi=+Inf, hs=4 m, tp=8 s, gamma=3.3", Printed: "1", Basis: reference.Exact, Tol: 1e-9, Why: "general quadrature of a shape it does not know"},
	{ID: "moment-hidden-part", Subject: "spectrum.MomentWithin", In: "n=0, lo=0, hi=1.1588337576, hs=4 m, tp=1 s, gamma=1", Printed: "1/2", Basis: reference.Exact, Tol: 1e-8, Why: "hi is (1.25/ln 2)^(1/4) to ten digits"},
	{ID: "moment-hidden-no-end", Subject: "spectrum.MomentWithin", In: "n=4, lo=0, hi=+Inf, hs=4 m, tp=8 s, gamma=3.3", Printed: "+Inf", Basis: reference.Exact},

	// The depth factor.
	{ID: "tma-wafo-1", Subject: "spectrum.TMA.Density", In: "frequency=1 rad/s, hs=7 m, tp=11 s, gamma=1, depth=10 m, gravity=9.81 m/s2", Printed: "0.70106233", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoTMA},
	{ID: "tma-wafo-2", Subject: "spectrum.TMA.Density", In: "frequency=2 rad/s, hs=7 m, tp=11 s, gamma=1, depth=10 m, gravity=9.81 m/s2", Printed: "0.05022433", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoTMA},
	{ID: "tma-wafo-3", Subject: "spectrum.TMA.Density", In: "frequency=3 rad/s, hs=7 m, tp=11 s, gamma=1, depth=10 m, gravity=9.81 m/s2", Printed: "0.00669692", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoTMA},
	{ID: "tma-phi1-wafo-1", Subject: "spectrum.TMA.Density", In: "frequency=1 rad/s, hs=7 m, tp=11 s, gamma=2.3852984, depth=30 m, gravity=9.81 m/s2", Printed: "1.0358056", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoPhi, Tol: 1e-3, Why: wafoLoose},
	{ID: "tma-phi1-wafo-2", Subject: "spectrum.TMA.Density", In: "frequency=2 rad/s, hs=7 m, tp=11 s, gamma=2.3852984, depth=30 m, gravity=9.81 m/s2", Printed: "0.03796281", Unit: "m2s/rad", Basis: reference.Printed, Source: "WAFO", Locator: wafoPhi, Tol: 4e-5, Why: wafoLoose},
	{ID: "depth-factor-deep", Subject: "spectrum.DepthFactor", In: "frequency=0.1 Hz, depth=+Inf m, gravity=9.81 m/s2", Printed: "1", Basis: reference.Exact},
	{ID: "depth-factor-shallow", Subject: "spectrum.DepthFactor", In: "frequency=1e-6 Hz, depth=9.81 m, gravity=9.81 m/s2", Printed: "1.97392088e-11", Basis: reference.Exact, Tol: 1e-19, Why: "given to nine digits", Note: "omega^2 h/2g in shallow water"},
}
