package published

import "followingsea.example/internal/reference"

var spectrumSubjects = []reference.Subject{}

var spectrumChecks = []reference.Check{}

var spectrumSources = []reference.Source{
	{Key: "Hasselmann1973", Citation: "Hasselmann, K. and 15 others (1973). Measurements of wind-wave growth and swell decay during the Joint North Sea Wave Project (JONSWAP). Deutsche Hydrographische Zeitschrift, Ergänzungsheft A8 (12)"},
	{Key: "Goda2010Book", Citation: "Goda, Y. (2010). Random Seas and Design of Maritime Structures, 3rd edition. Advanced Series on Ocean Engineering 33, World Scientific", ID: "ISBN 978-981-4282-39-0"},
	{Key: "Goda1970", Citation: "Goda, Y. (1970). Numerical experiments on wave statistics with spectral simulation. Report of the Port and Harbour Research Institute 9 (3), 3-57"},
	{Key: "DNV-C205", Citation: "Det Norske Veritas (2010). Environmental Conditions and Environmental Loads. Recommended Practice DNV-RP-C205, October 2010", ID: "DNV-RP-C205"},
	{Key: "WaveResponse", Citation: "4Subsea. waveresponse for Python: user guide, standardized wave spectra"},
	{Key: "WAFO", Citation: "WAFO group, Lund University. WAFO, a toolbox for analysis of random waves and loads (Python version): reference values of its tests and documentation"},
	{Key: "MHKiT", Citation: "Sandia National Laboratories, NREL and PNNL. Marine and Hydrokinetic Toolkit (MHKiT): formulas and validation data sets"},
	{Key: "IAHR1989", Citation: "IAHR Working Group on Wave Generation and Analysis (1989). List of sea-state parameters. Journal of Waterway, Port, Coastal, and Ocean Engineering 115 (6), 793-808", ID: "doi:10.1061/(ASCE)0733-950X(1989)115:6(793)"},
	{Key: "Bouws1985", Citation: "Bouws, E., Günther, H., Rosenthal, W. and Vincent, C. L. (1985). Similarity of the wind wave spectrum in finite depth water, 1: Spectral form. Journal of Geophysical Research 90 (C1), 975-986", ID: "doi:10.1029/JC090iC01p00975"},
	{Key: "Mitsuyasu1975", Citation: "Mitsuyasu, H. and 6 others (1975). Observations of the directional spectrum of ocean waves using a cloverleaf buoy. Journal of Physical Oceanography 5, 750-760", ID: "doi:10.1175/1520-0485(1975)005<0750:OOTDSO>2.0.CO;2"},
	{Key: "Kuik1988", Citation: "Kuik, A. J., van Vledder, G. Ph. and Holthuijsen, L. H. (1988). A method for the routine analysis of pitch-and-roll buoy wave data. Journal of Physical Oceanography 18, 1020-1034", ID: "doi:10.1175/1520-0485(1988)018<1020:AMFTRA>2.0.CO;2"},
	{Key: "SPM1984", Citation: "U.S. Army Coastal Engineering Research Center (1984). Shore Protection Manual, 4th edition. Waterways Experiment Station, Vicksburg"},
	{Key: "Tucker1984", Citation: "Tucker, M. J., Challenor, P. G. and Carter, D. J. T. (1984). Numerical simulation of a random sea: a common error and its effect upon wave group statistics. Applied Ocean Research 6 (2), 118-122", ID: "doi:10.1016/0141-1187(84)90050-6"},
	{Key: "LonguetHiggins1975", Citation: "Longuet-Higgins, M. S. (1975). On the joint distribution of the periods and amplitudes of sea waves. Journal of Geophysical Research 80 (18), 2688-2694", ID: "doi:10.1029/JC080i018p02688"},
	{Key: "CartwrightLonguetHiggins1956", Citation: "Cartwright, D. E. and Longuet-Higgins, M. S. (1956). The statistical distribution of the maxima of a random function. Proceedings of the Royal Society A 237, 212-232", ID: "doi:10.1098/rspa.1956.0173"},
	{Key: "Torsethaugen1984", Citation: "Torsethaugen, K., Faanes, T. and Haver, S. (1984). Characteristica for extreme sea states on the Norwegian continental shelf. Report STF60 A84123, Norwegian Hydrodynamic Laboratories, Trondheim", ID: "STF60 A84123"},
	{Key: "NDBC1996", Citation: "National Data Buoy Center (1996). Nondirectional and Directional Wave Data Analysis Procedures. NDBC Technical Document 96-01, Stennis Space Center", ID: "NDBC TD 96-01"},
}
