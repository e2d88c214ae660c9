package route

import (
	"math"
)

// WindChill returns the wind chill index of 2001 in degrees Celsius, for air at
// a temperature in degrees Celsius and a wind of 10 m height in m/s. In Celsius
// and km/h it is
//
//	13.12 + 0.6215 T + (0.3965 T - 11.37) V^0.16
//
// It says how fast a dry face cools. It says nothing of a wet body.
//
// Special cases are:
//
//	air above 10 C, or wind below 4.8 km/h: the air temperature, there is no index
//	a temperature below -273.15, a negative wind, NaN or an infinity: NaN
//
// Source: [EC-WindChill] formula of 2001.
func WindChill(air, wind float64) float64 {
	if !chillInput(air, wind) {
		return math.NaN()
	}
	v := wind / KmPerHour
	if air > 10 || v < 4.8 {
		return air
	}
	return 13.12 + 0.6215*air + (0.3965*air-11.37)*math.Pow(v, 0.16)
}

// WindChillUS is the same index with the rounded coefficients of its US form,
// which in Fahrenheit and mph is
//
//	35.74 + 0.6215 T + (0.4275 T - 35.75) V^0.16
//
// Arguments and result are in Celsius and m/s. It differs from [WindChill] by
// some hundredths of a degree.
//
// Special cases are:
//
//	air above 50 F, or wind below 3 mph: the air temperature, there is no index
//	a temperature below -273.15, a negative wind, NaN or an infinity: NaN
//
// Source: [NWS-WindChill] formula of 2001.
func WindChillUS(air, wind float64) float64 {
	if !chillInput(air, wind) {
		return math.NaN()
	}
	t, v := air*9/5+32, wind/MilePerHour
	if t > 50 || v < 3 {
		return air
	}
	return (35.74 + 0.6215*t + (0.4275*t-35.75)*math.Pow(v, 0.16) - 32) * 5 / 9
}

func chillInput(air, wind float64) bool {
	return air >= -273.15 && finite(air) && wind >= 0 && finite(wind)
}

// ColdCaution is what must be said beside any time in cold water.
const ColdCaution = "Times in cold water are averages of people who float, with a spread of half and more. " +
	"Most deaths in cold water come before hypothermia, from the gasp of the first minute and from arms that stop working. " +
	"No time here is a time anybody can be promised."

// HaywardTime returns the time in seconds that Hayward, Eckerson and Collis
// predicted in 1975 for an average adult in light clothes and a life jacket,
// keeping still, in water of a temperature in degrees Celsius, until the body
// has cooled to where it fails:
//
//	minutes = 15 + 7.2 / (0.0785 - 0.0034 T)
//
// It is a regression on cooling rates, good to half or so either way, and it
// assumes flotation; never show it without [ColdCaution] and [ColdPhases].
//
// Special cases are:
//
//	water below -2 or above 20 C, where nothing was measured and the formula
//	runs to its pole at 23.1 C: NaN
//	NaN: NaN
//
// Source: [Hayward1975] the regression, quoted at second hand.
func HaywardTime(water float64) float64 {
	if !(water >= -2 && water <= 20) {
		return math.NaN()
	}
	return 60 * (15 + 7.2/(0.0785-0.0034*water))
}

// ColdPhase is one of the phases that a person in cold water goes through,
// with flotation, in seconds from the immersion.
type ColdPhase struct {
	Name     string
	From, To float64 // seconds; To is +Inf for the last
	Means    string
}

// ColdPhases returns the three phases of immersion in cold water. Read
// [ColdCaution] with them.
//
// Source: [ColdBootCamp] four effects of cold-water immersion.
func ColdPhases() [3]ColdPhase {
	return [3]ColdPhase{
		{"cold shock", 1 * Minute, 5 * Minute, "gasping and fast breathing that pass within 1 to 5 minutes: keep the airway clear, hold on to the board"},
		{"incapacitation", 5 * Minute, 15 * Minute, "within 5 to 15 minutes hands and arms stop working: get out, tie on and signal before"},
		{"hypothermia", 30 * Minute, math.Inf(1), "after 30 minutes or more the body core cools: reached by those who float"},
	}
}

// ColdRow is a row of the published table of times in cold water: spans in
// seconds between which exhaustion or unconsciousness, and death, were
// expected. An infinite end is printed there as indefinite.
type ColdRow struct {
	Above, To                    float64 // water temperature in degrees Celsius: above, up to and with
	ExhaustionFrom, ExhaustionTo float64
	LimitFrom, LimitTo           float64
}

const fahrenheit0 = 32.0

func celsius(f float64) float64 { return (f - fahrenheit0) * 5 / 9 }

// ColdTable returns the published table of times in cold water, coldest first.
// The spans are of people who float; read [ColdCaution] with them.
//
// Source: [USSARTF-Cold] table of expected times.
func ColdTable() [7]ColdRow {
	inf := math.Inf(1)
	return [7]ColdRow{
		{math.Inf(-1), celsius(32.5), 0, 15 * Minute, 0, 45 * Minute},
		{celsius(32.5), celsius(40), 15 * Minute, 30 * Minute, 30 * Minute, 90 * Minute},
		{celsius(40), celsius(50), 30 * Minute, 60 * Minute, 1 * Hour, 3 * Hour},
		{celsius(50), celsius(60), 1 * Hour, 2 * Hour, 1 * Hour, 6 * Hour},
		{celsius(60), celsius(70), 2 * Hour, 7 * Hour, 2 * Hour, 40 * Hour},
		{celsius(70), celsius(80), 3 * Hour, 12 * Hour, 3 * Hour, inf},
		{celsius(80), inf, inf, inf, inf, inf},
	}
}

// ColdTimes returns the row of [ColdTable] for water of a temperature in degrees
// Celsius. It is false for a temperature below -2 or above 45, and for NaN.
//
// Source: [USSARTF-Cold] table of expected times.
func ColdTimes(water float64) (ColdRow, bool) {
	if !(water >= -2 && water <= 45) {
		return ColdRow{}, false
	}
	for _, r := range ColdTable() {
		if water <= r.To { // each begins where the one before it ends
			return r, true
		}
	}
	return ColdRow{}, false
}
