package published

import "followingsea.example/internal/reference"

var spectrumSubjects = []reference.Subject{}

var spectrumChecks = []reference.Check{}

var spectrumSources = []reference.Source{}
