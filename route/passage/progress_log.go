package passage

import (
	"errors"
	"fmt"
	"io"

	"followingsea.example/internal/table"
	"followingsea.example/wind"
)

// logRules are the rules whose values a log holds: all but those that only ask
// whether.
func logRules() []Rule {
	var out []Rule
	for _, r := range Rules() {
		if r.Unit() != "bool" {
			out = append(out, r)
		}
	}
	return out
}

// handlings are the words of a handling in a file.
var handlings = map[string]Handling{"": Unsaid, "unsaid": Unsaid, "in hand": InHand, "hard": Hard, "trouble": Trouble}

// ReadLog reads a paddler's log: a table (RFC 4180) with the columns time and
// handling (in hand, hard, trouble, or empty for unsaid), and for any rule the
// value that was met with, by the rule's name and a unit, as in a paddler file:
//
//	time,handling,greatest_wind_kn,greatest_sea_m
//	2026-06-21T10:00:00+01:00,in hand,17.5,0.9
//
// An empty cell is unknown. At most 32 MB are read; outings may be in any order.
//
// Errors wrap [ErrInput] and name the line, the column and what was expected.
func ReadLog(r io.Reader) ([]Outing, error) {
	rules := logRules()
	columns := []table.Column{{Name: "time", Quantity: table.Time, Required: true}, {Name: "handling", Quantity: table.Text, Required: true}}
	for _, r := range rules {
		c := table.Column{Name: r.String(), Quantity: r.quantity()}
		switch r { // the others may be negative, or as great as they like
		case LeastWind, GreatestWind, GreatestGust:
			c.Hi = wind.Strongest
		case GreatestOffStern, GreatestShift:
			c.Hi = 180
		case LeastSea, GreatestSea, GreatestSwell:
			c.Hi = 40
		}
		columns = append(columns, c)
	}
	fail := func(err error) error { return fmt.Errorf("%w: %w", ErrInput, err) }
	t, err := table.NewReader(r, columns)
	if err != nil {
		return nil, fail(err)
	}
	var log []Outing
	for {
		switch err := t.Next(); {
		case errors.Is(err, io.EOF):
			return log, nil
		case err != nil:
			return nil, fail(err)
		}
		var o Outing
		if o.Time, err = t.Instant(0); err != nil {
			return nil, fail(err)
		}
		h, ok := handlings[t.Raw(1)]
		if !ok {
			return nil, fail(t.Fail(1, table.ErrValue, "in hand, hard, trouble, or nothing"))
		}
		o.Handling = h
		for i, r := range rules {
			x, ok, err := t.Number(i + 2)
			if err != nil {
				return nil, fail(err)
			}
			if ok {
				o.Values[r] = Known(x)
			}
		}
		log = append(log, o)
	}
}

// WriteLog writes a log in SI units that [ReadLog] reads back: a column for each
// rule of which any outing has a value. An instant that no file can hold wraps
// [ErrInput]; other errors are those of the writer.
func WriteLog(w io.Writer, log []Outing) error {
	header := []string{"time", "handling"}
	var rules []Rule
	for _, r := range logRules() {
		for _, o := range log {
			if _, ok := o.Values[r].Get(); ok {
				rules = append(rules, r)
				suffix := map[string]string{"m/s": "_m_s", "deg": "_deg", "m": "_m", "s": "_s", "C": "_c"}[r.Unit()]
				header = append(header, r.String()+suffix)
				break
			}
		}
	}
	for i, o := range log {
		if y := o.Time.UTC().Year(); o.Time.IsZero() || y < 1900 || y > 2200 {
			return inputError(fmt.Sprintf("outing %d, time", i+1), o.Time, "an instant from 1900 to 2200")
		}
	}
	t := table.NewWriter(w, header...)
	for _, o := range log {
		word := o.Handling.String()
		if o.Handling == Unsaid {
			word = ""
		}
		t.Instant(o.Time).Text(word)
		for _, r := range rules {
			t.Number(o.Values[r].Number())
		}
		if err := t.End(); err != nil {
			return err
		}
	}
	return t.Flush()
}
