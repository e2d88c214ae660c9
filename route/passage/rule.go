package passage

import "fmt"

// A Rule names one of the limits that a paddler can set.
type Rule uint8

// The rules, in the order in which findings are listed.
const (
	LeastWind             Rule = iota // least mean wind on the way
	GreatestWind                      // greatest mean wind on the way
	GreatestGust                      // greatest gust on the way
	GreatestOffStern                  // greatest angle of the wind off the stern
	LeastSteadyBefore                 // least steadiness of the wind over the hours before
	LeastSteadyAfter                  // least steadiness from the start to some hours after the arrival
	GreatestShift                     // greatest turn of the wind on the way and shortly after
	GreatestOffshore                  // greatest component of the wind that blows away from the nearest shore
	LeastSea                          // least height of the wind sea on the way
	GreatestSea                       // greatest height of wind sea and swell together
	GreatestSwell                     // greatest height of the swell
	GreatestSteepness                 // greatest steepness of the wind sea on the stream
	LeastRideable                     // least share of waves that can be caught, at the median of the way
	GreatestStream                    // greatest rate of the stream
	GreatestAgainst                   // greatest rate of the stream against the wind
	LeastDepth                        // least depth of water on the way
	GreatestBreaking                  // greatest height of the sea over the depth of water
	GreatestTimeToExit                // greatest time to an exit that can be reached
	GreatestDuration                  // greatest duration of the slow case
	LeastReserve                      // least endurance left at the arrival of the slow case
	LeastDaylight                     // least time from the arrival of the slow case to the end of civil twilight
	LeastWaterTemperature             // least temperature of the water
	LeastWindChill                    // least wind chill equivalent temperature
	NoWarning                         // no official warning in force
	NoTraffic                         // no time inside an area of traffic
	NoAvoid                           // no time inside an area to keep out of
	GreatestNoSignal                  // greatest time inside an area without signal
	LeastLeaders                      // least ratio of leaders to led
	ruleCount
)

// A ruleFact is what is common to every finding about a rule.
type ruleFact struct {
	name    string  // as in files and -json, without the unit
	words   string  // as printed
	unit    string  // SI: "m/s", "deg", "1", "m", "s", "C", "bool"
	atLeast bool    // the sense: the value must be at least the limit
	scale   float64 // what counts as one comfortable step of this quantity, for ranking
}

var ruleFacts = [ruleCount]ruleFact{
	LeastWind:             {"least_wind", "wind at least", "m/s", true, 2},
	GreatestWind:          {"greatest_wind", "wind at most", "m/s", false, 2},
	GreatestGust:          {"greatest_gust", "gusts at most", "m/s", false, 2},
	GreatestOffStern:      {"greatest_off_stern", "wind off the stern at most", "deg", false, 15},
	LeastSteadyBefore:     {"least_steady_before", "steadiness before at least", "1", true, 0.05},
	LeastSteadyAfter:      {"least_steady_after", "steadiness after at least", "1", true, 0.05},
	GreatestShift:         {"greatest_shift", "turn of the wind at most", "deg", false, 15},
	GreatestOffshore:      {"greatest_offshore", "offshore wind at most", "m/s", false, 2},
	LeastSea:              {"least_sea", "wind sea at least", "m", true, 0.2},
	GreatestSea:           {"greatest_sea", "sea at most", "m", false, 0.3},
	GreatestSwell:         {"greatest_swell", "swell at most", "m", false, 0.5},
	GreatestSteepness:     {"greatest_steepness", "steepness at most", "1", false, 0.01},
	LeastRideable:         {"least_rideable", "rideable waves at least", "1", true, 0.1},
	GreatestStream:        {"greatest_stream", "stream at most", "m/s", false, 0.3},
	GreatestAgainst:       {"greatest_against", "stream against the wind at most", "m/s", false, 0.3},
	LeastDepth:            {"least_depth", "depth at least", "m", true, 0.5},
	GreatestBreaking:      {"greatest_breaking", "height over depth at most", "1", false, 0.1},
	GreatestTimeToExit:    {"greatest_time_to_exit", "time to an exit at most", "s", false, 600},
	GreatestDuration:      {"greatest_duration", "duration at most", "s", false, 1800},
	LeastReserve:          {"least_reserve", "endurance left at least", "s", true, 1800},
	LeastDaylight:         {"least_daylight", "light left at least", "s", true, 1800},
	LeastWaterTemperature: {"least_water_temperature", "water at least", "C", true, 3},
	LeastWindChill:        {"least_wind_chill", "wind chill at least", "C", true, 5},
	NoWarning:             {"no_warning", "no official warning", "bool", false, 1},
	NoTraffic:             {"no_traffic", "no traffic area", "bool", false, 1},
	NoAvoid:               {"no_avoid", "no keep-out area", "bool", false, 1},
	GreatestNoSignal:      {"greatest_no_signal", "time without signal at most", "s", false, 900},
	LeastLeaders:          {"least_leaders", "leaders to led at least", "1", true, 0.1},
}

// Rules returns every rule in order.
func Rules() []Rule {
	rs := make([]Rule, ruleCount)
	for i := range rs {
		rs[i] = Rule(i)
	}
	return rs
}

// String returns the rule's name as files write it, without a unit.
func (r Rule) String() string {
	if r >= ruleCount {
		return fmt.Sprintf("rule %d", uint8(r))
	}
	return ruleFacts[r].name
}

// Words returns the rule in plain words: "wind at most".
func (r Rule) Words() string {
	if r >= ruleCount {
		return r.String()
	}
	return ruleFacts[r].words
}

// Unit returns the SI unit of the rule's value: "m/s", "deg", "m", "s", "C",
// "1" for a ratio, "bool" for a rule that only asks whether.
func (r Rule) Unit() string {
	if r >= ruleCount {
		return ""
	}
	return ruleFacts[r].unit
}

// AtLeast reports the sense of the rule: true when the value must be at least
// the limit, false when it must be at most the limit. An input grows worse
// towards the other side.
func (r Rule) AtLeast() bool { return r < ruleCount && ruleFacts[r].atLeast }

// Limits holds a limit for each rule; the zero value asks for nothing.
type Limits [ruleCount]Limit

// A State is what came of comparing a value with a limit. Its zero value is
// unknown: nothing is met until it is shown to be.
type State uint8

// The states of a finding.
const (
	Unknown State = iota // the value could not be found; counts against the departure
	Broken               // the limit is broken
	Met                  // the limit is met
)

// String returns "unknown", "broken" or "met".
func (s State) String() string {
	switch s {
	case Broken:
		return "broken"
	case Met:
		return "met"
	}
	return "unknown"
}

// judge compares a value with a limit. NaN on either side is unknown.
func (r Rule) judge(value, limit float64) State {
	switch {
	case value != value || limit != limit:
		return Unknown
	case r.AtLeast() && value >= limit, !r.AtLeast() && value <= limit:
		return Met
	}
	return Broken
}

// margin returns how far the value is inside the limit, negative outside, in
// the rule's unit.
func (r Rule) margin(value, limit float64) float64 {
	if r.AtLeast() {
		return value - limit
	}
	return limit - value
}
