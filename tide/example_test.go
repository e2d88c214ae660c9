package tide_test

import (
	"fmt"
	"strings"
	"time"

	"followingsea.example/tide"
)

// Saint-Malo, high water 11 m at 09:34, low water 2.35 m at 16:36: the French
// exercise counts tide-hours of the real duration and prints 10.28 m and 8.84 m
// at the end of the first two.
func ExampleLimb() {
	ebb := tide.Limb{
		From: tide.Turn{Time: time.Date(2026, 6, 1, 9, 34, 0, 0, time.UTC), Height: 11, High: true},
		To:   tide.Turn{Time: time.Date(2026, 6, 1, 16, 36, 0, 0, time.UTC), Height: 2.35},
	}
	fmt.Printf("range %.2f m, tide-hour %.0f min\n", ebb.Range(), ebb.TideHour()/60)
	for k := 1; k <= 2; k++ {
		at := ebb.From.Time.Add(time.Duration(k) * 4220 * time.Second)
		fmt.Printf("%.2f m by twelfths, %.2f m by cosine\n", ebb.Height(at, tide.ByTwelfths), ebb.Height(at, tide.ByCosine))
	}
	// Output:
	// range 8.65 m, tide-hour 70 min
	// 10.28 m by twelfths, 10.42 m by cosine
	// 8.84 m by twelfths, 8.84 m by cosine
}

// A slip that dries 1.4 m needs 1 m of water for the boards to float off.
func ExampleTable_Windows() {
	table, err := tide.ReadTable(strings.NewReader(`# datum: LAT
time,height_m,kind
2026-06-01T06:00:00Z,0.4,low
2026-06-01T12:00:00Z,4.4,high
2026-06-01T18:00:00Z,0.4,low
`), tide.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	from, to := table.Span()
	open, err := table.Windows(tide.Bar{Charted: tide.Drying(1.4), Need: 1}, from, to)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, w := range open {
		fmt.Println(w.From.Format("15:04"), "to", w.To.Format("15:04"))
	}
	// Output:
	// 09:00 to 15:00
}

// The Annapolis problem: 0.4 m to 9.6 m in 6.2 hours; its author prints
// 7.1641 m at 14:46.
func ExampleCosine() {
	x := (14 + 46.0/60 - 10.7) / 6.2
	fmt.Printf("%.4f m\n", 0.4+(9.6-0.4)*tide.Cosine(x))
	// Output:
	// 7.1641 m
}

func ExampleTwelfths() {
	for k := 1; k <= 6; k++ {
		fmt.Printf("%.0f/12 ", 12*tide.Twelfths(float64(k)/6))
	}
	fmt.Println()
	// Output:
	// 1/12 3/12 6/12 9/12 11/12 12/12
}

// What a table cannot answer it says, instead of guessing.
func ExampleTable_Estimate() {
	table, err := tide.NewTable([]tide.Turn{
		{Time: time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC), Height: 1},
		{Time: time.Date(2026, 1, 1, 8, 42, 0, 0, time.UTC), Height: 4.6, High: true},
	}, tide.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	e := table.Estimate(time.Date(2026, 1, 1, 4, 0, 0, 0, time.UTC))
	fmt.Printf("%.1f m ± %.1f m: %v\n", e.Height, e.Spread, e.Remark)
	e = table.Estimate(time.Date(2026, 1, 2, 4, 0, 0, 0, time.UTC))
	fmt.Println(e.Height, e.Remark)
	// Output:
	// 2.6 m ± 1.3 m: rise or fall longer than the curve is trusted for
	// NaN outside the table
}

// Barfleur on Cherbourg: high water 18:46 at the standard port, differences
// 51 minutes at 15:00 and 44 at 21:00; the source finds 47 minutes, 19:33.
func ExampleTimeDifference() {
	const hour, minute = 3600.0, 60.0
	d := tide.TimeDifference(18*hour+46*minute, tide.ClockMark{Clock: 15 * hour, Difference: 51 * minute}, tide.ClockMark{Clock: 21 * hour, Difference: 44 * minute})
	fmt.Printf("%.0f min\n", d/minute)
	// Output:
	// 47 min
}

// Streams of a chart's diamond, between springs and neaps and between hours.
func ExampleHourTable_At() {
	diamond, err := tide.NewHourTable([]tide.HourStream{
		{Hour: -1, Set: 245, Springs: 1.8 * tide.Knot, Neaps: 0.9 * tide.Knot},
		{Hour: 0, Set: 245, Springs: 0.8 * tide.Knot, Neaps: 0.4 * tide.Knot},
		{Hour: 1, Set: 65, Springs: 0.8 * tide.Knot, Neaps: 0.4 * tide.Knot},
	}, 5.0, 2.6)
	if err != nil {
		fmt.Println(err)
		return
	}
	s := diamond.At(-0.5, 3.8).Stream()
	fmt.Printf("%.2f kn setting %03.0f°\n", s.Rate/tide.Knot, s.Set)
	s = diamond.At(0.5, 3.8).Stream()
	fmt.Printf("%.2f kn between opposite streams\n", s.Rate/tide.Knot)
	// Output:
	// 0.97 kn setting 245°
	// 0.00 kn between opposite streams
}

// The Navy's example at Sewells Point: slack 09:31, maximum 0.66 kn of flood at
// 11:59, setting 195°; at 11:00 it prints 0.5 kn.
func ExampleEventStreams() {
	s, err := tide.NewEventStreams([]tide.StreamEvent{
		{Time: time.Date(2026, 6, 1, 9, 31, 0, 0, time.UTC), Kind: tide.SlackBeforeFlood},
		{Time: time.Date(2026, 6, 1, 11, 59, 0, 0, time.UTC), Rate: 0.66 * tide.Knot, Kind: tide.MaxFlood},
	}, 195, 15)
	if err != nil {
		fmt.Println(err)
		return
	}
	v := s.Velocity(time.Date(2026, 6, 1, 11, 0, 0, 0, time.UTC)).Stream()
	fmt.Printf("%.1f kn setting %.0f°\n", v.Rate/tide.Knot, v.Set)
	// Output:
	// 0.5 kn setting 195°
}

// Meeus, example 49.a: the new moon of February 1977.
func ExampleTruePhase() {
	fmt.Printf("mean %.5f\ntrue %.5f\n", tide.MeanPhase(-283), tide.TruePhase(-283))
	// Output:
	// mean 2443192.94102
	// true 2443192.65118
}

func ExampleMoonPhases() {
	phases, err := tide.MoonPhases(time.Date(2026, 6, 10, 0, 0, 0, 0, time.UTC), time.Date(2026, 7, 1, 0, 0, 0, 0, time.UTC))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range phases {
		fmt.Println(p.Time.Format("2 January"), p.Phase)
	}
	// Output:
	// 15 June new moon
	// 21 June first quarter
	// 29 June full moon
}

func ExampleInverseBarometer() {
	fmt.Printf("%.1f m for 10 hPa of low pressure\n", tide.InverseBarometer(100325, tide.StandardPressure))
	// Output:
	// 0.1 m for 10 hPa of low pressure
}
