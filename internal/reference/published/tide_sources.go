package published

import "followingsea.example/internal/reference"

var tideSources = []reference.Source{
	{Key: "LINZ-Tables", Citation: "Land Information New Zealand and Australian Hydrographic Service, Method to find times or heights between high and low waters, official tide tables"},
	{Key: "ExeterTides", Citation: "Exeter Canoe Club, Tides for Kayakers, lecture slides"},
	{Key: "DIYWoodBoat", Citation: "DIY Wood Boat, The Rule of Twelfths, with the rule of tenths"},
	{Key: "PermisBateau", Citation: "Réussir le permis bateau, Permis hauturier, Solutions des exercices de calcul de marée"},
	{Key: "SeaKayakNav", Citation: "R. Brown (2020), Sea kayak navigation, open book"},
}
