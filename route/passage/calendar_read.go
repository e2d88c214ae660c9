package passage

import (
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"
	"unicode/utf8"

	"followingsea.example/route"
)

// ReadCalendar reads an iCalendar stream strictly: what [WriteCalendar]
// writes, and nothing that a calendar might guess at. Every line must end with
// CR LF and be at most 75 octets long; every event must have one identifier,
// stamp, start, finish and one displayed alarm at an instant in UTC; what is
// begun must be ended; a property that must not be repeated is not. Properties
// and parts that this package does not write are an error: a plan that somebody
// relies on is not half understood.
//
// Every error wraps [ErrInput] and names the line.
//
// Source: [RFC5545] sections 3.1, 3.3, 3.4, 3.6.
func ReadCalendar(r io.Reader) ([]Event, error) {
	data, err := readLimited(r)
	if err != nil {
		return nil, err
	}
	lines, err := unfold(string(data))
	if err != nil {
		return nil, err
	}
	c := calendarReader{lines: lines}
	return c.calendar()
}

// A contentLine is one unfolded line with the number of its first part.
type contentLine struct {
	number      int
	name, value string
}

func lineError(number int, value any, want string) error {
	return fmt.Errorf("%w: line %d: found %v: want %s", ErrInput, number, value, want)
}

// unfold splits a stream into content lines.
func unfold(s string) ([]contentLine, error) {
	if !utf8.ValidString(s) {
		return nil, fmt.Errorf("%w: the file is not UTF-8", ErrInput)
	}
	var out []contentLine
	var text strings.Builder
	first := 0
	end := func() error {
		if first == 0 {
			return nil
		}
		name, value, ok := strings.Cut(text.String(), ":")
		if !ok || name == "" {
			return lineError(first, fmt.Sprintf("%q", clip(text.String())), "a name, a colon and a value")
		}
		out = append(out, contentLine{first, name, value})
		return nil
	}
	for n := 1; s != ""; n++ {
		part, rest, ok := strings.Cut(s, "\r\n")
		if !ok {
			return nil, lineError(n, "a line without its end", "CR LF after every line")
		}
		if strings.ContainsFunc(part, func(r rune) bool { return r < ' ' && r != '\t' || r == 0x7f }) {
			return nil, lineError(n, "a control character", "none")
		}
		if len(part) > foldAt {
			return nil, lineError(n, fmt.Sprintf("%d octets", len(part)), "75 at most")
		}
		s = rest
		if strings.HasPrefix(part, " ") {
			if first == 0 {
				return nil, lineError(n, "the rest of a line", "its beginning")
			}
			text.WriteString(part[1:])
			continue
		}
		if err := end(); err != nil {
			return nil, err
		}
		text.Reset()
		text.WriteString(part)
		first = n
	}
	return out, end()
}

type calendarReader struct {
	lines []contentLine
	next  int
}

// take returns the next line; one past the end is an error with the last
// line's number.
func (c *calendarReader) take(want string) (contentLine, error) {
	if c.next >= len(c.lines) {
		n := 1
		if len(c.lines) > 0 {
			n = c.lines[len(c.lines)-1].number
		}
		return contentLine{}, lineError(n, "the end of the file", want)
	}
	l := c.lines[c.next]
	c.next++
	return l, nil
}

// must takes a line that has to be exactly so.
func (c *calendarReader) must(name, value string) error {
	l, err := c.take(name + ":" + value)
	if err == nil && (l.name != name || l.value != value) {
		err = lineError(l.number, clip(l.name+":"+l.value), name+":"+value)
	}
	return err
}

func (c *calendarReader) calendar() ([]Event, error) {
	if err := c.must("BEGIN", "VCALENDAR"); err != nil {
		return nil, err
	}
	var events []Event
	seen, uids := map[string]bool{}, map[string]bool{}
	for {
		l, err := c.take("END:VCALENDAR")
		if err != nil {
			return nil, err
		}
		if l.name != "BEGIN" && l.name != "END" {
			if seen[l.name] || len(events) > 0 {
				return nil, lineError(l.number, l.name, "the properties of the calendar once, and before its events")
			}
			seen[l.name] = true
		}
		switch l.name {
		case "VERSION":
			if l.value != "2.0" {
				return nil, lineError(l.number, clip(l.value), "2.0")
			}
		case "CALSCALE":
			if l.value != "GREGORIAN" {
				return nil, lineError(l.number, clip(l.value), "GREGORIAN")
			}
		case "PRODID":
			if l.value == "" {
				return nil, lineError(l.number, "nothing", "the program that wrote it")
			}
		case "BEGIN":
			if l.value != "VEVENT" {
				return nil, lineError(l.number, clip(l.value), "VEVENT")
			}
			e, err := c.event(l.number)
			if err != nil {
				return nil, err
			}
			if uids[e.UID] {
				return nil, lineError(l.number, "an identifier that another event has", "one of its own")
			}
			uids[e.UID] = true
			events = append(events, e)
		case "END":
			switch {
			case l.value != "VCALENDAR":
				return nil, lineError(l.number, clip(l.value), "VCALENDAR")
			case c.next < len(c.lines):
				return nil, lineError(c.lines[c.next].number, "more", "nothing after the calendar")
			case !seen["VERSION"] || !seen["PRODID"]:
				return nil, lineError(l.number, "no VERSION or no PRODID", "both")
			case len(events) == 0:
				return nil, lineError(l.number, "no event", "one at least")
			}
			return events, nil
		default:
			return nil, lineError(l.number, clip(l.name), "a property of a calendar")
		}
	}
}

// event reads one event; its BEGIN has been read.
func (c *calendarReader) event(begun int) (Event, error) {
	var e Event
	seen := map[string]bool{}
	for {
		l, err := c.take("END:VEVENT")
		if err != nil {
			return e, err
		}
		if l.name != "END" {
			key := l.name + map[bool]string{true: l.value}[l.name == "BEGIN"]
			if seen[key] {
				return e, lineError(l.number, clip(key), "it once")
			}
			seen[key] = true
		}
		switch l.name {
		case "UID":
			e.UID, err = l.text()
		case "SUMMARY":
			e.Summary, err = l.text()
		case "DESCRIPTION":
			e.Description, err = l.text()
		case "LOCATION":
			e.Location, err = l.text()
		case "SEQUENCE":
			if e.Sequence, err = strconv.Atoi(l.value); err != nil || e.Sequence < 0 || strconv.Itoa(e.Sequence) != l.value {
				err = lineError(l.number, clip(l.value), "a whole number, 0 or more")
			}
		case "DTSTAMP":
			e.Stamp, err = l.instant()
		case "DTSTART":
			e.Start, err = l.instant()
		case "DTEND":
			e.Finish, err = l.instant()
		case "GEO":
			e.At, err = l.geo()
			e.HasAt = true
		case "BEGIN":
			if l.value != "VALARM" {
				return e, lineError(l.number, clip(l.value), "VALARM")
			}
			e.Alarm, e.Overdue, err = c.alarm()
		case "END":
			if l.value != "VEVENT" {
				return e, lineError(l.number, clip(l.value), "VEVENT")
			}
			for _, name := range []string{"UID", "DTSTAMP", "DTSTART", "DTEND", "BEGINVALARM"} {
				if !seen[name] {
					return e, lineError(l.number, "no "+strings.TrimPrefix(name, "BEGIN"), "one in every event")
				}
			}
			if err := e.Check(); err != nil {
				return e, fmt.Errorf("event begun in line %d: %w", begun, err)
			}
			return e, nil
		default:
			err = lineError(l.number, clip(l.name), "a property of an event")
		}
		if err != nil {
			return e, err
		}
	}
}

// alarm reads one alarm; its BEGIN has been read.
func (c *calendarReader) alarm() (at time.Time, words string, err error) {
	seen := map[string]bool{}
	for {
		l, err := c.take("END:VALARM")
		if err != nil {
			return at, words, err
		}
		if seen[l.name] {
			return at, words, lineError(l.number, clip(l.name), "it once")
		}
		seen[l.name] = true
		switch l.name {
		case "ACTION":
			if l.value != "DISPLAY" {
				err = lineError(l.number, clip(l.value), "DISPLAY")
			}
		case "TRIGGER;VALUE=DATE-TIME":
			at, err = l.instant()
		case "DESCRIPTION":
			words, err = l.text()
		case "END":
			if l.value != "VALARM" || len(seen) != 4 {
				err = lineError(l.number, clip(l.value), "END:VALARM after ACTION, TRIGGER and DESCRIPTION")
			}
			return at, words, err
		default:
			err = lineError(l.number, clip(l.name), "a property of an alarm")
		}
		if err != nil {
			return at, words, err
		}
	}
}

// instant reads an instant in UTC.
func (l contentLine) instant() (time.Time, error) {
	t, err := time.Parse(calendarTime, l.value)
	if err != nil || t.Format(calendarTime) != l.value {
		return time.Time{}, lineError(l.number, fmt.Sprintf("%q", clip(l.value)), "an instant in UTC, as 20260621T043000Z")
	}
	return t, nil
}

// text reads an escaped text.
func (l contentLine) text() (string, error) {
	var b strings.Builder
	for i := 0; i < len(l.value); i++ {
		switch c := l.value[i]; c {
		case ';', ',':
			return "", lineError(l.number, fmt.Sprintf("a bare %q", c), "it escaped")
		case '\\':
			i++
			if i == len(l.value) {
				return "", lineError(l.number, "a lone backslash", "a character after it")
			}
			switch c := l.value[i]; c {
			case '\\', ';', ',':
				b.WriteByte(c)
			case 'n', 'N':
				b.WriteByte('\n')
			default:
				return "", lineError(l.number, fmt.Sprintf("a backslash before %q", c), `one before \ ; , or n`)
			}
		default:
			b.WriteByte(c)
		}
	}
	return b.String(), nil
}

// geo reads a position.
func (l contentLine) geo() (route.Point, error) {
	lat, lon, ok := strings.Cut(l.value, ";")
	x, err1 := strconv.ParseFloat(lat, 64)
	y, err2 := strconv.ParseFloat(lon, 64)
	p := route.Point{Lat: x, Lon: y}
	if !ok || err1 != nil || err2 != nil || p.Check() != nil {
		return p, lineError(l.number, fmt.Sprintf("%q", clip(l.value)), "latitude;longitude in degrees")
	}
	return p, nil
}
