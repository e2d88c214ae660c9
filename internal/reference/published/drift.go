package published

import "followingsea.example/internal/reference"

var driftSubjects = []reference.Subject{}

var driftChecks = []reference.Check{}

var driftSources = []reference.Source{}
