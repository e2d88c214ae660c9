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
//	an open sector gives +Inf along the direction nearest the wind that has one
//	NaN, NaN if from or a fetch is NaN
//
// Source: [Smith1991], quoted in [ACES1992] section 1-1, eq. 26.
func RestrictedFetch(fetch func(from float64) float64, windFrom float64) (length, from float64) {
	windFrom = angle.Wrap(windFrom)
	if math.IsNaN(windFrom) {
		return math.NaN(), math.NaN()
	}
	var circle [2*(89+7) + 1]float64 // the fetch from 96 degrees left of the wind to 96 right
	for i := range circle {
		circle[i] = fetch(angle.Wrap(windFrom + float64(i-96)))
		if math.IsNaN(circle[i]) {
			return math.NaN(), math.NaN()
		}
	}
	best := 0.0
	length, from = math.NaN(), windFrom
	for k := range 2*89 + 1 { // nearest the wind first, so that a tie stays near it; at 90 degrees it raises nothing
		off := (k + 1) / 2
		if k%2 == 1 {
			off = -off
		}
		mean := 0.0
		for i := -7; i <= 7; i++ {
			mean += circle[off+96+i] / 15
		}
		if k == 0 {
			length = mean
		}
		merit := math.Pow(mean, 0.28) * math.Pow(math.Cos(angle.Radians(float64(off))), 0.44)
		if merit > best {
			best, length, from = merit, mean, angle.Wrap(windFrom+float64(off))
		}
	}
	return length, from
}
