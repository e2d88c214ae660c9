package published

import "followingsea.example/internal/reference"

var growthSources = []reference.Source{
	{Key: "SPM1977", Citation: "U.S. Army Coastal Engineering Research Center (1977): Shore Protection Manual, 3rd edition. Washington, DC (its forecasting curves seen in later transcriptions)"},
	{Key: "Grasmeijer2016", Citation: "B. T. Grasmeijer (2016): bretschneider.m and breugem_holthuijsen.m, in OpenEarthTools. Deltares"},
	{Key: "TAFB-nomogram", Citation: "NOAA National Hurricane Center, Tropical Analysis and Forecast Branch: Marine Forecasting at TAFB, training slides with a deep-water growth nomogram"},
	{Key: "BreugemHolthuijsen2007", Citation: "W. A. Breugem and L. H. Holthuijsen (2007): Generalized shallow water wave growth from Lake George. Journal of Waterway, Port, Coastal, and Ocean Engineering 133, 173-182 (transcriptions read)", ID: "doi:10.1061/(ASCE)0733-950X(2007)133:3(173)"},
	{Key: "InVEST", Citation: "Natural Capital Project: InVEST User's Guide, Coastal Vulnerability chapter, wave-fetch equation"},
	{Key: "YoungVerhagen1996", Citation: "I. R. Young and L. A. Verhagen (1996): The growth of fetch limited waves in water of finite depth. Part 1. Total energy and peak frequency. Coastal Engineering 29, 47-78 (transcriptions read)", ID: "doi:10.1016/S0378-3839(96)00006-3"},
	{Key: "YoungBabanin2006", Citation: "I. R. Young and A. V. Babanin (2006): The form of the asymptotic depth-limited wind wave frequency spectrum. Journal of Geophysical Research 111, C06031 (quoted)", ID: "doi:10.1029/2005JC003398"},
	{Key: "KahmaCalkoen1992", Citation: "K. K. Kahma and C. J. Calkoen (1992): Reconciling discrepancies in the observed growth of wind-generated waves. Journal of Physical Oceanography 22, 1389-1405 (quoted)"},
	{Key: "SWAN-growth", Citation: "SWAN team, Delft University of Technology: benchmark of fetch-limited growth, with the composite curves of Kahma and Calkoen and their caps"},
	{Key: "HwangWang2004", Citation: "P. A. Hwang and D. W. Wang (2004): Field measurements of duration-limited growth of wind-generated ocean surface waves at young stage of development. Journal of Physical Oceanography 34, 2316-2326 (quoted)"},
	{Key: "Hasselmann1976", Citation: "K. Hasselmann, D. B. Ross, P. Müller and W. Sell (1976): A parametric wave prediction model. Journal of Physical Oceanography 6, 200-228 (quoted)"},
	{Key: "ECMWF-ecWAM", Citation: "European Centre for Medium-Range Weather Forecasts: ecWAM wave model, source of the routines PEAK, SEPWISW and OUT_ONEGRDPT"},
	{Key: "Wilson1965", Citation: "B. W. Wilson (1965): Numerical prediction of ocean waves in the North Atlantic for December 1959. Deutsche Hydrographische Zeitschrift 18, 114-130 (quoted)"},
	{Key: "Goda2003", Citation: "Y. Goda (2003): Revisiting Wilson's formulas for simplified wind-wave prediction. Journal of Waterway, Port, Coastal, and Ocean Engineering 129, 93-95 (quoted)"},
	{Key: "Kamphuis2000", Citation: "J. W. Kamphuis (2000): Introduction to Coastal Engineering and Management. World Scientific; its equations 5.3 to 5.8 as used in a solved problem on a homework page"},
	{Key: "Smith1991", Citation: "J. M. Smith (1991): Wind-wave generation on restricted fetches. Miscellaneous Paper CERC-91-2, U.S. Army Engineer Waterways Experiment Station (quoted in ACES1992)", ID: "CERC-91-2"},
	{Key: "GroenDorrestein1976", Citation: "P. Groen and R. Dorrestein (1976): Zeegolven. Royal Netherlands Meteorological Institute, Opstellen op oceanografisch en maritiem meteorologisch gebied 11 (quoted)"},
	{Key: "Holleman2022", Citation: "R. Holleman (2022): fetch-limited waves of the D-Water Quality model as code, with the constants of Groen and Dorrestein"},
	{Key: "WMO-702", Citation: "World Meteorological Organization (1998): Guide to Wave Analysis and Forecasting, 2nd edition. WMO-No. 702, Geneva", ID: "WMO-No. 702"},
	{Key: "NDBC45004", Citation: "NOAA National Data Buoy Center: station 45004, eastern Lake Superior, standard meteorological history files 2002 to 2023"},
	{Key: "Saville1962", Citation: "T. Saville, E. W. McClendon and A. L. Cochran (1962): Freeboard allowances for waves in inland reservoirs. Journal of the Waterways and Harbors Division, ASCE 88, 93-124 (quoted)"},
	{Key: "Fell2005", Citation: "R. Fell, P. MacGregor, D. Stapledon and G. Bell (2005): Geotechnical Engineering of Dams. Balkema, chapter 13"},
	{Key: "WEMo", Citation: "NOAA National Centers for Coastal Ocean Science: WEMo, Wave Exposure Model, package reference of effective_fetch"},
	{Key: "Tomczak2005", Citation: "M. Tomczak (1996-2005): An Introduction to Physical Oceanography, lecture notes, figure 9.5"},
	{Key: "Tran-YoungVerhagen", Citation: "H. Q. Tran: Check_hs_finite_water_depth.m, wave height by Young and Verhagen (1996) as code, with an example"},
}
