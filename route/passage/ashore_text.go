package passage

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"math"
	"strings"
	"time"
	"unicode"

	"followingsea.example/route"
	"followingsea.example/wind"
)

// blank is a line to be filled in by hand.
const blank = "____________________"

// or returns a text without control characters, or another when it is empty.
func or(s, other string) string {
	if s = plain(s); s == "" {
		return other
	}
	return s
}

// plain makes one line of a text: what is no graphic character becomes a
// space.
func plain(s string) string {
	return strings.Join(strings.FieldsFunc(strings.ToValidUTF8(s, " "), func(r rune) bool { return unicode.IsSpace(r) || !unicode.IsGraphic(r) }), " ")
}

// when writes an instant with its day and zone.
func when(t time.Time, zone *time.Location) string {
	if t.IsZero() {
		return blank
	}
	t = t.In(zone)
	name, offset := t.Zone()
	utc := "UTC"
	if offset != 0 {
		utc = fmt.Sprintf("UTC%+03d:%02d", offset/3600, abs(offset)/60%60)
	}
	if strings.HasPrefix(name, "+") || strings.HasPrefix(name, "-") || name == "UTC" || name == "" {
		name = utc
	} else if name != utc {
		name += " (" + utc + ")"
	}
	return t.Format("Mon 2 Jan 2006 15:04 ") + name
}

func abs(x int) int {
	if x < 0 {
		return -x
	}
	return x
}

// said writes a value of a rule in the unit that is spoken.
func (r Rule) said(v float64) string {
	if v != v || math.IsInf(v, 0) {
		return "unknown"
	}
	switch r.Unit() {
	case "m/s":
		return fmt.Sprintf("%.1f kn", v/route.Knot)
	case "deg":
		return fmt.Sprintf("%.0f degrees", v)
	case "m":
		return fmt.Sprintf("%.1f m", v)
	case "s":
		return saidSpan(v)
	case "C":
		return fmt.Sprintf("%.1f C", v)
	}
	return fmt.Sprintf("%.2f", v)
}

// saidSpan writes seconds as hours and minutes, "-" before a negative span.
func saidSpan(s float64) string {
	m := int64(math.Round(math.Abs(s) / 60))
	sign := ""
	if s < 0 && m > 0 {
		sign = "-"
	}
	return fmt.Sprintf("%s%d:%02d h", sign, m/60, m%60)
}

// WriteAshore prints the plan left ashore: every field of the published
// guidance in its order, as a value or as a blank to fill in; times in the
// zone, which is named beside them; positions in degrees and minutes; what to
// do when the party is overdue; and the order of a spoken distress call. Texts
// of the form are printed on one line each, so that no text of one field can
// pass for another.
//
// The error wraps [ErrInput] for a zone of nil, or is that of the writer.
//
// Source: [SOLAS-V34] and [IMO-A893] (what a plan is about); [ITU-RR] Article 32
// (order of the call); the rules for whoever holds it are those of the trade.
func WriteAshore(w io.Writer, a Ashore, zone *time.Location) error {
	s, err := a.text(zone)
	if err != nil {
		return err
	}
	_, err = io.WriteString(w, s)
	return err
}

// text is the plan as one text.
func (a Ashore) text(zone *time.Location) (string, error) {
	if zone == nil {
		return "", inputError("zone", "nil", "the zone in which times are printed")
	}
	var buf bytes.Buffer
	p := paper{bufio.NewWriter(&buf)}
	p.line("PLAN LEFT ASHORE: %s", or(a.Run, blank))
	p.line("Leave it with two people who answer their telephones, not with the rescue authority.")
	p.line("Tell both of any change, and close it with both when you are back.")
	a.who(p, zone)
	a.where(p, zone)
	a.means(p)
	a.conditions(p, zone)
	a.overdue(p, zone)
	a.call(p)
	if err := p.w.Flush(); err != nil {
		return "", err
	}
	return buf.String(), nil
}

// A paper is what the plan is printed on.
type paper struct{ w *bufio.Writer }

func (p paper) line(format string, args ...any) {
	_, _ = p.w.WriteString(strings.TrimRight(fmt.Sprintf(format, args...), " ") + "\n")
}

func (p paper) head(s string) { p.line(""); p.line("%s", s) }

// field prints a name and its value, or a blank.
func (p paper) field(name, value string) { p.line("  %-22s %s", name, or(value, blank)) }

func (a Ashore) who(p paper, zone *time.Location) {
	p.head("WHO")
	p.field("trip", a.ID)
	p.field("plan made", when(a.Made, zone))
	people := append([]Person{a.Leader}, a.People...)
	for i, x := range people {
		name := "leader"
		if i > 0 {
			name = fmt.Sprintf("paddler %d", i+1)
		}
		p.field(name, x.Name)
		p.line("    telephone %s  age band %s", or(x.Phone, blank), or(x.Age, blank))
		p.line("    ability %s  medical %s", or(x.Ability, blank), or(x.Medical, blank))
	}
	p.line("  in all %s on the water", or(count(a.Persons()), blank))
	craft := a.Craft
	if len(craft) == 0 {
		craft = []CraftLook{{}}
	}
	for i, c := range craft {
		long := blank
		if c.Length > 0 {
			long = fmt.Sprintf("%.1f m", c.Length)
		}
		p.line("  %-22s %s x %s, length %s", fmt.Sprintf("craft %d", i+1), fmt.Sprint(max(c.Count, 1)), or(c.Kind, blank), long)
		p.line("    colour from above %s  from below %s", or(c.Top, blank), or(c.Bottom, blank))
		p.line("    name or number %s", or(c.Marks, blank))
	}
	p.field("clothing, colours", a.Clothing)
	p.field("flotation, colours", a.Flotation)
	p.field("leash", a.Leash)
}

func count(n int) string {
	if n == 0 {
		return ""
	}
	if n == 1 {
		return "1 person"
	}
	return fmt.Sprintf("%d people", n)
}

func (a Ashore) where(p paper, zone *time.Location) {
	p.head("WHERE AND WHEN")
	p.field("launch", a.Launch)
	p.line("  %-22s %s", "", position(a.LaunchAt))
	p.field("vehicle, where parked", a.Vehicle)
	p.field("plate", a.Plate)
	if s, ok := a.Placing.Seconds.Get(); ok {
		p.line("  %-22s %s, to be begun by %s", "placing the vehicle", saidSpan(s), when(a.Placing.Leave, zone))
	}
	p.field("start", when(a.Start, zone))
	for _, l := range a.Legs {
		p.line("  %-22s from %s, %03.0f true, %.1f km", fmt.Sprintf("leg %d", l.Number), position(l.From), whole(l.Course), l.Length/1000)
		p.line("  %-22s entered %s, left %s", "", l.Enter.In(zone).Format("15:04"), l.Leave.In(zone).Format("15:04"))
	}
	if a.Ends != "" {
		p.line("  ! The passage does not arrive: %s.", plain(a.Ends))
	}
	if len(a.Exits) == 0 {
		p.field("ways out", "")
	}
	for i, e := range a.Exits {
		name := ""
		if i == 0 {
			name = "ways out"
		}
		p.line("  %-22s %s  %s", name, position(e.Point), or(e.Name, blank))
	}
	p.field("finish", a.Finish)
	p.line("  %-22s %s", "", position(a.FinishAt))
	p.field("expected finish", when(a.Expected, zone))
	p.field("latest finish", when(a.Latest, zone))
	p.field("ALARM TIME", when(a.Alarm, zone))
	switch {
	case a.Latest.IsZero() || a.Dusk.IsZero():
		p.field("light left", "")
	case a.Latest.After(a.Dusk):
		p.line("  ! The latest finish is %s AFTER the end of civil twilight, %s.", saidSpan(a.Latest.Sub(a.Dusk).Seconds()), when(a.Dusk, zone))
	default:
		p.field("light left", saidSpan(a.Dusk.Sub(a.Latest).Seconds())+" from the latest finish to the end of civil twilight")
	}
	checks := a.CheckIns
	if len(checks) == 0 {
		checks = []CheckIn{{}}
	}
	for _, c := range checks {
		p.line("  %-22s %s at %s, with %s", "check-in", when(c.Time, zone), or(c.Place, blank), or(c.With, blank))
	}
}

// whole rounds a bearing to whole degrees, 360 to 0.
func whole(deg float64) float64 { return math.Mod(math.Round(deg), 360) }

func (a Ashore) means(p paper) {
	p.head("MEANS OF CALLING AND BEING SEEN")
	p.field("radio call sign", a.CallSign)
	p.field("MMSI", a.MMSI)
	p.field("channels watched", a.Channels)
	p.field("telephones, in case", a.Phones)
	p.field("beacon identity", a.Beacon)
	p.field("lights", a.Lights)
	p.field("flares", a.Flares)
	p.field("whistle", a.Whistle)
}

func (a Ashore) conditions(p paper, zone *time.Location) {
	p.head("WEATHER, TIDE AND LIMITS")
	p.field("issued, by whom, when", a.Sources)
	for _, l := range a.Legs {
		m := l.Middle
		s := fmt.Sprintf("wind %s", windSaid(m.Wind))
		if m.TotalHs <= 100 {
			s += fmt.Sprintf(", sea %.1f m", m.TotalHs)
		}
		if v := m.Stream.Speed(); v >= 0.05 && v <= 100 {
			s += fmt.Sprintf(", stream %.1f kn setting %03.0f", v/route.Knot, whole(m.Stream.Toward()))
		}
		if math.Abs(m.TideHeight) <= 100 {
			s += fmt.Sprintf(", tide %.1f m", m.TideHeight)
		}
		p.line("  %-22s %s  %s", fmt.Sprintf("leg %d", l.Number), m.Time.In(zone).Format("15:04"), s)
	}
	if len(a.Findings) == 0 {
		p.field("own limits", "")
	}
	for i, f := range a.Findings {
		name := ""
		if i == 0 {
			name = "own limits, estimate"
		}
		words := f.Rule.Words()
		if f.Rule.Unit() != "bool" {
			words += " " + f.Rule.said(f.Limit)
		}
		p.line("  %-22s %s: %s", name, words, f.State)
	}
	p.field("remarks", a.Remarks)
}

func windSaid(w wind.Wind) string {
	if !(w.Speed >= 0) {
		return "unknown"
	}
	s := fmt.Sprintf("%.0f kn", w.Speed/route.Knot)
	if w.Gust > w.Speed {
		s += fmt.Sprintf(", gusts %.0f", w.Gust/route.Knot)
	}
	if w.Speed > 0 {
		s += fmt.Sprintf(", from %03.0f", whole(w.From))
	}
	return s
}

func (a Ashore) overdue(p paper, zone *time.Location) {
	p.head("IF THEY ARE NOT BACK")
	for i := range max(2, len(a.Contacts)) {
		var c Person
		if i < len(a.Contacts) {
			c = a.Contacts[i]
		}
		p.line("  %-22s %s  telephone %s", fmt.Sprintf("shore contact %d", i+1), or(c.Name, blank), or(c.Phone, blank))
	}
	p.line("  %-22s %s  telephone %s", "rescue authority", or(a.Authority.Name, blank), or(a.Authority.Phone, blank))
	p.line("  1. From %s: try every telephone of the party, and the radio.", when(a.Latest, zone))
	p.line("  2. Ask at the finish and at the launch. Is the vehicle still there?")
	p.line("  3. At %s: call the rescue authority, say that a party is overdue,", when(a.Alarm, zone))
	p.line("     read this plan out from the top, and stay where you can be reached.")
	p.line("  4. The alarm time is not put off in silence. Only the party changes it, by telling every holder.")
	if a.Alarm.IsZero() {
		p.line("  ! There is no alarm time: agree one in writing before anybody leaves.")
	}
	p.field("closed at, by whom", "")
}

// call prints the order of a spoken distress call.
func (a Ashore) call(p paper) {
	name := "the boards of " + or(a.Leader.Name, blank)
	p.head("DISTRESS CALL, SPOKEN (with DSC: the alert first, about 15 s for its acknowledgement, then channel 16)")
	for i, s := range a.CallOrder() {
		p.line("  %d. %s", i+1, s)
	}
	p.line("  Mayday is for grave and imminent danger to a craft or a person. Otherwise: pan-pan x 3, all stations x 3, this is %s x 3,", name)
	p.line("  position, what is wrong, what help is wanted, how many people, over.")
}

// CallOrder returns the parts of a spoken distress call in their order, with
// the plan's own name, identity and number of people, and blanks for what is
// only known when it happens.
//
// Source: [ITU-RR] Article 32, as national manuals teach it.
func (a Ashore) CallOrder() []string {
	name := "the boards of " + or(a.Leader.Name, blank)
	n := blank
	if a.Persons() > 0 {
		n = fmt.Sprint(a.Persons())
	}
	return []string{
		"Mayday, mayday, mayday",
		fmt.Sprintf("This is %s, %s, %s; call sign %s, MMSI %s", name, name, name, or(a.CallSign, blank), or(a.MMSI, blank)),
		"Mayday, " + name,
		"Position: latitude and longitude " + blank + ", or bearing and distance from a charted mark " + blank,
		"What is wrong: " + blank,
		"What help is wanted: " + blank,
		"Persons: " + n,
		"Anything else: boards' colours " + a.colours() + ", drifting or not, lights, flares",
		"Over",
	}
}

// colours joins the colours of the craft.
func (a Ashore) colours() string {
	var out []string
	for _, c := range a.Craft {
		if s := plain(c.Top); s != "" {
			out = append(out, s)
		}
	}
	if len(out) == 0 {
		return blank
	}
	return strings.Join(out, ", ")
}
