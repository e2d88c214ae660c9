//go:build !race

package spectrum_test

const raceEnabled = false
