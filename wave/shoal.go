package wave

import (
	"math"

	"followingsea.example/internal/angle"
)

// Shoaling returns the shoaling coefficient Ks, the height over that of the same wave in deep water, for crests parallel to
// the contours: √(cg0/cg) = 1/√(2n tanh kh). A swell that comes in first gets lower, by 9 % where kh = 1.2, and only then
// grows; it is back at its deep-water height at a depth of 0.057 of the deep-water length.
//
// Near breaking linear theory has it 10 to 30 % too small.
//
// Special cases are:
//
//	Shoaling = 1 in infinitely deep water
//	Shoaling = NaN for a wave that is none
//
// Source: [CEM-II-1] "Wave energy and power"; [SPM1984] Table C-1.
func (v Wave) Shoaling() float64 {
	return 1 / math.Sqrt(2*v.SpeedRatio*v.tanhKh())
}

// Shoal returns the height in metres over the depth to of a wave of the height in metres over the depth from, both in metres,
// and the period in seconds, for crests parallel to the contours: the energy flux stays the same, so the height goes with
// √(cg1/cg2). With to = +Inf it is the deep-water height.
//
// Special cases are:
//
//	Shoal is NaN if the height is negative, infinite or NaN, the period is zero, negative, infinite or NaN, or a depth is zero,
//	negative or NaN
//
// Source: [CEM-II-1]; [ACES1992] pp. 3-1-5 to 3-1-6.
func (w Water) Shoal(height, period, from, to float64) float64 {
	a, b := w.Solve(period, from), w.Solve(period, to)
	return 2 * amplitude(height) * math.Sqrt(a.GroupSpeed/b.GroupSpeed)
}

// Refract returns the angle in degrees, over the depth to, between the direction of travel and the normal to straight
// parallel contours, of a wave of the period in seconds that has the angle over the depth from: Snell's law, sin a/c
// constant. The crests make the same angle with the contours. Waves turn towards the shore as they come in.
//
// Special cases are:
//
//	Refract is NaN if the law has no answer (sin a would reach 1): a wave at that angle cannot have come from there
//	Refract is NaN if the angle is not between -90 and 90, the period is zero, negative, infinite or NaN, or a depth is zero,
//	negative or NaN
//
// Source: [ACES1992] pp. 3-1-5 to 3-1-6; [DeanDalrymple1991] ch. 4.
func (w Water) Refract(angleIn, period, from, to float64) float64 {
	if !(math.Abs(angleIn) < 90) {
		return math.NaN()
	}
	a, b := w.Solve(period, from), w.Solve(period, to)
	s := math.Sin(angle.Radians(angleIn)) * (b.PhaseSpeed / a.PhaseSpeed)
	if !(math.Abs(s) < 1) {
		return math.NaN()
	}
	return angle.Degrees(math.Asin(s))
}

// A Transformed is a wave that has moved from one depth to another over straight parallel contours.
type Transformed struct {
	Height     float64 // m
	Angle      float64 // degrees between the direction of travel and the normal to the contours
	Shoaling   float64 // Ks between the two depths
	Refraction float64 // Kr between the two depths
}

// Transform returns what becomes of a wave of the height in metres, the angle in degrees to the normal of the contours and
// the period in seconds, on its way from the depth from to the depth to, both in metres, over straight parallel contours:
//
//	H2 = H1 Ks Kr,  Ks = √(cg1/cg2),  Kr = √(cos a1/cos a2)
//
// What is conserved is the energy flux towards the shore, E cg cos a.
//
// Special cases are:
//
//	Transform is NaN throughout where Refract or Shoal is
//
// Source: [ACES1992] pp. 3-1-5 to 3-1-6; [DeanDalrymple1991] Example 4.1.
func (w Water) Transform(height, angleIn, period, from, to float64) Transformed {
	out := w.Refract(angleIn, period, from, to)
	ks := w.Shoal(1, period, from, to)
	kr := math.Sqrt(math.Cos(angle.Radians(angleIn)) / math.Cos(angle.Radians(out)))
	h := 2 * amplitude(height) * ks * kr
	if math.IsNaN(h) {
		return Transformed{h, h, h, h}
	}
	return Transformed{h, out, ks, kr}
}

// Shoal returns the height in metres over another depth; see Water.Shoal, whose defaults it uses.
func Shoal(height, period, from, to float64) float64 { return Water{}.Shoal(height, period, from, to) }

// Refract returns the angle in degrees over another depth; see Water.Refract, whose defaults it uses.
func Refract(angleIn, period, from, to float64) float64 {
	return Water{}.Refract(angleIn, period, from, to)
}

// Transform returns the wave over another depth; see Water.Transform, whose defaults it uses.
func Transform(height, angleIn, period, from, to float64) Transformed {
	return Water{}.Transform(height, angleIn, period, from, to)
}
