package passage

import (
	"context"
	"fmt"
	"math"
	"runtime"
	"sync"
	"testing"
	"time"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wind"
)

// The search of the benchmarks: an invented coast, 100 runs along it, a day and
// a night of departures, and a forecast of 50 members.
const (
	benchRuns    = 100
	benchDeparts = 96
	benchMembers = 50
)

// benchLimits are limits of every kind but the times to an exit, which the twin
// does not know.
func benchLimits() Limits {
	l := coach().Limits
	for r, x := range map[Rule]float64{LeastWind: 6, GreatestWind: 11, GreatestGust: 15, GreatestOffStern: 40, LeastSteadyAfter: 0.97, GreatestShift: 25,
		LeastSea: 0.3, GreatestSea: 1.2, GreatestSteepness: 0.045, LeastRideable: 0.2, GreatestStream: 0.6, GreatestAgainst: 0.4, LeastDepth: 3.5,
		GreatestBreaking: 0.25, GreatestDuration: 5000, LeastReserve: 9000, LeastDaylight: 3600} {
		l[r] = Ask(x)
	}
	for _, r := range []Rule{GreatestTimeToExit, LeastWaterTemperature, LeastWindChill, LeastLeaders} {
		l[r] = Limit{}
	}
	return l
}

// turning is a stream that turns with the tide.
type turning struct{ east, north float64 }

func (s turning) Velocity(at time.Time) tide.Velocity {
	x := math.Sin(at.Sub(morning).Hours() * (2 * math.Pi / 12.42))
	return tide.Velocity{East: s.east * x, North: s.north * x}
}

type swinging float64

func (s swinging) Height(at time.Time) float64 {
	return 2.5 + float64(s)*math.Cos(at.Sub(morning).Hours()*(2*math.Pi/12.42))
}

// benchCoast is a ragged shore of 2000 pieces.
var benchCoast = sync.OnceValue(func() *route.Coast {
	var line []route.Point
	for i := range 2001 {
		x := float64(i) / 2000
		line = append(line, route.Point{Lat: 49.94 + 0.02*math.Sin(40*x) + 0.005*math.Sin(333*x), Lon: -21 + 2*x})
	}
	c, err := route.NewCoast([][]route.Point{line}, nil)
	if err != nil {
		panic(err)
	}
	return c
})

func benchChoices(t testing.TB, runs, departs, members int) Choices {
	c := Choices{Departures: every(departs, 24*time.Hour/time.Duration(departs)), Party: Party{Paddlers: []Paddler{coach()}}}
	c.Party.Paddlers[0].Limits = benchLimits()
	for i := range runs {
		start := route.Point{Lat: 50.02 + 0.001*float64(i%10), Lon: -20.8 + 0.012*float64(i)}
		mid := route.Direct(start, 80+float64(i%5)*5, 4000).To
		end := route.Direct(mid, 95-float64(i%7)*3, 4000+200*float64(i%9)).To
		c.Runs = append(c.Runs, Candidate{Run: route.Run{Name: fmt.Sprint("run ", i), Points: []route.Point{start, mid, end},
			Depths: []route.Value{Known(20), Known(3 + float64(i%4))}, Coast: benchCoast()},
			Tide: swinging(1.5), Streams: []StreamGauge{{Stream: turning{0.3 + 0.01*float64(i%50), 0.1}}}})
	}
	for m := range members {
		x := float64(m)/float64(max(members-1, 1)) - 0.5
		series := windOf2(t, func(h float64) (float64, float64) {
			return 8 + 3*x + 3*math.Sin((h-6+4*x)/24*2*math.Pi), 265 + 30*x + 25*math.Tanh((h-12-6*x)/3)
		})
		d := fairDay(t, series)
		d.Streams, d.Tide = nil, nil
		d.Swell = constantSwell{{Hs: 0.8 + x, Tp: 11, From: 250}}
		c.Days = append(c.Days, d)
	}
	return c
}

// windOf2 is windOf with a day more ahead.
func windOf2(t testing.TB, f func(hour float64) (speed, from float64)) wind.Series {
	t.Helper()
	var samples []wind.Sample
	for h := -24; h <= 48; h++ {
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

// quickest is the least of many times of f, in seconds: what it costs when
// nobody else wants the processor.
func quickest(rounds int, f func()) float64 {
	best := math.Inf(1)
	for range rounds {
		start := time.Now()
		f()
		best = math.Min(best, time.Since(start).Seconds())
	}
	return best
}

// expTime is the time of one math.Exp in this process, in seconds.
func expTime() float64 {
	const n = 2000
	return quickest(200, func() {
		x, sum := 0.3, 0.0
		for range n {
			sum += math.Exp(x)
			x = -x
		}
		sink = sum
	}) / n
}

var sink float64

// BenchmarkStep is one step of an appraisal, a cell crossed in all three lanes
// and compared with every limit, as a multiple of math.Exp: inside a search,
// where the walks are kept and the words left out, and alone, as Appraise does
// it.
func BenchmarkStep(b *testing.B) {
	c := benchChoices(b, 1, benchDeparts, 1)
	r, err := Search(context.Background(), c)
	if err != nil {
		b.Fatal(err)
	}
	w, err := r.again(0, 0, new(grid))
	if err != nil {
		b.Fatal(err)
	}
	var mid, slow, fast walk
	b.Run("search", func(b *testing.B) {
		b.ReportAllocs()
		best := math.Inf(1)
		for b.Loop() {
			best = math.Min(best, quickest(1, func() {
				for _, start := range r.search.starts[8:40] {
					k := w.keep(start, &mid, &slow, &fast)
					sink += float64(k.margin)
				}
			}))
		}
		report(b, best/float64(32*len(w.cells)))
	})
	b.Run("alone", func(b *testing.B) {
		w, err := r.Water(0, 0)
		if err != nil {
			b.Fatal(err)
		}
		var a Appraisal
		b.ReportAllocs()
		best := math.Inf(1)
		for b.Loop() {
			best = math.Min(best, quickest(1, func() {
				if err := w.AppraiseInto(&a, at(3)); err != nil {
					b.Fatal(err)
				}
			}))
		}
		report(b, best/float64(len(w.cells)))
	})
}

func report(b *testing.B, seconds float64) {
	exp := expTime()
	b.ReportMetric(seconds*1e9, "ns/step")
	b.ReportMetric(exp*1e9, "ns/exp")
	b.ReportMetric(seconds/exp, "exp/step")
}

// BenchmarkSearch is the search of 100 runs, 96 departures and 50 members with
// its preparation, or a tenth of the runs with -short.
func BenchmarkSearch(b *testing.B) {
	n := benchRuns
	if testing.Short() {
		n /= 10
	}
	c := benchChoices(b, n, benchDeparts, benchMembers)
	for _, workers := range []int{1, 2} {
		b.Run(fmt.Sprintf("workers=%d", workers), func(b *testing.B) {
			c.Workers = workers
			var peak uint64
			c.Progress = func(int, int) {
				var m runtime.MemStats
				if runtime.ReadMemStats(&m); m.HeapAlloc > peak {
					peak = m.HeapAlloc
				}
			}
			for b.Loop() {
				if _, err := Search(context.Background(), c); err != nil {
					b.Fatal(err)
				}
			}
			total := float64(n * benchDeparts * benchMembers)
			b.ReportMetric(b.Elapsed().Seconds()/float64(b.N)/total*1e6, "us/appraisal")
			b.ReportMetric(float64(peak)/(1<<20), "MB-peak")
		})
	}
}

// BenchmarkTwin is the plain twin on a sample of the same search: every tenth
// departure of one run in two members. It checks that the verdicts are those of
// the search.
func BenchmarkTwin(b *testing.B) {
	c := benchChoices(b, benchRuns, benchDeparts, benchMembers)
	c.Runs = c.Runs[37:38]
	c.Days = []Day{c.Days[10], c.Days[40]}
	r, err := Search(context.Background(), c)
	if err != nil {
		b.Fatal(err)
	}
	n, same := 0, 0
	for b.Loop() {
		for m := range c.Days {
			w := newTwin(b, c.Runs[0].Run, c.Runs[0].day(c.Days[m]), r.search.crew, r.search.options)
			for d := 0; d < benchDeparts; d += 10 {
				want := w.verdicts(r.search.starts[d])
				for _, x := range r.asked {
					if got := r.kept(0, m, d).of(x); got != want[x] {
						b.Errorf("member %d departure %d: %v is %v, the twin says %v", m, d, x, got, want[x])
					}
					same++
				}
				n++
			}
		}
	}
	b.ReportMetric(b.Elapsed().Seconds()/float64(n)*1e6, "us/appraisal")
	b.ReportMetric(float64(same)/float64(n), "verdicts/appraisal")
}

// BenchmarkWorkers is how much sooner two workers are done than one, the best
// of some rounds each; beside it the same for a loop that shares nothing, which
// is what the machine can give at the moment.
func BenchmarkWorkers(b *testing.B) {
	c := benchChoices(b, 4, benchDeparts, 4)
	spin := func(workers int) {
		var wait sync.WaitGroup
		for range workers {
			wait.Go(func() {
				x := 0.3
				for range 100_000_000 / workers {
					x = x*0.999 + 0.001
				}
				if x < 0 {
					b.Error(x)
				}
			})
		}
		wait.Wait()
	}
	search := func(workers int) {
		c.Workers = workers
		if _, err := Search(context.Background(), c); err != nil {
			b.Fatal(err)
		}
	}
	best := map[string]float64{}
	least := func(name string, s float64) {
		if old, ok := best[name]; !ok || s < old {
			best[name] = s
		}
	}
	for b.Loop() {
		least("one", quickest(1, func() { search(1) }))
		least("two", quickest(1, func() { search(2) }))
		least("spin", quickest(1, func() { spin(1) }))
		least("spins", quickest(1, func() { spin(2) }))
	}
	b.ReportMetric(best["one"]/best["two"], "x")
	b.ReportMetric(best["spin"]/best["spins"], "x-spin")
}

// BenchmarkCancel is the time from the cancelling of a search to its return.
func BenchmarkCancel(b *testing.B) {
	c := benchChoices(b, 10, benchDeparts, 10)
	worst := 0.0
	for b.Loop() {
		ctx, cancel := context.WithCancel(context.Background())
		var at time.Time
		time.AfterFunc(150*time.Millisecond, func() { at = time.Now(); cancel() })
		if _, err := Search(ctx, c); err == nil {
			b.Fatal("it was done before")
		}
		worst = math.Max(worst, time.Since(at).Seconds())
	}
	b.ReportMetric(worst*1e3, "ms-worst")
}
