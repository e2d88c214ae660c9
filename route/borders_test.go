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

var inf = math.Inf(1)

// up and down are the next numbers above and below.
func up(x float64) float64   { return math.Nextafter(x, inf) }
func down(x float64) float64 { return math.Nextafter(x, -inf) }

func lat(deg float64) route.Point { return route.Point{Lat: deg} }
func lon(deg float64) route.Point { return route.Point{Lon: deg} }

// quotient returns the number about x unit that divided by the unit is x, to the last digit, or the next above.
func quotient(x, unit float64) float64 {
	w := x * unit * (1 - 1e-15)
	for w/unit < x {
		w = up(w)
	}
	return w
}

// TestValuesOnTheBorders: where the stated range of a formula is closed, its border has a value.
func TestValuesOnTheBorders(t *testing.T) {
	const most = math.MaxFloat64
	first := func(a, _ float64) float64 { return a }
	second := func(_, b float64) float64 { return b }
	sweep := func(eye, visibility float64) float64 {
		w, err := route.SweepWidth(route.TargetRaft1, eye, visibility)
		if err != nil {
			t.Error(err)
		}
		return w / route.NauticalMile
	}
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"wind chill at 10 C, where there is an index", route.WindChill(10, 20*route.KmPerHour), 13.12 + 6.215 + (3.965-11.37)*math.Pow(20, 0.16)},
		{"wind chill at 4.8 km/h", route.WindChill(5, up(4.8*route.KmPerHour)), 13.12 + 3.1075 + (1.9825-11.37)*math.Pow(4.8, 0.16)},
		{"wind chill at what divides to 4.8 km/h", route.WindChill(5, quotient(4.8, route.KmPerHour)), 13.12 + 3.1075 + (1.9825-11.37)*math.Pow(4.8, 0.16)},
		{"wind chill below 4.8 km/h", route.WindChill(5, 4.7999*route.KmPerHour), 5},
		{"wind chill above 10 C", route.WindChill(up(10), 20*route.KmPerHour), 10},
		{"wind chill in a calm", route.WindChill(-5, 0), -5},
		{"wind chill at absolute zero", route.WindChill(-273.15, 0), -273.15},
		{"wind chill of warm air in any wind", route.WindChill(20, most), 20},
		{"US wind chill of warm air in any wind", route.WindChillUS(20, most), 20},
		{"wind chill of hot air", route.WindChill(most, 10), most},
		{"US wind chill at 50 F", route.WindChillUS(10, 20*route.MilePerHour), (35.74 + 0.6215*50 + (0.4275*50-35.75)*math.Pow(20, 0.16) - 32) / 1.8},
		{"US wind chill at 3 mph", route.WindChillUS(5, up(3*route.MilePerHour)), (35.74 + 0.6215*41 + (0.4275*41-35.75)*math.Pow(3, 0.16) - 32) / 1.8},
		{"US wind chill below 3 mph", route.WindChillUS(5, 2.9999*route.MilePerHour), 5},
		{"US wind chill above 50 F", route.WindChillUS(10.0001, 20*route.MilePerHour), 10.0001},
		{"US wind chill in a calm", route.WindChillUS(-5, 0), -5},
		{"Hayward at -2", route.HaywardTime(-2), 60 * (15 + 7.2/0.0853)},
		{"Hayward at 20", route.HaywardTime(20), 60 * (15 + 7.2/0.0105)},
		{"no height, no horizon", route.Horizon(0), 0},
		{"no height, any refraction", route.HorizonRefracted(0, 1), 0},
		{"refraction without bound", route.HorizonRefracted(1, most), math.Sqrt(2 * route.MeanRadius / most)},
		{"no height, no dip", route.Dip(0), 0},
		{"the greatest dip", route.Dip(most), 1.76 / 60 * math.Sqrt(most)},
		{"sweep at 8 ft and 1 nmi", sweep(8*route.Foot, route.NauticalMile), 0.7},
		{"sweep at 14 ft and 1 nmi", sweep(14*route.Foot, route.NauticalMile), 0.9},
		{"sweep half way between heights and columns, (0.7+1.3+0.9+1.8)/4", sweep(11*route.Foot, 2*route.NauticalMile), 1.175},
		{"sweep at 12 nmi, 8 ft, 2.3 + 0.4·0.3", sweep(8*route.Foot, 12*route.NauticalMile), 2.42},
		{"sweep at 18 nmi, 14 ft, 3.4 + 0.6·0.3", sweep(14*route.Foot, 18*route.NauticalMile), 3.58},
		{"sweep at 20 nmi", sweep(14*route.Foot, 20*route.NauticalMile), 3.7},
		{"sweep beyond 20 nmi", sweep(14*route.Foot, 40*route.NauticalMile), 3.7},
		{"weather, calm", route.SweepWeather(0, 0), 1},
		{"weather below 15 kn and 1 m", route.SweepWeather(14.99*route.Knot, 0.99), 1},
		{"weather at 15 kn", route.SweepWeather(15*route.Knot, 0), 0.5},
		{"weather at 1 m", route.SweepWeather(0, 1), 0.5},
		{"weather at 25 kn", route.SweepWeather(25*route.Knot, 0), 0.5},
		{"weather at 1.5 m", route.SweepWeather(0, 1.5), 0.5},
		{"weather above 25 kn", route.SweepWeather(25.01*route.Knot, 0), 0.25},
		{"weather above 1.5 m", route.SweepWeather(0, 1.51), 0.25},
		{"no endurance", first(route.TurnBack(0, 2, 1)), 0},
		{"no way back", first(route.TurnBack(100, 2, 0)), 0},
		{"carried out on the way back", first(route.TurnBack(100, 2, -1)), 0},
		{"out faster than any number", first(route.TurnBack(100, most, most)), 50},
		{"endurance without bound", first(route.TurnBack(most, 2, 2)), most / 2},
		{"home as slow as any number", first(route.TurnBack(100, 2, -most)), 0},
		{"no line", route.EqualTime(0, 2, 1), 0},
		{"going home is never sooner", route.EqualTime(100, 2, 0), 0},
		{"nor where it is carried on", route.EqualTime(100, 2, -1), 0},
		{"equal time, both without bound", route.EqualTime(100, most, most), 50},
		{"equal time of a line without bound", route.EqualTime(most, 2, 2), most / 2},
		{"equal time, home as slow as any number", route.EqualTime(100, 2, -most), 0},
		{"arc at the pole, body above", route.SemiDiurnalArc(90, 10, 0), 180},
		{"arc at the pole, body below", route.SemiDiurnalArc(-90, 10, 0), 0},
		{"arc of a body at the pole", route.SemiDiurnalArc(10, 90, 0), 180},
		{"arc of a body at the other pole", route.SemiDiurnalArc(10, -90, 0), 0},
		{"arc above the zenith", route.SemiDiurnalArc(10, 0, 90), 0},
		{"arc above the nadir", route.SemiDiurnalArc(10, 0, -90), 180},
		{"Sun 40 centuries ago", route.SunAtJulian(2451545 - 40*36525).Eccentricity, 0.016708634 + 40*0.000042037 - 1600*0.0000001267},
		{"Sun in 40 centuries", route.SunAtJulian(2451545 + 40*36525).Eccentricity, 0.016708634 - 40*0.000042037 - 1600*0.0000001267},
		{"north at the pole", route.MeridionalParts(90), inf},
		{"south at the pole", route.MeridionalParts(-90), -inf},
		{"made good at the largest speed", second(route.HeadingFor(0, most, route.Velocity{})), most},
		{"drift in a time without bound", route.SetAndDrift(lat(0), lat(1), most).Speed(), route.Inverse(lat(0), lat(1)).Distance / most},
		{"the fastest motion", route.Toward(most, 90).East, most},
	} {
		if c.got != c.want {
			near(t, c.name, c.got, c.want, 1e-9*math.Abs(c.want))
		}
	}
	// At a pole both radii are a²/b.
	for _, l := range []float64{90, -90} {
		m, n := route.Radii(l)
		near(t, "radius along", m, 6378137*298.257223563/297.257223563, 1e-6)
		near(t, "radius across", n, 6378137*298.257223563/297.257223563, 1e-6)
	}
}

// TestNaNBeyondTheBorders: beyond the stated range of a formula, and on a border that does not belong, there is no number.
func TestNaNBeyondTheBorders(t *testing.T) {
	speed := func(v route.Velocity) float64 { return v.Speed() }
	first := func(a, _ float64) float64 { return a }
	for name, got := range map[string]float64{
		"wind chill below absolute zero":        route.WindChill(down(-273.15), 5),
		"US wind chill below absolute zero":     route.WindChillUS(down(-273.15), 5),
		"wind chill of no wind":                 route.WindChill(0, down(0)),
		"wind chill of a wind without end":      route.WindChill(0, inf),
		"wind chill of air without end":         route.WindChill(inf, 1),
		"Hayward below -2":                      route.HaywardTime(down(-2)),
		"Hayward above 20":                      route.HaywardTime(up(20)),
		"horizon below the sea":                 route.Horizon(down(0)),
		"refraction 0":                          route.HorizonRefracted(1, 0),
		"refraction below 0":                    route.HorizonRefracted(1, -1),
		"refraction without end":                route.HorizonRefracted(1, inf),
		"dip below the sea":                     route.Dip(down(0)),
		"weather of no wind":                    route.SweepWeather(down(0), 0),
		"weather of no sea":                     route.SweepWeather(0, down(0)),
		"turning back, no speed":                first(route.TurnBack(1, 0, 1)),
		"turning back, no endurance":            first(route.TurnBack(down(0), 1, 1)),
		"turning back, endurance without end":   first(route.TurnBack(inf, 1, 1)),
		"turning back, out without end":         first(route.TurnBack(1, inf, 1)),
		"turning back, home without end":        first(route.TurnBack(1, 1, -inf)),
		"equal time, no speed":                  route.EqualTime(1, 0, 1),
		"equal time, no line":                   route.EqualTime(down(0), 1, 1),
		"equal time, line without end":          route.EqualTime(inf, 1, 1),
		"equal time, on without end":            route.EqualTime(1, inf, 1),
		"equal time, home without end":          route.EqualTime(1, 1, -inf),
		"arc beyond a pole":                     route.SemiDiurnalArc(up(90), 0, 0),
		"arc of a body beyond a pole":           route.SemiDiurnalArc(0, down(-90), 0),
		"arc beyond the zenith":                 route.SemiDiurnalArc(0, 0, up(90)),
		"Sun more than 40 centuries ago":        route.SunAtJulian(2451545 - 40*36525 - 1).Declination,
		"Sun after more than 40 centuries":      route.SunAtJulian(2451545 + 40*36525 + 1).Declination,
		"radius beyond the pole":                first(route.Radii(up(90))),
		"radius beyond the other":               first(route.Radii(down(-90))),
		"meridional parts beyond the pole":      route.MeridionalParts(up(90)),
		"meridional parts beyond the other":     route.MeridionalParts(down(-90)),
		"meridional parts of no figure":         route.Ellipsoid{Axis: -1}.MeridionalParts(10),
		"radius of no figure":                   first(route.Ellipsoid{Axis: -1}.Radii(10)),
		"short line on no figure":               route.Ellipsoid{Axis: -1}.ShortInverse(lat(0), lat(1)).Distance,
		"short way on no figure":                route.Ellipsoid{Axis: -1}.ShortDirect(lat(0), 0, 1).To.Lat,
		"rhumb on no figure":                    route.Ellipsoid{Axis: -1}.Rhumb(lat(0), lat(1)).Distance,
		"rhumb way on no figure":                route.Ellipsoid{Axis: -1}.RhumbDirect(lat(0), 0, 1).To.Lat,
		"flattening 0.02":                       route.Ellipsoid{Axis: 1, Flattening: 0.02}.Inverse(lat(0), lat(1)).Distance,
		"flattening -0.02":                      route.Ellipsoid{Axis: 1, Flattening: -0.02}.Inverse(lat(0), lat(1)).Distance,
		"axis without end":                      route.Ellipsoid{Axis: inf, Flattening: 0.001}.Inverse(lat(0), lat(1)).Distance,
		"axis 0":                                route.Ellipsoid{Flattening: 0.001}.Inverse(lat(0), lat(1)).Distance,
		"ball of radius below 0":                route.Sphere{Radius: -1}.Inverse(lat(0), lat(1)).Distance,
		"ball of radius without end":            route.Sphere{Radius: inf}.Inverse(lat(0), lat(1)).Distance,
		"way on a ball of radius below 0":       route.Sphere{Radius: -1}.Direct(lat(0), 0, 1).To.Lat,
		"rhumb on a ball of radius below 0":     route.Sphere{Radius: -1}.Rhumb(lat(0), lat(1)).Distance,
		"rhumb way on a ball of radius below 0": route.Sphere{Radius: -1}.RhumbDirect(lat(0), 0, 1).To.Lat,
		"elapsed 0":                             speed(route.SetAndDrift(lat(0), lat(1), 0)),
		"reckoned nowhere":                      speed(route.SetAndDrift(lat(91), lat(1), 1)),
		"made good below 0":                     first(route.SpeedNeeded(0, -1, route.Velocity{})),
		"current of no speed":                   speed(route.CurrentFrom(0, -1, 0, 1)),
		"short, mean beyond 85":                 route.ShortInverse(lat(85), lat(85.0001)).Distance,
		"short, mean beyond -85":                route.ShortInverse(lat(-85), lat(-85.0001)).Distance,
		"short, more than 5 of latitude":        route.ShortInverse(lat(0), lat(-5.0001)).Distance,
		"short, more than 10 of longitude":      route.ShortInverse(lon(0), lon(-10.0001)).Distance,
		"distance, mean beyond 85":              route.ShortDistance(lat(85), lat(85.0001)),
		"distance, more than 5 of latitude":     route.ShortDistance(lat(0), lat(-5.0001)),
		"distance, more than 10 of longitude":   route.ShortDistance(lon(0), lon(-10.0001)),
		"altitude nowhere":                      first(route.SunAltitude(lat(91), time.Unix(0, 0))),
		"sphere to nowhere":                     route.Sphere{}.Inverse(lat(0), lat(91)).Distance,
		"sphere from nowhere":                   route.Sphere{}.Direct(lat(91), 0, 1).To.Lat,
		"sphere, between nowheres":              route.Sphere{}.Intermediate(lat(91), lat(0), 0.5).Lat,
		"sphere, no fraction":                   route.Sphere{}.Intermediate(lat(1), lat(0), math.NaN()).Lat,
		"sphere, offset of nowhere":             first(route.Sphere{}.Offset(lat(91), lat(0), lat(1))),
		"offset of nowhere":                     first(route.Inverse(lat(0), lat(1)).Offset(lat(91))),
		"offset from no leg":                    first(route.Leg{Course: math.NaN()}.Offset(lat(1))),
	} {
		if !math.IsNaN(got) {
			t.Errorf("%s: %v, want NaN", name, got)
		}
	}
	// A line that leaves nowhere, on no course, or for no distance.
	for name, direct := range map[string]func(route.Point, float64, float64) route.Leg{
		"Direct": route.Direct, "ShortDirect": route.ShortDirect, "RhumbDirect": route.RhumbDirect, "MidLatitudeDirect": route.MidLatitudeDirect,
		"Sphere.Direct": route.Sphere{}.Direct, "Sphere.RhumbDirect": route.Sphere{}.RhumbDirect,
	} {
		for _, c := range []struct {
			from             route.Point
			course, distance float64
		}{{lat(up(90)), 0, 1}, {lon(up(540)), 0, 1}, {lat(1), inf, 1}, {lat(1), -inf, 1}, {lat(1), math.NaN(), 1}, {lat(1), 0, inf}, {lat(1), 0, -inf}, {lat(1), 0, math.NaN()}} {
			l := direct(c.from, c.course, c.distance)
			for _, x := range []float64{l.From.Lat, l.To.Lat, l.To.Lon, l.Distance, l.Course, l.End} {
				if !math.IsNaN(x) {
					t.Errorf("%s(%v, %v, %v) = %+v, want NaN", name, c.from, c.course, c.distance, l)
					break
				}
			}
		}
	}
}

// TestReachOfTheShortLine: the mid-latitude formulas answer as far as they say and the figures to just short of a flattening
// of 0.02 either way.
func TestReachOfTheShortLine(t *testing.T) {
	for _, c := range [][2]route.Point{
		{{Lat: 84.5}, {Lat: 85.5}}, {{Lat: -84.5}, {Lat: -85.5}}, {lat(0), lat(5)}, {lat(0), lat(-5)}, {lon(0), lon(10)}, {lon(0), lon(-10)}, {lat(90), lat(80)},
	} {
		far := math.Abs(c[0].Lat-c[1].Lat) > 5
		s, d, want := route.ShortInverse(c[0], c[1]), route.ShortDistance(c[0], c[1]), route.Inverse(c[0], c[1]).Distance
		if far != math.IsNaN(d) || far != math.IsNaN(s.Distance) {
			t.Errorf("%v: %v and %v", c, s.Distance, d)
		} else if !far {
			near(t, fmt.Sprint(c), d, want, 1e-5*want)
			near(t, fmt.Sprint(c), s.Distance, d, 1e-6)
			near(t, fmt.Sprint(c), route.Inverse(route.ShortDirect(c[0], s.Course, s.Distance*0.999).To, route.Direct(c[0], s.Course, s.Distance*0.999).To).Distance, 0, 1e-4*want)
		}
	}
	// An end beyond the same reach is none: 5 degrees of latitude, 10 of longitude, a mean of 85.
	for _, c := range [][2]route.Point{{lat(0), lat(5)}, {lat(0), lat(-5)}, {lon(0), lon(10)}, {lon(0), lon(-10)}, {{Lat: 84.5}, {Lat: 85.5}}, {{Lat: -84.5}, {Lat: -85.5}}} {
		l := route.Inverse(c[0], c[1])
		if in, out := route.ShortDirect(c[0], l.Course, l.Distance*0.9999), route.ShortDirect(c[0], l.Course, l.Distance*1.0002); math.IsNaN(in.To.Lat) || !math.IsNaN(out.To.Lat) || !math.IsNaN(out.Distance) {
			t.Errorf("%v: %+v and %+v", c, in, out)
		}
	}
	for _, f := range []float64{down(0.02), -down(0.02)} {
		if d := (route.Ellipsoid{Axis: 1, Flattening: f}).Inverse(lon(0), lon(90)).Distance; !(math.Abs(d-math.Pi/2) <= 1e-9) {
			t.Errorf("flattening %v: a quarter of the equator is %v, want pi/2", f, d)
		}
	}
}

// TestErrorsBeyondTheBorders: a decision is taken on the border of its stated range, and refused beyond it with the reason.
func TestErrorsBeyondTheBorders(t *testing.T) {
	still := func(route.Point, float64) route.Velocity { return route.Velocity{} }
	drift := func(change func(*route.Drifter)) error {
		d := route.Drifter{Craft: route.Crafts()[0], Wind: still, Seconds: 3600}
		change(&d)
		_, _, err := d.Pair()
		return err
	}
	cloud := func(n int, steps float64) error {
		_, err := route.Drifter{Craft: route.Crafts()[0], Wind: still, Seconds: steps, Step: 1}.Cloud(n, 1)
		return err
	}
	// A cloud that is let in, and ends at its first wind.
	let := func(n int, steps float64) error {
		_, err := route.Drifter{Craft: route.Crafts()[0], Wind: steady(route.Velocity{East: inf}), Seconds: steps, Step: 1}.Cloud(n, 1)
		return err
	}
	along := func(start float64) error {
		return drift(func(d *route.Drifter) {
			d.Craft, d.Start, d.Stream = route.Craft{}, lat(start), steady(route.Toward(1, 90))
		})
	}
	onTrack := func(s ...route.Stretch) error {
		_, err := route.CrossOnOneTrack(route.Leg{Distance: 1}, 1, s)
		return err
	}
	sweep := func(eye, visibility float64) error {
		_, err := route.SweepWidth(route.TargetPerson, eye, visibility)
		return err
	}
	commit := func(endurance float64, run ...route.Reach) error {
		_, _, err := route.CommitPoint(endurance, run)
		return err
	}
	cross := func(distance, speed float64, s ...route.Stretch) error {
		_, err := route.CrossOnOneHeading(route.Leg{Distance: distance}, speed, s)
		return err
	}
	hold := func(track, speed float64, water route.Velocity) error {
		_, err := route.HoldTrack(track, speed, water)
		return err
	}
	light := func(year int) error {
		_, err := route.Daylight(lat(10), time.Date(year, 6, 1, 0, 0, 0, 0, time.UTC))
		return err
	}
	factor := func(low, mid, high float64) error { return route.WindFactor{Low: low, Mid: mid, High: high}.Check() }
	steep := func(x float64, places ...route.Point) error {
		return route.SteepShore{Kind: "slab", Reflects: route.Known(x), Line: places}.Check()
	}
	run := func(change func(*route.Run)) error {
		r := route.Run{Points: []route.Point{lat(0), lat(1), lat(2)}}
		change(&r)
		return r.Check()
	}
	exit := func(change func(*route.Exit)) error {
		e := route.Exit{Name: "X"}
		change(&e)
		return e.Check()
	}
	posture := func(change func(*route.Posture)) error {
		p := route.Posture{Name: "new", Endurance: 1, Area: 1, Exposure: 1, Drag: 1, Bend: 1, Side: 1}
		change(&p)
		return p.Check()
	}
	reach := route.Reach{Length: 1, Out: 1, Home: 1}
	hour := route.Stretch{Seconds: 3600}
	const most = math.MaxFloat64
	for _, c := range []struct {
		name string
		err  error
		want error  // nil: none
		says string // in its text
	}{
		{"a month", drift(func(d *route.Drifter) { d.Seconds, d.Step = 30*86400, 6*3600 }), nil, ""},
		{"more than a month", drift(func(d *route.Drifter) { d.Seconds, d.Step = up(30*86400), 6*3600 }), route.ErrInput, "up to 30 days"},
		{"a long step", drift(func(d *route.Drifter) { d.Seconds, d.Step = 86400, up(6*3600) }), route.ErrInput, "step of 21600.0"},
		{"a step below 0", drift(func(d *route.Drifter) { d.Step = -1 }), route.ErrInput, "step of -1"},
		{"20000 steps", drift(func(d *route.Drifter) { d.Seconds, d.Step = 20000, 1 }), nil, ""},
		{"more than 20000 steps", drift(func(d *route.Drifter) { d.Seconds, d.Step = 20001, 1 }), route.ErrInput, "no more than 20000 steps"},
		{"a sure gybe in a step", drift(func(d *route.Drifter) { d.Gybe = 1.0 / 1024; d.Step = 1024 }), nil, ""},
		{"more than a sure gybe", drift(func(d *route.Drifter) { d.Gybe = 1.01 / 1024; d.Step = 1024 }), route.ErrInput, "gybe"},
		{"a gybe below 0", drift(func(d *route.Drifter) { d.Gybe = -1e-9 }), route.ErrInput, "gybe -1e-09"},
		{"2 members", cloud(2, 1), nil, ""},
		{"100000 members", let(100000, 1), route.ErrInput, "are not velocities"},
		{"1000 members of 19999 steps, 20 million positions", let(1000, 19999), route.ErrInput, "are not velocities"},
		{"along 85 north", along(85), nil, ""},
		{"along 85 south", along(-85), nil, ""},
		{"beyond 85 north", along(up(85)), route.ErrPosition, "passes 85 degrees"},
		{"beyond 85 south", along(down(-85)), route.ErrPosition, "passes 85 degrees"},
		{"100001 members", cloud(100001, 1), route.ErrInput, "100001 members of 1 steps"},
		{"1001 members of 19980 steps, over 20 million positions", cloud(1001, 19980), route.ErrInput, "1001 members of 19980 steps"},
		{"eye at 8 ft", sweep(8*route.Foot, 5000), nil, ""},
		{"eye below 8 ft", sweep(7.999*route.Foot, 5000), route.ErrInput, "eye at"},
		{"eye above 14 ft", sweep(14.001*route.Foot, 5000), route.ErrInput, "eye at"},
		{"visibility below 1 nmi", sweep(3, down(1852)), route.ErrInput, "visibility"},
		{"no endurance", commit(0, reach), nil, ""},
		{"endurance below 0", commit(down(0), reach), route.ErrInput, "endurance -5e-324"},
		{"endurance without bound", commit(most, reach), nil, ""},
		{"endurance without end", commit(inf, reach), route.ErrInput, "endurance +Inf"},
		{"third reach of no length", commit(1, reach, reach, route.Reach{Out: 1, Home: 1}), route.ErrInput, "reach 3: 0 m"},
		{"second reach of no speed out", commit(1, reach, route.Reach{Length: 1, Home: 1}), route.ErrInput, "reach 2: 1 m, 0 m/s out"},
		{"reach of a length without end", commit(1, route.Reach{Length: inf, Out: 1, Home: 1}), route.ErrInput, "reach 1: +Inf m"},
		{"reach of a speed without end", commit(1, route.Reach{Length: 1, Out: inf, Home: 1}), route.ErrInput, "+Inf m/s out"},
		{"reach home without end", commit(1, route.Reach{Length: 1, Out: 1, Home: -inf}), route.ErrInput, "-Inf m/s home"},
		{"reach of the largest numbers", commit(1, route.Reach{Length: most, Out: most, Home: -most}), nil, ""},
		{"a leg of no length", cross(0, 1, hour), route.ErrInput, "leg of 0 m"},
		{"a leg without end", cross(inf, 1, hour), route.ErrInput, "leg of +Inf m"},
		{"a speed without end", cross(1, inf, hour), route.ErrInput, "speed +Inf"},
		{"the longest leg", cross(most, 1, hour), route.ErrNotReached, "3600 s are not enough"},
		{"second stretch of no time", cross(1e9, 1, hour, route.Stretch{}), route.ErrInput, "stretch 2"},
		{"a stretch without bound", cross(100, 1, route.Stretch{Seconds: most}), nil, ""},
		{"a stream of the largest number across", onTrack(route.Stretch{Seconds: 1, Water: route.Velocity{East: most}}), route.ErrCrossSet, "stretch 1"},
		{"third stretch of a time without end", cross(1e9, 1, hour, hour, route.Stretch{Seconds: inf}), route.ErrInput, "stretch 3"},
		{"first stretch of a stream without end", cross(1e9, 1, route.Stretch{Seconds: 1, Water: route.Velocity{East: inf}}), route.ErrInput, "stretch 1"},
		{"a goal not reached", cross(10000, 2, hour), route.ErrNotReached, "3600 s are not enough for 10000 m at 2 m/s"},
		{"no speed with the stream", hold(0, 0, route.Toward(1, 0)), route.ErrNoProgress, "1 m/s along the track 0, speed 0 m/s"},
		{"all speed across", hold(0, 1, route.Velocity{East: 1}), route.ErrNoProgress, "0 m/s along the track 0, speed 1 m/s"},
		{"all speed across, and a stream along", hold(0, 1, route.Velocity{East: 1, North: 0.1}), nil, ""},
		{"more than all speed across", hold(10, 1, route.Toward(1.5, 280)), route.ErrCrossSet, "1.5 m/s across the track 10, speed 1 m/s"},
		{"against", hold(90, 1, route.Toward(1.5, 270)), route.ErrNoProgress, "-1.5 m/s along the track 90, speed 1 m/s"},
		{"a speed below 0", hold(0, down(0), route.Velocity{}), route.ErrInput, "speed"},
		{"a speed without end on a track", hold(0, inf, route.Velocity{}), route.ErrInput, "speed"},
		{"a track without end", hold(inf, 1, route.Velocity{}), route.ErrInput, "track"},
		{"a stream without end", hold(0, 1, route.Velocity{East: inf}), route.ErrInput, "stream"},
		{"the year -1900", light(-1900), nil, ""},
		{"the year -1901", light(-1901), route.ErrDate, "-1901"},
		{"the year 5900", light(5900), nil, ""},
		{"the year 5901", light(5901), route.ErrDate, "5901"},
		{"nothing said of the wind", factor(0, 0, 0), nil, ""},
		{"a factor of one number", factor(1, 1, 1), nil, ""},
		{"the largest factor", factor(1, 2, 3), nil, ""},
		{"a larger factor", factor(1, 2, up(3)), route.ErrInput, "exposure"},
		{"a factor of 0", factor(0, 0.5, 1), route.ErrInput, "[0, 0.5, 1]"},
		{"low above mid", factor(0.6, down(0.6), 1), route.ErrInput, "low <= mid"},
		{"mid above high", factor(0.1, 1, down(1)), route.ErrInput, "mid <= high"},
		{"a shore that throws nothing back", steep(0, lat(0), lat(1)), nil, ""},
		{"a shore that throws all back", steep(1, lat(0), lat(1)), nil, ""},
		{"more than all", steep(up(1), lat(0), lat(1)), route.ErrInput, "outside 0 to 1"},
		{"less than nothing", steep(down(0), lat(0), lat(1)), route.ErrInput, "outside 0 to 1"},
		{"a shore of one place", steep(1, lat(0)), route.ErrInput, "1 places"},
		{"a shore off the globe", steep(1, lat(0), lat(91)), route.ErrPosition, "place 1"},
		{"depths of the deepest and the highest ground", run(func(r *route.Run) { r.Depths = []route.Value{route.Known(12000), route.Known(-20)} }), nil, ""},
		{"a leg too deep", run(func(r *route.Run) { r.Depths = []route.Value{route.Known(1), route.Known(up(12000))} }), route.ErrInput, "depth of leg 1"},
		{"a leg too high", run(func(r *route.Run) { r.Depths = []route.Value{route.Known(down(-20)), {}} }), route.ErrInput, "depth of leg 0"},
		{"one depth for two legs", run(func(r *route.Run) { r.Depths = make([]route.Value, 1) }), route.ErrInput, "1 depths for 2 legs"},
		{"the deepest fetch", run(func(r *route.Run) { r.FetchDepth = route.Known(12000) }), nil, ""},
		{"too deep a fetch", run(func(r *route.Run) { r.FetchDepth = route.Known(up(12000)) }), route.ErrInput, "mean depth"},
		{"a dry fetch", run(func(r *route.Run) { r.FetchDepth = route.Known(0) }), route.ErrInput, "mean depth"},
		{"one factor for two legs", run(func(r *route.Run) { r.Exposure = make([]route.WindFactor, 1) }), route.ErrInput, "1 wind factors for 2 legs"},
		{"a bad factor of the second leg", run(func(r *route.Run) { r.Exposure = []route.WindFactor{{}, {Low: -1}} }), route.ErrInput, "leg 1"},
		{"a run of one point", run(func(r *route.Run) { r.Points = r.Points[:1] }), route.ErrInput, "1 points"},
		{"a point repeated", run(func(r *route.Run) { r.Points = []route.Point{lat(0), lat(1), {Lat: 1, Lon: 360}} }), route.ErrInput, "point 2 repeats point 1"},
		{"an exit named twice", run(func(r *route.Run) { r.Exits = []route.Exit{{Name: "X"}, {Name: "X"}} }), route.ErrInput, `two exits named "X"`},
		{"an exit on the lower borders", exit(func(e *route.Exit) {
			e.LeastDepth, e.GreatestBreaker, e.Seaward, e.GreatestStream = route.LimitOf(0), route.LimitOf(0), route.LimitOf(0), route.LimitOf(0)
			e.Charted, e.Hours = route.Known(-20), route.DaylightOnly
		}), nil, ""},
		{"an exit on the upper borders", exit(func(e *route.Exit) {
			e.LeastDepth, e.GreatestBreaker, e.Seaward, e.GreatestStream = route.LimitOf(100), route.LimitOf(30), route.LimitOf(360), route.LimitOf(20)
			e.Charted = route.Known(1000)
		}), nil, ""},
		{"hours that are none", exit(func(e *route.Exit) { e.Hours = route.DaylightOnly + 1 }), route.ErrInput, "hours 3"},
		{"charted too high", exit(func(e *route.Exit) { e.Charted = route.Known(down(-20)) }), route.ErrInput, "charted"},
		{"charted too deep", exit(func(e *route.Exit) { e.Charted = route.Known(up(1000)) }), route.ErrInput, "charted"},
		{"least depth below 0", exit(func(e *route.Exit) { e.LeastDepth = route.LimitOf(down(0)) }), route.ErrInput, "least depth"},
		{"least depth above 100", exit(func(e *route.Exit) { e.LeastDepth = route.LimitOf(up(100)) }), route.ErrInput, "0 to 100"},
		{"breakers above 30", exit(func(e *route.Exit) { e.GreatestBreaker = route.LimitOf(up(30)) }), route.ErrInput, "0 to 30"},
		{"seaward above 360", exit(func(e *route.Exit) { e.Seaward = route.LimitOf(up(360)) }), route.ErrInput, "0 to 360"},
		{"stream above 20", exit(func(e *route.Exit) { e.GreatestStream = route.LimitOf(up(20)) }), route.ErrInput, "0 to 20"},
		{"a posture at rest", posture(func(p *route.Posture) {}), nil, ""},
		{"a posture on its upper borders", posture(func(p *route.Posture) {
			*p = route.Posture{Speed: 10, Endurance: inf, Area: 10, Exposure: 1.5, Drag: 10000, Bend: inf, Side: 10000}
		}), nil, ""},
		{"speed below 0", posture(func(p *route.Posture) { p.Speed = down(0) }), route.ErrInput, "new: Speed"},
		{"speed above 10", posture(func(p *route.Posture) { p.Speed = up(10) }), route.ErrInput, "Speed"},
		{"endurance 0", posture(func(p *route.Posture) { p.Endurance = 0 }), route.ErrInput, "Endurance"},
		{"area 0", posture(func(p *route.Posture) { p.Area = 0 }), route.ErrInput, "Area"},
		{"area above 10", posture(func(p *route.Posture) { p.Area = up(10) }), route.ErrInput, "Area"},
		{"exposure 0", posture(func(p *route.Posture) { p.Exposure = 0 }), route.ErrInput, "Exposure"},
		{"exposure above 1.5", posture(func(p *route.Posture) { p.Exposure = up(1.5) }), route.ErrInput, "Exposure"},
		{"drag 0", posture(func(p *route.Posture) { p.Drag = 0 }), route.ErrInput, "Drag"},
		{"drag above 10000", posture(func(p *route.Posture) { p.Drag = up(10000) }), route.ErrInput, "Drag"},
		{"bend 0", posture(func(p *route.Posture) { p.Bend = 0 }), route.ErrInput, "Bend"},
		{"side 0", posture(func(p *route.Posture) { p.Side = 0 }), route.ErrInput, "Side"},
		{"side above 10000", posture(func(p *route.Posture) { p.Side = up(10000) }), route.ErrInput, "Side"},
		{"the poles", errors.Join(lat(90).Check(), lat(-90).Check()), nil, ""},
		{"beyond a pole", lat(up(90)).Check(), route.ErrPosition, "latitude 90.0"},
		{"beyond the other", lat(down(-90)).Check(), route.ErrPosition, "latitude -90.0"},
		{"a turn more", errors.Join(lon(540).Check(), lon(-540).Check()), nil, ""},
		{"two turns", lon(down(-540)).Check(), route.ErrPosition, "longitude -540.0"},
	} {
		if !errors.Is(c.err, c.want) || c.want == nil && c.err != nil || c.err != nil && !strings.Contains(c.err.Error(), c.says) {
			t.Errorf("%s: %v, want %v that says %q", c.name, c.err, c.want, c.says)
		}
	}
}
