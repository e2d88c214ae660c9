package tide_test

import (
	"fmt"
	"strings"
	"time"

	"followingsea.example/tide"
)

var midsummer = time.Date(2026, 6, 21, 0, 0, 0, 0, time.UTC)

func at(hour, minute int) time.Time {
	return midsummer.Add(time.Duration(hour)*time.Hour + time.Duration(minute)*time.Minute)
}

// A secondary port in the Admiralty style, the differences of a textbook's Littleport: high water 0300 at the standard
// port is 29 minutes later there, and at springs 1.1 m higher.
func ExampleDifferences_Apply() {
	littleport := tide.Differences{
		HighTimes:   []tide.ClockMark{{Clock: 0, Difference: 35 * 60}, {Clock: 6 * 3600, Difference: 23 * 60}},
		LowTimes:    []tide.ClockMark{{Clock: 0, Difference: 30 * 60}},
		HighHeights: [2]tide.Mark{{At: 4.2, Value: 1.1}, {At: 3.4, Value: 0.8}},
		LowHeights:  [2]tide.Mark{{At: 1.1, Value: 0.2}, {At: 0.4, Value: 0.1}},
	}
	turns, err := littleport.Apply([]tide.Turn{{Time: at(3, 0), Height: 4.2, High: true}, {Time: at(9, 10), Height: 0.4}})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, t := range turns {
		fmt.Println(t)
	}
	// Output:
	// HW 2026-06-21T03:29Z 5.30 m
	// LW 2026-06-21T09:40Z 0.50 m
}

// A secondary port in the American style: a time for each kind of turn, a ratio or a sum for the heights.
func ExampleOffsets_Apply() {
	o := tide.Offsets{HighTime: 25 * time.Minute, LowTime: 40 * time.Minute, High: tide.ByRatio(0.8), Low: tide.ByAddition(-0.1)}
	turns, err := o.Apply([]tide.Turn{{Time: at(3, 0), Height: 4, High: true}, {Time: at(9, 10), Height: 0.6}})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, t := range turns {
		fmt.Println(t)
	}
	// Output:
	// HW 2026-06-21T03:25Z 3.20 m
	// LW 2026-06-21T09:50Z 0.50 m
}

// Streams by the clock: between one knot to the north and one to the south there is slack, not a stream to the east.
func ExampleClockStreams() {
	s, err := tide.NewClockStreams([]tide.StreamSample{
		{Time: at(10, 0), Stream: tide.Setting(1*tide.Knot, 0)},
		{Time: at(12, 0), Stream: tide.Setting(1*tide.Knot, 180)},
	}, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, t := range []time.Time{at(10, 30), at(11, 0), at(11, 30)} {
		fmt.Printf("%s %.1f kn\n", t.Format("15:04"), s.Velocity(t).Stream().Rate/tide.Knot)
	}
	// Output:
	// 10:30 0.5 kn
	// 11:00 0.0 kn
	// 11:30 0.5 kn
}

// A diamond of the chart on the day's tide: the hours are counted from its high water and the rates grow with its range.
func ExampleHourTable_On() {
	diamond, err := tide.ReadHourTable(strings.NewReader("# spring_range_m: 5\n# neap_range_m: 3\nhour,set_deg,springs_kn,neaps_kn\n-3,60,2.1,1.0\n0,60,0.4,0.2\n3,240,2.1,1.0\n"), 0, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	port, err := tide.NewTable([]tide.Turn{{Time: at(3, 0), Height: 0.5}, {Time: at(9, 10), Height: 4.5, High: true}, {Time: at(15, 20), Height: 0.5}}, tide.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	day, err := diamond.On(port)
	if err != nil {
		fmt.Println(err)
		return
	}
	v := day.Velocity(at(6, 10)) // three hours before, on a range of 4 m: half way from neaps to springs
	fmt.Printf("%.2f kn\n", v.Stream().Rate/tide.Knot)
	// Output: 1.55 kn
}

// A subordinate station of a current table: each event has its own offset and each way its own ratio.
func ExampleStreamOffsets_Apply() {
	o := tide.StreamOffsets{Flood: 20 * time.Minute, SlackBeforeEbb: 10 * time.Minute, FloodRatio: 0.6, EbbRatio: 0.5}
	events, err := o.Apply([]tide.StreamEvent{{Time: at(6, 0), Kind: tide.MaxFlood, Rate: 2 * tide.Knot}, {Time: at(9, 0), Kind: tide.SlackBeforeEbb}})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range events {
		fmt.Printf("%s %v %.1f kn\n", e.Time.Format("15:04"), e.Kind, e.Rate/tide.Knot)
	}
	// Output:
	// 06:20 maximum flood 1.2 kn
	// 09:10 slack before ebb 0.0 kn
}

// A rotary stream has no slack: its weakest is the minor axis.
func ExampleEllipse_Axes() {
	e := tide.Ellipse{East: 2, North: 1, NorthLag: 90}
	major, minor, direction, clockwise := e.Axes()
	fmt.Printf("%.0f m/s toward %03.0f, never below %.0f; clockwise %v\n", major, direction, minor, clockwise)
	// Output: 2 m/s toward 090, never below 1; clockwise false
}

// How a day stands between neaps and springs, and the rate that goes with it.
func ExampleSpringness() {
	s := tide.Springness(4, 5, 3)
	rate := tide.RateAtRange(4, tide.Mark{At: 5, Value: 2.1 * tide.Knot}, tide.Mark{At: 3, Value: 1.0 * tide.Knot})
	fmt.Printf("%.1f (%v): %.2f kn\n", s, tide.SeasonOf(s), rate/tide.Knot)
	var season tide.Season = tide.SeasonOf(1)
	fmt.Println(season)
	// Output:
	// 0.5 (between neaps and springs): 1.55 kn
	// springs
}

// The character of a tide by its form number: below a quarter there are two alike a day.
func ExampleKindOf() {
	for _, f := range []float64{0.24, 0.84, 2.33} {
		fmt.Println(tide.KindOf(f))
	}
	// Output:
	// semidiurnal
	// mixed, mainly semidiurnal
	// mixed, mainly diurnal
}

// Heights above different datums do not mix, and an unknown datum mixes with nothing.
func ExampleDatum_Match() {
	fmt.Println(tide.LAT.Match(tide.LAT))
	fmt.Println(tide.LAT.Match(tide.MLLW))
	// Output:
	// <nil>
	// tide: heights above different datums: LAT and MLLW
}

// The worked example of a text on surges: 960 hPa raise the sea by 0.53 m.
func ExampleWater_InverseBarometer() {
	fmt.Printf("%.2f m\n", tide.Water{Gravity: 9.81, Density: 1025}.InverseBarometer(96000, 101325))
	// Output: 0.53 m
}

// A gale along a shallow bay that is shut at the end.
func ExampleWindSetup() {
	s := tide.WindSetup(tide.Stretch{Wind: 15, Fetch: 20e3, Depth: 5})
	fmt.Printf("%.1f m, give or take %.1f\n", s.Height, s.Spread)
	// Output: 0.2 m, give or take 0.1
}

// The rule of thirds at 3 knots: 1, 2, 3, 3, 2, 1 knots through the six parts of the stream.
func ExampleThirds() {
	for k := range 6 {
		fmt.Printf("%.0f ", 3*tide.Thirds((float64(k)+0.5)/6))
	}
	fmt.Println("kn")
	// Output: 1 2 3 3 2 1 kn
}

// How long a stream of 1 knot at its most is no more than half a knot: two hours in six.
func ExampleWeakStream() {
	fmt.Printf("%.0f h\n", tide.WeakStream(0.5, 1, 6*3600)/3600)
	// Output: 2 h
}
