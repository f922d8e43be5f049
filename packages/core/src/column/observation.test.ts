import { describe, expect, test } from "vitest";
import { celsius, heightAboveBed, metres, metresPerSecond, QuantityError, seconds } from "../units/index.js";
import { type Observation, waterColumn } from "./index.js";

const seen = { depth: metres(0.9), surfaceSpeed: metresPerSecond(1.1) };
const point = (z: number, u: number) => ({ heightAboveBed: heightAboveBed(z), speed: metresPerSecond(u) });

describe("refuses", () => {
  test.each<[Partial<Observation>, string]>([
    [{ depth: metres(0) }, "depth must be from 0.01 to 50 m, got 0"],
    [{ depth: metres(-1) }, "depth must be from 0.01 to 50 m, got -1"],
    [{ surfaceSpeed: metresPerSecond(-0.1) }, "surface speed must be from 0 to 10 m/s, got -0.1"],
    [{ surfaceSpeed: metresPerSecond(1e308) }, "surface speed must be from 0 to 10 m/s, got 1e+308"],
    [{ roughness: metres(-1) }, "roughness must be from 0 to 10 m"],
    [{ roughnessLength: metres(0) }, "roughness length must be above 0 m, got 0"],
    [{ wake: Number.NaN }, "wake strength must be from -0.5 to 2, got NaN"],
    [{ exponent: 0.5 }, "exponent of the power law must be from 1 to 100, got 0.5"],
    [{ channelWidth: metres(0) }, "channel width must be above 0 m"],
    [{ slope: -0.1 }, "slope must be from 0 to 1"],
    // as plain JavaScript may say it
    [
      JSON.parse('{"bed":"coble"}'),
      "bed must be one of silt, sand, granule, pebble, cobble, boulder, got coble",
    ],
    [
      JSON.parse('{"law":"logg"}'),
      "law must be one of log, log-wake, dip, power, mixing-layer, measured, got logg",
    ],
    [{ bed: { d84: metres(0) } }, "D84 must be from 0.000001 to 10 m, got 0"],
    [{ temperature: celsius(200) }, "water temperature must be from -20 to 110 °C, got 200"],
    [
      { points: [point(1, 1), point(0.2, 1)] },
      "height above the bed of a measured point must be from 0 to 0.9 m",
    ],
    [{ points: [point(0.1, -1), point(0.2, 1)] }, "speed of a measured point must be from 0 to 10 m/s"],
    [{ law: "measured" }, "measured points must be two or more, got 0"],
    [{ law: "mixing-layer" }, "bed must be given for the mixing-layer law"],
    [{ law: "log" }, "bed must be given (or a roughness) for the log law"],
    [{ law: "dip", bed: "pebble" }, "channel width must be given for the dip law"],
    [{ roughness: metres(40) }, "roughness must be from 0 to 10 m"],
  ])("%o", (wrong, message) => {
    expect(() => waterColumn({ ...seen, ...wrong })).toThrow(message);
    expect(() => waterColumn({ ...seen, ...wrong })).toThrow(QuantityError);
  });

  test("a spot without any speed, and floats that take no time", () => {
    expect(() => waterColumn({ depth: metres(1) })).toThrow("surface speed must be given, or timed floats");
    const timedFloats = [{ distance: metres(1), time: seconds(0) }];
    expect(() => waterColumn({ depth: metres(1), timedFloats })).toThrow(
      "time of a timed float must be above 0 s",
    );
    const slow = [{ distance: metres(0), time: seconds(1) }];
    expect(() => waterColumn({ depth: metres(1), timedFloats: slow })).toThrow("distance of a timed float");
  });
});
