package tide

import "math"

// Tide tables assume average pressure and no wind. Two estimates of what
// weather adds, both slow and regional, neither a forecast:
//
//	inverse barometer   Δh = −(p − pref)/(ρ g)             about −1 cm for +1 hPa
//	wind setup          Δh = ρa Cd U² F/(ρ g d)            steady, against a closed end

// Water carries the constants of the sea. A zero field means its default:
// gravity 9.80665 m/s², density 1025 kg/m³.
type Water struct {
	Gravity, Density float64
}

func (w Water) weight() float64 {
	g, r := w.Gravity, w.Density
	if g == 0 {
		g = 9.80665
	}
	if r == 0 {
		r = 1025
	}
	if !(g > 0 && r > 0) || math.IsInf(g*r, 0) {
		return math.NaN()
	}
	return g * r
}

// StandardPressure is what tide tables without a local mean assume, in Pa.
const StandardPressure = 101325

// InverseBarometer returns the change of level in metres under an air pressure in
// Pa against a reference in Pa, in average sea water: see Water.InverseBarometer.
//
// Source: [BoM-Tides] barometric pressure.
func InverseBarometer(pressure, reference float64) float64 {
	return Water{}.InverseBarometer(pressure, reference)
}

// InverseBarometer returns the change of level in metres under an air pressure
// in Pa against the reference in Pa that the tables assume (StandardPressure,
// or the local mean):
//
//	Δh = −(p − pref)/(ρ g)
//
// 1 cm up for 1 hPa down. The sea answers within hours and over hundreds of
// kilometres, so this is no local effect of a squall; real changes range from none
// to twice this. It seldom exceeds 0.3 m.
//
// Special cases are:
//
//	InverseBarometer = NaN for a pressure not positive or not finite, or water that is none
//
// Source: [BoM-Tides] barometric pressure.
func (w Water) InverseBarometer(pressure, reference float64) float64 {
	if !(pressure > 0 && reference > 0) || math.IsInf(pressure+reference, 0) {
		return math.NaN()
	}
	return (reference - pressure) / w.weight()
}

// A Stretch is water that is closed at its lee end, with the wind along it.
type Stretch struct {
	Wind  float64 // speed, m/s at 10 m
	Fetch float64 // metres along the wind
	Depth float64 // mean depth, metres
	// Air is the density of air in kg/m³, zero for 1.225. Drag is the drag
	// coefficient, zero for DragCoefficient(Wind).
	Air, Drag float64
}

// DragCoefficient returns the drag coefficient of the sea surface for a wind
// in m/s at 10 m:
//
//	Cd = (0.75 + 0.067 U) 10⁻³
//
// fitted between 4 and 21 m/s.
//
// Special cases are:
//
//	DragCoefficient(U) = NaN for U negative, NaN or infinite
//
// Source: [SurgeExamples] examples 1 and 2 (the relation of Garratt 1977).
func DragCoefficient(speed float64) float64 {
	if !(speed >= 0) || math.IsInf(speed, 0) {
		return math.NaN()
	}
	return (0.75 + 0.067*speed) * 1e-3
}

// Stress returns the stress of the wind on the water in Pa: ρa Cd U².
//
// Special cases are:
//
//	Stress = NaN for a speed negative, NaN or infinite, or a density or drag that is none
//
// Source: [SurgeExamples] examples 1 and 2.
func (w Stretch) Stress() float64 {
	air, cd := w.Air, w.Drag
	if air == 0 {
		air = 1.225
	}
	if cd == 0 {
		cd = DragCoefficient(w.Wind)
	}
	if !(w.Wind >= 0 && air > 0 && cd > 0) || math.IsInf(w.Wind*air*cd, 0) {
		return math.NaN()
	}
	return air * cd * w.Wind * w.Wind
}

// A Surge is an estimate of what weather adds to the tide.
type Surge struct {
	Height float64 // metres, at the lee end; the windward end falls
	Spread float64 // metres either way
	// Beyond says that the setup is more than a tenth of the depth, where the
	// straight relation no longer holds: read "large", not the number.
	Beyond bool
}

// WindSetup returns the steady rise of the water at the lee end: see
// Water.WindSetup.
//
// Source: [SurgeExamples] examples 1 and 2.
func WindSetup(w Stretch) Surge { return Water{}.WindSetup(w) }

// WindSetup returns the steady rise of the water at the lee end of the
// stretch, where it is closed:
//
//	Δh = ρa Cd U² F/(ρ g d)
//
// The shallower, the more; it takes hours to build, and an open coast has less. The
// spread is half of it: the drag alone is uncertain by a third. A warning of size,
// not a forecast.
//
// Special cases are:
//
//	Height = Spread = NaN where Stress is, for a fetch negative or not finite, or a depth not positive; Height = 0 in infinite depth
//
// Source: [SurgeExamples] examples 1 and 2.
func (k Water) WindSetup(w Stretch) Surge {
	if !(w.Fetch >= 0 && w.Depth > 0) || math.IsInf(w.Fetch, 0) {
		return Surge{math.NaN(), math.NaN(), true}
	}
	h := w.Stress() * w.Fetch / (k.weight() * w.Depth)
	if math.IsInf(h, 0) {
		h = math.NaN()
	}
	return Surge{h, h / 2, !(h <= 0.1*w.Depth)}
}
