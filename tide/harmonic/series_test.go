package harmonic_test

import (
	"math"
	"testing"
	"time"

	"followingsea.example/tide/harmonic"
)

// TestSeriesAcrossNewYear: series with the nodes of the year are the single evaluations on both
// sides of a New Year, forwards and backwards, also where a sample lies on it.
func TestSeriesAcrossNewYear(t *testing.T) {
	td := predictor(t, "8410140", harmonic.ByYear)
	newYear := utc("2027-01-01 00:00")
	for _, step := range []time.Duration{time.Nanosecond, 6 * time.Minute, 6*time.Minute + 1, 400 * time.Hour, 9000 * time.Hour} {
		for _, off := range []time.Duration{0, 1, step / 2, step - 1, 3 * step} {
			for _, sign := range []time.Duration{1, -1} {
				h, r := make([]float64, 9), make([]float64, 9)
				from := newYear.Add(-sign * off)
				td.Heights(h, from, sign*step)
				td.Rates(r, from, sign*step)
				for i := range h {
					at := from.Add(time.Duration(i) * sign * step)
					near(t, step.String()+" "+at.String(), h[i], td.Height(at), 1e-9)
					near(t, step.String()+" rate "+at.String(), r[i], td.Rate(at), 1e-12)
				}
			}
		}
	}
}

// TestLargestTide: where the amplitudes are the largest that are accepted, heights and
// rates are still the formula, with the nanoseconds of the instant, and rates its slope.
func TestLargestTide(t *testing.T) {
	s := harmonic.Station{Z0: -100, Constituents: []harmonic.Constituent{
		{Name: "M2", Amplitude: 25, Lag: 720}, {Name: "O1", Amplitude: 25, Lag: -360}, {Name: "M12", Amplitude: 25}, {Name: "MF", Amplitude: 25, Lag: 40}, {Name: "L2", Amplitude: 2, Lag: 40}, {Name: "M1", Amplitude: 2, Lag: 200}}}
	for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
		td, err := harmonic.New(s, n)
		if err != nil {
			t.Fatal(err)
		}
		h, r := make([]float64, 300), make([]float64, 300)
		for _, step := range []time.Duration{time.Minute, 6 * time.Minute, 5*time.Hour + 700*time.Millisecond} {
			from := utc("2026-05-01 00:00").Add(900 * time.Millisecond)
			td.Heights(h, from, step)
			td.Rates(r, from, step)
			for i := range h {
				at := from.Add(time.Duration(i) * step)
				near(t, n.String(), td.Height(at), plain(s, n, at), 2e-9)
				near(t, n.String()+" series", h[i], td.Height(at), 2e-9)
				near(t, n.String()+" rates", r[i], td.Rate(at), 1e-11)
				slope := (plain(s, n, at.Add(2*time.Second)) - plain(s, n, at.Add(-2*time.Second))) / 4
				near(t, n.String()+" slope", td.Rate(at), slope, 3e-8)
			}
		}
	}
}

// TestSlowFactorsHaveASlope: a long tide's rate has the motion of the node in it. MM has
// V = s - p and the factor (2/3 - sin² I)/0.5021 alone, so that with a lag that makes V - g a right
// angle the rate is that of the angle, and with none, that of the factor.
func TestSlowFactorsHaveASlope(t *testing.T) {
	at := utc("2026-05-01 00:00")
	l := harmonic.LongitudesAt(at, harmonic.Modern)
	f := func(d time.Duration) float64 {
		v, _ := harmonic.LongitudesAt(at.Add(d), harmonic.Modern).Node("MM")
		return v
	}
	const day = 24 * time.Hour
	slope := (f(day) - f(-day)) / (2 * 86400)
	for lag, want := range map[float64]float64{0: slope, 90: f(0) * (moonRate() - perigeeRate()) * rad} {
		td, err := harmonic.New(harmonic.Station{Constituents: []harmonic.Constituent{{Name: "MM", Amplitude: 1, Lag: l.Argument("MM") - lag}}}, harmonic.AtInstant)
		if err != nil {
			t.Fatal(err)
		}
		if lag == 90 {
			want = -want // cos falls where its angle is a right one
		}
		near(t, "rate per second", td.Rate(at)*1e6, want*1e6, 1e-7)
	}
}

// Degrees a second of moon and perigee, [Meeus1998] ch. 47.
func moonRate() float64    { return 481267.88123421 / (36525 * 86400) }
func perigeeRate() float64 { return 4069.0137287 / (36525 * 86400) }

// TestCurveOfTenYears: the longest span is accepted, a nanosecond more is not; values and rates stand
// to the end of it, and between the samples they are the sum's.
func TestCurveOfTenYears(t *testing.T) {
	td, err := harmonic.New(harmonic.Station{Constituents: []harmonic.Constituent{{Name: "S2", Amplitude: 1}}}, harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	from := utc("2026-01-01 00:00")
	to := from.Add(10 * 366 * 24 * time.Hour)
	if _, err := td.Curve(from, to.Add(1)); err == nil {
		t.Error("a nanosecond more than ten years")
	}
	c, err := td.Curve(from, to)
	if err != nil {
		t.Fatal(err)
	}
	// S2 has its high water at noon and midnight, falls to none in three hours.
	for d, want := range map[time.Duration]float64{0: 1, -3 * time.Hour: 0, -6 * time.Hour: -1, -time.Hour: math.Cos(30 * rad)} {
		near(t, "height", c.Height(to.Add(d)), want, 1e-7)
	}
	near(t, "steepest", c.Rate(to.Add(-3*time.Hour)), 30*rad/3600, 1e-9)
	if _, err := td.Curve(from, from.Add(1)); err != nil {
		t.Error("a nanosecond:", err)
	}
}

// TestEndOfACurve: a curve has its values up to the very end of its span, wherever between two samples that is, and after months, where
// a nanosecond is below the last digit of the seconds.
func TestEndOfACurve(t *testing.T) {
	td, err := harmonic.New(harmonic.Station{Constituents: []harmonic.Constituent{{Name: "S2", Amplitude: 1}}}, harmonic.Without)
	if err != nil {
		t.Fatal(err)
	}
	from := utc("2026-01-01 00:00")
	for _, span := range []time.Duration{1, 6 * time.Minute, 6*time.Minute - 1, 24*time.Hour - 1, 24*time.Hour + 1, 300*24*time.Hour - 1, 300 * 24 * time.Hour} {
		c, err := td.Curve(from, from.Add(span))
		if err != nil {
			t.Fatal(err)
		}
		near(t, span.String(), c.Height(from.Add(span)), math.Cos(30*rad*math.Mod(span.Hours(), 12)), 1e-7)
		near(t, span.String()+" rate", c.Rate(from.Add(span)), -30*rad/3600*math.Sin(30*rad*math.Mod(span.Hours(), 12)), 1e-8)
	}
}

// TestLittleTide: a tide of a millimetre is in the series to 1e-9 m and its rate to 1e-12 m/s, the motion of its node with it, over
// the whole of a block.
func TestLittleTide(t *testing.T) {
	for _, amplitude := range []float64{1e-4, 3e-4, 1e-3, 3e-3} {
		for _, name := range []string{"M2", "O1", "M4"} {
			td, err := harmonic.New(harmonic.Station{Constituents: []harmonic.Constituent{{Name: name, Amplitude: amplitude, Lag: 50}}}, harmonic.AtInstant)
			if err != nil {
				t.Fatal(err)
			}
			h, r := make([]float64, 500), make([]float64, 500)
			from := utc("2026-05-01 00:00")
			td.Heights(h, from, 6*time.Minute)
			td.Rates(r, from, 6*time.Minute)
			for i := range h {
				at := from.Add(time.Duration(i) * 6 * time.Minute)
				near(t, name, h[i], td.Height(at), 1e-9)
				near(t, name+" rate", r[i], td.Rate(at), 1e-12)
			}
		}
	}
}

// TestSmallTide: many constituents of tenths of a millimetre and less, whose slow parts are small one by one, are in
// the series to 1e-9 m all the same.
func TestSmallTide(t *testing.T) {
	seen := map[float64]bool{}
	var names []string
	for _, n := range harmonic.Names() {
		if v := harmonic.Speed(n); !seen[v] {
			seen[v] = true
			names = append(names, n)
		}
	}
	for _, amplitude := range []float64{1e-6, 1e-5, 4e-5, 1e-4, 1e-3} {
		var s harmonic.Station
		for i, n := range names {
			s.Constituents = append(s.Constituents, harmonic.Constituent{Name: n, Amplitude: amplitude, Lag: float64(i * i % 360)})
		}
		td, err := harmonic.New(s, harmonic.AtInstant)
		if err != nil {
			t.Fatal(err)
		}
		h := make([]float64, 482)
		for _, step := range []time.Duration{6 * time.Minute, 30 * time.Second} {
			from := utc("2026-05-01 00:00")
			td.Heights(h, from, step)
			for i := range h {
				if i%30 < 2 || i%241 > 230 {
					near(t, step.String(), h[i], td.Height(from.Add(time.Duration(i)*step)), 1e-9)
				}
			}
		}
	}
}
