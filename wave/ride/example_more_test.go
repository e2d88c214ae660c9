package ride_test

import (
	"fmt"
	"math"

	"followingsea.example/wave/ride"
)

// The numbers that stand behind a paddler nobody described: each with its range and its spread.
func ExamplePriors() {
	for _, p := range ride.Priors(ride.Board) {
		if p.Field == "Mass" {
			fmt.Printf("%s %.0f %s, accepted from %.0f to %.0f\n", p.Field, p.Value, p.Unit, p.Low, p.High)
		}
	}
	// Output: Mass 95 kg, accepted from 20 to 400
}

// Ten minutes in a sea, step by step: the same seed is the same run.
func ExamplePaddler_Simulate() {
	p := ride.Paddler{Cruise: 1.8, Sprint: 3.0}
	sea := ride.Sea{WindSea: ride.System{Hs: 0.7, Tp: 3.6}, Wind: 10, Depth: math.Inf(1)}
	var t ride.Trace
	t, err := p.Simulate(sea, ride.Run{Seed: 21, Seconds: 600, Keep: 1200})
	if err != nil {
		fmt.Println(err)
		return
	}
	var last ride.Moment = t.Moments[len(t.Moments)-1]
	fmt.Println(last.Time > 500, t.Peak > t.Speed)
	fmt.Println(t.Standing)
	// Output:
	// true true
	// proposal, no published source
}

// A table for a day of one depth and one swell: many seas read in the time of a few, with the error it was made for.
func ExamplePrepared_Table() {
	ready, err := ride.Paddler{Cruise: 1.8, Sprint: 3.0}.Prepare()
	if err != nil {
		fmt.Println(err)
		return
	}
	like := ride.Sea{WindSea: ride.System{Hs: 0.7, Tp: 3.6}, Wind: 10, Depth: math.Inf(1)}
	table, err := ready.Table(like, 0.5)
	if err != nil {
		fmt.Println(err)
		return
	}
	var q ride.Quick
	q, ok := table.At(0.7, 3.6, 10, 0)
	whole, err := ready.Sea(like)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(ok, math.Abs(q.Speed-whole.Speed) <= 0.5, table.Worst() <= 0.5)
	// Output: true true true
}
