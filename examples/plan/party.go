package main

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/wind"
)

// prepare makes a run ready for one paddler or for a party.
func (in *inputs) prepare(run route.Run, day passage.Day, o options, from, to time.Time) (*passage.Water, error) {
	where := passage.Options{From: from, To: to}
	day.Wind = slices.Clone(day.Wind)
	for i := range day.Wind {
		day.Wind[i].Series = around(day.Wind[i].Series, from, to)
	}
	if len(in.party) == 1 {
		return passage.Prepare(run, day, in.party[0], where)
	}
	return passage.PrepareParty(run, day, passage.Party{Paddlers: in.party, Regroup: o.regroup}, where)
}

// history is how much of the wind before the departures raises the sea: more
// than any sea takes to grow; and ahead how much after them is looked at.
const (
	history = 14 * 24 * time.Hour
	ahead   = 10 * 24 * time.Hour
)

// around is the part of a record that matters to departures. A record that has
// nothing there stays as it is.
func around(s wind.Series, from, to time.Time) wind.Series {
	start, end := s.Start(), s.End()
	if t := from.Add(-history); t.After(start) {
		start = t
	}
	if t := to.Add(ahead); t.Before(end) {
		end = t
	}
	if part, err := s.Between(start, end); err == nil && part.Len() > 0 {
		return part
	}
	return s
}

// kilometres reads a list of distances along the run.
func kilometres(option, s string) ([]float64, error) {
	var out []float64
	for _, f := range strings.Split(s, ",") {
		x, err := strconv.ParseFloat(strings.TrimSpace(f), 64)
		if err != nil || !(x > 0 && x < 1000) || len(out) > 0 && !(x*1000 > out[len(out)-1]) {
			return nil, fmt.Errorf("%w %s: %q: want distances along the run in km, in order, such as 5,9", errUse, option, s)
		}
		out = append(out, x*1000)
	}
	return out, nil
}

// together is what there is to say of a party.
type together struct {
	meetings []passage.Meeting
	spread   float64 // m between the first and the last after an hour; NaN when not known
}

func (p *made) meet() (together, error) {
	t := together{spread: math.NaN()}
	if len(p.in.party) < 2 {
		return t, nil
	}
	depart := p.appraisals[p.best].Depart
	var err error
	if t.meetings, err = p.water.Meetings(depart); err != nil {
		return t, err
	}
	t.spread, err = p.water.SpreadAfter(depart, 3600)
	return t, err
}

// names lists who goes.
func (in *inputs) names() []string {
	var out []string
	for i, p := range in.party {
		name := p.Name
		if name == "" {
			name = "paddler " + strconv.Itoa(i+1)
		}
		out = append(out, name)
	}
	return out
}

func (p *made) writeParty(out page) {
	if len(p.in.party) < 2 {
		return
	}
	out.head("The party")
	names := p.in.names()
	for i, who := range p.in.party {
		if who.Leader {
			names[i] += " (leads)"
		}
	}
	out.paragraph("  ", strings.Join(names, ", ")+". The party keeps together: it goes as fast as whoever is slowest, and of each limit the tightest counts.")
	names = p.in.names()
	for _, m := range p.together.meetings {
		var parts []string
		for i, t := range m.Arrive {
			parts = append(parts, names[i]+" "+p.clock(t))
		}
		where := fmt.Sprintf("Regroup at km %.1f", m.Along/1000)
		if m.Along >= p.water.Length()-1 {
			where = "Finish"
		}
		wait := ""
		if m.Wait == m.Wait {
			wait = fmt.Sprintf("; the first waits %s h, and is then %.1f km ahead", span(m.Wait), m.Spread/1000)
		}
		out.paragraph("  ", where+", each at their own speed: "+strings.Join(parts, ", ")+wait+".")
	}
	if s := p.together.spread; s == s {
		out.line("  If nobody waits, an hour after the start they are spread over %.1f km.", s/1000)
	}
}

// jsonTogether is the party in JSON.
type jsonTogether struct {
	Names    []string      `json:"names"`
	Spread   optional      `json:"spread_after_an_hour_m"`
	Meetings []jsonMeeting `json:"meetings"`
}

type jsonMeeting struct {
	Along  optional  `json:"along_m"`
	Leave  instant   `json:"leave"`
	Arrive []instant `json:"arrive"`
	Wait   optional  `json:"wait_s"`
	Spread optional  `json:"spread_m"`
}

func (p *made) jsonParty() *jsonTogether {
	if len(p.in.party) < 2 {
		return nil
	}
	j := &jsonTogether{Names: p.in.names(), Spread: optional(p.together.spread)}
	for _, m := range p.together.meetings {
		x := jsonMeeting{Along: optional(m.Along), Leave: instant(m.Leave), Wait: optional(m.Wait), Spread: optional(m.Spread)}
		for _, t := range m.Arrive {
			x.Arrive = append(x.Arrive, instant(t))
		}
		j.Meetings = append(j.Meetings, x)
	}
	return j
}
