// Windstream shows wind against stream: what a stream makes of a sea that
// comes with the wind.
//
//	go run ./examples/windstream
//	go run ./examples/windstream -wind 15 -hs 0.5 -period 3.5 -streams -3,-2,-1,0,1
//
// By hand: deep water and short waves are stopped by a stream of a quarter of
// the speed of their crests, g T / 8 pi, or 0.76 knots for each second of period.
package main

import (
	"flag"
	"fmt"
	"math"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/wave"
	"followingsea.example/wind"
)

func main() { lesson.Main("windstream", windStream) }

func windStream(f *flag.FlagSet) lesson.Body {
	blows := lesson.Number(f, "wind", 18, 0, 60, "wind over the ground in knots, from astern of the waves")
	hs := lesson.Number(f, "hs", 0.8, 0.05, 10, "significant height of the sea in slack water, metres")
	period := lesson.Number(f, "period", 4, 0.5, 25, "peak period of the sea in seconds, as a buoy at anchor counts it")
	depth := lesson.Number(f, "depth", 20, 0.5, math.Inf(1), "depth in metres; inf is deep water")
	streams := lesson.Numbers(f, "streams", []float64{2, 1, 0, -0.5, -1, -1.5, -2, -2.5, -3, -4}, -15, 15, "stream along the waves in knots: minus is against them")
	return func(p *lesson.Page) error {
		still := wave.OnCurrent(period(), depth(), 0)
		p.Line("A SEA OF %.4g M AND %.4g S, %s, WITH %.4g KNOTS OF WIND: from slack water into a stream", hs(), period(), deep(depth()), blows())
		p.Line("")
		p.Line("stream | wind over |   Hs  length  crest speed  steepness |")
		p.Line("    kn |  water kn |    m       m  ground kn    of slack  | the sea")
		for _, kn := range *streams {
			over, err := wind.New(blows()*wind.Knot, 0) // both along one line: from north
			if err != nil {
				return err
			}
			felt := over.Relative(stream(kn * wind.Knot))
			row := fmt.Sprintf("%+6.4g | %9.1f |", kn+0, felt.Speed/wind.Knot*ahead(felt))
			c := wave.OnCurrent(period(), depth(), kn*wave.Knot)
			if c.State != wave.Runs {
				p.Line("%s                                      | %v: no wave of this period gets up the stream", row, c.State)
				continue
			}
			h, breaks := c.Height(hs())
			steep := h / c.Length / (hs() / still.Length)
			p.Line("%s %4.2f %7.1f %11.1f %9.2f    | %s", row, h, c.Length, c.PhaseSpeed/wave.Knot, steep, word(steep, h > c.BreakingHeight()/2, breaks))
		}
		p.Line("")
		p.Line("Waves of this period are stopped by %.1f kn against them, and break before that.", -still.Stopping()/wave.Knot)
		p.Line("Against the stream the waves are shorter and higher at once, which is why two knots make another sea.")
		p.Line("With it they are longer and lower. The wind over the water changes the other way round: against the")
		p.Line("stream there is more of it, so that in an hour or two the sea itself grows. That is not in the table.")
		return nil
	}
}

// stream is the motion of the water along waves from north: toward the south.
func stream(along float64) wind.Velocity { return wind.Velocity{North: -along} }

// ahead is 1 where the wind over the water still comes from north, or is calm,
// and -1 where a stream with a light wind has turned it round.
func ahead(w wind.Wind) float64 {
	if w.From > 90 && w.From < 270 {
		return -1
	}
	return 1
}

func word(steep float64, crests, breaks bool) string {
	switch {
	case breaks:
		return "breaks all over"
	case crests:
		return "the higher waves break"
	case steep > 1.5:
		return "steep, short"
	case steep > 1.1:
		return "steeper"
	case steep < 0.9:
		return "longer, lower"
	}
	return "as it was"
}

func deep(m float64) string {
	if math.IsInf(m, 1) {
		return "deep water"
	}
	return fmt.Sprintf("%.4g m deep", m)
}
