package wave

import "math"

// Units, for inputs and prints in the trade's own: 12*wave.Knot, depth/wave.Foot.
const (
	Knot         = 1852.0 / 3600 // m/s
	NauticalMile = 1852.0        // m
	Foot         = 0.3048        // m
	Fathom       = 1.8288        // m
)

// The defaults of a Water.
const (
	StandardGravity = 9.80665 // m/s², the standard acceleration of free fall
	SeaDensity      = 1025.0  // kg/m³, sea water at the surface
)

// A Water is the constants of the water: the gravity in m/s² and the density in kg/m³. A zero field means the default,
// StandardGravity or SeaDensity; the package functions are the methods of the zero Water. Textbooks compute with 9.8, 9.81,
// 32.2 ft/s² and others, and the difference shows in their fourth digit.
//
// A negative, infinite or NaN field makes every result that depends on it NaN.
type Water struct {
	Gravity float64 // m/s²; zero: StandardGravity
	Density float64 // kg/m³; zero: SeaDensity
}

// g returns the gravity in force, NaN if it is none.
func (w Water) g() float64 { return constant(w.Gravity, StandardGravity) }

// rho returns the density in force, NaN if it is none.
func (w Water) rho() float64 { return constant(w.Density, SeaDensity) }

func constant(v, standard float64) float64 {
	if v == 0 {
		return standard
	}
	if !(v > 0 && v <= math.MaxFloat64) {
		return math.NaN()
	}
	return v
}

// positive reports whether v is above zero and finite, which NaN is not.
func positive(v float64) bool { return v > 0 && v <= math.MaxFloat64 }

// finite reports whether v is neither infinite nor NaN.
func finite(v float64) bool { return math.Abs(v) <= math.MaxFloat64 }
