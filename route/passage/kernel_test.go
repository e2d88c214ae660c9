package passage

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"followingsea.example/route"
)

// A strait is invented water for the kernel alone: speed, stream and leeway at
// each instant, the same all along a run of some legs.
type strait struct {
	courses []float64 // of the legs, degrees
	length  float64   // of each leg, m
	cells   int       // in each leg
	step    float64   // s between the instants
	speed   func(t float64) float64
	stream  func(t float64) route.Velocity
	slip    func(t float64) float64
}

const straitEnd = 12 * 3600.0

func (s strait) grid() *grid {
	var cells []cell
	var reaches []reach
	along := 0.0
	for l, course := range s.courses {
		v := route.Toward(1, course)
		reaches = append(reaches, reach{first: len(cells), after: len(cells) + s.cells})
		for range s.cells {
			cells = append(cells, cell{east: v.East, north: v.North, length: s.length / float64(s.cells), along: along, charted: 10, leg: l})
			along += s.length / float64(s.cells)
		}
	}
	g := &grid{}
	g.lay(cells, reaches, s.step, int(straitEnd/s.step)+1)
	for r := range reaches {
		for j := range g.steps {
			t := float64(j) * s.step
			v := g.at(r, j)
			x := s.stream(t)
			v[chSpeed], v[chSlow], v[chFast] = s.speed(t), 0.8*s.speed(t), 1.2*s.speed(t)
			v[chStreamE], v[chStreamN], v[chSlip] = x.East, x.North, s.slip(t)
		}
	}
	return g
}

func (s strait) arrival(start float64) float64 {
	var w walk
	s.grid().run(&w, start, laneExpected, nil)
	return w.arrival
}

// bySeconds is the plain twin: one second after the other, at the speed made
// good that route.HoldTrack finds for the water of that second.
func (s strait) bySeconds(start float64) float64 {
	t := start
	for _, course := range s.courses {
		for left := s.length; left > 0; {
			mid := t + 0.5
			water := s.stream(mid).Add(route.Toward(1, course+90).Scale(s.slip(mid)))
			made, err := route.HoldTrack(course, s.speed(mid), water)
			if err != nil || t > straitEnd-2 {
				return math.NaN()
			}
			if made.SpeedMade > left {
				t += left / made.SpeedMade
				break
			}
			left -= made.SpeedMade
			t++
		}
	}
	return t
}

func drawStrait(t *rapid.T) strait {
	speed, set := rapid.Float64Range(1.5, 3).Draw(t, "speed"), rapid.Float64Range(0, 360).Draw(t, "set")
	rate, drift := rapid.Float64Range(0, 0.8).Draw(t, "rate"), rapid.Float64Range(-0.2, 0.2).Draw(t, "slip")
	return strait{
		courses: []float64{rapid.Float64Range(0, 360).Draw(t, "first"), rapid.Float64Range(0, 360).Draw(t, "second")},
		length:  3000, cells: 12, step: 900,
		speed: func(t float64) float64 { return speed * (1 + 0.2*math.Sin(t/5000)) },
		// A stream that turns with the tide.
		stream: func(t float64) route.Velocity {
			return route.Toward(1, set).Scale(rate * math.Cos(2*math.Pi*t/44700))
		},
		slip: func(t float64) float64 { return drift * math.Cos(t/4000) },
	}
}

// TestWalkAgainstSeconds: the walk over cells and instants arrives when a board
// stepped second by second does.
func TestWalkAgainstSeconds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrait(t)
		start := rapid.Float64Range(0, 3600).Draw(t, "start")
		got, want := s.arrival(start), s.bySeconds(start)
		if want != want {
			return // carried off; the next test has it
		}
		if !near(got-start, want-start, 0.002*(want-start)+2) {
			t.Fatalf("%v s, second by second %v s", got-start, want-start)
		}
	})
}

// TestWalkWhereTheBoardIsCarriedOff: where a stream across or against the track
// is stronger than the board, neither the walk nor the twin arrives.
func TestWalkWhereTheBoardIsCarriedOff(t *testing.T) {
	s := strait{courses: []float64{90}, length: 3000, cells: 12, step: 900,
		speed: func(float64) float64 { return 2 }, slip: func(float64) float64 { return 0 }}
	for _, v := range []route.Velocity{{North: 2.1}, {East: -2.1}, {East: -1.5, North: 1.5}} {
		s.stream = func(float64) route.Velocity { return v }
		if a, b := s.arrival(0), s.bySeconds(0); a == a || b == b {
			t.Errorf("%v: arrives at %v, twin at %v", v, a, b)
		}
	}
}

// TestFinerStepsConverge: halving cells and instants brings the arrival nearer
// to that of a very fine grid, and what is left is small.
func TestFinerStepsConverge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrait(t)
		at := func(n int) float64 {
			x := s
			x.cells, x.step = 3*n, 3600/float64(n)
			return x.arrival(1000)
		}
		fine := at(32)
		if fine != fine {
			return
		}
		coarse, mid := math.Abs(at(2)-fine), math.Abs(at(8)-fine)
		if !(mid <= 0.5*coarse+1) || !(mid <= 10) {
			t.Fatalf("off the fine grid by %v s and %v s", coarse, mid)
		}
	})
}

// TestSymmetriesOfTheWalk: mirrored water gives a mirrored run, a run the other
// way through a reversed stream takes as long, and everything later by some
// time arrives later by it.
func TestSymmetriesOfTheWalk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrait(t)
		want := s.arrival(900)
		same := func(name string, x strait, start, later float64) {
			got := x.arrival(start)
			if want != want && got != got {
				return
			}
			if !near(got, want+later, 1e-6*want) {
				t.Fatalf("%s: %v, want %v", name, got, want+later)
			}
		}
		mirror := s
		mirror.courses = []float64{180 - s.courses[0], 180 - s.courses[1]} // north and south change places
		mirror.stream = func(t float64) route.Velocity { v := s.stream(t); return route.Velocity{East: v.East, North: -v.North} }
		mirror.slip = func(t float64) float64 { return -s.slip(t) }
		same("mirrored", mirror, 900, 0)
		back := s
		back.courses = []float64{s.courses[0] + 180, s.courses[1] + 180}
		back.stream = func(t float64) route.Velocity { return s.stream(t).Scale(-1) }
		same("reversed", back, 900, 0)
		later := s
		const by = 1800
		later.speed = func(t float64) float64 { return s.speed(t - by) }
		later.stream = func(t float64) route.Velocity { return s.stream(t - by) }
		later.slip = func(t float64) float64 { return s.slip(t - by) }
		same("later", later, 900+by, by)
	})
}

// TestUnknownWaterEndsTheWalk: one instant of the way that is not a number ends
// the passage there, whichever quantity it is; it never makes an arrival.
func TestUnknownWaterEndsTheWalk(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawStrait(t)
		g := s.grid()
		var w walk
		g.run(&w, 0, laneExpected, nil)
		if w.end != arrived {
			return
		}
		ch := rapid.SampledFrom([]channel{chSpeed, chStreamE, chStreamN, chSlip}).Draw(t, "channel")
		bad := rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1)}).Draw(t, "value")
		j := rapid.IntRange(1, int(w.arrival/2/s.step)+1).Draw(t, "instant")
		for r := range g.reaches {
			g.at(r, j)[ch] = bad
		}
		g.run(&w, 0, laneExpected, nil)
		if w.end == arrived && math.IsNaN(bad) {
			t.Fatalf("channel %d is %v at instant %d, and it arrives at %v", ch, bad, j, w.arrival)
		}
		if w.end == arrived && !(ch == chSpeed && bad > 0) {
			t.Fatalf("channel %d is %v, and it arrives", ch, bad)
		}
	})
}
