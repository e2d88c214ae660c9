// Driver evaluates functions of the library for a program in another
// language. It reads rows of comma-separated values from standard input, a
// header "subject,inputs,result" first, in the form of examples/checks/checks.csv
// (columns it does not need may be there too), and writes the header
// "subject,inputs,result,value,unit" and a row for each: the value in SI with
// all its digits, a named state with the unit "text", or with the unit
// "error" what was wrong.
//
//	printf 'subject,inputs,result\nwave.Length,"period=10 s, depth=12 m",length\n' | go run ./internal/reference/driver
package main

import (
	"bufio"
	"encoding/csv"
	"fmt"
	"io"
	"os"
	"strconv"

	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/published"
)

func main() {
	if err := drive(os.Stdin, os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "driver:", err)
		os.Exit(1)
	}
}

// drive answers row by row and keeps none of them.
func drive(r io.Reader, w io.Writer) error {
	in := csv.NewReader(bufio.NewReader(r))
	in.ReuseRecord = true
	buffered := bufio.NewWriter(w)
	out := csv.NewWriter(buffered)
	header, err := in.Read()
	if err != nil {
		return fmt.Errorf("header: %w", err)
	}
	at := map[string]int{}
	for i, name := range header {
		at[name] = i
	}
	for _, name := range []string{"subject", "inputs", "result"} {
		if _, ok := at[name]; !ok {
			return fmt.Errorf("line 1: column %s is missing", name)
		}
	}
	index := published.Index()
	if err := out.Write([]string{"subject", "inputs", "result", "value", "unit"}); err != nil {
		return err
	}
	for {
		rec, err := in.Read()
		if err == io.EOF {
			out.Flush()
			if err := out.Error(); err != nil {
				return err
			}
			return buffered.Flush()
		}
		if err != nil {
			return err
		}
		subject, inputs, result := rec[at["subject"]], rec[at["inputs"]], rec[at["result"]]
		value, unit := answer(index, subject, inputs, result)
		if err := out.Write([]string{subject, inputs, result, value, unit}); err != nil {
			return err
		}
	}
}

// answer evaluates one row.
func answer(index map[string]reference.Subject, subject, inputs, result string) (value, unit string) {
	s, ok := index[subject]
	if !ok {
		return "no such subject", "error"
	}
	in, err := s.ParseIn(inputs)
	if err != nil {
		return err.Error(), "error"
	}
	v, unit, err := s.Value(in, result)
	if err != nil {
		return err.Error(), "error"
	}
	if x, ok := v.(float64); ok {
		return strconv.FormatFloat(x, 'g', -1, 64), unit
	}
	return fmt.Sprint(v), "text"
}
