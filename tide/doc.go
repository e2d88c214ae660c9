// Package tide gives the height of the tide and the tidal stream at any
// minute, from what is at hand: a printed table of high and low waters, an
// hour-by-hour table of streams, or (package harmonic) constituents.
//
// The three calls most people need:
//
//	table, err := tide.NewTable(turns, tide.Options{Datum: tide.LAT}) // the printed high and low waters
//	h := table.Height(at)                                             // metres above the datum
//	open, err := table.Windows(tide.Bar{Charted: tide.Drying(0.4), Need: 0.5}, from, to)
//
// # Conventions
//
// SI: metres, seconds, m/s; degrees true. Heights are above the datum that
// the table names, depth is charted depth + height, a drying height is a
// negative charted depth. A stream's Set is the direction it runs TOWARD.
// Instants carry their zone in time.Time: daylight time cannot be added twice.
//
// # Which method, and how far it can be trusted
//
// Between official high and low waters 5 to 7 hours apart the cosine is the
// tables' own method; the rule of twelfths is the same curve for the head,
// within 2.6 % of the range. Which of the two matters less than the shape of
// the local tide. Against full harmonic predictions, the largest error in each
// rise or fall of the first four months of 2026 was (median, 95th percentile,
// greatest, in cm): Eastport (range 3.4 to 7.2 m) 12, 26, 28; Boston 9, 16,
// 20; Brest 11, 19, 23; San Francisco 2, 4, 6; but Portsmouth 39, 81, 90 and
// Southampton 35, 125, 138, where a stand or a second high water lengthens the
// rise. Outside 5 to 7 hours an Estimate carries a remark and Windows is an
// error; a local curve or package harmonic is the way then. Slack water is a zero
// of the stream, and in general not at high or low water.
//
// Predictions leave out the weather: see InverseBarometer and WindSetup for the
// size of what air pressure and wind may add or take.
//
// # Seeing it
//
// examples/tideheights sets twelfths and cosine beside a harmonic tide.
//
// # Further reading
//
// [ExeterTides] for the rules of thumb, [LINZ-Tables] for the official method
// between high and low water, [Bowditch2002] chapter 9 for tides and streams on
// a chart, [NOAA-Currents] for current tables, [Meeus1998] for the moon. The
// values that are checked are listed in examples/checks/CHECKS.md.
package tide
