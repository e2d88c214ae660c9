package published_test

import (
	"math"
	"strings"
	"testing"

	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/published"
)

// TestPublished runs every check against the library.
func TestPublished(t *testing.T) {
	index := published.Index()
	for _, c := range published.Checks() {
		s, ok := index[c.Subject]
		if !ok {
			t.Errorf("%s: subject %s is not declared", c.ID, c.Subject)
			continue
		}
		o := c.Run(s)
		switch {
		case o.Err != nil:
			t.Errorf("%s: %v", c.ID, o.Err)
		case o.OK:
		case o.Text:
			t.Errorf("%s: %s(%s) = %q, want %q [%s, %s]", c.ID, c.Subject, c.In, o.GotText, c.Printed, c.Source, c.Locator)
		default:
			t.Errorf("%s: %s(%s) %s = %.10g, printed %s, tolerance %.3g, %.2f times over [%s, %s]",
				c.ID, c.Subject, c.In, c.Result, o.Got, c.Printed, o.Tol, o.Ratio(), c.Source, c.Locator)
		}
	}
}

// TestDeclarations checks subjects and checks as data.
func TestDeclarations(t *testing.T) {
	classes := map[reference.Class]bool{}
	for _, c := range reference.Classes {
		classes[c] = true
	}
	seen := map[string]bool{}
	for _, s := range published.Subjects() {
		if seen[s.Name] {
			t.Errorf("%s is declared twice", s.Name)
		}
		seen[s.Name] = true
		if !classes[s.Class] {
			t.Errorf("%s: class %q is not known", s.Name, s.Class)
		}
		if s.Func == nil {
			t.Errorf("%s: no function or value", s.Name)
		} else if n := s.FuncName(); n != "" && n != s.Name && !strings.Contains(n, ".init") && !strings.Contains(n, ".func") {
			t.Errorf("%s: Func is %s", s.Name, n)
		} else if strings.Contains(n, ".func") || strings.Contains(n, ".init") {
			t.Errorf("%s: Func is a closure (%s); name the function or the law's value itself", s.Name, n)
		}
		if err := reference.ValidUnits(s); err != nil {
			t.Errorf("%s: %v", s.Name, err)
		}
	}
	ids := map[string]bool{}
	for _, c := range published.Checks() {
		if ids[c.ID] {
			t.Errorf("check id %s is used twice", c.ID)
		}
		ids[c.ID] = true
		if err := c.Validate(); err != nil {
			t.Error(err)
		}
	}
}

// TestBibliography: every key cited by a check or a doc comment resolves,
// every source is cited, and no key stands for two works.
func TestBibliography(t *testing.T) {
	sources := map[string]bool{}
	for _, s := range published.Sources() {
		if sources[s.Key] {
			t.Errorf("key %s is in the bibliography twice", s.Key)
		}
		if s.Key == "" || s.Citation == "" {
			t.Errorf("source %+v is not complete", s)
		}
		sources[s.Key] = true
	}
	cited := map[string]bool{}
	for _, c := range published.Checks() {
		if c.Source == "" {
			continue
		}
		cited[c.Source] = true
		if !sources[c.Source] {
			t.Errorf("%s cites %s, which is not in the bibliography", c.ID, c.Source)
		}
	}
	for file, doc := range readSource(t).docs {
		for _, key := range citedKeys(doc) {
			cited[key] = true
			if !sources[key] {
				t.Errorf("%s cites [%s], which is not in the bibliography", file, key)
			}
		}
	}
	for key := range sources {
		if !cited[key] {
			t.Errorf("source %s is cited nowhere", key)
		}
	}
}

// TestSweep feeds NaN and other hostile numbers to every numeric argument.
func TestSweep(t *testing.T) {
	for _, s := range published.Subjects() {
		if len(s.Results) == 0 {
			continue
		}
		for _, err := range s.Sweep() {
			t.Error(err)
		}
	}
}

// TestComparatorRefusesNaN: the comparison is positive, so that a formula
// which returns NaN can never pass for one that is right.
func TestComparatorRefusesNaN(t *testing.T) {
	for _, want := range []float64{0, 1, -1, math.Inf(1)} {
		for _, tol := range []float64{0, 1, math.Inf(1)} {
			if reference.Within(math.NaN(), want, tol) {
				t.Errorf("Within(NaN, %v, %v) passes", want, tol)
			}
		}
	}
	if reference.Within(1, math.NaN(), 1) || reference.Within(1, 1, math.NaN()) {
		t.Error("a NaN expectation or tolerance passes")
	}
	if reference.Within(1, math.Inf(1), math.Inf(1)) {
		t.Error("a finite result passes for infinity")
	}
}
