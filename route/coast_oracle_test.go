package route

import (
	"math"
	"math/rand/v2"
)

// The plain twins: every answer of the index made by a scan of all segments.

func scanWinding(c *Coast, p Point) int {
	w := c.pole
	for i := range c.tree.segs {
		w += c.tree.segs[i].over(p)
	}
	return w
}

func scanSight(c *Coast, p Point, bearing, limit float64) float64 {
	best := limit * limit
	east, north, _ := axes(p)
	v := newSight(geocentric(p), east, north, bearing)
	var at *Point
	for i := range c.tree.segs {
		if d2, t := v.hit(&c.tree.segs[i]); d2 < best {
			place := c.tree.segs[i].at(t)
			best, at = d2, &place
		}
	}
	if at == nil {
		return limit
	}
	return min(Inverse(p, *at).Distance, limit)
}

func scanRose(c *Coast, p Point, n int, limit float64) []float64 {
	rose := make([]float64, n)
	if scanWinding(c, p) != 0 {
		return rose
	}
	for i := range rose {
		rose[i] = scanSight(c, p, float64(i)*360/float64(n), limit)
	}
	return rose
}

func scanNearest(c *Coast, p Point) float64 {
	eye := geocentric(p)
	best := math.Inf(1)
	for i := range c.tree.segs {
		if d2, _ := c.tree.segs[i].near(&eye); d2 < best {
			best = d2
		}
	}
	return best
}

// island returns a ring of n positions around a centre, its radius in metres
// rough by the fraction ragged.
func island(r *rand.Rand, centre Point, radius, ragged float64, n int) []Point {
	ring := make([]Point, n)
	_, c := sincosd(centre.Lat)
	const degree = 111195.0
	a, b := r.Float64()*6, r.Float64()*6
	for i := range ring {
		t := 2 * math.Pi * float64(i) / float64(n)
		d := radius * (1 + ragged*(0.4*math.Sin(3*t+a)+0.3*math.Sin(11*t+b)+0.1*r.Float64()))
		ring[i] = Point{
			Lat: centre.Lat + d*math.Cos(t)/degree,
			Lon: wrapLon(centre.Lon - d*math.Sin(t)/degree/c),
		}
	}
	return ring
}

// archipelago returns a coast of some n segments: a bay 200 km across, closed
// but for a mouth to the west, with islands in it.
func archipelago(centre Point, n int, seed uint64) *Coast {
	r := rand.New(rand.NewPCG(seed, 7))
	const degree = 111195.0
	_, c := sincosd(centre.Lat)
	var shore []Point
	m := n / 2
	for i := range m {
		t := 2*math.Pi*float64(i)/float64(m)*0.95 - math.Pi*0.45
		d := 100000 * (1 + 0.1*math.Sin(7*t) + 0.03*math.Sin(61*t) + 0.002*r.Float64())
		shore = append(shore, Point{Lat: centre.Lat + d*math.Sin(t)/degree, Lon: wrapLon(centre.Lon + d*math.Cos(t)/degree/c)})
	}
	var islands []Polygon
	const k = 200
	for range k {
		at := Point{
			Lat: centre.Lat + (r.Float64()-0.5)*130000/degree,
			Lon: wrapLon(centre.Lon + (r.Float64()-0.5)*130000/degree/c),
		}
		islands = append(islands, Polygon{island(r, at, 300+2000*r.Float64(), 0.5, max(n/2/k, 3))})
	}
	coast, err := NewCoast([][]Point{shore}, islands)
	if err != nil {
		panic(err)
	}
	return coast
}
