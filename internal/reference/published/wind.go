package published

import "followingsea.example/internal/reference"

var windSubjects = []reference.Subject{}

var windChecks = []reference.Check{}
