package tide

import (
	"math"
	"testing"
)

// printedPhase is ch. 49 of [Meeus1998] as printed: the polynomials in T as sums of
// powers, every angle in degrees and reduced to the circle before its sine.
func printedPhase(k float64, phase Phase) (mean, corrected float64) {
	T := k / 1236.85
	T2, T3, T4 := math.Pow(T, 2), math.Pow(T, 3), math.Pow(T, 4)
	sin := func(deg float64) float64 { return math.Sin(math.Mod(deg, 360) * math.Pi / 180) }
	cos := func(deg float64) float64 { return sin(math.Mod(deg, 360) + 90) }

	mean = 2451550.09766 + 29.530588861*k + 0.00015437*T2 - 0.000000150*T3 + 0.00000000073*T4
	E := 1 - 0.002516*T - 0.0000074*T2
	M := 2.5534 + 29.10535670*k - 0.0000014*T2 - 0.00000011*T3
	Mp := 201.5643 + 385.81693528*k + 0.0107582*T2 + 0.00001238*T3 - 0.000000058*T4
	F := 160.7108 + 390.67050284*k - 0.0016118*T2 - 0.00000227*T3 + 0.000000011*T4
	Omega := 124.7746 - 1.56375588*k + 0.0020672*T2 + 0.00000215*T3

	corrected = mean
	add := func(terms []phaseTerm, column int) {
		for _, s := range terms {
			corrected += s.c[column] * math.Pow(E, float64(s.e)) * sin(s.m*M+s.moon*Mp+s.f*F+s.omega*Omega)
		}
	}
	W := 0.00306 - 0.00038*E*cos(M) + 0.00026*cos(Mp) - 0.00002*cos(Mp-M) + 0.00002*cos(Mp+M) + 0.00002*cos(2*F)
	switch phase {
	case NewMoon:
		add(syzygies, 0)
	case FullMoon:
		add(syzygies, 1)
	case FirstQuarter:
		add(quarters, 0)
		corrected += W
	case LastQuarter:
		add(quarters, 0)
		corrected -= W
	}
	for i, p := range planets {
		A := p[0] + p[1]*k
		if i == 0 {
			A -= 0.009173 * T2
		}
		corrected += p[2] * sin(A)
	}
	return mean, corrected
}

// TestPhasesByThePrintedFormulas: the mean and the true phase are those of the
// printed formulas over the whole stated range of k, its ends included, where the
// highest powers of T are largest.
func TestPhasesByThePrintedFormulas(t *testing.T) {
	for k := -50000; k <= 50000; k += 250 {
		for phase := NewMoon; phase <= LastQuarter; phase++ {
			q := float64(k) + float64(phase)/4
			if q > 50000 {
				continue
			}
			mean, corrected := printedPhase(q, phase)
			// 2e-9 days: a few times the spacing of numbers at a Julian day of 4 million.
			if got := MeanPhase(q); !(math.Abs(got-mean) <= 2e-9) {
				t.Errorf("MeanPhase(%v) = %v, printed %v", q, got, mean)
			}
			if got := TruePhase(q); !(math.Abs(got-corrected) <= 1e-8) {
				t.Errorf("TruePhase(%v) = %v, printed %v: %v days off", q, got, corrected, got-corrected)
			}
		}
	}
	for _, k := range []float64{50000.25, -50000.25} {
		if !math.IsNaN(MeanPhase(k)) || !math.IsNaN(TruePhase(k)) {
			t.Errorf("k = %v: %v, %v, want NaN", k, MeanPhase(k), TruePhase(k))
		}
	}
}
