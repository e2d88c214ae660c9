package published

import "followingsea.example/internal/reference"

var growthSubjects = []reference.Subject{}

var growthChecks = []reference.Check{}
