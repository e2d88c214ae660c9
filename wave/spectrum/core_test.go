package spectrum_test

import (
	"math"
	"testing"

	"followingsea.example/wave/spectrum"
)

func within(got, want, tol float64) bool { return math.Abs(got-want) <= tol }

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !within(got, want, tol) {
		t.Errorf("%s = %.12g, want %.12g within %g", what, got, want, tol)
	}
}

// plain has only a density, so that the general quadrature is used.
type plain struct{ s spectrum.Spectrum }

func (p plain) Density(f float64) float64 { return p.s.Density(f) }

func TestShapesIntegrateToTheirHeight(t *testing.T) {
	for _, g := range []float64{1, 1.5, 2, 3.3, 5, 7, 12, 20} {
		s := spectrum.JONSWAP{Hs: 2.5, Tp: 7, Gamma: g}
		near(t, "m0", spectrum.Moment(s, 0), 2.5*2.5/16, 2e-14)
		for _, n := range []float64{-2, -1, 0, 1, 2, 3} {
			m := spectrum.Moment(s, n)
			near(t, "general quadrature", spectrum.Moment(plain{s}, n)/m, 1, 1e-9)
			parts := spectrum.MomentWithin(s, n, 0, 0.1) + spectrum.MomentWithin(s, n, 0.1, 0.1432) +
				spectrum.MomentWithin(s, n, 0.1432, 0.3) + spectrum.MomentWithin(s, n, 0.3, math.Inf(1))
			near(t, "sum of parts", parts/m, 1, 1e-13)
		}
		near(t, "m4 truncated", spectrum.MomentWithin(plain{s}, 4, 0, 1)/spectrum.MomentWithin(s, 4, 0, 1), 1, 1e-9)
		near(t, "m5 truncated", spectrum.MomentWithin(plain{s}, 5, 0.05, 2)/spectrum.MomentWithin(s, 5, 0.05, 2), 1, 1e-9)
	}
	near(t, "A(3.3)", spectrum.JONSWAPFactor(3.3), 0.6557598030897294895, 2e-16)
	near(t, "A(7)", spectrum.JONSWAPFactor(7), 0.449404020133424711, 2e-16)
}
