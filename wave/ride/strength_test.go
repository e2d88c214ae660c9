package ride_test

import (
	"math"
	"testing"

	"followingsea.example/wave/ride"
)

// shipLike is the paddler of the threshold table: a square law, K = 5.
func shipLike(thrust ride.Thrust) ride.Paddler {
	return ride.Paddler{Mass: 95, Length: 4.2, Drag: 5, Bend: math.Inf(1), Thrust: thrust}
}

// ramp is the oracle of the thresholds: it integrates the surge equation of
// shipLike in time while the effort is raised slowly, and returns the nominal
// speed at which the board is taken along; then lowers it until it is released.
func ramp(height, period float64, thrust ride.Thrust) (taken, released float64) {
	const (
		g, m, drag = 9.81, 95.0, 5.0
		inertia    = m * 1.05
	)
	k := 4 * math.Pi * math.Pi / (g * period * period)
	c := g * period / (2 * math.Pi)
	x := k * 2.1
	f := m * g * height / 2 * k * math.Sin(x) / x * math.Exp(-k*0.025)
	pull := func(v, vs float64) float64 {
		if thrust == ride.ConstantForce {
			return drag * vs * vs
		}
		return drag * vs * vs * vs / math.Max(v, vs/2)
	}
	acc := func(psi, v, vs float64) float64 {
		return (pull(v, vs) - drag*v*math.Abs(v) + f*math.Sin(psi)) / inertia
	}
	const dt, rate = 0.02, 2e-4
	step := func(psi, v, vs float64) (float64, float64) {
		a1, p1 := acc(psi, v, vs), k*(v-c)
		a2, p2 := acc(psi+dt/2*p1, v+dt/2*a1, vs), k*(v+dt/2*a1-c)
		a3, p3 := acc(psi+dt/2*p2, v+dt/2*a2, vs), k*(v+dt/2*a2-c)
		a4, p4 := acc(psi+dt*p3, v+dt*a3, vs), k*(v+dt*a3-c)
		return psi + dt/6*(p1+2*p2+2*p3+p4), v + dt/6*(a1+2*a2+2*a3+a4)
	}
	s, err := shipLike(thrust).Strength(ride.Bump{Height: height, Period: period, Depth: deep, Gravity: g})
	if err != nil {
		return math.NaN(), math.NaN()
	}
	vs := s.Exact * 0.985
	psi, v := math.Pi, 0.3*vs
	crest, since := psi, 0.0
	for ; vs < c; vs += rate * dt {
		psi, v = step(psi, v, vs)
		if psi < crest-2*math.Pi { // another crest has passed
			crest, since = psi, 0
		}
		if since += dt; since > 300 && v > 0.98*c {
			break
		}
	}
	taken = vs - rate*since
	vs = math.Min(taken, s.Hold*1.005)
	psi, v = math.Pi-math.Asin(math.Min(1, (drag*c*c-pull(c, vs))/f)), c
	from := psi
	for ; vs > 0; vs -= rate / 4 * dt {
		psi, v = step(psi, v, vs)
		if psi < from-2*math.Pi {
			break
		}
	}
	return taken, vs
}

// The thresholds against the references and against time.
func TestStrengthAgainstTime(t *testing.T) {
	for _, c := range []struct {
		height, period                float64
		thrust                        ride.Thrust
		hold, melnikov, closed, exact float64
		catch                         float64
	}{
		{0.2, 2.0, ride.ConstantForce, 1.5283, 2.378, 2.418, 2.4109, 2.178},
		{0.3, 2.5, ride.ConstantForce, 1.5641, 2.704, 2.788, 2.7684, 2.402},
		{0.5, 3.0, ride.ConstantForce, 2.0572, 3.017, 3.183, 3.1401, 2.690},
		{1.0, 4.0, ride.ConstantForce, 4.0961, 3.794, 4.351, 4.2554, 4.097},
		{0.2, 2.0, ride.ConstantPower, 1.9393, 2.349, 2.420, 2.4189, 2.273},
		{0.3, 2.5, ride.ConstantPower, 2.1216, 2.634, 2.774, 2.7736, 2.561},
		{0.5, 3.0, ride.ConstantPower, 2.7064, 2.890, 3.161, 3.1634, 2.949},
		{1.0, 4.0, ride.ConstantPower, 4.7144, 3.561, 4.714, 4.7144, 4.715},
	} {
		s, err := shipLike(c.thrust).Strength(ride.Bump{Height: c.height, Period: c.period, Depth: deep, Gravity: 9.81})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "Hold", s.Hold, c.hold, 1e-4)
		near(t, "Melnikov", s.Melnikov, c.melnikov, 1e-3)
		near(t, "Inevitable", s.Inevitable, c.closed, 3e-3)
		near(t, "Exact", s.Exact, c.exact, 1e-3)
		near(t, "Catch", s.Catch, c.catch, 1e-3)
		if testing.Short() || underRace {
			continue
		}
		taken, released := ramp(c.height, c.period, c.thrust)
		near(t, "taken in time", taken/s.Exact, 1, 0.005)
		near(t, "released in time", released/s.Hold, 1, 0.01)
	}
}
