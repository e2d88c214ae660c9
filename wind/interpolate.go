package wind

import "math"

// Interpolate returns the wind the fraction f of the way from a to b.
//
// The speed is interpolated as a number, the direction as that of the
// interpolated vector:
//
//	Speed = (1−f)·a.Speed + f·b.Speed
//	From  = direction of (1−f)·a + f·b
//
// so that a turning wind loses no speed (the plain vector loses 29 % halfway
// through a right angle) and 350° to 10° goes through north. Through a calm
// the direction is that of the end that blows. Between exactly opposite winds
// it is a's until the two cancel and b's after: a reversal, for which no way
// round is right; [TurnOf] tells. The gust is interpolated where both ends
// have one.
//
// Special cases are:
//
//	all NaN if f is outside [0, 1] or NaN, or either wind is not known
//
// A convention of this package; the two halves of it are common practice.
func Interpolate(a, b Wind, f float64) Wind {
	if !(f >= 0 && f <= 1) || !a.known() || !b.known() {
		return Wind{math.NaN(), math.NaN(), math.NaN()}
	}
	switch f {
	case 0:
		return a.tidy()
	case 1:
		return b.tidy()
	}
	w := Wind{
		Speed: (1-f)*a.Speed + f*b.Speed,
		Gust:  math.NaN(),
		From:  math.NaN(),
	}
	if a.GustKnown() && b.GustKnown() {
		w.Gust = (1-f)*a.Gust + f*b.Gust
	}
	if w.Speed == 0 {
		return w
	}
	va, vb := a.Velocity(), b.Velocity()
	v := va.Times(1 - f).Add(vb.Times(f))
	// A resultant this small is rounding: the winds cancel.
	if v.Speed() <= 1e-12*w.Speed {
		w.From = a.tidy().From
		return w
	}
	w.From = v.Wind().From
	return w
}

// known reports whether the wind has a speed, and a direction if it blows.
func (w Wind) known() bool {
	return w.Speed == 0 || w.Speed > 0 && finite(w.Speed) && finite(w.From)
}

// tidy returns the wind with what is unknown as NaN.
func (w Wind) tidy() Wind {
	if !w.GustKnown() {
		w.Gust = math.NaN()
	}
	if w.Speed == 0 {
		w.From = math.NaN()
	}
	return w
}
