package spectrum

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"sort"

	"followingsea.example/wave"
)

// ErrInput is wrapped by every error about a value given to this package; the message names the value and what is allowed.
var ErrInput = errors.New("spectrum: unusable input")

func inputError(name string, value any, want string) error {
	return fmt.Errorf("%w: %s is %v, want %s", ErrInput, name, value, want)
}

// A Sea is what a realisation is made of. Only the Spectrum and the Depth must be given.
type Sea struct {
	Spectrum Spectrum  // of the surface at a point
	Spread   Spreading // about the mean direction; nil: all waves run along it (long-crested)
	Depth    float64   // m; +Inf for deep water

	Water wave.Water // zero: standard gravity

	Components int     // how many waves are added up; 0: 256
	Low, High  float64 // band of frequencies in Hz; 0: where the first 0.05 % and the last 0.2 % of the variance begin
	Seed       uint64  // another seed, another sea of the same spectrum

	// RandomAmplitude draws each amplitude from the Rayleigh distribution instead of taking its root mean square. Then
	// the variance differs between realisations as it does between records of one sea, and the groups are right.
	RandomAmplitude bool
}

// A Component is one of the waves of a Realisation.
type Component struct {
	Amplitude  float64 // m
	Frequency  float64 // Hz
	Wavenumber float64 // rad/m
	Offset     float64 // angle of travel to the mean direction, degrees, positive to its right
	Phase      float64 // rad, at time 0 and the origin
}

// A Realisation is one possible sea with a given spectrum, as a sum of sinusoids with random phases:
//
//	η(t, x) = Σ aᵢ cos(kᵢ·x - ωᵢt + φᵢ)
//
// Places are metres along the mean direction of travel and across it, positive to the right of someone who looks along.
// The band is cut into parts of equal ratio, each with one component at a random frequency within it that carries the exact
// variance of its part: so no realisation repeats itself, and the peak and the short waves both get their share. The draws
// are a fixed generator's (PCG), so that a seed means the same sea on every machine to the last few bits of a sine.
//
// It is linear: crests are as steep as troughs. It is safe for concurrent use.
//
// Source: [Goda2010Book] sec. 2.5 and ch. 11; [Tucker1984].
type Realisation struct {
	parts []part
	comps []Component
}

// part is a component ready to be added up.
type part struct {
	a, omega, kx, ky, phase float64
	orbital                 float64 // gk/ω: horizontal orbital speed at the surface per metre of elevation along the wave
	cos, sin                float64 // of the angle of travel
}

// Realise returns one realisation of the sea.
//
// The error wraps ErrInput and names the field: no spectrum, a depth that is zero, negative or NaN, components outside 1 to
// 1e6, a band that is empty, or a spectrum or spreading that is negative, infinite or NaN in the band.
//
// Source: [Goda2010Book] ch. 11; [Tucker1984].
func (s Sea) Realise() (*Realisation, error) {
	if s.Spectrum == nil {
		return nil, inputError("Spectrum", "nil", "one")
	}
	if !(s.Depth > 0) {
		return nil, inputError("Depth", s.Depth, "above 0 m, or +Inf")
	}
	n := s.Components
	if n == 0 {
		n = 256
	}
	if n < 0 || n > 1e6 {
		return nil, inputError("Components", n, "1 to 1000000")
	}
	if math.IsNaN(gravity(s.Water.Gravity)) {
		return nil, inputError("Water.Gravity", s.Water.Gravity, "above 0")
	}
	lo, hi, err := s.band()
	if err != nil {
		return nil, err
	}
	// Everything is drawn in one fixed order, so that a seed stays the same sea.
	source := rand.NewPCG(s.Seed, 0x9e3779b97f4a7c15)
	draw := func() float64 { return float64(source.Uint64()>>11) * 0x1p-53 }
	r := &Realisation{parts: make([]part, n), comps: make([]Component, n)}
	step := math.Log(hi/lo) / float64(n)
	var cdf []float64
	for i := range n {
		f0, f1 := lo*math.Exp(step*float64(i)), lo*math.Exp(step*float64(i+1))
		f := f0 * math.Exp(step*draw())
		phase := 2 * math.Pi * draw()
		rayleigh, turn := draw(), draw()
		m0 := MomentWithin(s.Spectrum, 0, f0, f1)
		if !nonNegative(m0) {
			return nil, inputError("Spectrum", m0, fmt.Sprintf("a finite variance from %.4g to %.4g Hz", f0, f1))
		}
		c := Component{Amplitude: math.Sqrt(2 * m0), Frequency: f, Phase: phase}
		if s.RandomAmplitude {
			c.Amplitude *= math.Sqrt(-math.Log1p(-rayleigh))
		}
		c.Wavenumber = s.Water.Wavenumber(1/f, s.Depth)
		if s.Spread != nil {
			if c.Offset, cdf, err = drawOffset(s.Spread, f, turn, cdf); err != nil {
				return nil, err
			}
		}
		r.add(i, c, gravity(s.Water.Gravity))
	}
	return r, nil
}

func (r *Realisation) add(i int, c Component, g float64) {
	sin, cos := math.Sincos(c.Offset * math.Pi / 180)
	omega := 2 * math.Pi * c.Frequency
	r.comps[i] = c
	r.parts[i] = part{c.Amplitude, omega, c.Wavenumber * cos, c.Wavenumber * sin, c.Phase, g * c.Wavenumber / omega, cos, sin}
}

// band returns the limits of the realisation in Hz.
func (s Sea) band() (lo, hi float64, err error) {
	lo, hi = s.Low, s.High
	if !(lo >= 0 && finite(lo)) {
		return 0, 0, inputError("Low", lo, "0 Hz or above")
	}
	if !(hi >= 0 && finite(hi)) {
		return 0, 0, inputError("High", hi, "0 Hz or above")
	}
	if lo == 0 || hi == 0 {
		m0 := Moment(s.Spectrum, 0)
		if !positive(m0) {
			return 0, 0, inputError("Spectrum", m0, "a variance above 0 m²")
		}
		if lo == 0 {
			lo = quantile(s.Spectrum, 0.0005*m0)
		}
		if hi == 0 {
			hi = quantile(s.Spectrum, 0.998*m0)
		}
	}
	if !(lo < hi) {
		return 0, 0, inputError("High", hi, fmt.Sprintf("above Low, %.4g Hz", lo))
	}
	return lo, hi, nil
}

// quantile returns the frequency below which the variance is m.
func quantile(s Spectrum, m float64) float64 {
	lo, hi := math.Log(slowest), math.Log(fastest)
	for range 40 {
		mid := (lo + hi) / 2
		if MomentWithin(s, 0, 0, math.Exp(mid)) < m {
			lo = mid
		} else {
			hi = mid
		}
	}
	return math.Exp((lo + hi) / 2)
}

// The grid of directions on which a spreading is summed: half degrees, and the logarithms of the cosine of half of each.
const directions = 720

var logHalfCos = func() (l [directions]float64) {
	for i := range l {
		l[i] = math.Log(math.Abs(math.Cos(direction(i) * math.Pi / 360)))
	}
	return l
}()

func direction(i int) float64 { return (float64(i)+0.5)*360/directions - 180 }

// drawOffset draws the angle in degrees from the spreading at f by inverting its sum over the grid.
func drawOffset(d Spreading, f, turn float64, cdf []float64) (float64, []float64, error) {
	if cdf == nil {
		cdf = make([]float64, directions+1)
	}
	s := math.NaN() // of the cosine power, whose norm does not matter here
	switch v := d.(type) {
	case Cos2s:
		s = v.S
	case GodaSpread:
		s = v.S(f)
	}
	for i := range directions {
		v := math.Exp(2 * s * logHalfCos[i])
		if !nonNegative(s) {
			v = d.Spread(f, direction(i))
		}
		if !nonNegative(v) {
			return 0, cdf, inputError("Spread", v, fmt.Sprintf("finite and not negative at %.4g Hz", f))
		}
		cdf[i+1] = cdf[i] + v
	}
	total := cdf[directions]
	if !positive(total) {
		return 0, cdf, inputError("Spread", total, fmt.Sprintf("above 0 somewhere at %.4g Hz", f))
	}
	want := turn * total
	i := min(max(sort.SearchFloat64s(cdf, want), 1), directions)
	for cdf[i] == cdf[i-1] && i < directions {
		i++
	}
	part := (want - cdf[i-1]) / (cdf[i] - cdf[i-1])
	return (float64(i-1)+part)*360/directions - 180, cdf, nil
}

// Components returns a copy of the waves that are added up, in order of frequency.
func (r *Realisation) Components() []Component { return append([]Component(nil), r.comps...) }

// Variance returns the variance of the surface over all time, Σ a²/2, in m².
func (r *Realisation) Variance() float64 {
	sum := 0.0
	for _, c := range r.comps {
		sum += c.Amplitude * c.Amplitude / 2
	}
	return sum
}

// A Surface is the water surface at one place and instant.
type Surface struct {
	Elevation   float64 // above the mean level, m
	SlopeAlong  float64 // rise per metre in the mean direction of travel: negative on the front of a wave
	SlopeAcross float64 // rise per metre to the right
	Rise        float64 // vertical speed of the surface, m/s
	OrbitAlong  float64 // horizontal speed of the water in the mean direction, m/s
	OrbitAcross float64 // to the right, m/s
}

// At returns the surface at the time in seconds and the place in metres along and across the mean direction.
//
// Special cases are:
//
//	At has NaN in every field if an argument is infinite or NaN
func (r *Realisation) At(t, along, across float64) Surface {
	var s Surface
	for i := range r.parts {
		p := &r.parts[i]
		sin, cos := math.Sincos(p.kx*along + p.ky*across - p.omega*t + p.phase)
		c, n := p.a*cos, p.a*sin
		s.Elevation += c
		s.SlopeAlong -= p.kx * n
		s.SlopeAcross -= p.ky * n
		s.Rise += p.omega * n
		o := p.orbital * c
		s.OrbitAlong += o * p.cos
		s.OrbitAcross += o * p.sin
	}
	return s
}

// Elevation returns the height of the surface above its mean level in metres, at the time in seconds and the place in
// metres along and across the mean direction.
//
// Special cases are:
//
//	Elevation = NaN if an argument is infinite or NaN
func (r *Realisation) Elevation(t, along, across float64) float64 {
	sum := 0.0
	for i := range r.parts {
		p := &r.parts[i]
		sum += p.a * math.Cos(p.kx*along+p.ky*across-p.omega*t+p.phase)
	}
	return sum
}

// Slope returns the slope of the surface in the mean direction of travel, at the time in seconds and the place in metres
// along and across it. It is negative on the front of a wave, where a board going along runs downhill.
//
// Special cases are:
//
//	Slope = NaN if an argument is infinite or NaN
func (r *Realisation) Slope(t, along, across float64) float64 {
	sum := 0.0
	for i := range r.parts {
		p := &r.parts[i]
		sum -= p.a * p.kx * math.Sin(p.kx*along+p.ky*across-p.omega*t+p.phase)
	}
	return sum
}

// Record returns n elevations every dt seconds from time 0 at a place, as a buoy there would record them. It turns each
// component on by rotation instead of a cosine a sample, restarted every 128 samples, and agrees with Elevation to 1e-12 of
// the height.
//
// Special cases are:
//
//	Record has NaN in every value if dt or a place is infinite or NaN
//	Record is empty for n ≤ 0
func (r *Realisation) Record(n int, dt, along, across float64) []float64 {
	if n <= 0 {
		return nil
	}
	out := make([]float64, n)
	const restart = 128
	for i := range r.parts {
		p := &r.parts[i]
		ds, dc := math.Sincos(-p.omega * dt)
		var s, c float64
		for j := range out {
			if j%restart == 0 {
				s, c = math.Sincos(p.kx*along + p.ky*across - p.omega*(dt*float64(j)) + p.phase)
				s, c = p.a*s, p.a*c
			}
			out[j] += c
			s, c = s*dc+c*ds, c*dc-s*ds
		}
	}
	return out
}
