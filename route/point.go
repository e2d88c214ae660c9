package route

import (
	"errors"
	"fmt"
	"math"
)

// ErrPosition is returned for a position that is not on the globe.
var ErrPosition = errors.New("route: not a position")

// Point is a position on the ellipsoid: geographic latitude and longitude in
// degrees, north and east positive. The fields are named wherever a Point is
// written, so that latitude and longitude cannot change places unseen.
//
// Any finite longitude is accepted, so a line may run from 179 to 181; results
// have their longitude in [-180, 180).
type Point struct {
	Lat float64 // degrees north, -90 to 90
	Lon float64 // degrees east
}

// Check returns nil for a position on the globe, and otherwise an error that
// wraps ErrPosition and names the field, its value and the allowed range.
func (p Point) Check() error {
	if !(p.Lat >= -90 && p.Lat <= 90) {
		return fmt.Errorf("%w: latitude %v is outside -90 to 90", ErrPosition, p.Lat)
	}
	if !(math.Abs(p.Lon) <= longestLon) {
		return fmt.Errorf("%w: longitude %v is outside -%v to %v", ErrPosition, p.Lon, longestLon, longestLon)
	}
	return nil
}

// longestLon bounds longitudes that were never wrapped: a full turn beyond
// the usual range in either direction.
const longestLon = 540

func (p Point) valid() bool {
	return p.Lat >= -90 && p.Lat <= 90 && math.Abs(p.Lon) <= longestLon
}

var nowhere = Point{math.NaN(), math.NaN()}

// wrapLon returns a longitude or a difference of longitudes in [-180, 180).
func wrapLon(lon float64) float64 {
	if lon >= -180 && lon < 180 {
		return lon
	}
	lon = math.Mod(lon, 360)
	if lon < -180 {
		lon += 360
	} else if lon >= 180 {
		lon -= 360
	}
	return lon
}
