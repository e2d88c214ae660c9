package passage_test

import (
	"context"
	"fmt"
	"math"
	"strings"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/tide"
	"followingsea.example/wave/ride"
	"followingsea.example/wind"
)

// eight is the first departure of an invented day.
var eight = time.Date(2026, 6, 21, 8, 0, 0, 0, time.UTC)

// stillWater is a stream of nothing and a tide of one metre.
type stillWater struct{}

func (stillWater) Velocity(time.Time) tide.Velocity { return tide.Velocity{} }
func (stillWater) Height(time.Time) float64         { return 1 }

// exampleRun is 10 km due east with two exits to the south of it, before a straight shore.
func exampleRun() (route.Run, error) {
	start := route.Point{Lat: 50, Lon: -20}
	coast, err := route.NewCoast([][]route.Point{{{Lat: 49.95, Lon: -20.3}, {Lat: 49.95, Lon: -19.7}}}, nil)
	if err != nil {
		return route.Run{}, err
	}
	exit := func(name string, along float64) route.Exit {
		return route.Exit{Name: name, Point: route.Direct(route.Direct(start, 90, along).To, 180, 2000).To, Charted: passage.Known(1), LeastDepth: route.LimitOf(0.5),
			GreatestBreaker: route.LimitOf(9), Seaward: route.LimitOf(0), Hours: route.AnyHour, GreatestStream: route.NoLimit()}
	}
	return route.Run{Name: "eastward", Points: []route.Point{start, route.Direct(start, 90, 10000).To}, Depths: []route.Value{passage.Known(20)},
		Exits: []route.Exit{exit("west", 2000), exit("east", 8000)}, Coast: coast}, nil
}

// exampleDay has a steady wind of 9 m/s from west-south-west, and nothing unknown.
func exampleDay() (passage.Day, error) {
	var samples []wind.Sample
	for h := -36; h <= 14; h++ {
		samples = append(samples, wind.Sample{Time: eight.Add(time.Duration(h) * time.Hour), Wind: wind.Wind{Speed: 9, Gust: 11, From: 260}})
	}
	s, err := wind.NewSeries(samples, 0)
	if err != nil {
		return passage.Day{}, err
	}
	var height passage.HeightSource = stillWater{}
	var stream passage.StreamSource = stillWater{}
	var swell passage.SwellSource = passage.NoSwell{}
	return passage.Day{Wind: []passage.Anemometer{{Series: s}}, Swell: swell, Tide: height,
		Streams: []passage.StreamGauge{{Stream: stream}}, Warning: passage.NoWarningInForce()}, nil
}

// examplePaddler sets two limits and a half.
func examplePaddler() passage.Paddler {
	p := passage.Paddler{Name: "coach", Cruise: passage.Known(1.8), Sprint: passage.Known(3)}
	p.Limits[passage.LeastWind] = passage.Ask(6)
	p.Limits[passage.GreatestWind] = passage.Ask(11)
	p.Limits[passage.GreatestDuration] = passage.Ask(2 * 3600)
	return p
}

var coarse = passage.Options{From: eight, To: eight.Add(time.Hour), Cell: 1000, Station: 5000, Step: 3600, ExitStep: 3600, ExitLength: 5000}

func exampleWater() (*passage.Water, error) {
	run, err := exampleRun()
	if err != nil {
		return nil, err
	}
	day, err := exampleDay()
	if err != nil {
		return nil, err
	}
	return passage.Prepare(run, day, examplePaddler(), coarse)
}

// The whole of it: prepare once, appraise a departure, read the findings.
func ExampleAppraisal() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	var a passage.Appraisal
	if a, err = water.Appraise(eight); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a.State, len(a.Broken()), len(a.Unknown()))
	for _, f := range a.Findings {
		fmt.Println(f.Rule.Words(), f.State)
	}
	// Output:
	// met 0 0
	// wind at least met
	// wind at most met
	// duration at most met
}

// What nobody looked at is unknown, and an unknown limit is not met.
func ExampleAppraisal_Unknown() {
	run, err := exampleRun()
	if err != nil {
		fmt.Println(err)
		return
	}
	day, err := exampleDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	day.Warning = passage.Warning{}
	p := examplePaddler()
	p.Limits[passage.NoWarning] = passage.Ask(0)
	water, err := passage.Prepare(run, day, p, coarse)
	if err != nil {
		fmt.Println(err)
		return
	}
	a, err := water.Appraise(eight)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(a.State)
	for _, f := range a.Unknown() {
		fmt.Println(f.Rule, f.State)
	}
	// Output:
	// unknown
	// no_warning unknown
}

// Leg by leg: where the board is, in what wind, and which way it heads.
func ExampleWater_Timeline() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	var legs []passage.Leg
	if legs, err = water.Timeline(eight); err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range legs {
		var m passage.Moment = l.Middle
		fmt.Printf("leg %d: %.0f km, wind %.0f m/s, %.0f deg off the stern\n", l.Number, l.Length/1000, m.Wind.Speed, m.OffStern)
	}
	// Output: leg 1: 10 km, wind 9 m/s, 10 deg off the stern
}

// Half way along the paddle breaks: which exits are open on the hands, and where is the board later if nobody paddles?
func ExampleWater_Contingencies() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	var all []passage.Contingency
	if all, err = water.Contingencies(eight, []float64{5000}, []passage.Change{{Name: "the wind veers", Turn: 45, Factor: 1}}); err != nil {
		fmt.Println(err)
		return
	}
	for _, c := range all {
		fmt.Printf("%s: %d of %d open\n", c.Name, c.Open, len(c.Ways))
	}
	var later []passage.Adrift = all[len(all)-1].Adrift
	fmt.Println(len(later), "times adrift, each with a spread")
	// Output:
	// the paddle breaks: 0 of 2 open
	// a swimmer holds the board: 0 of 2 open
	// the wind veers: 2 of 2 open
	// 2 times adrift, each with a spread
}

// The board gets away from a swimmer in 8 m/s of wind: the band is wide, and the leash decides.
func ExampleBoardLost() {
	var parted []passage.Parting = passage.BoardLost(8)
	for _, p := range parted {
		fmt.Printf("%.0f min: %.0f to %.0f m, a swimmer: %v\n", p.After/60, p.Near, p.Far, p.ByASwimmer)
	}
	// Output:
	// 1 min: 7 to 31 m, a swimmer: unknown
	// 5 min: 36 to 156 m, a swimmer: unknown
	// 10 min: 72 to 312 m, a swimmer: unknown
}

// The page for the board, and how much of a change each limit stands.
func ExampleWater_Deck() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	var deck passage.Deck
	if deck, err = water.Deck(eight, []float64{3000, 5000, 7000}); err != nil {
		fmt.Println(err)
		return
	}
	var gate passage.Gate = deck.Gates[1]
	fmt.Printf("%d gates, the second at km %.0f, a way out: %v\n", len(deck.Gates), gate.Along/1000, gate.HasExit)
	var stands []passage.Tolerance
	if stands, err = water.Tolerances(eight); err != nil {
		fmt.Println(err)
		return
	}
	var more passage.Edge = stands[1].Stronger
	fmt.Printf("%s: %.1f m/s more is still met, %.1f is not\n", stands[1].Finding.Rule, more.Holds, more.Breaks)
	// Output:
	// 3 gates, the second at km 5, a way out: true
	// greatest_wind: 1.5 m/s more is still met, 2.1 is not
}

// At the launch it blows harder than was forecast.
func ExampleWater_Launch() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	var l passage.Launch
	if l, err = water.Launch(eight, passage.Observed{Wind: passage.Known(12.5), From: passage.Known(260)}); err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range l.Shifts {
		var shifted passage.Shifted = s
		fmt.Println(shifted.Rule, shifted.Before.State, "->", shifted.After.State)
	}
	// Output: greatest_wind met -> broken
}

// Two departures in two members of a forecast, ranked: a part of the members, and never one number.
func ExampleSearch() {
	run, err := exampleRun()
	if err != nil {
		fmt.Println(err)
		return
	}
	day, err := exampleDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	var found *passage.Ranking
	found, err = passage.Search(context.Background(), passage.Choices{Runs: []passage.Candidate{{Run: run}}, Days: []passage.Day{day, {}},
		Departures: []time.Time{eight, eight.Add(time.Hour)}, Party: passage.Party{Paddlers: []passage.Paddler{examplePaddler()}}, Options: coarse})
	if err != nil {
		fmt.Println(err)
		return
	}
	var order passage.Order = passage.ByMargin
	var best passage.Prospect = found.Best(order, 1)[0]
	var odds passage.Odds = best.All
	var late passage.Range = best.Late
	fmt.Printf("%d prospects; the first: met in %d, unknown in %d, late known in %d\n", found.Len(), odds.Met, odds.Unknown, late.Known)
	// Output: 2 prospects; the first: met in 1, unknown in 1, late known in 1
}

// A party keeps together: it goes as fast as whoever is slowest, and meets where it said.
func ExamplePrepareParty() {
	run, err := exampleRun()
	if err != nil {
		fmt.Println(err)
		return
	}
	day, err := exampleDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	slow := examplePaddler()
	slow.Cruise = passage.Known(1.5)
	water, err := passage.PrepareParty(run, day, passage.Party{Paddlers: []passage.Paddler{examplePaddler(), slow}, Regroup: []float64{5000}}, coarse)
	if err != nil {
		fmt.Println(err)
		return
	}
	var meetings []passage.Meeting
	if meetings, err = water.Meetings(eight); err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range meetings {
		fmt.Printf("km %.0f: last is paddler %d\n", m.Along/1000, m.Slowest)
	}
	// Output:
	// km 5: last is paddler 1
	// km 10: last is paddler 1
}

// A paddler from a file: units are in the names, and a misspelt limit is an error.
func ExampleReadPaddlers() {
	party, err := passage.ReadPaddlers(strings.NewReader(`{"name": "A", "cruise_km_h": 6.48, "variation_east_deg": -2, "variation_date": "2026-01-01", "limits": {"greatest_wind_kn": 20}}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	var cruise passage.Value = party[0].Cruise
	var variation passage.Variation = party[0].Variation
	fmt.Printf("%.1f m/s, variation %v\n", cruise.Number(), variation.East)
	_, err = passage.ReadPaddlers(strings.NewReader(`{"limits": {"most_wind_kn": 20}}`))
	fmt.Println(err != nil)
	// Output:
	// 1.8 m/s, variation -2
	// true
}

// A recorded track beside the plan: here the plan's own track, so that nothing differs.
func ExampleWater_Debrief() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	track, err := water.Track(eight, 60)
	if err != nil {
		fmt.Println(err)
		return
	}
	track.Planned = false // as if it had been recorded
	var d passage.Debrief
	if d, err = water.Debrief(track); err != nil {
		fmt.Println(err)
		return
	}
	var leg passage.LegBack = d.Legs[0]
	fmt.Printf("%.0f km; made good as planned: %v\n", d.Gone/1000, math.Abs(leg.Made-leg.PlanMade) <= 0.01)
	var how passage.Handling = passage.InHand
	fmt.Println(d.Plan.Outing(how).Handling)
	// Output:
	// 10 km; made good as planned: true
	// in hand
}

// The model of the ride is a proposal, and its results say so.
func ExampleWater_Moment() {
	water, err := exampleWater()
	if err != nil {
		fmt.Println(err)
		return
	}
	m, err := water.Moment(5000, eight)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(m.Ride.Standing == ride.Standing, m.Wind.From)
	// Output: true 260
}

// Where the run goes through an area, and when the vehicle must be on its way to the finish.
func ExampleWater_Visits() {
	run, err := exampleRun()
	if err != nil {
		fmt.Println(err)
		return
	}
	day, err := exampleDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	start := run.Points[0]
	corner := func(along, north float64) route.Point {
		return route.Direct(route.Direct(start, 90, along).To, 0, north).To
	}
	run.Areas = []route.Area{{Kind: route.Traffic, Name: "the ferry", Polygons: []route.Polygon{
		{{corner(4000, -500), corner(6000, -500), corner(6000, 500), corner(4000, 500), corner(4000, -500)}}}}}
	water, err := passage.Prepare(run, day, examplePaddler(), coarse)
	if err != nil {
		fmt.Println(err)
		return
	}
	var visits []passage.Visit
	if visits, err = water.Visits(eight); err != nil {
		fmt.Println(err)
		return
	}
	for _, v := range visits {
		fmt.Printf("%s (%s): km %.0f to km %.0f\n", v.Name, v.Kind, v.Enter/1000, v.Leave/1000)
	}
	var shuttle passage.Shuttle
	if shuttle, err = water.Shuttle(eight, 45*60); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f km in a straight line; leave by %s\n", shuttle.Straight/1000, shuttle.Leave.Format("15:04"))
	// Output:
	// the ferry (traffic): km 4 to km 6
	// 10 km in a straight line; leave by 07:15
}
