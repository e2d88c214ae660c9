package published

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"followingsea.example/internal/reference"
	"followingsea.example/route"
)

// shoreOf makes the coasts of the checks from a few words:
//
//	none                  open water
//	parallel LAT          a shore along a parallel, 5 W to 5 E
//	meridian LON          a shore along a meridian, 5 S to 5 N
//	over-pole LAT         a shore along a parallel on the far side of the pole
//	wall LAT LON COURSE   400 m of shore through a place, across a course
//	box S W N E           a rectangle of land
func shoreOf(text string) (*route.Coast, error) {
	f := strings.Fields(text)
	if len(f) == 0 {
		return nil, fmt.Errorf("no coast named")
	}
	x := make([]float64, len(f)-1)
	for i, s := range f[1:] {
		v, err := strconv.ParseFloat(s, 64)
		if err != nil {
			return nil, err
		}
		x[i] = v
	}
	switch {
	case f[0] == "none":
		return route.NewCoast(nil, nil)
	case f[0] == "parallel" && len(x) == 1:
		return route.NewCoast([][]route.Point{{{Lat: x[0], Lon: -5}, {Lat: x[0], Lon: 5}}}, nil)
	case f[0] == "over-pole" && len(x) == 1:
		return route.NewCoast([][]route.Point{{{Lat: x[0], Lon: 175}, {Lat: x[0], Lon: -175}}}, nil)
	case f[0] == "meridian" && len(x) == 1:
		return route.NewCoast([][]route.Point{{{Lat: -5, Lon: x[0]}, {Lat: 5, Lon: x[0]}}}, nil)
	case f[0] == "wall" && len(x) == 3:
		p := route.Point{Lat: x[0], Lon: x[1]}
		return route.NewCoast([][]route.Point{{route.Direct(p, x[2]-90, 200).To, p, route.Direct(p, x[2]+90, 200).To}}, nil)
	case f[0] == "box" && len(x) == 4:
		return route.NewCoast(nil, []route.Polygon{{{
			{Lat: x[0], Lon: x[1]}, {Lat: x[0], Lon: x[3]}, {Lat: x[2], Lon: x[3]}, {Lat: x[2], Lon: x[1]},
		}}})
	}
	return nil, fmt.Errorf("coast %q is not known here", text)
}

func eye(in reference.In) route.Point { return route.Point{Lat: in.F("lat"), Lon: in.F("lon")} }

var (
	latArg   = reference.Number("lat", "deg", reference.Latitude, 0)
	lonArg   = reference.Number("lon", "deg", reference.Between(-540, 540), 0)
	shoreArg = reference.Text("coast", "meridian 1")
)

// postureOf returns a posture by name, for a flat-water speed.
func postureOf(name string, speed float64) (route.Posture, error) {
	switch name {
	case "standing":
		return route.Standing(speed), nil
	case "kneeling":
		return route.Kneeling(speed), nil
	case "prone":
		return route.Prone(speed), nil
	case "drifting":
		return route.Drifting(), nil
	}
	return route.Posture{}, fmt.Errorf("posture %q", name)
}

// hullOf is a hull of given drag, for the forces in the water.
func hullOf(in reference.In) route.Posture {
	p := route.Standing(in.F("speed"))
	p.Drag, p.Bend = in.F("drag"), in.F("bend")
	return p
}

var hullArgs = []reference.Arg{
	reference.Number("through", "m/s", reference.Real, 1.5),
	reference.Number("speed", "m/s", reference.Between(0, 10), 1.8),
	reference.Number("drag", "1", reference.Domain{Lo: 0, Hi: 10000, LoOpen: true}, 5.5),
	reference.Number("bend", "m/s", reference.PositiveInf, 5),
}

var coastSubjects = slices.Concat(shoreSubjects, postureSubjects, exitSubjects, fileSubjects)

var shoreSubjects = []reference.Subject{
	{
		Name: "route.NewCoast", Func: route.NewCoast, Class: reference.Constructor,
		Tests: []string{"TestCoastBadInput", "TestCoastRingEitherWay", "TestCoastPoles", "TestCoastMemory"},
	},
	{Name: "route.Coast.Segments", Func: (*route.Coast).Segments, Class: reference.Accessor, Tests: []string{"TestReadCoastShapes"}},
	{Name: "route.Coast.Lines", Func: (*route.Coast).Lines, Class: reference.Accessor, Tests: []string{"TestCoastRoundTrip"}},
	{Name: "route.Coast.Polygons", Func: (*route.Coast).Polygons, Class: reference.Accessor, Tests: []string{"TestCoastRoundTrip"}},
	{
		Name: "route.Coast.Land", Func: (*route.Coast).Land, Class: reference.Composed,
		Args:    []reference.Arg{latArg, lonArg, shoreArg},
		Results: []reference.Result{{Name: "on", Unit: "text"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			on, err := c.Land(eye(in))
			if err != nil {
				return nil, err
			}
			if on {
				return reference.Out{"on": "land"}, nil
			}
			return reference.Out{"on": "water"}, nil
		},
		Tests: []string{"TestCoastIndexIdentical", "TestCoastAntimeridian", "TestCoastPoles", "TestCoastRingEitherWay"},
	},
	{
		Name: "route.Coast.Fetch", Func: (*route.Coast).Fetch, Class: reference.Formula,
		Args: []reference.Arg{latArg, lonArg, reference.Number("bearing", "deg", reference.Angle, 90),
			reference.Number("limit", "m", reference.Domain{Lo: 0, Hi: 5e6, LoOpen: true}, 500000), shoreArg},
		Results: []reference.Result{{Name: "fetch", Unit: "m"}},
		Regimes: []reference.Regime{
			{Name: "to the shore", In: func(in reference.In) bool { return fetchRegime(in) == 1 }},
			{Name: "capped", In: func(in reference.In) bool { return fetchRegime(in) == 2 }},
			{Name: "on land", In: func(in reference.In) bool { return fetchRegime(in) == 0 }},
		},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			return reference.Out{"fetch": c.Fetch(eye(in), in.F("bearing"), in.F("limit"))}, nil
		},
		Tests: []string{"TestCoastIndexIdentical", "TestFetchGrowsWithoutLand", "TestCoastFetchByHand", "TestCoastFetchAtVertices", "TestCoastBadInput"},
	},
	{
		Name: "route.Coast.FetchRose", Func: (*route.Coast).FetchRose, Class: reference.Composed,
		Args:    []reference.Arg{latArg, lonArg, reference.Number("limit", "m", reference.Domain{Lo: 0, Hi: 5e6, LoOpen: true}, 500000), shoreArg},
		Results: []reference.Result{{Name: "north", Unit: "m"}, {Name: "east", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			rose := c.FetchRose(eye(in), 4, in.F("limit"))
			return reference.Out{"north": rose[0], "east": rose[1]}, nil
		},
		Tests: []string{"TestCoastIndexIdentical", "TestFetchGrowsWithoutLand", "TestCoastBadInput"},
	},
	{
		Name: "route.Coast.NearestShore", Func: (*route.Coast).NearestShore, Class: reference.Composed,
		Args:    []reference.Arg{latArg, lonArg, shoreArg},
		Results: []reference.Result{{Name: "distance", Unit: "m"}, {Name: "bearing", Unit: "deg"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			s, err := c.NearestShore(eye(in))
			if err != nil {
				return nil, err
			}
			return reference.Out{"distance": s.Distance, "bearing": s.Bearing}, nil
		},
		Tests: []string{"TestCoastIndexIdentical", "TestCoastNearest", "TestFetchGrowsWithoutLand"},
	},
	{
		Name: "route.Coast.Crosses", Func: (*route.Coast).Crosses, Class: reference.Composed,
		Args: []reference.Arg{latArg, lonArg, reference.Number("to_lat", "deg", reference.Latitude, 0),
			reference.Number("to_lon", "deg", reference.Between(-540, 540), 2), shoreArg},
		Results: []reference.Result{{Name: "distance", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			x, err := c.Crosses(eye(in), route.Point{Lat: in.F("to_lat"), Lon: in.F("to_lon")})
			if err != nil {
				return nil, err
			}
			if !x.Land {
				return reference.Out{"distance": math.Inf(1)}, nil
			}
			return reference.Out{"distance": x.Distance}, nil
		},
		Tests: []string{"TestCoastCrossesAndLandfall", "TestCoastAntimeridian", "TestCoastBadInput"},
	},
	{
		Name: "route.Coast.Landfall", Func: (*route.Coast).Landfall, Class: reference.Composed,
		Args:    []reference.Arg{reference.List("lats", "deg", reference.Latitude, 0, 0, 0), reference.List("lons", "deg", reference.Between(-540, 540), 0, 0.5, 2), shoreArg},
		Results: []reference.Result{{Name: "distance", Unit: "m"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			lats, lons := in.L("lats"), in.L("lons")
			track := make([]route.Point, min(len(lats), len(lons)))
			for i := range track {
				track[i] = route.Point{Lat: lats[i], Lon: lons[i]}
			}
			// A place after the landfall does not matter, so it is not swept.
			l, err := c.Landfall(track)
			if err != nil {
				return nil, err
			}
			if !l.Found {
				return reference.Out{"distance": math.Inf(1)}, nil
			}
			return reference.Out{"distance": l.Distance}, nil
		},
		Tests: []string{"TestCoastCrossesAndLandfall", "TestCoastBadInput"},
	},
	{
		Name: "route.Coast.ShoreWind", Func: (*route.Coast).ShoreWind, Class: reference.Composed,
		Args:    []reference.Arg{latArg, lonArg, reference.Number("wind", "m/s", reference.NonNegative, 10), reference.Number("from", "deg", reference.Angle, 270), shoreArg},
		Results: []reference.Result{{Name: "onshore", Unit: "m/s"}, {Name: "along", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			c, err := shoreOf(in.S("coast"))
			if err != nil {
				return nil, err
			}
			w, err := c.ShoreWind(eye(in), route.From(in.F("wind"), in.F("from")))
			if err != nil {
				return nil, err
			}
			return reference.Out{"onshore": w.Onshore, "along": w.Along}, nil
		},
		Tests: []string{"TestCoastNearest", "TestCoastBadInput"},
	},
	{Name: "route.ShoreWind.Kind", Func: route.ShoreWind.Kind, Class: reference.Accessor, Tests: []string{"TestCoastNearest"}},
}

// fetchRegime tells the branches of a fetch apart without asking it.
func fetchRegime(in reference.In) int {
	c, err := shoreOf(in.S("coast"))
	if err != nil {
		return -1
	}
	on, err := c.Land(eye(in))
	switch {
	case err != nil:
		return -1
	case on:
		return 0
	case c.Fetch(eye(in), in.F("bearing"), in.F("limit")) == in.F("limit"):
		return 2
	}
	return 1
}

var postureSubjects = []reference.Subject{
	{Name: "route.Standing", Func: route.Standing, Class: reference.Constructor, Tests: []string{"TestPostureHeadWind"}},
	{Name: "route.Kneeling", Func: route.Kneeling, Class: reference.Constructor, Tests: []string{"TestPostureHeadWind"}},
	{Name: "route.Prone", Func: route.Prone, Class: reference.Constructor, Tests: []string{"TestPostureHeadWind"}},
	{Name: "route.Drifting", Func: route.Drifting, Class: reference.Constructor, Tests: []string{"TestPostureHeadWind"}},
	{Name: "route.Postures", Func: route.Postures, Class: reference.Constructor, Tests: []string{"TestPostureHeadWind"}},
	{Name: "route.Posture.Spread", Func: route.Posture.Spread, Class: reference.Constructor, Tests: []string{"TestPostureSpread"}},
	{Name: "route.Posture.Check", Func: route.Posture.Check, Class: reference.Accessor, Tests: []string{"TestPostureBadInput"}},
	{
		Name: "route.Posture.Resistance", Func: route.Posture.Resistance, Class: reference.Formula,
		Args: hullArgs, Results: []reference.Result{{Name: "force", Unit: "N", Without: []string{"speed"}}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"force": hullOf(in).Resistance(in.F("through"))}, nil
		},
		NoneFound: map[string]string{"all": "towing data of stand-up boards in newtons, and any published curve that bends from square to linear: none; sculls, kayaks and racing shells have one square coefficient each"},
		Tests:     []string{"TestPostureResistance", "TestPostureForcesBalance"},
	},
	{
		Name: "route.Posture.Thrust", Func: route.Posture.Thrust, Class: reference.Formula,
		Args: hullArgs, Results: []reference.Result{{Name: "force", Unit: "N"}},
		Eval: func(in reference.In) (reference.Out, error) {
			return reference.Out{"force": hullOf(in).Thrust(in.F("through"))}, nil
		},
		NoneFound: map[string]string{"all": "force of a paddle against the speed of the board: none; power tests on ergometers only"},
		Tests:     []string{"TestPostureResistance", "TestPostureForcesBalance"},
	},
	{
		Name: "route.Posture.Push", Func: route.Posture.Push, Class: reference.Formula,
		Args: []reference.Arg{
			reference.Number("density", "kg/m3", reference.Positive, 1.22),
			reference.Number("area", "m2", reference.Positive, 0.6),
			reference.Number("wind", "m/s", reference.NonNegative, 10),
		},
		Results: []reference.Result{{Name: "force", Unit: "N"}},
		// The force goes with density times area; the density of the library
		// is a constant, so another one goes into the area.
		Eval: func(in reference.In) (reference.Out, error) {
			p := route.Standing(1)
			p.Exposure, p.Area = 1, in.F("area")*in.F("density")/route.AirDensity
			f := p.Push(route.Velocity{}, route.From(in.F("wind"), 180))
			return reference.Out{"force": f.North}, nil
		},
		Tests: []string{"TestPostureForcesBalance", "TestPostureBadInput"},
	},
	{
		Name: "route.Posture.Way", Func: route.Posture.Way, Class: reference.Composed,
		Args: []reference.Arg{
			reference.Text("posture", "standing"),
			reference.Number("speed", "m/s", reference.Between(0, 10), 1.8),
			reference.Number("heading", "deg", reference.Angle, 0),
			reference.Number("wind", "m/s", reference.Between(0, 100), 8),
			reference.Number("from", "deg", reference.Angle, 40),
		},
		Results: []reference.Result{{Name: "ahead", Unit: "m/s"}, {Name: "right", Unit: "m/s"}, {Name: "fraction", Unit: "1"}},
		Eval: func(in reference.In) (reference.Out, error) {
			p, err := postureOf(in.S("posture"), in.F("speed"))
			if err != nil {
				return nil, err
			}
			v := p.Way(in.F("heading"), route.From(in.F("wind"), in.F("from")))
			ahead, right := v.Resolve(in.F("heading"))
			return reference.Out{"ahead": ahead, "right": right, "fraction": v.Speed() / in.F("wind")}, nil
		},
		Tests: []string{"TestPostureWayIsSteady", "TestPostureForcesBalance", "TestPostureTwoSolvers", "TestPostureHeadWind"},
	},
	{
		Name: "route.HoldCourse", Func: route.HoldCourse, Class: reference.Plan,
		Args: []reference.Arg{
			reference.Number("track", "deg", reference.Angle, 75),
			reference.Number("speed", "m/s", reference.Positive, 2),
			reference.Number("set", "deg", reference.Angle, 30),
			reference.Number("drift", "m/s", reference.NonNegative, 0.5),
		},
		Results: []reference.Result{{Name: "heading", Unit: "deg"}, {Name: "made", Unit: "m/s"}},
		Eval: func(in reference.In) (reference.Out, error) {
			speed := in.F("speed")
			way := func(h float64, _ route.Velocity) route.Velocity { return route.Toward(speed, h) }
			c, err := route.HoldCourse(way, in.F("track"), route.Velocity{}, route.Toward(in.F("drift"), in.F("set")))
			if err != nil {
				return nil, err
			}
			return reference.Out{"heading": c.Heading, "made": c.Made}, nil
		},
		Tests: []string{"TestHoldCourse"},
	},
}

var exitSubjects = []reference.Subject{
	{Name: "route.Known", Func: route.Known, Class: reference.Constructor, Tests: []string{"TestValueAndLimit"}},
	{Name: "route.Value.Get", Func: route.Value.Get, Class: reference.Accessor, Tests: []string{"TestValueAndLimit"}},
	{Name: "route.NoLimit", Func: route.NoLimit, Class: reference.Constructor, Tests: []string{"TestValueAndLimit"}},
	{Name: "route.LimitOf", Func: route.LimitOf, Class: reference.Constructor, Tests: []string{"TestValueAndLimit"}},
	{Name: "route.Limit.Given", Func: route.Limit.Given, Class: reference.Accessor, Tests: []string{"TestValueAndLimit"}},
	{Name: "route.Limit.Get", Func: route.Limit.Get, Class: reference.Accessor, Tests: []string{"TestValueAndLimit"}},
	{
		Name: "route.Exit.Landing", Func: route.Exit.Landing, Class: reference.Plan,
		Args: []reference.Arg{
			reference.Number("least_depth", "m", reference.Between(0, 100), 0.5),
			reference.Number("greatest_breaker", "m", reference.Between(0, 30), 0.6),
			reference.Number("greatest_stream", "m/s", reference.Between(0, 20), 1),
			reference.Number("depth", "m", reference.Real, 1),
			reference.Number("breaker", "m", reference.NonNegative, 0.3),
			reference.Number("stream", "m/s", reference.NonNegative, 0.5),
		},
		Results: []reference.Result{{Name: "state", Unit: "text"}},
		Unknown: []string{"unknown"},
		Eval: func(in reference.In) (reference.Out, error) {
			e := route.Exit{Name: "X", LeastDepth: route.LimitOf(in.F("least_depth")), GreatestBreaker: route.LimitOf(in.F("greatest_breaker")),
				GreatestStream: route.LimitOf(in.F("greatest_stream")), Seaward: route.NoLimit(), Hours: route.AnyHour}
			if err := e.Check(); err != nil {
				return nil, err
			}
			s, _ := e.Landing(route.At{Depth: route.Known(in.F("depth")), Breaker: route.Known(in.F("breaker")), Stream: route.Known(in.F("stream"))}, math.NaN())
			return reference.Out{"state": s.String()}, nil
		},
		Tests: []string{"TestExitByHand", "TestExitUnknownNeverOpens"},
	},
	{Name: "route.Exit.Onshore", Func: route.Exit.Onshore, Class: reference.Composed, Tests: []string{"TestValueAndLimit"}},
	{Name: "route.Exit.Check", Func: route.Exit.Check, Class: reference.Accessor, Tests: []string{"TestExitBadInput", "TestReadRunBadInput"}},
	{Name: "route.Steady", Func: route.Steady, Class: reference.Constructor, Tests: []string{"TestExitByHand"}},
	{
		Name: "route.Escape.Reach", Func: route.Escape.Reach, Class: reference.Plan,
		Args: []reference.Arg{
			reference.Number("distance", "m", reference.Real, 3600),
			reference.Number("track", "deg", reference.Angle, 0),
			reference.Number("speed", "m/s", reference.Between(0, 10), 1.8),
			reference.Number("wind", "m/s", reference.Between(0, 60), 5),
			reference.Number("from", "deg", reference.Angle, 0),
			reference.Number("drift", "m/s", reference.Between(0, 10), 0.5),
			reference.Number("set", "deg", reference.Angle, 90),
		},
		Results: []reference.Result{{Name: "seconds", Unit: "s"}, {Name: "heading", Unit: "deg"}, {Name: "state", Unit: "text"}},
		Unknown: []string{"unknown"},
		Eval: func(in reference.In) (reference.Out, error) {
			coast, err := route.NewCoast(nil, nil)
			if err != nil {
				return nil, err
			}
			q := route.Escape{
				From: route.Point{Lat: 50, Lon: 7}, Time: time.Date(2026, 6, 21, 12, 0, 0, 0, time.UTC), Posture: route.Standing(in.F("speed")),
				Wind: route.Steady(route.From(in.F("wind"), in.F("from"))), Stream: route.Steady(route.Toward(in.F("drift"), in.F("set"))), Coast: coast,
			}
			e := route.Exit{Name: "X", Point: route.Direct(q.From, in.F("track"), in.F("distance")).To,
				LeastDepth: route.NoLimit(), GreatestBreaker: route.NoLimit(), GreatestStream: route.NoLimit(), Seaward: route.NoLimit(), Hours: route.AnyHour}
			o, err := q.Reach(e)
			if err != nil {
				return nil, err
			}
			return reference.Out{"seconds": o.Seconds, "heading": o.Heading, "state": o.State.String()}, nil
		},
		Tests: []string{"TestExitByHand", "TestExitStreamAgainst", "TestExitUnknownNeverOpens", "TestExitBadInput"},
	},
	{Name: "route.Escape.Exits", Func: route.Escape.Exits, Class: reference.Plan, Tests: []string{"TestExitBadInput", "TestExitByHand", "TestExitUnknownNeverOpens"}},
	{Name: "route.Gaps", Func: route.Gaps, Class: reference.Search, Tests: []string{"TestGaps", "TestExitUnknownNeverOpens"}},
}

var fileSubjects = []reference.Subject{
	{Name: "route.Area.Outline", Func: route.Area.Outline, Class: reference.Accessor, Tests: []string{"TestReadRun"}},
	{Name: "route.Run.Legs", Func: route.Run.Legs, Class: reference.Accessor, Tests: []string{"TestReadRun"}},
	{Name: "route.Run.Length", Func: route.Run.Length, Class: reference.Accessor, Tests: []string{"TestReadRun"}},
	{Name: "route.Run.Depth", Func: route.Run.Depth, Class: reference.Accessor, Tests: []string{"TestReadRun"}},
	{Name: "route.Run.Check", Func: route.Run.Check, Class: reference.Accessor, Tests: []string{"TestWritersRefuse", "TestReadRunBadInput"}},
	{Name: "route.Track.Check", Func: route.Track.Check, Class: reference.Accessor, Tests: []string{"TestWritersRefuse"}},
	{Name: "route.ReadRun", Func: route.ReadRun, Class: reference.Reader,
		Tests: []string{"TestReadRun", "TestReadRunBadInput", "TestRunRoundTrip", "TestReadersRefuseOver32MB", "FuzzReadRun"}},
	{Name: "route.ReadCoast", Func: route.ReadCoast, Class: reference.Reader,
		Tests: []string{"TestReadCoastShapes", "TestReadCoastMemory", "TestReadersRefuseOver32MB", "FuzzReadCoast"}},
	{Name: "route.ReadTracks", Func: route.ReadTracks, Class: reference.Reader, Tests: []string{"TestTracksRoundTrip", "TestReadGPXBadInput", "FuzzReadTracks"}},
	{Name: "route.WriteRun", Func: route.WriteRun, Class: reference.Writer, Tests: []string{"TestRunRoundTrip", "TestCoastRoundTrip", "TestAntimeridianCutOfTheStandard", "TestWritersRefuse", "FuzzReadRun"}},
	{Name: "route.WriteTracks", Func: route.WriteTracks, Class: reference.Writer, Tests: []string{"TestTracksRoundTrip", "TestWritersRefuse", "FuzzReadTracks"}},
	{Name: "route.ReadRunGPX", Func: route.ReadRunGPX, Class: reference.Reader, Tests: []string{"TestRunRoundTrip", "TestReadGPXBadInput", "TestReadersRefuseOver32MB", "FuzzReadRunGPX"}},
	{Name: "route.ReadTracksGPX", Func: route.ReadTracksGPX, Class: reference.Reader, Tests: []string{"TestTracksRoundTrip", "TestReadGPXBadInput", "FuzzReadTracks"}},
	{Name: "route.WriteRunGPX", Func: route.WriteRunGPX, Class: reference.Writer, Tests: []string{"TestRunRoundTrip", "TestWritersRefuse", "FuzzReadRunGPX"}},
	{Name: "route.WriteTracksGPX", Func: route.WriteTracksGPX, Class: reference.Writer, Tests: []string{"TestTracksRoundTrip", "TestWritersRefuse", "FuzzReadTracks"}},
}

var coastSources = []reference.Source{
	{Key: "RFC7946", Citation: "H. Butler, M. Daly, A. Doyle, S. Gillies, S. Hagen, T. Schaub (2016), The GeoJSON Format, Internet Engineering Task Force", ID: "RFC 7946"},
	{Key: "GPX11", Citation: "TopoGrafix (2004), GPX 1.1 schema documentation", ID: "GPX 1.1"},
	{Key: "DegreeTable", Citation: "Encyclopedia article on longitude, table of the length of a degree on WGS 84, read in a copy", ID: ""},
	{Key: "SurgeModel", Citation: "Own computation for this library (2026): surge equation of a paddled board integrated by Runge-Kutta in another language", ID: ""},
	{Key: "SignWind", Citation: "Engineering design notes, Wind resistance and coefficients of drag, practical example of the wind load on a sign", ID: ""},
}
