package route_test

import (
	"fmt"
	"math"
	"testing"
	"time"

	"followingsea.example/route"
)

const rad = math.Pi / 180

func sind(deg float64) float64 { return math.Sin(deg * rad) }
func cosd(deg float64) float64 { return math.Cos(deg * rad) }

// printedSun is the Sun of the formulas as they are printed, at T centuries from 2000.
func printedSun(T float64) route.Sun {
	l0 := 280.46646 + 36000.76983*T + 0.0003032*T*T
	m := 357.52911 + 35999.05029*T - 0.0001537*T*T
	e := 0.016708634 - 0.000042037*T - 0.0000001267*T*T
	c := (1.914602-0.004817*T-0.000014*T*T)*sind(m) + (0.019993-0.000101*T)*sind(2*m) + 0.000289*sind(3*m)
	omega := 125.04 - 1934.136*T
	lambda := l0 + c - 0.00569 - 0.00478*sind(omega)
	// The obliquity is 23° 26' 21.448" - 46.8150" T - 0.00059" T² + 0.001813" T³, and 0.00256 cos omega with the apparent longitude.
	mean := 23 + 26.0/60 + (21.448-46.8150*T-0.00059*T*T+0.001813*T*T*T)/3600
	eps := mean + 0.00256*cosd(omega)
	y := math.Pow(math.Tan(mean/2*rad), 2)
	equation := y*sind(2*l0) - 2*e*sind(m) + 4*e*y*sind(m)*cosd(2*l0) - y*y/2*sind(4*l0) - 5.0/4*e*e*sind(2*m) // radians
	return route.Sun{
		TrueLongitude: l0 + c, Anomaly: m, Eccentricity: e, Distance: 1.000001018 * (1 - e*e) / (1 + e*cosd(m+c)), Apparent: lambda,
		Ascension:   math.Atan2(cosd(eps)*sind(lambda), cosd(lambda)) / rad,
		Declination: math.Asin(sind(eps)*sind(lambda)) / rad,
		Equation:    equation / rad * 240, // 24 h are 360 degrees
	}
}

// TestSunIsThePrintedOne: every field is that of the printed formulas, over the whole stated range, where each term counts.
func TestSunIsThePrintedOne(t *testing.T) {
	for T := -39.7; T < 40; T += 1.713 {
		got, want := route.SunAtJulian(2451545+36525*T), printedSun(T)
		what := fmt.Sprintf("T = %.3f: ", T)
		near(t, what+"eccentricity", got.Eccentricity, want.Eccentricity, 1e-14)
		near(t, what+"distance", got.Distance, want.Distance, 1e-9)
		near(t, what+"declination", got.Declination, want.Declination, 1e-8)
		near(t, what+"equation of time", got.Equation, want.Equation, 1e-6)
		for _, c := range []struct {
			name      string
			got, want float64
		}{
			{"longitude", got.TrueLongitude, want.TrueLongitude}, {"anomaly", got.Anomaly, want.Anomaly},
			{"apparent", got.Apparent, want.Apparent}, {"ascension", got.Ascension, want.Ascension},
		} {
			nearDeg(t, what+c.name, c.got, c.want, 1e-7)
			if !(c.got >= 0 && c.got < 360) {
				t.Errorf("%s%s = %v, outside 0 to 360", what, c.name, c.got)
			}
		}
	}
}

// TestSunInTheSkyIsThePrintedOne: altitude and bearing by the printed equations, 13.6 for the height and 13.5 for the
// azimuth, which is reckoned there from the south westward.
func TestSunInTheSkyIsThePrintedOne(t *testing.T) {
	for i, p := range []route.Point{{Lat: 50, Lon: -4}, {Lat: -33.9, Lon: 151.2}, {Lat: 71, Lon: 179.5}, {Lat: 5, Lon: -179.5}, {Lat: -89, Lon: 10}} {
		for h := range 24 {
			at := time.Date(2026, time.Month(1+2*i), 3+h, h, 17, 31, 5e8, time.UTC)
			s := route.SunAt(at)
			hour := (float64(h)+17.0/60+31.5/3600-12)*15 + s.Equation/240 + p.Lon
			height := math.Asin(sind(p.Lat)*sind(s.Declination)+cosd(p.Lat)*cosd(s.Declination)*cosd(hour)) / rad
			azimuth := math.Atan2(sind(hour), cosd(hour)*sind(p.Lat)-math.Tan(s.Declination*rad)*cosd(p.Lat))/rad + 180
			a, b := route.SunAltitude(p, at)
			near(t, fmt.Sprint(p, at, " height"), a, height, 1e-6)
			nearDeg(t, fmt.Sprint(p, at, " bearing"), b, azimuth, 1e-6/math.Max(cosd(height), 1e-3))
		}
	}
	// 2000 January 1.5 is the epoch, and half a second is a part of a day.
	epoch := time.Date(2000, 1, 1, 12, 0, 0, 0, time.UTC)
	near(t, "anomaly of the epoch", route.SunAt(epoch).Anomaly, 357.52911, 1e-9)
	near(t, "half a second of anomaly", route.SunAt(epoch.Add(9e8)).Anomaly-357.52911, 35999.05029/36525/86400*0.9, 2e-7)
}

// TestSemiDiurnalArcIsThePrintedOne: equation 15.1, and at the end of the arc the body is at the altitude.
func TestSemiDiurnalArcIsThePrintedOne(t *testing.T) {
	for _, c := range [][3]float64{{50, 20, -0.8333}, {-30, 15, 10}, {10, -23, -18}, {60, 5, 30}, {-60, -10, -6}} {
		h := route.SemiDiurnalArc(c[0], c[1], c[2])
		near(t, fmt.Sprint(c), cosd(h), (sind(c[2])-sind(c[0])*sind(c[1]))/(cosd(c[0])*cosd(c[1])), 1e-12)
	}
}

// onBall returns the unit vector of a position.
func onBall(p route.Point) [3]float64 {
	return [3]float64{cosd(p.Lat) * cosd(p.Lon), cosd(p.Lat) * sind(p.Lon), sind(p.Lat)}
}

func dot(a, b [3]float64) float64 { return a[0]*b[0] + a[1]*b[1] + a[2]*b[2] }

func cross(a, b [3]float64) [3]float64 {
	return [3]float64{a[1]*b[2] - a[2]*b[1], a[2]*b[0] - a[0]*b[2], a[0]*b[1] - a[1]*b[0]}
}

func times(k float64, a [3]float64) [3]float64 { return [3]float64{k * a[0], k * a[1], k * a[2]} }

func plus(a, b [3]float64) [3]float64 { return [3]float64{a[0] + b[0], a[1] + b[1], a[2] + b[2]} }

func unit(a [3]float64) [3]float64 { return times(1/math.Sqrt(dot(a, a)), a) }

// bearing returns the direction of a tangent at a position.
func bearing(p route.Point, v [3]float64) float64 {
	east, north := [3]float64{-sind(p.Lon), cosd(p.Lon), 0}, [3]float64{-sind(p.Lat) * cosd(p.Lon), -sind(p.Lat) * sind(p.Lon), cosd(p.Lat)}
	return math.Atan2(dot(v, east), dot(v, north)) / rad
}

// TestSphereByVectors: the great circles of a ball of another radius, by vectors in space.
func TestSphereByVectors(t *testing.T) {
	s := route.Sphere{Radius: 180 * 60 * 1852 / math.Pi}
	for _, c := range [][3]route.Point{
		{{Lat: 50, Lon: -4}, {Lat: 20, Lon: 60}, {Lat: 40, Lon: 30}}, {{Lat: -10, Lon: 170}, {Lat: 30, Lon: -150}, {Lat: 0, Lon: 175}}, {{Lat: 70, Lon: 100}, {Lat: 65, Lon: -120}, {Lat: 50, Lon: -170}},
		{{Lat: -60, Lon: 0}, {Lat: -61, Lon: -1}, {Lat: -70, Lon: 5}},
	} {
		from, to, p := c[0], c[1], c[2]
		a, b, x := onBall(from), onBall(to), onBall(p)
		pole := unit(cross(a, b)) // to the left of the line
		angle := math.Acos(dot(a, b))
		l := s.Inverse(from, to)
		what := fmt.Sprint(c, " ")
		near(t, what+"distance", l.Distance, s.Radius*angle, 1e-4)
		nearDeg(t, what+"course", l.Course, bearing(from, cross(pole, a)), 1e-9)
		nearDeg(t, what+"end", l.End, bearing(to, cross(pole, b)), 1e-9)
		for _, f := range []float64{-0.3, 0.4, 1, 1.7} {
			on := plus(times(math.Cos(f*angle), a), times(math.Sin(f*angle), cross(pole, a)))
			d, q := s.Direct(from, l.Course, f*l.Distance), s.Intermediate(from, to, f)
			for i, y := range onBall(d.To) {
				near(t, what+"where it leads", y, on[i], 1e-12)
				near(t, what+"on the way", onBall(q)[i], y, 1e-12)
			}
			nearDeg(t, what+"course there", d.End, bearing(d.To, cross(pole, on)), 1e-9)
		}
		along, right := s.Offset(p, from, to)
		foot := unit(plus(x, times(-dot(x, pole), pole)))
		near(t, what+"right", right, -s.Radius*math.Asin(dot(x, pole)), 1e-6)
		near(t, what+"along", along, s.Radius*math.Atan2(dot(foot, cross(pole, a)), dot(foot, a)), 1e-4)
	}
	// One minute is a mile on this ball, whatever the way.
	near(t, "a minute of latitude", s.Inverse(lat(10), lat(10+1.0/60)).Distance, 1852, 1e-6)
	near(t, "a minute on the mean radius", route.Haversine(lat(10), lat(10+1.0/60)), 6371008.8*math.Pi/180/60, 1e-6)
}

// simpson integrates over an interval by Simpson's rule in 400 and in 800 parts, and what is left over by their difference.
func simpson(f func(float64) float64, a, b float64) float64 {
	rule := func(n int) float64 {
		h := (b - a) / float64(n)
		sum := f(a) + f(b)
		for i := 1; i < n; i++ {
			sum += float64(2+2*(i%2)) * f(a+float64(i)*h)
		}
		return sum * h / 3
	}
	fine := rule(800)
	return fine + (fine-rule(400))/15
}

// TestRhumbByIntegration: the line of constant course is dlon = tan(course) ∫ M/(N cos lat) dlat long in longitude, and
// sec(course) ∫ M dlat long, with the radii M and N; on every figure, over short and long spans, on a parallel and a meridian.
func TestRhumbByIntegration(t *testing.T) {
	for _, e := range []route.Ellipsoid{route.WGS84, {Axis: 6378388, Flattening: 1.0 / 297}, {Axis: 6371008.8}, {Axis: 6371008.8, Flattening: -1.0 / 150}} {
		e2 := e.Flattening * (2 - e.Flattening)
		w := func(l float64) float64 { return 1 - e2*sind(l)*sind(l) }
		m := func(l float64) float64 { return e.Axis * (1 - e2) / math.Pow(w(l), 1.5) }
		n := func(l float64) float64 { return e.Axis / math.Sqrt(w(l)) }
		for _, c := range []struct{ from, to route.Point }{
			{lat(0), route.Point{Lat: 0.3, Lon: 0.1}}, {route.Point{Lat: 50, Lon: -4}, route.Point{Lat: 50.4, Lon: -4.9}}, {route.Point{Lat: 60, Lon: 10}, route.Point{Lat: 20, Lon: 50}},
			{route.Point{Lat: -10, Lon: 179}, route.Point{Lat: 12, Lon: -170}}, {route.Point{Lat: -70, Lon: 3}, route.Point{Lat: -70.2, Lon: 3.5}}, {route.Point{Lat: 50, Lon: 3}, route.Point{Lat: 50, Lon: 9}},
			{route.Point{Lat: 50, Lon: 3}, route.Point{Lat: 48, Lon: 3}}, {route.Point{Lat: 88.5, Lon: 3}, route.Point{Lat: 89.2, Lon: 30}}, {route.Point{Lat: -89.1, Lon: 0}, route.Point{Lat: -89.3, Lon: -20}},
		} {
			what := fmt.Sprint(e, c, " ")
			dlon := math.Remainder(c.to.Lon-c.from.Lon, 360) * rad
			dm := simpson(m, c.from.Lat, c.to.Lat) * rad
			dpsi := simpson(func(l float64) float64 { return m(l) / (n(l) * cosd(l)) }, c.from.Lat, c.to.Lat) * rad
			course, distance := math.Atan2(dlon, dpsi), math.Abs(dlon)*n(c.from.Lat)*cosd(c.from.Lat)
			if dm != 0 {
				distance = math.Abs(dm / math.Cos(course))
			}
			l := e.Rhumb(c.from, c.to)
			near(t, what+"distance", l.Distance, distance, 1e-4)
			nearDeg(t, what+"course", l.Course, course/rad, 1e-8)
			nearDeg(t, what+"end", l.End, course/rad, 1e-8)
			if math.Abs(c.from.Lat) < 88 {
				d := e.RhumbDirect(c.from, l.Course, l.Distance)
				near(t, what+"latitude", d.To.Lat, c.to.Lat, 1e-9)
				nearDeg(t, what+"longitude", d.To.Lon, c.to.Lon, 1e-8)
				nearDeg(t, what+"course held", d.End, l.Course, 0)
			}
			parts := e.MeridionalParts(c.to.Lat) - e.MeridionalParts(c.from.Lat)
			near(t, what+"meridional parts", parts, dpsi/rad*60, 1e-5)
			along, across := e.Radii(c.to.Lat)
			near(t, what+"meridian radius", along, m(c.to.Lat), 1e-6)
			near(t, what+"prime radius", across, n(c.to.Lat), 1e-6)
		}
	}
	// A ball of one mile to the minute.
	s := route.Sphere{Radius: 180 * 60 * 1852 / math.Pi}
	near(t, "a degree of latitude on a ball", s.Rhumb(lat(20), lat(21)).Distance, 60*1852, 1e-6)
	near(t, "a degree of the parallel of 60", s.Rhumb(lat(60), route.Point{Lat: 60, Lon: 1}).Distance, 30*1852, 1e-6)
	nearDeg(t, "30 miles east on the parallel of 60", s.RhumbDirect(lat(60), 90, 30*1852).To.Lon, 1, 1e-12)
	near(t, "a degree north on a ball", s.RhumbDirect(lat(20), 0, 60*1852).To.Lat, 21, 1e-12)
}

// TestRhumbAtThePole: the line to or from a pole is the meridian, half a turn apart is sailed westward, and no line but the
// meridian leads to a pole or beyond.
func TestRhumbAtThePole(t *testing.T) {
	const quarter = 10001965.7293127 // published length of the WGS 84 quadrant
	for _, c := range []struct {
		from, to route.Point
		course   float64
	}{
		{lat(0), route.Point{Lat: 90, Lon: 30}, 0}, {route.Point{Lat: 90, Lon: 30}, lat(0), 180}, {lat(0), route.Point{Lat: -90, Lon: 30}, 180}, {route.Point{Lat: -90, Lon: 30}, lat(0), 0},
	} {
		l := route.Rhumb(c.from, c.to)
		near(t, fmt.Sprint(c), l.Distance, quarter, 1e-5)
		near(t, fmt.Sprint(c), l.Course, c.course, 0)
		near(t, fmt.Sprint(c), l.End, c.course, 0)
	}
	near(t, "half a turn, westward", route.Rhumb(lon(0), lon(180)).Course, 270, 0)
	near(t, "half a turn, westward", route.Rhumb(lon(90), lon(-90)).Course, 270, 0)
	near(t, "north to the pole", route.RhumbDirect(lat(89), 0, route.Rhumb(lat(89), lat(90)).Distance).To.Lat, 90, 1e-12)
	near(t, "south from the pole", route.RhumbDirect(lat(90), 180, quarter).To.Lat, 0, 1e-10)
	for name, l := range map[string]route.Leg{
		"beyond the pole": route.RhumbDirect(lat(89), 0, 120e3), "beyond the other": route.RhumbDirect(lat(-89), 180, 120e3), "north from the pole": route.RhumbDirect(lat(90), 0, 1000),
		"askew from the pole": route.RhumbDirect(lat(90), 170, 1000),
	} {
		if !math.IsNaN(l.To.Lat) || !math.IsNaN(l.Distance) {
			t.Errorf("%s: %+v, want NaN", name, l)
		}
	}
	// A long line, where the start of the reckoning is another one: 60 km and 40 km go on to the same place as 100 km.
	for _, course := range []float64{0, 37, 90, 180, 211, 270} {
		for _, from := range []route.Point{{Lat: 50, Lon: 179.8}, {Lat: 88.2, Lon: 20}, {Lat: -87.9, Lon: 20}} {
			whole := route.RhumbDirect(from, course, 100e3).To
			parts := route.RhumbDirect(route.RhumbDirect(from, course, 60e3).To, course, 40e3).To
			tol := 1e-5
			if math.Abs(from.Lat) > 85 {
				tol = 0.01
			}
			near(t, fmt.Sprint(from, course), route.Inverse(whole, parts).Distance, 0, tol)
		}
	}
}

// TestMidLatitudeIsThePrintedOne: dlat = distance cos(course), departure = distance sin(course), dlon = departure /
// cos(mean latitude), with the minute of latitude for the mile.
func TestMidLatitudeIsThePrintedOne(t *testing.T) {
	for _, c := range []struct {
		from             route.Point
		course, distance float64
	}{{route.Point{Lat: 50, Lon: -4}, 30, 60}, {route.Point{Lat: 40, Lon: 179.5}, 110, 90}, {route.Point{Lat: -35, Lon: -179.9}, 250, 45}, {route.Point{Lat: 10, Lon: 3}, 330, 100}} {
		end := c.from.Lat + c.distance*cosd(c.course)/60
		dlon := c.distance * sind(c.course) / cosd((c.from.Lat+end)/2) / 60
		d := route.MidLatitudeDirect(c.from, c.course, c.distance*1852)
		near(t, fmt.Sprint(c, " latitude"), d.To.Lat, end, 1e-12)
		nearDeg(t, fmt.Sprint(c, " longitude"), d.To.Lon, c.from.Lon+dlon, 1e-12)
		l := route.MidLatitude(c.from, d.To)
		near(t, fmt.Sprint(c, " distance"), l.Distance/1852, c.distance, 1e-10)
		nearDeg(t, fmt.Sprint(c, " course"), l.Course, c.course, 1e-10)
		nearDeg(t, fmt.Sprint(c, " end"), l.End, c.course, 1e-10)
	}
}

// TestSightIsThePrintedOne: the distances of the printed formulas, and their sum.
func TestSightIsThePrintedOne(t *testing.T) {
	near(t, "horizon of 9 ft", route.Horizon(9*0.3048)/1852, 1.17*3, 1e-12)
	near(t, "2 R h / b", route.HorizonRefracted(3, 0.8), math.Sqrt(2*6371008.8*3/0.8), 1e-9)
	near(t, "dip of 9 m", route.Dip(9)*60, 1.76*3, 1e-12)
	near(t, "sight of 9 ft and 4 ft", route.SightRange(9*0.3048, 4*0.3048).Range/1852, 1.17*5, 1e-12)
}

// TestShortLineIsThePrintedOne: Gauss's mid-latitude formulas with their eta-squared terms, on a figure so flat and over lines so long
// that each term counts; the way there ends where the line back to the start says.
func TestShortLineIsThePrintedOne(t *testing.T) {
	for _, e := range []route.Ellipsoid{route.WGS84, {Axis: 6.4e6, Flattening: 0.0199}} {
		ep2 := e.Flattening * (2 - e.Flattening) / math.Pow(1-e.Flattening, 2)
		for _, c := range [][2]route.Point{{{Lat: 50, Lon: 3}, {Lat: 54.9, Lon: 9}}, {{Lat: -40, Lon: 179}, {Lat: -36, Lon: -172}}, {{Lat: 70, Lon: 0}, {Lat: 66, Lon: -5}}, {{Lat: 1, Lon: 3}, {Lat: 4, Lon: 12}}} {
			from, to := c[0], c[1]
			sin, cos := sind((from.Lat+to.Lat)/2), cosd((from.Lat+to.Lat)/2)
			b, l := (to.Lat-from.Lat)*rad, math.Remainder(to.Lon-from.Lon, 360)*rad
			eta2 := ep2 * cos * cos
			V2 := 1 + eta2
			N := e.Axis / (1 - e.Flattening) / math.Sqrt(V2)
			M := N / V2
			east := N * cos * l * (1 - l*l*sin*sin/24 + b*b*(1+eta2-9*ep2*sin*sin)/(24*V2*V2))
			north := M * b * (1 - l*l*(2+sin*sin+2*eta2*cos*cos)/24 + b*b*(eta2*(1+eta2)-ep2*sin*sin*(1-4*eta2))/(8*V2*V2))
			turn := l * sin * (1 + l*l*cos*cos*(1+eta2)/12 + b*b*(3+5*eta2)/(24*V2))
			what := fmt.Sprint(e, c, " ")
			s := e.ShortInverse(from, to)
			near(t, what+"distance", s.Distance, math.Hypot(east, north), 1e-7)
			nearDeg(t, what+"course", s.Course, (math.Atan2(east, north)-turn/2)/rad, 1e-10)
			nearDeg(t, what+"end", s.End, (math.Atan2(east, north)+turn/2)/rad, 1e-10)
			if e == route.WGS84 {
				near(t, what+"without courses", route.ShortDistance(from, to), math.Hypot(east, north), 1e-7)
			}
			d := e.ShortDirect(from, s.Course, s.Distance)
			near(t, what+"latitude", d.To.Lat, to.Lat, 1e-11)
			nearDeg(t, what+"longitude", d.To.Lon, to.Lon, 1e-11)
			nearDeg(t, what+"end there", d.End, s.End, 1e-10)
			back := e.ShortDirect(to, s.End, -s.Distance)
			near(t, what+"back", back.To.Lat, from.Lat, 1e-11)
			nearDeg(t, what+"back", back.To.Lon, from.Lon, 1e-11)
		}
	}
}
