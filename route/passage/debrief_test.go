package passage

import (
	"errors"
	"math"
	"testing"
	"time"

	"followingsea.example/route"
)

// recorded makes a track along the eastward run from half an hour after the
// morning: the speed over the ground by f of the seconds since, every so many
// seconds, until the end or a distance.
func recorded(run route.Run, every, until float64, f func(s float64) route.Velocity) route.Track {
	t := route.Track{Name: "recorded"}
	p := run.Points[0]
	for s := 0.0; ; s += every {
		t.Fixes = append(t.Fixes, route.Fix{Point: p, Time: at(0.5).Add(time.Duration(s * 1e9))})
		if route.Inverse(run.Points[0], p).Distance >= until || s > 5*3600 {
			return t
		}
		v := f(s)
		p = route.Direct(p, v.Toward(), v.Speed()*every).To
	}
}

// TestDebriefByHand: a board at 2 m/s and 6 m/s by turns, four seconds each,
// over the ground on a stream of 0.5 m/s: 4 m/s made good, 3.5 through the
// water, ridden half of the time.
func TestDebriefByHand(t *testing.T) {
	day := fairDay(t, steadyWind(t, 9, 270))
	day.Streams = []StreamGauge{{Stream: constantStream{East: 0.5}}}
	run := eastward(t)
	w := prepare(t, run, day, coach())
	m, err := w.Moment(5000, at(1))
	if err != nil {
		t.Fatal(err)
	}
	if s := m.Ride.SprintSpeed; !(s > 1.6 && s < 5.4) {
		t.Fatalf("the speeds of this test straddle no sprint of %v m/s", s)
	}
	track := recorded(run, 4, 10000, func(s float64) route.Velocity {
		return route.Toward(2+4*math.Mod(s/4, 2), 90)
	})
	d, err := w.Debrief(track)
	if err != nil {
		t.Fatal(err)
	}
	if len(d.Legs) != 1 || d.Finish.IsZero() || !near(d.Finish.Sub(at(0.5)).Seconds(), 2500, 15) || !near(d.Gone, 10000, 2) || !near(d.Over, 10000, 30) {
		t.Fatalf("%+v", d)
	}
	l := d.Legs[0]
	if !near(l.Made, 4, 0.02) || !near(l.Through, 3.5, 0.02) || !near(l.Riding, 0.5, 0.01) || !near(d.Riding, 0.5, 0.01) || !near(l.Farthest, 0, 20) {
		t.Errorf("%+v", l)
	}
	if !near(l.PlanMade, m.Speed+0.5, 0.05) || !near(l.PlanThrough, m.Speed, 0.05) || !near(l.PlanRiding, m.Ride.RidingShare, 0.05) || l.Stream.East != 0.5 {
		t.Errorf("%+v; the plan has %v m/s", l, m.Speed)
	}
	sparse, err := w.Debrief(recorded(run, 30, 10000, func(float64) route.Velocity { return route.Toward(4, 90) }))
	if err != nil || sparse.Riding == sparse.Riding || sparse.RidingWhy == "" || !near(sparse.Legs[0].Made, 4, 0.05) {
		t.Errorf("fixes 30 s apart: %+v %v", sparse, err)
	}
	part, err := w.Debrief(recorded(run, 4, 6000, func(float64) route.Velocity { return route.Toward(4, 90) }))
	if err != nil || !part.Finish.IsZero() || !near(part.Gone, 6000, 20) || !near(part.Legs[0].Length, 6000, 20) {
		t.Errorf("given up after 6 km: %+v %v", part, err)
	}
	if days := (Debrief{Plan: d.Plan}).Plan.Outing(InHand); !near(days.Values[GreatestWind].Number(), 9, 1e-6) || days.Handling != InHand || !days.Time.Equal(at(0.5)) {
		t.Errorf("%+v", days)
	}
}

// TestDebriefSet: a board that holds the planned heading at the planned speed in
// a stream that is not that of the tables is set by the real one.
func TestDebriefSet(t *testing.T) {
	day := fairDay(t, steadyWind(t, 9, 270))
	day.Streams = []StreamGauge{{Stream: constantStream{North: 0.3}}}
	run := eastward(t)
	w := prepare(t, run, day, coach())
	m, err := w.Moment(4000, at(1))
	if err != nil {
		t.Fatal(err)
	}
	real := route.Velocity{East: -0.2, North: 0.5}
	d, err := w.Debrief(recorded(run, 5, 8000, func(float64) route.Velocity { return route.Toward(m.Speed, m.Heading).Add(real) }))
	if err != nil {
		t.Fatal(err)
	}
	l := d.Legs[0]
	if !near(l.Set.East, real.East, 0.05) || !near(l.Set.North, real.North, 0.05) || l.Stream.North != 0.3 || !(l.Farthest < -300) {
		t.Errorf("set %v, was %v; farthest %v", l.Set, real, l.Farthest)
	}
}

// TestCalibrated: tracks made by a board of another resistance give that
// resistance back, and the plan made with it is as fast as they were.
func TestCalibrated(t *testing.T) {
	day := fairDay(t, steadyWind(t, 9, 270))
	p := coach()
	p.Drag = Known(7)
	other := prepare(t, eastward(t), day, p)
	track, err := other.Track(at(0.5), 250)
	if err != nil {
		t.Fatal(err)
	}
	track.Planned = false
	w := prepare(t, eastward(t), day, coach())
	d, err := w.Debrief(track)
	if err != nil {
		t.Fatal(err)
	}
	got, err := w.Calibrated(d)
	if err != nil {
		t.Fatal(err)
	}
	if !near(got.Drag.Number(), 7, 0.35) {
		t.Errorf("drag %v, was 7", got.Drag)
	}
	again := appraise(t, prepare(t, eastward(t), day, got), 0.5)
	if was := appraise(t, other, 0.5); !near(again.Arrival.Sub(was.Arrival).Seconds(), 0, 60) {
		t.Errorf("arrives at %v, the track at %v", again.Arrival, was.Arrival)
	}
	if _, err := w.Calibrated(Debrief{}); !errors.Is(err, ErrInput) {
		t.Error(err)
	}
	day.Streams = nil
	blind := prepare(t, eastward(t), day, coach())
	if d, err = blind.Debrief(track); err != nil {
		t.Fatal(err)
	}
	if _, err := blind.Calibrated(d); !errors.Is(err, ErrInput) || d.Legs[0].Through == d.Legs[0].Through || d.Riding == d.Riding {
		t.Errorf("without a stream: %+v %v", d, err)
	}
	two, err := PrepareParty(eastward(t), fairDay(t, steadyWind(t, 9, 270)), Party{Paddlers: []Paddler{coach(), coach()}}, Options{From: at(0), To: at(1), Cell: 500})
	if err != nil {
		t.Fatal(err)
	}
	if d, err = two.Debrief(track); err != nil {
		t.Fatal(err)
	}
	if _, err := two.Calibrated(d); !errors.Is(err, ErrInput) {
		t.Errorf("a party has one resistance: %v", err)
	}
}

// TestDebriefRefuses tracks that say nothing of the run.
func TestDebriefRefuses(t *testing.T) {
	run := eastward(t)
	w := prepare(t, run, fairDay(t, steadyWind(t, 9, 270)), coach())
	good := recorded(run, 60, 2000, func(float64) route.Velocity { return route.Toward(3, 90) })
	for name, change := range map[string]func(*route.Track){
		"planned":  func(t *route.Track) { t.Planned = true },
		"one fix":  func(t *route.Track) { t.Fixes = t.Fixes[:1] },
		"none":     func(t *route.Track) { t.Fixes = nil },
		"too soon": func(t *route.Track) { t.Fixes[0].Time = at(-9) },
		"far": func(t *route.Track) {
			t.Fixes = []route.Fix{{Point: route.Point{Lat: 51, Lon: -20}, Time: at(0.5)}, {Point: route.Point{Lat: 51, Lon: -19.9}, Time: at(1)}}
		},
		"nowhere":  func(t *route.Track) { t.Fixes[1].Point.Lat = math.NaN() },
		"backward": func(t *route.Track) { t.Fixes[2].Time = at(0.4) },
	} {
		x := good
		x.Fixes = append([]route.Fix(nil), good.Fixes...)
		change(&x)
		if _, err := w.Debrief(x); !errors.Is(err, ErrInput) && !errors.Is(err, route.ErrInput) && !errors.Is(err, route.ErrPosition) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
