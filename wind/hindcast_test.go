package wind_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"followingsea.example/wind"
	"pgregory.net/rapid"
)

// bay is a place with a fetch all round and a mean depth.
func bay(law wind.Law, fetch, depth float64) wind.Hindcast {
	h := wind.Hindcast{Law: law, Fetch: func(float64) float64 { return fetch }}
	if !math.IsInf(depth, 1) {
		h.MeanDepth = func(time.Time, float64) float64 { return depth }
	}
	return h
}

// blow carries flat water through winds of (speed, from, hours).
func blow(h wind.Hindcast, winds ...[3]float64) wind.State {
	s := h.Stepper()
	for _, w := range winds {
		s.Steady(wind.Wind{Speed: w[0], Gust: math.NaN(), From: w[1]}, w[2]*3600)
	}
	return s.State()
}

// twin is the step of Hindcast in plain form: the exact law, Euler's method in short steps,
// rates instead of closed forms.
type twin struct {
	law                  wind.Law
	fetch, depth         float64
	hs, tp, from         float64
	oldHs, oldTp, oldDir float64
}

func (s *twin) leave(energy float64) {
	e := s.oldHs * s.oldHs
	if energy <= 0 {
		return
	}
	f := energy / (e + energy)
	if e == 0 {
		s.oldDir, s.oldTp = s.from, s.tp
	}
	s.oldTp += f * (s.tp - s.oldTp)
	x := (1-f)*math.Cos(s.oldDir*math.Pi/180) + f*math.Cos(s.from*math.Pi/180)
	y := (1-f)*math.Sin(s.oldDir*math.Pi/180) + f*math.Sin(s.from*math.Pi/180)
	s.oldDir = math.Atan2(y, x) * 180 / math.Pi
	s.oldHs = math.Sqrt(e + energy)
}

func (s *twin) step(u, from, dt float64) {
	const g = wind.Gravity
	c := wind.Conditions{Speed: u, Fetch: s.fetch, Duration: inf, MeanDepth: s.depth}
	// Old sea.
	if s.oldHs > 0 {
		life := math.Min(8.5*3600, s.fetch/(g*s.oldTp/(4*math.Pi)))
		s.oldHs -= s.oldHs * dt / life
	}
	if u == 0 {
		s.leave(s.hs * s.hs)
		s.hs, s.tp = 0, 0
		return
	}
	// Turning.
	if s.hs == 0 {
		s.from = from
	}
	follows := func(deg float64) float64 { return 1 - math.Pow(math.Sin(deg*math.Pi/180), 4) }
	if d := math.Remainder(from-s.from, 360); math.Abs(d) >= 90 {
		s.leave(s.hs * s.hs)
		s.hs, s.tp, s.from = 0, 0, from
	} else if d != 0 {
		relax := math.Min(2*3600, s.fetch/(g*s.tp/(4*math.Pi)))
		turn := math.Sin(d*math.Pi/180) * 180 / math.Pi * dt / relax
		kept := follows(d) / follows(d-turn)
		s.leave(s.hs * s.hs * (1 - kept))
		s.hs *= math.Sqrt(kept)
		s.from += turn
	}
	// Growth or parting.
	held := wind.Grow(s.law, c)
	if s.hs > held.Hs {
		s.leave(s.hs*s.hs - held.Hs*held.Hs)
		s.hs, s.tp = held.Hs, held.Tp
		return
	}
	if s.oldHs > 0 {
		off := math.Abs(math.Remainder(s.oldDir-from, 360))
		clip := func(v float64) float64 { return math.Max(0, math.Min(1, v)) }
		ramp := clip((1.2*u*math.Cos(off*math.Pi/180)/(g*s.oldTp/(2*math.Pi))-1)/0.2) * clip((45-off)/15)
		e := math.Min(ramp*dt/1800*s.oldHs*s.oldHs, held.Hs*held.Hs-s.hs*s.hs)
		if e > 0 {
			f := e / (e + s.hs*s.hs)
			s.tp += f * (s.oldTp - s.tp)
			x := (1-f)*math.Cos(s.from*math.Pi/180) + f*math.Cos(s.oldDir*math.Pi/180)
			y := (1-f)*math.Sin(s.from*math.Pi/180) + f*math.Sin(s.oldDir*math.Pi/180)
			s.from = math.Atan2(y, x) * 180 / math.Pi
			s.hs, s.oldHs = math.Sqrt(s.hs*s.hs+e), math.Sqrt(math.Max(0, s.oldHs*s.oldHs-e))
		}
	}
	x := wind.EquivalentFetch(s.law, c, s.hs)
	if s.hs == 0 {
		c.Duration = dt
	} else {
		c.Fetch = x
		at := wind.Grow(s.law, c)
		c.Fetch = math.Min(s.fetch, x+groupSpeed(at.Tp, s.depth)*dt)
	}
	next := wind.Grow(s.law, c)
	came := s.tp
	s.hs, s.tp = next.Hs, next.Tp
	if came > s.tp {
		s.tp = came + (s.tp-came)*dt/7200
	}
}

func TestHindcastIsTheLawInSmallSteps(t *testing.T) {
	t.Parallel()
	histories := [][][3]float64{
		{{8, 200, 3}, {12, 200, 3}},                              // freshens
		{{12, 200, 4}, {12, 255, 3}},                             // veers
		{{12, 200, 4}, {11, 310, 4}},                             // goes round
		{{14, 200, 5}, {5, 210, 4}, {13, 215, 2}},                // a lull
		{{10, 350, 3}, {10, 20, 2}, {0, 0, 1}, {9, 10, 2}},       // through north, and a calm
		{{7, 90, 2}, {15, 120, 2}, {6, 170, 3}, {10, 150, 2.25}}, // everything
	}
	for _, law := range []wind.Law{wind.Bretschneider, wind.BreugemHolthuijsen} {
		for _, place := range [][2]float64{{60e3, inf}, {250e3, inf}, {8e3, 5}} {
			for i, winds := range histories {
				if testing.Short() && i%2 == 1 {
					continue
				}
				h := bay(law, place[0], place[1])
				got := blow(h, winds...)
				s := &twin{law: law, fetch: place[0], depth: place[1]}
				const dt = 60
				for _, w := range winds {
					for k := 0.0; k < w[2]*3600; k += dt {
						s.step(w[0], w[1], dt)
					}
				}
				if !near(got.Sea.Hs, s.hs, 0.03*s.hs+0.005) || !near(got.Sea.Tp, s.tp, 0.03*s.tp) || !near(got.Old.Hs, s.oldHs, 0.05) ||
					!near(math.Remainder(got.Sea.From-s.from, 360), 0, 2.5) {
					t.Errorf("%v %v history %d: sea %.3f m %.2f s from %.0f, old %.3f m; in small steps %.3f m %.2f s from %.0f, old %.3f m",
						law, place, i, got.Sea.Hs, got.Sea.Tp, got.Sea.From, got.Old.Hs, s.hs, s.tp, s.from, s.oldHs)
				}
			}
		}
	}
}

// The note's own numbers, made apart from this code: deep, no fetch limit, g = 9.81.
func TestStepTable(t *testing.T) {
	h := bay(nil, inf, inf)
	h.Gravity = 9.81
	for _, row := range []struct {
		winds  [][3]float64
		hs, tp float64
	}{
		{[][3]float64{{6, 200, 3}}, 0.436, 2.77},
		{[][3]float64{{6, 200, 3}, {10, 200, 3}}, 1.047, 4.27},
		{[][3]float64{{10, 200, 6}}, 1.317, 4.82},
		{[][3]float64{{10, 200, 3}}, 0.945, 4.05},
	} {
		s := blow(h, row.winds...)
		if !near(s.Sea.Hs, row.hs, 0.0005) || !near(s.Sea.Tp, row.tp, 0.005) || s.Sea.Limit != wind.LimitDuration {
			t.Errorf("%v: %.4f m %.3f s, %v", row.winds, s.Sea.Hs, s.Sea.Tp, s.Sea.Limit)
		}
	}
	if s := blow(h, [3]float64{6, 200, 3}, [3]float64{10, 200, 3}); !near(s.Sea.Fetch, 34.6e3, 50) {
		t.Errorf("equivalent fetch %v", s.Sea.Fetch)
	}
}

// A steady wind gives the same sea in one step or in many, to rounding; and that of Grow.
func TestPropertySplittingAStep(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		law := anyLaw(t)
		h := bay(law, math.Exp(rapid.Float64Range(6, 14).Draw(t, "ln fetch")), rapid.SampledFrom([]float64{inf, 40, 6}).Draw(t, "depth"))
		u, hours := rapid.Float64Range(1, 25).Draw(t, "speed"), rapid.Float64Range(0.1, 6).Draw(t, "hours")
		n := rapid.IntRange(2, 20).Draw(t, "n")
		one := blow(h, [3]float64{u, 120, hours})
		many := h.Stepper()
		for range n {
			many.Steady(mustBlow(u, 120), hours*3600/float64(n))
		}
		got := many.State()
		if !alike(got.Sea.Hs, one.Sea.Hs, 1e-7) || !alike(got.Sea.Tp, one.Sea.Tp, 1e-6) || got.Old.Hs != 0 {
			t.Fatalf("%v: %+v in one, %+v in %d", law, one.Sea, got.Sea, n)
		}
		if law == wind.CEM || law == wind.GroenDorrestein {
			return // the table rounds their kinks in depth
		}
		depth := inf
		if h.MeanDepth != nil {
			depth = h.MeanDepth(time.Time{}, 0)
		}
		exact := wind.Grow(law, wind.Conditions{Speed: u, Fetch: h.Fetch(0), Duration: hours * 3600, MeanDepth: depth})
		if !alike(got.Sea.Hs, exact.Hs, 1e-3) || !alike(got.Sea.Tp, exact.Tp, 1e-3) {
			t.Fatalf("%v: %+v stepped, %+v at once", law, got.Sea, exact)
		}
	})
}

func mustBlow(u, from float64) wind.Wind { return wind.Wind{Speed: u, Gust: math.NaN(), From: from} }

// A veer of 60 degrees gives the same sea whether it comes in one step or in ten, for each
// partition when the wind is looked at oftener, and for the whole when the veer itself takes
// a quarter of an hour.
func TestVeerInOneOrTen(t *testing.T) {
	for _, law := range wind.BandLaws() {
		h := bay(law, 120e3, inf)
		one := blow(h, [3]float64{11, 200, 4}, [3]float64{11, 260, 1})
		ten := h.Stepper()
		ten.Steady(mustBlow(11, 200), 4*3600)
		for range 10 {
			ten.Steady(mustBlow(11, 260), 360)
		}
		got := ten.State()
		if !alike(got.Sea.Hs, one.Sea.Hs, 0.005) || !alike(got.Old.Hs, one.Old.Hs, 0.005) || !near(got.Sea.From, one.Sea.From, 0.5) {
			t.Errorf("%v looked at ten times: %+v %+v, once %+v %+v", law, got.Sea, got.Old, one.Sea, one.Old)
		}
		// In ten turns of 6 degrees without time between them: the sea has not moved.
		turns := h.Stepper()
		turns.Steady(mustBlow(11, 200), 4*3600)
		for i := 1; i <= 10; i++ {
			turns.Steady(mustBlow(11, 200+6*float64(i)), 1e-3)
		}
		turns.Steady(mustBlow(11, 260), 3600)
		if s := turns.State(); !alike(s.Sea.Hs, one.Sea.Hs, 1e-3) || !alike(s.Old.Hs, one.Old.Hs, 1e-3) {
			t.Errorf("%v in ten turns: %+v %+v, in one %+v %+v", law, s.Sea, s.Old, one.Sea, one.Old)
		}
		// Spread over a quarter of an hour around the same middle.
		slow := h.Stepper()
		slow.Steady(mustBlow(11, 200), 4*3600-450)
		for i := 1; i <= 10; i++ {
			slow.Steady(mustBlow(11, 200+6*float64(i)-3), 90)
		}
		slow.Steady(mustBlow(11, 260), 3600-450)
		if s := slow.State(); !alike(s.Hs(), one.Hs(), 0.02) || !alike(s.Tp(), one.Tp(), 0.02) {
			t.Errorf("%v slowly: %.3f m %.2f s, at once %.3f m %.2f s", law, s.Hs(), s.Tp(), one.Hs(), one.Tp())
		}
		if !(one.Old.Hs > 0.3 && one.Old.Tp > one.Sea.Tp-1) || one.Old.Limit != wind.LimitDecay {
			t.Errorf("%v: the old sea is %+v", law, one.Old)
		}
	}
}

// What leaves the wind sea is not lost: the height of the two together is continuous.
func TestStateTogether(t *testing.T) {
	h := bay(nil, 120e3, inf)
	before := blow(h, [3]float64{11, 200, 4})
	for _, next := range [][3]float64{{11, 290, 1e-6}, {11, 20, 1e-6}, {4, 200, 1e-6}, {0, 0, 1e-6}, {11, 250, 1e-6}} {
		after := blow(h, [3]float64{11, 200, 4}, next)
		if !alike(after.Hs(), before.Hs(), 1e-5) {
			t.Errorf("%v: %v m, before %v m", next, after.Hs(), before.Hs())
		}
		if after.Old.Hs > after.Sea.Hs && !alike(after.Tp(), before.Tp(), 1e-6) {
			t.Errorf("%v: %v s, before %v s", next, after.Tp(), before.Tp())
		}
	}
	if s := (wind.State{}); s.Hs() != 0 || s.Tp() != 0 || !s.Known() {
		t.Errorf("flat water: %v m %v s", s.Hs(), s.Tp())
	}
}

// The old sea dies as the buoy measured after the wind fell by half: the quartiles of 114
// events, on the fetch of that buoy.
func TestOldSeaDiesAsMeasured(t *testing.T) {
	for _, row := range []struct{ hours, low, high float64 }{
		{0.5, 0.86, 0.96}, {1.5, 0.78, 0.90}, {2.5, 0.68, 0.81}, {3.5, 0.60, 0.75}, {5.5, 0.47, 0.61}, {6.5, 0.42, 0.56}, {7.5, 0.38, 0.53}, {8.5, 0.33, 0.48},
	} {
		h := bay(nil, 120e3, inf)
		start := blow(h, [3]float64{10.5, 200, 9})
		s := blow(h, [3]float64{10.5, 200, 9}, [3]float64{3.5, 200, row.hours})
		ratio := s.Hs() / start.Hs()
		if !(ratio >= row.low-0.03 && ratio <= row.high+0.03) {
			t.Errorf("%v h after: %.2f of the height, measured %v to %v", row.hours, ratio, row.low, row.high)
		}
		if !alike(s.Old.Tp, start.Sea.Tp, 1e-9) {
			t.Errorf("%v h after: the old sea changed its period from %v to %v", row.hours, start.Sea.Tp, s.Old.Tp)
		}
	}
	// On a short fetch it runs out.
	short := bay(nil, 4e3, inf)
	if s := blow(short, [3]float64{12, 200, 2}, [3]float64{0, 0, 2}); !(s.Old.Hs < 0.03) {
		t.Errorf("old sea on 4 km after two hours of calm: %+v", s.Old)
	}
}

// history is a wind record with a front in it, sampled every so many minutes.
func history(t testing.TB, minutes int) wind.Series {
	var samples []wind.Sample
	for m := 0; m <= 24*60; m += minutes {
		h := float64(m) / 60
		u := 7 + 4*math.Exp(-math.Pow((h-13)/4, 2)) + math.Sin(h/3)
		from := 200 + 70/(1+math.Exp(-(h-14)/1.5))
		samples = append(samples, wind.Sample{Time: day.Add(time.Duration(m) * time.Minute), Wind: mustBlow(u, from)})
	}
	s, err := wind.NewSeries(samples, 0)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// The same history at 10-minute, hourly and three-hourly samples gives Hs within 5 %.
func TestStepsOfTheHistory(t *testing.T) {
	t.Parallel()
	for _, law := range wind.BandLaws() {
		for _, fetch := range []float64{5e3, 40e3, 200e3, inf} {
			h := bay(law, fetch, inf)
			var times []time.Time
			for k := 3; k <= 24; k += 3 {
				times = append(times, day.Add(time.Duration(k)*time.Hour))
			}
			fine, err := h.Run(history(t, 10), times...)
			if err != nil {
				t.Fatal(err)
			}
			for _, minutes := range []int{60, 180} {
				coarse, err := h.Run(history(t, minutes), times...)
				if err != nil {
					t.Fatal(err)
				}
				for i := range fine {
					if !alike(coarse[i].Hs(), fine[i].Hs(), 0.05) || !alike(coarse[i].Sea.Hs, fine[i].Sea.Hs, 0.05) {
						t.Errorf("%v, %v m, every %d min, at %v: %.3f (%.3f) m, every 10 min %.3f (%.3f) m", law, fetch, minutes, times[i].Hour(),
							coarse[i].Hs(), coarse[i].Sea.Hs, fine[i].Hs(), fine[i].Sea.Hs)
					}
				}
			}
		}
	}
}

// Samples between the record's own change nothing at the record's times.
func TestRunAtOtherTimes(t *testing.T) {
	h := bay(nil, 40e3, 12)
	s := history(t, 60)
	plain, err := h.Run(s)
	if err != nil {
		t.Fatal(err)
	}
	if len(plain) != s.Len() {
		t.Fatalf("%d states of %d samples", len(plain), s.Len())
	}
	times := []time.Time{day.Add(7*time.Hour + 17*time.Minute), day.Add(9 * time.Hour), day.Add(7 * time.Hour), day} // out of order
	got, err := h.Run(s, times...)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range map[int]int{1: 9, 2: 7, 3: 0} {
		if got[i].Sea != plain[want].Sea || !got[i].Time.Equal(times[i]) {
			t.Errorf("at %v: %+v, want %+v", times[i], got[i].Sea, plain[want].Sea)
		}
	}
	if !(got[0].Sea.Hs > 0.9*plain[7].Sea.Hs && got[0].Sea.Hs < 1.1*plain[8].Sea.Hs) || !got[0].Time.Equal(times[0]) {
		t.Errorf("between: %+v", got[0].Sea)
	}
}

// Asking often between two samples gives what asking once gives, but for the cut of the sub-steps.
func TestRunOftenBetweenSamples(t *testing.T) {
	h, s := bay(nil, 40e3, 12), history(t, 180)
	var often []time.Time
	for m := 0; m <= 24*60; m += 7 {
		often = append(often, day.Add(time.Duration(m)*time.Minute))
	}
	many, err := h.Run(s, often...)
	if err != nil {
		t.Fatal(err)
	}
	for i := 0; i < len(often); i += 13 {
		one, err := h.Run(s, often[i])
		if err != nil {
			t.Fatal(err)
		}
		if !near(many[i].Hs(), one[0].Hs(), 0.004+0.004*one[0].Hs()) || !near(many[i].Tp(), one[0].Tp(), 0.03+0.01*one[0].Tp()) {
			t.Errorf("at %v: %.4f m %.3f s among many, %.4f m %.3f s alone", often[i], many[i].Hs(), many[i].Tp(), one[0].Hs(), one[0].Tp())
		}
	}
}

func TestResume(t *testing.T) {
	h := bay(nil, 90e3, inf)
	s := history(t, 60)
	whole, err := h.Run(s)
	if err != nil {
		t.Fatal(err)
	}
	first, err := s.Between(day, day.Add(12*time.Hour))
	if err != nil {
		t.Fatal(err)
	}
	second, err := s.Between(day.Add(12*time.Hour), day.Add(24*time.Hour))
	if err != nil {
		t.Fatal(err)
	}
	a, err := h.Run(first)
	if err != nil {
		t.Fatal(err)
	}
	b, err := h.Resume(a[len(a)-1], second)
	if err != nil {
		t.Fatal(err)
	}
	got, want := b[len(b)-1], whole[len(whole)-1]
	if got.Sea != want.Sea || got.Old != want.Old {
		t.Errorf("resumed %+v %+v, whole %+v %+v", got.Sea, got.Old, want.Sea, want.Old)
	}
	// A sea somebody has seen needs no spin-up.
	seen := h.Stepper()
	seen.Set(wind.State{Sea: wind.Sea{Hs: 1, Tp: 4, From: 200}})
	if got := seen.State().Sea.Hs; got != 1 {
		t.Error(got)
	}
	c, err := h.Resume(wind.State{Sea: wind.Sea{Hs: 1, Tp: 4, From: 200}}, second)
	if err != nil {
		t.Fatal(err)
	}
	if c[1].Sea.Remarks.Has(wind.RemarkSpinUp) || !(c[1].Sea.Hs > 0.8) {
		t.Errorf("%+v", c[1].Sea)
	}
}

func TestGapLosesTheSea(t *testing.T) {
	var samples []wind.Sample
	for _, h := range []int{0, 1, 2, 3, 4, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25} {
		samples = append(samples, wind.Sample{Time: day.Add(time.Duration(h) * time.Hour), Wind: mustBlow(10, 200)})
	}
	s, err := wind.NewSeries(samples, 3*time.Hour)
	if err != nil {
		t.Fatal(err)
	}
	h := bay(nil, 30e3, inf)
	got, err := h.Run(s, day.Add(4*time.Hour), day.Add(8*time.Hour), day.Add(13*time.Hour), day.Add(25*time.Hour))
	if err != nil {
		t.Fatal(err)
	}
	if !got[0].Known() || got[0].Sea.Remarks.Has(wind.RemarkSpinUp) {
		t.Errorf("before the gap, after four hours of wind on a three-hour fetch: %+v", got[0].Sea)
	}
	if got[1].Known() || !math.IsNaN(got[1].Hs()) || !math.IsNaN(got[1].Tp()) {
		t.Errorf("inside it: %+v", got[1].Sea)
	}
	if !got[2].Known() || !got[2].Sea.Remarks.Has(wind.RemarkSpinUp) || !(got[2].Sea.Hs < got[0].Sea.Hs) {
		t.Errorf("an hour after it: %+v", got[2].Sea)
	}
	if got[3].Sea.Hs != got[0].Sea.Hs || got[3].Sea.Remarks.Has(wind.RemarkSpinUp) {
		t.Errorf("long after: %+v, before %+v", got[3].Sea, got[0].Sea)
	}
	if _, err := h.Run(s, day.Add(26*time.Hour)); !errors.Is(err, wind.ErrOutside) {
		t.Error(err)
	}
	if _, err := h.Run(wind.Series{}); !errors.Is(err, wind.ErrEmpty) {
		t.Error(err)
	}
}

func TestHindcastBadInput(t *testing.T) {
	nan := math.NaN()
	for name, f := range map[string]func() wind.State{
		"speed":     func() wind.State { return blow(bay(nil, 1e4, inf), [3]float64{nan, 200, 1}) },
		"direction": func() wind.State { return blow(bay(nil, 1e4, inf), [3]float64{10, nan, 1}) },
		"hours":     func() wind.State { return blow(bay(nil, 1e4, inf), [3]float64{10, 200, nan}) },
		"back":      func() wind.State { return blow(bay(nil, 1e4, inf), [3]float64{10, 200, -1}) },
		"fetch":     func() wind.State { return blow(bay(nil, nan, inf), [3]float64{10, 200, 1}) },
		"depth":     func() wind.State { return blow(bay(nil, 1e4, nan), [3]float64{10, 200, 1}) },
		"dry":       func() wind.State { return blow(bay(nil, 1e4, 0), [3]float64{10, 200, 1}) },
		"no fetch behind old sea": func() wind.State {
			h := wind.Hindcast{Fetch: func(from float64) float64 {
				if from > 180 {
					return 1e4
				}
				return -1
			}}
			st := h.Stepper()
			st.Steady(mustBlow(10, 270), 7200)
			s := st.State()
			s.Old = wind.Sea{Hs: 1, Tp: 5, From: 90, Limit: wind.LimitDecay}
			st.Set(s)
			st.Steady(mustBlow(10, 270), 600)
			return st.State()
		},
		"gravity": func() wind.State {
			h := bay(nil, 1e4, inf)
			h.Gravity = nan
			return blow(h, [3]float64{10, 200, 1})
		},
		"and stays": func() wind.State { return blow(bay(nil, 1e4, inf), [3]float64{nan, 200, 1}, [3]float64{10, 200, 5}) },
	} {
		if s := f(); s.Known() || !math.IsNaN(s.Hs()) {
			t.Errorf("%s: %+v", name, s)
		}
	}
	defer func() {
		if recover() == nil {
			t.Error("a hindcast without a fetch ran")
		}
	}()
	wind.Hindcast{}.Stepper()
}

// Turning the compass turns the sea, and 360 degrees more are none.
func TestPropertyHindcastTurnsWithTheCompass(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		turn := rapid.Float64Range(0, 360).Draw(t, "turn")
		rose := func(from float64) float64 { return 60e3 + 40e3*math.Cos(from*math.Pi/180) }
		a := wind.Hindcast{Fetch: rose}
		b := wind.Hindcast{Fetch: func(from float64) float64 { return rose(from - turn) }}
		var winds, turned [][3]float64
		from := 0.0
		for range rapid.IntRange(1, 4).Draw(t, "n") {
			from += rapid.Float64Range(-80, 80).Draw(t, "shift")
			w := [3]float64{rapid.Float64Range(0, 18).Draw(t, "speed"), from, rapid.Float64Range(0.1, 4).Draw(t, "hours")}
			winds = append(winds, w)
			turned = append(turned, [3]float64{w[0], w[1] + turn + 360, w[2]})
		}
		x, y := blow(a, winds...), blow(b, turned...)
		if !near(y.Sea.Hs, x.Sea.Hs, 1e-6) || !near(y.Old.Hs, x.Old.Hs, 1e-6) || x.Sea.Hs > 0 && !near(math.Remainder(y.Sea.From-x.Sea.From-turn, 360), 0, 1e-4) {
			t.Fatalf("%+v %+v turned by %v: %+v %+v", x.Sea, x.Old, turn, y.Sea, y.Old)
		}
	})
}

// A wind sea is never above what its wind, fetch and depth hold, however it got there, and a
// stronger history never gives a lower one.
func TestPropertyHindcastStaysBelowTheLaw(t *testing.T) {
	t.Parallel()
	rapid.Check(t, func(t *rapid.T) {
		law := rapid.SampledFrom([]wind.Law{wind.Bretschneider, wind.BreugemHolthuijsen, wind.YoungVerhagen, wind.Wilson, wind.KahmaCalkoen, wind.ACES}).Draw(t, "law")
		fetch, depth := math.Exp(rapid.Float64Range(6, 13).Draw(t, "ln fetch")), rapid.SampledFrom([]float64{inf, 20, 5}).Draw(t, "depth")
		h := bay(law, fetch, depth)
		a, b := h.Stepper(), h.Stepper()
		gain := rapid.Float64Range(1, 1.4).Draw(t, "gain")
		for range rapid.IntRange(1, 6).Draw(t, "n") {
			w := mustBlow(rapid.Float64Range(0.5, 18).Draw(t, "speed"), 200)
			hours := rapid.Float64Range(0.1, 5).Draw(t, "hours")
			a.Steady(w, hours*3600)
			held := wind.Grow(law, wind.Conditions{Speed: w.Speed, Fetch: fetch, Duration: inf, MeanDepth: depth})
			s := a.State()
			if !(s.Sea.Hs <= held.Hs*1.001) {
				t.Fatalf("%+v is above %+v", s.Sea, held)
			}
			w.Speed *= gain
			b.Steady(w, hours*3600)
			if !(b.State().Sea.Hs >= s.Sea.Hs*0.98) { // old sea apart: a longer one runs past sooner
				t.Fatalf("%v times the wind: %v m, with it %v m", gain, b.State().Sea.Hs, s.Sea.Hs)
			}
		}
	})
}

// On a short fetch the history before does not show once the fetch limits the sea; on an
// open coast it does.
func TestShortFetchForgets(t *testing.T) {
	short, open := bay(nil, 3e3, inf), bay(nil, inf, inf)
	a, b := blow(short, [3]float64{10, 200, 3}), blow(short, [3]float64{14, 170, 5}, [3]float64{10, 200, 3})
	if !alike(b.Sea.Hs, a.Sea.Hs, 1e-9) || b.Sea.Limit != wind.LimitFetch || !(b.Old.Hs < 0.05*a.Sea.Hs) || !near(b.Sea.From, 200, 1) {
		t.Errorf("3 km: %+v %+v and %+v %+v", a.Sea, a.Old, b.Sea, b.Old)
	}
	a, b = blow(open, [3]float64{10, 200, 3}), blow(open, [3]float64{14, 170, 5}, [3]float64{10, 200, 3})
	if !(b.Hs() > 1.3*a.Hs()) || !b.Sea.Remarks.Has(wind.RemarkOpenSea) {
		t.Errorf("open: %+v and %+v", a.Sea, b.Sea)
	}
}

// On restricted water the waves run along the best fetch, and their wind is its part that way.
func TestRestrictedHindcast(t *testing.T) {
	rose, err := wind.Radials(0, 12, miles(3.7, 12.3, 13.4, 12.2, 13.2, 36.0, 35.6, 28.7, 26.8, 13.0, 10.4, 10.1, 6.4, 5.7)...)
	if err != nil {
		t.Fatal(err)
	}
	h := wind.Hindcast{Law: wind.Smith, Fetch: rose, Restricted: true}
	s := blow(h, [3]float64{15, 125, 12})
	length, from := wind.RestrictedFetch(rose, 125)
	want := wind.Grow(wind.SmithOff(from-125), wind.Conditions{Speed: 15, Fetch: length, Duration: inf, MeanDepth: inf})
	if !alike(s.Sea.Hs, want.Hs, 1e-4) || !alike(s.Sea.Tp, want.Tp, 1e-4) || !near(s.Sea.From, 93, 1e-6) {
		t.Errorf("%+v, want %+v from %v", s.Sea, want, from)
	}
}

func miles(v ...float64) []float64 {
	for i := range v {
		v[i] *= wind.StatuteMile
	}
	return v
}

func TestSteppingAllocatesNothing(t *testing.T) {
	h := bay(nil, 80e3, 9)
	s := h.Stepper()
	s.Steady(mustBlow(10, 200), 3600)
	i := 0
	if n := testing.AllocsPerRun(200, func() {
		i++
		s.Steady(mustBlow(10+3*math.Sin(float64(i)), 200+30*math.Cos(float64(i))), 300)
	}); n != 0 {
		t.Errorf("%v allocations a step", n)
	}
}

// An app's own law steps as the built-in ones do.
type ownLaw struct{ coefficients []float64 }

func (ownLaw) String() string          { return "own" }
func (ownLaw) Scale(u float64) float64 { return u }
func (l ownLaw) Growth(x, d float64) (h, t float64) {
	h, t = wind.Bretschneider.Growth(x, d)
	return l.coefficients[0] * h, t
}
func (ownLaw) Limits(u float64) wind.Limits { return wind.Bretschneider.Limits(u) }

func TestOwnLaw(t *testing.T) {
	law := ownLaw{[]float64{0.9}}
	s := blow(bay(law, 20e3, inf), [3]float64{10, 200, 10})
	if want := blow(bay(nil, 20e3, inf), [3]float64{10, 200, 10}); !alike(s.Sea.Hs, 0.9*want.Sea.Hs, 1e-4) {
		t.Errorf("%v, want 0.9 of %v", s.Sea.Hs, want.Sea.Hs)
	}
}

func BenchmarkSubStep(b *testing.B) {
	for _, place := range []struct {
		name  string
		depth float64
	}{{"deep", inf}, {"8m", 8}} {
		b.Run(place.name+"/steady", func(b *testing.B) {
			s := bay(nil, 80e3, place.depth).Stepper()
			b.ReportAllocs()
			for b.Loop() {
				s.Steady(mustBlow(10, 200), 300)
			}
		})
		b.Run(place.name+"/varying", func(b *testing.B) {
			s := bay(nil, 80e3, place.depth).Stepper()
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				s.Steady(mustBlow(10+3*math.Sin(float64(i)/20), 200+20*math.Sin(float64(i)/13)), 300)
			}
		})
	}
	b.Run("exp", func(b *testing.B) {
		x := 0.0
		for i := 0; b.Loop(); i++ {
			x += math.Exp(-float64(i % 64))
		}
		if x < 0 {
			b.Fatal(x)
		}
	})
}

// BenchmarkSubStepRatio times sub-steps of a varying wind and the plain twin, which asks
// the law itself, by turns in one process.
func BenchmarkSubStepRatio(b *testing.B) {
	const steps = 2048
	s := bay(nil, 80e3, 8).Stepper()
	plain := &twin{law: wind.Bretschneider, fetch: 80e3, depth: 8}
	var winds [steps]wind.Wind
	for i := range winds {
		winds[i] = mustBlow(10+3*math.Sin(float64(i)/20), 200+20*math.Sin(float64(i)/13))
	}
	var fast, slow, exp time.Duration
	x := 0.0
	for b.Loop() {
		t0 := time.Now()
		for i := range winds {
			s.Steady(winds[i], 300)
		}
		t1 := time.Now()
		for i := range winds[:steps/16] {
			plain.step(winds[i].Speed, winds[i].From, 300)
		}
		t2 := time.Now()
		for i := range winds {
			x += math.Exp(-float64(i % 64))
		}
		fast, slow, exp = fast+t1.Sub(t0), slow+t2.Sub(t1), exp+time.Since(t2)
	}
	if x < 0 {
		b.Fatal(x)
	}
	b.ReportMetric(fast.Seconds()/exp.Seconds(), "x-exp")
	b.ReportMetric(16*slow.Seconds()/fast.Seconds(), "x-plain")
	b.ReportMetric(fast.Seconds()*1e9/float64(b.N)/steps, "ns/step")
}

func BenchmarkGrow(b *testing.B) {
	for _, law := range []wind.Law{wind.Bretschneider, wind.BreugemHolthuijsen} {
		b.Run(law.String(), func(b *testing.B) {
			for b.Loop() {
				wind.Grow(law, wind.Conditions{Speed: 10, Fetch: 20e3, Duration: 3600, MeanDepth: 12})
			}
		})
	}
}

func BenchmarkDayOfHourlyWind(b *testing.B) {
	s, h := history(b, 60), bay(nil, 80e3, 12)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := h.Run(s); err != nil {
			b.Fatal(err)
		}
	}
}
