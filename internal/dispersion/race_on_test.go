//go:build race

package dispersion

const raceOn = true // the race detector slows the oracle some ten times
