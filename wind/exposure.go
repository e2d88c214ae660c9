package wind

import (
	"errors"
	"fmt"
)

// ErrExposure is a factor or band out of range or out of order.
var ErrExposure = errors.New("wind: exposure out of range")

// Exposure is what somebody who knows the place says of the wind on one leg
// against the wind of the forecast: 0.6 in the lee of an island, 1.3 off a
// headland; with the band they would bet on. The zero value is the open: 1.
type Exposure struct {
	Low, Mid, High float64
}

// NewExposure returns the exposure mid with its band. The error is ErrExposure
// unless 0 < low ≤ mid ≤ high ≤ 3.
func NewExposure(low, mid, high float64) (Exposure, error) {
	if !(low > 0 && low <= mid && mid <= high && high <= 3) {
		return Exposure{}, fmt.Errorf("%w: low %v, mid %v, high %v: want 0 < low ≤ mid ≤ high ≤ 3", ErrExposure, low, mid, high)
	}
	return Exposure{low, mid, high}, nil
}

// Exposed is a wind on a leg with its band.
type Exposed struct {
	Low, Mid, High Wind
}

// On returns the wind of a forecast as the leg has it, with its band. The
// direction stays. A factor above one is applied to the gust too; one below is
// not: a lee takes the mean wind away, and leaves the gusts that fall into it.
// The wind of a literal Exposure that NewExposure would refuse is not known.
func (e Exposure) On(w Wind) Exposed {
	if e == (Exposure{}) {
		e = Exposure{1, 1, 1}
	}
	if _, err := NewExposure(e.Low, e.Mid, e.High); err != nil || !w.known() {
		bad := Wind{nan, nan, nan}
		return Exposed{bad, bad, bad}
	}
	apply := func(k float64) Wind {
		out := w.tidy()
		out.Speed *= k
		if k > 1 {
			out.Gust *= k
		}
		return out
	}
	return Exposed{apply(e.Low), apply(e.Mid), apply(e.High)}
}
