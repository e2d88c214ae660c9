package published

import "followingsea.example/internal/reference"

var routeSubjects = []reference.Subject{}

var routeChecks = []reference.Check{}

var routeSources = []reference.Source{}
