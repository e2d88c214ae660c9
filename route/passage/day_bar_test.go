package passage

import (
	"math"
	"testing"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wave"
)

// TestDayAtABar works a day by hand whose last kilometre lies over a bar that
// dries half a metre. The tide falls from 4.5 m at half past seven to 0.5 m at
// half past one. With 1.2 m wanted the bar closes when the tide is at 1.7 m,
// which tide.Table.Windows finds; the swell over it is grown by wave.Shoal. A
// departure keeps the limit on depth exactly if all of the bar is crossed before.
func TestDayAtABar(t *testing.T) {
	table, err := tide.NewTable([]tide.Turn{{Time: at(-6.5), Height: 0.5}, {Time: at(-0.5), Height: 4.5, High: true}, {Time: at(5.5), Height: 0.5}, {Time: at(11.5), Height: 4.5, High: true}}, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	windows, err := table.Windows(tide.Bar{Charted: -0.5, Need: 1.2}, at(-0.5), at(5))
	if err != nil || len(windows) != 1 {
		t.Fatalf("%v, %v", windows, err)
	}
	closes := windows[0].To
	// By the rule of the cosine: 4.5 m falls to 1.7 m when 0.7 of the range is gone.
	if hand := -0.5 + 6*math.Acos(1-2*0.7)/math.Pi; !near(closes.Sub(at(hand)).Seconds(), 0, 1) {
		t.Fatalf("closes at %v, by hand at %v h", closes, hand)
	}
	day := fairDay(t, steadyWind(t, 8, 270))
	day.Tide, day.Swell = table, constantSwell{{Hs: 0.4, Tp: 9, From: 270}}
	run := eastward(t)
	start := run.Points[0]
	run.Points = []route.Point{start, route.Direct(start, 90, 6000).To, route.Direct(start, 90, 7000).To}
	run.Depths = []route.Value{Known(15), Known(-0.5)}
	p := Paddler{Cruise: Known(1.8), Sprint: Known(3), Mass: Known(95), BoardLength: Known(4.2)}
	p.Limits[LeastDepth], p.Limits[GreatestBreaking] = Ask(1.2), Ask(5)
	w, err := Prepare(run, day, p, Options{From: at(0), To: at(4), Cell: 50, Step: 300})
	if err != nil {
		t.Fatal(err)
	}
	met := 0
	for hours := 0.0; hours <= 3; hours += 0.25 {
		a := appraise(t, w, hours)
		legs, err := w.Timeline(a.Depart)
		if err != nil || len(legs) != 2 {
			t.Fatalf("%v, %v", legs, err)
		}
		f := findingOf(t, a, LeastDepth)
		leave := legs[1].Leave
		if want := table.Height(leave) - 0.5; !near(f.Value, want, 0.03) {
			t.Errorf("start at %v h, %v: by hand %v", hours, f, want)
		}
		if d := closes.Sub(leave).Seconds(); math.Abs(d) > 60 && (f.State == Met) != (d > 0) {
			t.Errorf("start at %v h, %v: over the bar %v s before it closes", hours, f, d)
		}
		if f.State == Met {
			met++
		}
		// Over the bar each system is grown by shoaling, and they add as squares.
		f = findingOf(t, a, GreatestBreaking)
		m, err := w.Moment(f.Along, f.Time)
		if err != nil {
			t.Fatal(err)
		}
		depth := table.Height(f.Time) - 0.5
		grow := func(tp float64) float64 { return math.Max(1, wave.Shoal(1, tp, math.Inf(1), depth)) }
		surf := math.Hypot(0.4*grow(9), m.Sea.Hs*grow(m.Sea.Tp))
		if !near(f.Value, surf/depth, 0.01*surf/depth) || !near(m.SurfHs, surf, 1e-6) {
			t.Errorf("start at %v h, %v: by hand %v over %v", hours, f, surf, depth)
		}
	}
	if met == 0 || met == 13 {
		t.Errorf("%d of 13 departures cross in time", met)
	}
}
