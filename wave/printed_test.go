package wave_test

import (
	"fmt"
	"math"
	"testing"

	"followingsea.example/wave"
)

// TestPrintedFormulas: the values are those of the printed formulas, where each of their terms counts.
func TestPrintedFormulas(t *testing.T) {
	const g = wave.StandardGravity
	w := wave.Water{}
	v := wave.Solve(8, 5)
	tanh := math.Tanh(2 * math.Pi * 5 / v.Length)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"Kamphuis, e^0.35", wave.KamphuisIndex(0.1), 0.56 * math.Pow(math.E, 0.35)},
		{"Kamphuis, e^0.08", w.KamphuisHeight(5, 8, 0.02), 0.095 * math.Pow(math.E, 0.08) * v.Length * tanh},
		{"sea of 5 m depth", v.LimitOfSea(), 0.07 * v.Length * tanh},
		{"Goda, K m^4/3 = 11/16", wave.Goda2010.Height(3, 10, 1.0/8), 0.17 * g * 100 / (2 * math.Pi) * (1 - math.Exp(-1.5*math.Pi*3/(g*100/(2*math.Pi))*(1+11.0/16)))},
		{"2 m on 50 m", wave.Wave{Length: 50}.Steepness(2), 0.04},
		{"master, 3·100/(30 + 8/2)", wave.MasterEncounterPeriod(10, 8*wave.Knot, 60), 300.0 / 34},
		{"master, 3·100/(30 - 8/2)", wave.MasterEncounterPeriod(10, 8*wave.Knot, 120), 300.0 / 26},
		{"√2 of the root mean square", wave.SignificantOfRMS(3), 3 * math.Sqrt2},
		{"of a sea's own root mean square", wave.SignificantOfRMS(wave.Rayleigh.RootMeanSquare(3)), 3},
		{"of a sea's own highest third", wave.SignificantOfThird(wave.Rayleigh.MeanOfHighest(3, 3)), 3},
		{"1 + 7/1, of it the cube root", wave.ShallowOneInHundred(7, 1), 1.517 * 7 / 2},
		{"1 + 14/2, of it the cube root", wave.ShallowOneInHundred(14, 2), 1.517 * 14 / 2},
		{"1 + 3/1, of it the root", wave.ShallowOneInThousand(3, 1), 1.859 * 3 / 2},
		{"deep, one in a hundred", wave.ShallowOneInHundred(3, inf), 1.517 * 3},
		{"deep, one in a thousand", wave.ShallowOneInThousand(3, inf), 1.859 * 3},
	} {
		rel(t, c.name, c.got, c.want, 1e-12)
	}
	// H1/3 comes to 1.0011 Hs, as printed.
	near(t, "third", 1/wave.SignificantOfThird(1), 1.0011, 5e-5)
}

// TestHeightCorrelationBySeries: E(κ) - (1 - κ²)/2 K(κ) = π/4 Σ C(1/2, n)² κ^2n, with the binomial coefficients
// C(1/2, n) = C(1/2, n-1) (3/2 - n)/n: the same number another way, to the last digits also where κ is small.
func TestHeightCorrelationBySeries(t *testing.T) {
	for kappa := 1e-6; kappa < 0.9; kappa *= 1.25 {
		sum, c, power := 0.0, 1.0, 1.0
		for n := 1.0; n < 400; n++ {
			c *= (1.5 - n) / n
			power *= kappa * kappa
			sum += c * c * power
		}
		want, tol := math.Pi/4*sum/(1-math.Pi/4), 2e-15
		if kappa > 0.03 { // the difference from π/4 loses digits
			tol = 4e-15 / want
		}
		rel(t, fmt.Sprintf("κ = %v", kappa), wave.HeightCorrelation(kappa), want, tol)
	}
}

// TestNextWaveOfHighLevels: the chance that the wave after a high one is high too, by the other series, also above levels that
// few waves reach.
func TestNextWaveOfHighLevels(t *testing.T) {
	for _, level := range []float64{0.5, 1, 2, 3, 4, 5} {
		for _, kappa := range []float64{0.1, 0.4, 0.7, 0.9, 0.95} {
			rel(t, fmt.Sprintf("level %v, κ = %v", level, kappa), wave.RunLengths(level, kappa).Next, nextOfMixture(level, kappa), 1e-9)
		}
	}
}

// TestCorrectionByWhitham: the third order in T = tanh kh as Whitham has it, (9T⁴ - 10T² + 9)/8T⁴ (memory) over the mean depth,
// less what the mean level lies lower under the waves, ka²/2 sinh 2kh, does to ω²: 1/sinh² 2kh. It is the same number.
func TestCorrectionByWhitham(t *testing.T) {
	for kh := 0.3; kh < 8; kh *= 1.3 {
		v := wave.Wave{Depth: kh / 0.5, Wavenumber: 0.5}
		T2 := math.Pow(math.Tanh(kh), 2)
		factor := (9*T2*T2-10*T2+9)/(8*T2*T2) - math.Pow(math.Sinh(2*kh), -2)
		rel(t, fmt.Sprintf("ka = 0.1 at kh = %v", kh), math.Pow(v.SpeedCorrection(0.4), 2)-1, 0.01*factor, 1e-12)
	}
}

// TestUsualRegimeOfAWave: a wave's regime is that of the usual limits, 1/2 and 1/20 of its length.
func TestUsualRegimeOfAWave(t *testing.T) {
	for depth, want := range map[float64]wave.Regime{1: wave.Shallow, 5: wave.Shallow, 5.01: wave.Intermediate, 49.9: wave.Intermediate, 50: wave.Deep, inf: wave.Deep} {
		if got := (wave.Wave{Depth: depth, Length: 100}).Regime(); got != want {
			t.Errorf("%v m under 100 m: %v, want %v", depth, got, want)
		}
	}
}

// TestNoWaveComesAlongTheContours: where sin a would reach 1 a wave cannot have come from there, to the last place of the angle.
func TestNoWaveComesAlongTheContours(t *testing.T) {
	for from := 0.5; from < 20; from *= 1.2 {
		lo, hi := 0.0, 90.0
		for range 70 {
			if mid := (lo + hi) / 2; math.IsNaN(wave.Refract(mid, 8, from, inf)) {
				hi = mid
			} else {
				lo = mid
			}
		}
		in := lo
		for range 4 {
			in = math.Nextafter(in, 0)
		}
		for range 9 {
			if a := wave.Refract(in, 8, from, inf); a >= 90 {
				t.Fatalf("%v° over %v m: %v°", in, from, a)
			}
			in = math.Nextafter(in, 90)
		}
	}
}
