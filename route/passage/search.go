package passage

import (
	"context"
	"fmt"
	"reflect"
	"runtime"
	"slices"
	"sync"
	"sync/atomic"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// Choices are what there is to choose from: runs, departures, and the forecasts
// that may come true.
type Choices struct {
	Runs       []Candidate
	Days       []Day // one for each member of the forecast, held equally likely; one for a forecast without members
	Departures []time.Time
	Party      Party // one paddler or more; where they regroup does not matter here

	Options  Options               // of Prepare; From and To are those of the departures
	Workers  int                   // that work at the same time; 0: one for each processor
	Progress func(done, total int) // told of appraisals done, one call at a time; nil for nobody
}

// A Candidate is a run that may be chosen.
type Candidate struct {
	Run     route.Run
	Tide    HeightSource  // nil: that of the days
	Streams []StreamGauge // nil: those of the days
}

// mostAppraisals bounds a search: the results kept of so many take 128 MB.
const mostAppraisals = 4_000_000

// Search appraises every departure of every run in every member of the
// forecast, and ranks runs and departures.
//
// The work is shared by workers. The answer does not depend on how many there
// are: it is that of Prepare and Water.Appraise for each, to the last digit. Of
// an appraisal 32 bytes are kept; Ranking.Appraise and Ranking.Water make the
// rest again. The water of a run is prepared only where a departure comes by.
//
// When the context is done Search returns its error, within a tenth of a second.
// Other errors wrap ErrInput or are those of Prepare, and name run and member.
// The sources in days and candidates must be safe for concurrent use.
func Search(ctx context.Context, c Choices) (*Ranking, error) {
	s, err := newSearch(ctx, c)
	if err != nil {
		return nil, err
	}
	defer s.release()
	var wait sync.WaitGroup
	for range s.workers() {
		wait.Go(s.work)
	}
	wait.Wait()
	if err := s.stop(); err != nil {
		return nil, err
	}
	if s.err != nil {
		return nil, s.err
	}
	return rank(s), nil
}

// A search is a Search under way.
type search struct {
	Choices
	*crew
	options Options
	starts  []float64 // of the departures, s after the epoch
	sites   []site
	kept    []kept // by run, then member, then departure

	ctx     context.Context
	ended   atomic.Bool // the context is done
	release func() bool
	next    atomic.Int64 // the next run and member

	mu   sync.Mutex
	done int
	err  error // of the first run and member that has one
	at   int   // which that is
}

// A site is one of the runs while its members are worked on.
type site struct {
	once    sync.Once
	left    atomic.Int64 // members still to come
	survey  *survey
	layout  *layout
	tide    HeightSource
	streams []StreamGauge
	levels  []level
	flows   [][]route.Velocity
	err     error
}

func newSearch(ctx context.Context, c Choices) (*search, error) {
	c.Runs, c.Days, c.Departures = slices.Clone(c.Runs), slices.Clone(c.Days), slices.Clone(c.Departures)
	s := &search{Choices: c, ctx: ctx, options: c.Options}
	s.release = context.AfterFunc(ctx, func() { s.ended.Store(true) })
	if err := s.ready(); err != nil {
		s.release()
		return nil, err
	}
	return s, nil
}

// ready checks the choices and lays out the memory for the answer.
func (s *search) ready() error {
	if err := s.ctx.Err(); err != nil {
		return err
	}
	for _, n := range []struct {
		what string
		n    int
	}{{"runs", len(s.Runs)}, {"days", len(s.Days)}, {"departures", len(s.Departures)}} {
		if n.n == 0 || n.n > mostAppraisals {
			return inputError(n.what, n.n, fmt.Sprintf("1 to %d", mostAppraisals))
		}
	}
	if n := float64(len(s.Runs)) * float64(len(s.Days)) * float64(len(s.Departures)); n > mostAppraisals {
		return inputError("runs, days and departures", n, fmt.Sprintf("%d appraisals at most", mostAppraisals))
	}
	o := &s.options
	o.From, o.To = s.Departures[0], s.Departures[0]
	for i, t := range s.Departures {
		if t.IsZero() {
			return inputError(fmt.Sprintf("departure %d", i+1), "the zero time", "an instant")
		}
		if t.Before(o.From) {
			o.From = t
		}
		if t.After(o.To) {
			o.To = t
		}
	}
	var err error
	if *o, err = o.withDefaults(o.From, o.To); err != nil {
		return err
	}
	for i := range s.Runs {
		if err := s.Runs[i].Run.Check(); err != nil {
			return fmt.Errorf("%s: %w", s.runName(i), err)
		}
	}
	for i := range s.Days {
		if _, _, err := s.Days[i].spans(); err != nil {
			return fmt.Errorf("member %d: %w", i+1, err)
		}
	}
	if s.crew, err = newCrew(s.Party, s.stop); err != nil {
		return err
	}
	for _, t := range s.Departures {
		s.starts = append(s.starts, clock.Seconds(o.From, t))
	}
	s.sites = make([]site, len(s.Runs))
	for i := range s.sites {
		s.sites[i].left.Store(int64(len(s.Days)))
	}
	s.kept = make([]kept, len(s.Runs)*len(s.Days)*len(s.Departures))
	return nil
}

func (s *search) runName(i int) string {
	if n := s.Runs[i].Run.Name; n != "" {
		return fmt.Sprintf("run %d, %s", i+1, n)
	}
	return fmt.Sprintf("run %d", i+1)
}

func (s *search) workers() int {
	n := s.Workers
	if n <= 0 {
		n = runtime.GOMAXPROCS(0)
	}
	return min(n, len(s.Runs)*len(s.Days))
}

// stop returns the context's error once it is done.
func (s *search) stop() error {
	if s.ended.Load() {
		return s.ctx.Err()
	}
	return nil
}

// work takes runs and members in their order until there are no more. All
// that come before one that fails have been taken by then, so that the first
// error is the same however many work.
func (s *search) work() {
	var g grid // one worker's memory for nodes
	n := len(s.Runs) * len(s.Days)
	for {
		i := int(s.next.Add(1)) - 1
		if i >= n || s.stop() != nil || s.failed() {
			return
		}
		if err := s.one(i/len(s.Days), i%len(s.Days), &g); err != nil {
			s.fail(i, err)
		}
	}
}

func (s *search) failed() bool {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.err != nil
}

func (s *search) fail(i int, err error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.err == nil || i < s.at {
		s.err, s.at = fmt.Errorf("%s, member %d: %w", s.runName(i/len(s.Days)), i%len(s.Days)+1, err), i
	}
}

// one appraises every departure of one run in one member.
func (s *search) one(run, member int, g *grid) error {
	w, err := s.water(run, member, g)
	if err != nil {
		return err
	}
	out := s.kept[(run*len(s.Days)+member)*len(s.starts):][:len(s.starts)]
	var mid, slow, fast walk
	for d, start := range s.starts {
		if err := s.stop(); err != nil {
			return err
		}
		out[d] = w.keep(start, &mid, &slow, &fast)
	}
	if x := &s.sites[run]; x.left.Add(-1) == 0 { // nobody needs it any more
		x.survey, x.layout, x.levels, x.flows = nil, nil, nil, nil
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.done += len(s.starts)
	if s.Progress != nil && s.err == nil {
		s.Progress(s.done, len(s.kept))
	}
	return nil
}

// water makes the water of one run in one member ready to be filled as it is
// walked, by one goroutine.
func (s *search) water(run, member int, g *grid) (*Water, error) {
	x, c := &s.sites[run], &s.Runs[run]
	x.once.Do(func() { x.err = s.open(x, c) })
	if x.err != nil {
		return nil, x.err
	}
	w := &Water{survey: x.survey, crew: s.crew, day: c.day(s.Days[member]), layout: x.layout, grid: g}
	if winds, streams := windPlaces(&w.day), streamPlaces(&w.day); !x.layout.fits(winds, streams) {
		w.layout = x.survey.layout(winds, streams)
	}
	end := w.end()
	n := w.survey.options.instants(end)
	if w.levels = x.levels; !same(w.day.Tide, x.tide) {
		w.levels = x.survey.levels(w.day.Tide, n)
	}
	if w.flows = x.flows; !sameStreams(w.day.Streams, x.streams) {
		w.flows = x.survey.flows(w.day.Streams, n)
	}
	if err := w.raise(end, s.stop); err != nil {
		return nil, err
	}
	if w.layExits(end) {
		w.exits.fill, w.exits.has = w.exitTime, make([]bool, len(w.exits.time))
	}
	w.grid.lazily(w.node)
	return w, nil
}

// day is a member's day on the run.
func (c *Candidate) day(d Day) Day {
	if c.Tide != nil {
		d.Tide = c.Tide
	}
	if c.Streams != nil {
		d.Streams = c.Streams
	}
	return d
}

// open surveys a run and looks up what all its members are likely to share.
func (s *search) open(x *site, c *Candidate) error {
	var err error
	if x.survey, err = surveyed(c.Run, s.options, s.stop); err != nil {
		return err
	}
	d := c.day(s.Days[0])
	x.layout = x.survey.layout(windPlaces(&d), streamPlaces(&d))
	x.tide, x.streams = d.Tide, d.Streams
	n := s.options.instants(x.survey.to + longestPassage)
	x.levels, x.flows = x.survey.levels(x.tide, n), x.survey.flows(x.streams, n)
	return nil
}

// same reports whether two sources are the same one, as far as that can be
// told.
func same(a, b any) bool {
	if a == nil || b == nil {
		return a == nil && b == nil
	}
	return reflect.TypeOf(a) == reflect.TypeOf(b) && reflect.TypeOf(a).Comparable() && reflect.ValueOf(a).Comparable() && a == b
}

func sameStreams(a, b []StreamGauge) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].At != b[i].At || !same(a[i].Stream, b[i].Stream) {
			return false
		}
	}
	return true
}
