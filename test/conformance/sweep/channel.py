"""Sections of a channel and the depths that carry a discharge, by scipy's brentq on the textbook definitions."""
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
