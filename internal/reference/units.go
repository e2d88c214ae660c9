package reference

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// A unit is its dimension and how to turn a number of it into SI:
// si = number*factor + offset.
type unit struct {
	dim    string
	factor float64
	offset float64
}

// Exact definitions of the units that sources print in.
const (
	foot   = 0.3048
	mile   = 1609.344
	nmile  = 1852.0
	pound  = 0.45359237
	g0     = 9.80665
	degree = 1.0 // the library's unit of angle
)

// units holds every unit a check may use. The library's own unit of each
// dimension has factor 1: metre, second, degree, kilogram, celsius.
var units = map[string]unit{
	"1": {"1", 1, 0}, "%": {"1", 0.01, 0},
	"m": {"length", 1, 0}, "km": {"length", 1000, 0}, "cm": {"length", 0.01, 0}, "mm": {"length", 0.001, 0},
	"ft": {"length", foot, 0}, "in": {"length", foot / 12, 0}, "yd": {"length", 3 * foot, 0},
	"mi": {"length", mile, 0}, "nmi": {"length", nmile, 0}, "fathom": {"length", 6 * foot, 0},
	"s": {"time", 1, 0}, "min": {"time", 60, 0}, "h": {"time", 3600, 0}, "d": {"time", 86400, 0}, "ms": {"time", 0.001, 0},
	"m/s": {"speed", 1, 0}, "km/h": {"speed", 1 / 3.6, 0}, "kn": {"speed", nmile / 3600, 0}, "mph": {"speed", mile / 3600, 0},
	"ft/s": {"speed", foot, 0}, "cm/s": {"speed", 0.01, 0}, "m/min": {"speed", 1.0 / 60, 0}, "mm/s": {"speed", 0.001, 0},
	"m/h": {"speed", 1.0 / 3600, 0}, "cm/h": {"speed", 0.01 / 3600, 0}, "ft/h": {"speed", foot / 3600, 0}, "in/h": {"speed", foot / 12 / 3600, 0},
	"deg": {"angle", degree, 0}, "rad": {"angle", 180 / math.Pi, 0}, "arcmin": {"angle", 1.0 / 60, 0}, "arcsec": {"angle", 1.0 / 3600, 0},
	"deg/h": {"angular rate", 1, 0}, "deg/d": {"angular rate", 1.0 / 24, 0},
	"Hz": {"frequency", 1, 0}, "rad/s": {"frequency", 1 / (2 * math.Pi), 0}, "mHz": {"frequency", 0.001, 0}, "cph": {"frequency", 1.0 / 3600, 0},
	"s-1": {"rate", 1, 0}, "1/h": {"rate", 1.0 / 3600, 0}, "%/h": {"rate", 0.01 / 3600, 0},
	"1/m": {"wavenumber", 1, 0}, "rad/m": {"wavenumber", 1, 0}, "1/ft": {"wavenumber", 1 / foot, 0}, "1/km": {"wavenumber", 0.001, 0},
	"m2": {"area", 1, 0}, "cm2": {"area", 1e-4, 0}, "ft2": {"area", foot * foot, 0}, "m3": {"volume", 1, 0}, "m4": {"length^4", 1, 0},
	"m2/s": {"diffusivity", 1, 0}, "ft2/s": {"diffusivity", foot * foot, 0}, "m2/Hz": {"density spectrum", 1, 0}, "m2s": {"density spectrum", 1, 0}, "m2s/rad": {"density spectrum", 2 * math.Pi, 0},
	"m2/s2": {"speed^2", 1, 0}, "s2": {"time^2", 1, 0}, "m2/s4": {"acceleration^2", 1, 0}, "m s": {"length time", 1, 0}, "1/s": {"rate", 1, 0},
	"m/s2": {"acceleration", 1, 0}, "ft/s2": {"acceleration", foot, 0},
	"N": {"force", 1, 0}, "kN": {"force", 1000, 0}, "lbf": {"force", pound * g0, 0}, "kgf": {"force", g0, 0},
	"kg": {"mass", 1, 0}, "lb": {"mass", pound, 0}, "slug": {"mass", pound * g0 / foot, 0}, "t": {"mass", 1000, 0},
	"kg/m3": {"density", 1, 0}, "g/cm3": {"density", 1000, 0}, "lb/ft3": {"density", pound / (foot * foot * foot), 0}, "slug/ft3": {"density", pound * g0 / foot / (foot * foot * foot), 0},
	"kg/m": {"line density", 1, 0},
	"J":    {"energy", 1, 0}, "kJ": {"energy", 1000, 0}, "W": {"power", 1, 0}, "kW": {"power", 1000, 0}, "kcal": {"energy", 4184, 0},
	"J/m2": {"energy per area", 1, 0}, "kJ/m2": {"energy per area", 1000, 0}, "ft lbf/ft2": {"energy per area", pound * g0 / foot, 0}, "lbf/ft": {"energy per area", pound * g0 / foot, 0},
	"N/m": {"energy per area", 1, 0}, "W/m": {"energy flux", 1, 0}, "kW/m": {"energy flux", 1000, 0}, "J/m/s": {"energy flux", 1, 0}, "ft lbf/s/ft": {"energy flux", pound * g0, 0}, "lbf/s": {"energy flux", pound * g0, 0}, "N/s": {"energy flux", 1, 0},
	"Pa": {"pressure", 1, 0}, "kPa": {"pressure", 1000, 0}, "hPa": {"pressure", 100, 0}, "mbar": {"pressure", 100, 0}, "psf": {"pressure", pound * g0 / (foot * foot), 0}, "inHg": {"pressure", 3386.389, 0}, "N/m2": {"pressure", 1, 0}, "Pa/m": {"pressure gradient", 1, 0}, "hPa/km": {"pressure gradient", 0.1, 0},
	"C": {"temperature", 1, 0}, "F": {"temperature", 5.0 / 9, -160.0 / 9}, "K": {"temperature", 1, -273.15}, "dC": {"temperature difference", 1, 0}, "dF": {"temperature difference", 5.0 / 9, 0},
	"W/kg": {"specific power", 1, 0}, "N s2/m2": {"drag factor", 1, 0}, "J/kg/m": {"transport cost", 1, 0}, "deg2": {"angle^2", 1, 0},
	"h/deg": {"time per angle", 1, 0}, "m/Pa": {"length per pressure", 1, 0}, "cm/hPa": {"length per pressure", 1e-4, 0}, "m/m": {"1", 1, 0}, "deg/m": {"angle per length", 1, 0}, "m/deg": {"length per angle", 1, 0}, "km/deg": {"length per angle", 1000, 0}, "ohm": {"resistance", 1, 0},
	// Forms in which a source prints a quantity that is not one number.
	"dms": {"angle", 1, 0}, "dm": {"angle", 1, 0}, "hms": {"time", 1, 0}, "hh:mm": {"time", 1, 0}, "mm:ss": {"time", 1, 0},
}

// lookUnit returns the unit of that name.
func lookUnit(name string) (unit, error) {
	if u, ok := units[name]; ok {
		return u, nil
	}
	return unit{}, fmt.Errorf("unit %q is not known", name)
}

// parseNumber reads one number as a source prints it: plain, a fraction
// "1/12", or one of the composite forms dms, dm, hms, hh:mm and mm:ss.
// It returns the value in the unit's base and half a unit of its last
// printed digit.
func parseNumber(s, unitName string) (value, half float64, err error) {
	s = strings.TrimSpace(s)
	fail := func() (float64, float64, error) {
		return 0, 0, fmt.Errorf("%q is not a number in %s", s, unitName)
	}
	var scales []float64
	switch unitName {
	case "dms":
		scales = []float64{1, 1.0 / 60, 1.0 / 3600}
	case "dm":
		scales = []float64{1, 1.0 / 60}
	case "hms":
		scales = []float64{3600, 60, 1}
	case "hh:mm":
		scales = []float64{3600, 60}
	case "mm:ss":
		scales = []float64{60, 1}
	}
	if scales != nil {
		sign := 1.0
		if strings.HasPrefix(s, "-") {
			sign, s = -1, s[1:]
		}
		parts := strings.FieldsFunc(s, func(r rune) bool { return r == ' ' || r == ':' })
		if len(parts) == 0 || len(parts) > len(scales) {
			return fail()
		}
		for i, p := range parts {
			v, h, err := parsePlain(p)
			if err != nil || v < 0 {
				return fail()
			}
			value += v * scales[i]
			half = h * scales[i]
		}
		return sign * value, half, nil
	}
	if a, b, ok := strings.Cut(s, "/"); ok {
		x, err1 := strconv.ParseFloat(strings.TrimSpace(a), 64)
		y, err2 := strconv.ParseFloat(strings.TrimSpace(b), 64)
		if err1 != nil || err2 != nil || y == 0 {
			return fail()
		}
		return x / y, 0, nil
	}
	value, half, err = parsePlain(s)
	if err != nil {
		return fail()
	}
	return value, half, nil
}

// parsePlain reads a plain decimal and half a unit of its last digit.
func parsePlain(s string) (value, half float64, err error) {
	value, err = strconv.ParseFloat(s, 64)
	if err != nil || math.IsNaN(value) {
		return 0, 0, fmt.Errorf("%q is not a number", s)
	}
	digits, exp, _ := strings.Cut(strings.ToLower(s), "e")
	_, frac, _ := strings.Cut(digits, ".")
	e, _ := strconv.Atoi(exp)
	return value, 0.5 * math.Pow10(e-len(frac)), nil
}

// toSI turns a printed number of a unit into the library's own unit.
func (u unit) toSI(x float64) float64 { return x*u.factor + u.offset }

// fromSI is the inverse of toSI.
func (u unit) fromSI(x float64) float64 { return (x - u.offset) / u.factor }

// ValidUnits reports a unit, kind or name in a declaration that is not known,
// or an argument whose example lies outside its own domain.
func ValidUnits(s Subject) error {
	names := map[string]bool{}
	for _, a := range s.Args {
		if a.Name == "" || names[a.Name] || strings.ContainsAny(a.Name, " =,[]") {
			return fmt.Errorf("argument name %q", a.Name)
		}
		names[a.Name] = true
		if a.Kind == KindText || a.Kind == KindInstant {
			continue
		}
		if _, err := lookUnit(a.Unit); err != nil {
			return fmt.Errorf("argument %s: %w", a.Name, err)
		}
		for _, x := range a.sample.Num {
			if !a.Domain.Contains(x) {
				return fmt.Errorf("argument %s: the example %v is outside %v", a.Name, x, a.Domain)
			}
		}
	}
	for _, r := range s.Results {
		if r.Unit != "text" {
			if _, err := lookUnit(r.Unit); err != nil {
				return fmt.Errorf("result %s: %w", r.Name, err)
			}
		}
		for _, w := range r.Without {
			if !names[w] {
				return fmt.Errorf("result %s: Without names %q, which is no argument", r.Name, w)
			}
		}
	}
	return nil
}
