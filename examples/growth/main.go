// Growth shows the sea that a steady wind raises, hour by hour, on a fetch.
//
//	go run ./examples/growth
//	go run ./examples/growth -wind 15 -fetch 8 -depth 5 -hours 1,2,3
//
// Each row is one question to wind.Grow; the band is the range of the four
// growth laws that the measurements at hand cannot tell apart. By hand: on the
// open sea and in the end Hs is 0.24 U^2/g, so 20 knots (10.3 m/s) raise 2.6 m.
package main

import (
	"flag"
	"fmt"
	"math"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/wave"
	"followingsea.example/wind"
)

func main() { lesson.Main("growth", growth) }

func growth(f *flag.FlagSet) lesson.Body {
	unlimited := math.Inf(1)
	speed := lesson.Number(f, "wind", 20, 3, 60, "mean wind at 10 m in knots, not a gust")
	fetch := lesson.Number(f, "fetch", 30, 0.1, unlimited, "open water up the wind in kilometres; inf is open sea")
	depth := lesson.Number(f, "depth", unlimited, 0.5, unlimited, "mean depth along the fetch in metres; inf is deep water")
	hours := lesson.Numbers(f, "hours", []float64{0.5, 1, 2, 3, 4, 6, 9, 12, 24}, 0.1, 240, "hours the wind has blown")
	return func(p *lesson.Page) error {
		c := wind.Conditions{Speed: speed() * wind.Knot, Fetch: fetch() * 1000, MeanDepth: depth()}
		force, err := wind.Beaufort(c.Speed)
		if err != nil {
			return err
		}
		p.Line("A WIND OF %.4g KNOTS (%v) %s, %s", speed(), force, far(fetch()), deep(depth()))
		p.Line("")
		p.Line("blown |   Hs    Tp  crests  steep | band of the laws        | what stops it")
		p.Line("    h |    m     s      kn        |        Hs m        Tp s |")
		for _, h := range *hours {
			c.Duration = h * 3600
			sea, band := wind.Grow(nil, c), wind.Band(c)
			bump := wave.Solve(sea.Tp, c.MeanDepth)
			p.Line("%5.4g | %4.2f %5.1f %7.1f %6.3f | %5.2f to %.2f %4.1f to %.1f | %v", h, sea.Hs, sea.Tp, bump.PhaseSpeed/wave.Knot,
				bump.Steepness(sea.Hs), band.LowHs, band.HighHs, band.LowTp, band.HighTp, sea.Limit)
		}
		p.Line("")
		if d := wind.MinimumDuration(nil, c); !math.IsInf(c.Fetch, 1) && d > 0 {
			p.Line("After %.1f h this fetch has given what it can: more hours raise no more sea, more wind does.", d/3600)
		}
		c.Duration = unlimited
		stronger := c
		stronger.Speed *= 1.2
		a, b := wind.Grow(nil, c), wind.Grow(nil, stronger)
		p.Line("A fifth more wind makes the sea in the end %.0f %% higher and its period %.0f %% longer: so much is a", 100*(b.Hs/a.Hs-1), 100*(b.Tp/a.Tp-1))
		p.Line("forecast of the sea out, by a forecast of the wind that is a fifth out.")
		probable, _ := force.OpenSeaHeight()
		p.Line("The Beaufort table prints %.4g m for force %d: a grown open sea, far from land.", probable, int(force))
		return nil
	}
}

func far(km float64) string {
	if math.IsInf(km, 1) {
		return "ON THE OPEN SEA"
	}
	return fmt.Sprintf("ON %.4g KM OF FETCH", km)
}

func deep(m float64) string {
	if math.IsInf(m, 1) {
		return "deep water"
	}
	return fmt.Sprintf("%.4g m deep", m)
}
