// Package published holds the values that the library is checked against:
// one declaration for every exported function, the published checks on it,
// and the bibliography. It is data; the types are in package reference, and
// the gates that the data must pass are this package's tests.
//
// It imports every package of the library, so only external test packages
// and the examples may import it.
package published

import (
	"fmt"
	"slices"

	"followingsea.example/internal/reference"
)

// Subjects returns every declaration, in the order of the packages.
func Subjects() []reference.Subject {
	return slices.Concat(waveSubjects, spectrumSubjects, rideSubjects, windSubjects, growthSubjects,
		tideSubjects, harmonicSubjects, routeSubjects, driftSubjects, coastSubjects, passageSubjects, passageAshoreSubjects, passageSearchSubjects, passageMomentSubjects)
}

// Checks returns every check, in the order of the packages.
func Checks() []reference.Check {
	return slices.Concat(waveChecks, spectrumChecks, rideChecks, windChecks, growthChecks,
		tideChecks, harmonicChecks, routeChecks, driftChecks, coastChecks, passageChecks, passageAshoreChecks, passageSearchChecks, passageMomentChecks)
}

// Sources returns the bibliography.
func Sources() []reference.Source {
	return slices.Concat(waveSources, spectrumSources, rideSources, windSources, growthSources,
		tideSources, harmonicSources, routeSources, driftSources, coastSources, passageSources, passageAshoreSources, passageSearchSources, passageMomentSources)
}

// Index returns the subjects by name. It panics on a name declared twice.
func Index() map[string]reference.Subject {
	m := map[string]reference.Subject{}
	for _, s := range Subjects() {
		if _, ok := m[s.Name]; ok {
			panic(fmt.Sprintf("published: subject %s is declared twice", s.Name))
		}
		m[s.Name] = s
	}
	return m
}
