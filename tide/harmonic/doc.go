// Package harmonic predicts the tide and the tidal stream at any instant of
// any year from a station's harmonic constants: amplitude and Greenwich phase
// lag of each constituent.
//
// The calls most people need:
//
//	t, err := harmonic.New(station, harmonic.AtInstant)
//	h := t.Height(at)                          // metres above station.Datum
//	turns, err := t.Turns(from, to, 0.01)      // high and low waters
//	open, err := t.Windows(bar, from, to)      // when the bar has water
//
// # The sum
//
//	h(t) = Z0 + Σ f A cos(V(t) + u − g)
//
// V is a combination of the mean longitudes of moon, sun, their perigees and
// the hour angle of the mean sun, f and u are Schureman's node factor and node
// angle, g is the lag on the equilibrium argument at Greenwich (degrees, UT). Lags given
// for a local zone ("kappa prime", or g with a zone) must be converted first.
// The 37 constituents of the United States National Ocean Service are known,
// and many compounds of shallow water (Names).
//
// # Which nodes
//
// AtInstant takes f and u at each instant: smooth over the years, and within 0.4 to 2.2
// cm of the official predictions. ByYear takes them as the national service
// does, and gives its predictions to the last digit, but jumps at New Year: it is there to
// verify. Leaving the nodes out costs 5 to 26 cm.
//
// # What it is not
//
// The astronomical tide under average weather. Air pressure, wind, rivers and
// seiches come on top: see tide.InverseBarometer and tide.WindSetup. Constants from
// other analyses follow other conventions for M1, L2 and the long-period
// constituents; expect doubt of some millimetres there. Heights are above the datum
// the constants name, and heights above different datums cannot be mixed.
//
// # Further reading
//
// [Schureman1958] is the manual that every number here goes back to,
// [SP98-Supplement] its present-day longitudes, [Foreman1978] for streams that
// go round. The values that are checked are listed in examples/checks/CHECKS.md.
package harmonic
