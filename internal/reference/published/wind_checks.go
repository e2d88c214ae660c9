package published

import (
	"fmt"
	"slices"

	ref "followingsea.example/internal/reference"
)

var windChecks = slices.Concat(windTables, windPrints, windLimits, windSpeeds, airSea)

// windTables are the rows of printed tables.
var windTables = func() []ref.Check {
	var out []ref.Check
	add := func(c ref.Check) { out = append(out, c) }

	// Code table 1100: classes in whole knots, upper limits in m/s, classes in
	// km/h, heights on the open sea.
	knots := []string{"0", "1", "4", "7", "11", "17", "22", "28", "34", "41", "48", "56", "64"}
	knotTop := []string{"0", "3", "6", "10", "16", "21", "27", "33", "40", "47", "55", "63"}
	metric := []string{"0.2", "1.5", "3.3", "5.4", "7.9", "10.7", "13.8", "17.1", "20.7", "24.4", "28.4", "32.6"}
	metricLow := []string{"0", "0.3", "1.6", "3.4", "5.5", "8.0", "10.8", "13.9", "17.2", "20.8", "24.5", "28.5", "32.7"}
	kmh := []string{"0", "1", "6", "12", "20", "29", "39", "50", "62", "75", "89", "103", "118"}
	kmhTop := []string{"", "5", "11", "19", "28", "38", "49", "61", "74", "88", "102", "117"}
	probable := []string{"", "0.1", "0.2", "0.6", "1.0", "2.0", "3.0", "4.0", "5.5", "7.0", "9.0", "11.5"}
	maximum := []string{"", "0.1", "0.3", "1.0", "1.5", "2.5", "4.0", "5.5", "7.5", "10.0", "12.5", "16.0"}
	meanKnots := []string{"", "2", "5", "9", "13", "19", "24", "30", "37", "44", "52", "60"}
	for f := range 13 {
		force := fmt.Sprint(f)
		row := func(subject, id, in, result, printed, unit, locator string) {
			add(ref.Check{ID: fmt.Sprintf("beaufort-%s-%d", id, f), Subject: subject, In: in, Result: result, Printed: printed, Unit: unit,
				Basis: ref.Table, Source: "WMO-1100", Locator: locator})
		}
		row("wind.Beaufort", "knots-from", "speed="+knots[f]+" kn", "", force, "", "column knots, lower limit")
		row("wind.BeaufortMetric", "metric-from", "speed="+metricLow[f]+" m/s", "", force, "", "column m/s, lower limit")
		row("wind.Force.KilometresAnHour", "kmh-from", "force="+force, "lo", kmh[f], "", "column km/h")
		if f < 12 {
			row("wind.Beaufort", "knots-to", "speed="+knotTop[f]+" kn", "", force, "", "column knots, upper limit")
			row("wind.BeaufortMetric", "metric-to", "speed="+metric[f]+" m/s", "", force, "", "column m/s, upper limit")
			add(ref.Check{ID: fmt.Sprintf("beaufort-formula-%d", f), Subject: "wind.BeaufortSpeed", In: fmt.Sprintf("number=%d.5", f), Printed: metric[f], Unit: "m/s",
				Basis: ref.Table, Source: "WMO-1100", Locator: "column m/s, upper limit", Tol: 0.1,
				Why: "the printed limits are the formula at B + 1/2 cut, not rounded, to a tenth; all twelve are"})
		}
		if f > 0 && f < 12 {
			row("wind.Force.KilometresAnHour", "kmh-to", "force="+force, "hi", kmhTop[f], "", "column km/h")
			row("wind.Force.OpenSeaHeight", "probable", "force="+force, "probable", probable[f], "m", "column probable wave height")
			row("wind.Force.OpenSeaHeight", "maximum", "force="+force, "maximum", maximum[f], "m", "column probable maximum wave height")
			add(ref.Check{ID: fmt.Sprintf("beaufort-mean-%d", f), Subject: "wind.BeaufortSpeed", In: "number=" + force, Printed: meanKnots[f], Unit: "kn",
				Basis: ref.Table, Source: "WMO-1100", Locator: "column mean wind speed", Tol: 0.85,
				Why: "the printed means are the middles of the classes in knots, not the formula; the worst is force 5, 0.83 kn off"})
			add(ref.Check{ID: fmt.Sprintf("beaufort-number-%d", f), Subject: "wind.BeaufortNumber", In: "speed=" + meanKnots[f] + " kn", Printed: force,
				Basis: ref.Table, Source: "WMO-1100", Locator: "column mean wind speed", Tol: 0.2,
				Why: "the printed means are the middles of the classes in knots, not the formula"})
		}
	}
	for _, r := range []struct{ force, p, m string }{{"2", "0.2", "0.3"}, {"4", "1.0", "1.5"}, {"5", "2.0", "2.5"}, {"6", "3.0", "4.0"}, {"8", "5.5", "7.5"}, {"10", "9.0", "12.5"}} {
		add(ref.Check{ID: "beaufort-great-lakes-" + r.force, Subject: "wind.Force.OpenSeaHeight", In: "force=" + r.force, Result: "probable", Printed: r.p, Unit: "m",
			Basis: ref.Table, Source: "NWS-GreatLakes", Locator: "Beaufort wind scale", Note: "the page prints them for lakes, where the fetch seldom allows them"})
		add(ref.Check{ID: "beaufort-great-lakes-maximum-" + r.force, Subject: "wind.Force.OpenSeaHeight", In: "force=" + r.force, Result: "maximum", Printed: r.m, Unit: "m",
			Basis: ref.Table, Source: "NWS-GreatLakes", Locator: "Beaufort wind scale"})
	}

	// Code table 3700: the exact bound belongs to the lower figure.
	for _, r := range []struct{ hs, figure, words string }{
		{"0", "0", "calm (glassy)"}, {"0.1", "1", "calm (rippled)"}, {"0.5", "2", "smooth (wavelets)"}, {"1.25", "3", "slight"}, {"2.5", "4", "moderate"},
		{"4", "5", "rough"}, {"6", "6", "very rough"}, {"9", "7", "high"}, {"14", "8", "very high"}, {"15", "9", "phenomenal"},
	} {
		add(ref.Check{ID: "sea-state-" + r.figure, Subject: "wind.SeaStateOf", In: "hs=" + r.hs + " m", Result: "figure", Printed: r.figure, Basis: ref.Table, Source: "WMO-3700", Locator: "Table 5.4, p. 92"})
		add(ref.Check{ID: "sea-state-words-" + r.figure, Subject: "wind.SeaStateOf", In: "hs=" + r.hs + " m", Result: "words", Printed: r.words, Basis: ref.Table, Source: "WMO-3700", Locator: "Table 5.4, p. 92"})
	}

	// Warning levels.
	for _, r := range []struct{ name, id, mean, upper, gust string }{
		{"gale", "gale", "34", "40", "43"}, {"severe gale", "severe-gale", "41", "47", "52"}, {"storm", "storm", "48", "55", "61"}, {"violent storm", "violent-storm", "56", "63", "69"},
	} {
		for _, q := range []struct{ result, printed string }{{"mean", r.mean}, {"upper", r.upper}, {"gust", r.gust}} {
			add(ref.Check{ID: "uk-" + r.id + "-" + q.result, Subject: "wind.WarningLevels", In: "name=" + r.name + ", region=any", Result: q.result, Printed: q.printed, Unit: "kn",
				Basis: ref.Table, Source: "MetOffice-MarineGlossary", Locator: "gale warnings"})
		}
	}
	for _, r := range []struct{ region, id, mean, feet string }{
		{"Maine", "atlantic", "25", "5"}, {"Superior", "lakes", "22", "4"}, {"Gulf of Mexico", "gulf", "20", "7"}, {"Pacific coast", "pacific", "21", "10"},
		{"Alaska", "alaska", "23", ""}, {"American Samoa", "samoa", "25", ""}, {"Mariana", "marianas", "22", ""},
	} {
		in := "name=small craft advisory, region=" + r.region
		add(ref.Check{ID: "small-craft-" + r.id, Subject: "wind.WarningLevels", In: in, Result: "mean", Printed: r.mean, Unit: "kn", Basis: ref.Table, Source: "NWS-JetStream", Locator: "table by region"})
		add(ref.Check{ID: "small-craft-upper-" + r.id, Subject: "wind.WarningLevels", In: in, Result: "upper", Printed: "33", Unit: "kn", Basis: ref.Table, Source: "NWS-JetStream", Locator: "table by region"})
		if r.feet != "" {
			add(ref.Check{ID: "small-craft-sea-" + r.id, Subject: "wind.WarningLevels", In: in, Result: "sea", Printed: r.feet, Unit: "ft", Basis: ref.Table, Source: "NWS-JetStream", Locator: "table by region"})
		}
	}
	for _, r := range []struct{ name, id, mean string }{{"gale warning", "gale", "34"}, {"storm warning", "storm", "48"}, {"hurricane force wind warning", "hurricane", "64"}} {
		add(ref.Check{ID: "nws-" + r.id, Subject: "wind.WarningLevels", In: "name=" + r.name + ", region=any", Result: "mean", Printed: r.mean, Unit: "kn", Basis: ref.Table, Source: "NWS-KeyWest", Locator: "definitions"})
	}
	return out
}()

const (
	dial      = "read off the dial of a flight computer"
	plotted   = "plotted on a board"
	truncated = "the source truncates where it should round; computed %s"
)

// windPrints are worked examples.
var windPrints = []ref.Check{
	// Extremes.
	{ID: "extreme-5-minutes", Subject: "wind.ExtremeRatio", In: "seconds=5 min", Printed: "1.09", Basis: ref.Chart, Source: "CEM-II-2", Locator: "Example Problem II-2-1, p. II-2-4, from Figure II-2-1"},
	{ID: "extreme-90-minutes", Subject: "wind.ExtremeRatio", In: "seconds=90 min", Printed: "0.9735", Basis: ref.Printed, Source: "CEM-II-2", Locator: "Example Problem II-2-2, p. II-2-6"},
	{ID: "extreme-3-hours", Subject: "wind.ExtremeRatio", In: "seconds=3 h", Printed: "0.9284", Basis: ref.Printed, Source: "CEM-II-2", Locator: "Example Problem II-2-2, p. II-2-6"},
	{ID: "extreme-10-minutes", Subject: "wind.ExtremeRatio", In: "seconds=10 min", Printed: "1.05", Basis: ref.Table, Source: "CEM-II-8", Locator: "Table II-8-8, in Example Problem II-8-1"},
	{ID: "extreme-45-seconds", Subject: "wind.ExtremeRatio", In: "seconds=45 s", Printed: "1.28", Basis: ref.Chart, Source: "ASCE-C6-1", Locator: "step 2, lower curve at 45 s"},
	{ID: "extreme-hour", Subject: "wind.ExtremeRatio", In: "seconds=1 h", Printed: "1", Basis: ref.Exact},
	{ID: "extreme-cem-ii-2-1", Subject: "wind.ExtremeToExtreme", In: "speed=20.3 m/s, from=5 min, to=1 h", Printed: "18.6", Unit: "m/s", Basis: ref.Printed, Source: "CEM-II-2", Locator: "Example Problem II-2-1, p. II-2-4"},
	{ID: "extreme-cem-ii-2-2", Subject: "wind.ExtremeToExtreme", In: "speed=19.9 m/s, from=3 h, to=90 min", Printed: "20.8", Unit: "m/s", Basis: ref.Printed, Source: "CEM-II-2", Locator: "Example Problem II-2-2, p. II-2-6",
		Tol: 0.1, Why: fmt.Sprintf(truncated, "20.87"), Note: "erratum: its ratio 0.9735/0.9284 is printed 1.048, it is 1.0486; both are truncations"},
	{ID: "extreme-cem-ii-8-1-25-year", Subject: "wind.ExtremeToExtreme", In: "speed=26.5 m/s, from=1 h, to=10 min", Printed: "27.8", Unit: "m/s", Basis: ref.Printed, Source: "CEM-II-8", Locator: "Example Problem II-8-1, option 3, p. II-8-24"},
	{ID: "extreme-cem-ii-8-1-50-year", Subject: "wind.ExtremeToExtreme", In: "speed=27.9 m/s, from=1 h, to=10 min", Printed: "29.3", Unit: "m/s", Basis: ref.Printed, Source: "CEM-II-8", Locator: "Example Problem II-8-1, option 3, p. II-8-24"},
	{ID: "extreme-fastest-mile-25-year", Subject: "wind.ExtremeToExtreme", In: "speed=34.0 m/s, from=47.33 s, to=1 h", Printed: "26.5", Unit: "m/s", Basis: ref.Printed, Source: "CEM-II-8", Locator: "Example Problem II-8-1, option 3, p. II-8-24",
		Tol: 0.3, Why: "the source multiplies by 0.78 from a table of two digits (Table II-8-7), the formula's ratio is 0.787"},
	{ID: "extreme-fastest-mile-50-year", Subject: "wind.ExtremeToExtreme", In: "speed=35.8 m/s, from=44.95 s, to=1 h", Printed: "27.9", Unit: "m/s", Basis: ref.Printed, Source: "CEM-II-8", Locator: "Example Problem II-8-1, option 3, p. II-8-24",
		Tol: 0.15, Why: "the source multiplies by 0.78 from a table of two digits (Table II-8-7), the formula's ratio is 0.783"},
	{ID: "fastest-mile-80-mph", Subject: "wind.FastestMileTime", In: "speed=80 mph", Printed: "45", Unit: "s", Basis: ref.Printed, Source: "ASCE-C6-1", Locator: "step 1"},
	{ID: "durst-45-seconds", Subject: "wind.ExtremeRatioDurst", In: "seconds=45 s", Printed: "1.28", Basis: ref.Chart, Source: "ASCE-C6-1", Locator: "step 2, lower curve at 45 s"},
	{ID: "durst-3-seconds", Subject: "wind.ExtremeRatioDurst", In: "seconds=3 s", Printed: "1.53", Basis: ref.Chart, Source: "ASCE-C6-1", Locator: "step 5, lower curve at 3 s", Tol: 0.015, Why: "a reading of the curve that the fit follows, to 1 %"},
	{ID: "hurricane-2-seconds", Subject: "wind.ExtremeRatioHurricane", In: "seconds=2 s", Result: "over_ten_minutes", Printed: "1.55", Basis: ref.Chart, Source: "Yu2009", Locator: "Introduction, citing Krayer and Marshall (1992)",
		Tol: 0.06, Why: "printed with \"about\"; the fit to the curve and the tables behind it differ by up to 4 %"},

	// Height.
	{ID: "log-hub-height", Subject: "wind.Log", In: "speed=10 m/s, from=10 m, to=80 m, roughness=0.03 m", Printed: "13.58", Unit: "m/s", Basis: ref.Printed, Source: "NovaProfile", Locator: "Example 1",
		Note: "the power-law line beside it, 13.49, takes 8^0.143 for 1.349; it is 1.346 and the result 13.46"},
	{ID: "log-urban", Subject: "wind.Log", In: "speed=5 m/s, from=20 m, to=50 m, roughness=1.0 m", Printed: "6.53", Unit: "m/s", Basis: ref.Printed, Source: "NovaProfile", Locator: "Example 2"},
	{ID: "power-urban", Subject: "wind.Power", In: "speed=5 m/s, from=20 m, to=50 m, p=0.30", Printed: "6.58", Unit: "m/s", Basis: ref.Printed, Source: "NovaProfile", Locator: "Example 2"},
	{ID: "power-double", Subject: "wind.Power", In: "speed=1 m/s, from=5 m, to=10 m, p=0.5", Printed: "1.4142135623730951", Unit: "m/s", Basis: ref.Exact},
	{ID: "large-pond-8", Subject: "wind.LargePond1981", In: "speed=8 m/s", Printed: "0.00114", Basis: ref.Printed, Source: "Emeis2013", Locator: "eq. 5.5, p. 107"},
	{ID: "wu-capped-5", Subject: "wind.WuCapped", In: "speed=5 m/s", Printed: "0.0012875", Basis: ref.Printed, Source: "ScientiMate", Locator: "wind drag, method Wu, below 7.5 m/s"},
	{ID: "charnock-coastal", Subject: "wind.Charnock.Roughness", In: "alpha=0.018, gravity=9.81, karman=0.4, air=15 C, friction=0.33 m/s", Result: "rough_flow", Printed: "0.00018", Unit: "m", Basis: ref.Printed, Source: "Emeis2013", Locator: "p. 107, below eq. 5.1",
		Tol: 0.00003, Why: "a misprint in the source: 0.018 · 0.33² / 9.81 is 0.00020", Note: "erratum: 0.00020; 0.00018 would be a friction speed of 0.313 m/s"},

	// Apparent and true wind.
	{ID: "true-wind-maneuvering-board", Subject: "wind.TrueWind", In: "speed=30 kn, from=280, moving_speed=18 kn, moving_toward=240", Result: "from", Printed: "315", Basis: ref.Printed, Source: "NGA-Pub1310", Locator: "true wind example, solution",
		Tol: 0.6, Why: plotted, Note: "ship 240 at 18 kn, apparent wind 040 relative; the ship's speed is inferred from the answer, only course, apparent wind and answer were read"},
	{ID: "true-wind-maneuvering-board-speed", Subject: "wind.TrueWind", In: "speed=30 kn, from=280, moving_speed=18 kn, moving_toward=240", Result: "speed", Printed: "20", Unit: "kn", Basis: ref.Printed, Source: "NGA-Pub1310", Locator: "true wind example, solution"},
	{ID: "true-wind-deck-license", Subject: "wind.TrueWind", In: "speed=20 kn, from=110, moving_speed=22 kn, moving_toward=180", Result: "from", Printed: "51", Basis: ref.Printed, Source: "USCG-Deck", Locator: "course 180 at 22 kn, apparent wind 70 degrees off the port bow at 20 kn"},
	{ID: "true-wind-deck-license-speed", Subject: "wind.TrueWind", In: "speed=20 kn, from=110, moving_speed=22 kn, moving_toward=180", Result: "speed", Printed: "24.0", Unit: "kn", Basis: ref.Printed, Source: "USCG-Deck", Locator: "course 180 at 22 kn, apparent wind 70 degrees off the port bow at 20 kn",
		Tol: 0.2, Why: "the offered answers are a plot's; computed 24.14"},
	{ID: "true-wind-deck-license-starboard", Subject: "wind.TrueWind", In: "speed=15 kn, from=55, moving_speed=17 kn, moving_toward=15", Result: "speed", Printed: "11", Unit: "kn", Basis: ref.Printed, Source: "USCG-Deck", Locator: "course 15 at 17 kn, apparent wind 40 degrees off the starboard bow at 15 kn"},
	{ID: "true-wind-squared-paper", Subject: "wind.TrueWind", In: "speed=10 kn, from=60, moving_speed=5 kn, moving_toward=0", Result: "speed", Printed: "8.66", Unit: "kn", Basis: ref.Exact,
		Tol: 0.005, Why: "half of √3 times 10, to the printed digits"},
	{ID: "true-wind-squared-paper-from", Subject: "wind.TrueWind", In: "speed=10 kn, from=60, moving_speed=5 kn, moving_toward=0", Result: "from", Printed: "90", Basis: ref.Exact},
	{ID: "wind-from-track-and-heading", Subject: "wind.TrueWind", In: "speed=160 kn, from=10, moving_speed=155 kn, moving_toward=0", Result: "from", Printed: "84.717", Basis: ref.Printed, Source: "Driftcorr", Locator: "driftvel, example"},
	{ID: "wind-from-track-and-heading-speed", Subject: "wind.TrueWind", In: "speed=160 kn, from=10, moving_speed=155 kn, moving_toward=0", Result: "speed", Printed: "27.902", Unit: "kn", Basis: ref.Printed, Source: "Driftcorr", Locator: "driftvel, example"},
	{ID: "wind-from-dial", Subject: "wind.TrueWind", In: "speed=180 mph, from=160, moving_speed=144 mph, moving_toward=175", Result: "from", Printed: "118", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "lecture 2, problem 5"},
	{ID: "wind-from-dial-speed", Subject: "wind.TrueWind", In: "speed=180 mph, from=160, moving_speed=144 mph, moving_toward=175", Result: "speed", Printed: "55", Unit: "mph", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "lecture 2, problem 5"},
	{ID: "wind-from-army-computer", Subject: "wind.TrueWind", In: "speed=165 mph, from=104, moving_speed=146 mph, moving_toward=94", Result: "from", Printed: "154", Basis: ref.Printed, Source: "AAF-Computer", Locator: "par. 39, Example 16, p. 8"},
	{ID: "wind-from-army-computer-speed", Subject: "wind.TrueWind", In: "speed=165 mph, from=104, moving_speed=146 mph, moving_toward=94", Result: "speed", Printed: "34", Unit: "mph", Basis: ref.Printed, Source: "AAF-Computer", Locator: "par. 39, Example 16, p. 8",
		Tol: 1, Why: "drawn on a graphic computer; computed 33.06"},
	{ID: "relative-wind-over-tide", Subject: "wind.Wind.Relative", In: "speed=10 kn, from=0, moving_speed=4 kn, moving_toward=90", Result: "from", Printed: "22", Basis: ref.Printed, Source: "Stevens", Locator: "answer, wind felt by a boat drifting in the tide"},
	{ID: "relative-wind-over-tide-speed", Subject: "wind.Wind.Relative", In: "speed=10 kn, from=0, moving_speed=4 kn, moving_toward=90", Result: "speed", Printed: "10.8", Unit: "kn", Basis: ref.Printed, Source: "Stevens", Locator: "answer, wind felt by a boat drifting in the tide"},

	// Components on a course.
	{ID: "components-190-left", Subject: "wind.Wind.On", In: "speed=20 kn, from=50, course=190", Result: "from_left", Printed: "13", Unit: "kn", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "slides, steps 5 to 7"},
	{ID: "components-190-tail", Subject: "wind.Wind.On", In: "speed=20 kn, from=50, course=190", Result: "tail", Printed: "16", Unit: "kn", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "slides, steps 5 to 7", Tol: 1, Why: dial + "; computed 15.3"},
	{ID: "components-130-head", Subject: "wind.Wind.On", In: "speed=40 mph, from=100, course=130", Result: "head", Printed: "35", Unit: "mph", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "lecture 1, problem 3"},
	{ID: "components-175-head", Subject: "wind.Wind.On", In: "speed=40 mph, from=100, course=175", Result: "head", Printed: "10", Unit: "mph", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "lecture 1, problem 4"},
	{ID: "components-175-inverse-head", Subject: "wind.Wind.On", In: "speed=55 mph, from=118, course=175", Result: "head", Printed: "30", Unit: "mph", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "lecture 2, problem 5"},
	{ID: "components-175-inverse-cross", Subject: "wind.Wind.On", In: "speed=55 mph, from=118, course=175", Result: "from_left", Printed: "47", Unit: "mph", Basis: ref.Printed, Source: "CR3-Lecture", Locator: "lecture 2, problem 5", Tol: 1, Why: dial + "; computed 46.1"},
	{ID: "components-runway-14-cross", Subject: "wind.Wind.On", In: "speed=20 kn, from=180, course=140", Result: "from_right", Printed: "13", Unit: "kn", Basis: ref.Printed, Source: "Carriere2004", Locator: "first example"},
	{ID: "components-runway-14-head", Subject: "wind.Wind.On", In: "speed=20 kn, from=180, course=140", Result: "head", Printed: "15", Unit: "kn", Basis: ref.Printed, Source: "Carriere2004", Locator: "first example"},
	{ID: "components-runway-09-cross", Subject: "wind.Wind.On", In: "speed=15 kn, from=70, course=90", Result: "from_left", Printed: "5", Unit: "kn", Basis: ref.Printed, Source: "Carriere2004", Locator: "second example"},
	{ID: "components-runway-09-head", Subject: "wind.Wind.On", In: "speed=15 kn, from=70, course=90", Result: "head", Printed: "14", Unit: "kn", Basis: ref.Printed, Source: "Carriere2004", Locator: "second example"},
	{ID: "components-abeam", Subject: "wind.Wind.On", In: "speed=10 m/s, from=90, course=0", Result: "off_stern", Printed: "90", Basis: ref.Exact},
	{ID: "components-astern", Subject: "wind.Wind.On", In: "speed=10 m/s, from=200, course=20", Result: "tail", Printed: "10", Basis: ref.Exact},

	// Vectors: the angle of a vector toward the east is a wind from 270.
	{ID: "meteorological-angle", Subject: "wind.Velocity.Wind", In: "east=10 m/s, north=0 m/s", Result: "from", Printed: "270", Basis: ref.Printed, Source: "CEM-II-2", Locator: "eq. II-2-14, Figure II-2-15"},
	{ID: "velocity-5-at-200-east", Subject: "wind.Wind.Velocity", In: "speed=5 m/s, from=200", Result: "east", Printed: "1.7101007", Basis: ref.Peer, Source: "HUGS", Locator: "test of get_wind_components, 5 at 200"},
	{ID: "velocity-5-at-200-north", Subject: "wind.Wind.Velocity", In: "speed=5 m/s, from=200", Result: "north", Printed: "4.698463103929543", Basis: ref.Peer, Source: "HUGS", Locator: "test of get_wind_components, 5 at 200"},
	{ID: "velocity-10-at-270", Subject: "wind.Wind.Velocity", In: "speed=10 m/s, from=270", Result: "east", Printed: "10", Basis: ref.Printed, Source: "CEM-II-2", Locator: "eq. II-2-14, Figure II-2-15"},

	// Direction statistics.
	{ID: "mean-direction-batschelet", Subject: "wind.MeanDirection", In: "from=[-20 -10 -10 -10 -10 -10 -10 -10 0 0]", Result: "signed", Printed: "-9.000615", Basis: ref.Printed, Source: "Batschelet1981", Locator: "section 6.2, p. 99 data, as printed with the R package circular"},
	{ID: "mean-direction-through-north", Subject: "wind.MeanDirection", In: "from=[355 5 15]", Result: "mean", Printed: "5", Basis: ref.Printed, Source: "DirectionalWiki", Locator: "the difference between linear and circular statistics"},
	{ID: "mean-direction-10-20-30", Subject: "wind.MeanDirection", In: "from=[10 20 30]", Result: "mean", Printed: "20", Basis: ref.Printed, Source: "DirectionalWiki", Locator: "the difference between linear and circular statistics"},
	{ID: "mean-direction-roulette", Subject: "wind.MeanDirection", In: "from=[43 45 52 61 75 88 88 279 357]", Result: "mean", Printed: "51", Basis: ref.Memory, Source: "Mardia2000", Locator: "example 2.1"},
	{ID: "resultant-roulette", Subject: "wind.ResultantLength", In: "from=[43 45 52 61 75 88 88 279 357]", Printed: "0.711", Basis: ref.Memory, Source: "Mardia2000", Locator: "example 2.1"},
	{ID: "resultant-right-angle", Subject: "wind.ResultantLength", In: "from=[0 90]", Printed: "0.7071067811865476", Basis: ref.Exact},
	{ID: "circular-deviation-right-angle", Subject: "wind.CircularDeviation", In: "from=[0 90]", Printed: "47.701865", Basis: ref.Exact, Tol: 1e-6, Why: "180/π √(ln 2), to the digits given"},
	{ID: "angular-deviation-uniform", Subject: "wind.AngularDeviation", In: "from=[0 90 180 270]", Printed: "81", Basis: ref.Printed, Source: "Campbell-Wind", Locator: "standard deviation of direction, 81 (1 − U/S)^½, at U = 0"},
	{ID: "yamartino-uniform", Subject: "wind.Yamartino", In: "from=[0 120 240]", Printed: "103.9", Basis: ref.Exact, Tol: 0.05, Why: "180/√3, the deviation of the uniform circle, to the digits given"},
	{ID: "yamartino-constant", Subject: "wind.Yamartino", In: "from=[0 120 240]", Printed: "103.923", Basis: ref.Printed, Source: "Yamartino1984", Locator: "90 (1 + 0.1547), as quoted", Tol: 0.01, Why: "the constant is printed to four digits"},
	{ID: "scalar-direction-constant", Subject: "wind.ScalarDirection", In: "from=[350 0 10]", Result: "mean", Printed: "0", Basis: ref.Exact},
	{ID: "scalar-direction-deviation", Subject: "wind.ScalarDirection", In: "from=[355 5]", Result: "deviation", Printed: "5", Basis: ref.Exact},
	{ID: "combined-deviation", Subject: "wind.CombineDeviations", In: "parts=[3 4 3 4]", Printed: "3.5355339059327378", Basis: ref.Exact},
	{ID: "average-north-west-north-east", Subject: "wind.Average", In: "speed=[5 10] mph, from=[315 45]", Result: "vector_from", Printed: "18.43", Basis: ref.Printed, Source: "KeithBC", Locator: "north-west at 5 and north-east at 10"},
	{ID: "gust-factor-milwaukee", Subject: "wind.GustFactor", In: "gust=16 mph, mean=10 mph", Printed: "1.6", Basis: ref.Printed, Source: "Harris2018", Locator: "a gust factor of 1.6 turns 10 mph into 16 mph"},
	{ID: "average-right-angle", Subject: "wind.Average", In: "speed=[3 4], from=[0 90]", Result: "vector_speed", Printed: "2.5", Basis: ref.Exact},
	{ID: "average-steadiness", Subject: "wind.Average", In: "speed=[3 4], from=[0 90]", Result: "steadiness", Printed: "5/7", Basis: ref.Exact},
	{ID: "veer-south-west-to-west", Subject: "wind.TurnOf", In: "from_a=225, from_b=270", Result: "kind", Printed: "veer", Basis: ref.Printed, Source: "MetOffice-MarineGlossary", Locator: "veering: clockwise, SW to W"},
	{ID: "back-west-to-south-west", Subject: "wind.TurnOf", In: "from_a=270, from_b=225", Result: "kind", Printed: "back", Basis: ref.Printed, Source: "MetOffice-MarineGlossary", Locator: "backing: anticlockwise"},
	{ID: "turn-through-north", Subject: "wind.TurnOf", In: "from_a=350, from_b=10", Result: "degrees", Printed: "20", Basis: ref.Exact},
	{ID: "turn-reversal", Subject: "wind.TurnOf", In: "from_a=10, from_b=190", Result: "kind", Printed: "reversal", Basis: ref.Exact},
	{ID: "gust-10-knots", Subject: "wind.ReportableGust", In: "peak=20 kn, lull=10 kn", Printed: "gusty", Basis: ref.Printed, Source: "AFMAN-15-111", Locator: "par. 7.4.2"},
	{ID: "gust-9-knots", Subject: "wind.ReportableGust", In: "peak=19 kn, lull=10 kn", Printed: "not gusty", Basis: ref.Printed, Source: "AFMAN-15-111", Locator: "par. 7.4.2"},

	// Surface flow.
	{ID: "surface-drift-high", Subject: "wind.SurfaceDrift", In: "speed=10 m/s, from=0", Result: "high", Printed: "3", Unit: "%", Basis: ref.Printed, Source: "AMS-Glossary", Locator: "wind drift; surface current, upper figure"},
	{ID: "surface-drift-mid", Subject: "wind.SurfaceDrift", In: "speed=10 m/s, from=0", Result: "mid", Printed: "2.5", Unit: "%", Basis: ref.Printed, Source: "AMS-Glossary", Locator: "surface current, lower figure"},
	{ID: "surface-drift-low", Subject: "wind.SurfaceDrift", In: "speed=10 m/s, from=0", Result: "low", Printed: "0.02", Basis: ref.Printed, Source: "DriftModelDocs", Locator: "wind drift coefficient, beside a Stokes drift"},

	// Weather maps.
	{ID: "coriolis-pole", Subject: "wind.Coriolis", In: "lat=90", Printed: "0.00014584", Basis: ref.Printed, Source: "Stull2017", Locator: "section 10.5.1, f = 1.4584e-4 sin(latitude)"},
	{ID: "geostrophic-montreal", Subject: "wind.GeostrophicContours", In: "slope=0.00010783, lat=45.5, gravity=9.8", Printed: "20", Unit: "kn", Basis: ref.Printed, Source: "SynopticLecture", Locator: "the magic distance at Montreal, 60 m over 5 degrees of latitude",
		Tol: 2.1, Why: "5 degrees is printed to the whole degree; 4.95 would be exact", Note: "60 m over 5 degrees of 111.29 km"},
}

// windLimits are definitions and limits.
var windLimits = []ref.Check{
	{ID: "beaufort-number-exact-4", Subject: "wind.BeaufortNumber", In: "speed=6.688 m/s", Printed: "4", Basis: ref.Exact},
	{ID: "beaufort-16-knots", Subject: "wind.Beaufort", In: "speed=16 kn", Printed: "4", Basis: ref.Table, Source: "WMO-1100", Locator: "column knots, 11 to 16"},
	{ID: "beaufort-metric-16-knots", Subject: "wind.BeaufortMetric", In: "speed=16 kn", Printed: "5", Basis: ref.Table, Source: "WMO-1100", Locator: "column m/s, 8.0 to 10.7", Note: "the two columns of one table disagree at 16, 21 and 27 kn"},
	{ID: "beaufort-21-knots", Subject: "wind.Beaufort", In: "speed=21 kn", Printed: "5", Basis: ref.Table, Source: "WMO-1100", Locator: "column knots, 17 to 21"},
	{ID: "beaufort-metric-21-knots", Subject: "wind.BeaufortMetric", In: "speed=21 kn", Printed: "6", Basis: ref.Table, Source: "WMO-1100", Locator: "column m/s, 10.8 to 13.8"},
	{ID: "beaufort-27-knots", Subject: "wind.Beaufort", In: "speed=27 kn", Printed: "6", Basis: ref.Table, Source: "WMO-1100", Locator: "column knots, 22 to 27"},
	{ID: "beaufort-metric-27-knots", Subject: "wind.BeaufortMetric", In: "speed=27 kn", Printed: "7", Basis: ref.Table, Source: "WMO-1100", Locator: "column m/s, 13.9 to 17.1"},
	{ID: "large-pond-line-20", Subject: "wind.LargePond1981", In: "speed=20 m/s", Printed: "0.00179", Basis: ref.Exact, Note: "0.49 + 0.065 · 20"},
	{ID: "large-pond-toolbox-corner", Subject: "wind.LargePondToolbox", In: "speed=4 m/s", Printed: "0.00115", Basis: ref.Exact},
	{ID: "smith-1980-10", Subject: "wind.Smith1980", In: "speed=10 m/s", Printed: "0.00124", Basis: ref.Exact, Note: "0.61 + 0.063 · 10"},
	{ID: "garratt-10", Subject: "wind.Garratt1977", In: "speed=10 m/s", Printed: "0.00142", Basis: ref.Exact, Note: "0.75 + 0.067 · 10"},
	{ID: "garratt-power-1", Subject: "wind.GarrattPower", In: "speed=1 m/s", Printed: "0.00051", Basis: ref.Exact},
	{ID: "wu-15", Subject: "wind.Wu1982", In: "speed=15 m/s", Printed: "0.001775", Basis: ref.Exact, Note: "0.8 + 0.065 · 15"},
	{ID: "wu-capped-15", Subject: "wind.WuCapped", In: "speed=15 m/s", Printed: "0.001775", Basis: ref.Exact},
	{ID: "drag-cem-10", Subject: "wind.DragCEM", In: "speed=10 m/s", Printed: "0.00145", Basis: ref.Exact, Note: "1.1 + 0.035 · 10"},
	{ID: "vera-1", Subject: "wind.Vera1983", In: "speed=1 m/s", Printed: "0.0029354", Basis: ref.Exact, Note: "2.717 + 0.142 + 0.0764"},
	{ID: "friction-cem-10", Subject: "wind.FrictionSpeed", In: "speed=10 m/s, law=cem", Printed: "0.38078865529319544", Basis: ref.Exact, Note: "√0.00145 · 10"},
	{ID: "stress-definition", Subject: "wind.Stress", In: "speed=10 m/s, air_density=1.22, height=10 m, law=cem, air=15 C", Printed: "0.1769", Basis: ref.Exact, Note: "1.22 · 0.00145 · 100"},
	{ID: "viscosity-freezing", Subject: "wind.AirViscosity", In: "celsius=0 C", Printed: "0.00001326", Basis: ref.Exact},
	{ID: "height-none", Subject: "wind.ToHeight", In: "speed=12 m/s, from=10 m, to=10 m, law=smith-1980", Printed: "12", Basis: ref.Exact},
	{ID: "charnock-height-none", Subject: "wind.Charnock.ToHeight", In: "alpha=0.011, gravity=9.8, karman=0.4, air=20 C, speed=12 m/s, from=7 m, to=7 m", Printed: "12", Basis: ref.Exact},
	{ID: "gust-factor", Subject: "wind.GustFactor", In: "gust=18 kn, mean=12 kn", Printed: "3/2", Basis: ref.Exact},
	{ID: "land-to-sea-8", Subject: "wind.LandToSea", In: "speed=8 m/s", Printed: "12", Unit: "m/s", Basis: ref.Exact, Note: "3 · 8^(2/3)"},
	{ID: "land-to-sea-27", Subject: "wind.LandToSea", In: "speed=27 m/s", Printed: "27", Unit: "m/s", Basis: ref.Exact},
	{ID: "ship-1", Subject: "wind.ShipToTenMetres", In: "speed=1 m/s", Printed: "1.864", Basis: ref.Exact},
	{ID: "ship-10", Subject: "wind.ShipToTenMetres", In: "speed=10 m/s", Printed: "11.174", Unit: "m/s", Basis: ref.Computed, Source: "ACES1992", Locator: "wind adjustment, observation type 1"},
	{ID: "geostrophic-unit", Subject: "wind.Geostrophic", In: "gradient=0.0014584230, lat=90, air_density=1", Printed: "10", Basis: ref.Exact},
	{ID: "geostrophic-vector", Subject: "wind.GeostrophicWind", In: "eastward=0.0014584230, northward=0, lat=90, air_density=1", Result: "north", Printed: "10", Basis: ref.Exact},
	{ID: "gradient-straight", Subject: "wind.GradientWind", In: "geostrophic=15 m/s, radius=Inf, lat=45", Printed: "15", Basis: ref.Exact},
	{ID: "gradient-low", Subject: "wind.GradientWind", In: "geostrophic=30 m/s, radius=137134.425335, lat=90", Printed: "16.457513", Basis: ref.Exact, Tol: 1e-6, Why: "f R = 20 m/s to the digits of R; V² + 20 V = 20 · 30, V = √700 − 10"},
	{ID: "gradient-high", Subject: "wind.GradientWind", In: "geostrophic=4 m/s, radius=-171418.031668, lat=90", Printed: "5", Basis: ref.Exact, Tol: 1e-6, Why: "f R = 25 m/s to the digits of R; V² − 25 V = −25 · 4"},
}

// airSea are the results of the AIR_SEA toolbox, an independent program: six
// speeds for each routine, as its Python translation prints them beside its
// tests. Its gravity is 9.8, its iterations stop at 1e-5.
var airSea = func() []ref.Check {
	speeds := []string{"10", "0.2", "12", "20", "30", "50"}
	var out []ref.Check
	rows := func(id, subject, in, result, unit, column string, tol float64, printed ...string) {
		for i, p := range printed {
			c := ref.Check{ID: fmt.Sprintf("airsea-%s-%s", id, map[string]string{"0.2": "light"}[speeds[i]]+speeds[i]), Subject: subject,
				In: fmt.Sprintf(in, speeds[i]), Result: result, Printed: p, Unit: unit, Basis: ref.Peer, Source: "Beardsley1999", Locator: column, Tol: tol,
				Why: "the toolbox stops its iteration at 1e-5"}
			c.ID = fmt.Sprintf("airsea-%s-%d", id, i+1)
			if tol == 0 {
				c.Why = ""
			}
			out = append(out, c)
		}
	}
	rows("cdnlp", "wind.LargePondToolbox", "speed=%s m/s", "", "", "routine cdnlp, 10 m", 0, "0.00115", "0.00115", "0.00127", "0.00179", "0.00244", "0.00374")
	rows("cdnve", "wind.ToHeight", "speed=%s m/s, from=15 m, to=10 m, law=vera", "drag", "", "routine cdnve, 15 m", 1e-6,
		"0.00116157367714317", "0.0154524550064545", "0.00126150793029841", "0.00174946112048342", "0.00242021682257864", "0.00379521369750344")
	rows("spshftve", "wind.ToHeight", "speed=%s m/s, from=15 m, to=10 m, law=vera", "speed", "m/s", "routine spshftve, 15 to 10 m", 4e-6,
		"9.66606154543003", "0.177618900533013", "11.5829782287169", "19.1865290304808", "28.5750249760299", "47.0611708344104")
	rows("spshftve-friction", "wind.ToHeight", "speed=%s m/s, from=15 m, to=10 m, law=vera", "friction", "m/s", "routine spshftve, 15 to 10 m", 4e-6,
		"0.329437426690619", "0.0220794332428885", "0.411400895360763", "0.802506507467214", "1.40576833416695", "2.89921781857063")
	rows("spshftlp-friction", "wind.ToHeight", "speed=%s m/s, from=10 m, to=10 m, law=large-pond-toolbox", "friction", "m/s", "routine spshftlp, 10 m", 1e-12,
		"0.339116499156263", "0.00678232998312527", "0.427644712348931", "0.846167832052247", "1.48189068422742", "3.05777697028413")
	smith := "alpha=0.011, gravity=9.8, karman=0.4, air=20 C, speed=%s m/s, "
	rows("cdntc", "wind.Charnock.ToHeight", smith+"from=20 m, to=10 m", "drag", "", "routine cdntc, 20 m, 20 C", 1e-8,
		"0.00126578055490123", "0.0014081796610467", "0.00136532721070209", "0.00173801082249074", "0.00217434522673943", "0.00304635635079252")
	rows("spshfttc", "wind.Charnock.ToHeight", smith+"from=10 m, to=8 m", "speed", "m/s", "routine spshfttc, 10 to 8 m, 20 C", 1e-6,
		"9.79908171484809", "0.195835679505091", "11.7492262784504", "19.5261841905738", "29.2006817855105", "48.4045608198807")
	rows("spshfttc-friction", "wind.Charnock.Friction", smith+"from=10 m", "", "m/s", "routine spshfttc, 10 m, 20 C", 1e-5,
		"0.360159698039392", "0.00746482785701453", "0.449528960299599", "0.849347080183345", "1.43283229075069", "2.85993329535699")
	rows("stresslp", "wind.Stress", "speed=%s m/s, air_density=1.22, height=10 m, law=large-pond-toolbox, air=15 C", "", "Pa", "routine stresslp, 10 m", 0,
		"0.1403", "5.612e-05", "0.2231136", "0.87352", "2.67912", "11.407")
	rows("stresstc", "wind.Stress", "speed=%s m/s, air_density=1.02, height=15 m, law=smith-1988, air=23 C", "", "Pa", "routine stresstc, 15 m, 23 C", 1e-4,
		"0.121440074404443", "5.32531575576875e-05", "0.188322389021556", "0.662091967508455", "1.85325310157027", "7.15282267190473")
	rows("stressve", "wind.Stress", "speed=%s m/s, air_density=1.22, height=8 m, law=vera, air=15 C", "", "Pa", "routine stressve, 8 m", 3e-4,
		"0.150603795956945", "0.000716542343709121", "0.237759170046226", "0.942523569546334", "3.01122143899962", "13.6425248744384")
	for i, r := range []struct{ t, printed string }{{"0.1", "1.32686757926484e-05"}, {"5", "1.36964783592e-05"}, {"15", "1.45857532314e-05"}, {"22.8", "1.52942885548108e-05"}, {"28.9", "1.58573694945063e-05"}, {"31.4", "1.60903922391823e-05"}} {
		out = append(out, ref.Check{ID: fmt.Sprintf("airsea-viscair-%d", i+1), Subject: "wind.AirViscosity", In: "celsius=" + r.t + " C", Printed: r.printed, Basis: ref.Peer, Source: "Beardsley1999", Locator: "routine viscair"})
	}
	return out
}()

// windSpeeds are the rows of the table of dominant wave speeds.
var windSpeeds = []ref.Check{
	{ID: "dominant-2-coastal-low", Subject: "wind.DominantSpeed", In: "hs=2 m", Result: "coastal-low", Printed: "17", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 2 m"},
	{ID: "dominant-2-coastal-high", Subject: "wind.DominantSpeed", In: "hs=2 m", Result: "coastal-high", Printed: "23", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 2 m"},
	{ID: "dominant-2-ocean-low", Subject: "wind.DominantSpeed", In: "hs=2 m", Result: "ocean-low", Printed: "21", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 2 m"},
	{ID: "dominant-2-ocean-high", Subject: "wind.DominantSpeed", In: "hs=2 m", Result: "ocean-high", Printed: "31", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 2 m"},
	{ID: "dominant-3-coastal-low", Subject: "wind.DominantSpeed", In: "hs=3 m", Result: "coastal-low", Printed: "19", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 3 m"},
	{ID: "dominant-3-coastal-high", Subject: "wind.DominantSpeed", In: "hs=3 m", Result: "coastal-high", Printed: "27", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 3 m"},
	{ID: "dominant-3-ocean-low", Subject: "wind.DominantSpeed", In: "hs=3 m", Result: "ocean-low", Printed: "25", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 3 m"},
	{ID: "dominant-3-ocean-high", Subject: "wind.DominantSpeed", In: "hs=3 m", Result: "ocean-high", Printed: "35", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 3 m"},
	{ID: "dominant-4-coastal-low", Subject: "wind.DominantSpeed", In: "hs=4 m", Result: "coastal-low", Printed: "20", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 4 m"},
	{ID: "dominant-4-coastal-high", Subject: "wind.DominantSpeed", In: "hs=4 m", Result: "coastal-high", Printed: "30", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 4 m"},
	{ID: "dominant-4-ocean-low", Subject: "wind.DominantSpeed", In: "hs=4 m", Result: "ocean-low", Printed: "29", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 4 m"},
	{ID: "dominant-4-ocean-high", Subject: "wind.DominantSpeed", In: "hs=4 m", Result: "ocean-high", Printed: "39", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 4 m"},
	{ID: "dominant-5-coastal-low", Subject: "wind.DominantSpeed", In: "hs=5 m", Result: "coastal-low", Printed: "21", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 5 m"},
	{ID: "dominant-5-coastal-high", Subject: "wind.DominantSpeed", In: "hs=5 m", Result: "coastal-high", Printed: "33", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 5 m"},
	{ID: "dominant-5-ocean-low", Subject: "wind.DominantSpeed", In: "hs=5 m", Result: "ocean-low", Printed: "32", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 5 m"},
	{ID: "dominant-5-ocean-high", Subject: "wind.DominantSpeed", In: "hs=5 m", Result: "ocean-high", Printed: "42", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 5 m"},
	{ID: "dominant-6-coastal-low", Subject: "wind.DominantSpeed", In: "hs=6 m", Result: "coastal-low", Printed: "23", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 6 m"},
	{ID: "dominant-6-coastal-high", Subject: "wind.DominantSpeed", In: "hs=6 m", Result: "coastal-high", Printed: "35", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 6 m"},
	{ID: "dominant-6-ocean-low", Subject: "wind.DominantSpeed", In: "hs=6 m", Result: "ocean-low", Printed: "36", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 6 m"},
	{ID: "dominant-6-ocean-high", Subject: "wind.DominantSpeed", In: "hs=6 m", Result: "ocean-high", Printed: "46", Unit: "kn", Basis: ref.Table, Source: "IMO-Following", Locator: "section 4.1.3, table 1, 6 m"},
}
