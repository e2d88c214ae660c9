package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "wavespeed", waveSpeed)
	// By hand: 10 s x 3.03 kn; 156 m; sqrt(9.81 x 1 m) = 3.1 m/s = 6.1 kn.
	lessontest.Prints(t, "wavespeed", waveSpeed, []string{"-periods", "10", "-depths", "inf,1"}, "10 s |   30.3d    6.0s", "10 |  156.1")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "wavespeed", waveSpeed, []string{"-periods", "0"}, []string{"-periods", "4,x"}, []string{"-depths", "-3"},
		[]string{"-board", "nan"}, []string{"-height", "-1"}, []string{"-mass", "1e9"}, []string{"-mass", ""})
}
