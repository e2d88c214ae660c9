// Leeway shows what the wind does to a board, with a paddler in each posture,
// adrift, and without one.
//
//	go run ./examples/leeway
//	go run ./examples/leeway -winds 10,15,20 -speed 4
//
// By hand: a person with a surfboard goes downwind at 1.93 % of the wind and a
// quarter of that to either side: 0.4 knots in 20, 0.7 km in an hour.
package main

import (
	"flag"
	"fmt"
	"math"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/route"
	"followingsea.example/route/passage"
)

func main() { lesson.Main("leeway", leeway) }

func leeway(f *flag.FlagSet) lesson.Body {
	winds := lesson.Numbers(f, "winds", []float64{5, 10, 15, 20, 25}, 1, 60, "winds at 10 m in knots")
	speed := lesson.Number(f, "speed", 3.5, 0.5, 10, "flat-water speed standing, in knots")
	return func(p *lesson.Page) error {
		p.Line("ADRIFT FOR AN HOUR in still water: metres downwind, and to either side of it")
		p.Line("")
		if err := adrift(p, *winds); err != nil {
			return err
		}
		p.Line("The published table: mean lines from field tests in 4 to 40 knots. A stream carries all of them alike.")
		p.Line("")
		p.Line("DEAD INTO THE WIND, knots made good by posture, flat-water speed standing %.4g kn; minus is blown back", speed())
		p.Line("")
		head := "wind kn |"
		for _, q := range route.Postures(speed() * route.Knot) {
			head += fmt.Sprintf("%23s", q.Name)
		}
		p.Line("%s", head)
		for _, w := range *winds {
			row := fmt.Sprintf("%7.4g |", w)
			for _, q := range route.Postures(speed() * route.Knot) {
				most, least := q.Spread()
				row += fmt.Sprintf("%23s", fmt.Sprintf("%.1f (%.1f to %.1f)", upwind(q, w), upwind(most, w), upwind(least, w)))
			}
			p.Line("%s", row)
		}
		p.Line("In brackets the ends of the priors: a proposal, no published source.")
		p.Line("")
		p.Line("THE BOARD GETS AWAY: metres between it and the swimmer, and whether swimming makes up for it")
		p.Line("")
		p.Line("wind kn |  after 1 min     5 min     10 min | a swimmer")
		for _, w := range *winds {
			row := fmt.Sprintf("%7.4g |", w)
			parted := passage.BoardLost(w * route.Knot)
			for _, q := range parted {
				row += fmt.Sprintf("%11s", fmt.Sprintf("%.0f-%.0f", q.Near, q.Far))
			}
			p.Line("%s | %s", row, reaches(parted[0].ByASwimmer))
		}
		p.Line("Nothing was ever published for an empty board: a wide band, on purpose. The leash decides.")
		return nil
	}
}

// adrift is one row of the published table for each thing that drifts.
func adrift(p *lesson.Page, winds []float64) error {
	head := fmt.Sprintf("%-57s|", "wind, knots")
	for _, w := range winds {
		head += fmt.Sprintf("%12.4g", w)
	}
	p.Line("%s", head)
	for _, name := range []string{"surfboard", "sea-kayak", "person-wetsuit", "person-vertical", "person-sitting"} {
		c, err := route.FindCraft(name)
		if err != nil {
			return err
		}
		row := fmt.Sprintf("%-57s|", c.Description)
		for _, w := range winds {
			v := c.Leeway(route.From(w*route.Knot, 0), route.Right) // a north wind goes toward 180
			down, side := v.Resolve(180)
			row += fmt.Sprintf("%12s", fmt.Sprintf("%.0f ±%.0f", math.Round(down*360)*10+0, math.Round(math.Abs(side)*360)*10))
		}
		p.Line("%s", row)
	}
	return nil
}

// upwind is the speed made good against a wind, in knots.
func upwind(q route.Posture, w float64) float64 {
	along, _ := q.Way(0, route.From(w*route.Knot, 0)).Resolve(0)
	return math.Round(along/route.Knot*10)/10 + 0
}

func reaches(s passage.State) string {
	switch s {
	case passage.Met:
		return "gains on it"
	case passage.Broken:
		return "does not reach it"
	}
	return "perhaps"
}
