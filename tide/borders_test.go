package tide_test

import (
	"errors"
	"math"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"followingsea.example/tide"
)

var (
	inf       = math.Inf(1)
	above360  = math.Nextafter(360, inf)
	above25   = math.Nextafter(25, inf)
	above15   = math.Nextafter(15, inf) // m/s, the fastest stream accepted
	belowZero = -math.SmallestNonzeroFloat64
)

// hourRows is a stream to the east an hour before and at high water.
func hourRows() []tide.HourStream {
	return []tide.HourStream{{Hour: -1, Set: 90, Springs: 1, Neaps: 0.5}, {Hour: 0, Set: 90, Springs: 1, Neaps: 0.5}}
}

// hours returns turns at hours after midnight, high and low by turns from the first.
func hours(high bool, at ...float64) []tide.Turn {
	var turns []tide.Turn
	for _, h := range at {
		u := tide.Turn{Time: utc("2026-06-01 00:00").Add(time.Duration(h * float64(time.Hour))), High: high}
		if high {
			u.Height = 4
		}
		turns = append(turns, u)
		high = !high
	}
	return turns
}

func tableOf(t *testing.T, turns []tide.Turn) *tide.Table {
	t.Helper()
	tb, err := tide.NewTable(turns, tide.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return tb
}

// TestValuesOnTheBorders: where the stated range of a function is closed, its border
// has a value.
func TestValuesOnTheBorders(t *testing.T) {
	h, err := tide.NewHourTable(hourRows(), 5, 2)
	if err != nil {
		t.Fatal(err)
	}
	ends := []tide.ClockMark{{Clock: 0, Difference: 10}, {Clock: 86400, Difference: 20}}
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"delta T of 1900, table 10.A", tide.DeltaT(1900), -2.8},
		{"delta T between 56.9 in 1990 and 63.8 in 2000", tide.DeltaT(1995), (56.9 + 63.8) / 2},
		{"the last guess of delta T", tide.DeltaT(2100), 93},
		{"S2 alone, all day at its range", tide.RangeByPhase(0, 0.5, 0), 1},
		{"M2 and S2 at springs", tide.RangeByPhase(1, 0.3, 0), 2 * (1 + 0.3)},
		{"M2 and S2 at neaps", tide.RangeByPhase(1, 0.3, tide.SpringsToSprings/2), 2 * (1 - 0.3)},
		{"M2 and S2 half way", tide.RangeByPhase(1, 0.3, tide.SpringsToSprings/4), 2 * math.Sqrt(1+0.09)},
		{"slope at the end, cosine", tide.ByCosine.Slope(1), 0},
		{"slope at the end, twelfths: one of twelve in a sixth", tide.ByTwelfths.Slope(1), 6.0 / 12},
		{"slope at the end, tenths: ten of a hundred in a sixth", tide.ByTenths.Slope(1), 6.0 / 10},
		{"tenths, start", tide.TenthsInverse(0), 0},
		{"tenths, end", tide.TenthsInverse(1), 1},
		{"twelfths, start", tide.TwelfthsInverse(0), 0},
		{"twelfths, end", tide.TwelfthsInverse(1), 1},
		{"the mark at midnight", tide.TimeDifference(0, ends...), 10},
		{"the mark at 24 hours", tide.TimeDifference(86400, ends...), 20},
		{"half way to the mark at 24 hours", tide.TimeDifference(43200, ends...), 15},
		{"neaps without range", tide.Springness(3, 6, 0), 0.5},
		{"no range at all", tide.Springness(0, 6, 3), -1},
		{"rate without range", tide.RateByFactor(0, tide.Mark{At: 6, Value: 2}), 0},
		{"no rate at springs", tide.RateByFactor(3, tide.Mark{At: 6}), 0},
		{"no rate at springs or neaps", tide.RateAtRange(3, tide.Mark{At: 6}, tide.Mark{At: 2}), 0},
		{"no K1", tide.FormNumber(0, 1, 1, 1), 0.5},
		{"no O1", tide.FormNumber(1, 0, 1, 1), 0.5},
		{"no M2", tide.FormNumber(1, 1, 0, 1), 2},
		{"no S2", tide.FormNumber(1, 1, 1, 0), 2},
		{"S2 greater than M2", tide.FormNumber(1, 1, 1, 2), 2.0 / 3},
		{"thirds at slack", tide.Thirds(0), 1.0 / 3},
		{"thirds at the next slack", tide.Thirds(1), 1.0 / 3},
		{"no limit, no time", tide.WeakStream(0, 2, 6), 0},
		{"half the maximum: asin is 30° of 180°, twice", tide.WeakStream(1, 2, 6), 2},
		{"limit at the maximum", tide.WeakStream(2, 2, 6), 6},
		{"drag of a calm", tide.DragCoefficient(0), 0.75e-3},
		{"stress of a calm", tide.Stretch{}.Stress(), 0},
		{"setup without fetch", tide.WindSetup(tide.Stretch{Wind: 10, Depth: 5}).Height, 0},
		{"setup in infinite depth", tide.WindSetup(tide.Stretch{Wind: 10, Fetch: 1000, Depth: inf}).Height, 0},
		{"first hour", h.At(-1, 5).East, 1},
		{"last hour", h.At(0, 5).East, 1},
		{"tide without range", h.At(-0.5, 0).East, 0.5 + 0.5*(0-2)/(5-2)},
	} {
		near(t, c.name, c.got, c.want, 1e-12)
	}
}

// TestNoValueBeyondTheBorders: just beyond a border, on an open one, and for numbers
// that are infinite, one or several at once, there is no value.
func TestNoValueBeyondTheBorders(t *testing.T) {
	h, err := tide.NewHourTable(hourRows(), 5, 2)
	if err != nil {
		t.Fatal(err)
	}
	m := tide.Mark{At: 1, Value: 0.5}
	endless := tide.Limb{From: tide.Turn{Time: utc("2026-06-01 00:00"), Height: inf, High: true}, To: tide.Turn{Time: utc("2026-06-01 06:00"), Height: 1}}
	for name, got := range map[string]float64{
		"delta T before 1900":           tide.DeltaT(math.Nextafter(1900, 0)),
		"delta T after 2100":            tide.DeltaT(math.Nextafter(2100, inf)),
		"both amplitudes infinite":      tide.RangeByPhase(inf, inf, 0),
		"height infinite":               tide.HeightDifference(inf, m, tide.Mark{At: 2, Value: 1}),
		"height infinite, one mark":     tide.HeightDifference(-inf, m, m),
		"mark infinite":                 tide.HeightDifference(1, tide.Mark{At: inf, Value: 1}, tide.Mark{At: inf, Value: 1}),
		"difference infinite":           tide.HeightDifference(1, tide.Mark{At: 1, Value: inf}, tide.Mark{At: 1, Value: inf}),
		"differences infinite, opposed": tide.HeightDifference(0, tide.Mark{At: 1, Value: inf}, tide.Mark{At: 2, Value: -inf}),
		"mark beyond the day":           tide.TimeDifference(0, tide.ClockMark{Clock: math.Nextafter(86400, inf)}),
		"springs as small as neaps":     tide.Springness(3, 3, 3),
		"neaps negative":                tide.Springness(3, 6, belowZero),
		"springs without range":         tide.RateByFactor(1, tide.Mark{At: 0, Value: 1}),
		"range and rate infinite":       tide.RateByFactor(inf, tide.Mark{At: 1, Value: inf}),
		"K1 and O1 infinite":            tide.FormNumber(inf, inf, 1, 1),
		"M2 and S2 infinite":            tide.FormNumber(1, 1, inf, inf),
		"no maximum":                    tide.WeakStream(1, 0, 6),
		"no time from slack to slack":   tide.WeakStream(1, 2, 0),
		"water infinitely dense":        tide.Water{Density: inf}.InverseBarometer(1e5, 101325),
		"no pressure":                   tide.InverseBarometer(0, 101325),
		"no reference":                  tide.InverseBarometer(101325, 0),
		"air infinitely dense":          tide.Stretch{Wind: 10, Air: inf}.Stress(),
		"infinite drag":                 tide.Stretch{Wind: 10, Drag: inf}.Stress(),
		"setup without depth":           tide.WindSetup(tide.Stretch{Wind: 10, Fetch: 1000}).Height,
		"before the first hour":         h.At(math.Nextafter(-1, -inf), 5).East,
		"after the last hour":           h.At(math.SmallestNonzeroFloat64, 5).East,
		"range negative":                h.At(0, belowZero).East,
		"infinite height, at its foot":  endless.Height(endless.To.Time, tide.ByCosine),
	} {
		if !math.IsNaN(got) {
			t.Errorf("%s: %v, want NaN", name, got)
		}
	}
}

// TestTablesOnTheBorders: a table takes a number on the closed border of what is
// allowed and refuses the next one beyond.
func TestTablesOnTheBorders(t *testing.T) {
	at := utc("2026-06-01 00:00")
	hour := func(f func(r []tide.HourStream)) func() error {
		return func() error {
			r := hourRows()
			f(r)
			_, err := tide.NewHourTable(r, 5, 2)
			return err
		}
	}
	ranges := func(springs, neaps float64) func() error {
		return func() error { _, err := tide.NewHourTable(hourRows(), springs, neaps); return err }
	}
	axis := func(flood, ebb float64) func() error {
		return func() error {
			_, err := tide.NewEventStreams([]tide.StreamEvent{{Time: at, Kind: tide.SlackBeforeFlood}, {Time: at.Add(time.Hour), Rate: 1, Kind: tide.MaxFlood}}, flood, ebb)
			return err
		}
	}
	clock := func(rate float64) func() error {
		return func() error {
			_, err := tide.NewClockStreams([]tide.StreamSample{{Time: at, Stream: tide.Setting(rate, 0)}}, 0)
			return err
		}
	}
	ratios := func(flood, ebb float64) func() error {
		return func() error {
			_, err := tide.StreamOffsets{FloodRatio: flood, EbbRatio: ebb}.Apply([]tide.StreamEvent{{Time: at, Rate: 1, Kind: tide.MaxFlood}})
			return err
		}
	}
	options := func(o tide.Options) func() error {
		return func() error { _, err := tide.NewTable(hours(true, 0, 6), o); return err }
	}
	turns := func(high, low float64, two time.Duration) func() error {
		return func() error {
			u := hours(true, 0, 6)
			u[0].Height, u[1].Height = high, low
			_, err := tide.NewTable(append(u, tide.Turn{Time: u[1].Time.Add(two), Height: low}), tide.Options{})
			return err
		}
	}
	phases := func(from, to string) func() error {
		return func() error { _, err := tide.MoonPhases(utc(from), utc(to)); return err }
	}
	for name, c := range map[string]struct {
		make func() error
		want error
	}{
		"flood at 360°":               {axis(360, 180), nil},
		"flood at -360°":              {axis(-360, 180), nil},
		"flood beyond 360°":           {axis(above360, 180), tide.ErrValue},
		"ebb at 360°":                 {axis(180, 360), nil},
		"ebb beyond 360°":             {axis(180, -above360), tide.ErrValue},
		"the fastest stream":          {clock(15), nil},
		"a faster stream":             {clock(above15), tide.ErrValue},
		"hours at their ends":         {hour(func(r []tide.HourStream) { r[0].Hour, r[1].Hour = -13, -10 }), nil},
		"hours at their other end":    {hour(func(r []tide.HourStream) { r[0].Hour, r[1].Hour = 10, 13 }), nil},
		"hour too early":              {hour(func(r []tide.HourStream) { r[0].Hour, r[1].Hour = math.Nextafter(-13, -14), -12 }), tide.ErrValue},
		"hour too late":               {hour(func(r []tide.HourStream) { r[0].Hour, r[1].Hour = 12, math.Nextafter(13, 14) }), tide.ErrValue},
		"an hour twice":               {hour(func(r []tide.HourStream) { r[0].Hour, r[1].Hour = 0, 0 }), tide.ErrValue},
		"rates at their limit":        {hour(func(r []tide.HourStream) { r[1].Springs, r[1].Neaps = 15, 15 }), nil},
		"springs beyond the limit":    {hour(func(r []tide.HourStream) { r[1].Springs = above15 }), tide.ErrValue},
		"neaps beyond the limit":      {hour(func(r []tide.HourStream) { r[1].Neaps = above15 }), tide.ErrValue},
		"no rates":                    {hour(func(r []tide.HourStream) { r[1].Springs, r[1].Neaps = 0, 0 }), nil},
		"slack has no direction":      {hour(func(r []tide.HourStream) { r[1] = tide.HourStream{Set: math.NaN()} }), nil},
		"a stream at neaps alone has": {hour(func(r []tide.HourStream) { r[1] = tide.HourStream{Neaps: 1, Set: math.NaN()} }), tide.ErrValue},
		"set at 0":                    {hour(func(r []tide.HourStream) { r[1].Set = 0 }), nil},
		"set below 0":                 {hour(func(r []tide.HourStream) { r[1].Set = belowZero }), tide.ErrValue},
		"set at 360":                  {hour(func(r []tide.HourStream) { r[1].Set = 360 }), nil},
		"set beyond 360":              {hour(func(r []tide.HourStream) { r[1].Set = above360 }), tide.ErrValue},
		"neap range of nothing":       {ranges(5, 0), nil},
		"neap range negative":         {ranges(5, belowZero), tide.ErrValue},
		"ranges alike":                {ranges(5, 5), tide.ErrValue},
		"the largest range":           {ranges(25, 2), nil},
		"a larger range":              {ranges(above25, 2), tide.ErrValue},
		"no rate on the flood":        {ratios(0, 1), nil},
		"no rate on the ebb":          {ratios(1, 0), nil},
		"ratio negative":              {ratios(belowZero, 1), tide.ErrValue},
		"both ratios infinite":        {ratios(inf, inf), tide.ErrValue},
		"shortest and longest alike":  {options(tide.Options{Shortest: 6 * time.Hour, Longest: 6 * time.Hour}), nil},
		"longest below shortest":      {options(tide.Options{Shortest: 6 * time.Hour, Longest: 6*time.Hour - 1}), tide.ErrValue},
		"gap and longest alike":       {options(tide.Options{Gap: 7 * time.Hour}), nil},
		"gap below longest":           {options(tide.Options{Gap: 7*time.Hour - 1}), tide.ErrValue},
		"25 m of the datum":           {turns(25, -25, 10*time.Hour), nil},
		"beyond 25 m of the datum":    {turns(above25, 0, 10*time.Hour), tide.ErrTurns},
		"below -25 m":                 {turns(1, -above25, 10*time.Hour), tide.ErrTurns},
		"of one kind, 9 hours apart":  {turns(4, 0, 9*time.Hour), nil},
		"of one kind, nearer":         {turns(4, 0, 9*time.Hour-1), tide.ErrTurns},
		"phases of all 200 years":     {phases("1900-01-01 00:00", "2099-12-31 23:59"), nil},
		"phases from before 1900":     {phases("1899-12-31 23:59", "1901-01-01 00:00"), tide.ErrValue},
		"phases of 2100":              {phases("2099-01-01 00:00", "2100-02-01 00:00"), tide.ErrValue},
	} {
		if err := c.make(); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", name, err, c.want)
		}
	}
}

// TestErrorsNameTheRow: an error names the row, the turn or the event that is at
// fault, counted from 1 as the reader of a table counts.
func TestErrorsNameTheRow(t *testing.T) {
	at := utc("2026-06-01 00:00")
	later := at.Add(time.Hour)
	clock := func(second tide.StreamSample) error {
		_, err := tide.NewClockStreams([]tide.StreamSample{{Time: at}, second}, 0)
		return err
	}
	hour := func(second tide.HourStream) error {
		_, err := tide.NewHourTable([]tide.HourStream{hourRows()[0], second}, 5, 2)
		return err
	}
	table := func(second tide.Turn) error {
		_, err := tide.NewTable([]tide.Turn{{Time: at, Height: 4, High: true}, second}, tide.Options{})
		return err
	}
	two := []tide.StreamEvent{{Time: at, Kind: tide.SlackBeforeFlood}, {Time: later, Rate: 1, Kind: tide.MaxFlood}}
	_, events := tide.NewEventStreams([]tide.StreamEvent{two[0], {Time: later, Rate: -1, Kind: tide.MaxFlood}}, 0, 180)
	_, moved := tide.StreamOffsets{Flood: -2 * time.Hour, FloodRatio: 1, EbbRatio: 1}.Apply(two)
	zero := []tide.ClockMark{{}}
	_, unknown := tide.Differences{HighTimes: zero}.Apply(hours(true, 0, 6))
	_, overtaken := tide.Differences{HighTimes: []tide.ClockMark{{Difference: 8 * 3600}}, LowTimes: zero}.Apply(hours(true, 0, 6))
	_, corrected := tide.Offsets{Low: tide.ByRatio(math.NaN())}.Apply(hours(true, 0, 6))
	for _, c := range []struct {
		name string
		err  error
		want string
	}{
		{"rate of a stream", clock(tide.StreamSample{Time: later, Stream: tide.Stream{Rate: -1}}), "row 2:"},
		{"order of streams", clock(tide.StreamSample{Time: at}), "row 2:"},
		{"hour", hour(tide.HourStream{Hour: 14}), "row 2:"},
		{"order of hours", hour(tide.HourStream{Hour: -2}), "row 2:"},
		{"rate of an hour", hour(tide.HourStream{Springs: -1}), "row 2:"},
		{"set of an hour", hour(tide.HourStream{Springs: 1, Set: 400}), "row 2:"},
		{"height of a turn", table(tide.Turn{Time: later, Height: 99}), "turn 2,"},
		{"order of turns", table(tide.Turn{Time: at}), "turn 2,"},
		{"two high waters", table(tide.Turn{Time: later, Height: 4, High: true}), "turn 2,"},
		{"high below low", table(tide.Turn{Time: later, Height: 5}), "turn 2,"},
		{"sign of a rate", events, "event 2,"},
		{"order of events", moved, "event 2,"},
		{"no difference", unknown, "turn 2,"},
		{"turns that overtake", overtaken, "turn 2,"},
		{"no height", corrected, "turn 2,"},
	} {
		if c.err == nil || !strings.Contains(c.err.Error(), c.want) {
			t.Errorf("%s: %v, want %q in it", c.name, c.err, c.want)
		}
	}
}

// TestWhenTellsNumbersFromHeights: a height that the limb does not pass is ErrNever,
// a number that is not finite ErrValue.
func TestWhenTellsNumbersFromHeights(t *testing.T) {
	for name, c := range map[string]struct {
		height, from, to float64
		want             error
	}{
		"passed":            {2, 4, 0, nil},
		"above":             {math.Nextafter(4, 5), 4, 0, tide.ErrNever},
		"below":             {-1e-9, 4, 0, tide.ErrNever},
		"no range":          {4, 4, 4, tide.ErrNever},
		"infinite":          {inf, 4, 0, tide.ErrValue},
		"high water so":     {2, inf, 0, tide.ErrValue},
		"low water so":      {2, 4, -inf, tide.ErrValue},
		"none":              {math.NaN(), 4, 0, tide.ErrValue},
		"high water NaN":    {2, math.NaN(), 0, tide.ErrValue},
		"a height of 0 m":   {0, 4, 0, nil},
		"the high water's":  {4, 4, 0, nil},
		"all three of them": {inf, inf, inf, tide.ErrValue},
	} {
		u := hours(true, 0, 6)
		u[0].Height, u[1].Height = c.from, c.to
		if _, err := (tide.Limb{From: u[0], To: u[1]}).When(c.height, tide.ByCosine); !errors.Is(err, c.want) {
			t.Errorf("%s: %v, want %v", name, err, c.want)
		}
	}
}

// TestATurnIsItsHeight: at both ends of a limb stands the height of the turn, also
// when the other one is at the datum.
func TestATurnIsItsHeight(t *testing.T) {
	for _, u := range [][]tide.Turn{hours(true, 0, 6), hours(false, 0, 6)} {
		l := tide.Limb{From: u[0], To: u[1]}
		near(t, "first", l.Height(u[0].Time, tide.ByCosine), u[0].Height, 0)
		near(t, "second", l.Height(u[1].Time, tide.ByCosine), u[1].Height, 0)
	}
}

// TestLimbOfATurn: at a turn stands the limb that begins there; beside a gap the one
// whole limb at the turn; and no turn is itself in a gap.
func TestLimbOfATurn(t *testing.T) {
	d := day(t, tide.Options{})
	between := tableOf(t, append(hours(true, 0, 6), hours(false, 16, 22, 28)...)) // a high water is missing
	first := tableOf(t, hours(true, 0, 20, 26))                                   // a day is missing
	last := tableOf(t, hours(true, 0, 6, 26))
	for _, c := range []struct {
		name     string
		table    *tide.Table
		at       int
		from, to int
	}{
		{"the first", d, 0, 0, 1},
		{"one of many", d, 2, 2, 3},
		{"the last", d, 4, 3, 4},
		{"before a gap", between, 1, 0, 1},
		{"after a gap", between, 2, 2, 3},
		{"the first, before a gap", first, 0, 0, 1},
		{"the last, after a gap", last, 2, 1, 2},
	} {
		u := c.table.Turn(c.at)
		got, err := c.table.Limb(u.Time)
		if diff := cmp.Diff(tide.Limb{From: c.table.Turn(c.from), To: c.table.Turn(c.to)}, got); err != nil || diff != "" {
			t.Errorf("%s: %v (-want +got):\n%s", c.name, err, diff)
		}
		if e := c.table.Estimate(u.Time); e.Height != u.Height || e.Remark != tide.Ordinary {
			t.Errorf("%s: %+v, want the height of %v", c.name, e, u)
		}
	}
	// Within a gap the error names the turns on both sides.
	_, err := between.Limb(utc("2026-06-01 10:00"))
	if !errors.Is(err, tide.ErrGap) || !strings.Contains(err.Error(), between.Turn(1).String()) || !strings.Contains(err.Error(), between.Turn(2).String()) {
		t.Errorf("in a gap: %v, want %v and %v in it", err, between.Turn(1), between.Turn(2))
	}
}

// TestSpreadIsAShareOfTheRange: a tenth of the range in an ordinary rise or fall, a
// third in one that is shorter or longer, whatever the datum.
func TestSpreadIsAShareOfTheRange(t *testing.T) {
	for _, c := range []struct {
		name         string
		hours, share float64
		within       float64
	}{{"short", 4, 1.0 / 3, 0.02}, {"ordinary", 6, 0.1, 1e-12}, {"long", 8, 1.0 / 3, 0.02}} {
		u := hours(true, 0, c.hours)
		u[0].Height, u[1].Height = 5, 2
		e := tableOf(t, u).Estimate(u[0].Time.Add(time.Hour))
		near(t, c.name, e.Spread/3, c.share, c.within)
	}
}

// TestCutIsNoCrossing: a question that begins or ends at the very instant at which
// the water passes the level has no cut edge there. The rule of twelfths has half
// tide, 2 m, at exactly 03:00.
func TestCutIsNoCrossing(t *testing.T) {
	tb, err := tide.NewTable(hours(false, 0, 6), tide.Options{Rule: tide.ByTwelfths})
	if err != nil {
		t.Fatal(err)
	}
	low, half, high := utc("2026-06-01 00:00"), utc("2026-06-01 03:00"), utc("2026-06-01 06:00")
	got, err := tb.Windows(tide.Bar{Need: 2}, half, high)
	if diff := cmp.Diff([]tide.Window{{From: half, To: high, CutTo: true}}, got); err != nil || diff != "" {
		t.Errorf("from half tide up: %v (-want +got):\n%s", err, diff)
	}
	got, err = tb.Below(2, low, half)
	if diff := cmp.Diff([]tide.Window{{From: low, To: half, CutFrom: true}}, got); err != nil || diff != "" {
		t.Errorf("up to half tide: %v (-want +got):\n%s", err, diff)
	}
}

// TestDifferencesReadTheClock: the clock time of a turn counts to the fraction of a
// second. The difference is a tenth of the seconds since midnight, so at 05:17:23.5
// it is (5·3600 + 17·60 + 23.5)/10 s.
func TestDifferencesReadTheClock(t *testing.T) {
	marks := []tide.ClockMark{{}, {Clock: 43200, Difference: 4320}}
	u := tide.Turn{Time: time.Date(2026, 6, 1, 5, 17, 23, 5e8, time.UTC), Height: 4, High: true}
	got, err := tide.Differences{HighTimes: marks}.Apply([]tide.Turn{u})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "seconds later", got[0].Time.Sub(u.Time).Seconds(), (5*3600+17*60+23.5)/10, 1e-6)
}

// TestHoursHungOnTides: between two high waters 12 hours apart the rows of each
// count to the middle, the middle itself once; a stream unknown for 3 hours is
// interpolated, for longer it stays unknown.
func TestHoursHungOnTides(t *testing.T) {
	port := tableOf(t, hours(false, 0, 6, 12, 18, 24))
	// The rate tells the hours from high water: 1 m/s and a tenth for each.
	table := func(from, to int) *tide.HourTable {
		var rows []tide.HourStream
		for h := from; h <= to; h++ {
			rate := 1 + math.Abs(float64(h))/10
			rows = append(rows, tide.HourStream{Hour: float64(h), Set: 90, Springs: rate, Neaps: rate})
		}
		h, err := tide.NewHourTable(rows, 4, 2)
		if err != nil {
			t.Fatal(err)
		}
		return h
	}
	for _, c := range []struct {
		name     string
		from, to int
		clock    string
		want     float64
	}{
		{"own to the middle", -7, 7, "11:00", 1.5},
		{"the middle", -7, 7, "12:00", 1.6},
		{"from the middle the next", -7, 7, "13:00", 1.5},
		{"rows that meet in the middle", -6, 6, "12:00", 1.6},
		{"3 hours bridged, from 1.4 to 1.5", -5, 4, "11:30", 1.45},
		{"4 hours not bridged", -5, 3, "11:00", math.NaN()},
	} {
		s, err := table(c.from, c.to).On(port)
		if err != nil {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		got := s.Velocity(utc("2026-06-01 " + c.clock)).East
		if !(math.Abs(got-c.want) <= 1e-12) && !(math.IsNaN(c.want) && math.IsNaN(got)) {
			t.Errorf("%s: %v m/s, want %v", c.name, got, c.want)
		}
	}
	// A high water without a known rise or fall has no range to go by.
	if _, err := table(-6, 6).On(tableOf(t, hours(false, 0, 20, 40))); !errors.Is(err, tide.ErrTurns) {
		t.Errorf("no rise or fall known: %v, want ErrTurns", err)
	}
}

// TestHourFromTheNearestHighWater: the nearest high water may be the one before or
// the one after, on a rise as on a fall, and there may be only one.
func TestHourFromTheNearestHighWater(t *testing.T) {
	for _, c := range []struct {
		name  string
		high  bool
		turns []float64
		at    string
		want  float64
	}{
		{"on the first fall", true, []float64{0, 6, 12}, "02:00", 2},
		{"on the last rise", false, []float64{0, 6}, "05:00", -1},
		{"on a fall, the next one", true, []float64{0, 7, 12}, "06:30", -5.5},
		{"on a rise, the last one", true, []float64{0, 5, 12}, "05:30", 5.5},
		{"on a fall to the end", true, []float64{0, 6}, "05:00", 5},
		{"on a rise from the start", false, []float64{0, 6, 12}, "01:30", -4.5},
		{"at high water", false, []float64{0, 6, 12}, "06:00", 0},
		{"after the table", true, []float64{0, 6}, "06:01", math.NaN()},
	} {
		got := tableOf(t, hours(c.high, c.turns...)).HourOn(utc("2026-06-01 " + c.at))
		if !(math.Abs(got-c.want) <= 1e-12) && !(math.IsNaN(c.want) && math.IsNaN(got)) {
			t.Errorf("%s: %v hours, want %v", c.name, got, c.want)
		}
	}
}

// TestAxesOfAReversingStream: a stream to and fro has no minor axis and turns
// neither way, and its direction is in [0, 180): to and from north it is 0.
func TestAxesOfAReversingStream(t *testing.T) {
	for _, c := range []struct {
		e         tide.Ellipse
		direction float64
	}{{tide.Ellipse{North: 1}, 0}, {tide.Ellipse{East: 1}, 90}} {
		major, minor, direction, clockwise := c.e.Axes()
		near(t, "major", major, 1, 1e-15)
		near(t, "minor", minor, 0, 1e-15)
		near(t, "direction", direction, c.direction, 1e-12)
		if clockwise {
			t.Errorf("%+v turns clockwise", c.e)
		}
	}
}

// TestSetupBeyondATenthOfTheDepth: a setup of a tenth of the depth is not yet beyond
// the straight relation. With all constants 1, the setup is fetch over depth.
func TestSetupBeyondATenthOfTheDepth(t *testing.T) {
	for fetch, beyond := range map[float64]bool{0: false, 10: false, 10.1: true} {
		s := tide.Water{Gravity: 1, Density: 1}.WindSetup(tide.Stretch{Wind: 1, Fetch: fetch, Depth: 10, Air: 1, Drag: 1})
		if s.Height != fetch/10 || s.Beyond != beyond {
			t.Errorf("fetch %v m in 10 m of water: %+v, want %v m, beyond %v", fetch, s, fetch/10, beyond)
		}
	}
}

// TestMoonPhasesOfTwoCenturies: the phases are all those of TruePhase, less DeltaT of
// their year, in 1900 to 2099, and any part of the span has its part of them.
func TestMoonPhasesOfTwoCenturies(t *testing.T) {
	from, to := utc("1900-01-01 00:00"), utc("2099-12-31 23:59")
	all, err := tide.MoonPhases(from, to)
	if err != nil {
		t.Fatal(err)
	}
	noon := utc("2000-01-01 12:00") // Julian day 2451545
	n := 0
	for k := -1240.0; k <= 1240; k += 0.25 {
		dynamical := (tide.TruePhase(k) - 2451545) * 86400
		if dynamical < from.Sub(noon).Seconds() || dynamical > to.Sub(noon).Seconds() {
			continue
		}
		if n == len(all) {
			t.Fatalf("%d phases, want more", n)
		}
		e := all[n]
		year := float64(e.Time.Year()) + float64(e.Time.YearDay())/365
		near(t, "dynamical less universal time of "+e.Time.Format(time.RFC3339), dynamical-e.Time.Sub(noon).Seconds(), tide.DeltaT(year), 0.02)
		if want := tide.Phase(math.Mod(4*k+4*1240, 4)); e.Phase != want {
			t.Errorf("%v is %v, want %v", e.Time, e.Phase, want)
		}
		n++
	}
	if n != len(all) {
		t.Errorf("%d phases, want %d", len(all), n)
	}
	for first := 0; first+6 < len(all); first += 71 {
		want := all[first : first+6]
		got, err := tide.MoonPhases(want[0].Time, want[5].Time)
		if diff := cmp.Diff(want, got); err != nil || diff != "" {
			t.Errorf("%v (-want +got):\n%s", err, diff)
		}
	}
}
