package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "growth", growth)
	lessontest.Prints(t, "growth", growth, []string{"-fetch", "inf", "-hours", "240"}, "ON THE OPEN SEA", "fully developed")
	lessontest.Prints(t, "growth", growth, []string{"-depth", "2"}, "2 m deep", "depth")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "growth", growth, []string{"-wind", "nan"}, []string{"-wind", "200"}, []string{"-fetch", "0"},
		[]string{"-depth", "-1"}, []string{"-hours", "1,2,"}, []string{"-hours", "-1"})
}
