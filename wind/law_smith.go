package wind

import (
	"math"

	"followingsea.example/internal/angle"
)

// Smith is the restricted-fetch law of Smith for narrow lakes, inlets and
// channels, on the adjusted wind of [ACESAdjustedWind] with waves along the wind,
//
//	g·Hs/Ua² = 0.0015 x^1/2,  g·Tp/Ua = 0.3704 x^0.28
//
// and at constant depth the tanh forms of [SPM84] with these two inner powers.
// Capped at full development as [ACES] is. On restricted water the waves may run
// along a longer fetch off the wind: [RestrictedFetch] finds that direction and
// [SmithOff] is the law at that angle. [Timed] with its own duration laws; the
// minimum duration is t = 51.09 F^0.72 / (g^0.28 Ua^0.44), the only reading of its
// exponents that is a time.
//
// Source: [Smith1991], quoted in [ACES1992] section 1-1, eqs 28 to 46.
var Smith Timed = smith{along: 1}

// SmithOff returns [Smith] for waves that run offset degrees from the wind: the
// law is driven by Ua cos(offset). The offset counts either way, and may be the plain
// difference of two directions on either side of north: 340 degrees are 20.
// [GrowRestricted] finds the angle from the fetches round about.
//
// Special cases are:
//
//	SmithOff(o) gives NaN everywhere for o across or against the wind, 90 degrees or more, or infinite or NaN
//
// Source: [Smith1991], quoted in [ACES1992] section 1-1.
func SmithOff(offset float64) Timed {
	offset = angle.Diff(0, offset)
	along := math.Cos(angle.Radians(offset))
	if !(math.Abs(offset) < 90) {
		along = math.NaN()
	}
	return smith{along: along}
}

// GrowRestricted returns the sea that Smith's law gives on restricted water: [Grow] with
// the fetch and the direction of [RestrictedFetch] and the law [SmithOff] of the angle
// between that direction and the wind's. The fetch of the conditions is not used. From in
// the result is where the WAVES come from, which along a narrow lake is not where the
// wind does.
//
// No fetch counts for more than the wind along it can make use of, to full development.
// The published rule is for lakes, where that makes no difference; at the edge of an open
// sea it would let the low sea nearly abeam of the wind hide the higher one that the wind
// raises over near water. This part is a proposal with no published source.
//
// Special cases are:
//
//	not Known for conditions that [Grow] does not know, or a direction or fetch of NaN
//
// Source: [Smith1991], quoted in [ACES1992] section 1-1, eqs 26 to 46.
func GrowRestricted(fetch func(from float64) float64, c Conditions) Sea {
	length, from := restrictedFetch(fetch, c.From, fullFetch(c.Speed, c.gravity()))
	law := SmithOff(angle.Diff(c.From, from))
	c.Fetch, c.From = length, from
	return Grow(law, c)
}

type smith struct{ along float64 } // cosine of the angle between wind and waves

func (smith) String() string            { return "Smith" }
func (l smith) Scale(u float64) float64 { return ACESAdjustedWind(u) * l.along }

func (smith) Growth(x, d float64) (h, t float64) {
	if math.IsInf(d, 1) {
		return 0.0015 * math.Sqrt(x), 0.3704 * math.Pow(x, 0.28)
	}
	p := math.Pow(d, 0.375)
	h = 0.283 * tanhOver(math.Tanh(0.530*p*p), 0.0015/0.283*math.Sqrt(x))
	t = 7.54 * tanhOver(math.Tanh(0.833*p), 0.3704/7.54*math.Pow(x, 0.28))
	return h, t
}

func (l smith) Limits(u float64) Limits {
	r := u * l.along / l.Scale(u) // the part of the wind along the waves
	return Limits{Height: 0.2433 * r * r, Period: 8.134 * r, Shortest: 30, Longest: 2.6e4}
}

func (l smith) MinimumDuration(u, fetch, gravity float64) float64 {
	fetch += timed(u, fetch, gravity)
	s := l.Scale(u)
	return 51.09 * math.Pow(fetch, 0.72) / (math.Pow(gravity, 0.28) * math.Pow(s, 0.44))
}

func (l smith) After(u, seconds, gravity float64) (hs, tp float64) {
	seconds += timed(u, seconds, gravity)
	s := l.Scale(u)
	t := gravity * seconds / s
	return 0.000103 * math.Pow(t, 0.69) * s * s / gravity, 0.082 * math.Pow(t, 0.39) * s / gravity
}
