"""Monotone cubic interpolation by scipy.interpolate.PchipInterpolator: an independent implementation of the same slopes.

python3-scipy 1.10.1. Run: /usr/bin/python3 vectors.py > vectors.json
"""
import json

from scipy.interpolate import PchipInterpolator

curves = [
    ([0, 1, 2, 4, 5, 9], [0, 1, 1.5, 1.5, 4, 3]),
    ([0, 0.2, 0.5, 0.7, 1], [0, 0.3, 0.31, 0.9, 1.0]),
    ([-3, -1, 0, 2], [5, -2, -2.5, 7]),
    ([0, 1], [2, 5]),
    ([0, 1, 3], [0, 10, 10.1]),
]
rows = []
for x, y in curves:
    curve = PchipInterpolator(x, y)
    asked = [x[0] + (x[-1] - x[0]) * k / 7 for k in range(1, 7)]
    rows.append(
        {
            "x": x,
            "y": y,
            "at": [{"x": q, "value": f"{float(curve(q)):.12f}"} for q in asked],
            "integral": f"{float(curve.integrate(x[0], x[-1])):.12f}",
        }
    )
print(json.dumps(rows, indent=2))
