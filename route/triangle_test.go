package route_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

func drawWater(t *rapid.T, most float64) route.Velocity {
	return route.Toward(draw(t, "drift", 0, most), draw(t, "set", 0, 360))
}

// TestTriangleCloses: the heading to hold a track makes good that track, and
// the other questions give back what went in.
func TestTriangleCloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		track, speed, water := draw(t, "track", 0, 360), draw(t, "speed", 0.1, 4), drawWater(t, 5)
		h, made := route.HeadingFor(track, speed, water)
		if math.IsNaN(h) {
			return
		}
		g := route.MadeGood(h, speed, water)
		if made > 1e-6 {
			nearDeg(t, "track", g.Toward(), track, 1e-6/made)
		}
		near(t, "speed made good", g.Speed(), made, 1e-9)
		s := route.CurrentFrom(h, speed, track, made)
		near(t, "stream east", s.East, water.East, 1e-9)
		near(t, "stream north", s.North, water.North, 1e-9)
		back, need := route.SpeedNeeded(track, made, water)
		near(t, "speed needed", need, speed, 1e-9)
		nearDeg(t, "heading needed", back, h, 1e-6)
		turn := draw(t, "turn", 0, 360)
		h2, made2 := route.HeadingFor(track+turn, speed, route.Toward(water.Speed(), water.Toward()+turn))
		if water.Speed() > 0 && made > 1e-6 {
			nearDeg(t, "turned", h2, h+turn, 1e-4)
			near(t, "turned speed", made2, made, 1e-6)
		}
	})
}

func TestHoldTrackIsHeadingFor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		track, speed, water := draw(t, "track", 0, 360), draw(t, "speed", 0, 4), drawWater(t, 5)
		h, made := route.HeadingFor(track, speed, water)
		s, err := route.HoldTrack(track, speed, water)
		if (err != nil) != math.IsNaN(h) {
			t.Fatalf("heading %v, error %v", h, err)
		}
		if err == nil {
			near(t, "heading", s.Heading, h, 1e-12)
			near(t, "made", s.SpeedMade, made, 1e-12)
			nearDeg(t, "correction", s.Correction, h-track, 1e-9)
		} else if s != (route.Steer{}) {
			t.Fatalf("%+v comes with %v", s, err)
		}
	})
}

// TestBothFeasibilityTests: neither test alone is enough.
func TestBothFeasibilityTests(t *testing.T) {
	for _, c := range []struct {
		name         string
		track, speed float64
		water        route.Velocity
		want         error
	}{
		{"the 4 knot boat in a 7 knot river", 0, 4 * route.Knot, route.Toward(7*route.Knot, 90), route.ErrCrossSet},
		{"a stream dead against and faster", 0, 1, route.Toward(2, 180), route.ErrNoProgress},
		{"a stream nearly against: the arc sine exists", 0, 1, route.Toward(2, 170), route.ErrNoProgress},
		{"standing still", 0, 1, route.Toward(1, 180), route.ErrNoProgress},
		{"a faster stream abaft the beam helps", 0, 1, route.Toward(2, 20), nil},
		{"no speed", 0, 0, route.Toward(1, 20), route.ErrCrossSet},
		{"NaN track", math.NaN(), 1, route.Velocity{}, route.ErrInput},
		{"negative speed", 0, -1, route.Velocity{}, route.ErrInput},
		{"NaN stream", 0, 1, route.Velocity{East: math.NaN()}, route.ErrInput},
	} {
		if _, err := route.HoldTrack(c.track, c.speed, c.water); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", c.name, err, c.want)
		}
	}
}

func TestSetAndDriftUndoesDrift(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := drawPoint(t, "reckoned", 70)
		set, drift, hours := draw(t, "set", 0, 360), draw(t, "drift", 0.05, 2), draw(t, "hours", 0.2, 6)
		fix := route.Direct(a, set, drift*hours*3600).To
		v := route.SetAndDrift(a, fix, hours*3600)
		near(t, "drift", v.Speed(), drift, 1e-9)
		nearDeg(t, "set", v.Toward(), set, 0.6)
	})
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if v := route.SetAndDrift(route.Point{}, route.Point{Lat: 1}, bad); !math.IsNaN(v.East) {
			t.Errorf("elapsed %v: %v, want NaN", bad, v)
		}
	}
}

// TestBestHeadingAgainstSearch: no heading makes a track nearer to the wanted
// one, on the same side.
func TestBestHeadingAgainstSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		track, speed, water := draw(t, "track", 0, 360), draw(t, "speed", 0.2, 2), drawWater(t, 4)
		s, held, err := route.BestHeading(track, speed, water)
		if err != nil {
			if errors.Is(err, route.ErrInput) {
				t.Fatal(err)
			}
			return
		}
		g := route.MadeGood(s.Heading, speed, water)
		nearDeg(t, "track", g.Toward(), s.Track, 1e-4)
		near(t, "made", g.Speed(), s.SpeedMade, 1e-6)
		off := math.Abs(math.Remainder(s.Track-track, 360))
		if held {
			near(t, "held", off, 0, 1e-9)
			return
		}
		for h := 0.0; h < 360; h += 0.5 {
			g := route.MadeGood(h, speed, water)
			if d := math.Abs(math.Remainder(g.Toward()-track, 360)); !(d >= off-1e-6) {
				t.Fatalf("heading %v is %v off, best %v is %v off", h, d, s.Heading, off)
			}
		}
	})
	if _, _, err := route.BestHeading(0, math.NaN(), route.Velocity{}); !errors.Is(err, route.ErrInput) {
		t.Errorf("NaN speed: %v", err)
	}
}

func TestVaryingSpeedOfOneIsHoldTrack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		track, speed, water := draw(t, "track", 0, 360), draw(t, "speed", 0.2, 4), drawWater(t, 5)
		want, err := route.HoldTrack(track, speed, water)
		got, err2 := route.HoldTrackVarying(track, func(float64) float64 { return speed }, water)
		if err == nil && want.SpeedMade > 0.01 {
			if err2 != nil {
				t.Fatal(err2)
			}
			nearDeg(t, "heading", got.Heading, want.Heading, 1e-5)
			near(t, "made", got.SpeedMade, want.SpeedMade, 1e-6)
		}
		if err != nil && err2 == nil && got.SpeedMade > 1e-6 {
			t.Fatalf("%+v although %v", got, err)
		}
	})
}

// TestVaryingSpeedAgreesWithItself: with the speed of a board in wind, the
// heading found makes good the track at the speed on that heading.
func TestVaryingSpeedAgreesWithItself(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		track, water, from := draw(t, "track", 0, 360), drawWater(t, 1.2), draw(t, "wind from", 0, 360)
		base, swing := draw(t, "speed", 1, 2.5), draw(t, "swing", 0, 0.95)
		speed := func(h float64) float64 { return base * (1 - swing*math.Cos((h-from)*math.Pi/180)) }
		s, err := route.HoldTrackVarying(track, speed, water)
		if err != nil {
			if errors.Is(err, route.ErrNotConverged) {
				t.Fatal(err)
			}
			return
		}
		near(t, "speed on the heading", s.Water, speed(s.Heading), 1e-8)
		g := route.MadeGood(s.Heading, speed(s.Heading), water)
		if s.SpeedMade > 0.01 {
			nearDeg(t, "track", g.Toward(), track, 1e-4)
		}
		near(t, "made", g.Speed(), s.SpeedMade, 1e-6)
	})
}

// TestVaryingSpeedByHand: with 1 m/s of stream across, 2 m/s hold the track 30 degrees off it. Where heading and speed settle on
// that, a heading on which the board would be faster is not looked for; where they do not, it is, down to the last digit.
func TestVaryingSpeedByHand(t *testing.T) {
	const track = 40.0
	water := route.Toward(1, track+90)
	off := func(h float64) float64 { return math.Remainder(h-track, 360) }
	check := func(name string, speed func(d float64) float64, correction float64) {
		t.Helper()
		s, err := route.HoldTrackVarying(track, func(h float64) float64 { return speed(off(h)) }, water)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			return
		}
		near(t, name+": correction", s.Correction, correction, 1e-7)
		nearDeg(t, name+": heading", s.Heading, track+correction, 1e-7)
		near(t, name+": track", s.Track, track, 0)
		near(t, name+": water", s.Water, speed(correction), 1e-9)
		near(t, name+": made", s.SpeedMade, speed(correction)*cosd(correction), 1e-7)
	}
	check("one speed", func(float64) float64 { return 2 }, -30)
	check("a faster heading that is not asked", func(d float64) float64 {
		if math.Abs(d+10) < 3 {
			return 1 / sind(10)
		}
		return 2
	}, -30)
	// No speed to hold the track with on the track itself, so that all headings are searched; 31 is half way between two of them,
	// where 1/sin 31 times sin 31 is the stream to the last digit.
	for _, d := range []float64{31, 30, 30.5, 29.75, 33.3} {
		v := 1 / sind(d)
		for i := 0; i < 4 && v*sind(d) != 1; i++ {
			v = up(v)
		}
		check(fmt.Sprint("searched ", d), func(x float64) float64 {
			if math.Abs(x) < 5 {
				return 0.5
			}
			return v
		}, -d)
	}
}

func TestVaryingSpeedSaysSo(t *testing.T) {
	water := route.Toward(0.6, 90)
	// A speed that jumps just where it is needed: 2 m/s leads to a heading on
	// which the speed is 0.9, and that one back.
	jump := func(h float64) float64 {
		if math.Remainder(h, 360) > -30 {
			return 0.9
		}
		return 2.0
	}
	if s, err := route.HoldTrackVarying(0, jump, water); !errors.Is(err, route.ErrNotConverged) {
		t.Errorf("a jump: %+v, %v", s, err)
	}
	if s, err := route.HoldTrackVarying(0, func(float64) float64 { return 0.5 }, water); !errors.Is(err, route.ErrCrossSet) {
		t.Errorf("too slow: %+v, %v", s, err)
	}
	for _, v := range []float64{0, -1, math.NaN()} {
		if s, err := route.HoldTrackVarying(0, func(float64) float64 { return v }, water); !errors.Is(err, route.ErrNoProgress) {
			t.Errorf("speed %v: %+v, %v", v, s, err)
		}
	}
	if _, err := route.HoldTrackVarying(math.NaN(), jump, water); !errors.Is(err, route.ErrInput) {
		t.Errorf("NaN track: %v", err)
	}
	defer func() {
		if recover() == nil {
			t.Error("a nil speed does not panic")
		}
	}()
	_, _ = route.HoldTrackVarying(0, nil, water)
}

func TestIntoWindTurnsToTheWind(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		track, leeway, from := draw(t, "track", 0, 360), draw(t, "leeway", 0.5, 20), draw(t, "from", 0, 360)
		h := route.IntoWind(track, leeway, route.From(8, from))
		before, after := math.Abs(math.Remainder(from-track, 360)), math.Abs(math.Remainder(from-h, 360))
		if before > 21 && before < 159 && !(after < before+1e-9) {
			t.Fatalf("track %v, wind from %v: heading %v turns away", track, from, h)
		}
	})
	near(t, "no wind", route.IntoWind(20, 6, route.Velocity{}), 20, 0)
	near(t, "head wind", route.IntoWind(20, 6, route.From(9, 20)), 20, 0)
	if h := route.IntoWind(20, math.NaN(), route.From(9, 90)); !math.IsNaN(h) {
		t.Errorf("NaN leeway: %v", h)
	}
}

// TestOneHeadingByHand: 8 miles north at 4 knots with two hours of stream, the
// first setting east at 1 knot and the second west at 1 knot. On one heading
// the stream cancels: course 000, two hours, one mile off in the middle. On
// one track each hour makes sqrt(16-1) = 3.873 knots: 2 h 3 min 58 s, and a
// third hour is needed.
func TestOneHeadingByHand(t *testing.T) {
	leg := route.Leg{Distance: 8 * route.NauticalMile}
	stream := []route.Stretch{
		{Water: route.Toward(1*route.Knot, 90), Seconds: 3600}, {Water: route.Toward(1*route.Knot, 270), Seconds: 3600},
		{Water: route.Velocity{}, Seconds: 3600},
	}
	x, err := route.CrossOnOneHeading(leg, 4*route.Knot, stream)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "time", x.Seconds, 7200, 1e-6)
	nearDeg(t, "heading", x.Headings[0], 0, 1e-9)
	near(t, "farthest", x.Farthest, route.NauticalMile, 1e-6)
	y, err := route.CrossOnOneTrack(leg, 4*route.Knot, stream)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "time on the line", y.Seconds, 7200+(8-2*math.Sqrt(15))/4*3600, 1e-6)
	nearDeg(t, "first heading", y.Headings[0], 360-math.Asin(0.25)*180/math.Pi, 1e-9)
	if len(y.Headings) != 3 || x.Kind == y.Kind {
		t.Errorf("%+v", y)
	}
}

func drawStream(t *rapid.T, most float64) []route.Stretch {
	s := make([]route.Stretch, rapid.IntRange(3, 12).Draw(t, "hours"))
	for i := range s {
		s[i] = route.Stretch{Water: drawWater(t, most), Seconds: draw(t, "seconds", 600, 5400)}
	}
	return s
}

// TestOneHeadingArrives: sailing the plan through the stream ends at the goal.
func TestOneHeadingArrives(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := route.Leg{Distance: draw(t, "distance", 500, 15e3), Course: draw(t, "course", 0, 360)}
		leg.End = leg.Course
		speed, stream := draw(t, "speed", 0.8, 3), drawStream(t, 2)
		x, err := route.CrossOnOneHeading(leg, speed, stream)
		if err != nil {
			return
		}
		var at route.Velocity
		left := x.Seconds
		for i, s := range stream {
			if left <= 0 || i >= len(x.Headings) {
				break
			}
			d := math.Min(left, s.Seconds)
			left -= d
			at = at.Add(route.MadeGood(x.Headings[i], speed, s.Water).Scale(d))
		}
		miss := at.Sub(route.Toward(leg.Distance, leg.Course))
		near(t, "miss", miss.Speed(), 0, 1e-5)
	})
}

// TestOneHeadingIsNoSlower: in a stream that depends on time alone one heading
// is the fastest way over.
func TestOneHeadingIsNoSlower(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		leg := route.Leg{Distance: draw(t, "distance", 500, 8e3), Course: draw(t, "course", 0, 360)}
		leg.End = leg.Course
		speed, stream := draw(t, "speed", 1.2, 3), drawStream(t, 1)
		track, err := route.CrossOnOneTrack(leg, speed, stream)
		if err != nil {
			return
		}
		heading, err := route.CrossOnOneHeading(leg, speed, stream)
		if err != nil {
			t.Fatal(err)
		}
		if !(heading.Seconds <= track.Seconds*(1+1e-12)) {
			t.Fatalf("one heading %v s, one track %v s", heading.Seconds, track.Seconds)
		}
	})
}

func TestPlansRefuse(t *testing.T) {
	leg := route.Leg{Distance: 5000}
	still := []route.Stretch{{Seconds: 3600}}
	for name, c := range map[string]struct {
		leg    route.Leg
		speed  float64
		stream []route.Stretch
		want   error
	}{
		"no leg":        {route.Leg{}, 2, still, route.ErrInput},
		"NaN course":    {route.Leg{Distance: 5, Course: math.NaN()}, 2, still, route.ErrInput},
		"no speed":      {leg, 0, still, route.ErrInput},
		"NaN speed":     {leg, math.NaN(), still, route.ErrInput},
		"no stream":     {leg, 2, nil, route.ErrInput},
		"NaN stream":    {leg, 2, []route.Stretch{{Water: route.Velocity{East: math.NaN()}, Seconds: 3600}}, route.ErrInput},
		"no time":       {leg, 2, []route.Stretch{{}}, route.ErrInput},
		"not far":       {leg, 1, still, route.ErrNotReached},
		"against a sea": {leg, 1, []route.Stretch{{Water: route.Toward(2, 180), Seconds: 1e6}}, route.ErrNotReached},
	} {
		if x, err := route.CrossOnOneHeading(c.leg, c.speed, c.stream); !errors.Is(err, c.want) || x.Headings != nil {
			t.Errorf("%s, one heading: %+v, %v", name, x, err)
		}
		if x, err := route.CrossOnOneTrack(c.leg, c.speed, c.stream); err == nil || x.Headings != nil {
			t.Errorf("%s, one track: %+v, %v", name, x, err)
		}
	}
}

// TestWindShortensTheRadius: any steady wind along the line shortens the
// radius of action, and moves the equal-time point to windward of halfway.
func TestWindShortensTheRadius(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		e, v, w := draw(t, "endurance", 600, 36000), draw(t, "speed", 0.5, 3), draw(t, "wind", -0.99, 0.99)
		w *= v
		s, d := route.TurnBack(e, v+w, v-w)
		near(t, "distance", d, e*(v*v-w*w)/(2*v), 1e-8*e)
		near(t, "home in time", s+d/(v-w), e, 1e-8*e)
		if !(d <= e*v/2*(1+1e-12)) {
			t.Fatalf("%v m in wind, %v m without", d, e*v/2)
		}
		x := route.EqualTime(10000, v+w, v-w)
		near(t, "as long on as home", (10000-x)/(v+w), x/(v-w), 1e-6*x/(v-w)+1e-6)
		if (w > 0) != (x < 5000) && math.Abs(w) > 1e-9 {
			t.Fatalf("wind %v, point at %v: want it to windward", w, x)
		}
	})
	for _, bad := range [][3]float64{{-1, 2, 1}, {1, 0, 1}, {1, -2, 1}, {math.NaN(), 2, 1}, {1, math.NaN(), 1}, {1, 2, math.NaN()}, {math.Inf(1), 2, 1}} {
		if s, d := route.TurnBack(bad[0], bad[1], bad[2]); !math.IsNaN(s) || !math.IsNaN(d) {
			t.Errorf("TurnBack%v = %v, %v, want NaN", bad, s, d)
		}
		if x := route.EqualTime(bad[0], bad[1], bad[2]); !math.IsNaN(x) {
			t.Errorf("EqualTime%v = %v, want NaN", bad, x)
		}
	}
}

func drawRunReaches(t *rapid.T) []route.Reach {
	r := make([]route.Reach, rapid.IntRange(1, 6).Draw(t, "reaches"))
	for i := range r {
		r[i] = route.Reach{Length: draw(t, "length", 100, 5000), Out: draw(t, "out", 0.5, 4), Home: draw(t, "home", -0.3, 2)}
	}
	return r
}

func TestCommitPointOfOneReach(t *testing.T) {
	run := []route.Reach{{Length: 1e9, Out: 2.2, Home: 0.6}}
	a, s, err := route.CommitPoint(10800, run)
	if err != nil {
		t.Fatal(err)
	}
	s2, a2 := route.TurnBack(10800, 2.2, 0.6)
	near(t, "along", a, a2, 1e-9)
	near(t, "time", s, s2, 1e-9)
	x, err := route.EqualTimeAlong([]route.Reach{{Length: 9000, Out: 2.2, Home: 0.6}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "equal time", x, route.EqualTime(9000, 2.2, 0.6), 1e-9)
	for _, bad := range [][]route.Reach{nil, {{Length: -1, Out: 1, Home: 1}}, {{Length: 1, Out: 0, Home: 1}}, {{Length: 1, Out: 1, Home: math.NaN()}}} {
		if _, _, err := route.CommitPoint(1, bad); !errors.Is(err, route.ErrInput) {
			t.Errorf("%v: %v", bad, err)
		}
		if _, err := route.EqualTimeAlong(bad); !errors.Is(err, route.ErrInput) {
			t.Errorf("%v: %v", bad, err)
		}
	}
	if _, _, err := route.CommitPoint(math.NaN(), run); !errors.Is(err, route.ErrInput) {
		t.Errorf("NaN endurance: %v", err)
	}
}

// wayHome is the time out to a point and home from it, walked in small steps.
func wayHome(run []route.Reach, x float64) (out, home float64) {
	for _, r := range run {
		d := math.Min(x, r.Length)
		out += d / r.Out
		if d > 0 && !(r.Home > 0) {
			home = math.Inf(1)
		} else if d > 0 {
			home += d / r.Home
		}
		x -= d
	}
	return out, home
}

func TestCommitPointAgainstSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run, e := drawRunReaches(t), draw(t, "endurance", 0, 20000)
		a, s, err := route.CommitPoint(e, run)
		if err != nil {
			t.Fatal(err)
		}
		total := 0.0
		for _, r := range run {
			total += r.Length
		}
		out, home := wayHome(run, a-1e-6)
		near(t, "time", s, out, 1e-3)
		if a > 1e-6 && !(out+home <= e+1e-6) {
			t.Fatalf("no way home from the commit point: %v + %v s of %v", out, home, e)
		}
		if out, home := wayHome(run, math.Min(total, a+1)); a < total-1 && !(out+home > e) {
			t.Fatalf("a way home from beyond the commit point: %v + %v s of %v", out, home, e)
		}
	})
}

func TestEqualTimeAlongAgainstSearch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		run := drawRunReaches(t)
		x, err := route.EqualTimeAlong(run)
		if err != nil {
			t.Fatal(err)
		}
		all, _ := wayHome(run, math.Inf(1))
		total := 0.0
		for _, r := range run {
			total += r.Length
		}
		if out, home := wayHome(run, x-1); x > 1 && !(home <= all-out+1e-6) {
			t.Fatalf("before %v: home %v, on %v", x, home, all-out)
		}
		if out, home := wayHome(run, x+1); x < total-1 && !(home >= all-out-1e-6) {
			t.Fatalf("past %v: home %v, on %v", x, home, all-out)
		}
	})
}
