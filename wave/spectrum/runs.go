package spectrum

import "math"

// High waves come in runs, because the height of a wave is correlated with that of the next. Kimura takes the heights for a
// Markov chain with Rayleigh heights of correlation parameter κ between neighbours (wave.RunLengths), which Battjes and van
// Vledder take from the spectrum: κ is the correlation of the envelope with itself one mean wave later.
//
//	κ = |∫ S(f) exp(2πi f τ) df| / m₀,  τ = Tm02

// EnvelopeCorrelation returns κ, from 0 (each wave by itself) to 1 (all alike), of the envelope of the surface with itself
// a lag in seconds later. With the lag Tm02 or Tm01 it is the parameter of wave.RunLengths; ChainCorrelation takes Tm02.
//
// Special cases are:
//
//	EnvelopeCorrelation = 1 for a lag of 0
//	EnvelopeCorrelation = NaN if the lag is infinite or NaN, or the spectrum has no variance
//
// Source: [BattjesVanVledder1984]; [Goda2010Book] ch. 10.
func EnvelopeCorrelation(s Spectrum, lag float64) float64 {
	m0 := Moment(s, 0)
	if !positive(m0) || !finite(lag) {
		return math.NaN()
	}
	c, n := fourier(s, math.Abs(lag), 0, math.Inf(1))
	return math.Min(math.Hypot(c, n)/m0, 1)
}

// ChainCorrelation returns κ between neighbouring waves, EnvelopeCorrelation at Tm02: 0.43 for a fully risen sea, 0.57 for
// JONSWAP's mean. wave.RunLengths makes of it how long the sets are.
//
// Special cases are:
//
//	ChainCorrelation = NaN if the spectrum has no Tm02
//
// Source: [BattjesVanVledder1984].
func ChainCorrelation(s Spectrum) float64 {
	return EnvelopeCorrelation(s, ZeroCrossingPeriod(Moment(s, 0), Moment(s, 2)))
}

// Autocovariance returns the covariance in m² of the surface with itself a lag in seconds later, ∫ S cos 2πfτ df: the
// variance at lag 0, then down through 0 and up again at about each period, the less the broader the spectrum.
//
// Special cases are:
//
//	Autocovariance(s, 0) = m₀
//	Autocovariance = NaN if the lag is infinite or NaN
//
// Source: [Goda2010Book] Eq. 2.5 (Wiener-Khintchine); [WAFO] tocovdata.
func Autocovariance(s Spectrum, lag float64) float64 {
	if !finite(lag) {
		return math.NaN()
	}
	c, _ := fourier(s, math.Abs(lag), 0, math.Inf(1))
	return c
}

// fourier returns the integrals of S cos 2πfτ and S sin 2πfτ from lo to hi.
func fourier(s Spectrum, tau, lo, hi float64) (c, n float64) {
	switch v := s.(type) {
	case Bins:
		for i, f := range v.F {
			a, b := math.Max(f-v.W[i]/2, lo), math.Min(f+v.W[i]/2, hi)
			if b <= a {
				continue
			}
			// The mean of the cosine over a band is that at its middle times sin(x)/x.
			w := v.S[i] * (b - a) * sinc(math.Pi*(b-a)*tau)
			sn, cs := math.Sincos(2 * math.Pi * f * tau)
			c, n = c+w*cs, n+w*sn
		}
		return c, n
	case Points:
		c = v.integral(lo, hi, func(f, d float64) float64 { return d * math.Cos(2*math.Pi*f*tau) })
		n = v.integral(lo, hi, func(f, d float64) float64 { return d * math.Sin(2*math.Pi*f*tau) })
		return c, n
	case Band:
		lo, hi = math.Max(lo, v.Low), math.Min(hi, v.High)
		if lo >= hi {
			return 0, 0
		}
		return fourier(v.Spectrum, tau, lo, hi)
	case Sum:
		for _, p := range v {
			pc, pn := fourier(p, tau, lo, hi)
			c, n = c+pc, n+pn
		}
		return c, n
	}
	if tau == 0 {
		return MomentWithin(s, 0, lo, hi), 0
	}
	// Panels of at most a tenth of f and half a turn, ending at the peak, up to where 1e-12 of the variance is left; a lag of
	// very many periods would take very many panels, and there the rest is nearer to 0 than that anyway.
	fp := PeakFrequency(s)
	if !positive(fp) {
		if MomentWithin(s, 0, lo, hi) == 0 {
			return 0, 0
		}
		return math.NaN(), math.NaN()
	}
	top := math.Min(1000*fp, hi)
	for f, k := math.Max(fp/10, lo), 0; f < top && k < 100000; k++ {
		next := math.Min(math.Min(f*1.1, f+0.5/tau), top)
		if f < fp && next > fp {
			next = fp
		}
		h, m := (next-f)/2, (f+next)/2
		for i, x := range nodes {
			g := m + h*x
			sn, cs := math.Sincos(2 * math.Pi * g * tau)
			d := s.Density(g) * weights[i] * h
			c, n = c+d*cs, n+d*sn
		}
		f = next
	}
	return c, n
}

func sinc(x float64) float64 {
	if x == 0 {
		return 1
	}
	return math.Sin(x) / x
}
