package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "catch", catch)
	// By hand: 10 s x 3.03 kn = 30.3 kn; 8.4 sqrt(0.5) kn = 5.9 kn.
	lessontest.Prints(t, "catch", catch, []string{"-periods", "10"}, "    10    30.3 |", "|       5.9 |")
	// Ground swell is never caught in deep water; over a metre and a half it is slow enough.
	lessontest.Prints(t, "catch", catch, []string{"-periods", "12", "-height", "2"}, "too fast")
	lessontest.Prints(t, "catch", catch, []string{"-periods", "12", "-depth", "1.5", "-height", "0.8"}, "catch")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "catch", catch, []string{"-periods", "0"}, []string{"-periods", "4,x"}, []string{"-depth", "-3"},
		[]string{"-cruise", "nan"}, []string{"-height", "-1"}, []string{"-off", "90"}, []string{"-wind", ""})
}
