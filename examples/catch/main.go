// Catch shows which bumps a paddler can catch, hold, or only watch go by: how
// high a wave of each period must be, and what the board can do with the one
// at hand.
//
//	go run ./examples/catch
//	go run ./examples/catch -cruise 4 -sprint 7 -wind 25 -height 0.8 -periods 2,3,4,5
//
// By hand: the crests of a period of T seconds make 3.03 T knots in deep water,
// and without resistance a fall through the height H gains sqrt(2 g H / 1.05),
// 8.4 sqrt(H) knots with the water that the board moves along; less on a bump
// not much longer than the board. One whose crests are faster than the sprint
// by more than that cannot be caught by anybody; resistance asks for more.
//
// The numbers are estimates of package ride: proposal, no published source.
package main

import (
	"flag"
	"fmt"
	"math"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/wave"
	"followingsea.example/wave/ride"
)

func main() { lesson.Main("catch", catch) }

func catch(f *flag.FlagSet) lesson.Body {
	cruise := lesson.Number(f, "cruise", 3.5, 1, 8, "speed on flat water that is kept up for hours, in knots")
	sprint := lesson.Number(f, "sprint", 5.8, 1, 12, "speed of a sprint of ten seconds, in knots")
	wind := lesson.Number(f, "wind", 18, 0, 50, "wind at 10 m from astern, in knots")
	depth := lesson.Number(f, "depth", math.Inf(1), 0.5, math.Inf(1), "depth in metres; inf is deep water")
	height := lesson.Number(f, "height", 0.5, 0, 10, "height of the bump at hand, in metres")
	off := lesson.Number(f, "off", 0, 0, 60, "degrees between the board and the way the waves run")
	periods := lesson.Numbers(f, "periods", []float64{2, 2.5, 3, 3.5, 4, 5, 6, 8, 10}, 1, 20, "periods in seconds")
	return func(p *lesson.Page) error {
		paddler, err := ride.Paddler{Cruise: cruise() * wave.Knot, Sprint: sprint() * wave.Knot}.Prepare()
		if err != nil {
			return err
		}
		p.Line("WHICH BUMPS CAN BE CAUGHT: cruise %.4g kn, sprint %.4g kn on flat water, %.4g kn of wind astern", cruise(), sprint(), wind())
		p.Line("")
		p.Line("period  crests | height it takes, m           | free fall | a bump of %.4g m", height())
		p.Line("     s      kn | to glide  to hold  to catch  | gains, kn |")
		for _, t := range *periods {
			a, err := paddler.Bump(ride.Bump{Height: height(), Period: t, Depth: depth(), Wind: wind() * wave.Knot, Off: off()})
			if err != nil {
				return err
			}
			p.Line("%6.4g %7.1f | %8s %8s %9s  | %9.1f | %s", t, a.Celerity/wave.Knot, metres(a.Glide), metres(a.Hold), metres(a.Catch), a.FreeFall/wave.Knot, a.Verdict)
		}
		p.Line("")
		p.Line("To glide: it carries the board without the paddle. To hold: with a sprint, once the board is as fast. To")
		p.Line("catch: a sprint under way brings the board from the trough to the speed of the crest before it has gone by.")
		p.Line("The heights are uncertain by a quarter, with the resistance of the board. A dash: no unbroken wave of that")
		p.Line("period is high enough. Proposal, no published source.")
		return nil
	}
}

// metres writes a height, a dash for one that no unbroken wave reaches.
func metres(h float64) string {
	if !(h <= 30) {
		return "-"
	}
	return fmt.Sprintf("%.2f", h)
}
