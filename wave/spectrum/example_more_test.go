package spectrum_test

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/wave/spectrum"
)

// The density over 10 m of water that another program prints, in m²s/rad.
func ExampleTMA_Density() {
	s := spectrum.TMA{Hs: 7, Tp: 11, Gamma: 1, Depth: 10}
	s.Water.Gravity = 9.81
	for _, omega := range []float64{1, 2} {
		fmt.Printf("%.4f\n", s.Density(omega/(2*math.Pi))/(2*math.Pi))
	}
	// Output:
	// 0.7011
	// 0.0502
}

// A wind of 10 m/s at 19.5 m on the open sea, until nothing grows any more.
func ExamplePiersonMoskowitz() {
	p := spectrum.Describe(spectrum.PiersonMoskowitz{Wind19: 10})
	fmt.Printf("%.2f m, %.1f s\n", p.Hm0, p.Tp)
	// Output: 2.13 m, 7.3 s
}

// The same two numbers of the highest third through three laws of design: three peaks, three energies.
func ExampleGodaModified() {
	for _, s := range []spectrum.Spectrum{
		spectrum.BretschneiderMitsuyasu{H13: 2, T13: 7},
		spectrum.GodaModified{H13: 2, T13: 7},
		spectrum.GodaJONSWAP{H13: 2, Tp: spectrum.PeakFromT13(7, 3.3), Gamma: 3.3},
	} {
		p := spectrum.Describe(s)
		fmt.Printf("Tp %.2f s, Hm0 %.2f m\n", p.Tp, p.Hm0)
	}
	// Output:
	// Tp 7.35 s, Hm0 2.00 m
	// Tp 7.95 s, Hm0 2.09 m
	// Tp 7.49 s, Hm0 2.07 m
}

// With N = 5 and M = 4 the generalised spectrum is Bretschneider's.
func ExampleGamma() {
	a := spectrum.Gamma{Hs: 1, Tp: 5, N: 5, M: 4}
	b := spectrum.Bretschneider{Hs: 1, Tp: 5}
	fmt.Printf("%.4f %.4f m²/Hz\n", a.Density(0.2), b.Density(0.2))
	// Output: 0.4477 0.4477 m²/Hz
}

// The mean JONSWAP spectrum as it was first written, by alpha: how high is it?
func ExampleJONSWAPAlpha() {
	s := spectrum.JONSWAPAlpha{Alpha: 0.0081, Fp: 0.2, Gamma: 3.3}
	fmt.Printf("%.2f m\n", spectrum.Describe(s).Hm0)
	// Output: 1.23 m
}

// A spectrum that knows its own moments and peak is asked for them; any other is integrated.
func ExampleMoment() {
	var s spectrum.MomentSpectrum = spectrum.Bretschneider{Hs: 2, Tp: 8}
	var p spectrum.PeakSpectrum = spectrum.Bretschneider{Hs: 2, Tp: 8}
	fmt.Printf("m0 %.3f m², Hm0 %.1f m, peak %.3f Hz\n", spectrum.Moment(s, 0), spectrum.Height(spectrum.Moment(s, 0)), spectrum.PeakFrequency(p))
	// Output: m0 0.250 m², Hm0 2.0 m, peak 0.125 Hz
}

// A spectrum read off a graph at three points: a triangle of half its base times its height.
func ExamplePoints() {
	s := spectrum.Points{F: []float64{0.1, 0.2, 0.3}, S: []float64{0, 2.5, 0}}
	fmt.Printf("m0 %.2f m², Hm0 %.1f m\n", spectrum.Moment(s, 0), spectrum.Describe(s).Hm0)
	// Output: m0 0.25 m², Hm0 2.0 m
}

// The part of the energy that comes within 30 degrees of the mean direction, for a wind sea and for swell from afar;
// and the width of cos² of the whole angle, which is another law.
func ExampleCos2s_Spread() {
	for _, s := range []float64{spectrum.WindSea, spectrum.FlatSwell} {
		fmt.Printf("s %.0f: %.0f %%, width %.0f°\n", s, 100*spectrum.Cos2sWithin(s, 30), spectrum.Cos2sWidth(s))
	}
	var half spectrum.Spreading = spectrum.Cos2s{S: 0}
	fmt.Printf("all round %.3f\n", half.Spread(0.2, 0))
	fmt.Printf("cos²: width %.1f°, %.3f straight ahead\n", spectrum.CosNWidth(2), spectrum.CosN{N: 2}.Spread(0.2, 0))
	// Output:
	// s 10: 77 %, width 24°
	// s 75: 100 %, width 9°
	// all round 0.159
	// cos²: width 31.5°, 0.637 straight ahead
}

// Spreading is least at the peak: half the peak's frequency has s = 1 where the peak has 32.
func ExampleGodaSpread() {
	var g spectrum.Spreading = spectrum.GodaSpread{SMax: 32, Fp: 0.1}
	fmt.Println(g.(spectrum.GodaSpread).S(0.05))
	// Output: 1
}

// What the water does under the board at one instant, and the waves that it is made of.
func ExampleRealisation_At() {
	sea := spectrum.Sea{Spectrum: spectrum.JONSWAP{Hs: 1, Tp: 4, Gamma: 3.3}, Depth: math.Inf(1), Seed: 7, Components: 64}
	r, err := sea.Realise()
	if err != nil {
		fmt.Println(err)
		return
	}
	var variance float64
	var one spectrum.Component
	for _, one = range r.Components() {
		variance += one.Amplitude * one.Amplitude / 2
	}
	var here spectrum.Surface = r.At(10, 0, 0)
	fmt.Printf("%d waves, Hm0 %.2f m\n", len(r.Components()), spectrum.Height(variance))
	fmt.Println("the elevation alone is the same:", math.Abs(here.Elevation-r.Elevation(10, 0, 0)) <= 1e-12)
	// Output:
	// 64 waves, Hm0 1.00 m
	// the elevation alone is the same: true
}

// The buoy's own summary of a sea: what is missing is NaN.
func ExampleReadBuoySummary() {
	rows, err := spectrum.ReadBuoySummary(strings.NewReader(`#YY  MM DD hh mm WVHT  SwH  SwP  WWH  WWP SwD WWD  STEEPNESS  APD MWD
#yr  mo dy hr mn    m    m  sec    m  sec  -  degT     -      sec degT
2020 06 08 03 50  1.1  1.0  5.6  0.5  3.7   N   N      STEEP  4.3   7
`))
	if err != nil {
		fmt.Println(err)
		return
	}
	r := rows[0]
	fmt.Printf("%.1f m: swell %.1f m and %.1f s, wind sea %.1f m and %.1f s, %s\n", r.Hs, r.SwellHs, r.SwellTp, r.WindSeaHs, r.WindSeaTp, r.Steepness)
	// Output: 1.1 m: swell 1.0 m and 5.6 s, wind sea 0.5 m and 3.7 s, STEEP
}

// The five files of a buoy joined: where the waves of the swell and of the wind sea came from, and how widely spread.
func ExampleJoinBuoy() {
	var five [5][]spectrum.BuoyRow
	for i, text := range []string{realtimeDensity, realtimeMean, realtimePrincipal, realtimeR1, realtimeR2} {
		rows, err := spectrum.ReadBuoy(strings.NewReader(text), spectrum.BuoyDensity+spectrum.BuoyQuantity(i))
		if err != nil {
			fmt.Println(err)
			return
		}
		five[i] = rows
	}
	records, err := spectrum.JoinBuoy(five[0], five[1], five[2], five[3], five[4])
	if err != nil {
		fmt.Println(err)
		return
	}
	r := records[0]
	for _, b := range [][2]float64{{0, r.Separation}, {r.Separation, 1}} {
		from, width := r.MeanDirectionFrom(b[0], b[1])
		fmt.Printf("from %.0f°, spread %.0f°\n", from, width)
	}
	// Output:
	// from 157°, spread 51°
	// from 163°, spread 45°
}
