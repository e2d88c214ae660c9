// Package spectrum describes an irregular sea: how its energy lies over the frequencies and directions of its waves, what
// follows from that, and what one such sea would look like from a board.
//
// A wave forecast gives a height and a period; a rider meets single waves. Between the two stands the spectrum S(f), the
// variance of the surface per hertz. Its area is the variance m₀, and Hm0 = 4√m₀ is the significant height. Which waves are
// there to be ridden, how they group, how they add to a swell and what they carry all follow from it.
//
// # The three calls most people need
//
//	sea := spectrum.JONSWAP{Hs: 0.9, Tp: 4.2, Gamma: 3.3} // a wind sea by its height and peak period
//	p := spectrum.Describe(sea)                           // Tz, Te, narrowness, peakedness ...
//	r, err := spectrum.Sea{Spectrum: sea, Depth: math.Inf(1), Seed: 1}.Realise()
//
// and then r.Elevation, r.Slope or r.At for the surface at a time and a place. A measured sea is read by ReadBuoy, made a
// spectrum by BuoyRow.Bins, and parted into swell and wind sea at the SeparationFrequency by Separate. Seas add with Sum.
//
// # Which shape
//
//	JONSWAP                 a wind sea from its Hm0 and Tp; exact in its height. Gamma 3.3, or GammaFromSteepness
//	Bretschneider           a fully risen sea, or where nothing is known of the peak
//	TMA                     a wind sea over water of limited depth
//	PiersonMoskowitz        the upper end: what a wind can raise in the end
//	BretschneiderMitsuyasu, GodaModified, GodaJONSWAP   by the highest third of the waves, as coastal works are designed
//	JONSWAPFit, JONSWAPAlpha, Gamma                     as other programs and papers have it
//	Bins, Points            measured bands, summed; tabulated points, by trapezoids
//
// Names say which height and which period: Hs is Hm0 and H13 the mean of the highest third, which in a real sea is some 5 %
// lower; Tp is the peak's, Tz = Tm02, Tm01 and Te the moments'.
//
// # Validity
//
// Everything is linear: waves of a spectrum pass through each other, crests are as high as troughs are deep, and heights
// follow Rayleigh's distribution, which is 5 to 10 % high for the highest. The tail of f⁻⁵ goes on for ever in the shapes
// and not in the sea: the moments m₀, m₁ and m₋₁ hardly notice, m₂ (so Tz) by some per cent, the surface drift by a quarter,
// and m₄ has no value without an upper limit. DescribeWithin takes one.
//
// Frequencies are in hertz and densities in m²/Hz; a density per rad/s is this over 2π. Directions are degrees from which
// the waves come (From), and spreading is about the mean direction, so that it has no sense. Formulas return NaN for what
// they cannot use; what is made from outside data returns an error that wraps ErrInput. All is safe for concurrent use.
//
// # Sources
//
// Goda's Random Seas [Goda2010Book] is the book to have beside it; Hasselmann [Hasselmann1973], Bouws [Bouws1985], Mitsuyasu
// [Mitsuyasu1975], Longuet-Higgins [LonguetHiggins1983] and Kimura [Kimura1980] for the single laws. The published values
// that each function is checked against are in the table of checks.
package spectrum
