package wave_test

import (
	"fmt"
	"math"

	"followingsea.example/wave"
)

// The rule of thumb of deep water: 3 knots of crest for each second, half of it for the energy.
func ExamplePhaseSpeed() {
	deep := math.Inf(1)
	fmt.Printf("6 s: crests %.1f kn, energy %.1f kn\n", wave.PhaseSpeed(6, deep)/wave.Knot, wave.GroupSpeed(6, deep)/wave.Knot)
	fmt.Printf("and over 2 m of water %.1f kn\n", wave.PhaseSpeed(6, 2)/wave.Knot)
	// Output:
	// 6 s: crests 18.2 kn, energy 9.1 kn
	// and over 2 m of water 8.3 kn
}

// A length seen from the cliff, 56 m from crest to crest, is a period; and the swell that shows 100 m over a bank tells
// how deep the bank is.
func ExamplePeriodOfLength() {
	fmt.Printf("%.1f s\n", wave.PeriodOfLength(56.2, math.Inf(1)))
	fmt.Printf("%.1f m deep\n", wave.DepthOfLength(12, 100))
	// Output:
	// 6.0 s
	// 7.6 m deep
}

// A textbook's own gravity and fresh water: what the zero value has by default is another field each.
func ExampleWater() {
	lake := wave.Water{Gravity: 9.81, Density: 1000}
	fmt.Printf("%.2f m, %.0f J/m²\n", lake.Length(4, math.Inf(1)), lake.Energy(1))
	fmt.Printf("%.2f m, %.0f J/m²\n", wave.Length(4, math.Inf(1)), wave.Energy(1))
	// Output:
	// 24.98 m, 1226 J/m²
	// 24.97 m, 1256 J/m²
}

// Two swells and a wind sea: heights add as squares, 3-4-5, and the energy period is weighted by them.
func ExampleCombineEnergyPeriods() {
	hs, te := wave.CombineEnergyPeriods(wave.System{Hs: 3, Period: 5}, wave.System{Hs: 4, Period: 10})
	fmt.Printf("%.0f m, %.1f s\n", hs, te)
	// Output: 5 m, 8.2 s
}

// The regimes are conventions: by the usual limits 20 m under a wave of 100 m is neither deep nor shallow.
func ExampleRegimeLimits_Regime() {
	fmt.Println(wave.UsualLimits.Regime(50, 100))
	fmt.Println(wave.UsualLimits.Regime(20, 100))
	fmt.Println(wave.UsualLimits.Regime(5, 100))
	// Output:
	// deep
	// intermediate
	// shallow
}

// What linear theory is not fit for is said, not hidden.
func ExampleWave_Remarks() {
	w := wave.Solve(6, 2)
	fmt.Println(w.Remarks(0.05))
	fmt.Println(w.Remarks(1))
	// Output:
	// none
	// steep, long for the depth, high for the depth
}

// Over a slope of 1 in 100 waves of 10 s break at 2.7 m in 3.2 m of water, as the manual's worked example has it.
func ExampleWeggelLaw_Height() {
	fmt.Printf("%.1f m\n", wave.WeggelCEM.Height(wave.Water{Gravity: 9.81}, 3.2, 10, 0.01))
	// Output: 2.7 m
}

// The highest single wave that a depth lets stand, and the sea whose highest waves begin to break there.
func ExampleGodaLaw_Height() {
	const period, slope = 8, 1.0 / 30
	for _, depth := range []float64{1, 2, 4} {
		fmt.Printf("%.0f m deep: %.1f m\n", depth, wave.Goda2010.Height(depth, period, slope))
	}
	// Output:
	// 1 m deep: 0.9 m
	// 2 m deep: 1.7 m
	// 4 m deep: 3.2 m
}

// A swell of 1 m coming in: lower at first, then up, and turned towards the shore.
func ExampleTransformed() {
	for _, depth := range []float64{20, 10, 3} {
		t := wave.Transform(1, 40, 10, math.Inf(1), depth)
		fmt.Printf("%2.0f m deep: %.2f m at %.0f°\n", depth, t.Height, t.Angle)
	}
	// Output:
	// 20 m deep: 0.86 m at 30°
	// 10 m deep: 0.90 m at 22°
	//  3 m deep: 1.10 m at 13°
}

// A wind sea that leans 30 degrees upstream as it enters a stream of 1 m/s: turned towards the normal, shorter and
// higher.
func ExampleCrossStream() {
	c := wave.CrossStream(5, 20, 1, -30)
	fmt.Printf("at %.0f°, %.0f m long, height x %.2f\n", c.Angle, c.Length, c.HeightRatio)
	// Output: at -26°, 34 m long, height x 1.05
}

// What a shore of a kind sends back, and what stands in front of it.
func ExampleShores() {
	for _, s := range wave.Shores()[:2] {
		most, _ := wave.ReflectedEnvelope(1, s.Up)
		fmt.Printf("%s: %.0f to %.0f %%, up to %.1f m where 1 m comes in\n", s.Name, 100*s.Low, 100*s.Up, most)
	}
	// Output:
	// vertical wall, crown above the water: 70 to 100 %, up to 2.0 m where 1 m comes in
	// vertical wall, submerged crown: 50 to 70 %, up to 1.7 m where 1 m comes in
}

// A smooth slope of 1 in 2 under waves of 1 m and 6 s.
func ExampleTanhReflection_Coefficient() {
	xi := wave.SurfSimilarity(0.5, 1, 6)
	fmt.Printf("xi %.1f: %.0f %% comes back\n", xi, 100*wave.SmoothTanh.Coefficient(xi))
	// Output: xi 3.7: 79 % comes back
}

// Swell of 15 s from 1000 nautical miles off, and the 12 s behind it.
func ExampleSwellTime() {
	far := 1000 * wave.NauticalMile
	for _, period := range []float64{15, 12} {
		fmt.Printf("%.0f s: %.0f h\n", period, wave.SwellTime(far, period)/3600)
	}
	// Output:
	// 15 s: 44 h
	// 12 s: 55 h
}

// Sets: if waves came independently a run above the significant height had 1.16 waves, one run in 8.5.
func ExampleRunLengths() {
	g := wave.RunLengths(1, 0)
	fmt.Printf("%.2f waves, every %.1f\n", g.High, g.Total)
	// Output: 1.16 waves, every 8.5
}

// How long to watch: the wave in a thousand takes an hour and a half of a sea of 5 s.
func ExampleTimeToOneIn() {
	fmt.Printf("%.1f h\n", wave.TimeToOneIn(1000, 5)/3600)
	// Output: 1.4 h
}
