import type { SourceCases } from "../case.js";

export const iapwsLiquid: SourceCases = {
  source: "IAPWS SR6-08(2011), Properties of liquid water at 0.1 MPa",
  locator: "check values, as evaluated by github:jjgomera/iapws@18d2c48 test.py",
  kind: "published",
  seen: "quoted",
  cases: [
    { id: "W-07", evaluates: "density, kg/m³, at K", inputs: { kelvin: 298.15 }, printed: "997.047013" },
    { id: "W-08.260", evaluates: "density, kg/m³, at K", inputs: { kelvin: 260 }, printed: "997.068360" },
    { id: "W-08.375", evaluates: "density, kg/m³, at K", inputs: { kelvin: 375 }, printed: "957.009710" },
    { id: "W-25", evaluates: "viscosity, µPa s, at K", inputs: { kelvin: 298.15 }, printed: "889.996774" },
    { id: "W-26.260", evaluates: "viscosity, µPa s, at K", inputs: { kelvin: 260 }, printed: "3058.36075" },
    { id: "W-26.375", evaluates: "viscosity, µPa s, at K", inputs: { kelvin: 375 }, printed: "276.207245" },
  ],
};
