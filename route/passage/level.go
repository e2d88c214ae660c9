package passage

import (
	"math"
	"time"

	"followingsea.example/tide"
)

// An Estimator is a source of heights that also says how good they are. A
// tide.Table is one.
type Estimator interface {
	Estimate(at time.Time) tide.Estimate
}

// A level is the tide at an instant.
type level struct {
	height float64 // m above chart datum
	low    float64 // what limits on depth use, m
	spread float64 // m either way; NaN where the source does not say
	remark tide.Remark
}

// levelOf asks a source of heights. Where the source is an Estimator and the
// rise or fall lasts unusually long or short, as at a place with a stand or a
// double high water, the curve between two turns is not to be trusted: limits
// on depth then use the low end of its spread. A nil source, a gap and an
// instant outside the table are unknown.
func levelOf(source HeightSource, at time.Time) level {
	l := level{height: math.NaN(), low: math.NaN(), spread: math.NaN()}
	if source == nil {
		return l
	}
	e, ok := source.(Estimator)
	if !ok {
		if h := source.Height(at); finite(h) {
			l.height, l.low = h, h
		}
		return l
	}
	x := e.Estimate(at)
	if !finite(x.Height) {
		l.remark = x.Remark
		return l
	}
	l.height, l.low, l.spread, l.remark = x.Height, x.Height, x.Spread, x.Remark
	switch x.Remark {
	case tide.Ordinary:
	case tide.Short, tide.Long:
		l.low = x.Height - x.Spread
	default: // a gap, or outside: not even a number that came with it
		l.height, l.low = math.NaN(), math.NaN()
	}
	return l
}

func finite(x float64) bool { return math.Abs(x) <= math.MaxFloat64 }
