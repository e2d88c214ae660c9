package main

import (
	"bytes"
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"
)

// copyDemo writes the demonstration's files to a folder, so that a test can
// change them.
func copyDemo(t testing.TB) string {
	t.Helper()
	dir := t.TempDir()
	sub, err := fs.Sub(demonstration, "demo")
	if err != nil {
		t.Fatal(err)
	}
	if err := os.CopyFS(dir, sub); err != nil {
		t.Fatal(err)
	}
	return dir
}

func put(t testing.TB, dir, name, content string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(dir, name), []byte(content), 0o644); err != nil {
		t.Fatal(err)
	}
}

func get(t testing.TB, dir, name string) string {
	t.Helper()
	b, err := os.ReadFile(filepath.Join(dir, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// do runs the program on a folder.
func do(args ...string) (code int, stdout, stderr string) {
	var out, err bytes.Buffer
	code = plan(args, &out, &err)
	return code, out.String(), err.String()
}

// TestDemonstration: the embedded day has departures that break limits for
// different reasons and at least one that breaks none.
func TestDemonstration(t *testing.T) {
	code, text, stderr := do()
	if code != exitPlan || stderr != "" {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	for _, s := range []string{"SKARN HEAD TO LING BAR", "invented", "THE RUN", "Tally Cove", "THE FORECAST", "DEPARTURES", "Every limit you set is met",
		"magnetic", "WAYS OUT", "paddle broken", "LIGHT", "CAUTIONS", "coastguard"} {
		if !strings.Contains(text, s) {
			t.Errorf("the plan does not say %q", s)
		}
	}
	for _, s := range []string{"NaN", "Inf", "%!", " safe", "map["} {
		if strings.Contains(text, s) {
			t.Errorf("the plan says %q", s)
		}
	}
	code, text, stderr = do("-json")
	if code != exitPlan || stderr != "" {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	var p struct {
		Schema     int
		Departures []struct {
			State    string
			Findings []struct{ Rule, State string }
		}
	}
	if err := json.Unmarshal([]byte(text), &p); err != nil {
		t.Fatal(err)
	}
	broken, met := map[string]bool{}, 0
	for _, d := range p.Departures {
		if d.State == "met" {
			met++
		}
		for _, f := range d.Findings {
			if f.State == "broken" {
				broken[f.Rule] = true
			}
		}
	}
	var more struct {
		Areas, Deck, Smallest_change_that_breaks []json.RawMessage
		Ashore                                   struct{ Alarm string }
	}
	if err := json.Unmarshal([]byte(text), &more); err != nil {
		t.Fatal(err)
	}
	if len(more.Areas) != 2 || len(more.Deck) < 3 || len(more.Smallest_change_that_breaks) == 0 || more.Ashore.Alarm == "" {
		t.Errorf("%d areas, %d marks for the deck, %d limits tried, alarm %q", len(more.Areas), len(more.Deck), len(more.Smallest_change_that_breaks), more.Ashore.Alarm)
	}
	if p.Schema != schema || met == 0 {
		t.Errorf("schema %d, %d departures within the limits", p.Schema, met)
	}
	for _, r := range []string{"least_wind", "least_sea", "greatest_shift", "greatest_against", "least_daylight", "greatest_off_stern"} {
		if !broken[r] {
			t.Errorf("no departure breaks %s", r)
		}
	}
}

// TestBadFiles: every wrong file is refused with exit code 2 and a message
// that names the file, the place and what was expected.
func TestBadFiles(t *testing.T) {
	const windHead = "time,wind_speed_kn,wind_from_deg\n"
	const oneRun = `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"role":"run"},"geometry":{"type":"LineString","coordinates":%s}}]}`
	run := func(c string) string { return strings.Replace(oneRun, "%s", c, 1) }
	cases := []struct {
		name, file, content string
		want                []string
	}{
		{"empty wind", "wind.csv", "", []string{"wind.csv", "empty", "wind_speed"}},
		{"wrong header", "wind.csv", "when,speed\n", []string{"wind.csv", "line 1", "when"}},
		{"unknown unit", "wind.csv", "time,wind_speed_furlongs,wind_from_deg\n", []string{"wind.csv", "furlongs", "kn"}},
		{"no zone", "wind.csv", windHead + "2026-09-12T08:00:00,12,240\n", []string{"wind.csv", "line 2", "zone"}},
		{"repeated time", "wind.csv", windHead + "2026-09-12T08:00:00Z,12,240\n2026-09-12T08:00:00Z,12,240\n", []string{"wind.csv", "line 3"}},
		{"out of order", "wind.csv", windHead + "2026-09-12T09:00:00Z,12,240\n2026-09-12T08:00:00Z,12,240\n", []string{"wind.csv", "line 3", "order"}},
		{"direction 400", "wind.csv", windHead + "2026-09-12T08:00:00Z,12,400\n", []string{"wind.csv", "line 2", "400", "0 to 360"}},
		{"negative speed", "wind.csv", windHead + "2026-09-12T08:00:00Z,-3,240\n", []string{"wind.csv", "line 2", "-3"}},
		{"absurd speed", "wind.csv", "time,wind_speed_m_s,wind_from_deg\n2026-09-12T08:00:00Z,71,240\n", []string{"wind.csv", "line 2", "71", "70"}},
		{"NaN", "wind.csv", windHead + "2026-09-12T08:00:00Z,NaN,240\n", []string{"wind.csv", "line 2", "NaN"}},
		{"Inf", "wind.csv", windHead + "2026-09-12T08:00:00Z,Inf,240\n", []string{"wind.csv", "line 2", "Inf"}},
		{"absurd swell", "swell.csv", "time,swell_height_m,swell_period_s,swell_from_deg\n2026-09-12T08:00:00Z,26,10,240\n", []string{"swell.csv", "line 2", "26", "25"}},
		{"negative swell", "swell.csv", "time,swell_height_m,swell_period_s,swell_from_deg\n2026-09-12T08:00:00Z,-1,10,240\n", []string{"swell.csv", "line 2", "-1"}},
		{"two low waters in a row", "tide.csv", "time,height_m,kind\n2026-09-12T05:10:00Z,0.7,low\n2026-09-12T11:35:00Z,0.6,low\n", []string{"tide.csv", "low"}},
		{"latitude 91", "run.geojson", run("[[-34,91],[-33,44]]"), []string{"run.geojson", "91"}},
		{"one point", "run.geojson", run("[[-34,44]]"), []string{"run.geojson", "1"}},
		{"repeated point", "run.geojson", run("[[-34,44],[-34,44],[-33.9,44]]"), []string{"run.geojson", "repeat"}},
		{"truncated", "run.geojson", `{"type":"FeatureCollection","features":[{"type":"Fea`, []string{"run.geojson"}},
		{"swapped", "run.geojson", `{"type":"FeatureCollection","features":[
			{"type":"Feature","properties":{"role":"run"},"geometry":{"type":"LineString","coordinates":[[-34,44],[-33.9,44.05]]}},
			{"type":"Feature","properties":{"role":"exit","name":"A"},"geometry":{"type":"Point","coordinates":[44.02,-33.95]}}]}`, []string{"run.geojson", "swapped"}},
		{"truncated paddler", "paddler.json", `{"name": "a", "cruise_kn": 3`, []string{"paddler.json", "line 1"}},
		{"unknown member", "paddler.json", `{"cruse_kn": 3}`, []string{"paddler.json", "cruse_kn", "cruise_{"}},
		{"unknown limit", "paddler.json", `{"limits": {"most_wind_kn": 3}}`, []string{"paddler.json", "most_wind_kn", "greatest_wind_"}},
		{"limit a text", "paddler.json", `{"limits": {"greatest_wind_kn": "20"}}`, []string{"paddler.json", "greatest_wind_kn", "number"}},
		{"absurd paddler", "paddler.json", `{"cruise_m_s": 30}`, []string{"paddler.json", "cruise", "30"}},
		{"stream by hour without ranges", "stream.csv", "hour,set_deg,springs_kn,neaps_kn\n-1,60,1,0.5\n1,240,1,0.5\n", []string{"stream.csv", "spring_range_m"}},
	}
	for _, c := range cases {
		dir := copyDemo(t)
		put(t, dir, c.file, c.content)
		code, stdout, stderr := do("-data", dir)
		if code != exitInput || stdout != "" {
			t.Errorf("%s: exit %d, printed %d bytes: %s", c.name, code, len(stdout), stderr)
		}
		for _, s := range c.want {
			if !strings.Contains(stderr, s) {
				t.Errorf("%s: %q does not say %q", c.name, stderr, s)
			}
		}
	}
}

// TestLargeFilesAndFolders are refused before they are read.
func TestLargeFilesAndFolders(t *testing.T) {
	for _, name := range []string{"run.geojson", "wind.csv", "swell.csv", "tide.csv", "stream.csv", "paddler.json"} {
		dir := copyDemo(t)
		f, err := os.OpenFile(filepath.Join(dir, name), os.O_WRONLY, 0)
		if err != nil {
			t.Fatal(err)
		}
		if err := f.Truncate(33 << 20); err != nil {
			t.Fatal(err)
		}
		f.Close()
		if code, _, stderr := do("-data", dir); code != exitInput || !strings.Contains(stderr, name) || !strings.Contains(stderr, "32 MB") {
			t.Errorf("%s of 33 MB: exit %d: %s", name, code, stderr)
		}
		os.Remove(filepath.Join(dir, name))
		if err := os.Mkdir(filepath.Join(dir, name), 0o755); err != nil {
			t.Fatal(err)
		}
		if code, _, stderr := do("-data", dir); code != exitInput || !strings.Contains(stderr, name) {
			t.Errorf("%s a folder: exit %d: %s", name, code, stderr)
		}
	}
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	if m.HeapSys > 256<<20 {
		t.Errorf("heap of %d MB", m.HeapSys>>20)
	}
}

// TestMissingFilesNarrowTheAnswer: without an optional file the plan is still
// printed, says what it lacks, and no departure is within the limits that
// depend on it.
func TestMissingFilesNarrowTheAnswer(t *testing.T) {
	if testing.Short() {
		t.Skip("makes many plans")
	}
	for name, rule := range map[string]string{"wind.csv": "least_wind", "swell.csv": "greatest_sea", "tide.csv": "least_depth", "stream.csv": "greatest_against"} {
		dir := copyDemo(t)
		os.Remove(filepath.Join(dir, name))
		if name == "tide.csv" { // the streams hang on its high waters
			os.Remove(filepath.Join(dir, "stream.csv"))
		}
		code, text, stderr := do("-data", dir, "-json", "-from", "2026-09-12T09:00", "-to", "2026-09-12T11:00", "-tz", demoZone)
		if code != exitPlan {
			t.Errorf("without %s: exit %d: %s", name, code, stderr)
			continue
		}
		var p struct {
			Notes      []string
			Departures []struct {
				State    string
				Findings []struct{ Rule, State, Why string }
			}
		}
		if err := json.Unmarshal([]byte(text), &p); err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(strings.Join(p.Notes, "\n"), name) {
			t.Errorf("without %s the notes are %q", name, p.Notes)
		}
		for _, d := range p.Departures {
			if d.State == "met" {
				t.Errorf("without %s a departure is within the limits", name)
			}
			for _, f := range d.Findings {
				if f.Rule == rule && (f.State != "unknown" || f.Why == "") {
					t.Errorf("without %s: %s is %s (%s)", name, rule, f.State, f.Why)
				}
			}
		}
	}
	dir := copyDemo(t)
	os.Remove(filepath.Join(dir, "paddler.json"))
	if code, _, stderr := do("-data", dir); code != exitInput || !strings.Contains(stderr, "paddler.json") {
		t.Errorf("without paddler.json: exit %d: %s", code, stderr)
	}
}

// TestForecastEnds: a forecast that ends before the arrival leaves it unknown.
func TestForecastEnds(t *testing.T) {
	dir := copyDemo(t)
	s := get(t, dir, "wind.csv")
	put(t, dir, "wind.csv", s[:strings.Index(s, "2026-09-12T11:00")])
	code, text, stderr := do("-data", dir, "-from", "2026-09-12T09:30", "-to", "2026-09-12T10:00", "-tz", demoZone)
	if code != exitPlan || !strings.Contains(text, "the forecast ends before the arrival") {
		t.Errorf("exit %d: %s\n%s", code, stderr, text)
	}
}

// TestAcrossTheAntimeridian: the demonstration moved so that 180 degrees lies
// in the middle of the run gives the same plan, but for the light, which moves
// with it.
func TestAcrossTheAntimeridian(t *testing.T) {
	if testing.Short() {
		t.Skip("makes many plans")
	}
	args := func(dir string) []string {
		return []string{"-data", dir, "-json", "-from", "2026-09-12T11:30:00Z", "-to", "2026-09-12T12:00:00Z"}
	}
	dir := copyDemo(t)
	put(t, dir, "paddler.json", `{"cruise_kn": 3.4, "sprint_kn": 5.8, "limits": {"least_wind_kn": 12, "greatest_sea_m": 1.8, "greatest_shift_deg": 35,
		"least_depth_m": 0.8, "greatest_against_kn": 0.5, "greatest_offshore_kn": 10, "no_avoid": true, "no_traffic": true}}`)
	_, here, _ := do(args(dir)...)
	var file map[string]any
	if err := json.Unmarshal([]byte(get(t, dir, "run.geojson")), &file); err != nil {
		t.Fatal(err)
	}
	var shift func(v any) any
	shift = func(v any) any {
		list, ok := v.([]any)
		if !ok || len(list) == 0 {
			return v
		}
		if lon, ok := list[0].(float64); ok {
			lon += 34 - 0.07 + 180
			if lon >= 180 {
				lon -= 360
			}
			list[0] = lon
			return list
		}
		for i := range list {
			list[i] = shift(list[i])
		}
		return list
	}
	for _, f := range file["features"].([]any) {
		g := f.(map[string]any)["geometry"].(map[string]any)
		g["coordinates"] = shift(g["coordinates"])
	}
	moved, err := json.Marshal(file)
	if err != nil {
		t.Fatal(err)
	}
	put(t, dir, "run.geojson", string(moved))
	code, there, stderr := do(args(dir)...)
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	type result struct {
		Run        struct{ Length_m float64 }
		Departures []struct{ Arrival, State string }
	}
	var a, b result
	if json.Unmarshal([]byte(here), &a) != nil || json.Unmarshal([]byte(there), &b) != nil {
		t.Fatal("no JSON")
	}
	if len(a.Departures) != 2 || len(b.Departures) != 2 || a.Departures[0] != b.Departures[0] || a.Departures[1] != b.Departures[1] {
		t.Errorf("here %v, there %v", a, b)
	}
}

// TestClockChange: on the night the clocks go back an hour is passed twice;
// the times of the plan are the zone's own.
func TestClockChange(t *testing.T) {
	if testing.Short() {
		t.Skip("makes many plans")
	}
	dir := copyDemo(t)
	for _, name := range []string{"wind.csv", "swell.csv", "tide.csv"} {
		s := get(t, dir, name)
		for day := time.Date(2026, 9, 19, 0, 0, 0, 0, time.UTC); day.Day() >= 10; day = day.AddDate(0, 0, -1) {
			s = strings.ReplaceAll(s, day.Format("2006-01-02"), day.AddDate(0, 0, 43).Format("2006-01-02"))
		}
		put(t, dir, name, s)
	}
	code, _, stderr := do("-data", dir, "-tz", "Atlantic/Azores", "-from", "2026-10-25T00:30:00Z", "-to", "2026-10-25T02:30:00Z", "-step", "1h", "-json")
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	code, text, stderr := do("-data", dir, "-tz", "Atlantic/Azores", "-from", "2026-10-24T23:30:00Z", "-to", "2026-10-25T02:30:00Z", "-step", "1h")
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	if n := strings.Count(text, " 00:30    "); n != 2 {
		t.Errorf("00:30 is passed twice that night; the plan has it %d times:\n%s", n, text)
	}
}

// TestOptions that cannot be used are exit code 2; -h explains the files.
func TestOptions(t *testing.T) {
	for _, args := range [][]string{{"-step", "0s"}, {"-step", "x"}, {"-tz", "Nowhere/None"}, {"-from", "noon"}, {"-from", "10:00", "-to", "09:00"},
		{"-data", "no-such-folder"}, {"extra"}, {"-nope"}, {"-anemometer", "-3"}, {"-from", "2026-09-12T09:00", "-to", "2026-12-12T09:00"}} {
		if code, out, stderr := do(args...); code != exitInput || stderr == "" || out != "" {
			t.Errorf("%v: exit %d: %s", args, code, stderr)
		}
	}
	code, help, stderr := do("-h")
	if code != exitPlan || stderr != "" || !strings.Contains(help, "wind.csv") || !strings.Contains(help, "paddler.json") {
		t.Errorf("-h: exit %d: %s", code, stderr)
	}
}
