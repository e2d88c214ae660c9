package route

import (
	"fmt"
	"math"
	"math/rand/v2"
	"sort"
)

// GybeRate is the published default chance that a drifting craft changes its
// side of downwind: 4 % an hour.
const GybeRate = 0.04 / 3600 // a second

// Drifter is a drift to be reckoned: what drifts, from where, in which wind and
// stream, for how long.
//
// Its answers are a pair of tracks or a cloud of them, never a point.
type Drifter struct {
	Craft Craft
	Start Point
	// Wind is the wind over ground at 10 m, at a position and a number of
	// seconds from the start. It must not be nil. Leeway is reckoned from the wind
	// over the water: this less the stream.
	Wind func(p Point, seconds float64) Velocity
	// Stream is the motion of the water near the surface over the ground. Nil
	// stands for still water.
	Stream func(p Point, seconds float64) Velocity
	// Stokes is a drift by the waves to be added. Leave it nil: the leeway was
	// measured with the waves of its wind and holds their effect, so adding it
	// counts the waves twice. It is here for a swell that has nothing to do with
	// the wind.
	Stokes func(p Point, seconds float64) Velocity

	Seconds float64 // how long
	Step    float64 // seconds of a step; 0 stands for 600
	Gybe    float64 // chance a second of changing side, in the cloud only; GybeRate is the published value, 0 none
}

// maxDriftSteps bounds the work of one drift.
const maxDriftSteps = 20000

func (d Drifter) check() (steps int, step float64, err error) {
	step = d.Step
	if step == 0 {
		step = 600
	}
	switch {
	case d.Wind == nil:
		panic("route: Drifter without a wind")
	case d.Start.Check() != nil:
		return 0, 0, fmt.Errorf("start: %w", d.Start.Check())
	case !(d.Seconds > 0 && d.Seconds <= 30*86400):
		return 0, 0, fmt.Errorf("%w: drift of %v s, want above 0 and up to 30 days", ErrInput, d.Seconds)
	case !(step > 0 && step <= 6*3600) || !(d.Seconds/step <= maxDriftSteps):
		return 0, 0, fmt.Errorf("%w: step of %v s for a drift of %v s, want 0 to 6 h and no more than %d steps", ErrInput, d.Step, d.Seconds, maxDriftSteps)
	case !(d.Gybe >= 0 && d.Gybe*step <= 1):
		return 0, 0, fmt.Errorf("%w: gybe %v a second, want 0 to 1 in a step", ErrInput, d.Gybe)
	}
	return int(math.Ceil(d.Seconds/step - 1e-9)), step, nil
}

// Drift is one drift track: positions at the steps, the start first.
type Drift struct {
	Points       []Point
	Seconds      []float64 // of each position, from the start
	Leeway       float64   // metres through the water along the track, by leeway alone
	Extrapolated bool      // the wind left the range of the field tests, 2 to 20 m/s
}

// End returns the last position.
func (t Drift) End() Point { return t.Points[len(t.Points)-1] }

// Pair returns the two tracks of the table's mean lines, right-going and
// left-going, without scatter and without gybing. The spread of the real thing
// is that of [Drifter.Cloud]; for most rows it is larger than the gap between
// the two.
//
// Errors are ErrPosition and ErrInput, also where wind or stream are not
// velocities, and where the drift runs beyond 85 degrees of latitude. It panics
// if Wind is nil.
//
// Source: [Breivik2011] section 2, the leeway model.
func (d Drifter) Pair() (right, left Drift, err error) {
	steps, step, err := d.check()
	if err != nil {
		return Drift{}, Drift{}, err
	}
	for i, side := range [2]Side{Right, Left} {
		m := member{craft: &d.Craft, side: side}
		t := Drift{Points: make([]Point, 1, steps+1), Seconds: make([]float64, 1, steps+1)}
		t.Points[0] = d.Start
		for k := range steps {
			from, dt := d.span(k, step)
			if err := d.move(&m, t.Points[k], from, dt); err != nil {
				return Drift{}, Drift{}, err
			}
			t.Points = append(t.Points, m.at)
			t.Seconds = append(t.Seconds, from+dt)
		}
		t.Leeway, t.Extrapolated = m.leeway, m.extrapolated
		if i == 0 {
			right = t
		} else {
			left = t
		}
	}
	return right, left, nil
}

// span returns the start and the length of step k; the last may be shorter.
func (d Drifter) span(k int, step float64) (from, dt float64) {
	from = float64(k) * step
	return from, math.Min(step, d.Seconds-from)
}

// member is one drifting thing of an ensemble.
type member struct {
	craft          *Craft
	side           Side
	zDown, zAcross float64 // standard normal
	at             Point
	leeway         float64
	extrapolated   bool
}

// across returns the crosswind line of the family, and its deviation. A
// deviation to more divergence is so on either side.
func (m *member) across() (Fit, float64) {
	if m.side == Left {
		return m.craft.Left, -m.zAcross
	}
	return m.craft.Right, m.zAcross
}

// velocity is the leeway of the member: the lines with slope + e/20 and offset
// + e/2, e = z times the standard error, so that the scatter is the standard
// error at 10 m/s (in the units of the table: e in cm/s, slope in percent).
func (m *member) velocity(wind Velocity) Velocity {
	w := wind.Speed()
	across, z := m.across()
	k := w/20 + 0.5
	return leeway(wind, w,
		m.craft.Downwind.At(w)+m.zDown*m.craft.Downwind.Scatter*k,
		across.At(w)+z*across.Scatter*k)
}

// move carries a member over one step by the midpoint rule.
func (d Drifter) move(m *member, p Point, from, dt float64) error {
	v, _, err := d.velocity(m, p, from)
	if err != nil {
		return err
	}
	mid := shift(p, v, dt/2)
	v, wind, err := d.velocity(m, mid, from+dt/2)
	if err != nil {
		return err
	}
	m.at = shift(p, v, dt)
	if !m.at.valid() {
		return fmt.Errorf("%w: the drift passes 85 degrees of latitude after %.0f s", ErrPosition, from)
	}
	w := wind.Speed()
	m.leeway += m.velocity(wind).Speed() * dt
	m.extrapolated = m.extrapolated || !(w >= fitFrom && w <= fitTo)
	return nil
}

// velocity returns the motion over the ground and the wind over the water.
func (d Drifter) velocity(m *member, p Point, t float64) (over, wind Velocity, err error) {
	var stream, stokes Velocity
	if d.Stream != nil {
		stream = d.Stream(p, t)
	}
	if d.Stokes != nil {
		stokes = d.Stokes(p, t)
	}
	wind = d.Wind(p, t).Sub(stream)
	over = stream.Add(stokes).Add(m.velocity(wind))
	if !(over.Speed() <= 100) {
		return over, wind, fmt.Errorf("%w: wind and stream at %.0f s and %.5f, %.5f are not velocities", ErrInput, t, p.Lat, p.Lon)
	}
	return over, wind, nil
}

// shift moves a position by a velocity over a short time, on the radii of
// curvature at the middle of the move.
func shift(p Point, v Velocity, dt float64) Point {
	const deg = 180 / math.Pi
	m, _ := wgs84.radii(p.Lat)
	dlat := v.North * dt / m * deg
	mid := p.Lat + dlat/2
	if !(math.Abs(mid) <= 85) {
		return nowhere
	}
	m, n := wgs84.radii(mid)
	_, c := sincosd(mid)
	return Point{p.Lat + v.North*dt/m*deg, wrapLon(p.Lon + v.East*dt/(n*c)*deg)}
}

// Cloud is an ensemble of drifts.
type Cloud struct {
	Seconds      []float64 // of each set of positions, from the start
	Points       [][]Point // [time][member]
	Right        []int     // members on the right-going side at each time
	Extrapolated bool
}

// Spread says where a cloud is at one of its times.
type Spread struct {
	Mean   Point
	RMS    float64 // root mean square distance from the mean, metres
	Half   float64 // radius about the mean that holds half of the members
	Ninety float64 // radius that holds 90 % of them
}

// Cloud returns an ensemble of drifts: n members, half of them right-going at
// the start and half left-going in turn, each with its own lines of leeway
// drawn with the published scatter, changing sides at the rate of Gybe. The
// same seed gives the same cloud.
//
// A member's lines are slope + e/20 and offset + e/2 with e normal about zero
// with the standard error, so that the scatter of the leeway is that of the
// field tests at 10 m/s; a negative downwind slope is drawn again.
//
// The spread is that of leeway alone: wind, stream and starting position are
// taken as given.
//
// Errors are those of [Drifter.Pair], and ErrInput for n outside 2 to 100000 or
// a cloud of more than 20 million positions.
//
// Source: [Breivik2011] section 2, the leeway model.
func (d Drifter) Cloud(n int, seed uint64) (Cloud, error) {
	steps, step, err := d.check()
	if err != nil {
		return Cloud{}, err
	}
	if n < 2 || n > 100000 || n*(steps+1) > 20e6 {
		return Cloud{}, fmt.Errorf("%w: %d members of %d steps, want 2 to 100000 and no more than 20 million positions", ErrInput, n, steps)
	}
	r := rand.New(rand.NewPCG(seed, 0x6c656577_61790000))
	members := make([]member, n)
	c := Cloud{Seconds: make([]float64, 1, steps+1), Points: make([][]Point, 1, steps+1), Right: make([]int, 1, steps+1)}
	c.Points[0] = make([]Point, n)
	for i := range members {
		m := &members[i]
		m.craft, m.side, m.at = &d.Craft, Right, d.Start
		if i%2 == 1 {
			m.side = Left
		} else {
			c.Right[0]++
		}
		m.zAcross = r.NormFloat64()
		for range 1000 {
			m.zDown = r.NormFloat64()
			// e/20 in percent and cm/s is e/20 as a fraction and m/s.
			if d.Craft.Downwind.Slope+m.zDown*d.Craft.Downwind.Scatter/20 >= 0 {
				break
			}
		}
		c.Points[0][i] = d.Start
	}
	for k := range steps {
		from, dt := d.span(k, step)
		chance := -math.Expm1(-d.Gybe * dt)
		points, right := make([]Point, n), 0
		for i := range members {
			m := &members[i]
			if r.Float64() < chance {
				m.side = -m.side
			}
			if err := d.move(m, m.at, from, dt); err != nil {
				return Cloud{}, err
			}
			points[i] = m.at
			c.Extrapolated = c.Extrapolated || m.extrapolated
			if m.side == Right {
				right++
			}
		}
		c.Points = append(c.Points, points)
		c.Seconds = append(c.Seconds, from+dt)
		c.Right = append(c.Right, right)
	}
	return c, nil
}

// Spread returns where the cloud is at its time of a number, from 0. A number
// outside the cloud is ErrInput.
func (c Cloud) Spread(i int) (Spread, error) {
	if i < 0 || i >= len(c.Points) || len(c.Points[i]) == 0 {
		return Spread{}, fmt.Errorf("%w: time %d of a cloud with %d", ErrInput, i, len(c.Points))
	}
	points := c.Points[i]
	// Mean about the first member, so that the antimeridian is nowhere special.
	o := points[0]
	var lat, lon float64
	for _, p := range points {
		lat += p.Lat - o.Lat
		lon += wrapLon(p.Lon - o.Lon)
	}
	n := float64(len(points))
	s := Spread{Mean: Point{o.Lat + lat/n, wrapLon(o.Lon + lon/n)}}
	far := make([]float64, len(points))
	for k, p := range points {
		far[k] = ShortInverse(s.Mean, p).Distance
		if math.IsNaN(far[k]) { // a cloud wider than the short formula reaches
			far[k] = Inverse(s.Mean, p).Distance
		}
		s.RMS += far[k] * far[k]
	}
	s.RMS = math.Sqrt(s.RMS / n)
	sort.Float64s(far)
	s.Half = far[int(math.Ceil(0.5*n))-1]
	s.Ninety = far[int(math.Ceil(0.9*n))-1]
	return s, nil
}
