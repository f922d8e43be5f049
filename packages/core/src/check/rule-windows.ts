/** Days of the year and hours of the day as plain text: no clock, no time zone. */

import { QuantityError } from "../units/index.js";

/** `to` before `from` runs over new year or midnight. */
export interface Window {
  readonly from: string;
  readonly to: string;
}

const daysIn = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Throws QuantityError unless the text is a day of the calendar as YYYY-MM-DD. */
export function checkDate(name: string, date: string): void {
  const [, year, day] = /^(\d{4})-(\d\d-\d\d)$/.exec(date) ?? [];
  const leap = Number(year) % 4 === 0 && (Number(year) % 100 !== 0 || Number(year) % 400 === 0);
  if (day === undefined || !isDay(day) || (day === "02-29" && !leap))
    throw new QuantityError(name, "a day of the calendar as YYYY-MM-DD", date);
}

/** Throws QuantityError unless the text is a time of day as HH:MM. */
export function checkTime(name: string, time: string): void {
  if (!isTime(time)) throw new QuantityError(name, "a time as HH:MM, from 00:00 to 23:59", time);
}

/** Throws QuantityError unless both ends are days MM-DD, or times HH:MM of which the last may be 24:00. */
export function checkWindow(name: string, { from, to }: Window, of: "day" | "hour"): void {
  const [isEnd, expected] = of === "day" ? [isDay, "days as MM-DD"] : [isTime, "times as HH:MM"];
  for (const end of [from, to]) {
    const last = of === "hour" && end === to && end === "24:00";
    if (!isEnd(end) && !last) throw new QuantityError(name, expected, end);
  }
  if (of === "hour" && from === to) throw new QuantityError(name, "two different times", from);
}

/** Days count with both ends, hours without the last. */
export function inWindow({ from, to }: Window, at: string, of: "day" | "hour"): boolean {
  const beforeEnd = of === "day" ? at <= to : at < to;
  return from <= to ? at >= from && beforeEnd : at >= from || beforeEnd;
}

function isDay(text: string): boolean {
  const [, month, day] = /^(\d\d)-(\d\d)$/.exec(text) ?? [];
  const days = daysIn[Number(month) - 1];
  return days !== undefined && Number(day) >= 1 && Number(day) <= days;
}

function isTime(text: string): boolean {
  return /^([01]\d|2[0-3]):[0-5]\d$/.test(text);
}
