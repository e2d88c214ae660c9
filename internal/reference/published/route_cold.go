package published

import (
	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

var routeChillArgs = []reference.Arg{reference.Number("air", "C", reference.Domain{Lo: -273.15, Hi: 1e308}, -5), reference.Number("wind", "m/s", reference.NonNegative, 6)}

func routeChill(limit float64, wind float64) []reference.Regime {
	return []reference.Regime{
		{Name: "index", In: func(in reference.In) bool { return in.F("air") <= limit && in.F("wind") >= wind }},
		{Name: "no index", In: func(in reference.In) bool { return !(in.F("air") <= limit && in.F("wind") >= wind) }},
	}
}

var routeColdSubjects = []reference.Subject{
	{Name: "route.WindChill", Func: route.WindChill, Class: reference.Formula, Args: routeChillArgs, Results: []reference.Result{{Name: "index", Unit: "C"}}, Regimes: routeChill(10, 4.8*route.KmPerHour)},
	{Name: "route.WindChillUS", Func: route.WindChillUS, Class: reference.Formula, Args: routeChillArgs, Results: []reference.Result{{Name: "index", Unit: "C"}}, Regimes: routeChill(10, 3*route.MilePerHour)},
	{Name: "route.HaywardTime", Func: route.HaywardTime, Class: reference.Formula, Args: []reference.Arg{reference.Number("water", "C", reference.Between(-2, 20), 10)}, Results: []reference.Result{{Name: "time", Unit: "s"}},
		NoneFound: map[string]string{"all": "the formula was read at second hand, and no printed time with it; the paper could not be opened"}, Tests: []string{"TestHaywardIsTheFormulaAndNoMore"}},
	{Name: "route.ColdPhases", Func: route.ColdPhases, Class: reference.Data, Tests: []string{"TestColdTables"}},
	{Name: "route.ColdTable", Func: route.ColdTable, Class: reference.Data, Tests: []string{"TestColdTables"}},
	{Name: "route.ColdTimes", Func: route.ColdTimes, Class: reference.Formula, Args: []reference.Arg{reference.Number("water", "C", reference.Between(-2, 45), 10)},
		Results: []reference.Result{{Name: "exhaustion_from", Unit: "s"}, {Name: "exhaustion_to", Unit: "s"}, {Name: "limit_from", Unit: "s"}, {Name: "limit_to", Unit: "s"}}, Tests: []string{"TestColdTables"},
		Eval: func(in reference.In) (reference.Out, error) {
			r, ok := route.ColdTimes(in.F("water"))
			if !ok {
				return nil, errRouteState
			}
			return reference.Out{"exhaustion_from": r.ExhaustionFrom, "exhaustion_to": r.ExhaustionTo, "limit_from": r.LimitFrom, "limit_to": r.LimitTo}, nil
		}},
}

func routeEc(id, air, wind, index string) reference.Check {
	return reference.Check{ID: "wind-chill-" + id, Subject: "route.WindChill", In: "air=" + air + " C, wind=" + wind + " km/h", Printed: index, Unit: "C", Basis: reference.Table, Source: "EC-WindChill", Locator: "cell of " + air + " C, " + wind + " km/h"}
}

func routeNws(id, air, wind, index string) reference.Check {
	return reference.Check{ID: "wind-chill-us-" + id, Subject: "route.WindChillUS", In: "air=" + air + " F, wind=" + wind + " mph", Printed: index, Unit: "F", Basis: reference.Table, Source: "NWS-WindChill", Locator: "cell of " + air + " F, " + wind + " mph"}
}

func routeColdRow(id, water, result, printed, unit string) reference.Check {
	return reference.Check{ID: "cold-" + id, Subject: "route.ColdTimes", In: "water=" + water + " F", Result: result, Printed: printed, Unit: unit, Basis: reference.Table, Source: "USSARTF-Cold", Locator: "row of " + water + " F"}
}

var routeColdChecks = []reference.Check{
	routeEc("5-5", "5", "5", "4"), routeEc("5-30", "5", "30", "0"), routeEc("0-10", "0", "10", "-3"), routeEc("0-40", "0", "40", "-7"),
	routeEc("m5-20", "-5", "20", "-12"), routeEc("m15-50", "-15", "50", "-29"), routeEc("m20-20", "-20", "20", "-30"), routeEc("m25-20", "-25", "20", "-37"),
	routeNws("40-5", "40", "5", "36"), routeNws("30-30", "30", "30", "15"), routeNws("20-25", "20", "25", "3"), routeNws("10-45", "10", "45", "-16"), routeNws("0-15", "0", "15", "-19"), routeNws("m5-60", "-5", "60", "-40"),
	{ID: "wind-chill-mild", Subject: "route.WindChill", In: "air=12, wind=10", Printed: "12", Basis: reference.Exact},
	{ID: "wind-chill-us-calm", Subject: "route.WindChillUS", In: "air=-5, wind=1", Printed: "-5", Basis: reference.Exact},
	{ID: "hayward-freezing", Subject: "route.HaywardTime", In: "water=0", Printed: "106.71974522292993", Unit: "min", Basis: reference.Exact, Note: "15 + 7.2/0.0785 of the formula as quoted; no printed time was found"},
	{ID: "hayward-10", Subject: "route.HaywardTime", In: "water=10", Printed: "176.8", Unit: "min", Basis: reference.Computed, Source: "Hayward1975", Locator: "the regression, quoted at second hand"},
	routeColdRow("34f-exhaustion", "34", "exhaustion_to", "30", "min"),
	routeColdRow("34f-limit", "34", "limit_to", "90", "min"),
	routeColdRow("45f-exhaustion", "45", "exhaustion_from", "30", "min"),
	routeColdRow("45f-limit", "45", "limit_to", "3", "h"),
	routeColdRow("55f-limit", "55", "limit_to", "6", "h"),
	routeColdRow("75f-exhaustion", "75", "exhaustion_to", "12", "h"),
	routeColdRow("32f-exhaustion", "32", "exhaustion_to", "15", "min"),
	routeColdRow("32f-limit", "32", "limit_to", "45", "min"),
	routeColdRow("34f-exhaustion-from", "34", "exhaustion_from", "15", "min"),
	routeColdRow("34f-limit-from", "34", "limit_from", "30", "min"),
	routeColdRow("45f-exhaustion-to", "45", "exhaustion_to", "60", "min"),
	routeColdRow("45f-limit-from", "45", "limit_from", "1", "h"),
	routeColdRow("55f-exhaustion-from", "55", "exhaustion_from", "1", "h"),
	routeColdRow("55f-exhaustion-to", "55", "exhaustion_to", "2", "h"),
	routeColdRow("55f-limit-from", "55", "limit_from", "1", "h"),
	{ID: "cold-65f-exhaustion-from", Subject: "route.ColdTimes", In: "water=65 F", Result: "exhaustion_from", Printed: "2", Unit: "h", Basis: reference.Memory, Source: "USSARTF-Cold", Locator: "row of 60 to 70 F, not seen"},
	{ID: "cold-65f-exhaustion-to", Subject: "route.ColdTimes", In: "water=65 F", Result: "exhaustion_to", Printed: "7", Unit: "h", Basis: reference.Memory, Source: "USSARTF-Cold", Locator: "row of 60 to 70 F, not seen"},
	{ID: "cold-65f-limit-from", Subject: "route.ColdTimes", In: "water=65 F", Result: "limit_from", Printed: "2", Unit: "h", Basis: reference.Memory, Source: "USSARTF-Cold", Locator: "row of 60 to 70 F, not seen"},
	{ID: "cold-65f-limit-to", Subject: "route.ColdTimes", In: "water=65 F", Result: "limit_to", Printed: "40", Unit: "h", Basis: reference.Memory, Source: "USSARTF-Cold", Locator: "row of 60 to 70 F, not seen"},
	routeColdRow("75f-exhaustion-from", "75", "exhaustion_from", "3", "h"),
	routeColdRow("75f-limit-from", "75", "limit_from", "3", "h"),
}
