package wind_test

import (
	"math"
	"testing"

	"followingsea.example/wind"
)

// levelLaw is a law of one height and period, h and t, at any fetch; deep is its height in more than a million of depth.
// Full development is 1 and 1, and it is meant for fetches of 10 to 100.
type levelLaw struct{ h, t, deep, scale float64 }

func (levelLaw) String() string            { return "level" }
func (l levelLaw) Scale(u float64) float64 { return u * l.scale }
func (levelLaw) Limits(float64) wind.Limits {
	return wind.Limits{Height: 1, Period: 1, Shortest: 10, Longest: 100}
}
func (l levelLaw) Growth(x, d float64) (h, t float64) {
	if d > 1e6 {
		return l.deep, l.t
	}
	return l.h, l.t
}
func (levelLaw) MinimumDuration(u, fetch, gravity float64) float64    { return 100 }
func (l levelLaw) After(u, seconds, gravity float64) (hs, tp float64) { return 3, 0.25 }

// TestLimitsOnTheBorders: what limits a sea and what there is to say of it changes where the text says it does. With 8 m/s under
// 8 m/s² the units of length and time are 8 m and a second, and all divisions are exact.
func TestLimitsOnTheBorders(t *testing.T) {
	level := func(h float64) levelLaw { return levelLaw{h: h, t: 0.5, deep: h, scale: 1} }
	depths := func(h, deep float64) levelLaw { return levelLaw{h: h, t: 0.5, deep: deep, scale: 1} }
	at := func(fetch, depth float64) wind.Conditions {
		return wind.Conditions{Speed: 8, Fetch: 8 * fetch, Duration: inf, MeanDepth: 8 * depth, Gravity: 8}
	}
	stable := func(air, water float64) wind.Conditions {
		c := at(50, inf)
		c.Air, c.Water = wind.Celsius(air), wind.Celsius(water)
		return c
	}
	deepEdge := 0.9 * 0.9
	for _, row := range []struct {
		name    string
		law     wind.Law
		c       wind.Conditions
		limit   wind.Limit
		remarks wind.Remark
	}{
		{"the shortest fetch", level(0.5), at(10, inf), wind.LimitFetch, 0},
		{"a shorter fetch", level(0.5), at(below(10), inf), wind.LimitFetch, wind.RemarkShortFetch},
		{"the longest fetch", level(0.5), at(100, inf), wind.LimitFetch, 0},
		{"a longer fetch", level(0.5), at(above(100), inf), wind.LimitFetch, wind.RemarkLongFetch},
		{"a longer fetch, all but developed", level(below(0.99)), at(200, inf), wind.LimitFetch, wind.RemarkLongFetch},
		{"a longer fetch, developed", level(0.99), at(200, inf), wind.LimitDeveloped, 0},
		{"the open sea", level(0.99), at(inf, inf), wind.LimitDeveloped, wind.RemarkOpenSea},
		{"height 0.6 of the depth", level(0.6), at(50, 1), wind.LimitFetch, 0},
		{"height over 0.6 of the depth", level(above(0.6)), at(50, 1), wind.LimitFetch, wind.RemarkBreaking},
		{"a tenth lower than in deep water", depths(deepEdge, 0.9), at(50, 100), wind.LimitFetch, 0},
		{"more than a tenth", depths(below(deepEdge), 0.9), at(50, 100), wind.LimitDepth, 0},
		{"a tenth lower than developed", depths(0.9, 5), at(50, 100), wind.LimitFetch, 0},
		{"more than a tenth below developed", depths(below(0.9), 5), at(50, 100), wind.LimitDepth, 0},
		{"air 2 K warmer", level(0.5), stable(14, 12), wind.LimitFetch, 0},
		{"air warmer by more", level(0.5), stable(above(14), 12), wind.LimitFetch, wind.RemarkStable},
		{"air 2 K colder", level(0.5), stable(12, 14), wind.LimitFetch, 0},
		{"air colder by more", level(0.5), stable(12, above(14)), wind.LimitFetch, wind.RemarkUnstable},
	} {
		s := wind.Grow(row.law, row.c)
		if s.Limit != row.limit || s.Remarks != row.remarks {
			t.Errorf("%s: %v, %q, want %v, %q", row.name, s.Limit, s.Remarks, row.limit, row.remarks)
		}
		if p := wind.AsPublished(row.law.(levelLaw), row.c); p.Remarks != row.remarks {
			t.Errorf("%s, as published: %q, want %q", row.name, p.Remarks, row.remarks)
		}
	}
	none := wind.Grow(levelLaw{h: 0.5, t: 0.5, deep: 0.5}, at(50, 1))
	published := wind.AsPublished(levelLaw{h: 0.5, t: 0.5, deep: 0.5}, at(50, 1))
	if none.Known() || published.Known() {
		t.Errorf("a law that makes no speed of the wind makes a sea: %+v, %+v", none, published)
	}
	// A law for deep water knows the bottom from half its deep-water length, g Tp²/4π, on.
	for _, law := range []wind.Timed{wind.JONSWAP, wind.Wilson, wind.Kamphuis, wind.HwangWang} {
		c := at(1000, inf)
		half := 8 * math.Pow(wind.Grow(law, c).Tp, 2) / (4 * math.Pi)
		for depth, want := range map[float64]wind.Remark{half * (1 + 1e-12): 0, half * (1 - 1e-12): wind.RemarkNoDepth} {
			c.MeanDepth = depth
			a, b := wind.Grow(law, c), wind.AsPublished(law, c)
			if a.Remarks != want || b.Remarks != want || a.Limit != wind.LimitFetch || b.Limit != wind.LimitFetch {
				t.Errorf("%v in %v m: %q and %q, want %q", law, depth, a.Remarks, b.Remarks, want)
			}
		}
	}
}

// TestDurationOnTheBorder: a wind that has blown just as long as the fetch needs gives the sea of the fetch; one that has blown
// less does not.
func TestDurationOnTheBorder(t *testing.T) {
	c := wind.Conditions{Speed: 8, Fetch: 40e3, Duration: inf, MeanDepth: 20, Gravity: 8}
	for _, law := range wind.BandLaws() {
		c.Duration = wind.MinimumDuration(law, c)
		full := wind.Grow(law, c)
		c.Duration *= 1 - 1e-12
		short := wind.Grow(law, c)
		if full.Limit == wind.LimitDuration || full.Fetch != c.Fetch || short.Limit != wind.LimitDuration || !alike(short.Hs, full.Hs, 1e-9) {
			t.Errorf("%v: %+v, just before %+v", law, full, short)
		}
	}
	law := levelLaw{h: 0.5, t: 0.5, deep: 0.5, scale: 1}
	c.MeanDepth, c.Duration = inf, 100 // as long as the law wants
	if s := wind.AsPublished(law, c); s.Limit != wind.LimitFetch || s.Hs != 0.5*8 || s.Fetch != c.Fetch {
		t.Errorf("as long as the law wants: %+v", s)
	}
	c.Duration = below(100)
	if s := wind.AsPublished(law, c); s.Limit != wind.LimitDuration || s.Hs != 3 || s.Tp != 0.25 {
		t.Errorf("not as long as the law wants: %+v", s)
	}
	// The equivalent fetch of a printed duration law is the fetch of its height.
	c = steady(10, 300e3, inf)
	c.Duration = 4 * 3600
	for _, law := range []wind.Timed{wind.JONSWAP, wind.ACES, wind.Smith, wind.HwangWang} {
		s := wind.AsPublished(law, c)
		if again := wind.AsPublished(law, steady(10, s.Fetch, inf)); s.Limit != wind.LimitDuration || !alike(again.Hs, s.Hs, 1e-9) {
			t.Errorf("%v: %+v, over its fetch %+v", law, s, again)
		}
	}
}

// TestFullDevelopmentAsPublished: a height or a period above full development makes it both; one that is just there does not.
func TestFullDevelopmentAsPublished(t *testing.T) {
	c := wind.Conditions{Speed: 12, Fetch: 1e5, Duration: inf, MeanDepth: inf, Gravity: 9}
	unit, second := 16.0, 12.0/9 // U²/g and U/g
	for _, row := range []struct {
		h, t float64
		want bool
	}{{1, 1, false}, {1 + 1e-12, 0.5, true}, {0.5, 1 + 1e-12, true}, {0.5, 0.5, false}} {
		s := wind.AsPublished(levelLaw{row.h, row.t, row.h, 1}, c)
		want := wind.Sea{Hs: row.h * unit, Tp: row.t * second, Fetch: 1e5, Limit: wind.LimitFetch}
		if row.want {
			want = wind.Sea{Hs: unit, Tp: second, Fetch: math.NaN(), Limit: wind.LimitDeveloped}
		}
		if !alike(s.Hs, want.Hs, 1e-15) || !alike(s.Tp, want.Tp, 1e-15) || s.Limit != want.Limit || s.Fetch != want.Fetch && !math.IsNaN(want.Fetch) {
			t.Errorf("%v and %v of full development: %+v, want %+v", row.h, row.t, s, want)
		}
	}
	// At finite depth the curves themselves say how far it goes.
	c.MeanDepth = 16 * 1000
	if s := wind.AsPublished(levelLaw{1.5, 1.5, 1.5, 1}, c); s.Hs != 1.5*unit || s.Limit != wind.LimitDeveloped {
		t.Errorf("at a depth: %+v", s)
	}
}

// TestFetchOfFullDevelopment: a law that reaches full development does so in a time and over a fetch; one that only tends
// to it needs for ever. A height above it has no fetch, one of just that has.
func TestFetchOfFullDevelopment(t *testing.T) {
	tends := map[string]bool{"Breugem & Holthuijsen": true, "Breugem & Holthuijsen (4.14e-4)": true, "Young & Verhagen": true, "Wilson": true, "Groen & Dorrestein": true}
	for _, law := range wind.Laws() {
		c := steady(11, inf, inf)
		if got := wind.MinimumDuration(law, c); math.IsInf(got, 1) != tends[law.String()] || !(got > 3600) {
			t.Errorf("%v: full development after %v s", law, got)
		}
		if full := wind.Grow(law, c); math.IsInf(full.Fetch, 1) != tends[law.String()] || full.Limit != wind.LimitDeveloped {
			t.Errorf("%v: full development over %v m, %v", law, full.Fetch, full.Limit)
		}
	}
	// Bretschneider's height stops before its period: 0.283 tanh(0.0125 x^0.42) = 0.24.
	c := steady(11, inf, inf)
	x := math.Pow(math.Atanh(0.24/0.283)/0.0125, 1/0.42)
	if got, want := wind.EquivalentFetch(nil, c, 0.24*121/9.81*(1-1e-12)), x*121/9.81; !alike(got, want, 1e-9) {
		t.Errorf("over %v m, want %v", got, want)
	}
	if got := wind.EquivalentFetch(nil, c, 0.24*121/9.81*(1+1e-9)); !math.IsInf(got, 1) {
		t.Errorf("above full development over %v m", got)
	}
	if got := wind.EquivalentFetch(nil, c, belowZero); !math.IsNaN(got) {
		t.Errorf("a negative height over %v m", got)
	}
	if got := wind.EquivalentFetch(nil, c, 0); got != 0 {
		t.Errorf("no height over %v m", got)
	}
}

// powerLaw is a law whose height is a power of the fetch, or the height 1 for the power 0, and whose period is its cube root.
type powerLaw struct {
	factor, power  float64
	height, period float64 // of full development
}

func (powerLaw) String() string          { return "power" }
func (powerLaw) Scale(u float64) float64 { return u }
func (l powerLaw) Limits(float64) wind.Limits {
	return wind.Limits{Height: l.height, Period: l.period, Longest: inf}
}
func (l powerLaw) Growth(x, d float64) (h, t float64) {
	return l.factor * math.Pow(x, l.power), math.Cbrt(x)
}

// TestAtTheFetchOfFullDevelopment: growth stops at the first of height and period to reach full development, and over a fetch of just
// that the sea is developed; a sea of just the height of full development has a fetch, a higher one has none.
func TestAtTheFetchOfFullDevelopment(t *testing.T) {
	c := wind.Conditions{Speed: 8, Fetch: inf, Duration: inf, MeanDepth: inf, Gravity: 8} // lengths in 8 m, times in seconds
	long := powerLaw{factor: 1.0 / 1024, power: 0.5, height: 1, period: 8}                // the period is there first, at 8³ lengths
	full := wind.Grow(long, c)
	if !alike(full.Fetch, 512*8, 1e-9) || !alike(full.Tp, 8, 1e-9) || full.Limit != wind.LimitDeveloped {
		t.Errorf("over an endless fetch: %+v", full)
	}
	c.Fetch = full.Fetch
	if s := wind.Grow(long, c); s.Limit != wind.LimitDeveloped {
		t.Errorf("over its fetch: %+v", s)
	}
	c.Fetch = below(full.Fetch)
	if s := wind.Grow(long, c); s.Limit != wind.LimitFetch {
		t.Errorf("over less than its fetch: %+v", s)
	}
	high := powerLaw{factor: 1.0 / 16, power: 0.5, height: 1, period: 8} // the height is there first, at 16² lengths
	if got := wind.EquivalentFetch(high, c, 8); !alike(got, 256*8, 1e-9) {
		t.Errorf("the height of full development over %v m", got)
	}
	if got := wind.EquivalentFetch(high, c, 8*(1+1e-9)); !math.IsInf(got, 1) {
		t.Errorf("more than that over %v m", got)
	}
	// In little depth the CEM's height ends at 0.6 d: it is there from where 0.0413 √x is as much.
	s := wind.CEMFrictionVelocity(10)
	c = wind.Conditions{Speed: 10, MeanDepth: 4, Gravity: s * s} // lengths in metres
	most, _ := wind.CEM.Growth(inf, 4)
	if got, want := wind.EquivalentFetch(wind.CEM, c, most), math.Pow(0.6*4/0.0413, 2); !alike(got, want, 1e-9) || !alike(most, 2.4, 1e-12) {
		t.Errorf("a height of %v m in 4 m over %v m, want %v", most, got, want)
	}
}
