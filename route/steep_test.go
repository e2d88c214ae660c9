package route

import (
	"strings"
	"testing"
)

// TestSteepRings: the ring of a steep coast is closed where the file leaves it open, and one that ends where it begins is not closed
// twice; a ring of no places is refused and no crash.
func TestSteepRings(t *testing.T) {
	read := func(ring string) (Run, error) {
		return ReadRun(strings.NewReader(coll(goodRun, feat(`"role":"coast","steep":true`, `{"type":"Polygon","coordinates":[`+ring+`]}`))))
	}
	for _, ring := range []string{`[[7,50.2],[7.1,50.2],[7.1,50.3],[7,50.2]]`, `[[7,50.2],[7.1,50.2],[7.1,50.3]]`} {
		run, err := read(ring)
		if err != nil || len(run.Steep) != 1 || len(run.Steep[0].Line) != 4 || run.Steep[0].Line[0] != run.Steep[0].Line[3] {
			t.Errorf("%s: %+v, %v", ring, run.Steep, err)
		}
	}
	if run, err := read(`[]`); err == nil {
		t.Errorf("no places: %+v", run.Steep)
	}
}
