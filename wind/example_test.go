package wind_test

import (
	"fmt"
	"strings"
	"time"

	"followingsea.example/wind"
)

// A forecast is worded in whole knots, and so is the scale.
func ExampleBeaufort() {
	for _, kn := range []float64{16, 17, 33.4, 33.6} {
		f, err := wind.Beaufort(kn * wind.Knot)
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("%.1f kn is %v\n", kn, f)
	}
	// Output:
	// 16.0 kn is force 4, moderate breeze
	// 17.0 kn is force 5, fresh breeze
	// 33.4 kn is force 7, near gale
	// 33.6 kn is force 8, gale
}

// Example Problem II-2-1 of the Coastal Engineering Manual: the strongest
// five-minute wind as a strongest hourly wind.
func ExampleExtremeToExtreme() {
	fmt.Printf("%.1f m/s\n", wind.ExtremeToExtreme(20.3, 300, 3600))
	// Output: 18.6 m/s
}

// A question of the deck officers' examination: course 180 at 22 knots, the
// apparent wind 70 degrees off the port bow at 20 knots.
func ExampleTrueWind() {
	ship := wind.Velocity{North: -22 * wind.Knot}
	apparent, err := wind.New(20*wind.Knot, 180-70)
	if err != nil {
		fmt.Println(err)
		return
	}
	w := wind.TrueWind(apparent, ship)
	fmt.Printf("from %03.0f at %.0f knots\n", w.From, w.Speed/wind.Knot)
	// Output: from 051 at 24 knots
}

// The wind over the water where a tide sets across it: ten knots from north,
// the stream four knots to the east.
func ExampleWind_Relative() {
	w, err := wind.New(10*wind.Knot, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	over := w.Relative(wind.Velocity{East: 4 * wind.Knot})
	fmt.Printf("from %03.0f at %.1f knots\n", over.From, over.Speed/wind.Knot)
	// Output: from 022 at 10.8 knots
}

// The wind from 200 at 20 knots, for a board on a course of 045.
func ExampleWind_On() {
	w, err := wind.New(20*wind.Knot, 200)
	if err != nil {
		fmt.Println(err)
		return
	}
	c := w.On(45)
	fmt.Printf("%.0f kn from astern, %.0f kn from the right, %.0f degrees off the stern\n", c.Tail/wind.Knot, c.FromRight/wind.Knot, c.OffStern)
	// Output: 18 kn from astern, 8 kn from the right, 25 degrees off the stern
}

// Batschelet's bearings on either side of north.
func ExampleMeanDirection() {
	bearings := []float64{340, 350, 350, 350, 350, 350, 350, 350, 0, 0}
	fmt.Printf("%.6f\n", wind.MeanDirection(bearings)-360)
	// Output: -9.000615
}

// From the five metres of a buoy to ten.
func ExampleCharnock_ToHeight() {
	p := wind.Smith1988(15).ToHeight(10, 5, 10)
	fmt.Printf("%.2f m/s at 10 m, drag %.2f e-3\n", p.Speed, 1e3*p.Drag)
	// Output: 10.68 m/s at 10 m, drag 1.33 e-3
}

func ExampleSeaStateOf() {
	s, err := wind.SeaStateOf(1.8)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s)
	// Output: sea state 4, moderate
}

const breeze = `time,wind_speed_kn,wind_from_deg,wind_gust_kn
2026-06-21T09:00:00+02:00,4,090,
2026-06-21T11:00:00+02:00,8,200,
2026-06-21T13:00:00+02:00,16,210,22
2026-06-21T15:00:00+02:00,18,215,25
2026-06-21T17:00:00+02:00,17,220,23
`

// When did the sea breeze set in, and how long has the sea had to grow?
func ExampleSeries_Onset() {
	s, err := wind.ReadSeries(strings.NewReader(breeze), 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	at := time.Date(2026, 6, 21, 16, 0, 0, 0, time.FixedZone("", 7200))
	w, err := s.At(at)
	if err != nil {
		fmt.Println(err)
		return
	}
	on, err := s.Onset(at, 12*wind.Knot)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(w.Wind)
	fmt.Println("past 12 kn since", on.At.In(at.Location()).Format("15:04"), "for", on.Blown)
	// Output:
	// 17.5 kn from 217°, gusts 24.0 kn
	// past 12 kn since 12:00 for 4h0m0s
}

// The wind before, during and after a run.
func ExampleSeries_Around() {
	s, err := wind.ReadSeries(strings.NewReader(breeze), 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	start := time.Date(2026, 6, 21, 13, 0, 0, 0, time.FixedZone("", 7200))
	a, err := s.Around(start, start.Add(2*time.Hour), 3*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range []wind.Mean{a.Before, a.During, a.After} {
		fmt.Printf("%4.1f kn from %03.0f, steadiness %.2f, %3.0f %% covered\n", m.Speed/wind.Knot, m.From, m.Steadiness, 100*m.Covered)
	}
	fmt.Println(a.Settling, "then", a.Lasting)
	// Output:
	// 10.3 kn from 199, steadiness 0.98, 100 % covered
	// 17.0 kn from 213, steadiness 1.00, 100 % covered
	// 17.5 kn from 218, steadiness 1.00,  67 % covered
	// veer of 14° then veer of 5°
}

// A buoy's archive, its winds moved to 10 m and written as wind.csv.
func ExampleReadBuoy() {
	const text = `#YY  MM DD hh mm WDIR WSPD GST  WVHT   DPD   APD MWD   PRES  ATMP  WTMP  DEWP  VIS  TIDE
#yr  mo dy hr mn degT m/s  m/s     m   sec   sec degT   hPa  degC  degC  degC   mi    ft
2020 12 31 23 50 151  3.8  4.4  1.60  7.69  5.50 110 1020.4  17.6  15.0  17.6 99.0 99.00
2021 01 01 00 50 999 99.0 99.0  1.65  8.33  5.64 103 1020.0  17.0  15.0  17.0 99.0 99.00
2021 01 01 01 50 147  4.4  4.0  1.58  8.33  5.60 104 1020.0  17.3  15.1  17.3 99.0 99.00
`
	rec, err := wind.ReadBuoy(strings.NewReader(text))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, r := range rec.Remarks {
		fmt.Println(r)
	}
	s, err := rec.Winds(4, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range s.Samples() {
		fmt.Printf("%s %.1f m/s from %.0f, air %.1f K warmer than the water\n", x.Time.Format(time.RFC3339), x.Speed, x.From, x.AirMinusWater())
	}
	// Output:
	// gust dropped: it was below the mean: 1 rows, 2021-01-01T01:50:00Z to 2021-01-01T01:50:00Z
	// 2020-12-31T23:50:00Z 4.1 m/s from 151, air 2.6 K warmer than the water
	// 2021-01-01T01:50:00Z 4.7 m/s from 147, air 2.2 K warmer than the water
}

// Two swells, one of them arriving.
func ExampleReadSwells() {
	s, err := wind.ReadSwells(strings.NewReader(`time,system,swell_height_m,swell_period_s,swell_from_deg
2026-06-21T00:00:00Z,west,1.2,14,270
2026-06-21T12:00:00Z,west,0.8,12,275
2026-06-21T00:00:00Z,south,0,,
2026-06-21T12:00:00Z,south,1.0,17,190
`), 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	now, err := s.At(time.Date(2026, 6, 21, 6, 0, 0, 0, time.UTC))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range now {
		fmt.Printf("%.1f m, %.0f s from %.0f\n", x.Hs, x.Tp, x.From)
	}
	// Output:
	// 1.0 m, 13 s from 272
	// 0.5 m, 17 s from 190
}

func ExampleWriteSeries() {
	w, err := wind.Gusting(8, 11, 225)
	if err != nil {
		fmt.Println(err)
		return
	}
	s, err := wind.NewSeries([]wind.Sample{
		{Time: time.Date(2026, 6, 21, 6, 0, 0, 0, time.UTC), Wind: wind.Calm()},
		{Time: time.Date(2026, 6, 21, 7, 0, 0, 0, time.UTC), Wind: w, Air: wind.Celsius(17.5)},
	}, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	var out strings.Builder
	if err := wind.WriteSeries(&out, s); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Print(strings.ReplaceAll(out.String(), "\r\n", "\n")) // lines end as RFC 4180 wants
	// Output:
	// time,wind_speed_m_s,wind_from_deg,wind_gust_m_s,air_temperature_c
	// 2026-06-21T06:00:00Z,0,,,
	// 2026-06-21T07:00:00Z,8,225,11,17.5
}
