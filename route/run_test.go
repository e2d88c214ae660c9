package route

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"math"
	"math/rand/v2"
	"runtime"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

const bayGeoJSON = `{"type":"FeatureCollection","features":[
{"type":"Feature","properties":{"role":"run","name":"Bay run","depth_m":[12,null,30]},
 "geometry":{"type":"LineString","coordinates":[[7.0,50.0],[7.05,50.0],[7.1,50.0],[7.15,50.02]]}},
{"type":"Feature","id":4,"properties":{"role":"exit","name":"Slip","note":"steps at half tide","least_depth_m":0.5,
 "greatest_breaker_ft":2,"seaward_deg":180,"daylight_only":true,"greatest_stream_kn":2},
 "geometry":{"type":"Point","coordinates":[7.05,50.02,3.5]}},
{"type":"Feature","properties":{"role":"exit","name":"Beach","greatest_breaker_m":"none","colour":"red"},
 "geometry":{"type":"Point","coordinates":[7.1,50.02]}},
{"type":"Feature","properties":{"role":"coast"},
 "geometry":{"coordinates":[[[6.9,50.03],[7.3,50.03],[7.3,50.1],[6.9,50.1],[6.9,50.03]]],"type":"Polygon"}},
{"type":"Feature","properties":{"role":"coast"},
 "geometry":{"type":"LineString","coordinates":[[6.9,49.9],[7.3,49.9]]}},
{"type":"Feature","properties":{"role":"traffic","name":"Fairway"},
 "geometry":{"type":"Polygon","coordinates":[[[7.06,49.95],[7.08,49.95],[7.08,50.01],[7.06,50.01],[7.06,49.95]]]}}
]}`

func TestReadRun(t *testing.T) {
	r, err := ReadRun(strings.NewReader("\ufeff" + bayGeoJSON))
	if err != nil {
		t.Fatal(err)
	}
	if r.Name != "Bay run" || len(r.Points) != 4 || r.Points[3] != (Point{Lat: 50.02, Lon: 7.15}) {
		t.Errorf("%+v", r)
	}
	if d, ok := r.Depth(0).Get(); !ok || d != 12 {
		t.Error(r.Depth(0))
	}
	if _, ok := r.Depth(1).Get(); ok {
		t.Error("a null depth is known")
	}
	if _, ok := r.Depth(9).Get(); ok {
		t.Error("a depth beyond the run is known")
	}
	e := r.Exits[0]
	ft, _ := e.GreatestBreaker.Get()
	kn, _ := e.GreatestStream.Get()
	within(t, "2 ft", ft, 0.6096, 1e-12)
	within(t, "2 kn", kn, 1.028888888888889, 1e-12)
	if e.Name != "Slip" || e.Note != "steps at half tide" || e.Hours != DaylightOnly {
		t.Errorf("%+v", e)
	}
	b := r.Exits[1]
	if b.LeastDepth.Given() || !b.GreatestBreaker.Given() || b.Hours != HoursNotGiven {
		t.Errorf("%+v", b)
	}
	if on, err := r.Coast.Land(Point{50.05, 7.1}); err != nil || !on {
		t.Error("land", err)
	}
	within(t, "fetch to the line", r.Coast.Fetch(r.Points[0], 180, 1e6), Inverse(r.Points[0], Point{49.9, 7}).Distance, 0.2)
	o, err := r.Areas[0].Outline()
	if err != nil {
		t.Fatal(err)
	}
	if x, _ := o.Crosses(r.Points[1], r.Points[2]); !x.Land {
		t.Error("the second leg enters the fairway")
	}
	within(t, "length", r.Length(), 3*3583, 1200)
	if r.Areas[0].Kind != Traffic || len(r.Legs()) != 3 {
		t.Error(r.Areas)
	}
}

func feat(props, geometry string) string {
	return `{"type":"Feature","properties":{` + props + `},"geometry":` + geometry + `}`
}

func coll(features ...string) string {
	return `{"type":"FeatureCollection","features":[` + strings.Join(features, ",") + `]}`
}

const (
	goodRun  = `{"type":"Feature","properties":{"role":"run"},"geometry":{"type":"LineString","coordinates":[[7,50],[7.1,50]]}}`
	aPoint   = `{"type":"Point","coordinates":[7,50]}`
	aSquare  = `{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,0]]]}`
	runProps = `"role":"run"`
)

// TestReadRunBadInput: every complaint names the place, the value and what was
// expected.
func TestReadRunBadInput(t *testing.T) {
	line := func(c string) string { return feat(runProps, `{"type":"LineString","coordinates":`+c+`}`) }
	exit := func(props string) string { return coll(goodRun, feat(`"role":"exit",`+props, aPoint)) }
	for in, want := range map[string]string{
		``:                             "truncated",
		`[]`:                           "expected an object",
		`{"type":"Topology"}`:          `"Topology", expected FeatureCollection`,
		`{"type":"FeatureCollection"}`: "without features",
		coll():                         "no feature with role run",
		bayGeoJSON[:strings.Index(bayGeoJSON, "7.05")]: "features[0].geometry.coordinates: the file ends at byte",
		coll(goodRun) + `{}`:                           "after the end: found an object",
		coll(goodRun, goodRun):                         "features[1]: a second run",
		coll(line(`[[7,50]]`)):                         "features[0]: run: geometry: 1 positions, expected at least 2",
		coll(line(`[[7,50],[7,50]]`)):                  "point 1 repeats point 0",
		coll(line(`[[7,50],[7.1,91]]`)):                "features[0].geometry.coordinates[1]: latitude 91 is outside -90 to 90; longitude is 7.1: are the two swapped?",
		coll(line(`[[-122.4,37.8],[-122.4,-122.5]]`)):  "latitude -122.5 is outside -90 to 90",
		coll(line(`[[7,50],[400,50]]`)):                "longitude 400 is outside",
		coll(line(`[[7,50],[7.1]]`)):                   "coordinates[1]: a position of 1 numbers",
		coll(line(`[[7,50],["7",50]]`)):                `coordinates[1]: found "7", expected a number`,
		coll(line(`[[7,50],[[7,50]]]`)):                "a list inside a position",
		coll(line(`[[7,50],7]`)):                       "found 7, expected a list",
		coll(line(`[[7,50],{}]`)):                      "found an object, expected a number",
		coll(line(`[]`)):                               "LineString without positions",
		coll(line(`[[]]`)):                             "an empty list",
		coll(line(`[7,50]`)):                           "nested 1 deep; expected 2 for a LineString",
		coll(line(`[[[[[7,50]]]]]`)):                   "a list inside",
		coll(line(`[[7,1e999],[7,50]]`)):               "features[0].geometry.coordinates",
		coll(feat(runProps, `{"type":"Blob","coordinates":[[7,50],[8,50]]}`)): `type "Blob"`,
		coll(feat(runProps, aPoint)):                                          `run: geometry "Point"; expected LineString`,
		coll(feat(runProps, "null")):                                          `geometry ""`,
		coll(feat(runProps, "3")):                                             "found 3, expected an object",
		coll(feat(runProps+`,"depth_m":"deep"`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):     `depth_m: found "deep"`,
		coll(feat(runProps+`,"depth_m":[1,2]`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):      "2 depths, expected one for each of 1 legs",
		coll(feat(runProps+`,"depth_m":["x"]`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):      `depth_m[0]: found "x"`,
		coll(feat(runProps+`,"depth_m":-30`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):        "depth of leg 0: -30 m",
		coll(feat(`"role":"run","name":4`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):          "name: found 4, expected a text",
		coll(feat(runProps, `{"type":"MultiLineString","coordinates":[[[7,50],[8,50]],[[9,50],[10,50]]]}`)): "part 1 does not begin where part 0 ends",
		coll(goodRun, feat(`"name":"x"`, aPoint)):                                                           "features[1]: properties: no role",
		coll(goodRun, feat(`"role":"coats"`, aSquare)):                                                      `role "coats"; expected run, exit, coast`,
		coll(goodRun, feat(`"role":"coast"`, aPoint)):                                                       `geometry "Point"; expected LineString or Polygon`,
		coll(goodRun, feat(`"role":"avoid"`, aPoint)):                                                       `geometry "Point"; expected Polygon`,
		coll(goodRun, feat(`"role":"coast"`, `{"type":"Polygon","coordinates":[[[0,0],[1,0],[0,0]]]}`)):     "polygon 0 ring 0: 2 different positions",
		coll(goodRun, feat(`"role":"avoid"`, `{"type":"Polygon","coordinates":[[[0,0],[1,0],[0,0]]]}`)):     "area 0",
		coll(goodRun, `{"type":"Feature","type":"Feature"}`):                                                `member "type" is given twice`,
		coll(goodRun, `{"type":"Future"}`):                                                                  `features[1].type: found "Future", expected Feature`,
		coll(goodRun, `{"type":"Feature","properties":[]}`):                                                 "properties: found a list, expected an object",
		exit(`"note":""`):                                       "has no name",
		exit(`"name":"A","least_depth_m":"low"`):                `least_depth_m: found "low", expected a number or "none"`,
		exit(`"name":"A","least_depth_m":true`):                 "least_depth_m: found true",
		exit(`"name":"A","least_depth_m":1,"least_depth_ft":3`): "both given",
		exit(`"name":"A","least_depth_m":-1`):                   "least depth: -1 is outside 0 to 100",
		exit(`"name":"A","seaward_deg":400`):                    "seaward: 400 is outside 0 to 360",
		exit(`"name":"A","daylight_only":"yes"`):                `daylight_only: found "yes", expected true or false`,
		coll(goodRun, feat(`"role":"exit","name":"A"`, aPoint), feat(`"role":"exit","name":"A"`, aPoint)): `two exits named "A"`,
		coll(goodRun, feat(`"role":"exit","name":"A"`, `{"type":"Point","coordinates":[50,7.01]}`)):       `exit "A": latitude 7.01, longitude 50 is over 500 km from the run`,
		coll(goodRun, feat(`"role":"coast"`, `{"type":"LineString","coordinates":[[50,7.01],[50.1,7]]}`)): "coast line 0: latitude 7.01",
		`{"crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:EPSG::27700"}},` + coll(goodRun)[1:]: "crs: a reference system other than WGS 84",
		`{"type":"FeatureCollection","features":[` + "\x01":                                               "not JSON",
	} {
		r, err := ReadRun(strings.NewReader(in))
		if !errors.Is(err, ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%.90s\n got  %v\n want %s", in, err, want)
		}
		if err != nil && (r.Points != nil || r.Exits != nil || r.Coast != nil) {
			t.Errorf("%.60s: a run comes with the error", in)
		}
	}
	ok := `{"crs":{"type":"name","properties":{"name":"urn:ogc:def:crs:OGC:1.3:CRS84"}},` + coll(goodRun)[1:]
	if _, err := ReadRun(strings.NewReader(ok)); err != nil {
		t.Error(err)
	}
}

// spaces gives n blanks without holding them.
type spaces struct{ n int }

func (s *spaces) Read(p []byte) (int, error) {
	if s.n == 0 {
		return 0, io.EOF
	}
	n := min(len(p), s.n)
	for i := range p[:n] {
		p[i] = ' '
	}
	s.n -= n
	return n, nil
}

// TestReadersRefuseOver32MB: a file over the limit is refused, not cut off,
// and one at the limit is read.
func TestReadersRefuseOver32MB(t *testing.T) {
	if testing.Short() {
		t.Skip()
	}
	good := coll(goodRun)
	gpx := `<gpx version="1.1"><rte><rtept lat="50" lon="7"/><rtept lat="50" lon="8"/></rte></gpx>`
	if _, err := ReadRun(io.MultiReader(strings.NewReader(good), &spaces{largest - len(good)})); err != nil {
		t.Error(err)
	}
	if _, err := ReadRun(io.MultiReader(strings.NewReader(good), &spaces{largest - len(good) + 1})); !errors.Is(err, ErrTooLarge) {
		t.Error(err)
	}
	if _, err := ReadRunGPX(io.MultiReader(strings.NewReader(gpx), &spaces{largest})); !errors.Is(err, ErrTooLarge) {
		t.Error(err)
	}
	if _, err := ReadCoast(io.MultiReader(&spaces{largest}, strings.NewReader(good))); !errors.Is(err, ErrTooLarge) {
		t.Error(err)
	}
}

// stream writes a coast of n positions while it is read.
type stream struct {
	n, i int
	buf  bytes.Buffer
}

func (s *stream) Read(p []byte) (int, error) {
	for s.buf.Len() < len(p) && s.i <= s.n+1 {
		switch {
		case s.i == 0:
			s.buf.WriteString(`{"type":"LineString","coordinates":[[0,0]`)
		case s.i <= s.n:
			fmt.Fprintf(&s.buf, ",[%.6f,%.6f]", float64(s.i)*1e-4, float64(s.i%2)*1e-4)
		default:
			s.buf.WriteString("]}")
		}
		s.i++
	}
	return s.buf.Read(p)
}

// TestReadCoastMemory: reading never holds the text; what stays is the index.
func TestReadCoastMemory(t *testing.T) {
	if testing.Short() {
		t.Skip()
	}
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	c, err := ReadCoast(&stream{n: 100000})
	if err != nil {
		t.Fatal(err)
	}
	runtime.GC()
	runtime.ReadMemStats(&after)
	if got := float64(after.HeapAlloc) - float64(before.HeapAlloc); !(got <= 50e6) {
		t.Errorf("%d segments hold %.0f MB", c.Segments(), got/1e6)
	}
	if c.Segments() != 100000 {
		t.Error(c.Segments())
	}
	runtime.KeepAlive(c)
}

func TestReadCoastShapes(t *testing.T) {
	for in, want := range map[string]int{
		aSquare: 165, // edges of 111 km in parts of 2
		coll(feat("", aSquare), feat("", aPoint), feat("", "null")):                             165,
		feat("", `{"type":"LineString","coordinates":[[0,0],[0,0.01]]}`):                        1,
		`{"type":"MultiLineString","coordinates":[[[0,0],[0,0.01]],[[1,1],[1,1.01],[1,1.02]]]}`: 3,
	} {
		c, err := ReadCoast(strings.NewReader(in))
		if err != nil {
			t.Errorf("%.60s: %v", in, err)
			continue
		}
		if got := c.Segments(); want != 165 && got != want || got == 0 {
			t.Errorf("%.60s: %d segments, want %d", in, got, want)
		}
	}
	for in, want := range map[string]string{
		`{"type":"GeometryCollection","geometries":[]}`: "GeometryCollection",
		`{"type":"LineString","coordinates":[[0,0]]}`:   "line 0",
	} {
		if _, err := ReadCoast(strings.NewReader(in)); !errors.Is(err, ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", in, err)
		}
	}
}

// drawRun makes a run that has everything.
func drawRun(t *rapid.T) Run {
	lat := rapid.Float64Range(-80, 80).Draw(t, "lat")
	lon := rapid.Float64Range(-180, 180).Draw(t, "lon")
	if rapid.Bool().Draw(t, "antimeridian") {
		lon = rapid.SampledFrom([]float64{179.95, -179.95, 180, -180, 179.9999999}).Draw(t, "near")
	}
	r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 5))
	at := func() Point {
		return Point{lat + (r.Float64()-0.5)*0.2, wrapLon(lon + (r.Float64()-0.5)*0.2)}
	}
	text := func(name string) string {
		return rapid.StringOfN(rapid.RuneFrom([]rune("aé<&\"' \\/Ω")), 0, 8, -1).Draw(t, name)
	}
	run := Run{Name: strings.TrimSpace(text("name"))}
	n := rapid.IntRange(2, 8).Draw(t, "points")
	for range n {
		run.Points = append(run.Points, at())
	}
	if rapid.Bool().Draw(t, "depths") {
		run.Depths = make([]Value, n-1)
		run.Depths[r.IntN(n-1)] = Known(1 + r.Float64()*30)
	}
	if rapid.Bool().Draw(t, "fetch depth") {
		run.FetchDepth = Known(1 + r.Float64()*30)
	}
	if rapid.Bool().Draw(t, "exposure") {
		run.Exposure = make([]WindFactor, n-1)
		run.Exposure[r.IntN(n-1)] = WindFactor{0.2 + r.Float64()/2, 0.7 + r.Float64(), 1.7 + r.Float64()}
	}
	limit := func(most float64) Limit {
		switch r.IntN(3) {
		case 0:
			return NoLimit()
		case 1:
			return LimitOf(r.Float64() * most)
		}
		return Limit{}
	}
	for i := range rapid.IntRange(0, 4).Draw(t, "exits") {
		run.Exits = append(run.Exits, Exit{
			Name: fmt.Sprintf("%d%s", i, strings.TrimSpace(text("exit"))), Point: at(), Note: strings.TrimSpace(text("note")), Charted: Known(r.Float64()*8 - 3),
			LeastDepth: limit(3), GreatestBreaker: limit(2), Seaward: limit(360), GreatestStream: limit(2), Hours: Hours(r.IntN(3)),
		})
	}
	for i := range rapid.IntRange(0, 3).Draw(t, "steep") {
		s := SteepShore{Kind: SteepKinds()[i]}
		if r.IntN(2) == 0 {
			s.Kind, s.Reflects = text("kind"), Known(r.Float64())
		}
		for range 2 + r.IntN(3) { // on one side of the antimeridian, where lines are cut
			p := at()
			p.Lon = math.Copysign(math.Max(math.Abs(p.Lon), 1e-3), lon+1e-3)
			s.Line = append(s.Line, p)
		}
		if _, cut := splitLine(s.Line); !cut {
			run.Steep = append(run.Steep, s)
		}
	}
	return run
}

var runOptions = cmp.AllowUnexported(Value{}, Limit{})

// TestRunRoundTrip: what is written is read back the same, in both formats.
func TestRunRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := drawRun(t)
		var b bytes.Buffer
		if err := WriteRun(&b, run); err != nil {
			t.Fatal(err)
		}
		got, err := ReadRun(bytes.NewReader(b.Bytes()))
		if err != nil {
			t.Fatalf("%v\n%s", err, b.String())
		}
		if d := cmp.Diff(run, got, runOptions); d != "" {
			t.Fatalf("GeoJSON (-written +read):\n%s\n%s", d, b.String())
		}
		run.Steep = nil // the format has no shore
		b.Reset()
		if err := WriteRunGPX(&b, run); err != nil {
			t.Fatal(err)
		}
		if got, err = ReadRunGPX(bytes.NewReader(b.Bytes())); err != nil {
			t.Fatalf("%v\n%s", err, b.String())
		}
		for i := range run.Points { // the format has no 180
			run.Points[i].Lon = wrapLon(run.Points[i].Lon)
		}
		if d := cmp.Diff(run, got, runOptions); d != "" {
			t.Fatalf("GPX (-written +read):\n%s\n%s", d, b.String())
		}
	})
}

// TestCoastRoundTrip: a coast comes back as the same ground, cut or not, and
// writing it again gives the same text.
func TestCoastRoundTrip(t *testing.T) {
	run := Run{Points: []Point{{-17, 179.9}, {-17, -179.9}}}
	r := rand.New(rand.NewPCG(4, 4))
	for _, ps := range [][]Polygon{
		nil,
		{box(-18, 177, -16, 179)},
		{{{{-18, 177}, {-18, -177}, {-16, -177}, {-16, 177}}}},
		{{{{-18, 177}, {-16, 177}, {-16, -177}, {-18, -177}}, {{-17.5, 179}, {-17.5, -179}, {-16.5, -179}, {-16.5, 179}}}},
		{{{{-70, 0}, {-70, 90}, {-70, 180}, {-70, -90}}}, {{{80, 0}, {82, 120}, {81, -120}}}},
		{{{{-19, 178}, {-15, -178}, {-15, 179}, {-17, -179}, {-15, 178}}}},
	} {
		run.Coast = mustCoast(t, [][]Point{{{-20, 179}, {-20, -179}}}, ps)
		run.Areas = []Area{{Kind: NoSignal, Name: "x", Polygons: []Polygon{box(-19.5, -179.5, -19, -179)}}}
		var one, two bytes.Buffer
		if err := WriteRun(&one, run); err != nil {
			t.Fatal(err)
		}
		got, err := ReadRun(bytes.NewReader(one.Bytes()))
		if err != nil {
			t.Fatalf("%v\n%s", err, one.String())
		}
		if err := WriteRun(&two, got); err != nil {
			t.Fatal(err)
		}
		if i := strings.Index(one.String(), "180.0000001"); i >= 0 {
			t.Error("a longitude past 180")
		}
		if one.String() != two.String() {
			// A line is cut into two on the first writing.
			three, err := ReadRun(bytes.NewReader(two.Bytes()))
			if err != nil {
				t.Fatal(err)
			}
			got = three
		}
		for range 3000 {
			p := Point{180*r.Float64() - 90, 360*r.Float64() - 180}
			if r.IntN(2) == 0 {
				p = Point{-20 + 6*r.Float64(), wrapLon(176 + 8*r.Float64())}
			}
			if run.Coast.land(p) != got.Coast.land(p) {
				t.Fatalf("%v: land %v, read back %v\n%s", p, run.Coast.land(p), got.Coast.land(p), one.String())
			}
		}
	}
	// An ocean is a coast that is known.
	run.Coast, run.Areas = mustCoast(t, nil, nil), nil
	var b bytes.Buffer
	if err := WriteRun(&b, run); err != nil {
		t.Fatal(err)
	}
	if got, err := ReadRun(&b); err != nil || got.Coast == nil {
		t.Errorf("an ocean came back as %v, %v", got.Coast, err)
	}
}

// TestAntimeridianCutOfTheStandard: the line and the rectangle that RFC 7946
// section 3.1.9 cuts are cut to the same positions.
func TestAntimeridianCutOfTheStandard(t *testing.T) {
	parts, cut := splitLine([]Point{{45, 170}, {45, -170}})
	want := [][]Point{{{45, 170}, {45, 180}}, {{45, -180}, {45, -170}}}
	if d := cmp.Diff(want, parts); !cut || d != "" {
		t.Error(d)
	}
	got := splitPolygon(Polygon{{{40, 170}, {40, -170}, {50, -170}, {50, 170}}})
	// The same corners in the same sense; a ring may begin anywhere.
	rings := []Polygon{
		{{{40, 170}, {40, 180}, {50, 180}, {50, 170}, {40, 170}}},
		{{{40, -180}, {40, -170}, {50, -170}, {50, -180}, {40, -180}}},
	}
	if d := cmp.Diff(rings, got); d != "" {
		t.Error(d)
	}
}

func drawTracks(t *rapid.T) []Track {
	r := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 5))
	var out []Track
	for k := range rapid.IntRange(1, 4).Draw(t, "tracks") {
		tr := Track{Name: fmt.Sprint("t", k), Planned: k%2 == 0 && rapid.Bool().Draw(t, "planned")}
		at := time.Date(2026, 6, 21, 4, 43, 0, 0, time.UTC)
		for range rapid.IntRange(1, 6).Draw(t, "fixes") {
			tr.Fixes = append(tr.Fixes, Fix{Point{180*r.Float64() - 90, 360*r.Float64() - 180}, at})
			at = at.Add(time.Duration(r.Int64N(1e10)))
		}
		out = append(out, tr)
	}
	return out
}

func TestTracksRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tracks := drawTracks(t)
		var b bytes.Buffer
		if err := WriteTracks(&b, tracks); err != nil {
			t.Fatal(err)
		}
		got, err := ReadTracks(bytes.NewReader(b.Bytes()))
		if err != nil {
			t.Fatalf("%v\n%s", err, b.String())
		}
		if d := cmp.Diff(tracks, got); d != "" {
			t.Fatalf("GeoJSON:\n%s", d)
		}
		b.Reset()
		if err := WriteTracksGPX(&b, tracks); err != nil {
			t.Fatal(err)
		}
		if got, err = ReadTracksGPX(bytes.NewReader(b.Bytes())); err != nil {
			t.Fatalf("%v\n%s", err, b.String())
		}
		var want []Track
		for _, planned := range []bool{true, false} {
			for _, tr := range tracks {
				if tr.Planned == planned {
					want = append(want, tr)
				}
			}
		}
		if d := cmp.Diff(want, got); d != "" {
			t.Fatalf("GPX:\n%s\n%s", d, b.String())
		}
	})
}

func TestReadGPXBadInput(t *testing.T) {
	gpx := func(s string) string { return `<?xml version="1.0"?><gpx version="1.1">` + s + `</gpx>` }
	rte := `<rte><rtept lat="50" lon="7"/><rtept lat="50" lon="8"/></rte>`
	for in, want := range map[string]string{
		``:                   "no element gpx",
		`<kml/>`:             `found an element "kml", expected gpx`,
		`<gpx version="2"/>`: `version "2", expected 1.1`,
		gpx(``):              "no route",
		gpx(rte)[:60]:        "truncated",
		gpx(rte + rte):       "rte 1: a second route",
		gpx(rte) + `<gpx/>`:  "after the end",
		gpx(`<rte><rtept lat="50" lon="7"/></rte>`):                          "1 points, of at least 2",
		gpx(`<rte><rtept lat="50" lon="7"/><rtept lat="50" lon="7"/></rte>`): "point 1 repeats point 0",
		gpx(`<rte><rtept lat="50" lon="7"/><rtept lat="91" lon="7"/></rte>`): "rte 0 rtept 1: latitude 91 is outside -90 to 90",
		gpx(`<rte><rtept lat="50" lon="7"/><rtept lon="7"/></rte>`):          `rte 0 rtept 1: lat "" is not a number`,
		gpx(`<rte><rtept lat="NaN" lon="7"/></rte>`):                         "latitude NaN",
		gpx(`<rte><rtept lat="50" lon="x"/></rte>`):                          `lon "x" is not a number`,
		gpx(rte + `<wpt lat="50" lon="7"><type>exit</type></wpt>`):           "has no name",
		gpx(`<rte></wpt></rte>`):                                             "not XML",
		`<?xml version="1.0" encoding="UTF-16"?><gpx version="1.1"/>`:        "UTF-16",
		gpx(`<rte><rtept lat="50" lon="7"><extensions><f:leg xmlns:f="` + gpxOwnSpace + `" depth_m="x"/></extensions></rtept></rte>`):                                 `depth_m "x"`,
		gpx(rte + `<wpt lat="50" lon="7"><type>exit</type><name>A</name><extensions><f:landing xmlns:f="` + gpxOwnSpace + `" least_depth_m="x"/></extensions></wpt>`): `least_depth_m: found "x"`,
	} {
		if _, err := ReadRunGPX(strings.NewReader(in)); !errors.Is(err, ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%.90s\n got  %v\n want %s", in, err, want)
		}
	}
	pt := func(time string) string { return `<trkpt lat="50" lon="7">` + time + `</trkpt>` }
	trk := func(s string) string { return gpx(`<trk><trkseg>` + s + `</trkseg></trk>`) }
	for in, want := range map[string]string{
		gpx(rte):                      "no track and no route with times",
		trk(pt(``)):                   "trk 0 trkseg 0 trkpt 0: no time",
		trk(pt(`<time>12:00</time>`)): `time "12:00" is not an instant with a zone`,
		trk(pt(`<time>2026-06-21T04:43:00</time>`)):                                            "is not an instant with a zone",
		trk(pt(`<time>0026-06-21T04:43:00Z</time>`)):                                           "outside the years",
		trk(pt(`<time>2026-06-21T04:43:00Z</time>`) + pt(`<time>2026-06-21T04:42:00Z</time>`)): "trkpt 1: time 2026-06-21T04:42:00Z is before",
	} {
		if _, err := ReadTracksGPX(strings.NewReader(in)); !errors.Is(err, ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%.90s\n got  %v\n want %s", in, err, want)
		}
	}
	for in, want := range map[string]string{
		coll(goodRun): "no feature with times",
		coll(feat(`"times":["2026-06-21T04:43:00Z"]`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)): "expected a list of 2",
		coll(feat(`"times":[1,2]`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):                    "times[0]: found 1",
		coll(feat(`"times":["x","y"]`, `{"type":"LineString","coordinates":[[7,50],[8,50]]}`)):                `times[0]: time "x"`,
		coll(feat(`"times":[]`, aSquare)): `geometry "Polygon"`,
	} {
		if _, err := ReadTracks(strings.NewReader(in)); !errors.Is(err, ErrFile) || !strings.Contains(err.Error(), want) {
			t.Errorf("%.90s\n got  %v\n want %s", in, err, want)
		}
	}
	// Lower case and a space are instants too, as RFC 3339 has it.
	got, err := ReadTracksGPX(strings.NewReader(trk(pt(`<time>2026-06-21 04:43:00z</time>`))))
	if err != nil || !got[0].Fixes[0].Time.Equal(time.Date(2026, 6, 21, 4, 43, 0, 0, time.UTC)) {
		t.Error(got, err)
	}
}

// TestWritersRefuse: a run or a track that cannot be read back is not written.
func TestWritersRefuse(t *testing.T) {
	var b bytes.Buffer
	good := Run{Points: []Point{{50, 7}, {50, 8}}}
	for name, change := range map[string]func(*Run){
		"none":      func(r *Run) { r.Points = nil },
		"one":       func(r *Run) { r.Points = r.Points[:1] },
		"NaN":       func(r *Run) { r.Points = []Point{{math.NaN(), 7}, {50, 8}} },
		"repeated":  func(r *Run) { r.Points = []Point{{50, 7}, {50, 367}} },
		"depths":    func(r *Run) { r.Depths = make([]Value, 2) },
		"depth":     func(r *Run) { r.Depths = []Value{Known(-21)} },
		"factors":   func(r *Run) { r.Exposure = make([]WindFactor, 2) },
		"factor":    func(r *Run) { r.Exposure = []WindFactor{{0.6, 0.5, 1}} },
		"factorNaN": func(r *Run) { r.Exposure = []WindFactor{{0.6, math.NaN(), 1}} },
		"steep":     func(r *Run) { r.Steep = []SteepShore{{Kind: "cliff", Line: r.Points[:1]}} },
		"steepKind": func(r *Run) { r.Steep = []SteepShore{{Kind: "quay", Line: r.Points}} },
		"part":      func(r *Run) { r.Steep = []SteepShore{{Reflects: Known(1.1), Line: r.Points}} },
		"exit":      func(r *Run) { r.Exits = []Exit{{}} },
		"kind":      func(r *Run) { r.Areas = []Area{{Kind: "bird"}} },
		"shape":     func(r *Run) { r.Areas = []Area{{Kind: Avoid}} },
		"hours":     func(r *Run) { r.Exits = []Exit{{Name: "a", Hours: 9}} },
	} {
		r := good
		change(&r)
		if err := WriteRun(&b, r); err == nil {
			t.Errorf("%s: written", name)
		}
		if err := WriteRunGPX(&b, r); err == nil {
			t.Errorf("%s: written as GPX", name)
		}
	}
	at := time.Date(2026, 6, 21, 4, 43, 0, 0, time.UTC)
	for _, tr := range []Track{{}, {Fixes: []Fix{{Point{91, 0}, at}}}, {Fixes: []Fix{{}}}, {Fixes: []Fix{{Point{}, at}, {Point{}, at.Add(-1)}}}} {
		if err := WriteTracks(&b, []Track{tr}); err == nil {
			t.Errorf("%v: written", tr)
		}
		if err := WriteTracksGPX(&b, []Track{tr}); err == nil {
			t.Errorf("%v: written as GPX", tr)
		}
	}
	if b.Len() != 0 {
		t.Errorf("written before the refusal: %s", b.String())
	}
	for _, f := range []func(io.Writer) error{
		func(w io.Writer) error { return WriteRun(w, good) },
		func(w io.Writer) error { return WriteRunGPX(w, good) },
		func(w io.Writer) error { return WriteTracks(w, []Track{{Fixes: []Fix{{Point{}, at}}}}) },
		func(w io.Writer) error { return WriteTracksGPX(w, []Track{{Fixes: []Fix{{Point{}, at}}}}) },
	} {
		if err := f(full{}); !errors.Is(err, io.ErrShortWrite) {
			t.Error(err)
		}
	}
}

type full struct{}

func (full) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

func FuzzReadRun(f *testing.F) {
	f.Add([]byte(bayGeoJSON))
	f.Add([]byte(coll(goodRun)))
	f.Add([]byte(coll(goodRun, feat(`"role":"coast"`, `{"type":"MultiPolygon","coordinates":[[[[179,0],[-179,0],[-179,1],[179,0]]]]}`))))
	f.Fuzz(func(t *testing.T, in []byte) {
		r, err := ReadRun(bytes.NewReader(in))
		if err != nil {
			if !errors.Is(err, ErrFile) {
				t.Fatalf("not a file error: %v", err)
			}
			return
		}
		var b bytes.Buffer
		if err := WriteRun(&b, r); err != nil {
			t.Fatalf("read but not written: %v", err)
		}
		if r.Coast.Segments() > 0 { // slivers may vanish at a cut
			return
		}
		got, err := ReadRun(&b)
		if err != nil {
			t.Fatalf("written but not read: %v", err)
		}
		if d := cmp.Diff(r.Points, got.Points); d != "" {
			t.Fatal(d)
		}
	})
}

func FuzzReadCoast(f *testing.F) {
	f.Add([]byte(aSquare))
	f.Add([]byte(`{"type":"LineString","coordinates":[[179,0],[-179,1]]}`))
	f.Fuzz(func(t *testing.T, in []byte) {
		c, err := ReadCoast(bytes.NewReader(in))
		if err != nil {
			if !errors.Is(err, ErrFile) {
				t.Fatalf("not a file error: %v", err)
			}
			return
		}
		if d := c.Fetch(Point{1, 1}, 33, 1000); math.IsNaN(d) {
			t.Fatal("NaN fetch")
		}
	})
}

func FuzzReadRunGPX(f *testing.F) {
	var b bytes.Buffer
	_ = WriteRunGPX(&b, Run{Name: "a", Points: []Point{{50, 7}, {50, 8}}, Depths: []Value{Known(3)},
		Exits: []Exit{{Name: "x", Point: Point{50, 7}, Note: "n", LeastDepth: LimitOf(1), Hours: DaylightOnly}}})
	f.Add(b.Bytes())
	f.Add([]byte(`<gpx version="1.1"><rte><rtept lat="1" lon="2"/></rte></gpx>`))
	f.Fuzz(func(t *testing.T, in []byte) {
		r, err := ReadRunGPX(bytes.NewReader(in))
		if err != nil {
			if !errors.Is(err, ErrFile) {
				t.Fatalf("not a file error: %v", err)
			}
			return
		}
		var b bytes.Buffer
		if err := WriteRunGPX(&b, r); err != nil {
			t.Fatalf("read but not written: %v", err)
		}
		if _, err := ReadRunGPX(&b); err != nil {
			t.Fatalf("written but not read: %v", err)
		}
	})
}

func FuzzReadTracks(f *testing.F) {
	at := time.Date(2026, 6, 21, 4, 43, 0, 5, time.UTC)
	ts := []Track{{Name: "a", Fixes: []Fix{{Point{50, 7}, at}, {Point{50, 8}, at}}}, {Planned: true, Fixes: []Fix{{Point{50, 7}, at}}}}
	var a, b bytes.Buffer
	_ = WriteTracks(&a, ts)
	_ = WriteTracksGPX(&b, ts)
	f.Add(a.Bytes())
	f.Add(b.Bytes())
	f.Fuzz(func(t *testing.T, in []byte) {
		for _, read := range []func(io.Reader) ([]Track, error){ReadTracks, ReadTracksGPX} {
			ts, err := read(bytes.NewReader(in))
			if err != nil {
				if !errors.Is(err, ErrFile) {
					t.Fatalf("not a file error: %v", err)
				}
				continue
			}
			for _, tr := range ts {
				if err := tr.Check(); err != nil {
					t.Fatal(err)
				}
			}
		}
	})
}

// TestReadSteepAndExposure: a coast feature may be a steep shore as well, a
// polygon all round; the wind factors are one a leg.
func TestReadSteepAndExposure(t *testing.T) {
	line := `{"type":"LineString","coordinates":[[7,50.1],[7.1,50.1]]}`
	run, err := ReadRun(strings.NewReader(coll(
		feat(`"role":"run","exposure":[[0.5,0.7,1],null]`, `{"type":"LineString","coordinates":[[7,50],[7.05,50],[7.1,50]]}`),
		feat(`"role":"coast"`, line),
		feat(`"role":"coast","steep":true`, line),
		feat(`"role":"coast","reflects":"wall"`, line),
		feat(`"role":"coast","reflects":0.4,"kind":"slabs"`, `{"type":"Polygon","coordinates":[[[7,50.2],[7.1,50.2],[7.1,50.3],[7,50.2]]]}`),
		feat(`"role":"coast","steep":false`, line),
	)))
	if err != nil {
		t.Fatal(err)
	}
	if len(run.Coast.Lines()) != 4 || len(run.Coast.Polygons()) != 1 {
		t.Errorf("%d lines and %d polygons", len(run.Coast.Lines()), len(run.Coast.Polygons()))
	}
	if len(run.Steep) != 3 || run.Steep[0].Kind != "cliff" || run.Steep[1].Kind != "wall" || run.Steep[2].Reflects != Known(0.4) ||
		run.Steep[2].Kind != "slabs" || len(run.Steep[2].Line) != 4 {
		t.Errorf("%+v", run.Steep)
	}
	if f := run.Factor(0); f != (WindFactor{0.5, 0.7, 1}) || run.Factor(1).Given() || run.Factor(9).Given() || run.Factor(-1).Given() {
		t.Errorf("%+v", run.Exposure)
	}
	for _, bad := range []string{
		feat(`"role":"coast","reflects":"quay"`, line), feat(`"role":"coast","reflects":2`, line), feat(`"role":"coast","reflects":[1]`, line),
		feat(`"role":"coast","steep":"yes"`, line), feat(`"role":"steep"`, line), feat(`"role":"run","exposure":1`, line),
		feat(`"role":"run","exposure":[[1,1]]`, line), feat(`"role":"run","exposure":[[0,0,0]]`, line), feat(`"role":"run","exposure":[[1,0.9,1.1]]`, line),
	} {
		first := feat(`"role":"run"`, line)
		if strings.Contains(bad, `"run"`) {
			first = feat(`"role":"coast"`, line)
		}
		if _, err := ReadRun(strings.NewReader(coll(first, bad))); !errors.Is(err, ErrFile) {
			t.Errorf("%s: %v", bad, err)
		}
	}
}

// TestEveryPartWithTheOtherOrderIsAsked: whatever of a file has latitude before longitude, so that it lies far from the run and
// would lie on it the other way round, is refused by its name; one in the right order is not.
func TestEveryPartWithTheOtherOrderIsAsked(t *testing.T) {
	square := func(x, y string) string {
		return `{"type":"Polygon","coordinates":[[[` + x + `],[` + y + `],[20,30],[` + x + `]]]}`
	}
	for name, part := range map[string]func(a, b string) string{
		`exit "x"`: func(a, _ string) string {
			return feat(`"role":"exit","name":"x"`, `{"type":"Point","coordinates":[`+a+`]}`)
		},
		"coast line 0": func(a, b string) string {
			return feat(`"role":"coast"`, `{"type":"LineString","coordinates":[[`+a+`],[`+b+`]]}`)
		},
		"coast polygon 0": func(a, b string) string { return feat(`"role":"coast"`, square(a, b)) },
		"steep shore 0": func(a, b string) string {
			return feat(`"role":"steep","reflects":"cliff"`, `{"type":"LineString","coordinates":[[`+a+`],[`+b+`]]}`)
		},
		`area "keep out"`: func(a, b string) string { return feat(`"role":"avoid","name":"keep out"`, square(a, b)) },
	} {
		if _, err := ReadRun(strings.NewReader(coll(goodRun, part("7,50.1", "7.1,50.1")))); err != nil {
			t.Errorf("%s in the right order: %v", name, err)
		}
		_, err := ReadRun(strings.NewReader(coll(goodRun, part("50.1,7", "50.1,7.1"))))
		if err == nil || !errors.Is(err, ErrFile) || !strings.Contains(err.Error(), name) || !strings.Contains(err.Error(), "are the two swapped?") {
			t.Errorf("%s in the other order: %v", name, err)
		}
	}
}
