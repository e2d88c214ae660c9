package passage

import "math"

// rest walks the rest of the way from the start of a cell at t seconds after
// the epoch.
func (w *Water) rest(cell int, t float64, by lane) walk {
	first := w.of[cell]
	g := *w.grid
	g.reaches = append([]reach(nil), g.reaches[first:]...)
	g.reaches[0].first = cell
	g.nodes = g.nodes[first*g.steps:]
	var k walk
	g.run(&k, t, by, nil)
	return k
}

// again is the same run for the same people in another day with the same
// places, its sea so many times as high, up to some seconds after the epoch. Its
// nodes are worked out as they are asked for, so that a few passages cost little;
// it belongs to one goroutine.
func (w *Water) again(day Day, sea, until float64) (*Water, error) {
	a := &Water{survey: w.survey, layout: w.layout, crew: w.crew, day: day, levels: w.levels, flows: w.flows}
	end := math.Min(w.end(), until)
	if err := a.raise(end, never); err != nil {
		return nil, err
	}
	for _, states := range a.states {
		for j := range states {
			states[j].Sea.Hs *= sea
			states[j].Old.Hs *= sea
		}
	}
	if a.layExits(end) {
		a.exits.fill, a.exits.has = a.exitTime, make([]bool, len(a.exits.time))
	}
	a.grid.lazily(a.node)
	return a, nil
}
