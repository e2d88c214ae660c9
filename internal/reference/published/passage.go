package published

import "followingsea.example/internal/reference"

var passageSubjects = []reference.Subject{}

var passageChecks = []reference.Check{}

var passageSources = []reference.Source{}
