package reference

import (
	"errors"
	"fmt"
	"math"
)

// Sweep feeds hostile numbers to one numeric argument at a time, the others
// held at their examples, and returns what went wrong.
//
// NaN in any numeric argument must give NaN, an error, or a state that the
// subject names as unknown; never a finite answer. Infinities, zeros of both
// signs, negatives and huge values are tried where they lie outside the
// declared domain, with the same demand; inside the domain they must only not
// panic.
func (s Subject) Sweep() []error {
	var bad []error
	base := s.Samples()
	if out, err := s.Evaluate(base); err != nil {
		bad = append(bad, fmt.Errorf("%s: the examples of its arguments give an error: %w", s.Name, err))
	} else {
		for _, r := range s.Results {
			if v, err := s.pick(out, r.Name); err != nil {
				bad = append(bad, err)
			} else if x, ok := v.(float64); ok && math.IsNaN(x) && s.Class == Formula {
				bad = append(bad, fmt.Errorf("%s: the examples of its arguments give NaN for %q", s.Name, r.Name))
			}
		}
	}
	hostile := []float64{math.NaN(), math.Inf(1), math.Inf(-1), math.Copysign(0, -1), 0, -1, -1e300, 1e300, 5e-324}
	for _, a := range s.Args {
		if a.Kind != KindNumber && a.Kind != KindList {
			continue
		}
		for i := range base[a.Name].Num {
			for _, h := range hostile {
				in := s.Samples()
				in[a.Name].Num[i] = h
				out, err := s.Evaluate(in)
				var p *PanicError
				if errors.As(err, &p) {
					bad = append(bad, fmt.Errorf("%s: panics for %s=%v: %v", s.Name, a.Name, h, p.Value))
					continue
				}
				if err != nil || a.Domain.Contains(h) {
					continue
				}
				if msg := s.finite(out, a.Name); msg != "" {
					bad = append(bad, fmt.Errorf("%s: %s=%v gives %s", s.Name, a.Name, h, msg))
				}
			}
		}
	}
	return bad
}

// finite names a result that depends on arg and is nevertheless a plain
// number or a state other than the named unknowns.
func (s Subject) finite(out Out, arg string) string {
	for _, r := range s.Results {
		if contains(r.Without, arg) {
			continue
		}
		v, err := s.pick(out, r.Name)
		if err != nil {
			continue
		}
		switch x := v.(type) {
		case float64:
			if !math.IsNaN(x) {
				return fmt.Sprintf("%s = %v", r.Name, x)
			}
		case string:
			if !contains(s.Unknown, x) {
				return fmt.Sprintf("%s = %q", r.Name, x)
			}
		}
	}
	return ""
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}
