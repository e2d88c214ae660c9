// Package wave computes linear water waves: how long and how fast a wave of a period is over a depth, what a current, a
// shoaling bottom, a reef or a cliff makes of it, how its heights vary in an irregular sea, and when a swell from afar
// arrives.
//
// # The calls most people need
//
//	w := wave.Solve(6, math.Inf(1))           // a wave of 6 s in deep water
//	w.PhaseSpeed / wave.Knot                  // 18.2: its crests, in knots
//	w.GroupSpeed / wave.Knot                  // 9.1: its energy
//	c := wave.OnCurrent(6, 20, -1)            // the same over 20 m, against a stream of 1 m/s
//	c.SteepnessRatio                          // 1.70 times as steep; c.State says if it is blocked
//	wave.Rayleigh.ExceededByOneIn(100, 1.5)   // 2.3 m: what one wave in a hundred exceeds where Hs is 1.5 m
//
// # Conventions
//
// Metres, seconds, m/s. Periods and heights are those of one regular wave (T, H) unless the name says otherwise: Hs is
// the significant height, 4 √m0. The depth of deep water is +Inf. Currents are given along the wave: positive where they
// run with it. Angles to a shore or a wall are measured between the direction of travel and the normal, and are said so.
//
// Package functions use standard gravity and sea water of 1025 kg/m³; the same methods on a Water take others, which
// matters in the fourth digit when a textbook is followed.
//
// Formulas return NaN for what has no answer, with the cases listed; they never panic and never return a number for a NaN.
// Where a wave leaves the range that linear theory is fit for, Remarks says so.
//
// # Accuracy
//
// The dispersion relation is solved to the last bit (internal/dispersion), faster than one call of math.Exp. Linear theory
// itself is good to a few per cent in speed for waves that are not steep (H/L below some 0.05) nor high for their depth
// (H L²/h³ below some 26); breaking laws scatter by 10 to 15 % and more.
//
// # Seeing it
//
// examples/wavespeed prints the speeds by period and depth, examples/windstream what a stream makes of a sea, and
// examples/headland one sea off a headland, over a shoal and under a cliff.
//
// # Further reading
//
// [Stewart2008] is the chapter to begin with, [CEM-II-1] has every formula with worked examples, [DeanDalrymple1991] the
// derivations and [Goda2010Book] the irregular sea. Each function names its own source by a key of the bibliography in
// internal/reference/published, and the published values it is checked against are listed in examples/checks/CHECKS.md.
package wave
