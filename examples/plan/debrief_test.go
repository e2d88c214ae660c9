package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"followingsea.example/route"
)

// TestDebriefOfAPlan: the planned track, taken as recorded, agrees with the plan.
func TestDebriefOfAPlan(t *testing.T) {
	if testing.Short() {
		t.Skip("makes many plans")
	}
	dir := t.TempDir()
	gpx := filepath.Join(dir, "plan.gpx")
	if code, _, stderr := do("-gpx", gpx, "-from", "10:00", "-to", "10:00"); code != exitPlan {
		t.Fatal(stderr)
	}
	if code, _, stderr := do("-debrief", gpx, "-from", "10:00", "-to", "10:00"); code != exitInput || !strings.Contains(stderr, "recorded") {
		t.Errorf("a plan: exit %d: %s", code, stderr)
	}
	tracks, err := route.ReadTracksGPX(strings.NewReader(get(t, dir, "plan.gpx")))
	if err != nil {
		t.Fatal(err)
	}
	tracks[0].Planned = false
	f, err := os.Create(gpx)
	if err != nil {
		t.Fatal(err)
	}
	if err := route.WriteTracksGPX(f, tracks); err != nil {
		t.Fatal(err)
	}
	f.Close()
	code, text, stderr := do("-debrief", gpx, "-from", "10:00", "-to", "10:00")
	if code != exitPlan || !strings.Contains(text, "THE TRACK AGAINST THE PLAN") || !strings.Contains(text, "more than 10 s apart") || !strings.Contains(text, "drag_n_s2_m2") {
		t.Errorf("exit %d: %s\n%s", code, stderr, text)
	}
	for _, name := range []string{filepath.Join(dir, "none.gpx"), dir} {
		if code, out, stderr := do("-debrief", name, "-from", "10:00", "-to", "10:00"); code != exitInput || out != "" || !strings.Contains(stderr, "-debrief") {
			t.Errorf("%s: exit %d: %s", name, code, stderr)
		}
	}
}

// TestLogInTheFolder: a log of runs is answered with a step, or with none; a
// wrong one is refused.
func TestLogInTheFolder(t *testing.T) {
	dir := copyDemo(t)
	args := []string{"-data", dir, "-tz", demoZone, "-from", "2026-09-12T10:00", "-to", "2026-09-12T10:30"}
	put(t, dir, logFile, "time,handling,greatest_wind_kn\n2026-08-01T10:00:00Z,in hand,20\n")
	if code, text, stderr := do(args...); code != exitPlan || !strings.Contains(text, "No step") {
		t.Errorf("exit %d: %s", code, stderr)
	}
	put(t, dir, logFile, "time,handling,greatest_wind_kn\n2026-08-01T10:00:00Z,easy,20\n")
	if code, _, stderr := do(args...); code != exitInput || !strings.Contains(stderr, logFile) || !strings.Contains(stderr, "line 2") {
		t.Errorf("exit %d: %s", code, stderr)
	}
}
