package spectrum

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"time"

	"followingsea.example/internal/angle"
)

// The national data buoys' spectra come as text in two forms that hold the same five quantities, one file for each:
//
//	realtime   newest first; after the time, and for densities the separation frequency, pairs "value (frequency)"
//	archive    oldest first; the frequencies are in the header; r₁ and r₂ are in hundredths
//
// Times are UTC. Missing is 999 in both. Directions are those the waves come FROM, clockwise from true north.

// A BuoyQuantity is what a buoy file holds: the archive form does not say it, so the reader must be told.
type BuoyQuantity int

// The quantities, with the names of their realtime files and the letter of their archive files.
const (
	BuoyDensity       BuoyQuantity = iota // density in m²/Hz: data_spec, w
	BuoyMeanFrom                          // α₁, mean direction the waves come from, degrees: swdir, d
	BuoyPrincipalFrom                     // α₂, principal direction they come from, degrees: swdir2, i
	BuoyR1                                // r₁, first Fourier coefficient: swr1, j
	BuoyR2                                // r₂, second Fourier coefficient: swr2, k
)

var buoyForms = [...]struct {
	name   string
	header string // of the first value in the realtime form
	max    float64
	scale  float64 // of the archive form
	digits int     // of the archive form
}{
	{"density", "spec_1", 1e4, 1, 2},
	{"mean direction from", "alpha1_1", 360, 1, 0},
	{"principal direction from", "alpha2_1", 360, 1, 0},
	{"r1", "r1_1", 1, 0.01, 0},
	{"r2", "r2_1", 1, 0.01, 0},
}

func (q BuoyQuantity) valid() bool { return q >= 0 && int(q) < len(buoyForms) }

// String returns the name of the quantity.
func (q BuoyQuantity) String() string {
	if !q.valid() {
		return fmt.Sprintf("BuoyQuantity(%d)", int(q))
	}
	return buoyForms[q].name
}

// A BuoyRow is one record of a buoy file: the values of one quantity over the bands of frequency at one time.
type BuoyRow struct {
	Time       time.Time // UTC, of the end of the measurement
	Separation float64   // frequency that parts swell from wind sea, Hz; NaN where the file has none
	F          []float64 // middle of the band, Hz
	V          []float64 // value; NaN where it is missing
}

// Bins returns the record of densities as a spectrum, with the bands' widths by BandWidths. If all bands are the buoys' own,
// the middles are theirs too: the realtime form prints 0.0325 Hz as 0.033.
//
// The error wraps ErrInput, as of NewBins.
//
// Source: [NDBC1996].
func (r BuoyRow) Bins() (Bins, error) {
	f := make([]float64, len(r.F))
	for i := range f {
		m, _, ok := buoyBand(r.F[i])
		if !ok {
			return NewBins(r.F, r.V, nil)
		}
		f[i] = m
	}
	return NewBins(f, r.V, nil)
}

// Limits of what a buoy file may hold.
const (
	buoyBytes = 32 << 20 // of a file
	buoyLine  = 64 << 10 // of a line
	buoyBands = 1024     // of a record
	missing   = 999
)

// ReadBuoy reads the records of a file of the quantity, in the order of the file, realtime or archive form by its header.
// Archive headers with two-digit years, without a minute or without the leading # are read too; the parts of the time are
// found by their names.
//
// The error wraps ErrInput and tells the line: no header, another quantity, a time that is none, a value that is no number or
// out of its range, frequencies that do not rise, a line of more than 64 kB, a file of more than 32 MB. A file without
// records is no error. Memory is bounded by the size of the file.
//
// Source: [NDBC-Measurements] spectral wave data and its archive.
func ReadBuoy(r io.Reader, q BuoyQuantity) ([]BuoyRow, error) {
	if !q.valid() {
		return nil, inputError("q", int(q), "one of the five quantities")
	}
	form := buoyForms[q]
	var rows []BuoyRow
	var clock []int // position of year, month, day, hour and minute (-1: none)
	var grid []float64
	realtime, separation := false, false
	err := eachLine(r, func(n int, fields []string) error {
		fail := func(name string, v any, want string) error {
			return fmt.Errorf("line %d: %w", n, inputError(name, v, want))
		}
		if clock == nil {
			var rest []string
			var ok bool
			if clock, rest, ok = buoyClock(fields); !ok {
				return fail("header", strings.Join(fields[:min(5, len(fields))], " "), "YY MM DD hh and the bands")
			}
			if len(rest) > 0 && rest[0] == "Sep_Freq" {
				separation, rest = true, rest[1:]
			}
			for len(rest) > 0 && rest[0] == "<" {
				rest = rest[1:]
			}
			if len(rest) == 0 {
				return fail("header", "without bands", "bands after the time")
			}
			if _, err := strconv.ParseFloat(rest[0], 64); err != nil {
				realtime = true
				if rest[0] != form.header {
					return fail("quantity", rest[0], form.header+" for "+form.name)
				}
				return nil
			}
			var err error
			grid, err = rising(rest, fail)
			return err
		}
		if strings.HasPrefix(fields[0], "#") {
			return nil // a second header line has the units
		}
		row := BuoyRow{Separation: math.NaN()}
		var err error
		width := 5
		if clock[4] < 0 {
			width = 4
		}
		if len(fields) < width {
			return fail("time", strings.Join(fields, " "), "year, month, day, hour and minute")
		}
		if row.Time, err = buoyTime(fields[:width], clock, fail); err != nil {
			return err
		}
		rest := fields[width:]
		scale := 1.0
		if realtime {
			if separation {
				if len(rest) == 0 {
					return fail("separation", "missing", "a frequency")
				}
				if row.Separation, err = buoyValue(rest[0], 10, 1); err != nil {
					return fail("separation", rest[0], "0 to 10 Hz or 9.999 or 999")
				}
				if row.Separation == 9.999 {
					row.Separation = math.NaN()
				}
				rest = rest[1:]
			}
			if len(rest)%2 != 0 || len(rest) == 0 {
				return fail("values", fmt.Sprintf("%d fields", len(rest)), "pairs: value (frequency)")
			}
			var values, freqs []string
			for i := 0; i < len(rest); i += 2 {
				f := rest[i+1]
				if len(f) < 3 || f[0] != '(' || f[len(f)-1] != ')' {
					return fail("frequency", f, "in brackets")
				}
				values, freqs = append(values, rest[i]), append(freqs, f[1:len(f)-1])
			}
			if row.F, err = rising(freqs, fail); err != nil {
				return err
			}
			rest = values
		} else {
			if len(rest) != len(grid) {
				return fail("values", fmt.Sprintf("%d of them", len(rest)), fmt.Sprintf("%d, one for each band of the header", len(grid)))
			}
			row.F, scale = append([]float64(nil), grid...), form.scale
		}
		row.V = make([]float64, len(rest))
		for i, v := range rest {
			if row.V[i], err = buoyValue(v, form.max, scale); err != nil {
				return fail(fmt.Sprintf("%s at %g Hz", form.name, row.F[i]), v, fmt.Sprintf("0 to %g, or 999 for missing", form.max/scale))
			}
		}
		rows = append(rows, row)
		return nil
	})
	if err != nil {
		return nil, err
	}
	if clock == nil {
		return nil, inputError("file", "empty", "a header")
	}
	return rows, nil
}

// eachLine calls of with the number and the fields of each line that has any.
func eachLine(r io.Reader, of func(n int, fields []string) error) error {
	limited := &io.LimitedReader{R: r, N: buoyBytes + 1}
	sc := bufio.NewScanner(limited)
	sc.Buffer(make([]byte, 4096), buoyLine)
	n := 0
	for sc.Scan() {
		n++
		if limited.N <= 0 {
			break
		}
		fields := strings.Fields(sc.Text())
		if len(fields) == 0 {
			continue
		}
		if err := of(n, fields); err != nil {
			return err
		}
	}
	if limited.N <= 0 {
		return inputError("file", "larger", "32 MB or less")
	}
	if err := sc.Err(); err != nil {
		if err == bufio.ErrTooLong {
			return fmt.Errorf("line %d: %w", n+1, inputError("line", "longer", "64 kB or less"))
		}
		return err
	}
	return nil
}

// buoyClock finds the parts of the time in a header and returns what comes after them.
func buoyClock(fields []string) (clock []int, rest []string, ok bool) {
	clock = []int{-1, -1, -1, -1, -1}
	i := 0
	if fields[0] == "#" { // "# YY" as well as "#YY"
		fields = fields[1:]
	}
	for i < len(fields) && i < 5 {
		k := -1
		switch strings.TrimPrefix(fields[i], "#") {
		case "YY", "YYYY", "yr":
			k = 0
		case "MM", "mo":
			k = 1
		case "DD", "dy":
			k = 2
		case "hh", "hr":
			k = 3
		case "mm", "mn":
			k = 4
		}
		if k < 0 {
			break
		}
		if clock[k] >= 0 {
			return nil, nil, false
		}
		clock[k] = i
		i++
	}
	for k := range 4 {
		if clock[k] < 0 {
			return nil, nil, false
		}
	}
	return clock, fields[i:], true
}

// buoyTime reads the time of a record.
func buoyTime(fields []string, clock []int, fail func(string, any, string) error) (time.Time, error) {
	var v [5]int
	names := [...]string{"year", "month", "day", "hour", "minute"}
	limits := [...][2]int{{0, 2200}, {1, 12}, {1, 31}, {0, 23}, {0, 59}}
	for k, at := range clock {
		if at < 0 {
			continue
		}
		x, err := strconv.Atoi(fields[at])
		if err != nil || x < limits[k][0] || x > limits[k][1] {
			return time.Time{}, fail(names[k], fields[at], fmt.Sprintf("%d to %d", limits[k][0], limits[k][1]))
		}
		v[k] = x
	}
	// Two-digit years ended with 1998.
	switch {
	case v[0] >= 70 && v[0] <= 99:
		v[0] += 1900
	case v[0] < 1970:
		return time.Time{}, fail("year", v[0], "1970 or later, or 70 to 99")
	}
	t := time.Date(v[0], time.Month(v[1]), v[2], v[3], v[4], 0, 0, time.UTC)
	if t.Day() != v[2] {
		return time.Time{}, fail("day", v[2], "a day of the month")
	}
	return t, nil
}

// rising reads frequencies that rise from above zero.
func rising(fields []string, fail func(string, any, string) error) ([]float64, error) {
	if len(fields) > buoyBands {
		return nil, fail("bands", len(fields), fmt.Sprintf("%d or fewer", buoyBands))
	}
	f := make([]float64, 0, len(fields))
	for _, s := range fields {
		if s == ">" || s == "..." {
			continue
		}
		v, err := strconv.ParseFloat(s, 64)
		if err != nil || !positive(v) || len(f) > 0 && !(v > f[len(f)-1]) {
			return nil, fail("frequency", s, "a number of Hz, rising")
		}
		f = append(f, v)
	}
	if len(f) == 0 {
		return nil, fail("bands", "none", "one or more")
	}
	return f, nil
}

// buoyValue reads a value in the file's scale; missing is NaN.
func buoyValue(s string, most, scale float64) (float64, error) {
	if s == "MM" {
		return math.NaN(), nil
	}
	v, err := strconv.ParseFloat(s, 64)
	if err == nil && v == missing {
		return math.NaN(), nil
	}
	if scale != 1 {
		v /= 100 // exact to the printed digits, which a product with 0.01 is not
	}
	if err != nil || !(v >= 0 && v <= most) {
		return 0, ErrInput
	}
	return v, nil
}

// WriteBuoy writes records of the quantity in the archive form, which ReadBuoy reads back. All must have the same bands. The
// values are rounded to the digits of the form: densities to 0.01 m²/Hz, directions to a degree, r₁ and r₂ to 0.01. The
// separation frequency has no place in it.
//
// The error wraps ErrInput for records of different bands, values that are out of their range and years outside 1970 to 2200,
// or is that of the writer.
//
// Source: [NDBC-Measurements] archive of spectral wave data.
func WriteBuoy(w io.Writer, q BuoyQuantity, rows []BuoyRow) error {
	if !q.valid() {
		return inputError("q", int(q), "one of the five quantities")
	}
	form := buoyForms[q]
	out := bufio.NewWriter(w)
	if len(rows) > 0 {
		out.WriteString("#YY  MM DD hh mm")
		for i, f := range rows[0].F {
			if !positive(f) || i > 0 && !(f > rows[0].F[i-1]) {
				return inputError(fmt.Sprintf("rows[0].F[%d]", i), f, "a number of Hz, rising")
			}
			out.WriteString("  " + strconv.FormatFloat(f, 'f', -1, 64))
		}
		out.WriteByte('\n')
	}
	for i, r := range rows {
		if len(r.F) != len(rows[0].F) || len(r.V) != len(r.F) || len(r.F) == 0 {
			return inputError(fmt.Sprintf("rows[%d]", i), fmt.Sprintf("%d bands, %d values", len(r.F), len(r.V)), fmt.Sprintf("%d of each", len(rows[0].F)))
		}
		t := r.Time.UTC()
		if t.Year() < 1970 || t.Year() > 2200 {
			return inputError(fmt.Sprintf("rows[%d].Time", i), t.Year(), "1970 to 2200")
		}
		out.WriteString(t.Format("2006 01 02 15 04"))
		for k, v := range r.V {
			if r.F[k] != rows[0].F[k] {
				return inputError(fmt.Sprintf("rows[%d].F[%d]", i, k), r.F[k], fmt.Sprintf("%g as in the first", rows[0].F[k]))
			}
			if math.IsNaN(v) {
				v = missing * form.scale
			} else if !(v >= 0 && v <= form.max) {
				return inputError(fmt.Sprintf("rows[%d].V[%d]", i, k), v, fmt.Sprintf("0 to %g, or NaN for missing", form.max))
			} else if form.digits == 2 && math.Round(v*100) == missing*100 {
				v = missing + 0.01 // a density that would read as missing
			}
			out.WriteByte(' ')
			out.WriteString(strconv.FormatFloat(v/form.scale, 'f', form.digits, 64))
		}
		out.WriteByte('\n')
	}
	return out.Flush()
}

// A BuoyRecord is one measured directional spectrum: the densities with the first two Fourier coefficients of the spreading
// about each band's direction. A value that is missing is NaN.
type BuoyRecord struct {
	Time          time.Time // UTC
	Separation    float64   // Hz; NaN where there is none
	Bins          Bins
	MeanFrom      []float64 // α₁, degrees the waves come from
	PrincipalFrom []float64 // α₂, degrees
	R1            []float64
	R2            []float64
}

// JoinBuoy joins the records of the five quantities that have the same time and bands, in the order of the densities. A
// record without its directions is left out.
//
// The error wraps ErrInput, as of NewBins.
func JoinBuoy(density, meanFrom, principalFrom, r1, r2 []BuoyRow) ([]BuoyRecord, error) {
	find := func(rows []BuoyRow) map[int64]BuoyRow {
		m := make(map[int64]BuoyRow, len(rows))
		for _, r := range rows {
			m[r.Time.Unix()] = r
		}
		return m
	}
	parts := []map[int64]BuoyRow{find(meanFrom), find(principalFrom), find(r1), find(r2)}
	var out []BuoyRecord
	for _, d := range density {
		var v [4][]float64
		ok := true
		for i, p := range parts {
			r, found := p[d.Time.Unix()]
			ok = ok && found && len(r.F) == len(d.F) && len(r.V) == len(d.F)
			for k := 0; ok && k < len(d.F); k++ {
				ok = r.F[k] == d.F[k]
			}
			v[i] = r.V
		}
		if !ok {
			continue
		}
		b, err := d.Bins()
		if err != nil {
			return nil, fmt.Errorf("%s: %w", d.Time.Format(time.RFC3339), err)
		}
		out = append(out, BuoyRecord{d.Time, d.Separation, b, v[0], v[1], v[2], v[3]})
	}
	return out, nil
}

// Directional returns the density in m²/Hz per radian of band i for waves from the direction in degrees, from the two
// Fourier coefficients as they are:
//
//	S(f, θ) = S(f)/π (1/2 + r₁ cos(θ - α₁) + r₂ cos 2(θ - α₂))
//
// It is the exact sum of the first terms and can be negative; DirectionalPositive never is.
//
// Special cases are:
//
//	Directional = NaN for a band that is not there, a value of it that is missing, or a direction that is infinite or NaN
//
// Source: [NDBC1996] directional spectra; [LonguetHiggins1963].
func (r BuoyRecord) Directional(i int, from float64) float64 { return r.directional(i, from, 1, 1) }

// DirectionalPositive returns the density in m²/Hz per radian of band i for waves from the direction in degrees, with the
// weights 2/3 and 1/6 on the two terms that keep it from being negative; they widen it.
//
// Special cases are:
//
//	DirectionalPositive = NaN as Directional
//
// Source: [LonguetHiggins1963].
func (r BuoyRecord) DirectionalPositive(i int, from float64) float64 {
	return r.directional(i, from, 2.0/3, 1.0/6)
}

func (r BuoyRecord) directional(i int, from, w1, w2 float64) float64 {
	if i < 0 || i >= len(r.Bins.S) || i >= len(r.MeanFrom) || i >= len(r.PrincipalFrom) || i >= len(r.R1) || i >= len(r.R2) {
		return math.NaN()
	}
	d1 := angle.Radians(angle.Diff(r.MeanFrom[i], from))
	d2 := angle.Radians(angle.Diff(r.PrincipalFrom[i], from))
	return r.Bins.S[i] / math.Pi * (0.5 + w1*r.R1[i]*math.Cos(d1) + w2*r.R2[i]*math.Cos(2*d2))
}

// MeanDirectionFrom returns the mean direction in degrees from which the waves of lo to hi Hz come, the direction of the sum
// of the bands' variances times r₁ as vectors, and the width of all of them together, √(2(1-r₁)) in degrees. A band whose
// direction is missing is left out.
//
// Special cases are:
//
//	MeanDirectionFrom = NaN, NaN if no band has a direction and a variance, or unless 0 ≤ lo ≤ hi
//
// Source: [Kuik1988] sec. 3; [NDBC1996].
func (r BuoyRecord) MeanDirectionFrom(lo, hi float64) (from, width float64) {
	var north, east, m0 float64
	if lo >= 0 && lo <= hi {
		for i, f := range r.Bins.F {
			if i >= len(r.MeanFrom) || i >= len(r.R1) || math.IsNaN(r.MeanFrom[i]) || math.IsNaN(r.R1[i]) || f < lo || f > hi {
				continue
			}
			v := r.Bins.S[i] * r.Bins.W[i]
			s, c := math.Sincos(angle.Radians(r.MeanFrom[i]))
			north, east, m0 = north+v*r.R1[i]*c, east+v*r.R1[i]*s, m0+v
		}
	}
	if !(m0 > 0) || !(math.Hypot(north, east) > 0) {
		return math.NaN(), math.NaN()
	}
	return angle.Wrap(angle.Degrees(math.Atan2(east, north))), CircularWidth(math.Min(math.Hypot(north, east)/m0, 1))
}

// A BuoySummary is one line of the buoys' own summary of a spectrum, its swell and its wind sea. What is missing is NaN.
type BuoySummary struct {
	Time        time.Time // UTC
	Hs          float64   // Hm0 of the whole, m
	SwellHs     float64   // m
	SwellTp     float64   // s
	SwellFrom   float64   // degrees, from a letter of 16 points
	WindSeaHs   float64   // m
	WindSeaTp   float64   // s
	WindSeaFrom float64   // degrees, from a letter of 16 points
	Steepness   string    // VERY_STEEP, STEEP, AVERAGE, SWELL or empty
	Tz          float64   // average period, s
	MeanFrom    float64   // direction at the peak, degrees
}

var points16 = [...]string{"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE", "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"}

// ReadBuoySummary reads a summary file, newest first, columns by the names in its header.
//
// The error wraps ErrInput and tells the line, as of ReadBuoy; a column that is absent is missing on every line.
//
// Source: [NDBC-Measurements] spectral wave summary.
func ReadBuoySummary(r io.Reader) ([]BuoySummary, error) {
	var clock []int
	var names []string
	var rows []BuoySummary
	err := eachLine(r, func(n int, fields []string) error {
		fail := func(name string, v any, want string) error {
			return fmt.Errorf("line %d: %w", n, inputError(name, v, want))
		}
		if clock == nil {
			var ok bool
			if clock, names, ok = buoyClock(fields); !ok || clock[4] < 0 || len(names) == 0 {
				return fail("header", strings.Join(fields[:min(5, len(fields))], " "), "YY MM DD hh mm and the columns")
			}
			return nil
		}
		if strings.HasPrefix(fields[0], "#") {
			return nil
		}
		if len(fields) != 5+len(names) {
			return fail("fields", len(fields), fmt.Sprintf("%d, as in the header", 5+len(names)))
		}
		nan := math.NaN()
		s := BuoySummary{Hs: nan, SwellHs: nan, SwellTp: nan, SwellFrom: nan, WindSeaHs: nan, WindSeaTp: nan, WindSeaFrom: nan, Tz: nan, MeanFrom: nan}
		var err error
		if s.Time, err = buoyTime(fields[:5], clock, fail); err != nil {
			return err
		}
		for i, name := range names {
			v := fields[5+i]
			number := func(to *float64, most, none float64) error {
				if v == "MM" || v == "N/A" {
					return nil
				}
				x, err := strconv.ParseFloat(v, 64)
				if err != nil || !(x >= 0 && x <= most) && x != none {
					return fail(name, v, fmt.Sprintf("0 to %g or MM", most))
				}
				if x != none {
					*to = x
				}
				return nil
			}
			compass := func(to *float64) error {
				if v == "MM" || v == "N/A" || v == "-" {
					return nil
				}
				for k, p := range points16 {
					if v == p {
						*to = float64(k) * 22.5
						return nil
					}
				}
				return number(to, 360, missing)
			}
			switch name {
			case "WVHT":
				err = number(&s.Hs, 60, 99)
			case "SwH":
				err = number(&s.SwellHs, 60, 99)
			case "SwP":
				err = number(&s.SwellTp, 60, 99)
			case "SwD":
				err = compass(&s.SwellFrom)
			case "WWH":
				err = number(&s.WindSeaHs, 60, 99)
			case "WWP":
				err = number(&s.WindSeaTp, 60, 99)
			case "WWD":
				err = compass(&s.WindSeaFrom)
			case "STEEPNESS":
				if v != "N/A" && v != "MM" {
					s.Steepness = v
				}
			case "APD":
				err = number(&s.Tz, 60, 99)
			case "MWD":
				err = number(&s.MeanFrom, 360, missing)
			}
			if err != nil {
				return err
			}
		}
		rows = append(rows, s)
		return nil
	})
	if err != nil {
		return nil, err
	}
	if clock == nil {
		return nil, inputError("file", "empty", "a header")
	}
	return rows, nil
}
