package harmonic_test

import (
	"bufio"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"testing"
	"time"

	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

// near fails unless got is within tol of want; a NaN never passes.
func near(t interface {
	Helper()
	Errorf(string, ...any)
}, what string, got, want, tol float64) bool {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %.6f, want %.6f within %g", what, got, want, tol)
		return false
	}
	return true
}

// references returns the folder with the station and oracle files, which are
// not part of this repository.
func references(t testing.TB) string {
	dir := os.Getenv("FOLLOWINGSEA_REFERENCES")
	if dir == "" {
		t.Skip("FOLLOWINGSEA_REFERENCES is not set: the folder with tide-stations.json and tide-oracle.jsonl")
	}
	return dir
}

func places(t testing.TB) map[string]harmonic.Station {
	t.Helper()
	raw, err := os.ReadFile(filepath.Join(references(t), "tide-stations.json"))
	if err != nil {
		t.Fatal(err)
	}
	var f struct {
		Stations []struct {
			ID, Name, Datum string
			Z0              float64 `json:"z0_m"`
			Constituents    []struct {
				Name string
				Amp  float64 `json:"amp_m"`
				Lag  float64 `json:"phase_deg"`
			}
		}
	}
	if err := json.Unmarshal(raw, &f); err != nil {
		t.Fatal(err)
	}
	out := map[string]harmonic.Station{}
	for _, s := range f.Stations {
		st := harmonic.Station{ID: s.ID, Name: s.Name, Datum: tide.Datum(s.Datum), Z0: s.Z0}
		for _, c := range s.Constituents {
			st.Constituents = append(st.Constituents, harmonic.Constituent{Name: c.Name, Amplitude: c.Amp, Lag: c.Lag})
		}
		out[s.ID] = st
	}
	return out
}

type line struct {
	Src, Station, Kind string
	T                  string
	T0                 string
	Step               float64         `json:"step_s"`
	H                  json.RawMessage `json:"h_m"`
	Datum              string
}

func instant(t testing.TB, s string) time.Time {
	for _, layout := range []string{time.RFC3339, "2006-01-02T15:04Z07:00"} {
		if at, err := time.Parse(layout, s); err == nil {
			return at
		}
	}
	t.Fatalf("time %q", s)
	return time.Time{}
}

// TestOracle holds every line of the oracle file against the library: the
// official predictions to their printed rounding with the nodes of the year,
// those of an independent program to 1 mm and 1 minute with the nodes at the
// instant, without M1 and M3, which that program takes otherwise.
func TestOracle(t *testing.T) {
	st := places(t)
	f, err := os.Open(filepath.Join(references(t), "tide-oracle.jsonl"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	type key struct{ src, id string }
	tides := map[key]*harmonic.Tide{}
	counts := map[string]int{}
	worst := map[string]float64{}
	sc := bufio.NewScanner(f)
	sc.Buffer(nil, 1<<20)
	for sc.Scan() {
		var l line
		if err := json.Unmarshal(sc.Bytes(), &l); err != nil {
			t.Fatal(err)
		}
		k := key{l.Src, l.Station}
		if tides[k] == nil {
			s, n := st[l.Station], harmonic.ByYear
			if l.Src == "library" {
				n = harmonic.AtInstant
				s.Constituents = harmonic.Only(s.Constituents, func(c string) bool { return c != "M1" && c != "M3" })
			}
			td, err := harmonic.New(s, n)
			if err != nil {
				t.Fatal(err)
			}
			tides[k] = td
		}
		td := tides[k]
		tolH, tolT := 0.0015, 60.0
		if l.Src == "library" {
			tolH = 0.001
		}
		counts[l.Src+" "+l.Kind]++
		note := func(what string, e float64) {
			w := l.Src + " " + what
			worst[w] = math.Max(worst[w], math.Abs(e))
		}
		switch l.Kind {
		case "hourly":
			var hs []float64
			if err := json.Unmarshal(l.H, &hs); err != nil {
				t.Fatal(err)
			}
			got := make([]float64, len(hs))
			td.Heights(got, instant(t, l.T0), time.Duration(l.Step)*time.Second)
			smooth, err := harmonic.New(st[l.Station], harmonic.AtInstant)
			if err != nil {
				t.Fatal(err)
			}
			other := make([]float64, len(hs))
			smooth.Heights(other, instant(t, l.T0), time.Duration(l.Step)*time.Second)
			for i := range hs {
				near(t, l.Src+" "+l.Station+" "+l.T0, got[i], hs[i], tolH)
				note("height m", got[i]-hs[i])
				near(t, "nodes at the instant, "+l.Station+" "+l.T0, other[i], hs[i], 0.025)
				note("height with nodes at the instant m", other[i]-hs[i])
			}
		case "height":
			var h float64
			if err := json.Unmarshal(l.H, &h); err != nil {
				t.Fatal(err)
			}
			got := td.Height(instant(t, l.T))
			near(t, l.Src+" "+l.Station+" "+l.T, got, h, tolH)
			note("height m", got-h)
		case "high", "low":
			var h float64
			if err := json.Unmarshal(l.H, &h); err != nil {
				t.Fatal(err)
			}
			at := instant(t, l.T)
			prom := 0.0
			if l.Src == "library" {
				prom = 0.01
			}
			turns, err := td.Turns(at.Add(-3*time.Hour), at.Add(3*time.Hour), prom)
			if err != nil {
				t.Fatal(err)
			}
			best := math.Inf(1)
			var u tide.Turn
			for _, v := range turns {
				if d := math.Abs(v.Time.Sub(at).Seconds()); v.High == (l.Kind == "high") && d < best {
					best, u = d, v
				}
			}
			if !near(t, l.Src+" "+l.Station+" "+l.T+" "+l.Kind+" time s", best, 0, tolT) {
				continue
			}
			near(t, l.Src+" "+l.Station+" "+l.T+" "+l.Kind, u.Height, h, tolH)
			note("turn s", best)
			note("turn m", u.Height-h)
		default:
			t.Fatalf("kind %q", l.Kind)
		}
	}
	if err := sc.Err(); err != nil {
		t.Fatal(err)
	}
	t.Logf("lines: %v", counts)
	t.Logf("largest differences: %v", worst)
}

// TestOracleTurnsAreComplete: in the spans of the peer program its turns are
// ours, none more and none less.
func TestOracleTurnsAreComplete(t *testing.T) {
	st := places(t)
	f, err := os.Open(filepath.Join(references(t), "tide-oracle.jsonl"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	spans := [][2]string{{"2000-03-20T00:00:00Z", "2000-03-22T00:00:00Z"}, {"2026-08-15T00:00:00Z", "2026-08-17T00:00:00Z"}, {"2044-12-31T00:00:00Z", "2045-01-02T00:00:00Z"}}
	count := map[string][3]int{}
	sc := bufio.NewScanner(f)
	sc.Buffer(nil, 1<<20)
	for sc.Scan() {
		var l line
		if err := json.Unmarshal(sc.Bytes(), &l); err != nil {
			t.Fatal(err)
		}
		if l.Src != "library" || l.Kind == "height" {
			continue
		}
		at := instant(t, l.T)
		for i, s := range spans {
			if !at.Before(instant(t, s[0])) && at.Before(instant(t, s[1])) {
				c := count[l.Station]
				c[i]++
				count[l.Station] = c
			}
		}
	}
	for id, c := range count {
		s := st[id]
		s.Constituents = harmonic.Only(s.Constituents, func(c string) bool { return c != "M1" && c != "M3" })
		td, err := harmonic.New(s, harmonic.AtInstant)
		if err != nil {
			t.Fatal(err)
		}
		for i, sp := range spans {
			turns, err := td.Turns(instant(t, sp[0]), instant(t, sp[1]), 0.01)
			if err != nil {
				t.Fatal(err)
			}
			if len(turns) != c[i] {
				t.Errorf("%s, span %d: %d turns, the peer program has %d", id, i, len(turns), c[i])
			}
		}
	}
}
