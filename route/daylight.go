package route

import (
	"errors"
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
)

// Altitudes of the centre of the Sun that define the events of a day, degrees.
const (
	// SunriseAltitude: the upper limb on a sea horizon, with 34' of refraction
	// and 16' of semidiameter.
	SunriseAltitude = -50.0 / 60
	// CivilAltitude: below it the horizon and hands are lost without a lamp.
	CivilAltitude = -6.0
	// NauticalAltitude: below it the sea horizon cannot be seen.
	NauticalAltitude = -12.0
	// AstronomicalAltitude: below it the sky is dark.
	AstronomicalAltitude = -18.0
)

// SunState says whether an event of the Sun happens on a day.
type SunState string

// The states. Where an event does not happen the Sun stays on one side of its
// altitude; it is never replaced by a made-up time.
const (
	Happens    SunState = "happens"
	StaysAbove SunState = "stays above"
	StaysBelow SunState = "stays below"
)

// SunEvent is one passage of the Sun through an altitude, or that there is
// none.
type SunEvent struct {
	State SunState
	Time  time.Time // set only if State is Happens
}

// Day holds the light of one day at one position. Dawns are the starts of
// twilight, dusks its ends.
type Day struct {
	AstronomicalDawn, NauticalDawn, CivilDawn, Sunrise SunEvent
	Transit                                            time.Time // the Sun highest
	Sunset, CivilDusk, NauticalDusk, AstronomicalDusk  SunEvent
}

// ErrDate is returned for a date for which the Sun cannot be reckoned.
var ErrDate = errors.New("route: not a date for which the Sun can be reckoned")

// Daylight returns the light of a day at a position: the events about the
// highest Sun of the calendar day that date falls on in its own time zone.
// Times are in that zone. Give the date in the zone of the place; a date in
// UTC far from Greenwich still gets one whole day, whose sunset may fall on
// the next UTC date.
//
// Each event is iterated to the Sun's position at the event. Against printed
// almanacs it is right to the minute, up to 4 seconds of the method; on
// grazing days near the polar circles, where the Sun runs along the horizon,
// minutes or a whole event may differ, and within 20 miles of a pole, where
// the Sun rises once a year, the states are those of the transit. The refraction of a real horizon varies
// by minutes too: keep 5 minutes in hand. Standing up changes nothing (the
// dip from 2 m is 0.04 degrees).
//
// Errors are ErrPosition, and ErrDate for years before -1900 or after 5900.
//
// Source: [Meeus1998] chapters 15 and 25; twilight as defined by [USNO-RiseSet].
func Daylight(p Point, date time.Time) (Day, error) {
	if err := p.Check(); err != nil {
		return Day{}, err
	}
	y, m, d := date.Date()
	if y < -1900 || y > 5900 {
		return Day{}, fmt.Errorf("%w: year %d is outside -1900 to 5900", ErrDate, y)
	}
	noon := time.Date(y, m, d, 12, 0, 0, 0, date.Location())
	s := sky{p: p, noon: julianDay(noon)}
	transit, ok := s.transit()
	if !ok {
		return Day{}, fmt.Errorf("%w: %v", ErrDate, date)
	}
	at := func(days float64) time.Time {
		t, err := clock.After(noon, days*86400)
		if err != nil {
			return time.Time{} // days are within two of noon, so this cannot be
		}
		return t
	}
	event := func(altitude, side float64) SunEvent {
		days, state := s.event(transit, altitude, side)
		if state != Happens {
			return SunEvent{State: state}
		}
		return SunEvent{Happens, at(days)}
	}
	return Day{
		AstronomicalDawn: event(AstronomicalAltitude, -1),
		NauticalDawn:     event(NauticalAltitude, -1),
		CivilDawn:        event(CivilAltitude, -1),
		Sunrise:          event(SunriseAltitude, -1),
		Transit:          at(transit),
		Sunset:           event(SunriseAltitude, 1),
		CivilDusk:        event(CivilAltitude, 1),
		NauticalDusk:     event(NauticalAltitude, 1),
		AstronomicalDusk: event(AstronomicalAltitude, 1),
	}, nil
}

// sky reckons in days from the noon of the calendar.
type sky struct {
	p    Point
	noon float64 // Julian day
}

// hour returns the hour angle in degrees, in [-180, 180), and the declination.
func (s sky) hour(days float64) (hour, dec float64) {
	sun := SunAtJulian(s.noon + days)
	_, day := math.Modf(s.noon + days + 0.5)
	return wrapLon((day-0.5)*360 + sun.Equation/240 + s.p.Lon), sun.Declination
}

// transit returns the highest Sun within half a day of the calendar's noon.
func (s sky) transit() (float64, bool) {
	t := 0.0
	h, _ := s.hour(0)
	t = -h / 360
	for range 4 {
		h, _ = s.hour(t)
		t -= h / 360
	}
	return t, math.Abs(t) <= 0.51
}

// above returns how far the Sun stands above an altitude, degrees.
func (s sky) above(days, altitude float64) float64 {
	h, dec := s.hour(days)
	a, _ := altitudeAt(s.p, dec, h)
	return a - altitude
}

// event returns when, on one side of the transit, the Sun passes an altitude.
func (s sky) event(transit, altitude, side float64) (float64, SunState) {
	lo, hi := transit, transit+side/2 // high Sun, low Sun
	if !(s.above(lo, altitude) > 0) {
		return 0, StaysBelow
	}
	if !(s.above(hi, altitude) < 0) {
		return 0, StaysAbove
	}
	if t, ok := s.settle(transit, altitude, side); ok {
		return t, Happens
	}
	for range 40 {
		mid := (lo + hi) / 2
		if s.above(mid, altitude) > 0 {
			lo = mid
		} else {
			hi = mid
		}
	}
	return (lo + hi) / 2, Happens
}

// settle goes from a guess to the hour angle of the altitude for the
// declination at the guess, and so on: the published iteration. It settles in
// a few passes except on grazing days.
func (s sky) settle(t, altitude, side float64) (float64, bool) {
	for range 8 {
		h, dec := s.hour(t)
		next := t + (side*SemiDiurnalArc(s.p.Lat, dec, altitude)-h)/360
		if math.Abs(next-t) < 1e-8 {
			return next, math.Abs(s.above(next, altitude)) < 1e-5
		}
		t = next
	}
	return t, false
}
