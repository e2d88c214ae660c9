// Command gen writes the table of package dispersion from high-precision arithmetic. It is run by go generate; its test
// checks that the stored table is, byte for byte, what it writes.
//
// # The equation as an ordinary differential equation
//
// x tanh x = y gives, by implicit differentiation and tanh x = y/x,
//
//	dx/dy = 1/(tanh x + x(1 - tanh² x)) = x/(x² + y - y²)
//
// so the Taylor coefficients of x about any midpoint follow from the first one by a recurrence, and only that first one
// needs a root (Newton's method on x tanh x, with an exponential by series). Near zero the same holds for w = x²:
//
//	w' (w + y - y²) = 2w,  w = y + y²/3 + 4y³/45 + 16y⁴/945 + ...
//
// # From Taylor to the short polynomial
//
// Each Taylor series is written in Chebyshev polynomials of its interval, cut after the wanted degree, and turned back
// into powers. The cut series is within a few per cent of the best polynomial of its degree.
package main

import (
	"bytes"
	"flag"
	"fmt"
	"go/format"
	"log"
	"math"
	"math/big"
	"os"
)

const (
	precision = 256 // bits
	terms     = 28  // of the Taylor series before it is cut
	bits      = 5   // leading mantissa bits that choose a row: 32 rows an octave
	degree    = 6   // of a row
	smallDeg  = 4   // of the polynomial below the table
	lowest    = 1.0 / 64
	highest   = 19.5
)

func num(x float64) *big.Float { return new(big.Float).SetPrec(precision).SetFloat64(x) }
func zero() *big.Float         { return new(big.Float).SetPrec(precision) }
func add(a, b *big.Float) *big.Float {
	return zero().Add(a, b)
}
func sub(a, b *big.Float) *big.Float { return zero().Sub(a, b) }
func mul(a, b *big.Float) *big.Float { return zero().Mul(a, b) }
func quo(a, b *big.Float) *big.Float { return zero().Quo(a, b) }

// exp returns e^x: the argument halved until it is small, a series, and as many squarings.
func exp(x *big.Float) *big.Float {
	const halvings = 16
	r := zero().SetMantExp(x, -halvings)
	sum, term := num(1), num(1)
	for i := 1; i <= 40; i++ {
		term = quo(mul(term, r), num(float64(i)))
		sum = add(sum, term)
	}
	for range halvings {
		sum = mul(sum, sum)
	}
	return sum
}

// root returns x with x tanh x = y.
func root(y *big.Float) *big.Float {
	f, _ := y.Float64()
	x := num(math.Max(f, math.Sqrt(f)))
	one := num(1)
	for range 12 {
		e := exp(mul(num(2), x))
		tanh := quo(sub(e, one), add(e, one))
		slope := add(tanh, mul(x, sub(one, mul(tanh, tanh))))
		x = sub(x, quo(sub(mul(x, tanh), y), slope))
	}
	return x
}

// series returns the Taylor coefficients of x about y = mid, from x' (x² + y - y²) = x.
func series(mid *big.Float) []*big.Float {
	a := make([]*big.Float, terms)
	a[0] = root(mid)
	d := make([]*big.Float, terms) // coefficients of x² + y - y²
	for n := range terms - 1 {
		d[n] = zero()
		for i := 0; i <= n; i++ {
			d[n] = add(d[n], mul(a[i], a[n-i]))
		}
		switch n {
		case 0:
			d[n] = add(d[n], sub(mid, mul(mid, mid)))
		case 1:
			d[n] = add(d[n], sub(num(1), mul(num(2), mid)))
		case 2:
			d[n] = sub(d[n], num(1))
		}
		s := a[n]
		for i := 1; i <= n; i++ {
			s = sub(s, mul(d[i], mul(num(float64(n-i+1)), a[n-i+1])))
		}
		a[n+1] = quo(s, mul(num(float64(n+1)), d[0]))
	}
	return a
}

// small returns the coefficients q of x² = y + y² (q0 + q1 y + ...), from w' (w + y - y²) = 2w.
func small() []*big.Float {
	w := make([]*big.Float, terms+2)
	w[0], w[1] = zero(), num(1)
	for n := 2; n < len(w); n++ {
		// Coefficient n of w'(w + y - y²) - 2w, in which w[n] appears as n w[n] (w1 + 1) + w1 w[n] - 2 w[n].
		s := zero()
		for i := 1; i < n; i++ { // i w[i] y^(i-1) times the coefficient n-i+1 of (w + y - y²)
			d := zero()
			if j := n - i + 1; j < n {
				d = add(d, w[j])
				if j == 2 {
					d = sub(d, num(1))
				}
			} else if j == 2 {
				d = num(-1) // the part of coefficient n that is not w[n]
			}
			s = add(s, mul(num(float64(i)), mul(w[i], d)))
		}
		w[n] = quo(zero().Neg(s), num(float64(2*n+1-2)))
	}
	return w[2:]
}

// shift returns the coefficients of p(a + b u) in powers of u.
func shift(p []*big.Float, a, b *big.Float) []*big.Float {
	q := make([]*big.Float, len(p))
	for i := range q {
		q[i] = zero()
	}
	for i := len(p) - 1; i >= 0; i-- { // q = q (a + b u) + p[i]
		for j := len(q) - 1; j > 0; j-- {
			q[j] = add(mul(q[j], a), mul(q[j-1], b))
		}
		q[0] = add(mul(q[0], a), p[i])
	}
	return q
}

// cut writes p, in powers of u on [-1, 1], in Chebyshev polynomials, drops those above degree n, and returns powers.
func cut(p []*big.Float, n int) []*big.Float {
	p = append([]*big.Float(nil), p...)
	cheb := chebyshev(len(p))
	for d := len(p) - 1; d > n; d-- { // take away p[d]/2^(d-1) T_d, which removes the power d
		f := quo(p[d], cheb[d][d])
		for i := 0; i <= d; i++ {
			p[i] = sub(p[i], mul(f, cheb[d][i]))
		}
	}
	return p[:n+1]
}

// chebyshev returns the powers of T_0 to T_(n-1).
func chebyshev(n int) [][]*big.Float {
	t := make([][]*big.Float, n)
	for d := range t {
		t[d] = make([]*big.Float, n)
		for i := range t[d] {
			t[d][i] = zero()
		}
		switch d {
		case 0, 1:
			t[d][d] = num(1)
		default:
			for i := range d {
				t[d][i+1] = mul(num(2), t[d-1][i])
			}
			for i := range d {
				t[d][i] = sub(t[d][i], t[d-2][i])
			}
		}
	}
	return t
}

// polynomial returns the cut polynomial of degree n that stands for p (in powers of y - mid) on mid ± half.
func polynomial(p []*big.Float, half *big.Float, n int) []*big.Float {
	u := cut(shift(p, zero(), half), n)
	return shift(u, zero(), quo(num(1), half))
}

func write() []byte {
	var b bytes.Buffer
	fmt.Fprintf(&b, "// Code generated by internal/dispersion/gen; DO NOT EDIT.\n\npackage dispersion\n\n")

	first := math.Float64bits(lowest) >> (52 - bits)
	last := math.Float64bits(highest) >> (52 - bits)
	fmt.Fprintf(&b, "const (\n\tshift = %d // bits of a double below those that choose a row\n\tfirst = %#x // %v, shifted\n\trows  = %d // up to %v\n)\n\n",
		52-bits, first, lowest, last-first, highest)

	// Below the table: powers of y, from the interval 0 to lowest.
	h := num(lowest / 2)
	q := shift(cut(shift(small(), h, h), smallDeg), num(-1), quo(num(1), h))
	fmt.Fprintf(&b, "// Below the table x² = y + y² Q(y): the coefficients of Q, near 1/3, 4/45, 16/945.\nconst (\n")
	for i, c := range q {
		f, _ := c.Float64()
		fmt.Fprintf(&b, "\tq%d = %x // %.17g\n", i, f, f)
	}
	fmt.Fprintf(&b, ")\n\n")

	fmt.Fprintf(&b, "// table holds, for each interval, the root at its midpoint as a rounded and a remaining part, then the coefficients of\n"+
		"// the powers 1 to %d of the distance from the midpoint. A row is one cache line.\nvar table = [rows][8]float64{\n", degree)
	for i := first; i < last; i++ {
		lo := math.Float64frombits(i << (52 - bits))
		hi := math.Float64frombits((i + 1) << (52 - bits))
		mid := lo + (hi-lo)/2
		c := polynomial(series(num(mid)), num((hi-lo)/2), degree)
		c0, _ := c[0].Float64()
		rest, _ := sub(c[0], num(c0)).Float64()
		fmt.Fprintf(&b, "\t{%x, %x", c0, rest)
		for _, c := range c[1:] {
			f, _ := c.Float64()
			fmt.Fprintf(&b, ", %x", f)
		}
		fmt.Fprintf(&b, "}, // %v\n", mid)
	}
	fmt.Fprintf(&b, "}\n")
	src, err := format.Source(b.Bytes())
	if err != nil {
		log.Fatal(err)
	}
	return src
}

func main() {
	out := flag.String("o", "table.go", "file to write")
	flag.Parse()
	if err := os.WriteFile(*out, write(), 0o644); err != nil {
		log.Fatal(err)
	}
}
