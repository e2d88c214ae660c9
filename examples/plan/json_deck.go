package main

import (
	"math"

	"followingsea.example/route/passage"
)

// What the text prints for the deck, the launch and the shore, as JSON; +Inf
// for "no change tried breaks it" becomes null.
type (
	jsonArea struct {
		Kind     string   `json:"kind"`
		Name     string   `json:"name"`
		Note     string   `json:"note,omitempty"`
		Enter    optional `json:"enter_m"`
		Leave    optional `json:"leave_m"`
		In       instant  `json:"in"`
		Out      instant  `json:"out"`
		Earliest instant  `json:"earliest"`
		Latest   instant  `json:"latest"`
	}
	jsonGate struct {
		Along     optional     `json:"along_m"`
		Point     jsonPoint    `json:"point"`
		Expected  instant      `json:"expected"`
		Latest    instant      `json:"latest"`
		Slack     optional     `json:"slack_s"`
		Decides   *jsonFinding `json:"decides,omitempty"`
		Why       string       `json:"why,omitempty"`
		LeastMade optional     `json:"least_made_good_m_s"`
		WindLeft  optional     `json:"wind_from_at_least_deg"`
		WindRight optional     `json:"wind_from_at_most_deg"`
		Crests    string       `json:"sea_expected,omitempty"`
		TooMuch   string       `json:"sea_too_much,omitempty"`
		TooLittle string       `json:"sea_too_little,omitempty"`
		Exit      string       `json:"exit,omitempty"`
		Seconds   optional     `json:"exit_s"`
		Heading   optional     `json:"exit_heading_deg"`
	}
	jsonStand struct {
		Rule     string   `json:"rule"`
		Stronger optional `json:"stronger_m_s"`
		Lighter  optional `json:"lighter_m_s"`
		Veered   optional `json:"veered_deg"`
		Backed   optional `json:"backed_deg"`
		Later    optional `json:"later_s"`
	}
	jsonLaunch struct {
		Turn   optional      `json:"wind_turned_deg"`
		More   optional      `json:"wind_more_m_s"`
		Sea    optional      `json:"sea_of_forecast"`
		Before jsonDeparture `json:"before"`
		After  jsonDeparture `json:"after"`
	}
	jsonAshore struct {
		Expected instant  `json:"expected"`
		Latest   instant  `json:"latest"`
		Alarm    instant  `json:"alarm"`
		Ends     string   `json:"ends,omitempty"`
		Begin    instant  `json:"begin_placing_vehicle"`
		Blank    []string `json:"blank"`
	}
)

func findingOf(f passage.Finding) jsonFinding {
	return jsonFinding{f.Rule.String(), f.Rule.Unit(), f.State.String(), optional(f.Value), optional(f.Limit),
		optional(f.Margin), optional(f.Along), instant(f.Time), f.Why}
}

func (p *made) jsonAreas() ([]jsonArea, error) {
	visits, err := p.water.Visits(p.appraisals[p.best].Depart)
	var out []jsonArea
	for _, v := range visits {
		out = append(out, jsonArea{string(v.Kind), v.Name, v.Note, optional(v.Enter), optional(v.Leave), instant(v.In), instant(v.Out), instant(v.Earliest), instant(v.Latest)})
	}
	return out, err
}

func (p *made) jsonDeck() []jsonGate {
	var out []jsonGate
	for _, g := range p.deck.Gates {
		j := jsonGate{Along: optional(g.Along), Point: pointOf(g.At), Expected: instant(g.Expected), Latest: instant(g.Latest), Slack: optional(g.Slack), Why: g.Why,
			LeastMade: optional(g.LeastMade), WindLeft: optional(g.WindLeft), WindRight: optional(g.WindRight), Crests: g.Crests, TooMuch: g.TooMuch, TooLittle: g.TooLittle,
			Seconds: optional(math.NaN()), Heading: optional(math.NaN())}
		if g.Limited {
			f := findingOf(g.Decides)
			j.Decides = &f
		}
		if g.HasExit {
			j.Exit, j.Seconds, j.Heading = g.Exit.Exit.Name, optional(g.Exit.Seconds), optional(g.Exit.Heading)
		}
		out = append(out, j)
	}
	return out
}

func (p *made) jsonStands() []jsonStand {
	var out []jsonStand
	for _, t := range p.stands {
		out = append(out, jsonStand{t.Finding.Rule.String(), optional(t.Stronger.Breaks), optional(t.Lighter.Breaks), optional(t.Veered.Breaks),
			optional(t.Backed.Breaks), optional(t.Later.Breaks)})
	}
	return out
}

func (p *made) jsonLaunch() *jsonLaunch {
	if p.launch == nil {
		return nil
	}
	l := p.launch
	return &jsonLaunch{optional(l.Turn), optional(l.More), optional(l.Sea), departureOf(l.Before), departureOf(l.After)}
}

func (p *made) jsonAshore() jsonAshore {
	a := p.ashore
	return jsonAshore{instant(a.Expected), instant(a.Latest), instant(a.Alarm), a.Ends, instant(a.Placing.Leave), p.missing()}
}
