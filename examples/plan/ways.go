package main

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/route"
	"followingsea.example/route/passage"
)

// A spot is a place of the departure shown in full at which the ways out are
// looked at.
type spot struct {
	moment   passage.Moment
	kneeling []route.Out
	prone    []route.Out
	wrong    []passage.Contingency
}

// An escapes is everything about getting out of the departure shown in full.
type escapes struct {
	why      string // why there is nothing to say; empty when there is
	spots    []spot
	noWayOut [2][]route.Gap // on the knees, lying down
	wind     float64        // strongest on the way, m/s, for the board that gets away
	lost     []passage.Parting
}

// mostSpots is the number of places at which the ways out are printed.
const mostSpots = 6

// escape works out the ways out at the middle of each leg, or at places evenly
// spread where the run has many legs.
func (p *made) escape() (escapes, error) {
	postures := p.water.Postures()
	switch {
	case postures == nil:
		return escapes{why: "no cruise speed is given"}, nil
	case len(p.in.run.Exits) == 0:
		return escapes{why: "no exits are given"}, nil
	case len(p.legs) == 0:
		return escapes{why: "the passage does not begin on what is known"}, nil
	}
	depart := p.appraisals[p.best].Depart
	var e escapes
	for _, l := range p.spotLegs() {
		m := l.Middle
		s := spot{moment: m}
		var err error
		if s.kneeling, err = p.water.WaysOut(m.Along, m.Time, postures[1]); err != nil {
			return e, err
		}
		if s.prone, err = p.water.WaysOut(m.Along, m.Time, postures[2]); err != nil {
			return e, err
		}
		if s.wrong, err = p.water.Contingencies(depart, []float64{m.Along}, nil); err != nil {
			return e, err
		}
		e.spots = append(e.spots, s)
	}
	for i := range e.noWayOut {
		var err error
		if e.noWayOut[i], err = p.water.NoWayOut(depart, postures[i+1]); err != nil {
			return e, err
		}
	}
	e.wind = math.NaN()
	for _, l := range p.legs {
		if v := l.Middle.Wind.Speed; !(v <= e.wind) {
			e.wind = v
		}
	}
	e.lost = passage.BoardLost(e.wind)
	return e, nil
}

// spotLegs are the legs at whose middle the ways out are looked at: all of
// them, or where there are many some evenly spread.
func (p *made) spotLegs() []passage.Leg {
	if len(p.legs) <= mostSpots {
		return p.legs
	}
	var out []passage.Leg
	for i := range mostSpots {
		out = append(out, p.legs[(2*i+1)*len(p.legs)/(2*mostSpots)])
	}
	return out
}

// writeWaysOut says which exits are open along the departure shown in full,
// and what is left when something goes wrong.
func (p *made) writeWaysOut(out page) {
	out.head("Ways out, and what if")
	e := p.escapes
	if e.why != "" {
		out.line("  Unknown: %s.", e.why)
		return
	}
	out.paragraph("  ", "A way out is a straight line: where land is in the way there may be one around it. It is open when it is "+
		"reached in time and every landing condition is met; ? where something about it is not known. A bearing is what to steer at first"+p.magneticWords()+
		". Adrift is where a board that nobody paddles lies from there: the middle of its drift, and the km around it that hold nine in ten.")
	for i, label := range []string{"On the knees", "With a broken paddle, lying down"} {
		out.paragraph("  ", label+", "+p.gapWords(e.noWayOut[i])+".")
	}
	for _, s := range e.spots {
		m := s.moment
		out.line("")
		shore := ""
		if m.ShoreAt == m.ShoreAt {
			shore = fmt.Sprintf(", %.1f km from the nearest shore", m.ShoreAt/1000)
		}
		out.line("  At km %.1f, %s%s", m.Along/1000, p.clock(m.Time), shore)
		p.writeExits(out, s)
		p.writeWrong(out, s)
	}
	out.line("")
	p.writeLost(out)
}

func (p *made) magneticWords() string {
	if _, ok := p.paddler.Variation.East.Get(); ok {
		return ", true and (magnetic)"
	}
	return ", true"
}

// gapWords names the stretches of the run without an open exit.
func (p *made) gapWords(gaps []route.Gap) string {
	if len(gaps) == 0 {
		return "some exit is open from every place of the run"
	}
	var parts []string
	for _, g := range gaps {
		s := fmt.Sprintf("from km %.1f to km %.1f (%s to %s)", g.From/1000, g.To/1000, p.clock(g.Start), p.clock(g.End))
		if g.Unknown {
			s += ", or it is not known"
		}
		parts = append(parts, s)
	}
	return "no exit is open " + strings.Join(parts, "; ")
}

// writeExits tabulates the exits from a place, on the knees and lying down.
func (p *made) writeExits(out page, s spot) {
	out.line("    %-18s %-37s %s", "exit", "on the knees", "paddle broken, lying down")
	var notes []string
	for i, o := range s.kneeling {
		out.line("    %-18s %-37s %s", clipped(o.Exit.Name, 18), p.outCell(o), p.outCell(s.prone[i]))
		for _, x := range []route.Out{o, s.prone[i]} {
			if x.State == route.Unknown || x.State == route.Broken {
				if n := x.Exit.Name + ": " + whyWords(x); len(notes) == 0 || notes[len(notes)-1] != n {
					notes = append(notes, n)
				}
			}
		}
	}
	for _, n := range notes {
		out.paragraph("      ", n)
	}
}

// outCell says in a few words what there is to say of an exit.
func (p *made) outCell(o route.Out) string {
	way := ""
	if o.Seconds == o.Seconds {
		way = fmt.Sprintf("%s h, %s", span(o.Seconds), p.clock(o.Arrival))
		if o.Heading == o.Heading {
			way += ", steer " + bearing(o.Heading)
			if v, ok := p.paddler.Variation.East.Get(); ok {
				way += " (" + bearing(o.Heading-v) + ")"
			}
		}
	}
	switch {
	case o.State == route.Landable:
		return way
	case o.State == route.Unknown && way != "":
		return way + " ?"
	case o.State == route.Unknown:
		return "unknown"
	case o.State == route.Broken:
		return way + " shut"
	}
	return whyWords(o)
}

// whyWords joins the reasons of an answer, without positions, which stand in
// the JSON.
func whyWords(o route.Out) string {
	missing := 0
	for _, w := range o.Why {
		if strings.HasSuffix(w, "not given") || strings.HasSuffix(w, "no condition given") {
			missing++
		}
	}
	var parts []string
	for _, w := range o.Why {
		w = strings.ReplaceAll(w, "route: ", "")
		if before, _, ok := strings.Cut(w, "land in the way at"); ok {
			w = before + "land in the way"
		}
		if before, _, ok := strings.Cut(w, ": "); ok && strings.HasSuffix(before, "short") && strings.Contains(w, "can be kept up") {
			w = before
		}
		if missing > 1 && (strings.HasSuffix(w, "not given") || strings.HasSuffix(w, "no condition given")) {
			continue
		}
		parts = append(parts, w)
	}
	if missing > 1 {
		parts = append(parts, fmt.Sprintf("%d landing conditions are not given", missing))
	}
	if len(parts) == 0 {
		return o.State.String()
	}
	return strings.Join(parts, "; ")
}

// writeWrong tabulates what goes wrong at a place: where nobody paddling ends,
// and which exits are still open to somebody who does.
func (p *made) writeWrong(out page, s spot) {
	out.line("    %-28s %-16s %-16s %s", "if", "adrift 1 h", "adrift 3 h", "exits open")
	for _, c := range s.wrong {
		one, three := "unknown", "unknown"
		if len(c.Adrift) == 2 {
			one, three = adriftWords(c, c.Adrift[0]), adriftWords(c, c.Adrift[1])
		}
		head := fmt.Sprintf("    %-28s %-16s %-16s ", clipped(c.Name, 28), one, three)
		out.paragraph(head, openWords(c))
		if c.Adrift == nil && c.Why != "" {
			out.paragraph("      ", c.Why)
		}
	}
}

// adriftWords says where a board that nobody paddles is after a while: distance
// and bearing from where it began, and the radius that holds nine in ten.
func adriftWords(c passage.Contingency, a passage.Adrift) string {
	if a.Ashore {
		return "ashore"
	}
	l := route.Inverse(c.At, a.Mean)
	if l.Distance != l.Distance {
		return "unknown"
	}
	return fmt.Sprintf("%.1f km %s ±%.1f", l.Distance/1000, bearing(l.Mean()), a.Ninety/1000)
}

// openWords says how many exits are still open, and which is reached first.
func openWords(c passage.Contingency) string {
	best := -1
	for i, o := range c.Ways {
		if o.State == route.Landable && (best < 0 || o.Seconds < c.Ways[best].Seconds) {
			best = i
		}
	}
	doubt := ""
	if c.Unknown > 0 {
		doubt = fmt.Sprintf("; %d unknown", c.Unknown)
	}
	if best < 0 {
		return "none" + doubt
	}
	first := c.Ways[best].Exit.Name + " " + span(c.Ways[best].Seconds) + " h"
	if c.Open == 1 {
		return first + doubt
	}
	return fmt.Sprintf("%d, first %s%s", c.Open, first, doubt)
}

// writeLost says how far a swimmer and a board that got away have parted.
func (p *made) writeLost(out page) {
	e := p.escapes
	if e.wind != e.wind {
		out.line("  If the board gets away: unknown, the wind is not known for all of it.")
		return
	}
	var parts []string
	for _, l := range e.lost {
		s := fmt.Sprintf("after %.0f min %.0f to %.0f m", l.After/60, l.Near, l.Far)
		switch l.ByASwimmer {
		case passage.Broken:
			s += " (no swimmer gains on it)"
		case passage.Met:
			s += " (a swimmer gains on it)"
		default:
			s += " (not every swimmer gains on it)"
		}
		parts = append(parts, s)
	}
	out.paragraph("  ", fmt.Sprintf("If the leash fails and the board gets away, in the %s kn of this passage: %s away. ", kn(e.wind), strings.Join(parts, ", "))+
		"No measurement of an empty board was ever published; the band is a proposal. The leash decides.")
}

// clipped cuts a name that is too long for its column.
func clipped(s string, n int) string {
	r := []rune(s)
	if len(r) <= n {
		return s
	}
	return string(r[:n-1]) + "~"
}
