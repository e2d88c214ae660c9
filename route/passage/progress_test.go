package passage

import (
	"testing"
	"time"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

// logged is an outing some days before the morning.
func logged(days float64, h Handling, values map[Rule]float64) Outing {
	o := Outing{Time: morning.Add(-time.Duration(days * 24 * float64(time.Hour))), Handling: h}
	for r, x := range values {
		o.Values[r] = Known(x)
	}
	return o
}

// TestNextStepByHand: the rule, case by case. The limit is 20 knots of wind;
// a comfortable step is 2 m/s, half of it is 1 m/s.
func TestNextStepByHand(t *testing.T) {
	kn := route.Knot
	var limits Limits
	limits[GreatestWind], limits[GreatestSea], limits[LeastDaylight] = Ask(20*kn), Ask(1.5), Ask(3600)
	wind := func(days, knots float64, h Handling) Outing {
		return logged(days, h, map[Rule]float64{GreatestWind: knots * kn})
	}
	three := []Outing{wind(30, 18, InHand), wind(20, 19, InHand), wind(10, 17, InHand)}
	cases := []struct {
		name string
		log  []Outing
		want Step
		ok   bool
	}{
		{"nothing", nil, Step{}, false},
		{"two", three[:2], Step{}, false},
		{"three in hand near the limit", three, Step{Rule: GreatestWind, From: 20 * kn, To: 20*kn + 1, Runs: 3}, true},
		{"nobody said", []Outing{three[0], three[1], wind(10, 17, Unsaid)}, Step{}, false},
		{"the last was hard", append([]Outing{wind(5, 19, Hard)}, three...), Step{}, false},
		{"a hard one before", append([]Outing{wind(40, 19, Hard)}, three...), Step{Rule: GreatestWind, From: 20 * kn, To: 20*kn + 1, Runs: 3}, true},
		{"far from the limit", []Outing{wind(30, 10, InHand), wind(20, 12, InHand), wind(10, 16, InHand)}, Step{}, false},
		{"beyond the limit", []Outing{wind(30, 21, InHand), wind(20, 22, InHand), wind(10, 23, InHand)}, Step{}, false},
		{"long ago", []Outing{wind(200, 18, InHand), wind(20, 19, InHand), wind(10, 17, InHand)}, Step{}, false},
		{"to come", []Outing{wind(-2, 18, InHand), wind(20, 19, InHand), wind(10, 17, InHand)}, Step{}, false},
		{"trouble", append([]Outing{wind(3, 18, Trouble)}, three...), Step{Rule: GreatestWind, From: 20 * kn, To: 18*kn - 1, Back: true, Runs: 1}, true},
		{"trouble long past", append([]Outing{wind(90, 18, Trouble)}, three...), Step{Rule: GreatestWind, From: 20 * kn, To: 20*kn + 1, Runs: 3}, true},
		{"light is not learnt away", []Outing{logged(3, InHand, map[Rule]float64{LeastDaylight: 3700}), logged(2, InHand, map[Rule]float64{LeastDaylight: 3700}),
			logged(1, InHand, map[Rule]float64{LeastDaylight: 3700})}, Step{}, false},
	}
	for _, c := range cases {
		got, ok := NextStep(limits, c.log, morning)
		if ok != c.ok || got.Rule != c.want.Rule || !near(got.From, c.want.From, 1e-9) || !near(got.To, c.want.To, 1e-9) || got.Back != c.want.Back || got.Runs != c.want.Runs || ok && got.Why == "" {
			t.Errorf("%s: %+v %v, want %+v", c.name, got, ok, c.want)
		}
	}
	// One limit at a time: the one with more runs behind it.
	both := map[Rule]float64{GreatestWind: 19 * kn, GreatestSea: 1.4}
	log := []Outing{logged(9, InHand, map[Rule]float64{GreatestSea: 1.4}), logged(8, InHand, both), logged(7, InHand, both), logged(6, InHand, both)}
	if got, ok := NextStep(limits, log, morning); !ok || got.Rule != GreatestSea || got.Runs != 4 || !near(got.To, 1.65, 1e-9) {
		t.Errorf("%+v", got)
	}
	for h, want := range map[Handling]string{Unsaid: "unsaid", InHand: "in hand", Hard: "hard", Trouble: "trouble"} {
		if h.String() != want {
			t.Errorf("%d: %s", h, h)
		}
	}
}

// TestNextStepNeedsItsReasons: what is not known, not said or not done never
// makes a step forward that was not there; a step is never more than half a
// comfortable one.
func TestNextStepNeedsItsReasons(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var limits Limits
		limits[GreatestWind] = Ask(10)
		var log []Outing
		for range rapid.IntRange(0, 8).Draw(t, "outings") {
			log = append(log, logged(rapid.Float64Range(-1, 150).Draw(t, "days"), Handling(rapid.IntRange(0, 3).Draw(t, "handling")),
				map[Rule]float64{GreatestWind: rapid.Float64Range(5, 12).Draw(t, "wind")}))
		}
		before, ok := NextStep(limits, log, morning)
		if ok && !before.Back && !(before.To <= before.From+1) || ok && before.Back && !(before.To < before.From) {
			t.Fatalf("%+v", before)
		}
		if len(log) == 0 {
			return
		}
		i := rapid.IntRange(0, len(log)-1).Draw(t, "which")
		worse := append([]Outing(nil), log...)
		switch rapid.IntRange(0, 2).Draw(t, "what") {
		case 0:
			worse[i].Handling = Trouble
		case 1:
			if worse[i].Handling == InHand {
				worse[i].Handling = Unsaid
			}
		case 2:
			if worse[i].Handling == InHand {
				worse[i].Values[GreatestWind] = Value{}
			}
		}
		after, also := NextStep(limits, worse, morning)
		if also && !after.Back && !(ok && !before.Back) {
			// An outing that was near and not in hand may become unknown only when it was in hand.
			t.Fatalf("%+v became %+v", before, after)
		}
	})
}
