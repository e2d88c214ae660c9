package published

import (
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
)

var (
	weggelA    = reference.Number("a", "1", reference.Real, 43.8)
	weggelB    = reference.Number("b", "1", reference.Real, 1.56)
	waveSlope  = reference.Number("slope", "1", reference.NonNegative, 0.02)
	waveXi     = reference.Number("xi", "1", reference.NonNegativeInf, 2)
	waveHs     = reference.Number("hs", "m", reference.NonNegative, 2)
	waveN      = reference.Number("n", "1", reference.Domain{Lo: 1, Hi: math.Inf(1), HiOpen: true}, 100)
	waveShape  = reference.Number("shape", "1", reference.Positive, 2)
	waveScale  = reference.Number("scale", "1", reference.Positive, 0.7071067811865476)
	waveK      = reference.Number("coefficient", "1", reference.Fraction, 0.5)
	waveKappa  = reference.Number("kappa", "1", reference.Fraction, 0.5)
	waveThird  = reference.Number("third", "m", reference.NonNegative, 2)
	waveMetres = reference.Number("distance", "m", reference.NonNegative, 1e6)
)

func heightLaw(in reference.In) wave.HeightLaw {
	return wave.HeightLaw{Scale: in.F("scale"), Shape: in.F("shape")}
}

var heightRegimes = []reference.Regime{
	{Name: "Rayleigh", In: func(in reference.In) bool { return in.F("shape") == 2 }},
	{Name: "other shapes", In: func(in reference.In) bool { return in.F("shape") != 2 }},
}

func heightSubject(name string, f any, eval func(wave.HeightLaw, reference.In) float64, args ...reference.Arg) reference.Subject {
	return reference.Subject{Name: name, Func: f, Class: reference.Formula,
		Args:    append([]reference.Arg{waveScale, waveShape}, args...),
		Results: []reference.Result{{Name: "value", Unit: "m"}}, Regimes: heightRegimes,
		Eval:  func(in reference.In) (reference.Out, error) { return one(eval(heightLaw(in), in)) },
		Tests: []string{"TestHeightLawsAgainstDraws", "TestLargestAgainstDraws", "TestRayleighIsTheGeneralForm"}}
}

var waveSeaSubjects = []reference.Subject{
	// Breaking.
	{Name: "wave.McCowanHeight", Func: wave.McCowanHeight, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("depth", "m", reference.NonNegative, 2)}, Results: []reference.Result{{Name: "height", Unit: "m"}}, Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.MicheHeight", Func: wave.MicheHeight, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("length", "m", reference.Positive, 50), waveDepth},
		Results: []reference.Result{{Name: "height", Unit: "m"}, {Name: "amplitude", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			h := wave.MicheHeight(in.F("length"), in.F("depth"))
			return reference.Out{"height": h, "amplitude": h / 2}, nil
		},
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Wave.BreakingHeight", Func: wave.Wave.BreakingHeight, Class: reference.Composed,
		Args: []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity}, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval:  func(in reference.In) (reference.Out, error) { return one(solved(in).BreakingHeight()) },
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Wave.LimitOfSea", Func: wave.Wave.LimitOfSea, Class: reference.Formula,
		Args: []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity}, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval:  func(in reference.In) (reference.Out, error) { return one(solved(in).LimitOfSea()) },
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.WeggelIndex", Func: wave.Water.WeggelIndex, Class: reference.Composed,
		Args:    []reference.Arg{waveHeight, waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "index", Unit: "1"}, {Name: "depth", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			i := water(in).WeggelIndex(in.F("height"), in.F("period"), in.F("slope"))
			return reference.Out{"index": i, "depth": in.F("height") / i}, nil
		},
		Tests: []string{"TestPropertyWeggel"}},
	{Name: "wave.Water.WeggelHeight", Func: wave.Water.WeggelHeight, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("depth", "m", reference.NonNegative, 2), waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).WeggelHeight(in.F("depth"), in.F("period"), in.F("slope")))
		},
		Tests: []string{"TestPropertyWeggel"}},
	{Name: "wave.WeggelLaw.Index", Func: wave.WeggelLaw.Index, Class: reference.Formula,
		Args:    []reference.Arg{weggelA, weggelB, waveHeight, waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "index", Unit: "1"}, {Name: "depth", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			i := wave.WeggelLaw{A: in.F("a"), B: in.F("b")}.Index(water(in), in.F("height"), in.F("period"), in.F("slope"))
			return reference.Out{"index": i, "depth": in.F("height") / i}, nil
		},
		Tests: []string{"TestPropertyWeggel"}},
	{Name: "wave.WeggelLaw.Height", Func: wave.WeggelLaw.Height, Class: reference.Formula,
		Args:    []reference.Arg{weggelA, weggelB, reference.Number("depth", "m", reference.NonNegative, 2), waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.WeggelLaw{A: in.F("a"), B: in.F("b")}.Height(water(in), in.F("depth"), in.F("period"), in.F("slope")))
		},
		Tests: []string{"TestPropertyWeggel"}},
	data("wave.WeggelCEM", wave.WeggelCEM, "TestPropertyWeggel"), data("wave.WeggelSPM", wave.WeggelSPM, "TestPropertyWeggel"),
	data("wave.WeggelACES", wave.WeggelACES, "TestPropertyWeggel"),
	{Name: "wave.GodaLaw.Height", Func: wave.GodaLaw.Height, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("a", "1", reference.Real, 0.17), reference.Number("k", "1", reference.Real, 11), reference.Number("depth", "m", reference.NonNegative, 2), waveSolvedPeriod, waveSlope},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.GodaLaw{A: in.F("a"), K: in.F("k")}.Height(in.F("depth"), in.F("period"), in.F("slope")))
		},
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.GodaLaw.HeightIn", Func: wave.GodaLaw.HeightIn, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("a", "1", reference.Real, 0.17), reference.Number("k", "1", reference.Real, 11), reference.Number("depth", "m", reference.NonNegative, 2), waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.GodaLaw{A: in.F("a"), K: in.F("k")}.HeightIn(water(in), in.F("depth"), in.F("period"), in.F("slope")))
		},
		Tests: []string{"TestBreakingLimits"}},
	data("wave.Goda1970", wave.Goda1970, "TestBreakingLimits"), data("wave.Goda2010", wave.Goda2010, "TestBreakingLimits"),
	data("wave.GodaSignificant", wave.GodaSignificant, "TestBreakingLimits"),
	{Name: "wave.Water.KomarGaughan", Func: wave.Water.KomarGaughan, Class: reference.Formula,
		Args: []reference.Arg{waveHeight, waveSolvedPeriod, waveGravity}, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: waterOf(wave.Water.KomarGaughan, "height", "period"), Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.KomarGaughanCEM", Func: wave.Water.KomarGaughanCEM, Class: reference.Formula,
		Args: []reference.Arg{waveHeight, waveSolvedPeriod, waveGravity}, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: waterOf(wave.Water.KomarGaughanCEM, "height", "period"), Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.MunkHeight", Func: wave.Water.MunkHeight, Class: reference.Formula,
		Args: []reference.Arg{waveHeight, waveSolvedPeriod, waveGravity}, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: waterOf(wave.Water.MunkHeight, "height", "period"), Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.SingamsettiWind", Func: wave.Water.SingamsettiWind, Class: reference.Formula,
		Args:    []reference.Arg{waveHeight, waveSolvedPeriod, reference.Number("slope", "1", reference.Positive, 0.02), waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).SingamsettiWind(in.F("height"), in.F("period"), in.F("slope")))
		},
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.Break", Func: wave.Water.Break, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("height", "m", reference.Positive, 1), waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}, {Name: "depth", Unit: "m"}, {Name: "type", Unit: "text"}}, Unknown: []string{"none"},
		Eval: func(in reference.In) (reference.Out, error) {
			b := water(in).Break(in.F("height"), in.F("period"), in.F("slope"))
			return reference.Out{"height": b.Height, "depth": b.Depth, "type": b.Type.String()}, nil
		},
		Tests: []string{"TestPropertyBreakComposed", "TestBreakingBadInput"}},
	{Name: "wave.KamphuisIndex", Func: wave.KamphuisIndex, Class: reference.Formula,
		Args: []reference.Arg{waveSlope}, Results: []reference.Result{{Name: "index", Unit: "1"}}, Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.KamphuisHeight", Func: wave.Water.KamphuisHeight, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("depth", "m", reference.Positive, 2), waveSolvedPeriod, waveSlope, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).KamphuisHeight(in.F("depth"), in.F("period"), in.F("slope")))
		},
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.Water.SurfSimilarity", Func: wave.Water.SurfSimilarity, Class: reference.Formula,
		Args:    []reference.Arg{waveSlope, reference.Number("height", "m", reference.Positive, 1), waveSolvedPeriod, waveGravity},
		Results: []reference.Result{{Name: "xi", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).SurfSimilarity(in.F("slope"), in.F("height"), in.F("period")))
		},
		Tests: []string{"TestBreakingLimits"}},
	{Name: "wave.DeepBreakerType", Func: wave.DeepBreakerType, Class: reference.Formula, Args: []reference.Arg{waveXi},
		Results: []reference.Result{{Name: "type", Unit: "text"}}, Unknown: []string{"none"}, Regimes: breakerRegimes(0.5, 3.3),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": wave.DeepBreakerType(in.F("xi")).String()}, nil
		},
		Tests: []string{"TestBreakerTypes"}},
	{Name: "wave.ShoreBreakerType", Func: wave.ShoreBreakerType, Class: reference.Formula, Args: []reference.Arg{waveXi},
		Results: []reference.Result{{Name: "type", Unit: "text"}}, Unknown: []string{"none"}, Regimes: breakerRegimes(0.4, 2.0),
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": wave.ShoreBreakerType(in.F("xi")).String()}, nil
		},
		Tests: []string{"TestBreakerTypes"}},
	{Name: "wave.Water.BreakerType", Func: wave.Water.BreakerType, Class: reference.Composed,
		Args:    []reference.Arg{waveSlope, reference.Number("height", "m", reference.Positive, 1), waveSolvedPeriod, waveGravity},
		Results: []reference.Result{{Name: "type", Unit: "text"}}, Unknown: []string{"none"},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": water(in).BreakerType(in.F("slope"), in.F("height"), in.F("period")).String()}, nil
		},
		Tests: []string{"TestPropertyBreakComposed"}},
	composedDefault("wave.WeggelIndex", wave.WeggelIndex, []reference.Arg{waveHeight, waveSolvedPeriod, waveSlope}, "1"),
	composedDefault("wave.WeggelHeight", wave.WeggelHeight, []reference.Arg{reference.Number("depth", "m", reference.NonNegative, 2), waveSolvedPeriod, waveSlope}, "m"),
	composedDefault("wave.KomarGaughan", wave.KomarGaughan, []reference.Arg{waveHeight, waveSolvedPeriod}, "m"),
	composedDefault("wave.SurfSimilarity", wave.SurfSimilarity, []reference.Arg{waveSlope, reference.Number("height", "m", reference.Positive, 1), waveSolvedPeriod}, "1"),
	{Name: "wave.Break", Func: wave.Break, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("height", "m", reference.Positive, 1), waveSolvedPeriod, waveSlope},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.Break(in.F("height"), in.F("period"), in.F("slope")).Height)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestPropertyBreakComposed"}},

	// Reflection.
	{Name: "wave.ReflectionLaw.Coefficient", Func: wave.ReflectionLaw.Coefficient, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("a", "1", reference.NonNegative, 0.6), reference.Number("b", "1", reference.NonNegative, 6.6), waveXi},
		Results: []reference.Result{{Name: "coefficient", Unit: "1"}},
		Regimes: []reference.Regime{
			{Name: "slope", In: func(in reference.In) bool { x := in.F("xi"); return in.F("a")*x*x <= in.F("b")+x*x }},
			{Name: "cut at 1", In: func(in reference.In) bool { x := in.F("xi"); return in.F("a")*x*x > in.F("b")+x*x }},
			{Name: "wall", In: func(in reference.In) bool { return in.F("xi") > 1e100 }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.ReflectionLaw{A: in.F("a"), B: in.F("b")}.Coefficient(in.F("xi")))
		},
		Tests: []string{"TestReflectionLaws"}},
	data("wave.SmoothSlope", wave.SmoothSlope, "TestReflectionLaws"), data("wave.SmoothSlopeIrregular", wave.SmoothSlopeIrregular, "TestReflectionLaws"),
	data("wave.RubbleSlope", wave.RubbleSlope, "TestReflectionLaws"), data("wave.DolosSlope", wave.DolosSlope, "TestReflectionLaws"),
	data("wave.TetrapodSlope", wave.TetrapodSlope, "TestReflectionLaws"), data("wave.SandBeach", wave.SandBeach, "TestReflectionLaws"),
	{Name: "wave.BattjesReflection", Func: wave.BattjesReflection, Class: reference.Formula, Args: []reference.Arg{waveXi},
		Results: []reference.Result{{Name: "coefficient", Unit: "1"}}, Tests: []string{"TestReflectionLaws"}},
	{Name: "wave.TanhReflection.Coefficient", Func: wave.TanhReflection.Coefficient, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("a", "1", reference.Positive, 0.16), reference.Number("b", "1", reference.Positive, 1.43), waveXi},
		Results: []reference.Result{{Name: "coefficient", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.TanhReflection{A: in.F("a"), B: in.F("b")}.Coefficient(in.F("xi")))
		},
		Tests: []string{"TestReflectionLaws"}},
	data("wave.SmoothTanh", wave.SmoothTanh, "TestReflectionLaws"), data("wave.ImpermeableRockTanh", wave.ImpermeableRockTanh, "TestReflectionLaws"),
	data("wave.PermeableRockTanh", wave.PermeableRockTanh, "TestReflectionLaws"),
	{Name: "wave.Shores", Func: wave.Shores, Class: reference.Data, Tests: []string{"TestReflectionLaws"}},
	{Name: "wave.Wave.ReflectedHeight", Func: wave.Wave.ReflectedHeight, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight, waveK, reference.Number("distance", "m", reference.NonNegative, 10), waveAngle},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(solved(in).ReflectedHeight(in.F("height"), in.F("coefficient"), in.F("distance"), in.F("angle")))
		},
		Tests: []string{"TestPropertyReflectedHeight"}},
	{Name: "wave.ReflectedEnvelope", Func: wave.ReflectedEnvelope, Class: reference.Formula, Args: []reference.Arg{waveHeight, waveK},
		Results: []reference.Result{{Name: "most", Unit: "m"}, {Name: "least", Unit: "m"}}, Tests: []string{"TestPropertyReflectedHeight"}},
	{Name: "wave.ReflectionOfEnvelope", Func: wave.ReflectionOfEnvelope, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("most", "m", reference.Positive, 1.5), reference.Number("least", "m", reference.NonNegative, 0.5)},
		Results: []reference.Result{{Name: "coefficient", Unit: "1"}}, Tests: []string{"TestPropertyReflectedHeight"}},
	{Name: "wave.ReflectedSea", Func: wave.ReflectedSea, Class: reference.Formula, Args: []reference.Arg{waveHs, waveK},
		Results: []reference.Result{{Name: "height", Unit: "m"}}, Tests: []string{"TestPropertyReflectedHeight"}},

	// Heights in a sea.
	{Name: "wave.HeightLaw.Exceedance", Func: wave.HeightLaw.Exceedance, Class: reference.Formula,
		Args:    []reference.Arg{waveScale, waveShape, reference.Number("height", "m", reference.NonNegativeInf, 3), waveHs},
		Results: []reference.Result{{Name: "probability", Unit: "1"}}, Regimes: heightRegimes,
		Eval: func(in reference.In) (reference.Out, error) {
			return one(heightLaw(in).Exceedance(in.F("height"), in.F("hs")))
		},
		Tests: []string{"TestPropertyHeights", "TestHeightLawsAgainstDraws"}},
	heightSubject("wave.HeightLaw.ExceededByOneIn", wave.HeightLaw.ExceededByOneIn,
		func(l wave.HeightLaw, in reference.In) float64 { return l.ExceededByOneIn(in.F("n"), in.F("hs")) }, waveN, waveHs),
	heightSubject("wave.HeightLaw.MeanOfHighest", wave.HeightLaw.MeanOfHighest,
		func(l wave.HeightLaw, in reference.In) float64 { return l.MeanOfHighest(in.F("n"), in.F("hs")) }, waveN, waveHs),
	heightSubject("wave.HeightLaw.RootMeanSquare", wave.HeightLaw.RootMeanSquare,
		func(l wave.HeightLaw, in reference.In) float64 { return l.RootMeanSquare(in.F("hs")) }, waveHs),
	heightSubject("wave.HeightLaw.LargestMode", wave.HeightLaw.LargestMode,
		func(l wave.HeightLaw, in reference.In) float64 { return l.LargestMode(in.F("n"), in.F("hs")) }, waveN, waveHs),
	heightSubject("wave.HeightLaw.LargestMean", wave.HeightLaw.LargestMean,
		func(l wave.HeightLaw, in reference.In) float64 { return l.LargestMean(in.F("n"), in.F("hs")) }, waveN, waveHs),
	heightSubject("wave.HeightLaw.LargestQuantile", wave.HeightLaw.LargestQuantile,
		func(l wave.HeightLaw, in reference.In) float64 {
			return l.LargestQuantile(in.F("p"), in.F("n"), in.F("hs"))
		},
		reference.Number("p", "1", reference.Domain{Lo: 0, Hi: 1, LoOpen: true, HiOpen: true}, 0.5), waveN, waveHs),
	data("wave.Rayleigh", wave.Rayleigh, "TestRayleighIsTheGeneralForm"), data("wave.Forristall", wave.Forristall, "TestPropertyHeights"),
	{Name: "wave.WavesIn", Func: wave.WavesIn, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("time", "s", reference.NonNegative, 3600), reference.Number("tz", "s", reference.Positive, 5)},
		Results: []reference.Result{{Name: "n", Unit: "1"}}, Tests: []string{"TestHeightsBadInput"}},
	{Name: "wave.TimeToOneIn", Func: wave.TimeToOneIn, Class: reference.Formula,
		Args:    []reference.Arg{waveN, reference.Number("tz", "s", reference.Positive, 5)},
		Results: []reference.Result{{Name: "time", Unit: "s"}}, Tests: []string{"TestHeightsBadInput"}},
	{Name: "wave.SignificantOfRMS", Func: wave.SignificantOfRMS, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("rms", "m", reference.NonNegative, 1)}, Results: []reference.Result{{Name: "hs", Unit: "m"}}, Tests: []string{"TestHeightsBadInput"}},
	{Name: "wave.SignificantOfThird", Func: wave.SignificantOfThird, Class: reference.Formula,
		Args: []reference.Arg{waveThird}, Results: []reference.Result{{Name: "hs", Unit: "m"}}, Tests: []string{"TestHeightsBadInput"}},
	{Name: "wave.ShallowOneInHundred", Func: wave.ShallowOneInHundred, Class: reference.Formula,
		Args: []reference.Arg{waveThird, waveDepth}, Results: []reference.Result{{Name: "height", Unit: "m"}}, Tests: []string{"TestHeightsBadInput"}},
	{Name: "wave.ShallowOneInThousand", Func: wave.ShallowOneInThousand, Class: reference.Formula,
		Args: []reference.Arg{waveThird, waveDepth}, Results: []reference.Result{{Name: "height", Unit: "m"}}, Tests: []string{"TestHeightsBadInput"}},

	// Systems and groups.
	{Name: "wave.Combine", Func: wave.Combine, Class: reference.Formula,
		Args:    []reference.Arg{reference.List("heights", "m", reference.NonNegative, 1, 2, 0.5)},
		Results: []reference.Result{{Name: "hs", Unit: "m"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(wave.Combine(in.L("heights")...)) },
		Tests:   []string{"TestCombine"}},
	systemSubject("wave.CombineEnergyPeriods", wave.CombineEnergyPeriods, wave.CombineEnergyPeriods),
	systemSubject("wave.CombineMeanPeriods", wave.CombineMeanPeriods, wave.CombineMeanPeriods),
	{Name: "wave.Water.Sets", Func: wave.Water.Sets, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("height1", "m", reference.NonNegative, 1), reference.Number("period1", "s", reference.Positive, 10),
			reference.Number("height2", "m", reference.NonNegative, 0.8), reference.Number("period2", "s", reference.Positive, 9), waveDepth, waveGravity},
		Results: []reference.Result{{Name: "period", Unit: "s"}, {Name: "waves", Unit: "1"}, {Name: "highest", Unit: "m"}, {Name: "lowest", Unit: "m"}, {Name: "length", Unit: "m"}, {Name: "speed", Unit: "m/s"}},
		Regimes: []reference.Regime{
			{Name: "two periods", In: func(in reference.In) bool { return in.F("period1") != in.F("period2") }},
			{Name: "one period", In: func(in reference.In) bool { return in.F("period1") == in.F("period2") }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			b := water(in).Sets(in.F("height1"), in.F("period1"), in.F("height2"), in.F("period2"), in.F("depth"))
			return reference.Out{"period": b.Period, "waves": b.Waves, "highest": b.Highest, "lowest": b.Lowest, "length": b.Length, "speed": b.Speed}, nil
		},
		Tests: []string{"TestSetsAgainstTheSum"}},
	{Name: "wave.Sets", Func: wave.Sets, Class: reference.Composed,
		Args: []reference.Arg{reference.Number("height1", "m", reference.NonNegative, 1), reference.Number("period1", "s", reference.Positive, 10),
			reference.Number("height2", "m", reference.NonNegative, 0.8), reference.Number("period2", "s", reference.Positive, 9), waveDepth},
		Results: []reference.Result{{Name: "period", Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.Sets(in.F("height1"), in.F("period1"), in.F("height2"), in.F("period2"), in.F("depth")).Period)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestSetsAgainstTheSum"}},
	{Name: "wave.HeightCorrelation", Func: wave.HeightCorrelation, Class: reference.Formula, Args: []reference.Arg{waveKappa}, Results: []reference.Result{{Unit: "1"}}, Tests: []string{"TestHeightCorrelation", "TestRunsAgainstDraws"}},
	{Name: "wave.RunLengths", Func: wave.RunLengths, Class: reference.Formula, Args: []reference.Arg{reference.Number("level", "1", reference.NonNegative, 1), waveKappa},
		Results: []reference.Result{{Name: "high", Unit: "1"}, {Name: "total", Unit: "1"}, {Name: "next", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			r := wave.RunLengths(in.F("level"), in.F("kappa"))
			return reference.Out{"high": r.High, "total": r.Total, "next": r.Next}, nil
		},
		Regimes: []reference.Regime{
			{Name: "independent", In: func(in reference.In) bool { return in.F("kappa") == 0 && in.F("level") > 0 }},
			{Name: "correlated", In: func(in reference.In) bool { return in.F("kappa") > 0 && in.F("kappa") < 1 && in.F("level") > 0 }},
			{Name: "for ever", In: func(in reference.In) bool { return in.F("kappa") == 1 || in.F("level") == 0 }},
		},
		NoneFound: map[string]string{"correlated": "Kimura 1980, Battjes and van Vledder 1984 and their followers show curves; no table of run lengths for a given correlation could be opened"},
		Tests:     []string{"TestRunsAgainstDraws", "TestPropertyRuns"}},
	{Name: "wave.KappaOfCorrelation", Func: wave.KappaOfCorrelation, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("correlation", "1", reference.Fraction, 0.3)},
		Results: []reference.Result{{Name: "kappa", Unit: "1"}}, Tests: []string{"TestPropertyRuns"}},

	// Swell from afar.
	{Name: "wave.Water.SwellTime", Func: wave.Water.SwellTime, Class: reference.Formula,
		Args: []reference.Arg{waveMetres, waveSolvedPeriod, waveGravity}, Results: []reference.Result{{Name: "time", Unit: "s"}},
		Eval: waterOf(wave.Water.SwellTime, "distance", "period"), Tests: []string{"TestPropertySwell"}},
	{Name: "wave.Water.SwellPeriod", Func: wave.Water.SwellPeriod, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("distance", "m", reference.Positive, 1e6), reference.Number("age", "s", reference.Positive, 1e5), waveGravity},
		Results: []reference.Result{{Name: "period", Unit: "s"}},
		Eval:    waterOf(wave.Water.SwellPeriod, "distance", "age"), Tests: []string{"TestPropertySwell"}},
	{Name: "wave.Water.OriginOfArrivals", Func: wave.Water.OriginOfArrivals, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("first", "s", reference.Positive, 12), reference.Number("second", "s", reference.Positive, 8), reference.Number("delay", "s", reference.Positive, 1e5), waveGravity},
		Results: []reference.Result{{Name: "distance", Unit: "m"}, {Name: "age", Unit: "s", Without: []string{"gravity"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			o := water(in).OriginOfArrivals(in.F("first"), in.F("second"), in.F("delay"))
			return reference.Out{"distance": o.Distance, "age": o.Age}, nil
		},
		Tests: []string{"TestPropertySwell"}},
	{Name: "wave.Water.OriginOfRidge", Func: wave.Water.OriginOfRidge, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("frequency", "Hz", reference.Positive, 0.07), reference.Number("rate", "Hz", reference.Positive, 1e-7), waveGravity},
		Results: []reference.Result{{Name: "distance", Unit: "m", Without: []string{"frequency"}}, {Name: "age", Unit: "s", Without: []string{"gravity"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			o := water(in).OriginOfRidge(in.F("frequency"), in.F("rate"))
			return reference.Out{"distance": o.Distance, "age": o.Age}, nil
		},
		Tests: []string{"TestPropertySwell"}},
	{Name: "wave.Water.RidgeSlope", Func: wave.Water.RidgeSlope, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("distance", "m", reference.Positive, 1e6), waveGravity},
		Results: []reference.Result{{Name: "rate", Unit: "Hz"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(water(in).RidgeSlope(in.F("distance"))) },
		Tests:   []string{"TestPropertySwell"}},
	{Name: "wave.Water.SwellWindow", Func: wave.Water.SwellWindow, Class: reference.Formula,
		Args:    []reference.Arg{waveMetres, reference.Number("length", "m", reference.NonNegative, 3e5), reference.Number("lifetime", "s", reference.NonNegative, 86400), waveSolvedPeriod, waveGravity},
		Results: []reference.Result{{Name: "from", Unit: "s"}, {Name: "to", Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			a, b := water(in).SwellWindow(in.F("distance"), in.F("length"), in.F("lifetime"), in.F("period"))
			return reference.Out{"from": a, "to": b}, nil
		},
		Tests: []string{"TestPropertySwell"}},
	composedDefault("wave.SwellTime", wave.SwellTime, []reference.Arg{waveMetres, waveSolvedPeriod}, "s"),
	composedDefault("wave.SwellPeriod", wave.SwellPeriod, []reference.Arg{reference.Number("distance", "m", reference.Positive, 1e6), reference.Number("age", "s", reference.Positive, 1e5)}, "s"),
	composedDefault("wave.RidgeSlope", wave.RidgeSlope, []reference.Arg{reference.Number("distance", "m", reference.Positive, 1e6)}, "Hz"),
	{Name: "wave.OriginOfArrivals", Func: wave.OriginOfArrivals, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("first", "s", reference.Positive, 12), reference.Number("second", "s", reference.Positive, 8), reference.Number("delay", "s", reference.Positive, 1e5)},
		Results: []reference.Result{{Name: "distance", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.OriginOfArrivals(in.F("first"), in.F("second"), in.F("delay")).Distance)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestPropertySwell"}},
	{Name: "wave.OriginOfRidge", Func: wave.OriginOfRidge, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("frequency", "Hz", reference.Positive, 0.07), reference.Number("rate", "Hz", reference.Positive, 1e-7)},
		Results: []reference.Result{{Name: "age", Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.OriginOfRidge(in.F("frequency"), in.F("rate")).Age)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestPropertySwell"}},
	{Name: "wave.SwellWindow", Func: wave.SwellWindow, Class: reference.Composed,
		Args:    []reference.Arg{waveMetres, reference.Number("length", "m", reference.NonNegative, 3e5), reference.Number("lifetime", "s", reference.NonNegative, 86400), waveSolvedPeriod},
		Results: []reference.Result{{Name: "from", Unit: "s"}, {Name: "to", Unit: "s"}}, Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestPropertySwell"}},

	// A moving board.
	{Name: "wave.Wave.Encounter", Func: wave.Wave.Encounter, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, reference.Number("speed", "m/s", reference.NonNegative, 3), reference.Number("angle", "deg", reference.Angle, 20)},
		Results: []reference.Result{{Name: "frequency", Unit: "Hz"}, {Name: "period", Unit: "s"}, {Name: "closing", Unit: "m/s"}},
		Regimes: []reference.Regime{
			{Name: "the waves pass", In: func(in reference.In) bool { return encounter(in).Frequency > 0 }},
			{Name: "the board passes", In: func(in reference.In) bool { return encounter(in).Frequency < 0 }},
			{Name: "together", In: func(in reference.In) bool { return encounter(in).Frequency == 0 }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			m := encounter(in)
			return reference.Out{"frequency": m.Frequency, "period": m.Period, "closing": m.Closing}, nil
		},
		Tests: []string{"TestPropertyEncounter"}},
	{Name: "wave.Water.MostEncounters", Func: wave.Water.MostEncounters, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("speed", "m/s", reference.NonNegative, 2), waveGravity},
		Results: []reference.Result{{Name: "frequency", Unit: "Hz"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(water(in).MostEncounters(in.F("speed"))) },
		Tests:   []string{"TestEncounters"}},
	composedDefault("wave.MostEncounters", wave.MostEncounters, []reference.Arg{reference.Number("speed", "m/s", reference.NonNegative, 2)}, "Hz"),
	{Name: "wave.MasterEncounterPeriod", Func: wave.MasterEncounterPeriod, Class: reference.Formula,
		Args:      []reference.Arg{waveSolvedPeriod, reference.Number("speed", "m/s", reference.NonNegative, 5), reference.Number("angle", "deg", reference.Angle, 180)},
		Results:   []reference.Result{{Name: "period", Unit: "s"}},
		NoneFound: map[string]string{"all": "no worked example of the formula in MSC.1/Circ.1228 could be opened"},
		Tests:     []string{"TestEncounters"}},
	{Name: "wave.Wave.SameSpeedCourse", Func: wave.Wave.SameSpeedCourse, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("period", "s", reference.Positive, 3), waveDepth, waveGravity, reference.Number("speed", "m/s", reference.Positive, 6)},
		Results: []reference.Result{{Name: "angle", Unit: "deg"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(solved(in).SameSpeedCourse(in.F("speed"))) },
		Tests:   []string{"TestPropertyEncounter"}},
}

func breakerRegimes(spilling, plunging float64) []reference.Regime {
	return []reference.Regime{
		{Name: "spilling", In: func(in reference.In) bool { return in.F("xi") < spilling }},
		{Name: "plunging", In: func(in reference.In) bool { return in.F("xi") >= spilling && in.F("xi") <= plunging }},
		{Name: "surging", In: func(in reference.In) bool { return in.F("xi") > plunging }},
	}
}

func encounter(in reference.In) wave.Meeting {
	return solved(in).Encounter(in.F("speed"), in.F("angle"))
}

func systemSubject(name string, f any, g func(...wave.System) (float64, float64)) reference.Subject {
	return reference.Subject{Name: name, Func: f, Class: reference.Formula,
		Args:    []reference.Arg{reference.List("heights", "m", reference.NonNegative, 1, 2), reference.List("periods", "s", reference.Positive, 5, 10)},
		Results: []reference.Result{{Name: "period", Unit: "s"}, {Name: "hs", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			h, p := in.L("heights"), in.L("periods")
			s := make([]wave.System, min(len(h), len(p)))
			for i := range s {
				s[i] = wave.System{Hs: h[i], Period: p[i]}
			}
			hs, t := g(s...)
			return reference.Out{"period": t, "hs": hs}, nil
		},
		Tests: []string{"TestCombine"}}
}
