// Package clock is the one place where seconds as a number become a span or
// an instant of clock time. A float64 can be NaN, a time.Duration and a
// time.Time cannot: converting NaN gives an arbitrary number that differs
// between machines, so every such conversion goes through here.
package clock

import (
	"errors"
	"fmt"
	"math"
	"time"
)

// ErrSpan is returned for seconds that no span of clock time can hold.
var ErrSpan = errors.New("not a span of time")

// longest is the largest span accepted: a hundred years, well inside what a
// time.Duration holds, and beyond any use this library has.
const longest = 100 * 365.25 * 86400

// Span returns seconds as a time.Duration, rounded to the nanosecond.
// NaN, infinities and spans beyond a hundred years are ErrSpan.
func Span(seconds float64) (time.Duration, error) {
	if !(math.Abs(seconds) <= longest) {
		return 0, fmt.Errorf("%w: %v s", ErrSpan, seconds)
	}
	return time.Duration(math.Round(seconds * 1e9)), nil
}

// After returns the instant seconds after t, with the errors of Span.
func After(t time.Time, seconds float64) (time.Time, error) {
	d, err := Span(seconds)
	if err != nil {
		return time.Time{}, err
	}
	return t.Add(d), nil
}

// Seconds returns the seconds from a to b as a number, negative if b is the
// earlier. It does not saturate where a time.Duration would.
func Seconds(a, b time.Time) float64 {
	return float64(b.Unix()-a.Unix()) + float64(b.Nanosecond()-a.Nanosecond())*1e-9
}
