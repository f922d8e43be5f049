"""Sections of a channel and the depths that carry a discharge, by scipy's brentq on the textbook definitions."""
from cmath import log10 as clog10
from cmath import sqrt as csqrt
from math import acos, asinh, inf, sin, sqrt

from scipy.optimize import brentq

G = 9.80665


class Section:
    """Area, wetted perimeter, top width and first moment of the area about the surface at a depth; `top` is the greatest depth."""

    def __init__(self, wet, top=inf):
        self.wet, self.top = wet, top


def section_of(c):
    b, m1, m2 = c["b"], c["m1"], c["m2"]
    if c["shape"] == 4:
        return Section(lambda y: circle(b, y), b)
    if c["shape"] == 5:
        return Section(lambda y: parabola(b, c["yp"], y))

    def straight(y):
        slant = sqrt(1 + m1 * m1) + sqrt(1 + m2 * m2)
        return b * y + (m1 + m2) * y * y / 2, b + y * slant, b + (m1 + m2) * y, b * y * y / 2 + (m1 + m2) * y**3 / 6

    return Section(straight)


def circle(d, y):
    angle = 2 * acos(1 - 2 * y / d)
    area = d * d / 8 * (angle - sin(angle))
    # depth of the centroid of a segment under the surface, times its area
    moment = d**3 / 24 * (3 * sin(angle / 2) - sin(angle / 2) ** 3 - 3 * (angle / 2) * (1 - 2 * y / d))
    return area, d * angle / 2, d * sin(angle / 2), moment


def parabola(width, depth, y):
    top = width * sqrt(y / depth)
    slope = 4 * y / top
    return 2 / 3 * top * y, top / 2 * (sqrt(1 + slope * slope) + asinh(slope) / slope), top, 4 / 15 * top * y * y


def manning(s, n, slope, y):
    area, perimeter, _, _ = s.wet(y)
    return area * (area / perimeter) ** (2 / 3) * sqrt(slope) / n


def root(f, top):
    high = 1.0 if top == inf else top * (1 - 1e-12)
    while top == inf and f(high) < 0:
        high *= 2
    return brentq(f, 1e-9 * high, high, xtol=1e-15, rtol=1e-14)


def normal(s, n, slope, discharge):
    """In a pipe the lower of two: below 0.8 of the diameter the discharge still grows."""
    return root(lambda y: manning(s, n, slope, y) - discharge, 0.93 * s.top)


def critical(s, discharge):
    def short_of(y):
        area, _, width, _ = s.wet(y)
        return sqrt(G * area**3 / width) - discharge

    return root(short_of, s.top)


def specific_energy(s, discharge, y):
    return y + (discharge / s.wet(y)[0]) ** 2 / (2 * G)


def conjugate(s, discharge, y):
    def force(at):
        area, _, _, moment = s.wet(at)
        return discharge**2 / (G * area) + moment

    middle = critical(s, discharge)
    high = 2 * middle
    while force(high) < force(y):
        high *= 2
    return brentq(lambda at: force(at) - force(y), middle, high, xtol=1e-15, rtol=1e-14)


def laws(c, f, ks, nu):
    """Speed of five laws of friction against hydraulic radius and slope; complex numbers pass, so that derivatives are exact."""

    def log_law(rough, smooth):
        def speed(R, S):
            u8 = csqrt(8 * G * R * S)
            return -2 * u8 * clog10(rough / (14.84 * R) + 2.51 * smooth / (4 * R * u8))

        return speed

    return {
        "Chezy": lambda R, S: c * csqrt(R * S),
        "Darcy": lambda R, S: csqrt(8 * G * R * S / f),
        "Rough": log_law(ks, 0),
        "Smooth": log_law(0, nu),
        "Transitional": log_law(ks, nu),
        "Manning": lambda R, S: R ** (2 / 3) * csqrt(S) / 0.03,
    }


def conveyance_per_depth(speed, width, y, S):
    """d(A V/sqrt S)/dy of a rectangle, by a complex step."""
    at = complex(y, 1e-30)
    area = width * at
    return (area * speed(area / (width + 2 * at), S) / csqrt(S)).imag / 1e-30


def compound(y, n):
    """As `compound_parts` says, and how fast conveyance grows with depth by two of the methods, by a complex step."""
    parts = compound_parts(y, n)
    step = compound_parts(complex(y, 1e-30), n)
    growth = {
        f"d{method.capitalize()}": (step["area"] * (step["area"] / step["perimeter"]) ** (2 / 3) / step[method]).imag / 1e-30
        for method in ("divided", "horton")
    }
    return parts | growth


def compound_parts(y, n):
    """A main channel 4 m wide at its bed with banks of 1 in 2, between flats 5 m wide at 1 m whose outer banks rise 2 m in 1 m; n of left, main, right.
    Composite n by four methods, and the coefficients of energy and momentum."""
    over = y - 1
    flat = (5 * over + over * over / 4, 5 + over * sqrt(1.25))
    zones = [flat, (6 + 8 * over, 4 + 2 * sqrt(5)), flat]
    area, perimeter = (sum(z[i] for z in zones) for i in (0, 1))
    k = [a * (a / p) ** (2 / 3) / m for (a, p), m in zip(zones, n)]
    total = sum(k)
    weighted = lambda power: sum(p * m**power for (_, p), m in zip(zones, n)) / perimeter
    return {
        "area": area,
        "perimeter": perimeter,
        "width": 18 + over,
        # of the trapezoid below the flats, and of what stands above them
        "moment": 6 * y - 10 / 3 + 9 * over**2 + over**3 / 6,
        "divided": area * (area / perimeter) ** (2 / 3) / total,
        "horton": weighted(1.5) ** (2 / 3),
        "pavlovskii": weighted(2) ** 0.5,
        "felkel": 1 / weighted(-1),
        "alpha": sum(ki**3 / a**2 for ki, (a, _) in zip(k, zones)) / (total**3 / area**2),
        "beta": sum(ki**2 / a for ki, (a, _) in zip(k, zones)) / (total**2 / area),
    }
