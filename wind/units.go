package wind

// Multipliers that turn a speed in a customary unit into metres a second:
// 12 * Knot is twelve knots. Untyped and exact by definition.
const (
	Knot            = 1852.0 / 3600 // the nautical mile an hour, 0.514444... m/s
	KilometreAnHour = 1 / 3.6
	MileAnHour      = 1609.344 / 3600 // 0.44704 m/s
	FootASecond     = 0.3048

	NauticalMile = 1852.0 // m
	StatuteMile  = 1609.344
	Foot         = 0.3048
)

// Defaults of the package. Every function that needs one of them takes it
// from a field or an argument where a zero means the value here.
const (
	// Gravity is the standard acceleration of free fall in m/s².
	Gravity = 9.80665
	// AirDensity is the density in kg/m³ of air near the sea, used by the
	// AIR_SEA toolbox and by most stress formulas.
	AirDensity = 1.22
	// Karman is von Kármán's constant of the logarithmic wind profile.
	Karman = 0.40
)
