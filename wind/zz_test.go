package wind

import (
	"fmt"
	"math"
	"testing"
	"time"
)

func TestTmp(t *testing.T) {
	inf := math.Inf(1)
	h := Hindcast{Fetch: func(float64) float64 { return inf }, Gravity: 9.81}
	s := h.Stepper()
	w6, _ := New(6, 200)
	w10, _ := New(10, 200)
	s.Steady(w6, 3*3600)
	fmt.Println(s.State().Sea)
	s.Steady(w10, 3*3600)
	fmt.Println(s.State().Sea)
	s = h.Stepper()
	s.Steady(w10, 6*3600)
	fmt.Println(s.State().Sea)
	s = h.Stepper()
	for i := 0; i < 600; i++ {
		s.Steady(w10, 36)
	}
	fmt.Println(s.State().Sea)
	for _, n := range []int{1, 10} {
		s = h.Stepper()
		s.Steady(w10, 6*3600)
		for i := 1; i <= n; i++ {
			w, _ := New(10, math.Mod(200+60*float64(i)/float64(n), 360))
			s.Steady(w, 600/float64(n))
		}
		fmt.Println(n, s.State().Sea, s.State().Old)
		w, _ := New(10, 260)
		s.Steady(w, 3600)
		fmt.Println(n, s.State().Sea, s.State().Old, s.State().Hs())
		s.Steady(w, 3*3600)
		fmt.Println(n, s.State().Sea, s.State().Old, s.State().Hs())
	}
	s = h.Stepper()
	s.Steady(w10, 6*3600)
	w4, _ := New(4, 200)
	for i := 0; i < 9; i++ {
		s.Steady(w4, 3600)
		fmt.Println(i+1, s.State().Sea.Hs, s.State().Sea.Tp, s.State().Sea.Limit, s.State().Old.Hs, s.State().Old.Tp, s.State().Hs()/1.317)
	}
	_ = time.Now
}
func BenchmarkStep(b *testing.B) {
	for _, d := range []float64{math.Inf(1), 8} {
		h := Hindcast{Fetch: func(float64) float64 { return 80e3 }, MeanDepth: func(time.Time, float64) float64 { return d }}
		for _, mode := range []string{"steady", "varying"} {
			b.Run(fmt.Sprint(d, mode), func(b *testing.B) {
				s := h.Stepper()
				b.ReportAllocs()
				w, _ := New(10, 200)
				for i := 0; b.Loop(); i++ {
					if mode == "varying" {
						w.Speed = 10 + 3*math.Sin(float64(i)/20)
						w.From = 200 + 20*math.Sin(float64(i)/13)
					}
					s.step(w, 300, time.Time{})
				}
			})
		}
	}
}
