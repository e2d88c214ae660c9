// Steer shows what a stream does to a course: where the board ends if it just
// points at the goal, and what it must steer to hold the line.
//
//	go run ./examples/steer
//	go run ./examples/steer -track 60 -set 150 -rates 0.5,1,2 -speed 3 -distance 4
//
// By hand: the correction is the angle whose sine is the stream across the
// track over the speed of the board, turned against the stream.
package main

import (
	"errors"
	"flag"
	"fmt"
	"math"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/route"
)

func main() { lesson.Main("steer", steer) }

func steer(f *flag.FlagSet) lesson.Body {
	track := lesson.Number(f, "track", 60, 0, 360, "direction to the goal, degrees true")
	set := lesson.Number(f, "set", 150, 0, 360, "direction the stream runs toward, degrees true")
	rates := lesson.Numbers(f, "rates", []float64{0, 0.5, 1, 1.5, 2, 3, 4}, 0, 20, "rates of the stream in knots")
	speed := lesson.Number(f, "speed", 3.5, 0.1, 20, "speed of the board through the water in knots")
	distance := lesson.Number(f, "distance", 3, 0.1, 100, "distance to the goal in nautical miles")
	return func(p *lesson.Page) error {
		p.Line("TO A GOAL %.4g nmi off on %03.0f, at %.4g kn, the stream sets %03.0f", distance(), track(), speed(), set())
		p.Line("")
		p.Line("stream | points at the goal, in still-water time    | holds the line")
		p.Line("    kn | makes  over ground kn  ends off the line   | steers  correction  over ground kn  takes")
		still := distance() / speed() * 3600 // seconds
		for _, rate := range *rates {
			water := route.Toward(rate*route.Knot, set())
			ground := route.MadeGood(track(), speed()*route.Knot, water)
			_, right := ground.Resolve(track())
			p.Line("%6.4g | %s %15.1f  %-19s | %s", rate, bearing(ground.Toward()), ground.Speed()/route.Knot, side(right*still), held(track(), speed(), distance(), water))
		}
		p.Line("")
		p.Line("Two tests, and the second is the one forgotten: the stream across the track must not exceed the speed of")
		p.Line("the board, and what is left must take it forward. A stream across the line costs time even where it is")
		p.Line("held: part of the paddling goes against it. Take a transit ahead: it shows the set before any sum does.")
		return nil
	}
}

// held is what holding the line takes, or why it cannot be held.
func held(track, speed, distance float64, water route.Velocity) string {
	s, err := route.HoldTrack(track, speed*route.Knot, water)
	switch {
	case errors.Is(err, route.ErrCrossSet):
		return "cannot: set across faster than the board" + leastLost(track, speed, water)
	case errors.Is(err, route.ErrNoProgress):
		return "cannot: the line is held going backward"
	case err != nil:
		return err.Error()
	}
	made := s.SpeedMade / route.Knot
	return fmt.Sprintf("%s %+10.0f° %15.1f  %3.0f min", bearing(s.Heading), math.Round(s.Correction)+0, made, distance/made*60)
}

// leastLost is the heading that is set off the line least.
func leastLost(track, speed float64, water route.Velocity) string {
	s, _, err := route.BestHeading(track, speed*route.Knot, water)
	if err != nil {
		return ""
	}
	return "; least lost on " + bearing(s.Heading) + ", making " + bearing(s.Track)
}

// bearing writes a direction with three digits.
func bearing(deg float64) string {
	if deg != deg {
		return "---"
	}
	return fmt.Sprintf("%03.0f", math.Mod(math.Round(deg), 360))
}

// side says how far to the right or left of the line.
func side(right float64) string {
	switch m := math.Round(right / 10); {
	case m > 0:
		return fmt.Sprintf("%.0f m right", 10*m)
	case m < 0:
		return fmt.Sprintf("%.0f m left", -10*m)
	}
	return "on the line"
}
