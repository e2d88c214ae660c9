package passage

import (
	"bytes"
	"errors"
	"io"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/route"
)

// TestTrackReadsBack: the planned track goes through GPX and GeoJSON and comes
// back to the last printed digit, and its times are those of the appraisal.
func TestTrackReadsBack(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	track, err := w.Track(at(0.5), 0)
	if err != nil {
		t.Fatal(err)
	}
	a := appraise(t, w, 0.5)
	first, last := track.Fixes[0], track.Fixes[len(track.Fixes)-1]
	if !first.Time.Equal(a.Depart) || !near(last.Time.Sub(a.Arrival).Seconds(), 0, 0.5) {
		t.Errorf("%v to %v; the appraisal has %v to %v", first.Time, last.Time, a.Depart, a.Arrival)
	}
	if len(track.Fixes) != 11 || !track.Planned || track.Name != "eastward" {
		t.Errorf("%d fixes, %+v", len(track.Fixes), track)
	}
	if d := route.Inverse(last.Point, eastward(t).Points[1]).Distance; !near(d, 0, 0.1) {
		t.Errorf("the track ends %v m from the finish", d)
	}
	for name, format := range map[string]struct {
		write func(io.Writer, []route.Track) error
		read  func(io.Reader) ([]route.Track, error)
	}{"GPX": {route.WriteTracksGPX, route.ReadTracksGPX}, "GeoJSON": {route.WriteTracks, route.ReadTracks}} {
		var b bytes.Buffer
		if err := format.write(&b, []route.Track{track}); err != nil {
			t.Fatal(name, err)
		}
		got, err := format.read(&b)
		if err != nil {
			t.Fatal(name, err)
		}
		if d := cmp.Diff([]route.Track{track}, got); d != "" {
			t.Error(name, d)
		}
	}
}

// TestTrackOfAPassageThatEnds goes as far as the passage does, and one that
// goes nowhere is an error.
func TestTrackOfAPassageThatEnds(t *testing.T) {
	day := fairDay(t, steadyWind(t, 9, 270))
	short, err := steadyWind(t, 9, 270).Between(at(-48), at(1.5))
	if err != nil {
		t.Fatal(err)
	}
	day.Wind[0].Series = short
	w := prepare(t, eastward(t), day, coach())
	track, err := w.Track(at(1), 500)
	if err != nil {
		t.Fatal(err)
	}
	a := appraise(t, w, 1)
	gone := route.Inverse(track.Fixes[0].Point, track.Fixes[len(track.Fixes)-1].Point).Distance
	if a.Arrives || !near(gone, a.EndsAt, 1) {
		t.Errorf("the track is %v m long, the passage ends at %v", gone, a.EndsAt)
	}
	day.Streams = nil
	w = prepare(t, eastward(t), day, coach())
	for _, every := range []float64{0, 500, math.NaN(), -1, math.Inf(1)} {
		if _, err := w.Track(at(0), every); !errors.Is(err, ErrInput) {
			t.Errorf("every %v: %v", every, err)
		}
	}
	if _, err := w.Track(at(-3), 0); !errors.Is(err, ErrInput) {
		t.Errorf("departure: %v", err)
	}
}
