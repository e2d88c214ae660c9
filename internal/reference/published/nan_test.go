package published_test

import (
	"math"
	"reflect"
	"strings"
	"testing"
	"time"

	"followingsea.example/internal/reference"
	"followingsea.example/internal/reference/published"
)

// TestNaNByReflection is the sweep of gate 4 without the declarations: it
// calls every exported formula and composed function by reflection, arguments
// filled with plain numbers, and puts a NaN in each float64 in turn, also
// inside structures and slices. A result that depends on an argument (two other
// values of it give two other results) must be NaN, or come with an error, when
// that argument is NaN. Results that are not numbers, and functions that take
// more than plain numbers, are left to the declared sweep.
func TestNaNByReflection(t *testing.T) {
	calls, tried := 0, 0
	for _, s := range published.Subjects() {
		f := reflect.ValueOf(s.Func)
		if f.Kind() != reflect.Func || s.Class != reference.Formula && s.Class != reference.Composed {
			continue
		}
		if !callable(f.Type()) {
			continue
		}
		tried++
		base := filled(f.Type(), -1, 0)
		slots := floats(base)
		for i := range min(slots, 40) {
			// Does the argument matter at all? Two other values tell.
			one, two, nan := call(f, filled(f.Type(), i, 0.37)), call(f, filled(f.Type(), i, 0.91)), call(f, filled(f.Type(), i, math.NaN()))
			calls += 3
			if one == nil || two == nil {
				continue
			}
			if nan == nil {
				t.Errorf("%s panics when number %d of its arguments is NaN", s.Name, i)
				continue
			}
			if nan.failed || len(nan.numbers) != len(one.numbers) || len(two.numbers) != len(one.numbers) {
				continue
			}
			for j := range nan.numbers {
				differs := one.numbers[j] != two.numbers[j] && !math.IsNaN(one.numbers[j]) && !math.IsNaN(two.numbers[j])
				if differs && !math.IsNaN(nan.numbers[j]) {
					t.Errorf("%s: result %d depends on number %d of its arguments and is %v when that is NaN", s.Name, j, i, nan.numbers[j])
				}
			}
		}
	}
	if tried < 100 {
		t.Errorf("only %d functions could be called by reflection", tried)
	}
	t.Logf("%d functions, %d calls", tried, calls)
}

// A called is what one call gave: its float64s, and whether it said so when
// it could not answer.
type called struct {
	numbers []float64
	failed  bool
}

// call calls f; nil for a panic.
func call(f reflect.Value, args []reflect.Value) (c *called) {
	defer func() {
		if recover() != nil {
			c = nil
		}
	}()
	c = &called{}
	for _, v := range f.Call(args) {
		if err, ok := v.Interface().(error); ok && err != nil {
			c.failed = true
		}
		collect(v, &c.numbers, 0)
	}
	return c
}

// collect lists the exported float64s of a value.
func collect(v reflect.Value, out *[]float64, depth int) {
	switch v.Kind() {
	case reflect.Float64:
		*out = append(*out, v.Float())
	case reflect.Struct:
		for i := range v.NumField() {
			if depth < 4 && v.Type().Field(i).IsExported() {
				collect(v.Field(i), out, depth+1)
			}
		}
	}
}

// callable reports whether every argument can be filled with plain numbers.
func callable(t reflect.Type) bool {
	if t.IsVariadic() || t.NumIn() == 0 {
		return false
	}
	for i := range t.NumIn() {
		if !fillable(t.In(i), 0) {
			return false
		}
	}
	return true
}

func fillable(t reflect.Type, depth int) bool {
	switch t.Kind() {
	case reflect.Float64:
		return true
	case reflect.Struct:
		if t == reflect.TypeFor[time.Time]() || depth > 3 {
			return false
		}
		for i := range t.NumField() {
			if !t.Field(i).IsExported() || !fillable(t.Field(i).Type, depth+1) {
				return false
			}
		}
		return t.NumField() > 0
	case reflect.Slice:
		return t.Elem().Kind() == reflect.Float64
	case reflect.Bool:
		return true
	}
	return false
}

// filled makes arguments: number k of the float64s in them is x, the others
// are different plain numbers.
func filled(t reflect.Type, k int, x float64) []reflect.Value {
	n := 0
	var fill func(v reflect.Value)
	fill = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Float64:
			if n == k {
				v.SetFloat(x)
			} else {
				v.SetFloat(0.5 + 0.0625*float64(n%8))
			}
			n++
		case reflect.Struct:
			for i := range v.NumField() {
				fill(v.Field(i))
			}
		case reflect.Slice:
			v.Set(reflect.MakeSlice(v.Type(), 3, 3))
			for i := range v.Len() {
				fill(v.Index(i))
			}
		}
	}
	args := make([]reflect.Value, t.NumIn())
	for i := range args {
		args[i] = reflect.New(t.In(i)).Elem()
		fill(args[i])
	}
	return args
}

// floats counts the float64s in the arguments.
func floats(args []reflect.Value) int {
	n := 0
	var count func(v reflect.Value)
	count = func(v reflect.Value) {
		switch v.Kind() {
		case reflect.Float64:
			n++
		case reflect.Struct:
			for i := range v.NumField() {
				count(v.Field(i))
			}
		case reflect.Slice:
			for i := range v.Len() {
				count(v.Index(i))
			}
		}
	}
	for _, a := range args {
		count(a)
	}
	return n
}

// TestReflectionFindsAClamp: the sweep above does see a clamp that makes a
// number of a NaN, in an argument, in a structure and in a slice.
func TestReflectionFindsAClamp(t *testing.T) {
	type pair struct{ A, B float64 }
	clamp := func(x float64) float64 {
		if x > 0 {
			return x
		}
		return 0
	}
	for name, f := range map[string]any{
		"argument":  func(a, b float64) float64 { return clamp(a) + b },
		"structure": func(p pair) pair { return pair{p.A, clamp(p.B)} },
		"slice":     func(l []float64) float64 { return clamp(l[0]) + clamp(l[1]) + clamp(l[2]) },
	} {
		v := reflect.ValueOf(f)
		found := false
		for i := range floats(filled(v.Type(), -1, 0)) {
			one, two, nan := call(v, filled(v.Type(), i, 0.37)), call(v, filled(v.Type(), i, 0.91)), call(v, filled(v.Type(), i, math.NaN()))
			for j := range nan.numbers {
				found = found || one.numbers[j] != two.numbers[j] && !math.IsNaN(nan.numbers[j])
			}
		}
		if !found {
			t.Errorf("a clamp in %s is not found", strings.ToLower(name))
		}
	}
}
