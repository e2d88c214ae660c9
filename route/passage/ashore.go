package passage

import (
	"fmt"
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/route"
)

// An Ashore is the plan that is left with somebody ashore: what the paddlers
// say of themselves and what the water says of the passage. [WriteAshore]
// prints it, [Ashore.Event] makes a calendar entry of it.
type Ashore struct {
	Form
	Made     time.Time // when the plan was made
	Run      string    // name of the run
	LaunchAt route.Point
	FinishAt route.Point
	Start    time.Time
	Expected time.Time // zero when the passage does not arrive on what is known
	Latest   time.Time // the slow case, rounded up to five minutes; zero when it does not arrive
	Alarm    time.Time // Latest and the grace; zero when there is no Latest
	Ends     string    // why the passage does not arrive
	Legs     []Leg
	Exits    []route.Exit
	Findings []Finding // for the limits the paddler set
	Dusk     time.Time // end of civil twilight at the finish; zero when there is none
	Placing  Shuttle   // of the vehicle
}

// Ashore makes the plan to be left ashore for a departure. The latest finish is
// that of the slow case, rounded up to five minutes; the alarm time is the
// latest finish and the grace that was agreed (half an hour, a rule of the
// trade without a source, when none was). A passage whose slow case does not
// arrive has neither, and its plan says so.
//
// Errors wrap [ErrInput]: those of [Form.Check], or a departure outside the
// prepared time.
func (w *Water) Ashore(depart time.Time, form Form, made time.Time) (Ashore, error) {
	if err := form.Check(); err != nil {
		return Ashore{}, err
	}
	a, err := w.Appraise(depart)
	if err != nil {
		return Ashore{}, err
	}
	p := Ashore{
		Form: form, Made: made, Run: w.run.Name, LaunchAt: w.run.Points[0], FinishAt: w.run.Points[len(w.run.Points)-1],
		Start: depart, Expected: a.Arrival, Ends: a.Ends, Exits: w.run.Exits, Findings: a.Findings,
	}
	if p.Legs, err = w.Timeline(depart); err != nil {
		return Ashore{}, err
	}
	if p.Placing, err = w.Shuttle(depart, form.Shuttle*60); err != nil {
		return Ashore{}, err
	}
	if !a.Late.IsZero() && !a.Arrival.IsZero() {
		p.Latest = upTo(a.Late, 5*time.Minute)
		if p.Alarm, err = clock.After(p.Latest, form.grace()); err != nil {
			return Ashore{}, err
		}
	} else if p.Ends == "" {
		p.Ends = "the slow case does not arrive on what is known"
	}
	_, p.Dusk = w.Light(depart)
	return p, nil
}

// upTo rounds an instant up to a whole span.
func upTo(t time.Time, span time.Duration) time.Time {
	if r := t.Truncate(span); r.Before(t) {
		return r.Add(span)
	}
	return t.Truncate(span)
}

// A Shuttle is the time ashore that it takes to have a vehicle at the finish.
type Shuttle struct {
	Straight float64   // m, in a straight line from launch to finish: no road, and no time
	Seconds  Value     // the time the paddlers say it takes; unknown when they did not say
	Leave    time.Time // when to begin with it at the latest; zero when Seconds is unknown
}

// Shuttle returns when to begin placing the vehicle so that the departure is
// kept, from the time in seconds that the paddlers say it takes; 0 is not
// said. A straight line is not a road, and a road is not the traffic on it: no
// time is worked out from the distance.
//
// Errors wrap [ErrInput] for a time that is negative, over a day or not a
// number.
func (w *Water) Shuttle(depart time.Time, seconds float64) (Shuttle, error) {
	if !(seconds >= 0 && seconds <= 86400) {
		return Shuttle{}, inputError("time to place the vehicle", seconds, "0 to 86400 s")
	}
	s := Shuttle{Straight: route.Inverse(w.run.Points[0], w.run.Points[len(w.run.Points)-1]).Distance}
	if seconds == 0 {
		return s, nil
	}
	s.Seconds = Known(seconds)
	var err error
	s.Leave, err = clock.After(depart, -seconds)
	return s, err
}

// Persons returns how many people the plan names, the leader among them; 0
// when nobody is named.
func (a Ashore) Persons() int {
	n := 0
	for _, p := range append([]Person{a.Leader}, a.People...) {
		if p.Name != "" {
			n++
		}
	}
	return n
}

// Event makes the calendar entry of a plan, with the whole plan as its
// description in the zone's times and what to do at the alarm as the words of
// the alarm. The identifier, its version and the time of making are the
// caller's.
//
// Errors wrap [ErrInput]: a plan without an alarm time has no entry; or those
// of [Event.Check].
func (a Ashore) Event(uid string, sequence int, stamp time.Time, zone *time.Location) (Event, error) {
	if a.Alarm.IsZero() {
		return Event{}, inputError("alarm", "unknown", "a passage that arrives in the slow case: "+a.Ends)
	}
	text, err := a.text(zone)
	if err != nil {
		return Event{}, err
	}
	e := Event{
		UID: uid, Sequence: sequence, Stamp: stamp.UTC().Truncate(time.Second), Start: a.Start.UTC().Truncate(time.Second),
		Finish: a.Expected.UTC().Truncate(time.Second), Alarm: a.Alarm.UTC().Truncate(time.Second),
		Summary: plain("On the water: " + or(a.Run, "a run")), Description: text, Location: plain(a.Launch),
		Overdue: plain(fmt.Sprintf("OVERDUE: not back by %s. Try their telephones, look for the vehicle, then call the rescue authority %s and read out the plan.",
			when(a.Latest, zone), or(a.Authority.Phone, blank))),
		At: printed(a.LaunchAt), HasAt: true,
	}
	return e, e.Check()
}

// position writes a position in degrees and decimal minutes, to a thousandth,
// as sets print it and as it is said.
func position(p route.Point) string {
	if p.Check() != nil {
		return blank
	}
	side := func(x float64, digits int, plus, minus string) string {
		s := plus
		if x < 0 {
			s, x = minus, -x
		}
		m := int64(math.Round(x * 60000)) // thousandths of a minute: 59.9996 carries into the degrees
		return fmt.Sprintf("%0*d %02d.%03d %s", digits, m/60000, m/1000%60, m%1000, s)
	}
	lon := math.Remainder(p.Lon, 360)
	return side(p.Lat, 2, "N", "S") + "  " + side(lon, 3, "E", "W")
}
