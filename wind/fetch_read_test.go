package wind_test

import (
	"bytes"
	"errors"
	"math"
	"strings"
	"testing"

	"followingsea.example/wind"
	"pgregory.net/rapid"
)

const fetchTable = "# an invented bay\nwind_from_deg,fetch_km,mean_depth_m,note\n0,12.5,8,\n90,,30,open sea\n180,4,3,\n270,40,12,the long leg\n"

func TestReadFetches(t *testing.T) {
	f, err := wind.ReadFetches(strings.NewReader(fetchTable))
	if err != nil {
		t.Fatal(err)
	}
	if !f.HasDepths() || len(f.Rows()) != 4 {
		t.Errorf("%+v", f.Rows())
	}
	for _, row := range [][3]float64{{0, 12500, 8}, {360, 12500, 8}, {90, inf, 30}, {45, inf, 19}, {225, 22000, 7.5}, {315, 26250, 10}, {-90, 40000, 12}} {
		if got := f.Fetch(row[0]); got != row[1] {
			t.Errorf("fetch from %v: %v, want %v", row[0], got, row[1])
		}
		if got := f.MeanDepth(row[0]); got != row[2] {
			t.Errorf("depth from %v: %v, want %v", row[0], got, row[2])
		}
	}
	if !math.IsNaN(f.Fetch(math.NaN())) || !math.IsNaN(f.MeanDepth(inf)) || !math.IsNaN(wind.Fetches{}.Fetch(0)) {
		t.Error("special cases")
	}
	one, err := wind.NewFetches([]wind.FetchRow{{From: 30, Fetch: 5e3, MeanDepth: math.NaN()}})
	if err != nil || one.Fetch(200) != 5e3 || !math.IsNaN(one.MeanDepth(200)) {
		t.Error(err, one)
	}
}

func TestReadFetchesRefuses(t *testing.T) {
	for in, want := range map[string]string{
		"":                                            "",
		"wind_from_deg,fetch_km\n":                    "",
		"wind_from_deg\n0\n":                          "fetch",
		"wind_from_deg,fetch_km\n400,1\n":             "line 2",
		"wind_from_deg,fetch_km\n,1\n":                "line 2",
		"wind_from_deg,fetch_km\n10,-1\n":             "line 2",
		"wind_from_deg,fetch_km\n10,x\n":              "line 2",
		"wind_from_deg,fetch\n10,1\n":                 "unit",
		"wind_from_deg,fetch_km\n0,1\n360,2\n":        "two rows",
		"wind_from_deg,fetch_km,depth_m\n0,1,2":       "depth_m",
		"wind_from_deg,fetch_km,mean_depth_m\n0,1,\n": "line 2",
	} {
		f, err := wind.ReadFetches(strings.NewReader(in))
		if !errors.Is(err, wind.ErrRead) || !strings.Contains(err.Error(), want) || len(f.Rows()) != 0 {
			t.Errorf("%q: %v", in, err)
		}
	}
	if _, err := wind.ReadFetches(&endless{head: "wind_from_deg,fetch_km\n", line: "1,1\n"}); !errors.Is(err, wind.ErrRead) {
		t.Error(err)
	}
	nan := math.NaN()
	for _, rows := range [][]wind.FetchRow{nil, {{From: nan, Fetch: 1, MeanDepth: nan}}, {{From: 1, Fetch: nan, MeanDepth: nan}}, {{From: 1, Fetch: 1, MeanDepth: -2}},
		{{From: 1, Fetch: 1, MeanDepth: 3}, {From: 2, Fetch: 1, MeanDepth: nan}}, {{From: 1, Fetch: 1, MeanDepth: nan}, {From: 2, Fetch: 1, MeanDepth: 3}}} {
		if _, err := wind.NewFetches(rows); err == nil {
			t.Errorf("%+v made a table", rows)
		}
	}
}

func TestFetchesRoundTrip(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		depths := rapid.Bool().Draw(t, "depths")
		var rows []wind.FetchRow
		for _, d := range rapid.SliceOfNDistinct(rapid.IntRange(0, 3599), 1, 40, rapid.ID[int]).Draw(t, "directions") {
			r := wind.FetchRow{From: float64(d) / 10, Fetch: rapid.Float64Range(0, 1e6).Draw(t, "fetch"), MeanDepth: math.NaN()}
			if rapid.IntRange(0, 5).Draw(t, "open") == 0 {
				r.Fetch = inf
			}
			if depths {
				r.MeanDepth = rapid.Float64Range(0.01, 5e3).Draw(t, "depth")
			}
			rows = append(rows, r)
		}
		f, err := wind.NewFetches(rows)
		if err != nil {
			t.Fatal(err)
		}
		sameFetches(t, f)
	})
}

// sameFetches writes and reads back.
func sameFetches(t interface{ Fatal(...any) }, f wind.Fetches) {
	var buf bytes.Buffer
	if err := wind.WriteFetches(&buf, f); err != nil {
		t.Fatal(err)
	}
	back, err := wind.ReadFetches(&buf)
	if err != nil {
		t.Fatal(err)
	}
	a, b := f.Rows(), back.Rows()
	if len(a) != len(b) || f.HasDepths() != back.HasDepths() {
		t.Fatal(a, b)
	}
	for i := range a {
		if a[i].From != b[i].From || a[i].Fetch != b[i].Fetch || a[i].MeanDepth != b[i].MeanDepth && f.HasDepths() {
			t.Fatal(a[i], b[i])
		}
	}
}

func FuzzReadFetches(f *testing.F) {
	f.Add(fetchTable)
	f.Add("wind_from_deg,fetch_nmi\n0,1\n359.9,\n")
	f.Fuzz(func(t *testing.T, in string) {
		got, err := wind.ReadFetches(strings.NewReader(in))
		if err != nil {
			if !errors.Is(err, wind.ErrRead) {
				t.Fatal(err)
			}
			return
		}
		sameFetches(t, got)
	})
}
