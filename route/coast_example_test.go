package route_test

import (
	"fmt"
	"os"
	"strings"
	"time"

	"followingsea.example/route"
)

// A bay open to the south: land to the north, a point to the west.
const bay = `{"type":"FeatureCollection","features":[
 {"type":"Feature","properties":{"role":"run","name":"Point to slip","depth_m":15},
  "geometry":{"type":"LineString","coordinates":[[7.00,50.00],[7.10,50.00]]}},
 {"type":"Feature","properties":{"role":"exit","name":"Cove","least_depth_m":0.5,"greatest_breaker_m":0.6,
   "seaward_deg":180,"daylight_only":true,"greatest_stream_m_s":1},
  "geometry":{"type":"Point","coordinates":[7.04,50.02]}},
 {"type":"Feature","properties":{"role":"exit","name":"Slip","least_depth_m":"none","greatest_breaker_m":0.4,
   "seaward_deg":200,"daylight_only":false,"greatest_stream_kn":"none"},
  "geometry":{"type":"Point","coordinates":[7.10,50.02]}},
 {"type":"Feature","properties":{"role":"coast"},
  "geometry":{"type":"Polygon","coordinates":[[[6.9,50.02],[7.2,50.02],[7.2,50.1],[6.9,50.1],[6.9,50.02]]]}}
]}`

func ExampleReadRun() {
	run, err := route.ReadRun(strings.NewReader(bay))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: %.1f km, %d exits, %d segments of shore\n", run.Name, run.Length()/1000, len(run.Exits), run.Coast.Segments())
	for _, e := range run.Exits {
		fmt.Printf("%-5s depth %s m, breakers %s m, %s\n", e.Name, e.LeastDepth, e.GreatestBreaker, e.Hours)
	}
	// Output:
	// Point to slip: 7.2 km, 2 exits, 32 segments of shore
	// Cove  depth 0.5 m, breakers 0.6 m, daylight only
	// Slip  depth none m, breakers 0.4 m, any hour
}

// A file that cannot be right says where and why.
func ExampleReadRun_swapped() {
	_, err := route.ReadRun(strings.NewReader(`{"type":"FeatureCollection","features":[
	 {"type":"Feature","properties":{"role":"run"},"geometry":{"type":"LineString","coordinates":[[-33.9,151.3],[-33.8,151.3]]}}]}`))
	fmt.Println(err)
	// Output:
	// route: file: features[0].geometry.coordinates[0]: latitude 151.3 is outside -90 to 90; longitude is -33.9: are the two swapped?
}

// The length of one degree of latitude at 42 north, as a stretch of open water.
//
// Source: [Meeus1998] example 11.b.
func ExampleCoast_Fetch() {
	shore := [][]route.Point{{{Lat: 42.5, Lon: -1}, {Lat: 42.5, Lon: 1}}}
	coast, err := route.NewCoast(shore, nil)
	if err != nil {
		fmt.Println(err)
		return
	}
	at := route.Point{Lat: 41.5, Lon: 0}
	fmt.Printf("%.1f km to the north\n", coast.Fetch(at, 0, 500000)/1000)
	fmt.Printf("%.1f km to the south, where nothing is in the way within 500\n", coast.Fetch(at, 180, 500000)/1000)
	// Output:
	// 111.1 km to the north
	// 500.0 km to the south, where nothing is in the way within 500
}

func ExampleCoast_FetchRose() {
	run, err := route.ReadRun(strings.NewReader(bay))
	if err != nil {
		fmt.Println(err)
		return
	}
	for i, f := range run.Coast.FetchRose(run.Points[0], 8, 50000) {
		fmt.Printf("%03d  %4.1f km\n", i*45, f/1000)
	}
	// Output:
	// 000   2.2 km
	// 045   3.1 km
	// 090  50.0 km
	// 135  50.0 km
	// 180  50.0 km
	// 225  50.0 km
	// 270  50.0 km
	// 315   3.1 km
}

func ExampleCoast_ShoreWind() {
	run, err := route.ReadRun(strings.NewReader(bay))
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := run.Coast.ShoreWind(run.Points[0], route.From(10, 20))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%s: the shore bears %03.0f at %.1f km; %.1f m/s out from it, %.1f m/s along it\n",
		w.Kind(), w.Shore.Bearing, w.Shore.Distance/1000, -w.Onshore, -w.Along)
	// Output:
	// offshore: the shore bears 000 at 2.2 km; 9.4 m/s out from it, 3.4 m/s along it
}

// Speed dead into the wind, by posture, of a paddler who makes 1.8 m/s on flat
// water. Below zero the wind wins.
func ExamplePosture_Way() {
	fmt.Println("head wind, kn    0      10      15      20      25")
	for _, p := range route.Postures(1.8) {
		fmt.Printf("%-10s", p.Name)
		for _, kn := range []float64{0, 10, 15, 20, 25} {
			ahead, _ := p.Way(0, route.From(kn*route.Knot, 0)).Resolve(0)
			fmt.Printf("  %6.2f", ahead)
		}
		fmt.Println(" m/s")
	}
	// Output:
	// head wind, kn    0      10      15      20      25
	// standing      1.76    1.40    1.14    0.81   -0.51 m/s
	// kneeling      1.51    1.26    1.07    0.86    0.30 m/s
	// prone         1.07    0.94    0.83    0.69    0.55 m/s
	// drifting      0.00   -0.10   -0.16   -0.21   -0.26 m/s
}

// An offshore wind of 24 knots: standing, the shore 1.3 km upwind is out of
// reach; on the knees or lying down it is not.
func ExampleEscape_Reach() {
	run, err := route.ReadRun(strings.NewReader(bay))
	if err != nil {
		fmt.Println(err)
		return
	}
	q := route.Escape{
		From:   route.Point{Lat: 50.008, Lon: 7.04},
		Time:   time.Date(2026, 6, 21, 15, 0, 0, 0, time.UTC),
		Wind:   route.Steady(route.From(24*route.Knot, 0)),
		Stream: route.Steady(route.Toward(0.2, 90)),
		Coast:  run.Coast,
		At: func(route.Exit, time.Time) route.At {
			return route.At{Depth: route.Known(1.2), Breaker: route.Known(0.2), Stream: route.Known(0.2), Light: route.LightDay}
		},
	}
	for _, q.Posture = range route.Postures(1.8)[:3] {
		o, err := q.Reach(run.Exits[0])
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%s: %s: %s", q.Posture.Name, o.Exit.Name, o.State)
		if o.State == route.Landable {
			fmt.Printf(" at %s, steering %03.0f", o.Arrival.Format("15:04"), o.Heading)
		}
		fmt.Println()
	}
	// Output:
	// standing: Cove: out of reach
	// kneeling: Cove: reachable and landable at 15:43, steering 352
	// prone: Cove: reachable and landable at 15:39, steering 350
}

func ExampleGaps() {
	run, err := route.ReadRun(strings.NewReader(bay))
	if err != nil {
		fmt.Println(err)
		return
	}
	q := route.Escape{
		Time:   time.Date(2026, 6, 21, 15, 0, 0, 0, time.UTC),
		Wind:   route.Steady(route.From(21*route.Knot, 0)),
		Stream: route.Steady(route.Velocity{}),
		Coast:  run.Coast,
		Latest: time.Date(2026, 6, 21, 17, 0, 0, 0, time.UTC),
		At: func(e route.Exit, _ time.Time) route.At {
			return route.At{Depth: route.Known(1.2), Breaker: route.Known(0.5), Stream: route.Known(0.2), Light: route.LightDay}
		},
	}
	gaps, err := route.Gaps(run.Points, run.Exits, q, func(d float64) float64 { return d / 2.5 }, 100)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, g := range gaps {
		fmt.Printf("no exit open from %.1f to %.1f km, %s to %s\n", g.From/1000, g.To/1000, g.Start.Format("15:04"), g.End.Format("15:04"))
	}
	// Output:
	// no exit open from 6.9 to 7.2 km, 15:46 to 15:47
}

func ExampleWriteRunGPX() {
	run, err := route.ReadRun(strings.NewReader(bay))
	if err != nil {
		fmt.Println(err)
		return
	}
	run.Exits = run.Exits[:1]
	if err := route.WriteRunGPX(os.Stdout, run); err != nil {
		fmt.Println(err)
	}
	// Output:
	// <?xml version="1.0" encoding="UTF-8"?>
	// <gpx version="1.1" creator="followingsea.example" xmlns="http://www.topografix.com/GPX/1/1" xmlns:fs="urn:followingsea.example:run:1">
	// <wpt lat="50.02" lon="7.04"><name>Cove</name><type>exit</type><extensions><fs:landing least_depth_m="0.5" greatest_breaker_m="0.6" seaward_deg="180" greatest_stream_m_s="1" daylight_only="true"/></extensions></wpt>
	// <rte><name>Point to slip</name><rtept lat="50" lon="7"><extensions><fs:leg depth_m="15"/></extensions></rtept>
	// <rtept lat="50" lon="7.1"></rtept>
	// </rte>
	// </gpx>
}

func ExampleWriteTracks() {
	start := time.Date(2026, 6, 21, 15, 0, 0, 0, time.UTC)
	plan := route.Track{Name: "plan", Planned: true, Fixes: []route.Fix{
		{Point: route.Point{Lat: 50, Lon: 7}, Time: start},
		{Point: route.Point{Lat: 50, Lon: 7.1}, Time: start.Add(48 * time.Minute)},
	}}
	if err := route.WriteTracks(os.Stdout, []route.Track{plan}); err != nil {
		fmt.Println(err)
	}
	// Output:
	// {"type":"FeatureCollection","features":[
	// {"type":"Feature","properties":{"role":"track","name":"plan","planned":true,"times":["2026-06-21T15:00:00Z","2026-06-21T15:48:00Z"]},"geometry":{"type":"LineString","coordinates":[[7,50],[7.1,50]]}}
	// ]}
}
