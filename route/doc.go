// Package route says where a board goes: positions and legs on the ellipsoid,
// headings through moving water, drift, coast and exits, light, cold, and the
// point past which there is no way back.
//
// The three calls most people need:
//
//	leg := route.Inverse(launch, landing)                             // how far, on which course
//	s, err := route.HoldTrack(leg.Course, 1.8, route.Toward(0.5, 90)) // what to steer across a stream
//	day, err := route.Daylight(landing, date)                         // how long there is light
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
// Courses, headings and tracks are toward. Multiply to come in from other
// units, divide to go out: 12 * [Knot], leg.Distance / [NauticalMile].
//
// # Which line
//
//	Inverse, Direct            the geodesic, any two positions, to 15 nm
//	ShortInverse, ShortDirect  the same for the legs of a day: to 0.1 mm at 40 km, as cheap as a haversine
//	Rhumb, RhumbDirect         the line a steady heading sails
//	Sphere, Haversine          great circles on a ball: approximations, wrong by up to 0.56 %
//	MidLatitude                the arithmetic of the chart table: an approximation
//
// The exact function has the short name; an approximation says so in its name
// or its type. The antimeridian is nowhere special. Poles are handled by the
// geodesic and the rhumb line, and refused with NaN by what cannot.
//
// # Headings
//
// [HeadingFor] is the arithmetic of the current triangle, [HoldTrack] the same
// with a reason where the track cannot be held. Two tests are needed: that the
// stream across the track does not exceed the speed, and that the board gets
// forward. [BestHeading] loses least where neither helps; [HoldTrackVarying]
// takes a speed that depends on the heading. Over hours of a changing stream
// there are two plans and no mixture: [CrossOnOneHeading], the fastest, and
// [CrossOnOneTrack], the one that passes where the chart says. [TurnBack],
// [EqualTime] and [CommitPoint] say when going on is the only way.
//
// # Drift
//
// [Drifter] carries a person or a craft by stream and leeway, with the
// published table: a pair of tracks, right-going and left-going, or a cloud
// with the published scatter. Never a point.
//
// # Estimates
//
// Times in cold water, ranges of sight and drifts are averages with wide
// spreads, and carry cautions as constants to be shown with them:
// [ColdCaution], [SightCaution]. Nothing here says that a plan will go well.
//
// # Seeing it
//
// examples/steer prints drift and heading to hold by stream, examples/leeway
// what the wind does to a board and a swimmer, examples/lastlight the hour to
// turn back by.
//
// # Further reading
//
// [Bowditch2002] for current sailing, [Williams2013] for the triangles and the
// sphere, [Karney2013] for the geodesic, [Breivik2011] and [SAROPS2011] for
// drift, [Meeus1998] for the Sun. The values that are checked are listed in
// examples/checks/CHECKS.md.
//
// # Bad input
//
// Formulas return NaN for input outside their domain. Decisions return an
// error that wraps [ErrInput] or [ErrPosition] with the name, the value and
// the range, or says why there is no answer. Everything is safe for concurrent
// use.
package route
