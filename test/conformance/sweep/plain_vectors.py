"""Water, drag coefficients, powers, interpolation, special functions."""
import warnings
from fractions import Fraction
from math import comb, exp, sqrt

import fluids
import numpy as np
from iapws._iapws import _Liquid, _Tension
from scipy import special, stats
from scipy.integrate import quad
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from registry import short, spread, sweep

warnings.filterwarnings("ignore", message="Metastable")
warnings.filterwarnings("ignore", message="divide by zero encountered in _beta_cdf")


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


@sweep("beta-exact")
def exact_betas(r):
    """I_x(a, b) for whole a and b is a binomial tail: summed in fractions, no rounding before the last step."""
    for _ in range(200):
        a, b = (int(spread(r, 1, 2000)) for _ in range(2))
        # of few bits, so that the fractions stay short
        odds = max(1, round(64 * a / b * exp(r.uniform(-6, 6) / sqrt(min(a, b))))) / 64
        x = Fraction(odds) / (1 + Fraction(odds))
        n = a + b - 1
        top, bottom = x.numerator, x.denominator - x.numerator
        total = sum(comb(n, k) * top**k * bottom ** (n - k) for k in range(a, n + 1))
        share = float(Fraction(total, x.denominator**n)) if n else float(x)
        if share > 1e-250:
            yield {"odds": odds, "a": a, "b": b, "below": share}


@sweep("beta-odds")
def odds_of_beta(r):
    for _ in range(400):
        a, b = (r.choice((0.5, 1.0, 2.5, spread(r, 0.5, 5000))) for _ in range(2))
        odds, p = spread(r, 1e-3, 1e3), short(r.choice((r.uniform(0.001, 0.999), spread(r, 1e-9, 0.01))))
        x, y = stats.beta.ppf(p, a, b), stats.beta.isf(p, b, a)
        below = stats.beta.cdf(odds / (1 + odds), a, b) if odds < 1 else stats.beta.sf(1 / (1 + odds), b, a)
        if below > 1e-250:
            yield {"odds": odds, "p": p, "a": a, "b": b, "below": below, "quantile": x / (1 - x) if x < 0.5 else (1 - y) / y}


@sweep("takes")
def takes(r):
    """P(rate on the dry > t × rate on the nymph): the two gamma densities integrated, without the beta distribution."""
    for _ in range(200):
        dry, nymph = (r.choice((0, 1, int(spread(r, 1, 4000)))) for _ in range(2))
        on_dry, on_nymph = spread(r, 10, 500), spread(r, 10, 500)
        a, b = (r.choice((0.5, 1.0, 3.0)) for _ in range(2))
        threshold = r.choice((3.0, spread(r, 0.3, 10)))
        fast, slow = stats.gamma(a + dry, scale=1 / on_dry), stats.gamma(b + nymph, scale=1 / on_nymph)
        # in the logarithm of the slower rate: smooth from end to end
        low, high = np.log(slow.ppf(1e-20)), np.log(slow.isf(1e-20))
        share, _ = quad(lambda v: slow.pdf(np.exp(v)) * np.exp(v) * fast.sf(threshold * np.exp(v)), low, high, epsabs=0, epsrel=1e-13, limit=500)
        if share > 1e-12:
            given = {"dry": dry, "nymph": nymph, "onDry": on_dry, "onNymph": on_nymph, "a": a, "b": b, "threshold": threshold}
            yield {**given, "probability": share}
