"""The settled rig of rows K-20 to K-23 by scipy: an independent implementation with its own equations.

python3-scipy 1.10.1. Run: /usr/bin/python3 vectors.py > vectors.json
"""
import json
from math import atan2, degrees, hypot, log, pi, sqrt, tanh

from scipy.integrate import solve_ivp
from scipy.optimize import fsolve

RHO, NU, G = 999.1, 1.138e-6, 9.80665
DEPTH, LENGTH, DIAMETER = 0.9144, 0.4572, 0.1524e-3
SINKER, FLOAT = 1.5e-3, 1.0e-3
LINE = (1780 - RHO) * G * pi * DIAMETER**2 / 4


def log_law(z):
    return log(z / 0.005) / log(DEPTH / 0.005) if z > 0.005 else 0.0


def mixing(z, stone=0.4572):
    return (1 + tanh((z - stone) / stone)) / (1 + tanh((DEPTH - stone) / stone))


def power(z):
    return (z / DEPTH) ** (1 / 6)


def sphere(re):
    return 24 / re * (1 + 0.15 * re**0.681) + 0.407 / (1 + 8710 / re)


def cylinder(re):
    return 1.18 + 6.8 / re**0.89 + 1.96 / sqrt(re) - 4e-4 * re / (1 + 3.64e-7 * re**2)


def nymph_drag(w):
    bead = sphere(abs(w) * 2.8e-3 / NU) * pi * 2.8e-3**2 / 4
    body = cylinder(abs(w) * 1.8e-3 / NU) * 6e-3 * 1.8e-3
    return 0.5 * RHO * (bead + body) * abs(w) * w


def top(speed, drift, bottom):
    """Height, tow and load at the top of a line whose sinker is at a height, and how far along it is."""

    def slope(_, y):
        tension = hypot(y[1], y[2])
        tx, tz = y[1] / tension, y[2] / tension
        w = speed(y[0]) - drift
        across, along = w * tz, w * tx
        normal = 0.5 * RHO * DIAMETER * cylinder(max(abs(across), 1e-14) * DIAMETER / NU) * abs(across) * across
        tangential = 0.5 * RHO * pi * DIAMETER * 0.02 * abs(along) * along
        return [tz, -(normal * tz + tangential * tx), normal * tx - tangential * tz + LINE, tx]

    start = [bottom, -nymph_drag(speed(bottom) - drift), SINKER, 0.0]
    return solve_ivp(slope, [0, LENGTH], start, method="DOP853", rtol=1e-12, atol=1e-16).y[:, -1]


def settled(law, surface, held):
    def speed(z):
        return surface * law(z)

    def draft(load):
        return (FLOAT + load) / (RHO * G * 0.022 * 0.005 * pi / 4)

    def missing(guess):
        z, tow, load, _ = top(speed, *guess)
        w = surface - guess[0]
        drag = 0.5 * RHO * 1.1 * 0.022 * 2 / pi * draft(load) * abs(w) * w
        return [z - DEPTH, 1e4 * (tow - drag + held)]

    drift, bottom = fsolve(missing, [0.93 * surface, 0.47], xtol=1e-13)
    _, tow, load, along = top(speed, drift, bottom)
    return {
        "drift speed, m/s": drift,
        "height of the sinker, m": bottom,
        "lean, degrees": degrees(atan2(along, DEPTH - bottom)),
        "excess, m/s": drift - speed(bottom),
        "tow, N": tow,
        "load, N": load,
        "draft, m": draft(load),
    }


rigs = {
    "K-20": ("log", log_law, 0.9144, 0.0),
    "K-21": ("mixing-layer", mixing, 0.9144, 0.0),
    "K-22": ("power", power, 1.2, 0.0),
    "K-23": ("mixing-layer", mixing, 0.9144, 0.5e-3),
}
rows = []
for name, (law, shape, surface, held) in rigs.items():
    values = {key: f"{value:.9e}" for key, value in settled(shape, surface, held).items()}
    rows.append({"id": name, "rig": {"law": law, "surfaceSpeed": surface, "held": held}, "values": values})
print(json.dumps(rows, indent=2))
