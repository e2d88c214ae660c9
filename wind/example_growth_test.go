package wind_test

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/wind"
)

// A forecaster's reading of the deep-water nomogram: 40 knots over 150 nautical miles for 24
// hours gave 18.7 ft at 9.6 s. The law behind the nomogram:
func ExampleGrow() {
	sea := wind.Grow(wind.Bretschneider, wind.Conditions{
		Speed:     40 * wind.Knot,
		Fetch:     150 * wind.NauticalMile,
		Duration:  24 * 3600,
		MeanDepth: math.Inf(1),
	})
	fmt.Printf("%.1f ft, T1/3 %.1f s, limited by %v\n", sea.Hs/wind.Foot, sea.SignificantPeriod(), sea.Limit)
	// Output: 18.4 ft, T1/3 9.5 s, limited by fetch
}

// The ACES User's Guide, Example 1: an adjusted wind of 67.92 mph over 26 miles of water 13 ft
// deep gives 4.23 ft and 4.77 s.
func ExampleAsPublished() {
	sea := wind.AsPublished(wind.ACESAdjusted, wind.Conditions{
		Speed:     67.92 * wind.MileAnHour,
		Fetch:     26 * wind.StatuteMile,
		Duration:  3 * 3600,
		MeanDepth: 13 * wind.Foot,
	})
	fmt.Printf("%.2f ft, %.2f s\n", sea.Hs/wind.Foot, sea.Tp)
	// Output: 4.23 ft, 4.77 s
}

// The ACES User's Guide, Example 3: on a long lake the waves of a wind from 125 degrees come
// from 93, along 26.61 miles, 7.80 ft and 5.74 s.
func ExampleRestrictedFetch() {
	lengths := []float64{3.7, 12.3, 13.4, 12.2, 13.2, 36.0, 35.6, 28.7, 26.8, 13.0, 10.4, 10.1, 6.4, 5.7}
	for i := range lengths {
		lengths[i] *= wind.StatuteMile
	}
	lake, err := wind.Radials(0, 12, lengths...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fetch, from := wind.RestrictedFetch(lake, 125)
	fmt.Printf("%.2f miles from %.0f degrees; straight up the wind %.1f\n", fetch/wind.StatuteMile, from, lake(125)/wind.StatuteMile)

	sea := wind.GrowRestricted(lake, wind.Conditions{Speed: 44 * wind.MileAnHour, From: 125, Duration: 5 * 3600, MeanDepth: math.Inf(1)})
	fmt.Printf("%.2f ft, %.2f s, from %.0f degrees\n", sea.Hs/wind.Foot, sea.Tp, sea.From)
	// Output:
	// 26.61 miles from 93 degrees; straight up the wind 10.3
	// 7.80 ft, 5.74 s, from 93 degrees
}

// How sure is a wave height? The laws that measurements cannot tell apart, for 20 knots over
// 10 km of water 6 m deep, and for a wind 10 % stronger than forecast.
func ExampleBand() {
	c := wind.Conditions{Speed: 20 * wind.Knot, Fetch: 10e3, Duration: math.Inf(1), MeanDepth: 6}
	b := wind.Band(c)
	fmt.Printf("%.2f to %.2f m, %.1f to %.1f s\n", b.LowHs, b.HighHs, b.LowTp, b.HighTp)
	c.Speed *= 1.1
	fmt.Printf("%.2f m, not %.2f\n", wind.Grow(nil, c).Hs, b.Seas[0].Hs)
	// Output:
	// 0.48 to 0.65 m, 3.0 to 3.0 s
	// 0.65 m, not 0.59
}

// A wind that rises to 24 knots through the day, over a bay of 12 km and over the open
// sea: on the open coast the waves are longer, and outrun a board that the bay's would carry.
func ExampleHindcast() {
	start := time.Date(2026, 6, 21, 6, 0, 0, 0, time.UTC)
	var samples []wind.Sample
	for i, knots := range []float64{6, 8, 11, 15, 18, 20, 22, 24, 24} {
		samples = append(samples, wind.Sample{Time: start.Add(time.Duration(i) * time.Hour), Wind: wind.Wind{Speed: knots * wind.Knot, From: 200}})
	}
	forecast, err := wind.NewSeries(samples, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	bay := wind.Hindcast{Fetch: func(from float64) float64 { return 12e3 }}
	open := wind.Hindcast{Fetch: func(from float64) float64 { return math.Inf(1) }}
	for _, h := range []int{3, 6, 8} {
		t := start.Add(time.Duration(h) * time.Hour)
		a, err := bay.Run(forecast, t)
		if err != nil {
			fmt.Println(err)
			return
		}
		b, err := open.Run(forecast, t)
		if err != nil {
			fmt.Println(err)
			return
		}
		speed := func(s wind.State) float64 { return wind.Gravity * s.Tp() / (2 * math.Pi) / wind.Knot }
		fmt.Printf("%s bay %.1f m at %.0f kn (%v), open %.1f m at %.0f kn (%v)\n", t.Format("15:04"),
			a[0].Hs(), speed(a[0]), a[0].Sea.Limit, b[0].Hs(), speed(b[0]), b[0].Sea.Limit)
	}
	// Output:
	// 09:00 bay 0.4 m at 8 kn (duration), open 0.4 m at 8 kn (duration)
	// 12:00 bay 0.8 m at 11 kn (fetch), open 1.0 m at 13 kn (duration)
	// 14:00 bay 0.9 m at 12 kn (fetch), open 1.4 m at 15 kn (duration)
}

// Turning by 60 degrees, three partitions of the same wind speed: what follows, what is left
// as old sea, and what the two make together.
func ExampleStepper() {
	h := wind.Hindcast{Fetch: func(float64) float64 { return 100e3 }}
	s := h.Stepper()
	s.Steady(wind.Wind{Speed: 11, From: 200}, 4*3600)
	for range 3 {
		s.Steady(wind.Wind{Speed: 11, From: 260}, 1800)
		now := s.State()
		fmt.Printf("wind sea %.1f m from %.0f, old sea %.1f m of %.1f s, together %.1f m\n", now.Sea.Hs, now.Sea.From, now.Old.Hs, now.Old.Tp, now.Hs())
	}
	// Output:
	// wind sea 1.1 m from 212, old sea 0.8 m of 4.7 s, together 1.3 m
	// wind sea 1.1 m from 221, old sea 0.8 m of 4.7 s, together 1.4 m
	// wind sea 1.1 m from 229, old sea 0.9 m of 4.6 s, together 1.4 m
}
