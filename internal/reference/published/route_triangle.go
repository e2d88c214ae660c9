package published

import (
	"fmt"
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

// routeTrack are the arguments of the current triangle.
var routeTrack = []reference.Arg{routeAngleArg("track", 75), reference.Number("speed", "m/s", reference.Positive, 5), routeAngleArg("set", 30), routeSpeedArg("drift", 1)}

func routeWater(in reference.In) route.Velocity { return route.Toward(in.F("drift"), in.F("set")) }

var routeSteerResults = []reference.Result{routeDegrees("heading"), routeSpeeds("made"), routeDegrees("correction")}

func routeSteerOut(track, heading, made float64) reference.Out {
	d := math.Remainder(heading-track, 360)
	return reference.Out{"heading": heading, "made": made, "correction": d}
}

// routeHours are stretches of stream of the same length.
func routeHours(in reference.In) ([]route.Stretch, error) {
	set, drift := in.L("sets"), in.L("drifts")
	if len(set) != len(drift) {
		return nil, fmt.Errorf("%d sets and %d drifts", len(set), len(drift))
	}
	s := make([]route.Stretch, len(set))
	for i := range s {
		s[i] = route.Stretch{Water: route.Toward(drift[i], set[i]), Seconds: in.F("step")}
	}
	return s, nil
}

var routeCrossArgs = []reference.Arg{
	reference.Number("distance", "m", reference.Positive, 10000), routeAngleArg("course", 270), reference.Number("speed", "m/s", reference.Positive, 2),
	reference.List("sets", "deg", reference.Angle, 0, 10, 20, 200), reference.List("drifts", "m/s", reference.NonNegative, 0.5, 0.6, 0.4, 0.5),
	reference.Number("step", "s", reference.Positive, 3600),
}

func routeCross(f func(route.Leg, float64, []route.Stretch) (route.Crossing, error)) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		s, err := routeHours(in)
		if err != nil {
			return nil, err
		}
		x, err := f(route.Leg{Distance: in.F("distance"), Course: in.F("course"), End: in.F("course")}, in.F("speed"), s)
		if err != nil {
			return nil, err
		}
		return reference.Out{"time": x.Seconds, "heading": x.Headings[0]}, nil
	}
}

var routeCrossResults = []reference.Result{{Name: "time", Unit: "s"}, routeDegrees("heading")}

var routeRunArgs = []reference.Arg{
	reference.List("lengths", "m", reference.Positive, 3000, 5000), reference.List("out", "m/s", reference.Positive, 2.5, 2),
	reference.List("home", "m/s", reference.Real, 0.8, 1.1),
}

func routeRun(in reference.In) []route.Reach {
	l, o, h := in.L("lengths"), in.L("out"), in.L("home")
	r := make([]route.Reach, len(l))
	for i := range r {
		r[i] = route.Reach{Length: l[i], Out: o[i], Home: h[i]}
	}
	return r
}

var routeTriangleSubjects = []reference.Subject{
	{Name: "route.MadeGood", Func: route.MadeGood, Class: reference.Formula, Args: []reference.Arg{routeAngleArg("heading", 80), routeSpeedArg("speed", 5), routeAngleArg("set", 140), routeSpeedArg("drift", 1)},
		Results: []reference.Result{routeDegrees("track"), routeSpeeds("made")}, Tests: []string{"TestTriangleCloses"},
		Eval: func(in reference.In) (reference.Out, error) {
			v := route.MadeGood(in.F("heading"), in.F("speed"), routeWater(in))
			return reference.Out{"track": v.Toward(), "made": v.Speed()}, nil
		}},
	{Name: "route.HeadingFor", Func: route.HeadingFor, Class: reference.Formula, Args: routeTrack, Results: routeSteerResults, Tests: []string{"TestTriangleCloses", "TestBothFeasibilityTests"},
		Eval: func(in reference.In) (reference.Out, error) {
			h, v := route.HeadingFor(in.F("track"), in.F("speed"), routeWater(in))
			return routeSteerOut(in.F("track"), h, v), nil
		}},
	{Name: "route.HoldTrack", Func: route.HoldTrack, Class: reference.Composed, Args: routeTrack, Results: routeSteerResults, Tests: []string{"TestHoldTrackIsHeadingFor", "TestBothFeasibilityTests"},
		Eval: func(in reference.In) (reference.Out, error) {
			s, err := route.HoldTrack(in.F("track"), in.F("speed"), routeWater(in))
			if err != nil {
				return nil, err
			}
			return routeSteerOut(in.F("track"), s.Heading, s.SpeedMade), nil
		}},
	{Name: "route.SpeedNeeded", Func: route.SpeedNeeded, Class: reference.Formula, Args: []reference.Arg{routeAngleArg("track", 265), routeSpeedArg("made", 7), routeAngleArg("set", 185), routeSpeedArg("drift", 1.5)},
		Results: []reference.Result{routeDegrees("heading"), routeSpeeds("speed")},
		Eval: func(in reference.In) (reference.Out, error) {
			h, v := route.SpeedNeeded(in.F("track"), in.F("made"), routeWater(in))
			return reference.Out{"heading": h, "speed": v}, nil
		}},
	{Name: "route.CurrentFrom", Func: route.CurrentFrom, Class: reference.Formula, Args: []reference.Arg{routeAngleArg("heading", 10), routeSpeedArg("speed", 8), routeAngleArg("track", 20), routeSpeedArg("made", 7)},
		Results: []reference.Result{routeDegrees("set"), routeSpeeds("drift"), routeDegrees("from")},
		Eval: func(in reference.In) (reference.Out, error) {
			v := route.CurrentFrom(in.F("heading"), in.F("speed"), in.F("track"), in.F("made"))
			return reference.Out{"set": v.Toward(), "drift": v.Speed(), "from": v.From()}, nil
		}},
	{Name: "route.SetAndDrift", Func: route.SetAndDrift, Class: reference.Formula, Args: append(routeBoth(), reference.Number("elapsed", "s", reference.Positive, 7200)),
		Results: []reference.Result{routeDegrees("set"), routeSpeeds("drift")}, Tests: []string{"TestSetAndDriftUndoesDrift"},
		Eval: func(in reference.In) (reference.Out, error) {
			v := route.SetAndDrift(routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2"), in.F("elapsed"))
			return reference.Out{"set": v.Toward(), "drift": v.Speed()}, nil
		}},
	{Name: "route.BestHeading", Func: route.BestHeading, Class: reference.Formula, Args: []reference.Arg{routeTrack[0], routeSpeedArg("speed", 5), routeTrack[2], routeTrack[3]}, Results: []reference.Result{routeDegrees("heading"), routeDegrees("track")},
		Regimes: []reference.Regime{
			{Name: "held", In: func(in reference.In) bool { return in.F("drift") < in.F("speed") }},
			{Name: "not held", In: func(in reference.In) bool { return !(in.F("drift") < in.F("speed")) }}},
		Tests: []string{"TestBestHeadingAgainstSearch"},
		Eval: func(in reference.In) (reference.Out, error) {
			s, _, err := route.BestHeading(in.F("track"), in.F("speed"), routeWater(in))
			if err != nil {
				return nil, err
			}
			return reference.Out{"heading": s.Heading, "track": s.Track}, nil
		}},
	{Name: "route.HoldTrackVarying", Func: route.HoldTrackVarying, Class: reference.Composed, Tests: []string{"TestVaryingSpeedOfOneIsHoldTrack", "TestVaryingSpeedAgreesWithItself", "TestVaryingSpeedSaysSo"}},
	{Name: "route.IntoWind", Func: route.IntoWind, Class: reference.Formula, Args: []reference.Arg{routeAngleArg("track", 14), routeAngleArg("leeway", 6), routeAngleArg("wind_from", 300), routeSpeedArg("wind", 8)},
		Results: []reference.Result{routeDegrees("heading")},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeOne(route.IntoWind(in.F("track"), in.F("leeway"), route.From(in.F("wind"), in.F("wind_from")))), nil
		}},
	{Name: "route.CrossOnOneHeading", Func: route.CrossOnOneHeading, Class: reference.Plan, Args: routeCrossArgs, Results: routeCrossResults, Eval: routeCross(route.CrossOnOneHeading),
		Tests: []string{"TestOneHeadingByHand", "TestOneHeadingArrives", "TestOneHeadingIsNoSlower", "TestPlansRefuse"}},
	{Name: "route.CrossOnOneTrack", Func: route.CrossOnOneTrack, Class: reference.Plan, Args: routeCrossArgs, Results: routeCrossResults, Eval: routeCross(route.CrossOnOneTrack),
		Tests: []string{"TestOneHeadingByHand", "TestOneHeadingIsNoSlower", "TestPlansRefuse"}},
	{Name: "route.TurnBack", Func: route.TurnBack, Class: reference.Formula, Args: []reference.Arg{
		reference.Number("endurance", "s", reference.NonNegative, 10800), reference.Number("out", "m/s", reference.Positive, 2.2), reference.Number("home", "m/s", reference.Real, 0.6)},
		Results: []reference.Result{{Name: "time", Unit: "s"}, routeMetres("distance")}, Tests: []string{"TestWindShortensTheRadius"},
		Regimes: []reference.Regime{
			{Name: "a way back", In: func(in reference.In) bool { return in.F("home") > 0 }},
			{Name: "no way back", In: func(in reference.In) bool { return !(in.F("home") > 0) }}}},
	{Name: "route.EqualTime", Func: route.EqualTime, Class: reference.Formula, Args: []reference.Arg{
		reference.Number("distance", "m", reference.NonNegative, 10000), reference.Number("on", "m/s", reference.Positive, 2.2), reference.Number("home", "m/s", reference.Real, 0.6)},
		Results: []reference.Result{routeMetres("point")}, Tests: []string{"TestWindShortensTheRadius"},
		Regimes: []reference.Regime{
			{Name: "a way back", In: func(in reference.In) bool { return in.F("home") > 0 }},
			{Name: "no way back", In: func(in reference.In) bool { return !(in.F("home") > 0) }}}},
	{Name: "route.CommitPoint", Func: route.CommitPoint, Class: reference.Composed, Tests: []string{"TestCommitPointOfOneReach", "TestCommitPointAgainstSearch"},
		Args: append([]reference.Arg{reference.Number("endurance", "s", reference.NonNegative, 9000)}, routeRunArgs...), Results: []reference.Result{routeMetres("along"), {Name: "time", Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			a, s, err := route.CommitPoint(in.F("endurance"), routeRun(in))
			if err != nil {
				return nil, err
			}
			return reference.Out{"along": a, "time": s}, nil
		}},
	{Name: "route.EqualTimeAlong", Func: route.EqualTimeAlong, Class: reference.Composed, Tests: []string{"TestCommitPointOfOneReach", "TestEqualTimeAlongAgainstSearch"},
		Args: routeRunArgs, Results: []reference.Result{routeMetres("point")},
		Eval: func(in reference.In) (reference.Out, error) {
			x, err := route.EqualTimeAlong(routeRun(in))
			if err != nil {
				return nil, err
			}
			return routeOne(x), nil
		}},
}

// routeSteered are the two checks of one heading to hold a track.
func routeSteered(id, in, source, locator, heading, made, unit string, tolHeading, tolMade float64, why string) []reference.Check {
	c := reference.Check{ID: id + "-heading", Subject: "route.HeadingFor", In: in, Result: "heading", Printed: heading, Basis: reference.Printed, Source: source, Locator: locator, Tol: tolHeading}
	d := c
	d.ID, d.Result, d.Printed, d.Unit, d.Tol = id+"-made", "made", made, unit, tolMade
	if tolHeading > 0 {
		c.Why = why
	}
	if tolMade > 0 {
		d.Why = why
	}
	return []reference.Check{c, d}
}

func routeNeeded(id, in, source, locator, heading, speed, unit string, tolHeading, tolSpeed float64, why string) []reference.Check {
	cs := routeSteered(id, in, source, locator, heading, speed, unit, tolHeading, tolSpeed, why)
	for i := range cs {
		cs[i].Subject = "route.SpeedNeeded"
	}
	cs[1].ID, cs[1].Result = id+"-speed", "speed"
	return cs
}

const routeFives = "the workbook rounds every heading to 5 degrees and plots to 0.1 knot"
const routeComputer = "read off a flight computer"
const routePlotted = "solved by plotting"

var routeTriangleChecks = routeConcat(
	routeSteered("kakopa-075", "track=75, speed=10 kn, set=30, drift=2.5 kn", "Kakopa", "first problem", "85", "11.6", "kn", 0, 0, ""),
	routeSteered("chartwork-1", "track=90, speed=5 kn, set=210, drift=2 kn", "ChartWorkbook", "problem 1", "70", "3.7", "kn", 2.5, 0.1, routeFives),
	routeSteered("chartwork-2", "track=45, speed=6.55 kn, set=135, drift=2 kn", "ChartWorkbook", "problem 2", "25", "6.2", "kn", 2.5, 0.1, routeFives),
	routeSteered("chartwork-3", "track=235, speed=6.2 kn, set=315, drift=3.5 kn", "ChartWorkbook", "problem 3", "200", "5.8", "kn", 2.5, 0.1, routeFives),
	routeSteered("chartwork-4", "track=265, speed=5.2 kn, set=70, drift=2.3 kn", "ChartWorkbook", "problem 4", "260", "3.0", "kn", 2.5, 0.1, routeFives),
	routeSteered("chartwork-5", "track=150, speed=5.3 kn, set=50, drift=3.5 kn", "ChartWorkbook", "problem 5", "190", "3.4", "kn", 2.5, 0.1, routeFives),
	routeSteered("chartwork-6", "track=20, speed=5.9 kn, set=90, drift=1.9 kn", "ChartWorkbook", "problem 6", "0", "6.2", "kn", 2.5, 0.1, routeFives)[1:],
	routeSteered("driftcorr-000", "track=0, speed=160 kn, set=130, drift=45 kn", "Driftcorr", "driftcorr, example", "347.56", "127.32", "kn", 0, 0, ""),
	routeSteered("atpl-180", "track=180, speed=180 kn, set=280, drift=18 kn", "ATPL2020", "general navigation, question 3", "174", "176", "kn", 0, 0, ""),
	routeSteered("atpl-235", "track=235, speed=105 kn, set=180, drift=20 kn", "ATPL2020", "flight planning, question 17, return", "243", "116", "kn", 1.1, 1, routeComputer),
	routeSteered("atpl-088", "track=88, speed=330 kn, set=160, drift=60 kn", "ATPL2020", "performance, question 6, outbound", "78", "345", "kn", 0, 1.5, routeComputer),
	routeSteered("atpl-268", "track=268, speed=330 kn, set=160, drift=60 kn", "ATPL2020", "performance, question 6, return", "279", "310", "kn", 1.1, 4, routeComputer),
	routeSteered("faa-090", "track=90, speed=120 kn, set=225, drift=40 kn", "FAA-PHAK", "navigation chapter, dead reckoning part two, wind triangle", "76", "88", "kn", 0, 0, "")[1:],
	routeSteered("cr3-130", "track=130, speed=180 mph, set=280, drift=40 mph", "CR3-Lecture", "problem 3", "124", "145", "mph", 0, 0.8, "the lecture takes the head wind, 35, from the air speed, 180, without the angle")[1:],
	routeSteered("cr3-175", "track=175, speed=180 mph, set=280, drift=40 mph", "CR3-Lecture", "problem 4", "163", "166", "mph", 0, 0.7, "read off a dial to whole miles, in two steps")[1:],
	routeNeeded("bowditch-265", "track=265, made=15 kn, set=185, drift=3 kn", "Bowditch2002", "chapter 7, third current-sailing example, as quoted", "276", "14.8", "kn", 1, 0, routePlotted),
	routeNeeded("tm1900-2", "track=351, made=232 mph, set=213, drift=47 mph", "TM1-900", "vectors, exercises h, no. 2", "358", "269", "mph", 1, 1, routePlotted),
	routeNeeded("tm1900-6", "track=271, made=215 mph, set=136, drift=48 mph", "TM1-900", "vectors, exercises h, no. 6", "279", "252", "mph", 1, 1, routePlotted),
	routeNeeded("sailnet-270", "track=270, made=10 kn, set=0, drift=3 kn", "SailNet", "post on course to steer at a given speed", "253", "10.5", "kn", 0, 0.1, "rounded up in the post; 10.44"),
	[]reference.Check{
		{ID: "driftcorr-000-correction", Subject: "route.HeadingFor", In: "track=0, speed=160 kn, set=130, drift=45 kn", Result: "correction", Printed: "-12.442", Basis: reference.Printed, Source: "Driftcorr", Locator: "driftcorr, example"},
		{ID: "driftvel-from", Subject: "route.CurrentFrom", In: "heading=10, speed=160 kn, track=0, made=155 kn", Result: "from", Printed: "84.717", Basis: reference.Printed, Source: "Driftcorr", Locator: "driftvel, example"},
		{ID: "driftvel-speed", Subject: "route.CurrentFrom", In: "heading=10, speed=160 kn, track=0, made=155 kn", Result: "drift", Printed: "27.902", Unit: "kn", Basis: reference.Printed, Source: "Driftcorr", Locator: "driftvel, example"},
		{ID: "nasm-wind-from", Subject: "route.CurrentFrom", In: "heading=104, speed=165 mph, track=94, made=146 mph", Result: "from", Printed: "154", Basis: reference.Printed, Source: "AAF-Computer", Locator: "paragraph 39, example 16"},
		{ID: "nasm-wind-speed", Subject: "route.CurrentFrom", In: "heading=104, speed=165 mph, track=94, made=146 mph", Result: "drift", Printed: "34", Unit: "mph", Basis: reference.Chart, Source: "AAF-Computer", Locator: "paragraph 39, example 16", Tol: 1, Why: "read off the instrument's chart; exact 33.06"},
		{ID: "cr3-190-correction", Subject: "route.HeadingFor", In: "track=190, speed=108 kn, set=230, drift=20 kn", Result: "correction", Printed: "-7", Basis: reference.Printed, Source: "CR3-Lecture", Locator: "steps 5 to 7, course 190"},
		{ID: "cr3-130-correction", Subject: "route.HeadingFor", In: "track=130, speed=180 mph, set=280, drift=40 mph", Result: "correction", Printed: "-6", Basis: reference.Printed, Source: "CR3-Lecture", Locator: "problem 3"},
		{ID: "cr3-175-correction", Subject: "route.HeadingFor", In: "track=175, speed=180 mph, set=280, drift=40 mph", Result: "correction", Printed: "-12", Basis: reference.Printed, Source: "CR3-Lecture", Locator: "problem 4"},
		{ID: "algebra-track", Subject: "route.MadeGood", In: "heading=90, speed=160 kn, set=60, drift=24 kn", Result: "track", Printed: "86", Basis: reference.Printed, Source: "Algebra372569", Locator: "answer"},
		{ID: "algebra-made", Subject: "route.MadeGood", In: "heading=90, speed=160 kn, set=60, drift=24 kn", Result: "made", Printed: "181.18", Unit: "kn", Basis: reference.Printed, Source: "Algebra372569", Locator: "answer"},
		{ID: "tm1900-made-track", Subject: "route.MadeGood", In: "heading=315, speed=150 mph, set=225, drift=30 mph", Result: "track", Printed: "304", Basis: reference.Printed, Source: "TM1-900", Locator: "vectors, course made good with wind from 045"},
		{ID: "tm1900-made-speed", Subject: "route.MadeGood", In: "heading=315, speed=150 mph, set=225, drift=30 mph", Result: "made", Printed: "153", Unit: "mph", Basis: reference.Printed, Source: "TM1-900", Locator: "vectors, course made good with wind from 045"},
		{ID: "bowditch-080-track", Subject: "route.MadeGood", In: "heading=80, speed=10 kn, set=140, drift=2 kn", Result: "track", Printed: "89", Basis: reference.Memory, Source: "Bowditch2002", Locator: "chapter 7, first current-sailing example"},
		{ID: "bowditch-080-made", Subject: "route.MadeGood", In: "heading=80, speed=10 kn, set=140, drift=2 kn", Result: "made", Printed: "11.2", Unit: "kn", Basis: reference.Memory, Source: "Bowditch2002", Locator: "chapter 7, first current-sailing example", Tol: 0.1, Why: "plotted; exact 11.14"},
		{ID: "bowditch-095-heading", Subject: "route.HoldTrack", In: "track=95, speed=12 kn, set=170, drift=2.5 kn", Result: "heading", Printed: "83.5", Basis: reference.Memory, Source: "Bowditch2002", Locator: "chapter 7, second current-sailing example", Tol: 0.5, Why: "plotted to half a degree"},
		{ID: "bowditch-095-made", Subject: "route.HoldTrack", In: "track=95, speed=12 kn, set=170, drift=2.5 kn", Result: "made", Printed: "12.4", Unit: "kn", Basis: reference.Memory, Source: "Bowditch2002", Locator: "chapter 7, second current-sailing example"},
		{ID: "ferry-3-2-angle", Subject: "route.HeadingFor", In: "track=0, speed=3 kn, set=270, drift=2 kn", Result: "correction", Printed: "41.8", Basis: reference.Printed, Source: "FerryForum", Locator: "thread on ferrying"},
		{ID: "ferry-3-2-made", Subject: "route.HeadingFor", In: "track=0, speed=3 kn, set=270, drift=2 kn", Result: "made", Printed: "2.24", Unit: "kn", Basis: reference.Printed, Source: "FerryForum", Locator: "thread on ferrying"},
		{ID: "ferry-5-2-angle", Subject: "route.HeadingFor", In: "track=0, speed=5 kn, set=270, drift=2 kn", Result: "correction", Printed: "23", Basis: reference.Printed, Source: "Everitt", Locator: "curved track or straight, diagram A", Tol: 1, Why: "printed truncated: 23.58"},
		{ID: "ferry-25-2-angle", Subject: "route.HeadingFor", In: "track=0, speed=25 kn, set=270, drift=2 kn", Result: "correction", Printed: "5", Basis: reference.Printed, Source: "Everitt", Locator: "curved track or straight"},
		{ID: "set-drift-two-hours", Subject: "route.SetAndDrift", In: "lat1=0, lon1=0, lat2=0, lon2=0.06987455, elapsed=2 h", Result: "drift", Printed: "2.1", Unit: "kn", Basis: reference.Printed, Source: "SetDrift", Locator: "step 4", Note: "4.2 miles in 2 hours; laid along the equator of WGS 84 here"},
		{ID: "best-heading-held", Subject: "route.BestHeading", In: "track=0, speed=2, set=90, drift=1", Result: "heading", Printed: "330", Basis: reference.Exact},
		{ID: "best-heading-edge", Subject: "route.BestHeading", In: "track=0, speed=1, set=90, drift=2", Result: "track", Printed: "60", Basis: reference.Exact, Note: "a stream of twice the speed square across: the tangent is asin(1/2) from the set"},
		{ID: "best-heading-edge-heading", Subject: "route.BestHeading", In: "track=0, speed=1, set=90, drift=2", Result: "heading", Printed: "330", Basis: reference.Exact},
		{ID: "rya-leeway", Subject: "route.IntoWind", In: "track=14, leeway=6, wind_from=300, wind=8", Printed: "8", Basis: reference.Printed, Source: "RYA2010", Locator: "true to compass, leeway step", Note: "the wind on the left, as the sign printed there says"},
		{ID: "pnr-time", Subject: "route.TurnBack", In: "endurance=6.5 h, out=240 kn, home=210 kn", Result: "time", Printed: "182", Unit: "min", Basis: reference.Printed, Source: "FlightNotes2009", Locator: "example"},
		{ID: "pnr-distance", Subject: "route.TurnBack", In: "endurance=6.5 h, out=240 kn, home=210 kn", Result: "distance", Printed: "728", Unit: "nmi", Basis: reference.Printed, Source: "FlightNotes2009", Locator: "example"},
		{ID: "pnr-still", Subject: "route.TurnBack", In: "endurance=10 h, out=100 kn, home=100 kn", Result: "distance", Printed: "500", Unit: "nmi", Basis: reference.Printed, Source: "AvCanada2011", Locator: "post 1"},
		{ID: "pnr-head", Subject: "route.TurnBack", In: "endurance=10 h, out=50 kn, home=150 kn", Result: "distance", Printed: "375", Unit: "nmi", Basis: reference.Printed, Source: "AvCanada2011", Locator: "post 1"},
		{ID: "pnr-tail", Subject: "route.TurnBack", In: "endurance=10 h, out=150 kn, home=50 kn", Result: "distance", Printed: "375", Unit: "nmi", Basis: reference.Printed, Source: "AvCanada2011", Locator: "post 1"},
		{ID: "pnr-none", Subject: "route.TurnBack", In: "endurance=10 h, out=3, home=-0.2", Result: "distance", Printed: "0", Basis: reference.Exact, Note: "no way back: no way out"},
		{ID: "etp-1250", Subject: "route.EqualTime", In: "distance=1250 nmi, on=345 kn, home=310 kn", Printed: "591.6", Unit: "nmi", Basis: reference.Printed, Source: "ATPL2020", Locator: "performance, question 6"},
		{ID: "etp-165", Subject: "route.EqualTime", In: "distance=165 nmi, on=92.24 kn, home=115.19 kn", Printed: "92", Unit: "nmi", Basis: reference.Printed, Source: "ATPL2020", Locator: "flight planning, question 17", Note: "speeds of the exact triangles: track 055, 105 knots, wind from 360 at 20"},
		{ID: "etp-1800", Subject: "route.EqualTime", In: "distance=1800 nmi, on=138 kn, home=162 kn", Printed: "972", Unit: "nmi", Basis: reference.Printed, Source: "BobTait", Locator: "critical point question"},
		{ID: "etp-none", Subject: "route.EqualTime", In: "distance=5000, on=3, home=0", Printed: "0", Basis: reference.Exact},
		{ID: "five-streams-one-heading-time", Subject: "route.CrossOnOneHeading", In: "distance=14 nmi, course=270, speed=3 kn, sets=[76 70 172 234 262], drifts=[2 1.1 0.5 1.4 2.8] kn, step=3600", Result: "time", Printed: "4.681", Unit: "h", Basis: reference.Computed, Source: "Everitt", Locator: "the method; streams of an open sea-kayak textbook, section 5.7, answer computed in Python"},
		{ID: "five-streams-one-heading-heading", Subject: "route.CrossOnOneHeading", In: "distance=14 nmi, course=270, speed=3 kn, sets=[76 70 172 234 262], drifts=[2 1.1 0.5 1.4 2.8] kn, step=3600", Result: "heading", Printed: "272.95", Basis: reference.Computed, Source: "Everitt", Locator: "the method; streams of an open sea-kayak textbook, section 5.7, answer computed in Python"},
	},
)
