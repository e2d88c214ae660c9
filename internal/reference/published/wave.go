package published

import (
	"math"
	"slices"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
)

var waveSubjects = slices.Concat(waveDispersionSubjects)

var waveChecks = slices.Concat(waveDispersionChecks)

var waveSources = []reference.Source{
	{Key: "CEM-II-1", Citation: "U.S. Army Corps of Engineers (2002). Coastal Engineering Manual, Part II, Chapter 1: Water Wave Mechanics. EM 1110-2-1100, 30 April 2002", ID: "EM 1110-2-1100"},
	{Key: "Apsley2023", Citation: "Apsley, D. (2023). Hydraulics 3, Waves: Examples and Answers. Lecture notes, University of Manchester, autumn 2023"},
	{Key: "ACES1992", Citation: "Leenknecht, D. A., Szuwalski, A. and Sherlock, A. R. (1992). Automated Coastal Engineering System: User's Guide. U.S. Army Engineer Waterways Experiment Station, CERC, Vicksburg"},
	{Key: "Gran1992", Citation: "Gran, S. (1992). A Course in Ocean Engineering. Elsevier; calculation page F15", ID: "ISBN 0-444-88143-0"},
	{Key: "Carvalho2026", Citation: "Carvalho, R. B. (2026). Wave dispersion equation: theoretical and computational documentation, with a table of 1000 pairs k0h, kh"},
	{Key: "Sorensen2006", Citation: "Sorensen, R. M. (2006). Basic Coastal Engineering, 3rd edition. Springer", ID: "ISBN 0-387-23332-6"},
}

const pi = math.Pi

// The arguments that the formulas of package wave share.
var (
	wavePeriod  = reference.Number("period", "s", reference.PositiveInf, 8)
	waveDepth   = reference.Number("depth", "m", reference.PositiveInf, 6)
	waveGravity = reference.Number("gravity", "m/s2", reference.NonNegative, 9.81) // zero: the default
	waveDensity = reference.Number("density", "kg/m3", reference.NonNegative, 1025)
)

// water returns the water of the arguments gravity and density; one that is not given is the default.
func water(in reference.In) wave.Water {
	var w wave.Water
	if in.Has("gravity") {
		w.Gravity = in.F("gravity")
	}
	if in.Has("density") {
		w.Density = in.F("density")
	}
	return w
}

// waterOf evaluates a method of a Water on the arguments period and depth.
func waterOf(f func(wave.Water, float64, float64) float64, a, b string) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return reference.Out{"": f(water(in), in.F(a), in.F(b))}, nil
	}
}

// depthNumber is ω²h/g, which chooses the branch of the solver.
func depthNumber(in reference.In) float64 {
	g := in.F("gravity")
	if !in.Has("gravity") || g == 0 {
		g = wave.StandardGravity
	}
	omega := 2 * math.Pi / in.F("period")
	return omega * omega * in.F("depth") / g
}

// The branches of the dispersion relation's solver.
var dispersionRegimes = []reference.Regime{
	{Name: "deep to the last bit", In: func(in reference.In) bool { return depthNumber(in) >= 19.5 }},
	{Name: "table", In: func(in reference.In) bool { y := depthNumber(in); return y >= 1.0/64 && y < 19.5 }},
	{Name: "nearly shallow", In: func(in reference.In) bool { return depthNumber(in) < 1.0/64 }},
}
