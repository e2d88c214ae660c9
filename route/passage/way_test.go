package passage

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

// TestWayTableAgainstTheBalance: in winds to 25 m/s the table stays within 0.06 m/s
// of the balance of forces it stands for, and knows nothing where it has no
// right to.
func TestWayTableAgainstTheBalance(t *testing.T) {
	for _, p := range []route.Posture{route.Standing(1.8), route.Kneeling(1.8), route.Prone(1.8)} {
		table := newWayTable(p)
		rapid.Check(t, func(t *rapid.T) {
			heading := rapid.Float64Range(0, 360).Draw(t, "heading")
			w := route.From(rapid.Float64Range(0, 25).Draw(t, "speed"), rapid.Float64Range(0, 360).Draw(t, "from"))
			want, got := p.Way(heading, w), table.way(heading, w)
			if d := got.Sub(want).Speed(); !(d <= 0.06) {
				t.Fatalf("%s: %v against %v, %v apart", p.Name, got, want, d)
			}
		})
		nan := math.NaN()
		for _, v := range []route.Velocity{table.way(nan, route.From(5, 0)), table.way(0, route.Velocity{East: nan, North: 1}), table.way(0, route.From(36, 0))} {
			if v.Speed() == v.Speed() {
				t.Errorf("%s: %v for what is not known", p.Name, v)
			}
		}
	}
}
