package passage

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
	"time"
)

// A Ranking is what a search found: every run and departure, in order.
type Ranking struct {
	search  *search
	departs []time.Time // as asked for
	asked   []Rule
}

// An Order is what decides between departures that keep all limits in equally
// many members of the forecast.
type Order uint8

// The orders.
const (
	ByMargin Order = iota // the margin to the closest limit, then the ride
	ByRide                // the share of waves that can be caught, then the margin
)

// A Prospect is what is to be said of one departure on one run over all members
// of the forecast. Parts of the members are the forecast's own odds, no better
// than it is. It is never one number: whoever reads only the first field misses
// why.
type Prospect struct {
	Run    int // index among the candidates
	Depart time.Time

	All      Odds   // of all limits together: met where every one is, broken where one is
	Limits   []Odds // of each limit asked for, in the order of Rules
	Arrives  int    // members in which the board arrives on what is known
	Margin   Range  // to the closest limit, in comfortable steps; known where none is unknown
	Closest  Rule   // the limit that is the closest, or unknown, in most members
	Rideable Range  // share of waves that can be caught
	Duration Range  // of the passage, s
	Early    Range  // the fast case of each member, s
	Late     Range  // the slow case of each member, s
}

// Odds count the members of a forecast by the state of a limit.
type Odds struct {
	Rule                 Rule // without meaning for all limits together
	Met, Broken, Unknown int
}

// Least returns the part of the members in which the limit is known to be met:
// an unknown counts against. NaN for no members.
func (o Odds) Least() float64 { return float64(o.Met) / float64(o.Met+o.Broken+o.Unknown) }

// Most returns the part of the members in which the limit is not known to be
// broken. NaN for no members.
func (o Odds) Most() float64 { return float64(o.Met+o.Unknown) / float64(o.Met+o.Broken+o.Unknown) }

func (o *Odds) count(s State) {
	switch s {
	case Met:
		o.Met++
	case Broken:
		o.Broken++
	default:
		o.Unknown++
	}
}

// A Range is a number over the members of a forecast in which it is known: the
// least, the one in the middle, and the greatest; NaN when it is known in none.
type Range struct {
	Low, Middle, High float64
	Known             int // members
}

// rangeOf sorts xs. Half way between the two in the middle of an even number.
func rangeOf(xs []float64) Range {
	xs = slices.DeleteFunc(xs, func(x float64) bool { return x != x })
	n := len(xs)
	if n == 0 {
		nan := math.NaN()
		return Range{nan, nan, nan, 0}
	}
	slices.Sort(xs)
	return Range{xs[0], (xs[(n-1)/2] + xs[n/2]) / 2, xs[n-1], n}
}

// rank makes the ranking of a search that is done.
func rank(s *search) *Ranking {
	r := &Ranking{search: s, departs: s.Departures}
	for x := range ruleCount {
		if _, asked := s.limits[x].Get(); asked {
			r.asked = append(r.asked, x)
		}
	}
	return r
}

// Len is the number of runs and departures.
func (r *Ranking) Len() int { return len(r.search.Runs) * len(r.departs) }

// Best returns the first n of all runs and departures in an order, or all when
// there are fewer: those first that keep all limits in the most members, then
// those that break one in the fewest; among equals what the order says decides,
// by the middle over the members in which it is known to matter: a margin or a
// ride that is unknown in half of them counts as the worst. Then the run that was
// named first, and the earlier departure.
func (r *Ranking) Best(by Order, n int) []Prospect {
	keys := make([]rankKey, 0, r.Len())
	scratch := make([]float64, 0, len(r.search.Days))
	for run := range r.search.Runs {
		for d := range r.departs {
			keys = append(keys, r.key(run, d, scratch))
		}
	}
	slices.SortFunc(keys, func(a, b rankKey) int { return a.compare(b, by) })
	out := make([]Prospect, 0, min(max(n, 0), len(keys)))
	for _, k := range keys[:cap(out)] {
		out = append(out, r.prospect(k.run, k.depart))
	}
	return out
}

// A rankKey is what decides about one run and departure.
type rankKey struct {
	run, depart    int
	at             time.Time
	met, broken    int
	margin, riding float64
}

func (a rankKey) compare(b rankKey, by Order) int {
	order := []int{cmp.Compare(b.margin, a.margin), cmp.Compare(b.riding, a.riding)}
	if by == ByRide {
		slices.Reverse(order)
	}
	return cmp.Or(cmp.Compare(b.met, a.met), cmp.Compare(a.broken, b.broken), order[0], order[1],
		cmp.Compare(a.run, b.run), a.at.Compare(b.at), cmp.Compare(a.depart, b.depart))
}

func (r *Ranking) key(run, depart int, scratch []float64) rankKey {
	k := rankKey{run: run, depart: depart, at: r.departs[depart]}
	for m := range r.search.Days {
		x := r.kept(run, m, depart)
		switch x.state {
		case Met:
			k.met++
		case Broken:
			k.broken++
		}
	}
	// cmp.Compare puts NaN below everything.
	k.margin = r.lowMiddle(run, depart, scratch, func(x *kept) float32 { return x.margin })
	k.riding = r.lowMiddle(run, depart, scratch, func(x *kept) float32 { return x.rideable })
	return k
}

// lowMiddle is the middle with unknowns counted as the worst.
func (r *Ranking) lowMiddle(run, depart int, xs []float64, of func(*kept) float32) float64 {
	for m := range r.search.Days {
		xs = append(xs, float64(of(r.kept(run, m, depart))))
	}
	slices.Sort(xs) // NaN first
	return xs[(len(xs)-1)/2]
}

func (r *Ranking) kept(run, member, depart int) *kept {
	return &r.search.kept[(run*len(r.search.Days)+member)*len(r.departs)+depart]
}

// Prospect returns what is to be said of a departure on a run.
//
// The error wraps ErrInput for a run or a departure that was not searched.
func (r *Ranking) Prospect(run int, depart time.Time) (Prospect, error) {
	d, err := r.index(run, 0, depart)
	if err != nil {
		return Prospect{}, err
	}
	return r.prospect(run, d), nil
}

func (r *Ranking) index(run, member int, depart time.Time) (int, error) {
	d := slices.IndexFunc(r.departs, depart.Equal)
	switch {
	case run < 0 || run >= len(r.search.Runs):
		return 0, inputError("run", run, fmt.Sprintf("0 to %d", len(r.search.Runs)-1))
	case member < 0 || member >= len(r.search.Days):
		return 0, inputError("member", member, fmt.Sprintf("0 to %d", len(r.search.Days)-1))
	case d < 0:
		return 0, inputError("departure", depart.Format(time.RFC3339), "one that was searched")
	}
	return d, nil
}

func (r *Ranking) prospect(run, depart int) Prospect {
	p := Prospect{Run: run, Depart: r.departs[depart], Limits: make([]Odds, len(r.asked))}
	n := len(r.search.Days)
	columns := [5][]float64{}
	var closest [ruleCount]int
	for m := range n {
		k := r.kept(run, m, depart)
		p.All.count(k.state)
		for i, x := range r.asked {
			p.Limits[i].Rule = x
			p.Limits[i].count(k.of(x))
		}
		if k.arrival == k.arrival {
			p.Arrives++
		}
		closest[k.closest]++
		for i, x := range []float32{k.margin, k.rideable, k.arrival, k.early, k.late} {
			columns[i] = append(columns[i], float64(x))
		}
	}
	for x := range ruleCount {
		if closest[x] > closest[p.Closest] {
			p.Closest = x
		}
	}
	for i, to := range []*Range{&p.Margin, &p.Rideable, &p.Duration, &p.Early, &p.Late} {
		*to = rangeOf(columns[i])
	}
	return p
}

// Lost returns the limits that are not met in every member, those first that
// are met in the fewest.
func (p Prospect) Lost() []Odds {
	lost := slices.DeleteFunc(slices.Clone(p.Limits), func(o Odds) bool { return o.Broken+o.Unknown == 0 })
	slices.SortStableFunc(lost, func(a, b Odds) int {
		return cmp.Or(cmp.Compare(a.Met, b.Met), cmp.Compare(b.Broken, a.Broken))
	})
	return lost
}

// Why says in words why one prospect ranks behind another: the limits that it
// does not keep where the other does, or what decides between the two when both
// keep as many.
func (p Prospect) Why(better Prospect) string {
	n := p.All.Met + p.All.Broken + p.All.Unknown
	var parts []string
	if p.All.Met != better.All.Met || p.All.Broken != better.All.Broken {
		parts = append(parts, fmt.Sprintf("within all limits in %d of %d forecasts, not %d", p.All.Met, n, better.All.Met))
		for _, o := range p.Lost() {
			parts = append(parts, o.words())
		}
		if p.Arrives < n {
			parts = append(parts, fmt.Sprintf("does not arrive in %d", n-p.Arrives))
		}
		return strings.Join(parts, "; ")
	}
	if p.Margin.Middle != better.Margin.Middle {
		parts = append(parts, fmt.Sprintf("%.2g comfortable steps inside the closest limit (%s), not %.2g",
			p.Margin.Middle, p.Closest.Words(), better.Margin.Middle))
	}
	if p.Rideable.Middle != better.Rideable.Middle {
		parts = append(parts, fmt.Sprintf("%.0f %% of waves rideable, not %.0f %%", 100*p.Rideable.Middle, 100*better.Rideable.Middle))
	}
	if parts == nil {
		return "equal; named later, or leaves later"
	}
	return strings.Join(parts, "; ")
}

// words says how often a limit is lost.
func (o Odds) words() string {
	s := o.Rule.Words() + ":"
	if o.Broken > 0 {
		s += fmt.Sprintf(" broken in %d", o.Broken)
	}
	if o.Unknown > 0 {
		if o.Broken > 0 {
			s += ","
		}
		s += fmt.Sprintf(" unknown in %d", o.Unknown)
	}
	return s
}

// Appraise makes the appraisal of one departure in one member again, with its
// findings.
//
// The error wraps ErrInput for a run, member or departure that was not searched.
func (r *Ranking) Appraise(run, member int, depart time.Time) (Appraisal, error) {
	if _, err := r.index(run, member, depart); err != nil {
		return Appraisal{}, err
	}
	w, err := r.again(run, member, new(grid))
	if err != nil {
		return Appraisal{}, err
	}
	return w.Appraise(depart)
}

// Water prepares the water of a run in a member again, whole, for timelines,
// ways out and all else that a Water answers.
//
// The error wraps ErrInput for a run or member that was not searched.
func (r *Ranking) Water(run, member int) (*Water, error) {
	if _, err := r.index(run, member, r.departs[0]); err != nil {
		return nil, err
	}
	c := &r.search.Runs[run]
	crew := *r.search.crew
	crew.regroup = slices.DeleteFunc(slices.Clone(crew.regroup), func(x float64) bool { return !(x < c.Run.Length()) })
	return assemble(c.Run, c.day(r.search.Days[member]), &crew, r.search.options)
}

// again prepares the water of a run in a member as the search did.
func (r *Ranking) again(run, member int, g *grid) (*Water, error) {
	one := &search{Choices: r.search.Choices, crew: r.search.crew, options: r.search.options, sites: make([]site, len(r.search.Runs))}
	return one.water(run, member, g)
}
