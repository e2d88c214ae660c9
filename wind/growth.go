package wind

import (
	"math"
	"strings"
)

// Conditions are what raises a sea: a steady wind, and how far, how long and
// over what depth it has blown. Nothing has a default but Gravity: a fetch, a
// duration or a depth that does not limit the sea is math.Inf(1), and a
// forgotten depth gives NaN, not deep water.
type Conditions struct {
	Speed     float64 // mean wind at 10 m, m/s; not a gust, not an adjusted wind
	Fetch     float64 // distance of open water up the wind, m
	Duration  float64 // seconds the wind has blown
	MeanDepth float64 // mean depth along the fetch at that tide, m
	From      float64 // direction the wind blows from, degrees true; only carried to the result
	Gravity   float64 // m/s²; zero means [Gravity]

	// Air and Water, where known, add a remark on stability to the result.
	// They do not change it: see [ObservedOverPredicted].
	Air, Water Temperature
}

func (c Conditions) gravity() float64 {
	if c.Gravity == 0 {
		return Gravity
	}
	return c.Gravity
}

// valid reports whether the numbers can raise a sea at all.
func (c Conditions) valid() bool {
	g := c.gravity()
	return c.Speed >= 0 && finite(c.Speed) && c.Fetch >= 0 && c.Duration >= 0 &&
		c.MeanDepth > 0 && g > 0 && finite(g)
}

// A Sea is a wind sea, or one partition of a sea, with what limited it.
type Sea struct {
	Hs      float64 // significant height Hm0 = 4 √m0, m
	Tp      float64 // peak period, s
	From    float64 // direction the waves come from, degrees true; NaN if not known
	Fetch   float64 // equivalent fetch: the distance over which this wind would raise this sea, m
	Limit   Limit   // what stopped the growth
	Remarks Remark  // what to keep in mind
}

// Known reports whether the sea is a number. An unknown sea counts against going.
func (s Sea) Known() bool { return s.Hs >= 0 && s.Tp >= 0 }

// SignificantPeriod returns T1/3 = 0.95 Tp (s), the mean period of the highest
// third, for a wind sea: the period that the nomograms of [Bretschneider] and the
// formula of [Wilson] are printed in.
//
// Special cases are:
//
//	NaN if Tp is negative or NaN
//
// Source: [Goda2003].
func (s Sea) SignificantPeriod() float64 {
	if !(s.Tp >= 0) {
		return math.NaN()
	}
	return 0.95 * s.Tp
}

func unknownSea() Sea {
	return Sea{Hs: math.NaN(), Tp: math.NaN(), From: math.NaN(), Fetch: math.NaN()}
}

// Limit says what stopped the growth of a sea. The zero value is unknown.
type Limit int

// The limits of a sea.
const (
	LimitUnknown   Limit = iota // something needed is not known
	LimitCalm                   // no wind, no fetch or no time: no sea
	LimitDuration               // the wind has not blown long enough for the fetch
	LimitFetch                  // the fetch
	LimitDepth                  // the depth: the same fetch in deep water gives a sea over a tenth higher
	LimitDeveloped              // full development
	LimitDecay                  // an old sea that its wind has left, dying down
)

// String returns the limit in words.
func (l Limit) String() string {
	switch l {
	case LimitCalm:
		return "calm"
	case LimitDuration:
		return "duration"
	case LimitFetch:
		return "fetch"
	case LimitDepth:
		return "depth"
	case LimitDeveloped:
		return "fully developed"
	case LimitDecay:
		return "decaying"
	default:
		return "unknown"
	}
}

// Remark is a set of remarks on a result.
type Remark int

// The remarks on a sea.
const (
	// RemarkShortFetch: g·F/S² is below what the law is meant for.
	RemarkShortFetch Remark = 1 << iota
	// RemarkLongFetch: g·F/S² is beyond what the law is meant for and the sea
	// is not fully developed.
	RemarkLongFetch
	// RemarkNoDepth: the law knows deep water only and the waves feel the bottom,
	// so the sea is over-estimated.
	RemarkNoDepth
	// RemarkBreaking: Hs is over 0.6 of the mean depth; such a sea breaks.
	RemarkBreaking
	// RemarkStable: the air is over 2 K warmer than the water; measured seas are
	// 30 to 40 % lower than predicted.
	RemarkStable
	// RemarkUnstable: the air is over 2 K colder than the water; measured seas are
	// a little higher than predicted.
	RemarkUnstable
	// RemarkSpinUp: the wind record, or what follows its last gap, is shorter than
	// the sea needs; it may be higher and longer than computed.
	RemarkSpinUp
	// RemarkOpenSea: the fetch has no end, so swell from beyond the record may arrive.
	RemarkOpenSea
)

var remarkWords = []string{
	"fetch shorter than the law is meant for",
	"fetch longer than the law is meant for",
	"law for deep water, waves feel the bottom",
	"breaking: height over 0.6 of the depth",
	"stable air: likely lower by a third",
	"unstable air: likely a little higher",
	"wind record too short: may be higher",
	"open sea: swell not included",
}

// String returns the remarks in words, separated by semicolons.
func (r Remark) String() string {
	var b strings.Builder
	for i, w := range remarkWords {
		if r&(1<<i) == 0 {
			continue
		}
		if b.Len() > 0 {
			b.WriteString("; ")
		}
		b.WriteString(w)
	}
	return b.String()
}

// Has reports whether all the remarks of q are among r.
func (r Remark) Has(q Remark) bool { return r&q == q }

// Grow returns the sea that the conditions raise from flat water by the law; nil
// means [Bretschneider].
//
// The sea is fetch limited if the wind has blown long enough: the time is that of
// a wave group travelling up the fetch at the group speed of the peak,
// t = ∫ dF / cg(Tp(F), d). Before that it is the sea at the fetch the group has
// covered so far, its equivalent fetch. Growth stops, for height and period
// together, at the first of the two to reach full development: capping them one
// by one would go on lengthening a sea that no longer grows.
//
// Accuracy: against the measured seas of Lake Superior the better laws have a
// scatter of 17 to 25 % in height and 8 to 15 % in period, mostly from the wind;
// [Band] gives the spread between laws.
//
// Special cases are:
//
//	Grow is flat (Hs = Tp = 0) for no wind, no fetch or no duration
//	Grow is not Known for NaN or negative conditions, or a depth not above zero
//
// Source: the law's own; equivalent fetch as in [WMO-702] section 4.3.
func Grow(law Law, c Conditions) Sea {
	if law == nil {
		law = Bretschneider
	}
	if !c.valid() {
		return unknownSea()
	}
	if c.Speed == 0 || c.Fetch == 0 || c.Duration == 0 {
		return Sea{From: c.From, Limit: LimitCalm}
	}
	g, s := c.gravity(), law.Scale(c.Speed)
	if !(s > 0) {
		return unknownSea()
	}
	unit := s * s / g
	fetch, depth, time := c.Fetch/unit, c.MeanDepth/unit, c.Duration*g/s

	x, developed := fetch, developedFetch(law, c.Speed, depth)
	reached := developed <= fetch && !math.IsInf(developed, 1) // in little depth some laws never develop fully
	if reached {
		x = developed
	}
	limit := LimitFetch
	if !math.IsInf(time, 1) && time < timeOver(law, x, depth) {
		x = fetchInTime(law, time, depth)
		limit = LimitDuration
	}
	h, t := law.Growth(x, depth)
	if limit == LimitFetch {
		limit = settled(law, c.Speed, x, depth, h, reached)
	}
	sea := Sea{Hs: h * unit, Tp: t * s / g, From: c.From, Fetch: x * unit, Limit: limit}
	sea.Remarks = remarks(law, c, x, h, t, depth)
	return sea
}

// settled returns what limits a sea that time does not.
func settled(law Law, u, x, depth, h float64, developed bool) Limit {
	lim := law.Limits(u)
	if developed || h >= 0.99*lim.Height {
		return LimitDeveloped
	}
	if !math.IsInf(depth, 1) {
		deep, _ := law.Growth(x, 1e9*depth)
		if math.Min(deep, lim.Height)*0.9 > h {
			return LimitDepth
		}
	}
	return LimitFetch
}

func remarks(law Law, c Conditions, x, h, t, depth float64) Remark {
	var r Remark
	lim := law.Limits(c.Speed)
	if x < lim.Shortest {
		r |= RemarkShortFetch
	}
	if x > lim.Longest && h < 0.99*lim.Height {
		r |= RemarkLongFetch
	}
	if _, deep := law.(interface{ deepOnly() }); deep && 4*math.Pi*depth < t*t { // depth under half the deep-water length
		r |= RemarkNoDepth
	}
	if h > 0.6*depth {
		r |= RemarkBreaking
	}
	if math.IsInf(c.Fetch, 1) {
		r |= RemarkOpenSea
	}
	return r | stability(c.Air.Celsius()-c.Water.Celsius())
}

// MinimumDuration returns the seconds that the wind of the conditions must blow
// for their fetch, or full development if that comes first, to limit the sea: the
// time of a wave group over the fetch at the group speed of the peak. The Duration
// of the conditions does not enter. The laws' own printed relations are in [Timed].
//
// Special cases are:
//
//	MinimumDuration is +Inf for an unlimited fetch if the law approaches full development without reaching it
//	MinimumDuration is 0 for no fetch, +Inf for no wind over some fetch
//	MinimumDuration is NaN for conditions that [Grow] does not know
func MinimumDuration(law Law, c Conditions) float64 {
	if law == nil {
		law = Bretschneider
	}
	c.Duration = math.Inf(1)
	g, s := c.gravity(), law.Scale(c.Speed)
	switch {
	case !c.valid() || !(s >= 0):
		return math.NaN()
	case c.Fetch == 0:
		return 0
	case s == 0:
		return math.Inf(1)
	}
	unit := s * s / g
	x := math.Min(c.Fetch/unit, developedFetch(law, c.Speed, c.MeanDepth/unit))
	return timeOver(law, x, c.MeanDepth/unit) * s / g
}

// EquivalentFetch returns the fetch (m) over which the wind of the conditions would
// raise a sea of significant height hs (m): how an existing sea is carried into a
// new wind. Fetch and Duration of the conditions do not enter.
//
// Special cases are:
//
//	EquivalentFetch is 0 for hs = 0
//	EquivalentFetch is +Inf for an hs above what the wind can raise in that depth
//	EquivalentFetch is NaN for hs negative or NaN, and for conditions that [Grow] does not know
func EquivalentFetch(law Law, c Conditions, hs float64) float64 {
	if law == nil {
		law = Bretschneider
	}
	c.Fetch, c.Duration = math.Inf(1), math.Inf(1)
	g, s := c.gravity(), law.Scale(c.Speed)
	switch {
	case !c.valid() || !(s >= 0) || !(hs >= 0):
		return math.NaN()
	case hs == 0:
		return 0
	case s == 0:
		return math.Inf(1)
	}
	unit := s * s / g
	depth := c.MeanDepth / unit
	x := reach(func(x float64) float64 { h, _ := law.Growth(x, depth); return h }, hs/unit)
	if x > developedFetch(law, c.Speed, depth) {
		return math.Inf(1)
	}
	return x * unit
}

// AsPublished returns the sea by the law's own printed relations: its fetch law if
// the wind has blown for its own minimum duration, its duration law if not, and
// where either height or period is above full development, both at full
// development, as ACES does. It is there to reproduce and compare publications:
// the relations jump where they meet, and [Grow] does not. At finite depth the
// printed sets have no duration law; the duration is then ignored.
//
// Special cases are those of [Grow].
func AsPublished(law Timed, c Conditions) Sea {
	if !c.valid() {
		return unknownSea()
	}
	if c.Speed == 0 || c.Fetch == 0 || c.Duration == 0 {
		return Sea{From: c.From, Limit: LimitCalm}
	}
	g, s := c.gravity(), law.Scale(c.Speed)
	if !(s > 0) {
		return unknownSea()
	}
	unit := s * s / g
	x, depth := c.Fetch/unit, c.MeanDepth/unit
	deep := math.IsInf(depth, 1)
	h, t := law.Growth(x, depth)
	sea := Sea{Hs: h * unit, Tp: t * s / g, From: c.From, Fetch: c.Fetch, Limit: LimitFetch}
	if deep && c.Duration < law.MinimumDuration(c.Speed, c.Fetch, g) {
		sea.Hs, sea.Tp = law.After(c.Speed, c.Duration, g)
		sea.Limit = LimitDuration
		sea.Fetch = reach(func(x float64) float64 { h, _ := law.Growth(x, depth); return h }, sea.Hs/unit) * unit
	} else if !deep {
		sea.Limit = settled(law, c.Speed, x, depth, h, false)
	}
	lim := law.Limits(c.Speed)
	if deep && (sea.Hs > lim.Height*unit || sea.Tp > lim.Period*s/g) {
		sea.Hs, sea.Tp, sea.Limit = lim.Height*unit, lim.Period*s/g, LimitDeveloped
		sea.Fetch = math.NaN()
	}
	sea.Remarks = remarks(law, c, x, sea.Hs/unit, sea.Tp*g/s, depth)
	return sea
}
