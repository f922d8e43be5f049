"""A sinker, a line and a float in a stream whose speed changes with height: written from the model, solved with scipy.

Cross-flow principle on each element of line, Sucker and Brauer across it at the Reynolds number of the normal speed, a skin friction along it;
dr/ds = T/|T|, dT/ds = -f from the sinker up, by DOP853 at 1e-12. The settled rig is a root in drift speed and height of the sinker.
"""
from math import atan2, hypot, log, log1p, pi, sin, sqrt, tanh

from scipy.integrate import solve_ivp
from scipy.optimize import brentq, fsolve

G = 9.80665
LAWS = {1: "log", 2: "log-wake", 3: "dip", 4: "power", 5: "mixing-layer"}


def shape(c):
    """The law of speed against height of a column, not scaled."""
    h, a, b, law = c["h"], c["a"], c["b"], LAWS[c["law"]]
    if law == "log":
        return lambda z: log(z / a) if z > a else 0.0
    if law == "log-wake":
        return lambda z: max(0.0, log(z / a) + 2 * b * sin(pi * z / 2 / h) ** 2) if z > a else 0.0
    if law == "dip":

        def dip(z):
            z = min(z, 0.99 * h)
            return max(0.0, log(z / a) + b * log1p(-z / h)) if z > a else 0.0

        return dip
    if law == "power":
        return lambda z: (z / h) ** (1 / a) if z > 0 else 0.0
    return lambda z: 1 + tanh((max(z, 0.0) - a) / a)


def water_speed(c):
    g = shape(c)
    scale = c["us"] / g(c["h"])
    return lambda z: scale * g(z)


def sphere(re):
    return 24 / re * (1 + 0.15 * re**0.681) + 0.407 / (1 + 8710 / re)


def cylinder(re):
    return 1.18 + 6.8 / re**0.89 + 1.96 / sqrt(re) - 4e-4 * re / (1 + 3.64e-7 * re * re)


def sinker_drag(rho, nu, s, w, head_first=False):
    """Force on a sinker in water that passes at w, along w."""
    q = 0.5 * rho * abs(w) * w * s["dressing"]
    if q == 0:
        return 0.0
    force = q * sphere(abs(w) * s["bead"] / nu) * pi * s["bead"] ** 2 / 4
    if s["length"] > 0 and head_first:
        force += q * 0.82 * pi * s["diameter"] ** 2 / 4
    elif s["length"] > 0:
        force += q * cylinder(abs(w) * s["diameter"] / nu) * s["length"] * s["diameter"]
    return force


def sinker_weight(rho, s):
    return (s["mass"] - rho * s["volume"]) * G


def terminal(rho, nu, s):
    weight = sinker_weight(rho, s)
    return brentq(lambda w: sinker_drag(rho, nu, s, w, s["loop"] == 1) - weight, 1e-9, 50, xtol=1e-16, rtol=1e-14)


class Unfit(Exception):
    """A guess of the root that no rig can be at."""


def line_top(rho, nu, column, sections, drift, z, steps=500):
    """Height, downstream and upward pull at the top of a chain of (line, sinker) from the float down, and how far along the top is.
    `steps` is the least number of steps: a long step across the kink of the drag, where the water runs at the drift speed, is less exact
    than its own estimate says."""
    speed = water_speed(column)
    state = [z, 0.0, 0.0, 0.0]
    weights = sum(sinker_weight(rho, sinker) for _, sinker in sections)
    for line, sinker in reversed(sections):
        d = line["d"]
        weight = (line["dens"] - rho) * G * pi * d * d / 4
        state[1] -= sinker_drag(rho, nu, sinker, speed(state[0]) - drift)
        state[2] += sinker_weight(rho, sinker)

        def slope(_, y):
            tension = hypot(y[1], y[2])
            if tension < 0.01 * weights:
                raise Unfit
            tx, tz = y[1] / tension, y[2] / tension
            w = speed(y[0]) - drift
            across, along = w * tz, w * tx
            normal = 0.0
            if across != 0:
                normal = 0.5 * rho * d * cylinder(abs(across) * d / nu) * abs(across) * across
            friction = 0.5 * rho * pi * d * line["cf"] * abs(along) * along
            return [tz, -(normal * tz + friction * tx), weight + normal * tx - friction * tz, tx]

        how = {"method": "DOP853", "rtol": 1e-12, "atol": 1e-18, "max_step": line["L"] / steps}
        state = list(solve_ivp(slope, [0, line["L"]], state, **how).y[:, -1])
    return state


def settled_rig(rho, nu, column, line, sinker, f):
    """Drift speed and height at which the line ends at the surface and the float's drag is what it tows, or None where it does not hang."""
    h, us = column["h"], column["us"]

    def draft(load):
        return (f["fm"] * G + load) / (rho * G * f["fl"] * f["fw"] * pi / 4)

    def pull(drift, load):
        w = us - drift
        return 0.5 * rho * 1.1 * f["fl"] * 2 / pi * draft(load) * abs(w) * w

    size = sinker_weight(rho, sinker)

    def missing(guess, steps=500):
        drift, z = guess
        if not (-0.2 * us < drift < 1.2 * us and -0.2 * h < z < 1.2 * h):
            raise Unfit
        height, tow, load, _ = line_top(rho, nu, column, [(line, sinker)], drift, z, steps)
        return [(height - h) / h, (tow - pull(drift, load) + f["held"]) / size]

    for share in (0.95, 0.8, 0.6):
        try:
            near = fsolve(missing, [share * us, h - 0.97 * line["L"]], args=(1,), xtol=1e-9)
            drift, z = map(float, fsolve(missing, near, xtol=1e-13))
            left = max(map(abs, missing([drift, z])))
        except Unfit:
            continue
        if not (left < 1e-11 and 0.02 * h < z < h):
            continue
        height, tow, load, along = line_top(rho, nu, column, [(line, sinker)], drift, z)
        if load < 0.3 * size or draft(load) > 0.9 * f["fh"]:
            continue
        return {"drift": drift, "z": z, "lean": atan2(along, h - z), "tow": tow, "load": load, "draft": draft(load)}
    return None
