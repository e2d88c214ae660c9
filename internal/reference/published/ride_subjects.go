package published

import (
	"math"
	"strconv"
	"sync"

	"followingsea.example/internal/reference"
	"followingsea.example/wave/ride"
)

// The paddler of a check: zero fields are priors, as in the package.
var ridePaddlerArgs = []reference.Arg{
	reference.Number("mass", "kg", reference.NonNegative, 95),
	reference.Number("length", "m", reference.NonNegative, 4.2),
	reference.Number("cruise", "m/s", reference.NonNegative, 1.8),
	reference.Number("sprint", "m/s", reference.NonNegative, 3),
	reference.Number("drag", "N s2/m2", reference.NonNegative, 5.5),
	reference.Number("bend", "m/s", reference.NonNegativeInf, 5),
	reference.Text("thrust", "power"),
}

var rideBumpArgs = []reference.Arg{
	reference.Number("height", "m", reference.NonNegative, 0.5),
	reference.Number("period", "s", reference.Positive, 3),
	reference.Number("depth", "m", reference.PositiveInf, 10),
	reference.Number("current", "m/s", reference.Real, 0),
	reference.Number("off", "deg", reference.Real, 0),
	reference.Number("wind", "m/s", reference.Real, 0),
	reference.Number("gravity", "m/s2", reference.NonNegative, 9.81),
}

var rideSeaArgs = []reference.Arg{
	reference.Number("hs", "m", reference.NonNegative, 0.7),
	reference.Number("tp", "s", reference.Positive, 3.6),
	reference.Number("gamma", "1", reference.NonNegative, 3.3),
	reference.Number("off", "deg", reference.Real, 0),
	reference.Number("swell_hs", "m", reference.NonNegative, 1),
	reference.Number("swell_tp", "s", reference.NonNegative, 10),
	reference.Number("wind", "m/s", reference.Real, 10),
	reference.Number("current", "m/s", reference.Real, 0),
	reference.Number("depth", "m", reference.PositiveInf, 10),
	reference.Number("gravity", "m/s2", reference.NonNegative, 9.81),
}

func rideArgs(lists ...[]reference.Arg) (all []reference.Arg) {
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

func ridePaddler(in reference.In) ride.Paddler {
	p := ride.Paddler{
		Mass: in.F("mass"), Length: in.F("length"), Cruise: in.F("cruise"), Sprint: in.F("sprint"),
		Drag: in.F("drag"), Bend: in.F("bend"),
	}
	if in.S("thrust") == "force" {
		p.Thrust = ride.ConstantForce
	}
	return p
}

// rideReady prepares each paddler of the checks once.
func rideReady(p ride.Paddler) (*ride.Prepared, error) {
	if r, ok := rideReadies.Load(p); ok {
		return r.(*ride.Prepared), nil
	}
	r, err := p.Prepare()
	if err == nil {
		rideReadies.Store(p, r)
	}
	return r, err
}

var rideReadies sync.Map

func rideBump(in reference.In) ride.Bump {
	return ride.Bump{
		Height: in.F("height"), Period: in.F("period"), Depth: in.F("depth"), Current: in.F("current"),
		Off: in.F("off"), Wind: in.F("wind"), Gravity: in.F("gravity"),
	}
}

func rideSea(in reference.In) ride.Sea {
	return ride.Sea{
		WindSea: ride.System{Hs: in.F("hs"), Tp: in.F("tp"), Gamma: in.F("gamma"), Off: in.F("off")},
		Swell:   ride.System{Hs: in.F("swell_hs"), Tp: in.F("swell_tp")},
		Wind:    in.F("wind"), Current: in.F("current"), Depth: in.F("depth"), Gravity: in.F("gravity"),
	}
}

func rideAppraise(appraise func(ride.Paddler, ride.Bump) (ride.Appraisal, error)) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		a, err := appraise(ridePaddler(in), rideBump(in))
		if err != nil {
			return nil, err
		}
		return reference.Out{
			"verdict": string(a.Verdict), "celerity": a.Celerity, "intrinsic": a.Period, "over_ground": a.OverGround,
			"wavenumber": 2 * math.Pi / a.Length, "push_per_m": a.PushPerM, "glide": a.Glide, "hold": a.Hold, "catch": a.Catch,
			"catch_from_cruise": a.CatchFromCruise, "catch_cruising": a.CatchCruising,
			"inevitable": a.Inevitable, "inevitable_cruise": a.InevitableCruise, "position": a.Position, "free_fall": a.FreeFall,
			"steepness": a.Hold / a.Length,
		}, nil
	}
}

var rideAppraisalResults = []reference.Result{
	{Name: "verdict", Unit: "text"},
	{Name: "celerity", Unit: "m/s"},
	{Name: "intrinsic", Unit: "s"},
	{Name: "over_ground", Unit: "m/s"},
	{Name: "wavenumber", Unit: "rad/m"},
	{Name: "push_per_m", Unit: "N/m"},
	{Name: "glide", Unit: "m"},
	{Name: "hold", Unit: "m"},
	{Name: "catch", Unit: "m"},
	{Name: "catch_from_cruise", Unit: "m"},
	{Name: "catch_cruising", Unit: "m"},
	{Name: "inevitable", Unit: "m"},
	{Name: "inevitable_cruise", Unit: "m"},
	{Name: "position", Unit: "deg"},
	{Name: "free_fall", Unit: "m/s"},
	{Name: "steepness", Unit: "1"},
}

var rideSubjects = []reference.Subject{
	{
		Name: "ride.PendulumThreshold", Func: ride.PendulumThreshold, Class: reference.Proposal,
		Args:    []reference.Arg{reference.Number("damping", "1", reference.NonNegativeInf, 0.5)},
		Results: []reference.Result{{Name: "load", Unit: "1"}},
		Regimes: []reference.Regime{
			{Name: "polynomial", In: func(in reference.In) bool { return in.F("damping") < 1.193 }},
			{Name: "overdamped", In: func(in reference.In) bool { return in.F("damping") >= 1.193 }},
		},
		Tests: []string{"TestPendulumByShooting"},
	},
	{
		Name: "ride.MelnikovThreshold", Func: ride.MelnikovThreshold, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("damping", "1", reference.NonNegativeInf, 0.2)},
		Results: []reference.Result{{Name: "load", Unit: "1"}},
		Tests:   []string{"TestPendulumByShooting"},
	},
	{
		Name: "ride.MelnikovSpeed", Func: ride.MelnikovSpeed, Class: reference.Formula,
		Args: []reference.Arg{
			reference.Number("celerity", "m/s", reference.NonNegative, 4.7),
			reference.Number("surf", "m/s", reference.NonNegative, 2.8),
		},
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}},
		Tests:   []string{"TestStrengthAgainstTime"},
	},
	{
		Name: "ride.SeparatrixMoment", Func: ride.SeparatrixMoment, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("n", "1", reference.Real, 3)},
		Results: []reference.Result{{Name: "mean", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			n := in.F("n")
			if !(math.Abs(n) <= 1e6) {
				return reference.Out{"mean": math.NaN()}, nil
			}
			return reference.Out{"mean": ride.SeparatrixMoment(int(n))}, nil
		},
		Tests: []string{"TestSeparatrixMoments"},
	},
	{
		Name: "ride.ShipSpeedLimit", Func: ride.ShipSpeedLimit, Class: reference.Formula,
		Args: []reference.Arg{
			reference.Number("length", "m", reference.Positive, 4.2),
			reference.Number("off", "deg", reference.Domain{Lo: -90, Hi: 90, LoOpen: true, HiOpen: true}, 15),
		},
		Results:   []reference.Result{{Name: "speed", Unit: "m/s"}},
		NoneFound: map[string]string{"all": "no worked example of the speed in MSC.1/Circ.1228 or MSC/Circ.707 could be opened: the formula is an image there"},
		Tests:     []string{"TestShipSpeedLimit"},
	},

	{Name: "ride.Priors", Func: ride.Priors, Class: reference.Data, Tests: []string{"TestPriors"}},
	{
		Name: "ride.Paddler.Resolved", Func: ride.Paddler.Resolved, Class: reference.Constructor,
		Args:    ridePaddlerArgs,
		Results: []reference.Result{{Name: "drag", Unit: "N s2/m2"}, {Name: "sprint", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			p, err := ridePaddler(in).Resolved()
			if err != nil {
				return nil, err
			}
			return reference.Out{"drag": p.Drag, "sprint": p.Sprint}, nil
		},
		Tests: []string{"TestPaddlerRefused", "TestPriors"},
	},
	{
		Name: "ride.Paddler.Resistance", Func: ride.Paddler.Resistance, Class: reference.Proposal,
		Args:    rideArgs(ridePaddlerArgs, []reference.Arg{reference.Number("speed", "m/s", reference.Real, 2)}),
		Results: []reference.Result{{Name: "force", Unit: "N"}, {Name: "power", Unit: "W"}},
		Eval: func(in reference.In) (reference.Out, error) {
			r := ridePaddler(in).Resistance(in.F("speed"))
			return reference.Out{"force": r, "power": r * in.F("speed")}, nil
		},
		Tests: []string{"TestForces"},
	},
	{
		Name: "ride.Paddler.Pull", Func: ride.Paddler.Pull, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, []reference.Arg{
			reference.Number("speed", "m/s", reference.Real, 4), reference.Number("nominal", "m/s", reference.NonNegative, 3),
		}),
		Results: []reference.Result{{Name: "force", Unit: "N"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"force": ridePaddler(in).Pull(in.F("speed"), in.F("nominal"))}, nil
		},
		Tests: []string{"TestForces"},
	},
	{
		Name: "ride.Paddler.WindPush", Func: ride.Paddler.WindPush, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, []reference.Arg{
			reference.Number("speed", "m/s", reference.Real, 2), reference.Number("wind", "m/s", reference.Real, 10),
		}),
		Results: []reference.Result{{Name: "force", Unit: "N"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"force": ridePaddler(in).WindPush(in.F("speed"), in.F("wind"))}, nil
		},
		Tests: []string{"TestForces"},
	},
	{
		Name: "ride.Paddler.FlatSpeed", Func: ride.Paddler.FlatSpeed, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, []reference.Arg{
			reference.Number("nominal", "m/s", reference.Between(0, 20), 2), reference.Number("wind", "m/s", reference.Between(-100, 100), 10),
		}),
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"speed": ridePaddler(in).FlatSpeed(in.F("nominal"), in.F("wind"))}, nil
		},
		Tests: []string{"TestForces"},
	},
	{
		Name: "ride.Paddler.Appraise", Func: ride.Paddler.Appraise, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, rideBumpArgs), Results: rideAppraisalResults,
		Eval:  rideAppraise(ride.Paddler.Appraise),
		Tests: []string{"TestHeightsNeeded", "TestCatchAgainstTime", "TestPropertyThresholdsAreOrdered", "TestWaveIsThatOfPackageWave"},
	},
	{
		Name: "ride.Paddler.Strength", Func: ride.Paddler.Strength, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, rideBumpArgs),
		Results: []reference.Result{
			{Name: "hold", Unit: "m/s"}, {Name: "catch", Unit: "m/s"}, {Name: "inevitable", Unit: "m/s"},
			{Name: "exact", Unit: "m/s"}, {Name: "melnikov", Unit: "m/s"},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			s, err := ridePaddler(in).Strength(rideBump(in))
			if err != nil {
				return nil, err
			}
			return reference.Out{"hold": s.Hold, "catch": s.Catch, "inevitable": s.Inevitable, "exact": s.Exact, "melnikov": s.Melnikov}, nil
		},
		Tests: []string{"TestStrengthAgainstTime"},
	},
	{
		Name: "ride.Paddler.Line", Func: ride.Paddler.Line, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, rideBumpArgs),
		Results: []reference.Result{
			{Name: "ride", Unit: "deg"}, {Name: "speed", Unit: "m/s"}, {Name: "progress", Unit: "m/s"},
			{Name: "straight", Unit: "m/s"}, {Name: "steepest", Unit: "deg"},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			l, err := ridePaddler(in).Line(rideBump(in))
			if err != nil {
				return nil, err
			}
			return reference.Out{"ride": l.Ride, "speed": l.Speed, "progress": l.Progress, "straight": l.Straight, "steepest": l.Steepest}, nil
		},
		Tests: []string{"TestLineIsBest"},
	},
	{
		Name: "ride.Paddler.Prepare", Func: ride.Paddler.Prepare, Class: reference.Constructor,
		Tests: []string{"TestPaddlerRefused", "TestPreparedIsConcurrent"},
	},
	{Name: "ride.Prepared.Paddler", Func: (*ride.Prepared).Paddler, Class: reference.Accessor, Tests: []string{"TestCalibrationRoundTrip"}},
	{
		Name: "ride.Prepared.Bump", Func: (*ride.Prepared).Bump, Class: reference.Composed,
		Tests: []string{"TestPreparedBumpIsAppraise", "TestNoAllocations"},
	},
	{
		Name: "ride.Prepared.Sea", Func: (*ride.Prepared).Sea, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, rideSeaArgs),
		Results: []reference.Result{
			{Name: "speed", Unit: "m/s"}, {Name: "spread", Unit: "m/s"}, {Name: "flat", Unit: "m/s"}, {Name: "sprint", Unit: "m/s"},
			{Name: "longest", Unit: "s"}, {Name: "dominant_catch", Unit: "m"}, {Name: "dominant_share", Unit: "1"}, {Name: "energy_share", Unit: "1"},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			p, err := rideReady(ridePaddler(in))
			if err != nil {
				return nil, err
			}
			r, err := p.Sea(rideSea(in))
			if err != nil {
				return nil, err
			}
			return reference.Out{
				"speed": r.Speed, "spread": r.Spread, "flat": r.FlatSpeed, "sprint": r.SprintSpeed, "longest": r.LongestPeriod,
				"dominant_catch": r.DominantCatch, "dominant_share": r.DominantShare, "energy_share": r.EnergyShare,
			}, nil
		},
		Tests: []string{"TestClosedFormAgainstSimulation", "TestPropertySea", "TestSeaAgainstPlain"},
	},
	{
		Name: "ride.Prepared.Hazards", Func: (*ride.Prepared).Hazards, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, rideSeaArgs),
		Results: []reference.Result{
			{Name: "pearling", Unit: "1"}, {Name: "overrun", Unit: "1"}, {Name: "broach", Unit: "1"},
			{Name: "bumps", Unit: "1"}, {Name: "sea", Unit: "1"}, {Name: "crossing", Unit: "1"},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			p, err := rideReady(ridePaddler(in))
			if err != nil {
				return nil, err
			}
			h, err := p.Hazards(rideSea(in), ride.StartingLimits())
			if err != nil {
				return nil, err
			}
			out := reference.Out{}
			for i, name := range []string{"pearling", "overrun", "broach", "bumps", "sea", "crossing"} {
				out[name] = h[i].Measure
			}
			return out, nil
		},
		Tests: []string{"TestHazards"},
	},
	{Name: "ride.StartingLimits", Func: ride.StartingLimits, Class: reference.Data, Tests: []string{"TestHazards"},
		Results: []reference.Result{{Name: "quarter_to", Unit: "deg"}, {Name: "crossing_from", Unit: "deg"}, {Name: "crossing_to", Unit: "deg"}},
		Eval: func(reference.In) (reference.Out, error) {
			l := ride.StartingLimits()
			return reference.Out{"quarter_to": l.QuarterTo, "crossing_from": l.CrossingFrom, "crossing_to": l.CrossingTo}, nil
		}},
	{
		Name: "ride.Paddler.Simulate", Func: ride.Paddler.Simulate, Class: reference.Proposal,
		Args: rideArgs(ridePaddlerArgs, rideSeaArgs, []reference.Arg{
			reference.Number("realisations", "1", reference.Positive, 1), reference.Number("seconds", "s", reference.NonNegative, 20),
		}),
		Results: []reference.Result{{Name: "speed", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			n := in.F("realisations")
			if !(n >= 1 && n <= 100) {
				return reference.Out{"speed": math.NaN()}, nil
			}
			sum := 0.0
			for i := range int(n) {
				t, err := ridePaddler(in).Simulate(rideSea(in), ride.Run{Seed: uint64(i), Seconds: in.F("seconds"), Step: 0.1, Components: 100})
				if err != nil {
					return nil, err
				}
				sum += t.Speed
			}
			return reference.Out{"speed": sum / float64(int(n))}, nil
		},
		Tests: []string{"TestClosedFormAgainstSimulation", "TestSimulationConverges"},
	},
	{
		Name: "ride.Paddler.WithSprintPower", Func: ride.Paddler.WithSprintPower, Class: reference.Proposal,
		Args:    rideArgs(ridePaddlerArgs, []reference.Arg{reference.Number("power", "W", reference.Positive, 130)}),
		Results: []reference.Result{{Name: "drag", Unit: "N s2/m2"}},
		Eval: func(in reference.In) (reference.Out, error) {
			p, err := ridePaddler(in).WithSprintPower(in.F("power"))
			return reference.Out{"drag": p.Drag}, err
		},
		Tests: []string{"TestCalibrationRoundTrip"},
	},
	{
		Name: "ride.Paddler.WithDownwindMean", Func: ride.Paddler.WithDownwindMean, Class: reference.Proposal,
		Args:    rideArgs(ridePaddlerArgs, rideSeaArgs, []reference.Arg{reference.Number("mean", "m/s", reference.Positive, 2.8)}),
		Results: []reference.Result{{Name: "drag", Unit: "N s2/m2", Without: []string{"drag"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			p, err := ridePaddler(in).WithDownwindMean(rideSea(in), in.F("mean"))
			return reference.Out{"drag": p.Drag}, err
		},
		Tests: []string{"TestCalibrationRoundTrip"},
	},
	{
		Name: "ride.Prepared.Table", Func: (*ride.Prepared).Table, Class: reference.Proposal,
		Tests: []string{"TestTableAgainstSea"},
	},
	{Name: "ride.Table.Worst", Func: (*ride.Table).Worst, Class: reference.Accessor, Tests: []string{"TestTableAgainstSea"}},
	{
		Name: "ride.Table.At", Func: (*ride.Table).At, Class: reference.Composed,
		Tests: []string{"TestTableAgainstSea", "TestTableIsHonestOutside"},
	},
}

func rideNumber(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
