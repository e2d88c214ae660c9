package main

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"strings"
	"time"
	"unicode/utf8"

	"followingsea.example/internal/angle"
	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/wind"
)

// kn writes a speed in knots.
func kn(v float64) string { return number(v/route.Knot, 1) }

// number writes a number with so many decimals, and a dash for unknown.
func number(v float64, decimals int) string {
	if v != v || math.IsInf(v, 0) {
		return "-"
	}
	s := fmt.Sprintf("%.*f", decimals, v)
	if strings.Trim(s, "-0.") == "" {
		s = strings.TrimPrefix(s, "-")
	}
	return s
}

// bearing writes a bearing with three digits.
func bearing(deg float64) string {
	if deg != deg {
		return "---"
	}
	return fmt.Sprintf("%03.0f", whole(angle.Wrap(deg)))
}

func (p *made) clock(t time.Time) string { return clockOf(t, p.options) }

func clockOf(t time.Time, o options) string {
	if t.IsZero() {
		return "  -  "
	}
	return t.In(o.zone).Format("15:04")
}

// span writes seconds as hours and minutes.
func span(s float64) string {
	if s != s {
		return "-"
	}
	if math.IsInf(s, 1) {
		return "never"
	}
	m := int(math.Round(math.Abs(s) / 60))
	sign := ""
	if s < 0 && m > 0 {
		sign = "-"
	}
	return fmt.Sprintf("%s%d:%02d", sign, m/60, m%60)
}

// quantity writes a value of a rule in the unit a paddler uses.
func quantity(r passage.Rule, v float64) string {
	switch r.Unit() {
	case "m/s":
		return kn(v) + " kn"
	case "deg":
		return number(v, 0) + " deg"
	case "m":
		return number(v, 2) + " m"
	case "s":
		return span(v) + " h"
	case "C":
		return number(v, 1) + " C"
	case "bool":
		if v == 0 {
			return "none"
		}
		return "there is one"
	}
	return number(v, 2)
}

// page is a writer that remembers its first error.
type page struct {
	w *bufio.Writer
}

func newPage(w io.Writer) page { return page{bufio.NewWriter(w)} }

func (p page) line(format string, args ...any) {
	s := fmt.Sprintf(format, args...)
	p.w.WriteString(strings.TrimRight(s, " ") + "\n")
}

func (p page) head(s string) {
	p.line("")
	p.line("%s", strings.ToUpper(s))
}

// paragraph wraps words at the width of the page; the lines after the first hang below
// the text.
func (p page) paragraph(indent, text string) {
	hang := utf8.RuneCountInString(indent)
	line, width, words := indent, hang, 0
	for _, w := range strings.Fields(text) {
		n := utf8.RuneCountInString(w)
		if words > 0 && width+1+n > columns {
			p.line("%s", line)
			line, width, words = strings.Repeat(" ", hang), hang, 0
		}
		if words > 0 {
			line, width = line+" ", width+1
		}
		line, width, words = line+w, width+n, words+1
	}
	p.line("%s", line)
}

// columns is the width of the page.
const columns = 98

func writeText(w io.Writer, p *made) error {
	out := newPage(w)
	p.writeRun(out)
	p.writeForecast(out)
	p.writeParty(out)
	p.writeDepartures(out)
	p.writeTimeline(out)
	p.writeWaysOut(out)
	p.writeVisits(out)
	p.writeLight(out)
	p.writeLaunch(out)
	p.writeDeck(out)
	p.writeAshore(out)
	p.writeDebrief(out)
	p.writeStep(out)
	p.writeCautions(out)
	return out.w.Flush()
}

func (p *made) writeRun(out page) {
	run := p.in.run
	name := run.Name
	if name == "" {
		name = "the run"
	}
	day := p.appraisals[p.best].Depart.In(p.options.zone)
	out.line("%s, %s", strings.ToUpper(name), day.Format("Monday 2 January 2006"))
	if p.options.data == "" {
		out.line("Demonstration: the coast, the names, the weather and the tide are invented.")
	}
	out.paragraph("", fmt.Sprintf("Times are %s. Bearings are true%s.", zoneWords(day), p.variationWords()))
	out.line("Speeds are in knots, heights and depths in metres.")

	out.head("The run")
	var courses []string
	for _, l := range run.Legs() {
		courses = append(courses, bearing(l.Mean()))
	}
	out.line("  %.1f km in %d legs, courses %s. Wind straight along it blows from %s.",
		p.path.Length()/1000, len(courses), strings.Join(courses, ", "), bearing(p.bestWind()))
	exits, err := p.exitPlaces()
	if err != nil {
		out.line("  exits: %v", err)
		return
	}
	for _, e := range exits {
		out.paragraph(fmt.Sprintf("  km %4.1f  ", e.along/1000), fmt.Sprintf("%s, %.1f km off the line%s", e.exit.Name, e.off/1000, note(e.exit.Note)))
		out.paragraph("           ", "to land: "+conditions(e.exit))
	}
	if len(exits) > 0 {
		from, to := longestGap(exits, p.path.Length())
		out.line("  Longest stretch without an exit abeam: %.1f km, from km %.1f to km %.1f.", (to-from)/1000, from/1000, to/1000)
	}
	for _, a := range run.Areas {
		out.line("  Area: %s (%s)%s", a.Name, a.Kind, note(a.Note))
	}
	if len(p.in.runs) > 1 {
		out.paragraph("  ", "Runs of this folder: "+strings.Join(p.in.runNames(), ", ")+"; -run NAME plans one, -search compares them.")
	}
}

// zoneWords names the zone of a time and its offset.
func zoneWords(t time.Time) string {
	name, offset := t.Zone()
	sign := "+"
	if offset < 0 {
		sign = "-"
	}
	utc := fmt.Sprintf("UTC%s%d:%02d", sign, abs(offset)/3600, abs(offset)/60%60)
	switch {
	case offset == 0:
		return "UTC"
	case strings.HasPrefix(name, "+") || strings.HasPrefix(name, "-"):
		return utc
	}
	return name + ", " + utc
}

func note(s string) string {
	if s == "" {
		return ""
	}
	return ": " + s
}

func abs(x int) int {
	if x < 0 {
		return -x
	}
	return x
}

// conditions writes an exit's landing conditions.
func conditions(e route.Exit) string {
	var c []string
	missing := 0
	add := func(l route.Limit, format func(float64) string) {
		if x, ok := l.Get(); ok {
			c = append(c, format(x))
		} else if !l.Given() {
			missing++
		}
	}
	add(e.LeastDepth, func(x float64) string { return "depth at least " + number(x, 1) + " m" })
	add(e.GreatestBreaker, func(x float64) string { return "breakers up to " + number(x, 1) + " m" })
	add(e.GreatestStream, func(x float64) string { return "stream up to " + kn(x) + " kn" })
	add(e.Seaward, func(x float64) string { return "open to " + bearing(x) })
	switch e.Hours {
	case route.DaylightOnly:
		c = append(c, "by daylight")
	case route.HoursNotGiven:
		missing++
	}
	if missing > 0 {
		c = append(c, fmt.Sprintf("%d conditions not given", missing))
	}
	return strings.Join(c, ", ")
}

func (p *made) variationWords() string {
	if v, ok := p.paddler.Variation.East.Get(); ok {
		side := "east"
		if v < 0 {
			side = "west"
		}
		return fmt.Sprintf("; headings to steer are magnetic too, variation %.1f %s (%s)",
			math.Abs(v), side, p.paddler.Variation.Date.Format("January 2006"))
	}
	return " only: no variation is given"
}

func (p *made) writeForecast(out page) {
	head := "The forecast"
	if p.manyDays() {
		head += p.appraisals[p.best].Depart.In(p.options.zone).Format(" around Monday 2 January")
	}
	out.head(head)
	for _, n := range p.in.notes {
		out.paragraph("  ! ", n)
	}
	for _, s := range p.forecast() {
		out.paragraph("  ", s)
	}
}

func (p *made) writeDepartures(out page) {
	out.head("Departures against your own limits")
	var asked []string
	for _, f := range p.appraisals[p.best].Findings {
		asked = append(asked, strings.TrimSpace(f.Rule.Words()+" "+limitWords(f)))
	}
	if len(asked) == 0 {
		out.line("  No limits are set: nothing is compared.")
	} else {
		out.paragraph("  ", "Limits: "+strings.Join(asked, "; ")+".")
	}
	out.line("")
	out.paragraph("  ", p.withinWords())
	out.line("")
	out.line("  start  arrives  slow case  rides  met  broken  unknown")
	day := ""
	for i, a := range p.appraisals {
		mark := " "
		if i == p.best {
			mark = ">"
		}
		if d := a.Depart.In(p.options.zone).Format("Monday 2 January"); d != day && p.manyDays() {
			day = d
			out.line("  %s", d)
		}
		broken, unknown := a.Broken(), a.Unknown()
		rides := "-"
		if a.Rideable == a.Rideable {
			rides = fmt.Sprintf("%.0f%%", 100*a.Rideable)
		}
		out.line("%s %s    %s      %s  %5s  %3d  %6d  %7d  %s", mark, p.clock(a.Depart), p.clock(a.Arrival), p.clock(a.Late), rides,
			len(a.Findings)-len(broken)-len(unknown), len(broken), len(unknown), a.Ends)
		for _, f := range broken {
			out.paragraph("           broken   ", p.findingWords(f))
		}
		for _, f := range unknown {
			out.paragraph("           unknown  ", strings.TrimSpace(f.Rule.Words()+" "+limitWords(f))+": "+f.Why)
		}
	}
	out.paragraph("  ", "> is shown in full below. The slow case is what light, endurance and the alarm use: as far as the "+
		"spread of the ride can be trusted, one run in twenty is slower. \"rides\" is the share of the waves short enough to be ridden that are high enough "+
		"to be caught. A limit that is met is only that: your own limit, met by an estimate.")
}

// withinWords lists the departures that keep every limit, neighbours as a
// span.
func (p *made) withinWords() string {
	if len(p.appraisals[p.best].Findings) == 0 {
		return "Set limits in paddler.json to have the departures compared with them; -h names a few."
	}
	var spans []string
	n := 0
	for i := 0; i < len(p.appraisals); i++ {
		if p.appraisals[i].State != passage.Met {
			continue
		}
		j := i
		for j+1 < len(p.appraisals) && p.appraisals[j+1].State == passage.Met {
			j++
		}
		s := p.stamp(p.appraisals[i].Depart)
		if j > i {
			s += " to " + p.clock(p.appraisals[j].Depart)
		}
		spans = append(spans, s)
		n += j - i + 1
		i = j
	}
	if n == 0 {
		return fmt.Sprintf("None of the %d departures keeps all of them.", len(p.appraisals))
	}
	return fmt.Sprintf("Of %d departures %d keep all of them: %s.", len(p.appraisals), n, strings.Join(spans, ", "))
}

// manyDays reports whether the departures are of more than one day.
func (p *made) manyDays() bool {
	first, last := p.appraisals[0].Depart.In(p.options.zone), p.appraisals[len(p.appraisals)-1].Depart.In(p.options.zone)
	return first.YearDay() != last.YearDay() || first.Year() != last.Year()
}

// stamp is a time with its day where the departures are of several.
func (p *made) stamp(t time.Time) string {
	if p.manyDays() {
		return t.In(p.options.zone).Format("Mon 2 15:04")
	}
	return p.clock(t)
}

func limitWords(f passage.Finding) string {
	if f.Rule.Unit() == "bool" {
		return ""
	}
	return quantity(f.Rule, f.Limit)
}

// findingWords says a finding with its value, its amount, its place and time.
func (p *made) findingWords(f passage.Finding) string {
	var s string
	switch {
	case f.Rule.Unit() == "bool":
		s = f.Rule.Words() + ": " + quantity(f.Rule, f.Value)
	case f.Rule == passage.GreatestTimeToExit && math.IsInf(f.Value, 1):
		s = f.Rule.Words() + " " + limitWords(f) + ": no exit is open"
	case f.Rule == passage.LeastDaylight && f.Value < 0 && f.Along != 0:
		s = f.Rule.Words() + " " + limitWords(f) + ": dark " + span(-f.Value) + " h before the slow case arrives"
	default:
		s = f.Rule.Words() + " " + limitWords(f) + ": " + quantity(f.Rule, f.Value)
		if !math.IsInf(f.Margin, 0) {
			side := " over"
			if f.Rule.AtLeast() {
				side = " short"
			}
			by := quantity(f.Rule, math.Abs(f.Margin))
			if strings.Trim(by[:strings.IndexAny(by+" ", " ")], "0.:") == "" {
				by = "just"
			}
			s += ", " + by + side
		}
	}
	if !f.Time.IsZero() {
		s += ", at " + p.clock(f.Time)
	}
	if f.Along == f.Along {
		s += fmt.Sprintf(", km %.1f", f.Along/1000)
	}
	if f.Why != "" {
		s += " (" + f.Why + ")"
	}
	return s
}

func (p *made) writeTimeline(out page) {
	a := p.appraisals[p.best]
	out.head("Start at " + p.clock(a.Depart) + ", leg by leg")
	switch a.State {
	case passage.Met:
		if len(a.Findings) == 0 {
			out.line("  No limits are set: this is the first departure that arrives.")
			break
		}
		for _, f := range a.Findings {
			if f.Rule == a.Closest {
				out.paragraph("  ", fmt.Sprintf("Every limit you set is met on these estimates; the closest: %s %s, estimated %s.",
					f.Rule.Words(), limitWords(f), quantity(f.Rule, f.Value)))
			}
		}
	default:
		out.paragraph("  ", "No departure is within all your limits; of all this one breaks the fewest, then leaves the fewest unknown.")
	}
	for _, l := range p.legs {
		m := l.Middle
		out.line("")
		out.line("  Leg %d  %s to %s  %.1f km on %s  at %s kn over the ground", l.Number, p.clock(l.Enter), p.clock(l.Leave), l.Length/1000, bearing(l.Course), kn(l.Made))
		out.line("    steer     %s; wind %s off the stern %s", p.headingWords(m.Heading), number(m.OffStern, 0)+" deg", p.sideWords(m))
		gust := ""
		if m.Wind.GustKnown() {
			gust = ", gusts " + kn(m.Wind.Gust)
		}
		if m.WindLow.Speed < m.WindHigh.Speed {
			gust += fmt.Sprintf("; on this leg %s to %s kn", kn(m.WindLow.Speed), kn(m.WindHigh.Speed))
		}
		out.line("    wind      %s kn from %s%s", kn(m.Wind.Speed), bearing(m.Wind.From), gust)
		if m.Sea.Hs > 0 {
			out.paragraph("    wind sea  ", fmt.Sprintf("%s m high%s, %s s, from %s, %s; bumps %s m long run at %s kn, steepness %s",
				number(m.Sea.Hs, 2), lawWords(m), number(m.Sea.Tp, 1), bearing(m.Sea.From), limitedBy(m.Sea.Limit), number(m.Bump.Length, 0), kn(m.Bump.PhaseSpeed), steepWords(m)))
		} else if m.Sea.Hs == 0 {
			out.line("    wind sea  none")
		} else {
			out.line("    wind sea  unknown")
		}
		if m.Old.Hs >= 0.1 {
			out.line("    old sea   %s m, %s s, from %s", number(m.Old.Hs, 2), number(m.Old.Tp, 1), bearing(m.Old.From))
		}
		for _, s := range m.Swell {
			out.line("    swell     %s m, %s s, from %s, %s to the course, crests at %s kn", number(s.Hs, 1), number(s.Tp, 1), bearing(s.From),
				number(math.Abs(angle.Diff(s.From+180, m.Course)), 0)+" deg", kn(p.water.SwellSpeed(m, s)))
		}
		out.line("    water     %s, %s", depthWords(m), streamSets(m))
		p.writeBumps(out, m)
	}
}

func steepWords(m passage.Moment) string {
	if m.Steepness != m.Steepness {
		return "unknown"
	}
	return number(m.Steepness, 3)
}

func depthWords(m passage.Moment) string {
	switch {
	case m.Depth == m.Depth:
		return fmt.Sprintf("depth %s m (tide %s m)", number(m.Depth, 1), number(m.TideHeight, 1))
	case m.TideHeight == m.TideHeight:
		return fmt.Sprintf("depth unknown (tide %s m)", number(m.TideHeight, 1))
	}
	return "depth and tide unknown"
}

func streamSets(m passage.Moment) string {
	v := m.Stream.Speed()
	switch {
	case v != v:
		return "stream unknown"
	case v < 0.05*route.Knot:
		return "no stream"
	}
	return fmt.Sprintf("stream %s kn setting %s", kn(v), bearing(m.Stream.Toward()))
}

// lawWords is the band of the growth laws that cannot be told apart.
func lawWords(m passage.Moment) string {
	if !(m.SeaLow < m.SeaHigh) {
		return ""
	}
	return fmt.Sprintf(" (%s to %s by other laws)", number(m.SeaLow, 2), number(m.SeaHigh, 2))
}

// limitedBy says what stopped the growth of a sea.
func limitedBy(l wind.Limit) string { return "limited by " + l.String() }

// sideWords says on which side the wind is, standing on the board facing
// ahead.
func (p *made) sideWords(m passage.Moment) string {
	d := angle.Diff(m.Course+180, m.Wind.From)
	switch {
	case d != d:
		return ""
	case math.Abs(d) < 3:
		return "(from astern)"
	case math.Abs(d) > 90 && d > 0:
		return "(from ahead, on the left)"
	case math.Abs(d) > 90:
		return "(from ahead, on the right)"
	case d > 0:
		return "(over the left shoulder)"
	}
	return "(over the right shoulder)"
}

// headingWords writes a heading, true and magnetic where the variation is
// known.
func (p *made) headingWords(h float64) string {
	if h != h {
		return "the course cannot be held"
	}
	s := bearing(h) + " true"
	if v, ok := p.paddler.Variation.East.Get(); ok {
		s += ", " + bearing(h-v) + " magnetic"
	}
	return s
}

// writeBumps says which bumps can be caught.
func (p *made) writeBumps(out page, m passage.Moment) {
	if m.Speed != m.Speed {
		out.line("    bumps     unknown")
		return
	}
	r := m.Ride
	out.line("    board     %s kn through the water (%s to %s), %s on flat water in this wind", kn(m.Speed), kn(m.Slow), kn(m.Fast), kn(r.FlatSpeed))
	if r.LongestPeriod == 0 || r.CatchesPerHour == 0 {
		out.line("    bumps     none that can be held")
	} else {
		held := fmt.Sprintf("held up to %s s (%s kn)", number(r.LongestPeriod, 1), kn(r.LongestCelerity))
		if r.LongestPeriod >= 25 { // where the water is shallow no wave is too fast
			held = fmt.Sprintf("held whatever their period (to %s kn)", kn(r.LongestCelerity))
		}
		out.paragraph("    bumps     ", fmt.Sprintf("%s; %.0f an hour caught, each for %s s at %s kn; on a face %.0f%% of the time",
			held, r.CatchesPerHour, number(r.Life, 0), kn(r.RidingSpeed), 100*r.RidingShare))
	}
	if m.Sea.Hs > 0 && m.Bump.PhaseSpeed > r.LongestCelerity && r.LongestCelerity > 0 {
		out.line("              the dominant bumps outrun the board: ride the shorter ones between them")
	}
	p.writeRemarks(out, m)
}

// writeRemarks says under what conditions the numbers of a moment are less
// than they seem.
func (p *made) writeRemarks(out page, m passage.Moment) {
	for _, r := range p.remarks(m) {
		out.paragraph("    note      ", r)
	}
}

func (p *made) writeLight(out page) {
	a := p.appraisals[p.best]
	out.head("Light")
	dawn, dusk := p.water.Light(a.Depart)
	if dusk.IsZero() {
		out.line("  No civil twilight on this day at the finish.")
		return
	}
	day, err := route.Daylight(p.in.run.Points[len(p.in.run.Points)-1], a.Depart.In(p.options.zone))
	set := "-"
	if err == nil && day.Sunset.State == route.Happens {
		set = p.clock(day.Sunset.Time)
	}
	out.line("  Light enough from %s; sunset %s; last light (end of civil twilight) %s.", p.clock(dawn), set, p.clock(dusk))
	if !a.Late.IsZero() {
		out.line("  The slow case leaves %s h of it.", span(dusk.Sub(a.Late).Seconds()))
	}
}

func (p *made) writeCautions(out page) {
	out.head("Cautions")
	for _, s := range cautions {
		out.paragraph("  - ", s)
	}
}

var cautions = []string{
	"These are estimates. Growth laws differ from one another and from the sea by a tenth to a third in height; a forecast errs more than that. The ride has no published source; its spread is printed.",
	"Compare with what you see before you start and on the way. If the water differs from the plan, the water is right.",
	"Local rules, official warnings, the coastguard, harbour masters, licensed instructors and skippers come before anything printed here.",
	"Wear a leash and flotation, dress for the water, carry two ways to call for help that work wet, stay with the board.",
	"Leave word ashore with a time at which help is called, and close it when you are off the water.",
}
