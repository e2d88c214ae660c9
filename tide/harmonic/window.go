package harmonic

import (
	"fmt"
	"math"
	"slices"
	"time"

	"followingsea.example/tide"
)

// Windows returns the intervals of [from, to] in which the bar has at least
// the depth it needs, in order, from the sum itself: no shape of the tide is
// assumed, so that stands, double high waters and diurnal tides are as they
// are. The bar is charted on the station's datum. Edges are as in
// tide.Table.Windows: cut where the question ends and not the water; a level
// that is only touched is no window. In ByYear the water may jump at New Year,
// and a window ends or begins there.
//
// ErrSpan for a span that is not positive or beyond 200 years, ErrStation for
// depths that are not finite.
func (t *Tide) Windows(b tide.Bar, from, to time.Time) ([]tide.Window, error) {
	return t.windows(b.Level(), true, from, to)
}

// Below returns the intervals of [from, to] in which the water stands at or
// below the height. Errors are those of Windows.
func (t *Tide) Below(height float64, from, to time.Time) ([]tide.Window, error) {
	return t.windows(height, false, from, to)
}

func (t *Tide) windows(level float64, above bool, from, to time.Time) ([]tide.Window, error) {
	if err := span(from, to); err != nil {
		return nil, err
	}
	if math.IsNaN(level) || math.IsInf(level, 0) {
		return nil, fmt.Errorf("%w: level %v m: want a finite height", ErrStation, level)
	}
	s := t.sum
	s.z0 -= level
	in := func(v float64) bool {
		if above {
			return v >= 0
		}
		return v <= 0
	}
	// The edges: every crossing, and in ByYear every New Year. Between two of
	// them the water is on one side, which its middle tells; the edges
	// themselves are zeros, whose sign is a matter of rounding.
	edges := []time.Time{from}
	for _, r := range s.roots(0, from, to) {
		edges = append(edges, r.at)
	}
	if s.nodes == ByYear {
		for y := from.UTC().Year() + 1; y <= to.UTC().Year(); y++ {
			if start, _ := yearOf(y); start.After(from) && start.Before(to) {
				edges = append(edges, start)
			}
		}
		slices.SortFunc(edges, time.Time.Compare)
	}
	edges = append(edges, to)
	var out []tide.Window
	for i, at := range edges[:len(edges)-1] {
		end := edges[i+1]
		if !at.Before(end) || !in(s.value(at.Add(end.Sub(at)/2))) {
			continue
		}
		if n := len(out); n > 0 && !at.After(out[n-1].To) {
			out[n-1].To = end
			continue
		}
		out = append(out, tide.Window{From: at, To: end})
	}
	beyond := func(at time.Time) bool {
		v := s.value(at)
		return v != 0 && in(v)
	}
	for i := range out {
		out[i].CutFrom = out[i].From.Equal(from) && beyond(from)
		out[i].CutTo = out[i].To.Equal(to) && beyond(to)
	}
	return out, nil
}
