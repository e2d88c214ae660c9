package published

import (
	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

// What a moment of a passage knows of the water besides wind and sea.
var passageMomentSubjects = []reference.Subject{
	{Name: "route.SteepKinds", Func: route.SteepKinds, Class: reference.Data, Tests: []string{"TestReadSteepAndExposure"}},
	{Name: "route.SteepShore.Check", Func: route.SteepShore.Check, Class: reference.Constructor, Tests: []string{"TestRunRoundTrip", "TestReadSteepAndExposure"}},
	{Name: "route.WindFactor.Given", Func: route.WindFactor.Given, Class: reference.Accessor, Tests: []string{"TestReadSteepAndExposure"}},
	{Name: "route.WindFactor.Check", Func: route.WindFactor.Check, Class: reference.Constructor, Tests: []string{"TestRunRoundTrip", "TestReadSteepAndExposure"}},
	{Name: "route.Run.Factor", Func: route.Run.Factor, Class: reference.Accessor, Tests: []string{"TestReadSteepAndExposure"}},
}

var passageMomentChecks = []reference.Check{}

var passageMomentSources = []reference.Source{}
