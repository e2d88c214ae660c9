package spectrum_test

import "followingsea.example/wave/spectrum"

// The sea of seed 7 of TestSameSeedSameSea, as it was first made.
var golden = []spectrum.Component{
	{Amplitude: 0.159264143228557, Frequency: 0.194802421988265, Wavenumber: 0.188353714004505, Offset: -12.904777224751, Phase: 0.0202258427995378},
	{Amplitude: 0.277518429335297, Frequency: 0.327954871803692, Wavenumber: 0.43754502583604, Offset: -3.9747917175672, Phase: 4.86346959045969},
	{Amplitude: 0.130983485092655, Frequency: 0.461221006698422, Wavenumber: 0.856420612656575, Offset: -25.918989153725, Phase: 2.28295928514052},
	{Amplitude: 0.0650015667297543, Frequency: 0.649929167843682, Wavenumber: 1.70047839352351, Offset: 17.609698995036, Phase: 4.43836103227708},
	{Amplitude: 0.0303986351108747, Frequency: 0.867926747930464, Wavenumber: 3.03253070320723, Offset: -8.456859287227, Phase: 2.25683751589413},
}

const goldenElevation = -0.0776174705604477
