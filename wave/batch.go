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
		frequencies(x, y, pb, hb, inverse)
		dispersion.SolveSlice(x, y)
		for i, h := range hb {
			if !ordinary(y[i]) || !(pb[i] > 0) {
				kb[i], _ = w.root(pb[i], h)
				continue
			}
			kb[i] = x[i] / h
		}
		k, period, depth = k[n:], period[n:], depth[n:]
	}
}

// frequencies sets omega[i] to 2π/period[i], two at a time with one division, 2π/p = q·2π/pq, and y[i] to ω²h/g. Where the
// product of the two periods is no ordinary number, neither result is, and both waves are left to the scalar path.
func frequencies(omega, y, period, depth []float64, inverse float64) {
	n := len(period)
	omega, y, depth = omega[:n], y[:n], depth[:n]
	i := 0
	for ; i+1 < n; i += 2 {
		p, q := period[i], period[i+1]
		r := 2 * math.Pi / (p * q)
		o, u := q*r, p*r
		omega[i], omega[i+1] = o, u
		y[i], y[i+1] = o*o*inverse*depth[i], u*u*inverse*depth[i+1]
	}
	if i < n {
		o := 2 * math.Pi / period[i]
		omega[i], y[i] = o, o*o*inverse*depth[i]
	}
}

// The ends that Water.root treats apart, as bits: between them doubles are in the order of their bits.
const (
	shallowest = 0x3c670ef54646d497 // 1e-17
	deepest    = 0x4036000000000000 // 22
)

// ordinary reports whether y lies between the ends, with one unsigned comparison. The depth is above zero then; the period may
// yet be negative.
func ordinary(y float64) bool { return math.Float64bits(y)-shallowest < deepest-shallowest }

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
		frequencies(omega, y, pb, hb, inverse)
		dispersion.SolveDiffSlice(x, d, y)
		for i, h := range hb {
			o, xi, yi := omega[i], x[i], y[i]
			if ordinary(yi) && o > 0 {
				r := 1 / (xi * yi)
				xr := xi * r
				ci := o * h * (yi * r)
				kb[i], cb[i], gb[i] = o*o*inverse*(xi*xr), ci, (0.5+0.5*d[i]*((xi+yi)*xr))*ci
				continue
			}
			if yi >= 22 && o > 0 && o < 1e150 { // deep, to the last bit
				k0 := o * o * inverse
				ci := o / k0
				kb[i], cb[i], gb[i] = k0, ci, ci/2
				continue
			}
			v := w.Solve(pb[i], h)
			kb[i], cb[i], gb[i] = v.Wavenumber, v.PhaseSpeed, v.GroupSpeed
		}
		k, c, cg, period, depth = k[n:], c[n:], cg[n:], period[n:], depth[n:]
	}
}

// Wavenumbers sets k[i] to the wavenumber; see Water.Wavenumbers, whose defaults it uses.
func Wavenumbers(k, period, depth []float64) { Water{}.Wavenumbers(k, period, depth) }

// Speeds sets the wavenumbers and speeds; see Water.Speeds, whose defaults it uses.
func Speeds(k, c, cg, period, depth []float64) { Water{}.Speeds(k, c, cg, period, depth) }
