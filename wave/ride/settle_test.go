package ride

import (
	"math"
	"testing"

	"followingsea.example/wave/spectrum"
)

// TestBalanceIsSettled: the speed and the spread that Newton's steps come to are those that the balance keeps: a plain damped
// iteration of its two equations, as meanfield.go prints them, over the same bands stays where it is. The last step was
// shorter than 1e-6 m/s and left much less than that. From near by a few steps suffice.
func TestBalanceIsSettled(t *testing.T) {
	deep := math.Inf(1)
	seas := []Sea{
		{WindSea: System{Hs: 0.4, Tp: 2.4}, Wind: 6, Depth: deep},
		{WindSea: System{Hs: 0.8, Tp: 3.4}, Wind: 8, Depth: deep},
		{WindSea: System{Hs: 1.1, Tp: 4.2, Off: -44}, Wind: 12, Current: -0.4, Depth: deep},
		{WindSea: System{Hs: 0.9, Tp: 4}, Swell: System{Hs: 0.7, Tp: 6, Off: 30}, Wind: 10, Current: 0.6, Depth: deep},
		{WindSea: System{Hs: 1.9, Tp: 6}, Wind: 16, Depth: 30},
		{WindSea: System{Hs: 0.5, Tp: 3.5}, Wind: 9, Depth: 1.6},
		{Swell: System{Hs: 2.5, Tp: 5}, Wind: 20, Depth: deep},
		{WindSea: System{Hs: 0.6, Tp: 2.9}, Wind: -3, Current: -0.2, Depth: 5},
	}
	passes, most, near := 0, 0, 0
	for _, who := range []Paddler{{}, {Craft: Ski}, {Mass: 130, Cruise: 1.4, Sprint: 2.4}, {Mass: 60, Cruise: 2.4, Sprint: 4.4}} {
		p, err := who.Prepare()
		if err != nil {
			t.Fatal(err)
		}
		for _, sea := range seas {
			var bs bins
			p.load(&bs, &sea)
			got := p.mean(&bs, &sea)
			passes, most = passes+got.passes, max(most, got.passes)
			s, u := &p.surge, p.surge.share*sea.Wind
			part, v, sigma := got.sprinting, got.speed, got.sigma
			for range 400 {
				b := math.Max(2, -(1-part)*s.slope(v, s.cruise, u)-part*s.slope(v, s.sprint, u))
				push, wander := 0.0, 0.0
				for _, w := range bs.b[:bs.n] {
					d := w.c - v
					q := d*d + math.Pow(widening*sigma, 2)
					x := w.force / (w.inv*q + b*b)
					push += b * x * d / q
					wander += x
				}
				net := (1-part)*s.balance(v, s.cruise, u) + part*s.balance(v, s.sprint, u)
				v += 0.2 * (net + meanPushGain*push) / b
				sigma += 0.2 * (math.Sqrt(wander) - sigma)
			}
			if !(math.Abs(v-got.speed) <= 2e-7 && math.Abs(sigma-got.sigma) <= 2e-7) {
				t.Errorf("%+v in %+v: %v and %v, settled %v and %v", who, sea, got.speed, got.sigma, v, sigma)
			}
			for _, off := range [][2]float64{{0.03, 0}, {-0.03, 0}, {0, 0.03}, {0, -0.03}} {
				again := s.settle(&bs, u, sea.gravity(), v+off[0], sigma+off[1], 1e-6)
				near += again.passes
				if again.passes < 1 || again.passes > 5 && sea.Depth != 1.6 || again.passes > 9 {
					t.Errorf("%+v in %+v: %d passes from %v", who, sea, again.passes, off)
				}
			}
		}
	}
	// Nine passes in the mean, of which the half steps from the slow side are the most; less than four from near by.
	if mean := float64(passes) / 32; !(mean <= 9) || most > 28 || near >= 4*32*4 {
		t.Errorf("%v passes in the mean, %d at most; %d from near by", mean, most, near)
	}
}

// TestFlatInFewLooks: Newton's steps to the speed on flat water end after a few, and at the root.
func TestFlatInFewLooks(t *testing.T) {
	for _, who := range []Paddler{{}, {Craft: Ski}, {Thrust: ConstantForce}, {Mass: 130, Cruise: 1.4, Sprint: 2.4}, {Mass: 60, Cruise: 2.4, Sprint: 4.4}} {
		s, err := newSurge(who)
		if err != nil {
			t.Fatal(err)
		}
		total, n := 0, 0
		for u := -20.0; u <= 20; u += 0.37 {
			for _, e := range []effort{s.cruise, s.sprint} {
				v, looks := s.flatIn(e, u)
				if g := s.balance(v, e, u); !(math.Abs(g) <= 1e-9) || looks < 1 || looks > 8 {
					t.Errorf("%+v in %v m/s: %v N left at %v after %d looks", who, u, g, v, looks)
				}
				total, n = total+looks, n+1
			}
		}
		if mean := float64(total) / float64(n); !(mean <= 5.5) {
			t.Errorf("%+v: %v looks in the mean", who, mean)
		}
	}
}

// TestFlatInAnyWind: in the strongest winds, for those who weigh least and catch most of it, the speed is still the root of G, which
// falls, and a few steps find it.
func TestFlatInAnyWind(t *testing.T) {
	for _, who := range []Paddler{
		{Mass: 20, Drag: 0.3, Bend: 1, WindArea: 3, WindShare: 1.2, Cruise: 0.3, Sprint: 8},
		{Mass: 400, Drag: 60, Bend: math.Inf(1), WindArea: 0.02, WindShare: 0.1, Cruise: 0.3, Sprint: 8},
		{Drag: 0.3, Bend: 1, WindArea: 3, WindShare: 1.2, Thrust: ConstantForce},
	} {
		s, err := newSurge(who)
		if err != nil {
			t.Fatal(err)
		}
		for u := -120.0; u <= 120; u += 7.5 {
			for _, nominal := range []float64{0.3, 1, 4, 20} {
				e := s.effort(nominal)
				v, looks := s.flatIn(e, u)
				if !(s.balance(v-1e-8, e, u) > 0 && s.balance(v+1e-8, e, u) < 0) || looks > 15 {
					t.Errorf("%+v, %v m/s in %v m/s: %v m/s after %d looks", who, nominal, u, v, looks)
				}
			}
		}
	}
}

// TestSumsChangeAsTheySay: the derivatives of the sums over the bands are those that small changes of the speed and of the width show,
// and the sums are those of the formulas, b ⟨F⟩/b and σ² of the text.
func TestSumsChangeAsTheySay(t *testing.T) {
	p := prepareBare(mustResolve(t, Paddler{}))
	sea := Sea{WindSea: System{Hs: 0.8, Tp: 3.4}, Swell: System{Hs: 0.7, Tp: 6, Off: 30}, Wind: 8, Depth: 5}
	var bs bins
	p.load(&bs, &sea)
	for _, v := range []float64{1, 2.3, 3.9} {
		for _, width := range []float64{0.01, 0.08, 0.4} {
			for _, b2 := range []float64{4, 900, 6400} {
				got := bs.sums(v, width, b2)
				var push, wander float64
				for _, w := range bs.b[:bs.n] {
					d := w.c - v
					q := d*d + width
					push += w.force * d / q / (w.inv*q + b2)
					wander += w.force / (w.inv*q + b2)
				}
				const dv, dq = 1e-5, 1e-6
				l, r, n, m := bs.sums(v-dv, width, b2), bs.sums(v+dv, width, b2), bs.sums(v, width-dq, b2), bs.sums(v, width+dq, b2)
				for name, x := range map[string][2]float64{
					"push": {got.push, push}, "σ²": {got.wander, wander},
					"push by V": {got.pushV, (r.push - l.push) / (2 * dv)}, "push by width": {got.pushQ, (m.push - n.push) / (2 * dq)},
					"σ² by V": {got.wanderV, (r.wander - l.wander) / (2 * dv)}, "σ² by width": {got.wanderQ, (m.wander - n.wander) / (2 * dq)},
				} {
					if !(math.Abs(x[0]-x[1]) <= 1e-5*(math.Abs(x[1])+0.01*math.Max(math.Abs(push), wander))) {
						t.Errorf("%v m/s, width %v, b² %v: %s = %v, want %v", v, width, b2, name, x[0], x[1])
					}
				}
			}
		}
	}
}

func mustResolve(t *testing.T, p Paddler) Paddler {
	t.Helper()
	r, err := p.Resolved()
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// TestBandsOfASea: the bands of a system are even in the logarithm of the frequency, from 0.55 of the peak to eight times it, to
// waves a little shorter than the board or to the end of a swell; what a current blocks is the part of the energy above the
// frequency g/(8π U), in deep water.
func TestBandsOfASea(t *testing.T) {
	const g = 9.8
	for name, c := range map[string]struct {
		length, current float64
		y               System
		swell           bool
		top             float64 // Hz
	}{
		"to eight peaks":       {1.6, 0, System{Hs: 2, Tp: 14, Gamma: 2}, false, 8.0 / 14},
		"to the board":         {4.2, 0, System{Hs: 0.7, Tp: 3.5}, false, 1.06 * math.Sqrt(g/(2*math.Pi*4.2))},
		"oblique, on a stream": {4.2, 0.8, System{Hs: 0.7, Tp: 3.5, Off: -50}, false, 1.06*math.Sqrt(g/(2*math.Pi*4.2*math.Cos(50*math.Pi/180))) + 0.8/4.2},
		"swell":                {3, 0, System{Hs: 1.2, Tp: 6, Gamma: 5}, true, 1.8 / 6},
		"against a stream":     {3, -0.8, System{Hs: 0.7, Tp: 3}, false, 1.06 * math.Sqrt(g/(2*math.Pi*3))},
	} {
		p := prepareBare(mustResolve(t, Paddler{Length: c.length}))
		sea := Sea{Current: c.current, Depth: math.Inf(1)}
		var bs bins
		got := p.fill(&bs, c.y, c.swell, &sea, g)
		ratio := math.Pow(c.top/(0.55/c.y.Tp), 1.0/64)
		cos := math.Cos(c.y.Off * math.Pi / 180)
		shape := spectrum.JONSWAP{Hs: c.y.Hs, Tp: c.y.Tp, Gamma: c.y.Gamma}
		if shape.Gamma == 0 {
			shape.Gamma = 3.3
		}
		want := 0.0
		if c.current < 0 {
			want = shape.MomentWithin(0, g/(8*math.Pi*-c.current), c.top) / (c.y.Hs * c.y.Hs / 16)
			if !(want > 0.02) {
				t.Errorf("%s: only %v is blocked", name, want)
			}
		} else if bs.n != 64 {
			t.Errorf("%s: %d bands", name, bs.n)
		}
		if !(math.Abs(got-want) <= 0.15*want) {
			t.Errorf("%s: %v is blocked, want %v", name, got, want)
		}
		for i, w := range bs.b[:bs.n] {
			f := w.k * (w.c + c.current) / (2 * math.Pi) // as a fixed observer times it: ω = σ + kU
			if at := 0.55 / c.y.Tp * math.Pow(ratio, float64(i)+0.5); !(math.Abs(f-at) <= 1e-9) {
				t.Errorf("%s: band %d of a cosine of %v at %v Hz, want %v", name, i, cos, f, at)
			}
		}
	}
}
