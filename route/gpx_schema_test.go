package route

import (
	"os"
	"path/filepath"
	"testing"
	"time"
)

// TestGPXForTheSchema writes a run and tracks with everything that the writers
// can write, for the validator of CI; without its folder it only checks that
// they can be written.
func TestGPXForTheSchema(t *testing.T) {
	dir := os.Getenv("FOLLOWINGSEA_GPX_DIR")
	if dir == "" {
		dir = t.TempDir()
	}
	write := func(name string, f func(*os.File) error) {
		t.Helper()
		file, err := os.Create(filepath.Join(dir, name))
		if err != nil {
			t.Fatal(err)
		}
		defer file.Close()
		if err := f(file); err != nil {
			t.Fatal(err)
		}
	}
	run := Run{
		Name:   "Skarn <Head> & Ling Bar",
		Points: []Point{{Lat: 44, Lon: -34}, {Lat: 44.02, Lon: -33.95}, {Lat: 44.06, Lon: 180}},
		Depths: []Value{Known(18), {}}, FetchDepth: Known(40),
		Exits: []Exit{
			{Name: "Tally Cove", Note: "shingle", Point: Point{Lat: 44.017, Lon: -33.93}, Charted: Known(-0.5), LeastDepth: LimitOf(0.3),
				GreatestBreaker: LimitOf(0.7), Seaward: LimitOf(330), Hours: DaylightOnly, GreatestStream: NoLimit()},
			{Name: "nothing known", Point: Point{Lat: -44.0000001, Lon: 1e-7}},
		},
	}
	write("run.gpx", func(f *os.File) error { return WriteRunGPX(f, run) })
	at := time.Date(2026, 9, 12, 11, 0, 0, 500_000_000, time.FixedZone("", -7200))
	fixes := []Fix{{Point{Lat: 44, Lon: -34}, at}, {Point{Lat: 44.1, Lon: -33.9}, at.Add(time.Hour)}}
	write("tracks.gpx", func(f *os.File) error {
		return WriteTracksGPX(f, []Track{{Name: "recorded", Fixes: fixes}, {Name: "planned", Planned: true, Fixes: fixes}, {Fixes: fixes}})
	})
}
