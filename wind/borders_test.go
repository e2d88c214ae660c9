package wind_test

import (
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"followingsea.example/wind"
)

var (
	largest   = math.MaxFloat64
	belowZero = -math.SmallestNonzeroFloat64
)

func above(v float64) float64 { return math.Nextafter(v, inf) }
func below(v float64) float64 { return math.Nextafter(v, -inf) }

// first and second take the one of two results that a row of a table is about.
func first[A, B any](a A, _ B) A  { return a }
func second[A, B any](_ A, b B) B { return b }

// TestValuesOnTheBorders: where the stated range of a function is closed, its border has a value.
func TestValuesOnTheBorders(t *testing.T) {
	open := wind.Exposure{Low: 3, Mid: 3, High: 3}
	everywhere := func(float64) float64 { return 7 }
	heavy := wind.Conditions{Speed: 0, Fetch: 1, Duration: 1, MeanDepth: 1, Gravity: largest}
	storm := wind.Conditions{Speed: largest, Fetch: 0, Duration: 1, MeanDepth: 1}
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"extreme of a second", wind.ExtremeRatio(1), 1.277 + 0.296*math.Tanh(0.9*math.Log10(45))},
		{"extreme of an hour", wind.ExtremeRatio(3600), 1},
		{"extreme of ten hours", wind.ExtremeRatio(36000), 1.5334 - 0.15*math.Log10(36000)},
		{"Durst, a second", wind.ExtremeRatioDurst(1), 0.977 + 0.64/(1+math.Pow(1/38.14, 0.685))},
		{"Durst, an hour", wind.ExtremeRatioDurst(3600), 0.977 + 0.64/(1+math.Pow(3600/38.14, 0.685))},
		{"hurricane, a second", wind.ExtremeRatioHurricane(1), 0.96 + 0.839/(1+math.Pow(1/36.27, 0.655))},
		{"hurricane, an hour", wind.ExtremeRatioHurricane(3600), 0.96 + 0.839/(1+math.Pow(3600/36.27, 0.655))},
		{"no wind has no extreme", wind.ExtremeToExtreme(0, 1, 36000), 0},
		{"fastest mile", wind.FastestMileTime(20), 1609.344 / 20},
		{"fastest mile of all", wind.FastestMileTime(largest), 1609.344 / largest},
		{"gust as the mean", wind.GustFactor(5, 5), 1},
		{"gust beyond measure", wind.GustFactor(largest, 2), largest / 2},
		{"number of a calm", wind.BeaufortNumber(0), 0},
		{"number beyond measure", wind.BeaufortNumber(largest), math.Pow(largest/0.836, 2.0/3)},
		{"speed of number 0", wind.BeaufortSpeed(0), 0},
		{"speed of number 17", wind.BeaufortSpeed(17), 0.836 * 17 * math.Sqrt(17)},
		{"no deviation", wind.CombineDeviations([]float64{0}), 0},
		{"drag, stress of a calm", wind.Stress(0, largest, wind.Wu1982), 0},
		{"drag, densest air", wind.Stress(1, largest, func(float64) float64 { return 0.25 }), largest / 4},
		{"drag of a calm, Vera", wind.Vera1983(0), inf},
		{"drag of a calm, Garratt's power", wind.GarrattPower(0), 0},
		{"drag of the greatest wind", wind.DragCEM(largest), 1.1e-3 + 0.035e-3*largest},
		{"power -1", wind.Power(8, 5, 10, -1), 4},
		{"power 1", wind.Power(8, 5, 10, 1), 16},
		{"power, greatest height", wind.Power(8, largest, largest, 0.5), 8},
		{"log, roughness just below", wind.Log(8, 10, 5, below(5)), 8 * math.Log(5/below(5)) / math.Log(10/below(5))},
		{"roughness, greatest friction", wind.Charnock{Alpha: math.SmallestNonzeroFloat64}.Roughness(largest), math.Ldexp(largest, -50) / wind.Gravity}, // 2^-1074 of 2^1024
		{"profile to the greatest height", wind.Charnock{Alpha: 0.9}.ToHeight(4/0.4*3, math.Exp(3)*0.9*16/wind.Gravity, largest).Speed, 4 / 0.4 * (math.Log(largest) - math.Log(0.9*16/wind.Gravity))},
		{"viscosity at -90 °C", wind.AirViscosity(-90), 1.326e-5 * (1 - 6.542e-3*90 + 8.301e-6*8100 + 4.84e-9*729000)},
		{"viscosity at 60 °C", wind.AirViscosity(60), 1.326e-5 * (1 + 6.542e-3*60 + 8.301e-6*3600 - 4.84e-9*216000)},
		{"Coriolis at the pole", wind.Coriolis(90), 2 * wind.EarthRate},
		{"Coriolis at the other pole", wind.Coriolis(-90), -2 * wind.EarthRate},
		{"Coriolis on the equator", wind.Coriolis(0), 0},
		{"geostrophic, no gradient", wind.Geostrophic(0, 45, 0), 0},
		{"geostrophic, greatest gradient", wind.Geostrophic(largest, 90, 1e10), largest / (1e10 * 2 * wind.EarthRate)},
		{"geostrophic, densest air", wind.Geostrophic(1, 90, largest), 1 / (2 * wind.EarthRate) / largest},
		{"contours, no slope", wind.GeostrophicContours(0, 45, 0), 0},
		{"contours, greatest slope", wind.GeostrophicContours(largest, 90, 1e-10), 1e-10 * largest / (2 * wind.EarthRate)},
		{"contours, greatest gravity", wind.GeostrophicContours(1e-300, 90, largest), 1e-300 * largest / (2 * wind.EarthRate)},
		{"vector, greatest gradient", wind.GeostrophicWind(largest, 0, 90, 1e10).North, largest / (1e10 * 2 * wind.EarthRate)},
		{"vector, densest air", wind.GeostrophicWind(1, 0, 90, largest).North, 1 / (2 * wind.EarthRate) / largest},
		{"gradient wind of none", wind.GradientWind(0, -1e6, 45), 0},
		{"land, none", wind.LandToSea(0), 0},
		{"ship, none", wind.ShipToTenMetres(0), 0},
		{"arc of no width", wind.ArcFetch(everywhere, 0, 0), 7},
		{"arc all round", wind.ArcFetch(everywhere, 0, 180), 7},
		{"no period, significant", wind.Sea{Tp: 0}.SignificantPeriod(), 0},
		{"significant period", wind.Sea{Tp: 10}.SignificantPeriod(), 9.5},
		{"no time at one point", wind.OnePointHeight(largest, 0), 0},
		{"no wind at one point", wind.OnePointHeight(0, inf), 0},
		{"Toba, no wind", wind.TobaHeight(0, largest), 0},
		{"Toba, no period", wind.TobaHeight(1, 0), 0},
		{"a calm under any gravity", wind.Grow(nil, heavy).Hs, 0},
		{"any wind without fetch", wind.Grow(nil, storm).Hs, 0},
		{"observed at -2", wind.ObservedOverPredicted(-2), 0.93},
		{"observed below -2", wind.ObservedOverPredicted(below(-2)), 1.04},
		{"observed at 2", wind.ObservedOverPredicted(2), 0.93},
		{"observed above 2", wind.ObservedOverPredicted(above(2)), 0.70},
		{"observed at 4", wind.ObservedOverPredicted(4), 0.70},
		{"observed above 4", wind.ObservedOverPredicted(above(4)), 0.63},
		{"observed at 8", wind.ObservedOverPredicted(8), 0.63},
		{"-90 °C", wind.Celsius(-90).Celsius(), -90},
		{"60 °C", wind.Celsius(60).Celsius(), 60},
		{"dominant speed at 2 m", first(wind.DominantSpeed(2)).Low, 17 * wind.Knot},
		{"dominant speed at 3 m", first(wind.DominantSpeed(3)).High, 27 * wind.Knot},
		{"dominant speed at 5 m", second(wind.DominantSpeed(5)).Low, 32 * wind.Knot},
		{"dominant speed at 5.5 m", second(wind.DominantSpeed(5.5)).High, 44 * wind.Knot},
		{"dominant speed at 6 m", second(wind.DominantSpeed(6)).Low, 36 * wind.Knot},
		{"greatest exposure", open.On(wind.Wind{Speed: 2, Gust: 3}).Low.Speed, 6},
		{"interpolated at the start", wind.Interpolate(wind.Wind{Speed: 3}, wind.Wind{Speed: 5}, 0).Speed, 3},
		{"interpolated at the end", wind.Interpolate(wind.Wind{Speed: 3}, wind.Wind{Speed: 5}, 1).Speed, 5},
		{"the greatest wind from the east", wind.Wind{Speed: largest, From: 90}.Velocity().East, -largest},
		{"the greatest velocity", wind.Velocity{East: largest}.Wind().Speed, largest},
		{"from the greatest number", wind.Interpolate(wind.Wind{Speed: largest, From: largest}, wind.Wind{Speed: 1}, 0).Speed, largest},
		{"deviation where directions cancel", wind.CircularDeviation([]float64{0, 180}), inf},
		{"angular deviation where they cancel, √2", wind.AngularDeviation([]float64{0, 180}), math.Sqrt2 * 180 / math.Pi},
		{"Yamartino where they cancel, 2/√3 of a right angle", wind.Yamartino([]float64{0, 180}), 90 * 2 / math.Sqrt(3)},
		{"no growth time without fetch", wind.JONSWAP.MinimumDuration(10, 0, 9.81), 0},
		{"no height without time", first(wind.HwangWang.After(10, 0, 9.81)), 0},
	} {
		if !(math.Abs(c.got-c.want) <= 1e-12*math.Abs(c.want)) && c.got != c.want {
			t.Errorf("%s: %v, want %v", c.name, c.got, c.want)
		}
	}
}

// TestNoValueBeyondTheBorders: just beyond a border, on an open one, and for numbers that are infinite there is no value.
func TestNoValueBeyondTheBorders(t *testing.T) {
	heavy := wind.Conditions{Speed: 0, Fetch: 1, Duration: 1, MeanDepth: 1, Gravity: inf}
	dry := wind.Conditions{Speed: 0, Fetch: 1, Duration: 1}
	gale := wind.Conditions{Speed: inf, Fetch: 0, Duration: 1, MeanDepth: 1}
	one := func(float64) float64 { return 1 }
	for name, got := range map[string]float64{
		"extreme of less than a second":   wind.ExtremeRatio(below(1)),
		"extreme of more than ten hours":  wind.ExtremeRatio(above(36000)),
		"Durst, less than a second":       wind.ExtremeRatioDurst(below(1)),
		"Durst, more than an hour":        wind.ExtremeRatioDurst(above(3600)),
		"hurricane, less than a second":   wind.ExtremeRatioHurricane(below(1)),
		"hurricane, more than an hour":    wind.ExtremeRatioHurricane(above(3600)),
		"extreme of a negative wind":      wind.ExtremeToExtreme(belowZero, 60, 60),
		"extreme of an infinite wind":     wind.ExtremeToExtreme(inf, 60, 60),
		"fastest mile in a calm":          wind.FastestMileTime(0),
		"fastest mile, infinite":          wind.FastestMileTime(inf),
		"gust below the mean":             wind.GustFactor(below(5), 5),
		"gust of a calm":                  wind.GustFactor(0, 0),
		"number of a negative wind":       wind.BeaufortNumber(belowZero),
		"number of an infinite wind":      wind.BeaufortNumber(inf),
		"number negative":                 wind.BeaufortSpeed(belowZero),
		"number above 17":                 wind.BeaufortSpeed(above(17)),
		"deviation negative":              wind.CombineDeviations([]float64{belowZero}),
		"stress, no density":              wind.Stress(5, belowZero, one),
		"stress, infinite density":        wind.Stress(5, inf, one),
		"power below -1":                  wind.Power(8, 5, 10, below(-1)),
		"power above 1":                   wind.Power(8, 5, 10, above(1)),
		"power from the surface":          wind.Power(8, 0, 10, 0.1),
		"power to the surface":            wind.Power(8, 10, 0, -0.1),
		"power to infinity":               wind.Power(8, 10, inf, 0.1),
		"log, no roughness":               wind.Log(8, 10, 5, 0),
		"log, as rough as high":           wind.Log(8, 10, 5, 5),
		"log, as rough as high, upward":   wind.Log(8, 5, 10, 5),
		"viscosity below -90 °C":          wind.AirViscosity(below(-90)),
		"viscosity above 60 °C":           wind.AirViscosity(above(60)),
		"roughness without friction":      wind.Charnock{}.Roughness(0),
		"roughness, infinite friction":    wind.Charnock{}.Roughness(inf),
		"friction of a negative wind":     wind.Charnock{}.Friction(belowZero, 10),
		"friction at the surface":         wind.Charnock{}.Friction(5, 0),
		"profile to infinity":             wind.Charnock{}.ToHeight(5, 10, inf).Speed,
		"profile of a calm to nowhere":    wind.Charnock{}.ToHeight(0, 10, -1).Speed,
		"profile into the roughness":      wind.Charnock{}.ToHeight(20, 10, 1e-6).Speed,
		"profile to a wind the other way": wind.ToHeight(10, 10, 1e-6, wind.Wu1982).Speed,
		"Coriolis beyond the pole":        wind.Coriolis(above(90)),
		"Coriolis beyond the other pole":  wind.Coriolis(below(-90)),
		"geostrophic, negative gradient":  wind.Geostrophic(belowZero, 45, 0),
		"geostrophic, infinite gradient":  wind.Geostrophic(inf, 45, 0),
		"geostrophic, infinite density":   wind.Geostrophic(1, 45, inf),
		"geostrophic, negative density":   wind.Geostrophic(1, 45, belowZero),
		"contours on the equator":         wind.GeostrophicContours(1, 0, 0),
		"contours, negative slope":        wind.GeostrophicContours(belowZero, 45, 0),
		"contours, infinite slope":        wind.GeostrophicContours(inf, 45, 0),
		"contours, negative gravity":      wind.GeostrophicContours(1, 45, belowZero),
		"contours, infinite gravity":      wind.GeostrophicContours(1, 45, inf),
		"vector on the equator":           wind.GeostrophicWind(1, 1, 0, 0).East,
		"vector, infinite gradient":       wind.GeostrophicWind(inf, 1, 45, 0).East,
		"vector, negative density":        wind.GeostrophicWind(1, 1, 45, belowZero).East,
		"vector, infinite density":        wind.GeostrophicWind(1, 1, 45, inf).East,
		"land, negative":                  wind.LandToSea(belowZero),
		"ship, negative":                  wind.ShipToTenMetres(belowZero),
		"arc of more than all round":      wind.ArcFetch(one, 0, above(180)),
		"arc of less than nothing":        wind.ArcFetch(one, 0, belowZero),
		"period negative":                 wind.Sea{Tp: belowZero}.SignificantPeriod(),
		"one point, negative wind":        wind.OnePointHeight(belowZero, 1),
		"one point, infinite wind":        wind.OnePointHeight(inf, 0),
		"one point, negative time":        wind.OnePointHeight(1, belowZero),
		"Toba, negative wind":             wind.TobaHeight(belowZero, 1),
		"Toba, negative period":           wind.TobaHeight(1, belowZero),
		"Toba, infinite period":           wind.TobaHeight(0, inf),
		"a calm under infinite gravity":   wind.Grow(nil, heavy).Hs,
		"a calm on no water":              wind.Grow(nil, dry).Hs,
		"infinite wind without fetch":     wind.Grow(nil, gale).Hs,
		"observed above 8":                wind.ObservedOverPredicted(above(8)),
		"below -90 °C":                    wind.Celsius(below(-90)).Celsius(),
		"above 60 °C":                     wind.Celsius(above(60)).Celsius(),
		"dominant speed below 2 m":        first(wind.DominantSpeed(below(2))).Low,
		"dominant speed above 6 m":        first(wind.DominantSpeed(above(6))).Low,
		"interpolated before the start":   wind.Interpolate(wind.Wind{Speed: 3}, wind.Wind{Speed: 5}, belowZero).Speed,
		"interpolated after the end":      wind.Interpolate(wind.Wind{Speed: 3}, wind.Wind{Speed: 5}, above(1)).Speed,
		"printed time, no wind":           wind.JONSWAP.MinimumDuration(0, 0, 9.81),
		"printed time, infinite wind":     wind.Kamphuis.MinimumDuration(inf, 0, 9.81),
		"printed time, negative fetch":    wind.Kamphuis.MinimumDuration(10, belowZero, 9.81),
		"printed time, no gravity":        wind.Kamphuis.MinimumDuration(10, 1, 0),
		"printed time, infinite gravity":  wind.Wilson.MinimumDuration(10, 1, inf),
		"depth limit of an infinite wind": wind.DepthLimitedHeight(inf, 3),
		"depth limit without depth":       wind.DepthLimitedHeight(3, 0),
		"depth limit of infinite depth":   wind.DepthLimitedHeight(3, inf),
		"period limit without depth":      wind.DepthLimitedPeriod(3, 0),
		"period limit without wind":       wind.DepthLimitedPeriod(0, 3),
		"period limit, infinite wind":     wind.DepthLimitedPeriod(inf, 3),
		"period limit of infinite depth":  wind.DepthLimitedPeriod(3, inf),
	} {
		if !math.IsNaN(got) {
			t.Errorf("%s: %v, want NaN", name, got)
		}
	}
}

// TestErrorsOnTheBorders: what makes a value of its numbers takes them on the closed border of what is allowed and refuses the
// next one beyond.
func TestErrorsOnTheBorders(t *testing.T) {
	newWind := func(speed, from float64) error { return second(wind.New(speed, from)) }
	gusting := func(speed, gust float64) error { return second(wind.Gusting(speed, gust, 0)) }
	sample := func(w wind.Wind) error { return second(wind.NewSeries([]wind.Sample{{Time: at(0), Wind: w}}, 0)) }
	swell := func(hs, tp, from float64) error { return second(wind.NewSwell(hs, tp, from)) }
	exposure := func(low, mid, high float64) error { return second(wind.NewExposure(low, mid, high)) }
	radials := func(a, step float64, lengths ...float64) error { return second(wind.Radials(a, step, lengths...)) }
	fetches := func(from, fetch, depth float64) error {
		return second(wind.NewFetches([]wind.FetchRow{{From: from, Fetch: fetch, MeanDepth: depth}}))
	}
	s := series(t, 0, [3]float64{0, 8, 200}, [3]float64{0.1, 8, 20}, [3]float64{0.2, 8, 20})
	shift := func(r wind.ShiftRule) error { return second(s.Shifts(r)) }
	squall := func(r wind.SquallRule) error { return second(s.Squalls(r)) }
	height := func(h float64) error {
		b := wind.BuoyRecord{Rows: []wind.BuoyRow{{Time: at(0), Wind: mustBlow(5, 180), HasWind: true}}}
		return second(b.Winds(h, 0))
	}
	nan := math.NaN()
	for name, c := range map[string]struct{ got, want error }{
		"no wind":                         {newWind(0, nan), nil},
		"less than no wind":               {newWind(belowZero, 0), wind.ErrSpeed},
		"the strongest mean":              {newWind(70, 0), nil},
		"a stronger mean":                 {newWind(above(70), 0), wind.ErrSpeed},
		"from 360":                        {newWind(5, 360), nil},
		"from beyond 360":                 {newWind(5, above(360)), wind.ErrDirection},
		"from below 0":                    {newWind(5, belowZero), wind.ErrDirection},
		"gust as the mean":                {gusting(5, 5), nil},
		"gust below the mean":             {gusting(5, below(5)), wind.ErrGust},
		"the strongest gust":              {gusting(5, 115), nil},
		"a stronger gust":                 {gusting(5, above(115)), wind.ErrGust},
		"sample, a calm from nowhere":     {sample(wind.Wind{From: 999}), nil},
		"sample, the strongest mean":      {sample(wind.Wind{Speed: 70}), nil},
		"sample, a stronger mean":         {sample(wind.Wind{Speed: above(70)}), wind.ErrSpeed},
		"sample, from 360":                {sample(wind.Wind{Speed: 5, From: 360}), nil},
		"sample, from beyond":             {sample(wind.Wind{Speed: 5, From: above(360)}), wind.ErrDirection},
		"sample, from below 0":            {sample(wind.Wind{Speed: 5, From: belowZero}), wind.ErrDirection},
		"sample, the strongest gust":      {sample(wind.Wind{Speed: 5, Gust: 115}), nil},
		"sample, a stronger gust":         {sample(wind.Wind{Speed: 5, Gust: above(115)}), wind.ErrGust},
		"a force beyond measure":          {second(wind.Beaufort(largest)), nil},
		"a force of an infinite wind":     {second(wind.Beaufort(inf)), wind.ErrSpeed},
		"metric, beyond measure":          {second(wind.BeaufortMetric(largest)), nil},
		"a force of less than a calm":     {second(wind.Beaufort(belowZero)), wind.ErrSpeed},
		"metric, less than a calm":        {second(wind.BeaufortMetric(belowZero)), wind.ErrSpeed},
		"a sea beyond measure":            {second(wind.SeaStateOf(largest)), nil},
		"a sea of less than nothing":      {second(wind.SeaStateOf(belowZero)), wind.ErrHeight},
		"swell, the highest":              {swell(25, 10, 0), nil},
		"swell, higher":                   {swell(above(25), 10, 0), wind.ErrSwell},
		"swell, lower than none":          {swell(belowZero, 10, 0), wind.ErrSwell},
		"swell, the shortest":             {swell(1, 1, 0), nil},
		"swell, shorter":                  {swell(1, below(1), 0), wind.ErrSwell},
		"swell, the longest":              {swell(1, 40, 0), nil},
		"swell, longer":                   {swell(1, above(40), 0), wind.ErrSwell},
		"swell from 360":                  {swell(1, 10, 360), nil},
		"swell from beyond":               {swell(1, 10, above(360)), wind.ErrSwell},
		"swell from below 0":              {swell(1, 10, belowZero), wind.ErrSwell},
		"exposures alike, the greatest":   {exposure(3, 3, 3), nil},
		"exposure, greater":               {exposure(1, 1, above(3)), wind.ErrExposure},
		"exposure, none":                  {exposure(0, 1, 1), wind.ErrExposure},
		"exposure, low above the middle":  {exposure(above(1), 1, 1), wind.ErrExposure},
		"exposure, middle above high":     {exposure(1, above(1), 1), wind.ErrExposure},
		"two radials":                     {radials(0, 10, 1, 2), nil},
		"one radial":                      {radials(0, 10, 1), wind.ErrRadials},
		"radials from 360":                {radials(360, 10, 1, 2), nil},
		"radials from -360":               {radials(-360, 10, 1, 2), nil},
		"radials from beyond":             {radials(above(360), 10, 1, 2), wind.ErrRadials},
		"radials, the finest":             {radials(0, 0.01, 1, 2), nil},
		"radials, finer":                  {radials(0, below(0.01), 1, 2), wind.ErrRadials},
		"radials of one turn":             {radials(0, 180, 1, 2, 1), nil},
		"radials of more":                 {radials(0, 180.1, 1, 2, 1), wind.ErrRadials},
		"radials of no length":            {radials(0, 10, 0, 0), nil},
		"radials of less":                 {radials(0, 10, 0, belowZero), wind.ErrRadials},
		"fetch from 0":                    {fetches(0, 1, nan), nil},
		"fetch from 360":                  {fetches(360, 1, nan), nil},
		"fetch from below 0":              {fetches(belowZero, 1, nan), wind.ErrFetchRow},
		"fetch from beyond":               {fetches(above(360), 1, nan), wind.ErrFetchRow},
		"no fetch":                        {fetches(0, 0, nan), nil},
		"less than no fetch":              {fetches(0, belowZero, nan), wind.ErrFetchRow},
		"fetch over no depth":             {fetches(0, 1, 0), wind.ErrFetchRow},
		"shift of 180":                    {shift(wind.ShiftRule{Degrees: 180}), nil},
		"shift of more":                   {shift(wind.ShiftRule{Degrees: above(180)}), wind.ErrDirection},
		"shift of less than none":         {shift(wind.ShiftRule{Degrees: belowZero}), wind.ErrDirection},
		"shift, step as long as the time": {shift(wind.ShiftRule{Within: 6 * time.Minute}), wind.ErrCoarse},
		"shift, step just shorter":        {shift(wind.ShiftRule{Within: 6*time.Minute + 1}), nil},
		"squall, no rise at all":          {squall(wind.SquallRule{Rise: belowZero}), wind.ErrSpeed},
		"squall to less than nothing":     {squall(wind.SquallRule{To: belowZero}), wind.ErrSpeed},
		"squall, step as long":            {squall(wind.SquallRule{Within: 6 * time.Minute}), wind.ErrCoarse},
		"anemometer at 0.5 m":             {height(0.5), nil},
		"anemometer below":                {height(below(0.5)), wind.ErrHeight},
		"anemometer at 200 m":             {height(200), nil},
		"anemometer above":                {height(above(200)), wind.ErrHeight},
		"no negative gap":                 {second(wind.NewSeries(s.Samples(), -1)), wind.ErrSpan},
		"level beyond measure":            {second(s.Spells(largest)), nil},
		"onset, level beyond measure":     {second(s.Onset(at(0), largest)), wind.ErrBelow},
		"onset, level of nothing":         {second(s.Onset(at(0), 0)), wind.ErrSpeed},
		"lulls of any length":             {second(s.Lulls(5, 0)), nil},
		"no margin":                       {second(s.Around(at(0), at(0.1), 0)), nil},
	} {
		if !errors.Is(c.got, c.want) {
			t.Errorf("%s: %v, want %v", name, c.got, c.want)
		}
	}
}

// TestWordsOnTheBorders: the first and the last number of a scale have their words, its neighbours have none and panic in words of
// this package.
func TestWordsOnTheBorders(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{fmt.Sprint(wind.CircularDeviation([]float64{90, 90})), "0"}, // not -0
		{fmt.Sprint(wind.Wind{Speed: 5, From: 90}.On(0)), "{0 5 90}"},
		{wind.Force(-1).String(), "Force(-1)"}, {wind.Force(0).String(), "force 0, calm"},
		{wind.Force(12).String(), "force 12, hurricane"}, {wind.Force(13).String(), "Force(13)"},
		{wind.SeaState(-1).String(), "SeaState(-1)"}, {wind.SeaState(0).String(), "sea state 0, calm (glassy)"},
		{wind.SeaState(9).String(), "sea state 9, phenomenal"}, {wind.SeaState(10).String(), "SeaState(10)"},
		{wind.Wind{Speed: 5 * wind.Knot, From: largest}.String()[:11], "5.0 kn from"}, {wind.Wind{Speed: 5, From: inf}.String(), "unknown"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
	for name, f := range map[string]func(){"force -1": func() { wind.Force(-1).Name() }, "force 13": func() { wind.Force(13).Name() },
		"sea state -1": func() { wind.SeaState(-1).Words() }, "sea state 10": func() { wind.SeaState(10).Range() },
		"sample -1": func() { wind.Series{}.Sample(-1) }, "sample 0 of none": func() { wind.Series{}.Sample(0) }} {
		func() {
			defer func() {
				if r := fmt.Sprint(recover()); !strings.HasPrefix(r, "wind: ") {
					t.Errorf("%s: %s", name, r)
				}
			}()
			f()
		}()
	}
	if lo, hi := wind.SeaState(0).Range(); lo != 0 || hi != 0 {
		t.Errorf("sea state 0 from %v to %v", lo, hi)
	}
	if lo, _ := wind.Force(0).Range(); lo != 0 {
		t.Errorf("force 0 from %v", lo)
	}
}

// TestPrintedClasses: code table 1100 as it is printed, in knots, metres a second and kilometres an hour, and the exact bounding
// heights of code table 3700, which belong to the lower figure.
func TestPrintedClasses(t *testing.T) {
	tops := []float64{0.2, 1.5, 3.3, 5.4, 7.9, 10.7, 13.8, 17.1, 20.7, 24.4, 28.4, 32.6}
	for i, top := range tops {
		f := wind.Force(i)
		at, _ := wind.BeaufortMetric(top)
		beyond, _ := wind.BeaufortMetric(top + 0.1)
		if at != f || beyond != f+1 {
			t.Errorf("%v m/s is %v, a tenth more %v", top, at, beyond)
		}
	}
	for i, want := range [][4]int{{0, 0, 0, 0}, {1, 3, 1, 5}, {4, 6, 6, 11}, {7, 10, 12, 19}, {11, 16, 20, 28}, {17, 21, 29, 38}, {22, 27, 39, 49}, {28, 33, 50, 61},
		{34, 40, 62, 74}, {41, 47, 75, 88}, {48, 55, 89, 102}, {56, 63, 103, 117}, {64, -1, 118, -1}} {
		a, b, kn := wind.Force(i).Knots()
		c, d, kmh := wind.Force(i).KilometresAnHour()
		if [4]int{a, b, c, d} != want || kn != (i < 12) || kmh != (i < 12) {
			t.Errorf("force %d: %v to %v kn (%v), %v to %v km/h (%v), want %v", i, a, b, kn, c, d, kmh, want)
		}
	}
	for i, top := range []float64{0, 0.1, 0.5, 1.25, 2.5, 4, 6, 9, 14} {
		at, _ := wind.SeaStateOf(top)
		beyond, _ := wind.SeaStateOf(above(top))
		if int(at) != i || int(beyond) != i+1 {
			t.Errorf("%v m is %v, more than that %v", top, at, beyond)
		}
	}
}

// TestWindThatMovesAlong: a calm has no direction for a gust to come from; and a gust that just is as fast as the wind felt is one.
func TestWindThatMovesAlong(t *testing.T) {
	if got := (wind.Wind{Gust: 3}).Relative(wind.Velocity{East: 1}); got.Speed != 1 || got.From != 90 || got.GustKnown() {
		t.Errorf("a calm: %v", got)
	}
	w := wind.Wind{Speed: 5, Gust: 9, From: 270}
	if got := w.Relative(wind.Velocity{East: 7}); got.Speed != 2 || got.Gust != 2 || got.From != 90 {
		t.Errorf("gust and mean alike: %v", got)
	}
	if got := wind.TrueWind(w, wind.Velocity{}); got.Speed != 5 || got.GustKnown() || !near(got.From, 270, 1e-12) {
		t.Errorf("true wind at rest: %v", got)
	}
	if got := w.Relative(wind.Velocity{East: 7, North: -1}); !alike(got.Speed, math.Sqrt(5), 1e-12) || !near(got.From, deg(math.Atan2(2, -1)), 1e-9) {
		t.Errorf("across: %v", got)
	}
	// The largest numbers that a wind may have are one.
	for _, v := range []wind.Wind{{Speed: largest, From: 90}, {Speed: 1, From: largest}, {Speed: 1, From: -largest}} {
		if got := v.Relative(wind.Velocity{}); got.Speed != v.Speed || got.From != v.From {
			t.Errorf("%v is %v", v, got)
		}
	}
	for _, v := range []wind.Wind{{Speed: inf, From: 90}, {Speed: 1, From: inf}, {Speed: belowZero, From: 90}} {
		if got := v.Relative(wind.Velocity{}); !math.IsNaN(got.Speed) {
			t.Errorf("%v is %v", v, got)
		}
	}
	c := w.On(240) // 30° from the right of dead astern (60)
	if !alike(c.Tail, -5*math.Cos(rad(30)), 1e-12) || !alike(c.FromRight, 2.5, 1e-12) || !alike(c.OffStern, 150, 1e-12) {
		t.Errorf("%+v", c)
	}
}

// TestWarningLevelsInTheirUnits: levels are whole knots and feet as the services print them; the British ones are the forces 8 to 12 with
// gusts of 43, 52, 61 and 69 knots, and of the American advisories the one for the Pacific coast is 21 to 33 knots or seas of 10 feet.
func TestWarningLevelsInTheirUnits(t *testing.T) {
	nan := math.NaN()
	gusts := []float64{43, 52, 61, 69, nan}
	alikeOrNone := func(got, want float64) bool { return near(got, want, 1e-9) || math.IsNaN(got) && math.IsNaN(want) }
	for i, l := range wind.WarningLevels() {
		if i < len(gusts) {
			lo, hi, bounded := wind.Force(8 + i).Knots()
			upper := float64(hi)
			if !bounded {
				upper = nan
			}
			if !near(l.Mean/wind.Knot, float64(lo), 1e-9) || !alikeOrNone(l.Upper/wind.Knot, upper) || !alikeOrNone(l.Gust/wind.Knot, gusts[i]) || !math.IsNaN(l.Sea) {
				t.Errorf("force %d: %+v", 8+i, l)
			}
		}
		if l.Region == "Pacific coast" && !(near(l.Mean, 21*wind.Knot, 1e-9) && near(l.Upper, 33*wind.Knot, 1e-9) && near(l.Gust, 21*wind.Knot, 1e-9) && near(l.Sea, 10*wind.Foot, 1e-9)) {
			t.Errorf("%+v", l)
		}
		for _, whole := range []float64{l.Mean / wind.Knot, l.Upper / wind.Knot, l.Gust / wind.Knot, l.Sea / wind.Foot} {
			if !alikeOrNone(whole, math.Round(whole)) {
				t.Errorf("%s: %v is not whole", l.Name, whole)
			}
		}
	}
}
