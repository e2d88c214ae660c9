package main

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/wave"
)

var update = flag.Bool("update", false, "rewrite the stored output")

func TestOutput(t *testing.T) {
	var got bytes.Buffer
	if err := headland(&got); err != nil {
		t.Fatal(err)
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

// The lesson itself: a stream against the waves does more to the short sea than to the long one, at any strength.
func TestLesson(t *testing.T) {
	for knots := 0.5; knots < 3.5; knots += 0.5 {
		short, long := wave.OnCurrent(windSea.Period, 20, -knots*wave.Knot), wave.OnCurrent(swell.Period, 20, -knots*wave.Knot)
		if !(short.SteepnessRatio > long.SteepnessRatio && long.SteepnessRatio > 1) {
			t.Errorf("%v kn: %v and %v", knots, short.SteepnessRatio, long.SteepnessRatio)
		}
	}
}
