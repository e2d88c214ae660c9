// Checks prints the table of what this library is checked against: each
// published value, what the library gives for it, and the error over the
// tolerance.
//
//	go run ./examples/checks                          the whole table as text, a summary on top
//	go run ./examples/checks -by source               grouped by source (or package, function, basis)
//	go run ./examples/checks -only wave.Length        one function, package, source, basis or check
//	go run ./examples/checks -format csv              the test vectors (or markdown)
//	go run ./examples/checks -summary                 the counts alone
//
// CHECKS.md and checks.csv beside this file are its stored output. The CSV
// can be run by a port of the library to another language; CHECKS.md says how
// to read it.
package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"
	"sync"

	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/published"
)

//go:generate go run . -write

func main() { os.Exit(checks(os.Args[1:], os.Stdout, os.Stderr)) }

// checks is the whole program; it returns the exit code: 0, 1 when a check
// does not hold, 2 for an option that cannot be used.
func checks(args []string, stdout, stderr io.Writer) int {
	flags := flag.NewFlagSet("checks", flag.ContinueOnError)
	flags.SetOutput(stderr)
	by := flags.String("by", "all", "how to group the rows: all, package, source, function or basis")
	format := flags.String("format", "text", "text, markdown or csv")
	only := flags.String("only", "", "only the rows of this package, function, source, basis or check `name`")
	short := flags.Bool("summary", false, "the summary without the rows")
	write := flags.Bool("write", false, "write CHECKS.md and checks.csv to the current folder")
	switch err := flags.Parse(args); {
	case errors.Is(err, flag.ErrHelp):
		return 0
	case err != nil:
		return 2
	}
	refuse := func(format string, args ...any) int {
		fmt.Fprintf(stderr, "checks: "+format+"\n", args...)
		return 2
	}
	if flags.NArg() > 0 {
		return refuse("no argument is expected, got %q", flags.Arg(0))
	}
	group, ok := groups[*by]
	if !ok {
		return refuse("-by %s: want all, package, source, function or basis", *by)
	}
	t := runAll()
	if *write {
		if err := t.store("CHECKS.md", "checks.csv"); err != nil {
			fmt.Fprintf(stderr, "checks: %v\n", err)
			return 1
		}
		return t.code()
	}
	rows := t.rows
	if *only != "" {
		if rows = filter(rows, *only); len(rows) == 0 {
			return refuse("-only %s: no row of that package, function, source, basis or id", *only)
		}
	}
	var err error
	switch *format {
	case "csv":
		err = writeCSV(stdout, rows)
	case "text", "markdown":
		p := &page{w: stdout, markdown: *format == "markdown"}
		if *only == "" {
			t.summary(p)
		}
		if !*short {
			p.tables(rows, group)
		}
		if *only == "" && !*short {
			t.bibliography(p)
		}
		err = p.err
	default:
		return refuse("-format %s: want text, markdown or csv", *format)
	}
	if err != nil {
		fmt.Fprintf(stderr, "checks: %v\n", err)
		return 1
	}
	return t.code()
}

// A row is one check with its outcome.
type row struct {
	reference.Vector
	outcome reference.Outcome
}

// A table is every check, run.
type table struct {
	subjects []reference.Subject
	sources  []reference.Source
	rows     []row
	failed   int
}

// runAll runs every check, once.
var runAll = sync.OnceValue(func() table {
	t := table{subjects: published.Subjects(), sources: published.Sources()}
	index := published.Index()
	for _, c := range published.Checks() {
		s := index[c.Subject]
		o := c.Run(s)
		v, err := reference.NewVector(s, o)
		if err != nil { // the row stays in the table, and counts as failed
			v = reference.Vector{ID: c.ID, Subject: c.Subject, Inputs: c.In, Printed: c.Printed, Basis: c.Basis, Computed: err.Error()}
		}
		if !o.OK {
			t.failed++
		}
		t.rows = append(t.rows, row{v, o})
	}
	return t
})

// code is the exit code: 1 when a check does not hold.
func (t table) code() int {
	if t.failed > 0 {
		return 1
	}
	return 0
}

// groups are the ways to group rows.
var groups = map[string]func(row) string{
	"all":      func(row) string { return "" },
	"package":  func(r row) string { return pkg(r.Subject) },
	"source":   func(r row) string { return r.Source },
	"function": func(r row) string { return r.Subject },
	"basis":    func(r row) string { return string(r.Basis) },
}

// pkg is the package part of a subject's name.
func pkg(subject string) string { p, _, _ := strings.Cut(subject, "."); return p }

// filter keeps the rows of one package, function, source, basis or check.
func filter(rows []row, name string) []row {
	var out []row
	for _, r := range rows {
		for _, key := range []string{pkg(r.Subject), r.Subject, r.Source, string(r.Basis), r.ID} {
			if key == name {
				out = append(out, r)
				break
			}
		}
	}
	return out
}

// store writes the two stored files.
func (t table) store(markdown, csv string) error {
	for name, write := range map[string]func(io.Writer) error{markdown: t.markdown, csv: t.csv} {
		var b strings.Builder
		if err := write(&b); err != nil {
			return err
		}
		if err := os.WriteFile(name, []byte(b.String()), 0o644); err != nil {
			return err
		}
	}
	return nil
}

// csv writes every row as a test vector.
func (t table) csv(w io.Writer) error { return writeCSV(w, t.rows) }

func writeCSV(w io.Writer, rows []row) error {
	var vectors []reference.Vector
	for _, r := range rows {
		vectors = append(vectors, r.Vector)
	}
	return reference.WriteVectors(w, vectors)
}

// markdown writes the stored page: summary, rows by function, bibliography.
func (t table) markdown(w io.Writer) error {
	p := &page{w: w, markdown: true}
	t.summary(p)
	p.tables(t.rows, groups["function"])
	t.bibliography(p)
	return p.err
}
