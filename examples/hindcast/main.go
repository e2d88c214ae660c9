// Command hindcast scores the growth laws against the sea: it steps a sea through a year
// of a buoy's own wind and compares height and period with what the buoy measured.
//
//	go run ./examples/hindcast
//	go run ./examples/hindcast [flags] RECORD FETCHES
//
// RECORD is a buoy's standard meteorological text, gzipped if its name ends in .gz. FETCHES
// is a table with the columns wind_from_deg and fetch_km, an empty fetch for open sea, and
// perhaps mean_depth_m. A table of several stations will do: -station says which column.
// Without arguments an invented record is scored, to show the output.
//
// For every law it prints the number of hours, the mean error (bias), the root mean square
// error and that over the mean measured value (scatter index) of significant height and
// peak period, by what limited the sea and by the stability of the air. Nothing is fitted.
// With -csv it writes what a plot needs: time, wind, fetch, what was measured and what each
// law gives. With -points it scores Grow on selected measured points instead.
//
// What it cannot know: swell from beyond the record (compare such directions with a grain
// of salt: the regime "open sea" shows the sign), the wind along the fetch, shoals.
package main

import (
	"bytes"
	"compress/gzip"
	_ "embed"
	"encoding/csv"
	"errors"
	"flag"
	"fmt"
	"io"
	"math"
	"os"
	"strings"
	"time"

	"followingsea.example/wind"
)

//go:embed testdata/invented-buoy.txt
var inventedBuoy []byte

//go:embed testdata/invented-fetch.csv
var inventedFetch []byte

func main() {
	if err := run(os.Args[1:], os.Stdout); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			return
		}
		fmt.Fprintln(os.Stderr, "hindcast:", err)
		os.Exit(1)
	}
}

func run(args []string, out io.Writer) error {
	fs := flag.NewFlagSet("hindcast", flag.ContinueOnError)
	fs.SetOutput(out)
	anemometer := fs.Float64("anemometer", 5, "height of the anemometer above the water, m")
	depth := fs.Float64("depth", math.Inf(1), "mean depth along the fetches, m, where the table has none")
	station := fs.String("station", "", "which fetch column to take from a table of several")
	all := fs.Bool("all", false, "score every variant, not only the main laws")
	points := fs.Bool("points", false, "score the laws on 185 selected points of steady wind instead")
	csvName := fs.String("csv", "", "write the hours to this file")
	if err := fs.Parse(args); err != nil {
		return err
	}
	laws := mainLaws()
	if *all {
		laws = wind.Laws()
	}
	if *points {
		return scorePoints(out, laws)
	}
	buoy, fetches := inventedBuoy, inventedFetch
	switch fs.NArg() {
	case 0:
		fmt.Fprintln(out, "An invented record, to show the output. Give a record and a table of fetches to score a real one.")
	case 2:
		var err error
		if buoy, err = readFile(fs.Arg(0)); err != nil {
			return err
		}
		if fetches, err = readFile(fs.Arg(1)); err != nil {
			return err
		}
	default:
		return errors.New("want a record and a table of fetches, or nothing")
	}
	record, err := wind.ReadBuoy(bytes.NewReader(buoy))
	if err != nil {
		return fmt.Errorf("%s: %w", fs.Arg(0), err)
	}
	table, err := readFetches(fetches, *station)
	if err != nil {
		return fmt.Errorf("%s: %w", fs.Arg(1), err)
	}
	for _, r := range record.Remarks {
		fmt.Fprintln(out, r)
	}
	winds, err := record.Winds(*anemometer, 0)
	if err != nil {
		return err
	}
	hours, err := hindcast(record, winds, table, *depth, laws)
	if err != nil {
		return err
	}
	report(out, hours, laws)
	if *csvName == "" {
		return nil
	}
	f, err := os.Create(*csvName)
	if err != nil {
		return err
	}
	if err := writeHours(f, hours, laws); err != nil {
		f.Close()
		return err
	}
	return f.Close()
}

func mainLaws() []wind.Law {
	return []wind.Law{
		wind.Bretschneider, wind.BreugemHolthuijsen, wind.YoungVerhagen, wind.KahmaCalkoen, wind.JONSWAP,
		wind.Wilson, wind.CEM, wind.SPM84, wind.ACES, wind.Smith, wind.GroenDorrestein, wind.HwangWang,
	}
}

// most is the largest file that is read, unpacked.
const most = 64 << 20

func readFile(name string) ([]byte, error) {
	f, err := os.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	var r io.Reader = f
	if strings.HasSuffix(name, ".gz") {
		z, err := gzip.NewReader(f)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		r = z
	}
	b, err := io.ReadAll(io.LimitReader(r, most+1))
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if len(b) > most {
		return nil, fmt.Errorf("%s: larger than %d MB", name, most>>20)
	}
	return b, nil
}

// readFetches reads the library's own form of table, or the column of one station from a
// table of several, whose first column is the direction and whose others end in their unit.
func readFetches(b []byte, station string) (wind.Fetches, error) {
	if station == "" {
		return wind.ReadFetches(bytes.NewReader(b))
	}
	in := csv.NewReader(bytes.NewReader(b))
	in.Comment = '#'
	rows, err := in.ReadAll()
	if err != nil {
		return wind.Fetches{}, err
	}
	if len(rows) == 0 {
		return wind.Fetches{}, errors.New("the table is empty")
	}
	column := -1
	for i, name := range rows[0] {
		if strings.Contains(name, station) {
			column = i
		}
	}
	if column < 1 {
		return wind.Fetches{}, fmt.Errorf("no column for station %q among %s", station, strings.Join(rows[0], ", "))
	}
	unit := rows[0][column][strings.LastIndex(rows[0][column], "_")+1:]
	var own strings.Builder
	fmt.Fprintf(&own, "wind_from_deg,fetch_%s\n", unit)
	for _, row := range rows[1:] {
		fmt.Fprintf(&own, "%s,%s\n", row[0], row[column])
	}
	return wind.ReadFetches(strings.NewReader(own.String()))
}

// An hour is one measurement of the sea with the hindcasts of that time.
type hour struct {
	buoy   wind.BuoyRow
	wind   wind.Sample
	fetch  float64
	steady bool         // eight hours of wind of 6 m/s or more, from one quarter
	states []wind.State // one for each law
	near   wind.State   // the first law with every fetch cut at nearFetch
}

// nearFetch is the fetch (m) that the seas of an open coast are compared with: about what
// a large bay gives.
const nearFetch = 100e3

// hindcast steps every law through the winds and gives the sea at each time the buoy
// measured one.
func hindcast(record wind.BuoyRecord, winds wind.Series, table wind.Fetches, depth float64, laws []wind.Law) ([]hour, error) {
	var hours []hour
	var times []time.Time
	for _, r := range record.Rows {
		if !(r.Hs > 0 && r.Tp > 0) {
			continue
		}
		s, err := winds.At(r.Time)
		if err != nil {
			continue // no wind, no hindcast
		}
		hours = append(hours, hour{buoy: r, wind: s, fetch: math.NaN()})
		times = append(times, r.Time)
	}
	if len(hours) == 0 {
		return nil, errors.New("no row has both a wind and a sea")
	}
	// A wind is not as steady as a ray: each direction stands for 15 degrees either side.
	var fetch [360]float64
	for d := range fetch {
		fetch[d] = wind.ArcFetch(table.Fetch, float64(d), 15)
	}
	smooth, err := wind.Radials(0, 1, fetch[:]...)
	if err != nil {
		return nil, err
	}
	for _, law := range laws {
		h := wind.Hindcast{Law: law, Fetch: smooth, Restricted: law == wind.Smith}
		if h.Restricted {
			h.Fetch = table.Fetch // the search does its own averaging
		}
		switch {
		case table.HasDepths():
			h.MeanDepth = func(_ time.Time, from float64) float64 { return table.MeanDepth(from) }
		case !math.IsInf(depth, 1):
			h.MeanDepth = func(time.Time, float64) float64 { return depth }
		}
		states, err := h.Run(winds, times...)
		if err != nil {
			return nil, err
		}
		for i := range hours {
			hours[i].states = append(hours[i].states, states[i])
		}
		if len(hours[0].states) > 1 {
			continue
		}
		open := h.Fetch
		h.Fetch = func(from float64) float64 { return math.Min(open(from), nearFetch) }
		if states, err = h.Run(winds, times...); err != nil {
			return nil, err
		}
		for i := range hours {
			hours[i].near = states[i]
		}
	}
	for i := range hours {
		hours[i].steady = steady(winds, hours[i].buoy.Time)
		if !hours[i].wind.IsCalm() {
			hours[i].fetch = smooth(hours[i].wind.From)
		}
	}
	return hours, nil
}

// steady reports whether the wind of the eight hours before t was 6 m/s or more, its
// resultant over 0.97 of its mean and its speed within a coefficient of variation of 0.2.
func steady(winds wind.Series, t time.Time) bool {
	part, err := winds.Between(t.Add(-8*time.Hour), t)
	if err != nil {
		return false
	}
	var n, sum, square float64
	for _, s := range part.All() {
		n, sum, square = n+1, sum+s.Speed, square+s.Speed*s.Speed
	}
	mean := sum / n
	m, err := winds.Mean(t.Add(-8*time.Hour), t)
	return err == nil && m.Covered > 0.99 && m.Steadiness > 0.97 && mean >= 6 && math.Sqrt(math.Max(0, square/n-mean*mean)) < 0.2*mean
}

// A regime is a choice of hours. What limits the sea is judged by the first law, so that
// every law is scored on the same hours.
type regime struct {
	name string
	in   func(hour) bool
}

// openSea is the regime of winds from where no shore is known.
const openSea = "open sea"

func regimes() []regime {
	blows := func(h hour) bool {
		return h.states[0].Known() && h.wind.Speed >= 5 && !h.states[0].Sea.Remarks.Has(wind.RemarkSpinUp) && !math.IsInf(h.fetch, 1)
	}
	limited := func(l wind.Limit) func(hour) bool {
		return func(h hour) bool {
			s := h.states[0]
			return blows(h) && s.Sea.Hs >= s.Old.Hs && s.Sea.Limit == l
		}
	}
	air := func(lo, hi float64) func(hour) bool {
		return func(h hour) bool {
			d := h.wind.AirMinusWater()
			return blows(h) && h.states[0].Sea.Hs >= h.states[0].Old.Hs && d > lo && d <= hi
		}
	}
	return []regime{
		{"wind of 5 m/s or more, known fetch", blows},
		{"eight hours of steady wind of 6 m/s or more", func(h hour) bool { return blows(h) && h.steady }},
		{"limited by fetch", limited(wind.LimitFetch)},
		{"limited by duration", limited(wind.LimitDuration)},
		{"limited by depth", limited(wind.LimitDepth)},
		{"fully developed", limited(wind.LimitDeveloped)},
		{"old sea the higher", func(h hour) bool { return blows(h) && h.states[0].Old.Hs > h.states[0].Sea.Hs }},
		{"air over 2 K colder than water", air(-50, -2)},
		{"air within 2 K", air(-2, 2)},
		{"air 2 to 4 K warmer", air(2, 4)},
		{"air over 4 K warmer", air(4, 50)},
		{"light wind, known fetch", func(h hour) bool { return h.states[0].Known() && h.wind.Speed < 5 && !math.IsInf(h.fetch, 1) }},
		{openSea, func(h hour) bool { return h.states[0].Known() && h.wind.Speed >= 5 && math.IsInf(h.fetch, 1) }},
	}
}

// score gathers the errors of one quantity.
type score struct {
	n               int
	sum, square, of float64
}

func (s *score) add(got, measured float64) {
	d := got - measured
	s.n, s.sum, s.square, s.of = s.n+1, s.sum+d, s.square+d*d, s.of+measured
}

func (s score) bias() float64    { return s.sum / float64(s.n) }
func (s score) rmse() float64    { return math.Sqrt(s.square / float64(s.n)) }
func (s score) scatter() float64 { return s.rmse() / (s.of / float64(s.n)) }

func report(out io.Writer, hours []hour, laws []wind.Law) {
	fmt.Fprintf(out, "%d measurements of the sea from %s to %s\n", len(hours), hours[0].buoy.Time.Format("2006-01-02"), hours[len(hours)-1].buoy.Time.Format("2006-01-02"))
	fmt.Fprintln(out, "bias and rmse are hindcast less measured; si is rmse over the mean measured value")
	for _, r := range regimes() {
		chosen := hours[:0:0]
		for _, h := range hours {
			if r.in(h) {
				chosen = append(chosen, h)
			}
		}
		if len(chosen) < 5 {
			continue
		}
		mean := score{}
		period := score{}
		for _, h := range chosen {
			mean.add(0, h.buoy.Hs)
			period.add(0, h.buoy.Tp)
		}
		n := float64(len(chosen))
		fmt.Fprintf(out, "\n%s: n = %d, measured mean Hs %.2f m, Tp %.2f s\n", r.name, len(chosen), mean.of/n, period.of/n)
		fmt.Fprintf(out, "  %-32s %6s %6s %5s   %6s %6s %5s\n", "law", "Hs bias", "rmse", "si", "Tp bias", "rmse", "si")
		for i, law := range laws {
			var hs, tp score
			for _, h := range chosen {
				s := h.states[i]
				if !s.Known() || !(s.Tp() > 0) {
					continue
				}
				hs.add(s.Hs(), h.buoy.Hs)
				tp.add(s.Tp(), h.buoy.Tp)
			}
			fmt.Fprintf(out, "  %-32s %+7.2f %6.2f %5.2f   %+7.2f %6.2f %5.2f\n", law, hs.bias(), hs.rmse(), hs.scatter(), tp.bias(), tp.rmse(), tp.scatter())
		}
		if r.name == openSea {
			reportOpenSea(out, chosen, laws[0])
		}
	}
}

// reportOpenSea prints the two things that make the seas of an open coast longer and
// faster, with their signs: the longer fetch, by the hindcast against the same with every
// fetch cut; and what is measured beyond the hindcast, which is the swell that arrives
// with the errors of law and wind.
func reportOpenSea(out io.Writer, hours []hour, law wind.Law) {
	var fetch, swell [3]score // Hs, Tp, speed of the peak
	deep := func(tp float64) float64 { return wind.Gravity * tp / (2 * math.Pi) }
	for _, h := range hours {
		s, near := h.states[0], h.near
		if !s.Known() || !near.Known() || !(s.Tp() > 0 && near.Tp() > 0) {
			continue
		}
		fetch[0].add(s.Hs(), near.Hs())
		fetch[1].add(s.Tp(), near.Tp())
		fetch[2].add(deep(s.Tp()), deep(near.Tp()))
		swell[0].add(h.buoy.Hs, s.Hs())
		swell[1].add(h.buoy.Tp, s.Tp())
		swell[2].add(deep(h.buoy.Tp), deep(s.Tp()))
	}
	if fetch[0].n == 0 {
		return
	}
	for _, row := range []struct {
		name string
		s    *[3]score
	}{
		{fmt.Sprintf("the longer fetch adds to a sea of %.0f km", nearFetch/1000), &fetch},
		{"swell that arrives adds to the hindcast", &swell},
	} {
		fmt.Fprintf(out, "  by %v, %s: Hs %+.2f m, Tp %+.2f s, speed of the peak in deep water %+.2f m/s\n", law, row.name, row.s[0].bias(), row.s[1].bias(), row.s[2].bias())
	}
}

func writeHours(w io.Writer, hours []hour, laws []wind.Law) error {
	out := csv.NewWriter(w)
	head := []string{"time", "wind_speed_m_s", "wind_from_deg", "air_minus_water_c", "fetch_km", "measured_hs_m", "measured_tp_s", "limit"}
	for _, law := range laws {
		name := strings.NewReplacer(" & ", "_", " ", "_", ",", "", "(", "", ")", "", ".", "").Replace(strings.ToLower(law.String()))
		head = append(head, name+"_hs_m", name+"_tp_s", name+"_old_hs_m")
	}
	if err := out.Write(head); err != nil {
		return err
	}
	number := func(x float64, digits int) string {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return ""
		}
		return fmt.Sprintf("%.*f", digits, x)
	}
	for _, h := range hours {
		row := []string{
			h.buoy.Time.UTC().Format(time.RFC3339), number(h.wind.Speed, 2), number(h.wind.From, 0), number(h.wind.AirMinusWater(), 1), number(h.fetch/1000, 1),
			number(h.buoy.Hs, 2), number(h.buoy.Tp, 2), h.states[0].Sea.Limit.String(),
		}
		for _, s := range h.states {
			row = append(row, number(s.Hs(), 3), number(s.Tp(), 2), number(s.Old.Hs, 3))
		}
		if err := out.Write(row); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}
