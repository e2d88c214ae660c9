package wind

import (
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"sort"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/internal/table"
)

// ErrSwell is a swell out of range.
var ErrSwell = errors.New("wind: swell out of range")

// Swell is one system of waves that has left its wind. It lives in this package because it comes in
// the same forecast as the wind, and because a swell is what another day's wind
// made; the physics of it is in package wave.
type Swell struct {
	Hs   float64 // significant height of the system, m; zero: no such swell
	Tp   float64 // peak period, s; NaN where there is no swell
	From float64 // direction it comes from, degrees true; NaN where there is no swell
}

// Ranges of what is accepted from outside data.
const (
	HighestSwell  = 25 // m
	ShortestSwell = 1  // s
	LongestSwell  = 40 // s
)

// NewSwell returns the swell of the given significant height in m, peak period
// in s and direction it comes from in degrees true. A height of zero is no
// swell and drops the other two.
//
// The error is ErrSwell for a height outside 0 to [HighestSwell], a period
// outside [ShortestSwell] to [LongestSwell] or a direction outside 0 to 360.
func NewSwell(hs, tp, from float64) (Swell, error) {
	switch {
	case !(hs >= 0 && hs <= HighestSwell):
		return Swell{}, fmt.Errorf("%w: Hs %v m is outside 0 to %v", ErrSwell, hs, HighestSwell)
	case hs == 0:
		return Swell{0, nan, nan}, nil
	case !(tp >= ShortestSwell && tp <= LongestSwell):
		return Swell{}, fmt.Errorf("%w: Tp %v s is outside %v to %v", ErrSwell, tp, ShortestSwell, LongestSwell)
	case !(from >= 0 && from <= 360):
		return Swell{}, fmt.Errorf("%w: From %v is outside 0 to 360", ErrSwell, from)
	}
	return Swell{hs, tp, math.Mod(from, 360)}, nil
}

// SwellSample is a swell at an instant.
type SwellSample struct {
	Time time.Time
	Swell
}

// SwellSystem is one swell through time. Before its first sample and after its
// last it is not known: a swell that is not there yet is written as a sample of
// zero height.
type SwellSystem struct {
	Name    string
	samples []SwellSample
	gap     time.Duration
}

// NewSwellSystem returns the system of the samples, which may come in any order
// and are copied. The gap is the longest step interpolated across; zero means 12
// hours, swell being slow.
//
// The error is ErrEmpty, ErrTime, ErrDuplicate, ErrSpan for a negative gap, or
// that of NewSwell, with the name and the time.
func NewSwellSystem(name string, samples []SwellSample, gap time.Duration) (SwellSystem, error) {
	if len(samples) == 0 {
		return SwellSystem{}, fmt.Errorf("%w: system %q", ErrEmpty, name)
	}
	if gap < 0 {
		return SwellSystem{}, fmt.Errorf("%w: gap %v is negative", ErrSpan, gap)
	}
	if gap == 0 {
		gap = 12 * time.Hour
	}
	in := slices.Clone(samples)
	for i, x := range in {
		if x.Time.IsZero() {
			return SwellSystem{}, fmt.Errorf("%w: system %q, sample %d", ErrTime, name, i)
		}
		s, err := NewSwell(x.Hs, x.Tp, x.From)
		if err != nil {
			return SwellSystem{}, fmt.Errorf("system %q at %s: %w", name, stamp(x.Time), err)
		}
		in[i].Swell = s
	}
	slices.SortStableFunc(in, func(a, b SwellSample) int { return a.Time.Compare(b.Time) })
	for i := 1; i < len(in); i++ {
		if in[i].Time.Equal(in[i-1].Time) {
			return SwellSystem{}, fmt.Errorf("%w: system %q, %s", ErrDuplicate, name, stamp(in[i].Time))
		}
	}
	return SwellSystem{Name: name, samples: in, gap: gap}, nil
}

// Samples returns a copy of the samples in order of time.
func (s SwellSystem) Samples() []SwellSample { return slices.Clone(s.samples) }

// At returns the swell at t: height and period interpolated as numbers, the
// direction as that of the energy-weighted vector. A swell that rises from or
// falls to nothing keeps the period and direction it has at the other end.
//
// The error is ErrOutside before the first sample and after the last, ErrGap
// where neighbours lie further apart than the gap, ErrEmpty for an empty system.
func (s SwellSystem) At(t time.Time) (Swell, error) {
	n := len(s.samples)
	if n == 0 {
		return Swell{}, fmt.Errorf("%w: system %q", ErrEmpty, s.Name)
	}
	i := sort.Search(n, func(i int) bool { return s.samples[i].Time.After(t) })
	if i == 0 || i == n && !s.samples[n-1].Time.Equal(t) {
		return Swell{}, fmt.Errorf("%w: system %q at %s is outside %s to %s", ErrOutside, s.Name, stamp(t), stamp(s.samples[0].Time), stamp(s.samples[n-1].Time))
	}
	a := s.samples[i-1]
	if a.Time.Equal(t) {
		return a.Swell, nil
	}
	b := s.samples[i]
	if b.Time.Sub(a.Time) > s.gap {
		return Swell{}, fmt.Errorf("%w: system %q at %s is between %s and %s", ErrGap, s.Name, stamp(t), stamp(a.Time), stamp(b.Time))
	}
	f := clock.Seconds(a.Time, t) / clock.Seconds(a.Time, b.Time)
	switch {
	case a.Hs == 0 && b.Hs == 0:
		return Swell{0, nan, nan}, nil
	case a.Hs == 0:
		return Swell{f * b.Hs, b.Tp, b.From}, nil
	case b.Hs == 0:
		return Swell{(1 - f) * a.Hs, a.Tp, a.From}, nil
	}
	// The vector interpolation of a wind whose speed is the energy.
	w := Interpolate(Wind{a.Hs * a.Hs, nan, a.From}, Wind{b.Hs * b.Hs, nan, b.From}, f)
	return Swell{Hs: (1-f)*a.Hs + f*b.Hs, Tp: (1-f)*a.Tp + f*b.Tp, From: w.From}, nil
}

// Swells is any number of swell systems through time.
type Swells struct {
	systems []SwellSystem
}

// NewSwells returns the swells of the systems, whose names must differ; none at
// all is a sea without swell. The error is ErrDuplicate for two of one name,
// ErrEmpty for a system that was not made by NewSwellSystem.
func NewSwells(systems ...SwellSystem) (Swells, error) {
	seen := map[string]bool{}
	for _, s := range systems {
		if len(s.samples) == 0 {
			return Swells{}, fmt.Errorf("%w: system %q", ErrEmpty, s.Name)
		}
		if seen[s.Name] {
			return Swells{}, fmt.Errorf("%w: two systems %q", ErrDuplicate, s.Name)
		}
		seen[s.Name] = true
	}
	return Swells{systems: slices.Clone(systems)}, nil
}

// Systems returns the systems.
func (s Swells) Systems() []SwellSystem { return slices.Clone(s.systems) }

// At returns the swells that run at t, leaving out those of zero height. The
// error is that of [SwellSystem.At] for the first system that is not known
// then: a sea of which one swell is not known is not known.
func (s Swells) At(t time.Time) ([]Swell, error) {
	out := make([]Swell, 0, len(s.systems))
	for _, sys := range s.systems {
		x, err := sys.At(t)
		if err != nil {
			return nil, err
		}
		if x.Hs > 0 {
			out = append(out, x)
		}
	}
	return out, nil
}

const (
	swTime = iota
	swHeight
	swPeriod
	swFrom
	swSystem
)

var swellColumns = []table.Column{
	{Name: "time", Quantity: table.Time, Required: true},
	{Name: "swell_height", Quantity: table.Length, Required: true, Lo: 0, Hi: HighestSwell},
	{Name: "swell_period", Quantity: table.Span, Required: true, Lo: ShortestSwell, Hi: LongestSwell},
	{Name: "swell_from", Quantity: table.Angle, Required: true, Lo: 0, Hi: 360},
	{Name: "system", Quantity: table.Text},
}

// maxSystems bounds the number of systems of one table.
const maxSystems = 1000

// ReadSwells reads swells through time from comma-separated values (RFC 4180),
// one row for one system at one instant, with the columns, in any order,
//
//	time                  RFC 3339 with a zone
//	swell_height_{m,ft}   significant height of the system; 0 where it is not there
//	swell_period_s        peak period; may be empty at height 0
//	swell_from_deg        direction it comes from, true; may be empty at height 0
//	system                name of the system, optional where there is only one
//
// and any column that begins with "note". A row without a height is skipped.
// The gap is that of [NewSwellSystem].
//
// At most 32 MB are read and 1000 systems. Every error wraps ErrRead and is a
// [*ReadError] that names line, column, value and what was expected.
func ReadSwells(r io.Reader, gap time.Duration) (Swells, error) {
	t, err := table.NewReader(r, swellColumns)
	if err != nil {
		return Swells{}, readError(err)
	}
	var names []string
	rows := map[string][]SwellSample{}
	lines := map[string][]int{}
	for {
		err := t.Next()
		if err == io.EOF {
			break
		}
		if err != nil {
			return Swells{}, readError(err)
		}
		x, ok, err := readSwell(t)
		if err != nil {
			return Swells{}, readError(err)
		}
		if !ok {
			continue
		}
		name := t.Raw(swSystem)
		if _, seen := rows[name]; !seen {
			if len(names) == maxSystems {
				return Swells{}, readError(t.Fail(swSystem, ErrSwell, fmt.Sprintf("at most %d systems", maxSystems)))
			}
			name = t.Text(swSystem)
			names = append(names, name)
		}
		rows[name] = append(rows[name], x)
		lines[name] = append(lines[name], t.Line())
	}
	if len(names) == 0 {
		return Swells{}, readError(&table.Error{Err: ErrEmpty, Want: "a row of time, height, period and direction"})
	}
	systems := make([]SwellSystem, 0, len(names))
	for _, name := range names {
		if err := uniqueSwells(name, rows[name], lines[name]); err != nil {
			return Swells{}, readError(err)
		}
		s, err := NewSwellSystem(name, rows[name], gap)
		if err != nil {
			return Swells{}, readError(err)
		}
		systems = append(systems, s)
	}
	out, err := NewSwells(systems...)
	return out, readError(err)
}

func readSwell(t *table.Reader) (SwellSample, bool, error) {
	at, err := t.Instant(swTime)
	if err != nil {
		return SwellSample{}, false, err
	}
	hs, ok, err := t.Number(swHeight)
	if err != nil {
		return SwellSample{}, false, err
	}
	tp, hasTp, err := t.Number(swPeriod)
	if err != nil {
		return SwellSample{}, false, err
	}
	from, hasFrom, err := t.Number(swFrom)
	if err != nil || !ok {
		return SwellSample{}, false, err
	}
	if hs > 0 && !hasTp {
		return SwellSample{}, false, t.Fail(swPeriod, table.ErrMissing, "a period, for there is a swell")
	}
	if hs > 0 && !hasFrom {
		return SwellSample{}, false, t.Fail(swFrom, table.ErrMissing, "a direction, for there is a swell")
	}
	s, err := NewSwell(hs, tp, from)
	if err != nil {
		return SwellSample{}, false, t.Fail(swHeight, err, "")
	}
	return SwellSample{at.UTC(), s}, true, nil
}

func uniqueSwells(name string, rows []SwellSample, lines []int) error {
	order := make([]int, len(rows))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return rows[a].Time.Compare(rows[b].Time) })
	for i := 1; i < len(order); i++ {
		a, b := order[i-1], order[i]
		if rows[a].Time.Equal(rows[b].Time) {
			return &table.Error{
				Line: lines[b], Column: "time", Value: stamp(rows[b].Time), Err: ErrDuplicate,
				Want: fmt.Sprintf("an instant of its own in system %q, line %d has this one", name, lines[a]),
			}
		}
	}
	return nil
}

// WriteSwells writes the swells as [ReadSwells] reads them, in metres, with
// times in UTC, system after system. Names lose outer blanks when they are
// read back; the gap is not written.
func WriteSwells(w io.Writer, s Swells) error {
	out := table.NewWriter(w, "time", "system", "swell_height_m", "swell_period_s", "swell_from_deg")
	for _, sys := range s.systems {
		for _, x := range sys.samples {
			out.Instant(x.Time.UTC()).Text(sys.Name).Number(x.Hs).Number(x.Tp).Number(x.From)
			if err := out.End(); err != nil {
				return err
			}
		}
	}
	return out.Flush()
}
