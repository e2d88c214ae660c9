package route

import (
	"fmt"
	"math"
)

// SightCaution is what must be said beside any range of sight by geometry.
const SightCaution = "Geometry is not visibility: a head or a board among waves is commonly passed unseen at a hundred metres. " +
	"The range says where the sea hides a thing, not where an eye finds it."

// Horizon returns the distance of the sea horizon from an eye at a height, in
// metres, with the usual refraction:
//
//	nautical miles = 1.17 sqrt(height in feet) = 2.12 sqrt(height in metres)
//
// Some printings give 2.07 for metres beside 1.17 for feet; the two do not
// agree, and 2.12 is the one that does.
//
// Special cases are:
//
//	Horizon(0) = 0
//	a negative, NaN or infinite height: NaN
//
// Source: [Bowditch2002] table 12.
func Horizon(height float64) float64 {
	if !(height >= 0 && finite(height)) {
		return math.NaN()
	}
	return 1.17 * NauticalMile * math.Sqrt(height/Foot)
}

// HorizonRefracted returns the distance of the sea horizon for a given
// refraction, b, the factor by which it flattens the Earth:
//
//	distance = sqrt(2 R height / b)
//
// with b = 1 for none and 0.8279 in the usual air, which is [Horizon] to 0.1 %.
//
// Special cases are:
//
//	b not above 0, a negative height, NaN or an infinity: NaN
//
// Source: [Williams2013] distance to horizon.
func HorizonRefracted(height, b float64) float64 {
	if !(height >= 0 && finite(height) && b > 0 && finite(b)) {
		return math.NaN()
	}
	return math.Sqrt(2 * MeanRadius * height / b)
}

// Dip returns how far the sea horizon lies below the horizontal of an eye at
// a height, in degrees: 1.76 minutes times the root of the metres.
//
// Special cases are:
//
//	a negative, NaN or infinite height: NaN
//
// Source: [Bowditch2002] table 14.
func Dip(height float64) float64 {
	if !(height >= 0 && finite(height)) {
		return math.NaN()
	}
	return 1.76 / 60 * math.Sqrt(height)
}

// Sight is a range of sight by geometry. It prints with its caution.
type Sight struct {
	Range float64 // metres
}

// String returns the range in nautical miles and [SightCaution].
func (s Sight) String() string {
	return fmt.Sprintf("%.1f nautical miles above the horizon. %s", s.Range/NauticalMile, SightCaution)
}

// SightRange returns at which range a thing of a height is on the horizon of an
// eye at a height: the sum of their horizons. It is the range at which the
// curve of the Earth hides the thing and no more; read [SightCaution], which
// the result prints.
//
// Special cases are those of [Horizon] for either height.
//
// Source: [Bowditch2002] table 15 and its explanation.
func SightRange(eye, height float64) Sight { return Sight{Horizon(eye) + Horizon(height)} }

// SweepRow is a row of the visual sweep-width tables: what is looked for, from
// a boat with an eye at a height, and the width for each of [SweepVisibility].
type SweepRow struct {
	Target string
	Eye    float64    // metres: 8 ft or 14 ft
	Width  [6]float64 // metres
}

// SweepVisibility returns the visibilities of the columns of the sweep-width
// tables, in metres: 1, 3, 5, 10, 15 and 20 nautical miles.
//
// Source: [USCG-Addendum] visual sweep widths, heads of the columns.
func SweepVisibility() [6]float64 {
	return [6]float64{NauticalMile, 3 * NauticalMile, 5 * NauticalMile, 10 * NauticalMile, 15 * NauticalMile, 20 * NauticalMile}
}

// Names of the things looked for in the sweep-width tables.
const (
	TargetPerson  = "person in water"
	TargetRaft1   = "raft, 1 person"
	TargetRaft4   = "raft, 4 persons"
	TargetBoat15  = "power boat to 15 ft"
	TargetBoat20  = "power boat of 20 ft"
	TargetBoat33  = "power boat of 33 ft"
	TargetSails15 = "sailing boat of 15 ft"
	TargetSails20 = "sailing boat of 20 ft"
)

var sweepRows = [...]struct {
	target string
	feet   float64
	miles  [6]float64
}{
	{TargetPerson, 8, [6]float64{0.2, 0.2, 0.3, 0.3, 0.3, 0.3}},
	{TargetRaft1, 8, [6]float64{0.7, 1.3, 1.7, 2.3, 2.6, 2.7}},
	{TargetRaft4, 8, [6]float64{0.7, 1.7, 2.2, 3.1, 3.5, 3.9}},
	{TargetBoat15, 8, [6]float64{0.4, 0.8, 1.1, 1.5, 1.6, 1.8}},
	{TargetBoat20, 8, [6]float64{0.8, 1.5, 2.2, 3.3, 4.0, 4.5}},
	{TargetBoat33, 8, [6]float64{0.8, 1.9, 2.9, 4.7, 5.9, 6.8}},
	{TargetSails15, 8, [6]float64{0.8, 1.5, 2.1, 3.0, 3.6, 4.0}},
	{TargetSails20, 8, [6]float64{0.8, 1.7, 2.5, 3.7, 4.6, 5.1}},
	{TargetPerson, 14, [6]float64{0.3, 0.4, 0.5, 0.5, 0.5, 0.5}},
	{TargetRaft1, 14, [6]float64{0.9, 1.8, 2.3, 3.1, 3.4, 3.7}},
	{TargetRaft4, 14, [6]float64{1.0, 2.2, 3.0, 4.0, 4.6, 5.0}},
	{TargetBoat15, 14, [6]float64{0.5, 1.1, 1.4, 1.9, 2.1, 2.3}},
	{TargetBoat20, 14, [6]float64{1.0, 2.0, 2.9, 4.3, 5.2, 5.8}},
	{TargetBoat33, 14, [6]float64{1.1, 2.5, 3.8, 6.1, 7.7, 8.8}},
	{TargetSails15, 14, [6]float64{1.0, 1.9, 2.7, 3.9, 4.7, 5.2}},
	{TargetSails20, 14, [6]float64{1.0, 2.2, 3.2, 4.8, 5.9, 6.6}},
}

// SweepRows returns the rows of the uncorrected visual sweep-width tables for
// surface craft that concern somebody who looks for a paddler.
//
// Source: [USCG-Addendum] visual sweep widths, surface craft, 8 ft and 14 ft.
func SweepRows() []SweepRow {
	rows := make([]SweepRow, len(sweepRows))
	for i, r := range sweepRows {
		rows[i] = SweepRow{Target: r.target, Eye: r.feet * Foot}
		for k, m := range r.miles {
			rows[i].Width[k] = m * NauticalMile
		}
	}
	return rows
}

// SweepWidth returns the uncorrected visual sweep width in metres for a target,
// an eye at a height and a visibility, linear between the printed columns and
// between the two printed heights. A sweep width is no range of sight: it is
// the width of the band in which as many are missed as are found outside it.
// Multiply it by [SweepWeather] for a small target.
//
// Errors are ErrInput for a target that the table does not hold, an eye outside
// 8 to 14 ft and a visibility below 1 nautical mile; beyond 20 it is that of 20.
//
// Source: [USCG-Addendum] visual sweep widths, surface craft, 8 ft and 14 ft.
func SweepWidth(target string, eye, visibility float64) (float64, error) {
	const low, high = 8 * Foot, 14 * Foot
	cols := SweepVisibility()
	switch {
	case !(eye >= low*(1-1e-12) && eye <= high*(1+1e-12)):
		return 0, fmt.Errorf("%w: eye at %v m, want 8 to 14 ft, 2.44 to 4.27 m", ErrInput, eye)
	case !(visibility >= cols[0]):
		return 0, fmt.Errorf("%w: visibility %v m, want 1852 or more", ErrInput, visibility)
	}
	k, f := 4, 1.0
	for i := range 5 {
		if visibility < cols[i+1] {
			k, f = i, (visibility-cols[i])/(cols[i+1]-cols[i])
			break
		}
	}
	var w [2]float64
	found := 0
	for _, r := range sweepRows {
		if r.target != target {
			continue
		}
		i := 0
		if r.feet == 14 {
			i = 1
		}
		w[i] = r.miles[k] + f*(r.miles[k+1]-r.miles[k])
		found++
	}
	if found != 2 {
		return 0, fmt.Errorf("%w: target %q is not in the table", ErrInput, target)
	}
	h := (eye - low) / (high - low)
	return (w[0] + h*(w[1]-w[0])) * NauticalMile, nil
}

// SweepWeather returns the factor by which weather narrows the sweep width for
// a person, a raft or a boat under 10 m: 1 in wind below 15 knots and sea below
// 1 m, 0.25 in wind above 25 knots or sea above 1.5 m, 0.5 between. In a sea
// with whitecaps a person is found in a band of 90 m.
//
// Special cases are:
//
//	a negative or NaN wind or height: NaN
//
// Source: [IAMSAR-Weather] weather correction for small targets; the bounds are from memory.
func SweepWeather(wind, height float64) float64 {
	switch {
	case !(wind >= 0 && height >= 0):
		return math.NaN()
	case wind > 25*Knot || height > 1.5:
		return 0.25
	case wind >= 15*Knot || height >= 1:
		return 0.5
	}
	return 1
}
