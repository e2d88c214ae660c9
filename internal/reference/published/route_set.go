package published

import "followingsea.example/internal/reference"

// Rows of the geodesic set, some of every family. The set gives the starting
// azimuth and the distance as exact and the rest to 1e-18 degrees, more than a
// float64 holds, so the tolerances are stated: 15 nanometres of distance, and
// 1e-12 degrees, which is a tenth of a micrometre, of position.
const (
	routeSetNanometres = "15 nm, the accuracy claimed; the print has 0.1 um or finer"
	routeSetDegrees    = "the print has more digits than a float64; 1e-12 deg is 0.1 um"
)

func routeSetInverse(id, in, metres string) reference.Check {
	return reference.Check{ID: "geodesic-set-inverse-" + id, Subject: "route.Inverse", In: in, Result: "distance", Printed: metres,
		Basis: reference.Table, Source: "GeodTest2010", Locator: "short set, row of these coordinates", Tol: 5e-8, Why: routeSetNanometres}
}

func routeSetDirect(id, in, lat, lon string) []reference.Check {
	c := reference.Check{ID: "geodesic-set-direct-lat-" + id, Subject: "route.Direct", In: in, Result: "lat", Printed: lat,
		Basis: reference.Table, Source: "GeodTest2010", Locator: "short set, row of these coordinates", Tol: 1e-12, Why: routeSetDegrees}
	d := c
	d.ID, d.Result, d.Printed = "geodesic-set-direct-lon-"+id, "lon", lon
	return []reference.Check{c, d}
}

var routeGeodesicInverse = []reference.Check{
	routeSetInverse("random-a", "lat1=50.958680696948, lon1=0, lat2=37.136734555440790796, lon2=137.579689427317286971", "9404554.4530286"),
	routeSetInverse("random-b", "lat1=24.989145781774, lon1=0, lat2=45.204973569311541039, lon2=166.416675258436687526", "12110779.3206096"),
	routeSetInverse("random-c", "lat1=36.633253051906, lon1=0, lat2=-8.715954728837426508, lon2=116.308342866330640737", "12930115.4447345"),
	routeSetInverse("nearly-antipodal-a", "lat1=22.838874109451, lon1=0, lat2=-22.520035296731239351, lon2=178.625276306077468239", "19884316.1293837"),
	routeSetInverse("nearly-antipodal-b", "lat1=33.473459007195, lon1=0, lat2=-33.450603511785642345, lon2=179.460273653859561944", "19976586.5177217"),
	routeSetInverse("nearly-antipodal-c", "lat1=12.46606411857, lon1=0, lat2=-12.520014192361495664, lon2=178.73393236435403806", "19898082.7159582"),
	routeSetInverse("nearly-antipodal-d", "lat1=9.178633546182, lon1=0, lat2=-9.572783249183478701, lon2=179.831645781124701483", "19958772.1910909"),
	routeSetInverse("between-vertices-a", "lat1=37.642327604657, lon1=0, lat2=-37.642327604657, lon2=179.521672254586070255", "19982817.927991328007"),
	routeSetInverse("between-vertices-b", "lat1=12.54501538792, lon1=0, lat2=-12.54501538792, lon2=179.410832564197138098", "19971903.5937175724814"),
	routeSetInverse("near-vertices-a", "lat1=70.3034865383, lon1=0, lat2=-70.303486538290174786, lon2=179.796141013669939971", "20000095.5955092"),
	routeSetInverse("near-vertices-b", "lat1=88.82791407707, lon1=0, lat2=-88.827914077130327644, lon2=179.987619865416570664", "20003917.311286"),
	routeSetInverse("opposite-poles-a", "lat1=89.994917518484, lon1=0, lat2=-89.990825787290067869, lon2=100.309845275744178117", "20002852.5404842"),
	routeSetInverse("opposite-poles-b", "lat1=89.995870475283, lon1=0, lat2=-89.989069633011118512, lon2=149.408886140100993946", "20003074.8615377"),
	routeSetInverse("near-pole-a", "lat1=89.997469201423, lon1=0, lat2=84.650690785523774344, lon2=2.29310332777131484", "597185.6669827"),
	routeSetInverse("near-pole-b", "lat1=89.992346802398, lon1=0, lat2=-18.511624889538941913, lon2=63.35517757877645792", "12049192.6467384"),
	routeSetInverse("short-a", "lat1=21.376794645848, lon1=0, lat2=21.377344474563835891, lon2=0.000631011869042738", "89.3788963"),
	routeSetInverse("short-b", "lat1=48.220060900083, lon1=0, lat2=48.218437969435811939, lon2=0.003859932144100145", "338.8738235"),
	routeSetInverse("short-c", "lat1=37.403364602932, lon1=0, lat2=37.398496964246593946, lon2=0.002784409094969758", "593.831105"),
	routeSetInverse("short-d", "lat1=36.790174433959, lon1=0, lat2=36.791935276843210277, lon2=0.001573960019905281", "240.6648148"),
	routeSetInverse("meridional-a", "lat1=73.082000162655, lon1=0, lat2=-32.975042352461534888, lon2=0.001095685339405724", "11762852.4744254"),
	routeSetInverse("meridional-b", "lat1=42.373455632405, lon1=0, lat2=61.620926036560554389, lon2=0.002146465330173371", "2141566.8048018"),
	routeSetInverse("equatorial-a", "lat1=0.004501438708, lon1=0, lat2=0.000806588363093971, lon2=95.349089464621126674", "10614212.0777892"),
	routeSetInverse("equatorial-b", "lat1=0.002438682813, lon1=0, lat2=0.002847867781431887, lon2=32.925776327434318045", "3665280.6510293"),
	routeSetInverse("coastal-a", "lat1=14.087261012142, lon1=0, lat2=23.018904770400882017, lon2=5.066238498996880788", "1123679.3304662"),
	routeSetInverse("coastal-b", "lat1=87.884328266912, lon1=0, lat2=89.783217728496938186, lon2=179.950441937759005018", "260519.9750884"),
	routeSetInverse("coastal-c", "lat1=11.084824914556, lon1=0, lat2=5.99488384892148225, lon2=2.255601193543633081", "615247.7189029"),
}

var routeGeodesicDirect = [][]reference.Check{
	routeSetDirect("random-a", "lat=50.958680696948, lon=0, course=32.673896055247, distance=9404554.4530286", "37.136734555440790796", "137.579689427317286971"),
	routeSetDirect("random-b", "lat=24.989145781774, lon=0, course=10.047671547837, distance=12110779.3206096", "45.204973569311541039", "166.416675258436687526"),
	routeSetDirect("nearly-antipodal-a", "lat=22.838874109451, lon=0, course=68.334643255031, distance=19884316.1293837", "-22.520035296731239351", "178.625276306077468239"),
	routeSetDirect("nearly-antipodal-b", "lat=33.473459007195, lon=0, course=68.775150029629, distance=19976586.5177217", "-33.450603511785642345", "179.460273653859561944"),
	routeSetDirect("between-vertices-a", "lat=37.642327604657, lon=0, course=90, distance=19982817.927991328007", "-37.642327604657", "179.521672254586070255"),
	routeSetDirect("between-vertices-b", "lat=12.54501538792, lon=0, course=90, distance=19971903.5937175724814", "-12.54501538792", "179.410832564197138098"),
	routeSetDirect("near-vertices-a", "lat=70.3034865383, lon=0, course=89.966849117632, distance=20000095.5955092", "-70.303486538290174786", "179.796141013669939971"),
	routeSetDirect("near-vertices-b", "lat=88.82791407707, lon=0, course=90.041228782099, distance=20003917.311286", "-88.827914077130327644", "179.987619865416570664"),
	routeSetDirect("short-a", "lat=21.376794645848, lon=0, course=47.068342969045, distance=89.3788963", "21.377344474563835891", "0.000631011869042738"),
	routeSetDirect("short-b", "lat=48.220060900083, lon=0, course=122.175242099889, distance=338.8738235", "48.218437969435811939", "0.003859932144100145"),
	routeSetDirect("meridional-a", "lat=73.082000162655, lon=0, course=179.999041719156, distance=11762852.4744254", "-32.975042352461534888", "0.001095685339405724"),
	routeSetDirect("meridional-b", "lat=42.373455632405, lon=0, course=0.003104294182, distance=2141566.8048018", "61.620926036560554389", "0.002146465330173371"),
	routeSetDirect("equatorial-a", "lat=0.004501438708, lon=0, course=89.998746750907, distance=10614212.0777892", "0.000806588363093971", "95.349089464621126674"),
	routeSetDirect("equatorial-b", "lat=0.002438682813, lon=0, course=89.998531165807, distance=3665280.6510293", "0.002847867781431887", "32.925776327434318045"),
	routeSetDirect("coastal-a", "lat=14.087261012142, lon=0, course=27.643862201842, distance=1123679.3304662", "23.018904770400882017", "5.066238498996880788"),
	routeSetDirect("coastal-b", "lat=87.884328266912, lon=0, course=0.004607291232, distance=260519.9750884", "89.783217728496938186", "179.950441937759005018"),
}
