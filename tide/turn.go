package tide

import (
	"errors"
	"fmt"
	"math"
	"sort"
	"time"

	"followingsea.example/internal/clock"
)

// The errors of this package. Each is returned wrapped with the name of the
// field, its value and what was allowed.
var (
	// ErrValue is returned for a number or a name that no calculation can use.
	ErrValue = errors.New("tide: unusable value")
	// ErrTurns is returned for turns that cannot be one place's high and low waters.
	ErrTurns = errors.New("tide: not a table of high and low waters")
	// ErrOutside is returned for an instant that the table does not reach.
	ErrOutside = errors.New("tide: outside the table")
	// ErrGap is returned where turns are missing from the table.
	ErrGap = errors.New("tide: turns missing from the table")
	// ErrShape is returned where a rise or fall is too short or too long for
	// the curve between its turns to be trusted.
	ErrShape = errors.New("tide: rise or fall of unusual duration")
	// ErrNever is returned when a height is not reached.
	ErrNever = errors.New("tide: height not reached")
	// ErrDatum is returned when heights above different datums meet.
	ErrDatum = errors.New("tide: heights above different datums")
)

// A Turn is a high or a low water: the instant, the height in metres above
// the datum of the table, and which of the two it is.
type Turn struct {
	Time   time.Time
	Height float64
	High   bool
}

// String returns the turn as "HW 2026-08-15T05:03Z 6.26 m", to the nearest
// minute.
func (t Turn) String() string {
	name := "LW"
	if t.High {
		name = "HW"
	}
	return fmt.Sprintf("%s %s %.2f m", name, t.Time.Round(time.Minute).Format("2006-01-02T15:04Z07:00"), t.Height)
}

// A Limb is one rise or fall, from a turn to the next.
type Limb struct {
	From, To Turn
}

// Duration returns the seconds from the first turn to the second, NaN unless
// it is positive.
func (l Limb) Duration() float64 {
	d := clock.Seconds(l.From.Time, l.To.Time)
	if !(d > 0) {
		return math.NaN()
	}
	return d
}

// Range returns the range of the limb in metres, high water less low water
// (negative when the turns are named the wrong way round).
//
// Special cases are:
//
//	Range = NaN if a height is NaN or infinite
//
// Source: [ExeterTides] slide Big springs and little springs.
func (l Limb) Range() float64 {
	r := l.From.Height - l.To.Height
	if l.To.High {
		r = -r
	}
	if math.IsInf(r, 0) {
		return math.NaN()
	}
	return r
}

// TideHour returns a sixth of the duration in seconds: the "tide-hour" by
// which the rule of twelfths is counted.
//
// Source: [PermisBateau] exercice 1 (heure-marée).
func (l Limb) TideHour() float64 { return l.Duration() / 6 }

// Height returns the height of the water in metres at an instant of the limb,
//
//	h = h1 + (h2 − h1) F((t − t1)/(t2 − t1))
//
// with F by the rule.
//
// Special cases are:
//
//	Height = NaN before the first turn and after the second
//	Height = NaN for a height that is NaN or infinite, or a duration not positive
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters (cosine); [ExeterTides] (twelfths).
func (l Limb) Height(at time.Time, by Rule) float64 {
	d := l.Duration()
	h := between(l.From.Height, l.To.Height, by.Fraction(clock.Seconds(l.From.Time, at)/d))
	if math.IsInf(h, 0) {
		return math.NaN()
	}
	return h
}

// between is a + (b − a) f, exact at both ends.
func between(a, b, f float64) float64 {
	if f == 1 {
		return b + 0*a
	}
	return a + (b-a)*f
}

// Rate returns how fast the water rises at an instant of the limb, in m/s,
// negative on a fall:
//
//	dh/dt = (h2 − h1)/(t2 − t1) F'(x)
//
// By the cosine the fastest is π/2 R/D, about a quarter of the range an hour.
//
// Special cases are those of Height.
//
// Source: derivative of [LINZ-Tables].
func (l Limb) Rate(at time.Time, by Rule) float64 {
	d := l.Duration()
	r := (l.To.Height - l.From.Height) / d * by.Slope(clock.Seconds(l.From.Time, at)/d)
	if math.IsInf(r, 0) {
		return math.NaN()
	}
	return r
}

// Elapsed returns the seconds from the first turn until the water stands at
// the height, by the rule.
//
// Special cases are:
//
//	Elapsed = NaN for a height outside the two turns, or NaN
//	Elapsed = NaN for a duration not positive or a limb without range
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters.
func (l Limb) Elapsed(height float64, by Rule) float64 {
	r := l.To.Height - l.From.Height
	if math.IsInf(r, 0) {
		return math.NaN()
	}
	return l.Duration() * by.Elapsed((height-l.From.Height)/r)
}

// When returns the instant at which the water stands at the height, by the
// rule; ErrNever when the limb does not pass it, ErrValue for numbers that
// are not finite.
func (l Limb) When(height float64, by Rule) (time.Time, error) {
	e := l.Elapsed(height, by)
	if math.IsNaN(e) {
		if !finite(height+l.From.Height+l.To.Height) || math.IsNaN(l.Duration()) {
			return time.Time{}, fmt.Errorf("%w: height %v m between %v and %v", ErrValue, height, l.From, l.To)
		}
		return time.Time{}, fmt.Errorf("%w: %v m between %v and %v", ErrNever, height, l.From, l.To)
	}
	return clock.After(l.From.Time, e)
}

// Options says how a Table is read. The zero value is right for an official
// table of high and low waters.
type Options struct {
	// Datum is what the heights are measured from.
	Datum Datum
	// Rule is the curve between turns; the zero value is the cosine.
	Rule Rule
	// Shortest and Longest bound the durations of rise and fall for which the
	// curve is trusted; zero means the 5 and the 7 hours of the official
	// tables. Outside them heights carry a remark, and windows are an error:
	// widen the bounds to accept that knowingly.
	Shortest, Longest time.Duration
	// Gap is the duration beyond which a turn must be missing between two
	// neighbours; zero means 18 hours, longer than a limb of a diurnal tide.
	Gap time.Duration
}

// The bounds that Options starts from.
const (
	shortest = 5 * time.Hour
	longest  = 7 * time.Hour
	gap      = 18 * time.Hour
	// Two turns of one kind closer than this are an error, further apart one is
	// missing between them.
	sameKind = 9 * time.Hour
)

// A Table is a validated table of high and low waters, to be asked for
// heights, rates and windows at any instant it spans. It is made by NewTable
// or ReadTable, does not change and may be used from many goroutines.
type Table struct {
	turns []Turn
	at    []float64 // seconds from the first turn
	limbs []limb    // limbs[i] joins turns i and i+1
	opt   Options
}

// limb is the state of one rise or fall.
type limb uint8

const (
	sound limb = iota
	short
	long
	missing
)

// NewTable returns the table of the turns, which must be in order of time. It
// copies them.
//
// Turns must alternate between high and low, a high water must stand above
// both its neighbours, heights must be finite and within 25 m of the datum,
// and there must be at least two; otherwise ErrTurns, naming the turn. Two
// turns of one kind at least 9 hours apart, or any two further apart than
// Options.Gap, have a gap between them: it is known, and no height is given
// in it.
func NewTable(turns []Turn, o Options) (*Table, error) {
	if o.Shortest == 0 {
		o.Shortest = shortest
	}
	if o.Longest == 0 {
		o.Longest = longest
	}
	if o.Gap == 0 {
		o.Gap = gap
	}
	if o.Rule > ByTenths {
		return nil, fmt.Errorf("%w: rule %d: want cosine, twelfths or tenths", ErrValue, o.Rule)
	}
	if o.Shortest < 0 || o.Longest < o.Shortest || o.Gap < o.Longest {
		return nil, fmt.Errorf("%w: shortest %v, longest %v, gap %v: want 0 < shortest ≤ longest ≤ gap", ErrValue, o.Shortest, o.Longest, o.Gap)
	}
	if len(turns) < 2 {
		return nil, fmt.Errorf("%w: %d turns: want at least 2", ErrTurns, len(turns))
	}
	t := &Table{
		turns: append([]Turn(nil), turns...),
		at:    make([]float64, len(turns)),
		limbs: make([]limb, len(turns)-1),
		opt:   o,
	}
	for i, u := range turns {
		if !(math.Abs(u.Height) <= 25) {
			return nil, fmt.Errorf("%w: turn %d, %v: height is outside -25 to 25 m", ErrTurns, i+1, u)
		}
		if i == 0 {
			continue
		}
		p := turns[i-1]
		t.at[i] = clock.Seconds(turns[0].Time, u.Time)
		d := u.Time.Sub(p.Time)
		switch {
		case d <= 0:
			return nil, fmt.Errorf("%w: turn %d, %v: not after %v", ErrTurns, i+1, u, p)
		case d > o.Gap:
			t.limbs[i-1] = missing
		case u.High == p.High:
			if d < sameKind {
				return nil, fmt.Errorf("%w: turn %d, %v: follows %v, no turn of the other kind between", ErrTurns, i+1, u, p)
			}
			t.limbs[i-1] = missing
		case !(Limb{p, u}.Range() > 0):
			return nil, fmt.Errorf("%w: turn %d, %v: high water is not above low water %v", ErrTurns, i+1, u, p)
		case d < o.Shortest:
			t.limbs[i-1] = short
		case d > o.Longest:
			t.limbs[i-1] = long
		}
	}
	return t, nil
}

// Datum returns what the heights of the table are measured from.
func (t *Table) Datum() Datum { return t.opt.Datum }

// Len returns the number of turns.
func (t *Table) Len() int { return len(t.turns) }

// Turn returns turn i, from 0. It panics when i is out of range, as a slice does.
func (t *Table) Turn(i int) Turn { return t.turns[i] }

// Turns returns a copy of the turns.
func (t *Table) Turns() []Turn { return append([]Turn(nil), t.turns...) }

// Span returns the first and the last turn's time.
func (t *Table) Span() (from, to time.Time) {
	return t.turns[0].Time, t.turns[len(t.turns)-1].Time
}

// find returns the number of the limb that holds the instant and the seconds
// from the first turn, or -1 outside the table. A turn belongs to the limb
// that begins there if that one is whole, else to the one that ends there.
func (t *Table) find(at time.Time) (int, float64) {
	s := clock.Seconds(t.turns[0].Time, at)
	n := len(t.at)
	if !(s >= 0 && s <= t.at[n-1]) {
		return -1, s
	}
	i := sort.SearchFloat64s(t.at, s) // first turn at or after s
	if i < n && t.at[i] == s {
		if i == n-1 || (t.limbs[i] == missing && i > 0) {
			return i - 1, s
		}
		return i, s
	}
	return i - 1, s
}

// Limb returns the rise or fall that holds the instant: ErrOutside beyond the
// table, ErrGap where turns are missing.
func (t *Table) Limb(at time.Time) (Limb, error) {
	i, s := t.find(at)
	if i < 0 {
		from, to := t.Span()
		return Limb{}, fmt.Errorf("%w: %v is not in %v to %v", ErrOutside, at.Format(time.RFC3339), from.Format(time.RFC3339), to.Format(time.RFC3339))
	}
	if t.limbs[i] == missing && s != t.at[i] && s != t.at[i+1] {
		return Limb{}, fmt.Errorf("%w: between %v and %v", ErrGap, t.turns[i], t.turns[i+1])
	}
	return Limb{t.turns[i], t.turns[i+1]}, nil
}

// Height returns the height of the water in metres above the table's datum at
// the instant, by the table's rule. It allocates nothing.
//
// Special cases are:
//
//	Height = NaN outside the table and in a gap
//
// Source: [LINZ-Tables] method to find times or heights between high and low
// waters.
func (t *Table) Height(at time.Time) float64 { return t.Estimate(at).Height }

// Rate returns how fast the water rises at the instant, in m/s, negative when
// it falls.
//
// Special cases are:
//
//	Rate = NaN outside the table and in a gap
//
// Source: derivative of [LINZ-Tables].
func (t *Table) Rate(at time.Time) float64 { return t.Estimate(at).Rate }

// A Remark says what to think of an estimate.
type Remark uint8

// The remarks.
const (
	// Ordinary: a rise or fall of 5 to 7 hours (or the bounds in Options).
	Ordinary Remark = iota
	// Short: the rise or fall is shorter than the curve is trusted for.
	Short
	// Long: it is longer than the curve is trusted for: a stand, a double high
	// water, or a diurnal tide.
	Long
	// Gap: turns are missing here.
	Gap
	// Outside: the instant is not in the table.
	Outside
)

// String returns the remark in words.
func (r Remark) String() string {
	switch r {
	case Ordinary:
		return "ordinary"
	case Short:
		return "rise or fall shorter than the curve is trusted for"
	case Long:
		return "rise or fall longer than the curve is trusted for"
	case Gap:
		return "turns missing from the table"
	case Outside:
		return "outside the table"
	}
	return "unknown remark"
}

// An Estimate is the height of the water with what is known of its quality.
type Estimate struct {
	Height float64 // metres above the datum
	Rate   float64 // m/s, positive rising
	Spread float64 // metres either way that real tides keep to, 95 times of 100
	Remark Remark
}

// Spreads, as shares of the limb's range, from the largest error in each limb
// of the cosine between predicted turns against the full harmonic prediction,
// January to April 2026, 95th percentile. Limbs of 5 to 7 hours: Eastport
// 0.046, Boston 0.058, San Francisco 0.037, Honolulu 0.042, and 0.13 to 0.17 on
// the diurnal Gulf coast; other limbs: San Francisco 0.037, Honolulu 0.10,
// Pensacola 0.18, Galveston 0.46. Southampton, with its double high water,
// has 0.37 even in limbs of 5 to 7 hours: two turns cannot tell that.
const (
	spreadOrdinary = 0.10
	spreadOdd      = 0.35
)

// Estimate returns the height and the rate at the instant with the spread that
// real tides keep to (a tenth of the range in an ordinary rise or fall, a third
// otherwise; more at a place with a stand or a double high water, which two
// turns cannot show) and a remark on the shape of the tide. Height, Rate and
// Spread are NaN outside the table and in a gap. The spread is of the curve
// between the turns only: weather comes on top (see InverseBarometer).
func (t *Table) Estimate(at time.Time) Estimate {
	i, s := t.find(at)
	if i < 0 {
		return Estimate{math.NaN(), math.NaN(), math.NaN(), Outside}
	}
	a, b := &t.turns[i], &t.turns[i+1]
	if t.limbs[i] == missing {
		// The turns on its edges are known, what lies between is not.
		switch s {
		case t.at[i]:
			return Estimate{Height: a.Height, Remark: Ordinary}
		case t.at[i+1]:
			return Estimate{Height: b.Height, Remark: Ordinary}
		}
		return Estimate{math.NaN(), math.NaN(), math.NaN(), Gap}
	}
	d := t.at[i+1] - t.at[i]
	x := (s - t.at[i]) / d
	e := Estimate{
		Height: between(a.Height, b.Height, t.opt.Rule.Fraction(x)),
		Rate:   (b.Height - a.Height) / d * t.opt.Rule.Slope(x),
		Spread: spreadOrdinary * math.Abs(b.Height-a.Height),
	}
	switch t.limbs[i] {
	case short:
		e.Remark, e.Spread = Short, spreadOdd*math.Abs(b.Height-a.Height)
	case long:
		e.Remark, e.Spread = Long, spreadOdd*math.Abs(b.Height-a.Height)
	}
	return e
}

func finite(x float64) bool { return math.Abs(x) <= math.MaxFloat64 }
