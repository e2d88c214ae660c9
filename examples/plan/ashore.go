package main

import (
	"bytes"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"time"
	"unicode"

	"followingsea.example/route"
	"followingsea.example/route/passage"
)

// formFile holds what only the paddlers can say of the plan they leave ashore.
const formFile = "ashore.json"

// loadForm reads the form, if there is one: what it does not say is a blank on
// the paper.
func (in *inputs) loadForm(dir fs.FS) error {
	_, err := in.optional(dir, formFile, "", func(r io.Reader) (err error) { in.form, err = passage.ReadForm(r); return })
	return err
}

// leave makes the plan to be left ashore of the departure shown in full.
func (p *made) leave() error {
	var err error
	p.ashore, err = p.water.Ashore(p.appraisals[p.best].Depart, p.in.form, p.options.now)
	return err
}

// writeFiles writes the files that the options ask for.
func (p *made) writeFiles() error {
	o := p.options
	for _, f := range []struct {
		option, name string
		write        func(io.Writer) error
	}{
		{"-ashore", o.ashore, func(w io.Writer) error { return passage.WriteAshore(w, p.ashore, o.zone) }},
		{"-ics", o.ics, p.writeCalendar},
		{"-gpx", o.gpx, p.writeTrack},
	} {
		if f.name == "" {
			continue
		}
		var b bytes.Buffer // nothing is written of a file that cannot be made
		if err := f.write(&b); err != nil {
			return fmt.Errorf("%w %s: %w", errUse, f.option, err)
		}
		if err := os.WriteFile(f.name, b.Bytes(), 0o644); err != nil {
			return fmt.Errorf("%w %s: %w", errUse, f.option, err)
		}
	}
	return nil
}

func (p *made) writeCalendar(w io.Writer) error {
	e, err := p.ashore.Event(p.identifier(), 0, p.options.now, p.options.zone)
	if err != nil {
		return err
	}
	return passage.WriteCalendar(w, e)
}

// identifier is the same for every plan of a run that starts at an instant, so
// that a plan made again takes the place of the one before it.
func (p *made) identifier() string {
	name := strings.Map(func(r rune) rune {
		switch {
		case unicode.IsLetter(r) || unicode.IsDigit(r):
			return unicode.ToLower(r)
		case unicode.IsSpace(r):
			return '-'
		}
		return -1
	}, p.in.run.Name)
	return fmt.Sprintf("%s-%s@followingsea.example", name, p.ashore.Start.UTC().Format("20060102T1504Z"))
}

// writeTrack writes the planned track: GPX, or GeoJSON by the ending of the
// file's name.
func (p *made) writeTrack(w io.Writer) error {
	t, err := p.water.Track(p.ashore.Start, 0)
	if err != nil {
		return err
	}
	if strings.HasSuffix(p.options.gpx, ".geojson") || strings.HasSuffix(p.options.gpx, ".json") {
		return route.WriteTracks(w, []route.Track{t})
	}
	return route.WriteTracksGPX(w, []route.Track{t})
}

// writeAshore says in short what is left ashore.
func (p *made) writeAshore(out page) {
	out.head("To leave ashore")
	a := p.ashore
	if a.Alarm.IsZero() {
		out.paragraph("  ! ", "There is no alarm time: "+a.Ends+". Nobody ashore could know when to call for help.")
		return
	}
	out.line("  Expected %s, latest %s, alarm at %s (%s).", p.clock(a.Expected), p.clock(a.Latest), p.clock(a.Alarm), zoneWords(a.Alarm.In(p.options.zone)))
	if a.Placing.Leave.IsZero() {
		out.paragraph("  ", fmt.Sprintf("Placing the vehicle: say in %s how many minutes it takes (shuttle_min); %.1f km in a straight line is no road and no time.",
			formFile, a.Placing.Straight/1000))
	} else {
		out.line("  Placing the vehicle takes %s h by your own word: begin by %s.", span(a.Placing.Seconds.Number()), p.clock(a.Placing.Leave))
	}
	if missing := p.missing(); len(missing) > 0 {
		out.paragraph("  ! ", "Blank on the paper, until "+formFile+" or a pen says it: "+strings.Join(missing, ", ")+".")
	}
	out.paragraph("  ", "The whole of it: -ashore FILE for the paper, -ics FILE for a calendar that sounds the alarm, -gpx FILE for the track.")
}

// missing lists what a search would miss most.
func (p *made) missing() []string {
	f := p.in.form
	var out []string
	for _, x := range []struct {
		name  string
		given bool
	}{
		{"the leader's name and telephone", f.Leader.Name != "" && f.Leader.Phone != ""},
		{"the boards and their colours", len(f.Craft) > 0},
		{"two shore contacts", len(f.Contacts) > 1},
		{"the number of the rescue authority", f.Authority.Phone != ""},
	} {
		if !x.given {
			out = append(out, x.name)
		}
	}
	return out
}

// writeVisits says when which area is entered and left.
func (p *made) writeVisits(out page) {
	visits, err := p.water.Visits(p.appraisals[p.best].Depart)
	if err != nil || len(visits) == 0 {
		return
	}
	out.head("Areas on the way")
	for _, v := range visits {
		out.line("  %-10s %-20s km %4.1f to %4.1f   in %s, out %s (%s to %s)%s", v.Kind, v.Name, v.Enter/1000, v.Leave/1000,
			p.clock(v.In), p.clock(v.Out), p.clock(v.Earliest), p.clock(v.Latest), note(v.Note))
	}
}

// seen reads what is observed at the launch.
func seen(s string) (passage.Observed, error) {
	var o passage.Observed
	if s == "" {
		return o, nil
	}
	bad := func(f string) error {
		return fmt.Errorf("%w -seen: %q: want what is seen at the launch, such as wind=18kn,from=250,sea=1.2m,late=20m", errUse, f)
	}
	for _, f := range strings.Split(s, ",") {
		name, value, _ := strings.Cut(strings.TrimSpace(f), "=")
		number := func(unit string, scale float64) (passage.Value, error) {
			var x float64
			text := strings.TrimSuffix(value, unit)
			if n, err := fmt.Sscanf(text+" ", "%g ", &x); n != 1 || err != nil || strings.ContainsAny(text, " naN") {
				return passage.Value{}, bad(f)
			}
			return passage.Known(x * scale), nil
		}
		var err error
		switch name {
		case "wind":
			o.Wind, err = number("kn", route.Knot)
		case "from":
			o.From, err = number("deg", 1)
		case "sea":
			o.Sea, err = number("m", 1)
		case "late":
			var d time.Duration
			if d, err = time.ParseDuration(value); err != nil {
				return o, bad(f)
			}
			o.Late = passage.Known(d.Seconds())
		default:
			err = bad(f)
		}
		if err != nil {
			return o, err
		}
	}
	return o, nil
}
