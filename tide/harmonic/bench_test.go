package harmonic_test

import (
	"math"
	"testing"
	"time"

	"followingsea.example/internal/reference/stations"
	"followingsea.example/tide/harmonic"
)

// plainYear is the oracle of the benchmarks: the sum of cosines of a year,
// sample by sample, with amplitudes, phases and speeds made ready.
type plainYear struct{ amp, phase, speed []float64 }

func newPlainYear(s harmonic.Station, year int) (p plainYear) {
	for _, c := range s.Constituents {
		v, f := harmonic.YearArgument(c.Name, year, harmonic.Modern)
		p.amp = append(p.amp, f*c.Amplitude)
		p.phase = append(p.phase, (v-c.Lag)*math.Pi/180)
		p.speed = append(p.speed, harmonic.Speed(c.Name)*math.Pi/180)
	}
	return p
}

func (p plainYear) fill(dst []float64, z0 float64) {
	for i := range dst {
		t, h := float64(i)/10, z0
		for j := range p.amp {
			h += p.amp[j] * math.Cos(p.phase[j]+p.speed[j]*t)
		}
		dst[i] = h
	}
}

const yearSamples = 365 * 240

// all37 is Eastport with every one of the 37 constituents.
func all37() harmonic.Station {
	s := stations.Station("8410140")
	have := map[string]bool{}
	for _, c := range s.Constituents {
		have[c.Name] = true
	}
	for _, n := range harmonic.Names()[:37] {
		if !have[n] {
			s.Constituents = append(s.Constituents, harmonic.Constituent{Name: n, Amplitude: 0.003, Lag: 77})
		}
	}
	return s
}

func BenchmarkYearPlain(b *testing.B) {
	p := newPlainYear(all37(), 2026)
	dst := make([]float64, yearSamples)
	for b.Loop() {
		p.fill(dst, 1)
	}
}

func benchmarkYear(b *testing.B, n harmonic.Nodes) {
	td, err := harmonic.New(all37(), n)
	if err != nil {
		b.Fatal(err)
	}
	dst := make([]float64, yearSamples)
	from := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	for b.Loop() {
		td.Heights(dst, from, 6*time.Minute)
	}
}

func BenchmarkYearByYear(b *testing.B)    { benchmarkYear(b, harmonic.ByYear) }
func BenchmarkYearAtInstant(b *testing.B) { benchmarkYear(b, harmonic.AtInstant) }

// BenchmarkYearRatio measures both in one process and reports the ratio and
// the largest difference.
func BenchmarkYearRatio(b *testing.B) {
	s := all37()
	p := newPlainYear(s, 2026)
	from := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	for _, n := range []harmonic.Nodes{harmonic.ByYear, harmonic.AtInstant} {
		b.Run(n.String(), func(b *testing.B) {
			td, err := harmonic.New(s, n)
			if err != nil {
				b.Fatal(err)
			}
			slow, fast := make([]float64, yearSamples), make([]float64, yearSamples)
			var a, c time.Duration
			for b.Loop() {
				t0 := time.Now()
				p.fill(slow, s.Z0)
				t1 := time.Now()
				td.Heights(fast, from, 6*time.Minute)
				a, c = a+t1.Sub(t0), c+time.Since(t1)
			}
			worst := 0.0
			for i := range fast {
				if n == harmonic.ByYear {
					worst = math.Max(worst, math.Abs(fast[i]-slow[i]))
				} else if i%97 == 0 {
					worst = math.Max(worst, math.Abs(fast[i]-td.Height(from.Add(time.Duration(i)*6*time.Minute))))
				}
			}
			b.ReportMetric(a.Seconds()/c.Seconds(), "x-plain")
			b.ReportMetric(worst*1e12, "pm-diff")
			b.ReportMetric(c.Seconds()*1e9/float64(b.N)/yearSamples, "ns/height")
		})
	}
}

func BenchmarkHeight(b *testing.B) {
	for _, n := range []harmonic.Nodes{harmonic.ByYear, harmonic.AtInstant} {
		b.Run(n.String(), func(b *testing.B) {
			td, err := harmonic.New(all37(), n)
			if err != nil {
				b.Fatal(err)
			}
			at := time.Date(2026, 5, 1, 0, 0, 0, 0, time.UTC)
			b.ReportAllocs()
			for b.Loop() {
				td.Height(at)
			}
		})
	}
}

func BenchmarkTurnsOfAYear(b *testing.B) {
	td, err := harmonic.New(all37(), harmonic.AtInstant)
	if err != nil {
		b.Fatal(err)
	}
	from := time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)
	for b.Loop() {
		if _, err := td.Turns(from, from.AddDate(1, 0, 0), 0.01); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCurveHeight(b *testing.B) {
	td, err := harmonic.New(all37(), harmonic.AtInstant)
	if err != nil {
		b.Fatal(err)
	}
	at := time.Date(2026, 5, 1, 3, 17, 0, 0, time.UTC)
	c, err := td.Curve(at.AddDate(0, 0, -3), at.AddDate(0, 0, 3))
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		c.Height(at)
	}
}
