package wind_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/wind"
)

var dragLaws = map[string]wind.DragLaw{
	"LargePond1981": wind.LargePond1981, "LargePondToolbox": wind.LargePondToolbox, "Smith1980": wind.Smith1980,
	"Garratt1977": wind.Garratt1977, "GarrattPower": wind.GarrattPower, "Wu1982": wind.Wu1982, "WuCapped": wind.WuCapped,
	"Vera1983": wind.Vera1983, "DragCEM": wind.DragCEM, "Smith1988": wind.Smith1988(15).Drag,
}

// Fits to the same sea: from 8 to 20 m/s, where all were measured, each stays
// within the quarter or so by which the measurements scatter.
func TestDragLawsAgreeWithinTheScatter(t *testing.T) {
	for u := 8.0; u <= 20; u++ {
		var sum float64
		for _, l := range dragLaws {
			sum += l(u)
		}
		mean := sum / float64(len(dragLaws))
		for name, l := range dragLaws {
			if !near(l(u), mean, 0.25*mean) {
				t.Errorf("%s at %v m/s: %v, mean %v", name, u, l(u), mean)
			}
		}
	}
	for name, l := range dragLaws {
		for _, bad := range []float64{-1, math.NaN(), math.Inf(1), math.Inf(-1)} {
			if v := l(bad); v == v {
				t.Errorf("%s(%v) = %v", name, bad, v)
			}
		}
	}
}

// No law steps by more than a hundredth, but for the one that is published with
// a step at 10 m/s that happens to close.
func TestDragLawsContinueAcrossTheirBranches(t *testing.T) {
	for name, l := range dragLaws {
		for u := 3.0; u < 40; u += 0.01 {
			if !near(l(u+0.01), l(u), 0.01*l(u)) {
				t.Errorf("%s steps at %v m/s from %v to %v", name, u, l(u), l(u+0.01))
			}
		}
	}
	if !near(wind.LargePond1981(10), wind.LargePond1981(math.Nextafter(10, 11)), 1e-15) {
		t.Error("Large and Pond meet at 10 m/s")
	}
}

func TestStressIsDensityTimesFrictionSpeedSquared(t *testing.T) {
	for name, l := range dragLaws {
		for _, u := range []float64{0, 0.5, 5, 12, 30} {
			f := wind.FrictionSpeed(u, l)
			if !near(wind.Stress(u, 1.2, l), 1.2*f*f, 1e-12) || !near(wind.Stress(u, 0, l), wind.AirDensity*f*f, 1e-12) {
				t.Errorf("%s at %v m/s", name, u)
			}
		}
		if v := wind.Stress(5, -1, l); v == v {
			t.Errorf("%s: negative density gives %v", name, v)
		}
	}
	for _, f := range []func(){func() { wind.Stress(5, 0, nil) }, func() { wind.FrictionSpeed(5, nil) }, func() { wind.ToHeight(5, 5, 10, nil) }} {
		func() {
			defer func() {
				if recover() == nil {
					t.Error("no panic without a law")
				}
			}()
			f()
		}()
	}
}

// What is lifted from one height to another comes down again, and lifting in
// two steps is lifting in one.
func TestHeightThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := rapid.Float64Range(0.5, 45).Draw(t, "u")
		a := rapid.Float64Range(2, 50).Draw(t, "a")
		b := rapid.Float64Range(2, 50).Draw(t, "b")
		c := rapid.Float64Range(2, 50).Draw(t, "c")
		lifts := map[string]func(u, from, to float64) float64{
			"power":   func(u, from, to float64) float64 { return wind.Power(u, from, to, 0.11) },
			"log":     func(u, from, to float64) float64 { return wind.Log(u, from, to, 2e-4) },
			"smith88": func(u, from, to float64) float64 { return wind.Smith1988(15).ToHeight(u, from, to).Speed },
			"rough":   func(u, from, to float64) float64 { return wind.Charnock{Alpha: 0.0185}.ToHeight(u, from, to).Speed },
		}
		for name, l := range dragLaws {
			if name != "LargePond1981" {
				lifts[name] = func(u, from, to float64) float64 { return wind.ToHeight(u, from, to, l).Speed }
			}
		}
		for name, lift := range lifts {
			up := lift(u, a, b)
			if !near(lift(up, b, a), u, 1e-7*u) {
				t.Fatalf("%s: %v at %v m, %v at %v m, back %v", name, u, a, up, b, lift(up, b, a))
			}
			if !near(lift(up, b, c), lift(u, a, c), 1e-7*u) {
				t.Fatalf("%s: two steps %v, one step %v", name, lift(up, b, c), lift(u, a, c))
			}
			if (b > a) != (up > u) && !near(up, u, 1e-9*u) {
				t.Fatalf("%s: %v at %v m, %v at %v m", name, u, a, up, b)
			}
		}
	})
}

// The factors from 5 m that the doc prints.
func TestFactorsFromABuoysHeight(t *testing.T) {
	for name, c := range map[string]struct{ got, want float64 }{
		"Smith 1988": {wind.Smith1988(15).ToHeight(10, 5, 10).Speed / 10, 1.0675},
		"Large-Pond": {wind.ToHeight(10, 5, 10, wind.LargePond1981).Speed / 10, 1.063},
		"z0 0.2 mm":  {wind.Log(1, 5, 10, 2e-4), 1.0684},
		"sea":        {wind.Power(1, 5, 10, wind.SeaExponent), 1.0792},
		"land":       {wind.Power(1, 5, 10, wind.LandExponent), 1.1041},
	} {
		if !near(c.got, c.want, 6e-4) {
			t.Errorf("%s: %v, want %v", name, c.got, c.want)
		}
	}
}

func TestShiftOfNoHeightChangesNothing(t *testing.T) {
	for name, l := range dragLaws {
		for _, u := range []float64{0, 1, 10, 30} {
			p := wind.ToHeight(u, 7, 7, l)
			if !near(p.Speed, u, 1e-12) {
				t.Errorf("%s: %v became %v", name, u, p.Speed)
			}
		}
		for _, height := range []float64{12, 20} { // however light the wind is
			if p := wind.ToHeight(1e-3, height, height, l); !alike(p.Speed, 1e-3, 1e-12) {
				t.Errorf("%s at %v m: 0.001 became %v", name, height, p.Speed)
			}
		}
		for _, c := range [][3]float64{{-1, 5, 10}, {5, 0, 10}, {5, 5, -1}, {math.NaN(), 5, 10}, {5, math.NaN(), 10}, {5, 5, math.Inf(1)}} {
			if p := wind.ToHeight(c[0], c[1], c[2], l); p.Speed == p.Speed || p.Drag == p.Drag {
				t.Errorf("%s: %v gives %+v", name, c, p)
			}
		}
	}
}

// The friction speed found is the one whose roughness carries the profile.
func TestCharnockFrictionSolvesItsProfile(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := wind.Charnock{
			Alpha:     rapid.Float64Range(0.008, 0.035).Draw(t, "alpha"),
			Viscosity: rapid.SampledFrom([]float64{0, 1.5e-5}).Draw(t, "viscosity"),
		}
		u := rapid.Float64Range(0.05, 45).Draw(t, "u")
		z := rapid.Float64Range(3, 60).Draw(t, "z")
		f := c.Friction(u, z)
		if !near(f/wind.Karman*math.Log(z/c.Roughness(f)), u, 1e-9*u) {
			t.Fatalf("%v m/s at %v m: u* %v", u, z, f)
		}
		p := c.ToHeight(u, z, 10)
		if !near(c.Drag(p.U10), p.Drag, 1e-9) || !near(math.Sqrt(p.Drag)*p.U10, f, 1e-9*f) || !near(p.Speed, p.U10, 1e-12*p.U10) {
			t.Fatalf("%+v", p)
		}
	})
	for _, c := range []wind.Charnock{{Alpha: -1}, {Gravity: math.NaN()}, {Viscosity: -1}, {Karman: 2}, wind.Smith1988(math.NaN())} {
		if v := c.Friction(10, 10); v == v {
			t.Errorf("%+v gives %v", c, v)
		}
	}
	if v := (wind.Charnock{}).Friction(500, 0.5); v == v {
		t.Errorf("a sea rougher than the height is high gives %v", v)
	}
}

func TestAirViscosityRises(t *testing.T) {
	for c := -40.0; c < 50; c++ {
		if a, b := wind.AirViscosity(c), wind.AirViscosity(c+1); !(b > a && a > 0.9e-5 && b < 2e-5) {
			t.Errorf("%v at %v, %v a degree above", a, c, b)
		}
	}
}

func TestExtremeRatiosFallWithTime(t *testing.T) {
	for name, c := range map[string]struct {
		f       func(float64) float64
		last    float64
		atTheHr float64
	}{
		"ExtremeRatio": {wind.ExtremeRatio, 36000, 1e-12}, "Durst": {wind.ExtremeRatioDurst, 3600, 0.01}, "hurricane": {wind.ExtremeRatioHurricane, 3600, 0.01},
	} {
		before := math.Inf(1)
		for s := 1.0; s <= c.last; s *= 1.05 {
			r := c.f(s)
			if !(r < before && r > 0.8 && r < 1.8) {
				t.Errorf("%s(%v) = %v after %v", name, s, r, before)
			}
			before = r
		}
		if !near(c.f(3600), 1, c.atTheHr) {
			t.Errorf("%s at the hour: %v", name, c.f(3600))
		}
		for _, bad := range []float64{0, 0.9, c.last + 1, math.NaN(), math.Inf(1)} {
			if v := c.f(bad); v == v {
				t.Errorf("%s(%v) = %v", name, bad, v)
			}
		}
	}
	// The branches meet to five parts in ten thousand.
	if !near(wind.ExtremeRatio(3599.999), 1, 5e-4) || !near(wind.ExtremeRatio(3600.001), 1, 5e-4) {
		t.Error("the branches part at the hour")
	}
	// There and back.
	if got := wind.ExtremeToExtreme(wind.ExtremeToExtreme(20, 60, 7200), 7200, 60); !near(got, 20, 1e-12) {
		t.Error(got)
	}
	if v := wind.FastestMileTime(0); v == v {
		t.Error(v)
	}
}

func TestGustFactor(t *testing.T) {
	if !near(wind.GustFactor(12, 8), 1.5, 1e-15) {
		t.Error(wind.GustFactor(12, 8))
	}
	for _, c := range [][2]float64{{5, 8}, {5, 0}, {math.NaN(), 5}, {5, math.NaN()}, {math.Inf(1), 5}} {
		if v := wind.GustFactor(c[0], c[1]); v == v {
			t.Errorf("%v gives %v", c, v)
		}
	}
}

func TestLandToSeaMeetsTheLandWind(t *testing.T) {
	for u := 0.5; u < 27; u += 0.5 {
		if !(wind.LandToSea(u) > u) {
			t.Errorf("%v m/s on land gives %v at sea", u, wind.LandToSea(u))
		}
	}
	if !near(wind.LandToSea(5), 8.77, 0.005) || wind.LandToSea(0) != 0 {
		t.Error(wind.LandToSea(5))
	}
}

// 1.864 W^(7/9) in m/s is the 2.16 W^(7/9) of knots, to three figures.
func TestShipWindInKnots(t *testing.T) {
	for kn := 5.0; kn < 60; kn += 5 {
		got := wind.ShipToTenMetres(kn*wind.Knot) / wind.Knot
		want := 2.16 * math.Pow(kn, 7.0/9)
		if !near(got, want, 1e-3*want) {
			t.Errorf("%v kn: %v, want %v", kn, got, want)
		}
	}
	if !near(wind.ShipToTenMetres(16.5), 16.5, 0.01) {
		t.Error("it crosses at 16.5 m/s")
	}
}

func TestCoriolisIsOddInLatitude(t *testing.T) {
	for lat := 0.0; lat <= 90; lat += 7.5 {
		if wind.Coriolis(-lat) != -wind.Coriolis(lat) {
			t.Errorf("at %v", lat)
		}
	}
	// Latitudes are degrees: a published how-to took sin(42 rad) and got a
	// negative f in the north.
	if f := wind.Coriolis(42); !near(f, 9.7588e-5, 5e-9) {
		t.Error(f)
	}
	if v := wind.Coriolis(91); v == v {
		t.Error(v)
	}
}

func TestGeostrophicFromIsobarsAndContoursAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		slope := rapid.Float64Range(1e-6, 1e-3).Draw(t, "slope")
		lat := rapid.Float64Range(5, 85).Draw(t, "lat")
		toward := rapid.Float64Range(0, 360).Draw(t, "rising toward")
		rho := rapid.Float64Range(0.9, 1.4).Draw(t, "rho")
		// Hydrostatic: a pressure gradient of rho g slope.
		grad := rho * wind.Gravity * slope
		a, b := wind.Geostrophic(grad, lat, rho), wind.GeostrophicContours(slope, lat, 0)
		if !near(a, b, 1e-12*b) {
			t.Fatalf("%v from isobars, %v from contours", a, b)
		}
		s, c := math.Sincos(toward * math.Pi / 180)
		north := wind.GeostrophicWind(grad*s, grad*c, lat, rho)
		south := wind.GeostrophicWind(grad*s, grad*c, -lat, rho)
		if !near(north.Speed(), a, 1e-9*a) || !near(north.East, -south.East, 1e-9*a) || !near(north.North, -south.North, 1e-9*a) {
			t.Fatalf("north %v, south %v, speed %v", north, south, a)
		}
		// Along the isobars, high pressure on the right hand in the north.
		if !near(north.East*s+north.North*c, 0, 1e-9*a) || !(north.North*s-north.East*c > 0) {
			t.Fatalf("rising toward %v, blowing %v", toward, north)
		}
	})
	if v := wind.Geostrophic(1e-3, 0, 1.2); v == v {
		t.Error("there is no geostrophic wind on the equator")
	}
}

// V²/R + fV = f Vg: what the gradient wind is, in both senses of turning.
func TestGradientWindBalancesTheForces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := rapid.Float64Range(0.1, 60).Draw(t, "vg")
		lat := rapid.Float64Range(5, 90).Draw(t, "lat")
		r := rapid.Float64Range(5e4, 5e6).Draw(t, "r") * rapid.SampledFrom([]float64{1, -1}).Draw(t, "sense")
		f := wind.Coriolis(lat)
		v := wind.GradientWind(g, r, lat)
		if 4*g > f*-r && r < 0 {
			if v == v {
				t.Fatalf("a high cannot hold %v m/s: %v", g, v)
			}
			return
		}
		if !near(v*v/r+f*v, f*g, 1e-9*f*g) || (r > 0) != (v < g) {
			t.Fatalf("vg %v, r %v: %v", g, r, v)
		}
		if v != wind.GradientWind(g, r, -lat) {
			t.Fatal("the hemispheres differ")
		}
	})
	if !near(wind.GradientWind(10, 1e12, 45), 10, 1e-6) || !near(wind.GradientWind(10, -1e12, 45), 10, 1e-6) || wind.GradientWind(10, math.Inf(-1), 45) != 10 {
		t.Error("straight isobars give the geostrophic wind")
	}
	for _, c := range [][3]float64{{-1, 1e6, 45}, {10, 0, 45}, {10, math.NaN(), 45}, {10, 1e6, 0}, {10, 1e6, math.NaN()}} {
		if v := wind.GradientWind(c[0], c[1], c[2]); v == v {
			t.Errorf("%v gives %v", c, v)
		}
	}
}
