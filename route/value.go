package route

import (
	"encoding/json"
	"math"
)

// Or returns the number, or other when it is unknown.
func (v Value) Or(other float64) float64 {
	if !v.known {
		return other
	}
	return v.v
}

// Number returns the number; NaN when it is unknown.
func (v Value) Number() float64 { return v.Or(math.NaN()) }

// MarshalJSON writes the number, or null when it is unknown.
func (v Value) MarshalJSON() ([]byte, error) {
	if !v.known {
		return []byte("null"), nil
	}
	return json.Marshal(v.v)
}

// UnmarshalJSON reads a number, or null for unknown.
func (v *Value) UnmarshalJSON(b []byte) error {
	if string(b) == "null" {
		*v = Value{}
		return nil
	}
	var x float64
	if err := json.Unmarshal(b, &x); err != nil {
		return err
	}
	*v = Known(x)
	return nil
}

func finite(x float64) bool { return math.Abs(x) <= math.MaxFloat64 }
