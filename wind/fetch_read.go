package wind

import (
	"cmp"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/table"
)

// Fetches is a table of fetch by direction, and of mean depth along it where that is known,
// linear between its rows. It is immutable and safe for concurrent use; the zero value has
// no rows.
type Fetches struct {
	rows   []FetchRow // by direction, at least one
	depths bool
}

// FetchRow is one direction of a table of fetches.
type FetchRow struct {
	From      float64 // direction the wind comes from along this fetch, degrees true
	Fetch     float64 // m, +Inf for open sea
	MeanDepth float64 // m along the fetch, NaN if the table has none
}

// ErrFetchRow is a row of a table of fetches that cannot be.
var ErrFetchRow = errors.New("wind: row of fetches out of range")

// NewFetches returns the table of the rows, which may come in any order and are copied. A
// depth must be there for all rows or for none (NaN).
//
// The error is ErrFetchRow, with the row and what is wrong with it, or ErrEmpty.
func NewFetches(rows []FetchRow) (Fetches, error) {
	if len(rows) == 0 {
		return Fetches{}, ErrEmpty
	}
	f := Fetches{rows: slices.Clone(rows), depths: !math.IsNaN(rows[0].MeanDepth)}
	for i, r := range f.rows {
		switch {
		case !(r.From >= 0 && r.From <= 360):
			return Fetches{}, fmt.Errorf("%w: From %v is outside 0 to 360", ErrFetchRow, r.From)
		case !(r.Fetch >= 0):
			return Fetches{}, fmt.Errorf("%w: Fetch %v m from %v is negative or not a number", ErrFetchRow, r.Fetch, r.From)
		case f.depths && !(r.MeanDepth > 0):
			return Fetches{}, fmt.Errorf("%w: MeanDepth %v m from %v is not above zero", ErrFetchRow, r.MeanDepth, r.From)
		case !f.depths && !math.IsNaN(r.MeanDepth):
			return Fetches{}, fmt.Errorf("%w: MeanDepth is there from %v and not from %v", ErrFetchRow, r.From, rows[0].From)
		}
		f.rows[i].From = angle.Wrap(r.From)
	}
	slices.SortStableFunc(f.rows, func(a, b FetchRow) int { return cmp.Compare(a.From, b.From) })
	for i := 1; i < len(f.rows); i++ {
		if f.rows[i].From == f.rows[i-1].From {
			return Fetches{}, fmt.Errorf("%w: two rows from %v", ErrFetchRow, f.rows[i].From)
		}
	}
	return f, nil
}

// Rows returns a copy of the rows in order of direction.
func (f Fetches) Rows() []FetchRow { return slices.Clone(f.rows) }

// HasDepths reports whether the table has mean depths.
func (f Fetches) HasDepths() bool { return f.depths }

// Fetch returns the fetch (m) up a wind from the given direction (degrees true), linear
// between the rows on either side; +Inf if one of them is open sea.
//
// Special cases are:
//
//	Fetch is NaN if the direction is NaN or infinite, or the table has no rows
func (f Fetches) Fetch(from float64) float64 {
	a, b, k := f.beside(from)
	if a < 0 {
		return nan
	}
	return blend(f.rows[a].Fetch, f.rows[b].Fetch, k)
}

// MeanDepth returns the mean depth (m) along that fetch in the same way.
//
// Special cases are:
//
//	MeanDepth is NaN if the direction is NaN or infinite, or the table has no depths
func (f Fetches) MeanDepth(from float64) float64 {
	a, b, k := f.beside(from)
	if a < 0 {
		return nan
	}
	return blend(f.rows[a].MeanDepth, f.rows[b].MeanDepth, k)
}

// beside returns the rows on either side of a direction and how far it is between them.
func (f Fetches) beside(from float64) (a, b int, k float64) {
	w := angle.Wrap(from)
	if len(f.rows) == 0 || math.IsNaN(w) {
		return -1, -1, 0
	}
	n := len(f.rows)
	b, exact := slices.BinarySearchFunc(f.rows, w, func(r FetchRow, w float64) int { return cmp.Compare(r.From, w) })
	if exact || n == 1 {
		return b % n, b % n, 0
	}
	a = (b + n - 1) % n
	b %= n
	return a, b, angle.Wrap(w-f.rows[a].From) / angle.Wrap(f.rows[b].From-f.rows[a].From)
}

var fetchColumns = []table.Column{
	{Name: "wind_from", Quantity: table.Angle, Required: true, Lo: 0, Hi: 360},
	{Name: "fetch", Quantity: table.Length, Required: true, Lo: 0, Hi: 3e7},
	{Name: "mean_depth", Quantity: table.Length, Lo: 0.01, Hi: 12e3},
}

// mostFetchRows is a row for every hundredth of a degree.
const mostFetchRows = 36000

// ReadFetches reads a table of fetches from comma-separated values with the columns
//
//	wind_from_deg            direction the wind comes from, true, 0 to 360
//	fetch_{m,ft,km,nmi}      empty for open sea
//	mean_depth_{m,ft}        optional, along the fetch at the tide it is meant for
//
// in any order, and any column that begins with "note". At most 32 MB and 36,000 rows are read. Every error
// wraps ErrRead and is a [*ReadError] that names the line where one is to blame.
func ReadFetches(r io.Reader) (Fetches, error) {
	t, err := table.NewReader(r, fetchColumns)
	if err != nil {
		return Fetches{}, readError(err)
	}
	var rows []FetchRow
	for {
		err := t.Next()
		if err == io.EOF {
			break
		}
		if err != nil {
			return Fetches{}, readError(err)
		}
		row := FetchRow{MeanDepth: nan}
		if row.From, err = t.Need(0); err != nil {
			return Fetches{}, readError(err)
		}
		fetch, ok, err := t.Number(1)
		if err != nil {
			return Fetches{}, readError(err)
		}
		row.Fetch = fetch
		if !ok {
			row.Fetch = math.Inf(1)
		}
		if t.Has(2) {
			if row.MeanDepth, err = t.Need(2); err != nil {
				return Fetches{}, readError(err)
			}
		}
		if rows = append(rows, row); len(rows) > mostFetchRows {
			return Fetches{}, readError(t.Fail(0, fmt.Errorf("%w: too many rows", ErrFetchRow), fmt.Sprintf("at most %d", mostFetchRows)))
		}
	}
	f, err := NewFetches(rows)
	if err != nil {
		return Fetches{}, readError(err)
	}
	return f, nil
}

// WriteFetches writes the table in the form that [ReadFetches] reads, in metres.
func WriteFetches(w io.Writer, f Fetches) error {
	header := []string{"wind_from_deg", "fetch_m"}
	if f.depths {
		header = append(header, "mean_depth_m")
	}
	out := table.NewWriter(w, header...)
	for _, r := range f.rows {
		out.Number(r.From)
		if math.IsInf(r.Fetch, 1) {
			out.Text("")
		} else {
			out.Number(r.Fetch)
		}
		if f.depths {
			out.Number(r.MeanDepth)
		}
		if err := out.End(); err != nil {
			return err
		}
	}
	return out.Flush()
}
