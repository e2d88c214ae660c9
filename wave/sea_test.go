package wave_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"sort"
	"testing"

	"followingsea.example/wave"
	"pgregory.net/rapid"
)

func ExampleHeightLaw_ExceededByOneIn() {
	for _, n := range []float64{10, 100, 1000} {
		fmt.Printf("one in %v exceeds %.1f m\n", n, wave.Rayleigh.ExceededByOneIn(n, 10))
	}
	// Output:
	// one in 10 exceeds 10.7 m
	// one in 100 exceeds 15.2 m
	// one in 1000 exceeds 18.6 m
}

func ExampleOriginOfArrivals() {
	// Swell of 12 s, and two days later of 6 s.
	w := wave.Water{Gravity: 9.81}
	o := w.OriginOfArrivals(12, 6, 48*3600)
	fmt.Printf("%.0f km, %.0f h before the first\n", o.Distance/1000, o.Age/3600)
	// Output: 1619 km, 48 h before the first
}

func ExampleWave_Encounter() {
	w := wave.Solve(5, math.Inf(1))
	for _, knots := range []float64{0, 6, 12, 18} {
		m := w.Encounter(knots*wave.Knot, 0)
		fmt.Printf("%5.2f kn: a crest every %.0f s, the wave gains %+.1f m/s\n", knots, m.Period, m.Closing)
	}
	// Output:
	//  0.00 kn: a crest every 5 s, the wave gains +7.8 m/s
	//  6.00 kn: a crest every 8 s, the wave gains +4.7 m/s
	// 12.00 kn: a crest every 24 s, the wave gains +1.6 m/s
	// 18.00 kn: a crest every -27 s, the wave gains -1.5 m/s
}

func ExampleSets() {
	// Two swells of nearly one period.
	b := wave.Sets(1.2, 14, 0.8, 13, math.Inf(1))
	fmt.Printf("a set every %.0f s and %.1f waves, from %.1f to %.1f m\n", b.Period, b.Waves, b.Lowest, b.Highest)
	// Output: a set every 182 s and 13.5 waves, from 0.4 to 2.0 m
}

// draws returns heights in units of Hs drawn from a law, sorted, highest first.
func draws(l wave.HeightLaw, n int) []float64 {
	rng := rand.New(rand.NewPCG(1, 5))
	h := make([]float64, n)
	for i := range h {
		h[i] = l.Scale * math.Pow(-math.Log(1-rng.Float64()), 1/l.Shape)
	}
	sort.Sort(sort.Reverse(sort.Float64Slice(h)))
	return h
}

func TestHeightLawsAgainstDraws(t *testing.T) {
	const n = 200_000
	for _, l := range []wave.HeightLaw{wave.Rayleigh, wave.Forristall} {
		h := draws(l, n)
		for _, one := range []float64{1, 2, 3, 10, 100} {
			sum := 0.0
			m := int(n / one)
			for _, v := range h[:m] {
				sum += v
			}
			rel(t, fmt.Sprintf("mean of the highest one in %v", one), l.MeanOfHighest(one, 1), sum/float64(m), 0.01)
			if one > 1 {
				rel(t, fmt.Sprintf("exceeded by one in %v", one), l.ExceededByOneIn(one, 1), h[m], 0.01)
			}
		}
		sum := 0.0
		for _, v := range h {
			sum += v * v
		}
		rel(t, "root mean square", l.RootMeanSquare(1), math.Sqrt(sum/n), 0.005)
	}
}

func TestLargestAgainstDraws(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 6))
	for _, l := range []wave.HeightLaw{wave.Rayleigh, wave.Forristall} {
		const n, seas = 50, 4000
		largest := make([]float64, seas)
		mean := 0.0
		for i := range largest {
			for range n {
				largest[i] = math.Max(largest[i], l.Scale*math.Pow(-math.Log(1-rng.Float64()), 1/l.Shape))
			}
			mean += largest[i] / seas
		}
		sort.Float64s(largest)
		rel(t, "mean of the largest", l.LargestMean(n, 1), mean, 0.01)
		for _, p := range []float64{0.1, 0.5, 0.9} {
			rel(t, fmt.Sprintf("quantile %v", p), l.LargestQuantile(p, n, 1), largest[int(p*seas)], 0.02)
		}
	}
}

// The general form with shape 2 is the closed form of Rayleigh.
func TestRayleighIsTheGeneralForm(t *testing.T) {
	almost := wave.HeightLaw{Scale: wave.Rayleigh.Scale, Shape: 2 * (1 + 1e-15)}
	for _, n := range []float64{1, 3, 10, 1000} {
		rel(t, "mean of highest", almost.MeanOfHighest(n, 1), wave.Rayleigh.MeanOfHighest(n, 1), 1e-12)
		rel(t, "exceeded", almost.ExceededByOneIn(n, 1), wave.Rayleigh.ExceededByOneIn(n, 1), 1e-12)
		near(t, "exceedance", almost.Exceedance(0.7, 1), wave.Rayleigh.Exceedance(0.7, 1), 1e-14)
	}
	// One wave is its own largest; the mean of all is Γ(1 + 1/shape).
	rel(t, "one wave", wave.Rayleigh.LargestMean(1, 1), wave.Rayleigh.MeanOfHighest(1, 1), 1e-9)
	rel(t, "one wave, Forristall", wave.Forristall.LargestMean(1, 1), wave.Forristall.MeanOfHighest(1, 1), 1e-9)
	rel(t, "two waves", wave.Rayleigh.LargestMean(2, 1), math.Sqrt(math.Pi)/2/math.Sqrt2*(2-1/math.Sqrt2), 1e-9)
	// Many: the asymptotic form.
	for _, n := range []float64{1e4, 1e6, 1e9} {
		s := math.Sqrt(math.Log(n))
		rel(t, "many waves", wave.Rayleigh.LargestMean(n, 1), (s+0.5772156649/(2*s))/math.Sqrt2, 0.004)
	}
}

func TestPropertyHeights(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.SampledFrom([]wave.HeightLaw{wave.Rayleigh, wave.Forristall}).Draw(t, "law")
		hs := rapid.Float64Range(0.1, 15).Draw(t, "Hs")
		n := math.Exp(rapid.Float64Range(0.1, 12).Draw(t, "ln n"))
		h := l.ExceededByOneIn(n, hs)
		rel(t, "exceedance and its inverse", l.Exceedance(h, hs), 1/n, 1e-10)
		if !(l.MeanOfHighest(n, hs) > h) {
			t.Error("the mean of the highest is below the least of them")
		}
		near(t, "mode", l.LargestMode(n, hs), h, 0)
		rel(t, "scales with Hs", l.LargestMean(n, 2*hs), 2*l.LargestMean(n, hs), 1e-14)
		p := rapid.Float64Range(0.01, 0.99).Draw(t, "p")
		q := l.LargestQuantile(p, n, hs)
		rel(t, "quantile", math.Pow(1-l.Exceedance(q, hs), n), p, 1e-8)
		if lo, hi := l.LargestQuantile(0.05, n, hs), l.LargestQuantile(0.99, n, hs); n > 2 && !(lo < l.LargestMean(n, hs) && l.LargestMean(n, hs) < hi) {
			t.Errorf("mean %v outside %v to %v", l.LargestMean(n, hs), lo, hi)
		}
	})
	// Forristall's waves are lower than Rayleigh's, by some 10 %.
	near(t, "Forristall", wave.Forristall.ExceededByOneIn(1000, 1)/wave.Rayleigh.ExceededByOneIn(1000, 1), 0.91, 0.02)
}

func TestHeightsBadInput(t *testing.T) {
	l := wave.Rayleigh
	for _, bad := range []float64{-1, inf, nothing} {
		nan(t, "Hs", l.Exceedance(1, bad))
		nan(t, "Hs", l.ExceededByOneIn(10, bad))
		nan(t, "Hs", l.MeanOfHighest(10, bad))
		nan(t, "Hs", l.RootMeanSquare(bad))
		nan(t, "Hs", l.LargestMean(10, bad))
		nan(t, "Hs", l.LargestQuantile(0.5, 10, bad))
		nan(t, "rms", wave.SignificantOfRMS(bad))
		nan(t, "third", wave.SignificantOfThird(bad))
		nan(t, "third", wave.ShallowOneInHundred(bad, 5))
		nan(t, "third", wave.ShallowOneInThousand(bad, 5))
		nan(t, "time", wave.WavesIn(bad, 5))
	}
	for _, bad := range []float64{0.9, 0, -1, inf, nothing} {
		nan(t, "n", l.ExceededByOneIn(bad, 1))
		nan(t, "n", l.MeanOfHighest(bad, 1))
		nan(t, "n", l.LargestMean(bad, 1))
		nan(t, "n", l.LargestQuantile(0.5, bad, 1))
		nan(t, "n", wave.TimeToOneIn(bad, 5))
	}
	for _, bad := range append(hostile, inf) {
		nan(t, "period", wave.WavesIn(100, bad))
		nan(t, "period", wave.TimeToOneIn(100, bad))
		if bad != inf {
			nan(t, "depth", wave.ShallowOneInHundred(1, bad))
		}
	}
	for _, bad := range []float64{0, 1, -1, nothing} {
		nan(t, "p", l.LargestQuantile(bad, 10, 1))
	}
	nan(t, "height", l.Exceedance(-1, 1))
	for _, law := range []wave.HeightLaw{{}, {1, 0}, {0, 1}, {nothing, 2}} {
		nan(t, "law", law.Exceedance(1, 1)+law.MeanOfHighest(3, 1)+law.LargestMean(3, 1)+law.RootMeanSquare(1)+law.ExceededByOneIn(3, 1)+law.LargestQuantile(0.5, 3, 1))
	}
	near(t, "waves in an hour", wave.WavesIn(3600, 5), 720, 0)
	near(t, "time to one in a thousand", wave.TimeToOneIn(1000, 8), 8000, 0)
	near(t, "higher than anything", l.Exceedance(inf, 1), 0, 0)
	near(t, "no sea", l.Exceedance(1, 0), 0, 0)
	near(t, "no height", l.Exceedance(0, 0), 1, 0)
}

func TestCombine(t *testing.T) {
	near(t, "3, 4, 0", wave.Combine(3, 4, 0), 5, 1e-15)
	near(t, "none", wave.Combine(), 0, 0)
	nan(t, "bad", wave.Combine(1, nothing))
	nan(t, "bad", wave.Combine(-1, 2))
	nan(t, "bad", wave.Combine(inf))
	rapid.Check(t, func(t *rapid.T) {
		a := wave.System{Hs: rapid.Float64Range(0.1, 5).Draw(t, "Ha"), Period: rapid.Float64Range(2, 20).Draw(t, "Ta")}
		b := wave.System{Hs: rapid.Float64Range(0.1, 5).Draw(t, "Hb"), Period: rapid.Float64Range(2, 20).Draw(t, "Tb")}
		for name, f := range map[string]func(...wave.System) (float64, float64){"energy": wave.CombineEnergyPeriods, "mean": wave.CombineMeanPeriods} {
			hs, p := f(a, b)
			near(t, name, hs, wave.Combine(a.Hs, b.Hs), 1e-14)
			if !(p >= math.Min(a.Period, b.Period)*(1-1e-12) && p <= math.Max(a.Period, b.Period)*(1+1e-12)) {
				t.Errorf("%s period %v between %v and %v", name, p, a.Period, b.Period)
			}
			hs2, p2 := f(b, a)
			near(t, "order", hs2, hs, 1e-14)
			rel(t, "order", p2, p, 1e-14)
			_, alone := f(a)
			rel(t, "alone", alone, a.Period, 1e-14)
		}
		// The energy flux in deep water adds.
		hs, te := wave.CombineEnergyPeriods(a, b)
		rel(t, "flux", wave.DeepFluxOfSea(hs, te), wave.DeepFluxOfSea(a.Hs, a.Period)+wave.DeepFluxOfSea(b.Hs, b.Period), 1e-12)
	})
	for _, bad := range []wave.System{{-1, 5}, {1, 0}, {1, nothing}, {nothing, 5}, {1, inf}} {
		h, p := wave.CombineEnergyPeriods(wave.System{Hs: 1, Period: 8}, bad)
		nan(t, "system", h)
		nan(t, "system", p)
		h, _ = wave.CombineMeanPeriods(bad)
		nan(t, "system", h)
	}
	h, p := wave.CombineMeanPeriods()
	near(t, "nothing", h, 0, 0)
	nan(t, "nothing", p)
}

// The sum of two waves does what the formula says.
func TestSetsAgainstTheSum(t *testing.T) {
	const h1, t1, h2, t2 = 1.0, 10.0, 0.6, 9.0
	b := wave.Sets(h1, t1, h2, t2, 20)
	a, c := wave.Solve(t1, 20), wave.Solve(t2, 20)
	top := func(at float64) float64 { // greatest elevation within a period of the time, at a place
		m := 0.0
		for i := range 400 {
			s := at + t1*(float64(i)/400-0.5)
			m = math.Max(m, h1/2*math.Cos(a.AngularFrequency*s)+h2/2*math.Cos(c.AngularFrequency*s))
		}
		return m
	}
	near(t, "set", 2*top(0), b.Highest, 1e-3)
	near(t, "lull", 2*top(b.Period/2), b.Lowest, 0.1)
	near(t, "next set", 2*top(b.Period), b.Highest, 0.02)
	rel(t, "set length and speed", b.Length/b.Period, b.Speed, 1e-12)
	if !(b.Speed > math.Min(a.GroupSpeed, c.GroupSpeed) && b.Speed < math.Max(a.GroupSpeed, c.GroupSpeed)) {
		t.Errorf("sets travel at %v, energy at %v and %v", b.Speed, a.GroupSpeed, c.GroupSpeed)
	}
	same := wave.Sets(1, 10, 1, 10, 20)
	if !math.IsInf(same.Period, 1) || !math.IsInf(same.Length, 1) || !math.IsInf(same.Waves, 1) {
		t.Errorf("%+v", same)
	}
	near(t, "speed of equal waves", same.Speed, a.GroupSpeed, 0)
	for _, bad := range append(hostile, inf) {
		nan(t, "period", wave.Sets(1, bad, 1, 9, 20).Period)
		if bad != inf {
			nan(t, "depth", wave.Sets(1, 10, 1, 9, bad).Length)
		}
		if bad != 0 {
			nan(t, "height", wave.Sets(1, 10, bad, 9, 20).Speed)
		}
	}
}

// The chain against heights drawn from it: two pairs of Gaussian amplitudes with the correlation κ.
func TestRunsAgainstDraws(t *testing.T) {
	rng := rand.New(rand.NewPCG(9, 80))
	for _, kappa := range []float64{0, 0.4, 0.7} {
		// A wave's height from its amplitudes (x, y); the next has amplitudes correlated by κ. The chain of heights that this makes
		// is not quite Markov, so transitions are counted pair by pair.
		const pairs = 400_000
		var high, highHigh, lowLow int
		const hs = 1.0
		var sx, sy, sxx, syy, sxy float64
		for range pairs {
			x1, y1 := rng.NormFloat64(), rng.NormFloat64()
			rest := math.Sqrt(1 - kappa*kappa)
			x2, y2 := kappa*x1+rest*rng.NormFloat64(), kappa*y1+rest*rng.NormFloat64()
			h1, h2 := hs/2*math.Hypot(x1, y1), hs/2*math.Hypot(x2, y2) // Hrms² = Hs²/2
			if h1 > hs {
				high++
				if h2 > hs {
					highHigh++
				}
			} else if h2 <= hs {
				lowLow++
			}
			sx += h1
			sy += h2
			sxx += h1 * h1
			syy += h2 * h2
			sxy += h1 * h2
		}
		r := wave.RunLengths(1, kappa)
		p22 := float64(highHigh) / float64(high)
		p11 := float64(lowLow) / float64(pairs-high)
		rel(t, "run", r.High, 1/(1-p22), 0.03)
		rel(t, "total run", r.Total, 1/(1-p22)+1/(1-p11), 0.03)
		n := float64(pairs)
		corr := (n*sxy - sx*sy) / math.Sqrt((n*sxx-sx*sx)*(n*syy-sy*sy))
		near(t, "correlation", wave.HeightCorrelation(kappa), corr, 0.01)
	}
}

func TestPropertyRuns(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Float64Range(0.05, 2).Draw(t, "height over Hs")
		p := wave.Rayleigh.Exceedance(c, 1)
		alone := wave.RunLengths(c, 0)
		rel(t, "independent", alone.High, 1/(1-p), 1e-9)
		rel(t, "independent", alone.Total, 1/(p*(1-p)), 1e-9)
		k := rapid.Float64Range(0, 0.98).Draw(t, "kappa")
		r := wave.RunLengths(c, k)
		if !(r.High >= alone.High*(1-1e-9)) {
			t.Errorf("alike waves make shorter runs: %v, independent %v", r.High, alone.High)
		}
		rel(t, "part of the waves in runs", r.High/r.Total, p, 1e-6) // whatever the correlation
		rel(t, "next", r.High*(1-r.Next), 1, 1e-9)
		rel(t, "the other series", r.High, runOfMixture(c, k), 1e-8)
		near(t, "kappa of the correlation", wave.KappaOfCorrelation(wave.HeightCorrelation(k)), k, 1e-9)
	})
	if r := wave.RunLengths(0, 0.5); !math.IsInf(r.High, 1) || !math.IsInf(r.Total, 1) || r.Next != 1 {
		t.Errorf("every wave is higher than 0: %+v", r)
	}
	if r := wave.RunLengths(30, 0.5); r.High != 1 || !math.IsInf(r.Total, 1) || r.Next != 0 {
		t.Errorf("no wave is so high: %+v", r)
	}
	for _, c := range [][2]float64{{-1, 0.5}, {nothing, 0.5}, {inf, 0.5}, {1, nothing}, {1, 1.1}, {1, -0.1}, {1, 0.9999999}} {
		r := wave.RunLengths(c[0], c[1])
		nan(t, "run", r.High)
		nan(t, "total", r.Total)
		nan(t, "next", r.Next)
	}
	for _, bad := range []float64{-0.1, 1.1, inf, nothing} {
		nan(t, "kappa", wave.HeightCorrelation(bad))
		nan(t, "correlation", wave.KappaOfCorrelation(bad))
	}
	near(t, "no correlation", wave.HeightCorrelation(0), 0, 1e-15)
}

// runOfMixture returns the mean run above c Hs, from the chance that the next wave is above it too.
func runOfMixture(c, kappa float64) float64 { return 1 / (1 - nextOfMixture(c, kappa)) }

// nextOfMixture returns the chance that the wave after one above c Hs is above it too by another series: the joint probability
// that two neighbours exceed t, in units of the mean square, is the mixture (1 - κ²) Σ κ^2j Q(j + 1, t/(1 - κ²))², with Q the
// upper incomplete gamma function.
func nextOfMixture(c, kappa float64) float64 {
	t := 2 * c * c
	k2 := kappa * kappa
	x := t / (1 - k2)
	both, weight := 0.0, 1-k2
	term := math.Exp(-x)
	q := term
	for j := 0; j < 20000; j++ {
		both += weight * q * q
		weight *= k2
		if weight < 1e-17*both && float64(j) > x {
			break
		}
		term *= x / float64(j+1)
		q = math.Min(1, q+term)
	}
	return both / math.Exp(-t)
}

func TestHeightCorrelation(t *testing.T) {
	last := 0.0
	for k := 0.0; k < 1; k += 0.002 {
		r := wave.HeightCorrelation(k)
		if !(r >= last && r <= k*k+1e-15) {
			t.Fatalf("rho(%v) = %v after %v", k, r, last)
		}
		last = r
	}
	near(t, "continuous", wave.HeightCorrelation(math.Sqrt(1e-3*(1-1e-9))), wave.HeightCorrelation(math.Sqrt(1e-3*(1+1e-9))), 1e-9)
	for _, k := range []float64{-0.1, 1.1, math.NaN()} {
		if r := wave.HeightCorrelation(k); !math.IsNaN(r) {
			t.Errorf("rho(%v) = %v", k, r)
		}
	}
}

func TestPropertySwell(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.Float64Range(1e5, 1.5e7).Draw(t, "distance")
		p := rapid.Float64Range(5, 25).Draw(t, "period")
		age := wave.SwellTime(r, p)
		rel(t, "at group speed", age, r/wave.GroupSpeed(p, inf), 1e-14)
		rel(t, "period that arrives", wave.SwellPeriod(r, age), p, 1e-13)
		// Two points of the ridge give the storm back.
		q := p * rapid.Float64Range(0.3, 0.95).Draw(t, "ratio")
		o := wave.OriginOfArrivals(p, q, wave.SwellTime(r, q)-age)
		rel(t, "distance", o.Distance, r, 1e-10)
		rel(t, "age", o.Age, age, 1e-10)
		s := wave.RidgeSlope(r)
		rel(t, "slope", (1/q-1/p)/(wave.SwellTime(r, q)-age), s, 1e-9)
		o = wave.OriginOfRidge(1/p, s)
		rel(t, "distance of the ridge", o.Distance, r, 1e-12)
		rel(t, "age of the ridge", o.Age, age, 1e-12)
		from, to := wave.SwellWindow(r, 0, 0, p)
		near(t, "a point and an instant", from, age, 0)
		near(t, "a point and an instant", to, age, 0)
		from, to = wave.SwellWindow(r, 3e5, 86400, p)
		rel(t, "window", to-from, 3e5/wave.GroupSpeed(p, inf)+86400, 1e-9)
	})
	near(t, "hours of 1 nmi and 1 s", wave.SwellTime(1852, 1)/3600, 0.6592, 5e-5)
}

func TestSwellBadInput(t *testing.T) {
	for _, bad := range []float64{-1, inf, nothing} {
		nan(t, "distance", wave.SwellTime(bad, 8))
		f, to := wave.SwellWindow(bad, 0, 0, 8)
		nan(t, "distance", f+to)
		f, to = wave.SwellWindow(1e6, bad, 0, 8)
		nan(t, "length", f+to)
		f, to = wave.SwellWindow(1e6, 0, bad, 8)
		nan(t, "lifetime", f+to)
	}
	for _, bad := range append(hostile, inf) {
		nan(t, "period", wave.SwellTime(1e6, bad))
		nan(t, "distance", wave.SwellPeriod(bad, 1e5))
		nan(t, "age", wave.SwellPeriod(1e6, bad))
		nan(t, "first", wave.OriginOfArrivals(bad, 6, 100).Distance)
		nan(t, "second", wave.OriginOfArrivals(12, bad, 100).Age)
		nan(t, "delay", wave.OriginOfArrivals(12, 6, bad).Age)
		nan(t, "frequency", wave.OriginOfRidge(bad, 1e-7).Age)
		nan(t, "rate", wave.OriginOfRidge(0.1, bad).Distance)
		nan(t, "distance", wave.RidgeSlope(bad))
		_, to := wave.SwellWindow(1e6, 0, 0, bad)
		nan(t, "period", to)
	}
	nan(t, "the later swell is the longer", wave.OriginOfArrivals(6, 12, 100).Age)
}

func TestEncounters(t *testing.T) {
	w := wave.Water{Gravity: 9.81}
	for _, period := range []float64{2, 3, 6, 10} {
		v := w.Solve(period, inf)
		for _, speed := range []float64{0, 1.8, 2.8, 5, 8} {
			m := v.Encounter(speed, 0)
			rel(t, "length over relative speed", m.Period, v.Length/(v.PhaseSpeed-speed), 1e-12)
			if !(m.Frequency <= w.MostEncounters(speed)*(1+1e-12)) {
				t.Errorf("%v Hz is above the maximum", m.Frequency)
			}
			rel(t, "head sea", v.Encounter(speed, 180).Frequency, (v.PhaseSpeed+speed)/v.Length, 1e-12)
			rel(t, "beam sea", v.Encounter(speed, 90).Frequency, 1/period, 1e-12)
		}
		// The master's formula, away from the speed of the wave.
		rel(t, "master", wave.MasterEncounterPeriod(period, 0.3*v.PhaseSpeed, 180), v.Encounter(0.3*v.PhaseSpeed, 0).Period, 0.015)
	}
	if !math.IsInf(wave.MasterEncounterPeriod(5, 15*wave.Knot, 180), 1) || !math.IsInf(wave.MostEncounters(0), 1) {
		t.Error("with the wave the period is infinite, and a board at rest meets ever shorter waves ever more often")
	}
	// Twice as fast as the board: the most frequent encounter.
	const speed = 2.8
	rel(t, "maximum", w.Solve(w.PeriodOfSpeed(2*speed, inf), inf).Encounter(speed, 0).Frequency, w.MostEncounters(speed), 1e-12)
	nan(t, "speed", wave.MostEncounters(-1))
	nan(t, "speed", wave.MasterEncounterPeriod(8, -1, 180))
	nan(t, "period", wave.MasterEncounterPeriod(0, 1, 180))
	nan(t, "angle", wave.MasterEncounterPeriod(8, 1, inf))
}

func TestPropertyEncounter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := wave.Solve(drawPeriod(t), drawDepth(t))
		v := rapid.Float64Range(0, 10).Draw(t, "speed")
		mu := rapid.Float64Range(-180, 180).Draw(t, "angle")
		m := w.Encounter(v, mu)
		// The plain twin: count the phase at the board over a minute.
		phase := func(s float64) float64 {
			return w.Wavenumber*v*s*math.Cos(mu*math.Pi/180) - w.AngularFrequency*s
		}
		near(t, "crests a second", m.Frequency, -(phase(60)-phase(0))/(2*math.Pi)/60, 1e-9)
		near(t, "either side", w.Encounter(v, -mu).Frequency, m.Frequency, 1e-12)
		near(t, "once round", w.Encounter(v, mu+360).Frequency, m.Frequency, 1e-10)
		rel(t, "standing still", w.Encounter(0, mu).Frequency, 1/w.Period, 1e-14)
		rel(t, "deep water", wave.Solve(w.Period, inf).Encounter(v, 180).Frequency, 1/w.Period+2*math.Pi*v/(wave.StandardGravity*w.Period*w.Period), 1e-12)
		if a := w.SameSpeedCourse(v); !math.IsNaN(a) {
			near(t, "keeps its place", w.Encounter(v, a).Frequency, 0, 1e-9)
		} else if !(v < w.PhaseSpeed) {
			t.Errorf("%v m/s on a wave of %v", v, w.PhaseSpeed)
		}
	})
	w := wave.Solve(5, inf)
	if p := w.Encounter(w.PhaseSpeed, 0).Period; !math.IsInf(p, 1) {
		t.Errorf("running with the wave: %v", p)
	}
	for _, bad := range []float64{-1, inf, nothing} {
		nan(t, "speed", w.Encounter(bad, 0).Frequency)
		nan(t, "speed", w.SameSpeedCourse(bad))
	}
	nan(t, "angle", w.Encounter(1, nothing).Period)
	nan(t, "angle", w.Encounter(1, inf).Closing)
	nan(t, "no wave", wave.Solve(nothing, 1).Encounter(1, 0).Frequency)
}
