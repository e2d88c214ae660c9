// Package lessontest holds what the tests of the small programs share.
package lessontest

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/examples/internal/lesson"
)

var update = flag.Bool("update", false, "rewrite the stored output")

// Output compares what the lesson prints without flags with testdata/output.txt.
func Output(t *testing.T, name string, program func(f *flag.FlagSet) lesson.Body) {
	t.Helper()
	var got, say bytes.Buffer
	if code := lesson.Run(name, program, nil, &got, &say); code != 0 {
		t.Fatalf("exit %d: %s", code, say.String())
	}
	const file = "testdata/output.txt"
	if *update {
		if err := os.WriteFile(file, got.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(string(want), got.String()); d != "" {
		t.Errorf("output differs from the stored one (run with -update if that is meant):\n%s", d)
	}
}

// Prints checks that with the flags the lesson prints each of the texts, and
// no NaN.
func Prints(t *testing.T, name string, program func(f *flag.FlagSet) lesson.Body, args []string, texts ...string) {
	t.Helper()
	var out, say bytes.Buffer
	if code := lesson.Run(name, program, args, &out, &say); code != 0 {
		t.Errorf("%q: exit %d: %s", args, code, say.String())
	}
	for _, s := range texts {
		if !strings.Contains(out.String(), s) {
			t.Errorf("%q: no %q in\n%s", args, s, out.String())
		}
	}
	if strings.Contains(out.String(), "NaN") {
		t.Errorf("%q: NaN in\n%s", args, out.String())
	}
}

// Refuses checks that each set of flags is refused with exit code 2, a message
// that names the last flag, and nothing printed.
func Refuses(t *testing.T, name string, program func(f *flag.FlagSet) lesson.Body, sets ...[]string) {
	t.Helper()
	for _, args := range sets {
		var out, say bytes.Buffer
		code := lesson.Run(name, program, args, &out, &say)
		if code != 2 || out.Len() > 0 || !strings.Contains(say.String(), strings.TrimLeft(args[len(args)-2], "-")) {
			t.Errorf("%q: exit %d, %q, %q", args, code, out.String(), say.String())
		}
	}
}
