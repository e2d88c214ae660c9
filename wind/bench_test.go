package wind_test

import (
	"bytes"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/wind"
)

var sink float64

// BenchmarkExp is the yardstick of this machine.
func BenchmarkExp(b *testing.B) {
	x := 0.0
	for b.Loop() {
		x += 1e-9
		sink = math.Exp(x)
	}
}

func BenchmarkVelocityAndBack(b *testing.B) {
	b.ReportAllocs()
	w := wind.Wind{Speed: 8, From: 200}
	for b.Loop() {
		w.From += 1e-9
		sink = w.Velocity().Wind().From
	}
}

func BenchmarkRelative(b *testing.B) {
	b.ReportAllocs()
	w := wind.Wind{Speed: 8, From: 200}
	for b.Loop() {
		w.From += 1e-9
		sink = w.Relative(wind.Velocity{East: 1, North: 0.5}).Speed
	}
}

func BenchmarkToHeight(b *testing.B) {
	b.ReportAllocs()
	u := 8.0
	for b.Loop() {
		u += 1e-9
		sink = wind.ToHeight(u, 5, 10, wind.LargePond1981).Speed
	}
}

func BenchmarkSmith1988ToHeight(b *testing.B) {
	b.ReportAllocs()
	c := wind.Smith1988(15)
	u := 8.0
	for b.Loop() {
		u += 1e-9
		sink = c.ToHeight(u, 5, 10).Speed
	}
}

// year makes a ten-minute record of a year.
func year(b testing.TB) wind.Series {
	var in []wind.Sample
	for i := range 6 * 24 * 365 {
		w := wind.Wind{Speed: 8 + 6*math.Sin(float64(i)/200), From: math.Mod(float64(i)/7, 360)}
		in = append(in, wind.Sample{Time: day.Add(time.Duration(i) * 10 * time.Minute), Wind: w})
	}
	s, err := wind.NewSeries(in, 0)
	if err != nil {
		b.Fatal(err)
	}
	return s
}

func BenchmarkSeriesAt(b *testing.B) {
	s := year(b)
	b.ReportAllocs()
	at := day
	for b.Loop() {
		at = at.Add(7*time.Minute + time.Second)
		if at.After(s.End()) {
			at = day
		}
		x, err := s.At(at)
		if err != nil {
			b.Fatal(err)
		}
		sink = x.Speed
	}
}

func BenchmarkSeriesOnsetAYearBack(b *testing.B) {
	s := year(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := s.Onset(day.Add(360*24*time.Hour), 2); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkReadSeriesYear(b *testing.B) {
	var buf bytes.Buffer
	if err := wind.WriteSeries(&buf, year(b)); err != nil {
		b.Fatal(err)
	}
	text := buf.String()
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := wind.ReadSeries(strings.NewReader(text), 0); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkReadBuoyYear(b *testing.B) {
	var rows []wind.BuoyRow
	nan := math.NaN()
	for _, x := range year(b).Samples() {
		rows = append(rows, wind.BuoyRow{Time: x.Time, Wind: x.Wind, HasWind: true, Hs: 1.2, Tp: 6, Tavg: 4.5, MeanFrom: 200, Pressure: nan, Visibility: nan, Tide: nan})
	}
	var buf bytes.Buffer
	if err := wind.WriteBuoy(&buf, wind.BuoyRecord{Rows: rows}); err != nil {
		b.Fatal(err)
	}
	text := buf.String()
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := wind.ReadBuoy(strings.NewReader(text)); err != nil {
			b.Fatal(err)
		}
	}
}
