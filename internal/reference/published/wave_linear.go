package published

import (
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
)

// one returns a single result.
func one(x float64) (reference.Out, error) { return reference.Out{"": x}, nil }

// solved returns the wave of the arguments gravity, density, period and depth.
func solved(in reference.In) wave.Wave { return water(in).Solve(in.F("period"), in.F("depth")) }

// composedDefault declares a package function that is a method of the default water.
func composedDefault(name string, f any, args []reference.Arg, unit string) reference.Subject {
	return reference.Subject{Name: name, Func: f, Class: reference.Composed, Args: args,
		Results: []reference.Result{{Name: "value", Unit: unit}},
		Tests:   []string{"TestPackageFunctionsOfOtherShapes"}}
}

// data declares an exported variable.
func data(name string, v any, test string) reference.Subject {
	return reference.Subject{Name: name, Func: v, Class: reference.Data, Tests: []string{test}}
}

var (
	waveSolvedPeriod = reference.Number("period", "s", reference.Positive, 8)
	waveHeight       = reference.Number("height", "m", reference.NonNegative, 1)
	waveZ            = reference.Number("z", "m", reference.Real, -1) // zero or negative; below the bottom it is NaN
	wavePhase        = reference.Number("phase", "deg", reference.Angle, 30)
	waveAngle        = reference.Number("angle", "deg", reference.Domain{Lo: -90, Hi: 90, LoOpen: true, HiOpen: true}, 20)
	waveFrom         = reference.Number("from", "m", reference.PositiveInf, 20)
	waveTo           = reference.Number("to", "m", reference.PositiveInf, 6)
	waveAlong        = reference.Number("along", "m/s", reference.Real, -0.5)
	waveRate         = reference.Number("rate", "m/s", reference.NonNegative, 0.5)
)

// Whether the bottom is there at all: the two forms of the profiles under a wave.
var depthRegimes = []reference.Regime{
	{Name: "finite depth", In: func(in reference.In) bool { return in.F("depth") <= math.MaxFloat64 }},
	{Name: "endless depth", In: func(in reference.In) bool { return math.IsInf(in.F("depth"), 1) }},
}

func currentWave(in reference.In) wave.CurrentWave {
	return water(in).OnCurrent(in.F("period"), in.F("depth"), in.F("along"))
}

var waveLinearSubjects = []reference.Subject{
	// On currents.
	{Name: "wave.Water.OnCurrent", Func: wave.Water.OnCurrent, Class: reference.Formula,
		Args: []reference.Arg{waveSolvedPeriod, waveDepth, waveAlong, waveGravity},
		Results: []reference.Result{{Name: "height ratio", Unit: "1"}, {Name: "length", Unit: "m"}, {Name: "k", Unit: "1/m"}, {Name: "sigma", Unit: "rad/s"},
			{Name: "c", Unit: "m/s"}, {Name: "cg", Unit: "m/s"}, {Name: "ground speed", Unit: "m/s"}, {Name: "group ground speed", Unit: "m/s"},
			{Name: "steepness ratio", Unit: "1"}, {Name: "state", Unit: "text"}},
		Unknown: []string{"unknown"},
		Regimes: []reference.Regime{
			{Name: "with the wave", In: func(in reference.In) bool { return in.F("along") > 0 }},
			{Name: "still water", In: func(in reference.In) bool { return in.F("along") == 0 }},
			{Name: "against the wave", In: func(in reference.In) bool { return in.F("along") < 0 && currentWave(in).State == wave.Runs }},
			{Name: "blocked", In: func(in reference.In) bool { return currentWave(in).State == wave.Blocked }},
			{Name: "endless depth", In: func(in reference.In) bool { return math.IsInf(in.F("depth"), 1) }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			w := currentWave(in)
			return reference.Out{"height ratio": w.HeightRatio, "length": w.Length, "k": w.Wavenumber, "sigma": 2 * pi / w.IntrinsicPeriod,
				"c": w.IntrinsicPhaseSpeed, "cg": w.IntrinsicGroupSpeed, "ground speed": w.PhaseSpeed, "group ground speed": w.GroupSpeed,
				"steepness ratio": w.SteepnessRatio, "state": w.State.String()}, nil
		},
		Tests: []string{"TestCurrentAgainstPlainTwin", "TestPropertyDoppler", "TestDeepCurrentClosedForm", "TestPropertyBlocking"}},
	{Name: "wave.Water.StoppingCurrent", Func: wave.Water.StoppingCurrent, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "current", Unit: "m/s"}}, Regimes: depthRegimes,
		NoneFound: map[string]string{"finite depth": "coastal manuals, the wave-current literature and lecture notes: only the deep-water limit is printed as a number"},
		Eval:      waterOf(wave.Water.StoppingCurrent, "period", "depth"),
		Tests:     []string{"TestPropertyBlocking", "TestDeepCurrentClosedForm"}},
	{Name: "wave.CurrentWave.Stopping", Func: wave.CurrentWave.Stopping, Class: reference.Composed,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "current", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).OnCurrent(in.F("period"), in.F("depth"), 0).Stopping())
		},
		Tests: []string{"TestPropertyBlocking"}},
	{Name: "wave.AlongWave", Func: wave.AlongWave, Class: reference.Formula,
		Args:    []reference.Arg{waveRate, reference.Number("angle", "deg", reference.Angle, 30)},
		Results: []reference.Result{{Name: "along", Unit: "m/s"}}, Tests: []string{"TestAlongWave"}},
	{Name: "wave.CurrentWave.Height", Func: wave.CurrentWave.Height, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveAlong, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Regimes: []reference.Regime{
			{Name: "by wave action", In: func(in reference.In) bool { _, b := currentWave(in).Height(in.F("height")); return !b }},
			{Name: "breaks", In: func(in reference.In) bool { _, b := currentWave(in).Height(in.F("height")); return b }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			h, _ := currentWave(in).Height(in.F("height"))
			return one(h)
		},
		Tests: []string{"TestCurrentHeight"}},
	{Name: "wave.CurrentWave.BreakingHeight", Func: wave.CurrentWave.BreakingHeight, Class: reference.Composed,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveAlong, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(currentWave(in).BreakingHeight()) },
		Tests:   []string{"TestBreakingLimits"}},
	{Name: "wave.Water.CrossStream", Func: wave.Water.CrossStream, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveRate, waveAngle, waveGravity},
		Results: []reference.Result{{Name: "angle", Unit: "deg"}, {Name: "length", Unit: "m"}, {Name: "period", Unit: "s"}, {Name: "height ratio", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c := water(in).CrossStream(in.F("period"), in.F("depth"), in.F("rate"), in.F("angle"))
			return reference.Out{"angle": c.Angle, "length": c.Length, "period": c.IntrinsicPeriod, "height ratio": c.HeightRatio}, nil
		},
		Tests: []string{"TestCrossStreamClosedForm", "TestPropertyCrossStream"}},
	{Name: "wave.OnCurrent", Func: wave.OnCurrent, Class: reference.Composed, Args: []reference.Arg{waveSolvedPeriod, waveDepth, waveAlong},
		Results: []reference.Result{{Name: "length", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.OnCurrent(in.F("period"), in.F("depth"), in.F("along")).Length)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestCurrentBadInput"}},
	{Name: "wave.CrossStream", Func: wave.CrossStream, Class: reference.Composed, Args: []reference.Arg{waveSolvedPeriod, waveDepth, waveRate, waveAngle},
		Results: []reference.Result{{Name: "length", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.CrossStream(in.F("period"), in.F("depth"), in.F("rate"), in.F("angle")).Length)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes"}},
	composedDefault("wave.StoppingCurrent", wave.StoppingCurrent, []reference.Arg{waveSolvedPeriod, waveDepth}, "m/s"),

	// The limits of linear theory.
	{Name: "wave.Wave.Steepness", Func: wave.Wave.Steepness, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "steepness", Unit: "1"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(solved(in).Steepness(in.F("height"))) },
		Tests:   []string{"TestRemarks"}},
	{Name: "wave.Wave.Ursell", Func: wave.Wave.Ursell, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "number", Unit: "1"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(solved(in).Ursell(in.F("height"))) },
		Tests:   []string{"TestRemarks"}},
	{Name: "wave.Wave.Remarks", Func: wave.Wave.Remarks, Class: reference.Composed,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "remarks", Unit: "text"}}, Unknown: []string{"not a wave"},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": solved(in).Remarks(in.F("height")).String()}, nil
		},
		Tests: []string{"TestRemarks", "TestOrbitBadInput"}},
	{Name: "wave.Wave.SpeedCorrection", Func: wave.Wave.SpeedCorrection, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "factor", Unit: "1"}}, Regimes: depthRegimes,
		Eval:  func(in reference.In) (reference.Out, error) { return one(solved(in).SpeedCorrection(in.F("height"))) },
		Tests: []string{"TestSteepWaves"}},
	{Name: "wave.Water.SteepSpeed", Func: wave.Water.SteepSpeed, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}}, Regimes: depthRegimes,
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).SteepSpeed(in.F("period"), in.F("depth"), in.F("height")))
		},
		Tests: []string{"TestSteepWaves"}},
	composedDefault("wave.SteepSpeed", wave.SteepSpeed, []reference.Arg{waveSolvedPeriod, waveDepth, waveHeight}, "m/s"),

	// Under the surface.
	{Name: "wave.Wave.Orbit", Func: wave.Wave.Orbit, Class: reference.Formula,
		Args: []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight, waveZ, wavePhase},
		Results: []reference.Result{{Name: "u", Unit: "m/s"}, {Name: "w", Unit: "m/s"}, {Name: "du", Unit: "m/s2"}, {Name: "dw", Unit: "m/s2"},
			{Name: "x", Unit: "m"}, {Name: "z", Unit: "m"}}, Regimes: depthRegimes,
		Eval: func(in reference.In) (reference.Out, error) {
			o := solved(in).Orbit(in.F("height"), in.F("z"), in.F("phase"))
			return reference.Out{"u": o.Along, "w": o.Up, "du": o.AlongRate, "dw": o.UpRate, "x": o.AlongShift, "z": o.UpShift}, nil
		},
		Tests: []string{"TestPropertyOrbit", "TestDeepOrbit"}},
	{Name: "wave.Wave.Excursion", Func: wave.Wave.Excursion, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight, waveZ},
		Results: []reference.Result{{Name: "along", Unit: "m"}, {Name: "up", Unit: "m"}}, Regimes: depthRegimes,
		Eval: func(in reference.In) (reference.Out, error) {
			a, u := solved(in).Excursion(in.F("height"), in.F("z"))
			return reference.Out{"along": a, "up": u}, nil
		},
		Tests: []string{"TestPropertyOrbit"}},
	{Name: "wave.Wave.OrbitalSpeed", Func: wave.Wave.OrbitalSpeed, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight, waveZ},
		Results: []reference.Result{{Name: "along", Unit: "m/s"}, {Name: "up", Unit: "m/s"}}, Regimes: depthRegimes,
		Eval: func(in reference.In) (reference.Out, error) {
			a, u := solved(in).OrbitalSpeed(in.F("height"), in.F("z"))
			return reference.Out{"along": a, "up": u}, nil
		},
		Tests: []string{"TestPropertyOrbit"}},
	{Name: "wave.Wave.Elevation", Func: wave.Wave.Elevation, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveHeight, wavePhase},
		Results: []reference.Result{{Name: "elevation", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(solved(in).Elevation(in.F("height"), in.F("phase")))
		},
		Tests: []string{"TestPropertyOrbit"}},
	{Name: "wave.Wave.PressureResponse", Func: wave.Wave.PressureResponse, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveZ},
		Results: []reference.Result{{Name: "factor", Unit: "1"}}, Regimes: depthRegimes,
		Eval:  func(in reference.In) (reference.Out, error) { return one(solved(in).PressureResponse(in.F("z"))) },
		Tests: []string{"TestPropertyOrbit", "TestDeepOrbit"}},
	{Name: "wave.Wave.Pressure", Func: wave.Wave.Pressure, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveDensity, waveHeight, waveZ, wavePhase},
		Results: []reference.Result{{Name: "pressure", Unit: "Pa"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(solved(in).Pressure(in.F("height"), in.F("z"), in.F("phase")))
		},
		Tests: []string{"TestFluxIsPressureTimesVelocity"}},
	{Name: "wave.Wave.StokesDrift", Func: wave.Wave.StokesDrift, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight, waveZ},
		Results: []reference.Result{{Name: "drift", Unit: "m/s"}}, Regimes: depthRegimes,
		NoneFound: map[string]string{"finite depth": "textbooks and manuals: the formula is printed, no worked number"},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(solved(in).StokesDrift(in.F("height"), in.F("z")))
		},
		Tests: []string{"TestPropertyOrbit", "TestPropertyStokesTransport"}},
	{Name: "wave.Wave.StokesTransport", Func: wave.Wave.StokesTransport, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveHeight},
		Results: []reference.Result{{Name: "transport", Unit: "m2/s"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(solved(in).StokesTransport(in.F("height"))) },
		Tests:   []string{"TestPropertyStokesTransport"}},

	// Energy.
	{Name: "wave.Water.Energy", Func: wave.Water.Energy, Class: reference.Formula,
		Args:    []reference.Arg{waveGravity, waveDensity, waveHeight},
		Results: []reference.Result{{Name: "energy", Unit: "J/m2"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(water(in).Energy(in.F("height"))) },
		Tests:   []string{"TestFluxIsPressureTimesVelocity"}},
	{Name: "wave.Water.EnergyOfSea", Func: wave.Water.EnergyOfSea, Class: reference.Formula,
		Args:    []reference.Arg{waveGravity, waveDensity, waveHeight},
		Results: []reference.Result{{Name: "energy", Unit: "J/m2"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(water(in).EnergyOfSea(in.F("height"))) },
		Tests:   []string{"TestFluxIsPressureTimesVelocity"}},
	{Name: "wave.Wave.Flux", Func: wave.Wave.Flux, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity, waveDensity, waveHeight},
		Results: []reference.Result{{Name: "flux", Unit: "W/m"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(solved(in).Flux(in.F("height"))) },
		Tests:   []string{"TestFluxIsPressureTimesVelocity", "TestPropertyEnergyConserved"}},
	{Name: "wave.Water.DeepFluxOfSea", Func: wave.Water.DeepFluxOfSea, Class: reference.Formula,
		Args:    []reference.Arg{waveGravity, waveDensity, waveHeight, reference.Number("te", "s", reference.Positive, 8)},
		Results: []reference.Result{{Name: "flux", Unit: "W/m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).DeepFluxOfSea(in.F("height"), in.F("te")))
		},
		Tests: []string{"TestFluxIsPressureTimesVelocity"}},
	composedDefault("wave.Energy", wave.Energy, []reference.Arg{waveHeight}, "J/m2"),
	composedDefault("wave.EnergyOfSea", wave.EnergyOfSea, []reference.Arg{waveHeight}, "J/m2"),
	composedDefault("wave.DeepFluxOfSea", wave.DeepFluxOfSea, []reference.Arg{waveHeight, reference.Number("te", "s", reference.Positive, 8)}, "W/m"),

	// Towards the shore.
	{Name: "wave.Wave.Shoaling", Func: wave.Wave.Shoaling, Class: reference.Formula,
		Args:    []reference.Arg{waveSolvedPeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "factor", Unit: "1"}},
		Eval:    func(in reference.In) (reference.Out, error) { return one(solved(in).Shoaling()) },
		Tests:   []string{"TestShoalingTurningPoints", "TestPropertyEnergyConserved"}},
	{Name: "wave.Water.Shoal", Func: wave.Water.Shoal, Class: reference.Formula,
		Args:    []reference.Arg{waveHeight, waveSolvedPeriod, waveFrom, waveTo, waveGravity},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).Shoal(in.F("height"), in.F("period"), in.F("from"), in.F("to")))
		},
		Tests: []string{"TestPropertyEnergyConserved"}},
	{Name: "wave.Water.Refract", Func: wave.Water.Refract, Class: reference.Formula,
		Args:    []reference.Arg{waveAngle, waveSolvedPeriod, waveFrom, waveTo, waveGravity},
		Results: []reference.Result{{Name: "angle", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(water(in).Refract(in.F("angle"), in.F("period"), in.F("from"), in.F("to")))
		},
		Tests: []string{"TestPropertyEnergyConserved", "TestShoalBadInput"}},
	{Name: "wave.Water.Transform", Func: wave.Water.Transform, Class: reference.Formula,
		Args:    []reference.Arg{waveHeight, waveAngle, waveSolvedPeriod, waveFrom, waveTo, waveGravity, waveDensity},
		Results: []reference.Result{{Name: "height", Unit: "m", Without: []string{"density"}}, {Name: "angle", Unit: "deg", Without: []string{"density"}}, {Name: "ks", Unit: "1", Without: []string{"density"}}, {Name: "kr", Unit: "1", Without: []string{"density"}}, {Name: "energy", Unit: "J/m2"}},
		Eval: func(in reference.In) (reference.Out, error) {
			w := water(in)
			t := w.Transform(in.F("height"), in.F("angle"), in.F("period"), in.F("from"), in.F("to"))
			return reference.Out{"height": t.Height, "angle": t.Angle, "ks": t.Shoaling, "kr": t.Refraction, "energy": w.Energy(t.Height)}, nil
		},
		Tests: []string{"TestPropertyEnergyConserved"}},
	composedDefault("wave.Shoal", wave.Shoal, []reference.Arg{waveHeight, waveSolvedPeriod, waveFrom, waveTo}, "m"),
	composedDefault("wave.Refract", wave.Refract, []reference.Arg{waveAngle, waveSolvedPeriod, waveFrom, waveTo}, "deg"),
	{Name: "wave.Transform", Func: wave.Transform, Class: reference.Composed, Args: []reference.Arg{waveHeight, waveAngle, waveSolvedPeriod, waveFrom, waveTo},
		Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return one(wave.Transform(in.F("height"), in.F("angle"), in.F("period"), in.F("from"), in.F("to")).Height)
		},
		Tests: []string{"TestPackageFunctionsOfOtherShapes", "TestPropertyEnergyConserved"}},

	// Slices.
	{Name: "wave.Water.Wavenumbers", Func: wave.Water.Wavenumbers, Class: reference.Composed, Tests: []string{"TestBatch", "TestPlainSpeeds"}},
	{Name: "wave.Water.Speeds", Func: wave.Water.Speeds, Class: reference.Composed, Tests: []string{"TestBatch", "TestPlainSpeeds"}},
	{Name: "wave.Wavenumbers", Func: wave.Wavenumbers, Class: reference.Composed, Tests: []string{"TestBatch"}},
	{Name: "wave.Speeds", Func: wave.Speeds, Class: reference.Composed, Tests: []string{"TestBatch"}},
}
