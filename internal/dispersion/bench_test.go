package dispersion

import (
	"math"
	"math/rand/v2"
	"sort"
	"testing"
	"time"
)

// coastal returns y for periods of 1.5 to 12 s over depths of 1 to 60 m; some 3 % of it is deep.
func coastal() []float64 {
	rng := rand.New(rand.NewPCG(7, 7))
	y := make([]float64, 4096)
	for i := range y {
		omega := 2 * math.Pi / (1.5 + 10.5*rng.Float64())
		h := math.Exp(rng.Float64() * math.Log(60))
		y[i] = omega * omega * h / 9.80665
	}
	return y
}

var sink float64

func each(f func(float64) float64, y []float64) func() {
	return func() {
		s := 0.0
		for _, v := range y {
			s += f(v)
		}
		sink += s
	}
}

// BenchmarkRatios runs the solvers and math.Exp in turn, round after round in one process, and reports each as a multiple
// of math.Exp (the median over the rounds): figures that mean the same on another day and nearly the same elsewhere.
// Latency feeds each result into the next argument.
func BenchmarkRatios(b *testing.B) {
	y := coastal()
	exps := make([]float64, len(y)) // arguments of Exp of ordinary size
	for i := range exps {
		exps[i] = -y[i] / 4
	}
	x, n := make([]float64, len(y)), make([]float64, len(y))
	kernels := []struct {
		name string
		run  func()
	}{
		{"Exp", func() {
			s := 0.0
			for _, v := range exps {
				s += math.Exp(v)
			}
			sink += s
		}},
		{"Solve", func() {
			s := 0.0
			for _, v := range y {
				s += Solve(v)
			}
			sink += s
		}},
		{"SolveSlice", func() { SolveSlice(x, y) }},
		{"SolveDiffSlice", func() { SolveDiffSlice(x, n, y) }},
		{"Newton-better-limit", each(newton, y)},
		{"Newton-from-deep", each(deepNewton, y)},
		{"bisection", each(bisect, y)},
		{"Hunt-9-coefficients-1e-4", each(hunt9, y)},
		{"Beji-4e-4", each(beji, y)},
		{"Exp-latency", func() {
			s := 0.0
			for _, v := range exps {
				s = math.Exp(v + 1e-300*s)
			}
			sink += s
		}},
		{"Solve-latency", func() {
			s := 0.0
			for _, v := range y {
				s = Solve(v + 1e-300*s)
			}
			sink += s
		}},
	}
	const rounds = 51
	times := make([][]float64, len(kernels))
	for b.Loop() {
		for range rounds {
			for i, k := range kernels {
				start := time.Now()
				k.run()
				times[i] = append(times[i], float64(time.Since(start)))
			}
		}
	}
	median := func(v []float64) float64 {
		sort.Float64s(v)
		return v[len(v)/2]
	}
	m := make([]float64, len(kernels))
	for i := range kernels {
		m[i] = median(times[i])
	}
	for i, k := range kernels {
		switch k.name {
		case "Exp", "Exp-latency":
		case "Solve-latency":
			b.ReportMetric(m[i]/m[i-1], k.name+"/Exp-latency")
		default:
			b.ReportMetric(m[i]/m[0], k.name+"/Exp")
		}
	}
}

func BenchmarkExp(b *testing.B) {
	for b.Loop() {
		sink += math.Exp(-1.25)
	}
}

func BenchmarkSolve(b *testing.B) {
	y := coastal()
	i := 0
	b.ReportAllocs()
	for b.Loop() {
		sink += Solve(y[i&4095])
		i++
	}
}

// BenchmarkNewton is the plain twin of BenchmarkSolve.
func BenchmarkNewton(b *testing.B) {
	y := coastal()
	i := 0
	for b.Loop() {
		sink += deepNewton(y[i&4095])
		i++
	}
}

func BenchmarkSolveSlice(b *testing.B) {
	y := coastal()
	x := make([]float64, len(y))
	b.ReportAllocs()
	for b.Loop() {
		SolveSlice(x, y)
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(len(y)), "ns/solve")
}
