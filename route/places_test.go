package route_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"followingsea.example/route"
)

// Figures of which 1e-8 of a flattening makes a difference.
var figures = []route.Ellipsoid{route.WGS84, {Axis: 6.4e6, Flattening: 0.0199}, {Axis: 6371008.8}, {Axis: 6.4e6, Flattening: -0.0199}}

// polar returns a²/b, the radius of curvature at the pole.
func polar(e route.Ellipsoid) float64 { return e.Axis / (1 - e.Flattening) }

// TestBesideThePole: within decimetres of a pole the sea is a plane, and the line between two places is the side of a triangle
// with the pole.
func TestBesideThePole(t *testing.T) {
	for _, e := range figures {
		for _, c := range [][3]float64{{1e-7, 4e-8, 120}, {1e-7, 1e-7, 120}, {3e-8, 1e-7, 60}, {1e-7, 5e-8, 91}, {1e-7, 2e-8, 179}, {1e-7, 9e-8, 5}} {
			from, to := route.Point{Lat: 90 - c[0], Lon: 10}, route.Point{Lat: 90 - c[1], Lon: 10 + c[2]}
			// Latitudes hold seven digits of so small an angle: take what they hold.
			a, b := (90-from.Lat)*rad*polar(e), (90-to.Lat)*rad*polar(e)
			// The plane with the pole at its origin and the first place on the axis; its course is 180 outward.
			x, y := b*cosd(c[2])-a, b*sind(c[2])
			direction := math.Atan2(y, x) / rad
			for _, sign := range []float64{1, -1} {
				from, to := route.Point{Lat: sign * from.Lat, Lon: from.Lon}, route.Point{Lat: sign * to.Lat, Lon: to.Lon}
				l := e.Inverse(from, to)
				what := fmt.Sprint(e, from, to, " ")
				near(t, what+"distance", l.Distance, math.Hypot(x, y), 1e-9)
				course, end := 180-direction, 180-(direction-c[2])
				if sign < 0 {
					course, end = 180-course, 180-end
				}
				nearDeg(t, what+"course", l.Course, course, 1e-5)
				nearDeg(t, what+"end", l.End, end, 1e-5)
			}
		}
	}
}

// TestFromOnePoleToTheOther: a line from decimetres off one pole to decimetres off the other is one meridian away from them. It
// passes both poles at the same distance, a sin α1 = b sin α2 (Clairaut), and turns by α1 + α2 about the axis: past each pole
// as a straight line in a plane.
func TestFromOnePoleToTheOther(t *testing.T) {
	for _, e := range figures {
		for _, c := range [][3]float64{{1e-7, 4e-8, 120}, {1e-7, 1e-7, 120}, {1e-7, 3e-8, 60}, {1e-7, 9e-8, 150}, {5e-8, 1e-7, 100}} {
			from, to := route.Point{Lat: c[0] - 90, Lon: 10}, route.Point{Lat: 90 - c[1], Lon: 10 + c[2]}
			a, b := (90+from.Lat)*rad*polar(e), (90-to.Lat)*rad*polar(e)
			course := math.Atan2(b*sind(c[2]), a+b*cosd(c[2])) / rad
			l := e.Inverse(from, to)
			what := fmt.Sprint(e, from, to, " ")
			meridian := 2 * e.Rhumb(lat(0), lat(90)).Distance
			near(t, what+"distance", l.Distance, meridian-a*cosd(course)-b*cosd(c[2]-course), 3e-8)
			nearDeg(t, what+"course", l.Course, course, 1e-5)
			nearDeg(t, what+"end", l.End, c[2]-course, 1e-5)
		}
	}
}

// TestFromThePole: from a pole every line is a meridian: the course is reckoned from the longitude of the start, and the end is
// due south, or north from the other pole.
func TestFromThePole(t *testing.T) {
	for _, e := range figures {
		for _, l2 := range []float64{-89.99999, -60, -1, 0, 33, 89, 89.9999999} {
			for _, dlon := range []float64{0, 40, 90, 100, -30, -179.875} {
				l := e.Inverse(route.Point{Lat: 90, Lon: 7}, route.Point{Lat: l2, Lon: 7 + dlon})
				what := fmt.Sprint(e, l2, dlon)
				near(t, what, l.Distance, e.Rhumb(lat(90), lat(l2)).Distance, 3e-8)
				nearDeg(t, what, l.Course, 180-dlon, 1e-12)
				nearDeg(t, what, l.End, 180, 1e-12)
				l = e.Inverse(route.Point{Lat: -90, Lon: 7}, route.Point{Lat: -l2, Lon: 7 + dlon})
				nearDeg(t, what, l.Course, dlon, 1e-12)
				nearDeg(t, what, l.End, 0, 1e-12)
				l = e.Inverse(route.Point{Lat: l2, Lon: 7 + dlon}, route.Point{Lat: 90, Lon: 7})
				nearDeg(t, what, l.Course, 0, 1e-12)
				nearDeg(t, what, l.End, -dlon, 1e-12)
			}
		}
	}
}

// TestAlongTheEquator: the equator is the shortest line as far as f half turns short of the antipode, on a round or a long figure
// all the way; beyond that the line leaves it, as TestGeodesicByIntegration has it, and comes back to it.
func TestAlongTheEquator(t *testing.T) {
	for _, e := range figures {
		far := 180 * (1 - math.Max(0, e.Flattening))
		for _, d := range []float64{1e-9, 1, 90, 179, far - 1e-9, down(far), far, up(far), up(up(far)), far + 1e-13, far + 1e-12} {
			if d > far+1e-11 || d >= 180 {
				continue
			}
			l := e.Inverse(lon(0), lon(d))
			near(t, fmt.Sprint(e, d), l.Distance, e.Axis*d*rad, 1e-8)
		}
		if e.Flattening <= 0 {
			continue
		}
		f := e.Flattening
		ep2 := f * (2 - f) / ((1 - f) * (1 - f))
		for _, azimuth := range []float64{10, 45, 80, 89} {
			sa, ca := sind(azimuth), cosd(azimuth)
			root := func(s float64) float64 { return math.Sqrt(1 + ep2*ca*ca*math.Sin(s)*math.Sin(s)) }
			lambda := math.Pi - f*sa*simpson(func(s float64) float64 { return (2 - f) / (1 + (1-f)*root(s)) }, 0, math.Pi)
			for _, sign := range []float64{1, -1} {
				l := e.Inverse(lon(0), lon(sign*lambda/rad))
				what := fmt.Sprint(e, " azimuth ", sign*azimuth)
				near(t, what+" distance", l.Distance, e.Axis*(1-f)*simpson(root, 0, math.Pi), 5e-8)
				// North and south are as good, and the course says in which way the longitude is.
				near(t, what+" sine of the course", sind(l.Course), sign*sa, 1e-10)
				near(t, what+" sine of the end", sind(l.End), sign*sa, 1e-10)
			}
		}
	}
}

// TestExactAntipodes: the line to the antipodes leads over the pole that is nearer, from the equator over the north pole.
func TestExactAntipodes(t *testing.T) {
	for _, e := range figures[:3] {
		for _, l := range []float64{0, 10, -10, 45, -60, 89} {
			from, to := route.Point{Lat: l, Lon: 20}, route.Point{Lat: -l, Lon: -160}
			g := e.Inverse(from, to)
			what := fmt.Sprint(e, from)
			near(t, what+" distance", g.Distance, 2*e.Rhumb(lat(0), lat(90)).Distance, 3e-8)
			course := 0.0
			if l < 0 {
				course = 180
			}
			nearDeg(t, what+" course", g.Course, course, 0)
			nearDeg(t, what+" end", g.End, 180-course, 0)
		}
	}
}

// TestAHandsBreadthEast: the courses at the ends of a line along a parallel are 90 degrees less and more than half of the
// convergence of the meridians, dlon sin lat, however short it is.
func TestAHandsBreadthEast(t *testing.T) {
	for _, e := range figures {
		for _, l := range []float64{80, 60, 20, -20, -60, -80} {
			for _, dlon := range []float64{1e-7, 1e-6, 1e-5} {
				half := dlon * sind(l) / 2
				g := e.Inverse(route.Point{Lat: l}, route.Point{Lat: l, Lon: dlon})
				what := fmt.Sprint(e, l, dlon)
				near(t, what, g.Course, 90-half, 1e-4*math.Abs(half)+2e-14)
				near(t, what, g.End, 90+half, 1e-4*math.Abs(half)+2e-14)
				_, n := e.Radii(l)
				near(t, what, g.Distance, n*cosd(l)*dlon*rad, 1e-9)
			}
		}
	}
}

// TestLongitudesOfResults: a longitude is accepted a turn beyond either side of the date line and comes back in [-180, 180), the
// date line as -180; the largest numbers are a course and a distance too.
func TestLongitudesOfResults(t *testing.T) {
	const most = math.MaxFloat64
	for name, direct := range map[string]func(route.Point, float64, float64) route.Leg{
		"Direct": route.Direct, "ShortDirect": route.ShortDirect, "RhumbDirect": route.RhumbDirect, "MidLatitudeDirect": route.MidLatitudeDirect,
		"Sphere.Direct": route.Sphere{}.Direct, "Sphere.RhumbDirect": route.Sphere{}.RhumbDirect,
	} {
		for _, l := range []float64{-540, -180, 180, 540} {
			near(t, fmt.Sprint(name, " from ", l), direct(lon(l), 0, 1).To.Lon, -180, 1e-13)
		}
		for _, l := range []float64{-360, 0, 360} {
			near(t, fmt.Sprint(name, " from ", l), direct(lon(l), 0, 1).To.Lon, 0, 1e-13)
		}
		for _, course := range []float64{most, -most} {
			a, b := direct(lat(10), course, 1000), direct(lat(10), math.Mod(course, 360), 1000)
			near(t, name+" of the largest course", a.To.Lat, b.To.Lat, 1e-10)
			near(t, name+" of the largest course", a.To.Lon, b.To.Lon, 1e-10)
		}
		if l := direct(lat(0), 90, most); name != "ShortDirect" && (math.IsNaN(l.To.Lat) || math.IsNaN(l.To.Lon)) {
			t.Errorf("%s of the largest distance: %+v", name, l)
		}
	}
	near(t, "half a turn and one and a half", route.Inverse(lon(540), lon(-540)).Distance, 0, 0)
	near(t, "one degree on the largest figure", route.Ellipsoid{Axis: most}.Inverse(lon(0), lon(1)).Distance, most*rad, 1e-15*most)
	near(t, "one degree on the largest ball", route.Sphere{Radius: most}.Inverse(lon(0), lon(1)).Distance, most*rad, 1e-15*most)
}

// TestRhumbAcrossTheEquator: the part on this side and the part on the other make the line, also where they are as long; and at
// a pole there is nowhere to go to the pole.
func TestRhumbAcrossTheEquator(t *testing.T) {
	for _, e := range figures {
		for _, north := range []float64{20, 20.2, 60} {
			half := e.Rhumb(lat(0), lat(north)).Distance
			near(t, fmt.Sprint(e, north), e.Rhumb(lat(-20), lat(north)).Distance, half+e.Rhumb(lat(-20), lat(0)).Distance, 1e-7)
			near(t, fmt.Sprint(e, north), e.Rhumb(lat(north), lat(-north)).Distance, 2*half, 1e-7)
		}
		for _, pole := range []float64{90, -90} {
			l := e.Rhumb(lat(pole), route.Point{Lat: pole, Lon: 30})
			near(t, "from pole to pole", l.Distance, 0, 0)
			near(t, "from pole to pole", l.Course, 0, 0)
		}
	}
}

// TestRhumbBelowTheLastDigit: a line shorter than the last digit of a latitude, almost along the meridian, ends where it began.
func TestRhumbBelowTheLastDigit(t *testing.T) {
	for l := 88.0; l < 89.9; l += 0.037 {
		for _, course := range []float64{1e-8, 1e-5, 180 - 1e-8, -1e-8} {
			to := route.RhumbDirect(lat(l), course, 1e-10).To
			near(t, fmt.Sprint(l, course), to.Lat, l, 3e-14)
			near(t, fmt.Sprint(l, course), to.Lon, 0, 1e-11)
		}
	}
}

// TestAllOrNothingAtThePole: a line that ends at a pole, or next to one where the cosine is none, has all its fields or none, and
// does not end beyond.
func TestAllOrNothingAtThePole(t *testing.T) {
	check := func(what string, l route.Leg) {
		if bad := math.IsNaN(l.To.Lat); bad != math.IsNaN(l.To.Lon) || bad != math.IsNaN(l.Distance) || !bad && l.To.Check() != nil {
			t.Errorf("%s: %+v", what, l)
		}
	}
	for _, e := range append([]route.Ellipsoid{{Axis: 6378388, Flattening: 1.0 / 297}, route.GRS80}, figures...) {
		quarter := e.Rhumb(lat(0), lat(90)).Distance
		for _, course := range []float64{0, 10, 30, 45, 60, 80, 100, 135, 170, 180, 200, 300} {
			d := math.Abs(quarter / cosd(course))
			for i := -8; i <= 8; i++ {
				check(fmt.Sprint(e, " rhumb on ", course), e.RhumbDirect(lat(0), course, d*(1+float64(i)/(1<<53))))
			}
		}
		near(t, fmt.Sprint(e, " to the pole"), e.RhumbDirect(lat(0), 0, quarter).To.Lat, 90, 3e-14)
	}
	for _, course := range []float64{0, 10, 30, 60, 100, 135, 170, 200} {
		for _, l := range []float64{90, down(90), -90, up(-90)} {
			for _, d := range []float64{0, 1e-9, 1.58e-9, 2e-9, 3e-9, 1} {
				check(fmt.Sprint("mid-latitude from ", l, " on ", course), route.MidLatitudeDirect(lat(l), course, d))
			}
		}
	}
	for _, d := range []float64{0, 1.58e-9, 2e-9} {
		check("mid-latitude along the meridian", route.MidLatitudeDirect(lat(90), 180, d))
	}
}

// TestSightInMiles: a sight prints its range in nautical miles.
func TestSightInMiles(t *testing.T) {
	if s := (route.Sight{Range: 3.5 * 1852}).String(); !strings.HasPrefix(s, "3.5 nautical miles") {
		t.Error(s)
	}
}
