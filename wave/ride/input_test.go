package ride_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"followingsea.example/wave/ride"
)

var nan = math.NaN()

func TestFoilsAreRefusedByName(t *testing.T) {
	for _, name := range []ride.Craft{"foil", "SUP foil", "Foilboard", "wing-foil", "HYDROFOIL"} {
		p := ride.Paddler{Craft: name}
		_, err := p.Prepare()
		if !errors.Is(err, ride.ErrFoil) || !strings.Contains(err.Error(), string(name)) {
			t.Errorf("%q: %v", name, err)
		}
		if _, err := p.Appraise(ride.Bump{Height: 1, Period: 3, Depth: deep}); !errors.Is(err, ride.ErrFoil) {
			t.Errorf("%q: %v", name, err)
		}
		if ride.Priors(name) != nil {
			t.Errorf("%q has priors", name)
		}
	}
}

// Every field of the paddler that cannot be is refused with its name, value and
// range, on every way in.
func TestPaddlerRefused(t *testing.T) {
	for want, p := range map[string]ride.Paddler{
		"Mass NaN kg is outside 20 to 400":               {Mass: nan},
		"Mass 1000 kg is outside 20 to 400":              {Mass: 1000},
		"Length 0.5 m is outside 1.5 to 14":              {Length: 0.5},
		"Draught -1 m is outside 0.005 to 0.6":           {Draught: -1},
		"AddedMass 2 1 is outside 0.001 to 0.5":          {AddedMass: 2},
		"Cruise -1.8 m/s is outside 0.3 to 6":            {Cruise: -1.8},
		"Sprint 20 m/s is outside 0.3 to 8":              {Sprint: 20},
		"Drag +Inf N s2/m2 is outside 0.3 to 60":         {Drag: math.Inf(1)},
		"Bend 0.1 m/s is outside 1 to +Inf":              {Bend: 0.1},
		"WindArea 9 m2 is outside 0.02 to 3":             {WindArea: 9},
		"WindShare NaN 1 is outside 0.1 to 1.2":          {WindShare: nan},
		"Sprint 2 m/s is below Cruise 2.5 m/s":           {Cruise: 2.5, Sprint: 2},
		`Craft "kite" is none of "board", "surfski"`:     {Craft: "kite"},
		"Thrust 7 is none of 0 (constant power), 1 (con": {Thrust: 7},
	} {
		_, err := p.Resolved()
		if !errors.Is(err, ride.ErrPaddler) || !strings.Contains(err.Error(), want) {
			t.Errorf("error %v does not say %q", err, want)
		}
		for i, err := range []error{
			second(p.Prepare()), second(p.Appraise(ride.Bump{Height: 1, Period: 3, Depth: deep})),
			second(p.Strength(ride.Bump{Height: 1, Period: 3, Depth: deep})), second(p.Line(ride.Bump{Height: 1, Period: 3, Depth: deep})),
			second(p.Simulate(benchSea, ride.Run{})), second(p.WithSprintPower(150)), second(p.WithDownwindMean(benchSea, 2.8)),
		} {
			if !errors.Is(err, ride.ErrPaddler) {
				t.Errorf("%s: way %d: %v", want, i, err)
			}
		}
		for i, v := range []float64{p.Resistance(2), p.Pull(2, 2), p.WindPush(2, 8), p.FlatSpeed(2, 8)} {
			if v == v {
				t.Errorf("%s: formula %d gives %v", want, i, v)
			}
		}
	}
}

func second[T any](_ T, err error) error { return err }

func TestBumpRefused(t *testing.T) {
	good := ride.Bump{Height: 0.6, Period: 3, Depth: deep}
	for want, change := range map[string]func(*ride.Bump){
		"Height NaN is outside 0 to 50 m":         func(b *ride.Bump) { b.Height = nan },
		"Height -1 is outside":                    func(b *ride.Bump) { b.Height = -1 },
		"Period 0 is outside 0.3 to 40 s":         func(b *ride.Bump) { b.Period = 0 },
		"Depth 0 is outside 0.05 m to infinity":   func(b *ride.Bump) { b.Depth = 0 },
		"Current NaN is outside -10 to 10 m/s":    func(b *ride.Bump) { b.Current = nan },
		"Off 80 is outside -75 to 75 degrees":     func(b *ride.Bump) { b.Off = 80 },
		"Wind +Inf is outside -60 to 60 m/s":      func(b *ride.Bump) { b.Wind = math.Inf(1) },
		"Gravity NaN is outside 9 to 10 m/s2":     func(b *ride.Bump) { b.Gravity = nan },
		"Gravity -9.8 is outside 9 to 10 m/s2":    func(b *ride.Bump) { b.Gravity = -9.8 },
		"Depth NaN is outside 0.05 m to infinity": func(b *ride.Bump) { b.Depth = nan },
	} {
		b := good
		change(&b)
		for _, err := range []error{second(reference.Appraise(b)), second(reference.Strength(b)), second(reference.Line(b))} {
			if !errors.Is(err, ride.ErrBump) || !strings.Contains(err.Error(), want) {
				t.Errorf("error %v does not say %q", err, want)
			}
		}
	}
}

func TestSeaRefused(t *testing.T) {
	ready, err := reference.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	for want, change := range map[string]func(*ride.Sea){
		"WindSea.Hs NaN is outside 0 to 25 m":              func(s *ride.Sea) { s.WindSea.Hs = nan },
		"WindSea.Tp 0 is outside 0.5 to 30 s":              func(s *ride.Sea) { s.WindSea.Tp = 0 },
		"WindSea.Gamma 40 is outside 1 to 10":              func(s *ride.Sea) { s.WindSea.Gamma = 40 },
		"WindSea.Off NaN is outside -360 to 360 degrees":   func(s *ride.Sea) { s.WindSea.Off = nan },
		"Swell.Hs -1 is outside 0 to 25 m":                 func(s *ride.Sea) { s.Swell.Hs = -1 },
		"Swell.Tp NaN is outside 0.5 to 30 s":              func(s *ride.Sea) { s.Swell.Tp = nan },
		"Swell.Tp 0 is outside 0.5 to 30 s":                func(s *ride.Sea) { s.Swell.Off = nan },
		"Wind NaN is outside -20 to 35 m/s":                func(s *ride.Sea) { s.Wind = nan },
		"Current 9 is outside -5 to 5 m/s":                 func(s *ride.Sea) { s.Current = 9 },
		"Depth 0 is outside 0.3 m to infinity":             func(s *ride.Sea) { s.Depth = 0 },
		"Gravity 1 is outside 9 to 10 m/s2":                func(s *ride.Sea) { s.Gravity = 1 },
		"WindSea.Hs -1 is outside 0 to 25 m":               func(s *ride.Sea) { s.WindSea.Hs = -1 },
		"WindSea.Gamma 0.5 is outside 1 to 10":             func(s *ride.Sea) { s.WindSea.Gamma = 0.5 },
		"WindSea.Off 500 is outside -360 to 360 degrees":   func(s *ride.Sea) { s.WindSea.Off = 500 },
		"WindSea.Tp NaN is outside 0.5 to 30 s":            func(s *ride.Sea) { s.WindSea.Tp = nan },
		"WindSea.Gamma NaN is outside 1 to 10":             func(s *ride.Sea) { s.WindSea.Gamma = nan },
		"Swell.Tp 0 is outside 0.5 to 30 s even when calm": func(s *ride.Sea) { s.Swell.Hs = 1 },
	} {
		s := benchSea
		change(&s)
		want = strings.TrimSuffix(want, " even when calm")
		for _, err := range []error{
			second(ready.Sea(s)), second(ready.Hazards(s, ride.StartingLimits())), second(reference.Simulate(s, ride.Run{})),
			second(reference.WithDownwindMean(s, 2.8)),
		} {
			if !errors.Is(err, ride.ErrSea) || !strings.Contains(err.Error(), want) {
				t.Errorf("error %v does not say %q", err, want)
			}
		}
	}
	for _, run := range []ride.Run{{Seconds: nan}, {Seconds: -1}, {Step: 3}, {Step: nan}, {Components: 1}, {Keep: -1}} {
		if _, err := reference.Simulate(benchSea, run); !errors.Is(err, ride.ErrRun) {
			t.Errorf("%+v: %v", run, err)
		}
	}
	l := ride.StartingLimits()
	l.Overrun = nan
	if _, err := ready.Hazards(benchSea, l); !errors.Is(err, ride.ErrLimits) || !strings.Contains(err.Error(), "Overrun NaN") {
		t.Errorf("limit NaN: %v", err)
	}
	for _, within := range []float64{nan, -1, 1e-9} {
		if _, err := ready.Table(ride.Sea{Depth: deep}, within); !errors.Is(err, ride.ErrTable) {
			t.Errorf("table within %v: %v", within, err)
		}
	}
	if _, err := ready.Table(ride.Sea{Depth: nan}, 0); !errors.Is(err, ride.ErrSea) {
		t.Errorf("table of no depth: %v", err)
	}
}

// Formulas give NaN for what is no number and for what is outside.
func TestFormulasGiveNaN(t *testing.T) {
	inf := math.Inf(1)
	for name, v := range map[string]float64{
		"Resistance(NaN)":   reference.Resistance(nan),
		"Resistance(Inf)":   reference.Resistance(inf),
		"Pull(NaN, 2)":      reference.Pull(nan, 2),
		"Pull(2, NaN)":      reference.Pull(2, nan),
		"Pull(2, -1)":       reference.Pull(2, -1),
		"WindPush(NaN, 8)":  reference.WindPush(nan, 8),
		"WindPush(2, NaN)":  reference.WindPush(2, nan),
		"FlatSpeed(NaN, 8)": reference.FlatSpeed(nan, 8),
		"FlatSpeed(2, NaN)": reference.FlatSpeed(2, nan),
		"FlatSpeed(2, Inf)": reference.FlatSpeed(2, inf),
		"PendulumThreshold": ride.PendulumThreshold(-0.1),
		"MelnikovThreshold": ride.MelnikovThreshold(nan),
		"MelnikovSpeed":     ride.MelnikovSpeed(nan, 1),
		"SeparatrixMoment":  ride.SeparatrixMoment(-1),
		"ShipSpeedLimit":    ride.ShipSpeedLimit(4.2, 90),
	} {
		if v == v {
			t.Errorf("%s = %v, want NaN", name, v)
		}
	}
}

// Every result says what it is, and the zero value that comes with an error
// says nothing.
func TestResultsSayTheyAreProposals(t *testing.T) {
	b := ride.Bump{Height: 0.6, Period: 3, Depth: deep}
	a, _ := reference.Appraise(b)
	s, _ := reference.Strength(b)
	l, _ := reference.Line(b)
	tr, _ := reference.Simulate(benchSea, ride.Run{Seconds: 1})
	r, _ := someReady()[0].Sea(benchSea)
	for i, got := range []string{a.Standing, s.Standing, l.Standing, tr.Standing, r.Standing} {
		if got != "proposal, no published source" {
			t.Errorf("result %d says %q", i, got)
		}
	}
	if a, err := reference.Appraise(ride.Bump{}); err == nil || a != (ride.Appraisal{}) {
		t.Errorf("with error %v: %+v", err, a)
	}
	if r, err := someReady()[0].Sea(ride.Sea{}); err == nil || r != (ride.Ride{}) {
		t.Errorf("with error %v: %+v", err, r)
	}
}

func TestTableIsHonestOutside(t *testing.T) {
	ready, err := reference.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	table, err := ready.Table(ride.Sea{Depth: deep}, 0.6)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range [][4]float64{
		{nan, 3, 10, 0}, {0.5, nan, 10, 0}, {0.5, 3, nan, 0}, {0.5, 3, 10, nan},
		{-0.1, 3, 10, 0}, {2, 3, 10, 0}, {0.5, 0.5, 10, 0}, {0.5, 20, 10, 0}, {0.5, 3, 30, 0}, {0.5, 3, -30, 0}, {math.Inf(1), 3, 10, 0},
		{0.5, 3, 10, math.Inf(1)},
	} {
		if q, ok := table.At(c[0], c[1], c[2], c[3]); ok || q != (ride.Quick{}) {
			t.Errorf("At(%v) = %+v, %v", c, q, ok)
		}
	}
	// The ends of the range belong to it.
	steepest := func(tp float64) float64 { return 0.065 * 9.80665 * tp * tp / (2 * math.Pi) }
	for _, c := range []struct {
		at [4]float64
		ok bool
	}{
		{[4]float64{0, 3, 10, 0}, true}, {[4]float64{-math.SmallestNonzeroFloat64, 3, 10, 0}, false},
		{[4]float64{0.05, 1.2, 10, 0}, true}, {[4]float64{0.05, down(1.2), 10, 0}, false},
		{[4]float64{1, 14, 10, 0}, true}, {[4]float64{1, up(14), 10, 0}, false},
		{[4]float64{steepest(3) * (1 - 1e-12), 3, 10, 0}, true}, {[4]float64{steepest(3) * (1 + 1e-12), 3, 10, 0}, false},
		{[4]float64{0.5, 3, -8, 0}, true}, {[4]float64{0.5, 3, down(-8), 0}, false},
		{[4]float64{0.5, 3, 20, 0}, true}, {[4]float64{0.5, 3, up(20), 0}, false},
		{[4]float64{0.5, 3, 10, 180}, true}, {[4]float64{0.5, 3, 10, -540}, true},
	} {
		if _, ok := table.At(c.at[0], c.at[1], c.at[2], c.at[3]); ok != c.ok {
			t.Errorf("At(%v) is inside: %v", c.at, ok)
		}
	}
	// At the nodes it is made from, the sea itself, to the digits of a float32; from abeam and ahead no waves.
	for _, tp := range []float64{1.2, 2.2, 4, 14} {
		for _, part := range []float64{0, 0.5, 1} {
			for _, wind := range []float64{-8, 0, 10, 20} {
				for _, off := range []float64{0, 45, -45, 90, 135, 360} {
					hs := part * steepest(tp) * (1 - 1e-12)
					q, ok := table.At(hs, tp, wind, off)
					r, err := ready.Sea(ride.Sea{WindSea: ride.System{Hs: hs, Tp: tp, Off: off}, Wind: wind, Depth: deep})
					if err != nil || !ok {
						t.Fatal(err, ok)
					}
					near(t, "Speed at a node", q.Speed, r.Speed, 2e-6)
					near(t, "FlatSpeed at a node", q.FlatSpeed, r.FlatSpeed, 2e-6)
					near(t, "Spread at a node", q.Spread, r.Spread, 2e-6)
					near(t, "CatchesPerHour at a node", q.CatchesPerHour, r.CatchesPerHour, 1e-2)
				}
			}
		}
	}
	for wind := -7.9; wind < 20; wind += 0.37 {
		q, _ := table.At(0, 3, wind, 0)
		near(t, "FlatSpeed", q.FlatSpeed, reference.FlatSpeed(1.8, wind), 2e-5)
	}
}
