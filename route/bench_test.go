package route_test

import (
	"math"
	"testing"
	"time"

	"followingsea.example/route"
)

var (
	sinkLeg route.Leg
	sinkF   float64
)

var benchPoints = func() [64][2]route.Point {
	var p [64][2]route.Point
	for i := range p {
		a := route.Point{Lat: 20 + float64(i)/2, Lon: float64(i)}
		p[i] = [2]route.Point{a, route.Direct(a, float64(i*37), 20e3).To}
	}
	return p
}()

func BenchmarkInverse(b *testing.B) {
	b.ReportAllocs()
	for i := range b.N {
		p := &benchPoints[i&63]
		sinkLeg = route.Inverse(p[0], p[1])
	}
}

func BenchmarkShortInverse(b *testing.B) {
	b.ReportAllocs()
	for i := range b.N {
		p := &benchPoints[i&63]
		sinkLeg = route.ShortInverse(p[0], p[1])
	}
}

func BenchmarkShortDistance(b *testing.B) {
	for i := range b.N {
		p := &benchPoints[i&63]
		sinkF = route.ShortDistance(p[0], p[1])
	}
}

// BenchmarkHaversine is the distance and both bearings on the sphere, which
// is what ShortInverse gives on the ellipsoid.
func BenchmarkHaversine(b *testing.B) {
	b.ReportAllocs()
	for i := range b.N {
		p := &benchPoints[i&63]
		sinkLeg = haversine(p[0], p[1])
	}
}

// BenchmarkHaversineDistance is the distance alone.
func BenchmarkHaversineDistance(b *testing.B) {
	for i := range b.N {
		p := &benchPoints[i&63]
		sinkF = haversineDistance(p[0], p[1])
	}
}

func haversineDistance(a, b route.Point) float64 {
	const rad = math.Pi / 180
	s, t := math.Sin((b.Lat-a.Lat)*rad/2), math.Sin((b.Lon-a.Lon)*rad/2)
	return 2 * 6371008.8 * math.Asin(math.Sqrt(s*s+math.Cos(a.Lat*rad)*math.Cos(b.Lat*rad)*t*t))
}

func haversine(a, b route.Point) route.Leg {
	const rad = math.Pi / 180
	s1, c1 := math.Sincos(a.Lat * rad)
	s2, c2 := math.Sincos(b.Lat * rad)
	sl, cl := math.Sincos((b.Lon - a.Lon) * rad)
	h, g := math.Sin((b.Lat-a.Lat)*rad/2), math.Sin((b.Lon-a.Lon)*rad/2)
	d := 2 * 6371008.8 * math.Asin(math.Sqrt(h*h+c1*c2*g*g))
	c := math.Atan2(sl*c2, c1*s2-s1*c2*cl) / rad
	e := math.Atan2(sl*c1, c1*s2*cl-s1*c2) / rad
	return route.Leg{From: a, To: b, Distance: d, Course: c, End: e}
}

// BenchmarkShortRatio times the short geodesic and the haversine by turns in one
// process: distance and courses, and the distance alone. 1 or less is no dearer.
func BenchmarkShortRatio(b *testing.B) {
	ratio := func(fast, plain func(i int)) func(*testing.B) {
		return func(b *testing.B) {
			var a, c time.Duration
			for b.Loop() {
				t0 := time.Now()
				for i := range 4096 {
					plain(i & 63)
				}
				t1 := time.Now()
				for i := range 4096 {
					fast(i & 63)
				}
				a, c = a+t1.Sub(t0), c+time.Since(t1)
			}
			b.ReportMetric(c.Seconds()/a.Seconds(), "of-haversine")
			b.ReportMetric(c.Seconds()*1e9/float64(b.N)/4096, "ns/line")
		}
	}
	b.Run("with courses", ratio(
		func(i int) { sinkLeg = route.ShortInverse(benchPoints[i][0], benchPoints[i][1]) },
		func(i int) { sinkLeg = haversine(benchPoints[i][0], benchPoints[i][1]) }))
	b.Run("distance", ratio(
		func(i int) { sinkF = route.ShortDistance(benchPoints[i][0], benchPoints[i][1]) },
		func(i int) { sinkF = haversineDistance(benchPoints[i][0], benchPoints[i][1]) }))
}

func BenchmarkExp(b *testing.B) {
	x := 0.3
	for range b.N {
		x = math.Exp(-x)
	}
	sinkF = x
}

func BenchmarkHeadingFor(b *testing.B) {
	w := route.Toward(0.7, 130)
	for i := range b.N {
		sinkF, _ = route.HeadingFor(float64(i&255), 1.8, w)
	}
}

func BenchmarkDirect(b *testing.B) {
	b.ReportAllocs()
	for i := range b.N {
		p := &benchPoints[i&63]
		sinkLeg = route.Direct(p[0], float64(i&255), 20e3)
	}
}

func BenchmarkHoldTrackVarying(b *testing.B) {
	b.ReportAllocs()
	speed := func(h float64) float64 { return 1.8 - 0.6*math.Cos((h-40)*math.Pi/180) }
	w := route.Toward(0.5, 130)
	for i := range b.N {
		s, _ := route.HoldTrackVarying(float64(i&127), speed, w)
		sinkF = s.Heading
	}
}

func BenchmarkDaylight(b *testing.B) {
	b.ReportAllocs()
	day := time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)
	for i := range b.N {
		d, _ := route.Daylight(route.Point{Lat: 50, Lon: -4}, day.AddDate(0, 0, i&127))
		sinkF = float64(d.Sunset.Time.Unix())
	}
}

// BenchmarkCloud is an ensemble of 500 members over three hours.
func BenchmarkCloud(b *testing.B) {
	b.ReportAllocs()
	d := drifting("surfboard", route.From(8, 200), route.Toward(0.3, 10), 3)
	d.Gybe = route.GybeRate
	for i := range b.N {
		c, _ := d.Cloud(500, uint64(i))
		sinkF = c.Points[18][0].Lat
	}
}
