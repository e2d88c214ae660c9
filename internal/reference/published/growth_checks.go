package published

import (
	"slices"
	"strconv"

	"followingsea.example/internal/reference"
)

var growthChecks = slices.Concat(growthPrinted, growthCharts, growthExact, growthFetches, growthOther)

const (
	aces1 = "section 1-1, Example 1, p. 1-1-17"
	aces3 = "section 1-1, Example 3, pp. 1-1-19 to 1-1-21"
)

const acesRadials = "first=0 deg, step=12 deg, radials=[3.7 12.3 13.4 12.2 13.2 36.0 35.6 28.7 26.8 13.0 10.4 10.1 6.4 5.7] mi"

// Worked examples, to the printed digit.
var growthPrinted = []reference.Check{
	{ID: "growth-aces-1-ua", Subject: "wind.ACESAdjustedWind", In: "speed=46.42 mph", Printed: "67.92", Unit: "mph", Basis: reference.Printed, Source: "ACES1992", Locator: aces1,
		Tol: 0.01, Why: "Ue is itself printed to 0.005 mph, which is 0.01 mph of Ua", Note: "67.912"},
	{ID: "growth-aces-1-hs", Subject: "wind.ACES", In: "speed=46.42 mph, fetch=26 mi, duration=3 h, depth=13 ft, gravity=9.81 m/s2", Result: "printed hs", Printed: "4.23", Unit: "ft", Basis: reference.Printed, Source: "ACES1992", Locator: aces1},
	{ID: "growth-aces-1-tp", Subject: "wind.ACES", In: "speed=46.42 mph, fetch=26 mi, duration=3 h, depth=13 ft, gravity=9.81 m/s2", Result: "printed tp", Printed: "4.77", Unit: "s", Basis: reference.Printed, Source: "ACES1992", Locator: aces1},
	{ID: "growth-aces-1-hs-from-ua", Subject: "wind.ACESAdjusted", In: "speed=67.92 mph, fetch=26 mi, duration=3 h, depth=13 ft, gravity=9.81 m/s2", Result: "printed hs", Printed: "4.23", Unit: "ft", Basis: reference.Printed, Source: "ACES1992", Locator: aces1},
	{ID: "growth-aces-1-tp-from-ua", Subject: "wind.ACESAdjusted", In: "speed=67.92 mph, fetch=26 mi, duration=3 h, depth=13 ft, gravity=9.81 m/s2", Result: "printed tp", Printed: "4.77", Unit: "s", Basis: reference.Printed, Source: "ACES1992", Locator: aces1},
	{ID: "growth-spm-aces-1-hs", Subject: "wind.SPMAdjusted", In: "speed=67.92 mph, fetch=26 mi, duration=Inf s, depth=13 ft, gravity=9.81 m/s2", Result: "hs", Printed: "4.23", Unit: "ft", Basis: reference.Printed, Source: "ACES1992", Locator: aces1, Note: "ACES prints the SPM relations for this case"},
	{ID: "growth-spm-aces-1-tp", Subject: "wind.SPMAdjusted", In: "speed=67.92 mph, fetch=26 mi, duration=Inf s, depth=13 ft, gravity=9.81 m/s2", Result: "tp", Printed: "4.77", Unit: "s", Basis: reference.Printed, Source: "ACES1992", Locator: aces1},
	{ID: "growth-aces-1-limit", Subject: "wind.ACES", In: "speed=46.42 mph, fetch=26 mi, duration=Inf s, depth=13 ft, gravity=9.81 m/s2", Result: "hs", Printed: "4.23", Unit: "ft", Basis: reference.Printed, Source: "ACES1992", Locator: aces1, Note: "Grow and the printed procedure agree where time does not limit"},
	{ID: "growth-aces-3-fetch", Subject: "wind.RestrictedFetch", In: "from=125 deg, " + acesRadials, Result: "length", Printed: "26.61", Unit: "mi", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-direction", Subject: "wind.RestrictedFetch", In: "from=125 deg, " + acesRadials, Result: "from", Printed: "93.00", Unit: "deg", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-ua", Subject: "wind.ACESAdjustedWind", In: "speed=44.00 mph", Printed: "63.27", Unit: "mph", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-hs", Subject: "wind.SmithOff", In: "offset=32 deg, speed=44.00 mph, fetch=26.61 mi, duration=5 h, depth=Inf m, gravity=9.81 m/s2", Result: "hs", Printed: "7.80", Unit: "ft", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-tp", Subject: "wind.SmithOff", In: "offset=32 deg, speed=44.00 mph, fetch=26.61 mi, duration=5 h, depth=Inf m, gravity=9.81 m/s2", Result: "tp", Printed: "5.74", Unit: "s", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-limit", Subject: "wind.SmithOff", In: "offset=32 deg, speed=44.00 mph, fetch=26.61 mi, duration=5 h, depth=Inf m, gravity=9.81 m/s2", Result: "limit", Printed: "fetch", Basis: reference.Printed, Source: "ACES1992", Locator: aces3, Note: "printed as deepwater fetch-limited"},

	{ID: "growth-aces-3-restricted-hs", Subject: "wind.GrowRestricted", In: "speed=44.00 mph, duration=5 h, depth=Inf m, gravity=9.81 m/s2, from=125 deg, " + acesRadials, Result: "hs", Printed: "7.80", Unit: "ft", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-restricted-tp", Subject: "wind.GrowRestricted", In: "speed=44.00 mph, duration=5 h, depth=Inf m, gravity=9.81 m/s2, from=125 deg, " + acesRadials, Result: "tp", Printed: "5.74", Unit: "s", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-aces-3-restricted-from", Subject: "wind.GrowRestricted", In: "speed=44.00 mph, duration=5 h, depth=Inf m, gravity=9.81 m/s2, from=125 deg, " + acesRadials, Result: "from", Printed: "93.00", Unit: "deg", Basis: reference.Printed, Source: "ACES1992", Locator: aces3},
	{ID: "growth-spm-metric-hs", Subject: "wind.SPMAdjusted", In: "speed=1 m/s, fetch=1 m, duration=Inf s, depth=Inf m, gravity=9.8 m/s2", Result: "hs", Printed: "5.112e-4", Unit: "m", Basis: reference.Printed, Source: "SPM1984", Locator: "eq. 3-33a, in metres and seconds, quoted at second hand", Tol: 2e-7, Why: "the source divides by a g of its own, between 9.79 and 9.80, before it rounds"},
	{ID: "growth-spm-metric-tp", Subject: "wind.SPMAdjusted", In: "speed=1 m/s, fetch=1 m, duration=Inf s, depth=Inf m, gravity=9.8 m/s2", Result: "tp", Printed: "6.238e-2", Unit: "s", Basis: reference.Printed, Source: "SPM1984", Locator: "eq. 3-34a, in metres and seconds, quoted at second hand", Tol: 1e-5, Why: "the source divides by a g of its own, between 9.79 and 9.80, before it rounds"},
	{ID: "growth-spm-metric-minimum", Subject: "wind.SPMAdjusted", In: "speed=1 m/s, fetch=1 m, duration=Inf s, depth=Inf m, gravity=9.8 m/s2", Result: "printed minimum", Printed: "32.15", Unit: "s", Basis: reference.Printed, Source: "SPM1984", Locator: "eq. 3-35a, in metres and seconds, quoted at second hand"},
	{ID: "growth-kamphuis-minimum", Subject: "wind.Kamphuis", In: "speed=15 m/s, fetch=1e9 m, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed minimum", Printed: "109327.217", Unit: "s", Basis: reference.Printed, Source: "Kamphuis2000", Locator: "solved problem, part (a)",
		Tol: 0.1, Why: "the solution divides 71,500 times 15 by 9.81 and slips in the last digits: 109327.2171"},
	{ID: "growth-kamphuis-minimum-hours", Subject: "wind.Kamphuis", In: "speed=15 m/s, fetch=1e9 m, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed minimum", Printed: "30.368", Unit: "h", Basis: reference.Printed, Source: "Kamphuis2000", Locator: "solved problem, part (a)",
		Tol: 0.0011, Why: "109327.217 s is 30.3687 h; the solution truncates"},
	{ID: "growth-kamphuis-minfetch", Subject: "wind.Kamphuis", In: "speed=15 m/s, fetch=1e9 m, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "fetch", Printed: "529", Unit: "km", Basis: reference.Printed, Source: "Kamphuis2000", Locator: "solved problem, part (a)",
		Tol: 2.5, Why: "the solution takes the fetch where the height alone is developed, 529.04 km; the period's 8.13 is reached at 526.85 km, and Grow stops the two together there"},
	{ID: "growth-kamphuis-hs", Subject: "wind.AsPublished", In: "speed=15 m/s, fetch=200 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "hs", Printed: "3.417", Unit: "m", Basis: reference.Printed, Source: "Kamphuis2000", Locator: "solved problem, part (b)",
		Tol: 0.012, Why: "the solution rounds H* to 0.149 before it multiplies: half a unit of that is 0.0115 m", Note: "the source answers for 10 h with the fetch-limited sea; the minimum duration is 12.4 h, and the right answer 2.92 m and 8.09 s"},
	{ID: "growth-kamphuis-tp", Subject: "wind.AsPublished", In: "speed=15 m/s, fetch=200 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "tp", Printed: "9", Unit: "s", Basis: reference.Printed, Source: "Kamphuis2000", Locator: "solved problem, part (b)"},
	{ID: "growth-kamphuis-limit", Subject: "wind.Kamphuis", In: "speed=15 m/s, fetch=1e9 m, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed limit", Printed: "fully developed", Basis: reference.Printed, Source: "Kamphuis2000", Locator: "solved problem, part (a)"},
}

const (
	tomczak    = "figure 9.5, caption"
	nomogram   = "duration=Inf s, depth=Inf m, gravity=9.81 m/s2"
	tomczakWhy = "a teaching diagram read to about a quarter by eye, drawn for a sea between this law and a longer one; up to 100 nautical miles the law stays inside"
	hoursWhy   = "the diagram's hours are rounded and belong to its own, longer sea: about an eighth"
)

// tomczakRow is one dot of the growth diagram: wind of 30 knots over nmi, with the height, period
// and hours it is said to need.
func tomczakRow(id, nmi, hs, t13, hours, tolHs, tolT, tolHours string) []reference.Check {
	in := "speed=30 kn, fetch=" + nmi + " nmi, " + nomogram
	var out []reference.Check
	add := func(what, result, printed, unit, tol, why string) {
		if printed == "" {
			return
		}
		out = append(out, reference.Check{ID: "growth-tomczak-" + id + "-" + what, Subject: "wind.Bretschneider", In: in, Result: result, Printed: printed, Unit: unit,
			Basis: reference.Chart, Source: "Tomczak2005", Locator: tomczak, Tol: mustFloat(tol), Why: why})
	}
	add("hs", "hs", hs, "m", tolHs, tomczakWhy)
	add("t13", "t13", t13, "s", tolT, tomczakWhy)
	out = append(out, reference.Check{ID: "growth-tomczak-" + id + "-hours", Subject: "wind.MinimumDuration",
		In: "law=Bretschneider, speed=30 kn, fetch=" + nmi + " nmi, depth=Inf m, gravity=9.81 m/s2", Printed: hours, Unit: "h",
		Basis: reference.Chart, Source: "Tomczak2005", Locator: tomczak, Tol: mustFloat(tolHours), Why: hoursWhy})
	return out
}

func mustFloat(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic(err)
	}
	return x
}

// Readings of nomograms.
var growthCharts = slices.Concat([]reference.Check{
	{ID: "growth-tafb-hs", Subject: "wind.Bretschneider", In: "speed=40 kn, fetch=150 nmi, duration=24 h, depth=Inf m, gravity=9.81 m/s2", Result: "hs", Printed: "18.7", Unit: "ft", Basis: reference.Chart, Source: "TAFB-nomogram", Locator: "slide 10",
		Tol: 0.56, Why: "read by the forecaster off a logarithmic nomogram: 3 %", Note: "18.43 ft; no other law of the set comes as near in both height and period but Wilson's"},
	{ID: "growth-tafb-t13", Subject: "wind.Bretschneider", In: "speed=40 kn, fetch=150 nmi, duration=24 h, depth=Inf m, gravity=9.81 m/s2", Result: "t13", Printed: "9.6", Unit: "s", Basis: reference.Chart, Source: "TAFB-nomogram", Locator: "slide 10",
		Tol: 0.29, Why: "read by the forecaster off a logarithmic nomogram: 3 %", Note: "9.45 s as T1/3"},
	{ID: "growth-tafb-limit", Subject: "wind.Bretschneider", In: "speed=40 kn, fetch=150 nmi, duration=24 h, depth=Inf m, gravity=9.81 m/s2", Result: "limit", Printed: "fetch", Basis: reference.Chart, Source: "TAFB-nomogram", Locator: "slide 10"},
	{ID: "growth-tafb-wilson-hs", Subject: "wind.Wilson", In: "speed=40 kn, fetch=150 nmi, duration=24 h, depth=Inf m, gravity=9.81 m/s2", Result: "hs", Printed: "18.7", Unit: "ft", Basis: reference.Chart, Source: "TAFB-nomogram", Locator: "slide 10",
		Tol: 0.75, Why: "another law than the nomogram's: 4 %"},
	{ID: "growth-tafb-wilson-t13", Subject: "wind.Wilson", In: "speed=40 kn, fetch=150 nmi, duration=24 h, depth=Inf m, gravity=9.81 m/s2", Result: "t13", Printed: "9.6", Unit: "s", Basis: reference.Chart, Source: "TAFB-nomogram", Locator: "slide 10",
		Tol: 0.6, Why: "another law than the nomogram's: 6 %"},
},
	tomczakRow("35", "35", "2", "5.2", "5", "0.5", "1.3", "0.65"),
	tomczakRow("50", "50", "2.6", "6.1", "6.5", "0.65", "1.5", "0.8"),
	tomczakRow("80", "80", "3.6", "7.2", "10", "0.9", "1.8", "1.25"),
	tomczakRow("100", "100", "4.2", "8", "11", "1.05", "2", "1.4"),
	tomczakRow("200", "200", "", "", "18", "", "", "2.25"),
	tomczakRow("250", "250", "", "", "20", "", "", "2.6"),
)

// In units of the wind and gravity, speed 1 m/s and gravity 1 m/s2, a sea is its law's own
// numbers: the fetch is x, the depth D, the height and period those of the formula.
const (
	unlimited = "speed=1 m/s, fetch=Inf m, duration=Inf s, depth=Inf m, gravity=1 m/s2"
	unitFetch = "speed=1 m/s, fetch=1 m, duration=Inf s, depth=Inf m, gravity=1 m/s2"
)

func exactly(id, law, in, result, value, source, locator string) reference.Check {
	return reference.Check{ID: "growth-exact-" + id, Subject: "wind." + law, In: in, Result: result, Printed: value, Basis: reference.Exact, Source: source, Locator: locator}
}

func formula(id, law, in, result, value, source, locator string) reference.Check {
	return reference.Check{ID: "growth-" + id, Subject: "wind." + law, In: in, Result: result, Printed: value, Basis: reference.Printed, Source: source, Locator: locator}
}

// Exact values: the asymptotes, and the coefficients where the formula is a bare power; and
// the same laws as other sources print them, in height and period.
var growthExact = []reference.Check{
	exactly("bretschneider-developed", "Bretschneider", unlimited, "hs", "0.24", "SWAN-growth", "Pierson and Moskowitz limit"),
	exactly("breugem-hs", "BreugemHolthuijsen", unlimited, "hs", "0.24", "BreugemHolthuijsen2007", "asymptote"),
	exactly("breugem-tp", "BreugemHolthuijsen", unlimited, "tp", "7.69", "BreugemHolthuijsen2007", "asymptote"),
	exactly("breugem-414-hs", "BreugemHolthuijsen414", unlimited, "hs", "0.24", "BreugemHolthuijsen2007", "asymptote"),
	exactly("breugem-414-tp", "BreugemHolthuijsen414", unlimited, "tp", "7.69", "BreugemHolthuijsen2007", "asymptote"),
	exactly("young-tp", "YoungVerhagen", unlimited, "tp", "1000/133", "YoungVerhagen1996", "deep-water asymptote, peak frequency 0.133"),
	formula("young-hs", "YoungVerhagen", unlimited, "hs", "0.24", "SWAN-growth", "Pierson and Moskowitz limit, E = 3.64e-3"),
	exactly("kahma-hs", "KahmaCalkoen", unlimited, "hs", "0.21", "SWAN-growth", "cap of the benchmark"),
	formula("kahma-height", "KahmaCalkoen", unitFetch, "hs", "0.00288", "SWAN-growth", "height as 0.00288 x^0.45"),
	formula("kahma-period", "KahmaCalkoen", unitFetch, "tp", "0.46", "SWAN-growth", "period as 0.46 x^0.27"),
	exactly("kahma-stable-hs", "KahmaCalkoenStable", unlimited, "hs", "0.21", "SWAN-growth", "cap of the benchmark"),
	exactly("kahma-unstable-hs", "KahmaCalkoenUnstable", unlimited, "hs", "0.21", "SWAN-growth", "cap of the benchmark"),
	exactly("jonswap-hs", "JONSWAP", unitFetch, "hs", "0.0016", "Hasselmann1973", "E = 1.6e-7 x"),
	exactly("jonswap-tp", "JONSWAP", unitFetch, "tp", "2/7", "Hasselmann1973", "peak frequency 3.5 x^-0.33"),
	exactly("jonswap-start-tp", "JONSWAPStart", unitFetch, "tp", "25/71", "ECMWF-ecWAM", "routine PEAK, 2.84 x^-0.3"),
	exactly("wilson-hs", "Wilson", unlimited, "hs", "0.30", "Wilson1965", "asymptote"),
	exactly("wilson-t13", "Wilson", unlimited, "t13", "8.61", "Wilson1965", "asymptote"),
	exactly("spm84-hs", "SPM84", unlimited, "printed hs", "0.12264753", "SPM1984", "0.2433 on U_A, with U_A = 0.71 at 1 m/s"),
	exactly("spm84-tp", "SPM84", unlimited, "printed tp", "5.77514", "SPM1984", "8.134 on U_A"),
	exactly("spm-adjusted-hs", "SPMAdjusted", unitFetch, "hs", "0.0016", "ACES1992", "section 1-1, eq. 33"),
	exactly("spm-adjusted-tp", "SPMAdjusted", unitFetch, "tp", "0.2857", "ACES1992", "section 1-1, eq. 35"),
	exactly("spm-adjusted-minimum", "SPMAdjusted", unitFetch, "printed minimum", "68.8", "ACES1992", "section 1-1, eq. 27"),
	exactly("aces-hs", "ACES", unlimited, "printed hs", "0.2433", "ACES1992", "section 1-1, eq. 37, on Ue"),
	exactly("aces-tp", "ACES", unlimited, "printed tp", "8.134", "ACES1992", "section 1-1, eq. 39, on Ue"),
	exactly("aces-adjusted-hs", "ACESAdjusted", unitFetch, "hs", "0.0016", "ACES1992", "section 1-1, eq. 33"),
	exactly("aces-adjusted-duration-hs", "ACESAdjusted", "speed=1 m/s, fetch=1e9 m, duration=1 s, depth=Inf m, gravity=1 m/s2", "printed hs", "0.0000851", "ACES1992", "section 1-1, eq. 29"),
	exactly("aces-adjusted-duration-tp", "ACESAdjusted", "speed=1 m/s, fetch=1e9 m, duration=1 s, depth=Inf m, gravity=1 m/s2", "printed tp", "0.0702", "ACES1992", "section 1-1, eq. 31"),
	exactly("kamphuis-tp", "Kamphuis", unitFetch, "tp", "0.286", "Kamphuis2000", "eq. 5.7"),
	exactly("cem-hs", "CEM", unlimited, "printed hs", "0.2400525", "CEM-II-2", "eq. II-2-37, 211.5 on u*² = 0.001135 at 1 m/s"),
	exactly("cem-shallow-tp", "CEM", "speed=1 m/s, fetch=Inf m, duration=Inf s, depth=0.25 m, gravity=1 m/s2", "tp", "4.89", "CEM-II-2", "eq. II-2-39, 9.78 √(d/g)"),
	exactly("cem-shallow-hs", "CEM", "speed=1 m/s, fetch=Inf m, duration=Inf s, depth=0.25 m, gravity=1 m/s2", "hs", "0.15", "CEM-II-2", "shallow water, 0.6 of the depth"),
	exactly("smith-hs", "Smith", unlimited, "printed hs", "0.2433", "ACES1992", "section 1-1, eq. 38, on Ue"),
	exactly("groen-hs", "GroenDorrestein", unlimited, "hs", "0.24", "GroenDorrestein1976", "asymptote"),
	exactly("groen-shallow-hs", "GroenDorrestein", "speed=1 m/s, fetch=Inf m, duration=Inf s, depth=0.001 m, gravity=1 m/s2", "hs", "0.00055", "Holleman2022", "height at most 0.55 of the depth"),
	exactly("hwang-hs", "HwangWang", unlimited, "hs", "0.24", "SWAN-growth", "Pierson and Moskowitz limit"),
	{ID: "growth-exact-significant-period", Subject: "wind.Sea.SignificantPeriod", In: "tp=20 s", Printed: "19", Basis: reference.Exact, Source: "Goda2003", Locator: "T1/3 = 0.95 Tp"},
}

// What others computed, and what was remembered: shown, not counted as published.
var growthOther = []reference.Check{
	{ID: "growth-tran-young", Subject: "wind.YoungVerhagen", In: "speed=21.9444 m/s, fetch=53890 m, duration=Inf s, depth=7 m, gravity=9.81 m/s2", Result: "hs", Printed: "1.6371", Basis: reference.Peer, Source: "Tran-YoungVerhagen", Locator: "example in the header"},
	{ID: "growth-spm-example-hs", Subject: "wind.SPMAdjusted", In: "speed=22.4 m/s, fetch=24.4 km, duration=Inf s, depth=10.7 m, gravity=9.81 m/s2", Result: "hs", Printed: "1.5", Basis: reference.Memory, Source: "SPM1984", Locator: "shallow-water forecasting example"},
	{ID: "growth-spm-example-tp", Subject: "wind.SPMAdjusted", In: "speed=22.4 m/s, fetch=24.4 km, duration=Inf s, depth=10.7 m, gravity=9.81 m/s2", Result: "tp", Printed: "4.4", Basis: reference.Memory, Source: "SPM1984", Locator: "shallow-water forecasting example"},
	{ID: "growth-goda-minimum", Subject: "wind.Wilson", In: "speed=1 m/s, fetch=1 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed minimum", Printed: "1.0", Unit: "h", Basis: reference.Memory, Source: "Goda2003", Locator: "minimum duration 1.0 F^0.73 U^-0.46 in km, m/s and h"},
	{ID: "growth-cem-minimum", Subject: "wind.CEM", In: "speed=10 m/s, fetch=10 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed minimum", Printed: "2.209", Unit: "h", Basis: reference.Computed, Source: "ScientiMate", Locator: "mindurationdeep, case cem, evaluated"},
	{ID: "growth-jonswap-minimum", Subject: "wind.JONSWAP", In: "speed=10 m/s, fetch=10 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed minimum", Printed: "1.920", Unit: "h", Basis: reference.Computed, Source: "ScientiMate", Locator: "mindurationdeep, case jonswap, evaluated"},
	{ID: "growth-wilson-minimum", Subject: "wind.Wilson", In: "speed=10 m/s, fetch=10 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "printed minimum", Printed: "1.860", Unit: "h", Basis: reference.Computed, Source: "ScientiMate", Locator: "mindurationdeep, case wilson, evaluated"},
	{ID: "growth-cem-3h-hs", Subject: "wind.CEM", In: "speed=10 m/s, fetch=1000 km, duration=3 h, depth=Inf m, gravity=9.81 m/s2", Result: "printed hs", Printed: "0.535", Basis: reference.Computed, Source: "CEM-II-2", Locator: "eq. II-2-38, evaluated"},
	{ID: "growth-cem-3h-tp", Subject: "wind.CEM", In: "speed=10 m/s, fetch=1000 km, duration=3 h, depth=Inf m, gravity=9.81 m/s2", Result: "printed tp", Printed: "2.31", Basis: reference.Computed, Source: "CEM-II-2", Locator: "eq. II-2-38, evaluated"},
	{ID: "growth-cem-waver-hs", Subject: "wind.CEM", In: "speed=12 m/s, fetch=15 km, duration=Inf s, depth=10 m, gravity=9.81 m/s2", Result: "hs", Printed: "0.756", Basis: reference.Computed, Source: "CEM-II-2", Locator: "eq. II-2-36, evaluated as a restatement of it does"},
	{ID: "growth-cem-waver-tp", Subject: "wind.CEM", In: "speed=12 m/s, fetch=15 km, duration=Inf s, depth=10 m, gravity=9.81 m/s2", Result: "tp", Printed: "2.720", Basis: reference.Computed, Source: "CEM-II-2", Locator: "eq. II-2-36, evaluated as a restatement of it does"},
	{ID: "growth-young-hmax", Subject: "wind.DepthLimitedHeight", In: "speed=10 m/s, depth=3 m", Printed: "0.619", Basis: reference.Computed, Source: "ScientiMate", Locator: "asymptlimit, case young, evaluated"},
	{ID: "growth-young-tmax", Subject: "wind.DepthLimitedPeriod", In: "speed=10 m/s, depth=3 m", Printed: "3.22", Basis: reference.Computed, Source: "ScientiMate", Locator: "asymptlimit, case young, evaluated"},
	{ID: "growth-onepoint-1h", Subject: "wind.OnePointHeight", In: "speed=10 m/s, time=1 h", Printed: "0.55", Basis: reference.Computed, Source: "ECMWF-ecWAM", Locator: "OUT_ONEGRDPT, evaluated"},
	{ID: "growth-onepoint-3h", Subject: "wind.OnePointHeight", In: "speed=10 m/s, time=3 h", Printed: "1.03", Basis: reference.Computed, Source: "ECMWF-ecWAM", Locator: "OUT_ONEGRDPT, evaluated"},
	{ID: "growth-onepoint-12h", Subject: "wind.OnePointHeight", In: "speed=10 m/s, time=12 h", Printed: "1.69", Basis: reference.Computed, Source: "ECMWF-ecWAM", Locator: "OUT_ONEGRDPT, evaluated"},
	{ID: "growth-saville-125", Subject: "wind.SavilleFetch", In: "from=125 deg, " + acesRadials, Printed: "11.17", Unit: "mi", Basis: reference.Computed, Source: "Saville1962", Locator: "definition, on the radials of ACES Example 3"},
	{ID: "growth-saville-93", Subject: "wind.SavilleFetch", In: "from=93 deg, " + acesRadials, Printed: "20.77", Unit: "mi", Basis: reference.Computed, Source: "Saville1962", Locator: "definition, on the radials of ACES Example 3"},
	{ID: "growth-saville-60", Subject: "wind.SavilleFetch", In: "from=60 deg, " + acesRadials, Printed: "21.61", Unit: "mi", Basis: reference.Computed, Source: "Saville1962", Locator: "definition, on the radials of ACES Example 3"},
	{ID: "growth-cosine-125", Subject: "wind.CosineFetch", In: "from=125 deg, " + acesRadials, Printed: "12.45", Unit: "mi", Basis: reference.Computed, Source: "WEMo", Locator: "definition, on the radials of ACES Example 3"},
	{ID: "growth-cosine-93", Subject: "wind.CosineFetch", In: "from=93 deg, " + acesRadials, Printed: "22.55", Unit: "mi", Basis: reference.Computed, Source: "WEMo", Locator: "definition, on the radials of ACES Example 3"},
	{ID: "growth-arc-125", Subject: "wind.ArcFetch", In: "half=7 deg, from=125 deg, " + acesRadials, Printed: "10.31", Unit: "mi", Basis: reference.Computed, Source: "ACES1992", Locator: "section 1-1, Example 3, straight up the wind"},
}

// growthFetches are the laws at 10 m/s over 1, 10 and 50 km of deep water, evaluated by another
// program from the constants as printed.
var growthFetches = slices.Concat(
	fetches("bretschneider", "Bretschneider", "Grasmeijer2016", "bretschneider.m, evaluated with its period as T1/3", "0.247", "1.92", "0.640", "3.29", "1.202", "4.59"),
	fetches("breugem", "BreugemHolthuijsen", "InVEST", "WaveFetch, evaluated", "0.234", "1.61", "0.661", "3.01", "1.337", "4.66"),
	fetches("breugem-414", "BreugemHolthuijsen414", "Grasmeijer2016", "breugem_holthuijsen.m, evaluated", "0.226", "1.61", "0.638", "3.01", "1.294", "4.66"),
	fetches("kahma", "KahmaCalkoen", "KahmaCalkoen1992", "p. 1404, evaluated", "0.232", "1.61", "0.653", "3.00", "1.346", "4.64"),
	fetches("kahma-stable", "KahmaCalkoenStable", "KahmaCalkoen1992", "table of fits, recalled and evaluated", "0.225", "1.60", "0.539", "2.79", "0.993", "4.10"),
	fetches("kahma-unstable", "KahmaCalkoenUnstable", "KahmaCalkoen1992", "table of fits, recalled and evaluated", "0.259", "1.63", "0.763", "3.10", "1.626", "4.87"),
	fetches("hwang", "HwangWang", "ScientiMate", "parametricwavedeep, case hwang, evaluated", "0.206", "1.60", "0.523", "2.76", "1.005", "4.04"),
	fetches("groen", "GroenDorrestein", "Holleman2022", "evaluated", "0.288", "1.25", "0.786", "2.80", "1.458", "4.48"), // the period there over 0.9, here over 0.95
	[]reference.Check{
		{ID: "growth-jonswap-start-10km", Subject: "wind.JONSWAPStart", In: "speed=10 m/s, fetch=10 km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2", Result: "tp", Printed: "2.835", Basis: reference.Computed, Source: "ECMWF-ecWAM", Locator: "routine PEAK, evaluated", Tol: 0.0011, Why: "evaluated there with g = 9.806"},
		{ID: "growth-onepoint-6h", Subject: "wind.OnePointHeight", In: "speed=10 m/s, time=6 h", Printed: "1.38", Basis: reference.Computed, Source: "ECMWF-ecWAM", Locator: "OUT_ONEGRDPT, evaluated"},
	},
)

// fetches are the height and peak period of a law at three fetches.
func fetches(id, law, source, locator string, seas ...string) []reference.Check {
	var out []reference.Check
	for i, km := range []string{"1", "10", "50"} {
		in := "speed=10 m/s, fetch=" + km + " km, duration=Inf s, depth=Inf m, gravity=9.81 m/s2"
		for j, result := range []string{"hs", "tp"} {
			out = append(out, reference.Check{ID: "growth-" + id + "-" + km + "km-" + result, Subject: "wind." + law, In: in, Result: result, Printed: seas[2*i+j],
				Basis: reference.Computed, Source: source, Locator: locator})
		}
	}
	return out
}
