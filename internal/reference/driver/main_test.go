package main

import (
	"strings"
	"testing"
)

func TestDrive(t *testing.T) {
	in := "id,subject,inputs,result\n" +
		"a,wave.Length,\"period=10 s, depth=Inf m\",length\n" +
		"b,wave.Length,\"period=10 s, depth=Inf m\",\n" +
		"c,wave.Wave.Regime,\"period=10 s, depth=1000 m, gravity=0\",regime\n" +
		"d,wave.Nothing,x=1,y\n" +
		"e,wave.Length,period=10 s,length\n" +
		"f,wave.Length,\"period=10 s, depth=1 m\",mass\n"
	var out strings.Builder
	if err := drive(strings.NewReader(in), &out); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(strings.TrimSpace(out.String()), "\n")
	for i, want := range []string{"subject,inputs,result,value,unit", ",length,156.07", ",,156.07", ",text", "no such subject,error", ",error", ",error"} {
		if i >= len(lines) || !strings.Contains(lines[i], want) {
			t.Errorf("line %d of\n%s\nlacks %q", i+1, out.String(), want)
		}
	}
	for _, bad := range []string{"", "subject,inputs\n", "subject,inputs,result\na\n"} {
		if err := drive(strings.NewReader(bad), &out); err == nil {
			t.Errorf("%q is accepted", bad)
		}
	}
}
