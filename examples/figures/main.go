// Figures draws the teaching curves and, from a plan, the plots of one day.
//
//	go -C examples/figures run . -out DIR
//	go run ./examples/plan -json | go -C examples/figures run . -plan - -out DIR
//
// Each figure is written as SVG and as PNG, into a new temporary folder where
// none is given. It is a module of its own, so that the library needs no
// plotting: see its go.mod.
package main

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
)

func main() { os.Exit(figures(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) }

// figures is the whole program; it returns the exit code.
func figures(args []string, stdin io.Reader, stdout, stderr io.Writer) int {
	f := flag.NewFlagSet("figures", flag.ContinueOnError)
	f.SetOutput(stderr)
	out := f.String("out", "", "folder for the figures; without it a new temporary one")
	plan := f.String("plan", "", "output of examples/plan -json: a file, or - for what comes in; without it the day is not drawn")
	if err := f.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return 0
		}
		return 2
	}
	if f.NArg() > 0 {
		fmt.Fprintf(stderr, "figures: %q is not a flag; -h lists them\n", f.Arg(0))
		return 2
	}
	all := teaching()
	if *plan != "" {
		d, err := readDay(*plan, stdin)
		if err != nil {
			fmt.Fprintf(stderr, "figures: -plan: %v\n", err)
			return 2
		}
		all = append(all, d.figures()...)
	}
	folder := *out
	var err error
	if folder == "" {
		folder, err = os.MkdirTemp("", "figures")
	} else {
		err = os.MkdirAll(folder, 0o755)
	}
	if err != nil {
		fmt.Fprintf(stderr, "figures: -out: %v\n", err)
		return 2
	}
	for _, fig := range all {
		if err := fig.save(folder); err != nil {
			fmt.Fprintf(stderr, "figures: %s: %v\n", fig.name, err)
			return 1
		}
		fmt.Fprintf(stdout, "%-20s %s\n", fig.name, fig.shows)
	}
	if *plan == "" {
		fmt.Fprintln(stdout, "the day is not drawn: no -plan")
	}
	fmt.Fprintf(stdout, "as SVG and PNG in %s\n", folder)
	return 0
}

// largest is the largest plan that is read.
const largest = 32 << 20

func readDay(name string, stdin io.Reader) (*day, error) {
	in := stdin
	if name != "-" {
		file, err := os.Open(name)
		if err != nil {
			return nil, err
		}
		defer file.Close()
		in = file
	}
	b, err := io.ReadAll(io.LimitReader(in, largest+1))
	if err != nil {
		return nil, err
	}
	if len(b) > largest {
		return nil, errors.New("larger than 32 MB")
	}
	d := &day{}
	if err := json.Unmarshal(b, d); err != nil {
		return nil, fmt.Errorf("not the JSON of a plan: %w", err)
	}
	return d, d.check()
}
