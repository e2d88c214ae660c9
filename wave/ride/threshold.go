package ride

import "math"

// Linearising T − R about the wave speed turns the surge equation into a damped
// pendulum under a constant torque,
//
//	x″ + β x′ + sin x = I
//
// with I = −G(c)/F, the load, and β = b/√(F k M), the damping. An equilibrium
// on the wave exists for |I| ≤ 1: the board can hold. Below I_h(β) no running
// solution is left and surf-riding is inevitable, whatever the timing. Between
// the two it depends on speed and phase when the wave arrives, which is where
// paddlers do their work.

// PendulumThreshold returns the load I below which the damped, loaded pendulum
// of damping β has no running solution left: the second threshold of
// surf-riding.
//
//	I = 4β/π − 0.31634 β³ + 0.00749 β⁵    β < 1.193
//	I = 1                                 β ≥ 1.193
//
// The cubic and quintic terms are a fit of this library to shooting solutions,
// within 8.2e-5 of them; the first term is the low-damping limit. Paddled
// boards have β of 0.5 to 1, where the low-damping form of the ship rules
// ([MelnikovThreshold]) is wrong.
// Proposal, no published source for the polynomial.
//
// Special cases are:
//
//	PendulumThreshold(β) = NaN for β < 0 or NaN
//
// Source: [Tricomi1933] critical damping 1.193 (memory).
func PendulumThreshold(damping float64) float64 {
	switch b := damping; {
	case b >= criticalDamping:
		return 1
	case b >= 0:
		b2 := b * b
		return b * (4/math.Pi + b2*(-0.31634+0.00749*b2))
	}
	return math.NaN()
}

// criticalDamping is the damping of the loaded pendulum above which holding
// and inevitable surf-riding are one threshold.
const criticalDamping = 1.193

// MelnikovThreshold returns 4β/π, the low-damping limit of
// [PendulumThreshold] that the ship criteria use.
//
// It is kept to show the difference: for a paddled board it can call riding
// inevitable where no equilibrium exists at all.
//
// Special cases are:
//
//	MelnikovThreshold(β) = NaN for β < 0 or NaN
//
// Source: [GuckenheimerHolmes1983] (memory); [Strogatz1994] 8.5 (memory).
func MelnikovThreshold(damping float64) float64 {
	if !(damping >= 0) {
		return math.NaN()
	}
	return 4 / math.Pi * damping
}

// MelnikovSpeed returns the flat-water speed in m/s above which the low-damping
// theory calls surf-riding inevitable, for a square resistance law and constant
// thrust.
//
//	v = √(c² − (4/π) c q + q²/2)    q = 2 √(F / (k M))
//
// celerity c is the wave speed and surf q the speed of the separatrix, both in
// m/s. Ship formula: for a paddled board the answer can lie below the speed at
// which the wave can be held at all.
//
// Special cases are:
//
//	MelnikovSpeed = NaN for c or q < 0, infinite or NaN
//
// Derived in this library from the mean of T − R over the separatrix.
func MelnikovSpeed(celerity, surf float64) float64 {
	if !(celerity >= 0 && surf >= 0) || math.IsInf(celerity, 1) || math.IsInf(surf, 1) {
		return math.NaN()
	}
	// The discriminant (16/π² − 2) q² of c is negative: always a root.
	return math.Sqrt(celerity*celerity - 4/math.Pi*celerity*surf + surf*surf/2)
}

// SeparatrixMoment returns the mean of sinⁿ over a half turn, the weight of the
// nth power of the surge speed in the low-damping threshold.
//
//	Γ((n+1)/2) / (√π Γ(n/2 + 1)):  1, 2/π, 1/2, 4/3π, 3/8, 16/15π ...
//
// 2ⁿ·2π times it are the coefficients 2π, 8, 4π, 64/3, 12π, 1024/15 of the
// level 2 criterion for ships.
//
// Special cases are:
//
//	SeparatrixMoment(n) = NaN for n < 0
func SeparatrixMoment(n int) float64 {
	if n < 0 {
		return math.NaN()
	}
	m := 1.0
	if n%2 == 1 {
		m = 2 / math.Pi
	}
	for i := n; i > 1; i -= 2 {
		m *= float64(i-1) / float64(i)
		if m == 0 { // n beyond what a float64 tells from zero
			break
		}
	}
	return m
}

// ShipSpeedLimit returns the speed in m/s above which the guidance to ship
// masters expects surf-riding, for a waterline of length m and a heading off
// degrees from dead before the waves.
//
//	V = 1.8 √L / cos(off)  knots
//
// Every downwind paddler is above it: it marks the regime, it is no alarm.
//
// Special cases are:
//
//	ShipSpeedLimit = NaN for length ≤ 0, |off| ≥ 90, or either infinite or NaN
//
// Source: [MSC-1228] 4.2.1 (memory).
func ShipSpeedLimit(length, off float64) float64 {
	if !(length > 0) || math.IsInf(length, 1) || !(math.Abs(off) < 90) {
		return math.NaN()
	}
	return 1.8 * math.Sqrt(length) / math.Cos(off*(math.Pi/180)) * Knot
}

// Knot is one knot in m/s.
const Knot = 1852.0 / 3600
