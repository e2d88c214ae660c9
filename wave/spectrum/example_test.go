package spectrum_test

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/wave"
	"followingsea.example/wave/spectrum"
)

// The density that two programs print for a sea of 1 m and 10 s.
func ExampleJONSWAPFit_Density() {
	s := spectrum.JONSWAPFit{Hs: 1, Tp: 10, Gamma: 3.3}
	for _, omega := range []float64{0.5, 0.6, 0.7} { // rad/s
		fmt.Printf("%.6f m²s/rad\n", s.Density(omega/(2*math.Pi))/(2*math.Pi))
	}
	// Output:
	// 0.046146 m²s/rad
	// 0.241661 m²s/rad
	// 0.144435 m²s/rad
}

// What the ratio of the periods of a fully risen sea is: Tp = 1.408 Tz and Tm01 = 1.086 Tz.
func ExamplePeriodRatios() {
	_, tm01, tz := spectrum.PeriodRatios(1)
	fmt.Printf("Tp = %.3f Tz, Tm01 = %.3f Tz\n", 1/tz, tm01/tz)
	// Output: Tp = 1.408 Tz, Tm01 = 1.086 Tz
}

// A wind sea on a swell: the heights add as squares.
func ExampleSum() {
	both := spectrum.Sum{
		spectrum.JONSWAP{Hs: 3, Tp: 6, Gamma: 3.3},
		spectrum.Bretschneider{Hs: 4, Tp: 13},
	}
	p := spectrum.Describe(both)
	fmt.Printf("%.1f m, peak at %.0f s, Tz %.1f s\n", p.Hm0, p.Tp, p.Tz)
	// Output: 5.0 m, peak at 13 s, Tz 6.4 s
}

// A whole measured record: read, cut where the buoy cut it, and compared with the buoy's own summary, which has 1.1 m
// in all, a swell of 1.0 m and 5.6 s and a wind sea of 0.5 m.
func ExampleReadBuoy() {
	rows, err := spectrum.ReadBuoy(strings.NewReader(realtimeDensity), spectrum.BuoyDensity)
	if err != nil {
		fmt.Println(err)
		return
	}
	b, err := rows[0].Bins()
	if err != nil {
		fmt.Println(err)
		return
	}
	swell, windSea := spectrum.Separate(b, rows[0].Separation)
	fmt.Printf("%s: %.1f m\n", rows[0].Time.Format("2006-01-02 15:04"), spectrum.Describe(b).Hm0)
	fmt.Printf("swell %.1f m, %.1f s\n", spectrum.Describe(swell).Hm0, spectrum.Describe(swell).Tp)
	fmt.Printf("wind sea %.1f m\n", spectrum.Describe(windSea).Hm0)
	// Output:
	// 2020-06-08 03:50: 1.1 m
	// swell 1.0 m, 5.6 s
	// wind sea 0.5 m
}

// A sea from a seed, its record at a point, and the waves in it.
func ExampleSea_Realise() {
	sea := spectrum.Sea{Spectrum: spectrum.JONSWAP{Hs: 1, Tp: 4, Gamma: 3.3}, Depth: math.Inf(1), Seed: 7}
	r, err := sea.Realise()
	if err != nil {
		fmt.Println(err)
		return
	}
	waves, err := spectrum.Crossings(r.Record(6000, 0.2, 0, 0), 0.2, spectrum.DownCrossings)
	if err != nil {
		fmt.Println(err)
		return
	}
	s := spectrum.Summarise(waves)
	fmt.Printf("%d waves in 20 minutes, highest third %.2f m and %.1f s\n", s.Waves, s.Third, s.TThird)
	// Output: 371 waves in 20 minutes, highest third 0.97 m and 3.7 s
}

// Sets: how many waves in a row are above the significant height, and how far apart such runs are, if the waves are
// independent (1.16 and 8.5) and in the mean JONSWAP sea.
func ExampleChainCorrelation() {
	sea := spectrum.JONSWAP{Hs: 1, Tp: 5, Gamma: 3.3}
	for _, kappa := range []float64{0, spectrum.ChainCorrelation(sea)} {
		r := wave.RunLengths(1, kappa)
		fmt.Printf("%.2f waves, every %.1f\n", r.High, r.Total)
	}
	// Output:
	// 1.16 waves, every 8.5
	// 1.46 waves, every 10.8
}

// The share of all waves that are at least half the significant height and within a quarter of the mean period.
func ExampleJoint_Share() {
	p := spectrum.Describe(spectrum.JONSWAP{Hs: 1, Tp: 5, Gamma: 3.3})
	fmt.Printf("%.2f\n", spectrum.Joint{Nu: p.Narrowness}.Share(0.5, 0.75, 1.25))
	// Output: 0.44
}

// The power of a sea of 1 m and Te 5 s, ρg²/64π Hm0² Te, over each metre of crest.
func ExampleEnergyFlux() {
	b, err := spectrum.NewBins([]float64{0.2}, []float64{1}, []float64{1.0 / 16})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Printf("%.3f kW/m\n", spectrum.EnergyFlux(b, wave.Water{Gravity: 9.81}, math.Inf(1))/1000)
	// Output: 2.453 kW/m
}
