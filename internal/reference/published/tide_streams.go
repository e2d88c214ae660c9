package published

import (
	"math"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/internal/reference"
	"followingsea.example/tide"
)

var rotaryArgs = []reference.Arg{reference.Number("east", "m/s", reference.Real, 0.8), reference.Number("east-lag", "deg", reference.Real, 30), reference.Number("north", "m/s", reference.Real, 0.5), reference.Number("north-lag", "deg", reference.Real, 120)}

func ellipse(in reference.In) tide.Ellipse {
	return tide.Ellipse{East: in.F("east"), EastLag: in.F("east-lag"), North: in.F("north"), NorthLag: in.F("north-lag")}
}

var (
	springRangeArg = reference.Number("spring-range", "m", reference.Positive, 5)
	neapRangeArg   = reference.Number("neap-range", "m", reference.NonNegative, 2.5)
	springRateArg  = reference.Number("spring-rate", "m/s", reference.NonNegative, 1)
	neapRateArg    = reference.Number("neap-rate", "m/s", reference.NonNegative, 0.5)
	tideRangeArg   = reference.Number("range", "m", reference.NonNegative, 4)
	slackArg       = reference.Number("slack", "s", reference.Real, 0)
	maximumArg     = reference.Number("maximum", "s", reference.Real, 3*3600)
	velocityArgs   = []reference.Arg{reference.Number("east", "m/s", reference.Real, 1), reference.Number("north", "m/s", reference.Real, 1)}
)

var tideStreamSubjects = []reference.Subject{
	{Name: "tide.Setting", Func: tide.Setting, Class: reference.Constructor, Args: []reference.Arg{reference.Number("rate", "m/s", reference.NonNegativeInf, 1), reference.Number("set", "deg", reference.Real, 45)},
		Results: []reference.Result{{Name: "rate", Unit: "m/s", Without: []string{"set"}}, {Name: "set", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			s := tide.Setting(in.F("rate"), in.F("set"))
			return reference.Out{"rate": s.Rate, "set": s.Set}, nil
		}, Tests: []string{"TestStreamVectorRoundTrip"}},
	{Name: "tide.Stream.Velocity", Func: tide.Stream.Velocity, Class: reference.Constructor, Args: []reference.Arg{reference.Number("rate", "m/s", reference.NonNegative, 1), reference.Number("set", "deg", reference.Real, 45)},
		Results: []reference.Result{{Name: "east", Unit: "m/s"}, {Name: "north", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			v := tide.Stream{Rate: in.F("rate"), Set: in.F("set")}.Velocity()
			return reference.Out{"east": v.East, "north": v.North}, nil
		}, Tests: []string{"TestStreamVectorRoundTrip"}},
	{Name: "tide.Velocity.Stream", Func: tide.Velocity.Stream, Class: reference.Constructor, Args: velocityArgs,
		Results: []reference.Result{{Name: "rate", Unit: "m/s"}, {Name: "set", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			s := tide.Velocity{East: in.F("east"), North: in.F("north")}.Stream()
			return reference.Out{"rate": s.Rate, "set": s.Set}, nil
		}, Tests: []string{"TestStreamVectorRoundTrip"}},
	{Name: "tide.Velocity.Along", Func: tide.Velocity.Along, Class: reference.Accessor, Args: append(velocityArgs[:2:2], reference.Number("direction", "deg", reference.Real, 30)),
		Results: []reference.Result{{Name: "along", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.Velocity{East: in.F("east"), North: in.F("north")}.Along(in.F("direction"))}, nil
		}, Tests: []string{"TestStreamVectorRoundTrip"}},
	{Name: "tide.Springness", Func: tide.Springness, Class: reference.Formula, Args: []reference.Arg{tideRangeArg, springRangeArg, neapRangeArg}, Results: []reference.Result{{Name: "springness", Unit: "1"}},
		NoneFound: map[string]string{"all": "worked springness with all three ranges printed: examples read the graph of the atlas; searched interpolation of tidal streams, computation of rates, tidal diamonds"}, Tests: []string{"TestSeasons"}},
	{Name: "tide.RateAtRange", Func: tide.RateAtRange, Class: reference.Formula, Args: []reference.Arg{tideRangeArg, springRangeArg, springRateArg, neapRangeArg, neapRateArg}, Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.RateAtRange(in.F("range"), tide.Mark{At: in.F("spring-range"), Value: in.F("spring-rate")}, tide.Mark{At: in.F("neap-range"), Value: in.F("neap-rate")})}, nil
		},
		NoneFound: map[string]string{"all": "a worked rate with both ranges and both rates printed: as for tide.Springness"}, Tests: []string{"TestSeasons"}},
	{Name: "tide.RateByFactor", Func: tide.RateByFactor, Class: reference.Formula, Args: []reference.Arg{tideRangeArg, springRangeArg, springRateArg}, Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.RateByFactor(in.F("range"), tide.Mark{At: in.F("spring-range"), Value: in.F("spring-rate")})}, nil
		}, Tests: []string{"TestSeasons"}},
	{Name: "tide.Sine", Func: tide.Sine, Class: reference.Formula, Args: []reference.Arg{shareArg}, Results: []reference.Result{{Name: "share", Unit: "1"}}, Tests: []string{"TestThumbRulesMeetTheirErrors"}},
	{Name: "tide.FiftyNinety", Func: tide.FiftyNinety, Class: reference.Formula, Args: []reference.Arg{shareArg, reference.Number("maximum", "m/s", reference.Real, 1)}, Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": finite(tide.FiftyNinety(in.F("x")) * in.F("maximum"))}, nil
		},
		Regimes: []reference.Regime{
			{Name: "first third", In: func(in reference.In) bool { return in.F("x") <= 1.0/3 }},
			{Name: "second third", In: func(in reference.In) bool { return in.F("x") > 1.0/3 && in.F("x") <= 2.0/3 }},
			{Name: "last third", In: func(in reference.In) bool { return in.F("x") > 2.0/3 }}},
		Tests: []string{"TestThumbRulesMeetTheirErrors"}},
	{Name: "tide.Thirds", Func: tide.Thirds, Class: reference.Formula, Args: []reference.Arg{shareArg, reference.Number("maximum", "m/s", reference.Real, 1)}, Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": finite(tide.Thirds(in.F("x")) * in.F("maximum"))}, nil
		}, Tests: []string{"TestThumbRulesMeetTheirErrors"}},
	{Name: "tide.ThirdsDrift", Func: tide.ThirdsDrift, Class: reference.Formula, Args: []reference.Arg{shareArg, reference.Number("maximum", "m/s", reference.Real, 1), reference.Number("duration", "s", reference.Real, 6*3600)}, Results: []reference.Result{{Name: "drift", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": finite(tide.ThirdsDrift(in.F("x")) * in.F("maximum") * in.F("duration"))}, nil
		}, Tests: []string{"TestThumbRulesMeetTheirErrors"}},
	{Name: "tide.SineDrift", Func: tide.SineDrift, Class: reference.Formula, Args: []reference.Arg{shareArg}, Results: []reference.Result{{Name: "drift", Unit: "1"}},
		NoneFound: map[string]string{"all": "a printed drift by the sine: tables print rates only"}, Tests: []string{"TestThumbRulesMeetTheirErrors"}},
	{Name: "tide.WeakStream", Func: tide.WeakStream, Class: reference.Formula, Args: []reference.Arg{reference.Number("limit", "m/s", reference.NonNegative, 0.2), reference.Number("maximum", "m/s", reference.Positive, 1), reference.Number("slack-to-slack", "s", reference.Positive, 6*3600)}, Results: []reference.Result{{Name: "duration", Unit: "s"}},
		Regimes: []reference.Regime{
			{Name: "below the maximum", In: func(in reference.In) bool { return in.F("limit") < in.F("maximum") }},
			{Name: "above it", In: func(in reference.In) bool { return in.F("limit") >= in.F("maximum") }}},
		NoneFound: map[string]string{"below the maximum": "NOAA's table 4 could not be opened; its values stand here from memory"}, Tests: []string{"TestThumbRulesMeetTheirErrors"}},
	{Name: "tide.Ellipse.Velocity", Func: tide.Ellipse.Velocity, Class: reference.Formula, Args: append(rotaryArgs[:4:4], reference.Number("phase", "deg", reference.Real, 10)), Results: []reference.Result{{Name: "east", Unit: "m/s", Without: []string{"north", "north-lag"}}, {Name: "north", Unit: "m/s", Without: []string{"east", "east-lag"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			v := ellipse(in).Velocity(in.F("phase"))
			return reference.Out{"east": v.East, "north": v.North}, nil
		},
		NoneFound: map[string]string{"all": "a printed velocity of one ellipse at a phase"}, Tests: []string{"TestEllipse"}},
	{Name: "tide.Ellipse.Axes", Func: tide.Ellipse.Axes, Class: reference.Formula, Args: rotaryArgs, Results: []reference.Result{{Name: "major", Unit: "m/s"}, {Name: "minor", Unit: "m/s"}, {Name: "direction", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			a, b, d, _ := ellipse(in).Axes()
			return reference.Out{"major": a, "minor": b, "direction": d}, nil
		},
		NoneFound: map[string]string{"all": "printed axes with the amplitudes and lags of both parts: the manuals' examples print one or the other"}, Tests: []string{"TestEllipse"}},
	{Name: "tide.NewClockStreams", Func: tide.NewClockStreams, Class: reference.Constructor, Tests: []string{"TestStreamsMixAsVectors", "TestStreamTablesRefuse"}},
	{Name: "tide.ClockStreams.Samples", Func: (*tide.ClockStreams).Samples, Class: reference.Accessor, Tests: []string{"TestClockStreamsRoundTrip"}},
	{Name: "tide.ClockStreams.Span", Func: (*tide.ClockStreams).Span, Class: reference.Accessor, Tests: []string{"TestHourTableOnTides"}},
	{Name: "tide.ClockStreams.Velocity", Func: (*tide.ClockStreams).Velocity, Class: reference.Composed, Tests: []string{"TestStreamsMixAsVectors"}},
	{Name: "tide.NewHourTable", Func: tide.NewHourTable, Class: reference.Constructor, Tests: []string{"TestStreamTablesRefuse"}},
	{Name: "tide.HourTable.Rows", Func: (*tide.HourTable).Rows, Class: reference.Accessor, Tests: []string{"TestHourTableRoundTrip"}},
	{Name: "tide.HourTable.Ranges", Func: (*tide.HourTable).Ranges, Class: reference.Accessor, Tests: []string{"TestHourTableRoundTrip"}},
	{Name: "tide.HourTable.At", Func: (*tide.HourTable).At, Class: reference.Composed, Tests: []string{"TestHourTableOnTides"}},
	{Name: "tide.HourTable.On", Func: (*tide.HourTable).On, Class: reference.Composed, Tests: []string{"TestHourTableOnTides"}},
	{Name: "tide.Event.Slack", Func: tide.Event.Slack, Class: reference.Accessor, Tests: []string{"TestEventStreams"}},
	{Name: "tide.Extreme", Func: tide.Extreme, Class: reference.Constructor, Tests: []string{"TestEventStreams"}},
	{Name: "tide.NewEventStreams", Func: tide.NewEventStreams, Class: reference.Constructor, Tests: []string{"TestEventStreams", "TestStreamTablesRefuse"}},
	{Name: "tide.EventStreams.Events", Func: (*tide.EventStreams).Events, Class: reference.Accessor, Tests: []string{"TestEventsRoundTrip"}},
	{Name: "tide.EventStreams.Velocity", Func: (*tide.EventStreams).Velocity, Class: reference.Composed, Tests: []string{"TestEventStreams"}},
	{Name: "tide.EventStreams.Rate", Func: (*tide.EventStreams).Rate, Class: reference.Formula, Args: []reference.Arg{slackArg, maximumArg, reference.Number("rate", "m/s", reference.Between(0, 15), 1), reference.Number("at", "s", reference.Real, 3600)},
		Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			var t [3]time.Time
			for i, n := range [3]string{"slack", "maximum", "at"} {
				at, err := tideClock(in, n)
				if err != nil {
					return nil, err
				}
				t[i] = at
			}
			s, err := tide.NewEventStreams([]tide.StreamEvent{{Time: t[0], Kind: tide.SlackBeforeFlood}, {Time: t[1], Rate: in.F("rate"), Kind: tide.MaxFlood}}, 195, 15)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": s.Rate(t[2])}, nil
		}, Tests: []string{"TestEventStreams"}},
	{Name: "tide.ReadClockStreams", Func: tide.ReadClockStreams, Class: reference.Reader, Tests: []string{"TestClockStreamsRoundTrip", "TestReadersAreBounded", "FuzzReadClockStreams"}},
	{Name: "tide.WriteClockStreams", Func: tide.WriteClockStreams, Class: reference.Writer, Tests: []string{"TestClockStreamsRoundTrip", "FuzzReadClockStreams"}},
	{Name: "tide.ReadHourTable", Func: tide.ReadHourTable, Class: reference.Reader, Tests: []string{"TestHourTableRoundTrip", "TestReadersAreBounded", "FuzzReadHourTable"}},
	{Name: "tide.WriteHourTable", Func: tide.WriteHourTable, Class: reference.Writer, Tests: []string{"TestHourTableRoundTrip", "FuzzReadHourTable"}},
	{Name: "tide.ReadStreams", Func: tide.ReadStreams, Class: reference.Reader, Tests: []string{"TestReadStreams", "TestReadersAreBounded", "FuzzReadStreams"}},
	{Name: "tide.ReadEvents", Func: tide.ReadEvents, Class: reference.Reader, Tests: []string{"TestEventsRoundTrip", "TestReadersAreBounded", "FuzzReadEvents"}},
	{Name: "tide.WriteEvents", Func: tide.WriteEvents, Class: reference.Writer, Tests: []string{"TestEventsRoundTrip", "FuzzReadEvents"}},
}

var clockArgs = []reference.Arg{reference.Number("clock", "s", reference.Between(0, 86400), 3*3600), reference.Number("clock1", "s", reference.Between(0, 86400), 0), reference.Number("difference1", "s", reference.Real, 2100), reference.Number("clock2", "s", reference.Between(0, 86400), 6*3600), reference.Number("difference2", "s", reference.Real, 1380)}

// secondaryTurn is the one turn of the arguments at, height, high.
func secondaryTurn(in reference.In) ([]tide.Turn, error) {
	at, err := tideClock(in, "at")
	if err != nil {
		return nil, err
	}
	return []tide.Turn{{Time: at, Height: in.F("height"), High: in.S("turn") == "high"}}, nil
}

var secondaryArgs = []reference.Arg{reference.Number("at", "s", reference.Real, 3*3600), reference.Number("height", "m", reference.Real, 4), reference.Text("turn", "high")}

// secondaryOut gives the first turn as seconds of its own day and its height.
func secondaryOut(turns []tide.Turn, err error) (reference.Out, error) {
	if err != nil {
		return nil, err
	}
	s := clock.Seconds(tideDay, turns[0].Time)
	return reference.Out{"clock": math.Mod(math.Mod(s, 86400)+86400, 86400), "height": turns[0].Height}, nil
}

var secondaryResults = []reference.Result{{Name: "clock", Unit: "s", Without: []string{"height", "ratio", "plus"}}, {Name: "height", Unit: "m", Without: []string{"at", "shift"}}}

var tideSecondarySubjects = []reference.Subject{
	{Name: "tide.TimeDifference", Func: tide.TimeDifference, Class: reference.Formula, Args: clockArgs, Results: []reference.Result{{Name: "difference", Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.TimeDifference(in.F("clock"), tide.ClockMark{Clock: in.F("clock1"), Difference: in.F("difference1")}, tide.ClockMark{Clock: in.F("clock2"), Difference: in.F("difference2")})}, nil
		}, Tests: []string{"TestTimeDifferenceGoesRound"}},
	{Name: "tide.HeightDifference", Func: tide.HeightDifference, Class: reference.Formula,
		Args:    []reference.Arg{reference.Number("height", "m", reference.Real, 3.8), reference.Number("height1", "m", reference.Real, 4.2), reference.Number("difference1", "m", reference.Real, 1.1), reference.Number("height2", "m", reference.Real, 3.4), reference.Number("difference2", "m", reference.Real, 0.8)},
		Results: []reference.Result{{Name: "difference", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.HeightDifference(in.F("height"), tide.Mark{At: in.F("height1"), Value: in.F("difference1")}, tide.Mark{At: in.F("height2"), Value: in.F("difference2")})}, nil
		},
		Tests: []string{"TestHeightDifference"}},
	{Name: "tide.Differences.Apply", Func: tide.Differences.Apply, Class: reference.Composed, Tests: []string{"TestDifferencesApply"}},
	{Name: "tide.ByRatio", Func: tide.ByRatio, Class: reference.Constructor, Tests: []string{"TestCorrections"}},
	{Name: "tide.ByAddition", Func: tide.ByAddition, Class: reference.Constructor, Tests: []string{"TestCorrections"}},
	{Name: "tide.ByRatioAndConstant", Func: tide.ByRatioAndConstant, Class: reference.Constructor, Tests: []string{"TestCorrections"}},
	{Name: "tide.Correction.Of", Func: tide.Correction.Of, Class: reference.Formula, Args: []reference.Arg{reference.Number("height", "m", reference.Real, 4), reference.Number("ratio", "1", reference.Real, 0.9), reference.Number("plus", "m", reference.Real, 0.1)}, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": tide.ByRatioAndConstant(in.F("ratio"), in.F("plus")).Of(in.F("height"))}, nil
		}, NoneFound: map[string]string{"all": "a worked secondary height by ratio with all figures printed"}, Tests: []string{"TestCorrections"}},
	{Name: "tide.Offsets.Apply", Func: tide.Offsets.Apply, Class: reference.Composed, Args: append(secondaryArgs[:3:3], reference.Number("shift", "s", reference.Real, -900), reference.Number("ratio", "1", reference.Real, 1), reference.Number("plus", "m", reference.Real, 0.1)), Results: secondaryResults,
		Eval: func(in reference.In) (reference.Out, error) {
			turns, err := secondaryTurn(in)
			if err != nil {
				return nil, err
			}
			shift, err := clock.Span(in.F("shift"))
			if err != nil {
				return nil, err
			}
			c := tide.ByRatioAndConstant(in.F("ratio"), in.F("plus"))
			return secondaryOut(tide.Offsets{HighTime: shift, LowTime: shift, High: c, Low: c}.Apply(turns))
		}, Tests: []string{"TestOffsetsApply"}},
	{Name: "tide.StreamOffsets.Apply", Func: tide.StreamOffsets.Apply, Class: reference.Composed, Args: []reference.Arg{reference.Number("at", "s", reference.Real, 3*3600), reference.Number("rate", "m/s", reference.Any, 1), reference.Number("shift", "s", reference.Real, -2460), reference.Number("ratio", "1", reference.NonNegative, 1.1)},
		Results: []reference.Result{{Name: "clock", Unit: "s", Without: []string{"rate", "ratio"}}, {Name: "rate", Unit: "m/s", Without: []string{"at", "shift"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			at, err := tideClock(in, "at")
			if err != nil {
				return nil, err
			}
			shift, err := clock.Span(in.F("shift"))
			if err != nil {
				return nil, err
			}
			e, err := tide.StreamOffsets{Flood: shift, FloodRatio: in.F("ratio"), EbbRatio: 1}.Apply([]tide.StreamEvent{{Time: at, Rate: in.F("rate"), Kind: tide.MaxFlood}})
			if err != nil {
				return nil, err
			}
			return reference.Out{"clock": clock.Seconds(tideDay, e[0].Time), "rate": e[0].Rate}, nil
		}, Tests: []string{"TestStreamOffsetsApply"}},
}

var tideMoonSubjects = []reference.Subject{
	{Name: "tide.MeanPhase", Func: tide.MeanPhase, Class: reference.Formula, Args: []reference.Arg{reference.Number("k", "1", reference.Between(-50000, 50000), 328)}, Results: []reference.Result{{Name: "jde", Unit: "1"}}, Tests: []string{"TestMoon"}},
	{Name: "tide.TruePhase", Func: tide.TruePhase, Class: reference.Formula, Args: []reference.Arg{reference.Number("k", "1", reference.Between(-50000, 50000), 328)}, Results: []reference.Result{{Name: "jde", Unit: "1"}},
		Regimes: []reference.Regime{
			{Name: "new and full", In: func(in reference.In) bool { q := math.Abs(math.Mod(4*in.F("k"), 4)); return q == 0 || q == 2 }},
			{Name: "quarters", In: func(in reference.In) bool { q := math.Abs(math.Mod(4*in.F("k"), 4)); return q == 1 || q == 3 }}},
		Tests: []string{"TestMoon"}},
	{Name: "tide.DeltaT", Func: tide.DeltaT, Class: reference.Data, Args: []reference.Arg{reference.Number("year", "1", reference.Between(1900, 2100), 2026)}, Results: []reference.Result{{Name: "delta-t", Unit: "s"}}, Tests: []string{"TestMoon"}},
	{Name: "tide.MoonPhases", Func: tide.MoonPhases, Class: reference.Composed, Args: []reference.Arg{reference.Text("phase", "new moon"), reference.Instant("near", "2026-06-15T00:00:00Z")}, Results: []reference.Result{{Name: "clock", Unit: "s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			near := in.T("near")
			events, err := tide.MoonPhases(near.Add(-36*time.Hour), near.Add(36*time.Hour))
			if err != nil {
				return nil, err
			}
			for _, e := range events {
				if e.Phase.String() == in.S("phase") {
					day := time.Date(near.Year(), near.Month(), near.Day(), 0, 0, 0, 0, time.UTC)
					return reference.Out{"": clock.Seconds(day, e.Time)}, nil
				}
			}
			return reference.Out{"": math.NaN()}, nil
		}, Tests: []string{"TestMoon"}},
	{Name: "tide.Age", Func: tide.Age, Class: reference.Formula, Args: []reference.Arg{reference.Number("m2-lag", "deg", reference.Real, 100), reference.Number("s2-lag", "deg", reference.Real, 140)}, Results: []reference.Result{{Name: "age", Unit: "s"}}, Tests: []string{"TestMoon"}},
	{Name: "tide.RangeByPhase", Func: tide.RangeByPhase, Class: reference.Formula, Args: []reference.Arg{reference.Number("m2", "m", reference.NonNegative, 1.4), reference.Number("s2", "m", reference.NonNegative, 0.5), reference.Number("since-springs", "s", reference.Real, 86400)}, Results: []reference.Result{{Name: "range", Unit: "m"}},
		NoneFound: map[string]string{"all": "a printed range by the beat of two constituents on a given day"}, Tests: []string{"TestMoon"}},
}
