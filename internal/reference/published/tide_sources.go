package published

import "followingsea.example/internal/reference"

var tideSources = []reference.Source{
	{Key: "LINZ-Tables", Citation: "Land Information New Zealand and Australian Hydrographic Service, Method to find times or heights between high and low waters, official tide tables"},
	{Key: "ExeterTides", Citation: "Exeter Canoe Club, Tides for Kayakers, lecture slides"},
	{Key: "DIYWoodBoat", Citation: "DIY Wood Boat, The Rule of Twelfths, with the rule of tenths"},
	{Key: "PermisBateau", Citation: "Réussir le permis bateau, Permis hauturier, Solutions des exercices de calcul de marée"},
	{Key: "SeaKayakNav", Citation: "R. Brown (2020), Sea kayak navigation, open book"},
	{Key: "Defant1961", Citation: "A. Defant (1961), Physical Oceanography, volume 2, Pergamon: the form number and its limits, as used in the station descriptions of tidal services"},
	{Key: "NAVEDTRA14220", Citation: "United States Navy, Quartermaster, NAVEDTRA 14220, chapter 7: tide and current calculations", ID: "NAVEDTRA 14220"},
	{Key: "Jamieson2009", Citation: "J. Jamieson (2009), Seamanship Secrets, International Marine"},
	{Key: "ThirdsRule", Citation: "Sea kayaking rule of thirds, article on the rule and its hourly drifts"},
	{Key: "NOAA-Currents", Citation: "National Ocean Service, Tidal Current Tables: tables 3 and 4 (from memory)"},
	{Key: "Foreman1978", Citation: "M. G. G. Foreman (1978), Manual for tidal currents analysis and prediction, Pacific Marine Science Report 78-6, Institute of Ocean Sciences", ID: "PMSR 78-6"},
	{Key: "Schureman1958", Citation: "P. Schureman (1940, reprinted 1958), Manual of Harmonic Analysis and Prediction of Tides, Special Publication 98, US Coast and Geodetic Survey", ID: "SP 98"},
	{Key: "NOAA-Harcon", Citation: "NOAA Center for Operational Oceanographic Products and Services, harmonic constituents of station 8443970, Boston"},
	{Key: "YearTables", Citation: "Equilibrium arguments and node factors of the tidal constituents by year, public-domain tables computed by the method of Special Publication 98"},
	{Key: "NauticAliveSecondary", Citation: "Nautic Alive, Corrections for secondary port 2: Barfleur on Cherbourg"},
	{Key: "AllShips", Citation: "All Ships, Tides: standard ports and secondary places, after the Queensland Tide Tables 2025"},
	{Key: "NOAA-Hilo", Citation: "NOAA Center for Operational Oceanographic Products and Services: harmonic constants, datums and published predictions of high and low waters and hourly heights of stations 8410140, 8443970, 9414290, 1612340, 8729840, 8771450, 1613077"},
	{Key: "BoM-Tides", Citation: "Bureau of Meteorology, Australia, About tide predictions, Barometric pressure"},
	{Key: "SurgeExamples", Citation: "Storm surge height estimator, worked examples 1 and 2 of an educational calculator (drag relation of Garratt 1977)"},
}
