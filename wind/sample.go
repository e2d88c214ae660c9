package wind

import (
	"fmt"
	"math"
	"time"
)

// Temperature is a temperature that may be unknown. The zero value is
// unknown, so that a forgotten temperature is not freezing point.
type Temperature struct {
	celsius float64
	known   bool
}

// Celsius returns the known temperature t in degrees Celsius. A t that is not
// a number, or outside −90 to 60, makes an unknown one.
func Celsius(t float64) Temperature {
	if !(t >= -90 && t <= 60) {
		return Temperature{}
	}
	return Temperature{t, true}
}

// Celsius returns the temperature in degrees Celsius, NaN if unknown.
func (t Temperature) Celsius() float64 {
	if !t.known {
		return math.NaN()
	}
	return t.celsius
}

// Known reports whether there is a temperature.
func (t Temperature) Known() bool { return t.known }

// Equal reports whether both are unknown or both the same.
func (t Temperature) Equal(u Temperature) bool { return t == u }

// String prints "12.5 °C", or "unknown".
func (t Temperature) String() string {
	if !t.known {
		return "unknown"
	}
	return fmt.Sprintf("%.1f °C", t.celsius)
}

// Sample is the wind at an instant, with the temperatures of air and water
// where the record has them. Whether Time is the end of the averaging time
// (as with most stations) or its middle is the record's own affair; over the
// hours that matter to a sea it is lost in the noise.
type Sample struct {
	Time time.Time
	Wind
	Air   Temperature
	Water Temperature
}

// AirMinusWater returns the temperature of the air less that of the water, in
// kelvins: negative is unstable, the wind mixes down and raises more sea;
// above about +2 the air is stable and every growth law over-predicts.
//
// Special cases are:
//
//	NaN if either temperature is unknown
func (s Sample) AirMinusWater() float64 { return s.Air.Celsius() - s.Water.Celsius() }
