package route_test

import (
	"errors"
	"fmt"
	"time"

	"followingsea.example/route"
)

// The line from New York to Paris of the tests of Karney's library.
func ExampleInverse() {
	l := route.Inverse(route.Point{Lat: 40.6, Lon: -73.8}, route.Point{Lat: 49.01666667, Lon: 2.55})
	fmt.Printf("%.0f m, course %.5f, at the end %.5f\n", l.Distance, l.Course, l.End)
	// Output: 5853226 m, course 53.47022, at the end 111.59367
}

func ExampleDirect() {
	l := route.Direct(route.Point{Lat: 40.63972222, Lon: -73.77888889}, 53.5, 5850000)
	fmt.Printf("%.5f, %.5f\n", l.To.Lat, l.To.Lon)
	// Output: 49.01467, 2.56106
}

// Flinders Peak to Buninyong, the line that Australian surveyors test with.
func ExampleEllipsoid_ShortInverse() {
	dms := func(d, m, s float64) float64 { return d + m/60 + s/3600 }
	l := route.GRS80.ShortInverse(
		route.Point{Lat: -dms(37, 57, 3.7203), Lon: dms(144, 25, 29.5244)},
		route.Point{Lat: -dms(37, 39, 10.1561), Lon: dms(143, 55, 35.3839)})
	fmt.Printf("%.3f m\n", l.Distance)
	// Output: 54972.271 m
}

// What to steer for a landing that bears 075, at 10 knots, across a stream
// that sets 030 at 2.5 knots: the worked question of a page on the triangle.
func ExampleHoldTrack() {
	s, err := route.HoldTrack(75, 10*route.Knot, route.Toward(2.5*route.Knot, 30))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("steer %03.0f, making good %.1f knots\n", s.Heading, s.SpeedMade/route.Knot)
	// Output: steer 085, making good 11.6 knots
}

// A 4-knot boat in mid-river, straight across a stream of 7 knots.
func ExampleBestHeading() {
	stream := route.Toward(7*route.Knot, 90)
	_, err := route.HoldTrack(0, 4*route.Knot, stream)
	fmt.Println(errors.Is(err, route.ErrCrossSet))
	s, held, err := route.BestHeading(0, 4*route.Knot, stream)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("held: %v; steer %03.0f, the track is %03.0f\n", held, s.Heading, s.Track)
	// Output:
	// true
	// held: false; steer 325, the track is 055
}

// Two named plans over three hours of a stream that turns.
func ExampleCrossOnOneHeading() {
	leg := route.Leg{Distance: 8 * route.NauticalMile, Course: 0, End: 0}
	stream := []route.Stretch{
		{Water: route.Toward(1*route.Knot, 90), Seconds: 3600},
		{Water: route.Toward(1*route.Knot, 270), Seconds: 3600},
		{Seconds: 3600},
	}
	a, _ := route.CrossOnOneHeading(leg, 4*route.Knot, stream)
	b, _ := route.CrossOnOneTrack(leg, 4*route.Knot, stream)
	fmt.Printf("%s: %.0f min, %.1f nautical miles off the line\n", a.Kind, a.Seconds/60, a.Farthest/route.NauticalMile)
	fmt.Printf("%s: %.0f min, first steering %03.0f\n", b.Kind, b.Seconds/60, b.Headings[0])
	// Output:
	// one heading, off the line: 120 min, 1.0 nautical miles off the line
	// one track, changing heading: 124 min, first steering 346
}

// Endurance 6.5 hours, 240 knots out and 210 home: the flight-training example.
func ExampleTurnBack() {
	t, d := route.TurnBack(6.5*route.Hour, 240*route.Knot, 210*route.Knot)
	fmt.Printf("turn after %.0f min, %.0f nautical miles out\n", t/60, d/route.NauticalMile)
	// A downwind run: 8 km/h down, 2 km/h back, three hours of strength.
	t, d = route.TurnBack(3*route.Hour, 8*route.KmPerHour, 2*route.KmPerHour)
	fmt.Printf("committed after %.0f min, %.1f km\n", t/60, d/1000)
	// Output:
	// turn after 182 min, 728 nautical miles out
	// committed after 36 min, 4.8 km
}

// The page of the US Naval Observatory for Atlanta on 6 September 2009.
func ExampleDaylight() {
	edt := time.FixedZone("EDT", -4*3600)
	d, err := route.Daylight(route.Point{Lat: 33.8, Lon: -84.4}, time.Date(2009, 9, 6, 0, 0, 0, 0, edt))
	if err != nil {
		fmt.Println(err)
		return
	}
	at := func(t time.Time) string { return t.Round(time.Minute).Format("15:04") }
	fmt.Println("civil dawn", at(d.CivilDawn.Time), "sunrise", at(d.Sunrise.Time), "transit", at(d.Transit))
	fmt.Println("sunset", at(d.Sunset.Time), "civil dusk", at(d.CivilDusk.Time))
	// Output:
	// civil dawn 06:50 sunrise 07:15 transit 13:36
	// sunset 19:56 civil dusk 20:21
}

func ExampleDaylight_polarDay() {
	d, err := route.Daylight(route.Point{Lat: 71.2906, Lon: -156.7886}, time.Date(2023, 6, 21, 0, 0, 0, 0, time.FixedZone("AKDT", -8*3600)))
	fmt.Println(d.Sunset.State, err)
	// Output: stays above <nil>
}

// Example 25.a of Meeus: the Sun on 13 October 1992 at 0 h.
func ExampleSunAtJulian() {
	s := route.SunAtJulian(2448908.5)
	fmt.Printf("longitude %.5f, distance %.5f\n", s.TrueLongitude, s.Distance)
	// Output: longitude 199.90987, distance 0.99766
}

func ExampleSightRange() {
	fmt.Printf("%.1f nautical miles\n", route.SightRange(10*route.Foot, 6*route.Foot).Range/route.NauticalMile)
	// Output: 6.6 nautical miles
}

func ExampleWindChill() {
	fmt.Printf("%.0f\n", route.WindChill(-15, 50*route.KmPerHour))
	// Output: -29
}

// Somebody lies on a board in 20 knots from the south for an hour: a pair of
// tracks, and the spread that is larger than the gap between them.
func ExampleDrifter_Pair() {
	board, err := route.FindCraft("surfboard")
	if err != nil {
		fmt.Println(err)
		return
	}
	d := route.Drifter{
		Craft: board, Start: route.Point{Lat: 50, Lon: -4}, Seconds: route.Hour, Gybe: route.GybeRate,
		Wind: func(route.Point, float64) route.Velocity { return route.From(20*route.Knot, 180) },
	}
	right, left, err := d.Pair()
	if err != nil {
		fmt.Println(err)
		return
	}
	r, l := route.Inverse(d.Start, right.End()), route.Inverse(d.Start, left.End())
	fmt.Printf("%.2f km toward %03.0f or %03.0f\n", r.Distance/1000, r.Course, l.Course)
	// Output: 0.74 km toward 015 or 345
}

// The nearest point of a route to a boat that has left it.
func ExamplePath_Closest() {
	run, err := route.NewPath(route.Point{Lat: 50, Lon: -4}, route.Point{Lat: 50.1, Lon: -4}, route.Point{Lat: 50.1, Lon: -3.8})
	if err != nil {
		fmt.Println(err)
		return
	}
	c, err := run.Closest(route.Point{Lat: 50.05, Lon: -3.99})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("leg %d, %.0f m along, %.0f m to the right\n", c.Leg+1, c.Along, c.Right)
	// Output: leg 1, 5562 m along, 716 m to the right
}
