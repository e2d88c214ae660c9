package wave

import (
	"math"

	"followingsea.example/internal/dispersion"
)

// A block of the slices is solved at a time, in arrays on the stack: the table of polynomials stays in the cache, and what
// can be said with a multiplication is not said with a division, the dearest operation left. With r = 1/xy, where x = kh and
// y = ω²h/g,
//
//	k = k0 x (xr),  c = ωh (yr)
//
// at the price of a unit or two in the last place.
const block = 256

// Wavenumbers sets k[i] to Wavenumber(period[i], depth[i]), within 4 units in the last place: the form for grids and tables,
// without allocation. k may be either argument itself.
//
// It panics if the slices differ in length.
//
// Special cases are those of Wavenumber.
//
// Source: [CEM-II-1] Eq. II-1-8.
func (w Water) Wavenumbers(k, period, depth []float64) {
	if len(k) != len(period) || len(k) != len(depth) {
		panic("wave: Wavenumbers of slices of different lengths")
	}
	inverse := 1 / w.g()
	var x, y [block]float64
	for len(k) > 0 {
		n := min(len(k), block)
		for i := range n {
			omega := 2 * math.Pi / period[i]
			y[i] = omega * omega * inverse * depth[i]
		}
		dispersion.SolveSlice(x[:n], y[:n])
		for i := range n {
			if !ordinary(y[i], period[i], depth[i]) {
				k[i], _ = w.root(period[i], depth[i])
				continue
			}
			k[i] = x[i] / depth[i]
		}
		k, period, depth = k[n:], period[n:], depth[n:]
	}
}

// ordinary reports whether a wave lies between the ends that Water.root treats apart, and is one at all.
func ordinary(y, period, depth float64) bool {
	return y >= 1e-17 && y < 22 && period > 0 && depth > 0
}

// Speeds sets k[i], c[i] and cg[i] to the wavenumber, the phase speed and the group speed of the wave of period[i] over
// depth[i], within 6 units in the last place, with one solution each and without allocation. A result may be an argument
// itself.
//
// It panics if the slices differ in length.
//
// Special cases are those of Solve.
//
// Source: [CEM-II-1] Eq. II-1-7 to II-1-10.
func (w Water) Speeds(k, c, cg, period, depth []float64) {
	if len(c) != len(k) || len(cg) != len(k) || len(period) != len(k) || len(depth) != len(k) {
		panic("wave: Speeds of slices of different lengths")
	}
	inverse := 1 / w.g()
	var x, y, ratio, omega [block]float64
	for len(k) > 0 {
		n := min(len(k), block)
		for i := range n {
			o := 2 * math.Pi / period[i]
			omega[i] = o
			y[i] = o * o * inverse * depth[i]
		}
		dispersion.SolveRatioSlice(x[:n], ratio[:n], y[:n])
		for i := range n {
			p, h, o, xi, yi := period[i], depth[i], omega[i], x[i], y[i]
			if !ordinary(yi, p, h) {
				v := w.Solve(p, h)
				k[i], c[i], cg[i] = v.Wavenumber, v.PhaseSpeed, v.GroupSpeed
				continue
			}
			r := 1 / (xi * yi)
			ci := o * h * (yi * r)
			k[i], c[i], cg[i] = o*o*inverse*xi*(xi*r), ci, ratio[i]*ci
		}
		k, c, cg, period, depth = k[n:], c[n:], cg[n:], period[n:], depth[n:]
	}
}

// Wavenumbers sets k[i] to the wavenumber; see Water.Wavenumbers, whose defaults it uses.
func Wavenumbers(k, period, depth []float64) { Water{}.Wavenumbers(k, period, depth) }

// Speeds sets the wavenumbers and speeds; see Water.Speeds, whose defaults it uses.
func Speeds(k, c, cg, period, depth []float64) { Water{}.Speeds(k, c, cg, period, depth) }
