package spectrum_test

import (
	"math"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
)

// rel checks a value to a part of what is wanted.
func rel(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol*math.Abs(want)) {
		t.Errorf("%s = %.15g, want %.15g within a part of %g", what, got, want, tol)
	}
}

// integral is the midpoint rule in the logarithm, plain.
func integral(lo, hi float64, n int, of func(f float64) float64) float64 {
	step := math.Log(hi/lo) / float64(n)
	sum := 0.0
	for i := range n {
		f := lo * math.Exp((float64(i)+0.5)*step)
		sum += of(f) * f * step
	}
	return sum
}

// The drift is the sum of the drifts of single waves as the doc comment prints it, at any depth and with any limit, in deep
// water as in shallow, and for measured bands and points their own sum.
func TestDriftIsThePrintedSum(t *testing.T) {
	const g = wave.StandardGravity
	of := func(f, d, depth, z float64) float64 {
		k, omega := wave.Wavenumber(1/f, depth), 2*math.Pi*f
		if math.IsInf(depth, 1) {
			return 2 * omega * k * d * math.Exp(2*k*z)
		}
		return omega * k * d * math.Cosh(2*k*(depth+z)) / math.Pow(math.Sinh(k*depth), 2)
	}
	long, short := spectrum.JONSWAP{Hs: 1, Tp: 7, Gamma: 3.3}, spectrum.JONSWAP{Hs: 0.1, Tp: 1, Gamma: 2}
	for _, c := range []struct {
		s                 spectrum.JONSWAP
		depth, z, highest float64
	}{
		{long, 8, 0, 2}, {long, 8, -1, 2}, {long, 8, -8, 2}, {long, 3, -0.5, 0.5}, {long, inf, 0, 2}, {long, inf, -2, 2}, {long, 8, -1, inf},
		{short, 0.3, 0, 4}, {short, 0.3, -0.1, 4}, {short, 0.3, -0.3, 4}, {short, inf, -0.2, 4},
	} {
		top := c.highest
		if c.highest == inf {
			top = 3 // nothing of a shorter wave is felt 1 m down
		}
		want := integral(0.3/c.s.Tp, top, 4000, func(f float64) float64 { return of(f, c.s.Density(f), c.depth, c.z) })
		rel(t, "drift", spectrum.StokesDrift(c.s, wave.Water{}, c.depth, c.z, c.highest), want, 1e-6)
	}
	// The tail of the short waves is that of deep water: 16π³/g m₃ of it.
	for _, c := range []struct {
		s           spectrum.JONSWAP
		depth, from float64
	}{{long, 8, 2}, {short, 0.3, 5}} {
		tail := spectrum.StokesDrift(c.s, wave.Water{}, c.depth, 0, inf) - spectrum.StokesDrift(c.s, wave.Water{}, c.depth, 0, c.from)
		rel(t, "tail", tail, 16*math.Pow(math.Pi, 3)/g*spectrum.MomentWithin(c.s, 3, c.from, inf), 1e-9)
	}
	b := spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{2, 3}, W: []float64{0.1, 0.1}}
	rel(t, "bands", spectrum.StokesDrift(b, wave.Water{}, 6, -2, inf), 0.1*(of(0.1, 2, 6, -2)+of(0.2, 3, 6, -2)), 1e-12)
	p := spectrum.Points{F: []float64{0, 0.1, 0.3}, S: []float64{1, 2, 1}} // at 0 Hz nothing drifts
	rel(t, "points", spectrum.StokesDrift(p, wave.Water{}, 6, -2, inf), 0.1*of(0.1, 2, 6, -2)/2+0.2*(of(0.1, 2, 6, -2)+of(0.3, 1, 6, -2))/2, 1e-12)
	half := spectrum.Band{Spectrum: b, Low: 0.15, High: 1}
	rel(t, "part of the bands", spectrum.StokesDrift(half, wave.Water{}, 6, -2, inf), 0.1*of(0.2, 3, 6, -2), 1e-12)
	rel(t, "transport", spectrum.StokesTransport(b, inf), 2*math.Pi*0.1*(0.1*2+0.2*3), 1e-12)
}

// The flux of energy is ρ g ∫ cg S df over any depth, with the group speed c/2 (1 + 2kh/sinh 2kh).
func TestFluxIsThePrintedSum(t *testing.T) {
	w := wave.Water{Density: 1000, Gravity: 9.81}
	cg := func(f, depth float64) float64 {
		k := w.Wavenumber(1/f, depth)
		return 2 * math.Pi * f / k / 2 * (1 + 2*k*depth/math.Sinh(2*k*depth))
	}
	long, short := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}, spectrum.JONSWAP{Hs: 0.1, Tp: 1, Gamma: 2}
	for _, c := range []struct {
		s         spectrum.JONSWAP
		depth, to float64
	}{{long, 2, 3}, {long, 10, 2}, {short, 0.3, 5}} {
		want := integral(0.3/c.s.Tp, c.to, 4000, func(f float64) float64 { return cg(f, c.depth) * c.s.Density(f) })
		want += 9.81 / (4 * math.Pi) * spectrum.MomentWithin(c.s, -1, c.to, inf)
		rel(t, "flux", spectrum.EnergyFlux(c.s, w, c.depth), 1000*9.81*want, 1e-6)
	}
	b := spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{2, 3}, W: []float64{0.1, 0.1}}
	rel(t, "bands", spectrum.EnergyFlux(b, w, 6), 1000*9.81*0.1*(2*cg(0.1, 6)+3*cg(0.2, 6)), 1e-12)
	p := spectrum.Points{F: []float64{0, 0.1}, S: []float64{1, 2}} // the longest waves go with √(gh)
	rel(t, "points", spectrum.EnergyFlux(p, w, 6), 1000*9.81*(math.Sqrt(9.81*6)+2*cg(0.1, 6))/2*0.1, 1e-12)
	rel(t, "sea water", spectrum.EnergyFlux(b, wave.Water{Gravity: 9.81}, 6)/spectrum.EnergyFlux(b, w, 6), wave.SeaDensity/1000, 1e-12)
	rel(t, "deep", spectrum.EnergyFlux(b, w, inf), 1000*9.81*9.81/(4*math.Pi)*0.1*(2/0.1+3/0.2), 1e-12)
}

// The covariance and the envelope are the two Fourier integrals of the spectrum, each kind of it by its own rule and a sum
// of all kinds by the sum of both integrals.
func TestCovarianceIsTheFourierIntegral(t *testing.T) {
	j := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 10}
	b := spectrum.Bins{F: []float64{0.1, 0.25}, S: []float64{2, 1}, W: []float64{0.1, 0.2}}
	p := spectrum.Points{F: []float64{0.1, 0.2, 0.4}, S: []float64{1, 3, 2}}
	all := spectrum.Sum{spectrum.Sum{j}, b, p}
	for _, tau := range []float64{0.7, 3, 9} {
		shape := func(of func(float64) float64) float64 {
			return integral(0.03, 20, 8000, func(f float64) float64 { return j.Density(f) * of(2*math.Pi*f*tau) })
		}
		// Over a band of even density: ∫ cos 2πfτ df = (sin 2πfτ)/2πτ at its ends, and the sine likewise.
		bands := func(of func(float64) float64) float64 {
			sum := 0.0
			for i, f := range b.F {
				lo, hi := f-b.W[i]/2, f+b.W[i]/2
				sum += b.S[i] * (of(2*math.Pi*hi*tau) - of(2*math.Pi*lo*tau)) / (2 * math.Pi * tau)
			}
			return sum
		}
		points := func(of func(float64) float64) float64 {
			v := func(i int) float64 { return p.S[i] * of(2*math.Pi*p.F[i]*tau) }
			return (v(0)+v(1))/2*0.1 + (v(1)+v(2))/2*0.2
		}
		minusCos := func(x float64) float64 { return -math.Cos(x) }
		near(t, "shape", spectrum.Autocovariance(j, tau), shape(math.Cos), 1e-7)
		near(t, "bands", spectrum.Autocovariance(b, tau), bands(math.Sin), 1e-14)
		near(t, "points", spectrum.Autocovariance(p, tau), points(math.Cos), 1e-14)
		near(t, "of the shape", spectrum.EnvelopeCorrelation(j, tau), math.Hypot(shape(math.Cos), shape(math.Sin))/0.25, 1e-6)
		near(t, "of the bands", spectrum.EnvelopeCorrelation(b, tau), math.Hypot(bands(math.Sin), bands(minusCos))/0.4, 1e-14)
		near(t, "of the points", spectrum.EnvelopeCorrelation(p, tau), math.Hypot(points(math.Cos), points(math.Sin))/(0.2+0.5), 1e-14)
		c, n := shape(math.Cos)+bands(math.Sin)+points(math.Cos), shape(math.Sin)+bands(minusCos)+points(math.Sin)
		near(t, "of the sum", spectrum.EnvelopeCorrelation(all, tau), math.Hypot(c, n)/(0.25+0.4+0.7), 1e-6)
		// From 0.15 to 0.2 Hz the points make one trapezoid, from 0.15 to 0.3 Hz the second band has its middle to itself.
		part := spectrum.Band{Spectrum: p, Low: 0.15, High: 0.2}
		near(t, "part of the points", spectrum.Autocovariance(part, tau), (2*math.Cos(2*math.Pi*0.15*tau)+3*math.Cos(2*math.Pi*0.2*tau))/2*0.05, 1e-14)
	}
}

// The covariance after a dozen periods is the plain sum still, on a grid that is fine enough.
func TestCovarianceOfALongLag(t *testing.T) {
	j := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 10}
	const tau = 100
	want := integral(0.03, 2, 20000, func(f float64) float64 { return j.Density(f) * math.Cos(2*math.Pi*f*tau) })
	near(t, "long lag", spectrum.Autocovariance(j, tau), want, 1e-7)
}

// counted is a density that stops the test when it has been asked too often.
type counted struct {
	t    *testing.T
	left *int
	of   func(f float64) float64
}

func (c counted) Density(f float64) float64 {
	if *c.left--; *c.left < 0 {
		c.t.Fatal("no end of the densities that are asked for")
	}
	return c.of(f)
}

func (counted) PeakFrequency() float64 { return 0.125 }

// Work has an end where nothing converges: in the moment of a density that is rough at every scale, and in the covariance after
// a lag of years, of which nothing is left.
func TestWorkIsBounded(t *testing.T) {
	left := 300_000
	rough := func(f float64) float64 { return 1 + math.Mod(f*1e13, 1) }
	m := spectrum.MomentWithin(counted{t, &left, rough}, 0, 1, 1.01)
	near(t, "mean of the rough", m/0.01, 1.5, 0.1)
	left = 2_000_000
	swell := func(f float64) float64 { // one band, whose covariance is 1/πτ at most
		if f > 0.1 && f < 0.2 {
			return 1
		}
		return 0
	}
	near(t, "after years", spectrum.Autocovariance(counted{t, &left, swell}, 1e9), 0, 1e-9)
}

// The correlation of neighbouring waves depends on the shape alone, for ripples as for swell.
func TestChainCorrelationOfRipples(t *testing.T) {
	for _, tp := range []float64{0.005, 0.05, 0.5, 20, 500} {
		got, want := spectrum.ChainCorrelation(spectrum.JONSWAP{Hs: 0.1, Tp: tp, Gamma: 3.3}), spectrum.ChainCorrelation(spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3})
		rel(t, "kappa", got, want, 1e-9)
	}
}

// Steepness, separation and ratio to a risen sea are the formulas of their doc comments.
func TestPartitionFormulas(t *testing.T) {
	const g = wave.StandardGravity
	b := spectrum.Bins{F: []float64{0.1, 0.2, 0.3, 0.4}, S: []float64{4, 2, 1, 0.2}, W: []float64{0.1, 0.1, 0.1, 0.1}}
	// ξ from the i-th band up: 8π m₂/(g √m₀).
	xi := func(b spectrum.Bins, i int) float64 {
		m0, m2 := 0.0, 0.0
		for ; i < len(b.F); i++ {
			m0, m2 = m0+b.S[i]*b.W[i], m2+b.F[i]*b.F[i]*b.S[i]*b.W[i]
		}
		return 8 * math.Pi * m2 / (g * math.Sqrt(m0))
	}
	rel(t, "steepness", spectrum.SteepnessSpectrum(b, 0.15, inf, 0), xi(b, 1), 1e-12)
	rel(t, "on the moon", spectrum.SteepnessSpectrum(b, 0.15, inf, g/6), 6*xi(b, 1), 1e-12)
	for _, s := range [][]float64{{4, 2, 1, 0.2}, {4, 0.1, 1, 0.2}, {4, 0.1, 0.3, 2}, {40, 0.1, 0.01, 0.001}, {1, 1, 1, 1}, {0, 0, 5, 0.1}} {
		v := spectrum.Bins{F: b.F, S: s, W: b.W}
		at := 0
		for i := range s {
			if xi(v, i) > xi(v, at)*(1+1e-12) {
				at = i
			}
		}
		got := spectrum.SeparationBySteepness(v)
		if s[0] == 0 { // from the first two bands up all is the same
			if !within(got, 0.75*0.1, 1e-12) && !within(got, 0.75*0.2, 1e-12) && !within(got, 0.75*0.3, 1e-12) {
				t.Errorf("%v: %v", s, got)
			}
			continue
		}
		near(t, "cut", got, 0.75*b.F[at], 1e-15)
	}
	rel(t, "wave age", spectrum.SeparationByWaveAge(10, 60, 1.3), g/(2*math.Pi*1.3*10*0.5), 1e-12)
	rel(t, "wave age, astern", spectrum.SeparationByWaveAge(10, 0, 1), g/(2*math.Pi*10), 1e-12)
	for _, offset := range []float64{90, -90, 180} {
		if f := spectrum.SeparationByWaveAge(10, offset, 1.2); f != inf {
			t.Errorf("wind %v° off: %v", offset, f)
		}
	}
	for _, offset := range []float64{0, 90, 180, -120} {
		if f := spectrum.SeparationByWaveAge(0, offset, 1.2); f != inf {
			t.Errorf("no wind, %v° off: %v", offset, f)
		}
	}
	// The frequency goes with the inverse of the wind from the faintest air up, and across no wind is strong enough.
	for _, wind := range []float64{1e-9, 1e-3, 1, 1e4} {
		rel(t, "wave age", spectrum.SeparationByWaveAge(wind, 30, 1.2), g/(2*math.Pi*1.2*wind*math.Sqrt(3)/2), 1e-12)
		if f := spectrum.SeparationByWaveAge(wind, 90, 1.2); f != inf {
			t.Errorf("%v m/s across: %v", wind, f)
		}
	}
	rel(t, "risen", spectrum.RisenRatio(3, 0.2), 3/(0.0081*g*g*math.Pow(2*math.Pi, -4)*math.Pow(0.2, -5)*math.Exp(-1.25)), 1e-12)
}

// The numbers of a sea are the formulas of their doc comments, for moments of which none is 1.
func TestParameterFormulas(t *testing.T) {
	const m0, m1, m2, m4 = 4.0, 2.5, 3.0, 9.0
	b := spectrum.Bins{F: []float64{0.1, 0.2}, S: []float64{2, 3}, W: []float64{0.1, 0.3}}
	m := 2*0.1 + 3*0.3
	te, tm01, tz := spectrum.PeriodRatios(1)
	q := 4.2 / math.Sqrt(1.1)
	for _, c := range []struct {
		name      string
		got, want float64
		tol       float64
	}{
		{"height", spectrum.Height(m0), 8, 0},
		{"mean period", spectrum.MeanPeriod(m0, m1), 1.6, 1e-15},
		{"zero-crossing period", spectrum.ZeroCrossingPeriod(m0, m2), math.Sqrt(4.0 / 3), 1e-15},
		{"energy period", spectrum.EnergyPeriod(m0, m1), 1.6, 1e-15},
		{"crest period", spectrum.CrestPeriod(m2, m4), math.Sqrt(1.0 / 3), 1e-15},
		{"nu", spectrum.Narrowness(m0, m1, m2), math.Sqrt(12/6.25 - 1), 1e-14},
		{"irregularity", spectrum.Irregularity(m0, m2, m4), 0.5, 1e-15},
		{"broadness", spectrum.Broadness(m0, m2, m4), math.Sqrt(0.75), 1e-15},
		{"energy narrowness", spectrum.EnergyNarrowness(m0, m1, m2), math.Sqrt(12/6.25 - 1), 1e-14},
		{"Qp", spectrum.Peakedness(b, 0, inf), 2 / (m * m) * (0.1*4*0.1 + 0.2*9*0.3), 1e-14},
		{"steepness", spectrum.SpectralSteepness(3, 7, 9.81), 2 * math.Pi * 3 / (9.81 * 49), 1e-14},
		// Of a risen sea mₙ = Hs²/16 fpⁿ (5/4)^(n/4) Γ(1 - n/4).
		{"Te of a risen sea", te, math.Pow(1.25, -0.25) * math.Gamma(1.25), 1e-13},
		{"Tm01 of a risen sea", tm01, math.Pow(1.25, -0.25) / math.Gamma(0.75), 1e-13},
		{"Tz of a risen sea", tz, 1 / math.Sqrt(math.Sqrt(1.25)*math.Gamma(0.5)), 1e-13},
		{"Tz fit", spectrum.TzOverTpFit(2), 0.6673 + 0.05037*2 - 0.006230*4 + 0.0003341*8, 1e-15},
		{"Tm01 fit", spectrum.Tm01OverTpFit(2), 0.7303 + 0.04936*2 - 0.006556*4 + 0.0003610*8, 1e-15},
		{"Te fit", spectrum.TeOverTpFit(2), 0.8255 + 0.03852*2 - 0.005537*4 + 0.0003154*8, 1e-15},
		{"gamma of a standard", spectrum.GammaFromSteepness(4, 8.4), math.Exp(5.75 - 1.15*4.2), 1e-14},
		{"gamma of the North Sea", spectrum.GammaNorthSea(1.1, 4.2), math.Exp(3.484 * (1 - 0.1975*(0.036-0.0056*q)*math.Pow(q, 4))), 1e-13},
		{"gamma of the North Sea, at most", spectrum.GammaNorthSea(9, 6), 7, 0},
		{"factor fit", spectrum.JONSWAPFactorFit(2), 1 - 0.287*math.Ln2, 1e-15},
		{"peak of T⅓", spectrum.PeakFromT13(7, 3), 7 / (1 - 0.132*math.Pow(3.2, -0.559)), 1e-14},
		{"Phillips", spectrum.Bretschneider{Hs: 3, Tp: 7}.Alpha(9.81), 5 * math.Pow(math.Pi, 4) * 9 / (9.81 * 9.81 * math.Pow(7, 4)), 1e-14},
	} {
		rel(t, c.name, c.got, c.want, c.tol)
	}
	// The peak of a part is at its nearer end where the whole has it outside.
	s := spectrum.Bretschneider{Hs: 2, Tp: 8}
	near(t, "below", spectrum.DescribeWithin(s, 0.01, 0.1).Tp, 10, 1e-12)
	near(t, "in it", spectrum.DescribeWithin(s, 0.1, 0.2).Tp, 8, 1e-12)
	near(t, "above", spectrum.DescribeWithin(s, 0.2, 0.5).Tp, 5, 1e-12)
}

// Spreadings are the printed functions with the gamma function itself, and their widths those of r₁.
func TestSpreadingFormulas(t *testing.T) {
	for _, s := range []float64{0, 0.5, 3, 10, 40} {
		norm := math.Pow(2, 2*s-1) / math.Pi * math.Pow(math.Gamma(s+1), 2) / math.Gamma(2*s+1)
		rel(t, "norm", spectrum.Cos2sNorm(s), norm, 1e-13)
		rel(t, "cos2s", spectrum.Cos2s{S: s}.Spread(0.1, 50), norm*math.Pow(math.Cos(25*math.Pi/180), 2*s), 1e-13)
		rel(t, "width", spectrum.Cos2sWidth(s), 180/math.Pi*math.Sqrt(2/(s+1)), 1e-14)
		rel(t, "s", spectrum.Cos2sFromWidth(spectrum.Cos2sWidth(s)+1e-30), s, 1e-13)
		n := s
		rel(t, "cosn", spectrum.CosN{N: n}.Spread(0.1, 50), math.Gamma(n/2+1)/(math.Sqrt(math.Pi)*math.Gamma(n/2+0.5))*math.Pow(math.Cos(50*math.Pi/180), n), 1e-13)
		r1 := math.Pow(math.Gamma(n/2+1), 2) / (math.Gamma(n/2+0.5) * math.Gamma(n/2+1.5))
		rel(t, "width of cosn", spectrum.CosNWidth(n), 180/math.Pi*math.Sqrt(2*(1-r1)), 1e-12)
	}
	// Beyond the limits of the gamma function the series takes over: both sides of it agree, and go like √s/2√π.
	for _, s := range []float64{1e4, 1.1e4, 3e4} {
		a, _ := math.Lgamma(s + 1)
		b, _ := math.Lgamma(s + 0.5)
		rel(t, "large s", spectrum.Cos2sNorm(s), math.Exp(a-b)/(2*math.Sqrt(math.Pi)), 1e-10)
	}
	for _, n := range []float64{100, 101, 130, 160} { // Γ(171) is the last
		r1 := math.Pow(math.Gamma(n/2+1), 2) / (math.Gamma(n/2+0.5) * math.Gamma(n/2+1.5))
		rel(t, "large n", spectrum.CosNWidth(n), 180/math.Pi*math.Sqrt(2*(1-r1)), 1e-10)
	}
	r1, r2 := spectrum.Cos2sFourier(3)
	rel(t, "r1", r1, 3.0/4, 1e-15)
	rel(t, "r2", r2, 3*2.0/(4*5), 1e-15)
	rel(t, "circular width", spectrum.CircularWidth(0.75), 180/math.Pi*math.Sqrt(0.5), 1e-15)
	g := spectrum.GodaSpread{SMax: 20, Fp: 0.2}
	rel(t, "s below the peak", g.S(0.1), 20*math.Pow(0.5, 5), 1e-14)
	rel(t, "s at the peak", g.S(0.2), 20, 1e-14)
	rel(t, "s above the peak", g.S(0.3), 20*math.Pow(1.5, -2.5), 1e-14)
	rel(t, "spread", g.Spread(0.3, 70), spectrum.Cos2s{S: g.S(0.3)}.Spread(0.3, 70), 1e-14)
	rel(t, "s of the wind", spectrum.SMaxFromWind(8, 0.3), 11.5*math.Pow(2*math.Pi*0.3*8/wave.StandardGravity, -2.5), 1e-14)
}

// The joint density, its two marginals and its mode are the printed formulas.
func TestJointFormulas(t *testing.T) {
	const nu, h, tau = 0.3, 0.8, 0.9
	j := spectrum.Joint{Nu: nu}
	l := 2 / (1 + 1/math.Sqrt(1+nu*nu))
	r, x := h*math.Sqrt2, (1-1/tau)/nu
	rel(t, "density", j.Density(h, tau), math.Sqrt2*2*l/(math.Sqrt(math.Pi)*nu)*math.Pow(r/tau, 2)*math.Exp(-r*r*(1+x*x)), 1e-13)
	rel(t, "periods", j.PeriodDensity(tau), l/(2*nu*tau*tau)*math.Pow(1+x*x, -1.5), 1e-13)
	rel(t, "shorter", j.PeriodBelow(tau), l/2*(1+x/math.Sqrt(1+x*x)), 1e-13)
	rel(t, "heights", j.HeightDensity(h), math.Sqrt2*2*r*math.Exp(-r*r)*l*0.5*(1+math.Erf(r/nu)), 1e-13)
	mh, mt := j.Mode()
	rel(t, "mode", mh, 1/math.Sqrt(2*(1+nu*nu)), 1e-14)
	rel(t, "mode's period", mt, 1/(1+nu*nu), 1e-14)
	// Waves five times as high as Hm0 all have a period near the mean: what is left is Rayleigh's exp(-2 H²/Hm0²), times L.
	rel(t, "a giant", j.Share(5, 0, inf), l*math.Exp(-50), 1e-12)
	rel(t, "the rest of it", j.Share(5, 0.9, 1.1)+j.Share(5, 1.1, inf)+j.Share(5, 0, 0.9), l*math.Exp(-50), 1e-12)
	// The share of long high waves, of which there are few, is right in all its digits: a plain double sum.
	narrow := spectrum.Joint{Nu: 0.1}
	sum := integral(1.5, 2.2, 500, func(h float64) float64 {
		return integral(1.5, 2, 500, func(p float64) float64 { return narrow.Density(h, p) })
	})
	rel(t, "long and high", narrow.Share(1.5, 1.5, 2), sum, 1e-3)
	// So is the share of a narrow range of periods above the mean, with many waves longer still.
	j = spectrum.Joint{Nu: 0.4}
	sum = integral(0.3, 4, 600, func(h float64) float64 {
		return integral(1.1, 1.2, 100, func(p float64) float64 { return j.Density(h, p) })
	})
	rel(t, "a little longer", j.Share(0.3, 1.1, 1.2), sum, 1e-4)
}
