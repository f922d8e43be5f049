"""Sections, uniform and critical flow, resistance."""
from math import log10, sqrt

import fluids

from channel import compound, conjugate, conveyance_per_depth, critical, laws, manning, normal, section_of, specific_energy
from registry import G, short, spread, sweep


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
            "twoPoint": (at[1] + at[3]) / 2,
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
