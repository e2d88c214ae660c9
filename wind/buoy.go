package wind

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"followingsea.example/internal/table"
)

// BuoyRow is one row of a buoy's standard meteorological record. What the row
// does not have is NaN, or an unknown Temperature, or a false HasWind.
type BuoyRow struct {
	Time time.Time // UTC
	// Wind is an eight-minute mean at the height of the buoy's anemometer, 3 to
	// 5 m: not at 10 m. Gust is a five- or eight-second peak of it.
	Wind     Wind
	HasWind  bool
	Hs       float64 // significant wave height, m
	Tp       float64 // dominant period, s
	Tavg     float64 // average (zero-crossing) period, s
	MeanFrom float64 // direction the waves of the dominant period come from, degrees true

	Pressure   float64 // at sea level, Pa
	Air, Water Temperature
	Dew        Temperature
	Visibility float64 // m
	Tide       float64 // water level above or below the tidal datum, m
}

// BuoyRemark says what a reader set aside and why.
type BuoyRemark struct {
	Kind BuoyRemarkKind
	Rows int
	// Span is from the first to the last row concerned.
	Span Span
}

// BuoyRemarkKind is a reason to set a value aside.
type BuoyRemarkKind int

// What a reader sets aside.
const (
	// FrozenAnemometer: the speed was exactly 0.0 for more than three hours, which a
	// turning anemometer does not do; winds of that stretch are dropped.
	FrozenAnemometer BuoyRemarkKind = iota
	// NoDirection: a wind that blew without a direction was dropped.
	NoDirection
	// GustBelowMean: a gust below the mean was dropped.
	GustBelowMean
	// ZeroWave: a wave height of 0.00 m was dropped: it stands for a fault, or
	// for a sea too low for the buoy (one year file holds 865 of them and no
	// height between 0.00 and 0.15 m).
	ZeroWave
	// RepeatedTime: a second row for an instant was dropped.
	RepeatedTime
)

// String returns the reason in words.
func (k BuoyRemarkKind) String() string {
	switch k {
	case FrozenAnemometer:
		return "wind dropped: speed exactly 0.0 for more than 3 hours, the anemometer was frozen"
	case NoDirection:
		return "wind dropped: it blew without a direction"
	case GustBelowMean:
		return "gust dropped: it was below the mean"
	case ZeroWave:
		return "wave height dropped: 0.00 m stands for a fault or for less than the buoy resolves"
	case RepeatedTime:
		return "row dropped: its time was there already"
	}
	return "set aside"
}

// String prints the remark with its count and span.
func (r BuoyRemark) String() string {
	return fmt.Sprintf("%v: %d rows, %s to %s", r.Kind, r.Rows, stamp(r.Span.Start), stamp(r.Span.End))
}

// BuoyRecord is a buoy's record in order of time.
type BuoyRecord struct {
	Rows    []BuoyRow
	Remarks []BuoyRemark
}

// frozenFor is how long an anemometer may read exactly 0.0.
const frozenFor = 3 * time.Hour

// A stdmetColumn is one column of the format: the codes that stand for a
// missing value, the range of a true one, and the unit as the units line may
// print it.
type stdmetColumn struct {
	names   []string
	missing []float64
	lo, hi  float64
	units   []string
}

const (
	bWDIR = iota
	bWSPD
	bGST
	bWVHT
	bDPD
	bAPD
	bMWD
	bPRES
	bATMP
	bWTMP
	bDEWP
	bVIS
	bTIDE
	bColumns
)

var stdmet = [bColumns]stdmetColumn{
	bWDIR: {[]string{"WDIR", "WD"}, []float64{999}, 0, 360, []string{"degT"}},
	bWSPD: {[]string{"WSPD"}, []float64{99, 999}, 0, StrongestMean, []string{"m/s"}},
	bGST:  {[]string{"GST", "GUST"}, []float64{99, 999}, 0, 98.9, []string{"m/s"}},
	bWVHT: {[]string{"WVHT"}, []float64{99, 999}, 0, 40, []string{"m"}},
	bDPD:  {[]string{"DPD"}, []float64{99, 999}, 0, 60, []string{"sec", "s"}},
	bAPD:  {[]string{"APD", "AVP"}, []float64{99, 999}, 0, 60, []string{"sec", "s"}},
	bMWD:  {[]string{"MWD"}, []float64{999}, 0, 360, []string{"degT", "deg"}},
	bPRES: {[]string{"PRES", "BAR", "BARO"}, []float64{9999, 99999, 999.9}, 800, 1100, []string{"hPa", "mb"}},
	bATMP: {[]string{"ATMP"}, []float64{999, 99.9}, -90, 60, []string{"degC"}},
	bWTMP: {[]string{"WTMP"}, []float64{999, 99.9}, -5, 60, []string{"degC"}},
	bDEWP: {[]string{"DEWP"}, []float64{999, 99.9}, -90, 60, []string{"degC"}},
	bVIS:  {[]string{"VIS"}, []float64{99, 999}, 0, 98.9, []string{"nmi", "mi"}},
	bTIDE: {[]string{"TIDE"}, []float64{99, 999}, -50, 50, []string{"ft"}},
}

// Kinds of error of the buoy reader.
var (
	// ErrBuoyHeader is a first line that names no date, or no wind and no wave.
	ErrBuoyHeader = errors.New("wind: not the header of a buoy's standard meteorological text")
	// ErrBuoyRow is a row that does not fit the header.
	ErrBuoyRow = errors.New("wind: a row that does not fit the header")
)

// stdmetHeader is where the columns are.
type stdmetHeader struct {
	fields           int
	year, month, day int
	hour, minute     int // minute -1 in old archives
	place            [bColumns]int
	name             [bColumns]string
}

// ReadBuoy reads the standard meteorological text ("stdmet") in which the
// national buoy service of the United States keeps its records: blank-separated
// columns found by their names in the header, of the archive since 2007 ("#YY MM
// DD hh mm WDIR WSPD ..."), of older archives ("YYYY MM DD hh WD WSPD ... BAR",
// with no minute, or a year of two digits), and of the realtime files (newest
// row first, missing values written MM). The rows are sorted, oldest first.
//
// The codes for missing values (99, 999, 9999 with any decimals, each where it is
// one) are honoured, and a missing field does not spoil its row. What looks
// like a value and is none is set aside with a remark: see [BuoyRemarkKind]. A
// units line is checked: an archive in other units is an error. Directions of
// wind and waves are FROM, times UTC.
//
// At most 32 MB and 250,000 rows are read. Every error wraps ErrRead and is a [*ReadError] that
// names the line: ErrBuoyHeader, ErrBuoyRow, or ErrEmpty where no row follows.
//
// Source: [NDBC-Measurements] standard meteorological data, column descriptions and units.
func ReadBuoy(r io.Reader) (BuoyRecord, error) {
	left := &io.LimitedReader{R: r, N: table.Limit + 1}
	sc := bufio.NewScanner(left)
	sc.Buffer(make([]byte, 0, 4096), 64<<10)
	var h stdmetHeader
	var rec BuoyRecord
	var set asides
	line, head := 0, false
	fields := make([]string, 0, 32)
	for sc.Scan() {
		line++
		if left.N <= 0 {
			return BuoyRecord{}, readError(&table.Error{Err: table.ErrTooLarge})
		}
		fields = splitFields(fields[:0], sc.Text())
		if len(fields) == 0 {
			continue
		}
		if !head {
			var err error
			if h, err = newStdmetHeader(fields); err != nil {
				return BuoyRecord{}, lineError(line, "", err)
			}
			head = true
			continue
		}
		if strings.HasPrefix(fields[0], "#") {
			if err := h.units(fields); err != nil {
				return BuoyRecord{}, lineError(line, "", err)
			}
			continue
		}
		row, column, err := h.row(fields, &set)
		if err != nil {
			return BuoyRecord{}, lineError(line, column, err)
		}
		if len(rec.Rows) == table.MaxRows {
			return BuoyRecord{}, readError(&table.Error{Line: line, Err: table.ErrTooMany})
		}
		rec.Rows = append(rec.Rows, row)
	}
	if err := sc.Err(); err != nil {
		return BuoyRecord{}, lineError(line+1, "", err)
	}
	if !head {
		return BuoyRecord{}, readError(&table.Error{Err: ErrEmpty, Want: "a header line with YY MM DD hh WDIR WSPD"})
	}
	if len(rec.Rows) == 0 {
		return BuoyRecord{}, readError(&table.Error{Line: line, Err: ErrEmpty, Want: "rows below the header"})
	}
	rec.settle(&set)
	return rec, nil
}

func lineError(line int, column string, err error) error {
	msg := fmt.Errorf("line %d: %w", line, err)
	if column != "" {
		msg = fmt.Errorf("line %d: column %s: %w", line, column, err)
	}
	return &ReadError{Line: line, Column: column, Err: msg}
}

// splitFields is strings.Fields without its allocation.
func splitFields(dst []string, s string) []string {
	start := -1
	for i := 0; i < len(s); i++ {
		if blank := s[i] == ' ' || s[i] == '\t' || s[i] == '\r'; blank {
			if start >= 0 {
				dst = append(dst, s[start:i])
				start = -1
			}
		} else if start < 0 {
			start = i
		}
	}
	if start >= 0 {
		dst = append(dst, s[start:])
	}
	return dst
}

func newStdmetHeader(fields []string) (stdmetHeader, error) {
	h := stdmetHeader{fields: len(fields), year: -1, month: -1, day: -1, hour: -1, minute: -1}
	for i := range h.place {
		h.place[i] = -1
	}
	for i, f := range fields {
		f = strings.TrimPrefix(f, "#")
		switch f {
		case "YY", "YYYY":
			h.year = i
		case "MM":
			h.month = i
		case "DD":
			h.day = i
		case "hh":
			h.hour = i
		case "mm":
			h.minute = i
		}
		for c := range stdmet {
			if slices.Contains(stdmet[c].names, f) {
				if h.place[c] >= 0 {
					return h, fmt.Errorf("%w: two columns %s", ErrBuoyHeader, f)
				}
				h.place[c], h.name[c] = i, strings.Clone(f)
			}
		}
	}
	if h.year < 0 || h.month < 0 || h.day < 0 || h.hour < 0 {
		return h, fmt.Errorf("%w: want YY MM DD hh", ErrBuoyHeader)
	}
	if h.place[bWSPD] < 0 && h.place[bWVHT] < 0 {
		return h, fmt.Errorf("%w: want WDIR and WSPD, or WVHT", ErrBuoyHeader)
	}
	if h.place[bWSPD] >= 0 && h.place[bWDIR] < 0 {
		return h, fmt.Errorf("%w: WSPD without WDIR", ErrBuoyHeader)
	}
	return h, nil
}

// units checks the units line of the files since 2007.
func (h stdmetHeader) units(fields []string) error {
	if len(fields) != h.fields {
		return fmt.Errorf("%w: %d units for %d columns", ErrBuoyRow, len(fields), h.fields)
	}
	for c, at := range h.place {
		if at >= 0 && !slices.Contains(stdmet[c].units, strings.TrimPrefix(fields[at], "#")) {
			return fmt.Errorf("%w: column %s in %q, want %s", ErrBuoyRow, h.name[c], fields[at], stdmet[c].units[0])
		}
	}
	return nil
}

// number returns column c of a row, NaN if it is missing.
func (h stdmetHeader) number(fields []string, c int) (float64, error) {
	at := h.place[c]
	if at < 0 {
		return nan, nil
	}
	if fields[at] == "MM" {
		return nan, nil
	}
	f := fields[at]
	if c == bVIS {
		f = strings.TrimSuffix(f, "+") // "1.6+": the sensor sees no further
	}
	x, err := strconv.ParseFloat(f, 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		return nan, fmt.Errorf("%w: %q is not a number", ErrBuoyRow, fields[at])
	}
	col := &stdmet[c]
	for _, m := range col.missing {
		if x == m {
			return nan, nil
		}
	}
	if !(x >= col.lo && x <= col.hi) {
		return nan, fmt.Errorf("%w: %s is outside %v to %v", ErrBuoyRow, fields[at], col.lo, col.hi)
	}
	return x, nil
}

func (h stdmetHeader) time(fields []string) (time.Time, error) {
	get := func(at, lo, hi int) (int, error) {
		n, err := strconv.Atoi(fields[at])
		if err != nil || n < lo || n > hi {
			return 0, fmt.Errorf("%w: date field %q is not a whole number from %d to %d", ErrBuoyRow, fields[at], lo, hi)
		}
		return n, nil
	}
	var v [5]int
	for i, q := range [5]struct{ at, lo, hi int }{{h.year, 0, 2300}, {h.month, 1, 12}, {h.day, 1, 31}, {h.hour, 0, 23}, {h.minute, 0, 59}} {
		if q.at < 0 { // an old archive has no minute
			continue
		}
		n, err := get(q.at, q.lo, q.hi)
		if err != nil {
			return time.Time{}, err
		}
		v[i] = n
	}
	// Years of two digits ended with 1998; buoys began in the seventies.
	switch y := v[0]; {
	case y < 70:
		v[0] += 2000
	case y < 100:
		v[0] += 1900
	case y < 1900:
		return time.Time{}, fmt.Errorf("%w: year %d", ErrBuoyRow, y)
	}
	t := time.Date(v[0], time.Month(v[1]), v[2], v[3], v[4], 0, 0, time.UTC)
	if t.Day() != v[2] {
		return time.Time{}, fmt.Errorf("%w: no day %d in month %d of %d", ErrBuoyRow, v[2], v[1], v[0])
	}
	return t, nil
}

// row reads one row; column names the column to blame for an error.
func (h stdmetHeader) row(fields []string, set *asides) (row BuoyRow, column string, err error) {
	if len(fields) != h.fields {
		return BuoyRow{}, "", fmt.Errorf("%w: %d fields, the header has %d", ErrBuoyRow, len(fields), h.fields)
	}
	at, err := h.time(fields)
	if err != nil {
		return BuoyRow{}, "", err
	}
	var v [bColumns]float64
	for c := range v {
		if v[c], err = h.number(fields, c); err != nil {
			return BuoyRow{}, h.name[c], err
		}
	}
	row = BuoyRow{
		Time: at, Wind: Wind{nan, nan, nan},
		Hs: v[bWVHT], Tp: v[bDPD], Tavg: v[bAPD], MeanFrom: v[bMWD],
		Pressure: v[bPRES] * 100,
		Air:      Celsius(v[bATMP]), Water: Celsius(v[bWTMP]), Dew: Celsius(v[bDEWP]),
		Visibility: v[bVIS] * NauticalMile,
		Tide:       v[bTIDE] * Foot,
	}
	if row.MeanFrom == 360 {
		row.MeanFrom = 0
	}
	if row.Hs == 0 {
		set.note(ZeroWave, at)
		row.Hs, row.Tp, row.Tavg, row.MeanFrom = nan, nan, nan, nan
	}
	switch w, err := New(v[bWSPD], v[bWDIR]); {
	case math.IsNaN(v[bWSPD]):
	case err != nil:
		set.note(NoDirection, at)
	default:
		row.Wind, row.HasWind = w, true
		switch gust := v[bGST]; {
		case gust >= w.Speed:
			row.Wind.Gust = gust
		case gust < w.Speed:
			set.note(GustBelowMean, at)
		}
	}
	return row, "", nil
}

// asides collects remarks while reading.
type asides [RepeatedTime + 1]BuoyRemark

func (a *asides) note(k BuoyRemarkKind, t time.Time) {
	r := &a[k]
	if r.Rows == 0 || t.Before(r.Span.Start) {
		r.Span.Start = t
	}
	if r.Rows == 0 || t.After(r.Span.End) {
		r.Span.End = t
	}
	r.Kind = k
	r.Rows++
}

// settle sorts the rows, drops repeated ones and the winds of a frozen
// anemometer, and gathers the remarks.
func (b *BuoyRecord) settle(set *asides) {
	slices.SortStableFunc(b.Rows, func(x, y BuoyRow) int { return x.Time.Compare(y.Time) })
	kept := b.Rows[:1]
	for _, r := range b.Rows[1:] {
		if r.Time.Equal(kept[len(kept)-1].Time) {
			set.note(RepeatedTime, r.Time)
			continue
		}
		kept = append(kept, r)
	}
	b.Rows = kept
	var frozen []BuoyRemark
	for i := 0; i < len(kept); i++ {
		if !kept[i].HasWind || kept[i].Wind.Speed != 0 {
			continue
		}
		// A stretch runs over rows that carry no wind at all.
		last, n := i, 1
		for j := i + 1; j < len(kept) && (!kept[j].HasWind || kept[j].Wind.Speed == 0); j++ {
			if kept[j].HasWind {
				last, n = j, n+1
			}
		}
		if kept[last].Time.Sub(kept[i].Time) > frozenFor {
			for j := i; j <= last; j++ {
				kept[j].HasWind, kept[j].Wind = false, Wind{nan, nan, nan}
			}
			frozen = append(frozen, BuoyRemark{FrozenAnemometer, n, Span{kept[i].Time, kept[last].Time}})
		}
		i = last
	}
	b.Remarks = frozen
	for _, r := range set {
		if r.Rows > 0 {
			b.Remarks = append(b.Remarks, r)
		}
	}
}

// Winds returns the winds of the record as a series, at the height of the
// anemometer if that height is zero, moved to 10 m from it if not, by the
// neutral log law of Smith 1988 over open water, at 15 °C where the row has no air
// temperature; the gust is scaled with the mean. The gap is that of [NewSeries].
//
// The error is that of NewSeries, ErrEmpty where no row has a wind, or ErrHeight
// for a negative height.
func (b BuoyRecord) Winds(anemometer float64, gap time.Duration) (Series, error) {
	if anemometer != 0 && !(anemometer >= 0.5 && anemometer <= 200) {
		return Series{}, fmt.Errorf("%w: anemometer at %v m, want 0 or 0.5 to 200", ErrHeight, anemometer)
	}
	var in []Sample
	for _, r := range b.Rows {
		if !r.HasWind {
			continue
		}
		x := Sample{Time: r.Time, Wind: r.Wind, Air: r.Air, Water: r.Water}
		if anemometer != 0 && x.Speed > 0 {
			c := 15.0
			if r.Air.Known() {
				c = r.Air.Celsius()
			}
			k := Smith1988(c).ToHeight(x.Speed, anemometer, 10).Speed / x.Speed
			x.Speed *= k
			x.Gust *= k
		}
		in = append(in, x)
	}
	return NewSeries(in, gap)
}

// WriteBuoy writes the record in the archive layout used since 2007, with its
// two header lines and its codes for missing values; numbers are rounded as
// that layout rounds them (0.1 m/s, 0.01 m, whole degrees), remarks are lost.
func WriteBuoy(w io.Writer, b BuoyRecord) error {
	out := bufio.NewWriter(w)
	fmt.Fprintln(out, "#YY  MM DD hh mm WDIR WSPD GST  WVHT   DPD   APD MWD   PRES  ATMP  WTMP  DEWP  VIS  TIDE")
	fmt.Fprintln(out, "#yr  mo dy hr mn degT m/s  m/s     m   sec   sec degT   hPa  degC  degC  degC  nmi    ft")
	or := func(x, missing float64) float64 {
		if math.IsNaN(x) {
			return missing
		}
		return x
	}
	whole := func(deg float64) float64 { return math.Mod(math.Round(or(deg, 999)), 1000) }
	for _, r := range b.Rows {
		speed, gust, from := nan, nan, nan
		if r.HasWind {
			t := r.Wind.tidy()
			speed, gust, from = t.Speed, t.Gust, t.From
			if t.IsCalm() {
				from = 0
			}
		}
		t := r.Time.UTC()
		fmt.Fprintf(out, "%04d %02d %02d %02d %02d %3.0f %4.1f %4.1f %5.2f %5.2f %5.2f %3.0f %6.1f %5.1f %5.1f %5.1f %4.1f %5.2f\n",
			t.Year(), t.Month(), t.Day(), t.Hour(), t.Minute(),
			whole(from), or(speed, 99), or(gust, 99), or(r.Hs, 99), or(r.Tp, 99), or(r.Tavg, 99), whole(r.MeanFrom),
			or(r.Pressure/100, 9999), or(r.Air.Celsius(), 999), or(r.Water.Celsius(), 999), or(r.Dew.Celsius(), 999),
			or(r.Visibility/NauticalMile, 99), or(r.Tide/Foot, 99))
	}
	return out.Flush()
}
