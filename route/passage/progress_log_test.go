package passage

import (
	"bytes"
	"errors"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/route"
)

// sameLog compares logs by what they say: instants by instant, values by
// number.
var sameLog = cmp.Options{cmp.Comparer(func(a, b time.Time) bool { return a.Equal(b) }), cmp.Comparer(func(a, b Value) bool { return a == b })}

// TestLogReadsBack: a log comes back as it was, in knots or in metres a second.
func TestLogReadsBack(t *testing.T) {
	w := prepare(t, eastward(t), fairDay(t, steadyWind(t, 9, 270)), coach())
	log := []Outing{appraise(t, w, 0.5).Outing(InHand), logged(10, Trouble, map[Rule]float64{GreatestSea: 1.25, GreatestDuration: 5400}), logged(20, Unsaid, nil)}
	for i := range log { // what only asks whether is not kept in a log
		for _, r := range []Rule{NoWarning, NoTraffic, NoAvoid} {
			log[i].Values[r] = Value{}
		}
	}
	var b bytes.Buffer
	if err := WriteLog(&b, log); err != nil {
		t.Fatal(err)
	}
	got, err := ReadLog(&b)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(log, got, sameLog); d != "" {
		t.Error(d)
	}
	got, err = ReadLog(strings.NewReader("time,handling,greatest_wind_kn,greatest_duration_min,note\n2026-06-21T10:00:00+01:00,in hand,20,90,first\n2026-06-20T10:00:00Z,,,,\n"))
	if err != nil || len(got) != 2 || !near(got[0].Values[GreatestWind].Number(), 20*route.Knot, 1e-12) || got[0].Values[GreatestDuration] != Known(5400) || got[0].Handling != InHand || got[1].Handling != Unsaid {
		t.Errorf("%+v %v", got, err)
	}
	if err := WriteLog(&bytes.Buffer{}, []Outing{{}}); !errors.Is(err, ErrInput) {
		t.Errorf("an outing without a time: %v", err)
	}
}

// TestReadLogRefuses what cannot be right, with the line and the column.
func TestReadLogRefuses(t *testing.T) {
	const head = "time,handling,greatest_wind_kn\n"
	for text, words := range map[string]string{
		"":                                       "empty",
		"time,handling,greatest_wind\n":          "greatest_wind",
		"time,handling,no_traffic\n":             "no_traffic",
		head + "2026-06-21T10:00:00,hard,20\n":   "line 2",
		head + "2026-06-21T10:00:00Z,easy,20\n":  "in hand",
		head + "2026-06-21T10:00:00Z,hard,-1\n":  "greatest_wind_kn",
		head + "2026-06-21T10:00:00Z,hard,NaN\n": "NaN",
		head + "2026-06-21T10:00:00Z,hard,500\n": "500",
	} {
		if _, err := ReadLog(strings.NewReader(text)); !errors.Is(err, ErrInput) || !strings.Contains(err.Error(), words) {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// FuzzReadLog: what is read is written and read again the same.
func FuzzReadLog(f *testing.F) {
	f.Add("time,handling,greatest_wind_kn\n2026-06-21T10:00:00Z,in hand,20\n")
	f.Add("time,handling,greatest_wind_m_s,least_depth_m,greatest_steepness\r\n2026-06-21T10:00:00+02:00,,20,-1,0.04\r\n")
	f.Fuzz(func(t *testing.T, text string) {
		log, err := ReadLog(strings.NewReader(text))
		if err != nil {
			if !errors.Is(err, ErrInput) {
				t.Errorf("%v does not wrap ErrInput", err)
			}
			return
		}
		var b bytes.Buffer
		if err := WriteLog(&b, log); err != nil {
			if !errors.Is(err, ErrInput) {
				t.Fatal(err)
			}
			return
		}
		again, err := ReadLog(&b)
		if err != nil {
			t.Fatal(err)
		}
		if len(log) == 0 && len(again) == 0 {
			return
		}
		if d := cmp.Diff(log, again, sameLog); d != "" {
			t.Error(d)
		}
	})
}
