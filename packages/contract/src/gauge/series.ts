/** From a gauge series as it was sent, in one of three forms, to readings of the core. */

import { type CubicMetresPerSecond, cubicMetresPerSecond, type GaugeReading } from "@plumbdrift/core";
import { toSi, type Unit } from "../quantity/units.js";
import { RefusedError } from "../refusal.js";
import { rowsOfCsv } from "./csv.js";
import { momentOf } from "./moment.js";
import { seriesOfWaterml } from "./waterml.js";

/** The most readings of one series. */
export const MAX_READINGS = 10_000;

/** A reading as a text says it; empty for what is not there. */
export interface Row {
  readonly time: string;
  readonly value: string;
  readonly flag: string;
}

export interface Series {
  readonly rows: readonly Row[];
  readonly unit: Unit<"discharge"> | undefined;
}

/** A series in a body, its quantities decoded. */
export type SentSeries =
  | {
      readonly form: "readings";
      readonly readings: readonly {
        readonly time: string;
        readonly discharge?: CubicMetresPerSecond;
        readonly flag?: string;
      }[];
    }
  | { readonly form: "csv"; readonly text: string; readonly unit: Unit<"discharge"> }
  | { readonly form: "waterml2"; readonly text: string; readonly unit?: Unit<"discharge"> };

/** The readings of a series. Throws RefusedError below `path`, naming the reading. */
export function readingsOf(sent: SentSeries, path: string): readonly GaugeReading[] {
  if (sent.form === "readings") {
    return sent.readings.map(({ time, discharge, flag }, i) => ({
      time: momentOf(time, `${path}/readings/${i}/time`),
      discharge: discharge ?? null,
      ...(flag === undefined ? {} : { flag }),
    }));
  }
  const at = `${path}/text`;
  const { rows, unit = sent.unit } =
    sent.form === "csv" ? { rows: rowsOfCsv(sent.text, at) } : seriesOfWaterml(sent.text, at);
  if (unit === undefined) {
    const expected = "a unit, since the series names none";
    throw new RefusedError("impossible", `${path}/unit: expected ${expected}.`, {
      path: `${path}/unit`,
      expected,
      received: "nothing",
    });
  }
  if (rows.length > MAX_READINGS) {
    throw new RefusedError(
      "over-budget",
      `A series may have ${MAX_READINGS} readings, this has ${rows.length}.`,
      {
        path: at,
        expected: `at most ${MAX_READINGS} readings`,
        received: `${rows.length} readings`,
      },
    );
  }
  return rows.map((row, i) => ({
    time: momentOf(row.time, at, ` in reading ${i + 1}`),
    discharge: dischargeOf(row.value, unit, at, i),
    ...(row.flag === "" ? {} : { flag: row.flag.slice(0, 80) }),
  }));
}

function dischargeOf(
  value: string,
  unit: Unit<"discharge">,
  path: string,
  i: number,
): CubicMetresPerSecond | null {
  if (value === "") return null;
  const number = /^[-+]?\d+(\.\d*)?(e[-+]?\d{1,3})?$/i.test(value) ? Number(value) : Number.NaN;
  if (Math.abs(number) <= 1e9) return cubicMetresPerSecond(toSi("discharge", number, unit));
  const expected = `a number for reading ${i + 1}, or nothing`;
  throw new RefusedError("impossible", `${path}: expected ${expected}.`, {
    path,
    expected,
    received: JSON.stringify(value.slice(0, 40)),
  });
}
