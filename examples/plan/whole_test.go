package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"io/fs"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/wind"
)

var update = flag.Bool("update", false, "write the stored text again")

// demonstrated loads the demonstration and prepares its day.
func demonstrated(t *testing.T) (*inputs, *passage.Water) {
	t.Helper()
	o, err := parse(nil, os.Stderr)
	if err != nil {
		t.Fatal(err)
	}
	in, err := load(o)
	if err != nil {
		t.Fatal(err)
	}
	from, to, err := departures(in, o)
	if err != nil {
		t.Fatal(err)
	}
	w, err := in.prepare(in.run, in.day, o, from, to)
	if err != nil {
		t.Fatal(err)
	}
	return in, w
}

// near reports |got-want| <= tol; false for NaN.
func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

// TestReasonsByHand takes departures of the demonstration that fail for
// different reasons, and one that does not, and works each deciding value out
// again with the library's own functions.
func TestReasonsByHand(t *testing.T) {
	in, w := demonstrated(t)
	find := func(clock string, rule passage.Rule) (passage.Appraisal, passage.Finding) {
		t.Helper()
		at, err := time.Parse(time.RFC3339, "2026-09-12T"+clock+":00-02:00")
		if err != nil {
			t.Fatal(err)
		}
		a, err := w.Appraise(at)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range a.Findings {
			if f.Rule == rule {
				return a, f
			}
		}
		t.Fatalf("%s: no finding about %v", clock, rule)
		return a, passage.Finding{}
	}
	broken := func(clock string, rule passage.Rule, want float64, tol float64) {
		t.Helper()
		if _, f := find(clock, rule); f.State != passage.Broken || !near(f.Value, want, tol) {
			t.Errorf("%s %v: %v, %v; by hand broken, %v", clock, rule, f.State, f.Value, want)
		}
	}

	// 06:30, too light to have raised a sea: what the hindcast gives at the
	// start, over the fetch of the coast and the depth of the file.
	_, f := find("06:30", passage.LeastSea)
	fetch := func(from float64) float64 {
		r := in.run.Coast.FetchRose(f.At, 72, 500e3)
		x := from / 5
		i := int(x) % 72
		v := r[i] + (x-math.Floor(x))*(r[(i+1)%72]-r[i])
		if v >= 500e3 {
			return math.Inf(1)
		}
		return v
	}
	depth := func(at time.Time, _ float64) float64 {
		if h := in.table.Height(at); h == h {
			return 40 + h
		}
		return 40 // before the tide table begins
	}
	states, err := wind.Hindcast{Law: wind.Bretschneider, Fetch: fetch, MeanDepth: depth}.Run(in.wind, f.Time)
	if err != nil {
		t.Fatal(err)
	}
	// The station of the sea lies a kilometre on, and the grid is a quarter of an hour wide.
	broken("06:30", passage.LeastSea, states[0].Sea.Hs, 0.04)
	broken("06:30", passage.LeastWind, 8*wind.Knot, 0.05)

	// 14:30, a shift: from the wind at the start to the wind up to two hours
	// after the slow case, the greatest turn.
	a, f := find("14:30", passage.GreatestShift)
	start, _ := in.wind.At(a.Depart)
	most := 0.0
	for at := a.Depart; !at.After(a.Late.Add(2 * time.Hour)); at = at.Add(10 * time.Minute) {
		s, err := in.wind.At(at)
		if err != nil {
			t.Fatal(err)
		}
		most = math.Max(most, math.Abs(wind.TurnOf(start.Wind, s.Wind).Degrees))
	}
	broken("14:30", passage.GreatestShift, most, 2)

	// 12:30, the stream against the wind: its rate up the wind at the place and time of the finding.
	_, f = find("12:30", passage.GreatestAgainst)
	s, err := in.wind.At(f.Time)
	if err != nil {
		t.Fatal(err)
	}
	against, _ := route.Velocity(in.day.Streams[0].Stream.Velocity(f.Time)).Resolve(s.From)
	broken("12:30", passage.GreatestAgainst, against, 0.02)

	// 15:30, the bar: a drying height of 0.6 m and the tide at the finding.
	_, f = find("15:30", passage.LeastDepth)
	broken("15:30", passage.LeastDepth, in.table.Height(f.Time)-0.6, 0.03)

	// 17:30, the light: end of civil twilight at the finish less the slow arrival.
	a, _ = find("17:30", passage.LeastDaylight)
	light, err := route.Daylight(in.run.Points[len(in.run.Points)-1], a.Depart.In(time.FixedZone("", -2*3600)))
	if err != nil {
		t.Fatal(err)
	}
	broken("17:30", passage.LeastDaylight, light.CivilDusk.Time.Sub(a.Late).Seconds(), 2)

	// 10:00 keeps them all.
	if a, _ := find("10:00", passage.LeastWind); a.State != passage.Met || !a.Arrives || len(a.Broken())+len(a.Unknown()) != 0 {
		t.Errorf("10:00: %v, broken %v, unknown %v", a.State, a.Broken(), a.Unknown())
	}
}

// TestOtherCoast plans a sound of another hemisphere from files written by
// hand: no tide and no swell, streams by the clock, metres a second, limits that
// stay unknown. The text is stored; it has few digits.
func TestOtherCoast(t *testing.T) {
	code, text, stderr := do("-data", "testdata/sound", "-tz", "Etc/GMT-5", "-from", "2026-01-18T09:00", "-to", "2026-01-18T17:00", "-step", "2h")
	if code != exitPlan || stderr != "" {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	head, rest, ok := strings.Cut(text, "\nSTART AT")
	if !ok {
		t.Fatal("no departure is shown in full")
	}
	for _, s := range []string{"true only", "depth and tide unknown", "none is known to be open", "swell at most 1.50 m"} {
		if !strings.Contains(text, s) {
			t.Errorf("the plan does not say %q", s)
		}
	}
	if strings.Contains(rest, "Every limit you set is met") {
		t.Error("limits that are unknown pass for met")
	}
	const file = "testdata/sound.txt"
	if *update {
		if err := os.WriteFile(file, []byte(head), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if head != string(want) {
		t.Errorf("the plan is\n%s\nstored is\n%s", head, want)
	}
}

// TestBuoyRecord: a record in the text of the data buoys stands in for
// wind.csv, its missing codes are gaps and not winds of 99 m/s.
func TestBuoyRecord(t *testing.T) {
	dir := copyDemo(t)
	os.Remove(filepath.Join(dir, "wind.csv"))
	put(t, dir, "wind.txt", get(t, "testdata/buoy", "wind.txt"))
	code, text, stderr := do("-data", dir, "-tz", demoZone, "-from", "2026-09-12T08:00", "-to", "2026-09-12T09:00", "-step", "1h")
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	for _, s := range []string{"height of the buoy's anemometer is not given", "SATURDAY 12 SEPTEMBER", "water 15.5 C"} {
		if !strings.Contains(strings.ToUpper(text), strings.ToUpper(s)) {
			t.Errorf("the plan does not say %q", s)
		}
	}
	_, low, _ := do("-data", dir, "-tz", demoZone, "-from", "2026-09-12T08:00", "-to", "2026-09-12T08:00", "-anemometer", "4", "-json")
	_, ten, _ := do("-data", dir, "-tz", demoZone, "-from", "2026-09-12T08:00", "-to", "2026-09-12T08:00", "-anemometer", "10", "-json")
	speed := func(s string) float64 {
		var p struct {
			Wind []struct {
				Speed float64 `json:"speed_m_s"`
			}
		}
		if err := json.Unmarshal([]byte(s), &p); err != nil || len(p.Wind) < 20 {
			t.Fatalf("%v: %d winds", err, len(p.Wind))
		}
		return p.Wind[20].Speed
	}
	if !(speed(low) > 1.05*speed(ten) && speed(low) < 1.2*speed(ten)) {
		t.Errorf("a wind measured at 4 m is %v at 10 m, the same measured at 10 m %v", speed(low), speed(ten))
	}
}

// TestSearchOfTheDemonstration: three runs over days and members; each verdict
// is that of a plan of the same run, day and member; the best is one that keeps
// all limits in most.
func TestSearchOfTheDemonstration(t *testing.T) {
	args := []string{"-search", "-from", "2026-09-12T09:00", "-to", "2026-09-13T12:00", "-step", "150m"}
	code, text, stderr := do(args...)
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	for _, s := range []string{"3 runs", "5 forecasts", "Skarn Head to Ling Bar", "Long Skerry", "broken in 5", "-run run -from 2026-09-12"} {
		if !strings.Contains(text, s) {
			t.Errorf("the search does not say %q:\n%s", s, text)
		}
	}
	code, text, stderr = do(append(args, "-json")...)
	var p jsonSearchRead
	if code != exitPlan || json.Unmarshal([]byte(text), &p) != nil {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	if len(p.Best) != 6 || len(p.Members) != 5 {
		t.Fatalf("%d runs and days, %d members", len(p.Best), len(p.Members))
	}
	for i, b := range p.Best {
		if b.Met+b.Broken+b.Unknown != 5 {
			t.Errorf("%+v: not five members", b)
		}
		if i > 0 && b.Met > p.Best[i-1].Met {
			t.Errorf("%d keeps the limits in more members than the one before it", i)
		}
	}
	// The first again, member by member, as somebody would who has the files.
	dir := copyDemo(t)
	met := 0
	record := get(t, dir, "wind.csv")
	for _, m := range p.Members {
		rows := strings.SplitAfter(record, "\n")
		rows = rows[:1+48] // the two days before the members begin
		for _, r := range strings.SplitAfter(get(t, dir, filepath.Join("members", m, "wind.csv")), "\n")[1:] {
			if r != "" {
				rows = append(rows, strings.TrimSuffix(r, "\n")+",,\n")
			}
		}
		put(t, dir, "wind.csv", strings.Join(rows, ""))
		_, text, stderr := do("-data", dir, "-run", p.Best[0].Run, "-from", p.Best[0].Depart, "-to", p.Best[0].Depart, "-json")
		if strings.Contains(text, `"state": "met",
   "arrival"`) {
			met++
		} else if stderr != "" {
			t.Fatal(stderr)
		}
	}
	if met != p.Best[0].Met {
		t.Errorf("planned one by one the first keeps all limits in %d members, in the search in %d", met, p.Best[0].Met)
	}
}

type jsonSearchRead struct {
	Members []string
	Best    []struct {
		Run, Depart          string
		Met, Broken, Unknown int
	} `json:"best_of_run_and_day"`
}

// TestPartyOfTheDemonstration: the slowest governs, the tightest limit counts.
func TestPartyOfTheDemonstration(t *testing.T) {
	code, text, stderr := do("-party", "-regroup", "5,9", "-from", "10:00", "-to", "10:00")
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	for _, s := range []string{"THE PARTY", "the coach (leads), Wren, Tarn", "Regroup at km 5.0", "wind at most 18.0 kn", "leaders to led"} {
		if !strings.Contains(text, s) {
			t.Errorf("the plan does not say %q", s)
		}
	}
	for _, bad := range []string{"9,5", "x", "-1", "1e9"} {
		if code, _, _ := do("-party", "-regroup", bad); code != exitInput {
			t.Errorf("-regroup %s: exit %d", bad, code)
		}
	}
}

// TestFolderOfRuns: wrong names, wrong files and too many are refused.
func TestFolderOfRuns(t *testing.T) {
	for name, change := range map[string]func(dir string){
		"an unknown run":   func(string) {},
		"not a run":        func(dir string) { put(t, dir, "runs/notes.txt", "x") },
		"a wrong file":     func(dir string) { put(t, dir, "runs/north.geojson", "{") },
		"a member missing": func(dir string) { os.Remove(filepath.Join(dir, "members/3/wind.csv")) },
		"a wrong member": func(dir string) {
			put(t, dir, "members/3/wind.csv", "time,wind_speed_kn,wind_from_deg\n2026-09-12T00:00:00Z,x,1\n")
		},
	} {
		dir := copyDemo(t)
		change(dir)
		args := []string{"-data", dir, "-search"}
		if name == "an unknown run" {
			args = []string{"-data", dir, "-run", "north"}
		}
		if code, out, stderr := do(args...); code != exitInput || out != "" || stderr == "" {
			t.Errorf("%s: exit %d: %s", name, code, stderr)
		}
	}
}

// TestRunAcrossLand: a line drawn over land is told.
func TestRunAcrossLand(t *testing.T) {
	dir := copyDemo(t)
	put(t, dir, "runs/over.geojson", `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"role":"run","name":"over"},
		"geometry":{"type":"LineString","coordinates":[[-34.0,44.0],[-33.9,43.95]]}}]}`)
	if code, text, stderr := do("-data", dir, "-run", "over", "-from", "2026-09-12T10:00:00-02:00", "-to", "2026-09-12T10:00:00-02:00"); code != exitPlan || !strings.Contains(text, "meets land") {
		t.Errorf("exit %d: %s", code, stderr)
	}
}

// TestProgram builds the program and asks it as a shell would: exit codes,
// where the text goes, and the memory that wrong and enormous files take.
func TestProgram(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the program")
	}
	bin := filepath.Join(t.TempDir(), "plan")
	if out, err := exec.Command("go", "build", "-o", bin, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	dir := copyDemo(t)
	tiny := copyDemo(t) // a shore of more than a million places that is none
	put(t, tiny, "run.geojson", `{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"role":"coast"},"geometry":{"type":"LineString","coordinates":[[1,2]`+
		strings.Repeat(",[1,2]", 8<<20/6)+`]}}]}`)
	rows := copyDemo(t) // a table of a million rows
	put(t, rows, "swell.csv", "time,system,swell_height_m,swell_period_s,swell_from_deg\n"+strings.Repeat("2026-09-12T00:00:00Z,a,1,9,9\n", 31<<20/29))
	minutes := copyDemo(t) // the longest table of winds that is read, over the days of the demonstration
	var b strings.Builder
	b.WriteString("time,wind_speed_kn,wind_from_deg\n")
	for i := range 250_000 {
		b.WriteString(time.Date(2026, 4, 1, 0, i, 0, 0, time.UTC).Format(time.RFC3339) + ",18,250\n")
	}
	put(t, minutes, "wind.csv", b.String())
	buoy := copyDemo(t) // and more rows of a buoy than are read
	os.Remove(filepath.Join(buoy, "wind.csv"))
	put(t, buoy, "wind.txt", "#YY MM DD hh mm WDIR WSPD\n"+strings.Repeat("2026 06 21 10 50 210 7.0\n", 31<<20/25))
	deep := copyDemo(t)
	put(t, deep, "paddler.json", strings.Repeat("[", 1<<20-1))
	broken := copyDemo(t)
	put(t, broken, "wind.csv", "nonsense")
	for _, c := range []struct {
		name   string
		args   []string
		code   int
		stdout string
		stderr string
	}{
		{"help", []string{"-h"}, exitPlan, "Exit code", ""},
		{"every departure breaks a limit", []string{"-data", dir, "-from", "2026-09-12T06:30:00-02:00", "-to", "2026-09-12T07:00:00-02:00"}, exitPlan, "None of the 2 departures", ""},
		{"no such option", []string{"-nope"}, exitInput, "", "nope"},
		{"wrong file", []string{"-data", broken}, exitInput, "", "wind.csv"},
		{"an enormous shore", []string{"-data", tiny}, exitInput, "", "run.geojson"},
		{"an enormous table", []string{"-data", rows}, exitInput, "", "swell.csv"},
		{"a long table of winds", []string{"-data", minutes, "-from", "2026-09-12T10:00:00-02:00", "-to", "2026-09-12T10:00:00-02:00"}, exitPlan, "SKARN HEAD", ""},
		{"an enormous record of a buoy", []string{"-data", buoy}, exitInput, "", "250,000 rows"},
		{"deep brackets", []string{"-data", deep}, exitInput, "", "paddler.json"},
	} {
		cmd := exec.Command(bin, c.args...)
		var out, err strings.Builder
		cmd.Stdout, cmd.Stderr = &out, &err
		_ = cmd.Run() // the exit code tells
		if got := cmd.ProcessState.ExitCode(); got != c.code {
			t.Errorf("%s: exit %d, want %d: %s", c.name, got, c.code, err.String())
		}
		if !strings.Contains(out.String(), c.stdout) || c.stdout == "" && out.Len() > 0 || !strings.Contains(err.String(), c.stderr) {
			t.Errorf("%s: printed %.200q and %.200q", c.name, out.String(), err.String())
		}
		if strings.Contains(err.String(), "goroutine") {
			t.Errorf("%s: panics: %s", c.name, err.String())
		}
		if kb := peak(cmd.ProcessState); kb > 256<<10 {
			t.Errorf("%s: takes %d MB", c.name, kb>>10)
		}
	}
	if runtime.GOOS == "linux" { // a full disk is nobody's input
		full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
		if err != nil {
			t.Skip(err)
		}
		defer full.Close()
		cmd := exec.Command(bin, "-data", dir, "-from", "2026-09-12T10:00:00-02:00", "-to", "2026-09-12T10:00:00-02:00")
		cmd.Stdout = full
		_ = cmd.Run()
		if got := cmd.ProcessState.ExitCode(); got != exitInternal {
			t.Errorf("a full disk: exit %d", got)
		}
	}
}

// TestRunFromGPX: a route of a chart plotter with the shore beside it is planned as the
// run it was drawn from.
func TestRunFromGPX(t *testing.T) {
	dir := copyDemo(t)
	o, err := parse([]string{"-data", dir}, os.Stderr)
	if err != nil {
		t.Fatal(err)
	}
	in, err := load(o)
	if err != nil {
		t.Fatal(err)
	}
	var shore struct {
		Type     string           `json:"type"`
		Features []map[string]any `json:"features"`
	}
	if err := json.Unmarshal([]byte(get(t, dir, "run.geojson")), &shore); err != nil {
		t.Fatal(err)
	}
	coast := shore.Features[:0]
	for _, f := range shore.Features {
		if f["properties"].(map[string]any)["role"] == "coast" {
			coast = append(coast, f)
		}
	}
	shore.Features = coast
	var gpx strings.Builder
	if err := route.WriteRunGPX(&gpx, route.Run{Name: in.run.Name, Points: in.run.Points, Exits: in.run.Exits}); err != nil {
		t.Fatal(err)
	}
	b, err := json.Marshal(shore)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.Remove(filepath.Join(dir, "run.geojson")); err != nil {
		t.Fatal(err)
	}
	put(t, dir, "run.gpx", gpx.String())
	args := []string{"-data", dir, "-from", "2026-09-12T10:00:00-02:00", "-to", "2026-09-12T10:00:00-02:00", "-json"}
	first := func() (arrives string, notes []string) {
		code, out, stderr := do(args...)
		var plan struct {
			Notes      []string `json:"notes"`
			Departures []struct {
				Arrival string `json:"arrival"`
			} `json:"departures"`
		}
		if err := json.Unmarshal([]byte(out), &plan); code != exitPlan || err != nil || len(plan.Departures) != 1 {
			t.Fatalf("exit %d, %v: %s", code, err, stderr)
		}
		return plan.Departures[0].Arrival, plan.Notes
	}
	if at, notes := first(); at != "" || !strings.Contains(strings.Join(notes, "\n"), "run.gpx has no coast, and coast.geojson is not there") {
		t.Errorf("without a shore it arrives at %q; %q", at, notes)
	}
	put(t, dir, coastFile, string(b))
	if at, notes := first(); at == "" || strings.Contains(strings.Join(notes, "\n"), "no coast") || strings.Contains(strings.Join(notes, "\n"), "no exits") {
		t.Errorf("with the shore it arrives at %q; %q", at, notes)
	}
	put(t, dir, coastFile, "{")
	if code, _, stderr := do(args...); code != exitInput || !strings.Contains(stderr, coastFile) {
		t.Errorf("a wrong shore: exit %d: %s", code, stderr)
	}
}

// FuzzLoad puts anything at all in the place of one of the files of the
// demonstration: it is read or refused, and nothing panics.
func FuzzLoad(f *testing.F) {
	sub, err := fs.Sub(demonstration, "demo")
	if err != nil {
		f.Fatal(err)
	}
	names := []string{"run.geojson", "run.gpx", "runs/skerry.geojson", "wind.csv", "wind.txt", "swell.csv", "tide.csv", "constituents.json", "stream.csv",
		"paddler.json", "party.json", "members/1/wind.csv", formFile, coastFile}
	whole := fstest.MapFS{}
	err = fs.WalkDir(sub, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		b, err := fs.ReadFile(sub, name)
		whole[name] = &fstest.MapFile{Data: b}
		return err
	})
	if err != nil {
		f.Fatal(err)
	}
	for i, n := range names {
		content := []byte("x")
		if file, ok := whole[n]; ok && len(file.Data) < 4000 {
			content = file.Data
		}
		f.Add(uint8(i), content)
		f.Add(uint8(i), []byte{})
	}
	f.Add(uint8(1), []byte(`<gpx version="1.1"><rte><rtept lat="44" lon="-34"/><rtept lat="44.1" lon="-33.9"/></rte></gpx>`))
	f.Fuzz(func(t *testing.T, which uint8, content []byte) {
		name := names[int(which)%len(names)]
		dir := fstest.MapFS{}
		for n, file := range whole {
			dir[n] = file
		}
		dir[name] = &fstest.MapFile{Data: content}
		switch name { // the one that the other would hide
		case "run.gpx":
			delete(dir, "run.geojson")
		case coastFile:
			delete(dir, "run.geojson")
			dir["run.gpx"] = &fstest.MapFile{Data: []byte(`<gpx version="1.1"><rte><rtept lat="44" lon="-34"/><rtept lat="44.1" lon="-33.9"/></rte></gpx>`)}
		case "wind.txt":
			delete(dir, "wind.csv")
		case "constituents.json":
			delete(dir, "tide.csv")
		}
		o := options{data: "x", search: true, party: name == "party.json", zone: time.UTC, step: time.Hour, now: demoDay}
		in, err := loadFrom(dir, o)
		if err != nil {
			if in != nil || err.Error() == "" {
				t.Errorf("%s: inputs beside the error %v", name, err)
			}
			return
		}
		if len(in.party) == 0 || len(in.run.Points) < 2 {
			t.Errorf("%s: loaded without a run or a paddler", name)
		}
		_ = fmt.Sprint(in.notes)
	})
}
