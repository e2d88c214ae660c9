package route

import "fmt"

// SteepShore is a line of shore that throws waves back: a cliff, a harbour
// wall, a bank of boulders. It is a part of the coast; the [Coast] of a run has
// it too.
type SteepShore struct {
	Kind     string  // what it is, in one of the words of SteepKinds, or of one's own when Reflects is known
	Reflects Value   // part of the height of a wave that is thrown back, 0 to 1; unknown: that of the kind
	Line     []Point // at least two places
}

// SteepKinds returns the words for a steep shore that say without a number
// how much of a wave it throws back.
func SteepKinds() []string { return []string{"cliff", "wall", "boulders"} }

// Check returns an error that wraps [ErrInput] or [ErrPosition] for a shore
// that cannot be: fewer than two places, a part outside 0 to 1, or neither a
// part nor a kind that stands for one.
func (s SteepShore) Check() error {
	if len(s.Line) < 2 {
		return fmt.Errorf("%w: steep shore: %d places, of at least 2", ErrInput, len(s.Line))
	}
	for i, p := range s.Line {
		if err := p.Check(); err != nil {
			return fmt.Errorf("steep shore: place %d: %w", i, err)
		}
	}
	if x, ok := s.Reflects.Get(); ok {
		if !(x >= 0 && x <= 1) {
			return fmt.Errorf("%w: steep shore: reflects %v, outside 0 to 1", ErrInput, x)
		}
		return nil
	}
	for _, k := range SteepKinds() {
		if s.Kind == k {
			return nil
		}
	}
	return fmt.Errorf("%w: steep shore: kind %q, expected one of %q or a known part that is reflected", ErrInput, s.Kind, SteepKinds())
}

// WindFactor is what somebody who knows the water says of the wind on a leg,
// as a factor on the forecast with the band they would bet on: 0.6 in a lee,
// 1.3 off a headland. Its zero value is a leg that nothing was said of, which
// has the wind of the forecast.
type WindFactor struct {
	Low, Mid, High float64
}

// Given reports whether anything was said.
func (f WindFactor) Given() bool { return f != WindFactor{} }

// Check returns an error that wraps [ErrInput] unless nothing was said or
// 0 < Low <= Mid <= High <= 3.
func (f WindFactor) Check() error {
	if !f.Given() || f.Low > 0 && f.Mid >= f.Low && f.High >= f.Mid && f.High <= mostWindFactor {
		return nil
	}
	return fmt.Errorf("%w: exposure: [%v, %v, %v], expected 0 < low <= mid <= high <= %v", ErrInput, f.Low, f.Mid, f.High, mostWindFactor)
}

const mostWindFactor = 3.0

// Factor returns the wind factor of a leg, the zero value where none was
// given.
func (r Run) Factor(leg int) WindFactor {
	if leg < 0 || leg >= len(r.Exposure) {
		return WindFactor{}
	}
	return r.Exposure[leg]
}

// steep adds the lines of a coast feature to the steep shores, if it says that
// it is one: reflects is a number or a kind, and steep: true is a cliff.
func (f *feature) steep(all []SteepShore, must bool) ([]SteepShore, error) {
	var s SteepShore
	switch v := f.props["reflects"].(type) {
	case nil:
		switch v := f.props["steep"].(type) {
		case nil, bool:
			if v == true {
				s.Kind = "cliff"
			}
		default:
			return all, fmt.Errorf("steep: found %s, expected true or false", show(v))
		}
	case float64:
		s.Reflects = Known(v)
	case string:
		s.Kind = v
	default:
		return all, fmt.Errorf("reflects: found %s, expected a number from 0 to 1 or one of %q", show(v), SteepKinds())
	}
	if kind, err := f.text("kind"); err != nil {
		return all, err
	} else if _, known := s.Reflects.Get(); known {
		s.Kind = kind
	}
	if _, known := s.Reflects.Get(); !known && s.Kind == "" && !must {
		return all, nil
	}
	lines, err := f.lines()
	if err != nil {
		polygons, err := f.polygons()
		if err != nil {
			return all, fmt.Errorf("geometry %q; expected LineString or Polygon", f.kind)
		}
		for _, p := range polygons {
			lines = append(lines, p...)
		}
		for i, l := range lines { // a ring ends where it begins
			if !samePlace(l[0], l[len(l)-1]) {
				lines[i] = append(append([]Point(nil), l...), l[0])
			}
		}
	}
	for _, l := range lines {
		s.Line = l
		if err := s.Check(); err != nil {
			return all, err
		}
		all = append(all, s)
	}
	return all, nil
}

// exposure reads the wind factors of the legs: a list of [low, mid, high] or
// null.
func (f *feature) exposure(legs int) ([]WindFactor, error) {
	v := f.props["exposure"]
	if v == nil {
		return nil, nil
	}
	list, ok := v.([]any)
	if !ok || len(list) != legs {
		return nil, fmt.Errorf("exposure: found %s, expected a list of [low, mid, high] or null for each of %d legs", show(v), legs)
	}
	out := make([]WindFactor, legs)
	for i, v := range list {
		if v == nil {
			continue
		}
		band, ok := v.([]any)
		if !ok || len(band) != 3 {
			return nil, fmt.Errorf("exposure[%d]: found %s, expected [low, mid, high] or null", i, show(v))
		}
		var x [3]float64
		for k, b := range band {
			if x[k], ok = b.(float64); !ok {
				return nil, fmt.Errorf("exposure[%d]: found %s, expected a number", i, show(b))
			}
		}
		out[i] = WindFactor{x[0], x[1], x[2]}
		if err := out[i].Check(); err != nil || !out[i].Given() {
			return nil, fmt.Errorf("exposure[%d]: %v, expected 0 < low <= mid <= high <= %v", i, x, mostWindFactor)
		}
	}
	return out, nil
}

// checkWaters checks the steep shores and the wind factors of a run.
func (r Run) checkWaters() error {
	for i, s := range r.Steep {
		if err := s.Check(); err != nil {
			return fmt.Errorf("run: steep shore %d: %w", i, err)
		}
	}
	if len(r.Exposure) != 0 && len(r.Exposure) != len(r.Points)-1 {
		return fmt.Errorf("%w: run: %d wind factors for %d legs", ErrInput, len(r.Exposure), len(r.Points)-1)
	}
	for i, f := range r.Exposure {
		if err := f.Check(); err != nil {
			return fmt.Errorf("run: leg %d: %w", i, err)
		}
	}
	return nil
}
