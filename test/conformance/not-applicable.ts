/** Rows of the list of check values that no case uses, and why. */
export const notApplicable: Readonly<Record<string, string>> = {
  "W-09": "IAPWS-95 pressure, heat capacity, speed of sound and entropy: the core has none of them",
  "W-21": "R12-08 viscosity away from 0.1 MPa: the core has the formula for 0.1 MPa only",
  "W-22": "as W-21",
  "W-23": "as W-21",
  "W-24": "as W-21",
  "V-16": "a rule for choosing the depths of a current meter: the core measures nothing",
  "V-18": "qualitative: the single point at 0.6 of the depth is unreliable over boulders",
  "V-19":
    "one record of a gauged river of unknown shear velocity, averaged by its meter: no intensity to compare",
  "D-20": "Barati et al.: another correlation, not in the core; the standard drag curve covers the spread",
  "D-21": "as D-20",
  "D-22": "Haider and Levenspiel: another correlation, not in the core",
  "D-23": "Clift and Gauvin: another correlation, not in the core",
  "D-24": "Clift, Grace and Weber: another correlation, not in the core; its table is D-01 to D-18",
  "D-25": "Morsi and Alexander: another correlation, not in the core",
  "D-26": "five more correlations, not in the core",
  "D-28": "Schiller and Naumann: another correlation, not in the core",
  "D-43": "a grain of 70 nm: its speed of 4e-9 m/s is near the 1e-13 m/s to which a terminal speed is found",
  "D-44": "Ferguson and Church with C2 = 1.0: natural grains, the core settles smooth spheres",
  "D-52": "White's formula for a cylinder: another correlation, not in the core, 1 to 15 % from it",
  "D-56": "Re = 3.5e6: past the range of the correlation (2e5) and of any tippet",
  "D-57":
    "armoured towing cable, which vibrates: 1.5; the core's line is smooth and still (1.18 at high Re), and says so",
  "D-58": "inclined wires, from memory: its 0.02 is the skin friction that the core takes, along the line",
  "D-59": "qualitative: the cross-flow principle over-predicts the pull on some cables",
  "K-09": "a claim about one towed cable at sea; its data were not printed where it was read",
  "K-10": "the worked cables of the report were not found",
  "F-06":
    "capture by juvenile coho and steelhead in a flume: the core's fit is for other fish, and it says nothing of them",
  "F-12":
    "Chinook juveniles, in bands of feeling good or bad: the heat of the core is for trout, by criteria with one limit each",
  "S-07":
    "hazard classes of flooded streets, vehicles and buildings: the four limits for people in water stand side by side instead",
  "S-08": "danger levels below dams, for people and buildings together: as S-07",
  "S-09": "damage to buildings",
  "S-10": "a rating of flooded streets with a term for debris: as S-07",
};
