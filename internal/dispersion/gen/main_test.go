package main

import (
	"bytes"
	"os"
	"testing"
)

// The stored table is, byte for byte, what the generator writes.
func TestTableIsFresh(t *testing.T) {
	stored, err := os.ReadFile("../table.go")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(stored, write()) {
		t.Error("table.go differs from the generator's output: run go generate ./internal/dispersion")
	}
}

// The exact series of x² begins y + y²/3 + 4y³/45 + 16y⁴/945.
func TestSmallSeries(t *testing.T) {
	q := small()
	for i, want := range [][2]float64{{1, 3}, {4, 45}, {16, 945}} {
		d, _ := sub(mul(q[i], num(want[1])), num(want[0])).Float64()
		if !(d < 1e-60 && d > -1e-60) {
			t.Errorf("coefficient %d: %v, want %v/%v", i, q[i], want[0], want[1])
		}
	}
}
