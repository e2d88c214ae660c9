package route_test

import (
	"bufio"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"followingsea.example/route"
)

// tester is what *testing.T and *rapid.T share.
type tester interface {
	Helper()
	Errorf(format string, args ...any)
}

// near is the one comparison of the tests, written so that NaN never passes.
func near(t tester, what string, got, want, tol float64) {
	t.Helper()
	if math.Abs(got-want) <= tol {
		return
	}
	t.Errorf("%s = %.12g, want %.12g within %.3g (off by %.3g)", what, got, want, tol, got-want)
}

// nearDeg compares directions.
func nearDeg(t tester, what string, got, want, tol float64) {
	t.Helper()
	near(t, what, math.Remainder(got-want, 360), 0, tol)
}

// TestGeodesicSet reads every line of the geodesic set where the environment
// says the folder, and holds both problems to what they claim.
func TestGeodesicSet(t *testing.T) {
	dir := os.Getenv("FOLLOWINGSEA_REFERENCES")
	if dir == "" {
		t.Skip("FOLLOWINGSEA_REFERENCES names no folder with geodtest-300.dat")
	}
	f, err := os.Open(filepath.Join(dir, "geodtest-300.dat"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var lines, worstInv, worstDir = 0, 0.0, 0.0
	for sc := bufio.NewScanner(f); sc.Scan(); {
		v := numbers(t, sc.Text())
		lines++
		inv, dir := checkGeodesic(t, sc.Text(), v)
		worstInv, worstDir = math.Max(worstInv, inv), math.Max(worstDir, dir)
	}
	t.Logf("%d lines: inverse within %.2g nm, direct within %.2g nm", lines, worstInv*1e9, worstDir*1e9)
	if lines < 300 {
		t.Errorf("%d lines, want at least 300", lines)
	}
}

func numbers(t *testing.T, line string) (v [7]float64) {
	t.Helper()
	fields := strings.Fields(line)
	for i := range v {
		x, err := strconv.ParseFloat(fields[i], 64)
		if err != nil {
			t.Fatal(err)
		}
		v[i] = x
	}
	return v
}

// checkGeodesic holds one line of the set to 15 nm of distance, to 15 nm of
// position at the far end, and to azimuths that carry the same error over the
// reduced length.
func checkGeodesic(t *testing.T, line string, v [7]float64) (inv, dir float64) {
	t.Helper()
	const claim = 15e-9
	lat1, lon1, azi1, lat2, lon2, azi2, s12 := v[0], v[1], v[2], v[3], v[4], v[5], v[6]
	from, to := route.Point{Lat: lat1, Lon: lon1}, route.Point{Lat: lat2, Lon: lon2}
	l := route.Inverse(from, to)
	inv = math.Abs(l.Distance - s12)
	near(t, line+"\n distance", l.Distance, s12, claim)
	// An azimuth is judged by where it leads, in the other direction too.
	there := route.Direct(from, l.Course, l.Distance)
	near(t, line+"\n course leads to", route.Inverse(there.To, to).Distance, 0, 2*claim)

	d := route.Direct(from, azi1, s12)
	dir = route.Inverse(d.To, to).Distance
	near(t, line+"\n direct", dir, 0, claim)
	if math.Abs(lat2) < 89.9 {
		nearDeg(t, line+"\n end course", d.End, azi2, 1e-12+claim/6.4e6/math.Cos(lat2*math.Pi/180)*180/math.Pi)
	}
	return inv, dir
}
