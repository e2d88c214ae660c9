package harmonic_test

import (
	"bytes"
	"errors"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"followingsea.example/internal/reference/stations"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

func utc(s string) time.Time {
	u, err := time.Parse("2006-01-02 15:04", s)
	if err != nil {
		panic(err)
	}
	return u
}

func predictor(t testing.TB, id string, n harmonic.Nodes) *harmonic.Tide {
	t.Helper()
	td, err := harmonic.New(stations.Station(id), n)
	if err != nil {
		t.Fatal(err)
	}
	return td
}

// plain is the textbook sum, one cosine a constituent, with the node factors
// at the instant or of the year.
func plain(s harmonic.Station, n harmonic.Nodes, at time.Time) float64 {
	h := s.Z0
	l := harmonic.LongitudesAt(at, harmonic.Modern)
	year := at.UTC().Year()
	start := time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC)
	for _, c := range s.Constituents {
		var f, phase float64
		switch n {
		case harmonic.ByYear:
			var v float64
			v, f = harmonic.YearArgument(c.Name, year, harmonic.Modern)
			phase = v + harmonic.Speed(c.Name)*at.Sub(start).Hours()
		case harmonic.AtInstant:
			var u float64
			f, u = l.Node(c.Name)
			phase = l.Argument(c.Name) + u
		default:
			f, phase = 1, l.Argument(c.Name)
		}
		h += f * c.Amplitude * math.Cos((phase-c.Lag)*math.Pi/180)
	}
	return h
}

// TestHeightIsThePlainSum holds the evaluation against the formula written out.
func TestHeightIsThePlainSum(t *testing.T) {
	for _, id := range []string{"8410140", "9414290", "8729840"} {
		s := stations.Station(id)
		for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
			td := predictor(t, id, n)
			for i := 0; i < 200; i++ {
				at := utc("1950-01-01 00:00").Add(time.Duration(i) * 5431 * time.Hour)
				near(t, id+" "+n.String(), td.Height(at), plain(s, n, at), 2e-10)
			}
		}
	}
}

// TestHeightsAreHeight: the series is the single evaluation to 1e-9 m, for any
// step, across New Year, forwards and backwards.
func TestHeightsAreHeight(t *testing.T) {
	dst := make([]float64, 700)
	for _, id := range []string{"8410140", "8729840"} {
		for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
			td := predictor(t, id, n)
			for _, step := range []time.Duration{6 * time.Minute, time.Minute, time.Hour, 7 * time.Hour, 40 * time.Hour, 0, -6 * time.Minute, time.Second} {
				from := utc("2026-12-30 22:17")
				td.Heights(dst, from, step)
				for i, h := range dst {
					near(t, id+" "+n.String()+" "+step.String(), h, td.Height(from.Add(time.Duration(i)*step)), 1e-9)
				}
			}
			td.Rates(dst, utc("2026-03-01 00:00"), 6*time.Minute)
			for i, r := range dst {
				at := utc("2026-03-01 00:00").Add(time.Duration(i) * 6 * time.Minute)
				near(t, "rate", r, td.Rate(at), 1e-12)
			}
		}
	}
	td := predictor(t, "8410140", harmonic.AtInstant)
	for _, n := range []int{0, 1, 2, 3, 5, 120, 121, 122} {
		td.Heights(dst[:n], utc("2026-03-01 00:00"), 6*time.Minute)
		for i, h := range dst[:n] {
			near(t, "short", h, td.Height(utc("2026-03-01 00:00").Add(time.Duration(i)*6*time.Minute)), 1e-9)
		}
	}
}

// TestRateIsTheDerivative compares the rate with central differences.
func TestRateIsTheDerivative(t *testing.T) {
	for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
		td := predictor(t, "8410140", n)
		for i := 0; i < 100; i++ {
			at := utc("2026-01-05 00:00").Add(time.Duration(i) * 77 * time.Hour)
			d := (td.Height(at.Add(20*time.Second)) - td.Height(at.Add(-20*time.Second))) / 40
			near(t, n.String(), td.Rate(at), d, 1e-9)
		}
	}
}

// TestTurnsOfAYear: against a scan minute by minute no turn is missing, none
// is made up, and they alternate.
func TestTurnsOfAYear(t *testing.T) {
	days := 365
	if testing.Short() {
		days = 40
	}
	for _, id := range []string{"8410140", "1612340", "8729840"} {
		for _, n := range []harmonic.Nodes{harmonic.AtInstant, harmonic.ByYear} {
			td := predictor(t, id, n)
			from := utc("2026-01-01 00:00")
			to := from.AddDate(0, 0, days)
			turns, err := td.Turns(from, to, 0)
			if err != nil {
				t.Fatal(err)
			}
			h := make([]float64, days*1440)
			td.Heights(h, from, time.Minute)
			scan := 0
			for i := 1; i < len(h)-1; i++ {
				if (h[i] > h[i-1]) != (h[i+1] > h[i]) {
					at := from.Add(time.Duration(i) * time.Minute)
					if scan >= len(turns) {
						t.Fatalf("%s %v: scan finds a turn at %v, none left", id, n, at)
					}
					u := turns[scan]
					near(t, id+" turn at "+at.String(), u.Time.Sub(at).Minutes(), 0, 1)
					if u.High != (h[i] > h[i-1]) {
						t.Errorf("%s %v: high %v", id, at, u.High)
					}
					scan++
				}
			}
			if scan != len(turns) {
				t.Errorf("%s %v: %d turns, the scan finds %d", id, n, len(turns), scan)
			}
			for i, u := range turns {
				near(t, "rate at a turn", td.Rate(u.Time), 0, 1e-10)
				near(t, "height at a turn", u.Height, td.Height(u.Time), 1e-10)
				if i > 0 && turns[i-1].High == u.High {
					t.Errorf("%s: %v follows %v", id, u, turns[i-1])
				}
			}
		}
	}
}

// TestProminence: pruned turns alternate, differ by the prominence, do not
// depend on where the question begins, and are turns of the whole.
func TestProminence(t *testing.T) {
	td := predictor(t, "8729840", harmonic.AtInstant)
	from, to := utc("2026-01-01 00:00"), utc("2026-04-01 00:00")
	all, _ := td.Turns(from, to, 0)
	few, err := td.Turns(from, to, 0.02)
	if err != nil {
		t.Fatal(err)
	}
	if !(len(few) < len(all)) || len(few) == 0 {
		t.Fatalf("%d of %d turns", len(few), len(all))
	}
	in := map[int64]bool{}
	for _, u := range all {
		in[u.Time.Unix()] = true
	}
	for i, u := range few {
		if !in[u.Time.Unix()] {
			t.Errorf("%v is none of all turns", u)
		}
		if i > 0 && (few[i-1].High == u.High || !(math.Abs(few[i-1].Height-u.Height) >= 0.02)) {
			t.Errorf("%v after %v", u, few[i-1])
		}
	}
	part, _ := td.Turns(utc("2026-02-03 07:00"), utc("2026-02-20 07:00"), 0.02)
	j := 0
	for _, u := range few {
		if !u.Time.Before(utc("2026-02-03 07:00")) && !u.Time.After(utc("2026-02-20 07:00")) {
			if j >= len(part) || part[j].Time.Sub(u.Time).Abs() > time.Millisecond {
				t.Fatalf("part %d is not %v", j, u)
			}
			j++
		}
	}
	if j != len(part) {
		t.Errorf("%d turns in the part, %d of the whole", len(part), j)
	}
}

// TestM2AloneRepeats: one constituent without its node is back where it was
// after two of its periods, and its range is twice its amplitude.
func TestM2AloneRepeats(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		amp := rapid.Float64Range(0.1, 5).Draw(t, "amplitude")
		s := harmonic.Station{Datum: tide.MSL, Constituents: []harmonic.Constituent{{Name: "M2", Amplitude: amp, Lag: rapid.Float64Range(0, 360).Draw(t, "lag")}}}
		td, err := harmonic.New(s, harmonic.Without)
		if err != nil {
			t.Fatal(err)
		}
		at := utc("2026-01-01 00:00").Add(time.Duration(rapid.IntRange(0, 1e6).Draw(t, "minutes")) * time.Minute)
		period := time.Duration(360 / harmonic.Speed("M2") * 3600e9)
		near(t, "two periods on", td.Height(at.Add(2*period)), td.Height(at), 1e-6*amp)
		turns, err := td.Turns(at, at.Add(2*period), 0)
		if err != nil || len(turns) < 4 {
			t.Fatalf("%d turns, %v", len(turns), err)
		}
		near(t, "range", math.Abs(turns[1].Height-turns[0].Height), 2*amp, 1e-9*amp)
		near(t, "half a period", turns[1].Time.Sub(turns[0].Time).Seconds(), period.Seconds()/2, 1e-3)
	})
}

// TestLinearInAmplitudes: twice the amplitudes is twice the tide about its
// mean, and two stations' constituents together are the sum of both.
func TestLinearInAmplitudes(t *testing.T) {
	s := stations.Station("8443970")
	twice := s
	twice.Constituents = nil
	for _, c := range s.Constituents {
		c.Amplitude *= 2
		twice.Constituents = append(twice.Constituents, c)
	}
	even, odd := s, s
	even.Constituents, odd.Constituents = nil, nil
	for i, c := range s.Constituents {
		if i%2 == 0 {
			even.Constituents = append(even.Constituents, c)
		} else {
			odd.Constituents = append(odd.Constituents, c)
		}
	}
	for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
		mk := func(s harmonic.Station) *harmonic.Tide {
			td, err := harmonic.New(s, n)
			if err != nil {
				t.Fatal(err)
			}
			return td
		}
		a, b, e, o := mk(s), mk(twice), mk(even), mk(odd)
		for i := 0; i < 50; i++ {
			at := utc("2026-01-01 00:00").Add(time.Duration(i) * 171 * time.Hour)
			near(t, "twice", b.Height(at)-s.Z0, 2*(a.Height(at)-s.Z0), 1e-12)
			near(t, "parts", e.Height(at)+o.Height(at)-s.Z0, a.Height(at), 1e-12)
		}
	}
}

// TestStreamOverATide: what M2 alone carries one way it carries back, so that
// its integral over a tide is the mean flow's.
func TestStreamOverATide(t *testing.T) {
	s, err := harmonic.NewStream(harmonic.Axis{Flood: 30, Ebb: 210, Mean: 0.1, Constituents: []harmonic.Constituent{{Name: "M2", Amplitude: 1.2, Lag: 70}}}, harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	n := 1000
	period := time.Duration(360 / harmonic.Speed("M2") * 3600e9)
	r := make([]float64, n)
	s.Rates(r, utc("2026-05-01 00:00"), period/time.Duration(n))
	sum := 0.0
	for _, v := range r {
		sum += v
	}
	near(t, "mean over a tide", sum/float64(n), 0.1, 1e-6)
}

// TestEventsOfAStream: slack is a zero, an extreme has no slope, and kinds go
// by the sign of the rate.
func TestEventsOfAStream(t *testing.T) {
	s, err := harmonic.NewStream(*stations.Station("PUG1741").Stream, harmonic.ByYear)
	if err != nil {
		t.Fatal(err)
	}
	events, err := s.Events(utc("2026-06-01 00:00"), utc("2026-07-01 00:00"))
	if err != nil {
		t.Fatal(err)
	}
	weak := 0
	for _, e := range events {
		v := s.Rate(e.Time)
		near(t, e.Kind.String(), v, e.Rate, 1e-9)
		switch e.Kind {
		case tide.MinEbb, tide.MinFlood:
			weak++
		}
	}
	if weak == 0 {
		t.Error("no weakest ebb in a month: Bellingham Channel has one a day")
	}
	table, err := s.Between(utc("2026-06-01 00:00"), utc("2026-07-01 00:00"))
	if err != nil {
		t.Fatal(err)
	}
	worst := 0.0
	for at := utc("2026-06-01 00:00"); at.Before(utc("2026-07-01 00:00")); at = at.Add(10 * time.Minute) {
		worst = math.Max(worst, math.Abs(table.Rate(at)-s.Rate(at)))
	}
	near(t, "sine against the sum, knots, worst of June", worst/tide.Knot, 0.9, 0.02)
	v := s.Velocity(utc("2026-06-01 06:03")).Stream()
	near(t, "ebb sets", v.Set, 211.2, 1e-9)
}

// TestTableSpansTheQuestion: a table from constituents is whole and its
// heights are near the sum where the tide is regular.
func TestTableSpansTheQuestion(t *testing.T) {
	td := predictor(t, "8443970", harmonic.AtInstant)
	from, to := utc("2026-08-15 00:00"), utc("2026-08-18 00:00")
	tb, err := td.Table(from, to, 0.01, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	lo, hi := tb.Span()
	if lo.After(from) || hi.Before(to) || tb.Datum() != tide.MLLW || tb.Len() > 15 {
		t.Errorf("%v to %v, %v, %d turns", lo, hi, tb.Datum(), tb.Len())
	}
	for at := from; at.Before(to); at = at.Add(20 * time.Minute) {
		near(t, "cosine against the sum", tb.Height(at), td.Height(at), 0.20)
	}
}

func TestUnknownConstituents(t *testing.T) {
	for _, cs := range [][]harmonic.Constituent{
		nil, {{Name: "Q7", Amplitude: 1}}, {{Name: "M2", Amplitude: math.NaN()}}, {{Name: "M2", Amplitude: -1}},
		{{Name: "M2", Amplitude: 1, Lag: math.Inf(1)}}, {{Name: "LAM2", Amplitude: 1}, {Name: "lambda2", Amplitude: 1}},
	} {
		if _, err := harmonic.New(harmonic.Station{Constituents: cs}, harmonic.AtInstant); err == nil {
			t.Errorf("%v: no error", cs)
		}
	}
	good := []harmonic.Constituent{{Name: "M2", Amplitude: 1}}
	if _, err := harmonic.New(harmonic.Station{Z0: math.NaN(), Constituents: good}, 0); !errors.Is(err, harmonic.ErrStation) {
		t.Error(err)
	}
	if _, err := harmonic.New(harmonic.Station{Constituents: good}, 9); !errors.Is(err, harmonic.ErrStation) {
		t.Error(err)
	}
	td, err := harmonic.New(harmonic.Station{Constituents: good}, 0)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := td.Turns(utc("2026-01-02 00:00"), utc("2026-01-01 00:00"), 0); !errors.Is(err, harmonic.ErrSpan) {
		t.Error(err)
	}
	if _, err := td.Turns(utc("2026-01-01 00:00"), utc("2026-01-02 00:00"), math.NaN()); !errors.Is(err, harmonic.ErrStation) {
		t.Error(err)
	}
	if !math.IsNaN(harmonic.Speed("none")) || !math.IsNaN((harmonic.Longitudes{}).Argument("none")) {
		t.Error("unknown names give numbers")
	}
	if v, f := harmonic.YearArgument("M2", 1066, harmonic.Modern); !math.IsNaN(v) || !math.IsNaN(f) {
		t.Error("1066")
	}
	if f, u := (harmonic.Longitudes{N: math.NaN()}).Node("S2"); !math.IsNaN(f) || !math.IsNaN(u) {
		t.Error("NaN node")
	}
}

// TestNames: every name is known by itself, in lower case and in Greek, and
// its printed speed is the rate of its argument.
func TestNames(t *testing.T) {
	names := harmonic.Names()
	if len(names) < 100 {
		t.Errorf("%d names", len(names))
	}
	a := harmonic.LongitudesAt(utc("2026-01-01 00:00"), harmonic.Modern)
	b := harmonic.LongitudesAt(utc("2026-01-01 01:00"), harmonic.Modern)
	for _, n := range names {
		s := harmonic.Speed(strings.ToLower(n))
		if n == "M1" {
			continue // carries the motion of its Q
		}
		near(t, n, math.Remainder(b.Argument(n)-a.Argument(n)-s, 360), 0, 1e-6)
	}
	for greek, latin := range map[string]string{"ν2": "NU2", "μ2": "MU2", "λ2": "LAM2", "ρ1": "RHO", " m2 ": "M2", "Msf": "MSF", "σ1": "SIG1"} {
		near(t, greek, harmonic.Speed(greek), harmonic.Speed(latin), 0)
	}
}

// TestNodesAreSmooth: the node factors have no jump as N and p go round.
func TestNodesAreSmooth(t *testing.T) {
	for _, name := range []string{"M2", "O1", "K1", "K2", "J1", "OO1", "MF", "MM", "M3", "L2", "M1", "2MK3", "MSF"} {
		var lf, lu float64
		for i := 0; i <= 7200; i++ {
			l := harmonic.Longitudes{N: float64(i) / 20, P: float64(i) / 10}
			f, u := l.Node(name)
			if i > 0 {
				near(t, name+" f", f, lf, 0.01)
				near(t, name+" u", math.Remainder(u-lu, 360), 0, 0.5)
			}
			lf, lu = f, u
		}
		f0, u0 := harmonic.Longitudes{N: 0, P: 0}.Node(name)
		f1, u1 := harmonic.Longitudes{N: 360, P: 360}.Node(name)
		near(t, name+" after a turn", f1, f0, 1e-12)
		near(t, name+" after a turn", math.Remainder(u1-u0, 360), 0, 1e-9)
	}
}

// TestOrbitMirror: with the node mirrored the angles change sign and the
// inclination stays.
func TestOrbitMirror(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.Float64Range(0, 360).Draw(t, "N")
		a, b := harmonic.Longitudes{N: n}.Orbit(), harmonic.Longitudes{N: -n}.Orbit()
		near(t, "I", a.I, b.I, 1e-9)
		near(t, "xi", a.Xi, -b.Xi, 1e-9)
		near(t, "nu", a.Nu, -b.Nu, 1e-9)
		near(t, "nu'", a.NuPrime, -b.NuPrime, 1e-9)
		near(t, "2nu''", a.NuSecond, -b.NuSecond, 1e-9)
		if !(a.I > 18.3-0.02 && a.I < 28.6+0.02) {
			t.Errorf("I = %v", a.I)
		}
	})
}

func TestRotary(t *testing.T) {
	e := []harmonic.Constituent{{Name: "M2", Amplitude: 0.8, Lag: 30}}
	n := []harmonic.Constituent{{Name: "M2", Amplitude: 0.5, Lag: 120}}
	r, err := harmonic.NewRotary(e, n, tide.Velocity{East: 0.1}, harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	major, minor, _, _ := tide.Ellipse{East: 0.8, EastLag: 30, North: 0.5, NorthLag: 120}.Axes()
	lo, hi := math.Inf(1), 0.0
	for i := 0; i < 2000; i++ {
		v := r.Velocity(utc("2026-01-01 00:00").Add(time.Duration(i) * time.Minute))
		v.East -= 0.1
		s := v.Stream().Rate
		lo, hi = math.Min(lo, s), math.Max(hi, s)
	}
	near(t, "major", hi, major, 1e-4)
	near(t, "minor", lo, minor, 1e-4)
	if _, err := harmonic.NewRotary(nil, n, tide.Velocity{}, 0); err == nil {
		t.Error("no east")
	}
	if _, err := harmonic.NewRotary(e, nil, tide.Velocity{}, 0); err == nil {
		t.Error("no north")
	}
}

func TestStationNumbers(t *testing.T) {
	s := stations.Station("8410140")
	near(t, "form number", s.FormNumber(), 0.09, 0.005)
	near(t, "age of the tide in hours", stations.Station("8443970").Age()/3600, 36, 0.5)
	near(t, "Honolulu", stations.Station("1612340").Age()/3600, -5, 0.5)
	if !math.IsNaN((harmonic.Station{}).FormNumber()) || !math.IsNaN((harmonic.Station{}).Age()) {
		t.Error("numbers of nothing")
	}
}

func TestStationRoundTrip(t *testing.T) {
	for _, id := range []string{"8410140", "PUG1741"} {
		want := stations.Station(id)
		var b bytes.Buffer
		if err := harmonic.WriteStation(&b, want); err != nil {
			t.Fatal(err)
		}
		got, err := harmonic.ReadStation(&b)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Error(d)
		}
	}
}

func TestReadStationSaysWhatIsWrong(t *testing.T) {
	for text, want := range map[string]string{
		"": "line 1",
		"{\n\"station\": \"X\",\n\"datums\": \"MLLW\"}": "datums",
		"{\n\"station\": 3}":                            "line 2",
		`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[{"name":"M2","lag_deg":3}]}`:                            "amplitude_m",
		`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[{"name":"Q9","amplitude_m":1,"lag_deg":3}]}`:            "Q9",
		`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[]}`:                                                     "no constituents",
		`{"station":"X","z0_m":1,"constituents":[{"name":"M2","amplitude_m":1,"lag_deg":3}]}`:                           "datum",
		`{"station":"X","datum":"MLLW","constituents":[{"name":"M2","amplitude_m":1,"lag_deg":3}]}`:                     "z0_m",
		`{"datum":"MLLW","z0_m":1,"constituents":[{"name":"M2","amplitude_m":1,"lag_deg":3}]}`:                          "station",
		`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[{"name":"M2","amplitude_m":1,"lag_deg":3}]} {}`:         "more after",
		`{"station":"X","stream":{"ebb_deg":1,"constituents":[]}}`:                                                      "flood_deg",
		`{"station":"X","stream":{"flood_deg":1,"ebb_deg":1,"constituents":[{"name":"M2","rate_m_s":1}]}}`:              "lag_deg",
		`{"station":"X","stream":{"flood_deg":1,"ebb_deg":1,"constituents":[{"name":"M2","rate_m_s":-1,"lag_deg":0}]}}`: "amplitude -1",
		strings.Repeat(" ", 5<<20): "4 MB",
	} {
		s, err := harmonic.ReadStation(strings.NewReader(text))
		if !errors.Is(err, harmonic.ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%.80q: %v, want %q", text, err, want)
		}
		if s.Name != "" || s.Constituents != nil {
			t.Errorf("%.80q: a station with an error", text)
		}
	}
	if err := harmonic.WriteStation(&bytes.Buffer{}, harmonic.Station{}); err == nil {
		t.Error("wrote nothing without an error")
	}
}

// endless never ends and says how much was taken from it.
type endless struct{ n int }

func (e *endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = ' '
	}
	e.n += len(p)
	return len(p), nil
}

func TestReadStationIsBounded(t *testing.T) {
	e := &endless{}
	if _, err := harmonic.ReadStation(e); !errors.Is(err, harmonic.ErrFile) {
		t.Error(err)
	}
	if e.n > 8<<20 {
		t.Errorf("took %d bytes", e.n)
	}
}

func FuzzReadStation(f *testing.F) {
	f.Add([]byte(`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[{"name":"M2","amplitude_m":1,"lag_deg":3}]}`))
	f.Add([]byte(`{"station":"X","stream":{"flood_deg":1,"ebb_deg":9,"constituents":[{"name":"S2","rate_m_s":1,"lag_deg":3}]}}`))
	f.Fuzz(func(t *testing.T, raw []byte) {
		s, err := harmonic.ReadStation(bytes.NewReader(raw))
		if err != nil {
			return
		}
		var b bytes.Buffer
		if err := harmonic.WriteStation(&b, s); err != nil {
			t.Fatal(err)
		}
		again, err := harmonic.ReadStation(&b)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(s, again); d != "" {
			t.Error(d)
		}
	})
}

// TestLongitudesMove: the longitudes go round at their own rates, and the old
// elements are where the new ones are to a few hundredths of a degree.
func TestLongitudesMove(t *testing.T) {
	for year := 1950; year <= 2050; year += 10 {
		at := time.Date(year, 7, 1, 0, 0, 0, 0, time.UTC)
		a, b := harmonic.LongitudesAt(at, harmonic.Modern), harmonic.LongitudesAt(at.Add(24*time.Hour), harmonic.Modern)
		for i, d := range [][3]float64{{a.S, b.S, 13.17639648}, {a.H, b.H, 0.98564736}, {a.P, b.P, 0.11140352}, {a.N, b.N, -0.05295376}, {a.P1, b.P1, 4.708e-5}} {
			near(t, "motion in a day", math.Remainder(d[1]-d[0]-d[2], 360), 0, 2e-5)
			_ = i
		}
		o := harmonic.LongitudesAt(at, harmonic.Schureman1900)
		for _, d := range [][2]float64{{a.S, o.S}, {a.H, o.H}, {a.P, o.P}, {a.N, o.N}, {a.P1, o.P1}} {
			near(t, "old and new elements", math.Remainder(d[1]-d[0], 360), 0, 0.03)
		}
	}
	if l := harmonic.LongitudesAt(time.Time{}, 9); !math.IsNaN(l.S) || !math.IsNaN(l.T) {
		t.Error("unknown elements")
	}
}

func TestYearArgumentIsArgumentAndNode(t *testing.T) {
	for _, name := range harmonic.Names() {
		for _, by := range []harmonic.Elements{harmonic.Modern, harmonic.Schureman1900} {
			v, f := harmonic.YearArgument(name, 2024, by)
			g, u := harmonic.LongitudesAt(time.Date(2024, 7, 2, 0, 0, 0, 0, time.UTC), by).Node(name)
			w := harmonic.LongitudesAt(time.Date(2024, 1, 1, 0, 0, 0, 0, time.UTC), by).Argument(name)
			near(t, name+" f", f, g, 0)
			near(t, name+" V+u", math.Remainder(v-w-u, 360), 0, 1e-9)
		}
	}
}

func TestOnly(t *testing.T) {
	s := stations.Station("8443970")
	few := harmonic.Only(s.Constituents, func(n string) bool { return n == "M2" || n == "S2" })
	if len(few) != 2 || few[0] != s.Constituents[0] {
		t.Error(few)
	}
}

func TestStreamsRefuse(t *testing.T) {
	good := []harmonic.Constituent{{Name: "M2", Amplitude: 1}}
	for _, a := range []harmonic.Axis{{}, {Flood: math.NaN(), Constituents: good}, {Ebb: 999, Constituents: good}, {Mean: math.NaN(), Constituents: good}} {
		if _, err := harmonic.NewStream(a, 0); err == nil {
			t.Errorf("%+v: no error", a)
		}
	}
	s, err := harmonic.NewStream(harmonic.Axis{Ebb: 180, Constituents: good}, 0)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := s.Events(utc("2026-01-02 00:00"), utc("2026-01-01 00:00")); !errors.Is(err, harmonic.ErrSpan) {
		t.Error(err)
	}
	if _, err := s.Between(utc("2026-01-09 00:00"), utc("2026-01-01 00:00")); !errors.Is(err, harmonic.ErrSpan) {
		t.Error(err)
	}
}

// TestEventsAgainstAScan: minute by minute, no slack and no extreme is missed.
func TestEventsAgainstAScan(t *testing.T) {
	s, err := harmonic.NewStream(*stations.Station("PUG1741").Stream, harmonic.AtInstant)
	if err != nil {
		t.Fatal(err)
	}
	from := utc("2026-02-01 00:00")
	to := from.AddDate(0, 0, 40)
	events, err := s.Events(from, to)
	if err != nil {
		t.Fatal(err)
	}
	v := make([]float64, 40*1440)
	s.Rates(v, from, time.Minute)
	k := 0
	for i := 1; i < len(v)-1; i++ {
		slack, turn := (v[i] >= 0) != (v[i+1] >= 0), (v[i] > v[i-1]) != (v[i+1] > v[i])
		if !slack && !turn {
			continue
		}
		at := from.Add(time.Duration(i) * time.Minute)
		if k == len(events) {
			t.Fatalf("none left at %v", at)
		}
		near(t, events[k].Kind.String()+" at "+at.String(), events[k].Time.Sub(at).Minutes(), 0, 1)
		if slack != events[k].Kind.Slack() {
			t.Errorf("%v: %v", at, events[k].Kind)
		}
		k++
	}
	if k != len(events) {
		t.Errorf("%d events, the scan finds %d", len(events), k)
	}
}

// TestWindowsAgreeWithHeights: a window opens and closes where the sum
// crosses the level, and nowhere else, whatever the shape of the tide.
func TestWindowsAgreeWithHeights(t *testing.T) {
	ids := []string{"8410140", "1612340", "8729840"}
	tides := map[string][]*harmonic.Tide{}
	for _, id := range ids {
		tides[id] = []*harmonic.Tide{predictor(t, id, harmonic.AtInstant), predictor(t, id, harmonic.ByYear)}
	}
	rapid.Check(t, func(t *rapid.T) {
		id := rapid.SampledFrom(ids).Draw(t, "station")
		td := tides[id][rapid.IntRange(0, 1).Draw(t, "nodes")]
		from := utc("2026-12-25 00:00").Add(time.Duration(rapid.IntRange(0, 20000).Draw(t, "minutes")) * time.Minute)
		to := from.Add(time.Duration(rapid.IntRange(1, 6000).Draw(t, "length")) * time.Minute)
		level := stations.Station(id).Z0 + rapid.Float64Range(-0.5, 0.5).Draw(t, "level")
		open, err := td.Windows(tide.Bar{Need: level}, from, to)
		if err != nil {
			t.Fatal(err)
		}
		shut, err := td.Below(level, from, to)
		if err != nil {
			t.Fatal(err)
		}
		var sum time.Duration
		for _, w := range append(append([]tide.Window(nil), open...), shut...) {
			sum += w.Duration()
			newYear := utc("2027-01-01 00:00")
			if !w.CutFrom && !w.From.Equal(newYear) {
				near(t, "opens", td.Height(w.From), level, 1e-8)
			}
			if !w.CutTo && !w.To.Equal(newYear) {
				near(t, "closes", td.Height(w.To), level, 1e-8)
			}
		}
		near(t, "open and shut make the whole", sum.Seconds(), to.Sub(from).Seconds(), 1e-3)
		for at := from; !at.After(to); at = at.Add(11 * time.Minute) {
			in := false
			for _, w := range open {
				in = in || w.Contains(at)
			}
			if h := td.Height(at); in != (h >= level) && !(math.Abs(h-level) <= 1e-6) && !at.Equal(utc("2027-01-01 00:00")) {
				t.Fatalf("%v: height %v, level %v, open %v", at, h, level, in)
			}
		}
	})
	td := tides["8410140"][0]
	always, err := td.Windows(tide.Bar{Charted: 20}, utc("2026-01-01 00:00"), utc("2026-01-03 00:00"))
	if err != nil || len(always) != 1 || !always[0].CutFrom || !always[0].CutTo {
		t.Error(always, err)
	}
	never, err := td.Windows(tide.Bar{Charted: -20}, utc("2026-01-01 00:00"), utc("2026-01-03 00:00"))
	if err != nil || len(never) != 0 {
		t.Error(never, err)
	}
	if _, err := td.Windows(tide.Bar{Need: math.NaN()}, utc("2026-01-01 00:00"), utc("2026-01-03 00:00")); !errors.Is(err, harmonic.ErrStation) {
		t.Error(err)
	}
	if _, err := td.Below(1, utc("2026-01-03 00:00"), utc("2026-01-01 00:00")); !errors.Is(err, harmonic.ErrSpan) {
		t.Error(err)
	}
}

// TestWindowsOfM2ByHand: M2 of 2 m on a mean of 3 m stands above 4 m for a
// third of its period.
func TestWindowsOfM2ByHand(t *testing.T) {
	td, err := harmonic.New(harmonic.Station{Datum: tide.LAT, Z0: 3, Constituents: []harmonic.Constituent{{Name: "M2", Amplitude: 2}}}, harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	w, err := td.Windows(tide.Bar{Charted: tide.Drying(3), Need: 1}, utc("2026-01-01 00:00"), utc("2026-01-04 00:00"))
	if err != nil || len(w) < 5 {
		t.Fatal(w, err)
	}
	for _, v := range w {
		if !v.CutFrom && !v.CutTo {
			near(t, "hours", v.Duration().Hours(), 360/harmonic.Speed("M2")/3, 1e-6)
		}
	}
	// A question that begins where the water passes the level: whatever way
	// rounding takes the edge, the hours it stays shut are not open.
	for _, v := range w {
		if v.CutFrom || v.CutTo {
			continue
		}
		for d := time.Duration(-3); d <= 3; d++ {
			shut, err := td.Windows(tide.Bar{Charted: tide.Drying(3), Need: 1}, v.To.Add(d), v.To.Add(3*time.Hour))
			if err != nil || len(shut) > 1 || len(shut) == 1 && shut[0].Duration() > time.Microsecond {
				t.Errorf("%v after closing: %v %v", d, shut, err)
			}
			open, err := td.Windows(tide.Bar{Charted: tide.Drying(3), Need: 1}, v.From.Add(d), v.From.Add(3*time.Hour))
			if err != nil || len(open) != 1 || open[0].Duration() < 3*time.Hour-time.Microsecond {
				t.Errorf("%v after opening: %v %v", d, open, err)
			}
		}
	}
}

// TestSpreadOfTheCosine measures how far real tides run from the cosine
// between their turns, the figures that package tide documents.
func TestSpreadOfTheCosine(t *testing.T) {
	for id, want := range map[string]float64{"8410140": 0.046, "8443970": 0.058, "9414290": 0.037, "1612340": 0.042} {
		td := predictor(t, id, harmonic.ByYear)
		turns, err := td.Turns(utc("2026-01-01 00:00"), utc("2026-05-01 00:00"), 0.01)
		if err != nil {
			t.Fatal(err)
		}
		var worst []float64
		h := make([]float64, 100)
		for i := 1; i < len(turns); i++ {
			l := tide.Limb{From: turns[i-1], To: turns[i]}
			if d := l.Duration() / 3600; d < 5 || d > 7 {
				continue
			}
			n := int(l.Duration() / 360)
			td.Heights(h[:n], l.From.Time, 6*time.Minute)
			w := 0.0
			for k := range h[:n] {
				w = math.Max(w, math.Abs(h[k]-l.Height(l.From.Time.Add(time.Duration(k)*6*time.Minute), tide.ByCosine)))
			}
			worst = append(worst, w/l.Range())
		}
		slices.Sort(worst)
		near(t, id+", 95th percentile of the largest error, of the range", worst[(len(worst)-1)*95/100], want, 0.002)
	}
}

// TestCurveIsTheSum: the curve is the sum to a micrometre, and knows its span.
func TestCurveIsTheSum(t *testing.T) {
	from, to := utc("2026-06-01 00:00"), utc("2026-06-20 00:01")
	for _, id := range []string{"8410140", "8443970", "8729840"} {
		for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
			td := predictor(t, id, n)
			c, err := td.Curve(from, to)
			if err != nil {
				t.Fatal(err)
			}
			for at := from; !at.After(to); at = at.Add(17*time.Minute + 13*time.Second) {
				near(t, id, c.Height(at), td.Height(at), 1e-6)
				near(t, id, c.Rate(at), td.Rate(at), 1e-8)
			}
			near(t, "end", c.Height(to), td.Height(to), 1e-6)
			if c.Datum() != td.Datum() {
				t.Error(c.Datum())
			}
			for _, at := range []time.Time{from.Add(-1), to.Add(1)} {
				if !math.IsNaN(c.Height(at)) || !math.IsNaN(c.Rate(at)) {
					t.Errorf("a height at %v", at)
				}
			}
		}
	}
	s, err := harmonic.NewStream(*stations.Station("PUG1741").Stream, harmonic.AtInstant)
	if err != nil {
		t.Fatal(err)
	}
	c, err := s.Curve(from, to)
	if err != nil {
		t.Fatal(err)
	}
	for at := from; !at.After(to); at = at.Add(17 * time.Minute) {
		near(t, "rate", c.Rate(at), s.Rate(at), 1e-6)
		near(t, "east", c.Velocity(at).East, s.Velocity(at).East, 1e-6)
	}
	if v := c.Velocity(to.Add(time.Hour)); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
		t.Error(v)
	}
	td := predictor(t, "8410140", harmonic.AtInstant)
	for _, bad := range [][2]time.Time{{to, from}, {from, from}, {from, from.AddDate(11, 0, 0)}} {
		if _, err := td.Curve(bad[0], bad[1]); !errors.Is(err, harmonic.ErrSpan) {
			t.Error(err)
		}
		if _, err := s.Curve(bad[0], bad[1]); !errors.Is(err, harmonic.ErrSpan) {
			t.Error(err)
		}
	}
}

// TestTurnsOfAnyTide: for tides of any constituents, however odd their shape,
// every turn that a scan by the minute sees is found. What the scan does not see
// are two turns within its own two steps.
func TestTurnsOfAnyTide(t *testing.T) {
	names := harmonic.Names()
	rapid.Check(t, func(t *rapid.T) {
		s := harmonic.Station{Datum: tide.MSL}
		for _, i := range rapid.SliceOfNDistinct(rapid.IntRange(0, len(names)-1), 1, 8, rapid.ID[int]).Draw(t, "constituents") {
			s.Constituents = append(s.Constituents, harmonic.Constituent{Name: names[i], Amplitude: rapid.Float64Range(0.01, 1).Draw(t, "amplitude"), Lag: rapid.Float64Range(0, 360).Draw(t, "lag")})
		}
		td, err := harmonic.New(s, harmonic.AtInstant)
		if errors.Is(err, harmonic.ErrConstituent) {
			t.Skip("two names of one constituent")
		}
		if err != nil {
			t.Fatal(err)
		}
		from := utc("2026-01-01 00:00").Add(time.Duration(rapid.IntRange(0, 1e6).Draw(t, "minutes")) * time.Minute)
		const n = 4 * 1440
		h := make([]float64, n+1)
		td.Heights(h, from, time.Minute)
		turns, err := td.Turns(from, from.Add(n*time.Minute), 0)
		if err != nil {
			t.Fatal(err)
		}
		k := 0
		for i := 1; i < n; i++ {
			if math.Abs(h[i]-h[i-1]) < 1e-9 || math.Abs(h[i+1]-h[i]) < 1e-9 || (h[i] > h[i-1]) == (h[i+1] > h[i]) {
				continue // no turn, or flatter than the scan can tell
			}
			at := from.Add(time.Duration(i) * time.Minute)
			for k < len(turns) && turns[k].Time.Before(at.Add(-time.Minute)) {
				k++
			}
			if k == len(turns) || turns[k].Time.After(at.Add(time.Minute)) {
				t.Fatalf("no turn near %v", at)
			}
		}
		for i := 1; i < len(turns); i++ {
			if turns[i].High == turns[i-1].High || !turns[i].Time.After(turns[i-1].Time) {
				t.Fatalf("%v follows %v", turns[i], turns[i-1])
			}
		}
	})
}

// TestArgumentAtPredicts: heights are the sum of f H cos(V + u − g).
func TestArgumentAtPredicts(t *testing.T) {
	s := all37()
	td, err := harmonic.New(s, harmonic.AtInstant)
	if err != nil {
		t.Fatal(err)
	}
	for d := range 40 {
		at := time.Date(2026, 1, 1, 0, 17, 0, 0, time.UTC).Add(time.Duration(d) * 229 * time.Hour)
		want := s.Z0
		for _, c := range s.Constituents {
			v, f := harmonic.ArgumentAt(c.Name, at, harmonic.Modern)
			want += f * c.Amplitude * math.Cos((v-c.Lag)*math.Pi/180)
		}
		near(t, at.String(), td.Height(at), want, 1e-9)
	}
	if v, f := harmonic.ArgumentAt("nothing", time.Now(), harmonic.Modern); !math.IsNaN(v) || !math.IsNaN(f) {
		t.Errorf("an unknown constituent has the argument %v and the factor %v", v, f)
	}
}
