package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "lastlight", lastLight)
	// By hand: 3 h, out 4.5, home 1.5: turn after 3 x 1.5/6 = 0:45, 3.4 nmi out.
	lessontest.Prints(t, "lastlight", lastLight, []string{"-endurance", "3", "-out", "4.5", "-home", "1.5"}, "0:45  3.4 nmi   4.5 nmi short")
	lessontest.Prints(t, "lastlight", lastLight, []string{"-home", "0"}, "0:00  0.0 nmi")
	lessontest.Prints(t, "lastlight", lastLight, []string{"-lat", "80", "-date", "2026-06-21"}, "stays above")
	lessontest.Prints(t, "lastlight", lastLight, []string{"-lat", "85", "-date", "2026-12-21"}, "stays below")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "lastlight", lastLight, []string{"-lat", "91"}, []string{"-lon", "nan"}, []string{"-date", "soon"}, []string{"-offset", "99"},
		[]string{"-out", "0"}, []string{"-home", "-1"}, []string{"-endurance", "inf"}, []string{"-reserve", "x"}, []string{"-distance", "0"})
}
