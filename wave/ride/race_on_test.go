//go:build race

package ride_test

const underRace = true
