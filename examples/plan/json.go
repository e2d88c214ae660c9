package main

import (
	"encoding/json"
	"io"
	"math"
	"time"

	"followingsea.example/route"
	"followingsea.example/route/passage"
	"followingsea.example/wind"
)

// schema is the number of the form below. It grows when a member changes its
// meaning or goes; new members may come without.
const schema = 1

// optional is a number that may be unknown: NaN and infinities become null.
type optional float64

// MarshalJSON writes the number, or null.
func (x optional) MarshalJSON() ([]byte, error) {
	v := float64(x)
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return []byte("null"), nil
	}
	return json.Marshal(v)
}

// instant is a time that may be unknown: the zero time becomes null.
type instant time.Time

// MarshalJSON writes RFC 3339, or null.
func (t instant) MarshalJSON() ([]byte, error) {
	if time.Time(t).IsZero() {
		return []byte("null"), nil
	}
	return json.Marshal(time.Time(t).Round(time.Second).Format(time.RFC3339))
}

// The plan as JSON: SI units, degrees true, directions named from, set or
// toward; unknown is null.
type (
	jsonPlan struct {
		Schema     int             `json:"schema"`
		Invented   bool            `json:"invented"` // the embedded demonstration
		Zone       string          `json:"zone"`
		Notes      []string        `json:"notes"`
		Run        jsonRun         `json:"run"`
		Forecast   []string        `json:"forecast"`
		Party      *jsonTogether   `json:"party"` // null for one paddler
		Wind       []jsonWind      `json:"wind"`
		Tide       []jsonHeight    `json:"tide"`
		Departures []jsonDeparture `json:"departures"`
		Shown      int             `json:"shown"` // index of the departure that legs and ways out belong to
		Legs       []jsonLeg       `json:"legs"`
		WaysOut    []jsonWaysOut   `json:"ways_out"`
		WhatIf     []jsonWhatIf    `json:"what_if"`
		NoWayOut   []jsonGap       `json:"no_way_out"`
		BoardLost  []jsonParting   `json:"board_lost"`
		Light      jsonLight       `json:"light"`
		Areas      []jsonArea      `json:"areas"`
		Deck       []jsonGate      `json:"deck"`
		Stands     []jsonStand     `json:"smallest_change_that_breaks"`
		Launch     *jsonLaunch     `json:"launch,omitempty"` // only where something was seen
		Ashore     jsonAshore      `json:"ashore"`
		Cautions   []string        `json:"cautions"`
	}
	jsonPoint struct {
		Lat optional `json:"lat"`
		Lon optional `json:"lon"`
	}
	jsonRun struct {
		Name      string        `json:"name"`
		Length    optional      `json:"length_m"`
		BestWind  optional      `json:"best_wind_from_deg"`
		Points    []jsonPoint   `json:"points"`
		Exits     []jsonExit    `json:"exits"`
		LongestAt []optional    `json:"longest_stretch_without_exit_m"` // from, to
		Coast     [][]jsonPoint `json:"coast"`
	}
	jsonExit struct {
		Name  string    `json:"name"`
		Note  string    `json:"note,omitempty"`
		Point jsonPoint `json:"point"`
		Along optional  `json:"along_m"`
		Off   optional  `json:"off_m"`
	}
	jsonWind struct {
		Time  instant  `json:"time"`
		Speed optional `json:"speed_m_s"`
		Gust  optional `json:"gust_m_s"`
		From  optional `json:"from_deg"`
	}
	jsonHeight struct {
		Time   instant  `json:"time"`
		Height optional `json:"height_m"`
		Rate   optional `json:"stream_m_s"`
		Set    optional `json:"stream_set_deg"`
	}
	jsonDeparture struct {
		Depart   instant       `json:"depart"`
		State    string        `json:"state"`
		Arrival  instant       `json:"arrival"`
		Early    instant       `json:"early"`
		Late     instant       `json:"late"`
		Ends     string        `json:"ends,omitempty"`
		EndsAt   optional      `json:"ends_at_m"`
		Rideable optional      `json:"rideable_share"`
		Margin   optional      `json:"margin_steps"`
		Closest  string        `json:"closest,omitempty"`
		Findings []jsonFinding `json:"findings"`
	}
	jsonFinding struct {
		Rule   string   `json:"rule"`
		Unit   string   `json:"unit"`
		State  string   `json:"state"`
		Value  optional `json:"value"`
		Limit  optional `json:"limit"`
		Margin optional `json:"margin"`
		Along  optional `json:"along_m"`
		Time   instant  `json:"time"`
		Why    string   `json:"why,omitempty"`
	}
	jsonSea struct {
		Hs    optional `json:"hs_m"`
		Tp    optional `json:"tp_s"`
		From  optional `json:"from_deg"`
		Limit string   `json:"limit,omitempty"`
		Low   optional `json:"hs_low_m"`  // by the lowest of the growth laws that cannot be told apart
		High  optional `json:"hs_high_m"` // by the highest
	}
	jsonLeg struct {
		Number    int       `json:"number"`
		Enter     instant   `json:"enter"`
		Leave     instant   `json:"leave"`
		Length    optional  `json:"length_m"`
		Course    optional  `json:"course_deg"`
		Made      optional  `json:"over_ground_m_s"`
		Heading   optional  `json:"heading_deg"`
		Magnetic  optional  `json:"heading_magnetic_deg"`
		Wind      jsonWind  `json:"wind"`
		OffStern  optional  `json:"wind_off_stern_deg"`
		Sea       jsonSea   `json:"wind_sea"`
		BumpLen   optional  `json:"bump_length_m"`
		BumpSpeed optional  `json:"bump_speed_m_s"`
		Steepness optional  `json:"steepness"`
		Old       jsonSea   `json:"old_sea"`
		Swell     []jsonSea `json:"swell"`
		Depth     optional  `json:"depth_m"`
		Tide      optional  `json:"tide_m"`
		Rate      optional  `json:"stream_m_s"`
		Set       optional  `json:"stream_set_deg"`
		Speed     optional  `json:"speed_m_s"`
		Slow      optional  `json:"slow_m_s"`
		Fast      optional  `json:"fast_m_s"`
		Flat      optional  `json:"flat_m_s"`
		Longest   optional  `json:"longest_period_held_s"`
		Catches   optional  `json:"catches_per_hour"`
		Riding    optional  `json:"riding_share"`
		Remarks   []string  `json:"remarks"`
	}
	jsonWaysOut struct {
		Along   optional  `json:"along_m"`
		Point   jsonPoint `json:"point"`
		Time    instant   `json:"time"`
		Posture string    `json:"posture"`
		Exits   []jsonOut `json:"exits"`
	}
	jsonOut struct {
		Name    string   `json:"name"`
		State   string   `json:"state"`
		Seconds optional `json:"seconds"`
		Arrival instant  `json:"arrival"`
		Heading optional `json:"heading_deg"`
		Why     []string `json:"why"`
	}
	jsonWhatIf struct {
		Name    string       `json:"name"`
		Along   optional     `json:"along_m"`
		Point   jsonPoint    `json:"point"`
		Time    instant      `json:"time"`
		Posture string       `json:"posture"`
		Open    int          `json:"exits_open"`
		Unknown int          `json:"exits_unknown"`
		Exits   []jsonOut    `json:"exits"`
		Adrift  []jsonAdrift `json:"adrift"`
		Why     string       `json:"why,omitempty"`
	}
	jsonAdrift struct {
		After  optional  `json:"after_s"`
		Mean   jsonPoint `json:"mean"`
		Ninety optional  `json:"ninety_percent_m"`
		Right  jsonPoint `json:"right_of_downwind"`
		Left   jsonPoint `json:"left_of_downwind"`
		Ashore bool      `json:"ashore"`
	}
	jsonGap struct {
		Posture string   `json:"posture"`
		From    optional `json:"from_m"`
		To      optional `json:"to_m"`
		Start   instant  `json:"start"`
		End     instant  `json:"end"`
		Unknown bool     `json:"unknown"`
	}
	jsonParting struct {
		After      optional `json:"after_s"`
		Wind       optional `json:"wind_m_s"`
		Near       optional `json:"near_m"`
		Far        optional `json:"far_m"`
		ByASwimmer string   `json:"by_a_swimmer"` // met: a swimmer gains on the board; broken: none does
	}
	jsonLight struct {
		Dawn instant `json:"civil_dawn"`
		Dusk instant `json:"civil_dusk"`
	}
)

func pointOf(p route.Point) jsonPoint { return jsonPoint{optional(p.Lat), optional(p.Lon)} }

func windOf(t time.Time, w wind.Wind) jsonWind {
	gust := math.NaN()
	if w.GustKnown() {
		gust = w.Gust
	}
	return jsonWind{instant(t), optional(w.Speed), optional(gust), optional(w.From)}
}

func seaOf(s wind.Sea) jsonSea {
	nan := optional(math.NaN())
	return jsonSea{optional(s.Hs), optional(s.Tp), optional(s.From), s.Limit.String(), nan, nan}
}

// writeJSON prints the plan for programs.
func writeJSON(w io.Writer, p *made) error {
	run, err := p.jsonRun()
	if err != nil {
		return err
	}
	dawn, dusk := p.water.Light(p.appraisals[p.best].Depart)
	areas, err := p.jsonAreas()
	if err != nil {
		return err
	}
	out := jsonPlan{Schema: schema, Invented: p.options.data == "", Zone: p.options.zone.String(), Notes: p.in.notes, Run: run,
		Forecast: p.forecast(), Party: p.jsonParty(), Shown: p.best, WaysOut: p.jsonWaysOut(), Light: jsonLight{instant(dawn), instant(dusk)},
		Areas: areas, Deck: p.jsonDeck(), Stands: p.jsonStands(), Launch: p.jsonLaunch(), Ashore: p.jsonAshore(), Cautions: cautions}
	if p.in.hasWind {
		first, last := p.appraisals[0].Depart, p.appraisals[len(p.appraisals)-1].Depart
		for _, s := range around(p.in.wind, first, last).All() {
			out.Wind = append(out.Wind, windOf(s.Time, s.Wind))
		}
	}
	first, last := p.appraisals[0].Depart, p.appraisals[len(p.appraisals)-1].Depart
	for t := first.Add(-3 * time.Hour); !t.After(last.Add(6 * time.Hour)); t = t.Add(15 * time.Minute) {
		h := jsonHeight{instant(t), optional(math.NaN()), optional(math.NaN()), optional(math.NaN())}
		if p.in.day.Tide != nil {
			h.Height = optional(p.in.day.Tide.Height(t))
		}
		if len(p.in.day.Streams) > 0 {
			v := route.Velocity(p.in.day.Streams[0].Stream.Velocity(t))
			h.Rate, h.Set = optional(v.Speed()), optional(v.Toward())
		}
		out.Tide = append(out.Tide, h)
	}
	for _, a := range p.appraisals {
		out.Departures = append(out.Departures, departureOf(a))
	}
	for _, l := range p.legs {
		out.Legs = append(out.Legs, p.legOf(l))
	}
	p.whatIf(&out)
	e := json.NewEncoder(w)
	e.SetIndent("", " ")
	e.SetEscapeHTML(false)
	return e.Encode(out)
}

func (p *made) jsonRun() (jsonRun, error) {
	exits, err := p.exitPlaces()
	if err != nil {
		return jsonRun{}, err
	}
	r := jsonRun{Name: p.in.run.Name, Length: optional(p.path.Length()), BestWind: optional(p.bestWind())}
	for _, q := range p.in.run.Points {
		r.Points = append(r.Points, pointOf(q))
	}
	for _, e := range exits {
		r.Exits = append(r.Exits, jsonExit{e.exit.Name, e.exit.Note, pointOf(e.exit.Point), optional(e.along), optional(e.off)})
	}
	if len(exits) > 0 {
		from, to := longestGap(exits, p.path.Length())
		r.LongestAt = []optional{optional(from), optional(to)}
	}
	lines := p.in.run.Coast.Lines()
	for _, polygon := range p.in.run.Coast.Polygons() {
		lines = append(lines, polygon...)
	}
	for _, l := range lines {
		var line []jsonPoint
		for _, q := range l {
			line = append(line, pointOf(q))
		}
		r.Coast = append(r.Coast, line)
	}
	return r, nil
}

func departureOf(a passage.Appraisal) jsonDeparture {
	d := jsonDeparture{Depart: instant(a.Depart), State: a.State.String(), Arrival: instant(a.Arrival), Early: instant(a.Early), Late: instant(a.Late),
		Ends: a.Ends, EndsAt: optional(a.EndsAt), Rideable: optional(a.Rideable), Margin: optional(a.Margin)}
	if a.Margin == a.Margin {
		d.Closest = a.Closest.String()
	}
	for _, f := range a.Findings {
		d.Findings = append(d.Findings, findingOf(f))
	}
	return d
}

func (p *made) legOf(l passage.Leg) jsonLeg {
	m := l.Middle
	magnetic := math.NaN()
	if v, ok := p.paddler.Variation.East.Get(); ok {
		magnetic = math.Mod(m.Heading-v+360, 360)
	}
	j := jsonLeg{Number: l.Number, Enter: instant(l.Enter), Leave: instant(l.Leave), Length: optional(l.Length), Course: optional(l.Course), Made: optional(l.Made),
		Heading: optional(m.Heading), Magnetic: optional(magnetic), Wind: windOf(m.Time, m.Wind), OffStern: optional(m.OffStern),
		Sea: seaOf(m.Sea), BumpLen: optional(m.Bump.Length), BumpSpeed: optional(m.Bump.PhaseSpeed), Steepness: optional(m.Steepness), Old: seaOf(m.Old),
		Depth: optional(m.Depth), Tide: optional(m.TideHeight), Rate: optional(m.Stream.Speed()), Set: optional(m.Stream.Toward()),
		Speed: optional(m.Speed), Slow: optional(m.Slow), Fast: optional(m.Fast), Flat: optional(m.Ride.FlatSpeed), Longest: optional(m.Ride.LongestPeriod),
		Catches: optional(m.Ride.CatchesPerHour), Riding: optional(m.Ride.RidingShare), Remarks: p.remarks(m)}
	j.Sea.Low, j.Sea.High = optional(m.SeaLow), optional(m.SeaHigh)
	for _, s := range m.Swell {
		j.Swell = append(j.Swell, jsonSea{Hs: optional(s.Hs), Tp: optional(s.Tp), From: optional(s.From), Low: optional(math.NaN()), High: optional(math.NaN())})
	}
	return j
}

func (p *made) jsonWaysOut() []jsonWaysOut {
	var out []jsonWaysOut
	postures := p.water.Postures()
	for _, s := range p.escapes.spots {
		m := s.moment
		for i, outs := range [][]route.Out{s.kneeling, s.prone} {
			out = append(out, jsonWaysOut{optional(m.Along), pointOf(m.At), instant(m.Time), postures[i+1].Name, outsOf(outs)})
		}
	}
	return out
}

func outsOf(outs []route.Out) []jsonOut {
	var list []jsonOut
	for _, o := range outs {
		list = append(list, jsonOut{o.Exit.Name, o.State.String(), optional(o.Seconds), instant(o.Arrival), optional(o.Heading), o.Why})
	}
	return list
}

// whatIf fills in what goes wrong.
func (p *made) whatIf(out *jsonPlan) {
	e := p.escapes
	for _, s := range e.spots {
		for _, c := range s.wrong {
			j := jsonWhatIf{Name: c.Name, Along: optional(c.Along), Point: pointOf(c.At), Time: instant(c.Time), Posture: c.Posture,
				Open: c.Open, Unknown: c.Unknown, Exits: outsOf(c.Ways), Why: c.Why}
			for _, a := range c.Adrift {
				j.Adrift = append(j.Adrift, jsonAdrift{optional(a.After), pointOf(a.Mean), optional(a.Ninety), pointOf(a.Right), pointOf(a.Left), a.Ashore})
			}
			out.WhatIf = append(out.WhatIf, j)
		}
	}
	if len(e.spots) == 0 {
		return
	}
	postures := p.water.Postures()
	for i, gaps := range e.noWayOut {
		for _, g := range gaps {
			out.NoWayOut = append(out.NoWayOut, jsonGap{postures[i+1].Name, optional(g.From), optional(g.To), instant(g.Start), instant(g.End), g.Unknown})
		}
	}
	for _, l := range e.lost {
		out.BoardLost = append(out.BoardLost, jsonParting{optional(l.After), optional(e.wind), optional(l.Near), optional(l.Far), l.ByASwimmer.String()})
	}
}
