package passage

import (
	"bufio"
	"fmt"
	"io"
	"strings"
	"time"
	"unicode/utf8"

	"followingsea.example/route"
)

// An Event is a passage as a calendar holds it: whoever keeps the plan ashore
// is told at the alarm time, by their own telephone, that the paddlers are
// overdue. The identifier and the time of making are the caller's, so that a
// plan that was changed replaces the one before it.
type Event struct {
	UID         string    // the same for every version of one plan
	Sequence    int       // 0 for the first version, one more for each change
	Stamp       time.Time // when this version was made
	Start       time.Time
	Finish      time.Time // expected
	Alarm       time.Time // when to begin what is to be done about somebody overdue
	Summary     string
	Description string      // of the event
	Overdue     string      // what the alarm says
	Location    string      // of the launch, in words
	At          route.Point // of the launch; only when HasAt
	HasAt       bool
}

// Check returns an error that wraps [ErrInput] and names what is wrong: an
// identifier or a time that is missing, a finish before the start, an alarm
// before the finish, a character that a calendar cannot hold.
func (e Event) Check() error {
	if e.UID == "" {
		return inputError("identifier", `""`, "a text that no other plan has")
	}
	if e.Sequence < 0 {
		return inputError("sequence", e.Sequence, "0 or more")
	}
	for _, t := range []struct {
		name string
		at   time.Time
	}{{"time of making", e.Stamp}, {"start", e.Start}, {"finish", e.Finish}, {"alarm", e.Alarm}} {
		if y := t.at.UTC().Year(); t.at.IsZero() || y < 1900 || y > 2200 {
			return inputError(t.name, t.at.Format(time.RFC3339), "an instant from 1900 to 2200")
		}
	}
	if e.Finish.Before(e.Start) {
		return inputError("finish", e.Finish.Format(time.RFC3339), "not before the start, "+e.Start.Format(time.RFC3339))
	}
	if e.Alarm.Before(e.Finish) {
		return inputError("alarm", e.Alarm.Format(time.RFC3339), "not before the finish, "+e.Finish.Format(time.RFC3339))
	}
	for _, t := range []struct{ name, text string }{{"identifier", e.UID}, {"summary", e.Summary}, {"description", e.Description}, {"words of the alarm", e.Overdue}, {"location", e.Location}} {
		if !utf8.ValidString(t.text) || strings.ContainsFunc(t.text, uncalendared) {
			return inputError(t.name, fmt.Sprintf("%q", clip(t.text)), "UTF-8 without control characters")
		}
	}
	if strings.ContainsAny(e.UID, "\n") {
		return inputError("identifier", fmt.Sprintf("%q", clip(e.UID)), "one line")
	}
	if e.HasAt {
		return e.At.Check()
	}
	return nil
}

// uncalendared reports a control character that a text of a calendar cannot
// hold; tabs and line ends it can.
func uncalendared(r rune) bool { return r < ' ' && r != '\n' && r != '\t' || r == 0x7f }

// calendarTime is the form of an instant in UTC.
const calendarTime = "20060102T150405Z"

// WriteCalendar writes events as an iCalendar stream that [ReadCalendar] and
// every calendar reads: times in UTC to the second (a part of a second is cut
// off, so that no alarm is late), lines of at most 75 octets folded between
// characters and ended by CR LF, texts escaped, and for each event one alarm
// that displays its words at the instant given, not at a distance from the
// start: moving the event in a calendar does not move the alarm.
//
// The error is that of [Event.Check], before anything is written, or of the
// writer.
//
// Source: [RFC5545] sections 3.1 (lines), 3.3.11 (texts), 3.6.1 (event), 3.6.6
// (alarm), 3.8.6.3 (trigger).
func WriteCalendar(w io.Writer, events ...Event) error {
	if len(events) == 0 {
		return inputError("calendar", "without an event", "one at least")
	}
	seen := map[string]bool{}
	for i, e := range events {
		if err := e.Check(); err != nil {
			return fmt.Errorf("event %d: %w", i+1, err)
		}
		if seen[e.UID] {
			return fmt.Errorf("event %d: %w", i+1, inputError("identifier", fmt.Sprintf("%q", clip(e.UID)), "one that no other event of the calendar has"))
		}
		seen[e.UID] = true
	}
	b := bufio.NewWriter(w)
	line := func(name, value string) { fold(b, name+":"+value) }
	text := func(name, value string) {
		if value != "" {
			line(name, escapeText(value))
		}
	}
	line("BEGIN", "VCALENDAR")
	line("VERSION", "2.0")
	line("PRODID", "-//followingsea.example//passage//EN")
	line("CALSCALE", "GREGORIAN")
	for _, e := range events {
		line("BEGIN", "VEVENT")
		text("UID", e.UID)
		line("SEQUENCE", fmt.Sprint(e.Sequence))
		line("DTSTAMP", e.Stamp.UTC().Format(calendarTime))
		line("DTSTART", e.Start.UTC().Format(calendarTime))
		line("DTEND", e.Finish.UTC().Format(calendarTime))
		text("SUMMARY", e.Summary)
		text("DESCRIPTION", e.Description)
		text("LOCATION", e.Location)
		if e.HasAt {
			line("GEO", fmt.Sprintf("%.6f;%.6f", e.At.Lat, e.At.Lon))
		}
		line("BEGIN", "VALARM")
		line("ACTION", "DISPLAY")
		line("TRIGGER;VALUE=DATE-TIME", e.Alarm.UTC().Format(calendarTime))
		line("DESCRIPTION", escapeText(e.alarmWords()))
		line("END", "VALARM")
		line("END", "VEVENT")
	}
	line("END", "VCALENDAR")
	return b.Flush()
}

// alarmWords is what the alarm displays, which the format demands.
func (e Event) alarmWords() string {
	if e.Overdue == "" {
		return "Overdue"
	}
	return e.Overdue
}

// foldAt is the greatest number of octets in a line, without its end.
const foldAt = 75

// fold writes a content line, folded between characters.
func fold(b *bufio.Writer, s string) {
	room := foldAt
	for len(s) > room {
		cut := room
		for !utf8.RuneStart(s[cut]) {
			cut--
		}
		_, _ = b.WriteString(s[:cut] + "\r\n ")
		s, room = s[cut:], foldAt-1 // the space counts
	}
	_, _ = b.WriteString(s + "\r\n")
}

var textEscaper = strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\n", `\n`)

func escapeText(s string) string { return textEscaper.Replace(s) }
