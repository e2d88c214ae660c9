package published

import (
	"fmt"
	"math"
	"slices"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/internal/reference"
	"followingsea.example/tide"
)

var tideSubjects = slices.Concat(tideRuleSubjects, tideTableSubjects, tideStreamSubjects, tideSecondarySubjects, tideMoonSubjects)

var tideChecks = slices.Concat(tideRuleChecks, tideTableChecks, tideStreamChecks, tideSecondaryChecks, tideMoonChecks)

// tideDay is the day to which clock times without a date belong.
var tideDay = time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)

// tideClock turns seconds of the day into an instant.
func tideClock(in reference.In, name string) (time.Time, error) {
	return clock.After(tideDay, in.F(name))
}

// tideRule finds a rule by its name.
func tideRule(name string) tide.Rule {
	for r := tide.ByCosine; r <= tide.ByTenths; r++ {
		if r.String() == name {
			return r
		}
	}
	return tide.ByTenths + 1
}

// tideLimb reads the limb of the arguments from, from-height, to, to-height.
func tideLimb(in reference.In) (tide.Limb, error) {
	a, err := tideClock(in, "from")
	if err != nil {
		return tide.Limb{}, err
	}
	b, err := tideClock(in, "to")
	if err != nil {
		return tide.Limb{}, err
	}
	h1, h2 := in.F("from-height"), in.F("to-height")
	return tide.Limb{From: tide.Turn{Time: a, Height: h1, High: h1 > h2}, To: tide.Turn{Time: b, Height: h2, High: !(h1 > h2)}}, nil
}

// onLimb evaluates something on the limb of the arguments.
func onLimb(f func(tide.Limb, reference.In) (reference.Out, error)) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		l, err := tideLimb(in)
		if err != nil {
			return nil, err
		}
		return f(l, in)
	}
}

var (
	limbFrom       = reference.Number("from", "s", reference.Real, 0)
	limbTo         = reference.Number("to", "s", reference.Real, 6*3600)
	limbFromHeight = reference.Number("from-height", "m", reference.Real, 5)
	limbToHeight   = reference.Number("to-height", "m", reference.Real, 1)
	limbAt         = reference.Number("at", "s", reference.Real, 2*3600)
	limbArgs       = []reference.Arg{limbFrom, limbFromHeight, limbTo, limbToHeight}
	ruleArg        = reference.Text("rule", "cosine")
	shareArg       = reference.Number("x", "1", reference.Fraction, 0.25)
	rangeArg       = reference.Number("f", "1", reference.Fraction, 0.25)
)

// sampleTable is a table of two turns around an instant, for what a Table does.
func sampleTable(in reference.In) (*tide.Table, time.Time, error) {
	l, err := tideLimb(in)
	if err != nil {
		return nil, time.Time{}, err
	}
	at, err := tideClock(in, "at")
	if err != nil {
		return nil, time.Time{}, err
	}
	t, err := tide.NewTable([]tide.Turn{l.From, l.To}, tide.Options{Rule: tideRule(in.S("rule"))})
	return t, at, err
}

var tideRuleSubjects = []reference.Subject{
	{Name: "tide.Rule.Fraction", Func: tide.Rule.Fraction, Class: reference.Composed, Args: []reference.Arg{ruleArg, shareArg}, Results: []reference.Result{{Name: "fraction", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tideRule(in.S("rule")).Fraction(in.F("x"))}, nil
		}, Tests: []string{"TestRuleInverse", "TestRuleBadInput"}},
	{Name: "tide.Rule.Elapsed", Func: tide.Rule.Elapsed, Class: reference.Composed, Args: []reference.Arg{ruleArg, rangeArg}, Results: []reference.Result{{Name: "share", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tideRule(in.S("rule")).Elapsed(in.F("f"))}, nil
		}, Tests: []string{"TestRuleInverse", "TestRuleBadInput"}},
	{Name: "tide.Rule.Slope", Func: tide.Rule.Slope, Class: reference.Formula, Args: []reference.Arg{ruleArg, shareArg},
		Results: []reference.Result{{Name: "slope", Unit: "1"}, {Name: "in-a-sixth", Unit: "1"}},
		Regimes: []reference.Regime{{Name: "cosine", In: func(in reference.In) bool { return in.S("rule") == "cosine" }}, {Name: "twelfths", In: func(in reference.In) bool { return in.S("rule") == "twelfths" }}, {Name: "tenths", In: func(in reference.In) bool { return in.S("rule") == "tenths" }}},
		Eval: func(in reference.In) (reference.Out, error) {
			s := tideRule(in.S("rule")).Slope(in.F("x"))
			return reference.Out{"slope": s, "in-a-sixth": s / 6}, nil
		}, Tests: []string{"TestRuleSlopeIsTheDerivative"}},
	{Name: "tide.Cosine", Func: tide.Cosine, Class: reference.Formula, Args: []reference.Arg{shareArg}, Results: []reference.Result{{Name: "fraction", Unit: "1"}}, Tests: []string{"TestRulesMeetTheirBounds"}},
	{Name: "tide.CosineInverse", Func: tide.CosineInverse, Class: reference.Formula, Args: []reference.Arg{rangeArg}, Results: []reference.Result{{Name: "share", Unit: "1"}}, Tests: []string{"TestRuleInverse"}},
	{Name: "tide.Twelfths", Func: tide.Twelfths, Class: reference.Formula, Args: []reference.Arg{shareArg}, Results: []reference.Result{{Name: "fraction", Unit: "1"}}, Tests: []string{"TestRulesMeetTheirBounds"}},
	{Name: "tide.TwelfthsInverse", Func: tide.TwelfthsInverse, Class: reference.Formula, Args: []reference.Arg{rangeArg}, Results: []reference.Result{{Name: "share", Unit: "1"}}, Tests: []string{"TestRuleInverse"}},
	{Name: "tide.Tenths", Func: tide.Tenths, Class: reference.Formula, Args: []reference.Arg{shareArg}, Results: []reference.Result{{Name: "fraction", Unit: "1"}}, Tests: []string{"TestRuleInverse"}},
	{Name: "tide.TenthsInverse", Func: tide.TenthsInverse, Class: reference.Formula, Args: []reference.Arg{rangeArg}, Results: []reference.Result{{Name: "share", Unit: "1"}}, Tests: []string{"TestRuleInverse"}},
	{Name: "tide.Limb.Duration", Func: tide.Limb.Duration, Class: reference.Accessor, Args: limbArgs, Results: []reference.Result{{Name: "duration", Unit: "s", Without: []string{"from-height", "to-height"}}},
		Eval:  onLimb(func(l tide.Limb, _ reference.In) (reference.Out, error) { return reference.Out{"": l.Duration()}, nil }),
		Tests: []string{"TestLimbs"}},
	{Name: "tide.Limb.Range", Func: tide.Limb.Range, Class: reference.Formula, Args: []reference.Arg{reference.Number("high", "m", reference.Real, 5), reference.Number("low", "m", reference.Real, 1)}, Results: []reference.Result{{Name: "range", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.Limb{From: tide.Turn{Height: in.F("low")}, To: tide.Turn{Height: in.F("high"), High: true}}.Range()}, nil
		}, Tests: []string{"TestLimbs"}},
	{Name: "tide.Limb.TideHour", Func: tide.Limb.TideHour, Class: reference.Formula, Args: limbArgs, Results: []reference.Result{{Name: "tide-hour", Unit: "s", Without: []string{"from-height", "to-height"}}},
		Eval:  onLimb(func(l tide.Limb, _ reference.In) (reference.Out, error) { return reference.Out{"": l.TideHour()}, nil }),
		Tests: []string{"TestLimbs"}},
	{Name: "tide.Limb.Height", Func: tide.Limb.Height, Class: reference.Formula, Args: append(limbArgs[:4:4], limbAt, ruleArg),
		Results: []reference.Result{{Name: "height", Unit: "m"}, {Name: "change", Unit: "m"}},
		Regimes: []reference.Regime{{Name: "cosine", In: func(in reference.In) bool { return in.S("rule") == "cosine" }}, {Name: "twelfths", In: func(in reference.In) bool { return in.S("rule") == "twelfths" }}},
		Eval: onLimb(func(l tide.Limb, in reference.In) (reference.Out, error) {
			at, err := tideClock(in, "at")
			if err != nil {
				return nil, err
			}
			h := l.Height(at, tideRule(in.S("rule")))
			return reference.Out{"height": h, "change": h - l.From.Height}, nil
		}), Tests: []string{"TestLimbs", "TestHeightAtATurnIsTheTurn"}},
	{Name: "tide.Limb.Rate", Func: tide.Limb.Rate, Class: reference.Formula, Args: append(limbArgs[:4:4], limbAt, ruleArg), Results: []reference.Result{{Name: "rate", Unit: "m/s"}, {Name: "fall", Unit: "m/s"}},
		Eval: onLimb(func(l tide.Limb, in reference.In) (reference.Out, error) {
			at, err := tideClock(in, "at")
			if err != nil {
				return nil, err
			}
			r := l.Rate(at, tideRule(in.S("rule")))
			return reference.Out{"rate": r, "fall": -r}, nil
		}), Tests: []string{"TestLimbs"}},
	{Name: "tide.Limb.Elapsed", Func: tide.Limb.Elapsed, Class: reference.Formula, Args: append(limbArgs[:4:4], reference.Number("height", "m", reference.Real, 3), ruleArg), Results: []reference.Result{{Name: "elapsed", Unit: "s"}, {Name: "clock", Unit: "s"}},
		Eval: onLimb(func(l tide.Limb, in reference.In) (reference.Out, error) {
			e := l.Elapsed(in.F("height"), tideRule(in.S("rule")))
			return reference.Out{"elapsed": e, "clock": in.F("from") + e}, nil
		}), Tests: []string{"TestLimbs"}},
	{Name: "tide.Limb.When", Func: tide.Limb.When, Class: reference.Composed, Tests: []string{"TestLimbs"}},
}

// finite gives NaN for an infinity, where a difference of infinities is none.
func finite(x float64) float64 {
	if math.IsInf(x, 0) {
		return math.NaN()
	}
	return x
}

var tideTableSubjects = []reference.Subject{
	{Name: "tide.NewTable", Func: tide.NewTable, Class: reference.Constructor, Tests: []string{"TestTableRefusesWhatIsNoTide", "TestTableKnowsItsGaps"}},
	{Name: "tide.Table.Datum", Func: (*tide.Table).Datum, Class: reference.Accessor, Tests: []string{"TestDatumsDoNotMix"}},
	{Name: "tide.Table.Len", Func: (*tide.Table).Len, Class: reference.Accessor, Tests: []string{"TestAccessors"}},
	{Name: "tide.Table.Turn", Func: (*tide.Table).Turn, Class: reference.Accessor, Tests: []string{"TestAccessors"}},
	{Name: "tide.Table.Turns", Func: (*tide.Table).Turns, Class: reference.Accessor, Tests: []string{"TestAccessors"}},
	{Name: "tide.Table.Span", Func: (*tide.Table).Span, Class: reference.Accessor, Tests: []string{"TestAccessors"}},
	{Name: "tide.Table.Limb", Func: (*tide.Table).Limb, Class: reference.Accessor, Tests: []string{"TestTableKnowsItsGaps"}},
	{Name: "tide.Table.Ranges", Func: (*tide.Table).Ranges, Class: reference.Accessor, Tests: []string{"TestAccessors"}},
	{Name: "tide.Table.Shift", Func: (*tide.Table).Shift, Class: reference.Constructor, Tests: []string{"TestDatumsDoNotMix"}},
	{Name: "tide.Table.HourOn", Func: (*tide.Table).HourOn, Class: reference.Composed, Tests: []string{"TestHourTableOnTides"}},
	{Name: "tide.Table.Height", Func: (*tide.Table).Height, Class: reference.Composed, Args: append(limbArgs[:4:4], limbAt, ruleArg), Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			t, at, err := sampleTable(in)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": t.Height(at)}, nil
		}, Tests: []string{"TestTableIsItsLimbs", "TestHeightAtATurnIsTheTurn"}},
	{Name: "tide.Table.Rate", Func: (*tide.Table).Rate, Class: reference.Composed, Args: append(limbArgs[:4:4], limbAt, ruleArg), Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			t, at, err := sampleTable(in)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": t.Rate(at)}, nil
		}, Tests: []string{"TestTableIsItsLimbs"}},
	{Name: "tide.Table.Estimate", Func: (*tide.Table).Estimate, Class: reference.Composed, Args: append(limbArgs[:4:4], limbAt, ruleArg),
		Results: []reference.Result{{Name: "remark", Unit: "text"}, {Name: "height", Unit: "m"}, {Name: "spread", Unit: "m"}},
		Unknown: []string{tide.Outside.String(), tide.Gap.String()},
		Eval: func(in reference.In) (reference.Out, error) {
			t, at, err := sampleTable(in)
			if err != nil {
				return nil, err
			}
			e := t.Estimate(at)
			return reference.Out{"remark": e.Remark.String(), "height": e.Height, "spread": e.Spread}, nil
		}, Tests: []string{"TestTableIsItsLimbs", "TestOddShapesAreRemarkedAndRefused"}},
	{Name: "tide.Table.Windows", Func: (*tide.Table).Windows, Class: reference.Search,
		Args:    append(limbArgs[:4:4], reference.Number("need", "m", reference.Real, 2), reference.Number("charted", "m", reference.Real, -0.5)),
		Results: []reference.Result{{Name: "opens", Unit: "s"}, {Name: "closes", Unit: "s"}},
		Eval: onLimb(func(l tide.Limb, in reference.In) (reference.Out, error) {
			t, err := tide.NewTable([]tide.Turn{l.From, l.To}, tide.Options{})
			if err != nil {
				return nil, err
			}
			w, err := t.Windows(tide.Bar{Charted: in.F("charted"), Need: in.F("need")}, l.From.Time, l.To.Time)
			if err != nil {
				return nil, err
			}
			if len(w) != 1 {
				return nil, fmt.Errorf("%d windows", len(w))
			}
			return reference.Out{"opens": clock.Seconds(tideDay, w[0].From), "closes": clock.Seconds(tideDay, w[0].To)}, nil
		}), Tests: []string{"TestWindowsAgreeWithHeights", "TestWindowsOfADayByHand", "TestWindowsEdges"}},
	{Name: "tide.Table.Below", Func: (*tide.Table).Below, Class: reference.Search, Tests: []string{"TestWindowsAgreeWithHeights", "TestWindowsOfADayByHand", "TestWindowsEdges"}},
	{Name: "tide.Window.Duration", Func: tide.Window.Duration, Class: reference.Accessor, Tests: []string{"TestWindowsAgreeWithHeights"}},
	{Name: "tide.Window.Contains", Func: tide.Window.Contains, Class: reference.Accessor, Tests: []string{"TestWindowsAgreeWithHeights"}},
	{Name: "tide.Drying", Func: tide.Drying, Class: reference.Constructor, Tests: []string{"TestWindowsOfADayByHand"}},
	{Name: "tide.Depth", Func: tide.Depth, Class: reference.Formula, Args: []reference.Arg{reference.Number("height", "m", reference.Any, 2), reference.Number("charted", "m", reference.Any, -1)}, Results: []reference.Result{{Name: "depth", Unit: "m"}}, Tests: []string{"TestWindowsOfADayByHand"}},
	{Name: "tide.Bar.Level", Func: tide.Bar.Level, Class: reference.Accessor, Tests: []string{"TestWindowsAgreeWithHeights"}},
	{Name: "tide.Datum.Match", Func: tide.Datum.Match, Class: reference.Accessor, Tests: []string{"TestDatumsDoNotMix"}},
	{Name: "tide.ReadTable", Func: tide.ReadTable, Class: reference.Reader, Tests: []string{"TestTableRoundTrip", "TestReadersAreBounded", "FuzzReadTable"}},
	{Name: "tide.WriteTable", Func: tide.WriteTable, Class: reference.Writer, Tests: []string{"TestTableRoundTrip", "FuzzReadTable"}},
	{Name: "tide.FormNumber", Func: tide.FormNumber, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("k1", "m", reference.NonNegative, 0.1), reference.Number("o1", "m", reference.NonNegative, 0.1), reference.Number("m2", "m", reference.NonNegative, 1), reference.Number("s2", "m", reference.NonNegative, 0.3)},
		Results: []reference.Result{{Name: "form-number", Unit: "1"}}, NoneFound: map[string]string{"all": "worked form numbers with their four amplitudes: textbooks and service pages print the definition and the limits only"},
		Tests: []string{"TestFormNumber"}},
	{Name: "tide.KindOf", Func: tide.KindOf, Class: reference.Data, Args: []reference.Arg{reference.Number("form-number", "1", reference.NonNegativeInf, 0.5)}, Results: []reference.Result{{Name: "kind", Unit: "text"}},
		Unknown: []string{tide.UnknownKind.String()},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.KindOf(in.F("form-number")).String()}, nil
		}, Tests: []string{"TestFormNumber"}},
	{Name: "tide.SeasonOf", Func: tide.SeasonOf, Class: reference.Data, Args: []reference.Arg{reference.Number("springness", "1", reference.Any, 0.5)}, Results: []reference.Result{{Name: "season", Unit: "text"}},
		Unknown: []string{tide.UnknownSeason.String()},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.SeasonOf(in.F("springness")).String()}, nil
		}, Tests: []string{"TestSeasons"}},
	{Name: "tide.InverseBarometer", Func: tide.InverseBarometer, Class: reference.Formula, Args: []reference.Arg{pressureArg, pressureRef}, Results: []reference.Result{{Name: "change", Unit: "m"}}, Tests: []string{"TestWeather"}},
	{Name: "tide.Water.InverseBarometer", Func: tide.Water.InverseBarometer, Class: reference.Formula, Args: []reference.Arg{pressureArg, pressureRef, tideGravity, tideDensity}, Results: []reference.Result{{Name: "change", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tideWater(in).InverseBarometer(in.F("pressure"), in.F("reference"))}, nil
		}, Tests: []string{"TestWeather"}},
	{Name: "tide.DragCoefficient", Func: tide.DragCoefficient, Class: reference.Formula, Args: []reference.Arg{reference.Number("wind", "m/s", reference.NonNegative, 10)}, Results: []reference.Result{{Name: "drag", Unit: "1"}},
		NoneFound: map[string]string{"all": "a printed value of the relation by itself: the worked examples print the stress made of it, which is checked"}, Tests: []string{"TestWeather"}},
	{Name: "tide.Stretch.Stress", Func: tide.Stretch.Stress, Class: reference.Formula, Args: stretchArgs[:1], Results: []reference.Result{{Name: "stress", Unit: "Pa"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.Stretch{Wind: in.F("wind"), Air: 1.225}.Stress()}, nil
		}, Tests: []string{"TestWeather"}},
	{Name: "tide.WindSetup", Func: tide.WindSetup, Class: reference.Composed, Args: stretchArgs, Results: []reference.Result{{Name: "setup", Unit: "m"}, {Name: "spread", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			s := tide.WindSetup(stretch(in))
			return reference.Out{"setup": s.Height, "spread": s.Spread}, nil
		}, Tests: []string{"TestWeather"}},
	{Name: "tide.Water.WindSetup", Func: tide.Water.WindSetup, Class: reference.Formula, Args: append(stretchArgs[:3:3], tideGravity, tideDensity), Results: []reference.Result{{Name: "setup", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tideWater(in).WindSetup(stretch(in)).Height}, nil
		}, Tests: []string{"TestWeather"}},
}

var (
	pressureArg = reference.Number("pressure", "Pa", reference.Positive, 100000)
	pressureRef = reference.Number("reference", "Pa", reference.Positive, 101325)
	tideGravity = reference.Number("gravity", "m/s2", reference.NonNegative, 9.80665)
	tideDensity = reference.Number("density", "kg/m3", reference.NonNegative, 1025)
	stretchArgs = []reference.Arg{reference.Number("wind", "m/s", reference.NonNegative, 15), reference.Number("fetch", "m", reference.NonNegative, 20000), reference.Number("depth", "m", reference.PositiveInf, 10)}
)

func tideWater(in reference.In) tide.Water {
	return tide.Water{Gravity: in.F("gravity"), Density: in.F("density")}
}

func stretch(in reference.In) tide.Stretch {
	return tide.Stretch{Wind: in.F("wind"), Fetch: in.F("fetch"), Depth: in.F("depth")}
}
