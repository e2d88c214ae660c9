package published

import (
	"fmt"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

var driftSources = []reference.Source{
	{Key: "SAROPS2011", Citation: "Leeway object table, updated 2011-08-25 by Ø. Breivik (MET Norway) from the SAROPS list received from A. Allen (US Coast Guard) in 2010; after Allen and Plourde (1999), CG-D-08-99, and Allen (2005), CG-D-05-05", ID: "CG-D-08-99"},
	{Key: "Breivik2011", Citation: "Ø. Breivik, A. A. Allen, C. Maisondieu, J. C. Roth (2011), Wind-induced drift of objects at sea: the leeway field method, Applied Ocean Research 33, 100-109", ID: "doi:10.1016/j.apor.2011.01.005"},
	{Key: "Brushett2014", Citation: "B. A. Brushett, A. A. Allen, V. C. Futch, B. A. King, C. J. Lemckert (2014), Determining the leeway drift characteristics of tropical Pacific island craft, Applied Ocean Research 44, 92-101", ID: ""},
	{Key: "OpenDrift", Citation: "OpenDrift project, tests and gallery of the leeway model, expected crosswind drift of asymmetric rows", ID: ""},
}

var routeLeewayArgs = []reference.Arg{reference.Text("craft", "surfboard"), reference.Text("side", "right"), routeSpeedArg("wind", 10), routeAngleArg("wind_from", 180)}

func routeSide(in reference.In) (route.Side, error) {
	switch in.S("side") {
	case "right":
		return route.Right, nil
	case "left":
		return route.Left, nil
	}
	return 0, errRouteState
}

// routeLeewayOut resolves a leeway: down and across the wind, as speed and angle.
func routeLeewayOut(in reference.In, v route.Velocity) reference.Out {
	down, right := v.Resolve(in.F("wind_from") + 180)
	return reference.Out{"down": down, "right": right, "speed": v.Speed(), "east": v.East, "north": v.North}
}

var routeLeewayResults = []reference.Result{routeSpeeds("down"), routeSpeeds("right"), routeSpeeds("speed"), routeSpeeds("east"), routeSpeeds("north")}

var routeRowResults = []reference.Result{
	{Name: "down_slope", Unit: "1"}, routeSpeeds("down_offset"), routeSpeeds("down_scatter"),
	{Name: "right_slope", Unit: "1"}, routeSpeeds("right_offset"), routeSpeeds("right_scatter"),
	{Name: "left_slope", Unit: "1"}, routeSpeeds("left_offset"), routeSpeeds("left_scatter"),
}

var driftSubjects = []reference.Subject{
	{Name: "route.Fit.At", Func: route.Fit.At, Class: reference.Formula, Args: []reference.Arg{reference.Number("slope", "1", reference.Any, 0.0193), reference.Number("offset", "m/s", reference.Any, 0.01), reference.Number("wind", "m/s", reference.Any, 10)},
		Results: []reference.Result{routeSpeeds("value")},
		Eval: func(in reference.In) (reference.Out, error) {
			return routeOne(route.Fit{Slope: in.F("slope"), Offset: in.F("offset")}.At(in.F("wind"))), nil
		}},
	{Name: "route.Craft.Symmetric", Func: route.Craft.Symmetric, Class: reference.Accessor, Tests: []string{"TestMirrorOnlyWhereTheRowIs"}},
	{Name: "route.Craft.Extrapolated", Func: route.Craft.Extrapolated, Class: reference.Accessor, Tests: []string{"TestExtrapolatedWinds"}},
	{Name: "route.Crafts", Func: route.Crafts, Class: reference.Data, Tests: []string{"TestCraftsAreCopies"}},
	{Name: "route.FindCraft", Func: route.FindCraft, Class: reference.Formula, Args: routeLeewayArgs[:1], Results: routeRowResults, Tests: []string{"TestCraftsAreCopies"},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := route.FindCraft(in.S("craft"))
			if err != nil {
				return nil, err
			}
			out := reference.Out{}
			for name, f := range map[string]route.Fit{"down": c.Downwind, "right": c.Right, "left": c.Left} {
				out[name+"_slope"], out[name+"_offset"], out[name+"_scatter"] = f.Slope, f.Offset, f.Scatter
			}
			return out, nil
		}},
	{Name: "route.Craft.Leeway", Func: route.Craft.Leeway, Class: reference.Formula, Args: routeLeewayArgs, Results: routeLeewayResults, Tests: []string{"TestLeewayByHand", "TestMirrorOnlyWhereTheRowIs"},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := route.FindCraft(in.S("craft"))
			if err != nil {
				return nil, err
			}
			s, err := routeSide(in)
			if err != nil {
				return nil, err
			}
			return routeLeewayOut(in, c.Leeway(route.From(in.F("wind"), in.F("wind_from")), s)), nil
		}},
	{Name: "route.AngleRows", Func: route.AngleRows, Class: reference.Data, Tests: []string{"TestCraftsAreCopies"}},
	{Name: "route.FindAngleRow", Func: route.FindAngleRow, Class: reference.Formula, Args: routeLeewayArgs[:1], Results: []reference.Result{{Name: "multiplier", Unit: "1"}, routeSpeeds("modifier"), routeDegrees("divergence")},
		Eval: func(in reference.In) (reference.Out, error) {
			r, err := route.FindAngleRow(in.S("craft"))
			if err != nil {
				return nil, err
			}
			return reference.Out{"multiplier": r.Multiplier, "modifier": r.Modifier, "divergence": r.Divergence}, nil
		}},
	{Name: "route.AngleRow.Leeway", Func: route.AngleRow.Leeway, Class: reference.Formula, Args: routeLeewayArgs, Results: routeLeewayResults, Tests: []string{"TestTheTwoTablesAgree"},
		Eval: func(in reference.In) (reference.Out, error) {
			r, err := route.FindAngleRow(in.S("craft"))
			if err != nil {
				return nil, err
			}
			s, err := routeSide(in)
			if err != nil {
				return nil, err
			}
			return routeLeewayOut(in, r.Leeway(route.From(in.F("wind"), in.F("wind_from")), s)), nil
		}},
	{Name: "route.MeasuredRows", Func: route.MeasuredRows, Class: reference.Data, Args: []reference.Arg{reference.Text("craft", "outrigger-canoe"), reference.Text("load", "1 person")},
		Results: []reference.Result{{Name: "share", Unit: "1"}}, Tests: []string{"TestCraftsAreCopies"},
		Eval: func(in reference.In) (reference.Out, error) {
			for _, r := range route.MeasuredRows() {
				if r.Name == in.S("craft") && r.Load == in.S("load") {
					return routeOne(r.Share), nil
				}
			}
			return nil, errRouteState
		}},
	{Name: "route.Drift.End", Func: route.Drift.End, Class: reference.Accessor, Tests: []string{"TestPairByHand"}},
	{Name: "route.Drifter.Pair", Func: route.Drifter.Pair, Class: reference.Composed, Tests: []string{"TestPairByHand", "TestDriftSplitsItsSteps", "TestDriftRefuses"}},
	{Name: "route.Drifter.Cloud", Func: route.Drifter.Cloud, Class: reference.Composed, Tests: []string{"TestCloudHasThePublishedScatter", "TestCloudRepeats", "TestGybing", "TestDriftRefuses"}},
	{Name: "route.Cloud.Spread", Func: route.Cloud.Spread, Class: reference.Accessor, Tests: []string{"TestCloudHasThePublishedScatter"}},
}

// routeLeewayRow transcribes one row of the table as nine checks' worth of digits:
// the percent of the slopes and the cm/s of offsets and scatter.
func routeLeewayRow(craft, class string, digits [9]string) []reference.Check {
	var cs []reference.Check
	for i, r := range routeRowResults {
		unit := "cm/s"
		if i%3 == 0 {
			unit = "%"
		}
		cs = append(cs, reference.Check{ID: fmt.Sprintf("leeway-%s-%s", craft, routeHyphens(r.Name)), Subject: "route.FindCraft", In: "craft=" + craft, Result: r.Name, Printed: digits[i], Unit: unit,
			Basis: reference.Table, Source: "SAROPS2011", Locator: class, Tol: 1e-9, Why: "data: the digits themselves"})
	}
	return cs
}

func routeHyphens(s string) string {
	b := []byte(s)
	for i, c := range b {
		if c == '_' {
			b[i] = '-'
		}
	}
	return string(b)
}

// routeManualRow transcribes one row of the manual table.
func routeManualRow(craft, entry, multiplier, knots, angle string) []reference.Check {
	var cs []reference.Check
	for i, r := range []string{"multiplier", "modifier", "divergence"} {
		cs = append(cs, reference.Check{ID: "manual-" + craft + "-" + r, Subject: "route.FindAngleRow", In: "craft=" + craft, Result: r, Printed: []string{multiplier, knots, angle}[i], Unit: []string{"", "kn", ""}[i],
			Basis: reference.Table, Source: "USCG-Addendum", Locator: "manual leeway table, " + entry, Tol: 1e-9, Why: "data: the digits themselves"})
	}
	return cs
}

var driftChecks = routeConcat(
	routeLeewayRow("person-unknown", "PIW-1", [9]string{"0.96", "0", "12", "0.54", "0", "9.4", "-0.54", "0", "9.4"}),
	routeLeewayRow("person-survival-suit", "PIW-4", [9]string{"1.71", "1.12", "3.93", "1.36", "-3.3", "1.71", "-0.13", "-2.65", "1.62"}),
	routeLeewayRow("sea-kayak", "PERSON-POWERED-VESSEL-1", [9]string{"1.16", "11.12", "4.12", "0.41", "0", "4.39", "-0.41", "0", "4.39"}),
	routeLeewayRow("surfboard", "PERSON-POWERED-VESSEL-2", [9]string{"1.93", "0", "8.3", "0.51", "0", "6.7", "-0.51", "0", "6.7"}),
	routeLeewayRow("windsurfer", "PERSON-POWERED-VESSEL-3", [9]string{"2.25", "5.03", "2.5", "0.69", "-1.30", "2.96", "-0.69", "1.30", "2.96"}),
	routeLeewayRow("skiff-v", "SKIFF-2", [9]string{"2.87", "3.98", "3.33", "0.32", "-2.93", "2.53", "-0.62", "1.03", "3.05"}),
	routeLeewayRow("person-vertical", "PIW-2", [9]string{"0.48", "0", "8.3", "0.15", "0", "6.7", "-0.15", "0", "6.7"}),
	routeLeewayRow("person-sitting", "PIW-3", [9]string{"1.6", "-3.98", "2.42", "0.13", "0.33", "2.11", "-0.13", "-0.33", "2.11"}),
	routeLeewayRow("skiff-flat", "SKIFF-1", [9]string{"3.15", "0", "2.2", "1.29", "0", "2.2", "-1.29", "0", "2.2"}),
	routeLeewayRow("skiff-swamped", "SKIFF-3", [9]string{"1.65", "0", "3.1", "0.39", "0", "2.9", "-0.39", "0", "2.9"}),
	routeLeewayRow("raft-deep-ballast-drogue", "LIFE-RAFT-DB-15", [9]string{"1.91", "0.9", "1.6", "0.78", "-3.6", "3.6", "-0.47", "-0.1", "3.9"}),
	routeLeewayRow("raft-shallow-ballast", "LIFE-RAFT-SB-6", [9]string{"2.68", "0", "12", "1.1", "0", "9.4", "-1.1", "0", "9.4"}),
	routeLeewayRow("raft-no-ballast", "LIFE-RAFT-NB-1", [9]string{"3.7", "0", "12", "1.98", "0", "9.4", "-1.98", "0", "9.4"}),
	routeManualRow("person-unknown", "PIW - Unknown", "0.011", "0.07", "30"),
	routeManualRow("sea-kayak", "Sea Kayak with person on aft deck", "0.011", "0.24", "15"),
	routeManualRow("surfboard", "Surf Board with person", "0.020", "0", "15"),
	routeManualRow("windsurfer", "Wind Surfer with person, mast/sail in water", "0.023", "0.10", "12"),
	routeManualRow("person-sitting", "PIW - Sitting", "0.012", "0", "18"),
	routeManualRow("person-survival-suit", "PIW - Horizontal - Survival Suit", "0.014", "0.1", "30"),
	routeManualRow("person-face-down", "PIW - Horizontal - Deceased", "0.015", "0.08", "30"),
	routeManualRow("skiff-flat", "Skiff, flat bottom", "0.034", "0.04", "22"),
	routeManualRow("skiff-v", "Skiff, V-hull, standard", "0.030", "0.08", "15"),
	routeManualRow("skiff-swamped", "Skiff, V-hull, swamped", "0.017", "0", "15"),
	routeManualRow("raft-no-ballast", "Life raft, no ballast, unknown", "0.042", "0.03", "28"),
	routeManualRow("raft-deep-ballast", "Life raft, deep ballast, canopied", "0.030", "0.02", "13"),
	[]reference.Check{
		{ID: "brushett-canoe", Subject: "route.MeasuredRows", In: "craft=outrigger-canoe, load=1 person", Printed: "2.40", Unit: "%", Basis: reference.Printed, Source: "Brushett2014", Locator: "abstract"},
		{ID: "brushett-scooter", Subject: "route.MeasuredRows", In: "craft=water-scooter, load=1 person", Printed: "4.24", Unit: "%", Basis: reference.Printed, Source: "Brushett2014", Locator: "abstract"},
		{ID: "brushett-skiff-light", Subject: "route.MeasuredRows", In: "craft=skiff-5.8m, load=1 person", Printed: "7.71", Unit: "%", Basis: reference.Printed, Source: "Brushett2014", Locator: "abstract"},
		{ID: "brushett-skiff-full", Subject: "route.MeasuredRows", In: "craft=skiff-5.8m, load=13 persons", Printed: "4.40", Unit: "%", Basis: reference.Printed, Source: "Brushett2014", Locator: "abstract"},
		{ID: "fit-line", Subject: "route.Fit.At", In: "slope=0.02, offset=0.1, wind=10", Printed: "0.3", Basis: reference.Exact},
		{ID: "leeway-survival-suit-right", Subject: "route.Craft.Leeway", In: "craft=person-survival-suit, side=right, wind=10, wind_from=180", Result: "east", Printed: "10.3", Unit: "cm/s", Basis: reference.Peer, Source: "OpenDrift", Locator: "test of the crosswind direction, PIW-4"},
		{ID: "leeway-survival-suit-left", Subject: "route.Craft.Leeway", In: "craft=person-survival-suit, side=left, wind=10, wind_from=180", Result: "east", Printed: "-3.95", Unit: "cm/s", Basis: reference.Peer, Source: "OpenDrift", Locator: "test of the crosswind direction, PIW-4"},
		{ID: "leeway-escape-raft-right", Subject: "route.Craft.Leeway", In: "craft=raft-escape, side=right, wind=10, wind_from=180", Result: "east", Printed: "12.0", Unit: "cm/s", Basis: reference.Peer, Source: "OpenDrift", Locator: "gallery, LIFE-RAFT-SB-10: 10.4 km east in 24 h", Note: "10.4 km in a day is 12.0 cm/s"},
		{ID: "leeway-escape-raft-left", Subject: "route.Craft.Leeway", In: "craft=raft-escape, side=left, wind=10, wind_from=180", Result: "east", Printed: "-5.2", Unit: "cm/s", Basis: reference.Peer, Source: "OpenDrift", Locator: "gallery, LIFE-RAFT-SB-10: 4.5 km west in 24 h", Note: "4.5 km in a day is 5.2 cm/s"},
		{ID: "leeway-surfboard-both-tables", Subject: "route.Craft.Leeway", In: "craft=surfboard, side=right, wind=100 kn, wind_from=0", Result: "speed", Printed: "2.00", Unit: "kn", Basis: reference.Table, Source: "USCG-Addendum", Locator: "manual leeway table, Surf Board with person: multiplier 0.020", Note: "the two tables are independent prints: hypot(1.93, 0.51) = 1.996 %"},
		{ID: "manual-unknown-20kt", Subject: "route.AngleRow.Leeway", In: "craft=person-unknown, side=left, wind=20 kn, wind_from=90", Result: "speed", Printed: "0.29", Unit: "kn", Basis: reference.Table, Source: "USCG-Addendum", Locator: "manual leeway table, PIW - Unknown, at 20 knots"},
		{ID: "manual-kayak-20kt", Subject: "route.AngleRow.Leeway", In: "craft=sea-kayak, side=right, wind=20 kn, wind_from=90", Result: "speed", Printed: "0.46", Unit: "kn", Basis: reference.Table, Source: "USCG-Addendum", Locator: "manual leeway table, Sea Kayak, at 20 knots"},
		{ID: "manual-windsurfer-20kt", Subject: "route.AngleRow.Leeway", In: "craft=windsurfer, side=right, wind=20 kn, wind_from=90", Result: "speed", Printed: "0.56", Unit: "kn", Basis: reference.Table, Source: "USCG-Addendum", Locator: "manual leeway table, Wind Surfer, at 20 knots"},
	},
)
