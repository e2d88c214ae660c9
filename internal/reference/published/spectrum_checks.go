package published

import "followingsea.example/internal/reference"

// Two measured spectra of 64 bands: the validation data CDiP1 and CDiP6 of the source, with their band widths.

const cdipF = "[" +
	"0.025 0.03 0.035 0.04 0.045 0.05 0.055 0.06 0.065 0.07 0.075 0.08 0.085 0.09 0.095 0.1013 " +
	"0.11 0.12 0.13 0.14 0.15 0.16 0.17 0.18 0.19 0.2 0.21 0.22 0.23 0.24 0.25 0.26 " +
	"0.27 0.28 0.29 0.3 0.31 0.32 0.33 0.34 0.35 0.36 0.37 0.38 0.39 0.4 0.41 0.42 " +
	"0.43 0.44 0.45 0.46 0.47 0.48 0.49 0.5 0.51 0.52 0.53 0.54 0.55 0.56 0.57 0.58" + "]"

const cdipW = "[" +
	"0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.005 0.0075 " +
	"0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 " +
	"0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 " +
	"0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01 0.01" + "]"

const cdipS1 = "[" +
	"0.0004 0.0017 0.013 0.0361 0.0204 0.035 0.0461 0.0392 0.2386 0.9205 1.1131 5.0642 13.426 12.3938 10.9923 5.5968 " +
	"6.2164 6.2164 4.167 2.0901 1.8261 1.6196 1.1998 1.2241 0.7844 0.8124 0.6752 0.7387 0.5285 0.5206 0.4199 0.2745 " +
	"0.1925 0.2181 0.2138 0.2293 0.1246 0.1179 0.0965 0.1062 0.0705 0.0946 0.0891 0.1127 0.081 0.0852 0.0806 0.0432 " +
	"0.0494 0.0522 0.0294 0.031 0.032 0.0306 0.0291 0.0222 0.022 0.0184 0.0263 0.0214 0.0198 0.018 0.016 0.0127" + "]"

const cdipS6 = "[" +
	"0.0 0.0 0.0002 0.0009 0.0011 0.0009 0.0033 0.0063 0.0098 0.0281 0.0377 0.0887 0.1514 0.3173 0.2363 0.3189 " +
	"0.6264 0.8756 0.584 0.3915 0.2611 0.1759 0.1716 0.1768 0.0712 0.1831 0.2236 0.3724 0.2959 0.2664 0.1822 0.1733 " +
	"0.115 0.1221 0.0783 0.0484 0.0583 0.0454 0.044 0.0411 0.0398 0.0348 0.0346 0.0297 0.0289 0.0207 0.016 0.0095 " +
	"0.0154 0.0185 0.0121 0.012 0.0142 0.0102 0.0079 0.0077 0.0081 0.0108 0.0081 0.0064 0.0058 0.0044 0.0041 0.0035" + "]"

const (
	cdip1 = "f=" + cdipF + ", w=" + cdipW + ", s=" + cdipS1
	cdip6 = "f=" + cdipF + ", w=" + cdipW + ", s=" + cdipS6
)

// The record of station 41010 of 8 June 2020, 03:50 UTC, realtime form, with the middles that it rounds to three decimals.

const station41010F = "[" +
	"0.0325 0.0375 0.0425 0.0475 0.0525 0.0575 0.0625 0.0675 0.0725 0.0775 0.0825 0.0875 0.0925 0.1 0.11 0.12 " +
	"0.13 0.14 0.15 0.16 0.17 0.18 0.19 0.2 0.21 0.22 0.23 0.24 0.25 0.26 0.27 0.28 " +
	"0.29 0.3 0.31 0.32 0.33 0.34 0.35 0.365 0.385 0.405 0.425 0.445 0.465 0.485" + "]"

const station41010S = "[" +
	"0.0 0.0 0.0 0.0 0.0 0.0 0.06 0.218 0.23 0.073 0.036 0.036 0.024 0.06 0.097 0.278 " +
	"0.508 0.641 0.339 0.29 0.581 1.21 0.786 0.484 0.29 0.315 0.23 0.169 0.157 0.121 0.121 0.121 " +
	"0.085 0.097 0.109 0.06 0.097 0.036 0.06 0.036 0.024 0.012 0.0 0.0 0.0 0.0" + "]"

const station41010 = "f=" + station41010F + ", s=" + station41010S + ", w=[]"

const sums = "the source prints all digits of a double; sums of 64 terms differ in the last"

var spectrumStatsChecks = []reference.Check{
	{ID: "moment-minus1-cdip1", Subject: "spectrum.Bins.MomentWithin", In: "n=-1, " + cdip1, Printed: "5.169982057500585", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-13, Why: sums},
	{ID: "moment-m0-cdip1", Subject: "spectrum.Bins.MomentWithin", In: "n=0, " + cdip1, Printed: "0.5806779999999999", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-14, Why: sums},
	{ID: "moment-m1-cdip1", Subject: "spectrum.Bins.MomentWithin", In: "n=1, " + cdip1, Printed: "0.07474885130000003", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-15, Why: sums},
	{ID: "moment-m2-cdip1", Subject: "spectrum.Bins.MomentWithin", In: "n=2, " + cdip1, Printed: "0.011927160536939997", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 2e-16, Why: sums},
	{ID: "moment-m4-cdip1", Subject: "spectrum.Bins.MomentWithin", In: "n=4, " + cdip1, Printed: "0.0007266738027757341", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-17, Why: sums},
	{ID: "height-cdip1", Subject: "spectrum.Height", In: "m0=0.5806779999999999", Printed: "3.0480892375388224", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1"},
	{ID: "energy-period-cdip1", Subject: "spectrum.EnergyPeriod", In: "m-1=5.169982057500585, m0=0.5806779999999999", Printed: "8.903354453760235", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1"},
	{ID: "mean-period-cdip1", Subject: "spectrum.MeanPeriod", In: "m0=0.5806779999999999, m1=0.07474885130000003", Printed: "7.768386937071228", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1"},
	{ID: "zero-crossing-period-cdip1", Subject: "spectrum.ZeroCrossingPeriod", In: "m0=0.5806779999999999, m2=0.011927160536939997", Printed: "6.977488891923467", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1"},
	{ID: "peak-period-cdip1", Subject: "spectrum.Bins.PeakFrequency", In: cdip1, Result: "tp", Printed: "11.76470588235294", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1"},
	{ID: "energy-narrowness-cdip1", Subject: "spectrum.EnergyNarrowness", In: cdip1, Printed: "0.3002076133838555", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-13, Why: sums},
	{ID: "describe-hm0-cdip1", Subject: "spectrum.Describe", In: cdip1, Result: "hm0", Printed: "3.0480892375388224", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-12, Why: sums},
	{ID: "describe-te-cdip1", Subject: "spectrum.Describe", In: cdip1, Result: "te", Printed: "8.903354453760235", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-12, Why: sums},
	{ID: "describe-tm01-cdip1", Subject: "spectrum.Describe", In: cdip1, Result: "tm01", Printed: "7.768386937071228", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-12, Why: sums},
	{ID: "describe-tz-cdip1", Subject: "spectrum.Describe", In: cdip1, Result: "tz", Printed: "6.977488891923467", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-12, Why: sums},
	{ID: "describe-tp-cdip1", Subject: "spectrum.Describe", In: cdip1, Result: "tp", Printed: "11.76470588235294", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 1e-12, Why: sums},
	{ID: "energy-flux-cdip1-h10-rho1000", Subject: "spectrum.EnergyFlux", In: cdip1 + ", depth=10 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "40851.24040280775", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 4e-04, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip1-h10-rho1025", Subject: "spectrum.EnergyFlux", In: cdip1 + ", depth=10 m, gravity=9.81 m/s2, density=1025 kg/m3", Printed: "41872.52141216117", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 4e-04, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip1-h50-rho1000", Subject: "spectrum.EnergyFlux", In: cdip1 + ", depth=50 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "43240.239766893814", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 4e-04, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip1-h100-rho1000", Subject: "spectrum.EnergyFlux", In: cdip1 + ", depth=100 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "40145.56853331162", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 4e-04, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip1-h1000-rho1000", Subject: "spectrum.EnergyFlux", In: cdip1 + ", depth=1000 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "39592.95333238378", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP1", Tol: 4e-04, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "moment-minus1-cdip6", Subject: "spectrum.Bins.MomentWithin", In: "n=-1, " + cdip6, Printed: "0.4316522458868578", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 9e-15, Why: sums},
	{ID: "moment-m0-cdip6", Subject: "spectrum.Bins.MomentWithin", In: "n=0, " + cdip6, Printed: "0.06626974999999996", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-15, Why: sums},
	{ID: "moment-m1-cdip6", Subject: "spectrum.Bins.MomentWithin", In: "n=1, " + cdip6, Printed: "0.012141639274999996", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 2e-16, Why: sums},
	{ID: "moment-m2-cdip6", Subject: "spectrum.Bins.MomentWithin", In: "n=2, " + cdip6, Printed: "0.0027124273220575", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 5e-17, Why: sums},
	{ID: "moment-m4-cdip6", Subject: "spectrum.Bins.MomentWithin", In: "n=4, " + cdip6, Printed: "0.00023653885935152598", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 5e-18, Why: sums},
	{ID: "height-cdip6", Subject: "spectrum.Height", In: "m0=0.06626974999999996", Printed: "1.0297164658293074", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6"},
	{ID: "energy-period-cdip6", Subject: "spectrum.EnergyPeriod", In: "m-1=0.4316522458868578, m0=0.06626974999999996", Printed: "6.513563818889585", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6"},
	{ID: "mean-period-cdip6", Subject: "spectrum.MeanPeriod", In: "m0=0.06626974999999996, m1=0.012141639274999996", Printed: "5.458056239279929", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6"},
	{ID: "zero-crossing-period-cdip6", Subject: "spectrum.ZeroCrossingPeriod", In: "m0=0.06626974999999996, m2=0.0027124273220575", Printed: "4.942863427294072", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6"},
	{ID: "peak-period-cdip6", Subject: "spectrum.Bins.PeakFrequency", In: cdip6, Result: "tp", Printed: "8.333333333333334", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6"},
	{ID: "energy-narrowness-cdip6", Subject: "spectrum.EnergyNarrowness", In: cdip6, Printed: "0.3883905597689478", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-13, Why: sums},
	{ID: "describe-hm0-cdip6", Subject: "spectrum.Describe", In: cdip6, Result: "hm0", Printed: "1.0297164658293074", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-12, Why: sums},
	{ID: "describe-te-cdip6", Subject: "spectrum.Describe", In: cdip6, Result: "te", Printed: "6.513563818889585", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-12, Why: sums},
	{ID: "describe-tm01-cdip6", Subject: "spectrum.Describe", In: cdip6, Result: "tm01", Printed: "5.458056239279929", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-12, Why: sums},
	{ID: "describe-tz-cdip6", Subject: "spectrum.Describe", In: cdip6, Result: "tz", Printed: "4.942863427294072", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-12, Why: sums},
	{ID: "describe-tp-cdip6", Subject: "spectrum.Describe", In: cdip6, Result: "tp", Printed: "8.333333333333334", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 1e-12, Why: sums},
	{ID: "energy-flux-cdip6-h10-rho1000", Subject: "spectrum.EnergyFlux", In: cdip6 + ", depth=10 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "3628.4719681223546", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 4e-05, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip6-h10-rho1025", Subject: "spectrum.EnergyFlux", In: cdip6 + ", depth=10 m, gravity=9.81 m/s2, density=1025 kg/m3", Printed: "3719.1837671226363", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 4e-05, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip6-h50-rho1000", Subject: "spectrum.EnergyFlux", In: cdip6 + ", depth=50 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "3426.3789399473603", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 3e-05, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip6-h100-rho1000", Subject: "spectrum.EnergyFlux", In: cdip6 + ", depth=100 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "3318.9753116060792", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 3e-05, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "energy-flux-cdip6-h1000-rho1000", Subject: "spectrum.EnergyFlux", In: cdip6 + ", depth=1000 m, gravity=9.81 m/s2, density=1000 kg/m3", Printed: "3305.6905009838706", Basis: reference.Printed, Source: "MHKiT", Locator: "ValData2_CDiP, CDiP6", Tol: 3e-05, Why: "the source solves the dispersion relation to about nine digits"},
	{ID: "describe-tm01-wafo", Subject: "spectrum.DescribeWithin", In: "hs=5 m, tp=11 s, hi=3 rad/s", Result: "tm01", Printed: "8.59007646", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_characteristic", Tol: 6e-6, Why: "the source integrates by Simpson, here it is the trapezoid"},
	{ID: "describe-tz-wafo", Subject: "spectrum.DescribeWithin", In: "hs=5 m, tp=11 s, hi=3 rad/s", Result: "tz", Printed: "8.03139757", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_characteristic", Tol: 6e-6, Why: "the source integrates by Simpson, here it is the trapezoid"},
	{ID: "describe-tm24-wafo", Subject: "spectrum.DescribeWithin", In: "hs=5 m, tp=11 s, hi=3 rad/s", Result: "tm24", Printed: "5.62484314", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_characteristic", Tol: 6e-6, Why: "the source integrates by Simpson, here it is the trapezoid"},
	{ID: "irregularity-wafo", Subject: "spectrum.Irregularity", In: "hs=3 m, tp=7 s, hi=4 rad/s", Printed: "0.73062845", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 1e-6, Why: "the source promises six decimals; it integrates 256 points by Simpson, here 257 by the trapezoid"},
	{ID: "describe-irregularity-wafo", Subject: "spectrum.DescribeWithin", In: "hs=3 m, tp=7 s, hi=4 rad/s", Result: "irregularity", Printed: "0.73062845", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 1e-6, Why: "the source promises six decimals; it integrates 256 points by Simpson, here 257 by the trapezoid"},
	{ID: "narrowness-wafo", Subject: "spectrum.Narrowness", In: "hs=3 m, tp=7 s, hi=4 rad/s", Printed: "0.34476034", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 1e-6, Why: "the source promises six decimals; it integrates 256 points by Simpson, here 257 by the trapezoid"},
	{ID: "describe-narrowness-wafo", Subject: "spectrum.DescribeWithin", In: "hs=3 m, tp=7 s, hi=4 rad/s", Result: "narrowness", Printed: "0.34476034", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 1e-6, Why: "the source promises six decimals; it integrates 256 points by Simpson, here 257 by the trapezoid"},
	{ID: "broadness-wafo", Subject: "spectrum.Broadness", In: "hs=3 m, tp=7 s, hi=4 rad/s", Printed: "0.68277527", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 1e-6, Why: "the source promises six decimals; it integrates 256 points by Simpson, here 257 by the trapezoid"},
	{ID: "describe-broadness-wafo", Subject: "spectrum.DescribeWithin", In: "hs=3 m, tp=7 s, hi=4 rad/s", Result: "broadness", Printed: "0.68277527", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 1e-6, Why: "the source promises six decimals; it integrates 256 points by Simpson, here 257 by the trapezoid"},
	{ID: "peakedness-wafo", Subject: "spectrum.DescribeWithin", In: "hs=3 m, tp=7 s, hi=4 rad/s", Result: "peakedness", Printed: "2.90817052", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_bandwidth", Tol: 2e-4, Why: "the source has 256 points, here 257, and S squared is sharp at the peak"},
	{ID: "peakedness-risen-sea", Subject: "spectrum.Peakedness", In: "hs=2 m, tp=8 s, gamma=1, lo=0, hi=+Inf", Printed: "2", Basis: reference.Exact, Note: "of the Bretschneider spectrum, in closed form"},
	{ID: "peakedness-goda", Subject: "spectrum.Peakedness", In: "hs=2 m, tp=8 s, gamma=3.3, lo=0, hi=+Inf", Printed: "3.143206", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated"},
	{ID: "m0-wafo-points", Subject: "spectrum.Points.MomentWithin", In: "n=0, hs=5 m, tp=11 s, hi=3 rad/s", Printed: "1.5614600345", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_moment", Tol: 1.6e-3, Why: wafoLoose},
	{ID: "m2-wafo-points", Subject: "spectrum.Points.MomentWithin", In: "n=2, hs=5 m, tp=11 s, hi=3 rad/s", Printed: "0.0242073", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_moment", Tol: 2.5e-5, Why: wafoLoose, Note: "printed 0.9556708948 (rad/s)^2 m^2, divided by 4 pi^2"},
	{ID: "significant-steepness-wafo", Subject: "spectrum.SpectralSteepness", In: "height=4.99833578 m, period=8.03139757 s, gravity=9.81 m/s2", Printed: "0.04963112", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_characteristic"},
	{ID: "steepness-spectrum-wafo", Subject: "spectrum.SteepnessSpectrum", In: "hs=5 m, tp=11 s, frequency=0, highest=3 rad/s, gravity=9.81 m/s2", Printed: "0.04963112", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_characteristic", Tol: 3e-5, Why: wafoLoose},
	{ID: "crest-period", Subject: "spectrum.CrestPeriod", In: "m2=4, m4=1", Printed: "2", Basis: reference.Exact},
	{ID: "crest-period-ripples", Subject: "spectrum.CrestPeriod", In: "m2=4, m4=+Inf", Printed: "0", Basis: reference.Exact},
	{ID: "tp-tz-risen-wafo", Subject: "spectrum.PeriodRatios", In: "gamma=1", Result: "tp/tz", Printed: "1.408", Basis: reference.Printed, Source: "WAFO", Locator: "models, Bretschneider"},
	{ID: "tm01-tz-risen-wafo", Subject: "spectrum.PeriodRatios", In: "gamma=1", Result: "tm01/tz", Printed: "1.086", Basis: reference.Printed, Source: "WAFO", Locator: "models, Bretschneider", Note: "the same text has Tp = 1.2965 Tm01, which is not 1.408/1.086 = 1.2965 either way: the exact ratio is 1.2957"},
	{ID: "tz-tp-risen", Subject: "spectrum.PeriodRatios", In: "gamma=1", Result: "tz", Printed: "0.710370680986", Basis: reference.Exact, Tol: 4.3e-12, Why: "given to 12 digits", Note: "(4/5 pi)^(1/4)"},
	{ID: "tm01-tp-risen", Subject: "spectrum.PeriodRatios", In: "gamma=1", Result: "tm01", Printed: "0.771771436688", Basis: reference.Exact, Tol: 4.6e-12, Why: "given to 12 digits"},
	{ID: "te-tp-risen", Subject: "spectrum.PeriodRatios", In: "gamma=1", Result: "te", Printed: "0.857222537055", Basis: reference.Exact, Tol: 5.1e-12, Why: "given to 12 digits"},
	{ID: "tz-tp-gamma2", Subject: "spectrum.PeriodRatios", In: "gamma=2", Result: "tz", Printed: "0.7464361", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "tm01-tp-gamma2", Subject: "spectrum.PeriodRatios", In: "gamma=2", Result: "tm01", Printed: "0.8062956", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "te-tp-gamma2", Subject: "spectrum.PeriodRatios", In: "gamma=2", Result: "te", Printed: "0.8835391", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "tz-tp-gamma3-3", Subject: "spectrum.PeriodRatios", In: "gamma=3.3", Result: "tz", Printed: "0.7773992", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "tm01-tp-gamma3-3", Subject: "spectrum.PeriodRatios", In: "gamma=3.3", Result: "tm01", Printed: "0.8343280", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "te-tp-gamma3-3", Subject: "spectrum.PeriodRatios", In: "gamma=3.3", Result: "te", Printed: "0.9032959", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "tz-tp-gamma7", Subject: "spectrum.PeriodRatios", In: "gamma=7", Result: "tz", Printed: "0.8284977", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "tm01-tp-gamma7", Subject: "spectrum.PeriodRatios", In: "gamma=7", Result: "tm01", Printed: "0.8774750", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "te-tp-gamma7", Subject: "spectrum.PeriodRatios", In: "gamma=7", Result: "te", Printed: "0.9312344", Basis: reference.Computed, Source: "Hasselmann1973", Locator: "Eq. 2.4.1, integrated", Tol: 2e-7, Why: "our own earlier quadrature"},
	{ID: "te-fit-gamma1", Subject: "spectrum.TeOverTpFit", In: "gamma=1", Printed: "0.8587984", Basis: reference.Exact, Tol: 5.2e-12, Why: "given to 12 digits", Note: "the sum of the coefficients that MHKiT prints"},
	{ID: "te-fit-gamma5", Subject: "spectrum.TeOverTpFit", In: "gamma=5", Printed: "0.9191", Basis: reference.Printed, Source: "MHKiT", Locator: "energy_period_to_peak_period", Note: "the value of the printed cubic at 5"},
	{ID: "tz-fit-gamma1", Subject: "spectrum.TzOverTpFit", In: "gamma=1", Printed: "0.7118", Basis: reference.Memory, Source: "DNV-C205", Locator: "sec. 3.5.5"},
	{ID: "tz-fit-gamma3-3", Subject: "spectrum.TzOverTpFit", In: "gamma=3.3", Printed: "0.7777", Basis: reference.Memory, Source: "DNV-C205", Locator: "sec. 3.5.5"},
	{ID: "tm01-fit-gamma1", Subject: "spectrum.Tm01OverTpFit", In: "gamma=1", Printed: "0.7735", Basis: reference.Memory, Source: "DNV-C205", Locator: "sec. 3.5.5"},
	{ID: "tm01-fit-gamma3-3", Subject: "spectrum.Tm01OverTpFit", In: "gamma=3.3", Printed: "0.8348", Basis: reference.Memory, Source: "DNV-C205", Locator: "sec. 3.5.5"},
	{ID: "gamma-steepness-crate", Subject: "spectrum.GammaFromSteepness", In: "hs=2.5 m, tp=7 s", Printed: "1.932", Basis: reference.Printed, Source: "jonswap-crate", Locator: "README, example"},
	{ID: "gamma-steep", Subject: "spectrum.GammaFromSteepness", In: "hs=4 m, tp=7 s", Printed: "5", Basis: reference.Exact},
	{ID: "gamma-flat", Subject: "spectrum.GammaFromSteepness", In: "hs=1 m, tp=5 s", Printed: "1", Basis: reference.Exact},
	{ID: "gamma-north-sea-cap", Subject: "spectrum.GammaNorthSea", In: "hs=4 m, tp=4 s", Printed: "7", Basis: reference.Printed, Source: "WAFO", Locator: "models, jonswap_peakfact: limited to 1..7"},
	{ID: "gamma-north-sea-flat", Subject: "spectrum.GammaNorthSea", In: "hs=1 m, tp=6 s", Printed: "1", Basis: reference.Exact},
	{ID: "gamma-north-sea-5-11", Subject: "spectrum.GammaNorthSea", In: "hs=5 m, tp=11 s", Printed: "1.0813562", Basis: reference.Computed, Source: "WAFO", Locator: "models, jonswap_peakfact, recomputed from the formula"},
	{ID: "width-buoy-band", Subject: "spectrum.BandWidths", In: "f=[0.445 0.465 0.485] Hz", Printed: "0.02", Basis: reference.Table, Source: "NDBC1996", Locator: "table of bandwidths"},
	{ID: "width-buoy-band-low", Subject: "spectrum.BandWidths", In: "f=[0.0325 0.0375 0.0425] Hz", Printed: "0.005", Basis: reference.Table, Source: "NDBC1996", Locator: "table of bandwidths"},
	{ID: "width-half-way", Subject: "spectrum.BandWidths", In: "f=[0.1 0.2 0.4] Hz", Printed: "0.2", Basis: reference.Exact},
	{ID: "width-one", Subject: "spectrum.BandWidths", In: "f=[0.1] Hz", Printed: "0.1", Basis: reference.Exact},
	{ID: "cos2s-wafo-0", Subject: "spectrum.Cos2s.Spread", In: "s=15, offset=0.0 rad", Printed: "1.10168934", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_cos2s"},
	{ID: "cos2s-wafo-1", Subject: "spectrum.Cos2s.Spread", In: "s=15, offset=0.1282282715750936 rad", Printed: "1.03576796", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_cos2s"},
	{ID: "cos2s-wafo-2", Subject: "spectrum.Cos2s.Spread", In: "s=15, offset=0.2564565431501872 rad", Printed: "0.860302298", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_cos2s"},
	{ID: "cos2s-wafo-3", Subject: "spectrum.Cos2s.Spread", In: "s=15, offset=0.5129130863003744 rad", Printed: "0.406280137", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_cos2s"},
	{ID: "cos2s-xdyn-s3", Subject: "spectrum.Cos2s.Spread", In: "s=3, offset=15 deg", Printed: "0.4837060362282", Basis: reference.Printed, Source: "xdyn", Locator: "Cos2sDirectionalSpreadingTest, example", Note: "printed as a closed expression, made with a computer algebra system"},
	{ID: "cos2s-xdyn-s4", Subject: "spectrum.Cos2s.Spread", In: "s=4, offset=15 deg", Printed: "0.5433886794016", Basis: reference.Printed, Source: "xdyn", Locator: "Cos2sDirectionalSpreadingTest, example", Note: "printed as a closed expression, made with a computer algebra system"},
	{ID: "cos2s-xdyn-s5", Subject: "spectrum.Cos2s.Spread", In: "s=5, offset=15 deg", Printed: "0.5934787991938", Basis: reference.Printed, Source: "xdyn", Locator: "Cos2sDirectionalSpreadingTest, example", Note: "printed as a closed expression, made with a computer algebra system"},
	{ID: "cos2s-xdyn-s1", Subject: "spectrum.Cos2s.Spread", In: "s=1, offset=6 deg", Printed: "0.3174380187529", Basis: reference.Printed, Source: "xdyn", Locator: "Cos2sDirectionalSpreadingTest, example", Note: "printed as a closed expression, made with a computer algebra system"},
	{ID: "cos2s-xdyn-s2", Subject: "spectrum.Cos2s.Spread", In: "s=2, offset=6 deg", Printed: "0.4220913858833", Basis: reference.Printed, Source: "xdyn", Locator: "Cos2sDirectionalSpreadingTest, example", Note: "printed as a closed expression, made with a computer algebra system"},
	{ID: "cos2s-norm-wafo", Subject: "spectrum.Cos2sNorm", In: "s=15", Printed: "1.10168934", Basis: reference.Printed, Source: "WAFO", Locator: "test_models, test_cos2s"},
	{ID: "cos2s-norm-s1", Subject: "spectrum.Cos2sNorm", In: "s=1", Printed: "0.318309886184", Basis: reference.Exact, Tol: 1.9e-12, Why: "given to 12 digits"},
	{ID: "cos2s-norm-s0", Subject: "spectrum.Cos2sNorm", In: "s=0", Printed: "0.159154943092", Basis: reference.Exact, Tol: 9.5e-13, Why: "given to 12 digits"},
	{ID: "cos2s-norm-s10", Subject: "spectrum.Cos2sNorm", In: "s=10", Printed: "0.903278127", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-norm-s25", Subject: "spectrum.Cos2sNorm", In: "s=25", Printed: "1.41754352", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-norm-s75", Subject: "spectrum.Cos2sNorm", In: "s=75", Printed: "2.44708761", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-22-s10", Subject: "spectrum.Cos2sWithin", In: "s=10, half=22.5 deg", Printed: "0.6276388", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-30-s10", Subject: "spectrum.Cos2sWithin", In: "s=10, half=30 deg", Printed: "0.7669288", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-22-s25", Subject: "spectrum.Cos2sWithin", In: "s=25, half=22.5 deg", Printed: "0.8384581", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-30-s25", Subject: "spectrum.Cos2sWithin", In: "s=25, half=30 deg", Printed: "0.9387002", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-22-s75", Subject: "spectrum.Cos2sWithin", In: "s=75, half=22.5 deg", Printed: "0.9843343", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-30-s75", Subject: "spectrum.Cos2sWithin", In: "s=75, half=30 deg", Printed: "0.9987638", Basis: reference.Computed, Source: "Mitsuyasu1975", Locator: "form of the spreading"},
	{ID: "cos2s-within-s1", Subject: "spectrum.Cos2sWithin", In: "s=1, half=90 deg", Printed: "0.818309886184", Basis: reference.Exact, Tol: 4.9e-12, Why: "given to 12 digits"},
	{ID: "cos2s-within-all", Subject: "spectrum.Cos2sWithin", In: "s=7, half=180 deg", Printed: "1", Basis: reference.Exact},
	{ID: "cos2s-width-s1", Subject: "spectrum.Cos2sWidth", In: "s=1", Printed: "57.2957795131", Basis: reference.Exact, Tol: 3.4e-10, Why: "given to 12 digits", Note: "one radian"},
	{ID: "cos2s-from-width", Subject: "spectrum.Cos2sFromWidth", In: "width=1 rad", Printed: "1", Basis: reference.Exact},
	{ID: "circular-width-half", Subject: "spectrum.CircularWidth", In: "r1=0.5", Printed: "57.2957795131", Basis: reference.Exact, Tol: 3.4e-10, Why: "given to 12 digits"},
	{ID: "circular-width-none", Subject: "spectrum.CircularWidth", In: "r1=1", Printed: "0", Basis: reference.Exact},
	{ID: "cos2s-r1-s3", Subject: "spectrum.Cos2sFourier", In: "s=3", Result: "r1", Printed: "3/4", Basis: reference.Exact},
	{ID: "cos2s-r2-s3", Subject: "spectrum.Cos2sFourier", In: "s=3", Result: "r2", Printed: "3/10", Basis: reference.Exact},
	{ID: "cos2s-r2-s1", Subject: "spectrum.Cos2sFourier", In: "s=1", Result: "r2", Printed: "0", Basis: reference.Exact},
	{ID: "cosn-two", Subject: "spectrum.CosN.Spread", In: "power=2, offset=0 deg", Printed: "0.636619772368", Basis: reference.Exact, Tol: 3.8e-12, Why: "given to 12 digits", Note: "2/pi, the norm of cos squared"},
	{ID: "cosn-two-60", Subject: "spectrum.CosN.Spread", In: "power=2, offset=60 deg", Printed: "0.159154943092", Basis: reference.Exact, Tol: 9.5e-13, Why: "given to 12 digits"},
	{ID: "cosn-back", Subject: "spectrum.CosN.Spread", In: "power=2, offset=120 deg", Printed: "0", Basis: reference.Exact},
	{ID: "cosn-width-1", Subject: "spectrum.CosNWidth", In: "power=1", Printed: "37.536549440", Basis: reference.Exact, Tol: 1e-9, Why: "given to ten digits", Note: "r1 is pi/4: sqrt(2 - pi/2) radians"},
	{ID: "cosn-width-swan-1", Subject: "spectrum.CosNWidth", In: "power=1", Printed: "37.5", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-2", Subject: "spectrum.CosNWidth", In: "power=2", Printed: "31.5", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-3", Subject: "spectrum.CosNWidth", In: "power=3", Printed: "27.6", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-4", Subject: "spectrum.CosNWidth", In: "power=4", Printed: "24.9", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-5", Subject: "spectrum.CosNWidth", In: "power=5", Printed: "22.9", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-6", Subject: "spectrum.CosNWidth", In: "power=6", Printed: "21.2", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-7", Subject: "spectrum.CosNWidth", In: "power=7", Printed: "19.9", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-8", Subject: "spectrum.CosNWidth", In: "power=8", Printed: "18.8", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-9", Subject: "spectrum.CosNWidth", In: "power=9", Printed: "17.9", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-10", Subject: "spectrum.CosNWidth", In: "power=10", Printed: "17.1", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-15", Subject: "spectrum.CosNWidth", In: "power=15", Printed: "14.2", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-20", Subject: "spectrum.CosNWidth", In: "power=20", Printed: "12.4", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "cosn-width-swan-30", Subject: "spectrum.CosNWidth", In: "power=30", Printed: "10.2", Basis: reference.Memory, Source: "SWAN", Locator: "user manual, appendix of definitions, directional spreading"},
	{ID: "smax-aces-10", Subject: "spectrum.GodaSpread.S", In: "frequency=0.1, smax=10, fp=0.1", Printed: "10", Basis: reference.Table, Source: "ACES1992", Locator: "Irregular Wave Transformation, p. 3-2-3", Note: "wind waves 10, steep swell 25, flat swell 75"},
	{ID: "smax-aces-25", Subject: "spectrum.GodaSpread.S", In: "frequency=0.1, smax=25, fp=0.1", Printed: "25", Basis: reference.Table, Source: "ACES1992", Locator: "Irregular Wave Transformation, p. 3-2-3", Note: "wind waves 10, steep swell 25, flat swell 75"},
	{ID: "smax-aces-75", Subject: "spectrum.GodaSpread.S", In: "frequency=0.1, smax=75, fp=0.1", Printed: "75", Basis: reference.Table, Source: "ACES1992", Locator: "Irregular Wave Transformation, p. 3-2-3", Note: "wind waves 10, steep swell 25, flat swell 75"},
	{ID: "s-below-peak", Subject: "spectrum.GodaSpread.S", In: "frequency=0.05, smax=32, fp=0.1", Printed: "1", Basis: reference.Exact},
	{ID: "s-above-peak", Subject: "spectrum.GodaSpread.S", In: "frequency=0.4, smax=32, fp=0.1", Printed: "1", Basis: reference.Exact},
	{ID: "smax-wind", Subject: "spectrum.SMaxFromWind", In: "speed=9.80665 m/s, fp=1 rad/s", Printed: "11.5", Basis: reference.Printed, Source: "Goda2010Book", Locator: "Eq. 2.26", Note: "the coefficient, at 2 pi fp U/g = 1"},
	{ID: "envelope-of-a-band", Subject: "spectrum.EnvelopeCorrelation", In: "band=0.05, lag=10 s", Printed: "0.636619772368", Basis: reference.Exact, Tol: 3.8e-12, Why: "given to 12 digits", Note: "sin x/x at a quarter turn"},
	{ID: "envelope-of-a-band-zero", Subject: "spectrum.EnvelopeCorrelation", In: "band=0.05, lag=0 s", Printed: "1", Basis: reference.Exact},
	{ID: "autocovariance-wafo-0", Subject: "spectrum.Autocovariance", In: "hs=7 m, tp=11 s, lag=0.0 s", Printed: "3.06090339", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_tocovdata", Tol: 4e-3, Why: "the source stops at 3 rad/s and normalises over 0 to 6 fp; here is the whole tail"},
	{ID: "autocovariance-wafo-1", Subject: "spectrum.Autocovariance", In: "hs=7 m, tp=11 s, lag=1.0471975511965976 s", Printed: "2.22658399", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_tocovdata", Tol: 4e-3, Why: "the source stops at 3 rad/s and normalises over 0 to 6 fp; here is the whole tail"},
	{ID: "autocovariance-wafo-2", Subject: "spectrum.Autocovariance", In: "hs=7 m, tp=11 s, lag=2.0943951023931953 s", Printed: "0.45307391", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_tocovdata", Tol: 4e-3, Why: "the source stops at 3 rad/s and normalises over 0 to 6 fp; here is the whole tail"},
	{ID: "autocovariance-wafo-3", Subject: "spectrum.Autocovariance", In: "hs=7 m, tp=11 s, lag=3.141592653589793 s", Printed: "-1.17495501", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_tocovdata", Tol: 4e-3, Why: "the source stops at 3 rad/s and normalises over 0 to 6 fp; here is the whole tail"},
	{ID: "autocovariance-wafo-4", Subject: "spectrum.Autocovariance", In: "hs=7 m, tp=11 s, lag=4.1887902047863905 s", Printed: "-2.05649042", Basis: reference.Printed, Source: "WAFO", Locator: "test_specdata1d, test_tocovdata", Tol: 4e-3, Why: "the source stops at 3 rad/s and normalises over 0 to 6 fp; here is the whole tail"},
	{ID: "joint-at-its-mode", Subject: "spectrum.Joint.Density", In: "height=0.65877925363933966, period=0.86798021005121083, nu=0.39", Printed: "1.79556725999", Basis: reference.Exact, Tol: 1.1e-11, Why: "given to 12 digits"},
	{ID: "joint-mean-period", Subject: "spectrum.Joint.PeriodDensity", In: "period=1, nu=0.39", Printed: "1.32741258385", Basis: reference.Exact, Tol: 8.0e-12, Why: "given to 12 digits"},
	{ID: "joint-below-mean", Subject: "spectrum.Joint.PeriodBelow", In: "period=1, nu=0.39", Printed: "0.517690907702", Basis: reference.Exact, Tol: 3.1e-12, Why: "given to 12 digits"},
	{ID: "joint-below-all", Subject: "spectrum.Joint.PeriodBelow", In: "period=+Inf, nu=0.39", Printed: "1", Basis: reference.Exact},
	{ID: "joint-heights", Subject: "spectrum.Joint.HeightDensity", In: "height=0.5, nu=0.39", Printed: "1.24948550747", Basis: reference.Exact, Tol: 7.5e-12, Why: "given to 12 digits"},
	{ID: "joint-mode-height", Subject: "spectrum.Joint.Mode", In: "nu=1", Result: "height", Printed: "1/2", Basis: reference.Exact},
	{ID: "joint-mode-period", Subject: "spectrum.Joint.Mode", In: "nu=1", Result: "period", Printed: "1/2", Basis: reference.Exact},
	{ID: "separate-41010-swh", Subject: "spectrum.Separate", In: station41010 + ", frequency=0.225", Result: "swell", Printed: "1.0", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, 8 June 2020 03:50, data_spec and spec, SwH"},
	{ID: "separate-41010-swp", Subject: "spectrum.Separate", In: station41010 + ", frequency=0.225", Result: "swell tp", Printed: "5.6", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, 8 June 2020 03:50, data_spec and spec, SwP"},
	{ID: "separate-41010-wwh", Subject: "spectrum.Separate", In: station41010 + ", frequency=0.225", Result: "sea", Printed: "0.5", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, 8 June 2020 03:50, data_spec and spec, WWH"},
	{ID: "describe-41010-hm0", Subject: "spectrum.Describe", In: station41010, Result: "hm0", Printed: "1.1", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, 8 June 2020 03:50, data_spec and spec, WVHT"},
	{ID: "describe-41010-tz", Subject: "spectrum.Describe", In: station41010, Result: "tz", Printed: "4.9", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, 8 June 2020 03:50, data_spec and spec, APD", Tol: 0.15, Why: "the buoy sums its spectrum before rounding and over its own bands"},
	{ID: "separation-by-hand", Subject: "spectrum.SeparationBySteepness", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1]", Printed: "0.15", Basis: reference.Exact, Note: "xi is 0.0261, 0.0279 and 0.0201 times 8 pi/g from the three bands up: 0.75 of the second"},
	{ID: "separation-strong-wind", Subject: "spectrum.SeparationFrequency", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1], wind=20 m/s", Printed: "0.15", Basis: reference.Exact, Note: "xi is 0.0261, 0.0279 and 0.0201 times 8 pi/g from the three bands up: 0.75 of the second"},
	{ID: "separation-calm", Subject: "spectrum.SeparationFrequency", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1], wind=0", Printed: "+Inf", Basis: reference.Exact, Note: "in a calm all is swell"},
	{ID: "separation-wind-5", Subject: "spectrum.SeparationFrequency", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1], wind=5 m/s", Printed: "0.225", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, June 2020, data_spec, Sep_Freq", Note: "the file has no wind; its separation frequencies are 0.9 1.25/U of whole and half m/s, as the algorithm has it"},
	{ID: "separation-wind-6", Subject: "spectrum.SeparationFrequency", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1], wind=6 m/s", Printed: "0.188", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, June 2020, data_spec, Sep_Freq", Note: "the file has no wind; its separation frequencies are 0.9 1.25/U of whole and half m/s, as the algorithm has it"},
	{ID: "separation-wind-7", Subject: "spectrum.SeparationFrequency", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1], wind=7 m/s", Printed: "0.161", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, June 2020, data_spec, Sep_Freq", Note: "the file has no wind; its separation frequencies are 0.9 1.25/U of whole and half m/s, as the algorithm has it"},
	{ID: "separation-wind-4-5", Subject: "spectrum.SeparationFrequency", In: "f=[0.1 0.2 0.3], s=[1 3 0.5], w=[0.1 0.1 0.1], wind=4.5 m/s", Printed: "0.250", Basis: reference.Table, Source: "NDBC-Measurements", Locator: "station 41010, June 2020, data_spec, Sep_Freq", Note: "the file has no wind; its separation frequencies are 0.9 1.25/U of whole and half m/s, as the algorithm has it"},
	{ID: "separation-wave-age", Subject: "spectrum.SeparationByWaveAge", In: "wind=10 m/s, offset=0 deg, age=1.2", Printed: "0.130064735223", Basis: reference.Exact, Tol: 7.8e-13, Why: "given to 12 digits"},
	{ID: "separation-across", Subject: "spectrum.SeparationByWaveAge", In: "wind=10 m/s, offset=90 deg, age=1.2", Printed: "+Inf", Basis: reference.Exact},
	{ID: "risen-ratio", Subject: "spectrum.RisenRatio", In: "density=1, peak=0.1 Hz", Printed: "0.0698330813961", Basis: reference.Exact, Tol: 4.2e-13, Why: "given to 12 digits"},
	{ID: "drift-one-wave", Subject: "spectrum.StokesDrift", In: "hm0=1 m, period=5 s, depth=+Inf m, z=0 m, gravity=9.81 m/s2", Printed: "0.0252854447954", Basis: reference.Exact, Tol: 1.5e-13, Why: "given to 12 digits"},
	{ID: "drift-h1-t5", Subject: "spectrum.StokesDrift", In: "hm0=1.414213562373095 m, period=5 s, depth=+Inf m, z=0 m, gravity=9.81 m/s2", Printed: "0.05057089", Basis: reference.Computed, Source: "Kenyon1969", Locator: "Eq. 9, of one wave of 1 m"},
	{ID: "drift-quarter-length", Subject: "spectrum.StokesDrift", In: "hm0=1 m, period=5 s, depth=+Inf m, z=-9.7581874483218328 m, gravity=9.81 m/s2", Printed: "0.00109268314465", Basis: reference.Exact, Tol: 6.6e-15, Why: "given to 12 digits", Note: "exp(-pi), the 4 % of the textbooks, of the surface value at a quarter of the length"},
	{ID: "drift-shallow-surface", Subject: "spectrum.StokesDrift", In: "hm0=1 m, period=5 s, depth=3 m, z=0 m, gravity=9.81 m/s2", Printed: "0.0683070944897", Basis: reference.Exact, Tol: 4.1e-13, Why: "given to 12 digits"},
	{ID: "drift-shallow-bottom", Subject: "spectrum.StokesDrift", In: "hm0=1 m, period=5 s, depth=3 m, z=-3 m, gravity=9.81 m/s2", Printed: "0.0287207130946", Basis: reference.Exact, Tol: 1.7e-13, Why: "given to 12 digits"},
	{ID: "transport-risen-sea", Subject: "spectrum.StokesTransport", In: "hs=2 m, tp=8 s", Printed: "0.254414106969", Basis: reference.Exact, Tol: 1.5e-12, Why: "given to 12 digits"},
	{ID: "energy-flux-deep", Subject: "spectrum.EnergyFlux", In: "f=[0.2], s=[1], w=[0.0625], depth=+Inf m, gravity=9.81 m/s2, density=1025 kg/m3", Printed: "2453.02535849", Basis: reference.Exact, Tol: 1.5e-08, Why: "given to 12 digits", Note: "rho g^2/64 pi Hm0^2 Te at 1 m and 5 s: 0.4906 kW/m a second"},
	{ID: "directional-ahead", Subject: "spectrum.BuoyRecord.Directional", In: "r1=1, r2=1, from=180 deg", Printed: "0.795774715459", Basis: reference.Exact, Tol: 4.8e-12, Why: "given to 12 digits"},
	{ID: "directional-behind", Subject: "spectrum.BuoyRecord.Directional", In: "r1=1, r2=1, from=0 deg", Printed: "0.159154943092", Basis: reference.Exact, Tol: 9.5e-13, Why: "given to 12 digits"},
	{ID: "directional-positive-ahead", Subject: "spectrum.BuoyRecord.DirectionalPositive", In: "r1=1, r2=1, from=180 deg", Printed: "0.424413181578", Basis: reference.Exact, Tol: 2.5e-12, Why: "given to 12 digits"},
	{ID: "directional-positive-behind", Subject: "spectrum.BuoyRecord.DirectionalPositive", In: "r1=1, r2=1, from=0 deg", Printed: "0", Basis: reference.Exact},
	{ID: "highest-third-by-hand", Subject: "spectrum.Summarise", In: "heights=[1 2 3 4 5 6] m", Result: "third", Printed: "5.5", Basis: reference.Exact},
}
