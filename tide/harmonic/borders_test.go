package harmonic_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

var inf = math.Inf(1)

// m2 is a station of M2 alone.
func m2(z0, amplitude, lag float64) harmonic.Station {
	return harmonic.Station{Datum: tide.LAT, Z0: z0, Constituents: []harmonic.Constituent{{Name: "M2", Amplitude: amplitude, Lag: lag}}}
}

// TestAcceptedRanges: the ranges of a station's numbers are closed, and just beyond them the
// error names the number and the constituent.
func TestAcceptedRanges(t *testing.T) {
	above := func(x float64) float64 { return math.Nextafter(x, inf) }
	for _, s := range []harmonic.Station{m2(100, 1, 0), m2(-100, 1, 0), m2(0, 0, 0), m2(0, 25, 0), m2(0, 1, -360), m2(0, 1, 720)} {
		if _, err := harmonic.New(s, harmonic.Without); err != nil {
			t.Errorf("%+v: %v", s, err)
		}
	}
	second := func(c harmonic.Constituent) harmonic.Station {
		s := m2(0, 1, 0)
		s.Constituents = append(s.Constituents, c)
		return s
	}
	for _, c := range []struct {
		s     harmonic.Station
		is    error
		words string
	}{
		{m2(above(100), 1, 0), harmonic.ErrStation, "mean level 100.0000"},
		{m2(-above(100), 1, 0), harmonic.ErrStation, "mean level -100.0000"},
		{harmonic.Station{}, harmonic.ErrStation, "no constituents"},
		{second(harmonic.Constituent{Name: "S2", Amplitude: -math.SmallestNonzeroFloat64}), harmonic.ErrConstituent, "constituent 2, S2: amplitude"},
		{second(harmonic.Constituent{Name: "S2", Amplitude: above(25)}), harmonic.ErrConstituent, "constituent 2, S2: amplitude"},
		{second(harmonic.Constituent{Name: "S2", Lag: -above(360)}), harmonic.ErrConstituent, "constituent 2, S2: lag"},
		{second(harmonic.Constituent{Name: "S2", Lag: above(720)}), harmonic.ErrConstituent, "constituent 2, S2: lag"},
		{second(harmonic.Constituent{Name: "M2", Amplitude: 1}), harmonic.ErrConstituent, "constituent 2, M2: the same as constituent 1"},
		{second(harmonic.Constituent{Name: "Q7"}), harmonic.ErrConstituent, fmt.Sprintf(`constituent 2: name "Q7": want one of M2 S2 N2 K1 M4 O1 M6 MK3 S4 MN4 NU2 S6 MU2 2N2 OO1 LAM2 S1 M1 J1 MM SSA SA MSF MF RHO Q1 T2 R2 2Q1 P1 2SM2 M3 L2 2MK3 K2 M8 MS4 and %d more`, len(harmonic.Names())-37)},
	} {
		if _, err := harmonic.New(c.s, harmonic.Without); !errors.Is(err, c.is) || !strings.Contains(err.Error(), c.words) {
			t.Errorf("%v, want %q", err, c.words)
		}
	}
	if _, err := harmonic.New(m2(0, 1, 0), harmonic.Without+1); !errors.Is(err, harmonic.ErrStation) || !strings.Contains(err.Error(), "nodes 3") {
		t.Error(err)
	}
	cs := m2(0, 1, 0).Constituents
	for _, c := range []struct {
		flood, ebb float64
		good       bool
	}{{360, -360, true}, {-360, 360, true}, {above(360), 0, false}, {0, -above(360), false}, {-above(360), 0, false}, {0, above(360), false}} {
		if _, err := harmonic.NewStream(harmonic.Axis{Flood: c.flood, Ebb: c.ebb, Constituents: cs}, harmonic.Without); (err == nil) != c.good {
			t.Errorf("flood %v, ebb %v: %v", c.flood, c.ebb, err)
		}
	}
}

// TestConstituentOfNoAmplitude: it is accepted and adds nothing, whatever its lag.
func TestConstituentOfNoAmplitude(t *testing.T) {
	s := m2(1, 2, 30)
	s.Constituents = append(s.Constituents, harmonic.Constituent{Name: "M4", Lag: 77})
	with, err := harmonic.New(s, harmonic.AtInstant)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "height", with.Height(utc("2026-01-01 00:00")), plain(m2(1, 2, 30), harmonic.AtInstant, utc("2026-01-01 00:00")), 1e-12)
}

// TestWaterThatStandsOnTheLevel: water that stands on the level all the time has the depth that is needed, and stands at or
// below it, all the time.
func TestWaterThatStandsOnTheLevel(t *testing.T) {
	td, err := harmonic.New(m2(2, 0, 0), harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	from, to := utc("2026-01-01 00:00"), utc("2026-01-03 07:00")
	above, err := td.Windows(tide.Bar{Need: 2}, from, to)
	below, err2 := td.Below(2, from, to)
	if err != nil || err2 != nil || len(above) != 1 || len(below) != 1 {
		t.Fatalf("%v %v, %v %v", above, err, below, err2)
	}
	for _, w := range []tide.Window{above[0], below[0]} {
		if !w.From.Equal(from) || !w.To.Equal(to) {
			t.Errorf("%v, want %v to %v", w, from, to)
		}
	}
}

// TestNumbersBeyondTheirRange: the years of the tables are 1600 to 2500, both with a value; a longitude
// that is no number or infinite has no node factor, even of the sun's constituents.
func TestNumbersBeyondTheirRange(t *testing.T) {
	for year, want := range map[int]bool{1599: false, 1600: true, 2500: true, 2501: false} {
		v, f := harmonic.YearArgument("M2", year, harmonic.Modern)
		if got := !math.IsNaN(v) && !math.IsNaN(f); got != want || math.IsNaN(v) != math.IsNaN(f) {
			t.Errorf("%d: %v %v", year, v, f)
		}
	}
	nan := math.NaN()
	for _, l := range []harmonic.Longitudes{{N: nan}, {P: nan}, {N: inf}, {P: inf}, {N: -inf}, {P: -inf}, {N: inf, P: inf}, {N: inf, P: -inf}, {N: -inf, P: -inf}} {
		for _, name := range []string{"S2", "M2", "L2"} {
			if f, u := l.Node(name); !math.IsNaN(f) || !math.IsNaN(u) {
				t.Errorf("%+v %s: %v %v", l, name, f, u)
			}
		}
		o := l.Orbit()
		for _, v := range []float64{o.I, o.Xi, o.Nu, o.NuPrime, o.NuSecond, o.P} {
			if !math.IsNaN(v) {
				t.Errorf("%+v: %+v", l, o)
			}
		}
	}
	// The middle of a year of 365 days is 2 July 12 h.
	_, f := harmonic.YearArgument("M2", 2025, harmonic.Modern)
	g, _ := harmonic.LongitudesAt(utc("2025-07-02 12:00"), harmonic.Modern).Node("M2")
	near(t, "node factor of 2025", f, g, 1e-15)
}

// TestNamesInOrder: the 37 of the national service in its order, and every name once.
func TestNamesInOrder(t *testing.T) {
	names := harmonic.Names()
	if got := strings.Join(names[:37], " "); !strings.HasPrefix(got, "M2 S2 N2 K1 M4 O1 ") || !strings.HasSuffix(got, " K2 M8 MS4") {
		t.Error(got)
	}
	seen := map[string]bool{}
	for _, n := range names {
		if seen[n] {
			t.Errorf("%s twice", n)
		}
		seen[n] = true
		if math.IsNaN(harmonic.Speed(n)) {
			t.Errorf("%s is not known", n)
		}
	}
}

// TestSpans: a span has to be positive and at most 200 years, both stated; a span that is
// accepted gets as far as the next thing that is wrong.
func TestSpans(t *testing.T) {
	td, err := harmonic.New(m2(0, 1, 0), harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	from := utc("2026-01-01 00:00")
	const long = 200 * 366 * 24 * time.Hour
	for _, c := range []struct {
		span time.Duration
		want error
	}{{-1, harmonic.ErrSpan}, {0, harmonic.ErrSpan}, {1, harmonic.ErrStation}, {long, harmonic.ErrStation}, {long + 1, harmonic.ErrSpan}} {
		if _, err := td.Turns(from, from.Add(c.span), -1); !errors.Is(err, c.want) {
			t.Errorf("turns of %v: %v", c.span, err)
		}
		if _, err := td.Below(inf, from, from.Add(c.span)); !errors.Is(err, c.want) {
			t.Errorf("below in %v: %v", c.span, err)
		}
	}
	for _, p := range []float64{-math.SmallestNonzeroFloat64, inf, -inf, math.NaN()} {
		if _, err := td.Turns(from, from.Add(time.Hour), p); !errors.Is(err, harmonic.ErrStation) {
			t.Errorf("prominence %v: %v", p, err)
		}
	}
	for _, level := range []float64{inf, -inf, math.NaN()} {
		if _, err := td.Below(level, from, from.Add(time.Hour)); !errors.Is(err, harmonic.ErrStation) {
			t.Errorf("below %v: %v", level, err)
		}
	}
}

// TestBoundsOfAFile: 4 MB and 1000 constituents are read, more is not; errors count the
// constituents from one, and long names are cut at 40 letters.
func TestBoundsOfAFile(t *testing.T) {
	good := `{"station":"X","datum":"MLLW","z0_m":1,"constituents":[{"name":"M2","amplitude_m":1,"lag_deg":3}]}`
	for size, want := range map[int]bool{4 << 20: true, 4<<20 + 1: false} {
		if _, err := harmonic.ReadStation(strings.NewReader(good + strings.Repeat(" ", size-len(good)))); (err == nil) != want {
			t.Errorf("%d bytes: %v", size, err)
		}
	}
	many := func(n int, value string) string {
		return strings.TrimSuffix(strings.Repeat(`{"name":"M2","`+value+`":1,"lag_deg":3},`, n), ",")
	}
	for text, want := range map[string]string{
		`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[` + many(1000, "amplitude_m") + `]}`:                                  "constituent 2, M2: the same as constituent 1",
		`{"station":"X","datum":"MLLW","z0_m":1,"constituents":[` + many(1001, "amplitude_m") + `]}`:                                  "more than 1000",
		`{"station":"X","stream":{"flood_deg":1,"ebb_deg":2,"constituents":[` + many(1000, "rate_m_s") + `]}}`:                        "constituent 2, M2: the same as constituent 1",
		`{"station":"X","stream":{"flood_deg":1,"ebb_deg":2,"constituents":[` + many(1001, "rate_m_s") + `]}}`:                        "more than 1000",
		`{"station":"X","constituents":[` + many(1, "amplitude_m") + `,{"name":"S2","lag_deg":1}]}`:                                   `constituent 2, "S2": want amplitude_m`,
		`{"station":"X","constituents":[{"name":"S2","amplitude_m":1}]}`:                                                              `constituent 1, "S2": want amplitude_m and lag_deg`,
		`{"station":"X","stream":{"flood_deg":1,"ebb_deg":2,"constituents":[` + many(1, "rate_m_s") + `,{"name":"S2","lag_deg":1}]}}`: `constituent 2, "S2": want rate_m_s`,
		`{"station":"X","stream":{"flood_deg":1,"constituents":[]}}`:                                                                  "want flood_deg and ebb_deg",
		`{"station":"X","constituents":[{"name":"` + strings.Repeat("x", 40) + `"}]}`:                                                 `"` + strings.Repeat("x", 40) + `":`,
		`{"station":"X","constituents":[{"name":"` + strings.Repeat("x", 41) + `"}]}`:                                                 `"` + strings.Repeat("x", 40) + `...":`,
		"{\n\n\"station\":\n3}":     "line 4",
		"{\n\"station\": \"X\",\n}": "line 3",
	} {
		if _, err := harmonic.ReadStation(strings.NewReader(text)); !errors.Is(err, harmonic.ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%.60q: %v, want %q", text, err, want)
		}
	}
}
