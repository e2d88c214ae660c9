package published

import (
	"math"
	"slices"
	"time"

	"followingsea.example/internal/clock"
	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/stations"
	"followingsea.example/tide"
	"followingsea.example/tide/harmonic"
)

var harmonicChecks = slices.Concat(harmonicNodeChecks, chsChecks, harmonicYearChecks(), harmonicPredictionChecks())

var (
	constituentArg = reference.Text("constituent", "M2")
	elementsArg    = reference.Text("elements", "modern")
	atArg          = reference.Instant("at", "2026-08-15T00:00:00Z")
	nodeArgs       = []reference.Arg{reference.Number("n", "deg", reference.Real, 60), reference.Number("p", "deg", reference.Real, 120)}
	stationArg     = reference.Text("station", "8443970")
	nodesArg       = reference.Text("nodes", "at the instant")
	leaveOutArg    = reference.Text("without", "nothing")
)

func harmonicElements(name string) harmonic.Elements {
	switch name {
	case "modern":
		return harmonic.Modern
	case "1900":
		return harmonic.Schureman1900
	}
	return harmonic.Schureman1900 + 1
}

// harmonicTide makes the predictor of the arguments station, nodes, without.
func harmonicTide(in reference.In) (*harmonic.Tide, error) {
	id := in.S("station")
	if id == "1613077" {
		id = "1612340" // Kamalo is predicted from Honolulu
	}
	s := stations.Station(id)
	if in.S("without") == "M1 and M3" {
		s.Constituents = harmonic.Only(s.Constituents, func(n string) bool { return n != "M1" && n != "M3" })
	}
	return harmonic.New(s, harmonicNodes(in.S("nodes")))
}

func harmonicNodes(name string) harmonic.Nodes {
	for n := harmonic.AtInstant; n <= harmonic.Without; n++ {
		if n.String() == name {
			return n
		}
	}
	return harmonic.Without + 1
}

// secondsOfDay is an instant as seconds of the day of another.
func secondsOfDay(day, at time.Time) float64 {
	y, m, d := day.UTC().Date()
	return clock.Seconds(time.Date(y, m, d, 0, 0, 0, 0, time.UTC), at)
}

var predictionArgs = []reference.Arg{stationArg, nodesArg, leaveOutArg, atArg}

var harmonicSubjects = []reference.Subject{
	{Name: "harmonic.Names", Func: harmonic.Names, Class: reference.Data, Tests: []string{"TestNames"}},
	{Name: "harmonic.Speed", Func: harmonic.Speed, Class: reference.Data, Args: []reference.Arg{constituentArg}, Results: []reference.Result{{Name: "speed", Unit: "deg/h"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": harmonic.Speed(in.S("constituent"))}, nil
		}, Tests: []string{"TestNames"}},
	{Name: "harmonic.LongitudesAt", Func: harmonic.LongitudesAt, Class: reference.Formula, Args: []reference.Arg{atArg, elementsArg},
		Results: []reference.Result{{Name: "s", Unit: "deg"}, {Name: "h", Unit: "deg"}, {Name: "p", Unit: "deg"}, {Name: "n", Unit: "deg"}, {Name: "p1", Unit: "deg"}, {Name: "t", Unit: "deg"}},
		Regimes: []reference.Regime{{Name: "modern", In: func(in reference.In) bool { return in.S("elements") == "modern" }}, {Name: "1900", In: func(in reference.In) bool { return in.S("elements") == "1900" }}},
		Eval: func(in reference.In) (reference.Out, error) {
			l := harmonic.LongitudesAt(in.T("at"), harmonicElements(in.S("elements")))
			return reference.Out{"s": l.S, "h": l.H, "p": l.P, "n": l.N, "p1": l.P1, "t": l.T}, nil
		}, NoneFound: map[string]string{"1900": "longitudes of a date by the elements of 1900 (table 4 of the manual could not be opened): the year tables made with them pay through harmonic.YearArgument"}, Tests: []string{"TestLongitudesMove"}},
	{Name: "harmonic.Longitudes.Orbit", Func: harmonic.Longitudes.Orbit, Class: reference.Formula, Args: nodeArgs,
		Results: []reference.Result{{Name: "i", Unit: "deg"}, {Name: "xi", Unit: "deg"}, {Name: "nu", Unit: "deg"}, {Name: "nu-prime", Unit: "deg"}, {Name: "nu-second", Unit: "deg"}, {Name: "p", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			o := harmonic.Longitudes{N: in.F("n"), P: in.F("p")}.Orbit()
			return reference.Out{"i": o.I, "xi": o.Xi, "nu": o.Nu, "nu-prime": o.NuPrime, "nu-second": o.NuSecond, "p": o.P}, nil
		}, Tests: []string{"TestOrbitMirror"}},
	{Name: "harmonic.Longitudes.Argument", Func: harmonic.Longitudes.Argument, Class: reference.Formula, Args: []reference.Arg{constituentArg, atArg, elementsArg}, Results: []reference.Result{{Name: "v", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"": harmonic.LongitudesAt(in.T("at"), harmonicElements(in.S("elements"))).Argument(in.S("constituent"))}, nil
		}, Tests: []string{"TestNames"}},
	{Name: "harmonic.Longitudes.Node", Func: harmonic.Longitudes.Node, Class: reference.Formula, Args: append(nodeArgs[:2:2], constituentArg), Results: []reference.Result{{Name: "f", Unit: "1"}, {Name: "u", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			f, u := harmonic.Longitudes{N: in.F("n"), P: in.F("p")}.Node(in.S("constituent"))
			return reference.Out{"f": f, "u": u}, nil
		}, NoneFound: map[string]string{"all": "printed f and u for a given N and P: the tables go by year, and pay for harmonic.YearArgument, which is this at mid-year"}, Tests: []string{"TestNodesAreSmooth", "TestYearArgumentIsArgumentAndNode"}},
	{Name: "harmonic.ArgumentAt", Func: harmonic.ArgumentAt, Class: reference.Formula, Args: []reference.Arg{constituentArg, atArg, elementsArg},
		Results: []reference.Result{{Name: "argument", Unit: "deg"}, {Name: "factor", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			v, f := harmonic.ArgumentAt(in.S("constituent"), in.T("at"), harmonicElements(in.S("elements")))
			return reference.Out{"argument": v, "factor": f}, nil
		}, Tests: []string{"TestArgumentAtPredicts"}},
	{Name: "harmonic.YearArgument", Func: harmonic.YearArgument, Class: reference.Formula, Args: []reference.Arg{constituentArg, reference.Number("year", "1", reference.Between(1600, 2500), 2026), elementsArg},
		Results: []reference.Result{{Name: "argument", Unit: "deg"}, {Name: "factor", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			y := in.F("year")
			if math.IsNaN(y) || math.IsInf(y, 0) {
				return reference.Out{"argument": math.NaN(), "factor": math.NaN()}, nil
			}
			v, f := harmonic.YearArgument(in.S("constituent"), int(math.Max(-1e6, math.Min(1e6, y))), harmonicElements(in.S("elements")))
			return reference.Out{"argument": v, "factor": f}, nil
		}, Tests: []string{"TestYearArgumentIsArgumentAndNode"}},
	{Name: "harmonic.ReadStation", Func: harmonic.ReadStation, Class: reference.Reader, Tests: []string{"TestStationRoundTrip", "TestReadStationIsBounded", "FuzzReadStation"}},
	{Name: "harmonic.WriteStation", Func: harmonic.WriteStation, Class: reference.Writer, Tests: []string{"TestStationRoundTrip", "FuzzReadStation"}},
	{Name: "harmonic.New", Func: harmonic.New, Class: reference.Constructor, Tests: []string{"TestUnknownConstituents"}},
	{Name: "harmonic.Only", Func: harmonic.Only, Class: reference.Constructor, Tests: []string{"TestOracle", "TestOnly"}},
	{Name: "harmonic.Tide.Datum", Func: (*harmonic.Tide).Datum, Class: reference.Accessor, Tests: []string{"TestTableSpansTheQuestion"}},
	{Name: "harmonic.Tide.Height", Func: (*harmonic.Tide).Height, Class: reference.Formula, Args: predictionArgs, Results: []reference.Result{{Name: "height", Unit: "m"}},
		Regimes: []reference.Regime{{Name: "by year", In: func(in reference.In) bool { return in.S("nodes") == "by year" }}, {Name: "at the instant", In: func(in reference.In) bool { return in.S("nodes") == "at the instant" }}},
		Eval: func(in reference.In) (reference.Out, error) {
			t, err := harmonicTide(in)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": t.Height(in.T("at"))}, nil
		}, NoneFound: map[string]string{"at the instant": "official heights with the node factors at the instant: services print them by year; an independent program is held to 1 mm instead"},
		Tests: []string{"TestHeightIsThePlainSum", "TestOracle", "TestM2AloneRepeats", "TestLinearInAmplitudes"}},
	{Name: "harmonic.Tide.Rate", Func: (*harmonic.Tide).Rate, Class: reference.Composed, Args: predictionArgs, Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			t, err := harmonicTide(in)
			if err != nil {
				return nil, err
			}
			return reference.Out{"": t.Rate(in.T("at"))}, nil
		}, Tests: []string{"TestRateIsTheDerivative"}},
	{Name: "harmonic.Tide.Heights", Func: (*harmonic.Tide).Heights, Class: reference.Composed, Tests: []string{"TestHeightsAreHeight", "TestOracle"}},
	{Name: "harmonic.Tide.Rates", Func: (*harmonic.Tide).Rates, Class: reference.Composed, Tests: []string{"TestHeightsAreHeight"}},
	{Name: "harmonic.Tide.Turns", Func: (*harmonic.Tide).Turns, Class: reference.Search, Args: append(predictionArgs[:4:4], reference.Text("turn", "high")),
		Results: []reference.Result{{Name: "clock", Unit: "s"}, {Name: "height", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			t, err := harmonicTide(in)
			if err != nil {
				return nil, err
			}
			at := in.T("at")
			turns, err := t.Turns(at.Add(-3*time.Hour), at.Add(3*time.Hour), 0.005)
			if err != nil {
				return nil, err
			}
			if in.S("station") == "1613077" {
				if turns, err = kamalo(turns); err != nil {
					return nil, err
				}
			}
			best, out := math.Inf(1), reference.Out{"clock": math.NaN(), "height": math.NaN()}
			for _, u := range turns {
				if d := math.Abs(clock.Seconds(at, u.Time)); u.High == (in.S("turn") == "high") && d < best {
					best, out = d, reference.Out{"clock": secondsOfDay(at, u.Time), "height": u.Height}
				}
			}
			return out, nil
		}, Tests: []string{"TestTurnsOfAYear", "TestProminence", "TestOracleTurnsAreComplete"}},
	{Name: "harmonic.Tide.Windows", Func: (*harmonic.Tide).Windows, Class: reference.Search, Tests: []string{"TestWindowsOfM2ByHand", "TestWindowsAgreeWithHeights"}},
	{Name: "harmonic.Tide.Below", Func: (*harmonic.Tide).Below, Class: reference.Search, Tests: []string{"TestWindowsOfM2ByHand", "TestWindowsAgreeWithHeights"}},
	{Name: "harmonic.Tide.Table", Func: (*harmonic.Tide).Table, Class: reference.Composed, Tests: []string{"TestTableSpansTheQuestion"}},
	{Name: "harmonic.Tide.Curve", Func: (*harmonic.Tide).Curve, Class: reference.Constructor, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.Curve.Datum", Func: (*harmonic.Curve).Datum, Class: reference.Accessor, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.Curve.Height", Func: (*harmonic.Curve).Height, Class: reference.Composed, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.Curve.Rate", Func: (*harmonic.Curve).Rate, Class: reference.Composed, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.Stream.Curve", Func: (*harmonic.Stream).Curve, Class: reference.Constructor, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.StreamCurve.Rate", Func: (*harmonic.StreamCurve).Rate, Class: reference.Composed, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.StreamCurve.Velocity", Func: (*harmonic.StreamCurve).Velocity, Class: reference.Composed, Tests: []string{"TestCurveIsTheSum"}},
	{Name: "harmonic.NewStream", Func: harmonic.NewStream, Class: reference.Constructor, Tests: []string{"TestStreamsRefuse"}},
	{Name: "harmonic.Stream.Rate", Func: (*harmonic.Stream).Rate, Class: reference.Formula, Args: []reference.Arg{reference.Text("station", "PUG1741"), reference.Text("nodes", "by year"), atArg}, Results: []reference.Result{{Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			s, err := harmonic.NewStream(*stations.Station(in.S("station")).Stream, harmonicNodes(in.S("nodes")))
			if err != nil {
				return nil, err
			}
			return reference.Out{"": s.Rate(in.T("at"))}, nil
		}, Tests: []string{"TestStreamOverATide", "TestEventsOfAStream"}},
	{Name: "harmonic.Stream.Rates", Func: (*harmonic.Stream).Rates, Class: reference.Composed, Tests: []string{"TestStreamOverATide"}},
	{Name: "harmonic.Stream.Velocity", Func: (*harmonic.Stream).Velocity, Class: reference.Composed, Tests: []string{"TestEventsOfAStream"}},
	{Name: "harmonic.Stream.Between", Func: (*harmonic.Stream).Between, Class: reference.Composed, Tests: []string{"TestEventsOfAStream"}},
	{Name: "harmonic.Stream.Events", Func: (*harmonic.Stream).Events, Class: reference.Search, Args: []reference.Arg{reference.Text("station", "PUG1741"), reference.Text("nodes", "by year"), reference.Text("event", "maximum ebb"), reference.Instant("near", "2026-06-01T06:03:00Z")},
		Results: []reference.Result{{Name: "clock", Unit: "s"}, {Name: "rate", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			s, err := harmonic.NewStream(*stations.Station(in.S("station")).Stream, harmonicNodes(in.S("nodes")))
			if err != nil {
				return nil, err
			}
			near := in.T("near")
			events, err := s.Events(near.Add(-2*time.Hour), near.Add(2*time.Hour))
			if err != nil {
				return nil, err
			}
			for _, e := range events {
				if e.Kind.String() == in.S("event") {
					return reference.Out{"clock": secondsOfDay(near, e.Time), "rate": e.Rate}, nil
				}
			}
			return reference.Out{"clock": math.NaN(), "rate": math.NaN()}, nil
		}, Tests: []string{"TestEventsOfAStream", "TestEventsAgainstAScan"}},
	{Name: "harmonic.NewRotary", Func: harmonic.NewRotary, Class: reference.Constructor, Tests: []string{"TestRotary"}},
	{Name: "harmonic.Rotary.Velocity", Func: (*harmonic.Rotary).Velocity, Class: reference.Composed, Tests: []string{"TestRotary"}},
	{Name: "harmonic.Station.FormNumber", Func: harmonic.Station.FormNumber, Class: reference.Composed, Tests: []string{"TestStationNumbers"}},
	{Name: "harmonic.Station.Age", Func: harmonic.Station.Age, Class: reference.Composed, Tests: []string{"TestStationNumbers"}},
}

// kamalo gives the turns of the subordinate station 1613077, Kamalo Harbor,
// from those of Honolulu.
func kamalo(honolulu []tide.Turn) ([]tide.Turn, error) {
	return tide.Offsets{HighTime: -37 * time.Minute, LowTime: -16 * time.Minute, High: tide.ByAddition(0.03)}.Apply(honolulu)
}

var harmonicSources = []reference.Source{
	{Key: "SP98-Supplement", Citation: "National Ocean Service, Supplement to the Manual of Harmonic Analysis and Prediction of Tides: longitudes for 2000, quoted second hand"},
	{Key: "NOAA-PUG1741", Citation: "NOAA Center for Operational Oceanographic Products and Services, current station PUG1741, Bellingham Channel: harmonic constants and predictions of 1 to 3 June 2026"},
	{Key: "PeerProgram", Citation: "An independent open-source program for harmonic tides, run with Schureman's node factors at the prediction time"},
}
