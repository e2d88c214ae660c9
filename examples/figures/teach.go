package main

import (
	"fmt"
	"math"
	"time"

	"gonum.org/v1/plot"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
	"followingsea.example/wave"
	"followingsea.example/wave/ride"
	"followingsea.example/wind"
)

// teaching is every figure that needs no plan.
func teaching() []figure {
	return []figure{waveSpeed(), growth(), tides(), catchable(), headWind()}
}

func apply(x []float64, f func(float64) float64) []float64 {
	y := make([]float64, len(x))
	for i := range x {
		y[i] = f(x[i])
	}
	return y
}

func waveSpeed() figure {
	p := newPlot("Speed of waves", "period, s", "speed of the crests, knots")
	x := steps(1, 16, 150)
	for i, h := range []float64{math.Inf(1), 20, 10, 5, 2, 1} {
		name := fmt.Sprintf("%.0f m deep", h)
		if math.IsInf(h, 1) {
			name = "deep water"
		}
		curve(p, name, i, x, apply(x, func(t float64) float64 { return wave.PhaseSpeed(t, h) / wave.Knot }))
	}
	edge := []float64{1, 16}
	shade := []float64{3, 3}
	band(p, "a board on flat water, 3 to 6 knots", grey, edge, shade, []float64{6, 6})
	p.Y.Min = 0
	p.Legend.Left, p.Legend.Top, p.Legend.XOffs = true, true, 8
	return figure{name: "wave-speed", shows: "speed of waves by period and depth, beside that of a board", panels: []*plot.Plot{p}}
}

func growth() figure {
	const knots, fetch = 20, 30e3
	hours := steps(0.1, 12, 119)
	seas := func(f func(wind.Sea) float64, law wind.Law) []float64 {
		return apply(hours, func(h float64) float64 {
			return f(wind.Grow(law, wind.Conditions{Speed: knots * wind.Knot, Fetch: fetch, Duration: h * 3600, MeanDepth: math.Inf(1)}))
		})
	}
	height := newPlot("The sea of 20 knots on 30 km of fetch, by four growth laws and the band they span", "", "Hs, m")
	period := newPlot("", "hours of wind", "Tp, s")
	for k, panel := range []*plot.Plot{height, period} {
		f := []func(wind.Sea) float64{func(s wind.Sea) float64 { return s.Hs }, func(s wind.Sea) float64 { return s.Tp }}[k]
		lo, hi := seas(f, wind.Bretschneider), seas(f, wind.Bretschneider)
		for i, law := range wind.BandLaws() {
			y := seas(f, law)
			for j := range y {
				lo[j], hi[j] = math.Min(lo[j], y[j]), math.Max(hi[j], y[j])
			}
			name := ""
			if k == 0 {
				name = law.String()
			}
			curve(panel, name, i, hours, y)
		}
		band(panel, "", sky, hours, lo, hi)
		panel.X.Min, panel.Y.Min = 0, 0
		panel.Y.Max *= 1.08
		panel.Legend.Top, panel.Legend.Left = false, false
		panel.Legend.YOffs = 6
	}
	return figure{name: "growth", shows: "height and period of the sea by hours of wind, with the spread of the laws", panels: []*plot.Plot{height, period}, width: 480, height: 430}
}

// estuary is an invented port whose rise is shorter than its fall.
func estuary() harmonic.Station {
	return harmonic.Station{Name: "an invented estuary", Datum: tide.LAT, Z0: 2.9, Constituents: []harmonic.Constituent{
		{Name: "M2", Amplitude: 1.7, Lag: 140}, {Name: "S2", Amplitude: 0.6, Lag: 180}, {Name: "N2", Amplitude: 0.35, Lag: 120},
		{Name: "K1", Amplitude: 0.08, Lag: 70}, {Name: "O1", Amplitude: 0.07, Lag: 330}, {Name: "M4", Amplitude: 0.35, Lag: 190}, {Name: "M6", Amplitude: 0.12, Lag: 200},
	}}
}

func tides() figure {
	heights := newPlot("Twelfths, cosine and the whole tide of an invented estuary", "", "height above LAT, m")
	off := newPlot("", "hours from high water", "out by, cm")
	full, err := harmonic.New(estuary(), harmonic.AtInstant)
	if err != nil {
		panic(err) // the constants above are wrong
	}
	from := time.Date(2026, 6, 15, 0, 0, 0, 0, time.UTC)
	turns, err := full.Turns(from, from.Add(48*time.Hour), 0.01)
	if err != nil || len(turns) < 3 {
		panic(fmt.Sprint("no tide: ", err))
	}
	limbs := []tide.Limb{{From: turns[0], To: turns[1]}, {From: turns[1], To: turns[2]}}
	var x, whole, twelfths, cosine, offTwelfths, offCosine []float64
	for _, l := range limbs {
		for t := l.From.Time; !t.After(l.To.Time); t = t.Add(4 * time.Minute) {
			h, a, b := full.Height(t), l.Height(t, tide.ByTwelfths), l.Height(t, tide.ByCosine)
			x = append(x, t.Sub(turns[0].Time).Hours())
			whole, twelfths, cosine = append(whole, h), append(twelfths, a), append(cosine, b)
			offTwelfths, offCosine = append(offTwelfths, 100*(a-h)), append(offCosine, 100*(b-h))
		}
	}
	curve(heights, "whole tide (harmonic)", 0, x, whole)
	curve(heights, "cosine between the turns", 1, x, cosine)
	curve(heights, "rule of twelfths", 2, x, twelfths)
	curve(off, "", 1, x, offCosine)
	curve(off, "", 2, x, offTwelfths)
	rule(off, 0)
	heights.Legend.Top, heights.Legend.XOffs = true, -120
	heights.Y.Min = 0
	return figure{name: "tide-rules", shows: "twelfths, cosine and a harmonic tide, and how far the rules are out", panels: []*plot.Plot{heights, off}, width: 480, height: 430}
}

func catchable() figure {
	p := newPlot("How high a bump must be: 1.8 m/s cruising, 3.0 m/s sprinting, 10 m/s astern (a proposal)", "period, s", "height, m")
	club := ride.Paddler{Cruise: 1.8, Sprint: 3.0}
	x := steps(2, 5.2, 64)
	var glide, hold, catch, breaks []float64
	for _, t := range x {
		a, err := club.Appraise(ride.Bump{Height: 0.5, Period: t, Depth: math.Inf(1), Wind: 10})
		if err != nil {
			panic(err) // the paddler above is wrong
		}
		top := 0.142 * a.Length
		none := func(h float64) float64 {
			if !(h < top) {
				return math.NaN()
			}
			return h
		}
		glide, hold, catch, breaks = append(glide, none(a.Glide)), append(hold, none(a.Hold)), append(catch, none(a.Catch)), append(breaks, top)
	}
	curve(p, "breaks by its steepness", 0, x, breaks)
	curve(p, "caught with a sprint", 1, x, catch)
	curve(p, "held, once on it", 2, x, hold)
	curve(p, "carries without paddling", 3, x, glide)
	p.X.Min, p.Y.Min, p.Y.Max = 2, 0, 2.5
	p.Legend.Left, p.Legend.Top, p.Legend.XOffs = true, true, 8
	return figure{name: "catchable", shows: "height a bump needs to be felt, held and caught, by period (proposal)", panels: []*plot.Plot{p}}
}

func headWind() figure {
	p := newPlot("Speed dead into the wind, 3.5 knots on flat water standing (a proposal, with its spread)", "wind at 10 m, knots", "made good, knots")
	x := steps(0, 30, 120)
	upwind := func(q route.Posture) []float64 {
		return apply(x, func(w float64) float64 {
			along, _ := q.Way(0, route.From(w*route.Knot, 0)).Resolve(0)
			return along / route.Knot
		})
	}
	for i, q := range route.Postures(3.5 * route.Knot) {
		curve(p, q.Name, i, x, upwind(q))
		if i == 0 {
			most, least := q.Spread()
			band(p, "spread of "+q.Name, grey, x, upwind(most), upwind(least))
		}
	}
	rule(p, 0)
	p.Y.Min = -4
	p.Legend.Left, p.Legend.XOffs, p.Legend.YOffs = true, 8, 6
	return figure{name: "head-wind", shows: "speed against a head wind by posture: where each is blown back", panels: []*plot.Plot{p}}
}
