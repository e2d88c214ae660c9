package main

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"

	"followingsea.example/internal/reference"
)

// worstRows is how many of the rows nearest to their tolerance are listed.
const worstRows = 12

// summary writes what stands above the rows: how to read them, and the counts.
func (t table) summary(p *page) {
	p.heading(1, "What this library is checked against")
	if p.markdown {
		p.para("Written by `go generate ./examples/checks`; not edited by hand. `go run ./examples/checks -h` prints it in other orders.")
	}
	t.counts(p)
	t.byBasis(p)
	t.byClass(p)
	t.regimes(p)
	t.worst(p)
	t.noneFound(p)
	t.findings(p)
	if p.markdown {
		format(p)
	}
}

// counts is the first paragraph.
func (t table) counts(p *page) {
	var pays, tight int
	sources, functions := map[string]bool{}, map[string]bool{}
	for _, r := range t.rows {
		if r.Basis.Pays() {
			pays++
			functions[r.Subject] = true
			if r.Source != "" {
				sources[r.Source] = true
			}
		}
		if r.outcome.OK {
			tight++
		}
	}
	p.para("%d checks on %d declared functions, methods, laws and variables; %d of the checks are printed in a source, a table or a chart or are "+
		"exact by definition, from %d sources, on %d functions. %d of %d hold. The bibliography has %d entries.",
		len(t.rows), len(t.subjects), pays, len(sources), len(functions), tight, len(t.rows), len(t.sources))
	p.para("The tolerance is half a unit of the last digit printed, computed from the digits, unless the row says why it is wider (column `why` of " +
		"checks.csv). error/tol is the distance between the print and the library over that tolerance: up to 1.00 holds.")
}

// byBasis counts checks by package and basis.
func (t table) byBasis(p *page) {
	count := map[string]map[reference.Basis]int{}
	var order []string
	for _, r := range t.rows {
		k := pkg(r.Subject)
		if count[k] == nil {
			count[k] = map[reference.Basis]int{}
			order = append(order, k)
		}
		count[k][r.Basis]++
		if count["all"] == nil {
			count["all"] = map[reference.Basis]int{}
		}
		count["all"][r.Basis]++
	}
	p.heading(2, "Checks by package and basis")
	p.para("printed: a worked example. table: a row of a published table. chart: read off a chart. exact: a definition or a mathematical limit. " +
		"Only these four pay for a formula. peer: an independent program. computed: an independent computation of our own. practice: a rule of " +
		"the trade without a source. memory: a published value that nobody here could open.")
	header := []string{"package"}
	for _, b := range reference.Bases {
		header = append(header, string(b))
	}
	header = append(header, "all", "paying")
	var rows [][]string
	for _, k := range append(order, "all") {
		r := []string{k}
		total, pays := 0, 0
		for _, b := range reference.Bases {
			n := count[k][b]
			total += n
			if b.Pays() {
				pays += n
			}
			r = append(r, fmt.Sprint(n))
		}
		rows = append(rows, append(r, fmt.Sprint(total), fmt.Sprint(pays)))
	}
	p.grid(header, rows)
}

// byClass counts subjects by package and class, and paying checks per formula.
func (t table) byClass(p *page) {
	count := map[string]map[reference.Class]int{"all": {}}
	var order []string
	for _, s := range t.subjects {
		k := s.Package()
		if count[k] == nil {
			count[k] = map[reference.Class]int{}
			order = append(order, k)
		}
		count[k][s.Class]++
		count["all"][s.Class]++
	}
	p.heading(2, "Functions by package and class")
	p.para("A formula owes a paying check in each of its branches. The others owe what stands beside reference.Class: a composition worked by hand, " +
		"an oracle, days worked by hand, a round trip and a fuzz target, a property.")
	header := []string{"package"}
	for _, c := range reference.Classes {
		header = append(header, string(c))
	}
	var rows [][]string
	for _, k := range append(order, "all") {
		r := []string{k}
		for _, c := range reference.Classes {
			r = append(r, fmt.Sprint(count[k][c]))
		}
		rows = append(rows, r)
	}
	p.grid(header, rows)

	paying := map[string]int{}
	for _, r := range t.rows {
		if r.Basis.Pays() {
			paying[r.Subject]++
		}
	}
	bins := []struct {
		name   string
		lo, hi int
		n      int
	}{{"none", 0, 0, 0}, {"1", 1, 1, 0}, {"2", 2, 2, 0}, {"3 to 5", 3, 5, 0}, {"6 to 10", 6, 10, 0}, {"11 and more", 11, math.MaxInt, 0}}
	for _, s := range t.subjects {
		if s.Class != reference.Formula {
			continue
		}
		for i := range bins {
			if n := paying[s.Name]; n >= bins[i].lo && n <= bins[i].hi {
				bins[i].n++
			}
		}
	}
	rows = nil
	for _, b := range bins {
		rows = append(rows, []string{b.name, fmt.Sprint(b.n)})
	}
	p.heading(3, "Paying checks per formula")
	p.grid([]string{"checks", "formulas"}, rows)
}

// regimes counts the branches of formulas and those with a paying check.
func (t table) regimes(p *page) {
	seen, exact := map[string]bool{}, map[string]bool{}
	for _, r := range t.rows {
		for _, name := range r.outcome.Regimes {
			switch {
			case r.Basis == reference.Exact:
				exact[r.Subject+"\n"+name] = true
			case r.Basis.Pays():
				seen[r.Subject+"\n"+name] = true
			}
		}
	}
	var order []string
	total, paid, limit, recorded := map[string]int{}, map[string]int{}, map[string]int{}, map[string]int{}
	for _, s := range t.subjects {
		if s.Class != reference.Formula {
			continue
		}
		k := s.Package()
		if total[k] == 0 {
			order = append(order, k)
		}
		for _, name := range s.AllRegimes() {
			for _, key := range []string{k, "all"} {
				total[key]++
				switch {
				case seen[s.Name+"\n"+name]:
					paid[key]++
				case exact[s.Name+"\n"+name]:
					limit[key]++
				case s.NoneFound[name] != "":
					recorded[key]++
				}
			}
		}
	}
	p.heading(2, "Branches of formulas")
	var rows [][]string
	for _, k := range append(order, "all") {
		rows = append(rows, []string{k, fmt.Sprint(total[k]), fmt.Sprint(paid[k]), fmt.Sprint(limit[k]), fmt.Sprint(recorded[k])})
	}
	p.grid([]string{"package", "branches", "with a print, table or chart", "with an exact check alone", "none found, recorded"}, rows)
}

// worst lists the rows nearest to their tolerance.
func (t table) worst(p *page) {
	var rows []row
	for _, r := range t.rows {
		// A ratio of fewer decimals is an error of the size of the arithmetic.
		if _, decimals, _ := strings.Cut(r.Ratio, "."); r.Basis.Pays() && len(decimals) >= 2 {
			rows = append(rows, r)
		}
	}
	// The order is that of the printed ratios, so that it does not depend on
	// the last bits of the arithmetic.
	sort.SliceStable(rows, func(i, j int) bool { return number(rows[i].Ratio) > number(rows[j].Ratio) })
	p.heading(2, "Nearest to the tolerance")
	p.para("The paying rows whose error is the largest part of the tolerance.")
	var cells [][]string
	for _, r := range rows[:min(worstRows, len(rows))] {
		said := r.Note
		if said == "" {
			said = r.Why
		}
		cells = append(cells, []string{r.ID, r.Subject, r.Printed + " " + r.Unit, r.Computed, r.Ratio, string(r.Basis), r.Source, said})
	}
	p.grid([]string{"check", "function", "printed", "computed", "error/tol", "basis", "source", "what was found"}, cells)
	over := map[string]int{}
	for _, r := range rows {
		switch x := number(r.Ratio); {
		case x <= 0.1:
			over["to 0.1"]++
		case x <= 0.5:
			over["to 0.5"]++
		case x <= 0.9:
			over["to 0.9"]++
		default:
			over["to 1"]++
		}
	}
	p.para("Of %d paying rows with digits, %d are within a tenth of their tolerance, %d more within half of it, %d more within nine tenths, and %d beyond.",
		len(rows), over["to 0.1"], over["to 0.5"], over["to 0.9"], over["to 1"])
}

// number reads a ratio printed by this program.
func number(s string) float64 {
	var x float64
	fmt.Sscan(s, &x)
	return x
}

// noneFound lists every branch for which no published value could be found.
func (t table) noneFound(p *page) {
	p.heading(2, "None found")
	p.para("Branches of formulas for which a search found no published value that could be opened. Each has an exact limit or a property test instead.")
	var cells [][]string
	for _, s := range t.subjects {
		names := make([]string, 0, len(s.NoneFound))
		for name := range s.NoneFound {
			names = append(names, name)
		}
		slices.Sort(names)
		for _, name := range names {
			cells = append(cells, []string{s.Name, name, s.NoneFound[name], strings.Join(s.Tests, ", ")})
		}
	}
	p.grid([]string{"function", "branch", "what was searched", "tested by"}, cells)
}

// findings lists what was learned when a print and the library were compared.
func (t table) findings(p *page) {
	p.heading(2, "What the comparisons found")
	p.para("Notes on paying rows: slips of a source, a constant it uses, how a value was read.")
	var cells [][]string
	for _, r := range t.rows {
		if r.Note != "" && r.Basis.Pays() {
			cells = append(cells, []string{r.ID, r.Source, r.Note})
		}
	}
	p.grid([]string{"check", "source", "note"}, cells)
}

// bibliography lists every source.
func (t table) bibliography(p *page) {
	uses := map[string]int{}
	for _, r := range t.rows {
		uses[r.Source]++
	}
	sources := slices.Clone(t.sources)
	slices.SortFunc(sources, func(a, b reference.Source) int {
		if c := strings.Compare(strings.ToLower(a.Key), strings.ToLower(b.Key)); c != 0 {
			return c
		}
		return strings.Compare(a.Key, b.Key)
	})
	p.heading(2, "Bibliography")
	var cells [][]string
	for _, s := range sources {
		cells = append(cells, []string{s.Key, s.Citation, s.ID, fmt.Sprint(uses[s.Key])})
	}
	p.grid([]string{"key", "work", "identifier", "checks"}, cells)
}

// format describes checks.csv.
func format(p *page) {
	p.heading(2, "checks.csv: the same rows as test vectors")
	p.para("UTF-8, comma-separated, RFC 4180 quoting, one header row, one row for each check. Nothing in it depends on Go. To test a port: " +
		"for each row read `inputs`, convert each number to the units your function takes, evaluate `subject`, convert `result` to `unit`, and ask " +
		"for |computed - printed| <= tolerance (written so, a NaN fails).")
	p.grid([]string{"column", "holds"}, [][]string{
		{"id", "lower-case words joined by hyphens; unique; they stay the same from version to version"},
		{"subject", "package and function, method or law as the documentation names it"},
		{"inputs", "name=value pairs separated by comma and space. A number is followed by a space and its unit (`depth=12 m`); `Inf` is infinity (deep water); a number without a unit is a plain ratio or count. " +
			"A list stands in brackets with spaces between, then the unit (`heights=[1 2 3] m`). A text (`object=surfboard`) and an instant in RFC 3339 (`at=2026-06-21T04:43:00Z`) stand alone"},
		{"result", "which result of the subject"},
		{"printed", "the digits as the source prints them, with the source's own zeros; `1/12` is a fraction; for unit `text` the name of a state"},
		{"unit", "unit of `printed` and of `tolerance`"},
		{"tolerance", "a number in `unit`; empty for a state, which must be equal. For the units that print several numbers it is in the base: degrees for dms and dm, seconds for hms, hh:mm and mm:ss"},
		{"basis", "printed, table, chart, exact, peer, computed, practice or memory, as above"},
		{"source, locator", "key of the bibliography, and where in the work"},
		{"class", "class of the subject"},
		{"regimes", "the branches that the inputs lie in, separated by semicolon and space"},
		{"computed", "what this library gives, in `unit`, with about one digit more than the print; for people, not for comparison"},
		{"ratio", "error over tolerance; `-` for a state or an exact value"},
		{"why", "the reason for a tolerance wider than half a digit"},
		{"note", "what was found in the comparison"},
	})
	p.para("Units are SI or exact multiples (kn 1852/3600 m/s, ft 0.3048 m, lbf 4.4482216152605 N, F and C temperatures, dC and dF differences). `1` is a plain " +
		"number and `%%` its hundredth. Composite forms: dms \"306 52 05.37\" and dm are degrees, minutes, seconds; hms, hh:mm and mm:ss are clock " +
		"times or spans. Angles are degrees true unless the unit says otherwise. A gravity or density of 0 stands for the default, 9.80665 m/s2 and 1025 kg/m3.")
}
