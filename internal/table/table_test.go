package table

import (
	"errors"
	"io"
	"runtime"
	"strings"
	"testing"
	"time"
)

var columns = []Column{
	{Name: "time", Quantity: Time, Required: true},
	{Name: "wind_speed", Quantity: Speed, Required: true, Lo: 0, Hi: 70},
	{Name: "wind_from", Quantity: Angle, Lo: 0, Hi: 360},
	{Name: "air", Quantity: Temperature},
}

// readAll reads a whole table and returns the first error.
func readAll(r io.Reader) (speeds []float64, times []time.Time, err error) {
	t, err := NewReader(r, columns)
	if err != nil {
		return nil, nil, err
	}
	for {
		if err := t.Next(); err == io.EOF {
			return speeds, times, nil
		} else if err != nil {
			return nil, nil, err
		}
		at, err := t.Instant(0)
		if err != nil {
			return nil, nil, err
		}
		v, err := t.Need(1)
		if err != nil {
			return nil, nil, err
		}
		if _, _, err := t.Number(2); err != nil {
			return nil, nil, err
		}
		if _, _, err := t.Number(3); err != nil {
			return nil, nil, err
		}
		speeds, times = append(speeds, v), append(times, at)
	}
}

func TestReadUnitsAndZones(t *testing.T) {
	in := "\xef\xbb\xbf# a comment\r\nTime,wind_speed_kn,note of mine,air_f\r\n2026-06-21T08:00:00+02:00,10,\"a, b\",50\r\n2026-06-21 06:30z,0,,\r\n"
	speeds, times, err := readAll(strings.NewReader(in))
	if err != nil {
		t.Fatal(err)
	}
	if len(speeds) != 2 || speeds[0] != 10*1852.0/3600 || speeds[1] != 0 {
		t.Errorf("speeds %v", speeds)
	}
	if want := time.Date(2026, 6, 21, 6, 0, 0, 0, time.UTC); !times[0].Equal(want) {
		t.Errorf("time %v, want %v", times[0], want)
	}
}

func TestErrorsNameLineColumnAndValue(t *testing.T) {
	for _, c := range []struct {
		name, in string
		kind     error
		text     []string
	}{
		{"empty", "", ErrEmpty, []string{"header"}},
		{"only a header is no error", "time,wind_speed_kn\n", nil, nil},
		{"missing column", "time,wind_from_deg\n", ErrHeader, []string{"line 1", "wind_speed"}},
		{"unknown column", "time,wind_speed_kn,gusts\n", ErrHeader, []string{"gusts"}},
		{"unknown unit", "time,wind_speed_furlongs\n", ErrUnit, []string{"furlongs", "m_s", "kn"}},
		{"no unit", "time,wind_speed\n", ErrUnit, []string{"wind_speed"}},
		{"twice", "time,wind_speed_kn,wind_speed_m_s\n", ErrHeader, []string{"only once"}},
		{"no zone", "time,wind_speed_kn\n2026-06-21T06:00:00,3\n", ErrZone, []string{"line 2", "zone"}},
		{"zone unknown", "time,wind_speed_kn\n2026-06-21T06:00:00-00:00,3\n", ErrZone, []string{"line 2"}},
		{"not a time", "time,wind_speed_kn\nnoon,3\n", ErrTime, []string{"line 2", "noon"}},
		{"nan", "time,wind_speed_kn\n2026-06-21T06:00:00Z,NaN\n", ErrValue, []string{"line 2", "NaN"}},
		{"inf", "time,wind_speed_kn\n2026-06-21T06:00:00Z,+Inf\n", ErrValue, []string{"Inf"}},
		{"hex", "time,wind_speed_kn\n2026-06-21T06:00:00Z,0x10p0\n", ErrValue, nil},
		{"negative", "time,wind_speed_kn\n2026-06-21T06:00:00Z,-1\n", ErrRange, []string{"-1", "0 to 136.069"}},
		{"direction", "time,wind_speed_kn,wind_from_deg\n2026-06-21T06:00:00Z,1,400\n", ErrRange, []string{"line 2", "wind_from_deg", "400", "0 to 360"}},
		{"missing value", "time,wind_speed_kn\n2026-06-21T06:00:00Z,\n", ErrMissing, []string{"line 2"}},
		{"short row", "time,wind_speed_kn\n\n2026-06-21T06:00:00Z\n", ErrSyntax, []string{"line 3", "2 fields"}},
		{"open quote", "time,wind_speed_kn\n\"2026", ErrSyntax, []string{"line 2"}},
	} {
		_, _, err := readAll(strings.NewReader(c.in))
		if !errors.Is(err, c.kind) || (err == nil) != (c.kind == nil) {
			t.Errorf("%s: error %v, want kind %v", c.name, err, c.kind)
			continue
		}
		for _, s := range c.text {
			if !strings.Contains(err.Error(), s) {
				t.Errorf("%s: %q does not say %q", c.name, err, s)
			}
		}
	}
}

// endless yields the pattern for ever.
type endless struct {
	head string
	pat  string
	i    int
}

func (e *endless) Read(p []byte) (int, error) {
	for n := range p {
		if e.i < len(e.head) {
			p[n] = e.head[e.i]
		} else {
			p[n] = e.pat[(e.i-len(e.head))%len(e.pat)]
		}
		e.i++
	}
	return len(p), nil
}

func TestEndlessInputIsRefusedInBoundedMemory(t *testing.T) {
	for _, c := range []struct {
		endless
		kind error
	}{
		{endless{head: "time,wind_speed_kn\n", pat: "2026-06-21T06:00:00Z,3\n"}, ErrTooMany},
		{endless{head: "time,wind_speed_kn,note\n", pat: "2026-06-21T06:00:00Z,3," + strings.Repeat("n", 200) + "\n"}, ErrTooLarge},
		{endless{head: "time,wind_speed_kn\n", pat: "9"}, ErrLongRow},
		{endless{head: "time,wind_speed_kn\n\"", pat: "\n"}, ErrLongRow},
		{endless{pat: "a,"}, ErrLongRow},
	} {
		e := &c.endless
		tab, err := NewReader(e, columns)
		for err == nil {
			err = tab.Next()
		}
		if !errors.Is(err, c.kind) {
			t.Errorf("endless %q: %v", e.pat, err)
		}
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		if m.HeapSys > 256<<20 {
			t.Errorf("endless %q: heap of %d MB", e.pat, m.HeapSys>>20)
		}
	}
}

func TestWriterReadsBack(t *testing.T) {
	var b strings.Builder
	w := NewWriter(&b, "time", "wind_speed_m_s")
	at := time.Date(2026, 6, 21, 6, 0, 0, 0, time.FixedZone("", 7200))
	if err := w.Instant(at).Number(0.1).End(); err != nil {
		t.Fatal(err)
	}
	if err := w.Flush(); err != nil {
		t.Fatal(err)
	}
	speeds, times, err := readAll(strings.NewReader(b.String()))
	if err != nil || len(speeds) != 1 || speeds[0] != 0.1 || !times[0].Equal(at) {
		t.Errorf("read back %v %v %v", speeds, times, err)
	}
}

func FuzzReader(f *testing.F) {
	f.Add("time,wind_speed_kn\n2026-06-21T06:00:00Z,3\n")
	f.Add("time,wind_speed_kn,wind_from_deg\n2026-06-21T06:00:00,3,400\n")
	f.Add("\"")
	f.Fuzz(func(t *testing.T, in string) {
		speeds, times, err := readAll(strings.NewReader(in))
		if err != nil && (speeds != nil || times != nil) {
			t.Error("values beside an error")
		}
		for _, v := range speeds {
			if !(v >= 0 && v <= 70) {
				t.Errorf("speed %v", v)
			}
		}
	})
}
