"""Random points against independent numerical packages; see .ci/oracles."""
import csv, io, math, random, subprocess, sys, datetime, importlib.metadata as meta
import mpmath as mp
from scipy import integrate, optimize, special
from geographiclib.geodesic import Geodesic

driver, table = sys.argv[1], sys.argv[2]
random.seed(20261125)
mp.mp.dps = 40
g, rho = 9.80665, 1025.0
rows, asked = [], []   # each asked: group, subject, inputs, result, want, scale


def ask(group, subject, result, want, size=None, /, **inputs):
    text = ", ".join(f"{k}={v}" if isinstance(v, str) else f"{k}={v!r}" for k, v in inputs.items())
    asked.append((group, subject, text, result, float(want), float(abs(want) if size is None else size)))


def log(lo, hi):
    return math.exp(random.uniform(math.log(lo), math.log(hi)))


def dispersion(period, depth):
    """kh of omega^2 h/g by Newton in 40 digits."""
    y = (2 * mp.pi / mp.mpf(period)) ** 2 * mp.mpf(depth) / mp.mpf(g)
    x = mp.findroot(lambda x: x * mp.tanh(x) - y, mp.sqrt(y) if y < 1 else y)
    return x / mp.mpf(depth), x


def waves(n):
    name = "arbitrary precision (mpmath, 40 digits)"
    for _ in range(n):
        T, d = log(0.5, 30), log(0.05, 5000)
        k, kh = dispersion(T, d)
        w = 2 * mp.pi / mp.mpf(T)
        ratio = (1 + 2 * kh / mp.sinh(2 * kh)) / 2
        ask(name, "wave.Wavenumber", "k", k, period=T, depth=d)
        ask(name, "wave.Length", "length", 2 * mp.pi / k, period=T, depth=d)
        ask(name, "wave.PhaseSpeed", "speed", w / k, period=T, depth=d)
        ask(name, "wave.GroupSpeed", "speed", ratio * w / k, period=T, depth=d)
        ks = mp.sqrt((mp.mpf(g) / w) / 2 / (ratio * w / k))
        ask(name, "wave.Wave.Shoaling", "factor", ks, period=T, depth=d, gravity=0.0)
        z = -random.uniform(0, 1) * d
        # relative to 1: deep down the factor itself vanishes
        ask(name, "wave.Wave.PressureResponse", "factor", mp.cosh(k * (z + mp.mpf(d))) / mp.cosh(kh), 1, period=T, depth=d, gravity=0.0, z=z)
        L = 2 * mp.pi / k
        ask(name, "wave.PeriodOfLength", "period", T, length=float(L), depth=d)


def heights(n):
    name = "quadrature and special functions (scipy)"
    for _ in range(n):
        shape, scale, hs = random.uniform(1.8, 2.4), random.uniform(0.6, 0.8), log(0.1, 15)
        count = log(1.01, 1e5)
        h = random.uniform(0, 2) * hs
        ask(name, "wave.HeightLaw.Exceedance", "probability", math.exp(-((h / hs / scale) ** shape)), 1, scale=scale, shape=shape, height=h, hs=hs)
        h1 = scale * math.log(count) ** (1 / shape)
        tail = integrate.quad(lambda x: math.exp(-((x / scale) ** shape)), h1, math.inf, epsabs=0, epsrel=1e-12, limit=200)[0]
        ask(name, "wave.HeightLaw.MeanOfHighest", "value", hs * (h1 + count * tail), scale=scale, shape=shape, n=count, hs=hs)
        ask(name, "wave.HeightLaw.RootMeanSquare", "value", hs * scale * math.sqrt(special.gamma(1 + 2 / shape)), scale=scale, shape=shape, hs=hs)


def spectra(n):
    name = "quadrature and special functions (scipy)"
    for _ in range(n):
        hs, tp, fr = log(0.2, 12), log(2, 18), random.uniform(0.3, 4)
        f, fp = fr / tp, 1 / tp
        s = 5 / 16 * hs**2 * fp**4 * f**-5 * math.exp(-1.25 * (fp / f) ** 4)
        ask(name, "spectrum.Bretschneider.Density", "", s, hs * hs * tp, frequency=f, hs=hs, tp=tp)
        lo, hi = fp * random.uniform(0.4, 1), fp * random.uniform(1, 4)
        order = random.choice([-1, 0, 1, 2])
        m = integrate.quad(lambda f: f**order * 5 / 16 * hs**2 * fp**4 * f**-5 * math.exp(-1.25 * (fp / f) ** 4), lo, hi, epsrel=1e-12, epsabs=0, limit=200)[0]
        ask(name, "spectrum.Bretschneider.MomentWithin", "", m, n=float(order), lo=lo, hi=hi, hs=hs, tp=tp)


def geodesics(n):
    name = "geodesics (geographiclib)"
    E = Geodesic.WGS84
    for i in range(n):
        lat1, lon1 = random.uniform(-88, 88), random.uniform(-180, 180)
        if i % 2:  # near, as on a run
            d, c = log(10, 1e5), random.uniform(0, 360)
        else:
            d, c = log(1e5, 1.9e7), random.uniform(0, 360)
        r = E.Direct(lat1, lon1, c, d)
        scale = max(d, 1.0)
        ask(name, "route.Inverse", "distance", d, scale, lat1=lat1, lon1=lon1, lat2=r["lat2"], lon2=r["lon2"])
        ask(name, "route.Direct", "lat", r["lat2"], 90, lat=lat1, lon=lon1, course=c, distance=d)
        ask(name, "route.Direct", "lon", r["lon2"], 180, lat=lat1, lon=lon1, course=c, distance=d)
        if i % 2 and abs(lat1) < 60:
            ask("geodesics (geographiclib), to 100 km and latitude 60, relative to 100 km", "route.ShortDistance", "distance", d, 1e5, lat1=lat1, lon1=lon1, lat2=r["lat2"], lon2=r["lon2"])


def triangles(n):
    name = "complex arithmetic and a root finder (scipy)"
    for _ in range(n):
        track, speed, set_, drift = random.uniform(0, 360), log(0.8, 6), random.uniform(0, 360), random.uniform(0, 0.7)
        t, s = math.radians(track), math.radians(set_)
        across = lambda c: speed * math.sin(c) + drift * math.sin(s - t)
        c = optimize.brentq(across, -math.pi / 2, math.pi / 2, xtol=1e-15)
        ask(name, "route.HeadingFor", "made", speed * math.cos(c) + drift * math.cos(s - t), track=track, speed=speed, set=set_, drift=drift)
        ask(name, "route.MadeGood", "made", abs(speed * complex(math.cos(t), math.sin(t)) + drift * complex(math.cos(s), math.sin(s))),
            heading=track, speed=speed, set=set_, drift=drift)


def tides(n):
    name = "arbitrary precision (mpmath, 40 digits)"
    for _ in range(n):
        x = random.random()
        ask(name, "tide.Cosine", "", (1 - mp.cos(mp.pi * mp.mpf(x))) / 2, 1, x=x)


waves(1000); heights(1000); spectra(1000); geodesics(2000); triangles(1000); tides(2000)
text = io.StringIO()
w = csv.writer(text)
w.writerow(["subject", "inputs", "result"])
for _, subject, inputs, result, _, _ in asked:
    w.writerow([subject, inputs, result])
answer = subprocess.run([driver], input=text.getvalue(), capture_output=True, text=True, check=True).stdout
worst, bad = {}, 0
for (group, subject, inputs, result, want, scale), got in zip(asked, csv.DictReader(io.StringIO(answer))):
    key = (group, subject, result)
    n, error, where, failed = worst.get(key, (0, -1.0, "", 0))
    try:
        e = abs(float(got["value"]) - want) / scale
        if result in ("lon",) and e * scale > 180:
            e = abs(e * scale - 360) / scale
    except ValueError:
        e = math.nan
    if not e >= 0:
        failed += 1
        print("no number:", subject, inputs, got["value"])
    elif e > error:
        error, where = e, inputs
    worst[key] = (n + 1, error, where, failed)
LIMIT = {"route.ShortDistance": 1e-8, "route.Inverse": 1e-9}
lines = ["# The library against independent numerical packages", "",
         f"Written by `bash .ci/oracles` on {datetime.date.today()}; Python {sys.version.split()[0]}, mpmath {mp.__version__}, "
         f"scipy {meta.version('scipy')}, geographiclib {meta.version('geographiclib')}; fixed random seed. The error is |library - oracle| over the size of the "
         "result (over 1 for a ratio that vanishes, over 90 or 180 degrees for a position, over Hs^2 Tp for a density).", "",
         "| function | result | oracle | points | worst relative error | limit | at |", "|---|---|---|---|---|---|---|"]
for (group, subject, result), (n, error, where, failed) in worst.items():
    limit = LIMIT.get(subject, 1e-11)
    ok = failed == 0 and error <= limit
    bad += not ok
    lines.append(f"| {subject} | {result} | {group} | {n} | {error:.1e} | {limit:.0e}{'' if ok else ' EXCEEDED'} | {where} |")
lines += ["", f"{len(asked)} points in all, {len(worst)} results."]
open(table, "w").write("\n".join(lines) + "\n")
print("\n".join(lines))
sys.exit(1 if bad else 0)
