// Package passage puts the parts together: a run, a day and a paddler make an
// appraisal of each departure, which says which of the paddler's own limits
// are met, which are broken, and which are unknown.
package passage
