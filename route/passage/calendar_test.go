package passage

import (
	"bytes"
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"followingsea.example/route"
)

// anEvent is a passage as a calendar has it, with texts that need escaping and
// folding.
func anEvent() Event {
	return Event{UID: "skarn-2026-09-12@invented", Sequence: 2, Stamp: at(-12), Start: at(1), Finish: at(3), Alarm: at(4.5),
		Summary: "Skarn Head to Ling Bar; two boards, one leader", Location: "Skarn Slip",
		Description: "back\\slash, comma; semicolon\nand a line that is long enough to be folded – with a dash of three octets – and then some more of it, é è ê",
		Overdue:     "Ring both telephones, then the rescue authority.", At: route.Point{Lat: 44.000001, Lon: -33.999871}, HasAt: true}
}

func calendarOf(t testing.TB, events ...Event) string {
	t.Helper()
	var b bytes.Buffer
	if err := WriteCalendar(&b, events...); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// TestCalendarReadsBack: start, finish, alarm, identifier and texts come back
// as they were, through lines of at most 75 octets that end in CR LF.
func TestCalendarReadsBack(t *testing.T) {
	second := anEvent()
	second.UID, second.Description, second.HasAt, second.At = "another", "", false, route.Point{}
	want := []Event{anEvent(), second}
	text := calendarOf(t, want...)
	got, err := ReadCalendar(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want, got); d != "" {
		t.Error(d)
	}
	if strings.Count(text, "\n") != strings.Count(text, "\r\n") || !strings.HasSuffix(text, "END:VCALENDAR\r\n") {
		t.Error("a line does not end in CR LF")
	}
	for _, l := range strings.Split(text, "\r\n") {
		if len(l) > 75 {
			t.Errorf("%d octets: %s", len(l), l)
		}
	}
	for _, s := range []string{"UID:skarn-2026-09-12@invented\r\n", "DTSTART:20260621T090000Z\r\n", "DTEND:20260621T110000Z\r\n",
		"TRIGGER;VALUE=DATE-TIME:20260621T123000Z\r\n", `two boards\, one leader`, `back\\slash\, comma\; semicolon\nand`} {
		if !strings.Contains(text, s) {
			t.Errorf("no %q in\n%s", s, text)
		}
	}
}

// TestCalendarCutsSeconds: an alarm between two seconds is written as the
// earlier, so that it is never late.
func TestCalendarCutsSeconds(t *testing.T) {
	e := anEvent()
	e.Alarm = e.Alarm.Add(999 * time.Millisecond)
	got, err := ReadCalendar(strings.NewReader(calendarOf(t, e)))
	if err != nil || !got[0].Alarm.Equal(at(4.5)) {
		t.Errorf("%v %v", got, err)
	}
}

// TestCalendarAnyText: whatever printable text a plan holds comes back.
func TestCalendarAnyText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e := anEvent()
		text := rapid.StringOfN(rapid.RuneFrom([]rune("ab ,;:\\\n\téß漢🌊\"")), 0, 300, -1)
		e.Summary, e.Description, e.Location = text.Draw(t, "summary"), text.Draw(t, "description"), text.Draw(t, "location")
		var b bytes.Buffer
		if err := WriteCalendar(&b, e); err != nil {
			t.Fatal(err)
		}
		got, err := ReadCalendar(&b)
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff([]Event{e}, got); d != "" {
			t.Error(d)
		}
	})
}

// TestCalendarRefuses: events without what an alarm needs are not written.
func TestCalendarRefuses(t *testing.T) {
	for name, change := range map[string]func(*Event){
		"identifier":     func(e *Event) { e.UID = "" },
		"identifier ":    func(e *Event) { e.UID = "two\nlines" },
		"time of making": func(e *Event) { e.Stamp = time.Time{} },
		"start":          func(e *Event) { e.Start = time.Time{} },
		"finish":         func(e *Event) { e.Finish = e.Start.Add(-time.Minute) },
		"finish ":        func(e *Event) { e.Finish = time.Time{} },
		"alarm":          func(e *Event) { e.Alarm = time.Time{} },
		"alarm ":         func(e *Event) { e.Alarm = e.Finish.Add(-time.Minute) },
		"sequence":       func(e *Event) { e.Sequence = -1 },
		"summary":        func(e *Event) { e.Summary = "a\rb" },
		"description":    func(e *Event) { e.Description = "\xff" },
	} {
		e := anEvent()
		change(&e)
		var b bytes.Buffer
		err := WriteCalendar(&b, e)
		if !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), strings.TrimSpace(name)) || b.Len() != 0 {
			t.Errorf("%s: %v, %d bytes", name, err, b.Len())
		}
	}
	if err := WriteCalendar(&bytes.Buffer{}); !errors.Is(err, ErrInput) {
		t.Error("a calendar without events")
	}
	if err := WriteCalendar(&bytes.Buffer{}, anEvent(), anEvent()); !errors.Is(err, ErrInput) {
		t.Error("two events of one identifier")
	}
}

// TestReadCalendarIsStrict: each way of being nearly right is refused, with the
// line.
func TestReadCalendarIsStrict(t *testing.T) {
	good := calendarOf(t, anEvent())
	replace := func(from, to string) string {
		if !strings.Contains(good, from) {
			t.Fatalf("no %q", from)
		}
		return strings.Replace(good, from, to, 1)
	}
	for name, text := range map[string]string{
		"empty":              "",
		"line feeds alone":   strings.ReplaceAll(good, "\r\n", "\n"),
		"cut off":            good[:len(good)-2],
		"no end":             strings.TrimSuffix(good, "END:VCALENDAR\r\n"),
		"more":               good + "X:1\r\n",
		"no version":         replace("VERSION:2.0\r\n", ""),
		"version":            replace("VERSION:2.0", "VERSION:1.0"),
		"long line":          replace("SUMMARY:", "SUMMARY:"+strings.Repeat("x", 80)),
		"no uid":             replace("UID:skarn-2026-09-12@invented\r\n", ""),
		"two uids":           replace("SEQUENCE:2\r\n", "SEQUENCE:2\r\nUID:x\r\n"),
		"no alarm":           good[:strings.Index(good, "BEGIN:VALARM")] + good[strings.Index(good, "END:VEVENT"):],
		"no trigger":         replace("TRIGGER;VALUE=DATE-TIME:20260621T123000Z\r\n", ""),
		"trigger relative":   replace("TRIGGER;VALUE=DATE-TIME:20260621T123000Z", "TRIGGER:-PT5M"),
		"time without zone":  replace("DTSTART:20260621T090000Z", "DTSTART:20260621T090000"),
		"time of no clock":   replace("DTSTART:20260621T090000Z", "DTSTART:20260621T250000Z"),
		"ends before":        replace("DTEND:20260621T110000Z", "DTEND:20260621T080000Z"),
		"alarm before":       replace("DATE-TIME:20260621T123000Z", "DATE-TIME:20260621T103000Z"),
		"unknown property":   replace("SEQUENCE:2", "RRULE:FREQ=DAILY"),
		"bare comma":         replace(`boards\,`, "boards,"),
		"strange escape":     replace(`boards\,`, `boards\x`),
		"position":           replace("GEO:44.000001;", "GEO:144.000001;"),
		"sequence":           replace("SEQUENCE:2", "SEQUENCE:+2"),
		"mail alarm":         replace("ACTION:DISPLAY", "ACTION:EMAIL"),
		"rest of nothing":    " x\r\n" + good,
		"event in the event": replace("BEGIN:VALARM", "BEGIN:VEVENT"),
		"not UTF-8":          replace("Skarn", "\xff"),
	} {
		if _, err := ReadCalendar(strings.NewReader(text)); !errors.Is(err, ErrInput) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := ReadCalendar(strings.NewReader(replace("DTSTART:2", "DTSTART:x"))); err == nil || !strings.Contains(err.Error(), "line 9") {
		t.Errorf("the error does not name the line: %v", err)
	}
}

// FuzzReadCalendar: what is read without an error is written and read again the
// same.
func FuzzReadCalendar(f *testing.F) {
	f.Add(calendarOf(f, anEvent()))
	f.Add("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n")
	f.Fuzz(func(t *testing.T, text string) {
		events, err := ReadCalendar(strings.NewReader(text))
		if err != nil {
			if !errors.Is(err, ErrInput) {
				t.Errorf("%v does not wrap ErrInput", err)
			}
			return
		}
		for i := range events {
			events[i].At = printed(events[i].At) // written to six decimals
			if events[i].Overdue == "" {
				events[i].Overdue = events[i].alarmWords()
			}
		}
		again, err := ReadCalendar(strings.NewReader(calendarOf(t, events...)))
		if err != nil {
			t.Fatal(err)
		}
		if d := cmp.Diff(events, again); d != "" {
			t.Error(d)
		}
	})
}
