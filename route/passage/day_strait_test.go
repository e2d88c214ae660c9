package passage

import (
	"math"
	"testing"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wave"
	"followingsea.example/wave/ride"
	"followingsea.example/wind"
)

// turningStrait is a stream along a strait that runs due east: against the run at the
// morning, slack after three hours, with it after six.
type turningStrait struct{}

func (turningStrait) Velocity(t time.Time) tide.Velocity {
	return tide.Velocity{East: -0.8 * math.Cos(2*math.Pi*clock.Seconds(morning, t)/43200)}
}

// TestDayInAStrait works a day in a strait by hand: a westerly of 8 m/s on a
// stream that turns. The sea is wind.Grow's, the ride that of ride.Prepared.Sea,
// the steepness that of wave.OnCurrent, the way stepped minute by minute, the
// light that of route.Daylight. Who starts against the stream meets a sea that is
// too steep; who waits for slack does not.
func TestDayInAStrait(t *testing.T) {
	day := fairDay(t, steadyWind(t, 8, 270))
	day.Streams = []StreamGauge{{Stream: turningStrait{}}}
	p := Paddler{Cruise: Known(1.8), Sprint: Known(3), Mass: Known(95), BoardLength: Known(4.2), Endurance: Known(4 * 3600)}
	for r, x := range map[Rule]float64{GreatestAgainst: 0.4, GreatestSteepness: 0.04, GreatestStream: 1, GreatestDuration: 2.5 * 3600, LeastReserve: 3600, LeastDaylight: 3600} {
		p.Limits[r] = Ask(x)
	}
	run := eastward(t)
	w, err := Prepare(run, day, p, Options{From: at(0), To: at(4)})
	if err != nil {
		t.Fatal(err)
	}

	// By hand: the sea of two days of this wind on an open sea.
	sea := wind.Grow(wind.Bretschneider, wind.Conditions{Speed: 8, Fetch: math.Inf(1), Duration: 48 * 3600, MeanDepth: math.Inf(1), From: 270})
	board, err := ride.Paddler{Cruise: 1.8, Sprint: 3, Mass: 95, Length: 4.2}.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	speed := func(u, spreads float64) float64 {
		r, err := board.Sea(ride.Sea{WindSea: ride.System{Hs: sea.Hs, Tp: sea.Tp}, Wind: 8 - u, Current: u, Depth: 21})
		if err != nil {
			t.Fatal(err)
		}
		return r.Speed + spreads*r.Spread
	}
	arrive := func(start, spreads float64) (seconds, against, steep float64) {
		const minute = 60.0
		now, worst := start, math.Inf(-1)
		for left := run.Length(); left > 0; {
			u := turningStrait{}.Velocity(morning.Add(time.Duration(now+minute/2) * time.Second)).East
			worst = math.Max(worst, -u)
			made := (speed(u, spreads) + u) * minute
			now += minute * math.Min(1, left/made)
			left -= made
		}
		return now - start, worst, sea.Hs / wave.Length(sea.Tp, 21) * wave.OnCurrent(sea.Tp, 21, -worst).SteepnessRatio
	}
	for _, c := range []struct {
		hours float64
		state State
	}{{0, Broken}, {3.5, Met}} {
		a := appraise(t, w, c.hours)
		if a.State != c.state {
			t.Errorf("start at %v h: %v, %v", c.hours, a.State, a.Findings)
		}
		mid, against, steep := arrive(c.hours*3600, 0)
		slow, _, _ := arrive(c.hours*3600, -1.64)
		fast, _, _ := arrive(c.hours*3600, 1.64)
		for _, x := range []struct {
			name      string
			got, want float64
		}{{"expected", clock.Seconds(a.Depart, a.Arrival), mid}, {"slow", clock.Seconds(a.Depart, a.Late), slow}, {"fast", clock.Seconds(a.Depart, a.Early), fast}} {
			if !near(x.got, x.want, 0.005*x.want) {
				t.Errorf("start at %v h, %s: %.0f s, by hand %.0f s", c.hours, x.name, x.got, x.want)
			}
		}
		light, err := route.Daylight(run.Points[1], morning)
		if err != nil {
			t.Fatal(err)
		}
		dusk := clock.Seconds(morning, light.CivilDusk.Time)
		for r, want := range map[Rule]float64{GreatestAgainst: against, GreatestSteepness: steep, GreatestDuration: slow, LeastReserve: 4*3600 - slow, LeastDaylight: dusk - c.hours*3600 - slow} {
			f := findingOf(t, a, r)
			if !near(f.Value, want, 0.006*math.Abs(want)+0.01) {
				t.Errorf("start at %v h, %v: by hand %v", c.hours, f, want)
			}
			if f.State != r.judge(want, f.Limit) {
				t.Errorf("start at %v h, %v: by hand %v", c.hours, f, r.judge(want, f.Limit))
			}
		}
	}
}
