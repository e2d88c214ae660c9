package route

import (
	"bufio"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"strconv"
	"time"

	"followingsea.example/internal/angle"
)

// WriteRun writes a run as GeoJSON that [ReadRun] reads back as the same run:
// numbers in their shortest exact form, conditions in SI units, rings by the
// right-hand rule. What crosses the antimeridian is cut there, as the format
// wants it: the run comes back without the cuts, land and areas as the same
// ground in two polygons, a steep shore as two.
//
// The error is that of [Run.Check], before anything is written, or of the
// writer.
//
// Source: [RFC7946] sections 3.1.6, 3.1.9 and 5.
func WriteRun(w io.Writer, r Run) error {
	if err := r.Check(); err != nil {
		return err
	}
	g := &geoWriter{w: bufio.NewWriter(w)}
	g.open()
	g.feature(func() { g.line(r.Points) }, func() {
		g.text("role", "run")
		g.some("name", r.Name)
		if _, cut := splitLine(r.Points); cut {
			g.text("cut", "antimeridian")
		}
		if len(r.Depths) > 0 {
			g.key("depth_m")
			g.str("[")
			for i, d := range r.Depths {
				if i > 0 {
					g.str(",")
				}
				if x, ok := d.Get(); ok {
					g.num(x)
				} else {
					g.str("null")
				}
			}
			g.str("]")
		}
		g.known("fetch_depth_m", r.FetchDepth)
		g.exposure(r.Exposure)
	})
	for _, e := range r.Exits {
		g.feature(func() {
			g.str(`{"type":"Point","coordinates":`)
			g.position(tidy(e.Point))
			g.str("}")
		}, func() {
			g.text("role", "exit")
			g.text("name", e.Name)
			g.some("note", e.Note)
			g.known("charted_depth_m", e.Charted)
			g.limit("least_depth_m", e.LeastDepth)
			g.limit("greatest_breaker_m", e.GreatestBreaker)
			g.limit("seaward_deg", e.Seaward)
			g.limit("greatest_stream_m_s", e.GreatestStream)
			if e.Hours != HoursNotGiven {
				g.key("daylight_only")
				g.str(strconv.FormatBool(e.Hours == DaylightOnly))
			}
		})
	}
	role := func() { g.text("role", "coast") }
	if r.Coast != nil && r.Coast.Segments() == 0 {
		// Open water is a fact too: without this feature the run would come
		// back with a coast that nobody knows.
		g.feature(func() { g.str(`{"type":"MultiLineString","coordinates":[]}`) }, role)
	}
	for _, l := range r.Coast.Lines() {
		g.feature(func() { g.line(l) }, role)
	}
	for _, p := range r.Coast.Polygons() {
		g.feature(func() { g.polygons([]Polygon{p}) }, role)
	}
	for _, s := range r.Steep {
		g.feature(func() { g.line(s.Line) }, func() {
			g.text("role", "steep")
			if x, ok := s.Reflects.Get(); ok {
				g.known("reflects", Known(x))
				g.some("kind", s.Kind)
			} else {
				g.text("reflects", s.Kind)
			}
		})
	}
	for _, a := range r.Areas {
		g.feature(func() { g.polygons(a.Polygons) }, func() {
			g.text("role", string(a.Kind))
			g.some("name", a.Name)
			g.some("note", a.Note)
		})
	}
	return g.close()
}

// WriteTracks writes tracks, recorded or planned, as GeoJSON lines with a
// property times beside the positions. [ReadTracks] reads them back.
//
// The error is that of [Track.Check], before anything is written, or of the
// writer.
//
// Source: [RFC7946] section 3.
func WriteTracks(w io.Writer, tracks []Track) error {
	for _, t := range tracks {
		if err := t.Check(); err != nil {
			return err
		}
	}
	g := &geoWriter{w: bufio.NewWriter(w)}
	g.open()
	for _, t := range tracks {
		g.feature(func() {
			// The line of a track is not cut: its times would lose their
			// places. Longitudes run on past 180 instead.
			kind := "LineString"
			if len(t.Fixes) == 1 {
				kind = "Point"
			}
			g.str(`{"type":"` + kind + `","coordinates":`)
			if kind == "LineString" {
				g.str("[")
			}
			for i, f := range t.Fixes {
				if i > 0 {
					g.str(",")
				}
				g.position(tidy(f.Point))
			}
			if kind == "LineString" {
				g.str("]")
			}
			g.str("}")
		}, func() {
			g.text("role", "track")
			g.some("name", t.Name)
			if t.Planned {
				g.key("planned")
				g.str("true")
			}
			g.key("times")
			g.str("[")
			for i, f := range t.Fixes {
				if i > 0 {
					g.str(",")
				}
				g.quote(f.Time.UTC().Format(time.RFC3339Nano))
			}
			g.str("]")
		})
	}
	return g.close()
}

// geoWriter writes a collection one piece at a time. bufio keeps the first
// error.
type geoWriter struct {
	w     *bufio.Writer
	many  bool // a feature was written
	inner bool // a property of this feature was written
	buf   []byte
}

func (g *geoWriter) str(s string) { _, _ = g.w.WriteString(s) }

func (g *geoWriter) num(x float64) {
	g.buf = strconv.AppendFloat(g.buf[:0], x, 'f', -1, 64)
	_, _ = g.w.Write(g.buf)
}

func (g *geoWriter) quote(s string) {
	b, err := json.Marshal(s)
	if err != nil { // a string always marshals
		panic(err)
	}
	_, _ = g.w.Write(b)
}

func (g *geoWriter) open() { g.str("{\"type\":\"FeatureCollection\",\"features\":[") }

func (g *geoWriter) close() error {
	g.str("\n]}\n")
	if err := g.w.Flush(); err != nil {
		return fmt.Errorf("route: writing: %w", err)
	}
	return nil
}

func (g *geoWriter) feature(geometry, properties func()) {
	if g.many {
		g.str(",")
	}
	g.many, g.inner = true, false
	g.str("\n{\"type\":\"Feature\",\"properties\":{")
	properties()
	g.str("},\"geometry\":")
	geometry()
	g.str("}")
}

func (g *geoWriter) key(name string) {
	if g.inner {
		g.str(",")
	}
	g.inner = true
	g.quote(name)
	g.str(":")
}

func (g *geoWriter) text(name, s string) {
	g.key(name)
	g.quote(s)
}

// some writes a text unless it is empty.
func (g *geoWriter) some(name, s string) {
	if s != "" {
		g.text(name, s)
	}
}

func (g *geoWriter) known(name string, v Value) {
	if x, ok := v.Get(); ok {
		g.key(name)
		g.num(x)
	}
}

func (g *geoWriter) limit(name string, l Limit) {
	if !l.Given() {
		return
	}
	g.key(name)
	if x, ok := l.Get(); ok {
		g.num(x)
		return
	}
	g.quote("none")
}

func (g *geoWriter) position(p Point) {
	g.str("[")
	g.num(p.Lon)
	g.str(",")
	g.num(p.Lat)
	g.str("]")
}

func (g *geoWriter) positions(ps []Point) {
	g.str("[")
	for i, p := range ps {
		if i > 0 {
			g.str(",")
		}
		g.position(p)
	}
	g.str("]")
}

func (g *geoWriter) line(ps []Point) {
	parts, cut := splitLine(ps)
	if !cut {
		g.str(`{"type":"LineString","coordinates":`)
		g.positions(parts[0])
		g.str("}")
		return
	}
	g.str(`{"type":"MultiLineString","coordinates":[`)
	for i, p := range parts {
		if i > 0 {
			g.str(",")
		}
		g.positions(p)
	}
	g.str("]}")
}

func (g *geoWriter) polygons(ps []Polygon) {
	var all []Polygon
	for _, p := range ps {
		all = append(all, splitPolygon(p)...)
	}
	if len(all) == 1 {
		g.str(`{"type":"Polygon","coordinates":`)
		g.polygon(all[0])
		g.str("}")
		return
	}
	g.str(`{"type":"MultiPolygon","coordinates":[`)
	for i, p := range all {
		if i > 0 {
			g.str(",")
		}
		g.polygon(p)
	}
	g.str("]}")
}

func (g *geoWriter) polygon(p Polygon) {
	g.str("[")
	for i, ring := range p {
		if i > 0 {
			g.str(",")
		}
		g.positions(ring)
	}
	g.str("]")
}

// splitPolygon returns a polygon as the format wants it: rings closed, the
// outer one counterclockwise and holes clockwise, cut in two at the
// antimeridian.
func splitPolygon(p Polygon) []Polygon {
	outer := unroll(p[0], false)
	lo, hi := span(outer)
	if lo >= -180 && hi <= 180 {
		whole := Polygon{outer}
		for _, h := range p[1:] {
			whole = append(whole, unroll(h, true))
		}
		return []Polygon{whole}
	}
	// The ring, unrolled, lies across the meridians 180 + 360 k that cut it
	// into pieces, each moved back to where the format has it.
	var out []Polygon
	for k := math.Floor((lo + 180) / 360); k*360-180 < hi; k++ {
		west := k*360 - 180
		ring := clip(clip(outer, west, 1), west+360, -1)
		if len(ring) < 3 {
			continue
		}
		piece := Polygon{back(ring, k)}
		for _, h := range p[1:] {
			hole := unroll(h, true)
			hlo, hhi := span(hole)
			// The hole is moved by whole turns to lie in its ring.
			m := math.Round(((lo + hi) - (hlo + hhi)) / 720)
			if c := clip(clip(back(hole, -m), west, 1), west+360, -1); len(c) >= 3 {
				piece = append(piece, back(c, k))
			}
		}
		out = append(out, piece)
	}
	return out
}

// unroll returns a ring closed and the right way round with longitudes that
// run on without a jump. A ring once round the globe is closed over its pole.
func unroll(ring []Point, hole bool) []Point {
	left, _ := handed(ring)
	n := len(ring)
	if ring[0] == ring[n-1] {
		n--
	}
	out := make([]Point, 0, n+3)
	reverse := left == hole
	lat := 0.0
	for i := range n {
		p := ring[i]
		if reverse {
			p = ring[(n-i)%n] // the first stays the first
		}
		p = tidy(p)
		if i > 0 {
			last := out[i-1].Lon
			if d := p.Lon - last; math.Abs(d) > 180 {
				p.Lon = last + angle.Diff(last, p.Lon)
			}
		}
		lat += p.Lat
		out = append(out, p)
	}
	first, last := out[0], out[n-1]
	end := last.Lon + angle.Diff(last.Lon, first.Lon)
	if math.Abs(end-first.Lon) > 180 {
		pole := math.Copysign(90, lat)
		out = append(out, Point{first.Lat, end}, Point{pole, end}, Point{pole, first.Lon})
	}
	return append(out, first)
}

func span(ring []Point) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, p := range ring {
		lo, hi = min(lo, p.Lon), max(hi, p.Lon)
	}
	return lo, hi
}

// back moves a ring by k turns to the west.
func back(ring []Point, k float64) []Point {
	out := make([]Point, len(ring))
	for i, p := range ring {
		out[i] = Point{p.Lat, p.Lon - 360*k}
	}
	return out
}

// clip keeps the part of a closed ring on one side of a meridian (Sutherland
// and Hodgman). Pieces that come apart stay joined by edges along the
// meridian, which enclose nothing.
func clip(ring []Point, lon, sign float64) []Point {
	if len(ring) == 0 {
		return nil
	}
	in := func(p Point) bool { return sign*(p.Lon-lon) >= 0 }
	var out []Point
	add := func(p Point) {
		if len(out) == 0 || out[len(out)-1] != p {
			out = append(out, p)
		}
	}
	for i := 1; i < len(ring); i++ {
		p, q := ring[i-1], ring[i]
		if in(p) {
			add(p)
		}
		if in(p) != in(q) {
			f := (lon - p.Lon) / (q.Lon - p.Lon)
			add(Point{p.Lat + f*(q.Lat-p.Lat), lon})
		}
	}
	if len(out) > 0 {
		add(out[0])
	}
	if len(out) < 4 {
		return nil
	}
	return out
}

// exposure writes the wind factors of the legs.
func (g *geoWriter) exposure(fs []WindFactor) {
	if len(fs) == 0 {
		return
	}
	g.key("exposure")
	for i, f := range fs {
		g.str([]string{"[", ","}[min(i, 1)])
		if !f.Given() {
			g.str("null")
			continue
		}
		for k, x := range []float64{f.Low, f.Mid, f.High} {
			g.str([]string{"[", ","}[min(k, 1)])
			g.num(x)
		}
		g.str("]")
	}
	g.str("]")
}
