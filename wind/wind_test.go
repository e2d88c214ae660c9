package wind_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"followingsea.example/wind"
)

// near reports whether got is within tol of want; NaN is near nothing.
func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

func mustWind(t testing.TB, speed, from float64) wind.Wind {
	t.Helper()
	w, err := wind.New(speed, from)
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func TestCardinalWindsAreExact(t *testing.T) {
	for _, c := range []struct {
		from float64
		want wind.Velocity
	}{
		{0, wind.Velocity{North: -5}},
		{90, wind.Velocity{East: -5}},
		{180, wind.Velocity{North: 5}},
		{270, wind.Velocity{East: 5}},
		{360, wind.Velocity{North: -5}},
	} {
		if got := mustWind(t, 5, c.from).Velocity(); got != c.want {
			t.Errorf("from %v: %v, want %v", c.from, got, c.want)
		}
	}
}

func TestConstructorsRefuse(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		speed, gust, from float64
		want              error
	}{
		{-1, 2, 0, wind.ErrSpeed}, {nan, 2, 0, wind.ErrSpeed}, {200, 201, 0, wind.ErrSpeed},
		{5, 6, -1, wind.ErrDirection}, {5, 6, 361, wind.ErrDirection}, {5, 6, nan, wind.ErrDirection},
		{5, 4, 10, wind.ErrGust}, {5, nan, 10, wind.ErrGust}, {5, 400, 10, wind.ErrGust},
	} {
		w, err := wind.Gusting(c.speed, c.gust, c.from)
		if !errors.Is(err, c.want) || w != (wind.Wind{}) {
			t.Errorf("%+v: %v, %v", c, w, err)
		}
	}
	if w := mustWind(t, 0, 777); !w.IsCalm() || w.Velocity() != (wind.Velocity{}) {
		t.Error("a calm has no direction and does not ask for one")
	}
	if mustWind(t, 5, 360).From != 0 {
		t.Error("360 is north")
	}
}

func TestWindToVelocityAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		speed := rapid.Float64Range(0.01, wind.StrongestMean).Draw(t, "speed")
		from := rapid.Float64Range(0, 359.99).Draw(t, "from")
		w, _ := wind.New(speed, from)
		b := w.Velocity().Wind()
		if !near(b.Speed, speed, 1e-12*speed) || !near(math.Abs(math.Mod(b.From-from+540, 360)-180), 0, 1e-9) {
			t.Fatalf("%v came back as %v", w, b)
		}
	})
}

func TestInterpolationKeepsSpeedAndTheShortWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		speed := rapid.Float64Range(0.1, 40).Draw(t, "speed")
		from := rapid.Float64Range(0, 360).Draw(t, "from")
		turn := rapid.Float64Range(-179, 179).Draw(t, "turn")
		f := rapid.Float64Range(0, 1).Draw(t, "f")
		a := wind.Wind{Speed: speed, From: from}
		b := wind.Wind{Speed: speed, From: from + turn}
		w := wind.Interpolate(a, b, f)
		if !near(w.Speed, speed, 1e-12*speed) {
			t.Fatalf("speed %v became %v", speed, w.Speed)
		}
		swung := math.Mod(w.From-from+900, 360) - 180
		if !(swung*turn >= -1e-9 && math.Abs(swung) <= math.Abs(turn)+1e-9) {
			t.Fatalf("turn %v: at %v swung %v", turn, f, swung)
		}
		// The other way round, and the record turned by a full circle, agree.
		r := wind.Interpolate(b, a, 1-f)
		if !near(math.Abs(math.Mod(r.From-w.From+900, 360)-180), 0, 1e-6) {
			t.Fatalf("forward %v backward %v", w, r)
		}
	})
	n := wind.Interpolate(wind.Wind{Speed: 5, From: 350}, wind.Wind{Speed: 5, From: 10}, 0.5)
	if !near(math.Mod(n.From+180, 360), 180, 1e-9) {
		t.Errorf("350 to 10 goes through %v", n.From)
	}
	c := wind.Interpolate(wind.Calm(), wind.Wind{Speed: 8, From: 200}, 0.25)
	if !near(c.Speed, 2, 1e-12) || !near(c.From, 200, 1e-9) {
		t.Errorf("from a calm: %v", c)
	}
	for _, speed := range []float64{1e-9, 1e-5, 1, 70} { // directions know no unit of speed
		a, b := wind.Wind{Speed: speed, From: 10}, wind.Wind{Speed: speed, From: 100}
		if got := wind.Interpolate(a, b, 0.5); !near(got.From, 55, 1e-9) {
			t.Errorf("half way from 10 to 100 at %v m/s: %v", speed, got.From)
		}
	}
	a, b := wind.Wind{Speed: 5, From: 0}, wind.Wind{Speed: 5, From: 180}
	for f, want := range map[float64]float64{0.4: 0, 0.5: 0, 0.6: 180} {
		if got := wind.Interpolate(a, b, f); got.From != want || got.Speed != 5 {
			t.Errorf("reversal at %v: %v", f, got)
		}
	}
}

var day = time.Date(2026, 6, 21, 0, 0, 0, 0, time.UTC)

func at(hours float64) time.Time { return day.Add(time.Duration(hours * float64(time.Hour))) }

// series makes a series from hour, speed, from triples.
func series(t testing.TB, gap time.Duration, rows ...[3]float64) wind.Series {
	t.Helper()
	var in []wind.Sample
	for _, r := range rows {
		in = append(in, wind.Sample{Time: at(r[0]), Wind: wind.Wind{Speed: r[1], From: r[2]}})
	}
	s, err := wind.NewSeries(in, gap)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestSeriesSortsValidatesAndKnowsItsGaps(t *testing.T) {
	s := series(t, 0, [3]float64{2, 6, 200}, [3]float64{0, 4, 180}, [3]float64{1, 5, 190}, [3]float64{9, 5, 200})
	if s.Len() != 4 || s.Start() != at(0) || s.End() != at(9) {
		t.Fatalf("%v %v %v", s.Len(), s.Start(), s.End())
	}
	if g := s.Gaps(); len(g) != 1 || g[0] != (wind.Span{Start: at(2), End: at(9)}) {
		t.Errorf("gaps %v", g)
	}
	for _, c := range []struct {
		hour  float64
		speed float64
		err   error
	}{
		{0, 4, nil}, {0.5, 4.5, nil}, {2, 6, nil}, {9, 5, nil},
		{-1, 0, wind.ErrOutside}, {9.1, 0, wind.ErrOutside}, {3, 0, wind.ErrGap},
	} {
		w, err := s.At(at(c.hour))
		if !errors.Is(err, c.err) || w.Speed != c.speed {
			t.Errorf("at %v h: %v, %v", c.hour, w, err)
		}
	}
	sub, err := s.Between(at(0.5), at(1.5))
	if err != nil || sub.Len() != 3 || sub.Sample(0).Speed != 4.5 || sub.Sample(2).Speed != 5.5 {
		t.Errorf("between: %v %v", sub.Samples(), err)
	}
	if _, err := s.Between(at(1), at(0)); !errors.Is(err, wind.ErrSpan) {
		t.Error(err)
	}
	if one, err := s.Between(at(1), at(1)); err != nil || one.Len() != 1 {
		t.Error(one, err)
	}
	for _, c := range []struct {
		in   []wind.Sample
		want error
	}{
		{nil, wind.ErrEmpty},
		{[]wind.Sample{{}}, wind.ErrTime},
		{[]wind.Sample{{Time: at(0)}, {Time: at(0)}}, wind.ErrDuplicate},
		{[]wind.Sample{{Time: at(0), Wind: wind.Wind{Speed: math.NaN()}}}, wind.ErrSpeed},
		{[]wind.Sample{{Time: at(0), Wind: wind.Wind{Speed: 5, From: math.NaN()}}}, wind.ErrDirection},
	} {
		if _, err := wind.NewSeries(c.in, 0); !errors.Is(err, c.want) {
			t.Errorf("want %v, got %v", c.want, err)
		}
	}
}
