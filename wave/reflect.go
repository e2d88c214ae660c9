package wave

import (
	"math"

	"followingsea.example/internal/angle"
)

// Off a cliff, a wall or a steep shore a part K of the height comes back. The waves going and coming make a pattern that
// stands: every half length from the wall the heights add, (1 + K)H, and between they take from each other, (1 - K)H. A
// paddler meets the sum, short and lumpy, up to twice the height of the sea outside.

// A ReflectionLaw gives the part of the height that a slope reflects as a function of the surf similarity number:
// K = a ξ²/(b + ξ²), with ξ = tan α/√(H/L0).
type ReflectionLaw struct {
	A, B float64
}

// The constants of Seelig and Ahrens and others, as the Coastal Engineering Manual collects them. The height is that at the
// toe of the slope; for irregular waves it is the significant height, with the period of the peak.
var (
	SmoothSlope          = ReflectionLaw{1.0, 5.5}  // plane slopes, regular waves: rock slabs, slipways
	SmoothSlopeIrregular = ReflectionLaw{1.1, 5.7}  // plane slopes, irregular waves; cut at 1
	RubbleSlope          = ReflectionLaw{0.6, 6.6}  // rubble mounds: boulder shores, breakwaters; an average on the high side
	DolosSlope           = ReflectionLaw{0.56, 10}  // slopes of dolos blocks, regular waves
	TetrapodSlope        = ReflectionLaw{0.48, 9.6} // slopes of tetrapods, irregular waves
	SandBeach            = ReflectionLaw{0.5, 5.5}  // beaches, of Seelig and Ahrens
)

// Coefficient returns the part of the height that is reflected, from the surf similarity number.
//
// Special cases are:
//
//	Coefficient(+Inf) = A, at most 1: a wall
//	Coefficient(xi) = NaN if xi is negative or NaN, or a constant is negative, infinite or NaN
//
// Source: [SeeligAhrens1981]; [CEM-II-7] Eq. II-7-8 and Table II-7-1.
func (l ReflectionLaw) Coefficient(xi float64) float64 {
	if !(xi >= 0 && l.A >= 0 && l.B >= 0 && finite(l.A) && finite(l.B)) {
		return math.NaN()
	}
	if xi > 1e100 {
		return math.Min(1, l.A)
	}
	if xi == 0 {
		return 0
	}
	return math.Min(1, l.A*xi*xi/(l.B+xi*xi))
}

// BattjesReflection returns the part of the height that a smooth slope reflects where waves break on it: 0.1 ξ², and all of it
// from ξ = 3.16 on. The law is for breaking waves, ξ below about 2.3.
//
// Special cases are:
//
//	BattjesReflection(xi) = NaN if xi is negative or NaN
//
// Source: [Battjes1974].
func BattjesReflection(xi float64) float64 {
	if !(xi >= 0) {
		return math.NaN()
	}
	return math.Min(1, 0.1*xi*xi)
}

// A TanhReflection gives the part of the height that a slope reflects as K = tanh(a ξ^b), with the surf similarity number of
// the spectral period Tm-1,0 and the significant height at the toe.
type TanhReflection struct {
	A, B float64
}

// The constants of Zanuttigh and van der Meer, for relative crest heights above 0.5 and ξ below about 10.
var (
	SmoothTanh          = TanhReflection{0.16, 1.43} // smooth slopes
	ImpermeableRockTanh = TanhReflection{0.14, 0.90} // rock on an impermeable core
	PermeableRockTanh   = TanhReflection{0.12, 0.87} // rock on a permeable core
)

// Coefficient returns the part of the height that is reflected, from the surf similarity number.
//
// Special cases are:
//
//	Coefficient(+Inf) = 1
//	Coefficient(xi) = NaN if xi is negative or NaN, or a constant is zero, negative, infinite or NaN
//
// Source: [ZanuttighVanDerMeer2006].
func (l TanhReflection) Coefficient(xi float64) float64 {
	if !(xi >= 0 && positive(l.A) && positive(l.B)) {
		return math.NaN()
	}
	return math.Tanh(l.A * math.Pow(xi, l.B))
}

// A Shore is a kind of shore or structure with the range of its reflection coefficient.
type Shore struct {
	Name    string
	Low, Up float64
}

// Shores returns the kinds of shore and the ranges of reflection coefficients that are usual for them, with no more known
// than the kind.
//
// Source: after [Goda2010Book], the table of usual reflection coefficients, as it is commonly quoted.
func Shores() []Shore {
	return []Shore{
		{"vertical wall, crown above the water", 0.7, 1.0},
		{"vertical wall, submerged crown", 0.5, 0.7},
		{"slope of rubble stones, 1:2 to 1:3", 0.3, 0.6},
		{"slope of energy-dissipating blocks", 0.3, 0.5},
		{"vertical structure of energy-dissipating type", 0.3, 0.8},
		{"natural beach", 0.05, 0.2},
	}
}

// ReflectedHeight returns the height in metres of the pattern that a wave of the height in metres makes before a wall that
// reflects the part coefficient of it, at the distance in metres from the wall, square to it:
//
//	H √(1 + K² + 2K cos(2kx cos a))
//
// with the angle a in degrees between the direction of travel and the normal to the wall. At the wall it is (1 + K)H, a
// quarter of a length (over cos a) off (1 - K)H. It is the height at a place; where the waves come obliquely the crests of the
// pattern run along the wall.
//
// Special cases are:
//
//	ReflectedHeight is NaN if the height or distance is negative, infinite or NaN, the coefficient is not between 0 and 1, or
//	the angle is not between -90 and 90
//
// Source: [DeanDalrymple1991] ch. 4, partial reflection.
func (v Wave) ReflectedHeight(height, coefficient, distance, angleIn float64) float64 {
	a := amplitude(height)
	if !(coefficient >= 0 && coefficient <= 1 && distance >= 0 && finite(distance) && math.Abs(angleIn) < 90) {
		return math.NaN()
	}
	phase := 2 * v.Wavenumber * distance * math.Cos(angle.Radians(angleIn))
	// 1 + K² + 2K cos φ = (1 - K)² + 4K cos²(φ/2): a sum of squares, which rounding cannot make negative.
	c := math.Cos(phase / 2)
	return 2 * a * math.Sqrt((1-coefficient)*(1-coefficient)+4*coefficient*c*c)
}

// ReflectedEnvelope returns the greatest and the least height in metres of the pattern that a wave of the height in metres
// makes before a wall that reflects the part coefficient of it: (1 + K)H and (1 - K)H.
//
// Special cases are:
//
//	ReflectedEnvelope is NaN if the height is negative, infinite or NaN, or the coefficient is not between 0 and 1
//
// Source: [DeanDalrymple1991] ch. 4, partial reflection.
func ReflectedEnvelope(height, coefficient float64) (most, least float64) {
	h := 2 * amplitude(height)
	if !(coefficient >= 0 && coefficient <= 1) {
		return math.NaN(), math.NaN()
	}
	return h * (1 + coefficient), h * (1 - coefficient)
}

// ReflectionOfEnvelope returns the reflection coefficient from the greatest and the least height of the pattern before a wall,
// both in metres: (Hmax - Hmin)/(Hmax + Hmin). It is how reflection is measured.
//
// Special cases are:
//
//	ReflectionOfEnvelope is NaN if either is negative, infinite or NaN, both are zero, or the least is above the greatest
//
// Source: [DeanDalrymple1991] ch. 4, partial reflection.
func ReflectionOfEnvelope(most, least float64) float64 {
	if !(least >= 0 && most >= least && finite(most)) || most == 0 {
		return math.NaN()
	}
	return (most - least) / (most + least)
}

// ReflectedSea returns the significant height in metres of the sea off a wall that reflects the part coefficient of it, away
// from the wall by more than a length or so, where the phases of an irregular sea no longer add up: Hs √(1 + K²). Close to the
// wall it is ReflectedEnvelope's (1 + K)Hs.
//
// Special cases are:
//
//	ReflectedSea is NaN if the height is negative, infinite or NaN, or the coefficient is not between 0 and 1
//
// Source: energies add; [Goda2010Book] on reflection.
func ReflectedSea(hs, coefficient float64) float64 {
	h := 2 * amplitude(hs)
	if !(coefficient >= 0 && coefficient <= 1) {
		return math.NaN()
	}
	return h * math.Sqrt(1+coefficient*coefficient)
}
