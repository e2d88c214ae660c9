package route_test

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/route"
)

// Los Angeles to New York on a ball with the nautical mile for a minute of arc, as the formulary prints it.
func ExampleSphere_Inverse() {
	ball := route.Sphere{Radius: 180 * 60 * 1852 / math.Pi}
	lax := route.Point{Lat: 33 + 57.0/60, Lon: -(118 + 24.0/60)}
	jfk := route.Point{Lat: 40 + 38.0/60, Lon: -(73 + 47.0/60)}
	leg := ball.Inverse(lax, jfk)
	fmt.Printf("%.0f nmi on %.0f\n", leg.Distance/route.NauticalMile, leg.Course)
	// Output: 2144 nmi on 66
}

// The line between two places by constant course and by the shortest way: for a day on the water the same.
func ExampleRhumb() {
	a, b := route.Point{Lat: 50, Lon: -5}, route.Point{Lat: 50.1, Lon: -4.8}
	fmt.Printf("%.3f km on %.2f\n", route.Rhumb(a, b).Distance/1000, route.Rhumb(a, b).Course)
	fmt.Printf("%.3f km on %.2f\n", route.Inverse(a, b).Distance/1000, route.Inverse(a, b).Mean())
	// Output:
	// 18.136 km on 52.17
	// 18.136 km on 52.17
}

// A program's documentation: heading 010 at 160 knots, 155 over the ground on 000. The wind is from 084.717 at 27.902.
func ExampleCurrentFrom() {
	w := route.CurrentFrom(10, 160, 0, 155)
	fmt.Printf("from %.3f at %.3f\n", w.From(), w.Speed())
	// Output: from 84.717 at 27.902
}

// Where going on takes as long as going home: the critical point of a question in an examination.
func ExampleEqualTime() {
	fmt.Printf("%.0f nmi\n", route.EqualTime(1800, 138, 162))
	// Output: 972 nmi
}

// A run with a slow part: how far along it one can still come home within three hours.
func ExampleCommitPoint() {
	run := []route.Reach{
		{Length: 6000, Out: 2.5, Home: 1.2},
		{Length: 6000, Out: 2.0, Home: 0.5},
	}
	along, seconds, err := route.CommitPoint(3*3600, run)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f km, after %.0f min\n", along/1000, seconds/60)
	// Output: 7.4 km, after 51 min
}

// What a board makes of a wind on the beam: its way depends on heading and wind, and the heading that holds the track is
// looked for.
func ExampleHoldCourse() {
	var way route.Way = route.Standing(1.8).Way
	c, err := route.HoldCourse(way, 0, route.From(8, 90), route.Toward(0.5, 270))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("steer %03.0f, %.1f m/s made good\n", c.Heading, c.Made)
	// Output: steer 031, 1.3 m/s made good
}

// The published leeway of a surfboard with a person, and the line it comes from: 1.93 % of the wind, and a quarter of that
// to either side.
func ExampleFindCraft() {
	board, err := route.FindCraft("surfboard")
	if err != nil {
		fmt.Println(err)
		return
	}
	var line route.Fit = board.Downwind
	fmt.Printf("%.2f %%, scatter %.3f m/s\n", 100*line.Slope, line.Scatter)
	for _, side := range []route.Side{route.Right, route.Left} {
		v := board.Leeway(route.From(10, 0), side)
		fmt.Printf("%.2f m/s toward %03.0f\n", v.Speed(), v.Toward())
	}
	// Output:
	// 1.93 %, scatter 0.083 m/s
	// 0.20 m/s toward 195
	// 0.20 m/s toward 165
}

// The manual's own method: a sea kayak in 20 knots at 0.46 knots, as printed.
func ExampleAngleRow_Leeway() {
	kayak, err := route.FindAngleRow("sea-kayak")
	if err != nil {
		fmt.Println(err)
		return
	}
	v := kayak.Leeway(route.From(20*route.Knot, 90), route.Right)
	fmt.Printf("%.2f kn\n", v.Speed()/route.Knot)
	// Output: 0.46 kn
}

// The nearest paddled hull that was measured.
func ExampleMeasuredRows() {
	for _, r := range route.MeasuredRows() {
		if strings.Contains(r.Name, "outrigger") {
			fmt.Printf("%s: %.2f %%\n", r.Name, 100*r.Share)
		}
	}
	// Output: outrigger-canoe: 2.40 %
}

// Never a point: a hundred drifts with the published scatter, and the circle that holds nine in ten after an hour.
func ExampleDrifter_Cloud() {
	board, err := route.FindCraft("surfboard")
	if err != nil {
		fmt.Println(err)
		return
	}
	d := route.Drifter{Craft: board, Start: route.Point{Lat: 50, Lon: -5}, Seconds: 3600,
		Wind: func(route.Point, float64) route.Velocity { return route.From(10, 180) }}
	cloud, err := d.Cloud(100, 1)
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := cloud.Spread(len(cloud.Seconds) - 1)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("drifted %.1f km; half within %.1f km, nine in ten within %.1f km\n",
		route.Inverse(d.Start, s.Mean).Distance/1000, s.Half/1000, s.Ninety/1000)
	// Output: drifted 0.7 km; half within 0.3 km, nine in ten within 0.6 km
}

// What a line to the beach runs into, and where a drifting board comes ashore.
func ExampleCoast_Landfall() {
	island := route.Polygon{{{Lat: 50.02, Lon: -5.02}, {Lat: 50.02, Lon: -4.98}, {Lat: 50.04, Lon: -4.98}, {Lat: 50.04, Lon: -5.02}, {Lat: 50.02, Lon: -5.02}}}
	coast, err := route.NewCoast(nil, []route.Polygon{island})
	if err != nil {
		fmt.Println(err)
		return
	}
	start, beyond := route.Point{Lat: 50, Lon: -5}, route.Point{Lat: 50.06, Lon: -5}
	x, err := coast.Crosses(start, beyond)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("land %v, after %.1f km\n", x.Land, x.Distance/1000)
	land, err := coast.Landfall([]route.Point{start, {Lat: 50.01, Lon: -5}, beyond})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("on leg %d, at %.2f of it\n", land.Leg, land.Fraction)
	// Output:
	// land true, after 2.2 km
	// on leg 1, at 0.20 of it
}

// An area to keep out of is a coast of its own: where does a leg enter it?
func ExampleArea_Outline() {
	ferry := route.Area{Kind: route.Traffic, Name: "the ferry", Polygons: []route.Polygon{
		{{{Lat: 50.01, Lon: -5.1}, {Lat: 50.01, Lon: -4.9}, {Lat: 50.02, Lon: -4.9}, {Lat: 50.02, Lon: -5.1}, {Lat: 50.01, Lon: -5.1}}}}}
	outline, err := ferry.Outline()
	if err != nil {
		fmt.Println(err)
		return
	}
	x, err := outline.Crosses(route.Point{Lat: 50, Lon: -5}, route.Point{Lat: 50.03, Lon: -5})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s (%s): after %.1f km\n", ferry.Name, ferry.Kind, x.Distance/1000)
	// Output: the ferry (traffic): after 1.1 km
}

// A wall that throws waves back, by a word for what it is; and a leg of which somebody knows that the wind is less there.
func ExampleSteepShore() {
	wall := route.SteepShore{Kind: route.SteepKinds()[0], Line: []route.Point{{Lat: 50, Lon: -5}, {Lat: 50, Lon: -4.99}}}
	fmt.Println(wall.Check())
	lee := route.WindFactor{Low: 0.4, Mid: 0.6, High: 0.8}
	fmt.Println(lee.Given(), lee.Check(), route.WindFactor{}.Given())
	// Output:
	// <nil>
	// true <nil> false
}

// The published times in cold water, the first minutes of it, and the caution that belongs to them.
func ExampleColdTimes() {
	row, ok := route.ColdTimes(10)
	fmt.Printf("%v: exhaustion in %.0f to %.0f min\n", ok, row.ExhaustionFrom/60, row.ExhaustionTo/60)
	first := route.ColdPhases()[0]
	fmt.Printf("%s: to %.0f min\n", first.Name, first.To/60)
	// Output:
	// true: exhaustion in 30 to 60 min
	// cold shock: to 5 min
}

// A sweep width as the table prints it: 0.8 miles for a small power boat in 3 miles of visibility, from an eye at 8 feet.
func ExampleSweepWidth() {
	w, err := route.SweepWidth("power boat to 15 ft", 8*0.3048, 3*route.NauticalMile)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f nmi, times %.1f in 20 knots and 1.2 m\n", w/route.NauticalMile, route.SweepWeather(20*route.Knot, 1.2))
	var row route.SweepRow = route.SweepRows()[0]
	fmt.Println(row.Target)
	// Output:
	// 0.8 nmi, times 0.5 in 20 knots and 1.2 m
	// person in water
}
