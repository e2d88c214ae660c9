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
//	60 seas it was fitted to                2.0 % rms, worst 8 %
//	40 drawn alike, not fitted              1.9 % rms, worst 4 %
//	7 seas of the reference work            2.4 % rms, worst 5 %
//	16 unlike all of them                   2.8 % rms, worst 8 %
//
// The first two sets have winds of 3 to 16 m/s, peak enhancements of 1 to 6,
// Hs of 0.1 to 4 m, paddlers of 60 to 120 kg, boards and surfskis. The last two,
// thirty runs of ten minutes each, itself good to about 0.03 m/s:
//
//	                          mean speed, m/s            riding %  catches/h
//	                         sim.  closed form          | sim. cl. | sim.  cl.
//	10 m/s, 2 h              2.67  2.65 ± 0.30    -1 % |  19  10 |   96  141
//	10 m/s, 20 km            2.77  2.82 ± 0.22    +2 % |  24  27 |  167  271
//	10 m/s, 8 h              2.81  2.84 ± 0.20    +1 % |  28  29 |  241  290
//	10 m/s, full             2.77  2.76 ± 0.18     0 % |  30  27 |  278  267
//	13 m/s, 20 km            3.56  3.38 ± 0.26    -5 % |  48  46 |  240  263
//	13 m/s, 8 h              3.45  3.35 ± 0.27    -3 % |  45  45 |  275  277
//	13 m/s, 24 h             3.20  3.21 ± 0.27     0 % |  38  39 |  282  266
//
//	fully risen, 8 m/s       2.57  2.59 ± 0.14    +1 % |  25  22 |  271  271
//	very peaked, 9 m/s       2.55  2.63 ± 0.18    +3 % |  18  18 |  172  242
//	short and steep, 12 m/s  3.32  3.30 ± 0.25     0 % |  57  56 |  218  222
//	light paddler            2.17  2.26 ± 0.17    +4 % |  16  18 |  192  289
//	heavy paddler            3.03  3.04 ± 0.23     0 % |  33  39 |  218  298
//	racer                    4.16  4.11 ± 0.24    -1 % |  40  39 |  225  207
//	surfski, ocean           4.39  4.25 ± 0.16    -3 % |  39  36 |  202  201
//	30 degrees off           2.48  2.53 ± 0.16    +2 % |  14   9 |  201  182
//	swell from astern        2.63  2.63 ± 0.19     0 % |  25  22 |  152  257
//	swell from the beam      2.96  2.97 ± 0.22    +1 % |  33  38 |  186  299
//	2 m deep                 2.86  3.08 ± 0.57    +8 % |  36  46 |  151  192
//	against a stream         2.86  2.94 ± 0.19    +3 % |  32  39 |  152  288
//	with a stream            3.58  3.45 ± 0.14    -4 % |  28  18 |  183  162
//	no wind, old wind sea    2.19  2.22 ± 0.10    +1 % |  11   4 |  142   92
//	swell alone              1.87  1.88 ± 0.06     0 % |   3   0 |   41    2
//	cruising only            2.71  2.73 ± 0.23    +1 % |  66  69 |  434  315
//
// Where waves of all periods run alike, in water shallower than a sixth of
// their length, they stay in step and the closed form is off by up to a quarter
// either way; [ShallowWater] says so and Spread has it. Time ridden is within
// 0.1 of the simulated part, the count of catches within a factor of two and too
// high in light seas, too low in swell.
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
//
// # Seeing it
//
// examples/bumps prints which bumps can be caught, why a wind sea a few hours
// old is better than the grown one, and a minute on the water.
//
// # Further reading
//
// [MSC-1228] and [HSC-1329] are what ship masters are told of following seas,
// [GuckenheimerHolmes1983] has the pendulum behind the thresholds,
// [StoleHentschel2019] measured waves as a moving craft meets them, and
// [Schram2017] paddlers.
package ride
