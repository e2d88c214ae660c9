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
)

// A file is read with its numbers on the closed borders of what is allowed and refused with the next one beyond; the error
// tells the line and what is allowed in the file's own scale.
func TestBuoyFilesOnTheBorders(t *testing.T) {
	const head, row = "#YY MM DD hh mm .03 .04\n", "2019 02 06 01 40 "
	const real, separated = "#YY MM DD hh mm r1_1 (freq_1)\n", "#YY MM DD hh mm Sep_Freq < spec_1 (freq_1)\n"
	bands := func(n int) string {
		var s strings.Builder
		s.WriteString("#YY MM DD hh mm")
		for i := range n {
			fmt.Fprintf(&s, " %.4f", float64(i+1)/1e4)
		}
		return s.String() + "\n"
	}
	at := func(clock string) string { return head + clock + " 1 1\n" }
	for name, c := range map[string]struct {
		text string
		q    spectrum.BuoyQuantity
		want string // in the error; empty: none
	}{
		"most bands":              {bands(1024), 0, ""},
		"a band more":             {bands(1025), 0, "line 1: spectrum: unusable input: bands is 1025, want 1024 or fewer"},
		"time without bands":      {"#YY MM DD hh\n", 0, "line 1: spectrum: unusable input: header is without bands"},
		"a year twice":            {"#YY YYYY MM DD hh .03\n", 0, "line 1: spectrum: unusable input: header is #YY YYYY MM DD hh"},
		"a frequency twice":       {"#YY MM DD hh mm .03 .03\n", 0, "line 1"},
		"frequency of 0":          {"#YY MM DD hh mm 0 .03\n", 0, "line 1"},
		"no density":              {head + row + "0 0\n", 0, ""},
		"greatest density":        {head + row + "10000 1\n", 0, ""},
		"a greater density":       {head + row + "10000.01 1\n", 0, "line 2: spectrum: unusable input: density at 0.03 Hz is 10000.01, want 0 to 10000, or 999 for missing"},
		"from 360°":               {head + row + "360 0\n", spectrum.BuoyMeanFrom, ""},
		"from beyond 360°":        {head + row + "360.1 0\n", spectrum.BuoyPrincipalFrom, "principal direction from at 0.03 Hz is 360.1, want 0 to 360"},
		"all in one direction":    {head + row + "100 0\n", spectrum.BuoyR1, ""},
		"more than all":           {head + row + "1 100.1\n", spectrum.BuoyR2, "line 2: spectrum: unusable input: r2 at 0.04 Hz is 100.1, want 0 to 100, or 999 for missing"},
		"more than all, realtime": {real + row + "1.001 (0.03)\n", spectrum.BuoyR1, "want 0 to 1, or"},
		"one digit":               {real + row + "1 (1)\n", spectrum.BuoyR1, ""},
		"no digit":                {real + row + "1 ()\n", spectrum.BuoyR1, "line 2"},
		"half a bracket":          {real + row + "1 (1\n", spectrum.BuoyR1, "frequency is (1, want in brackets"},
		"another half":            {real + row + "1 01)\n", spectrum.BuoyR1, "frequency is 01), want in brackets"},
		"no pairs":                {real + row + "\n", spectrum.BuoyR1, "values is 0 fields"},
		"greatest separation":     {separated + row + "10 1 (0.03)\n", 0, ""},
		"a greater separation":    {separated + row + "10.1 1 (0.03)\n", 0, "separation is 10.1"},
		"separation and no more":  {separated + row + "0.2\n", 0, "values is 0 fields"},
		"first year":              {at("1970 01 01 00 00"), 0, ""},
		"before it":               {at("1969 12 31 23 59"), 0, "year is 1969, want 1970 or later"},
		"last year":               {at("2200 12 31 23 59"), 0, ""},
		"after it":                {at("2201 01 01 00 00"), 0, "year is 2201, want 0 to 2200"},
		"two digits":              {at("70 01 01 00 00"), 0, ""},
		"fewer than 70":           {at("69 01 01 00 00"), 0, "year is 69"},
		"up to 99":                {at("99 12 31 23 59"), 0, ""},
		"three digits":            {at("100 12 31 23 59"), 0, "year is 100"},
		"year negative":           {at("-1 12 31 23 59"), 0, "year is -1, want 0 to 2200"},
		"month 0":                 {at("2019 00 06 01 40"), 0, "month is 00, want 1 to 12"},
		"month 12":                {at("2019 12 06 01 40"), 0, ""},
		"day 0":                   {at("2019 02 00 01 40"), 0, "day is 00, want 1 to 31"},
		"day 31":                  {at("2019 01 31 01 40"), 0, ""},
		"day 32":                  {at("2019 01 32 01 40"), 0, "day is 32, want 1 to 31"},
		"day 29 of February":      {at("2020 02 29 01 40"), 0, ""},
		"hour -1":                 {at("2019 02 06 -1 40"), 0, "hour is -1, want 0 to 23"},
		"minute -1":               {at("2019 02 06 01 -1"), 0, "minute is -1, want 0 to 59"},
		"no such quantity":        {head, 5, "one of the five"},
		"none before the first":   {head, -1, "one of the five"},
		"the last quantity":       {head, spectrum.BuoyR2, ""},
		"no fields but a comment": {head + "#\n" + row + "1 1\n", 0, ""},
	} {
		_, err := spectrum.ReadBuoy(strings.NewReader(c.text), c.q)
		if c.want == "" && err != nil || c.want != "" && (!errors.Is(err, spectrum.ErrInput) || !strings.Contains(fmt.Sprint(err), c.want)) {
			t.Errorf("%s: %v, want %q", name, err, c.want)
		}
	}
	for text, want := range map[string]int{"70": 1970, "99": 1999, "1970": 1970, "2200": 2200} {
		if y := read(t, at(text+" 01 01 00 00"), 0)[0].Time.Year(); y != want {
			t.Errorf("year %s is %d", text, y)
		}
	}
	for text, want := range map[string]float64{"0.2": 0.2, "10": 10, "0": 0, "9.999": math.NaN(), "999": math.NaN(), "MM": math.NaN()} {
		if d := cmp.Diff(want, read(t, separated+row+text+" 1 (0.03)\n", 0)[0].Separation, cmpopts.EquateNaNs()); d != "" {
			t.Errorf("separation %s: %s", text, d)
		}
	}
	for q, want := range map[spectrum.BuoyQuantity]string{0: "density", 1: "mean direction from", 2: "principal direction from", 3: "r1", 4: "r2", 5: "BuoyQuantity(5)", -1: "BuoyQuantity(-1)"} {
		if q.String() != want {
			t.Errorf("quantity %d is %q, want %q", int(q), q, want)
		}
	}
}

// A summary's numbers, likewise; a header without a minute is none.
func TestBuoySummaryOnTheBorders(t *testing.T) {
	const head, row = "#YY MM DD hh mm WVHT SwH SwP SwD WWH WWP WWD APD MWD\n", "2020 06 08 03 40 "
	for name, c := range map[string]struct {
		text string
		want string
	}{
		"lowest":          {head + row + "0 0 0 0 0 0 0 0 0\n", ""},
		"highest":         {head + row + "60 60 60 360 60 60 360 60 360\n", ""},
		"Hs":              {head + row + "60.1 1 1 N 1 1 N 1 1\n", "line 2: spectrum: unusable input: WVHT is 60.1, want 0 to 60 or MM"},
		"swell Hs":        {head + row + "1 60.1 1 N 1 1 N 1 1\n", "SwH is 60.1"},
		"swell Tp":        {head + row + "1 1 60.1 N 1 1 N 1 1\n", "SwP is 60.1"},
		"swell from":      {head + row + "1 1 1 360.1 1 1 N 1 1\n", "SwD is 360.1, want 0 to 360"},
		"wind sea Hs":     {head + row + "1 1 1 N 60.1 1 N 1 1\n", "WWH is 60.1"},
		"wind sea Tp":     {head + row + "1 1 1 N 1 60.1 N 1 1\n", "WWP is 60.1"},
		"wind sea from":   {head + row + "1 1 1 N 1 1 360.1 1 1\n", "WWD is 360.1"},
		"Tz":              {head + row + "1 1 1 N 1 1 N 60.1 1\n", "APD is 60.1"},
		"from":            {head + row + "1 1 1 N 1 1 N 1 360.1\n", "MWD is 360.1"},
		"a column fewer":  {head + row + "1 1 1 N 1 1 N 1\n", "line 2: spectrum: unusable input: fields is 13, want 14"},
		"a column more":   {head + row + "1 1 1 N 1 1 N 1 1 1\n", "fields is 15, want 14"},
		"without minutes": {"#YY MM DD hh WVHT\n", "line 1: spectrum: unusable input: header is #YY MM DD hh WVHT"},
		"time":            {head + "2020 06 08 24 40 1 1 1 N 1 1 N 1 1\n", "hour is 24"},
	} {
		_, err := spectrum.ReadBuoySummary(strings.NewReader(c.text))
		if c.want == "" && err != nil || c.want != "" && (!errors.Is(err, spectrum.ErrInput) || !strings.Contains(fmt.Sprint(err), c.want)) {
			t.Errorf("%s: %v, want %q", name, err, c.want)
		}
	}
	// The sixteen points are 22.5° apart.
	for i, p := range strings.Fields("N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW") {
		rows, err := spectrum.ReadBuoySummary(strings.NewReader("#YY MM DD hh mm SwD WWD\n" + row + p + " -\n"))
		if err != nil || rows[0].SwellFrom != float64(i)*22.5 || !math.IsNaN(rows[0].WindSeaFrom) {
			t.Errorf("%s: %v, %v", p, rows, err)
		}
	}
}

// Year, month, day, hour and minute are where the header names them, in whatever order.
func TestBuoyTimeByItsNames(t *testing.T) {
	want := time.Date(2019, 2, 6, 1, 40, 0, 0, time.UTC)
	for head, row := range map[string]string{
		"#YY MM DD hh mm": "2019 02 06 01 40", "#mm hh DD MM YY": "40 01 06 02 2019", "#hh mm YY MM DD": "01 40 2019 02 06",
	} {
		if rows := read(t, head+" .03\n"+row+" 1.25\n", 0); len(rows) != 1 || !rows[0].Time.Equal(want) || rows[0].V[0] != 1.25 {
			t.Errorf("%s: %v", head, rows)
		}
		rows, err := spectrum.ReadBuoySummary(strings.NewReader(head + " WVHT\n" + row + " 1.5\n"))
		if err != nil || len(rows) != 1 || !rows[0].Time.Equal(want) || rows[0].Hs != 1.5 {
			t.Errorf("summary, %s: %v, %v", head, rows, err)
		}
	}
}

// Records are written with their numbers on the borders and refused beyond; none at all make an empty file.
func TestWriteBuoyOnTheBorders(t *testing.T) {
	at := time.Date(2020, 1, 1, 0, 0, 0, 0, time.UTC)
	one := func(at time.Time, v float64) []spectrum.BuoyRow {
		return []spectrum.BuoyRow{{Time: at, F: []float64{0.1}, V: []float64{v}}}
	}
	year := func(y int, m time.Month, d int) time.Time { return time.Date(y, m, d, 0, 0, 0, 0, time.UTC) }
	good := spectrum.BuoyRow{Time: at, F: []float64{0.1, 0.2}, V: []float64{1, 2}}
	second := func(change func(r *spectrum.BuoyRow)) []spectrum.BuoyRow {
		r := spectrum.BuoyRow{Time: at, F: []float64{0.1, 0.2}, V: []float64{1, 2}}
		change(&r)
		return []spectrum.BuoyRow{good, r}
	}
	for name, c := range map[string]struct {
		rows []spectrum.BuoyRow
		q    spectrum.BuoyQuantity
		want string
	}{
		"nothing":           {nil, 0, ""},
		"no density":        {one(at, 0), 0, ""},
		"greatest density":  {one(at, 1e4), 0, ""},
		"a greater density": {one(at, above(1e4)), 0, "rows[0].V[0]"},
		"below nothing":     {one(at, belowZero), 0, "rows[0].V[0]"},
		"from 360°":         {one(at, 360), spectrum.BuoyMeanFrom, ""},
		"beyond 360°":       {one(at, above(360)), spectrum.BuoyMeanFrom, "want 0 to 360"},
		"all of it":         {one(at, 1), spectrum.BuoyR1, ""},
		"more than all":     {one(at, above(1)), spectrum.BuoyR1, "want 0 to 1"},
		"first year":        {one(year(1970, 1, 1), 1), 0, ""},
		"before it":         {one(year(1969, 12, 31), 1), 0, "rows[0].Time is 1969"},
		"last year":         {one(year(2200, 12, 31), 1), 0, ""},
		"after it":          {one(year(2201, 1, 1), 1), 0, "rows[0].Time is 2201"},
		"frequency twice":   {[]spectrum.BuoyRow{{Time: at, F: []float64{0.1, 0.1}, V: []float64{1, 2}}}, 0, "rows[0].F[1]"},
		"second, value":     {second(func(r *spectrum.BuoyRow) { r.V[1] = -1 }), 0, "rows[1].V[1] is -1"},
		"second, band":      {second(func(r *spectrum.BuoyRow) { r.F[1] = 0.3 }), 0, "rows[1].F[1] is 0.3, want 0.2 as in the first"},
		"second, length":    {second(func(r *spectrum.BuoyRow) { r.V = r.V[:1] }), 0, "rows[1] is 2 bands, 1 values, want 2 of each"},
		"second, fewer":     {second(func(r *spectrum.BuoyRow) { r.F, r.V = r.F[:1], r.V[:1] }), 0, "rows[1] is 1 bands"},
		"no such quantity":  {nil, 5, "one of the five"},
	} {
		err := spectrum.WriteBuoy(io.Discard, c.q, c.rows)
		if c.want == "" && err != nil || c.want != "" && (!errors.Is(err, spectrum.ErrInput) || !strings.Contains(fmt.Sprint(err), c.want)) {
			t.Errorf("%s: %v, want %q", name, err, c.want)
		}
	}
	for _, c := range []struct {
		v    float64
		q    spectrum.BuoyQuantity
		want string
	}{
		{math.NaN(), spectrum.BuoyDensity, "999.00"}, {math.NaN(), spectrum.BuoyMeanFrom, "999"}, {math.NaN(), spectrum.BuoyR1, "999"},
		{999.004, spectrum.BuoyDensity, "999.01"}, {998.99, spectrum.BuoyDensity, "998.99"}, {0.126, spectrum.BuoyDensity, "0.13"},
		{181.6, spectrum.BuoyPrincipalFrom, "182"}, {0.57, spectrum.BuoyR2, "57"},
	} {
		var buf bytes.Buffer
		if err := spectrum.WriteBuoy(&buf, c.q, one(at, c.v)); err != nil || buf.String() != "#YY  MM DD hh mm  0.1\n2020 01 01 00 00 "+c.want+"\n" {
			t.Errorf("%v %v: %q, %v", c.q, c.v, buf.String(), err)
		}
	}
	var buf bytes.Buffer
	if err := spectrum.WriteBuoy(&buf, 0, nil); err != nil || buf.Len() != 0 {
		t.Errorf("nothing: %q, %v", buf.String(), err)
	}
}

// Only records of the same time and the same bands are joined.
func TestJoinBuoyLeavesOut(t *testing.T) {
	at := time.Date(2020, 1, 1, 0, 0, 0, 0, time.UTC)
	row := func() []spectrum.BuoyRow {
		return []spectrum.BuoyRow{{Time: at, F: []float64{0.1, 0.2}, V: []float64{1, 1}}}
	}
	for name, c := range map[string]struct {
		change func(r *spectrum.BuoyRow)
		want   int
	}{
		"whole":        {func(*spectrum.BuoyRow) {}, 1},
		"another time": {func(r *spectrum.BuoyRow) { r.Time = at.Add(time.Second) }, 0},
		"first band":   {func(r *spectrum.BuoyRow) { r.F[0] = 0.15 }, 0},
		"last band":    {func(r *spectrum.BuoyRow) { r.F[1] = 0.3 }, 0},
		"band more":    {func(r *spectrum.BuoyRow) { r.F = append(r.F, 0.3) }, 0},
		"value fewer":  {func(r *spectrum.BuoyRow) { r.V = r.V[:1] }, 0},
	} {
		for i := range 4 {
			parts := [][]spectrum.BuoyRow{row(), row(), row(), row()}
			c.change(&parts[i][0])
			got, err := spectrum.JoinBuoy(row(), parts[0], parts[1], parts[2], parts[3])
			if err != nil || len(got) != c.want {
				t.Errorf("%s of part %d: %d records, %v", name, i, len(got), err)
			}
		}
	}
}

// The two sums of a directional density are the printed ones: S/π (1/2 + r₁ cos(θ-α₁) + r₂ cos 2(θ-α₂)), and with the
// weights 2/3 and 1/6.
func TestDirectionalIsThePrintedSum(t *testing.T) {
	r := spectrum.BuoyRecord{Bins: spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{1, 3}, W: []float64{0.1, 0.1}},
		MeanFrom: []float64{1, 200}, PrincipalFrom: []float64{1, 215}, R1: []float64{0, 0.7}, R2: []float64{0, 0.4}}
	for _, from := range []float64{0, 77, 200, 390} {
		c1, c2 := math.Cos((from-200)*math.Pi/180), math.Cos(2*(from-215)*math.Pi/180)
		near(t, "sum", r.Directional(1, from), 3/math.Pi*(0.5+0.7*c1+0.4*c2), 1e-12)
		near(t, "positive", r.DirectionalPositive(1, from), 3/math.Pi*(0.5+2.0/3*0.7*c1+1.0/6*0.4*c2), 1e-12)
	}
	// The mean weighs each band by variance times r₁: 0.02·0.9 from 0° and 0.06·0.3 from 90° make 45°.
	r = spectrum.BuoyRecord{Bins: spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{1, 2}, W: []float64{0.02, 0.03}}, MeanFrom: []float64{0, 90}, R1: []float64{0.9, 0.3}}
	from, width := r.MeanDirectionFrom(0, 1)
	near(t, "from", from, 45, 1e-12)
	near(t, "width", width, 180/math.Pi*math.Sqrt(2*(1-0.018*math.Sqrt2/0.08)), 1e-12)
}

// A file of 32 MB is read to its end; one of a byte more is refused as too large, whatever its last row is.
func TestBuoyLargestFile(t *testing.T) {
	if testing.Short() || raceEnabled {
		t.Skip("reads 64 MB")
	}
	const head, row = "#YY MM DD hh mm .03\n", "2019 02 06 01 40 1.25"
	comment := "#" + strings.Repeat("-", 60<<10) + "\n"
	rest := 32<<20 - len(head) - len(row)
	filler := strings.Repeat(comment, rest/len(comment)) + "#" + strings.Repeat("-", rest%len(comment)-2) + "\n"
	file := func(last string) io.Reader {
		return io.MultiReader(strings.NewReader(head), strings.NewReader(filler), strings.NewReader(last))
	}
	rows, err := spectrum.ReadBuoy(file(row), 0)
	if err != nil || len(rows) != 1 || rows[0].V[0] != 1.25 {
		t.Errorf("32 MB: %v, %v", rows, err)
	}
	if _, err := spectrum.ReadBuoy(file("1"+row), 0); !errors.Is(err, spectrum.ErrInput) || !strings.Contains(fmt.Sprint(err), "32 MB") {
		t.Errorf("larger: %v", err)
	}
}
