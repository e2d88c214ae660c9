package main

import (
	"os"
	"path/filepath"
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "forecast", forecast)
	calm := filepath.Join(t.TempDir(), "wind.csv")
	if err := os.WriteFile(calm, []byte("time,wind_speed_kn,wind_from_deg\n2026-01-01T00:00:00Z,0,\n2026-01-01T03:00:00Z,10,90\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	// By hand: 10 knots from 90 on a course of 330: 60 degrees off the stern, 5.0 from astern.
	lessontest.Prints(t, "forecast", forecast, []string{"-data", calm, "-start", "2026-01-01T00:00:00Z", "-course", "330", "-level", "5"}, "calm", "below 5 kn", "60 from right             5.0        8.7")
}

func TestFlags(t *testing.T) {
	bad := filepath.Join(t.TempDir(), "wind.csv")
	if err := os.WriteFile(bad, []byte("time,wind_speed_kn,wind_from_deg\n2026-01-01T00:00:00Z,10,400\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	lessontest.Refuses(t, "forecast", forecast, []string{"-data", bad}, []string{"-data", "no-such-file"}, []string{"-course", "nan"}, []string{"-start", "noon"},
		[]string{"-start", "1999-01-01T00:00:00Z"}, []string{"-hours", "0"}, []string{"-level", "0"})
}
