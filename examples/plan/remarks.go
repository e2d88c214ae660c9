package main

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/internal/angle"
	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/tide"
	"followingsea.example/wave/ride"
)

// remarks collects what the models have to say about their own numbers at a
// moment, and what in the sea handles badly.
func (p *made) remarks(m passage.Moment) []string {
	var out []string
	for _, w := range m.SeaWords { // but what the line of the wind sea says already
		if w != "wind sea: "+m.Sea.Limit.String() && !strings.HasPrefix(w, "between growth laws") {
			out = append(out, w)
		}
	}
	if len(m.SeaWords) == 0 {
		if m.Sea.Remarks != 0 {
			out = append(out, "wind sea: "+m.Sea.Remarks.String())
		}
		if m.TideRemark != tide.Ordinary {
			out = append(out, fmt.Sprintf("tide: %s; give or take %.1f m", m.TideRemark, m.TideSpread))
		}
	}
	if r := m.Ride.Remarks; r != 0 {
		out = append(out, "ride: "+r.String())
	}
	if m.Blocked {
		out = append(out, "the stream stops the waves of the wind sea: they break")
	}
	if m.Reflected >= 0.1 {
		out = append(out, fmt.Sprintf("a steep shore throws back waves of %.1f m: a confused sea", m.Reflected))
	}
	if m.SurfHs > m.BreakHs {
		out = append(out, fmt.Sprintf("a sea of %.1f m breaks over this depth, where %.1f m is the most that does not", m.SurfHs, m.BreakHs))
	}
	return append(out, p.hazards(m)...)
}

// hazardWords says each hazard of the sea in words.
var hazardWords = map[ride.HazardName]string{
	ride.Pearling:      "the nose meets the back of the next wave",
	ride.Overrun:       "the board runs over the short waves ahead",
	ride.Broach:        "steep bumps from the quarter",
	ride.BreakingBumps: "the bumps that can be ridden are about to break",
	ride.BreakingSea:   "the sea is about to break",
	ride.CrossingSea:   "two systems of waves cross",
}

// hazards names the ways in which the sea of a moment handles badly, against
// the thresholds to start from.
func (p *made) hazards(m passage.Moment) []string {
	cruise, ok := p.paddler.Cruise.Get()
	if !ok || m.Speed != m.Speed || !m.Sea.Known() || !m.Old.Known() {
		return nil
	}
	who, err := ride.Paddler{Cruise: cruise, Sprint: p.paddler.Sprint.Or(0), Mass: p.paddler.Mass.Or(0), Length: p.paddler.BoardLength.Or(0)}.Prepare()
	if err != nil {
		return nil
	}
	list, err := who.Hazards(seaOn(m), ride.StartingLimits())
	if err != nil {
		return nil
	}
	var out []string
	for _, h := range list {
		if h.Raised {
			out = append(out, fmt.Sprintf("look out for: %s (%s %.2f, over %.2f, a proposal to start from)", hazardWords[h.Name], h.Name, h.Measure, h.Threshold))
		}
	}
	return out
}

// seaOn is the sea of a moment as a board on the course meets it.
func seaOn(m passage.Moment) ride.Sea {
	var s ride.Sea
	s.Wind, _ = route.Velocity(m.Wind.Velocity()).Sub(m.Stream).Resolve(m.Course)
	s.Depth = math.Inf(1)
	if m.Depth == m.Depth {
		s.Depth = math.Max(m.Depth, 0.3)
	}
	if current, _ := m.Stream.Resolve(m.Course); current == current {
		s.Current = current
	}
	if m.Sea.Hs > 0 {
		s.WindSea = ride.System{Hs: m.Sea.Hs, Tp: m.Sea.Tp, Off: angle.Diff(m.Sea.From+180, m.Course)}
	}
	highest, sum := m.Old, m.Old.Hs*m.Old.Hs
	for _, w := range m.Swell {
		sum += w.Hs * w.Hs
		if w.Hs > highest.Hs {
			highest.Hs, highest.Tp, highest.From = w.Hs, w.Tp, w.From
		}
	}
	if sum > 0 {
		s.Swell = ride.System{Hs: math.Sqrt(sum), Tp: highest.Tp, Off: angle.Diff(highest.From+180, m.Course)}
	}
	return s
}
