package ride_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"followingsea.example/wave"
	"followingsea.example/wave/ride"
	"followingsea.example/wave/spectrum"
)

func down(x float64) float64 { return math.Nextafter(x, math.Inf(-1)) }
func up(x float64) float64   { return math.Nextafter(x, math.Inf(1)) }

// TestRangesAreClosed: the ends of every stated range are accepted, and what is just beyond them is refused with the name
// of the field.
func TestRangesAreClosed(t *testing.T) {
	check := func(name string, err, marks error, refused bool) {
		t.Helper()
		if refused && !(errors.Is(err, marks) && strings.Contains(err.Error(), name)) || !refused && err != nil {
			t.Errorf("%s: refused %v: %v", name, refused, err)
		}
	}
	for _, craft := range []ride.Craft{ride.Board, ride.Ski} {
		for _, prior := range ride.Priors(craft) {
			for x, refused := range map[float64]bool{prior.Low: false, prior.High: false, down(prior.Low): true, up(prior.High): true} {
				if math.IsInf(prior.High, 1) && x == up(prior.High) {
					continue
				}
				p := ride.Paddler{Craft: craft, Drag: 5, Cruise: 0.3, Sprint: 8}
				*map[string]*float64{
					"Mass": &p.Mass, "Length": &p.Length, "Draught": &p.Draught, "AddedMass": &p.AddedMass, "Cruise": &p.Cruise,
					"Sprint": &p.Sprint, "Drag": &p.Drag, "Bend": &p.Bend, "WindArea": &p.WindArea, "WindShare": &p.WindShare,
				}[prior.Field] = x
				check(prior.Field, second(p.Resolved()), ride.ErrPaddler, refused)
			}
		}
	}
	check("Sprint", second(ride.Paddler{Cruise: 2, Sprint: 2}.Resolved()), ride.ErrPaddler, false)
	check("Sprint", second(ride.Paddler{Cruise: 2, Sprint: down(2)}.Resolved()), ride.ErrPaddler, true)

	for _, c := range []struct {
		name      string
		low, high float64
		field     func(b *ride.Bump) *float64
	}{
		{"Height", 0, 50, func(b *ride.Bump) *float64 { return &b.Height }},
		{"Period", 0.3, 40, func(b *ride.Bump) *float64 { return &b.Period }},
		{"Depth", 0.05, deep, func(b *ride.Bump) *float64 { return &b.Depth }},
		{"Current", -10, 10, func(b *ride.Bump) *float64 { return &b.Current }},
		{"Off", -75, 75, func(b *ride.Bump) *float64 { return &b.Off }},
		{"Wind", -60, 60, func(b *ride.Bump) *float64 { return &b.Wind }},
		{"Gravity", 9, 10, func(b *ride.Bump) *float64 { return &b.Gravity }},
	} {
		for x, refused := range map[float64]bool{c.low: false, c.high: false, down(c.low): true, up(c.high): true} {
			if c.name == "Depth" && x == deep {
				refused = false
			}
			b := ride.Bump{Height: 0.5, Period: 3, Depth: deep}
			*c.field(&b) = x
			check(c.name, second(reference.Appraise(b)), ride.ErrBump, refused)
			check(c.name, second(reference.Line(b)), ride.ErrBump, refused)
			check(c.name, second(reference.Strength(b)), ride.ErrBump, refused)
		}
	}

	ready := someReady()[0]
	for _, c := range []struct {
		name      string
		low, high float64
		field     func(s *ride.Sea) *float64
	}{
		{"WindSea.Hs", 0, 25, func(s *ride.Sea) *float64 { return &s.WindSea.Hs }},
		{"WindSea.Tp", 0.5, 30, func(s *ride.Sea) *float64 { return &s.WindSea.Tp }},
		{"Swell.Tp", 0.5, 30, func(s *ride.Sea) *float64 { return &s.Swell.Tp }},
		{"WindSea.Gamma", 1, 10, func(s *ride.Sea) *float64 { return &s.WindSea.Gamma }},
		{"Swell.Off", -360, 360, func(s *ride.Sea) *float64 { return &s.Swell.Off }},
		{"Wind", -20, 35, func(s *ride.Sea) *float64 { return &s.Wind }},
		{"Current", -5, 5, func(s *ride.Sea) *float64 { return &s.Current }},
		{"Depth", 0.3, deep, func(s *ride.Sea) *float64 { return &s.Depth }},
		{"Gravity", 9, 10, func(s *ride.Sea) *float64 { return &s.Gravity }},
	} {
		for x, refused := range map[float64]bool{c.low: false, c.high: false, down(c.low): true, up(c.high): true} {
			if c.name == "Depth" && x == deep {
				refused = false
			}
			s := ride.Sea{WindSea: ride.System{Hs: 0.7, Tp: 3.6}, Swell: ride.System{Hs: 0.2, Tp: 8}, Wind: 8, Depth: deep}
			*c.field(&s) = x
			check(c.name, second(ready.Sea(s)), ride.ErrSea, refused)
		}
	}

	for _, c := range []struct {
		name      string
		low, high float64
		field     func(r *ride.Run) *float64
	}{
		{"Step", 0.005, 0.25, func(r *ride.Run) *float64 { return &r.Step }},
		{"Seconds", 1, 86400, func(r *ride.Run) *float64 { return &r.Seconds }},
	} {
		for x, refused := range map[float64]bool{c.low: false, c.high: false, down(c.low): true, up(c.high): true} {
			if x == 86400 {
				continue // a day is long
			}
			r := ride.Run{Seconds: 1, Step: 0.25}
			*c.field(&r) = x
			check(c.name, second(reference.Simulate(ride.Sea{Depth: deep}, r)), ride.ErrRun, refused)
		}
	}
	for n, refused := range map[int]bool{7: true, 8: false, 5000: false, 5001: true} {
		check("Components", second(reference.Simulate(ride.Sea{Depth: deep}, ride.Run{Seconds: 1, Components: n})), ride.ErrRun, refused)
	}

	// Limits may be zero, and no more than finite.
	for x, refused := range map[float64]bool{0: false, math.MaxFloat64: false, math.Inf(1): true, down(0): true} {
		for i := range 13 {
			l := ride.StartingLimits()
			name := ""
			for j, f := range []struct {
				name string
				at   *float64
			}{
				{"PearlingSteepness", &l.PearlingSteepness}, {"PearlingReach", &l.PearlingReach}, {"Overrun", &l.Overrun}, {"QuarterFrom", &l.QuarterFrom},
				{"QuarterTo", &l.QuarterTo}, {"QuarterSteepness", &l.QuarterSteepness}, {"QuarterSpeed", &l.QuarterSpeed}, {"BumpSteepness", &l.BumpSteepness},
				{"SeaSteepness", &l.SeaSteepness}, {"Confusion", &l.Confusion}, {"CrossingFrom", &l.CrossingFrom}, {"CrossingTo", &l.CrossingTo},
				{"CrossingSteepness", &l.CrossingSteepness},
			} {
				if i == j {
					*f.at, name = x, f.name
				}
			}
			check(name, second(ready.Hazards(benchSea, l)), ride.ErrLimits, refused)
		}
	}
}

// TestFormulasOnTheirBorders: where the stated range of a formula is closed its end has a value, and beyond it there is none.
func TestFormulasOnTheirBorders(t *testing.T) {
	below0 := -math.SmallestNonzeroFloat64
	for name, v := range map[string][2]float64{
		"no effort":             {reference.Pull(2, 0), 0},
		"calm, no effort":       {reference.FlatSpeed(0, 0), 0},
		"fastest effort":        {reference.FlatSpeed(20, 0), 20},
		"no damping":            {ride.PendulumThreshold(0), 0},
		"no damping, Melnikov":  {ride.MelnikovThreshold(0), 0},
		"critical damping":      {ride.PendulumThreshold(1.193), 1},
		"no surf":               {ride.MelnikovSpeed(3, 0), 3},
		"no wave speed":         {ride.MelnikovSpeed(0, 2), math.Sqrt2},
		"Melnikov as printed":   {ride.MelnikovSpeed(5, 2), math.Sqrt(25 - 40/math.Pi + 2)},
		"mean of one":           {ride.SeparatrixMoment(0), 1},
		"ship of 4 m, 60 deg":   {ride.ShipSpeedLimit(4, 60), 7.2 * 1852 / 3600},
		"pendulum as printed":   {ride.PendulumThreshold(0.5), 2/math.Pi - 0.31634/8 + 0.00749/32},
		"below critical, small": {ride.PendulumThreshold(down(1.193)), 4*1.193/math.Pi - 0.31634*math.Pow(1.193, 3) + 0.00749*math.Pow(1.193, 5)},
	} {
		near(t, name, v[0], v[1], 1e-12*math.Max(1, math.Abs(v[1])))
	}
	for name, v := range map[string]float64{
		"nominal":               reference.Pull(2, below0),
		"nominal, flat":         reference.FlatSpeed(below0, 0),
		"nominal, flat, most":   reference.FlatSpeed(up(20), 0),
		"wind":                  reference.FlatSpeed(2, up(100)),
		"head wind":             reference.FlatSpeed(2, down(-100)),
		"damping":               ride.PendulumThreshold(below0),
		"damping, Melnikov":     ride.MelnikovThreshold(below0),
		"wave speed, Melnikov":  ride.MelnikovSpeed(below0, 1),
		"surf, Melnikov":        ride.MelnikovSpeed(1, below0),
		"no ship":               ride.ShipSpeedLimit(0, 0),
		"ship along the crests": ride.ShipSpeedLimit(4, -90),
	} {
		if v == v {
			t.Errorf("%s: %v, want NaN", name, v)
		}
	}
	if v := ride.ShipSpeedLimit(4, down(90)); !(v > 0) {
		t.Errorf("almost along the crests: %v", v)
	}
	for _, wind := range []float64{-100, 100} {
		if v := reference.FlatSpeed(2, wind); !(v*wind > 0) {
			t.Errorf("in a wind of %v: %v", wind, v)
		}
	}
}

// TestCalibrationOnItsBorders: the resistance may be moved to 0.3 and 3 times its prior, and no further.
func TestCalibrationOnItsBorders(t *testing.T) {
	// At 2 m/s a square law takes 8 times K watts.
	p := ride.Paddler{Mass: 95, Cruise: 1, Sprint: 2, Bend: math.Inf(1)}
	prior := plainly(t, p).Drag
	for k, ok := range map[float64]bool{0.3 * prior: true, 3.0 * prior: true, down(0.3 * prior): false, up(3.0 * prior): false} {
		q, err := p.WithSprintPower(8 * k)
		if ok != (err == nil) || ok && q.Drag != k || !ok && !errors.Is(err, ride.ErrCalibration) {
			t.Errorf("K = %v: %v, %v", k, q.Drag, err)
		}
	}
	// Bent: K v³/√(1 + (v/v_t)²), with v/v_t = 3/4 and a root of 5/4.
	p = ride.Paddler{Mass: 95, Cruise: 1, Sprint: 3, Bend: 4}
	q, err := p.WithSprintPower(6 * 27 / 1.25)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "K of a bent law", q.Drag, 6, 1e-12)

	speed := func(part float64) float64 {
		q := reference
		q.Drag = part * plainly(t, reference).Drag
		ready, err := q.Prepare()
		if err != nil {
			t.Fatal(err)
		}
		r, err := ready.Sea(benchSea)
		if err != nil {
			t.Fatal(err)
		}
		return r.Speed
	}
	fast, slow := speed(0.3), speed(3.0)
	for v, want := range map[float64]float64{fast: 0.3, slow: 3, up(fast): 0, down(slow): 0} {
		q, err := reference.WithDownwindMean(benchSea, v)
		if want == 0 {
			if !errors.Is(err, ride.ErrCalibration) {
				t.Errorf("%v m/s: %v", v, err)
			}
			continue
		}
		if err != nil {
			t.Fatal(err)
		}
		rel(t, "K at the border", q.Drag, want*plainly(t, reference).Drag, 1e-6)
	}
}

// TestRemarksOfASeaOnTheirLimits: a remark is made beyond its limit, and not on it.
func TestRemarksOfASeaOnTheirLimits(t *testing.T) {
	ready := someReady()[0]
	of := func(s ride.Sea) ride.Remark {
		t.Helper()
		r, err := ready.Sea(s)
		if err != nil {
			t.Fatal(err)
		}
		return r.Remarks
	}
	sea := func(hs, tp, off, depth, wind, current float64) ride.Sea {
		return ride.Sea{WindSea: ride.System{Hs: hs, Tp: tp, Off: off}, Wind: wind, Depth: depth, Current: current}
	}
	length := wave.Solve(3, deep).Length
	// The depth of kh = 1 for a wave of 5 s: ω²h/g = tanh 1.
	h := wave.StandardGravity * math.Tanh(1) * 25 / (4 * math.Pi * math.Pi)
	for name, c := range map[string]struct {
		sea  ride.Sea
		want ride.Remark
	}{
		"45 degrees":              {sea(0.3, 3, 45, deep, 5, 0), 0},
		"46 degrees":              {sea(0.3, 3, -46, deep, 5, 0), ride.FromAbeam},
		"89 degrees":              {sea(0.3, 3, 89, deep, 5, 0), ride.FromAbeam},
		"90 degrees":              {sea(0.3, 3, 90, deep, 5, 0), ride.FromAhead},
		"from ahead":              {sea(0.3, 3, -180, deep, 5, 0), ride.FromAhead},
		"not steep":               {sea(0.05*length*(1-1e-9), 3, 0, deep, 5, 0), 0},
		"steep":                   {sea(0.05*length*(1+1e-9), 3, 0, deep, 5, 0), ride.SteepSea},
		"a third of the depth":    {sea(0.5, 2.4, 0, 1.5, 5, 0), ride.SteepSea},
		"above a third of it":     {sea(up(0.5), 2.4, 0, 1.5, 5, 0), ride.SteepSea | ride.ShallowWater},
		"no longer than six":      {sea(0.1, 5, 0, h*(1+1e-9), 5, 0), 0},
		"longer than six depths":  {sea(0.1, 5, 0, h*(1-1e-9), 5, 0), ride.ShallowWater},
		"calm":                    {sea(0.3, 3, 0, deep, 0, 0), 0},
		"a breath from ahead":     {sea(0.3, 3, 0, deep, -1e-300, 0), ride.HeadWind},
		"no waves, whatever else": {ride.Sea{WindSea: ride.System{Off: 180}, Depth: 0.3}, 0},
		"against a stream":        {sea(0.3, 3, 0, deep, 5, -1), ride.AgainstCurrent},
		"against a weak stream":   {sea(0.3, 3, 0, deep, 5, -0.1), 0},
	} {
		if got := of(c.sea); got != c.want {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
		s := c.sea
		s.WindSea, s.Swell = ride.System{}, s.WindSea
		if got := of(s); got != c.want && c.want != ride.AgainstCurrent {
			t.Errorf("%s, as a swell: %v, want %v", name, got, c.want)
		}
	}
	// On the limit itself: heights of which the quotient is just 0.05.
	on := 0
	for tp := 3.0; tp < 4; tp += 0.01 {
		a, err := reference.Appraise(ride.Bump{Height: 0.5, Period: tp, Depth: deep})
		if err != nil {
			t.Fatal(err)
		}
		if hs := 0.05 * a.Length; hs/a.Length == 0.05 {
			on++
			if got := of(sea(hs, tp, 0, deep, 5, 0)); got != 0 {
				t.Errorf("as steep as the limit, %v s: %v", tp, got)
			}
		}
	}
	if on == 0 {
		t.Error("no sea is on the limit of steepness")
	}
	names := []string{"waves from ahead not counted", "waves from the beam", "waves blocked by the current", "steep sea", "faster than anchored", "shallow water", "head wind"}
	for i, want := range names {
		if got := ride.Remark(1 << i).String(); got != want {
			t.Errorf("remark %d reads %q, want %q", i, got, want)
		}
	}
	if got := ride.Remark(127).String(); got != strings.Join(names, ", ") {
		t.Errorf("all remarks read %q", got)
	}
}

// TestHazardsAreThoseOfTheirFormulas: every measure is that of its definition, from the spectra and the ride, the sectors
// are closed, and a measure on its threshold raises nothing.
func TestHazardsAreThoseOfTheirFormulas(t *testing.T) {
	ready := someReady()[0]
	p := ready.Paddler()
	for _, s := range []ride.Sea{
		{WindSea: ride.System{Hs: 0.7, Tp: 3.2, Off: -30, Gamma: 2}, Swell: ride.System{Hs: 0.5, Tp: 4.6, Off: 20}, Wind: 10, Depth: 4, Gravity: 9.81},
		{WindSea: ride.System{Hs: 0.7, Tp: 3.2, Off: 330}, Swell: ride.System{Hs: 0.5, Tp: 2.8, Off: -40}, Wind: 12, Depth: deep, Gravity: 9.81},
		{WindSea: ride.System{Hs: 0.4, Tp: 2.6, Off: 25}, Wind: 8, Depth: 1.2, Gravity: 9.81},
	} {
		w := wave.Water{Gravity: s.Gravity}
		l := ride.StartingLimits()
		l.QuarterSpeed = 2
		r, err := ready.Sea(s)
		if err != nil {
			t.Fatal(err)
		}
		speed := math.Max(r.Speed, r.RidingSpeed)
		frequency := func(length float64) float64 {
			k := 2 * math.Pi / length
			return math.Sqrt(s.Gravity*k*math.Tanh(k*s.Depth)) / (2 * math.Pi)
		}
		lead, other := s.WindSea, s.Swell
		if other.Hs > 0 && other.Tp < lead.Tp {
			lead, other = other, lead
		}
		m0, m1, sea := 0.0, 0.0, 0.0
		for _, y := range systems(s, 20) {
			lo := math.Max(y.lo, frequency(l.PearlingReach*p.Length))
			hi := math.Max(lo, math.Min(y.hi, frequency(p.Length)))
			m0 += y.scale * spectrum.MomentWithin(y.JONSWAP, 0, lo, hi)
			m1 += y.scale * spectrum.MomentWithin(y.JONSWAP, 1, lo, hi)
			sea = math.Max(sea, y.System.Hs/w.Solve(y.System.Tp, s.Depth).Length)
		}
		short, bumps := w.Solve(m0/m1, s.Depth), w.Solve(r.RideablePeriod, s.Depth)
		steep := r.RideableHs / bumps.Length
		off := math.Abs(math.Remainder(lead.Off, 360))
		apart := math.Abs(math.Remainder(lead.Off-other.Off, 360))
		want := [6]float64{4 * math.Sqrt(m0) / short.Length, speed/short.PhaseSpeed - 1, steep, steep, sea, 0}
		if other.Hs > 0 {
			want[5] = other.Hs * other.Hs / (other.Hs*other.Hs + lead.Hs*lead.Hs)
		}
		l.CrossingFrom, l.CrossingSteepness = 5, 0.001
		measure := func(l ride.Limits) [6]ride.Hazard {
			t.Helper()
			h, err := ready.Hazards(s, l)
			if err != nil {
				t.Fatal(err)
			}
			return h
		}
		h := measure(l)
		for i := range h {
			rel(t, string(h[i].Name), h[i].Measure, want[i], 1e-4)
		}

		// The sectors, and the speed within which a board is steered badly.
		turned := math.Abs(speed/(bumps.PhaseSpeed/math.Cos(off*math.Pi/180)) - 1)
		for _, c := range []struct {
			hazard int
			set    func(l *ride.Limits)
			counts bool
		}{
			{2, func(l *ride.Limits) { l.QuarterFrom = off }, true}, {2, func(l *ride.Limits) { l.QuarterFrom = off + 1e-9 }, false},
			{2, func(l *ride.Limits) { l.QuarterTo = off }, true}, {2, func(l *ride.Limits) { l.QuarterTo = off - 1e-9 }, false},
			{2, func(l *ride.Limits) { l.QuarterSpeed = turned * (1 + 1e-6) }, true}, {2, func(l *ride.Limits) { l.QuarterSpeed = turned * (1 - 1e-6) }, false},
			{5, func(l *ride.Limits) { l.CrossingFrom = apart }, true}, {5, func(l *ride.Limits) { l.CrossingFrom = apart + 1e-9 }, false},
			{5, func(l *ride.Limits) { l.CrossingTo = apart }, true}, {5, func(l *ride.Limits) { l.CrossingTo = apart - 1e-9 }, false},
		} {
			if c.hazard == 5 && other.Hs == 0 {
				continue
			}
			set := l
			c.set(&set)
			if got := measure(set)[c.hazard]; (got.Measure > 0) != c.counts {
				t.Errorf("%+v: measures %v, want it counted: %v", set, got.Measure, c.counts)
			}
		}

		l.PearlingSteepness, l.Overrun, l.QuarterSteepness, l.BumpSteepness, l.SeaSteepness, l.Confusion = h[0].Measure, h[1].Measure, h[2].Measure, h[3].Measure, h[4].Measure, h[5].Measure
		for _, x := range measure(l) {
			if x.Raised || x.Measure != x.Threshold {
				t.Errorf("on its threshold: %+v", x)
			}
		}
		l.PearlingSteepness, l.Overrun, l.QuarterSteepness, l.BumpSteepness, l.SeaSteepness = down(h[0].Measure), down(h[1].Measure), down(h[2].Measure), down(h[3].Measure), down(h[4].Measure)
		for i, x := range measure(l) {
			if x.Raised != (i < 5) {
				t.Errorf("above its threshold: %+v", x)
			}
		}
	}
}

// TestNothingToRide: where a sea has no waves of a kind, what is said of them is zero, and nothing else is changed.
func TestNothingToRide(t *testing.T) {
	ready := someReady()[0]
	of := func(s ride.Sea) ride.Ride {
		t.Helper()
		r, err := ready.Sea(s)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	// No waves, though they have a period: only the wind counts.
	calm := of(ride.Sea{Wind: 6, Depth: 8})
	for _, y := range []ride.System{{Tp: 4}, {Tp: 4, Off: 70, Gamma: 2}} {
		if r := of(ride.Sea{WindSea: y, Swell: y, Wind: 6, Depth: 8}); r.Speed != calm.Speed || r.Spread != calm.Spread || r.Remarks != 0 || r.RideableHs != 0 || r.EnergyShare != 0 || r.DominantCatch != 0 || r.DominantShare != 0 || r.WaveShare != 0 {
			t.Errorf("without waves: %+v, want %+v", r, calm)
		}
	}
	// A swell of which nothing is as short as what can be held.
	r := of(ride.Sea{Swell: ride.System{Hs: 1.5, Tp: 12}, Depth: deep})
	if !(r.LongestPeriod > 0 && r.LongestPeriod < 12/1.8) || r.RideableHs != 0 || r.RideablePeriod != 0 || r.EnergyShare != 0 || r.WaveShare != 0 {
		t.Errorf("long swell: %+v", r)
	}
	// Waves more than 60 degrees off astern are none to ride.
	for off, rides := range map[float64]bool{60: true, -60: true, 60.001: false, 180: false} {
		r := of(ride.Sea{WindSea: ride.System{Hs: 0.8, Tp: 3.4, Off: off}, Wind: 20, Depth: deep})
		if (r.LongestPeriod > 0) != rides || (r.RideableHs > 0) != rides || (r.DominantCatch > 0) != rides {
			t.Errorf("%v degrees off: %+v", off, r)
		}
	}
	// Waves that a sprint outruns, and waves that the board bridges.
	for tp, wind := range map[float64]float64{1.8: 14, 1.3: 0} {
		if r := of(ride.Sea{WindSea: ride.System{Hs: 0.1, Tp: tp}, Wind: wind, Depth: deep}); r.DominantCatch != 0 || r.DominantShare != 0 {
			t.Errorf("peak of %v s: %+v", tp, r)
		}
	}
	slow, err := ride.Paddler{Length: 14, Cruise: 0.5, Sprint: 1}.Prepare()
	if err != nil {
		t.Fatal(err)
	}
	s := ride.Sea{WindSea: ride.System{Hs: 0.3, Tp: 2.5}, Depth: deep} // 9.8 m long, at 3.9 m/s
	if r, err := slow.Sea(s); err != nil || r.DominantCatch != 0 || r.DominantShare != 0 {
		t.Errorf("bridged: %+v, %v", r, err)
	}
}

// TestNoHazardOfNoWaves: without waves, without waves to ride, and without a leading system to be crossed, there is nothing
// to measure, on any depth.
func TestNoHazardOfNoWaves(t *testing.T) {
	ready := someReady()[0]
	for _, depth := range []float64{deep, 8} {
		for _, c := range []struct {
			sea  ride.Sea
			none []int
		}{
			{ride.Sea{Depth: depth}, []int{0, 1, 2, 3, 4, 5}},
			{ride.Sea{Swell: ride.System{Hs: 1, Tp: 12}, Depth: depth}, []int{2, 5}},
			{ride.Sea{Swell: ride.System{Hs: 0.8, Tp: 3.5, Off: 100}, Depth: depth}, []int{0, 1, 2, 3, 5}},
		} {
			h, err := ready.Hazards(c.sea, ride.StartingLimits())
			if err != nil {
				t.Fatal(err)
			}
			for _, i := range c.none {
				if h[i].Measure != 0 || h[i].Raised {
					t.Errorf("%+v: %+v", c.sea, h[i])
				}
			}
		}
	}
}

// TestHeightIsKept: whatever the peak enhancement, all of the waves of a system have its height, a swell without its high
// frequencies too.
func TestHeightIsKept(t *testing.T) {
	ready := someReady()[0]
	for _, gamma := range []float64{0, 1, 1.1, 1.3, 2.7, 5.6, 8, 9.6, 9.9, 10} {
		for i, s := range []ride.Sea{
			{WindSea: ride.System{Hs: 0.3, Tp: 3, Gamma: gamma}, Wind: 12, Depth: 0.9},
			{Swell: ride.System{Hs: 0.3, Tp: 3, Gamma: gamma}, Wind: 12, Depth: 0.9},
		} {
			r, err := ready.Sea(s)
			if err != nil {
				t.Fatal(err)
			}
			if r.LongestPeriod < 29.99 {
				t.Fatalf("not all held: %+v", r)
			}
			near(t, "height", r.RideableHs/0.3, 1, 4e-5)
			near(t, "part", r.EnergyShare, 1, 8e-5)
			if !(r.EnergyShare <= 1) {
				t.Errorf("system %d, gamma %v: a part of %v", i, gamma, r.EnergyShare)
			}
		}
	}
}

// TestTies: a crossing system as steep as the limit counts; of two systems of one period the wind sea leads; without a push
// there is nothing of the pendulum.
func TestTies(t *testing.T) {
	ready := someReady()[0]
	sea := ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 4}, Swell: ride.System{Hs: 0.8, Tp: 3.5, Off: 80}, Wind: 8, Depth: deep}
	limits := ride.StartingLimits()
	crossing := func() float64 {
		t.Helper()
		h, err := ready.Hazards(sea, limits)
		if err != nil {
			t.Fatal(err)
		}
		limits.CrossingSteepness = h[4].Measure // the steepest system of this sea is the one that crosses
		return h[5].Measure
	}
	crossing()
	if got, want := crossing(), 0.8*0.8/(0.8*0.8+0.6*0.6); !(math.Abs(got-want) <= 1e-12) {
		t.Errorf("as steep as the limit: %v, want %v", got, want)
	}
	limits.CrossingSteepness = math.Nextafter(limits.CrossingSteepness, 1)
	if got := crossing(); got != 0 {
		t.Errorf("less steep than the limit: %v", got)
	}

	r, err := ready.Sea(ride.Sea{WindSea: ride.System{Hs: 0.6, Tp: 3.5}, Swell: ride.System{Hs: 0.9, Tp: 3.5}, Wind: 8, Depth: deep})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "share of the waves of the wind sea", r.DominantShare, math.Exp(-2*math.Pow(r.DominantCatch/0.6, 2)), 1e-12)

	a, err := ready.Bump(ride.Bump{Height: 0, Period: 3, Depth: deep})
	if err != nil {
		t.Fatal(err)
	}
	if a.Push != 0 || !math.IsNaN(a.Load) || !math.IsNaN(a.Damping) {
		t.Errorf("a wave without height: push %v, load %v, damping %v", a.Push, a.Load, a.Damping)
	}

	// A wave just high enough to hold carries the board on its steepest place, a quarter ahead of the crest.
	on := 0
	for period := 3.0; period < 4; period += 0.01 {
		b := ride.Bump{Height: 0.5, Period: period, Depth: deep}
		if a, err = ready.Bump(b); err != nil {
			t.Fatal(err)
		}
		b.Height = a.Hold
		if a, err = ready.Bump(b); err != nil {
			t.Fatal(err)
		}
		if a.Load == 1 {
			on++
			near(t, "Position", a.Position, 90, 1e-9)
			near(t, "TippingPoint", a.TippingPoint, 90, 1e-9)
		}
	}
	if on == 0 {
		t.Error("no bump holds just so")
	}

	// As fast as a sprint is not faster.
	tr, err := ride.Paddler{Cruise: 2, Sprint: 2}.Simulate(ride.Sea{Depth: deep}, ride.Run{Seconds: 5})
	if err != nil || tr.Peak != 2 || tr.RidingShare != 0 || tr.RidingSpeed != 0 || tr.Catches != 0 {
		t.Errorf("%+v, %v", tr, err)
	}
}
