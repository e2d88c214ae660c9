package lesson

import (
	"bytes"
	"flag"
	"math"
	"os"
	"strings"
	"testing"
)

func double(f *flag.FlagSet) Body {
	x := Number(f, "x", 1, 0, math.Inf(1), "what to double")
	return func(p *Page) error { p.Line("%v  ", 2*x()); return nil }
}

func TestRun(t *testing.T) {
	for _, c := range []struct {
		args     []string
		code     int
		out, say string
	}{
		{nil, 0, "2\n", ""},
		{[]string{"-x", "3"}, 0, "6\n", ""},
		{[]string{"-x", "inf"}, 0, "+Inf\n", ""},
		{[]string{"-x", "nan"}, 2, "", "want a number from 0 to +Inf"},
		{[]string{"-x", "-1"}, 2, "", "want a number"},
		{[]string{"-x", "1,2"}, 2, "", "want one number"},
		{[]string{"-x", ""}, 2, "", "want a number"},
		{[]string{"-y", "1"}, 2, "", "-y"},
		{[]string{"more"}, 2, "", "more"},
		{[]string{"-h"}, 0, "", "what to double"},
	} {
		var out, say bytes.Buffer
		code := Run("double", double, c.args, &out, &say)
		if code != c.code || out.String() != c.out || !strings.Contains(say.String(), c.say) {
			t.Errorf("%q: exit %d, %q, %q", c.args, code, out.String(), say.String())
		}
	}
	if code := Run("double", double, nil, broken{}, &bytes.Buffer{}); code != 1 {
		t.Errorf("a broken pipe: exit %d", code)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, os.ErrClosed }
