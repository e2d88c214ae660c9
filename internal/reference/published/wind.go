package published

import (
	"fmt"
	"math"
	"slices"
	"strings"

	ref "followingsea.example/internal/reference"
	"followingsea.example/wind"
)

// The reading side of package wind. The checks are in wind_checks.go.

var windSubjects = slices.Concat(windScale, windDrag, windHeight, windExtremes, windDirection, windMotion, windMaps, windSeries, windFiles)

var (
	argU10   = ref.Number("speed", "m/s", ref.NonNegative, 8)
	argSpeed = argU10
)

// windForce turns the argument force into one of the scale.
func windForce(in ref.In) (wind.Force, error) {
	f := in.F("force")
	if !(f >= 0 && f <= 12 && f == math.Trunc(f)) {
		return 0, fmt.Errorf("force %v is no number of the scale", f)
	}
	return wind.Force(f), nil
}

func windBounds(f func(wind.Force) (int, int, bool)) func(ref.In) (ref.Out, error) {
	return func(in ref.In) (ref.Out, error) {
		force, err := windForce(in)
		if err != nil {
			return nil, err
		}
		lo, hi, bounded := f(force)
		out := ref.Out{"lo": float64(lo), "hi": float64(hi)}
		if !bounded {
			out["hi"] = math.Inf(1)
		}
		return out, nil
	}
}

var argForce = ref.Number("force", "1", ref.Between(0, 12), 5)

var windScale = []ref.Subject{
	{
		Name: "wind.Beaufort", Func: wind.Beaufort, Class: ref.Formula,
		Args: []ref.Arg{argSpeed}, Results: []ref.Result{{Name: "force", Unit: "1"}},
		Eval: func(in ref.In) (ref.Out, error) {
			f, err := wind.Beaufort(in.F("speed"))
			return ref.Out{"force": float64(f)}, err
		},
		Tests: []string{"TestBeaufortTablesAgreeButForThreeKnots"},
	},
	{
		Name: "wind.BeaufortMetric", Func: wind.BeaufortMetric, Class: ref.Formula,
		Args: []ref.Arg{argSpeed}, Results: []ref.Result{{Name: "force", Unit: "1"}},
		Eval: func(in ref.In) (ref.Out, error) {
			f, err := wind.BeaufortMetric(in.F("speed"))
			return ref.Out{"force": float64(f)}, err
		},
		Tests: []string{"TestBeaufortTablesAgreeButForThreeKnots"},
	},
	{
		Name: "wind.BeaufortNumber", Func: wind.BeaufortNumber, Class: ref.Formula,
		Args: []ref.Arg{argSpeed}, Results: []ref.Result{{Unit: "1"}},
		Tests: []string{"TestBeaufortSpeedAndNumberUndoEachOther"},
	},
	{
		Name: "wind.BeaufortSpeed", Func: wind.BeaufortSpeed, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("number", "1", ref.Between(0, 17), 5)}, Results: []ref.Result{{Unit: "m/s"}},
		Tests: []string{"TestBeaufortSpeedAndNumberUndoEachOther"},
	},
	{
		Name: "wind.Force.Name", Func: wind.Force.Name, Class: ref.Data,
		Args: []ref.Arg{argForce}, Results: []ref.Result{{Name: "name", Unit: "text"}},
		Eval: func(in ref.In) (ref.Out, error) {
			f, err := windForce(in)
			if err != nil {
				return nil, err
			}
			return ref.Out{"name": f.Name()}, nil
		},
		Tests: []string{"TestForceData"},
	},
	{
		Name: "wind.Force.Range", Func: wind.Force.Range, Class: ref.Data,
		Args: []ref.Arg{argForce}, Results: []ref.Result{{Name: "lo", Unit: "m/s"}, {Name: "hi", Unit: "m/s"}},
		Eval: func(in ref.In) (ref.Out, error) {
			f, err := windForce(in)
			if err != nil {
				return nil, err
			}
			lo, hi := f.Range()
			return ref.Out{"lo": lo, "hi": hi}, nil
		},
		Tests: []string{"TestForceData"},
	},
	{
		Name: "wind.Force.Knots", Func: wind.Force.Knots, Class: ref.Data,
		Args: []ref.Arg{argForce}, Results: []ref.Result{{Name: "lo", Unit: "1"}, {Name: "hi", Unit: "1"}},
		Eval:  windBounds(wind.Force.Knots),
		Tests: []string{"TestForceData"},
	},
	{
		Name: "wind.Force.KilometresAnHour", Func: wind.Force.KilometresAnHour, Class: ref.Data,
		Args: []ref.Arg{argForce}, Results: []ref.Result{{Name: "lo", Unit: "1"}, {Name: "hi", Unit: "1"}},
		Eval:  windBounds(wind.Force.KilometresAnHour),
		Tests: []string{"TestForceData"},
	},
	{
		Name: "wind.Force.OpenSeaHeight", Func: wind.Force.OpenSeaHeight, Class: ref.Data,
		Args: []ref.Arg{argForce}, Results: []ref.Result{{Name: "probable", Unit: "m"}, {Name: "maximum", Unit: "m"}},
		Eval: func(in ref.In) (ref.Out, error) {
			f, err := windForce(in)
			if err != nil {
				return nil, err
			}
			p, m := f.OpenSeaHeight()
			return ref.Out{"probable": p, "maximum": m}, nil
		},
		Tests: []string{"TestForceData"},
	},
	{
		Name: "wind.SeaStateOf", Func: wind.SeaStateOf, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("hs", "m", ref.NonNegative, 1)},
		Results: []ref.Result{{Name: "figure", Unit: "1"}, {Name: "words", Unit: "text"}},
		Eval: func(in ref.In) (ref.Out, error) {
			s, err := wind.SeaStateOf(in.F("hs"))
			if err != nil {
				return nil, err
			}
			return ref.Out{"figure": float64(s), "words": s.Words()}, nil
		},
		Tests: []string{"TestSeaStateBounds"},
	},
	{Name: "wind.SeaState.Words", Func: wind.SeaState.Words, Class: ref.Data, Tests: []string{"TestSeaStateBounds"}},
	{Name: "wind.SeaState.Range", Func: wind.SeaState.Range, Class: ref.Data, Tests: []string{"TestSeaStateBounds"}},
	{
		Name: "wind.WarningLevels", Func: wind.WarningLevels, Class: ref.Data,
		Args:    []ref.Arg{ref.Text("name", "gale"), ref.Text("region", "any")},
		Results: []ref.Result{{Name: "mean", Unit: "m/s"}, {Name: "upper", Unit: "m/s"}, {Name: "gust", Unit: "m/s"}, {Name: "sea", Unit: "m"}},
		Eval: func(in ref.In) (ref.Out, error) {
			for _, l := range wind.WarningLevels() {
				if l.Name == in.S("name") && (in.S("region") == "any" || strings.Contains(l.Region, in.S("region"))) {
					return ref.Out{"mean": l.Mean, "upper": l.Upper, "gust": l.Gust, "sea": l.Sea}, nil
				}
			}
			return nil, fmt.Errorf("no level %q", in.S("name"))
		},
		Tests: []string{"TestWarningLevels"},
	},
	{
		Name: "wind.DominantSpeed", Func: wind.DominantSpeed, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("hs", "m", ref.Between(2, 6), 3)},
		Results: []ref.Result{{Name: "coastal-low", Unit: "m/s"}, {Name: "coastal-high", Unit: "m/s"}, {Name: "ocean-low", Unit: "m/s"}, {Name: "ocean-high", Unit: "m/s"}},
		Eval: func(in ref.In) (ref.Out, error) {
			c, o := wind.DominantSpeed(in.F("hs"))
			return ref.Out{"coastal-low": c.Low, "coastal-high": c.High, "ocean-low": o.Low, "ocean-high": o.High}, nil
		},
		Tests: []string{"TestDominantSpeedRises"},
	},
	{Name: "wind.WarningLevel.Reached", Func: wind.WarningLevel.Reached, Class: ref.Composed, Tests: []string{"TestWarningLevels"}},
}

// noDragPrint is the record of the search for printed values of a drag law
// whose source gives only its line.
const noDragPrint = "manuals, toolboxes and reviews that quote the law print its coefficients and no value worked out from them; searched: the drag tables of wave-model and air-sea toolbox documentation, wind-energy and coastal manuals"

func drag(name string, f func(float64) float64, none ...string) ref.Subject {
	s := ref.Subject{
		Name: "wind." + name, Func: f, Class: ref.Formula,
		Args: []ref.Arg{argU10}, Results: []ref.Result{{Unit: "1"}},
		Tests: []string{"TestDragLawsAgreeWithinTheScatter", "TestDragLawsContinueAcrossTheirBranches"},
	}
	for _, r := range none {
		if s.NoneFound == nil {
			s.NoneFound = map[string]string{}
		}
		s.NoneFound[r] = noDragPrint
	}
	return s
}

func above(limit float64) []ref.Regime {
	return []ref.Regime{
		{Name: "constant", In: func(in ref.In) bool { return in.F("speed") <= limit }},
		{Name: "line", In: func(in ref.In) bool { return in.F("speed") > limit }},
	}
}

func withRegimes(s ref.Subject, r []ref.Regime) ref.Subject { s.Regimes = r; return s }

// windLaw finds a drag law by name.
func windLaw(name string) (wind.DragLaw, error) {
	laws := map[string]wind.DragLaw{
		"large-pond": wind.LargePond1981, "large-pond-toolbox": wind.LargePondToolbox, "smith-1980": wind.Smith1980,
		"garratt": wind.Garratt1977, "garratt-power": wind.GarrattPower, "wu": wind.Wu1982, "wu-capped": wind.WuCapped,
		"vera": wind.Vera1983, "cem": wind.DragCEM,
	}
	if l, ok := laws[name]; ok {
		return l, nil
	}
	return nil, fmt.Errorf("no drag law %q", name)
}

var windDrag = []ref.Subject{
	withRegimes(drag("LargePond1981", wind.LargePond1981, "line"), above(10)),
	withRegimes(drag("LargePondToolbox", wind.LargePondToolbox, "constant", "line"), above(0.66/0.065)),
	drag("Smith1980", wind.Smith1980, "all"),
	drag("Garratt1977", wind.Garratt1977, "all"),
	drag("GarrattPower", wind.GarrattPower, "all"),
	drag("Wu1982", wind.Wu1982, "all"),
	withRegimes(drag("WuCapped", wind.WuCapped, "line"), above(7.5)),
	drag("Vera1983", wind.Vera1983, "all"),
	drag("DragCEM", wind.DragCEM, "all"),
	{
		Name: "wind.Stress", Func: wind.Stress, Class: ref.Formula,
		Args: []ref.Arg{argU10, ref.Number("air_density", "kg/m3", ref.NonNegative, 1.22),
			ref.Number("height", "m", ref.Positive, 10), ref.Text("law", "large-pond-toolbox"), ref.Number("air", "C", ref.Between(-90, 60), 15)},
		Results: []ref.Result{{Name: "stress", Unit: "Pa", Without: []string{"air"}}},
		Eval: func(in ref.In) (ref.Out, error) {
			var u10 float64
			var law wind.DragLaw
			if in.S("law") == "smith-1988" {
				c := wind.Smith1988(in.F("air"))
				c.Gravity = 9.8
				u10, law = c.ToHeight(in.F("speed"), in.F("height"), 10).U10, c.Drag
			} else {
				l, err := windLaw(in.S("law"))
				if err != nil {
					return nil, err
				}
				u10, law = wind.ToHeight(in.F("speed"), in.F("height"), 10, l).U10, l
			}
			return ref.Out{"stress": wind.Stress(u10, in.F("air_density"), law)}, nil
		},
		NoneFound: map[string]string{"all": "printed stresses found are results of programs; the definition is exact"},
		Tests:     []string{"TestStressIsDensityTimesFrictionSpeedSquared"},
	},
	{
		Name: "wind.FrictionSpeed", Func: wind.FrictionSpeed, Class: ref.Formula,
		Args: []ref.Arg{argU10, ref.Text("law", "cem")}, Results: []ref.Result{{Name: "friction", Unit: "m/s"}},
		Eval: func(in ref.In) (ref.Out, error) {
			l, err := windLaw(in.S("law"))
			if err != nil {
				return nil, err
			}
			return ref.Out{"friction": wind.FrictionSpeed(in.F("speed"), l)}, nil
		},
		NoneFound: map[string]string{"all": "printed friction speeds found are results of programs; the definition is exact"},
		Tests:     []string{"TestStressIsDensityTimesFrictionSpeedSquared"},
	},
}

var profileResults = []ref.Result{{Name: "speed", Unit: "m/s"}, {Name: "u10", Unit: "m/s", Without: []string{"to"}}, {Name: "friction", Unit: "m/s", Without: []string{"to"}}, {Name: "drag", Unit: "1", Without: []string{"to"}}}

func profileOut(p wind.Profile) ref.Out {
	return ref.Out{"speed": p.Speed, "u10": p.U10, "friction": p.Friction, "drag": p.Drag}
}

var charnockArgs = []ref.Arg{
	ref.Number("alpha", "1", ref.Between(0, 1), 0.011), ref.Number("gravity", "m/s2", ref.NonNegative, 9.8),
	ref.Number("karman", "1", ref.Between(0, 1), 0.4), ref.Number("air", "C", ref.Between(-90, 60), 20),
}

// charnock builds the sea of the arguments, with the smooth-flow term of the
// air's temperature.
func charnock(in ref.In) wind.Charnock {
	return wind.Charnock{Alpha: in.F("alpha"), Gravity: in.F("gravity"), Karman: in.F("karman"), Viscosity: wind.AirViscosity(in.F("air"))}
}

const noProfilePrint = "worked profiles found in print use a fixed roughness; the values of the AIR_SEA toolbox are results of a program (peer)"

var windHeight = []ref.Subject{
	{
		Name: "wind.Power", Func: wind.Power, Class: ref.Formula,
		Args:    []ref.Arg{argSpeed, ref.Number("from", "m", ref.Positive, 10), ref.Number("to", "m", ref.Positive, 20), ref.Number("p", "1", ref.Between(-1, 1), 0.11)},
		Results: []ref.Result{{Unit: "m/s"}}, Tests: []string{"TestHeightThereAndBack"},
	},
	{
		Name: "wind.Log", Func: wind.Log, Class: ref.Formula,
		Args:    []ref.Arg{argSpeed, ref.Number("from", "m", ref.Positive, 10), ref.Number("to", "m", ref.Positive, 20), ref.Number("roughness", "m", ref.Positive, 0.0002)},
		Results: []ref.Result{{Unit: "m/s"}}, Tests: []string{"TestHeightThereAndBack"},
	},
	{
		Name: "wind.ToHeight", Func: wind.ToHeight, Class: ref.Formula,
		Args:    []ref.Arg{argSpeed, ref.Number("from", "m", ref.Positive, 5), ref.Number("to", "m", ref.Positive, 10), ref.Text("law", "large-pond")},
		Results: profileResults,
		Eval: func(in ref.In) (ref.Out, error) {
			l, err := windLaw(in.S("law"))
			if err != nil {
				return nil, err
			}
			return profileOut(wind.ToHeight(in.F("speed"), in.F("from"), in.F("to"), l)), nil
		},
		NoneFound: map[string]string{"all": noProfilePrint},
		Tests:     []string{"TestHeightThereAndBack", "TestShiftOfNoHeightChangesNothing"},
	},
	{Name: "wind.Smith1988", Func: wind.Smith1988, Class: ref.Constructor, Tests: []string{"TestHeightThereAndBack"}},
	{
		Name: "wind.AirViscosity", Func: wind.AirViscosity, Class: ref.Formula,
		Args:      []ref.Arg{ref.Number("celsius", "C", ref.Between(-90, 60), 15)},
		Results:   []ref.Result{{Unit: "m2/s"}},
		NoneFound: map[string]string{"all": "the polynomial's values found are results of the AIR_SEA toolbox (peer); its constant term is exact"},
		Tests:     []string{"TestAirViscosityRises"},
	},
	{
		Name: "wind.Charnock.Roughness", Func: wind.Charnock.Roughness, Class: ref.Formula,
		Args:    append(slices.Clone(charnockArgs), ref.Number("friction", "m/s", ref.Positive, 0.33)),
		Results: []ref.Result{{Name: "roughness", Unit: "m"}, {Name: "rough_flow", Unit: "m", Without: []string{"air"}}},
		Eval: func(in ref.In) (ref.Out, error) {
			c := charnock(in)
			rough := c
			rough.Viscosity = 0
			return ref.Out{"roughness": c.Roughness(in.F("friction")), "rough_flow": rough.Roughness(in.F("friction"))}, nil
		},
		Tests: []string{"TestHeightThereAndBack"},
	},
	{
		Name: "wind.Charnock.Friction", Func: wind.Charnock.Friction, Class: ref.Formula,
		Args:    append(slices.Clone(charnockArgs), argSpeed, ref.Number("from", "m", ref.Positive, 10)),
		Results: []ref.Result{{Name: "friction", Unit: "m/s"}},
		Eval: func(in ref.In) (ref.Out, error) {
			return ref.Out{"friction": charnock(in).Friction(in.F("speed"), in.F("from"))}, nil
		},
		NoneFound: map[string]string{"all": noProfilePrint},
		Tests:     []string{"TestHeightThereAndBack", "TestCharnockFrictionSolvesItsProfile"},
	},
	{
		Name: "wind.Charnock.ToHeight", Func: wind.Charnock.ToHeight, Class: ref.Formula,
		Args:    append(slices.Clone(charnockArgs), argSpeed, ref.Number("from", "m", ref.Positive, 10), ref.Number("to", "m", ref.Positive, 8)),
		Results: profileResults,
		Eval: func(in ref.In) (ref.Out, error) {
			return profileOut(charnock(in).ToHeight(in.F("speed"), in.F("from"), in.F("to"))), nil
		},
		NoneFound: map[string]string{"all": noProfilePrint},
		Tests:     []string{"TestHeightThereAndBack"},
	},
	{
		Name: "wind.Charnock.Drag", Func: wind.Charnock.Drag, Class: ref.Formula,
		Args:    append(slices.Clone(charnockArgs), argSpeed),
		Results: []ref.Result{{Name: "drag", Unit: "1"}},
		Eval: func(in ref.In) (ref.Out, error) {
			return ref.Out{"drag": charnock(in).Drag(in.F("speed"))}, nil
		},
		NoneFound: map[string]string{"all": noProfilePrint},
		Tests:     []string{"TestDragLawsAgreeWithinTheScatter", "TestCharnockFrictionSolvesItsProfile"},
	},
}

var argSeconds = ref.Number("seconds", "s", ref.Between(1, 3600), 600)

var windExtremes = []ref.Subject{
	{
		Name: "wind.ExtremeRatio", Func: wind.ExtremeRatio, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("seconds", "s", ref.Between(1, 36000), 600)}, Results: []ref.Result{{Unit: "1"}},
		Regimes: []ref.Regime{
			{Name: "below an hour", In: func(in ref.In) bool { return in.F("seconds") < 3600 }},
			{Name: "an hour", In: func(in ref.In) bool { return in.F("seconds") == 3600 }},
			{Name: "above an hour", In: func(in ref.In) bool { return in.F("seconds") > 3600 }},
		},
		Tests: []string{"TestExtremeRatiosFallWithTime"},
	},
	{
		Name: "wind.ExtremeToExtreme", Func: wind.ExtremeToExtreme, Class: ref.Formula,
		Args:    []ref.Arg{argSpeed, ref.Number("from", "s", ref.Between(1, 36000), 300), ref.Number("to", "s", ref.Between(1, 36000), 3600)},
		Results: []ref.Result{{Unit: "m/s"}}, Tests: []string{"TestExtremeRatiosFallWithTime"},
	},
	{
		Name: "wind.ExtremeRatioDurst", Func: wind.ExtremeRatioDurst, Class: ref.Formula,
		Args: []ref.Arg{argSeconds}, Results: []ref.Result{{Unit: "1"}}, Tests: []string{"TestExtremeRatiosFallWithTime"},
	},
	{
		Name: "wind.ExtremeRatioHurricane", Func: wind.ExtremeRatioHurricane, Class: ref.Formula,
		Args: []ref.Arg{argSeconds}, Results: []ref.Result{{Unit: "1"}, {Name: "over_ten_minutes", Unit: "1"}},
		Eval: func(in ref.In) (ref.Out, error) {
			r := wind.ExtremeRatioHurricane(in.F("seconds"))
			return ref.Out{"": r, "over_ten_minutes": r / wind.ExtremeRatioHurricane(600)}, nil
		},
		Tests: []string{"TestExtremeRatiosFallWithTime"},
	},
	{
		Name: "wind.FastestMileTime", Func: wind.FastestMileTime, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("speed", "m/s", ref.Positive, 34)}, Results: []ref.Result{{Unit: "s"}},
	},
	{
		Name: "wind.GustFactor", Func: wind.GustFactor, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("gust", "m/s", ref.NonNegative, 12), ref.Number("mean", "m/s", ref.Positive, 8)}, Results: []ref.Result{{Unit: "1"}},
		Tests: []string{"TestGustFactor"},
	},
	{
		Name: "wind.ReportableGust", Func: wind.ReportableGust, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("peak", "m/s", ref.Real, 12), ref.Number("lull", "m/s", ref.Real, 5)}, Results: []ref.Result{{Name: "state", Unit: "text"}},
		Eval: func(in ref.In) (ref.Out, error) {
			if wind.ReportableGust(in.F("peak"), in.F("lull")) {
				return ref.Out{"state": "gusty"}, nil
			}
			return ref.Out{"state": "not gusty"}, nil
		},
		// What is not known counts as gusty, and so does an infinite peak; an
		// infinite lull is below nothing.
		Unknown: []string{"gusty", "not gusty"},
		Tests:   []string{"TestReportableGust"},
	},
	{
		Name: "wind.LandToSea", Func: wind.LandToSea, Class: ref.Formula,
		Args: []ref.Arg{argSpeed}, Results: []ref.Result{{Unit: "m/s"}},
		NoneFound: map[string]string{"all": "the abstract prints the equation, and a ratio of 63 % at 5 to 6 m/s that belongs to the full formula; no worked value of the simplified one was found"},
		Tests:     []string{"TestLandToSeaMeetsTheLandWind"},
	},
	{
		Name: "wind.ShipToTenMetres", Func: wind.ShipToTenMetres, Class: ref.Formula,
		Args: []ref.Arg{argSpeed}, Results: []ref.Result{{Unit: "m/s"}},
		NoneFound: map[string]string{"all": "the manual prints the equation; no worked value was found, and the wind-adjustment examples of the same manual go on through steps it does not print"},
		Tests:     []string{"TestShipWindInKnots"},
	},
}

var argFrom = ref.List("from", "deg", ref.Angle, 350, 10, 20)

var windDirection = []ref.Subject{
	{
		Name: "wind.MeanDirection", Func: wind.MeanDirection, Class: ref.Formula,
		Args: []ref.Arg{argFrom}, Results: []ref.Result{{Name: "mean", Unit: "deg"}, {Name: "signed", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			m := wind.MeanDirection(in.L("from"))
			signed := m
			if signed > 180 {
				signed -= 360
			}
			return ref.Out{"mean": m, "signed": signed}, nil
		},
		Tests: []string{"TestDirectionStatisticsTurnWithTheCompass"},
	},
	{
		Name: "wind.ResultantLength", Func: wind.ResultantLength, Class: ref.Formula,
		Args: []ref.Arg{argFrom}, Results: []ref.Result{{Unit: "1"}},
		Eval:  func(in ref.In) (ref.Out, error) { return ref.Out{"": wind.ResultantLength(in.L("from"))}, nil },
		Tests: []string{"TestDirectionStatisticsTurnWithTheCompass"},
	},
	{
		Name: "wind.CircularDeviation", Func: wind.CircularDeviation, Class: ref.Formula,
		Args: []ref.Arg{argFrom}, Results: []ref.Result{{Unit: "deg"}},
		Eval:  func(in ref.In) (ref.Out, error) { return ref.Out{"": wind.CircularDeviation(in.L("from"))}, nil },
		Tests: []string{"TestDirectionStatisticsTurnWithTheCompass", "TestDeviationsMeetForANarrowSpread"},
	},
	{
		Name: "wind.AngularDeviation", Func: wind.AngularDeviation, Class: ref.Formula,
		Args: []ref.Arg{argFrom}, Results: []ref.Result{{Unit: "deg"}},
		Eval:  func(in ref.In) (ref.Out, error) { return ref.Out{"": wind.AngularDeviation(in.L("from"))}, nil },
		Tests: []string{"TestDirectionStatisticsTurnWithTheCompass", "TestDeviationsMeetForANarrowSpread"},
	},
	{
		Name: "wind.Yamartino", Func: wind.Yamartino, Class: ref.Formula,
		Args: []ref.Arg{argFrom}, Results: []ref.Result{{Unit: "deg"}},
		Eval:  func(in ref.In) (ref.Out, error) { return ref.Out{"": wind.Yamartino(in.L("from"))}, nil },
		Tests: []string{"TestDirectionStatisticsTurnWithTheCompass", "TestDeviationsMeetForANarrowSpread"},
	},
	{
		Name: "wind.ScalarDirection", Func: wind.ScalarDirection, Class: ref.Formula,
		Args: []ref.Arg{argFrom}, Results: []ref.Result{{Name: "mean", Unit: "deg"}, {Name: "deviation", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			m, d := wind.ScalarDirection(in.L("from"))
			return ref.Out{"mean": m, "deviation": d}, nil
		},
		NoneFound: map[string]string{"all": "the guidance prints the method and no worked sequence, nor do the data-logger manuals that quote it"},
		Tests:     []string{"TestScalarDirectionFollowsTheWindRound", "TestDirectionStatisticsTurnWithTheCompass"},
	},
	{
		Name: "wind.CombineDeviations", Func: wind.CombineDeviations, Class: ref.Formula,
		Args: []ref.Arg{ref.List("parts", "deg", ref.NonNegative, 8, 10, 12, 9)}, Results: []ref.Result{{Unit: "deg"}},
		Eval:      func(in ref.In) (ref.Out, error) { return ref.Out{"": wind.CombineDeviations(in.L("parts"))}, nil },
		NoneFound: map[string]string{"all": "the guidance prints the root mean square and no worked hour"},
		Tests:     []string{"TestCombineDeviations"},
	},
	{
		Name: "wind.Average", Func: wind.Average, Class: ref.Formula,
		Args: []ref.Arg{ref.List("speed", "m/s", ref.NonNegative, 5, 6, 7), ref.List("from", "deg", ref.Angle, 350, 10, 20)},
		Results: []ref.Result{
			{Name: "speed", Unit: "m/s"}, {Name: "from", Unit: "deg"}, {Name: "vector_speed", Unit: "m/s"},
			{Name: "vector_from", Unit: "deg"}, {Name: "steadiness", Unit: "1"},
		},
		Eval: func(in ref.In) (ref.Out, error) {
			u, d := in.L("speed"), in.L("from")
			if len(u) != len(d) {
				return nil, fmt.Errorf("%d speeds, %d directions", len(u), len(d))
			}
			var ws []wind.Wind
			for i := range u {
				ws = append(ws, wind.Wind{Speed: u[i], Gust: math.NaN(), From: d[i]})
			}
			m := wind.Average(ws)
			v := m.Vector.Wind()
			return ref.Out{"speed": m.Speed, "from": m.From, "vector_speed": v.Speed, "vector_from": v.From, "steadiness": m.Steadiness}, nil
		},
		Tests: []string{"TestAverageOfWinds", "TestVectorMeanIsNeverFasterThanTheScalar"},
	},
	{
		Name: "wind.TurnOf", Func: wind.TurnOf, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("from_a", "deg", ref.Angle, 225), ref.Number("from_b", "deg", ref.Angle, 270)},
		Results: []ref.Result{{Name: "kind", Unit: "text"}, {Name: "degrees", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			t := wind.TurnOf(wind.Wind{Speed: 5, From: in.F("from_a")}, wind.Wind{Speed: 5, From: in.F("from_b")})
			return ref.Out{"kind": t.Kind.String(), "degrees": t.Degrees}, nil
		},
		Unknown: []string{"undefined"},
		Tests:   []string{"TestTurns"},
	},
	{
		Name: "wind.Interpolate", Func: wind.Interpolate, Class: ref.Composed,
		Args: []ref.Arg{
			ref.Number("speed_a", "m/s", ref.NonNegative, 5), ref.Number("from_a", "deg", ref.Angle, 350),
			ref.Number("speed_b", "m/s", ref.NonNegative, 7), ref.Number("from_b", "deg", ref.Angle, 10), ref.Number("fraction", "1", ref.Fraction, 0.3),
		},
		Results: []ref.Result{{Name: "speed", Unit: "m/s"}, {Name: "from", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			w := wind.Interpolate(wind.Wind{Speed: in.F("speed_a"), From: in.F("from_a")}, wind.Wind{Speed: in.F("speed_b"), From: in.F("from_b")}, in.F("fraction"))
			return ref.Out{"speed": w.Speed, "from": w.From}, nil
		},
		Tests: []string{"TestInterpolationKeepsSpeedAndTheShortWay"},
	},
}

// craft returns the velocity of something that moves toward a course.
func craft(in ref.In) wind.Velocity {
	return wind.Wind{Speed: in.F("moving_speed"), From: in.F("moving_toward") + 180}.Velocity()
}

var movingArgs = []ref.Arg{
	ref.Number("speed", "m/s", ref.NonNegative, 8), ref.Number("from", "deg", ref.Angle, 200),
	ref.Number("moving_speed", "m/s", ref.NonNegative, 2), ref.Number("moving_toward", "deg", ref.Angle, 90),
}

var windMotion = []ref.Subject{
	{Name: "wind.New", Func: wind.New, Class: ref.Constructor, Tests: []string{"TestConstructorsRefuse"}},
	{Name: "wind.Gusting", Func: wind.Gusting, Class: ref.Constructor, Tests: []string{"TestConstructorsRefuse"}},
	{Name: "wind.Calm", Func: wind.Calm, Class: ref.Constructor, Tests: []string{"TestConstructorsRefuse"}},
	{Name: "wind.Wind.IsCalm", Func: wind.Wind.IsCalm, Class: ref.Accessor, Tests: []string{"TestConstructorsRefuse"}},
	{Name: "wind.Wind.GustKnown", Func: wind.Wind.GustKnown, Class: ref.Accessor, Tests: []string{"TestGustOfALiteralIsUnknown"}},
	{
		Name: "wind.Wind.Velocity", Func: wind.Wind.Velocity, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("speed", "m/s", ref.NonNegative, 8), ref.Number("from", "deg", ref.Angle, 200)},
		Results: []ref.Result{{Name: "east", Unit: "m/s"}, {Name: "north", Unit: "m/s"}},
		Eval: func(in ref.In) (ref.Out, error) {
			v := wind.Wind{Speed: in.F("speed"), From: in.F("from")}.Velocity()
			return ref.Out{"east": v.East, "north": v.North}, nil
		},
		Tests: []string{"TestCardinalWindsAreExact", "TestWindToVelocityAndBack"},
	},
	{
		Name: "wind.Velocity.Wind", Func: wind.Velocity.Wind, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("east", "m/s", ref.Real, 8), ref.Number("north", "m/s", ref.Real, 3)},
		Results: []ref.Result{{Name: "speed", Unit: "m/s"}, {Name: "from", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			w := wind.Velocity{East: in.F("east"), North: in.F("north")}.Wind()
			return ref.Out{"speed": w.Speed, "from": w.From}, nil
		},
		Tests: []string{"TestCardinalWindsAreExact", "TestWindToVelocityAndBack"},
	},
	{Name: "wind.Velocity.Speed", Func: wind.Velocity.Speed, Class: ref.Accessor, Tests: []string{"TestVelocityArithmetic"}},
	{Name: "wind.Velocity.Add", Func: wind.Velocity.Add, Class: ref.Accessor, Tests: []string{"TestVelocityArithmetic"}},
	{Name: "wind.Velocity.Minus", Func: wind.Velocity.Minus, Class: ref.Accessor, Tests: []string{"TestVelocityArithmetic"}},
	{Name: "wind.Velocity.Times", Func: wind.Velocity.Times, Class: ref.Accessor, Tests: []string{"TestVelocityArithmetic"}},
	{
		Name: "wind.Wind.Relative", Func: wind.Wind.Relative, Class: ref.Formula,
		Args: movingArgs, Results: []ref.Result{{Name: "speed", Unit: "m/s"}, {Name: "from", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			w := wind.Wind{Speed: in.F("speed"), From: in.F("from")}.Relative(craft(in))
			return ref.Out{"speed": w.Speed, "from": w.From}, nil
		},
		Tests: []string{"TestRelativeAndTrueWindUndoEachOther"},
	},
	{
		Name: "wind.TrueWind", Func: wind.TrueWind, Class: ref.Formula,
		Args: movingArgs, Results: []ref.Result{{Name: "speed", Unit: "m/s"}, {Name: "from", Unit: "deg"}},
		Eval: func(in ref.In) (ref.Out, error) {
			w := wind.TrueWind(wind.Wind{Speed: in.F("speed"), From: in.F("from")}, craft(in))
			return ref.Out{"speed": w.Speed, "from": w.From}, nil
		},
		Tests: []string{"TestRelativeAndTrueWindUndoEachOther"},
	},
	{
		Name: "wind.Wind.On", Func: wind.Wind.On, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("speed", "m/s", ref.NonNegative, 8), ref.Number("from", "deg", ref.Angle, 200), ref.Number("course", "deg", ref.Angle, 45)},
		Results: []ref.Result{
			{Name: "tail", Unit: "m/s"}, {Name: "head", Unit: "m/s"}, {Name: "from_right", Unit: "m/s"}, {Name: "from_left", Unit: "m/s"}, {Name: "off_stern", Unit: "deg"},
		},
		Eval: func(in ref.In) (ref.Out, error) {
			c := wind.Wind{Speed: in.F("speed"), From: in.F("from")}.On(in.F("course"))
			return ref.Out{"tail": c.Tail, "head": -c.Tail, "from_right": c.FromRight, "from_left": -c.FromRight, "off_stern": c.OffStern}, nil
		},
		Tests: []string{"TestComponentsAreAProjection"},
	},
	{
		Name: "wind.SurfaceDrift", Func: wind.SurfaceDrift, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("speed", "m/s", ref.Positive, 8), ref.Number("from", "deg", ref.Angle, 200)},
		Results: []ref.Result{{Name: "low", Unit: "1", Without: []string{}}, {Name: "mid", Unit: "1"}, {Name: "high", Unit: "1"}},
		Eval: func(in ref.In) (ref.Out, error) {
			d := wind.SurfaceDrift(wind.Wind{Speed: in.F("speed"), From: in.F("from")})
			u := in.F("speed")
			return ref.Out{"low": d.Low.Speed() / u, "mid": d.Mid.Speed() / u, "high": d.High.Speed() / u}, nil
		},
		Tests: []string{"TestSurfaceDriftRunsDownwind"},
	},
	{Name: "wind.NewExposure", Func: wind.NewExposure, Class: ref.Constructor, Tests: []string{"TestExposure"}},
	{Name: "wind.Exposure.On", Func: wind.Exposure.On, Class: ref.Composed, Tests: []string{"TestExposure"}},
	{Name: "wind.Celsius", Func: wind.Celsius, Class: ref.Constructor, Tests: []string{"TestTemperatures"}},
	{Name: "wind.Temperature.Celsius", Func: wind.Temperature.Celsius, Class: ref.Accessor, Tests: []string{"TestTemperatures"}},
	{Name: "wind.Temperature.Known", Func: wind.Temperature.Known, Class: ref.Accessor, Tests: []string{"TestTemperatures"}},
	{Name: "wind.Temperature.Equal", Func: wind.Temperature.Equal, Class: ref.Accessor, Tests: []string{"TestTemperatures"}},
	{Name: "wind.Sample.AirMinusWater", Func: wind.Sample.AirMinusWater, Class: ref.Accessor, Tests: []string{"TestTemperatures"}},
}

var (
	argLat     = ref.Number("lat", "deg", ref.Latitude, 45)
	argDensity = ref.Number("air_density", "kg/m3", ref.NonNegative, 1.22)
)

var windMaps = []ref.Subject{
	{
		Name: "wind.Coriolis", Func: wind.Coriolis, Class: ref.Formula,
		Args: []ref.Arg{argLat}, Results: []ref.Result{{Unit: "1/s"}}, Tests: []string{"TestCoriolisIsOddInLatitude"},
	},
	{
		Name: "wind.Geostrophic", Func: wind.Geostrophic, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("gradient", "Pa/m", ref.NonNegative, 0.002), argLat, argDensity}, Results: []ref.Result{{Unit: "m/s"}},
		NoneFound: map[string]string{"all": "a lecture prints the spacing of height contours (checked at GeostrophicContours); a marked homework drops a factor of ten and uses a rounded f; nothing printed for isobars, density and latitude together"},
		Tests:     []string{"TestGeostrophicFromIsobarsAndContoursAgree"},
	},
	{
		Name: "wind.GeostrophicContours", Func: wind.GeostrophicContours, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("slope", "1", ref.NonNegative, 1e-4), argLat, ref.Number("gravity", "m/s2", ref.NonNegative, 9.8)}, Results: []ref.Result{{Unit: "m/s"}},
		Tests: []string{"TestGeostrophicFromIsobarsAndContoursAgree"},
	},
	{
		Name: "wind.GeostrophicWind", Func: wind.GeostrophicWind, Class: ref.Formula,
		Args:    []ref.Arg{ref.Number("eastward", "Pa/m", ref.Real, 0.002), ref.Number("northward", "Pa/m", ref.Real, -0.001), argLat, argDensity},
		Results: []ref.Result{{Name: "east", Unit: "m/s", Without: []string{"eastward"}}, {Name: "north", Unit: "m/s", Without: []string{"northward"}}},
		Eval: func(in ref.In) (ref.Out, error) {
			v := wind.GeostrophicWind(in.F("eastward"), in.F("northward"), in.F("lat"), in.F("air_density"))
			return ref.Out{"east": v.East, "north": v.North}, nil
		},
		NoneFound: map[string]string{"all": "as for Geostrophic"},
		Tests:     []string{"TestGeostrophicFromIsobarsAndContoursAgree"},
	},
	{
		Name: "wind.GradientWind", Func: wind.GradientWind, Class: ref.Formula,
		Args: []ref.Arg{ref.Number("geostrophic", "m/s", ref.NonNegative, 15), ref.Number("radius", "m", ref.Any, 500e3), argLat}, Results: []ref.Result{{Unit: "m/s"}},
		Regimes: []ref.Regime{
			{Name: "straight", In: func(in ref.In) bool { return math.IsInf(in.F("radius"), 0) }},
			{Name: "low", In: func(in ref.In) bool { return in.F("radius") > 0 && !math.IsInf(in.F("radius"), 0) }},
			{Name: "high", In: func(in ref.In) bool { return in.F("radius") < 0 && !math.IsInf(in.F("radius"), 0) }},
		},
		NoneFound: map[string]string{
			"low":  "textbooks and calculators reachable print the equation and no worked radius",
			"high": "as for the low; the limit of a high, twice the geostrophic speed at 4 Vg = f R, is exact",
		},
		Tests: []string{"TestGradientWindBalancesTheForces"},
	},
}

func composed(name string, f any, tests ...string) ref.Subject {
	return ref.Subject{Name: "wind." + name, Func: f, Class: ref.Composed, Tests: tests}
}

func accessor(name string, f any, tests ...string) ref.Subject {
	return ref.Subject{Name: "wind." + name, Func: f, Class: ref.Accessor, Tests: tests}
}

var windSeries = []ref.Subject{
	{Name: "wind.NewSeries", Func: wind.NewSeries, Class: ref.Constructor, Tests: []string{"TestSeriesSortsValidatesAndKnowsItsGaps"}},
	accessor("Series.Len", wind.Series.Len, "TestSeriesSortsValidatesAndKnowsItsGaps"),
	accessor("Series.Sample", wind.Series.Sample, "TestSeriesSortsValidatesAndKnowsItsGaps"),
	accessor("Series.All", wind.Series.All, "TestSeriesIterates"),
	accessor("Series.Samples", wind.Series.Samples, "TestSeriesRoundTrip"),
	accessor("Series.Gap", wind.Series.Gap, "TestSeriesRoundTrip"),
	accessor("Series.Start", wind.Series.Start, "TestSeriesSortsValidatesAndKnowsItsGaps"),
	accessor("Series.End", wind.Series.End, "TestSeriesSortsValidatesAndKnowsItsGaps"),
	accessor("Series.Gaps", wind.Series.Gaps, "TestSeriesSortsValidatesAndKnowsItsGaps"),
	composed("Series.At", wind.Series.At, "TestSeriesSortsValidatesAndKnowsItsGaps", "TestSeriesAtIsItsInterpolation"),
	composed("Series.Between", wind.Series.Between, "TestSeriesSortsValidatesAndKnowsItsGaps", "TestSeriesAtIsItsInterpolation"),
	composed("Series.Mean", wind.Series.Mean, "TestSeriesMeanByHand", "TestSeriesMeanSplits"),
	composed("Series.Around", wind.Series.Around, "TestAroundByHand", "TestSeriesMeanSplits"),
	composed("Series.SteadyBefore", wind.Series.SteadyBefore, "TestSteadyBeforeByHand", "TestSteadyWindIsSteady"),
	composed("Series.Spells", wind.Series.Spells, "TestSpellsByHand", "TestSpellsAndLullsShareTheRecord"),
	composed("Series.Lulls", wind.Series.Lulls, "TestSpellsByHand", "TestSpellsAndLullsShareTheRecord"),
	composed("Series.Onset", wind.Series.Onset, "TestOnsetByHand", "TestSpellsAndLullsShareTheRecord"),
	composed("Series.Shifts", wind.Series.Shifts, "TestShiftsByHand", "TestShiftsTurnWithTheCompass"),
	composed("Series.Squalls", wind.Series.Squalls, "TestSquallsByHand", "TestShiftsTurnWithTheCompass"),
	accessor("Spell.For", wind.Spell.For, "TestSpellsByHand"),
	{Name: "wind.NewSwell", Func: wind.NewSwell, Class: ref.Constructor, Tests: []string{"TestSwellRefuses"}},
	{Name: "wind.NewSwellSystem", Func: wind.NewSwellSystem, Class: ref.Constructor, Tests: []string{"TestSwellRefuses"}},
	{Name: "wind.NewSwells", Func: wind.NewSwells, Class: ref.Constructor, Tests: []string{"TestSwellRefuses"}},
	accessor("SwellSystem.Samples", wind.SwellSystem.Samples, "TestSwellsRoundTrip"),
	accessor("Swells.Systems", wind.Swells.Systems, "TestSwellsRoundTrip"),
	composed("SwellSystem.At", wind.SwellSystem.At, "TestSwellsThroughTime", "TestSwellInterpolationStaysBetween"),
	composed("Swells.At", wind.Swells.At, "TestSwellsThroughTime", "TestSwellInterpolationStaysBetween"),
}

var windFiles = []ref.Subject{
	{Name: "wind.ReadSeries", Func: wind.ReadSeries, Class: ref.Reader, Tests: []string{"TestSeriesRoundTrip", "TestReadSeries", "TestReadSeriesRefuses", "TestReadersStopAtTheirLimit", "FuzzReadSeries"}},
	{Name: "wind.WriteSeries", Func: wind.WriteSeries, Class: ref.Writer, Tests: []string{"TestSeriesRoundTrip", "FuzzReadSeries"}},
	{Name: "wind.ReadSwells", Func: wind.ReadSwells, Class: ref.Reader, Tests: []string{"TestSwellsRoundTrip", "TestSwellsThroughTime", "TestReadersStopAtTheirLimit", "FuzzReadSwells"}},
	{Name: "wind.WriteSwells", Func: wind.WriteSwells, Class: ref.Writer, Tests: []string{"TestSwellsRoundTrip", "FuzzReadSwells"}},
	{Name: "wind.ReadBuoy", Func: wind.ReadBuoy, Class: ref.Reader, Tests: []string{"TestBuoyRoundTrip", "TestReadBuoyEveryLayout", "TestReadBuoyRefuses", "TestFrozenAnemometerIsFlagged", "TestReadersStopAtTheirLimit", "FuzzReadBuoy"}},
	{Name: "wind.WriteBuoy", Func: wind.WriteBuoy, Class: ref.Writer, Tests: []string{"TestBuoyRoundTrip", "FuzzReadBuoy"}},
	composed("BuoyRecord.Winds", wind.BuoyRecord.Winds, "TestFrozenAnemometerIsFlagged"),
}
