package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"os"
	"strings"

	"followingsea.example/route"
	"followingsea.example/route/passage"
)

// logFile is the paddler's log of runs.
const logFile = "log.csv"

// loadLog reads the log, if there is one.
func (in *inputs) loadLog(dir fs.FS) error {
	_, err := in.optional(dir, logFile, "", func(r io.Reader) (err error) { in.log, err = passage.ReadLog(r); return })
	return err
}

// writeStep prints what the log speaks for.
func (p *made) writeStep(out page) {
	if len(p.in.log) == 0 {
		return
	}
	out.head("Your log")
	s, ok := passage.NextStep(p.paddler.Limits, p.in.log, p.options.now)
	switch {
	case !ok:
		out.paragraph("  ", fmt.Sprintf("%d outings: none of your limits has three recent runs in hand close to it. No step.", len(p.in.log)))
	case s.Back:
		out.paragraph("  ", fmt.Sprintf("A step back: %s %s instead of %s (%s).", s.Rule.Words(), quantity(s.Rule, s.To), quantity(s.Rule, s.From), s.Why))
	default:
		out.paragraph("  ", fmt.Sprintf("The next modest step, one limit only: %s %s instead of %s (%s).", s.Rule.Words(), quantity(s.Rule, s.To), quantity(s.Rule, s.From), s.Why))
	}
	out.line("  The rule is a proposal without a published source; a coach who knows you comes first.")
}

// look reads the track that is to be debriefed and compares it.
func (p *made) look() error {
	name := p.options.debrief
	if name == "" {
		return nil
	}
	file, err := os.Open(name)
	if err != nil {
		return fmt.Errorf("%w -debrief: %w", errUse, err)
	}
	defer file.Close()
	parse := route.ReadTracksGPX
	if strings.HasSuffix(name, ".geojson") || strings.HasSuffix(name, ".json") {
		parse = route.ReadTracks
	}
	tracks, err := parse(file)
	if err != nil {
		return fmt.Errorf("%w -debrief: %s: %w", errUse, name, err)
	}
	for _, t := range tracks {
		if t.Planned {
			continue
		}
		d, err := p.water.Debrief(t)
		if err != nil {
			return fmt.Errorf("%w -debrief: %s: %w", errUse, name, err)
		}
		p.debrief = &d
		return nil
	}
	return fmt.Errorf("%w -debrief: %s: %w", errUse, name, errors.New("holds a plan: want a track that was recorded"))
}

func (p *made) writeDebrief(out page) {
	d := p.debrief
	if d == nil {
		return
	}
	out.head("The track against the plan")
	end := "does not reach the finish"
	if !d.Finish.IsZero() {
		end = "at the finish " + p.clock(d.Finish)
	}
	out.line("  From %s, %s; planned for that start: %s, late %s. %.1f km of the run, %.1f km over the ground.",
		p.clock(d.Plan.Depart), end, p.clock(d.Plan.Arrival), p.clock(d.Plan.Late), d.Gone/1000, d.Over/1000)
	out.line("")
	out.line("  leg  in     out    made  plan  water  plan  off line  ridden  plan    set        of the tables")
	for _, l := range d.Legs {
		out.line("  %-4d %s  %s  %4s  %4s  %5s  %4s  %6.0f m  %6s  %4s    %-9s  %s", l.Number, p.clock(l.Enter), p.clock(l.Leave), kn(l.Made), kn(l.PlanMade),
			kn(l.Through), kn(l.PlanThrough), l.Farthest, share(l.Riding), share(l.PlanRiding), setWords(l.Set), setWords(l.Stream))
	}
	out.paragraph("  ", "Speeds in knots: made good along the leg, and through the water by the stream of the tables. Set is what carried the board off the planned heading and speed: "+
		"stream, leeway, and every error of steering, as knots and direction.")
	if d.RidingWhy != "" {
		out.line("  Time ridden: %s.", d.RidingWhy)
	}
	if who, err := p.water.Calibrated(*d); err == nil {
		out.paragraph("  ", fmt.Sprintf("By this track the board's resistance is %.1f N s2/m2 (drag_n_s2_m2 in paddler.json): take the mean of several days. A proposal, no published source.", who.Drag.Number()))
	} else {
		out.paragraph("  ", "The ride is not calibrated by this track: "+strings.TrimPrefix(err.Error(), "passage: input: ")+".")
	}
}

// share writes a share as a percentage.
func share(x float64) string {
	if x != x {
		return "-"
	}
	return fmt.Sprintf("%.0f%%", 100*x)
}

// setWords writes a stream.
func setWords(v route.Velocity) string {
	speed := v.Speed()
	switch {
	case speed != speed:
		return "-"
	case math.Round(speed/route.Knot*10) == 0:
		return "0.0"
	}
	return kn(speed) + " " + bearing(v.Toward())
}
