package main

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"
)

// A page writes headings, paragraphs and tables, as Markdown or as text with
// columns that line up. The first error of the writer stays in err.
type page struct {
	w        io.Writer
	markdown bool
	err      error
}

func (p *page) print(format string, args ...any) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.w, format, args...)
	}
}

func (p *page) heading(level int, text string) {
	if p.markdown {
		p.print("%s %s\n\n", strings.Repeat("#", level), text)
	} else {
		p.print("%s\n\n", text)
	}
}

func (p *page) para(format string, args ...any) { p.print("%s\n\n", fmt.Sprintf(format, args...)) }

// grid writes a table with a header row.
func (p *page) grid(header []string, rows [][]string) {
	if p.markdown {
		p.print("| %s |\n|%s\n", strings.Join(header, " | "), strings.Repeat("---|", len(header)))
		for _, r := range rows {
			cells := make([]string, len(r))
			for i, c := range r {
				cells[i] = strings.NewReplacer("|", "\\|", "\n", " ", "<", "&lt;").Replace(c)
			}
			p.print("| %s |\n", strings.Join(cells, " | "))
		}
		p.print("\n")
		return
	}
	width := make([]int, len(header))
	all := append([][]string{header}, rows...)
	for _, r := range all {
		for i, c := range r {
			width[i] = max(width[i], utf8.RuneCountInString(c))
		}
	}
	for _, r := range all {
		var b strings.Builder
		for i, c := range r {
			b.WriteString(c)
			b.WriteString(strings.Repeat(" ", width[i]-utf8.RuneCountInString(c)+2))
		}
		p.print("%s\n", strings.TrimRight(b.String(), " "))
	}
	p.print("\n")
}

// tables writes the rows, a table for each group, in the order in which the
// groups first appear.
func (p *page) tables(rows []row, group func(row) string) {
	var order []string
	members := map[string][]row{}
	for _, r := range rows {
		key := group(r)
		if _, ok := members[key]; !ok {
			order = append(order, key)
		}
		members[key] = append(members[key], r)
	}
	p.heading(2, "The checks")
	for _, key := range order {
		same := true // one function: its name is the heading, not a column
		for _, r := range members[key] {
			same = same && r.Subject == key
		}
		header := []string{"check", "function", "inputs", "result", "printed", "unit", "computed", "error/tol", "basis", "source", "locator"}
		if same {
			header = append(header[:1], header[2:]...)
		}
		if key != "" {
			p.heading(3, key)
		}
		var cells [][]string
		for _, r := range members[key] {
			c := []string{r.ID, r.Subject, r.Inputs, r.Result, r.Printed, r.Unit, r.Computed, r.Ratio, string(r.Basis), r.Source, r.Locator}
			if !r.outcome.OK {
				c[7] = "FAILS " + c[7]
			}
			if same {
				c = append(c[:1], c[2:]...)
			}
			cells = append(cells, c)
		}
		p.grid(header, cells)
	}
}
