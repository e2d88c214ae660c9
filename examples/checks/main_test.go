package main

import (
	"bytes"
	"math"
	"os"
	"strings"
	"testing"

	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/published"
)

// TestStoredTablesAreFresh: the stored files are what the program writes, on
// every machine.
func TestStoredTablesAreFresh(t *testing.T) {
	all := runAll()
	var md, csv bytes.Buffer
	if err := all.markdown(&md); err != nil {
		t.Fatal(err)
	}
	if err := all.csv(&csv); err != nil {
		t.Fatal(err)
	}
	for name, got := range map[string]string{"CHECKS.md": md.String(), "checks.csv": csv.String()} {
		stored, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if line, a, b := firstDifference(string(stored), got); line > 0 {
			t.Errorf("%s is not fresh (go generate ./examples/checks); line %d\nstored  %s\nwritten %s", name, line, a, b)
		}
	}
}

// firstDifference returns the first line that differs, 0 when none does.
func firstDifference(a, b string) (int, string, string) {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range max(len(x), len(y)) {
		var p, q string
		if i < len(x) {
			p = x[i]
		}
		if i < len(y) {
			q = y[i]
		}
		if p != q || i >= len(x) || i >= len(y) {
			return i + 1, p, q
		}
	}
	return 0, "", ""
}

// TestVectorsReadBack: reading the stored file and evaluating each row by the
// names and units in it alone gives what the declarations give.
func TestVectorsReadBack(t *testing.T) {
	f, err := os.Open("checks.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	vectors, err := reference.ReadVectors(f)
	if err != nil {
		t.Fatal(err)
	}
	index := published.Index()
	direct := map[string]reference.Outcome{}
	for _, r := range runAll().rows {
		direct[r.ID] = r.outcome
	}
	if len(vectors) != len(direct) {
		t.Errorf("%d rows in checks.csv, %d checks declared", len(vectors), len(direct))
	}
	for _, v := range vectors {
		s, ok := index[v.Subject]
		if !ok {
			t.Errorf("%s: subject %s is not declared", v.ID, v.Subject)
			continue
		}
		got, want := v.Check().Run(s), direct[v.ID]
		if got.Err != nil || !got.OK {
			t.Errorf("%s: from the file %v, want %v: %v", v.ID, got.Got, got.Want, got.Err)
			continue
		}
		if got.GotText != want.GotText || !same(got.Got, want.Got) || !same(got.Want, want.Want) || !same(got.Tol, want.Tol) {
			t.Errorf("%s: from the file %v for %v within %v, declared %v for %v within %v", v.ID, got.Got, got.Want, got.Tol, want.Got, want.Want, want.Tol)
		}
	}
}

func same(a, b float64) bool { return a == b || math.Abs(a-b) <= 1e-11*math.Abs(b) }

// TestEveryCheckHolds: the program says so with its exit code.
func TestEveryCheckHolds(t *testing.T) {
	var out, errs bytes.Buffer
	if code := checks([]string{"-summary"}, &out, &errs); code != 0 || errs.Len() > 0 {
		t.Errorf("exit code %d, %s", code, errs.String())
	}
	for _, want := range []string{"Checks by package and basis", "Functions by package and class", "Branches of formulas", "None found"} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("the summary lacks %q", want)
		}
	}
}

// TestOptions tries each way to group, to filter and to write.
func TestOptions(t *testing.T) {
	run := func(args ...string) (int, string, string) {
		var out, errs bytes.Buffer
		code := checks(args, &out, &errs)
		return code, out.String(), errs.String()
	}
	first := published.Checks()[0]
	for by := range groups {
		if code, out, errs := run("-by", by, "-only", first.Subject); code != 0 || !strings.Contains(out, first.ID) {
			t.Errorf("-by %s: code %d, %s", by, code, errs)
		}
	}
	for _, only := range []string{first.ID, first.Source, string(first.Basis)} {
		if code, out, _ := run("-only", only, "-format", "csv"); code != 0 || !strings.Contains(out, first.ID+",") || !strings.HasPrefix(out, "id,subject,") {
			t.Errorf("-only %s: code %d", only, code)
		}
	}
	if code, out, _ := run("-only", first.ID, "-format", "markdown"); code != 0 || !strings.Contains(out, "| "+first.ID+" |") {
		t.Errorf("markdown: code %d\n%s", code, out)
	}
	if code, _, _ := run("-h"); code != 0 {
		t.Errorf("-h: code %d", code)
	}
	for _, bad := range [][]string{{"-by", "colour"}, {"-format", "pdf", "-summary"}, {"-only", "nothing-of-that-name"}, {"extra"}, {"-no-such-flag"}} {
		if code, _, errs := run(bad...); code != 2 || errs == "" {
			t.Errorf("%v: code %d, %q", bad, code, errs)
		}
	}
}

// TestAFailingRowIsShown: a check that does not hold is marked, and the exit
// code says so.
func TestAFailingRowIsShown(t *testing.T) {
	all := table{rows: []row{{reference.Vector{ID: "wrong", Ratio: "3.00"}, reference.Outcome{}}}, failed: 1}
	var b bytes.Buffer
	p := &page{w: &b}
	p.tables(all.rows, groups["all"])
	if !strings.Contains(b.String(), "FAILS 3.00") || all.code() != 1 {
		t.Errorf("code %d\n%s", all.code(), b.String())
	}
}

// TestCitation: the citation file names what it must.
func TestCitation(t *testing.T) {
	b, err := os.ReadFile("CITATION.cff")
	if err != nil {
		t.Fatal(err)
	}
	for _, key := range []string{"cff-version: ", "title: ", "message: ", "authors:", "license: "} {
		if !strings.Contains("\n"+string(b), "\n"+key) {
			t.Errorf("CITATION.cff lacks %s", key)
		}
	}
}
