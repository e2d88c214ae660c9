package route

import (
	"errors"
	"io"
	"math"
	"strings"
	"testing"
	"time"
)

// TestFirstRoot: the smallest t >= 0 of a t² - 2 b t + c = 0 for c >= 0, by its factors.
func TestFirstRoot(t *testing.T) {
	for _, c := range []struct {
		a, b, c, root float64 // NaN: none
	}{
		{1, 5, 16, 2},                  // (t - 2)(t - 8)
		{1, 4, 16, 4},                  // (t - 4)²
		{1, 3, 16, math.NaN()},         // no real root
		{1, -5, 16, math.NaN()},        // (t + 2)(t + 8)
		{-1, 3, 16, 2},                 // (2 - t)(t + 8)
		{-1, -3, 16, 8},                // (8 - t)(t + 2)
		{-1, 0, 9, 3},                  // (3 - t)(t + 3)
		{0, 4, 16, 2},                  // 16 - 8 t
		{0, -4, 16, math.NaN()},        // 16 + 8 t
		{0, 0, 1, math.NaN()},          // 1
		{1, 3, 0, 0},                   // t (t - 6)
		{1, -3, 0, 0},                  // t (t + 6)
		{-1, -3, 0, 0},                 // -t (t + 6)
		{-1, 3, 0, 0},                  // t (6 - t)
		{0, 0, 0, 0},                   // everywhere
		{1, math.NaN(), 1, math.NaN()}, //
	} {
		root, ok := firstRoot(c.a, c.b, c.c)
		if ok == math.IsNaN(c.root) || ok && !(math.Abs(root-c.root) <= 1e-14*c.root) {
			t.Errorf("%v t² - 2 %v t + %v: %v, %v, want %v", c.a, c.b, c.c, root, ok, c.root)
		}
	}
}

// TestLimiter: a file as long as the limit is read to its end and one of a byte more is not, whatever the size of the reads.
func TestLimiter(t *testing.T) {
	for _, size := range []int{1, 2, 3, 4, 9} {
		for _, limit := range []int{0, 1, 3, 8} {
			for _, more := range []int{-1, 0, 1, 5} {
				if limit+more < 0 {
					continue
				}
				l := &limiter{r: strings.NewReader(strings.Repeat("x", limit+more)), left: limit}
				var read int
				var err error
				for buf := make([]byte, size); err == nil; {
					var n int
					n, err = l.Read(buf)
					read += n
				}
				want := io.EOF
				if more > 0 {
					want = ErrTooLarge
				}
				if !errors.Is(err, want) || read != min(limit, limit+more) {
					t.Errorf("%d bytes by %d, of %d allowed: %d, %v", limit+more, size, limit, read, err)
				}
				if _, again := l.Read(make([]byte, size)); !errors.Is(again, want) {
					t.Errorf("%d bytes by %d, of %d allowed: then %v", limit+more, size, limit, again)
				}
			}
		}
	}
}

// TestSwappedToThePole: a longitude of 90 read as a latitude is the pole, which a run can be near; one beyond is no latitude.
func TestSwappedToThePole(t *testing.T) {
	run := []Point{{89, 0}}
	for lon, want := range map[float64]bool{90: true, -90: false, math.Nextafter(90, 91): false, 88: true} {
		if got := swapped(run, Point{10, lon}); got != want {
			t.Errorf("longitude %v: %v", lon, got)
		}
	}
}

// TestSunSettles: away from grazing days the hour angle of an altitude settles by itself, on the side asked for, and within half a
// day; and it says so where it does not: in a polar night and in a white one.
func TestSunSettles(t *testing.T) {
	for month := range 12 {
		s := sky{p: Point{Lat: 45, Lon: 100}, noon: julianDay(time.Date(2026, time.Month(month+1), 5, 12, 0, 0, 0, time.UTC))}
		transit, ok := s.transit()
		if !ok {
			t.Fatal("no transit")
		}
		for _, altitude := range []float64{SunriseAltitude, CivilAltitude, NauticalAltitude, AstronomicalAltitude} {
			for _, side := range []float64{-1, 1} {
				at, ok := s.settle(transit, altitude, side)
				if off := (at - transit) * side; !ok || !(off > 0.1 && off < 0.5) {
					t.Errorf("month %d, altitude %v, side %v: %v days after transit, %v", month+1, altitude, side, at-transit, ok)
				}
				// The Sun moves 150 to 250 degrees a day in altitude there: 1e-8 days are 2.5e-6 degrees.
				within(t, "altitude", s.above(at, altitude), 0, 2.5e-6)
			}
		}
	}
	for _, c := range []struct{ lat, altitude float64 }{{60, AstronomicalAltitude}, {80, SunriseAltitude}, {-80, SunriseAltitude}} {
		s := sky{p: Point{Lat: c.lat}, noon: julianDay(noon)}
		transit, _ := s.transit()
		if at, ok := s.settle(transit, c.altitude, 1); ok {
			t.Errorf("at %v the Sun settles on %v at %v", c.lat, c.altitude, at)
		}
	}
}

// TestTimesOutOfOrder: a fix before the one before it is named with its number, and that one with its own.
func TestTimesOutOfOrder(t *testing.T) {
	at := func(minutes int) Fix { return Fix{Time: noon.Add(time.Duration(minutes) * time.Minute)} }
	err := Track{Name: "x", Fixes: []Fix{at(0), at(5), at(5), at(4)}}.Check()
	if !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), "fix 3 at 2026-06-21T12:04:00Z is before fix 2 at 2026-06-21T12:05:00Z") {
		t.Error(err)
	}
}

// TestLongitudesOfAFile: a longitude is brought into -180 to 180, of which both are kept as they are written.
func TestLongitudesOfAFile(t *testing.T) {
	for lon, want := range map[float64]float64{180: 180, -180: -180, 181: -179, -181: 179, 360: 0, -360: 0, 179.5: 179.5, -179.5: -179.5, 7: 7} {
		if p, err := filePosition(50, lon); err != nil || p.Lon != want {
			t.Errorf("longitude %v reads as %v, %v", lon, p.Lon, err)
		}
	}
}
