package wave

import (
	"math"

	"followingsea.example/internal/dispersion"
)

// The dispersion relation of linear waves ties the period T to the wavenumber k (and the length L = 2π/k) over the depth h:
//
//	ω² = g k tanh kh,  ω = 2π/T
//
// Without dimensions it is x tanh x = y with x = kh and y = ω²h/g, which internal/dispersion solves to the last bit. From
// the root:
//
//	c  = ω/k              speed of the crests
//	cg = n c              speed of the energy and of the group
//	n  = 1/2 + kh/sinh 2kh   from 1/2 (deep) to 1 (shallow)
//
// In deep water k = ω²/g, L = gT²/2π (1.56 T²), c = gT/2π (1.56 T m/s, 3.03 T kn) and cg = c/2. In shallow water
// c = cg = √(gh) whatever the period.

// Wavenumber returns the wavenumber k, in rad/m, of a wave of the period in seconds over the depth in metres, the root of
// ω² = gk tanh kh. The depth of deep water is +Inf. It is exact for linear waves; the root itself is within one unit in
// the last place.
//
// Special cases are:
//
//	Wavenumber(+Inf, depth) = 0
//	Wavenumber(period, depth) = NaN if either is zero, negative or NaN, or both are infinite
//
// Source: [CEM-II-1] Eq. II-1-8 to II-1-10.
func (w Water) Wavenumber(period, depth float64) float64 {
	k, _ := w.root(period, depth)
	return k
}

// root returns the wavenumber and n, the ratio of group to phase speed.
func (w Water) root(period, depth float64) (k, n float64) {
	if !(period > 0 && depth > 0) || math.IsInf(period, 1) && math.IsInf(depth, 1) {
		return math.NaN(), math.NaN()
	}
	g := w.g()
	omega := 2 * math.Pi / period
	k0 := omega * omega / g
	y := k0 * depth
	if y >= 22 { // deep, to the last bit; so is the infinite depth
		return k0, 0.5
	}
	if y < 1e-17 { // shallow, to the last bit, also where ω² underflows
		return omega / math.Sqrt(g*depth), 1
	}
	x, n := dispersion.SolveRatio(y)
	return x / depth, n
}

// Length returns the wavelength in metres, L = 2π/k, of a wave of the period in seconds over the depth in metres. A crest
// is one length from the next. In deep water it is gT²/2π.
//
// Special cases are:
//
//	Length(+Inf, depth) = +Inf
//	Length(period, depth) = NaN if either is zero, negative or NaN, or both are infinite
//
// Source: [CEM-II-1] Eq. II-1-10.
func (w Water) Length(period, depth float64) float64 {
	return 2 * math.Pi / w.Wavenumber(period, depth)
}

// PhaseSpeed returns the speed of the crests in m/s, c = L/T = ω/k, of a wave of the period in seconds over the depth in
// metres. It is what a board has to match. In deep water it is gT/2π, in shallow water √(gh).
//
// Special cases are:
//
//	PhaseSpeed(+Inf, depth) = √(g depth)
//	PhaseSpeed(period, depth) = NaN if either is zero, negative or NaN, or both are infinite
//
// Source: [CEM-II-1] Eq. II-1-7.
func (w Water) PhaseSpeed(period, depth float64) float64 {
	if math.IsInf(period, 1) && depth > 0 && finite(depth) {
		return math.Sqrt(w.g() * depth)
	}
	return 2 * math.Pi / period / w.Wavenumber(period, depth)
}

// GroupSpeed returns the speed of the energy in m/s, cg = nc with n = 1/2 + kh/sinh 2kh, of a wave of the period in
// seconds over the depth in metres: what a set or a swell from afar travels at. In deep water it is half the phase speed,
// in shallow water the whole of it.
//
// Special cases are:
//
//	GroupSpeed(+Inf, depth) = √(g depth)
//	GroupSpeed(period, depth) = NaN if either is zero, negative or NaN, or both are infinite
//
// Source: [CEM-II-1] "Group velocity".
func (w Water) GroupSpeed(period, depth float64) float64 {
	if math.IsInf(period, 1) && depth > 0 && finite(depth) {
		return math.Sqrt(w.g() * depth)
	}
	k, n := w.root(period, depth)
	return n * (2 * math.Pi / period / k)
}

// A Wave is a solved regular wave: everything the dispersion relation gives for a period over a depth. Solve makes it;
// its methods add a height, which in linear theory changes nothing here.
type Wave struct {
	Water            Water
	Period           float64 // T, s
	Depth            float64 // h, m; +Inf in deep water
	Wavenumber       float64 // k, rad/m
	Length           float64 // L, m
	PhaseSpeed       float64 // c, m/s
	GroupSpeed       float64 // cg, m/s
	SpeedRatio       float64 // n = cg/c, from 1/2 (deep) to 1 (shallow)
	AngularFrequency float64 // ω, rad/s
}

// Solve returns the wave of the period in seconds over the depth in metres (+Inf for deep water), with one solution of
// the dispersion relation for all its fields.
//
// Special cases are:
//
//	Solve(period, depth) has NaN in every solved field if either is zero, negative or NaN, or the period is infinite
//
// Source: [CEM-II-1] Table II-1-1.
func (w Water) Solve(period, depth float64) Wave {
	if math.IsInf(period, 1) { // no wave: a level change
		nan := math.NaN()
		return Wave{w, period, depth, nan, nan, nan, nan, nan, nan}
	}
	k, n := w.root(period, depth)
	omega := 2 * math.Pi / period
	if math.IsNaN(k) {
		omega = k
	}
	c := omega / k
	return Wave{w, period, depth, k, 2 * math.Pi / k, c, n * c, n, omega}
}

// Wavenumber returns the wavenumber in rad/m; see Water.Wavenumber, whose defaults it uses.
func Wavenumber(period, depth float64) float64 { return Water{}.Wavenumber(period, depth) }

// Length returns the wavelength in metres; see Water.Length, whose defaults it uses.
func Length(period, depth float64) float64 { return Water{}.Length(period, depth) }

// PhaseSpeed returns the speed of the crests in m/s; see Water.PhaseSpeed, whose defaults it uses.
func PhaseSpeed(period, depth float64) float64 { return Water{}.PhaseSpeed(period, depth) }

// GroupSpeed returns the speed of the energy in m/s; see Water.GroupSpeed, whose defaults it uses.
func GroupSpeed(period, depth float64) float64 { return Water{}.GroupSpeed(period, depth) }

// Solve returns the solved wave; see Water.Solve, whose defaults it uses.
func Solve(period, depth float64) Wave { return Water{}.Solve(period, depth) }

// RelativeDepth returns h/L, the depth in wavelengths: 1/2 and more is deep water, 1/20 and less is shallow.
//
// Special cases are:
//
//	RelativeDepth = +Inf in infinitely deep water
//	RelativeDepth = NaN for a wave that has no length
//
// Source: [CEM-II-1] Table II-1-1.
func (v Wave) RelativeDepth() float64 { return v.Depth / v.Length }

// kh returns the wavenumber times the depth.
func (v Wave) kh() float64 { return v.Wavenumber * v.Depth }

// tanhKh returns tanh kh = ω²/gk without an exponential.
func (v Wave) tanhKh() float64 {
	t := v.AngularFrequency * v.AngularFrequency / (v.Water.g() * v.Wavenumber)
	if t > 1 {
		return 1 // by rounding only
	}
	return t
}
