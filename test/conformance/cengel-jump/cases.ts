import type { SourceCases } from "../case.js";

const inputs = { units: "m", width: 10, discharge: 56, depth: 0.8, gravity: 9.81 };

export const cengel: SourceCases = {
  source: "Çengel and Cimbala, Fluid Mechanics",
  locator: "jump below a gate, from memory, its inputs give its depth",
  kind: "published",
  seen: "recomputed",
  cases: [
    { id: "J-04.froude", evaluates: "Froude number in a section", inputs: inputs, printed: "2.50" },
    { id: "J-04.after", evaluates: "depth after a jump", inputs: inputs, printed: "2.46" },
    {
      id: "J-04.loss",
      evaluates: "head lost in a jump",
      inputs: inputs,
      printed: "0.572",
      disagrees: "from the rounded depth and speed after the jump; exact is 0.577",
    },
    {
      id: "J-04.power",
      evaluates: "power lost in a jump, kW",
      inputs: inputs,
      printed: "314",
      disagrees: "from the rounded loss; exact is 316 kW of water of 1000 kg/m³",
    },
  ],
};
