package main

import (
	"fmt"
	"image/color"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"gonum.org/v1/plot"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/plotter"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/draw"
	"gonum.org/v1/plot/vg/vgimg"
	"gonum.org/v1/plot/vg/vgsvg"
)

// A figure is one or more panels, one above the other.
type figure struct {
	name, shows   string
	panels        []*plot.Plot
	width, height vg.Length
	even          bool // the same scale both ways, as on a chart
}

// The colours are Okabe and Ito's, which people with any colour vision can
// tell apart; the dashes do it in black and white.
var (
	black  = color.NRGBA{A: 255}
	blue   = color.NRGBA{R: 0, G: 114, B: 178, A: 255}
	orange = color.NRGBA{R: 213, G: 94, B: 0, A: 255}
	green  = color.NRGBA{R: 0, G: 158, B: 115, A: 255}
	purple = color.NRGBA{R: 204, G: 121, B: 167, A: 255}
	sky    = color.NRGBA{R: 86, G: 180, B: 233, A: 255}
	grey   = color.NRGBA{R: 110, G: 110, B: 110, A: 255}

	hues   = []color.Color{black, blue, orange, green, purple, sky}
	dashes = [][]vg.Length{nil, {8, 3}, {2, 2}, {8, 3, 2, 3}, {12, 3}, {4, 2}}
)

// newPlot is a plot with a title and axes that say their units.
func newPlot(title, x, y string) *plot.Plot {
	p := plot.New()
	p.Title.Text = title
	p.Title.TextStyle.Font = font.From(plot.DefaultFont, 12)
	p.Title.Padding = 6
	p.X.Label.Text, p.Y.Label.Text = x, y
	for _, a := range []*plot.Axis{&p.X, &p.Y} {
		a.Label.TextStyle.Font = font.From(plot.DefaultFont, 10)
		a.Tick.Label.Font = font.From(plot.DefaultFont, 9)
		a.Tick.Marker = ruler{}
		a.Label.Padding = 4
	}
	p.Legend.TextStyle.Font = font.From(plot.DefaultFont, 9)
	p.Legend.Padding = 2
	p.Legend.ThumbnailWidth = 30
	p.Legend.XOffs, p.Legend.YOffs = -6, -6
	g := plotter.NewGrid()
	g.Vertical.Color, g.Horizontal.Color = color.Gray{Y: 225}, color.Gray{Y: 225}
	p.Add(g)
	return p
}

// curve adds y over x; a NaN interrupts the line. It is named in the legend
// unless the name is empty.
func curve(p *plot.Plot, name string, style int, x, y []float64) {
	hue, dash := hues[style%len(hues)], dashes[style%len(dashes)]
	var part plotter.XYs
	named := name == ""
	flush := func() {
		if len(part) > 1 {
			l := &plotter.Line{XYs: part, LineStyle: draw.LineStyle{Color: hue, Width: 1.6, Dashes: dash}}
			p.Add(l)
			if !named {
				p.Legend.Add(name, l)
				named = true
			}
		}
		part = nil
	}
	for i := range x {
		if bad(x[i]) || bad(y[i]) {
			flush()
			continue
		}
		part = append(part, plotter.XY{X: x[i], Y: y[i]})
	}
	flush()
}

// band shades between two curves.
func band(p *plot.Plot, name string, hue color.NRGBA, x, lo, hi []float64) {
	var ring plotter.XYs
	for i := range x {
		if !bad(lo[i]) && !bad(hi[i]) {
			ring = append(ring, plotter.XY{X: x[i], Y: lo[i]})
		}
	}
	for i := len(x) - 1; i >= 0; i-- {
		if !bad(lo[i]) && !bad(hi[i]) {
			ring = append(ring, plotter.XY{X: x[i], Y: hi[i]})
		}
	}
	if len(ring) < 4 {
		return
	}
	hue.A = 60
	a := area{XYs: ring, fill: hue}
	p.Add(a)
	if name != "" {
		p.Legend.Add(name, a)
	}
}

// dots adds marks, filled or hollow by their shape.
func dots(p *plot.Plot, name string, hue color.Color, shape draw.GlyphDrawer, x, y []float64) {
	var xy plotter.XYs
	for i := range x {
		if !bad(x[i]) && !bad(y[i]) {
			xy = append(xy, plotter.XY{X: x[i], Y: y[i]})
		}
	}
	if len(xy) == 0 {
		return
	}
	s := &plotter.Scatter{XYs: xy, GlyphStyle: draw.GlyphStyle{Color: hue, Radius: 3.5, Shape: shape}}
	p.Add(s)
	if name != "" {
		p.Legend.Add(name, s)
	}
}

// area is a filled ring, clipped to the plot.
type area struct {
	plotter.XYs
	fill, edge color.Color
}

// Plot draws the ring.
func (a area) Plot(c draw.Canvas, p *plot.Plot) {
	tx, ty := p.Transforms(&c)
	var ring []vg.Point
	for _, q := range a.XYs {
		ring = append(ring, vg.Point{X: tx(q.X), Y: ty(q.Y)})
	}
	c.FillPolygon(a.fill, c.ClipPolygonXY(ring))
	if a.edge != nil {
		c.StrokeLines(draw.LineStyle{Color: a.edge, Width: 0.8}, c.ClipLinesXY(ring)...)
	}
}

// DataRange is that of the ring, so that a shaded band is in view.
func (a area) DataRange() (xmin, xmax, ymin, ymax float64) { return plotter.XYRange(a.XYs) }

// Thumbnail fills the mark of the legend.
func (a area) Thumbnail(c *draw.Canvas) {
	c.FillPolygon(a.fill, corners(c.Rectangle))
}

// backdrop is an area that does not widen the axes: land on a map.
type backdrop struct{ area area }

// Plot draws the area.
func (b backdrop) Plot(c draw.Canvas, p *plot.Plot) { b.area.Plot(c, p) }

// ruler ticks an axis at some eight round numbers, each with its label.
type ruler struct{}

// Ticks are the multiples of 1, 2 or 5 times a power of ten.
func (ruler) Ticks(lo, hi float64) []plot.Tick {
	rough := (hi - lo) / 8
	step := math.Pow(10, math.Floor(math.Log10(rough)))
	for _, k := range []float64{2, 2.5, 2} { // 2, 5, 10
		if step < rough {
			step *= k
		}
	}
	var ticks []plot.Tick
	for i := math.Ceil(lo / step); i*step <= hi*(1+1e-9) && len(ticks) < 30; i++ {
		ticks = append(ticks, plot.Tick{Value: i * step, Label: strconv.FormatFloat(math.Round(i*step*1e6)/1e6+0, 'f', -1, 64)})
	}
	return ticks
}

// rule draws a thin line across the plot at a height.
func rule(p *plot.Plot, y float64) {
	f := plotter.NewFunction(func(float64) float64 { return y })
	f.LineStyle = draw.LineStyle{Color: grey, Width: 0.8}
	p.Add(f)
}

// clock writes the ticks of an axis in Unix seconds as the time of a zone.
type clock struct{ zone *time.Location }

// Ticks are whole hours, named every second or third of them if they are many.
func (k clock) Ticks(lo, hi float64) []plot.Tick {
	every := 1
	for (hi-lo)/3600 > float64(10*every) {
		every++
	}
	var ticks []plot.Tick
	t := time.Unix(int64(lo), 0).In(k.zone)
	for t = t.Truncate(time.Hour); float64(t.Unix()) <= hi; t = t.Add(time.Hour) {
		if float64(t.Unix()) < lo {
			continue
		}
		label := ""
		if t.Hour()%every == 0 {
			label = t.Format("15:04")
		}
		ticks = append(ticks, plot.Tick{Value: float64(t.Unix()), Label: label})
	}
	return ticks
}

func bad(x float64) bool { return math.IsNaN(x) || math.IsInf(x, 0) }

// steps is from lo to hi in n steps.
func steps(lo, hi float64, n int) []float64 {
	var x []float64
	for i := range n + 1 {
		x = append(x, lo+(hi-lo)*float64(i)/float64(n))
	}
	return x
}

// save writes the figure in both forms.
func (f figure) save(folder string) error {
	w, h := f.width, f.height
	if w == 0 {
		w, h = 17*vg.Centimeter, 11*vg.Centimeter
	}
	img := vgimg.NewWith(vgimg.UseWH(w, h), vgimg.UseDPI(140))
	svg := vgsvg.New(w, h)
	for _, c := range []vg.CanvasSizer{img, svg} {
		f.draw(draw.New(c))
	}
	if err := write(filepath.Join(folder, f.name+".png"), vgimg.PngCanvas{Canvas: img}); err != nil {
		return err
	}
	return write(filepath.Join(folder, f.name+".svg"), svg)
}

func (f figure) draw(c draw.Canvas) {
	c.FillPolygon(color.White, corners(c.Rectangle))
	column := make([][]*plot.Plot, len(f.panels))
	for i, p := range f.panels {
		column[i] = []*plot.Plot{p}
	}
	tiles := draw.Tiles{Rows: len(f.panels), Cols: 1, PadTop: 6, PadBottom: 6, PadLeft: 6, PadRight: 14, PadY: 10}
	canvases := plot.Align(column, tiles, c)
	for i, p := range f.panels {
		if f.even {
			level(p, canvases[i][0])
		}
		legend := p.Legend // drawn by hand, on a white plate inside the axes
		p.Legend = plot.NewLegend()
		p.Draw(canvases[i][0])
		data := p.DataCanvas(canvases[i][0])
		other := legend
		other.Left = !other.Left // Rectangle takes the sides the other way round than Draw, and no offsets
		if r := other.Rectangle(data); r.Max.X > r.Min.X {
			r.Min.X, r.Min.Y, r.Max.X, r.Max.Y = r.Min.X-3, r.Min.Y-2, r.Max.X+3, r.Max.Y+2
			r = r.Add(vg.Point{X: legend.XOffs, Y: legend.YOffs})
			data.FillPolygon(color.NRGBA{R: 255, G: 255, B: 255, A: 220}, corners(r))
		}
		legend.Draw(data)
	}
}

func corners(r vg.Rectangle) []vg.Point {
	return []vg.Point{r.Min, {X: r.Min.X, Y: r.Max.Y}, r.Max, {X: r.Max.X, Y: r.Min.Y}}
}

// level widens the shorter axis until a kilometre is as long both ways.
func level(p *plot.Plot, c draw.Canvas) {
	d := p.DataCanvas(c)
	size := d.Size()
	x, y := p.X.Max-p.X.Min, p.Y.Max-p.Y.Min
	if k := float64(size.X / size.Y); x/y < k {
		grow := (y*k - x) / 2
		p.X.Min, p.X.Max = p.X.Min-grow, p.X.Max+grow
	} else {
		grow := (x/k - y) / 2
		p.Y.Min, p.Y.Max = p.Y.Min-grow, p.Y.Max+grow
	}
}

func write(name string, c vg.CanvasWriterTo) error {
	file, err := os.Create(name)
	if err != nil {
		return err
	}
	if _, err := c.WriteTo(file); err != nil {
		file.Close()
		return err
	}
	return file.Close()
}

var (
	land   = color.NRGBA{R: 232, G: 226, B: 208, A: 255}
	noFill = color.NRGBA{}
)

// bearing writes a direction with three digits.
func bearing(deg float64) string {
	if bad(deg) {
		return "---"
	}
	return fmt.Sprintf("%03.0f", math.Mod(math.Round(deg), 360))
}

// offset writes the clock of an instant against UTC.
func offset(t time.Time) string {
	_, s := t.Zone()
	if s == 0 {
		return "UTC"
	}
	sign := '+'
	if s < 0 {
		sign, s = '-', -s
	}
	return fmt.Sprintf("UTC%c%d:%02d", sign, s/3600, s/60%60)
}
