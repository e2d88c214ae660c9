package passage

import (
	"cmp"
	"math"
	"slices"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// seconds returns the seconds from the epoch to t.
func (w *Water) seconds(t time.Time) float64 { return clock.Seconds(w.epoch, t) }

// place returns the position at a distance along the run.
func (w *Water) place(along float64) route.Point {
	// Findings lie at the corners of cells.
	if i, at := slices.BinarySearchFunc(w.cells, along, func(c cell, x float64) int { return cmp.Compare(c.along, x) }); at {
		return w.corners[i]
	}
	left := along
	for i, l := range w.legs {
		if left <= l.Distance || i == len(w.legs)-1 {
			return l.At(math.Min(left, l.Distance))
		}
		left -= l.Distance
	}
	return w.run.Points[0]
}

// chill measures the wind chill where the wind is strongest.
func (w *Water) chill(mid *walk) measure {
	e := &mid.ex[GreatestWind]
	m := measure{value: math.NaN(), along: nowhere, time: nowhere}
	if !e.any || e.unknown {
		return m
	}
	m.along, m.time = w.grid.cells[e.cell].along, e.time
	m.value = route.WindChill(w.air.between(w.air.airTemp, e.time), e.value)
	return m
}

// water returns the temperature of the water at the start.
func (w *Water) warmth(start float64) measure {
	return measure{value: w.air.between(w.air.waterTemp, start), along: nowhere, time: start}
}

// warned measures the official warning: 1 for one in force.
func (w *Water) warned() measure {
	text, given := w.day.Warning.Get()
	m := measure{value: math.NaN(), along: nowhere, time: nowhere}
	if given {
		m.value, m.why = 0, "an official forecast was read: none in force"
		if text != "" {
			m.value, m.why = 1, "in force: "+text
		}
	}
	return m
}

// missing says why a rule could not be compared.
func (w *Water) missing(r Rule) string {
	switch r {
	case LeastWind, GreatestWind, GreatestOffStern, LeastSteadyBefore, LeastSteadyAfter, GreatestShift:
		return "the wind is not known for all of it"
	case GreatestGust:
		return "gusts are not given for all of it"
	case GreatestOffshore:
		if w.run.Coast == nil {
			return "no coastline is given"
		}
		return "the wind is not known for all of it"
	case LeastSea:
		return w.seaWhy()
	case GreatestSteepness:
		return w.waterWhy()
	case GreatestSea, GreatestSwell:
		if w.day.Swell == nil {
			return "the swell is not given"
		}
		if r == GreatestSea {
			return w.waterWhy()
		}
		return w.seaWhy()
	case LeastRideable, GreatestDuration, LeastReserve, LeastDaylight:
		switch {
		case r == LeastReserve && w.endurance != w.endurance:
			return "the endurance is not given"
		case w.rideWhy != "":
			return w.rideWhy
		case w.day.Swell == nil:
			return "the swell is not given"
		}
		return w.seaWhy()
	case GreatestStream, GreatestAgainst:
		if len(w.day.Streams) == 0 {
			return "the stream is not given"
		}
		return "the stream is not known for all of it"
	case LeastDepth, GreatestBreaking:
		switch {
		case w.day.Tide == nil:
			return "the tide is not given"
		case r == GreatestBreaking && w.day.Swell == nil:
			return "the swell is not given"
		}
		if r == GreatestBreaking && len(w.day.Streams) == 0 {
			return "the stream is not given"
		}
		return "depth or tide is not known for all of it"
	case GreatestTimeToExit:
		if len(w.run.Exits) == 0 {
			return "no exits are given"
		}
		return "of the exits in reach something is not known"
	case LeastWaterTemperature:
		return "the temperature of the water is not given"
	case LeastWindChill:
		return "the temperature of the air is not given, or above 10 C where wind chill is not defined"
	case NoWarning:
		return "nobody said whether an official warning is in force"
	case LeastLeaders:
		return "the party is not given"
	}
	return "not known"
}

// waterWhy says why the sea on the stream and over the depth is not known.
func (w *Water) waterWhy() string {
	switch why := w.seaWhy(); {
	case w.fetchWhy != "", len(w.day.Wind) == 0:
		return why
	case len(w.day.Streams) == 0:
		return "the stream is not given, and the sea stands up on it"
	case w.day.Tide == nil:
		return "the tide is not given, and the sea feels the depth"
	default:
		for l := range w.run.Legs() {
			if _, ok := w.run.Depth(l).Get(); !ok {
				return "the depth is not given for all of it, and the sea feels it"
			}
		}
		return why
	}
}

func (w *Water) seaWhy() string {
	switch {
	case w.fetchWhy != "":
		return w.fetchWhy
	case len(w.day.Wind) == 0:
		return "no wind is given"
	}
	return "the sea is not known for all of it"
}
