/** Rules and facts that a check cannot be held to. */

import type { Body } from "../api.js";
import { type Hostile, row } from "./row.js";

const ruled = (clause: Body) => (b: Body) => {
  b.rules.clauses = [clause];
};
const hours = (from: string, to: string) =>
  ruled({ topic: "hours", id: "h", during: "closed", windows: [{ from, to }] });
const g = (value: number) => ({ value, unit: "g" });

export const inCheck: readonly Hostile[] = [
  row(
    "rules of a later version, whatever else they say",
    (b) => {
      b.rules.version = 2;
      b.rules.clauses = [{ topic: "drones" }];
    },
    400,
    "/rules/version",
    "1, the version of rules that this engine understands",
  ),
  row(
    "a topic that nobody knows",
    ruled({ topic: "drones", id: "d" }),
    400,
    "/rules/clauses/0/topic",
    "flies",
  ),
  row(
    "a night of no length",
    hours("22:00", "22:00"),
    422,
    "/rules/clauses/0/windows",
    "two different times",
  ),
  row("an hour that does not exist", hours("25:00", "05:00"), 422, "/rules/clauses/0/windows", "HH:MM"),
  row(
    "a day that does not exist",
    (b) => (b.facts.date = "2026-02-30"),
    422,
    "/facts/date",
    "a day of the calendar",
  ),
  row("a time that does not exist", (b) => (b.facts.time = "9:30"), 422, "/facts/time", "HH:MM"),
  row(
    "at most less than at least",
    (b) => (b.facts.addedWeight = { least: g(2), most: g(1) }),
    422,
    "/facts/addedWeight/most",
    "at least",
  ),
  row("a knot stronger than its line", (b) => (b.knotShare = 1.2), 400, "/knotShare", "at most 1"),
];
