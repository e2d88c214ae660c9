package published

import (
	"fmt"
	"slices"
	"strings"

	"followingsea.example/internal/reference"
)

// sixths makes one check for each of the six parts of a rule, from prints in order.
func sixths(id, subject, in, result, unit string, basis reference.Basis, source, locator string, prints ...string) []reference.Check {
	var out []reference.Check
	for i, p := range prints {
		c := reference.Check{ID: fmt.Sprintf("%s-%d", id, i+1), Subject: subject,
			In: strings.ReplaceAll(in, "#", fmt.Sprint(2*i+1)), Result: result, Printed: p, Unit: unit, Basis: basis, Source: source, Locator: locator}
		if strings.Contains(p, "/") {
			c.Tol, c.Why = 1e-12, "a fraction has no last digit"
		}
		out = append(out, c)
	}
	return out
}

// stMalo is the ebb of the French exercise: 11 m at 09:34 to 2.35 m at 16:36.
const stMalo = "from=09:34 hh:mm, from-height=11 m, to=16:36 hh:mm, to-height=2.35 m, rule=twelfths, at="

// sixHourRise is a spring rise at Plymouth, taken as six hours.
const sixHourRise = "from=0 h, from-height=0.7 m, to=6 h, to-height=5.6 m, rule=twelfths, at="

var tideRuleChecks = slices.Concat(
	// The running sum of the rule, and the share in each sixth.
	[]reference.Check{
		{ID: "twelfths-cumulative-1", Subject: "tide.Twelfths", In: "x=1/6", Printed: "1/12", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Rule of Twelfths, table", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "twelfths-cumulative-2", Subject: "tide.Twelfths", In: "x=2/6", Printed: "3/12", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Rule of Twelfths, table", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "twelfths-cumulative-3", Subject: "tide.Twelfths", In: "x=3/6", Printed: "6/12", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Rule of Twelfths, table", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "twelfths-cumulative-4", Subject: "tide.Twelfths", In: "x=4/6", Printed: "9/12", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Rule of Twelfths, table", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "twelfths-cumulative-5", Subject: "tide.Twelfths", In: "x=5/6", Printed: "11/12", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Rule of Twelfths, table", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "twelfths-cumulative-6", Subject: "tide.Twelfths", In: "x=1", Printed: "12/12", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Rule of Twelfths, table", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "twelfths-half-range-time", Subject: "tide.TwelfthsInverse", In: "f=6/12", Printed: "3/6", Basis: reference.Printed, Source: "ExeterTides", Locator: "slide after Charted Depth: half the range 3 h after low water", Tol: 1e-12, Why: "a fraction has no last digit"},
	},
	sixths("twelfths-step", "tide.Rule.Slope", "rule=twelfths, x=#/12", "in-a-sixth", "1", reference.Printed, "PBO-Glossary", "entry Rule of twelfths", "1/12", "2/12", "3/12", "3/12", "2/12", "1/12"),
	sixths("tenths-step", "tide.Rule.Slope", "rule=tenths, x=#/12", "in-a-sixth", "%", reference.Printed, "DIYWoodBoat", "list of the rule of tenths", "10", "15", "25", "25", "15", "10"),
	sixths("twelfths-six-feet", "tide.Limb.Rate", "from=0 h, from-height=6 ft, to=6 h, to-height=0 ft, rule=twelfths, at=#/2 h", "fall", "in/h", reference.Printed, "SailNet-44899", "list for an area with 6 ft tides", "6", "12", "18", "18", "12", "6"),
	[]reference.Check{
		{ID: "tenths-half", Subject: "tide.Tenths", In: "x=1/2", Printed: "50", Unit: "%", Basis: reference.Exact, Note: "running sum of 10, 15, 25"},
		{ID: "tenths-first", Subject: "tide.Tenths", In: "x=1/6", Printed: "10", Unit: "%", Basis: reference.Printed, Source: "DIYWoodBoat", Locator: "list of the rule of tenths"},
		{ID: "tenths-inverse-first", Subject: "tide.TenthsInverse", In: "f=10 %", Printed: "1/6", Basis: reference.Printed, Source: "DIYWoodBoat", Locator: "list of the rule of tenths", Tol: 1e-12, Why: "a fraction has no last digit"},
		{ID: "slope-cosine-half-tide", Subject: "tide.Rule.Slope", In: "rule=cosine, x=1/2", Result: "slope", Printed: "1.5707963267948966", Basis: reference.Exact, Note: "π/2"},
		{ID: "cosine-half", Subject: "tide.Cosine", In: "x=1/2", Printed: "1/2", Basis: reference.Exact},
		{ID: "cosine-third", Subject: "tide.Cosine", In: "x=1/3", Printed: "1/4", Basis: reference.Exact},
		{ID: "cosine-inverse-quarter", Subject: "tide.CosineInverse", In: "f=1/4", Printed: "1/3", Basis: reference.Exact},
		{ID: "twelfths-2-to-14", Subject: "tide.Limb.Height", In: "from=0 h, from-height=2 m, to=6 h, to-height=14 m, rule=twelfths, at=3 h", Printed: "8", Unit: "m", Basis: reference.Printed, Source: "TwelfthsExample", Locator: "section Example Calculation"},
		{ID: "twelfths-2-to-14-rise", Subject: "tide.Limb.Height", In: "from=0 h, from-height=2 m, to=6 h, to-height=14 m, rule=twelfths, at=3 h", Result: "change", Printed: "6", Unit: "m", Basis: reference.Printed, Source: "TwelfthsExample", Locator: "section Example Calculation"},
		{ID: "twelfths-st-malo-first", Subject: "tide.Limb.Height", In: stMalo + "10:44:20 hms", Printed: "10.28", Unit: "m", Basis: reference.Printed, Source: "PermisBateau", Locator: "exercice 1, solution 1, table", Note: "at the end of the first tide-hour of 70 min 20 s, which the source rounds to 10:44"},
		{ID: "twelfths-st-malo-second", Subject: "tide.Limb.Height", In: stMalo + "11:54:40 hms", Printed: "8.84", Unit: "m", Basis: reference.Printed, Source: "PermisBateau", Locator: "exercice 1, solution 1, table"},
		{ID: "twelfths-st-malo-third", Subject: "tide.Limb.Height", In: stMalo + "13:05:00 hms", Printed: "6.68", Unit: "m", Basis: reference.Printed, Source: "PermisBateau", Locator: "exercice 1, solution 1, table", Note: "6.675: half a digit, which the source rounds up"},
		{ID: "twelfths-st-malo-1230", Subject: "tide.Limb.Height", In: stMalo + "12:30 hh:mm", Printed: "7.74", Unit: "m", Basis: reference.Printed, Source: "PermisBateau", Locator: "exercice 1, solution 2", Tol: 0.03, Why: "the source counts tide-hours of 70 min instead of 70 min 20 s", Note: "7.751 with the exact tide-hour"},
		{ID: "range-st-malo", Subject: "tide.Limb.Range", In: "high=11 m, low=2.35 m", Printed: "8.65", Unit: "m", Basis: reference.Printed, Source: "PermisBateau", Locator: "exercice 1 (marnage)"},
		{ID: "tide-hour-st-malo", Subject: "tide.Limb.TideHour", In: "from=09:34 hh:mm, from-height=11 m, to=16:36 hh:mm, to-height=2.35 m", Printed: "70", Unit: "min", Basis: reference.Printed, Source: "PermisBateau", Locator: "exercice 1 (heure-marée 1 h 10)"},
		{ID: "tide-hour-belle-ile", Subject: "tide.Limb.TideHour", In: "from=10:05 hh:mm, from-height=0.70 m, to=16:10 hh:mm, to-height=5.40 m", Printed: "60.83", Unit: "min", Basis: reference.Printed, Source: "BelleIle", Locator: "page 1, heure-marée"},
		{ID: "range-belle-ile", Subject: "tide.Limb.Range", In: "high=5.40 m, low=0.70 m", Printed: "4.70", Unit: "m", Basis: reference.Printed, Source: "BelleIle", Locator: "page 1, marnage"},
		{ID: "twelfth-belle-ile", Subject: "tide.Limb.Height", In: "from=10:05 hh:mm, from-height=0.70 m, to=16:10 hh:mm, to-height=5.40 m, rule=twelfths, at=11:05:50 hms", Result: "change", Printed: "0.392", Unit: "m", Basis: reference.Printed, Source: "BelleIle", Locator: "page 1, douzième"},
		{ID: "twelfth-plymouth", Subject: "tide.Limb.Height", In: sixHourRise + "1 h", Result: "change", Printed: "0.41", Unit: "m", Basis: reference.Printed, Source: "YachtingMonthly2021", Locator: "article body: 4.9/12"},
		{ID: "range-plymouth", Subject: "tide.Limb.Range", In: "high=5.6 m, low=0.7 m", Printed: "4.9", Unit: "m", Basis: reference.Printed, Source: "YachtingMonthly2021", Locator: "article body"},
		{ID: "range-brisbane", Subject: "tide.Limb.Range", In: "high=1.88 m, low=0.73 m", Printed: "1.15", Unit: "m", Basis: reference.Printed, Source: "AllShips", Locator: "Calculating tide range, Brisbane Bar 16 April 2025"},
		{ID: "range-dover-1", Subject: "tide.Limb.Range", In: "high=6.1 m, low=1.4 m", Printed: "4.7", Unit: "m", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Big springs and little springs"},
		{ID: "range-dover-2", Subject: "tide.Limb.Range", In: "high=6.2 m, low=1.3 m", Printed: "4.9", Unit: "m", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Big springs and little springs"},
		{ID: "range-dover-3", Subject: "tide.Limb.Range", In: "high=6.8 m, low=0.6 m", Printed: "6.2", Unit: "m", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Big springs and little springs"},
		{ID: "range-dover-4", Subject: "tide.Limb.Range", In: "high=6.2 m, low=1.2 m", Printed: "5.0", Unit: "m", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Big springs and little springs"},
		{ID: "range-dover-5", Subject: "tide.Limb.Range", In: "high=6.8 m, low=0.5 m", Printed: "6.3", Unit: "m", Basis: reference.Table, Source: "ExeterTides", Locator: "slide Big springs and little springs", Note: "the slide's row 6.5/1.0 = 4.5 is a slip (5.5) and left out"},
		{ID: "cosine-annapolis", Subject: "tide.Limb.Height", In: "from=10:42 hh:mm, from-height=0.4 m, to=16:54 hh:mm, to-height=9.6 m, rule=cosine, at=14:46 hh:mm", Printed: "7.1641", Unit: "m", Basis: reference.Printed, Source: "Annapolis", Locator: "part b"},
		{ID: "cosine-half-rate", Subject: "tide.Limb.Rate", In: "from=0 h, from-height=0 m, to=6 h, to-height=6 m, rule=cosine, at=3 h", Result: "rate", Printed: "1.5707963267948966", Unit: "m/h", Basis: reference.Exact, Note: "π/2 of the range in the duration"},
		{ID: "half-range-time", Subject: "tide.Limb.Elapsed", In: "from=0 h, from-height=0 m, to=6 h, to-height=4.2 m, rule=twelfths, height=2.1 m", Result: "elapsed", Printed: "3", Unit: "h", Basis: reference.Printed, Source: "ExeterTides", Locator: "slide after Charted Depth: 6/12 of the range 3 h after low water", Note: "the slide wants 2.0 m, 5.7 twelfths, and rounds to 6"},
	})

// fiveToSeven is the bound of the method: durations of 5 to 7 hours.
const fiveToSeven = "article of validity: duration of rise or fall between 5 and 7 hours"

var tideTableChecks = []reference.Check{
	{ID: "shape-five-hours", Subject: "tide.Table.Estimate", In: "from=0 h, from-height=5 m, to=5 h, to-height=1 m, at=2 h, rule=cosine", Result: "remark", Printed: "ordinary", Basis: reference.Printed, Source: "LINZ-Tables", Locator: fiveToSeven},
	{ID: "shape-seven-hours", Subject: "tide.Table.Estimate", In: "from=0 h, from-height=5 m, to=7 h, to-height=1 m, at=2 h, rule=cosine", Result: "remark", Printed: "ordinary", Basis: reference.Printed, Source: "LINZ-Tables", Locator: fiveToSeven},
	{ID: "shape-short", Subject: "tide.Table.Estimate", In: "from=0 h, from-height=5 m, to=4.99 h, to-height=1 m, at=2 h, rule=cosine", Result: "remark", Printed: "rise or fall shorter than the curve is trusted for", Basis: reference.Printed, Source: "LINZ-Tables", Locator: fiveToSeven},
	{ID: "shape-long", Subject: "tide.Table.Estimate", In: "from=0 h, from-height=5 m, to=7.01 h, to-height=1 m, at=2 h, rule=cosine", Result: "remark", Printed: "rise or fall longer than the curve is trusted for", Basis: reference.Printed, Source: "LINZ-Tables", Locator: fiveToSeven},
	{ID: "depth-over-sounding", Subject: "tide.Depth", In: "height=2.5 m, charted=4 m", Printed: "6.5", Unit: "m", Basis: reference.Exact, Note: "observed depth = charted depth + height of tide [SailingIssues]"},
	{ID: "depth-over-drying", Subject: "tide.Depth", In: "height=2.5 m, charted=-0.4 m", Printed: "2.1", Unit: "m", Basis: reference.Exact, Note: "observed depth = height of tide − drying height; 04 underlined dries 40 cm [SailingIssues]"},
	{ID: "window-half-tide", Subject: "tide.Table.Windows", In: "from=0 h, from-height=5 m, to=6 h, to-height=1 m, need=2 m, charted=-1 m", Result: "closes", Printed: "3", Unit: "h", Basis: reference.Exact, Note: "half tide at half time"},
	{ID: "form-number-even", Subject: "tide.FormNumber", In: "k1=0.2 m, o1=0.1 m, m2=1.0 m, s2=0.2 m", Printed: "1/4", Basis: reference.Exact},
	{ID: "kind-semidiurnal", Subject: "tide.KindOf", In: "form-number=0.24", Printed: "semidiurnal", Basis: reference.Memory, Source: "Defant1961", Locator: "form number of Courtier"},
	{ID: "kind-mixed", Subject: "tide.KindOf", In: "form-number=0.84", Printed: "mixed, mainly semidiurnal", Basis: reference.Memory, Source: "Defant1961", Locator: "form number of Courtier"},
	{ID: "kind-mixed-diurnal", Subject: "tide.KindOf", In: "form-number=2.33", Printed: "mixed, mainly diurnal", Basis: reference.Memory, Source: "Defant1961", Locator: "form number of Courtier"},
	{ID: "kind-diurnal", Subject: "tide.KindOf", In: "form-number=11.23", Printed: "diurnal", Basis: reference.Memory, Source: "Defant1961", Locator: "form number of Courtier"},
	{ID: "barometer-bom", Subject: "tide.InverseBarometer", In: "pressure=1003.25 hPa, reference=1013.25 hPa", Printed: "0.1", Unit: "m", Basis: reference.Printed, Source: "BoM-Tides", Locator: "10 hectopascals: about 0.1 m"},
	{ID: "barometer-kantha", Subject: "tide.InverseBarometer", In: "pressure=1012.25 hPa, reference=1013.25 hPa", Printed: "1.01", Unit: "cm", Basis: reference.Printed, Source: "Kantha1994", Locator: "1.01 cm a millibar, quoted in the introduction of a model manual", Tol: 0.02, Why: "the source does not say its density; 1.01 needs 1010 kg/m³, sea water of 1025 gives 0.995"},
	{ID: "barometer-surge-1", Subject: "tide.Water.InverseBarometer", In: "pressure=960 hPa, reference=1013.25 hPa, gravity=9.81, density=1025", Printed: "0.53", Unit: "m", Basis: reference.Printed, Source: "SurgeExamples", Locator: "example 1"},
	{ID: "barometer-surge-2", Subject: "tide.Water.InverseBarometer", In: "pressure=990 hPa, reference=1013.25 hPa, gravity=9.81, density=1025", Printed: "0.23", Unit: "m", Basis: reference.Printed, Source: "SurgeExamples", Locator: "example 2"},
	{ID: "stress-surge-1", Subject: "tide.Stretch.Stress", In: "wind=50 m/s", Printed: "12.56", Unit: "Pa", Basis: reference.Printed, Source: "SurgeExamples", Locator: "example 1"},
	{ID: "stress-surge-2", Subject: "tide.Stretch.Stress", In: "wind=30 m/s", Printed: "3.04", Unit: "Pa", Basis: reference.Printed, Source: "SurgeExamples", Locator: "example 2"},
	{ID: "drag-ten", Subject: "tide.DragCoefficient", In: "wind=10 m/s", Printed: "0.00142", Basis: reference.Exact},
	{ID: "setup-surge-1", Subject: "tide.Water.WindSetup", In: "wind=50 m/s, fetch=300 km, depth=20 m, gravity=9.81, density=1025", Printed: "18.73", Unit: "m", Basis: reference.Printed, Source: "SurgeExamples", Locator: "example 1", Note: "an arithmetic check: the setup is as large as the depth, far outside the straight relation, and the result says so"},
	{ID: "setup-surge-2", Subject: "tide.Water.WindSetup", In: "wind=30 m/s, fetch=50 km, depth=50 m, gravity=9.81, density=1025", Printed: "0.30", Unit: "m", Basis: reference.Printed, Source: "SurgeExamples", Locator: "example 2"},
}

var tideStreamChecks = slices.Concat(
	[]reference.Check{
		{ID: "springs-st-marys", Subject: "tide.RateByFactor", In: "range=3.1 m, spring-range=4.73 m, spring-rate=1.7 kn", Printed: "1.1", Unit: "kn", Basis: reference.Printed, Source: "SeaKayakNav", Locator: "2.10, St. Mary's Sound, 1 June 2020", Note: "the factor 0.655 is printed 0.65"},
		{ID: "springness-springs", Subject: "tide.Springness", In: "range=4.73 m, spring-range=4.73 m, neap-range=2.2 m", Printed: "1", Basis: reference.Exact},
		{ID: "springness-neaps", Subject: "tide.Springness", In: "range=2.2 m, spring-range=4.73 m, neap-range=2.2 m", Printed: "0", Basis: reference.Exact},
		{ID: "rate-at-half", Subject: "tide.RateAtRange", In: "range=4 m, spring-range=5 m, spring-rate=2.1 kn, neap-range=3 m, neap-rate=1.0 kn", Printed: "1.55", Unit: "kn", Basis: reference.Exact, Note: "half way between neaps and springs"},
		{ID: "rate-atlas", Subject: "tide.RateAtRange", In: "range=4.8 m, spring-range=6.0 m, spring-rate=2.1 kn, neap-range=3.2 m, neap-rate=1.0 kn", Printed: "1.6", Unit: "kn", Basis: reference.Memory, Source: "Cunliffe", Locator: "Paying the rates: 1.0 and 2.1 kn at a range of 4.8 m", Note: "the print was read, but the atlas' mean ranges (Dover, 6.0 and 3.2 m) are from memory"},
		{ID: "sine-sewells", Subject: "tide.Sine", In: "x=89/148", Printed: "0.8", Basis: reference.Printed, Source: "NAVEDTRA14220", Locator: "page 7-22, step 23 (factor, table 3)"},
		{ID: "rate-sewells", Subject: "tide.EventStreams.Rate", In: "slack=09:31 hh:mm, maximum=11:59 hh:mm, rate=0.66 kn, at=11:00 hh:mm", Printed: "0.5", Unit: "kn", Basis: reference.Printed, Source: "NAVEDTRA14220", Locator: "page 7-22, step 24", Note: "0.535; with the factor rounded to 0.8 the source has 0.528"},
		{ID: "time-sewells", Subject: "tide.StreamOffsets.Apply", In: "at=12:46 hh:mm, rate=0.6 kn, shift=-47 min, ratio=1.1", Result: "clock", Printed: "11:59", Unit: "hh:mm", Basis: reference.Printed, Source: "NAVEDTRA14220", Locator: "page 7-22, step 16"},
		{ID: "slack-sewells", Subject: "tide.StreamOffsets.Apply", In: "at=10:12 hh:mm, rate=0 kn, shift=-41 min, ratio=1.1", Result: "clock", Printed: "09:31", Unit: "hh:mm", Basis: reference.Printed, Source: "NAVEDTRA14220", Locator: "page 7-22, step 13"},
		{ID: "maximum-sewells", Subject: "tide.StreamOffsets.Apply", In: "at=12:46 hh:mm, rate=0.6 kn, shift=-47 min, ratio=1.1", Result: "rate", Printed: "0.66", Unit: "kn", Basis: reference.Printed, Source: "NAVEDTRA14220", Locator: "page 7-22, step 19"},
		{ID: "fifty-ninety-2kn-first", Subject: "tide.FiftyNinety", In: "x=1/3, maximum=2 kn", Printed: "1", Unit: "kn", Basis: reference.Printed, Source: "Jamieson2009", Locator: "p. 110, 1004"},
		{ID: "fifty-ninety-2kn-second", Subject: "tide.FiftyNinety", In: "x=2/3, maximum=2 kn", Printed: "1.8", Unit: "kn", Basis: reference.Printed, Source: "Jamieson2009", Locator: "p. 110, 1108"},
		{ID: "fifty-ninety-charleston-first", Subject: "tide.FiftyNinety", In: "x=1/3, maximum=1.9 kn", Printed: "1.0", Unit: "kn", Basis: reference.Printed, Source: "Jamieson2009", Locator: "p. 110, 0728", Note: "half of 1.9 is 0.95: half a digit, which the source rounds up"},
		{ID: "fifty-ninety-charleston-second", Subject: "tide.FiftyNinety", In: "x=2/3, maximum=1.9 kn", Printed: "1.8", Unit: "kn", Basis: reference.Printed, Source: "Jamieson2009", Locator: "p. 110, 0824", Tol: 0.1, Why: "the source rounds 1.71 up to 1.8"},
		{ID: "fifty-ninety-charleston-maximum", Subject: "tide.FiftyNinety", In: "x=1, maximum=1.9 kn", Printed: "1.9", Unit: "kn", Basis: reference.Printed, Source: "Jamieson2009", Locator: "p. 110, 0919"},
		{ID: "fifty-ninety-narrows-two-hours", Subject: "tide.FiftyNinety", In: "x=2/3, maximum=1.0 kn", Printed: "0.9", Unit: "kn", Basis: reference.Printed, Source: "SoundPaddle2012", Locator: "example: maximum at noon, slack at 3 PM, rate at 1 PM"},
		{ID: "fifty-ninety-narrows-one-hour", Subject: "tide.FiftyNinety", In: "x=1/3, maximum=1.0 kn", Printed: "0.5", Unit: "kn", Basis: reference.Printed, Source: "SoundPaddle2012", Locator: "example: maximum at noon, slack at 3 PM, rate at 2 PM"},
		{ID: "thirds-drift-all", Subject: "tide.ThirdsDrift", In: "x=1, maximum=3 kn, duration=6 h", Printed: "12", Unit: "nmi", Basis: reference.Exact, Note: "the sum of 1, 2, 3, 3, 2, 1; the sine gives 11.46"},
		{ID: "thirds-drift-first", Subject: "tide.ThirdsDrift", In: "x=1/6, maximum=3 kn, duration=6 h", Printed: "1", Unit: "nmi", Basis: reference.Printed, Source: "ThirdsRule", Locator: "list of drifts"},
		{ID: "sine-drift-all", Subject: "tide.SineDrift", In: "x=1", Printed: "0.63661977236758134", Basis: reference.Exact, Note: "2/π"},
		{ID: "weak-half", Subject: "tide.WeakStream", In: "limit=0.5 kn, maximum=1 kn, slack-to-slack=6 h", Printed: "2", Unit: "h", Basis: reference.Exact, Note: "sin 30° is one half: a third of the stream"},
		{ID: "weak-always", Subject: "tide.WeakStream", In: "limit=1 kn, maximum=1 kn, slack-to-slack=6 h", Printed: "6", Unit: "h", Basis: reference.Exact},
		{ID: "ellipse-circle", Subject: "tide.Ellipse.Axes", In: "east=1 m/s, east-lag=0 deg, north=1 m/s, north-lag=90 deg", Result: "minor", Printed: "1", Basis: reference.Exact},
		{ID: "ellipse-line", Subject: "tide.Ellipse.Axes", In: "east=3 m/s, east-lag=20 deg, north=4 m/s, north-lag=20 deg", Result: "major", Printed: "5", Basis: reference.Exact},
		{ID: "ellipse-phase", Subject: "tide.Ellipse.Velocity", In: "east=2 m/s, east-lag=0 deg, north=1 m/s, north-lag=90 deg, phase=60 deg", Result: "east", Printed: "1", Basis: reference.Exact},
	},
	sixths("thirds-drift-hour", "tide.Thirds", "x=#/12, maximum=3 kn", "", "kn", reference.Printed, "ThirdsRule", "list of drifts in each hour at 3 kn", "1", "2", "3", "3", "2", "1"),
	weakStreamTable(), rateFactorTable())

// weakStreamTable is NOAA's table 4 A: minutes with the stream no faster than
// 0.1 to 0.5 kn, by maximum rate. From memory; it fits six hours from slack to slack.
func weakStreamTable() []reference.Check {
	var out []reference.Check
	for _, row := range []string{"1.0 23 46 70 94 120", "1.5 15 31 46 62 78", "2.0 11 23 35 46 58", "3.0 8 15 23 31 38", "4.0 6 11 17 23 29", "5.0 5 9 14 18 23"} {
		f := strings.Fields(row)
		for i, minutes := range f[1:] {
			out = append(out, reference.Check{ID: fmt.Sprintf("weak-table-%s-%d", strings.ReplaceAll(f[0], ".", ""), i+1), Subject: "tide.WeakStream",
				In: fmt.Sprintf("limit=0.%d kn, maximum=%s kn, slack-to-slack=6 h", i+1, f[0]), Printed: minutes, Unit: "min",
				Basis: reference.Memory, Source: "NOAA-Currents", Locator: "table 4 A", Tol: 1, Why: "a table of whole minutes as remembered"})
		}
	}
	return out
}

// rateFactorTable is NOAA's table 3 A for three hours from slack to maximum. From memory.
func rateFactorTable() []reference.Check {
	var out []reference.Check
	for i, p := range []string{"0.2", "0.3", "0.5", "0.6", "0.8", "0.9", "0.9", "1.0", "1.0"} {
		out = append(out, reference.Check{ID: fmt.Sprintf("sine-table-%d", 20*(i+1)), Subject: "tide.Sine", In: fmt.Sprintf("x=%d/180", 20*(i+1)), Printed: p,
			Basis: reference.Memory, Source: "NOAA-Currents", Locator: "table 3 A, 3 h from slack to maximum"})
	}
	return out
}

var tideSecondaryChecks = []reference.Check{
	{ID: "difference-barfleur", Subject: "tide.TimeDifference", In: "clock=18:46 hh:mm, clock1=15:00 hh:mm, difference1=51 min, clock2=21:00 hh:mm, difference2=44 min", Printed: "47", Unit: "min", Basis: reference.Printed, Source: "NauticAliveSecondary", Locator: "whole page"},
	{ID: "difference-littleport", Subject: "tide.TimeDifference", In: "clock=03:00 hh:mm, clock1=00:00 hh:mm, difference1=35 min, clock2=06:00 hh:mm, difference2=23 min", Printed: "29", Unit: "min", Basis: reference.Printed, Source: "MidshipmanSecondary", Locator: "explanation: high water at 0300"},
	{ID: "height-difference-springs", Subject: "tide.HeightDifference", In: "height=4.2 m, height1=4.2 m, difference1=1.1 m, height2=3.4 m, difference2=0.8 m", Printed: "1.1", Unit: "m", Basis: reference.Table, Source: "MidshipmanSecondary", Locator: "differences of Littleport, MHWS"},
	{ID: "height-difference-neaps", Subject: "tide.HeightDifference", In: "height=3.4 m, height1=4.2 m, difference1=1.1 m, height2=3.4 m, difference2=0.8 m", Printed: "0.8", Unit: "m", Basis: reference.Table, Source: "MidshipmanSecondary", Locator: "differences of Littleport, MHWN"},
	{ID: "height-difference-low-neaps", Subject: "tide.HeightDifference", In: "height=1.1 m, height1=1.1 m, difference1=0.2 m, height2=0.4 m, difference2=0.1 m", Printed: "0.2", Unit: "m", Basis: reference.Table, Source: "MidshipmanSecondary", Locator: "differences of Littleport, MLWN"},
	{ID: "height-difference-low-springs", Subject: "tide.HeightDifference", In: "height=0.4 m, height1=1.1 m, difference1=0.2 m, height2=0.4 m, difference2=0.1 m", Printed: "0.1", Unit: "m", Basis: reference.Table, Source: "MidshipmanSecondary", Locator: "differences of Littleport, MLWS"},
	{ID: "height-difference-half", Subject: "tide.HeightDifference", In: "height=3.8 m, height1=4.2 m, difference1=1.1 m, height2=3.4 m, difference2=0.8 m", Printed: "0.95", Unit: "m", Basis: reference.Exact, Note: "half way between the marks"},
	{ID: "secondary-barfleur", Subject: "tide.Offsets.Apply", In: "at=18:46 hh:mm, height=6 m, turn=high, shift=47 min, ratio=1, plus=0 m", Result: "clock", Printed: "19:33", Unit: "hh:mm", Basis: reference.Printed, Source: "NauticAliveSecondary", Locator: "whole page"},
	{ID: "secondary-after-midnight", Subject: "tide.Offsets.Apply", In: "at=22:00 hh:mm, height=1 m, turn=high, shift=3 h, ratio=1, plus=0 m", Result: "clock", Printed: "01:00", Unit: "hh:mm", Basis: reference.Printed, Source: "Bowditch2002", Locator: "tides, part 3: 2200 on 23 March and 3 hours later, quoted in a navigation-information page"},
	{ID: "secondary-before-midnight", Subject: "tide.Offsets.Apply", In: "at=02:00 hh:mm, height=1 m, turn=high, shift=-5 h, ratio=1, plus=0 m", Result: "clock", Printed: "21:00", Unit: "hh:mm", Basis: reference.Printed, Source: "Bowditch2002", Locator: "tides, part 3: 0200 on 29 March and 5 hours earlier, quoted in a navigation-information page"},
	{ID: "secondary-belle-ile-low", Subject: "tide.Offsets.Apply", In: "at=10:20 hh:mm, height=0.7 m, turn=low, shift=-15 min, ratio=1, plus=0 m", Result: "clock", Printed: "10:05", Unit: "hh:mm", Basis: reference.Printed, Source: "BelleIle", Locator: "page 1"},
	{ID: "secondary-belle-ile-high", Subject: "tide.Offsets.Apply", In: "at=16:35 hh:mm, height=5.25 m, turn=high, shift=-25 min, ratio=1, plus=0.15 m", Result: "clock", Printed: "16:10", Unit: "hh:mm", Basis: reference.Printed, Source: "BelleIle", Locator: "page 1"},
	{ID: "secondary-belle-ile-height", Subject: "tide.Offsets.Apply", In: "at=16:35 hh:mm, height=5.25 m, turn=high, shift=-25 min, ratio=1, plus=0.15 m", Result: "height", Printed: "5.40", Unit: "m", Basis: reference.Printed, Source: "BelleIle", Locator: "page 1"},
	{ID: "ratio-below-datum", Subject: "tide.Correction.Of", In: "height=-0.049 m, ratio=1.11, plus=0 m", Printed: "-0.054", Unit: "m", Basis: reference.Memory, Source: "NOAA-Hilo", Locator: "subordinate station Nurse Channel, a low water below the datum", Note: "a ratio multiplies heights below the datum too"},
	{ID: "ratio-and-constant", Subject: "tide.Correction.Of", In: "height=2 m, ratio=1.5, plus=0.1 m", Printed: "3.1", Unit: "m", Basis: reference.Exact},
}

var tideMoonChecks = slices.Concat([]reference.Check{
	{ID: "moon-mean-49a", Subject: "tide.MeanPhase", In: "k=-283", Printed: "2443192.94102", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 49.a, p. 353", Note: "the mean phase, seven hours from the true one"},
	{ID: "moon-mean-49b", Subject: "tide.MeanPhase", In: "k=544.75", Printed: "2467636.88597", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 49.b, p. 353"},
	{ID: "moon-49a", Subject: "tide.TruePhase", In: "k=-283", Printed: "2443192.65118", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 49.a, p. 353"},
	{ID: "moon-49b", Subject: "tide.TruePhase", In: "k=544.75", Printed: "2467636.49186", Basis: reference.Printed, Source: "Meeus1998", Locator: "example 49.b, p. 353"},
	{ID: "age-per-degree", Subject: "tide.Age", In: "m2-lag=0 deg, s2-lag=1 deg", Printed: "0.984", Unit: "h", Basis: reference.Printed, Source: "NOS-Glossary", Locator: "age of phase inequality = 0.984 (S2° − M2°) hours"},
	{ID: "age-sign", Subject: "tide.Age", In: "m2-lag=1 deg, s2-lag=0 deg", Printed: "-0.984", Unit: "h", Basis: reference.Printed, Source: "NOS-Glossary", Locator: "age of phase inequality = 0.984 (S2° − M2°) hours"},
	{ID: "range-springs", Subject: "tide.RangeByPhase", In: "m2=1.4 m, s2=0.5 m, since-springs=0 d", Printed: "3.8", Unit: "m", Basis: reference.Exact},
	{ID: "range-neaps", Subject: "tide.RangeByPhase", In: "m2=1.4 m, s2=0.5 m, since-springs=7.38264721525 d", Printed: "1.8", Unit: "m", Basis: reference.Exact},
}, moonTable())

// moonTable is the new and full moons of 2026 and 2027 of the US Naval
// Observatory, to the minute of universal time.
func moonTable() []reference.Check {
	var out []reference.Check
	add := func(phase, times string) {
		for _, at := range strings.Fields(times) {
			day, clockTime, _ := strings.Cut(at, "T")
			out = append(out, reference.Check{ID: "moon-" + strings.ReplaceAll(phase, " ", "-") + "-" + day, Subject: "tide.MoonPhases",
				In: "phase=" + phase + ", near=" + day + "T00:00:00Z", Printed: clockTime, Unit: "hh:mm", Basis: reference.Table, Source: "USNO-Phases", Locator: day[:4],
				Tol: 60, Why: "the series is good to some 20 s, the print to 30 s"})
		}
	}
	add("new moon", `2026-01-18T19:52 2026-02-17T12:01 2026-03-19T01:23 2026-04-17T11:52 2026-05-16T20:01 2026-06-15T02:54 2026-07-14T09:43
		2026-08-12T17:37 2026-09-11T03:27 2026-10-10T15:50 2026-11-09T07:02 2026-12-09T00:52
		2027-01-07T20:24 2027-02-06T15:56 2027-03-08T09:29 2027-04-06T23:51 2027-05-06T10:58 2027-06-04T19:40 2027-07-04T03:02
		2027-08-02T10:05 2027-08-31T17:41 2027-09-30T02:36 2027-10-29T13:36 2027-11-28T03:24 2027-12-27T20:12`)
	add("full moon", `2026-01-03T10:03 2026-02-01T22:09 2026-03-03T11:38 2026-04-02T02:12 2026-05-01T17:23 2026-05-31T08:45 2026-06-29T23:56
		2026-07-29T14:36 2026-08-28T04:18 2026-09-26T16:49 2026-10-26T04:12 2026-11-24T14:53 2026-12-24T01:28
		2027-01-22T12:17 2027-02-20T23:23 2027-03-22T10:44 2027-04-20T22:27 2027-05-20T10:59 2027-06-19T00:44 2027-07-18T15:45
		2027-08-17T07:29 2027-09-15T23:03 2027-10-15T13:47 2027-11-14T03:26 2027-12-13T16:09`)
	return out
}
