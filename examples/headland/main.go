// Headland shows why the same sea is three different seas along one shore: off the headland where the tide runs, over the
// shoal, and under the cliff. It also reads a storm off two days of swell.
//
//	go run ./examples/headland
//
// Everything is package wave on one made-up forecast. The numbers are of linear waves and fitted laws of breaking, which
// scatter by 10 to 15 %.
package main

import (
	"fmt"
	"io"
	"math"
	"os"
	"strings"

	"followingsea.example/wave"
)

func main() {
	if err := headland(os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "headland:", err)
		os.Exit(1)
	}
}

// The forecast: a wind sea on a swell.
var (
	windSea = wave.System{Hs: 0.9, Period: 5}
	swell   = wave.System{Hs: 1.2, Period: 12}
)

func headland(w io.Writer) error {
	var b strings.Builder
	line := func(format string, args ...any) {
		fmt.Fprintln(&b, strings.TrimRight(fmt.Sprintf(format, args...), " "))
	}
	offshore(line)
	tideRace(line)
	shoal(line)
	cliff(line)
	storm(line)
	_, err := io.WriteString(w, b.String())
	return err
}

// offshore: what the forecast's two numbers mean for single waves.
func offshore(line func(string, ...any)) {
	both := wave.Combine(windSea.Hs, swell.Hs)
	n := wave.WavesIn(3600, windSea.Period)
	line("OFFSHORE: wind sea %.1f m and %.0f s, swell %.1f m and %.0f s; together %.1f m, not %.1f m",
		windSea.Hs, windSea.Period, swell.Hs, swell.Period, both, windSea.Hs+swell.Hs)
	line("")
	for _, s := range []wave.System{windSea, swell} {
		v := wave.Solve(s.Period, math.Inf(1))
		line("%4.0f s  crests %4.1f kn, energy %4.1f kn, length %3.0f m, steepness 1 in %.0f",
			s.Period, v.PhaseSpeed/wave.Knot, v.GroupSpeed/wave.Knot, v.Length, 1/v.Steepness(s.Hs))
	}
	line("one wave in ten is above %.1f m; of the %.0f of an hour the largest is likely %.1f to %.1f m",
		wave.Rayleigh.ExceededByOneIn(10, both), n, wave.Rayleigh.LargestQuantile(0.1, n, both), wave.Rayleigh.LargestQuantile(0.9, n, both))
	line("(measured seas have waves some 9.5 %% lower than this law: %.1f to %.1f m by Forristall's)",
		wave.Forristall.LargestQuantile(0.1, n, both), wave.Forristall.LargestQuantile(0.9, n, both))
	line("")
}

// tideRace: the stream works on the wind sea, not on the swell.
func tideRace(line func(string, ...any)) {
	line("THE TIDE RACE, 20 m deep: height and steepness over those in slack water")
	line("")
	line(" stream     wind sea %.0f s                  swell %.0f s", windSea.Period, swell.Period)
	for _, knots := range []float64{2, 0, -1, -2, -3, -4} {
		text := fmt.Sprintf("%+5.0f kn  ", knots)
		for _, s := range []wave.System{windSea, swell} {
			c := wave.OnCurrent(s.Period, 20, knots*wave.Knot)
			cell := c.State.String()
			if h, breaks := c.Height(s.Hs); c.State == wave.Runs {
				cell = fmt.Sprintf("%.1f m, steepness x %.2f", h, c.SteepnessRatio)
				if breaks {
					cell = fmt.Sprintf("breaks at %.1f m", h)
				}
			}
			text += fmt.Sprintf("%-30s", cell)
		}
		line("%s", text)
	}
	line("against %.1f kn the wind sea is stopped, the swell only by %.1f kn",
		-wave.StoppingCurrent(windSea.Period, 20)/wave.Knot, -wave.StoppingCurrent(swell.Period, 20)/wave.Knot)
	line("")
}

// shoal: the swell feels the bottom long before the wind sea does, gets lower at first, and then stands up.
func shoal(line func(string, ...any)) {
	const slope = 1.0 / 30
	line("OVER THE SHOAL, coming in at 30 degrees to the contours")
	line("")
	line("depth   wind sea           swell              Goda's limit for a single wave of the swell")
	for _, depth := range []float64{20, 10, 6, 4, 3, 2} {
		text := fmt.Sprintf("%3.0f m  ", depth)
		for _, s := range []wave.System{windSea, swell} {
			t := wave.Transform(s.Hs, 30, s.Period, math.Inf(1), depth)
			text += fmt.Sprintf("%.2f m at %2.0f deg   ", t.Height, t.Angle)
		}
		line("%s%.1f m", text, wave.Goda2010.Height(depth, swell.Period, slope))
	}
	b, big := wave.Break(swell.Hs, swell.Period, slope), wave.Break(2*swell.Hs, swell.Period, slope)
	line("a wave of %.1f m breaks at %.1f m in %.1f m of water, %v; the big one of %.1f m already in %.1f m",
		swell.Hs, b.Height, b.Depth, b.Type, 2*swell.Hs, big.Depth)
	beat := wave.Sets(0.7, 12, 0.5, 11, math.Inf(1))
	line("two swells of 12 and 11 s come in sets every %.0f s, %.0f waves from one to the next: watch for that long before landing", beat.Period, beat.Waves)
	line("")
}

// cliff: what comes back.
func cliff(line func(string, ...any)) {
	line("UNDER THE CLIFF, 10 m deep, the wind sea straight in")
	line("")
	v := wave.Solve(windSea.Period, 10)
	for _, s := range []struct {
		name string
		k    float64
	}{
		{"sheer rock", wave.SmoothSlope.Coefficient(wave.SurfSimilarity(4, windSea.Hs, windSea.Period))},
		{"boulders 1:2", wave.RubbleSlope.Coefficient(wave.SurfSimilarity(0.5, windSea.Hs, windSea.Period))},
		{"sand 1:30", wave.SandBeach.Coefficient(wave.SurfSimilarity(1.0/30, windSea.Hs, windSea.Period))},
	} {
		most, least := wave.ReflectedEnvelope(windSea.Hs, s.k)
		line("%-13s sends back %3.0f %%: %.1f and %.1f m in turn every %.0f m, %.1f m on the whole further off",
			s.name, 100*s.k, most, least, v.Length/4, wave.ReflectedSea(windSea.Hs, s.k))
	}
	line("")
}

// storm: the swell's age from two days of its period.
func storm(line func(string, ...any)) {
	o := wave.OriginOfArrivals(15, 12, 24*3600)
	line("THE STORM BEHIND THE SWELL: 15 s yesterday, 12 s today, so it is %.0f nautical miles off and blew %.1f days ago",
		o.Distance/wave.NauticalMile, (o.Age+24*3600)/86400)
	line("tomorrow it sends %.1f s", wave.SwellPeriod(o.Distance, o.Age+48*3600))
}
