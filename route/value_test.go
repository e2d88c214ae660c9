package route

import (
	"encoding/json"
	"math"
	"testing"
)

// TestValueJSON: a value reads back as it was written, unknown as null, and
// unknown never turns into a number.
func TestValueJSON(t *testing.T) {
	for _, v := range []Value{{}, Known(0), Known(-1.5), Known(math.NaN()), Known(math.Inf(1))} {
		b, err := json.Marshal(v)
		if err != nil {
			t.Fatal(err)
		}
		got := Known(7)
		if err := json.Unmarshal(b, &got); err != nil || got != v {
			t.Errorf("%v written as %s reads back as %v, %v", v, b, got, err)
		}
	}
	var v Value
	if json.Unmarshal([]byte(`"3"`), &v) == nil || v != (Value{}) {
		t.Errorf("a text reads as %v", v)
	}
	if v.Or(3) != 3 || v.Number() == v.Number() || Known(2).Or(3) != 2 || Known(2).Number() != 2 {
		t.Error("Or or Number")
	}
}
