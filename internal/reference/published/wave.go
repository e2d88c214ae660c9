package published

import (
	"math"
	"slices"

	"followingsea.example/internal/reference"
	"followingsea.example/wave"
)

var waveSubjects = slices.Concat(waveDispersionSubjects, waveLinearSubjects, waveSeaSubjects)

var waveChecks = slices.Concat(waveDispersionChecks, waveLinearChecks)

var waveSources = []reference.Source{
	{Key: "CEM-II-1", Citation: "U.S. Army Corps of Engineers (2002). Coastal Engineering Manual, Part II, Chapter 1: Water Wave Mechanics. EM 1110-2-1100, 30 April 2002", ID: "EM 1110-2-1100"},
	{Key: "Apsley2023", Citation: "Apsley, D. (2023). Hydraulics 3, Waves: Examples and Answers. Lecture notes, University of Manchester, autumn 2023"},
	{Key: "ACES1992", Citation: "Leenknecht, D. A., Szuwalski, A. and Sherlock, A. R. (1992). Automated Coastal Engineering System: User's Guide. U.S. Army Engineer Waterways Experiment Station, CERC, Vicksburg"},
	{Key: "Gran1992", Citation: "Gran, S. (1992). A Course in Ocean Engineering. Elsevier; calculation page F15", ID: "ISBN 0-444-88143-0"},
	{Key: "Carvalho2026", Citation: "Carvalho, R. B. (2026). Wave dispersion equation: theoretical and computational documentation, with a table of 1000 pairs k0h, kh"},
	{Key: "Sorensen2006", Citation: "Sorensen, R. M. (2006). Basic Coastal Engineering, 3rd edition. Springer", ID: "ISBN 0-387-23332-6"},
	{Key: "CEM-II-4", Citation: "U.S. Army Corps of Engineers (2003). Coastal Engineering Manual, Part II, Chapter 4: Surf Zone Hydrodynamics. EM 1110-2-1100", ID: "EM 1110-2-1100"},
	{Key: "CEM-II-6", Citation: "U.S. Army Corps of Engineers (2002). Coastal Engineering Manual, Part II, Chapter 6: Hydrodynamics of Tidal Inlets. EM 1110-2-1100", ID: "EM 1110-2-1100"},
	{Key: "CEM-II-7", Citation: "U.S. Army Corps of Engineers (2002). Coastal Engineering Manual, Part II, Chapter 7: Harbor Hydrodynamics. EM 1110-2-1100", ID: "EM 1110-2-1100"},
	{Key: "CEM-II-8", Citation: "U.S. Army Corps of Engineers (2002). Coastal Engineering Manual, Part II, Chapter 8: Hydrodynamic Analysis and Design Conditions. EM 1110-2-1100", ID: "EM 1110-2-1100"},
	{Key: "Apsley2022", Citation: "Apsley, D. (2022). Hydraulics 3, Waves 3: Random Waves and Statistics. Lecture notes, University of Manchester, autumn 2022"},
	{Key: "ACES1992-TR", Citation: "Leenknecht, D. A., Szuwalski, A. and Sherlock, A. R. (1992). Automated Coastal Engineering System: Technical Reference. U.S. Army Engineer Waterways Experiment Station, CERC, Vicksburg"},
	{Key: "DeanDalrymple1991", Citation: "Dean, R. G. and Dalrymple, R. A. (1991). Water Wave Mechanics for Engineers and Scientists. Advanced Series on Ocean Engineering 2, World Scientific", ID: "ISBN 981-02-0421-3"},
	{Key: "Barker-waveutils", Citation: "Barker, C., NOAA Office of Response and Restoration. wave_utils: reference values of its tests"},
	{Key: "Fenton-Fourier", Citation: "Fenton, J. D. (1988 and later). Solution of steady waves by Fourier approximation; a stored solution of the program, as distributed with a hydrodynamic model"},
	{Key: "TR-02-22", Citation: "Larson, M. and Kraus, N. C. (2002). NMLONG: Numerical Model for Simulating Longshore Current, Report 2. ERDC/CHL TR-02-22", ID: "ERDC/CHL TR-02-22"},
	{Key: "TR-01-25", Citation: "Nwogu, O. G. and Demirbilek, Z. (2001). BOUSS-2D: A Boussinesq Wave Model for Coastal Regions and Harbors. ERDC/CHL TR-01-25", ID: "ERDC/CHL TR-01-25"},
	{Key: "CRESS-Z12.1", Citation: "Rijkswaterstaat and Delft University of Technology. CRESS, Coastal and River Engineering Support System: help of rule Z12.1, refraction and breaker depth"},
	{Key: "NWS-Boston", Citation: "NOAA National Weather Service, Boston. Definition of significant wave height"},
	{Key: "NWS-glossary", Citation: "NOAA National Weather Service. Glossary text on significant wave height, with an example"},
	{Key: "RayleighHandout", Citation: "Anonymous (undated). Rayleigh probability distribution applied to random wave heights. Lecture handout"},
	{Key: "ExtraProblems13", Citation: "Anonymous (undated). Extra problems, chapter 13: Small-amplitude ocean waves. Supplement to a textbook of fluid mechanics"},
	{Key: "LonguetHigginsStewart1961", Citation: "Longuet-Higgins, M. S. and Stewart, R. W. (1961). The changes in amplitude of short gravity waves on steady non-uniform currents. J. Fluid Mech. 10, 529-549", ID: "doi:10.1017/S0022112061000342"},
	{Key: "PeregrineJonsson1983", Citation: "Peregrine, D. H. and Jonsson, I. G. (1983). Interaction of Waves and Currents. U.S. Army CERC, Miscellaneous Report 83-6", ID: "CERC MR 83-6"},
	{Key: "LonguetHiggins1952", Citation: "Longuet-Higgins, M. S. (1952). On the statistical distribution of the heights of sea waves. J. Marine Research 11, 245-266"},
	{Key: "Forristall1978", Citation: "Forristall, G. Z. (1978). On the statistical distribution of wave heights in a storm. J. Geophys. Res. 83, 2353-2358", ID: "doi:10.1029/JC083iC05p02353"},
	{Key: "Battjes1974", Citation: "Battjes, J. A. (1974). Surf similarity. Proc. 14th Int. Conf. Coastal Engineering, 466-480", ID: "doi:10.9753/icce.v14.26"},
	{Key: "Miche1944", Citation: "Miche, R. (1944). Mouvements ondulatoires de la mer en profondeur constante ou decroissante. Annales des Ponts et Chaussees 114"},
	{Key: "KomarGaughan1972", Citation: "Komar, P. D. and Gaughan, M. K. (1972). Airy wave theory and breaker height prediction. Proc. 13th Int. Conf. Coastal Engineering, 405-418", ID: "doi:10.9753/icce.v13.20"},
	{Key: "Goda2010", Citation: "Goda, Y. (2010). Reanalysis of regular and random breaking wave statistics. Coastal Engineering Journal 52(1), 71-106", ID: "doi:10.1142/S0578563410002129"},
	{Key: "SeeligAhrens1981", Citation: "Seelig, W. N. and Ahrens, J. P. (1981). Estimation of Wave Reflection and Energy Dissipation Coefficients for Beaches, Revetments, and Breakwaters. U.S. Army CERC, TP 81-1", ID: "CERC TP 81-1"},
	{Key: "ZanuttighVanDerMeer2006", Citation: "Zanuttigh, B. and van der Meer, J. W. (2006). Wave reflection from coastal structures. Proc. 30th Int. Conf. Coastal Engineering, 4337-4349"},
	{Key: "Whitham1974", Citation: "Whitham, G. B. (1974). Linear and Nonlinear Waves. Wiley", ID: "ISBN 0-471-94090-9"},
	{Key: "Stokes1847", Citation: "Stokes, G. G. (1847). On the theory of oscillatory waves. Trans. Cambridge Phil. Soc. 8, 441-455"},
	{Key: "Munk1963", Citation: "Munk, W. H., Miller, G. R., Snodgrass, F. E. and Barber, N. F. (1963). Directional recording of swell from distant storms. Phil. Trans. R. Soc. London A 255, 505-584", ID: "doi:10.1098/rsta.1963.0011"},
	{Key: "PiersonNeumannJames1955", Citation: "Pierson, W. J., Neumann, G. and James, R. W. (1955). Practical Methods for Observing and Forecasting Ocean Waves. U.S. Navy Hydrographic Office, H.O. Pub. 603", ID: "H.O. Pub. 603"},
	{Key: "LewisPNA1989", Citation: "Lewis, E. V., editor (1989). Principles of Naval Architecture, 2nd revision, volume III: Motions in Waves and Controllability. SNAME"},
	{Key: "CasasPratHolthuijsen2010", Citation: "Casas-Prat, M. and Holthuijsen, L. H. (2010). Short-term statistics of waves observed in deep water. J. Geophys. Res. 115, C09024", ID: "doi:10.1029/2009JC005742"},
	{Key: "NAVEDTRA14010", Citation: "U.S. Navy, Naval Education and Training Program. Aerographer's Mate 1 and C, chapter 6: Sea Surface Forecasting. NAVEDTRA 14010", ID: "NAVEDTRA 14010"},
	{Key: "CoastalWiki-SurfSimilarity", Citation: "Coastal Wiki, Flanders Marine Institute. Surf similarity parameter"},
}

const pi = math.Pi

// The arguments that the formulas of package wave share.
var (
	wavePeriod  = reference.Number("period", "s", reference.PositiveInf, 8)
	waveDepth   = reference.Number("depth", "m", reference.PositiveInf, 6)
	waveGravity = reference.Number("gravity", "m/s2", reference.NonNegative, 9.81) // zero: the default
	waveDensity = reference.Number("density", "kg/m3", reference.NonNegative, 1025)
)

// water returns the water of the arguments gravity and density; one that is not given is the default.
func water(in reference.In) wave.Water {
	var w wave.Water
	if in.Has("gravity") {
		w.Gravity = in.F("gravity")
	}
	if in.Has("density") {
		w.Density = in.F("density")
	}
	return w
}

// waterOf evaluates a method of a Water on the arguments period and depth.
func waterOf(f func(wave.Water, float64, float64) float64, a, b string) func(reference.In) (reference.Out, error) {
	return func(in reference.In) (reference.Out, error) {
		return reference.Out{"": f(water(in), in.F(a), in.F(b))}, nil
	}
}

// depthNumber is ω²h/g, which chooses the branch of the solver.
func depthNumber(in reference.In) float64 {
	g := in.F("gravity")
	if !in.Has("gravity") || g == 0 {
		g = wave.StandardGravity
	}
	omega := 2 * math.Pi / in.F("period")
	return omega * omega * in.F("depth") / g
}

// The branches of the dispersion relation's solver.
var dispersionRegimes = []reference.Regime{
	{Name: "deep to the last bit", In: func(in reference.In) bool { return depthNumber(in) >= 19.5 }},
	{Name: "table", In: func(in reference.In) bool { y := depthNumber(in); return y >= 1.0/64 && y < 19.5 }},
	{Name: "nearly shallow", In: func(in reference.In) bool { return depthNumber(in) < 1.0/64 }},
}
