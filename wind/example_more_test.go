package wind_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"time"

	"followingsea.example/wind"
)

// squallyDay is a made-up forecast: a lull at noon, a front with a squall in the afternoon, in steps of five minutes.
func squallyDay() (wind.Series, error) {
	start := time.Date(2026, 6, 21, 9, 0, 0, 0, time.UTC)
	var samples []wind.Sample
	for i := range 97 {
		t, w := start.Add(time.Duration(i)*5*time.Minute), wind.Wind{Speed: 7, From: 210}
		switch h := t.Hour(); {
		case h == 12:
			w.Speed = 4
		case h == 14 && t.Minute() < 30:
			w.Speed = 16
			w.From = 280
		case h >= 14:
			w.From = 280
		}
		samples = append(samples, wind.Sample{Time: t, Wind: w})
	}
	return wind.NewSeries(samples, 0)
}

// When it blew enough, when it did not, and for how long: spells and lulls, with their ends between the samples.
func ExampleSeries_Spells() {
	s, err := squallyDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	spells, err := s.Spells(6)
	if err != nil {
		fmt.Println(err)
		return
	}
	lulls, err := s.Lulls(6, 30*time.Minute)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range append(spells, lulls...) {
		var span wind.Span = x.Span
		fmt.Printf("%s to %s, %.1f m/s at the extreme\n", span.Start.Format("15:04"), span.End.Format("15:04"), x.Extreme)
	}
	// Output:
	// 09:00 to 11:56, 7.0 m/s at the extreme
	// 12:58 to 17:00, 16.0 m/s at the extreme
	// 11:56 to 12:58, 4.0 m/s at the extreme
}

// The published definitions of a shift and of a squall, found in a record fine enough to show them.
func ExampleSeries_Shifts() {
	s, err := squallyDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	shifts, err := s.Shifts(wind.ShiftRule{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range shifts {
		fmt.Println(x.Start.Format("15:04"), x.Turn)
	}
	squalls, err := s.Squalls(wind.SquallRule{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, x := range squalls {
		fmt.Printf("%s from %.0f to %.0f m/s\n", x.Start.Format("15:04"), x.Before.Speed, x.Peak.Speed)
	}
	// Output:
	// 13:50 veer of 70°
	// 13:55 from 7 to 16 m/s
}

// How long the wind had been constant, by the test of the coastal engineering manuals.
func ExampleSeries_SteadyBefore() {
	s, err := squallyDay()
	if err != nil {
		fmt.Println(err)
		return
	}
	st, err := s.SteadyBefore(time.Date(2026, 6, 21, 13, 55, 0, 0, time.UTC))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("since %s, mean %.1f m/s\n", st.Since.Format("15:04"), st.Mean.Speed)
	// Output: since 13:00, mean 7.0 m/s
}

// Which way a wind turned, and how far.
func ExampleTurnOf() {
	for _, to := range []float64{300, 200} {
		t := wind.TurnOf(wind.Wind{Speed: 8, From: 250}, wind.Wind{Speed: 8, From: to})
		fmt.Println(t, t.Kind == wind.Veer)
	}
	// Output:
	// veer of 50° true
	// back of 50° false
}

// A table of fetches by direction; between its rows it is linear, and open sea is open.
func ExampleReadFetches() {
	f, err := wind.ReadFetches(strings.NewReader("wind_from_deg,fetch_km,mean_depth_m\n0,12,8\n90,30,15\n180,,40\n270,6,5\n"))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.0f km, %.1f m deep\n", f.Fetch(45)/1000, f.MeanDepth(45))
	fmt.Println(f.Fetch(170), len(f.Rows()))
	// Output:
	// 21 km, 11.5 m deep
	// +Inf 4
}

// An error says where it is, and can be asked.
func ExampleReadError() {
	_, err := wind.ReadFetches(strings.NewReader("wind_from_deg,fetch_km\n400,12\n"))
	var where *wind.ReadError
	if errors.As(err, &where) {
		fmt.Println(where.Line, where.Column)
	}
	fmt.Println(errors.Is(err, wind.ErrRead))
	// Output:
	// 2 wind_from_deg
	// true
}

// The lee of an island by somebody who knows it: six tenths of the forecast, and the band they would bet on. The gusts stay.
func ExampleExposure_On() {
	lee, err := wind.NewExposure(0.4, 0.6, 0.8)
	if err != nil {
		fmt.Println(err)
		return
	}
	w, err := wind.Gusting(10, 14, 240)
	if err != nil {
		fmt.Println(err)
		return
	}
	x := lee.On(w)
	fmt.Printf("%.0f m/s (%.0f to %.0f), gusts %.0f\n", x.Mid.Speed, x.Low.Speed, x.High.Speed, x.Mid.Gust)
	// Output: 6 m/s (4 to 8), gusts 14
}

// The thin top of the water goes with the wind at 2 to 3 % of it.
func ExampleSurfaceDrift() {
	d := wind.SurfaceDrift(wind.Wind{Speed: 10, From: 270})
	fmt.Printf("%.2f to %.2f m/s to the east\n", d.Low.East, d.High.East)
	// Output: 0.20 to 0.30 m/s to the east
}

// Wu's drag law as printed, 0.8 + 0.065 U, and what a mast of 5 m reads at 10.
func ExampleToHeight() {
	var law wind.DragLaw = wind.Wu1982
	fmt.Printf("%.3f\n", 1000*law(15))
	fmt.Printf("%.2f m/s\n", wind.ToHeight(10, 5, 10, law).Speed)
	// Output:
	// 1.775
	// 10.72 m/s
}

// The speed of the dominant waves that the guidance to shipmasters prints for a sea of 2 m: 17 to 23 knots on coasts.
func ExampleDominantSpeed() {
	coastal, _ := wind.DominantSpeed(2)
	fmt.Printf("%.0f to %.0f kn\n", coastal.Low/wind.Knot, coastal.High/wind.Knot)
	// Output: 17 to 23 kn
}

// Which warnings a wind of 25 knots would raise; where a gust that is not known could raise one, nobody can say.
func ExampleWarningLevel_Reached() {
	w, err := wind.New(25*wind.Knot, 250)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, l := range wind.WarningLevels() {
		reached, known := l.Reached(w)
		if reached || !known {
			fmt.Println(l.Name, reached, known)
		}
	}
	// Output:
	// gale false false
	// severe gale false false
	// storm false false
	// violent storm false false
	// small craft advisory true true
	// small craft advisory true true
	// small craft advisory true true
	// small craft advisory true true
	// small craft advisory true true
	// small craft advisory true true
	// small craft advisory true true
}

// Two swells through time, made by hand.
func ExampleNewSwells() {
	noon := time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)
	west, err := wind.NewSwellSystem("west", []wind.SwellSample{
		{Time: noon, Swell: wind.Swell{Hs: 1.0, Tp: 12, From: 260}},
		{Time: noon.Add(6 * time.Hour), Swell: wind.Swell{Hs: 1.4, Tp: 11, From: 264}},
	}, 0)
	if err != nil {
		fmt.Println(err)
		return
	}
	all, err := wind.NewSwells(west)
	if err != nil {
		fmt.Println(err)
		return
	}
	now, err := all.At(noon.Add(3 * time.Hour))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.1f m, %.1f s from %.0f\n", now[0].Hs, now[0].Tp, now[0].From)
	// Output: 1.2 m, 11.5 s from 263
}

// A law tells its bounds, and a sea how far it was stretched.
func ExampleLaw() {
	limits := wind.JONSWAP.Limits(10)
	fmt.Printf("g Hs/U² at most %.2f\n", limits.Height)
	s := wind.Grow(wind.JONSWAP, wind.Conditions{Speed: 10, Fetch: 50, Duration: math.Inf(1), MeanDepth: math.Inf(1)})
	fmt.Println(s.Remarks)
	// Output:
	// g Hs/U² at most 0.24
	// fetch shorter than the law is meant for
}

// What the reader of buoy records set aside: a frozen anemometer's zeros.
func ExampleBuoyRemark() {
	text := "#YY  MM DD hh mm WDIR WSPD GST  WVHT   DPD   APD MWD   PRES  ATMP  WTMP  DEWP  VIS  TIDE\n#yr  mo dy hr mn degT m/s  m/s     m   sec   sec degT   hPa  degC  degC  degC   mi    ft\n"
	for h := range 6 {
		text += fmt.Sprintf("2026 01 01 %02d 00  0  0.0  0.0  1.20  6.00  4.50 270 1013.0   5.0   6.0 999.0 99.0 99.00\n", h)
	}
	b, err := wind.ReadBuoy(strings.NewReader(text))
	if err != nil {
		fmt.Println(err)
		return
	}
	var row wind.BuoyRow = b.Rows[0]
	fmt.Println(row.HasWind, row.Hs)
	for _, r := range b.Remarks {
		fmt.Println(r.Kind == wind.FrozenAnemometer, r.Rows)
	}
	// Output:
	// false 1.2
	// true 6
}
