package ride

import (
	"fmt"
	"math"
)

// System is one train of irregular waves: a wind sea or a swell, as a spectrum
// of the JONSWAP shape.
type System struct {
	Hs    float64 // m, 4√m0; 0 for no such system
	Tp    float64 // s, peak
	Gamma float64 // peak enhancement, 1 to 10; 0 for 3.3
	Off   float64 // degrees from the course to the direction it travels, positive to the right
}

// Sea is what a board runs through. Zero systems are no waves.
type Sea struct {
	WindSea System  // waves with the short ones on them: a tail of high frequencies
	Swell   System  // waves come from afar: nothing above 1.8 of the peak frequency
	Wind    float64 // m/s at 10 m height along the course, positive from astern
	Current float64 // m/s along the course, positive with the board
	Depth   float64 // m; math.Inf(1) for deep water
	Gravity float64 // m/s²; 0 for 9.80665
}

// Remark is a set of conditions under which a number is less than it seems.
type Remark uint16

// The remarks.
const (
	FromAhead      Remark = 1 << iota // a wave system comes from abeam or ahead; what it costs is not counted
	FromAbeam                         // a wave system comes from more than 45 degrees off astern, beyond what the model is meant for
	AgainstCurrent                    // part of the waves cannot exist against the current
	SteepSea                          // Hs over the peak length above 0.05: crests break and the theory of small waves fails
	FastBumps                         // bumps ridden faster than 7 m/s, beyond what the resistance was anchored on
	ShallowWater                      // a peak longer than six depths, where waves of all periods run alike and Speed is off by up to a quarter, or Hs above a third of the depth
	HeadWind                          // wind from ahead
)

// String lists the remarks in words.
func (r Remark) String() string {
	names := [...]string{"waves from ahead not counted", "waves from the beam", "waves blocked by the current", "steep sea", "faster than anchored", "shallow water", "head wind"}
	out := ""
	for i, n := range names {
		if r&(1<<i) != 0 {
			if out != "" {
				out += ", "
			}
			out += n
		}
	}
	if out == "" {
		return "none"
	}
	return out
}

// Ride is what a sea brings one paddler.
//
// Proposal, no published source. The closed form stands in for a time-domain
// simulation ([Paddler.Simulate]); the documentation of the package tells how
// far apart the two are.
type Ride struct {
	Standing    string  // Standing, the constant: a proposal
	Speed       float64 // m/s, mean through the water, sprinting on the faces
	Spread      float64 // m/s, one standard deviation of Speed over an hour
	OverGround  float64 // m/s, Speed and the current
	FlatSpeed   float64 // m/s, cruise with this wind, no waves
	SprintSpeed float64 // m/s, sprint with this wind, no waves
	Gain        float64 // m/s, Speed − FlatSpeed

	LongestPeriod   float64 // s, longest wave that can be held at a slope ak of 0.15; 0 if none longer than the shortest, at most 30
	LongestCelerity float64 // m/s, its speed
	RideableHs      float64 // m, 4√m0 of the waves no longer than that
	RideablePeriod  float64 // s, their mean period Tm01
	EnergyShare     float64 // their part of the energy of the sea
	DominantCatch   float64 // m, height that catches a wave of the peak period, however long it takes; 0, as DominantShare, where the board is faster or bridges it
	DominantShare   float64 // part of the waves of the peak period that have it
	WaveShare       float64 // part of the waves of the rideable band, as the board meets them, that a sprint under way catches
	RidingShare     float64 // part of the time faster than a sprint on flat water in this wind
	CatchesPerHour  float64 // times an hour the board rises through that speed; within a factor of two
	Life            float64 // s, mean time above it
	RidingSpeed     float64 // m/s, mean speed meanwhile
	SpeedWander     float64 // m/s, standard deviation of the speed of the board from moment to moment
	Sprinting       float64 // part of the time on faces steep enough for a sprint
	Remarks         Remark
}

func (s System) check(name string) error {
	bad := func(field string, v float64, want string) error {
		return fmt.Errorf("%w: %s.%s %v is outside %s", ErrSea, name, field, v, want)
	}
	switch {
	case !(s.Hs >= 0 && s.Hs <= 25):
		return bad("Hs", s.Hs, "0 to 25 m")
	case s.Hs == 0 && s.Tp == 0 && !math.IsNaN(s.Off) && !math.IsNaN(s.Gamma):
		return nil
	case !(s.Tp >= 0.5 && s.Tp <= 30):
		return bad("Tp", s.Tp, "0.5 to 30 s")
	case s.Gamma != 0 && !(s.Gamma >= 1 && s.Gamma <= 10):
		return bad("Gamma", s.Gamma, "1 to 10")
	case !(math.Abs(s.Off) <= 360):
		return bad("Off", s.Off, "-360 to 360 degrees")
	}
	return nil
}

func (s Sea) check() error {
	bad := func(field string, v float64, want string) error {
		return fmt.Errorf("%w: %s %v is outside %s", ErrSea, field, v, want)
	}
	if err := s.WindSea.check("WindSea"); err != nil {
		return err
	}
	if err := s.Swell.check("Swell"); err != nil {
		return err
	}
	switch {
	case !(s.Wind >= windLow && s.Wind <= windHigh):
		return bad("Wind", s.Wind, "-20 to 35 m/s")
	case !(math.Abs(s.Current) <= 5):
		return bad("Current", s.Current, "-5 to 5 m/s")
	case !(s.Depth >= 0.3):
		return bad("Depth", s.Depth, "0.3 m to infinity")
	case s.Gravity != 0 && !(s.Gravity >= 9 && s.Gravity <= 10):
		return bad("Gravity", s.Gravity, "9 to 10 m/s2")
	}
	return nil
}

func (s Sea) gravity() float64 {
	if s.Gravity == 0 {
		return defaultGravity
	}
	return s.Gravity
}
