package published

import "followingsea.example/internal/reference"

var coastSubjects = []reference.Subject{}

var coastChecks = []reference.Check{}

var coastSources = []reference.Source{
	{Key: "RFC7946", Citation: "H. Butler, M. Daly, A. Doyle, S. Gillies, S. Hagen, T. Schaub (2016), The GeoJSON Format, Internet Engineering Task Force", ID: "RFC 7946"},
	{Key: "GPX11", Citation: "TopoGrafix (2004), GPX 1.1 schema documentation", ID: "GPX 1.1"},
}
