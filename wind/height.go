package wind

import "math"

// From the height of an anemometer to 10 m, in neutral air.
//
// Which one: from a mast or buoy at 3 to 20 m over open water, the log law
// with Smith 1988 or Large and Pond; the power 0.11 where one line must do;
// 1/7 over land only. From 5 m up to 10 the factors at 10 m/s are 1.067, 1.063,
// 1.079 and 1.104. A forecast is at 10 m already: do not convert it twice. A
// hand-held reading at 1.5 m on the open water is some 15 to 20 % below U10,
// on a beach it is of no use.

// Exponents of the power law.
const (
	// SeaExponent is for the open sea in near-neutral air. Source: [Hsu1994], from memory.
	SeaExponent = 0.11
	// LandExponent is the one-seventh rule, of engineering manuals for near 10 m.
	// Source: [CEM-II-2] eq. II-2-9.
	LandExponent = 1.0 / 7
)

// Power returns the speed at the height to, from the speed at the height
// from, both in m above the surface, by the power law
//
//	U(to) = U(from) · (to/from)^p
//
// with p [SeaExponent] or [LandExponent]. The manuals keep it to heights below
// 20 m (the one-seventh rule to 8–12 m) and near-neutral air.
//
// Special cases are:
//
//	NaN for a negative speed, a height of zero or less, a p outside −1 to 1, or NaN
//
// Source: [CEM-II-2] eq. II-2-9.
func Power(speed, from, to, p float64) float64 {
	if !validSpeed(speed) || !validHeight(from) || !validHeight(to) || !(p >= -1 && p <= 1) {
		return math.NaN()
	}
	return speed * math.Pow(to/from, p)
}

func validHeight(z float64) bool { return z > 0 && finite(z) }

// Log returns the speed at the height to from the speed at the height from by
// the logarithmic law over a surface of the given roughness, all in m:
//
//	U(to) = U(from) · ln(to/z0) / ln(from/z0)
//
// Over water z0 is 0.1 to 1 mm and grows with the wind: [ToHeight] and [Charnock]
// find it. Over land it is centimetres to metres.
//
// Special cases are:
//
//	NaN for a negative speed, a height of zero or less, a roughness outside
//	0 (not included) to the lower height (not included), or NaN
//
// Source: [CEM-II-2] characteristics of near-surface winds, logarithmic profile.
func Log(speed, from, to, roughness float64) float64 {
	if !validSpeed(speed) || !validHeight(from) || !validHeight(to) || !(roughness > 0 && roughness < math.Min(from, to)) {
		return math.NaN()
	}
	return speed * math.Log(to/roughness) / math.Log(from/roughness)
}

// Profile is a wind moved to another height, with the profile it was moved along.
type Profile struct {
	Speed    float64 // m/s at the height asked for
	U10      float64 // m/s at 10 m
	Friction float64 // u*, m/s
	Drag     float64 // neutral, referred to 10 m
}

// ToHeight returns the wind speed at the height to, in m, from that at the height
// from, by the logarithmic law with a drag law at 10 m:
//
//	U(z) = U10 + (u*/κ) ln(z/10),  u* = √CD(U10) · U10,  κ = 0.40
//
// U10 is solved for. Neutral air over open water. Good to the scatter of the
// drag laws, under 1 % for heights of 3 to 30 m.
//
// Special cases are:
//
//	zero speed gives zero throughout
//	all NaN for a negative speed, a height of zero or less, NaN, or where the
//	law and the height have no solution
//
// It panics if law is nil.
//
// Source: [Beardsley1999] routines spshftlp and spshftve.
func ToHeight(speed, from, to float64, law DragLaw) Profile {
	if law == nil {
		panic("wind: ToHeight without a drag law")
	}
	bad := Profile{math.NaN(), math.NaN(), math.NaN(), math.NaN()}
	if !validSpeed(speed) || !validHeight(from) || !validHeight(to) {
		return bad
	}
	if speed == 0 {
		return Profile{Drag: law(0)}
	}
	a := math.Log(from/10) / Karman
	u10 := speed
	// The iteration converges by a factor of about 10 a pass; 60 is a bound,
	// not an expectation.
	for range 60 {
		next := speed / (1 + a*math.Sqrt(law(u10)))
		done := math.Abs(next-u10) <= 1e-13*speed
		u10 = next
		if done {
			break
		}
	}
	if !(u10 > 0 && finite(u10)) {
		return bad
	}
	cd := law(u10)
	ustar := math.Sqrt(cd) * u10
	out := Profile{Speed: u10 + ustar/Karman*math.Log(to/10), U10: u10, Friction: ustar, Drag: cd}
	if !(out.Speed >= 0) {
		return bad
	}
	return out
}

// Charnock is the log law over a sea whose roughness grows with the wind:
//
//	z0 = α u*²/g + 0.11 ν/u*
//
// The second term, for the smooth flow of light winds, counts where Viscosity
// is given. A zero Alpha means 0.011, a zero Gravity [Gravity], a zero Karman
// 0.40, a zero Viscosity none.
//
// Values of α in use: 0.011 open sea (Smith 1988), 0.0144 (Garratt 1977 with
// κ = 0.41), 0.018 coastal and fetch-limited, 0.0185 (Wu 1980).
type Charnock struct {
	Alpha     float64
	Gravity   float64 // m/s²
	Karman    float64
	Viscosity float64 // kinematic, of air, m²/s; see AirViscosity
}

// Smith1988 returns Smith's 1988 law for the open sea: α = 0.011 with the
// smooth-flow term at the given air temperature in degrees Celsius. It gives
// NaN throughout for a temperature that is not one.
//
// Source: [Beardsley1999] routine cdntc, after Smith (1988).
func Smith1988(airCelsius float64) Charnock {
	return Charnock{Alpha: 0.011, Viscosity: AirViscosity(airCelsius)}
}

// AirViscosity returns the kinematic viscosity of dry air in m²/s at a
// temperature in degrees Celsius, at sea level:
//
//	ν = 1.326·10⁻⁵ (1 + 6.542·10⁻³ t + 8.301·10⁻⁶ t² − 4.84·10⁻⁹ t³)
//
// Special cases are:
//
//	NaN outside −90 to 60 °C, or NaN
//
// Source: [Beardsley1999] routine viscair, after Andreas (1989).
func AirViscosity(celsius float64) float64 {
	if !(celsius >= -90 && celsius <= 60) {
		return math.NaN()
	}
	t := celsius
	return 1.326e-5 * (1 + t*(6.542e-3+t*(8.301e-6-t*4.84e-9)))
}

func (c Charnock) filled() Charnock {
	if c.Alpha == 0 {
		c.Alpha = 0.011
	}
	if c.Gravity == 0 {
		c.Gravity = Gravity
	}
	if c.Karman == 0 {
		c.Karman = Karman
	}
	return c
}

func (c Charnock) valid() bool {
	return c.Alpha > 0 && c.Alpha < 1 && c.Gravity > 0 && finite(c.Gravity) &&
		c.Karman > 0 && c.Karman < 1 && c.Viscosity >= 0 && c.Viscosity < 1
}

// Roughness returns z0 in m for a friction speed in m/s.
//
// Special cases are:
//
//	NaN for a friction speed of zero or less, an infinity, NaN or a field out of range
//
// Source: [Beardsley1999] routine cdntc; [Smith1988].
func (c Charnock) Roughness(friction float64) float64 {
	c = c.filled()
	if !c.valid() || !(friction > 0 && finite(friction)) {
		return math.NaN()
	}
	return c.Alpha*friction*friction/c.Gravity + 0.11*c.Viscosity/friction
}

// Friction returns u* in m/s from the speed in m/s at a height in m.
//
// Special cases are:
//
//	zero for zero speed
//	NaN for a negative speed, a height of zero or less, NaN, a field out of
//	range, or a sea rougher than the height is high
//
// Source: [Beardsley1999] routine cdntc.
func (c Charnock) Friction(speed, height float64) float64 {
	c = c.filled()
	if !c.valid() || !validSpeed(speed) || !validHeight(height) {
		return math.NaN()
	}
	if speed == 0 {
		return 0
	}
	// Solved for u* with f(u*) = u*·ln(z/z0(u*)) − κU, which rises over the
	// physical branch (z0 well below z): Newton steps, kept in a bracket by
	// bisection, bounded at 100.
	f := func(u float64) (v, slope float64) {
		z0 := c.Roughness(u)
		l := math.Log(height / z0)
		dz := 2*c.Alpha*u/c.Gravity - 0.11*c.Viscosity/(u*u)
		return u*l - c.Karman*speed, l - u*dz/z0
	}
	lo, hi := 0.0, speed*c.Karman
	u := math.Sqrt(1.2e-3) * speed
	for range 100 {
		v, slope := f(u)
		if !finite(v) {
			return math.NaN()
		}
		if v > 0 {
			hi = u
		} else {
			lo = u
		}
		next := u - v/slope
		if next != u && !(next > lo && next < hi) { // a step of nothing is the root, not a reason to leave it
			next = (lo + hi) / 2
		}
		done := math.Abs(next-u) <= 1e-14*u
		u = next
		if done {
			break
		}
	}
	// A root is only one on the branch where the log law holds.
	if v, slope := f(u); !(math.Abs(v) <= 1e-9*c.Karman*speed && slope > 0) {
		return math.NaN()
	}
	return u
}

// ToHeight returns the wind at the height to from that at the height from, in m,
// with the sea's own roughness at that wind:
//
//	U(z) = (u*/κ) ln(z/z0)
//
// Special cases are those of [Charnock.Friction].
//
// Source: [Beardsley1999] routine spshfttc.
func (c Charnock) ToHeight(speed, from, to float64) Profile {
	c = c.filled()
	u := c.Friction(speed, from)
	if u == 0 && validHeight(to) {
		return Profile{}
	}
	z0 := c.Roughness(u)
	if !(z0 < to) || !finite(to) || !(z0 < 10) {
		return Profile{math.NaN(), math.NaN(), math.NaN(), math.NaN()}
	}
	k := c.Karman / math.Log(10/z0)
	return Profile{
		Speed:    u / c.Karman * math.Log(to/z0),
		U10:      u / c.Karman * math.Log(10/z0),
		Friction: u,
		Drag:     k * k,
	}
}

// Drag returns the neutral drag coefficient for a speed at 10 m, so that a
// Charnock sea can stand where a [DragLaw] is asked for.
//
// Special cases are:
//
//	Drag(0) = 0
//	otherwise those of [Charnock.Friction]
//
// Source: [Beardsley1999] routine cdntc.
func (c Charnock) Drag(u10 float64) float64 { return c.ToHeight(u10, 10, 10).Drag }
