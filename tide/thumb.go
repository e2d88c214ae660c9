package tide

import "math"

// Between slack and maximum a reversing stream follows the sine,
//
//	v = vmax sin(90° t/T)
//
// and the trade has two rules for it:
//
//	50/90     at thirds of the quarter 0, 50, 90, 100 % of the maximum; the sine gives
//	          50.0 and 86.6 %: the rule is 3.9 % high at the second third
//	thirds    mean rate of each sixth from slack to slack 1, 2, 3, 3, 2, 1 thirds of
//	          the maximum; the sine gives 0.256, 0.699, 0.955: a drift 4.7 % long

// Sine returns the share of the maximum rate at the share x of the time from
// slack to maximum: sin(90° x).
//
// Special cases are:
//
//	Sine(x) = NaN for x outside [0, 1] or NaN
//
// Source: [NAVEDTRA14220] ch. 7, velocity of current at any time.
func Sine(x float64) float64 {
	if !(x >= 0 && x <= 1) {
		return math.NaN()
	}
	return math.Sin(math.Pi / 2 * x)
}

// FiftyNinety returns the share of the maximum rate at the share x of the time
// from slack to maximum by the 50/90 rule: 0, 0.5, 0.9 and 1 at the thirds,
// straight between. It is at most 3.4 % of the maximum off the sine, at x = 2/3.
//
// Special cases are:
//
//	FiftyNinety(x) = NaN for x outside [0, 1] or NaN
//
// Source: [Jamieson2009] p. 110.
func FiftyNinety(x float64) float64 {
	switch {
	case !(x >= 0 && x <= 1):
		return math.NaN()
	case x <= 1.0/3:
		return 1.5 * x
	case x <= 2.0/3:
		return 0.5 + 1.2*(x-1.0/3)
	}
	return 0.9 + 0.3*(x-2.0/3)
}

// Thirds returns the mean rate, as a share of the maximum, in the sixth of the
// stream (slack to slack) that holds the share x, by the rule of thirds: 1, 2, 3, 3, 2, 1
// thirds. The thirds are of the maximum RATE, not of the distance.
//
// Special cases are:
//
//	Thirds(x) = NaN for x outside [0, 1] or NaN
//
// Source: [ThirdsRule] lists.
func Thirds(x float64) float64 {
	if !(x >= 0 && x <= 1) {
		return math.NaN()
	}
	return [6]float64{1, 2, 3, 3, 2, 1}[sixth(6*x)] / 3
}

// ThirdsDrift returns how far the water runs from slack to the share x of the stream
// by the rule of thirds, in units of maximum rate times the duration from
// slack to slack.
//
// Special cases are:
//
//	ThirdsDrift(x) = NaN for x outside [0, 1] or NaN
//
// Source: [ThirdsRule] lists.
func ThirdsDrift(x float64) float64 { return steps(&thirds, x) / 18 }

// thirds is the running sum of 1 2 3 3 2 1.
var thirds = [7]float64{0, 1, 3, 6, 9, 11, 12}

// SineDrift returns how far the water runs from slack to the share x of the
// stream by the sine, in units of maximum rate times the duration from slack to slack:
//
//	(1 − cos πx) / π
//
// 2/π in all.
//
// Special cases are:
//
//	SineDrift(x) = NaN for x outside [0, 1] or NaN
//
// Source: integral of [NAVEDTRA14220] ch. 7.
func SineDrift(x float64) float64 { return 2 / math.Pi * Cosine(x) }

// WeakStream returns for how long around slack, in seconds, a stream runs no
// faster than the limit, from the maximum rate (one unit for both) and the
// seconds from slack to slack:
//
//	2 (Th/π) asin(limit/maximum)
//
// half of it before the slack and half after, when both maxima are alike.
// NOAA's table of it is reproduced with Th = 6 h.
//
// Special cases are:
//
//	WeakStream = Th for a limit at or above the maximum
//	WeakStream = NaN for a limit negative or NaN, a maximum or a duration not positive and finite
//
// Source: [NOAA-Currents] table 4 (duration of slack).
func WeakStream(limit, maximum, slackToSlack float64) float64 {
	if !(limit >= 0 && maximum > 0 && slackToSlack > 0) || math.IsInf(maximum, 0) || math.IsInf(slackToSlack, 0) || math.IsInf(limit, 0) {
		return math.NaN()
	}
	return 2 * slackToSlack / math.Pi * math.Asin(math.Min(1, limit/maximum))
}

// An Ellipse is one constituent of a rotary stream: the amplitudes of its east
// and north parts in m/s and their phase lags in degrees.
type Ellipse struct {
	East, EastLag   float64
	North, NorthLag float64
}

// Velocity returns the stream at the phase in degrees:
//
//	u = U cos(phase − g1),  v = V cos(phase − g2)
//
// Special cases are:
//
//	Velocity = {NaN, NaN} if the phase or a field is NaN or infinite
func (e Ellipse) Velocity(phase float64) Velocity {
	v := Velocity{e.East * math.Cos((phase-e.EastLag)*math.Pi/180), e.North * math.Cos((phase-e.NorthLag)*math.Pi/180)}
	if math.IsNaN(v.East+v.North) || math.IsInf(v.East, 0) || math.IsInf(v.North, 0) {
		return Velocity{math.NaN(), math.NaN()}
	}
	return v
}

// Axes returns the greatest and the least rate of the ellipse in m/s, the direction
// of the greatest in degrees true in [0, 180), and whether the stream turns
// clockwise. A rotary stream has no slack: its weakest is the minor axis. With u +
// iv as two circles, one turning each way,
//
//	major = |W+| + |W−|,  minor = ||W+| − |W−||,  clockwise when |W−| > |W+|
//
// Special cases are:
//
//	Axes = NaN, NaN, NaN, false if a field is NaN or infinite
//
// Source: [Foreman1978] section on current ellipses.
func (e Ellipse) Axes() (major, minor, direction float64, clockwise bool) {
	s1, c1 := math.Sincos(e.EastLag * math.Pi / 180)
	s2, c2 := math.Sincos(e.NorthLag * math.Pi / 180)
	// u = Re(a e^{iφ}), v = Re(b e^{iφ}) with a = U e^{−ig1}, b = V e^{−ig2};
	// u + iv = ((a + ib)/2) e^{iφ} + conj((a − ib)/2) e^{−iφ}.
	a, b := complex(e.East*c1, -e.East*s1), complex(e.North*c2, -e.North*s2)
	p, q := (a+1i*b)/2, (a-1i*b)/2
	rp, rq := math.Hypot(real(p), imag(p)), math.Hypot(real(q), imag(q))
	if math.IsNaN(rp+rq) || math.IsInf(rp+rq, 0) {
		return math.NaN(), math.NaN(), math.NaN(), false
	}
	// The two circles are in line at the half sum of p's angle and minus q's.
	angle := (math.Atan2(imag(p), real(p)) - math.Atan2(imag(q), real(q))) / 2
	deg := math.Mod(450-angle*180/math.Pi, 180)
	if deg < 0 {
		deg += 180
	}
	return rp + rq, math.Abs(rp - rq), deg, rq > rp
}
