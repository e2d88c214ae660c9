// Wavespeed shows how fast waves run, by period and by depth, and why ground
// swell outruns a board.
//
//	go run ./examples/wavespeed
//	go run ./examples/wavespeed -periods 4,6,8 -depths 3,10,inf -board 4
//
// By hand: in deep water the crests make 3.03 knots for each second of period
// (g T / 2 pi) and are 1.56 m long for each second squared; in water that is
// very shallow for its waves they make sqrt(g h), whatever the period.
package main

import (
	"flag"
	"fmt"
	"math"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/wave"
)

func main() { lesson.Main("wavespeed", waveSpeed) }

func waveSpeed(f *flag.FlagSet) lesson.Body {
	deep := math.Inf(1)
	periods := lesson.Numbers(f, "periods", []float64{2, 3, 4, 5, 6, 8, 10, 12, 16}, 0.5, 30, "periods in seconds")
	depths := lesson.Numbers(f, "depths", []float64{deep, 20, 10, 5, 2, 1}, 0.1, deep, "depths in metres; inf is deep water")
	board := lesson.Number(f, "board", 3.5, 0, 20, "speed of the board in knots")
	height := lesson.Number(f, "height", 1, 0, 20, "height of the waves in metres")
	mass := lesson.Number(f, "mass", 95, 20, 300, "paddler and board in kilograms")
	return func(p *lesson.Page) error {
		p.Line("SPEED OF THE CRESTS, knots, by period and depth")
		p.Line("")
		head := "period |"
		for _, h := range *depths {
			if math.IsInf(h, 1) {
				head += "    deep"
			} else {
				head += fmt.Sprintf("%6.4g m", h)
			}
		}
		p.Line("%s", head)
		for _, t := range *periods {
			row := fmt.Sprintf("%4.4g s |", t)
			for _, h := range *depths {
				v := wave.Solve(t, h)
				row += fmt.Sprintf("%7.1f%s", v.PhaseSpeed/wave.Knot, mark(v.Regime()))
			}
			p.Line("%s", row)
		}
		p.Line("d deep water (over half a length): only the period counts; s shallow (under a twentieth):")
		p.Line("only the depth counts, all waves run alike")
		p.Line("")
		p.Line("WHY GROUND SWELL OUTRUNS A BOARD: deep water, waves of %.4g m, a board at %.4g kn running with them", height(), board())
		p.Line("")
		p.Line("period | length  crests  energy |  a crest passes | steepest face  pushes %.4g kg", mass())
		p.Line("     s |      m      kn      kn |  the board every|           deg  along with N")
		for _, t := range *periods {
			v := wave.Solve(t, deep)
			row := fmt.Sprintf("%6.4g | %6.1f  %6.1f  %6.1f |", t, v.Length, v.PhaseSpeed/wave.Knot, v.GroupSpeed/wave.Knot)
			if m := v.Encounter(board()*wave.Knot, 0); m.Closing > 0 {
				row += fmt.Sprintf("%13.1f s  |", m.Period)
			} else {
				row += "  it leads them  |"
			}
			if v.Steepness(height()) > 0.142 {
				p.Line("%s   it breaks", row)
				continue
			}
			slope := math.Pi * height() / v.Length // of the face at its steepest, height over run
			p.Line("%s %13.1f %13.0f", row, math.Atan(slope)*180/math.Pi, mass()*wave.StandardGravity*slope)
		}
		p.Line("")
		p.Line("To be carried the board must reach the speed of the crests before the face has passed under it. The")
		p.Line("longer the wave the faster it runs and the flatter its face: the speed wanted grows and the push that")
		p.Line("could give it falls. examples/catch says which waves can be caught. Energy, and so the front of a")
		p.Line("swell, travels at half the speed of the crests.")
		return nil
	}
}

func mark(r wave.Regime) string {
	switch r {
	case wave.Deep:
		return "d"
	case wave.Shallow:
		return "s"
	}
	return " "
}
