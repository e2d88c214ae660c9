package spectrum_test

import (
	"errors"
	"math"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func realise(t *testing.T, s spectrum.Sea) *spectrum.Realisation {
	t.Helper()
	r, err := s.Realise()
	if err != nil {
		t.Fatal(err)
	}
	return r
}

var sea = spectrum.Sea{Spectrum: spectrum.JONSWAP{Hs: 1, Tp: 4, Gamma: 3.3}, Depth: inf, Seed: 7}

func TestRealisationHasTheVariance(t *testing.T) {
	for name, s := range shapes() {
		r := realise(t, spectrum.Sea{Spectrum: s, Depth: inf})
		near(t, name, r.Variance()/spectrum.Moment(s, 0), 0.9975, 1e-6)
		c := r.Components()
		if len(c) != 256 {
			t.Errorf("%d components", len(c))
		}
		for i := 1; i < len(c); i++ {
			if !(c[i].Frequency > c[i-1].Frequency) || c[i].Offset != 0 {
				t.Errorf("%s: component %d: %+v after %+v", name, i, c[i], c[i-1])
			}
		}
		c[0].Amplitude = 99 // a copy
		if r.Components()[0].Amplitude == 99 {
			t.Error("Components hands out its own")
		}
	}
	// The band that is asked for has all its variance, and no more.
	s := sea
	s.Low, s.High, s.Components = 0.2, 0.6, 40
	near(t, "band", realise(t, s).Variance(), spectrum.MomentWithin(s.Spectrum, 0, 0.2, 0.6), 1e-12)
	// With Rayleigh amplitudes the variance scatters about the same mean.
	s.RandomAmplitude = true
	sum := 0.0
	const seeds = 200
	for seed := range uint64(seeds) {
		s.Seed = seed
		sum += realise(t, s).Variance()
	}
	near(t, "mean of seeds", sum/seeds/spectrum.MomentWithin(s.Spectrum, 0, 0.2, 0.6), 1, 0.06)
}

// A long record has the spectrum's height and mean period within what chance allows.
func TestRealisationMeanPeriod(t *testing.T) {
	r := realise(t, sea)
	const dt, n = 0.2, 24000 // 80 minutes, about 1500 waves
	record := r.Record(n, dt, 0, 0)
	waves, err := spectrum.Crossings(record, dt, spectrum.DownCrossings)
	if err != nil {
		t.Fatal(err)
	}
	s := spectrum.Summarise(waves)
	var low, high float64 = 0.1, 1
	p := spectrum.DescribeWithin(sea.Spectrum, low, high)
	near(t, "Tz", s.TMean, p.Tz, 0.05*p.Tz)
	near(t, "Hs", s.Third, 0.95, 0.06) // the highest third is about 5 % below Hm0, as Goda found
	// Neighbours of a real sea of this width are a little more alike than the narrow-band theory has them.
	near(t, "run", s.Pearson, wave.HeightCorrelation(spectrum.ChainCorrelation(sea.Spectrum)), 0.15)
	m2 := 0.0
	for _, v := range record {
		m2 += v * v / n
	}
	near(t, "variance", m2, 1.0/16, 0.08/16)
}

// The digits of one sea: they must be the same on every machine and for ever.
func TestSameSeedSameSea(t *testing.T) {
	s := sea
	s.Spread = spectrum.Cos2s{S: 12}
	s.Depth = 6
	s.Components = 5
	a, b := realise(t, s), realise(t, s)
	if d := cmp.Diff(a.Components(), b.Components()); d != "" {
		t.Error(d)
	}
	for i, want := range golden {
		c := a.Components()[i]
		near(t, "amplitude", c.Amplitude, want.Amplitude, 1e-12)
		near(t, "frequency", c.Frequency, want.Frequency, 1e-12)
		near(t, "wavenumber", c.Wavenumber, want.Wavenumber, 1e-12)
		near(t, "offset", c.Offset, want.Offset, 1e-9)
		near(t, "phase", c.Phase, want.Phase, 1e-12)
	}
	near(t, "elevation", a.Elevation(100, 20, -5), goldenElevation, 1e-12)
	s.Seed++
	if a.Elevation(0, 0, 0) == realise(t, s).Elevation(0, 0, 0) {
		t.Error("another seed, the same sea")
	}
}

// Each wave of it obeys the dispersion relation.
func TestWavesDisperse(t *testing.T) {
	for _, d := range []float64{1.5, 6, 40, inf} {
		s := sea
		s.Depth = d
		for _, c := range realise(t, s).Components() {
			near(t, "k", c.Wavenumber, wave.Wavenumber(1/c.Frequency, d), 1e-15)
		}
	}
}

func TestSurfaceIsTheSumOfItsWaves(t *testing.T) {
	s := sea
	s.Spread, s.Depth, s.Components = spectrum.Cos2s{S: 8}, 5, 60
	r := realise(t, s)
	rapid.Check(t, func(t *rapid.T) {
		tm, x, y := rapid.Float64Range(-1e4, 1e4).Draw(t, "t"), rapid.Float64Range(-1e3, 1e3).Draw(t, "x"), rapid.Float64Range(-1e3, 1e3).Draw(t, "y")
		var eta, sx, sy, rise, ux, uy float64
		for _, c := range r.Components() {
			dir := c.Offset * math.Pi / 180
			kx, ky := c.Wavenumber*math.Cos(dir), c.Wavenumber*math.Sin(dir)
			w := 2 * math.Pi * c.Frequency
			p := kx*x + ky*y - w*tm + c.Phase
			eta += c.Amplitude * math.Cos(p)
			sx -= c.Amplitude * kx * math.Sin(p)
			sy -= c.Amplitude * ky * math.Sin(p)
			rise += c.Amplitude * w * math.Sin(p)
			u := c.Amplitude * w / math.Tanh(c.Wavenumber*s.Depth) * math.Cos(p)
			ux += u * math.Cos(dir)
			uy += u * math.Sin(dir)
		}
		at := r.At(tm, x, y)
		for _, c := range [][2]float64{{at.Elevation, eta}, {r.Elevation(tm, x, y), eta}, {at.SlopeAlong, sx}, {r.Slope(tm, x, y), sx}, {at.SlopeAcross, sy}, {at.Rise, rise}, {at.OrbitAlong, ux}, {at.OrbitAcross, uy}} {
			near(t, "surface", c[0], c[1], 1e-9)
		}
	})
	nan := math.NaN()
	for _, at := range []spectrum.Surface{r.At(nan, 0, 0), r.At(0, inf, 0), r.At(0, 0, nan)} {
		if !math.IsNaN(at.Elevation) || !math.IsNaN(at.SlopeAlong) || !math.IsNaN(at.SlopeAcross) || !math.IsNaN(at.Rise) || !math.IsNaN(at.OrbitAlong) || !math.IsNaN(at.OrbitAcross) {
			t.Errorf("%+v", at)
		}
	}
	if !math.IsNaN(r.Elevation(inf, 0, 0)) || !math.IsNaN(r.Slope(0, nan, 0)) {
		t.Error("a surface at no place")
	}
}

func TestSlopeIsTheDerivative(t *testing.T) {
	s := sea
	s.Spread = spectrum.CosN{N: 4}
	r := realise(t, s)
	const h = 1e-5
	for i := range 50 {
		tm, x, y := float64(i)*3.7, float64(i)*1.9, float64(i)*-0.7
		a := r.At(tm, x, y)
		near(t, "along", a.SlopeAlong, (r.Elevation(tm, x+h, y)-r.Elevation(tm, x-h, y))/(2*h), 1e-8)
		near(t, "across", a.SlopeAcross, (r.Elevation(tm, x, y+h)-r.Elevation(tm, x, y-h))/(2*h), 1e-8)
		near(t, "rise", a.Rise, (r.Elevation(tm+h, x, y)-r.Elevation(tm-h, x, y))/(2*h), 1e-8)
	}
}

func TestRecordIsTheElevation(t *testing.T) {
	r := realise(t, sea)
	for i, v := range r.Record(1000, 0.25, 13, -4) {
		near(t, "sample", v, r.Elevation(float64(i)*0.25, 13, -4), 1e-11)
	}
	if r.Record(0, 1, 0, 0) != nil || r.Record(-3, 1, 0, 0) != nil {
		t.Error("a record of nothing")
	}
	for _, v := range r.Record(300, math.NaN(), 0, 0) {
		if !math.IsNaN(v) {
			t.Fatal("a record without a step")
		}
	}
}

// The directions drawn are spread as they should be.
func TestRealisationIsSpread(t *testing.T) {
	s := sea
	s.Components = 4000
	for _, d := range []float64{4, 12, 75} {
		s.Spread = spectrum.Cos2s{S: d}
		var sn, cs float64
		for _, c := range realise(t, s).Components() {
			sn += math.Sin(c.Offset*math.Pi/180) / 4000
			cs += math.Cos(c.Offset*math.Pi/180) / 4000
		}
		r1, _ := spectrum.Cos2sFourier(d)
		near(t, "r1", cs, r1, 0.02)
		near(t, "mean", sn, 0, 0.03)
	}
}

func TestRealiseRefuses(t *testing.T) {
	nan := math.NaN()
	for name, change := range map[string]func(*spectrum.Sea){
		"no spectrum":     func(s *spectrum.Sea) { s.Spectrum = nil },
		"no depth":        func(s *spectrum.Sea) { s.Depth = 0 },
		"NaN depth":       func(s *spectrum.Sea) { s.Depth = nan },
		"components":      func(s *spectrum.Sea) { s.Components = -1 },
		"many components": func(s *spectrum.Sea) { s.Components = 2e6 },
		"gravity":         func(s *spectrum.Sea) { s.Water.Gravity = nan },
		"NaN band":        func(s *spectrum.Sea) { s.Low = nan },
		"high":            func(s *spectrum.Sea) { s.High = inf },
		"band":            func(s *spectrum.Sea) { s.Low, s.High = 2, 1 },
		"calm":            func(s *spectrum.Sea) { s.Spectrum = spectrum.Bretschneider{Hs: 0, Tp: 4} },
		"bad spectrum":    func(s *spectrum.Sea) { s.Spectrum = spectrum.JONSWAP{} },
		"bad in the band": func(s *spectrum.Sea) { s.Spectrum, s.Low, s.High = spectrum.JONSWAP{}, 0.1, 1 },
		"bad spread":      func(s *spectrum.Sea) { s.Spread = spectrum.Cos2s{S: -1} },
	} {
		s := sea
		change(&s)
		if r, err := s.Realise(); r != nil || !errors.Is(err, spectrum.ErrInput) {
			t.Errorf("%s: %v, %v", name, r, err)
		}
	}
}

func TestCrossingsOfASine(t *testing.T) {
	const dt, period, height = 0.5, 7.3, 1.4
	record := make([]float64, 2000)
	for i := range record {
		record[i] = 12 + height/2*math.Sin(2*math.Pi*(float64(i)*dt-0.9)/period)
	}
	for _, cut := range []spectrum.Cut{spectrum.UpCrossings, spectrum.DownCrossings} {
		waves, err := spectrum.Crossings(record, dt, cut)
		if err != nil {
			t.Fatal(err)
		}
		if want := int(float64(len(record))*dt/period) - 1; len(waves) < want || len(waves) > want+1 {
			t.Errorf("%d waves, want about %d", len(waves), want)
		}
		for i, w := range waves {
			near(t, "height", w.Height(), height, 0.01)
			near(t, "period", w.Period, period, 0.03)
			if i > 0 {
				near(t, "joined", w.Start, waves[i-1].Start+waves[i-1].Period, 1e-9)
			}
		}
	}
}

// Turning the record upside down makes up crossings of down crossings and troughs of crests.
func TestCrossingsMirror(t *testing.T) {
	record := realise(t, sea).Record(4000, 0.25, 0, 0)
	mirror := make([]float64, len(record))
	for i, v := range record {
		mirror[i] = -v
	}
	a, err := spectrum.Crossings(record, 0.25, spectrum.UpCrossings)
	if err != nil {
		t.Fatal(err)
	}
	b, err := spectrum.Crossings(mirror, 0.25, spectrum.DownCrossings)
	if err != nil || len(a) != len(b) || len(a) < 200 {
		t.Fatalf("%d and %d waves, %v", len(a), len(b), err)
	}
	for i := range a {
		near(t, "crest", a[i].Crest, -b[i].Trough, 1e-12)
		near(t, "trough", a[i].Trough, -b[i].Crest, 1e-12)
		near(t, "start", a[i].Start, b[i].Start, 1e-9)
		if !(a[i].Crest > 0 && a[i].Trough < 0 && a[i].Period > 0) {
			t.Errorf("wave %d: %+v", i, a[i])
		}
	}
}

func TestCrossingsRefuse(t *testing.T) {
	ok := []float64{0, 1, 0, -1, 0, 1, 0}
	for name, try := range map[string]func() ([]spectrum.Crossing, error){
		"dt":    func() ([]spectrum.Crossing, error) { return spectrum.Crossings(ok, 0, spectrum.UpCrossings) },
		"NaN":   func() ([]spectrum.Crossing, error) { return spectrum.Crossings(ok, math.NaN(), spectrum.UpCrossings) },
		"short": func() ([]spectrum.Crossing, error) { return spectrum.Crossings(ok[:2], 1, spectrum.UpCrossings) },
		"cut":   func() ([]spectrum.Crossing, error) { return spectrum.Crossings(ok, 1, 7) },
		"sample": func() ([]spectrum.Crossing, error) {
			return spectrum.Crossings([]float64{0, 1, math.NaN(), 1}, 1, spectrum.UpCrossings)
		},
	} {
		if w, err := try(); w != nil || !errors.Is(err, spectrum.ErrInput) {
			t.Errorf("%s: %v, %v", name, w, err)
		}
	}
	if w, err := spectrum.Crossings(make([]float64, 10), 1, spectrum.UpCrossings); len(w) != 0 || err != nil {
		t.Errorf("a flat record: %v, %v", w, err)
	}
	s := spectrum.Summarise(nil)
	if s.Waves != 0 || !math.IsNaN(s.Max) || !math.IsNaN(s.Third) || !math.IsNaN(s.TMean) || !math.IsNaN(s.Pearson) {
		t.Errorf("no waves: %+v", s)
	}
}

func TestSummaryOfKnownHeights(t *testing.T) {
	var w []spectrum.Crossing
	for i := 1; i <= 30; i++ {
		w = append(w, spectrum.Crossing{Crest: float64(i) / 2, Trough: -float64(i) / 2, Period: float64(i) / 3})
	}
	s := spectrum.Summarise(w)
	near(t, "max", s.Max, 30, 0)
	near(t, "third", s.Third, 25.5, 1e-12)
	near(t, "tenth", s.Tenth, 29, 1e-12)
	near(t, "mean", s.Mean, 15.5, 1e-12)
	near(t, "rms", s.RMS, math.Sqrt(31*61/6.0), 1e-12)
	near(t, "T third", s.TThird, 8.5, 1e-12)
	near(t, "T max", s.TMax, 10, 1e-12)
	near(t, "neighbours", s.Pearson, 1, 1e-12)
	one := spectrum.Summarise(w[:1])
	near(t, "one wave", one.Third, 1, 0)
}

func TestCountRuns(t *testing.T) {
	var w []spectrum.Crossing
	for _, h := range []float64{1, 3, 3, 1, 3, 1, 1, 3} {
		w = append(w, spectrum.Crossing{Crest: h})
	}
	run, total, n := spectrum.CountRuns(w, 2)
	if n != 3 || !within(run, 4.0/3, 1e-15) || !within(total, 3, 1e-15) { // they start at 1, 4 and 7
		t.Errorf("%v, %v, %d", run, total, n)
	}
	run, total, n = spectrum.CountRuns(w, 5)
	if n != 0 || !math.IsNaN(run) || !math.IsNaN(total) {
		t.Errorf("no runs: %v, %v, %d", run, total, n)
	}
	if _, _, n := spectrum.CountRuns(w, math.NaN()); n != 0 {
		t.Errorf("above nothing: %d runs", n)
	}
}
