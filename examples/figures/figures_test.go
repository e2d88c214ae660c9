package main

import (
	"bytes"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A plan with little in it: an unknown stream, no tide, a departure without a
// margin, a coast of two points.
const small = `{"schema": 1, "invented": true, "zone": "UTC", "run": {"name": "A to B",
 "points": [{"lat": 50, "lon": 179.95}, {"lat": 50.02, "lon": -179.99}], "exits": [{"name": "B", "point": {"lat": 50.02, "lon": -179.99}}],
 "coast": [[{"lat": 49.9, "lon": 179.9}, {"lat": 49.9, "lon": -179.9}]]},
 "wind": [{"time": "2026-06-01T08:00:00Z", "speed_m_s": 8, "gust_m_s": null, "from_deg": 240}, {"time": "2026-06-01T10:00:00Z", "speed_m_s": null, "gust_m_s": null, "from_deg": null}],
 "tide": [{"time": "2026-06-01T09:00:00Z", "height_m": null, "stream_m_s": null, "stream_set_deg": null}],
 "departures": [{"depart": "2026-06-01T09:00:00Z", "state": "unknown", "margin_steps": null,
  "findings": [{"rule": "least_sea", "value": null, "time": null}, {"rule": "greatest_sea", "value": 0.5, "time": "2026-06-01T09:10:00Z"}]}],
 "legs": [{"enter": "2026-06-01T09:00:00Z", "leave": "2026-06-01T10:00:00Z", "wind": {"time": null, "speed_m_s": null, "from_deg": null}, "stream_m_s": 0.3, "stream_set_deg": 60}],
 "ways_out": [{"point": {"lat": 50.01, "lon": -180}, "time": "2026-06-01T09:30:00Z"}]}`

func TestFigures(t *testing.T) {
	dir := t.TempDir()
	var out, say bytes.Buffer
	if code := figures([]string{"-out", dir, "-plan", "-"}, strings.NewReader(small), &out, &say); code != 0 {
		t.Fatalf("exit %d: %s", code, say.String())
	}
	names, err := filepath.Glob(filepath.Join(dir, "*.png"))
	if err != nil || len(names) != 9 {
		t.Fatalf("%d figures, %v", len(names), err)
	}
	for _, name := range names {
		f, err := os.Open(name)
		if err != nil {
			t.Fatal(err)
		}
		img, err := png.Decode(f)
		f.Close()
		if err != nil || img.Bounds().Dx() < 600 {
			t.Errorf("%s: %v", name, err)
		}
		b, err := os.ReadFile(strings.TrimSuffix(name, "png") + "svg")
		if err != nil || !bytes.Contains(b, []byte("<svg")) || bytes.Contains(b, []byte("NaN")) {
			t.Errorf("%s as SVG: %v", name, err)
		}
	}
}

func TestRefusals(t *testing.T) {
	for _, c := range []struct {
		args []string
		in   string
	}{
		{[]string{"-plan", "no-such-file"}, ""},
		{[]string{"-plan", "-"}, ""},
		{[]string{"-plan", "-"}, "[]"},
		{[]string{"-plan", "-"}, `{"schema": 2}`},
		{[]string{"-plan", "-"}, `{"schema": 1}`},
		{[]string{"-plan", "-"}, strings.Replace(small, `"lat": 50,`, `"lat": null,`, 1)},
		{[]string{"more"}, ""},
		{[]string{"-nope"}, ""},
	} {
		var out, say bytes.Buffer
		if code := figures(append(c.args, "-out", t.TempDir()), strings.NewReader(c.in), &out, &say); code != 2 || say.Len() == 0 {
			t.Errorf("%q: exit %d, %q", c.args, code, say.String())
		}
	}
}
