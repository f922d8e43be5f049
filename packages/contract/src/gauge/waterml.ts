/** A gauge series in the time-value form of OGC WaterML 2.0 (OGC 10-126r4): one MeasurementTimeseries and its points. */

import { parseXml, type XmlDocument, XmlElement } from "@rgrove/parse-xml";
import { RefusedError } from "../refusal.js";
import type { Row, Series } from "./series.js";

/** Codes of the unit that a series may name, as gauges write them. */
const codes: Readonly<Record<string, Series["unit"]>> = {
  "m3/s": "m3/s",
  "m^3/s": "m3/s",
  "m3.s-1": "m3/s",
  cumec: "m3/s",
  "l/s": "L/s",
  "L/s": "L/s",
  "ft3/s": "ft3/s",
  "ft^3/s": "ft3/s",
  "[ft_i]3/s": "ft3/s",
};

/** The points of a document with one series, and its unit where it names one. Throws RefusedError at `path`. */
export function seriesOfWaterml(text: string, path: string): Series {
  const all = inside(documentOf(text, path), "MeasurementTimeseries");
  const [series, second] = all;
  if (series === undefined || second !== undefined) {
    throw refused(path, "one MeasurementTimeseries", `${all.length} of them`);
  }
  const code = inside(series, "uom")[0]?.attributes.code;
  const unit = code === undefined ? undefined : codes[code];
  if (code !== undefined && unit === undefined) {
    throw refused(
      path,
      `a unit of discharge: ${Object.keys(codes).join(", ")}`,
      JSON.stringify(code.slice(0, 40)),
    );
  }
  return { rows: inside(series, "MeasurementTVP").map(rowOf), unit };
}

function documentOf(text: string, path: string): XmlDocument {
  try {
    return parseXml(text);
  } catch (error) {
    const line = /line (\d+), column (\d+)/.exec(String(error));
    const place = line === null ? "" : ` up to line ${line[1]}, column ${line[2]}`;
    throw refused(path, "a well-formed XML document", `text that is well-formed only${place || " in part"}`);
  }
}

/** A point: a nil or empty value is missing, a qualifier is its flag, and so is the reason for a nil. */
function rowOf(point: XmlElement): Row {
  const said = (name: string): string => inside(point, name)[0]?.text.trim() ?? "";
  const qualifier = inside(point, "qualifier")[0];
  const flag =
    qualifier?.attributes["xlink:title"] ?? qualifier?.attributes["xlink:href"] ?? said("qualifier");
  return { time: said("time"), value: said("value"), flag: flag.trim() };
}

/** Every element of a local name below one, in the order of the document; whatever the prefix. */
function inside(parent: XmlDocument | XmlElement, name: string): readonly XmlElement[] {
  return parent.children.flatMap((child) => {
    if (!(child instanceof XmlElement)) return [];
    const local = child.name.slice(child.name.indexOf(":") + 1);
    return local === name ? [child] : inside(child, name);
  });
}

function refused(path: string, expected: string, received: string): RefusedError {
  return new RefusedError("impossible", `${path}: expected ${expected}.`, { path, expected, received });
}
