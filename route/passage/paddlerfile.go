package passage

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math"
	"sort"
	"strings"
	"time"

	"followingsea.example/internal/table"
)

// A paddler file is a JSON object. Units are part of the names, as in the
// tables: cruise_km_h, mass_kg, greatest_wind_kn. A number that is left out
// is unknown; a limit that is left out is not asked for.
type fileField struct {
	name     string
	quantity table.Quantity
	set      func(*Paddler, float64)
}

var paddlerFields = []fileField{
	{"cruise", table.Speed, func(p *Paddler, x float64) { p.Cruise = Known(x) }},
	{"sprint", table.Speed, func(p *Paddler, x float64) { p.Sprint = Known(x) }},
	{"prone", table.Speed, func(p *Paddler, x float64) { p.Prone = Known(x) }},
	{"mass", table.Mass, func(p *Paddler, x float64) { p.Mass = Known(x) }},
	{"board_length", table.Length, func(p *Paddler, x float64) { p.BoardLength = Known(x) }},
	{"drag_n_s2_m2", table.Count, func(p *Paddler, x float64) { p.Drag = Known(x) }},
	{"endurance", table.Span, func(p *Paddler, x float64) { p.Endurance = Known(x) }},
	{"prone_endurance", table.Span, func(p *Paddler, x float64) { p.ProneHours = Known(x) }},
	{"variation_east", table.Angle, func(p *Paddler, x float64) { p.Variation.East = Known(x) }},
}

// quantity is the rule's quantity in files.
func (r Rule) quantity() table.Quantity {
	switch r.Unit() {
	case "m/s":
		return table.Speed
	case "deg":
		return table.Angle
	case "m":
		return table.Length
	case "s":
		return table.Span
	case "C":
		return table.Temperature
	}
	return table.Count
}

// ReadPaddlers reads a paddler file: an object for one person, or an object
// whose member "party" is a list of such objects. At most 32 MB are read.
//
// Errors name the member, its value and what was expected, and wrap ErrInput.
func ReadPaddlers(r io.Reader) ([]Paddler, error) {
	data, err := readLimited(r)
	if err != nil {
		return nil, err
	}
	top, err := decodeObject(data)
	if err != nil {
		return nil, err
	}
	raw, ok := top["party"]
	if !ok {
		p, err := paddlerFrom(top)
		if err != nil {
			return nil, err
		}
		return []Paddler{p}, nil
	}
	for _, k := range keys(top) {
		if k != "party" && !strings.HasPrefix(k, "note") {
			return nil, inputError("member "+k, "beside party", "each paddler's members inside the list")
		}
	}
	var list []json.RawMessage
	if err := json.Unmarshal(raw, &list); err != nil {
		return nil, inputError("party", clip(string(raw)), "a list of objects, one for each paddler")
	}
	if len(list) == 0 {
		return nil, inputError("party", "empty", "at least one paddler")
	}
	var party []Paddler
	for i, item := range list {
		m, err := decodeObject(item)
		if err == nil {
			var p Paddler
			if p, err = paddlerFrom(m); err == nil {
				party = append(party, p)
				continue
			}
		}
		return nil, fmt.Errorf("party, paddler %d: %w", i+1, err)
	}
	return party, nil
}

// fileLimit is the largest file that is read.
const fileLimit = table.Limit

// readLimited reads all of r up to the limit.
func readLimited(r io.Reader) ([]byte, error) {
	data, err := io.ReadAll(io.LimitReader(r, fileLimit+1))
	if err != nil {
		return nil, err
	}
	if len(data) > fileLimit {
		return nil, fmt.Errorf("%w: the file is larger than 32 MB", ErrInput)
	}
	if len(bytes.TrimSpace(data)) == 0 {
		return nil, fmt.Errorf("%w: the file is empty: want a JSON object", ErrInput)
	}
	return data, nil
}

// decodeObject reads one JSON object; a syntax error names its line.
func decodeObject(data []byte) (map[string]json.RawMessage, error) {
	var m map[string]json.RawMessage
	err := json.Unmarshal(data, &m)
	var syntax *json.SyntaxError
	switch {
	case errors.As(err, &syntax):
		line := 1 + bytes.Count(data[:min(int(syntax.Offset), len(data))], []byte("\n"))
		return nil, fmt.Errorf("%w: line %d: %s: want a JSON object", ErrInput, line, syntax.Error())
	case err != nil || m == nil:
		return nil, inputError("the file", clip(string(data)), "a JSON object")
	}
	return m, nil
}

func paddlerFrom(m map[string]json.RawMessage) (Paddler, error) {
	var p Paddler
	for _, k := range keys(m) {
		raw := m[k]
		var err error
		switch k {
		case "name":
			err = unmarshal(k, raw, &p.Name, "a text")
		case "foil":
			err = unmarshal(k, raw, &p.Foil, "true or false")
		case "leader":
			err = unmarshal(k, raw, &p.Leader, "true or false")
		case "variation_date":
			var s string
			if err = unmarshal(k, raw, &s, "a date, 2026-06-21"); err == nil {
				if p.Variation.Date, err = time.Parse(time.DateOnly, s); err != nil {
					err = inputError(k, s, "a date, 2026-06-21")
				}
			}
		case "limits":
			var limits map[string]json.RawMessage
			if err = unmarshal(k, raw, &limits, "an object"); err == nil {
				err = p.limitsFrom(limits)
			}
		default:
			if strings.HasPrefix(k, "note") {
				continue
			}
			err = p.numberFrom(k, raw)
		}
		if err != nil {
			return Paddler{}, err
		}
	}
	if err := p.Validate(); err != nil {
		return Paddler{}, err
	}
	return p, nil
}

func (p *Paddler) numberFrom(k string, raw json.RawMessage) error {
	for _, f := range paddlerFields {
		suffix, ok := suffixOf(k, f.name)
		if !ok {
			continue
		}
		if string(raw) == "null" {
			return nil // unknown, said in so many words
		}
		x, err := numberIn(k, raw, f.quantity, suffix, f.name)
		if err != nil {
			return err
		}
		f.set(p, x)
		return nil
	}
	var names []string
	for _, f := range paddlerFields {
		names = append(names, heading(f.name, f.quantity))
	}
	return fmt.Errorf("%w: member %s is not known: want name, foil, leader, limits, variation_date, %s", ErrInput, k, strings.Join(names, ", "))
}

func (p *Paddler) limitsFrom(m map[string]json.RawMessage) error {
next:
	for _, k := range keys(m) {
		for r := range ruleCount {
			q := r.quantity()
			suffix, ok := suffixOf(k, r.String())
			if !ok {
				continue
			}
			if r.Unit() == "bool" {
				var on bool
				if err := unmarshal(k, m[k], &on, "true or false"); err != nil {
					return err
				}
				if on {
					p.Limits[r] = Ask(0)
				}
				continue next
			}
			x, err := numberIn(k, m[k], q, suffix, r.String())
			if err != nil {
				return err
			}
			if _, asked := p.Limits[r].Get(); asked {
				return inputError("limit "+k, "given twice", "one unit for each limit")
			}
			p.Limits[r] = Ask(x)
			continue next
		}
		if strings.HasPrefix(k, "note") {
			continue
		}
		var names []string
		for r := range ruleCount {
			names = append(names, heading(r.String(), r.quantity()))
		}
		return fmt.Errorf("%w: limit %s is not known: want one of %s", ErrInput, k, strings.Join(names, ", "))
	}
	return nil
}

// suffixOf returns what follows name and an underscore in k.
func suffixOf(k, name string) (suffix string, ok bool) {
	if k == name {
		return "", true
	}
	rest, ok := strings.CutPrefix(k, name+"_")
	if !ok {
		return "", false
	}
	// "greatest_sea" must not swallow "greatest_sea_state_...": a suffix is a unit.
	for _, q := range []table.Quantity{table.Speed, table.Length, table.Angle, table.Span, table.Temperature, table.Mass} {
		for _, s := range table.Suffixes(q) {
			if rest == s {
				return rest, true
			}
		}
	}
	return rest, !strings.Contains(rest, "_")
}

func numberIn(k string, raw json.RawMessage, q table.Quantity, suffix, name string) (float64, error) {
	var x float64
	if err := unmarshal(k, raw, &x, "a number"); err != nil {
		return math.NaN(), err
	}
	si, ok := table.Convert(q, suffix, x)
	if !ok {
		return math.NaN(), inputError("member "+k, "in unit \""+suffix+"\"", heading(name, q))
	}
	return si, nil
}

// heading writes a member's name with the units it may carry.
func heading(name string, q table.Quantity) string {
	us := table.Suffixes(q)
	switch len(us) {
	case 0:
		return name
	case 1:
		return name + "_" + us[0]
	}
	return name + "_{" + strings.Join(us, ",") + "}"
}

func unmarshal(k string, raw json.RawMessage, into any, want string) error {
	if string(raw) == "null" || json.Unmarshal(raw, into) != nil {
		return inputError("member "+k, clip(string(raw)), want)
	}
	return nil
}

func keys[V any](m map[string]V) []string {
	ks := make([]string, 0, len(m))
	for k := range m {
		ks = append(ks, k)
	}
	sort.Strings(ks)
	return ks
}

func clip(s string) string {
	s = strings.Join(strings.Fields(s), " ")
	if len(s) > 60 {
		return s[:57] + "..."
	}
	return s
}
