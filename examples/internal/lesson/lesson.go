// Package lesson holds what the small programs under examples share, so that
// each of them is its lesson and nothing else: flags that know their range,
// and how a program ends.
package lesson

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"strconv"
	"strings"
)

// A Body prints a lesson.
type Body func(p *Page) error

// Main runs a lesson on the command line and ends the process.
func Main(name string, lesson func(f *flag.FlagSet) Body) {
	os.Exit(Run(name, lesson, os.Args[1:], os.Stdout, os.Stderr))
}

// Run runs a lesson, which declares its flags and returns its body, and
// returns the exit code: 0 for a printed table or for -h, 1 where the table
// could not be written, 2 for what cannot be used. Nothing is printed but the
// whole table.
func Run(name string, lesson func(f *flag.FlagSet) Body, args []string, stdout, stderr io.Writer) int {
	f := flag.NewFlagSet(name, flag.ContinueOnError)
	f.SetOutput(io.Discard)
	body := lesson(f)
	err := f.Parse(args)
	if errors.Is(err, flag.ErrHelp) {
		fmt.Fprintf(stderr, "go run ./examples/%s [flags]\n", name)
		f.SetOutput(stderr)
		f.PrintDefaults()
		return 0
	}
	if err == nil && f.NArg() > 0 {
		err = fmt.Errorf("%q is not a flag; -h lists them", f.Arg(0))
	}
	var p Page
	if err == nil {
		err = body(&p)
	}
	if err != nil {
		fmt.Fprintf(stderr, "%s: %v\n", name, err)
		return 2
	}
	if _, err := stdout.Write(p.b.Bytes()); err != nil {
		fmt.Fprintf(stderr, "%s: %v\n", name, err)
		return 1
	}
	return 0
}

// A Page gathers the lines of a table.
type Page struct{ b bytes.Buffer }

// Line adds a line, without blanks at its end.
func (p *Page) Line(format string, args ...any) {
	p.b.WriteString(strings.TrimRight(fmt.Sprintf(format, args...), " ") + "\n")
}

// numbers is the value of a flag: one number, or a list with commas.
type numbers struct {
	x      *[]float64
	lo, hi float64
	one    bool
}

// String writes the numbers.
func (n numbers) String() string {
	if n.x == nil {
		return ""
	}
	var s []string
	for _, x := range *n.x {
		s = append(s, strconv.FormatFloat(x, 'g', -1, 64))
	}
	return strings.Join(s, ",")
}

// Set reads the numbers and holds them against the range; NaN is in none.
func (n numbers) Set(text string) error {
	parts := strings.Split(text, ",")
	if n.one && len(parts) != 1 || len(parts) > 40 {
		return errors.New("want one number, or at most 40 where a list is asked for")
	}
	var list []float64
	for _, part := range parts {
		x, err := strconv.ParseFloat(strings.TrimSpace(part), 64)
		if err != nil || !(x >= n.lo && x <= n.hi) {
			return fmt.Errorf("%s: want a number from %v to %v", strings.TrimSpace(part), n.lo, n.hi)
		}
		list = append(list, x)
	}
	*n.x = list
	return nil
}

// Numbers declares a flag that takes a list of numbers from lo to hi.
func Numbers(f *flag.FlagSet, name string, list []float64, lo, hi float64, usage string) *[]float64 {
	f.Var(numbers{x: &list, lo: lo, hi: hi}, name, usage)
	return &list
}

// Number declares a flag that takes one number from lo to hi.
func Number(f *flag.FlagSet, name string, x, lo, hi float64, usage string) func() float64 {
	list := []float64{x}
	f.Var(numbers{x: &list, lo: lo, hi: hi, one: true}, name, usage)
	return func() float64 { return list[0] }
}
