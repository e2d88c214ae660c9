package passage

import (
	"math"
	"testing"
	"time"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wind"
)

// morning is the epoch of the invented days of these tests.
var morning = time.Date(2026, 6, 21, 8, 0, 0, 0, time.UTC)

func at(hours float64) time.Time {
	return morning.Add(time.Duration(hours * float64(time.Hour)))
}

// steadyWind is a wind of one speed and direction from two days before the
// morning to one day after it.
func steadyWind(t testing.TB, speed, from float64) wind.Series {
	t.Helper()
	return windOf(t, func(float64) (float64, float64) { return speed, from })
}

// windOf samples a wind by the hour; f takes hours from the morning.
func windOf(t testing.TB, f func(hour float64) (speed, from float64)) wind.Series {
	t.Helper()
	var samples []wind.Sample
	for h := -48; h <= 24; h++ {
		v, d := f(float64(h))
		w, err := wind.Gusting(v, 1.3*v, d)
		if err != nil {
			t.Fatal(err)
		}
		samples = append(samples, wind.Sample{Time: at(float64(h)), Wind: w, Air: wind.Celsius(12), Water: wind.Celsius(14)})
	}
	s, err := wind.NewSeries(samples, 0)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// eastward is a run of 10 km due east at 50 N, on an ocean to the west of a
// shore 6 km to the south.
func eastward(t testing.TB) route.Run {
	t.Helper()
	start := route.Point{Lat: 50, Lon: -20}
	end := route.Direct(start, 90, 10000).To
	coast, err := route.NewCoast([][]route.Point{{{Lat: 49.95, Lon: -20.3}, {Lat: 49.95, Lon: -19.7}}}, nil)
	if err != nil {
		t.Fatal(err)
	}
	exit := func(name string, along float64) route.Exit {
		return route.Exit{Name: name, Point: route.Direct(route.Direct(start, 90, along).To, 180, 2000).To,
			Charted: Known(1), LeastDepth: route.LimitOf(0.5), GreatestBreaker: route.LimitOf(9),
			Seaward: route.LimitOf(0), Hours: route.AnyHour, GreatestStream: route.NoLimit()}
	}
	return route.Run{Name: "eastward", Points: []route.Point{start, end}, Depths: []route.Value{Known(20)},
		Exits: []route.Exit{exit("west", 2000), exit("east", 8000)}, Coast: coast}
}

type constantStream route.Velocity

func (c constantStream) Velocity(time.Time) tide.Velocity { return tide.Velocity(c) }

type constantHeight float64

func (c constantHeight) Height(time.Time) float64 { return float64(c) }

// fairDay has everything known.
func fairDay(t testing.TB, w wind.Series) Day {
	return Day{Wind: []Anemometer{{Series: w}}, Swell: NoSwell{}, Tide: constantHeight(1),
		Streams: []StreamGauge{{Stream: constantStream{}}}, Warning: NoWarningInForce()}
}

// coach asks for every limit that a fair day in a steady wind keeps.
func coach() Paddler {
	p := Paddler{Name: "coach", Cruise: Known(1.8), Sprint: Known(3), Mass: Known(95), BoardLength: Known(4.2), Endurance: Known(4 * 3600)}
	for r, x := range map[Rule]float64{
		LeastWind: 4, GreatestWind: 14, GreatestGust: 18, GreatestOffStern: 60, LeastSteadyBefore: 0.8, LeastSteadyAfter: 0.8, GreatestShift: 60,
		GreatestOffshore: 14, LeastSea: 0.1, GreatestSea: 3, GreatestSwell: 2, GreatestSteepness: 0.1, LeastRideable: 0,
		GreatestStream: 1, GreatestAgainst: 0.8, LeastDepth: 2, GreatestBreaking: 0.5, GreatestTimeToExit: 2 * 3600, GreatestDuration: 3 * 3600,
		LeastReserve: 1800, LeastDaylight: 3600, LeastWaterTemperature: 5, LeastWindChill: -10, NoWarning: 0, NoTraffic: 0, NoAvoid: 0, GreatestNoSignal: 3600,
	} {
		p.Limits[r] = Ask(x)
	}
	return p
}

// prepare prepares an hour of departures from the morning on.
func prepare(t testing.TB, run route.Run, day Day, p Paddler) *Water {
	t.Helper()
	w, err := Prepare(run, day, p, Options{From: at(0), To: at(1), Cell: 500, Step: 1800, ExitStep: 3600, ExitLength: 1000})
	if err != nil {
		t.Fatal(err)
	}
	return w
}

func appraise(t testing.TB, w *Water, hours float64) Appraisal {
	t.Helper()
	a, err := w.Appraise(at(hours))
	if err != nil {
		t.Fatal(err)
	}
	return a
}

// near reports |got-want| <= tol; false for NaN.
func near(got, want, tol float64) bool { return math.Abs(got-want) <= tol }
