package published

import (
	"followingsea.example/internal/reference"
	"followingsea.example/route/passage"
)

// The plan left ashore, and what becomes of it on the water and afterwards.
var passageAshoreSubjects = []reference.Subject{
	{Name: "passage.Water.Track", Func: (*passage.Water).Track, Class: reference.Plan, Tests: []string{"TestTrackReadsBack", "TestTrackOfAPassageThatEnds"}},
	{Name: "passage.Event.Check", Func: passage.Event.Check, Class: reference.Constructor, Tests: []string{"TestCalendarRefuses"}},
	{Name: "passage.WriteCalendar", Func: passage.WriteCalendar, Class: reference.Writer, Tests: []string{"TestCalendarReadsBack", "TestCalendarCutsSeconds", "TestCalendarAnyText", "TestCalendarRefuses", "FuzzReadCalendar"}},
	{Name: "passage.ReadCalendar", Func: passage.ReadCalendar, Class: reference.Reader, Tests: []string{"TestCalendarReadsBack", "TestReadCalendarIsStrict", "FuzzReadCalendar"}},
	{Name: "passage.ReadForm", Func: passage.ReadForm, Class: reference.Reader, Tests: []string{"TestFormReadsBack", "FuzzForm"}},
	{Name: "passage.Form.Check", Func: passage.Form.Check, Class: reference.Constructor, Tests: []string{"TestFormReadsBack"}},
	{Name: "passage.Water.Ashore", Func: (*passage.Water).Ashore, Class: reference.Plan, Tests: []string{"TestAshoreByHand", "TestAshoreWithoutAnArrival"}},
	{Name: "passage.Water.Shuttle", Func: (*passage.Water).Shuttle, Class: reference.Composed, Tests: []string{"TestAshoreByHand", "TestFormReadsBack"}},
	{Name: "passage.Ashore.Persons", Func: passage.Ashore.Persons, Class: reference.Accessor, Tests: []string{"TestAshoreByHand"}},
	{Name: "passage.Ashore.CallOrder", Func: passage.Ashore.CallOrder, Class: reference.Data, Tests: []string{"TestAshoreText"}},
	{Name: "passage.Ashore.Event", Func: passage.Ashore.Event, Class: reference.Composed, Tests: []string{"TestAshoreEvent", "TestAshoreWithoutAnArrival"}},
	{Name: "passage.WriteAshore", Func: passage.WriteAshore, Class: reference.Writer, Tests: []string{"TestAshoreText", "TestAshoreWithoutAnArrival", "FuzzForm"}},
	{Name: "passage.Water.Deck", Func: (*passage.Water).Deck, Class: reference.Plan, Tests: []string{"TestDeckByHand", "TestDeckFailSafe", "TestDeckForecastEnds"}},
	{Name: "passage.Water.Launch", Func: (*passage.Water).Launch, Class: reference.Proposal, Tests: []string{"TestLaunch", "TestLaunchNeverImproves"}},
	{Name: "passage.Water.Tolerances", Func: (*passage.Water).Tolerances, Class: reference.Proposal, Tests: []string{"TestTolerancesByHand"}},
	{Name: "passage.Water.Visits", Func: (*passage.Water).Visits, Class: reference.Plan, Tests: []string{"TestVisitsByHand"}},
	{Name: "passage.Water.Debrief", Func: (*passage.Water).Debrief, Class: reference.Plan, Tests: []string{"TestDebriefByHand", "TestDebriefSet", "TestDebriefRefuses"}},
	{Name: "passage.Water.Calibrated", Func: (*passage.Water).Calibrated, Class: reference.Proposal, Tests: []string{"TestCalibrated"}},
	{Name: "passage.Appraisal.Outing", Func: passage.Appraisal.Outing, Class: reference.Accessor, Tests: []string{"TestDebriefByHand"}},
	{Name: "passage.NextStep", Func: passage.NextStep, Class: reference.Proposal, Tests: []string{"TestNextStepByHand", "TestNextStepNeedsItsReasons"}},
	{Name: "passage.ReadLog", Func: passage.ReadLog, Class: reference.Reader, Tests: []string{"TestLogReadsBack", "TestReadLogRefuses", "FuzzReadLog"}},
	{Name: "passage.WriteLog", Func: passage.WriteLog, Class: reference.Writer, Tests: []string{"TestLogReadsBack", "FuzzReadLog"}},
}

var passageAshoreChecks = []reference.Check{}

var passageAshoreSources = []reference.Source{
	{Key: "SOLAS-V34", Citation: "International Maritime Organization, 1974 and amendments. International Convention for the Safety of Life at Sea, chapter V, regulation 34: Safe navigation and avoidance of dangerous situations.", ID: "SOLAS V/34"},
	{Key: "IMO-A893", Citation: "International Maritime Organization, 1999. Guidelines for voyage planning. Resolution A.893(21).", ID: "A.893(21)"},
	{Key: "ITU-RR", Citation: "International Telecommunication Union, 2020. Radio Regulations, Article 32: Operational procedures for distress communications in the Global Maritime Distress and Safety System.", ID: "ITU-RR Article 32"},
	{Key: "RFC5545", Citation: "Desruisseaux, B. (ed.), 2009. Internet Calendaring and Scheduling Core Object Specification (iCalendar). RFC 5545, Internet Engineering Task Force.", ID: "RFC 5545"},
}
