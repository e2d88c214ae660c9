package tide

import "fmt"

// A Datum names the level that heights are measured from. Heights above
// different datums cannot be mixed: Shift is the way from one to the other.
type Datum string

// Datums in use. A national chart datum is often one of the others by another name;
// only the user can say so.
const (
	UnknownDatum Datum = ""
	ChartDatum   Datum = "CD"   // the zero of the chart at hand
	MSL          Datum = "MSL"  // mean sea level
	MLLW         Datum = "MLLW" // mean lower low water (United States)
	MLW          Datum = "MLW"  // mean low water
	MHW          Datum = "MHW"  // mean high water
	MHHW         Datum = "MHHW" // mean higher high water
	LAT          Datum = "LAT"  // lowest astronomical tide
)

// String returns the name of the datum, "unknown datum" for the zero value.
func (d Datum) String() string {
	if d == UnknownDatum {
		return "unknown datum"
	}
	return string(d)
}

// Match returns nil when heights above the two datums may be compared, and
// ErrDatum when they may not. An unknown datum matches nothing, not even
// another unknown one.
func (d Datum) Match(other Datum) error {
	if d == UnknownDatum || d != other {
		return fmt.Errorf("%w: %v and %v", ErrDatum, d, other)
	}
	return nil
}

// Shift returns a copy of the table with its heights above another datum,
// which lies offset metres below the present one (so that heights grow by
// offset). ErrTurns when the heights become implausible or offset is NaN.
func (t *Table) Shift(to Datum, offset float64) (*Table, error) {
	turns := t.Turns()
	for i := range turns {
		turns[i].Height += offset
	}
	o := t.opt
	o.Datum = to
	return NewTable(turns, o)
}
