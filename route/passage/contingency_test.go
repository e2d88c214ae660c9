package passage

import (
	"errors"
	"math"
	"testing"

	"followingsea.example/route"
)

// TestContingenciesByHand: a swimmer with the board in 9 m/s of westerly and a
// stream of 0.5 m/s setting north goes down the wind by the row's 1.93 %, and
// north with the stream.
func TestContingenciesByHand(t *testing.T) {
	d := fairDay(t, steadyWind(t, 9, 270))
	d.Streams = []StreamGauge{{Stream: constantStream{North: 0.5}}}
	w := prepare(t, eastward(t), d, coach())
	list, err := w.Contingencies(at(0), []float64{5000}, nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(list) != 2+len(Changes()) {
		t.Fatalf("%d contingencies", len(list))
	}
	s := list[1]
	if len(s.Adrift) != 2 || s.Posture != "drifting" {
		t.Fatalf("%+v", s)
	}
	for _, a := range s.Adrift {
		for side, p := range map[float64]route.Point{1: a.Right, -1: a.Left} {
			leg := route.Inverse(s.At, p)
			v := route.Toward(leg.Distance/a.After, leg.Mean())
			relative := math.Hypot(9, 0.5) // the wind relative to the water blows from a little north of west
			down, across := 0.0193*relative, 0.0051*relative*side
			sin, cos := -0.5/relative, 9/relative // of the turn of that wind from due east
			east := down*cos + across*sin
			north := down*sin - across*cos + 0.5
			if !near(v.East, east, 0.01) || !near(v.North, north, 0.01) {
				t.Errorf("side %v: %v east, %v north; by hand %v, %v", side, v.East, v.North, east, north)
			}
		}
		if !(a.Ninety > 0) || a.Ashore {
			t.Errorf("%+v", a)
		}
	}
	if again, _ := w.Contingencies(at(0), []float64{5000}, nil); again[1].Adrift[1] != s.Adrift[1] {
		t.Error("a second call drifts elsewhere")
	}
}

// TestChangesOfTheWind: turned and multiplied as said, clockwise positive.
func TestChangesOfTheWind(t *testing.T) {
	f := route.Steady(route.From(10, 270))
	for _, c := range []struct {
		change Change
		from   float64
		speed  float64
	}{{Change{Turn: 45, Factor: 1}, 315, 10}, {Change{Turn: -90, Factor: 0.5}, 180, 5}, {Change{Factor: 1}, 270, 10}, {Change{Turn: 180, Factor: 2}, 90, 20}} {
		v := c.change.on(f)(morning, route.Point{})
		if !near(v.Speed(), c.speed, 1e-9) || !near(v.From(), c.from, 1e-9) {
			t.Errorf("%+v: %v from %v", c.change, v.Speed(), v.From())
		}
	}
	for _, c := range Changes() {
		if c.check() != nil || c.Name == "" {
			t.Errorf("%+v", c)
		}
	}
}

// TestContingenciesFailSafe: no exit is open that was not when an input is
// taken away, and bad questions are errors.
func TestContingenciesFailSafe(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 6, 270)), coach())
	before, err := w.Contingencies(at(0), []float64{4000}, nil)
	if err != nil {
		t.Fatal(err)
	}
	for name, change := range worsen(t) {
		run, d, p := eastward(t), fairDay(t, steadyWind(t, 6, 270)), coach()
		change(&run, &d, &p)
		w := prepare(t, run, d, p)
		after, err := w.Contingencies(at(0), []float64{4000}, nil)
		if err != nil {
			if !errors.Is(err, ErrInput) {
				t.Errorf("%s: %v", name, err)
			}
			continue
		}
		for i := range after {
			if after[i].Open > before[i].Open {
				t.Errorf("%s, %s: %d exits open, were %d", name, after[i].Name, after[i].Open, before[i].Open)
			}
		}
	}
	nan := math.NaN()
	for _, x := range []float64{-1, 1e6, nan} {
		if _, err := w.Contingencies(at(0), []float64{x}, nil); !errors.Is(err, ErrInput) {
			t.Errorf("place %v: %v", x, err)
		}
	}
	for _, c := range []Change{{Turn: nan, Factor: 1}, {Factor: nan}, {Factor: -1}, {Turn: 400, Factor: 1}} {
		if _, err := w.Contingencies(at(0), nil, []Change{c}); !errors.Is(err, ErrInput) {
			t.Errorf("change %+v: %v", c, err)
		}
	}
	if _, err := w.Contingencies(at(-5), nil, nil); !errors.Is(err, ErrInput) {
		t.Errorf("departure: %v", err)
	}
}

// TestNoWayOut: with one exit at the start, prone endurance of ten minutes
// leaves most of the run without a way out; standing leaves none of it in a light
// wind.
func TestNoWayOut(t *testing.T) {
	run := eastward(t)
	w := prepare(t, run, fairDay(t, steadyWind(t, 2, 270)), coach())
	gaps, err := w.NoWayOut(at(0), route.Standing(1.8))
	if err != nil || len(gaps) != 0 {
		t.Errorf("standing: %v, %v", gaps, err)
	}
	short := route.Prone(1.8)
	short.Endurance = 600
	gaps, err = w.NoWayOut(at(0), short)
	if err != nil || len(gaps) == 0 || gaps[0].From != 0 || !near(gaps[len(gaps)-1].To, w.Length(), 1) {
		t.Errorf("prone for ten minutes: %v, %v", gaps, err)
	}
	if _, err := w.NoWayOut(at(30), short); !errors.Is(err, ErrInput) {
		t.Errorf("departure: %v", err)
	}
}

// TestBoardLost: in 10 m/s the band after a minute is 9 to 39 m, and not even
// a fast swimmer is sure of the board; in a breath of wind even a slow one is.
func TestBoardLost(t *testing.T) {
	p := BoardLost(10)
	if len(p) != 3 || !near(p[0].Near, 9, 1e-9) || !near(p[0].Far, 39, 1e-9) || !near(p[2].Far, 390, 1e-9) || p[1].ByASwimmer != Unknown {
		t.Errorf("%+v", p)
	}
	if BoardLost(2)[0].ByASwimmer != Met || BoardLost(70)[0].ByASwimmer != Broken {
		t.Errorf("2 m/s %v, 70 m/s %v", BoardLost(2)[0].ByASwimmer, BoardLost(70)[0].ByASwimmer)
	}
	for _, x := range []float64{math.NaN(), -1, math.Inf(1)} {
		for _, q := range BoardLost(x) {
			if q.Near == q.Near || q.Far == q.Far || q.ByASwimmer != Unknown {
				t.Errorf("wind %v: %+v", x, q)
			}
		}
	}
	// The second implementation: step by step, both carried by the wind.
	for wind := 0.0; wind <= 30; wind += 2.5 {
		for _, q := range BoardLost(wind) {
			var slow, fast, idle, quick float64
			for s := 0.0; s < q.After; s++ {
				slow, fast = slow+0.03*wind, fast+0.07*wind
				idle, quick = idle+0.005*wind, quick+0.015*wind
			}
			if !near(q.Near, slow-quick, 1e-6) || !near(q.Far, fast-idle, 1e-6) {
				t.Errorf("wind %v after %v: %+v, stepped %v to %v", wind, q.After, q, slow-quick, fast-idle)
			}
		}
	}
}
