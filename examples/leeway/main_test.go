package main

import (
	"testing"

	"followingsea.example/examples/internal/lessontest"
)

func TestOutput(t *testing.T) {
	lessontest.Output(t, "leeway", leeway)
	// By hand: 0.0193 x 20 x 1852 m = 715 m.
	lessontest.Prints(t, "leeway", leeway, []string{"-winds", "20"}, "710 ±190")
}

func TestFlags(t *testing.T) {
	lessontest.Refuses(t, "leeway", leeway, []string{"-winds", "nan"}, []string{"-winds", "10,-5"}, []string{"-speed", "0"}, []string{"-speed", "1e99"}, []string{"-winds", "0"})
}
