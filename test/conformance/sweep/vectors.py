"""Vectors for the sweep: the relations of the core, written again from the model and its sources, evaluated with iapws, fluids and scipy.

Debian's python3-iapws 1.5.2, python3-fluids 1.0.22, python3-scipy 1.10.1. Nothing here is taken from the core.
Run:  /usr/bin/python3 vectors.py          writes one .csv per relation
      /usr/bin/python3 vectors.py --check  computes them again and compares with the files, to 1e-9
"""
import random
import sys
import warnings
from math import exp, log10, pi, sqrt
from pathlib import Path

import fluids
from iapws._iapws import _Liquid, _Tension
from scipy import special
from scipy.integrate import quad
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from channel import compound, conjugate, conveyance_per_depth, critical, laws, manning, normal, section_of, specific_energy
from line import LAWS, line_top, settled_rig, shape, terminal

G = 9.80665
warnings.filterwarnings("ignore", message="Metastable")
files = {}


def sweep(name):
    """A generator of rows (dictionaries of numbers), with its own seed so that the files do not hang together."""

    def register(function):
        files[name] = lambda: function(random.Random(name))
        return function

    return register


def short(value, digits=6):
    """An input with few digits, so that everyone starts from the same number."""
    return float(f"{value:.{digits}g}")


def spread(r, low, high, digits=6):
    """Evenly spread in the logarithm."""
    return short(10 ** r.uniform(log10(low), log10(high)), digits)


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
            parts = [floor, 10 * floor, 0.1 * h, 0.99 * h, h] if floor else [0.0, 1e-3 * h, 0.1 * h, h]
            parts = sorted(p for p in parts if p <= h)
            mean = sum(quad(g, a, b, epsabs=1e-14, epsrel=1e-13, limit=200)[0] for a, b in zip(parts, parts[1:])) / h
            top = h / (1 + column["b"]) if LAWS[law] == "dip" else h
            if g(h) <= mean or g(top) <= mean:
                continue
            height = brentq(lambda z: g(z) - mean, floor or 1e-9, top, xtol=1e-15, rtol=1e-14)
            if (LAWS[law] == "dip") == dips:
                yield {**column, "ratio": mean / g(h), "height": height}


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


@sweep("terminal-speeds")
def terminals(r):
    for _ in range(600):
        rho, nu = short(r.uniform(995, 1000)), short(r.uniform(0.8e-6, 1.7e-6))
        sinker = any_sinker(r)
        yield {"rho": rho, "nu": nu, **sinker, "speed": terminal(rho, nu, sinker)}


def any_sinker(r, loops=True):
    """mass; volume; bead; length and diameter of the body (0 for none); dressing; 1 where it falls head first."""
    bead = short(r.uniform(1.5e-3, 4.5e-3))
    body = r.random() < 0.6
    length = short(r.uniform(3e-3, 12e-3)) if body else 0.0
    diameter = short(r.uniform(0.8e-3, 2.5e-3)) if body else 0.0
    volume = short(pi * bead**3 / 6 + pi * diameter**2 / 4 * length)
    mass = short(volume * r.uniform(2500, 9000))
    loop = float(loops and r.random() < 0.5)
    return {
        "mass": mass,
        "volume": volume,
        "bead": bead,
        "length": length,
        "diameter": diameter,
        "dressing": short(r.uniform(1, 2)),
        "loop": loop,
    }


def any_line(r):
    return {
        "L": short(r.uniform(0.2, 1.5)),
        "d": short(r.uniform(0.1e-3, 0.4e-3)),
        "dens": r.choice([1140.0, 1780.0]),
        "cf": r.choice([0.0, 0.01, 0.02, 0.03]),
    }


@sweep("line-in-a-sheared-stream")
def lines(r):
    count = 0
    while count < 400:
        rho, nu = short(r.uniform(995, 1000)), short(r.uniform(0.8e-6, 1.7e-6))
        column = any_column(r, r.choice(list(LAWS)))
        line, sinker = any_line(r), any_sinker(r, loops=False)
        z = short(column["h"] * r.uniform(0.1, 0.6))
        if z + line["L"] > column["h"]:
            continue
        drift = short(column["us"] * r.uniform(0.3, 1.1))
        height, tow, load, _ = line_top(rho, nu, column, [(line, sinker)], drift, z)
        if load < 0.2 * sinker["mass"] * G or abs(tow) < 1e-7:
            continue
        count += 1
        row = {"rho": rho, "nu": nu, **column, **line, **sinker, "drift": drift, "z": z}
        yield {**row, "height": height, "tow": tow, "load": load}


@sweep("settled-rigs")
def rigs(r):
    count = 0
    while count < 300:
        rho, nu = short(r.uniform(995, 1000)), short(r.uniform(0.8e-6, 1.7e-6))
        column = any_column(r, r.choice(list(LAWS)))
        line, sinker = any_line(r), any_sinker(r, loops=False)
        float_ = {
            "fl": short(r.uniform(10e-3, 40e-3)),
            "fw": short(r.uniform(4e-3, 12e-3)),
            "fh": short(r.uniform(4e-3, 12e-3)),
            "fm": spread(r, 2e-5, 2e-4),
            "held": r.choice([0.0, 0.0, short(r.uniform(0, 1e-3))]),
        }
        if line["L"] > 0.9 * column["h"]:
            continue
        answer = settled_rig(rho, nu, column, line, sinker, float_)
        if answer is None:
            continue
        count += 1
        yield {"rho": rho, "nu": nu, **column, **line, **sinker, **float_, **answer}


SECTIONS = {1: "rectangular", 2: "triangular", 3: "trapezoidal", 4: "circular", 5: "parabolic"}


def any_section(r, shape_):
    """shape; width, diameter or bottom width; runs of the two banks; depth of the given width of a parabola."""
    return {
        "shape": shape_,
        "b": short(r.uniform(0.5, 20)) if shape_ != 2 else 0.0,
        "m1": short(r.uniform(0.3, 4)) if shape_ in (2, 3) else 0.0,
        "m2": short(r.uniform(0.3, 4)) if shape_ in (2, 3) else 0.0,
        "yp": short(r.uniform(0.3, 3)) if shape_ == 5 else 0.0,
    }


@sweep("channel")
def channels(r):
    for shape_ in SECTIONS:
        for _ in range(150):
            c = any_section(r, shape_)
            s = section_of(c)
            y = short((0.05 + 0.75 * r.random()) * (c["b"] if shape_ == 4 else 3))
            n, slope = short(r.uniform(0.01, 0.1)), spread(r, 1e-4, 0.05)
            discharge = short(manning(s, n, slope, y))
            yn, yc = normal(s, n, slope, discharge), critical(s, discharge)
            area, perimeter, width, moment = s.wet(y)
            yield {
                **c,
                "y": y,
                "n": n,
                "S": slope,
                "Q": discharge,
                "area": area,
                "perimeter": perimeter,
                "width": width,
                "moment": moment,
                "velocity": fluids.V_Manning(Rh=area / perimeter, S=slope, n=n),
                "normal": yn,
                "critical": yc,
                "energy": specific_energy(s, discharge, y),
                "froude": discharge / area / sqrt(G * area / width),
            }


@sweep("conjugate-depths")
def conjugates(r):
    for shape_ in (1, 2, 3, 5):
        for _ in range(150):
            c = any_section(r, shape_)
            s = section_of(c)
            discharge = spread(r, 0.2, 60)
            y = short(critical(s, discharge) * r.uniform(0.3, 0.9))
            yield {**c, "Q": discharge, "y": y, "conjugate": conjugate(s, discharge, y)}


@sweep("resistance")
def resistances(r):
    """Ratios V/u* against x, Manning's n of grains and streams, and five laws of friction in a rectangle 5 m wide."""
    root8 = sqrt(8)
    for _ in range(250):
        x, q, d = spread(r, 0.3, 60), spread(r, 0.05, 2000), spread(r, 0.002, 0.5)
        S, y, ks, nu = spread(r, 0.0005, 0.04), short(r.uniform(0.1, 3)), spread(r, 1e-4, 0.05), short(r.uniform(0.8e-6, 1.7e-6))
        c, f = short(r.uniform(20, 80)), short(r.uniform(0.01, 0.2))
        R = 5 * y / (5 + 2 * y)
        u8 = sqrt(8 * G * R * S)
        viscous = 2.51 * nu / (4 * R * u8)
        speeds_of = laws(c, f, ks, nu)
        at = [short(r.uniform(0.2, 1.5)) for _ in range(5)]
        yield {
            **{"x": x, "q": q, "d": d, "S": S, "y": y, "ks": ks, "nu": nu, "c": c, "f": f},
            **{f"u{i}": u for i, u in enumerate(at)},
            "limerinos": root8 * (1.16 + 2.0 * log10(x)),
            "bathurst": 5.62 * log10(x) + 4,
            "hey": root8 * 2.03 * log10(11.75 * x / 3.5),
            "ferguson": 6.5 * 2.5 * x / sqrt(6.5**2 + 2.5**2 * x ** (5 / 3)),
            "rickenmannRecking": 4.416 * x**1.904 * (1 + (x / 1.283) ** 1.618) ** -1.083,
            "rickenmannReckingSpeed": 1.443 * q**0.60 * (1 + (q / 43.78) ** 0.8214) ** -0.2435,
            "keulegan": 6.25 + 5.75 * log10(x),
            "griffiths": root8 * (0.76 + 1.98 * log10(x)),
            "bray": root8 * (1.26 + 2.16 * log10(x)),
            "leopoldWolman": root8 * (1.0 + 2.0 * log10(x)),
            "strickler": 0.0474 * d ** (1 / 6),
            "maynord": 0.0431 * d ** (1 / 6),
            "jarrett": 0.39 * S**0.38 * (R / 0.3048) ** -0.16,
            "manningOf": R ** (1 / 6) / (sqrt(G) * x),
            "chezy": c * sqrt(R * S),
            "darcy": u8 / sqrt(f),
            "rough": -2 * u8 * log10(ks / (14.84 * R)),
            "smooth": -2 * u8 * log10(viscous),
            "transitional": -2 * u8 * log10(ks / (14.84 * R) + viscous),
            **{f"d{law}": conveyance_per_depth(speed, 5, y, S) for law, speed in speeds_of.items()},
            **{f"Q{law}": (5 * y * speed(R, S)).real for law, speed in speeds_of.items()},
            "threePoint": (at[1] + 2 * at[2] + at[3]) / 4,
            "fivePoint": (at[0] + 3 * at[1] + 3 * at[2] + 2 * at[3] + at[4]) / 10,
            "surface": 0.85 * at[0],
        }


@sweep("compound-section")
def compounds(r):
    for _ in range(250):
        y = short(r.uniform(1.05, 2.9))
        n = [short(r.uniform(0.02, 0.15)) for _ in range(3)]
        yield {"y": y, **{f"n{i}": m for i, m in enumerate(n)}, **compound(y, n)}


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


def text(name):
    rows = list(files[name]())
    head = ",".join(rows[0])
    return "\n".join([head, *(",".join(f"{v:.14g}" for v in row.values()) for row in rows)]) + "\n"


def same(ours, theirs):
    def close(a, b):
        return a == b or abs(float(a) - float(b)) <= 1e-9 * max(abs(float(a)), abs(float(b)))

    a, b = ours.split("\n"), theirs.split("\n")
    if len(a) != len(b) or a[0] != b[0]:
        return False
    return all(
        len(p.split(",")) == len(q.split(",")) and all(map(close, p.split(","), q.split(",")))
        for p, q in zip(a[1:-1], b[1:-1])
    )


def main():
    here = Path(__file__).parent
    checking = "--check" in sys.argv
    wanted = [name for name in files if not [a for a in sys.argv[1:] if a[0] != "-"] or name in sys.argv]
    different = []
    for name in wanted:
        path = here / f"{name}.csv"
        if not checking:
            path.write_text(text(name))
        elif not same(text(name), path.read_text()):
            different.append(name)
    print(f"vectors: {len(wanted)} files, {len(different)} differ {' '.join(different)}".rstrip())
    sys.exit(1 if different else 0)


if __name__ == "__main__":
    main()
