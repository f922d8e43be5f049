"""Falling sinkers, a line in a sheared stream, settled rigs."""
from math import pi

from column_vectors import any_column
from line import LAWS, line_top, settled_rig, terminal
from registry import G, short, spread, sweep


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
