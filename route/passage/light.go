package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// A daylight is the light of one day at the finish, in seconds after the
// epoch: from the start of civil twilight to its end.
type daylight struct {
	dawn, dusk float64
	why        string // why there is no number
}

// lights finds the civil twilights of every day of the passages, at the
// finish. A day without dusk because the sun stays up is light throughout.
func (s *survey) lights(end float64) error {
	finish := s.run.Points[len(s.run.Points)-1]
	// Days are counted in local mean time, so that a day's dusk follows its noon.
	zone := time.FixedZone("", int(math.Round(finish.Lon*240)))
	for t := -86400.0; t <= end+2*86400; t += 86400 {
		day, err := route.Daylight(finish, s.instant(t).In(zone))
		if err != nil {
			return fmt.Errorf("light at the finish: %w", err)
		}
		d := daylight{dawn: math.NaN(), dusk: math.NaN()}
		noon := clock.Seconds(s.epoch, day.Transit)
		switch day.CivilDawn.State {
		case route.Happens:
			d.dawn = clock.Seconds(s.epoch, day.CivilDawn.Time)
		case route.StaysAbove:
			d.dawn = noon - 43200
		default:
			d.why = "it does not get light that day"
		}
		switch day.CivilDusk.State {
		case route.Happens:
			d.dusk = clock.Seconds(s.epoch, day.CivilDusk.Time)
		case route.StaysAbove:
			d.dusk = noon + 43200
		default:
			d.why = "it does not get light that day"
		}
		s.light = append(s.light, d)
	}
	return nil
}

// lit returns the light of the day to which t belongs: the one whose dusk
// comes next.
func (w *Water) lit(t float64) daylight {
	for i, d := range w.light {
		if d.why != "" && i+1 < len(w.light) && t < w.light[i+1].dawn {
			return d
		}
		if t <= d.dusk {
			return d
		}
	}
	return daylight{dawn: math.NaN(), dusk: math.NaN(), why: "the light is not known"}
}

// isLight says whether it is light at t.
func (w *Water) isLight(t float64) route.Light {
	d := w.lit(t)
	switch {
	case d.why == "the light is not known":
		return route.LightUnknown
	case t >= d.dawn && t <= d.dusk:
		return route.LightDay
	}
	return route.LightDark
}

// daylight measures the light that is left at the arrival of the slow case, or
// that is still to come at the start, whichever is less.
func (w *Water) daylight(start float64, slow *walk) measure {
	d := w.lit(start)
	if d.why != "" {
		return measure{value: math.Inf(-1), along: nowhere, time: start, why: d.why}
	}
	if before := start - d.dawn; before < 0 {
		return measure{value: before, along: 0, time: start, why: "the start is before civil twilight"}
	}
	return measure{value: d.dusk - slow.arrival, along: w.length + 0*slow.arrival, time: slow.arrival, slow: true}
}
