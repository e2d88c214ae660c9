package route

import (
	"errors"
	"math"
	"math/rand/v2"
	"runtime"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func within(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s = %v, want %v within %v", what, got, want, tol)
	}
}

func mustCoast(t testing.TB, lines [][]Point, polygons []Polygon) *Coast {
	t.Helper()
	c, err := NewCoast(lines, polygons)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func box(south, west, north, east float64) Polygon {
	return Polygon{{{south, west}, {south, east}, {north, east}, {north, west}, {south, west}}}
}

// TestCoastIndexIdentical is the oracle of the index: bit for bit what a scan
// of all segments answers, in five places of the globe.
func TestCoastIndexIdentical(t *testing.T) {
	n := 4000
	eyes := 60
	if testing.Short() {
		eyes = 10
	}
	for _, centre := range []Point{{Lat: 1, Lon: 0}, {Lat: 48, Lon: -124}, {Lat: -41, Lon: 179.9}, {Lat: 70, Lon: 20}, {Lat: -17, Lon: -180}} {
		c := archipelago(centre, n, 1)
		r := rand.New(rand.NewPCG(2, 3))
		_, cl := sincosd(centre.Lat)
		for range eyes {
			p := Point{centre.Lat + (r.Float64()-0.5)*2, wrapLon(centre.Lon + (r.Float64()-0.5)*2/cl)}
			rose, want := c.FetchRose(p, 36, 150000), scanRose(c, p, 36, 150000)
			for i := range rose {
				if rose[i] != want[i] {
					t.Fatalf("%v direction %d: index %v, scan %v", p, i*10, rose[i], want[i])
				}
				if one := c.Fetch(p, float64(i)*10, 150000); one != rose[i] {
					t.Fatalf("%v direction %d: Fetch %v, FetchRose %v", p, i*10, one, rose[i])
				}
			}
			eye := geocentric(p)
			s, f := c.tree.nearest(&eye)
			if d2 := along(s.a, s.b, f).sub(eye).norm2(); d2 != scanNearest(c, p) {
				t.Fatalf("%v nearest: index %v, scan %v", p, d2, scanNearest(c, p))
			}
			if (scanWinding(c, p) != 0) != c.land(p) {
				t.Fatalf("%v: land differs from the scan", p)
			}
		}
	}
}

// TestCoastFetchAtVertices looks exactly along the corners of a shore, where a
// line of sight must neither slip through nor stop short.
func TestCoastFetchAtVertices(t *testing.T) {
	var wall []Point
	for i := range 91 {
		wall = append(wall, Point{Lat: -0.9 + 0.02*float64(i), Lon: 1})
	}
	c := mustCoast(t, [][]Point{wall}, nil)
	for _, p := range wall[1:90] {
		b := Inverse(Point{}, p).Course
		if got := c.Fetch(Point{}, b, 1e6); !(got < 150000) {
			t.Errorf("toward the corner at %v: %v, the wall is at 111 km", p, got)
		}
	}
}

// TestCoastFetchByHand: a square of water with land around it, an island and a hole,
// on the equator where a degree of longitude is a pi / 180.
func TestCoastFetchByHand(t *testing.T) {
	const degree = coastA * math.Pi / 180
	land := Polygon{
		{{-3, -3}, {-3, 3}, {3, 3}, {3, -3}},
		{{-1, -1}, {-1, 1}, {1, 1}, {1, -1}},
	}
	isle := box(-0.01, 0.25, 0.01, 0.5)
	c := mustCoast(t, nil, []Polygon{land, isle})
	within(t, "east, to the island", c.Fetch(Point{}, 90, 1e6), degree/4, 1e-3)
	within(t, "west", c.Fetch(Point{}, 270, 1e6), degree, 1e-3)
	within(t, "west, a turn on", c.Fetch(Point{}, 270-720, 1e6), degree, 1e-3)
	within(t, "north", c.Fetch(Point{}, 0, 1e6), 110574.3885577987, 0.01) // meridian arc to 1 degree
	within(t, "capped", c.Fetch(Point{}, 0, 50000), 50000, 0)
	within(t, "in the shadow of the island", c.Fetch(Point{Lon: 0.75}, 270, 1e6), degree/4, 1e-3)
	within(t, "on the island", c.Fetch(Point{Lon: 0.3}, 0, 1e6), 0, 0)
	within(t, "on the mainland", c.Fetch(Point{Lat: 2}, 0, 1e6), 0, 0)
	within(t, "out at sea", c.Fetch(Point{Lat: 4}, 0, 1e6), 1e6, 0)
	for _, x := range []struct {
		p    Point
		land bool
	}{{Point{}, false}, {Point{Lat: 2}, true}, {Point{Lon: 0.3}, true}, {Point{Lat: 4}, false}, {Point{Lon: 180}, false}} {
		if got, err := c.Land(x.p); err != nil || got != x.land {
			t.Errorf("Land(%v) = %v, %v", x.p, got, err)
		}
	}
	without := mustCoast(t, nil, []Polygon{land})
	within(t, "island gone", without.Fetch(Point{}, 90, 1e6), degree, 1e-3)
}

// TestCoastLongEdge: an edge of 40 degrees along a parallel is the parallel, not
// the great circle, which bulges 5 degrees north of it.
func TestCoastLongEdge(t *testing.T) {
	c := mustCoast(t, [][]Point{{{60, -20}, {60, 20}}}, nil)
	got := c.Fetch(Point{Lat: 59.5}, 0, 1e6)
	d := Inverse(Point{Lat: 59.5}, Point{Lat: 60}).Distance
	within(t, "fetch to the parallel", got, d, 0.2)
}

func TestCoastAntimeridian(t *testing.T) {
	whole := Polygon{{{-18, 177}, {-18, -177}, {-16, -177}, {-16, 177}}}
	cut := []Polygon{box(-18, 177, -16, 180), box(-18, -180, -16, -177)}
	for name, ps := range map[string][]Polygon{"whole": {whole}, "cut": cut} {
		c := mustCoast(t, nil, ps)
		for _, lon := range []float64{179.5, 180, -180, -179.5, 177.5} {
			if on, err := c.Land(Point{-17, lon}); err != nil || !on {
				t.Errorf("%s: %v is land: %v, %v", name, lon, on, err)
			}
		}
		for _, lon := range []float64{176.5, -176.5, 0} {
			if on, _ := c.Land(Point{-17, lon}); on {
				t.Errorf("%s: %v is water", name, lon)
			}
		}
		within(t, name+" from the west", c.Fetch(Point{-17, 176}, 90, 1e6), 106489, 100)
		x, err := c.Crosses(Point{-17, 176}, Point{-17, -176})
		if err != nil || !x.Land {
			t.Errorf("%s: the line meets land: %v, %v", name, x, err)
		}
	}
	line := mustCoast(t, [][]Point{{{-1, 180}, {1, -180}}}, nil)
	const degree = coastA * math.Pi / 180
	within(t, "across 180", line.Fetch(Point{0, 179}, 90, 1e6), degree, 1e-3)
	within(t, "across 180 west", line.Fetch(Point{0, -179}, 270, 1e6), degree, 1e-3)
}

func TestCoastPoles(t *testing.T) {
	var south, north []Point
	for i := range 36 {
		south = append(south, Point{-70, float64(i) * 10})
		north = append(north, Point{80, wrapLon(float64(i) * -10)})
	}
	c := mustCoast(t, nil, []Polygon{{south}, {north}})
	cutRing := Polygon{{{-70, -180}, {-70, -90}, {-70, 0}, {-70, 90}, {-70, 180}, {-90, 180}, {-90, -180}, {-70, -180}}}
	k := mustCoast(t, nil, []Polygon{cutRing})
	for _, lon := range []float64{-180, -90, 3, 95, 180} {
		for _, x := range []struct {
			lat  float64
			land bool
		}{{-90, true}, {-80, true}, {-60, false}, {0, false}, {79, false}, {85, true}, {90, true}} {
			if got, _ := c.Land(Point{x.lat, lon}); got != x.land {
				t.Errorf("%v, %v: land %v", x.lat, lon, got)
			}
			if x.lat < 75 {
				if got, _ := k.Land(Point{x.lat, lon}); got != x.land {
					t.Errorf("cut at the antimeridian: %v, %v: land %v", x.lat, lon, got)
				}
			}
		}
	}
}

// TestCoastRingEitherWay: rings may run either way round, holes too, and
// polygons may overlap.
func TestCoastRingEitherWay(t *testing.T) {
	turn := func(ps []Point) []Point {
		var out []Point
		for i := len(ps) - 1; i >= 0; i-- {
			out = append(out, ps[i])
		}
		return out
	}
	outer, hole := box(0, 0, 4, 4)[0], box(1, 1, 3, 3)[0]
	for _, p := range []Polygon{{outer, hole}, {turn(outer), hole}, {outer, turn(hole)}, {turn(outer), turn(hole)}} {
		c := mustCoast(t, nil, []Polygon{p, box(0.2, 0.2, 0.8, 5)})
		for _, x := range []struct {
			p    Point
			land bool
		}{{Point{2, 2}, false}, {Point{0.5, 0.5}, true}, {Point{0.1, 2}, true}, {Point{0.5, 4.5}, true}, {Point{3.5, 2}, true}, {Point{5, 2}, false}} {
			if got, _ := c.Land(x.p); got != x.land {
				t.Errorf("%v: land %v", x.p, got)
			}
		}
	}
}

func TestCoastNearest(t *testing.T) {
	c := mustCoast(t, nil, []Polygon{box(-1, 1, 1, 2)})
	const degree = coastA * math.Pi / 180
	s, err := c.NearestShore(Point{Lon: 0.9})
	if err != nil {
		t.Fatal(err)
	}
	within(t, "distance", s.Distance, degree/10, 0.1)
	within(t, "bearing", s.Bearing, 90, 1e-3)
	if s.OnLand {
		t.Error("afloat")
	}
	s, _ = c.NearestShore(Point{Lon: 1.05})
	within(t, "from land", s.Bearing, 270, 1e-3)
	if !s.OnLand {
		t.Error("on land")
	}
	for _, x := range []struct {
		from          float64
		onshore, left float64
		kind          string
	}{{270, 10, 0, "onshore"}, {90, -10, 0, "offshore"}, {0, 0, 10, "alongshore"}, {180, 0, -10, "alongshore"}} {
		for _, at := range []Point{{Lon: 0.9}, {Lon: 1.05}} { // land lies east of both
			w, err := c.ShoreWind(at, From(10, x.from))
			if err != nil {
				t.Fatal(err)
			}
			within(t, x.kind, w.Onshore, x.onshore, 1e-3)
			within(t, x.kind+" along", w.Along, x.left, 1e-3)
			if w.Kind() != x.kind {
				t.Errorf("wind from %v is %s, got %s", x.from, x.kind, w.Kind())
			}
		}
	}
	if k := (ShoreWind{}).Kind(); k != "calm" {
		t.Error(k)
	}
	if k := (ShoreWind{Onshore: math.NaN()}).Kind(); k != "unknown" {
		t.Error(k)
	}
}

func TestCoastCrossesAndLandfall(t *testing.T) {
	c := mustCoast(t, nil, []Polygon{box(-1, 1, 1, 2)})
	const degree = coastA * math.Pi / 180
	for _, x := range []struct {
		a, b Point
		land bool
		at   float64
	}{
		{Point{}, Point{Lon: 3}, true, degree},
		{Point{}, Point{Lon: 0.5}, false, 0},
		{Point{}, Point{Lon: 1}, true, degree}, // ends at the shore
		{Point{Lon: 1.5}, Point{Lon: 1.6}, true, 0},
		{Point{Lon: 3}, Point{Lon: 4}, false, 0},
		{Point{Lat: 2}, Point{Lat: 2, Lon: 3}, false, 0},
		{Point{Lon: 0.5}, Point{Lon: 0.5}, false, 0},
	} {
		got, err := c.Crosses(x.a, x.b)
		if err != nil || got.Land != x.land {
			t.Errorf("%v to %v: %v, %v", x.a, x.b, got, err)
			continue
		}
		within(t, "distance to land", got.Distance, x.at, 0.1)
	}
	l, err := c.Landfall([]Point{{Lat: 0, Lon: 0}, {Lat: 0, Lon: 0.5}, {Lat: 0, Lon: 1.5}, {Lat: 0, Lon: 3}})
	if err != nil || !l.Found || l.Leg != 1 {
		t.Fatal(l, err)
	}
	within(t, "fraction", l.Fraction, 0.5, 1e-6)
	within(t, "distance", l.Distance, degree, 0.1)
	within(t, "lon", l.Point.Lon, 1, 1e-6)
	within(t, "lat", l.Point.Lat, 0, 1e-9)
	if l, err := c.Landfall([]Point{{}, {Lon: 0.5}}); err != nil || l.Found {
		t.Error(l, err)
	}
}

// TestFetchGrowsWithoutLand: taking an island away never shortens a fetch,
// and a fetch is zero on land.
func TestFetchGrowsWithoutLand(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		seed := rapid.Uint64().Draw(t, "seed")
		r := rand.New(rand.NewPCG(seed, 1))
		centre := Point{rapid.Float64Range(-75, 75).Draw(t, "lat"), rapid.Float64Range(-180, 180).Draw(t, "lon")}
		var ps []Polygon
		for range rapid.IntRange(1, 6).Draw(t, "islands") {
			at := Point{centre.Lat + (r.Float64() - 0.5), wrapLon(centre.Lon + 2*(r.Float64()-0.5))}
			ps = append(ps, Polygon{island(r, at, 1000+20000*r.Float64(), 0.5, 30)})
		}
		all, err := NewCoast(nil, ps)
		if err != nil {
			t.Fatal(err)
		}
		fewer, err := NewCoast(nil, ps[1:])
		if err != nil {
			t.Fatal(err)
		}
		on, _ := all.Land(centre)
		a, b := all.FetchRose(centre, 16, 3e5), fewer.FetchRose(centre, 16, 3e5)
		for i := range a {
			if on && a[i] != 0 {
				t.Fatalf("on land, fetch %v", a[i])
			}
			if !(b[i] >= a[i]) {
				t.Fatalf("direction %d: %v with the island, %v without", i, a[i], b[i])
			}
		}
		// The nearest shore is no farther than any fetch.
		if s, err := all.NearestShore(centre); err != nil {
			t.Fatal(err)
		} else if !on {
			for i := range a {
				if !(s.Distance <= a[i]+1) {
					t.Fatalf("shore at %v, fetch %v in direction %d", s.Distance, a[i], i)
				}
			}
		}
	})
}

// TestFetchMarched is the second implementation of a fetch, which knows no
// segment: along the geodesic all is water as far as the fetch, and at its end
// there is land.
func TestFetchMarched(t *testing.T) {
	seeds := 40
	if testing.Short() {
		seeds = 5
	}
	for seed := range uint64(seeds) {
		r := rand.New(rand.NewPCG(seed, 11))
		centre := Point{140*r.Float64() - 70, 360*r.Float64() - 180}
		var ps []Polygon
		for range 12 {
			at := Point{centre.Lat + 0.4*(r.Float64()-0.5), wrapLon(centre.Lon + 0.6*(r.Float64()-0.5))}
			ps = append(ps, Polygon{island(r, at, 1000+2000*r.Float64(), 0.5, 40)})
		}
		c := mustCoast(t, nil, ps)
		if c.land(centre) {
			continue
		}
		for bearing := 0.0; bearing < 360; bearing += 15 {
			d := c.Fetch(centre, bearing, 40000)
			for s := 50.0; s < d-1; s += 50 {
				if c.land(Direct(centre, bearing, s).To) {
					t.Errorf("seed %d bearing %v: land at %v, fetch %v", seed, bearing, s, d)
					break
				}
			}
			if d < 40000 && !c.land(Direct(centre, bearing, d+0.5).To) && !c.land(Direct(centre, bearing, d+5).To) {
				t.Errorf("seed %d bearing %v: no land behind a fetch of %v", seed, bearing, d)
			}
			end := Direct(centre, bearing, 40000).To
			x, err := c.Crosses(centre, end)
			if err != nil || x.Land != (d < 40000) || x.Land && !(math.Abs(x.Distance-d) <= 1) {
				t.Errorf("seed %d bearing %v: fetch %v, crossing %v, %v", seed, bearing, d, x, err)
			}
		}
	}
}

func TestCoastBadInput(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	c := mustCoast(t, nil, []Polygon{box(-1, 1, 1, 2)})
	var unknown *Coast
	for name, got := range map[string]float64{
		"lat":     c.Fetch(Point{nan, 0}, 0, 1),
		"lat 91":  c.Fetch(Point{91, 0}, 0, 1),
		"lon":     c.Fetch(Point{0, inf}, 0, 1),
		"bearing": c.Fetch(Point{}, nan, 1),
		"inf":     c.Fetch(Point{}, inf, 1),
		"limit":   c.Fetch(Point{}, 0, nan),
		"zero":    c.Fetch(Point{}, 0, 0),
		"far":     c.Fetch(Point{}, 0, 6e6),
		"nil":     unknown.Fetch(Point{}, 0, 1),
		"rose":    c.FetchRose(Point{nan, 0}, 3, 1)[2],
		"onland":  c.FetchRose(Point{0, 1.5}, 3, nan)[2],
		"nilrose": unknown.FetchRose(Point{}, 3, 1)[0],
	} {
		if !math.IsNaN(got) {
			t.Errorf("%s: %v, want NaN", name, got)
		}
	}
	for name, err := range map[string]error{
		"lat":      second(c.Land(Point{nan, 0})),
		"nil":      second(unknown.Land(Point{})),
		"near":     second(c.NearestShore(Point{91, 0})),
		"near nil": second(unknown.NearestShore(Point{})),
		"cross":    second(c.Crosses(Point{}, Point{nan, 0})),
		"long":     second(c.Crosses(Point{}, Point{0, 90})),
		"track":    second(c.Landfall([]Point{{}})),
		"leg":      second(c.Landfall([]Point{{}, {nan, 0}})),
		"wind":     second(c.ShoreWind(Point{}, Velocity{nan, 0})),
		"at shore": second(c.ShoreWind(Point{1, 1}, Velocity{1, 0})),
	} {
		if err == nil {
			t.Errorf("%s: no error", name)
		}
	}
	empty := mustCoast(t, nil, nil)
	within(t, "ocean", empty.Fetch(Point{}, 0, 1e6), 1e6, 0)
	if _, err := empty.NearestShore(Point{}); !errors.Is(err, ErrCoast) {
		t.Error(err)
	}
	for want, f := range map[string]func() (*Coast, error){
		"latitude 91":    func() (*Coast, error) { return NewCoast([][]Point{{{0, 0}, {91, 0}}}, nil) },
		"line 0":         func() (*Coast, error) { return NewCoast([][]Point{{{0, 0}}}, nil) },
		"line 1":         func() (*Coast, error) { return NewCoast([][]Point{{{0, 0}, {1, 0}}, {{1, 1}, {1, 1}}}, nil) },
		"polygon 0 ring": func() (*Coast, error) { return NewCoast(nil, []Polygon{{{{0, 0}, {1, 0}, {0, 0}}}}) },
		"has no ring":    func() (*Coast, error) { return NewCoast(nil, []Polygon{{}}) },
		"segments of at": func() (*Coast, error) {
			var l []Point
			for i := range 400 {
				l = append(l, Point{float64(i%2)*170 - 85, float64(i % 2 * 179)})
			}
			return NewCoast([][]Point{l}, nil)
		},
	} {
		if _, err := f(); !errors.Is(err, ErrCoast) || !strings.Contains(err.Error(), want) {
			t.Errorf("want an error with %q, got %v", want, err)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("FetchRose of no directions does not panic")
		}
	}()
	c.FetchRose(Point{}, 0, 1)
}

func second[T any](_ T, err error) error { return err }

// TestCoastMemory: 100,000 segments in at most 50 MB.
func TestCoastMemory(t *testing.T) {
	if testing.Short() {
		t.Skip()
	}
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	c := archipelago(Point{Lat: 48, Lon: -124}, 100000, 1)
	runtime.GC()
	runtime.ReadMemStats(&after)
	if got := float64(after.HeapAlloc) - float64(before.HeapAlloc); !(got <= 50e6) {
		t.Errorf("%d segments take %.1f MB, of 50", c.Segments(), got/1e6)
	}
	if c.Segments() < 99000 {
		t.Errorf("%d segments", c.Segments())
	}
	runtime.KeepAlive(c)
}
