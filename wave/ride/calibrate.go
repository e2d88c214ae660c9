package ride

import (
	"errors"
	"fmt"
	"math"
)

// Errors of limits and calibration.
var (
	// ErrLimits marks a threshold that is no threshold.
	ErrLimits = errors.New("ride: bad limit")
	// ErrCalibration marks an observation that no resistance explains.
	ErrCalibration = errors.New("ride: cannot be calibrated")
)

func (l Limits) check() error {
	for _, f := range [...]struct {
		name  string
		value float64
	}{
		{"PearlingSteepness", l.PearlingSteepness},
		{"PearlingReach", l.PearlingReach},
		{"Overrun", l.Overrun},
		{"QuarterFrom", l.QuarterFrom},
		{"QuarterTo", l.QuarterTo},
		{"QuarterSteepness", l.QuarterSteepness},
		{"QuarterSpeed", l.QuarterSpeed},
		{"BumpSteepness", l.BumpSteepness},
		{"SeaSteepness", l.SeaSteepness},
		{"Confusion", l.Confusion},
		{"CrossingFrom", l.CrossingFrom},
		{"CrossingTo", l.CrossingTo},
		{"CrossingSteepness", l.CrossingSteepness},
	} {
		if !(f.value >= 0) || math.IsInf(f.value, 1) {
			return fmt.Errorf("%w: %s %v is outside 0 to infinity", ErrLimits, f.name, f.value)
		}
	}
	return nil
}

// The resistance may be moved between these parts of its prior.
const calibrateLow, calibrateHigh = 0.3, 3.0

// WithSprintPower returns the paddler with the resistance that an effective
// power of watts at the Sprint speed means: Drag such that R(v) v is that
// power. Effective is what moves the board: about 0.7 of the power at the
// paddle. Proposal, no published source.
//
// Errors: those of [Paddler.Resolved]; [ErrCalibration] if Drag would be
// outside 0.3 to 3 times its prior, watts NaN included.
func (p Paddler) WithSprintPower(watts float64) (Paddler, error) {
	r, err := p.Resolved()
	if err != nil {
		return Paddler{}, err
	}
	prior, err := p.prior()
	if err != nil {
		return Paddler{}, err
	}
	v := r.Sprint
	x := v / r.Bend
	k := watts * math.Sqrt(1+x*x) / (v * v * v)
	if !(k >= calibrateLow*prior && k <= calibrateHigh*prior) {
		return Paddler{}, fmt.Errorf("%w: %v W at %v m/s is a resistance of %.3g N s2/m2, outside %.3g to %.3g", ErrCalibration, watts, v, k, calibrateLow*prior, calibrateHigh*prior)
	}
	r.Drag = k
	return r, nil
}

// WithDownwindMean returns the paddler with the resistance that makes the mean
// speed in a known sea the speed observed, in m/s through the water. Of all the
// parameters the resistance is moved because it is both uncertain and strong;
// whatever else was wrong, the sea included, ends up in it.
// Proposal, no published source.
//
// Errors: those of [Paddler.Resolved] and [Prepared.Sea]; [ErrCalibration] if
// no Drag from 0.3 to 3 times its prior gives that speed.
func (p Paddler) WithDownwindMean(sea Sea, speed float64) (Paddler, error) {
	r, err := p.Resolved()
	if err != nil {
		return Paddler{}, err
	}
	prior, err := p.prior()
	if err != nil {
		return Paddler{}, err
	}
	if err := sea.check(); err != nil {
		return Paddler{}, err
	}
	at := func(drag float64) float64 {
		q := r
		q.Drag = drag
		return prepareBare(q).meanSpeed(sea)
	}
	// Less resistance is never slower, but for the last digits.
	lo, hi := calibrateLow*prior, calibrateHigh*prior
	fast, slow := at(lo), at(hi)
	if !(speed <= fast && speed >= slow) {
		return Paddler{}, fmt.Errorf("%w: a mean of %v m/s in this sea is outside %.3g to %.3g m/s", ErrCalibration, speed, slow, fast)
	}
	lo, hi = halve(lo, hi, 1e-9, func(drag float64) bool { return at(drag) < speed })
	r.Drag = (lo + hi) / 2
	return r, nil
}

// prior is the resistance of the paddler if it were not given.
func (p Paddler) prior() (float64, error) {
	p.Drag = 0
	r, err := p.Resolved()
	return r.Drag, err
}
