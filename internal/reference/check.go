package reference

import (
	"fmt"
	"math"
	"strings"
	"time"
)

// A Check is one published statement about a subject, as pure data.
type Check struct {
	ID      string  // stable words, never a number: "length-cem-ii-1-3"
	Subject string  // Subject.Name
	In      string  // "period=10 s, depth=12 m"
	Result  string  // which result; empty for the first
	Printed string  // the digits as printed, or a named state
	Unit    string  // unit of the print; empty for the result's own
	Basis   Basis   // where the value comes from
	Source  string  // key of the bibliography
	Locator string  // page, table, equation
	Tol     float64 // in the print's unit; 0 for half a unit of the last printed digit
	Why     string  // why Tol is what it is
	Note    string  // what was found when print and library were compared
}

// exactTol is the relative tolerance of a check that is exact by definition.
const exactTol = 1e-12

// ParseIn reads the inputs of a check, converting every number to the unit in
// which the subject takes it. Every argument must be given, and none besides.
func (s Subject) ParseIn(text string) (In, error) {
	in := In{}
	for _, part := range splitInputs(text) {
		name, val, ok := strings.Cut(part, "=")
		name, val = strings.TrimSpace(name), strings.TrimSpace(val)
		if !ok || name == "" {
			return nil, fmt.Errorf("input %q is not name=value", part)
		}
		a, ok := s.Arg(name)
		if !ok {
			return nil, fmt.Errorf("%s has no argument %q", s.Name, name)
		}
		if in.Has(name) {
			return nil, fmt.Errorf("argument %q is given twice", name)
		}
		v, err := a.parse(val)
		if err != nil {
			return nil, fmt.Errorf("argument %q: %w", name, err)
		}
		in[name] = v
	}
	for _, a := range s.Args {
		if !in.Has(a.Name) {
			return nil, fmt.Errorf("argument %q is missing", a.Name)
		}
	}
	return in, nil
}

// splitInputs cuts at commas outside brackets.
func splitInputs(text string) []string {
	var parts []string
	depth, start := 0, 0
	for i, r := range text {
		switch r {
		case '[':
			depth++
		case ']':
			depth--
		case ',':
			if depth == 0 {
				parts = append(parts, text[start:i])
				start = i + 1
			}
		}
	}
	if rest := strings.TrimSpace(text[start:]); rest != "" {
		parts = append(parts, rest)
	}
	return parts
}

// parse reads the value of one argument.
func (a Arg) parse(val string) (Value, error) {
	switch a.Kind {
	case KindText:
		return Value{Text: val}, nil
	case KindInstant:
		if _, err := time.Parse(time.RFC3339Nano, val); err != nil {
			return Value{}, fmt.Errorf("%q is not an instant in RFC 3339", val)
		}
		return Value{Text: val}, nil
	case KindList:
		unitName := a.Unit
		i, j := strings.Index(val, "["), strings.LastIndex(val, "]")
		if i != 0 || j < 0 {
			return Value{}, fmt.Errorf("%q is not a list in brackets", val)
		}
		body := val[1:j]
		if u := strings.TrimSpace(val[j+1:]); u != "" {
			unitName = u
		}
		v := Value{Num: []float64{}}
		for _, f := range strings.FieldsFunc(body, func(r rune) bool { return r == ' ' || r == ',' }) {
			x, err := a.number(f, unitName)
			if err != nil {
				return Value{}, err
			}
			v.Num = append(v.Num, x)
		}
		return v, nil
	}
	// A number and a unit are separated by the first space before a letter,
	// so that "306 52 05.37 dms" keeps its parts together.
	num, unitName := val, a.Unit
	if i := unitStart(val); i >= 0 {
		num, unitName = strings.TrimSpace(val[:i]), strings.TrimSpace(val[i:])
	}
	x, err := a.number(num, unitName)
	if err != nil {
		return Value{}, err
	}
	return Value{Num: []float64{x}}, nil
}

// unitStart finds where the unit of "25 ft" begins, -1 when there is none.
func unitStart(val string) int {
	for i := 1; i < len(val); i++ {
		if val[i-1] != ' ' {
			continue
		}
		if c := val[i]; c == '%' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' {
			return i
		}
		if _, ok := units[val[i:]]; ok && strings.Contains(val[i:], "/") {
			return i
		}
	}
	return -1
}

// number converts a printed number to the argument's unit.
func (a Arg) number(s, unitName string) (float64, error) {
	from, err := lookUnit(unitName)
	if err != nil {
		return 0, err
	}
	own, err := lookUnit(a.Unit)
	if err != nil {
		return 0, err
	}
	if from.dim != own.dim {
		return 0, fmt.Errorf("%s is not a unit of %s", unitName, own.dim)
	}
	x, _, err := parseNumber(s, unitName)
	if err != nil {
		return 0, err
	}
	if unitName == a.Unit {
		return x, nil
	}
	return own.fromSI(from.toSI(x)), nil
}

// An Outcome is what came of one check, in the unit of the print.
type Outcome struct {
	Check     Check
	Got, Want float64
	GotText   string
	Tol       float64
	Text      bool
	OK        bool
	Regimes   []string
	Err       error
}

// Ratio returns the error over the tolerance: up to 1 passes.
func (o Outcome) Ratio() float64 {
	if o.Text || o.Err != nil || o.Got == o.Want {
		return 0
	}
	return math.Abs(o.Got-o.Want) / o.Tol
}

// Within reports |got - want| <= tol with a few ulps of slack for the
// conversion of units. It is written positively, so that NaN never passes.
func Within(got, want, tol float64) bool {
	if math.IsInf(want, 0) {
		return got == want
	}
	return math.Abs(got-want) <= tol*(1+1e-9)+4e-16*math.Abs(want)
}

// Run evaluates the check on its subject.
func (c Check) Run(s Subject) Outcome {
	o := Outcome{Check: c}
	fail := func(err error) Outcome { o.Err = err; return o }
	in, err := s.ParseIn(c.In)
	if err != nil {
		return fail(err)
	}
	o.Regimes = s.RegimeNames(in)
	res, ok := s.Result(c.Result)
	if !ok {
		return fail(fmt.Errorf("%s has no result %q", s.Name, c.Result))
	}
	out, err := s.Evaluate(in)
	if err != nil {
		return fail(err)
	}
	v, err := s.pick(out, c.Result)
	if err != nil {
		return fail(err)
	}
	if text, ok := v.(string); ok {
		o.Text, o.GotText, o.OK = true, text, text == c.Printed
		return o
	}
	got, ok := v.(float64)
	if !ok {
		return fail(fmt.Errorf("result %q is a %T, want float64 or string", c.Result, v))
	}
	name := c.Unit
	if name == "" {
		name = res.Unit
	}
	pu, err := lookUnit(name)
	if err != nil {
		return fail(err)
	}
	ru, err := lookUnit(res.Unit)
	if err != nil {
		return fail(err)
	}
	if pu.dim != ru.dim {
		return fail(fmt.Errorf("%s is not a unit of %s", name, ru.dim))
	}
	want, half, err := parseNumber(c.Printed, name)
	if err != nil {
		return fail(err)
	}
	if name != res.Unit {
		got = pu.fromSI(ru.toSI(got))
	}
	o.Got, o.Want = got, want
	switch {
	case math.IsInf(want, 0):
		o.Tol = 0 // infinity is met or it is not
	case c.Tol > 0:
		o.Tol = c.Tol
	case c.Basis == Exact:
		o.Tol = exactTol * math.Max(math.Abs(want), 1)
	default:
		o.Tol = half
	}
	o.OK = Within(got, want, o.Tol)
	return o
}

// Validate reports what is wrong with a check as data: an unknown basis, a
// widened tolerance without a reason, a missing locator.
func (c Check) Validate() error {
	known := false
	for _, b := range Bases {
		known = known || b == c.Basis
	}
	switch {
	case c.ID == "" || strings.ToLower(c.ID) != c.ID || strings.ContainsAny(c.ID, " ,_"):
		return fmt.Errorf("id %q: want lower-case words joined by hyphens", c.ID)
	case !known:
		return fmt.Errorf("%s: basis %q is not known", c.ID, c.Basis)
	case c.Printed == "":
		return fmt.Errorf("%s: nothing printed", c.ID)
	case c.Basis != Exact && c.Basis != Practice && (c.Source == "" || c.Locator == ""):
		return fmt.Errorf("%s: no source or no locator", c.ID)
	case c.Basis == Practice && c.Source != "":
		return fmt.Errorf("%s: a rule of the trade has no source; cite it as printed or drop the key", c.ID)
	case !(c.Tol >= 0) || math.IsInf(c.Tol, 0):
		return fmt.Errorf("%s: tolerance %v", c.ID, c.Tol)
	}
	if c.Tol > 0 && c.Why == "" {
		if c.Basis == Exact {
			return fmt.Errorf("%s: a tolerance on an exact value wants a reason", c.ID)
		}
		_, half, err := parseNumber(c.Printed, c.Unit)
		if err == nil && c.Tol > half*(1+1e-9) {
			return fmt.Errorf("%s: a tolerance of %g, wider than half the last digit (%g), wants a reason", c.ID, c.Tol, half)
		}
	}
	return nil
}
