package ride

import "math"

// HazardName names one way in which a sea handles badly.
type HazardName string

// The hazards, in the order [Prepared.Hazards] returns them.
const (
	Pearling      HazardName = "pearling"       // the nose meets the back of the next wave
	Overrun       HazardName = "overrun"        // the board runs over short waves ahead
	Broach        HazardName = "broach"         // steep bumps from the quarter, ridden near their speed
	BreakingBumps HazardName = "breaking bumps" // the bumps one can ride are about to break
	BreakingSea   HazardName = "breaking sea"   // the sea as a whole is
	CrossingSea   HazardName = "crossing sea"   // a second system from the side
)

// Hazard is one measure against its threshold.
type Hazard struct {
	Name      HazardName
	Measure   float64
	Threshold float64
	Raised    bool
}

// Limits are the thresholds of the hazards. They are starting points for a
// paddler to move, not borders between safe and unsafe: ship limits cannot be
// used, all downwind paddling is beyond them.
// Proposal, no published source, except where noted.
type Limits struct {
	PearlingSteepness float64 // height over length of the waves of one to PearlingReach boards
	PearlingReach     float64 // board lengths
	Overrun           float64 // (v − c)/c on waves up to PearlingReach boards
	QuarterFrom       float64 // degrees off astern
	QuarterTo         float64 // degrees; 45 bounds following and quartering seas in ship rules
	QuarterSteepness  float64 // height over length of the bumps
	QuarterSpeed      float64 // |v/c − 1| below which the board is steered badly
	BumpSteepness     float64
	SeaSteepness      float64 // Hs over the length of the peak
	Confusion         float64 // energy of the crossing system over that of both
	CrossingFrom      float64 // degrees between the systems; 30 and 120 class two systems as crossing
	CrossingTo        float64 // degrees
	CrossingSteepness float64 // Hs over length of the crossing system, below which it does not matter
}

// StartingLimits returns the thresholds to start from.
// Proposal, no published source, but for the sectors.
//
// Source: [HSC-1329] 1.4 (quartering up to 45 degrees).
// Source: [StoleHentschel2019] introduction (crossing from 30 to 120 degrees).
func StartingLimits() Limits {
	return Limits{
		PearlingSteepness: 0.05, PearlingReach: 3, Overrun: 0.3,
		QuarterFrom: 20, QuarterTo: 45, QuarterSteepness: 0.04, QuarterSpeed: 0.3,
		BumpSteepness: 0.07, SeaSteepness: 0.05,
		Confusion: 0.3, CrossingFrom: 30, CrossingTo: 120, CrossingSteepness: 0.02,
	}
}

// Hazards measures how a sea handles on this board against limits.
//
//	pearling        Hs/λ of the waves between one and PearlingReach boards long
//	overrun         (v − c)/c, the riding speed over the mean speed of those waves
//	broach          Hs/λ of the rideable waves, if from the quarter and ridden near their speed, else 0
//	breaking bumps  Hs/λ of the rideable waves
//	breaking sea    Hs/λ at the peak of the steeper system
//	crossing sea    Hs² of the system that crosses the leading one, over that of both, if steep enough, else 0
//
// A hazard is raised when its measure exceeds the threshold. None raised does
// not mean that the sea is easy. Proposal, no published source.
//
// Errors: [ErrSea] for a field of sea outside its range; [ErrLimits] for a
// limit that is not ≥ 0.
func (p *Prepared) Hazards(sea Sea, limits Limits) ([6]Hazard, error) {
	if err := limits.check(); err != nil {
		return [6]Hazard{}, err
	}
	ride, err := p.Sea(sea)
	if err != nil {
		return [6]Hazard{}, err
	}
	g := sea.gravity()
	length := 2 * p.surge.halfLength
	h := [6]Hazard{
		{Name: Pearling, Threshold: limits.PearlingSteepness},
		{Name: Overrun, Threshold: limits.Overrun},
		{Name: Broach, Threshold: limits.QuarterSteepness},
		{Name: BreakingBumps, Threshold: limits.BumpSteepness},
		{Name: BreakingSea, Threshold: limits.SeaSteepness},
		{Name: CrossingSea, Threshold: limits.Confusion},
	}

	// Waves of one to PearlingReach boards: what is above the frequency of the
	// longer less what is above that of the shorter.
	var long, short [3]float64
	for i, y := range [...]*System{&sea.WindSea, &sea.Swell} {
		p.above(&long, y, i == 1, frequencyOfLength(limits.PearlingReach*length, sea.Depth, g))
		p.above(&short, y, i == 1, frequencyOfLength(length, sea.Depth, g))
	}
	speed := math.Max(ride.RidingSpeed, ride.Speed)
	if m0 := long[0] - short[0]; m0 > 0 {
		if k, t, ok := intrinsicWave(m0/(long[1]-short[1]), sea.Depth, 0, g); ok {
			c := 2 * math.Pi / (k * t)
			h[0].Measure = 4 * math.Sqrt(m0) * k / (2 * math.Pi)
			h[1].Measure = math.Max(0, speed/c-1)
		}
	}
	lead := sea.leading()
	if ride.RideablePeriod > 0 {
		if k, t, ok := intrinsicWave(ride.RideablePeriod, sea.Depth, 0, g); ok {
			steep := ride.RideableHs * k / (2 * math.Pi)
			h[3].Measure = steep
			off := math.Abs(turn(lead.Off))
			c := 2 * math.Pi / (k * t) / math.Cos(off*(math.Pi/180))
			if off >= limits.QuarterFrom && off <= limits.QuarterTo && math.Abs(speed/c-1) < limits.QuarterSpeed {
				h[2].Measure = steep
			}
		}
	}
	for _, y := range [...]*System{&sea.WindSea, &sea.Swell} {
		if y.Hs == 0 {
			continue
		}
		k, _, ok := intrinsicWave(y.Tp, sea.Depth, 0, g)
		if !ok {
			continue
		}
		steep := y.Hs * k / (2 * math.Pi)
		h[4].Measure = math.Max(h[4].Measure, steep)
		if y != lead && lead.Hs > 0 {
			d := math.Abs(turn(y.Off - lead.Off))
			if d >= limits.CrossingFrom && d <= limits.CrossingTo && steep >= limits.CrossingSteepness {
				h[5].Measure = y.Hs * y.Hs / (y.Hs*y.Hs + lead.Hs*lead.Hs)
			}
		}
	}
	for i := range h {
		h[i].Raised = h[i].Measure > h[i].Threshold
	}
	return h, nil
}

// turn reduces an angle to -180 to 180 degrees.
func turn(deg float64) float64 { return math.Remainder(deg, 360) }

// frequencyOfLength is the frequency in Hz of waves of a length.
func frequencyOfLength(length, depth, g float64) float64 {
	k := 2 * math.Pi / length
	return math.Sqrt(g*k*math.Tanh(k*depth)) / (2 * math.Pi)
}
