package main

import (
	"strings"

	"followingsea.example/route"
)

// writeWaysOut says, at the middle of each leg of the departure shown in full,
// which exits are open and what is left when the paddle breaks.
func (p *made) writeWaysOut(out page) error {
	out.head("Ways out of that departure")
	postures := p.water.Postures()
	if len(p.in.run.Exits) == 0 || len(postures) == 0 {
		out.line("  Unknown: no exits, or no cruise speed, are given.")
		return nil
	}
	for _, l := range p.legs {
		m := l.Middle
		out.line("")
		out.line("  km %.1f at %s, %s km from the nearest shore", m.Along/1000, p.clock(m.Time), number(m.ShoreAt/1000, 1))
		for _, by := range []struct {
			label   string
			posture route.Posture
		}{{"on the knees", postures[1]}, {"paddle broken, lying down", postures[2]}} {
			outs, err := p.water.WaysOut(m.Along, m.Time, by.posture)
			if err != nil {
				return err
			}
			out.line("    %s", by.label)
			open := 0
			for _, o := range outs {
				if o.State == route.Landable {
					open++
				}
				out.line("      %-16s %-13s %s", o.Exit.Name, p.reachWords(o), p.outWords(o))
			}
			if open == 0 {
				out.line("      ! no exit is open from here in this way")
			}
		}
	}
	return nil
}

// reachWords says when an exit is reached.
func (p *made) reachWords(o route.Out) string {
	if o.Seconds != o.Seconds {
		return "-"
	}
	return span(o.Seconds) + " h, " + p.clock(o.Arrival)
}

func (p *made) outWords(o route.Out) string {
	s := o.State.String()
	if o.Heading == o.Heading && o.State != route.OutOfReach {
		s = "steer " + p.headingWords(o.Heading) + ": " + s
	}
	if len(o.Why) > 0 {
		s += " (" + strings.ReplaceAll(strings.Join(o.Why, "; "), "route: ", "") + ")"
	}
	return s
}
