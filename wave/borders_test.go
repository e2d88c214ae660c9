package wave_test

import (
	"math"
	"testing"

	"followingsea.example/wave"
)

var (
	largest   = math.MaxFloat64
	belowZero = -math.SmallestNonzeroFloat64
)

// TestValuesOnTheBorders: where the stated range of a function is closed, its border has a value.
func TestValuesOnTheBorders(t *testing.T) {
	const g = wave.StandardGravity
	w := wave.Water{}
	deep := wave.Solve(6, inf)
	_, start := wave.SwellWindow(0, 0, 0, 8)
	most, least := wave.ReflectedEnvelope(0, 0)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"McCowan without depth", wave.McCowanHeight(0), 0},
		{"Weggel without depth", wave.WeggelHeight(0, 8, 0.1), 0},
		{"Weggel, nothing breaks", wave.WeggelIndex(0, 8, 0), 1.56 / 2},
		{"Goda without depth", wave.Goda2010.Height(0, 8, 0.1), 0},
		{"Kamphuis on a flat bottom, deep", w.KamphuisHeight(1e4, 8, 0), 0.095 * g * 64 / (2 * math.Pi)},
		{"similarity of a flat bottom", wave.SurfSimilarity(0, 1, 8), 0},
		{"no current", wave.AlongWave(0, 45), 0},
		{"still stream", wave.CrossStream(8, 10, 0, 0).HeightRatio, 1},
		{"board at rest, most encounters", wave.MostEncounters(0), inf},
		{"board at rest", deep.Encounter(0, 0).Period, 6},
		{"board as fast as the wave", deep.SameSpeedCourse(deep.PhaseSpeed), 0},
		{"no height, energy", wave.Energy(0), 0},
		{"no height, energy of a sea", wave.EnergyOfSea(0), 0},
		{"no waves that differ", wave.HeightCorrelation(1), 1},
		{"kappa of no correlation", wave.KappaOfCorrelation(0), 0},
		{"kappa of full correlation", wave.KappaOfCorrelation(1), 1},
		{"alike waves, in a row", wave.RunLengths(1, 1).High, inf},
		{"alike waves, in all", wave.RunLengths(1, 1).Total, inf},
		{"alike waves, the next", wave.RunLengths(1, 1).Next, 1},
		{"the highest level, a run", wave.RunLengths(18, 0.5).High, 1},
		{"above it, a run", wave.RunLengths(math.Nextafter(18, 19), 0.5).High, 1},
		{"above it, from one to the next", wave.RunLengths(math.Nextafter(18, 19), 0.5).Total, inf},
		{"the highest level, from one to the next, of independent waves", wave.RunLengths(18, 0).Total, math.Exp(2 * 18 * 18)},
		{"one in one", wave.Rayleigh.ExceededByOneIn(1, 2), 0},
		{"one in one, Forristall", wave.Forristall.ExceededByOneIn(1, 2), 0},
		{"mean of all: √π/2 of the root mean square, Hs/√2", wave.Rayleigh.MeanOfHighest(1, 2), math.Sqrt(math.Pi) / 2 * math.Sqrt2},
		{"one wave, median: exp(-2(H/Hs)²) is a half", wave.Rayleigh.LargestQuantile(0.5, 1, 2), 2 * math.Sqrt(math.Ln2/2)},
		{"no waves in no time", wave.WavesIn(0, 5), 0},
		{"one wave", wave.TimeToOneIn(1, 5), 5},
		{"calm", wave.SignificantOfRMS(0), 0},
		{"calm, third", wave.SignificantOfThird(0), 0},
		{"calm, one in a hundred", wave.ShallowOneInHundred(0, 5), 0},
		{"orbit at the surface of no wave", deep.Orbit(0, 0, 0).Up, 0},
		{"drift at the surface", deep.StokesDrift(1, 0), deep.AngularFrequency * deep.Wavenumber / 4},
		{"no wave at a wall", deep.ReflectedHeight(0, 0, 0, 0), 0},
		{"no reflection", deep.ReflectedHeight(2, 0, 3, 0), 2},
		{"all of it", deep.ReflectedHeight(2, 1, 0, 0), 4},
		{"no envelope", most + least, 0},
		{"a wall is measured", wave.ReflectionOfEnvelope(2, 0), 1},
		{"open water is measured", wave.ReflectionOfEnvelope(2, 2), 0},
		{"sea off a wall", wave.ReflectedSea(2, 1), 2 * math.Sqrt2},
		{"sea off nothing", wave.ReflectedSea(2, 0), 2},
		{"a slope that takes it all", wave.ReflectionLaw{A: 0, B: 5}.Coefficient(1), 0},
		{"a slope that takes it all, a wall", wave.ReflectionLaw{A: 0, B: 5}.Coefficient(inf), 0},
		{"a slope that takes a part", wave.ReflectionLaw{A: 0.5, B: 0}.Coefficient(1), 0.5},
		{"nothing is there yet", wave.SwellTime(0, 8), 0},
		{"storm overhead, gone at once", start, 0},
		{"nothing steep", deep.Steepness(0), 0},
		{"nothing to bend", wave.Solve(6, 5).Ursell(0), 0},
		{"a period beyond all", wave.TimeToOneIn(1, largest), largest},
		{"a time beyond all", wave.WavesIn(largest, 1), largest},
		{"a gravity beyond all", wave.Water{Gravity: largest}.RidgeSlope(1), largest / (4 * math.Pi)},
	} {
		rel(t, c.name, c.got, c.want, 1e-12)
	}
}

// TestNoValueBeyondTheBorders: just beyond a border, or on an open one, there is no value.
func TestNoValueBeyondTheBorders(t *testing.T) {
	w := wave.Water{}
	deep := wave.Solve(6, inf)
	below1, above1 := math.Nextafter(1, 0), math.Nextafter(1, 2)
	_, none := wave.ReflectedEnvelope(1, above1)
	for name, got := range map[string]float64{
		"depth, McCowan":               wave.McCowanHeight(belowZero),
		"depth, Weggel":                wave.WeggelHeight(belowZero, 8, 0.1),
		"depth, Goda":                  wave.Goda2010.Height(belowZero, 8, 0.1),
		"law that gives 0":             wave.WeggelLaw{}.Index(w, 1, 8, 0),
		"slope, similarity":            wave.SurfSimilarity(belowZero, 1, 8),
		"depth, Kamphuis":              w.KamphuisHeight(0, 8, 0),
		"rate":                         wave.AlongWave(belowZero, 0),
		"along the stream":             wave.CrossStream(8, 10, 1, 90).Angle,
		"along the stream, upstream":   wave.CrossStream(8, 10, 1, -90).Angle,
		"speed":                        deep.Encounter(belowZero, 0).Frequency,
		"slower than the wave":         deep.SameSpeedCourse(math.Nextafter(deep.PhaseSpeed, 0)),
		"kappa":                        wave.HeightCorrelation(above1),
		"correlation":                  wave.KappaOfCorrelation(above1),
		"correlation, negative":        wave.KappaOfCorrelation(belowZero),
		"kappa of a run":               wave.RunLengths(1, above1).High,
		"kappa of a run, negative":     wave.RunLengths(1, belowZero).High,
		"level of a run":               wave.RunLengths(belowZero, 0.5).High,
		"less than one, exceeded":      wave.Rayleigh.ExceededByOneIn(below1, 1),
		"less than one, highest":       wave.Rayleigh.MeanOfHighest(below1, 1),
		"less than one, largest":       wave.Rayleigh.LargestMean(below1, 1),
		"less than one, quantile":      wave.Rayleigh.LargestQuantile(0.5, below1, 1),
		"less than one, time":          wave.TimeToOneIn(below1, 5),
		"time":                         wave.WavesIn(belowZero, 5),
		"height":                       wave.Energy(belowZero),
		"above the surface":            deep.Orbit(1, math.SmallestNonzeroFloat64, 0).Up,
		"below the bottom":             wave.Solve(6, 5).StokesDrift(1, math.Nextafter(-5, -6)),
		"along the wall":               deep.ReflectedHeight(1, 0.5, 1, -90),
		"beyond all of it":             deep.ReflectedHeight(1, above1, 1, 0),
		"less than nothing of it":      deep.ReflectedHeight(1, belowZero, 1, 0),
		"behind the wall":              deep.ReflectedHeight(1, 1, belowZero, 0),
		"envelope beyond all of it":    none,
		"least above the greatest":     wave.ReflectionOfEnvelope(1, above1),
		"sea beyond all of it":         wave.ReflectedSea(1, above1),
		"swell that comes at once":     wave.OriginOfArrivals(8, 8, 3600).Age,
		"swell that comes at once, m":  wave.OriginOfArrivals(8, 8, 3600).Distance,
		"distance":                     wave.SwellTime(belowZero, 8),
		"as long as in deep water":     wave.Water{Gravity: 2 * math.Pi}.DepthOfLength(1, 1),
		"along the contours":           wave.Refract(-90, 8, 10, 5),
		"along the contours, the same": wave.Transform(1, 90, 8, 10, 5).Height,
	} {
		nan(t, name, got)
	}
}

// TestLimitOfSteepnessOnACurrent: a wave as high as its steepness lets it stand does not break, a higher one is cut to that.
func TestLimitOfSteepnessOnACurrent(t *testing.T) {
	w := wave.CurrentWave{State: wave.Runs, Depth: inf, Length: 50, HeightRatio: 1}
	limit := w.BreakingHeight() // 0.142 · 50 m
	for _, c := range []struct {
		still, want float64
		breaks      bool
	}{{0, 0, false}, {math.Nextafter(limit, 0), math.Nextafter(limit, 0), false}, {limit, limit, false}, {math.Nextafter(limit, 9), limit, true}} {
		if h, breaks := w.Height(c.still); h != c.want || breaks != c.breaks {
			t.Errorf("%v m in still water: %v m, breaks %v, want %v m, %v", c.still, h, breaks, c.want, c.breaks)
		}
	}
}

// TestRemarksOnTheirLimits: on each limit there is no remark yet, just above it there is that one alone.
func TestRemarksOnTheirLimits(t *testing.T) {
	for _, c := range []struct {
		w      wave.Wave
		height float64
		above  wave.Remarks
	}{
		{wave.Wave{Depth: inf, Length: 100, Wavenumber: 0.1}, 2, wave.Steep},              // ka = 0.1 · 2/2
		{wave.Wave{Depth: 1, Length: 16}, 26.0 / 256, wave.LongForDepth},                  // HL²/h³ = 26
		{wave.Wave{Depth: 10, Length: 20}, 2, wave.HighForDepth},                          // h/5
		{wave.Wave{Depth: inf, Length: 50}, wave.MicheHeight(50, inf), wave.PastBreaking}, // 0.142 L
	} {
		if r := c.w.Remarks(c.height); r != 0 {
			t.Errorf("%+v at %v m: %v, want none", c.w, c.height, r)
		}
		if r := c.w.Remarks(c.height * (1 + 1e-12)); r != c.above {
			t.Errorf("%+v above %v m: %v, want %v", c.w, c.height, r, c.above)
		}
	}
}
