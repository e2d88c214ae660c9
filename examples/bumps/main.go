// Bumps shows which seas are good to run downwind: why a wind sea a few hours
// old is better than the grown sea of the next day, why ground swell in deep
// water is never caught, and what a minute on the water looks like.
//
//	go run ./examples/bumps
//
// The numbers are estimates of package ride: proposal, no published source.
package main

import (
	"fmt"
	"io"
	"math"
	"os"
	"strings"

	"followingsea.example/wave/ride"
	"followingsea.example/wind"
)

func main() {
	if err := bumps(os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "bumps:", err)
		os.Exit(1)
	}
}

var (
	club  = ride.Paddler{Cruise: 1.8, Sprint: 3.0} // 6.5 and 10.8 km/h on flat water
	racer = ride.Paddler{Cruise: 2.4, Sprint: 3.8}
	deep  = math.Inf(1)
)

func bumps(w io.Writer) error {
	p := &printer{w: w}
	for _, part := range []func(*printer) error{heights, ages, swell, minute} {
		if err := part(p); err != nil {
			return err
		}
	}
	return p.err
}

// printer keeps the first error of writing.
type printer struct {
	w   io.Writer
	err error
}

func (p *printer) line(format string, args ...any) {
	if p.err == nil {
		_, p.err = fmt.Fprintln(p.w, strings.TrimRight(fmt.Sprintf(format, args...), " "))
	}
}

// heights: one wave at a time.
func heights(p *printer) error {
	p.line("HOW HIGH A BUMP MUST BE: cruise 1.8, sprint 3.0 m/s on flat water, 10 m/s of wind astern")
	p.line("")
	p.line("period  speed  length | glides  holds  caught     | a bump of 0.5 m")
	p.line("     s    m/s       m |      m      m       m     |")
	for _, period := range []float64{2, 2.5, 3, 3.5, 4, 5, 6} {
		a, err := club.Appraise(ride.Bump{Height: 0.5, Period: period, Depth: deep, Wind: 10})
		if err != nil {
			return err
		}
		p.line("%6.1f %6.1f %7.1f | %6.2f %6.2f %7.2f     | %s", period, a.Celerity, a.Length, a.Glide, a.Hold, a.Catch, a.Verdict)
	}
	p.line("")
	return nil
}

// sea is one age of one wind.
type sea struct {
	hours, hs, tp float64
	club, racer   ride.Ride
}

// ageing grows the sea of a wind over a fetch and appraises it at each age.
func ageing(speed, fetch float64) ([]sea, error) {
	a, err := club.Prepare()
	if err != nil {
		return nil, err
	}
	b, err := racer.Prepare()
	if err != nil {
		return nil, err
	}
	var seas []sea
	for _, hours := range []float64{2, 4, 8, 24, 72} {
		grown := wind.Grow(wind.JONSWAP, wind.Conditions{Speed: speed, Fetch: fetch, Duration: hours * 3600, MeanDepth: deep})
		if !grown.Known() {
			return nil, fmt.Errorf("no sea known after %v h of %v m/s", hours, speed)
		}
		s := ride.Sea{WindSea: ride.System{Hs: grown.Hs, Tp: grown.Tp}, Wind: speed, Depth: deep}
		x := sea{hours: hours, hs: grown.Hs, tp: grown.Tp}
		if x.club, err = a.Sea(s); err != nil {
			return nil, err
		}
		if x.racer, err = b.Sea(s); err != nil {
			return nil, err
		}
		seas = append(seas, x)
	}
	return seas, nil
}

// ages: the same wind, older and older.
func ages(p *printer) error {
	p.line("HOW THE SEA AGES, AND WHAT IT BRINGS")
	for _, speed := range []float64{10, 13} {
		for _, fetch := range []float64{20e3, 2000e3} {
			name := "20 km of fetch"
			if fetch > 1e6 {
				name = "open sea"
			}
			seas, err := ageing(speed, fetch)
			if err != nil {
				return err
			}
			p.line("")
			p.line("%.0f m/s, %s; longest wave the club paddler can hold: %.1f s", speed, name, seas[0].club.LongestPeriod)
			p.line("after    Hs    Tp | dominant wave caught | rideable share | mean speed, m/s  | racer")
			p.line("    h     m     s |  needs m   of them   |   of the energy | flat water %.1f  | %.1f", seas[0].club.FlatSpeed, seas[0].racer.FlatSpeed)
			for _, s := range seas {
				needs := fmt.Sprintf("%6.2f", s.club.DominantCatch)
				if s.club.DominantCatch > 0.10*9.80665*s.tp*s.tp/(2*math.Pi) {
					needs = "too fast"
				}
				p.line("%5.0f %5.2f %5.1f | %8s %7.0f %%  | %13.0f %% |    %.2f ± %.2f   | %.2f", s.hours, s.hs, s.tp, needs,
					100*s.club.DominantShare, 100*s.club.EnergyShare, s.club.Speed, s.club.Spread, s.racer.Speed)
			}
		}
	}
	p.line("")
	return nil
}

// swell: long waves in deep water, and where it becomes shallow.
func swell(p *printer) error {
	ready, err := club.Prepare()
	if err != nil {
		return err
	}
	p.line("GROUND SWELL OF 2 M, NO WIND")
	p.line("")
	p.line("period  speed | must be, to be held | deep water | mean speed gained | in 2 m of water")
	p.line("     s    m/s |                   m |            |               m/s | m/s, caught at m")
	for _, period := range []float64{10, 12, 14, 16} {
		a, err := ready.Bump(ride.Bump{Height: 2, Period: period, Depth: deep})
		if err != nil {
			return err
		}
		run, err := ready.Sea(ride.Sea{Swell: ride.System{Hs: 2, Tp: period}, Depth: deep})
		if err != nil {
			return err
		}
		bar, err := ready.Bump(ride.Bump{Height: 0.5, Period: period, Depth: 2})
		if err != nil {
			return err
		}
		p.line("%6.0f %6.1f | %19.0f | %-10s | %17.2f | %5.1f   %6.2f", period, a.Celerity, a.Hold, a.Verdict, run.Gain, bar.Celerity, bar.Catch)
	}
	p.line("")
	return nil
}

// minute: the speed of the board, second by second.
func minute(p *printer) error {
	s := ride.Sea{WindSea: ride.System{Hs: 0.7, Tp: 3.6}, Wind: 10, Depth: deep}
	const step = 0.05
	run, err := club.Simulate(s, ride.Run{Seed: 21, Seconds: 60, Step: step, Keep: int(2 / step)})
	if err != nil {
		return err
	}
	p.line("A MINUTE IN 0.7 M AND 3.6 S, 10 M/S OF WIND (simulated; s: sprinting on a face)")
	p.line("")
	for _, m := range run.Moments {
		mark := ""
		if m.Sprinting {
			mark = " s"
		}
		p.line("%3.0f s %4.1f m/s %s%s", math.Floor(m.Time), m.Speed, strings.Repeat("#", int(math.Round(m.Speed*8))), mark)
	}
	p.line("")
	p.line("mean %.1f m/s, fastest %.1f m/s, %.0f %% of the minute faster than a sprint on flat water", run.Speed, run.Peak, 100*run.RidingShare)
	return nil
}
