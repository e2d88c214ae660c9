package main

import (
	"errors"
	"math"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"

	"followingsea.example/route"
)

// number is a number of the plan; null is NaN.
type number float64

// UnmarshalJSON reads a number or null.
func (x *number) UnmarshalJSON(b []byte) error {
	v := route.Value{}
	if err := v.UnmarshalJSON(b); err != nil {
		return err
	}
	*x = number(v.Number())
	return nil
}

// The part of the plan that is drawn.
type (
	point struct{ Lat, Lon number }
	airs  struct {
		Time  time.Time
		Speed number `json:"speed_m_s"`
		Gust  number `json:"gust_m_s"`
		From  number `json:"from_deg"`
	}
	day struct {
		Schema   int
		Invented bool
		Zone     string
		Run      struct {
			Name   string
			Points []point
			Exits  []struct {
				Name  string
				Point point
			}
			Coast [][]point
		}
		Wind []airs
		Tide []struct {
			Time   time.Time
			Height number `json:"height_m"`
			Rate   number `json:"stream_m_s"`
			Set    number `json:"stream_set_deg"`
		}
		Departures []struct {
			Depart   time.Time
			State    string
			Margin   number `json:"margin_steps"`
			Findings []struct {
				Rule  string
				Value number
				Time  time.Time
			}
		}
		Shown int
		Legs  []struct {
			Enter, Leave time.Time
			Wind         airs
			Rate         number `json:"stream_m_s"`
			Set          number `json:"stream_set_deg"`
		}
		WaysOut []struct {
			Point point
			Time  time.Time
		} `json:"ways_out"`
		zone *time.Location
	}
)

func (p point) place() route.Point { return route.Point{Lat: float64(p.Lat), Lon: float64(p.Lon)} }

// check refuses what is not a plan with a run and departures.
func (d *day) check() error {
	switch {
	case d.Schema != 1:
		return errors.New("not a plan of schema 1")
	case len(d.Run.Points) < 2 || len(d.Departures) == 0:
		return errors.New("a plan without run or departures")
	}
	for _, p := range d.Run.Points {
		if err := p.place().Check(); err != nil {
			return err
		}
	}
	var err error
	if d.zone, err = time.LoadLocation(d.Zone); err != nil {
		d.zone = time.UTC
	}
	return nil
}

func (d *day) title(text string) string {
	if d.Invented {
		text += " (invented)"
	}
	return d.Run.Name + ", " + d.Departures[0].Depart.In(d.zone).Format("2 January 2006") + ": " + text
}

// clock names the clock of the day.
func (d *day) clock() string { return offset(d.Departures[0].Depart.In(d.zone)) }

// figures are the plots of the day.
func (d *day) figures() []figure {
	return []figure{d.chart(), d.air(), d.water(), d.margins()}
}

// hourly is a panel over the time of day.
func (d *day) hourly(title, y string) *plot.Plot {
	p := newPlot(title, "time, "+d.clock(), y)
	p.X.Tick.Marker = clock{d.zone}
	first, last := d.Departures[0].Depart, d.Departures[len(d.Departures)-1].Depart
	p.X.Min, p.X.Max = seconds(first.Add(-time.Hour)), seconds(last.Add(2*time.Hour))
	return p
}

func seconds(t time.Time) float64 {
	if t.IsZero() {
		return math.NaN()
	}
	return float64(t.Unix())
}

// clip keeps what lies within the axis of a panel.
func clip(p *plot.Plot, x, y []float64) ([]float64, []float64) {
	var a, b []float64
	for i := range x {
		if x[i] >= p.X.Min && x[i] <= p.X.Max {
			a, b = append(a, x[i]), append(b, y[i])
		}
	}
	return a, b
}

// shade marks the hours of the departure that the plan shows in full.
func (d *day) shade(p *plot.Plot, name string) {
	if len(d.Legs) == 0 {
		return
	}
	x := []float64{seconds(d.Legs[0].Enter), seconds(d.Legs[len(d.Legs)-1].Leave)}
	band(p, name, grey, x, []float64{p.Y.Min, p.Y.Min}, []float64{p.Y.Max, p.Y.Max})
}

// air is the wind, and the sea that each departure meets.
func (d *day) air() figure {
	w := d.hourly(d.title("wind and sea"), "wind, knots")
	var x, mean, gust []float64
	for _, s := range d.Wind {
		x, mean, gust = append(x, seconds(s.Time)), append(mean, float64(s.Speed)/route.Knot), append(gust, float64(s.Gust)/route.Knot)
	}
	lo, hi := w.X.Min, w.X.Max
	cx, cy := clip(w, x, mean)
	curve(w, "mean wind", 1, cx, cy)
	cx, cy = clip(w, x, gust)
	curve(w, "gusts", 2, cx, cy)
	w.X.Min, w.X.Max, w.Y.Min = lo, hi, 0
	sea := d.hourly("", "Hs, m")
	var leastX, least, mostX, most []float64
	for _, dep := range d.Departures {
		for _, f := range dep.Findings {
			switch f.Rule {
			case "least_sea":
				leastX, least = append(leastX, seconds(f.Time)), append(least, float64(f.Value))
			case "greatest_sea":
				mostX, most = append(mostX, seconds(f.Time)), append(most, float64(f.Value))
			}
		}
	}
	dots(sea, "highest sea of a departure, swell and all", blue, draw.CircleGlyph{}, mostX, most)
	dots(sea, "lowest wind sea of a departure", orange, draw.PyramidGlyph{}, leastX, least)
	sea.X.Min, sea.X.Max, sea.Y.Min = lo, hi, 0
	sea.Legend.YOffs = 6
	w.X.Label.Text = ""
	d.shade(w, "on the water, as shown in the plan")
	sea.Y.Max *= 1.1
	d.shade(sea, "")
	w.Legend.YOffs = 6
	return figure{name: "day-wind-sea", shows: "wind and gusts through the day, and the sea that each departure meets", panels: []*plot.Plot{w, sea}, width: 480, height: 430}
}

// water is the height of the tide and the stream.
func (d *day) water() figure {
	h := d.hourly(d.title("height and stream"), "height of tide, m")
	s := d.hourly("", "stream, knots")
	axis := math.NaN()
	var x, height, rate []float64
	for _, t := range d.Tide {
		if bad(axis) && float64(t.Rate) > 0 {
			axis = float64(t.Set) // the first set is called positive
		}
		along, _ := route.Toward(float64(t.Rate)/route.Knot, float64(t.Set)).Resolve(axis)
		x, height, rate = append(x, seconds(t.Time)), append(height, float64(t.Height)), append(rate, along)
	}
	lo, hi := h.X.Min, h.X.Max
	cx, cy := clip(h, x, height)
	curve(h, "height of the tide", 0, cx, cy)
	cx, cy = clip(s, x, rate)
	curve(s, "stream, positive toward "+bearing(axis), 1, cx, cy)
	h.X.Min, h.X.Max, s.X.Min, s.X.Max = lo, hi, lo, hi
	h.X.Label.Text = ""
	h.Legend.Top, s.Legend.Top = true, true
	h.Y.Min, h.Y.Max, s.Y.Max = math.Min(h.Y.Min, 0), h.Y.Max*1.3, s.Y.Max+1
	d.shade(h, "on the water, as shown in the plan")
	d.shade(s, "")
	rule(s, 0)
	return figure{name: "day-tide-stream", shows: "height of the tide and the stream through the day", panels: []*plot.Plot{h, s}, width: 480, height: 430}
}

// margins is each departure's least margin.
func (d *day) margins() figure {
	p := d.hourly(d.title("departures and their least margin"), "least margin, steps (0 is at your own limit)")
	p.X.Label.Text = "departure, " + d.clock()
	var met, metY, broken, brokenY, open []float64
	low := -1.0
	for _, dep := range d.Departures {
		x, y := seconds(dep.Depart), float64(dep.Margin)
		switch {
		case bad(y):
			open = append(open, x)
		case dep.State == "met":
			met, metY = append(met, x), append(metY, y)
		default:
			broken, brokenY = append(broken, x), append(brokenY, y)
		}
		if y < low {
			low = y
		}
	}
	low = math.Floor(low) - 1
	lo, hi := p.X.Min, p.X.Max
	dots(p, "every limit met", blue, draw.CircleGlyph{}, met, metY)
	dots(p, "a limit broken", orange, draw.PyramidGlyph{}, broken, brokenY)
	dots(p, "at the foot: no margin to give, a limit is unknown or never met", black, draw.SquareGlyph{}, open, apply(open, func(float64) float64 { return low }))
	rule(p, 0)
	p.X.Min, p.X.Max, p.Y.Min = lo, hi, low-0.5
	p.Y.Max = math.Max(p.Y.Max, 1) + 2
	p.Legend.Top = true
	return figure{name: "day-margins", shows: "the least margin of each departure against the paddler's own limits", panels: []*plot.Plot{p}}
}

// chart is the run with coast, exits and where a board would drift.
func (d *day) chart() figure {
	p := newPlot(d.title("the run"), "km east of the start", "km north of the start")
	origin := route.Point{Lat: float64(d.Run.Points[0].Lat), Lon: float64(d.Run.Points[0].Lon)}
	flat := func(q route.Point) plotter.XY {
		l := route.Inverse(origin, q)
		v := route.Toward(l.Distance/1000, l.Course)
		return plotter.XY{X: v.East, Y: v.North}
	}
	for _, line := range d.Run.Coast {
		var ring plotter.XYs
		for _, q := range line {
			ring = append(ring, flat(q.place()))
		}
		a := area{XYs: ring, edge: grey}
		a.fill = noFill
		if len(ring) > 2 && ring[0] == ring[len(ring)-1] {
			a.fill = land
		}
		p.Add(backdrop{a})
	}
	var x, y []float64
	for _, q := range d.Run.Points {
		f := flat(q.place())
		x, y = append(x, f.X), append(y, f.Y)
	}
	curve(p, "the run", 0, x, y)
	d.drifts(p, flat)
	dots(p, "start", black, draw.CircleGlyph{}, x[:1], y[:1])
	var labels plotter.XYLabels
	x, y = nil, nil
	for _, e := range d.Run.Exits {
		f := flat(e.Point.place())
		x, y = append(x, f.X), append(y, f.Y)
		labels.XYs, labels.Labels = append(labels.XYs, f), append(labels.Labels, e.Name)
	}
	dots(p, "exits", green, draw.BoxGlyph{}, x, y)
	if l, err := plotter.NewLabels(labels); err == nil {
		l.Offset = vg.Point{X: 5, Y: -11}
		p.Add(l)
	}
	for _, a := range []*plot.Axis{&p.X, &p.Y} {
		a.Min, a.Max = a.Min-1.5, a.Max+1.5
	}
	p.Legend.Top, p.Legend.Left, p.Legend.XOffs = true, true, 8
	return figure{name: "day-map", shows: "the run, the coast, the exits and an hour adrift from each leg", panels: []*plot.Plot{p}, width: 500, height: 430, even: true}
}

// drifts adds an hour adrift from the middle of each leg, in the wind and the
// stream of that leg: the right-going and the left-going line of the table.
func (d *day) drifts(p *plot.Plot, flat func(route.Point) plotter.XY) {
	craft, err := route.FindCraft("surfboard")
	if err != nil {
		return
	}
	named := "an hour adrift with the board, from each leg"
	for _, leg := range d.Legs {
		middle := leg.Enter.Add(leg.Leave.Sub(leg.Enter) / 2)
		start, ok := d.at(middle)
		if !ok {
			continue
		}
		air := route.From(float64(leg.Wind.Speed), float64(leg.Wind.From))
		stream := route.Toward(float64(leg.Rate), float64(leg.Set))
		right, left, err := route.Drifter{Craft: craft, Start: start, Seconds: 3600,
			Wind:   func(route.Point, float64) route.Velocity { return air },
			Stream: func(route.Point, float64) route.Velocity { return stream }}.Pair()
		if err != nil {
			continue // wind or stream are not known there
		}
		for _, t := range []route.Drift{right, left} {
			var x, y []float64
			for _, q := range t.Points {
				f := flat(q)
				x, y = append(x, f.X), append(y, f.Y)
			}
			curve(p, named, 2, x, y)
			named = ""
		}
	}
}

// at is the place of the shown departure nearest to a time, as the ways out of
// the plan have it.
func (d *day) at(t time.Time) (route.Point, bool) {
	best, found := time.Duration(math.MaxInt64), route.Point{}
	for _, w := range d.WaysOut {
		if off := w.Time.Sub(t).Abs(); off < best {
			best, found = off, w.Point.place()
		}
	}
	return found, best < time.Hour
}
