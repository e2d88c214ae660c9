package wave

import (
	"math"

	"followingsea.example/internal/dispersion"
)

// A block of the slices is solved at a time, in arrays on the stack: the table of polynomials stays in the cache, and what
// can be said with a multiplication is not said with a division, the dearest operation left. With r = 1/xy, where x = kh and
// y = ω²h/g,
//
//	k = k0 x (xr),  c = ωh (yr),  n = 1/2 + (x - y)(x + y)(xr)/2
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
	var xs, ys [block]float64
	for len(k) > 0 {
		n := min(len(k), block)
		kb, pb, hb, x, y := k[:n], period[:n], depth[:n], xs[:n], ys[:n]
		frequencies(y, pb)
		for i, o := range y {
			y[i] = o * o * inverse * hb[i]
		}
		dispersion.SolveSlice(x, y)
		for i, h := range hb {
			if !ordinary(y[i], pb[i], h) {
				kb[i], _ = w.root(pb[i], h)
				continue
			}
			kb[i] = x[i] / h
		}
		k, period, depth = k[n:], period[n:], depth[n:]
	}
}

// frequencies sets omega[i] to 2π/period[i], two at a time with one division: 2π/p = q·2π/pq. Where the product of the two is
// no ordinary number, neither result is, and both waves are left to the scalar path.
func frequencies(omega, period []float64) {
	omega = omega[:len(period)]
	i := 0
	for ; i+1 < len(period); i += 2 {
		p, q := period[i], period[i+1]
		r := 2 * math.Pi / (p * q)
		omega[i], omega[i+1] = q*r, p*r
	}
	if i < len(period) {
		omega[i] = 2 * math.Pi / period[i]
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
	var xs, ys, ds, os [block]float64
	for len(k) > 0 {
		n := min(len(k), block)
		kb, cb, gb, pb, hb := k[:n], c[:n], cg[:n], period[:n], depth[:n]
		x, y, d, omega := xs[:n], ys[:n], ds[:n], os[:n]
		frequencies(omega, pb)
		for i, o := range omega {
			y[i] = o * o * inverse * hb[i]
		}
		dispersion.SolveDiffSlice(x, d, y)
		for i, h := range hb {
			p, o, xi, yi := pb[i], omega[i], x[i], y[i]
			if yi >= 22 && p > 0 && o < 1e150 { // deep, to the last bit
				k0 := o * o * inverse
				ci := o / k0
				kb[i], cb[i], gb[i] = k0, ci, ci/2
				continue
			}
			if !ordinary(yi, p, h) {
				v := w.Solve(p, h)
				kb[i], cb[i], gb[i] = v.Wavenumber, v.PhaseSpeed, v.GroupSpeed
				continue
			}
			r := 1 / (xi * yi)
			xr := xi * r
			ci := o * h * (yi * r)
			kb[i], cb[i], gb[i] = o*o*inverse*xi*xr, ci, (0.5+0.5*d[i]*(xi+yi)*xr)*ci
		}
		k, c, cg, period, depth = k[n:], c[n:], cg[n:], period[n:], depth[n:]
	}
}

// Wavenumbers sets k[i] to the wavenumber; see Water.Wavenumbers, whose defaults it uses.
func Wavenumbers(k, period, depth []float64) { Water{}.Wavenumbers(k, period, depth) }

// Speeds sets the wavenumbers and speeds; see Water.Speeds, whose defaults it uses.
func Speeds(k, c, cg, period, depth []float64) { Water{}.Speeds(k, c, cg, period, depth) }
