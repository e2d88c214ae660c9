package wind

// WarningLevel is a level at which a weather service warns, as data with its
// source: services change them. They are made for vessels with engines; most
// of what a paddler should fear is below every one of them.
type WarningLevel struct {
	Service string
	Region  string // empty: everywhere the service warns
	Name    string
	Mean    float64 // m/s, from which it is issued
	Upper   float64 // m/s, the last whole knot of it; NaN if open
	Gust    float64 // m/s, from which gusts alone raise it; NaN if none is given
	Sea     float64 // m, from which the sea alone raises it; NaN if none is given
	Source  string  // key of the bibliography
	Read    string  // date of the edition read, as the source gives it
}

// WarningLevels returns a fresh copy of the levels on file.
//
// Source: [MetOffice-MarineGlossary] gale warnings; [NWS-JetStream] marine advisories; [NWS-KeyWest] marine definitions.
func WarningLevels() []WarningLevel {
	const uk, us = "UK Met Office", "US National Weather Service"
	kn := func(service, region, name string, mean, upper, gust, seaFeet float64, source, read string) WarningLevel {
		return WarningLevel{service, region, name, mean * Knot, upper * Knot, gust * Knot, seaFeet * Foot, source, read}
	}
	const glossary, jet, key = "MetOffice-MarineGlossary", "NWS-JetStream", "NWS-KeyWest"
	return []WarningLevel{
		kn(uk, "", "gale", 34, 40, 43, nan, glossary, "2011"),
		kn(uk, "", "severe gale", 41, 47, 52, nan, glossary, "2011"),
		kn(uk, "", "storm", 48, 55, 61, nan, glossary, "2011"),
		kn(uk, "", "violent storm", 56, 63, 69, nan, glossary, "2011"),
		kn(uk, "", "hurricane force", 64, nan, nan, nan, glossary, "2011"),
		kn(us, "Atlantic Maine to South Carolina, Lakes Erie and Ontario", "small craft advisory", 25, 33, 25, 5, jet, "undated"),
		kn(us, "Lakes Superior, Michigan and Huron", "small craft advisory", 22, 33, 22, 4, jet, "undated"),
		kn(us, "Atlantic Georgia and Florida, Gulf of Mexico", "small craft advisory", 20, 33, 20, 7, jet, "undated"),
		kn(us, "Pacific coast", "small craft advisory", 21, 33, 21, 10, jet, "undated"),
		kn(us, "Alaska", "small craft advisory", 23, 33, 23, nan, jet, "undated"),
		kn(us, "American Samoa", "small craft advisory", 25, 33, 25, nan, jet, "undated"),
		kn(us, "Mariana Islands", "small craft advisory", 22, 33, 22, nan, jet, "undated"),
		kn(us, "", "gale warning", 34, 47, nan, nan, key, "undated"),
		kn(us, "", "storm warning", 48, 63, nan, nan, key, "undated"),
		kn(us, "", "hurricane force wind warning", 64, nan, nan, nan, key, "undated"),
	}
}

// Reached reports whether the wind is at the level or above it, by its mean or
// its gust, in whole knots as warnings are worded (halves up). Where the answer
// is no but the mean is not known, or the gust is not and the level has one,
// known is false: nobody can say.
func (l WarningLevel) Reached(w Wind) (reached, known bool) {
	kn := func(v float64) float64 { return wholeKnots(v) }
	if kn(w.Speed) >= kn(l.Mean) {
		return true, true
	}
	hasGust := l.Gust > 0
	if hasGust && w.GustKnown() && kn(w.Gust) >= kn(l.Gust) {
		return true, true
	}
	if !(w.Speed >= 0) || hasGust && !w.GustKnown() {
		return false, false
	}
	return false, true
}
