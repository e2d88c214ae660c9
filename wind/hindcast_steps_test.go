package wind_test

import (
	"math"
	"testing"
	"time"

	"followingsea.example/wind"
)

const instant = 1e-300 // seconds in which nothing dies, turns or grows

// after is what a hindcast makes of a state in one sub-step of a wind.
func after(h wind.Hindcast, st wind.State, u, from, seconds float64) wind.State {
	s := h.Stepper()
	s.Set(st)
	s.Steady(mustBlow(u, from), seconds)
	return s.State()
}

func deg(rad float64) float64 { return rad * 180 / math.Pi }
func rad(deg float64) float64 { return deg * math.Pi / 180 }

// deepGroup is the group speed of a period in deep water.
func deepGroup(period float64) float64 { return wind.Gravity * period / (4 * math.Pi) }

// TestStepTurnsAsWritten: in one sub-step the sea comes round by tan(Δ/2) = tan(Δ₀/2) e^(-t/τ), with τ the relaxation or the time a
// group needs down the fetch, and of its energy what does not follow, 1 - (1 - sin⁴Δ₀)/(1 - sin⁴Δ), stays behind half way.
func TestStepTurnsAsWritten(t *testing.T) {
	for _, fetch := range []float64{inf, 200e3, 9e3} {
		for _, delta := range []float64{-80, -35, 20, 60, 89} {
			for _, relax := range []time.Duration{0, time.Hour} {
				h := bay(nil, fetch, inf)
				h.Relaxation = relax
				tau := 7200.0
				if relax > 0 {
					tau = 3600
				}
				tau = math.Min(tau, fetch/deepGroup(4))
				left := deg(2 * math.Atan(math.Tan(rad(delta)/2)*math.Exp(-300/tau)))
				follows := func(d float64) float64 { return 1 - math.Pow(math.Sin(rad(d)), 4) }
				kept := follows(delta) / follows(left)
				s := after(h, wind.State{Sea: wind.Sea{Hs: 0.1, Tp: 4, From: 350}}, 5, 350+delta, 300) // slower than the waves: nothing rejoins
				if !near(math.Remainder(s.Sea.From-(350+delta-left), 360), 0, 1e-9) || !alike(s.Old.Hs, 0.1*math.Sqrt(1-kept), 1e-9) ||
					!near(math.Remainder(s.Old.From-(350+delta-(delta+left)/2), 360), 0, 1e-9) || s.Old.Tp != 4 || s.Old.Limit != wind.LimitDecay {
					t.Errorf("fetch %v, %v degrees, τ %v: %+v %+v, want left %v, kept %v", fetch, delta, tau, s.Sea, s.Old, left, kept)
				}
			}
		}
		for _, delta := range []float64{90, 135, 180, -91} {
			s := after(bay(nil, fetch, inf), wind.State{Sea: wind.Sea{Hs: 0.4, Tp: 4, From: 350}}, 9, 350+delta, 300)
			if !alike(s.Old.Hs, 0.4, 1e-12) || s.Old.From != 350 || !near(math.Remainder(s.Sea.From-350-delta, 360), 0, 1e-9) || !(s.Sea.Hs > 0 && s.Sea.Hs < 0.3) {
				t.Errorf("round by %v: %+v %+v", delta, s.Sea, s.Old)
			}
		}
	}
}

// TestOldSeaFadesAsWritten: the old sea falls by 1/e in the decay time, or the time the last of it needs to run past.
func TestOldSeaFadesAsWritten(t *testing.T) {
	for _, fetch := range []float64{inf, 400e3, 30e3} {
		for _, decay := range []time.Duration{0, 3 * time.Hour} {
			h := bay(nil, fetch, inf)
			h.Decay = decay
			life := 8.5 * 3600
			if decay > 0 {
				life = 3 * 3600
			}
			life = math.Min(life, fetch/deepGroup(6))
			s := after(h, wind.State{Old: wind.Sea{Hs: 1, Tp: 6, From: 80, Limit: wind.LimitDecay}}, 0, 0, 300)
			want := wind.Sea{Hs: math.Exp(-300 / life), Tp: 6, From: 80, Limit: wind.LimitDecay}
			if !alike(s.Old.Hs, want.Hs, 1e-12) || s.Old.Tp != want.Tp || s.Old.From != want.From || s.Old.Limit != want.Limit {
				t.Errorf("fetch %v, decay %v: %+v, want %+v", fetch, decay, s.Old, want)
			}
		}
	}
	// From where there is no water none of it is left; a calm over flat water leaves none.
	h := wind.Hindcast{Fetch: func(from float64) float64 { return 1e4 * math.Abs(from-80) }}
	for name, st := range map[string]wind.State{"from the land": {Old: wind.Sea{Hs: 1, Tp: 6, From: 80, Limit: wind.LimitDecay}}, "flat": {}} {
		if s := after(h, st, 0, 0, 300); s.Old != (wind.Sea{Limit: wind.LimitCalm}) || !s.Known() {
			t.Errorf("%s: %+v", name, s.Old)
		}
	}
	if s := after(bay(nil, 1e4, inf), wind.State{}, 5, 200, 300); s.Old.Limit != wind.LimitCalm || s.Old.Hs != 0 {
		t.Errorf("no old sea: %+v", s.Old)
	}
}

// TestOldSeasComeTogether: what joins the old sea adds its energy; period and direction are the means by energy; two halves exactly
// opposite have no mean and keep the direction that was there.
func TestOldSeasComeTogether(t *testing.T) {
	h := bay(nil, inf, inf)
	for _, c := range []struct{ old, sea, want wind.Sea }{
		{wind.Sea{}, wind.Sea{Hs: 2, Tp: 7, From: 100}, wind.Sea{Hs: 2, Tp: 7, From: 100}},
		{wind.Sea{Hs: 1, Tp: 4, From: 80}, wind.Sea{Hs: 2, Tp: 7, From: 100}, wind.Sea{Hs: math.Sqrt(5), Tp: 4 + 3*0.8,
			From: deg(math.Atan2(0.2*math.Sin(rad(80))+0.8*math.Sin(rad(100)), 0.2*math.Cos(rad(80))+0.8*math.Cos(rad(100))))}},
		{wind.Sea{Hs: 1, Tp: 4, From: 350}, wind.Sea{Hs: 1, Tp: 6, From: 30}, wind.Sea{Hs: math.Sqrt2, Tp: 5, From: 10}},
		{wind.Sea{Hs: 1, Tp: 4, From: 180}, wind.Sea{Hs: 1, Tp: 6, From: 0}, wind.Sea{Hs: math.Sqrt2, Tp: 5, From: 180}},
		{wind.Sea{Hs: 1, Tp: 4, From: 180}, wind.Sea{Hs: 0}, wind.Sea{Hs: 1, Tp: 4, From: 180}},
		{wind.Sea{Hs: 1, Tp: 4, From: 0}, wind.Sea{Hs: 1, Tp: 4, From: 180}, wind.Sea{Hs: math.Sqrt2, Tp: 4, From: 0}},
	} {
		s := after(h, wind.State{Sea: c.sea, Old: c.old}, 0, 0, instant)
		if !alike(s.Old.Hs, c.want.Hs, 1e-12) || !alike(s.Old.Tp, c.want.Tp, 1e-12) || !near(s.Old.From, c.want.From, 1e-9) || s.Sea.Hs != 0 || s.Sea.Limit != wind.LimitCalm {
			t.Errorf("%+v and %+v: %+v, want %+v", c.old, c.sea, s.Old, c.want)
		}
	}
	// A sea above what the wind holds: the difference in energy is old sea from then on.
	c := wind.Conditions{Speed: 7, Fetch: 40e3, Duration: inf, MeanDepth: inf}
	held := wind.Grow(nil, c)
	s := after(bay(nil, 40e3, inf), wind.State{Sea: wind.Sea{Hs: 2, Tp: 6, From: 200}}, 7, 200, instant)
	if !alike(s.Sea.Hs, held.Hs, 2e-4) || !alike(s.Sea.Tp, held.Tp, 2e-4) || !alike(s.Hs(), 2, 1e-12) || s.Old.Tp != 6 || s.Old.From != 200 {
		t.Errorf("%+v %+v, the wind holds %+v", s.Sea, s.Old, held)
	}
}

// TestOldSeaRejoinsAsWritten: of old sea that the wind catches up with, the share 1 - e^(-r t / 30 min) is wind sea again, where r goes
// from 0 to 1 while 1.2 U cos off goes from the speed of its crests to 1.2 of it, and from 45° off the wind to 30°; never so much that
// the wind sea is above what the wind holds.
func TestOldSeaRejoinsAsWritten(t *testing.T) {
	clip := func(v float64) float64 { return math.Max(0, math.Min(1, v)) }
	const dt = 240.0
	for _, fetch := range []float64{inf, 60e3} {
		for _, u := range []float64{5, 8.4, 9, 10, 16} {
			for _, off := range []float64{-46, -45, -40, -33, -29, 0, 10, 31, 44, 45, 90} {
				old := wind.Sea{Hs: 0.3, Tp: 6.3, From: math.Mod(380+off, 360), Limit: wind.LimitDecay}
				sea := wind.Sea{Hs: 0.2, Tp: 1.8, From: 20}
				s := after(bay(nil, fetch, inf), wind.State{Sea: sea, Old: old}, u, 20, dt)
				faded := old.Hs * math.Exp(-dt/math.Min(8.5*3600, fetch/deepGroup(old.Tp)))
				r := clip((1.2*u*math.Cos(rad(off))/(wind.Gravity*old.Tp/(2*math.Pi))-1)/0.2) * clip((45-math.Abs(off))/15)
				energy := (1 - math.Exp(-r*dt/1800)) * faded * faded
				if want := math.Sqrt(faded*faded - energy); !alike(s.Old.Hs, want, 1e-12) {
					t.Errorf("%v m/s, %v off, fetch %v: old sea of %v m, want %v", u, off, fetch, s.Old.Hs, want)
				}
				if same := near(s.Sea.From, 20, 1e-9); same != (energy == 0 || off == 0) {
					t.Errorf("%v m/s, %v off: the sea is from %v", u, off, s.Sea.From)
				}
			}
		}
	}
	// With room for a little only, that little.
	held := wind.Grow(nil, wind.Conditions{Speed: 12, Fetch: 5e3, Duration: inf, MeanDepth: inf})
	sea := wind.Sea{Hs: 0.999 * held.Hs, Tp: held.Tp, From: 20}
	old := wind.Sea{Hs: 0.9 * held.Hs, Tp: 6, From: 20, Limit: wind.LimitDecay}
	s := after(bay(nil, 5e3, inf), wind.State{Sea: sea, Old: old}, 12, 20, 60)
	faded := old.Hs * math.Exp(-60/(5e3/deepGroup(6)))
	room := held.Hs * held.Hs * (1 - 0.999*0.999)
	if !alike(s.Sea.Hs, held.Hs, 3e-4) || !alike(s.Old.Hs, math.Sqrt(faded*faded-room), 3e-4) {
		t.Errorf("%+v %+v, want %v m and %v m", s.Sea, s.Old, held.Hs, math.Sqrt(faded*faded-room))
	}
}

// TestLongerPeriodRelaxes: a sea that came with a longer period than its height has in this wind keeps e^(-t/τ) of the difference.
func TestLongerPeriodRelaxes(t *testing.T) {
	for relax, tau := range map[time.Duration]float64{0: 7200, time.Hour: 3600} {
		h := bay(nil, 80e3, 20)
		h.Relaxation = relax
		own := after(h, wind.State{Sea: wind.Sea{Hs: 0.5, Tp: 0.1, From: 200}}, 10, 200, 300).Sea
		long := after(h, wind.State{Sea: wind.Sea{Hs: 0.5, Tp: 8, From: 200}}, 10, 200, 300).Sea
		if want := own.Tp + (8-own.Tp)*math.Exp(-300/tau); !alike(long.Tp, want, 1e-12) || long.Hs != own.Hs {
			t.Errorf("%v: %v s, want %v; its own %v", relax, long.Tp, want, own.Tp)
		}
	}
}

// TestGrowthFromASeaOfItsHeight: a sea grows on from the fetch that has its height: in a time t after the wind began it is as high as
// one that began from flat water, whatever wind or depth raised it; and it does not jump when the depth changes.
func TestGrowthFromASeaOfItsHeight(t *testing.T) {
	for _, depth := range []float64{inf, 6} {
		h := bay(nil, inf, depth)
		c := wind.Conditions{Speed: 10, Fetch: inf, Duration: 2 * 3600, MeanDepth: depth}
		two := wind.Grow(nil, c)
		c.Duration += 240
		want := wind.Grow(nil, c)
		if s := after(h, wind.State{Sea: wind.Sea{Hs: two.Hs, Tp: two.Tp, From: 200}}, 10, 200, 240).Sea; !alike(s.Hs, want.Hs, 3e-4) || !alike(s.Tp, want.Tp, 3e-4) || !alike(s.Fetch, want.Fetch, 2e-3) || s.Limit != want.Limit {
			t.Errorf("depth %v: %+v, want %+v", depth, s, want)
		}
	}
	depth := 3.0
	h := wind.Hindcast{Fetch: func(float64) float64 { return 90e3 }, MeanDepth: func(time.Time, float64) float64 { return depth }}
	s := h.Stepper()
	s.Steady(mustBlow(12, 200), 8*3600)
	shallow := s.State().Sea
	depth = 40
	s.Steady(mustBlow(12, 200), 1)
	if deeper := s.State().Sea; shallow.Limit != wind.LimitDepth || !alike(deeper.Hs, shallow.Hs, 0.01) || deeper.Hs < shallow.Hs || deeper.Limit != wind.LimitDuration {
		t.Errorf("from 3 m to 40 m of water: %+v, a second later %+v", shallow, deeper)
	}
}

// TestSeaAtItsLimitStays: a sea that somebody has seen as high as its wind, fetch and depth hold stays so.
func TestSeaAtItsLimitStays(t *testing.T) {
	for _, law := range []wind.Law{wind.Bretschneider, wind.YoungVerhagen, wind.Wilson, wind.ACES, wind.CEM, wind.GroenDorrestein} {
		for _, depth := range []float64{inf, 3, 1.2} {
			h := bay(law, 300e3, depth)
			held := after(h, wind.State{Sea: wind.Sea{Hs: 9, Tp: 0.1, From: 200}}, 9, 200, 1).Sea
			s := after(h, wind.State{Sea: wind.Sea{Hs: held.Hs, Tp: held.Tp, From: 200}}, 9, 200, 600)
			if !alike(s.Sea.Hs, held.Hs, 1e-3) || !alike(s.Hs(), held.Hs, 1e-3) || !alike(s.Sea.Tp, held.Tp, 1e-3) {
				t.Errorf("%v in %v m: %+v, ten minutes later %+v %+v", law, depth, held, s.Sea, s.Old)
			}
		}
	}
	if s := after(bay(nil, 0, inf), wind.State{Sea: wind.Sea{Hs: 1, Tp: 5, From: 200}}, 9, 200, instant); !s.Known() || s.Sea.Hs != 0 || s.Sea.Tp != 0 || s.Sea.Limit != wind.LimitCalm || !alike(s.Old.Hs, 1, 1e-12) || s.Sea.From != 200 {
		t.Errorf("without fetch: %+v %+v", s.Sea, s.Old)
	}
}

// TestLimitsOfASteppedSea: a stepped sea that has come to its end has the limit and the remarks of the law's own.
func TestLimitsOfASteppedSea(t *testing.T) {
	for _, law := range wind.Laws() {
		for _, fetch := range []float64{30, 400, 60e3, 300e3, inf} {
			for _, depth := range []float64{inf, 12, 2, 0.5} {
				for _, u := range []float64{4, 14} {
					want := wind.Grow(law, wind.Conditions{Speed: u, Fetch: fetch, Duration: inf, MeanDepth: depth})
					if law == wind.CEM && !math.IsInf(depth, 1) {
						continue
					}
					same := func(s wind.Sea) bool { return s.Limit == want.Limit && s.Remarks&^wind.RemarkSpinUp == want.Remarks }
					border := func(k float64) bool { // where the table may err to the other side
						return !same(wind.Grow(law, wind.Conditions{Speed: u, Fetch: fetch * k, Duration: inf, MeanDepth: depth})) ||
							!same(wind.Grow(law, wind.Conditions{Speed: u, Fetch: fetch, Duration: inf, MeanDepth: depth * k}))
					}
					h := bay(law, fetch, depth)
					st := wind.State{Sea: wind.Sea{Hs: want.Hs * 1.01, Tp: want.Tp, From: 200}}
					s := after(h, st, u, 200, 1).Sea
					period := 2e-3
					if math.IsInf(fetch, 1) && !math.IsInf(depth, 1) { // the table ends at forty times the fetch of full development, where periods over little depth still grow
						period = 0.02
					}
					if !alike(s.Hs, want.Hs, 1e-3) || !alike(s.Tp, want.Tp, period) || !same(s) && !border(1.02) && !border(0.98) {
						t.Errorf("%v, %v m/s over %v m, %v m deep: %+v (%v), want %+v (%v)", law, u, fetch, depth, s, s.Remarks, want, want.Remarks)
					}
				}
			}
		}
	}
}

// TestSpinUpLastsAsLongAsTheSeaNeeds: from flat water at the start until the wind has blown for the minimum duration; where the fetch
// outlasts full development, until what an earlier wind may have raised has run past or died, too.
func TestSpinUpLastsAsLongAsTheSeaNeeds(t *testing.T) {
	for _, c := range []struct{ u, fetch, depth float64 }{{10, 30e3, inf}, {10, 30e3, 5}, {6, 8e3, inf}, {1.5, 20e3, inf}, {1, inf, inf}, {4, inf, inf}} {
		conditions := wind.Conditions{Speed: c.u, Fetch: c.fetch, Duration: inf, MeanDepth: c.depth}
		full := wind.Grow(nil, conditions)
		needed := math.Max(wind.MinimumDuration(nil, conditions), math.Min(8.5*3600, c.fetch/deepGroup(full.Tp)))
		for share, want := range map[float64]bool{0.99: true, 1.01: false} {
			s := blow(bay(nil, c.fetch, c.depth), [3]float64{c.u, 200, needed * share / 3600})
			if s.Sea.Remarks.Has(wind.RemarkSpinUp) != want {
				t.Errorf("%+v: %v h of %v: %v", c, needed*share/3600, needed/3600, s.Sea.Remarks)
			}
		}
	}
	// At the very end of it, here the 8.5 h in which old sea dies, it is over.
	for seconds, want := range map[float64]bool{30300: true, 30600: false} {
		if s := after(bay(nil, inf, inf), wind.State{}, 1, 200, seconds); s.Sea.Remarks.Has(wind.RemarkSpinUp) != want {
			t.Errorf("%v s of 30600: %v", seconds, s.Sea.Remarks)
		}
	}
	first, err := bay(nil, 30e3, inf).Run(series(t, 0, [3]float64{0, 10, 200}, [3]float64{1, 10, 200}))
	if err != nil || !first[1].Sea.Remarks.Has(wind.RemarkSpinUp) {
		t.Errorf("an hour after the start: %+v, %v", first, err)
	}
}

// TestSubSteps: a wind is stepped in equal parts of at most five minutes, each with the depth at its end; the time goes on by all of it.
// So is the wind between two samples.
func TestSubSteps(t *testing.T) {
	for seconds, parts := range map[float64]int{0: 0, 1: 1, 300: 1, 300.001: 2, 600: 2, 2000: 7} {
		var asked []time.Time
		h := wind.Hindcast{Fetch: func(float64) float64 { return 1e4 }, MeanDepth: func(at time.Time, _ float64) float64 { asked = append(asked, at); return 10 }}
		st := after(h, wind.State{Time: day}, 9, 200, seconds)
		if len(asked) != parts || !st.Known() {
			t.Errorf("%v s in %d parts, want %d", seconds, len(asked), parts)
		}
		if got := st.Time.Sub(day).Seconds(); !near(got, seconds, 1e-9) {
			t.Errorf("%v s went by as %v", seconds, got)
		}
		for i, at := range asked {
			if got := at.Sub(day).Seconds(); !near(got, seconds*float64(i+1)/float64(parts), 2e-9) {
				t.Errorf("%v s: part %d ends after %v", seconds, i, got)
			}
		}
		if parts == 0 {
			continue
		}
		asked = nil
		s, err := wind.NewSeries([]wind.Sample{{Time: day, Wind: mustBlow(9, 200)}, {Time: day.Add(time.Duration(seconds * 1e9)), Wind: mustBlow(9, 200)}}, 0)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := h.Run(s); err != nil || len(asked) != parts {
			t.Errorf("%v s of a series in %d parts, want %d; %v", seconds, len(asked), parts, err)
		}
		for i, at := range asked {
			if got := at.Sub(day).Seconds(); !near(got, seconds*float64(i+1)/float64(parts), 2e-8) {
				t.Errorf("%v s of a series: part %d ends after %v", seconds, i, got)
			}
		}
	}
}

// TestRunIsItsSubSteps: between two samples the wind of a sub-step is that of its middle, at the samples and at a time between them.
func TestRunIsItsSubSteps(t *testing.T) {
	t.Run("freshening", func(t *testing.T) { runIsItsSubSteps(t, mustBlow(6, 340), mustBlow(11, 30)) })
	t.Run("veering alone", func(t *testing.T) { runIsItsSubSteps(t, mustBlow(9, 340), mustBlow(9, 30)) })
	t.Run("freshening alone", func(t *testing.T) { runIsItsSubSteps(t, mustBlow(6, 30), mustBlow(11, 30)) })
}

func runIsItsSubSteps(t *testing.T, a, b wind.Wind) {
	const span = 2000.0
	s, err := wind.NewSeries([]wind.Sample{{Time: day, Wind: a}, {Time: day.Add(span * time.Second), Wind: b}, {Time: day.Add(2 * span * time.Second), Wind: b}}, 0)
	if err != nil {
		t.Fatal(err)
	}
	h := bay(nil, 50e3, 15)
	by := func(s *wind.Stepper, from, to float64) {
		n := math.Ceil((to - from) / 300)
		for i := range int(n) {
			dt := (to - from) / n
			s.Steady(wind.Interpolate(a, b, (from+dt*(float64(i)+0.5))/span), dt)
		}
	}
	times := []time.Time{day, day.Add(700 * time.Second), day.Add(1100 * time.Second), day.Add(span * time.Second), day.Add((2*span - 1) * time.Second), day.Add(2 * span * time.Second)}
	got, err := h.Run(s, times...)
	if err != nil {
		t.Fatal(err)
	}
	whole, part := h.Stepper(), h.Stepper()
	by(part, 0, 700)
	first := part.State()
	by(part, 700, 1100)
	second := part.State()
	by(whole, 0, span)
	third := whole.State()
	whole.Steady(b, span)
	for i, want := range []wind.State{{}, first, second, third} {
		g := got[i]
		if !g.Time.Equal(times[i]) || !near(g.Sea.Hs, want.Sea.Hs, 1e-12) || !near(g.Sea.Tp, want.Sea.Tp, 1e-12) || !near(g.Old.Hs, want.Old.Hs, 1e-12) {
			t.Errorf("at %v: %+v %+v, want %+v %+v", times[i], g.Sea, g.Old, want.Sea, want.Old)
		}
	}
	for i, f := range map[int]float64{0: 0, 1: 0.35, 2: 0.55, 3: 1, 4: 1, 5: 1} {
		if w := wind.Interpolate(a, b, f); !near(got[i].Wind.Speed, w.Speed, 1e-12) || !near(got[i].Wind.From, w.From, 1e-9) {
			t.Errorf("at %v the wind is %v, want %v", times[i], got[i].Wind, w)
		}
	}
	if end := whole.State(); !near(got[5].Sea.Hs, end.Sea.Hs, 1e-12) || !got[5].Time.Equal(times[5]) {
		t.Errorf("at the end: %+v, want %+v", got[5].Sea, end.Sea)
	}
}

// TestRestrictedDirections: the waves on restricted water come from where the whole degree of the wind has them, whichever turn of the
// compass the wind is given in; the angle to them is that of the wind itself.
func TestRestrictedDirections(t *testing.T) {
	lake := func(from float64) float64 { return 2e3 + 30e3*math.Pow(math.Cos(rad(from-40)), 8) }
	h := wind.Hindcast{Law: wind.Smith, Fetch: lake, Restricted: true}
	s := h.Stepper()
	for _, c := range []struct{ wind, degree float64 }{{0, 0}, {0.4, 0}, {359.6, 0}, {-0.4, 0}, {-10, 350}, {725, 5}, {-725.2, 355}, {80, 80}, {80.6, 81}} {
		length, waves := wind.RestrictedFetch(lake, c.degree)
		s.Set(wind.State{})
		s.Steady(mustBlow(9, c.wind), 12*3600)
		want := wind.Grow(wind.SmithOff(waves-c.wind), wind.Conditions{Speed: 9, Fetch: length, Duration: inf, MeanDepth: inf})
		if got := s.State().Sea; !alike(got.Hs, want.Hs, 3e-4) || !near(math.Remainder(got.From-waves, 360), 0, 1e-6) {
			t.Errorf("wind from %v: %+v, want %+v from %v", c.wind, got, want, waves)
		}
	}
}

// TestRemarksOfASteppedSeaOnTheBorders: the shortest and the longest fetch that a law is meant for get no remark. With 8 m/s under 8 m/s²
// the unit of length is 8 m.
func TestRemarksOfASteppedSeaOnTheBorders(t *testing.T) {
	for fetch, want := range map[float64]wind.Remark{10: 0, below(10): wind.RemarkShortFetch, 100: 0, above(100): wind.RemarkLongFetch, inf: wind.RemarkLongFetch | wind.RemarkOpenSea} {
		h := bay(levelLaw{h: 0.5, t: 0.5, deep: 0.5, scale: 1}, 8*fetch, inf)
		h.Gravity = 8
		s := after(h, wind.State{Sea: wind.Sea{Hs: 7, Tp: 1, From: 200}}, 8, 200, 1).Sea
		if !alike(s.Hs, 4, 1e-12) || s.Limit != wind.LimitFetch || s.Remarks&^wind.RemarkSpinUp != want {
			t.Errorf("fetch %v: %+v, want %q", fetch, s, want)
		}
	}
	// A sea of 0.6 of the depth does not break yet, a higher one does.
	for depth, want := range map[float64]wind.Remark{8 / 0.6: 0, 8 / 0.6 * (1 - 1e-15): wind.RemarkBreaking} {
		h := bay(powerLaw{factor: 1, power: 0, height: 2, period: 1000}, 8*50, depth)
		h.Gravity = 8
		s := after(h, wind.State{Sea: wind.Sea{Hs: 9, Tp: 1, From: 200}}, 8, 200, 1).Sea
		if s.Hs != 8 || s.Remarks&^wind.RemarkSpinUp != want {
			t.Errorf("depth %v: %+v, want %q", depth, s, want)
		}
	}
}

// TestLawThatTheStepperRefuses: a law that makes no speed of the wind gives no known sea.
func TestLawThatTheStepperRefuses(t *testing.T) {
	if s := after(bay(levelLaw{h: 0.5, t: 0.5, deep: 0.5}, 1e4, inf), wind.State{}, 8, 200, 300); s.Known() {
		t.Errorf("%+v", s.Sea)
	}
}

// TestSeaOfFullHeightLengthens: where height no longer tells the fetch, a sea still goes on from the fetch that it has reached, as long as
// the wind and the depth stay; old sea for which it has no room changes nothing of that.
func TestSeaOfFullHeightLengthens(t *testing.T) {
	law := powerLaw{factor: 1, power: 0, height: 2, period: 1000}
	h := bay(law, inf, inf)
	s, beside := h.Stepper(), h.Stepper()
	for hour := 1.0; hour <= 5; hour++ {
		s.Steady(mustBlow(8, 200), 3600)
		beside.Steady(mustBlow(8, 200), 3600)
		want := wind.Grow(law, wind.Conditions{Speed: 8, Fetch: inf, Duration: hour * 3600, MeanDepth: inf})
		got := s.State().Sea
		if !alike(got.Hs, want.Hs, 1e-12) || !alike(got.Tp, want.Tp, 3e-4) || !alike(got.Fetch, want.Fetch, 1e-3) || got.Limit != wind.LimitDuration || want.Limit != wind.LimitDuration {
			t.Errorf("after %v h: %+v, want %+v", hour, got, want)
		}
		if b := beside.State().Sea; !alike(b.Tp, got.Tp, 1e-12) || b.Hs != got.Hs {
			t.Errorf("after %v h beside an old sea: %+v, without %+v", hour, b, got)
		}
		st := beside.State()
		st.Old = wind.Sea{Hs: 0.1, Tp: 3, From: 200, Limit: wind.LimitDecay}
		beside.Set(st)
	}
}
