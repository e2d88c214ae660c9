package ride

import (
	"math"

	"followingsea.example/wave/spectrum"
)

// Winds along the course that a sea may have, in m/s at 10 m height.
const (
	windLow  = -20.0
	windHigh = 35.0
)

// Prepared is a paddler made ready to appraise many seas: the parameters
// resolved, and the pushes that catch tabulated. It is made by
// [Paddler.Prepare], is never changed afterwards and is safe for concurrent
// use.
type Prepared struct {
	paddler  Paddler
	surge    surge
	variants [5]surge // one parameter of each moved by its spread, for Ride.Spread
	caught   [len(tableWind)][len(tableKappa)][len(tableAhead)]float64
	factor   gammas // A(γ)
	kept     gammas // part of the energy below swellCut
}

// The variants that the waves push otherwise than the paddler unchanged, last
// and in this order.
const (
	heavier = 3
	shorter = 4
)

// The nodes of the catch table: wind at 10 m, kc²/g along the heading, and the
// speed of the wave above that of a sprint.
var (
	tableWind  = [...]float64{windLow, -8, 0, 4, 8, 12, 16, 22, windHigh}
	tableKappa = [...]float64{0.2, 0.4, 0.7, 1, 1.5, 2.5}
	tableAhead = [...]float64{0, 0.2, 0.4, 0.7, 1, 1.4, 1.9, 2.5, 3.3, 4.3, 6, 9}
)

// Prepare resolves the paddler and fills the tables; it takes tens of
// milliseconds. Errors are those of [Paddler.Resolved].
func (p Paddler) Prepare() (*Prepared, error) {
	r, err := p.Resolved()
	if err != nil {
		return nil, err
	}
	pr := prepareBare(r)
	s := &pr.surge
	spread := map[string]float64{}
	for _, prior := range Priors(r.Craft) {
		spread[prior.Field] = prior.Spread
	}
	moved := [len(pr.variants)]Paddler{r, r, r, r, r}
	moved[0].Drag *= 1 + spread["Drag"]
	moved[1].WindArea *= 1 + spread["WindArea"]
	moved[2].Bend *= 1 + spread["Bend"]
	moved[heavier].Mass *= 1 + spread["Mass"]
	moved[shorter].Length *= 1 - spread["Length"]
	for i, p := range moved {
		pr.variants[i] = *compile(p)
	}
	for i, wind := range tableWind {
		u := s.share * wind
		vs := s.flat(s.sprint, u)
		for j, kappa := range tableKappa {
			for n, ahead := range tableAhead {
				if n == 0 {
					continue
				}
				c := vs + ahead
				if c < 0.3 { // a head wind no sprint stands against
					continue
				}
				w := train{k: kappa * defaultGravity / (c * c), c: c}
				hold := math.Max(0, -s.balance(c, s.sprint, u))
				pr.caught[i][j][n] = (s.separatrixForce(w, s.sprint, u, vs) - hold) / s.lift(w, vs)
			}
			pr.caught[i][j][0] = pr.caught[i][j][1]
		}
	}
	return pr, nil
}

// prepareBare takes a resolved paddler and fills only what the mean speed needs.
func prepareBare(r Paddler) *Prepared {
	pr := &Prepared{paddler: r, surge: *compile(r)}
	for i := range pr.factor {
		gamma := 1 + 0.25*float64(i)
		pr.factor[i] = spectrum.JONSWAPFactor(gamma)
		pr.kept[i] = swellKept(gamma)
	}
	return pr
}

// swellKept is the part of the energy of the shape below swellCut.
func swellKept(gamma float64) float64 {
	s := spectrum.JONSWAP{Hs: 4, Tp: 1, Gamma: gamma} // of energy one
	return s.MomentWithin(0, 0, swellCut)
}

// Paddler returns the paddler as resolved.
func (p *Prepared) Paddler() Paddler { return p.paddler }

// Bump says what the paddler can do with the bump, as [Paddler.Appraise].
func (p *Prepared) Bump(b Bump) (Appraisal, error) { return p.surge.appraise(b) }

// seat is a place in one axis of the table.
type seat struct {
	i int
	w float64
}

func find(nodes []float64, x float64) seat {
	i := 0
	for i < len(nodes)-2 && x >= nodes[i+1] {
		i++
	}
	w := (x - nodes[i]) / (nodes[i+1] - nodes[i])
	return seat{i, math.Max(0, math.Min(1, w))}
}

// catching returns the push that catches a wave with a sprint under way, from
// the table: wind is the seat of the wind, g the gravity. The wave must be
// faster than vs.
func (p *Prepared) catching(s *surge, w train, wind seat, u, vs, g float64) float64 {
	hold := -s.balance(w.c, s.sprint, u)
	a, b := find(tableKappa[:], w.k*w.c*w.c/g), find(tableAhead[:], w.c-vs)
	y := 0.0
	for i := range 2 {
		wi := wind.w
		if i == 0 {
			wi = 1 - wi
		}
		for j := range 2 {
			wj := a.w
			if j == 0 {
				wj = 1 - wj
			}
			row := &p.caught[wind.i+i][a.i+j]
			y += wi * wj * (row[b.i]*(1-b.w) + row[b.i+1]*b.w)
		}
	}
	return hold + y*s.lift(w, vs)
}

// gammas is a function of the peak enhancement, at 1, 1.25 ... 10.
type gammas [37]float64

// at interpolates with a cubic.
func (v *gammas) at(gamma float64) float64 {
	x := (gamma - 1) * 4
	i := max(1, min(int(x), len(v)-3))
	t := x - float64(i)
	a, b, c, d := v[i-1], v[i], v[i+1], v[i+2]
	return -a*t*(t-1)*(t-2)/6 + b*(t+1)*(t-1)*(t-2)/2 - c*(t+1)*t*(t-2)/2 + d*(t+1)*t*(t-1)/6
}
