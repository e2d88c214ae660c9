//go:build !race

package dispersion

const raceOn = false
