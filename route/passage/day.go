package passage

import (
	"time"

	"followingsea.example/route"
	"followingsea.example/tide"
	"followingsea.example/wind"
)

// A Day is what the forecast, the tables and the paddler's own eyes say of the
// water and the air. Any part may be missing, and what depends on it is then
// unknown; nothing is guessed.
type Day struct {
	Wind    []Anemometer // wind records, each at its place; none: unknown
	Swell   SwellSource  // nil: unknown. NoSwell says that there is none
	Tide    HeightSource // nil: unknown
	Streams []StreamGauge
	Water   Value // temperature of the water, °C, where the wind record has none
	Air     Value // temperature of the air, °C, where the wind record has none
	Warning Warning
}

// An Anemometer is a wind record or forecast and the place it speaks for. The
// record nearest to a place counts there; the place of a single record does
// not matter.
type Anemometer struct {
	At     route.Point
	Series wind.Series
}

// A HeightSource gives the height of the tide above chart datum in metres at
// an instant, NaN where it does not know. A tide.Table is one.
type HeightSource interface {
	Height(at time.Time) float64
}

// A StreamSource gives the stream at an instant, NaN where it does not know.
// A tide.ClockStreams is one.
type StreamSource interface {
	Velocity(at time.Time) tide.Velocity
}

// A StreamGauge is a stream and the place it speaks for; as Anemometer.
type StreamGauge struct {
	At     route.Point
	Stream StreamSource
}

// A SwellSource gives the systems of swell at an instant, and an error where
// it does not know. wind.Swells is one.
type SwellSource interface {
	At(at time.Time) ([]wind.Swell, error)
}

// NoSwell is the swell of water that has none, which differs from swell that
// nobody gave.
type NoSwell struct{}

// At returns no systems.
func (NoSwell) At(time.Time) ([]wind.Swell, error) { return nil, nil }

// A Warning is the official warning in force, if any. Its zero value is that
// nobody said, which is unknown.
type Warning struct {
	given bool
	text  string
}

// NoWarningInForce says that an official forecast was read and no warning is in
// force.
func NoWarningInForce() Warning { return Warning{given: true} }

// WarningInForce says that a warning is in force, in the words of the
// forecast. An empty text is a warning all the same.
func WarningInForce(text string) Warning {
	if text == "" {
		text = "a warning"
	}
	return Warning{given: true, text: text}
}

// Get returns the warning's words, empty for none, and whether anything was
// said of it.
func (w Warning) Get() (text string, given bool) { return w.text, w.given }
