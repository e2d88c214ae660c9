package published

import (
	"followingsea.example/internal/reference"
	"followingsea.example/route"
	"followingsea.example/route/passage"
)

var passageSubjects = []reference.Subject{
	{Name: "route.Value.Or", Func: route.Value.Or, Class: reference.Accessor, Tests: []string{"TestValueJSON"}},
	{Name: "route.Value.Number", Func: route.Value.Number, Class: reference.Accessor, Tests: []string{"TestValueJSON"}},
	{Name: "route.Value.MarshalJSON", Func: route.Value.MarshalJSON, Class: reference.Accessor, Tests: []string{"TestValueJSON"}},
	{Name: "route.Value.UnmarshalJSON", Func: (*route.Value).UnmarshalJSON, Class: reference.Constructor, Tests: []string{"TestValueJSON"}},
	{Name: "passage.Known", Func: passage.Known, Class: reference.Constructor, Tests: []string{"TestValueAndLimit"}},
	{Name: "passage.Ask", Func: passage.Ask, Class: reference.Constructor, Tests: []string{"TestValueAndLimit"}},
	{Name: "passage.Limit.Get", Func: passage.Limit.Get, Class: reference.Accessor, Tests: []string{"TestValueAndLimit"}},
	{Name: "passage.Rules", Func: passage.Rules, Class: reference.Data, Tests: []string{"TestRules"}},
	{Name: "passage.Rule.Words", Func: passage.Rule.Words, Class: reference.Data, Tests: []string{"TestRules"}},
	{Name: "passage.Rule.Unit", Func: passage.Rule.Unit, Class: reference.Data, Tests: []string{"TestRules"}},
	{Name: "passage.Rule.AtLeast", Func: passage.Rule.AtLeast, Class: reference.Data, Tests: []string{"TestRules"}},
	{Name: "passage.Paddler.Validate", Func: passage.Paddler.Validate, Class: reference.Constructor, Tests: []string{"TestReadPaddlersRefuses", "TestPrepareRefuses"}},
	{Name: "passage.ReadPaddlers", Func: passage.ReadPaddlers, Class: reference.Reader, Tests: []string{"TestReadPaddlers", "TestEveryRuleCanBeRead", "TestReadPaddlersRefuses", "FuzzReadPaddlers"}},
	{Name: "passage.NoSwell.At", Func: passage.NoSwell.At, Class: reference.Accessor, Tests: []string{"TestFairDayMeetsEveryLimit"}},
	{Name: "passage.NoWarningInForce", Func: passage.NoWarningInForce, Class: reference.Constructor, Tests: []string{"TestValueAndLimit", "TestFailSafe"}},
	{Name: "passage.WarningInForce", Func: passage.WarningInForce, Class: reference.Constructor, Tests: []string{"TestValueAndLimit", "TestEachRuleBreaks"}},
	{Name: "passage.Warning.Get", Func: passage.Warning.Get, Class: reference.Accessor, Tests: []string{"TestEachRuleBreaks"}},
	{Name: "passage.Prepare", Func: passage.Prepare, Class: reference.Plan, Tests: []string{"TestPrepareRefuses", "TestFailSafe", "TestWayTableAgainstTheBalance"}},
	{Name: "passage.Water.Appraise", Func: (*passage.Water).Appraise, Class: reference.Plan, Tests: []string{"TestFairDayMeetsEveryLimit", "TestStreamCarriesTheBoard", "TestEachRuleBreaks", "TestFailSafe", "TestDayInAStrait", "TestDayOfAFront", "TestDayAtABar", "TestWorseNeverImproves", "TestWalkAgainstSeconds", "TestSymmetriesOfTheWalk", "TestDeparturesOutsideThePreparedTime"}},
	{Name: "passage.Appraisal.Broken", Func: passage.Appraisal.Broken, Class: reference.Accessor, Tests: []string{"TestBrokenAndUnknown"}},
	{Name: "passage.Appraisal.Unknown", Func: passage.Appraisal.Unknown, Class: reference.Accessor, Tests: []string{"TestBrokenAndUnknown"}},
	{Name: "passage.Water.Timeline", Func: (*passage.Water).Timeline, Class: reference.Plan, Tests: []string{"TestTimelineIsTheWalk", "TestDeparturesOutsideThePreparedTime", "TestFailSafe"}},
	{Name: "passage.Water.Moment", Func: (*passage.Water).Moment, Class: reference.Plan, Tests: []string{"TestWavesThrownBack", "TestSwellOverABar", "TestSeaAgainstTheStream", "TestTideOfUnusualDuration", "TestExposureWidensTheCases", "TestBandOfTheSea", "TestOffshoreWind", "TestStreamCarriesTheBoard", "TestDeparturesOutsideThePreparedTime"}},
	{Name: "passage.Water.SwellSpeed", Func: (*passage.Water).SwellSpeed, Class: reference.Composed, Tests: []string{"TestSwellSpeed"}},
	{Name: "passage.Water.WaysOut", Func: (*passage.Water).WaysOut, Class: reference.Plan, Tests: []string{"TestWaysOutInASteadyWind", "TestDeparturesOutsideThePreparedTime"}},
	{Name: "passage.Water.Postures", Func: (*passage.Water).Postures, Class: reference.Accessor, Tests: []string{"TestWaysOutInASteadyWind"}},
	{Name: "passage.Water.Length", Func: (*passage.Water).Length, Class: reference.Accessor, Tests: []string{"TestLightAndLength"}},
	{Name: "passage.Water.Run", Func: (*passage.Water).Run, Class: reference.Accessor, Tests: []string{"TestLightAndLength"}},
	{Name: "passage.Water.Light", Func: (*passage.Water).Light, Class: reference.Composed, Tests: []string{"TestLightAndLength"}},
	{Name: "passage.Changes", Func: passage.Changes, Class: reference.Data, Tests: []string{"TestChangesOfTheWind"}},
	{Name: "passage.Water.Contingencies", Func: (*passage.Water).Contingencies, Class: reference.Plan, Tests: []string{"TestContingenciesByHand", "TestContingenciesFailSafe"}},
	{Name: "passage.Water.NoWayOut", Func: (*passage.Water).NoWayOut, Class: reference.Plan, Tests: []string{"TestNoWayOut"}},
	{Name: "passage.BoardLost", Func: passage.BoardLost, Class: reference.Proposal, Tests: []string{"TestBoardLost"},
		Args:    []reference.Arg{reference.Number("wind", "m/s", reference.NonNegative, 10)},
		Results: []reference.Result{{Name: "near", Unit: "m"}, {Name: "far", Unit: "m"}, {Name: "swimmer", Unit: "text"}}, Unknown: []string{"unknown"},
		Eval: func(in reference.In) (reference.Out, error) {
			p := passage.BoardLost(in.F("wind"))[0]
			return reference.Out{"near": p.Near, "far": p.Far, "swimmer": p.ByASwimmer.String()}, nil
		}},
}

var passageChecks = []reference.Check{}

var passageSources = []reference.Source{}
