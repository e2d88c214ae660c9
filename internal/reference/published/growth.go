package published

import (
	"math"
	"slices"
	"time"

	"followingsea.example/internal/reference"
	"followingsea.example/wind"
)

// The arguments that the growth laws share.
var (
	growthSpeed    = reference.Number("speed", "m/s", reference.NonNegative, 10)
	growthFetch    = reference.Number("fetch", "m", reference.NonNegativeInf, 20e3)
	growthDuration = reference.Number("duration", "s", reference.NonNegativeInf, 3*3600)
	growthDepth    = reference.Number("depth", "m", reference.PositiveInf, 12)
	growthGravity  = reference.Number("gravity", "m/s2", reference.NonNegative, 9.81) // zero: the default
	growthFrom     = reference.Number("from", "deg", reference.Angle, 125)
	growthArgs     = []reference.Arg{growthSpeed, growthFetch, growthDuration, growthDepth, growthGravity}
)

func growthConditions(in reference.In) wind.Conditions {
	c := wind.Conditions{Speed: in.F("speed"), Fetch: in.F("fetch"), Duration: math.Inf(1), MeanDepth: in.F("depth"), Gravity: in.F("gravity")}
	if in.Has("duration") {
		c.Duration = in.F("duration")
	}
	return c
}

// seaOut gives the results of a sea. T1/3 is what several sources print.
func seaOut(s wind.Sea) reference.Out {
	return reference.Out{"hs": s.Hs, "tp": s.Tp, "t13": s.SignificantPeriod(), "fetch": s.Fetch, "limit": s.Limit.String()}
}

var seaResults = []reference.Result{
	{Name: "hs", Unit: "m"}, {Name: "tp", Unit: "s"}, {Name: "t13", Unit: "s"},
	{Name: "fetch", Unit: "m"}, {Name: "limit", Unit: "text"},
}

var (
	deepWater   = reference.Regime{Name: "deep", In: func(in reference.In) bool { return math.IsInf(in.F("depth"), 1) }}
	finiteDepth = reference.Regime{Name: "finite depth", In: func(in reference.In) bool { return !math.IsInf(in.F("depth"), 1) }}
)

// growthLaw declares a law. What is checked of it is the sea that Grow makes of it and, for
// one that prints its own duration relations, the sea by those and their minimum duration.
func growthLaw(name string, law wind.Law, depths bool, none map[string]string, tests ...string) reference.Subject {
	s := reference.Subject{
		Name: "wind." + name, Func: law, Class: reference.Formula, Args: growthArgs,
		Results: slices.Clone(seaResults), Unknown: []string{"unknown"}, NoneFound: none,
		Tests: append([]string{"TestLawsAtTheirLimits", "TestPropertyLawsRise"}, tests...),
	}
	if depths {
		s.Regimes = []reference.Regime{deepWater, finiteDepth}
	}
	timed, isTimed := law.(wind.Timed)
	if isTimed {
		s.Results = append(s.Results,
			reference.Result{Name: "printed hs", Unit: "m"}, reference.Result{Name: "printed tp", Unit: "s"},
			reference.Result{Name: "printed limit", Unit: "text"},
			reference.Result{Name: "printed minimum", Unit: "s", Without: []string{"depth", "duration"}})
	}
	s.Eval = func(in reference.In) (reference.Out, error) {
		c := growthConditions(in)
		out := seaOut(wind.Grow(law, c))
		if isTimed {
			p := wind.AsPublished(timed, c)
			g := c.Gravity
			if g == 0 {
				g = wind.Gravity
			}
			out["printed hs"], out["printed tp"], out["printed limit"] = p.Hs, p.Tp, p.Limit.String()
			out["printed minimum"] = timed.MinimumDuration(c.Speed, c.Fetch, g)
		}
		return out, nil
	}
	return s
}

const (
	onlyConstants = "looked for worked examples, tables and test values in manuals, lecture notes, theses and code: only the constants were found, in transcriptions"
	noDeepExample = "looked for a worked deep-water example: the set was only seen worked in shallow water and by its constants"
	noFinite      = "no worked example at finite depth was found, only the constants"
)

var bandLaw = reference.Text("law", "Bretschneider")

// lawNamed finds a law by the name it prints.
func lawNamed(name string) wind.Law {
	for _, l := range wind.Laws() {
		if l.String() == name {
			return l
		}
	}
	return nil
}

var growthSubjects = slices.Concat(growthLawSubjects, growthSeaSubjects, fetchSubjects, hindcastSubjects)

var growthLawSubjects = []reference.Subject{
	growthLaw("Bretschneider", wind.Bretschneider, true, map[string]string{"finite depth": noFinite}, "TestNotesTable"),
	growthLaw("BreugemHolthuijsen", wind.BreugemHolthuijsen, true, map[string]string{"finite depth": onlyConstants}, "TestNotesTable"),
	growthLaw("BreugemHolthuijsen414", wind.BreugemHolthuijsen414, true, map[string]string{"finite depth": onlyConstants}),
	growthLaw("YoungVerhagen", wind.YoungVerhagen, true, map[string]string{"finite depth": onlyConstants}, "TestNotesTable", "TestYoungVerhagenDeepLimit"),
	growthLaw("KahmaCalkoen", wind.KahmaCalkoen, false, nil, "TestNotesTable"),
	growthLaw("KahmaCalkoenStable", wind.KahmaCalkoenStable, false, nil),
	growthLaw("KahmaCalkoenUnstable", wind.KahmaCalkoenUnstable, false, nil),
	growthLaw("JONSWAP", wind.JONSWAP, false, nil, "TestNotesTable"),
	growthLaw("JONSWAPStart", wind.JONSWAPStart, false, nil),
	growthLaw("Wilson", wind.Wilson, false, nil, "TestNotesTable"),
	growthLaw("SPM84", wind.SPM84, true, map[string]string{"finite depth": noDeepExample}, "TestNotesTable"),
	growthLaw("SPMAdjusted", wind.SPMAdjusted, true, nil),
	growthLaw("ACES", wind.ACES, true, nil, "TestNotesTable"),
	growthLaw("ACESAdjusted", wind.ACESAdjusted, true, nil),
	growthLaw("Kamphuis", wind.Kamphuis, false, nil),
	growthLaw("CEM", wind.CEM, true, nil, "TestNotesTable"),
	growthLaw("Smith", wind.Smith, true, map[string]string{"finite depth": noFinite}, "TestNotesTable"),
	growthLaw("GroenDorrestein", wind.GroenDorrestein, true, nil, "TestNotesTable"),
	growthLaw("HwangWang", wind.HwangWang, false, nil),
	{
		Name: "wind.SmithOff", Func: wind.SmithOff, Class: reference.Formula, Tests: []string{"TestSmithOffTurnsTheWind"},
		Args:    append([]reference.Arg{reference.Number("offset", "deg", reference.Angle, 32)}, growthArgs...),
		Results: []reference.Result{{Name: "hs", Unit: "m"}, {Name: "tp", Unit: "s"}, {Name: "limit", Unit: "text"}},
		Unknown: []string{"unknown"},
		Eval: func(in reference.In) (reference.Out, error) {
			return seaOut(wind.AsPublished(wind.SmithOff(in.F("offset")), growthConditions(in))), nil
		},
	},
	{
		Name: "wind.GrowRestricted", Func: wind.GrowRestricted, Class: reference.Composed, Tests: []string{"TestGrowRestrictedIsItsParts"},
		Args:    append([]reference.Arg{growthSpeed, growthDuration, growthDepth, growthGravity}, roseArgs...),
		Results: []reference.Result{{Name: "hs", Unit: "m"}, {Name: "tp", Unit: "s"}, {Name: "from", Unit: "deg"}, {Name: "limit", Unit: "text"}},
		Unknown: []string{"unknown"},
		Eval: func(in reference.In) (reference.Out, error) {
			rose, err := evenRose(in)
			if err != nil {
				return nil, err
			}
			c := wind.Conditions{Speed: in.F("speed"), Duration: in.F("duration"), MeanDepth: in.F("depth"), Gravity: in.F("gravity"), From: in.F("from")}
			s := wind.GrowRestricted(rose, c)
			return reference.Out{"hs": s.Hs, "tp": s.Tp, "from": s.From, "limit": s.Limit.String()}, nil
		},
	},
	{
		Name: "wind.SPMAdjustedWind", Func: wind.SPMAdjustedWind, Class: reference.Formula, Args: []reference.Arg{growthSpeed},
		Results: []reference.Result{{Unit: "m/s"}}, Tests: []string{"TestAdjustedWinds"},
		NoneFound: map[string]string{"all": "the equation is printed everywhere; no worked value of it was found"},
	},
	{
		Name: "wind.ACESAdjustedWind", Func: wind.ACESAdjustedWind, Class: reference.Formula, Args: []reference.Arg{growthSpeed},
		Results: []reference.Result{{Unit: "m/s"}},
	},
	{
		Name: "wind.CEMFrictionVelocity", Func: wind.CEMFrictionVelocity, Class: reference.Formula, Args: []reference.Arg{growthSpeed},
		Results: []reference.Result{{Unit: "m/s"}}, Tests: []string{"TestAdjustedWinds"},
		NoneFound: map[string]string{"all": "the drag relation is printed in the manual and its restatements; no worked value of it was found"},
	},
	{
		Name: "wind.DepthLimitedHeight", Func: wind.DepthLimitedHeight, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("speed", "m/s", reference.Positive, 10), reference.Number("depth", "m", reference.Positive, 3)}, Results: []reference.Result{{Unit: "m"}},
		NoneFound: map[string]string{"all": onlyConstants}, Tests: []string{"TestDepthAsymptotes"},
	},
	{
		Name: "wind.DepthLimitedPeriod", Func: wind.DepthLimitedPeriod, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("speed", "m/s", reference.Positive, 10), reference.Number("depth", "m", reference.Positive, 3)}, Results: []reference.Result{{Unit: "s"}},
		NoneFound: map[string]string{"all": onlyConstants}, Tests: []string{"TestDepthAsymptotes"},
	},
	{Name: "wind.Laws", Func: wind.Laws, Class: reference.Data, Tests: []string{"TestLawsAtTheirLimits"}},
	{Name: "wind.BandLaws", Func: wind.BandLaws, Class: reference.Data, Tests: []string{"TestBandHoldsItsLaws"}},
}

var growthSeaSubjects = []reference.Subject{
	{
		Name: "wind.Grow", Func: wind.Grow, Class: reference.Composed, Args: append([]reference.Arg{bandLaw}, growthArgs...),
		Results: seaResults, Unknown: []string{"unknown"},
		Tests: []string{"TestGrowCapsTogether", "TestPropertyGrowMonotone", "TestPropertyGrowScalesWithGravity", "TestGrowBadInput"},
		Eval: func(in reference.In) (reference.Out, error) {
			return seaOut(wind.Grow(lawNamed(in.S("law")), growthConditions(in))), nil
		},
	},
	{
		Name: "wind.AsPublished", Func: wind.AsPublished, Class: reference.Composed, Args: growthArgs, Results: seaResults[:2],
		Tests: []string{"TestAsPublishedCapsTogether", "TestNotesTable"},
		Eval: func(in reference.In) (reference.Out, error) {
			return seaOut(wind.AsPublished(wind.Kamphuis, growthConditions(in))), nil
		},
	},
	{
		Name: "wind.MinimumDuration", Func: wind.MinimumDuration, Class: reference.Composed,
		Args:    []reference.Arg{bandLaw, growthSpeed, growthFetch, growthDepth, growthGravity},
		Results: []reference.Result{{Unit: "s"}}, Tests: []string{"TestMinimumDurationIsTheGroupsTravel", "TestPropertyDurationAndFetchMeet"},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": wind.MinimumDuration(lawNamed(in.S("law")), growthConditions(in))}, nil
		},
	},
	{
		Name: "wind.EquivalentFetch", Func: wind.EquivalentFetch, Class: reference.Composed,
		Args:    []reference.Arg{bandLaw, growthSpeed, growthDepth, growthGravity, reference.Number("hs", "m", reference.NonNegativeInf, 0.5)},
		Results: []reference.Result{{Unit: "m"}}, Tests: []string{"TestPropertyEquivalentFetchRoundTrip"},
		Eval: func(in reference.In) (reference.Out, error) {
			c := wind.Conditions{Speed: in.F("speed"), MeanDepth: in.F("depth"), Gravity: in.F("gravity")}
			return reference.Out{"": wind.EquivalentFetch(lawNamed(in.S("law")), c, in.F("hs"))}, nil
		},
	},
	{
		Name: "wind.Band", Func: wind.Band, Class: reference.Composed, Args: growthArgs,
		Results: []reference.Result{{Name: "low hs", Unit: "m"}, {Name: "high hs", Unit: "m"}, {Name: "low tp", Unit: "s"}, {Name: "high tp", Unit: "s"}},
		Tests:   []string{"TestBandHoldsItsLaws"},
		Eval: func(in reference.In) (reference.Out, error) {
			b := wind.Band(growthConditions(in))
			return reference.Out{"low hs": b.LowHs, "high hs": b.HighHs, "low tp": b.LowTp, "high tp": b.HighTp}, nil
		},
	},
	{
		Name: "wind.ObservedOverPredicted", Func: wind.ObservedOverPredicted, Class: reference.Data,
		Args: []reference.Arg{reference.Number("difference", "dC", reference.Between(-30, 8), 3)}, Results: []reference.Result{{Unit: "1"}},
		Tests: []string{"TestObservedOverPredicted"},
	},
	{
		Name: "wind.OnePointHeight", Func: wind.OnePointHeight, Class: reference.Formula,
		Args:    []reference.Arg{growthSpeed, reference.Number("time", "s", reference.NonNegativeInf, 3*3600)},
		Results: []reference.Result{{Unit: "m"}}, Tests: []string{"TestOnePointHeight"},
		NoneFound: map[string]string{"all": "the curve stands in the model's source; no printed value of it was found"},
	},
	{
		Name: "wind.TobaHeight", Func: wind.TobaHeight, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("friction", "m/s", reference.NonNegative, 0.4), reference.Number("tp", "s", reference.NonNegative, 4)},
		Results: []reference.Result{{Unit: "m"}}, Tests: []string{"TestTobaHeight"},
		NoneFound: map[string]string{"all": "the coefficient is printed in several forms; no worked value was found"},
	},
	{Name: "wind.Sea.Known", Func: wind.Sea.Known, Class: reference.Accessor, Tests: []string{"TestGrowBadInput"}},
	{
		Name: "wind.Sea.SignificantPeriod", Func: wind.Sea.SignificantPeriod, Class: reference.Formula,
		Args: []reference.Arg{reference.Number("tp", "s", reference.NonNegativeInf, 8)}, Results: []reference.Result{{Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": wind.Sea{Tp: in.F("tp")}.SignificantPeriod()}, nil
		},
	},
	{Name: "wind.Remark.Has", Func: wind.Remark.Has, Class: reference.Accessor, Tests: []string{"TestRemarks"}},
}

// evenRose is a rose of radials every given step, as the sources print them.
func evenRose(in reference.In) (func(float64) float64, error) {
	return wind.Radials(in.F("first"), in.F("step"), in.L("radials")...)
}

var roseArgs = []reference.Arg{
	growthFrom, reference.Number("first", "deg", reference.Between(-360, 360), 0), reference.Number("step", "deg", reference.Between(1, 25), 12),
	reference.List("radials", "m", reference.NonNegativeInf, 6e3, 20e3, 22e3, 20e3, 21e3, 58e3, 57e3, 46e3, 43e3, 21e3, 17e3, 16e3, 10e3, 9e3),
}

func fetchSubject(name string, f func(func(float64) float64, float64) float64, class reference.Class, none map[string]string, tests ...string) reference.Subject {
	return reference.Subject{
		Name: "wind." + name, Func: f, Class: class, Args: roseArgs, Results: []reference.Result{{Unit: "m"}}, NoneFound: none, Tests: tests,
		Eval: func(in reference.In) (reference.Out, error) {
			rose, err := evenRose(in)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": f(rose, in.F("from"))}, nil
		},
	}
}

var fetchSubjects = []reference.Subject{
	{Name: "wind.NewFetches", Func: wind.NewFetches, Class: reference.Constructor, Tests: []string{"TestReadFetchesRefuses", "TestFetchesRoundTrip"}},
	{Name: "wind.Fetches.Rows", Func: wind.Fetches.Rows, Class: reference.Accessor, Tests: []string{"TestFetchesRoundTrip"}},
	{Name: "wind.Fetches.HasDepths", Func: wind.Fetches.HasDepths, Class: reference.Accessor, Tests: []string{"TestFetchesRoundTrip"}},
	{Name: "wind.Fetches.Fetch", Func: wind.Fetches.Fetch, Class: reference.Accessor, Tests: []string{"TestReadFetches"}},
	{Name: "wind.Fetches.MeanDepth", Func: wind.Fetches.MeanDepth, Class: reference.Accessor, Tests: []string{"TestReadFetches"}},
	{Name: "wind.ReadFetches", Func: wind.ReadFetches, Class: reference.Reader, Tests: []string{"TestFetchesRoundTrip", "TestReadFetchesRefuses", "FuzzReadFetches"}},
	{Name: "wind.WriteFetches", Func: wind.WriteFetches, Class: reference.Writer, Tests: []string{"TestFetchesRoundTrip", "FuzzReadFetches"}},
	{Name: "wind.Radials", Func: wind.Radials, Class: reference.Constructor, Tests: []string{"TestRadials", "TestRadialsBadInput"}},
	{
		Name: "wind.ArcFetch", Func: wind.ArcFetch, Class: reference.Composed, Args: append([]reference.Arg{reference.Number("half", "deg", reference.Between(0, 180), 7)}, roseArgs...),
		Results: []reference.Result{{Unit: "m"}}, Tests: []string{"TestFetchesOfAnEvenShore"},
		Eval: func(in reference.In) (reference.Out, error) {
			rose, err := evenRose(in)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": wind.ArcFetch(rose, in.F("from"), in.F("half"))}, nil
		},
	},
	fetchSubject("SavilleFetch", wind.SavilleFetch, reference.Formula, map[string]string{"all": "the definition and the sum of cosines 13.511 are printed; no worked table with its result was found"}, "TestFetchesOfAnEvenShore"),
	fetchSubject("CosineFetch", wind.CosineFetch, reference.Formula, map[string]string{"all": "only the definition was found"}, "TestFetchesOfAnEvenShore"),
	{
		Name: "wind.RestrictedFetch", Func: wind.RestrictedFetch, Class: reference.Formula, Args: roseArgs,
		Results: []reference.Result{{Name: "length", Unit: "m"}, {Name: "from", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			rose, err := evenRose(in)
			if err != nil {
				return nil, err
			}
			l, d := wind.RestrictedFetch(rose, in.F("from"))
			return reference.Out{"length": l, "from": d}, nil
		},
	},
}

// steadyHindcast is the sea after one wind has blown, and then another, on open water.
func steadyHindcast(in reference.In) (wind.State, error) {
	h := wind.Hindcast{
		Fetch:     func(float64) float64 { return in.F("fetch") },
		MeanDepth: func(time.Time, float64) float64 { return in.F("depth") },
		Gravity:   in.F("gravity"),
	}
	s := h.Stepper()
	s.Steady(wind.Wind{Speed: in.F("speed"), From: in.F("from")}, in.F("duration"))
	s.Steady(wind.Wind{Speed: in.F("speed2"), From: in.F("from2")}, in.F("duration2"))
	return s.State(), nil
}

var hindcastArgs = append(append([]reference.Arg{}, growthArgs...), growthFrom,
	reference.Number("speed2", "m/s", reference.NonNegative, 8), reference.Number("from2", "deg", reference.Angle, 150),
	reference.Number("duration2", "s", reference.Between(0, 1e6), 7200))

func init() {
	hindcastArgs[2].Domain = reference.Between(0, 1e6)
}

var hindcastSubjects = []reference.Subject{
	{
		Name: "wind.Hindcast.Stepper", Func: wind.Hindcast.Stepper, Class: reference.Proposal, Args: hindcastArgs,
		Results: []reference.Result{{Name: "hs", Unit: "m"}, {Name: "tp", Unit: "s"}, {Name: "total", Unit: "m"}},
		Tests:   []string{"TestHindcastIsTheLawInSmallSteps", "TestPropertySplittingAStep", "TestVeerInOneOrTen"},
		Eval: func(in reference.In) (reference.Out, error) {
			st, err := steadyHindcast(in)
			return reference.Out{"hs": st.Sea.Hs, "tp": st.Sea.Tp, "total": st.Hs()}, err
		},
	},
	{Name: "wind.Hindcast.Run", Func: wind.Hindcast.Run, Class: reference.Proposal, Tests: []string{"TestHindcastIsTheLawInSmallSteps", "TestStepsOfTheHistory", "TestGapLosesTheSea"}},
	{Name: "wind.Hindcast.Resume", Func: wind.Hindcast.Resume, Class: reference.Proposal, Tests: []string{"TestResume"}},
	{Name: "wind.Stepper.State", Func: (*wind.Stepper).State, Class: reference.Accessor, Tests: []string{"TestPropertySplittingAStep"}},
	{Name: "wind.Stepper.Set", Func: (*wind.Stepper).Set, Class: reference.Accessor, Tests: []string{"TestResume"}},
	{Name: "wind.Stepper.Steady", Func: (*wind.Stepper).Steady, Class: reference.Composed, Tests: []string{"TestHindcastIsTheLawInSmallSteps", "TestPropertySplittingAStep"}},
	{Name: "wind.State.Hs", Func: wind.State.Hs, Class: reference.Accessor, Tests: []string{"TestStateTogether"}},
	{Name: "wind.State.Tp", Func: wind.State.Tp, Class: reference.Accessor, Tests: []string{"TestStateTogether"}},
	{Name: "wind.State.Known", Func: wind.State.Known, Class: reference.Accessor, Tests: []string{"TestGapLosesTheSea"}},
}
