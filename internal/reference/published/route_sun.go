package published

import (
	"time"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

var routeSunResults = []reference.Result{
	routeDegrees("longitude"), routeDegrees("anomaly"), {Name: "eccentricity", Unit: "1"}, {Name: "distance", Unit: "1"}, routeDegrees("apparent"),
	routeDegrees("ascension"), {Name: "ascension_time", Unit: "s"}, routeDegrees("declination"), {Name: "equation", Unit: "s"}, {Name: "equation_angle", Unit: "deg"},
}

func routeSunOut(s route.Sun) reference.Out {
	return reference.Out{"longitude": s.TrueLongitude, "anomaly": s.Anomaly, "eccentricity": s.Eccentricity, "distance": s.Distance, "apparent": s.Apparent,
		"ascension": s.Ascension, "ascension_time": s.Ascension * 240, "declination": s.Declination, "equation": s.Equation, "equation_angle": s.Equation / 240}
}

// routeDayResults are the events of a day in seconds after the local midnight.
var routeDayEvents = []string{"astronomical_dawn", "nautical_dawn", "civil_dawn", "sunrise", "sunset", "civil_dusk", "nautical_dusk", "astronomical_dusk"}

func routeDayResults() []reference.Result {
	r := []reference.Result{{Name: "sunrise_state", Unit: "text", Without: []string{}}}
	for _, e := range routeDayEvents {
		r = append(r, reference.Result{Name: e, Unit: "s"})
	}
	return append(r, reference.Result{Name: "transit", Unit: "s"})
}

func routeDayOut(in reference.In) (reference.Out, error) {
	noon, err := routeLocalDay(in)
	if err != nil {
		return nil, err
	}
	d, err := route.Daylight(routePoint(in, "lat", "lon"), noon)
	if err != nil {
		return nil, err
	}
	after := func(t time.Time) float64 { return t.Sub(noon).Seconds() + 43200 }
	out := reference.Out{"sunrise_state": string(d.Sunrise.State), "transit": after(d.Transit)}
	for i, e := range []route.SunEvent{d.AstronomicalDawn, d.NauticalDawn, d.CivilDawn, d.Sunrise, d.Sunset, d.CivilDusk, d.NauticalDusk, d.AstronomicalDusk} {
		out[routeDayEvents[i]] = -1.0
		if e.State == route.Happens {
			out[routeDayEvents[i]] = after(e.Time)
		}
	}
	return out, nil
}

var routeSunSubjects = []reference.Subject{
	{Name: "route.SunAtJulian", Func: route.SunAtJulian, Class: reference.Formula, Args: []reference.Arg{reference.Number("jde", "1", reference.Between(2451545-40*36525, 2451545+40*36525), 2448908.5)},
		Results: routeSunResults, Eval: func(in reference.In) (reference.Out, error) { return routeSunOut(route.SunAtJulian(in.F("jde"))), nil }},
	{Name: "route.SunAt", Func: route.SunAt, Class: reference.Composed, Args: []reference.Arg{reference.Instant("at", "1992-10-13T00:00:00Z")}, Results: routeSunResults, Tests: []string{"TestSunAtIsTheJulianDay"},
		Eval: func(in reference.In) (reference.Out, error) { return routeSunOut(route.SunAt(in.T("at"))), nil }},
	{Name: "route.SunAltitude", Func: route.SunAltitude, Class: reference.Formula, Args: []reference.Arg{routeLatArg("lat", 50), routeLonArg("lon", -4), reference.Instant("at", "2023-06-21T10:28:55Z")},
		Results: []reference.Result{routeDegrees("altitude"), routeDegrees("bearing")}, Tests: []string{"TestSunStandsSouthAtNoon"},
		NoneFound: map[string]string{"all": "searched the almanac examples at hand: printed altitudes were of the lowest midnight sun by another program only"},
		Eval: func(in reference.In) (reference.Out, error) {
			a, b := route.SunAltitude(routePoint(in, "lat", "lon"), in.T("at"))
			return reference.Out{"altitude": a, "bearing": b}, nil
		}},
	{Name: "route.SemiDiurnalArc", Func: route.SemiDiurnalArc, Class: reference.Formula, Args: []reference.Arg{routeLatArg("lat", 42), reference.Number("declination", "deg", reference.Latitude, 18), reference.Number("altitude", "deg", reference.Latitude, -0.5)},
		Results: []reference.Result{routeDegrees("arc")}, Tests: []string{"TestDayLengthsOfBothHemispheres"}},
	{Name: "route.Daylight", Func: route.Daylight, Class: reference.Formula, Args: []reference.Arg{routeLatArg("lat", 50), routeLonArg("lon", -4), reference.Instant("date", "2026-06-21T00:00:00Z"), reference.Number("zone", "s", reference.Between(-50400, 50400), 0)},
		Results: routeDayResults(), Eval: routeDayOut, Tests: []string{"TestDaylightAgainstAltitude", "TestNoEventStates", "TestDaylightRefuses"}},
}

const routeAlmanac = "half a minute of rounding in print, and 4 s of the low-accuracy position"

func routeUsno(id, date, event, printed string) reference.Check {
	return reference.Check{ID: "usno-atlanta-" + id, Subject: "route.Daylight", In: "lat=33 46 dm, lon=-84 25 dm, date=" + date + "T00:00:00Z, zone=-5 h", Result: event, Printed: printed, Unit: "hh:mm",
		Basis: reference.Table, Source: "USNO-RiseSet", Locator: "Atlanta 2007, " + date, Tol: 34, Why: routeAlmanac}
}

func routeUsno2009(id, event, printed string) reference.Check {
	return reference.Check{ID: "usno-atlanta-2009-" + id, Subject: "route.Daylight", In: "lat=33.8, lon=-84.4, date=2009-09-06T00:00:00Z, zone=-4 h", Result: event, Printed: printed, Unit: "hh:mm",
		Basis: reference.Printed, Source: "USNO-RiseSet", Locator: "Atlanta, 6 Sep 2009", Tol: 34, Why: routeAlmanac}
}

func routeSteel(id, in, event, printed string) reference.Check {
	return reference.Check{ID: "midwinter-" + id, Subject: "route.Daylight", In: in, Result: event, Printed: printed, Unit: "hh:mm",
		Basis: reference.Printed, Source: "Steel", Locator: "question", Tol: 90, Why: "year and exact place are not given"}
}

const (
	routeWellington = "lat=-41.3, lon=174.8, date=2010-06-21T00:00:00Z, zone=12 h"
	routeSydney     = "lat=-33.9, lon=151.2, date=2010-06-21T00:00:00Z, zone=10 h"
)

var routeSunChecks = []reference.Check{
	{ID: "meeus-25a-longitude", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "longitude", Printed: "199.90987", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 25.a, p. 165"},
	{ID: "meeus-25a-anomaly", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "anomaly", Printed: "278.99397", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 25.a, p. 165", Note: "printed there as -2241.00603 and reduced"},
	{ID: "meeus-25a-eccentricity", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "eccentricity", Printed: "0.016711668", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 25.a, p. 165"},
	{ID: "meeus-25a-distance", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "distance", Printed: "0.99766", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 25.a, p. 165"},
	{ID: "meeus-25a-ascension", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "ascension_time", Printed: "13 13 31.4", Unit: "hms", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 25.a, p. 165"},
	{ID: "meeus-25a-declination", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "declination", Printed: "-7 47 06", Unit: "dms", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 25.a, p. 165"},
	{ID: "meeus-28b-equation", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "equation", Printed: "822.7", Unit: "s", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 28.b, p. 185: +13 m 42.7 s", Tol: 0.1, Why: "the obliquity there is that of its own example; 822.65"},
	{ID: "meeus-28b-equation-angle", Subject: "route.SunAtJulian", In: "jde=2448908.5", Result: "equation_angle", Printed: "0.0598256", Unit: "rad", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 28.b, p. 185"},
	{ID: "meeus-15a-arc", Subject: "route.SemiDiurnalArc", In: "lat=42.3333, declination=18.44092, altitude=-0.5667", Printed: "108.5344", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 15.a, p. 103: H0"},
	routeUsno("2007-02-15-rise", "2007-02-15", "sunrise", "07:22"),
	routeUsno("2007-02-15-set", "2007-02-15", "sunset", "18:22"),
	routeUsno("2007-06-21-rise", "2007-06-21", "sunrise", "05:27"),
	routeUsno("2007-06-21-set", "2007-06-21", "sunset", "19:51"),
	routeUsno("2007-08-14-rise", "2007-08-14", "sunrise", "05:59"),
	routeUsno("2007-08-14-set", "2007-08-14", "sunset", "19:25"),
	routeUsno("2007-09-23-rise", "2007-09-23", "sunrise", "06:26"),
	routeUsno("2007-09-23-set", "2007-09-23", "sunset", "18:33"),
	routeUsno2009("civil-dawn", "civil_dawn", "06:50"),
	routeUsno2009("sunrise", "sunrise", "07:15"),
	routeUsno2009("transit", "transit", "13:36"),
	routeUsno2009("sunset", "sunset", "19:56"),
	routeUsno2009("civil-dusk", "civil_dusk", "20:21"),
	routeSteel("wellington-rise", routeWellington, "sunrise", "07:48"),
	routeSteel("wellington-set", routeWellington, "sunset", "16:58"),
	routeSteel("sydney-rise", routeSydney, "sunrise", "07:00"),
	routeSteel("sydney-set", routeSydney, "sunset", "16:54"),
	{ID: "polar-day-utqiagvik", Subject: "route.Daylight", In: "lat=71.2906, lon=-156.7886, date=2023-06-21T00:00:00Z, zone=-9 h", Result: "sunrise_state", Printed: "stays above", Basis: reference.Peer, Source: "Skyfield", Locator: "polar day and polar night"},
	{ID: "midnight-sun-utqiagvik", Subject: "route.SunAltitude", In: "lat=71.2906, lon=-156.7886, at=2023-06-21T10:28:55Z", Result: "altitude", Printed: "4.7265", Basis: reference.Peer, Source: "Skyfield", Locator: "polar day and polar night", Tol: 0.01, Why: "the low-accuracy position is good to 0.01 degrees"},
	{ID: "sun-overhead-solar-noon", Subject: "route.SunAltitude", In: "lat=90, lon=0, at=2000-01-01T12:00:00Z", Result: "altitude", Printed: "-23.033", Basis: reference.Exact, Tol: 0.01, Why: "at the pole the altitude is the declination, which the almanac for noon of J2000 has as -23 02.0"},
}
