package wave

import "math"

// A wave breaks where it is too steep or too high for the depth. The laws here are fits to experiments, and differ in what
// they take in:
//
//	McCowan 1894        H = 0.78 h                               a solitary wave on a flat bottom
//	Miche 1944          H = 0.142 L tanh kh                      steepness, any depth; deep water: L/7
//	Weggel 1972         H/h = b - a H/gT²                        the slope and the period
//	Goda 1970, 2010     H/L0 = A(1 - exp(-1.5π h/L0 (1 + K m^4/3)))  the slope and the period
//	Komar & Gaughan     H from the deep-water height
//
// Single waves scatter about them with a coefficient of variation of 6 % on gentle slopes to 14 % on a slope of 1:10
// [Goda2010]. They are for the heights of single waves. A sea's significant height breaks at some 0.4 to 0.6 of the depth;
// putting Hs into a law for single waves is the classic error.

// McCowanIndex is the height over depth at which a solitary wave breaks on a flat bottom.
const McCowanIndex = 0.78

// McCowanHeight returns the height in metres at which a single wave breaks over a flat bottom in the depth in metres: 0.78 h.
//
// Special cases are:
//
//	McCowanHeight(depth) = NaN if the depth is negative, infinite or NaN
//
// Source: [DeanDalrymple1991] Eq. 4.122a, after McCowan 1894.
func McCowanHeight(depth float64) float64 {
	if !(depth >= 0 && finite(depth)) {
		return math.NaN()
	}
	return McCowanIndex * depth
}

// MicheCoefficient is the greatest steepness of waves in deep water, about 1/7.
const MicheCoefficient = 0.142

// MicheHeight returns the greatest height in metres that a wave of the length over the depth, both in metres, can have by its
// steepness: 0.142 L tanh(2πh/L). The length is that of linear theory. In shallow water it would be 0.89 of the depth, more
// than the laws of depth allow: it is a limit of steepness.
//
// Special cases are:
//
//	MicheHeight(length, depth) = NaN if either is zero, negative or NaN, or the length is infinite
//
// Source: [Miche1944]; [ACES1992-TR] with the coefficient 0.142; [CEM-II-4] Eq. II-4-18 prints 0.14.
func MicheHeight(length, depth float64) float64 {
	if !(positive(length) && depth > 0) {
		return math.NaN()
	}
	return MicheCoefficient * length * math.Tanh(2*math.Pi*depth/length)
}

// BreakingHeight returns the height in metres at which the wave breaks by its steepness: MicheHeight of its length and depth.
//
// Special cases are:
//
//	BreakingHeight = NaN for a wave that is none
//
// Source: [Miche1944].
func (v Wave) BreakingHeight() float64 { return MicheHeight(v.Length, v.Depth) }

// LimitOfSea returns the greatest significant height in metres that a sea whose peak period gives the wave can have by its
// steepness: half the limit of a single wave, 0.07 Lp tanh kp h. It is a sanity check on a typed pair of Hs and Tp.
//
// Special cases are:
//
//	LimitOfSea = NaN for a wave that is none
//
// Source: [TR-01-25], spectral input.
func (v Wave) LimitOfSea() float64 {
	return 0.07 * v.Length * v.tanhKh()
}

// A WeggelLaw is the two constants of Weggel's law of breaking, H/h = b - a H/gT², for a bottom of the slope m:
//
//	a = A (1 - e^-19m),  b = B/(1 + e^-19.5m)
type WeggelLaw struct {
	A float64
	B float64
}

// The constants as they are printed. They agree to 0.3 % of the breaker height.
var (
	WeggelCEM  = WeggelLaw{43.8, 1.56}    // Coastal Engineering Manual; what WeggelIndex and WeggelHeight take
	WeggelSPM  = WeggelLaw{43.75, 1.56}   // Shore Protection Manual, as remembered
	WeggelACES = WeggelLaw{43.75, 1.5625} // Automated Coastal Engineering System: 1.36 g in feet, and 1/0.64
)

// coefficients returns a and b for a slope.
func (l WeggelLaw) coefficients(slope float64) (a, b float64) {
	if !(slope >= 0 && finite(slope) && finite(l.A) && finite(l.B)) {
		return math.NaN(), math.NaN()
	}
	return l.A * -math.Expm1(-19*slope), l.B / (1 + math.Exp(-19.5*slope))
}

// Index returns the height over the depth at which a wave of the breaker height in metres and the period in seconds breaks on
// a bottom of the slope (rise over run): b - a H/gT². On a flat bottom it is half of B, 0.78. The law was fitted to slopes up
// to 1:10.
//
// Special cases are:
//
//	Index is NaN if the height or slope is negative, infinite or NaN, the period is zero, negative, infinite or NaN, or the law
//	gives nothing above zero
//
// Source: [CEM-II-4] Eq. II-4-5 to II-4-7, after Weggel 1972; [DeanDalrymple1991] Eq. 4.122b.
func (l WeggelLaw) Index(w Water, breaker, period, slope float64) float64 {
	a, b := l.coefficients(slope)
	if !(positive(period)) {
		return math.NaN()
	}
	i := b - a*(2*amplitude(breaker))/(w.g()*period*period)
	if !(i > 0) {
		return math.NaN()
	}
	return i
}

// Height returns the height in metres at which a wave of the period in seconds breaks over the depth in metres on a bottom of
// the slope (rise over run): the law solved for the height, bh/(1 + ah/gT²).
//
// Special cases are:
//
//	Height is NaN if the depth or slope is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [CEM-II-4] Eq. II-4-5 to II-4-7.
func (l WeggelLaw) Height(w Water, depth, period, slope float64) float64 {
	a, b := l.coefficients(slope)
	if !(depth >= 0 && finite(depth) && positive(period)) {
		return math.NaN()
	}
	return b * depth / (1 + a*depth/(w.g()*period*period))
}

// WeggelIndex returns the height over the depth at breaking by the law of the Coastal Engineering Manual: see WeggelLaw.Index.
//
// Special cases are those of WeggelLaw.Index.
//
// Source: [CEM-II-4] Eq. II-4-5 to II-4-7.
func (w Water) WeggelIndex(breaker, period, slope float64) float64 {
	return WeggelLaw{43.8, 1.56}.Index(w, breaker, period, slope)
}

// WeggelHeight returns the height in metres at breaking by the law of the Coastal Engineering Manual: see WeggelLaw.Height.
//
// Special cases are those of WeggelLaw.Height.
//
// Source: [CEM-II-4] Eq. II-4-5 to II-4-7.
func (w Water) WeggelHeight(depth, period, slope float64) float64 {
	return WeggelLaw{43.8, 1.56}.Height(w, depth, period, slope)
}

// A GodaLaw is the constants of Goda's law of breaking, H/L0 = A (1 - exp(-1.5π h/L0 (1 + K m^4/3))).
type GodaLaw struct {
	A float64 // proportional to the height: 0.17 for regular waves, 0.12 for the significant height at its first breaking
	K float64 // effect of the slope: 15 of 1970, 11 of the revision of 2010
}

// The constants that Goda published.
var (
	Goda1970        = GodaLaw{0.17, 15} // regular waves, the law of 1970
	Goda2010        = GodaLaw{0.17, 11} // regular waves, with the slope's effect reduced
	GodaSignificant = GodaLaw{0.12, 11} // the significant height at incipient breaking, about 30 % lower
)

// Height returns the height in metres at which a wave of the period in seconds breaks over the depth in metres on a bottom of
// the slope (rise over run) by the law. The deep-water length L0 = gT²/2π takes the default gravity; HeightIn takes another.
//
// Special cases are:
//
//	Height is NaN if the depth or slope is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [Goda2010].
func (l GodaLaw) Height(depth, period, slope float64) float64 {
	return l.HeightIn(Water{}, depth, period, slope)
}

// HeightIn is Height with the gravity of the water.
//
// Special cases are those of Height.
//
// Source: [Goda2010].
func (l GodaLaw) HeightIn(w Water, depth, period, slope float64) float64 {
	if !(depth >= 0 && finite(depth) && positive(period) && slope >= 0 && finite(slope) && finite(l.A) && finite(l.K)) {
		return math.NaN()
	}
	l0 := w.g() * period * period / (2 * math.Pi)
	return l.A * l0 * -math.Expm1(-1.5*math.Pi*depth/l0*(1+l.K*math.Pow(slope, 4.0/3)))
}

// KomarGaughan returns the height in metres at which a wave of the deep-water height in metres and the period in seconds
// breaks on a beach: 0.39 g^1/5 (T H0²)^2/5. The deep-water height is unrefracted: times Kr, without shoaling.
//
// Special cases are:
//
//	KomarGaughan is NaN if the height is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [KomarGaughan1972].
func (w Water) KomarGaughan(deepHeight, period float64) float64 {
	h := 2 * amplitude(deepHeight)
	if !positive(period) {
		return math.NaN()
	}
	return 0.39 * math.Pow(w.g(), 0.2) * math.Pow(period*h*h, 0.4)
}

// KomarGaughanCEM returns the same height with the coefficient rounded as the manual has it: 0.56 H0 (H0/L0)^-1/5. It is 0.6 %
// lower.
//
// Special cases are:
//
//	KomarGaughanCEM is NaN if the height is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [CEM-II-4] Eq. II-4-8.
func (w Water) KomarGaughanCEM(deepHeight, period float64) float64 {
	h := 2 * amplitude(deepHeight)
	if !positive(period) {
		return math.NaN()
	}
	return 0.56 * math.Pow(h, 0.8) * math.Pow(w.g()*period*period/(2*math.Pi), 0.2)
}

// MunkHeight returns the breaker height in metres of the solitary-wave theory: H0/(3.3 (H0/L0)^1/3), from the deep-water
// height in metres and the period in seconds.
//
// Special cases are:
//
//	MunkHeight is NaN if the height is negative, infinite or NaN, or the period is zero, negative, infinite or NaN
//
// Source: [SPM1984] Eq. 2-90, after Munk 1949.
func (w Water) MunkHeight(deepHeight, period float64) float64 {
	h := 2 * amplitude(deepHeight)
	if !positive(period) {
		return math.NaN()
	}
	return math.Cbrt(h*h*w.g()*period*period/(2*math.Pi)) / 3.3
}

// SingamsettiWind returns the breaker height in metres on a beach of the slope (rise over run):
// 0.575 m^0.031 (H0/L0)^-0.254 H0, from the deep-water height in metres and the period in seconds.
//
// Special cases are:
//
//	SingamsettiWind is NaN if the height is negative, infinite or NaN, or the period or slope is zero, negative, infinite or NaN
//
// Source: [ACES1992-TR] Linear Wave Theory with Snell's Law, after Singamsetti and Wind 1980.
func (w Water) SingamsettiWind(deepHeight, period, slope float64) float64 {
	h := 2 * amplitude(deepHeight)
	if !(positive(period) && positive(slope)) {
		return math.NaN()
	}
	l0 := w.g() * period * period / (2 * math.Pi)
	return 0.575 * math.Pow(slope, 0.031) * math.Pow(h, 1-0.254) * math.Pow(l0, 0.254)
}

// A Breaker is a wave at the point of breaking on a beach.
type Breaker struct {
	Height float64 // m
	Depth  float64 // m
	Index  float64 // height over depth
	Type   BreakerType
}

// Break returns where and how a wave of the deep-water height in metres (unrefracted) and the period in seconds breaks on a
// beach of the slope (rise over run): the height of KomarGaughanCEM, the depth of WeggelIndex, the type of the deep-water surf
// similarity.
//
// Special cases are:
//
//	Break is NaN throughout, and of no type, if the height, period or slope is zero, negative, infinite or NaN, or Weggel's law
//	has no answer
//
// Source: [CEM-II-4] Example Problem II-4-1.
func (w Water) Break(deepHeight, period, slope float64) Breaker {
	h := w.KomarGaughanCEM(deepHeight, period)
	i := w.WeggelIndex(h, period, slope)
	t := w.BreakerType(slope, deepHeight, period)
	if math.IsNaN(i) || t == NoBreaker {
		nan := math.NaN()
		return Breaker{nan, nan, nan, NoBreaker}
	}
	return Breaker{h, h / i, i, t}
}

// KamphuisIndex returns the significant height over the depth at which a sea breaks on a bottom of the slope (rise over run):
// 0.56 e^3.5m.
//
// Special cases are:
//
//	KamphuisIndex(slope) = NaN if the slope is negative, infinite or NaN
//
// Source: [Kamphuis2000]; its table of slopes and indices as in [CRESS-Z12.1].
func KamphuisIndex(slope float64) float64 {
	if !(slope >= 0 && finite(slope)) {
		return math.NaN()
	}
	return 0.56 * math.Exp(3.5*slope)
}

// KamphuisHeight returns the significant height in metres at which a sea of the peak period in seconds breaks over the depth
// in metres on a bottom of the slope (rise over run), by steepness and depth together: 0.095 e^4m L tanh kh.
//
// Special cases are:
//
//	KamphuisHeight is NaN if the depth or period is zero, negative, infinite or NaN, or the slope is negative, infinite or NaN
//
// Source: [Kamphuis2000], after Kamphuis 1991.
func (w Water) KamphuisHeight(depth, period, slope float64) float64 {
	if !(positive(depth) && slope >= 0 && finite(slope)) {
		return math.NaN()
	}
	v := w.Solve(period, depth)
	return 0.095 * math.Exp(4*slope) * v.Length * v.tanhKh()
}

// A BreakerType is how a wave breaks.
type BreakerType int

// The types of breaker.
const (
	NoBreaker BreakerType = iota // something was not a number
	Spilling                     // white water slides down the front: gentle slopes, steep waves
	Plunging                     // the crest curls over and falls
	Surging                      // the wave runs up the slope unbroken, or collapses at its foot: steep slopes, low swell
)

// String returns the word for the type.
func (t BreakerType) String() string {
	switch t {
	case Spilling:
		return "spilling"
	case Plunging:
		return "plunging"
	case Surging:
		return "surging"
	}
	return "none"
}

// SurfSimilarity returns the surf similarity number, also Iribarren number, m/√(H/L0): the slope over the root of the
// steepness, from the height in metres and the period in seconds. With the deep-water height it is ξ0, with the height at
// breaking ξb: the limits of the breaker types differ, DeepBreakerType and ShoreBreakerType.
//
// Special cases are:
//
//	SurfSimilarity is NaN if the slope is negative, infinite or NaN, or the height or period is zero, negative, infinite or NaN
//
// Source: [CEM-II-4] Eq. II-4-1; [Battjes1974].
func (w Water) SurfSimilarity(slope, height, period float64) float64 {
	if !(slope >= 0 && finite(slope) && positive(height) && positive(period)) {
		return math.NaN()
	}
	return slope * period / math.Sqrt(height*(2*math.Pi)/w.g())
}

// DeepBreakerType returns the type of breaker from the surf similarity number with the deep-water height, ξ0: below 0.5
// spilling, above 3.3 surging or collapsing. The limits are soft.
//
// Special cases are:
//
//	DeepBreakerType(xi) = NoBreaker if xi is negative or NaN
//
// Source: [CEM-II-4] Eq. II-4-2; [Battjes1974] Table 1.
func DeepBreakerType(xi float64) BreakerType { return breakerType(xi, 0.5, 3.3) }

// ShoreBreakerType returns the type of breaker from the surf similarity number with the height at breaking, ξb: below 0.4
// spilling, above 2.0 surging or collapsing. The limits are soft.
//
// Special cases are:
//
//	ShoreBreakerType(xi) = NoBreaker if xi is negative or NaN
//
// Source: [Battjes1974] Table 1.
func ShoreBreakerType(xi float64) BreakerType { return breakerType(xi, 0.4, 2.0) }

func breakerType(xi, spilling, plunging float64) BreakerType {
	switch {
	case !(xi >= 0):
		return NoBreaker
	case xi < spilling:
		return Spilling
	case xi <= plunging:
		return Plunging
	}
	return Surging
}

// BreakerType returns how a wave of the deep-water height in metres and the period in seconds breaks on a beach of the slope
// (rise over run): DeepBreakerType of its SurfSimilarity.
//
// Special cases are:
//
//	BreakerType = NoBreaker where SurfSimilarity is NaN
//
// Source: [CEM-II-4] Eq. II-4-1 and II-4-2.
func (w Water) BreakerType(slope, deepHeight, period float64) BreakerType {
	return DeepBreakerType(w.SurfSimilarity(slope, deepHeight, period))
}

// WeggelIndex returns the height over depth at breaking; see Water.WeggelIndex, whose defaults it uses.
func WeggelIndex(breaker, period, slope float64) float64 {
	return Water{}.WeggelIndex(breaker, period, slope)
}

// WeggelHeight returns the breaker height in metres; see Water.WeggelHeight, whose defaults it uses.
func WeggelHeight(depth, period, slope float64) float64 {
	return Water{}.WeggelHeight(depth, period, slope)
}

// KomarGaughan returns the breaker height in metres; see Water.KomarGaughan, whose defaults it uses.
func KomarGaughan(deepHeight, period float64) float64 {
	return Water{}.KomarGaughan(deepHeight, period)
}

// Break returns where and how a wave breaks; see Water.Break, whose defaults it uses.
func Break(deepHeight, period, slope float64) Breaker {
	return Water{}.Break(deepHeight, period, slope)
}

// SurfSimilarity returns the surf similarity number; see Water.SurfSimilarity, whose defaults it uses.
func SurfSimilarity(slope, height, period float64) float64 {
	return Water{}.SurfSimilarity(slope, height, period)
}
