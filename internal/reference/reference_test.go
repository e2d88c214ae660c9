package reference

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
)

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %v, want %v within %v", what, got, want, tol)
	}
}

// TestTheToleranceIsHalfTheLastDigit: computed from the printed string.
func TestTheToleranceIsHalfTheLastDigit(t *testing.T) {
	for _, c := range []struct {
		printed, unit string
		value, half   float64
	}{
		{"12", "m", 12, 0.5},
		{"12.", "m", 12, 0.5},
		{"0.1410", "m", 0.141, 0.00005},
		{"-7.50", "C", -7.5, 0.005},
		{"1.5e3", "m", 1500, 50},
		{"1.50E-3", "m", 0.0015, 0.000005},
		{" 3 ", "m", 3, 0.5},
		{"1/12", "1", 1.0 / 12, 0},
		{"-1/4", "1", -0.25, 0},
		{"306 52 05.37", "dms", 306 + 52.0/60 + 5.37/3600, 0.005 / 3600},
		{"-37 57 03", "dms", -(37 + 57.0/60 + 3.0/3600), 0.5 / 3600},
		{"12 30", "dms", 12.5, 0.5 / 60},
		{"12 30.5", "dm", 12 + 30.5/60, 0.05 / 60},
		{"04:43", "hh:mm", 4*3600 + 43*60, 30},
		{"-1:30", "hh:mm", -5400, 30},
		{"1:02:03.5", "hms", 3723.5, 0.05},
		{"03:20", "mm:ss", 200, 0.5},
		{"Inf", "m", math.Inf(1), 0.5},
	} {
		v, h, err := parseNumber(c.printed, c.unit)
		if err != nil || v != c.value && !(math.Abs(v-c.value) <= 1e-12*math.Abs(c.value)) {
			t.Errorf("parseNumber(%q, %s) = %v, %v, want %v", c.printed, c.unit, v, err, c.value)
		}
		near(t, fmt.Sprintf("half a digit of %q in %s", c.printed, c.unit), h, c.half, 1e-12*c.half)
	}
	for _, c := range [][2]string{{"", "m"}, {"x", "m"}, {"NaN", "m"}, {"1/0", "1"}, {"a/2", "1"}, {"1 2 3 4", "dms"}, {"", "dms"}, {"1 -2", "dms"}, {"1:2:3", "hh:mm"}, {"12 m", "m"}, {"1,5", "m"}} {
		if v, _, err := parseNumber(c[0], c[1]); err == nil {
			t.Errorf("parseNumber(%q, %s) = %v, want an error", c[0], c[1], v)
		}
	}
}

// TestUnitsAreExact: by their definitions, and back again.
func TestUnitsAreExact(t *testing.T) {
	for _, c := range []struct {
		unit string
		x    float64
		si   float64
	}{
		{"ft", 1, 0.3048}, {"yd", 1, 0.9144}, {"in", 1, 0.0254}, {"mi", 1, 1609.344}, {"nmi", 1, 1852}, {"fathom", 1, 1.8288},
		{"kn", 3600, 1852}, {"mph", 1, 0.44704}, {"km/h", 3.6, 1}, {"lb", 1, 0.45359237}, {"lbf", 1, 4.4482216152605}, {"kgf", 1, 9.80665},
		{"psf", 1, 47.880258980336}, {"F", 212, 100}, {"F", 32, 0}, {"K", 273.15, 0}, {"dF", 9, 5}, {"rad", math.Pi, 180}, {"%", 25, 0.25},
		{"rad/s", 2 * math.Pi, 1}, {"inHg", 1, 3386.389}, {"slug", 1, 14.5939029372064}, {"slug/ft3", 1, 515.378818393196},
		{"lb/ft3", 1, 16.0184633739601}, {"arcmin", 60, 1}, {"arcsec", 3600, 1}, {"d", 1, 86400}, {"cph", 3600, 1},
	} {
		u, err := lookUnit(c.unit)
		if err != nil {
			t.Error(err)
			continue
		}
		near(t, fmt.Sprintf("%v %s", c.x, c.unit), u.toSI(c.x), c.si, 1e-13*math.Max(1, math.Abs(c.si)))
		near(t, c.unit+" and back", u.fromSI(u.toSI(c.x)), c.x, 1e-12*math.Max(1, math.Abs(c.x)))
	}
	for name, u := range units {
		if u.dim == "" || !(u.factor > 0) {
			t.Errorf("unit %s is %+v", name, u)
		}
	}
	if _, err := lookUnit("furlong"); err == nil {
		t.Error("an unknown unit is found")
	}
}

// sum is a subject of every kind of argument.
var sum = Subject{
	Name: "test.Sum", Class: Formula,
	Args:    []Arg{Number("depth", "m", PositiveInf, 3), List("heights", "m", NonNegative, 1, 2), Text("object", "board"), Instant("at", "2026-06-21T04:43:00Z")},
	Results: []Result{{Name: "sum", Unit: "m"}, {Name: "object", Unit: "text"}, {Name: "hour", Unit: "s"}},
	Regimes: []Regime{{"shallow", func(in In) bool { return in.F("depth") < 10 }}, {"deep", func(in In) bool { return in.F("depth") >= 10 }}},
	Eval: func(in In) (Out, error) {
		total := in.F("depth")
		for _, h := range in.L("heights") {
			total += h
		}
		return Out{"sum": total, "object": in.S("object"), "hour": float64(in.T("at").Hour() * 3600)}, nil
	},
}

const sumIn = "depth=10 ft, heights=[1 2.5] km, object=surf board, at=2026-06-21T04:43:00Z"

// TestInputs: each kind of argument, with its unit and without.
func TestInputs(t *testing.T) {
	in, err := sum.ParseIn(sumIn)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "10 ft", in.F("depth"), 3.048, 1e-15)
	if l := in.L("heights"); len(l) != 2 || l[0] != 1000 || l[1] != 2500 {
		t.Errorf("heights %v", l)
	}
	if in.S("object") != "surf board" || in.T("at").Hour() != 4 {
		t.Errorf("object %q at %v", in.S("object"), in.T("at"))
	}
	if in.Has("width") || !math.IsNaN(in.F("width")) || in.L("width") != nil || !in.T("width").IsZero() {
		t.Error("an argument that was not given has a value")
	}
	if in, err = sum.ParseIn("depth=Inf,heights=[1,2],object=x,at=2026-06-21T04:43:00+02:00"); err != nil || !math.IsInf(in.F("depth"), 1) || len(in.L("heights")) != 2 {
		t.Errorf("in the argument's own unit: %v, %v", in, err)
	}
	angle := Subject{Name: "test.Angle", Args: []Arg{Number("lat", "deg", Latitude, 1)}}
	for text, want := range map[string]float64{"lat=-37 57 03 dms": -(37 + 57.0/60 + 3.0/3600), "lat=0.5 rad": 90 / math.Pi, "lat=12": 12, "lat=50 %": math.NaN()} {
		in, err := angle.ParseIn(text)
		if math.IsNaN(want) {
			if err == nil {
				t.Errorf("%s is accepted", text)
			}
			continue
		}
		if err != nil {
			t.Error(err)
			continue
		}
		near(t, text, in.F("lat"), want, 1e-13)
	}
	if l := (In{"x": {Num: []float64{1}}}).L("x"); len(l) == 1 {
		l[0] = 5
		if (In{"x": {Num: []float64{1}}}).L("x")[0] != 1 {
			t.Error("the list is not a copy")
		}
	}
}

// TestBadInputs: each is refused, saying what.
func TestBadInputs(t *testing.T) {
	const rest = ", heights=[1] m, object=x, at=2026-06-21T04:43:00Z"
	for text, want := range map[string]string{
		"depth=3 m":                   "missing",
		"depth=3 m, depth=3 m" + rest: "twice",
		"width=3 m, depth=3 m" + rest: "no argument",
		"depth" + rest:                "name=value",
		"=3" + rest:                   "name=value",
		"depth=3 furlong" + rest:      "not known",
		"depth=3 s" + rest:            "not a unit of",
		"depth=three m" + rest:        "not a number",
		"depth=NaN" + rest:            "not a number",
		"depth=1, heights=1 m, object=x, at=2026-06-21T04:43:00Z":   "brackets",
		"depth=1, heights=[x] m, object=x, at=2026-06-21T04:43:00Z": "not a number",
		"depth=1, heights=[1] s, object=x, at=2026-06-21T04:43:00Z": "not a unit of",
		"depth=1, heights=[1] m, object=x, at=noon":                 "RFC 3339",
	} {
		if _, err := sum.ParseIn(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("ParseIn(%q): %v, want it to say %q", text, err, want)
		}
	}
}

// TestRun: a check passes inside its tolerance and fails outside it, in the
// unit of the print.
func TestRun(t *testing.T) {
	base := Check{ID: "sum", Subject: "test.Sum", In: sumIn, Printed: "3503.0", Basis: Printed, Source: "X", Locator: "p. 1"}
	with := func(f func(*Check)) Outcome { c := base; f(&c); return c.Run(sum) }
	for name, o := range map[string]Outcome{
		"as printed":        with(func(c *Check) {}),
		"the edge":          with(func(c *Check) { c.Printed = "3503.1"; c.Tol = 0.0520000001 }),
		"in km":             with(func(c *Check) { c.Printed, c.Unit = "3.503", "km" }),
		"a named state":     with(func(c *Check) { c.Printed, c.Result = "surf board", "object" }),
		"hh:mm":             with(func(c *Check) { c.Printed, c.Result, c.Unit = "04:00", "hour", "hh:mm" }),
		"an exact fraction": with(func(c *Check) { c.Basis, c.Printed = Exact, "437881/125" }),
	} {
		if !o.OK || o.Err != nil {
			t.Errorf("%s: %+v", name, o)
		}
	}
	for name, o := range map[string]Outcome{
		"a digit off":         with(func(c *Check) { c.Printed = "3503.2" }),
		"beyond the edge":     with(func(c *Check) { c.Printed = "3503.1"; c.Tol = 0.0519 }),
		"another state":       with(func(c *Check) { c.Printed, c.Result = "board", "object" }),
		"exact and not equal": with(func(c *Check) { c.Basis, c.Printed = Exact, "3503.05" }),
		"no such result":      with(func(c *Check) { c.Result = "mass" }),
		"no such unit":        with(func(c *Check) { c.Unit = "furlong" }),
		"another dimension":   with(func(c *Check) { c.Unit = "s" }),
		"no digits":           with(func(c *Check) { c.Printed = "many" }),
		"bad inputs":          with(func(c *Check) { c.In = "depth=1" }),
	} {
		if o.OK {
			t.Errorf("%s passes: %+v", name, o)
		}
	}
	if o := base.Run(sum); len(o.Regimes) != 1 || o.Regimes[0] != "shallow" {
		t.Errorf("regimes %v", o.Regimes)
	}
	if got := sum.AllRegimes(); len(got) != 2 {
		t.Errorf("AllRegimes %v", got)
	}
	near(t, "Ratio", with(func(c *Check) { c.Printed = "3503.1" }).Ratio(), 0.052/0.05, 1e-6)
}

// TestRunNeverPassesANaN: nor an error, nor a panic.
func TestRunNeverPassesANaN(t *testing.T) {
	c := Check{ID: "x", Subject: "test.X", Printed: "1", Basis: Printed, In: "x=1", Tol: math.MaxFloat64}
	s := Subject{Name: "test.X", Args: []Arg{Number("x", "1", Real, 1)}, Results: []Result{{Name: "y", Unit: "1"}}}
	for name, eval := range map[string]func(In) (Out, error){
		"NaN":       func(In) (Out, error) { return Out{"": math.NaN()}, nil },
		"error":     func(In) (Out, error) { return Out{"": 1.0}, errors.New("no") },
		"panic":     func(In) (Out, error) { panic("no") },
		"nothing":   func(In) (Out, error) { return nil, nil },
		"an int":    func(In) (Out, error) { return Out{"": 1}, nil },
		"a strange": func(In) (Out, error) { return Out{"z": 1.0}, nil },
	} {
		s.Eval = eval
		if o := c.Run(s); o.OK {
			t.Errorf("%s passes", name)
		}
	}
	inf := Subject{Name: "test.Inf", Results: []Result{{Name: "y", Unit: "1"}}, Eval: func(In) (Out, error) { return Out{"": math.Inf(1)}, nil }}
	if o := (Check{Printed: "Inf", Basis: Exact}).Run(inf); !o.OK {
		t.Errorf("infinity for infinity: %+v", o)
	}
	if o := (Check{Printed: "1", Basis: Printed, Tol: 1e300}).Run(inf); o.OK {
		t.Error("infinity passes for 1")
	}
}

// TestReflection: functions of plain numbers need no Eval, and a declaration
// that does not fit its function is an error.
func TestReflection(t *testing.T) {
	s := Subject{Name: "reference.hypot", Func: hypot, Args: []Arg{Number("a", "m", Real, 3), Number("b", "m", Real, 4)}, Results: []Result{{Name: "c", Unit: "m"}}}
	out, err := s.Evaluate(s.Samples())
	if err != nil || out["c"] != 5.0 {
		t.Errorf("hypot: %v, %v", out, err)
	}
	if n := s.FuncName(); n != "reference.hypot" || s.Package() != "reference" {
		t.Errorf("FuncName %q, package %q", n, s.Package())
	}
	if n := (Subject{Func: Check.Run}).FuncName(); n != "reference.Check.Run" {
		t.Errorf("a method is named %q", n)
	}
	if n := (Subject{Func: (*PanicError).Error}).FuncName(); n != "reference.PanicError.Error" {
		t.Errorf("a method of a pointer is named %q", n)
	}
	if n := (Subject{Func: 3.0}).FuncName(); n != "" {
		t.Errorf("a number is named %q", n)
	}
	two := []Arg{Number("a", "m", Real, 3), Number("b", "m", Real, 4)}
	for name, s := range map[string]Subject{
		"too few arguments": {Func: hypot, Args: two[:1], Results: s.Results},
		"too few results":   {Func: hypot, Args: two},
		"not a function":    {Func: 1.0, Args: two, Results: s.Results},
		"variadic":          {Func: func(...float64) float64 { return 0 }, Args: two[:1], Results: s.Results},
		"an int":            {Func: func(int, int) float64 { return 0 }, Args: two, Results: s.Results},
		"an int result":     {Func: func(a, b float64) int { return 0 }, Args: two, Results: s.Results},
	} {
		if out, err := s.Evaluate(s.Samples()); err == nil {
			t.Errorf("%s: %v", name, out)
		}
	}
}

func hypot(a, b float64) float64 { return math.Hypot(a, b) }

// TestSweepCatches: what the sweep of hostile inputs is for.
func TestSweepCatches(t *testing.T) {
	one := func(f func(x float64) Out) Subject {
		return Subject{Name: "test.F", Class: Formula, Args: []Arg{Number("x", "m", Positive, 1)}, Results: []Result{{Name: "y", Unit: "m"}},
			Unknown: []string{"unknown"}, Eval: func(in In) (Out, error) { return f(in.F("x")), nil }}
	}
	strict := func(x float64) float64 {
		if !(x > 0) || math.IsInf(x, 0) {
			return math.NaN()
		}
		return math.Sqrt(x)
	}
	for name, c := range map[string]struct {
		s    Subject
		want string // "" for a clean sweep
	}{
		"a strict formula": {one(func(x float64) Out { return Out{"": strict(x)} }), ""},
		"a clamp that turns NaN into 0": {one(func(x float64) Out {
			if x > 0 && !math.IsInf(x, 1) {
				return Out{"": x}
			}
			return Out{"": 0.0}
		}), "x=NaN"},
		"NaN taken for a small number": {one(func(x float64) Out {
			if x < 0 || x == 0 || math.IsInf(x, 0) {
				return Out{"": math.NaN()}
			}
			if x > 2 {
				return Out{"": 2.0}
			}
			return Out{"": 1.0}
		}), "x=NaN"},
		"a negative root made positive": {one(func(x float64) Out { return Out{"": strict(math.Abs(x))} }), "x=-1"},
		"a verdict from NaN":            {one(func(x float64) Out { return Out{"": "fine"} }), "x=NaN"},
		"a named unknown": {one(func(x float64) Out {
			if math.IsNaN(strict(x)) {
				return Out{"": "unknown"}
			}
			return Out{"": "fine"}
		}), ""},
		"a panic": {one(func(x float64) Out {
			if math.IsNaN(x) {
				panic("NaN")
			}
			return Out{"": strict(x)}
		}), "panics"},
		"an example that gives NaN": {one(func(x float64) Out { return Out{"": math.NaN()} }), "examples"},
		"a missing result":          {one(func(x float64) Out { return Out{"z": math.NaN()} }), "returned no"},
	} {
		var all []string
		for _, err := range c.s.Sweep() {
			all = append(all, err.Error())
		}
		text := strings.Join(all, "\n")
		if c.want == "" && text != "" || !strings.Contains(text, c.want) {
			t.Errorf("%s: the sweep says %q, want %q", name, text, c.want)
		}
	}
	list := Subject{Name: "test.L", Class: Formula, Args: []Arg{List("x", "m", Any, 1, 2)}, Results: []Result{{Name: "y", Unit: "m"}, {Name: "n", Unit: "1", Without: []string{"x"}}},
		Eval: func(in In) (Out, error) {
			l := in.L("x")
			return Out{"y": l[0] + 0*l[1], "n": float64(len(l))}, nil
		}}
	if bad := list.Sweep(); len(bad) > 0 {
		t.Errorf("a list whose every member reaches the result: %v", bad)
	}
	list.Eval = func(in In) (Out, error) { return Out{"y": in.L("x")[0], "n": 2.0}, nil }
	if bad := list.Sweep(); len(bad) == 0 {
		t.Error("a list whose second member is ignored is clean")
	}
}

// TestValidate: what is wrong with a check as data.
func TestValidate(t *testing.T) {
	good := Check{ID: "length-cem", Subject: "wave.Length", In: "x=1", Printed: "0.14", Basis: Printed, Source: "CEM", Locator: "p. 3"}
	if err := good.Validate(); err != nil {
		t.Error(err)
	}
	for name, f := range map[string]func(*Check){
		"no id":               func(c *Check) { c.ID = "" },
		"capitals":            func(c *Check) { c.ID = "Length" },
		"a space":             func(c *Check) { c.ID = "length cem" },
		"an underscore":       func(c *Check) { c.ID = "length_cem" },
		"no basis":            func(c *Check) { c.Basis = "" },
		"nothing printed":     func(c *Check) { c.Printed = "" },
		"no source":           func(c *Check) { c.Source = "" },
		"no locator":          func(c *Check) { c.Locator = "" },
		"practice, sourced":   func(c *Check) { c.Basis = Practice },
		"a NaN tolerance":     func(c *Check) { c.Tol = math.NaN() },
		"a negative one":      func(c *Check) { c.Tol = -1 },
		"an infinite one":     func(c *Check) { c.Tol, c.Why = math.Inf(1), "why" },
		"wide without reason": func(c *Check) { c.Tol = 0.0051 },
		"exact, no reason":    func(c *Check) { c.Basis, c.Tol = Exact, 1e-13 },
	} {
		c := good
		f(&c)
		if c.Validate() == nil {
			t.Errorf("%s passes", name)
		}
	}
	for name, f := range map[string]func(*Check){
		"tighter":         func(c *Check) { c.Tol = 0.001 },
		"half a digit":    func(c *Check) { c.Tol = 0.005 },
		"wide, reasoned":  func(c *Check) { c.Tol, c.Why = 0.01, "chart" },
		"exact, bare":     func(c *Check) { c.Basis, c.Source, c.Locator = Exact, "", "" },
		"practice, bare":  func(c *Check) { c.Basis, c.Source, c.Locator = Practice, "", "" },
		"a state printed": func(c *Check) { c.Printed = "blocked" },
	} {
		c := good
		f(&c)
		if err := c.Validate(); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	for _, b := range Bases {
		if b.Pays() != (b == Printed || b == Table || b == Chart || b == Exact) {
			t.Errorf("%s pays: %v", b, b.Pays())
		}
	}
}

// TestValidUnits: what is wrong with a subject as data.
func TestValidUnits(t *testing.T) {
	if err := ValidUnits(sum); err != nil {
		t.Error(err)
	}
	for name, s := range map[string]Subject{
		"argument's unit":      {Args: []Arg{Number("x", "furlong", Real, 1)}},
		"no name":              {Args: []Arg{Number("", "m", Real, 1)}},
		"a name with a comma":  {Args: []Arg{Number("a,b", "m", Real, 1)}},
		"twice":                {Args: []Arg{Number("x", "m", Real, 1), Number("x", "m", Real, 1)}},
		"example outside":      {Args: []Arg{Number("x", "m", Positive, 0)}},
		"a NaN example":        {Args: []Arg{Number("x", "m", Any, math.NaN())}},
		"a list outside":       {Args: []Arg{List("x", "m", Positive, 1, -1)}},
		"result's unit":        {Results: []Result{{Name: "y", Unit: "furlong"}}},
		"without what is none": {Results: []Result{{Name: "y", Unit: "m", Without: []string{"z"}}}},
	} {
		if ValidUnits(s) == nil {
			t.Errorf("%s passes", name)
		}
	}
}

// TestDomains: what lies in and what does not, NaN never.
func TestDomains(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		d       Domain
		in, out []float64
		text    string
	}{
		{Positive, []float64{5e-324, 1, 1e308}, []float64{0, -1, inf, math.NaN()}, "(0, +Inf)"},
		{PositiveInf, []float64{1, inf}, []float64{0, -inf, math.NaN()}, "(0, +Inf]"},
		{NonNegative, []float64{0, math.Copysign(0, -1)}, []float64{-5e-324, inf, math.NaN()}, "[0, +Inf)"},
		{NonNegativeInf, []float64{0, inf}, []float64{-1, math.NaN()}, "[0, +Inf]"},
		{Real, []float64{-1e308, 0}, []float64{inf, -inf, math.NaN()}, "(-Inf, +Inf)"},
		{Any, []float64{inf, -inf}, []float64{math.NaN()}, "[-Inf, +Inf]"},
		{Fraction, []float64{0, 1}, []float64{1.1, -0.1, math.NaN()}, "[0, 1]"},
		{Latitude, []float64{-90, 90}, []float64{90.1, math.NaN()}, "[-90, 90]"},
		{Between(2, 3), []float64{2, 3}, []float64{1.9, 3.1, math.NaN()}, "[2, 3]"},
	} {
		for _, x := range c.in {
			if !c.d.Contains(x) {
				t.Errorf("%v does not contain %v", c.d, x)
			}
		}
		for _, x := range c.out {
			if c.d.Contains(x) {
				t.Errorf("%v contains %v", c.d, x)
			}
		}
		if c.d.String() != c.text {
			t.Errorf("%v prints as %s", c.text, c.d)
		}
	}
}

// TestVectorsThereAndBack: a check written out and read back is the check.
func TestVectorsThereAndBack(t *testing.T) {
	list := []Check{
		{ID: "sum", Subject: "test.Sum", In: sumIn, Printed: "3503.0", Basis: Printed, Source: "X", Locator: "p. 1, \"a\"\nb", Note: "x, y"},
		{ID: "bare", Subject: "test.Sum", In: "depth=Inf, heights=[1 2], object=x, at=2026-06-21T04:43:00Z", Printed: "x", Result: "object", Basis: Exact},
		{ID: "wide", Subject: "test.Sum", In: "depth=12, heights=[], object=x, at=2026-06-21T04:43:00Z", Printed: "0.012", Unit: "km", Tol: 0.001, Why: "chart", Basis: Chart},
	}
	var vectors []Vector
	for _, c := range list {
		v, err := NewVector(sum, c.Run(sum))
		if err != nil {
			t.Fatal(err)
		}
		vectors = append(vectors, v)
	}
	if got := vectors[1].Inputs; got != "depth=Inf m, heights=[1 2] m, object=x, at=2026-06-21T04:43:00Z" {
		t.Errorf("inputs with their units: %s", got)
	}
	var b bytes.Buffer
	if err := WriteVectors(&b, vectors); err != nil {
		t.Fatal(err)
	}
	back, err := ReadVectors(&b)
	if err != nil {
		t.Fatal(err)
	}
	for i, v := range back {
		if v != vectors[i] {
			t.Errorf("read %+v\nwrote %+v", v, vectors[i])
		}
		a, b := list[i].Run(sum), v.Check().Run(sum)
		if a.Got != b.Got || a.GotText != b.GotText || a.Want != b.Want || !(math.Abs(a.Tol-b.Tol) <= 1e-11*a.Tol) || !b.OK {
			t.Errorf("%s: %+v from the file, %+v declared", v.ID, b, a)
		}
	}
	if _, err := NewVector(sum, (Check{In: "depth=1"}).Run(sum)); err == nil {
		t.Error("a check that cannot be run becomes a vector")
	}
}

const head = "id,subject,inputs,result,printed,unit,tolerance,basis,source,locator\n"

// TestVectorFileRefusals: what a vector file may not be.
func TestVectorFileRefusals(t *testing.T) {
	const row = ",wave.Length,period=10 s,length,156.1,m,0.05,printed,X,p. 1\n"
	if got, err := ReadVectors(strings.NewReader("more," + head + "1,a" + row)); err != nil || len(got) != 1 || got[0].ID != "a" || got[0].Tolerance != 0.05 {
		t.Errorf("columns are found by name: %+v, %v", got, err)
	}
	for name, text := range map[string]string{
		"empty":                   "",
		"a column is missing":     strings.Replace(head, "unit,", "", 1),
		"a column is there twice": "id," + head,
		"no id":                   head + row,
		"an id twice":             head + "a" + row + "a" + row,
		"a short row":             head + "a,b\n",
		"a bare quote":            head + "a\"" + row,
		"a NaN tolerance":         head + "a" + strings.Replace(row, "0.05", "NaN", 1),
		"a negative tolerance":    head + "a" + strings.Replace(row, "0.05", "-1", 1),
		"an infinite tolerance":   head + "a" + strings.Replace(row, "0.05", "Inf", 1),
		"no tolerance":            head + "a" + strings.Replace(row, "0.05", "", 1),
	} {
		if got, err := ReadVectors(strings.NewReader(text)); !errors.Is(err, ErrVectors) || got != nil {
			t.Errorf("%s: %v, %v", name, got, err)
		}
	}
}

// TestVectorFileIsBounded: a file without end ends, by its bytes and by its rows.
func TestVectorFileIsBounded(t *testing.T) {
	if testing.Short() {
		t.Skip("reads 32 MB")
	}
	if _, err := ReadVectors(io.MultiReader(strings.NewReader(head+"\""), endless('x'))); err == nil || !strings.Contains(err.Error(), "longer than") {
		t.Errorf("one field without end: %v", err)
	}
	var b strings.Builder
	b.WriteString(head)
	for i := range maxVectors + 1 {
		fmt.Fprintf(&b, "a%d,s,i,r,1,m,1,exact,,\n", i)
	}
	if _, err := ReadVectors(strings.NewReader(b.String())); err == nil || !strings.Contains(err.Error(), "rows") {
		t.Errorf("rows without end: %v", err)
	}
}

type endless byte

func (e endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = byte(e)
	}
	return len(p), nil
}

// FuzzReadVectors: what is read is written and read again alike.
func FuzzReadVectors(f *testing.F) {
	f.Add(head + "a,wave.Length,period=10 s,length,156.1,m,0.05,printed,X,p. 1\n")
	f.Add(head + "a,s,i,r,blocked,text,,exact,,\n")
	f.Add("")
	f.Fuzz(func(t *testing.T, text string) {
		first, err := ReadVectors(strings.NewReader(text))
		if err != nil {
			return
		}
		var b bytes.Buffer
		if err := WriteVectors(&b, first); err != nil {
			t.Fatal(err)
		}
		again, err := ReadVectors(&b)
		if err != nil || len(again) != len(first) {
			t.Fatalf("%d rows, then %d: %v", len(first), len(again), err)
		}
	})
}

// TestPrintsDoNotHangOnTheLastBit: what the table prints is the same for
// values a few ulps apart, also on the edge between two roundings.
func TestPrintsDoNotHangOnTheLastBit(t *testing.T) {
	for _, c := range []struct {
		got, want, tol float64
		basis          Basis
		computed       string
		ratio          string
	}{
		{0.14096, 0.1410, 0.00005, Printed, "0.14096", "0.80"},
		{0.1875, 0.188, 0.0005, Table, "0.1875", "1.00"},
		{6.675, 6.68, 0.005, Printed, "6.675", "1.00"},
		{0.95, 1, 0.05, Printed, "0.95", "1.00"},
		{1e-17, 0, 1e-12, Exact, "0", "-"},
		{-1e-17, 0, 1e-12, Exact, "0", "-"},
		{1.0 / 12, 1.0 / 12, 1e-12, Exact, "0.08333333", "-"},
		{0.5, 0.5, 1e-12, Exact, "0.5", "-"},
		{100, 100, 1e-10, Exact, "100", "-"},
		{69933.4, 69900, 34, Table, "69933", "0.98"},
		{-0.0001, 0, 0.05, Table, "0.00", "0.00"},
		{math.Inf(1), math.Inf(1), 1, Exact, "+Inf", "-"},
		{0.6266570686577501, 0.6266570686577501, 1e-9, Computed, "0.626657069", "0.0"},
		{0.6266570686577501, 0.6266570686577501, 1e-10, Computed, "0.6266570687", "0"},
		{0.6266570686577501, 0.6266570686577501, 1e-12, Computed, "0.6266570687", "-"},
	} {
		for _, ulps := range []float64{-4, 0, 4} {
			o := Outcome{Check: Check{Basis: c.basis}, Got: c.got * (1 + ulps*0x1p-52), Want: c.want, Tol: c.tol, OK: true}
			if o.Computed() != c.computed || o.RatioText() != c.ratio {
				t.Errorf("%v for %v: prints %s and %s, want %s and %s", o.Got, c.want, o.Computed(), o.RatioText(), c.computed, c.ratio)
			}
		}
	}
	if got := (Outcome{Text: true, GotText: "blocked"}); got.Computed() != "blocked" || got.RatioText() != "-" {
		t.Errorf("a state prints as %s, %s", got.Computed(), got.RatioText())
	}
	if got := (Outcome{Err: io.EOF}); got.Computed() != "error" || got.RatioText() != "-" {
		t.Errorf("an error prints as %s, %s", got.Computed(), got.RatioText())
	}
}
