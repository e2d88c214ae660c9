// Lastlight shows how the light of a day becomes an hour to turn back and an
// hour to be away by.
//
//	go run ./examples/lastlight
//	go run ./examples/lastlight -lat 44 -lon -34 -date 2026-11-20 -offset -2 -out 5 -home 2
//
// By hand: with O the speed made good out, H home and E the hours that are
// left, turn after E H / (O + H). Downwind out and upwind home that is early.
package main

import (
	"flag"
	"fmt"
	"math"
	"time"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/route"
)

func main() { lesson.Main("lastlight", lastLight) }

func lastLight(f *flag.FlagSet) lesson.Body {
	lat := lesson.Number(f, "lat", 44, -90, 90, "latitude, north positive")
	lon := lesson.Number(f, "lon", -34, -180, 180, "longitude, east positive")
	date := f.String("date", "2026-11-20", "day, as 2026-11-20")
	offset := lesson.Number(f, "offset", -2, -12, 14, "hours of the clock ahead of UTC")
	out := lesson.Number(f, "out", 4.5, 0.1, 20, "speed made good outward in knots")
	home := lesson.Number(f, "home", 1.5, 0, 20, "speed made good homeward in knots")
	endurance := lesson.Number(f, "endurance", 3, 0.1, 24, "hours you can paddle")
	reserve := lesson.Number(f, "reserve", 60, 0, 600, "minutes of light to keep in hand")
	distance := lesson.Number(f, "distance", 8, 0.1, 200, "length of the run in nautical miles, for going one way")
	return func(p *lesson.Page) error {
		noon, err := time.ParseInLocation("2006-01-02 15", *date+" 12", time.FixedZone("", int(math.Round(offset()*3600))))
		if err != nil {
			return fmt.Errorf("-date: %q: want a day such as 2026-11-20", *date)
		}
		day, err := route.Daylight(route.Point{Lat: lat(), Lon: lon()}, noon)
		if err != nil {
			return fmt.Errorf("-date: %w", err)
		}
		p.Line("LIGHT at %.4g, %.5g on %s, clock UTC%+.4g", lat(), lon(), noon.Format("2 January 2006"), offset())
		p.Line("")
		for _, e := range []struct {
			name     string
			SunEvent route.SunEvent
			note     string
		}{
			{"civil dawn", day.CivilDawn, "Sun 6 degrees under: enough light to see by in clear weather"}, {"sunrise", day.Sunrise, ""}, {"sunset", day.Sunset, ""},
			{"civil dusk", day.CivilDusk, "the last light to land by; under cloud it is dark before"},
			{"nautical dusk", day.NauticalDusk, "Sun 12 degrees under: no horizon, nobody sees a board"},
		} {
			p.Line("  %-14s %-12s %s", e.name, clock(e.SunEvent), e.note)
		}
		p.Line("")
		if day.CivilDusk.State != route.Happens {
			p.Line("There is no civil dusk that day: the Sun %v that line.", day.CivilDusk.State)
			return nil
		}
		latest := day.CivilDusk.Time.Add(-time.Duration(reserve() * float64(time.Minute)))
		oneWay := time.Duration(distance() / out() * float64(time.Hour))
		p.Line("ONE WAY: %.4g nmi at %.4g kn take %s; to land %.4g min before civil dusk be away by %s",
			distance(), out(), hours(oneWay.Hours()), reserve(), latest.Add(-oneWay).Round(time.Minute).Format("15:04"))
		p.Line("")
		p.Line("OUT AND HOME: out at %.4g kn, home at %.4g kn, %.4g h of paddling", out(), home(), endurance())
		p.Line("")
		p.Line(" away | time left  what ends it | turn at  after  how far   half the time would be")
		for k := 6; k >= 0; k-- {
			away := latest.Add(-time.Duration(k) * time.Hour).Round(time.Minute)
			left, ends := latest.Sub(away).Hours(), "the light"
			if left > endurance() {
				left, ends = endurance(), "the arms"
			}
			seconds, metres := route.TurnBack(left*3600, out()*route.Knot, home()*route.Knot)
			p.Line("%s | %9s  %-12s | %s   %5s  %3.1f nmi   %s", away.Format("15:04"), hours(left), ends,
				away.Add(time.Duration(seconds*float64(time.Second))).Round(time.Minute).Format("15:04"), hours(seconds/3600), metres/route.NauticalMile, halfway(left, out(), home()))
		}
		p.Line("")
		p.Line("The speeds are estimates: work it again with the slow ones. A head wind that rises on the way home")
		p.Line("moves the hour to turn to where it has been already.")
		return nil
	}
}

// halfway says where turning at half the time leaves the board.
func halfway(left, out, home float64) string {
	if short := left/2*out - left/2*home; short > 0.05 {
		return fmt.Sprintf("%.1f nmi short of home", short)
	}
	return "enough"
}

func clock(e route.SunEvent) string {
	if e.State != route.Happens {
		return string(e.State)
	}
	return e.Time.Round(time.Minute).Format("15:04")
}

func hours(h float64) string {
	m := int(math.Round(h * 60))
	return fmt.Sprintf("%d:%02d", m/60, m%60)
}
