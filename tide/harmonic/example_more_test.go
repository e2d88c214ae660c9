package harmonic_test

import (
	"fmt"
	"math"
	"strings"
	"time"

	"followingsea.example/internal/reference/stations"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

// The mean longitudes at the start of 2000, as the supplement to Schureman's manual prints them: 211.73 and 279.97 for
// moon and sun; and how far the moon's orbit leans at most.
func ExampleLongitudesAt() {
	var l harmonic.Longitudes = harmonic.LongitudesAt(time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC), harmonic.Modern)
	fmt.Printf("%.2f %.2f\n", l.S, l.H)
	var most harmonic.Orbit = harmonic.Longitudes{}.Orbit()
	fmt.Printf("%.3f\n", most.I)
	// Output:
	// 211.73 279.97
	// 28.597
}

// A day made ready, to be asked often: the same heights at a hundredth of the cost.
func ExampleTide_Curve() {
	boston, err := harmonic.New(stations.Station("8443970"), harmonic.AtInstant)
	if err != nil {
		fmt.Println(err)
		return
	}
	from := time.Date(2026, 8, 15, 0, 0, 0, 0, time.UTC)
	var day *harmonic.Curve
	if day, err = boston.Curve(from, from.Add(24*time.Hour)); err != nil {
		fmt.Println(err)
		return
	}
	noon := from.Add(12 * time.Hour)
	fmt.Printf("%.2f m above %v, %v\n", day.Height(noon), day.Datum(), math.Abs(day.Height(noon)-boston.Height(noon)) <= 1e-6)
	// Output: -0.16 m above MLLW, true
}

// Only the constituents one wants: what the two greatest leave of the tide.
func ExampleOnly() {
	s := stations.Station("8443970")
	s.Constituents = harmonic.Only(s.Constituents, func(name string) bool { return name == "M2" || name == "S2" })
	for _, c := range s.Constituents {
		fmt.Printf("%s %.3f m, %.1f°\n", c.Name, c.Amplitude, c.Lag)
	}
	// Output:
	// M2 1.371 m, 109.2°
	// S2 0.208 m, 146.2°
}

// A stream that goes round once a tide: never slack, its weakest is the minor axis.
func ExampleNewRotary() {
	r, err := harmonic.NewRotary([]harmonic.Constituent{{Name: "M2", Amplitude: 0.8, Lag: 0}}, []harmonic.Constituent{{Name: "M2", Amplitude: 0.4, Lag: 90}}, tide.Velocity{}, harmonic.Without)
	if err != nil {
		fmt.Println(err)
		return
	}
	start, least, most := time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC), math.Inf(1), 0.0
	for m := range 750 {
		v := r.Velocity(start.Add(time.Duration(m) * time.Minute))
		least, most = math.Min(least, v.Stream().Rate), math.Max(most, v.Stream().Rate)
	}
	fmt.Printf("%.2f to %.2f m/s\n", least, most)
	// Output: 0.40 to 0.80 m/s
}

// A stream along an axis, made ready for a day.
func ExampleStream_Curve() {
	s, err := harmonic.NewStream(harmonic.Axis{Flood: 60, Ebb: 240, Constituents: []harmonic.Constituent{{Name: "M2", Amplitude: 1, Lag: 0}}}, harmonic.Without)
	if err != nil {
		fmt.Println(err)
		return
	}
	from := time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)
	var day *harmonic.StreamCurve
	if day, err = s.Curve(from, from.Add(24*time.Hour)); err != nil {
		fmt.Println(err)
		return
	}
	at := from.Add(9 * time.Hour)
	fmt.Printf("%.2f m/s, %v\n", day.Rate(at), math.Abs(day.Rate(at)-s.Rate(at)) <= 1e-6)
	// Output: -0.43 m/s, true
}

// A station written as its file.
func ExampleWriteStation() {
	var b strings.Builder
	err := harmonic.WriteStation(&b, harmonic.Station{Name: "A pier", Datum: tide.LAT, Z0: 3, Constituents: []harmonic.Constituent{{Name: "M2", Amplitude: 2, Lag: 90}}})
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := harmonic.ReadStation(strings.NewReader(b.String()))
	fmt.Println(s.Name, s.Datum, s.Constituents, err)
	// Output: A pier LAT [{M2 2 90}] <nil>
}
