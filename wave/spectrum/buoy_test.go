package spectrum_test

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/wave/spectrum"
	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"
)

func read(t *testing.T, text string, q spectrum.BuoyQuantity) []spectrum.BuoyRow {
	t.Helper()
	rows, err := spectrum.ReadBuoy(strings.NewReader(text), q)
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

func TestBuoyRealtime(t *testing.T) {
	density := read(t, realtimeDensity, spectrum.BuoyDensity)
	if len(density) != 1 || !density[0].Time.Equal(time.Date(2020, 6, 8, 3, 50, 0, 0, time.UTC)) || density[0].Separation != 0.225 || len(density[0].F) != 46 {
		t.Fatalf("%+v", density)
	}
	joined, err := spectrum.JoinBuoy(density, read(t, realtimeMean, spectrum.BuoyMeanFrom), read(t, realtimePrincipal, spectrum.BuoyPrincipalFrom),
		read(t, realtimeR1, spectrum.BuoyR1), read(t, realtimeR2, spectrum.BuoyR2))
	if err != nil || len(joined) != 1 {
		t.Fatal(joined, err)
	}
	r := joined[0]
	// The middles are the buoys' own again, and the widths theirs.
	near(t, "middle", r.Bins.F[0], 0.0325, 1e-15)
	near(t, "width", r.Bins.W[45], 0.02, 1e-15)
	near(t, "missing direction", r.R1[6], 0.37, 1e-15)
	if !math.IsNaN(r.MeanFrom[0]) || !math.IsNaN(r.R2[0]) {
		t.Error("999 is not missing")
	}
	sum, err := spectrum.ReadBuoySummary(strings.NewReader(summary))
	if err != nil || len(sum) != 2 {
		t.Fatal(sum, err)
	}
	s, p := sum[0], spectrum.Describe(r.Bins)
	near(t, "Hs", p.Hm0, s.Hs, 0.05)
	near(t, "Tz", p.Tz, s.Tz, 0.15)
	swell, windSea := spectrum.Separate(r.Bins, r.Separation)
	near(t, "swell", spectrum.Describe(swell).Hm0, s.SwellHs, 0.05)
	near(t, "swell Tp", spectrum.Describe(swell).Tp, s.SwellTp, 0.05)
	near(t, "wind sea", spectrum.Describe(windSea).Hm0, s.WindSeaHs, 0.05)
	// The direction at the peak is the summary's.
	peak := 0
	for i, v := range r.Bins.S {
		if v > r.Bins.S[peak] {
			peak = i
		}
	}
	near(t, "direction", r.MeanFrom[peak], s.MeanFrom, 0)
	from, width := r.MeanDirectionFrom(0, 1)
	if !(from > 140 && from < 180 && width > 30 && width < 60) {
		t.Errorf("from %v, width %v", from, width)
	}
}

func TestBuoySummary(t *testing.T) {
	rows, err := spectrum.ReadBuoySummary(strings.NewReader(summary))
	if err != nil {
		t.Fatal(err)
	}
	want := spectrum.BuoySummary{Time: time.Date(2020, 6, 8, 3, 40, 0, 0, time.UTC), Hs: 1.1, SwellHs: 1, SwellTp: 5.6, SwellFrom: 202.5, WindSeaHs: 0.5, WindSeaTp: 3.6, WindSeaFrom: 135, Steepness: "STEEP", Tz: 4.9, MeanFrom: 196}
	if d := cmp.Diff(want, rows[0]); d != "" {
		t.Error(d)
	}
	const head = "#YY MM DD hh mm WVHT SwH SwD STEEPNESS MWD\n"
	rows, err = spectrum.ReadBuoySummary(strings.NewReader(head + "2020 06 08 03 40 MM 99 N/A N/A 999\n"))
	if err != nil || len(rows) != 1 {
		t.Fatal(rows, err)
	}
	if r := rows[0]; !math.IsNaN(r.Hs) || !math.IsNaN(r.SwellHs) || !math.IsNaN(r.SwellFrom) || !math.IsNaN(r.MeanFrom) || !math.IsNaN(r.Tz) || r.Steepness != "" {
		t.Errorf("%+v", r)
	}
	for _, bad := range []string{"", "nonsense\n", head + "2020 06 08 03 40 1 2\n", head + "2020 13 08 03 40 1 1 N AVERAGE 9\n", head + "2020 06 08 03 40 -1 1 N AVERAGE 9\n", head + "2020 06 08 03 40 1 1 NX AVERAGE 9\n", head + "2020 06 08 03 40 1 1 N AVERAGE 361\n", "#YY MM DD hh mm\n2020 06 08 03 40\n"} {
		if rows, err := spectrum.ReadBuoySummary(strings.NewReader(bad)); rows != nil || !errors.Is(err, spectrum.ErrInput) {
			t.Errorf("%q: %v, %v", bad, rows, err)
		}
	}
}

func TestBuoyArchive(t *testing.T) {
	// The forms that headers have had: no minute, no #, two-digit years.
	for _, c := range []struct {
		text string
		want time.Time
	}{
		{"YYYY MM DD hh   .030   .040\n2000 01 01 02    .15    .37\n", time.Date(2000, 1, 1, 2, 0, 0, 0, time.UTC)},
		{"YY MM DD hh   .030   .040\n98 12 31 23    .15    .37\n", time.Date(1998, 12, 31, 23, 0, 0, 0, time.UTC)},
		{"#YY  MM DD hh mm  .0300  .0400\n#yr mo\n2019 02 06 01 40   0.15   0.37\n\n", time.Date(2019, 2, 6, 1, 40, 0, 0, time.UTC)},
	} {
		r := read(t, c.text, spectrum.BuoyDensity)
		if len(r) != 1 || !r[0].Time.Equal(c.want) || !math.IsNaN(r[0].Separation) {
			t.Fatalf("%q: %+v", c.text, r)
		}
		if d := cmp.Diff([]float64{0.15, 0.37}, r[0].V); d != "" {
			t.Error(d)
		}
	}
	r := read(t, "#YY MM DD hh mm .03 .04 .05\n2019 02 06 01 40 59 999 94\n", spectrum.BuoyR1)
	if d := cmp.Diff([]float64{0.59, math.NaN(), 0.94}, r[0].V, cmpopts.EquateNaNs()); d != "" {
		t.Error(d)
	}
	b, err := read(t, "YYYY MM DD hh .03 .04 .05\n2000 01 01 02 1 2 3\n", spectrum.BuoyDensity)[0].Bins()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "old width", b.W[1], 0.01, 1e-15)
}

func TestBuoyRefuses(t *testing.T) {
	const head, row = "#YY MM DD hh mm .03 .04\n", "2019 02 06 01 40 "
	for name, c := range map[string]struct {
		text string
		q    spectrum.BuoyQuantity
		line string
	}{
		"empty":               {"", 0, "empty"},
		"no header":           {row + "1 2\n", 0, "line 1"},
		"no bands":            {"#YY MM DD hh mm\n", 0, "line 1"},
		"twice":               {"#YY MM MM DD hh mm .03\n", 0, "line 1"},
		"another quantity":    {realtimeMean, spectrum.BuoyR1, "line 1"},
		"falling bands":       {"#YY MM DD hh mm .04 .03\n", 0, "line 1"},
		"a value too few":     {head + row + "1\n", 0, "line 2"},
		"a value too many":    {head + row + "1 2 3\n", 0, "line 2"},
		"a word":              {head + row + "1 two\n", 0, "line 2: "},
		"negative":            {head + row + "1 -2\n", 0, "line 2"},
		"infinite":            {head + row + "1 Inf\n", 0, "line 2"},
		"not a number":        {head + row + "1 NaN\n", 0, "line 2"},
		"direction":           {head + row + "1 361\n", spectrum.BuoyMeanFrom, "line 2: spectrum: unusable input: mean direction from at 0.04 Hz is 361, want 0 to 360"},
		"r1":                  {head + row + "1 101\n", spectrum.BuoyR1, "line 2"},
		"month":               {head + "2019 13 06 01 40 1 2\n", 0, "line 2"},
		"day":                 {head + "2019 02 30 01 40 1 2\n", 0, "line 2"},
		"hour":                {head + "2019 02 06 24 40 1 2\n", 0, "line 2"},
		"minute":              {head + "2019 02 06 01 60 1 2\n", 0, "line 2"},
		"year":                {head + "1919 02 06 01 40 1 2\n", 0, "line 2"},
		"half a time":         {head + "2019 02\n", 0, "line 2"},
		"quantity":            {head, 9, "five"},
		"realtime no bracket": {"#YY MM DD hh mm r1_1 (freq_1)\n" + row + "0.5 0.03\n", spectrum.BuoyR1, "line 2"},
		"realtime odd":        {"#YY MM DD hh mm r1_1 (freq_1)\n" + row + "0.5 (0.03) 0.4\n", spectrum.BuoyR1, "line 2"},
		"realtime falling":    {"#YY MM DD hh mm r1_1 (freq_1)\n" + row + "0.5 (0.03) 0.4 (0.02)\n", spectrum.BuoyR1, "line 2"},
		"separation":          {"#YY MM DD hh mm Sep_Freq < spec_1 (freq_1)\n" + row + "x 1 (0.03)\n", 0, "line 2"},
		"no separation":       {"#YY MM DD hh mm Sep_Freq < spec_1 (freq_1)\n" + row + "\n", 0, "line 2"},
		"long line":           {head + row + strings.Repeat("1 ", 40000) + "\n", 0, "line 2"},
		"many bands":          {"#YY MM DD hh mm " + strings.Repeat(".03 ", 1025) + "\n", 0, "line 1"},
	} {
		rows, err := spectrum.ReadBuoy(strings.NewReader(c.text), c.q)
		if rows != nil || !errors.Is(err, spectrum.ErrInput) || !strings.Contains(fmt.Sprint(err), c.line) {
			t.Errorf("%s: %v, %v", name, rows, err)
		}
	}
	if s := spectrum.BuoyQuantity(9).String() + spectrum.BuoyR1.String(); s != "BuoyQuantity(9)r1" {
		t.Error(s)
	}
	broken := errors.New("broken")
	if _, err := spectrum.ReadBuoy(io.MultiReader(strings.NewReader(head), failing{broken}), 0); !errors.Is(err, broken) {
		t.Error(err)
	}
}

type failing struct{ err error }

func (f failing) Read([]byte) (int, error)  { return 0, f.err }
func (f failing) Write([]byte) (int, error) { return 0, f.err }

// endless repeats a line for ever: a reader must stop by itself.
type endless struct {
	line []byte
	at   int
}

func (e *endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = e.line[e.at%len(e.line)]
		e.at++
	}
	return len(p), nil
}

func TestBuoyBoundedMemory(t *testing.T) {
	if testing.Short() || raceEnabled {
		t.Skip("reads 32 MB")
	}
	for _, line := range []string{"\n", "# units\n", strings.Repeat(" ", 1000) + "\n"} {
		r := io.MultiReader(strings.NewReader("#YY MM DD hh mm .03 .04\n"), &endless{line: []byte(line)})
		if _, err := spectrum.ReadBuoy(r, 0); !errors.Is(err, spectrum.ErrInput) {
			t.Errorf("%.10q for ever: %v", line, err)
		}
	}
	if _, err := spectrum.ReadBuoySummary(&endless{line: []byte("x")}); !errors.Is(err, spectrum.ErrInput) {
		t.Error(err)
	}
}

func TestBuoyRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := spectrum.BuoyQuantity(rapid.IntRange(0, 4).Draw(t, "quantity"))
		n := rapid.IntRange(1, 12).Draw(t, "bands")
		f := make([]float64, n)
		for i := range f {
			f[i] = 0.03 + float64(i)*0.01
		}
		var rows []spectrum.BuoyRow
		for range rapid.IntRange(1, 5).Draw(t, "rows") {
			v := make([]float64, n)
			for k := range v {
				switch x := rapid.IntRange(-1, 100).Draw(t, "value"); {
				case x < 0:
					v[k] = math.NaN()
				case q == spectrum.BuoyMeanFrom || q == spectrum.BuoyPrincipalFrom:
					v[k] = float64(x) * 3
				default:
					v[k] = float64(x) / 100
				}
			}
			at := time.Unix(60*rapid.Int64Range(0, 120e6).Draw(t, "minute"), 0).UTC()
			rows = append(rows, spectrum.BuoyRow{Time: at, Separation: math.NaN(), F: f, V: v})
		}
		var buf bytes.Buffer
		if err := spectrum.WriteBuoy(&buf, q, rows); err != nil {
			t.Fatal(err)
		}
		back, err := spectrum.ReadBuoy(&buf, q)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(rows, back, cmpopts.EquateNaNs(), cmpopts.EquateApprox(0, 1e-12)); d != "" {
			t.Error(d)
		}
	})
}

func TestWriteBuoyRefuses(t *testing.T) {
	at := time.Date(2020, 1, 1, 0, 0, 0, 0, time.UTC)
	good := spectrum.BuoyRow{Time: at, F: []float64{0.1, 0.2}, V: []float64{1, 2}}
	for name, rows := range map[string][]spectrum.BuoyRow{
		"falling": {{Time: at, F: []float64{0.2, 0.1}, V: []float64{1, 2}}},
		"lengths": {{Time: at, F: []float64{0.1, 0.2}, V: []float64{1}}},
		"none":    {{Time: at}},
		"other":   {good, {Time: at, F: []float64{0.1, 0.3}, V: []float64{1, 2}}},
		"value":   {{Time: at, F: []float64{0.1}, V: []float64{-1}}},
		"inf":     {{Time: at, F: []float64{0.1}, V: []float64{inf}}},
		"year":    {{Time: time.Date(3000, 1, 1, 0, 0, 0, 0, time.UTC), F: []float64{0.1}, V: []float64{1}}},
	} {
		if err := spectrum.WriteBuoy(io.Discard, 0, rows); !errors.Is(err, spectrum.ErrInput) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if err := spectrum.WriteBuoy(io.Discard, -1, nil); !errors.Is(err, spectrum.ErrInput) {
		t.Error(err)
	}
	broken := errors.New("broken")
	if err := spectrum.WriteBuoy(failing{broken}, 0, []spectrum.BuoyRow{good}); !errors.Is(err, broken) {
		t.Error(err)
	}
	var buf bytes.Buffer // a density that would read as missing
	if err := spectrum.WriteBuoy(&buf, 0, []spectrum.BuoyRow{{Time: at, F: []float64{0.1}, V: []float64{999}}}); err != nil || !strings.Contains(buf.String(), "999.01") {
		t.Errorf("%q, %v", buf.String(), err)
	}
}

func TestDirectionalIntegrates(t *testing.T) {
	r := spectrum.BuoyRecord{Bins: spectrum.Bins{F: []float64{0.1}, S: []float64{2}, W: []float64{0.01}}, MeanFrom: []float64{200}, PrincipalFrom: []float64{210}, R1: []float64{0.8}, R2: []float64{0.5}}
	for _, of := range []func(int, float64) float64{r.Directional, r.DirectionalPositive} {
		near(t, "circle", circle(func(a float64) float64 { return of(0, a) }), 2, 1e-9)
		near(t, "a turn on", of(0, 30), of(0, 390), 1e-12)
	}
	near(t, "r1", circle(func(a float64) float64 { return r.Directional(0, a) * math.Cos((a-200)*math.Pi/180) })/2, 0.8, 1e-9)
	for i := range 360 {
		if v := r.DirectionalPositive(0, float64(i)); v < 0 {
			t.Errorf("%v from %d", v, i)
		}
	}
	for _, v := range []float64{r.Directional(-1, 0), r.Directional(1, 0), r.Directional(0, inf), (spectrum.BuoyRecord{Bins: r.Bins}).Directional(0, 0)} {
		if !math.IsNaN(v) {
			t.Errorf("%v, want NaN", v)
		}
	}
}

func TestMeanDirection(t *testing.T) {
	r := spectrum.BuoyRecord{Bins: spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{1, 1}, W: []float64{0.01, 0.01}}, MeanFrom: []float64{350, 30}, R1: []float64{0.9, 0.9}}
	from, width := r.MeanDirectionFrom(0, 1) // across north
	near(t, "from", from, 10, 1e-9)
	near(t, "width", width, spectrum.CircularWidth(0.9*math.Cos(20*math.Pi/180)), 1e-9)
	from, width = r.MeanDirectionFrom(0, 0.15)
	near(t, "swell from", from, 350, 1e-9)
	near(t, "swell width", width, spectrum.CircularWidth(0.9), 1e-9)
	for _, c := range [][2]float64{{0.3, 1}, {1, 0}, {math.NaN(), 1}} {
		if from, width := r.MeanDirectionFrom(c[0], c[1]); !math.IsNaN(from) || !math.IsNaN(width) {
			t.Errorf("%v: %v, %v", c, from, width)
		}
	}
}

func FuzzReadBuoy(f *testing.F) {
	f.Add(realtimeDensity, 0)
	f.Add(realtimeMean, 1)
	f.Add(realtimeR1, 3)
	f.Add("YYYY MM DD hh .030 .040\n2000 01 01 02 .15 999\n", 0)
	f.Add("#YY MM DD hh mm .03 .04\n2019 02 06 01 40 59 94\n", 4)
	f.Fuzz(func(t *testing.T, text string, q int) {
		rows, err := spectrum.ReadBuoy(strings.NewReader(text), spectrum.BuoyQuantity(q))
		if err != nil {
			if rows != nil {
				t.Error("rows with an error")
			}
			return
		}
		for _, r := range rows {
			if len(r.F) == 0 || len(r.F) != len(r.V) {
				t.Fatalf("%+v", r)
			}
			for i, v := range r.V {
				if v < 0 || math.IsInf(v, 0) || !(r.F[i] > 0) || i > 0 && !(r.F[i] > r.F[i-1]) {
					t.Fatalf("%+v", r)
				}
			}
			if b, err := r.Bins(); q == 0 && err == nil && spectrum.Moment(b, 0) < 0 {
				t.Fatalf("%+v", b)
			}
			// What was read can be written and read back.
			var buf bytes.Buffer
			if err := spectrum.WriteBuoy(&buf, spectrum.BuoyQuantity(q), []spectrum.BuoyRow{r}); err != nil {
				t.Fatal(err)
			}
			if buf.Len() < 60<<10 {
				if back, err := spectrum.ReadBuoy(&buf, spectrum.BuoyQuantity(q)); err != nil || len(back) != 1 || !back[0].Time.Equal(r.Time) {
					t.Fatalf("%v, %v", back, err)
				}
			}
		}
	})
}

func FuzzReadBuoySummary(f *testing.F) {
	f.Add(summary)
	f.Add("#YY MM DD hh mm WVHT SwD\n2020 06 08 03 40 MM N\n")
	f.Fuzz(func(t *testing.T, text string) {
		rows, err := spectrum.ReadBuoySummary(strings.NewReader(text))
		if err != nil && rows != nil {
			t.Error("rows with an error")
		}
		for _, r := range rows {
			for _, v := range []float64{r.Hs, r.SwellHs, r.SwellTp, r.SwellFrom, r.WindSeaHs, r.WindSeaTp, r.WindSeaFrom, r.Tz, r.MeanFrom} {
				if v < 0 || v > 360 {
					t.Fatalf("%+v", r)
				}
			}
		}
	})
}
