package published

import "followingsea.example/internal/reference"

var routeSubjects = []reference.Subject{}

var routeChecks = []reference.Check{}

var routeSources = []reference.Source{
	{Key: "Karney2013", Citation: "C. F. F. Karney (2013), Algorithms for geodesics, Journal of Geodesy 87, 43-55", ID: "doi:10.1007/s00190-012-0578-z"},
	{Key: "Torge2012", Citation: "W. Torge, J. Müller (2012), Geodesy, 4th edition, de Gruyter", ID: "isbn:9783110207187"},
	{Key: "Meeus1998", Citation: "J. Meeus (1998), Astronomical Algorithms, 2nd edition, Willmann-Bell; examples as reproduced in the test suite of a Go translation", ID: "isbn:0943396611"},
	{Key: "Bowditch2002", Citation: "N. Bowditch (2002), The American Practical Navigator, Pub. 9, NIMA; current-sailing problems quoted in a navigation-information page of 2008", ID: "Pub. No. 9"},
	{Key: "Williams2013", Citation: "E. Williams (2013), Aviation Formulary, version 1.47", ID: ""},
}
