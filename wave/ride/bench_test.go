package ride_test

import (
	"math"
	"testing"

	"followingsea.example/wave/ride"
)

var benchSea = ride.Sea{WindSea: ride.System{Hs: 0.72, Tp: 3.65}, Wind: 10, Depth: deep}

// BenchmarkSea is the appraisal of one sea; compare with BenchmarkSimulate and
// BenchmarkPlain, whose 2 % it may cost.
func BenchmarkSea(b *testing.B) {
	ready, err := reference.Prepare()
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = ready.Sea(benchSea)
	}
}

func BenchmarkSimulate(b *testing.B) {
	for b.Loop() {
		_, _ = reference.Simulate(benchSea, ride.Run{})
	}
}

func BenchmarkAppraise(b *testing.B) {
	ready, err := reference.Prepare()
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = ready.Bump(ride.Bump{Height: 0.6, Period: 3, Depth: deep, Wind: 10})
	}
}

func BenchmarkPrepare(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _ = reference.Prepare()
	}
}

func BenchmarkTable(b *testing.B) {
	ready, err := reference.Prepare()
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = ready.Table(ride.Sea{Depth: deep}, 0)
	}
}

func BenchmarkTableAt(b *testing.B) {
	ready, err := reference.Prepare()
	if err != nil {
		b.Fatal(err)
	}
	t, err := ready.Table(ride.Sea{Depth: deep}, 0.3)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		_, _ = t.At(0.72, 3.65, 10, 20)
	}
}

func BenchmarkExp(b *testing.B) {
	x, sum := 0.3, 0.0
	for b.Loop() {
		sum += math.Exp(x)
		x = -x
	}
	if sum < 0 {
		b.Fatal(sum)
	}
}
