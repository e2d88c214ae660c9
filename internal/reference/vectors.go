package reference

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
)

// A Vector is one check written out so that nothing of this library is needed
// to read it: every input with its unit, the print with its unit, and the
// tolerance as a number in that unit. A file of vectors is the suite by which
// a port to another language can be tested.
type Vector struct {
	ID        string
	Subject   string
	Class     Class
	Regimes   string // names of the branches the inputs lie in, joined by "; "
	Inputs    string // "period=10 s, depth=12 m"
	Result    string // which result
	Printed   string
	Unit      string // unit of Printed; "text" for a named state
	Tolerance float64
	Basis     Basis
	Source    string
	Locator   string
	Computed  string // what the library gives, in Unit, with few digits
	Ratio     string // |computed - printed| over the tolerance, two decimals
	Why       string
	Note      string
}

// columns are the columns of a vector file, in order. A reader needs the
// first ten; the rest are for people.
var columns = []string{"id", "subject", "inputs", "result", "printed", "unit", "tolerance", "basis", "source", "locator", "class",
	"regimes", "computed", "ratio", "why", "note"}

// needed is how many of the columns a reader insists on.
const needed = 10

// Limits of a vector file. They are some twenty times what the suite uses.
const (
	maxVectorBytes = 32 << 20
	maxVectors     = 100000
)

// ErrVectors is wrapped by every error of ReadVectors.
var ErrVectors = errors.New("vector file")

// NewVector writes out one outcome of the check on its subject.
func NewVector(s Subject, o Outcome) (Vector, error) {
	c := o.Check
	if o.Err != nil {
		return Vector{}, o.Err
	}
	res, ok := s.Result(c.Result)
	if !ok {
		return Vector{}, fmt.Errorf("%s has no result %q", s.Name, c.Result)
	}
	inputs, err := s.withUnits(c.In)
	if err != nil {
		return Vector{}, err
	}
	v := Vector{
		ID: c.ID, Subject: c.Subject, Class: s.Class, Regimes: strings.Join(o.Regimes, "; "), Inputs: inputs, Result: res.Name,
		Printed: c.Printed, Unit: c.Unit, Tolerance: o.Tol, Basis: c.Basis, Source: c.Source, Locator: c.Locator,
		Computed: o.Computed(), Ratio: o.RatioText(), Why: c.Why, Note: c.Note,
	}
	if v.Unit == "" {
		v.Unit = res.Unit
	}
	if o.Text {
		v.Unit = "text"
	}
	return v, nil
}

// withUnits gives every number of the inputs its unit; a plain number has none.
func (s Subject) withUnits(text string) (string, error) {
	var out []string
	for _, part := range splitInputs(text) {
		name, val, _ := strings.Cut(part, "=")
		name, val = strings.TrimSpace(name), strings.TrimSpace(val)
		a, ok := s.Arg(name)
		if !ok {
			return "", fmt.Errorf("%s has no argument %q", s.Name, name)
		}
		switch a.Kind {
		case KindNumber:
			if unitStart(val) < 0 && a.Unit != "1" {
				val += " " + a.Unit
			}
		case KindList:
			if strings.HasSuffix(val, "]") && a.Unit != "1" {
				val += " " + a.Unit
			}
		}
		out = append(out, name+"="+val)
	}
	return strings.Join(out, ", "), nil
}

// Check is the inverse of NewVector: the check that the vector states.
func (v Vector) Check() Check {
	c := Check{ID: v.ID, Subject: v.Subject, In: v.Inputs, Result: v.Result, Printed: v.Printed, Unit: v.Unit, Basis: v.Basis,
		Source: v.Source, Locator: v.Locator, Tol: v.Tolerance, Why: v.Why, Note: v.Note}
	if c.Unit == "text" {
		c.Unit = ""
	}
	return c
}

// WriteVectors writes a vector file: a header and one row for each vector.
func WriteVectors(w io.Writer, vectors []Vector) error {
	cw := csv.NewWriter(w)
	rows := [][]string{columns}
	for _, v := range vectors {
		tol := ""
		if v.Unit != "text" {
			tol = strconv.FormatFloat(v.Tolerance, 'g', 12, 64)
		}
		rows = append(rows, []string{v.ID, v.Subject, v.Inputs, v.Result, v.Printed, v.Unit, tol, string(v.Basis), v.Source, v.Locator,
			string(v.Class), v.Regimes, v.Computed, v.Ratio, v.Why, v.Note})
	}
	return cw.WriteAll(rows)
}

// ReadVectors reads a vector file. Columns are found by the names in its
// header; columns it does not know are ignored. It reads at most 32 MB and
// 100,000 rows, and keeps no more than the rows themselves.
func ReadVectors(r io.Reader) ([]Vector, error) {
	limited := &io.LimitedReader{R: r, N: maxVectorBytes + 1}
	cr := csv.NewReader(limited)
	cr.ReuseRecord = true
	fail := func(format string, args ...any) ([]Vector, error) {
		if limited.N <= 0 {
			return nil, fmt.Errorf("%w: longer than %d bytes", ErrVectors, maxVectorBytes)
		}
		return nil, fmt.Errorf("%w: %w", ErrVectors, fmt.Errorf(format, args...))
	}
	header, err := cr.Read()
	if err != nil {
		return fail("header: %w", err)
	}
	at := map[string]int{}
	for i, name := range header {
		if _, ok := at[name]; ok {
			return fail("line 1: column %s is there twice", name)
		}
		at[name] = i
	}
	for _, name := range columns[:needed] {
		if _, ok := at[name]; !ok {
			return fail("line 1: column %s is missing", name)
		}
	}
	var out []Vector
	ids := map[string]bool{}
	for {
		rec, err := cr.Read()
		if err == io.EOF && limited.N > 0 {
			return out, nil
		}
		if err != nil {
			return fail("%w", err)
		}
		line, _ := cr.FieldPos(0)
		if len(out) == maxVectors {
			return fail("line %d: more than %d rows", line, maxVectors)
		}
		get := func(name string) string {
			if i, ok := at[name]; ok {
				return strings.Clone(rec[i])
			}
			return ""
		}
		v := Vector{ID: get("id"), Subject: get("subject"), Class: Class(get("class")), Regimes: get("regimes"), Inputs: get("inputs"),
			Result: get("result"), Printed: get("printed"), Unit: get("unit"), Basis: Basis(get("basis")), Source: get("source"),
			Locator: get("locator"), Computed: get("computed"), Ratio: get("ratio"), Why: get("why"), Note: get("note")}
		if v.ID == "" || ids[v.ID] {
			return fail("line %d: column id: %q is empty or there twice", line, v.ID)
		}
		ids[v.ID] = true
		if tol := get("tolerance"); tol != "" || v.Unit != "text" {
			v.Tolerance, err = strconv.ParseFloat(tol, 64)
			if err != nil || !(v.Tolerance >= 0) || math.IsInf(v.Tolerance, 0) {
				return fail("line %d: column tolerance: %q is not a number of 0 or more", line, tol)
			}
		}
		out = append(out, v)
	}
}

// blur is how far, relative to its size, a result may differ between machines
// (fused multiply-add, another math library) and still print the same.
const blur = 1e-11

// Computed returns what the library gave, in the unit of the print, with one
// digit more than the tolerance resolves. It avoids a rounding that machines
// could make differently by printing one digit more where the value lies on
// the edge between two.
func (o Outcome) Computed() string {
	switch {
	case o.Err != nil:
		return "error"
	case o.Text:
		return o.GotText
	case math.IsInf(o.Got, 0) || math.IsNaN(o.Got):
		return strconv.FormatFloat(o.Got, 'g', -1, 64)
	}
	slack := blur * math.Max(math.Abs(o.Got), math.Abs(o.Want))
	exact := o.Check.Basis == Exact && o.Check.Tol == 0
	if exact {
		slack = math.Max(slack, o.Tol)
	}
	decimals := 2
	if o.Tol > 0 {
		decimals = int(math.Ceil(-math.Log10(o.Tol) - 1e-9))
	}
	if exact {
		text := steady(o.Got, slack, min(max(decimals, 0), 8), 12)
		if strings.Contains(text, ".") {
			text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
		}
		return text
	}
	return steady(o.Got, slack, min(max(decimals, 0), 15), 15)
}

// RatioText returns the error over the tolerance with two decimals, and a
// dash for a named state and for a value that is exact by definition, whose
// error is the last bits of the arithmetic.
func (o Outcome) RatioText() string {
	if o.Err != nil || o.Text || o.Check.Basis == Exact && o.Check.Tol == 0 || o.Tol == 0 {
		return "-"
	}
	ratio, slack := o.Ratio(), blur*math.Max(math.Abs(o.Got), math.Abs(o.Want))/o.Tol
	if !(4*slack < 1) { // the error is of the size of the arithmetic
		return "-"
	}
	return steady(ratio, slack, 2, 8)
}

// steady prints x with that many decimals. Where values within slack of it
// would print otherwise it takes more, up to most and as far as the slack
// leaves digits to show, and else fewer.
func steady(x, slack float64, decimals, most int) string {
	most = min(most, int(math.Floor(-math.Log10(math.Max(4*slack, 1e-300)))))
	at := func(decimals int) (string, bool) {
		lo := strconv.FormatFloat(x-slack, 'f', decimals, 64)
		hi := strconv.FormatFloat(x+slack, 'f', decimals, 64)
		return unsign(strconv.FormatFloat(x, 'f', decimals, 64)), unsign(lo) == unsign(hi)
	}
	for d := decimals; d <= most; d++ {
		if text, ok := at(d); ok {
			return text
		}
	}
	for d := min(decimals-1, most); d > 0; d-- {
		if text, ok := at(d); ok {
			return text
		}
	}
	text, _ := at(0)
	return text
}

// unsign takes the sign off a printed zero.
func unsign(s string) string {
	if strings.Trim(s, "-0.") == "" {
		return strings.TrimPrefix(s, "-")
	}
	return s
}
