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
}

var passageAshoreChecks = []reference.Check{}

var passageAshoreSources = []reference.Source{
	{Key: "RFC5545", Citation: "Desruisseaux, B. (ed.), 2009. Internet Calendaring and Scheduling Core Object Specification (iCalendar). RFC 5545, Internet Engineering Task Force.", ID: "RFC 5545"},
}
