package main

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/route"
	"followingsea.example/route/passage"
)

// onDeck works out the page for the deck of the departure shown in full, what
// its limits stand, and the plan as it stands at the launch where something
// was seen there.
func (p *made) onDeck() error {
	depart := p.appraisals[p.best].Depart
	if p.water.Postures() != nil {
		deck, err := p.water.Deck(depart, nil)
		if err != nil {
			return err
		}
		p.deck = deck
	}
	var err error
	if p.stands, err = p.water.Tolerances(depart); err != nil {
		return err
	}
	if p.options.seen != "" {
		o, err := seen(p.options.seen)
		if err != nil {
			return err
		}
		l, err := p.water.Launch(depart, o)
		if err != nil {
			return fmt.Errorf("%w -seen: %w", errUse, err)
		}
		p.launch = &l
	}
	return nil
}

func (p *made) writeLaunch(out page) {
	l := p.launch
	if l == nil {
		return
	}
	out.head("At the launch, as seen")
	out.paragraph("  ", fmt.Sprintf("Start %s; the wind is %s kn above the forecast and %s degrees clockwise of it, the sea %s of the forecast's height. "+
		"Taken to stay so all the way: a proposal, no published source.", p.clock(l.After.Depart), kn(l.More), number(l.Turn, 0), number(l.Sea, 2)))
	if len(l.Shifts) == 0 {
		out.line("  No finding changes. Arrival %s, late %s.", p.clock(l.After.Arrival), p.clock(l.After.Late))
	}
	for _, s := range l.Shifts {
		out.line("  %-7s -> %-7s  %s", s.Before.State, s.After.State, p.findingOr(s.After))
	}
}

// findingOr words a finding of any state.
func (p *made) findingOr(f passage.Finding) string {
	switch f.State {
	case passage.Broken:
		return p.findingWords(f)
	case passage.Unknown:
		return f.Rule.Words() + " " + limitWords(f) + ": " + f.Why
	}
	return f.Rule.Words() + " " + limitWords(f) + ": " + quantity(f.Rule, f.Value)
}

func (p *made) writeDeck(out page) {
	out.head("For the deck")
	if len(p.deck.Gates) == 0 {
		out.line("  Unknown: the cruise speed is not given, or the passage does not get that far on what is known.")
	}
	for _, g := range p.deck.Gates {
		out.line("")
		if g.Latest.IsZero() {
			out.line("  km %.1f  expected %s  NO LATEST TIME: a limit ahead is not met as it is", g.Along/1000, p.clock(g.Expected))
		} else {
			out.line("  km %.1f  expected %s  PASS BY %s, or take the exit", g.Along/1000, p.clock(g.Expected), p.clock(g.Latest))
		}
		switch {
		case g.Limited:
			out.paragraph("    else        ", p.findingOr(g.Decides))
		case g.Why != "":
			out.paragraph("    else        ", g.Why)
		}
		if g.LeastMade == g.LeastMade {
			out.line("    speed       below %s kn made good since the mark before it is reached too late", number(math.Ceil(g.LeastMade/route.Knot*10)/10, 1))
		}
		if g.WindLeft == g.WindLeft {
			out.paragraph("    wind        ", fmt.Sprintf("expected %s; outside %s to %s it is past your angle off the stern", windWords(g.WindExpected), bearing(g.WindLeft), bearing(g.WindRight)))
		}
		out.paragraph("    sea         ", "expected: "+dash(g.Crests)+clause("; past your wind: ", g.TooMuch)+clause("; too little: ", g.TooLittle))
		if g.HasExit {
			out.line("    exit        %s, on the knees %s h, steer %s", g.Exit.Exit.Name, span(g.Exit.Seconds), p.headingWords(g.Exit.Heading))
		} else {
			out.line("    exit        ! none is known to be open from here")
		}
	}
	p.writeStands(out)
}

// dash stands for an empty text.
func dash(s string) string {
	if s == "" {
		return "-"
	}
	return s
}

// clause is a text after its introduction, nothing when it is empty.
func clause(intro, s string) string {
	if s == "" {
		return ""
	}
	return intro + s
}

// writeStands prints for each limit the smallest change tried that breaks it.
func (p *made) writeStands(out page) {
	if len(p.stands) == 0 {
		return
	}
	out.line("")
	out.paragraph("  ", "The smallest change tried that breaks each limit, from the start on, one thing at a time: wind by 1, 2, 3, 4, 6, 8, 10 kn, "+
		"a turn by 5, 10, 20, 30, 45, 60 degrees, a start 10, 20, 30, 45, 60, 90 min later. A dash: none tried breaks it.")
	var met []passage.Tolerance
	var not []string
	for _, t := range p.stands {
		if t.Finding.State == passage.Met {
			met = append(met, t)
		} else {
			not = append(not, t.Finding.Rule.Words())
		}
	}
	if not != nil {
		out.paragraph("  ", "Not met as it is, and so not in the table: "+strings.Join(not, ", ")+".")
	}
	if met == nil {
		return
	}
	out.line("")
	out.line("  %-40s %6s %6s %6s %6s %6s", "", "kn more", "less", "veers", "backs", "later")
	for _, t := range met {
		edge := func(e passage.Edge, unit float64) string {
			if math.IsInf(e.Breaks, 1) {
				return "-"
			}
			return number(e.Breaks/unit, 0)
		}
		out.line("  %-40s %6s %6s %6s %6s %6s", t.Finding.Rule.Words()+" "+limitWords(t.Finding),
			edge(t.Stronger, route.Knot), edge(t.Lighter, route.Knot), edge(t.Veered, 1), edge(t.Backed, 1), edge(t.Later, 60))
	}
}
