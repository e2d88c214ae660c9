package tide_test

import (
	"testing"
	"time"

	"followingsea.example/tide"
)

// yearTable is a table of a year's turns, 1410 of them.
func yearTable(b *testing.B) *tide.Table {
	var turns []tide.Turn
	at := utc("2026-01-01 00:00")
	for i := 0; i < 1410; i++ {
		u := tide.Turn{Time: at, Height: 1, High: i%2 == 0}
		if u.High {
			u.Height = 5
		}
		turns = append(turns, u)
		at = at.Add(6*time.Hour + 12*time.Minute + 37*time.Second)
	}
	t, err := tide.NewTable(turns, tide.Options{})
	if err != nil {
		b.Fatal(err)
	}
	return t
}

func BenchmarkTableHeight(b *testing.B) {
	t := yearTable(b)
	at := utc("2026-07-01 03:17")
	b.ReportAllocs()
	for b.Loop() {
		t.Height(at)
	}
}

func BenchmarkTableWindows(b *testing.B) {
	t := yearTable(b)
	from, to := utc("2026-07-01 00:00"), utc("2026-07-02 00:00")
	for b.Loop() {
		if _, err := t.Windows(tide.Bar{Need: 2.5}, from, to); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkClockStreamsVelocity(b *testing.B) {
	var rows []tide.StreamSample
	at := utc("2026-01-01 00:00")
	for i := 0; i < 8760; i++ {
		rows = append(rows, tide.StreamSample{Time: at.Add(time.Duration(i) * time.Hour), Stream: tide.Setting(float64(i%7)/3, float64(i*30%360))})
	}
	c, err := tide.NewClockStreams(rows, 0)
	if err != nil {
		b.Fatal(err)
	}
	at = utc("2026-07-01 03:17")
	b.ReportAllocs()
	for b.Loop() {
		c.Velocity(at)
	}
}
