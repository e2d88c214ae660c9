package route

import (
	"math"
	"testing"
	"time"
)

var sinkFloats []float64

// BenchmarkFetchRose measures the 36-direction rose on 100,000 segments:
// with the index, by the scan of all segments, and their ratio.
func BenchmarkFetchRose(b *testing.B) {
	centre := Point{Lat: 48, Lon: -124}
	c := archipelago(centre, 100000, 1)
	eyes := make([]Point, 0, 16)
	for i := range 16 {
		p := Point{48 + 0.4*math.Sin(float64(i)*2), -124 + 0.6*math.Cos(float64(i)*3)}
		if !c.land(p) {
			eyes = append(eyes, p)
		}
	}
	b.Run("index", func(b *testing.B) {
		b.ReportAllocs()
		for i := 0; i < b.N; i++ {
			sinkFloats = c.FetchRose(eyes[i%len(eyes)], 36, 200000)
		}
	})
	b.Run("scan", func(b *testing.B) {
		for i := 0; i < b.N; i++ {
			sinkFloats = scanRose(c, eyes[i%len(eyes)], 36, 200000)
		}
	})
	b.Run("ratio", func(b *testing.B) {
		const turns = 100
		var slow, fast time.Duration
		for i := 0; i < b.N; i++ {
			eye := eyes[i%len(eyes)]
			t0 := time.Now()
			sinkFloats = scanRose(c, eye, 36, 200000)
			t1 := time.Now()
			for range turns {
				sinkFloats = c.FetchRose(eye, 36, 200000)
			}
			slow, fast = slow+t1.Sub(t0), fast+time.Since(t1)
		}
		b.ReportMetric(turns*slow.Seconds()/fast.Seconds(), "x-scan")
	})
}

func BenchmarkCoastBuild(b *testing.B) {
	src := archipelago(Point{Lat: 48, Lon: -124}, 100000, 1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := NewCoast(src.lines, src.polygons); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkNearestShore(b *testing.B) {
	c := archipelago(Point{Lat: 48, Lon: -124}, 100000, 1)
	for b.Loop() {
		if _, err := c.NearestShore(Point{Lat: 48.1, Lon: -124.1}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkReadCoast reads 100,000 positions from text and builds the index.
func BenchmarkReadCoast(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ReadCoast(&stream{n: 100000}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkGaps looks along a run of 20 km for ten exits in a side wind.
func BenchmarkGaps(b *testing.B) {
	q := calmEscape()
	q.Way = nil
	q.Wind, q.Stream = Steady(From(9, 300)), Steady(Toward(0.3, 90))
	from := q.From
	to := Direct(from, 90, 20000).To
	var exits []Exit
	for i := range 10 {
		e := openExit(string(rune('A'+i)), Direct(Direct(from, 90, float64(i)*2000).To, 0, 1000).To)
		e.GreatestBreaker = LimitOf(0.1) // shut, so that every one is asked
		exits = append(exits, e)
	}
	for b.Loop() {
		if _, err := Gaps([]Point{from, to}, exits, q, func(d float64) float64 { return d / 2 }, 250); err != nil {
			b.Fatal(err)
		}
	}
}
