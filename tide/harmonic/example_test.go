package harmonic_test

import (
	"fmt"
	"strings"
	"time"

	"followingsea.example/internal/reference/stations"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

// Boston's 37 constituents, with the nodes of the year: the official high and
// low waters of 15 August 2026, to the millimetre.
func ExampleTide_Turns() {
	boston, err := harmonic.New(stations.Station("8443970"), harmonic.ByYear)
	if err != nil {
		fmt.Println(err)
		return
	}
	from := time.Date(2026, 8, 15, 0, 0, 0, 0, time.UTC)
	turns, err := boston.Turns(from, from.Add(24*time.Hour), 0.01)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, u := range turns {
		fmt.Println(u)
	}
	// Output:
	// HW 2026-08-15T05:28Z 3.37 m
	// LW 2026-08-15T11:42Z -0.18 m
	// HW 2026-08-15T17:58Z 3.21 m
}

// A station of one constituent, from its file.
func ExampleReadStation() {
	s, err := harmonic.ReadStation(strings.NewReader(`{
	  "station": "A pier", "datum": "LAT", "z0_m": 3,
	  "constituents": [{"name": "M2", "amplitude_m": 2, "lag_deg": 0}]
	}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	t, err := harmonic.New(s, harmonic.Without)
	if err != nil {
		fmt.Println(err)
		return
	}
	from := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	open, err := t.Windows(tide.Bar{Charted: tide.Drying(3), Need: 1}, from, from.Add(24*time.Hour))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, w := range open {
		fmt.Println(w.From.Format("15:04"), "to", w.To.Format("15:04"))
	}
	// Output:
	// 08:05 to 12:14
	// 20:30 to 00:00
}

// The year tables print V0 + u and f of M2 for 2026 as 66.36° and 0.9674.
func ExampleYearArgument() {
	v, f := harmonic.YearArgument("M2", 2026, harmonic.Schureman1900)
	fmt.Printf("%.2f° %.4f\n", v, f)
	// Output:
	// 66.36° 0.9674
}

// Bellingham Channel ebbs on through most mornings: two maxima and no slack.
func ExampleStream_Events() {
	s, err := harmonic.NewStream(*stations.Station("PUG1741").Stream, harmonic.ByYear)
	if err != nil {
		fmt.Println(err)
		return
	}
	from := time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)
	events, err := s.Events(from.Add(2*time.Hour), from.Add(22*time.Hour))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, e := range events {
		fmt.Printf("%s %5.2f kn %v\n", e.Time.Add(30*time.Second).Format("15:04"), e.Rate/tide.Knot, e.Kind)
	}
	// Output:
	// 03:05  0.00 kn slack before ebb
	// 06:03 -1.23 kn maximum ebb
	// 11:11 -0.30 kn minimum ebb
	// 16:12 -2.62 kn maximum ebb
	// 20:44  0.00 kn slack before flood
}
