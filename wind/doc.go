// Package wind reads a wind record or a forecast and says what sea it raises: how big, how long and how fast the waves
// are, how sure that is, and what on the way from an anemometer to a wave height can mislead.
//
// # The calls most people need
//
//	s, err := wind.ReadSeries(file, 0)               // wind.csv: a record, a forecast, or one after the other
//	now, err := s.At(t)                              // the wind at an instant, its gaps known as gaps
//	on, err := s.Onset(t, 6)                         // when it rose past 6 m/s, and how long it has blown since
//	c := now.On(course)                              // how much of it is behind the board
//	sea := wind.Grow(wind.Bretschneider, conditions) // the sea of a steady wind on a fetch
//	states, err := wind.Hindcast{Fetch: fetch}.Run(s, t) // the sea of the whole history
//
// # From words and instruments to a wind at 10 m
//
// A growth law wants the mean wind at 10 m over the water, over the hour or more in which the sea grows. On the way there:
//
//   - [Beaufort] rounds to whole knots first, because that is how forecasts are worded. The heights of the Beaufort table
//     ([Force.OpenSeaHeight]) are those of a fully grown open sea and belong in no bay.
//   - Height: from a mast or a buoy with the law of [Smith1988] or with [ToHeight]; a forecast is at 10 m already.
//   - Averaging: routine means of ten minutes and of an hour are on average equal. The curves of [ExtremeRatio] turn the
//     strongest x-minute wind into the strongest y-minute wind and nothing else. A gust raises no sea.
//   - Land: [LandToSea] is a mean over many coasts, good to a fifth at any one of them.
//   - A place that is sheltered, or where the wind is squeezed, gets the factor of somebody who knows it: [Exposure].
//   - A stream: the wind that raises the sea is the wind over the WATER, [Wind.Relative] to the stream.
//
// # Direction
//
// Winds and waves are named by where they come FROM, in degrees true; fields say so. A [Velocity] points where the air
// goes and has no convention to get wrong. A calm has a speed of zero and no direction (NaN); north is 0. Means of
// directions are made from sines and cosines. [Mean] carries both averages: the scalar speed with the unit-vector direction
// to report, and the vector to feed a growth law; their ratio is the [Mean.Steadiness].
//
// # A record
//
// [Series] is validated, sorted and immutable. Between samples the speed is interpolated as a number and the direction by
// vector, so that a turning wind loses no speed. Nothing is extrapolated; a gap is answered with ErrGap. It tells onset,
// lulls and spells, steadiness before, during and after a window ([Series.Around]), shifts and squalls by the definitions of
// the observing manuals, and refuses (ErrCoarse) to look for a quarter of an hour's shift in an hourly record.
//
// # The files
//
//   - [ReadSeries], [WriteSeries]: wind.csv, units in the column names, times with a zone.
//   - [ReadSwells], [WriteSwells]: swell.csv, any number of swell systems through time. A swell lives here because it
//     comes in the same forecast; it is three numbers and a name, and the physics of it is in package wave.
//   - [ReadBuoy], [WriteBuoy]: the standard meteorological text of the United States' buoys, in all its layouts. Its
//     codes for missing values are honoured, and what only looks like a value (a frozen anemometer's zero) is set aside
//     with a remark.
//
// Readers take an io.Reader, at most 32 MB, and name line, column and value in every error.
//
// # The sea
//
// Each growth law is a [Law]; [Grow] applies one to a fetch, a duration and a depth, caps height and period at full
// development together, and says what limited the sea and how far the law was stretched. [Band] shows the spread between
// the laws that measurements cannot tell apart. On a narrow lake or an inlet, where the waves run along the water and not
// down the wind, [GrowRestricted] finds their direction too. [Hindcast] steps a sea through a wind history, with the wind that turns, drops and
// comes back. Fetch is given by direction as a function; [ArcFetch], [SavilleFetch] and [RestrictedFetch] say which law
// wants which.
//
// # Bad input and accuracy
//
// Formulas return NaN for what has no answer; readers and questions about a record return an error that wraps a named one
// with field, value and range. The drag laws and so the heights differ by the scatter of their measurements: 1 % in the
// speed from 5 to 10 m, 3 % between the log law and the one-seventh rule. A height of a growth law is good to some 20 to
// 30 % at a place it was not fitted to, and a forecast of the wind to 5 % makes another 7 %.
//
// # Seeing it
//
// examples/forecast says in words what is in a wind.csv, examples/growth grows a sea hour by hour on a fetch, and
// examples/hindcast scores the growth laws against a buoy.
//
// # Further reading
//
// [WMO-702] on forecasting waves from winds, [CEM-II-2] for the way from a wind to a sea with worked examples, [WMO-8] and
// [AFMAN-15-111] for how winds are observed, [KahmaCalkoen1992] and [YoungVerhagen1996] for what a growth law is fitted to.
// Each function names its own source by a key of the bibliography in internal/reference/published;
// examples/checks/CHECKS.md lists the published values it is checked against, and for which functions none was found.
package wind
