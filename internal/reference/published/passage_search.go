package published

import (
	"followingsea.example/internal/reference"
	"followingsea.example/route/passage"
)

// Parties, and the choice of run and departure.
var passageSearchSubjects = []reference.Subject{
	{Name: "passage.PrepareParty", Func: passage.PrepareParty, Class: reference.Plan, Tests: []string{"TestPartyIsItsWeakest", "TestPartyFailSafe", "TestPartyRefuses"}},
	{Name: "passage.Water.Meetings", Func: (*passage.Water).Meetings, Class: reference.Plan, Tests: []string{"TestMeetings", "TestMeetingsNotKnown"}},
	{Name: "passage.Water.SpreadAfter", Func: (*passage.Water).SpreadAfter, Class: reference.Plan, Tests: []string{"TestMeetings", "TestMeetingsNotKnown"}},
}

var passageSearchChecks = []reference.Check{}

var passageSearchSources = []reference.Source{}
