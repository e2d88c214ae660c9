package published

import (
	"slices"

	"followingsea.example/internal/reference"
)

var spectrumSubjects = slices.Concat(spectrumShapeSubjects, spectrumStatsSubjects)

var spectrumChecks = slices.Concat(spectrumShapeChecks, spectrumStatsChecks)

var spectrumSources = []reference.Source{
	{Key: "SWAN", Citation: "The SWAN team, Delft University of Technology. SWAN: User Manual, Cycle III"},
	{Key: "xdyn", Citation: "SIREHNA and Ecole Centrale de Nantes. xdyn, a multibody dynamics simulator for ships: reference values of its wave model tests"},
	{Key: "jonswap-crate", Citation: "jonswap 0.2.1 (2024), a program for JONSWAP spectra and realisations: example of its documentation"},
	{Key: "PiersonMoskowitz1964", Citation: "Pierson, W. J. and Moskowitz, L. (1964). A proposed spectral form for fully developed wind seas based on the similarity theory of S. A. Kitaigorodskii. Journal of Geophysical Research 69 (24), 5181-5190", ID: "doi:10.1029/JZ069i024p05181"},
	{Key: "Stewart2008", Citation: "Stewart, R. H. (2008). Introduction to Physical Oceanography, chapter 16: Ocean Waves. Texas A&M University"},
	{Key: "Mitsuyasu1970", Citation: "Mitsuyasu, H. (1970). On the growth of spectrum of wind-generated waves (2): spectral shape of wind waves at finite fetch. Proceedings of the 17th Japanese Conference on Coastal Engineering, 1-7"},
	{Key: "Goda1988", Citation: "Goda, Y. (1988). Statistical variability of sea state parameters as a function of wave spectrum. Coastal Engineering in Japan 31 (1), 39-52"},
	{Key: "BattjesVanVledder1984", Citation: "Battjes, J. A. and van Vledder, G. Ph. (1984). Verification of Kimura's theory for wave group statistics. Proceedings of the 19th International Conference on Coastal Engineering, Houston, 642-648"},
	{Key: "LonguetHiggins1963", Citation: "Longuet-Higgins, M. S., Cartwright, D. E. and Smith, N. D. (1963). Observations of the directional spectrum of sea waves using the motions of a floating buoy. In: Ocean Wave Spectra, Prentice-Hall, 111-136"},
	{Key: "GilhousenHervey2001", Citation: "Gilhousen, D. B. and Hervey, R. (2001). Improved estimates of swell from moored buoys. Proceedings of the Fourth International Symposium WAVES 2001, ASCE, 387-393"},
	{Key: "NDBC-FAQ", Citation: "National Data Buoy Center. How are estimates of wind-seas and swell made from wave spectra: wave steepness algorithm"},
	{Key: "Komen1994", Citation: "Komen, G. J. and 5 others (1994). Dynamics and Modelling of Ocean Waves. Cambridge University Press", ID: "ISBN 0-521-57781-0"},
	{Key: "Portilla2009", Citation: "Portilla, J., Ocampo-Torres, F. J. and Monbaliu, J. (2009). Spectral partitioning and identification of wind sea and swell. Journal of Atmospheric and Oceanic Technology 26, 107-122", ID: "doi:10.1175/2008JTECHO609.1"},
	{Key: "Kenyon1969", Citation: "Kenyon, K. E. (1969). Stokes drift for random gravity waves. Journal of Geophysical Research 74 (28), 6991-6994", ID: "doi:10.1029/JC074i028p06991"},
	{Key: "Breivik2014", Citation: "Breivik, Ø., Janssen, P. A. E. M. and Bidlot, J.-R. (2014). Approximate Stokes drift profiles in deep water. Journal of Physical Oceanography 44, 2433-2445", ID: "doi:10.1175/JPO-D-14-0020.1"},
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
