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

// Going from a quantity back to its fetch gives the fetch, whatever the guess.
func TestTableInverse(t *testing.T) {
	t.Parallel()
	for _, law := range []Law{Bretschneider, YoungVerhagen, JONSWAP, CEM} {
		g := tableFor(law)
		for _, depth := range []float64{math.Inf(1), 300, 5, 0.3} {
			c := g.at(depth * law.Limits(10).Period * law.Limits(10).Period / 60)
			for u := g.x0 - 3; u < g.top()+3; u += 0.61 {
				for q := range quantities {
					v := c.value(q, u)
					for _, near := range []float64{u, u + 4, u - 4, math.NaN(), math.Inf(1), math.Inf(-1)} {
						back := c.inverse(q, v, near)
						if math.Abs(c.value(q, math.Min(back, g.top()+100))-v) <= 1e-9 {
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
