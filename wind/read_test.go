package wind_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"followingsea.example/wind"
)

// same compares with NaN equal to NaN.
var same = cmp.Options{cmpopts.EquateNaNs()}

func TestReadSeries(t *testing.T) {
	in := "# a forecast\n" +
		"note,wind_from_deg,time,wind_speed_kn,wind_gust_kn,air_temperature_c,water_temperature_f\n" +
		",200,2026-06-21T06:00:00Z,12,18,15.5,59\n" +
		"another zone,210,2026-06-21T09:00:00+02:00,14,,,\n" +
		"missing speed,,2026-06-21T08:00Z,,,,\n" +
		"calm,,2026-06-21T10:00:00Z,0,,,\n"
	s, err := wind.ReadSeries(strings.NewReader(in), 0)
	if err != nil {
		t.Fatal(err)
	}
	if s.Len() != 3 {
		t.Fatalf("%d samples", s.Len())
	}
	a, b, c := s.Sample(0), s.Sample(1), s.Sample(2)
	if !near(a.Speed, 12*wind.Knot, 1e-12) || !near(a.Gust, 18*wind.Knot, 1e-12) || a.From != 200 || a.Air.Celsius() != 15.5 || !near(a.Water.Celsius(), 15, 1e-9) {
		t.Errorf("%v", a)
	}
	if !near(b.Speed, 14*wind.Knot, 1e-12) || b.GustKnown() || b.Air.Known() || !b.Time.Equal(time.Date(2026, 6, 21, 7, 0, 0, 0, time.UTC)) {
		t.Errorf("%v", b)
	}
	if !c.IsCalm() {
		t.Errorf("%v", c)
	}
}

func TestReadSeriesRefuses(t *testing.T) {
	head := "time,wind_speed_kn,wind_from_deg,wind_gust_kn\n"
	for _, c := range []struct{ in, want string }{
		{"", "the file is empty"},
		{"time,wind_speed,wind_from_deg\n", "wind_speed"},
		{"time,wind_speed_furlongs,wind_from_deg\n", "wind_speed"},
		{"time,wind_speed_kn\n2026-06-21T06:00:00Z,12\n", "wind_from"},
		{"time,wind_speed_kn,wind_from_deg,depth\n", "depth"},
		{head + "2026-06-21T06:00:00,12,200,\n", "zone"},
		{head + "2026-06-21T06:00:00Z,12,200,\n2026-06-21T07:00:00+02:00,12,200,\n", "line 3: column time"},
		{head + "2026-06-21T06:00:00Z,137,200,\n", "line 2: column wind_speed_kn"},
		{head + "yesterday,12,200,\n", "line 2: column time"},
		{head + "2026-06-21T06:00:00Z,12,400,\n", "line 2: column wind_from_deg"},
		{head + "2026-06-21T06:00:00Z,12,,\n", "the wind blows"},
		{head + "2026-06-21T06:00:00Z,-1,200,\n", "line 2: column wind_speed_kn"},
		{head + "2026-06-21T06:00:00Z,NaN,200,\n", "line 2: column wind_speed_kn"},
		{head + "2026-06-21T06:00:00Z,999,200,\n", "line 2: column wind_speed_kn"},
		{head + "2026-06-21T06:00:00Z,12,200,9\n", "line 2: column wind_gust_kn"},
		{head + "2026-06-21T06:00:00Z,12,200\n", "line 2"},
		{head + "2026-06-21T06:00:00Z,12,200,\n2026-06-21T08:00:00+02:00,13,200,\n", "line 3: column time"},
		{head, "no samples"},
	} {
		s, err := wind.ReadSeries(strings.NewReader(c.in), 0)
		if err == nil || !strings.Contains(err.Error(), c.want) || !errors.Is(err, wind.ErrRead) || s.Len() != 0 {
			t.Errorf("%q: %v, want %q", c.in, err, c.want)
		}
		var re *wind.ReadError
		if !errors.As(err, &re) {
			t.Errorf("%q: %T", c.in, err)
		}
	}
	broken := io.MultiReader(strings.NewReader(head), errReader{})
	if _, err := wind.ReadSeries(broken, 0); !errors.Is(err, io.ErrClosedPipe) {
		t.Error(err)
	}
}

type errReader struct{}

func (errReader) Read([]byte) (int, error) { return 0, io.ErrClosedPipe }

func drawSamples(t *rapid.T) []wind.Sample {
	n := rapid.IntRange(1, 20).Draw(t, "n")
	var in []wind.Sample
	at := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	for range n {
		at = at.Add(time.Duration(rapid.Int64Range(1, 6*3600*1e9).Draw(t, "step")))
		w := wind.Calm()
		if !rapid.Bool().Draw(t, "calm") {
			w.Speed = rapid.Float64Range(0.01, 60).Draw(t, "speed")
			w.From = rapid.Float64Range(0, 359.999).Draw(t, "from")
		}
		if rapid.Bool().Draw(t, "gusty") {
			w.Gust = w.Speed + rapid.Float64Range(0.01, 20).Draw(t, "over")
		}
		x := wind.Sample{Time: at, Wind: w}
		if rapid.Bool().Draw(t, "air") {
			x.Air = wind.Celsius(rapid.Float64Range(-20, 40).Draw(t, "air"))
		}
		if rapid.Bool().Draw(t, "water") {
			x.Water = wind.Celsius(rapid.Float64Range(-2, 30).Draw(t, "water"))
		}
		in = append(in, x)
	}
	return in
}

func TestSeriesRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s, err := wind.NewSeries(drawSamples(t), 0)
		if err != nil {
			t.Fatal(err)
		}
		var buf bytes.Buffer
		if err := wind.WriteSeries(&buf, s); err != nil {
			t.Fatal(err)
		}
		back, err := wind.ReadSeries(&buf, 0)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(s.Samples(), back.Samples(), same); d != "" || back.Gap() != s.Gap() {
			t.Fatal(d)
		}
	})
}

// endless repeats a line for ever: a reader that does not stop would hang or
// fill the memory.
type endless struct {
	head, line string
	at         int
}

func (e *endless) Read(p []byte) (int, error) {
	n := copy(p, e.head)
	e.head = e.head[n:]
	for n < len(p) {
		k := copy(p[n:], e.line[e.at:])
		n += k
		e.at = (e.at + k) % len(e.line)
	}
	return n, nil
}

func TestReadersStopAtTheirLimit(t *testing.T) {
	if testing.Short() {
		t.Skip("reads 32 MB three times")
	}
	for name, c := range map[string]struct {
		in   io.Reader
		read func(io.Reader) error
	}{
		"series": {&endless{head: "time,wind_speed_kn,wind_from_deg\n", line: "2026-06-21T06:00:00Z,,\n"}, func(r io.Reader) error { _, err := wind.ReadSeries(r, 0); return err }},
		"swells": {&endless{head: "time,swell_height_m,swell_period_s,swell_from_deg\n", line: "2026-06-21T06:00:00Z,,,\n"}, func(r io.Reader) error { _, err := wind.ReadSwells(r, 0); return err }},
		"buoy":   {&endless{head: "#YY MM DD hh mm WDIR WSPD\n", line: strings.Repeat(" ", 4000) + "\n"}, func(r io.Reader) error { _, err := wind.ReadBuoy(r); return err }},
		"rows":   {&endless{head: "#YY MM DD hh mm WDIR WSPD\n", line: "2026 06 21 10 50 210 7.0\n"}, func(r io.Reader) error { _, err := wind.ReadBuoy(r); return err }},
		"row":    {&endless{head: "time,wind_speed_kn,wind_from_deg\n", line: "x"}, func(r io.Reader) error { _, err := wind.ReadSeries(r, 0); return err }},
		"line":   {&endless{head: "#YY MM DD hh mm WDIR WSPD\n", line: "x"}, func(r io.Reader) error { _, err := wind.ReadBuoy(r); return err }},
	} {
		if err := c.read(c.in); !errors.Is(err, wind.ErrRead) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

const archive = `#YY  MM DD hh mm WDIR WSPD GST  WVHT   DPD   APD MWD   PRES  ATMP  WTMP  DEWP  VIS  TIDE
#yr  mo dy hr mn degT m/s  m/s     m   sec   sec degT   hPa  degC  degC  degC   mi    ft
2020 12 31 23 50 151  3.8  4.4  1.60  7.69  5.50 110 1020.4  17.6  15.0  17.6 99.0 99.00
2021 01 01 00 50 999 99.0 99.0  1.65  8.33  5.64 103 9999.0 999.0  15.0 999.0 99.0 99.00
2021 01 01 01 50 360  4.4  4.0 99.00 99.00 99.00 999 1020.0  17.3  15.1  17.3  5.0  1.50
`

const oldArchive = `YYYY MM DD hh  WD  WSPD GST  WVHT  DPD   APD  MWD  BAR    ATMP  WTMP  DEWP  VIS  TIDE
2004 04 23 00 271  1.5  2.4  0.45  3.70  3.48 999 1026.5   0.1   1.7 999.0 99.0 99.00
2004 04 23 01 312  2.2  3.0  0.00 99.00 99.00 999 1026.1  -0.1   1.7 999.0 99.0 99.00
`

const twoDigits = `YY MM DD hh WD   WSPD GST  WVHT  DPD   APD  MWD  BAR    ATMP  WTMP  DEWP  VIS
98 12 31 23 200 05.0 06.1 01.20 09.10 06.00 999 1013.2  10.1  11.0 999.0 99.0
`

const realtime = `#YY  MM DD hh mm WDIR WSPD GST  WVHT   DPD   APD MWD   PRES  ATMP  WTMP  DEWP  VIS PTDY  TIDE
#yr  mo dy hr mn degT m/s  m/s     m   sec   sec degT   hPa  degC  degC  degC  nmi  hPa    ft
2026 06 21 10 50 210  7.0  9.0   1.1     6   4.9 196 1015.2  24.1  25.0  22.1 1.6+ -0.3    MM
2026 06 21 10 40 200  6.0  8.0    MM    MM    MM  MM 1015.3  24.0  25.0  22.0   MM   MM    MM
2026 06 21 10 30  MM  6.0  8.0    MM    MM    MM  MM     MM    MM    MM    MM   MM   MM    MM
`

func TestReadBuoyEveryLayout(t *testing.T) {
	rec, err := wind.ReadBuoy(strings.NewReader(archive))
	if err != nil {
		t.Fatal(err)
	}
	if len(rec.Rows) != 3 {
		t.Fatalf("%d rows", len(rec.Rows))
	}
	a, b, c := rec.Rows[0], rec.Rows[1], rec.Rows[2]
	if a.Wind.Speed != 3.8 || a.Wind.Gust != 4.4 || a.Wind.From != 151 || a.Hs != 1.6 || a.Tp != 7.69 || a.Tavg != 5.5 || a.MeanFrom != 110 ||
		!near(a.Pressure, 102040, 1e-6) || a.Air.Celsius() != 17.6 || !math.IsNaN(a.Visibility) || !math.IsNaN(a.Tide) {
		t.Errorf("%+v", a)
	}
	if b.HasWind || b.Hs != 1.65 || !math.IsNaN(b.Pressure) || b.Air.Known() || b.Water.Celsius() != 15 {
		t.Errorf("a missing field must not spoil its row: %+v", b)
	}
	if c.Wind.From != 0 || c.Wind.GustKnown() || !math.IsNaN(c.Hs) || !near(c.Visibility, 5*1852, 1e-9) || !near(c.Tide, 1.5*0.3048, 1e-12) {
		t.Errorf("%+v", c)
	}
	if len(rec.Remarks) != 1 || rec.Remarks[0].Kind != wind.GustBelowMean || rec.Remarks[0].Rows != 1 {
		t.Errorf("%v", rec.Remarks)
	}

	old, err := wind.ReadBuoy(strings.NewReader(oldArchive))
	if err != nil || len(old.Rows) != 2 || !old.Rows[1].Time.Equal(time.Date(2004, 4, 23, 1, 0, 0, 0, time.UTC)) || old.Rows[0].Wind.From != 271 || !math.IsNaN(old.Rows[1].Hs) {
		t.Errorf("%+v %v", old, err)
	}
	if len(old.Remarks) != 1 || old.Remarks[0].Kind != wind.ZeroWave {
		t.Errorf("%v", old.Remarks)
	}
	two, err := wind.ReadBuoy(strings.NewReader(twoDigits))
	if err != nil || !two.Rows[0].Time.Equal(time.Date(1998, 12, 31, 23, 0, 0, 0, time.UTC)) || two.Rows[0].Wind.Speed != 5 {
		t.Errorf("%+v %v", two, err)
	}
	now, err := wind.ReadBuoy(strings.NewReader(realtime))
	if err != nil || len(now.Rows) != 3 || now.Rows[0].HasWind || now.Rows[2].Wind.Speed != 7 || now.Rows[2].Hs != 1.1 {
		t.Errorf("%+v %v", now, err)
	}
	if !now.Rows[0].Time.Before(now.Rows[2].Time) {
		t.Error("newest first must come out oldest first")
	}
	if len(now.Remarks) != 1 || now.Remarks[0].Kind != wind.NoDirection {
		t.Errorf("%v", now.Remarks)
	}
}

func TestFrozenAnemometerIsFlagged(t *testing.T) {
	var b strings.Builder
	b.WriteString("#YY MM DD hh mm WDIR WSPD GST WVHT\n")
	for h := range 20 {
		speed := 5.0
		if h >= 4 && h <= 10 || h == 15 {
			speed = 0
		}
		fmt.Fprintf(&b, "2010 01 02 %02d 50 180 %.1f %.1f 1.00\n", h, speed, speed)
	}
	rec, err := wind.ReadBuoy(strings.NewReader(b.String()))
	if err != nil {
		t.Fatal(err)
	}
	if len(rec.Remarks) != 1 || rec.Remarks[0].Kind != wind.FrozenAnemometer || rec.Remarks[0].Rows != 7 {
		t.Fatalf("%v", rec.Remarks)
	}
	if rec.Rows[4].HasWind || rec.Rows[10].HasWind || !rec.Rows[15].HasWind || !rec.Rows[15].Wind.IsCalm() || rec.Rows[4].Hs != 1 {
		t.Errorf("%+v", rec.Rows)
	}
	s, err := rec.Winds(0, 0)
	if err != nil || s.Len() != 13 || len(s.Gaps()) != 1 {
		t.Errorf("%v %v %v", s.Len(), s.Gaps(), err)
	}
	at10, err := rec.Winds(5, 0)
	if err != nil || !near(at10.Sample(0).Speed/5, wind.Smith1988(15).ToHeight(5, 5, 10).Speed/5, 1e-12) {
		t.Error(err)
	}
	if _, err := rec.Winds(-1, 0); !errors.Is(err, wind.ErrHeight) {
		t.Error(err)
	}
	if _, err := rec.Winds(math.NaN(), 0); !errors.Is(err, wind.ErrHeight) {
		t.Error(err)
	}
}

func TestReadBuoyRefuses(t *testing.T) {
	head := "#YY MM DD hh mm WDIR WSPD\n"
	for _, c := range []struct {
		in, want string
		err      error
	}{
		{"", "no samples", wind.ErrEmpty},
		{head, "no samples", wind.ErrEmpty},
		{"time,wind\n", "line 1", wind.ErrBuoyHeader},
		{"YY MM DD WDIR WSPD\n", "line 1", wind.ErrBuoyHeader},
		{"YY MM DD hh PRES\n", "line 1", wind.ErrBuoyHeader},
		{"YY MM DD hh WSPD\n", "WSPD without WDIR", wind.ErrBuoyHeader},
		{"YY MM DD hh WDIR WD WSPD\n", "two columns", wind.ErrBuoyHeader},
		{head + "#yr mo dy hr mn degT kts\n", "WSPD in \"kts\"", wind.ErrBuoyRow},
		{head + "2021 01 01 00 00 180\n", "line 2: wind: a row that does not fit the header: 6 fields, the header has 7", wind.ErrBuoyRow},
		{head + "2021 13 01 00 00 180 5\n", "line 2", wind.ErrBuoyRow},
		{head + "2021 02 30 00 00 180 5\n", "no day 30", wind.ErrBuoyRow},
		{head + "1821 02 20 00 00 180 5\n", "year 1821", wind.ErrBuoyRow},
		{head + "2021 02 20 00 00 400 5\n", "line 2: column WDIR", wind.ErrBuoyRow},
		{head + "2021 02 20 00 00 180 fast\n", "line 2: column WSPD", wind.ErrBuoyRow},
		{head + "2021 02 20 00 00 180 NaN\n", "line 2: column WSPD", wind.ErrBuoyRow},
		{head + "2021 02 20 00 00 180 -5\n", "line 2: column WSPD", wind.ErrBuoyRow},
	} {
		rec, err := wind.ReadBuoy(strings.NewReader(c.in))
		if !errors.Is(err, c.err) || !errors.Is(err, wind.ErrRead) || !strings.Contains(err.Error(), c.want) || rec.Rows != nil {
			t.Errorf("%q: %v, want %q", c.in, err, c.want)
		}
	}
	rec, err := wind.ReadBuoy(strings.NewReader(head + "2021 02 20 00 00 180 5\n2021 02 20 00 00 190 6\n"))
	if err != nil || len(rec.Rows) != 1 || rec.Remarks[0].Kind != wind.RepeatedTime || rec.Rows[0].Wind.From != 180 {
		t.Errorf("%v %v", rec, err)
	}
}

func TestBuoyRoundTrip(t *testing.T) {
	for _, in := range []string{archive, oldArchive, twoDigits, realtime} {
		rec, err := wind.ReadBuoy(strings.NewReader(in))
		if err != nil {
			t.Fatal(err)
		}
		var buf bytes.Buffer
		if err := wind.WriteBuoy(&buf, rec); err != nil {
			t.Fatal(err)
		}
		back, err := wind.ReadBuoy(&buf)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(rec.Rows, back.Rows, same, cmpopts.EquateApprox(0, 1e-6)); d != "" {
			t.Error(d)
		}
	}
}

func drawSwells(t *rapid.T) wind.Swells {
	var systems []wind.SwellSystem
	for i := range rapid.IntRange(1, 4).Draw(t, "systems") {
		at := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
		var in []wind.SwellSample
		for range rapid.IntRange(1, 8).Draw(t, "n") {
			at = at.Add(time.Duration(rapid.Int64Range(1, 6*3600*1e9).Draw(t, "step")))
			s := wind.Swell{}
			if !rapid.Bool().Draw(t, "none") {
				s = wind.Swell{
					Hs:   rapid.Float64Range(0.01, 10).Draw(t, "hs"),
					Tp:   rapid.Float64Range(2, 25).Draw(t, "tp"),
					From: rapid.Float64Range(0, 359.99).Draw(t, "from"),
				}
			}
			in = append(in, wind.SwellSample{Time: at, Swell: s})
		}
		sys, err := wind.NewSwellSystem(fmt.Sprintf("swell %d, \"west\"", i), in, 0)
		if err != nil {
			t.Fatal(err)
		}
		systems = append(systems, sys)
	}
	s, err := wind.NewSwells(systems...)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestSwellsRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSwells(t)
		var buf bytes.Buffer
		if err := wind.WriteSwells(&buf, s); err != nil {
			t.Fatal(err)
		}
		back, err := wind.ReadSwells(&buf, 0)
		if err != nil {
			t.Fatal(err)
		}
		a, b := s.Systems(), back.Systems()
		if len(a) != len(b) {
			t.Fatal(len(a), len(b))
		}
		for i := range a {
			if d := cmp.Diff(a[i].Samples(), b[i].Samples(), same); d != "" || a[i].Name != b[i].Name {
				t.Fatal(d)
			}
		}
	})
}

func TestSwellsThroughTime(t *testing.T) {
	in := `time,system,swell_height_ft,swell_period_s,swell_from_deg
2026-06-21T00:00:00Z,west,4,14,270
2026-06-21T06:00:00Z,west,2,12,270
2026-06-21T00:00:00Z,south,0,,
2026-06-21T06:00:00Z,south,1,16,180
2026-06-21T00:00:00Z,old,1,10,350
2026-06-21T06:00:00Z,old,1,10,10
`
	s, err := wind.ReadSwells(strings.NewReader(in), 0)
	if err != nil {
		t.Fatal(err)
	}
	at, err := s.At(time.Date(2026, 6, 21, 3, 0, 0, 0, time.UTC))
	if err != nil || len(at) != 3 {
		t.Fatal(at, err)
	}
	if !near(at[0].Hs, 3*wind.Foot, 1e-12) || at[0].Tp != 13 || at[0].From != 270 {
		t.Errorf("%v", at[0])
	}
	if !near(at[1].Hs, 0.5*wind.Foot, 1e-12) || at[1].Tp != 16 || at[1].From != 180 {
		t.Errorf("a rising swell has the period it comes with: %v", at[1])
	}
	if !near(math.Mod(at[2].From+180, 360), 180, 1e-9) {
		t.Errorf("350 to 10 goes through north: %v", at[2])
	}
	start, err := s.At(time.Date(2026, 6, 21, 0, 0, 0, 0, time.UTC))
	if err != nil || len(start) != 2 {
		t.Errorf("no swell from the south yet: %v %v", start, err)
	}
	if _, err := s.At(time.Date(2026, 6, 21, 7, 0, 0, 0, time.UTC)); !errors.Is(err, wind.ErrOutside) {
		t.Error(err)
	}
	head := "time,swell_height_m,swell_period_s,swell_from_deg\n"
	for _, c := range []struct{ in, want string }{
		{"", "empty"},
		{head, "no samples"},
		{head + "2026-06-21T00:00:00Z,1,,270\n", "line 2: column swell_period_s"},
		{head + "2026-06-21T00:00:00Z,1,12,\n", "line 2: column swell_from_deg"},
		{head + "2026-06-21T00:00:00Z,1,0.5,270\n", "line 2: column swell_period_s"},
		{head + "2026-06-21T00:00:00Z,99,12,270\n", "line 2: column swell_height_m"},
		{head + "2026-06-21T00:00:00Z,1,12,270\n2026-06-21T00:00:00Z,1,12,270\n", "line 3: column time"},
	} {
		if _, err := wind.ReadSwells(strings.NewReader(c.in), 0); err == nil || !strings.Contains(err.Error(), c.want) || !errors.Is(err, wind.ErrRead) {
			t.Errorf("%q: %v, want %q", c.in, err, c.want)
		}
	}
}

func FuzzReadSeries(f *testing.F) {
	f.Add("time,wind_speed_kn,wind_from_deg,wind_gust_kn\n2026-06-21T06:00:00Z,12,200,18\n2026-06-21T07:00:00Z,0,,\n")
	f.Add("time,wind_speed_m_s,wind_from_deg,air_temperature_c\n2026-06-21T06:00:00Z,12,360,\n")
	f.Fuzz(func(t *testing.T, in string) {
		s, err := wind.ReadSeries(strings.NewReader(in), 0)
		if err != nil {
			if !errors.Is(err, wind.ErrRead) || s.Len() != 0 {
				t.Fatal(err)
			}
			return
		}
		var buf bytes.Buffer
		if err := wind.WriteSeries(&buf, s); err != nil {
			t.Fatal(err)
		}
		back, err := wind.ReadSeries(&buf, 0)
		if err != nil {
			t.Fatalf("%v: what was written cannot be read", err)
		}
		if d := cmp.Diff(s.Samples(), back.Samples(), same); d != "" {
			t.Fatal(d)
		}
	})
}

func FuzzReadBuoy(f *testing.F) {
	for _, s := range []string{archive, oldArchive, twoDigits, realtime} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, in string) {
		rec, err := wind.ReadBuoy(strings.NewReader(in))
		if err != nil {
			if !errors.Is(err, wind.ErrRead) || rec.Rows != nil {
				t.Fatal(err)
			}
			return
		}
		for i, r := range rec.Rows {
			if i > 0 && !rec.Rows[i-1].Time.Before(r.Time) {
				t.Fatal("not in order")
			}
			if r.HasWind && !(r.Wind.Speed >= 0 && r.Wind.Speed < 99) {
				t.Fatal(r.Wind)
			}
		}
		var buf bytes.Buffer
		if err := wind.WriteBuoy(&buf, rec); err != nil {
			t.Fatal(err)
		}
		if _, err := wind.ReadBuoy(&buf); err != nil {
			t.Fatalf("%v: what was written cannot be read", err)
		}
	})
}

func FuzzReadSwells(f *testing.F) {
	f.Add("time,system,swell_height_m,swell_period_s,swell_from_deg\n2026-06-21T00:00:00Z,west,1.2,14,270\n2026-06-21T00:00:00Z,south,0,,\n")
	f.Fuzz(func(t *testing.T, in string) {
		s, err := wind.ReadSwells(strings.NewReader(in), 0)
		if err != nil {
			if !errors.Is(err, wind.ErrRead) {
				t.Fatal(err)
			}
			return
		}
		var buf bytes.Buffer
		if err := wind.WriteSwells(&buf, s); err != nil {
			t.Fatal(err)
		}
		if _, err := wind.ReadSwells(&buf, 0); err != nil {
			t.Fatalf("%v: what was written cannot be read", err)
		}
	})
}

// TestBuoyFile reads a whole file of the national buoy service where the
// environment names one, and says what it holds.
func TestBuoyFile(t *testing.T) {
	path := os.Getenv("FOLLOWINGSEA_BUOY_FILE")
	if path == "" {
		t.Skip("FOLLOWINGSEA_BUOY_FILE names no file")
	}
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rec, err := wind.ReadBuoy(f)
	if err != nil {
		t.Fatal(err)
	}
	s, err := rec.Winds(5, 0)
	t.Logf("%d rows, %d winds, %d gaps, %v, %v", len(rec.Rows), s.Len(), len(s.Gaps()), rec.Remarks, err)
}
