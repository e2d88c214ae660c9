package route_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"followingsea.example/route"
)

// TestGeodesicByIntegration: along a geodesic that crosses the equator northward with azimuth α0, at an arc σ on the auxiliary
// sphere, s = b ∫ √(1 + k² sin² σ) and λ = ω - f sin α0 ∫ (2 - f)/(1 + (1-f)√(1 + k² sin² σ)), with k² = e'² cos² α0 [Karney2013];
// on figures so flat and so long that every term of the series counts.
func TestGeodesicByIntegration(t *testing.T) {
	for _, e := range []route.Ellipsoid{route.WGS84, {Axis: 6.4e6, Flattening: 0.0199}, {Axis: 6.4e6, Flattening: -0.0199}} {
		f := e.Flattening
		b, ep2 := e.Axis*(1-f), f*(2-f)/((1-f)*(1-f))
		for _, azimuth := range []float64{12, 47, 80} {
			sa, ca := sind(azimuth), cosd(azimuth)
			root := func(s float64) float64 { return math.Sqrt(1 + ep2*ca*ca*math.Sin(s)*math.Sin(s)) }
			at := func(s float64) (p route.Point, course float64) {
				sin, cos := math.Sincos(s)
				lambda := math.Atan2(sa*sin, cos) - f*sa*simpson(func(s float64) float64 { return (2 - f) / (1 + (1-f)*root(s)) }, 0, s)
				return route.Point{Lat: math.Atan2(ca*sin, math.Hypot(sa, ca*cos)*(1-f)) / rad, Lon: lambda / rad}, math.Atan2(sa, ca*cos) / rad
			}
			for _, arc := range [][2]float64{{0, 0.4}, {0, 1.1}, {-0.7, 0.9}, {0.3, 2.2}, {1.2, 2.8}} {
				from, course := at(arc[0])
				to, end := at(arc[1])
				distance := b * simpson(root, arc[0], arc[1])
				what := fmt.Sprint(e, " azimuth ", azimuth, " arc ", arc, " ")
				d, l := e.Direct(from, course, distance), e.Inverse(from, to)
				near(t, what+"latitude", d.To.Lat, to.Lat, 1e-12)
				nearDeg(t, what+"longitude", d.To.Lon, to.Lon, 1e-12)
				nearDeg(t, what+"end", d.End, end, 1e-12)
				near(t, what+"distance", l.Distance, distance, 5e-8)
				nearDeg(t, what+"course", l.Course, course, 2e-12)
				nearDeg(t, what+"end", l.End, end, 2e-12)
			}
		}
	}
}

// plain is a craft without scatter: it goes downwind at 1 % of the wind and to its side at 2 %.
var plain = route.Craft{Downwind: route.Fit{Slope: 0.01}, Right: route.Fit{Slope: 0.02}, Left: route.Fit{Slope: -0.02}}

func steady(v route.Velocity) func(route.Point, float64) route.Velocity {
	return func(route.Point, float64) route.Velocity { return v }
}

// TestDriftIsARhumbLine: in a steady stream a thing without leeway goes along the line of constant course, to the end of a
// last step that is shorter than the others.
func TestDriftIsARhumbLine(t *testing.T) {
	calm := steady(route.Velocity{})
	for _, start := range []route.Point{{Lat: 60, Lon: 10}, {Lat: -35, Lon: -179.999}, {Lat: 0, Lon: 179.999}} {
		for _, set := range []float64{0, 37, 90, 200, 300} {
			d := route.Drifter{Start: start, Wind: calm, Stream: steady(route.Toward(2, set)), Seconds: 1000, Step: 300}
			r, l, err := d.Pair()
			if err != nil || len(r.Points) != 5 || fmt.Sprint(r.Seconds) != "[0 300 600 900 1000]" || r.Leeway != 0 {
				t.Fatal(r, err)
			}
			for i, p := range r.Points {
				near(t, fmt.Sprint(start, set), route.Inverse(p, route.RhumbDirect(start, set, 2*r.Seconds[i]).To).Distance, 0, 1e-3)
				near(t, fmt.Sprint(start, set, " left"), route.Inverse(p, l.Points[i]).Distance, 0, 1e-9)
			}
		}
	}
	// A step that goes into the time but for a rounding is not one more.
	for _, c := range [][2]float64{{0.9, 0.3}, {0.3, 0.1}, {1.1, 0.1}, {3.3, 1.1}, {2.1, 0.7}, {4.2, 0.7}} {
		r, _, err := route.Drifter{Wind: calm, Seconds: c[0], Step: c[1]}.Pair()
		if n := int(math.Round(c[0]/c[1])) + 1; err != nil || len(r.Points) != n {
			t.Errorf("%v: %d positions, %v, want %d", c, len(r.Points), err, n)
		}
	}
	// The step that is not given is ten minutes.
	r, _, err := route.Drifter{Wind: calm, Seconds: 3600}.Pair()
	if err != nil || len(r.Points) != 7 {
		t.Errorf("%d positions in an hour, %v", len(r.Points), err)
	}
}

// TestDriftByHand: one step of the midpoint rule, on the equator where a metre of east is a metre.
func TestDriftByHand(t *testing.T) {
	const degree = 6378137 * math.Pi / 180
	d := route.Drifter{Wind: steady(route.Velocity{}), Seconds: 600}
	// A stream that grows by 1 mm/s a second: half of it times the time, 0.001·600²/2.
	d.Stream = func(_ route.Point, s float64) route.Velocity { return route.Velocity{East: 0.001 * s} }
	r, _, err := d.Pair()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "a stream that grows with time", r.End().Lon*degree, 180, 1e-6)
	// A stream of x/1000 s at x metres east: with k = 0.6 in a step the midpoint rule has x (1 + k + k²/2).
	d.Start.Lon = 1000 / degree
	d.Stream = func(p route.Point, _ float64) route.Velocity { return route.Velocity{East: p.Lon * degree / 1000} }
	if r, _, err = d.Pair(); err != nil {
		t.Fatal(err)
	}
	near(t, "a stream that grows eastward", r.End().Lon*degree, 1000*(1+0.6+0.18), 1e-6)
	// 10 m/s from the west over the water drive to the east at 0.1 and, right-going, to the south at 0.2, beside a stream of 1
	// and a Stokes drift of 0.5 to the north. The wind over ground is that over the water and the stream.
	d = route.Drifter{Craft: plain, Seconds: 600, Wind: steady(route.Velocity{East: 10, North: 1}), Stream: steady(route.Toward(1, 0)), Stokes: steady(route.Toward(0.5, 0))}
	r, l, err := d.Pair()
	if err != nil {
		t.Fatal(err)
	}
	m, _ := route.Radii(0)
	near(t, "east", r.End().Lon*degree, 60, 1e-4)
	near(t, "right-going", r.End().Lat*rad*m, (1.5-0.2)*600, 1e-2)
	near(t, "left-going", l.End().Lat*rad*m, (1.5+0.2)*600, 1e-2)
	near(t, "leeway", r.Leeway, math.Sqrt(0.01+0.04)*600, 1e-9)
	near(t, "leeway, left", l.Leeway, math.Sqrt(0.01+0.04)*600, 1e-9)
	// The range of the field tests, 2 to 20 m/s over the water, is closed.
	for w, want := range map[float64]bool{down(2): true, 2: false, 20: false, up(20): true} {
		r, _, err := route.Drifter{Craft: plain, Seconds: 600, Wind: steady(route.Velocity{East: w})}.Pair()
		c, err2 := route.Drifter{Craft: plain, Seconds: 600, Wind: steady(route.Velocity{East: w})}.Cloud(2, 1)
		if err != nil || err2 != nil || r.Extrapolated != want || c.Extrapolated != want {
			t.Errorf("wind %v: extrapolated %v and %v, %v, %v", w, r.Extrapolated, c.Extrapolated, err, err2)
		}
	}
	// Wind that is out of the range once has been.
	gust := func(_ route.Point, s float64) route.Velocity {
		if s < 700 && s >= 600 {
			return route.Velocity{East: 5}
		}
		return route.Velocity{East: 25}
	}
	if r, _, err := (route.Drifter{Craft: plain, Seconds: 1200, Step: 100, Wind: gust}).Pair(); err != nil || !r.Extrapolated {
		t.Errorf("a gale but for a lull: %v, %v", r.Extrapolated, err)
	}
	// The time and the place of what is no velocity.
	d = route.Drifter{Craft: plain, Start: route.Point{Lat: 1.25, Lon: 2.5}, Seconds: 1200, Step: 100, Wind: gust, Stream: func(_ route.Point, s float64) route.Velocity {
		if s >= 300 {
			return route.Velocity{East: 101}
		}
		return route.Velocity{}
	}}
	if _, _, err := d.Pair(); !errors.Is(err, route.ErrInput) || !strings.Contains(err.Error(), "at 300 s and 1.24") {
		t.Errorf("a stream of 101 m/s: %v", err)
	}
	// 85 degrees are passed within the step from 7200 s, at 5 m/s and 54.2 km from it.
	near85 := route.Drifter{Start: lat(85 - 0.36), Wind: steady(route.Velocity{}), Seconds: 86400, Step: 3600, Stream: steady(route.Toward(5, 0))}
	if _, _, err := near85.Pair(); !errors.Is(err, route.ErrPosition) || !strings.Contains(err.Error(), "after 7200 s") {
		t.Errorf("beyond 85: %v", err)
	}
}

// east and north are the motions of a member of a cloud about the equator in the first step, m/s.
func motions(t *testing.T, c route.Cloud) (east, north []float64) {
	t.Helper()
	m, n := route.Radii(0)
	for i, p := range c.Points[1] {
		east = append(east, (p.Lon-c.Points[0][i].Lon)*rad*n/c.Seconds[1])
		north = append(north, (p.Lat-c.Points[0][i].Lat)*rad*m/c.Seconds[1])
	}
	return east, north
}

// TestCloudByItsMembers: right-going and left-going by turns from the first; the chance of a change of side in a step is
// 1 - exp(-rate step); on the other side a member diverges by as much as before.
func TestCloudByItsMembers(t *testing.T) {
	wind := steady(route.From(10, 180)) // downwind is north, right is east
	d := route.Drifter{Craft: plain, Wind: wind, Seconds: 600}
	c, err := d.Cloud(5, 1)
	if err != nil {
		t.Fatal(err)
	}
	east, north := motions(t, c)
	for i := range east {
		near(t, "downwind", north[i], 0.1, 1e-6)
		near(t, "across", east[i], 0.2-0.4*float64(i%2), 1e-6)
	}
	if fmt.Sprint(c.Right) != "[3 3]" || fmt.Sprint(c.Seconds) != "[0 600]" {
		t.Errorf("right-going %v at %v", c.Right, c.Seconds)
	}
	d.Gybe = 1.0 / 600
	if c, err = d.Cloud(4000, 1); err != nil {
		t.Fatal(err)
	}
	east, _ = motions(t, c)
	gybed, right := 0.0, 0
	for i := range east {
		if east[i] > 0 != (i%2 == 0) {
			gybed++
		}
		if east[i] > 0 {
			right++
		}
	}
	near(t, "share that gybed", gybed/4000, 1-math.Exp(-1), 0.03)
	if c.Right[1] != right || c.Right[0] != 2000 {
		t.Errorf("%v right-going, want 2000 and %d", c.Right, right)
	}
	d.Craft.Right.Scatter, d.Craft.Left.Scatter, d.Seconds = 0.05, 0.05, 3600
	if c, err = d.Cloud(50, 1); err != nil {
		t.Fatal(err)
	}
	for i := range c.Points[0] {
		first := math.Abs(c.Points[1][i].Lon)
		for k := 1; k < len(c.Points); k++ {
			near(t, "divergence of a member", math.Abs(c.Points[k][i].Lon-c.Points[k-1][i].Lon), first, 1e-9)
		}
	}
}

// TestCloudScatterGrowsWithTheWind: a line of slope + e/20 and offset + e/2 scatters by e (W/20 + 1/2), 0.6 of the standard
// error at 2 m/s and 1.5 of it at 20 m/s; a negative downwind slope is drawn again.
func TestCloudScatterGrowsWithTheWind(t *testing.T) {
	craft := plain
	craft.Downwind.Slope, craft.Downwind.Scatter, craft.Right.Scatter, craft.Left.Scatter = 1, 0.3, 0.1, 0.2
	for w, k := range map[float64]float64{2: 0.6, 20: 1.5} {
		c, err := route.Drifter{Craft: craft, Wind: steady(route.From(w, 180)), Seconds: 1, Step: 1}.Cloud(4000, 5)
		if err != nil {
			t.Fatal(err)
		}
		east, north := motions(t, c)
		var downwind, across [2]float64
		for i := range east {
			downwind[0] += math.Pow(north[i]-w, 2) / 4000
			across[i%2] += math.Pow(math.Abs(east[i])-0.02*w, 2) / 2000
			if (east[i] > 0) != (i%2 == 0) { // scattered over to the other side
				across[i%2] += (math.Pow(math.Abs(east[i])+0.02*w, 2) - math.Pow(math.Abs(east[i])-0.02*w, 2)) / 2000
			}
		}
		near(t, "downwind scatter", math.Sqrt(downwind[0]), 0.3*k, 0.05*0.3*k)
		near(t, "right scatter", math.Sqrt(across[0]), 0.1*k, 0.06*0.1*k)
		near(t, "left scatter", math.Sqrt(across[1]), 0.2*k, 0.06*0.2*k)
	}
	// With slope 0.01 and e 0.4 a slope below 0 is one of e below -0.2: at 10 m/s no member goes slower than 0.1 - 0.2.
	craft.Downwind = route.Fit{Slope: 0.01, Scatter: 0.4}
	c, err := route.Drifter{Craft: craft, Wind: steady(route.From(10, 180)), Seconds: 1, Step: 1}.Cloud(2000, 5)
	if err != nil {
		t.Fatal(err)
	}
	_, north := motions(t, c)
	least := inf
	for _, n := range north {
		least = math.Min(least, n)
	}
	near(t, "the slowest member", least, -0.095, 0.00501)
}

// TestSlopeOfNothingIsNotDrawnAgain: a slope of 0 is not negative, so the members of a craft that does not go downwind diverge as
// those of one that does.
func TestSlopeOfNothingIsNotDrawnAgain(t *testing.T) {
	var across [2][]float64
	for i, slope := range []float64{0, 0.01} {
		craft := plain
		craft.Downwind, craft.Right.Scatter, craft.Left.Scatter = route.Fit{Slope: slope}, 0.1, 0.1
		c, err := route.Drifter{Craft: craft, Wind: steady(route.From(10, 180)), Seconds: 1, Step: 1}.Cloud(20, 9)
		if err != nil {
			t.Fatal(err)
		}
		across[i], _ = motions(t, c)
	}
	for i := range across[0] {
		near(t, fmt.Sprint("member ", i), across[0][i], across[1][i], 1e-6)
	}
}

// TestSpreadByHand: ten members on the equator, two each at 1 to 5 hundredths of a degree from their middle: the mean square
// distance is that of (1 + 4 + 9 + 16 + 25)/5, half of them are within three and nine tenths within five.
func TestSpreadByHand(t *testing.T) {
	const step = 6378137 * math.Pi / 180 / 100
	for _, middle := range []float64{10, -180} {
		var c route.Cloud
		c.Points = make([][]route.Point, 2)
		for k := 1.0; k <= 5; k++ {
			c.Points[1] = append(c.Points[1], lon(middle+k/100))
			c.Points[1] = append(c.Points[1], lon(math.Remainder(middle-k/100, 360)))
		}
		s, err := c.Spread(1)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "mean latitude", s.Mean.Lat, 0, 0)
		nearDeg(t, "mean longitude", s.Mean.Lon, middle, 1e-10)
		near(t, "root mean square", s.RMS, math.Sqrt(11)*step, 1e-4)
		near(t, "half", s.Half, 3*step, 1e-4)
		near(t, "ninety", s.Ninety, 5*step, 1e-4)
		for _, i := range []int{-1, 0, 2} { // before, without members, after
			if _, err := c.Spread(i); !errors.Is(err, route.ErrInput) || !strings.Contains(err.Error(), fmt.Sprintf("time %d of a cloud with 2", i)) {
				t.Errorf("time %d: %v", i, err)
			}
		}
	}
	wide := route.Cloud{Points: [][]route.Point{{{Lat: -10, Lon: 3}, {Lat: 10, Lon: 3}}}}
	s, err := wide.Spread(0)
	near(t, "a cloud of 20 degrees", s.RMS, route.Inverse(lat(0), lat(10)).Distance, 1e-6)
	if err != nil || s.Mean != (route.Point{Lat: 0, Lon: 3}) {
		t.Error(s, err)
	}
	north := route.Cloud{Points: [][]route.Point{{{Lat: 50}, {Lat: 50.3}, {Lat: 50.3, Lon: 0.3}}}}
	s, err = north.Spread(0)
	near(t, "mean of three latitudes", s.Mean.Lat, 50.2, 1e-12)
	near(t, "mean of three longitudes", s.Mean.Lon, 0.1, 1e-12)
	if err != nil {
		t.Error(err)
	}
}

// TestBestHeadingByHand: a board of 1 m/s in 2 m/s to the east makes tracks within asin(1/2) = 30 degrees of east at √3 m/s at
// the edges, square to the heading.
func TestBestHeadingByHand(t *testing.T) {
	stream := route.Toward(2, 90)
	for _, c := range []struct{ track, makes, heading float64 }{{0, 60, 330}, {180, 120, 210}, {20, 60, 330}, {150, 120, 210}} {
		s, held, err := route.BestHeading(c.track, 1, stream)
		if err != nil || held {
			t.Fatal(s, held, err)
		}
		near(t, "track", s.Track, c.makes, 1e-9)
		near(t, "heading", s.Heading, c.heading, 1e-9)
		nearDeg(t, "correction", s.Correction, c.heading-c.track, 1e-9)
		near(t, "made", s.SpeedMade, math.Sqrt(3), 1e-12)
		near(t, "water", s.Water, 1, 0)
	}
	for track, says := range map[float64]string{300: "can be made is 60, 120 degrees off", 240: "can be made is 120, 120 degrees off"} {
		if s, held, err := route.BestHeading(track, 1, stream); !errors.Is(err, route.ErrNoProgress) || !strings.Contains(err.Error(), says) || held || s != (route.Steer{}) {
			t.Errorf("track %v: %+v, %v, %v", track, s, held, err)
		}
	}
	if _, _, err := route.BestHeading(0, 1, route.Toward(1, 180)); !errors.Is(err, route.ErrNoProgress) || !strings.Contains(err.Error(), "-1 m/s along the track 0, speed 1 m/s") {
		t.Errorf("as fast as the stream against it: %v", err)
	}
	if s, held, err := route.BestHeading(60, 1, route.Toward(0.5, 330)); err != nil || !held {
		t.Errorf("a track that can be held: %+v, %v, %v", s, held, err)
	} else {
		nearDeg(t, "30 degrees into the stream", s.Heading, 90, 1e-9)
		nearDeg(t, "correction", s.Correction, 30, 1e-9)
	}
}

// TestIntoWindByHand: the heading is the water track turned into the wind.
func TestIntoWindByHand(t *testing.T) {
	for _, c := range []struct{ track, from, want float64 }{{0, 270, 350}, {0, 90, 10}, {355, 60, 5}, {180, 170, 170}, {180, 190, 190}, {45, 45, 45}, {45, 225, 45}, {720, 0, 0}} {
		nearDeg(t, fmt.Sprint(c), route.IntoWind(c.track, 10, route.From(8, c.from)), c.want, 1e-9)
	}
	if h := route.IntoWind(0, 10, route.Velocity{East: math.NaN()}); !math.IsNaN(h) {
		t.Errorf("no wind known: %v", h)
	}
}

// TestReachesByHand: out at 2 and home at 1 m/s on the first kilometre, out at 1 and home at half a metre a second on two more.
func TestReachesByHand(t *testing.T) {
	run := []route.Reach{{Length: 1000, Out: 2, Home: 1}, {Length: 2000, Out: 1, Home: 0.5}}
	for _, c := range []struct{ endurance, along, seconds float64 }{
		{750, 500, 250},        // half way along the first, 250 s out and 500 home
		{1500, 1000, 500},      // just to its end
		{1800, 1100, 600},      // 300 s are left for the second: 100 s out and 200 home
		{7500, 3000, 2500},     // just to the end of the run
		{7500.5, 3000, 2500},   // and half a second to spare
		{1000000, 3000, 2500},  // a day
		{0, 0, 0},              //
		{3 * 1.5, 3, 3 * 0.5},  // three metres
		{1500 + 3, 1001, 501},  // one metre of the second
		{1500 - 3, 998, 499.0}, // two metres short of it
	} {
		along, seconds, err := route.CommitPoint(c.endurance, run)
		if err != nil {
			t.Fatal(err)
		}
		near(t, fmt.Sprint(c, " along"), along, c.along, 1e-9)
		near(t, fmt.Sprint(c, " seconds"), seconds, c.seconds, 1e-9)
	}
	// 2500 s on from the start; at 1333.3 m it is (2000 - 333.3)/1 on and 1000/1 + 333.3/0.5 home, 1666.7 s each.
	x, err := route.EqualTimeAlong(run)
	near(t, "equal time", x, 1000+1000.0/3, 1e-9)
	if err != nil {
		t.Error(err)
	}
	for _, home := range []float64{0, -1} {
		oneWay := []route.Reach{run[0], {Length: 2000, Out: 1, Home: home}}
		x, err := route.EqualTimeAlong(oneWay)
		along, seconds, err2 := route.CommitPoint(1e6, oneWay)
		if x != 1000 || along != 1000 || seconds != 500 || err != nil || err2 != nil {
			t.Errorf("no way back at %v: equal time %v, commit %v after %v, %v, %v", home, x, along, seconds, err, err2)
		}
		first := []route.Reach{{Length: 2000, Out: 1, Home: home}, run[0]}
		x, err = route.EqualTimeAlong(first)
		along, seconds, err2 = route.CommitPoint(1e6, first)
		if x != 0 || along != 0 || seconds != 0 || err != nil || err2 != nil {
			t.Errorf("no way back from the start at %v: equal time %v, commit %v after %v, %v, %v", home, x, along, seconds, err, err2)
		}
	}
	if _, err := route.EqualTimeAlong([]route.Reach{run[0], run[1], {}}); !errors.Is(err, route.ErrInput) || !strings.Contains(err.Error(), "reach 3") {
		t.Error(err)
	}
	seconds, distance := route.TurnBack(3600, 2, 1)
	near(t, "turn after", seconds, 1200, 1e-9)
	near(t, "turn at", distance, 2400, 1e-9)
	near(t, "equal time of one", route.EqualTime(900, 2, 1), 300, 1e-9)
}

// TestPlansEndWithTheStretch: a goal that is reached as a stretch ends needs no other; the two plans count their stretches.
func TestPlansEndWithTheStretch(t *testing.T) {
	leg := route.Leg{Distance: 7200, Course: 30, End: 30}
	stream := []route.Stretch{{Seconds: 1800}, {Seconds: 1800}, {Seconds: 1800, Water: route.Toward(1, 90)}}
	for name, plan := range map[string]func(route.Leg, float64, []route.Stretch) (route.Crossing, error){"heading": route.CrossOnOneHeading, "track": route.CrossOnOneTrack} {
		x, err := plan(leg, 2, stream)
		if err != nil || len(x.Headings) != 2 || len(x.Made) != 2 || len(x.Track) != 2 {
			t.Fatalf("%s: %+v, %v", name, x, err)
		}
		near(t, name, x.Seconds, 3600, 1e-9)
		near(t, name+" farthest", x.Farthest, 0, 1e-9)
		for i := range x.Headings {
			nearDeg(t, name+" heading", x.Headings[i], 30, 1e-9)
			nearDeg(t, name+" track", x.Track[i], 30, 1e-9)
			near(t, name+" made", x.Made[i], 2, 1e-12)
		}
		if _, err := plan(leg, 2, stream[:1]); !errors.Is(err, route.ErrNotReached) || !strings.Contains(err.Error(), "1800 s") {
			t.Errorf("%s: %v", name, err)
		}
	}
	// Set to the left first and back: a mile to the left of the line is negative.
	knot := route.Knot
	x, err := route.CrossOnOneHeading(route.Leg{Distance: 8 * 1852}, 4*knot, []route.Stretch{{Water: route.Toward(knot, 270), Seconds: 3600}, {Water: route.Toward(knot, 90), Seconds: 3600}})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "farthest to the left", x.Farthest, -1852, 1e-6)
	near(t, "made", x.Made[0], math.Sqrt(17)*knot, 1e-9)
	nearDeg(t, "track", x.Track[0], -math.Atan(0.25)/rad, 1e-9)
	// A stream of the board's own speed with it, and one faster against it from which it starts at the goal's side.
	if x, err = route.CrossOnOneHeading(route.Leg{Distance: 3600}, 1, []route.Stretch{{Water: route.Toward(1, 0), Seconds: 3600}}); err != nil {
		t.Fatal(err)
	}
	near(t, "with a stream as fast", x.Seconds, 1800, 1e-9)
	if x, err = route.CrossOnOneHeading(route.Leg{Distance: 3600}, 1, []route.Stretch{{Water: route.Toward(2, 0), Seconds: 3600}}); err != nil {
		t.Fatal(err)
	}
	near(t, "with a faster stream", x.Seconds, 1200, 1e-9)
	if x, err = route.CrossOnOneHeading(route.Leg{Distance: 3600}, 2, []route.Stretch{{Water: route.Toward(1, 180), Seconds: 3600}}); err != nil {
		t.Fatal(err)
	}
	near(t, "against a slower stream", x.Seconds, 3600, 1e-9)
	// In a stream of 5 m/s a board of 3 m/s can still make the track on which 4 m/s of the stream lie along it, and no other: by
	// heading straight against the 3 m/s across.
	if x, err = route.CrossOnOneHeading(route.Leg{Distance: 4000}, 3, []route.Stretch{{Water: route.Velocity{East: 3, North: 4}, Seconds: 3600}}); err != nil {
		t.Fatal(err)
	}
	near(t, "on the edge of what can be reached", x.Seconds, 1000, 1e-9)
	nearDeg(t, "against the stream across", x.Headings[0], 270, 1e-9)
	// A plan of one stretch is never off the line at the end of one: it ends on it.
	for course := 10.0; course < 360; course += 50 {
		if x, err = route.CrossOnOneHeading(route.Leg{Distance: 1234, Course: course, End: course}, 2, []route.Stretch{{Water: route.Velocity{East: 0.7, North: 0.3}, Seconds: 3600}}); err != nil || x.Farthest != 0 {
			t.Errorf("course %v: %v m off the line, %v", course, x.Farthest, err)
		}
	}
	if _, err = route.CrossOnOneTrack(route.Leg{Distance: 1e5}, 1, []route.Stretch{{Seconds: 3600}, {Seconds: 60, Water: route.Toward(2, 90)}}); !errors.Is(err, route.ErrCrossSet) || !strings.Contains(err.Error(), "stretch 2") {
		t.Error(err)
	}
	if _, err = route.CrossOnOneTrack(route.Leg{Distance: 10000}, 1, []route.Stretch{{Seconds: 3600}, {Seconds: 600, Water: route.Toward(1, 0)}}); !errors.Is(err, route.ErrNotReached) || !strings.Contains(err.Error(), "5200 m of 10000 m left after 4200 s") {
		t.Error(err)
	}
}

// TestPathByHand: a path east along the equator and then north, asked from beside, before, behind and outside its turn.
func TestPathByHand(t *testing.T) {
	const degree = 6378137 * math.Pi / 180
	r, err := route.NewPath(lon(0), lon(1), route.Point{Lat: 1, Lon: 1})
	if err != nil {
		t.Fatal(err)
	}
	up := route.Inverse(lat(0), lat(1)).Distance
	d := func(a, b route.Point) float64 { return route.Inverse(a, b).Distance }
	for _, c := range []struct {
		p            route.Point
		leg          int
		along, right float64
		at           route.Point
	}{
		{route.Point{Lat: 0.01, Lon: 0.25}, 0, degree / 4, -d(lat(0), lat(0.01)), lon(0.25)},
		{route.Point{Lat: -0.01, Lon: 0.25}, 0, degree / 4, d(lat(0), lat(0.01)), lon(0.25)},
		{route.Point{Lat: 0.01, Lon: -0.1}, 0, 0, -d(route.Point{Lat: 0.01, Lon: -0.1}, lon(0)), lon(0)},
		{route.Point{Lat: -0.01, Lon: -0.1}, 0, 0, d(route.Point{Lat: 0.01, Lon: -0.1}, lon(0)), lon(0)},
		{route.Point{Lat: 1.1, Lon: 1.01}, 1, degree + up, d(route.Point{Lat: 1.1, Lon: 1.01}, route.Point{Lat: 1, Lon: 1}), route.Point{Lat: 1, Lon: 1}},
		{route.Point{Lat: 1.1, Lon: 0.99}, 1, degree + up, -d(route.Point{Lat: 1.1, Lon: 0.99}, route.Point{Lat: 1, Lon: 1}), route.Point{Lat: 1, Lon: 1}},
		{route.Point{Lat: -0.1, Lon: 1.1}, 0, degree, d(route.Point{Lat: -0.1, Lon: 1.1}, lon(1)), lon(1)}, // the first of two legs
		{route.Point{Lat: 0, Lon: 0.5}, 0, degree / 2, 0, lon(0.5)},
	} {
		x, err := r.Closest(c.p)
		if err != nil || x.Leg != c.leg {
			t.Errorf("%v: %+v, %v, want leg %d", c.p, x, err, c.leg)
		}
		near(t, fmt.Sprint(c.p, " along"), x.Along, c.along, 1e-5)
		near(t, fmt.Sprint(c.p, " right"), x.Right, c.right, 1e-5)
		near(t, fmt.Sprint(c.p, " distance"), x.Distance, math.Abs(c.right), 1e-5)
		near(t, fmt.Sprint(c.p, " place"), d(x.Point, c.at), 0, 1e-4)
	}
	for _, c := range []struct {
		along  float64
		at     route.Point
		course float64
	}{{0, lon(0), 90}, {degree / 2, lon(0.5), 90}, {degree + up, route.Point{Lat: 1, Lon: 1}, 0}} {
		p, course := r.At(c.along)
		near(t, fmt.Sprint(c.along, " place"), d(p, c.at), 0, 1e-6)
		nearDeg(t, fmt.Sprint(c.along, " course"), course, c.course, 1e-6)
	}
	if _, course := r.At(r.Legs()[0].Distance); course != 0 {
		t.Errorf("the turn belongs to the leg after it: %v", course)
	}
	near(t, "length", r.Length(), degree+up, 1e-6)
	if _, err := route.NewPath(lat(0), lat(1), lat(91)); !errors.Is(err, route.ErrPosition) || !strings.Contains(err.Error(), "position 3") {
		t.Error(err)
	}
	if _, err := route.NewPath(lat(0)); !strings.Contains(err.Error(), "1 positions") {
		t.Error(err)
	}
	for _, bad := range []float64{-5e-324, math.Nextafter(r.Length(), inf)} {
		if p, _ := r.At(bad); !math.IsNaN(p.Lat) {
			t.Errorf("At(%v) = %v", bad, p)
		}
	}
	// Before, beside and beyond a leg that goes on as a geodesic.
	l := r.Legs()[0]
	for _, x := range []float64{-2, 0.3, 4} {
		along, right := l.Offset(route.Point{Lat: -0.5, Lon: x})
		near(t, "along", along, x*degree, 1e-4)
		near(t, "right", right, d(lat(0), lat(0.5)), 1e-4)
		_, left := l.Offset(route.Point{Lat: 0.5, Lon: x})
		near(t, "left", left, -d(lat(0), lat(0.5)), 1e-4)
	}
	nearDeg(t, "mean of a leg across north", route.Leg{Course: 350, End: 20}.Mean(), 5, 1e-12)
	home := route.Leg{From: lat(1), To: lat(2), Distance: 7, Course: 350, End: 20}.Reverse()
	if home != (route.Leg{From: lat(2), To: lat(1), Distance: 7, Course: 200, End: 170}) {
		t.Errorf("home by %+v", home)
	}
}

// TestHeadingsByHand: the 3-4-5 triangle in each of its questions.
func TestHeadingsByHand(t *testing.T) {
	// 5 m/s through the water on a track north, 3 m/s of stream from the west: 4 made good, 36.87 degrees to the left.
	left := math.Asin(0.6) / rad
	h, made := route.HeadingFor(0, 5, route.Toward(3, 90))
	nearDeg(t, "heading", h, -left, 1e-9)
	near(t, "made", made, 4, 1e-12)
	h, made = route.HeadingFor(0, 5, route.Velocity{East: -3, North: -1})
	nearDeg(t, "heading the other way", h, left, 1e-9)
	near(t, "made against 1", made, 3, 1e-12)
	s, err := route.HoldTrack(370, 5, route.Toward(3, 100))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "correction", s.Correction, -left, 1e-9)
	near(t, "track", s.Track, 10, 1e-9)
	near(t, "heading", s.Heading, 370-left, 1e-9)
	near(t, "made", s.SpeedMade, 4, 1e-12)
	near(t, "water", s.Water, 5, 0)
	h, speed := route.SpeedNeeded(0, 4, route.Toward(3, 90))
	nearDeg(t, "heading needed", h, -left, 1e-9)
	near(t, "speed needed", speed, 5, 1e-12)
	g := route.MadeGood(-left, 5, route.Toward(3, 90))
	near(t, "north", g.North, 4, 1e-12)
	near(t, "east", g.East, 0, 1e-12)
	w := route.CurrentFrom(-left, 5, 0, 4)
	near(t, "stream east", w.East, 3, 1e-12)
	near(t, "stream north", w.North, 0, 1e-12)
	// A mile north in half an hour is two knots.
	w = route.SetAndDrift(lat(0), route.Direct(lat(0), 0, 1852).To, 1800)
	near(t, "drift", w.North, 2*route.Knot, 1e-9)
	near(t, "no east", w.East, 0, 1e-9)
	if h, speed := route.SpeedNeeded(0, 1, route.Toward(1, 0)); !math.IsNaN(h) || speed != 0 {
		t.Errorf("the stream alone makes it: %v, %v", h, speed)
	}
	along, right := route.Toward(5, 90).Resolve(90 - left)
	near(t, "along", along, 4, 1e-12)
	near(t, "right", right, 3, 1e-12)
	if d := (route.Velocity{}).From(); !math.IsNaN(d) {
		t.Errorf("a calm comes from %v", d)
	}
}

// TestHandsBreadth: lines of a hand to a few metres, where the ball of the mean radius at the place serves, are as long and run as
// the direct line says.
func TestHandsBreadth(t *testing.T) {
	for _, e := range []route.Ellipsoid{route.WGS84, route.GRS80} {
		for _, from := range []route.Point{{Lat: 50, Lon: 1}, {Lat: -70, Lon: 1}, {Lat: 3, Lon: -1}} {
			for _, d := range []float64{0.05, 0.15, 0.4, 5} {
				for _, course := range []float64{0, 45, 90, 200, 300} {
					l := e.Inverse(from, e.Direct(from, course, d).To)
					near(t, fmt.Sprint(e, from, course, d), l.Distance, d, 4e-9)
					nearDeg(t, fmt.Sprint(e, from, course, d), l.Course, course, 1e-7/d/cosd(from.Lat))
					nearDeg(t, fmt.Sprint(e, from, course, d), l.End, course, 1e-7/d/cosd(from.Lat)+d*1e-4)
				}
			}
		}
	}
}

// TestFetchAmongManyShores: with a few hundred short shores in rings about an eye, the nearest is found in every direction and from
// every side, whatever the order in which they come.
func TestFetchAmongManyShores(t *testing.T) {
	for _, eye := range []route.Point{{Lat: 45, Lon: 45}, {Lat: 0, Lon: 0}, {Lat: -60, Lon: 179.99}} {
		for _, order := range []int{1, 7, -1} {
			var lines [][]route.Point
			const n = 180
			for k := range n {
				i := ((k*order)%n + n) % n
				b := float64(i) * 360 / n
				for _, d := range []float64{1000 + 5*float64(i), 2500, 9000} {
					at := route.Direct(eye, b, d).To
					lines = append(lines, []route.Point{route.Direct(at, b+90, d*0.01).To, route.Direct(at, b-90, d*0.01).To})
				}
			}
			c := coast(t, lines)
			for i := range n {
				b := float64(i) * 360 / n
				near(t, fmt.Sprint(eye, order, b), c.Fetch(eye, b, 50e3), 1000+5*float64(i), 0.1)
				near(t, fmt.Sprint("from the outer ring", eye, order, b), c.Fetch(route.Direct(eye, b, 2400).To, b, 50e3), 100, 0.1)
			}
			s, err := c.NearestShore(eye)
			near(t, "nearest", s.Distance, 1000, 0.1)
			nearDeg(t, "nearest", s.Bearing, 0, 0.01)
			if err != nil {
				t.Error(err)
			}
		}
	}
}

// TestRoundTheEgg: on a figure longer from pole to pole than across, the way to the antipodes leads round the poles and not over one.
func TestRoundTheEgg(t *testing.T) {
	egg := route.Ellipsoid{Axis: 6371008.8, Flattening: -1.0 / 150}
	over := 2 * egg.Rhumb(lat(0), lat(90)).Distance
	l := egg.Inverse(lat(10), route.Point{Lat: -10, Lon: 180})
	if !(l.Distance < over-1000 && l.Distance >= math.Pi*egg.Axis-1) || l.Course == 0 || l.Course == 180 {
		t.Errorf("%+v, over the pole %v m", l, over)
	}
	near(t, "along the meridian", egg.Inverse(lat(10), lat(60)).Distance, egg.Rhumb(lat(10), lat(60)).Distance, 1e-6)
}
