package wind

import (
	"math"
	"testing"
	"time"
)

// The table's promise, against the exact law: a fiftieth of a per cent where the law is
// smooth, three per cent at the kink in depth of one.
func TestTableIsTheLaw(t *testing.T) {
	t.Parallel()
	for _, law := range Laws() {
		tol := 2e-4
		switch law.(type) {
		case cem:
			tol = 3e-2
		case groen:
			tol = 3e-3
		}
		g := tableFor(law)
		var worst [quantities]float64
		for _, depth := range []float64{math.Inf(1), 3000, 200, 30.3, 7.1, 2.2, 0.71, 0.2, 0.04, 0.012} {
			depth *= law.Limits(10).Period * law.Limits(10).Period / 60 // in the law's own units
			c := g.at(depth)
			for u := g.x0 + 2; u < g.top(); u += 0.3711 {
				x := math.Exp(u)
				h, p := law.Growth(x, depth)
				for q, want := range [quantities]float64{h, p, timeOver(law, x, depth)} {
					worst[q] = math.Max(worst[q], math.Abs(math.Exp(c.value(quantity(q), u))/want-1))
				}
			}
		}
		for q, w := range worst {
			if w <= tol {
				continue
			}
			t.Errorf("%v: quantity %d is off by %.2g", law, q, w)
		}
		t.Logf("%-28v %.1e %.1e %.1e", law, worst[0], worst[1], worst[2])
	}
}

func TestTableBuild(t *testing.T) {
	s := time.Now()
	newGrowthTable(Bretschneider)
	t.Log(time.Since(s))
}

// Going from a quantity back to its fetch gives the fetch, whatever the guess, and from there the quantity to rounding.
func TestTableInverse(t *testing.T) {
	t.Parallel()
	for _, law := range []Law{Bretschneider, YoungVerhagen, JONSWAP, CEM} {
		g := tableFor(law)
		for _, depth := range []float64{math.Inf(1), 300, 5, 0.3} {
			c := g.at(depth * law.Limits(10).Period * law.Limits(10).Period / 60)
			for u := g.x0 - 3; u < g.top()+3; u += 0.61 {
				for q := range quantities {
					v, tol := c.value(q, u), 1e-9
					if c.value(q, u+0.1)-v > 1e-3 { // not where it has all but stopped rising
						tol = 1e-12
					}
					for _, near := range []float64{u, u + 4, u - 4, math.NaN(), math.Inf(1), math.Inf(-1)} {
						back := c.inverse(q, v, near)
						if math.Abs(c.value(q, math.Min(back, g.top()+100))-v) <= tol {
							continue
						}
						t.Fatalf("%v at depth %v: quantity %d at %v goes back to %v (guess %v)", law, depth, q, u, back, near)
					}
				}
			}
			if got := c.inverse(heightOf, math.NaN(), 0); !math.IsNaN(got) {
				t.Errorf("%v: NaN goes back to %v", law, got)
			}
			if got := c.inverse(heightOf, math.Inf(-1), 0); !math.IsInf(got, -1) {
				t.Errorf("%v: no height goes back to %v", law, got)
			}
		}
	}
}

// Toward deep water the table is the law at that depth: of the laws that have another one in deep water that one does not come in.
func TestTableCloseToDeepWater(t *testing.T) {
	t.Parallel()
	for _, law := range []Law{Bretschneider, SPM84, Smith, YoungVerhagen} {
		g := tableFor(law)
		for _, rows := range []float64{2.5, 1.5, 1.2, 0.5, 0.1} { // below the last
			depth := math.Exp(g.d0 + (tableND-1-rows)*tableStepD)
			c := g.at(depth)
			for u := g.x0 + 1; u < g.top(); u += 0.917 {
				h, p := law.Growth(math.Exp(u), depth)
				if !(math.Abs(math.Exp(c.value(heightOf, u))/h-1) <= 2e-4 && math.Abs(math.Exp(c.value(periodOf, u))/p-1) <= 2e-4) {
					t.Errorf("%v, %v rows from deep: %v and %v at %v, want %v and %v", law, rows, math.Exp(c.value(heightOf, u)), math.Exp(c.value(periodOf, u)), u, h, p)
				}
			}
		}
	}
}

// Before the table and beyond it a power law is what it is in it.
func TestTableGoesStraightOn(t *testing.T) {
	t.Parallel()
	for _, law := range []Law{JONSWAP, KahmaCalkoen, Smith} {
		g := tableFor(law)
		c := g.at(math.Inf(1))
		for _, u := range []float64{g.x0 - 5, g.x0 - 0.1, g.x0 + 1, g.top() - 0.1, g.top() + 0.1, g.top() + 3} {
			h, p := law.Growth(math.Exp(u), math.Inf(1))
			if !(math.Abs(c.value(heightOf, u)-math.Log(h)) <= 1e-12 && math.Abs(c.value(periodOf, u)-math.Log(p)) <= 1e-12) {
				t.Errorf("%v: %v and %v at %v, want %v and %v", law, c.value(heightOf, u), c.value(periodOf, u), u, math.Log(h), math.Log(p))
			}
		}
	}
}
