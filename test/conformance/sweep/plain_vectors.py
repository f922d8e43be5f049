"""Water, drag coefficients, powers, interpolation, special functions."""
import warnings
from math import sqrt

import fluids
from iapws._iapws import _Liquid, _Tension
from scipy import special
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from registry import short, spread, sweep

warnings.filterwarnings("ignore", message="Metastable")


@sweep("water")
def water(r):
    for _ in range(1500):
        celsius = short(r.uniform(-19.9, 109.9))
        liquid = _Liquid(celsius + 273.15)
        yield {
            "celsius": celsius,
            "density": liquid["rho"],
            "viscosity": liquid["mu"],
            "tension": _Tension(celsius + 273.15),
        }


@sweep("drag-coefficients")
def coefficients(r):
    for _ in range(1200):
        re = spread(r, 1e-4, 2e5)
        sphere = 24 / re * (1 + 0.15 * re**0.681) + 0.407 / (1 + 8710 / re)
        cylinder = 1.18 + 6.8 / re**0.89 + 1.96 / sqrt(re) - 0.0004 * re / (1 + 3.64e-7 * re * re)
        yield {"reynolds": re, "sphere": sphere, "cylinder": cylinder}


@sweep("sphere-by-another-fit")
def clift(r):
    for _ in range(500):
        re = spread(r, 0.01, 1e5)
        yield {"reynolds": re, "sphere": fluids.drag_sphere(re, Method="Clift")}


@sweep("powers")
def powers(r):
    for p in (-0.89, 0.681, 1 / 3, 2.5, -4.0, 1.256):
        for _ in range(200):
            x = spread(r, 1e-30, 1e30)
            yield {"p": p, "x": x, "power": x**p}


@sweep("monotone-cubic")
def pchip(r):
    for _ in range(150):
        x = sorted(short(r.uniform(0, 10)) for _ in range(6))
        y = [short(r.uniform(-1, 3)) for _ in range(6)]
        if min(b - a for a, b in zip(x, x[1:])) < 0.01:
            continue
        curve = PchipInterpolator(x, y)
        total = float(curve.integrate(x[0], x[-1]))
        for _ in range(4):
            at = short(r.uniform(x[0], x[-1]))
            row = {f"x{i}": v for i, v in enumerate(x)} | {f"y{i}": v for i, v in enumerate(y)}
            yield {**row, "at": at, "value": float(curve(at)), "integral": total}


@sweep("incomplete-beta")
def betas(r):
    for _ in range(600):
        x, a, b = short(r.random()), spread(r, 0.2, 60), spread(r, 0.2, 60)
        share = special.betainc(a, b, x)
        if share > 1e-12:
            yield {"x": x, "a": a, "b": b, "share": share, "logGamma": special.gammaln(a)}


@sweep("student-t")
def students(r):
    for _ in range(600):
        p, freedom = short(r.uniform(0.501, 0.9995)), float(r.randint(1, 120))
        yield {"p": p, "freedom": freedom, "t": brentq(lambda t: special.stdtr(freedom, t) - p, 0, 1e4, xtol=1e-15, rtol=1e-14)}
