package wave_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"sort"
	"testing"
	"time"

	"followingsea.example/wave"
)

func grid(n int) (period, depth []float64) {
	rng := rand.New(rand.NewPCG(4, 2))
	period, depth = make([]float64, n), make([]float64, n)
	for i := range period {
		period[i] = 1.5 + 10.5*rng.Float64()
		depth[i] = math.Exp(rng.Float64() * math.Log(60))
	}
	return period, depth
}

func TestBatch(t *testing.T) {
	period, depth := grid(500)
	period = append(period, inf, 0, -1, nothing, 5, 5, 5, 5, 1e9, 5, inf)
	depth = append(depth, 5, 5, 5, 5, inf, 0, nothing, -1, 1, 1e9, inf)
	for _, odd := range []float64{1e300, 1e-300, 5e-324, 1e160, 1e-160} { // each beside an ordinary one
		period, depth = append(period, odd, 8, 8, odd), append(depth, 5, 5, 5, 5)
	}
	n := len(period)
	same := func(what string, got, want float64) {
		t.Helper()
		if !(math.Abs(got-want) <= 1e-15*math.Abs(want)) && got != want && !(math.IsNaN(got) && math.IsNaN(want)) {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	k, c, cg := make([]float64, n), make([]float64, n), make([]float64, n)
	wave.Wavenumbers(k, period, depth)
	for i := range k {
		same("wavenumber", k[i], wave.Wavenumber(period[i], depth[i]))
	}
	wave.Speeds(k, c, cg, period, depth)
	for i := range k {
		w := wave.Solve(period[i], depth[i])
		same("wavenumber", k[i], w.Wavenumber)
		same("phase speed", c[i], w.PhaseSpeed)
		same("group speed", cg[i], w.GroupSpeed)
	}
	if a := testing.AllocsPerRun(5, func() { wave.Speeds(k, c, cg, period, depth); wave.Wavenumbers(k, period, depth) }); a != 0 {
		t.Errorf("%v allocations", a)
	}
	inPlace := append([]float64(nil), period...)
	wave.Wavenumbers(inPlace, inPlace, depth)
	for i := range inPlace {
		same("in place", inPlace[i], k[i])
	}
	for name, f := range map[string]func(){
		"Wavenumbers": func() { wave.Wavenumbers(k[:1], period, depth) },
		"Speeds":      func() { wave.Speeds(k, c, cg[:1], period, depth) },
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

// TestFewWaves: the slices may be of any length, none and an odd one included, and hold waves of shallow, intermediate and
// deep water.
func TestFewWaves(t *testing.T) {
	periods, depths := []float64{3, 8, 12, 5, 2}, []float64{4, 5, 0.2, 60, 1}
	for n := 0; n <= len(periods); n++ {
		for first := 0; first+n <= len(periods); first++ {
			period, depth := periods[first:first+n], depths[first:first+n]
			k, c, cg := make([]float64, n), make([]float64, n), make([]float64, n)
			wave.Wavenumbers(k, period, depth)
			for i := range k {
				rel(t, fmt.Sprintf("wavenumber %d of %d", i, n), k[i], wave.Wavenumber(period[i], depth[i]), 4*0x1p-52)
			}
			wave.Speeds(k, c, cg, period, depth)
			for i := range k {
				w := wave.Solve(period[i], depth[i])
				rel(t, fmt.Sprintf("wavenumber %d of %d", i, n), k[i], w.Wavenumber, 6*0x1p-52)
				rel(t, fmt.Sprintf("phase speed %d of %d", i, n), c[i], w.PhaseSpeed, 6*0x1p-52)
				rel(t, fmt.Sprintf("group speed %d of %d", i, n), cg[i], w.GroupSpeed, 6*0x1p-52)
			}
		}
	}
}

// TestNegativePeriodInSlices: a negative period has no wave, in shallow as in deep water, alone and beside others.
func TestNegativePeriodInSlices(t *testing.T) {
	for _, period := range [][]float64{{-8}, {-8, 8}, {8, -8}, {-8, -8}, {8, 8, -8}} {
		for _, depth := range []float64{1, 10, 1000} {
			h := make([]float64, len(period))
			for i := range h {
				h[i] = depth
			}
			k, c, cg := make([]float64, len(h)), make([]float64, len(h)), make([]float64, len(h))
			wave.Wavenumbers(k, period, h)
			for i, p := range period {
				if math.IsNaN(k[i]) != (p < 0) {
					t.Errorf("%v s over %v m: wavenumber %v", p, depth, k[i])
				}
			}
			wave.Speeds(k, c, cg, period, h)
			for i, p := range period {
				if math.IsNaN(k[i]) != (p < 0) || math.IsNaN(c[i]) != (p < 0) || math.IsNaN(cg[i]) != (p < 0) {
					t.Errorf("%v s over %v m: %v, %v, %v", p, depth, k[i], c[i], cg[i])
				}
			}
		}
	}
}

func TestNoAllocation(t *testing.T) {
	if a := testing.AllocsPerRun(100, func() {
		w := wave.Solve(8, 6)
		sink += w.Orbit(1, -2, 30).Along + w.Shoaling() + wave.OnCurrent(8, 6, -1).Length + wave.Transform(1, 20, 8, 20, 5).Height
	}); a != 0 {
		t.Errorf("%v allocations", a)
	}
}

var sink float64

// plainSpeeds is the plain twin of Speeds: Newton's method from the deep-water wavenumber and a sinh for the group speed.
func plainSpeeds(k, c, cg, period, depth []float64) {
	for i := range k {
		omega := 2 * math.Pi / period[i]
		h := depth[i]
		x := omega * omega * h / wave.StandardGravity
		y := x
		for range 100 {
			t := math.Tanh(x)
			d := (x*t - y) / (t + x*(1-t*t))
			x -= d
			if math.Abs(d) <= 1e-12*x {
				break
			}
		}
		k[i] = x / h
		c[i] = omega / k[i]
		cg[i] = c[i] * (0.5 + x/math.Sinh(2*x))
	}
}

func TestPlainSpeeds(t *testing.T) {
	period, depth := grid(500)
	n := len(period)
	a, b := make([]float64, 3*n), make([]float64, 3*n)
	wave.Speeds(a[:n], a[n:2*n], a[2*n:], period, depth)
	plainSpeeds(b[:n], b[n:2*n], b[2*n:], period, depth)
	for i := range a {
		rel(t, "plain twin", a[i], b[i], 1e-11)
	}
}

// BenchmarkRatios runs the kernels and math.Exp in turn in one process and reports each as a multiple of math.Exp, the median
// over the rounds.
func BenchmarkRatios(b *testing.B) {
	period, depth := grid(4096)
	n := len(period)
	k, c, cg := make([]float64, n), make([]float64, n), make([]float64, n)
	kernels := []struct {
		name string
		run  func()
	}{
		{"Exp", func() {
			for _, p := range period {
				sink += math.Exp(-p)
			}
		}},
		{"Wavenumbers", func() { wave.Wavenumbers(k, period, depth) }},
		{"Speeds", func() { wave.Speeds(k, c, cg, period, depth) }},
		{"Solve", func() {
			for i := range period {
				sink += wave.Solve(period[i], depth[i]).GroupSpeed
			}
		}},
		{"OnCurrent", func() {
			for i := range period {
				sink += wave.OnCurrent(period[i], depth[i], -0.3).HeightRatio
			}
		}},
		{"plain-speeds", func() { plainSpeeds(k, c, cg, period, depth) }},
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
	for i := range times {
		sort.Float64s(times[i])
	}
	for i, k := range kernels[1:] {
		b.ReportMetric(times[i+1][len(times[i+1])/2]/times[0][len(times[0])/2], k.name+"/Exp")
	}
}

func BenchmarkSolve(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sink += wave.Solve(8, 6).GroupSpeed
	}
}

func BenchmarkSpeeds(b *testing.B) {
	period, depth := grid(4096)
	k, c, cg := make([]float64, 4096), make([]float64, 4096), make([]float64, 4096)
	b.ReportAllocs()
	for b.Loop() {
		wave.Speeds(k, c, cg, period, depth)
	}
}

// BenchmarkPlainSpeeds is the plain twin of BenchmarkSpeeds.
func BenchmarkPlainSpeeds(b *testing.B) {
	period, depth := grid(4096)
	k, c, cg := make([]float64, 4096), make([]float64, 4096), make([]float64, 4096)
	for b.Loop() {
		plainSpeeds(k, c, cg, period, depth)
	}
}

func BenchmarkOnCurrent(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sink += wave.OnCurrent(6, 10, -1).HeightRatio
	}
}

func BenchmarkLargestMean(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		sink += wave.Rayleigh.LargestMean(1000, 1)
	}
}
