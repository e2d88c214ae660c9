package published

import "followingsea.example/internal/reference"

var harmonicSubjects = []reference.Subject{}

var harmonicChecks = []reference.Check{}

var harmonicSources = []reference.Source{}
