package published

import (
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

var routeMotionArgs = []reference.Arg{routeSpeedArg("speed", 10), routeAngleArg("deg", 310)}

var routeMotionResults = []reference.Result{routeSpeeds("east"), routeSpeeds("north")}

func routeMotionOut(v route.Velocity) reference.Out {
	return reference.Out{"east": v.East, "north": v.North}
}

// routeVectors are two velocities by their components.
var routeVectors = []reference.Arg{
	reference.Number("east1", "m/s", reference.Any, 3), reference.Number("north1", "m/s", reference.Any, 4),
	reference.Number("east2", "m/s", reference.Any, 1), reference.Number("north2", "m/s", reference.Any, -2),
}

func routeVector(in reference.In, n string) route.Velocity {
	return route.Velocity{East: in.F("east" + n), North: in.F("north" + n)}
}

var routeMotionSubjects = []reference.Subject{
	{Name: "route.From", Func: route.From, Class: reference.Formula, Args: routeMotionArgs, Results: routeMotionResults, Tests: []string{"TestFromAndToward"},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeMotionOut(route.From(in.F("speed"), in.F("deg"))), nil
		}},
	{Name: "route.Toward", Func: route.Toward, Class: reference.Formula, Args: routeMotionArgs, Results: routeMotionResults, Tests: []string{"TestFromAndToward"},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeMotionOut(route.Toward(in.F("speed"), in.F("deg"))), nil
		}},
	{Name: "route.Velocity.Speed", Func: route.Velocity.Speed, Class: reference.Formula, Args: routeVectors[:2], Results: []reference.Result{routeSpeeds("speed")},
		Eval: func(in reference.In) (reference.Out, error) { return routeOne(routeVector(in, "1").Speed()), nil }},
	{Name: "route.Velocity.Toward", Func: route.Velocity.Toward, Class: reference.Formula, Args: routeVectors[:2], Results: []reference.Result{routeDegrees("toward")},
		Eval: func(in reference.In) (reference.Out, error) { return routeOne(routeVector(in, "1").Toward()), nil }},
	{Name: "route.Velocity.From", Func: route.Velocity.From, Class: reference.Formula, Args: routeVectors[:2], Results: []reference.Result{routeDegrees("from")},
		Eval: func(in reference.In) (reference.Out, error) { return routeOne(routeVector(in, "1").From()), nil }},
	{Name: "route.Velocity.Add", Func: route.Velocity.Add, Class: reference.Formula, Args: routeVectors, Results: []reference.Result{
		{Name: "east", Unit: "m/s", Without: []string{"north1", "north2"}}, {Name: "north", Unit: "m/s", Without: []string{"east1", "east2"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeMotionOut(routeVector(in, "1").Add(routeVector(in, "2"))), nil
		}},
	{Name: "route.Velocity.Sub", Func: route.Velocity.Sub, Class: reference.Formula, Args: []reference.Arg{
		routeSpeedArg("wind", 5), routeAngleArg("wind_from", 10), routeSpeedArg("drift", 2), routeAngleArg("set", 90)},
		Results: []reference.Result{routeDegrees("from"), routeSpeeds("speed")},
		Eval: func(in reference.In) (reference.Out, error) {
			v := route.From(in.F("wind"), in.F("wind_from")).Sub(route.Toward(in.F("drift"), in.F("set")))
			return reference.Out{"from": v.From(), "speed": v.Speed()}, nil
		}},
	{Name: "route.Velocity.Scale", Func: route.Velocity.Scale, Class: reference.Formula, Args: []reference.Arg{routeVectors[0], routeVectors[1], reference.Number("k", "1", reference.Any, 2)},
		Results: []reference.Result{{Name: "east", Unit: "m/s", Without: []string{"north1"}}, {Name: "north", Unit: "m/s", Without: []string{"east1"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeMotionOut(routeVector(in, "1").Scale(in.F("k"))), nil
		}},
	{Name: "route.Velocity.Resolve", Func: route.Velocity.Resolve, Class: reference.Formula, Args: []reference.Arg{routeVectors[0], routeVectors[1], routeAngleArg("toward", 30)},
		Results: []reference.Result{routeSpeeds("along"), routeSpeeds("right")},
		Eval: func(in reference.In) (reference.Out, error) {
			a, r := routeVector(in, "1").Resolve(in.F("toward"))
			return reference.Out{"along": a, "right": r}, nil
		}},
	{Name: "route.Point.Check", Func: route.Point.Check, Class: reference.Accessor, Tests: []string{"TestBadPositions"}},
	{Name: "route.Leg.Mean", Func: route.Leg.Mean, Class: reference.Accessor, Tests: []string{"TestMeanCourse"}},
	{Name: "route.Leg.At", Func: route.Leg.At, Class: reference.Composed, Tests: []string{"TestAlongALeg"}},
	{Name: "route.Leg.Reverse", Func: route.Leg.Reverse, Class: reference.Composed, Tests: []string{"TestReverseBearing"}},
	{Name: "route.WGS84", Func: route.WGS84, Class: reference.Data, Tests: []string{"TestFigures"}},
	{Name: "route.GRS80", Func: route.GRS80, Class: reference.Data, Tests: []string{"TestFigures"}},
}

var routeMotionChecks = []reference.Check{
	{ID: "from-north-moves-south", Subject: "route.From", In: "speed=10, deg=0", Result: "north", Printed: "-10", Basis: reference.Exact},
	{ID: "from-west-moves-east", Subject: "route.From", In: "speed=10, deg=270", Result: "east", Printed: "10", Basis: reference.Exact},
	{ID: "toward-east-moves-east", Subject: "route.Toward", In: "speed=2, deg=90", Result: "east", Printed: "2", Basis: reference.Exact},
	{ID: "velocity-three-four-five", Subject: "route.Velocity.Speed", In: "east1=3, north1=4", Printed: "5", Basis: reference.Exact},
	{ID: "velocity-toward-northeast", Subject: "route.Velocity.Toward", In: "east1=1, north1=1", Printed: "45", Basis: reference.Exact},
	{ID: "velocity-from-southwest", Subject: "route.Velocity.From", In: "east1=1, north1=1", Printed: "225", Basis: reference.Exact},
	{ID: "velocity-add", Subject: "route.Velocity.Add", In: "east1=3, north1=4, east2=1, north2=-2", Result: "north", Printed: "2", Basis: reference.Exact},
	{ID: "velocity-scale", Subject: "route.Velocity.Scale", In: "east1=3, north1=4, k=-0.5", Result: "north", Printed: "-2", Basis: reference.Exact},
	{ID: "velocity-right-of-north-is-east", Subject: "route.Velocity.Resolve", In: "east1=3, north1=4, toward=0", Result: "right", Printed: "3", Basis: reference.Exact},
	{ID: "velocity-along-east", Subject: "route.Velocity.Resolve", In: "east1=3, north1=4, toward=90", Result: "along", Printed: "3", Basis: reference.Exact},
	{ID: "wind-over-tide-from", Subject: "route.Velocity.Sub", In: "wind=10 kn, wind_from=0, drift=4 kn, set=90", Result: "from", Printed: "22", Basis: reference.Printed, Source: "Stevens", Locator: "answer"},
	{ID: "wind-over-tide-speed", Subject: "route.Velocity.Sub", In: "wind=10 kn, wind_from=0, drift=4 kn, set=90", Result: "speed", Printed: "10.8", Unit: "kn", Basis: reference.Printed, Source: "Stevens", Locator: "answer"},
}

const (
	routeFlinders  = "axis=6378137, inverse_flattening=298.257222101, lat1=-37 57 03.7203 dms, lon1=144 25 29.5244 dms, lat2=-37 39 10.1561 dms, lon2=143 55 35.3839 dms"
	routeFlindersD = "axis=6378137, inverse_flattening=298.257222101, lat=-37 57 03.7203 dms, lon=144 25 29.5244 dms, course=306 52 05.37 dms, distance=54972.271"
	routeBessel    = "axis=6377397.155, inverse_flattening=299.1528128, "
	routeHayford   = "axis=6378388, inverse_flattening=297, "
)

var routeGeodesySubjects = []reference.Subject{
	{Name: "route.Radii", Func: route.Radii, Class: reference.Formula, Args: []reference.Arg{routeLatArg("lat", 42)}, Results: []reference.Result{routeMetres("meridian"), routeMetres("prime")}},
	{Name: "route.Ellipsoid.Radii", Func: route.Ellipsoid.Radii, Class: reference.Formula, Args: routeFigureArgs([]reference.Arg{routeLatArg("lat", 42)}),
		Results: []reference.Result{routeMetres("meridian"), routeMetres("parallel"), routeMetres("lat_degree"), routeMetres("lon_degree")},
		Eval: func(in reference.In) (reference.Out, error) {
			m, n := routeFigureOf(in).Radii(in.F("lat"))
			p := n * math.Cos(in.F("lat")*math.Pi/180)
			return reference.Out{"meridian": m, "parallel": p, "lat_degree": m * math.Pi / 180, "lon_degree": p * math.Pi / 180}, nil
		}},
	{Name: "route.Inverse", Func: route.Inverse, Class: reference.Formula, Args: routeBoth(), Results: routeLegResults, Eval: routeInvert(route.Inverse),
		Tests: []string{"TestGeodesicSet", "TestInverseAndDirectAgree"},
		Regimes: []reference.Regime{
			{Name: "near", In: func(in reference.In) bool { return math.Abs(in.F("lon2")-in.F("lon1")) < 170 }},
			{Name: "nearly antipodal", In: func(in reference.In) bool { return math.Abs(in.F("lon2")-in.F("lon1")) >= 170 }}}},
	{Name: "route.Ellipsoid.Inverse", Func: route.Ellipsoid.Inverse, Class: reference.Formula, Args: routeFigureArgs(routeBoth()), Results: routeLegResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeInvert(routeFigureOf(in).Inverse)(in) }},
	{Name: "route.Direct", Func: route.Direct, Class: reference.Formula, Args: routeOff(), Results: routeEndResults, Eval: routeProceed(route.Direct), Tests: []string{"TestGeodesicSet"}},
	{Name: "route.Ellipsoid.Direct", Func: route.Ellipsoid.Direct, Class: reference.Formula, Args: routeFigureArgs(routeOff()), Results: routeEndResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeProceed(routeFigureOf(in).Direct)(in) }},
	{Name: "route.ShortInverse", Func: route.ShortInverse, Class: reference.Formula, Args: []reference.Arg{
		reference.Number("lat1", "deg", reference.Between(-85, 85), 50), routeLonArg("lon1", -4), reference.Number("lat2", "deg", reference.Between(-85, 85), 50.2), routeLonArg("lon2", -4.3)},
		Results: routeLegResults, Eval: routeInvert(route.ShortInverse), Tests: []string{"TestShortIsRight"}},
	{Name: "route.ShortDistance", Func: route.ShortDistance, Class: reference.Formula, Args: []reference.Arg{
		reference.Number("lat1", "deg", reference.Between(-85, 85), 50), routeLonArg("lon1", -4), reference.Number("lat2", "deg", reference.Between(-85, 85), 50.2), routeLonArg("lon2", -4.3)},
		Results: []reference.Result{routeMetres("distance")}, Tests: []string{"TestShortIsRight"},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeOne(route.ShortDistance(routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2"))), nil
		}},
	{Name: "route.Ellipsoid.ShortInverse", Func: route.Ellipsoid.ShortInverse, Class: reference.Formula, Args: routeFigureArgs(routeBoth()), Results: routeLegResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeInvert(routeFigureOf(in).ShortInverse)(in) }},
	{Name: "route.ShortDirect", Func: route.ShortDirect, Class: reference.Formula, Args: routeOff(), Results: routeEndResults, Eval: routeProceed(route.ShortDirect), Tests: []string{"TestShortIsRight"}},
	{Name: "route.Ellipsoid.ShortDirect", Func: route.Ellipsoid.ShortDirect, Class: reference.Formula, Args: routeFigureArgs(routeOff()), Results: routeEndResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeProceed(routeFigureOf(in).ShortDirect)(in) }},
	{Name: "route.Rhumb", Func: route.Rhumb, Class: reference.Formula, Args: routeBoth(), Results: routeLegResults, Eval: routeInvert(route.Rhumb), Tests: []string{"TestRhumbClosesAndIsLonger"}},
	{Name: "route.Ellipsoid.Rhumb", Func: route.Ellipsoid.Rhumb, Class: reference.Formula, Args: routeFigureArgs(routeBoth()), Results: routeLegResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeInvert(routeFigureOf(in).Rhumb)(in) }},
	{Name: "route.RhumbDirect", Func: route.RhumbDirect, Class: reference.Formula, Args: routeOff(), Results: routeEndResults, Eval: routeProceed(route.RhumbDirect), Tests: []string{"TestRhumbClosesAndIsLonger"}},
	{Name: "route.Ellipsoid.RhumbDirect", Func: route.Ellipsoid.RhumbDirect, Class: reference.Formula, Args: routeFigureArgs(routeOff()), Results: routeEndResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeProceed(routeFigureOf(in).RhumbDirect)(in) }},
	{Name: "route.MeridionalParts", Func: route.MeridionalParts, Class: reference.Formula, Args: []reference.Arg{routeLatArg("lat", 45)}, Results: []reference.Result{{Name: "parts", Unit: "arcmin"}}},
	{Name: "route.Ellipsoid.MeridionalParts", Func: route.Ellipsoid.MeridionalParts, Class: reference.Formula, Args: routeFigureArgs([]reference.Arg{routeLatArg("lat", 45)}), Results: []reference.Result{{Name: "parts", Unit: "arcmin"}},
		Tests: []string{"TestMeridionalPartsAreTheRhumbLine"},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeOne(routeFigureOf(in).MeridionalParts(in.F("lat"))), nil
		}},
	{Name: "route.MidLatitude", Func: route.MidLatitude, Class: reference.Formula, Args: routeBoth(), Results: routeLegResults, Eval: routeInvert(route.MidLatitude)},
	{Name: "route.MidLatitudeDirect", Func: route.MidLatitudeDirect, Class: reference.Formula, Args: routeOff(), Results: []reference.Result{routeDegrees("lat"), routeDegrees("lon"), routeDegrees("dlat"), routeDegrees("dlon")},
		Eval: func(in reference.In) (reference.Out, error) {
			l := route.MidLatitudeDirect(routePoint(in, "lat", "lon"), in.F("course"), in.F("distance"))
			return reference.Out{"lat": l.To.Lat, "lon": l.To.Lon, "dlat": l.To.Lat - l.From.Lat, "dlon": l.To.Lon - l.From.Lon}, nil
		}},
	{Name: "route.Leg.Offset", Func: route.Leg.Offset, Class: reference.Formula, Args: append(routeBoth(), routeLatArg("lat3", 50.15), routeLonArg("lon3", -4.1)),
		Results: []reference.Result{routeMetres("along"), routeMetres("right")}, Tests: []string{"TestOffsetAgainstSearch"},
		Eval: func(in reference.In) (reference.Out, error) {
			a, r := route.Inverse(routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2")).Offset(routePoint(in, "lat3", "lon3"))
			return reference.Out{"along": a, "right": r}, nil
		}},
	{Name: "route.NewPath", Func: route.NewPath, Class: reference.Constructor, Tests: []string{"TestPath", "TestPathRefuses"}},
	{Name: "route.Path.Length", Func: (*route.Path).Length, Class: reference.Accessor, Tests: []string{"TestPath"}},
	{Name: "route.Path.Legs", Func: (*route.Path).Legs, Class: reference.Accessor, Tests: []string{"TestPath"}},
	{Name: "route.Path.At", Func: (*route.Path).At, Class: reference.Composed, Tests: []string{"TestPath"}},
	{Name: "route.Path.Closest", Func: (*route.Path).Closest, Class: reference.Search, Tests: []string{"TestClosestAgainstScan", "TestPathRefuses"}},
}

func routeVincentyLine(letter, figure, lat1, az1, metres, lat2, lon2, az2 string) []reference.Check {
	in := figure + "lat1=" + lat1 + " dms, lon1=0, lat2=" + lat2 + " dms, lon2=" + lon2 + " dms"
	di := figure + "lat=" + lat1 + " dms, lon=0, course=" + az1 + " dms, distance=" + metres
	const why = "the source states errors of up to 1 mm and some hundred-thousandths of a second against Rainsford's lines"
	azTol := 5e-5 / 3600
	if letter == "d" || letter == "e" {
		azTol = 2e-3 / 3600 // nearly antipodal: a hundredth of a millimetre turns the azimuth by that
	}
	c := func(id, subject, in, result, printed, unit string, tol float64) reference.Check {
		return reference.Check{ID: "vincenty-" + letter + "-" + id, Subject: subject, In: in, Result: result, Printed: printed, Unit: unit,
			Basis: reference.Printed, Source: "Vincenty1975", Locator: "table II, line (" + letter + ")", Tol: tol, Why: why}
	}
	return []reference.Check{
		c("distance", "route.Ellipsoid.Inverse", in, "distance", metres, "m", 1e-3),
		c("azimuth", "route.Ellipsoid.Inverse", in, "course", az1, "dms", azTol),
		c("lat", "route.Ellipsoid.Direct", di, "lat", lat2, "dms", 5e-5/3600),
		c("lon", "route.Ellipsoid.Direct", di, "lon", lon2, "dms", 5e-5/3600),
		c("end", "route.Ellipsoid.Direct", di, "end", az2, "dms", 5e-5/3600),
	}
}

var routeGeodesyChecks = routeConcat(
	routeVincentyLine("a", routeBessel, "55 45 00.00000", "96 36 08.79960", "14110526.170", "-33 26 00.00000", "108 13 00.00000", "137 52 22.01454"),
	routeVincentyLine("b", routeHayford, "37 19 54.95367", "95 27 59.63089", "4085966.703", "26 07 42.83946", "41 28 35.50729", "118 05 58.96161"),
	routeVincentyLine("c", routeHayford, "35 16 11.24862", "15 44 23.74850", "8084823.839", "67 22 14.77638", "137 47 28.31435", "144 55 39.92147"),
	routeVincentyLine("d", routeHayford, "1 00 00.00000", "89 00 00.00000", "19960000.000", "-0 59 53.83076", "179 17 48.02997", "91 00 06.11733"),
	routeVincentyLine("e", routeHayford, "1 00 00.00000", "4 59 59.99995", "19780006.558", "1 01 15.18952", "179 46 17.84244", "174 59 59.88481"),
	[]reference.Check{
		{ID: "flinders-buninyong-distance", Subject: "route.Ellipsoid.Inverse", In: routeFlinders, Result: "distance", Printed: "54972.271", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, inverse"},
		{ID: "flinders-buninyong-azimuth", Subject: "route.Ellipsoid.Inverse", In: routeFlinders, Result: "course", Printed: "306 52 05.37", Unit: "dms", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, inverse", Note: "the test suite packs it as 306.520537, which is D.MMSS and not decimal"},
		{ID: "flinders-buninyong-back", Subject: "route.Ellipsoid.Inverse", In: routeFlinders, Result: "back", Printed: "127 10 25.07", Unit: "dms", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, inverse"},
		{ID: "flinders-buninyong-lat", Subject: "route.Ellipsoid.Direct", In: routeFlindersD, Result: "lat", Printed: "-37 39 10.1561", Unit: "dms", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, direct", Tol: 1.5e-4 / 3600, Why: "the printed azimuth is rounded to 0.01 second, which is 1.3 mm at 55 km"},
		{ID: "flinders-buninyong-lon", Subject: "route.Ellipsoid.Direct", In: routeFlindersD, Result: "lon", Printed: "143 55 35.3839", Unit: "dms", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, direct", Tol: 1.5e-4 / 3600, Why: "the printed azimuth is rounded to 0.01 second, which is 1.3 mm at 55 km"},
		{ID: "flinders-buninyong-short", Subject: "route.Ellipsoid.ShortInverse", In: routeFlinders, Result: "distance", Printed: "54972.271", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, inverse"},
		{ID: "flinders-buninyong-short-azimuth", Subject: "route.Ellipsoid.ShortInverse", In: routeFlinders, Result: "course", Printed: "306 52 05.37", Unit: "dms", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, inverse"},
		{ID: "flinders-buninyong-short-lat", Subject: "route.Ellipsoid.ShortDirect", In: routeFlindersD, Result: "lat", Printed: "-37 39 10.1561", Unit: "dms", Basis: reference.Printed, Source: "GDA-Manual", Locator: "worked line, direct", Tol: 1.5e-4 / 3600, Why: "the printed azimuth is rounded to 0.01 second, which is 1.3 mm at 55 km"},
		{ID: "geodsolve-jfk-paris", Subject: "route.Inverse", In: "lat1=40.6, lon1=-73.8, lat2=49.01666667, lon2=2.55", Result: "distance", Printed: "5853226", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve0"},
		{ID: "geodsolve-jfk-paris-course", Subject: "route.Inverse", In: "lat1=40.6, lon1=-73.8, lat2=49.01666667, lon2=2.55", Result: "course", Printed: "53.47022", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve0"},
		{ID: "geodsolve-jfk-paris-end", Subject: "route.Inverse", In: "lat1=40.6, lon1=-73.8, lat2=49.01666667, lon2=2.55", Result: "end", Printed: "111.59367", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve0"},
		{ID: "geodsolve-direct-lat", Subject: "route.Direct", In: "lat=40.63972222, lon=-73.77888889, course=53.5, distance=5850000", Result: "lat", Printed: "49.01467", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve1"},
		{ID: "geodsolve-direct-lon", Subject: "route.Direct", In: "lat=40.63972222, lon=-73.77888889, course=53.5, distance=5850000", Result: "lon", Printed: "2.56106", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve1"},
		{ID: "geodsolve-short-line", Subject: "route.Inverse", In: "lat1=36.493349428792, lon1=0, lat2=36.49334942879201, lon2=0.0000008", Result: "distance", Printed: "0.072", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve4"},
		{ID: "geodsolve-short-line-gauss", Subject: "route.ShortInverse", In: "lat1=36.493349428792, lon1=0, lat2=36.49334942879201, lon2=0.0000008", Result: "distance", Printed: "0.072", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve4"},
		{ID: "geodsolve-short-line-distance", Subject: "route.ShortDistance", In: "lat1=36.493349428792, lon1=0, lat2=36.49334942879201, lon2=0.0000008", Printed: "0.072", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve4"},
		{ID: "karney-testcase-1", Subject: "route.Inverse", In: "lat1=35.60777, lon1=-139.44815, lat2=-11.17491, lon2=-69.95921", Result: "distance", Printed: "8935244.5604818305", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 1", Tol: 1.5e-8, Why: "15 nm, the accuracy claimed"},
		{ID: "karney-testcase-13", Subject: "route.Inverse", In: "lat1=-19.79938, lon1=-174.47484, lat2=-11.99349, lon2=-154.35109", Result: "distance", Printed: "2319004.8601169389", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 13", Tol: 1.5e-8, Why: "15 nm, the accuracy claimed"},
		{ID: "karney-testcase-18", Subject: "route.Inverse", In: "lat1=-41.22777, lon1=122.32875, lat2=-7.57291, lon2=130.37946", Result: "distance", Printed: "3812686.035106021", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 18", Tol: 1.5e-8, Why: "15 nm, the accuracy claimed"},
		{ID: "karney-testcase-18-course", Subject: "route.Inverse", In: "lat1=-41.22777, lon1=122.32875, lat2=-7.57291, lon2=130.37946", Result: "course", Printed: "14.285113402275739", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 18", Tol: 1e-12, Why: "the print has as many digits as a float64"},
		{ID: "karney-testcase-1-course", Subject: "route.Inverse", In: "lat1=35.60777, lon1=-139.44815, lat2=-11.17491, lon2=-69.95921", Result: "course", Printed: "111.098748429560326", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 1", Tol: 1e-12, Why: "the print has more digits than a float64"},
		{ID: "karney-testcase-1-end", Subject: "route.Inverse", In: "lat1=35.60777, lon1=-139.44815, lat2=-11.17491, lon2=-69.95921", Result: "end", Printed: "129.289270889708762", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 1", Tol: 1e-12, Why: "the print has more digits than a float64"},
		{ID: "karney-testcase-13-course", Subject: "route.Inverse", In: "lat1=-19.79938, lon1=-174.47484, lat2=-11.99349, lon2=-154.35109", Result: "course", Printed: "71.167275780171533", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 13", Tol: 1e-12, Why: "the print has more digits than a float64"},
		{ID: "karney-testcase-13-end", Subject: "route.Inverse", In: "lat1=-19.79938, lon1=-174.47484, lat2=-11.99349, lon2=-154.35109", Result: "end", Printed: "65.589099775199228", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 13", Tol: 1e-12, Why: "the print has more digits than a float64"},
		{ID: "karney-testcase-18-end", Subject: "route.Inverse", In: "lat1=-41.22777, lon1=122.32875, lat2=-7.57291, lon2=130.37946", Result: "end", Printed: "10.805303085187369", Basis: reference.Table, Source: "Karney2013", Locator: "list of test cases, row 18", Tol: 1e-12, Why: "the print has as many digits as a float64"},
		{ID: "geodsolve-direct-end", Subject: "route.Direct", In: "lat=40.63972222, lon=-73.77888889, course=53.5, distance=5850000", Result: "end", Printed: "111.62947", Basis: reference.Printed, Source: "Karney2013", Locator: "tests of the library, GeodSolve1"},
		{ID: "geodesic-nyc-london", Subject: "route.Inverse", In: "lat1=40.7128, lon1=-74.006, lat2=51.5074, lon2=-0.1278", Result: "distance", Printed: "5585234", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, geodesic distance"},
		{ID: "geodesic-bearing", Subject: "route.Inverse", In: "lat1=10, lon1=9, lat2=10.1, lon2=9.5", Result: "course", Printed: "78.54", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, geodesic bearing", Tol: 0.01, Why: "printed truncated: 78.5475"},
		{ID: "short-direct-equator", Subject: "route.ShortDirect", In: "lat=0, lon=0, course=90, distance=111319.49079327357", Result: "lon", Printed: "1", Basis: reference.Exact, Tol: 1e-12, Why: "a degree of the equator is 6378137 pi/180, exact to the digits given"},
		{ID: "meeus-lat-degree", Subject: "route.Ellipsoid.Radii", In: "axis=6378140, inverse_flattening=298.257, lat=42", Result: "lat_degree", Printed: "111.0733", Unit: "km", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.b, p. 84"},
		{ID: "meeus-lon-degree", Subject: "route.Ellipsoid.Radii", In: "axis=6378140, inverse_flattening=298.257, lat=42", Result: "lon_degree", Printed: "82.8508", Unit: "km", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.b, p. 84"},
		{ID: "meeus-radius-parallel", Subject: "route.Ellipsoid.Radii", In: "axis=6378140, inverse_flattening=298.257, lat=42", Result: "parallel", Printed: "4747.001", Unit: "km", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.b, p. 84"},
		{ID: "meeus-radius-meridian", Subject: "route.Ellipsoid.Radii", In: "axis=6378140, inverse_flattening=298.257, lat=42", Result: "meridian", Printed: "6364.033", Unit: "km", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.b, p. 84"},
		{ID: "radii-equator", Subject: "route.Radii", In: "lat=0", Result: "prime", Printed: "6378137", Basis: reference.Exact},
		{ID: "meeus-geodesic-paris-washington", Subject: "route.Ellipsoid.Inverse", In: "axis=6378140, inverse_flattening=298.257, lat1=48 50 11 dms, lon1=2 20 14 dms, lat2=38 55 17 dms, lon2=-77 03 56 dms", Result: "distance", Printed: "6181.63", Unit: "km", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.c, p. 85", Tol: 0.06, Why: "the book's own method is good to 50 m by its statement"},
		{ID: "rhumb-parallel", Subject: "route.Rhumb", In: "lat1=0, lon1=0, lat2=0, lon2=1", Result: "distance", Printed: "111319.49079327357", Basis: reference.Exact},
		{ID: "rhumb-direct-parallel", Subject: "route.RhumbDirect", In: "lat=0, lon=0, course=90, distance=111319.49079327357", Result: "lon", Printed: "1", Basis: reference.Exact},
		{ID: "rhumb-ellipsoid-parallel", Subject: "route.Ellipsoid.Rhumb", In: "axis=6378388, inverse_flattening=297, lat1=0, lon1=0, lat2=0, lon2=180", Result: "course", Printed: "270", Basis: reference.Exact},
		{ID: "rhumb-direct-ellipsoid-parallel", Subject: "route.Ellipsoid.RhumbDirect", In: "axis=6000000, inverse_flattening=297, lat=0, lon=0, course=90, distance=104719.75511965978", Result: "lon", Printed: "1", Basis: reference.Exact},
		{ID: "offset-equator-along", Subject: "route.Leg.Offset", In: "lat1=0, lon1=0, lat2=0, lon2=1, lat3=1, lon3=0.5", Result: "along", Printed: "55659.74539663678", Basis: reference.Exact, Tol: 1e-6, Why: "the foot is iterated to 0.1 um"},
		{ID: "offset-equator-north-is-left", Subject: "route.Leg.Offset", In: "lat1=0, lon1=0, lat2=0, lon2=1, lat3=1, lon3=0.5", Result: "right", Printed: "-110574.38855780", Basis: reference.Exact, Tol: 1e-5, Why: "the first degree of the meridian of WGS 84 to the digits given"},
		{ID: "meridional-parts-equator", Subject: "route.MeridionalParts", In: "lat=0", Printed: "0", Basis: reference.Exact},
		{ID: "meridional-parts-sphere-45", Subject: "route.Ellipsoid.MeridionalParts", In: "axis=1, inverse_flattening=1e300, lat=45", Printed: "3029.9392026316", Unit: "arcmin", Basis: reference.Exact, Tol: 1e-8, Why: "10800/pi ln tan 67.5 degrees to the digits given"},
		{ID: "mid-latitude-s56w-dlat", Subject: "route.MidLatitudeDirect", In: "lat=-34 21 12 dms, lon=0, course=236, distance=302.6 nmi", Result: "dlat", Printed: "-169.2", Unit: "arcmin", Basis: reference.Printed, Source: "NavManual1917", Locator: "example 4, p. 47"},
		{ID: "mid-latitude-s56w-dlon", Subject: "route.MidLatitudeDirect", In: "lat=-34 21 12 dms, lon=0, course=236, distance=302.6 nmi", Result: "dlon", Printed: "-309.1", Unit: "arcmin", Basis: reference.Printed, Source: "NavManual1917", Locator: "example 4, p. 47", Tol: 0.1, Why: "worked there with five-figure logarithms; exact 309.15"},
		{ID: "mid-latitude-s56w-distance", Subject: "route.MidLatitude", In: "lat1=-34 21 12 dms, lon1=0, lat2=-37 10 25 dms, lon2=-5 09 06 dms", Result: "distance", Printed: "302.6", Unit: "nmi", Basis: reference.Printed, Source: "NavManual1917", Locator: "example 4, p. 47"},
		{ID: "mid-latitude-s56w-course", Subject: "route.MidLatitude", In: "lat1=-34 21 12 dms, lon1=0, lat2=-37 10 25 dms, lon2=-5 09 06 dms", Result: "course", Printed: "236", Basis: reference.Printed, Source: "NavManual1917", Locator: "example 4, p. 47"},
	},
)

func routeConcat(parts ...[]reference.Check) []reference.Check {
	var all []reference.Check
	for _, p := range parts {
		all = append(all, p...)
	}
	return all
}
