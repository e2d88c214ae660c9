package main

import (
	"fmt"
	"math"
	"strings"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/route"
	"followingsea.example/tide"
)

// tideWords puts the tide and the stream of the hours around the departure shown
// in full into words: from three hours before the start to three after the
// slow case.
func (p *made) tideWords() []string {
	if p.options.lake {
		return nil
	}
	a := p.appraisals[p.best]
	from, to := a.Depart.Add(-3*time.Hour), a.Late.Add(3*time.Hour)
	if a.Late.IsZero() {
		to = a.Depart.Add(6 * time.Hour)
	}
	var out []string
	if turns := p.turnsOfTide(from, to); len(turns) > 0 {
		out = append(out, "Tide: "+strings.Join(turns, ", ")+".")
	}
	if s := p.streamWords(from, to); s != "" {
		out = append(out, s)
	}
	return out
}

// turnsOfTide lists the high and low waters from the last one before a span to
// the first one after it.
func (p *made) turnsOfTide(from, to time.Time) []string {
	if p.in.table == nil {
		return nil
	}
	var out []string
	turns := p.in.table.Turns()
	for i, t := range turns {
		if i+1 < len(turns) && turns[i+1].Time.Before(from) || i > 0 && turns[i-1].Time.After(to) {
			continue
		}
		out = append(out, turnOfTide(t)+" "+p.clock(t.Time)+" "+number(t.Height, 1)+" m")
	}
	return out
}

func turnOfTide(t tide.Turn) string {
	if t.High {
		return "high water"
	}
	return "low water"
}

// streamWords says how the stream sets through a span, when it turns, and its
// greatest rate. A turn is a change of set by more than 90 degrees within ten
// minutes.
func (p *made) streamWords(from, to time.Time) string {
	if len(p.in.day.Streams) == 0 {
		return ""
	}
	const step = 10 * time.Minute
	var parts []string
	set, most, mostAt, missing := math.NaN(), -1.0, time.Time{}, false
	for t := from; !t.After(to); t = t.Add(step) {
		v := route.Velocity(p.in.day.Streams[0].Stream.Velocity(t))
		if v.Speed() != v.Speed() {
			missing = true
			continue
		}
		if v.Speed() > most {
			most, mostAt = v.Speed(), t
		}
		if v.Speed() < 0.05*route.Knot {
			continue
		}
		switch d := math.Abs(angle.Diff(set, v.Toward())); {
		case set != set:
			parts = append(parts, fmt.Sprintf("sets %s at %s", bearing(v.Toward()), p.clock(t)))
		case d > 90:
			parts = append(parts, fmt.Sprintf("%s from about %s", bearing(v.Toward()), p.clock(t)))
		}
		set = v.Toward()
	}
	if most < 0 {
		return "Stream: not known for these hours."
	}
	s := "Stream: " + strings.Join(parts, ", ")
	if len(parts) == 0 {
		s = "Stream: slack"
	}
	s += fmt.Sprintf("; at most %s kn, at %s", kn(most), p.clock(mostAt))
	if missing {
		s += "; not known for some of these hours"
	}
	return s + "."
}

// swellWords lists the systems of swell at the start of the departure shown in
// full, and the temperatures.
func (p *made) swellWords() []string {
	if p.options.lake || p.in.day.Swell == nil {
		return nil
	}
	systems, err := p.in.day.Swell.At(p.appraisals[p.best].Depart)
	if err != nil {
		return []string{"Swell: not known at the start."}
	}
	var parts []string
	for _, s := range systems {
		parts = append(parts, fmt.Sprintf("%s m, %s s, from %s", number(s.Hs, 1), number(s.Tp, 1), bearing(s.From)))
	}
	if len(parts) == 0 {
		parts = []string{"none"}
	}
	return []string{"Swell at the start: " + strings.Join(parts, "; ") + "."}
}

// warmth says how warm air and water are at the start, where that is given.
func (p *made) warmth() []string {
	if !p.in.hasWind {
		return nil
	}
	s, err := p.in.wind.At(p.appraisals[p.best].Depart)
	if err != nil {
		return nil
	}
	var parts []string
	if s.Water.Known() {
		parts = append(parts, fmt.Sprintf("water %s C", number(s.Water.Celsius(), 1)))
	}
	if s.Air.Known() {
		parts = append(parts, fmt.Sprintf("air %s C", number(s.Air.Celsius(), 1)))
	}
	if len(parts) == 0 {
		return nil
	}
	return []string{"At the start: " + strings.Join(parts, ", ") + "."}
}
