package route

import (
	"bufio"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"
)

// GPX 1.1: latitude and longitude are attributes by name, times are UTC. A
// route (rte) is a plan, a track (trk) a record. The format has no shapes, so
// coasts and areas live in GeoJSON only. Files are read element by element.

// The namespaces: of the format, and of what it has no element for.
const (
	gpxSpace    = "http://www.topografix.com/GPX/1/1"
	gpxOwnSpace = "urn:followingsea.example:run:1"
)

// ReadRunGPX reads a run from GPX: the one route (rte) of the file is the
// line, and waypoints (wpt) of type exit are the exits, with their name and
// desc. Landing conditions are attributes of an element landing under
// extensions of the waypoint, by the names that [ReadRun] has; the depth of
// the leg that starts at a route point is the attribute depth_m of an element
// leg there, the factors on its wind are exposure_low, _mid and _high.
//
// Waypoints of another type and tracks are passed over. The run has no coast:
// the format cannot hold one. Every error wraps [ErrFile] and says in which
// element, what was found and what was expected.
//
// Source: [GPX11] rteType, wptType.
func ReadRunGPX(r io.Reader) (Run, error) {
	var run Run
	routes := 0
	g := newGPX(r)
	err := g.read(func(where string, start xml.StartElement) error {
		switch start.Name.Local {
		case "wpt":
			p, err := g.point(where, start)
			if err != nil {
				return err
			}
			if !strings.EqualFold(p.kind, "exit") {
				return nil
			}
			e, err := p.exit()
			if err != nil {
				return fileError(where, "exit: %w", err)
			}
			run.Exits = append(run.Exits, e)
			return nil
		case "rte":
			if routes++; routes > 1 {
				return fileError(where, "a second route; expected one")
			}
			return g.route(where, &run)
		}
		return g.skip(where)
	})
	if err != nil {
		return Run{}, err
	}
	if routes == 0 {
		return Run{}, fileError("", "no route (rte)")
	}
	if err := run.checkFile(); err != nil {
		return Run{}, err
	}
	return run, nil
}

// ReadTracksGPX reads the tracks of a GPX file, one for each segment (trkseg),
// and its routes with times, which are plans. Every track point must have a
// time with a zone, none before the one before it. A route without times is
// passed over; a file without any track is an error. Errors are those of
// [ReadRunGPX].
//
// Source: [GPX11] trkType, trksegType, wptType.
func ReadTracksGPX(r io.Reader) ([]Track, error) {
	var tracks []Track
	g := newGPX(r)
	err := g.read(func(where string, start xml.StartElement) error {
		switch start.Name.Local {
		case "trk":
			var name string
			first, n := len(tracks), 0
			err := g.children(where, func(start xml.StartElement) error {
				switch start.Name.Local {
				case "name":
					var err error
					name, err = g.text(where + " name")
					return err
				case "trkseg":
					seg := fmt.Sprintf("%s trkseg %d", where, n)
					n++
					t, err := g.fixes(seg, "trkpt", true)
					if err == nil && len(t.Fixes) > 0 {
						tracks = append(tracks, t)
					}
					return err
				}
				return g.skip(where)
			})
			for i := first; i < len(tracks); i++ {
				tracks[i].Name = name
			}
			return err
		case "rte":
			t, err := g.fixes(where, "rtept", false)
			if err == nil && len(t.Fixes) > 0 {
				t.Planned = true
				tracks = append(tracks, t)
			}
			return err
		}
		return g.skip(where)
	})
	if err != nil {
		return nil, err
	}
	if len(tracks) == 0 {
		return nil, fileError("", "no track and no route with times")
	}
	return tracks, nil
}

// gpxFile walks the elements of a file.
type gpxFile struct{ d *xml.Decoder }

func newGPX(r io.Reader) *gpxFile {
	d := xml.NewDecoder(bounded(r))
	d.CharsetReader = func(charset string, in io.Reader) (io.Reader, error) {
		switch strings.ToLower(charset) {
		case "utf-8", "us-ascii":
			return in, nil
		}
		return nil, fmt.Errorf("text encoded in %q; expected UTF-8", cutText(charset))
	}
	return &gpxFile{d}
}

func (g *gpxFile) fail(where string, err error) error {
	line, _ := g.d.InputPos()
	var syntax *xml.SyntaxError
	switch {
	case errors.Is(err, ErrTooLarge):
		return ErrTooLarge
	case errors.Is(err, io.EOF), errors.Is(err, io.ErrUnexpectedEOF),
		errors.As(err, &syntax) && strings.Contains(syntax.Msg, "unexpected EOF"):
		return fileError(where, "line %d: the file ends inside an element: is it truncated?", line)
	}
	return fileError(where, "line %d: not XML: %w", line, err)
}

// gpxDeep is the deepest nesting that is followed.
const gpxDeep = 100

// skip passes over the rest of the element.
func (g *gpxFile) skip(where string) error {
	for depth := 1; depth > 0; {
		t, err := g.d.Token()
		if err != nil {
			return g.fail(where, err)
		}
		switch t.(type) {
		case xml.StartElement:
			if depth++; depth > gpxDeep {
				return fileError(where, "elements nested over %d deep", gpxDeep)
			}
		case xml.EndElement:
			depth--
		}
	}
	return nil
}

// children calls f for each element inside the one that was opened; f reads
// it to its end.
func (g *gpxFile) children(where string, f func(xml.StartElement) error) error {
	for {
		t, err := g.d.Token()
		if err != nil {
			return g.fail(where, err)
		}
		switch t := t.(type) {
		case xml.StartElement:
			if err := f(t); err != nil {
				return err
			}
		case xml.EndElement:
			return nil
		}
	}
}

// text returns the text of the element that was opened.
func (g *gpxFile) text(where string) (string, error) {
	var b strings.Builder
	for {
		t, err := g.d.Token()
		if err != nil {
			return "", g.fail(where, err)
		}
		switch t := t.(type) {
		case xml.CharData:
			b.Write(t)
		case xml.StartElement:
			if err := g.skip(where); err != nil {
				return "", err
			}
		case xml.EndElement:
			return strings.TrimSpace(b.String()), nil
		}
	}
}

// read calls f for each element directly under the root.
func (g *gpxFile) read(f func(where string, start xml.StartElement) error) error {
	for {
		t, err := g.d.Token()
		if err == io.EOF {
			return fileError("", "no element gpx")
		}
		if err != nil {
			return g.fail("", err)
		}
		start, ok := t.(xml.StartElement)
		if !ok {
			continue
		}
		if start.Name.Local != "gpx" {
			return fileError("", "found an element %q, expected gpx", cutText(start.Name.Local))
		}
		if v := attr(start, "version"); v != "1.1" && v != "1.0" {
			return fileError("gpx", "version %q, expected 1.1", cutText(v))
		}
		break
	}
	count := map[string]int{}
	err := g.children("gpx", func(start xml.StartElement) error {
		name := start.Name.Local
		switch name {
		case "wpt", "rte", "trk":
		default:
			return g.skip(cutText(name))
		}
		where := fmt.Sprintf("%s %d", name, count[name])
		count[name]++
		return f(where, start)
	})
	if err != nil {
		return err
	}
	for {
		t, err := g.d.Token()
		if err == io.EOF {
			return nil
		}
		if err != nil {
			return g.fail("after the end", err)
		}
		if s, ok := t.(xml.StartElement); ok {
			return fileError("after the end", "an element %q, expected nothing more", cutText(s.Name.Local))
		}
	}
}

func attr(s xml.StartElement, name string) string {
	for _, a := range s.Attr {
		if a.Name.Local == name && a.Name.Space == "" {
			return a.Value
		}
	}
	return ""
}

// gpxPoint is a wpt, an rtept or a trkpt.
type gpxPoint struct {
	p                Point
	name, desc, kind string
	time             string
	own              map[string]string // attributes of our elements
}

func (g *gpxFile) point(where string, start xml.StartElement) (gpxPoint, error) {
	var out gpxPoint
	var pos [2]float64
	for i, name := range []string{"lat", "lon"} {
		s := attr(start, name)
		x, err := strconv.ParseFloat(s, 64)
		if err != nil {
			return out, fileError(where, "%s %q is not a number of degrees", name, cutText(s))
		}
		pos[i] = x
	}
	p, err := filePosition(pos[0], pos[1])
	if err != nil {
		return out, fileError(where, "%w", err)
	}
	out.p = p
	err = g.children(where, func(start xml.StartElement) error {
		var into *string
		switch start.Name.Local {
		case "name":
			into = &out.name
		case "desc":
			into = &out.desc
		case "type":
			into = &out.kind
		case "time":
			into = &out.time
		case "extensions":
			return g.children(where, func(s xml.StartElement) error {
				if s.Name.Space == gpxOwnSpace && (s.Name.Local == "landing" || s.Name.Local == "leg") {
					if out.own == nil {
						out.own = map[string]string{}
					}
					for _, a := range s.Attr {
						if a.Name.Space == "" {
							out.own[a.Name.Local] = a.Value
						}
					}
				}
				return g.skip(where)
			})
		default:
			return g.skip(where)
		}
		s, err := g.text(where + " " + start.Name.Local)
		*into = s
		return err
	})
	return out, err
}

// exit makes an exit of a waypoint: the properties go the way of GeoJSON.
func (p *gpxPoint) exit() (Exit, error) {
	f := feature{kind: "Point", parts: [][][]Point{{{p.p}}}, props: map[string]any{"name": p.name}}
	if p.desc != "" {
		f.props["note"] = p.desc
	}
	for k, v := range p.own {
		if k == "daylight_only" {
			switch v {
			case "true", "1":
				f.props[k] = true
			case "false", "0":
				f.props[k] = false
			default:
				f.props[k] = v
			}
			continue
		}
		if x, err := strconv.ParseFloat(v, 64); err == nil {
			f.props[k] = x
		} else if k != "name" && k != "note" {
			f.props[k] = v
		}
	}
	return f.exit()
}

// known returns an attribute of ours that is a number, unknown where there is
// none.
func (p *gpxPoint) known(where, name string) (Value, error) {
	s, ok := p.own[name]
	if !ok {
		return Value{}, nil
	}
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return Value{}, fileError(where, "%s %q is not a number", name, cutText(s))
	}
	return Known(x), nil
}

// route reads the points of a route into a run.
func (g *gpxFile) route(where string, run *Run) error {
	var depths []Value
	var factors []WindFactor
	known, said := false, false
	err := g.children(where, func(start xml.StartElement) error {
		switch start.Name.Local {
		case "name":
			var err error
			run.Name, err = g.text(where + " name")
			return err
		case "rtept":
			at := fmt.Sprintf("%s rtept %d", where, len(run.Points))
			p, err := g.point(at, start)
			if err != nil {
				return err
			}
			d, err := p.known(at, "depth_m")
			if err != nil {
				return err
			}
			if _, ok := d.Get(); ok {
				known = true
			}
			if len(run.Points) == 0 {
				if run.FetchDepth, err = p.known(at, "fetch_depth_m"); err != nil {
					return err
				}
			}
			factor, err := p.factor(at)
			if err != nil {
				return err
			}
			said = said || factor.Given()
			run.Points = append(run.Points, p.p)
			depths, factors = append(depths, d), append(factors, factor)
			return nil
		}
		return g.skip(where)
	})
	if known && len(depths) > 1 {
		run.Depths = depths[:len(depths)-1]
	}
	if said && len(factors) > 1 {
		run.Exposure = factors[:len(factors)-1]
	}
	return err
}

// factor returns the wind factor of the leg that starts at a route point.
func (p *gpxPoint) factor(where string) (WindFactor, error) {
	var x [3]float64
	n := 0
	for i, name := range [...]string{"exposure_low", "exposure_mid", "exposure_high"} {
		if _, ok := p.own[name]; !ok {
			continue
		}
		v, err := p.known(where, name)
		if err != nil {
			return WindFactor{}, err
		}
		x[i], n = v.Number(), n+1
	}
	f := WindFactor{x[0], x[1], x[2]}
	if n == 0 {
		return f, nil
	}
	if err := f.Check(); err != nil || !f.Given() {
		return f, fileError(where, "exposure_low, _mid, _high %v: expected 0 < low <= mid <= high <= %v", x, mostWindFactor)
	}
	return f, nil
}

// fixes reads the points of a track segment or a route with their times. A
// route none of whose points has a time gives a track without fixes.
func (g *gpxFile) fixes(where, element string, need bool) (Track, error) {
	var t Track
	n, timed := 0, 0
	err := g.children(where, func(start xml.StartElement) error {
		switch start.Name.Local {
		case "name":
			var err error
			t.Name, err = g.text(where + " name")
			return err
		case element:
			at := fmt.Sprintf("%s %s %d", where, element, n)
			n++
			p, err := g.point(at, start)
			if err != nil {
				return err
			}
			if p.time == "" {
				if need || timed > 0 {
					return fileError(at, "no time; expected one in every point")
				}
				return nil
			}
			if timed++; timed != n {
				return fileError(at, "a time, but none in the point before; expected one in every point")
			}
			when, err := fileTime(p.time)
			if err != nil {
				return fileError(at, "%w", err)
			}
			t.Fixes = append(t.Fixes, Fix{p.p, when})
			if k := len(t.Fixes); k > 1 && when.Before(t.Fixes[k-2].Time) {
				return fileError(at, "time %s is before that of the point before it", cutText(p.time))
			}
			return nil
		}
		return g.skip(where)
	})
	return t, err
}

// WriteRunGPX writes the line and the exits of a run as GPX 1.1 that
// [ReadRunGPX] reads back. Coast and areas have no place in the format and are
// left out.
//
// The error is that of [Run.Check], before anything is written, or of the
// writer.
//
// Source: [GPX11] rteType, wptType.
func WriteRunGPX(w io.Writer, r Run) error {
	if err := r.Check(); err != nil {
		return err
	}
	x := newGPXWriter(w)
	for _, e := range r.Exits {
		x.point("wpt", e.Point, "", e.Name, e.Note, "exit", func() {
			x.known("charted_depth_m", e.Charted)
			x.limit("least_depth_m", e.LeastDepth)
			x.limit("greatest_breaker_m", e.GreatestBreaker)
			x.limit("seaward_deg", e.Seaward)
			x.limit("greatest_stream_m_s", e.GreatestStream)
			if e.Hours != HoursNotGiven {
				x.attr("daylight_only", strconv.FormatBool(e.Hours == DaylightOnly))
			}
		}, "landing")
	}
	x.str("<rte>")
	x.element("name", r.Name)
	for i, p := range r.Points {
		x.point("rtept", p, "", "", "", "", func() {
			if i < len(r.Points)-1 {
				x.known("depth_m", r.Depth(i))
				if f := r.Factor(i); f.Given() {
					x.known("exposure_low", Known(f.Low))
					x.known("exposure_mid", Known(f.Mid))
					x.known("exposure_high", Known(f.High))
				}
			}
			if i == 0 {
				x.known("fetch_depth_m", r.FetchDepth)
			}
		}, "leg")
	}
	x.str("</rte>\n")
	return x.close()
}

// WriteTracksGPX writes tracks as GPX 1.1: a plan as a route with a time in
// every point, a record as a track of one segment. [ReadTracksGPX] reads them
// back, records first.
//
// The error is that of [Track.Check], before anything is written, or of the
// writer.
//
// Source: [GPX11] rteType, trkType.
func WriteTracksGPX(w io.Writer, tracks []Track) error {
	for _, t := range tracks {
		if err := t.Check(); err != nil {
			return err
		}
	}
	x := newGPXWriter(w)
	write := func(planned bool, open, element, shut string) {
		for _, t := range tracks {
			if t.Planned != planned {
				continue
			}
			x.str(open)
			x.element("name", t.Name)
			if !planned {
				x.str("<trkseg>")
			}
			for _, f := range t.Fixes {
				x.point(element, f.Point, f.Time.UTC().Format(time.RFC3339Nano), "", "", "", nil, "")
			}
			x.str(shut)
		}
	}
	// The schema has routes before tracks.
	write(true, "<rte>", "rtept", "</rte>\n")
	write(false, "<trk>", "trkpt", "</trkseg></trk>\n")
	return x.close()
}

type gpxWriter struct {
	w    *bufio.Writer
	open string // the start of an element of ours, until its first attribute
	used bool
}

func newGPXWriter(w io.Writer) *gpxWriter {
	x := &gpxWriter{w: bufio.NewWriter(w)}
	x.str(`<?xml version="1.0" encoding="UTF-8"?>` + "\n" +
		`<gpx version="1.1" creator="followingsea.example" xmlns="` + gpxSpace + `" xmlns:fs="` + gpxOwnSpace + `">` + "\n")
	return x
}

func (x *gpxWriter) str(s string) { _, _ = x.w.WriteString(s) }

func (x *gpxWriter) escape(s string) { _ = xml.EscapeText(x.w, []byte(s)) }

func (x *gpxWriter) element(name, text string) {
	if text == "" {
		return
	}
	x.str("<" + name + ">")
	x.escape(text)
	x.str("</" + name + ">")
}

func (x *gpxWriter) attr(name, value string) {
	if !x.used {
		x.str("<extensions><fs:" + x.open)
		x.used = true
	}
	x.str(" " + name + `="`)
	x.escape(value)
	x.str(`"`)
}

func (x *gpxWriter) known(name string, v Value) {
	if d, ok := v.Get(); ok {
		x.attr(name, strconv.FormatFloat(d, 'f', -1, 64))
	}
}

func (x *gpxWriter) limit(name string, l Limit) {
	if !l.Given() {
		return
	}
	s := "none"
	if v, ok := l.Get(); ok {
		s = strconv.FormatFloat(v, 'f', -1, 64)
	}
	x.attr(name, s)
}

// point writes a point with its children in the order of the schema.
func (x *gpxWriter) point(element string, p Point, when, name, desc, kind string, own func(), ownName string) {
	if !(p.Lon >= -180 && p.Lon < 180) {
		p.Lon = wrapLon(p.Lon)
	}
	x.str("<" + element + ` lat="` + strconv.FormatFloat(p.Lat, 'f', -1, 64) + `" lon="` + strconv.FormatFloat(p.Lon, 'f', -1, 64) + `">`)
	x.element("time", when)
	x.element("name", name)
	x.element("desc", desc)
	x.element("type", kind)
	if own != nil {
		x.open, x.used = ownName, false
		own()
		if x.used {
			x.str("/></extensions>")
		}
	}
	x.str("</" + element + ">\n")
}

func (x *gpxWriter) close() error {
	x.str("</gpx>\n")
	if err := x.w.Flush(); err != nil {
		return fmt.Errorf("route: writing: %w", err)
	}
	return nil
}
