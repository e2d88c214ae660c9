package route_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

// TestLeewayByHand: each row of the table by hand in 10 m/s from the south,
// which blows to the north, so that right of downwind is east. The digits are
// slope x 10 + offset of the printed row, in cm/s.
func TestLeewayByHand(t *testing.T) {
	for name, want := range map[string]struct{ north, right, left float64 }{
		"person-unknown":           {9.6, 5.4, -5.4},
		"person-vertical":          {4.8, 1.5, -1.5},
		"person-sitting":           {12.02, 1.63, -1.63},
		"person-survival-suit":     {18.22, 10.3, -3.95},
		"person-wetsuit":           {6.3, 3.1, -3.1},
		"person-face-down":         {21.37, 4.3, -4.3},
		"sea-kayak":                {22.72, 4.1, -4.1},
		"surfboard":                {19.3, 5.1, -5.1},
		"windsurfer":               {27.53, 5.6, -5.6},
		"dinghy":                   {20.99, 4.53, -4.53},
		"skiff-flat":               {31.5, 12.9, -12.9},
		"skiff-v":                  {32.68, 0.27, -5.17},
		"skiff-swamped":            {16.5, 3.9, -3.9},
		"skiff-aluminium":          {38.57, 7.12, -7.12},
		"sport-boat":               {65.4, 21.9, -21.9},
		"raft-deep-ballast":        {32.7, 3.2, -4.7},
		"raft-deep-ballast-drogue": {20.0, 4.2, -4.8},
		"raft-shallow-ballast":     {26.8, 11.0, -11.0},
		"raft-escape":              {29.1, 12.0, -5.2},
		"raft-no-ballast":          {37.0, 19.8, -19.8},
		"raft-no-ballast-open":     {63.31, 23.64, -23.64},
		"debris":                   {19.7, 3.6, -3.6},
		"drifter":                  {0, 0, 0},
	} {
		c, err := route.FindCraft(name)
		if err != nil {
			t.Fatal(err)
		}
		r, l := c.Leeway(route.From(10, 180), route.Right), c.Leeway(route.From(10, 180), route.Left)
		near(t, name+" north", r.North*100, want.north, 1e-9)
		near(t, name+" north, left", l.North*100, want.north, 1e-9)
		near(t, name+" right goes east", r.East*100, want.right, 1e-9)
		near(t, name+" left goes west", l.East*100, want.left, 1e-9)
	}
	if n := len(route.Crafts()); n != 23 {
		t.Errorf("%d rows, the hand cases are 23", n)
	}
}

// TestMirrorOnlyWhereTheRowIs: left is the mirror of right for the symmetric
// rows, in any wind, and for no other.
func TestMirrorOnlyWhereTheRowIs(t *testing.T) {
	asymmetric := map[string]bool{"person-survival-suit": true, "skiff-v": true, "raft-deep-ballast": true, "raft-deep-ballast-drogue": true, "raft-escape": true}
	for _, c := range route.Crafts() {
		if c.Symmetric() == asymmetric[c.Name] {
			t.Errorf("%s: symmetric %v", c.Name, c.Symmetric())
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom(route.Crafts()).Draw(t, "craft")
		speed, from := draw(t, "wind", 1, 20), draw(t, "from", 0, 360)
		rd, rr := c.Leeway(route.From(speed, from), route.Right).Resolve(from + 180)
		ld, lr := c.Leeway(route.From(speed, from), route.Left).Resolve(from + 180)
		near(t, "downwind", ld, rd, 1e-12)
		if c.Symmetric() {
			near(t, "mirrored", lr, -rr, 1e-12)
		}
	})
}

func TestExtrapolatedWinds(t *testing.T) {
	c := route.Crafts()[0]
	for w, want := range map[float64]bool{1.9: true, 2: false, 20: false, 20.1: true, math.Inf(1): true} {
		if c.Extrapolated(w) != want {
			t.Errorf("%v m/s: %v", w, !want)
		}
	}
	if !c.Extrapolated(math.NaN()) {
		t.Error("NaN is not extrapolated")
	}
}

func TestCraftsAreCopies(t *testing.T) {
	c := route.Crafts()
	c[0].Name = "x"
	r := route.AngleRows()
	r[0].Name = "x"
	m := route.MeasuredRows()
	m[0].Share = 1
	if route.MeasuredRows()[0].Share == 1 || route.Crafts()[0].Name == "x" || route.AngleRows()[0].Name == "x" {
		t.Error("the table can be written")
	}
	if _, err := route.FindCraft("stand-up board"); !errors.Is(err, route.ErrCraft) {
		t.Errorf("a row nobody published: %v", err)
	}
	if c, err := route.FindCraft("person-powered-vessel-2"); err != nil || c.Name != "surfboard" {
		t.Errorf("by its code: %+v, %v", c, err)
	}
	if _, err := route.FindAngleRow("x"); !errors.Is(err, route.ErrCraft) {
		t.Errorf("no such row: %v", err)
	}
	for _, s := range []route.Side{0, 2} {
		if v := c[1].Leeway(route.From(5, 0), s); !math.IsNaN(v.East) {
			t.Errorf("side %v: %v", s, v)
		}
		if v := r[1].Leeway(route.From(5, 0), s); !math.IsNaN(v.East) {
			t.Errorf("side %v: %v", s, v)
		}
	}
	if v := c[6].Leeway(route.Velocity{}, route.Right); v != (route.Velocity{}) {
		t.Errorf("a calm drives %v", v)
	}
	if v := c[6].Leeway(route.Velocity{East: math.NaN()}, route.Right); !math.IsNaN(v.East) || !math.IsNaN(v.North) {
		t.Errorf("NaN wind drives %v", v)
	}
}

// TestTheTwoTablesAgree: the regression table and the manual one are
// independent prints; in 10 to 30 knots their speeds agree to 0.13 knot.
func TestTheTwoTablesAgree(t *testing.T) {
	for _, r := range route.AngleRows() {
		c, err := route.FindCraft(r.Name)
		if err != nil {
			t.Fatal(err)
		}
		for kt := 10.0; kt <= 30; kt += 5 {
			wind := route.From(kt*route.Knot, 40)
			a, b := r.Leeway(wind, route.Right), c.Leeway(wind, route.Right)
			near(t, r.Name, b.Speed()/route.Knot, a.Speed()/route.Knot, 0.13)
			nearDeg(t, r.Name+" angle", a.Toward(), 40+180+r.Divergence, 1e-9)
		}
	}
}

func drifting(craft string, wind, stream route.Velocity, hours float64) route.Drifter {
	c, err := route.FindCraft(craft)
	if err != nil {
		panic(err)
	}
	return route.Drifter{
		Craft: c, Start: route.Point{Lat: 50, Lon: -4}, Seconds: hours * 3600,
		Wind:   func(route.Point, float64) route.Velocity { return wind },
		Stream: func(route.Point, float64) route.Velocity { return stream },
	}
}

// TestPairByHand: a surfboard in 20 knots for an hour without stream goes
// 0.199 m/s downwind and 0.052 across: 740 m, 15 degrees either side. In a
// stream of 1 knot to the east the wind felt is that over the water.
func TestPairByHand(t *testing.T) {
	r, l, err := drifting("surfboard", route.From(20*route.Knot, 180), route.Velocity{}, 1).Pair()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		d    route.Drift
		turn float64
	}{{r, 14.80}, {l, -14.80}} {
		leg := route.Inverse(c.d.Points[0], c.d.End())
		near(t, "distance", leg.Distance, 740, 2)
		nearDeg(t, "direction", leg.Course, c.turn, 0.01)
		near(t, "leeway", c.d.Leeway, leg.Distance, 0.01)
		if c.d.Extrapolated || len(c.d.Points) != 7 || c.d.Seconds[6] != 3600 {
			t.Errorf("%+v", c.d)
		}
	}
	r, _, err = drifting("drifter", route.From(10, 180), route.Toward(1*route.Knot, 90), 1).Pair()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "with the stream", route.Inverse(r.Points[0], r.End()).Distance, route.NauticalMile, 0.1)
	// A north wind of 10 kn on a stream of 10 kn to the south is no wind.
	r, _, err = drifting("surfboard", route.From(10*route.Knot, 0), route.Toward(10*route.Knot, 180), 1).Pair()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "wind with the stream", r.Leeway, 0, 1e-6)
	d := drifting("surfboard", route.From(10, 180), route.Velocity{}, 1)
	d.Stokes = func(route.Point, float64) route.Velocity { return route.Toward(0.1, 0) }
	with, _, err := d.Pair()
	if err != nil {
		t.Fatal(err)
	}
	d.Stokes = nil
	without, _, _ := d.Pair()
	near(t, "Stokes drift only where asked for", route.Inverse(without.End(), with.End()).Distance, 360, 0.5)
}

// TestDriftSplitsItsSteps: half the step hardly moves the end.
func TestDriftSplitsItsSteps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.SampledFrom(route.Crafts()).Draw(t, "craft")
		turn := draw(t, "turn", -30, 30)
		from, speed := draw(t, "from", 0, 360), draw(t, "wind", 3, 15)
		d := drifting(c.Name, route.Velocity{}, route.Toward(0.4, 120), 3)
		d.Start = drawPoint(t, "start", 70)
		d.Wind = func(_ route.Point, s float64) route.Velocity { return route.From(speed, from+turn*s/3600) }
		d.Step = 600
		a, _, err := d.Pair()
		if err != nil {
			t.Fatal(err)
		}
		d.Step = 300
		b, _, err := d.Pair()
		if err != nil {
			t.Fatal(err)
		}
		near(t, "end", route.Inverse(a.End(), b.End()).Distance, 0, 5)
	})
}

func TestDriftRefuses(t *testing.T) {
	good := drifting("surfboard", route.From(5, 0), route.Velocity{}, 1)
	for name, change := range map[string]func(*route.Drifter){
		"no position": func(d *route.Drifter) { d.Start.Lat = math.NaN() },
		"no time":     func(d *route.Drifter) { d.Seconds = 0 },
		"NaN time":    func(d *route.Drifter) { d.Seconds = math.NaN() },
		"NaN step":    func(d *route.Drifter) { d.Step = math.NaN() },
		"tiny step":   func(d *route.Drifter) { d.Step = 1e-9 },
		"NaN gybe":    func(d *route.Drifter) { d.Gybe = math.NaN() },
		"NaN wind": func(d *route.Drifter) {
			d.Wind = func(route.Point, float64) route.Velocity { return route.From(math.NaN(), 0) }
		},
		"NaN stream": func(d *route.Drifter) {
			d.Stream = func(route.Point, float64) route.Velocity { return route.Velocity{East: math.NaN()} }
		},
		"the pole": func(d *route.Drifter) {
			d.Start.Lat = 84.999
			d.Wind = func(route.Point, float64) route.Velocity { return route.From(20, 180) }
		},
	} {
		d := good
		change(&d)
		if r, _, err := d.Pair(); err == nil || r.Points != nil || !errors.Is(err, route.ErrInput) && !errors.Is(err, route.ErrPosition) {
			t.Errorf("%s: %v", name, err)
		}
		if c, err := d.Cloud(10, 1); err == nil || c.Points != nil {
			t.Errorf("%s, cloud: %v", name, err)
		}
	}
	for _, n := range []int{-1, 0, 1, 100001} {
		if _, err := good.Cloud(n, 1); !errors.Is(err, route.ErrInput) {
			t.Errorf("%d members: %v", n, err)
		}
	}
	if _, err := (route.Cloud{}).Spread(0); !errors.Is(err, route.ErrInput) {
		t.Errorf("spread of nothing: %v", err)
	}
	defer func() {
		if recover() == nil {
			t.Error("no wind function: no panic")
		}
	}()
	good.Wind = nil
	_, _, _ = good.Pair()
}

// TestCloudHasThePublishedScatter: in 10 m/s from the south for an hour the
// scatter of the members about their family's line is the standard error of
// the row, and the cloud lies about the pair.
func TestCloudHasThePublishedScatter(t *testing.T) {
	d := drifting("skiff-v", route.From(10, 180), route.Velocity{}, 1)
	n := 8000
	if testing.Short() {
		n = 2000
	}
	c, err := d.Cloud(n, 42)
	if err != nil {
		t.Fatal(err)
	}
	end := c.Points[len(c.Points)-1]
	for side, fit := range map[int]route.Fit{0: d.Craft.Right, 1: d.Craft.Left} {
		var count, sumE, sumE2, sumN, sumN2 float64
		for i, p := range end {
			if i%2 != side {
				continue
			}
			l := route.ShortInverse(d.Start, p)
			v := route.Toward(l.Distance/3600, l.Mean())
			count++
			sumE += v.East
			sumE2 += v.East * v.East
			sumN += v.North
			sumN2 += v.North * v.North
		}
		tol := 4 / math.Sqrt(count)
		near(t, "crosswind mean", sumE/count, fit.At(10), tol*fit.Scatter)
		near(t, "crosswind scatter", math.Sqrt(sumE2/count-sumE/count*sumE/count), fit.Scatter, tol*fit.Scatter)
		near(t, "downwind mean", sumN/count, d.Craft.Downwind.At(10), tol*d.Craft.Downwind.Scatter)
		near(t, "downwind scatter", math.Sqrt(sumN2/count-sumN/count*sumN/count), d.Craft.Downwind.Scatter, tol*d.Craft.Downwind.Scatter)
	}
	s, err := c.Spread(len(c.Points) - 1)
	if err != nil {
		t.Fatal(err)
	}
	if !(s.RMS > 0 && s.Half > 0 && s.Half < s.RMS && s.RMS < s.Ninety) {
		t.Errorf("%+v", s)
	}
	start, err := c.Spread(0)
	if err != nil || start.RMS != 0 || start.Mean != d.Start {
		t.Errorf("at the start %+v, %v", start, err)
	}
}

func TestCloudRepeats(t *testing.T) {
	d := drifting("surfboard", route.From(8, 200), route.Toward(0.3, 10), 2)
	d.Gybe = route.GybeRate
	d.Start.Lon = 179.999 // the cloud straddles the antimeridian
	a, err := d.Cloud(200, 7)
	if err != nil {
		t.Fatal(err)
	}
	b, _ := d.Cloud(200, 7)
	c, _ := d.Cloud(200, 8)
	last := len(a.Points) - 1
	same, other := 0, 0
	for i := range a.Points[last] {
		if a.Points[last][i] == b.Points[last][i] {
			same++
		}
		if a.Points[last][i] == c.Points[last][i] {
			other++
		}
	}
	if same != 200 || other != 0 {
		t.Errorf("%d of 200 the same with the seed, %d with another", same, other)
	}
	s, err := a.Spread(last)
	if err != nil || !(s.RMS < 5000) {
		t.Errorf("across the antimeridian: %+v, %v", s, err)
	}
}

// TestGybing: with many changes of side the families mix, and the share that
// changed is that of the rate.
func TestGybing(t *testing.T) {
	d := drifting("surfboard", route.From(8, 180), route.Velocity{}, 10)
	d.Gybe = 1.0 / 3600
	c, err := d.Cloud(2000, 3)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "still half", float64(c.Right[len(c.Right)-1]), 1000, 100)
	d.Gybe = 0
	c, err = d.Cloud(100, 3)
	if err != nil {
		t.Fatal(err)
	}
	for _, n := range c.Right {
		if n != 50 {
			t.Fatalf("%d right-going without gybing", n)
		}
	}
}
