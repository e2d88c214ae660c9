package published_test

import (
	"bufio"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/published"
)

// TestEveryName is the first gate: each exported function, method and
// variable of the library has a subject, and no subject names what is gone.
func TestEveryName(t *testing.T) {
	index := published.Index()
	found := map[string]bool{}
	for _, d := range readSource(t).names {
		found[d.name] = true
		if _, ok := index[d.name]; !ok {
			t.Errorf("%s (%s:%d) has no subject", d.name, strings.TrimPrefix(d.file, root+"/"), d.start)
		}
	}
	for name := range index {
		if !found[name] {
			t.Errorf("subject %s names nothing that is exported", name)
		}
	}
}

// TestDebts is the other half of the first gate: each class pays what it owes.
func TestDebts(t *testing.T) {
	tree := readSource(t)
	docs := map[string]string{}
	for _, d := range tree.names {
		docs[d.name] = d.doc
	}
	index := published.Index()
	covered := map[string]map[string]bool{} // subject -> regimes with a paying check
	exact := map[string]bool{}
	for _, c := range published.Checks() {
		s, ok := index[c.Subject]
		if !ok || !c.Basis.Pays() {
			continue
		}
		in, err := s.ParseIn(c.In)
		if err != nil {
			continue // TestPublished reports it
		}
		if covered[s.Name] == nil {
			covered[s.Name] = map[string]bool{}
		}
		for _, r := range s.RegimeNames(in) {
			covered[s.Name][r] = true
		}
		exact[s.Name] = exact[s.Name] || c.Basis == reference.Exact
	}
	for _, s := range published.Subjects() {
		for _, name := range s.Tests {
			if !tree.tests[s.Package()][name] {
				t.Errorf("%s names test %s, which its package does not have", s.Name, name)
			}
		}
		has := func(prefix string) bool {
			return slices.ContainsFunc(s.Tests, func(n string) bool { return strings.HasPrefix(n, prefix) })
		}
		switch s.Class {
		case reference.Formula:
			for _, r := range s.AllRegimes() {
				if covered[s.Name][r] {
					continue
				}
				if s.NoneFound[r] == "" {
					t.Errorf("%s: regime %q has no check of basis printed, table, chart or exact, and no record of a search", s.Name, r)
				} else if len(s.Tests) == 0 {
					t.Errorf("%s: regime %q has no published value and no property test is named", s.Name, r)
				}
			}
			for r := range s.NoneFound {
				if !slices.Contains(s.AllRegimes(), r) {
					t.Errorf("%s: NoneFound speaks of %q, which is no regime", s.Name, r)
				}
			}
		case reference.Proposal:
			pkg := tree.folders[s.Package()]
			if !slices.Contains([]string{"wave/ride", "route/passage"}, pkg) && !strings.HasPrefix(s.Name, "wind.Hindcast") {
				t.Errorf("%s: a proposal outside wave/ride, route/passage and the hindcast", s.Name)
			}
			if !strings.Contains(strings.Join(strings.Fields(strings.ToLower(docs[s.Name])), " "), "no published source") {
				t.Errorf("%s: a proposal says \"proposal, no published source\" in its doc", s.Name)
			}
			if len(s.Tests) == 0 {
				t.Errorf("%s: a proposal owes an oracle", s.Name)
			}
		case reference.Reader, reference.Writer:
			if !has("Fuzz") || !has("Test") {
				t.Errorf("%s: a reader or writer owes a round trip (Test...) and a fuzz target (Fuzz...)", s.Name)
			}
		default:
			if len(s.Tests) == 0 && !covered[s.Name]["all"] {
				t.Errorf("%s: class %s owes a test; none is named", s.Name, s.Class)
			}
		}
	}
}

// TestReach is the second gate, for CI: given the cover profile of a run of
// TestPublished alone, every exported formula must have been entered. It also
// reports what the published checks by themselves cover of each package.
func TestReach(t *testing.T) {
	path := os.Getenv("FOLLOWINGSEA_COVERPROFILE")
	if path == "" {
		t.Skip("FOLLOWINGSEA_COVERPROFILE is not set; .ci/run sets it")
	}
	blocks := readProfile(t, path)
	index := published.Index()
	for _, d := range readSource(t).names {
		s, ok := index[d.name]
		if !ok || d.variable || s.Class != reference.Formula || len(s.NoneFound) == len(s.AllRegimes()) {
			continue
		}
		file := "followingsea.example/" + strings.TrimPrefix(filepath.ToSlash(d.file), root+"/")
		entered := false
		for _, b := range blocks[file] {
			entered = entered || b.count > 0 && b.start >= d.start && b.end <= d.end
		}
		if !entered {
			t.Errorf("%s is reached by no published check", d.name)
		}
	}
	for _, folder := range public {
		var total, hit int
		for file, bs := range blocks {
			if filepath.ToSlash(filepath.Dir(file)) != "followingsea.example/"+folder {
				continue
			}
			for _, b := range bs {
				total += b.statements
				if b.count > 0 {
					hit += b.statements
				}
			}
		}
		if total > 0 {
			t.Logf("%-16s %3d %% of statements reached by the published checks alone", folder, 100*hit/total)
		}
	}
}

type block struct{ start, end, statements, count int }

func readProfile(t *testing.T, path string) map[string][]block {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	blocks := map[string][]block{}
	for sc := bufio.NewScanner(f); sc.Scan(); {
		file, rest, ok := strings.Cut(sc.Text(), ":")
		if !ok || file == "mode" {
			continue
		}
		var b block
		var c1, c2 int
		if _, err := fmt.Sscanf(rest, "%d.%d,%d.%d %d %d", &b.start, &c1, &b.end, &c2, &b.statements, &b.count); err != nil {
			t.Fatalf("%s: %q: %v", path, sc.Text(), err)
		}
		blocks[file] = append(blocks[file], b)
	}
	return blocks
}

// TestLayers keeps the house in order: the four packages stand alone, and
// only route/passage, published and the examples know all of them.
func TestLayers(t *testing.T) {
	const module = "followingsea.example/"
	allowed := map[string][]string{
		"wave":          {"internal/"},
		"wave/spectrum": {"internal/", "wave"},
		"wave/ride":     {"internal/", "wave", "wave/spectrum"},
		"wind":          {"internal/"},
		"tide":          {"internal/"},
		"tide/harmonic": {"internal/", "tide"},
		"route":         {"internal/"},
		"route/passage": {"internal/", "wave", "wave/spectrum", "wave/ride", "wind", "tide", "tide/harmonic", "route"},
	}
	for folder, imports := range readSource(t).imports {
		for _, im := range imports {
			rest, ours := strings.CutPrefix(im, module)
			if !ours {
				if strings.Contains(strings.Split(im, "/")[0], ".") && !strings.HasPrefix(im, "gonum.org/v1/gonum") {
					t.Errorf("%s imports %s; the library depends on gonum alone", folder, im)
				}
				continue
			}
			if strings.HasPrefix(rest, "internal/reference") {
				t.Errorf("%s imports %s", folder, im)
				continue
			}
			if !slices.ContainsFunc(allowed[folder], func(a string) bool { return rest == a || strings.HasSuffix(a, "/") && strings.HasPrefix(rest, a) }) {
				t.Errorf("%s imports %s", folder, im)
			}
		}
	}
}

// TestTopLevel: the top of the tree holds what the design lists and no more.
func TestTopLevel(t *testing.T) {
	want := []string{"CHANGELOG.md", "DEVELOPERS.md", "LICENSE", "README.md", "examples", "go.mod", "go.sum", "internal", "route", "tide", "wave", "wind"}
	entries, err := os.ReadDir(root)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") {
			got = append(got, e.Name())
		}
	}
	for _, name := range got {
		if !slices.Contains(want, name) {
			t.Errorf("%s does not belong at the top of the tree", name)
		}
	}
	for _, name := range want {
		if !slices.Contains(got, name) {
			t.Errorf("%s is missing from the top of the tree", name)
		}
	}
}
