package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"

	"followingsea.example/route"
	"followingsea.example/wind"
)

// mostOfAKind bounds the candidate runs and the members of a folder, whose files
// together are no larger than one file may be, and mostSamples the winds of all
// members with the record before each.
const (
	mostOfAKind = 100
	mostSamples = 1_000_000
)

// A candidate is a run of the folder.
type candidate struct {
	name string // of its file, without the ending; "run" for the main one
	file string
	run  route.Run
}

// coastFile is the shore of a run that has none of its own.
const coastFile = "coast.geojson"

// mainRun is the name by which -run finds the run of run.geojson.
const mainRun = "run"

// readRun reads a run by the ending of its file.
func readRun(dir fs.FS, file string) (run route.Run, err error) {
	parse := route.ReadRun
	if strings.HasSuffix(file, ".gpx") {
		parse = route.ReadRunGPX
	}
	err = read(dir, file, func(r io.Reader) (err error) { run, err = parse(r); return })
	return run, err
}

// runFile returns the file of the main run.
func runFile(dir fs.FS) (string, error) {
	for _, name := range []string{"run.geojson", "run.gpx"} {
		if _, err := fs.Stat(dir, name); !errors.Is(err, fs.ErrNotExist) {
			return name, nil
		}
	}
	return "", errors.New("neither run.geojson nor run.gpx is there: want the run")
}

// candidateFiles lists the files of the candidate runs, in the order of their
// names.
func candidateFiles(dir fs.FS) ([]candidate, error) {
	list, err := fs.ReadDir(dir, "runs")
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("runs: want a folder of runs: %w", err)
	}
	var out []candidate
	var size int64
	for _, f := range list {
		if strings.HasPrefix(f.Name(), ".") {
			continue
		}
		name, geojson := strings.CutSuffix(f.Name(), ".geojson")
		name, gpx := strings.CutSuffix(name, ".gpx")
		if !geojson && !gpx {
			return nil, fmt.Errorf("runs/%s is not a run: want NAME.geojson or NAME.gpx", f.Name())
		}
		if info, err := f.Info(); err == nil {
			size += info.Size()
		}
		out = append(out, candidate{name: name, file: path.Join("runs", f.Name())})
	}
	switch {
	case len(out) > mostOfAKind:
		return nil, fmt.Errorf("runs has %d runs: want at most %d", len(out), mostOfAKind)
	case size > largestRun:
		return nil, errors.New("the files of runs together are larger than 16 MB")
	}
	return out, nil
}

// loadRuns finds the run that is planned, and with -search reads the others
// too. A candidate without a coast, exits or areas has those of the main run.
func (in *inputs) loadRuns(dir fs.FS, o options) error {
	file, err := runFile(dir)
	if err != nil {
		return err
	}
	first := candidate{name: mainRun, file: file}
	if first.run, err = readRun(dir, file); err != nil {
		return err
	}
	if first.run.Coast == nil { // a GPX file has none
		if _, err := in.optional(dir, coastFile, "", func(r io.Reader) (err error) { first.run.Coast, err = route.ReadCoast(r); return }); err != nil {
			return err
		}
	}
	others, err := candidateFiles(dir)
	if err != nil {
		return err
	}
	in.runs = append([]candidate{first}, others...)
	wanted := -1
	for i := range in.runs {
		c := &in.runs[i]
		if i > 0 && (o.search || o.run != "") {
			if c.run, err = readRun(dir, c.file); err != nil {
				return err
			}
			c.run = completed(c.run, first.run)
		}
		if c.name == o.run || o.run != "" && strings.EqualFold(c.run.Name, o.run) {
			wanted = i
		}
	}
	switch {
	case o.run == "":
		wanted = 0
	case wanted < 0:
		return fmt.Errorf("%w -run: %q: want %s", errUse, o.run, strings.Join(in.runNames(), ", "))
	}
	in.run, in.runFile = in.runs[wanted].run, in.runs[wanted].file
	in.noteRun()
	return in.noteLand()
}

// completed gives a candidate the shore of the main run where it has none of
// its own.
func completed(run, from route.Run) route.Run {
	if run.Coast == nil {
		run.Coast = from.Coast
	}
	if len(run.Exits) == 0 {
		run.Exits = from.Exits
	}
	if len(run.Areas) == 0 {
		run.Areas = from.Areas
	}
	return run
}

// runNames lists the names that -run takes.
func (in *inputs) runNames() []string {
	var names []string
	for _, c := range in.runs {
		names = append(names, c.name)
	}
	return names
}

// noteRun says what the run lacks.
func (in *inputs) noteRun() {
	if in.run.Coast == nil {
		in.notes = append(in.notes, in.runFile+" has no coast, and "+coastFile+" is not there: fetch, wind sea and ways out are unknown")
	}
	if len(in.run.Exits) == 0 {
		in.notes = append(in.notes, in.runFile+" has no exits: the ways out are unknown")
	}
	if _, ok := in.run.FetchDepth.Get(); !ok {
		in.notes = append(in.notes, in.runFile+" does not say how deep the water is that the waves come over (fetch_depth_m): the sea is worked out for deep water")
	}
}

// noteLand says where the line of the run crosses land.
func (in *inputs) noteLand() error {
	along := 0.0
	for _, l := range in.run.Legs() {
		if in.run.Coast == nil {
			return nil
		}
		x, err := in.run.Coast.Crosses(l.From, l.To)
		if err != nil {
			return fmt.Errorf("%s: %w", in.runFile, err)
		}
		if x.Land {
			in.notes = append(in.notes, fmt.Sprintf("%s: the line of the run meets land at km %.1f: draw it clear of the shore", in.runFile, (along+x.Distance)/1000))
		}
		along += l.Distance
	}
	return nil
}

// A member is one forecast of an ensemble.
type member struct {
	name string
	wind wind.Series
}

// loadMembers reads the members of the ensemble: members/NAME/wind.csv. Before
// its first sample a member has the wind of wind.csv.
func (in *inputs) loadMembers(dir fs.FS) error {
	list, err := fs.ReadDir(dir, "members")
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return fmt.Errorf("members: want a folder of folders: %w", err)
	}
	var size int64
	samples := 0
	for _, f := range list {
		if strings.HasPrefix(f.Name(), ".") {
			continue
		}
		file := path.Join("members", f.Name(), "wind.csv")
		if info, err := fs.Stat(dir, file); err == nil {
			size += info.Size()
		}
		switch {
		case len(in.members) == mostOfAKind:
			return fmt.Errorf("members has more than %d members: want at most so many", mostOfAKind)
		case size > largest:
			return errors.New("the files of members together are larger than 32 MB")
		}
		m := member{name: f.Name()}
		if err := read(dir, file, func(r io.Reader) (err error) { m.wind, err = wind.ReadSeries(r, 0); return }); err != nil {
			return err
		}
		if m.wind, err = spliced(in.wind, m.wind); err != nil {
			return fmt.Errorf("%s: %w", file, err)
		}
		if samples += m.wind.Len(); samples > mostSamples {
			return fmt.Errorf("%s: with it the members have more than %d winds, the record before each counted: want fewer members, or a wind every ten minutes or hour", file, mostSamples)
		}
		in.members = append(in.members, m)
	}
	return nil
}

// spliced puts before a forecast as much of the record as any departure in it
// looks back on.
func spliced(record, forecast wind.Series) (wind.Series, error) {
	var samples []wind.Sample
	start := forecast.Start()
	for _, s := range record.All() {
		if s.Time.Before(start) && s.Time.After(start.Add(-2*history)) {
			samples = append(samples, s)
		}
	}
	return wind.NewSeries(append(samples, forecast.Samples()...), 0)
}
