package spectrum

import (
	"math"

	"followingsea.example/wave"
)

// StokesDrift returns the drift in m/s that a long-crested sea gives the water at z metres above still water (zero or
// negative, as in package wave) over water of the depth: the sum of the drifts of its parts.
//
//	u = ∫ 2 ω k S e^2kz df                             in deep water
//	u = ∫ ω k S cosh 2k(h+z)/sinh² kh df               over the depth h
//
// The surface drift of a tail of f⁻⁵ converges only like 1/f, so that it depends on the shortest waves: highest, in Hz,
// is where they are taken to stop, +Inf for the whole tail. About 0.5 to 1 Hz is what drifts a board. Waves that are spread in
// direction drift less, by the mean of r₁ (see Cos2sFourier): about 0.9 for a wind sea.
//
// Do not add it to a leeway that was measured at sea: that has it in it.
//
// Special cases are:
//
//	StokesDrift = NaN if the depth is zero, negative or NaN, z above 0, infinite, NaN or below the bottom, highest negative or
//	NaN, or the spectrum or the gravity is not valid
//
// Source: [Kenyon1969] Eq. 9 and 10; [Breivik2014] Eq. 1.
func StokesDrift(s Spectrum, water wave.Water, depth, z, highest float64) float64 {
	if !(depth > 0) || !nonNegative(-z) || !(-z <= depth) || !(highest >= 0) {
		return math.NaN()
	}
	g := gravity(water.Gravity)
	factor := func(f float64) float64 {
		if f == 0 {
			return 0
		}
		k := water.Wavenumber(1/f, depth)
		omega := 2 * math.Pi * f
		kh := k * depth
		if kh > 20 { // deep to the last bit, and cosh would overflow
			return 2 * omega * k * math.Exp(2*k*z)
		}
		sh := math.Sinh(kh)
		return omega * k * math.Cosh(2*k*(depth+z)) / (sh * sh)
	}
	if math.IsInf(depth, 1) && z == 0 {
		return 16 * math.Pi * math.Pi * math.Pi / g * MomentWithin(s, 3, 0, highest)
	}
	tail := func(s Spectrum, from, to float64) float64 {
		if z == 0 {
			return 16 * math.Pi * math.Pi * math.Pi / g * MomentWithin(s, 3, from, to)
		}
		return integrate(product{s, factor}, 0, from, math.Min(to, fastest)) // the depth ends it
	}
	return weighted(s, 0, highest, factor, math.Sqrt(20*g/depth)/(2*math.Pi), tail)
}

// StokesTransport returns the volume in m²/s that the drift of a long-crested sea carries over each metre of crest in deep
// water, the drift added up over the depth.
//
//	M = 2π m₁
//
// Special cases are:
//
//	StokesTransport = NaN if highest (Hz) is negative or NaN, or the spectrum is not valid
//
// Source: [Breivik2014] Eq. 3.
func StokesTransport(s Spectrum, highest float64) float64 {
	return 2 * math.Pi * MomentWithin(s, 1, 0, highest)
}

// EnergyFlux returns the power in W that a long-crested sea carries over each metre of crest, over water of the depth in
// metres.
//
//	P = ρ g ∫ cg(f) S(f) df
//
// In deep water it is ρg²/4π m₋₁ = ρg²/64π Hm0² Te. Over a depth of some tenths of a length it is up to a tenth more for the
// same spectrum.
//
// Special cases are:
//
//	EnergyFlux = NaN if the depth is zero, negative or NaN, or the spectrum or the water is not valid
//
// Source: [MHKiT] energy_flux; [CEM-II-1] sec. II-1-3.
func EnergyFlux(s Spectrum, water wave.Water, depth float64) float64 {
	rho := water.Density
	if rho == 0 {
		rho = wave.SeaDensity
	}
	g := gravity(water.Gravity)
	if !(depth > 0) || !positive(rho) {
		return math.NaN()
	}
	deep := func(s Spectrum, from, to float64) float64 { return g / (4 * math.Pi) * MomentWithin(s, -1, from, to) }
	if math.IsInf(depth, 1) {
		return rho * g * deep(s, 0, math.Inf(1))
	}
	factor := func(f float64) float64 {
		if f == 0 {
			return math.Sqrt(g * depth)
		}
		return water.GroupSpeed(1/f, depth)
	}
	return rho * g * weighted(s, 0, math.Inf(1), factor, math.Sqrt(20*g/depth)/(2*math.Pi), deep)
}

// weighted returns ∫ S w df from lo to hi: a sum over measured bands, else quadrature up to the frequency deep, from where
// tail knows the rest.
func weighted(s Spectrum, lo, hi float64, w func(float64) float64, deep float64, tail func(s Spectrum, from, to float64) float64) float64 {
	of := func(f, d float64) float64 {
		if d == 0 {
			return 0
		}
		return w(f) * d
	}
	switch v := s.(type) {
	case Bins:
		return v.sum(lo, hi, of)
	case Points:
		return v.integral(lo, hi, of)
	case Band:
		lo, hi = math.Max(lo, v.Low), math.Min(hi, v.High)
		if lo >= hi {
			return 0
		}
		return weighted(v.Spectrum, lo, hi, w, deep, tail)
	case Sum:
		sum := 0.0
		for _, p := range v {
			sum += weighted(p, lo, hi, w, deep, tail)
		}
		return sum
	}
	cut := math.Max(lo, math.Min(math.Min(hi, deep), fastest))
	sum := integrate(product{s, w}, 0, lo, cut) // also of no width: an invalid spectrum has no value there
	if hi > cut {
		sum += tail(s, cut, hi)
	}
	return sum
}

// product is S w, with the peak of S.
type product struct {
	s Spectrum
	w func(float64) float64
}

func (p product) Density(f float64) float64 { return p.s.Density(f) * p.w(f) }

func (p product) PeakFrequency() float64 { return PeakFrequency(p.s) }
