package main

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/signal"
	"strings"
	"time"

	"followingsea.example/route/passage"
)

// A choice is the answer of -search: which run, and when.
type choice struct {
	in      *inputs
	options options
	names   []string // of the runs
	members int
	starts  []time.Time
	ranking *passage.Ranking
	best    []passage.Prospect // the best of each run and day, in their order
}

// search appraises every departure by daylight of every run in every member
// of the forecast. An interrupt ends it.
func search(in *inputs, o options, stderr io.Writer) (*choice, error) {
	c := &choice{in: in, options: o}
	var err error
	if c.starts, err = in.daylightStarts(o); err != nil {
		return nil, err
	}
	asked := passage.Choices{Days: in.days(c.starts), Departures: c.starts, Party: passage.Party{Paddlers: in.party}, Progress: progress(stderr)}
	for _, r := range in.runs {
		if o.run != "" && r.file != in.runFile {
			continue
		}
		asked.Runs = append(asked.Runs, passage.Candidate{Run: r.run})
		c.names = append(c.names, r.name)
	}
	c.members = len(asked.Days)
	ctx, done := signal.NotifyContext(context.Background(), os.Interrupt)
	defer done()
	if c.ranking, err = passage.Search(ctx, asked); err != nil {
		return nil, err
	}
	seen := map[string]bool{}
	for _, p := range c.ranking.Best(passage.ByMargin, c.ranking.Len()) {
		if key := fmt.Sprint(p.Run, c.day(p)); !seen[key] {
			seen[key] = true
			c.best = append(c.best, p)
		}
	}
	return c, nil
}

func (c *choice) day(p passage.Prospect) string {
	return p.Depart.In(c.options.zone).Format("Mon 2 Jan")
}

// progress tells of long work every few seconds.
func progress(w io.Writer) func(done, total int) {
	last := time.Now()
	return func(done, total int) {
		if time.Since(last) > 5*time.Second {
			last = time.Now()
			fmt.Fprintf(w, "plan: %d of %d appraisals\n", done, total)
		}
	}
}

// days returns the day in each member of the forecast.
func (in *inputs) days(starts []time.Time) []passage.Day {
	members := in.members
	if len(members) == 0 && in.hasWind {
		members = []member{{wind: in.wind}}
	}
	if len(members) == 0 {
		return []passage.Day{in.day}
	}
	var out []passage.Day
	for _, m := range members {
		d := in.day
		d.Wind = []passage.Anemometer{{At: in.run.Points[0], Series: around(m.wind, starts[0], starts[len(starts)-1])}}
		out = append(out, d)
	}
	return out
}

// week is how much of a record of other days is searched when nothing is asked.
const week = 7 * 24 * time.Hour

// daylightStarts lists the departures of a search: those by civil daylight
// between the first and the last that the options ask for, or else from today to
// the end of the wind; where the wind is not of today, those of its last week.
func (in *inputs) daylightStarts(o options) ([]time.Time, error) {
	if in.hasWind {
		start, end := in.wind.Start(), in.wind.End()
		for _, m := range in.members {
			if m.wind.End().After(end) {
				end = m.wind.End()
			}
		}
		if o.from == "" {
			first := o.now
			switch {
			case o.data == "":
				first = demoDay
			case first.Before(start) || first.After(end):
				if first = end.Add(-week); first.Before(start) {
					first = start
				}
			}
			if latest := first.Add(longestSpan - 24*time.Hour); o.to == "" && end.After(latest) {
				end = latest
			}
			o.from = first.In(o.zone).Format("2006-01-02")
		}
		if o.to == "" {
			o.to = end.Format(time.RFC3339)
		}
	}
	from, to, err := departures(in, o)
	if err != nil {
		return nil, err
	}
	var out []time.Time
	for t := from; !t.After(to); t = t.Add(o.step) {
		dawn, dusk, err := in.lightOf(t, o)
		if err != nil {
			return nil, err
		}
		if !t.Before(dawn) && !t.After(dusk) {
			out = append(out, t)
		}
		if len(out) > 20*mostDepartures {
			return nil, fmt.Errorf("%w -step: %v makes more than %d departures", errUse, o.step, 20*mostDepartures)
		}
	}
	if len(out) == 0 {
		return nil, fmt.Errorf("%w -from, -to: no departure by daylight between %s and %s", errUse, longClock(from, o), longClock(to, o))
	}
	return out, nil
}

// mostRows is the number of rows of the table of a search.
const mostRows = 14

func (c *choice) write(w io.Writer) error {
	out := newPage(w)
	out.line("WHICH RUN, AND WHEN")
	if c.options.data == "" {
		out.line("Demonstration: the coast, the names, the weather and the tide are invented.")
	}
	out.paragraph("", "Times are "+zoneWords(c.starts[0].In(c.options.zone))+".")
	out.line("")
	forecasts := "the one forecast there is: without members nothing can be said of its odds"
	if len(c.in.members) > 0 {
		forecasts = fmt.Sprintf("%d forecasts of the ensemble", c.members)
	}
	out.paragraph("  ", fmt.Sprintf("%s; %s by daylight from %s to %s; in %s.", count(len(c.names), "run"), count(len(c.starts), "departure"),
		c.long(c.starts[0]), c.long(c.starts[len(c.starts)-1]), forecasts))
	for _, n := range c.in.notes {
		out.paragraph("  ! ", n)
	}
	if len(c.best) == 0 {
		return out.w.Flush()
	}
	first := c.best[0]
	if len(first.Limits) == 0 {
		out.paragraph("  ! ", "No limits are set: nothing is compared, and the order is that of the ride.")
	}
	out.head("The best of each run and day")
	out.line("  %-28s %-16s %-10s %-10s %-12s %s", "run", "start", "within all", "broken in", "rides", "takes")
	for i, p := range c.best {
		if i == mostRows {
			out.line("  and %d more runs and days; -json has them all", len(c.best)-mostRows)
			break
		}
		out.line("  %-28s %-16s %-10s %-10s %-12s %s", clipped(c.runName(p.Run), 28), c.long(p.Depart), c.of(p.All.Met), c.of(p.All.Broken),
			percents(p.Rideable), hours(p.Duration))
		switch {
		case len(p.Lost()) > 0:
			out.paragraph("      ", lostWords(p, c.members))
		case len(p.Limits) > 0:
			out.paragraph("      ", fmt.Sprintf("all limits kept; the closest: %s, %s comfortable steps inside", p.Closest.Words(), number(p.Margin.Middle, 1)))
		}
	}
	out.head("What that means")
	if first.All.Met == 0 && len(first.Limits) > 0 {
		out.paragraph("  ", "No run and no departure is within all your limits in any forecast.")
	}
	out.paragraph("  ", fmt.Sprintf("\"Within all\" counts the forecasts in which every limit you set is met; an unknown counts against. "+
		"Members of an ensemble agree more than they should: %s is the forecast's own odds, no better than it is. "+
		"\"rides\" and \"takes\" are the lowest, middle and highest over the forecasts in which they are known.", c.of(first.All.Met)))
	out.paragraph("  ", "A run loses where its limits are broken in more forecasts; among equals the margin to the closest limit decides, then the ride. "+
		"A comfortable step is what counts as clearly more: 4 kn of wind, 10 min to an exit, 0.3 m of sea.")
	out.paragraph("  ", fmt.Sprintf("The plan of the first: %s-run %s -from %s", c.command(), c.names[first.Run], first.Depart.In(c.options.zone).Format("2006-01-02")))
	return out.w.Flush()
}

// command is how the program was asked, as far as a plan needs it.
func (c *choice) command() string {
	s := ""
	if c.options.data != "" {
		s += "-data " + c.options.data + " -tz " + c.options.zoneName + " "
	}
	if c.options.party {
		s += "-party "
	}
	if c.options.lake {
		s += "-lake "
	}
	return s
}

func (c *choice) long(t time.Time) string { return t.In(c.options.zone).Format("Mon 2 Jan 15:04") }

func (c *choice) of(n int) string { return fmt.Sprintf("%d of %d", n, c.members) }

func (c *choice) runName(i int) string {
	for _, r := range c.in.runs {
		if r.name == c.names[i] && r.run.Name != "" {
			return r.run.Name
		}
	}
	return c.names[i]
}

// lostWords names the limits that are not met in every member, those first
// that are broken in the most.
func lostWords(p passage.Prospect, members int) string {
	var parts []string
	for _, what := range []struct {
		word string
		of   func(passage.Odds) int
	}{{"broken", func(o passage.Odds) int { return o.Broken }}, {"unknown", func(o passage.Odds) int { return o.Unknown }}} {
		for n := members; n > 0; n-- {
			var rules []string
			for _, o := range p.Limits {
				if what.of(o) == n {
					rules = append(rules, o.Rule.Words())
				}
			}
			if rules != nil {
				parts = append(parts, fmt.Sprintf("%s in %d: %s", what.word, n, strings.Join(rules, ", ")))
			}
		}
	}
	if p.Arrives < members {
		parts = append(parts, fmt.Sprintf("not known to arrive in %d", members-p.Arrives))
	}
	return strings.Join(parts, "; ")
}

func count(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}

func percents(r passage.Range) string {
	if r.Known == 0 {
		return "-"
	}
	return fmt.Sprintf("%.0f %.0f %.0f%%", 100*r.Low, 100*r.Middle, 100*r.High)
}

func hours(r passage.Range) string {
	if r.Known == 0 {
		return "-"
	}
	return fmt.Sprintf("%s %s %s h", span(r.Low), span(r.Middle), span(r.High))
}

// The answer of -search as JSON.
type (
	jsonSearch struct {
		Schema     int            `json:"schema"`
		Invented   bool           `json:"invented"`
		Zone       string         `json:"zone"`
		Notes      []string       `json:"notes"`
		Runs       []jsonNamed    `json:"runs"`
		Members    []string       `json:"members"`
		Departures []instant      `json:"departures"`
		Best       []jsonProspect `json:"best_of_run_and_day"` // in their order
		Cautions   []string       `json:"cautions"`
	}
	jsonNamed struct {
		Name  string `json:"name"`
		Title string `json:"title"`
	}
	jsonProspect struct {
		Run      string     `json:"run"`
		Depart   instant    `json:"depart"`
		Met      int        `json:"met"`
		Broken   int        `json:"broken"`
		Unknown  int        `json:"unknown"`
		Arrives  int        `json:"arrives"`
		Limits   []jsonOdds `json:"limits"`
		Margin   jsonRange  `json:"margin_steps"`
		Closest  string     `json:"closest"`
		Rideable jsonRange  `json:"rideable_share"`
		Duration jsonRange  `json:"duration_s"`
		Late     jsonRange  `json:"slow_case_s"`
		Why      string     `json:"why_behind_the_first,omitempty"`
	}
	jsonOdds struct {
		Rule    string `json:"rule"`
		Met     int    `json:"met"`
		Broken  int    `json:"broken"`
		Unknown int    `json:"unknown"`
	}
	jsonRange struct {
		Low    optional `json:"low"`
		Middle optional `json:"middle"`
		High   optional `json:"high"`
		Known  int      `json:"known"`
	}
)

func rangeOf(r passage.Range) jsonRange {
	return jsonRange{optional(r.Low), optional(r.Middle), optional(r.High), r.Known}
}

func (c *choice) writeJSON(w io.Writer) error {
	out := jsonSearch{Schema: schema, Invented: c.options.data == "", Zone: c.options.zone.String(), Notes: c.in.notes, Cautions: cautions}
	for i, n := range c.names {
		out.Runs = append(out.Runs, jsonNamed{n, c.runName(i)})
	}
	for _, m := range c.in.members {
		out.Members = append(out.Members, m.name)
	}
	for _, t := range c.starts {
		out.Departures = append(out.Departures, instant(t))
	}
	for i, p := range c.best {
		j := jsonProspect{Run: c.names[p.Run], Depart: instant(p.Depart), Met: p.All.Met, Broken: p.All.Broken, Unknown: p.All.Unknown, Arrives: p.Arrives,
			Margin: rangeOf(p.Margin), Closest: p.Closest.String(), Rideable: rangeOf(p.Rideable), Duration: rangeOf(p.Duration), Late: rangeOf(p.Late)}
		for _, o := range p.Limits {
			j.Limits = append(j.Limits, jsonOdds{o.Rule.String(), o.Met, o.Broken, o.Unknown})
		}
		if i > 0 {
			j.Why = p.Why(c.best[0])
		}
		out.Best = append(out.Best, j)
	}
	e := json.NewEncoder(w)
	e.SetIndent("", " ")
	e.SetEscapeHTML(false)
	return e.Encode(out)
}
