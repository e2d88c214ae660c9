package passage

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/route"
)

// aForm is a form with every field filled in.
func aForm() Form {
	return Form{
		ID: "T-7", Leader: Person{"Ada", "111", "40-49", "leads", "none"}, People: []Person{{"Bo", "222", "20-29", "second season", "asthma"}},
		Craft:    []CraftLook{{"stand-up board", 4.2, "orange", "white", "ADA 1", 2}},
		Clothing: "black suits", Flotation: "red vests", Leash: "waist, coiled", Launch: "Skarn Slip", Finish: "Ling Bar",
		Vehicle: "blue van at the bar", Plate: "XX 1234", Shuttle: 45, CallSign: "ABCD", MMSI: "123456789", Channels: "16, 72",
		Phones: "Ada's in the vest", Beacon: "B-99", Lights: "two strobes", Flares: "none", Whistle: "each",
		Sources: "coastal forecast of 06:00", Contacts: []Person{{Name: "Cy", Phone: "333"}, {Name: "Di", Phone: "444"}},
		Authority: Person{Name: "the coast station", Phone: "555"}, Grace: 40,
		CheckIns: []CheckIn{{"Tally Cove", at(2), "Cy"}}, Remarks: "new moon",
	}
}

// TestAshoreByHand: on a steady day the latest finish is the slow case rounded
// up to five minutes, the alarm the agreed minutes after it, and the vehicle is
// placed the said minutes before the start.
func TestAshoreByHand(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	p, err := w.Ashore(at(0.5), aForm(), at(-12))
	if err != nil {
		t.Fatal(err)
	}
	a := appraise(t, w, 0.5)
	m, err := w.Moment(5000, at(1))
	if err != nil {
		t.Fatal(err)
	}
	slow := 10000 / m.Slow
	if late := p.Latest.Sub(p.Start).Seconds(); !(late >= slow*0.99 && late <= slow*1.01+300) || p.Latest.Minute()%5 != 0 || p.Latest.Before(a.Late) {
		t.Errorf("latest %v after the start; the length over the slow speed is %.0f s", p.Latest.Sub(p.Start), slow)
	}
	if p.Alarm.Sub(p.Latest) != 40*time.Minute || !p.Expected.Equal(a.Arrival) || p.Persons() != 2 {
		t.Errorf("%+v", p)
	}
	if p.Placing.Leave != at(0.5).Add(-45*time.Minute) || !near(p.Placing.Straight, 10000, 1) {
		t.Errorf("%+v", p.Placing)
	}
	none := aForm()
	none.Grace, none.Shuttle = 0, 0
	if p, err = w.Ashore(at(0.5), none, at(-12)); err != nil || p.Alarm.Sub(p.Latest) != 30*time.Minute {
		t.Errorf("%v %v", p.Alarm, err)
	}
	if _, said := p.Placing.Seconds.Get(); said || !p.Placing.Leave.IsZero() {
		t.Errorf("a time to place the vehicle that nobody said: %+v", p.Placing)
	}
}

// TestAshoreText: every field of the guidance is there, in its order, as a
// value or as a blank.
func TestAshoreText(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	zone := time.FixedZone("", -2*3600)
	order := []string{"trip", "leader", "telephone", "age band", "ability", "medical", "craft", "length", "from above", "from below", "name or number",
		"clothing", "flotation", "leash", "launch", "vehicle", "plate", "start", "leg 1", "ways out", "finish", "expected finish", "latest finish",
		"ALARM TIME", "light left", "check-in", "call sign", "MMSI", "channels", "telephones", "beacon", "lights", "flares", "whistle",
		"issued", "own limits", "shore contact 1", "shore contact 2", "rescue authority", "closed at", "DISTRESS CALL", "Mayday, mayday, mayday",
		"This is", "Mayday, ", "Position", "What is wrong", "What help", "Persons", "Anything else", "Over"}
	for name, f := range map[string]Form{"full": aForm(), "empty": {}} {
		p, err := w.Ashore(at(0.5), f, at(-12))
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := WriteAshore(&b, p, zone); err != nil {
			t.Fatal(err)
		}
		text, left := b.String(), b.String()
		for _, s := range order {
			i := strings.Index(left, s)
			if i < 0 {
				t.Errorf("%s: %q is missing or out of order in\n%s", name, s, text)
				break
			}
			left = left[i+len(s):]
		}
		for _, s := range []string{"NaN", "Inf", "%!", "safe"} {
			if strings.Contains(text, s) {
				t.Errorf("%s: says %q", name, s)
			}
		}
		if blanks := strings.Count(text, blank); name == "empty" && blanks < 35 || name == "full" && blanks > 8 {
			t.Errorf("%s: %d blanks in\n%s", name, blanks, text)
		}
		if name == "full" {
			for _, s := range []string{"Sun 21 Jun 2026 06:30 UTC-02:00", "50 00.000 N  020 00.000 W", "T-7", "orange", "XX 1234", "123456789", "0:45 h, to be begun by",
				"Tally Cove", "Persons: 2", "2 x stand-up board, length 4.2 m", "2 people", "555", "wind at most 27.2 kn: met"} {
				if !strings.Contains(text, s) {
					t.Errorf("no %q in\n%s", s, text)
				}
			}
		}
	}
	p, _ := w.Ashore(at(0.5), Form{}, at(-12))
	if err := WriteAshore(&bytes.Buffer{}, p, nil); !errors.Is(err, ErrInput) {
		t.Error("a plan without a zone")
	}
}

// TestAshoreWithoutAnArrival has no alarm time and says so, and no calendar
// entry is made of it.
func TestAshoreWithoutAnArrival(t *testing.T) {
	for name, change := range worsen(t) {
		run, d, p := eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach()
		change(&run, &d, &p)
		w := prepare(t, run, d, p)
		a := appraise(t, w, 0.5)
		plan, err := w.Ashore(at(0.5), aForm(), at(-12))
		if err != nil {
			t.Fatal(name, err)
		}
		arrives := a.Arrives && !a.Late.IsZero()
		if plan.Alarm.IsZero() == arrives || plan.Latest.IsZero() == arrives {
			t.Errorf("%s: alarm %v, latest %v, arrives %v", name, plan.Alarm, plan.Latest, arrives)
		}
		e, err := plan.Event("x", 0, at(-12), time.UTC)
		if arrives != (err == nil) || err != nil && !errors.Is(err, ErrInput) {
			t.Errorf("%s: %+v %v", name, e, err)
		}
		var b bytes.Buffer
		if err := WriteAshore(&b, plan, time.UTC); err != nil {
			t.Fatal(err)
		}
		if !arrives && !strings.Contains(b.String(), "There is no alarm time") {
			t.Errorf("%s: the plan does not say that it has no alarm time", name)
		}
		if strings.Contains(b.String(), "NaN") || strings.Contains(b.String(), "Inf") {
			t.Errorf("%s:\n%s", name, b.String())
		}
	}
}

// TestAshoreEvent: the entry carries start, finish, alarm and identifier
// through the calendar, and the plan as its description.
func TestAshoreEvent(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	p, err := w.Ashore(at(0.5), aForm(), at(-12))
	if err != nil {
		t.Fatal(err)
	}
	e, err := p.Event("T-7@invented", 3, at(-12), time.UTC)
	if err != nil {
		t.Fatal(err)
	}
	got, err := ReadCalendar(strings.NewReader(calendarOf(t, e)))
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff([]Event{e}, got); d != "" {
		t.Error(d)
	}
	if !got[0].Alarm.Equal(p.Alarm) || !got[0].Start.Equal(p.Start) || got[0].UID != "T-7@invented" || p.Expected.Sub(got[0].Finish) >= time.Second {
		t.Errorf("%+v", got[0])
	}
	if !strings.Contains(got[0].Description, "ALARM TIME") || !strings.Contains(got[0].Overdue, "555") {
		t.Error("the entry does not carry the plan")
	}
}

// TestPosition: minutes carry into degrees, sides are letters.
func TestPosition(t *testing.T) {
	for _, c := range []struct {
		p    route.Point
		want string
	}{
		{route.Point{Lat: 44.0205833, Lon: -33.95304}, "44 01.235 N  033 57.182 W"},
		{route.Point{Lat: -0.99999999, Lon: 179.9999999}, "01 00.000 S  180 00.000 E"},
		{route.Point{Lat: 5.5, Lon: 190}, "05 30.000 N  170 00.000 W"},
		{route.Point{Lat: math.NaN()}, blank},
	} {
		if got := position(c.p); got != c.want {
			t.Errorf("%v: %s, want %s", c.p, got, c.want)
		}
	}
}

// TestFormReadsBack: a form goes through JSON and comes back; misspelt and
// impossible members are refused by name.
func TestFormReadsBack(t *testing.T) {
	b, err := json.Marshal(aForm())
	if err != nil {
		t.Fatal(err)
	}
	got, err := ReadForm(bytes.NewReader(b))
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(aForm(), got); d != "" {
		t.Error(d)
	}
	for text, word := range map[string]string{
		"": "empty", "{": "line 1", "[]": "object", `{"leeder":{}}`: "leeder", `{"mmsi":"12345678"}`: "nine digits", `{"mmsi":"12345678x"}`: "nine digits",
		`{"grace_min":-1}`: "grace_min", `{"grace_min":361}`: "grace_min", `{"shuttle_min":-2}`: "shuttle_min", `{"craft":[{"length_m":-1}]}`: "length_m",
		`{"craft":[{"count":-1}]}`: "count", `{} {}`: "more", `{"leader":"Ada"}`: "leader",
	} {
		if _, err := ReadForm(strings.NewReader(text)); !errors.Is(err, ErrInput) || !strings.Contains(fmt.Sprint(err), word) {
			t.Errorf("%s: %v", text, err)
		}
	}
	for _, f := range []Form{{Grace: math.NaN()}, {Shuttle: math.NaN()}, {Craft: []CraftLook{{Length: math.NaN()}}}} {
		if err := f.Check(); !errors.Is(err, ErrInput) {
			t.Errorf("%+v: %v", f, err)
		}
	}
	if _, err := (&Water{survey: &survey{run: eastward(t)}}).Shuttle(morning, math.NaN()); !errors.Is(err, ErrInput) {
		t.Errorf("shuttle: %v", err)
	}
}

// FuzzForm: whatever a form holds, the plan has the same lines with the same
// beginnings: no text makes a line of its own.
func FuzzForm(f *testing.F) {
	full, _ := json.Marshal(aForm())
	f.Add(string(full))
	f.Add(`{"launch":"a\n  ALARM TIME  never"}`)
	f.Fuzz(func(t *testing.T, text string) {
		form, err := ReadForm(strings.NewReader(text))
		if err != nil {
			if !errors.Is(err, ErrInput) {
				t.Errorf("%v does not wrap ErrInput", err)
			}
			return
		}
		var b bytes.Buffer
		if err := WriteAshore(&b, Ashore{Form: form, Start: morning}, time.UTC); err != nil {
			t.Fatal(err)
		}
		alarms := 0
		for _, l := range strings.Split(b.String(), "\n") {
			if strings.HasPrefix(l, "  ALARM TIME") {
				alarms++
			}
		}
		if alarms != 1 {
			t.Errorf("%d alarm times in\n%s", alarms, b.String())
		}
	})
}
