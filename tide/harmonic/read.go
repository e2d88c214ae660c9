package harmonic

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"

	"followingsea.example/tide"
)

// A station travels as JSON:
//
//	{
//	  "station": "Boston", "id": "8443970", "datum": "MLLW", "z0_m": 1.586,
//	  "attribution": "NOAA CO-OPS",
//	  "constituents": [
//	    {"name": "M2", "amplitude_m": 1.371, "lag_deg": 109.2}
//	  ],
//	  "stream": {
//	    "flood_deg": 31.2, "ebb_deg": 211.2, "mean_m_s": -0.19,
//	    "constituents": [{"name": "M2", "rate_m_s": 0.83, "lag_deg": 312}]
//	  }
//	}
//
// Lags are Greenwich phase lags. station, datum, z0_m and constituents are
// needed unless there is a stream; the rest is optional. A field that is none
// of these is an error, so that a misspelt one is not lost in silence.

// The bounds of a file: a station with every constituent known is some 10 kB.
const (
	maxFile         = 4 << 20
	maxConstituents = 1000
)

type stationFile struct {
	Station      string            `json:"station"`
	ID           string            `json:"id,omitempty"`
	Attribution  string            `json:"attribution,omitempty"`
	Datum        string            `json:"datum,omitempty"`
	Z0           *float64          `json:"z0_m,omitempty"`
	Constituents []constituentFile `json:"constituents,omitempty"`
	Stream       *streamFile       `json:"stream,omitempty"`
}

type constituentFile struct {
	Name      string   `json:"name"`
	Amplitude *float64 `json:"amplitude_m"`
	Lag       *float64 `json:"lag_deg"`
}

type streamFile struct {
	Flood        *float64   `json:"flood_deg"`
	Ebb          *float64   `json:"ebb_deg"`
	Mean         float64    `json:"mean_m_s"`
	Constituents []rateFile `json:"constituents"`
}

type rateFile struct {
	Name string   `json:"name"`
	Rate *float64 `json:"rate_m_s"`
	Lag  *float64 `json:"lag_deg"`
}

// ReadStation reads a station's constants from JSON:
//
//	{"station": "Boston", "datum": "MLLW", "z0_m": 1.586,
//	 "constituents": [{"name": "M2", "amplitude_m": 1.371, "lag_deg": 109.2}],
//	 "stream": {"flood_deg": 31.2, "ebb_deg": 211.2, "mean_m_s": -0.19,
//	            "constituents": [{"name": "M2", "rate_m_s": 0.83, "lag_deg": 312}]}}
//
// Heights need station, datum, z0_m and constituents; id, attribution and stream
// are optional; a station may have a stream alone. Errors are ErrFile with the line
// where the JSON is wrong, or ErrConstituent and ErrStation naming the constituent
// and field. At most 4 MB and 1000 constituents are read.
func ReadStation(r io.Reader) (Station, error) {
	raw, err := io.ReadAll(io.LimitReader(r, maxFile+1))
	if err != nil {
		return Station{}, fmt.Errorf("%w: %w", ErrFile, err)
	}
	if len(raw) > maxFile {
		return Station{}, fmt.Errorf("%w: larger than 4 MB", ErrFile)
	}
	raw = bytes.TrimPrefix(raw, []byte("\xef\xbb\xbf"))
	d := json.NewDecoder(bytes.NewReader(raw))
	d.DisallowUnknownFields()
	var f stationFile
	if err := d.Decode(&f); err != nil {
		return Station{}, fmt.Errorf("%w: line %d: %w", ErrFile, lineOf(raw, d, err), err)
	}
	if _, err := d.Token(); !errors.Is(err, io.EOF) {
		return Station{}, fmt.Errorf("%w: line %d: more after the station", ErrFile, lineOf(raw, d, nil))
	}
	s := Station{ID: f.ID, Name: f.Station, Attribution: f.Attribution, Datum: tide.Datum(f.Datum)}
	if f.Z0 != nil {
		s.Z0 = *f.Z0
	}
	if len(f.Constituents) > maxConstituents || f.Stream != nil && len(f.Stream.Constituents) > maxConstituents {
		return Station{}, fmt.Errorf("%w: more than %d constituents", ErrFile, maxConstituents)
	}
	for i, c := range f.Constituents {
		if c.Amplitude == nil || c.Lag == nil {
			return Station{}, fmt.Errorf("%w: %w: constituent %d, %q: want amplitude_m and lag_deg", ErrFile, ErrConstituent, i+1, clip(c.Name))
		}
		s.Constituents = append(s.Constituents, Constituent{c.Name, *c.Amplitude, *c.Lag})
	}
	if f.Stream != nil {
		if f.Stream.Flood == nil || f.Stream.Ebb == nil {
			return Station{}, fmt.Errorf("%w: %w: stream: want flood_deg and ebb_deg", ErrFile, ErrStation)
		}
		a := &Axis{Flood: *f.Stream.Flood, Ebb: *f.Stream.Ebb, Mean: f.Stream.Mean}
		for i, c := range f.Stream.Constituents {
			if c.Rate == nil || c.Lag == nil {
				return Station{}, fmt.Errorf("%w: %w: stream: constituent %d, %q: want rate_m_s and lag_deg", ErrFile, ErrConstituent, i+1, clip(c.Name))
			}
			a.Constituents = append(a.Constituents, Constituent{c.Name, *c.Rate, *c.Lag})
		}
		s.Stream = a
	}
	if err := s.check(f.Z0 != nil); err != nil {
		return Station{}, fmt.Errorf("%w: %w", ErrFile, err)
	}
	return s, nil
}

// check reports what keeps a station from being predicted.
func (s Station) check(hasZ0 bool) error {
	if s.Stream != nil {
		if _, err := NewStream(*s.Stream, AtInstant); err != nil {
			return fmt.Errorf("stream: %w", err)
		}
		if len(s.Constituents) == 0 {
			return nil
		}
	}
	switch {
	case s.Name == "":
		return fmt.Errorf("%w: want station, its name", ErrStation)
	case s.Datum == tide.UnknownDatum:
		return fmt.Errorf("%w: want datum, what z0_m is above", ErrStation)
	case !hasZ0:
		return fmt.Errorf("%w: want z0_m, the mean level above the datum", ErrStation)
	}
	_, err := New(s, AtInstant)
	return err
}

// lineOf finds the line of an error, or of where the decoder stands.
func lineOf(raw []byte, d *json.Decoder, err error) int {
	at := d.InputOffset()
	var syntax *json.SyntaxError
	var typed *json.UnmarshalTypeError
	if errors.As(err, &syntax) {
		at = syntax.Offset
	} else if errors.As(err, &typed) {
		at = typed.Offset
	}
	at = min(max(at, 0), int64(len(raw)))
	return 1 + bytes.Count(raw[:at], []byte("\n"))
}

func clip(s string) string {
	if len(s) > 40 {
		return s[:40] + "..."
	}
	return s
}

// WriteStation writes the station as ReadStation reads it. ErrStation or
// ErrConstituent when it could not be read back.
func WriteStation(w io.Writer, s Station) error {
	if err := s.check(true); err != nil {
		return err
	}
	f := stationFile{Station: s.Name, ID: s.ID, Attribution: s.Attribution, Datum: string(s.Datum)}
	if len(s.Constituents) > 0 {
		f.Z0 = &s.Z0
	}
	for i := range s.Constituents {
		c := &s.Constituents[i]
		f.Constituents = append(f.Constituents, constituentFile{c.Name, &c.Amplitude, &c.Lag})
	}
	if a := s.Stream; a != nil {
		f.Stream = &streamFile{Flood: &a.Flood, Ebb: &a.Ebb, Mean: a.Mean}
		for i := range a.Constituents {
			c := &a.Constituents[i]
			f.Stream.Constituents = append(f.Stream.Constituents, rateFile{c.Name, &c.Amplitude, &c.Lag})
		}
	}
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	e.SetEscapeHTML(false)
	return e.Encode(f)
}
