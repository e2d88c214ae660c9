package route_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

func drawPoint(t *rapid.T, name string, lat float64) route.Point {
	return route.Point{Lat: rapid.Float64Range(-lat, lat).Draw(t, name+" lat"), Lon: rapid.Float64Range(-180, 180).Draw(t, name+" lon")}
}

func draw(t *rapid.T, name string, lo, hi float64) float64 {
	return rapid.Float64Range(lo, hi).Draw(t, name)
}

func TestFromAndToward(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		speed, deg := draw(t, "speed", 0.01, 60), draw(t, "deg", -720, 720)
		f, w := route.From(speed, deg), route.Toward(speed, deg)
		nearDeg(t, "From", f.From(), deg, 1e-11)
		nearDeg(t, "Toward", w.Toward(), deg, 1e-11)
		near(t, "speed", f.Speed(), speed, 1e-12*speed)
		near(t, "opposite east", f.East, -w.East, 0)
		near(t, "opposite north", f.North, -w.North, 0)
		along, right := w.Resolve(deg)
		near(t, "along", along, speed, 1e-12*speed)
		near(t, "right", right, 0, 1e-12*speed)
	})
	if v := route.From(0, math.NaN()); v != (route.Velocity{}) {
		t.Errorf("From(0, NaN) = %v, want a calm", v)
	}
	if d := (route.Velocity{}).Toward(); !math.IsNaN(d) {
		t.Errorf("a calm goes toward %v, want NaN", d)
	}
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		if v := route.Toward(bad, 90); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
			t.Errorf("Toward(%v, 90) = %v, want NaN", bad, v)
		}
	}
	// Courses of the four winds have no stray component.
	if v := route.Toward(3, 180); v != (route.Velocity{East: 0, North: -3}) {
		t.Errorf("Toward(3, 180) = %v", v)
	}
}

func TestBadPositions(t *testing.T) {
	for _, p := range []route.Point{{Lat: 90.1}, {Lat: -91}, {Lat: math.NaN()}, {Lon: 541}, {Lon: math.Inf(-1)}, {Lon: math.NaN()}} {
		if err := p.Check(); !errors.Is(err, route.ErrPosition) {
			t.Errorf("%v: %v, want ErrPosition", p, err)
		}
		for name, d := range map[string]float64{
			"Inverse": route.Inverse(p, route.Point{}).Distance, "ShortInverse": route.ShortInverse(route.Point{}, p).Distance, "ShortDistance": route.ShortDistance(p, route.Point{}),
			"Rhumb": route.Rhumb(p, route.Point{}).Distance, "Haversine": route.Haversine(route.Point{}, p),
			"Direct": route.Direct(p, 0, 1).To.Lat, "MidLatitude": route.MidLatitude(p, route.Point{}).Distance,
		} {
			if !math.IsNaN(d) {
				t.Errorf("%s of %v = %v, want NaN", name, p, d)
			}
		}
	}
	for _, p := range []route.Point{{}, {Lat: 90}, {Lat: -90, Lon: 540}, {Lon: -181}} {
		if err := p.Check(); err != nil {
			t.Errorf("%v: %v", p, err)
		}
	}
}

// TestInverseAndDirectAgree: going where the inverse says ends at the goal,
// for any two positions on the globe.
func TestInverseAndDirectAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawPoint(t, "from", 90), drawPoint(t, "to", 90)
		l := route.Inverse(a, b)
		if !(l.Distance <= 20003931.4587) {
			t.Fatalf("%v to %v is %v m, longer than half the meridian", a, b, l.Distance)
		}
		d := route.Direct(a, l.Course, l.Distance)
		near(t, "the end of the line to the goal", route.Inverse(d.To, b).Distance, 0, 3e-8)
	})
}

// TestReverseBearing: the way home is the way out turned round.
func TestReverseBearing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawPoint(t, "from", 80)
		b := route.Direct(a, draw(t, "course", 0, 360), draw(t, "distance", 100, 2e6)).To
		out, home := route.Inverse(a, b), route.Inverse(b, a)
		r := out.Reverse()
		near(t, "distance", home.Distance, r.Distance, 2e-8)
		nearDeg(t, "course", home.Course, r.Course, 1e-8)
		nearDeg(t, "end", home.End, r.End, 1e-8)
		nearDeg(t, "course home", home.Course, out.End+180, 1e-8)
	})
}

// TestTheEarthIsRound: mirrored in the equator or turned about the axis, a
// line keeps its length, and a full turn of longitude is no turn.
func TestTheEarthIsRound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawPoint(t, "from", 89), drawPoint(t, "to", 89)
		want := route.Inverse(a, b).Distance
		south := func(p route.Point) route.Point { return route.Point{Lat: -p.Lat, Lon: p.Lon} }
		near(t, "mirrored", route.Inverse(south(a), south(b)).Distance, want, 3e-8)
		turn := draw(t, "turn", -180, 180)
		round := func(p route.Point) route.Point { return route.Point{Lat: p.Lat, Lon: p.Lon + turn} }
		near(t, "turned", route.Inverse(round(a), round(b)).Distance, want, 2e-7)
		b.Lon += 360
		near(t, "a turn on", route.Inverse(a, b).Distance, want, 1e-7)
	})
}

// TestPolesAndAntimeridian: named places where formulas break.
func TestPolesAndAntimeridian(t *testing.T) {
	near(t, "across the antimeridian", route.Inverse(route.Point{Lat: 30, Lon: 179.9}, route.Point{Lat: 30, Lon: -179.9}).Distance, 19297.253600892574, 1e-8)
	near(t, "short, across the antimeridian", route.ShortInverse(route.Point{Lat: 30, Lon: 179.9}, route.Point{Lat: 30, Lon: -179.9}).Distance, 19297.253600892574, 1e-5)
	near(t, "rhumb, across the antimeridian", route.Rhumb(route.Point{Lat: 0, Lon: 179}, route.Point{Lat: 0, Lon: -179}).Distance, 2*111319.49079327357, 1e-6)
	d := route.Direct(route.Point{Lat: 10, Lon: 179.99}, 90, 5000)
	if !(d.To.Lon < -179.9) {
		t.Errorf("5 km east of 179.99 is at %v", d.To.Lon)
	}
	pole := route.Inverse(route.Point{Lat: 90, Lon: 0}, route.Point{Lat: 89, Lon: 40})
	nearDeg(t, "course from the pole", pole.Course, 140, 1e-9)
	quarter := route.Inverse(route.Point{}, route.Point{Lat: 90, Lon: 77})
	near(t, "quarter meridian", quarter.Distance, 10001965.7293127, 1e-6) // published length of the WGS 84 quadrant
	near(t, "rhumb quadrant", route.Rhumb(route.Point{}, route.Point{Lat: 90, Lon: 77}).Distance, 10001965.7293127, 1e-6)
	for _, l := range []route.Leg{
		route.ShortInverse(route.Point{Lat: 88}, route.Point{Lat: 88.1}), route.ShortInverse(route.Point{}, route.Point{Lat: 6}),
		route.ShortDirect(route.Point{Lat: 84.9}, 0, 50e3), route.ShortDirect(route.Point{}, 0, 1e6),
		route.RhumbDirect(route.Point{Lat: 89}, 10, 200e3), route.MidLatitudeDirect(route.Point{Lat: 89}, 0, 200e3),
	} {
		if !math.IsNaN(l.Distance) {
			t.Errorf("beyond its reach: %+v, want NaN", l)
		}
	}
	if l := route.Inverse(route.Point{Lat: 3, Lon: 4}, route.Point{Lat: 3, Lon: 4}); l.Distance != 0 || l.Course != 0 {
		t.Errorf("nowhere to go: %+v", l)
	}
}

// TestRhumbClosesAndIsLonger: a rhumb line ends where it should, and is never
// shorter than the geodesic.
func TestRhumbClosesAndIsLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawPoint(t, "from", 87), drawPoint(t, "to", 87)
		l := route.Rhumb(a, b)
		if shortest := route.Inverse(a, b).Distance; !(l.Distance >= shortest-1e-6) {
			t.Fatalf("rhumb %v m, geodesic %v m", l.Distance, shortest)
		}
		d := route.RhumbDirect(a, l.Course, l.Distance)
		near(t, "the end to the goal", route.Inverse(d.To, b).Distance, 0, 1e-6*(1+1/math.Cos(b.Lat*math.Pi/180)))
	})
	rapid.Check(t, func(t *rapid.T) { // short and nearly east-west, where a quotient of differences would lose it
		a := drawPoint(t, "from", 80)
		d := route.RhumbDirect(a, draw(t, "course", 89.99, 90.01), draw(t, "distance", 1, 20000))
		l := route.Rhumb(a, d.To)
		near(t, "distance", l.Distance, d.Distance, 1e-6)
		g := route.Inverse(a, d.To).Distance
		if !(l.Distance-g <= 1e-6+20000*20000*20000/24/6.4e6/6.4e6*40) {
			t.Fatalf("rhumb %v m, geodesic %v m", l.Distance, g)
		}
	})
}

func TestMeridionalPartsAreTheRhumbLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawPoint(t, "from", 80), drawPoint(t, "to", 80)
		b.Lon = a.Lon + draw(t, "east", 0.1, 100)
		dm := route.MeridionalParts(b.Lat) - route.MeridionalParts(a.Lat)
		if math.Abs(dm) < 1 {
			return // nearly on a parallel, where the tangent means nothing
		}
		near(t, "tan course", math.Tan(route.Rhumb(a, b).Course*math.Pi/180)*dm, (b.Lon-a.Lon)*60, 1e-6*(1+math.Abs(dm)))
	})
	if m := route.MeridionalParts(90); !math.IsInf(m, 1) {
		t.Errorf("MeridionalParts(90) = %v, want +Inf", m)
	}
}

// TestMeanCourse: the mean course is that of the middle of the leg.
func TestMeanCourse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := route.Direct(drawPoint(t, "from", 75), draw(t, "course", 0, 360), draw(t, "distance", 10, 40e3))
		mid := route.Direct(l.From, l.Course, l.Distance/2)
		nearDeg(t, "mean course", l.Mean(), mid.End, 5e-3)
	})
	nearDeg(t, "across north", route.Leg{Course: 359, End: 3}.Mean(), 1, 1e-12)
}

// TestAlongALeg: distances along a leg add up.
func TestAlongALeg(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := route.Direct(drawPoint(t, "from", 85), draw(t, "course", 0, 360), draw(t, "distance", 10, 5e6))
		f := draw(t, "fraction", -0.5, 1.5)
		p := l.At(f * l.Distance)
		near(t, "from the start", route.Inverse(l.From, p).Distance, math.Abs(f)*l.Distance, 1e-7)
	})
}

// TestFigures: defining constants, and a sphere is an ellipsoid of none.
func TestFigures(t *testing.T) {
	near(t, "WGS 84 inverse flattening", 1/route.WGS84.Flattening, 298.257223563, 1e-12)
	near(t, "GRS 80 inverse flattening", 1/route.GRS80.Flattening, 298.257222101, 1e-12)
	rapid.Check(t, func(t *rapid.T) {
		a, b := drawPoint(t, "from", 89), drawPoint(t, "to", 89)
		ball := route.Ellipsoid{Axis: 6371008.8, Flattening: 0}
		near(t, "geodesic of a ball", ball.Inverse(a, b).Distance, route.Haversine(a, b), 1e-6)
		near(t, "rhumb of a ball", ball.Rhumb(a, b).Distance, route.Sphere{}.Rhumb(a, b).Distance, 1e-6)
		// A prolate figure closes too.
		egg := route.Ellipsoid{Axis: 6371008.8, Flattening: -1.0 / 150}
		l := egg.Inverse(a, b)
		near(t, "egg closes", egg.Inverse(egg.Direct(a, l.Course, l.Distance).To, b).Distance, 0, 1e-7)
	})
	for _, e := range []route.Ellipsoid{{Axis: -1}, {Axis: math.NaN(), Flattening: 0.003}, {Axis: 6378137, Flattening: 0.5}} {
		if d := e.Inverse(route.Point{}, route.Point{Lat: 1}).Distance; !math.IsNaN(d) {
			t.Errorf("%v: %v, want NaN", e, d)
		}
	}
}

// TestApproximationsAreAsGoodAsTheySay: the haversine, the mid-latitude sailing and the geodesic
// are within what their docs admit of one another.
func TestApproximationsAreAsGoodAsTheySay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawPoint(t, "from", 70)
		l := route.Direct(a, draw(t, "course", 0, 360), draw(t, "distance", 1000, 40e3))
		near(t, "haversine", route.Haversine(a, l.To)/l.Distance, 1, 0.0057)
		if (a.Lat > 0) == (l.To.Lat > 0) {
			near(t, "mid-latitude", route.MidLatitude(a, l.To).Distance/l.Distance, 1, 0.0065)
		}
		m := route.MidLatitude(a, l.To)
		d := route.MidLatitudeDirect(a, m.Course, m.Distance)
		near(t, "mid-latitude closes", route.Haversine(d.To, l.To), 0, 1e-3)
	})
}

// TestOffsetAgainstSearch: the foot of the perpendicular is the nearest point
// of the line, found here by narrowing an interval.
func TestOffsetAgainstSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := route.Direct(drawPoint(t, "from", 80), draw(t, "course", 0, 360), draw(t, "distance", 1000, 50e3))
		p := route.Direct(l.At(draw(t, "abeam", -10e3, 60e3)), draw(t, "to", 0, 360), draw(t, "off", 0, 30e3)).To
		along, right := l.Offset(p)
		lo, hi := -50e3, 100e3
		for range 80 {
			a, b := lo+(hi-lo)/3, hi-(hi-lo)/3
			if route.Inverse(l.At(a), p).Distance < route.Inverse(l.At(b), p).Distance {
				hi = b
			} else {
				lo = a
			}
		}
		near(t, "distance", math.Abs(right), route.Inverse(l.At((lo+hi)/2), p).Distance, 1e-5)
		near(t, "along", along, (lo+hi)/2, 5)
		_, sphere := route.Sphere{}.Offset(p, l.From, l.To)
		if math.Abs(right) > 100 && (right > 0) != (sphere > 0) {
			t.Fatalf("right %v m, on the sphere %v m", right, sphere)
		}
	})
}

func TestPath(t *testing.T) {
	a, b, c := route.Point{Lat: 50, Lon: -4}, route.Point{Lat: 50.1, Lon: -4}, route.Point{Lat: 50.1, Lon: -3.8}
	r, err := route.NewPath(a, b, c)
	if err != nil {
		t.Fatal(err)
	}
	legs := r.Legs()
	near(t, "length", r.Length(), legs[0].Distance+legs[1].Distance, 1e-9)
	legs[0].Distance = 0
	near(t, "a copy of the legs", r.Legs()[0].Distance, route.Inverse(a, b).Distance, 0)
	for _, x := range []struct {
		along float64
		at    route.Point
	}{{0, a}, {route.Inverse(a, b).Distance, b}, {r.Length(), c}} {
		p, _ := r.At(x.along)
		near(t, "position", route.Inverse(p, x.at).Distance, 0, 1e-7)
	}
	if _, course := r.At(0); course != 0 {
		t.Errorf("the first leg is sailed %v, want 0", course)
	}
	_, course := r.At(route.Inverse(a, b).Distance)
	near(t, "the turn belongs to the second leg", course, route.Inverse(b, c).Course, 1e-9)
	for _, bad := range []float64{-1, r.Length() + 1, math.NaN()} {
		if p, course := r.At(bad); !math.IsNaN(p.Lat) || !math.IsNaN(course) {
			t.Errorf("At(%v) = %v, %v, want NaN", bad, p, course)
		}
	}
}

func TestPathRefuses(t *testing.T) {
	if _, err := route.NewPath(route.Point{}); !errors.Is(err, route.ErrInput) {
		t.Errorf("one position: %v", err)
	}
	if _, err := route.NewPath(route.Point{}, route.Point{Lat: 91}); !errors.Is(err, route.ErrPosition) {
		t.Errorf("bad position: %v", err)
	}
	r, _ := route.NewPath(route.Point{}, route.Point{Lat: 1})
	if _, err := r.Closest(route.Point{Lat: math.NaN()}); !errors.Is(err, route.ErrPosition) {
		t.Errorf("closest to nowhere: %v", err)
	}
	// A path that stands still somewhere still has a closest point.
	r, _ = route.NewPath(route.Point{}, route.Point{}, route.Point{Lat: 1})
	if c, err := r.Closest(route.Point{Lat: 0.5, Lon: 0.01}); err != nil || c.Leg != 1 {
		t.Errorf("%+v, %v", c, err)
	}
}

// TestClosestAgainstScan: no point of the path is nearer than the closest,
// and the closest is on the path.
func TestClosestAgainstScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pts := []route.Point{drawPoint(t, "start", 70)}
		for i := range rapid.IntRange(1, 4).Draw(t, "legs") {
			pts = append(pts, route.Direct(pts[i], draw(t, "course", 0, 360), draw(t, "distance", 500, 20e3)).To)
		}
		r, err := route.NewPath(pts...)
		if err != nil {
			t.Fatal(err)
		}
		p := route.Direct(pts[0], draw(t, "to", 0, 360), draw(t, "off", 0, 20e3)).To
		c, err := r.Closest(p)
		if err != nil {
			t.Fatal(err)
		}
		on, _ := r.At(math.Min(c.Along, r.Length()))
		near(t, "on the path", route.Inverse(on, c.Point).Distance, 0, 1e-4)
		near(t, "distance", route.Inverse(p, c.Point).Distance, c.Distance, 1e-4)
		near(t, "side", math.Abs(c.Right), c.Distance, 1e-9)
		for i := range 100 {
			q, _ := r.At(math.Min(r.Length(), r.Length()*float64(i)/99))
			if d := route.Inverse(p, q).Distance; !(d >= c.Distance-1e-4) {
				t.Fatalf("%v m at %v, closest %v m", d, q, c.Distance)
			}
		}
	})
}
