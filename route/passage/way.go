package passage

import (
	"math"

	"followingsea.example/route"
)

// A wayTable is a posture made quick: its velocity through the water tabulated
// over the speed of the wind and its angle off the bow, in the board's own
// frame, where the solution of the balance of forces depends on nothing else.
// Ways out are worked out many thousands of times, and one balance costs more
// than all the rest of a step.
type wayTable struct {
	ahead, right []float64
}

const (
	wayWinds  = 71  // every half m/s to 35 m/s
	wayWind   = 0.5 // m/s
	wayAngles = 73  // every 2.5 degrees from the bow to the stern
	wayAngle  = 2.5
)

func newWayTable(p route.Posture) *wayTable {
	t := &wayTable{make([]float64, wayWinds*wayAngles), make([]float64, wayWinds*wayAngles)}
	for i := range wayWinds {
		for j := range wayAngles {
			// Heading north; the wind comes from j steps to the right of the bow.
			v := p.Way(0, route.From(float64(i)*wayWind, float64(j)*wayAngle))
			t.ahead[i*wayAngles+j], t.right[i*wayAngles+j] = v.North, v.East
		}
	}
	return t
}

// way is the table as a route.Way. Stronger winds than the table's are not
// known: NaN.
func (t *wayTable) way(heading float64, w route.Velocity) route.Velocity {
	sin, cos := math.Sincos(heading * (math.Pi / 180))
	// The wind's motion in the board's frame; it comes from the other way.
	fromAhead := -(w.East*sin + w.North*cos)
	fromRight := -(w.East*cos - w.North*sin)
	x := math.Sqrt(fromAhead*fromAhead+fromRight*fromRight) / wayWind
	if !(x < wayWinds-1) || heading-heading != 0 {
		return route.Velocity{East: math.NaN(), North: math.NaN()}
	}
	y := math.Atan2(math.Abs(fromRight), fromAhead) * (180 / math.Pi / wayAngle)
	i, j := int(x), min(int(y), wayAngles-2)
	fx, fy := x-float64(i), y-float64(j)
	at := func(z []float64) float64 {
		k := i*wayAngles + j
		a := z[k] + fy*(z[k+1]-z[k])
		b := z[k+wayAngles] + fy*(z[k+wayAngles+1]-z[k+wayAngles])
		return a + fx*(b-a)
	}
	u, s := at(t.ahead), at(t.right)
	if fromRight < 0 { // the mirror image
		s = -s
	}
	return route.Velocity{East: u*sin + s*cos, North: u*cos - s*sin}
}
