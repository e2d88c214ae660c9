package route_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/route"
)

func coast(t *testing.T, lines [][]route.Point, land ...route.Polygon) *route.Coast {
	t.Helper()
	c, err := route.NewCoast(lines, land)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// island returns the land between two latitudes and two longitudes.
func island(south, west, north, east float64) route.Polygon {
	return route.Polygon{{{Lat: south, Lon: west}, {Lat: south, Lon: east}, {Lat: north, Lon: east}, {Lat: north, Lon: west}}}
}

// TestEdgesOfACoast: an edge is cut into parts of at most 2 km and of at most a degree of longitude, a ring is closed, the same
// place in a row is dropped.
func TestEdgesOfACoast(t *testing.T) {
	const km = 180 / (math.Pi * 6371.0088) // degrees
	a := lat(0)
	for _, c := range []struct {
		line []route.Point
		want int
	}{
		{[]route.Point{a, lat(1.999 * km)}, 1}, {[]route.Point{a, lat(2.001 * km)}, 2}, {[]route.Point{lat(5 * km), a}, 3}, {[]route.Point{a, lon(-5 * km)}, 3},
		{[]route.Point{{Lat: 60, Lon: 0}, {Lat: 60, Lon: 9 * km}}, 3},           // 4.5 km
		{[]route.Point{{Lat: 30, Lon: 0}, {Lat: 30 + 3*km, Lon: -4 * km}}, 3},   // hypot(3, 3.46)
		{[]route.Point{{Lat: 89.99, Lon: 0}, {Lat: 89.99, Lon: 10.5}}, 11},      // 0.2 km
		{[]route.Point{{Lat: 89.99, Lon: 179.5}, {Lat: 89.99, Lon: -179.5}}, 1}, //
		{[]route.Point{a, a, lat(km), lat(km), lat(2 * km), {Lat: 2 * km, Lon: 360}}, 2},
	} {
		if n := coast(t, [][]route.Point{c.line}).Segments(); n != c.want {
			t.Errorf("%v: %d segments, want %d", c.line, n, c.want)
		}
	}
	ring := []route.Point{{Lat: 0, Lon: 0}, {Lat: 0, Lon: km}, {Lat: km, Lon: 0}}
	for _, r := range [][]route.Point{ring, append(ring[:3:3], ring[0])} {
		if n := coast(t, nil, route.Polygon{r}).Segments(); n != 3 {
			t.Errorf("%v: %d segments, want 3", r, n)
		}
	}
	for _, c := range []struct {
		lines [][]route.Point
		land  []route.Polygon
		says  string
	}{
		{nil, []route.Polygon{{ring}, {ring, ring[:2]}}, "polygon 1 ring 1: 2 different positions in a row, of at least 3"},
		{nil, []route.Polygon{{ring}, {}}, "polygon 1 has no ring"},
		{nil, []route.Polygon{{ring}, {nil}}, "polygon 1 ring 0: 0 different positions in a row, of at least 3"},
		{[][]route.Point{ring, {a, a, a}}, nil, "line 1: it is not 2 different"},
		{[][]route.Point{ring, {a, lat(1), lat(91)}}, nil, "line 1: position 2"},
	} {
		if _, err := route.NewCoast(c.lines, c.land); !errors.Is(err, route.ErrCoast) || !strings.Contains(err.Error(), c.says) {
			t.Errorf("%v, want %q", err, c.says)
		}
	}
	// The end of a long edge is where it was put, and its middle on the straight line in longitude and latitude.
	s, err := coast(t, [][]route.Point{{{Lat: 10, Lon: 10}, {Lat: 10.4, Lon: 10.3}}}).NearestShore(route.Point{Lat: 10.41, Lon: 10.31})
	if err != nil || s.Point != (route.Point{Lat: 10.4, Lon: 10.3}) {
		t.Errorf("%+v, %v", s, err)
	}
	s, err = coast(t, [][]route.Point{{{Lat: 10, Lon: 10}, {Lat: 10.4, Lon: 10.3}}}).NearestShore(route.Point{Lat: 10.2, Lon: 10.15})
	if err != nil || !(s.Distance <= 0.1) {
		t.Errorf("%+v, %v", s, err)
	}
}

// TestFetchToItsLimit: a shore a little nearer than the limit ends the fetch, a little farther it does not, in every direction and
// to 5000 km, which belongs to the range.
func TestFetchToItsLimit(t *testing.T) {
	for _, from := range []route.Point{{Lat: 50, Lon: -20}, {Lat: -5, Lon: 179}} {
		for _, d := range []float64{1e3, 3e5, 4e6} {
			for _, b := range []float64{0, 45, 90, 200, 330} {
				at := route.Direct(from, b, d)
				wall := []route.Point{route.Direct(at.To, at.End+90, 900).To, route.Direct(at.To, at.End-90, 900).To}
				c := coast(t, [][]route.Point{wall})
				shore := c.Fetch(from, b, 5e6)
				near(t, fmt.Sprint("shore from ", from, d, b), shore, d, 1e-3*d)
				near(t, fmt.Sprint("within ", from, d, b), c.Fetch(from, b, shore*(1+1e-9)), shore, 1e-9*d)
				near(t, fmt.Sprint("beyond ", from, d, b), c.Fetch(from, b, shore*(1-1e-9)), shore*(1-1e-9), 0)
				near(t, fmt.Sprint("away ", from, d, b), c.Fetch(from, b+180, 5e6), 5e6, 0)
				near(t, fmt.Sprint("a rose ", from, d, b), c.FetchRose(from, 72, 5e6)[int(b)/5], shore, 0)
			}
		}
	}
	c := coast(t, nil)
	for _, limit := range []float64{up(5e6), -1, down(0), 0, inf} {
		if got, rose := c.Fetch(lat(0), 0, limit), c.FetchRose(lat(0), 2, limit); !math.IsNaN(got) || !math.IsNaN(rose[1]) {
			t.Errorf("limit %v: %v, %v", limit, got, rose)
		}
	}
	near(t, "a bearing of any size", c.Fetch(lat(0), math.MaxFloat64, 5), 5, 0)
	if rose := c.FetchRose(lat(0), 1, 5e6); len(rose) != 1 || rose[0] != 5e6 {
		t.Error(rose)
	}
	if rose := coast(t, nil, island(-1, -1, 1, 1)).FetchRose(lat(0), 2, 5); rose[0] != 0 || rose[1] != 0 {
		t.Errorf("on land: %v", rose)
	}
	if _, err := c.Crosses(lat(0), lat(45.1)); err != nil { // 4996 km
		t.Error(err)
	}
	// Lines of 5000 km to the last digit, as some of these are.
	for b := range 200 {
		to := route.Direct(lat(0), float64(b), 5e6).To
		if route.Inverse(lat(0), to).Distance != 5e6 {
			continue
		}
		if x, err := c.Crosses(lat(0), to); err != nil || x.Land {
			t.Error(x, err)
		}
	}
	if _, err := c.Crosses(lat(0), lat(45.3)); !errors.Is(err, route.ErrCoast) || !strings.HasSuffix(err.Error(), "line of 5018 km, of at most 5000") {
		t.Error(err)
	}
}

// TestLandfallAlongATrack: distances add up over the legs, the leg and the part of it are those of the first shore; a line that ends
// short of the shore does not meet it.
func TestLandfallAlongATrack(t *testing.T) {
	const degree = 6378137 * math.Pi / 180
	c := coast(t, nil, island(-1, 1, 1, 2))
	short := lon(1 - 1/degree)
	for _, x := range []struct {
		track    []route.Point
		leg      int
		fraction float64
		along    float64
	}{
		{[]route.Point{lon(0.2), lon(0.5), lon(0.5), lon(1.25)}, 2, 2.0 / 3, 0.8 * degree},
		{[]route.Point{lon(0.2), short, lon(1)}, 1, 1, 0.8 * degree},
		{[]route.Point{lon(3), lon(2.5), lon(1.5)}, 1, 0.5, degree},
		{[]route.Point{lon(1.5), lon(1.5)}, 0, 0, 0},
		{[]route.Point{lon(0.2), lon(0.4), lon(0.9), lon(0.4), lon(1.4)}, 3, 0.6, 1.8 * degree},
	} {
		l, err := c.Landfall(x.track)
		if err != nil || !l.Found || l.Leg != x.leg {
			t.Errorf("%v: %+v, %v, want leg %d", x.track, l, err, x.leg)
		}
		near(t, fmt.Sprint(x.track, " fraction"), l.Fraction, x.fraction, 1e-6)
		near(t, fmt.Sprint(x.track, " along"), l.Distance, x.along, 0.2)
	}
	if l, err := c.Landfall([]route.Point{lon(0.2), short}); err != nil || l.Found {
		t.Errorf("a metre short: %+v, %v", l, err)
	}
	if _, err := c.Landfall([]route.Point{lon(0), lon(0.1), lat(91)}); !errors.Is(err, route.ErrPosition) || !strings.Contains(err.Error(), "leg 1") {
		t.Error(err)
	}
	if _, err := c.Landfall([]route.Point{lon(0)}); !errors.Is(err, route.ErrPosition) || !strings.Contains(err.Error(), "1 positions") {
		t.Error(err)
	}
}

// TestShoreWindByQuarters: onshore and offshore have the quarters with their borders, from afloat and from land.
func TestShoreWindByQuarters(t *testing.T) {
	for _, c := range []struct {
		onshore, along float64
		want           string
	}{
		{1, 1, "onshore"}, {1, -1, "onshore"}, {-1, 1, "offshore"}, {-1, -1, "offshore"}, {0.9, 1, "alongshore"}, {-0.9, -1, "alongshore"}, {0, 1, "alongshore"}, {1, 0, "onshore"}, {-1, 0, "offshore"},
		{0, 0, "calm"}, {0, math.NaN(), "unknown"}, {math.NaN(), 0, "unknown"},
	} {
		if k := (route.ShoreWind{Onshore: c.onshore, Along: c.along}).Kind(); k != c.want {
			t.Errorf("%+v is %s", c, k)
		}
	}
	c := coast(t, nil, island(-1, 1, 1, 2))
	for _, p := range []route.Point{lon(0.9), lon(1.1)} {
		w, err := c.ShoreWind(p, route.Velocity{East: 3, North: -2}) // land is east, and south is to the right of a look at it
		if err != nil {
			t.Fatal(err)
		}
		near(t, "onshore", w.Onshore, 3, 1e-3)
		near(t, "along", w.Along, 2, 1e-3)
	}
	if _, err := c.ShoreWind(lon(0.9), route.Velocity{East: inf}); err == nil {
		t.Error("a wind without end")
	}
}

// TestLandingByHand: a condition is met on its limit and broken beyond it, what is not known or cannot be is unknown, and the
// reasons carry the numbers.
func TestLandingByHand(t *testing.T) {
	e := route.Exit{Name: "X", LeastDepth: route.LimitOf(1), GreatestBreaker: route.LimitOf(0.5), GreatestStream: route.LimitOf(0.25), Seaward: route.LimitOf(350), Hours: route.DaylightOnly}
	good := route.At{Depth: route.Known(1), Breaker: route.Known(0.5), Stream: route.Known(0.25), Light: route.LightDay}
	for _, c := range []struct {
		name   string
		change func(*route.At)
		track  float64
		want   route.State
		why    string
	}{
		{"on every limit", func(*route.At) {}, 170, route.Landable, "[]"},
		{"no waves, no stream", func(a *route.At) { a.Breaker, a.Stream = route.Known(0), route.Known(0) }, 170, route.Landable, "[]"},
		{"too shallow", func(a *route.At) { a.Depth = route.Known(0.9) }, 170, route.Broken, "[depth 0.9 m, least 1]"},
		{"dry", func(a *route.At) { a.Depth = route.Known(-0.5) }, 170, route.Broken, "[depth -0.5 m, least 1]"},
		{"breakers", func(a *route.At) { a.Breaker = route.Known(0.6) }, 170, route.Broken, "[breakers 0.6 m, greatest 0.5]"},
		{"stream", func(a *route.At) { a.Stream = route.Known(0.3) }, 170, route.Broken, "[stream 0.3 m/s, greatest 0.25]"},
		{"no such wave", func(a *route.At) { a.Breaker = route.Known(-0.1) }, 170, route.Unknown, "[breakers: not known, limit 0.5 m]"},
		{"no such stream", func(a *route.At) { a.Stream = route.Known(-0.1) }, 170, route.Unknown, "[stream: not known, limit 0.25 m/s]"},
		{"dark", func(a *route.At) { a.Light = route.LightDark }, 170, route.Broken, "[dark, daylight only]"},
		{"light not known", func(a *route.At) { a.Light = route.LightUnknown }, 170, route.Unknown, "[light: not known, daylight only]"},
		{"broken, then unknown", func(a *route.At) { a.Depth, a.Stream = route.Known(0), route.Value{} }, 170, route.Broken, "[depth 0 m, least 1 stream: not known, limit 0.25 m/s]"},
		{"unknown, then broken", func(a *route.At) { a.Depth, a.Stream = route.Value{}, route.Known(1) }, 170, route.Broken, "[depth: not known, limit 1 m stream 1 m/s, greatest 0.25]"},
		{"120 degrees to the right of the sea", func(*route.At) {}, 290, route.Landable, "[]"},
		{"120 degrees to the left of it", func(*route.At) {}, 50, route.Landable, "[]"},
		{"121 degrees", func(*route.At) {}, 291, route.Broken, "[approached on 291 from behind the shore, which faces 350]"},
		{"121 degrees to the left", func(*route.At) {}, 409, route.Broken, "[approached on 049 from behind the shore, which faces 350]"},
		{"no approach", func(*route.At) {}, math.NaN(), route.Landable, "[]"},
	} {
		a := good
		c.change(&a)
		if s, why := e.Landing(a, c.track); s != c.want || fmt.Sprint(why) != c.why {
			t.Errorf("%s: %v, %v", c.name, s, why)
		}
	}
}

// TestEscapeCountsItsReasons: the numbers in the reasons are what is short, and after how long.
func TestEscapeCountsItsReasons(t *testing.T) {
	start := time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)
	from := route.Point{Lat: 50, Lon: 7}
	base := route.Escape{From: from, Time: start, Posture: route.Prone(1.8), Coast: coast(t, nil), Wind: route.Steady(route.Velocity{}), Stream: route.Steady(route.Velocity{}),
		Way: func(h float64, _ route.Velocity) route.Velocity { return route.Toward(1, h) }}
	exit := func(metres float64) route.Exit {
		return route.Exit{Name: "X", Point: route.Direct(from, 0, metres).To, LeastDepth: route.NoLimit(), GreatestBreaker: route.NoLimit(), GreatestStream: route.NoLimit(), Seaward: route.NoLimit(), Hours: route.AnyHour}
	}
	reach := func(metres float64, change func(*route.Escape)) (route.Out, string) {
		t.Helper()
		q := base
		change(&q)
		o, err := q.Reach(exit(metres))
		if err != nil {
			t.Fatal(err)
		}
		return o, strings.Join(o.Why, "; ")
	}
	same := func(*route.Escape) {}
	// Prone can be kept up for 45 minutes: 2700 m at 1 m/s.
	if o, why := reach(2699, same); o.State != route.Landable || why != "" {
		t.Errorf("%+v", o)
	}
	if o, why := reach(5000, same); o.State != route.OutOfReach || why != "2.3 km short: prone can be kept up for 45 min" {
		t.Errorf("%v %s", o.State, why)
	}
	// The stream turns against after 1200 s: 1200 m are made of 5000.
	turn := func(q *route.Escape) {
		q.Stream = func(at time.Time, _ route.Point) route.Velocity {
			if at.Before(start.Add(1200 * time.Second)) {
				return route.Velocity{}
			}
			return route.Toward(2, 180)
		}
	}
	if o, why := reach(5000, turn); o.State != route.OutOfReach || !strings.HasPrefix(why, "after 20 min, 3.8 km short: ") {
		t.Errorf("%v %s", o.State, why)
	}
	// Nobody keeps it up for longer than a day: 86400 m.
	long := func(q *route.Escape) { q.Posture = route.Standing(1.8) }
	if o, why := reach(86500, long); o.State != route.OutOfReach || why != "0.1 km short: a day is over" {
		t.Errorf("%v %s", o.State, why)
	}
	if o, _ := reach(86399, long); o.State != route.Landable || !(math.Abs(o.Seconds-86399) <= 0.1) || !o.Arrival.After(start.Add(86398*time.Second)) {
		t.Errorf("%+v", o)
	}
	// The latest hour counts only where it comes before the end of endurance; an exit at hand is reached at once.
	if o, why := reach(5000, func(q *route.Escape) { q.Latest = start.Add(2 * time.Hour) }); o.State != route.OutOfReach || why != "2.3 km short: prone can be kept up for 45 min" {
		t.Errorf("%v %s", o.State, why)
	}
	if o, _ := reach(149.9, same); o.State != route.Landable || o.Seconds != 0 || !math.IsNaN(o.Heading) {
		t.Errorf("at hand: %+v", o)
	}
	if o, _ := reach(150.1, same); o.State != route.Landable || !(math.Abs(o.Seconds-150.1) <= 1e-3) || !(math.Abs(math.Remainder(o.Heading, 360)) <= 1e-6) {
		t.Errorf("not at hand: %+v", o)
	}
	if o, _ := reach(100, func(q *route.Escape) { q.Latest = start }); o.State != route.Landable || o.Seconds != 0 {
		t.Errorf("at hand at the latest hour: %+v", o)
	}
	// Both are not known.
	if o, why := reach(1000, func(q *route.Escape) { q.Wind, q.Stream = nil, nil }); o.State != route.Unknown || why != "wind: not known; stream: not known" {
		t.Errorf("%v %s", o.State, why)
	}
	// Land within 150 m of either end is free, beyond it is in the way.
	wall := func(metres float64) func(*route.Escape) {
		return func(q *route.Escape) {
			p := route.Direct(from, 0, metres).To
			q.Coast = coast(t, [][]route.Point{{{Lat: p.Lat, Lon: 6.9}, {Lat: p.Lat, Lon: 7.1}}})
		}
	}
	for metres, want := range map[float64]route.State{149: route.Landable, 151: route.OutOfReach, 1849: route.OutOfReach, 1851: route.Landable} {
		if o, why := reach(2000, wall(metres)); o.State != want {
			t.Errorf("a wall at %v m: %v %s", metres, o.State, why)
		}
	}
	for metres, want := range map[float64]route.State{290: route.Landable, 310: route.OutOfReach} {
		if o, why := reach(metres, wall(metres/2)); o.State != want {
			t.Errorf("a wall half way of %v m: %v %s", metres, o.State, why)
		}
	}
}

// TestGapsByHand: no exit but at the start and the end of 6 km, at 1 m/s for 25 minutes: open to 1500 m of either.
func TestGapsByHand(t *testing.T) {
	start := time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)
	a, b := lat(0), route.Direct(lat(0), 0, 6000).To
	exit := func(name string, p route.Point) route.Exit {
		return route.Exit{Name: name, Point: p, LeastDepth: route.NoLimit(), GreatestBreaker: route.NoLimit(), GreatestStream: route.NoLimit(), Seaward: route.NoLimit(), Hours: route.AnyHour}
	}
	posture := route.Standing(1.8)
	posture.Endurance = 1501
	q := route.Escape{Time: start, Posture: posture, Coast: coast(t, nil), Wind: route.Steady(route.Velocity{}), Stream: route.Steady(route.Velocity{}),
		Way: func(h float64, _ route.Velocity) route.Velocity { return route.Toward(1, h) }}
	pace := func(d float64) float64 { return 2 * d }
	gaps, err := route.Gaps([]route.Point{a, b}, []route.Exit{exit("A", a), exit("B", b)}, q, pace, 250)
	if err != nil || len(gaps) != 1 {
		t.Fatal(gaps, err)
	}
	g := gaps[0]
	near(t, "from the last open place", g.From, 1500, 0)
	near(t, "to the first", g.To, 4500, 0)
	near(t, "start", g.Start.Sub(start).Seconds(), 3000, 1e-9)
	near(t, "end", g.End.Sub(start).Seconds(), 9000, 1e-9)
	// Two gaps about an exit half way, of which nobody knows the second's end.
	dim := exit("B", b)
	dim.LeastDepth = route.Limit{}
	mid := route.Direct(a, 0, 3000).To
	posture.Endurance = 1001
	q.Posture = posture
	gaps, err = route.Gaps([]route.Point{a, mid, b}, []route.Exit{exit("A", a), exit("C", mid), dim}, q, pace, 250)
	if err != nil || len(gaps) != 2 {
		t.Fatal(gaps, err)
	}
	for i, want := range []route.Gap{{From: 1000, To: 2000}, {From: 4000, To: 6000, Unknown: true}} {
		near(t, "from", gaps[i].From, want.From, 1e-6)
		near(t, "to", gaps[i].To, want.To, 1e-6)
		if gaps[i].Unknown != want.Unknown {
			t.Errorf("%+v", gaps[i])
		}
	}
	// A step that does not go into the length ends at its end, and one longer than it goes over both ends.
	for _, every := range []float64{250, 700, 6000, math.MaxFloat64} {
		gaps, err := route.Gaps([]route.Point{a, b}, nil, q, pace, every)
		if err != nil || len(gaps) != 1 || gaps[0].From != 0 || !(math.Abs(gaps[0].To-6000) <= 1e-6) {
			t.Errorf("every %v: %v, %v", every, gaps, err)
		}
	}
	for _, every := range []float64{0, -1, inf} {
		if _, err := route.Gaps([]route.Point{a, b}, nil, q, pace, every); !errors.Is(err, route.ErrInput) || !strings.Contains(err.Error(), fmt.Sprintf("step of %v m", every)) {
			t.Errorf("every %v: %v", every, err)
		}
	}
	if _, err := route.Gaps([]route.Point{a, b}, nil, q, pace, 0.05); !errors.Is(err, route.ErrInput) || !strings.Contains(err.Error(), "steps of 0.05 m, of at most 100000") {
		t.Error(err)
	}
}

// TestPushByHand: air on 0.6 m² at 0.8 of 5 m/s from the west and a board that goes 1 to the east and 4 to the south feels
// (3, 4) m/s: ½·1.22·0.6·5 = 1.83 times that.
func TestPushByHand(t *testing.T) {
	p := route.Standing(1.8)
	f := p.Push(route.Velocity{East: 1, North: -4}, route.Velocity{East: 5})
	near(t, "east", f.East, 5.49, 1e-12)
	near(t, "north", f.North, 7.32, 1e-12)
	// K u²/√(1 + (u/5)²) with K = 5.5, and the power of the flat-water speed over the speed, no more than at half of it.
	near(t, "resistance", p.Resistance(2), 5.5*4/math.Sqrt(1.16), 1e-12)
	near(t, "resistance backward", p.Resistance(-2), -5.5*4/math.Sqrt(1.16), 1e-12)
	power := 5.5 * 1.8 * 1.8 * 1.8 / math.Sqrt(1+0.36*0.36)
	for _, u := range []float64{0.9, 1.3, 1.8, 4} {
		near(t, "thrust", p.Thrust(u), power/u, 1e-12)
	}
	near(t, "thrust backward", p.Thrust(-3), power/0.9, 1e-12)
	near(t, "adrift", route.Drifting().Thrust(1), 0, 0)
	// Adrift the air on e W - v and the water on v balance: v = e W/(1 + √(Q/½ρA)).
	v := route.Drifting().Way(77, route.From(10, 180))
	near(t, "adrift", v.North, 7/(1+math.Sqrt(173/(0.5*1.22*0.25))), 1e-12)
	near(t, "adrift across", v.East, 0, 1e-12)
	// A wind of 100 m/s has an answer, more has not.
	for _, p := range route.Postures(1.8) {
		if v := p.Way(10, route.Velocity{East: 100}); math.IsNaN(v.East) {
			t.Errorf("%s in 100 m/s: %v", p.Name, v)
		}
		if v := p.Way(10, route.Velocity{East: up(100)}); !math.IsNaN(v.East) {
			t.Errorf("%s in more: %v", p.Name, v)
		}
		most, least := p.Spread()
		near(t, "most area", most.Area, p.Area*4/3, 1e-12)
		near(t, "most drag", most.Drag, p.Drag*0.82, 1e-12)
		near(t, "least area", least.Area, p.Area*2/3, 1e-12)
		near(t, "least drag", least.Drag, p.Drag*1.18, 1e-12)
	}
	near(t, "kneeling speed", route.Kneeling(2).Speed, 1.7, 1e-12)
	near(t, "kneeling for", route.Kneeling(2).Endurance, 7200, 0)
	near(t, "prone speed", route.Prone(2).Speed, 1.2, 1e-12)
	near(t, "prone for", route.Prone(2).Endurance, 2700, 0)
}

// TestAdriftByHand: carried at 1 m/s to the north, with the wind of the stream and so without leeway, past an exit and onto a shore.
func TestAdriftByHand(t *testing.T) {
	start := time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)
	from := route.Point{Lat: 50, Lon: 7}
	north := route.Steady(route.Toward(1, 0))
	wall := func(metres ...float64) *route.Coast {
		var lines [][]route.Point
		for _, m := range metres {
			p := route.Direct(from, 0, m).To
			lines = append(lines, []route.Point{{Lat: p.Lat, Lon: 6.9}, {Lat: p.Lat, Lon: 7.1}})
		}
		return coast(t, lines)
	}
	// away for half an hour, and then back and on.
	back := func(at time.Time, _ route.Point) route.Velocity {
		if at.Before(start.Add(1800 * time.Second)) {
			return route.Toward(1, 180)
		}
		return route.Toward(1, 0)
	}
	// slack for an hour, and on.
	later := func(at time.Time, _ route.Point) route.Velocity {
		if at.Before(start.Add(time.Hour)) {
			return route.Velocity{}
		}
		return route.Toward(1, 0)
	}
	for _, c := range []struct {
		name    string
		metres  float64
		stream  route.Field
		coast   *route.Coast
		latest  time.Duration
		want    route.State
		seconds float64
		why     string
	}{
		{"onto it", 400, north, wall(), 0, route.Landable, 400, ""},
		{"onto it, and ashore 170 m behind", 400, north, wall(570), 0, route.Landable, 400, ""},
		{"ashore 200 m before it", 400, north, wall(200), 0, route.OutOfReach, math.NaN(), "adrift, ashore at 50.0018"},
		{"ashore 160 m before it", 1000, north, wall(840), 0, route.OutOfReach, math.NaN(), "adrift, ashore at 50.0075"},
		{"ashore 140 m before it", 1000, north, wall(860), 0, route.Landable, 860, ""},
		{"a shore at the start", 1000, north, wall(140), 0, route.OutOfReach, math.NaN(), "adrift, ashore at 50.0012"},
		{"nobody knows the shore", 400, north, nil, 0, route.Unknown, 400, "coast: not known"},
		{"carried away first", 2000, back, wall(), 0, route.Landable, 1800 + 1800 + 2000, ""},
		{"too late", 2000, north, wall(), 1800 * time.Second, route.OutOfReach, math.NaN(), "adrift, passes 0.2 km off after 30 min; the latest hour is 12:30"},
		{"just in time", 1940, north, wall(), 1800 * time.Second, route.Landable, 1800, ""},
		{"slack water", 2000, route.Steady(route.Velocity{North: 0.0009}), wall(), 0, route.OutOfReach, math.NaN(), "adrift, passes 2.0 km off after 0 min"},
		{"slack for an hour", 2000, later, wall(), 0, route.Landable, 3600 + 2000, ""},
	} {
		q := route.Escape{From: from, Time: start, Posture: route.Drifting(), Coast: c.coast, Wind: c.stream, Stream: c.stream}
		if c.latest > 0 {
			q.Latest = start.Add(c.latest)
		}
		e := route.Exit{Name: "X", Point: route.Direct(from, 0, c.metres).To, LeastDepth: route.NoLimit(), GreatestBreaker: route.NoLimit(), GreatestStream: route.NoLimit(), Seaward: route.NoLimit(), Hours: route.AnyHour}
		o, err := q.Reach(e)
		why := strings.Join(o.Why, "; ")
		if err != nil || o.State != c.want || !strings.HasPrefix(why, c.why) || (why == "") != (c.why == "") || math.IsNaN(o.Seconds) != math.IsNaN(c.seconds) {
			t.Errorf("%s: %v after %v s, %s, %v", c.name, o.State, o.Seconds, why, err)
		}
		if !math.IsNaN(c.seconds) {
			near(t, c.name, o.Seconds, c.seconds, 1)
		}
	}
}
