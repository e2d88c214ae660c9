package dispersion

import (
	"encoding/csv"
	"math"
	"math/big"
	"math/rand/v2"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

const prec = 136 // bits of the oracle

func bigf(x float64) *big.Float { return new(big.Float).SetPrec(prec).SetFloat64(x) }

var inverse [80]*big.Float // 1/i

func init() {
	for i := 1; i < len(inverse); i++ {
		inverse[i] = new(big.Float).Quo(bigf(1), bigf(float64(i)))
	}
}

// oracle returns the error of x and of n, as roots of x tanh x = y, in units in the last place: one Newton step in
// 136-bit arithmetic from x, whose square is far below what is measured.
func oracle(y, x, n float64) (ulpX, ulpN float64) {
	bx, by := bigf(x), bigf(y)
	sinh, cosh := hyperbolic(bx)
	t := new(big.Float).Quo(sinh, cosh)
	f := new(big.Float).Mul(bx, t)
	f.Sub(by, f)
	slope := new(big.Float).Mul(t, t)
	slope.Sub(bigf(1), slope).Mul(slope, bx).Add(slope, t)
	f.Quo(f, slope) // true x less x
	dx, _ := f.Float64()

	bx.Add(bx, f) // n at the true root: 1/2 + (x² - y²)/2y
	v := new(big.Float).Mul(bx, bx)
	w := new(big.Float).Mul(by, by)
	v.Sub(v, w).Quo(v, by).Add(v, bigf(1)).Quo(v, bigf(2)).Sub(v, bigf(n))
	dn, _ := v.Float64()
	return math.Abs(dx) / ulp(x), math.Abs(dn) / ulp(n)
}

// hyperbolic returns sinh and cosh of x (to a common factor above 1).
func hyperbolic(x *big.Float) (sinh, cosh *big.Float) {
	if f, _ := x.Float64(); f > 1 { // e^2x - 1 and e^2x + 1
		const halvings = 8
		r := new(big.Float).SetPrec(prec).SetMantExp(x, 1-halvings)
		sum, term := bigf(1), bigf(1)
		for i := 1; i < 40 && (term.Sign() == 0 || term.MantExp(nil) > -prec); i++ {
			term.Mul(term, r).Mul(term, inverse[i])
			sum.Add(sum, term)
		}
		for range halvings {
			sum.Mul(sum, sum)
		}
		return new(big.Float).Sub(sum, bigf(1)), new(big.Float).Add(sum, bigf(1))
	}
	sinh, cosh = bigf(0), bigf(1)
	sinh.Add(sinh, x)
	xx := new(big.Float).Mul(x, x)
	s, c := new(big.Float).Set(x), bigf(1)
	for i := 2; i < 78 && c.MantExp(nil) > -prec; i += 2 {
		c.Mul(c, xx).Mul(c, inverse[i-1]).Mul(c, inverse[i])
		s.Mul(s, xx).Mul(s, inverse[i]).Mul(s, inverse[i+1])
		cosh.Add(cosh, c)
		sinh.Add(sinh, s)
	}
	return sinh, cosh
}

func ulp(x float64) float64 {
	_, e := math.Frexp(x)
	return math.Ldexp(1, max(e-53, -1074))
}

// The promise is 2 units in the last place for x and 4 for n; measured, x is within 1 and n within 3.
func TestAccuracyAgainstHighPrecision(t *testing.T) {
	points := 51_000 // of each kind
	if testing.Short() || raceOn {
		points = 2_000
	}
	rng := rand.New(rand.NewPCG(3, 14))
	logUniform := func(lo, hi float64) float64 {
		return math.Exp(math.Log(lo) + rng.Float64()*(math.Log(hi)-math.Log(lo)))
	}
	edges := func() float64 {
		b := (first + rng.Uint64N(rows+1)) << shift
		return math.Float64frombits(b + rng.Uint64N(5) - 2)
	}
	for _, kind := range []struct {
		name string
		draw func() float64
	}{
		{"all exponents", func() float64 { return logUniform(1e-300, 1e300) }},
		{"coastal exponents", func() float64 { return logUniform(1e-4, 25) }},
		{"even", func() float64 { return 20 * rng.Float64() }},
		{"edges of intervals", edges},
	} {
		var worstX, worstN, atX, atN float64
		for range points {
			y := kind.draw()
			x, n := SolveRatio(y)
			if s := Solve(y); s != x {
				t.Fatalf("Solve(%v) = %v, SolveRatio gives %v", y, s, x)
			}
			if y > 700 { // beyond the oracle, and exact
				if x != y || n != 0.5 {
					t.Fatalf("SolveRatio(%v) = %v, %v", y, x, n)
				}
				continue
			}
			ux, un := oracle(y, x, n)
			if ux > worstX {
				worstX, atX = ux, y
			}
			if un > worstN {
				worstN, atN = un, y
			}
		}
		t.Logf("%-20s x within %.3f (at %v), n within %.3f (at %v) units in the last place, %d points",
			kind.name, worstX, atX, worstN, atN, points)
		if !(worstX <= 1) {
			t.Errorf("%s: x is %v units off at %v", kind.name, worstX, atX)
		}
		if !(worstN <= 4) {
			t.Errorf("%s: n is %v units off at %v", kind.name, worstN, atN)
		}
	}
}

// The table of roots to 25 digits, made with another arithmetic.
func TestRootsTo25Digits(t *testing.T) {
	f, err := os.Open("testdata/roots.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	recs, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	parse := func(s string) *big.Float {
		v, _, err := big.ParseFloat(strings.TrimSpace(s), 0, 120, big.ToNearestEven)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	diff := func(got float64, want *big.Float) float64 {
		d := new(big.Float).Sub(want, bigf(got))
		f, _ := d.Float64()
		return math.Abs(f) / ulp(got)
	}
	if len(recs) < 60 {
		t.Fatalf("only %d rows", len(recs))
	}
	for _, rec := range recs[1:] {
		y, _ := parse(rec[1]).Float64()
		x, n := SolveRatio(y)
		if u := diff(x, parse(rec[2])); !(u <= 1) {
			t.Errorf("Solve(%s) = %v is %.2f units off", rec[0], x, u)
		}
		if u := diff(n, parse(rec[3])); !(u <= 4) {
			t.Errorf("SolveRatio(%s) n = %v is %.2f units off", rec[0], n, u)
		}
	}
}

func TestSpecialCases(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	same := func(a, b float64) bool {
		return a == b && math.Signbit(a) == math.Signbit(b) || math.IsNaN(a) && math.IsNaN(b)
	}
	for _, c := range []struct{ y, x, n float64 }{
		{0, 0, 1},
		{math.Copysign(0, -1), math.Copysign(0, -1), 1},
		{inf, inf, 0.5},
		{nan, nan, nan},
		{-1, nan, nan},
		{-math.SmallestNonzeroFloat64, nan, nan},
		{math.Inf(-1), nan, nan},
		{math.MaxFloat64, math.MaxFloat64, 0.5},
		{math.SmallestNonzeroFloat64, math.Sqrt(math.SmallestNonzeroFloat64), 1},
		{0x1p-1074 * 12345, math.Sqrt(0x1p-1074 * 12345), 1},
	} {
		x, n := SolveRatio(c.y)
		if !same(Solve(c.y), c.x) || !same(x, c.x) || !same(n, c.n) {
			t.Errorf("y = %v: %v, and %v, %v, want %v, %v", c.y, Solve(c.y), x, n, c.x, c.n)
		}
	}
	for _, c := range []struct{ x, y, n float64 }{
		{0, 0, 1}, {inf, inf, 0.5}, {inf, 1, nan}, {1, inf, nan}, {0, 1, nan}, {1, 0, nan}, {nan, 1, nan}, {1, nan, nan}, {-1, 1, nan}, {1, -1, nan},
	} {
		if got := Ratio(c.x, c.y); !same(got, c.n) {
			t.Errorf("Ratio(%v, %v) = %v, want %v", c.x, c.y, got, c.n)
		}
	}
	for _, c := range []struct{ x, y, n float64 }{
		{0, 0, 1}, {inf, inf, 0.5}, {nan, nan, nan}, {-1, nan, nan}, {1000, 1000, 0.5},
	} {
		if y, n := Forward(c.x); !same(y, c.y) || !same(n, c.n) {
			t.Errorf("Forward(%v) = %v, %v, want %v, %v", c.x, y, n, c.y, c.n)
		}
	}
}

// x grows with y: from one double to the next, and across every edge.
func TestMonotone(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 72))
	from := []float64{0x1p-1074, 1e-20, 0x1p-6, 19.5, 22}
	for i := range uint64(rows) {
		from = append(from, math.Float64frombits((first+i)<<shift))
	}
	for range 500 {
		from = append(from, math.Exp(rng.Float64()*14-10))
	}
	for _, y := range from {
		y = math.Float64frombits(math.Float64bits(y) - min(100, math.Float64bits(y)))
		last := Solve(y)
		for range 200 {
			y = math.Nextafter(y, math.Inf(1))
			x := Solve(y)
			if !(x >= last) {
				t.Fatalf("Solve falls from %v to %v at %v", last, x, y)
			}
			last = x
		}
	}
}

func TestPropertyRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := math.Exp(rapid.Float64Range(-200, 6).Draw(t, "ln x"))
		y, n := Forward(x)
		gotX, gotN := SolveRatio(y)
		if !(math.Abs(gotX-x) <= 4e-16*x) {
			t.Errorf("x = %v comes back as %v", x, gotX)
		}
		if !(math.Abs(gotN-n) <= 2e-15) || !(math.Abs(Ratio(x, y)-n) <= 1e-14) {
			t.Errorf("x = %v: n %v, from y %v, from the pair %v", x, n, gotN, Ratio(x, y))
		}
	})
}

// The textbook methods are the plain twins: Newton's iteration, and bisection.
func newton(y float64) float64 {
	x := math.Max(y, math.Sqrt(y))
	for range 100 {
		t := math.Tanh(x)
		d := (x*t - y) / (t + x*(1-t*t))
		x -= d
		if math.Abs(d) <= 1e-12*x {
			break
		}
	}
	return x
}

// deepNewton starts, as most programs do, from the deep-water root.
func deepNewton(y float64) float64 {
	x := y
	for range 1000 {
		t := math.Tanh(x)
		d := (x*t - y) / (t + x*(1-t*t))
		x -= d
		if math.Abs(d) <= 1e-12*x {
			break
		}
	}
	return x
}

func bisect(y float64) float64 {
	lo, hi := 0.0, 2*math.Max(y, math.Sqrt(y))
	for range 80 {
		mid := (lo + hi) / 2
		if mid*math.Tanh(mid) < y {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2
}

func TestPlainTwins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		y := math.Exp(rapid.Float64Range(-12, 4).Draw(t, "ln y"))
		x := Solve(y)
		for name, f := range map[string]func(float64) float64{"Newton": newton, "Newton from deep water": deepNewton, "bisection": bisect} {
			if got := f(y); !(math.Abs(got-x) <= 1e-12*x) {
				t.Errorf("y = %v: %s gives %v, Solve %v", y, name, got, x)
			}
		}
	})
}

func TestSlices(t *testing.T) {
	y := []float64{0, 1e-320, 1e-9, 0.01, 1.0 / 64, 0.5, 1, 19.4, 19.5, 21, 30, math.Inf(1), math.NaN(), -1}
	x, n := make([]float64, len(y)), make([]float64, len(y))
	same := func(a, b float64) bool { return a == b || math.IsNaN(a) && math.IsNaN(b) }
	SolveSlice(x, y)
	for i := range y {
		if !same(x[i], Solve(y[i])) {
			t.Errorf("SolveSlice at %v: %v, want %v", y[i], x[i], Solve(y[i]))
		}
	}
	d := n
	SolveDiffSlice(x, d, y)
	for i := range y {
		wantX, wantN := SolveRatio(y[i])
		gotN := 0.5 + d[i]*(x[i]+y[i])/(2*y[i])
		if y[i] == 0 || math.IsInf(y[i], 1) { // 0/0: the caller's affair
			gotN = wantN
		}
		if !same(x[i], wantX) || !(math.Abs(gotN-wantN) <= 5e-16) && !math.IsNaN(wantN) {
			t.Errorf("SolveDiffSlice at %v: %v, ratio %v, want %v, %v", y[i], x[i], gotN, wantX, wantN)
		}
	}
	inPlace := append([]float64(nil), y...)
	SolveSlice(inPlace, inPlace)
	for i := range y {
		if !same(inPlace[i], x[i]) {
			t.Errorf("in place at %v: %v, want %v", y[i], inPlace[i], x[i])
		}
	}
	for name, f := range map[string]func(){
		"SolveSlice":     func() { SolveSlice(x[:1], y) },
		"SolveDiffSlice": func() { SolveDiffSlice(x, n[:1], y) },
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s does not refuse unequal slices", name)
				}
			}()
			f()
		}()
	}
}

func TestNoAllocation(t *testing.T) {
	y := make([]float64, 64)
	for i := range y {
		y[i] = float64(i) / 3
	}
	x, n := make([]float64, 64), make([]float64, 64)
	if a := testing.AllocsPerRun(10, func() { SolveSlice(x, y); SolveDiffSlice(x, n, y) }); a != 0 {
		t.Errorf("%v allocations", a)
	}
}
