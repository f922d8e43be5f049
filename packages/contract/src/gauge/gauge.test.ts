/** The three forms of a series. Gauge and readings are invented; the WaterML has the structure of OGC 10-126r4, clause 9. */
import { describe, expect, test } from "vitest";
import { RefusedError } from "../refusal.js";
import { momentOf, momentText } from "./moment.js";
import { readingsOf, type SentSeries } from "./series.js";

const csv = (text: string): SentSeries => ({ form: "csv", text, unit: "ft3/s" });
const waterml = (points: string, unit = '<wml2:uom code="m3/s"/>'): SentSeries => ({
  form: "waterml2",
  text: `<?xml version="1.0" encoding="UTF-8"?>
<wml2:Collection xmlns:wml2="http://www.opengis.net/waterml/2.0" xmlns:om="http://www.opengis.net/om/2.0"
  xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<wml2:observationMember><om:OM_Observation><om:result><wml2:MeasurementTimeseries>
<wml2:defaultPointMetadata><wml2:DefaultTVPMeasurementMetadata>${unit}</wml2:DefaultTVPMeasurementMetadata></wml2:defaultPointMetadata>
${points}</wml2:MeasurementTimeseries></om:result></om:OM_Observation></wml2:observationMember></wml2:Collection>`,
});
const point = (time: string, value: string, metadata = "") =>
  `<wml2:point><wml2:MeasurementTVP><wml2:time>${time}</wml2:time>${value}${metadata}</wml2:MeasurementTVP></wml2:point>`;

const noon = Date.UTC(2031, 4, 4, 12) / 1000;

describe("the same series in three forms", () => {
  const expected = [
    { time: noon, discharge: 6 },
    { time: noon + 900, discharge: null },
    { time: noon + 1800, discharge: 7, flag: "ice" },
  ];

  test("readings", () => {
    const readings = readingsOf(
      {
        form: "readings",
        readings: [
          { time: "2031-05-04T12:00:00Z", discharge: 6 as never },
          { time: "2031-05-04T12:15:00Z" },
          { time: "2031-05-04T12:30:00Z", discharge: 7 as never, flag: "ice" },
        ],
      },
      "/gauge/series",
    );
    expect(readings).toEqual(expected);
  });

  test("CSV, in local time with its offset", () => {
    const text =
      "\uFEFFtime,value,flag\r\n2031-05-04T05:00-07:00,6,\r\n2031-05-04T05:15-0700,,\r\n2031-05-04T05:30-07:00,7.0,ice\r\n";
    expect(readingsOf({ ...csv(text), unit: "m3/s" } as SentSeries, "/gauge/series")).toEqual(expected);
  });

  test("WaterML 2, with a nil and a qualifier", () => {
    const points =
      point("2031-05-04T12:00:00Z", "<wml2:value>6</wml2:value>") +
      point("2031-05-04T12:15:00Z", '<wml2:value xsi:nil="true"/>') +
      point(
        "2031-05-04T12:30:00Z",
        "<wml2:value>7</wml2:value>",
        '<wml2:metadata><wml2:TVPMeasurementMetadata><wml2:qualifier xlink:title="ice"/></wml2:TVPMeasurementMetadata></wml2:metadata>',
      );
    expect(readingsOf(waterml(points), "/gauge/series")).toEqual(expected);
  });
});

test("a cubic foot is 0.3048³ m³ exactly", () => {
  const [reading] = readingsOf(csv("time,value\n2031-05-04T12:00:00Z,100\n"), "/s");
  expect(reading?.discharge).toBe(100 * 0.3048 ** 3);
});

describe("what is refused says where and what was expected", () => {
  test.each([
    ["another header", csv("when,value\n1,2"), "/s/text", "a header of time, value and, if any, flag"],
    ["no header", csv("2031-05-04T12:00:00Z,5\n"), "/s/text", "a header of time, value and, if any, flag"],
    [
      "a word for a number",
      csv("time,value\n2031-05-04T12:00:00Z,Ice\n"),
      "/s/text",
      "a number for reading 1, or nothing",
    ],
    [
      "hexadecimal",
      csv("time,value\n2031-05-04T12:00:00Z,0x10\n"),
      "/s/text",
      "a number for reading 1, or nothing",
    ],
    [
      "a time without offset",
      csv("time,value\n2031-05-04T12:00:00,5\n"),
      "/s/text",
      "a time with its offset in reading 1",
    ],
    [
      "30 February",
      csv("time,value\n2031-02-30T12:00:00Z,5\n"),
      "/s/text",
      "a time with its offset in reading 1",
    ],
    [
      "XML cut short",
      { form: "waterml2", text: "<a><b>" } as SentSeries,
      "/s/text",
      "a well-formed XML document",
    ],
    ["no series", { form: "waterml2", text: "<a/>" } as SentSeries, "/s/text", "one MeasurementTimeseries"],
    ["stages, not discharges", waterml("", '<wml2:uom code="m"/>'), "/s/text", "a unit of discharge"],
    ["no unit at all", waterml("", ""), "/s/unit", "a unit, since the series names none"],
    [
      "entities of one's own",
      { form: "waterml2", text: '<!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>' } as SentSeries,
      "/s/text",
      "a well-formed XML document",
    ],
  ])("%s", (_, series, path, expected) => {
    try {
      readingsOf(series, "/s");
    } catch (error) {
      if (!(error instanceof RefusedError)) throw error;
      expect(error.errors[0]).toMatchObject({ path, expected: expect.stringContaining(expected) });
      return;
    }
    expect.unreachable();
  });
});

test("a moment goes there and back", () => {
  expect(momentText(momentOf("2031-05-04T05:00:00-07:00", ""))).toBe("2031-05-04T12:00:00.000Z");
});
