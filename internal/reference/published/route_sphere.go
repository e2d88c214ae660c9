package published

import (
	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

func routeSphereArgs(args []reference.Arg) []reference.Arg {
	return append([]reference.Arg{reference.Number("radius", "m", reference.NonNegative, 6371008.8)}, args...)
}

func routeSphereOf(in reference.In) route.Sphere { return route.Sphere{Radius: in.F("radius")} }

// routeNautical is the radius on which a minute of arc is a nautical mile.
const routeNautical = "radius=6366707.019493708, "

var routeSphereSubjects = []reference.Subject{
	{Name: "route.Haversine", Func: route.Haversine, Class: reference.Formula, Args: routeBoth(), Results: []reference.Result{routeMetres("distance")},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeOne(route.Haversine(routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2"))), nil
		}},
	{Name: "route.Sphere.Inverse", Func: route.Sphere.Inverse, Class: reference.Formula, Args: routeSphereArgs(routeBoth()), Results: routeLegResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeInvert(routeSphereOf(in).Inverse)(in) }},
	{Name: "route.Sphere.Direct", Func: route.Sphere.Direct, Class: reference.Formula, Args: routeSphereArgs(routeOff()), Results: routeEndResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeProceed(routeSphereOf(in).Direct)(in) }},
	{Name: "route.Sphere.Intermediate", Func: route.Sphere.Intermediate, Class: reference.Formula, Args: append(routeBoth(), reference.Number("fraction", "1", reference.Real, 0.4)),
		Results: []reference.Result{routeDegrees("lat"), routeDegrees("lon")},
		Eval: func(in reference.In) (reference.Out, error) {
			p := route.Sphere{}.Intermediate(routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2"), in.F("fraction"))
			return reference.Out{"lat": p.Lat, "lon": p.Lon}, nil
		}},
	{Name: "route.Sphere.Offset", Func: route.Sphere.Offset, Class: reference.Formula, Args: routeSphereArgs(append(routeBoth(), routeLatArg("lat3", 50.1), routeLonArg("lon3", -4.1))),
		Results: []reference.Result{routeMetres("along"), routeMetres("right")},
		Eval: func(in reference.In) (reference.Out, error) {
			a, r := routeSphereOf(in).Offset(routePoint(in, "lat3", "lon3"), routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2"))
			return reference.Out{"along": a, "right": r}, nil
		}},
	{Name: "route.Sphere.Rhumb", Func: route.Sphere.Rhumb, Class: reference.Formula, Args: routeSphereArgs(routeBoth()), Results: routeLegResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeInvert(routeSphereOf(in).Rhumb)(in) }},
	{Name: "route.Sphere.RhumbDirect", Func: route.Sphere.RhumbDirect, Class: reference.Formula, Args: routeSphereArgs(routeOff()), Results: routeEndResults,
		Eval: func(in reference.In) (reference.Out, error) { return routeProceed(routeSphereOf(in).RhumbDirect)(in) }},
}

const (
	routeLaxJFK = "lat1=33 57 dm, lon1=-118 24 dm, lat2=40 38 dm, lon2=-73 47 dm"
	routeNycLON = "lat1=40.7128, lon1=-74.006, lat2=51.5074, lon2=-0.1278"
	routeLinc   = "radius=6371008.8, lat1=53.3206, lon1=-1.7297, lat2=53.1887, lon2=0.1334, lat3=53.2611, lon3=-0.7972"
)

var routeSphereChecks = []reference.Check{
	{ID: "formulary-distance", Subject: "route.Sphere.Inverse", In: "radius=1, " + routeLaxJFK, Result: "distance", Printed: "0.623585", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, LAX to JFK"},
	{ID: "formulary-course", Subject: "route.Sphere.Inverse", In: "radius=1, " + routeLaxJFK, Result: "course", Printed: "1.150035", Unit: "rad", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, LAX to JFK"},
	{ID: "formulary-nautical", Subject: "route.Sphere.Inverse", In: routeNautical + routeLaxJFK, Result: "distance", Printed: "2144", Unit: "nmi", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, LAX to JFK"},
	{ID: "formulary-destination-lat", Subject: "route.Sphere.Direct", In: routeNautical + "lat=33 57 dm, lon=-118 24 dm, course=1.150035 rad, distance=100 nmi", Result: "lat", Printed: "0.604180", Unit: "rad", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, 100 nm from LAX"},
	{ID: "formulary-destination-lon", Subject: "route.Sphere.Direct", In: routeNautical + "lat=33 57 dm, lon=-118 24 dm, course=1.150035 rad, distance=100 nmi", Result: "lon", Printed: "-2.034206", Unit: "rad", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, 100 nm from LAX", Note: "west longitude is positive there"},
	{ID: "formulary-intermediate-lat", Subject: "route.Sphere.Intermediate", In: routeLaxJFK + ", fraction=0.4", Result: "lat", Printed: "38 40.167", Unit: "dm", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, 40 % of the way"},
	{ID: "formulary-intermediate-lon", Subject: "route.Sphere.Intermediate", In: routeLaxJFK + ", fraction=0.4", Result: "lon", Printed: "-101 37.570", Unit: "dm", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, 40 % of the way"},
	{ID: "formulary-cross-track", Subject: "route.Sphere.Offset", In: routeNautical + routeLaxJFK + ", lat3=34 30 dm, lon3=-116 30 dm", Result: "right", Printed: "7.4512", Unit: "nmi", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, cross-track error", Tol: 0.0015, Why: "worked there from intermediates rounded by hand; 7.4523 at full precision"},
	{ID: "formulary-along-track", Subject: "route.Sphere.Offset", In: routeNautical + routeLaxJFK + ", lat3=34 30 dm, lon3=-116 30 dm", Result: "along", Printed: "99.588", Unit: "nmi", Basis: reference.Memory, Source: "Williams2013", Locator: "worked examples, along-track distance", Tol: 0.0015, Why: "worked there from intermediates rounded by hand"},
	{ID: "formulary-rhumb-course", Subject: "route.Sphere.Rhumb", In: routeNautical + routeLaxJFK, Result: "course", Printed: "79.32", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, rhumb line LAX to JFK"},
	{ID: "formulary-rhumb-distance", Subject: "route.Sphere.Rhumb", In: routeNautical + routeLaxJFK, Result: "distance", Printed: "2164.6", Unit: "nmi", Basis: reference.Printed, Source: "Williams2013", Locator: "worked examples, rhumb line LAX to JFK"},
	{ID: "meeus-sphere-paris-washington", Subject: "route.Sphere.Inverse", In: "radius=6371000, lat1=48 50 11 dms, lon1=2 20 14 dms, lat2=38 55 17 dms, lon2=-77 03 56 dms", Result: "distance", Printed: "6166", Unit: "km", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.c, p. 85"},
	{ID: "meeus-sphere-arc", Subject: "route.Sphere.Inverse", In: "radius=57.29577951308232, lat1=48 50 11 dms, lon1=2 20 14 dms, lat2=38 55 17 dms, lon2=-77 03 56 dms", Result: "distance", Printed: "55.44855", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 11.c, p. 85: d in degrees", Note: "on a sphere whose degree is 1"},
	{ID: "haversine-right-angle", Subject: "route.Haversine", In: "lat1=0, lon1=0, lat2=90, lon2=0", Printed: "10007557.221017962", Basis: reference.Exact},
	{ID: "rhumb-direct-sphere-meridian", Subject: "route.Sphere.RhumbDirect", In: "radius=6366707.019493708, lat=0, lon=10, course=0, distance=60 nmi", Result: "lat", Printed: "1", Basis: reference.Exact},
	{ID: "haversine-nyc-london", Subject: "route.Haversine", In: routeNycLON, Printed: "5570230", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, haversine distance"},
	{ID: "rhumb-nyc-london", Subject: "route.Sphere.Rhumb", In: "radius=6371008.8, " + routeNycLON, Result: "distance", Printed: "5794129", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, rhumb distance"},
	{ID: "rhumb-destination-lat", Subject: "route.Sphere.RhumbDirect", In: "radius=6371008.8, lat=48.776781529534965, lon=9.177789688110352, course=45, distance=10000", Result: "lat", Printed: "48.84037308229984", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, rhumb destination", Tol: 1e-12, Why: "rounding of the last bit"},
	{ID: "rhumb-destination-lon", Subject: "route.Sphere.RhumbDirect", In: "radius=6371008.8, lat=48.776781529534965, lon=9.177789688110352, course=45, distance=10000", Result: "lon", Printed: "9.274348757829898", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, rhumb destination", Tol: 1e-12, Why: "rounding of the last bit"},
	{ID: "great-circle-destination-lon", Subject: "route.Sphere.Direct", In: "radius=6371008.8, lat=48.776781529534965, lon=9.177789688110352, course=45, distance=10000", Result: "lon", Printed: "9.274409949623532", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, haversine destination", Tol: 1e-12, Why: "rounding of the last bit"},
	{ID: "great-circle-bearing", Subject: "route.Sphere.Inverse", In: "radius=6371008.8, lat1=10, lon1=9, lat2=10.1, lon2=9.5", Result: "course", Printed: "78.47", Basis: reference.Peer, Source: "GeoRust2023", Locator: "documentation, haversine bearing"},
	{ID: "cross-track-lincolnshire", Subject: "route.Sphere.Offset", In: routeLinc, Result: "right", Printed: "-307.549995", Basis: reference.Peer, Source: "GeoRust2023", Locator: "tests, cross-track distance", Note: "printed there without its sign; the point lies to the left"},
}
