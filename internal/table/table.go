// Package table reads the comma-separated tables that the library accepts:
// RFC 4180, a header whose column names carry the unit ("wind_speed_kn"),
// times in RFC 3339 with a zone, an empty cell for a missing value. Every
// error names the line, the column, the value and what was expected, and
// memory stays bounded whatever comes in.
package table

import (
	"bufio"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"
)

// Limit is the largest input that is read, in bytes, and rowLimit the longest
// row: what the csv package holds in memory is a small multiple of a row.
// MaxRows is the largest number of rows, 28 years of hours: a row of a dozen
// bytes becomes one of hundreds in memory, which the size of the file would not
// bound.
const (
	Limit    = 32 << 20
	MaxRows  = 250_000
	rowLimit = 1 << 20
)

// The kinds of error. Every error of this package wraps one of them.
var (
	ErrEmpty    = errors.New("the file is empty")
	ErrTooLarge = errors.New("the file is larger than 32 MB")
	ErrTooMany  = errors.New("the table has more than 250,000 rows")
	ErrLongRow  = errors.New("a row is longer than 1 MB")
	ErrSyntax   = errors.New("not a table of comma-separated values")
	ErrHeader   = errors.New("the header is not as expected")
	ErrUnit     = errors.New("the unit is not known")
	ErrMissing  = errors.New("a value is missing")
	ErrValue    = errors.New("the value is not a number")
	ErrRange    = errors.New("the value is out of range")
	ErrTime     = errors.New("the time cannot be read")
	ErrZone     = errors.New("the time has no zone")
	ErrOrder    = errors.New("times are repeated or out of order")
)

// An Error says where a table is wrong and what was expected there.
type Error struct {
	Line   int    // 1 is the header; 0 when no line is to blame
	Column string // as in the header; empty when the line as a whole is wrong
	Value  string // as in the file
	Want   string // what was expected
	Err    error  // one of the kinds above
}

// Error writes "line 12: column wind_from_deg: "400": ...".
func (e *Error) Error() string {
	var b strings.Builder
	if e.Line > 0 {
		fmt.Fprintf(&b, "line %d: ", e.Line)
	}
	if e.Column != "" {
		fmt.Fprintf(&b, "column %s: ", e.Column)
	}
	if e.Value != "" {
		fmt.Fprintf(&b, "%q: ", clip(e.Value))
	}
	b.WriteString(e.Err.Error())
	if e.Want != "" {
		fmt.Fprintf(&b, ": want %s", e.Want)
	}
	return b.String()
}

// Unwrap returns the kind of error.
func (e *Error) Unwrap() error { return e.Err }

// clip shortens a value that would flood the message.
func clip(s string) string {
	if len(s) > 60 {
		return s[:57] + "..."
	}
	return s
}

// A Quantity is what a column measures, and so which units it may carry.
type Quantity int

// The quantities.
const (
	Time        Quantity = iota // RFC 3339 with a zone; no unit in the name
	Text                        // free text; no unit in the name
	Count                       // a plain number; no unit in the name
	Speed                       // m_s, kn, km_h, mph, ft_s
	Length                      // m, ft, km, nmi, cm
	Angle                       // deg
	Span                        // s, min, h
	Temperature                 // c, f
	Pressure                    // hpa, pa
	Mass                        // kg, lb
)

// A conversion turns a number of a unit into SI.
type conversion struct{ factor, offset float64 }

// Convert returns x in SI, where x is a number of quantity q in the unit whose
// suffix is given ("kn"), and whether q has that unit.
func Convert(q Quantity, suffix string, x float64) (si float64, ok bool) {
	if len(unitOrder[q]) == 0 {
		return x, suffix == ""
	}
	c, ok := conversions[q][suffix]
	if !ok {
		return math.NaN(), false
	}
	return x*c.factor + c.offset, true
}

// Suffixes lists the unit suffixes of quantity q in the order messages use.
func Suffixes(q Quantity) []string { return slices.Clone(unitOrder[q]) }

// conversions turns a cell into SI (degrees, and degrees Celsius).
var conversions = map[Quantity]map[string]conversion{
	Speed:       {"m_s": {1, 0}, "kn": {1852.0 / 3600, 0}, "km_h": {1 / 3.6, 0}, "mph": {0.44704, 0}, "ft_s": {0.3048, 0}},
	Length:      {"m": {1, 0}, "ft": {0.3048, 0}, "km": {1000, 0}, "nmi": {1852, 0}, "cm": {0.01, 0}},
	Angle:       {"deg": {1, 0}},
	Span:        {"s": {1, 0}, "min": {60, 0}, "h": {3600, 0}},
	Temperature: {"c": {1, 0}, "f": {5.0 / 9, -160.0 / 9}},
	Pressure:    {"hpa": {100, 0}, "pa": {1, 0}},
	Mass:        {"kg": {1, 0}, "lb": {0.45359237, 0}},
}

// unitOrder lists each quantity's units as messages print them.
var unitOrder = map[Quantity][]string{
	Speed: {"m_s", "kn", "km_h", "mph", "ft_s"}, Length: {"m", "ft", "km", "nmi", "cm"}, Angle: {"deg"},
	Span: {"s", "min", "h"}, Temperature: {"c", "f"}, Pressure: {"hpa", "pa"}, Mass: {"kg", "lb"},
}

// A Column is one column that a table may have.
type Column struct {
	Name     string // without the unit: "wind_speed"
	Quantity Quantity
	Required bool    // the header must have it
	Lo, Hi   float64 // closed range in SI of a number; both zero for any finite number
}

// heading writes the column's name as the header should have it.
func (c Column) heading() string {
	us := unitOrder[c.Quantity]
	switch len(us) {
	case 0:
		return c.Name
	case 1:
		return c.Name + "_" + us[0]
	}
	return c.Name + "_{" + strings.Join(us, ",") + "}"
}

// match reports whether the header cell is this column, and its unit.
func (c Column) match(cell string) (unit string, ok bool, err error) {
	us := unitOrder[c.Quantity]
	if len(us) == 0 {
		return "", cell == c.Name, nil
	}
	rest, has := strings.CutPrefix(cell, c.Name+"_")
	if !has {
		if cell == c.Name {
			return "", false, fmt.Errorf("%w: the name carries none: want %s", ErrUnit, c.heading())
		}
		return "", false, nil
	}
	if _, known := conversions[c.Quantity][rest]; known {
		return rest, true, nil
	}
	return rest, false, nil
}

// A Reader reads one table row by row.
type Reader struct {
	csv     *csv.Reader
	in      *limited
	columns []Column
	place   []int        // field index of each column, -1 when the table lacks it
	conv    []conversion // of each column
	header  []string
	fields  []string
	line    int
	rows    int
}

// limited stops at Limit bytes, or at rowLimit bytes into one row, and
// remembers which.
type limited struct {
	r    io.Reader
	left int64
	row  int64 // bytes that the current row may still take
	over error
}

func (l *limited) Read(p []byte) (int, error) {
	if l.left <= 0 {
		var one [1]byte
		if n, err := io.ReadFull(l.r, one[:]); n == 0 {
			return 0, err
		}
		l.over = ErrTooLarge
		return 0, l.over
	}
	if l.row <= 0 {
		l.over = ErrLongRow
		return 0, l.over
	}
	if int64(len(p)) > l.left {
		p = p[:l.left]
	}
	n, err := l.r.Read(p)
	l.left -= int64(n)
	l.row -= int64(n)
	return n, err
}

// NewReader reads the header of a table and matches it with the columns.
// A required column that is missing, a column that is none of these and does
// not begin with "note", or a unit that is not known, is an error.
// Lines that begin with # are comments.
func NewReader(r io.Reader, columns []Column) (*Reader, error) {
	in := &limited{r: r, left: Limit, row: rowLimit}
	buf := bufio.NewReader(in)
	if bom, err := buf.Peek(3); err == nil && string(bom) == "\xef\xbb\xbf" {
		buf.Discard(3)
	}
	t := &Reader{csv: csv.NewReader(buf), in: in, columns: columns}
	t.csv.ReuseRecord = true
	t.csv.Comment = '#'
	t.csv.TrimLeadingSpace = true
	head, err := t.csv.Read()
	if err != nil {
		if errors.Is(err, io.EOF) {
			return nil, &Error{Err: ErrEmpty, Want: "a header line with " + t.expected()}
		}
		return nil, t.failed(err)
	}
	line, _ := t.csv.FieldPos(0)
	t.header = make([]string, len(head))
	t.place = make([]int, len(columns))
	t.conv = make([]conversion, len(columns))
	for i := range t.place {
		t.place[i] = -1
	}
	for i, cell := range head {
		cell = strings.ToLower(strings.TrimSpace(cell))
		t.header[i] = strings.Clone(cell)
		if err := t.assign(i, cell); err != nil {
			err.Line = line
			return nil, err
		}
	}
	for i, c := range columns {
		if c.Required && t.place[i] < 0 {
			return nil, &Error{Line: line, Column: c.heading(), Err: ErrHeader, Want: "this column; the table may have " + t.expected()}
		}
	}
	return t, nil
}

// assign finds the column that a header cell names.
func (t *Reader) assign(i int, cell string) *Error {
	bestUnit, best := "", Column{}
	for j, c := range t.columns {
		unit, ok, err := c.match(cell)
		if err != nil {
			return &Error{Column: cell, Err: err}
		}
		if ok {
			if t.place[j] >= 0 {
				return &Error{Column: cell, Err: ErrHeader, Want: "the column only once"}
			}
			t.place[j] = i
			t.conv[j] = conversions[c.Quantity][unit]
			return nil
		}
		if unit != "" && len(c.Name) > len(best.Name) {
			bestUnit, best = unit, c
		}
	}
	switch {
	case strings.HasPrefix(cell, "note"):
		return nil
	case bestUnit != "":
		return &Error{Column: cell, Value: bestUnit, Err: ErrUnit, Want: best.heading()}
	}
	return &Error{Column: cell, Err: ErrHeader, Want: "one of " + t.expected()}
}

// expected lists the columns as the header may have them.
func (t *Reader) expected() string {
	var names []string
	for _, c := range t.columns {
		names = append(names, c.heading())
	}
	return strings.Join(names, ", ")
}

// failed turns an error of the csv package or of the input into one of ours.
func (t *Reader) failed(err error) error {
	if t.in.over != nil {
		return &Error{Err: t.in.over}
	}
	var p *csv.ParseError
	if errors.As(err, &p) {
		want := ""
		if errors.Is(p.Err, csv.ErrFieldCount) {
			want = fmt.Sprintf("%d fields, as in the header", len(t.header))
		} else {
			want = p.Err.Error()
		}
		return &Error{Line: p.Line, Err: ErrSyntax, Want: want}
	}
	return fmt.Errorf("line %d: %w", t.line+1, err)
}

// Next reads the next row. At the end it returns io.EOF, after MaxRows of them
// ErrTooMany.
func (t *Reader) Next() error {
	t.in.row = rowLimit
	fields, err := t.csv.Read()
	if err != nil {
		if errors.Is(err, io.EOF) && t.in.over == nil {
			return io.EOF
		}
		return t.failed(err)
	}
	t.fields = fields
	t.line, _ = t.csv.FieldPos(0)
	if t.rows++; t.rows > MaxRows {
		return &Error{Line: t.line, Err: ErrTooMany}
	}
	return nil
}

// Line returns the line of the current row.
func (t *Reader) Line() int { return t.line }

// Has reports whether the table has column i.
func (t *Reader) Has(i int) bool { return t.place[i] >= 0 }

// Raw returns the cell of column i as it stands, without outer blanks.
func (t *Reader) Raw(i int) string {
	if t.place[i] < 0 {
		return ""
	}
	return strings.TrimSpace(t.fields[t.place[i]])
}

// Text returns a copy of the cell that outlives the row.
func (t *Reader) Text(i int) string { return strings.Clone(t.Raw(i)) }

// Fail returns an error about column i of the current row.
func (t *Reader) Fail(i int, kind error, want string) error {
	col := t.columns[i].heading()
	if t.place[i] >= 0 {
		col = t.header[t.place[i]]
	}
	return &Error{Line: t.line, Column: col, Value: t.Raw(i), Want: want, Err: kind}
}

// Number returns the cell of column i in SI. It is missing (ok false) when
// the table lacks the column or the cell is empty.
func (t *Reader) Number(i int) (x float64, ok bool, err error) {
	s := t.Raw(i)
	if s == "" {
		return 0, false, nil
	}
	x, perr := strconv.ParseFloat(s, 64)
	if perr != nil || math.IsNaN(x) || math.IsInf(x, 0) || strings.ContainsAny(s, "xX_pP") {
		return 0, false, t.Fail(i, ErrValue, "a decimal number, or nothing for a missing value")
	}
	if c := t.conv[i]; c.factor != 0 {
		x = x*c.factor + c.offset
	}
	c := t.columns[i]
	if (c.Lo != 0 || c.Hi != 0) && !(x >= c.Lo && x <= c.Hi) {
		return 0, false, t.Fail(i, ErrRange, t.span(i))
	}
	return x, true, nil
}

// span writes the range of column i in SI and in the column's own unit.
func (t *Reader) span(i int) string {
	c, k := t.columns[i], t.conv[i]
	if k.factor == 0 {
		k.factor = 1
	}
	lo, hi := (c.Lo-k.offset)/k.factor, (c.Hi-k.offset)/k.factor
	return fmt.Sprintf("%.6g to %.6g", lo, hi)
}

// Need is Number for a cell that must not be empty.
func (t *Reader) Need(i int) (float64, error) {
	x, ok, err := t.Number(i)
	if err == nil && !ok {
		err = t.Fail(i, ErrMissing, "a decimal number")
	}
	return x, err
}

// Instant returns the cell of column i as an instant.
func (t *Reader) Instant(i int) (time.Time, error) {
	s := t.Raw(i)
	if s == "" {
		return time.Time{}, t.Fail(i, ErrMissing, wantTime)
	}
	at, err := ParseTime(s)
	if err != nil {
		return time.Time{}, t.Fail(i, err, wantTime)
	}
	return at, nil
}

const wantTime = "RFC 3339 with a zone, such as 2026-06-21T06:00:00Z or 2026-06-21T08:00:00+02:00"

// ParseTime reads an instant in RFC 3339 with a zone. A lower-case t or z, a
// blank for the T and left-out seconds are accepted; a time without zone, or
// with the zone -00:00, which means that the offset is not known, is ErrZone.
func ParseTime(s string) (time.Time, error) {
	u := strings.ToUpper(strings.TrimSpace(s))
	if len(u) > 10 && u[10] == ' ' {
		u = u[:10] + "T" + u[11:]
	}
	if strings.HasSuffix(u, "-00:00") {
		return time.Time{}, ErrZone
	}
	for _, layout := range []string{time.RFC3339Nano, "2006-01-02T15:04Z07:00"} {
		at, err := time.Parse(layout, u)
		if err != nil {
			continue
		}
		if y := at.Year(); y < 1800 || y > 2300 {
			return time.Time{}, ErrTime
		}
		return at, nil
	}
	for _, layout := range []string{"2006-01-02T15:04:05", "2006-01-02T15:04", "2006-01-02"} {
		if _, err := time.Parse(layout, u); err == nil {
			return time.Time{}, ErrZone
		}
	}
	return time.Time{}, ErrTime
}

// A Writer writes a table: CRLF line ends, an empty cell for a missing value.
type Writer struct {
	csv *csv.Writer
	row []string
}

// NewWriter writes the header.
func NewWriter(w io.Writer, header ...string) *Writer {
	c := csv.NewWriter(w)
	c.UseCRLF = true
	c.Write(header)
	return &Writer{csv: c}
}

// Text adds a cell of text.
func (w *Writer) Text(s string) *Writer { w.row = append(w.row, s); return w }

// Instant adds a cell that is an instant.
func (w *Writer) Instant(t time.Time) *Writer { return w.Text(t.Format(time.RFC3339Nano)) }

// Number adds a cell in the shortest form that reads back the same; a NaN
// or an infinity is written as a missing value.
func (w *Writer) Number(x float64) *Writer {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return w.Text("")
	}
	return w.Text(strconv.FormatFloat(x, 'g', -1, 64))
}

// End ends the row.
func (w *Writer) End() error {
	err := w.csv.Write(w.row)
	w.row = w.row[:0]
	return err
}

// Flush writes what is buffered and returns the first error of all.
func (w *Writer) Flush() error { w.csv.Flush(); return w.csv.Error() }
