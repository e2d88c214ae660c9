package published

import (
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
)

var waveDispersionSubjects = []reference.Subject{
	{Name: "wave.Water.Wavenumber", Func: wave.Water.Wavenumber, Class: reference.Formula,
		Args:    []reference.Arg{wavePeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "k", Unit: "1/m"}}, Regimes: dispersionRegimes,
		Eval:  waterOf(wave.Water.Wavenumber, "period", "depth"),
		Tests: []string{"TestPropertyDispersionRelation", "TestHostileInput"}},
	{Name: "wave.Water.Length", Func: wave.Water.Length, Class: reference.Formula,
		Args:    []reference.Arg{wavePeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "length", Unit: "m"}}, Regimes: dispersionRegimes,
		Eval:  waterOf(wave.Water.Length, "period", "depth"),
		Tests: []string{"TestPropertyDispersionRelation", "TestDeepAndShallowLimits"}},
	{Name: "wave.Water.PhaseSpeed", Func: wave.Water.PhaseSpeed, Class: reference.Formula,
		Args:    []reference.Arg{wavePeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}}, Regimes: dispersionRegimes,
		Eval:  waterOf(wave.Water.PhaseSpeed, "period", "depth"),
		Tests: []string{"TestPropertyDispersionRelation", "TestDeepAndShallowLimits"}},
	{Name: "wave.Water.GroupSpeed", Func: wave.Water.GroupSpeed, Class: reference.Formula,
		Args:    []reference.Arg{wavePeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}}, Regimes: dispersionRegimes,
		Eval:  waterOf(wave.Water.GroupSpeed, "period", "depth"),
		Tests: []string{"TestPropertyGroupSpeedIsTheSlope", "TestDeepAndShallowLimits"}},
	{Name: "wave.Water.Solve", Func: wave.Water.Solve, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("period", "s", reference.Positive, 8), waveDepth, waveGravity},
		Results: []reference.Result{{Name: "length", Unit: "m"}, {Name: "k", Unit: "1/m"}, {Name: "c", Unit: "m/s"},
			{Name: "cg", Unit: "m/s"}, {Name: "n", Unit: "1"}, {Name: "kh", Unit: "1"}, {Name: "omega", Unit: "rad/s"},
			{Name: "tanh", Unit: "1"}, {Name: "d/L", Unit: "1"}, {Name: "d/L0", Unit: "1"}},
		Regimes: dispersionRegimes,
		Eval: func(in reference.In) (reference.Out, error) {
			w := water(in).Solve(in.F("period"), in.F("depth"))
			return reference.Out{"length": w.Length, "k": w.Wavenumber, "c": w.PhaseSpeed, "cg": w.GroupSpeed, "n": w.SpeedRatio,
				"kh": w.Wavenumber * w.Depth, "omega": w.AngularFrequency, "tanh": math.Tanh(w.Wavenumber * w.Depth), "d/L": w.RelativeDepth(),
				"d/L0": w.RelativeDepth() * w.Length / water(in).Length(w.Period, math.Inf(1))}, nil
		},
		Tests: []string{"TestPropertyDispersionRelation", "TestContinuityAcrossBranches"}},
	{Name: "wave.Wavenumber", Func: wave.Wavenumber, Class: reference.Composed, Args: []reference.Arg{wavePeriod, waveDepth},
		Results: []reference.Result{{Name: "k", Unit: "1/m"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.Length", Func: wave.Length, Class: reference.Composed, Args: []reference.Arg{wavePeriod, waveDepth},
		Results: []reference.Result{{Name: "length", Unit: "m"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.PhaseSpeed", Func: wave.PhaseSpeed, Class: reference.Composed, Args: []reference.Arg{wavePeriod, waveDepth},
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.GroupSpeed", Func: wave.GroupSpeed, Class: reference.Composed, Args: []reference.Arg{wavePeriod, waveDepth},
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.Solve", Func: wave.Solve, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("period", "s", reference.Positive, 8), waveDepth},
		Results: []reference.Result{{Name: "length", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": wave.Solve(in.F("period"), in.F("depth")).Length}, nil
		},
		Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.Water.PeriodOfLength", Func: wave.Water.PeriodOfLength, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("length", "m", reference.PositiveInf, 40), waveDepth, waveGravity},
		Results: []reference.Result{{Name: "period", Unit: "s"}, {Name: "omega", Unit: "rad/s"}},
		Regimes: []reference.Regime{
			{Name: "deep to the last bit", In: func(in reference.In) bool { return in.F("depth")/in.F("length") >= 20/(2*pi) }},
			{Name: "bottom felt", In: func(in reference.In) bool { return in.F("depth")/in.F("length") < 20/(2*pi) }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			p := water(in).PeriodOfLength(in.F("length"), in.F("depth"))
			return reference.Out{"period": p, "omega": 2 * pi / p}, nil
		},
		Tests: []string{"TestPropertyRoundTrips", "TestInverseHasNoAnswer"}},
	{Name: "wave.Water.PeriodOfSpeed", Func: wave.Water.PeriodOfSpeed, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("speed", "m/s", reference.Positive, 6), waveDepth, waveGravity},
		Results: []reference.Result{{Name: "period", Unit: "s"}},
		Regimes: []reference.Regime{
			{Name: "endless depth", In: func(in reference.In) bool { return in.F("depth") > 1e300 }},
			{Name: "finite depth", In: func(in reference.In) bool { return in.F("depth") <= 1e300 }},
		},
		Eval:  waterOf(wave.Water.PeriodOfSpeed, "speed", "depth"),
		Tests: []string{"TestPropertyRoundTrips", "TestInverseHasNoAnswer"}},
	{Name: "wave.Water.DepthOfLength", Func: wave.Water.DepthOfLength, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("period", "s", reference.Positive, 8), reference.Number("length", "m", reference.Positive, 40), waveGravity},
		Results: []reference.Result{{Name: "depth", Unit: "m"}},
		Eval:    waterOf(wave.Water.DepthOfLength, "period", "length"),
		Tests:   []string{"TestPropertyRoundTrips", "TestInverseHasNoAnswer"}},
	{Name: "wave.PeriodOfLength", Func: wave.PeriodOfLength, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("length", "m", reference.PositiveInf, 40), waveDepth},
		Results: []reference.Result{{Name: "period", Unit: "s"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.PeriodOfSpeed", Func: wave.PeriodOfSpeed, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("speed", "m/s", reference.Positive, 6), waveDepth},
		Results: []reference.Result{{Name: "period", Unit: "s"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.DepthOfLength", Func: wave.DepthOfLength, Class: reference.Composed,
		Args:    []reference.Arg{reference.Number("period", "s", reference.Positive, 8), reference.Number("length", "m", reference.Positive, 40)},
		Results: []reference.Result{{Name: "depth", Unit: "m"}}, Tests: []string{"TestPackageFunctionsAreTheDefaultWater", "TestHostileInput"}},
	{Name: "wave.Wave.RelativeDepth", Func: wave.Wave.RelativeDepth, Class: reference.Formula,
		Args:    []reference.Arg{wavePeriod, waveDepth, waveGravity},
		Results: []reference.Result{{Name: "ratio", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": water(in).Solve(in.F("period"), in.F("depth")).RelativeDepth()}, nil
		},
		Tests: []string{"TestRegime"}},
	{Name: "wave.Wave.Regime", Func: wave.Wave.Regime, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("period", "s", reference.Positive, 8), waveDepth, waveGravity},
		Results: []reference.Result{{Name: "regime", Unit: "text"}}, Unknown: []string{"none"},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": water(in).Solve(in.F("period"), in.F("depth")).Regime().String()}, nil
		},
		Tests: []string{"TestRegime"}},
	{Name: "wave.RegimeLimits.Regime", Func: wave.RegimeLimits.Regime, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("shallow", "1", reference.Real, 0.05), reference.Number("deep", "1", reference.Real, 0.5),
			reference.Number("depth", "m", reference.PositiveInf, 20), reference.Number("length", "m", reference.PositiveInf, 100)},
		Results: []reference.Result{{Name: "regime", Unit: "text"}}, Unknown: []string{"none"},
		Regimes: []reference.Regime{
			{Name: "deep", In: func(in reference.In) bool { return in.F("depth")/in.F("length") >= in.F("deep") }},
			{Name: "shallow", In: func(in reference.In) bool { return in.F("depth")/in.F("length") <= in.F("shallow") }},
			{Name: "intermediate", In: func(in reference.In) bool {
				r := in.F("depth") / in.F("length")
				return r > in.F("shallow") && r < in.F("deep")
			}},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			l := wave.RegimeLimits{Shallow: in.F("shallow"), Deep: in.F("deep")}
			return reference.Out{"": l.Regime(in.F("depth"), in.F("length")).String()}, nil
		},
		Tests: []string{"TestRegime"}},
	{Name: "wave.UsualLimits", Func: wave.UsualLimits, Class: reference.Data, Tests: []string{"TestRegimeLimitsLetPass"}},
	{Name: "wave.OldLimits", Func: wave.OldLimits, Class: reference.Data, Tests: []string{"TestRegimeLimitsLetPass"}},
	{Name: "wave.WideLimits", Func: wave.WideLimits, Class: reference.Data, Tests: []string{"TestRegimeLimitsLetPass"}},
}

const (
	acesLinear   = "Linear Wave Theory, Example Problem, pp. 2-1-4 to 2-1-5"
	acesSnell    = "Linear Wave Theory with Snell's Law, Example Problem, pp. 3-1-5 to 3-1-6"
	twentyDigits = "the print has twenty digits, a double sixteen"
	acesG        = "g = 32.17 ft/s2 is not printed; it is the value that reproduces every digit of the example"
)

var waveDispersionChecks = []reference.Check{
	// One regular wave, textbook and manual.
	{ID: "kh-apsley-q1", Subject: "wave.Water.Solve", In: "period=13 s, depth=20 m, gravity=9.81 m/s2", Result: "kh", Printed: "0.7499",
		Basis: reference.Printed, Source: "Apsley2023", Locator: "Q1(a), p. 1"},
	{ID: "length-apsley-q1", Subject: "wave.Water.Length", In: "period=13 s, depth=20 m, gravity=9.81 m/s2", Printed: "167.6", Unit: "m",
		Basis: reference.Printed, Source: "Apsley2023", Locator: "Q1(a), p. 1"},
	{ID: "speed-apsley-q1", Subject: "wave.Water.PhaseSpeed", In: "period=13 s, depth=20 m, gravity=9.81 m/s2", Printed: "12.89", Unit: "m/s",
		Basis: reference.Printed, Source: "Apsley2023", Locator: "Q1(a), p. 1"},
	{ID: "speed-aces-linear", Subject: "wave.Water.PhaseSpeed", In: "period=8 s, depth=20 ft, gravity=32.17 ft/s2", Printed: "23.74", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesLinear, Note: acesG},
	{ID: "group-speed-aces-linear", Subject: "wave.Water.GroupSpeed", In: "period=8 s, depth=20 ft, gravity=32.17 ft/s2", Printed: "20.87", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesLinear, Note: acesG},
	{ID: "length-aces-snell-25ft", Subject: "wave.Water.Length", In: "period=7.5 s, depth=25 ft, gravity=32.17 ft/s2", Printed: "193.27", Unit: "ft",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Tol: 0.006, Why: "the source solves with Hunt's approximation, good to 0.01 %", Note: acesG},
	{ID: "length-aces-snell-deep", Subject: "wave.Water.Length", In: "period=7.5 s, depth=+Inf m, gravity=32.17 ft/s2", Printed: "288.00", Unit: "ft",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "length-aces-snell-20ft", Subject: "wave.Water.Length", In: "period=7.5 s, depth=20 ft, gravity=32.17 ft/s2", Printed: "176.34", Unit: "ft",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Tol: 0.006, Why: "the source solves with Hunt's approximation, good to 0.01 %", Note: acesG},
	{ID: "speed-aces-snell-25ft", Subject: "wave.Water.PhaseSpeed", In: "period=7.5 s, depth=25 ft, gravity=32.17 ft/s2", Printed: "25.77", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "speed-aces-snell-deep", Subject: "wave.Water.PhaseSpeed", In: "period=7.5 s, depth=+Inf m, gravity=32.17 ft/s2", Printed: "38.40", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "speed-aces-snell-20ft", Subject: "wave.Water.PhaseSpeed", In: "period=7.5 s, depth=20 ft, gravity=32.17 ft/s2", Printed: "23.51", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "group-speed-aces-snell-25ft", Subject: "wave.Water.GroupSpeed", In: "period=7.5 s, depth=25 ft, gravity=32.17 ft/s2", Printed: "21.46", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "group-speed-aces-snell-deep", Subject: "wave.Water.GroupSpeed", In: "period=7.5 s, depth=+Inf m, gravity=32.17 ft/s2", Printed: "19.20", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "group-speed-aces-snell-20ft", Subject: "wave.Water.GroupSpeed", In: "period=7.5 s, depth=20 ft, gravity=32.17 ft/s2", Printed: "20.31", Unit: "ft/s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell, Note: acesG},
	{ID: "frequency-gran-10s", Subject: "wave.Water.Solve", In: "period=10 s, depth=+Inf m, gravity=9.81 m/s2", Result: "omega", Printed: "0.62832",
		Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, worked case"},
	{ID: "wavenumber-gran-10s", Subject: "wave.Water.Wavenumber", In: "period=10 s, depth=+Inf m, gravity=9.81 m/s2", Printed: "0.040243",
		Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, worked case"},
	{ID: "length-gran-10s", Subject: "wave.Water.Length", In: "period=10 s, depth=+Inf m, gravity=9.81 m/s2", Printed: "156.13",
		Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, worked case"},
	{ID: "speed-gran-10s", Subject: "wave.Water.PhaseSpeed", In: "period=10 s, depth=+Inf m, gravity=9.81 m/s2", Printed: "15.613",
		Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, worked case"},
	{ID: "group-speed-gran-10s", Subject: "wave.Water.GroupSpeed", In: "period=10 s, depth=+Inf m, gravity=9.81 m/s2", Printed: "7.8066",
		Basis: reference.Printed, Source: "Gran1992", Locator: "calculation page F15, worked case", Tol: 6e-5,
		Why: "the source rounds twice: half of its 15.6131 is 7.80655, printed 7.8066; the value is 7.80654996"},
	{ID: "relative-depth-cem-ii-1-3", Subject: "wave.Water.Length", In: "period=10 s, depth=+Inf m, gravity=9.81 m/s2", Printed: "156", Unit: "m",
		Basis: reference.Printed, Source: "CEM-II-1", Locator: "Example Problem II-1-3, p. II-1-19"},
	{ID: "kh-carvalho-row-1", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=0.00628947478196154736 m, gravity=1 m/s2", Result: "kh", Printed: "0.07938943729908014280",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 1 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-5", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=0.03144737390980773678 m, gravity=1 m/s2", Result: "kh", Printed: "0.17826889991300520766",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 5 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-16", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=0.10063159651138475770 m, gravity=1 m/s2", Result: "kh", Printed: "0.32264454166061545815",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 16 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-32", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=0.20126319302276951539 m, gravity=1 m/s2", Result: "kh", Printed: "0.46423944043306192286",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 32 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-100", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=0.62894747819615481887 m, gravity=1 m/s2", Result: "kh", Printed: "0.88635496873040697796",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 100 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-160", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=1.00631596511384757697 m, gravity=1 m/s2", Result: "kh", Printed: "1.20494336918814459736",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 160 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-250", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=1.57236869549038682514 m, gravity=1 m/s2", Result: "kh", Printed: "1.68448595348773944025",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 250 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-400", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=2.51578991278461927550 m, gravity=1 m/s2", Result: "kh", Printed: "2.54685058010887166446",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 400 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-800", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=5.03157982556923855100 m, gravity=1 m/s2", Result: "kh", Printed: "5.03200837992432070678",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 800 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	{ID: "kh-carvalho-row-999", Subject: "wave.Water.Solve", In: "period=6.283185307179586 s, depth=6.28318530717958623200 m, gravity=1 m/s2", Result: "kh", Printed: "6.28322912672843347792",
		Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 999 (counted from 0)", Tol: 2e-15, Why: twentyDigits},
	// The same relations asked the other way.
	{ID: "period-of-length-apsley-q1", Subject: "wave.Water.PeriodOfLength", In: "length=167.6 m, depth=20 m, gravity=9.81 m/s2", Printed: "13", Unit: "s",
		Basis: reference.Printed, Source: "Apsley2023", Locator: "Q1(a), p. 1, asked backwards", Tol: 0.005, Why: "the length is printed to 0.05 m"},
	{ID: "period-of-length-aces-deep", Subject: "wave.Water.PeriodOfLength", In: "length=288.00 ft, depth=+Inf m, gravity=32.17 ft/s2", Printed: "7.5", Unit: "s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell + ", asked backwards", Note: acesG},
	{ID: "period-of-speed-apsley-q1", Subject: "wave.Water.PeriodOfSpeed", In: "speed=12.89 m/s, depth=20 m, gravity=9.81 m/s2", Printed: "13", Unit: "s",
		Basis: reference.Printed, Source: "Apsley2023", Locator: "Q1(a), p. 1, asked backwards", Tol: 0.05, Why: "the speed is printed to 0.005 m/s"},
	{ID: "period-of-speed-aces-deep", Subject: "wave.Water.PeriodOfSpeed", In: "speed=38.40 ft/s, depth=+Inf m, gravity=32.17 ft/s2", Printed: "7.5", Unit: "s",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell + ", asked backwards", Note: acesG},
	{ID: "depth-of-length-apsley-q1", Subject: "wave.Water.DepthOfLength", In: "period=13 s, length=167.6 m, gravity=9.81 m/s2", Printed: "20", Unit: "m",
		Basis: reference.Printed, Source: "Apsley2023", Locator: "Q1(a), p. 1, asked backwards", Tol: 0.05, Why: "the length is printed to 0.05 m"},
	{ID: "depth-of-length-aces-25ft", Subject: "wave.Water.DepthOfLength", In: "period=7.5 s, length=193.27 ft, gravity=32.17 ft/s2", Printed: "25", Unit: "ft",
		Basis: reference.Printed, Source: "ACES1992", Locator: acesSnell + ", asked backwards", Note: acesG},
	// Limits that hold exactly.
	{ID: "speed-shallow-exact", Subject: "wave.Water.PhaseSpeed", In: "period=+Inf s, depth=10 m, gravity=10 m/s2", Printed: "10", Basis: reference.Exact},
	{ID: "group-speed-shallow-exact", Subject: "wave.Water.GroupSpeed", In: "period=+Inf s, depth=10 m, gravity=10 m/s2", Printed: "10", Basis: reference.Exact},
	{ID: "length-shallow-exact", Subject: "wave.Water.Length", In: "period=1e9 s, depth=10 m, gravity=10 m/s2", Printed: "1e10", Basis: reference.Exact},
	{ID: "wavenumber-shallow-exact", Subject: "wave.Water.Wavenumber", In: "period=6.283185307179586e9 s, depth=10 m, gravity=10 m/s2", Printed: "1e-10", Basis: reference.Exact,
		Tol: 1e-22, Why: "a small number wants a relative tolerance"},
	{ID: "wavenumber-carvalho-row-160", Subject: "wave.Water.Wavenumber", In: "period=6.283185307179586 s, depth=1.00631596511384757697 m, gravity=1 m/s2",
		Printed: "1.197381", Basis: reference.Table, Source: "Carvalho2026", Locator: "table of k0h and kh, row 160, kh divided by the depth"},
	// Which water it is.
	{ID: "regime-sorensen-3-3-1", Subject: "wave.Wave.Regime", In: "period=14 s, depth=4 m, gravity=9.81 m/s2", Printed: "shallow",
		Basis: reference.Printed, Source: "Sorensen2006", Locator: "Example 3.3-1, p. 64",
		Note: "the example then uses sqrt(gd) = 6.26 m/s, 1.4 % above the whole relation's 6.18 at d/L = 0.046: it is no check of the solver"},
	{ID: "regime-deep-exact", Subject: "wave.RegimeLimits.Regime", In: "shallow=1/20, deep=1/2, depth=50 m, length=100 m", Printed: "deep",
		Basis: reference.Table, Source: "CEM-II-1", Locator: "Table II-1-1"},
	{ID: "regime-shallow-exact", Subject: "wave.RegimeLimits.Regime", In: "shallow=1/20, deep=1/2, depth=5 m, length=100 m", Printed: "shallow",
		Basis: reference.Table, Source: "CEM-II-1", Locator: "Table II-1-1"},
	{ID: "regime-intermediate-exact", Subject: "wave.RegimeLimits.Regime", In: "shallow=1/20, deep=1/2, depth=20 m, length=100 m", Printed: "intermediate",
		Basis: reference.Table, Source: "CEM-II-1", Locator: "Table II-1-1"},
	{ID: "relative-depth-exact", Subject: "wave.Wave.RelativeDepth", In: "period=6.283185307179586 s, depth=30 m, gravity=1 m/s2", Printed: "4.774648292756860", Basis: reference.Exact},
}
