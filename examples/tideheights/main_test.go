package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "tideheights", tideHeights)
	lessontest.Prints(t, "tideheights", tideHeights, []string{"-shallow", "-date", "2026-03-20"}, "estuary", "20 March 2026", "rises")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "tideheights", tideHeights, []string{"-date", "tomorrow"}, []string{"-date", "2026-02-30"},
		[]string{"-date", "0001-01-01"})
}
