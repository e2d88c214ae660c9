package route

import (
	"errors"
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/angle"
	"followingsea.example/internal/clock"
)

// Value is a number that may be unknown. The zero Value is unknown: a field
// that nobody filled in is never mistaken for a zero.
type Value struct {
	v     float64
	known bool
}

// Known returns the Value of a number. NaN and infinities are unknown.
func Known(x float64) Value {
	if !finite(x) {
		return Value{}
	}
	return Value{x, true}
}

// Get returns the number and whether it is known; NaN if it is not.
func (v Value) Get() (x float64, known bool) {
	if !v.known {
		return math.NaN(), false
	}
	return v.v, true
}

// String returns the number in its shortest form, or "unknown".
func (v Value) String() string {
	if !v.known {
		return "unknown"
	}
	return fmt.Sprint(v.v)
}

// Limit is one condition for landing. The zero Limit was not given: nobody
// knows whether there is one, so what it asks about is unknown. [NoLimit] says
// that there is none, which is something to know.
type Limit struct {
	v    float64
	kind limitKind
}

type limitKind uint8

const (
	notGiven limitKind = iota
	unlimited
	limited
)

// NoLimit is the Limit of a landing that has no such condition.
func NoLimit() Limit { return Limit{kind: unlimited} }

// LimitOf returns the Limit of a number. NaN and infinities are not given.
func LimitOf(x float64) Limit {
	if !finite(x) {
		return Limit{}
	}
	return Limit{x, limited}
}

// Given reports whether the condition was given at all, as a number or as none.
func (l Limit) Given() bool { return l.kind != notGiven }

// Get returns the number, and whether there is one; NaN if not.
func (l Limit) Get() (x float64, ok bool) {
	if l.kind != limited {
		return math.NaN(), false
	}
	return l.v, true
}

// String returns the number in its shortest form, "none" or "not given".
func (l Limit) String() string {
	switch l.kind {
	case limited:
		return fmt.Sprint(l.v)
	case unlimited:
		return "none"
	}
	return "not given"
}

// Hours says when an exit may be used.
type Hours uint8

// The zero Hours was not given.
const (
	HoursNotGiven Hours = iota
	AnyHour             // by night as well
	DaylightOnly
)

// String returns "not given", "any hour" or "daylight only".
func (h Hours) String() string {
	switch h {
	case AnyHour:
		return "any hour"
	case DaylightOnly:
		return "daylight only"
	}
	return "not given"
}

// Exit is a place where a board can leave the water, with the conditions on
// which it can. A condition that was not given makes the landing unknown, not
// open: a beach that nobody asked about is not a beach without surf.
type Exit struct {
	Name  string
	Point Point
	Note  string

	Charted         Value // m, charted depth over the approach; negative where it dries
	LeastDepth      Limit // m of water over the approach, no less
	GreatestBreaker Limit // m of breaking waves, no more
	Seaward         Limit // degrees toward which the landing is open to the sea
	Hours           Hours
	GreatestStream  Limit // m/s past the landing, no more
}

// landward is how far off its seaward bearing a landing can be approached,
// degrees: a third of the circle is behind the beach.
const landward = 120.0

// At is the state of an exit at an hour, as far as it is known.
type At struct {
	Depth   Value // m of water over the approach
	Breaker Value // m, height of breaking waves
	Stream  Value // m/s past the landing
	Light   Light
}

// Light says whether it is light.
type Light uint8

// The zero Light is unknown.
const (
	LightUnknown Light = iota
	LightDay
	LightDark
)

// State is what can be said about getting out at an exit.
type State uint8

// The states in order of worth. The zero State is Unknown.
const (
	Unknown    State = iota // reachable, as far as is known, but something is not known
	OutOfReach              // not reached
	Broken                  // reached, with a landing condition broken
	Landable                // reached, every condition met
)

// String returns the state in words.
func (s State) String() string {
	switch s {
	case OutOfReach:
		return "out of reach"
	case Broken:
		return "reachable, a landing condition broken"
	case Landable:
		return "reachable and landable"
	}
	return "unknown"
}

// Landing compares an exit with its state at one hour, approached on a
// track over ground in degrees; NaN leaves the approach out. It returns
// Landable, Broken or Unknown, and a reason for each condition that is not met
// or not known. A condition broken outweighs any number that are unknown.
func (e Exit) Landing(at At, track float64) (State, []string) {
	var why []string
	state := Landable
	broken := func(format string, args ...any) {
		state = Broken
		why = append(why, fmt.Sprintf(format, args...))
	}
	unknown := func(format string, args ...any) {
		if state != Broken {
			state = Unknown
		}
		why = append(why, fmt.Sprintf(format, args...))
	}
	least := func(name string, l Limit, v Value, unit string, sign float64) {
		limit, ok := l.Get()
		x, known := v.Get()
		switch {
		case !l.Given():
			unknown("%s: no condition given", name)
		case !ok:
		case !known || sign < 0 && x < 0: // no wave and no stream is negative
			unknown("%s: not known, limit %.3g %s", name, limit, unit)
		case sign > 0 && !(x >= limit):
			broken("%s %.2g %s, least %.3g", name, x, unit, limit)
		case sign < 0 && !(x <= limit):
			broken("%s %.2g %s, greatest %.3g", name, x, unit, limit)
		}
	}
	least("depth", e.LeastDepth, at.Depth, "m", 1)
	least("breakers", e.GreatestBreaker, at.Breaker, "m", -1)
	least("stream", e.GreatestStream, at.Stream, "m/s", -1)
	switch {
	case e.Hours == HoursNotGiven:
		unknown("hours: no condition given")
	case e.Hours == DaylightOnly && at.Light == LightUnknown:
		unknown("light: not known, daylight only")
	case e.Hours == DaylightOnly && at.Light != LightDay:
		broken("dark, daylight only")
	}
	switch sea, ok := e.Seaward.Get(); {
	case !e.Seaward.Given():
		unknown("seaward bearing: not given")
	case ok && !math.IsNaN(track):
		if off := math.Abs(angle.Diff(sea, track+180)); !(off <= landward) {
			broken("approached on %03.0f from behind the shore, which faces %03.0f", angle.Wrap(track), angle.Wrap(sea))
		}
	}
	return state, why
}

// Onshore resolves a wind, or waves, at the landing: how much goes straight in
// from the sea, and how much along it to the right of a look at the land. NaN
// unless the seaward bearing is known.
func (e Exit) Onshore(wind Velocity) (onshore, along float64) {
	sea, ok := e.Seaward.Get()
	if !ok {
		return math.NaN(), math.NaN()
	}
	return wind.Resolve(angle.Wrap(sea + 180))
}

// Check returns nil for an exit with a name, a position and limits in range,
// and otherwise an error that wraps [ErrInput] or [ErrPosition] and names the
// field.
func (e Exit) Check() error {
	if e.Name == "" {
		return fmt.Errorf("%w: exit at %v, %v has no name", ErrInput, e.Point.Lat, e.Point.Lon)
	}
	if err := e.Point.Check(); err != nil {
		return fmt.Errorf("exit %q: %w", e.Name, err)
	}
	for _, f := range []struct {
		name   string
		l      Limit
		lo, hi float64
	}{
		{"least depth", e.LeastDepth, 0, 100},
		{"greatest breaker", e.GreatestBreaker, 0, 30},
		{"seaward", e.Seaward, 0, 360},
		{"greatest stream", e.GreatestStream, 0, 20},
	} {
		if x, ok := f.l.Get(); ok && !(x >= f.lo && x <= f.hi) {
			return fmt.Errorf("%w: exit %q: %s: %v is outside %v to %v", ErrInput, e.Name, f.name, x, f.lo, f.hi)
		}
	}
	if x, ok := e.Charted.Get(); ok && !(x >= highestDrying && x <= 1000) {
		return fmt.Errorf("%w: exit %q: charted depth: %v m is outside %v to 1000", ErrInput, e.Name, x, highestDrying)
	}
	if e.Hours > DaylightOnly {
		return fmt.Errorf("%w: exit %q: hours %d", ErrInput, e.Name, e.Hours)
	}
	return nil
}

// Field is a wind or a stream over ground in time and space. It returns NaN
// where it is not known.
type Field func(t time.Time, p Point) Velocity

// Steady returns the Field that is v always and everywhere.
func Steady(v Velocity) Field { return func(time.Time, Point) Velocity { return v } }

// Escape is the question from where, when and how to get out.
type Escape struct {
	From    Point
	Time    time.Time
	Posture Posture

	// Way is the velocity through the water; nil is Posture.Way. The default
	// Posture, the zero value, is Standing(1.8): no question is ever answered
	// with a speed that no wind slows.
	Way Way

	Wind, Stream Field                        // over ground; nil is unknown
	At           func(e Exit, t time.Time) At // the state of an exit; nil is unknown
	Coast        *Coast                       // land in the way; nil is unknown

	// Latest is when the board must be out. The zero Time sets no end.
	Latest time.Time
}

const (
	// escapeStep is the step in which a way out is followed; streams and
	// winds change by the hour.
	escapeStep = 300.0   // seconds
	escapeLast = 86400.0 // seconds after which no exit is reached
	// atHand is how near to its position an exit is reached. The same
	// distance of a straight line is free at both ends of shore that the
	// coastline was drawn too coarsely to leave out.
	atHand = 150.0 // metres
	// sideways is the sine of 15 degrees, by which a surf board with a person
	// diverges from downwind in the leeway table.
	sideways = 0.2588190451025207
)

// Out is the answer for one exit.
type Out struct {
	Exit     Exit
	State    State
	Why      []string // reasons, for every state but Landable
	Distance float64  // metres, straight
	Track    float64  // degrees over ground
	Heading  float64  // degrees to steer at the start; NaN for none
	Seconds  float64  // to arrival; NaN if not reached
	Arrival  time.Time
}

// Reach returns what can be said about one exit: the straight way to it,
// held against wind and stream step by step with the speed of the posture,
// until it is reached or until endurance or the latest hour ends it; and then
// whether the board can land there at that hour.
//
// A posture without speed is carried by the stream and the wind, to within 15
// degrees either side of downwind, the published divergence of a surf board
// with a person. It reaches an exit if every path of that cone passes within
// 150 m of it; if only some do, the answer is [Unknown]. It is given up once it
// is farther off than four times the nearest it has been and a kilometre: a tide
// that would bring it back hours later is not waited for. For the odds of a
// drift use [Drifter].
//
// The conservative side of what is missing: an unknown wind, stream, coast or
// state of the exit makes the answer [Unknown], with the reason. The default
// speed is a stated prior; its spread is in [Standing].
//
// The error wraps [ErrInput] or [ErrPosition] for a question that cannot be
// asked.
func (q Escape) Reach(e Exit) (Out, error) {
	if err := q.check(); err != nil {
		return Out{}, err
	}
	if err := e.Check(); err != nil {
		return Out{}, err
	}
	return q.reach(e)
}

// Exits returns the answer for every exit, in their order.
func (q Escape) Exits(exits []Exit) ([]Out, error) {
	outs := make([]Out, 0, len(exits))
	for _, e := range exits {
		o, err := q.Reach(e)
		if err != nil {
			return nil, err
		}
		outs = append(outs, o)
	}
	return outs, nil
}

func (q *Escape) check() error {
	if err := q.From.Check(); err != nil {
		return fmt.Errorf("from: %w", err)
	}
	if q.Time.IsZero() {
		return fmt.Errorf("%w: no time", ErrInput)
	}
	if q.Posture == (Posture{}) {
		q.Posture = Standing(1.8)
	}
	if err := q.Posture.Check(); err != nil {
		return err
	}
	if q.Way == nil {
		q.Way = q.Posture.Way
	}
	return nil
}

func (q *Escape) reach(e Exit) (Out, error) {
	o := Out{Exit: e, State: Landable, Heading: math.NaN(), Seconds: math.NaN()}
	leg := Inverse(q.From, e.Point)
	o.Distance, o.Track = leg.Distance, leg.Course
	end := q.Posture.Endurance
	endWhy := fmt.Sprintf("%s can be kept up for %s", q.Posture.Name, minutes(end))
	if !q.Latest.IsZero() {
		if left := clock.Seconds(q.Time, q.Latest); !(left >= end) {
			end, endWhy = left, "the latest hour is "+q.Latest.Format("15:04")
		}
	}
	if !(end <= escapeLast) {
		end, endWhy = escapeLast, "a day is over"
	}
	if q.Wind == nil || q.Stream == nil {
		o.State = Unknown
		if q.Wind == nil {
			o.Why = append(o.Why, "wind: not known")
		}
		if q.Stream == nil {
			o.Why = append(o.Why, "stream: not known")
		}
		return o, nil
	}
	var track float64
	var err error
	switch {
	case o.Distance <= atHand:
		o.Seconds, track = 0, math.NaN()
		if !(end >= 0) {
			o.Seconds = math.NaN()
			o.State, o.Why = OutOfReach, append(o.Why, endWhy)
		}
	case q.Posture.Speed == 0:
		track, err = q.drift(&o, end, endWhy)
	default:
		track, err = q.paddle(&o, leg, end, endWhy)
	}
	if err != nil || o.State == OutOfReach || math.IsNaN(o.Seconds) {
		return o, err
	}
	if o.Arrival, err = clock.After(q.Time, o.Seconds); err != nil {
		return Out{}, err
	}
	var at At
	if q.At != nil {
		at = q.At(e, o.Arrival)
	}
	state, why := e.Landing(at, track)
	if o.State == Landable { // not known to be reached is not known to be either
		o.State = state
	}
	o.Why = append(o.Why, why...)
	return o, nil
}

// minutes prints seconds for a reason.
func minutes(s float64) string {
	if math.IsInf(s, 1) {
		return "any time"
	}
	return fmt.Sprintf("%.0f min", s/60)
}

// lost settles an answer whose wind, stream or way is NaN.
func (o *Out) lost(err error) {
	o.State, o.Seconds = Unknown, math.NaN()
	o.Why = append(o.Why, err.Error())
}

// paddle holds the straight way to the exit.
func (q *Escape) paddle(o *Out, leg Leg, end float64, endWhy string) (float64, error) {
	if err := q.inTheWay(o, leg); err != nil {
		return 0, err
	}
	if o.State == OutOfReach {
		return 0, nil
	}
	gone, elapsed := 0.0, 0.0
	p, track := q.From, leg.Course
	guess := math.NaN()
	for {
		t, err := clock.After(q.Time, elapsed)
		if err != nil {
			return 0, err
		}
		c, err := holdCourse(q.Way, track, q.Wind(t, p), q.Stream(t, p), guess)
		switch {
		case errors.Is(err, ErrInput):
			o.lost(err)
			return 0, nil
		case err != nil:
			o.State = OutOfReach
			o.Why = append(o.Why, fmt.Sprintf("after %s, %.1f km short: %v", minutes(elapsed), (leg.Distance-gone)/1000, err))
			return 0, nil
		}
		if elapsed == 0 {
			o.Heading = c.Heading
		}
		guess = c.Heading
		step := min(escapeStep, end-elapsed)
		if left := (leg.Distance - gone) / c.Made; left <= step {
			o.Seconds = elapsed + left
			return track, nil
		}
		gone += c.Made * step
		elapsed += step
		if !(elapsed < end) {
			o.State = OutOfReach
			o.Why = append(o.Why, fmt.Sprintf("%.1f km short: %s", (leg.Distance-gone)/1000, endWhy))
			return 0, nil
		}
		p = leg.At(gone)
		track = Inverse(p, leg.To).Course
	}
}

// drift is carried to where the exit is nearest. Leeway goes up to diverges
// degrees to either side of downwind, so by then the board is anywhere in a
// cone: an exit all of the cone is at hand of is reached, one that none of it
// is at hand of is not, and between the two nobody knows.
func (q *Escape) drift(o *Out, end float64, endWhy string) (track float64, err error) {
	p, elapsed, blown := q.From, 0.0, 0.0
	near, best, cone := o.Distance, 0.0, 0.0
	ashore, past := false, false
	for elapsed < end && !ashore && !past {
		t, err := clock.After(q.Time, elapsed)
		if err != nil {
			return 0, err
		}
		wind, stream := q.Wind(t, p), q.Stream(t, p)
		way := q.Way(0, wind.Sub(stream))
		v := way.Add(stream)
		speed := v.Speed()
		if !finite(speed) {
			o.lost(fmt.Errorf("%w: wind %v, stream %v", ErrInput, wind, stream))
			return 0, nil
		}
		step := min(escapeStep, end-elapsed)
		if speed < 1e-3 { // it lies where it is until the wind or the stream sets in
			elapsed += step
			continue
		}
		leg := Direct(p, v.Toward(), speed*step)
		var clear float64
		if clear, ashore, err = q.ashore(o, leg); err != nil {
			return 0, err
		}
		// Nearest on this step, on the plane of the step, and before the shore.
		to := Inverse(p, o.Exit.Point)
		_, ahead := sincosd(to.Course - leg.Course)
		along := min(max(to.Distance*ahead, 0), clear)
		if d := Inverse(leg.At(along), o.Exit.Point).Distance; d < near {
			near, best, track = d, elapsed+along/speed, leg.Course
			cone = (blown + way.Speed()*along/speed) * sideways
		}
		blown += way.Speed() * step
		p, elapsed = leg.To, elapsed+step
		past = along < leg.Distance && (near <= atHand || to.Distance > 4*near+1000)
	}
	switch {
	case near+cone <= atHand:
		o.Seconds = best
		if o.State == OutOfReach { // ashore after it
			o.State, o.Why = Landable, nil
		}
		return track, nil
	case near-cone <= atHand:
		o.Seconds, o.State = best, Unknown
		o.Why = append(o.Why, fmt.Sprintf("adrift, passes %.1f km off after %s, give or take %.1f km of leeway to either side", near/1000, minutes(best), cone/1000))
		return track, nil
	}
	o.State = OutOfReach
	o.Why = append(o.Why, fmt.Sprintf("adrift, passes %.1f km off after %s", near/1000, minutes(best)))
	if elapsed >= end {
		o.Why = append(o.Why, endWhy)
	}
	return 0, nil
}

// inTheWay marks an exit behind land. A hand's breadth of shore is free at
// both ends of the line.
func (q *Escape) inTheWay(o *Out, leg Leg) error {
	if q.noCoast(o) || leg.Distance <= 2*atHand {
		return nil
	}
	x, err := q.Coast.Crosses(leg.At(atHand), leg.At(leg.Distance-atHand))
	if err != nil {
		return err
	}
	if x.Land {
		o.State = OutOfReach
		o.Why = append(o.Why, fmt.Sprintf("land in the way at %.5f, %.5f", x.Point.Lat, x.Point.Lon))
	}
	return nil
}

// ashore reports whether one step of a drift ends on the shore, away from
// where it began, and how many metres of the step are clear of it. Shore that
// is not at the exit itself puts the exit out of reach.
func (q *Escape) ashore(o *Out, leg Leg) (clear float64, ashore bool, err error) {
	if q.noCoast(o) {
		return leg.Distance, false, nil
	}
	if Inverse(q.From, leg.To).Distance <= atHand {
		return leg.Distance, false, nil
	}
	x, err := q.Coast.Crosses(leg.From, leg.To)
	if err != nil || !x.Land {
		return leg.Distance, false, err
	}
	if Inverse(x.Point, o.Exit.Point).Distance > atHand {
		o.State = OutOfReach
		o.Why = append(o.Why, fmt.Sprintf("adrift, ashore at %.5f, %.5f", x.Point.Lat, x.Point.Lon))
	}
	return x.Distance, true, nil
}

// noCoast marks an answer for which nobody knows the land.
func (q *Escape) noCoast(o *Out) bool {
	if q.Coast == nil && o.State != Unknown {
		o.State = Unknown
		o.Why = append(o.Why, "coast: not known, land may lie in the way")
	}
	return q.Coast == nil
}

// Gap is a stretch of a run on which no exit is open.
type Gap struct {
	From, To float64 // metres along the run
	Start    time.Time
	End      time.Time
	Unknown  bool // somewhere on it an exit is unknown rather than shut
}

// Pace is where a board is on a run: the time after its departure at which it
// is so many metres along, in seconds. It must not decrease.
type Pace func(distance float64) (seconds float64)

// Gaps walks a run in steps of every metres and returns the stretches on
// which none of the exits is [Landable], from the question q asked with the
// positions and the times of the run. An unknown exit is not open.
//
// A gap runs from the last place before it where an exit is open to the first
// after it, so that it is never shorter than the truth by a step.
//
// The error wraps [ErrInput] or [ErrPosition].
func Gaps(points []Point, exits []Exit, q Escape, pace Pace, every float64) ([]Gap, error) {
	path, err := NewPath(points...)
	if err != nil {
		return nil, err
	}
	if !(every > 0 && finite(every)) {
		return nil, fmt.Errorf("%w: step of %v m is not positive", ErrInput, every)
	}
	if pace == nil {
		panic("route: Gaps: nil pace")
	}
	length := path.Length()
	steps := math.Ceil(length / every)
	if !(steps <= 100000) {
		return nil, fmt.Errorf("%w: %.0f steps of %v m, of at most 100000", ErrInput, steps, every)
	}
	start := q.Time
	var gaps []Gap
	var open bool
	last, lastTime := 0.0, start
	for i := 0; i <= int(steps); i++ {
		x := min(float64(i)*every, length)
		t, err := clock.After(start, pace(x))
		if err != nil {
			return nil, fmt.Errorf("pace at %.0f m: %w", x, err)
		}
		q.Time = t
		q.From, _ = path.At(x)
		shut, unknown := true, false
		for _, e := range exits {
			o, err := q.Reach(e)
			if err != nil {
				return nil, err
			}
			if o.State == Landable {
				shut = false
				break
			}
			unknown = unknown || o.State == Unknown
		}
		switch {
		case shut && !open:
			gaps = append(gaps, Gap{From: last, To: x, Start: lastTime, End: t, Unknown: unknown})
			open = true
		case shut || open: // in a gap, or the first place after it
			g := &gaps[len(gaps)-1]
			g.To, g.End = x, t
			g.Unknown = g.Unknown || shut && unknown
			open = shut
		}
		last, lastTime = x, t
	}
	return gaps, nil
}
