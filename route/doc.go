// Package route says where a board goes: positions and legs on the ellipsoid,
// headings through moving water, drift, light, cold and the way back.
//
// The three calls most people need:
//
//	leg := route.Inverse(launch, landing)                         // how far, on which course
//	s, err := route.HoldTrack(leg.Course, 1.8, route.Toward(0.5, 90)) // what to steer across a stream
//	day, err := route.Daylight(landing, date)                     // how long there is light
//
// # Shore, ways out, files
//
// A [Coast] answers how far the water is open in a direction, where the shore
// is and what a line or a drift runs into; its index takes a coast of 100,000
// segments. A [Posture] says how fast a board goes against a wind, standing,
// kneeling, lying or adrift, and an [Escape] which exits that leaves:
//
//	run, err := route.ReadRun(file)                       // line, exits and shore, from GeoJSON
//	rose := run.Coast.FetchRose(launch, 36, 300000)       // open water by direction
//	out, err := route.Escape{From: p, Time: t, Posture: route.Prone(1.8), Wind: w, Stream: s,
//		At: day, Coast: run.Coast}.Exits(run.Exits)       // which way out, or why not
//
// What is not known makes an answer unknown, never open. Forces and areas of
// a posture are stated priors; the spread is in its constructor.
//
// # Conventions
//
// Metres, seconds, metres a second; degrees true for every direction, and for
// latitude (north positive) and longitude (east positive). Motions are
// [Velocity] values, made with [From] for a wind and [Toward] for a stream or
// a heading: no bare direction of a wind or a stream enters a function.
// Courses, headings and tracks are toward.
//
// The exact function has the short name. An approximation says so in its name
// or its type: [ShortInverse] for legs of a day (right to 0.1 mm at 40 km),
// [Sphere] for great circles on a ball.
//
// Formulas return NaN for input outside their domain; decisions return an
// error that wraps [ErrInput] or [ErrPosition], or says why there is no answer.
package route
