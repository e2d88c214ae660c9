package spectrum_test

import (
	"math"
	"strings"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
)

var sink float64

// BenchmarkExp is the yardstick of the others.
func BenchmarkExp(b *testing.B) {
	x := 0.7
	for b.Loop() {
		sink = math.Exp(x)
	}
}

func BenchmarkDensity(b *testing.B) {
	for name, s := range shapes() {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sink = s.Density(0.15)
			}
		})
	}
}

// A grid of 64 frequencies in one call, per frequency.
func BenchmarkDensities(b *testing.B) {
	f, dst := make([]float64, 64), make([]float64, 64)
	for i := range f {
		f[i] = 0.03 + float64(i)*0.01
	}
	s := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}
	b.ReportAllocs()
	for i := 0; i < b.N; i += len(f) {
		spectrum.Densities(s, dst, f)
	}
}

func BenchmarkMoment(b *testing.B) {
	for name, s := range shapes() {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sink = spectrum.Moment(s, 1)
			}
		})
	}
	b.Run("general", func(b *testing.B) {
		s := plain{spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}}
		for b.Loop() {
			sink = spectrum.Moment(s, 1)
		}
	})
}

func BenchmarkDescribe(b *testing.B) {
	s := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}
	for b.Loop() {
		sink = spectrum.Describe(s).Tz
	}
}

func BenchmarkRealise(b *testing.B) {
	s := sea
	b.Run("long-crested", func(b *testing.B) {
		for b.Loop() {
			if _, err := s.Realise(); err != nil {
				b.Fatal(err)
			}
		}
	})
	s.Spread = spectrum.GodaSpread{SMax: 10, Fp: 0.25}
	b.Run("spread", func(b *testing.B) {
		for b.Loop() {
			if _, err := s.Realise(); err != nil {
				b.Fatal(err)
			}
		}
	})
}

// One place and instant of 256 waves, and a sample of a record of the same: the plain sum is the twin of the rotation.
func BenchmarkSurface(b *testing.B) {
	r, err := sea.Realise()
	if err != nil {
		b.Fatal(err)
	}
	b.Run("At", func(b *testing.B) {
		b.ReportAllocs()
		t := 0.0
		for b.Loop() {
			t += 0.05
			sink = r.At(t, 2*t, 0).SlopeAlong
		}
	})
	b.Run("Elevation", func(b *testing.B) {
		b.ReportAllocs()
		t := 0.0
		for b.Loop() {
			t += 0.05
			sink = r.Elevation(t, 2*t, 0)
		}
	})
	b.Run("Record", func(b *testing.B) {
		for i := 0; i < b.N; i += 1024 {
			sink = r.Record(1024, 0.05, 0, 0)[0]
		}
	})
}

func BenchmarkShare(b *testing.B) {
	j := spectrum.Joint{Nu: 0.389}
	for b.Loop() {
		sink = j.Share(0.5, 0.7, 1.2)
	}
}

func BenchmarkEnergyFlux(b *testing.B) {
	s := spectrum.JONSWAP{Hs: 2, Tp: 8, Gamma: 3.3}
	for b.Loop() {
		sink = spectrum.EnergyFlux(s, wave.Water{}, 10)
	}
}

func BenchmarkReadBuoy(b *testing.B) {
	b.SetBytes(int64(len(realtimeDensity)))
	for b.Loop() {
		if _, err := spectrum.ReadBuoy(strings.NewReader(realtimeDensity), spectrum.BuoyDensity); err != nil {
			b.Fatal(err)
		}
	}
}
