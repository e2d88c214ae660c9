package published

import "followingsea.example/internal/reference"

var tideSubjects = []reference.Subject{}

var tideChecks = []reference.Check{}
