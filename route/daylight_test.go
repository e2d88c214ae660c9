package route_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

func TestSunAtIsTheJulianDay(t *testing.T) {
	at := time.Date(1992, 10, 13, 0, 0, 0, 0, time.UTC)
	if a, b := route.SunAt(at), route.SunAtJulian(2448908.5); a != b {
		t.Errorf("%+v, want %+v", a, b)
	}
	for _, bad := range []float64{math.NaN(), math.Inf(1), 1e9} {
		if s := route.SunAtJulian(bad); !math.IsNaN(s.Declination) || !math.IsNaN(s.Equation) {
			t.Errorf("SunAtJulian(%v) = %+v, want NaN", bad, s)
		}
	}
}

// TestSunTwoWays: the equation of time by Smart's series against its
// definition, mean longitude less right ascension (Meeus 28.1), which shares
// no term with it.
func TestSunTwoWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		jd := draw(t, "day", 2415020.5, 2488069.5) // 1900 to 2100
		s := route.SunAtJulian(jd)
		c := (jd - 2451545) / 365250
		l0 := 280.4664567 + c*(360007.6982779+c*(0.03032028+c*(1.0/49931)))
		omega := (125.04 - 1934.136*c*10) * math.Pi / 180
		e := l0 - 0.0057183 - s.Ascension - 0.00478*math.Sin(omega)*math.Cos(23.44*math.Pi/180)
		near(t, "equation of time", s.Equation, math.Remainder(e, 360)*240, 5)
	})
}

// TestSunStandsSouthAtNoon: at its highest the Sun is on the meridian, at the
// height that latitude and declination say.
func TestSunStandsSouthAtNoon(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPoint(t, "at", 89)
		day := time.Date(2000, 1, 1+rapid.IntRange(0, 20000).Draw(t, "day"), 0, 0, 0, 0, time.UTC)
		d, err := route.Daylight(p, day)
		if err != nil {
			t.Fatal(err)
		}
		dec := route.SunAt(d.Transit).Declination
		h, b := route.SunAltitude(p, d.Transit)
		near(t, "height", h, 90-math.Abs(p.Lat-dec), 1e-5)
		want := 180.0
		if dec > p.Lat {
			want = 0
		}
		if overhead := math.Abs(p.Lat-dec) <= 0.5; !overhead {
			nearDeg(t, "bearing", b, want, 0.02)
		}
		if d.Transit.Before(day.Add(-15*time.Minute)) || d.Transit.After(day.Add(24*time.Hour+15*time.Minute)) {
			t.Fatalf("transit %v is not on %v", d.Transit, day)
		}
	})
}

// TestDaylightAgainstAltitude: at each event the Sun stands at the altitude
// that defines it, dawns in order before the transit and dusks after it; where
// there is no event the Sun is on the side it says, all day.
func TestDaylightAgainstAltitude(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPoint(t, "at", 89.7) // nearer the pole the season moves the Sun more than the day does
		day := time.Date(2000, 1, 1+rapid.IntRange(0, 20000).Draw(t, "day"), 0, 0, 0, 0, time.UTC)
		d, err := route.Daylight(p, day)
		if err != nil {
			t.Fatal(err)
		}
		events := []route.SunEvent{d.AstronomicalDawn, d.NauticalDawn, d.CivilDawn, d.Sunrise, d.Sunset, d.CivilDusk, d.NauticalDusk, d.AstronomicalDusk}
		altitudes := []float64{-18, -12, -6, -50.0 / 60, -50.0 / 60, -6, -12, -18}
		last := time.Time{}
		for i, e := range events {
			if i == 4 {
				last = d.Transit
			}
			switch e.State {
			case route.Happens:
				h, _ := route.SunAltitude(p, e.Time)
				near(t, "altitude", h, altitudes[i], 2e-4)
				if e.Time.Before(last) || i < 4 && e.Time.After(d.Transit) {
					t.Fatalf("event %d at %v after %v", i, e.Time, last)
				}
				last = e.Time
			case route.StaysAbove, route.StaysBelow:
				if !e.Time.IsZero() {
					t.Fatalf("an event that does not happen, at %v", e.Time)
				}
				for m := 0; m <= 720; m += 20 { // its half of the day
					at := d.Transit.Add(time.Duration(m) * time.Minute)
					if i < 4 {
						at = d.Transit.Add(-time.Duration(m) * time.Minute)
					}
					h, _ := route.SunAltitude(p, at)
					if (e.State == route.StaysAbove) != (h > altitudes[i]) && !(math.Abs(h-altitudes[i]) <= 0.01) {
						t.Fatalf("%s %v, but at %v the Sun is at %v", e.State, altitudes[i], at, h)
					}
				}
			default:
				t.Fatalf("state %q", e.State)
			}
		}
	})
}

// TestDayLengthsOfBothHemispheres: for one declination and the bare geometry,
// without refraction or a disc, the days at north and south latitude add to 24
// hours.
func TestDayLengthsOfBothHemispheres(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lat, dec := draw(t, "lat", 0, 89.9), draw(t, "dec", -23.44, 23.44)
		near(t, "both days", route.SemiDiurnalArc(lat, dec, 0)+route.SemiDiurnalArc(-lat, dec, 0), 180, 1e-5)
	})
	near(t, "equinox", route.SemiDiurnalArc(50, 0, 0), 90, 1e-12)
	near(t, "polar day", route.SemiDiurnalArc(80, 20, 0), 180, 0)
	near(t, "polar night", route.SemiDiurnalArc(80, -20, 0), 0, 0)
	for _, bad := range [][3]float64{{91, 0, 0}, {0, 91, 0}, {0, 0, 91}, {math.NaN(), 0, 0}, {0, math.NaN(), 0}, {0, 0, math.NaN()}} {
		if h := route.SemiDiurnalArc(bad[0], bad[1], bad[2]); !math.IsNaN(h) {
			t.Errorf("SemiDiurnalArc%v = %v, want NaN", bad, h)
		}
	}
}

// TestNoEventStates: a polar day, a polar night and a summer night without
// astronomical darkness are states, not times.
func TestNoEventStates(t *testing.T) {
	june, december := time.Date(2023, 6, 21, 0, 0, 0, 0, time.UTC), time.Date(2023, 12, 21, 0, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		name string
		p    route.Point
		day  time.Time
		pick func(route.Day) route.SunEvent
		want route.SunState
	}{
		{"polar day at 71.3 north", route.Point{Lat: 71.3, Lon: 20}, june, func(d route.Day) route.SunEvent { return d.Sunset }, route.StaysAbove},
		{"polar night at 71.3 north", route.Point{Lat: 71.3, Lon: 20}, december, func(d route.Day) route.SunEvent { return d.Sunrise }, route.StaysBelow},
		{"polar night at 67.8 north", route.Point{Lat: 67.8, Lon: 20}, december, func(d route.Day) route.SunEvent { return d.Sunrise }, route.StaysBelow},
		{"but twilight there", route.Point{Lat: 67.8, Lon: 20}, december, func(d route.Day) route.SunEvent { return d.CivilDawn }, route.Happens},
		{"white night at 60 north", route.Point{Lat: 60, Lon: 10}, june, func(d route.Day) route.SunEvent { return d.CivilDusk }, route.Happens},
		{"no nautical dark at 60 north", route.Point{Lat: 60, Lon: 10}, june, func(d route.Day) route.SunEvent { return d.NauticalDusk }, route.StaysAbove},
		{"the south pole in June", route.Point{Lat: -90}, june, func(d route.Day) route.SunEvent { return d.AstronomicalDawn }, route.StaysBelow},
	} {
		d, err := route.Daylight(c.p, c.day)
		if err != nil || c.pick(d).State != c.want {
			t.Errorf("%s: %+v, %v, want %s", c.name, c.pick(d), err, c.want)
		}
	}
}

func TestDaylightRefuses(t *testing.T) {
	if d, err := route.Daylight(route.Point{Lat: math.NaN()}, time.Now()); !errors.Is(err, route.ErrPosition) || d != (route.Day{}) {
		t.Errorf("NaN latitude: %+v, %v", d, err)
	}
	if _, err := route.Daylight(route.Point{}, time.Date(6000, 1, 1, 0, 0, 0, 0, time.UTC)); !errors.Is(err, route.ErrDate) {
		t.Errorf("the year 6000: %v", err)
	}
}
