"""Density, viscosity and surface tension of water at 0.1 MPa by IAPWS-95, R12-08 and R1-76(2014): an independent implementation.

python3-iapws 1.5.2. Run: /usr/bin/python3 vectors.py > vectors.json
"""
import json

from iapws import IAPWS95

rows = []
for celsius in (0.5, 4.0, 8.0, 12.0, 16.0, 20.0, 25.0, 30.0):
    water = IAPWS95(T=celsius + 273.15, P=0.1)
    rows.append(
        {
            "celsius": celsius,
            "density": f"{water.rho:.8f}",
            "viscosity": f"{water.mu * 1e6:.6f}",
            "surfaceTension": f"{water.sigma * 1e3:.8f}",
        }
    )
print(json.dumps(rows, indent=2))
