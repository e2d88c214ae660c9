package ride_test

import (
	"math"
	"testing"

	"followingsea.example/wave/ride"
)

// TestRunIsThatOfTheSurgeEquation: from moment to moment a run is a step of the surge equation by the midpoint rule, with a
// sprint where the push exceeds 5 % of the weight, and its statistics are those of its moments.
func TestRunIsThatOfTheSurgeEquation(t *testing.T) {
	p := plainly(t, reference)
	s := ride.Sea{WindSea: ride.System{Hs: 1, Tp: 3.4}, Swell: ride.System{Hs: 0.3, Tp: 6, Off: 20}, Wind: 8, Depth: 5, Current: 0.2, Gravity: 9.7}
	const dt, n = 0.025, 2000
	sprint := p.FlatSpeed(p.Sprint, s.Wind)
	face := 0.05 * p.Mass * s.Gravity
	for _, steady := range []bool{false, true} {
		r, err := reference.Simulate(s, ride.Run{Seed: 3, Seconds: n * dt, Step: dt, Components: 40, Keep: 1, Steady: steady})
		if err != nil {
			t.Fatal(err)
		}
		if len(r.Moments) != n {
			t.Fatalf("%d moments", len(r.Moments))
		}
		gain := func(v, push float64, sprinting bool) float64 {
			vs := p.Cruise
			if sprinting {
				vs = p.Sprint
			}
			return (p.net(v, vs, s.Wind) + push) / p.inertia()
		}
		var sum, square, rode, peak float64
		riding, sprinting, catches := 0, 0, 0
		for i, m := range r.Moments {
			near(t, "Time", m.Time, float64(i+1)*dt, 1e-9)
			if on := m.Push > face && !steady; m.Sprinting != on {
				t.Fatalf("%+v, want sprinting %v", m, on)
			}
			sum += m.Speed
			square += m.Speed * m.Speed
			peak = math.Max(peak, m.Speed)
			if m.Sprinting {
				sprinting++
			}
			if m.Speed > sprint {
				riding++
				rode += m.Speed
				if i > 0 && r.Moments[i-1].Speed <= sprint {
					catches++
				}
			}
			if i == 0 {
				continue
			}
			was := r.Moments[i-1]
			half := (m.Distance - was.Distance) / dt
			near(t, "Speed", m.Speed, was.Speed+dt*gain(half, m.Push, m.Sprinting), 1e-8)
			if m.Sprinting == was.Sprinting { // the push half a step earlier is about the mean of the two
				near(t, "speed half way", half, was.Speed+dt/2*gain(was.Speed, (was.Push+m.Push)/2, m.Sprinting), 1e-4)
			}
		}
		near(t, "mean speed", r.Speed, r.Moments[n-1].Distance/(n*dt), 1e-9)
		near(t, "RidingShare", r.RidingShare, float64(riding)/n, 1e-12)
		near(t, "RidingSpeed", r.RidingSpeed, rode/float64(riding), 1e-9)
		near(t, "Wander", r.Wander, math.Sqrt(square/n-sum/n*sum/n), 1e-9)
		near(t, "Sprinting", r.Sprinting, float64(sprinting)/n, 1e-12)
		near(t, "Peak", r.Peak, peak, 0)
		if !steady && catches < 3 || r.Catches-catches < 0 || r.Catches-catches > 1 { // the first moment may be one
			t.Errorf("%d catches, want %d", r.Catches, catches)
		}
	}
	// One moment in Keep, from the first on.
	all, _ := reference.Simulate(s, ride.Run{Seconds: 2, Step: 0.1, Keep: 1})
	some, _ := reference.Simulate(s, ride.Run{Seconds: 2, Step: 0.1, Keep: 7})
	if len(some.Moments) != 3 || some.Moments[2] != all.Moments[14] {
		t.Errorf("every seventh of %d: %d", len(all.Moments), len(some.Moments))
	}
	if none, _ := reference.Simulate(s, ride.Run{Seconds: 2, Step: 0.1}); none.Moments != nil || none.Speed != all.Speed {
		t.Errorf("kept without asking: %+v", none)
	}
	// What is zero stands for its default.
	a, _ := reference.Simulate(s, ride.Run{Step: 0.25})
	b, _ := reference.Simulate(s, ride.Run{Step: 0.25, Seconds: 600, Components: 200})
	if a.Speed != b.Speed {
		t.Errorf("defaults: %v, %v m/s", a.Speed, b.Speed)
	}
}

// TestSimulatedPushIsThatOfTheSpectrum: in low waves the board runs evenly, and the push it feels has the variance and,
// a step apart, the correlation that the spectrum gives: Σ F²/2 and Σ F²/2 cos((kv - ω)τ).
func TestSimulatedPushIsThatOfTheSpectrum(t *testing.T) {
	p := plainly(t, reference)
	for name, s := range map[string]ride.Sea{
		"wind sea": {WindSea: ride.System{Hs: 0.1, Tp: 3, Gamma: 2, Off: 60}, Current: 1, Depth: 6, Gravity: 9.81},
		"swell":    {Swell: ride.System{Hs: 0.2, Tp: 3.5}, Current: -0.3, Depth: 3, Gravity: 9.81},
	} {
		const dt = 0.25
		square, lagged, v := 0.0, 0.0, 0.0
		const seeds, seconds = 5, 500
		for seed := range uint64(seeds) {
			r, err := reference.Simulate(s, ride.Run{Seed: seed, Seconds: seconds, Step: dt, Components: 100, Keep: 1, Steady: true})
			if err != nil {
				t.Fatal(err)
			}
			for i, m := range r.Moments {
				square += m.Push * m.Push
				if i > 0 {
					lagged += m.Push * r.Moments[i-1].Push
				}
			}
			v += r.Speed / seeds
		}
		want, apart := 0.0, 0.0
		for _, w := range p.bands(s) {
			want += w.force
			apart += w.force * math.Cos((w.k*v-w.k*w.c)*dt)
		}
		rel(t, name+", variance of the push", square/(seeds*seconds/dt)/want, 1, 0.15)
		near(t, name+", correlation", lagged/square, apart/want, 0.02)
	}
	// A wave from abeam or ahead does not push.
	r, err := reference.Simulate(ride.Sea{WindSea: ride.System{Hs: 1, Tp: 3, Off: 90}, Swell: ride.System{Hs: 1, Tp: 5, Off: 180}, Depth: deep}, ride.Run{Seconds: 5})
	if err != nil || math.Abs(r.Speed-1.8) > 1e-9 || r.Wander > 1e-7 || r.RidingSpeed != 0 || r.RidingShare != 0 || r.Catches != 0 {
		t.Errorf("%+v, %v", r, err)
	}
}
