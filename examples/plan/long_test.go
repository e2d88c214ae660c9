package main

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"followingsea.example/wind"
)

// TestSearchOfALongRecord: of a record of other days its last week is searched
// where nothing is asked for, and of a long forecast that begins before now the
// longest span.
func TestSearchOfALongRecord(t *testing.T) {
	dir := copyDemo(t)
	end := time.Date(2026, 9, 14, 12, 0, 0, 0, time.UTC)
	var b strings.Builder
	b.WriteString("time,wind_speed_kn,wind_from_deg\n")
	for at := end.AddDate(-2, 0, 0); !at.After(end); at = at.Add(time.Hour) {
		fmt.Fprintf(&b, "%s,18,250\n", at.Format(time.RFC3339))
	}
	put(t, dir, "wind.csv", b.String())
	for _, step := range []error{os.RemoveAll(filepath.Join(dir, "members")), os.MkdirAll(filepath.Join(dir, "members/only"), 0o755)} {
		if step != nil {
			t.Fatal(step)
		}
	}
	put(t, dir, "members/only/wind.csv", "time,wind_speed_kn,wind_from_deg\n2026-09-14T12:30:00Z,18,250\n2026-09-14T15:00:00Z,18,250\n")
	code, out, stderr := do("-data", dir, "-search", "-json", "-step", "6h", "-run", "run")
	if code != exitPlan {
		t.Fatalf("exit %d: %s", code, stderr)
	}
	var got struct {
		Departures []time.Time `json:"departures"`
	}
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	end = time.Date(2026, 9, 14, 15, 0, 0, 0, time.UTC)
	if n := len(got.Departures); n == 0 || got.Departures[0].Before(end.Add(-week).Add(-24*time.Hour)) || got.Departures[n-1].After(end) || got.Departures[n-1].Before(end.Add(-9*time.Hour)) {
		t.Errorf("departures %v: want those of the week up to %v", got.Departures, end)
	}

	o, err := parse([]string{"-data", dir, "-search", "-step", "6h"}, &b)
	if err != nil {
		t.Fatal(err)
	}
	o.now = end.AddDate(0, -6, 0)
	in, err := load(o)
	if err != nil {
		t.Fatal(err)
	}
	starts, err := in.daylightStarts(o)
	if err != nil {
		t.Fatal(err)
	}
	if first, last := starts[0], starts[len(starts)-1]; last.Sub(first) > longestSpan || last.Sub(first) < longestSpan-72*time.Hour || first.Before(o.now.Add(-24*time.Hour)) {
		t.Errorf("from %v to %v, asked %v", first, last, o.now)
	}
}

// TestMembersWithAMinuteRecord: before a forecast comes what a departure looks
// back on, not the record as a whole, and the members are bounded together.
func TestMembersWithAMinuteRecord(t *testing.T) {
	start := time.Date(2026, 9, 1, 0, 0, 0, 0, time.UTC)
	var samples []wind.Sample
	for i := range 60_000 {
		samples = append(samples, wind.Sample{Time: start.Add(time.Duration(i-60_000) * time.Minute), Wind: wind.Wind{Speed: 8, From: 250}})
	}
	record, err := wind.NewSeries(samples, 0)
	if err != nil {
		t.Fatal(err)
	}
	one := "time,wind_speed_kn,wind_from_deg\n2026-09-01T00:00:00Z,18,250\n2026-09-01T01:00:00Z,18,250\n"
	most := mostSamples / int(2*history/time.Minute)
	for _, c := range []struct {
		members int
		ok      bool
	}{{most, true}, {most + 1, false}} {
		files := fstest.MapFS{}
		for i := range c.members {
			files[fmt.Sprintf("members/%02d/wind.csv", i)] = &fstest.MapFile{Data: []byte(one)}
		}
		in := &inputs{wind: record, hasWind: true}
		err := in.loadMembers(files)
		if (err == nil) != c.ok || err != nil && !strings.Contains(err.Error(), "1000000 winds") {
			t.Errorf("%d members: %v", c.members, err)
		}
		if first := in.members[0].wind; first.Len() != int(2*history/time.Minute)-1+2 || first.Start() != start.Add(time.Minute-2*history) {
			t.Errorf("%d winds from %v", first.Len(), first.Start())
		}
	}
}
