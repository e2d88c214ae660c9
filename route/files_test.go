package route

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
)

// TestFileTimesAndPlaces: years from 1900 to 2200 are read, longitudes to a full turn either way and into the usual range, and
// what looks like swapped coordinates is asked about.
func TestFileTimesAndPlaces(t *testing.T) {
	for text, ok := range map[string]bool{
		"1900-01-01T00:00:00Z": true, "1899-12-31T23:59:59Z": false, "2200-12-31T23:59:59Z": true, "2201-01-01T00:00:00Z": false,
		"2026-06-21t04:43:00z": true, "2026-06-21 04:43:00Z": true, "2026-06-21": false, "": false, "z": false,
	} {
		if _, err := fileTime(text); (err == nil) != ok {
			t.Errorf("%q: %v", text, err)
		}
	}
	for _, c := range []struct {
		lat, lon float64
		want     Point
		says     string
	}{
		{90, 180, Point{90, 180}, ""}, {-90, -180, Point{-90, -180}, ""}, {1, 360, Point{1, 0}, ""}, {1, -360, Point{1, 0}, ""}, {1, 181, Point{1, -179}, ""}, {1, -181, Point{1, 179}, ""},
		{1, math.Nextafter(360, 400), Point{}, "longitude 360.0"}, {1, -361, Point{}, "longitude -361"}, {math.Nextafter(90, 100), 91, Point{}, "outside -90 to 90"},
		{-122, 49, Point{}, "are the two swapped?"}, {180, 90, Point{}, "are the two swapped?"}, {-180, -90, Point{}, "are the two swapped?"}, {181, 49, Point{}, "latitude 181"},
	} {
		p, err := filePosition(c.lat, c.lon)
		if p != c.want || (err == nil) != (c.says == "") || err != nil && (!strings.Contains(err.Error(), c.says) || strings.Contains(err.Error(), "swapped") != strings.Contains(c.says, "swapped")) {
			t.Errorf("%v, %v: %v, %v", c.lat, c.lon, p, err)
		}
	}
	run := []Point{{10, 20}, {10, 21}}
	for p, want := range map[Point]bool{{20, 10}: true, {20.1, 10.1}: true, {14.4, 20}: false, {40, 60}: false, {10, 20}: false, {26, 10}: false, {20, 16}: false, {20, 95}: false} {
		if swapped(run, p) != want {
			t.Errorf("%v by a run at %v is swapped: %v", p, run[0], !want)
		}
	}
	if swapped(nil, Point{20, 10}) {
		t.Error("swapped with no run")
	}
}

// TestRunByHand: lengths and legs add up, and what was not given of a leg is unknown.
func TestRunByHand(t *testing.T) {
	r := Run{Points: []Point{{0, 0}, {0, 1}, {0, 3}}, Depths: []Value{Known(5), Known(6)}, Exposure: []WindFactor{{1, 1, 1}, {2, 2, 2}}}
	within(t, "length", r.Length(), 3*coastA*math.Pi/180, 1e-6)
	if l := r.Legs(); len(l) != 2 || l[1].From != r.Points[1] || l[1].To != r.Points[2] {
		t.Error(l)
	}
	if l := (Run{Points: r.Points[:2]}).Legs(); len(l) != 1 {
		t.Error(l)
	}
	if l := (Run{Points: r.Points[:1]}); l.Legs() != nil || l.Length() != 0 {
		t.Error(l)
	}
	for leg, want := range map[int]Value{-1: {}, 0: Known(5), 1: Known(6), 2: {}} {
		if d := r.Depth(leg); d != want {
			t.Errorf("leg %d: depth %v", leg, d)
		}
		x, _ := want.Get()
		if f := r.Factor(leg); f.Given() != (leg == 0 || leg == 1) || f.Given() && f.Mid != x-4 {
			t.Errorf("leg %d: factor %v", leg, f)
		}
	}
}

// TestVaryingSpeedIsSearched: a speed that does not let heading and speed settle is searched all round; of the headings that hold
// the track the fastest is taken, and the reason says what stands in the way.
func TestVaryingSpeedIsSearched(t *testing.T) {
	// 2 m/s to the left of north, none to the right: to hold north against 1 m/s from the left wants asin(1/2) to the left.
	left := func(h float64) float64 {
		if wrapLon(h) < -5 {
			return 2
		}
		return 0
	}
	s, err := HoldTrackVarying(0, left, Toward(1, 90))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "heading", s.Heading, 330, 1e-6)
	within(t, "correction", s.Correction, -30, 1e-6)
	within(t, "made", s.SpeedMade, math.Sqrt(3), 1e-6)
	within(t, "water", s.Water, 2, 0)
	within(t, "track", s.Track, 0, 0)
	// The same with a stream along, on another track, to the other side, in a narrow sector.
	right := func(h float64) float64 {
		if d := wrapLon(h - 200); d > 20 && d < 100 {
			return 2
		}
		return math.NaN()
	}
	if s, err = HoldTrackVarying(200, right, Toward(1, 110).Add(Toward(0.5, 20))); err != nil {
		t.Fatal(err)
	}
	within(t, "heading", s.Heading, 230, 1e-6)
	within(t, "correction", s.Correction, 30, 1e-6)
	within(t, "made", s.SpeedMade, math.Sqrt(3)-0.5, 1e-6)
	// Two headings hold it, at 30 and at 90 degrees to the left: the slow one is not taken, whichever is found first.
	two := func(h float64) float64 {
		switch d := wrapLon(h); {
		case d < -85:
			return 1
		case d < -25:
			return 2
		}
		return math.NaN()
	}
	if s, err = HoldTrackVarying(0, two, Toward(1, 90)); err != nil {
		t.Fatal(err)
	}
	within(t, "the faster", s.Heading, 330, 1e-6)
	for name, c := range map[string]struct {
		speed func(float64) float64
		water Velocity
		want  error
		says  string
	}{
		"carried backward": {left, Toward(1, 90).Add(Toward(2, 180)), ErrNoProgress, "-0.268 m/s along the track 0 at best"},
		"nothing holds it": {left, Toward(3, 90), ErrCrossSet, "3 m/s across the track 0"},
		"no speed at all":  {func(float64) float64 { return 0 }, Toward(1, 90), ErrNoProgress, "no speed on any heading"},
		"no stream":        {left, Velocity{math.NaN(), 0}, ErrInput, "stream"},
	} {
		if s, err := HoldTrackVarying(0, c.speed, c.water); !errors.Is(err, c.want) || !strings.Contains(err.Error(), c.says) || s != (Steer{}) {
			t.Errorf("%s: %+v, %v", name, s, err)
		}
	}
}

// TestHoldCourseByHand: the 3-4-5 triangle, a leeway, the fastest of several headings, and what the reasons say.
func TestHoldCourseByHand(t *testing.T) {
	five := func(h float64, _ Velocity) Velocity { return Toward(5, h) }
	c, err := HoldCourse(five, 20, Velocity{}, Toward(3, 110))
	if err != nil {
		t.Fatal(err)
	}
	within(t, "heading", c.Heading, wrapDeg(20-math.Asin(0.6)*180/math.Pi), 1e-6)
	within(t, "made", c.Made, 4, 1e-7)
	along, right := c.Ground.Resolve(20)
	within(t, "over ground along", along, 4, 1e-7)
	within(t, "over ground across", right, 0, 1e-12)
	// A guess near it or far from it does not change it.
	for _, guess := range []float64{340, 345, 100, 160} {
		g, err := holdCourse(five, 20, Velocity{}, Toward(3, 110), guess)
		if err != nil {
			t.Fatal(err)
		}
		within(t, fmt.Sprint("guess ", guess), g.Heading, c.Heading, 1e-6)
		within(t, fmt.Sprint("guess ", guess), g.Made, 4, 1e-7)
	}
	// A board set 1 m/s downwind by the wind over the water: wind 10 less 4 m/s of stream.
	set := func(h float64, w Velocity) Velocity { return Toward(2, h).Add(w.Scale(1.0 / 6)) }
	if c, err = HoldCourse(set, 0, Velocity{East: 10, North: 1}, Velocity{East: 4, North: 1}); !errors.Is(err, ErrCrossSet) {
		t.Errorf("5 m/s across: %v, %v", c, err)
	}
	if c, err = HoldCourse(set, 0, Velocity{East: 6.5, North: 1}, Velocity{East: 0.5, North: 1}); err != nil {
		t.Fatal(err)
	}
	// 1.5 across of 2: the rest is along, with the stream.
	within(t, "leeway and stream", c.Made, math.Sqrt(4-2.25)+1, 1e-6)
	within(t, "into both", c.Heading, 360-math.Asin(0.75)*180/math.Pi, 1e-5)
	back := Velocity{North: -6.5}
	if _, err = HoldCourse(five, 0, Velocity{}, back); !errors.Is(err, ErrNoProgress) || !strings.Contains(err.Error(), "1.50 m/s backward along 0") {
		t.Error(err)
	}
	if _, err = HoldCourse(five, 370, Velocity{}, Toward(6, 100)); !errors.Is(err, ErrCrossSet) || !strings.Contains(err.Error(), "track 10") {
		t.Error(err)
	}
	if c, err = HoldCourse(five, 0, Velocity{}, Velocity{}); err != nil || !(math.Abs(wrapLon(c.Heading)) <= 1e-6) || !(math.Abs(c.Made-5) <= 1e-9) {
		t.Error(c, err)
	}
}
