package passage_test

import (
	"fmt"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/tide"
	"followingsea.example/wind"
)

type slack struct{}

func (slack) Velocity(time.Time) tide.Velocity { return tide.Velocity{} }

type steadyLevel float64

func (h steadyLevel) Height(time.Time) float64 { return float64(h) }

// invented is 6 km of open water on an imaginary coast, and a day on it.
func invented() (route.Run, passage.Day, time.Time) {
	start := time.Date(2026, 6, 21, 9, 0, 0, 0, time.UTC)
	launch := route.Point{Lat: 44, Lon: -34}
	coast, err := route.NewCoast([][]route.Point{{{Lat: 43.9, Lon: -34.2}, {Lat: 43.9, Lon: -33.8}}}, nil)
	if err != nil {
		panic(err)
	}
	run := route.Run{Name: "Skarn Sound", Points: []route.Point{launch, route.Direct(launch, 90, 6000).To},
		Depths: []route.Value{route.Known(20)}, Coast: coast}
	var samples []wind.Sample
	for h := -12; h <= 12; h++ {
		w, err := wind.Gusting(9, 12, 270)
		if err != nil {
			panic(err)
		}
		samples = append(samples, wind.Sample{Time: start.Add(time.Duration(h) * time.Hour), Wind: w})
	}
	series, err := wind.NewSeries(samples, 0)
	if err != nil {
		panic(err)
	}
	return run, passage.Day{Wind: []passage.Anemometer{{Series: series}}, Swell: passage.NoSwell{}, Tide: steadyLevel(1),
		Streams: []passage.StreamGauge{{Stream: slack{}}}}, start
}

// What is not known, here whether a warning is in force, counts against the
// departure.
func ExampleWater_Appraise() {
	run, day, start := invented()
	paddler := passage.Paddler{Cruise: passage.Known(1.8), Sprint: passage.Known(3), Mass: passage.Known(95)}
	paddler.Limits[passage.GreatestWind] = passage.Ask(10)
	paddler.Limits[passage.GreatestGust] = passage.Ask(11)
	paddler.Limits[passage.LeastDepth] = passage.Ask(2)
	paddler.Limits[passage.NoWarning] = passage.Ask(0)
	water, err := passage.Prepare(run, day, paddler, passage.Options{From: start, To: start})
	if err != nil {
		fmt.Println(err)
		return
	}
	a, err := water.Appraise(start)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, f := range a.Findings {
		fmt.Println(f)
	}
	fmt.Println("all of it:", a.State)
	// Output:
	// wind at most 10 m/s: met (9)
	// gusts at most 11 m/s: broken (12)
	// depth at least 2 m: met (21)
	// no official warning 0 bool: unknown, nobody said whether an official warning is in force
	// all of it: broken
}

// A run is prepared once; a departure outside the prepared time is an error.
func ExamplePrepare() {
	run, day, start := invented()
	water, err := passage.Prepare(run, day, passage.Paddler{Cruise: passage.Known(1.8)}, passage.Options{From: start, To: start.Add(time.Hour)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f m\n", water.Length())
	_, err = water.Appraise(start.Add(2 * time.Hour))
	fmt.Println(err)
	// Output:
	// 6000 m
	// passage: input: departure is 2026-06-21T11:00:00Z: want 2026-06-21T09:00:00Z to 2026-06-21T10:00:00Z
}
