// Package reference holds the vocabulary in which this library's numbers are
// checked against the world outside it: what a function is (a Subject), what
// somebody published about it (a Check), and who published it (a Source).
//
// It contains types and arithmetic only and imports nothing of the library.
// The data lives in the sub-package published. One Subject declaration drives
// everything: the comparison, the table of checks, the language-neutral vector
// file, the coverage of branches and the sweep of hostile inputs.
package reference

import (
	"fmt"
	"math"
	"reflect"
	"runtime"
	"strings"
	"time"
)

// A Class says what kind of thing a subject is, and so what it owes.
type Class string

// The classes. What each owes is enforced by the gates in package published.
const (
	Formula     Class = "formula"     // owes a paying check in each regime, or a recorded search
	Composed    Class = "composed"    // owes a test that it equals its parts composed by hand
	Proposal    Class = "proposal"    // no source exists: owes an oracle, and says so
	Plan        Class = "plan"        // owes days worked by hand and a fail-safe property
	Search      Class = "search"      // as Plan
	Reader      Class = "reader"      // owes a round trip, a fuzz target, bounded memory
	Writer      Class = "writer"      // as Reader
	Constructor Class = "constructor" // owes a property or table test
	Accessor    Class = "accessor"    // as Constructor
	Data        Class = "data"        // as Constructor
)

// Classes lists every class in the order the tables print them.
var Classes = []Class{Formula, Composed, Proposal, Plan, Search, Reader, Writer, Constructor, Accessor, Data}

// A Basis says where a check's expected value comes from.
type Basis string

// The bases. Only the first four pay for a formula.
const (
	Printed  Basis = "printed"  // a worked example, its digits seen in the source
	Table    Basis = "table"    // a row of a published table
	Chart    Basis = "chart"    // read off a published chart or nomogram
	Exact    Basis = "exact"    // a definition or a mathematical limit
	Practice Basis = "practice" // a rule of the trade without a source
	Memory   Basis = "memory"   // a published value that nobody here could open
	Peer     Basis = "peer"     // the result of an independent program
	Computed Basis = "computed" // an independent computation of our own
)

// Bases lists every basis in the order the tables print them.
var Bases = []Basis{Printed, Table, Chart, Exact, Peer, Computed, Practice, Memory}

// Pays reports whether a check on this basis counts for a formula.
func (b Basis) Pays() bool { return b == Printed || b == Table || b == Chart || b == Exact }

// A Subject declares one exported function, method or law value.
type Subject struct {
	Name      string                // as a reader of the docs would write it: "wave.Length"
	Func      any                   // the function by value, or the value of an exported variable
	Class     Class                 // what it owes
	Args      []Arg                 // its arguments, by name
	Results   []Result              // its results, by name; the first is the default
	Regimes   []Regime              // its branches; nil stands for the single regime "all"
	Eval      func(In) (Out, error) // how to evaluate it from plain numbers; nil for func(float64...) float64...
	Unknown   []string              // text results that are a named unknown, accepted from a NaN
	NoneFound map[string]string     // regime -> what was searched in vain
	Tests     []string              // test functions of its package that pay the rest
}

// A Source is one entry of the bibliography.
type Source struct {
	Key      string // as cited in doc comments: [Key]
	Citation string // authors, year, title, publisher or report number
	ID       string // DOI, ISBN or report number where there is one
}

// A Result is one number (or named state) that a subject returns.
type Result struct {
	Name    string
	Unit    string   // SI unit, "1" for a ratio, "text" for a named state
	Without []string // arguments it does not depend on
}

// A Regime is one branch of a formula as a function of its inputs.
type Regime struct {
	Name string
	In   func(In) bool
}

// A Kind is the type of an argument.
type Kind int

// The kinds of argument.
const (
	KindNumber Kind = iota
	KindList
	KindText
	KindInstant
)

// An Arg is one argument of a subject.
type Arg struct {
	Name   string
	Unit   string
	Kind   Kind
	Domain Domain
	sample Value
}

// Number declares a numeric argument with an example inside its domain.
func Number(name, unit string, domain Domain, sample float64) Arg {
	return Arg{name, unit, KindNumber, domain, Value{Num: []float64{sample}}}
}

// List declares an argument that is a slice of numbers.
func List(name, unit string, domain Domain, sample ...float64) Arg {
	return Arg{name, unit, KindList, domain, Value{Num: sample}}
}

// Text declares an argument that names something.
func Text(name, sample string) Arg {
	return Arg{name, "text", KindText, Domain{}, Value{Text: sample}}
}

// Instant declares an argument that is an instant, with an example in RFC 3339.
func Instant(name, sample string) Arg {
	return Arg{name, "utc", KindInstant, Domain{}, Value{Text: sample}}
}

// A Domain is the declared range of an argument.
type Domain struct {
	Lo, Hi         float64
	LoOpen, HiOpen bool
}

// The usual domains.
var (
	Positive       = Domain{0, math.Inf(1), true, true}
	PositiveInf    = Domain{0, math.Inf(1), true, false}
	NonNegative    = Domain{0, math.Inf(1), false, true}
	NonNegativeInf = Domain{0, math.Inf(1), false, false}
	Real           = Domain{math.Inf(-1), math.Inf(1), true, true}
	Any            = Domain{math.Inf(-1), math.Inf(1), false, false}
	Fraction       = Domain{0, 1, false, false}
	Angle          = Real
	Latitude       = Domain{-90, 90, false, false}
)

// Between is the closed domain from lo to hi.
func Between(lo, hi float64) Domain { return Domain{Lo: lo, Hi: hi} }

// Contains reports whether x lies in the domain. NaN lies in none.
func (d Domain) Contains(x float64) bool {
	if !(x >= d.Lo && x <= d.Hi) {
		return false
	}
	return !(d.LoOpen && x == d.Lo) && !(d.HiOpen && x == d.Hi)
}

// String writes the domain as an interval, "(0, +Inf]".
func (d Domain) String() string {
	l, r := "[", "]"
	if d.LoOpen {
		l = "("
	}
	if d.HiOpen {
		r = ")"
	}
	return fmt.Sprintf("%s%g, %g%s", l, d.Lo, d.Hi, r)
}

// A Value is the value of one argument: numbers in SI, or a text.
type Value struct {
	Num  []float64
	Text string
}

// In holds the inputs of one evaluation, in SI, by argument name.
type In map[string]Value

// F returns the number given for name; NaN when it was not given.
func (in In) F(name string) float64 {
	if v, ok := in[name]; ok && len(v.Num) > 0 {
		return v.Num[0]
	}
	return math.NaN()
}

// L returns a copy of the numbers given for name.
func (in In) L(name string) []float64 { return append([]float64(nil), in[name].Num...) }

// S returns the text given for name.
func (in In) S(name string) string { return in[name].Text }

// T returns the instant given for name; the zero time when it is not one.
func (in In) T(name string) time.Time {
	t, err := time.Parse(time.RFC3339Nano, in[name].Text)
	if err != nil {
		return time.Time{}
	}
	return t
}

// Has reports whether name was given.
func (in In) Has(name string) bool { _, ok := in[name]; return ok }

// Out holds the results of one evaluation by name: float64, or string for a
// named state. A subject of one result may use the empty name.
type Out map[string]any

// Samples returns inputs made of every argument's example.
func (s Subject) Samples() In {
	in := In{}
	for _, a := range s.Args {
		in[a.Name] = Value{Num: append([]float64(nil), a.sample.Num...), Text: a.sample.Text}
	}
	return in
}

// Arg returns the argument of that name.
func (s Subject) Arg(name string) (Arg, bool) {
	for _, a := range s.Args {
		if a.Name == name {
			return a, true
		}
	}
	return Arg{}, false
}

// Result returns the result of that name; the first for the empty name.
func (s Subject) Result(name string) (Result, bool) {
	for i, r := range s.Results {
		if r.Name == name || (name == "" && i == 0) {
			return r, true
		}
	}
	return Result{}, false
}

// regimes returns the declared regimes, or the single regime "all".
func (s Subject) regimes() []Regime {
	if len(s.Regimes) > 0 {
		return s.Regimes
	}
	return []Regime{{"all", func(In) bool { return true }}}
}

// RegimeNames lists the regimes in which the inputs lie.
func (s Subject) RegimeNames(in In) []string {
	var names []string
	for _, r := range s.regimes() {
		if r.In(in) {
			names = append(names, r.Name)
		}
	}
	return names
}

// AllRegimes lists the names of every regime.
func (s Subject) AllRegimes() []string {
	var names []string
	for _, r := range s.regimes() {
		names = append(names, r.Name)
	}
	return names
}

// Evaluate runs the subject on inputs in SI. A panic of the function becomes
// an error here, so that one bad declaration cannot hide the others.
func (s Subject) Evaluate(in In) (out Out, err error) {
	defer func() {
		if r := recover(); r != nil {
			out, err = nil, &PanicError{s.Name, r}
		}
	}()
	if s.Eval != nil {
		return s.Eval(in)
	}
	return s.reflected(in)
}

// A PanicError is a panic met while a subject was evaluated.
type PanicError struct {
	Subject string
	Value   any
}

func (e *PanicError) Error() string { return fmt.Sprintf("%s panicked: %v", e.Subject, e.Value) }

// reflected evaluates a function of float64s that returns float64s.
func (s Subject) reflected(in In) (Out, error) {
	f := reflect.ValueOf(s.Func)
	if f.Kind() != reflect.Func {
		return nil, fmt.Errorf("%s: not a function and no Eval", s.Name)
	}
	t := f.Type()
	if t.NumIn() != len(s.Args) || t.IsVariadic() {
		return nil, fmt.Errorf("%s: takes %d arguments, %d declared", s.Name, t.NumIn(), len(s.Args))
	}
	if t.NumOut() != len(s.Results) {
		return nil, fmt.Errorf("%s: returns %d results, %d declared", s.Name, t.NumOut(), len(s.Results))
	}
	args := make([]reflect.Value, len(s.Args))
	for i, a := range s.Args {
		if t.In(i).Kind() != reflect.Float64 {
			return nil, fmt.Errorf("%s: argument %s is not a float64 and there is no Eval", s.Name, a.Name)
		}
		args[i] = reflect.ValueOf(in.F(a.Name)).Convert(t.In(i))
	}
	out := Out{}
	for i, v := range f.Call(args) {
		if v.Kind() != reflect.Float64 {
			return nil, fmt.Errorf("%s: result %d is not a float64 and there is no Eval", s.Name, i)
		}
		out[s.Results[i].Name] = v.Float()
	}
	return out, nil
}

// FuncName returns the name by which Go itself knows the function, in the
// form of Subject.Name; the empty string for a value that is not a function.
// It survives renames and cannot name what does not exist.
func (s Subject) FuncName() string {
	f := reflect.ValueOf(s.Func)
	if f.Kind() != reflect.Func {
		return ""
	}
	n := runtime.FuncForPC(f.Pointer()).Name()
	n = n[strings.LastIndex(n, "/")+1:]
	n = strings.TrimSuffix(n, "-fm")
	n = strings.NewReplacer("(*", "", ")", "", "[...]", "").Replace(n)
	return n
}

// Package returns the package part of the name.
func (s Subject) Package() string { p, _, _ := strings.Cut(s.Name, "."); return p }

// pick returns the result of that name from out.
func (s Subject) pick(out Out, name string) (any, error) {
	r, ok := s.Result(name)
	if !ok {
		return nil, fmt.Errorf("%s has no result %q", s.Name, name)
	}
	if v, ok := out[r.Name]; ok {
		return v, nil
	}
	if v, ok := out[""]; ok && len(s.Results) == 1 {
		return v, nil
	}
	return nil, fmt.Errorf("%s returned no %q", s.Name, r.Name)
}

// Value evaluates the subject and returns one result, a float64 or the text
// of a named state, with its unit.
func (s Subject) Value(in In, result string) (any, string, error) {
	r, ok := s.Result(result)
	if !ok {
		return nil, "", fmt.Errorf("%s has no result %q", s.Name, result)
	}
	out, err := s.Evaluate(in)
	if err != nil {
		return nil, "", err
	}
	v, err := s.pick(out, result)
	return v, r.Unit, err
}
