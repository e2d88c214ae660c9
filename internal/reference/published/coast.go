package published

import "followingsea.example/internal/reference"

var coastSubjects = []reference.Subject{}

var coastChecks = []reference.Check{}

var coastSources = []reference.Source{}
