package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
)

// TestFilesToLeave: the three files of the demonstration are written, read back,
// and agree with one another and with the plan.
func TestFilesToLeave(t *testing.T) {
	dir := t.TempDir()
	name := func(s string) string { return filepath.Join(dir, s) }
	code, text, stderr := do("-ashore", name("plan.txt"), "-ics", name("plan.ics"), "-gpx", name("plan.gpx"))
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	events, err := passage.ReadCalendar(strings.NewReader(get(t, dir, "plan.ics")))
	if err != nil || len(events) != 1 {
		t.Fatalf("%v %v", events, err)
	}
	tracks, err := route.ReadTracksGPX(strings.NewReader(get(t, dir, "plan.gpx")))
	if err != nil || len(tracks) != 1 || !tracks[0].Planned {
		t.Fatalf("%v %v", tracks, err)
	}
	e, fixes := events[0], tracks[0].Fixes
	if !fixes[0].Time.Equal(e.Start) || fixes[len(fixes)-1].Time.Sub(e.Finish).Abs() > time.Second {
		t.Errorf("the track goes from %v to %v, the calendar from %v to %v", fixes[0].Time, fixes[len(fixes)-1].Time, e.Start, e.Finish)
	}
	zone := time.FixedZone("", -2*3600)
	paper := get(t, dir, "plan.txt")
	for _, s := range []string{"ALARM TIME             " + e.Alarm.In(zone).Format("Mon 2 Jan 2006 15:04 "), "Ailis Orme", "Tally Cove", "Mayday"} {
		if !strings.Contains(paper, s) {
			t.Errorf("the paper does not say %q:\n%s", s, paper)
		}
	}
	for _, s := range []string{"alarm at " + e.Alarm.In(zone).Format("15:04"), "FOR THE DECK", "PASS BY", "AREAS ON THE WAY", "Skerry ferry line", "begin by"} {
		if !strings.Contains(text, s) {
			t.Errorf("the plan does not say %q", s)
		}
	}
	if !strings.HasPrefix(e.UID, "skarn-head-to-ling-bar-20260912T") || e.Description == "" {
		t.Errorf("identifier %q", e.UID)
	}
	if code, _, stderr = do("-gpx", name("plan.geojson")); code != exitPlan {
		t.Fatal(stderr)
	}
	if again, err := route.ReadTracks(strings.NewReader(get(t, dir, "plan.geojson"))); err != nil || len(again[0].Fixes) != len(fixes) {
		t.Errorf("%v %v", again, err)
	}
}

// TestFilesThatCannotBe: a file that cannot be written, a calendar without an
// alarm, a wrong form and a wrong observation are exit code 2, with nothing
// printed.
func TestFilesThatCannotBe(t *testing.T) {
	if testing.Short() {
		t.Skip("makes many plans")
	}
	dir := copyDemo(t)
	if code, out, stderr := do("-ashore", filepath.Join(dir, "no", "such", "folder.txt"), "-from", "10:00", "-to", "10:00"); code != exitInput || out != "" || !strings.Contains(stderr, "-ashore") {
		t.Errorf("exit %d: %s", code, stderr)
	}
	for _, s := range []string{"wind", "wind=", "wind=NaN", "wind=18furlongs", "from=400", "sea=-1m", "late=x", "late=-5m", "tide=1"} {
		if code, out, stderr := do("-seen", s, "-from", "10:00", "-to", "10:00"); code != exitInput || out != "" || stderr == "" {
			t.Errorf("%s: exit %d: %s", s, code, stderr)
		}
	}
	put(t, dir, formFile, `{"leeder": {}}`)
	if code, _, stderr := do("-data", dir, "-tz", demoZone); code != exitInput || !strings.Contains(stderr, formFile) || !strings.Contains(stderr, "leeder") {
		t.Errorf("exit %d: %s", code, stderr)
	}
	os.Remove(filepath.Join(dir, formFile))
	os.Remove(filepath.Join(dir, "stream.csv"))
	ics := filepath.Join(dir, "plan.ics")
	code, _, stderr := do("-data", dir, "-tz", demoZone, "-from", "2026-09-12T10:00", "-to", "2026-09-12T10:30", "-ics", ics)
	if _, err := os.Stat(ics); code != exitInput || !strings.Contains(stderr, "alarm") || err == nil {
		t.Errorf("exit %d: %s", code, stderr)
	}
	code, text, stderr := do("-data", dir, "-tz", demoZone, "-from", "2026-09-12T10:00", "-to", "2026-09-12T10:30")
	if code != exitPlan || !strings.Contains(text, "There is no alarm time") {
		t.Errorf("exit %d: %s", code, stderr)
	}
}

// TestSeenAtTheLaunch: more wind than the limit breaks it in the plan.
func TestSeenAtTheLaunch(t *testing.T) {
	code, text, stderr := do("-from", "2026-09-12T10:00", "-to", "2026-09-12T11:00", "-seen", "wind=26kn, from=250, late=10m")
	if code != exitPlan || !strings.Contains(text, "AT THE LAUNCH, AS SEEN") || !strings.Contains(text, "met     -> broken   wind at most 22.0 kn") {
		t.Errorf("exit %d: %s\n%s", code, stderr, text)
	}
}
