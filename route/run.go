package route

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"math"
	"time"
)

// Run is a stretch of water as it is planned on: the line that is paddled, the
// ways out, the shore, and the waters to know about.
type Run struct {
	Name   string
	Points []Point // launch, turning points, landing: at least two
	Depths []Value // charted depth of each leg in metres, negative where it dries, one fewer than Points; nil where none is known
	// FetchDepth is the mean charted depth in metres of the water the waves come
	// over: their growth feels it, and not the depth under the run.
	FetchDepth Value
	Exits      []Exit
	Coast      *Coast // nil where the run came with none: unknown, not open water
	Areas      []Area
	Steep      []SteepShore // the parts of the coast that throw waves back, as far as anybody said
	Exposure   []WindFactor // of each leg, one fewer than Points; nil where nothing was said
}

// AreaKind says what an area of water is.
type AreaKind string

// The kinds of area. The values are the roles in a file.
const (
	Avoid    AreaKind = "avoid"     // not to be entered
	Traffic  AreaKind = "traffic"   // ships
	NoSignal AreaKind = "no-signal" // no telephone and no radio contact
)

// Area is a part of the water with a meaning.
type Area struct {
	Kind     AreaKind
	Name     string
	Note     string
	Polygons []Polygon
}

// Outline returns the area as a [Coast], whose Land is the inside of the area
// and whose Crosses says where a leg enters it.
func (a Area) Outline() (*Coast, error) { return NewCoast(nil, a.Polygons) }

// Legs returns the geodesics between the points of the run, nil for a run of
// fewer than two.
func (r Run) Legs() []Leg {
	if len(r.Points) < 2 {
		return nil
	}
	legs := make([]Leg, len(r.Points)-1)
	for i := range legs {
		legs[i] = Inverse(r.Points[i], r.Points[i+1])
	}
	return legs
}

// Length returns the length of the run in metres; NaN for a run with a
// position off the globe, 0 for one without legs.
func (r Run) Length() float64 {
	var sum float64
	for _, l := range r.Legs() {
		sum += l.Distance
	}
	return sum
}

// Depth returns the depth of a leg, unknown where none was given.
func (r Run) Depth(leg int) Value {
	if leg < 0 || leg >= len(r.Depths) {
		return Value{}
	}
	return r.Depths[leg]
}

// Check returns nil for a run that can be planned on, and otherwise an error
// that wraps [ErrInput] or [ErrPosition] and names what is wrong: a position
// off the globe, fewer than two points, a point repeated, depths that are not
// one a leg, an exit without a name or named twice, an area without a shape or
// of no known kind, a steep shore or a wind factor that cannot be.
func (r Run) Check() error {
	if len(r.Points) < 2 {
		return fmt.Errorf("%w: run: %d points, of at least 2", ErrInput, len(r.Points))
	}
	for i, p := range r.Points {
		if err := p.Check(); err != nil {
			return fmt.Errorf("run: point %d: %w", i, err)
		}
		if i > 0 && samePlace(p, r.Points[i-1]) {
			return fmt.Errorf("%w: run: point %d repeats point %d", ErrInput, i, i-1)
		}
	}
	if len(r.Depths) != 0 && len(r.Depths) != len(r.Points)-1 {
		return fmt.Errorf("%w: run: %d depths for %d legs", ErrInput, len(r.Depths), len(r.Points)-1)
	}
	for i, d := range r.Depths {
		if x, ok := d.Get(); ok && !(x >= highestDrying && x <= 12000) {
			return fmt.Errorf("%w: run: depth of leg %d: %v m is outside %v to 12000", ErrInput, i, x, highestDrying)
		}
	}
	if x, ok := r.FetchDepth.Get(); ok && !(x > 0 && x <= 12000) {
		return fmt.Errorf("%w: run: mean depth along the fetch: %v m is outside 0 to 12000", ErrInput, x)
	}
	if err := r.checkWaters(); err != nil {
		return err
	}
	seen := map[string]bool{}
	for _, e := range r.Exits {
		if err := e.Check(); err != nil {
			return err
		}
		if seen[e.Name] {
			return fmt.Errorf("%w: two exits named %q", ErrInput, e.Name)
		}
		seen[e.Name] = true
	}
	for i, a := range r.Areas {
		switch a.Kind {
		case Avoid, Traffic, NoSignal:
		default:
			return fmt.Errorf("%w: area %d: kind %q is not avoid, traffic or no-signal", ErrInput, i, a.Kind)
		}
		if len(a.Polygons) == 0 {
			return fmt.Errorf("%w: area %d (%q) has no polygon", ErrInput, i, a.Name)
		}
		if _, err := a.Outline(); err != nil {
			return fmt.Errorf("area %d (%q): %w", i, a.Name, err)
		}
	}
	return nil
}

// highestDrying is the charted depth of ground that dries as high as any tide
// covers: no tide on Earth has a range of 20 m.
const highestDrying = -20.0

func samePlace(p, q Point) bool {
	return p.Lat == q.Lat && wrapLon(p.Lon-q.Lon) == 0
}

// Fix is a place and the instant a board is, was or will be there.
type Fix struct {
	Point Point
	Time  time.Time
}

// Track is a line with times: recorded on the water, or planned. Times do not
// decrease.
type Track struct {
	Name    string
	Planned bool
	Fixes   []Fix
}

// Check returns nil for a track with at least one fix, every position on the
// globe and no time before the one before it; otherwise an error that wraps
// [ErrInput] or [ErrPosition].
func (t Track) Check() error {
	if len(t.Fixes) == 0 {
		return fmt.Errorf("%w: track %q has no fix", ErrInput, t.Name)
	}
	for i, f := range t.Fixes {
		if err := f.Point.Check(); err != nil {
			return fmt.Errorf("track %q: fix %d: %w", t.Name, i, err)
		}
		if f.Time.IsZero() {
			return fmt.Errorf("%w: track %q: fix %d has no time", ErrInput, t.Name, i)
		}
		if i > 0 && f.Time.Before(t.Fixes[i-1].Time) {
			return fmt.Errorf("%w: track %q: fix %d at %s is before fix %d at %s", ErrInput, t.Name,
				i, f.Time.Format(time.RFC3339), i-1, t.Fixes[i-1].Time.Format(time.RFC3339))
		}
	}
	return nil
}

// Errors of the readers. Every error of a reader wraps ErrFile and says where
// in the file, what was found and what was expected.
var (
	ErrFile     = errors.New("route: file")
	ErrTooLarge = fmt.Errorf("%w larger than 32 MB", ErrFile)
)

// largest is the longest file read.
const largest = 32 << 20

// fileError makes an error of a reader.
func fileError(where, format string, args ...any) error {
	err := fmt.Errorf(format, args...)
	if where == "" {
		return fmt.Errorf("%w: %w", ErrFile, err)
	}
	return fmt.Errorf("%w: %s: %w", ErrFile, where, err)
}

// bounded reads up to the size limit and then fails, so that no reader takes
// a file that was cut off by a limit for a whole one. The mark some editors put
// at the start of a text is skipped.
func bounded(r io.Reader) io.Reader {
	b := bufio.NewReaderSize(&limiter{r: r, left: largest}, 1<<16)
	if mark, err := b.Peek(3); err == nil && mark[0] == 0xEF && mark[1] == 0xBB && mark[2] == 0xBF {
		_, _ = b.Discard(3)
	}
	return b
}

type limiter struct {
	r    io.Reader
	left int
}

func (l *limiter) Read(p []byte) (int, error) {
	if l.left < 0 {
		return 0, ErrTooLarge
	}
	if len(p) > l.left+1 {
		p = p[:l.left+1]
	}
	n, err := l.r.Read(p)
	l.left -= n
	if l.left < 0 {
		return n - 1, ErrTooLarge
	}
	return n, err
}

// filePosition checks a position read from a file and brings its longitude
// into the usual range.
func filePosition(lat, lon float64) (Point, error) {
	if !(lat >= -90 && lat <= 90) {
		if math.Abs(lon) <= 90 && math.Abs(lat) <= 180 {
			return Point{}, fmt.Errorf("latitude %v is outside -90 to 90; longitude is %v: are the two swapped?", lat, lon)
		}
		return Point{}, fmt.Errorf("latitude %v is outside -90 to 90", lat)
	}
	if !(lon >= -360 && lon <= 360) {
		return Point{}, fmt.Errorf("longitude %v is outside -180 to 180", lon)
	}
	if lon != 180 { // as good as -180, and written back as it was read
		lon = wrapLon(lon)
	}
	return Point{Lat: lat, Lon: lon}, nil
}

// fileTime reads an instant with a zone, as RFC 3339 has it, with its lower
// case letters and its space.
func fileTime(s string) (time.Time, error) {
	b := []byte(s)
	if len(b) > 10 && (b[10] == 't' || b[10] == ' ') {
		b[10] = 'T'
	}
	if n := len(b); n > 0 && b[n-1] == 'z' {
		b[n-1] = 'Z'
	}
	t, err := time.Parse(time.RFC3339Nano, string(b))
	if err != nil {
		return time.Time{}, fmt.Errorf("time %q is not an instant with a zone, such as 2026-06-21T04:43:00Z", s)
	}
	if t.Year() < 1900 || t.Year() > 2200 {
		return time.Time{}, fmt.Errorf("time %q is outside the years 1900 to 2200", s)
	}
	return t, nil
}

// stray is how far from a run its exits and shores may lie before a reader
// asks whether latitude and longitude changed places.
const stray = 500_000.0 // metres

// swapped reports whether a position far from the run would be near it with
// latitude and longitude the other way round.
func swapped(run []Point, p Point) bool {
	if len(run) == 0 || !(math.Abs(p.Lon) <= 90) {
		return false
	}
	q := Point{Lat: p.Lon, Lon: p.Lat}
	return Inverse(run[0], p).Distance > stray && Inverse(run[0], q).Distance < stray
}

// checkFile checks what a reader put together.
func (r *Run) checkFile() error {
	if err := r.Check(); err != nil {
		return fileError("", "%w", err)
	}
	ask := func(what string, p Point) error {
		if swapped(r.Points, p) {
			return fileError(what, "latitude %v, longitude %v is over %.0f km from the run, and near it the other way round: are the two swapped?", p.Lat, p.Lon, stray/1000)
		}
		return nil
	}
	for _, e := range r.Exits {
		if err := ask(fmt.Sprintf("exit %q", e.Name), e.Point); err != nil {
			return err
		}
	}
	for i, l := range r.Coast.Lines() {
		if err := ask(fmt.Sprintf("coast line %d", i), l[0]); err != nil {
			return err
		}
	}
	for i, p := range r.Coast.Polygons() {
		if err := ask(fmt.Sprintf("coast polygon %d", i), p[0][0]); err != nil {
			return err
		}
	}
	for i, s := range r.Steep {
		if err := ask(fmt.Sprintf("steep shore %d", i), s.Line[0]); err != nil {
			return err
		}
	}
	for _, a := range r.Areas {
		if err := ask(fmt.Sprintf("area %q", a.Name), a.Polygons[0][0][0]); err != nil {
			return err
		}
	}
	return nil
}
