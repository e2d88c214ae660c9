package route_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

func TestSightPrintsItsCaution(t *testing.T) {
	s := route.SightRange(1.7, 0.5)
	if !strings.Contains(s.String(), route.SightCaution) {
		t.Errorf("%q does not carry the caution", s)
	}
	rapid.Check(t, func(t *rapid.T) {
		h := draw(t, "height", 0, 100)
		near(t, "fourfold height", route.Horizon(4*h), 2*route.Horizon(h), 1e-9*route.Horizon(4*h))
		near(t, "the two forms", route.HorizonRefracted(h, 0.8279), route.Horizon(h), 0.0011*route.Horizon(h))
		near(t, "to and fro", route.SightRange(h, 2).Range, route.SightRange(2, h).Range, 1e-9)
		if !(route.HorizonRefracted(h+1, 1) < route.HorizonRefracted(h+1, 0.8)) {
			t.Fatal("refraction does not lift the horizon")
		}
	})
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		if !math.IsNaN(route.Horizon(bad)) || !math.IsNaN(route.HorizonRefracted(bad, 1)) || !math.IsNaN(route.HorizonRefracted(1, bad)) ||
			!math.IsNaN(route.Dip(bad)) || !math.IsNaN(route.SightRange(bad, 1).Range) || !math.IsNaN(route.SightRange(1, bad).Range) {
			t.Errorf("height %v: want NaN", bad)
		}
	}
}

// TestSweepRows: the widths grow with visibility and with the height of the
// eye, and the lookup gives back the printed cells.
func TestSweepRows(t *testing.T) {
	rows, cols := route.SweepRows(), route.SweepVisibility()
	byName := map[string][]route.SweepRow{}
	for _, r := range rows {
		byName[r.Target] = append(byName[r.Target], r)
		for k, w := range r.Width {
			if k > 0 && !(w >= r.Width[k-1]) {
				t.Errorf("%s: narrower at %v m", r.Target, cols[k])
			}
			got, err := route.SweepWidth(r.Target, r.Eye, cols[k])
			if err != nil {
				t.Fatal(err)
			}
			near(t, r.Target, got, w, 1e-9)
		}
	}
	for name, r := range byName {
		if len(r) != 2 || !(r[0].Eye < r[1].Eye && r[0].Width[2] < r[1].Width[2]) {
			t.Errorf("%s: %+v", name, r)
		}
	}
	rows[0].Width[0] = 0
	near(t, "a copy", route.SweepRows()[0].Width[0], 0.2*route.NauticalMile, 1e-9)
	beyond, err := route.SweepWidth(route.TargetPerson, 3, math.Inf(1))
	if err != nil || !(beyond > 0.3*route.NauticalMile && beyond < 0.5*route.NauticalMile) {
		t.Errorf("in clear air %v, %v", beyond, err)
	}
	for _, c := range []struct {
		target   string
		eye, vis float64
	}{{"submarine", 3, 5000}, {route.TargetPerson, 1, 5000}, {route.TargetPerson, 30, 5000}, {route.TargetPerson, 3, 100}, {route.TargetPerson, math.NaN(), 5000}, {route.TargetPerson, 3, math.NaN()}} {
		if w, err := route.SweepWidth(c.target, c.eye, c.vis); !errors.Is(err, route.ErrInput) || w != 0 {
			t.Errorf("%+v: %v, %v", c, w, err)
		}
	}
	if f := route.SweepWeather(math.NaN(), 1); !math.IsNaN(f) {
		t.Errorf("NaN wind: %v", f)
	}
	if f := route.SweepWeather(1, math.NaN()); !math.IsNaN(f) {
		t.Errorf("NaN sea: %v", f)
	}
}

// TestWindChillFalls: colder air and more wind both feel colder, and the two
// published forms agree.
func TestWindChillFalls(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		air, wind := draw(t, "air", -40, 9), draw(t, "wind", 1.4, 25)
		w := route.WindChill(air, wind)
		if !(route.WindChill(air-1, wind) < w && route.WindChill(air, wind+0.5) < w && w < air+0.5) {
			t.Fatalf("%v C in %v m/s: %v", air, wind, w)
		}
		near(t, "US form", route.WindChillUS(air, wind), w, 0.1)
	})
	for _, bad := range [][2]float64{{math.NaN(), 5}, {0, math.NaN()}, {0, -1}, {-300, 5}, {0, math.Inf(1)}} {
		if a, b := route.WindChill(bad[0], bad[1]), route.WindChillUS(bad[0], bad[1]); !math.IsNaN(a) || !math.IsNaN(b) {
			t.Errorf("%v: %v, %v, want NaN", bad, a, b)
		}
	}
}

func TestHaywardIsTheFormulaAndNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := draw(t, "water", -2, 20)
		m := route.HaywardTime(w) / 60
		near(t, "undone", 0.0785-7.2/(m-15), 0.0034*w, 1e-12)
	})
	for _, bad := range []float64{-3, 20.1, 23.1, 25, math.NaN(), math.Inf(1)} {
		if s := route.HaywardTime(bad); !math.IsNaN(s) {
			t.Errorf("water %v: %v s, want NaN", bad, s)
		}
	}
}

// TestColdTableIsThePrintedOne: the table of expected times as it is printed, the water in Fahrenheit up to and with, the times in
// minutes: [USSARTF-Cold]. A border belongs to the colder row; 45 C is the warmest water there is an answer for.
func TestColdTableIsThePrintedOne(t *testing.T) {
	rows := route.ColdTable()
	for i, c := range []struct{ fahrenheit, exhaustedFrom, exhaustedTo, limitFrom, limitTo float64 }{
		{32.5, 0, 15, 0, 45},
		{40, 15, 30, 30, 90},
		{50, 30, 60, 60, 180},
		{60, 60, 120, 60, 360},
		{70, 120, 420, 120, 2400},
		{80, 180, 720, 180, inf},
		{inf, inf, inf, inf, inf},
	} {
		r := rows[i]
		for name, x := range map[string][2]float64{
			"water":           {r.To, (c.fahrenheit - 32) / 1.8},
			"exhaustion from": {r.ExhaustionFrom, c.exhaustedFrom * 60}, "exhaustion to": {r.ExhaustionTo, c.exhaustedTo * 60},
			"limit from": {r.LimitFrom, c.limitFrom * 60}, "limit to": {r.LimitTo, c.limitTo * 60},
		} {
			if x[0] != x[1] {
				near(t, fmt.Sprint("row ", i, " ", name), x[0], x[1], 1e-12)
			}
		}
		if i < 6 {
			on, ok := route.ColdTimes(r.To)
			over, ok2 := route.ColdTimes(up(r.To))
			if !ok || !ok2 || on != r || over != rows[i+1] {
				t.Errorf("water %v: %+v, and a little warmer %+v", r.To, on, over)
			}
		}
	}
	for water, want := range map[float64]bool{-2: true, down(-2): false, 45: true, up(45): false} {
		if _, ok := route.ColdTimes(water); ok != want {
			t.Errorf("water %v: %v", water, ok)
		}
	}
	// The phases say their times in words too: 1 to 5 minutes, 5 to 15, 30 or more: [ColdBootCamp].
	for i, want := range [][2]float64{{1, 5}, {5, 15}, {30, inf}} {
		if p := route.ColdPhases()[i]; p.From != want[0]*60 || p.To != want[1]*60 {
			t.Errorf("%s from %v to %v s, want minutes %v", p.Name, p.From, p.To, want)
		}
	}
}

// TestColdTables: the rows cover the water without gap, times grow with its
// warmth, and no text promises anything.
func TestColdTables(t *testing.T) {
	rows := route.ColdTable()
	for i, r := range rows {
		if i > 0 && (r.Above != rows[i-1].To || !(r.ExhaustionTo >= rows[i-1].ExhaustionTo && r.LimitFrom >= rows[i-1].LimitFrom)) {
			t.Errorf("row %d: %+v after %+v", i, r, rows[i-1])
		}
		if !(r.ExhaustionFrom <= r.ExhaustionTo && r.LimitFrom <= r.LimitTo) {
			t.Errorf("row %d: %+v", i, r)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		w := draw(t, "water", -2, 45)
		if r, ok := route.ColdTimes(w); !ok || !(w > r.Above && w <= r.To) {
			t.Fatalf("water %v: %+v, %v", w, r, ok)
		}
	})
	for _, bad := range []float64{-2.1, 46, math.NaN()} {
		if r, ok := route.ColdTimes(bad); ok || r != (route.ColdRow{}) {
			t.Errorf("water %v: %+v", bad, r)
		}
	}
	last := 0.0
	for _, p := range route.ColdPhases() {
		if !(p.From >= last && p.To > p.From) || p.Name == "" {
			t.Errorf("%+v", p)
		}
		last = p.To
		for _, word := range []string{"safe", "survive", "promise"} {
			if strings.Contains(p.Means, word) {
				t.Errorf("%q says %q", p.Means, word)
			}
		}
	}
	if !strings.Contains(route.ColdCaution, "float") {
		t.Error("the caution does not say that the times assume flotation")
	}
}
