package spectrum_test

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
	"pgregory.net/rapid"
)

func TestDescribeIsItsParts(t *testing.T) {
	for name, s := range shapes() {
		const hi = 0.8
		m := func(n float64) float64 { return spectrum.MomentWithin(s, n, 0, hi) }
		p := spectrum.DescribeWithin(s, 0, hi)
		for _, c := range []struct {
			what      string
			got, want float64
		}{
			{"Hm0", p.Hm0, spectrum.Height(m(0))}, {"Te", p.Te, spectrum.EnergyPeriod(m(-1), m(0))},
			{"Tm01", p.Tm01, spectrum.MeanPeriod(m(0), m(1))}, {"Tz", p.Tz, spectrum.ZeroCrossingPeriod(m(0), m(2))},
			{"Tm24", p.Tm24, spectrum.CrestPeriod(m(2), m(4))}, {"Tp", p.Tp, 1 / spectrum.PeakFrequency(s)},
			{"nu", p.Narrowness, spectrum.Narrowness(m(0), m(1), m(2))}, {"eps", p.Broadness, spectrum.Broadness(m(0), m(2), m(4))},
			{"alpha", p.Irregularity, spectrum.Irregularity(m(0), m(2), m(4))}, {"Qp", p.Peakedness, spectrum.Peakedness(s, 0, hi)},
		} {
			near(t, name+" "+c.what, c.got, c.want, 1e-12)
		}
		near(t, name+" eps and alpha", p.Broadness*p.Broadness+p.Irregularity*p.Irregularity, 1, 1e-12)
		near(t, name+" Qp by general quadrature", spectrum.Peakedness(plain{s}, 0, hi)/p.Peakedness, 1, 1e-8)
		near(t, name+" Qp of a part", spectrum.Peakedness(plain{s}, 0.1, 0.3)/spectrum.Peakedness(s, 0.1, 0.3), 1, 1e-8)
		// The mean frequency is the mean of where the energy is: Te is the longest, then Tm01, Tz and Tm24.
		if !(p.Te > p.Tm01 && p.Tm01 > p.Tz && p.Tz > p.Tm24 && p.Tm24 > 0) {
			t.Errorf("%s: periods out of order: %+v", name, p)
		}
		whole := spectrum.Describe(s)
		if !(whole.Tz < p.Tz && whole.Hm0 > p.Hm0) || whole.Tm24 != 0 || whole.Broadness != 1 || whole.Irregularity != 0 {
			t.Errorf("%s: the tail does not tell: %+v", name, whole)
		}
	}
}

func TestPeriodRatiosMatchFits(t *testing.T) {
	for g := 1.0; g <= 7; g += 0.25 {
		te, tm01, tz := spectrum.PeriodRatios(g)
		near(t, "Te/Tp", spectrum.TeOverTpFit(g)/te, 1, 0.0025)
		near(t, "Tm01/Tp", spectrum.Tm01OverTpFit(g)/tm01, 1, 0.0025)
		near(t, "Tz/Tp", spectrum.TzOverTpFit(g)/tz, 1, 0.0025)
	}
}

func TestParametersRefuse(t *testing.T) {
	nan := math.NaN()
	for name, v := range map[string]float64{
		"Height":           spectrum.Height(-1),
		"MeanPeriod":       spectrum.MeanPeriod(0, 1),
		"CrestPeriod":      spectrum.CrestPeriod(nan, inf),
		"Narrowness":       spectrum.Narrowness(1, 2, 3),
		"Broadness":        spectrum.Broadness(1, 2, 3),
		"Irregularity":     spectrum.Irregularity(1, 2, -3),
		"Peakedness":       spectrum.Peakedness(spectrum.Bretschneider{Hs: 1, Tp: 5}, 0.2, 0.2),
		"Peakedness calm":  spectrum.Peakedness(spectrum.Bretschneider{Hs: 0, Tp: 5}, 0, inf),
		"Steepness":        spectrum.SpectralSteepness(1, 0, 0),
		"Steepness g":      spectrum.SpectralSteepness(1, 5, -1),
		"Gamma":            spectrum.GammaFromSteepness(0, 5),
		"Gamma North Sea":  spectrum.GammaNorthSea(1, nan),
		"fit":              spectrum.TzOverTpFit(8),
		"factor":           spectrum.JONSWAPFactor(0.5),
		"fit factor":       spectrum.JONSWAPFactorFit(30),
		"T13":              spectrum.PeakFromT13(5, 0.8),
		"describe":         spectrum.DescribeWithin(spectrum.Bretschneider{Hs: 1, Tp: 5}, 1, 0.1).Hm0,
		"describe calm":    spectrum.Describe(spectrum.Bretschneider{Hs: 0, Tp: 5}).Tz,
		"describe calm Tp": spectrum.Describe(spectrum.Bretschneider{Hs: 0, Tp: 5}).Tp,
	} {
		if !math.IsNaN(v) {
			t.Errorf("%s = %v, want NaN", name, v)
		}
	}
	if h := spectrum.Describe(spectrum.Bretschneider{Hs: 0, Tp: 5}).Hm0; h != 0 {
		t.Errorf("a calm sea is %v m high", h)
	}
}

func TestBandWidths(t *testing.T) {
	grid := []float64{0.02}
	for i := range 13 {
		grid = append(grid, 0.0325+float64(i)*0.005)
	}
	for i := range 26 {
		grid = append(grid, 0.1+float64(i)*0.01)
	}
	for i := range 7 {
		grid = append(grid, 0.365+float64(i)*0.02)
	}
	if len(grid) != 47 {
		t.Fatalf("%d bands", len(grid))
	}
	// The widths join up but for the gap above the noise band.
	w := spectrum.BandWidths(grid)
	for i := 2; i < len(w); i++ {
		near(t, "edge", grid[i-1]+w[i-1]/2, grid[i]-w[i]/2, 1e-12)
	}
	near(t, "noise", w[0], 0.01, 1e-15)
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.SliceOfN(rapid.Float64Range(0.001, 0.1), 2, 20).Draw(t, "steps")
		f[0] += 0.1
		for i := 1; i < len(f); i++ {
			f[i] += f[i-1]
		}
		sum := 0.0
		for _, v := range spectrum.BandWidths(f) {
			if !(v > 0) {
				t.Fatalf("width %v", v)
			}
			sum += v
		}
		if !(sum >= f[len(f)-1]-f[0]) {
			t.Errorf("the widths add up to %v over %v", sum, f[len(f)-1]-f[0])
		}
	})
	for _, bad := range [][]float64{{0.2, 0.1}, {math.NaN(), 0.1}, {0, 0.1}, {0.1, inf}} {
		if v := spectrum.BandWidths(bad)[0]; !math.IsNaN(v) {
			t.Errorf("%v: %v", bad, v)
		}
	}
}

func TestNewBinsRefuses(t *testing.T) {
	nan := math.NaN()
	for _, c := range [][3][]float64{
		{nil, nil, nil}, {{0.1}, {1, 2}, nil}, {{0.1, 0.2}, {1, 2}, {0.1}}, {{0.2, 0.1}, {1, 2}, nil}, {{0, 0.1}, {1, 2}, nil},
		{{0.1, nan}, {1, 2}, nil}, {{0.1, 0.2}, {1, -2}, nil}, {{0.1, 0.2}, {1, inf}, nil}, {{0.1, 0.2}, {1, 2}, {0.1, 0}}, {{0.1, 0.2}, {1, 2}, {0.1, nan}},
	} {
		b, err := spectrum.NewBins(c[0], c[1], c[2])
		if !errors.Is(err, spectrum.ErrInput) || b.F != nil {
			t.Errorf("%v: %v, %v", c, b, err)
		}
	}
	b, err := spectrum.NewBins([]float64{0.1, 0.2}, []float64{1, nan}, nil)
	if err != nil || !math.IsNaN(spectrum.Moment(b, 0)) || !math.IsNaN(spectrum.PeakFrequency(b)) {
		t.Errorf("an unknown density: %v, %v", b, err)
	}
	if m := spectrum.MomentWithin(b, 0, 0, 0.15); !within(m, 0.1, 1e-15) {
		t.Errorf("below the unknown band m0 is %v", m)
	}
}

func TestBinsAreSteps(t *testing.T) {
	b, err := spectrum.NewBins([]float64{0.1, 0.2, 0.4}, []float64{1, 3, 2}, []float64{0.1, 0.1, 0.1})
	if err != nil {
		t.Fatal(err)
	}
	for f, want := range map[float64]float64{0: 0, 0.06: 1, 0.14: 1, 0.16: 3, 0.24: 3, 0.3: 0, 0.36: 2, 0.44: 2, 1: 0} {
		near(t, "density", b.Density(f), want, 0)
	}
	near(t, "m0", spectrum.Moment(b, 0), 0.6, 1e-15)
	near(t, "half a band", spectrum.MomentWithin(b, 0, 0, 0.2), 0.25, 1e-15)
	near(t, "peak", spectrum.PeakFrequency(b), 0.2, 0)
	if !math.IsNaN(b.Density(-1)) || !math.IsNaN(b.Density(math.NaN())) {
		t.Error("a density at no frequency")
	}
	// Fine bins of a shape have its moments.
	j := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}
	var f, s, w []float64
	for i := range 4000 {
		f = append(f, 0.03+0.0005*(float64(i)+0.5))
		s, w = append(s, j.Density(f[i])), append(w, 0.0005)
	}
	fine, err := spectrum.NewBins(f, s, w)
	if err != nil {
		t.Fatal(err)
	}
	p, q := spectrum.Describe(fine), spectrum.DescribeWithin(j, 0.03, 2.03)
	near(t, "Hm0", p.Hm0, q.Hm0, 1e-5)
	near(t, "Tz", p.Tz, q.Tz, 1e-4)
	near(t, "Qp", p.Peakedness, q.Peakedness, 1e-3)
}

func TestPointsAreStraight(t *testing.T) {
	p := spectrum.Points{F: []float64{0.1, 0.3, 0.4}, S: []float64{1, 2, 0}}
	for f, want := range map[float64]float64{0: 0, 0.1: 1, 0.2: 1.5, 0.3: 2, 0.35: 1, 0.4: 0, 0.5: 0} {
		near(t, "density", p.Density(f), want, 1e-12)
	}
	near(t, "m0", spectrum.Moment(p, 0), 0.3+0.1, 1e-12)
	near(t, "part", spectrum.MomentWithin(p, 0, 0.2, 0.35), 0.175+0.075, 1e-12)
	near(t, "peak", spectrum.PeakFrequency(p), 0.3, 0)
	for _, bad := range []spectrum.Points{{F: []float64{0.2, 0.1}, S: []float64{1, 1}}, {F: []float64{0.1, math.NaN()}, S: []float64{1, 1}}, {F: []float64{0.1, 0.2}, S: []float64{1, math.NaN()}}} {
		if m := spectrum.Moment(bad, 0); !math.IsNaN(m) {
			t.Errorf("%v: %v", bad, m)
		}
	}
}

// circle integrates a spreading over all directions by the midpoint rule, which is exact to rounding for a smooth one.
func circle(of func(deg float64) float64) float64 {
	const n = 7200
	sum := 0.0
	for i := range n {
		sum += of((float64(i)+0.5)*360/n-180) * 2 * math.Pi / n
	}
	return sum
}

func TestSpreadingIntegratesToOne(t *testing.T) {
	for _, d := range []spectrum.Spreading{
		spectrum.Cos2s{S: 0}, spectrum.Cos2s{S: 1}, spectrum.Cos2s{S: 7.3}, spectrum.Cos2s{S: 75}, spectrum.Cos2s{S: 500},
		spectrum.CosN{N: 0}, spectrum.CosN{N: 2}, spectrum.CosN{N: 12}, spectrum.GodaSpread{SMax: 25, Fp: 0.1},
	} {
		for _, f := range []float64{0.05, 0.1, 0.3} {
			near(t, "circle", circle(func(a float64) float64 { return d.Spread(f, a) }), 1, 1e-7)
			near(t, "mirror", d.Spread(f, 37), d.Spread(f, -37), 1e-15)
			near(t, "a turn on", d.Spread(f, 37+360), d.Spread(f, 37), 1e-13)
		}
	}
	for _, s := range []float64{0.5, 3, 20, 120} {
		for _, half := range []float64{5, 22.5, 60, 170} {
			got := circle(func(a float64) float64 {
				if math.Abs(a) > half {
					return 0
				}
				return spectrum.Cos2s{S: s}.Spread(0.1, a)
			})
			near(t, "within", spectrum.Cos2sWithin(s, half), got, 2e-3)
		}
	}
	// Large s: the norm goes over into the asymptotic series without a step.
	near(t, "norm", spectrum.Cos2sNorm(1e4*(1+1e-9))/spectrum.Cos2sNorm(1e4), 1, 1e-9)
	near(t, "norm", spectrum.Cos2sNorm(1e12), 1e6/(2*math.Sqrt(math.Pi)), 1e-4)
	for _, v := range []float64{
		spectrum.Cos2s{S: -1}.Spread(1, 0), spectrum.Cos2s{S: 2}.Spread(1, inf), spectrum.Cos2s{S: 2}.Spread(math.NaN(), 0), spectrum.CosN{N: -1}.Spread(1, 0),
		spectrum.CosN{N: 2}.Spread(1, math.NaN()), spectrum.GodaSpread{SMax: 10}.Spread(1, 0), spectrum.Cos2sWithin(2, -1), spectrum.Cos2sWidth(math.NaN()),
		spectrum.Cos2sFromWidth(82), spectrum.Cos2sFromWidth(0), spectrum.CircularWidth(1.1), spectrum.SMaxFromWind(0, 0.1), spectrum.Cos2s{S: 0}.Spread(1, math.NaN()),
	} {
		if !math.IsNaN(v) {
			t.Errorf("%v, want NaN", v)
		}
	}
}

func TestCosNWidth(t *testing.T) {
	for _, n := range []float64{0, 1, 2, 5, 30, 400} {
		d := spectrum.CosN{N: n}
		r1 := circle(func(a float64) float64 { return d.Spread(0, a) * math.Cos(a*math.Pi/180) })
		near(t, "width", spectrum.CosNWidth(n), spectrum.CircularWidth(r1), 1e-3)
	}
	near(t, "series", spectrum.CosNWidth(100*(1+1e-12))/spectrum.CosNWidth(100), 1, 1e-10)
	near(t, "narrow", spectrum.CosNWidth(1e12)*math.Pi/180*1e6, 1, 1e-9)
	if w := spectrum.CosNWidth(-1); !math.IsNaN(w) {
		t.Error(w)
	}
}

func TestFourierCoefficients(t *testing.T) {
	for _, s := range []float64{0, 0.7, 3, 25, 75} {
		r1, r2 := spectrum.Cos2sFourier(s)
		d := spectrum.Cos2s{S: s}
		near(t, "r1", circle(func(a float64) float64 { return d.Spread(0, a) * math.Cos(a*math.Pi/180) }), r1, 1e-9)
		near(t, "r2", circle(func(a float64) float64 { return d.Spread(0, a) * math.Cos(2*a*math.Pi/180) }), r2, 1e-9)
	}
}

func TestWidthRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.Float64Range(0, 500).Draw(t, "s")
		near(t, "s", spectrum.Cos2sFromWidth(spectrum.Cos2sWidth(s)), s, 1e-11*(1+s))
		r1, _ := spectrum.Cos2sFourier(s)
		near(t, "width", spectrum.CircularWidth(r1), spectrum.Cos2sWidth(s), 1e-8)
	})
}

func TestNarrowerWhenYounger(t *testing.T) {
	// A young sea (a strong wind over short waves) spreads more than an old one, and a risen sea has about 10.
	old, young := spectrum.SMaxFromWind(10, 0.13), spectrum.SMaxFromWind(10, 0.3)
	if !(old > young) || !(old > 10 && old < 25) {
		t.Errorf("old %v, young %v", old, young)
	}
}

func TestEnvelopeCorrelation(t *testing.T) {
	for _, c := range []struct{ gamma, kappa, rho float64 }{{1, 0.4262, 0.1682}, {3.3, 0.5710, 0.3049}, {7, 0.6770, 0.4331}} {
		s := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: c.gamma}
		k := spectrum.ChainCorrelation(s)
		near(t, "kappa", k, c.kappa, 5e-4)
		near(t, "by hand", k, spectrum.EnvelopeCorrelation(s, spectrum.Describe(s).Tz), 1e-12)
		near(t, "rho", wave.HeightCorrelation(k), c.rho, 5e-4)
		// It depends on neither height nor period.
		near(t, "scale", spectrum.ChainCorrelation(spectrum.JONSWAP{Hs: 0.3, Tp: 2, Gamma: c.gamma}), k, 1e-9)
		near(t, "even", spectrum.EnvelopeCorrelation(s, -3), spectrum.EnvelopeCorrelation(s, 3), 0)
		near(t, "hidden", spectrum.EnvelopeCorrelation(plain{s}, 6), spectrum.EnvelopeCorrelation(s, 6), 1e-6)
		near(t, "variance", spectrum.Autocovariance(s, 0), 0.25, 1e-12)
	}
	if k := spectrum.EnvelopeCorrelation(spectrum.Bretschneider{Hs: 0, Tp: 5}, 3); !math.IsNaN(k) {
		t.Errorf("kappa of no sea is %v", k)
	}
	// A sum, points and a band go the same way as what they are made of.
	a := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}
	near(t, "sum", spectrum.Autocovariance(spectrum.Sum{a, a}, 5), 2*spectrum.Autocovariance(a, 5), 1e-12)
	low, high := spectrum.Separate(a, 0.2)
	near(t, "bands", spectrum.Autocovariance(low, 5)+spectrum.Autocovariance(high, 5), spectrum.Autocovariance(a, 5), 1e-3)
	p := spectrum.Points{F: []float64{0.1, 0.2}, S: []float64{1, 1}}
	near(t, "points", spectrum.Autocovariance(p, 0), 0.1, 1e-15)
}

// The runs of a long chain of correlated Rayleigh heights are as long as the theory has them.
func TestRunsOfTheChain(t *testing.T) {
	n := 150_000
	if testing.Short() || raceEnabled {
		n = 20_000
	}
	rng := rand.New(rand.NewPCG(1, 2))
	for _, kappa := range []float64{0, 0.43, 0.7} {
		// The envelope is a complex Gaussian process; one step keeps a part kappa of it.
		var x, y float64
		x, y = rng.NormFloat64(), rng.NormFloat64()
		waves := make([]spectrum.Crossing, n)
		for i := range waves {
			x = kappa*x + math.Sqrt(1-kappa*kappa)*rng.NormFloat64()
			y = kappa*y + math.Sqrt(1-kappa*kappa)*rng.NormFloat64()
			waves[i].Crest = math.Hypot(x, y) / 2 // Hrms = 1/√2, Hm0 = √2 Hrms = 1
		}
		for _, level := range []float64{0.3, 0.7, 1} {
			run, total, runs := spectrum.CountRuns(waves, level)
			r := wave.RunLengths(level, kappa)
			near(t, "run", run/r.High, 1, 4/math.Sqrt(float64(runs)))
			near(t, "total", total/r.Total, 1, 4/math.Sqrt(float64(runs)))
			near(t, "next", r.High, 1/(1-r.Next), 1e-12)
		}
		near(t, "rho", spectrum.Summarise(waves).Pearson, wave.HeightCorrelation(kappa), 4/math.Sqrt(float64(n))+0.003)
	}
}

func TestJointIntegratesToOne(t *testing.T) {
	for _, nu := range []float64{0.1, 0.39, 0.6} {
		j := spectrum.Joint{Nu: nu}
		near(t, "all", j.Share(0, 0, inf), 1, 1e-14)
		near(t, "nearly all", j.Share(1e-12, 0, inf), 1, 1e-9)
		// A plain double sum over the density.
		const dh, dt = 0.01, 0.005
		sum := 0.0
		for h := 0.3 + dh/2; h < 3; h += dh {
			for p := 0.7 + dt/2; p < 1.2; p += dt {
				sum += j.Density(h, p) * dh * dt
			}
		}
		near(t, "share", j.Share(0.3, 0.7, 1.2), sum, 2e-4)
		// The marginals are the density summed over the other.
		one, two := 0.0, 0.0
		for x := dt / 2; x < 40; x += dt {
			one += j.Density(0.6, x) * dt
		}
		for x := dh / 20; x < 4; x += dh / 10 {
			two += j.Density(x, 0.9) * dh / 10
		}
		near(t, "height density", j.HeightDensity(0.6), one, 5e-3)
		near(t, "period density", j.PeriodDensity(0.9), two, 1e-6)
		near(t, "below", j.PeriodBelow(1.2)-j.PeriodBelow(0.7), j.Share(0, 0.7, 1.2), 1e-15)
		near(t, "rate", (j.PeriodBelow(0.9001)-j.PeriodBelow(0.8999))/2e-4, j.PeriodDensity(0.9), 1e-5)
		near(t, "split", j.Share(0.5, 0.3, 0.8)+j.Share(0.5, 0.8, 2), j.Share(0.5, 0.3, 2), 1e-13)
	}
	for _, v := range []float64{
		(spectrum.Joint{}).Density(1, 1), (spectrum.Joint{Nu: 0.4}).Density(-1, 1), (spectrum.Joint{Nu: 0.4}).Density(1, inf), (spectrum.Joint{Nu: math.NaN()}).PeriodBelow(1),
		(spectrum.Joint{Nu: 0.4}).Share(1, 2, 1), (spectrum.Joint{Nu: 0.4}).Share(math.NaN(), 0, 1), (spectrum.Joint{Nu: 0.4}).HeightDensity(inf), (spectrum.Joint{Nu: 0.4}).PeriodDensity(-1),
	} {
		if !math.IsNaN(v) {
			t.Errorf("%v, want NaN", v)
		}
	}
	if v := (spectrum.Joint{Nu: 0.4}).Share(1, 0, 0); v != 0 {
		t.Errorf("share of no periods: %v", v)
	}
}

func TestJointMode(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := spectrum.Joint{Nu: rapid.Float64Range(0.05, 1).Draw(t, "nu")}
		h, p := j.Mode()
		top := j.Density(h, p)
		dh, dp := rapid.Float64Range(-0.3, 0.3).Draw(t, "dh"), rapid.Float64Range(-0.3, 0.3).Draw(t, "dp")
		if d := j.Density(math.Max(h+dh, 0), math.Max(p+dp, 0)); !(d <= top*(1+1e-12)) {
			t.Errorf("%v at %v, %v is above the mode's %v", d, h+dh, p+dp, top)
		}
	})
	if h, p := (spectrum.Joint{}).Mode(); !math.IsNaN(h) || !math.IsNaN(p) {
		t.Error("a mode without a width")
	}
}

func TestBandsAddToTheWhole(t *testing.T) {
	b, err := spectrum.NewBins([]float64{0.1, 0.2, 0.3, 0.4}, []float64{1, 3, 2, 1}, nil)
	if err != nil {
		t.Fatal(err)
	}
	all := shapes()
	all["Bins"] = b
	all["Points"] = spectrum.Points{F: []float64{0.05, 0.1, 0.3, 0.5}, S: []float64{0, 2, 1, 0}}
	for name, s := range all {
		for _, f := range []float64{0, 0.07, 0.1, 0.125, 0.22, 1, inf} {
			swell, sea := spectrum.Separate(s, f)
			near(t, name, spectrum.Moment(swell, 0)+spectrum.Moment(sea, 0), spectrum.Moment(s, 0), 1e-12)
			if x := swell.Density(f); x != 0 && !math.IsInf(f, 1) {
				t.Errorf("%s: the swell reaches %v", name, f)
			}
			if p := spectrum.PeakFrequency(sea); p < f {
				t.Errorf("%s: the wind sea above %v peaks at %v", name, f, p)
			}
			if p := spectrum.PeakFrequency(swell); p > f {
				t.Errorf("%s: the swell below %v peaks at %v", name, f, p)
			}
			flux := spectrum.EnergyFlux(swell, wave.Water{}, 12) + spectrum.EnergyFlux(sea, wave.Water{}, 12)
			if name != "Points" { // its trapezoids end at the cut
				near(t, name+" flux", flux/spectrum.EnergyFlux(s, wave.Water{}, 12), 1, 1e-7)
			}
		}
	}
	near(t, "Qp of a band", spectrum.Peakedness(spectrum.Band{Spectrum: b, Low: 0, High: 0.25}, 0, inf), 2*(0.1*1*0.1+0.2*9*0.1)/(0.4*0.4), 1e-12)
	swell, sea := spectrum.Separate(b, math.NaN())
	if !math.IsNaN(spectrum.Moment(swell, 0)) || !math.IsNaN(spectrum.Moment(sea, 0)) || !math.IsNaN(sea.Density(0.2)) || !math.IsNaN(sea.PeakFrequency()) {
		t.Error("cut at no frequency")
	}
}

func TestSteepestFrequency(t *testing.T) {
	// A low swell under a wind sea: the two are cut between their peaks.
	s := spectrum.Sum{spectrum.JONSWAP{Hs: 1, Tp: 4, Gamma: 3.3}, spectrum.JONSWAP{Hs: 1.5, Tp: 12, Gamma: 5}}
	var f, d []float64
	for x := 0.03; x < 0.6; x += 0.005 {
		f, d = append(f, x), append(d, s.Density(x))
	}
	b, err := spectrum.NewBins(f, d, nil)
	if err != nil {
		t.Fatal(err)
	}
	cut := spectrum.SeparationBySteepness(b)
	if !(cut > 1.0/12 && cut < 1.0/4) {
		t.Errorf("cut at %v Hz", cut)
	}
	swell, sea := spectrum.Separate(b, cut)
	near(t, "swell", spectrum.Describe(swell).Hm0, 1.5, 0.1)
	near(t, "wind sea", spectrum.Describe(sea).Hm0, 1, 0.1)
	near(t, "strong wind", spectrum.SeparationFrequency(b, 30), cut, 0)
	if f := spectrum.SeparationFrequency(b, 0); f != inf {
		t.Errorf("in a calm the cut is at %v", f)
	}
	near(t, "least", spectrum.SeparationFrequency(b, 4), 1.125/4, 1e-15)
	near(t, "steepness", spectrum.SteepnessSpectrum(b, 0, inf, 0), spectrum.SpectralSteepness(spectrum.Describe(b).Hm0, spectrum.Describe(b).Tz, 0), 1e-12)
	for _, v := range []float64{spectrum.SeparationFrequency(b, -1), spectrum.SeparationFrequency(b, math.NaN()), spectrum.SeparationFrequency(spectrum.Bins{}, 3), spectrum.SeparationFrequency(spectrum.Bins{}, 0), spectrum.SeparationBySteepness(spectrum.Bins{}),
		spectrum.SeparationByWaveAge(-1, 0, 1.2), spectrum.SeparationByWaveAge(5, math.NaN(), 1.2), spectrum.SeparationByWaveAge(5, 0, 0), spectrum.SteepnessSpectrum(b, 1, 0.5, 0), spectrum.SteepnessSpectrum(b, 3, 4, -1)} {
		if !math.IsNaN(v) {
			t.Errorf("%v, want NaN", v)
		}
	}
}

func TestRisenRatio(t *testing.T) {
	// 1 for the risen sea itself, gamma for a sea enhanced by gamma on the same tail.
	s := spectrum.PiersonMoskowitz{Wind19: 10}
	f := spectrum.PeakFrequency(s)
	near(t, "risen", spectrum.RisenRatio(s.Density(f), f), 1, 1e-12)
	j := spectrum.JONSWAPAlpha{Alpha: 0.0081, Fp: 0.2, Gamma: 3.3}
	near(t, "young", spectrum.RisenRatio(j.Density(0.2), 0.2), 3.3, 1e-12)
	if v := spectrum.RisenRatio(-1, 0.1); !math.IsNaN(v) {
		t.Error(v)
	}
}

func TestDriftAddsUpToItsTransport(t *testing.T) {
	s := spectrum.JONSWAP{Hs: 1, Tp: 5, Gamma: 3.3}
	drift := func(z float64) float64 { return spectrum.StokesDrift(s, wave.Water{}, inf, z, 2) }
	// Over the depth on a grid that is fine at the surface: z = -u³.
	sum, n := 0.0, 400
	for i := range n {
		u := (float64(i) + 0.5) / float64(n) * 4
		sum += drift(-u*u*u) * 3 * u * u * 4 / float64(n)
	}
	near(t, "transport", sum/spectrum.StokesTransport(s, 2), 1, 1e-4)
	// Deep water is the limit of great depth, and the surface that of small z.
	near(t, "deep", spectrum.StokesDrift(s, wave.Water{}, 5000, 0, inf), spectrum.StokesDrift(s, wave.Water{}, inf, 0, inf), 1e-9)
	near(t, "surface", drift(-1e-9), drift(0), 1e-6)
	last := inf
	for _, z := range []float64{0, 0.1, 0.5, 1, 3, 8} {
		v := spectrum.StokesDrift(s, wave.Water{}, 8, -z, inf)
		if !(v < last && v > 0) {
			t.Errorf("%v m down the drift is %v after %v", z, v, last)
		}
		last = v
	}
	// Cutting the tail takes a good part away.
	if whole, cut := drift(0), spectrum.StokesDrift(s, wave.Water{}, inf, 0, 0.5); !(cut < 0.85*whole) {
		t.Errorf("whole %v, to 0.5 Hz %v", whole, cut)
	}
	sum2 := spectrum.StokesDrift(spectrum.Sum{s, s}, wave.Water{}, 10, -1, 1)
	near(t, "sum", sum2, 2*spectrum.StokesDrift(s, wave.Water{}, 10, -1, 1), 1e-12)
	p := spectrum.Points{F: []float64{0.1, 0.2, 0.3}, S: []float64{0, 1, 0}}
	near(t, "points", spectrum.StokesDrift(p, wave.Water{}, inf, 0, inf), 16*math.Pow(math.Pi, 3)/wave.StandardGravity*spectrum.Moment(p, 3), 1e-12)
	for _, v := range []float64{
		spectrum.StokesDrift(s, wave.Water{}, 0, 0, inf), spectrum.StokesDrift(s, wave.Water{}, 5, -6, inf), spectrum.StokesDrift(s, wave.Water{}, inf, 1, inf), spectrum.StokesDrift(s, wave.Water{}, inf, 0, math.NaN()),
		spectrum.StokesDrift(s, wave.Water{Gravity: -1}, inf, 0, inf), spectrum.EnergyFlux(s, wave.Water{}, math.NaN()), spectrum.EnergyFlux(s, wave.Water{Density: -1}, 5), spectrum.StokesTransport(s, -1),
	} {
		if !math.IsNaN(v) {
			t.Errorf("%v, want NaN", v)
		}
	}
}

func TestEnergyFluxIsTheMomentsInDeepWater(t *testing.T) {
	s := spectrum.JONSWAP{Hs: 2, Tp: 7, Gamma: 2}
	p := spectrum.Describe(s)
	w := wave.Water{Gravity: 9.81, Density: 1025}
	want := 1025 * 9.81 * 9.81 / (64 * math.Pi) * p.Hm0 * p.Hm0 * p.Te
	near(t, "deep", spectrum.EnergyFlux(s, w, inf)/want, 1, 1e-13)
	near(t, "very deep", spectrum.EnergyFlux(s, w, 3000)/want, 1, 1e-9)
	// At a middle depth the group is faster than in deep water, by up to a fifth for one period and a tenth for a sea.
	if r := spectrum.EnergyFlux(s, w, 10) / want; !(r > 1.03 && r < 1.2) {
		t.Errorf("over 10 m the flux is %v of deep water's", r)
	}
	near(t, "parts", spectrum.EnergyFlux(spectrum.Sum{s, s}, w, 10), 2*spectrum.EnergyFlux(s, w, 10), 1e-9)
}
