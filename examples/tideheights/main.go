// Tideheights compares three ways to the height of the tide between low and
// high water: the rule of twelfths, the cosine, and a harmonic tide.
//
//	go run ./examples/tideheights
//	go run ./examples/tideheights -shallow -date 2026-03-20
//
// The port is invented: a tide of six constituents, with -shallow an estuary
// that adds two of shallow water. By hand: low + range x (1, 3, 6, 9, 11, 12)
// twelfths after each sixth of the time from low to high.
package main

import (
	"flag"
	"fmt"
	"math"
	"time"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

func main() { lesson.Main("tideheights", tideHeights) }

// port is an invented place; shallow water makes its rise short and its fall long.
func port(shallow bool) harmonic.Station {
	s := harmonic.Station{Name: "an invented port", Datum: tide.LAT, Z0: 2.9, Constituents: []harmonic.Constituent{
		{Name: "M2", Amplitude: 1.7, Lag: 140}, {Name: "S2", Amplitude: 0.6, Lag: 180}, {Name: "N2", Amplitude: 0.35, Lag: 120},
		{Name: "K2", Amplitude: 0.16, Lag: 178}, {Name: "K1", Amplitude: 0.08, Lag: 70}, {Name: "O1", Amplitude: 0.07, Lag: 330},
	}}
	if shallow {
		s.Name = "an invented estuary"
		s.Constituents = append(s.Constituents, harmonic.Constituent{Name: "M4", Amplitude: 0.35, Lag: 190}, harmonic.Constituent{Name: "M6", Amplitude: 0.12, Lag: 200})
	}
	return s
}

func tideHeights(f *flag.FlagSet) lesson.Body {
	date := f.String("date", "2026-06-15", "day, as 2026-06-15, in UTC")
	shallow := f.Bool("shallow", false, "an estuary instead of an open coast")
	return func(p *lesson.Page) error {
		day, err := time.Parse("2006-01-02", *date)
		if err != nil {
			return fmt.Errorf("-date: %q: want a day such as 2026-06-15", *date)
		}
		if y := day.Year(); y < 1900 || y > 2100 {
			return fmt.Errorf("-date: the year %d: want 1900 to 2100", y)
		}
		station := port(*shallow)
		full, err := harmonic.New(station, harmonic.AtInstant)
		if err != nil {
			return err
		}
		turns, err := full.Turns(day, day.Add(48*time.Hour), 0.01)
		if err != nil {
			return err
		}
		if len(turns) < 3 {
			return fmt.Errorf("only %d high and low waters in two days", len(turns))
		}
		p.Line("HEIGHT OF THE TIDE at %s, %s, metres above %s, times UTC", station.Name, day.Format("2 January 2006"), station.Datum)
		for i := range 2 {
			limb := tide.Limb{From: turns[i], To: turns[i+1]}
			minutes := math.Round(limb.Duration() / 60)
			p.Line("")
			p.Line("%v to %v: %s %.1f m in %.0f h %02.0f min", limb.From, limb.To, rises(limb), limb.Range(), math.Floor(minutes/60), math.Mod(minutes, 60))
			p.Line("")
			p.Line(" time | full tide  twelfths  cosine | twelfths are out  cosine is out")
			p.Line("      |         m         m       m |               cm             cm")
			for k := range 7 {
				at := limb.From.Time.Add(limb.To.Time.Sub(limb.From.Time) * time.Duration(k) / 6)
				h, tw, co := full.Height(at), limb.Height(at, tide.ByTwelfths), limb.Height(at, tide.ByCosine)
				p.Line("%s | %9.2f %9.2f %7.2f | %+16.0f %+14.0f", at.Round(time.Minute).Format("15:04"), h, tw, co, whole(100*(tw-h)), whole(100*(co-h)))
			}
			worst := 0.0
			for t := limb.From.Time; t.Before(limb.To.Time); t = t.Add(time.Minute) {
				worst = math.Max(worst, math.Abs(limb.Height(t, tide.ByCosine)-full.Height(t)))
			}
			p.Line("the cosine is at most %.0f cm from the full tide, %.0f %% of the range", 100*worst, 100*worst/limb.Range())
		}
		p.Line("")
		p.Line("Twelfths and cosine are one curve to within 2.6 %% of the range: the rule is the cosine for the head.")
		p.Line("What neither knows is the shape of the tide at the place. Air pressure and wind come on top of all three.")
		return nil
	}
}

func rises(l tide.Limb) string {
	if l.To.High {
		return "rises"
	}
	return "falls"
}

// whole rounds, and has no minus zero.
func whole(x float64) float64 { return math.Round(x) + 0 }
