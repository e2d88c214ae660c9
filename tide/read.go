package tide

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"time"

	"followingsea.example/internal/table"
)

// Tables travel as comma-separated values: a header whose names carry the
// unit, times in RFC 3339 with a zone, lines that begin with # as comments.

// mostHours is the largest number of rows of a table by the hour.
const mostHours = 1000

// ErrFile is returned for a file that cannot be read as the table asked for.
var ErrFile = errors.New("tide: unusable file")

// fail marks an error of a file as ErrFile, keeping the kind of the error.
func fail(err error) error { return fmt.Errorf("%w: %w", ErrFile, err) }

// ReadTable reads a table of high and low waters:
//
//	# datum: LAT
//	time,height_m,kind
//	2026-08-15T05:03:00Z,6.26,high
//	2026-08-15T11:28:00Z,-0.409,low
//
// time is RFC 3339 with a zone; height_ has a unit (m, ft, cm); kind (high or
// low, H or L, HW or LW) may be left out, and then a turn above both its neighbours
// is high. A comment "# datum: NAME" or a column datum, the same
// in every row, names the datum; Options.Datum, when given, must agree.
//
// Errors are ErrFile with the line and the column, ErrDatum where datums
// disagree, or those of NewTable. At most 32 MB and 250,000 turns are read.
func ReadTable(r io.Reader, o Options) (*Table, error) {
	head := bufio.NewReaderSize(r, 4096)
	named := Datum(comment(head, "datum"))
	cols := []table.Column{
		{Name: "time", Quantity: table.Time, Required: true},
		{Name: "height", Quantity: table.Length, Required: true, Lo: -25, Hi: 25},
		{Name: "kind", Quantity: table.Text},
		{Name: "datum", Quantity: table.Text},
	}
	t, err := table.NewReader(head, cols)
	if err != nil {
		return nil, fail(err)
	}
	turns, err := rows(t, func(turns []Turn) (Turn, error) {
		var u Turn
		if u.Time, err = t.Instant(0); err != nil {
			return Turn{}, err
		}
		if u.Height, err = t.Need(1); err != nil {
			return Turn{}, err
		}
		if n := len(turns); n > 0 && !u.Time.After(turns[n-1].Time) {
			return Turn{}, t.Fail(0, table.ErrOrder, "times in order, each later than the one before")
		}
		if t.Has(2) {
			switch strings.ToLower(t.Raw(2)) {
			case "high", "h", "hw":
				u.High = true
			case "low", "l", "lw":
			default:
				return Turn{}, t.Fail(2, table.ErrValue, "high or low")
			}
		}
		if d := t.Raw(3); d != "" {
			if named == UnknownDatum && len(turns) == 0 {
				named = Datum(strings.Clone(d))
			} else if named != Datum(d) {
				return Turn{}, fmt.Errorf("%w: line %d: %q, and %v before it", ErrDatum, t.Line(), d, named)
			}
		}
		return u, nil
	})
	if err != nil {
		return nil, fail(err)
	}

	if !t.Has(2) {
		if err := guessKinds(turns); err != nil {
			return nil, fail(err)
		}
	}
	switch {
	case o.Datum == UnknownDatum:
		o.Datum = named
	case named != UnknownDatum && named != o.Datum:
		return nil, fmt.Errorf("%w: %w: the file has %v, %v was asked for", ErrFile, ErrDatum, named, o.Datum)
	}
	tb, err := NewTable(turns, o)
	if err != nil {
		return nil, fail(err)
	}
	return tb, nil
}

// rows reads row after row: one makes a row of the line that t stands on, given
// those before it.
func rows[T any](t *table.Reader, one func(before []T) (T, error)) ([]T, error) {
	var all []T
	for {
		err := t.Next()
		if errors.Is(err, io.EOF) {
			return all, nil
		}
		if err != nil {
			return nil, err
		}
		row, err := one(all)
		if err != nil {
			return nil, err
		}
		all = append(all, row)
	}
}

// comment looks for "# NAME: value" among the comments at the head of the
// file, without consuming anything: within its first 4096 bytes.
func comment(r *bufio.Reader, name string) string {
	head, _ := r.Peek(4096)
	for _, line := range strings.Split(string(head), "\n") {
		c, ok := strings.CutPrefix(strings.TrimPrefix(strings.TrimSpace(line), "\ufeff"), "#")
		if !ok {
			break
		}
		key, value, ok := strings.Cut(c, ":")
		if ok && strings.EqualFold(strings.TrimSpace(key), name) {
			if v := strings.TrimSpace(value); len(v) <= 40 {
				return v
			}
		}
	}
	return ""
}

// rangeComment reads "# spring_range_m: 5.5" (or _ft), NaN when there is none.
func rangeComment(r *bufio.Reader, name string) float64 {
	unit, v := 1.0, comment(r, name+"_m")
	if v == "" {
		unit, v = Foot, comment(r, name+"_ft")
	}
	x, err := strconv.ParseFloat(v, 64)
	if err != nil || !(x >= 0 && x <= 100) {
		return math.NaN()
	}
	return x * unit
}

// guessKinds names turns high or low by their neighbours.
func guessKinds(turns []Turn) error {
	if len(turns) < 2 {
		return nil // NewTable says what is wrong
	}
	for i := range turns {
		if i == 0 {
			turns[0].High = turns[0].Height > turns[1].Height
			continue
		}
		if turns[i].Height == turns[i-1].Height {
			return fmt.Errorf("%v and the turn before it stand at one height: give a column kind", turns[i])
		}
		turns[i].High = turns[i].Height > turns[i-1].Height
	}
	return nil
}

// WriteTable writes the table as ReadTable reads it, heights in metres.
func WriteTable(w io.Writer, t *Table) error {
	if d := t.Datum(); d != UnknownDatum {
		if strings.ContainsAny(string(d), "\r\n") || len(d) > 40 {
			return fmt.Errorf("%w: datum %q: want one line of at most 40 bytes", ErrValue, string(d))
		}
		if _, err := fmt.Fprintf(w, "# datum: %s\r\n", string(d)); err != nil {
			return err
		}
	}
	c := table.NewWriter(w, "time", "height_m", "kind")
	for _, u := range t.turns {
		kind := "low"
		if u.High {
			kind = "high"
		}
		if err := c.Instant(u.Time).Number(u.Height).Text(kind).End(); err != nil {
			return err
		}
	}
	return c.Flush()
}

// ReadClockStreams reads a table of streams by clock time:
//
//	time,rate_kn,set_deg
//	2026-08-15T05:00:00Z,1.2,075
//
// rate_ has a unit (m_s, kn, km_h, mph, ft_s); set_deg is the direction toward
// which the stream runs and may be empty at slack only. gap is as in
// NewClockStreams. Errors are ErrFile with the line and the column; at most 32
// MB and 250,000 rows are read.
func ReadClockStreams(r io.Reader, gap time.Duration) (*ClockStreams, error) {
	t, err := table.NewReader(r, []table.Column{
		{Name: "time", Quantity: table.Time, Required: true},
		{Name: "rate", Quantity: table.Speed, Required: true, Lo: 0, Hi: fastest},
		{Name: "set", Quantity: table.Angle, Required: true, Lo: 0, Hi: 360},
	})
	if err != nil {
		return nil, fail(err)
	}
	rows, err := rows(t, func(rows []StreamSample) (StreamSample, error) {
		at, err := t.Instant(0)
		if err != nil {
			return StreamSample{}, err
		}
		rate, err := t.Need(1)
		if err != nil {
			return StreamSample{}, err
		}
		set, err := setOf(t, 2, rate)
		if err != nil {
			return StreamSample{}, err
		}
		if n := len(rows); n > 0 && !at.After(rows[n-1].Time) {
			return StreamSample{}, t.Fail(0, table.ErrOrder, "times in order, each later than the one before")
		}
		return StreamSample{at, Setting(rate, set)}, nil
	})
	if err != nil {
		return nil, fail(err)
	}

	c, err := NewClockStreams(rows, gap)
	if err != nil {
		return nil, fail(err)
	}
	return c, nil
}

// setOf reads a set, which may be missing only where the rate is zero.
func setOf(t *table.Reader, column int, rate float64) (float64, error) {
	set, ok, err := t.Number(column)
	if err != nil {
		return 0, err
	}
	if !ok && rate != 0 {
		return 0, t.Fail(column, table.ErrMissing, "a direction in degrees, toward; empty at slack only")
	}
	return set, nil
}

// WriteClockStreams writes the table as ReadClockStreams reads it, in m/s.
func WriteClockStreams(w io.Writer, c *ClockStreams) error {
	t := table.NewWriter(w, "time", "rate_m_s", "set_deg")
	for _, s := range c.samples {
		t.Instant(s.Time).Number(s.Stream.Rate)
		if s.Stream.Rate == 0 {
			t.Text("")
		} else {
			t.Number(s.Stream.Set)
		}
		if err := t.End(); err != nil {
			return err
		}
	}
	return t.Flush()
}

// ReadHourTable reads a table of streams by hour from high water:
//
//	# spring_range_m: 5.5
//	# neap_range_m: 2.4
//	hour,set_deg,springs_kn,neaps_kn
//	-6,245,1.8,0.9
//	-5,250,1.1,0.5
//
// hour counts from high water at the reference port, negative before it;
// springs_ and neaps_ have a unit of speed. The mean ranges at the reference
// port stand in the two comments, _m or _ft; ranges given here, in metres, take
// their place. Errors are ErrFile with the line and the column.
func ReadHourTable(r io.Reader, springRange, neapRange float64) (*HourTable, error) {
	head := bufio.NewReaderSize(r, 4096)
	if springRange == 0 && neapRange == 0 {
		springRange, neapRange = rangeComment(head, "spring_range"), rangeComment(head, "neap_range")
		if math.IsNaN(springRange) || math.IsNaN(neapRange) {
			return nil, fail(fmt.Errorf("%w: no mean ranges: want comments such as %q and %q before the header", ErrValue, "# spring_range_m: 5.5", "# neap_range_m: 2.4"))
		}
	}
	t, err := table.NewReader(head, []table.Column{
		{Name: "hour", Quantity: table.Count, Required: true, Lo: -13, Hi: 13},
		{Name: "set", Quantity: table.Angle, Required: true, Lo: 0, Hi: 360},
		{Name: "springs", Quantity: table.Speed, Required: true, Lo: 0, Hi: fastest},
		{Name: "neaps", Quantity: table.Speed, Required: true, Lo: 0, Hi: fastest},
	})
	if err != nil {
		return nil, fail(err)
	}
	rows, err := rows(t, func(rows []HourStream) (HourStream, error) {
		var h HourStream
		if len(rows) == mostHours {
			return h, fmt.Errorf("line %d: more than %d rows", t.Line(), mostHours)
		}
		if h.Hour, err = t.Need(0); err != nil {
			return HourStream{}, err
		}
		if h.Springs, err = t.Need(2); err != nil {
			return HourStream{}, err
		}
		if h.Neaps, err = t.Need(3); err != nil {
			return HourStream{}, err
		}
		if h.Set, err = setOf(t, 1, h.Springs+h.Neaps); err != nil {
			return HourStream{}, err
		}
		if n := len(rows); n > 0 && !(h.Hour > rows[n-1].Hour) {
			return HourStream{}, t.Fail(0, table.ErrOrder, "hours in order, each later than the one before")
		}
		return h, nil
	})
	if err != nil {
		return nil, fail(err)
	}

	h, err := NewHourTable(rows, springRange, neapRange)
	if err != nil {
		return nil, fail(err)
	}
	return h, nil
}

// WriteHourTable writes the table as ReadHourTable reads it, in m/s, with its
// mean ranges as comments.
func WriteHourTable(w io.Writer, h *HourTable) error {
	if _, err := fmt.Fprintf(w, "# spring_range_m: %v\r\n# neap_range_m: %v\r\n", h.springs, h.neaps); err != nil {
		return err
	}
	t := table.NewWriter(w, "hour", "set_deg", "springs_m_s", "neaps_m_s")
	for _, r := range h.rows {
		t.Number(r.Hour)
		if r.Springs+r.Neaps == 0 {
			t.Text("")
		} else {
			t.Number(r.Set)
		}
		if err := t.Number(r.Springs).Number(r.Neaps).End(); err != nil {
			return err
		}
	}
	return t.Flush()
}

// ReadStreams reads a table of streams of either kind, by clock time
// (ReadClockStreams) or by hour from high water (ReadHourTable, with its
// ranges in comments), which it tells by the header: a first column named hour
// is the second kind. That one is hung on the tides of the reference port,
// which may be nil for the first; rows further apart than gap (zero: 2 hours)
// have nothing known between them in the first kind. Errors are those of the
// reader it comes to, and ErrTurns where the port is missing.
func ReadStreams(r io.Reader, port *Table, gap time.Duration) (*ClockStreams, error) {
	head := bufio.NewReaderSize(r, 4096)
	if !byHour(head) {
		return ReadClockStreams(head, gap)
	}
	h, err := ReadHourTable(head, 0, 0)
	if err != nil {
		return nil, err
	}
	if port == nil {
		return nil, fmt.Errorf("%w: a table by hour from high water: want the high waters of its reference port", ErrTurns)
	}
	return h.On(port)
}

// byHour reports whether the header in the first 4096 bytes has a column hour.
func byHour(r *bufio.Reader) bool {
	head, _ := r.Peek(4096)
	for _, line := range strings.Split(string(head), "\n") {
		line = strings.TrimPrefix(strings.TrimSpace(line), "\ufeff")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		for _, cell := range strings.Split(line, ",") {
			if strings.EqualFold(strings.TrimSpace(cell), "hour") {
				return true
			}
		}
		return false
	}
	return false
}

// ReadEvents reads a table of current events:
//
//	time,kind,rate_kn
//	2026-06-01T03:05:00Z,slack before ebb,0
//	2026-06-01T06:03:00Z,maximum ebb,-1.23
//
// kind is the name of an Event (slack before flood, maximum flood, minimum
// flood, slack before ebb, maximum ebb, minimum ebb); the rate is positive on the
// flood and may be empty at a slack. Errors are ErrFile with the line and the
// column; at most 32 MB and 250,000 events are read. NewEventStreams checks
// their order.
func ReadEvents(r io.Reader) ([]StreamEvent, error) {
	t, err := table.NewReader(r, []table.Column{
		{Name: "time", Quantity: table.Time, Required: true},
		{Name: "kind", Quantity: table.Text, Required: true},
		{Name: "rate", Quantity: table.Speed, Required: true, Lo: -fastest, Hi: fastest},
	})
	if err != nil {
		return nil, fail(err)
	}
	events, err := rows(t, func(out []StreamEvent) (StreamEvent, error) {
		e := StreamEvent{Kind: MinEbb + 1}
		if e.Time, err = t.Instant(0); err != nil {
			return StreamEvent{}, err
		}
		for k := SlackBeforeFlood; k <= MinEbb; k++ {
			if strings.EqualFold(t.Raw(1), k.String()) {
				e.Kind = k
			}
		}
		if e.Kind > MinEbb {
			return StreamEvent{}, t.Fail(1, table.ErrValue, "slack before flood, maximum flood, minimum flood, slack before ebb, maximum ebb or minimum ebb")
		}
		rate, ok, err := t.Number(2)
		if err == nil && !ok && !e.Kind.Slack() {
			err = t.Fail(2, table.ErrMissing, "a rate; empty at slack only")
		}
		if err != nil {
			return StreamEvent{}, err
		}
		e.Rate = rate
		if n := len(out); n > 0 && !e.Time.After(out[n-1].Time) {
			return StreamEvent{}, t.Fail(0, table.ErrOrder, "times in order, each later than the one before")
		}
		return e, nil
	})
	if err != nil {
		return nil, fail(err)
	}
	return events, nil
}

// WriteEvents writes events as ReadEvents reads them, in m/s.
func WriteEvents(w io.Writer, events []StreamEvent) error {
	t := table.NewWriter(w, "time", "kind", "rate_m_s")
	for _, e := range events {
		if err := t.Instant(e.Time).Text(e.Kind.String()).Number(e.Rate).End(); err != nil {
			return err
		}
	}
	return t.Flush()
}
