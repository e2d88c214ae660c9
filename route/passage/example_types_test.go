package passage_test

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/tide"
	"followingsea.example/wind"
)

// A tide table is a source of heights that also says what they are worth.
func ExampleEstimator() {
	noon := time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)
	table, err := tide.NewTable([]tide.Turn{
		{Time: noon.Add(-3 * time.Hour), Height: 0.6},
		{Time: noon.Add(3 * time.Hour), Height: 4.2, High: true},
	}, tide.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	var source passage.HeightSource = table
	e, is := source.(passage.Estimator)
	fmt.Printf("%v %.1f m\n", is, e.Estimate(noon).Height)
	// Output: true 2.4 m
}

// When word is to come from the water, and to whom.
func ExampleCheckIn() {
	c := passage.CheckIn{Place: "Tally Cove", Time: time.Date(2026, 9, 12, 10, 30, 0, 0, time.UTC), With: "the shore contact"}
	fmt.Println(c.Place, c.Time.Format("15:04"), c.With)
	// Output: Tally Cove 10:30 the shore contact
}

// steadySet is a stream that never changes.
type steadySet struct{ rate, set float64 }

// Velocity returns the stream.
func (s steadySet) Velocity(time.Time) tide.Velocity { return tide.Setting(s.rate, s.set).Velocity() }

// Sources of an app's own: a stream that it knows, no swell, a wind record at
// a place.
func ExampleDay() {
	start := time.Date(2026, 6, 21, 6, 0, 0, 0, time.UTC)
	var samples []wind.Sample
	for h := range 13 {
		w, err := wind.New(8, 240)
		if err != nil {
			fmt.Println(err)
			return
		}
		samples = append(samples, wind.Sample{Time: start.Add(time.Duration(h) * time.Hour), Wind: w})
	}
	series, err := wind.NewSeries(samples, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	place := route.Point{Lat: 44, Lon: -34}
	day := passage.Day{
		Wind:    []passage.Anemometer{{At: place, Series: series}},
		Swell:   passage.NoSwell{},
		Streams: []passage.StreamGauge{{At: place, Stream: steadySet{0.5, 60}}},
		Water:   passage.Known(15),
	}
	systems, err := day.Swell.At(start)
	fmt.Println(len(systems), "systems of swell,", err)
	v := day.Streams[0].Stream.Velocity(start)
	fmt.Printf("stream %.1f m/s\n", math.Hypot(v.East, v.North))
	fmt.Println("a tide is given:", day.Tide != nil)
	// Output:
	// 0 systems of swell, <nil>
	// stream 0.5 m/s
	// a tide is given: false
}
