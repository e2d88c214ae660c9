package dispersion

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

// The explicit formulas of the literature, as plain twins of Solve. With y = k0h, each returns kh.
var approximations = []struct {
	name    string
	f       func(y float64) float64
	printed string // the greatest relative error in per cent that is printed for it
	source  string
}{
	{"Eckart 1952", func(y float64) float64 { return y / math.Sqrt(math.Tanh(y)) }, "4.980", "Carvalho2026"},
	{"Fenton and McKee 1990", func(y float64) float64 { return y / math.Pow(math.Tanh(math.Pow(y, 0.75)), 2.0/3) }, "1.631", "Carvalho2026"},
	{"Yamaguchi and Nonaka 2007, first", func(y float64) float64 { return yamaguchi(y, 1.485) }, "1.543", "Carvalho2026"},
	{"Yamaguchi and Nonaka 2007, second", func(y float64) float64 { return y / math.Tanh(yamaguchi(y, 1.378)) }, "0.732", "Carvalho2026"},
	{"Guo 2002", func(y float64) float64 {
		return y * math.Pow(-math.Expm1(-math.Pow(y, 2.4901/2)), -1/2.4901)
	}, "0.757", "Carvalho2026"},
	{"Hunt 1979, 5 coefficients", func(y float64) float64 {
		return math.Sqrt(y*y + y/(1+y*(0.6522+y*(0.4622+y*y*(0.0864+y*0.0675)))))
	}, "0.078", "Carvalho2026"},
	{"Hunt 1979, 9 coefficients", hunt9, "", "ACES1992-TR: better than 0.01 per cent"},
	{"Beji 2013", beji, "0.044", "Carvalho2026"},
	{"Vatankhah and Aghashariatmadari 2013, simple", func(y float64) float64 {
		return (y + y*y*math.Exp(-1.835-1.225*math.Pow(y, 1.35))) / math.Sqrt(math.Tanh(y))
	}, "0.019", "Carvalho2026"},
	{"Vatankhah and Aghashariatmadari 2013, long", func(y float64) float64 {
		return (y+y*y*math.Exp(-3.2-math.Pow(y, 1.65)))/math.Sqrt(math.Tanh(y)) + y*math.Pow(-math.Expm1(-math.Pow(y, 0.132)), 5.0532+2.1584*math.Pow(y, 1.505))
	}, "0.00176", "Carvalho2026"},
	{"Simarro and Orfila 2013: Beji and one step of Newton", func(y float64) float64 {
		x := beji(y)
		t := math.Tanh(x)
		return x - (x*t-y)/(t+x*(1-t*t))
	}, "0.0000082", "Carvalho2026"},
}

func yamaguchi(y, m float64) float64 {
	return y / math.Pow(math.Tanh(math.Pow(y, m/2)), 1/m)
}

func beji(y float64) float64 {
	return y / math.Sqrt(math.Tanh(y)) * (1 + math.Pow(y, 1.09)*math.Exp(-(1.55+1.30*y+0.216*y*y)))
}

func hunt9(y float64) float64 {
	d := []float64{0.66667, 0.35550, 0.16084, 0.06320, 0.02174, 0.00654, 0.00171, 0.00039, 0.00011}
	s := 0.0
	for i := len(d) - 1; i >= 0; i-- {
		s = (s + d[i]) * y
	}
	return math.Sqrt(y*y + y/(1+s))
}

// What the literature says about its approximations comes out of Solve, digit by digit: so Solve is the exact root that they
// were compared with.
func TestPublishedErrorsOfApproximations(t *testing.T) {
	for _, a := range approximations {
		worst := 0.0
		for i := range 60_000 {
			y := math.Exp(-9 + 15*float64(i)/60_000)
			worst = math.Max(worst, 100*math.Abs(a.f(y)/Solve(y)-1))
		}
		t.Logf("%-50s %.3g %%", a.name, worst)
		if a.printed == "" {
			if !(worst < 0.01) {
				t.Errorf("%s: %v %%, printed: better than 0.01 %%", a.name, worst)
			}
			continue
		}
		want, err := strconv.ParseFloat(a.printed, 64)
		if err != nil {
			t.Fatal(err)
		}
		_, digits, _ := strings.Cut(a.printed, ".")
		if half := 0.5 * math.Pow10(-len(digits)); !(math.Abs(worst-want) <= half*(1+1e-9)) {
			t.Errorf("%s: %v %%, printed %s [%s]", a.name, worst, a.printed, a.source)
		}
	}
}
