// Package stations holds the harmonic constants of a few places as they are
// published: what the checks of heights and streams and the tests of package
// harmonic start from. It is apart from the checks so that those tests build
// in a second.
package stations

import (
	"strconv"
	"strings"

	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

// Amplitudes and Greenwich phase lags, as published.

// stationRow is one station as its table prints it.
type stationRow struct {
	id, name, datum string
	z0              float64
	constants       string // name amplitude lag, ...
}

var stationRows = []stationRow{
	// [NOAA-Hilo] station 8410140: harmonic constants and mean level above MLLW.
	{"8410140", "Eastport", "MLLW", 2.958, `
		M2 2.648 98.4, S2 0.415 138.8, N2 0.542 67, K1 0.155 195.5, M4 0.058 84.8, O1 0.118 176.3,
		M6 0.048 274, MK3 0.002 74.1, S4 0.001 117.1, MN4 0.022 51.7, NU2 0.125 73.6, S6 0.001 331,
		MU2 0.015 166.5, 2N2 0.067 44.7, OO1 0.006 234.3, LAM2 0.051 122.4, S1 0.007 124.9, M1 0.005 212.9,
		J1 0.007 207.5, SSA 0.013 126.4, SA 0.01 171.5, RHO 0.003 157.8, Q1 0.021 157.9, T2 0.036 115.8,
		R2 0.008 348.5, 2Q1 0.002 225.8, P1 0.051 196.4, 2SM2 0.007 70, M3 0.002 216.5, L2 0.157 141,
		2MK3 0.005 327.1, K2 0.116 138.3, M8 0.005 250, MS4 0.018 129.2
	`},
	// [NOAA-Hilo] station 8443970: harmonic constants and mean level above MLLW.
	{"8443970", "Boston", "MLLW", 1.586, `
		M2 1.371 109.2, S2 0.208 146.2, N2 0.305 76.7, K1 0.143 205.6, M4 0.023 29, O1 0.116 187.1,
		M6 0.029 281.3, MK3 0.006 231.8, S4 0.002 119.3, MN4 0.011 13.7, NU2 0.066 84, S6 0.002 246.8,
		MU2 0.01 53.3, 2N2 0.041 53.7, OO1 0.004 218.7, LAM2 0.02 140.1, S1 0.005 131.6, M1 0.005 223.2,
		J1 0.01 210, SSA 0.022 97.5, SA 0.049 136.3, RHO 0.005 179.3, Q1 0.019 172.1, T2 0.018 120.1,
		R2 0.004 13.1, 2Q1 0.002 211.3, P1 0.047 204.8, 2SM2 0.003 110.3, M3 0.002 149.2, L2 0.068 160.4,
		2MK3 0.007 204.7, K2 0.059 146.1, M8 0.006 241.3, MS4 0.009 74
	`},
	// [NOAA-Hilo] station 9414290: harmonic constants and mean level above MLLW.
	{"9414290", "San Francisco (Golden Gate)", "MLLW", 0.951, `
		M2 0.576 208.2, S2 0.137 216.2, N2 0.122 183.2, K1 0.37 225.4, M4 0.022 136.8, O1 0.23 208.4,
		M6 0.002 7.3, MK3 0.018 124.1, MN4 0.008 112, NU2 0.026 189.9, MU2 0.007 100.2, 2N2 0.013 153.3,
		OO1 0.012 260, LAM2 0.007 214.3, S1 0.007 282.6, M1 0.011 237.5, J1 0.019 244.3, SSA 0.03 272.3,
		SA 0.044 200.2, MF 0.015 153.1, RHO 0.009 200, Q1 0.041 202.4, T2 0.009 204.6, R2 0.001 126.8,
		2Q1 0.006 208.6, P1 0.114 222.1, 2SM2 0.003 37.3, M3 0.003 37.6, L2 0.018 229.6, 2MK3 0.014 92.2,
		K2 0.04 206, M8 0.001 108.5, MS4 0.01 149
	`},
	// [NOAA-Hilo] station 1612340: harmonic constants and mean level above MLLW.
	{"1612340", "Honolulu", "MLLW", 0.251, `
		M2 0.171 59.4, S2 0.056 54.7, N2 0.033 48.8, K1 0.149 226.8, M4 0.001 195.3, O1 0.081 215.9,
		M6 0.001 229.7, MK3 0.001 342.6, MN4 0.001 92.9, NU2 0.007 56, MU2 0.004 7.8, 2N2 0.004 39.9,
		OO1 0.005 251.7, LAM2 0.001 76.2, S1 0.002 210, M1 0.005 232.5, J1 0.01 238.3, MM 0.005 43.4,
		SA 0.048 177.7, MF 0.006 44.3, RHO 0.002 195.4, Q1 0.014 209.6, T2 0.004 43.6, R2 0.001 357.3,
		2Q1 0.001 231, P1 0.045 224.9, 2SM2 0.001 199.8, M3 0.001 164.1, L2 0.004 49.3, K2 0.016 45.7,
		MS4 0.001 104
	`},
	// [NOAA-Hilo] station 8729840: harmonic constants and mean level above MLLW.
	{"8729840", "Pensacola", "MLLW", 0.188, `
		M2 0.017 172.1, S2 0.005 175.9, N2 0.003 195.9, K1 0.125 58.2, M4 0.002 320, O1 0.122 47.9,
		M6 0.001 105.8, MK3 0.002 186.2, S4 0.001 92.7, MN4 0.001 297, NU2 0.001 173.1, MU2 0.001 300.2,
		OO1 0.011 34.8, LAM2 0.001 153.8, S1 0.001 169.6, M1 0.005 96.4, J1 0.005 89.8, SSA 0.054 49.1,
		SA 0.113 150.4, RHO 0.005 33.3, Q1 0.026 37.9, T2 0.001 131.5, R2 0.001 314.1, 2Q1 0.002 33.1,
		P1 0.037 63.8, 2SM2 0.001 23.4, L2 0.001 163.9, 2MK3 0.002 171.7, K2 0.006 186.2, MS4 0.001 324.3
	`},
}

// [NOAA-PUG1741] Bellingham Channel: rates in knots, flood 031.2°, ebb 211.2°.
const bellinghamRates = `
	M2 1.608 312, S2 0.418 333.5, N2 0.382 274.7, K1 0.959 202.2, M4 0.139 325.9, O1 0.589 166.2,
	M6 0.039 333.8, MK3 0.095 178.2, S4 0.008 95.7, MN4 0.042 319, S6 0.006 92.5, 2N2 0.077 180.2,
	OO1 0.133 189.5, M1 0.014 309.3, J1 0.04 232.6, Q1 0.08 154, 2Q1 0.028 146.3, P1 0.251 195.2,
	2SM2 0.018 241.1, M3 0.022 33.7, L2 0.043 25, 2MK3 0.054 64.5, K2 0.14 325, M8 0.022 352.3,
	MS4 0.086 330.5
`

// constants reads "name amplitude lag, ..." with amplitudes in the unit.
func constants(text string, unit float64) []harmonic.Constituent {
	var out []harmonic.Constituent
	for _, row := range strings.Split(text, ",") {
		f := strings.Fields(row)
		out = append(out, harmonic.Constituent{Name: f[0], Amplitude: plain(f[1]) * unit, Lag: plain(f[2])})
	}
	return out
}

// Station returns the published constants of a station by its number: 8410140
// Eastport, 8443970 Boston, 9414290 San Francisco, 1612340 Honolulu, 8729840
// Pensacola, and PUG1741 Bellingham Channel, a stream. Its name is empty when there is none.
func Station(id string) harmonic.Station {
	if id == "PUG1741" {
		return harmonic.Station{ID: id, Name: "Bellingham Channel", Stream: &harmonic.Axis{
			Flood: 31.2, Ebb: 211.2, Mean: -0.377 * tide.Knot, Constituents: constants(bellinghamRates, tide.Knot)}}
	}
	for _, r := range stationRows {
		if r.id == id {
			return harmonic.Station{ID: id, Name: r.name, Datum: tide.Datum(r.datum), Z0: r.z0, Constituents: constants(r.constants, 1),
				Attribution: "NOAA National Ocean Service, Center for Operational Oceanographic Products and Services"}
		}
	}
	return harmonic.Station{}
}

// plain reads a number of the tables above.
func plain(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		panic("stations: harmonic constants: " + s)
	}
	return x
}
