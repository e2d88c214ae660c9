package ride_test

import (
	"fmt"
	"math"

	"followingsea.example/wave/ride"
)

// Can this board catch that bump?
func ExamplePaddler_Appraise() {
	paddler := ride.Paddler{Mass: 95, Cruise: 1.8, Sprint: 3.0}
	for _, period := range []float64{2.5, 3, 4, 10} {
		a, err := paddler.Appraise(ride.Bump{Height: 0.6, Period: period, Depth: math.Inf(1)})
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%4.1f s, %4.1f m/s: needs %5.2f m to hold, %5.2f m to catch: %s\n", period, a.Celerity, a.Hold, a.Catch, a.Verdict)
	}
	// Output:
	//  2.5 s,  3.9 m/s: needs  0.16 m to hold,  0.17 m to catch: catch cruising
	//  3.0 s,  4.7 m/s: needs  0.34 m to hold,  0.41 m to catch: catch sprinting
	//  4.0 s,  6.2 m/s: needs  1.02 m to hold,  1.26 m to catch: too low
	// 10.0 s, 15.6 m/s: needs 21.41 m to hold, 23.41 m to catch: too fast
}

// What a sea brings: the mean speed of the run and its spread.
func ExamplePrepared_Sea() {
	ready, err := ride.Paddler{Cruise: 1.8, Sprint: 3.0}.Prepare()
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err := ready.Sea(ride.Sea{WindSea: ride.System{Hs: 0.72, Tp: 3.65}, Wind: 10, Depth: math.Inf(1)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("mean %.1f ± %.1f m/s, %.1f m/s without waves\n", r.Speed, r.Spread, r.FlatSpeed)
	fmt.Printf("holds waves up to %.1f s; remarks: %v\n", r.LongestPeriod, r.Remarks)
	// Output:
	// mean 2.8 ± 0.2 m/s, 2.3 m/s without waves
	// holds waves up to 4.4 s; remarks: none
}

// How strong must one be for this bump? The low-damping theory of the ship
// rules gives a speed at which the wave cannot even be held.
func ExamplePaddler_Strength() {
	board := ride.Paddler{Mass: 95, Length: 4.2, Drag: 5, Bend: math.Inf(1), Thrust: ride.ConstantForce}
	s, err := board.Strength(ride.Bump{Height: 1, Period: 4, Depth: math.Inf(1), Gravity: 9.81})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("hold %.2f, catch %.2f, inevitable %.2f m/s; low damping %.2f m/s\n", s.Hold, s.Catch, s.Exact, s.Melnikov)
	// Output: hold 4.10, catch 4.10, inevitable 4.26 m/s; low damping 3.79 m/s
}

// A bump that runs 25 degrees off the course: catch it straight, then turn.
func ExamplePaddler_Line() {
	l, err := ride.Paddler{}.Line(ride.Bump{Height: 0.45, Period: 3, Depth: math.Inf(1), Off: 25})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("catch at %.0f, ride at %.0f degrees off the wave: %.1f m/s along the course, %.1f straight\n", l.Catch, l.Ride, l.Progress, l.Straight)
	// Output: catch at 0, ride at 23 degrees off the wave: 5.1 m/s along the course, 4.2 straight
}

// Known once on the water, the mean speed of a run sets the resistance.
func ExamplePaddler_WithDownwindMean() {
	sea := ride.Sea{WindSea: ride.System{Hs: 0.72, Tp: 3.65}, Wind: 10, Depth: math.Inf(1)}
	p, err := ride.Paddler{Cruise: 1.8, Sprint: 3.0}.WithDownwindMean(sea, 2.6)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("drag %.1f N s²/m², prior 5.5\n", p.Drag)
	// Output: drag 8.2 N s²/m², prior 5.5
}

// How the sea handles: each hazard measured against its threshold.
func ExamplePrepared_Hazards() {
	ready, err := ride.Paddler{}.Prepare()
	if err != nil {
		fmt.Println(err)
		return
	}
	hazards, err := ready.Hazards(ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 2.6, Off: 10}, Wind: 12, Depth: math.Inf(1)}, ride.StartingLimits())
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, h := range hazards {
		if h.Raised {
			fmt.Printf("%s: %.2f, above %.2f\n", h.Name, h.Measure, h.Threshold)
		}
	}
	// Output:
	// pearling: 0.06, above 0.05
	// breaking bumps: 0.08, above 0.07
	// breaking sea: 0.06, above 0.05
}

// A foil is refused: it flies, and feels other waves.
func ExampleCraft() {
	_, err := ride.Paddler{Craft: "SUP foil"}.Prepare()
	fmt.Println(err)
	// Output: ride: a foil flies, and the surge model of a floating board does not hold for it: Craft "SUP foil"
}
