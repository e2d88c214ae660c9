package ride

import (
	"math"
	"testing"
)

// TestBalanceIsSettled: the speed and the spread that Newton's steps come to are those that the balance keeps: a plain damped
// iteration of its two equations, as meanfield.go prints them, over the same bands stays where it is. The last step was
// shorter than 1e-7 m/s and the error is of the order of its square.
func TestBalanceIsSettled(t *testing.T) {
	deep := math.Inf(1)
	seas := []Sea{
		{WindSea: System{Hs: 0.4, Tp: 2.4}, Wind: 6, Depth: deep},
		{WindSea: System{Hs: 0.8, Tp: 3.4}, Wind: 8, Depth: deep},
		{WindSea: System{Hs: 1.1, Tp: 4.2, Off: -44}, Wind: 12, Current: -0.4, Depth: deep},
		{WindSea: System{Hs: 0.9, Tp: 4}, Swell: System{Hs: 0.7, Tp: 6, Off: 30}, Wind: 10, Current: 0.6, Depth: deep},
		{WindSea: System{Hs: 1.9, Tp: 6}, Wind: 16, Depth: 30},
		{WindSea: System{Hs: 0.5, Tp: 3.5}, Wind: 9, Depth: 1.6},
		{Swell: System{Hs: 2.5, Tp: 5}, Wind: 20, Depth: deep},
		{WindSea: System{Hs: 0.6, Tp: 2.9}, Wind: -3, Current: -0.2, Depth: 5},
	}
	passes, most := 0, 0
	for _, who := range []Paddler{{}, {Craft: Ski}, {Mass: 130, Cruise: 1.4, Sprint: 2.4}, {Mass: 60, Cruise: 2.4, Sprint: 4.4}} {
		p, err := who.Prepare()
		if err != nil {
			t.Fatal(err)
		}
		for _, sea := range seas {
			var bs bins
			p.load(&bs, &sea)
			got := p.mean(&bs, &sea)
			passes, most = passes+got.passes, max(most, got.passes)
			s, u := &p.surge, p.surge.share*sea.Wind
			part, v, sigma := got.sprinting, got.speed, got.sigma
			for range 400 {
				b := math.Max(2, -(1-part)*s.slope(v, s.cruise, u)-part*s.slope(v, s.sprint, u))
				push, wander := 0.0, 0.0
				for _, w := range bs.b[:bs.n] {
					d := w.c - v
					q := d*d + math.Pow(widening*sigma, 2)
					x := w.force / (w.inv*q + b*b)
					push += b * x * d / q
					wander += x
				}
				net := (1-part)*s.balance(v, s.cruise, u) + part*s.balance(v, s.sprint, u)
				v += 0.2 * (net + meanPushGain*push) / b
				sigma += 0.2 * (math.Sqrt(wander) - sigma)
			}
			if !(math.Abs(v-got.speed) <= 1e-6 && math.Abs(sigma-got.sigma) <= 1e-6) {
				t.Errorf("%+v in %+v: %v and %v, settled %v and %v", who, sea, got.speed, got.sigma, v, sigma)
			}
		}
	}
	// Nine passes in the mean; the half steps from the slow side are what takes longer.
	if mean := float64(passes) / 32; !(mean <= 9) || most > 27 {
		t.Errorf("%v passes in the mean, %d at most", mean, most)
	}
}

// TestFlatInFewLooks: Newton's steps to the speed on flat water end after a few, and at the root.
func TestFlatInFewLooks(t *testing.T) {
	for _, who := range []Paddler{{}, {Craft: Ski}, {Thrust: ConstantForce}, {Mass: 130, Cruise: 1.4, Sprint: 2.4}, {Mass: 60, Cruise: 2.4, Sprint: 4.4}} {
		s, err := newSurge(who)
		if err != nil {
			t.Fatal(err)
		}
		total, n := 0, 0
		for u := -20.0; u <= 20; u += 0.37 {
			for _, e := range []effort{s.cruise, s.sprint} {
				v, looks := s.flatIn(e, u)
				if g := s.balance(v, e, u); !(math.Abs(g) <= 1e-9) || looks > 8 {
					t.Errorf("%+v in %v m/s: %v N left at %v after %d looks", who, u, g, v, looks)
				}
				total, n = total+looks, n+1
			}
		}
		if mean := float64(total) / float64(n); !(mean <= 5.5) {
			t.Errorf("%+v: %v looks in the mean", who, mean)
		}
	}
}
