package wind

import (
	"fmt"
	"math"
)

// The Beaufort scale is kept as WMO Code table 1100 prints it. The classes in
// whole knots are the primary ones: warnings and forecasts are worded in them.
// The classes in m/s are floor(10·0.836·(B+½)^1.5)/10, the code's own formula
// cut to a decimal; they put 16, 21 and 27 knots one force higher than the
// knots do, which is why the two are two functions here.

// Force is a number of the Beaufort scale, 0 (calm) to 12 (hurricane).
type Force int

// force is one row of the scale.
type force struct {
	name           string
	kn             int     // lower limit in whole knots
	top            float64 // upper limit in m/s, to a decimal
	kmh            int     // lower limit in whole km/h
	probable, most float64 // wave heights in m on the open sea
}

var beaufort = [13]force{
	{"calm", 0, 0.2, 0, 0, 0},
	{"light air", 1, 1.5, 1, 0.1, 0.1},
	{"light breeze", 4, 3.3, 6, 0.2, 0.3},
	{"gentle breeze", 7, 5.4, 12, 0.6, 1.0},
	{"moderate breeze", 11, 7.9, 20, 1.0, 1.5},
	{"fresh breeze", 17, 10.7, 29, 2.0, 2.5},
	{"strong breeze", 22, 13.8, 39, 3.0, 4.0},
	{"near gale", 28, 17.1, 50, 4.0, 5.5},
	{"gale", 34, 20.7, 62, 5.5, 7.5},
	{"strong gale", 41, 24.4, 75, 7.0, 10.0},
	{"storm", 48, 28.4, 89, 9.0, 12.5},
	{"violent storm", 56, 32.6, 103, 11.5, 16.0},
	{"hurricane", 64, math.Inf(1), 118, 14.0, math.NaN()},
}

// Beaufort returns the force of a mean wind at 10 m, in m/s, on the scale in
// whole knots: the speed is rounded to the nearest knot first (halves up), as
// forecasts are worded, and then classed
//
//	0 below 1 | 1–3 | 4–6 | 7–10 | 11–16 | 17–21 | 22–27 | 28–33 | 34–40 |
//	41–47 | 48–55 | 56–63 | 64 and more
//
// The error is ErrSpeed for a speed that is negative, infinite or NaN.
//
// Source: [WMO-1100] Code table 1100, knots.
func Beaufort(speed float64) (Force, error) {
	if !validSpeed(speed) {
		return 0, fmt.Errorf("%w: Speed %v m/s is not zero or more", ErrSpeed, speed)
	}
	kn := wholeKnots(speed)
	f := 12
	for kn < float64(beaufort[f].kn) { // no speed is below force 0
		f--
	}
	return Force(f), nil
}

// wholeKnots rounds a speed in m/s to whole knots, halves up. The nudge keeps
// 33.5 knots, which comes back from m/s an ulp low or high, a half.
func wholeKnots(speed float64) float64 { return math.Floor(speed/Knot + 0.5 + 1e-9) }

// BeaufortMetric returns the force on the scale in metres a second: the speed
// is rounded to the tenth and classed by the upper limits
//
//	0.2 1.5 3.3 5.4 7.9 10.7 13.8 17.1 20.7 24.4 28.4 32.6
//
// It is one force above [Beaufort] at 16, 21 and 27 knots. Prefer Beaufort for
// anything that quotes or compares a forecast.
//
// The error is ErrSpeed for a speed that is negative, infinite or NaN.
//
// Source: [WMO-1100] Code table 1100, metres a second.
func BeaufortMetric(speed float64) (Force, error) {
	if !validSpeed(speed) {
		return 0, fmt.Errorf("%w: Speed %v m/s is not zero or more", ErrSpeed, speed)
	}
	tenths := math.Round(speed * 10)
	f := 0
	for tenths > math.Round(beaufort[f].top*10) { // and none above force 12
		f++
	}
	return Force(f), nil
}

// BeaufortNumber returns the place of a speed in m/s on the continuous scale,
// the inverse of [BeaufortSpeed]: B = (U/0.836)^(2/3).
//
// Special cases are:
//
//	NaN for a negative speed, an infinity or NaN
//
// Source: [WMO-1100] the scale's own formula, inverted.
func BeaufortNumber(speed float64) float64 {
	if !validSpeed(speed) {
		return math.NaN()
	}
	b := math.Cbrt(speed / 0.836)
	return b * b
}

// BeaufortSpeed returns the speed in m/s at 10 m that stands for the number b
// of the Beaufort scale, whole or not: U = 0.836 b^1.5.
//
// Printed "mean speeds" of the forces are the middles of the classes and differ
// from it by up to 0.8 kn.
//
// Special cases are:
//
//	NaN for b below 0 or above 17, the last number of the extended scale, or NaN
//
// Source: [WMO-1100] the formula behind Code table 1100.
func BeaufortSpeed(b float64) float64 {
	if !(b >= 0 && b <= 17) {
		return math.NaN()
	}
	return 0.836 * b * math.Sqrt(b)
}

// ok panics for a force that is no number of the scale.
func (f Force) ok() force {
	if f < 0 || f > 12 {
		panic(fmt.Sprintf("wind: Force(%d) is outside 0 to 12", int(f)))
	}
	return beaufort[f]
}

// Name returns the name of the force as forecasts use it: "fresh breeze". It
// panics, as all methods of Force do, outside 0 to 12.
//
// Source: [WMO-1100] Code table 1100, descriptive terms.
func (f Force) Name() string { return f.ok().name }

// String prints "force 5, fresh breeze".
func (f Force) String() string {
	if f < 0 || f > 12 {
		return fmt.Sprintf("Force(%d)", int(f))
	}
	return fmt.Sprintf("force %d, %s", int(f), beaufort[f].name)
}

// Range returns the mean speeds in m/s that [Beaufort] puts in the force, from
// lo (included) to hi (not included): half a knot below the first whole knot
// of the class to half a knot above the last. hi is +Inf for force 12.
//
// Source: [WMO-1100] Code table 1100, knots.
func (f Force) Range() (lo, hi float64) {
	row := f.ok()
	if f > 0 {
		lo = (float64(row.kn) - 0.5) * Knot
	}
	hi = math.Inf(1)
	if f < 12 {
		hi = (float64(beaufort[f+1].kn) - 0.5) * Knot
	}
	return lo, hi
}

// Knots returns the whole knots of the class as printed, both included. Force
// 0 is 0 to 0 (printed "less than 1") and 12 has no upper limit: hi is -1 and
// bounded false.
//
// Source: [WMO-1100] Code table 1100, knots.
func (f Force) Knots() (lo, hi int, bounded bool) {
	lo = f.ok().kn
	if f == 12 {
		return lo, -1, false
	}
	return lo, beaufort[f+1].kn - 1, true
}

// KilometresAnHour returns the whole km/h of the class as printed, like
// [Force.Knots].
//
// Source: [WMO-1100] Code table 1100, km/h.
func (f Force) KilometresAnHour() (lo, hi int, bounded bool) {
	lo = f.ok().kmh
	if f == 12 {
		return lo, -1, false
	}
	return lo, beaufort[f+1].kmh - 1, true
}

// OpenSeaHeight returns the probable height in m of the waves that the force
// raises, and the probable maximum, ON THE OPEN SEA, fully grown, far from land:
// what to expect offshore after a day or more of it. In a bay, off a weather
// shore or in the first hours it is several times too high; force 5 gives 2 m
// here and about 0.6 m on a 10 km fetch. Use a growth law for those. Neither
// figure measures or defines a force.
//
// The maximum of force 12 is not printed: NaN; its probable height is a lower
// bound.
//
// Source: [WMO-1100] Code table 1100, probable wave heights.
func (f Force) OpenSeaHeight() (probable, maximum float64) {
	row := f.ok()
	return row.probable, row.most
}
