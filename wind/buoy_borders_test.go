package wind_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/internal/table"
	"followingsea.example/wind"
)

// TestBuoyValuesOnTheBorders: a column takes the numbers on the border of what a buoy can measure and refuses the next ones,
// and a date those of the calendar.
func TestBuoyValuesOnTheBorders(t *testing.T) {
	head := []string{"YY", "MM", "DD", "hh", "mm", "WDIR", "WSPD", "GST", "WVHT", "DPD", "APD", "MWD", "PRES", "ATMP", "WTMP", "DEWP", "VIS", "TIDE"}
	usual := strings.Fields("2020 06 01 00 00 180 5 6 1 8 6 200 1013 10 12 8 5 0")
	read := func(column, value string) (wind.BuoyRow, error) {
		row := append([]string(nil), usual...)
		for i, name := range head {
			if name == column {
				row[i] = value
			}
		}
		rec, err := wind.ReadBuoy(strings.NewReader(strings.Join(head, " ") + "\n" + strings.Join(row, " ") + "\n"))
		if err != nil {
			return wind.BuoyRow{}, err
		}
		return rec.Rows[0], nil
	}
	for _, c := range []struct{ column, in, out string }{
		{"YY", "0", "-1"}, {"YY", "2300", "2301"}, {"YY", "1900", "1899"}, {"YY", "99", "100"}, {"MM", "1", "0"}, {"MM", "12", "13"}, {"DD", "1", "0"}, {"DD", "30", "31"},
		{"hh", "0", "-1"}, {"hh", "23", "24"}, {"mm", "0", "-1"}, {"mm", "59", "60"},
		{"WDIR", "0", "-1"}, {"WDIR", "360", "360.1"}, {"WSPD", "0", "-0.1"}, {"WSPD", "70", "70.1"}, {"GST", "98.9", "98.95"}, {"WVHT", "40", "40.1"}, {"WVHT", "0", "-0.01"},
		{"DPD", "60", "60.1"}, {"DPD", "0", "-1"}, {"APD", "60", "60.1"}, {"MWD", "0", "-1"}, {"MWD", "360", "361"}, {"PRES", "800", "799.9"}, {"PRES", "1100", "1100.1"},
		{"ATMP", "-90", "-90.1"}, {"ATMP", "60", "60.1"}, {"WTMP", "-5", "-5.1"}, {"WTMP", "60", "60.1"}, {"DEWP", "-90", "-91"}, {"VIS", "98.9", "98.95"}, {"TIDE", "50", "50.1"}, {"TIDE", "-50", "-50.1"},
	} {
		if _, err := read(c.column, c.in); err != nil {
			t.Errorf("%s %s: %v", c.column, c.in, err)
		}
		if _, err := read(c.column, c.out); !errors.Is(err, wind.ErrBuoyRow) || !strings.HasPrefix(err.Error(), "line 2: ") {
			t.Errorf("%s %s: %v", c.column, c.out, err)
		}
	}
	for year, want := range map[string]int{"00": 2000, "69": 2069, "70": 1970, "99": 1999, "1900": 1900} {
		if row, err := read("YY", year); err != nil || row.Time.Year() != want {
			t.Errorf("year %s is %d, %v", year, row.Time.Year(), err)
		}
	}
	if row, err := read("MWD", "360"); err != nil || row.MeanFrom != 0 {
		t.Errorf("waves from 360: %v, %v", row.MeanFrom, err)
	}
	for gust, want := range map[string]float64{"5": 5, "4.9": math.NaN(), "99.0": math.NaN()} { // the mean is 5
		if row, err := read("GST", gust); err != nil || row.Wind.Gust != want && !(math.IsNaN(want) && math.IsNaN(row.Wind.Gust)) {
			t.Errorf("gust %s: %v, %v", gust, row.Wind, err)
		}
	}
}

// TestBuoyColumnsInAnyPlace: the columns are found by their names, also in the first place; one that is needed and not there, or
// there twice, or in another unit, is an error.
func TestBuoyColumnsInAnyPlace(t *testing.T) {
	names := []string{"YY", "MM", "DD", "hh", "mm", "WDIR", "WSPD", "WVHT"}
	values := []string{"2020", "07", "04", "11", "35", "180", "5", "1.5"}
	for k := range names {
		n, v := append(append([]string(nil), names[k:]...), names[:k]...), append(append([]string(nil), values[k:]...), values[:k]...)
		rec, err := wind.ReadBuoy(strings.NewReader(strings.Join(n, " ") + "\n" + strings.Join(v, " ") + "\n"))
		if err != nil {
			t.Errorf("%v: %v", n, err)
			continue
		}
		r := rec.Rows[0]
		if !r.Time.Equal(time.Date(2020, 7, 4, 11, 35, 0, 0, time.UTC)) || r.Wind.Speed != 5 || r.Wind.From != 180 || r.Hs != 1.5 {
			t.Errorf("%v: %+v", n, r)
		}
		// Without the first of them.
		_, err = wind.ReadBuoy(strings.NewReader(strings.Join(n[1:], " ") + "\n" + strings.Join(v[1:], " ") + "\n"))
		if needed := n[0] != "mm" && n[0] != "WSPD" && n[0] != "WVHT"; needed != errors.Is(err, wind.ErrBuoyHeader) || !needed && err != nil {
			t.Errorf("without %s: %v", n[0], err)
		}
	}
	for in, want := range map[string]error{
		"WVHT YY MM DD hh\n1.5 2020 07 04 11\n":                                nil, // waves alone
		"WVHT YY MM DD hh WVHT\n1.5 2020 07 04 11 1.5\n":                       wind.ErrBuoyHeader,
		"WDIR WD WSPD YY MM DD hh\n180 180 5 2020 07 04 11\n":                  wind.ErrBuoyHeader,
		"WSPD YY MM DD hh\n5 2020 07 04 11\n":                                  wind.ErrBuoyHeader, // no direction
		"WSPD WDIR YY MM DD hh\n#kts degT yr mo dy hr\n5 2020 07 04 11\n":      wind.ErrBuoyRow,
		"YY MM DD hh WDIR WSPD\n#yr mo dy hr degT\n":                           wind.ErrBuoyRow, // a unit is missing
		"#WSPD WDIR YY MM DD hh\n#m/s degT yr mo dy hr\n5 180 2020 07 04 11\n": nil,
		"#WSPD WDIR YY MM DD hh\n#kts degT yr mo dy hr\n5 180 2020 07 04 11\n": wind.ErrBuoyRow, // 5 knots are no 5 m/s
	} {
		if _, err := wind.ReadBuoy(strings.NewReader(in)); !errors.Is(err, want) {
			t.Errorf("%q: %v, want %v", in, err, want)
		}
	}
}

// buoyLog writes a record of winds of (minute, speed) from the south, a speed of 99 where there is none.
func buoyLog(rows ...[2]float64) string {
	var b strings.Builder
	b.WriteString("#YY MM DD hh mm WDIR WSPD GST WVHT ATMP\n")
	for _, r := range rows {
		at := day.Add(time.Duration(r[0]) * time.Minute)
		fmt.Fprintf(&b, "%s 180 %.1f %.1f 1.00 5.0\n", at.Format("2006 01 02 15 04"), r[1], math.Min(99, r[1]*1.5))
	}
	return b.String()
}

// TestFrozenAnemometerOnTheBorder: exactly 0.0 for three hours may be a calm, for more it is a frozen anemometer, also across rows
// without a wind; the remark counts the winds that were dropped, from the first to the last.
func TestFrozenAnemometerOnTheBorder(t *testing.T) {
	for _, c := range []struct {
		name           string
		rows           [][2]float64
		winds, dropped int
		from, to       float64
	}{
		{"three hours", [][2]float64{{0, 0}, {60, 0}, {180, 0}, {240, 5}}, 4, 0, 0, 0},
		{"a minute more", [][2]float64{{0, 0}, {60, 0}, {181, 0}, {240, 5}}, 1, 3, 0, 181},
		{"to the end", [][2]float64{{0, 5}, {60, 0}, {300, 0}}, 1, 2, 60, 300},
		{"across rows without a wind", [][2]float64{{0, 5}, {60, 0}, {120, 99}, {180, 0}, {250, 0}, {260, 99}, {300, 4}}, 2, 3, 60, 250},
		{"a breath between", [][2]float64{{0, 0}, {120, 0.1}, {240, 0}, {360, 0}}, 4, 0, 0, 0},
		{"one alone", [][2]float64{{0, 5}, {60, 0}, {300, 5}}, 3, 0, 0, 0},
	} {
		rec, err := wind.ReadBuoy(strings.NewReader(buoyLog(c.rows...)))
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		winds := 0
		for _, r := range rec.Rows {
			if r.HasWind {
				winds++
			}
		}
		var want []wind.BuoyRemark
		if c.dropped > 0 {
			want = []wind.BuoyRemark{{Kind: wind.FrozenAnemometer, Rows: c.dropped, Span: wind.Span{Start: at(c.from / 60), End: at(c.to / 60)}}}
		}
		if winds != c.winds || len(rec.Remarks) != len(want) {
			t.Errorf("%s: %d winds, %v, want %d, %v", c.name, winds, rec.Remarks, c.winds, want)
			continue
		}
		for i, r := range rec.Remarks {
			if r.Kind != want[i].Kind || r.Rows != want[i].Rows || r.Span.Start.Sub(want[i].Span.Start).Abs() > time.Second || r.Span.End.Sub(want[i].Span.End).Abs() > time.Second {
				t.Errorf("%s: %v, want %v", c.name, r, want[i])
			}
		}
	}
}

// TestRemarksSpanTheirRows: a remark counts its rows and says from when to when, whichever order they came in.
func TestRemarksSpanTheirRows(t *testing.T) {
	head := "#YY MM DD hh mm WDIR WSPD GST WVHT\n"
	rows := []string{"2020 01 01 03 00 180 5 4 1\n", "2020 01 01 01 00 180 5 4 1\n", "2020 01 01 07 00 180 5 4 1\n", "2020 01 01 05 00 180 5 4 1\n"}
	for range rows {
		rows = append(rows[1:], rows[0])
		rec, err := wind.ReadBuoy(strings.NewReader(head + strings.Join(rows, "") + rows[0]))
		if err != nil {
			t.Fatal(err)
		}
		if len(rec.Rows) != 4 || len(rec.Remarks) != 2 || rec.Remarks[0].Kind != wind.GustBelowMean || rec.Remarks[0].Rows != 5 ||
			rec.Remarks[0].Span.Start.Hour() != 1 || rec.Remarks[0].Span.End.Hour() != 7 || rec.Remarks[1].Kind != wind.RepeatedTime || rec.Remarks[1].Rows != 1 {
			t.Errorf("%d rows, %v", len(rec.Rows), rec.Remarks)
		}
	}
}

// TestWindsOfABuoy: winds are moved to 10 m at the temperature of their own row, 15 °C where it has none, the gust with the mean;
// a calm stays one.
func TestWindsOfABuoy(t *testing.T) {
	rec, err := wind.ReadBuoy(strings.NewReader(buoyLog([2]float64{0, 5}, [2]float64{60, 0}, [2]float64{120, 8})))
	if err != nil {
		t.Fatal(err)
	}
	rec.Rows[2].Air = wind.Temperature{}
	s, err := rec.Winds(4, 0)
	if err != nil {
		t.Fatal(err)
	}
	a, b := wind.Smith1988(5).ToHeight(5, 4, 10).Speed, wind.Smith1988(15).ToHeight(8, 4, 10).Speed
	if got := s.Sample(0); !alike(got.Speed, a, 1e-12) || !alike(got.Gust, 1.5*a, 1e-12) {
		t.Errorf("%v, want %v", got, a)
	}
	if got := s.Sample(1); !got.IsCalm() {
		t.Errorf("%v", got)
	}
	if got := s.Sample(2); !alike(got.Speed, b, 1e-12) || !alike(got.Gust, 1.5*b, 1e-12) {
		t.Errorf("%v, want %v", got, b)
	}
	plain, err := rec.Winds(0, 0)
	if err != nil || plain.Sample(2).Speed != 8 {
		t.Errorf("%v, %v", plain.Samples(), err)
	}
}

// TestBuoyErrorsNameTheLine: an error names the line that is at fault, counted from 1, blank lines and comments with it.
func TestBuoyErrorsNameTheLine(t *testing.T) {
	head := "#YY MM DD hh mm WDIR WSPD\n"
	long := strings.Repeat("9", 70_000)
	for in, want := range map[string]string{
		head + "\n# yr mo dy hr mn degT\n":              "line 3: ",
		head + "\n\n2020 01 01 00 00 180 x\n":           "line 4: column WSPD: ",
		head + "2020 01 01 00 00 180 5\n" + long + "\n": "line 3: ",
		long + "\n":                   "line 1: ",
		"\n\tYY MM DD hh mm WDIR\r\n": "line 2: ",
		head + "2020 01 01 00 00 180 5\r\n2020\t01 01 00  01 180 5 \n2020 0\n": "line 4: ",
	} {
		_, err := wind.ReadBuoy(strings.NewReader(in))
		if !errors.Is(err, wind.ErrRead) || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%.40q: %v, want %q", in, err, want)
		}
	}
	var re *wind.ReadError
	_, err := wind.ReadBuoy(strings.NewReader(head + "\n"))
	if !errors.As(err, &re) || re.Line != 2 || !errors.Is(err, wind.ErrEmpty) {
		t.Errorf("no row after two lines: %v", err)
	}
}

// TestBuoyFileOfTheLargestSize: a file of 32 MB is read, one a byte longer is refused as too large, and not for the line at which it was cut.
func TestBuoyFileOfTheLargestSize(t *testing.T) {
	head, row := "YY MM DD hh WVHT\n", "2020 01 01 00 1.5\n"
	blank := strings.Repeat(" ", 60_000-1) + "\n"
	file := func(tail string) io.Reader { // of the largest size, and of the tail what is longer than the usual row
		left := table.Limit - len(head) - len(row)
		parts := []io.Reader{strings.NewReader(head)}
		for ; left >= len(blank); left -= len(blank) {
			parts = append(parts, strings.NewReader(blank))
		}
		return io.MultiReader(append(parts, strings.NewReader(blank[len(blank)-left:]), strings.NewReader(tail))...)
	}
	if rec, err := wind.ReadBuoy(file(row)); err != nil || len(rec.Rows) != 1 {
		t.Errorf("of the largest size: %d rows, %v", len(rec.Rows), err)
	}
	if _, err := wind.ReadBuoy(file("no row" + row)); !errors.Is(err, table.ErrTooLarge) {
		t.Errorf("larger: %v", err)
	}
}

// TestWrittenBuoyRow: a row is written in the archive's layout, with its codes for what is missing and a calm from 0.
func TestWrittenBuoyRow(t *testing.T) {
	nan := math.NaN()
	rec := wind.BuoyRecord{Rows: []wind.BuoyRow{
		{Time: at(1.5), Wind: wind.Wind{Speed: 5.04, Gust: 7.26, From: 359.6}, HasWind: true, Hs: 1.234, Tp: 8.1, Tavg: 5.55, MeanFrom: 12.4, Pressure: 101_320,
			Air: wind.Celsius(-1.2), Water: wind.Celsius(4), Dew: wind.Celsius(-3), Visibility: 3704, Tide: 0.3048},
		{Time: at(2), Wind: wind.Calm(), HasWind: true, Hs: nan, Tp: nan, Tavg: nan, MeanFrom: nan, Pressure: nan, Visibility: nan, Tide: nan},
		{Time: at(3), Wind: wind.Wind{Speed: 9}, Hs: nan, Tp: nan, Tavg: nan, MeanFrom: nan, Pressure: nan, Visibility: nan, Tide: nan},
	}}
	var buf bytes.Buffer
	if err := wind.WriteBuoy(&buf, rec); err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(buf.String(), "\n")
	for i, want := range []string{
		"2026 06 21 01 30 360 5.0 7.3 1.23 8.10 5.55 12 1013.2 -1.2 4.0 -3.0 2.0 1.00",
		"2026 06 21 02 00 0 0.0 99.0 99.00 99.00 99.00 999 9999.0 999.0 999.0 999.0 99.0 99.00",
		"2026 06 21 03 00 999 99.0 99.0 99.00 99.00 99.00 999 9999.0 999.0 999.0 999.0 99.0 99.00",
	} {
		if got := strings.Join(strings.Fields(lines[i+2]), " "); got != want {
			t.Errorf("row %d: %s, want %s", i, got, want)
		}
	}
}
