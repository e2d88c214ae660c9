package main

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/wave/ride"
)

var update = flag.Bool("update", false, "rewrite the stored output")

func TestOutput(t *testing.T) {
	var got bytes.Buffer
	if err := bumps(&got); err != nil {
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

// The lesson itself: on the open sea the rideable part of the energy and the
// share of dominant waves that are caught only fall with age, and no ground
// swell is ever caught in deep water.
func TestLesson(t *testing.T) {
	for _, speed := range []float64{10, 13} {
		seas, err := ageing(speed, 2000e3)
		if err != nil {
			t.Fatal(err)
		}
		for i := 1; i < len(seas); i++ {
			a, b := seas[i-1], seas[i]
			if !(b.hs >= a.hs && b.tp >= a.tp && b.club.EnergyShare <= a.club.EnergyShare && b.club.DominantShare <= a.club.DominantShare) {
				t.Errorf("%v m/s: %v h: %+v; then %v h: %+v", speed, a.hours, a.club, b.hours, b.club)
			}
		}
		if last := seas[len(seas)-1]; !(last.club.DominantShare < 1e-6 && last.club.EnergyShare < 0.1 && last.club.Gain > 0) {
			t.Errorf("%v m/s, 72 h: %+v", speed, last.club)
		}
	}
	for _, period := range []float64{10, 11, 12, 13, 14, 15, 16} {
		for _, height := range []float64{0.5, 1, 2, 4, 8} {
			a, err := racer.Appraise(ride.Bump{Height: height, Period: period, Depth: deep, Wind: 10})
			if err != nil {
				t.Fatal(err)
			}
			if a.Verdict != ride.TooFast {
				t.Errorf("%v s, %v m: %q", period, height, a.Verdict)
			}
		}
	}
}

// A full disk is an error, not a silent half page.
func TestWriterFails(t *testing.T) {
	if err := bumps(broken{}); err == nil {
		t.Error("no error")
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, os.ErrClosed }
