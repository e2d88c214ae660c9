// Plan prints a plan for a day on the water: what the wind, the sea, the tide
// and the streams make of a run, departure by departure, and which of the
// paddler's own limits each of them meets, breaks, or leaves unknown.
//
//	go run ./examples/plan                 the embedded demonstration, an invented coast
//	go run ./examples/plan -data DIR       your own files
//	go run ./examples/plan -h              what the files hold
package main

import (
	"embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"runtime/debug"
	"strings"
	"time"
	_ "time/tzdata" // zones on machines that have none

	"followingsea.example/route/passage"
)

//go:embed demo
var demonstration embed.FS

// Exit codes.
const (
	exitPlan     = 0 // a plan was printed, whatever it says
	exitInternal = 1
	exitInput    = 2 // a file or an option cannot be used
)

func main() {
	debug.SetMemoryLimit(192 << 20) // the heap stays small whatever comes in
	os.Exit(plan(os.Args[1:], os.Stdout, os.Stderr))
}

// options are what the command line asks for.
type options struct {
	data       string
	from, to   string
	step       time.Duration
	zone       *time.Location
	zoneName   string
	json       bool
	warning    string
	anemometer float64
	lake       bool
	run        string
	party      bool
	regroup    []float64
	search     bool
	ashore     string // files that are written
	ics        string
	gpx        string
	seen       string
	debrief    string
	now        time.Time
}

// plan is the whole program; it returns the exit code.
func plan(args []string, stdout, stderr io.Writer) int {
	o, err := parse(args, stdout)
	switch {
	case errors.Is(err, flag.ErrHelp):
		return exitPlan
	case err != nil:
		fmt.Fprintf(stderr, "plan: %v\n", err)
		return exitInput
	}
	in, err := load(o)
	if err != nil {
		fmt.Fprintf(stderr, "plan: %v\n", err)
		return exitInput
	}
	if o.search {
		c, err := search(in, o, stderr)
		if err == nil && o.json {
			err = c.writeJSON(stdout)
		} else if err == nil {
			err = c.write(stdout)
		}
		return failed(err, stderr)
	}
	p, err := work(in, o)
	if err != nil {
		return failed(err, stderr)
	}
	if err := p.writeFiles(); err != nil {
		fmt.Fprintf(stderr, "plan: %v\n", err)
		return exitInput
	}
	if o.json {
		err = writeJSON(stdout, p)
	} else {
		err = writeText(stdout, p)
	}
	return failed(err, stderr)
}

// failed tells of an error, if there is one, and returns the exit code.
func failed(err error, stderr io.Writer) int {
	if err == nil {
		return exitPlan
	}
	fmt.Fprintf(stderr, "plan: %v\n", err)
	if errors.Is(err, errUse) || errors.Is(err, passage.ErrInput) {
		return exitInput
	}
	return exitInternal
}

// errUse marks an option that cannot be used as given.
var errUse = errors.New("option")

func parse(args []string, help io.Writer) (options, error) {
	o := options{step: 30 * time.Minute, now: time.Now()}
	f := flag.NewFlagSet("plan", flag.ContinueOnError)
	f.SetOutput(io.Discard)
	f.StringVar(&o.data, "data", "", "folder with the files of the run and the day")
	f.StringVar(&o.from, "from", "", "first departure")
	f.StringVar(&o.to, "to", "", "last departure")
	f.DurationVar(&o.step, "step", o.step, "time between departures")
	f.StringVar(&o.zoneName, "tz", "", "zone in which times are printed")
	f.BoolVar(&o.json, "json", false, "print the plan as JSON")
	f.StringVar(&o.warning, "warning", "", "official warning in force: its words, or none")
	regroup := f.String("regroup", "", "distances in km at which a party regroups")
	f.BoolVar(&o.party, "party", false, "plan for the party of party.json")
	f.BoolVar(&o.search, "search", false, "compare all runs over all days of the forecast and its members")
	f.StringVar(&o.run, "run", "", "name of the run to plan")
	f.StringVar(&o.ashore, "ashore", "", "file for the plan to be left ashore")
	f.StringVar(&o.ics, "ics", "", "file for the calendar with the overdue alarm")
	f.StringVar(&o.gpx, "gpx", "", "file for the planned track")
	f.StringVar(&o.debrief, "debrief", "", "recorded track to compare with the plan")
	f.StringVar(&o.seen, "seen", "", "what is seen at the launch")
	f.BoolVar(&o.lake, "lake", false, "water without tide, stream and swell")
	f.Float64Var(&o.anemometer, "anemometer", 0, "height of the anemometer of a buoy record in metres")
	if err := f.Parse(args); err != nil {
		if errors.Is(err, flag.ErrHelp) {
			fmt.Fprint(help, strings.Replace(usage, "RULES\n", ruleHelp(), 1))
		}
		return o, err
	}
	if f.NArg() > 0 {
		return o, fmt.Errorf("%w: %q is not an option; -h explains them", errUse, f.Arg(0))
	}
	if !(o.step >= time.Minute && o.step <= 24*time.Hour) {
		return o, fmt.Errorf("%w -step: %v: want 1m to 24h", errUse, o.step)
	}
	if o.anemometer != 0 && !(o.anemometer >= 1 && o.anemometer <= 100) {
		return o, fmt.Errorf("%w -anemometer: %v: want 1 to 100 m", errUse, o.anemometer)
	}
	if o.search {
		for _, x := range []struct{ option, value string }{{"-ashore", o.ashore}, {"-ics", o.ics}, {"-gpx", o.gpx}, {"-seen", o.seen}} {
			if x.value != "" {
				return o, fmt.Errorf("%w %s: it belongs to one departure: not with -search", errUse, x.option)
			}
		}
	}
	if *regroup != "" {
		var err error
		if o.regroup, err = kilometres("-regroup", *regroup); err != nil {
			return o, err
		}
	}
	if _, err := seen(o.seen); err != nil {
		return o, err
	}
	if o.zoneName == "" {
		o.zoneName = "UTC"
		if o.data == "" {
			o.zoneName = demoZone
		}
	}
	zone, err := time.LoadLocation(o.zoneName)
	if err != nil {
		return o, fmt.Errorf("%w -tz: %q: want a zone of the time zone database, such as Europe/Lisbon or Etc/GMT+2", errUse, o.zoneName)
	}
	o.zone = zone
	return o, nil
}

// demoZone is the zone of the invented coast: two hours behind UTC. demoDay is
// the day of it that is planned.
const demoZone = "Etc/GMT+2"

var demoDay = time.Date(2026, 9, 12, 14, 0, 0, 0, time.UTC)

// folder returns the files of the plan.
func (o options) folder() (fs.FS, error) {
	if o.data == "" {
		return fs.Sub(demonstration, "demo")
	}
	info, err := os.Stat(o.data)
	switch {
	case err != nil:
		return nil, fmt.Errorf("%w -data: %v", errUse, err)
	case !info.IsDir():
		return nil, fmt.Errorf("%w -data: %s is a file: want a folder", errUse, o.data)
	}
	return os.DirFS(o.data), nil
}

// ruleHelp lists what can be limited, with the unit to write it in.
func ruleHelp() string {
	units := map[string]string{"m/s": "_kn", "deg": "_deg", "m": "_m", "s": "_min", "C": "_c"}
	var b strings.Builder
	line := strings.Repeat(" ", 17)
	for _, r := range passage.Rules() {
		name := r.String() + units[r.Unit()]
		if len(line)+1+len(name) > 100 {
			b.WriteString(line + "\n")
			line = strings.Repeat(" ", 17)
		}
		line += " " + name
	}
	return b.String() + line + "\n"
}

const usage = `Plan prints a plan for a day on the water from the files of a folder.

  go run ./examples/plan                     the embedded demonstration: an invented coast
  go run ./examples/plan -data DIR           your own files
  go run ./examples/plan -data DIR -from 08:00 -to 14:00 -step 15m -tz Europe/Lisbon

Options
  -data DIR       folder with the files below; without it the demonstration is planned
  -from, -to T    first and last departure: 08:00, 2026-06-21, 2026-06-21T08:00 (in the zone of -tz), or
                  RFC 3339. Without them: the daylight of today, or of the last day of the wind record
  -step D         time between departures: 15m, 1h (30m)
  -run NAME       plan this run of the folder runs: the name of its file without the ending, or of the run
  -search         which run, and when: every run, every departure by daylight from now to the end of the wind
                  record (-from, -to narrow it; -run keeps to one run), over the members of the forecast
  -party          plan for the party of party.json instead of the paddler of paddler.json
  -regroup KM,... distances along the run at which a party regroups: 5,9
  -tz ZONE        zone in which times are printed, by its name in the time zone database (UTC)
  -warning TEXT   the official warning in force, in its own words, or none if you have
                  looked and there is none; without it that is unknown
  -anemometer M   height in metres at which a buoy record was measured (10)
  -lake           the water is a lake, without tide, stream and swell: their files are not looked for
  -ashore FILE    write the plan to be left with somebody ashore
  -ics FILE       write a calendar entry of it, with an alarm for when you are overdue
  -gpx FILE       write the planned track with its times: GPX, or GeoJSON where FILE ends in .geojson
  -seen TEXT      what is seen at the launch: wind=18kn,from=250,sea=1.2m,late=20m, or some of these;
                  the plan then says which findings that changes
  -debrief FILE   compare a recorded track (GPX or GeoJSON, with times) with the plan for the instant it begins
  -json           the same plan for programs, with a schema number

Files. CSV is RFC 4180 with the unit in the column name; times are RFC 3339 with a zone;
wind and waves are named by where they come FROM, streams by where they SET. An empty cell is a
missing value. Only the run and the paddler are required: what is missing makes the answer narrower,
and the plan says so.

  run.geojson     RFC 7946. One LineString with role "run" (name; depth_m: one number, or a list with one
                  for each leg; fetch_depth_m: mean depth of the water the waves come over).
                  Points with role "exit": name, note, charted_depth_m (negative where it dries), and the
                  conditions for landing: least_depth_m, greatest_breaker_m, seaward_deg,
                  daylight_only, greatest_stream_kn; a number or "none". One that is left out is
                  unknown, and that landing is never counted on.
                  LineStrings or Polygons with role "coast" (reflects: "cliff", "wall", "boulders", or the part
                  of a wave's height it throws back); on the run exposure: [[low, mid, high], ...], what you
                  know of the wind on each leg as factors on the forecast. Polygons with role "avoid", "traffic", "no-signal".
  run.gpx         instead: a GPX 1.1 route, and waypoints of type exit
  coast.geojson   the shore, for a run that has none of its own, as a GPX file never has: lines and polygons of land
  runs/NAME.geojson, NAME.gpx   further runs. One without coast, exits or areas has those of the main run
  wind.csv        time,wind_speed_kn,wind_gust_kn,wind_from_deg,air_temperature_c,water_temperature_c
                  2026-06-21T08:00:00+01:00,12,16,240,17,14
                  some days of history and the forecast; m_s, km_h, mph for other units.
                  A record in the text format of the national data buoys may stand in its place.
  members/NAME/wind.csv   the members of an ensemble forecast, for -search; before its first row each has wind.csv
  swell.csv       time,system,swell_height_m,swell_period_s,swell_from_deg
                  2026-06-21T06:00:00Z,west,1.2,11,265
  tide.csv        time,height_m           the times and heights of high and low water
                  2026-06-21T05:12:00Z,0.8
  constituents.json  instead: the harmonic constituents of the port
  stream.csv      time,rate_kn,set_deg; or by hours from high water, under the mean ranges of the port:
                  # spring_range_m: 3.6
                  # neap_range_m: 1.7
                  hour,set_deg,springs_kn,neaps_kn
                  -3,60,1.9,0.9
  paddler.json    {"name": "...", "cruise_km_h": 6, "sprint_km_h": 10, "mass_kg": 95, "board_length_m": 4.2,
                   "endurance_h": 3, "variation_east_deg": -2, "variation_date": "2026-01-01",
                   "limits": {"least_wind_kn": 12, "greatest_wind_kn": 22, "least_daylight_min": 60}}
                  A limit that is left out is not asked for. What can be limited:
RULES
  ashore.json     what only you can say of the plan left ashore; each member may be left out and is then a blank:
                  {"leader": {"name", "phone", "age_band", "ability", "medical"}, "people": [{...}],
                   "craft": [{"kind", "length_m", "top", "bottom", "marks", "count"}], "clothing", "flotation", "leash",
                   "launch", "finish", "vehicle", "plate", "shuttle_min", "call_sign", "mmsi", "channels", "phones", "beacon",
                   "lights", "flares", "whistle", "sources", "contacts": [{...}], "authority": {...}, "grace_min",
                   "check_ins": [{"place", "time", "with"}], "id", "remarks"}
  log.csv         your runs: time,handling (in hand, hard, trouble) and what was met with, named as the limits are:
                  time,handling,greatest_wind_kn,greatest_sea_m
                  2026-06-01T10:00:00+01:00,in hand,18,0.8
  party.json      {"party": [{...}, {...}]}: the same of each, and "leader": true of who leads

Exit code: 0 when a plan was printed, even one in which every departure breaks a limit; 2 when a file or an
option cannot be used; 1 for a failure of the program.
`
