package wind_test

import (
	"math"
	"testing"

	"followingsea.example/wind"
)

// lawTwin is a growth law written straight from its printed formula: the wind it is driven with, its two curves over
// the fetch and depth without dimensions, full development, and the fetches it is meant for.
type lawTwin struct {
	law           wind.Law
	scale         func(u float64) float64
	height        func(x, d float64) float64
	period        func(x, d float64) float64
	fullHeight    float64
	fullPeriod    float64
	fewest, most  float64
	developedWind bool // full development is on the wind at 10 m
}

func plainWind(u float64) float64 { return u }
func spmWind(u float64) float64   { return 0.71 * math.Pow(u, 1.23) }
func acesWind(u float64) float64  { return u * math.Sqrt((0.001*(0.75+0.067*u))/0.001) }
func cemWind(u float64) float64   { return math.Sqrt(0.001 * (1.1 + 0.035*u) * u * u) }

// depthTanh is A tanh(v/A) with A = tanh(k D^n), v itself in deep water.
func depthTanh(k, n, d, v float64) float64 {
	if math.IsInf(d, 1) {
		return math.Tanh(v)
	}
	a := math.Tanh(k * math.Pow(d, n))
	return a * math.Tanh(v/a)
}

func power(k, n float64) func(x, d float64) float64 {
	return func(x, _ float64) float64 { return k * math.Pow(x, n) }
}

// fromEnergy and fromOmega are a power law printed as g²m0/U⁴ = e x^p and 2π fp U/g = w x^-q.
func fromEnergy(e, p float64) func(x, d float64) float64 {
	return func(x, _ float64) float64 { return 4 * math.Sqrt(e*math.Pow(x, p)) }
}

func fromOmega(w, q float64) func(x, d float64) float64 {
	return func(x, _ float64) float64 { return 2 * math.Pi / (w * math.Pow(x, -q)) }
}

func lawTwins() []lawTwin {
	deepOr := func(deep, shallow func(x, d float64) float64) func(x, d float64) float64 {
		return func(x, d float64) float64 {
			if math.IsInf(d, 1) {
				return deep(x, d)
			}
			return shallow(x, d)
		}
	}
	spmHeight := deepOr(power(0.0016, 0.5), func(x, d float64) float64 { return 0.283 * depthTanh(0.530, 0.75, d, 0.0016/0.283*math.Sqrt(x)) })
	spmPeriod := deepOr(power(0.2857, 1.0/3), func(x, d float64) float64 { return 7.54 * depthTanh(0.833, 0.375, d, 0.2857/7.54*math.Pow(x, 1.0/3)) })
	breugem := func(k float64) func(x, d float64) float64 {
		return func(x, d float64) float64 {
			return 0.24 * math.Pow(depthTanh(0.343, 1.14, d, k*math.Pow(x, 0.79)), 0.572)
		}
	}
	breugemPeriod := func(x, d float64) float64 {
		return 7.69 * math.Pow(depthTanh(0.10, 2.01, d, 2.77e-7*math.Pow(x, 1.45)), 0.187)
	}
	cemFetch := func(x, d float64) float64 { // growth stops at Tp = 9.78 √(d/g)
		return math.Min(x, math.Pow(9.78*math.Sqrt(d)/0.651, 3))
	}
	return []lawTwin{
		{law: wind.Bretschneider, scale: plainWind, fullHeight: 0.24, fullPeriod: 1 / 0.13, fewest: 100, most: 2e4,
			height: func(x, d float64) float64 { return 0.283 * depthTanh(0.530, 0.75, d, 0.0125*math.Pow(x, 0.42)) },
			period: func(x, d float64) float64 {
				return 2.4 * math.Pi * depthTanh(0.833, 0.375, d, 0.077*math.Pow(x, 0.25)) / 0.95
			}},
		{law: wind.BreugemHolthuijsen, scale: plainWind, fullHeight: 0.24, fullPeriod: 7.69, fewest: 30, most: 1e5, height: breugem(4.41e-4), period: breugemPeriod},
		{law: wind.BreugemHolthuijsen414, scale: plainWind, fullHeight: 0.24, fullPeriod: 7.69, fewest: 30, most: 1e5, height: breugem(4.14e-4), period: breugemPeriod},
		{law: wind.YoungVerhagen, scale: plainWind, fullHeight: 4 * math.Sqrt(3.64e-3), fullPeriod: 1 / 0.133, fewest: 100, most: 1e5,
			height: func(x, d float64) float64 {
				return 4 * math.Sqrt(3.64e-3*math.Pow(depthTanh(0.493, 0.75, d, 0.00313*math.Pow(x, 0.57)), 1.74))
			},
			period: func(x, d float64) float64 {
				return 1 / (0.133 * math.Pow(depthTanh(0.331, 1.01, d, 5.215e-4*math.Pow(x, 0.73)), -0.37))
			}},
		{law: wind.KahmaCalkoen, scale: plainWind, fullHeight: 0.21, fullPeriod: 1 / 0.13, fewest: 30, most: 1.5e4, height: fromEnergy(5.2e-7, 0.9), period: fromOmega(13.7, 0.27)},
		{law: wind.KahmaCalkoenStable, scale: plainWind, fullHeight: 0.21, fullPeriod: 1 / 0.13, fewest: 30, most: 1.5e4, height: fromEnergy(9.3e-7, 0.76), period: fromOmega(12, 0.24)},
		{law: wind.KahmaCalkoenUnstable, scale: plainWind, fullHeight: 0.21, fullPeriod: 1 / 0.13, fewest: 30, most: 1.5e4, height: fromEnergy(5.4e-7, 0.94), period: fromOmega(14.2, 0.28)},
		{law: wind.JONSWAP, scale: plainWind, fullHeight: 4 * math.Sqrt(3.64e-3), fullPeriod: 1 / 0.13, fewest: 30, most: 2.3e4, height: fromEnergy(1.6e-7, 1),
			period: func(x, _ float64) float64 { return 1 / (3.5 * math.Pow(x, -0.33)) }},
		{law: wind.JONSWAPStart, scale: plainWind, fullHeight: 4 * math.Sqrt(3.64e-3), fullPeriod: 1 / 0.13, fewest: 30, most: 2.3e4, height: fromEnergy(1.6e-7, 1),
			period: func(x, _ float64) float64 { return 1 / (2.84 * math.Pow(x, -0.3)) }},
		{law: wind.Wilson, scale: plainWind, fullHeight: 0.30, fullPeriod: 8.61 / 0.95, fewest: 30, most: 1e5,
			height: func(x, _ float64) float64 { return 0.30 * (1 - math.Pow(1+0.004*math.Sqrt(x), -2)) },
			period: func(x, _ float64) float64 { return 8.61 * (1 - math.Pow(1+0.008*math.Pow(x, 1.0/3), -5)) / 0.95 }},
		{law: wind.SPM84, scale: spmWind, fullHeight: 0.2433, fullPeriod: 8.134, fewest: 30, most: 2.3e4, height: spmHeight, period: spmPeriod},
		{law: wind.SPMAdjusted, scale: plainWind, fullHeight: 0.2433, fullPeriod: 8.134, fewest: 30, most: 2.3e4, height: spmHeight, period: spmPeriod},
		{law: wind.ACES, scale: acesWind, fullHeight: 0.2433, fullPeriod: 8.134, fewest: 30, most: 2.3e4, height: spmHeight, period: spmPeriod, developedWind: true},
		{law: wind.ACESAdjusted, scale: plainWind, fullHeight: 0.2433, fullPeriod: 8.134, fewest: 30, most: 2.3e4, height: spmHeight, period: spmPeriod},
		{law: wind.Kamphuis, scale: plainWind, fullHeight: 0.243, fullPeriod: 8.13, fewest: 30, most: 2.3e4, height: power(0.0016, 0.5), period: power(0.286, 1.0/3)},
		{law: wind.CEM, scale: cemWind, fullHeight: 211.5, fullPeriod: 239.8, fewest: 1e4, most: 2.6e7,
			height: func(x, d float64) float64 { return math.Min(0.0413*math.Sqrt(cemFetch(x, d)), 0.6*d) },
			period: func(x, d float64) float64 { return 0.651 * math.Pow(cemFetch(x, d), 1.0/3) }},
		{law: wind.Smith, scale: acesWind, fullHeight: 0.2433, fullPeriod: 8.134, fewest: 30, most: 2.6e4, developedWind: true,
			height: deepOr(power(0.0015, 0.5), func(x, d float64) float64 { return 0.283 * depthTanh(0.530, 0.75, d, 0.0015/0.283*math.Sqrt(x)) }),
			period: deepOr(power(0.3704, 0.28), func(x, d float64) float64 { return 7.54 * depthTanh(0.833, 0.375, d, 0.3704/7.54*math.Pow(x, 0.28)) })},
		{law: wind.GroenDorrestein, scale: plainWind, fullHeight: 0.24, fullPeriod: 2 * math.Pi / 0.95, fewest: 100, most: 1e5,
			height: func(x, d float64) float64 {
				return math.Min(0.24*depthTanh(0.710, 0.763, d, 0.015*math.Pow(x, 0.45)), 0.55*d)
			},
			period: func(x, d float64) float64 {
				return 2 * math.Pi * depthTanh(0.855, 0.365, d, 0.0345*math.Pow(x, 0.37)) / 0.95
			}},
		{law: wind.HwangWang, scale: plainWind, fullHeight: 0.24, fullPeriod: 1 / 0.13, fewest: 30, most: 2.5e4, height: fromEnergy(6.191e-7, 0.8106), period: fromOmega(11.86, 0.2368)},
	}
}

// TestLawsAsPrinted: every law is its printed formula, in deep water and at constant depth, on the wind its authors drove it
// with, with its own full development and range.
func TestLawsAsPrinted(t *testing.T) {
	twins := lawTwins()
	if len(twins) != len(wind.Laws()) {
		t.Errorf("%d of %d laws", len(twins), len(wind.Laws()))
	}
	for _, w := range twins {
		units := w.fullPeriod * w.fullPeriod / 60 // about 1, but on a friction velocity
		for _, x := range []float64{1, 30, 1000, 2e4, 1e6} {
			for _, d := range []float64{inf, 8, 1, 0.3, 0.02} {
				x, d := x*units, d*units
				h, p := w.law.Growth(x, d)
				if want := w.height(x, d); !alike(h, want, 1e-12) {
					t.Errorf("%v at x = %v, D = %v: height %v, want %v", w.law, x, d, h, want)
				}
				if want := w.period(x, d); !alike(p, want, 1e-12) {
					t.Errorf("%v at x = %v, D = %v: period %v, want %v", w.law, x, d, p, want)
				}
			}
		}
		for _, u := range []float64{3, 11, 27} {
			s := w.scale(u)
			want := wind.Limits{Height: w.fullHeight, Period: w.fullPeriod, Shortest: w.fewest, Longest: w.most}
			if w.developedWind {
				want.Height *= u * u / (s * s)
				want.Period *= u / s
			}
			got := w.law.Limits(u)
			if !alike(w.law.Scale(u), s, 1e-12) || !alike(got.Height, want.Height, 1e-12) || !alike(got.Period, want.Period, 1e-12) || got.Shortest != want.Shortest || got.Longest != want.Longest {
				t.Errorf("%v at %v m/s: scale %v, want %v; %+v, want %+v", w.law, u, w.law.Scale(u), s, got, want)
			}
		}
		if h, p := w.law.Growth(100, 0); h > 0 || p > 0 {
			t.Errorf("%v without depth: %v, %v", w.law, h, p)
		}
	}
}

// TestDurationsAsPrinted: the minimum durations and the seas after a time are the printed relations of each set.
func TestDurationsAsPrinted(t *testing.T) {
	const g = 9.7 // anything but the usual, so that it shows
	curve := map[string]lawTwin{}
	for _, w := range lawTwins() {
		curve[w.law.String()] = w
	}
	for _, u := range []float64{4, 13} {
		spm, aces, cem := spmWind(u), acesWind(u), cemWind(u)
		si := func(k, a, b, c float64) (func(f float64) float64, func(s float64) float64) { // t = k F^a / (U^b g^c), and back
			m := math.Pow(u, b) * math.Pow(g, c)
			return func(f float64) float64 { return k * math.Pow(f, a) / m }, func(s float64) float64 { return math.Pow(s*m/k, 1/a) }
		}
		scaled := func(s, most float64) (func(f float64) float64, func(t float64) float64) { // g t/S = 68.8 x^2/3
			return func(f float64) float64 { return math.Min(most, 68.8*math.Pow(g*f/(s*s), 2.0/3)) * s / g },
				func(t float64) float64 { return math.Pow(math.Min(most, g*t/s)/68.8, 1.5) * s * s / g }
		}
		type pair struct {
			law    wind.Timed
			needed func(fetch float64) float64
			fetch  func(seconds float64) float64          // equivalent, or
			after  func(seconds float64) (hs, tp float64) // its own law
		}
		var pairs []pair
		add := func(law wind.Timed, needed, fetch func(float64) float64) {
			pairs = append(pairs, pair{law, needed, fetch, nil})
		}
		own := func(law wind.Timed, needed func(float64) float64, s, kh, nh, kt, nt float64) {
			pairs = append(pairs, pair{law, needed, nil, func(t float64) (hs, tp float64) {
				return kh * math.Pow(g*t/s, nh) * s * s / g, kt * math.Pow(g*t/s, nt) * s / g
			}})
		}
		needed, fetch := si(65.6, 0.67, 0.33, 0.33)
		add(wind.JONSWAP, needed, fetch)
		needed, fetch = si(43, 0.73, 0.46, 0.27)
		add(wind.Wilson, needed, fetch)
		needed, fetch = scaled(spm, inf)
		add(wind.SPM84, needed, fetch)
		needed, fetch = scaled(u, inf)
		add(wind.SPMAdjusted, needed, fetch)
		own(wind.ACESAdjusted, needed, u, 8.51e-5, 5.0/7, 0.0702, 0.411)
		needed, fetch = scaled(u, 71500)
		add(wind.Kamphuis, needed, fetch)
		needed, _ = scaled(aces, inf)
		own(wind.ACES, needed, aces, 8.51e-5, 5.0/7, 0.0702, 0.411)
		needed, _ = si(77.23, 0.67, 0.34, 0.33)
		add(wind.CEM, needed, func(t float64) float64 { return 5.23e-3 * math.Pow(g*t/cem, 1.5) * cem * cem / g })
		own(wind.Smith, func(f float64) float64 { return 51.09 * math.Pow(f, 0.72) / (math.Pow(g, 0.28) * math.Pow(aces, 0.44)) }, aces, 0.000103, 0.69, 0.082, 0.39)
		own(wind.HwangWang, func(f float64) float64 { // where 6.191e-7 x^0.8106 is 1.27e-8 t^1.06
			return math.Pow(6.191e-7/1.27e-8*math.Pow(g*f/(u*u), 0.8106), 1/1.06) * u / g
		}, u, 4*math.Sqrt(1.27e-8), 0.53, 2*math.Pi/36.92, 0.31)
		for _, c := range pairs {
			for _, f := range []float64{800, 30e3, 2e6} {
				if got, want := c.law.MinimumDuration(u, f, g), c.needed(f); !alike(got, want, 1e-12) {
					t.Errorf("%v, %v m/s over %v m: %v s, want %v", c.law, u, f, got, want)
				}
			}
			for _, seconds := range []float64{900, 20e3, 2e6} {
				var hs, tp float64
				if c.after != nil {
					hs, tp = c.after(seconds)
				} else {
					w := curve[c.law.String()]
					s := w.scale(u)
					x := g * c.fetch(seconds) / (s * s)
					hs, tp = w.height(x, inf)*s*s/g, w.period(x, inf)*s/g
				}
				if h, p := c.law.After(u, seconds, g); !alike(h, hs, 1e-12) || !alike(p, tp, 1e-12) {
					t.Errorf("%v, %v m/s after %v s: %v m %v s, want %v m %v s", c.law, u, seconds, h, p, hs, tp)
				}
			}
		}
	}
}

// TestDragAsPrinted: every drag law is its printed line or curve, in thousandths, below and above its corners.
func TestDragAsPrinted(t *testing.T) {
	for _, u := range []float64{0.5, 3, 7.4, 7.6, 9.9, 10.1, 10.2, 25} {
		large := 1.14
		if u > 10 {
			large = 0.49 + 0.065*u
		}
		for name, want := range map[string]float64{
			"LargePond1981": large, "LargePondToolbox": math.Max(1.15, 0.49+0.065*u), "Smith1980": 0.61 + 0.063*u, "Garratt1977": 0.75 + 0.067*u,
			"GarrattPower": 0.51 * math.Pow(u, 0.46), "Wu1982": 0.8 + 0.065*u, "WuCapped": math.Max(1.2875, 0.8+0.065*u),
			"Vera1983": 2.717/u + 0.142 + 0.0764*u, "DragCEM": 1.1 + 0.035*u,
		} {
			if got := 1e3 * dragLaws[name](u); !alike(got, want, 1e-12) {
				t.Errorf("%s at %v m/s: %v, want %v", name, u, got, want)
			}
		}
		if got, want := wind.ACESAdjustedWind(u), acesWind(u); !alike(got, want, 1e-12) {
			t.Errorf("ACES at %v m/s: %v, want %v", u, got, want)
		}
	}
}

// TestPrintedFormulas: the values are those of the printed formulas, where each of their terms counts.
func TestPrintedFormulas(t *testing.T) {
	const g = wind.Gravity
	nu := wind.AirViscosity(10)
	rough := wind.Charnock{Alpha: 0.02, Gravity: 9.7, Karman: 0.41, Viscosity: nu}
	z0 := 0.02*0.09/9.7 + 0.11*nu/0.3 // at u* = 0.3 m/s
	at5 := 0.3 / 0.41 * math.Log(5/z0)
	moved := rough.ToHeight(at5, 5, 20)
	friction := 8 * math.Sqrt((0.8+0.065*8)/1000) // of 8 m/s at 10 m by Wu
	byWu := wind.ToHeight(8+friction/0.4*math.Log(0.4), 4, 25, wind.Wu1982)
	vector := wind.GeostrophicWind(0.002, 0.001, -40, 1.2)
	f := 2 * 7.292115e-5 * math.Sin(40*math.Pi/180)
	d := wind.DepthLimitedHeight(9, 2)
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"extreme of a minute", wind.ExtremeRatio(60), 1.277 + 0.296*math.Tanh(0.9*math.Log10(45.0/60))},
		{"extreme of two hours", wind.ExtremeRatio(7200), 1.5334 - 0.15*math.Log10(7200)},
		{"from a minute to an hour", wind.ExtremeToExtreme(20, 60, 3600), 20 / (1.277 + 0.296*math.Tanh(0.9*math.Log10(0.75)))},
		{"Durst, a minute", wind.ExtremeRatioDurst(60), 0.977 + 0.64/(1+math.Pow(60/38.14, 0.685))},
		{"hurricane, a minute", wind.ExtremeRatioHurricane(60), 0.96 + 0.839/(1+math.Pow(60/36.27, 0.655))},
		{"speed of number 6.3", wind.BeaufortSpeed(6.3), 0.836 * math.Pow(6.3, 1.5)},
		{"viscosity at -15 °C", wind.AirViscosity(-15), 1.326e-5 * (1 - 6.542e-3*15 + 8.301e-6*225 + 4.84e-9*3375)},
		{"roughness", rough.Roughness(0.3), z0},
		{"roughness, the defaults", wind.Charnock{}.Roughness(0.3), 0.011 * 0.09 / g},
		{"Charnock, friction", rough.Friction(at5, 5), 0.3},
		{"Charnock, at 20 m", moved.Speed, 0.3 / 0.41 * math.Log(20/z0)},
		{"Charnock, at 10 m", moved.U10, 0.3 / 0.41 * math.Log(10/z0)},
		{"Charnock, its friction", moved.Friction, 0.3},
		{"Charnock, drag", moved.Drag, math.Pow(0.41/math.Log(10/z0), 2)},
		{"drag law, at 25 m", byWu.Speed, 8 + friction/0.4*math.Log(2.5)},
		{"drag law, at 10 m", byWu.U10, 8},
		{"drag law, its friction", byWu.Friction, friction},
		{"drag law, drag", byWu.Drag, (0.8 + 0.065*8) / 1000},
		{"Coriolis", wind.Coriolis(-40), -f},
		{"east, south of the equator", vector.East, 0.001 / (1.2 * f)},
		{"north, south of the equator", vector.North, -0.002 / (1.2 * f)},
		{"isobars", wind.Geostrophic(0.002, 40, 0), 0.002 / (1.22 * f)},
		{"contours", wind.GeostrophicContours(1e-4, 40, 9.7), 9.7e-4 / f},
		{"gradient wind", wind.GradientWind(10, 4e5, 40), -f*4e5/2 + math.Sqrt(f*f*16e10/4+f*4e5*10)},
		{"gradient wind of a high", wind.GradientWind(5, -4e5, 40), f*4e5/2 - math.Sqrt(f*f*16e10/4-f*4e5*5)},
		{"land", wind.LandToSea(8), 12},
		{"one point", wind.OnePointHeight(9, 7200), 0.22 * 81 / g * math.Pow(1+1.93e4*9/(g*7200), -0.75)},
		{"Toba", wind.TobaHeight(0.4, 5), 0.060 * 0.16 / g * math.Pow(g*5/0.4, 1.5)},
		{"highest in 2 m of water", d, 4 * math.Sqrt(1e-3*math.Pow(g*2/81, 1.2)) * 81 / g},
		{"longest in 2 m of water", wind.DepthLimitedPeriod(9, 2), 9 / (0.20 * math.Pow(g*2/81, -0.375) * g)},
		{"circular deviation at R = 1/√2", wind.CircularDeviation([]float64{0, 90}), math.Sqrt(-2*math.Log(math.Sqrt2/2)) * 180 / math.Pi},
		{"angular deviation at R = 1/√2", wind.AngularDeviation([]float64{0, 90}), math.Sqrt(2*(1-math.Sqrt2/2)) * 180 / math.Pi},
		{"Yamartino at R = 1/√2", wind.Yamartino([]float64{0, 90}), 45 * (1 + (2/math.Sqrt(3)-1)*math.Pow(0.5, 1.5))},
		{"parts of 3° and 4°", wind.CombineDeviations([]float64{3, 4}), math.Sqrt(12.5)},
		{"scalar mean of 10 and 20", first(wind.ScalarDirection([]float64{10, 20})), 15},
		{"its deviation", second(wind.ScalarDirection([]float64{10, 20})), 5},
		{"scalar mean of one", first(wind.ScalarDirection([]float64{10})), 10},
	} {
		if !alike(c.got, c.want, 1e-10) {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
}

// TestFrictionCloseToTheRoughness: the friction speed is found down to heights little above e² roughnesses, where the wind at a height
// no longer rises with it.
func TestFrictionCloseToTheRoughness(t *testing.T) {
	for _, log := range []float64{2.05, 2.2, 3, 5, 12} {
		for _, friction := range []float64{0.1, 2} {
			z0 := 0.011 * friction * friction / wind.Gravity
			speed := friction / wind.Karman * log
			if got := (wind.Charnock{}).Friction(speed, z0*math.Exp(log)); !alike(got, friction, 1e-9) {
				t.Errorf("ln(z/z0) = %v: %v, want %v", log, got, friction)
			}
		}
	}
	// Where the smooth flow has a part r of the roughness, it is found down to ln(z/z0) = 3(1 - r) - 1, which is where u* ln(z/z0(u*))
	// stops rising, and to 1.
	for _, c := range []struct{ smooth, log float64 }{{0.1, 1.72}, {0.2, 1.45}, {0.2, 1.6}, {0.2, 2}, {0.5, 1.05}, {0.5, 1.2}, {0.9, 1.2}, {0.99, 1.5}, {0.99, 8}} {
		for _, friction := range []float64{0.1, 0.3} {
			rough := 0.011 * friction * friction / wind.Gravity
			z0 := rough / (1 - c.smooth)
			sea := wind.Charnock{Viscosity: c.smooth * z0 * friction / 0.11}
			if got := sea.Friction(friction/wind.Karman*c.log, z0*math.Exp(c.log)); !alike(got, friction, 1e-9) {
				t.Errorf("%v smooth, ln(z/z0) = %v: %v, want %v", c.smooth, c.log, got, friction)
			}
		}
	}
	// Without viscosity nothing but gravity has a unit: k times the wind at k² times the height has k times the friction speed.
	for _, k := range []float64{1e-6, 1e-3, 1e5, 1e6, 3e6, 7e6} {
		for _, z := range []float64{1, 10} {
			if got, want := (wind.Charnock{}).Friction(8*k, z*k*k), k*(wind.Charnock{}).Friction(8, z); !alike(got, want, 1e-11) {
				t.Errorf("%v times the wind: %v, want %v", k, got, want)
			}
		}
	}
	// Beyond, no friction speed carries so much wind so low.
	if got := (wind.Charnock{}).Friction(2.001*2/wind.Karman, 0.011*4/wind.Gravity*math.Exp(1.98)); !math.IsNaN(got) {
		t.Errorf("within e² roughnesses: %v", got)
	}
}

// TestFetchSums: the averages over directions are their printed sums on a coast that is not the same to the left and the right.
func TestFetchSums(t *testing.T) {
	coast := func(from float64) float64 { return 5e3 + from*from/7 }
	wrap := func(deg float64) float64 { return math.Mod(deg+360, 360) }
	for _, from := range []float64{0, 17, 200, 341} {
		cosine, cosine2, weights := 0.0, 0.0, 0.0
		for off := -42.0; off <= 42; off += 6 {
			c := math.Cos(off * math.Pi / 180)
			cosine += coast(wrap(from+off)) * c
			cosine2 += coast(wrap(from+off)) * c * c
			weights += c
		}
		if got := wind.CosineFetch(coast, from); !alike(got, cosine/weights, 1e-12) {
			t.Errorf("cosine, from %v: %v, want %v", from, got, cosine/weights)
		}
		if got := wind.SavilleFetch(coast, from); !alike(got, cosine2/weights, 1e-12) {
			t.Errorf("Saville, from %v: %v, want %v", from, got, cosine2/weights)
		}
		for _, half := range []float64{0, 0.5, 1, 6.9, 7} {
			sum, n := 0.0, 0.0
			for off := -math.Floor(half); off <= half; off++ {
				sum += coast(wrap(from + off))
				n++
			}
			if got := wind.ArcFetch(coast, from, half); !alike(got, sum/n, 1e-12) {
				t.Errorf("arc of %v, from %v: %v, want %v", half, from, got, sum/n)
			}
		}
		// Of all whole degrees the one of the greatest F^0.28 cos^0.44.
		best, length, waves := 0.0, 0.0, 0.0
		for off := -89.0; off < 90; off++ {
			mean := wind.ArcFetch(coast, from+off, 7)
			if merit := math.Pow(mean, 0.28) * math.Pow(math.Cos(off*math.Pi/180), 0.44); merit > best {
				best, length, waves = merit, mean, wrap(from+off)
			}
		}
		if l, w := wind.RestrictedFetch(coast, from); !alike(l, length, 1e-12) || !near(w, waves, 1e-9) {
			t.Errorf("restricted, from %v: %v from %v, want %v from %v", from, l, w, length, waves)
		}
	}
	// Of two arms alike the one nearer the wind, and along the lake either way.
	for _, c := range []struct{ arm, wind, waves float64 }{{60, 30, 53}, {0, 30, 7}, {340, 10, 347}} {
		lake := func(from float64) float64 {
			if math.Abs(math.Remainder(from-c.arm, 360)) < 0.5 {
				return 1e6
			}
			return 0
		}
		// The arc of 15 degrees that just holds the arm and lies nearest the wind.
		if l, w := wind.RestrictedFetch(lake, c.wind); !alike(l, 1e6/15, 1e-12) || w != c.waves {
			t.Errorf("arm at %v, wind from %v: %v from %v, want %v", c.arm, c.wind, l, w, c.waves)
		}
	}
}
