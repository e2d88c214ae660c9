package published

import "followingsea.example/internal/reference"

var rideSubjects = []reference.Subject{}

var rideChecks = []reference.Check{}

var rideSources = []reference.Source{}
