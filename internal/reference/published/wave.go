package published

import "followingsea.example/internal/reference"

var waveSubjects = []reference.Subject{}

var waveChecks = []reference.Check{}

var waveSources = []reference.Source{}
