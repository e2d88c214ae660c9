package ride_test

import (
	"errors"
	"math"
	"testing"

	"followingsea.example/wave/ride"
)

// TestTableKeepsWhatItWasMadeFor: depth, current, gravity, swell and peak enhancement are those of the sea it was made
// like, the range of steepness is that of its gravity, and between its nodes it is linear along every axis, without jumps.
func TestTableKeepsWhatItWasMadeFor(t *testing.T) {
	ready := someReady()[0]
	like := ride.Sea{WindSea: ride.System{Gamma: 2}, Swell: ride.System{Hs: 0.2, Tp: 7, Off: 15}, Current: 0.3, Depth: 12, Gravity: 9.5, Wind: 99}
	table, err := ready.Table(like, 2)
	if err != nil {
		t.Fatal(err)
	}
	if !(table.Worst() > 0 && table.Worst() <= 2) {
		t.Errorf("Worst = %v", table.Worst())
	}
	highest := func(tp float64) float64 { return 0.065 * 9.5 * tp * tp / (2 * math.Pi) }
	if _, ok := table.At(highest(4)*(1-1e-12), 4, 5, 0); !ok {
		t.Error("the steepest is outside")
	}
	if _, ok := table.At(highest(4)*(1+1e-12), 4, 5, 0); ok {
		t.Error("steeper than the steepest is inside")
	}
	for _, tp := range []float64{2.2, 4} {
		for _, wind := range []float64{-8, 0, 10} {
			for _, off := range []float64{0, 45, 90} {
				s := like
				s.WindSea = ride.System{Hs: highest(tp) / 2, Tp: tp, Gamma: 2, Off: off}
				s.Wind = wind
				r, err := ready.Sea(s)
				if err != nil {
					t.Fatal(err)
				}
				q, ok := table.At(s.WindSea.Hs, tp, wind, off)
				near(t, "Speed at a node", q.Speed, r.Speed, 2e-6)
				near(t, "Spread at a node", q.Spread, r.Spread, 2e-6)
				if !ok {
					t.Errorf("%+v is outside", s)
				}
			}
		}
	}

	const n = 3000
	for axis, line := range map[string]func(x float64) (ride.Quick, bool){
		"period": func(x float64) (ride.Quick, bool) {
			tp := 1.2 * math.Pow(14/1.2, x)
			return table.At(highest(tp)*0.6, tp, 8, 20)
		},
		"steepness": func(x float64) (ride.Quick, bool) { return table.At(highest(3)*x, 3, 8, 20) },
		"wind":      func(x float64) (ride.Quick, bool) { return table.At(highest(3)*0.6, 3, -8+28*x, 20) },
		"angle":     func(x float64) (ride.Quick, bool) { return table.At(highest(3)*0.6, 3, 8, 90*x) },
	} {
		var gains []float64
		for i := range n {
			q, ok := line((float64(i) + 0.5) / n)
			if !ok {
				t.Fatal(axis)
			}
			gains = append(gains, q.Speed-q.FlatSpeed)
		}
		bends, steepest := 0, 0.0
		for i := 2; i < n; i++ {
			steepest = math.Max(steepest, math.Abs(gains[i]-gains[i-1]))
			if !(math.Abs(gains[i]-2*gains[i-1]+gains[i-2]) <= 1e-9) {
				bends++
			}
		}
		if bends > 40 || steepest > 0.01 {
			t.Errorf("along the %s the gain bends at %d places and jumps by %v m/s", axis, bends, steepest)
		}
	}

	for within, ok := range map[float64]bool{down(0.01): false, -0.2: false} {
		if _, err := ready.Table(ride.Sea{Depth: deep}, within); errors.Is(err, ride.ErrTable) == ok {
			t.Errorf("within %v: %v", within, err)
		}
	}
}
