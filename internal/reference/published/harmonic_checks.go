package published

import (
	"fmt"
	"strings"
	"time"

	"followingsea.example/internal/reference"
)

// harmonicNodeChecks are the longitudes and speeds in print.
var harmonicNodeChecks = []reference.Check{
	{ID: "longitude-2000-s", Subject: "harmonic.LongitudesAt", In: "at=2000-01-01T00:00:00Z, elements=modern", Result: "s", Printed: "211.73", Basis: reference.Printed, Source: "SP98-Supplement", Locator: "formulas for 2000, section overview"},
	{ID: "longitude-2000-h", Subject: "harmonic.LongitudesAt", In: "at=2000-01-01T00:00:00Z, elements=modern", Result: "h", Printed: "279.97", Basis: reference.Printed, Source: "SP98-Supplement", Locator: "formulas for 2000, section overview"},
	{ID: "longitude-2000-p", Subject: "harmonic.LongitudesAt", In: "at=2000-01-01T00:00:00Z, elements=modern", Result: "p", Printed: "83.30", Basis: reference.Printed, Source: "SP98-Supplement", Locator: "formulas for 2000, section overview"},
	{ID: "longitude-2000-p1", Subject: "harmonic.LongitudesAt", In: "at=2000-01-01T00:00:00Z, elements=modern", Result: "p1", Printed: "282.94", Basis: reference.Printed, Source: "SP98-Supplement", Locator: "formulas for 2000, section overview"},
	{ID: "node-2000", Subject: "harmonic.LongitudesAt", In: "at=2000-01-01T00:00:00Z, elements=modern", Result: "n", Printed: "125.07", Basis: reference.Computed, Source: "SP98-Supplement", Locator: "formulas for 2000", Note: "the print N' = 234.98 means N = 125.02, one day's motion off"},
	{ID: "longitude-1900-s", Subject: "harmonic.LongitudesAt", In: "at=1899-12-31T12:00:00Z, elements=1900", Result: "s", Printed: "270 26 14.72", Unit: "dms", Basis: reference.Memory, Source: "Schureman1958", Locator: "table 1"},
	{ID: "longitude-1900-h", Subject: "harmonic.LongitudesAt", In: "at=1899-12-31T12:00:00Z, elements=1900", Result: "h", Printed: "279 41 48.04", Unit: "dms", Basis: reference.Memory, Source: "Schureman1958", Locator: "table 1"},
	{ID: "longitude-1900-p", Subject: "harmonic.LongitudesAt", In: "at=1899-12-31T12:00:00Z, elements=1900", Result: "p", Printed: "334 19 40.87", Unit: "dms", Basis: reference.Memory, Source: "Schureman1958", Locator: "table 1"},
	{ID: "longitude-1900-n", Subject: "harmonic.LongitudesAt", In: "at=1899-12-31T12:00:00Z, elements=1900", Result: "n", Printed: "259 10 57.12", Unit: "dms", Basis: reference.Memory, Source: "Schureman1958", Locator: "table 1"},
	{ID: "orbit-extreme-inclination", Subject: "harmonic.Longitudes.Orbit", In: "n=0 deg, p=0 deg", Result: "i", Printed: "28.597", Basis: reference.Exact, Note: "ω + i"},
	{ID: "orbit-least-inclination", Subject: "harmonic.Longitudes.Orbit", In: "n=180 deg, p=0 deg", Result: "i", Printed: "18.307", Basis: reference.Exact, Tol: 1e-9, Why: "the arc cosine near its fold", Note: "ω − i"},
	{ID: "argument-s1", Subject: "harmonic.Longitudes.Argument", In: "constituent=S1, at=2026-01-01T00:00:00Z, elements=modern", Printed: "180", Basis: reference.Exact, Note: "T counts from the upper transit of the mean sun"},
	{ID: "argument-s2", Subject: "harmonic.Longitudes.Argument", In: "constituent=S2, at=2026-01-01T03:00:00Z, elements=modern", Printed: "90", Basis: reference.Exact},
	{ID: "node-m2-0-f", Subject: "harmonic.Longitudes.Node", In: "n=0 deg, p=0 deg, constituent=M2", Result: "f", Printed: "0.9632", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-0-f", Subject: "harmonic.Longitudes.Node", In: "n=0 deg, p=0 deg, constituent=K1", Result: "f", Printed: "1.1128", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-0-f", Subject: "harmonic.Longitudes.Node", In: "n=0 deg, p=0 deg, constituent=K2", Result: "f", Printed: "1.3162", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-0-f", Subject: "harmonic.Longitudes.Node", In: "n=0 deg, p=0 deg, constituent=O1", Result: "f", Printed: "1.1828", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-60-f", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=M2", Result: "f", Printed: "0.9816", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-60-u", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=M2", Result: "u", Printed: "-1.860", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-60-f", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=K1", Result: "f", Printed: "1.0674", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-60-u", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=K1", Result: "u", Printed: "-7.091", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-60-f", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=K2", Result: "f", Printed: "1.1637", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-60-u", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=K2", Result: "u", Printed: "-14.752", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-60-f", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=O1", Result: "f", Printed: "1.1085", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-60-u", Subject: "harmonic.Longitudes.Node", In: "n=60 deg, p=0 deg, constituent=O1", Result: "u", Printed: "8.206", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-120-f", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=M2", Result: "f", Printed: "1.0189", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-120-u", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=M2", Result: "u", Printed: "-1.842", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-120-f", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=K1", Result: "f", Printed: "0.9535", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-120-u", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=K1", Result: "u", Printed: "-8.261", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-120-f", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=K2", Result: "f", Printed: "0.8741", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-120-u", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=K2", Result: "u", Printed: "-15.966", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-120-f", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=O1", Result: "f", Printed: "0.9242", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-120-u", Subject: "harmonic.Longitudes.Node", In: "n=120 deg, p=0 deg, constituent=O1", Result: "u", Printed: "10.490", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-180-f", Subject: "harmonic.Longitudes.Node", In: "n=180 deg, p=0 deg, constituent=M2", Result: "f", Printed: "1.0378", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-180-f", Subject: "harmonic.Longitudes.Node", In: "n=180 deg, p=0 deg, constituent=K1", Result: "f", Printed: "0.8817", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-180-f", Subject: "harmonic.Longitudes.Node", In: "n=180 deg, p=0 deg, constituent=K2", Result: "f", Printed: "0.7462", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-180-f", Subject: "harmonic.Longitudes.Node", In: "n=180 deg, p=0 deg, constituent=O1", Result: "f", Printed: "0.8057", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-300-f", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=M2", Result: "f", Printed: "0.9816", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-m2-300-u", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=M2", Result: "u", Printed: "1.860", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-300-f", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=K1", Result: "f", Printed: "1.0674", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k1-300-u", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=K1", Result: "u", Printed: "7.091", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-300-f", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=K2", Result: "f", Printed: "1.1637", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-k2-300-u", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=K2", Result: "u", Printed: "14.752", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-300-f", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=O1", Result: "f", Printed: "1.1085", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-o1-300-u", Subject: "harmonic.Longitudes.Node", In: "n=300 deg, p=0 deg, constituent=O1", Result: "u", Printed: "-8.206", Basis: reference.Computed, Source: "Schureman1958", Locator: "closed forms, computed apart"},
	{ID: "node-solar", Subject: "harmonic.Longitudes.Node", In: "n=77 deg, p=5 deg, constituent=S2", Result: "f", Printed: "1", Basis: reference.Exact},
}

// yearTables are the year tables: for each constituent V0 + u at 1 January in
// degrees and f of mid-year, as printed.
var yearTables = []struct {
	year int
	rows string
}{
	{1950, `
		J1 225.17 1.1650, K1 9.75 1.1127, K2 199.47 1.3160, L2 86.66 1.0786, M1 154.50 1.7229, M2 71.30 0.9632,
		M3 106.95 0.9454, M4 142.60 0.9278, N2 215.76 0.9632, O1 61.68 1.1827, OO1 137.57 1.7796, P1 349.92 1.0000,
		Q1 206.14 1.1827, S1 180.00 1.0000, S2 0.00 1.0000, MF 127.94 1.4515, MM 215.54 0.8716`},
	{1970, `
		J1 270.04 1.1550, K1 13.44 1.1052, K2 207.25 1.2888, L2 263.01 0.8830, M1 155.32 1.9910, M2 165.43 0.9665,
		M3 68.15 0.9502, M4 330.87 0.9341, N2 270.12 0.9665, O1 150.71 1.1702, OO1 58.74 1.7126, P1 349.76 1.0000,
		Q1 255.39 1.1702, S1 180.00 1.0000, S2 0.00 1.0000, MF 44.02 1.4164, MM 255.32 0.8826`},
	{2000, `
		J1 125.78 0.9532, K1 1.46 0.9629, K2 183.36 0.8936, L2 83.71 1.2402, M1 251.39 0.8804, M2 134.54 1.0162,
		M3 21.80 1.0245, M4 269.07 1.0327, N2 6.09 1.0162, O1 137.21 0.9394, OO1 37.44 0.8012, P1 350.03 1.0000,
		Q1 8.76 0.9394, S1 180.00 1.0000, S2 0.00 1.0000, MF 40.12 0.8680, MM 128.45 1.0550`},
	{2021, `
		J1 269.75 1.0836, K1 3.07 1.0529, K2 185.62 1.1201, L2 17.26 1.0649, M1 90.25 1.5936, M2 303.97 0.9870,
		M3 275.96 0.9805, M4 247.95 0.9741, N2 33.96 0.9870, O1 304.24 1.0850, OO1 235.22 1.3090, P1 349.13 1.0000,
		Q1 34.23 1.0850, S1 180.00 1.0000, S2 0.00 1.0000, MF 235.49 1.1924, MM 270.01 0.9530`},
	{2026, `
		J1 22.40 1.1522, K1 14.26 1.1031, K2 208.93 1.2815, L2 250.96 1.3288, M1 25.28 1.0994, M2 66.36 0.9674,
		M3 99.53 0.9515, M4 132.71 0.9358, N2 59.66 0.9674, O1 50.65 1.1668, OO1 160.77 1.6946, P1 349.33 1.0000,
		Q1 43.96 1.1668, S1 180.00 1.0000, S2 0.00 1.0000, MF 145.06 1.4069, MM 6.69 0.8856`},
}

// harmonicYearChecks makes two checks of each row, with the elements of the
// tables' own time.
func harmonicYearChecks() []reference.Check {
	var out []reference.Check
	for _, t := range yearTables {
		for _, row := range strings.Split(t.rows, ",") {
			f := strings.Fields(row)
			in := fmt.Sprintf("constituent=%s, year=%d, elements=1900", f[0], t.year)
			id := fmt.Sprintf("year-%d-%s", t.year, strings.ToLower(f[0]))
			tol := 0.0001
			if f[0] == "OO1" { // which follows the inclination most
				tol = 0.0002
			}
			out = append(out,
				reference.Check{ID: id + "-argument", Subject: "harmonic.YearArgument", In: in, Result: "argument", Printed: f[1], Basis: reference.Table, Source: "YearTables", Locator: fmt.Sprint(t.year), Tol: 0.01, Why: "the tables round their node angles before they add them"},
				reference.Check{ID: id + "-factor", Subject: "harmonic.YearArgument", In: in, Result: "factor", Printed: f[2], Basis: reference.Table, Source: "YearTables", Locator: fmt.Sprint(t.year), Tol: tol, Why: "the tables round the inclination to a hundredth of a degree before they look f up"})
		}
	}
	for _, row := range strings.Split(speeds, ",") {
		f := strings.Fields(row)
		out = append(out, reference.Check{ID: "speed-" + strings.ToLower(f[0]), Subject: "harmonic.Speed", In: "constituent=" + f[0], Printed: f[1], Basis: reference.Table, Source: "NOAA-Harcon", Locator: "field speed", Tol: 1e-5, Why: "the prints are cut unevenly, between five and seven decimals"})
	}
	return out
}

// speeds are those of the 37 constituents in degrees per hour.
const speeds = `
	M2 28.984104, S2 30.0, N2 28.43973, K1 15.041069, M4 57.96821, O1 13.943035,
	M6 86.95232, MK3 44.025173, S4 60.0, MN4 57.423832, NU2 28.512583, S6 90.0,
	MU2 27.968208, 2N2 27.895355, OO1 16.139101, LAM2 29.455626, S1 15.0, M1 14.496694,
	J1 15.5854435, MM 0.5443747, SSA 0.0821373, SA 0.0410686, MSF 1.0158958, MF 1.0980331,
	RHO 13.471515, Q1 13.398661, T2 29.958933, R2 30.041067, 2Q1 12.854286, P1 14.958931,
	2SM2 31.015896, M3 43.47616, L2 29.528479, 2MK3 42.92714, K2 30.082138, M8 115.93642,
	MS4 58.984104`

// officialTurns are high and low waters as the national service prints them:
// station, then kind, time (UT) and height in metres above MLLW.
var officialTurns = []struct{ station, rows string }{
	{"8410140", `
		high 2026-08-15T05:03:00Z 6.260, low 2026-08-15T11:28:00Z -0.409, high 2026-08-15T17:30:00Z 6.063, low 2026-08-15T23:50:00Z -0.204,
		high 2026-08-16T05:51:00Z 6.075, low 2026-08-16T12:14:00Z -0.219, high 2026-08-16T18:16:00Z 5.980, low 2026-08-17T00:38:00Z -0.068,
		high 2026-08-17T06:39:00Z 5.820, low 2026-08-17T12:59:00Z 0.042`},
	{"8443970", `
		high 2026-08-15T05:28:00Z 3.368, low 2026-08-15T11:42:00Z -0.180, high 2026-08-15T17:58:00Z 3.209, low 2026-08-16T00:03:00Z -0.056,
		high 2026-08-16T06:18:00Z 3.239, low 2026-08-16T12:28:00Z -0.053, high 2026-08-16T18:43:00Z 3.180, low 2026-08-17T00:52:00Z 0.020,
		high 2026-08-17T07:06:00Z 3.071, low 2026-08-17T13:13:00Z 0.111`},
	{"9414290", `
		low 2026-08-15T02:24:00Z 0.491, high 2026-08-15T08:32:00Z 1.785, low 2026-08-15T14:43:00Z 0.043, high 2026-08-15T21:33:00Z 1.758,
		low 2026-08-16T03:16:00Z 0.428, high 2026-08-16T09:25:00Z 1.607, low 2026-08-16T15:20:00Z 0.248, high 2026-08-16T22:07:00Z 1.774,
		low 2026-08-17T04:11:00Z 0.386, high 2026-08-17T10:23:00Z 1.429`},
	{"1612340", `
		high 2026-08-15T03:22:00Z 0.635, low 2026-08-15T10:01:00Z 0.037, high 2026-08-15T16:06:00Z 0.451, low 2026-08-15T21:41:00Z 0.132,
		high 2026-08-16T03:54:00Z 0.553, low 2026-08-16T10:28:00Z 0.044, high 2026-08-16T16:58:00Z 0.480, low 2026-08-16T22:40:00Z 0.194,
		high 2026-08-17T04:22:00Z 0.466, low 2026-08-17T10:55:00Z 0.056`},
	{"8729840", `
		low 2026-08-15T03:58:00Z 0.195, high 2026-08-15T19:36:00Z 0.329, low 2026-08-16T02:32:00Z 0.262, high 2026-08-16T07:55:00Z 0.312,
		low 2026-08-16T15:58:00Z 0.219, high 2026-08-17T08:03:00Z 0.378, low 2026-08-17T17:52:00Z 0.175, high 2026-08-18T08:26:00Z 0.428,
		low 2026-08-18T19:31:00Z 0.142, high 2026-08-19T09:01:00Z 0.459`},
}

// officialHours are hourly heights as printed, from the hour given on.
var officialHours = []struct{ station, from, heights string }{
	{"8410140", "2026-08-15T00:00:00Z", "0.172 1.326 2.885 4.518 5.776 6.259 5.897 4.899 3.519 1.971 0.551 -0.308"},
	{"8410140", "2031-08-15T00:00:00Z", "4.932 5.467 5.353 4.736 3.773 2.584 1.389 0.574 0.415 0.859 1.737 2.933"},
	{"8410140", "2036-08-15T00:00:00Z", "2.728 1.628 0.786 0.398 0.696 1.659 2.901 4.047 4.919 5.323 5.066 4.223"},
	{"8443970", "2026-08-15T00:00:00Z", "0.070 0.600 1.353 2.199 2.927 3.324 3.311 2.920 2.238 1.389 0.540 -0.050"},
	{"8443970", "2031-08-15T00:00:00Z", "2.510 2.870 2.937 2.733 2.308 1.715 1.044 0.506 0.297 0.395 0.720 1.258"},
	{"8443970", "2036-08-15T00:00:00Z", "1.801 1.190 0.669 0.336 0.349 0.744 1.313 1.866 2.359 2.691 2.719 2.425"},
	{"9414290", "2026-08-15T00:00:00Z", "0.971 0.665 0.505 0.523 0.700 0.984 1.303 1.582 1.758 1.763 1.561 1.187"},
	{"9414290", "2031-08-15T00:00:00Z", "0.938 1.131 1.372 1.600 1.764 1.803 1.676 1.389 0.997 0.593 0.270 0.085"},
	{"9414290", "2036-08-15T00:00:00Z", "1.705 1.704 1.562 1.300 0.982 0.686 0.482 0.402 0.434 0.553 0.726 0.906"},
	{"1612340", "2026-08-15T00:00:00Z", "0.335 0.467 0.573 0.630 0.621 0.545 0.421 0.281 0.155 0.068 0.037 0.066"},
	{"1612340", "2031-08-15T00:00:00Z", "0.628 0.623 0.563 0.464 0.349 0.241 0.162 0.125 0.129 0.164 0.214 0.264"},
	{"1612340", "2036-08-15T00:00:00Z", "0.341 0.294 0.264 0.256 0.270 0.295 0.317 0.327 0.318 0.288 0.236 0.174"},
	{"8729840", "2026-08-15T00:00:00Z", "0.264 0.237 0.215 0.200 0.195 0.201 0.217 0.232 0.239 0.241 0.242 0.244"},
	{"8729840", "2031-08-15T00:00:00Z", "0.102 0.089 0.092 0.107 0.127 0.153 0.184 0.218 0.252 0.289 0.328 0.367"},
	{"8729840", "2036-08-15T00:00:00Z", "0.197 0.207 0.221 0.241 0.263 0.288 0.317 0.349 0.378 0.401 0.415 0.419"},
}

// peerLines are heights of an independent program with f and u at the instant,
// without M1 and M3, which it takes otherwise.
var peerLines = []struct{ station, rows string }{
	{"8410140", `2000-03-20T00:00:00Z 1.9610, 2000-03-21T00:00:00Z 0.8423, 2026-08-15T00:00:00Z 0.1566, 2026-08-15T22:00:00Z 1.1822, 2026-08-16T21:00:00Z 3.7408, 2044-12-31T20:00:00Z 0.6072`},
	{"8443970", `2000-03-20T00:00:00Z 0.7391, 2000-03-21T00:00:00Z 0.2616, 2026-08-15T00:00:00Z 0.0592, 2026-08-15T22:00:00Z 0.9001, 2026-08-16T21:00:00Z 2.3174, 2044-12-31T20:00:00Z 0.1268`},
	{"9414290", `2000-03-20T00:00:00Z 0.0095, 2000-03-21T00:00:00Z 0.2758, 2026-08-15T00:00:00Z 0.9622, 2026-08-16T00:00:00Z 1.2110, 2044-12-31T00:00:00Z 0.1531, 2045-01-01T00:00:00Z -0.1675`},
	{"1612340", `2000-03-20T00:00:00Z 0.2735, 2000-03-21T00:00:00Z 0.2300, 2026-08-15T00:00:00Z 0.3312, 2026-08-16T00:00:00Z 0.2573, 2044-12-31T00:00:00Z 0.1595, 2044-12-31T22:00:00Z 0.1527`},
	{"8729840", `2000-03-20T00:00:00Z 0.1187, 2000-03-21T02:00:00Z 0.0999, 2026-08-15T03:00:00Z 0.2047, 2026-08-16T02:00:00Z 0.2643, 2044-12-31T00:00:00Z 0.3078, 2044-12-31T21:00:00Z 0.1640`},
}

// bellinghamEvents are the events of PUG1741 as printed: rate in knots.
const bellinghamEvents = `
	slack before ebb|2026-06-01T03:05:00Z|0
	maximum ebb|2026-06-01T06:03:00Z|-1.23
	minimum ebb|2026-06-01T11:11:00Z|-0.30
	maximum ebb|2026-06-01T16:12:00Z|-2.62
	slack before flood|2026-06-01T20:44:00Z|0
	maximum flood|2026-06-02T00:24:00Z|2.77
	slack before ebb|2026-06-02T03:51:00Z|0
	maximum ebb|2026-06-02T06:45:00Z|-1.04
	minimum ebb|2026-06-02T11:21:00Z|-0.36
	maximum ebb|2026-06-02T16:41:00Z|-2.69
	slack before flood|2026-06-02T21:27:00Z|0
	maximum flood|2026-06-03T01:04:00Z|2.78
	slack before ebb|2026-06-03T04:40:00Z|0
	maximum ebb|2026-06-03T07:32:00Z|-0.91
	minimum ebb|2026-06-03T11:43:00Z|-0.40
	maximum ebb|2026-06-03T17:14:00Z|-2.73
	slack before flood|2026-06-03T22:08:00Z|0`

// kamaloTurns are the predictions of the subordinate station 1613077, Kamalo
// Harbor, on Honolulu: high water -37 min and +0.03 m, low water -16 min.
const kamaloTurns = `
	high 2026-07-15T02:01:00Z 0.841, low 2026-07-15T09:37:00Z 0.022, high 2026-07-15T14:07:00Z 0.273, low 2026-07-15T19:43:00Z -0.041,
	high 2026-07-16T02:42:00Z 0.804, low 2026-07-16T10:13:00Z 0.018, high 2026-07-16T15:03:00Z 0.307, low 2026-07-16T20:34:00Z 0.013,
	high 2026-07-17T03:21:00Z 0.744, low 2026-07-17T10:47:00Z 0.019, high 2026-07-17T16:01:00Z 0.345, low 2026-07-17T21:28:00Z 0.083`

// harmonicPredictionChecks makes the checks of the predictions.
func harmonicPredictionChecks() []reference.Check {
	var out []reference.Check
	add := func(c reference.Check) { out = append(out, c) }
	const rounded = "printed to the millimetre, and the constants to the millimetre and tenth of a degree"
	for _, s := range officialTurns {
		for _, row := range strings.Split(s.rows, ",") {
			f := strings.Fields(row)
			in := "station=" + s.station + ", nodes=by year, without=nothing, at=" + f[1] + ", turn=" + f[0]
			id := "turn-" + s.station + "-" + stamp(f[1])
			add(reference.Check{ID: id + "-time", Subject: "harmonic.Tide.Turns", In: in, Result: "clock", Printed: f[1][11:16], Unit: "hh:mm", Basis: reference.Table, Source: "NOAA-Hilo", Locator: s.station + ", interval hilo, MLLW, GMT", Tol: 60, Why: "printed to the minute; a millimetre of the constants moves a flat turn by tens of seconds"})
			add(reference.Check{ID: id + "-height", Subject: "harmonic.Tide.Turns", In: in, Result: "height", Printed: f[2], Basis: reference.Table, Source: "NOAA-Hilo", Locator: s.station + ", interval hilo, MLLW, GMT", Tol: 0.0015, Why: rounded})
		}
	}
	for _, s := range officialHours {
		from, err := time.Parse(time.RFC3339, s.from)
		if err != nil {
			panic(err)
		}
		for i, h := range strings.Fields(s.heights) {
			at := from.Add(time.Duration(i) * time.Hour).Format(time.RFC3339)
			add(reference.Check{ID: "hour-" + s.station + "-" + stamp(at), Subject: "harmonic.Tide.Height", In: "station=" + s.station + ", nodes=by year, without=nothing, at=" + at, Printed: h, Basis: reference.Table, Source: "NOAA-Hilo", Locator: s.station + ", interval h, MLLW, GMT", Tol: 0.0015, Why: rounded})
		}
	}
	for _, s := range peerLines {
		for _, row := range strings.Split(s.rows, ",") {
			f := strings.Fields(row)
			add(reference.Check{ID: "peer-" + s.station + "-" + stamp(f[0]), Subject: "harmonic.Tide.Height", In: "station=" + s.station + ", nodes=at the instant, without=M1 and M3, at=" + f[0], Printed: f[1], Basis: reference.Peer, Source: "PeerProgram", Locator: s.station, Tol: 0.001, Why: "another program with other digits of the astronomical elements"})
		}
	}
	for _, row := range strings.Split(strings.TrimSpace(bellinghamEvents), "\n") {
		f := strings.Split(strings.TrimSpace(row), "|")
		in := "station=PUG1741, nodes=by year, event=" + f[0] + ", near=" + f[1]
		id := "event-pug1741-" + stamp(f[1])
		add(reference.Check{ID: id + "-time", Subject: "harmonic.Stream.Events", In: in, Result: "clock", Printed: f[1][11:16], Unit: "hh:mm", Basis: reference.Table, Source: "NOAA-PUG1741", Locator: "1 to 3 June 2026", Tol: 60, Why: "printed to the minute; rates to a hundredth of a knot move a flat extreme by tens of seconds"})
		if f[2] != "0" {
			add(reference.Check{ID: id + "-rate", Subject: "harmonic.Stream.Events", In: in, Result: "rate", Printed: f[2], Unit: "kn", Basis: reference.Table, Source: "NOAA-PUG1741", Locator: "1 to 3 June 2026", Tol: 0.006, Why: "constants to a thousandth of a knot"})
			add(reference.Check{ID: id + "-rate-there", Subject: "harmonic.Stream.Rate", In: "station=PUG1741, nodes=by year, at=" + f[1], Printed: f[2], Unit: "kn", Basis: reference.Table, Source: "NOAA-PUG1741", Locator: "1 to 3 June 2026", Tol: 0.006, Why: "constants to a thousandth of a knot"})
		}
	}
	for _, row := range strings.Split(kamaloTurns, ",") {
		f := strings.Fields(row)
		in := "station=1613077, nodes=by year, without=nothing, at=" + f[1] + ", turn=" + f[0]
		add(reference.Check{ID: "kamalo-" + stamp(f[1]) + "-time", Subject: "harmonic.Tide.Turns", In: in, Result: "clock", Printed: f[1][11:16], Unit: "hh:mm", Basis: reference.Table, Source: "NOAA-Hilo", Locator: "1613077", Tol: 60, Why: "printed to the minute"})
		add(reference.Check{ID: "kamalo-" + stamp(f[1]) + "-height", Subject: "harmonic.Tide.Turns", In: in, Result: "height", Printed: f[2], Basis: reference.Table, Source: "NOAA-Hilo", Locator: "1613077", Tol: 0.0015, Why: rounded})
	}
	return out
}

// stamp makes an instant part of an id.
func stamp(at string) string {
	return strings.ToLower(strings.NewReplacer(":00Z", "", ":", "", "Z", "").Replace(at))
}

// chsWhy says why the Canadian arguments are not met to their last digit.
const chsWhy = "that list carries the satellites of each constituent one by one, for a latitude; met to its last digit by a program with those satellites, and to this by the factors of Schureman"

// chsChecks are arguments V + u of the Canadian list at the beginning of two years.
var chsChecks = []reference.Check{
	{ID: "chs-2021-m2", Subject: "harmonic.ArgumentAt", In: "constituent=M2, at=2021-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "304.098", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2021, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2021-s2", Subject: "harmonic.ArgumentAt", In: "constituent=S2, at=2021-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "0.138", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2021, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2021-n2", Subject: "harmonic.ArgumentAt", In: "constituent=N2, at=2021-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "33.743", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2021, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2021-k1", Subject: "harmonic.ArgumentAt", In: "constituent=K1, at=2021-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "2.518", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2021, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2021-o1", Subject: "harmonic.ArgumentAt", In: "constituent=O1, at=2021-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "304.678", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2021, 0 h UT", Tol: 0.6, Why: chsWhy},
	{ID: "chs-2021-k2", Subject: "harmonic.ArgumentAt", In: "constituent=K2, at=2021-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "184.784", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2021, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2022-m2", Subject: "harmonic.ArgumentAt", In: "constituent=M2, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "45.013", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2022-s2", Subject: "harmonic.ArgumentAt", In: "constituent=S2, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "0.113", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2022-n2", Subject: "harmonic.ArgumentAt", In: "constituent=N2, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "46.360", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2022-k1", Subject: "harmonic.ArgumentAt", In: "constituent=K1, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "3.577", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2022-o1", Subject: "harmonic.ArgumentAt", In: "constituent=O1, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "44.031", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.6, Why: chsWhy},
	{ID: "chs-2022-k2", Subject: "harmonic.ArgumentAt", In: "constituent=K2, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "186.650", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.4, Why: chsWhy},
	{ID: "chs-2022-q1", Subject: "harmonic.ArgumentAt", In: "constituent=Q1, at=2022-01-01T00:00:00Z, elements=modern", Result: "argument", Printed: "45.003", Basis: reference.Printed, Source: "CHS-Argument", Locator: "2022, 0 h UT", Tol: 0.6, Why: chsWhy},
}
