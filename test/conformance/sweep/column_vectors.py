"""The water column: laws of speed against height, their means, the wake of a boulder."""
from math import exp, log, log1p, pi, sin, sqrt

from scipy.integrate import quad
from scipy.optimize import brentq

from line import LAWS, shape
from registry import short, sweep


@sweep("column-speeds")
def speeds(r):
    for law in LAWS:
        for _ in range(100):
            column = any_column(r, law)
            g = shape(column)
            for _ in range(4):
                z = short(column["h"] * r.uniform(0.02, 1))
                yield {**column, "z": z, "speed": column["us"] * g(z) / g(column["h"])}


@sweep("column-means")
def means(r):
    yield from any_means(r, dips=False)


@sweep("column-means-dip")
def dip_means(r):
    yield from any_means(r, dips=True)


def any_means(r, dips):
    for law in LAWS:
        for _ in range(100):
            column = any_column(r, law)
            g, h = shape(column), column["h"]
            floor = column["a"] if LAWS[law] in ("log", "log-wake", "dip") else 0.0
            # quad does not see a law that turns positive just above its length: it starts there
            rises = LAWS[law] == "dip" or (LAWS[law] == "log-wake" and column["b"] < 0)
            foot = brentq(lambda z: raised(column, z), floor, 2 * floor, xtol=1e-18, rtol=1e-15) if rises else floor
            parts = [foot, 10 * floor, 0.1 * h, 0.99 * h, h] if floor else [0.0, 1e-3 * h, 0.1 * h, h]
            parts = sorted(p for p in parts if p <= h)
            mean = sum(quad(g, a, b, epsabs=1e-14, epsrel=1e-13, limit=200)[0] for a, b in zip(parts, parts[1:])) / h
            top = h / (1 + column["b"]) if LAWS[law] == "dip" else h
            if g(h) <= mean or g(top) <= mean:
                continue
            height = brentq(lambda z: g(z) - mean, floor or 1e-9, top, xtol=1e-15, rtol=1e-14)
            if (LAWS[law] == "dip") == dips:
                yield {**column, "ratio": mean / g(h), "height": height}


def raised(c, z):
    """A law of the log family as written, also where it is below 0."""
    h, a, b, law = c["h"], c["a"], c["b"], LAWS[c["law"]]
    return log(z / a) + (2 * b * sin(pi * z / 2 / h) ** 2 if law == "log-wake" else b * log1p(-z / h) if law == "dip" else 0.0)


def any_column(r, law):
    """law, depth, surface speed and the law's own numbers a (length or exponent) and b (wake, or strength of the dip)."""
    h, us = short(r.uniform(0.2, 4)), short(r.uniform(0.1, 3))
    a, b, width = 0.0, 0.0, 0.0
    name = LAWS[law]
    if name in ("log", "log-wake", "dip"):
        a = short(h / 10 ** r.uniform(1.5, 4))
    if name == "log-wake":
        b = short(r.uniform(-0.1, 0.6))
    if name == "dip":
        width = short(h * r.uniform(2, 8))
        b = 1.3 * exp(-width / 2 / h)
    if name == "power":
        a = short(r.uniform(3, 10))
    if name == "mixing-layer":
        a = short(h / r.uniform(0.4, 7))
    return {"law": law, "h": h, "us": us, "a": a, "b": b, "width": width}


@sweep("wake")
def wakes(r):
    """A plane turbulent wake, Schlichting: half width and speed."""
    beta = 0.18
    for _ in range(200):
        b, x, cd, u = short(r.uniform(0.2, 2)), short(r.uniform(2, 60)), short(r.uniform(0.5, 1.5)), short(r.uniform(0.2, 2))
        half = sqrt(10) * beta * sqrt(x * cd * b)
        y = short(half * r.uniform(0, 0.9))
        deficit = sqrt(10) / (18 * beta) * (x / (cd * b)) ** -0.5 * (1 - (y / half) ** 1.5) ** 2
        yield {"b": b, "x": x, "y": y, "u": u, "cd": cd, "half": half, "speed": max(0.0, u * (1 - deficit))}
