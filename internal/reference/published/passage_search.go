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
	{Name: "passage.Water.AppraiseInto", Func: (*passage.Water).AppraiseInto, Class: reference.Plan, Tests: []string{"TestAppraiseInto", "TestFailSafe"}},
	{Name: "passage.Search", Func: passage.Search, Class: reference.Search, Tests: []string{"TestSearchByHand", "TestSearchFailSafe", "TestSearchIsAppraise", "TestSearchWorkers", "TestSearchStops", "TestSearchRefuses"}},
	{Name: "passage.Ranking.Len", Func: (*passage.Ranking).Len, Class: reference.Accessor, Tests: []string{"TestSearchByHand"}},
	{Name: "passage.Ranking.Best", Func: (*passage.Ranking).Best, Class: reference.Search, Tests: []string{"TestSearchByHand", "TestRankingOrders", "TestSearchFailSafe"}},
	{Name: "passage.Ranking.Prospect", Func: (*passage.Ranking).Prospect, Class: reference.Search, Tests: []string{"TestSearchByHand", "TestRankingOrders", "TestSearchRefuses", "TestSearchFailSafe"}},
	{Name: "passage.Ranking.Appraise", Func: (*passage.Ranking).Appraise, Class: reference.Plan, Tests: []string{"TestSearchIsAppraise", "TestFailSafe", "TestSearchRefuses"}},
	{Name: "passage.Ranking.Water", Func: (*passage.Ranking).Water, Class: reference.Plan, Tests: []string{"TestSearchIsAppraise", "TestFailSafe", "TestSearchRefuses"}},
	{Name: "passage.Odds.Least", Func: passage.Odds.Least, Class: reference.Accessor, Tests: []string{"TestSearchByHand"}},
	{Name: "passage.Odds.Most", Func: passage.Odds.Most, Class: reference.Accessor, Tests: []string{"TestSearchByHand"}},
	{Name: "passage.Prospect.Lost", Func: passage.Prospect.Lost, Class: reference.Accessor, Tests: []string{"TestSearchByHand"}},
	{Name: "passage.Prospect.Why", Func: passage.Prospect.Why, Class: reference.Accessor, Tests: []string{"TestRankingOrders"}},
}

var passageSearchChecks = []reference.Check{}

var passageSearchSources = []reference.Source{}
