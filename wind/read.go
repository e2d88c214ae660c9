package wind

import (
	"errors"
	"io"
	"time"

	"followingsea.example/internal/table"
)

// ErrRead is wrapped by every error of a reader of this package.
var ErrRead = errors.New("wind: cannot read")

// ReadError says what is wrong with what was read, and where. Its message
// begins with the line ("line 12: column wind_from_deg: ..."), so that the
// caller can put the name of the file in front.
type ReadError struct {
	Line   int    // 1 is the first; 0 when no line is to blame
	Column string // as in the header; empty when the line as a whole is wrong
	Err    error
}

// Error returns the message.
func (e *ReadError) Error() string { return e.Err.Error() }

// Unwrap returns ErrRead and the cause.
func (e *ReadError) Unwrap() []error { return []error{ErrRead, e.Err} }

// readError wraps an error of the table core or of the input.
func readError(err error) error {
	if err == nil {
		return nil
	}
	out := &ReadError{Err: err}
	var t *table.Error
	if errors.As(err, &t) {
		out.Line, out.Column = t.Line, t.Column
	}
	return out
}

// The columns of a wind table.
const (
	colTime = iota
	colSpeed
	colGust
	colFrom
	colAir
	colWater
)

var windColumns = []table.Column{
	{Name: "time", Quantity: table.Time, Required: true},
	{Name: "wind_speed", Quantity: table.Speed, Required: true, Lo: 0, Hi: StrongestMean},
	{Name: "wind_gust", Quantity: table.Speed, Lo: 0, Hi: Strongest},
	{Name: "wind_from", Quantity: table.Angle, Required: true, Lo: 0, Hi: 360},
	{Name: "air_temperature", Quantity: table.Temperature, Lo: -90, Hi: 60},
	{Name: "water_temperature", Quantity: table.Temperature, Lo: -5, Hi: 60},
}

// ReadSeries reads a wind record or forecast from comma-separated values
// (RFC 4180) with the columns, in any order,
//
//	time                  RFC 3339 with a zone, 2026-06-21T06:00:00Z
//	wind_speed_{m_s,kn,km_h,mph,ft_s}   mean at 10 m
//	wind_from_deg         direction it blows from, true, 0 to 360
//	wind_gust_{...}       optional
//	air_temperature_{c,f}, water_temperature_{c,f}   optional
//
// and any column that begins with "note". Rows are in order of time. Lines
// beginning with # are comments. An empty cell is a missing value: a row without
// a speed is skipped, which leaves a gap if it is long enough; a calm (speed 0)
// needs no direction. The gap is that of [NewSeries].
//
// At most 32 MB and 250,000 rows are read. Every error wraps ErrRead and is a [*ReadError] that
// names line, column, value and what was expected: a row that is not later than
// the one before, a gust below the mean and a wind without direction are errors
// too.
func ReadSeries(r io.Reader, gap time.Duration) (Series, error) {
	t, err := table.NewReader(r, windColumns)
	if err != nil {
		return Series{}, readError(err)
	}
	var samples []Sample
	for {
		err := t.Next()
		if err == io.EOF {
			break
		}
		if err != nil {
			return Series{}, readError(err)
		}
		x, ok, err := readSample(t)
		if err != nil {
			return Series{}, readError(err)
		}
		if !ok {
			continue
		}
		if n := len(samples); n > 0 && !samples[n-1].Time.Before(x.Time) {
			return Series{}, readError(t.Fail(colTime, table.ErrOrder, "times in order, each later than the one before"))
		}
		samples = append(samples, x)
	}
	s, err := NewSeries(samples, gap)
	if err != nil {
		return Series{}, readError(err)
	}
	return s, nil
}

func readSample(t *table.Reader) (Sample, bool, error) {
	at, err := t.Instant(colTime)
	if err != nil {
		return Sample{}, false, err
	}
	speed, ok, err := t.Number(colSpeed)
	if err != nil {
		return Sample{}, false, err
	}
	from, hasFrom, err := t.Number(colFrom)
	if err != nil {
		return Sample{}, false, err
	}
	gust, hasGust, err := t.Number(colGust)
	if err != nil {
		return Sample{}, false, err
	}
	x := Sample{Time: at.UTC()}
	if x.Air, err = readTemperature(t, colAir); err != nil {
		return Sample{}, false, err
	}
	if x.Water, err = readTemperature(t, colWater); err != nil {
		return Sample{}, false, err
	}
	if !ok {
		return Sample{}, false, nil
	}
	if speed > 0 && !hasFrom {
		return Sample{}, false, t.Fail(colFrom, table.ErrMissing, "a direction, for the wind blows")
	}
	x.Wind, err = New(speed, from)
	if err != nil {
		return Sample{}, false, t.Fail(colSpeed, err, "")
	}
	if hasGust {
		if gust < speed {
			return Sample{}, false, t.Fail(colGust, ErrGust, "the mean of the row or more, or nothing for an unknown gust")
		}
		x.Gust = gust
	}
	return x, true, nil
}

func readTemperature(t *table.Reader, col int) (Temperature, error) {
	c, ok, err := t.Number(col)
	if err != nil || !ok {
		return Temperature{}, err
	}
	return Celsius(c), nil
}

// WriteSeries writes the series as [ReadSeries] reads it, in metres a second,
// with times in UTC; columns that would be empty throughout are left out. What
// is read back has the same samples; the gap of the series is not written.
func WriteSeries(w io.Writer, s Series) error {
	var gust, air, water bool
	for _, x := range s.samples {
		gust = gust || x.GustKnown()
		air = air || x.Air.Known()
		water = water || x.Water.Known()
	}
	header := []string{"time", "wind_speed_m_s", "wind_from_deg"}
	if gust {
		header = append(header, "wind_gust_m_s")
	}
	if air {
		header = append(header, "air_temperature_c")
	}
	if water {
		header = append(header, "water_temperature_c")
	}
	out := table.NewWriter(w, header...)
	for _, x := range s.samples {
		out.Instant(x.Time.UTC()).Number(x.Speed).Number(x.tidy().From)
		if gust {
			out.Number(x.tidy().Gust)
		}
		if air {
			out.Number(x.Air.Celsius())
		}
		if water {
			out.Number(x.Water.Celsius())
		}
		if err := out.End(); err != nil {
			return err
		}
	}
	return out.Flush()
}
