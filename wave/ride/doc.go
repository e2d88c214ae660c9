// Package ride answers for a paddler running downwind: which bumps can be
// caught on this board, which can only be held, which go by, and what speed
// the run will give.
//
// A bump carries a board if its push makes up what paddle and wind lack
// against the resistance at the speed of the wave. The push grows with the
// height of the wave; the resistance grows with its speed, which is that of
// its period. So short waves are easy and long ones too fast, whatever their
// height: a wind sea a few hours old is better to ride than the grown sea of
// the next day, and ground swell in deep water is never caught.
//
// Most people need three calls:
//
//	paddler := ride.Paddler{Mass: 95, Cruise: 1.8, Sprint: 3.0} // flat-water speeds, m/s
//	bump, err := paddler.Appraise(ride.Bump{Height: 0.6, Period: 3, Depth: math.Inf(1), Wind: 10})
//
//	ready, err := paddler.Prepare()
//	run, err := ready.Sea(ride.Sea{WindSea: ride.System{Hs: 0.7, Tp: 3.6}, Wind: 10, Depth: math.Inf(1)})
//
// bump.Verdict says what can be done with that wave, run.Speed and run.Spread
// what the sea brings. [Paddler.Simulate] paddles the same sea step by step.
//
// # Conventions
//
// Metres, seconds, m/s, newtons. Speeds are through the water: the board
// competes with the wave in the water frame, and a current only changes the
// wave and the ground made. Off is the angle in degrees between the direction
// waves travel towards and the heading or course of the board, 0 from dead
// astern, the same to both sides. Wind is the wind at 10 m height along the
// heading, positive from astern. Deep water is math.Inf(1) metres.
//
// # What it rests on
//
// There is no published method for a paddled board: everything here that is
// not marked with a source is a proposal, no published source. The ground is
// firm in part. The surge equation of a craft in following seas and its two
// thresholds, an equilibrium on the wave and surf-riding whatever the timing,
// are ship theory; thresholds are solved, and agree with an integration in
// time. Resistance, wind push and the fall of thrust with speed are priors,
// see [Priors]: no towing tests of paddle boards were found.
//
// For an irregular sea the mean speed is a closed form, the balance of thrust,
// wind and resistance with the mean push that waves exert on a board which
// lingers on their faces. Its two constants were fitted to simulations of 60
// seas, winds and paddlers drawn at random. Against simulation, mean speed:
//
//	60 seas it was fitted to                 2.0 % rms, worst 8 %
//	40 drawn alike, not fitted               1.9 % rms, worst 4 %
//	7 seas of the reference work             2.0 % rms, worst 4 %
//	16 unlike them (the test has them all)   3.5 % rms, worst 11 %
//
// The first two sets have winds of 3 to 16 m/s, peak enhancements of 1 to 6,
// Hs of 0.1 to 4 m, paddlers of 60 to 120 kg, boards and surfskis. The last has
// two systems, oblique and crossing seas, streams, no wind, swell alone, other
// paddlers; the worst is water of 2 m, where waves of all periods run alike.
// Shallower or longer still the closed form is off by up to a quarter either
// way; [ShallowWater] says so and Spread has it. Time ridden is within 0.1 of the simulated part;
// the count of catches within a factor of two.
//
// How far the simulation is from the water is another matter. Ride.Spread adds
// up the resistance, wind area, length, mass and the bend of the resistance
// moved by their spreads, the closed form, and the chance of one hour: 0.1 to
// 0.4 m/s. Skill is not in it: reading the bumps, turning along a face.
//
// # Validity
//
// Waves that do not break, steepness below 0.1, longer than 1.2 boards, from
// within 45 degrees of astern; speeds below 7 m/s; water deeper than a
// sixth of the wave for a sea, a twentieth for one bump. Outside, a [Remark] or a [Verdict] says so. Foils are
// refused: a flying board has another resistance and feels other waves.
package ride
