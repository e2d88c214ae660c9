package published

import (
	"math"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

var routeHeightArg = []reference.Arg{reference.Number("height", "m", reference.NonNegative, 2)}

var routeSightSubjects = []reference.Subject{
	{Name: "route.Horizon", Func: route.Horizon, Class: reference.Formula, Args: routeHeightArg, Results: []reference.Result{routeMetres("distance")}},
	{Name: "route.HorizonRefracted", Func: route.HorizonRefracted, Class: reference.Formula, Args: []reference.Arg{routeHeightArg[0], reference.Number("b", "1", reference.Positive, 0.8279)}, Results: []reference.Result{routeMetres("distance")}},
	{Name: "route.Dip", Func: route.Dip, Class: reference.Formula, Args: routeHeightArg, Results: []reference.Result{routeDegrees("dip")}},
	{Name: "route.SightRange", Func: route.SightRange, Class: reference.Formula, Args: []reference.Arg{reference.Number("eye", "m", reference.NonNegative, 2), routeHeightArg[0]}, Results: []reference.Result{routeMetres("range")},
		Tests: []string{"TestSightPrintsItsCaution"},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeOne(route.SightRange(in.F("eye"), in.F("height")).Range), nil
		}},
	{Name: "route.SweepVisibility", Func: route.SweepVisibility, Class: reference.Data, Tests: []string{"TestSweepRows"}},
	{Name: "route.SweepRows", Func: route.SweepRows, Class: reference.Data, Tests: []string{"TestSweepRows"}},
	{Name: "route.SweepWidth", Func: route.SweepWidth, Class: reference.Formula, Args: []reference.Arg{reference.Text("target", route.TargetPerson),
		reference.Number("eye", "m", reference.Between(8*route.Foot*(1-1e-12), 14*route.Foot*(1+1e-12)), 3), reference.Number("visibility", "m", reference.Domain{Lo: 1852, Hi: math.Inf(1)}, 5000)},
		Results: []reference.Result{routeMetres("width")}, Tests: []string{"TestSweepRows"},
		Eval: func(in reference.In) (reference.Out, error) {
			w, err := route.SweepWidth(in.S("target"), in.F("eye"), in.F("visibility"))
			if err != nil {
				return nil, err
			}
			return routeOne(w), nil
		}},
	{Name: "route.SweepWeather", Func: route.SweepWeather, Class: reference.Formula, Args: []reference.Arg{reference.Number("wind", "m/s", reference.NonNegativeInf, 5), reference.Number("height", "m", reference.NonNegativeInf, 0.5)},
		Results: []reference.Result{{Name: "factor", Unit: "1"}},
		Regimes: []reference.Regime{
			{Name: "calm", In: func(in reference.In) bool { return in.F("wind") < 15*route.Knot && in.F("height") < 1 }},
			{Name: "middle", In: func(in reference.In) bool {
				return in.F("wind") <= 25*route.Knot && in.F("height") <= 1.5 && !(in.F("wind") < 15*route.Knot && in.F("height") < 1)
			}},
			{Name: "rough", In: func(in reference.In) bool { return in.F("wind") > 25*route.Knot || in.F("height") > 1.5 }}}},
}

func routeHorizon(id, feet, miles, source, locator string) reference.Check {
	return reference.Check{ID: "horizon-" + id, Subject: "route.Horizon", In: "height=" + feet + " ft", Printed: miles, Unit: "nmi", Basis: reference.Printed, Source: source, Locator: locator}
}

func routeSweep(id, target, eye, visibility, miles string) reference.Check {
	return reference.Check{ID: "sweep-" + id, Subject: "route.SweepWidth", In: "target=" + target + ", eye=" + eye + " ft, visibility=" + visibility + " nmi", Printed: miles, Unit: "nmi", Basis: reference.Table, Source: "USCG-Addendum", Locator: "visual sweep width, surface craft, eye " + eye + " ft"}
}

var routeSightChecks = []reference.Check{
	routeHorizon("16ft", "16", "4.7", "Jamieson2009", "appendix I (after Bowditch table 12), p. 292"),
	routeHorizon("125ft", "125", "13.1", "Jamieson2009", "appendix I (after Bowditch table 12), p. 292"),
	routeHorizon("70ft", "70", "9.8", "NavList2005", "text"),
	routeHorizon("10000ft", "10000", "117", "Williams2013", "distance to horizon"),
	{ID: "horizon-metre", Subject: "route.Horizon", In: "height=1", Printed: "2.12", Unit: "nmi", Basis: reference.Printed, Source: "NavList2012", Locator: "text", Note: "2.07 in the 1995 and 2002 printings of Bowditch is a slip"},
	{ID: "horizon-refracted-10000ft", Subject: "route.HorizonRefracted", In: "height=10000 ft, b=0.8279", Printed: "117", Unit: "nmi", Basis: reference.Printed, Source: "Williams2013", Locator: "distance to horizon"},
	{ID: "dip-one-metre", Subject: "route.Dip", In: "height=1", Printed: "1.76", Unit: "arcmin", Basis: reference.Exact, Note: "the coefficient itself"},
	{ID: "sight-10-6ft", Subject: "route.SightRange", In: "eye=10 ft, height=6 ft", Printed: "6.6", Unit: "nmi", Basis: reference.Printed, Source: "NavList2005", Locator: "text"},
	{ID: "sight-16-125ft", Subject: "route.SightRange", In: "eye=16 ft, height=125 ft", Printed: "17.8", Unit: "nmi", Basis: reference.Printed, Source: "Jamieson2009", Locator: "appendix I, p. 292"},
	routeSweep("person-8ft-1", "person in water", "8", "1", "0.2"),
	routeSweep("person-8ft-5", "person in water", "8", "5", "0.3"),
	routeSweep("person-14ft-3", "person in water", "14", "3", "0.4"),
	{ID: "sweep-boat-8ft-3", Subject: "route.SweepWidth", In: "target=power boat to 15 ft, eye=8 ft, visibility=3 nmi", Printed: "0.8", Unit: "nmi", Basis: reference.Table, Source: "USCG-Addendum", Locator: "visual sweep width, surface craft, eye 8 ft"},
	routeSweep("boat-8ft-10", "power boat to 15 ft", "8", "10", "1.5"),
	routeSweep("boat-8ft-20", "power boat to 15 ft", "8", "20", "1.8"),
	routeSweep("boat-14ft-5", "power boat to 15 ft", "14", "5", "1.4"),
	{ID: "sweep-weather-calm", Subject: "route.SweepWeather", In: "wind=10 kn, height=0.5", Printed: "1.0", Basis: reference.Table, Source: "IAMSAR-Weather", Locator: "small targets, low"},
	{ID: "sweep-weather-middle", Subject: "route.SweepWeather", In: "wind=20 kn, height=0.5", Printed: "0.5", Basis: reference.Table, Source: "IAMSAR-Weather", Locator: "small targets, medium"},
	{ID: "sweep-weather-rough", Subject: "route.SweepWeather", In: "wind=10 kn, height=2", Printed: "0.25", Basis: reference.Table, Source: "IAMSAR-Weather", Locator: "small targets, high"},
}
