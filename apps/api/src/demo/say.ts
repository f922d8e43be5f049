/** Quantities and paragraphs for an 80-column terminal. */

export const WIDTH = 80;

export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

const symbols: Readonly<Record<string, string>> = { degF: "°F", degC: "°C", deg: "°" };

/** "2.8 ft/s": so many significant digits, never an exponent. */
export function said({ value, unit }: Quantity, digits = 2): string {
  const symbol = symbols[unit] ?? ` ${unit}`;
  return `${Number(value.toPrecision(digits))}${symbol.startsWith("°") && symbol.length > 1 ? ` ${symbol}` : symbol}`;
}

/** "46 cm", "18 in": a length a person measures with a hand. */
export function short({ value, unit }: Quantity): string {
  if (unit === "ft") return `${Math.round(value * 12)} in`;
  return unit === "m" ? `${Math.round(value * 100)} cm` : `${Math.round(value)} ${unit}`;
}

/** "0.55 m", "1.8 ft": a height on an axis, all with as many decimals. */
export function level({ value, unit }: Quantity): string {
  return `${value.toFixed(unit === "m" ? 2 : 1)} ${unit}`;
}

/** Breaks a text into lines that start with `indent` and end before the margin. */
export function wrapped(text: string, indent = "", first: string = indent): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/\s+/).filter((w) => w !== "")) {
    if (!empty && line.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = indent;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join("\n");
}

export function heading(text: string): string {
  return `\n${text}\n${"-".repeat(Math.min(WIDTH, text.length))}`;
}
