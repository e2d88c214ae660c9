package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "steer", steer)
	// By hand: 3-4-5: across a stream of 3 at 5 knots, asin(0.6) = 36.87 degrees into it, 4 over the ground.
	lessontest.Prints(t, "steer", steer, []string{"-track", "0", "-set", "90", "-rates", "3", "-speed", "5", "-distance", "4"}, "323        -37°             4.0   60 min")
	lessontest.Prints(t, "steer", steer, []string{"-track", "0", "-set", "180", "-rates", "2,5", "-speed", "3"}, "going backward")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "steer", steer, []string{"-track", "nan"}, []string{"-track", "400"}, []string{"-speed", "0"},
		[]string{"-rates", "1;2"}, []string{"-distance", "inf"}, []string{"-set", "-1"})
}
