package harmonic

import (
	"fmt"
	"math"
	"strings"
	"time"

	"followingsea.example/internal/angle"
)

// A constituent's argument is V = a·(T, s, h, p, p1) + constant, its speed the
// rate of that. Speeds stand as the national service uses them, to seven
// decimals of a degree per hour; M1's includes the motion of its Q.

// A part is a factor of a constituent's f and u: that of a base, or its
// conjugate where the name subtracts it.
type part struct {
	base  base
	minus bool
}

// A definition is one constituent: coefficients of T, s, h, p, p1, the constant in
// degrees, the speed to seven decimals and the node parts.
type definition struct {
	name  string
	arg   [5]int
	plus  float64
	speed float64
	parts []part
}

// rate is the motion of V in degrees per hour.
func (d *definition) rate() float64 {
	r := 0.0
	for i, a := range d.arg {
		r += float64(a) * rates[i]
	}
	return r
}

// v is the argument V in degrees, not reduced.
func (d *definition) v(l *Longitudes) float64 {
	return float64(d.arg[0])*l.T + float64(d.arg[1])*l.S + float64(d.arg[2])*l.H + float64(d.arg[3])*l.P + float64(d.arg[4])*l.P1 + d.plus
}

// node is f e^{iu} from the factors of the bases.
func (d *definition) node(z *[bases]complex128) complex128 {
	r := complex(1, 0)
	for _, p := range d.parts {
		b := z[p.base]
		if p.minus {
			b = complex(real(b), -imag(b))
		}
		r *= b
	}
	return r
}

// The simple constituents. Those with the base "one" are solar.
var simple = []struct {
	name           string
	t, s, h, p, p1 int
	plus, speed    float64
	node           base
}{
	{"M2", 2, -2, 2, 0, 0, 0, 28.9841042, bM2},
	{"S2", 2, 0, 0, 0, 0, 0, 30.0000000, one},
	{"N2", 2, -3, 2, 1, 0, 0, 28.4397295, bM2},
	{"K1", 1, 0, 1, 0, 0, -90, 15.0410686, bK1},
	{"O1", 1, -2, 1, 0, 0, 90, 13.9430356, bO1},
	{"NU2", 2, -3, 4, -1, 0, 0, 28.5125831, bM2},
	{"MU2", 2, -4, 4, 0, 0, 0, 27.9682084, bM2},
	{"2N2", 2, -4, 2, 2, 0, 0, 27.8953548, bM2},
	{"OO1", 1, 2, 1, 0, 0, -90, 16.1391017, bOO1},
	{"LAM2", 2, -1, 0, 1, 0, 180, 29.4556253, bM2},
	{"S1", 1, 0, 0, 0, 0, 0, 15.0000000, one},
	{"M1", 1, -1, 1, 0, 0, -90, 14.4966939, bM1},
	{"J1", 1, 1, 1, -1, 0, -90, 15.5854433, bJ1},
	{"MM", 0, 1, 0, -1, 0, 0, 0.5443747, bMM},
	{"SSA", 0, 0, 2, 0, 0, 0, 0.0821373, one},
	{"SA", 0, 0, 1, 0, 0, 0, 0.0410686, one},
	{"MF", 0, 2, 0, 0, 0, 0, 1.0980331, bMF},
	{"RHO", 1, -3, 3, -1, 0, 90, 13.4715145, bO1},
	{"Q1", 1, -3, 1, 1, 0, 90, 13.3986609, bO1},
	{"T2", 2, 0, -1, 0, 1, 0, 29.9589333, one},
	{"R2", 2, 0, 1, 0, -1, 180, 30.0410667, one},
	{"2Q1", 1, -4, 1, 2, 0, 90, 12.8542862, bO1},
	{"P1", 1, 0, -1, 0, 0, 90, 14.9589314, one},
	{"M3", 3, -3, 3, 0, 0, 0, 43.4761563, bM3},
	{"L2", 2, -1, 2, -1, 0, 180, 29.5284789, bL2},
	{"K2", 2, 0, 2, 0, 0, 0, 30.0821373, bK2},
	// Beyond the 37 of the national service.
	{"SIG1", 1, -4, 3, 0, 0, 90, 12.9271398, bO1},
	{"CHI1", 1, -1, 3, -1, 0, -90, 14.5695476, bJ1},
	{"PI1", 1, 0, -2, 0, 1, 90, 14.9178647, one},
	{"PSI1", 1, 0, 2, 0, -1, -90, 15.0821353, one},
	{"PHI1", 1, 0, 3, 0, 0, -90, 15.1232059, one},
	{"THE1", 1, 1, -1, 1, 0, -90, 15.5125897, bJ1},
	{"EPS2", 2, -5, 4, 1, 0, 0, 27.4238337, bM2},
	{"MTM", 0, 3, 0, -1, 0, 0, 1.6424078, bMF},
	{"MSQM", 0, 4, -2, 0, 0, 0, 2.1139288, bMF},
}

// The compounds of shallow water, as sums of simple ones. Where the national
// service prints a seventh decimal that the sum does not give, it stands here.
var compounds = []struct {
	name, sum string
	speed     float64
}{
	{"M4", "M2+M2", 57.9682084},
	{"M6", "M2+M2+M2", 86.9523127},
	{"M8", "M2+M2+M2+M2", 115.9364166},
	{"MK3", "M2+K1", 44.0251729},
	{"2MK3", "M2+M2-K1", 42.9271398},
	{"S4", "S2+S2", 60},
	{"S6", "S2+S2+S2", 90},
	{"MN4", "M2+N2", 57.4238337},
	{"MS4", "M2+S2", 58.9841042},
	{"2SM2", "S2+S2-M2", 31.0158958},
	{"MSF", "S2-M2", 1.0158958},
	{"2MS6", "M2+M2+S2", 87.9682084},
	// Beyond the 37; the speed is the sum, rounded.
	{"M10", "M2+M2+M2+M2+M2", 0},
	{"M12", "M2+M2+M2+M2+M2+M2", 0},
	{"S8", "S2+S2+S2+S2", 0},
	{"N4", "N2+N2", 0},
	{"SN4", "S2+N2", 0},
	{"MK4", "M2+K2", 0},
	{"SK4", "S2+K2", 0},
	{"3MS4", "M2+M2+M2-S2", 0},
	{"3MN4", "M2+M2+M2-N2", 0},
	{"2MNS4", "M2+M2+N2-S2", 0},
	{"2MSN4", "M2+M2+S2-N2", 0},
	{"MNS2", "M2+N2-S2", 0},
	{"MSN2", "M2+S2-N2", 0},
	{"MKS2", "M2+K2-S2", 0},
	{"2MS2", "M2+M2-S2", 0},
	{"2MN2", "M2+M2-N2", 0},
	{"2MK2", "M2+M2-K2", 0},
	{"2SN2", "S2+S2-N2", 0},
	{"SNM2", "S2+N2-M2", 0},
	{"SKM2", "S2+K2-M2", 0},
	{"MO3", "M2+O1", 0},
	{"SO3", "S2+O1", 0},
	{"NO3", "N2+O1", 0},
	{"SK3", "S2+K1", 0},
	{"NK3", "N2+K1", 0},
	{"SP3", "S2+P1", 0},
	{"MP3", "M2+P1", 0},
	{"2MP3", "M2+M2-P1", 0},
	{"SO1", "S2-O1", 0},
	{"MP1", "M2-P1", 0},
	{"2MN6", "M2+M2+N2", 0},
	{"2MK6", "M2+M2+K2", 0},
	{"2SM6", "S2+S2+M2", 0},
	{"2SN6", "S2+S2+N2", 0},
	{"2NM6", "N2+N2+M2", 0},
	{"MSN6", "M2+S2+N2", 0},
	{"MSK6", "M2+S2+K2", 0},
	{"4MS6", "M2+M2+M2+M2-S2", 0},
	{"4MN6", "M2+M2+M2+M2-N2", 0},
	{"3MNS6", "M2+M2+M2+N2-S2", 0},
	{"3MS8", "M2+M2+M2+S2", 0},
	{"3MN8", "M2+M2+M2+N2", 0},
	{"3MK8", "M2+M2+M2+K2", 0},
	{"2MSN8", "M2+M2+S2+N2", 0},
	{"2MSK8", "M2+M2+S2+K2", 0},
	{"2MNK8", "M2+M2+N2+K2", 0},
	{"2MS8", "M2+M2+S2+S2", 0},
	{"2(MS)8", "M2+M2+S2+S2", 0},
	{"2(MN)8", "M2+M2+N2+N2", 0},
	{"3SM8", "S2+S2+S2+M2", 0},
	{"MNK5", "M2+N2+K1", 0},
	{"MNO5", "M2+N2+O1", 0},
	{"MSO5", "M2+S2+O1", 0},
	{"MSK5", "M2+S2+K1", 0},
	{"2MK5", "M2+M2+K1", 0},
	{"2MO5", "M2+M2+O1", 0},
	{"2MP5", "M2+M2+P1", 0},
	{"3MK7", "M2+M2+M2+K1", 0},
	{"3MO7", "M2+M2+M2+O1", 0},
	{"2MSK7", "M2+M2+S2+K1", 0},
	{"4MS10", "M2+M2+M2+M2+S2", 0},
	{"3M2S10", "M2+M2+M2+S2+S2", 0},
	{"4MN10", "M2+M2+M2+M2+N2", 0},
}

// Other names in use.
var aliases = map[string]string{
	"LAMBDA2": "LAM2", "LDA2": "LAM2", "LABDA2": "LAM2", "LA2": "LAM2", "RHO1": "RHO", "RO1": "RHO", "E2": "EPS2", "SIGMA1": "SIG1", "NU": "NU2",
	"MU": "MU2", "EPSILON2": "EPS2", "THETA1": "THE1", "MTF": "MTM", "MFM": "MTM",
}

var greek = strings.NewReplacer("Λ", "LAM", "Ν", "NU", "Μ", "MU", "Ρ", "RHO", "Σ", "SIG", "Χ", "CHI", "Π", "PI", "Ψ", "PSI", "Φ", "PHI", "Θ", "THE", "Ε", "EPS", " ", "", "_", "", "-", "")

// definitions holds every constituent by its canonical name.
var definitions = func() map[string]*definition {
	m := map[string]*definition{}
	for _, c := range simple {
		d := &definition{name: c.name, arg: [5]int{c.t, c.s, c.h, c.p, c.p1}, plus: c.plus, speed: c.speed}
		if c.node != one {
			d.parts = []part{{c.node, false}}
		}
		m[c.name] = d
	}
	for _, c := range compounds {
		d := &definition{name: c.name, speed: c.speed}
		rest := c.sum
		for minus := false; rest != ""; {
			end := strings.IndexAny(rest, "+-")
			name, next := rest, ""
			if end >= 0 {
				name, next = rest[:end], rest[end+1:]
			}
			q := m[name]
			sign := 1
			if minus {
				sign = -1
			}
			for i := range d.arg {
				d.arg[i] += sign * q.arg[i]
			}
			d.plus += float64(sign) * q.plus
			for _, p := range q.parts {
				d.parts = append(d.parts, part{p.base, p.minus != minus})
			}
			minus = end >= 0 && rest[end] == '-'
			rest = next
		}
		if d.speed == 0 {
			d.speed = math.Round(d.rate()*1e7) / 1e7
		}
		m[c.name] = d
	}
	return m
}()

// lookup finds a constituent by any of its names, nil when there is none.
func lookup(name string) *definition {
	n := greek.Replace(strings.ToUpper(strings.TrimSpace(name)))
	if a, ok := aliases[n]; ok {
		n = a
	}
	return definitions[n]
}

// Names returns the names of the constituents that are known: the 37 of the
// United States National Ocean Service first, then the others. The order is
// fixed.
func Names() []string {
	names := append([]string(nil), standard...)
	have := map[string]bool{}
	for _, n := range names {
		have[n] = true
	}
	for _, c := range simple {
		if !have[c.name] {
			names = append(names, c.name)
		}
	}
	for _, c := range compounds {
		if !have[c.name] {
			names = append(names, c.name)
		}
	}
	return names
}

var standard = []string{
	"M2", "S2", "N2", "K1", "M4", "O1", "M6", "MK3", "S4", "MN4", "NU2", "S6", "MU2", "2N2", "OO1", "LAM2", "S1", "M1", "J1",
	"MM", "SSA", "SA", "MSF", "MF", "RHO", "Q1", "T2", "R2", "2Q1", "P1", "2SM2", "M3", "L2", "2MK3", "K2", "M8", "MS4",
}

// Speed returns the speed of a constituent in degrees per hour, to seven
// decimals as the national service uses it.
//
// Special cases are:
//
//	Speed(name) = NaN for a constituent that is not known
//
// Source: [NOAA-Harcon] field speed; [Schureman1958] table 2.
func Speed(name string) float64 {
	if d := lookup(name); d != nil {
		return d.speed
	}
	return math.NaN()
}

// Argument returns the equilibrium argument V of a constituent in degrees, in
// [0, 360), without its node angle u.
//
// Special cases are:
//
//	Argument(name) = NaN for a constituent that is not known, or if a longitude it needs is NaN
//
// Source: [Schureman1958] table 2.
func (l Longitudes) Argument(name string) float64 {
	d := lookup(name)
	if d == nil {
		return math.NaN()
	}
	return angle.Wrap(d.v(&l))
}

// Node returns the node factor f of a constituent and its node angle u in
// degrees, in (-180, 180], from the longitudes N and P.
//
//	M2 (N2 ν2 μ2 2N2 λ2)  f = cos⁴(I/2)/0.9154                          u = 2ξ − 2ν
//	O1 (Q1 2Q1 ρ1)        f = sin I cos²(I/2)/0.3800                    u = 2ξ − ν
//	K1                    f = √(0.8965 sin²2I + 0.6001 sin 2I cos ν + 0.1006)      u = −ν'
//	K2                    f = √(19.0444 sin⁴I + 2.7702 sin²I cos 2ν + 0.0981)      u = −2ν''
//	J1                    f = sin 2I/0.7214                             u = −ν
//	OO1                   f = sin I sin²(I/2)/0.0164                    u = −2ξ − ν
//	Mf                    f = sin²I/0.1578                              u = −2ξ
//	Mm                    f = (2/3 − sin²I)/0.5021                      u = 0
//	M3                    f = cos⁶(I/2)/0.8758                          u = 3ξ − 3ν
//	L2                    f = f(M2) √(1 − 12t² cos 2P + 36t⁴), t = tan(I/2)   u = u(M2) − R, tan R = sin 2P/(1/(6t²) − cos 2P)
//	M1                    f = f(O1) √(2.310 + 1.435 cos 2P)             u = ξ − ν + Q, tan Q = 0.483 tan P
//
// Solar constituents have f = 1 and u = 0; compounds multiply the factors and
// add the angles with the signs of their parts.
//
// Special cases are:
//
//	Node(name) = NaN, NaN for a constituent that is not known, or if N or P is NaN or infinite
//
// Source: [Schureman1958] formulas 65 to 235 and table 2.
func (l Longitudes) Node(name string) (f, u float64) {
	d := lookup(name)
	if d == nil || math.IsNaN(l.N+l.P) || math.IsInf(l.N+l.P, 0) {
		return math.NaN(), math.NaN()
	}
	z := factors(l.N, l.P)
	c := d.node(&z)
	return math.Hypot(real(c), imag(c)), angle.Degrees(math.Atan2(imag(c), real(c)))
}

// YearArgument returns what the year tables print: the equilibrium argument
// V0 + u of a constituent at the beginning of the year (1 January, 0 h UT), in
// degrees in [0, 360), with u and the node factor f at its middle: 2 July
// 12 h, in leap years 0 h.
//
// Special cases are:
//
//	YearArgument = NaN, NaN for a constituent, elements or a year (1600 to 2500) that is not known
//
// Source: [Schureman1958] tables 14 and 15; [YearTables].
func YearArgument(name string, year int, by Elements) (argument, factor float64) {
	if year < 1600 || year > 2500 {
		return math.NaN(), math.NaN()
	}
	start, middle := yearOf(year)
	l := LongitudesAt(start, by)
	f, u := LongitudesAt(middle, by).Node(name)
	return angle.Wrap(l.Argument(name) + u), f
}

// ArgumentAt returns the argument V + u of a constituent at an instant, in degrees
// in [0, 360), and the node factor f, both with the nodes of that instant. A
// constituent of amplitude H and Greenwich phase lag g then adds f H cos(V + u − g).
//
// Lists that carry the satellites of each constituent one by one, as the Canadian
// one does, differ by up to 0.7 degrees: in S2 and P1, which have none here, by all of
// their satellites.
//
// Special cases are:
//
//	ArgumentAt = NaN, NaN for a constituent or elements that are not known
//
// Source: [Schureman1958] formulas 65 to 235 and table 2; [CHS-Argument].
func ArgumentAt(name string, at time.Time, by Elements) (argument, factor float64) {
	l := LongitudesAt(at, by)
	f, u := l.Node(name)
	return angle.Wrap(l.Argument(name) + u), f
}

// yearOf returns the beginning and the middle of a year.
func yearOf(year int) (start, middle time.Time) {
	start = time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC)
	end := time.Date(year+1, 1, 1, 0, 0, 0, 0, time.UTC)
	return start, start.Add(end.Sub(start) / 2)
}

// A Constituent is one line of a station's table: name, amplitude in metres
// (m/s for a stream) and Greenwich phase lag in degrees.
type Constituent struct {
	Name      string
	Amplitude float64
	Lag       float64
}

// check returns the definition of a usable constituent.
func (c Constituent) check(i int) (*definition, error) {
	d := lookup(c.Name)
	switch {
	case d == nil:
		return nil, fmt.Errorf("%w: constituent %d: name %q: want one of %s and %d more (Names)", ErrConstituent, i+1, clip(c.Name), strings.Join(standard, " "), len(definitions)-len(standard))
	case !(c.Amplitude >= 0 && c.Amplitude <= 25):
		return nil, fmt.Errorf("%w: constituent %d, %s: amplitude %v: want 0 to 25", ErrConstituent, i+1, c.Name, c.Amplitude)
	case !(c.Lag >= -360 && c.Lag <= 720):
		return nil, fmt.Errorf("%w: constituent %d, %s: lag %v°: want -360 to 720", ErrConstituent, i+1, c.Name, c.Lag)
	}
	return d, nil
}
