package published

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"time"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

var routeSubjects = slices.Concat(routeMotionSubjects, routeGeodesySubjects, routeSphereSubjects, routeTriangleSubjects, routeSunSubjects, routeSightSubjects, routeColdSubjects)

var routeChecks = slices.Concat(routeMotionChecks, routeGeodesyChecks, routeGeodesicInverse, slices.Concat(routeGeodesicDirect...), routeSphereChecks,
	routeTriangleChecks, routeSunChecks, routeSightChecks, routeColdChecks)

var routeSources = []reference.Source{
	{Key: "FAA-PHAK", Citation: "US Federal Aviation Administration: Pilot's Handbook of Aeronautical Knowledge, navigation chapter", ID: ""},
	{Key: "Karney2013", Citation: "C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, 43-55; test rows of his library", ID: "doi:10.1007/s00190-012-0578-z"},
	{Key: "GeodTest2010", Citation: "C. F. F. Karney (2010), Test set for geodesics", ID: "doi:10.5281/zenodo.32156"},
	{Key: "Vincenty1975", Citation: "T. Vincenty (1975), Direct and inverse solutions of geodesics on the ellipsoid with application of nested equations, Survey Review 23 (176), 88-93; table II as reproduced in test suites", ID: "doi:10.1179/sre.1975.23.176.88"},
	{Key: "GDA-Manual", Citation: "Geoscience Australia, Geocentric Datum of Australia technical manual, worked line Flinders Peak to Buninyong, as carried by its public geodesy test suite", ID: ""},
	{Key: "Torge2012", Citation: "W. Torge, J. Müller (2012), Geodesy, 4th edition, de Gruyter", ID: "isbn:9783110207187"},
	{Key: "Meeus1998", Citation: "J. Meeus (1998), Astronomical Algorithms, 2nd edition, Willmann-Bell; examples as reproduced in the test suite of a Go translation", ID: "isbn:0943396611"},
	{Key: "Bowditch2002", Citation: "N. Bowditch (2002), The American Practical Navigator, Pub. 9, NIMA; current-sailing problem quoted in a navigation-information page of 2008", ID: "Pub. No. 9"},
	{Key: "Williams2013", Citation: "E. Williams (2013), Aviation Formulary, version 1.47", ID: ""},
	{Key: "GeoRust2023", Citation: "GeoRust project (2023), geo library, documented examples and tests", ID: ""},
	{Key: "NavManual1917", Citation: "US navigation manual of the early 20th century that uses Bowditch tables 2 and 3 (title page not seen)", ID: ""},
	{Key: "Driftcorr", Citation: "MathWorks, Mapping Toolbox reference, functions driftcorr and driftvel, worked examples", ID: ""},
	{Key: "Kakopa", Citation: "Private navigation notes on the current triangle, worked question", ID: ""},
	{Key: "ChartWorkbook", Citation: "Answers to a practice-chart workbook, chapter X", ID: ""},
	{Key: "ATPL2020", Citation: "ATPL navigation questions of EASA ECQB style with worked answers (2020)", ID: ""},
	{Key: "TM1-900", Citation: "War Department (1940s), Mathematics for Air Crew Trainees, technical manual", ID: "TM 1-900"},
	{Key: "SailNet", Citation: "Forum worked example, course to steer at a given speed, ten miles west across a stream", ID: ""},
	{Key: "Algebra372569", Citation: "Worked vector answer, heading east at 160 knots in a wind from 240 at 24", ID: ""},
	{Key: "SetDrift", Citation: "Private course notes on set and drift", ID: ""},
	{Key: "FerryForum", Citation: "Paddling forum, worked example of a ferry angle", ID: ""},
	{Key: "Everitt", Citation: "D. Everitt, Nav in a nutshell, Practical Boat Owner", ID: ""},
	{Key: "Stevens", Citation: "J. Stevens, Best course for a fast passage, Yachting Monthly, answer", ID: ""},
	{Key: "RYA2010", Citation: "Student notes of an RYA theory course, worked example of true to compass", ID: ""},
	{Key: "FlightNotes2009", Citation: "Flight-training notes (4 Feb 2009), Point of no return", ID: ""},
	{Key: "AvCanada2011", Citation: "Instructor's worked example of the point of no return (18 Apr 2011), pilots' forum", ID: ""},
	{Key: "BobTait", Citation: "Flight-theory school, forum answer on the critical point", ID: ""},
	{Key: "USNO-RiseSet", Citation: "US Naval Observatory, Astronomical Applications Department, Rise and Set for the Sun for 2007, Atlanta, and Sun data for Atlanta of 6 Sep 2009, as carried in the documentation of an ephemeris library", ID: ""},
	{Key: "Steel", Citation: "D. Steel, Ask-a-scientist column (New Zealand), midwinter sunrise and sunset", ID: ""},
	{Key: "Skyfield", Citation: "Manual of an ephemeris library for Python, Detecting polar day and polar night", ID: ""},
	{Key: "NavList2005", Citation: "NavList posting on Bowditch table 15 (25 Jan 2005)", ID: ""},
	{Key: "NavList2012", Citation: "R. Stuart (5 Dec 2012), NavList posting on the metric coefficient of the horizon in Bowditch", ID: ""},
	{Key: "USCG-Addendum", Citation: "US Coast Guard Addendum to the National Search and Rescue Supplement, COMDTINST M16130.2F, tables as transcribed to the public domain", ID: "COMDTINST M16130.2F"},
	{Key: "IAMSAR-Weather", Citation: "IAMSAR Manual, volume II, weather correction factors for sweep width, as transcribed to the public domain", ID: ""},
	{Key: "EC-WindChill", Citation: "Environment Canada, Meteorological Service of Canada, Wind Chill Calculation Chart (formula of 2001)", ID: ""},
	{Key: "NWS-WindChill", Citation: "US National Weather Service, wind chill chart of 2001, as copied on a private page", ID: ""},
	{Key: "Hayward1975", Citation: "J. S. Hayward, J. D. Eckerson, M. L. Collis (1975), Effect of behavioral variables on cooling rate of man in cold water, and thermal balance and survival time prediction of man in cold water, Canadian Journal of Physiology and Pharmacology 53; the formula quoted at second hand", ID: ""},
	{Key: "ColdBootCamp", Citation: "US cold-water training programme, the 1-10-1 page", ID: ""},
	{Key: "USSARTF-Cold", Citation: "United States Search and Rescue Task Force, cold-water table of expected times", ID: ""},
}

// Shorthands for the declarations of this package.
var (
	routeLon      = reference.Between(-540, 540)
	errRouteState = errors.New("no such state")
)

func routeLatArg(name string, sample float64) reference.Arg {
	return reference.Number(name, "deg", reference.Latitude, sample)
}

func routeLonArg(name string, sample float64) reference.Arg {
	return reference.Number(name, "deg", routeLon, sample)
}

func routeAngleArg(name string, sample float64) reference.Arg {
	return reference.Number(name, "deg", reference.Angle, sample)
}

func routeSpeedArg(name string, sample float64) reference.Arg {
	return reference.Number(name, "m/s", reference.NonNegative, sample)
}

func routePoint(in reference.In, lat, lon string) route.Point {
	return route.Point{Lat: in.F(lat), Lon: in.F(lon)}
}

func routeDegrees(name string) reference.Result { return reference.Result{Name: name, Unit: "deg"} }
func routeMetres(name string) reference.Result  { return reference.Result{Name: name, Unit: "m"} }
func routeSpeeds(name string) reference.Result  { return reference.Result{Name: name, Unit: "m/s"} }

// routeBoth are the two positions of an inverse problem.
func routeBoth() []reference.Arg {
	return []reference.Arg{routeLatArg("lat1", 50), routeLonArg("lon1", -4), routeLatArg("lat2", 50.2), routeLonArg("lon2", -4.3)}
}

// routeOff are a position, a course and a distance.
func routeOff() []reference.Arg {
	return []reference.Arg{routeLatArg("lat", 50), routeLonArg("lon", -4), routeAngleArg("course", 30), reference.Number("distance", "m", reference.Real, 5000)}
}

// routeFigureArgs are the ellipsoid of a method.
func routeFigureArgs(args []reference.Arg) []reference.Arg {
	return append([]reference.Arg{
		reference.Number("axis", "m", reference.Positive, 6378388),
		reference.Number("inverse_flattening", "1", reference.Any, 297),
	}, args...)
}

func routeFigureOf(in reference.In) route.Ellipsoid {
	return route.Ellipsoid{Axis: in.F("axis"), Flattening: 1 / in.F("inverse_flattening")}
}

var routeLegResults = []reference.Result{routeMetres("distance"), routeDegrees("course"), routeDegrees("end"), routeDegrees("back")}

// routeLegOut are the results of an inverse problem; back is the azimuth at the end
// toward the start, which older tables print.
func routeLegOut(l route.Leg) reference.Out {
	return reference.Out{"distance": l.Distance, "course": l.Course, "end": l.End, "back": l.Reverse().Course}
}

var routeEndResults = []reference.Result{routeDegrees("lat"), routeDegrees("lon"), routeDegrees("end")}

func routeEndOut(l route.Leg) reference.Out {
	return reference.Out{"lat": l.To.Lat, "lon": l.To.Lon, "end": l.End}
}

func routeInvert(f func(a, b route.Point) route.Leg) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return routeLegOut(f(routePoint(in, "lat1", "lon1"), routePoint(in, "lat2", "lon2"))), nil
	}
}

func routeProceed(f func(p route.Point, course, distance float64) route.Leg) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return routeEndOut(f(routePoint(in, "lat", "lon"), in.F("course"), in.F("distance"))), nil
	}
}

func routeOne(x float64) reference.Out { return reference.Out{"": x} }

// routeLocalDay reads the date of an instant and a zone in seconds.
func routeLocalDay(in reference.In) (time.Time, error) {
	zone := in.F("zone")
	if !(math.Abs(zone) <= 14*3600) {
		return time.Time{}, fmt.Errorf("zone %v s", zone)
	}
	y, m, d := in.T("date").Date()
	return time.Date(y, m, d, 12, 0, 0, 0, time.FixedZone("", int(zone))), nil
}
