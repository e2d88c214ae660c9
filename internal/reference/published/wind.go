package published

import "followingsea.example/internal/reference"

var windSubjects = []reference.Subject{}

var windChecks = []reference.Check{}

var windSources = []reference.Source{
	{
		Key:      "EPA-454-R-99-005",
		Citation: "US Environmental Protection Agency (2000): Meteorological Monitoring Guidance for Regulatory Modeling Applications. EPA-454/R-99-005, Research Triangle Park",
		ID:       "EPA-454/R-99-005",
	},
}
