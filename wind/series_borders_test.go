package wind_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/wind"
)

// TestGapsOnTheBorder: a step as long as the gap is interpolated across, one that is longer by a nanosecond is not.
func TestGapsOnTheBorder(t *testing.T) {
	s := series(t, time.Hour, [3]float64{0, 4, 0}, [3]float64{1, 6, 0})
	if x, err := s.At(at(0.5)); err != nil || x.Speed != 5 || len(s.Gaps()) != 0 {
		t.Errorf("as long: %v, %v, gaps %v", x, err, s.Gaps())
	}
	s = series(t, time.Hour-1, [3]float64{0, 4, 0}, [3]float64{1, 6, 0})
	if _, err := s.At(at(0.5)); !errors.Is(err, wind.ErrGap) || len(s.Gaps()) != 1 {
		t.Errorf("longer: %v, gaps %v", err, s.Gaps())
	}
	swell := wind.Swell{Hs: 1, Tp: 10, From: 90}
	for hours, want := range map[float64]error{12: nil, 12.001: wind.ErrGap} {
		sys, err := wind.NewSwellSystem("s", []wind.SwellSample{{Time: at(0), Swell: swell}, {Time: at(hours), Swell: swell}}, 0)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := sys.At(at(6)); !errors.Is(err, want) {
			t.Errorf("swells %v h apart: %v", hours, err)
		}
		for _, h := range []float64{0, hours} {
			if got, err := sys.At(at(h)); err != nil || got != swell {
				t.Errorf("swell at its own time %v h: %v, %v", h, got, err)
			}
		}
		for _, h := range []float64{-1e-6, hours + 1e-6} {
			if _, err := sys.At(at(h)); !errors.Is(err, wind.ErrOutside) {
				t.Errorf("swell at %v h: %v", h, err)
			}
		}
	}
}

// TestUsualGap: three hours, or one and a half times the median step if that is more; one sample has no step.
func TestUsualGap(t *testing.T) {
	for _, c := range []struct {
		hours []float64
		want  time.Duration
	}{
		{[]float64{0}, 3 * time.Hour},
		{[]float64{0, 1, 2, 3}, 3 * time.Hour},
		{[]float64{0, 2}, 3 * time.Hour},
		{[]float64{0, 3}, 270 * time.Minute},
		{[]float64{0, 1, 5, 13}, 6 * time.Hour},             // of 1, 4 and 8 hours the 4
		{[]float64{0, 6, 12, 12.5, 18, 100}, 9 * time.Hour}, // of ½, 5½, 6, 6 and 82 the 6
	} {
		var rows [][3]float64
		for _, h := range c.hours {
			rows = append(rows, [3]float64{h, 5, 0})
		}
		if got := series(t, 0, rows...).Gap(); got != c.want {
			t.Errorf("%v: %v, want %v", c.hours, got, c.want)
		}
	}
}

// TestTemperaturesThroughTime: air and water are interpolated as numbers where both sides have them.
func TestTemperaturesThroughTime(t *testing.T) {
	s, err := wind.NewSeries([]wind.Sample{
		{Time: at(0), Air: wind.Celsius(10), Water: wind.Celsius(4)},
		{Time: at(2), Air: wind.Celsius(20), Water: wind.Celsius(8)},
		{Time: at(4), Air: wind.Celsius(30)},
	}, 0)
	if err != nil {
		t.Fatal(err)
	}
	if x, err := s.At(at(0.5)); err != nil || x.Air.Celsius() != 12.5 || x.Water.Celsius() != 5 {
		t.Errorf("%v, %v, %v", x.Air, x.Water, err)
	}
	if x, err := s.At(at(3)); err != nil || x.Air.Celsius() != 25 || x.Water.Known() {
		t.Errorf("%v, %v, %v", x.Air, x.Water, err)
	}
	e := wind.Interpolate(wind.Wind{Speed: 4, Gust: 6, From: 90}, wind.Wind{Speed: 8, Gust: 14, From: 90}, 0.25)
	if !near(e.Speed, 5, 1e-12) || !near(e.Gust, 8, 1e-12) || !near(e.From, 90, 1e-12) {
		t.Errorf("a quarter of the way: %v", e)
	}
	if e := wind.Interpolate(wind.Wind{Speed: 4, Gust: 6, From: 90}, wind.Wind{Speed: 8, From: 90}, 0.25); e.GustKnown() {
		t.Errorf("a gust at one end: %v", e)
	}
}

// TestMeanLeavesOutWhatStandsAlone: a sample with a gap on either side stands for no time at all, and counts neither in the mean
// nor in its extremes. One with a gap on one side counts for half the step on the other.
func TestMeanLeavesOutWhatStandsAlone(t *testing.T) {
	s := series(t, time.Hour, [3]float64{0, 4, 90}, [3]float64{1, 8, 90}, [3]float64{4, 30, 0}, [3]float64{8, 6, 90}, [3]float64{9, 6, 90})
	m, err := s.Mean(at(0), at(9))
	if err != nil || m.N != 4 || m.Highest != 8 || m.Lowest != 4 || !near(m.Speed, 6, 1e-12) || !near(m.Covered, 2.0/9, 1e-12) {
		t.Errorf("%+v, %v", m, err)
	}
	if m, err := s.Mean(at(4), at(4)); err != nil || m.Speed != 30 || m.N != 1 {
		t.Errorf("at the instant: %+v, %v", m, err)
	}
	gusts := wind.Average([]wind.Wind{{Speed: 5, Gust: 9}, {Speed: 6, Gust: 12}, {Speed: 7, Gust: 8}, {Speed: 1}})
	if gusts.Gust != 12 || gusts.Lowest != 1 || gusts.Highest != 7 {
		t.Errorf("%+v", gusts)
	}
}

// TestAroundReachesToTheRecord: a margin that begins or ends where the record does uses all of it.
func TestAroundReachesToTheRecord(t *testing.T) {
	s := series(t, 2*time.Hour, [3]float64{0, 2, 90}, [3]float64{2, 4, 90}, [3]float64{4, 6, 90}, [3]float64{6, 8, 90})
	a, err := s.Around(at(2), at(4), 2*time.Hour)
	if err != nil || a.Before.Speed != 3 || a.During.Speed != 5 || a.After.Speed != 7 || a.Before.Covered != 1 || a.After.Covered != 1 || a.Settling.Kind != wind.NoTurn {
		t.Errorf("%+v, %v", a, err)
	}
	a, err = s.Around(at(2), at(4), 8*time.Hour) // a quarter of each margin has a record
	if err != nil || a.Before.Speed != 3 || a.After.Speed != 7 || !near(a.Before.Covered, 0.25, 1e-12) || !near(a.After.Covered, 0.25, 1e-12) {
		t.Errorf("%+v, %v", a, err)
	}
	a, err = s.Around(at(0), at(6), time.Hour) // nothing on either side
	if err != nil || a.Before.N != 0 || a.After.N != 0 || a.Before.Covered != 0 || !math.IsNaN(a.Before.Speed) || a.Settling.Kind != wind.Undefined {
		t.Errorf("%+v, %v", a, err)
	}
	a, err = s.Around(at(2), at(4), 0)
	if err != nil || a.Before.N != 0 || a.After.N != 0 {
		t.Errorf("no margin: %+v, %v", a, err)
	}
}

// TestSteadyOnTheBorders: of a constant wind the manual wants deviations of less than 2.5 m/s and 15° (memory) from those that
// belong already.
func TestSteadyOnTheBorders(t *testing.T) {
	for _, c := range []struct {
		name        string
		speed, from float64 // of the sample before one of 8 m/s from 90
		want        int
	}{
		{"2.5 m/s less", 5.5, 90, 1}, {"not quite", 5.51, 90, 2}, {"2.5 m/s more", 10.5, 90, 1}, {"not quite more", 10.49, 90, 2},
		{"15° to the right", 8, 105, 1}, {"not quite right", 8, 104.9, 2}, {"15° to the left", 8, 75, 1}, {"not quite left", 8, 75.1, 2},
		{"a calm", 0, 0, 1},
	} {
		s := series(t, 0, [3]float64{0, c.speed, c.from}, [3]float64{1, 8, 90})
		got, err := s.SteadyBefore(at(1))
		if err != nil || got.Mean.N != c.want || got.ToStart != (c.want == 2) || got.For != time.Duration(c.want-1)*time.Hour {
			t.Errorf("%s: %+v, %v", c.name, got, err)
		}
	}
}

// TestSpellsOnTheBorders: a wind of just the level is in a spell, and a lull of just the length counts.
func TestSpellsOnTheBorders(t *testing.T) {
	s := series(t, 0, [3]float64{0, 6, 90}, [3]float64{1, 5, 90}, [3]float64{2, 6, 90}, [3]float64{3, 5, 90}, [3]float64{5, 3, 90}, [3]float64{7, 5, 90})
	spells, err := s.Spells(6)
	if err != nil || len(spells) != 2 || spells[0].Begins || !spells[0].Ends || spells[1].For() != 0 || !spells[1].Begins || !spells[1].Start.Equal(at(2)) || spells[1].Extreme != 6 {
		t.Errorf("%+v, %v", spells, err)
	}
	lulls, err := s.Lulls(5, 4*time.Hour)
	if err != nil || len(lulls) != 1 || !lulls[0].Start.Equal(at(3)) || !lulls[0].End.Equal(at(7)) || lulls[0].Extreme != 3 {
		t.Errorf("%+v, %v", lulls, err)
	}
	if lulls, err := s.Lulls(5, 4*time.Hour+1); err != nil || len(lulls) != 0 {
		t.Errorf("%+v, %v", lulls, err)
	}
	// The extremes of a stretch of many samples, in the first, a middle and the last.
	for k := range 3 {
		rows := [][3]float64{{0, 7, 90}, {1, 7, 90}, {2, 7, 90}}
		rows[k][1] = 9
		spells, err := series(t, 0, rows...).Spells(6)
		if err != nil || len(spells) != 1 || spells[0].Extreme != 9 {
			t.Errorf("highest in sample %d: %+v, %v", k, spells, err)
		}
		rows[k][1] = 2
		lulls, err := series(t, 0, rows...).Lulls(8, 0)
		if err != nil || len(lulls) != 1 || lulls[0].Extreme != 2 {
			t.Errorf("lowest in sample %d: %+v, %v", k, lulls, err)
		}
	}
}

// TestOnsetOnTheBorders: the wind set in where it rose past the level, be the instant asked about on a sample or between two,
// and no wind that only reaches the level was below it.
func TestOnsetOnTheBorders(t *testing.T) {
	s := series(t, 2*time.Hour, [3]float64{0, 2, 90}, [3]float64{1, 4, 90}, [3]float64{2, 8, 90}, [3]float64{3, 6, 90}, [3]float64{4, 8, 90}, [3]float64{10, 7, 90}, [3]float64{11, 9, 90})
	for _, c := range []struct {
		at, level, onset float64
		earlier          bool
	}{
		{1.5, 5, 1.25, false}, // before the next sample
		{2, 5, 1.25, false}, {2.5, 6, 1.5, false},
		{4, 6, 1.5, false}, // touches the level at 3 h
		{4, 2, 0, true}, {11, 7, 10, true}, {10, 5, 10, true}, {1, 4, 1, false},
	} {
		o, err := s.Onset(at(c.at), c.level)
		if err != nil || !o.At.Equal(at(c.onset)) || o.Blown != at(c.at).Sub(at(c.onset)) || o.Earlier != c.earlier {
			t.Errorf("%v m/s at %v h: %+v, %v", c.level, c.at, o, err)
		}
	}
}

// TestShiftsOnTheBorders: of the turns from a sample the greatest is the shift, the first of equal ones; the next may begin where
// it ended; and a gap hides one.
func TestShiftsOnTheBorders(t *testing.T) {
	s := minutes(t, [3]float64{0, 12, 0}, [3]float64{4, 12, 50}, [3]float64{8, 12, 60}, [3]float64{12, 12, 60}, [3]float64{16, 12, 110})
	got, err := s.Shifts(wind.ShiftRule{})
	if err != nil || len(got) != 2 || !got[0].End.Equal(at(8.0/60)) || got[0].Turn.Degrees != 60 || !got[1].Start.Equal(at(8.0/60)) || got[1].Turn.Degrees != 50 {
		t.Errorf("%+v, %v", got, err)
	}
	var rows [][3]float64
	for m := 0.0; m < 60; m += 5 {
		if m != 30 && m != 35 {
			rows = append(rows, [3]float64{m / 60, 8, 100 + 60*math.Floor(m/32)})
		}
	}
	for gap, want := range map[time.Duration]int{14 * time.Minute: 0, 15 * time.Minute: 1} {
		if got, err := series(t, gap, rows...).Shifts(wind.ShiftRule{Within: 16 * time.Minute}); err != nil || len(got) != want {
			t.Errorf("gap %v: %+v, %v", gap, got, err)
		}
	}
	if got, err := s.Shifts(wind.ShiftRule{Degrees: 60}); err != nil || len(got) != 1 {
		t.Errorf("60 degrees: %+v, %v", got, err)
	}
	light := minutes(t, [3]float64{0, 1, 0}, [3]float64{5, 1, 50})
	if got, err := light.Shifts(wind.ShiftRule{Speed: -1}); err != nil || len(got) != 1 {
		t.Errorf("any speed: %+v, %v", got, err)
	}
	// The first sample, too, has to blow.
	if got, err := minutes(t, [3]float64{0, 9.9, 0}, [3]float64{5, 12, 50}).Shifts(wind.ShiftRule{}); err != nil || len(got) != 0 {
		t.Errorf("9.9 kn before: %+v, %v", got, err)
	}
}

// TestSquallsOnTheBorders: a rise within less than the time given counts from the last of its lowest samples, the squall ends with
// the last sample at its height, and a gap ends it and hides its rise.
func TestSquallsOnTheBorders(t *testing.T) {
	minutes := func(gap time.Duration, rows ...[2]float64) wind.Series {
		var in [][3]float64
		for _, r := range rows {
			in = append(in, [3]float64{r[0] / 60, r[1], 200})
		}
		return series(t, gap, in...)
	}
	for _, c := range []struct {
		name           string
		s              wind.Series
		rule           wind.SquallRule
		from, to, peak float64 // minutes and m/s, no squall if the peak is 0
	}{
		{"in 15 minutes", minutes(time.Hour, [2]float64{0, 3}, [2]float64{5, 5}, [2]float64{10, 8}, [2]float64{15, 11}), wind.SquallRule{}, 0, 0, 0},
		{"in less", minutes(time.Hour, [2]float64{0, 3}, [2]float64{5, 5}, [2]float64{10, 8}, [2]float64{14.9, 11}), wind.SquallRule{}, 0, 14.9, 11},
		{"from the last of the lowest", minutes(time.Hour, [2]float64{0, 3}, [2]float64{4, 3}, [2]float64{8, 4}, [2]float64{12, 12}), wind.SquallRule{}, 4, 12, 12},
		{"from a lower one", minutes(time.Hour, [2]float64{0, 3}, [2]float64{4, 2}, [2]float64{8, 12}), wind.SquallRule{}, 4, 8, 12},
		{"its strongest", minutes(time.Hour, [2]float64{0, 3}, [2]float64{4, 12}, [2]float64{8, 15}, [2]float64{12, 13}, [2]float64{16, 10}), wind.SquallRule{}, 0, 12, 15},
		{"up to a gap", minutes(10*time.Minute, [2]float64{0, 3}, [2]float64{4, 12}, [2]float64{20, 15}, [2]float64{24, 13}), wind.SquallRule{}, 0, 4, 12},
		{"a rise in a gap", minutes(5*time.Minute, [2]float64{0, 3}, [2]float64{4, 3}, [2]float64{12, 12}, [2]float64{16, 12}), wind.SquallRule{}, 0, 0, 0},
		{"lasts long enough", minutes(time.Hour, [2]float64{0, 3}, [2]float64{4, 12}, [2]float64{8, 12}, [2]float64{12, 3}), wind.SquallRule{Last: 5 * time.Minute}, 0, 8, 12},
		{"not quite", minutes(time.Hour, [2]float64{0, 3}, [2]float64{4, 12}, [2]float64{8, 12}, [2]float64{12, 3}), wind.SquallRule{Last: 5*time.Minute + 1}, 0, 0, 0},
		{"one minute", minutes(time.Hour, [2]float64{0, 3}, [2]float64{4, 12}, [2]float64{8, 3}), wind.SquallRule{Last: time.Minute}, 0, 4, 12},
		{"the smallest rise", minutes(time.Hour, [2]float64{0, 5}, [2]float64{4, 7}, [2]float64{8, 5}), wind.SquallRule{Rise: 2, To: 7}, 0, 4, 7},
	} {
		got, err := c.s.Squalls(c.rule)
		switch {
		case err != nil || len(got) > 1 || (len(got) == 1) != (c.peak > 0):
			t.Errorf("%s: %+v, %v", c.name, got, err)
		case c.peak > 0 && (!got[0].Start.Equal(at(c.from/60)) || !got[0].End.Equal(at(c.to/60)) || got[0].Peak.Speed != c.peak):
			t.Errorf("%s: %+v", c.name, got[0])
		}
	}
}

// TestErrorsNameTheRow: an error of a table names the line that is at fault and of the one it collides with, and of a list the
// radial, counted from 1.
func TestErrorsNameTheRow(t *testing.T) {
	swells := "time,system,swell_height_m,swell_period_s,swell_from_deg\n2026-06-21T00:00:00Z,a,1,10,90\n2026-06-21T00:00:00Z,b,1,10,90\n2026-06-21T01:00:00Z,a,1,10,90\n2026-06-21T00:00:00Z,a,1,10,90\n"
	_, twice := wind.ReadSwells(strings.NewReader(swells), 0)
	_, radials := wind.Radials(0, 10, 1, 2, -3)
	_, order := wind.ReadSeries(strings.NewReader("time,wind_speed_kn,wind_from_deg\n2026-06-21T06:00:00Z,1,2\n\n2026-06-21T05:00:00Z,1,2\n"), 0)
	_, empty := wind.ReadSwells(strings.NewReader("time,swell_height_m,swell_period_s,swell_from_deg\n2026-06-21T00:00:00Z,,,\n"), 0)
	for name, c := range map[string]struct {
		err  error
		want []string
	}{
		"a swell twice": {twice, []string{"line 5: column time", "line 2 has this one"}},
		"a radial":      {radials, []string{"length 3 is -3"}},
		"order":         {order, []string{"line 4: column time"}},
		"no swell":      {empty, []string{"no samples"}},
	} {
		for _, want := range c.want {
			if c.err == nil || !strings.Contains(c.err.Error(), want) {
				t.Errorf("%s: %v, want %q in it", name, c.err, want)
			}
		}
	}
}

// TestTablesOfTheLargestSize: a thousand systems of swell and 36,000 directions of fetch are read, not one more.
func TestTablesOfTheLargestSize(t *testing.T) {
	var swells, fetches strings.Builder
	swells.WriteString("time,system,swell_height_m,swell_period_s,swell_from_deg\n")
	for i := range 1000 {
		fmt.Fprintf(&swells, "2026-06-21T00:00:00Z,s%d,1,10,90\n", i)
	}
	if s, err := wind.ReadSwells(strings.NewReader(swells.String()), 0); err != nil || len(s.Systems()) != 1000 {
		t.Errorf("a thousand: %v", err)
	}
	if _, err := wind.ReadSwells(strings.NewReader(swells.String()+"2026-06-21T00:00:00Z,more,1,10,90\n"), 0); !errors.Is(err, wind.ErrSwell) || !strings.Contains(err.Error(), "at most 1000") {
		t.Errorf("one more: %v", err)
	}
	fetches.WriteString("wind_from_deg,fetch_m\n")
	for i := range 36000 {
		fmt.Fprintf(&fetches, "%d.%02d,1\n", i/100, i%100)
	}
	if f, err := wind.ReadFetches(strings.NewReader(fetches.String())); err != nil || len(f.Rows()) != 36000 {
		t.Errorf("36,000: %v", err)
	}
	if _, err := wind.ReadFetches(strings.NewReader(fetches.String() + "0.005,1\n")); err == nil || !strings.Contains(err.Error(), "at most 36000") {
		t.Errorf("one more: %v", err)
	}
}

// TestSwellThroughTime: height and period are interpolated as numbers, the direction as that of the vector weighted with the energy; a
// swell that falls to nothing keeps its period and direction, and nothing stays nothing.
func TestSwellThroughTime(t *testing.T) {
	nan := math.NaN()
	sys, err := wind.NewSwellSystem("s", []wind.SwellSample{
		{Time: at(0), Swell: wind.Swell{Hs: 1, Tp: 10, From: 340}}, {Time: at(4), Swell: wind.Swell{Hs: 3, Tp: 14, From: 40}},
		{Time: at(8), Swell: wind.Swell{}}, {Time: at(12), Swell: wind.Swell{}}, {Time: at(16), Swell: wind.Swell{Hs: 2, Tp: 12, From: 200}},
	}, 0)
	if err != nil {
		t.Fatal(err)
	}
	// A quarter of the way the energies are 3/4·1 and 1/4·9.
	x := 0.75*math.Cos(rad(-20)) + 2.25*math.Cos(rad(40))
	y := 0.75*math.Sin(rad(-20)) + 2.25*math.Sin(rad(40))
	for hour, want := range map[float64]wind.Swell{
		1: {Hs: 1.5, Tp: 11, From: deg(math.Atan2(y, x))}, 4: {Hs: 3, Tp: 14, From: 40}, 5: {Hs: 2.25, Tp: 14, From: 40}, 8: {Hs: 0, Tp: nan, From: nan},
		10: {Hs: 0, Tp: nan, From: nan}, 13: {Hs: 0.5, Tp: 12, From: 200}, 16: {Hs: 2, Tp: 12, From: 200},
	} {
		got, err := sys.At(at(hour))
		same := func(a, b float64) bool { return near(a, b, 1e-9) || math.IsNaN(a) && math.IsNaN(b) }
		if err != nil || !same(got.Hs, want.Hs) || !same(got.Tp, want.Tp) || !same(got.From, want.From) {
			t.Errorf("at %v h: %+v, want %+v, %v", hour, got, want, err)
		}
	}
	all, err := wind.NewSwells(sys)
	if err != nil {
		t.Fatal(err)
	}
	for hour, want := range map[float64]int{4: 1, 10: 0, 13: 1} {
		if got, err := all.At(at(hour)); err != nil || len(got) != want {
			t.Errorf("at %v h: %v, %v", hour, got, err)
		}
	}
}
