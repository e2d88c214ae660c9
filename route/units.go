package route

// Multipliers to SI, exact by definition: 12 * route.Knot is twelve knots in
// metres a second.
const (
	NauticalMile = 1852.0          // metres in an international nautical mile
	Mile         = 1609.344        // metres in a statute mile
	Kilometre    = 1000.0          // metres in a kilometre
	Foot         = 0.3048          // metres in an international foot
	Knot         = 1852.0 / 3600   // metres a second in a knot
	KmPerHour    = 1000.0 / 3600   // metres a second in a kilometre an hour
	MilePerHour  = 1609.344 / 3600 // metres a second in a statute mile an hour
	Minute       = 60.0            // seconds in a minute
	Hour         = 3600.0          // seconds in an hour
)
