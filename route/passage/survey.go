package passage

import (
	"fmt"
	"math"
	"slices"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// A survey is what a run is without any forecast: its cells, the shore beside
// them, the places where the sea is worked out and how far the waves come to
// each, and the light at the finish. A search makes it once for a run and every
// forecast uses it.
type survey struct {
	run     route.Run
	options Options

	legs    []route.Leg
	cells   []cell
	corners []route.Point // where each cell begins
	centres []route.Point // of each cell
	courses []float64
	shores  []shore
	walls   []wall  // of each cell
	length  float64 // of the run, m

	stations []station
	every    int // cells to a station
	fetchWhy string

	epoch time.Time
	to    float64 // the last departure, s after the epoch
	light []daylight
}

type shore struct {
	known             bool
	distance, bearing float64
}

// A station is a place where the sea is worked out for the cells around it.
type station struct {
	at    route.Point
	fetch []float64 // rose of fetches, m, every roseStep degrees; nil when unknown
	depth float64   // mean depth along the fetch, m
}

// roseSize is the number of directions in which the fetch is measured.
const roseSize = 72

const mostCells = 20000

// surveyed surveys a run. The options are complete. stop is asked between the
// long parts and ends the work with its error.
func surveyed(run route.Run, o Options, stop func() error) (*survey, error) {
	s := &survey{run: run, options: o, epoch: o.From, to: clock.Seconds(o.From, o.To)}
	if err := s.cut(); err != nil {
		return nil, err
	}
	if err := s.beside(stop); err != nil {
		return nil, err
	}
	if err := s.anchor(stop); err != nil {
		return nil, err
	}
	return s, s.lights(s.to + longestPassage)
}

// cut divides the run into cells.
func (s *survey) cut() error {
	outlines := make([]*route.Coast, len(s.run.Areas))
	for i, a := range s.run.Areas {
		o, err := a.Outline()
		if err != nil {
			return err
		}
		outlines[i] = o
	}
	s.legs = s.run.Legs()
	for l, leg := range s.legs {
		n := max(1, int(math.Ceil(leg.Distance/s.options.Cell)))
		if len(s.cells)+n > mostCells {
			return inputError("run", fmt.Sprintf("longer than %d steps of %g m", mostCells, s.options.Cell), "a shorter run or longer cells")
		}
		step := leg.Distance / float64(n)
		for k := range n {
			a, b := leg.At(float64(k)*step), leg.At(float64(k+1)*step)
			piece := route.ShortInverse(a, b)
			course := piece.Mean()
			v := route.Toward(1, course)
			c := cell{east: v.East, north: v.North, length: step, along: s.length, charted: math.NaN(), leg: l,
				awayE: math.NaN(), awayN: math.NaN()}
			if d, ok := s.run.Depth(l).Get(); ok {
				c.charted = d
			}
			for i, o := range outlines {
				in, err := enters(o, a, b)
				if err != nil {
					return err
				}
				if !in {
					continue
				}
				switch s.run.Areas[i].Kind {
				case route.Avoid:
					c.avoid = true
				case route.Traffic:
					c.traffic = true
				case route.NoSignal:
					c.silent = true
				}
			}
			s.cells = append(s.cells, c)
			s.corners = append(s.corners, a)
			s.centres = append(s.centres, piece.At(step/2))
			s.courses = append(s.courses, course)
			s.length += step
		}
	}
	return nil
}

// enters reports whether any of the way from a to b lies inside an outline.
func enters(o *route.Coast, a, b route.Point) (bool, error) {
	in, err := o.Land(a)
	if err != nil || in {
		return in, err
	}
	x, err := o.Crosses(a, b)
	return x.Land, err
}

// beside finds the nearest shore of every cell.
func (s *survey) beside(stop func() error) error {
	s.shores = make([]shore, len(s.cells))
	if err := s.findWalls(); err != nil {
		return err
	}
	if s.run.Coast == nil {
		return nil
	}
	for i, p := range s.centres {
		if err := stop(); err != nil {
			return err
		}
		near, err := s.run.Coast.NearestShore(p)
		if err != nil {
			continue // not known
		}
		s.shores[i] = shore{true, near.Distance, near.Bearing}
		away := route.Toward(1, near.Bearing+180)
		s.cells[i].awayE, s.cells[i].awayN = away.East, away.North
	}
	return nil
}

// anchor sets the stations and measures the fetch from each.
func (s *survey) anchor(stop func() error) error {
	if s.run.Coast == nil {
		s.fetchWhy = "no coastline is given, so the fetch is not known"
	}
	s.every = max(1, int(s.options.Station/s.cells[0].length+0.5))
	for i := 0; i < len(s.centres); i += s.every {
		if err := stop(); err != nil {
			return err
		}
		at := s.centres[min(i+s.every/2, len(s.centres)-1)]
		t := station{at: at, depth: s.run.FetchDepth.Or(math.Inf(1))}
		if s.run.Coast != nil {
			t.fetch = s.run.Coast.FetchRose(at, roseSize, s.options.LongFetch)
		}
		s.stations = append(s.stations, t)
	}
	return nil
}

// A reach is a row of cells that share the water: one leg, one station, one
// wind record and one stream. All of it is worked out once for the whole reach,
// at its middle cell.
type reach struct {
	first, after int // its cells
	middle       int
	station      int
	wind, stream int // index of the record, -1 for none
	wall         wall
}

// A layout is the reaches of a run for wind records and streams at certain
// places.
type layout struct {
	winds, streams []route.Point
	reaches        []reach
	of             []int // reach of each cell
}

func (s *survey) layout(winds, streams []route.Point) *layout {
	l := &layout{winds: winds, streams: streams, of: make([]int, len(s.cells))}
	for i, p := range s.centres {
		at := reach{first: i, station: i / s.every, wind: nearest(p, winds), stream: nearest(p, streams)}
		n := len(l.reaches) - 1
		if n < 0 || s.cells[i].leg != s.cells[i-1].leg || l.reaches[n].station != at.station || l.reaches[n].wind != at.wind || l.reaches[n].stream != at.stream || !s.walls[i].same(s.walls[i-1]) {
			l.reaches = append(l.reaches, at)
			n++
		}
		l.reaches[n].after = i + 1
		l.of[i] = n
	}
	for i := range l.reaches {
		r := &l.reaches[i]
		r.middle = (r.first + r.after) / 2
		r.wall = nearestWall(s.walls[r.first:r.after])
	}
	return l
}

// fits reports whether the layout is that of these places.
func (l *layout) fits(winds, streams []route.Point) bool {
	return l != nil && slices.Equal(l.winds, winds) && slices.Equal(l.streams, streams)
}

// nearest returns the index of the place nearest to p, -1 when there is none.
func nearest(p route.Point, places []route.Point) int {
	if len(places) <= 1 {
		return len(places) - 1
	}
	best, least := 0, math.Inf(1)
	for k, q := range places {
		if d := route.ShortInverse(p, q).Distance; d < least {
			best, least = k, d
		}
	}
	return best
}

func windPlaces(d *Day) []route.Point {
	ps := make([]route.Point, len(d.Wind))
	for i, a := range d.Wind {
		ps[i] = a.At
	}
	return ps
}

func streamPlaces(d *Day) []route.Point {
	ps := make([]route.Point, len(d.Streams))
	for i, g := range d.Streams {
		ps[i] = g.At
	}
	return ps
}

// levels looks the tide up at the first n instants.
func (s *survey) levels(tide HeightSource, n int) []level {
	ls := make([]level, n)
	for j := range ls {
		ls[j] = levelOf(tide, s.instant(float64(j)*s.options.Step))
	}
	return ls
}

// flows looks each of the streams up at the first n instants.
func (s *survey) flows(streams []StreamGauge, n int) [][]route.Velocity {
	vs := make([][]route.Velocity, len(streams))
	for g, x := range streams {
		vs[g] = make([]route.Velocity, n)
		for j := range n {
			vs[g][j] = route.Velocity(x.Stream.Velocity(s.instant(float64(j) * s.options.Step)))
		}
	}
	return vs
}

// instant returns the instant t seconds after the epoch. It is only called
// with times that a walk has reached.
func (s *survey) instant(t float64) time.Time {
	at, err := clock.After(s.epoch, t)
	if err != nil {
		return time.Time{}
	}
	return at
}

// instants is the number of instants of a grid that reaches to end.
func (o Options) instants(end float64) int { return int(math.Ceil(end/o.Step)) + 2 }
