package harmonic

import (
	"math"
	"testing"
	"time"

	"followingsea.example/tide"
)

const degree = math.Pi / 180

// midnight is when the mean sun stands at T = 180°, so that S2 without its lag has its high water.
var midnight = time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)

// hoursOf is the instant that many hours after midnight.
func hoursOf(h float64) time.Time { return midnight.Add(time.Duration(math.Round(h * 3600e9))) }

// sameTime fails unless the instants are within two microseconds.
func sameTime(t *testing.T, what string, got, want time.Time) {
	t.Helper()
	if !(math.Abs(got.Sub(want).Seconds()) <= 2e-6) {
		t.Errorf("%s: %v, want %v", what, got, want)
	}
}

func streamOfS2(t *testing.T, mean, lag float64) *Stream {
	t.Helper()
	s, err := NewStream(Axis{Ebb: 180, Mean: mean, Constituents: []Constituent{{"S2", 1, lag}}}, Without)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func tideOf(t *testing.T, z0 float64, n Nodes, cs ...Constituent) *Tide {
	t.Helper()
	td, err := New(Station{Z0: z0, Constituents: cs}, n)
	if err != nil {
		t.Fatal(err)
	}
	return td
}

// TestBisect: a root between the two ends is found to a microsecond (of hours) in a handful of
// evaluations, whichever way the function goes and on whatever side of the middle it lies; where rounding
// has put a zero just outside, it is the end that is nearer to it.
func TestBisect(t *testing.T) {
	for _, sign := range []float64{1, -1} {
		for r := -0.049; r < 0.05; r += 0.0035 {
			for name, f := range map[string]func(float64) float64{
				"line":   func(x float64) float64 { return x - r },
				"sine":   func(x float64) float64 { return math.Sin(3 * (x - r)) },
				"bent":   func(x float64) float64 { return (x - r) * (1 + 8*x) },
				"convex": func(x float64) float64 { return math.Exp(9*(x-r)) - 1 },
			} {
				n := 0
				x := bisect(func(x float64) float64 { n++; return sign * f(x) }, -0.05, 0.05)
				if !(math.Abs(x-r) <= 1e-10) || n > 14 {
					t.Errorf("%s: root %v, want %v, %d evaluations", name, x, r, n)
				}
			}
			if x := bisect(func(x float64) float64 { return sign * (x - 2 - r) }, 1, 3); !(math.Abs(x-2-r) <= 1e-10) {
				t.Errorf("between 1 and 3: %v, want %v", x, 2+r)
			}
		}
		if x := bisect(func(x float64) float64 { return sign * (x + 1 + 1e-17) }, 0, 1); x != 0 {
			t.Errorf("zero before the first end: %v", x)
		}
		if x := bisect(func(x float64) float64 { return sign * (x - 2) }, 0, 1); x != 1 {
			t.Errorf("zero behind the second end: %v", x)
		}
	}
}

// TestTurnsOfS2: with S2 alone high and low water are at the hours of its lag, all of them and to the microsecond,
// wherever they lie between two samples and whenever the question begins, for many days.
func TestTurnsOfS2(t *testing.T) {
	for lag := 0.0; lag < 3; lag += 0.125 {
		for _, n := range []Nodes{AtInstant, ByYear, Without} {
			turns, err := tideOf(t, 0, n, Constituent{"S2", 1, lag}).Turns(hoursOf(-1), hoursOf(12*24-1), 0)
			if err != nil || len(turns) != 4*12 {
				t.Fatalf("lag %v: %d turns of 48, %v", lag, len(turns), err)
			}
			for i, u := range turns {
				sameTime(t, "turn", u.Time, hoursOf(6*float64(i)+lag/30))
				if u.High != (i%2 == 0) || !(math.Abs(u.Height-math.Cos(float64(i)*math.Pi)) <= 1e-12) {
					t.Errorf("turn %d: %v", i, u)
				}
			}
		}
	}
	// A zero of the rate that lies on a sample.
	td := tideOf(t, 0, Without, Constituent{"S2", 1, 0})
	for k := 0.0; k < 240; k++ {
		turns, err := td.Turns(hoursOf(k/10-0.01), hoursOf(k/10+23.99), 0)
		if err != nil || len(turns) != 4 {
			t.Errorf("from %v h: %v %v", k/10, turns, err)
		}
	}
}

// TestTurnsOfAnyAmplitude: when S2 turns does not depend on how far, from the largest to where products of two heights are too
// small for a number.
func TestTurnsOfAnyAmplitude(t *testing.T) {
	for _, amplitude := range []float64{25, 1, 1e-100, 1e-163, 1e-200} {
		turns, err := tideOf(t, 0, Without, Constituent{"S2", amplitude, 1}).Turns(hoursOf(-1), hoursOf(23), 0)
		if err != nil || len(turns) != 4 {
			t.Fatalf("%v m: %v %v", amplitude, turns, err)
		}
		for i, u := range turns {
			sameTime(t, "turn", u.Time, hoursOf(6*float64(i)+1.0/30))
		}
	}
}

// TestQuestionOfAnyLength: every turn is found however many samples the question takes, also where one or two remain of the last
// five days.
func TestQuestionOfAnyLength(t *testing.T) {
	td := tideOf(t, 0, Without, Constituent{"S2", 1, 1})
	for k := rootChunk - 40; k < rootChunk+3; k++ {
		d := time.Duration(k)*rootStep - time.Second
		turns, err := td.Turns(hoursOf(0), midnight.Add(d), 0)
		if err != nil || len(turns) != int((d.Hours()-1.0/30)/6)+1 {
			t.Errorf("%v: %d turns, %v", d, len(turns), err)
		}
	}
}

// TestTwoSlacksWithinAStep: a stream that only just reaches zero has two slacks, close together, on
// either side of its extreme, at the cosine of half their distance: both are found, at any place between the
// samples, with their kinds; and one that only just does not has none.
func TestTwoSlacksWithinAStep(t *testing.T) {
	for lag := -9.0; lag < 3; lag += 0.25 {
		for _, x := range []float64{0.01, 0.4, 1.2, 1.49, 1.6, 2.9} {
			for _, flood := range []bool{true, false} {
				mean, g, kinds := -math.Cos(x*degree), lag, [2]tide.Event{tide.SlackBeforeFlood, tide.SlackBeforeEbb}
				if !flood {
					mean, g, kinds = -mean, lag+180, [2]tide.Event{tide.SlackBeforeEbb, tide.SlackBeforeFlood}
				}
				// The extreme is at 120 h, five days of samples after the first one.
				events, err := streamOfS2(t, mean, g).Events(hoursOf(119.5+lag/30), hoursOf(120.5+lag/30))
				if err != nil || len(events) != 3 {
					t.Fatalf("lag %v, %v°: %v %v", lag, x, events, err)
				}
				for i, want := range []float64{-x, 0, x} {
					sameTime(t, "event", events[i].Time, hoursOf(120+(lag+want)/30))
				}
				if events[0].Kind != kinds[0] || events[2].Kind != kinds[1] || events[1].Kind.Slack() {
					t.Errorf("lag %v, %v°: %v", lag, x, events)
				}
			}
		}
		events, err := streamOfS2(t, -1-1e-9, lag).Events(hoursOf(-2), hoursOf(2))
		if err != nil || len(events) != 1 || events[0].Kind != tide.MinEbb {
			t.Errorf("lag %v: %v %v", lag, events, err)
		}
	}
}

// TestWindowsWithinAStep: a bar that has water for a few minutes has it from crossing to
// crossing, wherever the question begins and ends about it and however many days before.
func TestWindowsWithinAStep(t *testing.T) {
	for lag := -9.0; lag < 3; lag += 0.25 {
		td := tideOf(t, 0, Without, Constituent{"S2", 1, lag})
		for _, x := range []float64{0.02, 0.7, 1.3, 2.2} {
			level := math.Cos(x * degree)
			open, shut := hoursOf(120+(lag-x)/30), hoursOf(120+(lag+x)/30)
			for _, before := range []time.Duration{time.Second, 2 * time.Minute, 5 * time.Minute, 11 * time.Hour, 119*time.Hour + 45*time.Minute} {
				from, to := open.Add(-before), shut.Add(min(before, 5*time.Hour))
				w, err := td.Windows(tide.Bar{Need: level}, from, to)
				if err != nil || len(w) == 0 {
					t.Fatalf("lag %v, %v°, %v before: %v %v", lag, x, before, w, err)
				}
				last := w[len(w)-1]
				sameTime(t, "opens", last.From, open)
				sameTime(t, "shuts", last.To, shut)
				if want := 1 + int((before+time.Second)/(12*time.Hour)); len(w) != want || last.CutFrom || last.CutTo {
					t.Errorf("lag %v, %v°, %v before: %v, want %d", lag, x, before, w, want)
				}
			}
		}
		// One crossing, a little after the beginning or before the end.
		for _, d := range []time.Duration{time.Second, time.Minute, 5 * time.Minute, 7 * time.Minute} {
			rise, fall := hoursOf(9+lag/30), hoursOf(15+lag/30)
			for _, c := range []struct{ from, to, open, shut time.Time }{
				{rise.Add(-d), rise.Add(time.Hour), rise, rise.Add(time.Hour)},
				{rise.Add(-time.Hour), rise.Add(d), rise, rise.Add(d)},
				{fall.Add(-d), fall.Add(time.Hour), fall.Add(-d), fall},
				{fall.Add(-time.Hour), fall.Add(d), fall.Add(-time.Hour), fall},
			} {
				w, err := td.Windows(tide.Bar{}, c.from, c.to)
				if err != nil || len(w) != 1 {
					t.Fatalf("lag %v, %v: %v %v", lag, d, w, err)
				}
				sameTime(t, "opens", w[0].From, c.open)
				sameTime(t, "shuts", w[0].To, c.shut)
				if w[0].CutFrom != c.from.Equal(c.open) || w[0].CutTo != c.to.Equal(c.shut) {
					t.Errorf("cut: %+v", w[0])
				}
			}
		}
	}
}

// TestTwoTurnsWithinAStep: S1 and S2 as sin 2T - 2 cos 2x/cos x sin T have the slope cos 2T - cos 2x cos T/cos x,
// which is zero at T = ±x and positive between: a low and a high water minutes apart.
func TestTwoTurnsWithinAStep(t *testing.T) {
	for at := 0.0; at < 3; at += 0.125 {
		for _, x := range []float64{0.1, 0.4, 0.7, 1.4} {
			td := tideOf(t, 0, Without, Constituent{"S1", 2 * math.Cos(2*x*degree) / math.Cos(x*degree), 270 + at}, Constituent{"S2", 1, 90 + 2*at})
			noon := 12 + at/15
			turns, err := td.Turns(hoursOf(noon-0.5), hoursOf(noon+0.5), 0)
			if err != nil || len(turns) != 2 {
				t.Fatalf("%v°, %v°: %v %v", at, x, turns, err)
			}
			sameTime(t, "low", turns[0].Time, hoursOf(noon-x/15))
			sameTime(t, "high", turns[1].Time, hoursOf(noon+x/15))
			if turns[0].High || !turns[1].High {
				t.Errorf("%v", turns)
			}
		}
	}
}

// TestSlackOnASample: where the rate is zero to the last bit on a sample, its slack is found once, with
// its kind, also if it is one of two.
func TestSlackOnASample(t *testing.T) {
	// The samples are summed from the middle of a day, which begins a margin of an hour and a step before
	// the question: 10.9 h after it, where S2 is at 30°·10.9 = 327° from its high water.
	const at, phase = 10.9, 327.0
	for _, c := range []struct {
		angle float64
		kinds []tide.Event
		hours []float64
	}{
		{60, []tide.Event{tide.SlackBeforeEbb}, []float64{at}},
		{300, []tide.Event{tide.SlackBeforeFlood}, []float64{at}},
		{179, []tide.Event{tide.SlackBeforeEbb, tide.SlackBeforeFlood}, []float64{at, at + 2.0/30}},
		{181, []tide.Event{tide.SlackBeforeEbb, tide.SlackBeforeFlood}, []float64{at - 2.0/30, at}},
		{1, []tide.Event{tide.SlackBeforeFlood, tide.SlackBeforeEbb}, []float64{at - 2.0/30, at}},
		{359, []tide.Event{tide.SlackBeforeFlood, tide.SlackBeforeEbb}, []float64{at, at + 2.0/30}},
	} {
		_, cos := math.Sincos(c.angle * degree)
		s := streamOfS2(t, -cos, phase-c.angle)
		if v := s.Rate(hoursOf(at)); v != 0 {
			t.Fatalf("%v°: %v is not on the zero", c.angle, v)
		}
		events, err := s.Events(midnight, hoursOf(48))
		if err != nil {
			t.Fatal(err)
		}
		i := 0
		for _, e := range events {
			if !e.Kind.Slack() || !(math.Abs(e.Time.Sub(hoursOf(at)).Hours()) < 1) {
				continue
			}
			if i == len(c.kinds) {
				t.Fatalf("%v°: one more slack, %v", c.angle, e)
			}
			sameTime(t, "slack", e.Time, hoursOf(c.hours[i]))
			if e.Kind != c.kinds[i] {
				t.Errorf("%v°: %v, want %v", c.angle, e, c.kinds[i])
			}
			i++
		}
		if i != len(c.kinds) {
			t.Errorf("%v°: %d slacks, want %d", c.angle, i, len(c.kinds))
		}
	}
}
