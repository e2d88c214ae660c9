package route

import (
	"math"

	"followingsea.example/internal/angle"
)

// sincosd returns the sine and cosine of an angle in degrees. The quadrant is
// taken off in degrees, where it is exact, so that the sine of 180 is 0 and a
// course of 90 has no northing. NaN for NaN and infinities.
func sincosd(deg float64) (sin, cos float64) {
	if !finite(deg) {
		return math.NaN(), math.NaN()
	}
	q := math.RoundToEven(math.Mod(deg, 360) / 90)
	r := math.Mod(deg, 360) - 90*q
	sin, cos = math.Sincos(r * (math.Pi / 180))
	switch int(q) & 3 {
	case 1:
		sin, cos = cos, -sin
	case 2:
		sin, cos = -sin, -cos
	case 3:
		sin, cos = -cos, sin
	}
	return sin + 0, cos + 0
}

// atan2d returns the angle of a vector in degrees in [-180, 180], exact on
// the axes and near them.
func atan2d(y, x float64) float64 {
	q := 0
	if math.Abs(y) > math.Abs(x) {
		x, y = y, x
		q = 2
	}
	if math.Signbit(x) {
		x = -x
		q++
	}
	a := math.Atan2(y, x) * (180 / math.Pi)
	switch q {
	case 1:
		return math.Copysign(180, y) - a
	case 2:
		return 90 - a
	case 3:
		return -90 + a
	}
	return a
}

// settle rounds off the part of a small angle that is finer than a rounding of
// one sixteenth of a degree. An angle of 1e-160 degrees, whose square is no
// number, becomes 0; nothing a millionth of an atom across is lost.
func settle(deg float64) float64 {
	const z = 1.0 / 16
	y := math.Abs(deg)
	if y < z {
		y = z - (z - y)
	}
	return math.Copysign(y, deg)
}

func wrapDeg(deg float64) float64 { return angle.Wrap(deg) }

// diffLon returns b - a for two longitudes, in [-180, 180], and what the
// subtraction rounded off, so that a short line far from Greenwich loses
// nothing.
func diffLon(a, b float64) (d, rest float64) {
	a, b = math.Remainder(a, 360), math.Remainder(b, 360)
	d, rest = twoSum(-a, b)
	if d > 180 || d <= -180 {
		e := d - math.Copysign(360, d)
		d, rest = twoSum(e, rest)
	}
	return d, rest
}

// twoSum returns a + b and the rounding of that sum (Knuth).
func twoSum(a, b float64) (sum, rest float64) {
	sum = a + b
	t := sum - a
	return sum, (a - (sum - t)) + (b - t)
}
