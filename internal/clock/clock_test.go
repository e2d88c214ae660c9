package clock

import (
	"errors"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"
)

func TestSpan(t *testing.T) {
	for s, want := range map[float64]time.Duration{0: 0, 1.5: 1500 * time.Millisecond, -60: -time.Minute, 1e-9: 1, 1.4e-9: 1, 1.6e-9: 2, -1.6e-9: -2,
		longest: time.Duration(longest) * time.Second, -longest: -time.Duration(longest) * time.Second} {
		if got, err := Span(s); err != nil || got != want {
			t.Errorf("Span(%v) = %v, %v, want %v", s, got, err, want)
		}
	}
	for _, s := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), math.Nextafter(longest, math.Inf(1)), -longest - 1, 1e300} {
		if got, err := Span(s); !errors.Is(err, ErrSpan) || got != 0 {
			t.Errorf("Span(%v) = %v, %v, want ErrSpan", s, got, err)
		}
	}
}

func TestAfter(t *testing.T) {
	noon := time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC)
	if got, err := After(noon, -90); err != nil || !got.Equal(noon.Add(-90*time.Second)) {
		t.Errorf("a minute and a half before noon: %v, %v", got, err)
	}
	for _, s := range []float64{math.NaN(), math.Inf(1), 2 * longest} {
		if got, err := After(noon, s); !errors.Is(err, ErrSpan) || !got.IsZero() {
			t.Errorf("After(noon, %v) = %v, %v, want ErrSpan", s, got, err)
		}
	}
}

func TestSecondsDoNotSaturate(t *testing.T) {
	a, b := time.Date(1, 1, 1, 0, 0, 0, 0, time.UTC), time.Date(2026, 1, 1, 0, 0, 0, 5e8, time.UTC)
	const want = 739616*86400 + 0.5 // days by the Gregorian calendar
	if got := Seconds(a, b); got != want || Seconds(b, a) != -want {
		t.Errorf("from year 1 to 2026: %v s and back %v, want %v", got, Seconds(b, a), want)
	}
}

// TestPropertyThereAndBack: after so many seconds, so many seconds have passed.
func TestPropertyThereAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := time.Unix(rapid.Int64Range(-1e9, 4e9).Draw(t, "unix"), rapid.Int64Range(0, 999999999).Draw(t, "ns"))
		s := rapid.Float64Range(-1e6, 1e6).Draw(t, "seconds")
		later, err := After(at, s)
		if err != nil {
			t.Fatal(err)
		}
		if got := Seconds(at, later); !(math.Abs(got-s) <= 1e-9) {
			t.Errorf("%v s after %v is %v s later", s, at, got)
		}
	})
}
