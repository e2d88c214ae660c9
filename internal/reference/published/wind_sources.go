package published

import "followingsea.example/internal/reference"

var windSources = []reference.Source{
	{Key: "EPA-454-R-99-005", Citation: "US Environmental Protection Agency (2000): Meteorological Monitoring Guidance for Regulatory Modeling Applications. Research Triangle Park", ID: "EPA-454/R-99-005"},
	{Key: "WMO-1100", Citation: "World Meteorological Organization: Code table 1100, total wind in the Beaufort scale, with UK Met Office, Beaufort wind force scale: specifications and equivalent speeds for use at sea (reproductions read)"},
	{Key: "WMO-3700", Citation: "World Meteorological Organization: Code table 3700, state of the sea; quoted in E. C. Tupper, Introduction to Naval Architecture, Table 5.4"},
	{Key: "Emeis2013", Citation: "S. Emeis (2013): Wind Energy Meteorology. Springer, Heidelberg", ID: "doi:10.1007/978-3-642-30523-8"},
	{Key: "Beardsley1999", Citation: "R. Beardsley and others (1999): AIR_SEA toolbox, version 2.0, for air-sea fluxes; its printed results for the examples of its Python translation, run in 2022"},
	{Key: "Garratt1977", Citation: "J. R. Garratt (1977): Review of drag coefficients over oceans and continents. Monthly Weather Review 105, 915-929 (quoted in secondary sources)", ID: "doi:10.1175/1520-0493(1977)105<0915:RODCOO>2.0.CO;2"},
	{Key: "ScientiMate", Citation: "A. Karimpour (2017 on): ScientiMate, Earth-science data analysis library, documentation of its wind functions"},
	{Key: "Smith1988", Citation: "S. D. Smith (1988): Coefficients for sea surface wind stress, heat flux, and wind profiles as a function of wind speed and temperature. Journal of Geophysical Research 93, 15467-15472 (as implemented in the AIR_SEA toolbox)", ID: "doi:10.1029/JC093iC12p15467"},
	{Key: "Hsu1994", Citation: "S. A. Hsu, E. A. Meindl and D. B. Gilhousen (1994): Determining the power-law wind-profile exponent under near-neutral stability conditions at sea. Journal of Applied Meteorology 33, 757-765"},
	{Key: "Hsu1980", Citation: "S. A. Hsu (1980): On the correction of land-based wind measurements for oceanographic applications. Coastal Engineering Proceedings 17, 43 (abstract read)", ID: "doi:10.9753/icce.v17.43"},
	{Key: "WMO-8", Citation: "World Meteorological Organization: Guide to Meteorological Instruments and Methods of Observation. WMO-No. 8, chapter on surface wind", ID: "WMO-No. 8"},
	{Key: "Mardia2000", Citation: "K. V. Mardia and P. E. Jupp (2000): Directional Statistics. Wiley, Chichester", ID: "isbn:0471953334"},
	{Key: "Batschelet1981", Citation: "E. Batschelet (1981): Circular Statistics in Biology. Academic Press, London; data of section 6.2 as printed with the tests of the R package circular", ID: "isbn:0120810506"},
	{Key: "Yamartino1984", Citation: "R. J. Yamartino (1984): A comparison of several single-pass estimators of the standard deviation of wind direction. Journal of Climate and Applied Meteorology 23, 1362-1366 (as quoted)"},
	{Key: "MetOffice-MarineGlossary", Citation: "UK Met Office: Marine forecasts glossary (copies of 2011 read)"},
	{Key: "NGA-Pub1310", Citation: "National Geospatial-Intelligence Agency: Radar Navigation and Maneuvering Board Manual. Pub. 1310, true-wind example (copy of the solution read)", ID: "Pub. 1310"},
	{Key: "FAA-8083-25", Citation: "US Federal Aviation Administration: Pilot's Handbook of Aeronautical Knowledge. FAA-H-8083-25, chapter on navigation", ID: "FAA-H-8083-25"},
	{Key: "Stull2017", Citation: "R. Stull (2017): Practical Meteorology: An Algebra-based Survey of Atmospheric Science. University of British Columbia, chapter 10", ID: "isbn:9780888652836"},
	{Key: "AMS-Glossary", Citation: "American Meteorological Society: Glossary of Meteorology"},
	{Key: "NWS-JetStream", Citation: "US National Weather Service: JetStream, marine advisories, table by region"},
	{Key: "NWS-KeyWest", Citation: "US National Weather Service, Key West: Marine definitions"},
	{Key: "CEM-II-2", Citation: "U.S. Army Corps of Engineers (2002): Coastal Engineering Manual, Part II, Chapter 2: Meteorology and Wave Climate. EM 1110-2-1100, changes 1 and 2 (2003, 2006)", ID: "EM 1110-2-1100"},
	{Key: "NDBC-Measurements", Citation: "US National Data Buoy Center: Measurement descriptions and units; station files of the archive and the realtime service"},
	{Key: "AFMAN-15-111", Citation: "US Air Force Manual 15-111 (12 March 2019): Surface Weather Observations; the same text in FMH-1", ID: "AFMAN 15-111"},
}
