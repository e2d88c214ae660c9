package route

import (
	"errors"
	"fmt"
	"math"
	"strings"
)

// Leeway is the motion of a floating thing through the water that wind and
// waves give it. Field tests fit it, for each class of thing, by two straight
// lines in the wind at 10 m, along the wind and across it:
//
//	downwind  = slope W + offset
//	crosswind = slope W + offset, positive to the right of downwind
//
// with a standard error each. A thing sails a little to the right of downwind
// or a little to the left, and nobody knows which at the start; so there are
// two lines across, and every answer here is a pair or a cloud, never a point.
//
// The wave effect is in the fits: leeway is what the tests measured with the
// waves of that wind. Stokes drift is therefore not added; see Drifter.Stokes.

// Fit is one line of the leeway table.
type Fit struct {
	Slope   float64 // of the wind speed, as a fraction: 0.0193 for 1.93 %
	Offset  float64 // m/s
	Scatter float64 // standard error of the fit, m/s
}

// At returns the value of the line at a wind speed in m/s, without its scatter.
func (f Fit) At(wind float64) float64 { return f.Slope*wind + f.Offset }

// Craft is one class of drifting thing with its lines of the leeway table.
type Craft struct {
	Name        string // short, lower case, joined by hyphens
	Class       string // its code in the published table
	Description string
	Downwind    Fit
	Right       Fit // crosswind of the right-going family
	Left        Fit // crosswind of the left-going family; negative values go left
}

// Symmetric reports whether the left family is the mirror of the right one. It
// is for most rows of the table, not for all: never mirror by hand.
func (c Craft) Symmetric() bool {
	return c.Left.Slope == -c.Right.Slope && c.Left.Offset == -c.Right.Offset && c.Left.Scatter == c.Right.Scatter
}

// row makes a Craft from the digits of the published table: slopes in percent,
// offsets and standard errors in cm/s.
func row(name, class, description string, d, r, l [3]float64) Craft {
	fit := func(v [3]float64) Fit { return Fit{v[0] / 100, v[1] / 100, v[2] / 100} }
	return Craft{name, class, description, fit(d), fit(r), fit(l)}
}

// mirrored is a row whose left family is the right one reversed.
func mirrored(name, class, description string, d, r [3]float64) Craft {
	return row(name, class, description, d, r, [3]float64{-r[0], -r[1], r[2]})
}

var crafts = [...]Craft{
	mirrored("person-unknown", "PIW-1", "person in the water, state unknown", [3]float64{0.96, 0, 12}, [3]float64{0.54, 0, 9.4}),
	mirrored("person-vertical", "PIW-2", "person in the water, vertical, flotation vest, conscious", [3]float64{0.48, 0, 8.3}, [3]float64{0.15, 0, 6.7}),
	mirrored("person-sitting", "PIW-3", "person in the water, sitting, life jacket", [3]float64{1.60, -3.98, 2.42}, [3]float64{0.13, 0.33, 2.11}),
	row("person-survival-suit", "PIW-4", "person in the water, survival suit, face up", [3]float64{1.71, 1.12, 3.93}, [3]float64{1.36, -3.30, 1.71}, [3]float64{-0.13, -2.65, 1.62}),
	mirrored("person-wetsuit", "PIW-5", "person in the water, scuba suit, face up", [3]float64{0.63, 0, 5.3}, [3]float64{0.31, 0, 4.5}),
	mirrored("person-face-down", "PIW-6", "person in the water, face down", [3]float64{1.117, 10.2, 3.04}, [3]float64{0.04, 3.90, 4.05}),
	mirrored("sea-kayak", "PERSON-POWERED-VESSEL-1", "sea kayak with a person on the aft deck", [3]float64{1.16, 11.12, 4.12}, [3]float64{0.41, 0, 4.39}),
	mirrored("surfboard", "PERSON-POWERED-VESSEL-2", "surfboard with a person", [3]float64{1.93, 0, 8.3}, [3]float64{0.51, 0, 6.7}),
	mirrored("windsurfer", "PERSON-POWERED-VESSEL-3", "windsurfer with mast and sail in the water", [3]float64{2.25, 5.03, 2.5}, [3]float64{0.69, -1.30, 2.96}),
	mirrored("dinghy", "SAILBOAT-8", "small sailing dinghy, bare mast, rudder missing", [3]float64{1.79, 3.09, 4.04}, [3]float64{0.1, 3.53, 4.05}),
	mirrored("skiff-flat", "SKIFF-1", "skiff, modified V or cathedral hull, outboard", [3]float64{3.15, 0, 2.2}, [3]float64{1.29, 0, 2.2}),
	row("skiff-v", "SKIFF-2", "skiff, V hull", [3]float64{2.87, 3.98, 3.33}, [3]float64{0.32, -2.93, 2.53}, [3]float64{-0.62, 1.03, 3.05}),
	mirrored("skiff-swamped", "SKIFF-3", "skiff, swamped or capsized", [3]float64{1.65, 0, 3.1}, [3]float64{0.39, 0, 2.9}),
	mirrored("skiff-aluminium", "SKIFF-4", "skiff, V hull from bow to stern, aluminium", [3]float64{2.52, 13.37, 3.87}, [3]float64{1.07, -3.58, 5.82}),
	mirrored("sport-boat", "SPORT-BOAT", "sport boat without canvas, modified V hull", [3]float64{6.54, 0, 3.0}, [3]float64{2.19, 0, 2.8}),
	row("raft-deep-ballast", "LIFE-RAFT-DB-10", "life raft with deep ballast, general", [3]float64{3.52, -2.5, 6.1}, [3]float64{0.62, -3.0, 3.5}, [3]float64{-0.45, -0.20, 3.6}),
	row("raft-deep-ballast-drogue", "LIFE-RAFT-DB-15", "life raft with deep ballast, 4 to 14 persons, canopy, drogue", [3]float64{1.91, 0.9, 1.6}, [3]float64{0.78, -3.6, 3.6}, [3]float64{-0.47, -0.10, 3.9}),
	mirrored("raft-shallow-ballast", "LIFE-RAFT-SB-6", "life raft with shallow ballast and canopy, general", [3]float64{2.68, 0, 12}, [3]float64{1.10, 0, 9.4}),
	row("raft-escape", "LIFE-RAFT-SB-10", "one-man escape raft, shallow ballast, canopy, no drogue", [3]float64{3.30, -3.90, 4.20}, [3]float64{0.50, 7.0, 5.7}, [3]float64{0.1, -6.2, 3.6}),
	mirrored("raft-no-ballast", "LIFE-RAFT-NB-1", "life raft without ballast, general", [3]float64{3.70, 0, 12}, [3]float64{1.98, 0, 9.4}),
	mirrored("raft-no-ballast-open", "LIFE-RAFT-NB-2", "life raft without ballast, canopy or drogue", [3]float64{5.34, 9.91, 9.82}, [3]float64{2.26, 1.04, 9.08}),
	mirrored("debris", "FV-DEBRIS", "fishing vessel debris", [3]float64{1.97, 0, 8.3}, [3]float64{0.36, 0, 6.7}),
	mirrored("drifter", "SLDMB", "marker buoy without windage: drifts with the water", [3]float64{}, [3]float64{}),
}

// Crafts returns the classes of the leeway table that concern a paddler and
// what may come to look for one. Nothing was published for a stand-up board;
// for somebody lying on one the row of the surfboard is the nearest, and the
// nearest paddled hull measured is an outrigger canoe at 2.40 % of the wind.
//
// Source: [SAROPS2011] rows as named in Class; [Brushett2014] abstract for the canoe.
func Crafts() []Craft { return append([]Craft(nil), crafts[:]...) }

// ErrCraft is returned for a class that the leeway table here does not hold.
var ErrCraft = errors.New("route: no such craft in the leeway table")

// FindCraft returns the class of a name, or of a code of the published table.
func FindCraft(name string) (Craft, error) {
	for _, c := range crafts {
		if strings.EqualFold(c.Name, name) || strings.EqualFold(c.Class, name) {
			return c, nil
		}
	}
	return Craft{}, fmt.Errorf("%w: %q", ErrCraft, name)
}

// Side is the family a drifting thing belongs to: it goes to the right of
// downwind or to the left.
type Side int

// The families. Right is to the right of somebody who looks downwind.
const (
	Right Side = 1
	Left  Side = -1
)

// Range of the winds in the field tests behind the fits, m/s. It is from
// memory; outside of it a line is extrapolated.
const (
	fitFrom = 2.0
	fitTo   = 20.0
)

// Leeway returns the velocity through the water that a wind gives to a craft
// of one family, without scatter. The wind is that at 10 m, and relative to
// the water: wind over ground less the stream.
//
// In a north wind (toward the south) the right-going family of a craft with a
// positive crosswind line is set to the west.
//
// Special cases are:
//
//	no wind: no leeway, since the offsets of a calm have no direction
//	a side that is neither Right nor Left, or NaN in the wind: NaN, NaN
//
// Source: [SAROPS2011] the form of the fits; [Breivik2011] equation 1.
func (c Craft) Leeway(wind Velocity, side Side) Velocity {
	across := c.Right
	switch side {
	case Right:
	case Left:
		across = c.Left
	default:
		return Velocity{math.NaN(), math.NaN()}
	}
	w := wind.Speed()
	return leeway(wind, w, c.Downwind.At(w), across.At(w))
}

// leeway lays components along the wind and to its right.
func leeway(wind Velocity, w, down, right float64) Velocity {
	if w == 0 {
		return Velocity{}
	}
	e, n := wind.East/w, wind.North/w
	return Velocity{down*e + right*n, down*n - right*e}
}

// Extrapolated reports whether a wind in m/s is outside the 2 to 20 m/s of the
// field tests, where the straight lines are no more than lines. NaN is.
func (c Craft) Extrapolated(wind float64) bool { return !(wind >= fitFrom && wind <= fitTo) }

// AngleRow is a row of the manual method: leeway as a multiple of the wind and
// an angle either side of downwind.
type AngleRow struct {
	Name       string
	Multiplier float64 // of the wind speed
	Modifier   float64 // m/s
	Divergence float64 // degrees either side of downwind
}

func manual(name string, multiplier, knots, divergence float64) AngleRow {
	return AngleRow{name, multiplier, knots * Knot, divergence}
}

var angleRows = [...]AngleRow{
	manual("person-unknown", 0.011, 0.07, 30),
	manual("person-vertical", 0.005, 0.07, 18),
	manual("person-sitting", 0.012, 0, 18),
	manual("person-survival-suit", 0.014, 0.10, 30),
	manual("person-wetsuit", 0.007, 0.08, 30),
	manual("person-face-down", 0.015, 0.08, 30),
	manual("sea-kayak", 0.011, 0.24, 15),
	manual("surfboard", 0.020, 0, 15),
	manual("windsurfer", 0.023, 0.10, 12),
	manual("skiff-flat", 0.034, 0.04, 22),
	manual("skiff-v", 0.030, 0.08, 15),
	manual("skiff-swamped", 0.017, 0, 15),
	manual("raft-deep-ballast", 0.030, 0.02, 13),
	manual("raft-no-ballast", 0.042, 0.03, 28),
}

// AngleRows returns the rows of the manual leeway table for the same classes.
// The modifier is printed there in knots, the offsets of the regression table
// in cm/s; here both are m/s.
//
// Source: [USCG-Addendum] manual leeway table, public-domain transcription.
func AngleRows() []AngleRow { return append([]AngleRow(nil), angleRows[:]...) }

// FindAngleRow returns the manual row of a name.
func FindAngleRow(name string) (AngleRow, error) {
	for _, r := range angleRows {
		if strings.EqualFold(r.Name, name) {
			return r, nil
		}
	}
	return AngleRow{}, fmt.Errorf("%w: %q in the manual table", ErrCraft, name)
}

// Leeway returns the velocity through the water by the manual method:
//
//	speed = multiplier W + modifier, at the divergence angle right or left of downwind
//
// Special cases are:
//
//	no wind: no leeway
//	a side that is neither Right nor Left, or NaN in the wind: NaN, NaN
//
// Source: [USCG-Addendum] manual leeway table, explanation.
func (r AngleRow) Leeway(wind Velocity, side Side) Velocity {
	w := wind.Speed()
	if side != Right && side != Left || math.IsNaN(w) {
		return Velocity{math.NaN(), math.NaN()}
	}
	v := r.Multiplier*w + r.Modifier
	s, c := sincosd(r.Divergence)
	return leeway(wind, w, v*c, v*s*float64(side))
}

// MeasuredRow is the leeway of one craft as a share of the wind speed at 10 m, from a
// field study that gives its direction in no form that could be tabulated here.
type MeasuredRow struct {
	Name  string
	Load  string
	Share float64 // of the wind speed
}

// MeasuredRows returns the craft of a study of small Pacific island boats. The outrigger
// canoe, 5.97 m long, is the nearest to a long narrow paddled hull that was measured; the
// skiff shows what load does: a light boat drifts nearly twice as fast as a full one.
//
// Source: [Brushett2014] abstract.
func MeasuredRows() []MeasuredRow {
	return []MeasuredRow{
		{"outrigger-canoe", "1 person", 0.0240},
		{"water-scooter", "1 person", 0.0424},
		{"skiff-5.8m", "1 person", 0.0771},
		{"skiff-5.8m", "13 persons", 0.0440},
	}
}
