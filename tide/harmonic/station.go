package harmonic

import (
	"errors"
	"fmt"
	"math"
	"time"

	"followingsea.example/tide"
)

// The errors of this package, returned wrapped with what was wrong.
var (
	// ErrStation is returned for a station that cannot be predicted.
	ErrStation = errors.New("harmonic: unusable station")
	// ErrConstituent is returned for a constituent that is not known or not usable.
	ErrConstituent = errors.New("harmonic: unusable constituent")
	// ErrSpan is returned for a span of time that cannot be searched.
	ErrSpan = errors.New("harmonic: unusable span of time")
	// ErrFile is returned for a file of constituents that cannot be read.
	ErrFile = errors.New("harmonic: unusable file of constituents")
)

// A Station is a place with its harmonic constants.
type Station struct {
	ID, Name    string
	Attribution string     // who made the constants, and under which licence
	Datum       tide.Datum // what Z0 is measured from
	// Z0 is the mean level above the datum in metres: the constant of the sum.
	Z0           float64
	Constituents []Constituent
	// Stream is the tidal stream at the place, nil when there is none.
	Stream *Axis
}

// An Axis is a tidal stream along one line: positive rates flood, negative
// ebb. The two sets need not be opposite.
type Axis struct {
	Flood, Ebb float64 // degrees true, toward
	// Mean is the permanent flow along the axis in m/s, flood positive.
	Mean         float64
	Constituents []Constituent // amplitudes in m/s
}

// A Tide predicts the height of the tide at one station. It is made by New,
// does not change and may be used from many goroutines.
type Tide struct {
	sum   sum
	datum tide.Datum
}

// New returns the predictor of heights for the station. ErrStation and
// ErrConstituent name what is wrong: a constituent that is not known is an
// error, not left out in silence (Only chooses). The mean of a station is
// above its datum; without a datum the predictor is of UnknownDatum.
func New(s Station, n Nodes) (*Tide, error) {
	m, err := newSum(s.Z0, s.Constituents, n)
	if err != nil {
		return nil, err
	}
	return &Tide{m, s.Datum}, nil
}

// Only returns the constituents for which keep is true, in their order:
//
//	s.Constituents = harmonic.Only(s.Constituents, func(name string) bool { return name != "M1" })
func Only(cs []Constituent, keep func(name string) bool) []Constituent {
	var out []Constituent
	for _, c := range cs {
		if keep(c.Name) {
			out = append(out, c)
		}
	}
	return out
}

// Datum returns what the heights are measured from.
func (t *Tide) Datum() tide.Datum { return t.datum }

// Height returns the height of the tide above the datum at the instant, in
// metres:
//
//	h(t) = Z0 + Σ f A cos(V(t) + u − g)
//
// The astronomical tide only: weather, river and swell come on top.
//
// Source: [Schureman1958] formula 1 and paragraph 57.
func (t *Tide) Height(at time.Time) float64 { return t.sum.value(at) }

// Rate returns how fast the tide rises at the instant, in m/s: the derivative
// of Height.
//
// Source: [Schureman1958] paragraph 57, its derivative.
func (t *Tide) Rate(at time.Time) float64 { return t.sum.rate(at) / 3600 }

// Heights fills dst with the heights at from, from + step, from + 2 step, ...:
// within 1e-9 m of Height at each (6e-9 for an L2 or M1 of 25 m), at a small part of its cost.
func (t *Tide) Heights(dst []float64, from time.Time, step time.Duration) {
	t.sum.series(dst, from, step, 0)
}

// Rates fills dst with the rates of rise in m/s at from, from + step, ...
func (t *Tide) Rates(dst []float64, from time.Time, step time.Duration) {
	t.sum.series(dst, from, step, 1)
	for i := range dst {
		dst[i] /= 3600
	}
}

// longestSpan bounds a search for turns: two hundred years.
const longestSpan = 200 * 366 * 24 * time.Hour

// margin is how far beyond the span turns are looked for, so that prominence
// is judged by neighbours and not by the edge of the question.
const margin = 54 * time.Hour

func span(from, to time.Time) error {
	if !from.Before(to) || to.Sub(from) > longestSpan {
		return fmt.Errorf("%w: %v to %v: want a positive span of at most 200 years", ErrSpan, from.Format(time.RFC3339), to.Format(time.RFC3339))
	}
	return nil
}

// Turns returns the high and low waters in [from, to], in order: the roots of
// dh/dt, none missed but in ripples of micrometres, alternating high and low (in ByYear the jump at New Year may
// take one out). A rise or fall smaller than prominence (metres; zero keeps
// everything) is no rise or fall: its two turns are left out. Vanishing tides turn
// several times within minutes and millimetres; 0.01 is a good prominence for a
// printed table.
//
// ErrSpan for a span that is not positive or beyond 200 years, ErrStation for
// a prominence that is negative or NaN.
func (t *Tide) Turns(from, to time.Time, prominence float64) ([]tide.Turn, error) {
	if err := span(from, to); err != nil {
		return nil, err
	}
	if !(prominence >= 0) || math.IsInf(prominence, 0) {
		return nil, fmt.Errorf("%w: prominence %v m: want 0 or more", ErrStation, prominence)
	}
	m := time.Hour
	if prominence > 0 {
		m = margin
	}
	all := t.turns(from.Add(-m), to.Add(m))
	all = prune(all, prominence)
	var out []tide.Turn
	for _, u := range all {
		if !u.Time.Before(from) && !u.Time.After(to) {
			out = append(out, u)
		}
	}
	return out, nil
}

// turns returns every turn, alternating.
func (t *Tide) turns(from, to time.Time) []tide.Turn {
	var out []tide.Turn
	for _, r := range t.sum.roots(1, from, to) {
		u := tide.Turn{Time: r.at, Height: t.sum.valueIn(r.at, r.year), High: !r.up}
		if n := len(out); n > 0 && out[n-1].High == u.High {
			// Two of a kind can only meet where ByYear jumps: the further one stays.
			if (u.Height > out[n-1].Height) == u.High {
				out[n-1] = u
			}
			continue
		}
		out = append(out, u)
	}
	return out
}

// valueIn is value with the year of ByYear given: at midnight of New Year the
// root belongs to the year it was found in.
func (s *sum) valueIn(at time.Time, year int) float64 {
	if s.nodes != ByYear {
		return s.value(at)
	}
	e := s.epochAt(at, year)
	return s.level(&e)
}

// prune leaves out the turns of rises and falls smaller than p, by following
// the water: a turn stands once the water has gone p back from it.
func prune(turns []tide.Turn, p float64) []tide.Turn {
	if !(p > 0) || len(turns) == 0 {
		return turns
	}
	var out []tide.Turn
	lo, hi := turns[0], turns[0] // the lowest and highest since the last turn that stands
	seek := 0                    // +1: a high water is being looked for, -1: a low water, 0: either
	for _, u := range turns[1:] {
		if u.Height > hi.Height {
			hi = u
		}
		if u.Height < lo.Height {
			lo = u
		}
		switch {
		case seek >= 0 && hi.Height-u.Height >= p:
			out = append(out, hi)
			seek, lo, hi = -1, u, u
		case seek <= 0 && u.Height-lo.Height >= p:
			out = append(out, lo)
			seek, lo, hi = 1, u, u
		}
	}
	// The last one stands for the water beyond.
	switch {
	case seek > 0:
		out = append(out, hi)
	case seek < 0:
		out = append(out, lo)
	}
	return out
}

// Table returns the turns of [from, to] as a table of high and low waters,
// with one turn more on either side so that it spans the whole of it. Turns of
// less than the prominence are left out. The table's datum is the station's; its other
// options are as given, but for Gap: nothing is missing in a prediction, and
// zero stands for as long as it takes.
func (t *Tide) Table(from, to time.Time, prominence float64, o tide.Options) (*tide.Table, error) {
	turns, err := t.Turns(from.Add(-margin), to.Add(margin), prominence)
	if err != nil {
		return nil, err
	}
	lo, hi := 0, len(turns)
	for lo+1 < len(turns) && !turns[lo+1].Time.After(from) {
		lo++
	}
	for hi > lo+1 && !turns[hi-2].Time.Before(to) {
		hi--
	}
	o.Datum = t.datum
	if o.Gap == 0 {
		o.Gap = 2*margin + to.Sub(from)
	}
	return tide.NewTable(turns[lo:hi], o)
}

// A Stream predicts the tidal stream along the axis of one station. It is made
// by NewStream, does not change and may be used from many goroutines.
type Stream struct {
	sum        sum
	flood, ebb float64
}

// NewStream returns the predictor of streams for the axis; errors as New.
func NewStream(a Axis, n Nodes) (*Stream, error) {
	if !(math.Abs(a.Flood) <= 360 && math.Abs(a.Ebb) <= 360) {
		return nil, fmt.Errorf("%w: flood %v°, ebb %v°: want directions within 360°", ErrStation, a.Flood, a.Ebb)
	}
	m, err := newSum(a.Mean, a.Constituents, n)
	if err != nil {
		return nil, err
	}
	return &Stream{m, a.Flood, a.Ebb}, nil
}

// Rate returns the rate along the axis at the instant in m/s, flood positive:
//
//	v(t) = mean flow + Σ f A cos(V(t) + u − g)
//
// Source: [Schureman1958] paragraph 57, for currents.
func (s *Stream) Rate(at time.Time) float64 { return s.sum.value(at) }

// Rates fills dst with the rates at from, from + step, ..., flood positive.
func (s *Stream) Rates(dst []float64, from time.Time, step time.Duration) {
	s.sum.series(dst, from, step, 0)
}

// Velocity returns the stream at the instant: toward Flood when it floods,
// toward Ebb when it ebbs.
func (s *Stream) Velocity(at time.Time) tide.Velocity { return s.toward(s.Rate(at)).Velocity() }

// toward gives a rate along the axis its direction.
func (s *Stream) toward(rate float64) tide.Stream {
	if rate < 0 {
		return tide.Setting(-rate, s.ebb)
	}
	return tide.Setting(rate, s.flood)
}

// Between returns the events of [from, to], and one or more beyond each end, as a
// current table with the sine between them.
func (s *Stream) Between(from, to time.Time) (*tide.EventStreams, error) {
	e, err := s.Events(from.Add(-margin), to.Add(margin))
	if err != nil {
		return nil, err
	}
	return tide.NewEventStreams(e, s.flood, s.ebb)
}

// Events returns the slacks and the extremes of rate in [from, to], in order,
// each classed by the sign of the velocity: flood and ebb need not alternate,
// and two maxima of one with a minimum and no slack between are as they are.
func (s *Stream) Events(from, to time.Time) ([]tide.StreamEvent, error) {
	if err := span(from, to); err != nil {
		return nil, err
	}
	zeros := s.sum.roots(0, from.Add(-time.Hour), to.Add(time.Hour))
	turns := s.sum.roots(1, from.Add(-time.Hour), to.Add(time.Hour))
	var out []tide.StreamEvent
	keep := func(e tide.StreamEvent) {
		if !e.Time.Before(from) && !e.Time.After(to) {
			out = append(out, e)
		}
	}
	for i, j := 0, 0; i < len(zeros) || j < len(turns); {
		if j == len(turns) || i < len(zeros) && zeros[i].at.Before(turns[j].at) {
			k := tide.SlackBeforeEbb
			if zeros[i].up {
				k = tide.SlackBeforeFlood
			}
			keep(tide.StreamEvent{Time: zeros[i].at, Kind: k})
			i++
			continue
		}
		v := s.sum.valueIn(turns[j].at, turns[j].year)
		keep(tide.StreamEvent{Time: turns[j].at, Rate: v, Kind: tide.Extreme(v, !turns[j].up)})
		j++
	}
	return out, nil
}

// A Rotary predicts a stream that goes round: a sum for its east and one for
// its north part. It is made by NewRotary, does not change and may be used
// from many goroutines.
type Rotary struct {
	east, north sum
}

// NewRotary returns the predictor from the constituents of the east-going and
// the north-going part, amplitudes in m/s, with the permanent flow. Errors as New.
func NewRotary(east, north []Constituent, mean tide.Velocity, n Nodes) (*Rotary, error) {
	e, err := newSum(mean.East, east, n)
	if err != nil {
		return nil, fmt.Errorf("east: %w", err)
	}
	o, err := newSum(mean.North, north, n)
	if err != nil {
		return nil, fmt.Errorf("north: %w", err)
	}
	return &Rotary{e, o}, nil
}

// Velocity returns the stream at the instant:
//
//	u(t) = mean + Σ f U cos(V + u − g),  the same for v
//
// Source: [Schureman1958] paragraph 57, for each part.
func (r *Rotary) Velocity(at time.Time) tide.Velocity {
	return tide.Velocity{East: r.east.value(at), North: r.north.value(at)}
}

// FormNumber returns the form number (K1 + O1)/(M2 + S2) of the station's
// heights, NaN when one of the four is not among its constituents.
//
// Source: tide.FormNumber.
func (s Station) FormNumber() float64 {
	v := [4]float64{math.NaN(), math.NaN(), math.NaN(), math.NaN()}
	for _, c := range s.Constituents {
		for i, n := range [4]string{"K1", "O1", "M2", "S2"} {
			if d := lookup(c.Name); d != nil && d.name == n {
				v[i] = c.Amplitude
			}
		}
	}
	return tide.FormNumber(v[0], v[1], v[2], v[3])
}

// Age returns the age of the tide at the station in seconds, the time by which
// springs follow full and new moon, NaN when M2 or S2 is missing.
//
// Source: tide.Age.
func (s Station) Age() float64 {
	m, n := math.NaN(), math.NaN()
	for _, c := range s.Constituents {
		if d := lookup(c.Name); d != nil && d.name == "M2" {
			m = c.Lag
		} else if d != nil && d.name == "S2" {
			n = c.Lag
		}
	}
	return tide.Age(m, n)
}
