package main

import (
	"bytes"
	_ "embed"
	"encoding/csv"
	"fmt"
	"io"
	"math"
	"strconv"

	"followingsea.example/wind"
)

//go:embed testdata/measured-points.csv
var measuredPoints []byte

// A point is a measured sea under a steady wind.
type point struct {
	conditions             wind.Conditions
	byFetch                bool
	airMinusWater          float64
	measuredHs, measuredTp float64
}

func readPoints(b []byte) ([]point, error) {
	in := csv.NewReader(bytes.NewReader(b))
	in.Comment = '#'
	rows, err := in.ReadAll()
	if err != nil {
		return nil, err
	}
	var points []point
	for i, row := range rows[1:] {
		number := func(column int) float64 {
			if row[column] == "" {
				return math.Inf(1)
			}
			x, perr := strconv.ParseFloat(row[column], 64)
			if perr != nil && err == nil {
				err = fmt.Errorf("point %d: %w", i+1, perr)
			}
			return x
		}
		points = append(points, point{
			conditions: wind.Conditions{Speed: number(2), Fetch: number(4) * 1000, Duration: number(5) * 3600, MeanDepth: math.Inf(1)},
			byFetch:    row[0] == "fetch", airMinusWater: number(6), measuredHs: number(7), measuredTp: number(8),
		})
		if err != nil {
			return nil, err
		}
	}
	return points, nil
}

// scorePoints prints the score of Grow by stability class. The default law was chosen after
// these points had been looked at: this is a regression check, not a validation.
func scorePoints(out io.Writer, laws []wind.Law) error {
	points, err := readPoints(measuredPoints)
	if err != nil {
		return err
	}
	air := func(fetch bool, lo, hi float64) func(point) bool {
		return func(p point) bool { return p.byFetch == fetch && p.airMinusWater > lo && p.airMinusWater <= hi }
	}
	fmt.Fprintln(out, "Lake Superior, station 45004, deep water, steady winds; nothing is fitted, but the default law was chosen after seeing these points.")
	fmt.Fprintln(out, "bias is the mean of predicted less measured over the mean measured; si the rms error over it")
	for _, class := range []struct {
		name string
		in   func(point) bool
	}{
		{"fetch known, air over 2 K colder than water", air(true, -50, -2)},
		{"fetch known, air within 2 K", air(true, -2, 2)},
		{"fetch known, air 2 to 4 K warmer", air(true, 2, 4)},
		{"fetch known, air over 4 K warmer", air(true, 4, 50)},
		{"hours after a wind step, air over 2 K colder", air(false, -50, -2)},
		{"hours after a wind step, air within 2 K", air(false, -2, 2)},
		{"hours after a wind step, air over 2 K warmer", air(false, 2, 50)},
	} {
		var chosen []point
		for _, p := range points {
			if class.in(p) {
				chosen = append(chosen, p)
			}
		}
		if len(chosen) == 0 {
			continue
		}
		fmt.Fprintf(out, "\n%s: n = %d\n  %-32s %8s %5s   %8s %5s\n", class.name, len(chosen), "law", "Hs bias", "si", "Tp bias", "si")
		for _, law := range laws {
			var hs, tp score
			for _, p := range chosen {
				s := wind.Grow(law, p.conditions)
				hs.add(s.Hs, p.measuredHs)
				tp.add(s.Tp, p.measuredTp)
			}
			fmt.Fprintf(out, "  %-32s %+7.0f%% %5.2f   %+7.0f%% %5.2f\n", law, 100*hs.sum/hs.of, hs.scatter(), 100*tp.sum/tp.of, tp.scatter())
		}
	}
	return nil
}
