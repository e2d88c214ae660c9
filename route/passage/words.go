package passage

import (
	"fmt"
	"math"
	"strings"

	"followingsea.example/tide"
	"followingsea.example/wind"
)

// reckon adds to a moment what only a reader needs: the band of the growth
// laws, the temperatures, and the remarks in words.
func (w *Water) reckon(m *Moment, i int, state wind.State) {
	t := w.seconds(m.Time)
	m.WaterTemp, m.AirTemp = w.air.between(w.air.waterTemp, t), w.air.between(w.air.airTemp, t)
	m.SeaLow, m.SeaHigh = w.seaBand(m, i, state)
	m.SeaWords = w.seaWords(m, i)
}

// seaBand returns the height of the wind sea by the lowest and the highest of
// the growth laws that measurements cannot tell apart: each law's sea for the
// wind of the moment on the sea's equivalent fetch, over that of the law in
// use. NaN where the sea is not known.
func (w *Water) seaBand(m *Moment, i int, state wind.State) (low, high float64) {
	if !m.Sea.Known() {
		return math.NaN(), math.NaN()
	}
	if m.Sea.Hs == 0 {
		return 0, 0
	}
	depth := w.stations[w.reaches[w.of[i]].station].depth
	if !math.IsInf(depth, 1) && m.TideHeight == m.TideHeight {
		depth = math.Max(depth+m.TideHeight, leastWaveDepth)
	}
	c := wind.Conditions{Speed: state.Wind.Speed, Fetch: m.Sea.Fetch, Duration: math.Inf(1), MeanDepth: depth}
	own, band := wind.Grow(w.options.Law, c).Hs, wind.Band(c)
	if !(own > 0) {
		return math.NaN(), math.NaN()
	}
	return m.Sea.Hs * math.Min(1, band.LowHs/own), m.Sea.Hs * math.Max(1, band.HighHs/own)
}

// seaWords are the remarks on a moment.
func (w *Water) seaWords(m *Moment, i int) []string {
	var s []string
	say := func(format string, args ...any) { s = append(s, fmt.Sprintf(format, args...)) }
	if m.Sea.Known() && m.Sea.Hs > 0 {
		say("wind sea: %v", m.Sea.Limit)
		if m.Sea.Remarks != 0 {
			s = append(s, strings.Split(m.Sea.Remarks.String(), "; ")...)
		}
		if m.SeaLow <= m.SeaHigh {
			say("between growth laws the wind sea is %.1f to %.1f m", m.SeaLow, m.SeaHigh)
		}
	}
	if d := m.AirTemp - m.WaterTemp; d > 2 || d < -2 {
		if x := wind.ObservedOverPredicted(d); x == x {
			say("the air is %+.0f K on the water: seas measured then were %.2f of those predicted, which is not applied", d, x)
		}
	}
	if m.Blocked {
		say("the stream stops the waves of the wind sea: they break on it")
	} else if m.Steepness >= breakingSteepness/2 {
		say("steeper than a sea can stand: it breaks")
	}
	if m.SurfHs >= m.BreakHs {
		say("over this depth a sea of this period begins to break at %.1f m: it breaks", m.BreakHs)
	}
	switch by := w.reaches[w.of[i]].wall; {
	case by.part > 0 && m.Reflected > 0:
		kind := by.kind
		if kind == "" {
			kind = "steep shore"
		}
		say("a %s %.0f m off throws back %.1f m of it: confused", kind, by.distance, m.Reflected)
	case by.part == 0 && m.ShoreAt <= ReflectionReach:
		say("nobody said whether the shore near by is steep: waves it throws back are not counted")
	}
	if x := tideWords(m); x != "" {
		s = append(s, x)
	}
	return s
}

// tideWords says what is odd about the tide of a moment; empty for nothing.
func tideWords(m *Moment) string {
	if m.TideRemark == tide.Ordinary {
		return ""
	}
	if m.TideSpread == m.TideSpread {
		return fmt.Sprintf("tide: %v: limits on depth use the low end of %.1f m, ± %.1f m", m.TideRemark, m.TideHeight, m.TideSpread)
	}
	return fmt.Sprintf("tide: %v", m.TideRemark)
}

// explain says what the value of a finding is made of, where that is more than
// one number.
func (w *Water) explain(f *Finding) {
	if f.Why != "" || f.State == Unknown {
		return
	}
	switch f.Rule {
	case LeastWind, GreatestWind, GreatestGust, GreatestOffshore, LeastSea, GreatestSea, LeastDepth, GreatestBreaking:
	default:
		return
	}
	if f.Along != f.Along || f.Time.IsZero() {
		return
	}
	m, err := w.Moment(f.Along, f.Time)
	if err != nil {
		return
	}
	var s []string
	switch f.Rule {
	case LeastWind, GreatestWind, GreatestGust, GreatestOffshore:
		if m.WindLow != m.WindHigh && m.WindHigh.Speed > m.WindLow.Speed {
			s = append(s, fmt.Sprintf("as exposed, mean %.1f to %.1f m/s", m.WindLow.Speed, m.WindHigh.Speed))
		}
	case LeastSea:
		if m.SeaLow < m.SeaHigh {
			s = append(s, fmt.Sprintf("%.2f to %.2f m between growth laws", m.SeaLow, m.SeaHigh))
		}
	case GreatestSea:
		if low, high := m.totalBand(); low < high {
			s = append(s, fmt.Sprintf("%.2f to %.2f m between growth laws", low, high))
		}
		if m.Reflected >= 0.05 {
			s = append(s, fmt.Sprintf("%.2f m of it thrown back by a steep shore", m.Reflected))
		}
	case LeastDepth, GreatestBreaking:
		if f.Rule == GreatestBreaking && m.SurfHs >= m.BreakHs {
			s = append(s, fmt.Sprintf("a sea begins to break there at %.2f m", m.BreakHs))
		}
		if x := tideWords(&m); x != "" {
			s = append(s, x)
		}
	}
	f.Why = strings.Join(s, "; ")
}

// totalBand carries the band of the wind sea into the height of all of it, in
// the proportion in which the water here changes what comes in.
func (m *Moment) totalBand() (low, high float64) {
	in := math.Sqrt(m.Sea.Hs*m.Sea.Hs + m.SwellHs*m.SwellHs)
	if !(in > 0) {
		return math.NaN(), math.NaN()
	}
	part := func(sea float64) float64 { return m.TotalHs / in * math.Sqrt(sea*sea+m.SwellHs*m.SwellHs) }
	return part(m.SeaLow), part(m.SeaHigh)
}
