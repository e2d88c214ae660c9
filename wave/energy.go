package wave

import "math"

// Energy returns the mean energy in J/m² of a regular wave of the height in metres: ρgH²/8, half of it of motion and half of
// place. For a sea of significant height Hs use EnergyOfSea: with Hs here the answer is twice too much.
//
// Special cases are:
//
//	Energy(height) = NaN if the height is negative, infinite or NaN
//
// Source: [CEM-II-1] "Wave energy and power".
func (w Water) Energy(height float64) float64 {
	a := amplitude(height)
	return w.rho() * w.g() * a * a / 2
}

// EnergyOfSea returns the mean energy in J/m² of a sea of the significant height in metres, 4 √m0: ρgHs²/16.
//
// Special cases are:
//
//	EnergyOfSea(hs) = NaN if the height is negative, infinite or NaN
//
// Source: the definition E = ρg m0; [CEM-II-1] irregular waves.
func (w Water) EnergyOfSea(hs float64) float64 {
	a := amplitude(hs)
	return w.rho() * w.g() * a * a / 4
}

// Flux returns the energy in W/m that a regular wave of the height in metres carries across each metre of its crest: E cg.
//
// Special cases are:
//
//	Flux(height) = NaN if the height is negative, infinite or NaN
//
// Source: [CEM-II-1] "Wave energy and power".
func (v Wave) Flux(height float64) float64 {
	return v.Water.Energy(height) * v.GroupSpeed
}

// DeepFluxOfSea returns the energy in W/m that a sea in deep water carries across each metre: ρg²Hs²Te/64π, about
// 0.49 Hs²Te kW/m, with the significant height in metres and the energy period Te = m-1/m0 in seconds. The peak period in the
// place of Te gives 11 to 17 % too much.
//
// Special cases are:
//
//	DeepFluxOfSea(hs, te) = NaN if the height is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: E cg of [CEM-II-1] "Wave energy and power", with the moment m-1 of the deep-water group speed.
func (w Water) DeepFluxOfSea(hs, te float64) float64 {
	if !positive(te) {
		return math.NaN()
	}
	return w.EnergyOfSea(hs) * (w.g() * te / (4 * math.Pi))
}

// Energy returns the mean energy in J/m² of a regular wave; see Water.Energy, whose defaults it uses.
func Energy(height float64) float64 { return Water{}.Energy(height) }

// EnergyOfSea returns the mean energy in J/m² of a sea; see Water.EnergyOfSea, whose defaults it uses.
func EnergyOfSea(hs float64) float64 { return Water{}.EnergyOfSea(hs) }

// DeepFluxOfSea returns the energy flux in W/m of a sea; see Water.DeepFluxOfSea, whose defaults it uses.
func DeepFluxOfSea(hs, te float64) float64 { return Water{}.DeepFluxOfSea(hs, te) }
