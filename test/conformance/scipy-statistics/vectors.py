"""Student quantiles, incomplete beta functions and a weighted rating curve by scipy and numpy: an independent implementation.

python3-scipy 1.10.1, python3-numpy 1.24.2. Run: /usr/bin/python3 vectors.py > vectors.json
"""
import json

import numpy as np
from scipy import special, stats

quantiles = [
    {"probability": p, "freedom": n, "value": f"{special.stdtrit(n, p):.12e}"}
    for n in (1, 2, 3, 5, 10, 30, 120, 1000)
    for p in (0.6, 0.9, 0.975, 0.995, 0.9999)
]
betas = [
    {"x": x, "a": a, "b": b, "value": f"{special.betainc(a, b, x):.12e}"}
    for a, b in ((0.5, 0.5), (2.0, 3.0), (15.0, 0.5), (60.0, 40.0), (500.0, 0.5))
    for x in (0.05, 0.3, 0.6, 0.95)
]

zero, stage, confidence = 0.21, 0.95, 0.9
stages = [0.38, 0.47, 0.55, 0.71, 0.88, 1.05, 1.42, 1.9]
discharges = [0.21, 0.49, 0.78, 1.75, 3.2, 4.7, 10.4, 20.1]
uncertainties = [0.08, 0.06, 0.05, 0.05, 0.04, 0.04, 0.05, 0.07]
x = np.log(np.array(stages) - zero)
y = np.log(np.array(discharges))
w = np.array(uncertainties) ** -2.0
w /= w.mean()
design = np.column_stack([np.ones_like(x), x])
normal = np.linalg.inv(design.T @ (w[:, None] * design))
intercept, slope = normal @ (design.T @ (w * y))
residuals = y - design @ np.array([intercept, slope])
freedom = len(x) - 2
scatter = np.sqrt((w * residuals**2).sum() / freedom)
row = np.array([1.0, np.log(stage - zero)])
leverage = row @ normal @ row
t = stats.t.ppf((1 + confidence) / 2, freedom)
middle = row @ np.array([intercept, slope])
rating = {
    "inputs": {
        "zero": zero,
        "stage": stage,
        "confidence": confidence,
        "stages": stages,
        "discharges": discharges,
        "uncertainties": uncertainties,
    },
    "coefficient": f"{np.exp(intercept):.9e}",
    "exponent": f"{slope:.9e}",
    "standard error of the exponent": f"{scatter * np.sqrt(normal[1, 1]):.9e}",
    "scatter": f"{scatter:.9e}",
    "discharge": f"{np.exp(middle):.9e}",
    "low end of the prediction": f"{np.exp(middle - t * scatter * np.sqrt(1 + leverage)):.9e}",
    "high end of the prediction": f"{np.exp(middle + t * scatter * np.sqrt(1 + leverage)):.9e}",
    "low end of the curve": f"{np.exp(middle - t * scatter * np.sqrt(leverage)):.9e}",
}
print(json.dumps({"quantiles": quantiles, "betas": betas, "rating": rating}, indent=2))
