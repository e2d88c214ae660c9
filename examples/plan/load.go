package main

import (
	"bufio"
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
	"followingsea.example/wind"
)

// inputs are the files of a plan, read.
type inputs struct {
	runs    []candidate // the main run first; the others are read when they are asked for
	run     route.Run   // the one that is planned
	runFile string
	members []member
	wind    wind.Series
	hasWind bool
	table   *tide.Table
	day     passage.Day
	party   []passage.Paddler
	form    passage.Form
	log     []passage.Outing
	notes   []string // what is missing or was taken as it is, in words
}

// errMissing marks a file that is not there.
var errMissing = errors.New("is not there")

// The largest files that are opened at all: a table of years, a shore of half a
// million points, a page about people. With them the heap stays below 256 MB
// whatever comes in.
const (
	largest       = 32 << 20
	largestRun    = 16 << 20
	largestPeople = 1 << 20
)

// largestOf is the largest size of a file of that name.
func largestOf(name string) int64 {
	switch path.Base(name) {
	case "paddler.json", "party.json", formFile:
		return largestPeople
	}
	switch path.Ext(name) {
	case ".geojson", ".gpx":
		return largestRun
	}
	return largest
}

// open opens a file of the folder, refusing a folder in its place and a file
// that is too large.
func open(dir fs.FS, name string) (io.ReadCloser, error) {
	info, err := fs.Stat(dir, name)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, fmt.Errorf("%s %w", name, errMissing)
	case err != nil:
		return nil, fmt.Errorf("%s: %w", name, err)
	case info.IsDir():
		return nil, fmt.Errorf("%s is a folder: want a file", name)
	case info.Size() > largestOf(name):
		return nil, fmt.Errorf("%s has %d MB: want at most %d MB (no file is read that is larger than 32 MB)", name, info.Size()>>20, largestOf(name)>>20)
	}
	return dir.Open(name)
}

// read opens a file and hands it to the reader; errors get its name.
func read(dir fs.FS, name string, f func(io.Reader) error) error {
	file, err := open(dir, name)
	if err != nil {
		return err
	}
	defer file.Close()
	if err := f(file); err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	return nil
}

// optional is read for a file that may be missing: then it notes what that
// means.
func (in *inputs) optional(dir fs.FS, name, without string, f func(io.Reader) error) (bool, error) {
	err := read(dir, name, f)
	if errors.Is(err, errMissing) {
		if without != "" {
			in.notes = append(in.notes, name+" is not there: "+without)
		}
		return false, nil
	}
	return err == nil, err
}

func load(o options) (*inputs, error) {
	dir, err := o.folder()
	if err != nil {
		return nil, err
	}
	return loadFrom(dir, o)
}

// loadFrom reads the files of a folder.
func loadFrom(dir fs.FS, o options) (*inputs, error) {
	in := &inputs{}
	if err := in.loadRuns(dir, o); err != nil {
		return nil, err
	}
	people := "paddler.json"
	if o.party {
		people = "party.json"
	}
	err := read(dir, people, func(r io.Reader) (err error) { in.party, err = passage.ReadPaddlers(r); return })
	if err != nil {
		return nil, err
	}
	if err := in.loadForm(dir); err != nil {
		return nil, err
	}
	if err := in.loadLog(dir); err != nil {
		return nil, err
	}
	if err := in.loadWind(dir, o); err != nil {
		return nil, err
	}
	if o.search {
		if err := in.loadMembers(dir); err != nil {
			return nil, err
		}
	}
	if o.lake {
		in.day.Swell = passage.NoSwell{}
		in.day.Streams = []passage.StreamGauge{{At: in.run.Points[0], Stream: still{}}}
		in.day.Tide = level{}
		in.notes = append(in.notes, "a lake: no tide, no stream and no swell")
		in.warn(o)
		return in, nil
	}
	if _, err := in.optional(dir, "swell.csv", "the swell is unknown, and so is every limit on it", func(r io.Reader) error {
		s, err := wind.ReadSwells(r, 0)
		in.day.Swell = s
		return err
	}); err != nil {
		return nil, err
	}
	if err := in.loadTide(dir); err != nil {
		return nil, err
	}
	if err := in.loadStream(dir); err != nil {
		return nil, err
	}
	in.warn(o)
	return in, nil
}

// warn takes the official warning from the command line.
func (in *inputs) warn(o options) {
	switch o.warning {
	case "":
		in.notes = append(in.notes, "whether an official warning is in force is unknown: look, and say so with -warning")
	case "none":
		in.day.Warning = passage.NoWarningInForce()
	default:
		in.day.Warning = passage.WarningInForce(o.warning)
	}
}

// still is water without a stream, level is water without a tide.
type (
	still struct{}
	level struct{}
)

func (still) Velocity(time.Time) tide.Velocity { return tide.Velocity{} }
func (level) Height(time.Time) float64         { return 0 }

func (in *inputs) loadWind(dir fs.FS, o options) error {
	for _, name := range []string{"wind.csv", "wind.txt"} {
		ok, err := in.optional(dir, name, "", func(r io.Reader) error { return in.readWind(r, o) })
		if err != nil {
			return err
		}
		if ok {
			in.hasWind = true
			in.day.Wind = []passage.Anemometer{{At: in.run.Points[0], Series: in.wind}}
			return nil
		}
	}
	in.notes = append(in.notes, "wind.csv is not there: wind and sea are unknown, and so is how fast the board goes")
	return nil
}

// readWind reads a wind table, or a buoy record where the file begins like one.
func (in *inputs) readWind(r io.Reader, o options) (err error) {
	buf := bufio.NewReader(r)
	head, _ := buf.Peek(8)
	if !bytes.HasPrefix(bytes.TrimLeft(head, "#"), []byte("YY")) {
		in.wind, err = wind.ReadSeries(buf, 0)
		return err
	}
	record, err := wind.ReadBuoy(buf)
	if err != nil {
		return err
	}
	height := o.anemometer
	if height == 0 {
		height = 10
		in.notes = append(in.notes, "the height of the buoy's anemometer is not given: the wind is taken as that at 10 m; see -anemometer")
	}
	for _, remark := range record.Remarks {
		in.notes = append(in.notes, "the buoy record: "+remark.String())
	}
	in.wind, err = record.Winds(height, 0)
	return err
}

func (in *inputs) loadTide(dir fs.FS) error {
	ok, err := in.optional(dir, "tide.csv", "", func(r io.Reader) (err error) { in.table, err = tide.ReadTable(r, tide.Options{}); return })
	if err != nil {
		return err
	}
	if ok {
		in.day.Tide = in.table
		return nil
	}
	if _, err := fs.Stat(dir, "constituents.json"); errors.Is(err, fs.ErrNotExist) {
		in.notes = append(in.notes, "neither tide.csv nor constituents.json is there: depth and landing depths are unknown")
	}
	_, err = in.optional(dir, "constituents.json", "", func(r io.Reader) error {
		s, err := harmonic.ReadStation(r)
		if err != nil {
			return err
		}
		t, err := harmonic.New(s, harmonic.AtInstant)
		if err != nil {
			return err
		}
		in.day.Tide = t
		if in.hasWind { // high waters for a table of streams by the hour
			in.table, err = t.Table(in.wind.Start(), in.wind.End().Add(36*time.Hour), 0.01, tide.Options{})
		}
		if s.Stream != nil && err == nil {
			var stream *harmonic.Stream
			if stream, err = harmonic.NewStream(*s.Stream, harmonic.AtInstant); err == nil {
				in.day.Streams = []passage.StreamGauge{{At: in.run.Points[0], Stream: stream}}
			}
		}
		return err
	})
	return err
}

func (in *inputs) loadStream(dir fs.FS) error {
	without := "the stream is unknown, and so is the speed over the ground; on a lake say -lake"
	if len(in.day.Streams) > 0 {
		without = "" // the constituents carry one
	}
	_, err := in.optional(dir, "stream.csv", without, func(r io.Reader) error {
		s, err := tide.ReadStreams(r, in.table, 0)
		if err != nil {
			return err
		}
		in.day.Streams = []passage.StreamGauge{{At: in.run.Points[0], Stream: s}}
		return nil
	})
	return err
}
