// Package passage puts the parts together: a run, a day and a paddler make an
// appraisal of each departure, which says which of the paddler's own limits
// are met, which are broken, and which are unknown.
//
// # The three calls most people need
//
//	water, err := passage.Prepare(run, day, paddler, passage.Options{From: from, To: to}) // once for a run and a day
//	a, err := water.Appraise(depart)                                                      // for each departure
//	legs, err := water.Timeline(depart)                                                   // where, when, in what
//
// a.State is Met only if every limit that was asked for is; a.Broken and
// a.Unknown say what is in the way, where and when. After that:
//
//	[Water.WaysOut], [Water.NoWayOut]  which exits can be reached from a place, and where none can
//	[Water.Contingencies]              the paddle breaks, the wind shifts, somebody drifts
//	[Water.Tolerances]                 how much wind, turn or delay each limit stands
//	[Water.Deck]                       the page for the board: gates with the last minute to pass them
//	[Water.Ashore], [WriteAshore], [WriteCalendar]  the plan left with somebody, and its alarm
//	[Water.Launch], [Water.Debrief]    the plan against what is seen, and against the recorded track
//	[PrepareParty], [Search]           several paddlers; runs, days and members of a forecast, ranked
//
// # What goes in
//
// A run is a route.Run: a line, exits, coast and areas, by hand or from
// route.ReadRun. A [Day] is the wind record, swell, tide, streams and warning, of
// which any part may be missing. A [Paddler] is two flat-water speeds and the
// limits they set: paddler.Limits[passage.GreatestWind] = passage.Ask(11), or
// from a file with [ReadPaddlers]. Nothing has a limit that nobody set.
//
// # Unknown is not zero
//
// A [Value] may be unknown, and its zero value is; Known(0) is a zero. A nil
// Swell or Tide is unknown, and [NoSwell] is water without swell. A [Warning]
// that nobody looked for is unknown, and [NoWarningInForce] says that somebody
// looked. What hangs on an unknown is an unknown finding, and a limit that is
// unknown is not met. A limit not asked for has no finding at all.
//
// The height and the steepness of the sea need the stream and the depth, because
// both raise it. A few things are taken as stated until somebody says otherwise,
// since they belong to the chart and not to the day: a fetch of no given depth
// is deep, a shore of no given kind throws nothing back ([Moment].SeaWords says so
// where one is near), a leg of no given exposure has the wind of the forecast.
//
// # Bands
//
// A limit is judged on the expected value at the worst place, and Finding.Why
// says the band where there is one: of the sea by the growth laws that
// measurements cannot tell apart, of the wind by the exposure of the leg, which
// also widens the slow and the fast case. Of the tide the low end of the spread
// counts wherever the rise or fall lasts unusually long or short. What a kind of
// shore throws back is the upper end of what is usual for it, counted as far as
// [ReflectionReach], which is a proposal.
//
// # Conventions
//
// Metres, seconds, m/s, degrees true; each limit in the unit of [Rule.Unit].
// Distances along are from the start of the run. Times are expected ones; light,
// endurance and the alarm use the slow case. Margins are compared in comfortable
// steps, so many of each rule's own unit. A finding holds for the whole way and
// names the worst place and instant on it.
//
// # How far to trust it
//
// It is an estimate made of estimates. The wind is the forecast's; the sea a
// growth law's, good to a fifth or a third; the speed of the board a model that
// is a proposal, no published source, as are the postures. The composition is
// checked by a second, plain implementation and days worked by hand. That every
// limit is met says only that: your own limits, met on these numbers.
//
// # Further reading
//
// [SOLAS-V34] and [IMO-A893] for what a passage plan is about, [RFC5545] for the
// calendar. The parts have their sources in packages wind, wave, wave/ride,
// tide and route.
package passage
