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
// which matter come first, and the rest is skipped.

// maxBlock is the number of samples on either side of a block's middle, and
// negligible what a part of one term may be left out for, in metres.
const (
	maxBlock   = 120
	negligible = 1e-11
)

// fill writes the derivative of order 0 or 1 (per hour) of the sum at from,
// from + step, ... into dst. In ByYear all of it is of the year given.
func (s *sum) fill(dst []float64, from time.Time, step time.Duration, order, year int) {
	n := len(s.terms)
	half := maxBlock
	if step > 0 {
		if k := reach / step; k < maxBlock {
			half = int(k)
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
		table = make([][2]float64, n*(half+1)) // cos σkΔ, sin σkΔ by k and term
		coef  = make([]coefficient, n)
	)
	// The order of the terms is settled at the first block, and the table with it.
	for i := range perm {
		perm[i] = i
	}
	first := true
	var e epoch
	var origin time.Time
	span := float64(half) * dt
	for lo := 0; lo < len(dst); lo += 2*half + 1 {
		block := dst[lo:min(len(dst), lo+2*half+1)]
		mid := from.Add(time.Duration(lo+half) * step)
		if s.nodes != ByYear || first {
			e = s.epochAt(mid, year)
			origin = mid
		}
		// In ByYear only the hours since New Year change from block to block.
		if s.nodes == ByYear {
			e.hours += hoursBetween(origin, mid)
			origin = mid
		}
		ws = s.nearEpoch(&e, mid, ws)
		if first {
			first = false
			weight := func(i int) float64 {
				p := ws[i].p2
				q := ws[i].p1
				return math.Hypot(real(p), imag(p))*1e3 + math.Hypot(real(q), imag(q))
			}
			sort.SliceStable(perm, func(a, b int) bool { return weight(perm[a]) > weight(perm[b]) })
			for k := 0; k <= half; k++ {
				row := table[n*k : n*(k+1)]
				for j, i := range perm {
					row[j][1], row[j][0] = math.Sincos(ws[i].speed * float64(k) * dt)
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
			q := coefficient{real(p0), imag(p0), real(p1), imag(p1), real(p2), imag(p2)}
			coef[j] = q
			if (math.Abs(q.c1)+math.Abs(q.s1))*span > negligible {
				n1 = j + 1
			}
			if (math.Abs(q.c2)+math.Abs(q.s2))*span*span > negligible {
				n2 = j + 1
			}
		}
		n1 = max(n1, n2)
		z0 := s.z0
		if order == 1 {
			z0 = 0
		}
		for k := 0; k <= half; k++ {
			row := table[n*k : n*(k+1)]
			tau := float64(k) * dt
			e, o, e1, o1, e2, o2 := dots(coef, row, n1, n2)
			// τ changes sign with k: even and odd parts change places.
			put(block, half+k, z0+e-o+tau*(e1-o1+tau*(e2-o2)))
			put(block, half-k, z0+e+o-tau*(e1+o1-tau*(e2+o2)))
		}
	}
}

// put stores a sample that lies in the block; the last block may be cut short.
func put(block []float64, i int, v float64) {
	if uint(i) < uint(len(block)) {
		block[i] = v
	}
}

// A coefficient holds the real and imaginary parts of p0, p1 and p2.
type coefficient struct{ c0, s0, c1, s1, c2, s2 float64 }

// dots returns Σ c·cos and Σ s·sin of the three parts: the second over the
// first n1 terms only, the third over the first n2 ≤ n1. The sums run side by side
// so that no addition waits for the one before it.
func dots(p []coefficient, row [][2]float64, n1, n2 int) (e, o, e1, o1, e2, o2 float64) {
	row = row[:len(p)]
	i := 0
	for ; i < n2; i++ {
		q, c, s := &p[i], row[i][0], row[i][1]
		e += q.c0 * c
		o += q.s0 * s
		e1 += q.c1 * c
		o1 += q.s1 * s
		e2 += q.c2 * c
		o2 += q.s2 * s
	}
	for ; i < n1; i++ {
		q, c, s := &p[i], row[i][0], row[i][1]
		e += q.c0 * c
		o += q.s0 * s
		e1 += q.c1 * c
		o1 += q.s1 * s
	}
	var x, y float64
	for ; i+1 < len(p); i += 2 {
		q, c, s := &p[i], row[i][0], row[i][1]
		e += q.c0 * c
		o += q.s0 * s
		q, c, s = &p[i+1], row[i+1][0], row[i+1][1]
		x += q.c0 * c
		y += q.s0 * s
	}
	if i < len(p) {
		q, c, s := &p[i], row[i][0], row[i][1]
		e += q.c0 * c
		o += q.s0 * s
	}
	return e + x, o + y, e1, o1, e2, o2
}

// series fills dst in pieces that do not cross a New Year where that matters.
func (s *sum) series(dst []float64, from time.Time, step time.Duration, order int) {
	if s.nodes != ByYear || step == 0 {
		s.fill(dst, from, step, order, from.UTC().Year())
		return
	}
	for len(dst) > 0 {
		year := from.UTC().Year()
		var before time.Duration // samples left in the year
		if step > 0 {
			next := time.Date(year+1, 1, 1, 0, 0, 0, 0, time.UTC)
			before = (next.Sub(from) + step - 1) / step
		} else {
			start := time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC)
			before = 1 + from.Sub(start)/-step
		}
		n := len(dst)
		if before < time.Duration(n) {
			n = int(before)
		}
		s.fill(dst[:n], from, step, order, year)
		dst, from = dst[n:], from.Add(time.Duration(n)*step)
	}
}
