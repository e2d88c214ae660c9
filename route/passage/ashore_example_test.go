package passage_test

import (
	"fmt"
	"strings"
	"time"

	"followingsea.example/route/passage"
)

// A calendar entry whose alarm sounds on the telephone of whoever keeps the
// plan ashore.
func ExampleWriteCalendar() {
	start := time.Date(2026, 9, 12, 12, 0, 0, 0, time.UTC)
	e := passage.Event{
		UID: "ling-bar-2026-09-12@invented", Stamp: start.Add(-12 * time.Hour),
		Start: start, Finish: start.Add(80 * time.Minute), Alarm: start.Add(2 * time.Hour),
		Summary: "On the water: Ling Bar", Overdue: "Overdue: call the coast station",
	}
	var b strings.Builder
	if err := passage.WriteCalendar(&b, e); err != nil {
		fmt.Println(err)
	}
	fmt.Print(strings.ReplaceAll(b.String(), "\r\n", "\n"))
	// Output:
	// BEGIN:VCALENDAR
	// VERSION:2.0
	// PRODID:-//followingsea.example//passage//EN
	// CALSCALE:GREGORIAN
	// BEGIN:VEVENT
	// UID:ling-bar-2026-09-12@invented
	// SEQUENCE:0
	// DTSTAMP:20260912T000000Z
	// DTSTART:20260912T120000Z
	// DTEND:20260912T132000Z
	// SUMMARY:On the water: Ling Bar
	// BEGIN:VALARM
	// ACTION:DISPLAY
	// TRIGGER;VALUE=DATE-TIME:20260912T140000Z
	// DESCRIPTION:Overdue: call the coast station
	// END:VALARM
	// END:VEVENT
	// END:VCALENDAR
}

// The order of a spoken distress call, with blanks for what is only known when
// it happens.
func ExampleAshore_CallOrder() {
	a := passage.Ashore{Form: passage.Form{
		Leader: passage.Person{Name: "Ailis Orme"}, CallSign: "ABCD", MMSI: "123456789",
		Craft: []passage.CraftLook{{Kind: "stand-up board", Top: "orange"}},
	}}
	for i, s := range a.CallOrder() {
		fmt.Println(i+1, s)
	}
	// Output:
	// 1 Mayday, mayday, mayday
	// 2 This is the boards of Ailis Orme, the boards of Ailis Orme, the boards of Ailis Orme; call sign ABCD, MMSI 123456789
	// 3 Mayday, the boards of Ailis Orme
	// 4 Position: latitude and longitude ____________________, or bearing and distance from a charted mark ____________________
	// 5 What is wrong: ____________________
	// 6 What help is wanted: ____________________
	// 7 Persons: 1
	// 8 Anything else: boards' colours orange, drifting or not, lights, flares
	// 9 Over
}

// Three runs in hand near the limit speak for one more step, of one limit.
func ExampleNextStep() {
	log, err := passage.ReadLog(strings.NewReader(`time,handling,greatest_wind_kn,greatest_sea_m
2026-06-01T10:00:00Z,in hand,18,0.8
2026-06-08T10:00:00Z,in hand,19,0.9
2026-06-15T10:00:00Z,in hand,17.5,0.7
`))
	if err != nil {
		fmt.Println(err)
		return
	}
	var limits passage.Limits
	limits[passage.GreatestWind] = passage.Ask(20 * 1852.0 / 3600)
	limits[passage.GreatestSea] = passage.Ask(1.5)
	step, ok := passage.NextStep(limits, log, time.Date(2026, 6, 21, 0, 0, 0, 0, time.UTC))
	fmt.Printf("%v: %s from %.1f to %.1f m/s\n%s\n", ok, step.Rule.Words(), step.From, step.To, step.Why)
	// Output:
	// true: wind at most from 10.3 to 11.3 m/s
	// 3 runs in hand within 3.9 kn of the limit in 120 days
}
