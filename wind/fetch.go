package wind

import (
	"errors"
	"fmt"
	"math"

	"followingsea.example/internal/angle"
)

// Fetches, each under its own name, because the growth laws were fitted to
// different ones:
//
//   - the straight-line fetch is the distance to land right up the wind, and is
//     what [Bretschneider] of today, [JONSWAP], [KahmaCalkoen], [Wilson],
//     [YoungVerhagen] and [CEM] want. [ArcFetch] averages it over a few degrees;
//   - the effective fetch of Saville, [SavilleFetch], is shorter on narrow water
//     and belongs to the older SMB practice of dams and reservoirs. With a law
//     fitted on straight fetches it shortens a narrow fetch twice;
//   - [CosineFetch] is what some tools call effective fetch: the same sum
//     without the projection, 8 to 12 % longer;
//   - [RestrictedFetch] is for [Smith] alone.
//
// All take the fetch as a function of the direction it lies in, which is the
// direction a wind along it comes from, in degrees true; +Inf is open sea. A
// coastline, a table or [Radials] can stand behind it.

// ErrRadials is returned for a table of fetches that makes no sense.
var ErrRadials = errors.New("wind: fetch radials")

// Radials returns the fetch as a function of direction from radials measured every
// step degrees clockwise from the direction first, linear between neighbours. Where
// the radials do not close the circle the fetch outside them is zero: nothing was
// measured there. An infinite radial makes the two sectors beside it open.
//
// The error is ErrRadials if there are fewer than two radials, they overrun the
// circle, the step is under 0.01 degrees, or a length is negative or NaN.
func Radials(first, step float64, lengths ...float64) (func(from float64) float64, error) {
	n := len(lengths)
	if n < 2 {
		return nil, fmt.Errorf("%w: %d radials, at least 2 are needed", ErrRadials, n)
	}
	if !(math.Abs(first) <= 360) {
		return nil, fmt.Errorf("%w: first direction %v is outside -360 to 360", ErrRadials, first)
	}
	if !(step >= 0.01 && float64(n-1)*step < 360+1e-9) {
		return nil, fmt.Errorf("%w: %d radials every %v degrees are not one turn or less, 0.01 degrees or more apart", ErrRadials, n, step)
	}
	for i, l := range lengths {
		if !(l >= 0) {
			return nil, fmt.Errorf("%w: length %d is %v m", ErrRadials, i+1, l)
		}
	}
	r := append([]float64(nil), lengths...)
	closed := math.Abs(float64(n)*step-360) < 1e-9
	return func(from float64) float64 {
		k := angle.Wrap(from-first) / step
		if math.IsNaN(k) {
			return k
		}
		i := int(k)
		f := k - float64(i)
		switch {
		case i < n-1:
			return blend(r[i], r[i+1], f)
		case i == n-1 && closed:
			return blend(r[i], r[0], f)
		case i == n-1 && f < 1e-9:
			return r[i]
		default:
			return 0
		}
	}, nil
}

func blend(a, b, f float64) float64 {
	if f == 0 {
		return a
	}
	return a*(1-f) + b*f
}

// ArcFetch returns the mean of the fetch (m) over the arc of half degrees either side
// of from, at whole degrees from the middle out: a wind is never as steady as a ray,
// and one rock in the way of the ray is not a shore.
//
// Special cases are:
//
//	ArcFetch is NaN for from or half NaN, half negative or above 180, or a fetch NaN
//
// The averaging over 15-degree arcs (half = 7) is that of [ACES1992] section 1-1.
func ArcFetch(fetch func(from float64) float64, from, half float64) float64 {
	if !(half >= 0 && half <= 180) {
		return math.NaN()
	}
	sum, n := fetch(angle.Wrap(from)), 1
	for a := 1.0; a <= half; a++ {
		sum += fetch(angle.Wrap(from-a)) + fetch(angle.Wrap(from+a))
		n += 2
	}
	return sum / float64(n)
}

// SavilleFetch returns the effective fetch (m) of Saville for a wind from the given
// direction: radials every 6 degrees to 42 degrees either side, each projected on the
// wind and weighted with its cosine,
//
//	F = Σ R cos²a / Σ cos a,   Σ cos a = 13.511
//
// Special cases are:
//
//	SavilleFetch is +Inf if a radial is open sea, NaN if from or a radial is NaN
//
// Source: [Saville1962], quoted in [Fell2005] section 13.
func SavilleFetch(fetch func(from float64) float64, from float64) float64 {
	return weightedFetch(fetch, from, 2)
}

// CosineFetch returns the mean of the fetch (m) weighted with the cosine of the angle
// off the wind, F = Σ R cos a / Σ cos a, over the radials of [SavilleFetch]. Some tools
// call this the effective fetch; it is the longer of the two.
//
// Special cases are those of [SavilleFetch].
//
// Source: [WEMo] effective_fetch.
func CosineFetch(fetch func(from float64) float64, from float64) float64 {
	return weightedFetch(fetch, from, 1)
}

func weightedFetch(fetch func(from float64) float64, from float64, power int) float64 {
	sum, weights := 0.0, 0.0
	for k := -7; k <= 7; k++ {
		c := math.Cos(angle.Radians(6 * float64(k)))
		w := c
		if power == 2 {
			w = c * c
		}
		sum += w * fetch(angle.Wrap(from+6*float64(k)))
		weights += c
	}
	return sum / weights
}

// RestrictedFetch returns the fetch (m) that raises the waves on restricted water when
// the wind blows from the given direction, and the direction those waves come from: of
// the whole degrees within 90 of the wind, the one with the greatest
//
//	F^0.28 cos^0.44 (angle off the wind)
//
// where F is the fetch averaged over 15 degrees. Along a narrow lake the waves run
// along the lake: [GrowRestricted] drives [SmithOff] with the angle between the two
// directions.
//
// Special cases are:
//
//	no fetch at all gives 0 and the wind's own direction
//	an open sector gives +Inf along the direction nearest the wind that has one, be it 89 degrees off;
//	[GrowRestricted] and [Hindcast] know the wind's speed and weigh it by what it can raise there
//	NaN, NaN if from or a fetch is NaN
//
// Source: [Smith1991], quoted in [ACES1992] section 1-1, eq. 26.
func RestrictedFetch(fetch func(from float64) float64, windFrom float64) (length, from float64) {
	return restrictedFetch(fetch, windFrom, math.Inf(1))
}

// restrictedFetch is RestrictedFetch with no fetch counted for more than raises full
// development: see [fullFetch].
func restrictedFetch(fetch func(from float64) float64, windFrom, full float64) (length, from float64) {
	windFrom = angle.Wrap(windFrom)
	if math.IsNaN(windFrom) {
		return math.NaN(), math.NaN()
	}
	// From 89 degrees left of the wind to 89 right: at 90 the wind raises nothing.
	s := newSectors(fetch, windFrom-89, 2*89+1)
	i, off := s.best(89, full)
	return s.length[i], angle.Wrap(windFrom + off)
}

// fullFetch is F^0.28 of the fetch at which a wind of u m/s has raised all that it can by
// Smith's law. Off the wind it falls with the cosine^0.56 of the angle, for the fetch goes
// with the square of the wind along the waves. No wind tells no fetch from another.
func fullFetch(u, gravity float64) float64 {
	if !(u > 0) {
		return math.Inf(1)
	}
	ua, most := Smith.Scale(u), Smith.Limits(u)
	x := math.Min(most.Period/0.3704, math.Pow(most.Height/0.0015, 2*0.28)) // of the two that is reached first
	return x * math.Pow(ua*ua/gravity, 0.28)
}

// sectors are fetches averaged over 15 degrees, in directions a degree apart.
type sectors struct {
	length []float64                        // metres
	power  []float64                        // length^0.28
	off    [90]struct{ cos, power float64 } // of whole degrees off the wind: cos, cos^0.44
}

// newSectors averages n fetches, the first about the direction from.
func newSectors(fetch func(from float64) float64, from float64, n int) sectors {
	rays := make([]float64, n+14)
	for i := range rays {
		rays[i] = fetch(angle.Wrap(from + float64(i-7)))
	}
	s := sectors{length: make([]float64, n), power: make([]float64, n)}
	for o := range s.off {
		c := math.Cos(angle.Radians(float64(o)))
		s.off[o].cos, s.off[o].power = c, math.Pow(c, 0.44)
	}
	for i := range s.length {
		for _, ray := range rays[i : i+15] {
			s.length[i] += ray / 15
		}
		s.power[i] = math.Pow(s.length[i], 0.28)
	}
	return s
}

// best returns the sector whose waves grow longest in a wind from that at i, and how many
// degrees it is off the wind: of those within 89 degrees the one with the greatest
// F^0.28 cos^0.44, and no greater than full development there. Where a fetch is NaN it is
// the sector of that.
func (s *sectors) best(i int, full float64) (sector int, off float64) {
	sector, greatest := i, 0.0
	for k := range 2*89 + 1 { // nearest the wind first, so that a tie stays near it
		o := (k + 1) / 2
		c := s.off[o]
		if k%2 == 1 {
			o = -o
		}
		at := (i + o + len(s.power)) % len(s.power)
		merit := math.Min(s.power[at]*c.power, full*c.cos)
		if math.IsNaN(merit) {
			return at, math.NaN()
		}
		if merit > greatest {
			sector, off, greatest = at, float64(o), merit
		}
	}
	return sector, off
}
