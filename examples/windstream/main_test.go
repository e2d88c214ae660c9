package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "windstream", windStream)
	// By hand: 8 s in deep water are stopped by 8 x 0.76 = 6.1 knots.
	lessontest.Prints(t, "windstream", windStream, []string{"-period", "8", "-depth", "inf", "-streams", "-7,0"}, "stopped by 6.1 kn", "as it was")
	lessontest.Prints(t, "windstream", windStream, []string{"-wind", "1", "-streams", "3"}, "-2.0 |")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "windstream", windStream, []string{"-wind", "nan"}, []string{"-hs", "0"}, []string{"-period", "inf"},
		[]string{"-depth", "0"}, []string{"-streams", "99"}, []string{"-streams", "1,,2"})
}
