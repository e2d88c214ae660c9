package harmonic

import (
	"math"
	"sort"
	"time"
)

// Many instants at even steps cost far less than as many sums of cosines. In
// a block of samples at c ± k steps each term is (p0 + p1 τ + p2 τ²) e^{iστ};
// with e^{iσkΔ} in a table made once for the whole series,
//
//	E_k = Σ Re p cos σkΔ,  O_k = Σ Im p sin σkΔ,  h(c ± kΔ) = E_k ∓ O_k
//
// so that one product of the table gives two samples, and the cosines, the
// node factors and the longitudes are paid once a block. The parts p1 and p2
// come from the node alone and are small: terms are ordered so that those
// which matter to 1e-12 of the whole come first, and the rest is skipped.

// maxBlock is the number of samples on either side of a block's middle.
const maxBlock = 60

// fill writes the derivative of order 0 or 1 (per hour) of the sum at from,
// from + step, ... into dst. In ByYear all of it is of the year given.
func (s *sum) fill(dst []float64, from time.Time, step time.Duration, order, year int) {
	n := len(s.terms)
	half := maxBlock
	if step > 0 {
		if k := int(reach / step); k < half {
			half = k
		}
	} else {
		half = 0
	}
	if len(dst) < 2*half+1 {
		half = (len(dst) - 1) / 2
	}
	dt := step.Hours()
	var (
		ws    = make([]wave, 0, n)
		perm  = make([]int, n)
		table = make([]float64, 2*n*(half+1)) // [k][cos..., sin...]
		coef  = make([]float64, 6*n)
	)
	c0, s0, c1, s1, c2, s2 := coef[:n], coef[n:2*n], coef[2*n:3*n], coef[3*n:4*n], coef[4*n:5*n], coef[5*n:]
	// The order of the terms is settled at the first block, and the table with it.
	for i := range perm {
		perm[i] = i
	}
	first := true
	span := float64(half) * dt
	for lo := 0; lo < len(dst); lo += 2*half + 1 {
		block := dst[lo:min(len(dst), lo+2*half+1)]
		mid := from.Add(time.Duration(lo+half) * step)
		ws = s.near(mid, year, ws)
		if first {
			first = false
			weight := func(i int) float64 {
				p := ws[i].p2
				q := ws[i].p1
				return math.Hypot(real(p), imag(p))*1e3 + math.Hypot(real(q), imag(q))
			}
			sort.SliceStable(perm, func(a, b int) bool { return weight(perm[a]) > weight(perm[b]) })
			for k := 0; k <= half; k++ {
				row := table[2*n*k : 2*n*(k+1)]
				for j, i := range perm {
					row[n+j], row[j] = math.Sincos(ws[i].speed * float64(k) * dt)
				}
			}
		}
		n1, n2 := 0, 0
		for j, i := range perm {
			w := &ws[i]
			p0, p1, p2 := w.p0, w.p1, w.p2
			if order == 1 {
				is := complex(0, w.speed)
				p0, p1, p2 = is*p0+p1, is*p1+2*p2, is*p2
			}
			c0[j], s0[j] = real(p0), imag(p0)
			c1[j], s1[j] = real(p1), imag(p1)
			c2[j], s2[j] = real(p2), imag(p2)
			if (math.Abs(c1[j])+math.Abs(s1[j]))*span > 1e-12 {
				n1 = j + 1
			}
			if (math.Abs(c2[j])+math.Abs(s2[j]))*span*span > 1e-12 {
				n2 = j + 1
			}
		}
		z0 := s.z0
		if order == 1 {
			z0 = 0
		}
		for k := 0; k <= half; k++ {
			row := table[2*n*k : 2*n*(k+1)]
			cos, sin := row[:n], row[n:]
			tau := float64(k) * dt
			e, o := dot(c0, cos, s0, sin)
			if n1 > 0 {
				e1, o1 := dot(c1[:n1], cos[:n1], s1[:n1], sin[:n1])
				var e2, o2 float64
				if n2 > 0 {
					e2, o2 = dot(c2[:n2], cos[:n2], s2[:n2], sin[:n2])
				}
				// τ changes sign with k: even and odd parts change places.
				plus := e - o + tau*(e1-o1+tau*(e2-o2))
				minus := e + o - tau*(e1+o1-tau*(e2+o2))
				put(block, half+k, z0+plus)
				put(block, half-k, z0+minus)
				continue
			}
			put(block, half+k, z0+e-o)
			put(block, half-k, z0+e+o)
		}
	}
}

// put stores a sample that lies in the block; the last block may be cut short.
func put(block []float64, i int, v float64) {
	if uint(i) < uint(len(block)) {
		block[i] = v
	}
}

// dot returns Σ a·b and Σ c·d of equally long slices, four sums side by side.
func dot(a, b, c, d []float64) (ab, cd float64) {
	n := len(a)
	b, c, d = b[:n], c[:n], d[:n]
	var x, y float64
	i := 0
	for ; i+1 < n; i += 2 {
		ab += a[i] * b[i]
		cd += c[i] * d[i]
		x += a[i+1] * b[i+1]
		y += c[i+1] * d[i+1]
	}
	if i < n {
		ab += a[i] * b[i]
		cd += c[i] * d[i]
	}
	return ab + x, cd + y
}

// series fills dst in pieces that do not cross a New Year where that matters.
func (s *sum) series(dst []float64, from time.Time, step time.Duration, order int) {
	if s.nodes != ByYear || step <= 0 {
		s.fill(dst, from, step, order, from.UTC().Year())
		return
	}
	for len(dst) > 0 {
		year := from.UTC().Year()
		next := time.Date(year+1, 1, 1, 0, 0, 0, 0, time.UTC)
		n := int((next.Sub(from) + step - 1) / step) // samples before next
		if n > len(dst) {
			n = len(dst)
		}
		s.fill(dst[:n], from, step, order, year)
		dst, from = dst[n:], from.Add(time.Duration(n)*step)
	}
}
