package wind

// Drift is a velocity of the water known only to a band.
type Drift struct {
	Low  Velocity
	Mid  Velocity
	High Velocity
}

// Fractions of the wind speed at 10 m at which it drags along the top of the
// water.
const (
	SurfaceDriftLow  = 0.02
	SurfaceDriftMid  = 0.025
	SurfaceDriftHigh = 0.03
)

// SurfaceDrift returns the flow that the wind drives in the thin top of the
// water, some decimetres, in the direction the air moves: 2 to 3 % of the wind,
// 2.5 % in the middle. It comes on within an hour or two of the wind and turns
// to the right of it (to the left in the south) over a day on deep open water,
// which is left out here.
//
// It moves what floats shallow. Do NOT add it to a leeway that was measured
// against the surface water with the wind drift in it, or to a stream that was
// forecast with the wind in it.
//
// Special cases are:
//
//	all components NaN if the wind is not known
//
// Source: [AMS-Glossary] wind drift (3 %), surface current (2.5 to 3 %); 2 % is the lower rule of navigators.
func SurfaceDrift(w Wind) Drift {
	if !w.known() {
		v := Velocity{nan, nan}
		return Drift{v, v, v}
	}
	v := w.Velocity()
	return Drift{v.Times(SurfaceDriftLow), v.Times(SurfaceDriftMid), v.Times(SurfaceDriftHigh)}
}
