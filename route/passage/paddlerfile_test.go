package passage

import (
	"errors"
	"io"
	"math"
	"strings"
	"testing"
	"time"
)

func TestReadPaddlers(t *testing.T) {
	party, err := ReadPaddlers(strings.NewReader(`{"party": [
		{"name": "A", "note": "leads", "leader": true, "cruise_km_h": 6.3, "sprint_kn": 6, "prone_m_s": 1, "mass_kg": 95, "board_length_ft": 14,
		 "endurance_h": 3, "prone_endurance_min": 45, "variation_east_deg": -9.5, "variation_date": "2026-01-01",
		 "limits": {"least_wind_kn": 12, "greatest_off_stern_deg": 40, "least_sea_m": 0.3, "greatest_time_to_exit_min": 60,
		            "least_steady_before": 0.9, "least_water_temperature_c": 10, "no_avoid": true, "no_traffic": false}},
		{"name": "B", "mass_kg": null}]}`))
	if err != nil {
		t.Fatal(err)
	}
	if len(party) != 2 {
		t.Fatalf("%d paddlers", len(party))
	}
	a, b := party[0], party[1]
	for _, c := range []struct {
		name      string
		got       Value
		want, tol float64
	}{
		{"cruise", a.Cruise, 1.75, 1e-12}, {"sprint", a.Sprint, 6 * 1852.0 / 3600, 1e-12}, {"prone", a.Prone, 1, 0}, {"mass", a.Mass, 95, 0},
		{"length", a.BoardLength, 4.2672, 1e-12}, {"endurance", a.Endurance, 10800, 0}, {"prone endurance", a.ProneHours, 2700, 0}, {"variation", a.Variation.East, -9.5, 0},
	} {
		if !near(c.got.Number(), c.want, c.tol) {
			t.Errorf("%s %v, want %v", c.name, c.got, c.want)
		}
	}
	for r, want := range map[Rule]float64{LeastWind: 12 * 1852.0 / 3600, GreatestOffStern: 40, LeastSea: 0.3, GreatestTimeToExit: 3600,
		LeastSteadyBefore: 0.9, LeastWaterTemperature: 10, NoAvoid: 0} {
		if x, asked := a.Limits[r].Get(); !asked || !near(x, want, 1e-12) {
			t.Errorf("%v: %v %v, want %v", r, x, asked, want)
		}
	}
	for _, r := range []Rule{NoTraffic, GreatestWind} {
		if _, asked := a.Limits[r].Get(); asked {
			t.Errorf("%v is asked for", r)
		}
	}
	if _, ok := b.Cruise.Get(); ok || b.Mass != (Value{}) || !a.Leader || b.Leader {
		t.Errorf("second paddler %+v", b)
	}
	if !a.Variation.Date.Equal(time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)) {
		t.Errorf("date %v", a.Variation.Date)
	}
}

// TestEveryRuleCanBeRead: each rule has a name that the file knows, and each
// unit of it.
func TestEveryRuleCanBeRead(t *testing.T) {
	for _, r := range Rules() {
		member := `"` + heading(r.String(), r.quantity()) + `": 1`
		if r.Unit() == "bool" {
			member = `"` + r.String() + `": true`
		}
		if i := strings.Index(member, "{"); i >= 0 { // one of several units
			j := strings.IndexAny(member[i:], ",")
			member = member[:i] + member[i+1:i+j] + `": 1`
		}
		p, err := ReadPaddlers(strings.NewReader(`{"limits": {` + member + `}}`))
		if err != nil {
			t.Errorf("%s: %v", member, err)
			continue
		}
		if _, asked := p[0].Limits[r].Get(); !asked {
			t.Errorf("%s asks for nothing", member)
		}
	}
}

func TestReadPaddlersRefuses(t *testing.T) {
	for in, want := range map[string]string{
		"":                                    "empty",
		"[]":                                  "JSON object",
		"null":                                "JSON object",
		"{\n\"name\": }":                      "line 2",
		`{"cruise": 2}`:                       "cruise_{",
		`{"cruise_kn": "2"}`:                  "number",
		`{"cruise_kn": 2e999}`:                "number",
		`{"cruise_stone": 2}`:                 "cruise_{",
		`{"cruise_kn": 4, "sprint_kn": 3}`:    "sprint",
		`{"mass_kg": -1}`:                     "mass",
		`{"variation_east_deg": 3}`:           "date",
		`{"variation_date": "June"}`:          "2026-06-21",
		`{"party": []}`:                       "at least one",
		`{"party": {}}`:                       "list",
		`{"party": [1]}`:                      "paddler 1",
		`{"party": [{}], "mass_kg": 3}`:       "mass_kg",
		`{"limits": {"least_wind": 3}}`:       "least_wind_{",
		`{"limits": {"least_wind_kn": null}}`: "number",
		`{"limits": {"least_wind_kn": 3, "least_wind_m_s": 3}}`: "twice",
		`{"limits": {"greatest_off_stern_deg": 200}}`:           "0 to 180",
		`{"limits": {"no_avoid": 1}}`:                           "true or false",
	} {
		p, err := ReadPaddlers(strings.NewReader(in))
		if !errors.Is(err, ErrInput) || p != nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v, want an error that says %q", in, err, want)
		}
	}
	if _, err := ReadPaddlers(io.MultiReader(strings.NewReader("{"), endless{})); !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), "32 MB") {
		t.Errorf("endless: %v", err)
	}
}

type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = ' '
	}
	return len(p), nil
}

func FuzzReadPaddlers(f *testing.F) {
	f.Add(`{"name": "a", "cruise_kn": 3, "limits": {"least_wind_kn": 12}}`)
	f.Add(`{"party": [{"mass_kg": 1e400}]}`)
	f.Add(`{"limits": {"no_avoid": true, "greatest_sea_m": -0}}`)
	f.Fuzz(func(t *testing.T, in string) {
		party, err := ReadPaddlers(strings.NewReader(in))
		if err != nil {
			if party != nil {
				t.Error("paddlers beside an error")
			}
			return
		}
		for _, p := range party {
			if err := p.Validate(); err != nil {
				t.Errorf("read, but not valid: %v", err)
			}
		}
	})
}

func TestValueAndLimit(t *testing.T) {
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		if _, ok := Known(x).Get(); ok {
			t.Errorf("%v is known", x)
		}
	}
	var v Value
	if _, ok := v.Get(); ok || v.Or(3) != 3 || v.Number() == v.Number() {
		t.Error("the zero value is known")
	}
	if x, ok := Known(0).Get(); !ok || x != 0 {
		t.Error("zero is not known")
	}
	var l Limit
	if _, asked := l.Get(); asked {
		t.Error("the zero limit is asked for")
	}
	if x, asked := Ask(2).Get(); !asked || x != 2 {
		t.Error("a limit of 2 is not asked for")
	}
	if w := WarningInForce(""); w == NoWarningInForce() || w == (Warning{}) {
		t.Error("a warning without words is none")
	}
}

// TestRules: every rule has a name, words, a unit and a sense of its own.
func TestRules(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range Rules() {
		if r.String() == "" || r.Words() == "" || r.Unit() == "" || seen[r.String()] || seen[r.Words()] {
			t.Errorf("rule %d: %q %q %q", r, r.String(), r.Words(), r.Unit())
		}
		seen[r.String()], seen[r.Words()] = true, true
		if least := strings.HasPrefix(r.String(), "least_"); least != r.AtLeast() {
			t.Errorf("%v: at least %v", r, r.AtLeast())
		}
		if r.judge(math.NaN(), 1) != Unknown || r.judge(1, math.NaN()) != Unknown {
			t.Errorf("%v: NaN is judged", r)
		}
		if r.judge(1, 1) != Met || r.judge(2, 1) == r.judge(0, 1) || (r.judge(2, 1) == Met) != r.AtLeast() {
			t.Errorf("%v: the sense is wrong", r)
		}
	}
	if r := Rule(200); r.Unit() != "" || r.AtLeast() || r.String() == "" {
		t.Error("a rule that is none")
	}
}
