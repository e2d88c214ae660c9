package passage

import (
	"math"
	"time"

	"followingsea.example/route"
)

// trackEvery is the distance between the fixes of a planned track, m.
const trackEvery = 1000

// Track returns the planned track of a departure on the expected times: a fix
// at the start, at every turning point, at the end, and between them every so
// many metres (0: 1000, and never closer than the cells of the water). It is
// made for [route.WriteTracksGPX] and [route.WriteTracks]: positions are
// rounded to a millionth of a degree, some ten centimetres, and times to the
// second, so that what is written reads back as it was.
//
// A passage that ends early has a track as far as it goes. Errors wrap
// [ErrInput] for a departure outside the prepared time, a distance that is
// negative or not a number, or a passage that makes no way at all.
func (w *Water) Track(depart time.Time, every float64) (route.Track, error) {
	start, err := w.departure(depart)
	if err != nil {
		return route.Track{}, err
	}
	if !(every >= 0 && every <= math.MaxFloat64) {
		return route.Track{}, inputError("distance between fixes", every, "0 or more metres")
	}
	if every == 0 {
		every = trackEvery
	}
	t := route.Track{Name: w.run.Name, Planned: true}
	last := 0.0
	put := func(along, at float64) {
		t.Fixes = append(t.Fixes, route.Fix{Point: printed(w.place(along)), Time: w.instant(at).Round(time.Second)})
		last = along
	}
	cells := w.grid.cells
	var k walk
	w.grid.run(&k, start, laneExpected, func(i int, enter, leave float64) {
		c := cells[i]
		if i == 0 {
			put(0, enter)
		}
		end := c.along + c.length
		if i == len(cells)-1 || cells[i+1].leg != c.leg || end-last >= every-1e-6 {
			put(end, leave)
		}
	})
	if len(t.Fixes) < 2 {
		return route.Track{}, inputError("departure", depart.Format(time.RFC3339), "one that makes some way; "+w.reason(&k))
	}
	return t, t.Check()
}

// printed rounds a position to the millionth of a degree that files print.
func printed(p route.Point) route.Point {
	return route.Point{Lat: math.Round(p.Lat*1e6) / 1e6, Lon: math.Round(p.Lon*1e6) / 1e6}
}
