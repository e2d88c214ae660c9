package route

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"strings"
)

// GeoJSON (RFC 7946): positions are [longitude, latitude], edges are straight
// in both, and a shape that crosses the antimeridian is cut there into a
// multi-shape. A file is read token by token, so that memory holds the
// positions of one file and never its text.

// ReadRun reads a run from GeoJSON (RFC 7946): a FeatureCollection whose
// features have a property role.
//
//	role       geometry                     properties
//	run        LineString, exactly one      name; depth_m: charted depth, a number for all legs, or a list with one
//	                                        (or null) a leg; fetch_depth_m: mean depth of the water the waves come over;
//	                                        exposure: [low, mid, high] (or null) a leg, factors on the wind
//	exit       Point                        name; note; charted_depth_m, negative where it dries; landing conditions, below
//	coast      LineString or Polygon        reflects, for a shore that throws waves back: the part of their height from 0
//	                                        to 1, or a word of SteepKinds; steep: true is the same as "cliff"
//	steep      LineString                   reflects, kind: a shore that throws waves back, apart from the coast
//	avoid      Polygon                      name, note
//	traffic    Polygon                      name, note
//	no-signal  Polygon                      name, note
//
// A Multi geometry stands for several; the parts of a run are joined where
// they meet at the antimeridian. Landing conditions are a number or "none";
// one that is absent or null was not given, and makes a landing unknown:
//
//	least_depth_m (or _ft)   greatest_breaker_m (or _ft)   seaward_deg
//	greatest_stream_m_s (or _kn)   daylight_only: true or false
//
// Other properties are passed over. Longitudes may run from -180 to 180 or
// from 0 to 360. A run without any coast feature has a nil Coast.
//
// Every error wraps [ErrFile] and says in which feature and field, what was
// found and what was expected; over 32 MB is [ErrTooLarge]. A position far from
// the run that would be near it with latitude and longitude exchanged is an
// error.
//
// Source: [RFC7946] sections 3 and 4.
func ReadRun(r io.Reader) (Run, error) {
	var run Run
	var lines [][]Point
	var land []Polygon
	shore, found := false, false
	err := readFeatures(r, true, func(where string, f *feature) error {
		role, err := f.text("role")
		if err != nil {
			return fileError(where, "%w", err)
		}
		switch role {
		case "":
			return fileError(where, "properties: no role; expected run, exit, coast, steep, avoid, traffic or no-signal")
		case "run":
			if found {
				return fileError(where, "a second run; expected one")
			}
			found = true
			err = f.run(&run)
		case "exit":
			var e Exit
			e, err = f.exit()
			run.Exits = append(run.Exits, e)
		case "coast":
			shore = true
			if lines, land, err = f.coast(lines, land); err == nil {
				run.Steep, err = f.steep(run.Steep, false)
			}
		case "steep":
			run.Steep, err = f.steep(run.Steep, true)
		case string(Avoid), string(Traffic), string(NoSignal):
			var a Area
			a, err = f.area(AreaKind(role))
			run.Areas = append(run.Areas, a)
		default:
			return fileError(where, "properties: role %q; expected run, exit, coast, steep, avoid, traffic or no-signal", role)
		}
		if err != nil {
			return fileError(where, "%s: %w", role, err)
		}
		return nil
	})
	if err != nil {
		return Run{}, err
	}
	if !found {
		return Run{}, fileError("", "no feature with role run")
	}
	if shore {
		if run.Coast, err = NewCoast(lines, land); err != nil {
			return Run{}, fileError("", "%w", err)
		}
	}
	if err := run.checkFile(); err != nil {
		return Run{}, err
	}
	return run, nil
}

// ReadCoast reads a coastline from GeoJSON: every line and polygon of a
// FeatureCollection, a Feature or a bare geometry, whatever its properties.
// Points are passed over. Errors are those of [ReadRun].
//
// Source: [RFC7946] section 3.
func ReadCoast(r io.Reader) (*Coast, error) {
	var lines [][]Point
	var land []Polygon
	err := readFeatures(r, false, func(where string, f *feature) error {
		if f.kind == "Point" || f.kind == "MultiPoint" || f.kind == "" {
			return nil
		}
		var err error
		if lines, land, err = f.coast(lines, land); err != nil {
			return fileError(where, "%w", err)
		}
		return nil
	})
	if err != nil {
		return nil, err
	}
	c, err := NewCoast(lines, land)
	if err != nil {
		return nil, fileError("", "%w", err)
	}
	return c, nil
}

// feature is one feature as it stands in the file.
type feature struct {
	kind  string      // of its geometry
	depth int         // of its coordinates: 1 a position, 4 a MultiPolygon
	parts [][][]Point // polygons of rings of positions
	props map[string]any
}

// depths of the coordinates by kind of geometry.
var depths = map[string]int{"Point": 1, "MultiPoint": 2, "LineString": 2, "MultiLineString": 3, "Polygon": 3, "MultiPolygon": 4}

// jsonFile walks the tokens of a file.
type jsonFile struct {
	d *json.Decoder
}

// fail turns an error of the decoder into one of the reader.
func (j *jsonFile) fail(where string, err error) error {
	var syntax *json.SyntaxError
	switch {
	case errors.Is(err, ErrTooLarge):
		return ErrTooLarge
	case errors.Is(err, io.EOF), errors.Is(err, io.ErrUnexpectedEOF):
		return fileError(where, "the file ends at byte %d, inside a value: is it truncated?", j.d.InputOffset())
	case errors.As(err, &syntax):
		return fileError(where, "byte %d: not JSON: %v", syntax.Offset, err)
	}
	return fileError(where, "byte %d: %w", j.d.InputOffset(), err)
}

func (j *jsonFile) token(where string) (json.Token, error) {
	t, err := j.d.Token()
	if err != nil {
		return nil, j.fail(where, err)
	}
	return t, nil
}

// object calls f for each member of the object that comes next.
func (j *jsonFile) object(where string, f func(key string) error) error {
	t, err := j.token(where)
	if err != nil {
		return err
	}
	if t != json.Delim('{') {
		return fileError(where, "found %s, expected an object", show(t))
	}
	return j.members(where, f)
}

// members is object after its opening brace.
func (j *jsonFile) members(where string, f func(key string) error) error {
	seen := map[string]bool{}
	for {
		t, err := j.token(where)
		if err != nil {
			return err
		}
		if t == json.Delim('}') {
			return nil
		}
		key, _ := t.(string)
		if seen[key] {
			return fileError(where, "member %q is given twice", cutText(key))
		}
		if len(seen) < 1000 {
			seen[key] = true
		}
		if err := f(key); err != nil {
			return err
		}
	}
}

// skip passes over the value that comes next.
func (j *jsonFile) skip(where string) error {
	for depth := 0; ; {
		t, err := j.token(where)
		if err != nil {
			return err
		}
		switch t {
		case json.Delim('{'), json.Delim('['):
			depth++
		case json.Delim('}'), json.Delim(']'):
			depth--
		}
		if depth == 0 {
			return nil
		}
	}
}

func (j *jsonFile) text(where string) (string, error) {
	t, err := j.token(where)
	if err != nil {
		return "", err
	}
	s, ok := t.(string)
	if !ok {
		return "", fileError(where, "found %s, expected a text", show(t))
	}
	return s, nil
}

// show prints a token for an error.
func show(t any) string {
	switch t := t.(type) {
	case json.Delim:
		if t == '{' || t == '}' {
			return "an object"
		}
		return "a list"
	case map[string]any:
		return "an object"
	case []any:
		return "a list"
	case string:
		return fmt.Sprintf("%q", cutText(t))
	case nil:
		return "null"
	}
	return fmt.Sprint(t)
}

// cutText keeps an error short whatever the file holds.
func cutText(s string) string {
	if len(s) > 60 {
		return strings.ToValidUTF8(s[:60], "") + "..."
	}
	return s
}

// readFeatures calls use for each feature. A collection is required if only
// is set; otherwise a feature or a geometry may stand alone.
func readFeatures(r io.Reader, only bool, use func(where string, f *feature) error) error {
	j := &jsonFile{json.NewDecoder(bounded(r))}
	var kind string
	var features, single bool
	var alone feature
	err := j.object("", func(key string) error {
		switch key {
		case "type":
			var err error
			kind, err = j.text("type")
			return err
		case "crs":
			return j.crs()
		case "features":
			features = true
			t, err := j.token("features")
			if err != nil {
				return err
			}
			if t != json.Delim('[') {
				return fileError("features", "found %s, expected a list", show(t))
			}
			for i := 0; j.d.More(); i++ {
				where := fmt.Sprintf("features[%d]", i)
				var f feature
				if err := j.feature(where, &f); err != nil {
					return err
				}
				if err := use(where, &f); err != nil {
					return err
				}
			}
			_, err = j.token("features")
			return err
		case "geometry":
			single = true
			return j.geometry("geometry", &alone)
		case "coordinates":
			single = true
			return j.coordinates("coordinates", &alone)
		}
		return j.skip(key)
	})
	if err != nil {
		return err
	}
	if t, err := j.d.Token(); err != io.EOF {
		if err != nil {
			return j.fail("after the end", err)
		}
		return fileError("after the end", "found %s, expected nothing more", show(t))
	}
	switch {
	case kind == "FeatureCollection" && features && !single:
		return nil
	case !only && kind == "Feature" && single && !features:
		return use("", &alone)
	case !only && depths[kind] != 0 && single && !features:
		if alone.kind == "" {
			alone.kind = kind
		}
		if err := alone.check(); err != nil {
			return fileError("", "%w", err)
		}
		return use("", &alone)
	case kind == "FeatureCollection" && !features:
		return fileError("", "a FeatureCollection without features")
	}
	return fileError("type", "found %q, expected FeatureCollection", cutText(kind))
}

// crs accepts the reference system that RFC 7946 has anyway, by the names it
// had before, and nothing else: other systems need a transformation.
func (j *jsonFile) crs() error {
	var v any
	if err := j.d.Decode(&v); err != nil {
		return j.fail("crs", err)
	}
	if v == nil {
		return nil
	}
	if m, ok := v.(map[string]any); ok {
		if p, ok := m["properties"].(map[string]any); ok {
			if name, ok := p["name"].(string); ok && (strings.HasSuffix(name, "CRS84") || strings.HasSuffix(name, "EPSG::4326") || name == "EPSG:4326") {
				return nil
			}
		}
	}
	return fileError("crs", "a reference system other than WGS 84 (CRS84); expected none, as RFC 7946 has it")
}

func (j *jsonFile) feature(where string, f *feature) error {
	kind := ""
	err := j.object(where, func(key string) error {
		at := where + "." + key
		switch key {
		case "type":
			var err error
			kind, err = j.text(at)
			return err
		case "geometry":
			return j.geometry(at, f)
		case "properties":
			var v any
			if err := j.d.Decode(&v); err != nil {
				return j.fail(at, err)
			}
			m, ok := v.(map[string]any)
			if v != nil && !ok {
				return fileError(at, "found %s, expected an object", show(v))
			}
			f.props = m
			return nil
		}
		return j.skip(at)
	})
	if err != nil {
		return err
	}
	if kind != "Feature" {
		return fileError(where+".type", "found %q, expected Feature", cutText(kind))
	}
	return nil
}

func (j *jsonFile) geometry(where string, f *feature) error {
	t, err := j.token(where)
	if err != nil {
		return err
	}
	if t == nil {
		return nil
	}
	if t != json.Delim('{') {
		return fileError(where, "found %s, expected an object", show(t))
	}
	err = j.members(where, func(key string) error {
		switch key {
		case "type":
			var err error
			f.kind, err = j.text(where + ".type")
			return err
		case "coordinates":
			return j.coordinates(where+".coordinates", f)
		}
		return j.skip(where)
	})
	if err != nil {
		return err
	}
	if err := f.check(); err != nil {
		return fileError(where, "%w", err)
	}
	return nil
}

// check compares the kind of geometry with the depth of its coordinates.
func (f *feature) check() error {
	want, ok := depths[f.kind]
	if !ok {
		return fmt.Errorf("type %q; expected Point, LineString, Polygon or one of their Multi kinds", cutText(f.kind))
	}
	if f.depth == 0 && !strings.HasPrefix(f.kind, "Multi") {
		return fmt.Errorf("%s without positions", f.kind)
	}
	if f.depth != want && f.depth != 0 {
		return fmt.Errorf("coordinates nested %d deep; expected %d for a %s", f.depth, want, f.kind)
	}
	return nil
}

// coordinates reads nested lists of positions of one depth.
func (j *jsonFile) coordinates(where string, f *feature) error {
	t, err := j.token(where)
	if err != nil {
		return err
	}
	if t != json.Delim('[') {
		return fileError(where, "found %s, expected a list", show(t))
	}
	var ring []Point
	var rings [][]Point
	var at [5]int // how many elements each open list has so far
	path := func(n int) string {
		s := where
		for _, k := range at[1:n] {
			s += fmt.Sprintf("[%d]", k)
		}
		return s
	}
	f.depth, f.parts = 0, nil
	level := 1
	var pos [2]float64
	for level > 0 {
		t, err := j.token(where)
		if err != nil {
			return err
		}
		switch t := t.(type) {
		case json.Delim:
			if t == '[' {
				if level == 4 || level == f.depth {
					return fileError(path(level), "a list inside a position")
				}
				level++
				at[level] = 0
				continue
			}
			if t == '{' {
				return fileError(path(level), "found an object, expected a number")
			}
			switch {
			case f.depth == 0 && level == 1: // a Multi geometry of nothing
			case f.depth == 0:
				return fileError(path(level), "an empty list, expected positions")
			case level == f.depth:
				if at[level] < 2 {
					return fileError(path(level), "a position of %d numbers, expected longitude and latitude", at[level])
				}
				p, err := filePosition(pos[1], pos[0])
				if err != nil {
					return fileError(path(level), "%w", err)
				}
				ring = append(ring, p)
			case at[level] == 0:
				return fileError(path(level), "an empty list, expected positions")
			case level == f.depth-1:
				rings = append(rings, ring)
				ring = nil
			case level == f.depth-2:
				f.parts = append(f.parts, rings)
				rings = nil
			}
			level--
			if level > 0 {
				at[level]++
			}
		case float64:
			if f.depth == 0 {
				f.depth = level
			}
			if level != f.depth {
				return fileError(path(level), "found %v, expected a list", t)
			}
			if at[level] < 2 {
				pos[at[level]] = t
			}
			at[level]++
		default:
			return fileError(path(level), "found %s, expected a number", show(t))
		}
	}
	if ring != nil {
		rings = append(rings, ring)
	}
	if rings != nil {
		f.parts = append(f.parts, rings)
	}
	return nil
}

// lines returns the lines of a LineString or a MultiLineString.
func (f *feature) lines() ([][]Point, error) {
	switch f.kind {
	case "LineString", "MultiLineString":
		if len(f.parts) == 0 {
			return nil, nil
		}
		return f.parts[0], nil
	}
	return nil, fmt.Errorf("geometry %q; expected LineString", f.kind)
}

// polygons returns the polygons of a Polygon or a MultiPolygon.
func (f *feature) polygons() ([]Polygon, error) {
	switch f.kind {
	case "Polygon", "MultiPolygon":
		ps := make([]Polygon, len(f.parts))
		for i, p := range f.parts {
			ps[i] = p
		}
		return ps, nil
	}
	return nil, fmt.Errorf("geometry %q; expected Polygon", f.kind)
}

func (f *feature) coast(lines [][]Point, land []Polygon) ([][]Point, []Polygon, error) {
	if l, err := f.lines(); err == nil {
		return append(lines, l...), land, nil
	}
	p, err := f.polygons()
	if err != nil {
		return nil, nil, fmt.Errorf("geometry %q; expected LineString or Polygon", f.kind)
	}
	return lines, append(land, p...), nil
}

func (f *feature) area(kind AreaKind) (Area, error) {
	a := Area{Kind: kind}
	var err error
	if a.Name, err = f.text("name"); err != nil {
		return Area{}, err
	}
	if a.Note, err = f.text("note"); err != nil {
		return Area{}, err
	}
	a.Polygons, err = f.polygons()
	return a, err
}

// run fills in the line of a run.
func (f *feature) run(r *Run) error {
	lines, err := f.lines()
	if err != nil {
		return err
	}
	if r.Name, err = f.text("name"); err != nil {
		return err
	}
	// The parts of a line that was cut at the antimeridian meet there; the
	// places of the cut are no turning points unless they were some before.
	drop := f.props["cut"] == "antimeridian"
	for i, l := range lines {
		if i > 0 {
			last := r.Points[len(r.Points)-1]
			if !samePlace(last, l[0]) {
				return fmt.Errorf("geometry: part %d does not begin where part %d ends", i, i-1)
			}
			if drop {
				r.Points = r.Points[:len(r.Points)-1]
			}
			l = l[1:]
		}
		r.Points = append(r.Points, l...)
	}
	if len(r.Points) < 2 {
		return fmt.Errorf("geometry: %d positions, expected at least 2", len(r.Points))
	}
	if r.FetchDepth, err = f.known("fetch_depth_m"); err != nil {
		return err
	}
	if r.Exposure, err = f.exposure(len(r.Points) - 1); err != nil {
		return err
	}
	switch d := f.props["depth_m"].(type) {
	case nil:
	case float64:
		r.Depths = make([]Value, len(r.Points)-1)
		for i := range r.Depths {
			r.Depths[i] = Known(d)
		}
	case []any:
		if len(d) != len(r.Points)-1 {
			return fmt.Errorf("depth_m: %d depths, expected one for each of %d legs", len(d), len(r.Points)-1)
		}
		r.Depths = make([]Value, len(d))
		for i, v := range d {
			switch v := v.(type) {
			case nil:
			case float64:
				r.Depths[i] = Known(v)
			default:
				return fmt.Errorf("depth_m[%d]: found %s, expected a number or null", i, show(v))
			}
		}
	default:
		return fmt.Errorf("depth_m: found %s, expected a number or a list", show(d))
	}
	return nil
}

func (f *feature) exit() (Exit, error) {
	if f.kind != "Point" {
		return Exit{}, fmt.Errorf("geometry %q; expected Point", f.kind)
	}
	e := Exit{Point: f.parts[0][0][0]}
	var err error
	get := func(s *string, name string) {
		if err == nil {
			*s, err = f.text(name)
		}
	}
	limit := func(l *Limit, names ...string) {
		if err == nil {
			*l, err = f.limit(names)
		}
	}
	get(&e.Name, "name")
	get(&e.Note, "note")
	if err == nil {
		e.Charted, err = f.known("charted_depth_m")
	}
	limit(&e.LeastDepth, "least_depth_m", "least_depth_ft")
	limit(&e.GreatestBreaker, "greatest_breaker_m", "greatest_breaker_ft")
	limit(&e.Seaward, "seaward_deg")
	limit(&e.GreatestStream, "greatest_stream_m_s", "greatest_stream_kn")
	if err != nil {
		return Exit{}, err
	}
	switch v := f.props["daylight_only"].(type) {
	case nil:
	case bool:
		e.Hours = AnyHour
		if v {
			e.Hours = DaylightOnly
		}
	default:
		return Exit{}, fmt.Errorf("daylight_only: found %s, expected true or false", show(v))
	}
	return e, e.Check()
}

// known returns a property that is a number, unknown where there is none.
func (f *feature) known(name string) (Value, error) {
	switch v := f.props[name].(type) {
	case nil:
		return Value{}, nil
	case float64:
		return Known(v), nil
	default:
		return Value{}, fmt.Errorf("%s: found %s, expected a number", name, show(v))
	}
}

// text returns a property that is a text, empty where there is none.
func (f *feature) text(name string) (string, error) {
	switch v := f.props[name].(type) {
	case nil:
		return "", nil
	case string:
		return v, nil
	default:
		return "", fmt.Errorf("%s: found %s, expected a text", name, show(v))
	}
}

// limit returns a landing condition that may go by the names of several
// units.
func (f *feature) limit(names []string) (Limit, error) {
	var out Limit
	got := ""
	for _, name := range names {
		v := f.props[name]
		if v == nil {
			continue
		}
		if got != "" {
			return Limit{}, fmt.Errorf("%s and %s are both given, expected one", got, name)
		}
		got = name
		switch v := v.(type) {
		case float64:
			out = LimitOf(v * unitOf(name))
		case string:
			if v != "none" {
				return Limit{}, fmt.Errorf("%s: found %s, expected a number or \"none\"", name, show(v))
			}
			out = NoLimit()
		default:
			return Limit{}, fmt.Errorf("%s: found %s, expected a number or \"none\"", name, show(v))
		}
	}
	return out, nil
}

// unitOf returns the multiplier of a name with its unit at the end.
func unitOf(name string) float64 {
	switch {
	case strings.HasSuffix(name, "_ft"):
		return Foot
	case strings.HasSuffix(name, "_kn"):
		return Knot
	}
	return 1
}

// ReadTracks reads tracks from GeoJSON: every LineString with a property times,
// an RFC 3339 instant for each position. A property planned marks a plan.
// Features without times are passed over; a file without any track is an
// error. Errors are those of [ReadRun].
//
// Source: [RFC7946] section 3; times beside the positions, because the format
// has no place for a fourth coordinate.
func ReadTracks(r io.Reader) ([]Track, error) {
	var tracks []Track
	err := readFeatures(r, true, func(where string, f *feature) error {
		v, ok := f.props["times"]
		if !ok {
			return nil
		}
		t, err := f.track(v)
		if err != nil {
			return fileError(where, "%w", err)
		}
		tracks = append(tracks, t)
		return nil
	})
	if err != nil {
		return nil, err
	}
	if len(tracks) == 0 {
		return nil, fileError("", "no feature with times")
	}
	return tracks, nil
}

func (f *feature) track(v any) (Track, error) {
	var t Track
	var err error
	if t.Name, err = f.text("name"); err != nil {
		return Track{}, err
	}
	t.Planned = f.props["planned"] == true
	var points []Point
	switch f.kind {
	case "Point":
		points = f.parts[0][0]
	case "LineString":
		points = f.parts[0][0]
	default:
		return Track{}, fmt.Errorf("geometry %q; expected LineString", f.kind)
	}
	times, ok := v.([]any)
	if !ok || len(times) != len(points) {
		return Track{}, fmt.Errorf("times: found %s of %d, expected a list of %d, one a position", show(v), len(times), len(points))
	}
	t.Fixes = make([]Fix, len(points))
	for i, p := range points {
		s, ok := times[i].(string)
		if !ok {
			return Track{}, fmt.Errorf("times[%d]: found %s, expected a text", i, show(times[i]))
		}
		at, err := fileTime(s)
		if err != nil {
			return Track{}, fmt.Errorf("times[%d]: %w", i, err)
		}
		t.Fixes[i] = Fix{p, at}
	}
	return t, t.Check()
}

// splitLine cuts a line where it crosses the antimeridian, and reports
// whether it did. A cut in the middle of a leg lies at the latitude where the
// leg, straight in longitude and latitude, crosses.
func splitLine(points []Point) (parts [][]Point, cut bool) {
	part := []Point{tidy(points[0])}
	for i := 1; i < len(points); i++ {
		p, q := tidy(points[i-1]), tidy(points[i])
		if d := q.Lon - p.Lon; math.Abs(d) > 180 {
			side := math.Copysign(180, p.Lon) // leave on the side of p
			to := q.Lon + math.Copysign(360, p.Lon)
			f := (side - p.Lon) / (to - p.Lon)
			if side == p.Lon || to == p.Lon {
				f = 0
			}
			lat := p.Lat + f*(q.Lat-p.Lat)
			part = append(part, Point{lat, side})
			parts = append(parts, part)
			part = []Point{{lat, -side}}
			cut = true
		}
		part = append(part, q)
	}
	return append(parts, part), cut
}

// tidy brings a longitude to what a file holds, keeping 180 apart from -180.
func tidy(p Point) Point {
	if !(p.Lon >= -180 && p.Lon <= 180) {
		p.Lon = wrapLon(p.Lon)
	}
	return p
}
