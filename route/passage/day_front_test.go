package passage

import (
	"math"
	"testing"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/wind"
)

// TestDayOfAFront works a day by hand on which a front passes: a south-westerly
// of 8 m/s that veers by 80 degrees and freshens to 12 within the hour before
// noon. Shift, steadiness and the strongest wind are those of the record, read
// every ten minutes with wind.Series.At and averaged with wind.Average. Who is
// ashore two hours before it keeps every limit; who is not is told when.
func TestDayOfAFront(t *testing.T) {
	series := windOf(t, func(h float64) (float64, float64) {
		if h < 4 { // eight to noon
			return 8, 250
		}
		return 12, 330
	})
	day := fairDay(t, series)
	p := Paddler{Cruise: Known(1.8), Sprint: Known(3), Mass: Known(95), BoardLength: Known(4.2)}
	for r, x := range map[Rule]float64{GreatestShift: 45, LeastSteadyBefore: 0.95, LeastSteadyAfter: 0.95, GreatestWind: 10, GreatestGust: 13, GreatestOffStern: 60} {
		p.Limits[r] = Ask(x)
	}
	w, err := Prepare(eastward(t), day, p, Options{From: at(-1), To: at(3)})
	if err != nil {
		t.Fatal(err)
	}
	read := func(from, to time.Time) (turn, steady float64, when time.Time) {
		var all []wind.Wind
		var first wind.Wind
		for x := from; !x.After(to); x = x.Add(10 * time.Minute) {
			s, err := series.At(x)
			if err != nil {
				t.Fatal(err)
			}
			if all = append(all, s.Wind); len(all) == 1 {
				first = s.Wind
			}
			if d := math.Abs(s.From - first.From); d > turn+1e-9 {
				turn, when = d, x
			}
		}
		return turn, wind.Average(all).Steadiness, when
	}
	for _, c := range []struct {
		hours float64
		state State
	}{{-1, Met}, {2.5, Broken}} {
		a := appraise(t, w, c.hours)
		if a.State != c.state {
			t.Errorf("start at %v h: %v %v", c.hours, a.State, a.Findings)
		}
		end := a.Late.Add(2 * time.Hour)
		turn, after, when := read(a.Depart, end)
		_, before, _ := read(a.Depart.Add(-3*time.Hour), a.Depart)
		for r, want := range map[Rule]float64{GreatestShift: turn, LeastSteadyAfter: after, LeastSteadyBefore: before} {
			f := findingOf(t, a, r)
			if !near(f.Value, want, 1e-6) || f.State != r.judge(want, f.Limit) {
				t.Errorf("start at %v h, %v: by hand %v", c.hours, f, want)
			}
			if r == GreatestShift && turn > 0 && !near(clock.Seconds(when, f.Time), 0, 1) {
				t.Errorf("start at %v h: turned at %v, by hand %v", c.hours, f.Time, when)
			}
		}
		// The strongest wind of the way is that of its last hour.
		last, err := series.At(a.Arrival)
		if err != nil {
			t.Fatal(err)
		}
		if f := findingOf(t, a, GreatestWind); !near(f.Value, last.Speed, 0.1) {
			t.Errorf("start at %v h, %v: at the arrival %v", c.hours, f, last.Speed)
		}
		if f := findingOf(t, a, GreatestGust); !near(f.Value, 1.3*last.Speed, 0.15) {
			t.Errorf("start at %v h, %v: at the arrival %v", c.hours, f, 1.3*last.Speed)
		}
		// Off the stern: the wind goes to 70 at first, and past the run's 90 behind
		// the front; the worst is read where and when it was met.
		f := findingOf(t, a, GreatestOffStern)
		then, err := series.At(f.Time)
		if err != nil {
			t.Fatal(err)
		}
		if off := math.Abs(then.From - 270); !near(f.Value, off, 0.7) || !(off >= 19) {
			t.Errorf("start at %v h, %v: by hand %v", c.hours, f, off)
		}
	}
}
