package passage

import (
	"errors"
	"math"
	"testing"
	"time"
)

// novice is slower than the coach, tires sooner and asks for less wind.
func novice() Paddler {
	p := coach()
	p.Name, p.Cruise, p.Sprint, p.Endurance = "novice", Known(1.3), Known(2.2), Known(3*3600)
	p.Limits[GreatestWind], p.Limits[LeastWind] = Ask(10), Ask(3)
	return p
}

func party(t testing.TB, p Party) *Water {
	t.Helper()
	w, err := PrepareParty(eastward(t), fairDay(t, steadyWind(t, 9, 270)), p, Options{From: at(0), To: at(1), Cell: 500, Step: 1800, ExitStep: 3600, ExitLength: 1000})
	if err != nil {
		t.Fatal(err)
	}
	return w
}

// TestPartyIsItsWeakest: the party arrives with its slowest, has the least
// endurance, keeps the tightest limits, and counts its leaders.
func TestPartyIsItsWeakest(t *testing.T) {
	lead := coach()
	lead.Leader = true
	lead.Limits[LeastLeaders] = Ask(0.4)
	together := appraise(t, party(t, Party{Paddlers: []Paddler{lead, novice(), novice()}}), 0)
	slow := appraise(t, prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), novice()), 0)
	if !together.Arrival.Equal(slow.Arrival) || !together.Late.Equal(slow.Late) || !together.Early.Equal(slow.Early) {
		t.Errorf("together %v to %v to %v, the slowest %v to %v to %v", together.Early, together.Arrival, together.Late, slow.Early, slow.Arrival, slow.Late)
	}
	for rule, want := range map[Rule]struct{ value, limit float64 }{
		GreatestWind: {9, 10}, LeastWind: {9, 4}, LeastLeaders: {0.5, 0.4},
		LeastReserve: {3*3600 - slow.Late.Sub(slow.Depart).Seconds(), 1800},
	} {
		found := false
		for _, f := range together.Findings {
			if f.Rule != rule {
				continue
			}
			found = true
			if !near(f.Value, want.value, 1e-6) || f.Limit != want.limit || f.State != Met {
				t.Errorf("%v, want %v", f, want)
			}
		}
		if !found {
			t.Errorf("no finding about %v", rule)
		}
	}
}

// TestPartyFailSafe: with one more who is slower, who is not known or who asks
// for more, no limit is met that was not.
func TestPartyFailSafe(t *testing.T) {
	unknown, strict := novice(), coach()
	unknown.Cruise = Value{}
	for r := range ruleCount {
		if x, asked := strict.Limits[r].Get(); asked && r.Unit() != "bool" {
			if r.AtLeast() {
				strict.Limits[r] = Ask(math.Min(x*1.5, 25))
			} else {
				strict.Limits[r] = Ask(x * 0.5)
			}
		}
	}
	before := appraise(t, party(t, Party{Paddlers: []Paddler{coach()}}), 0)
	for name, p := range map[string]Paddler{"slower": novice(), "not known": unknown, "strict": strict, "the same": coach()} {
		after := appraise(t, party(t, Party{Paddlers: []Paddler{coach(), p}}), 0)
		for i, f := range after.Findings {
			if f.State == Met && before.Findings[i].State != Met {
				t.Errorf("%s: %v was %v", name, f, before.Findings[i])
			}
		}
		if name == "not known" && after.State == Met {
			t.Errorf("nobody knows the speed of one: %v", after)
		}
		if name == "the same" && !after.Arrival.Equal(before.Arrival) {
			t.Errorf("two alike arrive at %v, one at %v", after.Arrival, before.Arrival)
		}
	}
}

// TestMeetings: each paddles alone from one meeting to the next, and who is
// ahead waits there for the last.
func TestMeetings(t *testing.T) {
	w := party(t, Party{Paddlers: []Paddler{coach(), novice()}, Regroup: []float64{4250}})
	ms, err := w.Meetings(at(0))
	if err != nil || len(ms) != 2 {
		t.Fatalf("%v, %v", ms, err)
	}
	m := ms[0]
	if m.Along != 4250 || m.Slowest != 1 || !m.Leave.Equal(at(0)) || !m.Last.Equal(m.Arrive[1]) {
		t.Errorf("%+v", m)
	}
	// By hand: the way over the speed half way there.
	var v [2]float64
	for i, p := range []Paddler{coach(), novice()} {
		x, err := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), p).Moment(2000, at(0.25))
		if err != nil {
			t.Fatal(err)
		}
		v[i] = x.Speed
		if want := 4250 / v[i]; !near(m.Arrive[i].Sub(at(0)).Seconds(), want, 0.01*want) {
			t.Errorf("paddler %d arrives after %v, by hand %.0f s", i, m.Arrive[i].Sub(at(0)), want)
		}
	}
	if want := 4250/v[1] - 4250/v[0]; !near(m.Wait, want, 0.03*want) {
		t.Errorf("waits %.0f s, by hand %.0f", m.Wait, want)
	}
	if want := 4250 * (1 - v[1]/v[0]); !near(m.Spread, want, 0.03*want) {
		t.Errorf("spread %.0f m, by hand %.0f", m.Spread, want)
	}
	if !ms[1].Leave.Equal(m.Last) || ms[1].Along != w.Length() {
		t.Errorf("%+v", ms[1])
	}
	apart, err := w.SpreadAfter(at(0), 1800)
	if want := 1800 * (v[0] - v[1]); err != nil || !near(apart, want, 0.03*want) {
		t.Errorf("after half an hour %.0f m apart, by hand %.0f; %v", apart, want, err)
	}
}

// TestMeetingsNotKnown: of somebody whose speed is not known nothing is said,
// and a single paddler meets nobody.
func TestMeetingsNotKnown(t *testing.T) {
	unknown := novice()
	unknown.Cruise = Value{}
	w := party(t, Party{Paddlers: []Paddler{unknown, coach()}, Regroup: []float64{4000}})
	ms, err := w.Meetings(at(0))
	if err != nil || len(ms) != 1 || !ms[0].Arrive[0].IsZero() || ms[0].Arrive[1].IsZero() || !ms[0].Last.IsZero() || ms[0].Wait == ms[0].Wait || ms[0].Spread == ms[0].Spread || ms[0].Slowest != 0 {
		t.Errorf("%+v, %v", ms, err)
	}
	if x, err := w.SpreadAfter(at(0), 3600); err != nil || x == x {
		t.Errorf("spread %v, %v", x, err)
	}
	w = prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	if ms, err := w.Meetings(at(0)); err != nil || ms != nil {
		t.Errorf("%v, %v", ms, err)
	}
	if x, err := w.SpreadAfter(at(0), 3600); err != nil || x != 0 {
		t.Errorf("%v, %v", x, err)
	}
	for _, s := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if _, err := w.SpreadAfter(at(0), s); !errors.Is(err, ErrInput) {
			t.Errorf("spread after %v s: %v", s, err)
		}
	}
	if _, err := w.Meetings(at(0).Add(-time.Hour)); !errors.Is(err, ErrInput) {
		t.Error(err)
	}
}

// TestPartyRefuses: parties that are none.
func TestPartyRefuses(t *testing.T) {
	foil := coach()
	foil.Foil = true
	bad := coach()
	bad.Mass = Known(2)
	for name, p := range map[string]Party{
		"empty": {}, "foil": {Paddlers: []Paddler{coach(), foil}}, "mass": {Paddlers: []Paddler{coach(), bad}},
		"regroup twice": {Paddlers: []Paddler{coach()}, Regroup: []float64{10, 10}}, "regroup NaN": {Paddlers: []Paddler{coach()}, Regroup: []float64{math.NaN()}},
		"regroup off the run": {Paddlers: []Paddler{coach()}, Regroup: []float64{20000}}, "too many": {Paddlers: make([]Paddler, 51)},
	} {
		if w, err := PrepareParty(eastward(t), fairDay(t, steadyWind(t, 9, 270)), p, Options{From: at(0), To: at(1)}); err == nil || w != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}
