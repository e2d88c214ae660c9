// Forecast reads a wind.csv and says in words what is in it: how strong, from
// where on a course, since when, how steady, and what changes.
//
//	go run ./examples/forecast
//	go run ./examples/forecast -data wind.csv -course 60 -start 2026-09-12T10:00:00-02:00 -hours 3
//
// Without -data it reads an embedded forecast, which is invented. The columns
// are those of wind.ReadSeries. By hand: the part from astern is the wind times
// the cosine of the angle off the stern.
package main

import (
	"bytes"
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"math"
	"os"
	"time"

	"followingsea.example/examples/internal/lesson"
	"followingsea.example/wind"
)

//go:embed testdata/wind.csv
var invented []byte

func main() { lesson.Main("forecast", forecast) }

func forecast(f *flag.FlagSet) lesson.Body {
	data := f.String("data", "", "a wind.csv; without it an invented forecast")
	course := lesson.Number(f, "course", 60, 0, 360, "course of the run, degrees true")
	from := f.String("start", "2026-09-12T10:00:00-02:00", "start of the run, RFC 3339 with its zone")
	long := lesson.Number(f, "hours", 3, 0.1, 48, "hours on the water")
	level := lesson.Number(f, "level", 12, 1, 60, "wind from which you call it wind, in knots")
	return func(p *lesson.Page) error {
		text := invented
		if *data != "" {
			b, err := os.ReadFile(*data)
			if err != nil {
				return fmt.Errorf("-data: %w", err)
			}
			text = b
		}
		s, err := wind.ReadSeries(bytes.NewReader(text), 0)
		if err != nil {
			return fmt.Errorf("-data: %s: %w", *data, err)
		}
		start, err := time.Parse(time.RFC3339, *from)
		if err != nil {
			return fmt.Errorf("-start: %q: want a time such as 2026-09-12T10:00:00-02:00", *from)
		}
		end := start.Add(time.Duration(long() * float64(time.Hour)))
		around, err := s.Around(start, end, 3*time.Hour)
		if err != nil {
			return fmt.Errorf("-start: %w", err)
		}
		p.Line("FORECAST of %s, from %s to %s, on a course of %03.0f", start.Format("2 January 2006"), start.Format("15:04"), end.Format("15:04"), course())
		p.Line("")
		p.Line(" time |   kn  gusts  from  force |  off the stern  from astern kn  across kn")
		for t := start; !t.After(end); t = t.Add(time.Hour) {
			w, err := s.At(t)
			if err != nil {
				return fmt.Errorf("-hours: %w", err)
			}
			p.Line("%s | %s", t.Format("15:04"), row(w.Wind, course()))
		}
		p.Line("")
		switch on, err := s.Onset(start, level()*wind.Knot); {
		case errors.Is(err, wind.ErrBelow):
			p.Line("At the start it is below %.4g kn.", level())
		case err != nil:
			return err
		case on.Earlier:
			p.Line("It has blown %.4g kn and more for at least %.1f h.", level(), on.Blown.Hours())
		default:
			p.Line("It rose past %.4g kn at %s: by the start it has raised a sea for %.1f h.", level(), on.At.In(start.Location()).Format("15:04"), on.Blown.Hours())
		}
		for _, part := range []struct {
			name string
			wind.Mean
		}{{"three hours before", around.Before}, {"on the water", around.During}, {"three hours after", around.After}} {
			if part.N == 0 || part.From != part.From {
				p.Line("%-19s nothing is known, or it is calm", part.name)
				continue
			}
			p.Line("%-19s %4.1f kn from %03.0f, steadiness %.2f, %.1f to %.1f kn, %.0f %% of it on file", part.name, part.Speed/wind.Knot,
				part.From, part.Steadiness, part.Lowest/wind.Knot, part.Highest/wind.Knot, 100*part.Covered)
		}
		shifts, err := s.Shifts(wind.ShiftRule{Degrees: 45, Within: 3 * time.Hour})
		if err != nil && !errors.Is(err, wind.ErrCoarse) {
			return err
		}
		for _, c := range shifts {
			p.Line("from %s to %s a %v: from %03.0f to %03.0f", c.Start.In(start.Location()).Format("2 Jan 15:04"), c.End.In(start.Location()).Format("15:04"), c.Turn, c.Before.From, c.After.From)
		}
		p.Line("")
		p.Line("Steadiness: mean vector over mean speed, 1 from one quarter, 0 all round. The mean raises the sea; gusts hit you.")
		return nil
	}
}

func row(w wind.Wind, course float64) string {
	force, err := wind.Beaufort(w.Speed)
	if err != nil || w.IsCalm() {
		return " calm"
	}
	gust := "    -"
	if w.GustKnown() {
		gust = fmt.Sprintf("%5.1f", w.Gust/wind.Knot)
	}
	c := w.On(course)
	side := "" // dead astern or dead ahead
	if off := math.Round(c.OffStern); off != 0 && math.Abs(off) != 180 {
		side = map[bool]string{true: " from right", false: " from left"}[off > 0]
	}
	return fmt.Sprintf("%4.1f  %s   %03.0f  %5d | %3.0f%-11s %15.1f %10.1f", w.Speed/wind.Knot, gust, w.From, int(force), math.Abs(c.OffStern), side, c.Tail/wind.Knot+0, math.Abs(c.FromRight)/wind.Knot)
}
